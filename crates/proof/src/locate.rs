//! Where the evidence stands in a report, and whether only its line ends are others.

use std::borrow::Cow;
use std::ops::Range;

use plumbline_core::report::evidence::{CLOSES, OPENS, SCHEMA};
use plumbline_core::report::html::BEGINS;

/// What marks the element where its tag is damaged.
const NAME: &[u8] = b"plumbline-evidence";
const BOM: &[u8] = b"\xef\xbb\xbf";

/// A report with the place of what it carries.
pub(crate) struct Located<'a> {
    /// As it was given.
    pub(crate) given: &'a [u8],
    /// Without a byte order mark, and with line ends as the program writes them. Ranges speak of these bytes.
    pub(crate) plain: Cow<'a, [u8]>,
    evidence: Option<Range<usize>>,
}

impl<'a> Located<'a> {
    pub(crate) fn of(given: &'a [u8]) -> Located<'a> {
        let plain = plain(given);
        let evidence = evidence(&plain);
        Located { given, plain, evidence }
    }

    /// The lines of evidence.
    pub(crate) fn evidence(&self) -> Option<&[u8]> {
        self.plain.get(self.evidence.clone()?)
    }

    pub(crate) fn evidence_at(&self) -> usize {
        self.evidence.as_ref().map_or(0, |range| range.start)
    }

    /// Everything but the evidence.
    pub(crate) fn outside(&self) -> [&[u8]; 2] {
        let range = self.evidence.clone().unwrap_or(0..0);
        [self.plain.get(..range.start).unwrap_or(&[]), self.plain.get(range.end..).unwrap_or(&[])]
    }

    pub(crate) fn looks_like_a_report(&self) -> bool {
        self.plain.starts_with(BEGINS.as_bytes()) || find(&self.plain, NAME).is_some()
    }
}

/// Mail and editors write other line ends and put a byte order mark in front; no reader sees either.
pub(crate) fn plain(given: &[u8]) -> Cow<'_, [u8]> {
    let text = given.strip_prefix(BOM).unwrap_or(given);
    if find(text, b"\r\n").is_none() {
        return Cow::Borrowed(text);
    }
    let mut plain = Vec::with_capacity(text.len());
    for (at, byte) in text.iter().enumerate() {
        if *byte != b'\r' || text.get(at + 1) != Some(&b'\n') {
            plain.push(*byte);
        }
    }
    Cow::Owned(plain)
}

/// The last element of that name: what stands in the text is escaped and opens none. Where its tag is damaged, its first line
/// still tells.
fn evidence(text: &[u8]) -> Option<Range<usize>> {
    let first_line = [SCHEMA.as_bytes(), b"\n"].concat();
    let by_tag = rfind(text, OPENS.as_bytes()).map(|at| at + OPENS.len());
    let start = by_tag.or_else(|| rfind(text, &first_line))?;
    let rest = text.get(start..)?;
    let by_close = find(rest, CLOSES.as_bytes());
    let length = by_close.or_else(|| {
        let last = rfind(rest, b"\nend\t")? + 1;
        Some(last + find(rest.get(last..)?, b"\n")? + 1)
    });
    Some(start..start + length.unwrap_or(rest.len()))
}

pub(crate) fn find(text: &[u8], wanted: &[u8]) -> Option<usize> {
    memchr::memmem::find(text, wanted)
}

fn rfind(text: &[u8], wanted: &[u8]) -> Option<usize> {
    memchr::memmem::rfind(text, wanted)
}
