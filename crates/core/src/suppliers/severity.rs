//! How severely the next lot of a supplier's series is to be inspected, by the switching rules of `sampling`.

use crate::sampling::{Severity, switching};

/// What the rules suggest for the next lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Next {
    /// The severity; `None` once inspection is discontinued until the supplier has improved.
    pub severity: Option<Severity>,
    /// True where reduced inspection may be asked for.
    pub may_reduce: bool,
    /// How many settled lots this rests on.
    pub lots: usize,
}

/// What follows from a series of lots, oldest first, begun on normal inspection; `true` is accepted.
pub(super) fn next(series: &[bool]) -> Next {
    let state = switching::next(Severity::Normal, series.iter().copied());
    Next { severity: state.severity, may_reduce: state.may_reduce, lots: series.len() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn after(lots: &str) -> Next {
        next(&lots.chars().map(|lot| lot == 'A').collect::<Vec<_>>())
    }

    #[test]
    fn each_rule_switches_at_its_number_and_not_one_before() {
        assert_eq!(after("").severity, Some(Severity::Normal));
        assert_eq!(after("RAAAAR").severity, Some(Severity::Normal));
        assert_eq!(after("RAAAR").severity, Some(Severity::Tightened));
        assert_eq!(after("RRAAAA").severity, Some(Severity::Tightened));
        assert_eq!(after("RRAAAAA").severity, Some(Severity::Normal));
        assert_eq!(after("RRRARARAR").severity, Some(Severity::Tightened));
        assert_eq!(after("RRRARARARAR").severity, None);
        assert_eq!(after("RRRARARARARAAAAAA").severity, None);
    }

    #[test]
    fn reduced_inspection_is_named_after_ten_and_never_done() {
        assert!(!after("AAAAAAAAA").may_reduce);
        let ten = after("AAAAAAAAAA");
        assert!(ten.may_reduce && ten.severity == Some(Severity::Normal) && ten.lots == 10);
        assert!(!after("RRAAAAAAAAAAAAAA").may_reduce, "lots before a switch count for nothing after it");
        assert!(after("RRAAAAAAAAAAAAAAA").may_reduce);
    }
}
