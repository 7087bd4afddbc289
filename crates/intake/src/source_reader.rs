//! One file from its first byte to its last: digest, what it is packed in, and the sources in it.
//!
//! Every row ends in exactly one place: used in a reading, set aside, or refused, each counted; the counts add up.

use std::ops::ControlFlow;

use plumbline_core::acts::Settings;
use plumbline_core::opened::{Kept, OpenedFile, Stub};
use plumbline_core::reading::{Container, Notice, NoticeCode, Sheet, Source, hexadecimal};
use plumbline_core::report::html::BEGINS;
use sha2::{Digest, Sha256};

use crate::archive::{Archive, ArchiveProblem, EntryProblem};
use crate::container;
use crate::header::HeaderReader;
use crate::table::cut;
use crate::text_reader::{LOOKED_AT, TextReader, promise};
use crate::workbook::{Workbook, WorkbookProblem};

/// Packed bytes that are held: a workbook or an archive must be in memory whole. Half of what a 32-bit page can
/// address is asked for in pieces, so a quarter is where a refusal beats a crash (common practice, no source).
const MOST_PACKED: usize = 1024 * 1024 * 1024;
/// What a person names to have every sheet with a table read.
pub const EVERY_SHEET: &str = "*";

/// Reads one file, piece by piece.
pub struct SourceReader {
    name: String,
    digest: Sha256,
    bytes: u64,
    settings: Settings,
    /// Inside an archive: another archive is not opened.
    packed: bool,
    state: State,
    /// Its bytes, as long as they are worth keeping. Of a workbook or an archive they stand in the state.
    kept: Option<Vec<u8>>,
    /// How many bytes are worth keeping.
    room: usize,
}

/// How a history of this program begins.
const HISTORY: &[u8] = b"plumbline.history/";
/// How a report of this program begins.
const REPORT: &[u8] = BEGINS.as_bytes();
/// As many bytes as tell what a file is, a byte order mark before them.
const BEGINNING: usize = {
    let own = if HISTORY.len() > REPORT.len() { HISTORY.len() } else { REPORT.len() } + 3;
    if own > container::HEAD { own } else { container::HEAD }
};

enum State {
    /// Fewer bytes than tell what it is.
    Beginning(Vec<u8>),
    Text(Box<TextReader>),
    /// A workbook or an archive, kept whole.
    Whole(Vec<u8>),
    TooLarge,
    /// A file of this program that is no table.
    Own,
}

impl SourceReader {
    /// Starts a file. Its name is its base name, or the path inside the chosen folder with `/`.
    pub fn new(name: &str, settings: &Settings) -> SourceReader {
        SourceReader {
            name: name.to_owned(),
            digest: Sha256::new(),
            bytes: 0,
            settings: settings.clone(),
            packed: false,
            state: State::Beginning(Vec::new()),
            kept: None,
            room: 0,
        }
    }

    /// Keeps the file's bytes where they are not more than this; nothing is kept unless asked for.
    #[must_use]
    pub fn keeping(mut self, room: usize) -> SourceReader {
        self.room = room;
        self.kept = Some(Vec::new());
        self
    }

    /// Takes the next bytes of the file, cut anywhere.
    pub fn push(&mut self, bytes: &[u8]) {
        self.digest.update(bytes);
        self.bytes += bytes.len() as u64;
        match &mut self.state {
            State::Beginning(kept) => {
                kept.extend_from_slice(bytes);
                if kept.len() >= BEGINNING {
                    self.begin();
                }
            }
            State::Text(reader) => {
                keep(&mut self.kept, bytes, self.room);
                reader.push(bytes);
            }
            State::Whole(kept) if kept.len() + bytes.len() > MOST_PACKED => self.state = State::TooLarge,
            State::Whole(kept) => kept.extend_from_slice(bytes),
            State::TooLarge | State::Own => {}
        }
    }

    /// Ends the file: one source, or one for each table of an archive, or of a workbook all of whose sheets are read.
    pub fn finish(self) -> Vec<Source> {
        self.end().0
    }

