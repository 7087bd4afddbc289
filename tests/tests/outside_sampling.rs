//! Sampling tables, zero acceptance, operating characteristics and switching against other people's tables and libraries.
//!
//! What each file in `vectors/` was made with stands in `vectors/README.md`; none shares code with the program.

use std::fs;

use plumbline_core::sampling::{
    Level, PlanRule, Severity, accepted, accepted_of_many, aqls, at_most_nonconforming, code_letter,
    plan_of_letter, share_at, smallest_n, smallest_n_of_many, switching, units_of_share,
};
use plumbline_core::statistics::chi_square_upper;
use plumbline_tests::places::in_tests;
use serde_json::Value;

fn text(file: &str) -> String {
    fs::read_to_string(in_tests("vectors").join(file)).unwrap_or_else(|error| panic!("{file}: {error}"))
}

fn json(file: &str) -> Value {
    serde_json::from_str(&text(file)).unwrap_or_else(|error| panic!("{file}: {error}"))
}

/// Rows of a file without its heading; there have to be as many as are known to be in it.
fn rows(file: &str, count: usize) -> Vec<Vec<String>> {
    let rows: Vec<Vec<String>> =
        text(file).lines().skip(1).map(|line| line.split(',').map(str::to_owned).collect()).collect();
    assert_eq!(rows.len(), count, "{file}");
    rows
}

fn cases<'a>(document: &'a Value, list: &str, count: usize) -> &'a [Value] {
    let cases = document[list].as_array().unwrap_or_else(|| panic!("no {list}"));
    assert_eq!(cases.len(), count, "{list}");
    cases
}

fn whole(text: &str) -> u64 {
    text.parse().unwrap_or_else(|_| panic!("{text} is no whole number"))
}

fn float(text: &str) -> f64 {
    text.parse().unwrap_or_else(|_| panic!("{text} is no number"))
}

fn number(value: &Value) -> f64 {
    value.as_f64().unwrap_or_else(|| panic!("{value} is no number"))
}

fn count(value: &Value) -> u64 {
    value.as_u64().unwrap_or_else(|| panic!("{value} is no count"))
}

/// Hundredths of a percent.
fn hundredths(share: f64) -> u32 {
    (share * 10_000.0).round() as u32
}

#[track_caller]
fn near(found: f64, wanted: f64, relative: f64, about: &impl std::fmt::Debug) {
    let off = (found - wanted).abs();
    assert!(off <= wanted.abs() * relative, "{about:?}: {found:e} for {wanted:e}, off by {off:e}");
}

/// Source: MIL-STD-105E, Table I, all 105 letters.
#[test]
fn every_code_letter_is_that_of_the_standard() {
    let mut letters = 0;
    for row in rows("mil105e_code_letters.csv", 15) {
        let from = whole(&row[0]);
        let to = if row[1].is_empty() { 1_000_000_000 } else { whole(&row[1]) };
        for (level, wanted) in Level::ALL.iter().zip(&row[2..]) {
            for lot_size in [from, to, from.midpoint(to)] {
                let found = code_letter(lot_size, *level).expect("a letter").to_string();
                assert_eq!(&found, wanted, "{lot_size} {level:?}");
            }
            letters += 1;
        }
    }
    assert_eq!(letters, 105);
}

/// Source: MIL-STD-105E, Tables II-A, II-B and II-C, 416 plans each, arrows followed.
#[test]
fn every_plan_is_that_of_the_standard() {
    for (file, severity) in [
        ("mil105e_single_normal.csv", Severity::Normal),
        ("mil105e_single_tightened.csv", Severity::Tightened),
        ("mil105e_single_reduced.csv", Severity::Reduced),
    ] {
        let mut direct = 0;
        for row in rows(file, 416) {
            let letter = row[0].chars().next().expect("a letter");
            let plan = plan_of_letter(letter, severity, &row[1]).unwrap_or_else(|| panic!("{row:?}"));
            let found = (plan.n, u64::from(plan.ac), u64::from(plan.re));
            assert_eq!(found, (whole(&row[4]), whole(&row[5]), whole(&row[6])), "{file} {row:?}");
            // A plan of its own has the letter's own size; an arrow leads to another letter.
            assert_eq!(plan.letter == letter, row[3] == "direct", "{file} {row:?}");
            direct += u32::from(row[3] == "direct");
        }
        assert!(direct > 130, "{file}");
    }
    assert_eq!(aqls().count(), 26);
}

/// Source: the worked example of the R package `AQLSchemes` (level II, lot 3201 to 10 000, AQL 1.5).
#[test]
fn a_worked_example_gives_its_plans() {
    let document = json("sampling.json");
    for (severity, name) in [(Severity::Normal, "normal"), (Severity::Tightened, "tightened")] {
        let rule = PlanRule::Single { level: Level::II, severity, aql: "1.5".into() };
        let table = rule.for_lot(5_000).table.expect("a plan");
        let wanted = &document["vignette_example"][name];
        assert_eq!((table.n, u64::from(table.ac)), (count(&wanted[0]), count(&wanted[1])));
    }
}

