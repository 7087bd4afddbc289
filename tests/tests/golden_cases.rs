//! Every golden case comes out as its folder says. `UPDATE_GOLDEN=1` writes what the program says now; each changed
//! file is then to be read and checked against the design by hand.

use std::collections::BTreeSet;
use std::fs;

use plumbline_core::composition::{
    AlloyGroup, CalibrationDoubt, Contradiction, FamilyFit, RangeFit, SuggestionReason,
};
use plumbline_core::lines::CautionCode;
use plumbline_core::lot::LotReasonCode;
use plumbline_core::outcome::{Outcome, Reason};
use plumbline_core::reading::{Evidence, NoticeCode};
use plumbline_core::rules::ProblemCode;
use plumbline_core::trust::{CheckKind, CheckVerdict, Trust};
use plumbline_tests::golden::{Case, Expected, cases, differences, view_of};
use plumbline_tests::places::in_tests;

fn all() -> Vec<Case> {
    let cases = cases(&in_tests("golden"));
    assert!(cases.len() >= 40, "{} cases", cases.len());
    cases
}

fn expected(case: &Case) -> Option<Expected> {
    let path = case.folder.join("expected.json");
    let text = fs::read_to_string(&path).ok()?;
    Some(serde_json::from_str(&text).unwrap_or_else(|error| panic!("{}: {error}", path.display())))
}

#[test]
fn every_case_comes_out_as_its_folder_says() {
    let update = std::env::var_os("UPDATE_GOLDEN").is_some();
    let mut wrong = Vec::new();
    for case in all() {
        let expected = expected(&case);
        // The exit status can't be seen here; a new case gets 255, to be filled in by hand.
        let got = view_of(&case, expected.as_ref().map_or(255, |expected| expected.exit));
        if update {
            let text = serde_json::to_string_pretty(&got).expect("a view is JSON") + "\n";
            fs::write(case.folder.join("expected.json"), text).expect("the case's folder can be written");
            continue;
        }
        let Some(expected) = expected else {
            wrong.push(format!("{} has no expected.json", case.name));
            continue;
        };
        let found = differences(&expected, &got);
        if !found.is_empty() {
            wrong.push(format!("{} ({})\n{}", case.name, case.about, found.join("\n")));
        }
    }
    assert!(wrong.is_empty(), "\n{}\n", wrong.join("\n\n"));
}

#[test]
fn every_case_says_in_one_line_what_it_shows() {
    for case in all() {
        assert!(case.about.lines().count() == 1 && case.about.len() > 20, "{}: {:?}", case.name, case.about);
    }
}

/// The words of every expected value, taken apart at everything that is no part of a code. Keys do not count.
fn words_shown() -> BTreeSet<String> {
    fn gather(value: &serde_json::Value, words: &mut BTreeSet<String>) {
        match value {
            serde_json::Value::String(text) => {
                words.extend(
                    text.split(|c: char| !(c.is_ascii_alphanumeric() || c == '_')).map(str::to_owned),
                );
            }
            serde_json::Value::Array(list) => list.iter().for_each(|one| gather(one, words)),
            serde_json::Value::Object(map) => map.values().for_each(|one| gather(one, words)),
            _ => {}
        }
    }
    let mut words = BTreeSet::new();
    for case in all() {
        let expected = expected(&case).unwrap_or_else(|| panic!("{} has no expected.json", case.name));
        gather(&serde_json::to_value(expected).expect("a view is JSON"), &mut words);
    }
    words
}

/// Codes that cannot come out of a folder of small text files, each with the test that shows it.
const SHOWN_ELSEWHERE: [(&str, &str); 3] = [
    // Only a door that opens files can meet one that it cannot read.
    ("unreadable", "crates/cli/tests/review.rs: a_file_that_is_not_there_is_listed_and_the_rest_is_written"),
    // Bills are read by their own reader, and no case gives one.
    ("readings_not_bill", "crates/intake/src/bill.rs: a_table_of_readings_is_no_bill"),
    // A line of a mebibyte does not belong among small files.
    (
        "line_too_long",
        "tests/tests/hostile_input.rs: a_cell_of_ten_megabytes_costs_its_line_and_nothing_else",
    ),
];

/// How nearly every column is understood: not repeated in the cases.
const PLAIN: [Evidence; 2] = [Evidence::ElementHeading, Evidence::KnownHeading];

#[test]
fn every_code_stands_in_some_case() {
    let shown = words_shown();
    let codes = Outcome::ALL
        .iter()
        .map(|code| code.code())
        .chain(Reason::ALL.iter().map(|code| code.code()))
        .chain(Trust::ALL.iter().map(|code| code.code()))
        .chain(CheckKind::ALL.iter().map(|code| code.code()))
        .chain(CheckVerdict::ALL.iter().map(|code| code.code()))
        .chain(LotReasonCode::ALL.iter().map(|code| code.code()))
        .chain(SuggestionReason::ALL.iter().map(|code| code.code()))
        .chain(AlloyGroup::ALL.iter().map(|code| code.code()))
        .chain(FamilyFit::ALL.iter().map(|code| code.code()))
        .chain(RangeFit::ALL.iter().map(|code| code.code()))
        .chain(Contradiction::ALL.iter().map(|code| code.code()))
        .chain(CalibrationDoubt::ALL.iter().map(|code| code.code()))
        .chain(CautionCode::ALL.iter().map(|code| code.code()))
        .chain(Evidence::ALL.iter().filter(|code| !PLAIN.contains(code)).map(|code| code.code()))
        .chain(NoticeCode::ALL.iter().map(|code| code.code()))
        .chain(ProblemCode::ALL.iter().map(|code| code.code()));
    let missing: Vec<&str> = codes
        .filter(|code| {
            !shown.contains(*code) && !SHOWN_ELSEWHERE.iter().any(|(elsewhere, _)| elsewhere == code)
        })
        .collect();
    assert!(missing.is_empty(), "no golden case shows {missing:?}");
}

#[test]
fn codes_shown_elsewhere_are_shown_by_a_test_that_is_there() {
    let shown = words_shown();
    for (code, place) in SHOWN_ELSEWHERE {
        let (file, test) = place.split_once(": ").expect("a file and a test");
        let text = fs::read_to_string(plumbline_tests::places::in_project(file))
            .unwrap_or_else(|error| panic!("{file}: {error}"));
        assert!(text.contains(&format!("fn {test}()")), "{test} is not in {file}");
        assert!(!shown.contains(code), "{code} has a golden case now and needs no exception");
    }
}
