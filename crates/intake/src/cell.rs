//! One cell of a measurement column: a number, a bound, a word, or nothing.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::sync::OnceLock;

use plumbline_core::quantity::{DecimalMark, Number, NumberError, Unit};

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
    /// `12 ± 3`.
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

#[derive(Clone, Copy, PartialEq, Eq)]
enum Word {
    NotDetected,
    NotMeasured,
}

fn words() -> &'static BTreeMap<&'static str, Word> {
    static WORDS: OnceLock<BTreeMap<&'static str, Word>> = OnceLock::new();
    WORDS.get_or_init(|| {
        include_str!("../data/cell_words.tsv")
            .lines()
            .filter(|line| !line.starts_with('#'))
            .filter_map(|line| line.split_once('\t'))
            .map(|(meaning, word)| {
                (word, if meaning == "not_detected" { Word::NotDetected } else { Word::NotMeasured })
            })
            .collect()
    })
}

/// The decimal mark of a block, and whether a person said so.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Marks {
    /// The decimal mark; `None` where the block never shows one.
    pub decimal: Option<DecimalMark>,
    /// A person stated it, so that the other mark can only part thousands.
    pub told: bool,
}

impl From<Option<DecimalMark>> for Marks {
    fn from(decimal: Option<DecimalMark>) -> Marks {
        Marks { decimal, told: false }
    }
}

/// Reads a cell.
///
/// `mark` is the block's decimal mark; where it is still open, a number with any mark in it is unclear, since the
/// same text may be one thing or a thousand times as much.
pub fn read(text: &[u8], marks: impl Into<Marks>) -> CellText {
    let mark = marks.into();
    let text = text.trim_ascii();
    let Some(first) = text.first() else { return CellText::Blank };
    // A typographer's minus before digits is a minus.
    if let Some(rest) = text.strip_prefix("\u{2212}".as_bytes()) {
        return match number(rest, mark, CellText::Number) {
            CellText::Number(mut value, unit) if !value.negative => {
                (value.negative, value.plain) = (true, false);
                CellText::Number(value, unit)
            }
            CellText::MarkUnclear => CellText::MarkUnclear,
            _ => CellText::Unreadable,
        };
    }
    match first {
        b'0'..=b'9' | b'.' | b',' | b'+' => number(text, mark, CellText::Number),
        b'-' if text.len() > 1 && text[1] != b'-' => number(text, mark, CellText::Number),
        // The commonest cell of a clean material, before anything is folded or looked up.
        b'<' if matches!(text, b"<LOD" | b"< LOD") => CellText::NotDetected,
        b'<' => match bound(&text[1..], mark, CellText::Below) {
            CellText::Unreadable => word(text).unwrap_or(CellText::Unreadable),
            read => read,
        },
        b'>' => bound(&text[1..], mark, CellText::Above),
        _ => word(text).unwrap_or(CellText::Unreadable),
    }
}

fn bound(text: &[u8], mark: Marks, make: fn(Number, Option<Unit>) -> CellText) -> CellText {
    let read = number(text.strip_prefix(b"=").unwrap_or(text), mark, make);
    match read {
        // Below or above nothing is no bound.
        CellText::Below(bound, _) | CellText::Above(bound, _) if bound.negative || bound.digits == 0 => {
            CellText::Unreadable
        }
        other => other,
    }
}

fn number(text: &[u8], mark: Marks, make: fn(Number, Option<Unit>) -> CellText) -> CellText {
    match plain_number(text, mark) {
        Ok(number) => return make(number, None),
        Err(NumberError::MarkUnclear) => return CellText::MarkUnclear,
        Err(NumberError::Empty) => return CellText::Unreadable,
        Err(NumberError::NotANumber) => {}
    }
    // Perhaps a unit stands behind it: `12 ppm`, `0.5%`.
    let whole = self::text(text);
    let whole = whole.trim();
    let split = whole
        .char_indices()
        .find(|(at, c)| {
            let exponent = matches!(c, 'e' | 'E')
                && whole[at + 1..]
                    .trim_start_matches(['+', '-'])
                    .starts_with(|next: char| next.is_ascii_digit());
            !(c.is_ascii_digit() || matches!(c, '.' | ',' | '+' | '-') || exponent)
        })
        .map_or(whole.len(), |(at, _)| at);
    let (digits, rest) = whole.split_at(split);
    let Some(unit) = Unit::from_word(rest) else {
        return word(text).unwrap_or(CellText::Unreadable);
    };
    match plain_number(digits.as_bytes(), mark) {
        Ok(number) => make(number, Some(unit)),
        Err(NumberError::MarkUnclear) => CellText::MarkUnclear,
        Err(_) => CellText::Unreadable,
    }
}

