//! One source from its first byte to its last: digest, header, rows, fates.
//!
//! Every row ends in exactly one place: used in a reading, set aside, or refused, each counted; the counts add up.

use std::borrow::Cow;

use plumbline_core::acts::{DetectionInError, Settings};
use plumbline_core::material::MaterialClass;
use plumbline_core::quantity::{
    DecimalMark, LARGEST_SIGMA_UNITS, MassFraction, Number, Rounding, Sigma, SigmaMultiple, Unit,
};
use plumbline_core::reading::{
    Block, Cell, CellState, ColumnMeaning, ColumnRole, Evidence, Identity, Notice, NoticeCode, SetAside,
    Source, Written, hexadecimal,
};
use plumbline_core::substance::Element;
use plumbline_core::text_pool::TextId;
use sha2::{Digest, Sha256};

use crate::cell::{self, CellText};
use crate::heading;
use crate::records::{Piece, Record, Splitter};

/// Bytes that are looked at before a header must have been found.
const LOOKED_AT: usize = 256 * 1024;
/// Rows that are looked at for a header.
const HEADER_ROWS: usize = 100;
/// Delimiters that are tried, the likelier first where they find equally much.
const DELIMITERS: [u8; 4] = [b',', b';', b'\t', b'|'];
/// Longest text of a cell that a notice repeats.
const LONGEST_FOUND: usize = 60;
/// A million mg/kg: the whole.
const WHOLE: MassFraction = MassFraction::from_mg_per_kg(1_000_000);

/// What a person set that changes how a source is read.
#[derive(Clone, Copy, Debug, Default)]
struct ReadingRules {
    unit: Option<Unit>,
    mark: Option<DecimalMark>,
    detection: DetectionInError,
    multiple: Option<SigmaMultiple>,
}

/// Reads one source, piece by piece.
pub struct SourceReader {
    digest: Sha256,
    bytes: u64,
    rules: ReadingRules,
    state: State,
    table: Table,
}

enum State {
    Looking(Vec<u8>),
    Reading(Box<Splitter>),
    Refused,
}

/// The source being filled and the plan of the block at hand.
struct Table {
    source: Source,
    plan: Plan,
    headings: Vec<String>,
    may_be_unit_row: bool,
}

#[derive(Default)]
struct Plan {
    elements: Vec<ElementPlan>,
    identities: Vec<(usize, Identity)>,
    unit_column: Option<usize>,
    mark: Option<DecimalMark>,
    columns: usize,
    /// Once-a-block notices: code, its place in `Source::notices`, the last line that was counted.
    counted: Vec<(NoticeCode, usize, u32)>,
}

struct ElementPlan {
    index: usize,
    value: usize,
    unit: Option<Unit>,
    /// The heading states a unit that is not known: no other source of a unit may stand in for it.
    unit_foreign: bool,
    /// The text kept last for this column: `<LOD` mostly follows `<LOD`.
    last_kept: TextId,
    error: Option<(usize, Option<Unit>, Option<SigmaMultiple>)>,
    limit: Option<(usize, Option<Unit>)>,
}

impl SourceReader {
    /// Starts a source. Its name is its base name, or the path inside the chosen folder with `/`.
    pub fn new(name: &str, settings: &Settings) -> SourceReader {
        SourceReader {
            digest: Sha256::new(),
            bytes: 0,
            rules: ReadingRules {
                unit: settings.unit_of_measure(name),
                mark: settings.decimal_mark(name),
                detection: settings.detection_in_error(name),
                multiple: settings.sigma_multiple(name),
            },
            state: State::Looking(Vec::new()),
            table: Table {
                source: Source { name: name.to_owned(), ..Source::default() },
                plan: Plan::default(),
                headings: Vec::new(),
                may_be_unit_row: false,
            },
        }
    }

    /// Takes the next bytes of the file, cut anywhere.
    pub fn push(&mut self, bytes: &[u8]) {
        self.digest.update(bytes);
        self.bytes += bytes.len() as u64;
        match &mut self.state {
            State::Looking(kept) => {
                kept.extend_from_slice(bytes);
                if kept.len() >= LOOKED_AT {
                    self.begin();
                }
            }
            State::Reading(splitter) => {
                let (table, rules) = (&mut self.table, self.rules);
                splitter.push(bytes, &mut |piece| table.take(piece, rules));
            }
            State::Refused => {}
        }
    }

