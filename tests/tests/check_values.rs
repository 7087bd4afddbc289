//! The program against values made by other people's libraries (`tests/vectors/README.md`).

use std::fs;

use plumbline_core::halogen::{judge_element, judge_total};
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::{Outcome, SigmaFrom, UsedSigma};
use plumbline_core::quantity::{DecimalMark, MassFraction, Number, Rounding, Sigma, Unit};
use plumbline_core::reading::{Cell, CellState};
use plumbline_core::rules::{HALOGENS_2003, Halogens, LowEdge, RuleBook};
use plumbline_core::screen::{Measured, screen};
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::places::in_tests;
use plumbline_tests::program::built_in_books;
use serde_json::Value;

fn amount(text: &str) -> MassFraction {
    Number::parse(text.as_bytes(), DecimalMark::Point)
        .ok()
        .and_then(|number| number.to_mass_fraction(Unit::MgPerKg, Rounding::Nearest))
        .unwrap_or_else(|| panic!("{text}"))
}

fn number(value: &str, sigma: &str) -> Measured {
    let sigma = Sigma::from_one_sigma(amount(sigma));
    Measured {
        cell: Cell {
            state: CellState::Number,
            value: amount(value),
            printed_error: None,
            detection_limit: None,
        },
        used: UsedSigma { sigma, from: SigmaFrom::Printed },
        thickness_share: None,
    }
}

fn below(limit: &str) -> Measured {
    Measured {
        cell: Cell {
            state: CellState::BelowDetection,
            value: amount(limit),
            printed_error: None,
            detection_limit: None,
        },
        used: UsedSigma::NONE,
        thickness_share: None,
    }
}

/// `Pb composite`, `Cd polymer/metal`, `Br polymer (no OL)` as substance and classes.
fn case(name: &str) -> (Substance, Vec<MaterialClass>) {
    let name = name.trim_end_matches(" (no OL)");
    let (substance, classes) = name.split_once(' ').expect("a substance and its classes");
    let classes = classes.split('/').map(|class| MaterialClass::from_code(class).expect("a class")).collect();
    (Substance::from_symbol(substance).expect("a substance"), classes)
}

#[test]
fn the_bands_decide_as_the_three_sigma_values_say() {
    let books = built_in_books();
    let (_, rule) = books.screening().expect("a screening book");
    let text = fs::read_to_string(in_tests("vectors/three_sigma_screen.csv")).expect("the vectors");
    let (mut compared, mut not_capable) = (0, 0);
    for row in text.lines().skip(1) {
        let cells: Vec<&str> = row.split(',').collect();
        let [name, low, high, y, sigma, "3", _, _, verdict] = cells[..] else { panic!("{row}") };
        let (substance, classes) = case(name);
        for class in classes {
            let band = rule.band(substance, class);
            let edges = band.and_then(|band| band.edges).expect("a band");
            assert_eq!(edges.low, LowEdge::Fixed(amount(low)), "{row}");
            assert_eq!(edges.high, (!high.is_empty()).then(|| amount(high)), "{row}");
            let outcome = screen(rule, band, class, &number(y, sigma)).outcome;
            // Design 4.1: where 3s reaches the low edge, only OL can still be said.
            let reaches = amount(sigma).units() * 3 >= amount(low).units();
            let expected = match verdict {
                "OL" => Outcome::Over,
                _ if reaches => Outcome::NotCapable,
                "BL" => Outcome::Below,
                "X" => Outcome::Undecided,
                other => panic!("{other}"),
            };
            assert_eq!(outcome, expected, "{row} as {class:?}");
            compared += 1;
            not_capable += u32::from(reaches);
        }
    }
    assert!(compared > 416 && not_capable > 20, "{compared} compared, {not_capable} of them not capable");
}

fn totals() -> Value {
    let text = fs::read_to_string(in_tests("vectors/halogen_totals.json")).expect("the vectors");
    serde_json::from_str(&text).expect("JSON")
}

fn with_factor(factor: &str) -> RuleBook {
    RuleBook::parse(&HALOGENS_2003.replace("sigma_factor = \"3\"", &format!("sigma_factor = \"{factor}\"")))
        .expect("the halogen book with another factor")
}

