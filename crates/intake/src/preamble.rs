pub(crate) use crate::awaited::stated;
