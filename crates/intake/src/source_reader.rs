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

use crate::cell::{self, CellText, Marks};
use crate::header_search::{self, FoundHeader, find_header, sample_marks, unit_column_by_content};
use crate::heading;
use crate::records::{Piece, Record, Splitter};

/// Bytes that are looked at before a header must have been found.
const LOOKED_AT: usize = 256 * 1024;
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
    /// The header that was found and has not come by yet.
    awaited: Option<(FoundHeader, Option<DecimalMark>)>,
    /// A person stated the decimal mark.
    mark_told: bool,
}

struct Plan {
    elements: Vec<ElementPlan>,
    identities: Vec<(usize, Identity)>,
    unit_column: Option<usize>,
    /// A heading further down was not understood: what the rows below it mean is open.
    closed: bool,
    mark: Marks,
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
    error: Option<ErrorPlan>,
    limit: Option<(usize, Option<Unit>)>,
    /// Other columns that claim to be this element's value.
    rivals: Vec<usize>,
}

#[derive(Clone, Copy)]
struct ErrorPlan {
    at: usize,
    unit: Option<Unit>,
    clear: bool,
    multiple: Option<SigmaMultiple>,
}

impl Default for Plan {
    fn default() -> Plan {
        Plan {
            elements: Vec::new(),
            identities: Vec::new(),
            unit_column: None,
            closed: false,
            mark: Marks { decimal: None, told: false },
            columns: 0,
            counted: Vec::new(),
        }
    }
}

/// What stands in the element cells of a row without a measurement.
#[derive(Clone, Copy, PartialEq, Eq)]
enum InValueCells {
    Words,
    Nothing,
}

/// What a row's own unit column says.
#[derive(Clone, Copy, PartialEq, Eq)]
enum RowUnit {
    Silent,
    Known(Unit),
    Foreign,
}

