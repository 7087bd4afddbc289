//! What a report carries so that it can be proved: everything it was made from, as lines of text in an element that no browser
//! runs or shows.
//!
//! A record is a line of fields ([`crate::tabbed`]); what is packed stands below it in lines that begin with a space. Each
//! record ends with a check of its own, so that a change is named by the record it hit. The lines and their fields are
//! described in `contract.md`.

use std::io::{self, Write};

use base64::Engine;
use base64::engine::general_purpose::STANDARD;
use flate2::Compression;
use flate2::write::DeflateEncoder;
use sha2::{Digest, Sha256};

use super::{Length, Program, canonical};
use crate::acts::ActKind;
use crate::inspection::{Findings, Inspection};
use crate::opened::{Kept, OpenedFile};
use crate::photo::{PhotoState, Picture};
use crate::reading::{hexadecimal, sha256_hexadecimal};
use crate::tabbed::Line;

/// The first line: what it is.
pub const SCHEMA: &str = "plumbline.evidence/1";
/// The tag of the element it stands in.
pub const OPENS: &str = "<script type=\"text/plain\" id=\"plumbline-evidence\">\n";
/// The end of that element.
pub const CLOSES: &str = "</script>";
/// Most bytes of canonical findings that are carried along. (Our choice: what the files of
/// [`crate::opened::MOST_CARRIED`] come to with ordinary columns.)
pub const MOST_CANONICAL: usize = 64 * 1024 * 1024;
/// Digits of a record's check: 64 bits, for changes that nobody meant; who means them can write another check, and is held
/// against the whole.
pub const CHECK_DIGITS: usize = 16;
/// Characters of packed bytes in a line.
const WIDTH: usize = 120;

/// The canonical findings as a report names and carries them.
#[derive(Clone, Debug)]
pub struct Pinned {
    /// The digest: SHA-256 of the lines, each with its line end.
    pub digest: String,
    /// The number of the report, and of every paper that belongs to it.
    pub number: String,
    /// How many bytes the lines are.
    pub bytes: u64,
    /// The lines, deflated; `None` where they are not carried.
    pub packed: Option<Vec<u8>>,
}

impl Pinned {
    /// Writes the canonical findings, once.
    pub fn of(inspection: &Inspection, findings: &Findings) -> Pinned {
        let mut hash = Sha256::new();
        let mut packer = inspection.opened.is_whole().then(packer);
        let (mut bytes, mut piece) = (0_u64, Vec::with_capacity(PIECE * 2));
        let mut take = |piece: &mut Vec<u8>| {
            hash.update(&piece);
            bytes += piece.len() as u64;
            if bytes > MOST_CANONICAL as u64 {
                packer = None;
            }
            if let Some(packer) = &mut packer {
                // A Vec takes all bytes.
                let _ = packer.write_all(piece);
            }
            piece.clear();
        };
        canonical::write(inspection, findings, &mut |line| {
            piece.extend_from_slice(line.as_bytes());
            piece.push(b'\n');
            if piece.len() >= PIECE {
                take(&mut piece);
            }
        });
        take(&mut piece);
        let packed = packer.and_then(|packer| packer.finish().ok());
        let digest = hexadecimal(&hash.finalize());
        let settings = inspection.settings();
        let number = number_of(settings.inspection(ActKind::ReviewedAt), &digest);
        Pinned { digest, number, bytes, packed }
    }
}

/// From date and digest, so that the same findings of the same day have the same number and no other has it.
fn number_of(reviewed_at: Option<&str>, digest: &str) -> String {
    let date: String = reviewed_at.unwrap_or("").chars().filter(char::is_ascii_digit).take(8).collect();
    let digest = digest.get(..10).unwrap_or("").to_uppercase();
    if date.is_empty() { format!("PL-{digest}") } else { format!("PL-{date}-{digest}") }
}

/// Bytes that are hashed and packed at a time.
const PIECE: usize = 64 * 1024;

/// The level is part of the bytes of a report: two doors must pack alike.
fn packer() -> DeflateEncoder<Vec<u8>> {
    DeflateEncoder::new(Vec::new(), Compression::new(6))
}

fn packed(bytes: &[u8]) -> Vec<u8> {
    let mut packer = packer();
    // A Vec takes all bytes.
    let _ = packer.write_all(bytes);
    packer.finish().unwrap_or_default()
}

/// What a report says it is.
#[derive(Clone, Copy, Debug)]
pub struct About<'a> {
    /// The program that made it.
    pub program: Program,
    /// Its language, a BCP 47 tag.
    pub language: &'a str,
    /// Its length.
    pub length: Length,
    /// SHA-256 of everything above the element.
    pub text: &'a str,
}

/// Passes bytes on and hashes them.
pub(super) struct Hashing<'a> {
    sink: &'a mut dyn Write,
    hash: Sha256,
}

impl<'a> Hashing<'a> {
    pub(super) fn of(sink: &'a mut dyn Write) -> Hashing<'a> {
        Hashing { sink, hash: Sha256::new() }
    }

    /// The digest of what went through, and the sink.
    pub(super) fn end(self) -> (String, &'a mut dyn Write) {
        (hexadecimal(&self.hash.finalize()), self.sink)
    }
}

impl Write for Hashing<'_> {
    fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
        let written = self.sink.write(bytes)?;
        self.hash.update(bytes.get(..written).unwrap_or(bytes));
        Ok(written)
    }

    fn flush(&mut self) -> io::Result<()> {
        self.sink.flush()
    }
}

