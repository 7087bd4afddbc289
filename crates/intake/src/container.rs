//! Which files are packed, by what stands in them and never by their name.

use crate::unpacking::{self, Bound, Directory};

/// The start of a zip entry, of an empty zip, and of a zip once cut in volumes (PKWARE APPNOTE 4.3.7, 4.3.16, 8.5.3).
const ZIP_STARTS: [&[u8]; 3] = [b"PK\x03\x04", b"PK\x05\x06", b"PK\x07\x08"];

/// The start of an OLE compound file ([MS-CFB] 2.2): an old workbook, or a new one behind a password.
const OLE_START: &[u8] = b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1";

/// Other ways to pack files: gzip (RFC 1952, 2.3.1), zstd (RFC 8878, 3.1.1), 7z, rar, xz (from memory).
const OTHER_PACKED: [&[u8]; 5] =
    [b"\x1F\x8B\x08", b"\x28\xB5\x2F\xFD", b"7z\xBC\xAF\x27\x1C", b"Rar!\x1A\x07", b"\xFD7zXZ\0"];

/// Names that only workbooks begin with, for a workbook whose directory was cut off.
const WORKBOOK_FIRST: [&[u8]; 5] = [b"[Content_Types].xml", b"_rels/", b"xl/", b"docProps/", b"mimetype"];

/// What a workbook of ECMA-376 is listed as when its parts stand elsewhere; the ends tell it from a document that has
/// a workbook inside.
const WORKBOOK_TYPES: [&[u8]; 4] =
    [b"spreadsheetml.sheet.main", b"spreadsheetml.template.main", b"ms-excel.sheet.", b"ms-excel.template."];

/// Bytes of a part that only says what the package is (common practice, no source).
const LARGEST_LABEL: u64 = 1024 * 1024;

/// The part nearly every workbook of ECMA-376 has, as text or as `.xlsb` keeps it.
const WORKBOOK_PARTS: [&str; 2] = ["xl/workbook.xml", "xl/workbook.bin"];

/// How many bytes [`needs_whole`] wants to see.
pub const HEAD: usize = 8;

/// What a file is packed as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Container {
    /// A workbook, read or refused by [`crate::workbook::Workbook::open`].
    Workbook,
    /// A zip of files, read or refused by [`crate::archive::Archive::open`].
    Archive,
    /// Packed in a way that is not read.
    OtherPacked,
    /// Not packed.
    Plain,
}

/// True where the first bytes say that a file must be in memory whole before [`look`] can tell what it is.
pub fn needs_whole(head: &[u8]) -> bool {
    head.starts_with(OLE_START) || is_zip(head)
}

fn is_zip(head: &[u8]) -> bool {
    ZIP_STARTS.iter().any(|start| head.starts_with(start))
}

/// What a whole file is.
pub fn look(bytes: &[u8]) -> Container {
    if bytes.starts_with(OLE_START) {
        return Container::Workbook;
    }
    if OTHER_PACKED.iter().any(|start| bytes.starts_with(start)) {
        return Container::OtherPacked;
    }
    if !is_zip(bytes) {
        return Container::Plain;
    }
    let is_workbook = if let Ok(zip) = Directory::read(bytes, unpacking::MOST_PARTS) {
        WORKBOOK_PARTS.iter().any(|part| zip.find(part).is_some())
            || says(&zip, "[Content_Types].xml", |text| {
                WORKBOOK_TYPES.iter().any(|kind| memchr::memmem::find(text, kind).is_some())
            })
            || says(&zip, "mimetype", is_spreadsheet_type)
    } else {
        // PKWARE APPNOTE 4.3.7: the name stands thirty bytes into the first entry.
        let name = bytes.get(30..).unwrap_or(&[]);
        WORKBOOK_FIRST.iter().any(|first| name.starts_with(first))
    };
    if is_workbook { Container::Workbook } else { Container::Archive }
}

/// True where a part is there, can be read and says so.
fn says(zip: &Directory<'_>, part: &str, so: impl Fn(&[u8]) -> bool) -> bool {
    zip.find(part)
        .and_then(|index| zip.read_whole(index, Bound::of(LARGEST_LABEL)).ok())
        .is_some_and(|text| so(&text))
}

/// True for a spreadsheet and for a template of one: what the entry `mimetype` of an `OpenDocument` package says
/// (version 1.3, part 2, 3.3).
pub(crate) fn is_spreadsheet_type(mimetype: &[u8]) -> bool {
    mimetype.starts_with(b"application/vnd.oasis.opendocument.spreadsheet")
}
