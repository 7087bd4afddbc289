//! A sum of parts as an interval: from what is at least there to what is at most there.
//!
//! A part that was only "not detected at D" counts as zero at the lower end and as D at the upper; a part that only
//! stands for a species of its element (chromium for Cr(VI)) may be as little as nothing. A sum clears only by its upper
//! end and fails only by its lower end, so no choice of a substitute for what is unknown can flatter a lot (zero in
//! sums is the lenient bound: Directive 2009/90/EC, Art. 5(3)).

use crate::quantity::{self, Coverage, MassFraction, Sigma};
use crate::reading::CellState;
use crate::screen::{self, Measured};

/// What is known of one part of a sum.
#[derive(Clone, Copy, Debug)]
pub enum Part {
    /// A number with one sigma.
    Number(MassFraction, Sigma),
    /// Not detected at this limit.
    Below(MassFraction),
    /// Above the instrument's range: at least this.
    AtLeast(MassFraction),
    /// A number without uncertainty.
    NoUncertainty,
    /// Not detected, and no limit is stated anywhere.
    LimitNotStated,
    /// No measurement.
    NotMeasured,
}

impl Part {
    /// What a measurement says of a part.
    pub fn of(measured: &Measured) -> Part {
        if screen::not_measured(measured.cell.state).is_some() {
            return Part::NotMeasured;
        }
        match measured.cell.state {
            CellState::BelowDetection => Part::Below(measured.cell.value),
            CellState::NotDetected => measured.cell.detection_limit.map_or(Part::LimitNotStated, Part::Below),
            CellState::AboveRange => Part::AtLeast(measured.cell.value),
            _ => match measured.used.sigma.filter(|sigma| !sigma.is_zero()) {
                Some(sigma) => Part::Number(measured.cell.value, sigma),
                None => Part::NoUncertainty,
            },
        }
    }
}

/// A part, and whether less than what was measured may count (a species of the element).
pub type Term = (Part, bool);

/// Why parts have no sum, worst first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Gap {
    /// A part was not measured.
    NotMeasured,
    /// A part has no uncertainty, or the sum's is beyond the whole of the sample.
    NoUncertainty,
    /// A part was not detected and its limit is not stated.
    LimitNotStated,
}

/// The sum of parts.
#[derive(Clone, Copy, Debug)]
pub struct Interval {
    /// Lower end in mg/kg.
    pub low: MassFraction,
    /// One sigma of the lower end, the parts taken as uncorrelated.
    pub low_sigma: Sigma,
    /// Upper end in mg/kg; `None` where a part is above the range.
    pub high: Option<MassFraction>,
    /// One sigma of the upper end, the parts taken as uncorrelated; without one, of the lower end.
    pub high_sigma: Sigma,
    /// One sigma of the upper end if all parts err together, an upper bound in mg/kg; zero where nobody asked for it.
    pub high_sigma_if_together: MassFraction,
    /// True where a part is only known to lie below its detection limit.
    pub censored: bool,
}

impl Interval {
    /// Adds parts up.
    ///
    /// # Units
    /// mg/kg with one sigma. A detection limit D has the sigma D / 3 at the upper end and none at the lower, where the
    /// part counts as zero.
    ///
    /// # Errors
    /// The worst reason why there is no sum; nothing at all adds up to nothing known, not to zero.
    pub fn of(terms: &[Term]) -> Result<Interval, Gap> {
        let mut sum = Interval::without_together(terms)?;
        sum.high_sigma_if_together = Sigma::total_if_together(sigmas(terms, sum.high.is_some()));
        Ok(sum)
    }

    /// The same for a decision, which needs no sigma of parts that err together: that takes a root of each part.
    ///
    /// # Errors
    /// As [`Interval::of`].
    pub fn without_together(terms: &[Term]) -> Result<Interval, Gap> {
        if terms.is_empty() {
            return Err(Gap::NotMeasured);
        }
        if let Some(gap) = terms.iter().filter_map(|(part, _)| gap_of(*part)).min() {
            return Err(gap);
        }
        let (mut low, mut high) = (MassFraction::ZERO, Some(MassFraction::ZERO));
        for &(part, may_be_less) in terms {
            let (least, most) = match part {
                Part::Number(x, _) => (x, Some(x)),
                Part::Below(limit) => (MassFraction::ZERO, Some(limit)),
                Part::AtLeast(lowest) => (lowest, None),
                _ => (MassFraction::ZERO, Some(MassFraction::ZERO)),
            };
            if !may_be_less {
                low = low.plus(least);
            }
            high = high.zip(most).map(|(high, most)| high.plus(most));
        }
        let low_sigma = Sigma::total(sigmas(terms, false)).ok_or(Gap::NoUncertainty)?;
        let high_sigma = match high {
            Some(_) => Sigma::total(sigmas(terms, true)).ok_or(Gap::NoUncertainty)?,
            None => low_sigma,
        };
        Ok(Interval {
            low,
            low_sigma,
            high,
            high_sigma,
            high_sigma_if_together: MassFraction::ZERO,
            censored: terms.iter().any(|(part, _)| matches!(part, Part::Below(_))),
        })
    }

