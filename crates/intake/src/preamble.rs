pub(crate) struct StatedLine {
    pub key: String,
    pub value: String,
    pub used_as: Option<plumbline_core::reading::StatedUse>,
}
pub(crate) fn stated(_cells: &[&str]) -> Option<StatedLine> {
    None
}
