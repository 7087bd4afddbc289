//! Alloy families by published composition ranges, and how a composition fits one.

use std::cmp::Ordering;

use super::AlloyGroup;
use super::data::{group_of_code, read_range};
use crate::quantity::{self, Coverage, MassFraction, Sigma};
use crate::reading::{Cell, CellState, codes};
use crate::substance::Element;

/// The published range of one element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Range {
    /// The element.
    pub element: Element,
    /// Low edge; zero where none is published.
    pub low: MassFraction,
    /// High edge.
    pub high: MassFraction,
    /// Low edge with the permitted deviation of a product analysis.
    pub outer_low: MassFraction,
    /// High edge with the permitted deviation of a product analysis.
    pub outer_high: MassFraction,
}

/// An alloy family.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Family {
    /// Its code in findings.
    pub code: String,
    /// Its designations.
    pub name: String,
    /// Its group.
    pub group: AlloyGroup,
    /// Published ranges, in the file's order.
    pub ranges: Vec<Range>,
    /// The elements of which one has the largest mass fraction after the main one, where the designation says so.
    pub next: Vec<Element>,
    /// Document.
    pub source: String,
    /// Clause; empty where none is known.
    pub clause: String,
    /// How sure the row is.
    pub confidence: String,
}

/// `copper: Cu 57 to 59; Zn next; Pb 2.5 to 3.5`, `aluminium: Mg/Si next; Pb 0.4 to 0.7`.
pub(super) fn read_family(text: &str) -> Option<(AlloyGroup, Vec<Range>, Vec<Element>)> {
    let (group, parts) = text.split_once(": ")?;
    let (mut ranges, mut next) = (Vec::new(), Vec::new());
    for part in parts.split("; ") {
        let words: Vec<&str> = part.split(' ').collect();
        let (symbol, rest) = words.split_first()?;
        if rest == ["next"] {
            next = symbol.split('/').map(Element::from_symbol).collect::<Option<_>>()?;
        } else {
            ranges.push(read_range(Element::from_symbol(symbol)?, rest)?);
        }
    }
    (!ranges.is_empty()).then_some((group_of_code(group)?, ranges, next))
}

codes! {
    /// How a measurement lies to a published range.
    RangeFit {
        /// Inside, with more than 3 s to either edge.
        Inside => "inside",
        /// An edge is within 3 s, the uncertainty is not known, or only the permitted deviation covers it.
        NearEdge => "near_edge",
        /// Outside, with more than 3 s to the edge.
        Outside => "outside",
        /// Not measured.
        NotMeasured => "not_measured",
    }
}

codes! {
    /// How a composition fits a family.
    FamilyFit {
        /// Every range: inside.
        Fits => "fits",
        /// No range: outside, but not every one: inside.
        MayBe => "may_be",
        /// Lead alone misses its range, and by little; the nearest family.
        Near => "near",
    }
}

/// How one element of a composition lies to its range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct RangeFound {
    /// The range.
    pub range: Range,
    /// The number, where there is one.
    pub value: Option<MassFraction>,
    /// How it lies.
    pub fit: RangeFit,
    /// How far outside the published range the number is; zero inside it, and without a number.
    pub outside_by: MassFraction,
}

/// The family a composition fits best.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FamilyFound<'a> {
    /// The family.
    pub family: &'a Family,
    /// How well.
    pub fit: FamilyFit,
    /// Range by range, in the file's order.
    pub ranges: Vec<RangeFound>,
    /// Other families that fit as well.
    pub also: Vec<&'a Family>,
}

