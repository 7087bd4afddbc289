//! The lines of evidence, each held against its own check.

use std::ops::Range;

use plumbline_core::report::evidence::{CHECK_DIGITS, SCHEMA, check_of};
use plumbline_core::tabbed;

use crate::place::{Part, PartKind, Place, PlaceKind, Places};

/// One record.
pub(crate) struct Record {
    pub(crate) part: Part,
    /// Its fields, the kind first and the check left out.
    pub(crate) fields: Vec<Option<String>>,
    /// What is packed below it, as one text.
    pub(crate) data: String,
    /// Where it stands in the report, with its data.
    pub(crate) bytes: Range<usize>,
}

/// Reads the records. `at` is where the text begins in the report.
///
/// # Errors
/// The places of records that are not what their checks say.
pub(crate) fn read(text: &[u8], at: usize) -> Result<Vec<Record>, Places> {
    let mut faults = Places::default();
    let mut records: Vec<Record> = Vec::new();
    let first_line = [SCHEMA.as_bytes(), b"\n"].concat();
    let frame = |bytes| Place::of_part(PlaceKind::Changed, Part::of(PartKind::Frame), bytes);
    let Some(rest) = text.strip_prefix(first_line.as_slice()) else {
        let line = text.iter().position(|byte| *byte == b'\n').map_or(text.len(), |end| end + 1);
        return Err(Places::one(frame(at..at + line)));
    };
    let mut start = text.len() - rest.len();
    while start < text.len() {
        let end = end_of_record(text, start);
        let bytes = at + start..at + end;
        let (part, read) = record(text.get(start..end).unwrap_or(&[]));
        match read {
            Some((fields, data)) => records.push(Record { part, fields, data, bytes }),
            None => faults.add(Place::of_part(PlaceKind::Changed, part, bytes)),
        }
        start = end;
    }
    if faults.is_empty() { Ok(records) } else { Err(faults) }
}

/// A record ends before the next line that doesn't begin with a space.
fn end_of_record(text: &[u8], start: usize) -> usize {
    let mut at = start;
    loop {
        let rest = text.get(at..).unwrap_or(&[]);
        let Some(line) = memchr::memchr(b'\n', rest) else { return text.len() };
        at += line + 1;
        if text.get(at) != Some(&b' ') {
            return at;
        }
    }
}

/// The fields of a record (`None` for one that says nothing), and what is packed below it.
type Sound = (Vec<Option<String>>, String);

/// Fields and data of a sound record, and which part it is (of a damaged one as far as that can be told).
fn record(bytes: &[u8]) -> (Part, Option<Sound>) {
    let lossy = String::from_utf8_lossy(bytes);
    let head = lossy.lines().next().unwrap_or("");
    let part = part_of(head);
    let sound = || {
        let text = std::str::from_utf8(bytes).ok()?.strip_suffix('\n')?;
        let mut lines = text.split('\n');
        let head = lines.next()?;
        let data = lines.map(|line| line.strip_prefix(' ')).collect::<Option<String>>()?;
        let (fields, check) = head.rsplit_once('\t')?;
        (check.len() == CHECK_DIGITS && check == check_of(fields, &data)).then_some(())?;
        let fields = fields.split('\t').map(tabbed::field).collect::<Option<Vec<_>>>()?;
        Some((fields, data))
    };
    (part, sound())
}

pub(crate) fn part_of(head: &str) -> Part {
    let mut fields = head.split('\t');
    let kind = fields.next().unwrap_or("");
    let known = PartKind::ALL.iter().copied().find(|known| known.code() == kind);
    let kind = known.filter(|kind| *kind != PartKind::Frame).unwrap_or(PartKind::Unknown);
    let at = match kind {
        PartKind::Act => 0,
        PartKind::Book | PartKind::File | PartKind::Source | PartKind::Photo => 1,
        _ => return Part::of(kind),
    };
    let name = fields.nth(at).unwrap_or("");
    Part { kind, name: tabbed::field(name).flatten().unwrap_or_else(|| name.to_owned()) }
}
