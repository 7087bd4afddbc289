//! Readings in columns: one store for each source, never edited after intake.

use std::collections::BTreeSet;

use sha2::{Digest, Sha256};

pub use crate::column::{ColumnMeaning, ColumnRole, Evidence};
pub use crate::identity::Identity;
use crate::quantity::{DecimalMark, MassFraction, SigmaMultiple, Unit};
use crate::substance::Element;
use crate::text_pool::{TextId, TextPool};

/// What a cell of an element says. Blank, zero, not detected and below a number stay four different things.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum CellState {
    /// The source has no column for the element.
    NoColumn,
    /// A number, which may be zero or negative.
    Number,
    /// A number whose unit nobody stated; the text is kept, the number is not.
    UnitUnknown,
    /// Below a stated detection limit.
    BelowDetection,
    /// Not detected, with no number anywhere.
    NotDetected,
    /// Above a stated upper end of the range.
    AboveRange,
    /// An empty cell, or a dash.
    Blank,
    /// Text that is no measurement.
    Text,
}

impl CellState {
    /// All states a finding can show.
    pub const ALL: [CellState; 8] = [
        CellState::NoColumn,
        CellState::Number,
        CellState::UnitUnknown,
        CellState::BelowDetection,
        CellState::NotDetected,
        CellState::AboveRange,
        CellState::Blank,
        CellState::Text,
    ];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            CellState::NoColumn => "no_column",
            CellState::Number => "number",
            CellState::UnitUnknown => "unit_unknown",
            CellState::BelowDetection => "below_detection",
            CellState::NotDetected => "not_detected",
            CellState::AboveRange => "above_range",
            CellState::Blank => "blank",
            CellState::Text => "text",
        }
    }
}

/// One element's cell, read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// What the cell says.
    pub state: CellState,
    /// The value, or the bound of a below-detection or above-range cell, in mg/kg.
    pub value: MassFraction,
    /// The printed uncertainty U (= k s) in mg/kg; `None` where there is none.
    pub printed_error: Option<MassFraction>,
    /// The detection limit stated for this cell in a column of its own, in mg/kg.
    pub detection_limit: Option<MassFraction>,
}

impl Cell {
    /// A cell of an element the source has no column for.
    pub const NO_COLUMN: Cell = Cell {
        state: CellState::NoColumn,
        value: MassFraction::ZERO,
        printed_error: None,
        detection_limit: None,
    };
}

/// How a cell was written, kept so that findings can show it as it stood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Written {
    /// Nothing stood there.
    Nothing,
    /// A plain number with this many decimals in the block's unit and decimal mark; remade from the value.
    Plain(u8),
    /// Anything else: kept as text.
    Text(TextId),
}

const NO_ERROR: i64 = -1;
const NO_LIMIT: i64 = -1;
const WRITTEN_NOTHING: u8 = 254;
const WRITTEN_TEXT: u8 = 255;

/// One element's cells down a source.
///
/// # Shapes
/// Every vector is as long as the store has readings; `limits` is empty until a cell states one.
#[derive(Clone, Debug)]
pub struct ElementColumn {
    /// The element.
    pub element: Element,
    states: Vec<CellState>,
    values: Vec<i64>,
    errors: Vec<i64>,
    limits: Vec<i64>,
    written: Vec<u8>,
    written_texts: Vec<(u32, TextId)>,
}

impl ElementColumn {
    fn new(element: Element, capacity: usize) -> ElementColumn {
        ElementColumn {
            element,
            states: Vec::with_capacity(capacity),
            values: Vec::with_capacity(capacity),
            errors: Vec::with_capacity(capacity),
            limits: Vec::new(),
            written: Vec::with_capacity(capacity),
            written_texts: Vec::new(),
        }
    }

    /// True where a reading has something in its cell.
    pub fn is_filled(&self, row: usize) -> bool {
        !matches!(self.states.get(row), None | Some(CellState::NoColumn | CellState::Blank))
    }

    /// Puts the cell of an earlier reading in place of what stood there.
    fn put(&mut self, row: usize, cell: Cell, written: Written) {
        self.pad_to(row);
        if row == self.states.len() {
            self.push(cell, written);
            return;
        }
        let limit = cell.detection_limit.map_or(NO_LIMIT, MassFraction::units);
        if limit != NO_LIMIT && self.limits.is_empty() {
            self.limits.resize(self.states.len(), NO_LIMIT);
        }
        let mark = match written {
            Written::Nothing => WRITTEN_NOTHING,
            Written::Plain(decimals) => decimals,
            Written::Text(id) => {
                let at = self.written_texts.partition_point(|(known, _)| (*known as usize) < row);
                match self.written_texts.get_mut(at) {
                    Some(known) if known.0 as usize == row => known.1 = id,
                    _ => self.written_texts.insert(at, (row as u32, id)),
                }
                WRITTEN_TEXT
            }
        };
        if let Some(state) = self.states.get_mut(row) {
            *state = cell.state;
        }
        for (column, value) in [
            (&mut self.values, cell.value.units()),
            (&mut self.errors, cell.printed_error.map_or(NO_ERROR, MassFraction::units)),
            (&mut self.limits, limit),
        ] {
            if let Some(place) = column.get_mut(row) {
                *place = value;
            }
        }
        if let Some(place) = self.written.get_mut(row) {
            *place = mark;
        }
    }

