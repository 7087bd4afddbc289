//! What a composition suggests never makes anything better, and what it contradicts only makes stricter.

use std::collections::BTreeMap;
use std::fs;

use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::judging::SourceReview;
use plumbline_core::lot::Disposition;
use plumbline_core::material::{ClassFrom, MaterialClass};
use plumbline_core::outcome::Outcome;
use plumbline_core::reading::Identity;
use plumbline_core::substance::Substance;
use plumbline_tests::places::open_data;
use plumbline_tests::program::{inspect, with_words};
use plumbline_tests::tables::tries;
use proptest::collection::vec;
use proptest::prelude::*;
use proptest::sample::select;

/// Everything that may hold a lot but the readings is set aside, so that a reading alone decides.
const ADVISORY: &str = "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\nthickness_mm = 1000\n";

const JUDGED: [&str; 6] = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];
const OTHERS: [&str; 13] = ["Mg", "Al", "Si", "S", "Ca", "Ti", "Mn", "Fe", "Ni", "Cu", "Zn", "Sn", "Bi"];
const MODES: [&str; 6] = ["", "Plastics", "PVC", "Alloy", "Soil", "beam 3"];

/// A cell as written, with its uncertainty beside it; values in mg/kg.
fn judged_cell() -> impl Strategy<Value = String> {
    prop_oneof![
        6 => (0_i64..1600, select(vec![1, 2, 20, 90])).prop_map(|(x, s)| format!("{x},{s}")),
        2 => (1_i64..200).prop_map(|x| format!("< {x},")),
        1 => Just("ND,".to_owned()),
        1 => Just(",".to_owned()),
        1 => (400_000_i64..900_000).prop_map(|x| format!("{x},500")),
    ]
}

fn other_cell() -> impl Strategy<Value = String> {
    prop_oneof![
        4 => (0_i64..3000, select(vec!["", "10"])).prop_map(|(x, s)| format!("{x},{s}")),
        3 => (10_000_i64..990_000, select(vec!["", "100", "3000"])).prop_map(|(x, s)| format!("{x},{s}")),
        2 => (1_i64..2000).prop_map(|x| format!("< {x},")),
        1 => Just("ND,".to_owned()),
        1 => Just("> 300000,".to_owned()),
        1 => Just(",".to_owned()),
        1 => Just("-50,10".to_owned()),
    ]
}

#[derive(Clone, Debug)]
struct Row {
    class: &'static str,
    mode: &'static str,
    judged: Vec<String>,
    others: Vec<String>,
}

fn row(classes: &'static [&'static str]) -> impl Strategy<Value = Row> {
    (select(classes), select(&MODES[..]), vec(judged_cell(), 6), vec(other_cell(), 13))
        .prop_map(|(class, mode, judged, others)| Row { class, mode, judged, others })
}

/// The rows as a table, with some of the other elements, in these orders of columns and rows.
fn table(rows: &[Row], others: &[usize], with_modes: bool, columns: &[usize], order: &[usize]) -> String {
    let heading = |symbol: &str| format!("{symbol} mg/kg,{symbol} u (1s)");
    // A heading with the cells below it.
    let mut parts: Vec<(String, Vec<&String>)> = Vec::new();
    for (at, symbol) in JUDGED.iter().enumerate() {
        parts.push((heading(symbol), rows.iter().map(|row| &row.judged[at]).collect()));
    }
    for at in others {
        parts.push((heading(OTHERS[*at]), rows.iter().map(|row| &row.others[*at]).collect()));
    }
    let mut sorted: Vec<usize> = (0..parts.len()).collect();
    sorted.sort_by_key(|at| (columns.get(*at).copied().unwrap_or(*at), *at));
    let mode = if with_modes { ",Mode" } else { "" };
    let mut text = format!("Sample,Lot,Part,Material,Class{mode}");
    for at in &sorted {
        text.push(',');
        text.push_str(&parts[*at].0);
    }
    text.push('\n');
    let mut in_order: Vec<usize> = (0..rows.len()).collect();
    in_order.sort_by_key(|at| (order.get(*at).copied().unwrap_or(*at), *at));
    for at in in_order {
        let row = &rows[at];
        text.extend([format!("S{at},L1,P{at},M{at},{}", row.class)]);
        if with_modes {
            text.push(',');
            text.push_str(row.mode);
        }
        for part in &sorted {
            text.push(',');
            text.push_str(parts[*part].1[at]);
        }
        text.push('\n');
    }
    text
}

fn all_others() -> Vec<usize> {
    (0..OTHERS.len()).collect()
}

fn reviewed(text: &str) -> (Inspection, Findings) {
    let inspection = inspect(ADVISORY, &[("a.csv", text.as_bytes())]);
    let findings = review(&inspection);
    assert_eq!(findings.lots.len(), 1, "{text}");
    (inspection, findings)
}