impl SourceReader {
    /// Starts a source. Its name is its base name, or the path inside the chosen folder with `/`.
    pub fn new(name: &str, settings: &Settings) -> SourceReader {
        SourceReader {
            digest: Sha256::new(),
            bytes: 0,
            rules: ReadingRules {
                unit: settings.unit_of_measure(name, ""),
                mark: settings.decimal_mark(name, ""),
                detection: settings.detection_in_error(name, ""),
                multiple: settings.sigma_multiple(name, ""),
            },
            state: State::Looking(Vec::new()),
            table: Table {
                source: Source { name: name.to_owned(), ..Source::default() },
                plan: Plan::default(),
                headings: Vec::new(),
                may_be_unit_row: false,
                awaited: None,
                mark_told: settings.decimal_mark(name, "").is_some(),
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
        // The same bytes are looked at however the file was cut into pieces.
        let whole = kept.len() < LOOKED_AT;
        let looked = text.get(..text.len().min(LOOKED_AT)).unwrap_or(text);
        if let Some(problem) = no_text(looked) {
            self.table.refuse_all(problem);
            return;
        }
        let found = find_header(looked, whole);
        let mut splitter = Splitter::new(found.as_ref().map_or(b',', |found| found.delimiter));
        if let Some(mut found) = found {
            self.table.source.delimiter = Some(found.delimiter);
            unit_column_by_content(looked, &mut found);
            let sample = sample_marks(looked, &found);
            self.table.awaited = Some((found, sample));
        } else {
            // Still every row is counted and refused by one entry, so that the counts add up.
            self.table.source.problem = Some(NoticeCode::NoElementColumn);
        }
        let (table, rules) = (&mut self.table, self.rules);
        splitter.push(text, &mut |piece| table.take(piece, rules));
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
        return Some(NoticeCode::WorkbookBroken);
    }
    if bytes.starts_with(b"\xFF\xFE") || bytes.starts_with(b"\xFE\xFF") {
        return Some(NoticeCode::NotText);
    }
    let head = bytes.get(..bytes.len().min(64 * 1024)).unwrap_or(bytes);
    let nul = memchr::memchr_iter(0, head).count();
    let control =
        head.iter().filter(|byte| **byte < 0x20 && !matches!(byte, b'\t' | b'\n' | b'\r' | 0x0C)).count();
    // A stray control byte is a broken cell; a file with many of them is no text.
    (nul > 1 && nul * 50 > head.len() || control * 20 > head.len()).then_some(NoticeCode::NotText)
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
        let found = cut(&cell::text(found));
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
        let text: Vec<_> = record.cells().map(|cell| cell::text(cell).trim().to_owned()).collect();
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
            fingerprint: String::new(),
            layout: plumbline_core::reading::Layout::Wide,
            stated_above: None,
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
        let mark = Marks { decimal: block.mark, told: self.mark_told };
        let mut plan = Plan { mark, columns: block.columns.len(), ..Plan::default() };
        let columns = block.columns.clone();
        let place = |column: &ColumnMeaning| column.column as usize - 1;
        for column in &columns {
            match column.role {
                ColumnRole::Value { element, unit, .. } => {
                    let error = columns.iter().find_map(|other| match other.role {
                        ColumnRole::Error { element: of, error, .. } if of == element => Some(ErrorPlan {
                            at: place(other),
                            unit: error.unit,
                            clear: error.clear,
                            multiple: error.multiple,
                        }),
                        _ => None,
                    });
                    let limit = columns.iter().find_map(|other| match other.role {
                        ColumnRole::DetectionLimit { element: of, unit, .. } if of == element => {
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
                        rivals: columns
                            .iter()
                            .filter(|other| {
                                other.column != column.column
                                    && other.evidence == Evidence::AlreadyTaken
                                    && heading::value_element(&other.heading) == Some(element)
                            })
                            .map(place)
                            .collect(),
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
        if let Some((found, mark)) = self.awaited.take() {
            match piece {
                Piece::Record(record) if record.line >= found.line => {
                    self.begin_block(found.columns, found.line, mark, rules);
                    return;
                }
                Piece::Record(record) => self.preamble(&record),
                Piece::Blank(_) | Piece::QuoteLeftOpen(_) | Piece::LineTooLong(_) => {}
            }
            self.awaited = Some((found, mark));
            return;
        }
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
        // A record over several lines has used up as many rows.
        self.source.rows_in += u64::from(record.lines - 1);
        if record.lines > 1 && self.swallowed_rows(record) {
            self.refuse(record.line, 0, NoticeCode::QuoteLeftOpen, "", u64::from(record.lines));
            return;
        }
        let rows = u64::from(record.lines);
        let aside = self.heading_or_units(record, rules);
        if let Some(aside) = aside {
            self.source.set_aside[aside as usize] += rows;
            return;
        }
        if self.plan.closed {
            self.refuse(record.line, 0, NoticeCode::UnderUnknownHeading, "", rows);
            return;
        }
        if record.len() > self.plan.columns
            && let Some(extra) =
                (self.plan.columns..record.len()).find(|at| !record.cell(*at).trim_ascii().is_empty())
        {
            let found = cell::text(record.cell(extra)).into_owned();
            self.refuse(record.line, extra as u32 + 1, NoticeCode::RowTooLong, &found, rows);
            return;
        }
        if self.nothing_usable(record) {
            self.refuse(record.line, 0, NoticeCode::NothingUsable, "", rows);
            return;
        }
        let foreign =
            self.plan.identities.iter().find(|(at, _)| std::str::from_utf8(record.cell(*at)).is_err());
        if let Some((at, _)) = foreign.copied() {
            self.count(record.line, at as u32 + 1, NoticeCode::NotUtf8, &cell::text(record.cell(at)));
        }
        if record.len() < self.plan.columns {
            self.count(record.line, 0, NoticeCode::RowShort, &record.len().to_string());
        }
        // A reading takes one row of its lines; the others are the rest of the same row.
        self.source.rows_in -= u64::from(record.lines - 1);
        self.reading(record, rules);
    }

    /// True where a quoted cell over several lines holds what looks like whole rows: a stray pair of quotes.
    fn swallowed_rows(&self, record: &Record<'_>) -> bool {
        let delimiter = self.source.delimiter.unwrap_or(b',');
        let many = (self.plan.columns / 2).max(2);
        let note = |at: usize| {
            let role = self.source.blocks.last().and_then(|block| block.columns.get(at)).map(|one| &one.role);
            matches!(role, Some(ColumnRole::Identity(Identity::Note) | ColumnRole::Unused))
        };
        record.cells().enumerate().any(|(at, cell)| {
            let mut lines = cell.split(|byte| matches!(byte, b'\n' | b'\r')).filter(|line| !line.is_empty());
            let spans = memchr::memchr2(b'\n', b'\r', cell).is_some();
            spans && (!note(at) || lines.any(|line| memchr::memchr_iter(delimiter, line).count() >= many))
        })
    }

    /// Takes a row that is no data: a heading, a new heading, a row of units.
    fn heading_or_units(&mut self, record: &Record<'_>, rules: ReadingRules) -> Option<SetAside> {
        if self.may_be_unit_row {
            self.may_be_unit_row = false;
            if self.take_unit_row(record, rules) {
                return Some(SetAside::UnitRow);
            }
        }
        if self.is_heading(record) {
            // Units may stand under it again, and may be others.
            self.may_be_unit_row = true;
            self.plan.closed = false;
            return Some(SetAside::Heading);
        }
        let words = self.words_for_values(record)?;
        if let Some(columns) = header_search::read_header(record) {
            let mark = self.plan.mark.decimal;
            self.begin_block(columns, record.line, mark, rules);
            self.notice(record.line, 0, NoticeCode::NewHeader, b"");
            return Some(SetAside::Heading);
        }
        // Words that name elements where numbers should be: another heading, in a form not understood. Reading on
        // under the old one would put numbers into the wrong columns.
        if words == InValueCells::Words
            && names_elements(record) >= 2
            && !header_search::holds_measurements(record)
        {
            self.plan.closed = true;
        }
        None
    }

    /// What stands in the element cells of a row that may be a heading; nothing for a row with a measurement.
    fn words_for_values(&self, record: &Record<'_>) -> Option<InValueCells> {
        let mut any = false;
        for planned in &self.plan.elements {
            let cell = record.cell(planned.value).trim_ascii();
            match cell.first() {
                None => {}
                Some(b'0'..=b'9' | b'-' | b'+' | b'<' | b'>') => return None,
                Some(_) => match cell::read(cell, self.plan.mark) {
                    CellText::Unreadable => any = true,
                    CellText::NotMeasured | CellText::Blank => {}
                    _ => return None,
                },
            }
        }
        if any {
            return Some(InValueCells::Words);
        }
        (names_elements(record) > 0).then_some(InValueCells::Nothing)
    }

    fn take_unit_row(&mut self, record: &Record<'_>, rules: ReadingRules) -> bool {
        let Some(block) = self.source.blocks.last() else { return false };
        let texts: Vec<Cow<'_, str>> = record.cells().map(cell::text).collect();
        let cells: Vec<&str> = texts.iter().map(AsRef::as_ref).collect();
        let Some(units) = heading::unit_row(&block.columns, &cells) else { return false };
        if block.first_reading < self.source.readings.len() {
            // Under a repeated heading: rows above keep the units they were read in.
            let (columns, mark) = (heading::meanings(&self.headings), self.plan.mark.decimal);
            self.begin_block(columns, record.line, mark, rules);
            self.may_be_unit_row = false;
        }
        if let Some(block) = self.source.blocks.last_mut() {
            heading::apply_unit_row(&mut block.columns, &units);
        }
        self.plan_block();
        true
    }

    fn is_heading(&self, record: &Record<'_>) -> bool {
        // The first cell settles it for nearly every row. More headings than ours make another header.
        record.len() >= self.headings.len()
            && self.headings.iter().enumerate().all(|(at, heading)| {
                record.cell(at).trim_ascii().eq_ignore_ascii_case(heading.trim().as_bytes())
            })
            && (self.headings.len()..record.len()).all(|at| record.cell(at).trim_ascii().is_empty())
    }

    fn nothing_usable(&self, record: &Record<'_>) -> bool {
        let used = |at: usize| !record.cell(at).trim_ascii().is_empty();
        !self.plan.identities.iter().any(|(at, _)| used(*at))
            && !self.plan.elements.iter().any(|planned| {
                used(planned.value)
                    || planned.error.is_some_and(|error| used(error.at))
                    || planned.limit.is_some_and(|(at, _)| used(at))
            })
    }

    fn reading(&mut self, record: &Record<'_>, rules: ReadingRules) {
        self.source.readings.begin(record.line);
        for at in 0..self.plan.identities.len() {
            let Some((column, identity)) = self.plan.identities.get(at).copied() else { continue };
            let text = cell::text(record.cell(column));
            self.source.readings.set_identity(identity, text.trim());
        }
        let row_unit = self.row_unit(record);
        for at in 0..self.plan.elements.len() {
            self.element_cell(record, at, row_unit, rules);
        }
    }

    /// What the row's own unit column states.
    fn row_unit(&mut self, record: &Record<'_>) -> RowUnit {
        let Some(column) = self.plan.unit_column else { return RowUnit::Silent };
        let text = cell::text(record.cell(column));
        let text = text.trim();
        if text.is_empty() {
            return RowUnit::Silent;
        }
        if let Some(unit) = Unit::from_word(text) {
            return RowUnit::Known(unit);
        }
        self.notice(record.line, column as u32 + 1, NoticeCode::UnitNotKnown, text.as_bytes());
        RowUnit::Foreign
    }

    fn element_cell(&mut self, record: &Record<'_>, at: usize, row_unit: RowUnit, rules: ReadingRules) {
        let Some(planned) = self.plan.elements.get(at) else { return };
        let (index, value_column) = (planned.index, planned.value);
        let (error, limit) = (planned.error, planned.limit);
        let (heading_unit, foreign) = (planned.unit, planned.unit_foreign);
        // A heading and a row that contradict each other, or a unit nobody knows, leave the unit open.
        let column_unit = match (foreign, heading_unit, row_unit) {
            (true, ..) | (_, _, RowUnit::Foreign) => None,
            (_, Some(heading), RowUnit::Known(row)) if heading != row => None,
            (_, heading, RowUnit::Known(row)) => heading.or(Some(row)),
            (_, heading, RowUnit::Silent) => heading.or(rules.unit),
        };
        let foreign = foreign || row_unit == RowUnit::Foreign;
        // An open unit is open for the error and the limit too, whatever the heading says of them.
        let contradicted = column_unit.is_none() && (foreign || heading_unit.is_some());
        let error = error.map(|error| ErrorPlan { clear: error.clear && !contradicted, ..error });
        let limit = limit.filter(|_| !contradicted);
        let remade = heading_unit.or(if self.plan.unit_column.is_none() { rules.unit } else { None });
        let mark = self.plan.mark;
        let raw = record.cell(value_column);
        let column = value_column as u32 + 1;
        let line = record.line;

        let mut written = Written::Nothing;
        let mut cell = Cell { state: CellState::Blank, ..Cell::NO_COLUMN };
        if let Some(rival) = self.rival(record, at) {
            // Two columns for one element: which one is meant nobody can tell from here.
            let own = raw.trim_ascii();
            let both = if own.is_empty() { rival } else { [own, b" | ", rival.as_slice()].concat() };
            cell.state = CellState::Text;
            written = self.keep(at, &both);
            self.source.readings.push_cell(index, cell, written);
            self.count(line, column, NoticeCode::ColumnTwice, &cell::text(&both));
            return;
        }
        match cell::read(raw, mark) {
            CellText::Blank => {}
            CellText::NotMeasured => written = self.keep(at, raw),
            CellText::Unreadable | CellText::WithError(..) => {
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
                // A unit behind the number does not make a column of something else this element's mass fraction.
                let own_unit = own_unit.filter(|_| !foreign);
                match (own_unit.or(column_unit), number) {
                    (None, _) => {
                        cell.state = CellState::UnitUnknown;
                        written = self.keep(at, raw);
                        if !foreign {
                            self.count(line, column, NoticeCode::UnitNotStated, &cell::text(raw));
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
                    // Beside a cell in a unit of its own, the error column's unit is anybody's guess.
                    let foreign_cell = own_unit.is_some() && own_unit != column_unit;
                    let error = error.map(|error| ErrorPlan { clear: error.clear && !foreign_cell, ..error });
                    cell.printed_error = self.printed_error(record, error, column_unit, rules);
                    if let Some(printed) = cell.printed_error
                        && i128::from(cell.value.units()) < -3 * i128::from(printed.units())
                    {
                        self.notice(line, column, NoticeCode::FarBelowZero, raw);
                    }
                }
            }
            CellText::Below(number, own_unit) | CellText::Above(number, own_unit) => {
                let own_unit = own_unit.filter(|_| !foreign);
                let above = raw.trim_ascii().first() == Some(&b'>');
                written = self.keep(at, raw);
                let bound =
                    own_unit.or(column_unit).map(|unit| number.to_mass_fraction(unit, Rounding::Nearest));
                match bound {
                    None => {
                        cell.state = CellState::UnitUnknown;
                        if !foreign {
                            self.count(line, column, NoticeCode::UnitNotStated, &cell::text(raw));
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
        let text = cell::text(raw.trim_ascii());
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
        error: Option<ErrorPlan>,
        value_unit: Option<Unit>,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        let planned = error?;
        let (at, multiple) = (planned.at, planned.multiple);
        let raw = record.cell(at).trim_ascii();
        if raw.is_empty() {
            return None;
        }
        let column = at as u32 + 1;
        let unit = unit_of_error(planned, value_unit);
        let number = match cell::read(raw, self.plan.mark) {
            CellText::Number(number, own) => Some((number, own.or(unit))),
            CellText::NotMeasured | CellText::NotDetected => return None,
            _ => None,
        };
        let multiple = multiple.or(rules.multiple).unwrap_or(SigmaMultiple::ONE);
        match number {
            Some((_, None)) => {
                self.count(record.line, column, NoticeCode::ErrorUnitUnclear, &cell::text(raw));
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

    /// What another column says of the same element, where it says anything.
    fn rival(&self, record: &Record<'_>, at: usize) -> Option<Vec<u8>> {
        let planned = self.plan.elements.get(at)?;
        let said = planned.rivals.iter().map(|rival| record.cell(*rival).trim_ascii());
        said.filter(|cell| !cell.is_empty()).map(<[u8]>::to_vec).next()
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
        error: Option<ErrorPlan>,
        limit: Option<(usize, Option<Unit>)>,
        value_unit: Option<Unit>,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        if let Some(stated) = self.limit_column(record, limit, value_unit) {
            return Some(stated);
        }
        let planned = error?;
        let (at, multiple) = (planned.at, planned.multiple);
        let raw = record.cell(at);
        let unit = unit_of_error(planned, value_unit);
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
        self.count(record.line, at as u32 + 1, NoticeCode::LimitInErrorColumn, &cell::text(raw));
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
            None if self.source.readings.is_empty() && self.source.rows_refused == 0 => {
                self.refuse_all(NoticeCode::HeaderOnly);
            }
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

/// How many cells of a row name an element by its symbol.
fn names_elements(record: &Record<'_>) -> usize {
    let texts = record.cells().filter_map(|cell| std::str::from_utf8(cell).ok());
    texts.filter(|cell| heading::names_an_element(cell)).count()
}

fn multiple_unknown(error: Option<ErrorPlan>, rules: ReadingRules) -> bool {
    error.is_some_and(|error| error.multiple.is_none()) && rules.multiple.is_none()
}

/// The unit of an uncertainty cell: its heading's, else the value's own; nothing where it can't be told.
fn unit_of_error(planned: ErrorPlan, value_unit: Option<Unit>) -> Option<Unit> {
    if planned.clear { planned.unit.or(value_unit) } else { None }
}

fn is_element_heading(heading: &str) -> bool {
    heading::value_element(heading).is_some()
}

/// True where the text of a number can be made again from its value: it is plain, in a unit that holds for the whole
/// column, and no finer than a millionth of mg/kg.
fn remakes_exactly(number: &Number, unit: Option<Unit>) -> bool {
    unit.is_some_and(|unit| number.plain && i32::from(number.decimals) <= unit.exponent() + 6)
}