    /// Adds the next reading's cell.
    pub fn push(&mut self, cell: Cell, written: Written) {
        let row = self.states.len();
        self.states.push(cell.state);
        self.values.push(cell.value.units());
        self.errors.push(cell.printed_error.map_or(NO_ERROR, MassFraction::units));
        if let Some(limit) = cell.detection_limit {
            self.limits.resize(row, NO_LIMIT);
            self.limits.push(limit.units());
        } else if !self.limits.is_empty() {
            self.limits.push(NO_LIMIT);
        }
        self.written.push(match written {
            Written::Nothing => WRITTEN_NOTHING,
            Written::Plain(decimals) => decimals,
            Written::Text(id) => {
                self.written_texts.push((row as u32, id));
                WRITTEN_TEXT
            }
        });
    }

    /// Leaves the cells of the rows to keep; gives the others as a column of their own.
    fn keep(&mut self, keep: &[bool]) -> ElementColumn {
        let ElementColumn { element, states, values, errors, limits, written, written_texts } = self;
        let (mut kept_texts, mut taken_texts) = (Vec::new(), Vec::new());
        let (mut kept_rows, mut seen) = (0, 0);
        for (row, text) in std::mem::take(written_texts) {
            while seen < row {
                kept_rows += u32::from(keeps(keep, seen as usize));
                seen += 1;
            }
            if keeps(keep, row as usize) {
                kept_texts.push((kept_rows, text));
            } else {
                taken_texts.push((row - kept_rows, text));
            }
        }
        *written_texts = kept_texts;
        ElementColumn {
            element: *element,
            states: split(states, keep),
            values: split(values, keep),
            errors: split(errors, keep),
            limits: split(limits, keep),
            written: split(written, keep),
            written_texts: taken_texts,
        }
    }

    /// The other way round: puts the cells taken out back in their places.
    fn put_back(&mut self, taken: ElementColumn, keep: &[bool]) {
        let (mut kept_texts, mut taken_texts) =
            (std::mem::take(&mut self.written_texts).into_iter(), taken.written_texts.into_iter());
        for (row, state) in merged(&self.written, &taken.written, keep).iter().enumerate() {
            if *state == WRITTEN_TEXT {
                let text = if keeps(keep, row) { kept_texts.next() } else { taken_texts.next() };
                self.written_texts.extend(text.map(|(_, text)| (row as u32, text)));
            }
        }
        self.states = merged(&self.states, &taken.states, keep);
        self.values = merged(&self.values, &taken.values, keep);
        self.errors = merged(&self.errors, &taken.errors, keep);
        self.limits = merged(&self.limits, &taken.limits, keep);
        self.written = merged(&self.written, &taken.written, keep);
    }

    fn pad_to(&mut self, rows: usize) {
        while self.states.len() < rows {
            self.push(Cell::NO_COLUMN, Written::Nothing);
        }
    }

    /// The cell of one reading.
    pub fn cell(&self, row: usize) -> Cell {
        let Some(&state) = self.states.get(row) else { return Cell::NO_COLUMN };
        Cell {
            state,
            value: MassFraction::from_units(self.values.get(row).copied().unwrap_or(0)),
            printed_error: self
                .errors
                .get(row)
                .filter(|e| **e != NO_ERROR)
                .map(|e| MassFraction::from_units(*e)),
            detection_limit: self
                .limits
                .get(row)
                .filter(|d| **d != NO_LIMIT)
                .map(|d| MassFraction::from_units(*d)),
        }
    }

    /// The state and the value (in millionths of mg/kg) of some rows, for sums down many columns.
    pub fn states_and_values(&self, rows: std::ops::Range<usize>) -> impl Iterator<Item = (CellState, i64)> {
        let states = self.states.get(rows.clone()).unwrap_or_default();
        let values = self.values.get(rows).unwrap_or_default();
        states.iter().copied().zip(values.iter().copied())
    }