/// Reads a bare number under the block's decimal mark. Thousands marks are taken out where they can be nothing else:
/// where both marks stand in the number, or where a person stated which one is the decimal mark.
///
/// # Errors
/// [`NumberError`] where the text is no number, or where its mark may be either.
pub fn plain_number(text: &[u8], marks: Marks) -> Result<Number, NumberError> {
    let Some(mark) = marks.decimal else {
        let number = Number::parse(text, DecimalMark::Point)?;
        let open = memchr::memchr2(b'.', b',', text).is_some();
        return if open { Err(NumberError::MarkUnclear) } else { Ok(number) };
    };
    match Number::parse(text, mark) {
        Err(NumberError::MarkUnclear) => {
            let ungrouped = without_thousands(text, mark, marks.told).ok_or(NumberError::MarkUnclear)?;
            Number::parse(&ungrouped, mark).map(|number| Number { plain: false, ..number })
        }
        read => read,
    }
}

/// The text without its thousands marks, if they stand before every third digit and can be nothing else.
fn without_thousands(text: &[u8], mark: DecimalMark, told: bool) -> Option<Vec<u8>> {
    let other = if mark == DecimalMark::Point { b',' } else { b'.' };
    let text = text.trim_ascii();
    let decimal_at = memchr::memchr(mark.byte(), text);
    let (whole, rest) = text.split_at(decimal_at.unwrap_or(text.len()));
    if !(told || decimal_at.is_some()) || memchr::memchr(other, rest).is_some() {
        return None;
    }
    let unsigned = whole.strip_prefix(b"-").or(whole.strip_prefix(b"+")).unwrap_or(whole);
    let mut groups = unsigned.split(|byte| *byte == other);
    let first = groups.next()?;
    let digits = |group: &[u8]| !group.is_empty() && group.iter().all(u8::is_ascii_digit);
    let grouped = digits(first) && first.len() <= 3 && groups.all(|group| digits(group) && group.len() == 3);
    grouped.then(|| text.iter().copied().filter(|byte| *byte != other).collect())
}

fn word(text: &[u8]) -> Option<CellText> {
    let text = self::text(text);
    if text.len() > 40 {
        return None;
    }
    let folded: String = text.chars().filter(|c| !c.is_whitespace()).flat_map(char::to_lowercase).collect();
    match words().get(folded.as_str())? {
        Word::NotDetected => Some(CellText::NotDetected),
        Word::NotMeasured => Some(CellText::NotMeasured),
    }
}

