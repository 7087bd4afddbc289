//! Bills of materials that earlier accepted lots suggest. They are offered and never taken over by themselves: a lot may
//! have been accepted with a material that nobody measured.

use std::collections::BTreeSet;

use crate::acts::{Act, ActKind, Target, escape, same_name};
use crate::day::Day;
use crate::history::LotRecord;
use crate::inspection::{Findings, Inspection};
use crate::lot::Disposition;

/// A bill for a part that has none, as the last accepted lot of the same part and supplier had it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BillOffer {
    /// The part, as the files of this inspection spell it.
    pub part: String,
    /// The supplier; empty where not stated.
    pub supplier: String,
    /// The lot it is learned from.
    pub lot: String,
    /// The day of its review; `None` where nobody said.
    pub day: Option<Day>,
    /// The materials that were measured there.
    pub materials: Vec<String>,
}

impl BillOffer {
    /// The act that takes it over; whoever does it signs it.
    pub fn act(&self) -> Act {
        let names: Vec<String> = self.materials.iter().map(|name| escape(name)).collect();
        Act {
            kind: ActKind::BillOfMaterials,
            target: Target::Part(self.part.clone()),
            value: names.join("|"),
            by: String::new(),
            at: String::new(),
            note: self.lot.clone(),
        }
    }
}

/// What the history offers for the parts of this inspection that have no bill, by part and supplier.
///
/// Only lots that were accepted count, the last one by day, never this one itself.
pub fn bill_offers(inspection: &Inspection, findings: &Findings) -> Vec<BillOffer> {
    let settings = inspection.settings();
    let mut asked: BTreeSet<(String, String, String)> = BTreeSet::new();
    for part in &findings.parts {
        let (Some(name), Some(lot)) = (&part.part, findings.lots.get(part.lot)) else { continue };
        if settings.bill_of_materials(name).is_none() {
            let of = |text: &Option<String>| text.clone().unwrap_or_default();
            asked.insert((name.clone(), of(&lot.supplier), of(&lot.lot)));
        }
    }
    let mut offers: Vec<BillOffer> = Vec::new();
    for (part, supplier, own_lot) in asked {
        let fits = |record: &&LotRecord| {
            same_name(&record.part, &part)
                && same_name(&record.supplier, &supplier)
                && record.lot != own_lot
                && record.disposition == Disposition::Accept
                && !record.material.is_empty()
        };
        let accepted = || inspection.history.lots.iter().filter(fits);
        let key = |record: &LotRecord| (record.day, record.lot.clone(), record.inspection.clone());
        let Some(last) = accepted().map(key).max() else { continue };
        let materials: BTreeSet<String> =
            accepted().filter(|record| key(record) == last).map(|record| record.material.clone()).collect();
        let (day, lot, _) = last;
        let offer = BillOffer { part, supplier, lot, day, materials: materials.into_iter().collect() };
        if !offers.contains(&offer) {
            offers.push(offer);
        }
    }
    offers
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::inspection::{LotFinding, PartFinding};
    use crate::material::MaterialClass;

    fn record(lot: &str, material: &str, day: &str, disposition: Disposition) -> LotRecord {
        LotRecord {
            supplier: "Alder Works".into(),
            part: "P-1".into(),
            material: material.into(),
            lot: lot.into(),
            class: MaterialClass::Metal,
            day: Day::parse(day),
            disposition,
            of_material: disposition,
            outcomes: Default::default(),
            nearest: None,
            laboratory: Vec::new(),
            composition: Vec::new(),
            readings: 1,
            inspection: "0".into(),
        }
    }

    fn findings(part: &str) -> Findings {
        let lot = LotFinding {
            lot: Some("A-9".into()),
            supplier: Some("Alder Works".into()),
            source: None,
            readings: 1,
            units: 0,
            sampling: None,
            materials: 1,
            hold_ends: None,
            disposition: Disposition::Hold,
            reasons: Vec::new(),
        };
        let part = PartFinding {
            lot: 0,
            part: Some(part.into()),
            disposition: Disposition::Hold,
            reasons: Vec::new(),
        };
        Findings { lots: vec![lot], parts: vec![part], ..Findings::default() }
    }

    #[test]
    fn the_last_accepted_lot_of_the_part_and_supplier_is_offered_and_nothing_else() {
        let mut inspection = Inspection::new().unwrap();
        let lots = &mut inspection.history.lots;
        lots.insert(record("A-1", "old", "2026-01-01", Disposition::Accept));
        lots.insert(record("A-2", "pin", "2026-02-01", Disposition::Accept));
        lots.insert(record("A-2", "lid | cap", "2026-02-01", Disposition::Accept));
        lots.insert(record("A-3", "new", "2026-03-01", Disposition::Hold));
        lots.insert(record("A-9", "own", "2026-04-01", Disposition::Accept));
        lots.insert(LotRecord {
            supplier: "Birch Works".into(),
            ..record("B-1", "other", "2026-05-01", Disposition::Accept)
        });
        let offers = bill_offers(&inspection, &findings("p-1"));
        assert_eq!(offers.len(), 1);
        assert_eq!((offers[0].part.as_str(), offers[0].lot.as_str()), ("p-1", "A-2"));
        assert_eq!(offers[0].day, Day::parse("2026-02-01"));
        assert_eq!(offers[0].act().value, "lid \\| cap|pin");
        assert_eq!(offers[0].act().target, Target::Part("p-1".into()));
        assert!(bill_offers(&inspection, &findings("P-2")).is_empty());
        inspection.acts.push(offers[0].act());
        assert!(
            bill_offers(&inspection, &findings("p-1")).is_empty(),
            "a part that has its bill is offered none"
        );
    }
}