/// Writes the element with everything in it.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    about: &About<'_>,
    pinned: &Pinned,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let mut out = Out { sink, whole: Sha256::new(), records: 0 };
    out.sink.write_all(OPENS.as_bytes())?;
    out.put(SCHEMA.as_bytes())?;
    out.put(b"\n")?;
    let mut line = Line::default();
    line.begin("program").text(about.program.name).text(about.program.version);
    out.record(&line, None)?;
    line.begin("report").text(about.language).plain(about.length.code()).plain(&pinned.digest);
    line.plain(about.text);
    out.record(&line, None)?;
    for (at, act) in inspection.acts.iter().enumerate() {
        line.begin("act").number(at as u64 + 1).plain(act.kind.code()).text(&act.target.to_text());
        line.text(&act.value).text(&act.by).text(&act.at).text(&act.note);
        out.record(&line, None)?;
    }
    books(inspection, &mut out)?;
    if !inspection.history.is_empty() {
        let text = inspection.history.to_text();
        line.begin("history").plain(&sha256_hexadecimal(text.as_bytes())).number(text.len() as u64);
        out.record(&line, Some(&packed(text.as_bytes())))?;
    }
    for (at, file) in inspection.opened.files().iter().enumerate() {
        self::file(at, file, &mut out)?;
    }
    photos(inspection, &mut out)?;
    line.begin("canonical").number(pinned.bytes);
    line.plain(if pinned.packed.is_some() { "carried" } else { "too_large" });
    out.record(&line, pinned.packed.as_deref())?;
    let whole = hexadecimal(&out.whole.clone().finalize());
    line.begin("end").number(out.records + 1).plain(&whole);
    out.record(&line, None)?;
    out.sink.write_all(CLOSES.as_bytes())
}

/// The books that were loaded, in their order, then those that acts only name.
fn books(inspection: &Inspection, out: &mut Out<'_>) -> io::Result<()> {
    let settings = inspection.settings();
    let loaded = inspection.books.all().len();
    let mut line = Line::default();
    for (at, book) in inspection.books.used(&settings.books).into_iter().enumerate() {
        line.begin("book").number(at as u64 + 1).text(&book.id);
        line.plain(if at < loaded { "loaded" } else { "named" });
        line.number(book.text.len() as u64).plain(&book.sha256);
        out.record(&line, Some(&packed(book.text.as_bytes())))?;
    }
    Ok(())
}

/// The photographs that acts may mean, with the copies that are printed; others were given and show nothing.
fn photos(inspection: &Inspection, out: &mut Out<'_>) -> io::Result<()> {
    let mut line = Line::default();
    for (at, photo) in inspection.named_photos().into_iter().enumerate() {
        line.begin("photo").number(at as u64 + 1).text(&photo.name).text(&photo.sha256);
        match &photo.picture {
            Ok(Picture { media_type, size, print }) => {
                line.plain(PhotoState::AtHand.code()).plain(media_type.code());
                line.number(size.width).number(size.height);
                line.number(print.bytes.len() as u64).plain(&print.sha256);
                // Pictures are packed already.
                out.record(&line, Some(&print.bytes))?;
            }
            Err(why) => out.record(line.plain(why.code()), None)?,
        }
    }
    Ok(())
}

fn file(at: usize, file: &OpenedFile, out: &mut Out<'_>) -> io::Result<()> {
    let mut line = Line::default();
    line.begin("file").number(at as u64 + 1).text(&file.name);
    line.plain(if file.in_folder { "in_folder" } else { "named" });
    line.number(file.bytes).plain(&file.sha256);
    match &file.kept {
        Kept::Bytes(bytes) => out.record(line.plain("carried"), Some(&packed(bytes))),
        Kept::TooLarge => out.record(line.plain("too_large"), None),
        Kept::Stubs(stubs) => {
            out.record(line.plain("nothing_read"), None)?;
            for stub in stubs {
                line.begin("source").number(at as u64 + 1).text(&stub.name).plain(&stub.sha256);
                line.number(stub.bytes).plain(if stub.packed { "packed" } else { "itself" });
                line.plain(stub.code.code()).text(&stub.found);
                out.record(&line, None)?;
            }
            Ok(())
        }
    }
}

struct Out<'a> {
    sink: &'a mut dyn Write,
    whole: Sha256,
    records: u64,
}

impl Out<'_> {
    fn put(&mut self, bytes: &[u8]) -> io::Result<()> {
        self.whole.update(bytes);
        self.sink.write_all(bytes)
    }

    fn record(&mut self, line: &Line, data: Option<&[u8]>) -> io::Result<()> {
        self.records += 1;
        let text = data.map(|data| STANDARD.encode(data)).unwrap_or_default();
        let check = check_of(line.as_str(), &text);
        self.put(line.as_str().as_bytes())?;
        self.put(b"\t")?;
        self.put(check.as_bytes())?;
        self.put(b"\n")?;
        for piece in text.as_bytes().chunks(WIDTH) {
            self.put(b" ")?;
            self.put(piece)?;
            self.put(b"\n")?;
        }
        Ok(())
    }
}

/// The check of a record: of its fields but the check, and of what is packed below it, as one line without spaces.
pub fn check_of(fields: &str, data: &str) -> String {
    let mut hash = Sha256::new();
    hash.update(fields.as_bytes());
    hash.update(b"\n");
    hash.update(data.as_bytes());
    let mut check = hexadecimal(&hash.finalize());
    check.truncate(CHECK_DIGITS);
    check
}
