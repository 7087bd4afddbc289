//! Hostile texts in every field: what comes out has the shape of the same delivery with harmless names, and every text
//! comes back as itself.
//!
//! Markup is parsed by html5ever, tables by the csv crate, workbooks by calamine: none of them is what writes them.

use std::borrow::Cow;
use std::collections::BTreeSet;
use std::io::Cursor;

use calamine::{Data, Reader, Xlsx};
use html5ever::tendril::TendrilSink;
use markup5ever_rcdom::{Handle, NodeData, RcDom};
use plumbline_core::acts::escape;
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::report::{Length, history, html};
use plumbline_core::visible_text::{on_one_line, visible};
use plumbline_tests::injection::{Hostile, MARK, book, corpus, delivery, table};
use plumbline_tests::packed::xlsx::workbook;
use plumbline_tests::packed::{Sheet, SheetCell};
use plumbline_tests::program::{
    built_in_books, findings_csv, findings_json, findings_xlsx, inspect, papers_html, read, with_words,
};

const HARMLESS: &str = "harmless";

/// An element with the names of its attributes, or a text; each with its depth.
#[derive(Debug, PartialEq, Eq)]
enum Node {
    Element(usize, String, Vec<(String, String)>),
    Text(usize, String),
    Other(usize, String),
}

fn flatten(handle: &Handle, depth: usize, nodes: &mut Vec<Node>) {
    match &handle.data {
        NodeData::Element { name, attrs, .. } => {
            let mut attributes: Vec<(String, String)> = attrs
                .borrow()
                .iter()
                .map(|one| (one.name.local.to_string(), one.value.to_string()))
                .collect();
            attributes.sort();
            nodes.push(Node::Element(depth, name.local.to_string(), attributes));
        }
        NodeData::Text { contents } => nodes.push(Node::Text(depth, contents.borrow().to_string())),
        NodeData::Comment { contents } => nodes.push(Node::Other(depth, format!("comment {contents}"))),
        NodeData::ProcessingInstruction { target, .. } => {
            nodes.push(Node::Other(depth, format!("pi {target}")));
        }
        NodeData::Doctype { name, .. } => nodes.push(Node::Other(depth, format!("doctype {name}"))),
        NodeData::Document => {}
    }
    for child in handle.children.borrow().iter() {
        flatten(child, depth + 1, nodes);
    }
}

fn parsed(markup: &str) -> (Vec<Node>, Vec<String>) {
    let dom = html5ever::parse_document(RcDom::default(), html5ever::ParseOpts::default()).one(markup);
    let mut nodes = Vec::new();
    flatten(&dom.document, 0, &mut nodes);
    let errors = dom.errors.borrow().iter().map(Cow::to_string).collect();
    (nodes, errors)
}

/// Every page that is written of an inspection.
fn pages(inspection: &Inspection) -> Vec<(String, String)> {
    pages_with(inspection, Length::ALL)
}

/// The same with the report in these lengths alone.
fn pages_with(inspection: &Inspection, lengths: &[Length]) -> Vec<(String, String)> {
    let findings = review(inspection);
    let mut pages: Vec<(String, String)> = lengths
        .iter()
        .map(|length| {
            let mut bytes = Vec::new();
            with_words(|words| html::write(inspection, &findings, words, *length, &mut bytes))
                .expect("a Vec");
            // What stands behind is data for programs, held by the tests of proof; a reader sees none of it.
            let page = String::from_utf8(bytes).expect("UTF-8");
            let seen = page.split_once("</main>").expect("its end").0;
            (length.file().to_owned(), format!("{seen}</main></body></html>"))
        })
        .collect();
    // A notice is named by its supplier.
    pages.extend(papers_html(inspection, &findings).into_iter().map(|(file, text)| {
        let file = if file.starts_with("supplier-notice-") { file[..17].to_owned() } else { file };
        (file, text)
    }));
    pages
}

/// The ways a text stands in markup: as it is, without the spaces that a table's cell loses, on one line, and as the value of
/// an act that holds several.
fn ways(text: &str) -> Vec<String> {
    let trimmed = text.trim();
    let mut ways: Vec<String> = [text.to_owned(), trimmed.to_owned()]
        .iter()
        .flat_map(|one| [one.clone(), escape(one), one.replace('\\', "\\\\").replace(';', "\\;")])
        .flat_map(|one| [visible(&one).into_owned(), on_one_line(&one).into_owned()])
        .collect();
    // The longest first: one may be a part of another.
    ways.sort_by_key(|one| std::cmp::Reverse(one.len()));
    ways.dedup();
    ways
}

