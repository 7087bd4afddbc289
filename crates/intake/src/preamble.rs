//! Lines above a table that state something of every reading below: `Lot: L-7`, `Units,mg/kg`, `Errors = 2 sigma`.

use std::collections::BTreeSet;
use std::sync::OnceLock;

use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::reading::StatedUse;

use crate::heading::folding;
use crate::heading::said::stated_multiple;
use crate::heading::vocabulary::{self, Whole, WordKind};

/// Longest text that is a value and no prose.
const LONGEST_VALUE: usize = 200;
/// Longest text that is a key and no sentence.
const LONGEST_KEY: usize = 60;

/// What a line above the table says under a word.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct StatedLine {
    /// The word it is stated under.
    pub(crate) key: String,
    /// What it says.
    pub(crate) value: String,
    /// What it can be used as; `None` where it is only kept.
    pub(crate) used_as: Option<StatedUse>,
}

/// What a line above the table states, by its cells: `Key: value` or `Key = value` in one cell, or a key and its
/// value in two. A line of more filled cells is a row of a table, and two cells whose first is no word that is known
/// are taken only where a colon marks it as one.
pub(crate) fn stated(cells: &[&str]) -> Option<StatedLine> {
    let filled: Vec<&str> = cells.iter().map(|cell| cell.trim()).filter(|cell| !cell.is_empty()).collect();
    if let [one] = filled[..]
        && one.len() <= LONGEST_VALUE
        && let Some(line) = multiple_in_words(one)
    {
        return Some(line);
    }
    let (key, value, marked) = match filled[..] {
        [one] => {
            let at = one.find([':', '=', '：', '＝'])?;
            let (key, rest) = one.split_at(at);
            let mut rest = rest.chars();
            rest.next();
            (key.trim(), rest.as_str().trim(), true)
        }
        [key, value] => {
            let bare = key.trim_end_matches([':', '=', '：', '＝', ' ']);
            (bare, value.trim_start_matches([':', '=', '：', '＝', ' ']), bare.len() < key.len())
        }
        _ => return None,
    };
    // A key has letters; a time of day or a ratio before a colon is none.
    let is_key = key.chars().any(char::is_alphabetic) && key.chars().count() <= LONGEST_KEY;
    if !is_key || value.is_empty() || value.chars().count() > LONGEST_VALUE {
        return None;
    }
    let meaning = key_meaning(key);
    let used_as = meaning.and_then(|meaning| used_as(meaning, value));
    // Two cells may be a row of the table: without a colon the key must be a word that can be used, and the value no
    // heading itself.
    let is_heading = || vocabulary::whole_heading(&folding::letters_and_digits(value)).is_some();
    (marked || used_as.is_some() && !is_heading()).then(|| StatedLine {
        key: key.to_owned(),
        value: value.to_owned(),
        used_as,
    })
}

/// `Uncertainty k=2`, `confidence level 95 %`: a key and a multiple with only a space between them.
fn multiple_in_words(line: &str) -> Option<StatedLine> {
    line.char_indices().filter(|(_, c)| c.is_whitespace()).find_map(|(at, _)| {
        let (key, value) = line.split_at(at);
        let (key, value) = (key.trim_end_matches([':', '=', ' ']), value.trim());
        let is_key = matches!(key_meaning(key), Some(Key::Multiple));
        let multiple = multiple(value).filter(|_| is_key && value.chars().count() <= LONGEST_KEY)?;
        let used_as = Some(StatedUse::Multiple(multiple));
        Some(StatedLine { key: key.to_owned(), value: value.to_owned(), used_as })
    })
}

#[derive(Clone, Copy)]
enum Key {
    Identity(Identity),
    Unit,
    Multiple,
}

fn key_meaning(key: &str) -> Option<Key> {
    use Identity::{Class, Instrument, Lot, Material, Mode, Operator, Part, Seconds, Supplier, Time};
    static MULTIPLE: OnceLock<BTreeSet<String>> = OnceLock::new();
    let folded = folding::letters_and_digits(key);
    let multiple = MULTIPLE.get_or_init(|| {
        vocabulary::stated_words().map(|(_, word, _)| folding::letters_and_digits(word)).collect()
    });
    if multiple.contains(&folded) {
        return Some(Key::Multiple);
    }
    match vocabulary::whole_heading(&folded)?.0 {
        // A sample, a piece or a spot is one reading's own, and a note is for people.
        Whole::Identity(
            identity @ (Lot | Supplier | Part | Material | Class | Instrument | Operator | Time | Seconds
            | Mode),
        ) => Some(Key::Identity(identity)),
        Whole::UnitOfMeasure | Whole::Identity(Identity::Unit) => Some(Key::Unit),
        Whole::ErrorMultiple => Some(Key::Multiple),
        // The clock time of a line of its own is a part of a date that stands elsewhere.
        Whole::Identity(_) | Whole::TimeOfDay | Whole::ElementName | Whole::BelowMark => None,
    }
}

fn used_as(meaning: Key, value: &str) -> Option<StatedUse> {
    match meaning {
        Key::Identity(identity) => Some(StatedUse::Identity(identity)),
        Key::Unit => Unit::from_word(value).map(StatedUse::Unit),
        Key::Multiple => multiple(value).map(StatedUse::Multiple),
    }
}