    /// Ends the file.
    pub fn finish(mut self) -> Source {
        if matches!(self.state, State::Looking(_)) {
            self.begin();
        }
        if let State::Reading(splitter) = &mut self.state {
            let (table, rules) = (&mut self.table, self.rules);
            splitter.finish(&mut |piece| table.take(piece, rules));
        }
        self.table.close();
        let mut source = self.table.source;
        source.sha256 = hexadecimal(&self.digest.finalize());
        source.bytes = self.bytes;
        source
    }

    fn begin(&mut self) {
        let State::Looking(kept) = std::mem::replace(&mut self.state, State::Refused) else { return };
        let text = kept.strip_prefix(b"\xEF\xBB\xBF").unwrap_or(&kept);
        if let Some(problem) = no_text(text) {
            self.table.refuse_all(problem);
            return;
        }
        let Some(mut found) = find_header(text, kept.len() < LOOKED_AT) else {
            // Still every row is counted and refused by one entry, so that the counts add up.
            let mut splitter = Splitter::new(b',');
            let (table, rules) = (&mut self.table, self.rules);
            table.source.problem = Some(NoticeCode::NoElementColumn);
            splitter.push(text, &mut |piece| table.take(piece, rules));
            self.state = State::Reading(Box::new(splitter));
            return;
        };
        self.table.source.delimiter = Some(found.delimiter);
        unit_column_by_content(text, &mut found);
        let mut splitter = Splitter::new(found.delimiter);
        let (table, rules) = (&mut self.table, self.rules);
        let sample = sample_marks(text, &found);
        let header_line = found.line;
        splitter.push(text, &mut |piece| match piece {
            Piece::Record(record) if record.line < header_line => table.preamble(&record),
            Piece::Record(record) if record.line == header_line => {
                table.begin_block(found.columns.clone(), header_line, sample, rules);
            }
            Piece::Blank(line) | Piece::QuoteLeftOpen(line) | Piece::LineTooLong(line)
                if line < header_line => {}
            other => table.take(other, rules),
        });
        self.state = State::Reading(Box::new(splitter));
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

/// Names that promise a table, or a workbook that holds one.
const TABLE_ENDINGS: [&str; 8] = ["csv", "tsv", "tab", "txt", "xlsx", "xls", "ods", "zip"];

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

/// Why bytes are no text table, where that shows at once.
fn no_text(bytes: &[u8]) -> Option<NoticeCode> {
    if bytes.iter().all(u8::is_ascii_whitespace) {
        return Some(NoticeCode::Empty);
    }
    if bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"\xD0\xCF\x11\xE0") {
        return Some(NoticeCode::Workbook);
    }
    if bytes.starts_with(b"\xFF\xFE") || bytes.starts_with(b"\xFE\xFF") {
        return Some(NoticeCode::Utf16);
    }
    let head = bytes.get(..bytes.len().min(64 * 1024)).unwrap_or(bytes);
    let nul = memchr::memchr_iter(0, head).count();
    let control =
        head.iter().filter(|byte| **byte < 0x20 && !matches!(byte, b'\t' | b'\n' | b'\r' | 0x0C)).count();
    // A stray control byte is a broken cell; a file with many of them is no text.
    (nul > 0 && nul * 200 > head.len() || control * 20 > head.len()).then_some(NoticeCode::NotText)
}

struct FoundHeader {
    delimiter: u8,
    line: u32,
    columns: Vec<ColumnMeaning>,
}

/// The delimiter and row that give the most element columns.
fn find_header(text: &[u8], whole: bool) -> Option<FoundHeader> {
    let mut best: Option<(usize, FoundHeader)> = None;
    for delimiter in DELIMITERS {
        let mut splitter = Splitter::new(delimiter);
        let mut rows = 0;
        let mut look = |piece: Piece<'_>| {
            let Piece::Record(record) = piece else { return };
            rows += 1;
            if rows > HEADER_ROWS || holds_measurements(&record) {
                return;
            }
            let headings: Vec<String> =
                record.cells().map(|cell| String::from_utf8_lossy(cell).trim().to_owned()).collect();
            let columns = heading::meanings(&headings);
            let found = heading::element_columns(&columns);
            // A sentence may hold an element's name; a head with nothing but names needs a number below it.
            if heading::only_bare_names(&columns)
                && !measurements_below(text, delimiter, record.line, &columns)
            {
                return;
            }
            if found > best.as_ref().map_or(0, |(most, _)| *most) {
                best = Some((found, FoundHeader { delimiter, line: record.line, columns }));
            }
        };
        // Cut at the last whole line unless the file ends here: a torn header is no header.
        splitter.push(text, &mut look);
        if whole {
            splitter.finish(&mut look);
        }
    }
    best.map(|(_, found)| found)
}

