//! The report follows its language, in words, numbers and dates; data never does.

use std::collections::BTreeSet;
use std::fs;

use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::report::evidence::OPENS;
use plumbline_core::report::{Length, csv, html, json};
use plumbline_core::words::Words;
use plumbline_tests::delivery::all;
use plumbline_tests::places::in_project;
use plumbline_words::{ENGLISH, LANGUAGES};

/// English words with the numbers and dates of a language whose decimal sign is a comma: what still has a point does not
/// come through the catalogue.
const COMMA: &str = "locale-decimal = ,\nlocale-two_digits = no\nlocale-day = { $day }/{ $month }/{ $year }\n\
                     locale-moment = { $day }, { $time }\n";

fn with_commas() -> Words {
    Words::of_texts("de", ENGLISH.iter().map(|room| room.text).chain([COMMA]))
}

/// Every invented delivery, by its folder's name.
fn deliveries() -> Vec<(String, Inspection)> {
    let found: Vec<_> = all().into_iter().map(|one| (one.name.clone(), one.inspection())).collect();
    assert!(found.len() >= 15, "only {} deliveries", found.len());
    found
}

fn report(inspection: &Inspection, findings: &Findings, words: &Words, length: Length) -> String {
    let mut bytes = Vec::new();
    html::write(inspection, findings, words, length, &mut bytes).expect("a Vec takes all bytes");
    String::from_utf8(bytes).expect("the report is UTF-8")
}

/// Digits with points between them, as they stand in a text.
fn pointed(text: &str) -> BTreeSet<String> {
    let in_number = |c: char| c.is_ascii_digit() || c == '.';
    text.split(|c: char| !in_number(c))
        .map(|run| run.trim_matches('.'))
        .filter(|run| run.contains('.'))
        .map(str::to_owned)
        .collect()
}

/// The text a reader sees, without what is quoted: cells as written, and the acts, which stand as they were given.
fn prose(report: &str, words: &Words, length: Length) -> String {
    let (_, body) = report.split_once("<main>").expect("a body");
    // What the report carries is data, and no reader sees it.
    let (body, _) = body.split_once(OPENS).expect("what it carries");
    let acts = format!("<h2>{}</h2>", words.say("report-acts"));
    // The one page is too short for them.
    let (before, from) = match body.split_once(&acts) {
        None if length == Length::OnePage => (body, "</section>"),
        found => found.expect("the acts"),
    };
    let (_, after) = from.split_once("</section>").expect("an end");
    let mut text = String::new();
    for (at, part) in format!("{before}{after}").split('<').enumerate() {
        let shown = if at == 0 { part } else { part.split_once('>').map_or("", |(_, shown)| shown) };
        text.push_str(shown);
        text.push('\n');
    }
    let quoted = text.replace("&quot;", "\"");
    quoted
        .split('\n')
        .map(|line| line.split('"').step_by(2).collect::<Vec<_>>().join(" "))
        .collect::<Vec<_>>()
        .join("\n")
}

/// Where digits may keep a point: document numbers, clauses and editions of the rule books, decimals that stand in the
/// sentences of the catalogue (a translator writes them), names of the delivery's files, and the program's version.
fn allowed(inspection: &Inspection) -> BTreeSet<String> {
    let mut allowed = pointed(env!("CARGO_PKG_VERSION"));
    for path in fs::read_dir(in_project("crates/core/rules")).expect("the rule books") {
        let text = fs::read_to_string(path.expect("a file").path()).expect("a rule book");
        for line in text.lines() {
            let cites = [
                "source", "clause", "edition", "id", "title", "scope", "method", "note", "question", "entry",
                "species", "text",
            ];
            let key = line.split(['=', '\t']).next().unwrap_or("").trim();
            if cites.contains(&key) || line.contains('\t') {
                allowed.extend(pointed(line));
            }
        }
    }
    for room in ENGLISH {
        allowed.extend(pointed(room.text));
    }
    for source in &inspection.sources {
        allowed.extend(pointed(&source.name));
    }
    allowed
}

#[test]
fn no_number_or_date_of_a_report_keeps_its_english_form_in_a_language_with_another() {
    let words = with_commas();
    let mut problems = Vec::new();
    let mut commas = 0;
    for (name, inspection) in deliveries() {
        let findings = review(&inspection);
        let allowed = allowed(&inspection);
        for length in Length::ALL {
            let text = prose(&report(&inspection, &findings, &words, *length), &words, *length);
            for line in text.lines() {
                let found: Vec<String> = pointed(line).difference(&allowed).cloned().collect();
                if !found.is_empty() {
                    problems.push(format!("{name}: {found:?} in: {line}"));
                }
                // A day as data has it. The deliveries' settings quote letters of other people with theirs.
                if line.contains("(invented)") {
                    continue;
                }
                if line
                    .split(|c: char| !(c.is_ascii_digit() || c == '-'))
                    .any(|run| plumbline_core::day::Day::parse(run).is_some())
                {
                    problems.push(format!("{name}: a date in: {line}"));
                }
                let digits = |c: char| c.is_ascii_digit();
                let decimal = |pair: &[char]| digits(pair[0]) && pair[1] == ',' && digits(pair[2]);
                commas += line.chars().collect::<Vec<_>>().windows(3).filter(|three| decimal(three)).count();
            }
        }
    }
    problems.sort();
    problems.dedup();
    assert!(problems.is_empty(), "{} lines:\n{}", problems.len(), problems.join("\n"));
    assert!(commas > 1000, "only {commas} decimals in all reports");
}

#[test]
fn findings_are_the_same_bytes_whatever_the_language() {
    let english = Words::english();
    let others: Vec<Words> = LANGUAGES.iter().map(Words::of).chain([with_commas()]).collect();
    for (name, inspection) in deliveries() {
        let findings = review(&inspection);
        let written = |words: &Words| {
            let mut bytes = Vec::new();
            json::write(&inspection, &findings, words, &mut bytes).expect("a Vec takes all bytes");
            csv::write(&inspection, &findings, &mut bytes).expect("a Vec takes all bytes");
            bytes
        };
        let kept = written(&english);
        for words in &others {
            assert!(written(words) == kept, "{name} in {}", words.tag());
        }
    }
}

#[test]
fn a_report_in_another_language_has_the_same_number_and_digest_and_names_its_language() {
    let (_, inspection) = deliveries().into_iter().next().expect("a delivery");
    let findings = review(&inspection);
    let number = |report: &str| {
        let (_, from) = report.split_once("--id:\"").expect("a number");
        from.split_once('"').expect("its end").0.to_owned()
    };
    let english = report(&inspection, &findings, &Words::english(), Length::Full);
    let other = report(&inspection, &findings, &with_commas(), Length::Full);
    assert_eq!(number(&english), number(&other));
    assert!(english.contains("<html lang=\"en\">") && other.contains("<html lang=\"de\">"));
    assert_ne!(english, other);
}

#[test]
fn every_language_has_every_word_of_a_report() {
    for language in LANGUAGES {
        let words = Words::of(language);
        for (name, inspection) in deliveries() {
            let findings = review(&inspection);
            let text = report(&inspection, &findings, &words, Length::Full);
            // A missing text shows its id in brackets.
            for room in ENGLISH {
                for id in room.text.lines().filter_map(|line| line.split_once(" =")).map(|(id, _)| id) {
                    let hole = format!("[{id}]");
                    assert!(!text.contains(&hole), "{name} in {}: {hole}", language.tag);
                }
            }
        }
    }
}
