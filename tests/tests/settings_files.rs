//! Settings and rule book files: refused whole, with a place, or taken whole.

use plumbline_core::acts::Settings;
use plumbline_core::inspection::review;
use plumbline_core::rules::{ProblemCode, RuleBook, SCREENING_2013};
use plumbline_core::settings_file::{parse_settings, settings_text};
use plumbline_tests::golden::cases;
use plumbline_tests::places::in_tests;
use plumbline_tests::program::{findings_json, inspect};

fn problem(settings: &str) -> (u32, u32, ProblemCode) {
    let text = format!("schema = \"plumbline.settings/1\"\n{settings}");
    let problems = parse_settings(&text, "s").expect_err("a problem");
    (problems[0].line, problems[0].column, problems[0].code)
}

#[test]
fn a_value_of_the_wrong_kind_is_refused_for_every_key() {
    for key in [
        "inspector",
        "place",
        "title",
        "reviewed_at",
        "halogen_book",
        "class",
        "sigma_multiple",
        "unit_of_measure",
        "decimal_mark",
        "detection_in_error_column",
        "trust",
        "sampling",
        "materials",
        "thickness_mm",
        "category",
        "placing_date",
        "lot_size",
        "units_to_take",
    ] {
        for value in ["true", "[\"a\"]", "{ a = 1 }"] {
            let text = format!("schema = \"plumbline.settings/1\"\n{key} = {value}\n");
            let Err(problems) = parse_settings(&text, "s") else { panic!("{key} = {value} was taken") };
            assert_eq!((problems[0].line, problems[0].column), (2, key.len() as u32 + 4), "{key} = {value}");
        }
    }
}

/// Some editors put a byte order mark in front of every text they save.
#[test]
fn a_byte_order_mark_in_front_is_no_problem() {
    assert!(parse_settings("\u{FEFF}schema = \"plumbline.settings/1\"\nclass = \"metal\"\n", "s").is_ok());
    assert!(RuleBook::parse(&format!("\u{FEFF}{SCREENING_2013}")).is_ok());
    assert!(parse_settings("schema = \"plumbline.settings/1\"\r\nclass = \"metal\"\r\n", "s").is_ok());
}

/// A person who hands over the wrong file is told so, not that its keys are misspelt.
#[test]
fn a_rule_book_given_as_settings_is_another_kind_of_file() {
    let problems = parse_settings(SCREENING_2013, "s").expect_err("no settings");
    assert_eq!(problems[0].code, ProblemCode::WrongSchema);
}

#[test]
fn settings_given_as_a_rule_book_are_another_kind_of_file() {
    let text = "schema = \"plumbline.settings/1\"\nclass = \"metal\"\n";
    assert_eq!(RuleBook::parse(text).expect_err("no book")[0].code, ProblemCode::WrongSchema);
}

#[test]
fn possible_values_end_where_the_contract_says() {
    for good in [
        "sigma_multiple = 1",
        "sigma_multiple = 4",
        "sigma_multiple = \"1,96\"",
        "thickness_mm = 0.001",
        "thickness_mm = 1000",
        "lot_size = 1",
        "lot_size = 1000000000",
        "category = 1",
        "category = 11",
        "placing_date = 2028-02-29",
        "placing_date = \"2026-12-31\"",
    ] {
        let text = format!("schema = \"plumbline.settings/1\"\n{good}\n");
        assert!(parse_settings(&text, "s").is_ok(), "{good}");
    }
    for bad in [
        "sigma_multiple = 0.99",
        "sigma_multiple = 4.01",
        "thickness_mm = 0",
        "thickness_mm = 1000.001",
        "lot_size = 0",
        "lot_size = 1000000001",
        "lot_size = -1",
        "lot_size = 2.5",
        "category = 0",
        "category = 12",
        "placing_date = \"2027-02-29\"",
        "placing_date = \"tomorrow\"",
    ] {
        assert_eq!(problem(bad).2, ProblemCode::OutOfRange, "{bad}");
    }
}

/// Every settings file of the golden cases, written out by the program and read again, gives the same findings.
#[test]
fn settings_written_out_and_read_again_say_the_same() {
    let mut tried = 0;
    for case in cases(&in_tests("golden")) {
        let Some(acts) = case.settings.as_deref().and_then(|text| parse_settings(text, "s").ok()) else {
            continue;
        };
        let again = settings_text(&acts);
        let files: Vec<(&str, &[u8])> =
            case.files.iter().map(|(name, bytes)| (name.as_str(), bytes.as_slice())).collect();
        let say = |settings: &str| {
            let mut inspection = inspect(settings, &files);
            let read_back = Settings::from_acts(&inspection.acts);
            assert_eq!(read_back.site_sigmas.len(), Settings::from_acts(&acts).site_sigmas.len());
            let findings = review(&inspection);
            // The acts name the file they came from and may come in another order; what they lead to must not.
            inspection.acts.sort_by_key(|act| (act.kind, act.target.to_text(), act.value.clone()));
            inspection.acts.iter_mut().for_each(|act| act.note = String::new());
            String::from_utf8(findings_json(&inspection, &findings)).expect("UTF-8")
        };
        let original = case.settings.as_deref().unwrap_or_default();
        let (before, after) = (say(original), say(&again));
        let tail = |text: &str| text[text.find("\"totals\"").unwrap_or(0)..].to_owned();
        assert_eq!(tail(&before), tail(&after), "{}\n{again}", case.name);
        tried += 1;
    }
    assert!(tried >= 8, "{tried}");
}
