//! The rows of one table: each to its fate, the measured ones to readings.

use std::borrow::Cow;

use hashbrown::HashMap;
use plumbline_core::acts::{ActKind, DetectionInError, Settings};
use plumbline_core::column::{ColumnMeaning, ColumnRole, Evidence};
use plumbline_core::date_order::DateOrder;
use plumbline_core::id_template::IdTemplate;
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{DecimalMark, SigmaMultiple, Unit};
use plumbline_core::reading::{
    Block, Cell, Layout, Notice, NoticeCode, RawRow, SetAside, Source, Stated, StatedUse, Written,
};
use rustc_hash::FxBuildHasher;

use crate::cell::{self, CellText, Marks};
use crate::dates;
use crate::gather::Gather;
use crate::header::{self, Header, HeaderReader, holds_measurements};
use crate::header_search::{FoundHeader, Sample};
use crate::heading::{self, NamedElement, vocabulary};
use crate::plan::Plan;
use crate::preamble::{self, StatedLine};
use crate::records::{Piece, Record};
use crate::turned::TurnedRows;

/// Longest text of a cell that a notice or a preview repeats.
const LONGEST_FOUND: usize = 60;
/// Raw rows that are kept for the preview of a mapping.
const PREVIEW_ROWS: usize = 500;
/// Bytes of raw rows that are kept for it.
const PREVIEW_BYTES: usize = 512 * 1024;
/// Lines above a table that are kept.
const PREAMBLE_LINES: usize = 1000;

/// What holds for reading the cells of a block.
#[derive(Clone, Copy, Debug, Default)]
pub(crate) struct ReadingRules {
    pub(crate) unit: Option<Unit>,
    pub(crate) mark: Option<DecimalMark>,
    pub(crate) detection: DetectionInError,
    pub(crate) multiple: Option<SigmaMultiple>,
    pub(crate) dates: Option<DateOrder>,
}

/// The source being filled and the plan of the block at hand.
pub(crate) struct Table {
    pub(crate) source: Source,
    pub(crate) plan: Plan,
    pub(crate) headers: HeaderReader,
    settings: Settings,
    pub(crate) rules: ReadingRules,
    headings: Vec<String>,
    may_be_unit_row: bool,
    /// The header that was found and has not come by yet.
    awaited: Option<(FoundHeader, Sample)>,
    sample: Sample,
    /// What the lines above the table state of every reading.
    pub(crate) stated: Vec<(Identity, String)>,
    stated_unit: Option<Unit>,
    stated_multiple: Option<SigmaMultiple>,
    /// Lines state units, or multiples, that differ.
    unit_contested: bool,
    multiple_contested: bool,
    pub(crate) template: Option<IdTemplate>,
    pub(crate) gather: Gather,
    /// What the names of elements in a long table mean.
    pub(crate) names: HashMap<Vec<u8>, Option<NamedElement>, FxBuildHasher>,
    /// The date read last, and as ISO 8601 writes it under the order of its block.
    pub(crate) last_date: (String, String),
    turned: Option<TurnedRows>,
    preview_bytes: usize,
    /// Kept between rows so that they need no memory of their own.
    pub(crate) key: Vec<u8>,
    /// The key of the last row of a long table that names its reading.
    pub(crate) named_key: Vec<u8>,
    pub(crate) cells: Vec<(usize, Cell, Written)>,
}

/// What stands in the element cells of a row without a measurement.
#[derive(Clone, Copy, PartialEq, Eq)]
enum InValueCells {
    Words,
    Nothing,
}

pub(crate) fn cut(text: &str) -> String {
    cut_short(text).into_owned()
}

pub(crate) fn cut_short(text: &str) -> Cow<'_, str> {
    match text.char_indices().nth(LONGEST_FOUND) {
        Some((end, _)) if text.len() > LONGEST_FOUND => {
            Cow::Owned(format!("{}…", text.get(..end).unwrap_or(text)))
        }
        _ => Cow::Borrowed(text),
    }
}

