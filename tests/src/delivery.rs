//! The invented deliveries of `demo-data`, as the doors read them, and their reports.

use std::fs;

use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::opened::Opened;
use plumbline_core::report::{Length, html};
use plumbline_core::words::Words;

use crate::places::in_project;
use crate::program::{acts_of, built_in_books, read_opened, with_words};

/// A delivery: its settings, its history, its tables.
#[derive(Clone, Debug)]
pub struct Delivery {
    /// The folder below `demo-data`.
    pub name: String,
    /// `settings.toml`; empty where there is none.
    pub settings: String,
    /// `history.txt`; empty where there is none.
    pub history: String,
    /// The tables, by name.
    pub files: Vec<(String, Vec<u8>)>,
}

/// All deliveries, by name.
pub fn all() -> Vec<Delivery> {
    let folders = fs::read_dir(in_project("demo-data")).expect("the deliveries");
    let mut names: Vec<String> = folders
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.is_dir())
        .map(|path| path.file_name().expect("a name").to_string_lossy().into_owned())
        .collect();
    names.sort();
    names.iter().map(|name| delivery(name)).collect()
}

/// One delivery.
pub fn delivery(name: &str) -> Delivery {
    let folder = in_project("demo-data").join(name);
    let text = |file: &str| fs::read_to_string(folder.join(file)).unwrap_or_default();
    let mut files: Vec<(String, Vec<u8>)> = fs::read_dir(&folder)
        .unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.extension().is_some_and(|ending| ending == "csv"))
        .map(|path| {
            let name = path.file_name().expect("a name").to_string_lossy().into_owned();
            (name, fs::read(&path).expect("a table"))
        })
        .collect();
    files.sort();
    Delivery { name: name.to_owned(), settings: text("settings.toml"), history: text("history.txt"), files }
}

impl Delivery {
    /// The inspection of it.
    pub fn inspection(&self) -> Inspection {
        let history = match self.history.as_str() {
            "" => History::default(),
            text => History::parse(text).expect("a history"),
        };
        let mut inspection = Inspection {
            sources: Vec::new(),
            books: built_in_books(),
            acts: if self.settings.is_empty() { Vec::new() } else { acts_of(&self.settings) },
            history,
            opened: Opened::default(),
            photos: Vec::new(),
        };
        let settings = inspection.settings();
        for (name, bytes) in &self.files {
            let (file, sources) = read_opened(name, false, &settings, [bytes.as_slice()]);
            inspection.add_file(file, sources);
        }
        set_duplicates_aside(&mut inspection.sources);
        inspection
    }

    /// Its report in a length, in English.
    pub fn report(&self, length: Length) -> Vec<u8> {
        report_of(&self.inspection(), length)
    }
}

/// The report of an inspection, in English.
pub fn report_of(inspection: &Inspection, length: Length) -> Vec<u8> {
    let findings = review(inspection);
    let mut bytes = Vec::new();
    with_words(|words| html::write(inspection, &findings, words, length, &mut bytes))
        .expect("a Vec takes all bytes");
    bytes
}

/// English, as a prover asks for it.
pub fn english(tag: &str) -> Option<Words> {
    (tag == "en").then(Words::english)
}
