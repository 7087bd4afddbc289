//! A bare number under the decimal mark of its block.

use plumbline_core::quantity::{DecimalMark, Number, NumberError};

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
