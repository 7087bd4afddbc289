//! One cell of a measurement column: a number, a bound, a word, or nothing.
//!
//! What nearly every cell is (a plain number, `<LOD`, `<5`) is read here without allocating; every other form goes to
//! `written`, which puts the text into plain characters first.

mod marks;
mod number;
mod words;
mod written;

use std::borrow::Cow;

use plumbline_core::quantity::{Number, NumberError, Unit};

pub use marks::mark_evidence;
pub use number::{Marks, plain_number};

/// The characters of windows-1252 from 0x80 to 0x9F (WHATWG Encoding Standard, index windows-1252).
const WINDOWS_1252: [char; 32] = [
    '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8D}', 'Ž', '\u{8F}', '\u{90}',
    '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9D}', 'ž', 'Ÿ',
];

/// The text of a cell: UTF-8, or, where its bytes are none, Windows-1252, in which every byte is a character, so that
/// two different names never become the same one.
pub fn text(cell: &[u8]) -> Cow<'_, str> {
    match std::str::from_utf8(cell) {
        Ok(text) => Cow::Borrowed(text),
        Err(_) => Cow::Owned(
            cell.iter()
                .map(|byte| match byte {
                    0x80..=0x9F => WINDOWS_1252.get(usize::from(byte - 0x80)).copied().unwrap_or('\u{FFFD}'),
                    _ => char::from(*byte),
                })
                .collect(),
        ),
    }
}

/// What a cell says, before its unit is applied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CellText {
    /// Nothing.
    Blank,
    /// A dash or a word for "not measured".
    NotMeasured,
    /// A number, with a unit where one stands behind it.
    Number(Number, Option<Unit>),
    /// `12.3 ± 0.5`: a number and its printed uncertainty, both in the unit where one stands there.
    WithError(Number, Number, Option<Unit>),
    /// `< 5`: below this number.
    Below(Number, Option<Unit>),
    /// `> 5`: above this number.
    Above(Number, Option<Unit>),
    /// A word for "not detected" with no number.
    NotDetected,
    /// A number whose comma or point may be a decimal or a thousands mark.
    MarkUnclear,
    /// Anything else.
    Unreadable,
}

/// Reads a cell.
///
/// `mark` is the block's decimal mark; where it is still open, a number with any mark in it is unclear, since the
/// same text may be one thing or a thousand times as much.
pub fn read(text: &[u8], marks: impl Into<Marks>) -> CellText {
    let marks = marks.into();
    let text = text.trim_ascii();
    let Some(first) = text.first() else { return CellText::Blank };
    match first {
        b'0'..=b'9' | b'.' | b',' | b'+' | b'-' => match plain_number(text, marks) {
            Ok(number) => CellText::Number(number, None),
            Err(NumberError::MarkUnclear) if is_bare(text) => CellText::MarkUnclear,
            Err(_) => written::read(text, marks),
        },
        // The commonest cell of a clean material, before anything is folded or looked up.
        b'<' if matches!(text, b"<LOD" | b"< LOD") => CellText::NotDetected,
        b'<' | b'>' => {
            let make = if *first == b'<' { CellText::Below } else { CellText::Above };
            let rest = text.get(1..).unwrap_or_default();
            match plain_number(rest.strip_prefix(b"=").unwrap_or(rest), marks) {
                Ok(bound) => written::positive(bound).map_or(CellText::Unreadable, |bound| make(bound, None)),
                Err(NumberError::MarkUnclear) if is_bare(rest) => CellText::MarkUnclear,
                Err(_) => written::read(text, marks),
            }
        }
        _ => written::read(text, marks),
    }
}

/// True for a number with nothing beside it, whose mark nothing else can settle.
fn is_bare(text: &[u8]) -> bool {
    text.iter().all(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b',' | b'+' | b'-' | b'=' | b' '))
}

#[cfg(test)]
mod tests;
