//! Control charts against other people's numbers: the constants, the run rules, the straight line, the false alarms.
//!
//! `vectors/control_charts.json` and `vectors/nist_strd/Norris.json`; what each was made with stands in `vectors/README.md`.

use std::fs;

use plumbline_core::control::{D2, D4, E2, Limits, LimitsFrom, RULES, SignalCode, line};
use plumbline_core::statistics::normal_upper;
use plumbline_tests::chance::Chance;
use plumbline_tests::places::in_tests;
use serde_json::Value;

fn json(file: &str) -> Value {
    let text = fs::read_to_string(in_tests("vectors").join(file)).unwrap_or_else(|error| panic!("{error}"));
    serde_json::from_str(&text).unwrap_or_else(|error| panic!("{file}: {error}"))
}

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
}

#[track_caller]
fn near(found: f64, wanted: &Value, relative: f64) {
    let wanted = wanted.as_f64().expect("a number");
    assert!((found - wanted).abs() <= wanted.abs() * relative, "{found:e} for {wanted:e}");
}

/// Source: the ranges of normal samples integrated by scipy; ISO 7870-2 prints 1.128, 2.66 and 3.267.
#[test]
fn the_constants_of_a_moving_range_of_two_are_those_of_iso_7870_2() {
    let constants = &json("control_charts.json")["chart_constants"][0];
    assert_eq!(constants["n"], 2);
    near(D2, &constants["d2"], 1e-11);
    near(D4, &constants["D4"], 1e-11);
    near(E2, &constants["E2"], 1e-11);
}

/// The names under which the vectors file the rules.
const NAMES: [(&str, SignalCode); 9] = [
    ("R1_beyond_3s", SignalCode::BeyondThree),
    ("R2of3_beyond_2s_same_side", SignalCode::TwoOfThree),
    ("R4of5_beyond_1s_same_side", SignalCode::FourOfFive),
    ("R8_same_side_WE", SignalCode::EightOnOneSide),
    ("R9_same_side_Nelson", SignalCode::NineOnOneSide),
    ("R6_trend", SignalCode::SixInARow),
    ("R14_alternating", SignalCode::FourteenByTurns),
    ("R15_within_1s", SignalCode::FifteenWithin),
    ("R8_none_within_1s", SignalCode::EightOutside),
];

/// Source: `control_charts.json`, `run_rules`: which rules signal at which point, and no others.
#[test]
fn every_run_rule_signals_where_the_vectors_say_and_nowhere_else() {
    let document = json("control_charts.json");
    let cases = document["run_rules"].as_array().expect("cases");
    let mut signalled = 0;
    for case in cases {
        let z = numbers(&case["z"]);
        for (name, code) in NAMES {
            let rule = RULES.iter().find(|rule| rule.code == code).expect("a rule");
            let found: Vec<u64> =
                (0..z.len()).filter(|at| rule.signals(&z[..=*at])).map(|at| at as u64).collect();
            let wanted: Vec<u64> = case["signals_at_index"][name]
                .as_array()
                .map_or_else(Vec::new, |list| list.iter().filter_map(Value::as_u64).collect());
            assert_eq!(found, wanted, "{} {name}", case["name"]);
            signalled += found.len();
        }
    }
    assert_eq!((cases.len(), signalled), (13, 11));
}

/// Source: NIST Statistical Reference Datasets, Norris; certified to 15 digits.
#[test]
fn the_straight_line_is_that_of_nist_norris() {
    let file = json("nist_strd/Norris.json");
    let points: Vec<(f64, f64)> = numbers(&file["x"]).into_iter().zip(numbers(&file["y"])).collect();
    let certified = &file["certified"];
    let found = line(&points).expect("a line");
    assert_eq!(found.points, 36);
    near(found.slope, &certified["B1"], 1e-13);
    near(found.slope_sigma, &certified["sd_B1"], 1e-12);
    near(found.residual, &certified["resid_sd"], 1e-12);
    near(found.mean_y - found.slope * found.mean_x, &certified["B0"], 1e-9);
    let at_zero = (1.0 / found.points as f64 + found.mean_x * found.mean_x / found.spread_x).sqrt();
    near(found.residual * at_zero, &certified["sd_B0"], 1e-12);
}

/// A normal number by Box and Muller's way.
fn normal(chance: &mut Chance) -> f64 {
    let mut even = || ((chance.bits() >> 11) as f64 + 0.5) / (1_u64 << 53) as f64;
    (-2.0 * even().ln()).sqrt() * (std::f64::consts::TAU * even()).cos()
}

/// Source: `control_charts.json`, `false_alarm` (scipy), and the same by drawing: with centre and sigma known, one point in
/// 370 of an instrument that does nothing wrong lies beyond three sigma.
#[test]
fn one_point_in_370_is_a_false_alarm_of_the_first_rule() {
    let told = &json("control_charts.json")["false_alarm"];
    let chance = 2.0 * normal_upper(3.0);
    near(chance, &told["one_point_beyond_3s"], 1e-12);
    near(1.0 / chance, &told["ARL0_rule1"], 1e-12);

    let certified = plumbline_core::control::Certified { value: 50.0, sigma: 0.0, repeatability: Some(2.0) };
    let limits = Limits::of_certificate(Some(certified)).expect("limits");
    assert_eq!((limits.from, limits.centre, limits.sigma), (LimitsFrom::Certificate, 50.0, 2.0));
    let mut chance_of = Chance::new(7);
    let drawn = 400_000_u32;
    let beyond = (0..drawn)
        .filter(|_| {
            let value = 50.0 + 2.0 * normal(&mut chance_of);
            value > limits.upper || value < limits.lower
        })
        .count() as f64;
    let expected = f64::from(drawn) * chance;
    // Five standard deviations of a Poisson number.
    assert!((beyond - expected).abs() < 5.0 * expected.sqrt(), "{beyond} for {expected}");
}
