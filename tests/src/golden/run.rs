//! A case through the program, as both doors run it: rule book, settings, then the files in order of their names.

use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::opened::Opened;
use plumbline_core::rules::{Problem, RuleBook};
use plumbline_core::settings_file::parse_settings;

use super::load::Case;
use super::view::{self, Expected};
use crate::program::{built_in_books, findings_json, read_opened};

/// The inspection of a case.
///
/// # Errors
/// The problems of its rule book or settings.
pub fn inspection_of(case: &Case) -> Result<Inspection, Vec<String>> {
    let mut inspection = Inspection {
        sources: Vec::new(),
        books: built_in_books(),
        acts: Vec::new(),
        history: History::default(),
        opened: Opened::default(),
        photos: Vec::new(),
    };
    if let Some(text) = &case.rules {
        inspection.books.add(RuleBook::parse(text).map_err(|problems| said("rules.toml", &problems))?);
    }
    if let Some(text) = &case.settings {
        inspection.acts =
            parse_settings(text, "settings.toml").map_err(|problems| said("settings.toml", &problems))?;
    }
    if let Some(text) = &case.history {
        inspection.history = History::parse(text).map_err(|problems| said("history.txt", &problems))?;
    }
    let settings = inspection.settings();
    for (name, bytes) in &case.files {
        let (file, sources) = read_opened(name, true, &settings, [bytes.as_slice()]);
        inspection.add_file(file, sources);
    }
    set_duplicates_aside(&mut inspection.sources);
    Ok(inspection)
}

fn said(file: &str, problems: &[Problem]) -> Vec<String> {
    problems
        .iter()
        .map(|problem| {
            format!("{file} {}:{} {} {:?}", problem.line, problem.column, problem.code.code(), problem.found)
        })
        .collect()
}

/// `findings.json` of a case, where there is one.
pub fn json_of(case: &Case) -> Option<Vec<u8>> {
    let inspection = inspection_of(case).ok()?;
    let findings = review(&inspection);
    Some(findings_json(&inspection, &findings))
}

/// What the program says of a case. The exit status is the command line's own and is tested there.
pub fn view_of(case: &Case, exit: u8) -> Expected {
    let mut view = match inspection_of(case) {
        Err(problems) => Expected { problems, ..Expected::default() },
        Ok(inspection) => {
            let findings = review(&inspection);
            let json = findings_json(&inspection, &findings);
            view::of_findings(&serde_json::from_slice(&json).expect("findings are JSON"))
        }
    };
    // Which entries may be claimed is shown where a case is about exemptions.
    if !case.name.starts_with("exemptions/") {
        view.forget_candidates();
    }
    Expected { exit, ..view }
}
