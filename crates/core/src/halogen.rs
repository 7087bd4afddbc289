//! Chlorine, bromine and their total against the limits of a halogen book.
//!
//! A total with a part that was only "not detected at D" is an interval: from that part counted as zero to that part
//! counted as D.

use crate::interval::{Gap, Interval, Part, Term, Threshold};
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom, UsedSigma};
use crate::quantity::{MassFraction, Sigma};
use crate::reading::CellState;
use crate::rules::Halogens;
use crate::screen::{self, Measured};
use crate::substance::Halogen;

/// The total of chlorine and bromine, with its interval.
#[derive(Clone, Copy, Debug)]
pub struct Total {
    /// The judgement.
    pub judgement: Judgement,
    /// Lower end in mg/kg; equal to the upper end where nothing is censored; `None` where there is no sum.
    pub low: Option<MassFraction>,
    /// Upper end in mg/kg.
    pub high: Option<MassFraction>,
    /// One sigma of the upper end (correlation taken as zero).
    pub sigma: Option<Sigma>,
    /// The same of the lower end, where a part that was not detected counts as nothing.
    pub low_sigma: Option<Sigma>,
}

impl Total {
    const fn without_sum(outcome: Outcome, reason: Reason) -> Total {
        Total {
            judgement: Judgement::new(outcome, Some(reason), UsedSigma::NONE),
            low: None,
            high: None,
            sigma: None,
            low_sigma: None,
        }
    }
}

/// Judges one halogen alone.
///
/// # Decision
/// BL if `x + k s <= L`, OL if `x - k s > L` (the operator as the book says), X between. Not detected at D: BL if
/// `D + k s_D <= L`. In a composite a BL becomes X: copper or glass in the beam dilutes the resin.
///
/// # Source
/// IEC 61249-2-21 through the rule book given; k is the book's.
pub fn judge_element(rule: &Halogens, of: Halogen, class: MaterialClass, measured: &Measured) -> Judgement {
    let none = |outcome, reason| Judgement::new(outcome, Some(reason), UsedSigma::NONE);
    if class == MaterialClass::Metal {
        return none(Outcome::NotApplicable, Reason::NotApplicableInMetal);
    }
    if let Some(reason) = screen::not_measured(measured.cell.state) {
        return none(Outcome::NotMeasured, reason);
    }
    if class == MaterialClass::Plated {
        return Judgement::new(Outcome::Undecided, Some(Reason::LayerNotResolved), measured.used);
    }
    let threshold = threshold(rule, of);
    let judged = match Part::of(measured) {
        Part::Number(x, sigma) => {
            let judged =
                by_interval(&threshold, &Interval::number(x, sigma), measured.used, Reason::AroundLimit);
            not_shifted(&threshold, &[measured], judged)
        }
        Part::NoUncertainty => none(Outcome::NoUncertainty, Reason::UncertaintyNotStated),
        Part::Below(limit) => {
            let used = screen::sigma_of_detection(limit);
            let clears =
                used.sigma.is_some_and(|sigma| threshold.has_within(&Interval::number(limit, sigma)));
            if clears {
                Judgement::new(Outcome::Below, None, used)
            } else {
                Judgement::new(Outcome::DetectionTooHigh, Some(Reason::DetectionLimitAboveBand), used)
            }
        }
        Part::AtLeast(lowest) if lowest >= threshold.limit => {
            Judgement::new(Outcome::Over, None, UsedSigma::NONE)
        }
        Part::AtLeast(_) => none(Outcome::Undecided, Reason::AboveRange),
        // What was not measured was said above.
        Part::LimitNotStated | Part::NotMeasured => none(Outcome::DetectionTooHigh, Reason::LimitNotStated),
    };
    in_class(class, judged)
}

/// Judges the total of chlorine and bromine.
///
/// # Decision
/// `s² = s_Cl² + s_Br²`. With a censored part the total runs from (that part zero, its sigma left out) to (that part
/// D, with D/3 as its sigma): BL only if `upper + k s_upper <= L`, OL only if `lower - k s_lower > L`. A missing part
/// makes it *not measured*, unless the other part alone is over.
pub fn judge_total(rule: &Halogens, class: MaterialClass, chlorine: &Measured, bromine: &Measured) -> Total {
    if class == MaterialClass::Metal {
        return Total::without_sum(Outcome::NotApplicable, Reason::NotApplicableInMetal);
    }
    let parts = [chlorine, bromine];
    let missing = parts.iter().any(|part| screen::not_measured(part.cell.state).is_some());
    if class == MaterialClass::Plated {
        return if missing {
            Total::without_sum(Outcome::NotMeasured, Reason::PartNotMeasured)
        } else {
            Total::without_sum(Outcome::Undecided, Reason::LayerNotResolved)
        };
    }
    let threshold = threshold(rule, Halogen::Total);
    let terms = parts.map(|part| (Part::of(part), false));
    let unknown_multiple = parts.iter().any(|part| {
        part.cell.state == CellState::Number && part.used.from == SigmaFrom::PrintedMultipleUnknown
    });
    let mut total = sum(&threshold, &terms);
    // Only where there is no upper end: the sum of two numbers speaks for itself.
    if total.high.is_none()
        && total.judgement.outcome != Outcome::Over
        && threshold.is_beyond_by_what_is_known(&terms)
    {
        total.judgement = Judgement::new(Outcome::Over, Some(Reason::OnePartAlone), UsedSigma::NONE);
    }
    if unknown_multiple && total.judgement.used.sigma.is_some() {
        total.judgement.used.from = SigmaFrom::PrintedMultipleUnknown;
    }
    total.judgement = in_class(class, not_shifted(&threshold, &parts, total.judgement));
    total
}