/// A text with every hostile one turned into the harmless one, and without what rests on the bytes: digests and numbers of
/// reports.
fn tamed(text: &str, ways: &[String], harmless: &str) -> String {
    let mut out: String = text.chars().filter(|one| !matches!(one, '\u{2068}' | '\u{2069}')).collect();
    for way in ways {
        out = out.replace(way.as_str(), harmless);
    }
    // A number holds the day as its settings write it; what a text makes of that is no day.
    let mut parts = out.split("PL-");
    let mut numbered = parts.next().unwrap_or("").to_owned();
    for part in parts {
        numbered.push_str("PL-");
        numbered.push_str(part.trim_start_matches(|one: char| one.is_ascii_hexdigit() || one == '-'));
    }
    let out = numbered;
    let mut tame = String::with_capacity(out.len());
    let mut run = String::new();
    for character in out.chars().chain(['\0']) {
        if character.is_ascii_digit() || matches!(character, 'a'..='f' | 'A'..='F') {
            run.push(character);
            continue;
        }
        if run.len() >= 8 {
            tame.push('#');
        } else {
            tame.push_str(&run);
        }
        run.clear();
        tame.push(character);
    }
    tame
}

/// Attributes whose value rests on the bytes of a text: the drawing of a code.
fn drawn(element: &str, attributes: &[(String, String)], name: &str) -> bool {
    let of = |class: &str| attributes.iter().any(|(name, value)| name == "class" && value == class);
    (element == "path" && of("dark") && name == "d")
        || (element == "svg" && of("code") && name == "viewBox")
        || (element == "path"
            && name == "d"
            && attributes.iter().any(|(name, value)| name == "fill" && value == "#fff"))
}

/// True where two texts are the same once the hostile one is tamed, or the hostile one was cut and says so.
fn alike(text: &str, expected: &str, ways: &[String], harmless: &str) -> bool {
    let cut = || {
        ways.iter().any(|way| text.contains(&way.chars().take(40).collect::<String>())) && text.contains('…')
    };
    tamed(text, ways, harmless) == tamed(expected, &[], "") || cut()
}

/// Holds a page against its harmless twin, node by node.
///
/// Says where the two part; nothing where they don't.
fn held(what: &str, page: &str, twin: &str, text: &str, whole: bool) -> Option<String> {
    let held = std::panic::catch_unwind(|| hold(what, page, twin, text, whole));
    held.err().map(|_| what.to_owned())
}

fn hold(what: &str, page: &str, twin: &str, text: &str, whole: bool) {
    let (ours, errors) = parsed(page);
    assert!(errors.is_empty(), "{what}: {errors:?}");
    let (theirs, _) = parsed(twin);
    let (ways, harmless) = (ways(text), format!("{HARMLESS}{MARK}"));
    for (at, (one, other)) in ours.iter().zip(&theirs).enumerate() {
        let place = || format!("{what}, node {at}: {one:?} where the harmless one has {other:?}");
        match (one, other) {
            (Node::Element(depth, name, attributes), Node::Element(deep, named, others)) => {
                assert_eq!((depth, name), (deep, named), "{}", place());
                assert_eq!(attributes.len(), others.len(), "{}", place());
                for ((attribute, value), (known, expected)) in attributes.iter().zip(others) {
                    assert_eq!(attribute, known, "{}", place());
                    assert!(
                        !attribute.starts_with("on") && attribute != "src" && attribute != "href",
                        "{}",
                        place()
                    );
                    if whole && !drawn(name, attributes, attribute) {
                        assert!(alike(value, expected, &ways, &harmless), "{}", place());
                    }
                }
                assert!(
                    !["script", "iframe", "img", "object", "embed", "link", "base", "form"]
                        .contains(&name.as_str()),
                    "{}",
                    place()
                );
            }
            (Node::Text(depth, text), Node::Text(deep, expected)) => {
                assert_eq!(depth, deep, "{}", place());
                if whole {
                    assert!(alike(text, expected, &ways, &harmless), "{}", place());
                }
            }
            _ => assert_eq!(one, other, "{}", place()),
        }
    }
    assert_eq!(ours.len(), theirs.len(), "{what} has other nodes");
}

/// True for a text that a table can't hold in a cell as it is, so that its delivery is another one: the program then says what
/// it could not read.
fn cannot_be_read_alike(inspection: &Inspection, twin: &Inspection) -> bool {
    let shape = |inspection: &Inspection| -> Vec<(usize, usize, u64)> {
        inspection
            .sources
            .iter()
            .map(|one| (one.readings.len(), one.blocks.len(), one.rows_refused))
            .collect()
    };
    shape(inspection) != shape(twin)
}

fn harmless() -> Inspection {
    delivery(&format!("{HARMLESS}{MARK}"))
}

