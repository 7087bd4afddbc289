//! Forms of a cell beyond a plain number: units, spaces and apostrophes between thousands, powers of ten, bounds,
//! words with a number, a value with its uncertainty.

use std::borrow::Cow;

use plumbline_core::quantity::{Number, NumberError, Unit};

use super::words::{self, Word};
use super::{CellText, Marks, plain_number, text};
use crate::heading::folding;

/// No measurement is written longer than this.
const LONGEST: usize = 96;
const BELOW: [char; 4] = ['<', '≤', '≦', '⩽'];
const ABOVE: [char; 4] = ['>', '≥', '≧', '⩾'];

/// Reads a cell in any form.
pub(super) fn read(raw: &[u8], marks: Marks) -> CellText {
    if raw.len() > LONGEST {
        return CellText::Unreadable;
    }
    let written = in_plain_characters(&text(raw));
    let written = written.trim();
    match words::word(written) {
        Some(Word::NotDetected { .. }) => return CellText::NotDetected,
        Some(Word::NotMeasured) => return CellText::NotMeasured,
        None => {}
    }
    let as_cell = |read: Result<CellText, Unread>| match read {
        Ok(cell) => cell,
        Err(Unread::MarkUnclear) => CellText::MarkUnclear,
        Err(Unread::No) => CellText::Unreadable,
    };
    if let Some((value, error)) = value_and_error(written) {
        return as_cell(with_error(value, error, marks));
    }
    if let Some(rest) = written.strip_prefix(ABOVE) {
        return as_cell(bound(rest, marks, CellText::Above));
    }
    if let Some(rest) = below(written) {
        return as_cell(bound(&rest, marks, CellText::Below));
    }
    as_cell(quantity(written, marks).map(|(number, unit)| CellText::Number(number, unit)))
}

/// A bound that says something: below nothing, or below less than nothing, is none.
pub(super) fn positive(bound: Number) -> Option<Number> {
    (!bound.negative && (bound.digits > 0 || bound.more)).then_some(bound)
}

enum Unread {
    MarkUnclear,
    No,
}

/// A text in plain characters; a raised power of ten is written out before its raising is lost (`10³`, `10^3`).
pub(super) fn in_plain_characters(text: &str) -> String {
    let raised = |c: char| matches!(c, '⁰' | '¹' | '²' | '³' | '⁴'..='⁹' | '⁺' | '⁻');
    if !text.contains(raised) {
        return folding::plain(text);
    }
    let mut spelled = String::with_capacity(text.len() + 1);
    for c in text.chars() {
        if raised(c) && spelled.ends_with("10") {
            spelled.push('^');
        }
        spelled.push(c);
    }
    folding::plain(&spelled)
}

/// The two halves of `12.3 ± 0.5`, `12.3 +/- 0.5`, `12.3 +- 0.5`.
pub(super) fn value_and_error(written: &str) -> Option<(&str, &str)> {
    ["±", "+/-", "+-"]
        .iter()
        .find_map(|sign| written.split_once(sign))
        .filter(|(value, _)| !value.trim().is_empty())
}

fn with_error(value: &str, error: &str, marks: Marks) -> Result<CellText, Unread> {
    // `(12.3 ± 0.5) mg/kg`: what stands behind the bracket holds for both.
    let (value, error) = match (value.trim().strip_prefix('('), error.split_once(')')) {
        (Some(value), Some((number, unit))) => (value, Cow::Owned(format!("{number} {unit}"))),
        (None, None) => (value, Cow::Borrowed(error)),
        _ => return Err(Unread::No),
    };
    // Within one cell one mark is used one way: what one number shows of it holds for the other.
    let shown = [value.as_bytes(), error.as_bytes()]
        .iter()
        .any(|number| marks.decimal.is_some() && super::mark_evidence(number) == marks.decimal);
    let marks = Marks { told: marks.told || shown, ..marks };
    let (value, value_unit) = quantity(value, marks)?;
    let (error, error_unit) = quantity(&error, marks)?;
    let unit = match (value_unit, error_unit) {
        // `120 mg/kg ± 5 %` is percent of the value, most likely; it isn't said.
        (Some(value), Some(error)) if value != error => return Err(Unread::No),
        (value, error) => value.or(error),
    };
    if error.negative { Err(Unread::No) } else { Ok(CellText::WithError(value, error, unit)) }
}