/// True where a row after `line` has a measurement in a column of an element.
fn measurements_below(text: &[u8], delimiter: u8, line: u32, columns: &[ColumnMeaning]) -> bool {
    let mut any = false;
    let mut splitter = Splitter::new(delimiter);
    let mut look = |piece: Piece<'_>| {
        if let Piece::Record(record) = piece
            && record.line > line
        {
            any |= columns.iter().any(|column| {
                matches!(column.role, ColumnRole::Value { .. })
                    && is_measurement(record.cell(column.column as usize - 1))
            });
        }
    };
    splitter.push(text, &mut look);
    splitter.finish(&mut look);
    any
}

fn is_measurement(cell: &[u8]) -> bool {
    !matches!(
        cell::read(cell, Some(DecimalMark::Point)),
        CellText::Blank | CellText::NotMeasured | CellText::Unreadable
    )
}

/// True where a row has a number or a censored cell, which no header has: a row `S1, Pb, 12` of a long table is not
/// a header for lead.
fn holds_measurements(record: &Record<'_>) -> bool {
    record.cells().any(is_measurement)
}

/// A column headed `Unit` is the unit of measure where its first cells are units, and the physical unit where not.
fn unit_column_by_content(text: &[u8], found: &mut FoundHeader) {
    let (delimiter, line) = (found.delimiter, found.line);
    let Some(column) =
        found.columns.iter_mut().find(|column| column.role == ColumnRole::Identity(Identity::Unit))
    else {
        return;
    };
    let at = column.column as usize - 1;
    let (mut units, mut others) = (0_u32, 0_u32);
    let mut splitter = Splitter::new(delimiter);
    let mut look = |piece: Piece<'_>| {
        if let Piece::Record(record) = piece
            && record.line > line
            && let Ok(cell) = std::str::from_utf8(record.cell(at))
            && !cell.trim().is_empty()
        {
            if Unit::from_word(cell).is_some() { units += 1 } else { others += 1 }
        }
    };
    splitter.push(text, &mut look);
    splitter.finish(&mut look);
    if units > 0 && others == 0 {
        column.role = ColumnRole::UnitOfMeasure;
        column.evidence = Evidence::HoldsUnits;
    }
}

/// The decimal mark the first rows show, where they show only one.
fn sample_marks(text: &[u8], found: &FoundHeader) -> Option<DecimalMark> {
    let measured: Vec<usize> = found
        .columns
        .iter()
        .filter(|column| {
            matches!(
                column.role,
                ColumnRole::Value { .. } | ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }
            )
        })
        .map(|column| column.column as usize - 1)
        .collect();
    let (mut points, mut commas) = (0_u32, 0_u32);
    let mut splitter = Splitter::new(found.delimiter);
    let mut look = |piece: Piece<'_>| {
        let Piece::Record(record) = piece else { return };
        if record.line > found.line {
            for at in &measured {
                match cell::mark_evidence(record.cell(*at)) {
                    Some(DecimalMark::Point) => points += 1,
                    Some(DecimalMark::Comma) => commas += 1,
                    None => {}
                }
            }
        }
    };
    splitter.push(text, &mut look);
    splitter.finish(&mut look);
    match (points, commas) {
        (1.., 0) => Some(DecimalMark::Point),
        (0, 1..) => Some(DecimalMark::Comma),
        // With commas between cells, a point inside one is a decimal point.
        (0, 0) if found.delimiter == b',' => Some(DecimalMark::Point),
        _ => None,
    }
}

fn cut(text: &str) -> String {
    cut_short(text).into_owned()
}

fn cut_short(text: &str) -> Cow<'_, str> {
    match text.char_indices().nth(LONGEST_FOUND) {
        Some((end, _)) if text.len() > LONGEST_FOUND => {
            Cow::Owned(format!("{}…", text.get(..end).unwrap_or(text)))
        }
        _ => Cow::Borrowed(text),
    }
}

impl Table {
    fn refuse_all(&mut self, code: NoticeCode) {
        self.source.problem = Some(code);
        self.refuse(0, 0, code, "", 0);
    }

