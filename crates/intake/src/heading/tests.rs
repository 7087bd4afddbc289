use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::substance::Element;

use super::named::Of;
use super::said::{ErrorWords, Said, say};
use super::*;

fn of(symbol: &str) -> Of {
    Of { element: Element::from_symbol(symbol).unwrap(), oxide: None }
}

fn owned(headings: &[&str]) -> Vec<String> {
    headings.iter().map(|heading| (*heading).to_owned()).collect()
}

/// The roles of a header in words, one after the other.
fn words(headings: &[&str]) -> Vec<String> {
    meanings(&owned(headings)).iter().map(|column| column.role.to_words()).collect()
}

fn evidence(headings: &[&str]) -> Vec<Evidence> {
    meanings(&owned(headings)).iter().map(|column| column.evidence).collect()
}

fn role(heading: &str) -> Said {
    say(heading)
}

fn multiple(text: &str) -> Option<SigmaMultiple> {
    SigmaMultiple::from_text(text)
}

#[test]
fn an_element_with_its_unit_is_a_value() {
    let pb = of("Pb");
    for (heading, unit) in [
        ("Pb", None),
        ("Pb (ppm)", Some(Unit::MgPerKg)),
        ("Pb mg/kg", Some(Unit::MgPerKg)),
        ("Pb [%]", Some(Unit::Percent)),
        ("Pb_ppm", Some(Unit::MgPerKg)),
        ("Pb wt %", Some(Unit::Percent)),
        ("Pb-ppm", Some(Unit::MgPerKg)),
        ("Pb%", Some(Unit::Percent)),
        ("Lead (mg/kg)", Some(Unit::MgPerKg)),
        ("Pb Concentration", None),
        (" Pb  µg/g ", Some(Unit::MgPerKg)),
    ] {
        assert_eq!(role(heading), Said::Value(pb, unit), "{heading}");
    }
    assert_eq!(role("U ppm"), Said::Value(of("U"), Some(Unit::MgPerKg)));
}

#[test]
fn an_element_with_an_error_word_is_an_uncertainty() {
    let pb = Some(of("Pb"));
    for (heading, stated, unit) in [
        ("Pb Error", None, None),
        ("Pb 2s (ppm)", multiple("2"), Some(Unit::MgPerKg)),
        ("Pb u (1s)", multiple("1"), None),
        ("Pb +/-", None, None),
        ("Pb ± 3σ", multiple("3"), None),
        ("Pb U k=2", multiple("2"), None),
        ("U Pb", None, None),
        ("u(Pb)", None, None),
        ("Pb SD", multiple("1"), None),
        ("Pb_err_2s", multiple("2"), None),
    ] {
        assert_eq!(
            role(heading),
            Said::Error(pb, ErrorWords { multiple: stated, unit, relative: false }),
            "{heading}"
        );
    }
    assert_eq!(role("+/-"), Said::Error(None, ErrorWords::default()));
    assert_eq!(role("Pb LOD"), Said::Limit(pb, None));
}

#[test]
fn a_heading_with_words_not_understood_is_no_mass_fraction() {
    for heading in ["Pb counts", "Pb (cps) net", "Pb Ka area", "Cr(VI) ppm", "Pb pass/fail", "Cd z-score"] {
        assert_eq!(role(heading), Said::NotUnderstood, "{heading}");
    }
    for heading in ["CO", "PO", "PM2.5", "Sulfate", "hexavalent chromium"] {
        assert_eq!(role(heading), Said::Unknown, "{heading}");
    }
}