impl Table {
    pub(crate) fn new(source: Source, settings: &Settings, headers: HeaderReader) -> Table {
        Table {
            source,
            plan: Plan::default(),
            headers,
            settings: settings.clone(),
            rules: ReadingRules::default(),
            headings: Vec::new(),
            may_be_unit_row: false,
            awaited: None,
            sample: Sample::default(),
            stated: Vec::new(),
            stated_unit: None,
            stated_multiple: None,
            unit_contested: false,
            multiple_contested: false,
            template: None,
            gather: Gather::default(),
            names: HashMap::default(),
            last_date: (String::new(), String::new()),
            turned: None,
            preview_bytes: 0,
            key: Vec::new(),
            named_key: Vec::new(),
            cells: Vec::new(),
        }
    }

    pub(crate) fn await_header(&mut self, found: FoundHeader, sample: Sample) {
        self.source.delimiter = Some(found.delimiter);
        self.awaited = Some((found, sample));
    }

    pub(crate) fn refuse_all(&mut self, code: NoticeCode, found: &str) {
        self.source.problem = Some(code);
        self.refuse((0, 0), code, found, 0);
    }

    pub(crate) fn refuse(&mut self, (line, column): (u32, u32), code: NoticeCode, found: &str, rows: u64) {
        self.source.rows_refused += rows;
        let heading = self.heading_of(column);
        self.source.refusals.push(Notice { line, column, heading, code, found: cut(found), rows });
    }

    fn heading_of(&self, column: u32) -> String {
        if self.plan.layout == Layout::Turned {
            return String::new();
        }
        (column as usize).checked_sub(1).and_then(|at| self.headings.get(at)).cloned().unwrap_or_default()
    }

    pub(crate) fn notice(&mut self, (line, column): (u32, u32), code: NoticeCode, found: &[u8]) {
        let heading = self.heading_of(column);
        let found = cut(&cell::text(found));
        self.source.notices.push(Notice { line, column, heading, code, found, rows: 1 });
    }

    /// A notice that is said once for the block, at the first place it appears, and counts the rows it speaks for.
    pub(crate) fn count(&mut self, place: (u32, u32), code: NoticeCode, found: &str) {
        let line = place.0;
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
        self.notice(place, code, found.as_bytes());
    }

    pub(crate) fn is_long(&self) -> bool {
        self.plan.row_element.is_some()
    }

    fn preamble(&mut self, record: &Record<'_>) {
        if self.source.preamble.len() >= PREAMBLE_LINES {
            return;
        }
        let cells: Vec<String> = record.cells().map(|cell| cell::text(cell).trim().to_owned()).collect();
        self.source.preamble.push(cut(cells.join(" ").trim()));
        let cells: Vec<&str> = cells.iter().map(String::as_str).collect();
        let Some(line) = preamble::stated(&cells) else { return };
        match line.used_as {
            Some(StatedUse::Identity(identity))
                if !self.stated.iter().any(|(known, _)| *known == identity) =>
            {
                self.stated.push((identity, line.value.clone()));
            }
            Some(StatedUse::Unit(unit)) => self.state_unit(unit, record.line, &line),
            Some(StatedUse::Multiple(multiple)) => self.state_multiple(multiple, record.line, &line),
            // The first line that names a lot, an operator and the like stands.
            Some(StatedUse::Identity(_)) | None => {}
        }
        let used_as = line.used_as.filter(|used| match used {
            StatedUse::Identity(_) => true,
            StatedUse::Unit(_) => self.stated_unit.is_some(),
            StatedUse::Multiple(_) => self.stated_multiple.is_some(),
        });
        self.source.stated.push(Stated {
            line: record.line,
            key: cut(&line.key),
            value: cut(&line.value),
            used_as,
        });
    }

    /// Takes a unit that a line states. Of two that differ neither is used: the wrong one would be off by thousands.
    fn state_unit(&mut self, unit: Unit, line: u32, said: &StatedLine) {
        let first = !self.unit_contested && self.stated_unit.is_none();
        if first {
            self.stated_unit = Some(unit);
        } else if self.stated_unit != Some(unit) {
            self.stated_unit = None;
            self.unit_contested = true;
            self.say_stated_twice(line, said, |used| matches!(used, StatedUse::Unit(_)));
        }
    }

    /// Takes a multiple that a line states. Of two that differ neither is used.
    fn state_multiple(&mut self, multiple: SigmaMultiple, line: u32, said: &StatedLine) {
        let first = !self.multiple_contested && self.stated_multiple.is_none();
        if first {
            self.stated_multiple = Some(multiple);
        } else if self.stated_multiple != Some(multiple) {
            self.stated_multiple = None;
            self.multiple_contested = true;
            self.say_stated_twice(line, said, |used| matches!(used, StatedUse::Multiple(_)));
        }
    }