#[test]
fn every_page_has_the_shape_it_has_with_harmless_names() {
    let twin = harmless();
    let twins = pages(&twin);
    assert!(twins.len() >= 6, "{:?}", twins.iter().map(|one| &one.0).collect::<Vec<_>>());
    let (mut unlike, mut apart) = (BTreeSet::new(), Vec::new());
    for Hostile { name, text } in corpus() {
        let mut inspection = delivery(&text);
        if cannot_be_read_alike(&inspection, &twin) {
            // Then everything a person says still carries it, beside the harmless table.
            unlike.insert(name.clone());
            inspection.sources = twin.sources.clone();
            for (file, page) in pages(&inspection) {
                let (nodes, errors) = parsed(&page);
                assert!(errors.is_empty(), "{name} in {file}: {errors:?}");
                let markup = nodes.iter().any(|node| matches!(node, Node::Element(_, name, _) if ["script", "img", "iframe"].contains(&name.as_str())));
                assert!(!markup, "{name} in {file}");
            }
            continue;
        }
        // Of a text of this length, only the beginning stands in some places.
        let whole = text.len() < 1000;
        let ours = pages(&inspection);
        assert_eq!(
            ours.len(),
            twins.len(),
            "{name}: {:?}",
            ours.iter().map(|one| &one.0).collect::<Vec<_>>()
        );
        for ((file, page), (known, expected)) in ours.iter().zip(&twins) {
            assert_eq!(file, known, "{name}");
            apart.extend(held(&format!("{name} in {file}"), page, expected, &text, whole));
        }
    }
    assert!(apart.is_empty(), "{apart:#?}");
    // Control characters are no text, and a name over several lines may be rows that a stray quote swallowed: the table
    // refuses both, and says so.
    let refused = [
        "controls",
        "escape of a terminal",
        "formula behind a carriage return",
        "formula behind a line feed",
        "formula in a second line",
        "line ends",
        "nothing",
    ];
    assert_eq!(unlike.iter().map(String::as_str).collect::<Vec<_>>(), refused);
}

#[test]
fn nothing_invisible_and_nothing_that_turns_writing_around_is_in_a_page() {
    for Hostile { name, text } in corpus() {
        for (file, page) in pages_with(&delivery(&text), &[Length::Annex]) {
            for character in page.chars() {
                let control = character.is_control() && !matches!(character, '\n' | '\t');
                let turning = matches!(
                    character,
                    '\u{61c}' | '\u{200e}' | '\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2066}' | '\u{2067}'
                );
                assert!(!control && !turning, "{name} in {file}: U+{:04X}", character as u32);
            }
            let count = |wanted: char| page.chars().filter(|one| *one == wanted).count();
            assert_eq!(count('\u{2068}'), count('\u{2069}'), "{name} in {file}: isolates are closed");
        }
    }
    let report = &pages(&delivery(&format!("רתי{MARK}")))[1].1;
    assert!(report.contains(&format!("\u{2068}רתי\u{2069}{MARK}")), "words from right to left stand apart");
}

/// True for a text that a spreadsheet would run.
fn runs(text: &str) -> bool {
    let begins = text.trim_start().starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠']);
    (begins && text.parse::<f64>().is_err()) || text.starts_with(['\t', '\r', '\n'])
}

#[test]
fn no_cell_of_the_table_or_the_workbook_is_run_and_every_one_comes_back() {
    for Hostile { name, text } in corpus() {
        let inspection = delivery(&text);
        let findings = review(&inspection);
        let bytes = findings_csv(&inspection, &findings);
        let mut reader = csv::ReaderBuilder::new().has_headers(false).from_reader(bytes.as_slice());
        let rows: Vec<csv::StringRecord> = reader.records().map(|row| row.expect("a row")).collect();
        assert_eq!(rows.len(), 1 + findings.verdicts.len(), "{name}");
        assert!(rows.iter().flatten().all(|cell| !runs(cell)), "{name}");
        for (at, row) in rows.iter().skip(1).enumerate() {
            let (source, line) = findings.place(at).expect("a reading");
            let source = &inspection.sources[source];
            let unguarded = |text: &str| text.strip_prefix('\'').unwrap_or(text).to_owned();
            assert_eq!(unguarded(&row[0]), unguarded(&source.name), "{name}");
            let id = source.readings.identity(plumbline_core::reading::Identity::Id, line).unwrap_or("");
            assert_eq!(unguarded(&row[2]), unguarded(id), "{name}");
        }

        let mut workbook = Xlsx::new(Cursor::new(findings_xlsx(&inspection, &findings))).expect(&name);
        for sheet in workbook.sheet_names() {
            assert!(
                workbook.worksheet_formula(&sheet).is_ok_and(|formulas| formulas.is_empty()),
                "{name}: {sheet}"
            );
            let range = workbook.worksheet_range(&sheet).expect(&sheet);
            for (row, column, cell) in range.used_cells() {
                if let Data::String(text) = cell {
                    assert!(!runs(text), "{name}: {sheet} {row} {column} {text:?}");
                }
            }
        }
        let readings = workbook.worksheet_range("Readings").expect("readings");
        for (at, row) in rows.iter().enumerate() {
            for (column, text) in row.iter().enumerate() {
                if let Some(Data::String(found)) = readings.get((at, column)) {
                    let expected: String = text.chars().take(32_766).collect();
                    let found: String = found.replace("_x005F_", "_").chars().take(32_766).collect();
                    let expected = if expected.contains(['\0', '\u{1}', '\u{1b}', '\u{fffe}']) {
                        continue;
                    } else {
                        expected
                    };
                    assert_eq!(found, expected, "{name}: {at} {column}");
                }
            }
        }
    }
}