#[test]
fn a_unit_that_is_not_known_keeps_the_column_and_loses_to_a_known_one() {
    let headings: Vec<String> = ["Pb (cps)", "Cr(VI)", "Cr (ppm)"].iter().map(|h| (*h).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(columns[0].role, ColumnRole::Value { element: Element::PB, oxide: None, unit: None });
    assert_eq!(columns[0].evidence, Evidence::UnitNotUnderstood);
    assert_eq!(columns[1].role, ColumnRole::Unused);
    assert_eq!(
        columns[2].role,
        ColumnRole::Value { element: Element::CR, oxide: None, unit: Some(Unit::MgPerKg) }
    );
}

#[test]
fn identity_words_are_known_by_rank() {
    let headings: Vec<String> =
        ["Reading No", "SAMPLE", "Lot", "Units", "Pb"].iter().map(|heading| (*heading).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(columns[0].role, ColumnRole::Unused);
    assert_eq!(columns[0].evidence, Evidence::AlreadyTaken);
    assert_eq!(columns[1].role, ColumnRole::Identity(Identity::Id));
    assert_eq!(columns[2].role, ColumnRole::Identity(Identity::Lot));
    assert_eq!(columns[3].role, ColumnRole::UnitOfMeasure);
    assert_eq!(element_columns(&columns), 1);
}

#[test]
fn a_bare_error_heading_belongs_to_the_element_before_it() {
    let headings: Vec<String> = ["Pb (ppm)", "+/-", "Cd %", "err"].iter().map(|h| (*h).to_owned()).collect();
    let columns = meanings(&headings);
    assert_eq!(
        columns[1].role,
        ColumnRole::Error {
            element: Element::PB,
            oxide: None,
            error: ErrorKind { unit: Some(Unit::MgPerKg), clear: true, relative: false, multiple: None }
        }
    );
    assert_eq!(
        columns[3].role,
        ColumnRole::Error {
            element: Element::CD,
            oxide: None,
            error: ErrorKind { unit: Some(Unit::Percent), clear: true, relative: false, multiple: None }
        }
    );
}

#[test]
fn a_bare_error_heading_that_stands_elsewhere_is_paired_with_nothing() {
    for headings in [
        vec!["Pb mg/kg", "Flags", "±"],
        vec!["Pb", "Cd", "±", "±"],
        vec!["±", "Cd mg/kg", "±", "Pb mg/kg"],
        vec!["Br mg/kg", "Operator", "Error"],
    ] {
        let headings: Vec<String> = headings.into_iter().map(str::to_owned).collect();
        let paired = meanings(&headings).iter().any(|column| matches!(column.role, ColumnRole::Error { .. }));
        assert!(!paired, "{headings:?}");
    }
}

#[test]
fn a_legal_limit_is_no_detection_limit() {
    assert_eq!(role("Pb limit"), Said::NotUnderstood);
    assert_eq!(role("Limit"), Said::Unknown);
    assert_eq!(role("Pb detection limit"), Said::Limit(Some(of("Pb")), None));
    assert_eq!(role("Lead (Pb) mg/kg"), Said::Value(of("Pb"), Some(Unit::MgPerKg)));
}

#[test]
fn a_percent_beside_mg_per_kg_may_be_relative_and_is_not_guessed() {
    let headings: Vec<String> = ["Pb ppm", "Pb error %"].iter().map(|h| (*h).to_owned()).collect();
    assert_eq!(
        meanings(&headings)[1].role,
        ColumnRole::Error {
            element: Element::PB,
            oxide: None,
            error: ErrorKind { unit: None, clear: false, relative: false, multiple: None }
        }
    );
}

#[test]
fn a_unit_row_gives_units_to_columns_that_state_none() {
    let headings: Vec<String> = ["Sample", "Pb", "Pb err", "Cd"].iter().map(|h| (*h).to_owned()).collect();
    let mut columns = meanings(&headings);
    let units = unit_row(&columns, &["", "ppm", "", "%"]).unwrap();
    apply_unit_row(&mut columns, &units);
    assert_eq!(
        columns[1].role,
        ColumnRole::Value { element: Element::PB, oxide: None, unit: Some(Unit::MgPerKg) }
    );
    assert!(columns[2].role.unit() == Some(Unit::MgPerKg) && columns[2].role.error().is_some());
    assert!(unit_row(&columns, &["", "12", "", "%"]).is_none());
}
