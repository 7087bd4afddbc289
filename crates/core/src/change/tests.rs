//! Comparisons worked by hand; the rate of false alarms is checked by simulation outside this crate.

use super::*;
use crate::history::Amount;

fn element(symbol: &str) -> Element {
    Element::from_symbol(symbol).unwrap()
}

fn amount(symbol: &str, mg_per_kg: i64, below: bool) -> Amount {
    Amount { element: element(symbol), value: MassFraction::from_mg_per_kg(mg_per_kg), below }
}

/// A record of an accepted lot with one element.
pub(crate) fn record(lot: &str, lead: i64) -> LotRecord {
    LotRecord {
        supplier: "Alder Works".to_owned(),
        part: "P-1".to_owned(),
        material: "pin".to_owned(),
        lot: lot.to_owned(),
        class: MaterialClass::Metal,
        day: None,
        disposition: Disposition::Accept,
        of_material: Disposition::Accept,
        outcomes: std::array::from_fn(|_| "BL".to_owned()),
        nearest: None,
        laboratory: Vec::new(),
        composition: vec![amount("Pb", lead, false)],
        readings: 1,
        inspection: format!("of {lot}"),
    }
}

/// Accepted lots 1, 2, ... with these amounts.
fn history(lots: &[Vec<Amount>]) -> History {
    let lots = lots.iter().enumerate().map(|(at, composition)| LotRecord {
        composition: composition.clone(),
        ..record(&format!("A-{}", at + 1), 1)
    });
    History { checks: std::collections::BTreeSet::new(), lots: lots.collect() }
}

fn leads(values: &[i64]) -> History {
    history(&values.iter().map(|value| vec![amount("Pb", *value, false)]).collect::<Vec<_>>())
}

fn now(amounts: &[Amount]) -> Vec<Composed> {
    amounts.iter().map(|amount| Composed { amount: amount.clone(), sigma: 0.0 }).collect()
}

fn compared(composition: &[Composed]) -> Compared<'_> {
    Compared {
        supplier: "Alder Works",
        part: "P-1",
        material: "pin",
        lot: "A-99",
        class: MaterialClass::Metal,
        composition,
    }
}

fn compare(history: &History, amounts: &[Amount]) -> Change {
    Accepted::new(history, "this one".to_owned()).unwrap().compare(compared(&now(amounts)))
}

const USUAL: [i64; 8] = [100, 103, 98, 101, 99, 102, 97, 100];

#[test]
fn a_usual_lot_has_not_changed_and_a_doubled_element_has() {
    let history = leads(&USUAL);
    let same = compare(&history, &[amount("Pb", 104, false)]);
    assert_eq!((same.verdict, same.lots, same.elements), (ChangeVerdict::NotChanged, 8, 1));
    assert_eq!(same.reason("pin"), None);
    let doubled = compare(&history, &[amount("Pb", 200, false)]);
    assert_eq!(doubled.verdict, ChangeVerdict::Changed);
    let moved = &doubled.moved[0];
    assert_eq!((moved.from, moved.from_at_most), (MassFraction::from_mg_per_kg(100), false));
    assert!((moved.factor - 2.0).abs() < 1e-12 && moved.spreads > 20.0, "{moved:?}");
    let reason = doubled.reason("pin").unwrap();
    assert_eq!((reason.code, reason.effect), (LotReasonCode::MaterialChanged, Disposition::Hold));
    assert_eq!((reason.about.as_str(), reason.count, reason.of), ("pin", 1, 1));
}

#[test]
fn one_odd_lot_in_five_neither_hides_nor_makes_a_change() {
    let odd = leads(&[100, 103, 98, 101, 2000]);
    assert_eq!(compare(&odd, &[amount("Pb", 101, false)]).verdict, ChangeVerdict::NotChanged);
    assert_eq!(compare(&odd, &[amount("Pb", 200, false)]).verdict, ChangeVerdict::Changed);
}

#[test]
fn four_lots_are_too_few_and_that_is_printed() {
    let change = compare(&leads(&USUAL[..4]), &[amount("Pb", 200, false)]);
    assert_eq!((change.verdict, change.lots), (ChangeVerdict::TooFew, 4));
    let reason = change.reason("pin").unwrap();
    assert_eq!((reason.code, reason.effect), (LotReasonCode::ChangeNotCompared, Disposition::Accept));
    assert_eq!((reason.count, reason.of), (4, 5));
}

#[test]
fn without_a_history_nothing_is_said() {
    assert!(Accepted::new(&History::default(), String::new()).is_none());
}

#[test]
fn only_accepted_lots_of_this_supplier_part_and_material_count() {
    let change = |edit: &dyn Fn(&mut LotRecord)| {
        let mut history = leads(&USUAL[..5]);
        let mut one = history.lots.pop_first().unwrap();
        edit(&mut one);
        history.lots.insert(one);
        compare(&history, &[amount("Pb", 100, false)]).lots
    };
    assert_eq!(change(&|_| {}), 5);
    assert_eq!(change(&|one| one.disposition = Disposition::Hold), 4);
    assert_eq!(change(&|one| one.disposition = Disposition::NotAccept), 4);
    assert_eq!(change(&|one| one.supplier = "Birch Works".to_owned()), 4);
    assert_eq!(change(&|one| one.part = "P-2".to_owned()), 4);
    assert_eq!(change(&|one| one.material = "socket".to_owned()), 4);
    assert_eq!(change(&|one| one.lot = "A-99".to_owned()), 4, "this lot is no earlier lot");
    assert_eq!(change(&|one| one.inspection = "this one".to_owned()), 4, "this inspection is no earlier one");
    assert_eq!(change(&|one| one.class = MaterialClass::Polymer), 4);
}