    /// Ends the file and says beside its sources what was opened, with its bytes where they were to be kept and some row
    /// was read. `in_folder`: found by walking a folder, see [`found_in_folder`].
    pub fn finish_opened(self, in_folder: bool) -> (OpenedFile, Vec<Source>) {
        let (name, bytes) = (self.name.clone(), self.bytes);
        let (mut sources, sha256, kept) = self.end();
        if in_folder {
            sources = sources.into_iter().map(found_in_folder).collect();
        }
        let stubs: Option<Vec<Stub>> = sources.iter().map(stub).collect();
        let kept = match (stubs, kept) {
            (Some(stubs), _) => Kept::Stubs(stubs),
            (None, Some(bytes)) => Kept::Bytes(bytes),
            (None, None) => Kept::TooLarge,
        };
        (OpenedFile { name, in_folder, bytes, sha256, kept }, sources)
    }

    /// The sources, the digest, and the bytes where they were kept.
    fn end(mut self) -> (Vec<Source>, String, Option<Vec<u8>>) {
        if matches!(self.state, State::Beginning(_)) {
            self.begin();
        }
        let sha256 = hexadecimal(&self.digest.clone().finalize());
        let state = std::mem::replace(&mut self.state, State::TooLarge);
        let mut kept = self.kept.take();
        let mut sources = match state {
            State::Text(reader) => vec![reader.finish()],
            State::Whole(bytes) => {
                let sources = match container::look(&bytes) {
                    container::Container::Archive if self.packed => {
                        vec![refuse_source(&self.name, NoticeCode::ArchiveInArchive, "")]
                    }
                    container::Container::Archive => self.archive(&bytes, &sha256),
                    _ => self.workbook(&bytes),
                };
                kept = kept.and_then(|_| (bytes.len() <= self.room).then_some(bytes));
                sources
            }
            State::Own => vec![refuse_source(&self.name, NoticeCode::Skipped, "")],
            State::TooLarge | State::Beginning(_) => {
                vec![refuse_source(&self.name, NoticeCode::ArchiveTooLarge, "packed_size")]
            }
        };
        // What came out of an archive has its own.
        for source in sources.iter_mut().filter(|source| source.container.is_none()) {
            source.sha256.clone_from(&sha256);
            source.bytes = self.bytes;
        }
        (sources, sha256, kept)
    }

    fn begin(&mut self) {
        let State::Beginning(kept) = std::mem::replace(&mut self.state, State::TooLarge) else { return };
        self.state = if is_own(&kept) {
            State::Own
        } else if container::needs_whole(&kept) {
            State::Whole(kept)
        } else {
            let source = Source { name: self.name.clone(), ..Source::default() };
            let mut reader = TextReader::new(source, &self.settings, false);
            keep(&mut self.kept, &kept, self.room);
            reader.push(&kept);
            State::Text(Box::new(reader))
        };
    }

    fn workbook(&self, bytes: &[u8]) -> Vec<Source> {
        let refuse = |problem| {
            let (code, found) = workbook_refusal(problem);
            vec![refuse_source(&self.name, code, found)]
        };
        let mut workbook = match Workbook::open(bytes) {
            Ok(workbook) => workbook,
            Err(problem) => return refuse(problem),
        };
        let sheets = match self.look_at_sheets(&mut workbook) {
            Ok(sheets) => sheets,
            Err(problem) => return refuse(problem),
        };
        let told = self.settings.sheet(&self.name);
        if told == Some(EVERY_SHEET) {
            let tables: Vec<usize> = (0..sheets.len())
                .filter(|at| sheets.get(*at).is_some_and(|sheet| sheet.element_columns > 0))
                .collect();
            if !tables.is_empty() {
                return tables
                    .into_iter()
                    .map(|at| {
                        let sheet = sheets.get(at).map_or("", |sheet| sheet.name.as_str());
                        let name = format!("{}/{sheet}", self.name);
                        self.sheet(&mut workbook, &name, &sheets, at)
                    })
                    .collect();
            }
        }
        let told = told.filter(|told| *told != EVERY_SHEET);
        let chosen = match told {
            Some(told) => sheets.iter().position(|sheet| sheet.name == told),
            None => likely(&sheets),
        };
        let Some(chosen) = chosen else {
            let mut source = refuse_source(&self.name, NoticeCode::SheetNotThere, told.unwrap_or_default());
            source.sheets = sheets;
            return vec![source];
        };
        let mut source = self.sheet(&mut workbook, &self.name, &sheets, chosen);
        if told.is_none() && sheets.len() > 1 {
            source.notices.push(Notice {
                line: 0,
                column: 0,
                heading: String::new(),
                code: NoticeCode::OtherSheets,
                found: sheets.get(chosen).map_or_else(String::new, |sheet| cut(&sheet.name)),
                rows: sheets.len() as u64 - 1,
            });
        }
        // What a person chose is their decision; what the program passed over may hold readings.
        for sheet in &mut source.sheets {
            sheet.passed_over = told.is_none() && !sheet.read && sheet.element_columns > 0;
        }
        vec![source]
    }