/// A BL of which a part lies far below zero is X: see [`Measured::is_shifted`].
fn not_shifted(threshold: &Threshold, parts: &[&Measured], judged: Judgement) -> Judgement {
    let shifted = |part: &&Measured| part.is_shifted(threshold.k, threshold.limit);
    if judged.outcome == Outcome::Below && parts.iter().any(shifted) {
        return Judgement::new(Outcome::Undecided, Some(Reason::NegativeBeyondError), judged.used);
    }
    judged
}

fn threshold(rule: &Halogens, of: Halogen) -> Threshold {
    Threshold { limit: rule.limit(of), k: rule.sigma_factor, equal_is_within: rule.equal_is_within }
}

fn sum(threshold: &Threshold, terms: &[Term]) -> Total {
    let sum = match Interval::without_together(terms) {
        Ok(sum) => sum,
        Err(Gap::NotMeasured) => return Total::without_sum(Outcome::NotMeasured, Reason::PartNotMeasured),
        Err(Gap::NoUncertainty) => {
            return Total::without_sum(Outcome::NoUncertainty, Reason::PartWithoutUncertainty);
        }
        Err(Gap::LimitNotStated) => {
            return Total::without_sum(Outcome::DetectionTooHigh, Reason::PartLimitNotStated);
        }
    };
    let used = match sum.high {
        Some(_) => UsedSigma { sigma: Some(sum.high_sigma), from: SigmaFrom::Printed },
        None => UsedSigma::NONE,
    };
    let open = match sum.high {
        None => Reason::AboveRange,
        Some(_) if sum.censored => Reason::CensoredPart,
        Some(_) => Reason::AroundLimit,
    };
    Total {
        judgement: by_interval(threshold, &sum, used, open),
        low: Some(sum.low),
        high: sum.high,
        sigma: Some(sum.high_sigma),
        low_sigma: Some(sum.low_sigma),
    }
}

fn by_interval(threshold: &Threshold, interval: &Interval, used: UsedSigma, open: Reason) -> Judgement {
    if threshold.is_beyond(interval) {
        Judgement::new(Outcome::Over, None, used)
    } else if threshold.has_within(interval) {
        Judgement::new(Outcome::Below, None, used)
    } else {
        Judgement::new(Outcome::Undecided, Some(open), used)
    }
}

