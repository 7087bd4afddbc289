//! What is known of a supplier and a part over all inspections: lots, near misses, trends, laboratories, holds, and how
//! severely the next lot is to be inspected.
//!
//! All of it is shown and nothing of it decides: a good history never makes a lot better.

mod records;
mod severity;
mod trend;

pub use records::lot_records;
pub use severity::Next;
pub use trend::{FEWEST_FOR_TREND, Trend};

use std::collections::{BTreeMap, BTreeSet};

use crate::change::latest;
use crate::day::Day;
use crate::history::LotRecord;
use crate::inspection::{Findings, Inspection};
use crate::lot::Disposition;
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::quantity::{Coverage, MassFraction};
use crate::substance::{Element, Substance};

/// One lot of a supplier's part.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LotSeen {
    /// Lot; empty where not stated, then it stands for one inspection.
    pub lot: String,
    /// The day of its latest review; `None` where nobody said.
    pub day: Option<Day>,
    /// Its disposition then; of one day the worse.
    pub disposition: Disposition,
    /// True where it is a lot of this inspection.
    pub here: bool,
}

/// Lots in which a substance was BL by less than one sigma.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NearMiss {
    /// The substance.
    pub substance: Substance,
    /// How many lots.
    pub lots: usize,
    /// The smallest distance from the low edge in hundredths of a sigma.
    pub nearest: u32,
}

/// A trend of one material.
#[derive(Clone, Debug, PartialEq)]
pub struct MaterialTrend {
    /// The material; empty where not stated.
    pub material: String,
    /// Its class.
    pub class: MaterialClass,
    /// The trend.
    pub trend: Trend,
}

/// What laboratories said of the screen in one class of material: how many results.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct LabTally {
    /// They agree with BL or OL.
    pub agreed: u64,
    /// False positives: OL on the screen, within at the laboratory.
    pub over_was_within: u64,
    /// False negatives: BL on the screen, over at the laboratory.
    pub below_was_over: u64,
    /// Open on the screen (X or no answer), within at the laboratory.
    pub open_was_within: u64,
    /// Open on the screen, over at the laboratory.
    pub open_was_over: u64,
    /// The laboratory's own answer is open.
    pub open: u64,
}

impl LabTally {
    fn add(&mut self, screen: &str, found: &str) {
        let below = screen == Outcome::Below.code();
        let over = screen == Outcome::Over.code();
        *match found {
            records::WITHIN if below => &mut self.agreed,
            records::WITHIN if over => &mut self.over_was_within,
            records::WITHIN => &mut self.open_was_within,
            records::OVER if over => &mut self.agreed,
            records::OVER if below => &mut self.below_was_over,
            records::OVER => &mut self.open_was_over,
            _ => &mut self.open,
        } += 1;
    }
}

/// The history of one part of one supplier.
#[derive(Clone, Debug, PartialEq)]
pub struct SupplierHistory {
    /// Supplier; empty where not stated.
    pub supplier: String,
    /// Part; empty where not stated.
    pub part: String,
    /// Its lots, sorted by day and then by lot; those without a day last, and in no series.
    pub lots: Vec<LotSeen>,
    /// Near misses, by substance.
    pub near_misses: Vec<NearMiss>,
    /// How many trends were looked at.
    pub trends_looked_at: usize,
    /// Those that are no chance.
    pub trends: Vec<MaterialTrend>,
    /// What laboratories said, by class.
    pub laboratory: BTreeMap<MaterialClass, LabTally>,
    /// What the switching rules suggest for its next lot; `None` where supplier or part is not stated.
    pub next: Option<Next>,
}

impl SupplierHistory {
    /// How many of its lots have a disposition.
    pub fn count(&self, disposition: Disposition) -> usize {
        self.lots.iter().filter(|lot| lot.disposition == disposition).count()
    }

    /// How many of its lots have no day.
    pub fn without_day(&self) -> usize {
        self.lots.iter().filter(|lot| lot.day.is_none()).count()
    }

    /// True where a lot of this inspection is among its lots.
    pub fn is_here(&self) -> bool {
        self.lots.iter().any(|lot| lot.here)
    }
}

/// The history of every supplier and part, sorted, over the loaded history and this inspection. A lot that stands in both
/// counts once.
pub fn histories(inspection: &Inspection, findings: &Findings) -> Vec<SupplierHistory> {
    let own = lot_records(inspection, findings);
    let k = inspection.books.screening().map_or(Coverage::THREE, |(_, rule)| rule.sigma_factor);
    histories_of(&inspection.history.lots, &own, k)
}

/// The same from records: those of earlier inspections, and those of this one. `k` is the screening book's factor of sigma.
///
/// # Decision
/// A near miss is a BL of which one sigma more would have made an X: the nearest BL number lies less than k + 1 sigma from
/// the low edge. The series is of lots with a day that are settled: a lot on hold is not counted, and one that was ever not
/// accepted is not accepted, whatever a later review of it says.
pub fn histories_of(
    earlier: &BTreeSet<LotRecord>,
    own: &BTreeSet<LotRecord>,
    k: Coverage,
) -> Vec<SupplierHistory> {
    let mut by_part: BTreeMap<(&str, &str), Vec<&LotRecord>> = BTreeMap::new();
    // A record that an inspection left stands in both where its history was saved: each counts once.
    for record in earlier.union(own) {
        by_part.entry((&record.supplier, &record.part)).or_default().push(record);
    }
    by_part.into_iter().map(|((supplier, part), records)| history(supplier, part, &records, own, k)).collect()
}

