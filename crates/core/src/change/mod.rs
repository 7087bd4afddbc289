//! Change of material: is this lot's composition that of the part's accepted lots?
//!
//! Each element stands against everything else in the kilogram, as the logarithm of that ratio. (A ratio to the mean of all
//! measured elements would move every element when one moves, and would be another quantity where other elements were
//! measured.) Its centre over the accepted lots is their median; its spread is the standard deviation of those that are left
//! when the fifth furthest from the centre is left out, so that one odd lot in five bends neither. A lot has changed where
//! one of its elements lies further away than a factor times that spread: the factor is such that of lots that have not
//! changed at most one in a hundred is called changed, for all elements together, whatever hangs together among them
//! (Bonferroni's bound) and however few the lots are. `tests/outside/change.py` works the factors out;
//! `tests/tests/change_simulation.rs` checks the rate.
//!
//! What was not detected may lie anywhere below its limit, and the least distance counts: such a lot is never called
//! changed for a value nobody saw. Nothing here makes anything better: a change holds, and that none is seen is no proof.

mod compose;
mod earlier;
mod factors;

pub use compose::{Composed, compose};
pub use earlier::{RecordKey, inspection_name, key_of, latest};

use std::collections::BTreeMap;

use crate::acts::{folded_name, same_name};
use crate::history::{Amount, History, LotRecord};
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::material::MaterialClass;
use crate::quantity::MassFraction;
use crate::reading::codes;
use crate::statistics;
use crate::substance::Element;
use factors::Factors;

/// Fewest accepted lots a lot is compared with (our own choice).
pub const FEWEST_LOTS: usize = 5;

/// Of lots that have not changed, at most this share is called changed (our own choice).
pub const RATE: f64 = 0.01;

/// No spread counts as less: means of two lots are never told apart finer than two percent (our own choice).
pub const LEAST_SPREAD: f64 = 0.02;

/// The spread of an element that most accepted lots did not show, which has none of its own (our own choice). With the
/// highest value it may have had as its centre, the rate holds while such elements scatter by no more than a factor of two
/// from lot to lot (one sigma); by simulation, not by theory.
pub const SPREAD_OF_UNSEEN: f64 = 0.5;

/// A limit stands for this share of itself where a few accepted lots did not show an element (multiplicative replacement,
/// Martín-Fernández, Barceló-Vidal and Pawlowsky-Glahn 2003, from memory).
pub const REPLACED: f64 = 0.65;

/// Mass fraction of the whole in mg/kg.
const WHOLE: f64 = 1_000_000.0;

/// What lies beside a nearly pure element counts as no less than one percent: finer, the ratio is noise (our own choice).
const LEAST_REST: f64 = 10_000.0;

codes! {
    /// What a comparison with the accepted lots says.
    ChangeVerdict {
        /// Not the composition of the accepted lots.
        Changed => "changed",
        /// No element lies further away than the accepted lots let expect.
        NotChanged => "not_changed",
        /// Too few accepted lots of this material.
        TooFew => "too_few",
        /// Supplier, part or class is not known, or no element can be compared.
        NotComparable => "not_comparable",
    }
}

/// An element that moved.
#[derive(Clone, Debug, PartialEq)]
pub struct Moved {
    /// The element.
    pub element: Element,
    /// The median of the accepted lots in mg/kg; of an element that most of them did not show, the most that any may have
    /// held.
    pub from: MassFraction,
    /// True where `from` is a bound: most accepted lots did not show it.
    pub from_at_most: bool,
    /// This lot's amount in mg/kg.
    pub to: MassFraction,
    /// True where `to` is a limit: it was not detected.
    pub to_at_most: bool,
    /// `to` over `from`.
    pub factor: f64,
    /// How many spreads it lies away.
    pub spreads: f64,
    /// How many were allowed.
    pub allowed: f64,
}

/// A material of a lot beside the part's accepted lots.
#[derive(Clone, Debug, PartialEq)]
pub struct Change {
    /// What it says.
    pub verdict: ChangeVerdict,
    /// How many accepted lots of this material the history has.
    pub lots: usize,
    /// How many elements were compared.
    pub elements: usize,
    /// The class of the accepted lots where it is another one.
    pub other_class: Option<MaterialClass>,
    /// What moved, furthest beyond what is allowed first.
    pub moved: Vec<Moved>,
    /// Elements most accepted lots have that were not measured now.
    pub not_measured: Vec<Element>,
}

/// The material that is compared.
#[derive(Clone, Copy, Debug)]
pub struct Compared<'a> {
    /// Supplier; empty where not stated.
    pub supplier: &'a str,
    /// Part; empty where not stated.
    pub part: &'a str,
    /// Material; empty where not stated, then the class stands in.
    pub material: &'a str,
    /// Lot; empty where not stated.
    pub lot: &'a str,
    /// Class.
    pub class: MaterialClass,
    /// What it is made of.
    pub composition: &'a [Composed],
}