    fn refuse(&mut self, line: u32, column: u32, code: NoticeCode, found: &str, rows: u64) {
        self.source.rows_refused += rows;
        let heading = self.heading_of(column);
        self.source.refusals.push(Notice { line, column, heading, code, found: cut(found), rows });
    }

    fn heading_of(&self, column: u32) -> String {
        (column as usize).checked_sub(1).and_then(|at| self.headings.get(at)).cloned().unwrap_or_default()
    }

    fn notice(&mut self, line: u32, column: u32, code: NoticeCode, found: &[u8]) {
        let heading = self.heading_of(column);
        let found = cut(&String::from_utf8_lossy(found));
        self.source.notices.push(Notice { line, column, heading, code, found, rows: 1 });
    }

    /// A notice that is said once for the block, at the first place it appears, and counts the rows it speaks for.
    fn count(&mut self, line: u32, column: u32, code: NoticeCode, found: &str) {
        if let Some((_, index, last)) = self.plan.counted.iter_mut().find(|(known, ..)| *known == code) {
            if *last != line {
                *last = line;
                if let Some(notice) = self.source.notices.kept.get_mut(*index) {
                    notice.rows += 1;
                }
            }
            return;
        }
        let index = self.source.notices.kept.len();
        self.plan.counted.push((code, index, line));
        self.notice(line, column, code, found.as_bytes());
    }

    fn preamble(&mut self, record: &Record<'_>) {
        let text: Vec<_> =
            record.cells().map(|cell| String::from_utf8_lossy(cell).trim().to_owned()).collect();
        self.source.preamble.push(cut(text.join(" ").trim()));
    }

    fn begin_block(
        &mut self,
        columns: Vec<ColumnMeaning>,
        line: u32,
        seen_mark: Option<DecimalMark>,
        rules: ReadingRules,
    ) {
        self.headings = columns.iter().map(|column| column.heading.clone()).collect();
        self.may_be_unit_row = true;
        let first = self.source.blocks.is_empty();
        if first && !self.source.preamble.is_empty() {
            let lines = self.source.preamble.len();
            self.notice(1, 0, NoticeCode::Preamble, lines.to_string().as_bytes());
        }
        for column in &columns {
            let code = match column.evidence {
                Evidence::UnitNotUnderstood => NoticeCode::UnitNotKnown,
                Evidence::WordsNotUnderstood => NoticeCode::HeadingNotUnderstood,
                Evidence::AlreadyTaken if is_element_heading(&column.heading) => NoticeCode::ColumnTwice,
                _ => continue,
            };
            self.notice(line, column.column, code, column.heading.as_bytes());
        }
        self.source.blocks.push(Block {
            header_line: line,
            first_reading: self.source.readings.len(),
            columns,
            mark: rules.mark.or(seen_mark),
            set_unit: rules.unit,
            limit_in_error_column: rules.detection == DetectionInError::Limit,
        });
        self.plan_block();
    }

    fn plan_block(&mut self) {
        let Some(block) = self.source.blocks.last() else { return };
        let mut plan = Plan { mark: block.mark, columns: block.columns.len(), ..Plan::default() };
        let columns = block.columns.clone();
        let place = |column: &ColumnMeaning| column.column as usize - 1;
        for column in &columns {
            match column.role {
                ColumnRole::Value { element, unit } => {
                    let error = columns.iter().find_map(|other| match other.role {
                        ColumnRole::Error { element: of, unit, multiple } if of == element => {
                            Some((place(other), unit, multiple))
                        }
                        _ => None,
                    });
                    let limit = columns.iter().find_map(|other| match other.role {
                        ColumnRole::DetectionLimit { element: of, unit } if of == element => {
                            Some((place(other), unit))
                        }
                        _ => None,
                    });
                    let index = self.element_index(element);
                    plan.elements.push(ElementPlan {
                        index,
                        value: place(column),
                        unit,
                        unit_foreign: column.evidence == Evidence::UnitNotUnderstood,
                        last_kept: TextId::NONE,
                        error,
                        limit,
                    });
                }
                ColumnRole::Identity(identity) => plan.identities.push((place(column), identity)),
                ColumnRole::UnitOfMeasure => plan.unit_column = Some(place(column)),
                _ => {}
            }
        }
        // A column inserted in front of another moves it: places are looked up again.
        for planned in &mut plan.elements {
            let element = columns.get(planned.value).and_then(|column| match column.role {
                ColumnRole::Value { element, .. } => Some(element),
                _ => None,
            });
            if let Some(element) = element {
                planned.index = self.element_index(element);
            }
        }
        self.plan = plan;
    }

