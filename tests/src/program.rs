//! The program under test, from bytes to findings, as both doors run it.

use std::sync::OnceLock;

use plumbline_core::acts::{Act, Settings};
use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::history::History;
use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::opened::{Opened, OpenedFile};
use plumbline_core::papers::{self, Papers};
use plumbline_core::reading::Source;
use plumbline_core::report::evidence::Pinned;
use plumbline_core::report::{Length, csv, html, json};
use plumbline_core::rules::RuleBooks;
use plumbline_core::settings_file::parse_settings;
use plumbline_core::words::Words;
use plumbline_intake::SourceReader;

/// The built-in rule books, read once.
pub fn built_in_books() -> RuleBooks {
    static BOOKS: OnceLock<RuleBooks> = OnceLock::new();
    BOOKS.get_or_init(|| RuleBooks::built_in().expect("the built-in books are whole")).clone()
}

/// Runs a closure with the English words, read once a thread.
pub fn with_words<T>(run: impl FnOnce(&Words) -> T) -> T {
    thread_local! {
        static WORDS: Words = Words::english();
    }
    WORDS.with(run)
}

/// Reads bytes in the given pieces: one source, or one for each file of an archive.
pub fn read_pieces<'a>(
    name: &str,
    settings: &Settings,
    pieces: impl IntoIterator<Item = &'a [u8]>,
) -> Vec<Source> {
    let mut reader = SourceReader::new(name, settings);
    for piece in pieces {
        reader.push(piece);
    }
    reader.finish()
}

/// Reads bytes in the given pieces and keeps what a report carries along.
pub fn read_opened<'a>(
    name: &str,
    in_folder: bool,
    settings: &Settings,
    pieces: impl IntoIterator<Item = &'a [u8]>,
) -> (OpenedFile, Vec<Source>) {
    let mut reader = SourceReader::new(name, settings).keeping(usize::MAX);
    for piece in pieces {
        reader.push(piece);
    }
    reader.finish_opened(in_folder)
}

/// Reads bytes in one piece.
pub fn read(name: &str, settings: &Settings, bytes: &[u8]) -> Vec<Source> {
    read_pieces(name, settings, [bytes])
}

/// The acts of a settings file that is right.
pub fn acts_of(settings: &str) -> Vec<Act> {
    parse_settings(settings, "settings.toml").unwrap_or_else(|problems| panic!("{problems:?}\n{settings}"))
}

/// An inspection of files under a settings file (empty text: none).
pub fn inspect(settings: &str, files: &[(&str, &[u8])]) -> Inspection {
    inspect_pieces(settings, files, usize::MAX)
}

/// The same, with every file cut into pieces of this many bytes.
pub fn inspect_pieces(settings: &str, files: &[(&str, &[u8])], size: usize) -> Inspection {
    let acts = if settings.is_empty() { Vec::new() } else { acts_of(settings) };
    let mut inspection = Inspection {
        sources: Vec::new(),
        books: built_in_books(),
        acts,
        history: History::default(),
        opened: Opened::default(),
        photos: Vec::new(),
    };
    let settings = inspection.settings();
    for (name, bytes) in files {
        let (file, sources) = read_opened(name, false, &settings, bytes.chunks(size.max(1)));
        inspection.add_file(file, sources);
    }
    set_duplicates_aside(&mut inspection.sources);
    inspection
}

/// `findings.json` of an inspection.
pub fn findings_json(inspection: &Inspection, findings: &Findings) -> Vec<u8> {
    let mut bytes = Vec::new();
    with_words(|words| json::write(inspection, findings, words, &mut bytes)).expect("a Vec takes all bytes");
    bytes
}

/// `findings.csv` of an inspection.
pub fn findings_csv(inspection: &Inspection, findings: &Findings) -> Vec<u8> {
    let mut bytes = Vec::new();
    csv::write(inspection, findings, &mut bytes).expect("a Vec takes all bytes");
    bytes
}

/// `report.html` of an inspection.
pub fn report_html(inspection: &Inspection, findings: &Findings) -> String {
    report_in(inspection, findings, Length::Full)
}

/// The report of an inspection in one of its lengths.
pub fn report_in(inspection: &Inspection, findings: &Findings, length: Length) -> String {
    let mut bytes = Vec::new();
    with_words(|words| html::write(inspection, findings, words, length, &mut bytes))
        .expect("a Vec takes all bytes");
    String::from_utf8(bytes).expect("the report is UTF-8")
}

/// `findings.xlsx` of an inspection.
pub fn findings_xlsx(inspection: &Inspection, findings: &Findings) -> Vec<u8> {
    let mut bytes = Vec::new();
    with_words(|words| {
        plumbline_workbook::write(inspection, findings, words, &Pinned::of(inspection, findings), &mut bytes)
    })
    .expect("a Vec takes all bytes");
    bytes
}

/// Every paper of an inspection that there is a need for, by the name of its file.
pub fn papers_html(inspection: &Inspection, findings: &Findings) -> Vec<(String, String)> {
    with_words(|words| papers_in(inspection, findings, words))
}

/// The same in a language.
pub fn papers_in(inspection: &Inspection, findings: &Findings, words: &Words) -> Vec<(String, String)> {
    let (settings, offer) = (inspection.settings(), papers::offer(inspection, findings));
    let made = Papers::new(inspection, findings, words, &settings, &Pinned::of(inspection, findings));
    let mut written: Vec<(String, Vec<u8>)> = Vec::new();
    let mut one = |file: &str, write: &dyn Fn(&mut Vec<u8>) -> std::io::Result<()>| {
        let mut bytes = Vec::new();
        write(&mut bytes).expect("a Vec takes all bytes");
        written.push((file.to_owned(), bytes));
    };
    if offer.self_check > 0 {
        one(papers::SELF_CHECK, &|out| made.self_check(out));
    }
    if offer.samples > 0 {
        one(papers::LABORATORY_REQUEST, &|out| made.laboratory_request(out));
    }
    for notice in &offer.notices {
        one(&notice.file, &|out| made.notice(notice, out));
    }
    if offer.labels > 0 {
        one(papers::LABELS, &|out| made.labels(out));
    }
    written
        .into_iter()
        .map(|(file, bytes)| (file, String::from_utf8(bytes).expect("a paper is UTF-8")))
        .collect()
}

/// `findings.json` of one file without settings, read back.
pub fn findings_of(name: &str, bytes: &[u8]) -> serde_json::Value {
    let inspection = inspect("", &[(name, bytes)]);
    let findings = review(&inspection);
    serde_json::from_slice(&findings_json(&inspection, &findings)).expect("findings are JSON")
}