/// How a cell lies to a range.
///
/// # Decision
/// Inside or outside only where the nearest edge is more than 3 s away; what lies nearer, or has no uncertainty and is
/// not outside, only may be inside. Below detection at D means anything up to D + 3 (D/3).
pub(super) fn range_found(range: Range, cell: &Cell, sigma: Option<Sigma>) -> RangeFound {
    let (x, k) = (cell.value, Coverage::THREE);
    let value = (cell.state == CellState::Number).then_some(x);
    let fit = match (cell.state, sigma) {
        (CellState::Number, Some(s)) => {
            // A low edge of zero is none: nothing lies below it.
            let above_low =
                range.low == MassFraction::ZERO || quantity::lower_end_beyond(x, k, s, range.low, false);
            if above_low && quantity::upper_end_within(x, k, s, range.high, false) {
                RangeFit::Inside
            } else if quantity::upper_end_within(x, k, s, range.outer_low, false)
                || quantity::lower_end_beyond(x, k, s, range.outer_high, false)
            {
                RangeFit::Outside
            } else {
                RangeFit::NearEdge
            }
        }
        (CellState::Number, None) => {
            if x < range.outer_low && range.outer_low > MassFraction::ZERO || x > range.outer_high {
                RangeFit::Outside
            } else {
                RangeFit::NearEdge
            }
        }
        (CellState::BelowDetection, _) => {
            let upper = x.plus(x);
            if upper < range.outer_low {
                RangeFit::Outside
            } else if range.low == MassFraction::ZERO && upper < range.high {
                RangeFit::Inside
            } else {
                RangeFit::NearEdge
            }
        }
        (CellState::AboveRange, _) if x > range.outer_high => RangeFit::Outside,
        (CellState::AboveRange, _) => RangeFit::NearEdge,
        _ => RangeFit::NotMeasured,
    };
    let outside_by = value.map_or(0, |x| {
        // Where no low edge is published nothing lies below it.
        let below = if range.low > MassFraction::ZERO { range.low.units() - x.units() } else { 0 };
        below.max(x.units() - range.high.units()).max(0)
    });
    RangeFound { range, value, fit, outside_by: MassFraction::from_units(outside_by) }
}

impl FamilyFound<'_> {
    /// Better families first: by fit, then by ranges inside, then by ranges measured. A tie is left to the file's order.
    fn compare(&self, other: &FamilyFound<'_>) -> Ordering {
        let count =
            |found: &FamilyFound<'_>, fit| found.ranges.iter().filter(|range| range.fit == fit).count();
        self.fit
            .cmp(&other.fit)
            .then_with(|| count(other, RangeFit::Inside).cmp(&count(self, RangeFit::Inside)))
            .then_with(|| count(self, RangeFit::NotMeasured).cmp(&count(other, RangeFit::NotMeasured)))
    }
}

/// How a composition fits one family; `None` where it doesn't.
///
/// `next` is the element with the largest mass fraction after the main one. Lead is what makes these families: where it
/// was not measured none is named.
pub(super) fn family_found(
    family: &Family,
    near_miss: MassFraction,
    measured: impl Fn(Element) -> (Cell, Option<Sigma>),
    next: Option<Element>,
) -> Option<FamilyFound<'_>> {
    if !family.next.is_empty() && !next.is_some_and(|next| family.next.contains(&next)) {
        return None;
    }
    // Counted before anything is kept: most families don't fit most alloys, and then nothing is allocated.
    let found = |range: &Range| {
        let (cell, sigma) = measured(range.element);
        range_found(*range, &cell, sigma)
    };
    let (mut outside, mut near, mut sure) = (0, 0, true);
    for range in &family.ranges {
        let one = found(range);
        match one.fit {
            RangeFit::Inside => {}
            RangeFit::Outside => {
                outside += 1;
                near += usize::from(is_near_miss(&one, near_miss));
            }
            RangeFit::NotMeasured if range.element == Element::PB => return None,
            RangeFit::NearEdge | RangeFit::NotMeasured => sure = false,
        }
    }
    let fit = match (outside, near, sure) {
        (0, _, true) => FamilyFit::Fits,
        (0, ..) => FamilyFit::MayBe,
        (1, 1, _) => FamilyFit::Near,
        _ => return None,
    };
    Some(FamilyFound { family, fit, ranges: family.ranges.iter().map(found).collect(), also: Vec::new() })
}

/// True where lead lies outside by at most this share of the edge it misses. Another element that misses its range makes
/// another alloy.
fn is_near_miss(one: &RangeFound, share: MassFraction) -> bool {
    let Some(value) = one.value.filter(|_| one.range.element == Element::PB) else { return false };
    let edge = if value < one.range.low { one.range.low } else { one.range.high };
    let whole = i128::from(MassFraction::from_mg_per_kg(1_000_000).units());
    i128::from(one.outside_by.units()) * whole <= i128::from(edge.units()) * i128::from(share.units())
}

/// The best of several, with the others that are as possible beside it: a family that fits does not rule out one that
/// may be.
pub(super) fn best_of<'a>(found: impl Iterator<Item = FamilyFound<'a>>) -> Option<FamilyFound<'a>> {
    let mut all: Vec<FamilyFound<'a>> = found.collect();
    // The first of those that tie.
    let at = (0..all.len()).min_by(|a, b| match (all.get(*a), all.get(*b)) {
        (Some(one), Some(other)) => one.compare(other),
        _ => Ordering::Equal,
    })?;
    let mut best = all.remove(at);
    let near = best.fit == FamilyFit::Near;
    best.also =
        all.iter().filter(|other| (other.fit == FamilyFit::Near) == near).map(|other| other.family).collect();
    Some(best)
}
