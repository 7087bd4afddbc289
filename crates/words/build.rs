//! Holds every language against English, and fails the build for a text that is missing, one too many, or other
//! arguments.

#[path = "src/comparing.rs"]
mod comparing;

use std::collections::BTreeMap;
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use comparing::{Texts, add_texts, compare, plain};

/// The language all others are held against.
const FIRST: &str = "en";
/// The rooms of the page: this one, and those whose names go on from it (`page-grid`).
const PAGE: &str = "page";
/// Where a language says its own name.
const NAME: (&str, &str) = ("locale", "language-name");

fn main() -> ExitCode {
    let own = PathBuf::from(std::env::var("CARGO_MANIFEST_DIR").unwrap_or_default());
    let mut problems = Vec::new();
    let languages = languages(&own, &mut problems);
    let read: BTreeMap<&String, Texts> =
        languages.iter().map(|(tag, rooms)| (tag, texts(tag, rooms, &mut problems))).collect();
    if let Some(first) = read.get(&FIRST.to_owned()) {
        for (tag, texts) in read.iter().filter(|(tag, _)| tag.as_str() != FIRST) {
            compare(tag, texts, first, &mut problems);
        }
    } else {
        problems.push(format!("no language {FIRST}"));
    }
    let out = PathBuf::from(std::env::var("OUT_DIR").unwrap_or_default()).join("languages.rs");
    if let Err(error) = fs::write(&out, code(&languages)) {
        problems.push(format!("{}: {error}", out.display()));
    }
    for problem in &problems {
        println!("cargo::error={problem}");
    }
    if problems.is_empty() { ExitCode::SUCCESS } else { ExitCode::FAILURE }
}

/// The folders with `.ftl` files, and the files of each.
fn languages(own: &Path, problems: &mut Vec<String>) -> BTreeMap<String, Vec<PathBuf>> {
    let mut found: BTreeMap<String, Vec<PathBuf>> = BTreeMap::new();
    for folder in entries(own, problems) {
        let Some(tag) = folder.file_name().and_then(|name| name.to_str()) else { continue };
        if !folder.is_dir() || tag == "src" {
            continue;
        }
        println!("cargo::rerun-if-changed={}", folder.display());
        let files: Vec<PathBuf> = entries(&folder, problems)
            .into_iter()
            .filter(|file| file.extension().is_some_and(|ending| ending == "ftl"))
            .collect();
        if !files.is_empty() {
            found.insert(tag.to_owned(), files);
        }
    }
    found
}

fn entries(folder: &Path, problems: &mut Vec<String>) -> Vec<PathBuf> {
    let mut paths: Vec<PathBuf> = match fs::read_dir(folder) {
        Ok(entries) => entries.filter_map(|entry| entry.ok().map(|entry| entry.path())).collect(),
        Err(error) => {
            problems.push(format!("{}: {error}", folder.display()));
            Vec::new()
        }
    };
    paths.sort();
    paths
}

fn room(file: &Path) -> &str {
    file.file_stem().and_then(|name| name.to_str()).unwrap_or_default()
}

fn is_of_page(room: &str) -> bool {
    room.strip_prefix(PAGE).is_some_and(|rest| rest.is_empty() || rest.starts_with('-'))
}

fn texts(tag: &str, files: &[PathBuf], problems: &mut Vec<String>) -> Texts {
    let mut texts = Texts::new();
    for file in files {
        println!("cargo::rerun-if-changed={}", file.display());
        match fs::read_to_string(file) {
            Ok(text) => add_texts(&mut texts, tag, room(file), &text, problems),
            Err(error) => problems.push(format!("{tag}/{}.ftl: {error}", room(file))),
        }
    }
    texts
}

/// What a language calls itself.
fn name_of(files: &[PathBuf]) -> Option<String> {
    let file = files.iter().find(|file| room(file) == NAME.0)?;
    plain(&fs::read_to_string(file).ok()?, NAME.1)
}

/// The page's own words stand apart: the core never says them, and its English is built in without them.
fn code(languages: &BTreeMap<String, Vec<PathBuf>>) -> String {
    let mut code = String::new();
    let mut list = Vec::new();
    for (tag, files) in languages {
        let name = if tag == FIRST { "ENGLISH".to_owned() } else { tag.to_uppercase().replace('-', "_") };
        let _ = writeln!(code, "/// What the core says in `{tag}`.\npub static {name}: &[Room] = &[");
        let mut page = String::new();
        for file in files {
            let path = file.display().to_string();
            if is_of_page(room(file)) {
                let _ = write!(page, "include_str!({path:?}), \"\\n\", ");
            } else {
                let _ =
                    writeln!(code, "    Room {{ name: {:?}, text: include_str!({path:?}) }},", room(file));
            }
        }
        let _ = writeln!(code, "];");
        // A missing name has been told with the other missing texts.
        let own = name_of(files).unwrap_or_default();
        let language =
            format!("Language {{ tag: {tag:?}, name: {own:?}, rooms: {name}, page: concat!({page}) }}");
        list.push((tag != FIRST, language));
    }
    list.sort();
    let list: Vec<String> = list.into_iter().map(|(_, text)| text).collect();
    let _ = writeln!(
        code,
        "/// Every language, English first.\npub static LANGUAGES: &[Language] = &[\n    {},\n];",
        list.join(",\n    ")
    );
    code
}
