//! Tables on their side: each column a reading, each row an element. The rows are kept until the table ends and then
//! read as readings, so that everything else reads them like any other.

use plumbline_core::acts;
use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{DecimalMark, Unit};
use plumbline_core::substance::Element;

use crate::cell;
use crate::header_search;
use crate::heading;
use crate::records::Record;

/// Bytes of such a table that are kept; it has a row an element, so more is no table of this kind.
pub(crate) const MOST_KEPT: usize = 64 * 1024 * 1024;

/// The rows of a table on its side, so far.
pub(crate) struct TurnedRows {
    labels: usize,
    rows: Vec<KeptRow>,
    bytes: usize,
}

struct KeptRow {
    line: u32,
    label: String,
    bytes: Vec<u8>,
    ends: Vec<usize>,
}

impl KeptRow {
    fn cell(&self, at: usize) -> &[u8] {
        let start = if at == 0 { 0 } else { self.ends.get(at - 1).copied().unwrap_or(usize::MAX) };
        let end = self.ends.get(at).copied().unwrap_or(0);
        self.bytes.get(start..end).unwrap_or(&[])
    }

    fn text(&self, at: usize) -> String {
        cell::text(self.cell(at)).trim().to_owned()
    }
}

/// One reading put together from a column.
pub(crate) struct TurnedReading {
    pub(crate) bytes: Vec<u8>,
    pub(crate) ends: Vec<usize>,
    pub(crate) places: Vec<(u32, u32)>,
}

/// A table that was turned.
pub(crate) struct TurnedTable {
    /// What its rows mean, as columns of readings.
    pub(crate) columns: Vec<ColumnMeaning>,
    pub(crate) readings: Vec<TurnedReading>,
    pub(crate) mark: Option<DecimalMark>,
    /// Lines of rows that are used, and of rows that mean nothing known.
    pub(crate) used: Vec<u32>,
    pub(crate) unused: Vec<u32>,
    /// The cells that hold dates.
    pub(crate) dates: Vec<Vec<u8>>,
}

impl TurnedRows {
    pub(crate) const fn new(labels: usize) -> TurnedRows {
        TurnedRows { labels, rows: Vec::new(), bytes: 0 }
    }

    pub(crate) fn is_empty(&self) -> bool {
        self.rows.is_empty()
    }

    /// True where the next row starts the table again: the label of its first row, or an element it already has.
    pub(crate) fn starts_again(&self, record: &Record<'_>) -> bool {
        let label = cell::text(record.cell(self.labels));
        let label = label.trim();
        !label.is_empty() && self.rows.iter().any(|row| row.label.eq_ignore_ascii_case(label))
    }

    /// Keeps a row; false where there is no room for more.
    pub(crate) fn keep(&mut self, record: &Record<'_>) -> bool {
        let mut row = KeptRow {
            line: record.line,
            label: cell::text(record.cell(self.labels)).trim().to_owned(),
            bytes: Vec::new(),
            ends: Vec::with_capacity(record.len()),
        };
        for cell in record.cells() {
            row.bytes.extend_from_slice(cell);
            row.ends.push(row.bytes.len());
        }
        self.bytes += row.bytes.len() + row.ends.len() * size_of::<usize>();
        let room = self.bytes <= MOST_KEPT;
        if room {
            self.rows.push(row);
        }
        room
    }

    /// The column of labels.
    pub(crate) const fn labels(&self) -> usize {
        self.labels
    }

    /// The line of the first row, and whether that row heads the readings instead of measuring them.
    pub(crate) fn first_line(&self) -> (u32, bool) {
        let first = self.rows.first();
        (
            first.map_or(0, |row| row.line),
            first.is_some_and(|row| heading::element_cell(&row.label).is_none()),
        )
    }

    /// The labels, as headings of the readings' columns.
    pub(crate) fn labels_text(&self) -> Vec<String> {
        self.rows.iter().map(|row| row.label.clone()).collect()
    }

