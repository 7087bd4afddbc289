//! The lots of a history, each once: of several records of one lot the latest counts.

use std::collections::BTreeMap;

use crate::history::LotRecord;
use crate::material::MaterialClass;
use crate::reading::{Source, sha256_hexadecimal};

/// What a record is of: supplier, part, material, the class that stands in for a missing name, lot, and the inspection that
/// stands in for a missing lot.
pub type RecordKey<'a> = (&'a str, &'a str, &'a str, Option<MaterialClass>, &'a str, &'a str);

/// The key of a record.
pub fn key_of(record: &LotRecord) -> RecordKey<'_> {
    let class = record.material.is_empty().then_some(record.class);
    let inspection = if record.lot.is_empty() { record.inspection.as_str() } else { "" };
    (&record.supplier, &record.part, &record.material, class, &record.lot, inspection)
}

/// One record for each material of each lot, sorted by key: the one of the latest day; of the same day the one with the
/// worse disposition. A record without a day gives way to any with one. The order records come in changes nothing.
pub fn latest<'a>(records: impl IntoIterator<Item = &'a LotRecord>) -> Vec<&'a LotRecord> {
    let mut found: BTreeMap<RecordKey<'_>, &LotRecord> = BTreeMap::new();
    for record in records {
        found
            .entry(key_of(record))
            .and_modify(|known| {
                let rank = |one: &'a LotRecord| (one.day, one.disposition, one.of_material, one);
                if rank(record) > rank(known) {
                    *known = record;
                }
            })
            .or_insert(record);
    }
    found.into_values().collect()
}

/// The name of an inspection in a history: SHA-256 of the digests of its sources, sorted, each once.
pub fn inspection_name(sources: &[Source]) -> String {
    let mut digests: Vec<&str> = sources.iter().map(|source| source.sha256.as_str()).collect();
    digests.sort_unstable();
    digests.dedup();
    sha256_hexadecimal(digests.join("\n").as_bytes())
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::change::tests::record;
    use crate::day::Day;
    use crate::lot::Disposition;

    #[test]
    fn the_latest_day_counts_then_the_worse_disposition_in_any_order() {
        let of = |day: Option<&str>, disposition| LotRecord {
            day: day.map(|day| Day::parse(day).unwrap()),
            disposition,
            ..record("A-1", 500)
        };
        let accept = of(Some("2026-03-02"), Disposition::Accept);
        let hold = of(Some("2026-03-02"), Disposition::Hold);
        let before = of(Some("2026-03-01"), Disposition::NotAccept);
        let undated = of(None, Disposition::NotAccept);
        let all = [&accept, &hold, &before, &undated];
        for start in 0..4 {
            let turned = (0..4).map(|at| all[(start + at) % 4]);
            assert_eq!(latest(turned.clone()), [&hold]);
            assert_eq!(latest(turned.collect::<Vec<_>>().into_iter().rev()), [&hold]);
        }
        assert_eq!(latest([&undated, &accept]), [&accept]);
    }

    #[test]
    fn a_lot_nobody_named_is_one_an_inspection() {
        let of = |inspection: &str| LotRecord { inspection: inspection.to_owned(), ..record("", 500) };
        assert_eq!(latest([&of("aa"), &of("bb"), &of("aa")]).len(), 2);
        let named = |inspection: &str| LotRecord { inspection: inspection.to_owned(), ..record("A-1", 500) };
        assert_eq!(latest([&named("aa"), &named("bb")]).len(), 1);
    }
}