    fn element_index(&mut self, element: Element) -> usize {
        self.source.readings.element_index(element)
    }

    /// Gives one piece its fate.
    fn take(&mut self, piece: Piece<'_>, rules: ReadingRules) {
        self.source.rows_in += 1;
        match piece {
            Piece::Blank(_) => self.source.set_aside[SetAside::Blank as usize] += 1,
            Piece::Record(record) if record.is_blank() => {
                self.source.set_aside[SetAside::Blank as usize] += 1;
            }
            // One entry, written when the file ends, speaks for all of them.
            _ if self.source.problem == Some(NoticeCode::NoElementColumn) => self.source.rows_refused += 1,
            Piece::QuoteLeftOpen(line) => self.refuse(line, 0, NoticeCode::QuoteLeftOpen, "", 1),
            Piece::LineTooLong(line) => self.refuse(line, 0, NoticeCode::LineTooLong, "", 1),
            Piece::Record(record) => self.row(&record, rules),
        }
    }

    fn row(&mut self, record: &Record<'_>, rules: ReadingRules) {
        if self.may_be_unit_row {
            self.may_be_unit_row = false;
            if self.take_unit_row(record) {
                self.source.set_aside[SetAside::UnitRow as usize] += 1;
                return;
            }
        }
        if self.is_heading(record) {
            self.source.set_aside[SetAside::Heading as usize] += 1;
            return;
        }
        if self.begins_new_block(record, rules) {
            self.source.set_aside[SetAside::Heading as usize] += 1;
            return;
        }
        if record.len() > self.plan.columns
            && let Some(extra) =
                (self.plan.columns..record.len()).find(|at| !record.cell(*at).trim_ascii().is_empty())
        {
            let found = String::from_utf8_lossy(record.cell(extra)).into_owned();
            self.refuse(record.line, extra as u32 + 1, NoticeCode::RowTooLong, &found, 1);
            return;
        }
        if self.nothing_usable(record) {
            self.refuse(record.line, 0, NoticeCode::NothingUsable, "", 1);
            return;
        }
        for (column, _) in &self.plan.identities {
            if std::str::from_utf8(record.cell(*column)).is_err() {
                let found = String::from_utf8_lossy(record.cell(*column)).into_owned();
                let column = *column as u32 + 1;
                self.refuse(record.line, column, NoticeCode::NotUtf8, &found, 1);
                return;
            }
        }
        if record.len() < self.plan.columns {
            self.count(record.line, 0, NoticeCode::RowShort, &record.len().to_string());
        }
        self.reading(record, rules);
    }

    fn take_unit_row(&mut self, record: &Record<'_>) -> bool {
        let Some(block) = self.source.blocks.last_mut() else { return false };
        let cells: Vec<&str> =
            record.cells().map(|cell| std::str::from_utf8(cell).unwrap_or("\u{FFFD}")).collect();
        let Some(units) = heading::unit_row(&block.columns, &cells) else { return false };
        heading::apply_unit_row(&mut block.columns, &units);
        self.plan_block();
        true
    }

    fn is_heading(&self, record: &Record<'_>) -> bool {
        // The first cell settles it for nearly every row.
        record.len() >= self.headings.len()
            && self
                .headings
                .iter()
                .enumerate()
                .all(|(at, heading)| record.cell(at).trim_ascii() == heading.trim().as_bytes())
    }

    /// A header with other columns further down starts a new block with its own meaning.
    fn begins_new_block(&mut self, record: &Record<'_>, rules: ReadingRules) -> bool {
        let looks_like_text = self.plan.elements.iter().take(3).all(|planned| {
            let cell = record.cell(planned.value).trim_ascii();
            cell.first().is_some_and(u8::is_ascii_alphabetic)
        });
        if !looks_like_text || holds_measurements(record) {
            return false;
        }
        let headings: Vec<String> =
            record.cells().map(|cell| String::from_utf8_lossy(cell).trim().to_owned()).collect();
        let columns = heading::meanings(&headings);
        if heading::element_columns(&columns) < 2.min(self.plan.elements.len()) {
            return false;
        }
        let mark = self.plan.mark;
        self.begin_block(columns, record.line, mark, rules);
        self.notice(record.line, 0, NoticeCode::NewHeader, b"");
        true
    }

