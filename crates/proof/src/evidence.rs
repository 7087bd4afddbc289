//! What a report carries, read strictly and held against its digests.

use std::io::Read;
use std::ops::Range;

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use flate2::read::DeflateDecoder;
use plumbline_core::acts::{Act, ActKind, Target};
use plumbline_core::opened::{Kept, MOST_CARRIED, OpenedFile, Stub};
use plumbline_core::photo::{MediaType, Photo, PhotoState, Size};
use plumbline_core::reading::{NoticeCode, hexadecimal, sha256_hexadecimal};
use plumbline_core::report::Length;
use plumbline_core::report::evidence::{MOST_CANONICAL, SCHEMA};
use sha2::{Digest, Sha256};

use crate::place::{Part, PartKind, Place, PlaceKind, Places};
use crate::records::{self, Record};

/// Most bytes that all packed parts of a report may come to. A report of this program stays far below it: its files are
/// bounded by [`MOST_CARRIED`], its findings by [`MOST_CANONICAL`], and the rest are books, history and photographs.
pub const MOST_INFLATED: usize = MOST_CARRIED as usize + MOST_CANONICAL + 64 * 1024 * 1024;

/// A rule book that is carried.
pub(crate) struct Book {
    pub(crate) id: String,
    /// It was loaded, not only named.
    pub(crate) loaded: bool,
    pub(crate) text: String,
}

/// What a report carries.
pub struct Evidence {
    pub(crate) program: String,
    pub(crate) version: String,
    pub(crate) language: String,
    pub(crate) length: Length,
    pub(crate) digest: String,
    /// SHA-256 of everything above the element.
    pub(crate) text: String,
    pub(crate) acts: Vec<Act>,
    pub(crate) books: Vec<Book>,
    pub(crate) history: Option<String>,
    pub(crate) files: Vec<OpenedFile>,
    pub(crate) photos: Vec<Photo>,
    /// The findings without words; `None` where they were too many.
    pub(crate) canonical: Option<String>,
    ranges: Vec<(Part, Range<usize>)>,
}

impl Evidence {
    /// True where the bytes of every file are carried, so that what is given beside the report changes nothing.
    pub(crate) fn is_whole(&self) -> bool {
        self.files.iter().all(|file| matches!(file.kept, Kept::Bytes(_)))
    }

    pub(crate) fn range_of(&self, part: &Part) -> Range<usize> {
        let found = self.ranges.iter().find(|(one, _)| one == part);
        found.map_or(0..0, |(_, range)| range.clone())
    }
}

/// Reads the lines of evidence. `at` is where they begin in the report.
///
/// # Errors
/// The places of parts that are not what their checks and digests say, or that are missing.
pub(crate) fn read(text: &[u8], at: usize) -> Result<Evidence, Places> {
    let records = records::read(text, at)?;
    let mut reader = Reader { room: MOST_INFLATED, evidence: Evidence::empty(), seen: [0; 12] };
    let mut faults = Places::default();
    let mut last = 0;
    for record in &records {
        reader.evidence.ranges.push((record.part.clone(), record.bytes.clone()));
        // What is known of a file stands right below it.
        let kind = if record.part.kind == PartKind::Source { PartKind::File } else { record.part.kind };
        let rank = ORDER.iter().position(|one| *one == kind);
        let in_order = rank.is_some_and(|rank| rank >= last);
        last = rank.unwrap_or(last).max(last);
        let kind = match reader.take(record) {
            Some(()) if in_order => continue,
            Some(()) => PlaceKind::WrittenOtherwise,
            None => PlaceKind::NotUsable,
        };
        faults.add(Place::of_part(kind, record.part.clone(), record.bytes.clone()));
    }
    let end = at + text.len()..at + text.len();
    for kind in [PartKind::Program, PartKind::Report, PartKind::Canonical, PartKind::End] {
        if !records.iter().any(|record| record.part.kind == kind) {
            faults.add(Place::of_part(PlaceKind::PartMissing, Part::of(kind), end.clone()));
        }
    }
    // The checks of all records hold, but not that of the whole: some record is gone, came twice or stands elsewhere.
    if faults.is_empty() && !whole(text, &records) {
        let bytes = records.last().map_or(end, |record| record.bytes.clone());
        faults.add(Place::of_part(PlaceKind::Changed, Part::of(PartKind::End), bytes));
    }
    if faults.is_empty() { Ok(reader.evidence) } else { Err(faults) }
}

