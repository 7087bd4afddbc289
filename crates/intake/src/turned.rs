//! Tables on their side: each column a reading, each row an element. The rows are kept until the table ends and then
//! read as readings, so that everything else reads them like any other.

use plumbline_core::acts;
use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::{DecimalMark, Unit};
use plumbline_core::substance::Element;

use crate::cell;
use crate::header_search;
use crate::heading::{self, vocabulary};
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
    /// Columns that are no reading, with their name: an average, a limit.
    pub(crate) summaries: Vec<((u32, u32), String)>,
}

/// What stands beside the readings: uncertainties of one kind, detection limits, or both.
struct Beside {
    roles: Vec<Option<ColumnRole>>,
    /// The kind of all uncertainties beside readings; one of another kind is not used.
    error: Option<ErrorKind>,
    /// There are detection limits.
    limits: bool,
    /// The only column of limits, where it is headed by nothing but that word: it holds for all readings.
    shared_limit: Option<usize>,
}

impl Beside {
    fn is_beside(&self, at: usize) -> bool {
        self.roles.get(at).is_some_and(Option::is_some)
    }

    /// The columns with the uncertainties and the limits of the reading at a column.
    fn of(&self, reading: usize) -> (Option<usize>, Option<usize>) {
        let next = |from: usize, wanted: &dyn Fn(&ColumnRole) -> bool| {
            (from..self.roles.len())
                .take_while(|at| self.is_beside(*at))
                .find(|at| self.roles.get(*at).and_then(Option::as_ref).is_some_and(wanted))
        };
        let is_limit = |role: &ColumnRole| matches!(role, ColumnRole::DetectionLimit { .. });
        let error = next(reading + 1, &|role| matches!(role, ColumnRole::Error { .. }));
        let same_kind = |at: &usize| match self.roles.get(*at) {
            Some(Some(ColumnRole::Error { error, .. })) => Some(*error) == self.error,
            _ => false,
        };
        (error.filter(same_kind), next(reading + 1, &is_limit).or(self.shared_limit))
    }
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
        let beside = self.all_beside(width);
        let mut readings = Vec::new();
        let mut summaries = Vec::new();
        let mut marks = (0_u32, 0_u32);
        let mut dates = Vec::new();
        let id = columns.iter().position(|column| column.role == ColumnRole::Identity(Identity::Id));
        for at in self.labels + 1..width {
            let filled = self
                .rows
                .iter()
                .enumerate()
                .any(|(row, kept)| is_row_used(row) && !kept.cell(at).trim_ascii().is_empty());
            if Some(at) == unit_column || beside.is_beside(at) || !filled {
                continue;
            }
            let named = id.and_then(|id| self.rows.get(id));
            if let Some(row) = named.filter(|row| vocabulary::names_a_summary(&row.text(at))) {
                summaries.push(((row.line, at as u32 + 1), row.text(at)));
                continue;
            }
            let mut reading = TurnedReading { bytes: Vec::new(), ends: Vec::new(), places: Vec::new() };
            let (error, limit) = beside.of(at);
            let sets = [(true, Some(at)), (beside.error.is_some(), error), (beside.limits, limit)];
            for (from, own) in sets.iter().zip([true, false, false]).filter_map(|(set, own)| {
                let (there, from) = *set;
                there.then_some((from, own))
            }) {
                for (row, meaning) in self.rows.iter().zip(&columns) {
                    // Beside a reading only its values have something.
                    if !own && !matches!(meaning.role, ColumnRole::Value { .. }) {
                        continue;
                    }
                    let cell = from.map_or(&b""[..], |from| row.cell(from));
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
                    reading.places.push((row.line, from.unwrap_or(at) as u32 + 1));
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
        TurnedTable { columns, readings, mark, used, unused, dates, summaries }
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

    /// What stands beside the readings of the whole table.
    fn all_beside(&self, width: usize) -> Beside {
        let found: Vec<Option<(ColumnRole, bool)>> = (0..width).map(|at| self.beside(at)).collect();
        let limits: Vec<(usize, bool)> = found
            .iter()
            .enumerate()
            .filter_map(|(at, one)| match one {
                Some((ColumnRole::DetectionLimit { .. }, names_reading)) => Some((at, *names_reading)),
                _ => None,
            })
            .collect();
        let error = found.iter().flatten().find_map(|(role, _)| match role {
            ColumnRole::Error { error, .. } => Some(*error),
            _ => None,
        });
        let shared_limit = match limits[..] {
            [(at, false)] => Some(at),
            _ => None,
        };
        let roles = found.into_iter().map(|one| one.map(|(role, _)| role)).collect();
        Beside { roles, error, limits: !limits.is_empty(), shared_limit }
    }

    fn head(&self, at: usize) -> String {
        self.rows.iter().map(|row| row.text(at)).find(|text| !text.is_empty()).unwrap_or_default()
    }

    /// What a column beside a reading holds of it, by the word that heads it, alone (`±`) or with the name of the
    /// reading (`S1 ±`): its uncertainty or its limit; true where the name stands there.
    fn beside(&self, at: usize) -> Option<(ColumnRole, bool)> {
        if at <= self.labels + 1 {
            return self.limit_in_front(at);
        }
        let head = self.head(at);
        let in_pair = |word: &str| {
            let pair = heading::meanings(&[Element::PB.symbol().to_owned(), word.to_owned()]);
            pair.get(1)
                .map(|column| column.role.clone())
                .filter(|role| matches!(role, ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }))
        };
        let parts = |c: char| !c.is_alphanumeric();
        let without_name = || {
            (self.labels + 1..at).rev().take(3).map(|before| self.head(before)).find_map(|name| {
                let behind = head.strip_prefix(name.as_str()).filter(|rest| rest.starts_with(parts));
                let before = head.strip_suffix(name.as_str()).filter(|rest| rest.ends_with(parts));
                let rest = behind.or(before).filter(|_| !name.is_empty())?;
                in_pair(rest.trim_matches([' ', '_', '-', ':']))
            })
        };
        (in_pair(&head).filter(|_| !head.is_empty()).map(|role| (role, false)))
            .or_else(|| without_name().map(|role| (role, true)))
    }

    /// Right behind the labels only limits can stand: there is no reading yet whose uncertainty it could be.
    fn limit_in_front(&self, at: usize) -> Option<(ColumnRole, bool)> {
        let head = self.head(at);
        if at != self.labels + 1 || head.is_empty() {
            return None;
        }
        let pair = heading::meanings(&[Element::PB.symbol().to_owned(), head]);
        let role = pair.get(1).map(|column| column.role.clone())?;
        matches!(role, ColumnRole::DetectionLimit { .. }).then_some((role, false))
    }

    /// Columns for the uncertainties and the limits that stand beside the readings: one more for every row of values.
    fn with_columns_beside(mut columns: Vec<ColumnMeaning>, beside: &Beside) -> Vec<ColumnMeaning> {
        let values: Vec<ColumnMeaning> = columns
            .iter()
            .filter(|column| matches!(column.role, ColumnRole::Value { .. }))
            .cloned()
            .collect();
        let error = beside.error.map(|error| {
            move |element, oxide, unit: Option<Unit>| {
                let unit = if error.relative { None } else { error.unit.or(unit) };
                ColumnRole::Error { element, oxide, error: ErrorKind { unit, ..error } }
            }
        });
        let limit = |element, oxide, unit| ColumnRole::DetectionLimit { element, oxide, unit };
        let mut add = |make: &dyn Fn(Element, Option<Oxide>, Option<Unit>) -> ColumnRole| {
            for value in &values {
                let ColumnRole::Value { element, oxide, unit } = value.role else { continue };
                columns.push(ColumnMeaning {
                    column: columns.len() as u32 + 1,
                    heading: value.heading.clone(),
                    role: make(element, oxide, unit),
                    evidence: Evidence::FollowsElement,
                });
            }
        };
        if let Some(error) = &error {
            add(error);
        }
        if beside.limits {
            add(&limit);
        }
        columns
    }
}
