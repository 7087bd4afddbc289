//! UTF-16 without a byte order mark, by where its zero bytes stand.

use super::TextEncoding;

/// A table in UTF-16 has digits, delimiters and line ends, each a zero byte beside an ASCII byte, always in the same
/// order; this is the least share of them, one in so many characters, that even a table of Chinese names has.
const LEAST_SHARE: usize = 8;

/// Which UTF-16 the bytes are, if they are.
pub(super) fn utf16_by_zero_bytes(head: &[u8]) -> Option<TextEncoding> {
    memchr::memchr(0, head)?;
    let low_first = Units::count(head, u16::from_le_bytes);
    let high_first = Units::count(head, u16::from_be_bytes);
    if low_first.are_text_rather_than(&high_first) {
        Some(TextEncoding::Utf16Le)
    } else if high_first.are_text_rather_than(&low_first) {
        Some(TextEncoding::Utf16Be)
    } else {
        None
    }
}

#[derive(Default)]
struct Units {
    all: usize,
    /// ASCII characters of a text.
    ascii: usize,
    /// Of them the ones that end a line or a cell. These tell the orders apart where ASCII does not: U+4E00 and U+3000
    /// are common in East Asia and look like `N` and `0` of the other order, but U+0A00, U+0D00 and U+0900 are not.
    line_ends: usize,
    /// Zero characters, controls, halves of surrogate pairs, units that are no character.
    impossible: usize,
    /// Units with no zero byte.
    full: usize,
    /// Units whose two bytes are both ASCII characters of a text.
    twice_ascii: usize,
}

impl Units {
    fn count(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> Units {
        let mut units = Units::default();
        let mut half_pair = false;
        for pair in bytes.chunks_exact(2) {
            let &[first, second] = pair else { continue };
            let unit = unit([first, second]);
            units.all += 1;
            units.full += usize::from(first != 0 && second != 0);
            units.twice_ascii += usize::from(is_text(first) && is_text(second));
            units.ascii += usize::from(u8::try_from(unit).is_ok_and(is_text));
            units.line_ends += usize::from(matches!(unit, 0x09 | 0x0A | 0x0D));
            let second_half = matches!(unit, 0xDC00..=0xDFFF);
            units.impossible += usize::from(half_pair != second_half);
            half_pair = matches!(unit, 0xD800..=0xDBFF);
            units.impossible +=
                usize::from(matches!(unit, 0..=8 | 0x0E..=0x1F | 0x7F..=0x9F | 0xFDD0..=0xFDEF | 0xFFFE..));
        }
        units
    }

    fn are_text_rather_than(&self, other: &Units) -> bool {
        // 8-bit text with cells filled up with zero bytes has the zeros, but what stands between them is ASCII twice
        // over; of East Asian characters that is a share only.
        let eight_bit = self.twice_ascii * 4 > self.ascii && self.twice_ascii * 8 > self.full * 7;
        self.ascii > 0
            && self.ascii * LEAST_SHARE >= self.all
            && (self.line_ends, self.ascii) > (other.line_ends, other.ascii)
            && self.impossible * 50 <= self.all
            && !eight_bit
    }
}

const fn is_text(byte: u8) -> bool {
    matches!(byte, b'\t' | b'\n' | b'\r' | 0x20..=0x7E)
}
