//! A delivery that carries one text in every field that reaches an output.

use plumbline_core::acts::{Act, ActKind, Target, escape};
use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::fields::join;
use plumbline_core::inspection::Inspection;
use plumbline_core::rules::RuleBook;
use serde_json::Value;

use crate::places::in_tests;
use crate::program::{inspect, read};

/// What stands behind every text, so that it can be found again.
pub const MARK: &str = "qz7";

/// One text of the corpus.
#[derive(Clone, Debug)]
pub struct Hostile {
    /// What it tries.
    pub name: String,
    /// The text, with [`MARK`] behind it.
    pub text: String,
}

/// The corpus.
pub fn corpus() -> Vec<Hostile> {
    let text = std::fs::read_to_string(in_tests("injection/texts.json")).expect("the corpus");
    let list: Vec<Value> = serde_json::from_str(&text).expect("JSON");
    list.iter()
        .map(|one| {
            let times = one["times"].as_u64().unwrap_or(1) as usize;
            let text = one["text"].as_str().expect("a text").repeat(times);
            Hostile { name: one["name"].as_str().expect("a name").to_owned(), text: format!("{text}{MARK}") }
        })
        .collect()
}

fn quoted(text: &str) -> String {
    format!("\"{}\"", text.replace('"', "\"\""))
}

/// The table: over, open, not understood, two suppliers, and a check.
pub fn table(text: &str) -> Vec<u8> {
    let of = |ending: &str| quoted(&format!("{text}{ending}"));
    let mut out = vec![format!("Title,{}\r\n", of(""))];
    let heads = "Sample,Unit,Spot,Part,Material,Lot,Supplier,Class,Instrument,Mode,Operator,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)";
    out.push(format!("{heads},{}\r\n", of("")));
    for (id, lot, class, pb) in [
        ("-a", "-1", "metal".to_owned(), "1360,20".to_owned()),
        ("-b", "-1", "metal".to_owned(), "900,80".to_owned()),
        ("-c", "-2", "polymer".to_owned(), "1000,90".to_owned()),
        ("-d", "-2", of(""), format!("{},3", of(""))),
    ] {
        let row: Vec<String> =
            [id, id, "-spot", lot, lot, lot, lot].iter().map(|ending| of(ending)).collect();
        out.push(format!(
            "{},{class},{},{},{},{pb},2,1,{}\r\n",
            row.join(","),
            of(""),
            of(""),
            of(""),
            of("")
        ));
    }
    out.push(format!("{},,,,,,,metal,{},{},{},965,6,2,1,\r\n", of("-check"), of(""), of(""), of("")));
    out.concat().into_bytes()
}

/// Every act that holds a text of a person.
pub fn acts(text: &str) -> Vec<Act> {
    let of = |ending: &str| format!("{text}{ending}");
    // A table's cell loses the spaces around a name, and an act speaks of what the table holds.
    let cell = |ending: &str| format!("{}{ending}", text.trim_start());
    let lot = || Target::Lot(cell("-1"), cell("-1"));
    let material = || Target::LotMaterial(["-1"; 4].map(cell));
    let all = |kind: ActKind, value: String| (kind, Target::Inspection, value);
    let list = vec![
        all(ActKind::Title, of("")),
        all(ActKind::Inspector, of("")),
        all(ActKind::Place, of("")),
        all(ActKind::ReviewedAt, of("")),
        all(ActKind::Contact, of("")),
        all(ActKind::RequestedAction, of("")),
        all(ActKind::CheckSamples, escape(&cell("-check"))),
        all(ActKind::BlankSamples, escape(&of("-blank"))),
        all(ActKind::HalogenBook, of("")),
        all(ActKind::Sheet, of("")),
        all(
            ActKind::Certificate,
            join(&[
                ("sample", &cell("-check")),
                ("element", "Pb"),
                ("value", "965.5 mg/kg"),
                ("u", "6.6 mg/kg"),
                ("k", "2"),
                ("id", &of("")),
            ]),
        ),
        all(
            ActKind::Renewal,
            join(&[("entry", "6(c)"), ("state", "pending"), ("source", &of("")), ("date", "2026-01-10")]),
        ),
        (
            ActKind::BillOfMaterials,
            Target::Part(cell("-1")),
            format!("{}|{}", escape(&cell("-1")), escape(&cell("-missing"))),
        ),
        (
            ActKind::Claim,
            Target::Material(cell("-1"), cell("-1")),
            join(&[
                ("entry", "6(c)"),
                ("substance", "Pb"),
                ("evidence", &of("")),
                ("by", &of("")),
                ("second", &of("-2")),
            ]),
        ),
        (
            ActKind::Cr6Area,
            Target::Material(cell("-1"), cell("-1")),
            join(&[("area", "0.11 ug/cm2"), ("laboratory", &of("")), ("report", &of(""))]),
        ),
        (
            ActKind::Laboratory,
            material(),
            join(&[
                ("analyte", "Cd"),
                ("value", "412 mg/kg"),
                ("method", &of("")),
                ("laboratory", &of("")),
                ("report", &of("")),
            ]),
        ),
        (
            ActKind::Lift,
            lot(),
            join(&[("reason", "trust_none"), ("why", &of("")), ("by", &of("")), ("second", &of("-2"))]),
        ),
        (
            ActKind::Lift,
            Target::Lot(of("-no"), of("-no")),
            join(&[("reason", "undecided"), ("about", &of("")), ("why", &of(""))]),
        ),
        (ActKind::HoldEnds, lot(), join(&[("who", &of("")), ("until", "2026-12-05"), ("place", &of(""))])),
        (ActKind::SetAside, Target::Reading(of(".csv"), 4), of("")),
        (ActKind::Photo, Target::Reading(of(".csv"), 3), join(&[("file", &of(".jpg"))])),
        (ActKind::Class, Target::Part(of("-9")), "metal".to_owned()),
        (ActKind::TubeAnode, Target::Source(of(".csv")), "Rh".to_owned()),
    ];
    list.into_iter()
        .map(|(kind, target, value)| Act { kind, target, value, by: of(""), at: of(""), note: of("") })
        .collect()
}

/// A text as a TOML string.
fn toml(text: &str) -> String {
    serde_json::to_string(text).expect("a string").replace('\u{7f}', "\\u007F")
}

/// A rule book with the text in every field that is free; `None` where no such book can be read.
pub fn book(text: &str) -> Option<RuleBook> {
    let said = toml(text);
    let file = format!(
        "schema = \"plumbline.rules/1\"\nid = \"invented-book\"\ntitle = {said}\nedition = {said}\njurisdiction = {said}\nsource = {said}\n\
         confidence = {said}\nnote = {said}\n[[limit]]\nid = \"row\"\nof = \"Pb\"\nlimit = \"100 mg/kg\"\noperator = \"at most\"\n\
         classes = [\"polymer\", \"metal\"]\nbasis = \"article\"\nscope = {said}\nquestion = {said}\nsource = {said}\nclause = {said}\n"
    );
    RuleBook::parse(&file).ok()
}

/// The whole delivery; of a table that can't hold the text, what could be read of it.
pub fn delivery(text: &str) -> Inspection {
    let mut inspection = inspect("", &[]);
    inspection.acts = acts(text);
    if let Some(book) = book(text) {
        inspection.books.add(book);
    }
    let settings = inspection.settings();
    inspection.add_sources(read(&format!("{text}.csv"), &settings, &table(text)));
    set_duplicates_aside(&mut inspection.sources);
    inspection
}