    fn say_stated_twice(&mut self, line: u32, said: &StatedLine, same: fn(&StatedUse) -> bool) {
        // Above the table nothing has been read under the first one yet.
        if self.source.blocks.is_empty() {
            for stated in &mut self.source.stated {
                stated.used_as = stated.used_as.take().filter(|used| !same(used));
            }
        }
        let text = format!("{}: {}", said.key, said.value);
        self.notice((line, 0), NoticeCode::StatedTwice, text.as_bytes());
    }

    /// A line that states something of the readings below it, in one cell: another lot, another unit.
    fn stated_line(record: &Record<'_>) -> Option<StatedLine> {
        let mut filled = record.cells().filter(|cell| !cell.trim_ascii().is_empty());
        let (Some(only), None) = (filled.next(), filled.next()) else { return None };
        preamble::stated(&[&*cell::text(only)]).filter(|line| line.used_as.is_some())
    }

    /// Takes what a line between tables states.
    fn hear(&mut self, said: &StatedLine, line: u32) {
        match said.used_as {
            None => {}
            Some(StatedUse::Identity(identity)) => {
                self.stated.retain(|(known, _)| *known != identity);
                self.stated.push((identity, said.value.clone()));
                // Rows below are another reading's, whatever names them.
                self.gather = Gather::default();
                let text = format!("{}: {}", said.key, said.value);
                self.notice((line, 0), NoticeCode::StatedAbove, text.as_bytes());
            }
            // What the rows above were read under came from elsewhere, which this may contradict.
            Some(StatedUse::Unit(unit)) => {
                self.unit_contested |= self.stated_unit.is_none();
                self.state_unit(unit, line, said);
            }
            Some(StatedUse::Multiple(multiple)) => {
                self.multiple_contested |= self.stated_multiple.is_none();
                self.state_multiple(multiple, line, said);
            }
        }
    }

    /// Takes a line between the rows that states something of those below it.
    ///
    /// A unit or a multiple that contradicts the one before it ends the block: what is below is read under neither.
    fn stated_between(&mut self, record: &Record<'_>) -> bool {
        let Some(said) = Self::stated_line(record) else { return false };
        let before = (self.stated_unit, self.stated_multiple);
        self.hear(&said, record.line);
        if before != (self.stated_unit, self.stated_multiple) {
            let (header, mark) = (self.headers.of_headings(&self.headings), self.plan.mark.decimal);
            self.begin_block(header, record.line, mark);
        }
        true
    }

    /// True for a row that a table on its side has: its first cell names an element with its unit, and no sample.
    fn is_turned_row(&self, record: &Record<'_>) -> bool {
        let id = self.plan.identities.iter().find(|(_, identity)| *identity == Identity::Id);
        let Some((at, _)) = id.filter(|_| !self.is_long()) else { return false };
        let name = record.cell(*at).trim_ascii();
        // Cheap to tell for nearly every row: a symbol with a unit is short and has a space, a bracket or a percent sign.
        let may_be =
            name.len() <= LONGEST_FOUND && name.iter().any(|byte| matches!(byte, b' ' | b'(' | b'[' | b'%'));
        may_be && heading::element_cell(&cell::text(name)).is_some_and(|named| named.unit.is_some())
    }

    /// The name of a row that is no sample's: an average, a spread, a limit.
    fn summary_row(&self, record: &Record<'_>) -> Option<(usize, String)> {
        let id = self.plan.identities.iter().find(|(_, identity)| *identity == Identity::Id);
        let at = id.map_or(0, |(at, _)| *at);
        let measured = self.plan.elements.iter().any(|planned| planned.value == at);
        let names_element = self.plan.row_element.is_some_and(|named| named.name == at);
        let name = record.cell(at).trim_ascii();
        // A longer cell is no such word.
        if measured || names_element || name.is_empty() || name.len() > LONGEST_FOUND {
            return None;
        }
        let name = cell::text(name);
        vocabulary::names_a_summary(&name).then(|| (at, name.into_owned()))
    }

    /// The second sample a row names under the same heading, where two tables stand side by side.
    fn second_sample(&self, record: &Record<'_>) -> Option<usize> {
        let (first, others) = self.plan.samples.split_first()?;
        let own = record.cell(*first).trim_ascii();
        let other = |at: &&usize| {
            let cell = record.cell(**at).trim_ascii();
            !cell.is_empty() && cell != own
        };
        others.iter().find(other).copied()
    }

