//! The history file: what is written is read back, and merging is a union whatever the order.

use plumbline_core::day::Day;
use plumbline_core::history::{Amount, CheckRecord, History, LotRecord};
use plumbline_core::lot::Disposition;
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::Outcome;
use plumbline_core::quantity::MassFraction;
use plumbline_core::substance::{Element, Substance};
use proptest::collection::vec;
use proptest::option::of as maybe;
use proptest::prelude::*;
use proptest::sample::select;

/// Names as people write them, with what would break a line where it isn't escaped.
fn name() -> impl Strategy<Value = String> {
    prop_oneof![
        Just(String::new()),
        select(vec![
            "CHK-1",
            "XRF 2",
            "Alder",
            "Plastics\\t",
            "a\tb",
            "c\nd\re",
            "\\",
            "plumbline.history/1",
            "čep"
        ])
        .prop_map(str::to_owned),
        "\\PC{0,12}",
    ]
}

fn amount() -> impl Strategy<Value = MassFraction> {
    (-1_000_000_000_000_i64..=1_000_000_000_000).prop_map(MassFraction::from_units)
}

fn element() -> impl Strategy<Value = Element> {
    (1_u8..=92).prop_map(|number| Element::from_atomic_number(number).expect("an element"))
}

fn class() -> impl Strategy<Value = MaterialClass> {
    select(MaterialClass::ALL.to_vec())
}

fn disposition() -> impl Strategy<Value = Disposition> {
    select(Disposition::ALL.to_vec())
}

fn outcome() -> impl Strategy<Value = String> {
    select(Outcome::ALL.to_vec()).prop_map(|outcome| outcome.code().to_owned())
}

fn digest() -> impl Strategy<Value = String> {
    "[0-9a-f]{64}"
}

fn check() -> impl Strategy<Value = CheckRecord> {
    let names = (name(), name(), name(), class(), element());
    let sigma = maybe((1_i64..1_000_000_000).prop_map(MassFraction::from_units));
    (names, name(), amount(), sigma, digest(), any::<u32>()).prop_map(
        |(names, time, value, sigma, source, line)| {
            let (instrument, mode, sample, class, element) = names;
            CheckRecord { instrument, mode, sample, class, element, time, value, sigma, source, line }
        },
    )
}

fn lot() -> impl Strategy<Value = LotRecord> {
    let substance = || select(Substance::ALL.to_vec());
    let day = maybe(
        (1_u16..=9999, 1_u8..=12, 1_u8..=28)
            .prop_map(|(year, month, day)| Day::new(year, month, day).expect("a day")),
    );
    let names = (name(), name(), name(), name(), class(), day);
    let said = (disposition(), disposition(), [outcome(), outcome(), outcome(), outcome(), outcome()]);
    let laboratory = (substance(), outcome(), select(vec!["within", "over", "open"]))
        .prop_map(|(of, screen, found)| (of, screen, found.to_owned()));
    let part = (element(), amount(), any::<bool>()).prop_map(|(element, value, below)| Amount {
        element,
        value,
        below,
    });
    let numbers =
        (maybe((substance(), any::<u32>())), vec(laboratory, 0..3), vec(part, 0..4), any::<u64>(), digest());
    (names, said, numbers).prop_map(|(names, said, numbers)| {
        let (supplier, part, material, lot, class, day) = names;
        let (disposition, of_material, outcomes) = said;
        let (nearest, laboratory, composition, readings, inspection) = numbers;
        LotRecord {
            supplier,
            part,
            material,
            lot,
            class,
            day,
            disposition,
            of_material,
            outcomes,
            nearest,
            laboratory,
            composition,
            readings,
            inspection,
        }
    })
}

fn history() -> impl Strategy<Value = History> {
    (vec(check(), 0..6), vec(lot(), 0..4)).prop_map(|(checks, lots)| History {
        checks: checks.into_iter().collect(),
        lots: lots.into_iter().collect(),
    })
}

fn merged(one: &History, other: &History) -> History {
    let mut both = one.clone();
    both.merge(other.clone());
    both
}

fn read(text: &str) -> History {
    History::parse(text).unwrap_or_else(|problems| panic!("{problems:?}\n{text}"))
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 200, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn what_is_written_is_read_back_and_written_alike(history in history()) {
        let text = history.to_text();
        prop_assert_eq!(&read(&text), &history);
        prop_assert_eq!(read(&text).to_text(), text.clone());
        prop_assert_eq!(text.lines().count(), 1 + history.checks.len() + history.lots.len());
    }

    #[test]
    fn merging_is_the_same_in_any_order_and_as_often_as_you_like(a in history(), b in history(), c in history()) {
        prop_assert_eq!(merged(&a, &b), merged(&b, &a));
        prop_assert_eq!(merged(&merged(&a, &b), &c), merged(&a, &merged(&b, &c)));
        prop_assert_eq!(merged(&a, &a), a.clone());
        prop_assert_eq!(merged(&merged(&a, &b), &b), merged(&a, &b));
        prop_assert_eq!(merged(&a, &b).sha256(), merged(&b, &a).sha256());
    }

    /// Two laptops start from one history and each adds its own; the union holds every line of both and nothing else.
    #[test]
    fn two_copies_grown_apart_are_merged_without_loss(start in history(), left in history(), right in history()) {
        let (left, right) = (merged(&start, &left), merged(&start, &right));
        let both = merged(&read(&left.to_text()), &read(&right.to_text()));
        for grown in [&left, &right] {
            prop_assert!(grown.checks.is_subset(&both.checks) && grown.lots.is_subset(&both.lots));
        }
        prop_assert!(both.checks.iter().all(|one| left.checks.contains(one) || right.checks.contains(one)));
        prop_assert!(both.lots.iter().all(|one| left.lots.contains(one) || right.lots.contains(one)));
        // And so says a plain union of lines, as `sort -u` makes it.
        let text = format!("{}{}", left.to_text(), right.to_text());
        let mut lines: Vec<&str> = text.lines().collect();
        lines.sort_unstable();
        lines.dedup();
        prop_assert_eq!(&read(&lines.join("\n")), &both);
        prop_assert_eq!(lines.len(), both.to_text().lines().count());
    }

    #[test]
    fn no_text_makes_the_reader_fail_otherwise_than_by_saying_where(text in "\\PC{0,200}", lines in "(check|lot|\t|\\\\|\n|[a-z]){0,60}") {
        for text in [text.clone(), lines.clone(), format!("plumbline.history/1\n{text}"), format!("plumbline.history/1\n{lines}")] {
            if let Err(problems) = History::parse(&text) {
                prop_assert!(!problems.is_empty() && problems.iter().all(|one| one.line > 0 && one.column > 0));
            }
        }
    }
}