/// The multiple a value states: `2 sigma`, `k=2`, `k = 2 (95 %)`, `95 %`, `2`. Two that differ state none.
fn multiple(value: &str) -> Option<SigmaMultiple> {
    let folded = folding::word(value);
    if let Some(bare) = SigmaMultiple::from_text(&folded) {
        return Some(bare);
    }
    let parts: Vec<String> = folded
        .split(['(', ')', ';', '[', ']'])
        .map(|part| part.trim_start_matches("at").trim_matches(['±', ',', '.']).to_owned())
        .filter(|part| !part.is_empty())
        .collect();
    let mut counted: Vec<SigmaMultiple> = Vec::new();
    let mut levels: Vec<SigmaMultiple> = Vec::new();
    for part in &parts {
        if let Some(multiple) = stated_multiple(part) {
            counted.push(multiple);
        } else {
            let word = vocabulary::heading_word(part).or_else(|| {
                // `95 % confidence`, `confidence level 95 %`: the level is what counts.
                let at = part.find('%')?;
                let digits =
                    part.get(..at)?.rfind(|c: char| !(c.is_ascii_digit() || c == '.')).map_or(0, |at| at + 1);
                vocabulary::heading_word(part.get(digits..=at)?)
            });
            match word?.kind {
                WordKind::Level(multiple) | WordKind::ErrorOf(multiple) => levels.push(multiple),
                _ => return None,
            }
        }
    }
    // What is counted out says more than the level beside it: `k = 2 (95 %)` is two, not 1.96.
    let stated = if counted.is_empty() { levels } else { counted };
    let first = *stated.first()?;
    stated.iter().all(|other| *other == first).then_some(first)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn used(cells: &[&str]) -> Option<(&'static str, String)> {
        let line = stated(cells)?;
        let used = line.used_as?;
        Some(match used {
            StatedUse::Identity(identity) => (identity.code(), line.value),
            StatedUse::Unit(unit) => ("unit", unit.sign().to_owned()),
            StatedUse::Multiple(multiple) => ("multiple", multiple.to_string()),
        })
    }

    #[test]
    fn a_line_above_the_table_is_used_under_its_word() {
        for (cells, code, value) in [
            (vec!["Lot: L-7"], "lot", "L-7"),
            (vec!["Lot", "L-7", ""], "lot", "L-7"),
            (vec!["Lot:", "", "L-7"], "lot", "L-7"),
            (vec!["Chargen-Nr. = 4711"], "lot", "4711"),
            (vec!["批号：2024-3"], "lot", "2024-3"),
            (vec!["N° de lot : 7"], "lot", "7"),
            (vec!["Supplier", "Birch"], "supplier", "Birch"),
            (vec!["Lieferant: Cedar"], "supplier", "Cedar"),
            (vec!["Date: 2024-05-12 10:30"], "time", "2024-05-12 10:30"),
            (vec!["Gerät: 3"], "instrument", "3"),
            (vec!["Operator", "A. B."], "operator", "A. B."),
            (vec!["Messzeit [s]: 60"], "seconds", "60"),
            (vec!["Mode: plastics"], "mode", "plastics"),
            (vec!["Units: mg/kg"], "unit", "mg/kg"),
            (vec!["Unit", "ppm"], "unit", "mg/kg"),
            (vec!["Einheit = Gew.-%"], "unit", "%"),
            (vec!["单位：mg/kg"], "unit", "mg/kg"),
            (vec!["単位", "ppm"], "unit", "mg/kg"),
            (vec!["Errors: 2 sigma"], "multiple", "2"),
            (vec!["Errors", "2-sigma"], "multiple", "2"),
            (vec!["Uncertainty k=2"], "multiple", "2"),
            (vec!["Uncertainty: k = 2"], "multiple", "2"),
            (vec!["Uncertainty: k = 2 (95 %)"], "multiple", "2"),
            (vec!["Error = 1 sigma"], "multiple", "1"),
            (vec!["Confidence level", "95 %"], "multiple", "1.96"),
            (vec!["confidence level 95 %"], "multiple", "1.96"),
            (vec!["Messunsicherheit: 95 % confidence"], "multiple", "1.96"),
            (vec!["不确定度：k=2"], "multiple", "2"),
            (vec!["k", "2"], "multiple", "2"),
        ] {
            assert_eq!(used(&cells), Some((code, value.to_owned())), "{cells:?}");
        }
    }

    #[test]
    fn what_no_word_is_known_for_is_kept_and_not_used() {
        for cells in [
            vec!["Remark: measured twice"],
            vec!["Note", "Lot: none"],
            vec!["Sample: S1"],
            vec!["Colour:", "blue"],
            vec!["Units: counts"],
            vec!["Errors: unknown"],
            vec!["Uncertainty: k = 2 (3 sigma)"],
        ] {
            let line = stated(&cells);
            assert!(line.as_ref().is_none_or(|line| line.used_as.is_none()), "{cells:?} {line:?}");
        }
        assert_eq!(stated(&["Remark: measured twice"]).unwrap().value, "measured twice");
    }

    #[test]
    fn rows_headings_and_sentences_are_no_statements() {
        let long = format!("Lot: {}", "x".repeat(300));
        for cells in [
            vec![""],
            vec!["Incoming inspection"],
            vec!["S1", "12"],
            vec!["Sample", "Pb"],
            vec!["Lot:", ""],
            vec!["Lot", "S1", "12"],
            vec!["Pb", "12.5"],
            vec!["10:30"],
            vec!["12:5", "3"],
            vec![long.as_str()],
        ] {
            assert_eq!(stated(&cells), None, "{cells:?}");
        }
    }
}