    fn preview(&mut self, record: &Record<'_>) {
        if self.source.preview.len() >= PREVIEW_ROWS || self.preview_bytes > PREVIEW_BYTES {
            return;
        }
        let cells: Vec<String> = record.cells().map(|cell| cut(cell::text(cell).trim())).collect();
        self.preview_bytes += cells.iter().map(String::len).sum::<usize>() + cells.len();
        self.source.preview.push(RawRow { line: record.line, cells });
    }

    fn begin_block(&mut self, header: Header, line: u32, seen_mark: Option<DecimalMark>) {
        let Header { columns, fingerprint, layout, told, missing } = header;
        self.headings = columns.iter().map(|column| column.heading.clone()).collect();
        self.may_be_unit_row = layout != Layout::Turned;
        let name = self.source.name.clone();
        let first = self.source.blocks.is_empty();
        if first && !self.source.preamble.is_empty() {
            let lines = self.source.preamble.len();
            self.notice((1, 0), NoticeCode::Preamble, lines.to_string().as_bytes());
            for at in 0..self.source.stated.len() {
                let Some(stated) = self.source.stated.get(at).filter(|stated| stated.used_as.is_some())
                else {
                    continue;
                };
                let (place, text) = ((stated.line, 0), format!("{}: {}", stated.key, stated.value));
                self.notice(place, NoticeCode::StatedAbove, text.as_bytes());
            }
        }
        self.rules = ReadingRules {
            unit: self.stated_unit.or(self.settings.unit_of_measure(&name, &fingerprint)),
            mark: self.settings.decimal_mark(&name, &fingerprint),
            detection: self.settings.detection_in_error(&name, &fingerprint),
            multiple: self.settings.sigma_multiple(&name, &fingerprint),
            dates: self
                .settings
                .of_table(ActKind::DateOrder, &name, &fingerprint)
                .and_then(DateOrder::from_code),
        };
        self.template = self
            .settings
            .of_table(ActKind::IdPattern, &name, &fingerprint)
            .and_then(|template| IdTemplate::parse(template).ok());
        self.say_of_columns(&columns, line, layout);
        if told > 0 {
            self.source.notices.push(Notice {
                line,
                column: 0,
                heading: String::new(),
                code: NoticeCode::MappedByHand,
                found: String::new(),
                rows: u64::from(told),
            });
        }
        for column in missing {
            self.notice((line, 0), NoticeCode::MappingDiffers, column.to_string().as_bytes());
        }
        let multiples = columns.iter().any(|column| column.role == ColumnRole::ErrorMultiple);
        let in_column = self.sample.multiple.as_deref().filter(|_| multiples);
        self.source.blocks.push(Block {
            header_line: line,
            fingerprint,
            // Rows are joined only where a spectrum column turns out to part one reading's rows.
            layout: if layout == Layout::Joined { Layout::Wide } else { layout },
            first_reading: self.source.readings.len(),
            columns,
            mark: self.rules.mark.or(seen_mark),
            set_unit: self.rules.unit,
            stated_above: in_column.and_then(SigmaMultiple::from_text).or(self.stated_multiple),
            limit_in_error_column: self.rules.detection == DetectionInError::Limit,
        });
        self.gather = Gather::default();
        self.plan_block(layout);
    }

    fn say_of_columns(&mut self, columns: &[ColumnMeaning], line: u32, layout: Layout) {
        // A table of rocks has a dozen oxides: they are named together.
        let oxides: Vec<&ColumnMeaning> = columns
            .iter()
            .filter(|column| {
                column.evidence == Evidence::OxideHeading && matches!(column.role, ColumnRole::Value { .. })
            })
            .collect();
        if let Some(first) = oxides.first() {
            let place = if layout == Layout::Turned { (line, 0) } else { (line, first.column) };
            let named: Vec<&str> = oxides.iter().map(|column| column.heading.trim()).collect();
            self.notice(place, NoticeCode::OxideConverted, named.join(", ").as_bytes());
        }
        for column in columns {
            let code = match column.evidence {
                Evidence::UnitNotUnderstood => NoticeCode::UnitNotKnown,
                Evidence::WordsNotUnderstood => NoticeCode::HeadingNotUnderstood,
                Evidence::AlreadyTaken if heading::value_element(&column.heading).is_some() => {
                    NoticeCode::ColumnTwice
                }
                _ => continue,
            };
            let place = if layout == Layout::Turned { (line, 0) } else { (line, column.column) };
            self.notice(place, code, column.heading.as_bytes());
        }
    }

