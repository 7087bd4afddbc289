//! Repeats of one spot as one value, and spots beside each other.
use crate::quantity::{Coverage, MassFraction, Sigma};
/// x
#[derive(Clone, Copy, Debug)]
pub struct Repeat {
    /// x
    pub value: MassFraction,
    /// x
    pub sigma: Option<Sigma>,
}
/// x
#[derive(Clone, Debug)]
pub struct Pooled {
    /// x
    pub mean: MassFraction,
    /// x
    pub sigma: Option<Sigma>,
    /// x
    pub agree: Option<bool>,
    /// x
    pub from_scatter: bool,
}
/// x
pub struct Shown {
    /// x
    pub sigma: Sigma,
}
/// x
pub fn pool(_: &[Repeat], _: MassFraction, _: Coverage) -> Pooled {
    Pooled { mean: MassFraction::ZERO, sigma: None, agree: None, from_scatter: false }
}
/// x
pub fn repeatability(_: &[MassFraction], _: &[Option<Sigma>], _: Coverage) -> Option<Shown> {
    None
}
