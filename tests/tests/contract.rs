//! The contract, its schema, the enums and what the program writes say the same.

use std::collections::BTreeSet;
use std::fs;

use jsonschema::Validator;
use plumbline_core::acts::ActKind;
use plumbline_core::change::ChangeVerdict;
use plumbline_core::column::{ColumnRole, Confidence};
use plumbline_core::composition::{
    AlloyGroup, CalibrationDoubt, Contradiction, FamilyFit, RangeFit, SuggestionReason,
};
use plumbline_core::conformity::Statement;
use plumbline_core::control::{LimitsFrom, NoLimits, RuleSet, SignalCode};
use plumbline_core::exempt::{AreaResult, Group, Number, Question, Refusal, RenewalState, Verdict};
use plumbline_core::judging::PooledHow;
use plumbline_core::laboratory::Analyte;
use plumbline_core::lines::CautionCode;
use plumbline_core::lot::{Disposition, LotReasonCode, ReasonKind};
use plumbline_core::material::{ClassFrom, MaterialClass};
use plumbline_core::outcome::{Outcome, Reason, SigmaFrom};
use plumbline_core::photo::{MediaType, PhotoState};
use plumbline_core::reading::{CellState, EncodingKnownBy, Evidence, Identity, Layout, NoticeCode, SetAside};
use plumbline_core::report::{csv, exemptions, phrases};
use plumbline_core::rules::{
    CR6_AREA_2015, EXEMPTIONS_2025, HALOGENS_2003, ProblemCode, RuleBook, SCREENING_2013,
};
use plumbline_core::settings_file::parse_settings;
use plumbline_core::settling::LabVerdict;
use plumbline_core::streams::{PointFrom, RepeatabilityFrom};
use plumbline_core::trust::{CheckKind, CheckVerdict, Trust};
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::{in_project, in_tests};
use plumbline_tests::program::inspect;
use serde_json::Value;

type Codes = BTreeSet<String>;

fn set<'a>(codes: impl IntoIterator<Item = &'a str>) -> Codes {
    codes.into_iter().map(str::to_owned).collect()
}

