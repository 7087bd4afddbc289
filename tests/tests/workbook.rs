//! `findings.xlsx` read back by an independent library, cell by cell beside `findings.csv` and `findings.json`, and the parts
//! that spreadsheet programs demand.

use std::io::{Cursor, Read};

use calamine::{Data, Range, Reader, Xlsx};
use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::report::evidence::Pinned;
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::{in_project, in_tests};
use plumbline_tests::program::{findings_csv, findings_json, findings_xlsx, inspect, with_words};
use plumbline_workbook::{READINGS, columns, write_up_to};
use serde_json::Value;

fn open(bytes: &[u8]) -> Xlsx<Cursor<Vec<u8>>> {
    Xlsx::new(Cursor::new(bytes.to_vec())).expect("a workbook")
}

fn sheet(book: &mut Xlsx<Cursor<Vec<u8>>>, name: &str) -> Range<Data> {
    book.worksheet_range(name).unwrap_or_else(|error| panic!("{name}: {error}"))
}

/// What the reader keeps of the standard's way to write `_x0041_` as it is.
fn unescaped(text: &str) -> String {
    text.replace("_x005F_", "_")
}

/// What the workbook shows in the place of characters that XML forbids.
fn shown(text: &str) -> String {
    text.chars()
        .map(|one| match one {
            '\t' | '\n' | '\r' => one.to_string(),
            '\0'..='\u{1f}' => char::from_u32(0x2400 + one as u32).expect("a picture").to_string(),
            '\u{fffe}' | '\u{ffff}' => format!("⟨U+{:04X}⟩", one as u32),
            other => other.to_string(),
        })
        .collect()
}

/// Days since 30 December 1899 and seconds of a day, for a date of this century or the last.
fn moment_of(serial: f64) -> (i64, i64) {
    let seconds = (serial * 86_400.0).round() as i64;
    (seconds.div_euclid(86_400), seconds.rem_euclid(86_400))
}

fn days_to(year: i64, month: i64, day: i64) -> i64 {
    // Rata Die: an era of 400 years from 1 March.
    let (year, month) = if month <= 2 { (year - 1, month + 9) } else { (year, month - 3) };
    let (era, of_era) = (year.div_euclid(400), year.rem_euclid(400));
    let day_of_era = of_era * 365 + of_era / 4 - of_era / 100 + (153 * month + 2) / 5 + day - 1;
    era * 146_097 + day_of_era - 719_468 + 25_569
}

/// A cell of a workbook beside the same cell of the CSV.
fn same(name: &str, column: &str, cell: Option<&Data>, text: &str) {
    let place = || format!("{name}: {column} is {cell:?} and in the CSV {text:?}");
    match cell {
        None | Some(Data::Empty) => assert!(text.is_empty(), "{}", place()),
        Some(Data::String(found)) => {
            assert_eq!(unescaped(found), shown(text), "{}", place());
            assert!(!column.ends_with("_mg_kg") && column != "line", "{}", place());
        }
        Some(Data::Float(found)) => {
            assert!(column.ends_with("_mg_kg") || column == "line", "{}", place());
            assert_eq!(text.parse::<f64>().ok(), Some(*found), "{}", place());
        }
        Some(Data::Int(found)) => assert_eq!(text, found.to_string(), "{}", place()),
        Some(Data::DateTime(found)) => {
            assert_eq!(column, "time", "{}", place());
            let numbers: Vec<i64> = text
                .split(|one: char| !one.is_ascii_digit())
                .map(|digits| digits.parse().expect("a date"))
                .collect();
            let second = numbers[3..].iter().zip([3600, 60, 1]).map(|(number, unit)| number * unit).sum();
            let day = days_to(numbers[0], numbers[1], numbers[2]);
            assert_eq!(moment_of(found.as_f64()), (day, second), "{}", place());
        }
        other => panic!("{name}: {column} is {other:?}"),
    }
}

fn text_at(range: &Range<Data>, row: usize, column: usize) -> String {
    match range.get((row, column)) {
        Some(Data::String(text)) => unescaped(text),
        Some(Data::Float(number)) => number.to_string(),
        Some(Data::Empty) | None => String::new(),
        other => panic!("{other:?}"),
    }
}