#[test]
fn another_class_is_a_change_and_an_unknown_one_is_not_compared() {
    let history = leads(&USUAL);
    let composition = now(&[amount("Pb", 100, false)]);
    let accepted = Accepted::new(&history, String::new()).unwrap();
    let of_class = |class| accepted.compare(Compared { class, ..compared(&composition) });
    let polymer = of_class(MaterialClass::Polymer);
    assert_eq!((polymer.verdict, polymer.other_class), (ChangeVerdict::Changed, Some(MaterialClass::Metal)));
    assert_eq!(polymer.reason("pin").unwrap().effect, Disposition::Hold);
    let unknown = of_class(MaterialClass::Unknown);
    assert_eq!(unknown.verdict, ChangeVerdict::NotComparable);
    assert_eq!(unknown.reason("pin").unwrap().of, 0);
    for unnamed in
        [Compared { supplier: "", ..compared(&composition) }, Compared { part: "", ..compared(&composition) }]
    {
        assert_eq!(accepted.compare(unnamed).verdict, ChangeVerdict::NotComparable);
    }
}

#[test]
fn no_change_is_called_for_a_value_nobody_saw() {
    let history = leads(&USUAL);
    // Below 120 may be 100; below 20 is not.
    assert_eq!(compare(&history, &[amount("Pb", 120, true)]).verdict, ChangeVerdict::NotChanged);
    assert_eq!(compare(&history, &[amount("Pb", 5000, true)]).verdict, ChangeVerdict::NotChanged);
    let gone = compare(&history, &[amount("Pb", 20, true)]);
    assert_eq!(gone.verdict, ChangeVerdict::Changed);
    assert!(gone.moved[0].to_at_most && gone.moved[0].factor < 1.0);
    // Two of five accepted lots may have held nothing.
    let some = [(100, false), (50, true), (110, false), (50, true), (105, false)];
    let some = some.map(|(value, below)| vec![amount("Pb", value, below)]);
    assert_eq!(compare(&self::history(&some), &[amount("Pb", 1, false)]).verdict, ChangeVerdict::NotChanged);
}

#[test]
fn an_element_that_was_never_there_and_now_is_moved_upwards_only() {
    let never: Vec<_> = (0..6).map(|_| vec![amount("Pb", 100, false), amount("Sb", 50, true)]).collect();
    let history = history(&never);
    let with =
        |antimony, below| compare(&history, &[amount("Pb", 100, false), amount("Sb", antimony, below)]);
    assert_eq!(with(90, false).verdict, ChangeVerdict::NotChanged);
    assert_eq!(with(5, false).verdict, ChangeVerdict::NotChanged);
    assert_eq!(with(4000, true).verdict, ChangeVerdict::NotChanged);
    let appeared = with(4000, false);
    assert_eq!(appeared.verdict, ChangeVerdict::Changed);
    assert!(appeared.moved[0].from_at_most && appeared.elements == 2);
    // z of 0.5 %: exp(2.576 x 0.5) times 50 is 181.3.
    assert_eq!(with(181, false).verdict, ChangeVerdict::NotChanged);
    assert_eq!(with(182, false).verdict, ChangeVerdict::Changed);
}

#[test]
fn a_larger_own_sigma_makes_a_change_harder_to_call_and_a_spread_of_nothing_does_not_call_one() {
    let history = leads(&USUAL);
    let accepted = Accepted::new(&history, String::new()).unwrap();
    let with_sigma = |value, sigma| {
        let composed = [Composed { amount: amount("Pb", value, false), sigma }];
        accepted.compare(compared(&composed)).verdict
    };
    assert_eq!(with_sigma(130, 0.0), ChangeVerdict::Changed);
    assert_eq!(with_sigma(130, 20.0), ChangeVerdict::NotChanged);
    let alike = leads(&[100; 8]);
    assert_eq!(compare(&alike, &[amount("Pb", 105, false)]).verdict, ChangeVerdict::NotChanged);
    assert_eq!(compare(&alike, &[amount("Pb", 140, false)]).verdict, ChangeVerdict::Changed);
}

#[test]
fn what_was_not_measured_now_is_named_and_alone_compares_nothing() {
    let change = compare(&leads(&USUAL), &[amount("Cd", 5, false)]);
    assert_eq!((change.verdict, change.elements), (ChangeVerdict::NotComparable, 0));
    assert_eq!(change.not_measured, [element("Pb")]);
    assert_eq!(change.reason("pin").unwrap().effect, Disposition::Accept);
}

#[test]
fn a_nearly_pure_element_is_not_told_apart_finer_than_a_percent() {
    let tin: Vec<_> =
        [993_i64, 995, 996, 994, 997].iter().map(|one| vec![amount("Sn", one * 1000, false)]).collect();
    let history = history(&tin);
    let with = |tin: i64| compare(&history, &[amount("Sn", tin * 1000, false)]).verdict;
    assert_eq!(with(1004), ChangeVerdict::NotChanged);
    assert_eq!(with(630), ChangeVerdict::Changed);
}

#[test]
fn the_centre_is_the_median_and_the_spread_leaves_out_the_furthest_fifth() {
    let right = Factors::built_in().right(5).unwrap();
    let (centre, spread) = centre_and_spread(&[1.0, 2.0, 3.0, 4.0, 100.0]).unwrap();
    assert!((centre - 3.0).abs() < 1e-12);
    assert!((spread - right * (5.0_f64 / 3.0).sqrt()).abs() < 1e-12, "{spread}");
    assert!((centre_and_spread(&[1.0, 2.0, 3.0, 4.0, 5.0, 6.0]).unwrap().0 - 3.5).abs() < 1e-12);
    assert!(centre_and_spread(&[1.0; 4]).is_none());
}