    fn nothing_usable(&self, record: &Record<'_>) -> bool {
        let used = |at: usize| !record.cell(at).trim_ascii().is_empty();
        !self.plan.identities.iter().any(|(at, _)| used(*at))
            && !self.plan.elements.iter().any(|planned| {
                used(planned.value)
                    || planned.error.is_some_and(|(at, ..)| used(at))
                    || planned.limit.is_some_and(|(at, _)| used(at))
            })
    }

    fn reading(&mut self, record: &Record<'_>, rules: ReadingRules) {
        self.source.readings.begin(record.line);
        for at in 0..self.plan.identities.len() {
            let Some((column, identity)) = self.plan.identities.get(at).copied() else { continue };
            let text = std::str::from_utf8(record.cell(column)).unwrap_or("").trim();
            self.source.readings.set_identity(identity, text);
        }
        let row_unit = self.row_unit(record);
        for at in 0..self.plan.elements.len() {
            self.element_cell(record, at, row_unit, rules);
        }
    }

    /// The unit the row's own unit column states.
    fn row_unit(&mut self, record: &Record<'_>) -> Option<Unit> {
        let column = self.plan.unit_column?;
        let text = std::str::from_utf8(record.cell(column)).unwrap_or("").trim();
        let unit = Unit::from_word(text);
        if unit.is_none() && !text.is_empty() {
            self.notice(record.line, column as u32 + 1, NoticeCode::UnitNotKnown, text.as_bytes());
        }
        unit
    }

    fn element_cell(&mut self, record: &Record<'_>, at: usize, row_unit: Option<Unit>, rules: ReadingRules) {
        let Some(planned) = self.plan.elements.get(at) else { return };
        let (index, value_column) = (planned.index, planned.value);
        let (error, limit) = (planned.error, planned.limit);
        let (heading_unit, foreign) = (planned.unit, planned.unit_foreign);
        let column_unit = if foreign { None } else { heading_unit.or(row_unit).or(rules.unit) };
        let remade = heading_unit.or(if self.plan.unit_column.is_none() { rules.unit } else { None });
        let mark = self.plan.mark;
        let raw = record.cell(value_column);
        let column = value_column as u32 + 1;
        let line = record.line;

        let mut written = Written::Nothing;
        let mut cell = Cell { state: CellState::Blank, ..Cell::NO_COLUMN };
        match cell::read(raw, mark) {
            CellText::Blank => {}
            CellText::NotMeasured => written = self.keep(at, raw),
            CellText::Unreadable => {
                cell.state = CellState::Text;
                written = self.keep(at, raw);
                self.notice(line, column, NoticeCode::CellNotUnderstood, raw);
            }
            CellText::MarkUnclear => {
                cell.state = CellState::Text;
                written = self.keep(at, raw);
                self.notice(line, column, NoticeCode::MarkUnclear, raw);
            }
            CellText::Number(number, own_unit) => {
                match (own_unit.or(column_unit), number) {
                    (None, _) => {
                        cell.state = CellState::UnitUnknown;
                        written = self.keep(at, raw);
                        if !foreign {
                            self.count(
                                line,
                                column,
                                NoticeCode::UnitNotStated,
                                &String::from_utf8_lossy(raw),
                            );
                        }
                    }
                    (Some(unit), number) => {
                        written = if own_unit.is_none() && remakes_exactly(&number, remade) {
                            Written::Plain(number.decimals)
                        } else {
                            self.keep(at, raw)
                        };
                        if let Some(value) = number.to_mass_fraction(unit, Rounding::Nearest) {
                            cell.state = CellState::Number;
                            cell.value = value;
                            if value > WHOLE {
                                self.notice(line, column, NoticeCode::MoreThanWhole, raw);
                            }
                        } else {
                            cell.state = CellState::Text;
                            written = self.keep(at, raw);
                            self.notice(line, column, NoticeCode::NumberOutOfRange, raw);
                        }
                    }
                }
                if cell.state == CellState::Number {
                    cell.printed_error = self.printed_error(record, error, own_unit.or(column_unit), rules);
                }
            }
            CellText::Below(number, own_unit) | CellText::Above(number, own_unit) => {
                let above = raw.trim_ascii().first() == Some(&b'>');
                written = self.keep(at, raw);
                let bound =
                    own_unit.or(column_unit).map(|unit| number.to_mass_fraction(unit, Rounding::Nearest));
                match bound {
                    None => {
                        cell.state = CellState::UnitUnknown;
                        if !foreign {
                            self.count(
                                line,
                                column,
                                NoticeCode::UnitNotStated,
                                &String::from_utf8_lossy(raw),
                            );
                        }
                    }
                    Some(Some(value)) if value > MassFraction::ZERO => {
                        cell.state = if above { CellState::AboveRange } else { CellState::BelowDetection };
                        cell.value = value;
                    }
                    Some(_) => {
                        cell.state = CellState::Text;
                        self.notice(line, column, NoticeCode::NumberOutOfRange, raw);
                    }
                }
            }
            CellText::NotDetected => {
                written = self.keep(at, raw);
                cell.state = CellState::NotDetected;
                if let Some(limit) = self.limit_of_non_detect(record, error, limit, column_unit, rules) {
                    cell.state = CellState::BelowDetection;
                    cell.value = limit;
                }
            }
        }
        if cell.state == CellState::Number {
            cell.detection_limit = self.limit_column(record, limit, column_unit);
        }
        self.source.readings.push_cell(index, cell, written);
    }

