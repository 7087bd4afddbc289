//! Measured rows to readings: a row a reading, a row an element, or a row a spectrum.

use std::borrow::Cow;

use plumbline_core::date_order::DateOrder;
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::reading::{Cell, CellState, Layout, NoticeCode, SetAside};

use crate::cell;
use crate::dates;
use crate::element_cell::{BelowSays, RowSays, RowUnit};
use crate::header;
use crate::heading::{self, NamedElement};
use crate::plan::{RowElement, TimePlan};
use crate::records::Record;
use crate::table::Table;

/// Names of elements whose meaning is kept.
const NAMES_KEPT: usize = 4096;
/// Bytes beyond which a cell names no element.
const LONGEST_NAME: usize = 120;

/// How an element already stands in a reading.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Stands {
    No,
    UnderAnotherName,
    AsOxide,
}

impl Table {
    /// Begins a reading with what its row says of it.
    fn begin_reading(&mut self, record: &Record<'_>) {
        self.source.readings.begin(record.place(0).0);
        for at in 0..self.plan.identities.len() {
            let Some((column, identity)) = self.plan.identities.get(at).copied() else { continue };
            let text = cell::text(record.cell(column));
            self.source.readings.set_identity(identity, text.trim());
        }
        if let Some(time) = self.plan.time {
            self.set_time(record, time);
        }
        let row = self.source.readings.len() - 1;
        if self.template.is_some() {
            self.split_id(record, row);
        }
        for (identity, text) in &self.stated {
            if self.source.readings.identity_id(*identity, row).is_some() {
                continue;
            }
            self.source.readings.set_identity(*identity, text);
        }
    }

    fn set_time(&mut self, record: &Record<'_>, time: TimePlan) {
        let date = cell::text(record.cell(time.date));
        let date = date.trim();
        let clock = time.clock.map(|clock| cell::text(record.cell(clock)));
        let clock = clock.as_deref().map(str::trim).filter(|clock| !clock.is_empty());
        if date.is_empty() {
            self.source.readings.set_identity(Identity::Time, clock.unwrap_or(""));
            return;
        }
        // One day's date stands in row after row.
        if clock.is_none() && self.last_date.0 == date {
            self.source.readings.set_identity(Identity::Time, &self.last_date.1);
            return;
        }
        let iso = if time.serials {
            dates::serial_to_iso(date, clock).map(Cow::Owned)
        } else {
            dates::to_iso(date, time.order, clock)
        };
        if let Some(iso) = iso {
            self.source.readings.set_identity(Identity::Time, &iso);
            if clock.is_none() {
                self.last_date = (date.to_owned(), iso.into_owned());
            }
            return;
        }
        let any_order =
            || DateOrder::ALL.into_iter().any(|order| dates::to_iso(date, Some(order), clock).is_some());
        let code = if time.order.is_none() && any_order() {
            NoticeCode::DateOrderUnclear
        } else {
            NoticeCode::DateNotUnderstood
        };
        self.count(record.place(time.date), code, date);
        let whole = match clock {
            Some(clock) => format!("{date} {clock}"),
            None => date.to_owned(),
        };
        self.source.readings.set_identity(Identity::Time, &whole);
    }

    /// Parts a combined id by the pattern a person showed.
    fn split_id(&mut self, record: &Record<'_>, row: usize) {
        let Some(id) = self.source.readings.identity(Identity::Id, row).map(str::to_owned) else { return };
        let Some(pieces) = self.template.as_ref().and_then(|template| template.split(&id)) else {
            let column = self.plan.identities.iter().find(|(_, identity)| *identity == Identity::Id);
            let place = column.map_or((record.line, 0), |(at, _)| record.place(*at));
            self.count(place, NoticeCode::IdPatternDiffers, &id);
            return;
        };
        for (identity, piece) in pieces.as_slice().iter().copied() {
            let own = identity == Identity::Id;
            if own || !self.source.readings.identity_id(identity, row).is_some() {
                self.source.readings.set_identity(identity, piece);
            }
        }
    }

    fn row_says(&mut self, record: &Record<'_>) -> RowSays {
        let multiple =
            self.plan.multiple_column.filter(|_| self.plan.block_multiple.is_some()).map(|at| {
                SigmaMultiple::from_text(&cell::text(record.cell(at))).unwrap_or(SigmaMultiple::ONE)
            });
        RowSays { unit: self.row_unit(record), multiple, below: BelowSays::Nothing }
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
        self.notice(record.place(column), NoticeCode::UnitNotKnown, text.as_bytes());
        RowUnit::Foreign
    }

    pub(crate) fn wide_reading(&mut self, record: &Record<'_>) {
        self.begin_reading(record);
        let (says, rules) = (self.row_says(record), self.rules);
        // Taken out for the row, so that the cells may speak to the table.
        let mut elements = std::mem::take(&mut self.plan.elements);
        for planned in &mut elements {
            let (cell, written) = self.element_cell(record, planned, says, rules);
            self.source.readings.push_cell(planned.index, cell, written);
        }
        self.plan.elements = elements;
    }

