//! Bytes as text that HTML can carry.
//!
//! Seven bits a character. A script element takes every character of ASCII but three as it is: U+0000 is replaced, a
//! carriage return becomes a line feed, and `<` could begin what ends the element. These three are written as U+0080 to
//! U+0082, two bytes each in UTF-8. That makes about 17 % more than the bytes themselves, where base64 makes 33 %.

/// The values of seven bits that do not stand for themselves, in the order of the characters that stand for them.
const NOT_THEMSELVES: [u8; 3] = [0x00, 0x0d, 0x3c];

/// The characters of a text that holds these bytes, seven bits each, the last filled up with zeros.
pub(crate) fn seven_bit(bytes: &[u8]) -> String {
    let mut text = String::with_capacity(bytes.len() * 6 / 5 + 1);
    let (mut held, mut bits) = (0_u32, 0_u32);
    for byte in bytes {
        held = held << 8 | u32::from(*byte);
        bits += 8;
        while bits >= 7 {
            bits -= 7;
            text.push(character((held >> bits & 0x7f) as u8));
        }
        held &= (1 << bits) - 1;
    }
    if bits > 0 {
        text.push(character((held << (7 - bits) & 0x7f) as u8));
    }
    text
}

fn character(value: u8) -> char {
    match NOT_THEMSELVES.iter().position(|kept_out| *kept_out == value) {
        Some(at) => char::from(0x80 + at as u8),
        None => char::from(value),
    }
}

/// Rounds of the search for the tightest packing: later ones gain less than a thousandth.
const ROUNDS: std::num::NonZeroU64 = std::num::NonZeroU64::new(3).expect("not zero");

/// Raw deflate (the page inflates with `DecompressionStream('deflate-raw')`), then seven bits a character. Packed as
/// tightly as the format allows: the page is packed once and carried on every stick.
///
/// Zstandard makes the core a sixth smaller, but no browser unpacks it by itself: in a script it held the start of the page up
/// by more than 100 ms of 600 to 900 (`tests/browser/bench.mjs`), every time, for 250 KB that nobody notices on a stick.
pub(crate) fn deflated(bytes: &[u8]) -> String {
    let mut packed = Vec::new();
    let options = zopfli::Options { iteration_count: ROUNDS, ..zopfli::Options::default() };
    zopfli::compress(options, zopfli::Format::Deflate, bytes, &mut packed)
        .expect("a vector takes every byte");
    seven_bit(&packed)
}

#[cfg(test)]
mod tests {
    use super::{NOT_THEMSELVES, deflated, seven_bit};
    use std::io::Read;

    /// What the page does, in `web/src/page/inert.ts`.
    fn bytes_of(text: &str) -> Vec<u8> {
        let (mut bytes, mut held, mut bits) = (Vec::new(), 0_u32, 0_u32);
        for character in text.chars() {
            let value = u32::from(character);
            let value = if value < 0x80 { value } else { u32::from(NOT_THEMSELVES[(value - 0x80) as usize]) };
            held = (held << 7 | value) & 0x7fff;
            bits += 7;
            if bits >= 8 {
                bits -= 8;
                bytes.push((held >> bits & 0xff) as u8);
            }
        }
        bytes
    }

    #[test]
    fn every_byte_comes_back_and_no_character_needs_care() {
        for length in 0..40 {
            let bytes: Vec<u8> = (0..length).map(|n| (n * 89 + 13) as u8).collect();
            assert_eq!(bytes_of(&seven_bit(&bytes)), bytes);
        }
        let all: Vec<u8> = (0..=255).chain((0..=255).rev()).collect();
        let text = seven_bit(&all);
        assert_eq!(bytes_of(&text), all);
        assert!(!text.contains(['\0', '\r', '<']));
    }

    #[test]
    fn what_is_packed_comes_back_whole() {
        let bytes: Vec<u8> = (0_u32..70_000).map(|n| (n % 251) as u8).collect();
        let packed = bytes_of(&deflated(&bytes));
        let mut unpacked = Vec::new();
        flate2::read::DeflateDecoder::new(&packed[..]).read_to_end(&mut unpacked).expect("raw deflate");
        assert_eq!(unpacked, bytes);
        assert!(packed.len() < bytes.len());
    }
}
