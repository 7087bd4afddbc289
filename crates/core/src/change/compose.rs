//! What a material is made of, over all its readings: one amount for each element.

use std::collections::BTreeMap;

use crate::history::Amount;
use crate::judging::SourceReview;
use crate::outcome::SigmaFrom;
use crate::quantity::{MassFraction, UNITS_PER_MG_KG};
use crate::reading::{CellState, Source};
use crate::substance::Element;

/// One element of a material as its readings have it.
#[derive(Clone, Debug, PartialEq)]
pub struct Composed {
    /// The amount, as it is kept in a history.
    pub amount: Amount,
    /// One sigma of the mean in mg/kg by the printed errors, each reading's independent of the others'; 0 where none
    /// is printed, and for a limit.
    pub sigma: f64,
}

#[derive(Default)]
struct Gathered {
    numbers: u64,
    sum: i128,
    /// Squares in units squared, whole, so that the order of readings changes no bit.
    squares: u128,
    below: u64,
    without_limit: u64,
    above: u64,
    /// The largest of the numbers and limits.
    most: MassFraction,
}

/// The composition of a material: per element the mean of the numbers, or, where it was not detected in most readings,
/// the largest of its limits and numbers, below which it lies.
///
/// # Decision
/// An element that reads above a stated upper end somewhere, or was not detected with no limit stated where it is not
/// detected in most, has no amount: nobody knows it. A mean that is zero or negative lies below three sigma of it; without
/// a sigma it has no amount. (Our own choices.)
pub fn compose<'a>(rows: impl Iterator<Item = (&'a Source, &'a SourceReview<'a>, usize)>) -> Vec<Composed> {
    let mut gathered: BTreeMap<Element, Gathered> = BTreeMap::new();
    for (source, reviewer, row) in rows {
        for column in source.readings.elements() {
            let cell = column.cell(row);
            let limit = match cell.state {
                CellState::BelowDetection => Some(cell.value),
                CellState::NotDetected => cell.detection_limit,
                CellState::Number | CellState::AboveRange => None,
                CellState::NoColumn | CellState::UnitUnknown | CellState::Blank | CellState::Text => continue,
            };
            let one = gathered.entry(column.element).or_default();
            match cell.state {
                CellState::Number => {
                    one.numbers += 1;
                    one.sum += i128::from(cell.value.units());
                    one.most = one.most.max(cell.value);
                    let printed = reviewer.printed_sigma(column.element, &cell, row);
                    let sigma = printed.map_or(0, |sigma| sigma.to_mass_fraction().units().unsigned_abs());
                    // Taken as three where nobody states the multiple: here the small sigma is the strict one.
                    let unknown =
                        reviewer.multiple_of(column.element, row).1 == SigmaFrom::PrintedMultipleUnknown;
                    let sigma = u128::from(if unknown { sigma / 3 } else { sigma });
                    one.squares = one.squares.saturating_add(sigma * sigma);
                }
                CellState::AboveRange => one.above += 1,
                _ => match limit {
                    Some(limit) => {
                        one.below += 1;
                        one.most = one.most.max(limit);
                    }
                    None => one.without_limit += 1,
                },
            }
        }
    }
    gathered.into_iter().filter_map(|(element, one)| one.close(element)).collect()
}

impl Gathered {
    fn close(&self, element: Element) -> Option<Composed> {
        if self.above > 0 {
            return None;
        }
        let not_detected = self.below + self.without_limit;
        if self.numbers > 0 && self.numbers >= not_detected {
            let count = i128::from(self.numbers);
            let mean = i64::try_from(self.sum / count).ok().map(MassFraction::from_units)?;
            let sigma = (self.squares as f64).sqrt() / UNITS_PER_MG_KG as f64 / self.numbers as f64;
            if mean > MassFraction::ZERO {
                return Some(Composed { amount: Amount { element, value: mean, below: false }, sigma });
            }
            // Three sigma of a reading, whole, so that no float decides what a history keeps.
            let three = (self.squares.checked_mul(9)? / u128::from(self.numbers)).isqrt();
            let limit = i64::try_from(three).ok().map(MassFraction::from_units)?;
            return (limit > MassFraction::ZERO).then(|| Composed::below(element, limit.max(self.most)));
        }
        (self.without_limit == 0 && self.below > 0 && self.most > MassFraction::ZERO)
            .then(|| Composed::below(element, self.most))
    }
}

impl Composed {
    const fn below(element: Element, limit: MassFraction) -> Composed {
        Composed { amount: Amount { element, value: limit, below: true }, sigma: 0.0 }
    }
}