type LotName<'a> = (&'a str, &'a str);

/// A lot by its name, or by the inspection where it has none.
fn lot_of(record: &LotRecord) -> LotName<'_> {
    (&record.lot, if record.lot.is_empty() { &record.inspection } else { "" })
}

fn history(
    supplier: &str,
    part: &str,
    records: &[&LotRecord],
    own: &BTreeSet<LotRecord>,
    k: Coverage,
) -> SupplierHistory {
    let of_part = own.iter().filter(|one| one.supplier == supplier && one.part == part);
    let here: BTreeSet<LotName<'_>> = of_part.map(lot_of).collect();
    let mut lots: BTreeMap<LotName<'_>, (LotSeen, bool)> = BTreeMap::new();
    for record in records {
        let refused = record.disposition == Disposition::NotAccept;
        let seen = LotSeen {
            lot: record.lot.clone(),
            day: record.day,
            disposition: record.disposition,
            here: here.contains(&lot_of(record)),
        };
        lots.entry(lot_of(record))
            .and_modify(|(known, ever_refused)| {
                *ever_refused |= refused;
                if (seen.day, seen.disposition) > (known.day, known.disposition) {
                    *known = seen.clone();
                }
            })
            .or_insert((seen, refused));
    }
    let mut in_order: Vec<(LotName<'_>, LotSeen, bool)> =
        lots.into_iter().map(|(name, (seen, refused))| (name, seen, refused)).collect();
    in_order.sort_by_key(|(name, seen, _)| (seen.day.is_none(), seen.day, *name));
    let series: Vec<bool> = in_order
        .iter()
        .filter(|(_, seen, refused)| {
            seen.day.is_some() && (*refused || seen.disposition != Disposition::Hold)
        })
        .map(|(_, _, refused)| !refused)
        .collect();
    let counted = latest(records.iter().copied());
    let place: BTreeMap<LotName<'_>, usize> = in_order
        .iter()
        .filter(|(_, seen, _)| seen.day.is_some())
        .enumerate()
        .map(|(at, (name, _, _))| (*name, at))
        .collect();
    let (trends_looked_at, trends) = trends(&counted, &place);
    let mut laboratory: BTreeMap<MaterialClass, LabTally> = BTreeMap::new();
    for record in &counted {
        for (_, screen, found) in &record.laboratory {
            laboratory.entry(record.class).or_default().add(screen, found);
        }
    }
    SupplierHistory {
        supplier: supplier.to_owned(),
        part: part.to_owned(),
        near_misses: near_misses(&counted, k),
        trends_looked_at,
        trends,
        laboratory,
        next: (!supplier.is_empty() && !part.is_empty()).then(|| severity::next(&series)),
        lots: in_order.into_iter().map(|(_, seen, _)| seen).collect(),
    }
}

fn near_misses(records: &[&LotRecord], k: Coverage) -> Vec<NearMiss> {
    let near = (u32::from(k.tenths()) + 10) * 10;
    let of_substance = |substance: Substance| {
        let found: Vec<(LotName<'_>, u32)> = records
            .iter()
            .filter_map(|record| Some((lot_of(record), record.nearest.filter(|(of, _)| *of == substance)?.1)))
            .filter(|(_, margin)| *margin < near)
            .collect();
        let lots: BTreeSet<LotName<'_>> = found.iter().map(|(lot, _)| *lot).collect();
        let nearest = found.iter().map(|(_, margin)| *margin).min()?;
        Some(NearMiss { substance, lots: lots.len(), nearest })
    };
    Substance::ALL.into_iter().filter_map(of_substance).collect()
}

/// How many trends were looked at, and those that are no chance.
fn trends(records: &[&LotRecord], place: &BTreeMap<LotName<'_>, usize>) -> (usize, Vec<MaterialTrend>) {
    let mut amounts: BTreeMap<(&str, MaterialClass, Element), BTreeMap<usize, MassFraction>> =
        BTreeMap::new();
    for record in records {
        let Some(at) = place.get(&lot_of(record)) else { continue };
        for amount in record.composition.iter().filter(|amount| !amount.below) {
            let key = (record.material.as_str(), record.class, amount.element);
            amounts.entry(key).or_default().insert(*at, amount.value);
        }
    }
    let found: Vec<MaterialTrend> = amounts
        .into_iter()
        .filter_map(|((material, class, element), lots)| {
            let in_order: Vec<MassFraction> = lots.into_values().collect();
            let trend = trend::trend(element, &in_order)?;
            Some(MaterialTrend { material: material.to_owned(), class, trend })
        })
        .collect();
    let looked_at = found.len();
    (looked_at, found.into_iter().filter(|one| one.trend.is_real(looked_at)).collect())
}

#[cfg(test)]
mod tests;
