//! Lots reviewed one after the other: each leaves its records, and the next is compared with them. All data are invented.

use std::collections::BTreeSet;

use plumbline_core::history::{History, LotRecord};
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::lot::Disposition;
use plumbline_core::suppliers::lot_records;
use plumbline_tests::places::in_project;
use plumbline_tests::program::{findings_json, inspect, report_html};
use serde_json::Value;

const HEAD: &str = "Sample,Piece,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),\
                    Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s),Ti mg/kg,Ti u (1s),Zn mg/kg,Zn u (1s),Sb mg/kg,Thickness mm\n";

/// A file of one lot with two readings; titanium, zinc and antimony as given.
fn file(lot: &str, class: &str, titanium: &str, zinc: &str, antimony: &str) -> String {
    let row = |piece: u8| {
        format!(
            "S{piece},{piece},P-7,housing,{lot},Birch Works,{class},2,1,20,4,2,1,30,5,15,3,{titanium},40,{zinc},9,{antimony},6\n"
        )
    };
    format!("{HEAD}{}{}", row(1), row(2))
}

fn settings(lot: &str, day: &str) -> String {
    format!(
        "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nreviewed_at = \"{day}\"\n\n[[lot]]\nsupplier = \"Birch Works\"\n\
         lot = \"{lot}\"\nlot_size = 500\nunits_to_take = 2\n\n[[part]]\npart = \"P-7\"\nmaterials = [\"housing\"]\n"
    )
}

fn inspection(lot: &str, day: &str, text: &str, history: &History) -> Inspection {
    let mut inspection = inspect(&settings(lot, day), &[("lot.csv", text.as_bytes())]);
    inspection.history = history.clone();
    inspection
}

fn records(inspection: &Inspection) -> BTreeSet<LotRecord> {
    lot_records(inspection, &review(inspection))
}

fn json(inspection: &Inspection) -> Value {
    serde_json::from_slice(&findings_json(inspection, &review(inspection))).expect("findings are JSON")
}

const USUAL: [(&str, &str); 8] = [
    ("8000", "250"),
    ("8200", "244"),
    ("7900", "259"),
    ("8100", "251"),
    ("8050", "240"),
    ("7850", "255"),
    ("8150", "246"),
    ("7950", "253"),
];

/// The history that this many accepted lots leave.
fn history(lots: usize) -> History {
    let mut history = History::default();
    for (at, (titanium, zinc)) in USUAL.iter().take(lots).enumerate() {
        let (lot, day) = (format!("B-{at}"), format!("2026-0{}-10", at + 1));
        let text = file(&lot, "polymer", titanium, zinc, "<40");
        let found = records(&inspection(&lot, &day, &text, &history));
        assert!(found.iter().all(|record| record.disposition == Disposition::Accept), "{found:?}");
        history.lots.extend(found);
    }
    history
}

fn now(history: &History, class: &str, titanium: &str, zinc: &str, antimony: &str) -> Inspection {
    inspection("B-99", "2026-10-10", &file("B-99", class, titanium, zinc, antimony), history)
}

fn reasons(findings: &Value) -> Vec<&str> {
    let list = findings["lots"][0]["reasons"].as_array().expect("reasons");
    list.iter().map(|reason| reason["code"].as_str().expect("a code")).collect()
}

#[test]
fn a_usual_lot_is_accepted_and_said_to_be_no_proof() {
    let findings = json(&now(&history(8), "polymer", "8030", "248", "<40"));
    assert_eq!(findings["lots"][0]["disposition"], "accept");
    let change = &findings["materials"][0]["change"];
    assert_eq!((&change["verdict"], &change["lots"]), (&"not_changed".into(), &8.into()));
    assert!(change["text"].as_str().unwrap().contains("no proof"));
    assert!(!reasons(&findings).iter().any(|code| code.contains("change")));
}

#[test]
fn a_lot_of_another_composition_is_held_with_the_elements_that_moved() {
    let findings = json(&now(&history(8), "polymer", "8030", "520", "3000"));
    assert_eq!(findings["lots"][0]["disposition"], "hold");
    assert_eq!(reasons(&findings)[0], "material_changed");
    let change = &findings["materials"][0]["change"];
    assert_eq!(change["verdict"], "changed");
    let moved: Vec<&str> =
        change["moved"].as_array().unwrap().iter().map(|one| one["element"].as_str().unwrap()).collect();
    assert_eq!(moved.iter().collect::<BTreeSet<_>>(), BTreeSet::from([&"Sb", &"Zn"]));
    assert!(change["text"].as_str().unwrap().contains("not the material you approved"), "{}", change["text"]);
    assert!(change["text"].as_str().unwrap().contains("Sb: < 40 to 3000 mg/kg (x 75)"), "{}", change["text"]);
}

#[test]
fn another_class_under_the_same_name_is_held() {
    let findings = json(&now(&history(8), "metal", "8030", "248", "<40"));
    assert_eq!(findings["lots"][0]["disposition"], "hold");
    assert_eq!(findings["materials"][0]["change"]["other_class"], "polymer");
    assert!(reasons(&findings).contains(&"material_changed"));
}

#[test]
fn too_few_lots_are_printed_and_hold_nothing_and_no_history_says_nothing() {
    let few = json(&now(&history(4), "polymer", "8030", "520", "3000"));
    assert_eq!(few["lots"][0]["disposition"], "accept");
    assert!(reasons(&few).contains(&"change_not_compared"));
    assert_eq!(few["materials"][0]["change"]["verdict"], "too_few");
    let none = json(&now(&History::default(), "polymer", "8030", "520", "3000"));
    assert_eq!(none["materials"][0]["change"], Value::Null);
    assert!(!reasons(&none).iter().any(|code| code.contains("change")));
}

