//! Bytes as text that HTML can carry.

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use flate2::Compression;
use flate2::write::DeflateEncoder;
use std::io::Write;

pub(crate) fn base64(bytes: &[u8]) -> String {
    STANDARD.encode(bytes)
}

/// Raw deflate (the page inflates with `DecompressionStream('deflate-raw')`), then base64.
pub(crate) fn deflated_base64(bytes: &[u8]) -> String {
    let mut encoder = DeflateEncoder::new(Vec::new(), Compression::best());
    let written = encoder.write_all(bytes).and_then(|()| encoder.finish());
    base64(&written.expect("a vector takes every byte"))
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