    /// How the cell of one reading was written.
    pub fn written(&self, row: usize) -> Written {
        match self.written.get(row).copied() {
            None | Some(WRITTEN_NOTHING) => Written::Nothing,
            Some(WRITTEN_TEXT) => self
                .written_texts
                .binary_search_by_key(&(row as u32), |(at, _)| *at)
                .ok()
                .and_then(|at| self.written_texts.get(at))
                .map_or(Written::Nothing, |(_, id)| Written::Text(*id)),
            Some(decimals) => Written::Plain(decimals),
        }
    }
}

fn keeps(keep: &[bool], row: usize) -> bool {
    keep.get(row).copied().unwrap_or(true)
}

/// Leaves the rows to keep in a column and gives the others. A column shorter than the store stays short.
fn split<T: Copy>(column: &mut Vec<T>, keep: &[bool]) -> Vec<T> {
    let mut taken = Vec::new();
    let mut row = 0;
    column.retain(|value| {
        let kept = keeps(keep, row);
        row += 1;
        if !kept {
            taken.push(*value);
        }
        kept
    });
    taken
}

/// What [`split`] took apart, whole again.
fn merged<T: Copy>(kept: &[T], taken: &[T], keep: &[bool]) -> Vec<T> {
    let (mut kept, mut taken) = (kept.iter(), taken.iter());
    let mut whole = Vec::with_capacity(kept.len() + taken.len());
    for keep in keep {
        whole.extend(if *keep { kept.next() } else { taken.next() });
    }
    whole
}

/// How the readings of a block lie in its rows.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum Layout {
    /// A row a reading, a column an element.
    #[default]
    Wide,
    /// A row an element of a reading; rows with the same identity make one reading.
    Long,
    /// A column a reading, a row an element.
    Turned,
    /// Several rows a reading, one a spectrum or filter, each with some of the elements.
    Joined,
}

impl Layout {
    /// All of them, for the contract's list.
    pub const ALL: [Layout; 4] = [Layout::Wide, Layout::Long, Layout::Turned, Layout::Joined];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            Layout::Wide => "wide",
            Layout::Long => "long",
            Layout::Turned => "turned",
            Layout::Joined => "joined",
        }
    }
}

/// A run of rows under one header.
#[derive(Clone, Debug)]
pub struct Block {
    /// The header's line in the source, 1-based.
    pub header_line: u32,
    /// Names this set of headings in mappings, whatever file it stands in.
    pub fingerprint: String,
    /// How its readings lie in its rows.
    pub layout: Layout,
    /// The first reading of the block in its source.
    pub first_reading: usize,
    /// What each column was taken for.
    pub columns: Vec<ColumnMeaning>,
    /// The decimal mark of its numbers; `None` where the block never shows one.
    pub mark: Option<DecimalMark>,
    /// The unit for values whose unit their column doesn't state: from the lines above the table, else from a person.
    pub set_unit: Option<Unit>,
    /// The multiple of printed uncertainties stated in the lines above the table, or in a column of its own.
    pub stated_above: Option<SigmaMultiple>,
    /// True where a number in the error column of a non-detect was read as its limit.
    pub limit_in_error_column: bool,
}

impl Block {
    /// The stated multiple of an element's printed uncertainty.
    pub fn stated_multiple(&self, wanted: Element) -> Option<SigmaMultiple> {
        self.columns
            .iter()
            .find_map(|column| match column.role {
                ColumnRole::Error { element, error, .. } if element == wanted => error.multiple,
                ColumnRole::AnyError { error } => error.multiple,
                _ => None,
            })
            .or(self.stated_above)
    }

    /// True where the block has a printed uncertainty whose multiple nobody stated.
    pub fn has_unstated_multiple(&self) -> bool {
        self.stated_above.is_none()
            && self
                .columns
                .iter()
                .any(|column| column.role.error().is_some_and(|error| error.multiple.is_none()))
    }

    /// The stated unit of an element's values, or the one a person set.
    pub fn unit_of(&self, wanted: Element) -> Option<Unit> {
        let stated = self.columns.iter().find_map(|column| match column.role {
            ColumnRole::Value { element, unit, oxide: None } if element == wanted => unit,
            _ => None,
        });
        stated.or(self.set_unit)
    }
}

/// Readings of one source, in file order.
#[derive(Clone, Debug, Default)]
pub struct Readings {
    /// Interned text of this source.
    pub pool: TextPool,
    lines: Vec<u32>,
    /// Rows of the source each reading took; shorter than the store where the rest took one.
    rows: Vec<u32>,
    identities: [Vec<TextId>; Identity::COUNT],
    elements: Vec<ElementColumn>,
}

impl Readings {
    /// How many readings there are.
    pub fn len(&self) -> usize {
        self.lines.len()
    }

