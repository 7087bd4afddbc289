//! Switching rules: how severely the next lot of a continuing series is inspected.
//!
//! They are for a series of lots of one supplier and part; for a single lot or a short series they do not apply (ISO 2859-2
//! is about isolated lots).
//!
//! # Source
//! MIL-STD-105E, 4.7, as restated by public guides to it: to tightened when 2 of 5 or fewer consecutive lots are not accepted;
//! back to normal after 5 consecutive accepted; discontinue when 5 in all are not accepted on tightened inspection; from reduced to
//! normal at the first lot not accepted. From normal to reduced, after 10 accepted in a row, steady production and a person with
//! authority have to agree (from memory): it is suggested and never done.

use super::Severity;
use crate::reading::codes;

codes! {
    /// What the switching rules did last.
    Switch {
        /// Two of five or fewer consecutive lots were not accepted.
        ToTightened => "to_tightened",
        /// Five consecutive lots were accepted on tightened inspection.
        ToNormal => "to_normal",
        /// A lot was not accepted on reduced inspection.
        BackToNormal => "back_to_normal",
        /// Five lots in all were not accepted on tightened inspection.
        Discontinued => "discontinued",
    }
}

/// Consecutive lots of which two not accepted lead to tightened inspection.
const WINDOW: usize = 5;
/// Consecutive accepted lots that end tightened inspection.
const TO_NORMAL: usize = 5;
/// Lots not accepted on tightened inspection that end it all.
const TO_DISCONTINUE: usize = 5;
/// Consecutive accepted lots on normal inspection after which reduced may be asked for.
const TO_REDUCED: usize = 10;

/// Where a series stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct State {
    /// How severely the next lot is to be inspected; `None` once inspection is discontinued until the supplier has
    /// improved.
    pub severity: Option<Severity>,
    /// What the last lot changed; `None` where nothing.
    pub switched: Option<Switch>,
    /// Reduced inspection may be asked for: ten accepted in a row on normal inspection. Steady production and a person
    /// with authority are still needed.
    pub may_reduce: bool,
    /// Lots on the present severity, oldest first: accepted or not.
    pub lots: Vec<bool>,
}

impl State {
    /// A series that begins at a severity; a new one begins at normal.
    pub const fn start(severity: Severity) -> State {
        State { severity: Some(severity), switched: None, may_reduce: false, lots: Vec::new() }
    }

    /// The state after one more lot on original inspection; lots offered again, and lots still on hold, are not counted.
    #[must_use]
    pub fn after(&self, accepted: bool) -> State {
        let mut next = State { switched: None, ..self.clone() };
        next.lots.push(accepted);
        let last = |count: usize| next.lots.iter().rev().take(count);
        let run = |count| last(count).filter(|accepted| **accepted).count() >= count;
        let not_accepted = |count| last(count).filter(|accepted| !**accepted).count();
        let (severity, switched) = match self.severity {
            Some(Severity::Normal) if not_accepted(WINDOW) >= 2 => {
                (Some(Severity::Tightened), Switch::ToTightened)
            }
            Some(Severity::Tightened) if not_accepted(usize::MAX) >= TO_DISCONTINUE => {
                (None, Switch::Discontinued)
            }
            Some(Severity::Tightened) if run(TO_NORMAL) => (Some(Severity::Normal), Switch::ToNormal),
            Some(Severity::Reduced) if !accepted => (Some(Severity::Normal), Switch::BackToNormal),
            severity => {
                next.may_reduce = severity == Some(Severity::Normal) && run(TO_REDUCED);
                return next;
            }
        };
        State { severity, switched: Some(switched), may_reduce: false, lots: Vec::new() }
    }
}

/// Where a series stands after some lots, oldest first; `true` is accepted.
pub fn next(start: Severity, accepted: impl IntoIterator<Item = bool>) -> State {
    accepted.into_iter().fold(State::start(start), |state, accepted| state.after(accepted))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn after(start: Severity, lots: &str) -> State {
        next(start, lots.chars().map(|lot| lot == 'A'))
    }

    #[test]
    fn each_rule_switches_at_its_number_and_not_one_before() {
        let normal = |lots| after(Severity::Normal, lots).severity;
        assert_eq!(normal("RAAAAR"), Some(Severity::Normal));
        assert_eq!(normal("RAAAR"), Some(Severity::Tightened));
        assert_eq!(normal("RRAAAA"), Some(Severity::Tightened));
        assert_eq!(normal("RRAAAAA"), Some(Severity::Normal));
        assert_eq!(normal("RRRARARAR"), Some(Severity::Tightened));
        assert_eq!(normal("RRRARARARAR"), None);
        assert_eq!(normal("RRRARARARARAAAAAAAAA"), None);
        assert_eq!(after(Severity::Reduced, "AAR").switched, Some(Switch::BackToNormal));
        assert_eq!(after(Severity::Reduced, "AAA").severity, Some(Severity::Reduced));
    }

    #[test]
    fn reduced_inspection_is_only_ever_suggested() {
        assert!(!after(Severity::Normal, "AAAAAAAAA").may_reduce);
        let ten = after(Severity::Normal, "AAAAAAAAAA");
        assert!(ten.may_reduce);
        assert_eq!(ten.severity, Some(Severity::Normal));
        assert!(!after(Severity::Normal, "AAAAAAAAAAR").may_reduce);
        // Lots from before a switch do not count towards it.
        assert!(!after(Severity::Normal, "RRAAAAAAAAAAAAAA").may_reduce);
        assert!(after(Severity::Normal, "RRAAAAAAAAAAAAAAA").may_reduce);
    }
}
