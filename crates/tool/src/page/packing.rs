//! Bytes as text that HTML can carry.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;

pub(crate) fn base64(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}

/// Rounds of the search for the tightest packing: later ones gain less than a thousandth.
const ROUNDS: std::num::NonZeroU64 = std::num::NonZeroU64::new(3).expect("not zero");

/// Raw deflate (the page inflates with `DecompressionStream('deflate-raw')`), then base64. Packed as tightly as the
/// format allows: the page is packed once and carried on every stick.
pub(crate) fn deflated_base64(bytes: &[u8]) -> String {
    let mut packed = Vec::new();
    let options = zopfli::Options { iteration_count: ROUNDS, ..zopfli::Options::default() };
    zopfli::compress(options, zopfli::Format::Deflate, bytes, &mut packed)
        .expect("a vector takes every byte");
    base64(&packed)
}

#[cfg(test)]
mod tests {
    use super::{STANDARD, deflated_base64};
    use base64::Engine;
    use std::io::Read;

    #[test]
    fn what_is_packed_comes_back_whole() {
        let bytes: Vec<u8> = (0_u32..70_000).map(|n| (n % 251) as u8).collect();
        let packed = STANDARD.decode(deflated_base64(&bytes)).expect("base64");
        let mut unpacked = Vec::new();
        flate2::read::DeflateDecoder::new(&packed[..]).read_to_end(&mut unpacked).expect("raw deflate");
        assert_eq!(unpacked, bytes);
        assert!(packed.len() < bytes.len());
    }
}