    /// A single number.
    pub const fn number(x: MassFraction, sigma: Sigma) -> Interval {
        Interval {
            low: x,
            low_sigma: sigma,
            high: Some(x),
            high_sigma: sigma,
            high_sigma_if_together: MassFraction::ZERO,
            censored: false,
        }
    }
}

/// The sigmas that an end is widened by.
fn sigmas(terms: &[Term], upper: bool) -> impl Iterator<Item = Sigma> {
    terms.iter().filter_map(move |&(part, may_be_less)| match part {
        Part::Number(_, sigma) if upper || !may_be_less => Some(sigma),
        Part::Below(limit) if upper => screen::sigma_of_detection(limit).sigma,
        _ => None,
    })
}

const fn gap_of(part: Part) -> Option<Gap> {
    match part {
        Part::NotMeasured => Some(Gap::NotMeasured),
        Part::NoUncertainty => Some(Gap::NoUncertainty),
        Part::LimitNotStated => Some(Gap::LimitNotStated),
        Part::Number(..) | Part::Below(_) | Part::AtLeast(_) => None,
    }
}

/// A limit with its decision rule.
#[derive(Clone, Copy, Debug)]
pub struct Threshold {
    /// The limit.
    pub limit: MassFraction,
    /// The factor of sigma.
    pub k: Coverage,
    /// "At most": the limit itself is within; false for "below".
    pub equal_is_within: bool,
}

impl Threshold {
    /// True where the upper end, widened by k sigma, is within.
    pub fn has_within(&self, interval: &Interval) -> bool {
        interval.high.is_some_and(|high| {
            quantity::upper_end_within(high, self.k, interval.high_sigma, self.limit, self.equal_is_within)
        })
    }

    /// True where the lower end, narrowed by k sigma, is beyond: above the limit for "at most", already at it for
    /// "below".
    pub fn is_beyond(&self, interval: &Interval) -> bool {
        quantity::lower_end_beyond(
            interval.low,
            self.k,
            interval.low_sigma,
            self.limit,
            !self.equal_is_within,
        )
    }

