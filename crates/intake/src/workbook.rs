//! Workbooks (XLSX and `OpenDocument` spreadsheets): a sheet becomes delimited text that keeps every place.
//!
//! A sheet is written as comma-separated UTF-8 in which line number is sheet row and cell number is sheet column, so
//! that whatever is said of a line is found again in the sheet. What a cell shows and not only what it stores is
//! written where the two differ in meaning: a percentage has its sign, a date is a date.
//!
//! The XML is read by quick-xml, a piece at a time, and not by a whole-workbook crate. calamine 0.38 was tried: it
//! ends the program on a shared-string count that the file states and no memory can hold, loses a whole sheet over
//! one `#SPILL!`, and holds every `OpenDocument` sheet unpacked with its repeats filled in.

mod cell_text;
mod number_format;
mod ods;
mod sheet_text;
mod xlsx;
mod xml;

use std::ops::ControlFlow;

use crate::unpacking::{self, Directory, Refusal};

/// Unpacked bytes of one part, as much as a page can well hold once. Measured with 200 000 random numbers, an XLSX cell
/// takes 47 bytes and an `OpenDocument` cell 175, so this is 5.6 and 1.5 million cells.
pub const LARGEST_PART: u64 = 256 * 1024 * 1024;
/// Unpacked bytes of a part that only describes others: sheet lists and cell formats are kilobytes (common practice,
/// no source).
pub const LARGEST_SMALL_PART: u64 = 16 * 1024 * 1024;
/// Cells of one sheet, counting the empty ones that a line must have before its last; they
/// bound the text that a small file can grow to (common practice, no source).
pub const MOST_CELLS: u64 = 20_000_000;
/// Rows a sheet can have in the programs that write both formats (common practice, no source).
pub const MOST_ROWS: u32 = 1_048_576;
/// Columns likewise.
pub const MOST_COLUMNS: u32 = 16_384;

/// One sheet of cells.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// Its name as the tab shows it.
    pub name: String,
    /// Hidden from the one who opens the workbook.
    pub hidden: bool,
}

/// Why a workbook or a sheet is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WorkbookProblem {
    /// Damaged, or not what it says it is.
    Broken,
    /// Behind a password.
    Locked,
    /// `.xls` or `.xlsb`: to be saved as `.xlsx` or CSV.
    OldFormat,
    /// A part unpacks to more than [`LARGEST_PART`].
    TooLarge,
    /// A part unpacks to far more than cells would.
    PackedTooTight,
    /// More than [`MOST_CELLS`], or a cell beyond [`MOST_ROWS`] or [`MOST_COLUMNS`].
    TooManyCells,
    /// No sheet of cells in it.
    NoSheet,
}

impl From<Refusal> for WorkbookProblem {
    fn from(refusal: Refusal) -> WorkbookProblem {
        match refusal {
            Refusal::Locked => WorkbookProblem::Locked,
            Refusal::TooLarge => WorkbookProblem::TooLarge,
            Refusal::PackedTooTight => WorkbookProblem::PackedTooTight,
            Refusal::Broken | Refusal::MethodUnknown => WorkbookProblem::Broken,
        }
    }
}

/// What was written of a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub struct Written {
    /// Lines up to the last row that holds anything.
    pub rows: u32,
    /// Cells of the longest line.
    pub columns: u32,
    /// False where the sink broke off before the end.
    pub whole: bool,
}

/// Takes a sheet's text in pieces, and may break off.
pub type Sink<'s> = dyn FnMut(&[u8]) -> ControlFlow<()> + 's;

/// A workbook over bytes in memory.
pub struct Workbook<'a> {
    sheets: Vec<Sheet>,
    kind: Kind<'a>,
}

enum Kind<'a> {
    Xlsx(xlsx::Xlsx<'a>),
    Ods(ods::Ods),
}

impl<'a> Workbook<'a> {
    /// Reads what is needed before any sheet: the list of sheets, shared strings, cell formats.
    ///
    /// # Errors
    /// [`WorkbookProblem`] where no sheet can be read.
    pub fn open(bytes: &'a [u8]) -> Result<Workbook<'a>, WorkbookProblem> {
        if !bytes.starts_with(b"PK") {
            return Err(without_zip(bytes));
        }
        let zip = Directory::read(bytes, unpacking::MOST_PARTS).map_err(|_| WorkbookProblem::Broken)?;
        let (sheets, kind) = if zip.find("mimetype").is_some() && zip.find("content.xml").is_some() {
            let (sheets, ods) = ods::Ods::open(&zip)?;
            (sheets, Kind::Ods(ods))
        } else {
            let (sheets, xlsx) = xlsx::Xlsx::open(zip)?;
            (sheets, Kind::Xlsx(xlsx))
        };
        if sheets.is_empty() { Err(WorkbookProblem::NoSheet) } else { Ok(Workbook { sheets, kind }) }
    }

    /// The sheets in the order of their tabs; charts and dialogues are none.
    pub fn sheets(&self) -> &[Sheet] {
        &self.sheets
    }

    /// Writes a sheet as comma-separated UTF-8: one line for each row, `\n` after each, quotes only where a cell
    /// needs them, a line break inside a cell as a space. To look at the beginning of a sheet, break off: a later
    /// call starts again.
    ///
    /// # Errors
    /// [`WorkbookProblem`]. Damage may show only after pieces were written: what was made of them is then void.
    pub fn write_sheet(&mut self, index: usize, sink: &mut Sink<'_>) -> Result<Written, WorkbookProblem> {
        match &mut self.kind {
            Kind::Xlsx(xlsx) => xlsx.write_sheet(index, sink),
            Kind::Ods(ods) => ods.write_sheet(index, sink),
        }
    }
}

/// An OLE compound file is an old workbook, or a new one encrypted: then it has a stream of this name in UTF-16
/// ([MS-OFFCRYPTO] 2.3.4.4).
fn without_zip(bytes: &[u8]) -> WorkbookProblem {
    if !bytes.starts_with(b"\xD0\xCF\x11\xE0") {
        return WorkbookProblem::Broken;
    }
    let name: Vec<u8> = "EncryptedPackage".encode_utf16().flat_map(u16::to_le_bytes).collect();
    if memchr::memmem::find(bytes, &name).is_some() {
        WorkbookProblem::Locked
    } else {
        WorkbookProblem::OldFormat
    }
}

/// How reading a sheet ends before its end.
enum Stop {
    Problem(WorkbookProblem),
    Enough,
}

impl From<WorkbookProblem> for Stop {
    fn from(problem: WorkbookProblem) -> Stop {
        Stop::Problem(problem)
    }
}

#[cfg(test)]
mod tests;