fn in_class(class: MaterialClass, judged: Judgement) -> Judgement {
    if judged.outcome == Outcome::Below && class != MaterialClass::Polymer {
        return Judgement::new(Outcome::Undecided, Some(Reason::CopperOrGlassInBeam), judged.used);
    }
    judged
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::reading::Cell;
    use crate::rules::RuleBooks;

    fn number(value: i64, sigma: Option<i64>) -> Measured {
        measured(CellState::Number, value, sigma)
    }

    fn measured(state: CellState, value: i64, sigma: Option<i64>) -> Measured {
        let sigma = sigma.and_then(|s| Sigma::from_one_sigma(MassFraction::from_mg_per_kg(s)));
        Measured {
            cell: Cell {
                state,
                value: MassFraction::from_mg_per_kg(value),
                printed_error: None,
                detection_limit: None,
            },
            used: UsedSigma { sigma, from: SigmaFrom::Printed },
            thickness_share: None,
        }
    }

    fn total(chlorine: &Measured, bromine: &Measured) -> (&'static str, Option<Reason>) {
        let books = RuleBooks::built_in().unwrap();
        let judged =
            judge_total(books.halogens().unwrap().1, MaterialClass::Polymer, chlorine, bromine).judgement;
        (judged.outcome.code(), judged.reason)
    }

    fn chlorine(measured: &Measured, class: MaterialClass) -> &'static str {
        let books = RuleBooks::built_in().unwrap();
        judge_element(books.halogens().unwrap().1, Halogen::Cl, class, measured).outcome.code()
    }

    #[test]
    fn at_most_the_limit_holds_at_equality() {
        let polymer = MaterialClass::Polymer;
        assert_eq!(chlorine(&number(810, Some(30)), polymer), "BL");
        assert_eq!(chlorine(&number(811, Some(30)), polymer), "X");
        assert_eq!(chlorine(&number(990, Some(30)), polymer), "X");
        assert_eq!(chlorine(&number(991, Some(30)), polymer), "OL");
        assert_eq!(chlorine(&number(10, Some(1)), MaterialClass::Composite), "X");
        assert_eq!(chlorine(&number(10, Some(1)), MaterialClass::Metal), "not_applicable");
        assert_eq!(chlorine(&measured(CellState::BelowDetection, 450, None), polymer), "BL");
        assert_eq!(chlorine(&measured(CellState::BelowDetection, 451, None), polymer), "detection_too_high");
    }

    #[test]
    fn one_above_the_range_is_over_from_its_limit_on() {
        let above = |limit| chlorine(&measured(CellState::AboveRange, limit, None), MaterialClass::Polymer);
        assert_eq!(above(900), "OL");
        assert_eq!(above(899), "X");
    }

    #[test]
    fn a_total_says_where_its_sigma_came_from() {
        let books = RuleBooks::built_in().unwrap();
        let from = |chlorine: &Measured, bromine: &Measured| {
            let rule = books.halogens().unwrap().1;
            judge_total(rule, MaterialClass::Polymer, chlorine, bromine).judgement.used.from
        };
        let known = number(10, Some(1));
        let mut unknown = number(10, Some(1));
        unknown.used.from = SigmaFrom::PrintedMultipleUnknown;
        let mut censored = measured(CellState::BelowDetection, 10, None);
        censored.used.from = SigmaFrom::PrintedMultipleUnknown;
        let blank = measured(CellState::Blank, 0, None);
        assert_eq!(from(&known, &known), SigmaFrom::Printed);
        assert_eq!(from(&known, &unknown), SigmaFrom::PrintedMultipleUnknown);
        assert_eq!(from(&known, &censored), SigmaFrom::Printed, "only a number has a printed error");
        assert_eq!(from(&blank, &unknown), SigmaFrom::None);
    }

    #[test]
    fn the_total_adds_squares() {
        // s = sqrt(40² + 30²) = 50; 1350 + 150 = 1500.
        assert_eq!(total(&number(850, Some(40)), &number(500, Some(30))), ("BL", None));
        assert_eq!(total(&number(851, Some(40)), &number(500, Some(30))), ("X", Some(Reason::AroundLimit)));
        assert_eq!(total(&number(1000, Some(40)), &number(650, Some(30))), ("X", Some(Reason::AroundLimit)));
        assert_eq!(total(&number(1000, Some(40)), &number(651, Some(30))), ("OL", None));
    }

    #[test]
    fn a_censored_part_decides_only_by_the_honest_end() {
        let below = |limit| measured(CellState::BelowDetection, limit, None);
        assert_eq!(total(&below(300), &number(500, Some(10))), ("BL", None));
        assert_eq!(total(&below(700), &number(900, Some(10))), ("X", Some(Reason::CensoredPart)));
        assert_eq!(total(&below(700), &number(1531, Some(10))), ("OL", None));
        assert_eq!(total(&below(900), &below(700)), ("X", Some(Reason::CensoredPart)));
    }

    #[test]
    fn a_missing_part_is_not_measured_unless_the_other_alone_is_over() {
        let blank = measured(CellState::Blank, 0, None);
        let bare = measured(CellState::NotDetected, 0, None);
        assert_eq!(total(&blank, &number(10, Some(1))), ("not_measured", Some(Reason::PartNotMeasured)));
        assert_eq!(total(&blank, &number(1600, Some(10))), ("OL", Some(Reason::OnePartAlone)));
        assert_eq!(
            total(&bare, &number(10, Some(1))),
            ("detection_too_high", Some(Reason::PartLimitNotStated))
        );
        assert_eq!(total(&bare, &number(1600, Some(10))), ("OL", Some(Reason::OnePartAlone)));
        assert_eq!(
            total(&number(10, None), &number(10, Some(1))),
            ("no_uncertainty", Some(Reason::PartWithoutUncertainty))
        );
        assert_eq!(total(&blank, &number(10, None)), ("not_measured", Some(Reason::PartNotMeasured)));
    }

    #[test]
    fn above_range_counts_as_at_least() {
        let above = |limit| measured(CellState::AboveRange, limit, None);
        assert_eq!(total(&above(1500), &number(0, Some(1))), ("OL", Some(Reason::OnePartAlone)));
        assert_eq!(total(&above(1000), &number(100, Some(10))), ("X", Some(Reason::AboveRange)));
        assert_eq!(total(&above(1000), &number(600, Some(10))), ("OL", None));
    }
}