/// Every list of codes: its heading in the contract, its name in the schema, and what the program has.
fn lists() -> Vec<(&'static str, Option<&'static str>, Codes)> {
    let roles = ColumnRole::CODES;
    vec![
        ("outcome", Some("outcome"), set(Outcome::ALL.iter().map(|code| code.code()))),
        ("outcome reason", Some("outcome_reason"), set(Reason::ALL.iter().map(|code| code.code()))),
        ("rule set", Some("rule_set"), set(RuleSet::ALL.iter().map(|code| code.code()))),
        ("signal", Some("signal"), set(SignalCode::ALL.iter().map(|code| code.code()))),
        ("limits from", Some("limits_from"), set(LimitsFrom::ALL.iter().map(|code| code.code()))),
        ("no limits", Some("no_limits"), set(NoLimits::ALL.iter().map(|code| code.code()))),
        (
            "repeatability from",
            Some("repeatability_from"),
            set(RepeatabilityFrom::ALL.iter().map(|code| code.code())),
        ),
        ("point from", Some("point_from"), set(PointFrom::ALL.iter().map(|code| code.code()))),
        ("statement", Some("statement"), set(Statement::ALL.iter().map(|code| code.code()))),
        ("pooled how", Some("pooled_how"), set(PooledHow::ALL.iter().map(|code| code.code()))),
        ("disposition", Some("disposition"), set(Disposition::ALL.iter().map(|code| code.code()))),
        ("lot reason", Some("lot_reason"), set(LotReasonCode::ALL.iter().map(|code| code.code()))),
        (
            "reason kind",
            Some("reason_kind"),
            set([ReasonKind::Outcome, ReasonKind::Evidence].iter().map(|code| code.code())),
        ),
        ("change verdict", Some("change_verdict"), set(ChangeVerdict::ALL.iter().map(|code| code.code()))),
        ("laboratory verdict", Some("lab_verdict"), set(LabVerdict::ALL.iter().map(|code| code.code()))),
        ("laboratory analyte", Some("analyte"), set(Analyte::ALL.iter().map(|code| code.code()))),
        ("not assessed", Some("not_assessed"), set(phrases::NOT_ASSESSED)),
        ("state", Some("state"), set(CellState::ALL.iter().map(|code| code.code()))),
        ("class", Some("class"), set(MaterialClass::ALL.iter().map(|code| code.code()))),
        ("class from", Some("class_from"), set(ClassFrom::ALL.iter().map(|code| code.code()))),
        (
            "composition reason",
            Some("composition_reason"),
            set(SuggestionReason::ALL.iter().map(|code| code.code())),
        ),
        ("alloy group", Some("alloy_group"), set(AlloyGroup::ALL.iter().map(|code| code.code()))),
        ("family fit", Some("family_fit"), set(FamilyFit::ALL.iter().map(|code| code.code()))),
        ("range fit", Some("range_fit"), set(RangeFit::ALL.iter().map(|code| code.code()))),
        (
            "class contradiction",
            Some("class_contradiction"),
            set(Contradiction::ALL.iter().map(|code| code.code())),
        ),
        (
            "calibration doubt",
            Some("calibration_doubt"),
            set(CalibrationDoubt::ALL.iter().map(|code| code.code())),
        ),
        ("sigma from", Some("sigma_from"), set(SigmaFrom::ALL.iter().map(|code| code.code()))),
        ("caution", Some("caution"), set(CautionCode::ALL.iter().map(|code| code.code()))),
        ("trust", Some("trust"), set(Trust::ALL.iter().map(|code| code.code()))),
        ("check kind", Some("check_kind"), set(CheckKind::ALL.iter().map(|code| code.code()))),
        ("check verdict", Some("check_verdict"), set(CheckVerdict::ALL.iter().map(|code| code.code()))),
        ("role", Some("role"), set(Identity::ALL.iter().map(|code| code.code()).chain(roles))),
        ("evidence", Some("evidence"), set(Evidence::ALL.iter().map(|code| code.code()))),
        ("confidence", Some("confidence"), set(Confidence::ALL.iter().map(|code| code.code()))),
        ("layout", Some("layout"), set(Layout::ALL.iter().map(|code| code.code()))),
        (
            "encoding known by",
            Some("encoding_known_by"),
            set(EncodingKnownBy::ALL.iter().map(|code| code.code())),
        ),
        ("set aside", None, set(SetAside::ALL.iter().map(|code| code.code()))),
        ("notice", Some("notice"), set(NoticeCode::ALL.iter().map(|code| code.code()))),
        ("problem", Some("problem"), set(ProblemCode::ALL.iter().map(|code| code.code()))),
        ("photo state", Some("photo_state"), set(PhotoState::ALL.iter().map(|code| code.code()))),
        ("media type", Some("media_type"), set(MediaType::ALL.iter().map(|code| code.code()))),
        ("act kinds", Some("act_kind"), set(ActKind::ALL.iter().map(|code| code.code()))),
        (
            "claim state",
            Some("claim_state"),
            set(Verdict::CODES.into_iter().chain([exemptions::state(None)])),
        ),
        ("claim number", Some("claim_number"), set(Number::ALL.iter().map(|code| code.code()))),
        ("claim question", Some("claim_question"), set(Question::ALL.iter().map(|code| code.code()))),
        ("claim refusal", Some("claim_refusal"), set(Refusal::ALL.iter().map(|code| code.code()))),
        ("group", Some("group"), set(Group::ALL.iter().map(|code| code.code()))),
        (
            "renewal",
            Some("renewal"),
            set(RenewalState::ALL.iter().map(|code| code.code()).chain(["unknown"])),
        ),
        ("Cr(VI) by area", Some("cr6_result"), set(AreaResult::ALL.iter().map(|code| code.code()))),
        // The command line's own tests show each of them.
        ("exit status", None, set(["0", "1", "2", "64", "74"])),
    ]
}

fn contract() -> String {
    fs::read_to_string(in_project("crates/core/contract.md")).expect("the contract")
}

fn section<'a>(text: &'a str, heading: &str) -> &'a str {
    let start =
        text.find(&format!("\n{heading}\n")).unwrap_or_else(|| panic!("{heading} is not in the contract"));
    let body = &text[start + heading.len() + 2..];
    body.find("\n## ").into_iter().chain(body.find("\n### ")).min().map_or(body, |end| &body[..end])
}

