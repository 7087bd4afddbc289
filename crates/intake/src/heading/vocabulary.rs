//! The data files, read once: what a word means by itself.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

use plumbline_core::column::ColumnRole;
use plumbline_core::identity::Identity;
use plumbline_core::quantity::SigmaMultiple;
use plumbline_core::substance::Element;

use super::folding;

const ELEMENT_NAMES: &str = include_str!("../../data/element_names.tsv");
const HEADING_WORDS: &str = include_str!("../../data/heading_words.tsv");
const WHOLE_HEADINGS: &str = include_str!("../../data/whole_headings.tsv");
const NUMBER_WORDS: &str = include_str!("../../data/number_words.tsv");
const AMBIGUOUS_SYMBOLS: &str = include_str!("../../data/ambiguous_symbols.tsv");
const STATED_WORDS: &str = include_str!("../../data/stated_words.tsv");
const CELL_WORDS: &str = include_str!("../../data/cell_words.tsv");
const SUMMARY_WORDS: &str = include_str!("../../data/summary_words.tsv");

/// What a word says beside an element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum WordKind {
    /// An uncertainty of an unstated multiple.
    Error,
    /// An uncertainty of this multiple.
    ErrorOf(SigmaMultiple),
    /// An uncertainty; behind a number, of that multiple.
    Sigma,
    /// Percent of the value, if it is an uncertainty.
    Relative,
    /// An uncertainty in percent of the value.
    RelativeOf(SigmaMultiple),
    /// A confidence interval.
    Confidence,
    /// A confidence level, as its multiple of sigma.
    Level(SigmaMultiple),
    /// A detection limit.
    Limit,
    /// Between an uncertainty and a limit: the column holds one or the other.
    Or,
    /// A value.
    Value,
    /// Says nothing by itself.
    Filler,
    /// Another substance than the element as a whole.
    Species,
}

/// A word of a heading, and whether it counts only beside an element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct HeadingWord {
    pub(crate) kind: WordKind,
    pub(crate) with_element: bool,
}

/// What a heading says as a whole.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Whole {
    Identity(Identity),
    TimeOfDay,
    UnitOfMeasure,
    ElementName,
    BelowMark,
    ErrorMultiple,
}

/// The lines of a data file that hold data, taken apart at tabs.
pub(crate) fn lines(text: &'static str) -> impl Iterator<Item = (&'static str, &'static str, &'static str)> {
    text.lines().filter(|line| !line.starts_with('#') && !line.trim().is_empty()).map(|line| {
        let mut cells = line.splitn(3, '\t');
        let mut next = || cells.next().unwrap_or("");
        (next(), next(), next())
    })
}

fn word_kind(meaning: &str) -> Option<WordKind> {
    let (kind, stated) = meaning.split_once('_').unwrap_or((meaning, ""));
    let multiple = SigmaMultiple::from_text(stated);
    Some(match (kind, multiple) {
        ("error", None) => WordKind::Error,
        ("error", Some(multiple)) => WordKind::ErrorOf(multiple),
        ("relative", None) => WordKind::Relative,
        ("relative", Some(multiple)) => WordKind::RelativeOf(multiple),
        ("level", Some(multiple)) => WordKind::Level(multiple),
        ("sigma", None) => WordKind::Sigma,
        ("confidence", None) => WordKind::Confidence,
        ("limit", None) => WordKind::Limit,
        ("or", None) => WordKind::Or,
        ("value", None) => WordKind::Value,
        ("filler", None) => WordKind::Filler,
        ("species", None) => WordKind::Species,
        _ => return None,
    })
}

/// The word of a heading, folded as [`folding::word`] does.
pub(crate) fn heading_word(folded: &str) -> Option<HeadingWord> {
    static WORDS: OnceLock<BTreeMap<String, HeadingWord>> = OnceLock::new();
    WORDS
        .get_or_init(|| {
            lines(HEADING_WORDS)
                .filter_map(|(meaning, word, when)| {
                    let found =
                        HeadingWord { kind: word_kind(meaning)?, with_element: when == "with_element" };
                    Some((folding::word(word), found))
                })
                .collect()
        })
        .get(folded)
        .copied()
}

/// The element of a name in any of the languages, folded as [`folding::word`] does.
pub(crate) fn element_named(folded: &str) -> Option<Element> {
    static NAMES: OnceLock<BTreeMap<String, Element>> = OnceLock::new();
    NAMES
        .get_or_init(|| {
            lines(ELEMENT_NAMES)
                .filter_map(|(symbol, name, _)| Some((folding::word(name), Element::from_symbol(symbol)?)))
                .collect()
        })
        .get(folded)
        .copied()
}

fn whole_from_code(code: &str) -> Option<Whole> {
    if let Some(identity) = Identity::from_code(code) {
        return Some(Whole::Identity(identity));
    }
    Some(match ColumnRole::from_words(code)? {
        ColumnRole::TimeOfDay => Whole::TimeOfDay,
        ColumnRole::UnitOfMeasure => Whole::UnitOfMeasure,
        ColumnRole::ElementName => Whole::ElementName,
        ColumnRole::BelowMark => Whole::BelowMark,
        ColumnRole::ErrorMultiple => Whole::ErrorMultiple,
        _ => return None,
    })
}

