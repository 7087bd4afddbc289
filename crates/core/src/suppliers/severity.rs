//! How severely the next lot of a supplier's series is to be inspected.
//!
//! # Source
//! Switching rules: MIL-STD-105E, 4.7, as restated by public guides to it: normal to tightened when 2 of 5 or fewer
//! consecutive lots are not accepted; tightened to normal after 5 consecutive accepted; discontinue when 5 in all are not
//! accepted on tightened inspection. From memory: reduced inspection may be asked for after 10 consecutive accepted on
//! normal; it needs steady production and a person with authority, so it is named and never done.

use crate::sampling::Severity;

const WINDOW: usize = 5;
const TO_NORMAL: usize = 5;
const TO_DISCONTINUE: usize = 5;
const TO_REDUCED: usize = 10;

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
    let mut severity = Some(Severity::Normal);
    // The lots since the last switch.
    let mut since: Vec<bool> = Vec::new();
    for accepted in series {
        since.push(*accepted);
        let refused = |count: usize| since.iter().rev().take(count).filter(|accepted| !**accepted).count();
        let to = match severity {
            Some(Severity::Normal) if refused(WINDOW) >= 2 => Some(Severity::Tightened),
            Some(Severity::Tightened) if refused(since.len()) >= TO_DISCONTINUE => None,
            Some(Severity::Tightened) if since.len() >= TO_NORMAL && refused(TO_NORMAL) == 0 => {
                Some(Severity::Normal)
            }
            same => same,
        };
        if to != severity {
            severity = to;
            since.clear();
        }
    }
    let run = since.len() >= TO_REDUCED && since.iter().rev().take(TO_REDUCED).all(|accepted| *accepted);
    Next { severity, may_reduce: run && severity == Some(Severity::Normal), lots: series.len() }
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
