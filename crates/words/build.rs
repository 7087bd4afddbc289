//! Holds every language against English, and fails the build for a text that is missing, one too many, or other
//! arguments.

use std::collections::{BTreeMap, BTreeSet};
use std::fmt::Write as _;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use fluent_syntax::ast::{Entry, Expression, InlineExpression, Pattern, PatternElement};
use fluent_syntax::parser;

/// The language all others are held against.
const FIRST: &str = "en";
/// The room of the page.
const PAGE: &str = "page";

/// The arguments of every text, under `room: id` or `room: id.attribute`.
type Texts = BTreeMap<String, BTreeSet<String>>;

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

fn texts(tag: &str, files: &[PathBuf], problems: &mut Vec<String>) -> Texts {
    let mut texts = Texts::new();
    for file in files {
        println!("cargo::rerun-if-changed={}", file.display());
        let place = format!("{tag}/{}.ftl", room(file));
        let text = match fs::read_to_string(file) {
            Ok(text) => text,
            Err(error) => {
                problems.push(format!("{place}: {error}"));
                continue;
            }
        };
        let resource = parser::parse(text.as_str()).unwrap_or_else(|(resource, errors)| {
            for error in errors {
                let line = text.get(..error.pos.start).unwrap_or("").matches('\n').count() + 1;
                problems.push(format!("{place} line {line}: {error}"));
            }
            resource
        });
        for entry in resource.body {
            let Entry::Message(message) = entry else { continue };
            let id = format!("{}: {}", room(file), message.id.name);
            let mut add = |id: String, pattern: &Pattern<&str>| {
                let mut arguments = BTreeSet::new();
                of_pattern(pattern, &mut arguments);
                if texts.insert(id.clone(), arguments).is_some() {
                    problems.push(format!("{tag}: {id} stands twice"));
                }
            };
            if let Some(pattern) = &message.value {
                add(id.clone(), pattern);
            }
            for attribute in &message.attributes {
                add(format!("{id}.{}", attribute.id.name), &attribute.value);
            }
        }
    }
    texts
}

fn of_pattern(pattern: &Pattern<&str>, found: &mut BTreeSet<String>) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            of_expression(expression, found);
        }
    }
}

fn of_expression(expression: &Expression<&str>, found: &mut BTreeSet<String>) {
    match expression {
        Expression::Inline(inline) => of_inline(inline, found),
        // What only chooses a form may be chosen in one language and not in another: plurals.
        Expression::Select { variants, .. } => {
            for variant in variants {
                of_pattern(&variant.value, found);
            }
        }
    }
}

fn of_inline(inline: &InlineExpression<&str>, found: &mut BTreeSet<String>) {
    match inline {
        InlineExpression::VariableReference { id } => {
            found.insert(id.name.to_owned());
        }
        InlineExpression::Placeable { expression } => of_expression(expression, found),
        _ => {}
    }
}

fn compare(tag: &str, texts: &Texts, first: &Texts, problems: &mut Vec<String>) {
    for (id, arguments) in first {
        match texts.get(id) {
            None => problems.push(format!("{tag} has no text for {id}")),
            Some(found) if found != arguments => problems.push(format!(
                "{tag}: {id} names {found:?}, English names {arguments:?}; an argument may be left out in no language"
            )),
            Some(_) => {}
        }
    }
    for id in texts.keys().filter(|id| !first.contains_key(*id)) {
        problems.push(format!("{tag}: {id} is a text English does not have"));
    }
}

/// The page's own words stand apart: the core never says them, and its English is built in without them.
fn code(languages: &BTreeMap<String, Vec<PathBuf>>) -> String {
    let mut code = String::new();
    let mut list = Vec::new();
    for (tag, files) in languages {
        let name = if tag == FIRST { "ENGLISH".to_owned() } else { tag.to_uppercase().replace('-', "_") };
        let _ = writeln!(code, "/// What the core says in `{tag}`.\npub static {name}: &[Room] = &[");
        let mut page = String::from("\"\"");
        for file in files {
            let path = file.display().to_string();
            if room(file) == PAGE {
                page = format!("include_str!({path:?})");
            } else {
                let _ =
                    writeln!(code, "    Room {{ name: {:?}, text: include_str!({path:?}) }},", room(file));
            }
        }
        let _ = writeln!(code, "];");
        list.push((tag != FIRST, format!("Language {{ tag: {tag:?}, rooms: {name}, page: {page} }}")));
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
