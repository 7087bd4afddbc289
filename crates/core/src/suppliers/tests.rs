//! Histories of records made by hand.

use super::*;
use crate::change::tests::record;
use crate::sampling::Severity;

fn on(lot: &str, day: &str, disposition: Disposition) -> LotRecord {
    LotRecord { day: Day::parse(day), disposition, ..record(lot, 100) }
}

fn one(earlier: &[LotRecord], own: &[LotRecord]) -> SupplierHistory {
    let set = |records: &[LotRecord]| records.iter().cloned().collect::<BTreeSet<_>>();
    let mut found = histories_of(&set(earlier), &set(own), Coverage::THREE);
    assert_eq!(found.len(), 1);
    found.pop().unwrap()
}

const ACCEPT: Disposition = Disposition::Accept;
const HOLD: Disposition = Disposition::Hold;
const NOT_ACCEPT: Disposition = Disposition::NotAccept;

#[test]
fn lots_are_counted_once_in_the_order_of_their_days() {
    let earlier = [
        on("B", "2026-02-01", ACCEPT),
        on("A", "2026-02-01", HOLD),
        on("C", "2026-01-01", NOT_ACCEPT),
        on("D", "", ACCEPT),
    ];
    let own = [on("B", "2026-02-01", ACCEPT), on("E", "2026-03-01", ACCEPT)];
    let found = one(&earlier, &own);
    let lots: Vec<(&str, bool)> = found.lots.iter().map(|lot| (lot.lot.as_str(), lot.here)).collect();
    assert_eq!(lots, [("C", false), ("A", false), ("B", true), ("E", true), ("D", false)]);
    assert_eq!([ACCEPT, HOLD, NOT_ACCEPT].map(|one| found.count(one)), [3, 1, 1]);
    assert_eq!((found.without_day(), found.is_here()), (1, true));
    // C, B and E: a hold and a lot without a day are in no series.
    assert_eq!(found.next.unwrap().lots, 3);
}

#[test]
fn two_materials_of_a_lot_are_one_lot() {
    let pin = on("A", "2026-02-01", ACCEPT);
    let socket = LotRecord { material: "socket".to_owned(), ..pin.clone() };
    assert_eq!(one(&[pin, socket], &[]).lots.len(), 1);
}

#[test]
fn a_lot_that_was_not_accepted_stays_so_in_the_series_whatever_came_later() {
    let twice = |lot: &str, first: &str, second: &str| {
        [on(lot, first, NOT_ACCEPT), LotRecord { inspection: "again".to_owned(), ..on(lot, second, ACCEPT) }]
    };
    let earlier: Vec<LotRecord> =
        [twice("A", "2026-01-01", "2026-01-20"), twice("B", "2026-02-01", "2026-02-20")].concat();
    let found = one(&earlier, &[]);
    assert_eq!((found.count(ACCEPT), found.count(NOT_ACCEPT)), (2, 0));
    assert_eq!(found.next.unwrap().severity, Some(Severity::Tightened));
    let mut turned = earlier.clone();
    turned.reverse();
    assert_eq!(one(&turned, &[]), found, "the order records come in changes nothing");
}

#[test]
fn without_supplier_or_part_there_is_no_series() {
    let nobody = LotRecord { supplier: String::new(), ..on("A", "2026-01-01", ACCEPT) };
    assert_eq!(one(&[nobody], &[]).next, None);
    let no_part = LotRecord { part: String::new(), ..on("A", "2026-01-01", ACCEPT) };
    assert_eq!(one(&[no_part], &[]).next, None);
}

#[test]
fn a_near_miss_lies_less_than_one_sigma_from_turning_undecided() {
    let with = |lot: &str, nearest| LotRecord { nearest: Some((Substance::Pb, nearest)), ..record(lot, 100) };
    let found = one(&[with("A", 399), with("B", 400), with("C", 310), with("D", 5000)], &[]);
    assert_eq!(found.near_misses, [NearMiss { substance: Substance::Pb, lots: 2, nearest: 310 }]);
}

#[test]
fn laboratories_are_tallied_by_what_they_overturned() {
    let with = |results: &[(&str, &str)]| {
        let laboratory = results
            .iter()
            .map(|(screen, found)| (Substance::Pb, (*screen).to_owned(), (*found).to_owned()))
            .collect();
        LotRecord { laboratory, ..record("A", 100) }
    };
    let results = [
        ("BL", "within"),
        ("OL", "over"),
        ("OL", "within"),
        ("BL", "over"),
        ("X", "within"),
        ("not_capable", "over"),
        ("X", "open"),
    ];
    let found = one(&[with(&results)], &[]);
    let tally = found.laboratory[&MaterialClass::Metal];
    let counts = [tally.agreed, tally.over_was_within, tally.below_was_over, tally.open_was_within];
    assert_eq!((counts, tally.open_was_over, tally.open), ([2, 1, 1, 1], 1, 1));
}

#[test]
fn a_trend_follows_the_days_and_leaves_lots_without_one_out() {
    let days = ["2026-01-01", "2026-02-01", "2026-03-01", "2026-04-01", "2026-05-01", "2026-06-01"];
    // Named against the order of their days.
    let mut records: Vec<LotRecord> = days
        .iter()
        .enumerate()
        .map(|(at, day)| LotRecord {
            day: Day::parse(day),
            ..record(&format!("L-{}", 9 - at), [100, 121, 145, 175, 210, 250][at])
        })
        .collect();
    records.push(record("L-0", 5));
    let found = one(&records, &[]);
    assert_eq!((found.trends_looked_at, found.trends.len()), (1, 1));
    let trend = &found.trends[0].trend;
    assert_eq!((trend.lots, trend.first), (6, MassFraction::from_mg_per_kg(100)));
    assert!((trend.percent_a_lot - 20.0).abs() < 1.0, "{trend:?}");
}
