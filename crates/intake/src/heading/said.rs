//! What one heading says by itself. It speaks of an element only if every word in it is understood: `Pb counts` is not
//! a mass fraction of lead.

use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};

use super::folding;
use super::named::{self, By, Casing, Of};
use super::tokens::{LONGEST_HEADING, tokens};
use super::vocabulary::{self, Ambiguous, HeadingWord, Whole, WordKind};

/// What one heading says by itself.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) enum Said {
    Value(Of, Option<Unit>),
    Error(Option<Of>, ErrorWords),
    Limit(Option<Of>, Option<Unit>),
    /// A value of whatever element a row names; `word` where a word says so, false where only a unit stands.
    AnyValue {
        unit: Option<Unit>,
        word: bool,
    },
    Identity(Identity, u8),
    TimeOfDay(u8),
    UnitOfMeasure,
    ElementName(u8),
    BelowMark,
    ErrorMultiple,
    /// An element with one word in brackets where a unit stands, and the word is none.
    ValueInUnknownUnit(Of),
    /// Starts like an element and goes on with words that are not understood.
    NotUnderstood,
    Unknown,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub(crate) struct ErrorWords {
    pub(crate) multiple: Option<SigmaMultiple>,
    pub(crate) unit: Option<Unit>,
    pub(crate) relative: bool,
}

impl Said {
    /// What it speaks of, where it names it.
    pub(crate) fn of(&self) -> Option<Of> {
        match self {
            Said::Value(of, _) | Said::ValueInUnknownUnit(of) => Some(*of),
            Said::Error(of, _) | Said::Limit(of, _) => *of,
            _ => None,
        }
    }
}

/// What a heading says, its symbols taken as chemistry writes them.
pub(crate) fn say(heading: &str) -> Said {
    if heading.trim().is_empty() || heading.len() > LONGEST_HEADING {
        return Said::Unknown;
    }
    let folded = folding::letters_and_digits(heading);
    let whole = vocabulary::whole_heading(&folded);
    if named::symbol(heading.trim()).is_none() {
        match whole {
            Some((Whole::UnitOfMeasure, _)) => return Said::UnitOfMeasure,
            Some((Whole::ElementName, rank)) => return Said::ElementName(rank),
            Some((Whole::BelowMark, _)) => return Said::BelowMark,
            Some((Whole::ErrorMultiple, _)) => return Said::ErrorMultiple,
            _ => {}
        }
    }
    let tokens = tokens(heading);
    let mut by_element = say_of_tokens(&tokens);
    if by_element == Said::NotUnderstood
        && let [name, unit] = &tokens[..]
        && let Some((of, _)) = named::named(name)
        && heading.trim_end().ends_with([')', ']', '）'])
        && !is_species(unit)
    {
        by_element = Said::ValueInUnknownUnit(of);
    }
    // A bare `N` or `N.` numbers the rows.
    let numbers_rows = matches!((whole, &by_element), (Some((Whole::Identity(_), _)), Said::Value(_, None)));
    if !numbers_rows && !matches!(by_element, Said::Unknown | Said::NotUnderstood | Said::AnyValue { .. }) {
        return by_element;
    }
    match whole {
        Some((Whole::Identity(identity), rank)) => Said::Identity(identity, rank),
        Some((Whole::TimeOfDay, rank)) => Said::TimeOfDay(rank),
        _ => by_element,
    }
}

fn is_species(token: &str) -> bool {
    vocabulary::heading_word(&folding::word(token)).is_some_and(|word| word.kind == WordKind::Species)
}

/// What a heading says where its symbol lost chemistry's case, for headings that say nothing as they stand.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct InAnotherCase {
    pub(crate) said: Said,
    pub(crate) casing: Casing,
    /// Only among other elements in the same case, whatever unit stands beside it.
    pub(crate) needs_company: bool,
}