/// The accepted lots of a history, by supplier, part and material, however their names are spelled.
#[derive(Debug)]
pub struct Accepted<'a> {
    by_material: BTreeMap<[String; 3], Vec<&'a LotRecord>>,
    inspection: String,
}

impl<'a> Accepted<'a> {
    /// The accepted lots of a history; `None` where it has no lots at all, and nothing is to be said.
    ///
    /// `inspection` is the name of the inspection that is reviewed: its own earlier record is no earlier lot.
    pub fn new(history: &'a History, inspection: String) -> Option<Accepted<'a>> {
        let mut by_material: BTreeMap<_, Vec<_>> = BTreeMap::new();
        for record in latest(&history.lots).into_iter().filter(|one| one.disposition == Disposition::Accept) {
            let key = [&record.supplier, &record.part, &record.material].map(|name| folded_name(name));
            by_material.entry(key).or_default().push(record);
        }
        (!history.lots.is_empty()).then_some(Accepted { by_material, inspection })
    }

    /// Compares a material with the accepted lots of the same supplier, part, material and class.
    ///
    /// # Decision
    /// With fewer than [`FEWEST_LOTS`] of them nothing is compared. Where all of that many are of one other known class,
    /// the material has changed. Else each element with an amount now and in [`FEWEST_LOTS`] of them or more is compared:
    /// see the head of this module; one that most of them did not show only upwards, with [`SPREAD_OF_UNSEEN`] from the
    /// most that any of them may have held. This lot's own sigma is added to the spread in quadrature.
    pub fn compare(&self, now: Compared<'_>) -> Change {
        let mut change = Change {
            verdict: ChangeVerdict::NotComparable,
            lots: 0,
            elements: 0,
            other_class: None,
            moved: Vec::new(),
            not_measured: Vec::new(),
        };
        let known = self.by_material.get(&[now.supplier, now.part, now.material].map(folded_name));
        let mut lots: Vec<&LotRecord> = known
            .into_iter()
            .flatten()
            .copied()
            .filter(|one| {
                one.inspection != self.inspection && (one.lot.is_empty() || !same_name(&one.lot, now.lot))
            })
            .collect();
        let is_known = |class| class != MaterialClass::Unknown;
        if !is_known(now.class) || now.supplier.is_empty() || now.part.is_empty() {
            return Change { lots: lots.len(), ..change };
        }
        let other = lots.first().map(|one| one.class).filter(|class| is_known(*class) && *class != now.class);
        if let Some(class) = other.filter(|_| !now.material.is_empty() && lots.len() >= FEWEST_LOTS)
            && lots.iter().all(|one| one.class == class)
        {
            let other_class = Some(class);
            return Change { verdict: ChangeVerdict::Changed, lots: lots.len(), other_class, ..change };
        }
        lots.retain(|one| one.class == now.class);
        change.lots = lots.len();
        if lots.len() < FEWEST_LOTS {
            return Change { verdict: ChangeVerdict::TooFew, ..change };
        }
        let earlier = by_element(&lots);
        let amount_of = |element| now.composition.iter().find(|composed| composed.amount.element == element);
        for (element, amounts) in &earlier {
            let shown = amounts.iter().filter(|amount| !amount.below).count();
            if amount_of(*element).is_none() && 2 * shown > lots.len() {
                change.not_measured.push(*element);
            }
        }
        let compared: Vec<(&Composed, &Vec<&Amount>)> = now
            .composition
            .iter()
            .filter_map(|composed| Some((composed, earlier.get(&composed.amount.element)?)))
            .filter(|(_, amounts)| amounts.len() >= FEWEST_LOTS)
            .collect();
        change.elements = compared.len();
        if compared.is_empty() {
            return change;
        }
        change.moved = compared
            .iter()
            .filter_map(|(composed, amounts)| moved(composed, amounts, compared.len()))
            .collect();
        change
            .moved
            .sort_by(|one, other| (other.spreads / other.allowed).total_cmp(&(one.spreads / one.allowed)));
        change.verdict =
            if change.moved.is_empty() { ChangeVerdict::NotChanged } else { ChangeVerdict::Changed };
        change
    }
}

impl Change {
    /// The reason it gives its material: a change holds; that nothing could be compared is only printed.
    pub fn reason(&self, about: &str) -> Option<LotReason> {
        let reason = |code, effect, count: usize, of: usize| {
            Some(LotReason { code, effect, about: about.to_owned(), count: count as u64, of: of as u64 })
        };
        match self.verdict {
            ChangeVerdict::NotChanged => None,
            ChangeVerdict::Changed => {
                let (count, of) = (self.moved.len(), self.elements);
                reason(LotReasonCode::MaterialChanged, Disposition::Hold, count, of)
            }
            ChangeVerdict::TooFew => {
                reason(LotReasonCode::ChangeNotCompared, Disposition::Accept, self.lots, FEWEST_LOTS)
            }
            ChangeVerdict::NotComparable => {
                reason(LotReasonCode::ChangeNotCompared, Disposition::Accept, self.lots, 0)
            }
        }
    }
}

fn by_element<'a>(lots: &[&'a LotRecord]) -> BTreeMap<Element, Vec<&'a Amount>> {
    let mut found: BTreeMap<Element, Vec<&Amount>> = BTreeMap::new();
    for amount in lots.iter().flat_map(|lot| &lot.composition) {
        if amount.value > MassFraction::ZERO {
            found.entry(amount.element).or_default().push(amount);
        }
    }
    found
}