    /// True where one part alone is beyond, or everything that is known together: whatever else is missing can only
    /// add to it.
    pub fn is_beyond_by_what_is_known(&self, terms: &[Term]) -> bool {
        let known: Vec<Term> = terms.iter().copied().filter(|(part, _)| gap_of(*part).is_none()).collect();
        let together = |terms: &[Term]| {
            Interval::without_together(terms).is_ok_and(|interval| self.is_beyond(&interval))
        };
        known.iter().any(|&(part, may_be_less)| match part {
            // Above the range means above this number, so at the limit is beyond it.
            Part::AtLeast(lowest) => !may_be_less && lowest >= self.limit,
            Part::Number(..) => together(&[(part, may_be_less)]),
            _ => false,
        }) || together(&known)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(value: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(value)
    }

    fn number(value: i64, sigma: i64) -> Part {
        Part::Number(mg(value), Sigma::from_one_sigma(mg(sigma)).unwrap())
    }

    fn whole(parts: &[Part]) -> Vec<Term> {
        parts.iter().map(|part| (*part, false)).collect()
    }

    fn below_100() -> Threshold {
        Threshold { limit: mg(100), k: Coverage::THREE, equal_is_within: true }
    }

    #[test]
    fn ends_and_sigmas_of_numbers_are_the_same() {
        let sum = Interval::of(&whole(&[number(10, 1), number(20, 2), number(30, 2)])).unwrap();
        assert_eq!((sum.low, sum.high), (mg(60), Some(mg(60))));
        assert_eq!(sum.low_sigma.to_mass_fraction(), mg(3));
        assert_eq!(sum.high_sigma.to_mass_fraction(), mg(3));
        assert_eq!(sum.high_sigma_if_together, mg(5));
        assert!(!sum.censored);
    }

    #[test]
    fn a_censored_part_widens_the_upper_end_only() {
        let sum = Interval::of(&whole(&[number(10, 4), Part::Below(mg(9))])).unwrap();
        assert_eq!((sum.low, sum.high), (mg(10), Some(mg(19))));
        assert_eq!(sum.low_sigma.to_mass_fraction(), mg(4));
        assert_eq!(sum.high_sigma.to_mass_fraction(), mg(5));
        assert_eq!(sum.high_sigma_if_together, mg(7));
        assert!(sum.censored);
    }

    #[test]
    fn a_species_may_be_as_little_as_nothing() {
        let sum = Interval::of(&[(number(10, 4), false), (number(90, 3), true)]).unwrap();
        assert_eq!((sum.low, sum.high), (mg(10), Some(mg(100))));
        assert_eq!(sum.low_sigma.to_mass_fraction(), mg(4));
        assert_eq!(sum.high_sigma.to_mass_fraction(), mg(5));
        let above = Interval::of(&[(Part::AtLeast(mg(500)), true), (number(1, 1), false)]).unwrap();
        assert_eq!((above.low, above.high), (mg(1), None));
    }

    #[test]
    fn a_part_above_the_range_leaves_the_upper_end_open() {
        let sum = Interval::of(&whole(&[Part::AtLeast(mg(50)), number(10, 2)])).unwrap();
        assert_eq!((sum.low, sum.high), (mg(60), None));
        assert_eq!(sum.high_sigma.to_mass_fraction(), mg(2));
        assert_eq!(sum.high_sigma_if_together, mg(2));
        assert!(!below_100().has_within(&sum) && !below_100().is_beyond(&sum));
    }

    #[test]
    fn the_worst_gap_is_the_one_that_is_named() {
        let gap = |parts: &[Part]| Interval::of(&whole(parts)).unwrap_err();
        let all = [Part::LimitNotStated, Part::NoUncertainty, number(1, 1), Part::NotMeasured];
        assert_eq!(gap(&all), Gap::NotMeasured);
        assert_eq!(gap(&[]), Gap::NotMeasured);
        assert_eq!(gap(&all[..3]), Gap::NoUncertainty);
        assert_eq!(gap(&all[..1]), Gap::LimitNotStated);
        let whole_sample = number(1, 1_000_000);
        assert_eq!(gap(&[whole_sample; 3]), Gap::NoUncertainty);
    }

    #[test]
    fn the_operator_decides_at_the_limit() {
        let at = |value, equal_is_within| {
            let threshold = Threshold { equal_is_within, ..below_100() };
            let one = Interval::of(&whole(&[number(value, 5)])).unwrap();
            (threshold.has_within(&one), threshold.is_beyond(&one))
        };
        assert_eq!(at(85, true), (true, false));
        assert_eq!(at(85, false), (false, false));
        assert_eq!(at(84, false), (true, false));
        assert_eq!(at(115, true), (false, false));
        assert_eq!(at(115, false), (false, true));
        assert_eq!(at(116, true), (false, true));
    }

    #[test]
    fn what_is_known_may_be_beyond_whatever_is_missing() {
        let beyond = |parts: &[Term]| below_100().is_beyond_by_what_is_known(parts);
        assert!(beyond(&whole(&[number(116, 5), Part::NotMeasured])));
        assert!(!beyond(&whole(&[number(115, 5), Part::NotMeasured])));
        // Neither alone, both together: 61 + 60 - 3 * 5 = 106.
        assert!(beyond(&whole(&[number(61, 3), number(60, 4), Part::NoUncertainty])));
        // One alone, though the other's sigma hides it in the sum.
        assert!(beyond(&whole(&[number(116, 5), number(0, 500), Part::LimitNotStated])));
        assert!(beyond(&whole(&[Part::AtLeast(mg(100)), Part::NotMeasured])));
        assert!(!beyond(&whole(&[Part::AtLeast(mg(99)), Part::NotMeasured])));
        assert!(!beyond(&[(Part::AtLeast(mg(100)), true), (number(900, 1), true)]));
        assert!(!beyond(&whole(&[Part::Below(mg(900)), Part::NotMeasured])));
        assert!(!beyond(&whole(&[Part::NotMeasured])));
    }
}
