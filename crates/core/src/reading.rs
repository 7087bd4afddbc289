//! Readings in columns: one store for each source, never edited after intake.

use std::collections::BTreeSet;

use sha2::{Digest, Sha256};

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

/// Identity columns a reading may carry.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum Identity {
    /// Sample or reading id.
    Id,
    /// The physical unit (piece) that was measured.
    Unit,
    /// Spot on the unit.
    Spot,
    /// Part number.
    Part,
    /// Name of the homogeneous material.
    Material,
    /// Lot, batch or delivery.
    Lot,
    /// Supplier.
    Supplier,
    /// Material class, as the file words it.
    Class,
    /// Date and time, as the file words it.
    Time,
    /// Measuring time in seconds, as the file words it.
    Seconds,
    /// Instrument.
    Instrument,
    /// Measuring mode or calibration.
    Mode,
    /// Operator.
    Operator,
    /// Thickness in millimetres, as the file words it.
    Thickness,
    /// Remark.
    Note,
}

impl Identity {
    /// All identity columns in store order.
    pub const ALL: [Identity; 15] = [
        Identity::Id,
        Identity::Unit,
        Identity::Spot,
        Identity::Part,
        Identity::Material,
        Identity::Lot,
        Identity::Supplier,
        Identity::Class,
        Identity::Time,
        Identity::Seconds,
        Identity::Instrument,
        Identity::Mode,
        Identity::Operator,
        Identity::Thickness,
        Identity::Note,
    ];

    /// The code used in mappings.
    pub const fn code(self) -> &'static str {
        match self {
            Identity::Id => "id",
            Identity::Unit => "unit",
            Identity::Spot => "spot",
            Identity::Part => "part",
            Identity::Material => "material",
            Identity::Lot => "lot",
            Identity::Supplier => "supplier",
            Identity::Class => "class",
            Identity::Time => "time",
            Identity::Seconds => "seconds",
            Identity::Instrument => "instrument",
            Identity::Mode => "mode",
            Identity::Operator => "operator",
            Identity::Thickness => "thickness",
            Identity::Note => "note",
        }
    }

    /// The identity column of a code.
    pub fn from_code(code: &str) -> Option<Identity> {
        Identity::ALL.into_iter().find(|identity| identity.code() == code)
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

/// What a column of the source was taken for, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ColumnMeaning {
    /// Its position, 1-based.
    pub column: u32,
    /// Its heading as written.
    pub heading: String,
    /// What it was taken for.
    pub role: ColumnRole,
    /// Why: a code of the evidence, worded in the catalogue.
    pub evidence: Evidence,
}

/// What a column holds.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ColumnRole {
    /// An element's value.
    Value {
        /// The element.
        element: Element,
        /// The unit, where the heading or the unit row states it.
        unit: Option<Unit>,
    },
    /// An element's printed uncertainty.
    Error {
        /// The element.
        element: Element,
        /// The unit, the value's own where none is stated.
        unit: Option<Unit>,
        /// False where the unit can't be told: percent beside another unit may mean percent of the value.
        clear: bool,
        /// How many sigmas; `None` where nobody stated it.
        multiple: Option<SigmaMultiple>,
    },
    /// An element's detection limit.
    DetectionLimit {
        /// The element.
        element: Element,
        /// The unit, the value's own where none is stated.
        unit: Option<Unit>,
    },
    /// Identity of the reading.
    Identity(Identity),
    /// The unit of measure of the row's values.
    UnitOfMeasure,
    /// Not used.
    Unused,
}

impl ColumnRole {
    /// The code used in findings.
    pub const fn code(&self) -> &'static str {
        match self {
            ColumnRole::Value { .. } => "value",
            ColumnRole::Error { .. } => "uncertainty",
            ColumnRole::DetectionLimit { .. } => "detection_limit",
            ColumnRole::Identity(identity) => identity.code(),
            ColumnRole::UnitOfMeasure => "unit_of_measure",
            ColumnRole::Unused => "unused",
        }
    }
}

/// Why a column was taken for what it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Evidence {
    /// The heading is an element's symbol or name, with known words beside it.
    ElementHeading,
    /// A bare error heading right after an element's column.
    FollowsElement,
    /// The heading is a known word for an identity.
    KnownHeading,
    /// A material column that holds only class words.
    ClassWordsOnly,
    /// The cells hold units of measure.
    HoldsUnits,
    /// The heading names an element and a unit that is not known; its numbers stay text.
    UnitNotUnderstood,
    /// The heading starts like an element but has words that are not understood.
    WordsNotUnderstood,
    /// The same meaning already has a column further left.
    AlreadyTaken,
    /// The heading is not known.
    NotKnown,
}