/// Holds a whole workbook beside the other outputs; true where it had a date.
fn compare(name: &str, inspection: &Inspection, findings: &Findings) -> bool {
    let bytes = findings_xlsx(inspection, findings);
    let mut book = open(&bytes);
    assert_eq!(book.sheet_names(), ["Lots", "Materials", "Readings", "Checks", "About"], "{name}");
    let readings = sheet(&mut book, "Readings");
    let csv = findings_csv(inspection, findings);
    let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(csv.as_slice());
    let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
    assert_eq!(readings.height(), rows.len(), "{name}");
    let mut dated = false;
    for (at, row) in rows.iter().enumerate() {
        for (column, text) in row.iter().enumerate() {
            let cell = readings.get((at, column));
            dated |= matches!(cell, Some(Data::DateTime(_)));
            if at == 0 {
                assert_eq!(text_at(&readings, 0, column), text, "{name}");
            } else {
                same(name, &rows[0][column], cell, text);
            }
        }
        assert!(readings.get((at, row.len())).is_none(), "{name}: a column more");
    }

    let json: Value = serde_json::from_slice(&findings_json(inspection, findings)).expect("JSON");
    let texts = |value: &Value| value.as_str().unwrap_or("").to_owned();
    let guarded = |value: &Value| shown(&plumbline_core::report::csv::guarded(&texts(value)));
    let reasons = |of: &Value| {
        let all = of["reasons"].as_array().expect("reasons");
        let codes: Vec<String> =
            all.iter().filter(|one| one["effect"] != "accept").map(|one| texts(&one["code"])).collect();
        let said: Vec<String> = all.iter().map(|one| texts(&one["text"])).collect();
        (codes.join(" "), shown(&plumbline_core::report::csv::guarded(&said.join("\n"))))
    };
    let lots = sheet(&mut book, "Lots");
    let heads = |range: &Range<Data>| -> Vec<String> {
        (0..range.width()).map(|column| text_at(range, 0, column)).collect()
    };
    assert_eq!(heads(&lots), columns()[0], "{name}");
    let of_json = json["lots"].as_array().expect("lots");
    assert_eq!(lots.height(), of_json.len() + 1, "{name}");
    for (at, lot) in of_json.iter().enumerate() {
        let cell = |column: &str| {
            let column = columns()[0].iter().position(|one| one == column).expect(column);
            text_at(&lots, at + 1, column)
        };
        assert_eq!(cell("lot"), guarded(&lot["lot"]), "{name}");
        assert_eq!(cell("supplier"), guarded(&lot["supplier"]), "{name}");
        assert_eq!(cell("disposition"), texts(&lot["disposition"]), "{name}");
        assert_eq!(cell("readings"), lot["readings"].to_string(), "{name}");
        assert_eq!(cell("hold_ends_who"), guarded(&lot["hold_ends"]["who"]), "{name}");
        assert_eq!((cell("reason_codes"), cell("reasons")), reasons(lot), "{name}");
    }
    let materials = sheet(&mut book, "Materials");
    assert_eq!(heads(&materials), columns()[1], "{name}");
    let of_json = json["materials"].as_array().expect("materials");
    assert_eq!(materials.height(), of_json.len() + 1, "{name}");
    for (at, material) in of_json.iter().enumerate() {
        let cell = |column: &str| {
            let column = columns()[1].iter().position(|one| one == column).expect(column);
            text_at(&materials, at + 1, column)
        };
        for key in ["part", "material", "lot", "supplier"] {
            assert_eq!(cell(key), guarded(&material[key]), "{name}: {key}");
        }
        assert_eq!(cell("class"), texts(&material["class"]), "{name}");
        assert_eq!(cell("disposition"), texts(&material["disposition"]), "{name}");
        for substance in ["Cd", "Pb", "Hg", "Cr", "Br"] {
            assert_eq!(
                cell(&format!("{substance}_outcome")),
                texts(&material["outcomes"][substance]),
                "{name}"
            );
        }
        assert_eq!(cell("halogen_total_outcome"), texts(&material["halogens"]["total"]), "{name}");
        assert_eq!(
            cell("readings"),
            material["readings"].as_array().expect("readings").len().to_string(),
            "{name}"
        );
        assert_eq!((cell("reason_codes"), cell("reasons")), reasons(material), "{name}");
    }
    let checks = sheet(&mut book, "Checks");
    let of_json: Vec<(&Value, &Value)> = json["checks"]
        .as_array()
        .expect("checks")
        .iter()
        .flat_map(|check| check["elements"].as_array().expect("elements").iter().map(move |one| (check, one)))
        .collect();
    assert_eq!(heads(&checks), columns()[3], "{name}");
    assert_eq!(checks.height(), of_json.len() + 1, "{name}");
    for (at, (check, element)) in of_json.iter().enumerate() {
        for (column, head) in columns()[3].iter().enumerate() {
            let reading = &json["readings"][check["reading"].as_u64().expect("an index") as usize];
            let wanted = match head.as_str() {
                "source" => &json["sources"][reading["source"].as_u64().expect("an index") as usize]["name"],
                "line" => &reading["line"],
                "sample" | "kind" => &check[head],
                _ => &element[head],
            };
            match (checks.get((at + 1, column)), wanted) {
                (None | Some(Data::Empty), Value::Null) => {}
                (Some(Data::Float(found)), Value::Number(number)) => {
                    assert_eq!(Some(*found), number.as_f64(), "{name}: {head}");
                }
                (_, Value::String(_)) => {
                    assert_eq!(text_at(&checks, at + 1, column), guarded(wanted), "{name}: {head}");
                }
                other => panic!("{name}: {head} {other:?}"),
            }
        }
    }
    let about = sheet(&mut book, "About");
    let all: Vec<String> = (0..about.height()).map(|row| text_at(&about, row, 1)).collect();
    assert!(all.iter().any(|text| text.starts_with("PL-")), "{name}: {all:?}");
    assert!(
        all.iter().any(
            |text| text == "Screening is not a declaration of conformity and is not a laboratory result."
        )
    );
    dated
}

