//! Log ratios, their median and their spread against numpy (`outside/change.py` makes the file).

use std::fs;

use plumbline_core::change::{REPLACED, centre_and_spread, log_ratio};
use plumbline_tests::places::{in_project, in_tests};
use serde_json::Value;

fn near(found: f64, wanted: f64, about: &str) {
    assert!((found - wanted).abs() <= 1e-12 * wanted.abs().max(1.0), "{about}: {found:e} for {wanted:e}");
}

/// The constant of the table for so many lots; what has no row takes the one below.
fn right(lots: usize) -> f64 {
    let table = fs::read_to_string(in_project("crates/core/data/change_factors.tsv")).expect("the table");
    let rows = table.lines().filter(|line| line.starts_with(|first: char| first.is_ascii_digit()));
    let of_row = |line: &str| {
        let cells: Vec<&str> = line.split('\t').collect();
        (cells[0].parse::<usize>().expect("lots"), cells[1].parse::<f64>().expect("a constant"))
    };
    rows.map(of_row).rfind(|(row, _)| *row <= lots).expect("a row").1
}

#[test]
fn centres_and_spreads_of_log_ratios_are_those_of_numpy() {
    let text = fs::read_to_string(in_tests("vectors/change.json")).expect("the check values");
    let document: Value = serde_json::from_str(&text).expect("JSON");
    let cases = document["cases"].as_array().expect("cases");
    assert!(cases.len() > 20);
    for case in cases {
        let limit = case["limit"].as_str().map(|limit| limit.parse::<f64>().expect("a limit"));
        let ratios: Vec<f64> = case["mg_per_kg"]
            .as_array()
            .expect("values")
            .iter()
            .map(|value| value.as_str().expect("text").parse::<f64>().expect("a value"))
            .map(|value| match limit {
                Some(limit) if value < limit => log_ratio(REPLACED * limit),
                _ => log_ratio(value),
            })
            .collect();
        let wanted = case["log_ratios"].as_array().expect("ratios");
        assert_eq!(ratios.len(), wanted.len());
        for (found, wanted) in ratios.iter().zip(wanted) {
            near(*found, wanted.as_f64().expect("a number"), "log ratio");
        }
        let (centre, spread) = centre_and_spread(&ratios).expect("enough lots");
        near(centre, case["centre"].as_f64().expect("a centre"), "centre");
        near(spread, case["raw_spread"].as_f64().expect("a spread") * right(ratios.len()), "spread");
    }
}