fn halogens(book: &RuleBook) -> &Halogens {
    book.halogens.as_ref().expect("halogen limits")
}

#[test]
fn the_total_has_the_sigma_that_two_libraries_compute() {
    let book = with_factor("3");
    let mut compared = 0;
    for case in totals()["totals"].as_array().expect("cases") {
        if case["rho"] != 0 {
            continue;
        }
        let text = |key: &str| case[key].to_string();
        let (cl, br) = (number(&text("Cl"), &text("u_Cl")), number(&text("Br"), &text("u_Br")));
        let total = judge_total(halogens(&book), MaterialClass::Polymer, &cl, &br);
        assert_eq!(total.low, Some(amount(&text("T"))));
        assert_eq!(total.low, total.high);
        let sigma = total.sigma.expect("a sigma").to_mass_fraction().to_mg_per_kg();
        let expected = case["u_T"].as_f64().expect("a number");
        assert!((sigma - expected).abs() <= 0.000_000_5, "{sigma} {expected}");
        compared += 1;
    }
    assert_eq!(compared, 4);
}

#[test]
fn a_censored_total_decides_as_the_interval_says_or_stricter_by_the_limits_own_sigma() {
    let book = with_factor("2");
    let (mut same, mut stricter) = (0, 0);
    for case in totals()["censored"].as_array().expect("cases") {
        assert_eq!(case["k"], 2);
        let limits: Vec<String> =
            case["LODs"].as_array().expect("limits").iter().map(Value::to_string).collect();
        let quantified = case["quantified"].as_array().expect("numbers");
        let parts: Vec<Measured> = quantified
            .iter()
            .map(|part| number(&part[0].to_string(), &part[1].to_string()))
            .chain(limits.iter().map(|limit| below(limit)))
            .collect();
        let outcome = match (&parts[..], case["limit"].as_i64()) {
            ([one], Some(900)) => {
                judge_element(halogens(&book), Halogen::Cl, MaterialClass::Polymer, one).outcome
            }
            ([one, other], Some(limit)) => {
                let book = if limit == 900 { with_total("2", "900") } else { with_factor("2") };
                judge_total(halogens(&book), MaterialClass::Polymer, one, other).judgement.outcome
            }
            other => panic!("{other:?}"),
        };
        let expected = match case["verdict_interval"].as_str() {
            Some("pass") => Outcome::Below,
            Some("fail") => Outcome::Over,
            Some("inconclusive") => Outcome::Undecided,
            other => panic!("{other:?}"),
        };
        if outcome == expected {
            same += 1;
        } else {
            // Upper end without the limits' own sigma: within. With (D/3) squared added: beyond.
            let upper = case["T_upper_LOD"].as_f64().expect("an upper end");
            let limit = case["limit"].as_f64().expect("a limit");
            let u = case["u_quantified"].as_f64().expect("a sigma");
            let of_limits: f64 =
                limits.iter().filter_map(|d| d.parse::<f64>().ok()).map(|d| d * d / 9.0).sum();
            assert_eq!((expected, outcome), (Outcome::Below, Outcome::Undecided), "{case}");
            assert!(upper + 2.0 * u <= limit && upper + 2.0 * (u * u + of_limits).sqrt() > limit, "{case}");
            stricter += 1;
        }
    }
    assert_eq!((same, stricter), (8, 1));
}

fn with_total(factor: &str, limit: &str) -> RuleBook {
    let text = HALOGENS_2003
        .replace("sigma_factor = \"3\"", &format!("sigma_factor = \"{factor}\""))
        .replace("limit = \"1500 mg/kg\"", &format!("limit = \"{limit} mg/kg\""));
    RuleBook::parse(&text).expect("the halogen book with another total")
}

/// The naive ways to count a part below detection say something else in more than half of the cases, which is why the
/// program counts it both ways.
#[test]
fn no_single_substitute_for_a_censored_part_would_do() {
    let values = totals();
    let cases = values["censored"].as_array().expect("cases");
    let differs = cases.iter().filter(|case| {
        ["verdict_if_zero", "verdict_if_half", "verdict_if_LOD"]
            .iter()
            .any(|naive| case[*naive] != case["verdict_interval"])
    });
    assert_eq!(differs.count(), 5);
}