    /// True where there are none.
    pub fn is_empty(&self) -> bool {
        self.lines.is_empty()
    }

    /// Starts the next reading, from this physical line of the source (1-based).
    pub fn begin(&mut self, line: u32) {
        self.lines.push(line);
    }

    /// States how many rows of the source a reading took, where it isn't one; none in a table on its side, whose
    /// rows are counted in [`Source::rows_turned`].
    pub fn set_rows_of(&mut self, row: usize, rows: u32) {
        if self.rows.len() <= row {
            self.rows.resize(row + 1, 1);
        }
        if let Some(place) = self.rows.get_mut(row) {
            *place = rows;
        }
    }

    /// How many rows of the source all readings took.
    pub fn rows_in_all(&self) -> u64 {
        if self.rows.is_empty() {
            return self.lines.len() as u64;
        }
        (0..self.lines.len()).map(|row| u64::from(self.rows_of(row))).sum()
    }

    /// How many rows of the source a reading took.
    pub fn rows_of(&self, row: usize) -> u32 {
        self.rows.get(row).copied().unwrap_or(1)
    }

    /// Sets an identity of an earlier reading, where it has none.
    pub fn fill_identity(&mut self, row: usize, identity: Identity, text: &str) {
        if self.identity_id(identity, row).is_some() {
            return;
        }
        let id = self.pool.intern_near(text, TextId::NONE);
        if let Some(column) = self.identities.get_mut(identity as usize)
            && id.is_some()
        {
            if column.len() <= row {
                column.resize(row + 1, TextId::NONE);
            }
            if let Some(place) = column.get_mut(row) {
                *place = id;
            }
        }
    }

    /// Sets an identity of the reading begun last.
    pub fn set_identity(&mut self, identity: Identity, text: &str) {
        let row = self.lines.len() - 1;
        // Lots, parts and dates repeat down a file: the row above is asked before the pool is.
        let above = self.identities.get(identity as usize).and_then(|column| column.last()).copied();
        let id = self.pool.intern_near(text, above.unwrap_or_default());
        if let Some(column) = self.identities.get_mut(identity as usize)
            && (id.is_some() || !column.is_empty())
        {
            column.resize(row, TextId::NONE);
            column.push(id);
        }
    }

    /// The column of an element, made (and filled up with "no column") if the source had none so far.
    pub fn element_column(&mut self, element: Element) -> &mut ElementColumn {
        let rows = self.lines.len().saturating_sub(1);
        let at = match self.elements.binary_search_by_key(&element, |column| column.element) {
            Ok(at) => at,
            Err(at) => {
                self.elements.insert(at, ElementColumn::new(element, rows));
                at
            }
        };
        let column = &mut self.elements[at];
        column.pad_to(rows);
        column
    }

    /// Where an element's column stands in [`Readings::elements`], for a reader that pushes row after row.
    pub fn element_index(&mut self, element: Element) -> usize {
        self.element_column(element);
        self.elements.binary_search_by_key(&element, |column| column.element).unwrap_or(0)
    }

    /// Pushes a cell of the reading begun last into the column at `index`.
    pub fn push_cell(&mut self, index: usize, cell: Cell, written: Written) {
        let rows = self.lines.len().saturating_sub(1);
        if let Some(column) = self.elements.get_mut(index) {
            column.pad_to(rows);
            column.push(cell, written);
        }
    }

    /// Puts a cell of an earlier reading into the column at `index`.
    pub fn put_cell(&mut self, index: usize, row: usize, cell: Cell, written: Written) {
        if let Some(column) = self.elements.get_mut(index) {
            column.put(row, cell, written);
        }
    }

    /// Fills every column up to the number of readings; called once, when the source has ended.
    pub fn close(&mut self) {
        let rows = self.lines.len();
        if !self.rows.is_empty() {
            self.rows.resize(rows, 1);
        }
        for column in &mut self.elements {
            column.pad_to(rows);
        }
        for column in &mut self.identities {
            if !column.is_empty() {
                column.resize(rows, TextId::NONE);
            }
        }
    }

    /// Leaves the readings to keep and gives the others, in order. Their texts stay in this store's pool.
    ///
    /// `keep` is as long as the store; [`Readings::put_back`] with the same `keep` undoes it.
    #[must_use = "the others are needed to put them back"]
    pub fn keep(&mut self, keep: &[bool]) -> Readings {
        // Taken apart by name: a new column that is forgotten here must not compile.
        let Readings { pool: _, lines, rows, identities, elements } = self;
        Readings {
            pool: TextPool::default(),
            lines: split(lines, keep),
            rows: split(rows, keep),
            identities: identities.each_mut().map(|column| split(column, keep)),
            elements: elements.iter_mut().map(|column| column.keep(keep)).collect(),
        }
    }