/// The order of the kinds.
const ORDER: [PartKind; 9] = [
    PartKind::Program,
    PartKind::Report,
    PartKind::Act,
    PartKind::Book,
    PartKind::History,
    PartKind::File,
    PartKind::Photo,
    PartKind::Canonical,
    PartKind::End,
];

/// The last line counts the records and names the digest of all lines above it.
fn whole(text: &[u8], records: &[Record]) -> bool {
    let Some(last) = records.last() else { return false };
    let length = last.bytes.end - last.bytes.start;
    let above = text.len().checked_sub(length).and_then(|end| text.get(..end)).unwrap_or(&[]);
    let digest = hexadecimal(&Sha256::digest(above));
    let field = |at: usize| last.fields.get(at).cloned().flatten().unwrap_or_default();
    above.starts_with(SCHEMA.as_bytes()) && field(1) == records.len().to_string() && field(2) == digest
}

struct Reader {
    /// How many bytes the packed parts may still come to.
    room: usize,
    evidence: Evidence,
    /// How many records of each kind there were.
    seen: [u64; 12],
}

impl Evidence {
    fn empty() -> Evidence {
        Evidence {
            program: String::new(),
            version: String::new(),
            language: String::new(),
            length: Length::Full,
            digest: String::new(),
            text: String::new(),
            acts: Vec::new(),
            books: Vec::new(),
            history: None,
            files: Vec::new(),
            photos: Vec::new(),
            canonical: None,
            ranges: Vec::new(),
        }
    }
}

impl Reader {
    /// Takes one record; `None` where it can't be used.
    fn take(&mut self, record: &Record) -> Option<()> {
        let seen = self.seen.get_mut(record.part.kind as usize)?;
        *seen += 1;
        let number = *seen;
        let mut fields = Fields { texts: record.fields.iter(), number };
        fields.texts.next()?;
        let evidence = &mut self.evidence;
        match record.part.kind {
            PartKind::Program => {
                (evidence.program, evidence.version) = (fields.text()?, fields.text()?);
                (number == 1).then_some(())?;
            }
            PartKind::Report => {
                evidence.language = fields.text()?;
                evidence.length = Length::from_code(&fields.text()?)?;
                (evidence.digest, evidence.text) = (fields.digest()?, fields.digest()?);
                (number == 1).then_some(())?;
            }
            PartKind::Act => {
                fields.numbered()?;
                evidence.acts.push(Act {
                    kind: ActKind::from_code(&fields.text()?)?,
                    target: Target::parse(&fields.text()?)?,
                    value: fields.text()?,
                    by: fields.text()?,
                    at: fields.text()?,
                    note: fields.text()?,
                });
            }
            PartKind::Book => {
                fields.numbered()?;
                let (id, loaded) = (fields.text()?, fields.one_of("loaded", "named")?);
                let (length, sha256) = (fields.size()?, fields.digest()?);
                let text = String::from_utf8(inflated(&record.data, length, &mut self.room)?).ok()?;
                (sha256_hexadecimal(text.as_bytes()) == sha256).then_some(())?;
                evidence.books.push(Book { id, loaded, text });
            }
            PartKind::History => {
                let (sha256, length) = (fields.digest()?, fields.size()?);
                let text = String::from_utf8(inflated(&record.data, length, &mut self.room)?).ok()?;
                (sha256_hexadecimal(text.as_bytes()) == sha256 && number == 1).then_some(())?;
                evidence.history = Some(text);
            }
            PartKind::File => {
                fields.numbered()?;
                let file = file(&mut fields, record, &mut self.room)?;
                evidence.files.push(file);
            }
            PartKind::Source => {
                (fields.text()? == evidence.files.len().to_string()).then_some(())?;
                let stub = Stub {
                    name: fields.text()?,
                    sha256: fields.text()?,
                    bytes: fields.text()?.parse().ok()?,
                    packed: fields.one_of("packed", "itself")?,
                    code: fields.notice()?,
                    found: fields.text()?,
                };
                match &mut evidence.files.last_mut()?.kept {
                    Kept::Stubs(stubs) => stubs.push(stub),
                    Kept::Bytes(_) | Kept::TooLarge => return None,
                }
            }
            PartKind::Photo => {
                fields.numbered()?;
                let photo = photo(&mut fields, record)?;
                evidence.photos.push(photo);
            }
            PartKind::Canonical => {
                let length = fields.size()?;
                if fields.one_of("carried", "too_large")? {
                    let text = inflated(&record.data, length, &mut self.room)?;
                    (sha256_hexadecimal(&text) == evidence.digest).then_some(())?;
                    evidence.canonical = Some(String::from_utf8(text).ok()?);
                }
                (number == 1).then_some(())?;
            }
            PartKind::End => {
                fields.text()?;
                fields.digest()?;
                (number == 1).then_some(())?;
            }
            PartKind::Frame | PartKind::Unknown => return None,
        }
        fields.at_end()
    }
}