fn outcomes(findings: &Findings) -> Vec<([Outcome; 5], [Outcome; 3])> {
    findings.verdicts.iter().map(|verdicts| (verdicts.substances, verdicts.halogens)).collect()
}

/// Per sample id, everything that was said of it.
fn said(inspection: &Inspection, findings: &Findings) -> BTreeMap<String, String> {
    let settings = inspection.settings();
    let source = &inspection.sources[0];
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    let mut all = BTreeMap::new();
    for row in 0..source.readings.len() {
        let id = source.readings.identity(Identity::Id, row).unwrap_or("").to_owned();
        let text = with_words(|words| plumbline_core::report::phrases::composition(words, &reviewer, row));
        let composition = reviewer.composition(row);
        all.insert(id, format!("{:?} {composition:?} {text}", findings.verdicts[row]));
    }
    all
}

const UNSTATED: [&str; 3] = ["", "glass", "whatever"];
const STATED: [&str; 3] = ["polymer", "metal", "composite"];
const ANY: [&str; 6] = ["", "glass", "polymer", "metal", "composite", "plated"];

proptest! {
    #![proptest_config(tries(200))]

    #[test]
    fn a_composition_added_to_readings_of_unknown_class_makes_nothing_better(
        rows in vec(row(&UNSTATED), 1..4),
        others in vec(0_usize..13, 0..13),
    ) {
        let mut others = others;
        others.sort_unstable();
        others.dedup();
        let (_, bare) = reviewed(&table(&rows, &[], false, &[], &[]));
        let (_, with) = reviewed(&table(&rows, &others, true, &[], &[]));
        prop_assert_eq!(outcomes(&bare), outcomes(&with));
        prop_assert!(with.lots[0].disposition >= bare.lots[0].disposition);
        for (bare, with) in bare.materials.iter().zip(&with.materials) {
            prop_assert!(with.disposition >= bare.disposition);
        }
        for verdicts in &with.verdicts {
            prop_assert_eq!(verdicts.class, MaterialClass::Unknown);
            prop_assert_ne!(verdicts.class_from, ClassFrom::Contested);
        }
    }

    #[test]
    fn a_contested_class_is_never_laxer_than_any_class_and_never_accepted(
        rows in vec(row(&STATED), 1..4),
    ) {
        let text = table(&rows, &all_others(), true, &[], &[]);
        let (inspection, findings) = reviewed(&text);
        let settings = inspection.settings();
        let reviewer = SourceReview::new(&inspection.sources[0], &inspection.books, &settings);
        let mut contested = false;
        for (row, verdicts) in findings.verdicts.iter().enumerate() {
            if verdicts.class_from != ClassFrom::Contested {
                prop_assert_ne!(verdicts.class, MaterialClass::Unknown);
                continue;
            }
            contested = true;
            prop_assert_eq!(verdicts.class, MaterialClass::Unknown);
            for substance in Substance::ALL {
                for class in MaterialClass::BANDED {
                    let under = reviewer.judge_as(substance, class, row).outcome;
                    prop_assert!(verdicts.substances[substance as usize] >= under);
                }
            }
        }
        if contested {
            prop_assert_ne!(findings.lots[0].disposition, Disposition::Accept);
            let codes: Vec<&str> =
                findings.lots[0].reasons.iter().map(|reason| reason.code.code()).collect();
            prop_assert!(codes.contains(&"class_contested"), "{:?}", codes);
        }
    }

    #[test]
    fn a_composition_and_a_mode_make_no_stated_class_better(
        rows in vec(row(&STATED), 1..4),
    ) {
        let (_, bare) = reviewed(&table(&rows, &[], false, &[], &[]));
        let (_, with) = reviewed(&table(&rows, &all_others(), true, &[], &[]));
        for (bare, with) in bare.verdicts.iter().zip(&with.verdicts) {
            for at in 0..5 {
                prop_assert!(with.substances[at] >= bare.substances[at] || bare.substances[at] == Outcome::NotApplicable);
            }
        }
        if bare.lots[0].disposition == Disposition::Hold {
            prop_assert_ne!(with.lots[0].disposition, Disposition::Accept);
        }
    }

    #[test]
    fn the_order_of_columns_and_rows_changes_nothing(
        rows in vec(row(&ANY), 1..5),
        columns in vec(0_usize..30, 19),
        order in vec(0_usize..30, 5),
    ) {
        let (first, first_findings) = reviewed(&table(&rows, &all_others(), true, &[], &[]));
        let (other, other_findings) = reviewed(&table(&rows, &all_others(), true, &columns, &order));
        prop_assert_eq!(said(&first, &first_findings), said(&other, &other_findings));
        prop_assert_eq!(&first_findings.lots[0].reasons, &other_findings.lots[0].reasons);
    }
}