    /// Puts readings that [`Readings::keep`] took out back in their places.
    pub fn put_back(&mut self, taken: Readings, keep: &[bool]) {
        let Readings { pool: _, lines, rows, identities, elements } = taken;
        self.lines = merged(&self.lines, &lines, keep);
        self.rows = merged(&self.rows, &rows, keep);
        for (own, taken) in self.identities.iter_mut().zip(identities) {
            *own = merged(own, &taken, keep);
        }
        for (own, taken) in self.elements.iter_mut().zip(elements) {
            own.put_back(taken, keep);
        }
    }

    /// Turns the material column into the class column: it held only class words.
    pub fn material_is_class(&mut self) {
        let material = std::mem::take(&mut self.identities[Identity::Material as usize]);
        self.identities[Identity::Class as usize] = material;
    }

    /// Physical line of a reading in its source, 1-based.
    pub fn line(&self, row: usize) -> u32 {
        self.lines.get(row).copied().unwrap_or(0)
    }

    /// The interned identity of a reading.
    pub fn identity_id(&self, identity: Identity, row: usize) -> TextId {
        self.identities.get(identity as usize).and_then(|column| column.get(row)).copied().unwrap_or_default()
    }

    /// The identity of a reading, as text.
    pub fn identity(&self, identity: Identity, row: usize) -> Option<&str> {
        self.pool.get(self.identity_id(identity, row))
    }

    /// Every element column, by atomic number.
    pub fn elements(&self) -> &[ElementColumn] {
        &self.elements
    }

    /// The cell of an element in a reading.
    pub fn cell(&self, element: Element, row: usize) -> Cell {
        self.column_of(element).map_or(Cell::NO_COLUMN, |column| column.cell(row))
    }

    /// The column of an element, where there is one.
    pub fn column_of(&self, element: Element) -> Option<&ElementColumn> {
        self.elements
            .binary_search_by_key(&element, |column| column.element)
            .ok()
            .and_then(|at| self.elements.get(at))
    }
}

/// What became of a row that is not a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum SetAside {
    /// Nothing in it.
    Blank,
    /// The heading again.
    Heading,
    /// A row of units.
    UnitRow,
    /// A row of a long table that names no element and measures nothing: a remark or a key with its value.
    Remark,
}

impl SetAside {
    /// All of them.
    pub const ALL: [SetAside; 4] = [SetAside::Blank, SetAside::Heading, SetAside::UnitRow, SetAside::Remark];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            SetAside::Blank => "blank",
            SetAside::Heading => "heading",
            SetAside::UnitRow => "unit_row",
            SetAside::Remark => "remark",
        }
    }
}

/// Something said about a place in a source: code and arguments; the words come from the catalogue.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Notice {
    /// Physical line, 1-based; 0 where the whole source is meant.
    pub line: u32,
    /// Column, 1-based; 0 where the whole row is meant.
    pub column: u32,
    /// Heading of the column.
    pub heading: String,
    /// What it is about.
    pub code: NoticeCode,
    /// The text it is about, cut short.
    pub found: String,
    /// How many rows it speaks for.
    pub rows: u64,
}