    /// The cells that name a reading, one after another.
    fn take_key(&mut self, record: &Record<'_>) {
        self.key.clear();
        let named = self.plan.identities.iter().filter(|(_, identity)| {
            !matches!(
                identity,
                Identity::Note | Identity::Seconds | Identity::Mode | Identity::Spectrum | Identity::Photo
            )
        });
        let time = self.plan.time.iter().flat_map(|time| [Some(time.date), time.clock]).flatten();
        for at in named.map(|(at, _)| *at).chain(time) {
            self.key.extend_from_slice(record.cell(at).trim_ascii());
            self.key.push(0x1F);
        }
    }

    /// Rows of a long table that name nothing stay with those below the same named row: below another one they are
    /// another sample's.
    fn part_the_unnamed(&mut self) {
        if self.key.iter().any(|byte| *byte != 0x1F) {
            if self.key != self.named_key {
                self.named_key.clone_from(&self.key);
            }
        } else if !self.named_key.is_empty() {
            self.key.push(0x1E);
            self.key.extend_from_slice(&self.named_key);
        }
    }

    /// A row of a table with a column of spectra: joined to the reading of the row before where both name the same
    /// reading, the spectrum is another, and no element is measured twice.
    pub(crate) fn joined_row(&mut self, record: &Record<'_>) {
        self.take_key(record);
        let key = std::mem::take(&mut self.key);
        let spectrum = self.plan.identities.iter().find(|(_, identity)| *identity == Identity::Spectrum);
        let spectrum = spectrum.map_or(&b""[..], |(at, _)| record.cell(*at).trim_ascii());
        let named = self
            .plan
            .identities
            .iter()
            .any(|(at, identity)| *identity == Identity::Id && !record.cell(*at).trim_ascii().is_empty());
        let candidate = self
            .gather
            .last_with(&key)
            .filter(|_| named && !spectrum.is_empty() && !self.gather.has_part(spectrum));
        let (says, rules) = (self.row_says(record), self.rules);
        let mut cells = std::mem::take(&mut self.cells);
        cells.clear();
        let mut elements = std::mem::take(&mut self.plan.elements);
        for planned in &mut elements {
            let (cell, written) = self.element_cell(record, planned, says, rules);
            cells.push((planned.index, cell, written));
        }
        self.plan.elements = elements;
        let filled = |cell: &Cell| cell.state != CellState::Blank;
        let into = candidate.filter(|reading| {
            cells.iter().filter(|(_, cell, _)| filled(cell)).all(|(index, ..)| {
                let column = self.source.readings.elements().get(*index);
                column.is_none_or(|column| !column.is_filled(*reading as usize))
            })
        });
        let reading = if let Some(reading) = into {
            let row = reading as usize;
            for (index, cell, written) in cells.iter().filter(|(_, cell, _)| filled(cell)) {
                self.source.readings.put_cell(*index, row, *cell, *written);
            }
            let rows = self.source.readings.rows_of(row) + 1;
            self.source.readings.set_rows_of(row, rows);
            if let Some(block) = self.source.blocks.last_mut() {
                block.layout = Layout::Joined;
            }
            self.count((record.line, 0), NoticeCode::RowsJoined, "");
            reading
        } else {
            self.begin_reading(record);
            for (index, cell, written) in &cells {
                self.source.readings.push_cell(*index, *cell, *written);
            }
            self.source.readings.len() as u32 - 1
        };
        self.gather.went(&key, reading, into.is_none(), spectrum);
        self.key = key;
        self.cells = cells;
    }