    fn plan_block(&mut self, layout: Layout) {
        let Some(block) = self.source.blocks.last() else { return };
        let marks = Marks { decimal: block.mark, told: self.rules.mark.is_some() };
        let multiple = block.stated_above;
        let columns = block.columns.clone();
        self.plan = Plan::new(&columns, layout, &mut self.source.readings);
        self.plan.mark = marks;
        self.plan.block_multiple = multiple;
        self.last_date = (String::new(), String::new());
        let verdict = self.sample.dates.verdict();
        if let Some(time) = &mut self.plan.time {
            time.order = self.rules.dates.or(match verdict {
                dates::Verdict::Order(order) => Some(order),
                _ => None,
            });
            time.serials = verdict == dates::Verdict::Serials;
        }
    }

    /// Gives one piece its fate.
    pub(crate) fn take(&mut self, piece: Piece<'_>) {
        if let Some((found, sample)) = self.awaited.take_if(|(found, _)| found.line == 0) {
            // No heading stands in the file: its first row is a row like the others.
            self.sample = sample;
            self.begin_block(found.header, 0, self.sample.mark);
            self.may_be_unit_row = false;
        }
        if let Some((found, sample)) = self.awaited.take() {
            match piece {
                Piece::Record(record) if record.line >= found.line => {
                    self.begin_table(&record, found, sample);
                    return;
                }
                Piece::Record(record) => self.preamble(&record),
                Piece::Blank(_) | Piece::QuoteLeftOpen(_) | Piece::LineTooLong(_) => {}
            }
            self.awaited = Some((found, sample));
            return;
        }
        self.source.rows_in += 1;
        if let Piece::Record(record) = piece {
            self.preview(&record);
        }
        match piece {
            Piece::Blank(_) => self.source.set_aside[SetAside::Blank as usize] += 1,
            Piece::Record(record) if record.is_blank() => {
                self.source.set_aside[SetAside::Blank as usize] += 1;
            }
            // One entry, written when the file ends, speaks for all of them.
            _ if self.source.problem.is_some() => self.source.rows_refused += 1,
            Piece::QuoteLeftOpen(line) => self.refuse((line, 0), NoticeCode::QuoteLeftOpen, "", 1),
            Piece::LineTooLong(line) => self.refuse((line, 0), NoticeCode::LineTooLong, "", 1),
            Piece::Record(record) if self.turned.is_some() => self.turned_row(&record),
            Piece::Record(record) => self.row(&record),
        }
    }

    fn begin_table(&mut self, record: &Record<'_>, found: FoundHeader, sample: Sample) {
        self.preview(record);
        self.sample = sample;
        match found.labels {
            None => self.begin_block(found.header, found.line, self.sample.mark),
            Some(labels) => {
                let mut rows = TurnedRows::new(labels);
                // The row that names the readings is the heading; an element's row is a row like the others.
                if heading::element_cell(&cell::text(record.cell(labels))).is_some() {
                    self.source.rows_in += 1;
                }
                rows.keep(record);
                self.turned = Some(rows);
            }
        }
    }

    fn turned_row(&mut self, record: &Record<'_>) {
        // A record over several lines has used up as many rows; here they are the rest of the same row.
        if self.turned_ends(record) {
            return;
        }
        let Some(rows) = &mut self.turned else { return };
        // After a line between tables: the row that names the readings is the heading, as it is of the first one.
        if rows.is_empty() && heading::element_cell(&cell::text(record.cell(rows.labels()))).is_none() {
            self.source.set_aside[SetAside::Heading as usize] += 1;
        }
        if rows.starts_again(record) {
            let again = std::mem::replace(rows, TurnedRows::new(rows.labels()));
            self.turn(&again);
            let Some(rows) = &mut self.turned else { return };
            if heading::element_cell(&cell::text(record.cell(rows.labels()))).is_none() {
                self.source.set_aside[SetAside::Heading as usize] += 1;
                self.source.rows_in += 0;
            }
            rows.keep(record);
            return;
        }
        if !rows.keep(record) {
            self.refuse((record.line, 0), NoticeCode::UnderUnknownHeading, "", 1);
        }
    }