    /// Every sheet with what its first rows promise.
    fn look_at_sheets(&self, workbook: &mut Workbook<'_>) -> Result<Vec<Sheet>, WorkbookProblem> {
        let headers = HeaderReader::new(&self.settings);
        let listed: Vec<_> = workbook.sheets().to_vec();
        let mut sheets = Vec::with_capacity(listed.len());
        for (at, sheet) in listed.into_iter().enumerate() {
            let mut head: Vec<u8> = Vec::new();
            let written = workbook.write_sheet(at, &mut |piece| {
                head.extend_from_slice(piece);
                if head.len() >= LOOKED_AT { ControlFlow::Break(()) } else { ControlFlow::Continue(()) }
            })?;
            let looked = head.get(..head.len().min(LOOKED_AT)).unwrap_or(&head);
            let found = promise(looked, written.whole, &headers);
            sheets.push(Sheet {
                name: sheet.name,
                hidden: sheet.hidden,
                rows: written.rows,
                columns: written.columns,
                element_columns: found.map_or(0, |found| found.elements as u32),
                read: false,
                passed_over: false,
            });
        }
        Ok(sheets)
    }

    fn sheet(&self, workbook: &mut Workbook<'_>, name: &str, sheets: &[Sheet], at: usize) -> Source {
        let mut sheets = sheets.to_vec();
        if let Some(sheet) = sheets.get_mut(at) {
            sheet.read = true;
        }
        let source = Source { name: name.to_owned(), sheets: sheets.clone(), ..Source::default() };
        let mut reader = TextReader::new(source, &self.settings, true);
        let written = workbook.write_sheet(at, &mut |piece| {
            reader.push(piece);
            ControlFlow::Continue(())
        });
        match written {
            Ok(written) => {
                let mut source = reader.finish();
                if let Some(sheet) = source.sheets.get_mut(at) {
                    (sheet.rows, sheet.columns) = (written.rows, written.columns);
                }
                source
            }
            Err(problem) => {
                let (code, found) = workbook_refusal(problem);
                Source { sheets, ..refuse_source(name, code, found) }
            }
        }
    }

    fn archive(&self, bytes: &[u8], sha256: &str) -> Vec<Source> {
        let packed_in =
            || Some(Container { name: self.name.clone(), sha256: sha256.to_owned(), bytes: self.bytes });
        let whole = |code, found: &str| vec![refuse_source(&self.name, code, found)];
        let archive = match Archive::open(bytes) {
            Ok(archive) => archive,
            Err(ArchiveProblem::Broken) => return whole(NoticeCode::ArchiveBroken, ""),
            Err(ArchiveProblem::TooManyEntries) => {
                return whole(NoticeCode::ArchiveTooLarge, "files");
            }
            Err(ArchiveProblem::TooLarge) => return whole(NoticeCode::ArchiveTooLarge, "archive_size"),
        };
        if archive.entries().is_empty() {
            return whole(NoticeCode::Empty, "");
        }
        let mut sources = Vec::with_capacity(archive.entries().len());
        for (at, entry) in archive.entries().iter().enumerate() {
            let name = format!("{}/{}", self.name, entry.name);
            let mut reader = SourceReader { packed: true, ..SourceReader::new(&name, &self.settings) };
            let unpacked = match entry.problem {
                Some(problem) => Err(problem),
                None => archive.stream(at, &mut |piece| {
                    reader.push(piece);
                    ControlFlow::Continue(())
                }),
            };
            match unpacked {
                Ok(()) => sources.extend(reader.finish().into_iter().map(found_in_folder)),
                Err(problem) => {
                    let (code, found) = entry_refusal(problem);
                    sources.push(refuse_source(&name, code, found));
                }
            }
        }
        for source in &mut sources {
            source.container = packed_in();
        }
        sources
    }
}

/// The sheet that promises most; among equals one that is not hidden, then the first.
fn likely(sheets: &[Sheet]) -> Option<usize> {
    let rank = |at: &usize| {
        sheets.get(*at).map(|sheet| (sheet.element_columns, !sheet.hidden, std::cmp::Reverse(*at)))
    };
    (0..sheets.len()).max_by_key(rank)
}