#[test]
fn every_cell_of_every_golden_case_is_the_cell_of_the_other_outputs() {
    let (mut compared, mut dated) = (0, 0);
    for case in cases(&in_tests("golden")) {
        let Ok(inspection) = run::inspection_of(&case) else { continue };
        dated += usize::from(compare(&case.name, &inspection, &review(&inspection)));
        compared += 1;
    }
    assert!(compared > 60 && dated > 3, "{compared} {dated}");
}

#[test]
fn the_same_findings_give_the_same_bytes_and_state_no_time() {
    let inspection = inspect(
        "",
        &[("a.csv", b"Sample,Class,Time,Pb mg/kg,Pb u (1s)\nS1,metal,2026-11-25 10:00,1360,20\n")],
    );
    let findings = review(&inspection);
    assert_eq!(findings_xlsx(&inspection, &findings), findings_xlsx(&inspection, &findings));
    assert!(compare("one", &inspection, &findings));
}

fn parts(bytes: &[u8]) -> Vec<(String, String)> {
    let mut archive = zip::ZipArchive::new(Cursor::new(bytes)).expect("an archive");
    (0..archive.len())
        .map(|at| {
            let mut part = archive.by_index(at).expect("a part");
            let mut text = String::new();
            part.read_to_string(&mut text).expect("UTF-8");
            (part.name().expect("a name").into_owned(), text)
        })
        .collect()
}

