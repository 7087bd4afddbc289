//! Pictures that stand in a report, by the digest of their bytes: a person sees the picture and reads the digest beside it, and
//! nothing but this holds the two together.

use std::ops::Range;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use plumbline_core::photo::Photo;
use plumbline_core::reading::sha256_hexadecimal;

use crate::html::visible;
use crate::place::{Place, PlaceKind};

/// Letters of a caption that name a figure.
const NAME: usize = 60;
/// Digits of a SHA-256.
const DIGITS: usize = 64;

/// One picture.
#[derive(Debug, PartialEq, Eq)]
pub(crate) struct Embedded {
    /// The bytes of its address.
    pub(crate) at: Range<usize>,
    /// SHA-256 of the picture; empty where it does not stand in the report, or can't be unpacked.
    pub(crate) sha256: String,
    /// It is to be fetched from elsewhere.
    pub(crate) elsewhere: bool,
}

impl Embedded {
    /// The digest; of a picture that is to be fetched, its address.
    pub(crate) fn says(&self, text: &[u8]) -> String {
        if !self.elsewhere {
            return self.sha256.clone();
        }
        let address = String::from_utf8_lossy(text.get(self.at.clone()).unwrap_or(&[])).into_owned();
        address.chars().take(2 * NAME).collect()
    }
}

/// Every picture of a piece of a report.
pub(crate) fn embedded(text: &[u8]) -> Vec<Embedded> {
    memchr::memmem::find_iter(text, b"<img").filter_map(|at| picture(text, at)).collect()
}

fn picture(text: &[u8], at: usize) -> Option<Embedded> {
    const SOURCE: &[u8] = b" src=\"";
    let tag = text.get(at..)?;
    let tag = tag.get(..memchr::memchr(b'>', tag).unwrap_or(tag.len()))?;
    let from = memchr::memmem::find(tag, SOURCE)? + SOURCE.len();
    let address = tag.get(from..)?;
    let address = address.get(..memchr::memchr(b'"', address).unwrap_or(address.len()))?;
    let packed = address.strip_prefix(b"data:").and_then(|rest| {
        let comma = memchr::memmem::find(rest, b";base64,")?;
        rest.get(comma + b";base64,".len()..)
    });
    let bytes = packed.and_then(|packed| STANDARD.decode(packed).ok());
    Some(Embedded {
        at: at + from..at + from + address.len(),
        sha256: bytes.map(|bytes| sha256_hexadecimal(&bytes)).unwrap_or_default(),
        elsewhere: !address.starts_with(b"data:"),
    })
}

/// A piece without the addresses of its pictures.
pub(crate) fn without(text: &[u8], pictures: &[Embedded]) -> Vec<u8> {
    let mut rest = Vec::with_capacity(text.len().min(4096));
    let mut from = 0;
    for one in pictures {
        rest.extend_from_slice(text.get(from..one.at.start).unwrap_or(&[]));
        from = one.at.end;
    }
    rest.extend_from_slice(text.get(from..).unwrap_or(&[]));
    rest
}

/// What names a figure: how its caption begins.
pub(crate) fn name(figure: &[u8]) -> String {
    let caption = memchr::memmem::find(figure, b"<figcaption").and_then(|at| figure.get(at..));
    visible(caption.unwrap_or(&[])).chars().take(NAME).collect()
}

/// Pictures of a report that can't be made again which are not what stands beside them: none of the copies the report carries,
/// or another than the one whose digest the same figure prints.
pub(crate) fn strangers(text: &[u8], carried: &[Photo]) -> Vec<Place> {
    let copies: Vec<&str> =
        carried.iter().filter_map(|photo| Some(photo.picture.as_ref().ok()?.print.sha256.as_str())).collect();
    embedded(text).into_iter().filter_map(|one| stranger(text, &one, &copies)).collect()
}

fn stranger(text: &[u8], one: &Embedded, copies: &[&str]) -> Option<Place> {
    let (before, behind) = (text.get(..one.at.start)?, text.get(one.at.end..)?);
    // Another picture may follow in a figure that was damaged: its caption is not this one's.
    let ends = [&b"</figure>"[..], b"<img"].map(|end| memchr::memmem::find(behind, end));
    let beside = behind.get(..ends.into_iter().flatten().min().unwrap_or(behind.len()))?;
    let printed: Vec<&str> = copies.iter().copied().filter(|copy| prints(beside, copy)).collect();
    if copies.contains(&one.sha256.as_str()) && printed.contains(&one.sha256.as_str()) {
        return None;
    }
    let kind = if one.elsewhere { PlaceKind::Active } else { PlaceKind::Picture };
    let heading = memchr::memmem::rfind(before, b"<h2>").and_then(|at| before.get(at..));
    let heading = heading.and_then(|rest| rest.get(..memchr::memmem::find(rest, b"</h2>")?));
    Some(Place {
        section: heading.map(visible).unwrap_or_default(),
        row: name(beside),
        says: one.says(text),
        gives: printed.first().map(|copy| (*copy).to_owned()).unwrap_or_default(),
        ..Place::new(kind, one.at.clone())
    })
}

fn prints(text: &[u8], digest: &str) -> bool {
    digest.len() == DIGITS && memchr::memmem::find(text, digest.as_bytes()).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_picture_is_known_by_its_bytes_and_one_that_stands_elsewhere_by_its_address() {
        let text = b"<img src=\"data:image/png;base64,AAEC\" alt=\"a &gt; b\"><img alt=\"\" src=\"https://a.invalid/x\"><img>\
                     <img src=\"data:image/png;base64,??\">";
        let found = embedded(text);
        let seen: Vec<(&str, bool)> = found.iter().map(|one| (one.sha256.as_str(), one.elsewhere)).collect();
        // SHA-256 of the bytes 0, 1, 2.
        let of_three = "ae4b3280e56e2faf83f414a6e3dabe9d5fbe18976544c05fed121accb85b53fc";
        assert_eq!(seen, [(of_three, false), ("", true), ("", false)]);
        assert_eq!(without(&text[..39], &found[..1]), b"<img src=\"\" a");
    }

    #[test]
    fn cut_tags_break_nothing() {
        for text in ["<img", "<img src=\"", "<img src=\"data:", "<img src=\"data:;base64,AA"] {
            assert!(embedded(text.as_bytes()).len() <= 1, "{text}");
        }
    }
}