/// An enum whose variants have a code, for findings, views and the catalogue of words; also for other rooms.
#[macro_export]
macro_rules! codes {
    ($(#[$doc:meta])* $name:ident { $($(#[$variant_doc:meta])* $variant:ident => $code:literal,)* }) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
        pub enum $name { $($(#[$variant_doc])* $variant,)* }
        impl $name {
            /// All of them, for the contract's list.
            pub const ALL: &'static [$name] = &[$($name::$variant,)*];
            /// The code used in findings and in the catalogue.
            pub const fn code(self) -> &'static str { match self { $($name::$variant => $code,)* } }
        }
    };
}
pub(crate) use codes;

codes! {
    /// What a notice or a refusal is about.
    NoticeCode {
        /// The file could not be read.
        Unreadable => "unreadable",
        /// The file is empty.
        Empty => "empty_file",
        /// The file has a header and no rows.
        HeaderOnly => "header_only",
        /// The bytes are no text.
        NotText => "not_text",
        /// The workbook is damaged, or no workbook.
        WorkbookBroken => "workbook_broken",
        /// The workbook is locked by a password, or of an old format that isn't read.
        WorkbookNotRead => "workbook_not_read",
        /// The workbook holds more than is unpacked.
        WorkbookTooLarge => "workbook_too_large",
        /// Other sheets of the workbook that were not read.
        OtherSheets => "other_sheets",
        /// The sheet a person named is not in the workbook.
        SheetNotThere => "sheet_not_there",
        /// The archive is damaged, or no archive.
        ArchiveBroken => "archive_broken",
        /// The archive, or a file in it, holds more than is unpacked.
        ArchiveTooLarge => "archive_too_large",
        /// A file in an archive that can't be unpacked: locked, or packed in a way that isn't read.
        EntryNotRead => "entry_not_read",
        /// An archive inside an archive.
        ArchiveInArchive => "archive_in_archive",
        /// The encoding of the text was inferred.
        EncodingInferred => "encoding_inferred",
        /// Bytes that are no character in the encoding.
        BytesNoCharacter => "bytes_no_character",
        /// No column of an element was found.
        NoElementColumn => "no_element_column",
        /// Two columns for the same meaning.
        ColumnTwice => "column_twice",
        /// An element heading with words that are not understood.
        HeadingNotUnderstood => "heading_not_understood",
        /// A quote was opened and never closed.
        QuoteLeftOpen => "quote_left_open",
        /// One line is longer than any table row.
        LineTooLong => "line_too_long",
        /// More cells than the header has columns.
        RowTooLong => "row_too_long",
        /// A row under a heading that was not understood.
        UnderUnknownHeading => "under_unknown_heading",
        /// A value more than three printed errors below zero.
        FarBelowZero => "far_below_zero",
        /// Fewer cells than the header has columns.
        RowShort => "row_short",
        /// A row with no cell in any column that is used.
        NothingUsable => "nothing_usable",
        /// Bytes that are not UTF-8 in an identity cell; read as Windows-1252.
        NotUtf8 => "not_utf8",
        /// A cell that is no number.
        CellNotUnderstood => "cell_not_understood",
        /// A number beyond any mass fraction.
        NumberOutOfRange => "number_out_of_range",
        /// More than the whole.
        MoreThanWhole => "more_than_whole",
        /// A comma or point that may be decimal or thousands mark.
        MarkUnclear => "mark_unclear",
        /// The uncertainty cell is no number, negative, or out of range.
        ErrorNotUnderstood => "error_not_understood",
        /// The uncertainty's unit can't be told.
        ErrorUnitUnclear => "error_unit_unclear",
        /// The unit of a value is not stated.
        UnitNotStated => "unit_not_stated",
        /// The unit word is not known.
        UnitNotKnown => "unit_not_known",
        /// The multiple of sigma is not stated.
        MultipleNotStated => "multiple_not_stated",
        /// A number in the error column of a non-detect was read as its limit.
        LimitInErrorColumn => "limit_in_error_column",
        /// A class word that is no class here.
        ClassNotUnderstood => "class_not_understood",
        /// The same bytes as another source.
        SameAsAnother => "same_as_another",
        /// More columns than any table has.
        TooManyColumns => "too_many_columns",
        /// A row of a long table whose element is not understood.
        ElementNotUnderstood => "element_not_understood",
        /// The same element twice in one reading: rows of one spectrum each, or repeated rows of a long table.
        ElementTwice => "element_twice",
        /// A row or a column that sums others up or states a limit: an average, a detection limit.
        SummaryRow => "summary_row",
        /// A row that names two samples: two tables side by side.
        TwoReadingsInRow => "two_readings_in_row",
        /// A line that states another unit or multiple than one before it: which holds can't be told.
        StatedTwice => "stated_twice",
        /// Numbers of an oxide were converted to its element.
        OxideConverted => "oxide_converted",
        /// Dates whose order of day and month can't be told.
        DateOrderUnclear => "date_order_unclear",
        /// A date that is none.
        DateNotUnderstood => "date_not_understood",
        /// A combined id that doesn't fit the pattern a person showed.
        IdPatternDiffers => "id_pattern_differs",
        /// A line above the table that was used: a lot, a unit, an instrument.
        StatedAbove => "stated_above",
        /// The table lies on its side: a column a reading.
        TableTurned => "table_turned",
        /// Rows of several spectra were joined to readings.
        RowsJoined => "rows_joined",
        /// A person's mapping of columns was used.
        MappedByHand => "mapped_by_hand",
        /// A mapping names a column that the table doesn't have, or the header line it names is no header.
        MappingDiffers => "mapping_differs",
        /// A reading that stands somewhere else too, and says no more than it does there.
        DuplicateReading => "duplicate_reading",
        /// A reading that stands somewhere else too, and each says something the other doesn't.
        SameReadingInParts => "same_reading_in_parts",
        /// A new header further down.
        NewHeader => "new_header",
        /// Lines before the header, kept as metadata.
        Preamble => "preamble",
        /// A file that is no table, skipped in a folder.
        Skipped => "skipped",
    }
}

/// Notices of one list kept in full; beyond this only counted, so that a broken million-row file stays readable.
pub const NOTICES_KEPT: usize = 1000;

/// A list of notices that keeps the first [`NOTICES_KEPT`] and counts the rest.
#[derive(Clone, Debug, Default)]
pub struct Notices {
    /// Those kept, in file order.
    pub kept: Vec<Notice>,
    /// How many more there were.
    pub left_out: u64,
}

impl Notices {
    /// Adds one.
    pub fn push(&mut self, notice: Notice) {
        if self.kept.len() < NOTICES_KEPT {
            self.kept.push(notice);
        } else {
            self.left_out += 1;
        }
    }
}

/// How the encoding of a text was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Default)]
pub enum EncodingKnownBy {
    /// A byte order mark.
    ByteOrderMark,
    /// Every byte fits UTF-8.
    #[default]
    ValidUtf8,
    /// The pattern of zero bytes.
    ByteCounts,
    /// Words of result tables appear when read so.
    WordsFound,
    /// Statistics of its bytes only.
    Guess,
    /// A person said so.
    Told,
}

impl EncodingKnownBy {
    /// All of them, for the contract's list.
    pub const ALL: [EncodingKnownBy; 6] = [
        EncodingKnownBy::ByteOrderMark,
        EncodingKnownBy::ValidUtf8,
        EncodingKnownBy::ByteCounts,
        EncodingKnownBy::WordsFound,
        EncodingKnownBy::Guess,
        EncodingKnownBy::Told,
    ];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            EncodingKnownBy::ByteOrderMark => "byte_order_mark",
            EncodingKnownBy::ValidUtf8 => "valid_utf8",
            EncodingKnownBy::ByteCounts => "byte_counts",
            EncodingKnownBy::WordsFound => "words_found",
            EncodingKnownBy::Guess => "guess",
            EncodingKnownBy::Told => "told",
        }
    }
}

/// A sheet of a workbook.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Sheet {
    /// Its name.
    pub name: String,
    /// Hidden from who opens the workbook.
    pub hidden: bool,
    /// Rows it states.
    pub rows: u32,
    /// Columns it states.
    pub columns: u32,
    /// Element columns that its first rows promise; what the choice of a sheet rests on.
    pub element_columns: u32,
    /// The sheet that was read.
    pub read: bool,
    /// It promises a table, and nobody said that it is not wanted.
    pub passed_over: bool,
}

/// The archive a source was packed in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Container {
    /// Its name, as a source's.
    pub name: String,
    /// SHA-256 of its bytes.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
}