/// The code of a refusal, and which of its reasons: the catalogue has the words.
fn workbook_refusal(problem: WorkbookProblem) -> (NoticeCode, &'static str) {
    match problem {
        WorkbookProblem::Broken => (NoticeCode::WorkbookBroken, "damaged"),
        WorkbookProblem::NoSheet => (NoticeCode::WorkbookBroken, "no_sheet"),
        WorkbookProblem::Locked | WorkbookProblem::OldFormat => (NoticeCode::WorkbookNotRead, ""),
        WorkbookProblem::TooLarge => (NoticeCode::WorkbookTooLarge, "part_size"),
        WorkbookProblem::PackedTooTight => (NoticeCode::WorkbookTooLarge, "ratio"),
        WorkbookProblem::TooManyCells => (NoticeCode::WorkbookTooLarge, "cells"),
    }
}

/// As for a workbook.
fn entry_refusal(problem: EntryProblem) -> (NoticeCode, &'static str) {
    match problem {
        EntryProblem::Locked => (NoticeCode::EntryNotRead, "password"),
        EntryProblem::MethodUnknown => (NoticeCode::EntryNotRead, "method"),
        EntryProblem::Broken => (NoticeCode::EntryNotRead, "damaged"),
        EntryProblem::TooLarge => (NoticeCode::ArchiveTooLarge, "entry_size"),
        EntryProblem::PackedTooTight => (NoticeCode::ArchiveTooLarge, "ratio"),
        EntryProblem::Nested => (NoticeCode::ArchiveInArchive, ""),
    }
}

/// A source that can't be read at all, or isn't a table: it is listed, with the reason.
pub fn refuse_source(name: &str, code: NoticeCode, found: &str) -> Source {
    let mut source = Source { name: name.to_owned(), problem: Some(code), ..Source::default() };
    source.refusals.push(Notice {
        line: 0,
        column: 0,
        heading: String::new(),
        code,
        found: cut(found),
        rows: 0,
    });
    source
}

/// A file that can't be read at all.
pub fn unreadable(name: &str, in_folder: bool, text: &str) -> (OpenedFile, Vec<Source>) {
    let mut source = refuse_source(name, NoticeCode::Unreadable, text);
    if in_folder {
        source = found_in_folder(source);
    }
    let kept = Kept::Stubs(stub(&source).into_iter().collect());
    (OpenedFile { name: name.to_owned(), in_folder, bytes: 0, sha256: String::new(), kept }, vec![source])
}

/// All that is known of a source of which nothing was read; `None` for any other.
fn stub(source: &Source) -> Option<Stub> {
    let [only] = source.refusals.kept.as_slice() else { return None };
    let stub = Stub {
        name: source.name.clone(),
        sha256: source.sha256.clone(),
        bytes: source.bytes,
        packed: source.container.is_some(),
        code: source.problem?,
        found: only.found.clone(),
    };
    let about_all = (only.line, only.column, only.rows) == (0, 0, 0) && only.heading.is_empty();
    let nothing = source.rows_in == 0
        && source.readings.is_empty()
        && source.notices.kept.is_empty()
        && source.sheets.is_empty()
        && source.preamble.is_empty()
        && source.stated.is_empty()
        && source.preview.is_empty()
        && source.blocks.is_empty()
        && source.encoding.is_empty()
        && source.delimiter.is_none();
    (only.code == stub.code && about_all && nothing).then_some(stub)
}

/// The sources of a file of which nothing was read, made again from what was kept.
pub fn of_stubs(file: &OpenedFile, stubs: &[Stub]) -> Vec<Source> {
    let source = |stub: &Stub| {
        let mut source = refuse_source(&stub.name, stub.code, &stub.found);
        source.sha256.clone_from(&stub.sha256);
        source.bytes = stub.bytes;
        source.container = stub.packed.then(|| Container {
            name: file.name.clone(),
            sha256: file.sha256.clone(),
            bytes: file.bytes,
        });
        source
    };
    stubs.iter().map(source).collect()
}

/// Keeps more bytes, or none at all once they are more than there is room for.
fn keep(kept: &mut Option<Vec<u8>>, bytes: &[u8], room: usize) {
    match kept {
        Some(all) if all.len() + bytes.len() <= room => all.extend_from_slice(bytes),
        _ => *kept = None,
    }
}