    /// A row of a long table: one element of a reading.
    pub(crate) fn long_row(&mut self, record: &Record<'_>, named: RowElement) {
        let name = record.cell(named.name).trim_ascii();
        let Some(mut planned) = self.plan.elements.first().cloned() else { return };
        let value = record.cell(planned.value);
        let Some(found) = self.element_named(name) else {
            if header::is_measurement(value) {
                let found = cell::text(name).into_owned();
                self.refuse(record.place(named.name), NoticeCode::ElementNotUnderstood, &found, 1);
            } else {
                self.source.set_aside[SetAside::Remark as usize] += 1;
            }
            return;
        };
        let named_as = found;
        (planned.element, planned.oxide) = (found.element, found.oxide);
        planned.unit = planned.unit.or(found.unit);
        if let Some(oxide) = found.oxide {
            self.count(record.place(named.name), NoticeCode::OxideConverted, &oxide.to_string());
        }
        let mut says = self.row_says(record);
        says.below = match named.below_mark.map(|at| (at, mark(record.cell(at)))) {
            None => BelowSays::Nothing,
            Some((_, Some(below))) => {
                if below {
                    BelowSays::Below
                } else {
                    BelowSays::Nothing
                }
            }
            Some((at, None)) => {
                self.notice(record.place(at), NoticeCode::CellNotUnderstood, record.cell(at));
                BelowSays::Unclear
            }
        };
        let rules = self.rules;
        let (cell, written) = self.element_cell(record, &mut planned, says, rules);
        if let Some(kept) = self.plan.elements.first_mut() {
            kept.last_kept = planned.last_kept;
        }
        self.take_key(record);
        self.part_the_unnamed();
        let key = std::mem::take(&mut self.key);
        let filled = |table: &Table, reading: u32| {
            let column = table.source.readings.column_of(found.element);
            column.is_some_and(|column| column.is_filled(reading as usize))
        };
        let name = name.to_vec();
        let last = self.gather.last_with(&key).filter(|reading| filled(self, *reading));
        let stands = last.map_or(Stands::No, |_| self.stands_already(&named_as, &name));
        if let Some(reading) = last
            && stands != Stands::No
        {
            let index = self.source.readings.element_index(found.element);
            match (stands, found.oxide) {
                (Stands::UnderAnotherName, None) => {
                    // Two lines of one element, say: which is meant nobody can tell from here.
                    let cell = Cell { state: CellState::Text, ..Cell::NO_COLUMN };
                    let text = [name.as_slice(), b" ", record.cell(planned.value)].concat();
                    let written = self.keep(&mut planned.last_kept, &text);
                    self.source.readings.put_cell(index, reading as usize, cell, written);
                    self.count(record.place(named.name), NoticeCode::ElementTwice, &cell::text(&name));
                }
                // The element itself stands above its oxide.
                (Stands::AsOxide, None) => {
                    self.source.readings.put_cell(index, reading as usize, cell, written);
                }
                _ => {}
            }
            self.add_row(reading);
            self.gather.went(&key, reading, false, &name);
            self.key = key;
            return;
        }
        let into = self.gather.reading(&key, &|reading| !filled(self, reading));
        let is_new = into.is_none();
        if is_new {
            self.begin_reading(record);
        }
        let reading = into.unwrap_or(self.source.readings.len() as u32 - 1);
        let index = self.source.readings.element_index(found.element);
        self.source.readings.put_cell(index, reading as usize, cell, written);
        if !is_new {
            self.add_row(reading);
        }
        self.gather.went(&key, reading, is_new, &name);
        self.key = key;
    }

    /// How the element of a row already stands in the reading of the row before.
    fn stands_already(&mut self, named: &NamedElement, name: &[u8]) -> Stands {
        if self.gather.has_part(name) {
            return Stands::No;
        }
        let parts = self.gather.parts().to_vec();
        let others: Vec<NamedElement> = parts.iter().filter_map(|part| self.element_named(part)).collect();
        let mut same = others.iter().filter(|other| other.element == named.element).peekable();
        if same.peek().is_none() {
            return Stands::No;
        }
        if same.any(|other| other.oxide.is_none()) { Stands::UnderAnotherName } else { Stands::AsOxide }
    }

    /// The element a cell names; asked again for every row of a long table, so the answers are kept.
    fn element_named(&mut self, name: &[u8]) -> Option<NamedElement> {
        if name.len() > LONGEST_NAME {
            return None;
        }
        if let Some(known) = self.names.get(name) {
            return *known;
        }
        let named = heading::element_cell(&cell::text(name));
        if self.names.len() < NAMES_KEPT {
            self.names.insert(name.to_vec(), named);
        }
        named
    }

    fn add_row(&mut self, reading: u32) {
        let rows = self.source.readings.rows_of(reading as usize) + 1;
        self.source.readings.set_rows_of(reading as usize, rows);
    }
}

/// Cells of a column of marks that say no, and those that say yes (common practice, no source). Anything else says
/// nothing, and what stands beside it is then open.
///
/// Of the qualifiers of laboratories, `U` says not detected at the number beside it, `J` that the number is an estimate,
/// which is a number all the same, and `=` that it is one.
const SAY_NO: [&str; 14] =
    ["", "0", "0.0", "no", "false", "n", "f", "nein", "non", "否", "いいえ", "아니오", "j", "="];
const SAY_YES: [&str; 22] = [
    "u", "1", "1.0", "yes", "y", "true", "t", "x", "<", "<lod", "< lod", "lod", "nd", "n.d.", "bdl", "below",
    "ja", "oui", "sí", "是", "はい", "예",
];

/// What a cell of such a column says.
fn mark(cell: &[u8]) -> Option<bool> {
    let text = cell::text(cell.trim_ascii()).to_lowercase();
    let says = |words: &[&str]| words.contains(&text.as_str());
    if says(&SAY_NO) { Some(false) } else { says(&SAY_YES).then_some(true) }
}
