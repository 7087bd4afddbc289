//! One reading, one substance, one class: design section 4, items 1 to 4 and the plated part of 6.

use num_rational::BigRational;
use num_traits::Zero;

use super::fraction::whole;
use super::limits::{self, LowEdge};
use super::verdict::{Class, Outcome, Substance, Verdict};

/// What a cell says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Said {
    /// No column for the element.
    NoColumn,
    /// Nothing, or a dash.
    Blank,
    /// Text that is no measurement.
    Text,
    /// A number or a bound whose unit nobody stated.
    UnitUnknown,
    /// A number in mg/kg.
    Number(BigRational),
    /// Below this many mg/kg.
    Below(BigRational),
    /// Above this many mg/kg.
    Above(BigRational),
    /// Not detected, with no number anywhere.
    NotDetected,
}

/// A cell with what stands beside it, in mg/kg.
#[derive(Clone, Debug)]
pub struct Measured {
    /// The cell.
    pub said: Said,
    /// One sigma: the printed error divided by its multiple; none where it is blank or zero.
    pub sigma: Option<BigRational>,
    /// Nobody said how many sigma the printed error stands for; it was taken as one.
    pub multiple_unknown: bool,
    /// The detection limit stated for this cell.
    pub detection_limit: Option<BigRational>,
}

/// Why there is no measurement; nothing where there is one.
pub fn no_measurement(said: &Said) -> Option<&'static str> {
    match said {
        Said::NoColumn => Some("no_column"),
        Said::Blank => Some("cell_blank"),
        Said::Text => Some("cell_not_understood"),
        Said::UnitUnknown => Some("unit_not_stated"),
        _ => None,
    }
}

/// One sigma of a detection limit.
pub fn sigma_of_limit(limit: &BigRational) -> BigRational {
    limit / whole(limits::SIGMAS_OF_A_DETECTION_LIMIT)
}

/// Judges one cell under a class that has bands, or as plated.
pub fn judge(substance: Substance, class: Class, measured: &Measured) -> Verdict {
    if substance == Substance::Br && class == Class::Metal {
        return Verdict::new(Outcome::NotApplicable, "not_applicable_in_metal");
    }
    if let Some(reason) = no_measurement(&measured.said) {
        return Verdict::new(Outcome::NotMeasured, reason);
    }
    let Some(band) = limits::band(substance, class) else {
        return Verdict::new(Outcome::X, "layer_not_resolved");
    };
    let three = whole(limits::SIGMAS);
    let high = band.high.map(whole);
    match &measured.said {
        Said::Below(limit) => {
            let clears = match band.low {
                LowEdge::At(low) => limit + &three * sigma_of_limit(limit) <= whole(low),
                LowEdge::DetectionLimit => *limit <= whole(limits::COMPOSITE_CADMIUM_LIMIT_AT_MOST),
            };
            if clears {
                Verdict::new(Outcome::Bl, "")
            } else {
                Verdict::new(Outcome::DetectionTooHigh, "detection_limit_above_band")
            }
        }
        Said::Above(upper) if high.as_ref().is_some_and(|high| upper >= high) => {
            Verdict::new(Outcome::Ol, "")
        }
        // Without a high edge no number of this element says more than that there is much of it.
        Said::Above(_) if high.is_none() => Verdict::new(Outcome::X, "element_only"),
        Said::Above(_) => Verdict::new(Outcome::X, "above_range"),
        Said::NotDetected => Verdict::new(Outcome::DetectionTooHigh, "limit_not_stated"),
        Said::Number(x) => {
            let Some(sigma) = &measured.sigma else {
                return Verdict::new(Outcome::NoUncertainty, "uncertainty_not_stated");
            };
            let guard = &three * sigma;
            if high.as_ref().is_some_and(|high| *x >= high + &guard) {
                return Verdict::new(Outcome::Ol, "");
            }
            match band.low {
                LowEdge::At(low) => {
                    let low = whole(low);
                    if guard >= low {
                        Verdict::new(Outcome::NotCapable, "three_sigma_reaches_band")
                    } else if *x <= -&low - &guard {
                        Verdict::new(Outcome::X, "negative_beyond_error")
                    } else if *x <= &low - &guard {
                        Verdict::new(Outcome::Bl, "")
                    } else if band.high.is_none() && *x > low {
                        Verdict::new(Outcome::X, "element_only")
                    } else {
                        Verdict::new(Outcome::X, "inside_band")
                    }
                }
                LowEdge::DetectionLimit => {
                    let most = whole(limits::COMPOSITE_CADMIUM_LIMIT_AT_MOST);
                    let clears = guard <= most
                        && measured
                            .detection_limit
                            .as_ref()
                            .is_some_and(|limit| *limit <= most && x <= limit);
                    if clears && *x <= -&most - &guard {
                        Verdict::new(Outcome::X, "negative_beyond_error")
                    } else if clears {
                        Verdict::new(Outcome::Bl, "")
                    } else {
                        Verdict::new(Outcome::X, "composite_needs_detection_limit")
                    }
                }
            }
        }
        Said::NoColumn | Said::Blank | Said::Text | Said::UnitUnknown => unreachable!("answered above"),
    }
}

/// Judges one cell of an unknown class: under every class, and the worst counts (items 10 and section 9).
pub fn judge_unknown(substance: Substance, measured: &Measured) -> (Verdict, [Verdict; 3]) {
    let each = Class::BANDED.map(|class| judge(substance, class, measured));
    let mut worst = each[0];
    for verdict in each {
        if verdict.outcome >= worst.outcome {
            worst = verdict;
        }
    }
    (worst, each)
}

/// True where a sum of squares of sigmas, times k squared, fits into a room that may be negative.
pub fn fits(k: i64, sum_of_squares: &BigRational, room: &BigRational, equal_counts: bool) -> bool {
    if *room < BigRational::zero() {
        return false;
    }
    let (guard, room) = (whole(k * k) * sum_of_squares, room * room);
    if equal_counts { guard <= room } else { guard < room }
}