/// An element against everything else in the kilogram.
///
/// # Units
/// mg/kg, above zero.
pub fn log_ratio(mg_per_kg: f64) -> f64 {
    libm::log(mg_per_kg / (WHOLE - mg_per_kg).max(LEAST_REST))
}

/// Median and spread of log ratios, the spread made right for so few on average.
///
/// # Errors
/// `None` below [`FEWEST_LOTS`] values.
pub fn centre_and_spread(values: &[f64]) -> Option<(f64, f64)> {
    let right = Factors::built_in().right(values.len())?;
    let centre = median(values)?;
    let mut nearest = values.to_vec();
    nearest.sort_by(|one, other| {
        (one - centre).abs().total_cmp(&(other - centre).abs()).then(one.total_cmp(other))
    });
    nearest.truncate(values.len() - values.len() / 5);
    Some((centre, right * statistics::moments(&nearest)?.sd()))
}

fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    sorted.sort_by(f64::total_cmp);
    let middle = sorted.len() / 2;
    let upper = *sorted.get(middle)?;
    if sorted.len() % 2 == 1 { Some(upper) } else { Some(0.5 * (sorted.get(middle - 1)? + upper)) }
}

/// One sigma of a log ratio.
fn log_sigma(value: f64, sigma: f64) -> f64 {
    let rest = WHOLE - value;
    if rest > LEAST_REST { sigma / value + sigma / rest } else { sigma / value }
}

/// How one element moved; `None` where it did not, by the factor for so many elements.
fn moved(now: &Composed, earlier: &[&Amount], elements: usize) -> Option<Moved> {
    let value = now.amount.value.to_mg_per_kg();
    let ratio = log_ratio(value);
    let shown = earlier.iter().filter(|amount| !amount.below).count();
    let from_at_most = 2 * shown <= earlier.len();
    let (from, away, spread, allowed) = if from_at_most {
        let most = earlier.iter().map(|amount| amount.value).max()?;
        let away = ratio - log_ratio(most.to_mg_per_kg());
        if now.amount.below || away <= 0.0 {
            return None;
        }
        (most, away, SPREAD_OF_UNSEEN, statistics::normal_upper_quantile(RATE / elements as f64)?)
    } else {
        let ratios: Vec<f64> = earlier
            .iter()
            .map(|amount| {
                let value = amount.value.to_mg_per_kg();
                log_ratio(if amount.below { REPLACED * value } else { value })
            })
            .collect();
        let (centre, spread) = centre_and_spread(&ratios)?;
        let away = ratio - centre;
        // Not detected: it may lie anywhere below, so only a limit below the centre says anything.
        if now.amount.below && away >= 0.0 {
            return None;
        }
        // Accepted lots may have held as little: more of them than the spread leaves out.
        let as_little =
            earlier.iter().filter(|amount| amount.below && amount.value >= now.amount.value).count();
        if away < 0.0 && 5 * as_little > earlier.len() {
            return None;
        }
        let factor = Factors::built_in().factor(earlier.len(), elements)?;
        (median_amount(earlier)?, away.abs(), spread, factor)
    };
    let own = log_sigma(value, now.sigma);
    let whole = (spread * spread + own * own).sqrt().max(LEAST_SPREAD);
    let spreads = away / whole;
    (spreads > allowed).then(|| Moved {
        element: now.amount.element,
        from,
        from_at_most,
        to: now.amount.value,
        to_at_most: now.amount.below,
        factor: value / from.to_mg_per_kg(),
        spreads,
        allowed,
    })
}

/// The median of amounts in mg/kg; a limit counts as itself.
fn median_amount(amounts: &[&Amount]) -> Option<MassFraction> {
    let mut units: Vec<i64> = amounts.iter().map(|amount| amount.value.units()).collect();
    units.sort_unstable();
    let middle = units.len() / 2;
    let upper = *units.get(middle)?;
    let lower = if units.len() % 2 == 1 { upper } else { *units.get(middle - 1)? };
    Some(MassFraction::from_units(lower + (upper - lower) / 2))
}

#[cfg(test)]
pub(crate) mod tests;
