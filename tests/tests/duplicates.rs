//! Duplicates over small invented tables: what is taken out is what the definition says, held against every pair.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write;

use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::opened::Opened;
use plumbline_core::reading::{CellState, Identity, NoticeCode, Source};
use plumbline_tests::program::{built_in_books, inspect, read};
use plumbline_tests::tables::tries;
use proptest::prelude::*;

/// What a reading states, by name: the words a person would list.
type Statements = BTreeMap<String, String>;

fn statements(source: &Source, row: usize) -> Statements {
    let readings = &source.readings;
    let mut stated = Statements::new();
    for identity in Identity::ALL {
        if let Some(text) = readings.identity(identity, row) {
            stated.insert(identity.code().to_owned(), text.to_owned());
        }
    }
    for column in readings.elements() {
        let (element, cell) = (column.element, column.cell(row));
        if matches!(cell.state, CellState::NoColumn | CellState::Blank) {
            continue;
        }
        stated.insert(format!("{element}"), format!("{} {}", cell.state.code(), cell.value.units()));
        if let Some(error) = cell.printed_error {
            stated.insert(format!("{element} error"), error.units().to_string());
            let multiple = source.block_of(row).and_then(|block| block.stated_multiple(element));
            if let Some(multiple) = multiple {
                stated.insert(format!("{element} multiple"), multiple.hundredths().to_string());
            }
        }
        if let Some(limit) = cell.detection_limit {
            stated.insert(format!("{element} limit"), limit.units().to_string());
        }
    }
    stated
}

/// What may differ between two readings of one measurement.
fn is_wording(name: &str) -> bool {
    name == "class" || name == "note" || name.ends_with(" multiple") || name.ends_with(" limit")
}

fn same_measurement(one: &Statements, other: &Statements) -> bool {
    let shared: Vec<&String> = one.keys().filter(|name| other.contains_key(*name)).collect();
    let agree = shared.iter().all(|name| is_wording(name) || one[*name] == other[*name]);
    let numbers = |with_error: bool| {
        shared
            .iter()
            .filter(|name| one[**name].starts_with("number "))
            .filter(|name| !with_error || shared.contains(&&format!("{name} error")))
            .count()
    };
    // The invented times: one to the second, one to the minute, one day.
    let time = one.get("time").filter(|_| shared.iter().any(|name| *name == "time"));
    let no_chance = match time.map(String::as_str) {
        Some("2026-11-25T10:15:31") => true,
        Some("2026-11-25T10:15") => numbers(false) > 0 || numbers(true) >= 2,
        _ => numbers(true) >= 2,
    };
    one.contains_key("id") && other.contains_key("id") && agree && no_chance
}

fn says_all_of(one: &Statements, other: &Statements) -> bool {
    other.iter().all(|(name, text)| one.get(name) == Some(text))
}

/// Index of a source, and a line of it.
type Place = (usize, u32);

/// Lines that stay, by source, and those that have another half.
fn by_every_pair(sources: &[Source]) -> (BTreeSet<Place>, BTreeSet<Place>) {
    let all: Vec<((usize, u32), Statements)> = sources
        .iter()
        .enumerate()
        .flat_map(|(at, source)| {
            (0..source.readings.len())
                .map(move |row| ((at, source.readings.line(row)), statements(source, row)))
        })
        .collect();
    let gone = |(place, stated): &&((usize, u32), Statements)| {
        all.iter().any(|(other_place, other)| {
            other_place != place
                && same_measurement(stated, other)
                && says_all_of(other, stated)
                && (!says_all_of(stated, other) || other_place < place)
        })
    };
    let stay: Vec<_> = all.iter().filter(|one| !gone(one)).collect();
    let halves = stay
        .iter()
        .filter(|(place, stated)| {
            stay.iter().any(|(other_place, other)| other_place != place && same_measurement(stated, other))
        })
        .map(|(place, _)| *place)
        .collect();
    (stay.iter().map(|(place, _)| *place).collect(), halves)
}

const HEADINGS: [&str; 9] =
    ["Sample", "Time", "Spot", "Class", "Note", "Pb mg/kg", "Pb u", "Cd mg/kg", "Cd u (1s)"];

fn cell(column: usize) -> BoxedStrategy<&'static str> {
    let few: &'static [&'static str] = match column {
        0 => &["S1", "S1", "S1", "S2", ""],
        1 => &["2026-11-25T10:15:31", "2026-11-25T10:15", "2026-11-25", ""],
        2 => &["1", "2", "", ""],
        3 => &["metal", "metal", "", "polymer"],
        4 => &["", "", "", "dirty"],
        5 | 7 => &["812", "812", "812", "n.d.", "<5", "", "77"],
        _ => &["15", "15", "15", "", "4"],
    };
    prop::sample::select(few).boxed()
}

fn file() -> impl Strategy<Value = String> {
    let columns = prop::collection::vec(prop::bool::weighted(0.8), HEADINGS.len());
    let row = (0..HEADINGS.len()).map(cell).collect::<Vec<_>>();
    (columns, prop::collection::vec(row, 1..25)).prop_map(|(columns, rows)| {
        let chosen = |row: &[&str]| {
            let cells: Vec<&str> = row
                .iter()
                .zip(&columns)
                .enumerate()
                // An id and one element are always there, or there is no table.
                .filter(|(at, (_, chosen))| **chosen || *at == 0 || *at == 5)
                .map(|(_, (cell, _))| *cell)
                .collect();
            cells.join(",") + "\n"
        };
        std::iter::once(chosen(&HEADINGS)).chain(rows.iter().map(|row| chosen(row))).collect()
    })
}