/// What stands behind a sign or a word for "below": `≤ 5`, `unter 5`, `LOD: 5`, `n.d. (<5)`.
pub(super) fn below(written: &str) -> Option<Cow<'_, str>> {
    if let Some(rest) = written.strip_prefix(BELOW)
        && starts_a_number(rest.trim_start_matches([' ', '=']))
    {
        return Some(Cow::Borrowed(rest));
    }
    if let Some(rest) = words::without_below(written).filter(|rest| starts_a_number(rest.trim_start())) {
        return Some(Cow::Borrowed(rest));
    }
    let digit_at = written.find(|c: char| c.is_ascii_digit())?;
    let at = digit_at - usize::from(written.get(..digit_at)?.ends_with(['.', ',']));
    let (before, number) = written.split_at(at);
    let word = before.trim_end_matches([' ', ':', '=', '(', '[', '<', '≤']);
    let marked = before.get(word.len()..)?.contains([':', '=', '(', '[', '<', '≤']);
    match words::word(word)? {
        Word::NotDetected { limit } if limit || marked => Some(Cow::Owned(number.replace([')', ']'], " "))),
        _ => None,
    }
}

fn starts_a_number(text: &str) -> bool {
    text.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '+'))
}

fn bound(rest: &str, marks: Marks, make: fn(Number, Option<Unit>) -> CellText) -> Result<CellText, Unread> {
    let rest = rest.trim_start();
    let (number, unit) = quantity(rest.strip_prefix('=').unwrap_or(rest), marks)?;
    positive(number).map(|number| make(number, unit)).ok_or(Unread::No)
}

/// A number with a unit behind it, or none.
fn quantity(written: &str, marks: Marks) -> Result<(Number, Option<Unit>), Unread> {
    let (digits, rest) = split_number(written.trim());
    let (power, rest) = power_of_ten(rest);
    let unit = match rest.trim() {
        "" => None,
        word => Some(Unit::from_word(word).ok_or(Unread::No)?),
    };
    let mut number = ungrouped(digits).ok_or(Unread::No)?.into_owned();
    if let Some(power) = power {
        number.push('e');
        number.push_str(power);
    }
    match plain_number(number.as_bytes(), marks) {
        Ok(number) => Ok((Number { plain: false, ..number }, unit)),
        Err(NumberError::MarkUnclear) => Err(Unread::MarkUnclear),
        Err(_) => Err(Unread::No),
    }
}

/// The front of a text that is a number by its characters, with what follows.
pub(super) fn split_number(written: &str) -> (&str, &str) {
    let signs = usize::from(written.starts_with(['+', '-']));
    let end = written
        .char_indices()
        .skip(signs)
        .find(|(_, c)| !(c.is_ascii_digit() || matches!(c, '.' | ',' | ' ' | '\'')))
        .map_or(written.len(), |(at, _)| at);
    let (number, rest) = written.split_at(end);
    let trimmed = number.trim_end();
    (trimmed, written.get(trimmed.len()..).unwrap_or(rest))
}

/// The exponent behind a number: `e3`, `E+03`, `×10^3`, `x 10^-3`, `*10^3`; with what follows.
fn power_of_ten(rest: &str) -> (Option<&str>, &str) {
    let exponent = |text: &'_ str| -> Option<usize> {
        let sign = usize::from(text.starts_with(['+', '-']));
        let digits = text.get(sign..)?.bytes().take_while(u8::is_ascii_digit).count();
        (digits > 0).then_some(sign + digits)
    };
    let behind = match rest.strip_prefix(['e', 'E']) {
        Some(behind) => Some(behind),
        None => rest
            .trim_start()
            .strip_prefix(['×', 'x', 'X', '*', '·'])
            .and_then(|behind| behind.trim_start().strip_prefix("10^"))
            .map(|behind| behind.strip_prefix('(').map_or(behind, |inner| inner.trim_end_matches(')'))),
    };
    match behind.and_then(|behind| exponent(behind).map(|end| behind.split_at(end))) {
        Some((power, rest)) => (Some(power), rest),
        None => (None, rest),
    }
}

/// A number without the spaces or apostrophes between its thousands; nothing where they stand elsewhere, or of two
/// kinds: `1 234,5` and `1'234.5` are numbers, `12 3` is two.
pub(super) fn ungrouped(digits: &str) -> Option<Cow<'_, str>> {
    let Some(separator) = digits.chars().find(|c| matches!(c, ' ' | '\'')) else {
        return Some(Cow::Borrowed(digits));
    };
    let unsigned = digits.trim_start_matches(['+', '-']);
    let whole_end = unsigned.find(['.', ',']).unwrap_or(unsigned.len());
    let (whole, part) = unsigned.split_at(whole_end);
    let mut groups = whole.split(separator);
    let all_digits = |group: &str| group.bytes().all(|byte| byte.is_ascii_digit());
    let first = groups.next()?;
    let fits = (1..=3).contains(&first.len())
        && !first.starts_with('0')
        && all_digits(first)
        && groups.all(|group| group.len() == 3 && all_digits(group))
        && part.get(1..).is_none_or(all_digits);
    fits.then(|| Cow::Owned(digits.chars().filter(|c| *c != separator).collect()))
}