    /// Ends a table on its side where a heading row follows, or a line that states another lot or unit.
    fn turned_ends(&mut self, record: &Record<'_>) -> bool {
        let said = Self::stated_line(record);
        let header = self.headers.read(record).filter(|header| {
            header.layout != Layout::Turned && heading::names_a_reading_and_a_unit(&header.columns)
        });
        if said.is_none() && header.is_none() {
            return false;
        }
        let Some(rows) = self.turned.take() else { return false };
        self.turn(&rows);
        if let Some(said) = said {
            self.hear(&said, record.line);
            self.source.set_aside[SetAside::Remark as usize] += 1;
            self.turned = Some(TurnedRows::new(rows.labels()));
        } else if let Some(header) = header {
            let mark = self.plan.mark.decimal;
            self.begin_block(header, record.line, mark);
            self.notice((record.line, 0), NoticeCode::NewHeader, b"");
            self.source.set_aside[SetAside::Heading as usize] += 1;
        }
        true
    }

    /// Reads a table on its side that has come to its end.
    fn turn(&mut self, rows: &TurnedRows) {
        if rows.is_empty() {
            return;
        }
        let (line, heading_row) = rows.first_line();
        let fingerprint = header::fingerprint(&rows.labels_text());
        let (mut told, mut missing) = (0, Vec::new());
        let turned = rows.turn(&mut |columns| {
            let header = self.headers.with_roles(columns, fingerprint.clone());
            (told, missing) = (header.told, header.missing);
            header.columns
        });
        let header = Header { columns: turned.columns, fingerprint, layout: Layout::Turned, told, missing };
        // Dates stand in a row here: each is read by what it shows itself.
        for cell in turned.dates {
            self.sample.dates.look(&cell);
        }
        let first = self.source.blocks.is_empty();
        self.begin_block(header, line, turned.mark.or(self.sample.mark));
        if first {
            self.notice((line, 0), NoticeCode::TableTurned, b"");
        }
        for (place, name) in &turned.summaries {
            self.count(*place, NoticeCode::SummaryRow, name);
        }
        for reading in &turned.readings {
            let record = Record::put_together(&reading.bytes, &reading.ends, &reading.places);
            self.wide_reading(&record);
            let at = self.source.readings.len().saturating_sub(1);
            self.source.readings.set_rows_of(at, 0);
        }
        let counted = |lines: &[u32]| lines.iter().filter(|at| !(heading_row && **at == line)).count() as u64;
        let (used, unused) = (counted(&turned.used), counted(&turned.unused));
        // Without a reading (all its columns are limits, say) no row is in one.
        let (used, unused) = if turned.readings.is_empty() { (0, used + unused) } else { (used, unused) };
        self.source.rows_turned += used;
        self.source.set_aside[SetAside::Remark as usize] += unused;
    }