#[test]
fn findings_and_history_keep_every_text_as_it_is() {
    for Hostile { name, text } in corpus() {
        let inspection = delivery(&text);
        let findings = review(&inspection);
        let json: serde_json::Value = serde_json::from_slice(&findings_json(&inspection, &findings))
            .unwrap_or_else(|error| panic!("{name}: {error}"));
        assert_eq!(json["acts"][0]["value"], text.as_str(), "{name}");
        assert_eq!(json["acts"][0]["note"], text.as_str(), "{name}");
        assert_eq!(json["sources"][0]["name"], format!("{text}.csv"), "{name}");
        for (at, lot) in findings.lots.iter().enumerate() {
            assert_eq!(json["lots"][at]["lot"].as_str(), lot.lot.as_deref(), "{name}");
        }
        let mut written = Vec::new();
        history::write(&inspection, &findings, &mut written).expect("a Vec");
        let written = String::from_utf8(written).expect("UTF-8");
        let again = History::parse(&written).unwrap_or_else(|problems| panic!("{name}: {problems:?}"));
        assert_eq!(again.lots.len(), inspection_lots(&written), "{name}: a record is a line");
    }
}

fn inspection_lots(history: &str) -> usize {
    history.lines().filter(|line| line.starts_with("lot\t")).count()
}

#[test]
fn names_of_sheets_and_of_packed_files_are_texts_like_any_other() {
    let twin_rows = |text: &str| {
        let cell = |text: &str| SheetCell::Text(text.to_owned());
        vec![
            ["Sample", "Class", "Pb mg/kg", "Pb u (1s)"].map(cell).to_vec(),
            vec![cell(text), cell("metal"), SheetCell::Number("1360".into()), SheetCell::Number("20".into())],
        ]
    };
    let sheet_of = |text: &str| {
        let names = [text.to_owned(), format!("{text} other")];
        let sheets = names.map(|name| Sheet { name, rows: twin_rows(text) });
        inspect("", &[("book.xlsx", &workbook(&sheets))])
    };
    let harmless = format!("{HARMLESS}{MARK}");
    let twins = pages_with(&sheet_of(&harmless), &[Length::Full]);
    let (mut compared, mut apart) = (0, Vec::new());
    for Hostile { name, text } in corpus() {
        // What XML can't hold can't be in a workbook, and what it changes, or a workbook means something else by, is
        // another name.
        if text
            .chars()
            .any(|one| (one.is_control() && one != '\u{85}') || matches!(one, '\u{fffe}' | '\u{ffff}'))
            || text.len() > 1000
            || text.contains("_x")
        {
            continue;
        }
        let ours = pages_with(&sheet_of(&text), &[Length::Full]);
        assert_eq!(ours.len(), twins.len(), "{name}");
        for ((file, page), (_, expected)) in ours.iter().zip(&twins) {
            apart.extend(held(&format!("{name} in {file} of a workbook"), page, expected, &text, true));
        }
        compared += 1;
    }
    assert!(apart.is_empty(), "{apart:#?}");
    assert!(compared > 50, "{compared}");
}

#[test]
fn the_corpus_reaches_every_kind_of_field() {
    let text = format!("findme{MARK}");
    let inspection = delivery(&text);
    assert!(book(&text).is_some(), "a rule book holds it");
    let report = &pages(&inspection)[1].1;
    for ending in ["-a", "-spot", "-1", "-2", "-check", "-missing", ".csv"] {
        assert!(report.contains(&format!("{text}{ending}")), "{ending} is in the report");
    }
    assert!(pages(&inspection).iter().all(|(_, page)| page.contains(&text)), "each page carries it");
    // Read by the table, not given to the core: the same text in the same places.
    let read = read("x.csv", &inspection.settings(), &table(&text));
    assert_eq!(read[0].readings.len(), 5);
    assert!(!built_in_books().all().is_empty());
}