fn whole_headings() -> &'static BTreeMap<String, (Whole, u8)> {
    static WHOLE: OnceLock<BTreeMap<String, (Whole, u8)>> = OnceLock::new();
    WHOLE.get_or_init(|| {
        let mut words = BTreeMap::new();
        for (code, rank, heading) in lines(WHOLE_HEADINGS) {
            let (Some(whole), Ok(rank)) = (whole_from_code(code), rank.parse()) else { continue };
            let folded = folding::letters_and_digits(heading);
            // A time or a thickness may carry its unit in the heading.
            let units: &[&str] = match whole {
                Whole::Identity(Identity::Seconds) => &["s", "sec", "secs", "seconds", "秒", "초"],
                Whole::Identity(Identity::Thickness) => &["mm"],
                // `Time (s)` is how long, not when.
                _ if folded == "time" => {
                    words.insert("times".to_owned(), (Whole::Identity(Identity::Seconds), 1));
                    &[]
                }
                _ => &[],
            };
            for unit in units {
                words.entry(format!("{folded}{unit}")).or_insert((whole, rank));
            }
            words.insert(folded, (whole, rank));
        }
        words
    })
}

/// What a heading says as a whole and how strongly (a lower rank wins), folded as
/// [`folding::letters_and_digits`] does; a word for "number" or "name" at its end or front is taken off if need be.
pub(crate) fn whole_heading(folded: &str) -> Option<(Whole, u8)> {
    static NUMBER: OnceLock<Vec<(bool, String)>> = OnceLock::new();
    if folded.is_empty() {
        return None;
    }
    let words = whole_headings();
    if let Some(found) = words.get(folded) {
        return Some(*found);
    }
    let number = NUMBER.get_or_init(|| {
        lines(NUMBER_WORDS)
            .map(|(place, word, _)| (place == "after", folding::letters_and_digits(word)))
            .collect()
    });
    number
        .iter()
        .filter_map(|(after, word)| {
            let rest =
                if *after { folded.strip_suffix(word.as_str()) } else { folded.strip_prefix(word.as_str()) };
            rest.and_then(|rest| words.get(rest)).copied()
        })
        .filter(|(whole, _)| {
            use Identity::{Id, Instrument, Lot, Material, Operator, Part, Spot, Supplier, Unit};
            matches!(
                whole,
                Whole::ElementName
                    | Whole::Identity(
                        Id | Unit | Spot | Part | Material | Lot | Supplier | Instrument | Operator
                    )
            )
        })
        .min_by_key(|(_, rank)| *rank)
}

/// True where a name says that what stands beside it is no sample: an average, a spread, a limit (`LOD (mg/kg)`).
pub(crate) fn names_a_summary(name: &str) -> bool {
    static WORDS: OnceLock<BTreeSet<String>> = OnceLock::new();
    let bare = name.split(['(', '[', '（', '［']).next().unwrap_or(name);
    let folded = folding::letters_and_digits(bare);
    !folded.is_empty()
        && WORDS
            .get_or_init(|| {
                lines(SUMMARY_WORDS).map(|(_, word, _)| folding::letters_and_digits(word)).collect()
            })
            .contains(&folded)
}

/// How far a symbol that lost chemistry's case can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Ambiguous {
    Never,
    InCompany,
}

/// What is known of a symbol in another case, in lower case; `None` where it is no other word.
pub(crate) fn ambiguous_symbol(lower: &str) -> Option<Ambiguous> {
    lines(AMBIGUOUS_SYMBOLS)
        .find(|(_, symbol, _)| *symbol == lower)
        .map(|(rule, ..)| if rule == "never" { Ambiguous::Never } else { Ambiguous::InCompany })
}

/// The lines of the keys above a table that are no heading: meaning, key.
pub(crate) fn stated_words() -> impl Iterator<Item = (&'static str, &'static str, &'static str)> {
    lines(STATED_WORDS)
}

/// The lines of the words of cells: meaning, cell, note.
pub(crate) fn cell_words() -> impl Iterator<Item = (&'static str, &'static str, &'static str)> {
    lines(CELL_WORDS)
}

