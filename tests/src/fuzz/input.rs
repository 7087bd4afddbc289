//! A file as what it is made of: bytes, or the parts of a package.

use std::io::Read;

use flate2::read::DeflateDecoder;

use crate::packed::zip::{Entry, archive};

/// A file to try.
#[derive(Clone, Debug)]
pub enum Input {
    /// Bytes as they are.
    Plain(Vec<u8>),
    /// Named parts, packed at the end.
    Package(Vec<(String, Vec<u8>)>),
}

/// Most bytes that a part is unpacked to.
const LARGEST: u64 = 4 << 20;

impl Input {
    /// A file of the corpus; a package that can be unpacked is taken apart.
    pub fn of(bytes: Vec<u8>) -> Input {
        match parts(&bytes) {
            Some(parts) if !parts.is_empty() => Input::Package(parts),
            _ => Input::Plain(bytes),
        }
    }

    /// The bytes of the file.
    pub fn bytes(&self) -> Vec<u8> {
        match self {
            Input::Plain(bytes) => bytes.clone(),
            Input::Package(parts) => {
                let entries: Vec<Entry> = parts
                    .iter()
                    .map(|(name, bytes)| {
                        // A spreadsheet's type stands unpacked in front.
                        if name == "mimetype" {
                            Entry::stored(name, bytes)
                        } else {
                            Entry::deflated(name, bytes)
                        }
                    })
                    .collect();
                archive(&entries)
            }
        }
    }

    /// The part that changes most usefully: the longest.
    pub fn largest_part(&mut self) -> &mut Vec<u8> {
        match self {
            Input::Plain(bytes) => bytes,
            Input::Package(parts) => {
                let largest = parts.iter_mut().max_by_key(|(_, bytes)| bytes.len());
                largest.map(|(_, bytes)| bytes).expect("a package has parts")
            }
        }
    }
}

/// The parts of a package written by [`archive`], by its local headers.
fn parts(bytes: &[u8]) -> Option<Vec<(String, Vec<u8>)>> {
    let mut parts = Vec::new();
    let mut at = 0;
    while bytes.get(at..at + 4)? == b"PK\x03\x04" {
        let short = |offset: usize| {
            Some(usize::from(u16::from_le_bytes(bytes.get(at + offset..at + offset + 2)?.try_into().ok()?)))
        };
        let long = |offset: usize| {
            Some(u32::from_le_bytes(bytes.get(at + offset..at + offset + 4)?.try_into().ok()?) as usize)
        };
        let (method, packed, name, extra) = (short(8)?, long(18)?, short(26)?, short(28)?);
        let start = at + 30 + name + extra;
        let body = bytes.get(start..start + packed)?;
        let unpacked = match method {
            0 => body.to_vec(),
            8 => {
                let mut unpacked = Vec::new();
                DeflateDecoder::new(body).take(LARGEST).read_to_end(&mut unpacked).ok()?;
                unpacked
            }
            _ => return None,
        };
        parts.push((String::from_utf8_lossy(bytes.get(at + 30..at + 30 + name)?).into_owned(), unpacked));
        at = start + packed;
    }
    Some(parts)
}