/// Names that promise a table, or a workbook that holds one.
const TABLE_ENDINGS: [&str; 10] = ["csv", "tsv", "tab", "txt", "xlsx", "xlsm", "xls", "xlsb", "ods", "zip"];

/// A history or a report says what it is in its first line: it travels on the same stick and is given on its own.
fn is_own(head: &[u8]) -> bool {
    let head = head.strip_prefix(b"\xef\xbb\xbf").unwrap_or(head);
    head.starts_with(HISTORY) || head.starts_with(REPORT)
}

/// A source found by walking a folder: a file that is no table and whose name promised none is only skipped.
#[must_use]
pub fn found_in_folder(source: Source) -> Source {
    let ending = source.name.rsplit_once('.').map_or("", |(_, ending)| ending).to_lowercase();
    if source.problem.is_none() || TABLE_ENDINGS.contains(&ending.as_str()) {
        return source;
    }
    let mut skipped = refuse_source(&source.name, NoticeCode::Skipped, "");
    skipped.sha256 = source.sha256;
    skipped.bytes = source.bytes;
    skipped
}

#[cfg(test)]
mod tests {
    use super::*;

    const TABLE: &[u8] = b"Sample,Pb mg/kg\nS,5\n";

    fn opened(name: &str, bytes: &[u8], room: usize, in_folder: bool) -> (OpenedFile, Vec<Source>) {
        let mut reader = SourceReader::new(name, &Settings::default()).keeping(room);
        for piece in bytes.chunks(7) {
            reader.push(piece);
        }
        reader.finish_opened(in_folder)
    }

    #[test]
    fn bytes_are_kept_as_long_as_there_is_room() {
        let long = [TABLE, &b"S,6\n".repeat(500)].concat();
        for bytes in [TABLE, &long] {
            let (file, sources) = opened("a.csv", bytes, bytes.len(), false);
            assert_eq!(file.kept, Kept::Bytes(bytes.to_vec()));
            assert_eq!((file.bytes, file.sha256.as_str()), (bytes.len() as u64, sources[0].sha256.as_str()));
            assert_eq!(opened("a.csv", bytes, bytes.len() - 1, false).0.kept, Kept::TooLarge);
        }
        let mut nothing_asked = SourceReader::new("a.csv", &Settings::default());
        nothing_asked.push(TABLE);
        assert_eq!(nothing_asked.finish_opened(false).0.kept, Kept::TooLarge);
    }

    #[test]
    fn a_file_of_which_nothing_was_read_is_made_again_from_what_is_known_of_it() {
        let picture = [b"\x89PNG\r\n\x1a\n".as_slice(), &[0, 1, 2, 200, 255].repeat(100)].concat();
        let report = [REPORT, b"<html lang=\"en\">Sample,Pb mg/kg\nS,5\n"].concat();
        let cases: [(&str, &[u8], bool); 6] = [
            ("photo.png", &picture, true),
            ("photo.png", &picture, false),
            ("empty.csv", b"", false),
            ("broken.zip", b"PK\x03\x04 nothing", false),
            ("report.html", &report, false),
            ("history.txt", b"plumbline.history/1\n", true),
        ];
        for (name, bytes, in_folder) in cases {
            let (file, sources) = opened(name, bytes, usize::MAX, in_folder);
            let Kept::Stubs(stubs) = &file.kept else { panic!("{name} is kept") };
            assert_eq!(format!("{:?}", of_stubs(&file, stubs)), format!("{sources:?}"), "{name}");
        }
        let (file, sources) = unreadable("gone.csv", false, "it is gone");
        let Kept::Stubs(stubs) = &file.kept else { panic!("it is kept") };
        assert_eq!(format!("{:?}", of_stubs(&file, stubs)), format!("{sources:?}"));
    }

    #[test]
    fn a_text_without_a_table_is_kept_because_its_rows_are_counted() {
        let (file, _) = opened("notes.txt", b"nothing\nof use\n", usize::MAX, false);
        assert!(matches!(file.kept, Kept::Bytes(_)));
    }

    #[test]
    fn a_report_is_no_table() {
        let report = [REPORT, b"\nSample,Pb mg/kg\nS,5\n"].concat();
        for bytes in [report.clone(), [b"\xef\xbb\xbf".as_slice(), &report].concat()] {
            let (_, sources) = opened("report.csv", &bytes, 0, false);
            assert_eq!((sources.len(), sources[0].problem), (1, Some(NoticeCode::Skipped)));
        }
    }
}