const CLEAN: &str = "< 20,,5,1,5,1,5,1,5,1,5,1";

fn lot(head: &str, cells: &str) -> (Disposition, Vec<&'static str>) {
    lot_with(ADVISORY, head, cells)
}

fn lot_with(settings: &str, head: &str, cells: &str) -> (Disposition, Vec<&'static str>) {
    let judged: Vec<String> = JUDGED.iter().map(|symbol| format!("{symbol} mg/kg,{symbol} u (1s)")).collect();
    let text = format!("Sample,Spot,Part,Material,{head},{}\n{cells}\n", judged.join(","));
    let inspection = inspect(settings, &[("a.csv", text.as_bytes())]);
    let findings = review(&inspection);
    let lot = &findings.lots[0];
    let holding = lot.reasons.iter().filter(|reason| reason.effect != Disposition::Accept);
    (lot.disposition, holding.map(|reason| reason.code.code()).collect())
}

#[test]
fn a_plastic_of_half_metal_is_held_and_one_of_less_is_not() {
    let held = lot("Class,Cu %,Zn %", &format!("S1,1,P,M,polymer,30,20,{CLEAN}"));
    assert_eq!(held, (Disposition::Hold, vec!["class_contested"]));
    let less = lot("Class,Cu %,Zn %", &format!("S1,1,P,M,polymer,30,19.9,{CLEAN}"));
    assert_eq!(less.0, Disposition::Accept);
    let metal = lot("Class,Cu %,Zn %", &format!("S1,1,P,M,metal,30,20,{CLEAN}"));
    assert_eq!(metal.0, Disposition::Accept);
}

#[test]
fn a_class_a_person_sets_is_held_against_the_composition_too() {
    let set = |class: &str| {
        let settings =
            format!("{ADVISORY}[[material]]\npart = \"P\"\nmaterial = \"M\"\nclass = \"{class}\"\n");
        lot_with(&settings, "Class,Cu %,Zn %", &format!("S1,1,P,M,polymer,58,39,{CLEAN}"))
    };
    assert_eq!(set("polymer"), (Disposition::Hold, vec!["class_contested"]));
    assert_eq!(set("metal").0, Disposition::Accept, "the remedy: state the class it has");
}

#[test]
fn a_suggested_class_is_not_taken_for_one() {
    let (disposition, reasons) = lot("Class,Cu %,Zn %", &format!("S1,1,P,M,,58,39,{CLEAN}"));
    assert_eq!((disposition, reasons), (Disposition::Hold, vec!["class_unknown"]));
}

#[test]
fn one_contested_repeat_contests_all_repeats_of_its_spot() {
    let rows = format!(
        "S1,1,P,M,polymer,0.001,{CLEAN}\nS1,1,P,M,polymer,60,{CLEAN}\nS2,1,Q,N,polymer,0.001,{CLEAN}"
    );
    let judged: Vec<String> = JUDGED.iter().map(|symbol| format!("{symbol} mg/kg,{symbol} u (1s)")).collect();
    let text = format!("Sample,Spot,Part,Material,Class,Cu %,{}\n{rows}\n", judged.join(","));
    let (_, findings) = reviewed(&text);
    let from: Vec<ClassFrom> = findings.verdicts.iter().map(|verdicts| verdicts.class_from).collect();
    assert_eq!(from, [ClassFrom::Contested, ClassFrom::Contested, ClassFrom::Declared]);
}

#[test]
fn a_mode_that_does_not_fit_holds_what_would_be_accepted_and_changes_no_outcome() {
    let in_mode = |mode: &str| lot("Class,Mode", &format!("S1,1,P,M,metal,{mode},{CLEAN}"));
    assert_eq!(in_mode("General metals").0, Disposition::Accept);
    assert_eq!(in_mode("").0, Disposition::Accept);
    assert_eq!(in_mode("Plastics"), (Disposition::Hold, vec!["calibration_doubtful"]));
    assert_eq!(in_mode("Soil"), (Disposition::Hold, vec!["calibration_doubtful"]));
}

/// Soils are neither metals nor plastics nor boards, and their mode (mining) fits them.
#[test]
fn real_soils_are_taken_for_nothing() {
    let name = "soil_pxrf_wide_with_errors.csv";
    let Some(folder) = open_data() else {
        println!("skipped: {name} stands in shared/open-data, which is not there");
        return;
    };
    let bytes = fs::read(folder.join(name)).expect(name);
    let inspection = inspect("", &[(name, &bytes)]);
    let settings = inspection.settings();
    let source = &inspection.sources[0];
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    assert_eq!(source.readings.len(), 558);
    let found: Vec<String> = (0..558)
        .filter_map(|row| reviewer.composition(row).map(|found| format!("{row} {found:?}")))
        .collect();
    assert!(found.is_empty(), "{} of 558: {:?}", found.len(), found.first());
}