impl Evidence {
    /// The code used in findings and in the catalogue.
    pub const fn code(self) -> &'static str {
        match self {
            Evidence::ElementHeading => "element_heading",
            Evidence::FollowsElement => "follows_element",
            Evidence::KnownHeading => "known_heading",
            Evidence::ClassWordsOnly => "class_words_only",
            Evidence::HoldsUnits => "holds_units",
            Evidence::UnitNotUnderstood => "unit_not_understood",
            Evidence::WordsNotUnderstood => "words_not_understood",
            Evidence::AlreadyTaken => "already_taken",
            Evidence::NotKnown => "not_known",
        }
    }

    /// All of them, for the contract's list.
    pub const ALL: [Evidence; 9] = [
        Evidence::ElementHeading,
        Evidence::FollowsElement,
        Evidence::KnownHeading,
        Evidence::ClassWordsOnly,
        Evidence::HoldsUnits,
        Evidence::UnitNotUnderstood,
        Evidence::WordsNotUnderstood,
        Evidence::AlreadyTaken,
        Evidence::NotKnown,
    ];
}

/// A run of rows under one header.
#[derive(Clone, Debug)]
pub struct Block {
    /// The header's line in the source, 1-based.
    pub header_line: u32,
    /// The first reading of the block in its source.
    pub first_reading: usize,
    /// What each column was taken for.
    pub columns: Vec<ColumnMeaning>,
    /// The decimal mark of its numbers; `None` where the block never shows one.
    pub mark: Option<DecimalMark>,
    /// The unit a person set for values whose unit the file doesn't state.
    pub set_unit: Option<Unit>,
    /// True where a number in the error column of a non-detect was read as its limit.
    pub limit_in_error_column: bool,
}

impl Block {
    /// The stated multiple of an element's printed uncertainty.
    pub fn stated_multiple(&self, wanted: Element) -> Option<SigmaMultiple> {
        self.columns.iter().find_map(|column| match column.role {
            ColumnRole::Error { element, multiple, .. } if element == wanted => multiple,
            _ => None,
        })
    }

    /// True where the block has a printed uncertainty whose multiple nobody stated.
    pub fn has_unstated_multiple(&self) -> bool {
        self.columns.iter().any(|column| matches!(column.role, ColumnRole::Error { multiple: None, .. }))
    }

    /// The stated unit of an element's values, or the one a person set.
    pub fn unit_of(&self, wanted: Element) -> Option<Unit> {
        let stated = self.columns.iter().find_map(|column| match column.role {
            ColumnRole::Value { element, unit } if element == wanted => unit,
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
    identities: [Vec<TextId>; 15],
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

    /// Fills every column up to the number of readings; called once, when the source has ended.
    pub fn close(&mut self) {
        let rows = self.lines.len();
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
        let Readings { pool: _, lines, identities, elements } = self;
        Readings {
            pool: TextPool::default(),
            lines: split(lines, keep),
            identities: identities.each_mut().map(|column| split(column, keep)),
            elements: elements.iter_mut().map(|column| column.keep(keep)).collect(),
        }
    }

    /// Puts readings that [`Readings::keep`] took out back in their places.
    pub fn put_back(&mut self, taken: Readings, keep: &[bool]) {
        let Readings { pool: _, lines, identities, elements } = taken;
        self.lines = merged(&self.lines, &lines, keep);
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
}

impl SetAside {
    /// All of them.
    pub const ALL: [SetAside; 3] = [SetAside::Blank, SetAside::Heading, SetAside::UnitRow];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            SetAside::Blank => "blank",
            SetAside::Heading => "heading",
            SetAside::UnitRow => "unit_row",
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
        /// The file is a workbook or an archive.
        Workbook => "workbook",
        /// UTF-16 text.
        Utf16 => "utf16",
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

/// One file as it came in.
#[derive(Clone, Debug, Default)]
pub struct Source {
    /// Base name, or the path inside the chosen folder with `/`.
    pub name: String,
    /// SHA-256 of its bytes, in lower-case hexadecimal.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
    /// The delimiter found, where a table was found.
    pub delimiter: Option<u8>,
    /// Lines before the header.
    pub preamble: Vec<String>,
    /// Runs of rows under one header.
    pub blocks: Vec<Block>,
    /// The readings.
    pub readings: Readings,
    /// Rows in: all rows but preamble, the mapped header and the final newline.
    pub rows_in: u64,
    /// Rows merged as duplicates.
    pub rows_duplicate: u64,
    /// Rows set aside, by reason.
    pub set_aside: [u64; 3],
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

impl Source {
    /// Rows set aside in all.
    pub fn rows_set_aside(&self) -> u64 {
        self.set_aside.iter().sum()
    }

    /// Takes the readings that are not to be kept out of the store and counts their rows as duplicates.
    pub fn take_duplicates_out(&mut self, keep: Vec<bool>) {
        self.put_duplicates_back();
        let taken = self.readings.keep(&keep);
        self.rows_duplicate += taken.len() as u64;
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
        self.rows_duplicate = self.rows_duplicate.saturating_sub(taken.len() as u64);
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