/// Every target of every relation is there, every part has a content type, and every format that a cell names exists.
#[test]
fn the_package_has_the_parts_that_programs_demand() {
    let inspection = inspect("", &[("a.csv", b"Sample,Class,Pb mg/kg,Pb u (1s)\n=1+1,metal,1360,20\n")]);
    let parts = parts(&findings_xlsx(&inspection, &review(&inspection)));
    let of = |name: &str| {
        let found = parts.iter().find(|(known, _)| known == name);
        &found
            .unwrap_or_else(|| {
                panic!("{name} is not in {:?}", parts.iter().map(|one| &one.0).collect::<Vec<_>>())
            })
            .1
    };
    let attributes = |text: &str, name: &str| -> Vec<String> {
        let mark = format!(" {name}=\"");
        text.split(&mark).skip(1).map(|rest| rest.split('"').next().expect("a value").to_owned()).collect()
    };
    let types = of("[Content_Types].xml");
    for part in attributes(types, "PartName") {
        of(part.trim_start_matches('/'));
    }
    for (name, _) in &parts {
        let typed = types.contains(&format!("PartName=\"/{name}\""))
            || name.rsplit_once('.').is_some_and(|(_, ending)| ending == "rels")
            || name == "[Content_Types].xml";
        assert!(typed, "{name} has no content type");
    }
    for target in attributes(of("_rels/.rels"), "Target") {
        of(&target);
    }
    let relations = of("xl/_rels/workbook.xml.rels");
    for target in attributes(relations, "Target") {
        of(&format!("xl/{target}"));
    }
    let ids = attributes(relations, "Id");
    let workbook = of("xl/workbook.xml");
    assert!(
        attributes(workbook, "r:id").iter().all(|id| ids.contains(id))
            && workbook.contains("name=\"Readings\"")
    );
    let formats = attributes(of("xl/styles.xml").split("<cellXfs").nth(1).expect("formats"), "count")[0]
        .parse::<usize>()
        .expect("a count");
    for (name, text) in parts.iter().filter(|(name, _)| name.starts_with("xl/worksheets/")) {
        for style in attributes(text, "s") {
            assert!(style.parse::<usize>().expect("a number") < formats, "{name}");
        }
        assert!(
            !text.contains("<f>") && !text.contains("<f ") && !text.contains("hyperlink"),
            "{name} has no formula"
        );
        let headed = name != "xl/worksheets/sheet5.xml";
        assert_eq!(text.contains("state=\"frozen\""), headed, "{name}");
        assert_eq!(text.contains("<autoFilter ref=\"A1:"), headed, "{name}");
        assert!(text.contains("<col min=\"1\""), "{name}");
    }
    assert!(
        of("xl/sharedStrings.xml").contains(">&apos;=1+1<") || of("xl/sharedStrings.xml").contains(">'=1+1<")
    );
}

#[test]
fn readings_beyond_the_cap_are_said_to_stand_in_the_csv() {
    let table = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,1,1\nS2,metal,2,1\nS3,metal,3,1\n";
    let inspection = inspect("", &[("a.csv", table)]);
    let findings = review(&inspection);
    for (cap, rows, said) in [
        (2, 3, "The first 2 of 3 readings stand on the sheet of readings; findings.csv holds all of them."),
        (3, 4, "All 3 readings stand on the sheet of readings."),
    ] {
        let mut bytes = Vec::new();
        with_words(|words| {
            write_up_to(cap, &inspection, &findings, words, &Pinned::of(&inspection, &findings), &mut bytes)
        })
        .expect("a Vec");
        let mut book = open(&bytes);
        assert_eq!(sheet(&mut book, "Readings").height(), rows);
        let about = sheet(&mut book, "About");
        assert!((0..about.height()).any(|row| text_at(&about, row, 1) == said), "{said}");
    }
    // A sheet has at most 1 048 576 rows (from memory: the programs' published limit), the head among them.
    const { assert!(READINGS < 1_048_576) };
}

#[test]
fn the_sheets_have_the_columns_of_the_contract() {
    let contract = std::fs::read_to_string(in_project("crates/core/contract.md")).expect("the contract");
    let section = contract.split("## `findings.xlsx`").nth(1).expect("the section");
    let block = section.split("```").nth(1).expect("a block of columns");
    let mut named: Vec<Vec<&str>> = Vec::new();
    for word in block.split_whitespace() {
        match word.strip_suffix(':') {
            Some(_) => named.push(Vec::new()),
            None => named.last_mut().expect("a sheet").push(word),
        }
    }
    let [lots, materials, _, checks] = columns();
    assert_eq!(named, [lots, materials, checks]);
}