fn sources_of(files: &[String]) -> Vec<Source> {
    let settings = plumbline_core::acts::Settings::from_acts(&[]);
    files
        .iter()
        .enumerate()
        .flat_map(|(at, text)| read(&format!("{at}.csv"), &settings, text.as_bytes()))
        .collect()
}

proptest! {
    #![proptest_config(tries(150))]

    #[test]
    fn what_stays_is_what_every_pair_compared_says(files in prop::collection::vec(file(), 1..4)) {
        let mut sources = sources_of(&files);
        let mut digests = BTreeSet::new();
        prop_assume!(sources.iter().all(|source| digests.insert(source.sha256.clone())));
        let (stay, halves) = by_every_pair(&sources);
        set_duplicates_aside(&mut sources);
        let left: BTreeSet<(usize, u32)> = sources
            .iter()
            .enumerate()
            .flat_map(|(at, source)| {
                (0..source.readings.len()).map(move |row| (at, source.readings.line(row)))
            })
            .collect();
        prop_assert_eq!(&left, &stay, "{}", files.join("---\n"));
        let noticed: u64 = sources
            .iter()
            .flat_map(|source| &source.notices.kept)
            .filter(|notice| notice.code == NoticeCode::SameReadingInParts)
            .map(|notice| notice.rows)
            .sum();
        prop_assert_eq!(noticed, halves.len() as u64, "{}", files.join("---\n"));
        for source in &sources {
            let fates = source.rows_duplicate
                + source.readings.len() as u64
                + source.rows_set_aside()
                + source.rows_refused;
            prop_assert_eq!(source.rows_in, fates);
        }
    }

    #[test]
    fn files_read_one_by_one_with_reviews_between_give_the_same_as_all_at_once(
        files in prop::collection::vec(file(), 2..4),
    ) {
        let sources = sources_of(&files);
        let mut at_once = Inspection { sources: Vec::new(), books: built_in_books(), acts: Vec::new(), history: History::default(), opened: Opened::default(), photos: Vec::new() };
        let mut one_by_one = at_once.clone();
        for source in sources.iter().rev() {
            one_by_one.add_source(source.clone());
            set_duplicates_aside(&mut one_by_one.sources);
        }
        for source in sources {
            at_once.add_source(source);
        }
        set_duplicates_aside(&mut at_once.sources);
        let json = |inspection: &Inspection| {
            plumbline_tests::program::findings_json(inspection, &review(inspection))
        };
        prop_assert!(json(&one_by_one) == json(&at_once), "{}", files.join("---\n"));
    }
}

#[test]
fn a_file_whose_readings_all_stand_elsewhere_too_was_read() {
    let one = "Sample,Lot,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\nS1,L1,812,15,40,3\nS2,L1,80,5,4,1\n";
    let other = format!("{one}S3,L1,9,2,1,1\n");
    let inspection = inspect("", &[("a.csv", one.as_bytes()), ("b.csv", other.as_bytes())]);
    let findings = review(&inspection);
    assert_eq!(inspection.sources[1].readings.len(), 1, "the file further down gives way");
    assert!(findings.counts(&inspection, 1).adds_up());
    let inspection = inspect("", &[("a.csv", other.as_bytes()), ("b.csv", one.as_bytes())]);
    let findings = review(&inspection);
    assert!(inspection.sources[1].readings.is_empty());
    assert_eq!(findings.counts(&inspection, 1).duplicate, 2);
    let reasons: Vec<&str> =
        findings.lots.iter().flat_map(|lot| &lot.reasons).map(|reason| reason.code.code()).collect();
    assert!(!reasons.contains(&"file_not_read") && !reasons.contains(&"rows_refused"), "{reasons:?}");
}

#[test]
fn a_row_refused_in_a_file_still_holds_the_lot_whose_other_rows_stand_elsewhere() {
    let one = "Sample,Lot,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\nS1,L1,812,15,40,3\nS2,L1,80,5,4,1\n";
    let other =
        "Sample,Lot,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\nS1,L1,812,15,40,3\nS9,L1,812,15,40,3,7,7\n";
    let inspection = inspect("", &[("a.csv", one.as_bytes()), ("b.csv", other.as_bytes())]);
    let findings = review(&inspection);
    assert!(inspection.sources[1].readings.is_empty() && inspection.sources[1].rows_refused == 1);
    let reasons: Vec<&str> = findings.lots[0].reasons.iter().map(|reason| reason.code.code()).collect();
    assert!(reasons.contains(&"rows_refused"), "{reasons:?}");
}

/// One id in every row, and cells left blank at random: the work must not grow with the square of the rows. (Its time
/// is measured in benches; here it would simply never end.)
#[test]
fn one_id_in_a_hundred_thousand_rows_is_looked_through() {
    let mut text = String::from("Sample,Spot,Note,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\n");
    for row in 0..100_000_u32 {
        let spot = if row % 7 == 0 { String::new() } else { (row % 9).to_string() };
        let note = if row % 3 == 0 { row.to_string() } else { String::new() };
        let cadmium = if row % 11 == 0 { "" } else { "40" };
        writeln!(text, "S1,{spot},{note},{},15,{cadmium},3", row % 500).expect("a String takes all text");
    }
    let inspection = inspect("", &[("a.csv", text.as_bytes())]);
    let source = &inspection.sources[0];
    assert!(source.rows_duplicate > 10_000, "{}", source.rows_duplicate);
    assert_eq!(source.rows_duplicate + source.readings.len() as u64, 100_000);
}
