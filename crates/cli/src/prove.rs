//! A report held against what it carries, told line by line.

use std::fs;
use std::path::{Path, PathBuf};

use plumbline_core::words::Words;
use plumbline_proof::{prove, said};
use plumbline_words::language;

use crate::arguments::Prove;
use crate::{USAGE, complain, files, say};

/// Exit status: the report is not what its data give, or something given beside it says otherwise.
const DIFFERS: u8 = 1;
/// Exit status: it could not be held against anything.
const NOT_PROVED: u8 = 2;
/// Exit status: the findings it carries are those of its data; what a person reads in it was not checked.
const ONLY_FINDINGS: u8 = 3;

pub(crate) fn run(words: &Words, asked: &Prove) -> u8 {
    let read = |path: &Path| {
        fs::read(path).map_err(|error| {
            let file = path.display().to_string();
            complain(&words.with("cli-unreadable", &[("file", &file), ("text", &error.to_string())]));
        })
    };
    let Ok(report) = read(&asked.report) else { return USAGE };
    let mut beside = Vec::new();
    for path in &asked.sources {
        let found = match files::below(path) {
            Ok(found) => found,
            Err((place, error)) => {
                let file = place.display().to_string();
                complain(&words.with("cli-unreadable", &[("file", &file), ("text", &error.to_string())]));
                return USAGE;
            }
        };
        for (name, path) in found {
            // The report itself often lies in the folder of its files; it is not one of them.
            if same_file(&path, &asked.report) {
                continue;
            }
            let Ok(bytes) = read(&path) else { return USAGE };
            beside.push((name, bytes));
        }
    }
    let languages = |tag: &str| language(tag).map(Words::of);
    let proof = prove(&report, &beside, asked.digest.as_deref(), &languages);
    say(&said::verdict(words, &proof));
    let lists = [said::places(words, &proof), said::shows(words, &proof), said::files(words, &proof)];
    for line in lists.iter().flatten() {
        say(&format!("  {line}"));
    }
    match (proof.could_be_proved(), proof.nothing_differs()) {
        (false, _) => NOT_PROVED,
        (true, false) => DIFFERS,
        (true, true) if !proof.text_was_proved() => ONLY_FINDINGS,
        (true, true) => 0,
    }
}

fn same_file(one: &Path, other: &Path) -> bool {
    let whole = |path: &Path| path.canonicalize().unwrap_or_else(|_| PathBuf::from(path));
    whole(one) == whole(other)
}