    fn keep(&mut self, at: usize, raw: &[u8]) -> Written {
        let text = String::from_utf8_lossy(raw.trim_ascii());
        let last = self.plan.elements.get(at).map_or(TextId::NONE, |planned| planned.last_kept);
        let id = self.source.readings.pool.intern_near(&cut_short(&text), last);
        if let Some(planned) = self.plan.elements.get_mut(at) {
            planned.last_kept = id;
        }
        Written::Text(id)
    }

    fn printed_error(
        &mut self,
        record: &Record<'_>,
        error: Option<(usize, Option<Unit>, Option<SigmaMultiple>)>,
        value_unit: Option<Unit>,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        let (at, stated_unit, multiple) = error?;
        let raw = record.cell(at).trim_ascii();
        if raw.is_empty() {
            return None;
        }
        let column = at as u32 + 1;
        let unit = self.unit_of_error(at, stated_unit, value_unit);
        let number = match cell::read(raw, self.plan.mark) {
            CellText::Number(number, own) => Some((number, own.or(unit))),
            CellText::NotMeasured | CellText::NotDetected => return None,
            _ => None,
        };
        let multiple = multiple.or(rules.multiple).unwrap_or(SigmaMultiple::ONE);
        match number {
            Some((_, None)) => {
                self.count(record.line, column, NoticeCode::ErrorUnitUnclear, &String::from_utf8_lossy(raw));
                None
            }
            Some((number, Some(unit))) if !number.negative => {
                let printed = number
                    .to_mass_fraction(unit, Rounding::Up)
                    .filter(|printed| Sigma::is_possible(*printed, multiple));
                if printed.is_none() {
                    self.notice(record.line, column, NoticeCode::ErrorNotUnderstood, raw);
                } else if multiple_unknown(error, rules) {
                    self.count(record.line, column, NoticeCode::MultipleNotStated, "");
                }
                printed
            }
            _ => {
                self.notice(record.line, column, NoticeCode::ErrorNotUnderstood, raw);
                None
            }
        }
    }

    /// The unit of an uncertainty cell: the heading's; where the heading says none and nothing contradicts it, the
    /// value's own.
    fn unit_of_error(&self, at: usize, stated: Option<Unit>, value_unit: Option<Unit>) -> Option<Unit> {
        if stated.is_some() {
            return stated;
        }
        let names_a_unit = self.headings.get(at).is_some_and(|heading| heading.contains('%'));
        if names_a_unit { None } else { value_unit }
    }

    fn limit_column(
        &self,
        record: &Record<'_>,
        limit: Option<(usize, Option<Unit>)>,
        value_unit: Option<Unit>,
    ) -> Option<MassFraction> {
        let (at, unit) = limit?;
        let number = match cell::read(record.cell(at), self.plan.mark) {
            CellText::Number(number, own) | CellText::Below(number, own) => {
                number.to_mass_fraction(own.or(unit).or(value_unit)?, Rounding::Up)
            }
            _ => None,
        };
        number.filter(|limit| *limit > MassFraction::ZERO)
    }