/// True for a word in the vocabulary that no ASCII text can spell, exactly as it is written but for its case.
///
/// Accents are not folded here: a text decoded wrongly has other letters, and must not be taken for the right ones.
pub(crate) fn is_accented_word(lower: &str) -> bool {
    static WORDS: OnceLock<BTreeSet<String>> = OnceLock::new();
    WORDS
        .get_or_init(|| {
            let files = [
                lines(ELEMENT_NAMES).map(|(_, word, _)| word).collect::<Vec<_>>(),
                lines(HEADING_WORDS).map(|(_, word, _)| word).collect(),
                lines(WHOLE_HEADINGS).map(|(_, _, word)| word).collect(),
                lines(NUMBER_WORDS).map(|(_, word, _)| word).collect(),
                lines(CELL_WORDS).map(|(_, word, _)| word).collect(),
            ];
            let written =
                ["µg", "μg", "µg/g", "μg/g", "µg/kg", "μg/kg", "kg⁻¹", "g⁻¹", "‰", "质量%", "重量%", "質量%"];
            files
                .into_iter()
                .flatten()
                .chain(written)
                .flat_map(|words| words.split([' ', '/', '\'']).chain([words]))
                .filter(|word| !word.is_ascii())
                .map(str::to_lowercase)
                .collect()
        })
        .contains(lower)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn each_once(name: &str, words: impl Iterator<Item = (String, String)>) -> usize {
        let mut known: BTreeMap<String, String> = BTreeMap::new();
        for (word, meaning) in words {
            assert!(!word.is_empty(), "{name}: an empty word for {meaning}");
            let before = known.insert(word.clone(), meaning.clone());
            assert_eq!(before, None, "{name}: {word} stands twice, the second time for {meaning}");
        }
        known.len()
    }

    fn own(text: &str) -> String {
        text.to_owned()
    }

    #[test]
    fn no_data_file_holds_a_word_twice_or_a_meaning_that_is_none() {
        let names = lines(ELEMENT_NAMES).map(|(symbol, name, _)| {
            assert!(Element::from_symbol(symbol).is_some(), "{symbol} {name}");
            (folding::word(name), own(symbol))
        });
        assert!(each_once("element_names", names) > 600);
        let heading = lines(HEADING_WORDS).map(|(meaning, word, when)| {
            assert!(word_kind(meaning).is_some(), "{meaning} {word}");
            assert!(["", "with_element"].contains(&when), "{word} {when}");
            (folding::word(word), own(meaning))
        });
        assert!(each_once("heading_words", heading) > 200);
        let whole = lines(WHOLE_HEADINGS).map(|(code, rank, heading)| {
            assert!(whole_from_code(code).is_some(), "{code} {heading}");
            assert!(rank.parse::<u8>().is_ok(), "{rank} {heading}");
            (folding::letters_and_digits(heading), own(code))
        });
        assert!(each_once("whole_headings", whole) > 600);
        let number = lines(NUMBER_WORDS).map(|(place, word, _)| {
            assert!(["after", "before"].contains(&place), "{place} {word}");
            (format!("{place} {}", folding::letters_and_digits(word)), own(place))
        });
        assert!(each_once("number_words", number) > 30);
        let symbols = lines(AMBIGUOUS_SYMBOLS).map(|(rule, symbol, _)| {
            assert!(["never", "company"].contains(&rule), "{rule} {symbol}");
            (own(symbol), own(rule))
        });
        assert!(each_once("ambiguous_symbols", symbols) > 10);
        let stated = lines(STATED_WORDS).map(|(meaning, key, _)| {
            assert_eq!(meaning, "multiple", "{key}");
            assert_eq!(whole_heading(&folding::letters_and_digits(key)), None, "{key}");
            (folding::letters_and_digits(key), own(meaning))
        });
        assert!(each_once("stated_words", stated) > 20);
        let cells = lines(CELL_WORDS).map(|(meaning, word, note)| {
            assert!(["not_detected", "not_measured", "below"].contains(&meaning), "{meaning} {word}");
            assert!(["", "limit"].contains(&note), "{word} {note}");
            (folding::cell(word), own(meaning))
        });
        assert!(each_once("cell_words", cells) > 100);
        let summaries = lines(SUMMARY_WORDS).map(|(meaning, word, _)| {
            assert!(["summary", "limit"].contains(&meaning), "{word}");
            (folding::letters_and_digits(word), own(meaning))
        });
        assert!(each_once("summary_words", summaries) > 100);
    }

    #[test]
    fn no_element_name_is_another_word_of_a_heading() {
        for (symbol, name, _) in lines(ELEMENT_NAMES) {
            assert_eq!(heading_word(&folding::word(name)), None, "{symbol} {name}");
            assert_eq!(whole_heading(&folding::letters_and_digits(name)), None, "{symbol} {name}");
        }
    }

    #[test]
    fn an_average_and_a_limit_are_no_samples() {
        for name in
            ["LOD", "Limit (mg/kg)", "RSD %", "Std. Dev.", "average:", "Grenzwert", "écart-type", "检出限"]
        {
            assert!(names_a_summary(name), "{name}");
        }
        for name in ["", "(LOD)", "S1", "Limit 3", "Max Alder", "N", "S", "Total", "Blank", "Mean-1"] {
            assert!(!names_a_summary(name), "{name}");
        }
    }

    #[test]
    fn every_data_file_says_what_it_is_and_where_it_comes_from() {
        for file in [
            ELEMENT_NAMES,
            HEADING_WORDS,
            WHOLE_HEADINGS,
            NUMBER_WORDS,
            AMBIGUOUS_SYMBOLS,
            CELL_WORDS,
            STATED_WORDS,
            SUMMARY_WORDS,
        ] {
            let first = file.lines().next().unwrap();
            assert!(first.starts_with("# "), "{first}");
            assert!(
                ["common practice, no source", "from memory"].iter().any(|source| first.contains(source)),
                "{first}"
            );
        }
    }
}
