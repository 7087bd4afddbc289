//! Control charts against other people's numbers: the constants, the run rules, the straight line, the false alarms.
//!
//! `vectors/control_charts.json` and `vectors/nist_strd/Norris.json`; what each was made with stands in `vectors/README.md`.

use std::fmt::Write;
use std::fs;

use plumbline_core::control::{Certified, D2, D4, E2, Limits, LimitsFrom, RULES, SignalCode, line};
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::report;
use plumbline_core::statistics::normal_upper;
use plumbline_tests::chance::Chance;
use plumbline_tests::places::in_tests;
use plumbline_tests::program::{findings_json, inspect, report_html};
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

    let certified = Certified { value: 50.0, sigma: 0.0, repeatability: Some(2.0) };
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

/// A check disc measured once a day, and a product.
fn stick(first_day: u32, values: &[f64]) -> String {
    let mut text = String::from("Sample,Time,Instrument,Mode,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\n");
    for (value, day) in values.iter().zip(first_day..) {
        writeln!(text, "CHK-1,2026-11-{day:02}T08:00:00,XRF-1,Plastics,{value},4,98,2").expect("a text");
    }
    text + "P-1,2026-11-30T09:00:00,XRF-1,Plastics,12,2,3,1\n"
}

const SETTINGS: &str = "schema = \"plumbline.settings/1\"\nclass = \"polymer\"\ncheck_samples = [\"CHK-1\"]\n\
    [[control_chart]]\npoints = 8\n";
const STEADY: [f64; 8] = [962.0, 968.0, 964.0, 969.0, 961.0, 967.0, 963.0, 966.0];

fn findings(inspection: &Inspection) -> Value {
    let found = review(inspection);
    serde_json::from_slice(&findings_json(inspection, &found)).expect("JSON")
}

/// The history after a stick was reviewed.
fn history_of(stick: &str) -> History {
    let inspection = inspect(SETTINGS, &[("earlier.csv", stick.as_bytes())]);
    report::history::after(&inspection, &review(&inspection))
}

#[test]
fn a_history_moves_the_charts_and_nothing_that_is_decided() {
    let now = stick(20, &[990.0, 991.0, 992.0]);
    let mut inspection = inspect(SETTINGS, &[("now.csv", now.as_bytes())]);
    let alone = findings(&inspection);
    inspection.history = history_of(&stick(1, &STEADY));
    let with_history = findings(&inspection);
    for key in ["totals", "sources", "readings", "materials", "parts", "lots", "repeats"] {
        assert_eq!(alone[key], with_history[key], "{key}");
    }
    let chart = |of: &Value| of["charts"].as_array().expect("charts")[1].clone();
    assert_eq!(chart(&alone)["no_limits"], "too_few_points");
    assert!(chart(&alone)["signals"].as_array().expect("signals").is_empty());
    let told = chart(&with_history);
    assert_eq!((told["element"].as_str(), told["limits_from"].as_str()), (Some("Pb"), Some("baseline")));
    let first = &told["signals"][0];
    assert_eq!((first["point"].as_u64(), first["signal"].as_str()), (Some(8), Some("beyond_3s")));
    assert_eq!(with_history["history"]["checks"], 16);
}

#[test]
fn the_order_in_which_sticks_and_histories_come_changes_no_chart() {
    let (one, two) = (stick(1, &STEADY), stick(9, &[965.0, 985.0]));
    let now = stick(20, &[990.0, 991.0, 992.0]);
    let together = |sticks: &[(&str, &[u8])], histories: [&History; 2]| {
        let mut inspection = inspect(SETTINGS, sticks);
        for history in histories {
            inspection.history.merge(history.clone());
        }
        findings(&inspection)["charts"].clone()
    };
    let (first, second) = (history_of(&one), history_of(&two));
    let sticks: [(&str, &[u8]); 2] = [("a.csv", now.as_bytes()), ("b.csv", two.as_bytes())];
    let turned = [sticks[1], sticks[0]];
    let charts = together(&sticks, [&first, &second]);
    assert_eq!(charts, together(&turned, [&second, &first]));
    assert_eq!(charts, together(&sticks, [&first, &first]), "what a stick holds counts once");
    assert_eq!(charts[1]["points"].as_array().expect("points").len(), 13);
}

#[test]
fn the_report_shows_each_chart_with_its_words_and_what_rests_on_the_history_alone_is_counted() {
    let mut inspection = inspect(SETTINGS, &[("now.csv", stick(20, &[990.0, 991.0]).as_bytes())]);
    let elsewhere = stick(1, &STEADY).replace("XRF-1", "XRF-2");
    inspection.history = history_of(&stick(1, &STEADY));
    inspection.history.merge(history_of(&elsewhere));
    let found = review(&inspection);
    let report = report_html(&inspection, &found);
    assert_eq!(report.matches("class=\"chart\"").count(), 2, "Cd and Pb of the instrument at hand");
    for words in [
        "Check readings over time",
        "Pb in CHK-1 (polymer), instrument XRF-1, Plastics",
        "limits 951.33 to 978.67 mg/kg",
        "beyond three sigma",
        "2 more charts rest on the history alone",
        "No limits: all points of the baseline are alike. Whether the instrument is in control is not known.",
        &inspection.history.sha256(),
    ] {
        assert!(report.contains(words), "{words}");
    }
    // Without checks and history there is nothing to show.
    let plain = inspect("", &[("plain.csv", b"Sample,Pb mg/kg\nP-1,5\n")]);
    let report = report_html(&plain, &review(&plain));
    assert!(!report.contains("Check readings over time") && !report.contains("class=\"chart\""));
}