/// Source: exact fractions and scipy, hypergeom.
#[test]
fn zero_acceptance_sizes_are_exact_for_every_lot() {
    for row in rows("zero_acceptance.csv", 296) {
        let found = smallest_n(whole(&row[1]), whole(&row[2]), hundredths(float(&row[0])));
        assert_eq!(found, whole(&row[3]), "{row:?}");
        let chance = accepted(whole(&row[1]), whole(&row[2]), found, 0);
        assert!((chance - float(&row[4])).abs() <= 1e-12, "{row:?}: {chance:e}");
    }
    let document = json("sampling.json");
    for case in cases(&document, "zero_failure_infinite_lot", 28) {
        let found =
            smallest_n_of_many(hundredths(number(&case["confidence"])), hundredths(number(&case["p"])));
        assert_eq!(found, count(&case["n"]), "{case}");
    }
    // 5 % of 280 at 95 %: 14 units, 53 to take.
    assert_eq!((units_of_share(280, 500), smallest_n(280, 14, 9_500)), (14, 53));
}

/// Source: scipy, hypergeom.
#[test]
fn what_may_be_left_in_a_lot_is_what_scipy_leaves() {
    let document = json("sampling.json");
    for case in cases(&document, "finite_lot_upper_bound", 16) {
        let found = at_most_nonconforming(
            count(&case["N"]),
            count(&case["n"]),
            count(&case["d"]),
            hundredths(number(&case["confidence"])),
        );
        assert_eq!(found, Some(count(&case["upper_D"])), "{case}");
    }
}

/// Source: scipy, beta.ppf (Clopper and Pearson's bound).
#[test]
fn bounds_without_a_lot_size_are_those_of_clopper_and_pearson() {
    let document = json("sampling.json");
    for case in cases(&document, "clopper_pearson_upper", 102) {
        let (n, found) = (count(&case["n"]) as u32, count(&case["d"]) as u32);
        let bound = share_at(n, found, 1.0 - number(&case["confidence"])).unwrap_or(1.0);
        near(bound, number(&case["upper_one_sided"]), 1e-9, case);
    }
}

/// Source: scipy, inverse incomplete beta and gamma functions.
#[test]
fn the_points_of_operating_characteristics_are_those_of_scipy() {
    for row in rows("oc_points.csv", 1_116) {
        let (n, ac, chance) = (whole(&row[0]) as u32, whole(&row[1]) as u32, float(&row[2]));
        match share_at(n, ac, chance) {
            None => {
                assert!(
                    ac >= n && (row[3].is_empty() || float(&row[3]) >= 1.0 || row[3] == "nan"),
                    "{row:?}"
                );
            }
            Some(share) => {
                near(share, float(&row[3]), 1e-9, &row);
                near(accepted_of_many(n, ac, float(&row[3])), chance, 1e-9, &row);
            }
        }
        // Defects per unit: the chance of at most Ac where n times as many are to be expected.
        let expected = float(&row[4]) * f64::from(n);
        near(chi_square_upper(2.0 * expected, 2 * (ac + 1)), chance, 1e-9, &row);
    }
}

/// Source: scipy, hypergeom.cdf and binom.cdf.
#[test]
fn the_chances_of_small_lots_are_those_of_scipy() {
    for row in rows("oc_finite_lot.csv", 69) {
        let [lot_size, n, ac, bad] = [0, 1, 2, 3].map(|at| whole(&row[at]));
        let found = accepted(lot_size, bad, n, ac);
        assert!((found - float(&row[4])).abs() <= 1e-12, "{row:?}: {found:e}");
        let found = accepted_of_many(n as u32, ac as u32, bad as f64 / lot_size as f64);
        assert!((found - float(&row[5])).abs() <= 1e-12, "{row:?}: {found:e}");
    }
}

/// Source: the rules of MIL-STD-105E, 4.7, written out a second time.
#[test]
fn switching_follows_every_lot_of_every_case() {
    let document = json("switching.json");
    for case in cases(&document, "cases", 8) {
        let start =
            |name: &Value| Severity::ALL.iter().copied().find(|known| Some(known.code()) == name.as_str());
        let mut state = switching::State::start(start(&case["start"]).expect("a severity"));
        for step in case["trace"].as_array().expect("a trace") {
            assert_eq!(state.severity, start(&step["inspected_under"]), "{case}");
            state = state.after(step["lot_accepted"].as_bool().expect("accepted or not"));
            let next = state.severity.map_or("discontinued", Severity::code);
            assert_eq!(Some(next), step["next_state"].as_str(), "{case}");
        }
        let lots = case["sequence"].as_str().expect("lots").chars().map(|lot| lot == 'A');
        assert_eq!(switching::next(start(&case["start"]).expect("a severity"), lots), state);
    }
}