/// A line above the table that says something of every reading below.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stated {
    /// Its line.
    pub line: u32,
    /// The word it is stated under.
    pub key: String,
    /// What it says.
    pub value: String,
    /// What it was used as: an identity, the unit or the multiple; `None` where it is only kept.
    pub used_as: Option<StatedUse>,
}

/// What a line above the table was used as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum StatedUse {
    /// An identity of every reading that states none.
    Identity(Identity),
    /// The unit of values whose column states none.
    Unit(Unit),
    /// The multiple of uncertainties whose column states none.
    Multiple(SigmaMultiple),
}

impl StatedUse {
    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            StatedUse::Identity(identity) => identity.code(),
            StatedUse::Unit(_) => "unit_of_measure",
            StatedUse::Multiple(_) => "error_multiple",
        }
    }
}

/// A raw row as it stood, for the preview of a mapping.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RawRow {
    /// Its line.
    pub line: u32,
    /// Its cells, long ones cut short.
    pub cells: Vec<String>,
}

/// One file as it came in.
#[derive(Clone, Debug, Default)]
pub struct Source {
    /// Base name, or the path inside the chosen folder with `/`.
    pub name: String,
    /// SHA-256 of its bytes, in lower-case hexadecimal.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
    /// The archive it was packed in.
    pub container: Option<Container>,
    /// The sheets, for a workbook.
    pub sheets: Vec<Sheet>,
    /// The encoding of its text (WHATWG label); empty for a workbook.
    pub encoding: &'static str,
    /// How the encoding was found.
    pub encoding_known_by: EncodingKnownBy,
    /// The delimiter found, where a table was found.
    pub delimiter: Option<u8>,
    /// Lines before the header.
    pub preamble: Vec<String>,
    /// What those lines state under a word.
    pub stated: Vec<Stated>,
    /// Raw rows from the first header on, for the preview; never part of findings.
    pub preview: Vec<RawRow>,
    /// Runs of rows under one header.
    pub blocks: Vec<Block>,
    /// The readings.
    pub readings: Readings,
    /// Rows in: all rows but preamble, the mapped header and the final newline.
    pub rows_in: u64,
    /// Rows of tables on their side: each holds a part of many readings.
    pub rows_turned: u64,
    /// Rows merged as duplicates.
    pub rows_duplicate: u64,
    /// Rows set aside, by reason.
    pub set_aside: [u64; 4],
    /// Rows refused.
    pub rows_refused: u64,
    /// Refused rows with place and reason.
    pub refusals: Notices,
    /// What else is worth saying.
    pub notices: Notices,
    /// Set where no table could be made of it: the reason for refusing the whole file.
    pub problem: Option<NoticeCode>,
    /// Readings taken out because they stand elsewhere too.
    pub duplicates: Duplicates,
}