/// Reads the first word of a heading, else the last one, as a symbol in another case.
pub(crate) fn say_in_another_case(heading: &str) -> Option<InAnotherCase> {
    if heading.trim().is_empty() || heading.len() > LONGEST_HEADING {
        return None;
    }
    let plain = folding::plain(heading);
    let no_word = |c: char| !c.is_ascii_alphanumeric();
    let first = plain.find(|c: char| c.is_ascii_alphanumeric())?;
    let first_end = plain.get(first..)?.find(no_word).map_or(plain.len(), |length| first + length);
    let last_end = plain.rfind(|c: char| c.is_ascii_alphanumeric())? + 1;
    let last = plain.get(..last_end)?.rfind(no_word).map_or(0, |before| {
        before + plain.get(before..).and_then(|rest| rest.chars().next()).map_or(1, char::len_utf8)
    });
    [(first, first_end), (last, last_end)].into_iter().find_map(|(at, end)| {
        let run = plain.get(at..end)?;
        let (written, casing) = named::in_chemistry_case(run)?;
        let known = vocabulary::ambiguous_symbol(&run.to_ascii_lowercase());
        // A capital letter alone is chemistry's own case.
        if known == Some(Ambiguous::Never) || run.len() == 1 && casing == Casing::Upper {
            return None;
        }
        let (before, rest) = (plain.get(..at)?, plain.get(end..)?);
        let rewritten = format!("{}{written}{}", before.to_lowercase(), rest.to_lowercase());
        let said = say_of_tokens(&tokens(&rewritten));
        let needs_company = known.is_some() || run.len() == 1;
        matches!(said, Said::Value(..) | Said::Error(Some(_), _) | Said::Limit(Some(_), _))
            .then_some(InAnotherCase { said, casing, needs_company })
    })
}

/// The words beside an element, all of them understood.
#[derive(Default)]
struct Words {
    unit: Option<Unit>,
    multiple: Option<SigmaMultiple>,
    level: Option<SigmaMultiple>,
    kinds: Vec<WordKind>,
}

impl Words {
    fn have(&self, wanted: WordKind) -> bool {
        self.kinds.contains(&wanted)
    }
}

pub(crate) fn say_of_tokens(tokens: &[String]) -> Said {
    let token = |at: usize| tokens.get(at).map_or("", String::as_str);
    let mut elements: Vec<(usize, Of, By)> = Vec::new();
    let mut skipped: Vec<usize> = Vec::new();
    for (at, text) in tokens.iter().enumerate() {
        let behind_symbol = at.checked_sub(1).is_some_and(|before| {
            named::symbol(token(before)).is_some()
                && elements.last().is_some_and(|(last, ..)| *last == before)
        });
        if behind_symbol && named::is_xray_line(text) {
            skipped.push(at);
        } else if let Some((of, by)) = named::named(text) {
            elements.push((at, of, by));
        } else if text == "/" {
            let before = elements.last().filter(|(last, ..)| last + 1 == at);
            match (before, named::named(token(at + 1))) {
                // `Blei / Pb` names one thing twice; anything else is a ratio.
                (Some((_, one, by)), Some((other, other_by))) if *one != other || *by == other_by => {
                    return Said::NotUnderstood;
                }
                _ => skipped.push(at),
            }
        }
    }
    let like_element = elements.first().is_some_and(|(at, ..)| *at == 0);
    // `Lead (Pb)` names one element twice.
    if let [(_, first, by), others @ ..] = &elements[..]
        && others.iter().all(|(_, of, _)| of == first)
    {
        if !others.is_empty() && *by == By::Isotope {
            return Said::NotUnderstood;
        }
        skipped.extend(others.iter().map(|(at, ..)| *at));
    }
    elements.retain(|(at, ..)| !skipped.contains(at));
    // `U Pb` is the uncertainty of lead, `U ppm` is uranium: with two symbols, a U beside another is the word.
    let chosen = match &elements[..] {
        [] => None,
        [one] => Some(*one),
        [first, second] if token(first.0) == "U" => Some(*second),
        [first, second] if token(second.0) == "U" => Some(*first),
        _ => return Said::NotUnderstood,
    };
    let rest: Vec<&str> = tokens
        .iter()
        .enumerate()
        .filter(|(at, _)| chosen.is_none_or(|(chosen, ..)| chosen != *at) && !skipped.contains(at))
        .map(|(_, token)| token.as_str())
        .collect();
    let Some(words) = read_words(&rest, chosen.is_some()) else {
        return if like_element { Said::NotUnderstood } else { Said::Unknown };
    };
    conclude(chosen.map(|(_, of, by)| (of, by)), &words)
}