#[test]
fn a_history_never_makes_a_lot_better() {
    let histories = [History::default(), history(2), history(8)];
    for (class, titanium, zinc, antimony) in [
        ("polymer", "8030", "248", "<40"),
        ("polymer", "8030", "520", "<40"),
        ("polymer", "100", "1", "9000"),
        ("metal", "8030", "248", "<40"),
        ("", "8030", "248", ""),
    ] {
        let rank = |history: &History| {
            let findings = review(&now(history, class, titanium, zinc, antimony));
            (findings.lots[0].disposition, findings.materials[0].disposition)
        };
        let [without, some, many] = histories.each_ref().map(rank);
        assert!(without <= some && without <= many, "{class} {titanium} {zinc} {antimony}");
    }
}

#[test]
fn a_lot_is_not_compared_with_its_own_earlier_record() {
    let mut history = history(4);
    let changed = now(&History::default(), "polymer", "8030", "520", "3000");
    history.lots.extend(records(&changed));
    let findings = json(&now(&history, "polymer", "8030", "520", "3000"));
    assert_eq!(findings["materials"][0]["change"]["lots"], 4);
}

#[test]
fn records_hold_the_day_the_composition_and_the_nearest_number() {
    let found = records(&now(&History::default(), "polymer", "8030", "248", "<40"));
    let record = found.first().expect("a record");
    assert_eq!(record.day.map(|day| day.to_string()).as_deref(), Some("2026-10-10"));
    let composition: Vec<String> = record
        .composition
        .iter()
        .map(|one| format!("{} {}{}", one.element.symbol(), if one.below { "<" } else { "" }, one.value))
        .collect();
    assert_eq!(
        composition,
        ["Ti 8030", "Cr 30", "Zn 248", "Br 15", "Cd 2", "Sb <40", "Hg 2", "Pb 20"],
        "by atomic number"
    );
    // (70 - 2) / 1 for cadmium is nearer than lead's (700 - 20) / 4 and bromine's (300 - 15) / 3.
    let (substance, nearest) = record.nearest.expect("a number below");
    assert_eq!((substance.symbol(), nearest), ("Cd", 6800));
    assert_eq!((record.readings, record.outcomes.each_ref().map(String::as_str)), (2, ["BL"; 5]));
    assert_eq!(
        records(&now(&history(8), "polymer", "8030", "248", "<40")),
        found,
        "a history changes no record"
    );
}

#[test]
fn the_order_of_files_changes_no_record() {
    let texts = [file("B-1", "polymer", "8000", "250", "<40"), file("B-2", "polymer", "8300", "251", "70")];
    let of = |order: [usize; 2]| {
        let files = order.map(|at| (["a.csv", "b.csv"][at], texts[at].as_bytes()));
        records(&inspect("", &files))
    };
    assert_eq!(of([0, 1]), of([1, 0]));
}

#[test]
fn suppliers_count_a_lot_once_and_suggest_the_next_inspection() {
    let mut history = history(8);
    let current = now(&history, "polymer", "8030", "248", "<40");
    let before = json(&current)["suppliers"].clone();
    let one = &before[0];
    assert_eq!((&one["supplier"], &one["part"]), (&"Birch Works".into(), &"P-7".into()));
    assert_eq!((&one["accept"], &one["hold"], &one["here"]), (&9.into(), &0.into(), &true.into()));
    assert_eq!((&one["next"]["severity"], &one["next"]["lots"]), (&"normal".into(), &9.into()));
    history.lots.extend(records(&current));
    let after = json(&now(&history, "polymer", "8030", "248", "<40"));
    assert_eq!(after["suppliers"], before, "saved into the history, it is the same lot");
}

#[test]
fn findings_with_a_history_fit_the_schema_and_the_report_says_the_sentence() {
    let text =
        std::fs::read_to_string(in_project("crates/core/schema/findings.schema.json")).expect("the schema");
    let schema: Value = serde_json::from_str(&text).expect("JSON");
    let validator = jsonschema::validator_for(&schema).expect("a schema");
    let mut history = history(8);
    for (at, day) in ["2026-09-01", ""].into_iter().enumerate() {
        let lot = format!("B-5{at}");
        let text = file(&lot, "polymer", "8000", "250", "<40");
        history.lots.extend(records(&inspection(&lot, day, &text, &History::default())));
    }
    for current in [
        now(&history, "polymer", "8030", "520", "3000"),
        now(&history, "metal", "8030", "520", "3000"),
        now(&history, "polymer", "8030", "248", "<40"),
        now(&History::default(), "polymer", "8030", "248", "<40"),
    ] {
        let findings = json(&current);
        let problems: Vec<String> = validator
            .iter_errors(&findings)
            .map(|error| format!("{}: {error}", error.instance_path()))
            .collect();
        assert!(problems.is_empty(), "{problems:?}");
    }
    let changed = now(&history, "polymer", "8030", "520", "3000");
    let report = report_html(&changed, &review(&changed));
    for words in [
        "Change of material",
        "not the material you approved",
        "Suppliers and parts",
        "normal inspection",
        "no day",
    ] {
        assert!(report.contains(words), "{words}");
    }
    assert!(!report.contains("[change-") && !report.contains("[supplier-") && !report.contains("[report-"));
    let without = now(&History::default(), "polymer", "8030", "520", "3000");
    let report = report_html(&without, &review(&without));
    assert!(!report.contains("Change of material") && !report.contains("Suppliers and parts"));
}