fn file(fields: &mut Fields<'_>, record: &Record, room: &mut usize) -> Option<OpenedFile> {
    let (name, in_folder) = (fields.text()?, fields.one_of("in_folder", "named")?);
    let (bytes, sha256) = (fields.text()?.parse().ok()?, fields.text()?);
    let kept = match fields.text()?.as_str() {
        "carried" if bytes <= MOST_CARRIED => {
            let content = inflated(&record.data, bytes as usize, room)?;
            (sha256_hexadecimal(&content) == sha256).then_some(())?;
            Kept::Bytes(content)
        }
        "too_large" => Kept::TooLarge,
        "nothing_read" => Kept::Stubs(Vec::new()),
        _ => return None,
    };
    Some(OpenedFile { name, in_folder, bytes, sha256, kept })
}

/// Unpacks exactly `length` bytes. Sizes may lie, so no more than that is ever made, and of all parts together no more than
/// there is room for.
fn inflated(data: &str, length: usize, room: &mut usize) -> Option<Vec<u8>> {
    *room = room.checked_sub(length)?;
    let packed = STANDARD.decode(data).ok()?;
    let mut bytes = Vec::new();
    let mut decoder = DeflateDecoder::new(packed.as_slice()).take(length as u64 + 1);
    decoder.read_to_end(&mut bytes).ok()?;
    (bytes.len() == length).then_some(bytes)
}

struct Fields<'a> {
    texts: std::slice::Iter<'a, Option<String>>,
    number: u64,
}

/// A photograph: the copy that is printed, and what is known of the original.
fn photo(fields: &mut Fields<'_>, record: &Record) -> Option<Photo> {
    let (name, sha256) = (fields.text()?, fields.text()?);
    let state = PhotoState::from_code(&fields.text()?)?;
    if state != PhotoState::AtHand {
        return Some(Photo { name, sha256, picture: Err(state) });
    }
    let media_type = MediaType::from_code(&fields.text()?)?;
    let mut pixels = || u32::try_from(fields.size()?).ok();
    let size = Size { width: pixels()?, height: pixels()? };
    let (length, print) = (fields.size()?, fields.digest()?);
    let bytes = STANDARD.decode(&record.data).ok()?;
    (bytes.len() == length && sha256_hexadecimal(&bytes) == print).then_some(())?;
    let photo = Photo::of_copy(&name, &sha256, media_type, size, &bytes);
    // The copy holds a picture and nothing else, so that taking it apart again changes nothing.
    let same = photo.picture.as_ref().is_ok_and(|picture| picture.print.sha256 == print);
    same.then_some(photo)
}

impl Fields<'_> {
    fn text(&mut self) -> Option<String> {
        self.texts.next().cloned().flatten()
    }

    /// Records of one kind are counted, so that a missing one shows.
    fn numbered(&mut self) -> Option<()> {
        (self.text()? == self.number.to_string()).then_some(())
    }

    fn size(&mut self) -> Option<usize> {
        self.text()?.parse().ok()
    }

    fn digest(&mut self) -> Option<String> {
        let is_one = |text: &String| text.len() == 64 && text.bytes().all(|byte| byte.is_ascii_hexdigit());
        self.text().filter(is_one)
    }

    fn one_of(&mut self, yes: &str, no: &str) -> Option<bool> {
        let found = self.text()?;
        (found == yes || found == no).then_some(found == yes)
    }

    fn notice(&mut self) -> Option<NoticeCode> {
        let found = self.text()?;
        NoticeCode::ALL.iter().copied().find(|code| code.code() == found)
    }

    fn at_end(&mut self) -> Option<()> {
        self.texts.next().is_none().then_some(())
    }
}