/// The readings taken out of a source because they stand elsewhere too, kept so that another source may bring them
/// back: a page reads file after file, and its findings must not depend on when each came.
#[derive(Clone, Debug, Default)]
pub struct Duplicates {
    /// True once they were looked for among all sources there were.
    pub looked_for: bool,
    /// Supplier and lot of the readings that stay in their place, with the index of the source that holds them.
    pub lots: BTreeSet<(Option<String>, Option<String>, usize)>,
    taken: Readings,
    /// By row as the file has them; empty where nothing was taken.
    keep: Vec<bool>,
    /// Where the blocks began before.
    first_readings: Vec<usize>,
}

/// Encodings a text may be read in, by their WHATWG labels.
pub const TEXT_ENCODINGS: [&str; 11] = [
    "UTF-8",
    "UTF-16LE",
    "UTF-16BE",
    "windows-1252",
    "windows-1250",
    "windows-1251",
    "Shift_JIS",
    "EUC-JP",
    "gb18030",
    "Big5",
    "EUC-KR",
];

impl Source {
    /// Rows that went into readings; those of tables on their side as long as one of their readings is left.
    pub fn rows_in_readings(&self) -> u64 {
        self.readings.rows_in_all() + if self.readings.is_empty() { 0 } else { self.rows_turned }
    }

    /// True where two sources were read from the same bytes: the same file twice. Two sheets of one workbook are two
    /// tables.
    pub fn same_bytes_as(&self, other: &Source) -> bool {
        self.bytes > 0 && self.sha256 == other.sha256 && self.sheet_read() == other.sheet_read()
    }

    /// Which sheet of a workbook was read.
    pub fn sheet_read(&self) -> Option<usize> {
        self.sheets.iter().position(|sheet| sheet.read)
    }

    /// Rows set aside in all.
    pub fn rows_set_aside(&self) -> u64 {
        self.set_aside.iter().sum()
    }

    /// Takes the readings that are not to be kept out of the store and counts their rows as duplicates.
    pub fn take_duplicates_out(&mut self, keep: Vec<bool>) {
        self.put_duplicates_back();
        let taken = self.readings.keep(&keep);
        self.rows_duplicate += taken.rows_in_all();
        self.duplicates.first_readings = self.blocks.iter().map(|block| block.first_reading).collect();
        let (mut seen, mut kept) = (0, 0);
        for block in &mut self.blocks {
            while seen < block.first_reading {
                kept += usize::from(keeps(&keep, seen));
                seen += 1;
            }
            block.first_reading = kept;
        }
        self.duplicates.taken = taken;
        self.duplicates.keep = keep;
    }

    /// Undoes [`Source::take_duplicates_out`]; the notices about duplicates go too.
    pub fn put_duplicates_back(&mut self) {
        let Duplicates { taken, keep, first_readings, .. } = std::mem::take(&mut self.duplicates);
        self.notices.kept.retain(|notice| {
            !matches!(notice.code, NoticeCode::DuplicateReading | NoticeCode::SameReadingInParts)
        });
        if keep.is_empty() {
            return;
        }
        self.rows_duplicate = self.rows_duplicate.saturating_sub(taken.rows_in_all());
        self.readings.put_back(taken, &keep);
        for (block, first) in self.blocks.iter_mut().zip(first_readings) {
            block.first_reading = first;
        }
    }

    /// The block a reading belongs to.
    pub fn block_of(&self, row: usize) -> Option<&Block> {
        let after = self.blocks.partition_point(|block| block.first_reading <= row);
        after.checked_sub(1).and_then(|at| self.blocks.get(at))
    }
}

/// Lower-case hexadecimal of a SHA-256 state.
pub fn hexadecimal(digest: &[u8]) -> String {
    use std::fmt::Write;
    digest.iter().fold(String::with_capacity(digest.len() * 2), |mut text, byte| {
        // Writing to a String cannot fail.
        let _ = write!(text, "{byte:02x}");
        text
    })
}

/// SHA-256 of some bytes, in lower-case hexadecimal.
pub fn sha256_hexadecimal(bytes: &[u8]) -> String {
    hexadecimal(&Sha256::digest(bytes))
}