    /// The detection limit of a "not detected" without a number: from its own column, else from the error column.
    fn limit_of_non_detect(
        &mut self,
        record: &Record<'_>,
        error: Option<(usize, Option<Unit>, Option<SigmaMultiple>)>,
        limit: Option<(usize, Option<Unit>)>,
        value_unit: Option<Unit>,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        if let Some(stated) = self.limit_column(record, limit, value_unit) {
            return Some(stated);
        }
        let (at, stated_unit, multiple) = error?;
        let raw = record.cell(at);
        let unit = self.unit_of_error(at, stated_unit, value_unit);
        let printed = match cell::read(raw, self.plan.mark) {
            CellText::Number(number, own) => number.to_mass_fraction(own.or(unit)?, Rounding::Up)?,
            CellText::Below(number, own) => {
                return number.to_mass_fraction(own.or(unit)?, Rounding::Up);
            }
            _ => return None,
        };
        if printed <= MassFraction::ZERO || printed.units() > LARGEST_SIGMA_UNITS {
            return None;
        }
        self.count(record.line, at as u32 + 1, NoticeCode::LimitInErrorColumn, &String::from_utf8_lossy(raw));
        match rules.detection {
            DetectionInError::Limit => Some(printed),
            DetectionInError::OneError => {
                let hundredths = multiple.or(rules.multiple).unwrap_or(SigmaMultiple::ONE).hundredths();
                let three_sigma = (printed.units() * 300 + i64::from(hundredths) - 1) / i64::from(hundredths);
                Some(MassFraction::from_units(three_sigma))
            }
        }
    }

    fn close(&mut self) {
        self.source.readings.close();
        let refused = self.source.rows_refused;
        match self.source.problem {
            Some(NoticeCode::NoElementColumn) => {
                self.source.refusals.push(Notice {
                    line: 1,
                    column: 0,
                    heading: String::new(),
                    code: NoticeCode::NoElementColumn,
                    found: String::new(),
                    rows: refused,
                });
            }
            None if self.source.rows_in == 0 => self.refuse_all(NoticeCode::HeaderOnly),
            _ => {}
        }
        self.material_or_class();
        self.class_words();
    }

    /// A material column that holds only class words is the class.
    fn material_or_class(&mut self) {
        let readings = &self.source.readings;
        let any_class = (0..readings.len()).any(|row| readings.identity_id(Identity::Class, row).is_some());
        let mut names =
            (0..readings.len()).filter_map(|row| readings.identity(Identity::Material, row)).peekable();
        if any_class || names.peek().is_none() {
            return;
        }
        let mut last = ("", false);
        let only_classes = names.all(|name| {
            if name != last.0 {
                last = (name, MaterialClass::from_word(name).is_some());
            }
            last.1
        });
        if only_classes {
            self.source.readings.material_is_class();
            for column in self.source.blocks.iter_mut().flat_map(|block| &mut block.columns) {
                if column.role == ColumnRole::Identity(Identity::Material) {
                    column.role = ColumnRole::Identity(Identity::Class);
                    column.evidence = Evidence::ClassWordsOnly;
                }
            }
        }
    }

    /// Says once for every class word that is none.
    fn class_words(&mut self) {
        let mut counted: std::collections::BTreeMap<_, (u32, u64)> = std::collections::BTreeMap::new();
        let readings = &self.source.readings;
        for row in 0..readings.len() {
            let id = readings.identity_id(Identity::Class, row);
            if id.is_some() {
                counted.entry(id).or_insert((readings.line(row), 0)).1 += 1;
            }
        }
        let column = self.source.blocks.last().and_then(|block| {
            block.columns.iter().find(|column| column.role == ColumnRole::Identity(Identity::Class))
        });
        let (column, heading) =
            column.map_or((0, String::new()), |column| (column.column, column.heading.clone()));
        for (id, (line, rows)) in counted {
            let word = self.source.readings.pool.get(id).unwrap_or("");
            if MaterialClass::from_word(word).is_none() {
                self.source.notices.push(Notice {
                    line,
                    column,
                    heading: heading.clone(),
                    code: NoticeCode::ClassNotUnderstood,
                    found: cut(word),
                    rows,
                });
            }
        }
    }
}

fn multiple_unknown(
    error: Option<(usize, Option<Unit>, Option<SigmaMultiple>)>,
    rules: ReadingRules,
) -> bool {
    matches!(error, Some((_, _, None))) && rules.multiple.is_none()
}

fn is_element_heading(heading: &str) -> bool {
    let one = heading::meanings(&[heading.to_owned()]);
    one.iter().any(|column| matches!(column.role, ColumnRole::Value { .. }))
}

/// True where the text of a number can be made again from its value: it is plain, in a unit that holds for the whole
/// column, and no finer than a millionth of mg/kg.
fn remakes_exactly(number: &Number, unit: Option<Unit>) -> bool {
    unit.is_some_and(|unit| number.plain && i32::from(number.decimals) <= unit.exponent() + 6)
}