/// What a cell shows about the decimal mark of its column: which mark it can only be, if it shows one.
///
/// `1,250` and `1.250` show nothing: either mark may stand for thousands.
pub fn mark_evidence(text: &[u8]) -> Option<DecimalMark> {
    let text = text.trim_ascii();
    let digits: Vec<u8> = text
        .iter()
        .copied()
        .skip_while(|byte| matches!(byte, b'<' | b'>' | b'=' | b'-' | b'+' | b' '))
        .collect();
    if !digits.first().is_some_and(|byte| byte.is_ascii_digit() || matches!(byte, b'.' | b',')) {
        return None;
    }
    let number_end = digits
        .iter()
        .position(|byte| !(byte.is_ascii_digit() || matches!(byte, b'.' | b',')))
        .unwrap_or(digits.len());
    let body = digits.get(..number_end)?;
    let points = memchr::memchr_iter(b'.', body).count();
    let commas = memchr::memchr_iter(b',', body).count();
    let single = |mark: u8| -> bool {
        let at = body.iter().position(|byte| *byte == mark).unwrap_or(0);
        let (whole, part) = (&body[..at], &body[at + 1..]);
        part.len() != 3 || whole.is_empty() || whole == b"0" || whole.len() > 3
    };
    match (points, commas) {
        (1, 0) if single(b'.') => Some(DecimalMark::Point),
        (0, 1) if single(b',') => Some(DecimalMark::Comma),
        (1.., 1..) => {
            let last_point = body.iter().rposition(|byte| *byte == b'.');
            let last_comma = body.iter().rposition(|byte| *byte == b',');
            Some(if last_point > last_comma { DecimalMark::Point } else { DecimalMark::Comma })
        }
        _ => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn point(text: &str) -> CellText {
        read(text.as_bytes(), Some(DecimalMark::Point))
    }

    #[test]
    fn blank_zero_not_detected_and_below_a_number_are_four_things() {
        assert_eq!(point("  "), CellText::Blank);
        assert!(matches!(point("0"), CellText::Number(number, None) if number.digits == 0));
        assert_eq!(point("< LOD"), CellText::NotDetected);
        assert!(matches!(point("<5"), CellText::Below(number, None) if number.digits == 5));
        assert!(matches!(point("< 0.5 %"), CellText::Below(_, Some(Unit::Percent))));
        assert!(matches!(point("> 5000"), CellText::Above(..)));
    }

    #[test]
    fn bytes_that_are_no_utf8_are_windows_1252() {
        assert_eq!(text(b"Pb \xB1"), "Pb ±");
        assert_eq!(text("Pb ±".as_bytes()), "Pb ±");
        assert_eq!(text(b"\x80\x99"), "€™");
        assert_ne!(text(b"M\xFC"), text(b"M\xE4"));
    }

    #[test]
    fn words_of_the_trade_are_known() {
        for text in ["ND", "n.d.", "BDL", "<LOD", "<lod", "< DL"] {
            assert_eq!(point(text), CellText::NotDetected, "{text}");
        }
        for text in ["-", "--", "n/a"] {
            assert_eq!(point(text), CellText::NotMeasured, "{text}");
        }
        for text in ["NaN", "inf", "1e", "pass", "=1+1", "<", "< 0", "<-5", "12 furlongs", "#REF!"] {
            assert_eq!(point(text), CellText::Unreadable, "{text}");
        }
    }

    #[test]
    fn a_unit_behind_the_number_is_read() {
        assert!(matches!(point("12 ppm"), CellText::Number(_, Some(Unit::MgPerKg))));
        assert!(matches!(point("1.2e3mg/kg"), CellText::Number(_, Some(Unit::MgPerKg))));
        assert!(matches!(point("-3.5"), CellText::Number(number, None) if number.negative));
        assert!(matches!(point("\u{2212}3.5"), CellText::Number(number, None) if number.negative));
    }

    #[test]
    fn a_mark_that_may_be_either_is_never_guessed() {
        assert_eq!(read(b"1,250", None), CellText::MarkUnclear);
        assert_eq!(read(b"1.250", None), CellText::MarkUnclear);
        assert_eq!(read(b"1,250", Some(DecimalMark::Point)), CellText::MarkUnclear);
        assert!(matches!(read(b"1250", None), CellText::Number(..)));
        assert!(matches!(read(b"0,5", Some(DecimalMark::Comma)), CellText::Number(..)));
    }

    #[test]
    fn thousands_marks_are_read_where_they_can_be_nothing_else() {
        let is = |read: CellText, digits: u64, exponent: i32| {
            assert!(
                matches!(read, CellText::Number(n, None) if n.digits == digits && n.exponent == exponent),
                "{read:?}"
            );
        };
        let told = |decimal| Marks { decimal: Some(decimal), told: true };
        is(read(b"1,234.5", Some(DecimalMark::Point)), 12_345, -1);
        is(read(b"1.234,5", Some(DecimalMark::Comma)), 12_345, -1);
        is(read(b"1,505", told(DecimalMark::Point)), 1_505, 0);
        is(read(b"-1.234.567", told(DecimalMark::Comma)), 1_234_567, 0);
        for text in ["1,50", "1,5055", ",505", "1,234,5.6", "12,34.5"] {
            assert_eq!(read(text.as_bytes(), told(DecimalMark::Point)), CellText::MarkUnclear, "{text}");
        }
    }

    #[test]
    fn evidence_of_a_mark_is_only_what_can_be_nothing_else() {
        assert_eq!(mark_evidence(b"0,125"), Some(DecimalMark::Comma));
        assert_eq!(mark_evidence(b"< 12,5"), Some(DecimalMark::Comma));
        assert_eq!(mark_evidence(b"12.5"), Some(DecimalMark::Point));
        assert_eq!(mark_evidence(b"1,234.5"), Some(DecimalMark::Point));
        assert_eq!(mark_evidence(b"1.250"), None);
        assert_eq!(mark_evidence(b"1250"), None);
        assert_eq!(mark_evidence(b"< LOD"), None);
    }
}