/// Codes of a table: its first column, with the meaning beside it.
fn rows(section: &str) -> Vec<(String, String)> {
    section
        .lines()
        .filter_map(|line| {
            let (code, rest) = line.strip_prefix("| `")?.split_once("` |")?;
            Some((code.to_owned(), rest.trim().trim_end_matches('|').trim().to_owned()))
        })
        .collect()
}

/// Every word in backticks.
fn quoted(text: &str) -> Codes {
    text.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

fn schema() -> Value {
    let text = fs::read_to_string(in_project("crates/core/schema/findings.schema.json")).expect("the schema");
    serde_json::from_str(&text).expect("JSON")
}

#[test]
fn every_code_stands_in_the_contract_with_a_meaning_and_none_stands_there_alone() {
    let text = contract();
    for (heading, _, codes) in lists() {
        let rows = rows(section(&text, &format!("### {heading}")));
        assert_eq!(set(rows.iter().map(|(code, _)| code.as_str())), codes, "{heading}");
        assert_eq!(rows.len(), codes.len(), "{heading}: a code stands twice");
        for (code, meaning) in &rows {
            assert!(meaning.len() > 3, "{heading} {code} has no meaning");
        }
    }
}

#[test]
fn every_code_stands_in_the_schema_and_none_stands_there_alone() {
    let schema = schema();
    let mut named = BTreeSet::new();
    for (heading, name, codes) in lists() {
        let Some(name) = name else { continue };
        let listed =
            schema["$defs"][name]["enum"].as_array().unwrap_or_else(|| panic!("{name} is not in the schema"));
        assert_eq!(set(listed.iter().filter_map(Value::as_str)), codes, "{heading}");
        named.insert(name.to_owned());
    }
    let enums = schema["$defs"].as_object().expect("definitions").iter();
    let enums: Codes =
        enums.filter(|(_, one)| one["enum"].is_array()).map(|(name, _)| name.clone()).collect();
    assert_eq!(enums, named, "every list of the schema is held against the program");
    let fates = &schema["$defs"]["source"]["properties"]["set_aside"]["properties"];
    let fates: Codes = fates.as_object().expect("fates").keys().cloned().collect();
    assert_eq!(fates, set(SetAside::ALL.iter().map(|code| code.code())));
}

#[test]
fn every_object_of_the_schema_is_closed() {
    fn walk(path: &str, value: &Value) {
        if let Some(map) = value.as_object() {
            if map.get("properties").is_some_and(Value::is_object) && map.get("type").is_some() {
                assert_eq!(map.get("additionalProperties"), Some(&Value::Bool(false)), "{path} is open");
                let required: Codes =
                    set(map["required"].as_array().expect("required").iter().filter_map(Value::as_str));
                let properties: Codes =
                    map["properties"].as_object().expect("properties").keys().cloned().collect();
                assert_eq!(required, properties, "{path}: every key is always there");
            }
            map.iter().for_each(|(key, one)| walk(&format!("{path}/{key}"), one));
        } else if let Some(list) = value.as_array() {
            for one in list {
                walk(path, one);
            }
        }
    }
    walk("", &schema());
}

fn validator() -> Validator {
    jsonschema::draft202012::new(&schema()).expect("a schema")
}

fn complaints(validator: &Validator, findings: &Value) -> Vec<String> {
    validator.iter_errors(findings).map(|error| format!("{} at {}", error, error.instance_path())).collect()
}

#[test]
fn every_golden_output_fits_the_schema() {
    let validator = validator();
    let mut fitted = 0;
    for case in cases(&in_tests("golden")) {
        let Some(json) = run::json_of(&case) else { continue };
        let findings = serde_json::from_slice(&json).expect("JSON");
        let complaints = complaints(&validator, &findings);
        assert!(complaints.is_empty(), "{}: {complaints:#?}", case.name);
        fitted += 1;
    }
    assert!(fitted >= 40, "{fitted}");
}

#[test]
fn every_demo_delivery_fits_the_schema() {
    let validator = validator();
    let top = in_project("demo-data");
    let mut fitted = 0;
    for delivery in fs::read_dir(&top).into_iter().flatten().map(|entry| entry.expect("an entry").path()) {
        if !delivery.is_dir() {
            continue;
        }
        let settings = fs::read_to_string(delivery.join("settings.toml")).unwrap_or_default();
        let mut files = Vec::new();
        for path in fs::read_dir(&delivery).expect("a delivery").map(|entry| entry.expect("an entry").path())
        {
            // What earlier inspections found is no table.
            if path.ends_with("history.txt") {
                continue;
            }
            if path
                .extension()
                .is_some_and(|ending| ["csv", "tsv", "txt"].iter().any(|known| ending == *known))
            {
                let name = path.file_name().expect("a name").to_string_lossy().into_owned();
                files.push((name, fs::read(&path).expect("a file")));
            }
        }
        assert!(!files.is_empty(), "{} has no table", delivery.display());
        let files: Vec<(&str, &[u8])> =
            files.iter().map(|(name, bytes)| (name.as_str(), bytes.as_slice())).collect();
        let mut inspection = inspect(&settings, &files);
        if let Ok(text) = fs::read_to_string(delivery.join("history.txt")) {
            inspection.history.merge(plumbline_core::history::History::parse(&text).expect("a history"));
        }
        let findings = plumbline_core::inspection::review(&inspection);
        let json = plumbline_tests::program::findings_json(&inspection, &findings);
        let complaints = complaints(&validator, &serde_json::from_slice(&json).expect("JSON"));
        assert!(complaints.is_empty(), "{}: {complaints:#?}", delivery.display());
        fitted += 1;
    }
    assert!(fitted > 0 || !top.is_dir(), "there are demo deliveries");
}

#[test]
fn the_schema_refuses_what_the_contract_does_not_know() {
    let validator = validator();
    let case = cases(&in_tests("golden"))
        .into_iter()
        .find(|case| case.name == "dispositions/a-clean-lot-is-accepted")
        .expect("the clean lot");
    let good: Value = serde_json::from_slice(&run::json_of(&case).expect("findings")).expect("JSON");
    assert!(validator.is_valid(&good));
    let spoilt: [(&str, Value); 9] = [
        ("/readings/0/outcomes/Pb/outcome", "pass".into()),
        ("/readings/0/outcomes/Pb/reason", "none_of_them".into()),
        ("/readings/0/elements/Pb/value_mg_kg", "5".into()),
        ("/readings/0/line", 0.into()),
        ("/lots/0/disposition", "accepted".into()),
        ("/lots/0/reasons/0/code", "because".into()),
        ("/sources/0/sha256", "abc".into()),
        ("/acts/0/kind", "delete".into()),
        ("/schema", "plumbline.findings/2".into()),
    ];
    for (place, value) in spoilt {
        let mut bad = good.clone();
        *bad.pointer_mut(place).unwrap_or_else(|| panic!("{place}")) = value;
        assert!(!validator.is_valid(&bad), "{place}");
    }
    for place in ["", "/readings/0", "/readings/0/outcomes", "/lots/0", "/sources/0/mapping"] {
        let mut more = good.clone();
        more.pointer_mut(place)
            .and_then(Value::as_object_mut)
            .expect("an object")
            .insert("extra".into(), 1.into());
        assert!(!validator.is_valid(&more), "{place} takes more keys");
        let mut less = good.clone();
        let map = less.pointer_mut(place).and_then(Value::as_object_mut).expect("an object");
        let first = map.keys().next().expect("a key").clone();
        map.remove(&first);
        assert!(!validator.is_valid(&less), "{place} does without {first}");
    }
}

/// Keys in the order of the contract, whatever a JSON reader makes of it.
#[test]
fn the_keys_of_the_file_come_in_the_contracts_order() {
    let text = contract();
    let keys: Vec<String> =
        rows(section(&text, "## `findings.json`")).into_iter().map(|(key, _)| key).collect();
    let case = &cases(&in_tests("golden"))[0];
    let json = String::from_utf8(run::json_of(case).expect("findings")).expect("UTF-8");
    let found: Vec<String> = json
        .lines()
        .filter_map(|line| {
            line.strip_prefix('"').and_then(|line| line.split_once("\":")).map(|(key, _)| key.to_owned())
        })
        .collect();
    assert_eq!(found, keys);
    let of = |heading: &str, place: &str| {
        let section = section(&text, heading);
        let rows = section.lines().filter(|line| line.starts_with("| `"));
        let keys: Codes = rows.flat_map(|line| quoted(line.split('|').nth(1).unwrap_or(""))).collect();
        let schema = schema();
        let known: Codes =
            schema.pointer(place).and_then(Value::as_object).expect(place).keys().cloned().collect();
        assert_eq!(keys, known, "{heading}");
    };
    of("### A source", "/$defs/source/properties");
    of("### A reading", "/$defs/reading/properties");
    for (heading, place) in [
        ("### An act", "/$defs/act/properties"),
        ("### A reading", "/$defs/element/properties"),
        ("### A reading", "/$defs/judged/properties"),
        ("### A reading", "/$defs/total/properties"),
        ("### A source", "/$defs/notice_entry/properties"),
        ("### A source", "/$defs/block/properties"),
        ("### A source", "/$defs/block/properties/columns/items/properties"),
        ("### A material, a part, a lot", "/$defs/material/properties"),
        ("### A material, a part, a lot", "/$defs/part/properties"),
        ("### A material, a part, a lot", "/$defs/lot/properties"),
        ("### A material, a part, a lot", "/$defs/reason_entry/properties"),
        ("### Exemptions", "/$defs/claim/properties"),
        ("### Exemptions", "/$defs/candidate/properties"),
        ("### Exemptions", "/$defs/exemption/properties"),
        ("### Exemptions", "/$defs/expiry/properties"),
        ("### Exemptions", "/$defs/cr6_area/properties"),
        ("### Photographs", "/$defs/photo/properties"),
        ("### Photographs", "/$defs/photo/properties/shows/items/properties"),
        ("### Charts", "/$defs/chart/properties"),
        ("### Charts", "/$defs/chart/properties/points/items/properties"),
        ("### Charts", "/$defs/chart/properties/signals/items/properties"),
        ("### Charts", "/$defs/drift/properties"),
    ] {
        let said = quoted(section(&text, heading));
        let schema = schema();
        for key in schema.pointer(place).and_then(Value::as_object).expect(place).keys() {
            assert!(said.contains(key), "{key} of {place} is not in {heading}");
        }
    }
}

#[test]
fn the_csv_has_the_columns_of_the_contract() {
    let text = contract();
    let section = section(&text, "## `findings.csv`");
    let block = section.split("```").nth(1).expect("a block of columns");
    let columns: Vec<&str> = block.split_whitespace().collect();
    assert_eq!(columns, csv::columns());
}

/// A reader that meets a key it does not know names those it knows.
fn known_keys(message: &str) -> Codes {
    let (_, list) = message.split_once(" (").unwrap_or_else(|| panic!("{message}"));
    quoted(list)
}

fn table_of(section: &str, table: &str) -> Codes {
    let row = section.lines().find(|line| line.starts_with(&format!("| {table} |")));
    let row = row.unwrap_or_else(|| panic!("{table} is not in the contract"));
    quoted(row.split('|').nth(2).expect("keys"))
}

#[test]
fn the_settings_file_has_the_keys_of_the_contract() {
    let text = contract();
    let section = section(&text, "## Settings file");
    let head = "schema = \"plumbline.settings/1\"\n";
    for (table, extra) in [
        ("top", "odd = 1\n"),
        ("`[[source]]`", "[[source]]\nname = \"a\"\nodd = 1\n"),
        ("`[[header]]`", "[[header]]\nfingerprint = \"a\"\nodd = 1\n"),
        ("`[[lot]]`", "[[lot]]\nodd = 1\n"),
        ("`[[part]]`", "[[part]]\npart = \"a\"\nodd = 1\n"),
        ("`[[material]]`", "[[material]]\nmaterial = \"a\"\nodd = 1\n"),
        ("`[[site_sigma]]`", "[[site_sigma]]\nodd = 1\n"),
        ("`[[control_chart]]`", "[[control_chart]]\nodd = 1\n"),
        ("`[[claim]]`", "[[claim]]\nodd = 1\n"),
        ("`[[renewal]]`", "[[renewal]]\nodd = 1\n"),
        ("`[[cr6_area]]`", "[[cr6_area]]\nodd = 1\n"),
        ("`[[photo]]`", "[[photo]]\nodd = 1\n"),
        ("`[[issuer]]`", "[[issuer]]\nodd = 1\n"),
        ("`[[customer]]`", "[[customer]]\nodd = 1\n"),
        ("`[[sampled]]`", "[[sampled]]\nodd = 1\n"),
        ("`[[item]]`", "[[item]]\nodd = 1\n"),
        ("`[[authorised]]`", "[[authorised]]\nodd = 1\n"),
    ] {
        let problems = parse_settings(&format!("{head}{extra}"), "s").expect_err("an odd key");
        let odd = problems.iter().find(|one| one.code == ProblemCode::UnknownKey).expect("its problem");
        assert_eq!(known_keys(&odd.found), table_of(section, table), "{table}");
    }
}

#[test]
fn the_rule_book_file_has_the_keys_of_the_contract() {
    let text = contract();
    let section = section(&text, "## Rule book file");
    for (table, book, after) in [
        ("top", SCREENING_2013, "edition = \"2013\"\n"),
        ("`[screening]`", SCREENING_2013, "[screening]\n"),
        ("`[[screening.band]]`", SCREENING_2013, "[[screening.band]]\n"),
        ("`[[route]]`", SCREENING_2013, "[[route]]\n"),
        ("`[halogens]`", HALOGENS_2003, "[halogens]\n"),
        ("`[[halogens.limit]]`", HALOGENS_2003, "[[halogens.limit]]\n"),
        ("`[[exemption]]`", EXEMPTIONS_2025, "[[exemption]]\n"),
        ("`[cr6_area]`", CR6_AREA_2015, "[cr6_area]\n"),
    ] {
        assert!(book.contains(after), "{after}");
        let odd = book.replacen(after, &format!("{after}odd = 1\n"), 1);
        let problems = RuleBook::parse(&odd).expect_err("an odd key");
        assert_eq!(problems[0].code, ProblemCode::UnknownKey);
        assert_eq!(known_keys(&problems[0].found), table_of(section, table), "{table}");
    }
}

#[test]
fn the_worker_speaks_the_messages_of_the_contract() {
    let path = in_project("web/src/shared/messages.ts");
    let Ok(types) = fs::read_to_string(&path) else {
        println!("web/src is not there: nothing to look at");
        return;
    };
    let text = contract();
    let section = section(&text, "## Worker messages");
    let (_, lists) = section.split_once("To the worker:").expect("the messages");
    let (to, from) = lists.split_once("From the worker:").expect("both ways");
    let questions = types.split_once("export interface Questions {").expect("questions").1;
    let questions = questions.split_once("\n}").expect("their end").0;
    let asked: Codes = questions
        .lines()
        .filter_map(|line| line.strip_prefix("  ")?.split_once(':').map(|(name, _)| name.to_owned()))
        .filter(|name| name.chars().all(|c| c.is_ascii_lowercase() || c == '_'))
        .collect();
    assert_eq!(quoted(to), asked);
    let answered: Codes = types
        .match_indices("kind: \"")
        .filter_map(|(at, word)| types[at + word.len()..].split_once('"').map(|(kind, _)| kind.to_owned()))
        .collect();
    assert_eq!(quoted(from), answered);
}

/// A message without its text would show its own name in brackets, or an argument in braces.
#[test]
fn no_text_of_any_output_is_a_missing_word() {
    fn walk(path: &str, value: &Value, wrong: &mut Vec<String>) {
        match value {
            Value::Object(map) => {
                for (key, one) in map {
                    walk(&format!("{path}/{key}"), one, wrong);
                }
            }
            Value::Array(list) => {
                for one in list {
                    walk(path, one, wrong);
                }
            }
            Value::String(text) if path.ends_with("/text") || path.ends_with("/remedy") => {
                let missing =
                    text.is_empty() || text.starts_with('[') || text.contains("{$") || text.contains("{ $");
                if missing {
                    wrong.push(format!("{path}: {text}"));
                }
            }
            _ => {}
        }
    }
    let mut wrong = Vec::new();
    for case in cases(&in_tests("golden")) {
        if let Some(json) = run::json_of(&case) {
            walk(&case.name, &serde_json::from_slice(&json).expect("JSON"), &mut wrong);
        }
    }
    assert!(wrong.is_empty(), "{wrong:#?}");
}