    /// Turns the table: `told` gives a role to each label after what a person said.
    pub(crate) fn turn(&self, told: &mut dyn FnMut(Vec<ColumnMeaning>) -> Vec<ColumnMeaning>) -> TurnedTable {
        let mut columns = heading::meanings(&self.labels_text());
        TurnedRows::name_the_readings(&mut columns);
        let unit_column = self.unit_column(&columns);
        if let Some(units) = unit_column {
            self.apply_units(&mut columns, units);
        }
        self.times_that_are_seconds(&mut columns);
        let columns = told(columns);
        let is_row_used = |at: usize| columns.get(at).is_some_and(|column| column.role != ColumnRole::Unused);
        let width = self.rows.iter().map(|row| row.ends.len()).max().unwrap_or(0);
        let beside: Vec<Option<ColumnRole>> = (0..width).map(|at| self.beside(at)).collect();
        let mut readings = Vec::new();
        let mut marks = (0_u32, 0_u32);
        let mut dates = Vec::new();
        for at in self.labels + 1..width {
            let filled = self
                .rows
                .iter()
                .enumerate()
                .any(|(row, kept)| is_row_used(row) && !kept.cell(at).trim_ascii().is_empty());
            if Some(at) == unit_column || beside.get(at).is_some_and(Option::is_some) || !filled {
                continue;
            }
            let error = beside.get(at + 1).is_some_and(Option::is_some).then_some(at + 1);
            let mut reading = TurnedReading { bytes: Vec::new(), ends: Vec::new(), places: Vec::new() };
            for from in [Some(at), error].into_iter().flatten() {
                for (row, meaning) in self.rows.iter().zip(&columns) {
                    // Beside a reading only its values have something.
                    if from != at && !matches!(meaning.role, ColumnRole::Value { .. }) {
                        continue;
                    }
                    let cell = row.cell(from);
                    if meaning.role.is_measured() {
                        match cell::mark_evidence(cell) {
                            Some(DecimalMark::Point) => marks.0 += 1,
                            Some(DecimalMark::Comma) => marks.1 += 1,
                            None => {}
                        }
                    }
                    if meaning.role == ColumnRole::Identity(Identity::Time) {
                        dates.push(cell.to_vec());
                    }
                    reading.bytes.extend_from_slice(cell);
                    reading.ends.push(reading.bytes.len());
                    reading.places.push((row.line, from as u32 + 1));
                }
            }
            readings.push(reading);
        }
        let lines = |used: bool| {
            let rows = self.rows.iter().enumerate().filter(|(at, _)| is_row_used(*at) == used);
            rows.map(|(_, row)| row.line).collect()
        };
        let (used, unused) = (lines(true), lines(false));
        let columns = TurnedRows::with_columns_beside(columns, &beside);
        let mark = match marks {
            (1.., 0) => Some(DecimalMark::Point),
            (0, 1..) => Some(DecimalMark::Comma),
            _ => None,
        };
        TurnedTable { columns, readings, mark, used, unused, dates }
    }

    /// The first row names the readings, unless a row of its own does.
    fn name_the_readings(columns: &mut [ColumnMeaning]) {
        let named = columns.iter().any(|column| column.role == ColumnRole::Identity(Identity::Id));
        if let Some(first) = columns.first_mut().filter(|_| !named)
            && matches!(first.role, ColumnRole::Unused | ColumnRole::ElementName)
        {
            first.role = ColumnRole::Identity(Identity::Id);
            first.evidence = Evidence::KnownHeading;
        }
    }

    /// A row that says time over small numbers says how long.
    fn times_that_are_seconds(&self, columns: &mut [ColumnMeaning]) {
        if columns.iter().any(|column| column.role == ColumnRole::Identity(Identity::Seconds)) {
            return;
        }
        for (row, column) in self.rows.iter().zip(columns) {
            let mut cells =
                (self.labels + 1..row.ends.len()).map(|at| row.text(at)).filter(|text| !text.is_empty());
            let all = cells.clone().count() > 0 && cells.all(|text| acts::parse_seconds(&text).is_some());
            if all && header_search::says_time(column) {
                column.role = ColumnRole::Identity(Identity::Seconds);
                column.evidence = Evidence::HoldsSeconds;
            }
        }
    }

    /// The column that holds the units of the rows, if one does.
    fn unit_column(&self, columns: &[ColumnMeaning]) -> Option<usize> {
        let measured = || {
            self.rows
                .iter()
                .zip(columns)
                .filter(|(_, meaning)| meaning.role.is_measured())
                .map(|(row, _)| row)
        };
        (self.labels + 1..self.labels + 3).find(|at| {
            let mut any = false;
            let all = measured().all(|row| {
                let text = row.text(*at);
                any |= !text.is_empty();
                text.is_empty() || Unit::from_word(text.trim_matches(['(', ')', '[', ']'])).is_some()
            });
            any && all
        })
    }

    fn apply_units(&self, columns: &mut [ColumnMeaning], at: usize) {
        let units: Vec<Option<Unit>> = self
            .rows
            .iter()
            .map(|row| Unit::from_word(row.text(at).trim_matches(['(', ')', '[', ']'])))
            .collect();
        heading::apply_unit_row(columns, &units);
    }

    /// What a column beside a reading holds of it, by the word that heads it: its uncertainty or its limit.
    fn beside(&self, at: usize) -> Option<ColumnRole> {
        if at <= self.labels + 1 {
            return None;
        }
        let head = self.rows.iter().map(|row| row.text(at)).find(|text| !text.is_empty())?;
        let pair = heading::meanings(&[Element::PB.symbol().to_owned(), head]);
        pair.get(1)
            .map(|column| column.role.clone())
            .filter(|role| matches!(role, ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }))
    }

    /// Columns for the uncertainties that stand beside each reading: one more for every row of values.
    fn with_columns_beside(
        mut columns: Vec<ColumnMeaning>,
        beside: &[Option<ColumnRole>],
    ) -> Vec<ColumnMeaning> {
        let Some(kind) = beside.iter().flatten().next() else { return columns };
        let values: Vec<ColumnMeaning> = columns
            .iter()
            .filter(|column| matches!(column.role, ColumnRole::Value { .. }))
            .cloned()
            .collect();
        for value in values {
            let ColumnRole::Value { element, oxide, unit } = value.role else { continue };
            let role = match kind {
                ColumnRole::Error { error, .. } => {
                    let unit = if error.relative { None } else { error.unit.or(unit) };
                    ColumnRole::Error { element, oxide, error: ErrorKind { unit, ..*error } }
                }
                _ => ColumnRole::DetectionLimit { element, oxide, unit },
            };
            let column = columns.len() as u32 + 1;
            columns.push(ColumnMeaning {
                column,
                heading: value.heading,
                role,
                evidence: Evidence::FollowsElement,
            });
        }
        columns
    }
}