/// The words beside the element; nothing where one is not understood or two contradict each other.
fn read_words(rest: &[&str], with_element: bool) -> Option<Words> {
    let mut words = Words::default();
    let mut next = 0;
    while next < rest.len() {
        let (length, found) = (1..=4).rev().find_map(|length| {
            let joined = rest.get(next..next + length)?.concat();
            word_meaning(&joined, with_element).map(|found| (length, found))
        })?;
        match found {
            Meaning::Unit(unit) if words.unit.is_none_or(|known| known == unit) => words.unit = Some(unit),
            Meaning::Unit(_) | Meaning::Word(WordKind::Species) => return None,
            Meaning::Multiple(multiple) => {
                words.multiple = Some(multiple);
                words.kinds.push(WordKind::Error);
            }
            // What is counted out (`SD (2s)`) stands above what a word implies.
            Meaning::Word(WordKind::ErrorOf(multiple)) => {
                words.multiple = words.multiple.or(Some(multiple));
                words.kinds.push(WordKind::Error);
            }
            Meaning::Word(WordKind::RelativeOf(multiple)) => {
                words.multiple = words.multiple.or(Some(multiple));
                words.kinds.extend([WordKind::Error, WordKind::Relative]);
            }
            Meaning::Word(WordKind::Level(multiple)) => words.level = Some(multiple),
            Meaning::Word(WordKind::Sigma | WordKind::Confidence) => words.kinds.push(WordKind::Error),
            Meaning::Word(kind) => words.kinds.push(kind),
        }
        next += length;
    }
    Some(words)
}

enum Meaning {
    Unit(Unit),
    Multiple(SigmaMultiple),
    Word(WordKind),
}

fn word_meaning(joined: &str, with_element: bool) -> Option<Meaning> {
    if let Some(unit) = Unit::from_word(joined) {
        return Some(Meaning::Unit(unit));
    }
    let folded = folding::word(joined);
    if let Some(HeadingWord { kind, with_element: only }) = vocabulary::heading_word(&folded)
        && (with_element || !only)
    {
        return Some(Meaning::Word(kind));
    }
    stated_multiple(&folded).map(Meaning::Multiple)
}

/// A multiple counted out: `k=2`, `2s`, `2sigma`, `3σ`, `2sd`.
pub(crate) fn stated_multiple(folded: &str) -> Option<SigmaMultiple> {
    if let Some(stated) = folded.strip_prefix("k=") {
        return SigmaMultiple::from_text(stated);
    }
    let at = folded.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | ',')))?;
    let (number, word) = folded.split_at(at);
    matches!(vocabulary::heading_word(word)?.kind, WordKind::Sigma | WordKind::ErrorOf(_))
        .then(|| SigmaMultiple::from_text(number))
        .flatten()
}

fn conclude(named: Option<(Of, By)>, words: &Words) -> Said {
    let like_element = if named.is_some() { Said::NotUnderstood } else { Said::Unknown };
    let of = named.map(|(of, _)| of);
    let mut error = words.have(WordKind::Error);
    let (mut unit, mut relative) = (words.unit, false);
    // `95 %` alone is a share of something, and no uncertainty.
    if words.level.is_some() && !error {
        return like_element;
    }
    if words.have(WordKind::Relative) {
        match unit {
            None | Some(Unit::Percent) if error || unit.is_some() && !words.have(WordKind::Value) => {
                (error, relative, unit) = (true, true, None);
            }
            _ => return like_element,
        }
    }
    // A share of isotopes is no mass fraction.
    if named.is_some_and(|(_, by)| by == By::Isotope) && words.unit == Some(Unit::Percent) {
        return Said::NotUnderstood;
    }
    let error_words = ErrorWords { multiple: words.level.or(words.multiple), unit, relative };
    match (of, error, words.have(WordKind::Limit)) {
        // One column for both: an uncertainty where there is a value, a limit where there is none.
        (of, true, true) if words.have(WordKind::Or) => Said::Error(of, error_words),
        (_, true, true) => like_element,
        (of, true, false) => Said::Error(of, error_words),
        (of, false, true) => Said::Limit(of, unit),
        (Some(of), false, false) => Said::Value(of, unit),
        (None, false, false) if words.have(WordKind::Value) || unit.is_some() => {
            Said::AnyValue { unit, word: words.have(WordKind::Value) }
        }
        (None, false, false) => Said::Unknown,
    }
}