    fn row(&mut self, record: &Record<'_>) {
        // A record over several lines has used up as many rows.
        self.source.rows_in += u64::from(record.lines - 1);
        if record.lines > 1 && self.swallowed_rows(record) {
            self.refuse((record.line, 0), NoticeCode::QuoteLeftOpen, "", u64::from(record.lines));
            return;
        }
        let rows = u64::from(record.lines);
        let aside = self.heading_or_units(record);
        if let Some(aside) = aside {
            self.source.set_aside[aside as usize] += rows;
            return;
        }
        if self.plan.closed {
            self.refuse((record.line, 0), NoticeCode::UnderUnknownHeading, "", rows);
            return;
        }
        if record.len() > self.plan.columns
            && let Some(extra) =
                (self.plan.columns..record.len()).find(|at| !record.cell(*at).trim_ascii().is_empty())
        {
            let found = cell::text(record.cell(extra)).into_owned();
            self.refuse((record.line, extra as u32 + 1), NoticeCode::RowTooLong, &found, rows);
            return;
        }
        if self.stated_between(record) {
            self.source.set_aside[SetAside::Remark as usize] += rows;
            return;
        }
        if self.is_turned_row(record) {
            self.refuse((record.line, 0), NoticeCode::UnderUnknownHeading, "", rows);
            return;
        }
        if let Some((at, name)) = self.summary_row(record) {
            self.count((record.line, at as u32 + 1), NoticeCode::SummaryRow, &name);
            self.source.set_aside[SetAside::Remark as usize] += rows;
            return;
        }
        if let Some(at) = self.second_sample(record) {
            let found = cell::text(record.cell(at)).into_owned();
            self.refuse((record.line, at as u32 + 1), NoticeCode::TwoReadingsInRow, &found, rows);
            return;
        }
        if self.nothing_usable(record) {
            self.refuse((record.line, 0), NoticeCode::NothingUsable, "", rows);
            return;
        }
        let foreign =
            self.plan.identities.iter().find(|(at, _)| std::str::from_utf8(record.cell(*at)).is_err());
        if let Some((at, _)) = foreign.copied() {
            self.count((record.line, at as u32 + 1), NoticeCode::NotUtf8, &cell::text(record.cell(at)));
        }
        if record.len() < self.plan.columns {
            self.count((record.line, 0), NoticeCode::RowShort, &record.len().to_string());
        }
        // A reading takes one row of its lines; the others are the rest of the same row.
        self.source.rows_in -= u64::from(record.lines - 1);
        match (self.plan.row_element, self.plan.layout) {
            (Some(named), _) => self.long_row(record, named),
            (None, Layout::Joined) => self.joined_row(record),
            (None, _) => self.wide_reading(record),
        }
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
    fn heading_or_units(&mut self, record: &Record<'_>) -> Option<SetAside> {
        if self.may_be_unit_row {
            self.may_be_unit_row = false;
            if self.take_unit_row(record) {
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
        if let Some(header) = self.headers.read(record) {
            let mark = self.plan.mark.decimal;
            self.begin_block(header, record.line, mark);
            self.notice((record.line, 0), NoticeCode::NewHeader, b"");
            return Some(SetAside::Heading);
        }
        // Words that name elements where numbers should be: another heading, in a form not understood. Reading on
        // under the old one would put numbers into the wrong columns.
        if words == InValueCells::Words && names_elements(record) >= 2 && !holds_measurements(record) {
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

    fn take_unit_row(&mut self, record: &Record<'_>) -> bool {
        let Some(block) = self.source.blocks.last() else { return false };
        let texts: Vec<Cow<'_, str>> = record.cells().map(cell::text).collect();
        let cells: Vec<&str> = texts.iter().map(AsRef::as_ref).collect();
        let Some(units) = heading::unit_row(&block.columns, &cells) else { return false };
        if block.first_reading < self.source.readings.len() {
            // Under a repeated heading: rows above keep the units they were read in.
            let (header, mark) = (self.headers.of_headings(&self.headings), self.plan.mark.decimal);
            self.begin_block(header, record.line, mark);
            self.may_be_unit_row = false;
        }
        if let Some(block) = self.source.blocks.last_mut() {
            heading::apply_unit_row(&mut block.columns, &units);
        }
        self.plan_block(self.plan.layout);
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
        let plan = &self.plan;
        !plan.identities.iter().any(|(at, _)| used(*at))
            && !plan.time.is_some_and(|time| used(time.date))
            && !plan.row_element.is_some_and(|named| used(named.name))
            && !plan.elements.iter().any(|planned| {
                used(planned.value)
                    || planned.error.is_some_and(|error| used(error.at))
                    || planned.limit.is_some_and(|(at, _)| used(at))
                    || planned.as_oxide.as_ref().is_some_and(|oxide| used(oxide.value))
            })
    }

    /// Says that bytes were no characters.
    pub(crate) fn broken_bytes(&mut self, line: u32, count: u64) {
        self.notice((line, 0), NoticeCode::BytesNoCharacter, b"");
        if let Some(notice) = self.source.notices.kept.last_mut() {
            notice.rows = count;
        }
    }

    pub(crate) fn close(&mut self) {
        if let Some(rows) = self.turned.take() {
            self.turn(&rows);
        }
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
                self.refuse_all(NoticeCode::HeaderOnly, "");
            }
            _ => {}
        }
        self.material_or_class();
        self.class_words();
    }
}

/// How many cells of a row name an element by its symbol.
fn names_elements(record: &Record<'_>) -> usize {
    let short = record.cells().filter(|cell| cell.len() <= LONGEST_FOUND);
    let texts = short.filter_map(|cell| std::str::from_utf8(cell).ok());
    texts.filter(|cell| heading::names_an_element(cell)).count()
}
