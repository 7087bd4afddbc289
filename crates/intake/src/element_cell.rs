//! One element's cells of one row: value, uncertainty and limit, in the units that are stated, to mg/kg.

use plumbline_core::acts::DetectionInError;
use plumbline_core::column::ErrorKind;
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::{
    LARGEST_SIGMA_UNITS, MassFraction, Number, Rounding, Sigma, SigmaMultiple, Unit,
};
use plumbline_core::reading::{Cell, CellState, NoticeCode, Written};
use plumbline_core::text_pool::TextId;

use crate::cell::{self, CellText};
use crate::header;
use crate::plan::{CellPlan, ErrorPlan};
use crate::records::Record;
use crate::table::{ReadingRules, Table, cut_short};

/// A million mg/kg: the whole.
const WHOLE: MassFraction = MassFraction::from_mg_per_kg(1_000_000);

/// What a row's own unit column says.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum RowUnit {
    Silent,
    Known(Unit),
    Foreign,
}

/// What a row says beside its cells.
#[derive(Clone, Copy)]
pub(crate) struct RowSays {
    pub(crate) unit: RowUnit,
    /// How many sigmas its uncertainties stand for, in a table whose rows say so.
    pub(crate) multiple: Option<SigmaMultiple>,
    /// What a mark says of the row's element.
    pub(crate) below: BelowSays,
}

/// What a mark for "below detection" says.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(crate) enum BelowSays {
    Nothing,
    Below,
    /// Something that is neither yes nor no.
    Unclear,
}

/// The units and plans that hold for one cell.
#[derive(Clone, Copy)]
struct Sight {
    value: usize,
    unit: Option<Unit>,
    foreign: bool,
    /// The unit the text of a plain number can be made again in.
    remade: Option<Unit>,
    error: Option<ErrorPlan>,
    limit: Option<(usize, Option<Unit>)>,
    oxide: Option<Oxide>,
}

impl Table {
    /// Reads one element's cells of a row.
    pub(crate) fn element_cell(
        &mut self,
        record: &Record<'_>,
        planned: &mut CellPlan,
        says: RowSays,
        rules: ReadingRules,
    ) -> (Cell, Written) {
        if let Some(rival) = rival(record, planned, self.is_long()) {
            // Two columns for one element: which one is meant nobody can tell from here.
            let own = record.cell(planned.value).trim_ascii();
            let both = if own.is_empty() { rival } else { [own, b" | ", rival.as_slice()].concat() };
            let cell = Cell { state: CellState::Text, ..Cell::NO_COLUMN };
            let written = self.keep(&mut planned.last_kept, &both);
            self.count(record.place(planned.value), NoticeCode::ColumnTwice, &cell::text(&both));
            return (cell, written);
        }
        if record.cell(planned.value).trim_ascii().is_empty()
            && let Some(oxide) = &mut planned.as_oxide
            && !record.cell(oxide.value).trim_ascii().is_empty()
        {
            return self.element_cell(record, oxide, says, rules);
        }
        // A heading and a row that contradict each other, or a unit nobody knows, leave the unit open.
        let unit = match (planned.unit_foreign, planned.unit, says.unit) {
            (true, ..) | (_, _, RowUnit::Foreign) => None,
            (_, Some(heading), RowUnit::Known(row)) if heading != row => None,
            (_, heading, RowUnit::Known(row)) => heading.or(Some(row)),
            (_, heading, RowUnit::Silent) => heading.or(rules.unit),
        };
        let foreign = planned.unit_foreign || says.unit == RowUnit::Foreign;
        // An open unit is open for the error and the limit too, whatever the heading says of them.
        let contradicted = unit.is_none() && (foreign || planned.unit.is_some());
        let one_unit = if self.plan.unit_column.is_none() { rules.unit } else { None };
        let sight = Sight {
            value: planned.value,
            unit,
            foreign,
            remade: planned.unit.or(one_unit).filter(|_| planned.oxide.is_none() && !self.is_long()),
            error: planned.error.map(|error| ErrorPlan {
                kind: ErrorKind { clear: error.kind.clear && !contradicted, ..error.kind },
                ..error
            }),
            limit: planned.limit.filter(|_| !contradicted),
            oxide: planned.oxide,
        };
        let last_kept = &mut planned.last_kept;
        match says.below {
            BelowSays::Nothing => self.measured_cell(record, sight, last_kept, says, rules),
            BelowSays::Below => self.marked_below(record, sight, last_kept, rules),
            BelowSays::Unclear => {
                let written = self.keep(last_kept, record.cell(sight.value));
                (Cell { state: CellState::Text, ..Cell::NO_COLUMN }, written)
            }
        }
    }

    fn measured_cell(
        &mut self,
        record: &Record<'_>,
        sight: Sight,
        last_kept: &mut TextId,
        says: RowSays,
        rules: ReadingRules,
    ) -> (Cell, Written) {
        let raw = record.cell(sight.value);
        let place = record.place(sight.value);
        let mut written = Written::Nothing;
        let mut cell = Cell { state: CellState::Blank, ..Cell::NO_COLUMN };
        match cell::read(raw, self.plan.mark) {
            CellText::Blank => {}
            CellText::NotMeasured => written = self.keep(last_kept, raw),
            CellText::Unreadable => {
                cell.state = CellState::Text;
                written = self.keep(last_kept, raw);
                self.notice(place, NoticeCode::CellNotUnderstood, raw);
            }
            CellText::MarkUnclear => {
                cell.state = CellState::Text;
                written = self.keep(last_kept, raw);
                self.notice(place, NoticeCode::MarkUnclear, raw);
            }
            CellText::Number(number, own_unit) => {
                written = self.number(&mut cell, number, own_unit, record, sight, last_kept);
                if cell.state == CellState::Number {
                    // Beside a cell in a unit of its own, the error column's unit is anybody's guess.
                    let foreign_cell = own_unit.is_some() && own_unit != sight.unit;
                    let error = sight.error.map(|error| ErrorPlan {
                        kind: ErrorKind { clear: error.kind.clear && !foreign_cell, ..error.kind },
                        ..error
                    });
                    cell.printed_error = self.printed_error(record, error, sight, &cell, says, rules);
                    self.far_below_zero(&cell, place, raw);
                }
            }
            CellText::WithError(number, error, own_unit) => {
                written = self.number(&mut cell, number, own_unit, record, sight, last_kept);
                if cell.state == CellState::Number {
                    written = self.keep(last_kept, raw);
                    let unit = own_unit.or(sight.unit);
                    let multiple = sight.error.and_then(|error| error.kind.multiple);
                    let multiple = multiple.or(self.plan.block_multiple).or(rules.multiple);
                    cell.printed_error = unit
                        .filter(|_| !error.negative)
                        .and_then(|unit| error.to_mass_fraction(unit, Rounding::Up))
                        .map(|printed| of_element(sight.oxide, printed, Rounding::Up))
                        .filter(|printed| {
                            Sigma::is_possible(*printed, multiple.unwrap_or(SigmaMultiple::ONE))
                        });
                    if cell.printed_error.is_none() {
                        self.notice(place, NoticeCode::ErrorNotUnderstood, raw);
                    } else if multiple.is_none() {
                        self.count(place, NoticeCode::MultipleNotStated, "");
                    }
                    self.far_below_zero(&cell, place, raw);
                }
            }
            CellText::Below(number, own_unit) | CellText::Above(number, own_unit) => {
                let above = matches!(cell::read(raw, self.plan.mark), CellText::Above(..));
                written = self.keep(last_kept, raw);
                self.bound(&mut cell, number, own_unit, above, record, sight);
                // Two limits for one cell: the larger one holds, whatever the other would clear.
                if cell.state == CellState::BelowDetection
                    && let Some(stated) = self.limit_column(record, sight)
                {
                    cell.value = cell.value.max(stated);
                }
            }
            CellText::NotDetected => {
                written = self.keep(last_kept, raw);
                cell.state = CellState::NotDetected;
                if let Some(limit) = self.limit_of_non_detect(record, sight, rules) {
                    cell.state = CellState::BelowDetection;
                    cell.value = limit;
                }
            }
        }
        if cell.state == CellState::Number {
            cell.detection_limit = self.limit_column(record, sight);
        }
        (cell, written)
    }

    /// A number, in the cell's own unit or the column's.
    fn number(
        &mut self,
        cell: &mut Cell,
        number: Number,
        own_unit: Option<Unit>,
        record: &Record<'_>,
        sight: Sight,
        last_kept: &mut TextId,
    ) -> Written {
        let raw = record.cell(sight.value);
        let place = record.place(sight.value);
        // A unit behind the number does not make a column of something else this element's mass fraction.
        let own_unit = own_unit.filter(|_| !sight.foreign);
        let Some(unit) = own_unit.or(sight.unit) else {
            cell.state = CellState::UnitUnknown;
            let written = self.keep(last_kept, raw);
            if !sight.foreign {
                self.count(place, NoticeCode::UnitNotStated, &cell::text(raw));
            }
            return written;
        };
        let Some(stated) = number.to_mass_fraction(unit, Rounding::Nearest) else {
            cell.state = CellState::Text;
            self.notice(place, NoticeCode::NumberOutOfRange, raw);
            return self.keep(last_kept, raw);
        };
        cell.state = CellState::Number;
        cell.value = of_element(sight.oxide, stated, Rounding::Nearest);
        if stated > WHOLE {
            self.notice(place, NoticeCode::MoreThanWhole, raw);
        }
        if own_unit.is_none() && remakes_exactly(&number, sight.remade) {
            Written::Plain(number.decimals)
        } else {
            self.keep(last_kept, raw)
        }
    }

    fn far_below_zero(&mut self, cell: &Cell, place: (u32, u32), raw: &[u8]) {
        if let Some(printed) = cell.printed_error
            && i128::from(cell.value.units()) < -3 * i128::from(printed.units())
        {
            self.notice(place, NoticeCode::FarBelowZero, raw);
        }
    }

    /// Below or above a number.
    fn bound(
        &mut self,
        cell: &mut Cell,
        number: Number,
        own_unit: Option<Unit>,
        above: bool,
        record: &Record<'_>,
        sight: Sight,
    ) {
        let raw = record.cell(sight.value);
        let place = record.place(sight.value);
        let own_unit = own_unit.filter(|_| !sight.foreign);
        let Some(unit) = own_unit.or(sight.unit) else {
            cell.state = CellState::UnitUnknown;
            if !sight.foreign {
                self.count(place, NoticeCode::UnitNotStated, &cell::text(raw));
            }
            return;
        };
        match number.to_mass_fraction(unit, Rounding::Nearest) {
            Some(value) if value > MassFraction::ZERO => {
                cell.state = if above { CellState::AboveRange } else { CellState::BelowDetection };
                // A bound of the oxide: rounded up for "below"; "above" only loses what is less than a millionth.
                cell.value = of_element(sight.oxide, value, Rounding::Up);
            }
            _ => {
                cell.state = CellState::Text;
                self.notice(place, NoticeCode::NumberOutOfRange, raw);
            }
        }
    }

    /// A row whose mark says "below detection": its limit stands in a limit column, else in the error column, else
    /// in place of the value.
    fn marked_below(
        &mut self,
        record: &Record<'_>,
        sight: Sight,
        last_kept: &mut TextId,
        rules: ReadingRules,
    ) -> (Cell, Written) {
        let raw = record.cell(sight.value);
        let mut cell = Cell { state: CellState::NotDetected, ..Cell::NO_COLUMN };
        let written = if raw.trim_ascii().is_empty() { Written::Nothing } else { self.keep(last_kept, raw) };
        if let Some(limit) = self.limit_of_non_detect(record, sight, rules) {
            cell.state = CellState::BelowDetection;
            cell.value = limit;
            // A number above the limit it is said to lie below: one of them is wrong, and nobody can tell which.
            let above = match cell::read(raw, self.plan.mark) {
                CellText::Number(number, own) | CellText::WithError(number, _, own) => own
                    .or(sight.unit)
                    .and_then(|unit| number.to_mass_fraction(unit, Rounding::Nearest))
                    .is_none_or(|stated| of_element(sight.oxide, stated, Rounding::Nearest) > limit),
                CellText::MarkUnclear | CellText::Above(..) | CellText::Unreadable => true,
                _ => false,
            };
            if above {
                cell = Cell { state: CellState::Text, ..Cell::NO_COLUMN };
                self.notice(record.place(sight.value), NoticeCode::CellNotUnderstood, raw);
            }
        } else if let CellText::Number(number, own) | CellText::Below(number, own) =
            cell::read(raw, self.plan.mark)
            && !number.negative
            && number.digits > 0
        {
            self.bound(&mut cell, number, own, false, record, sight);
        }
        (cell, written)
    }

    /// Keeps the text of a cell.
    pub(crate) fn keep(&mut self, last_kept: &mut TextId, raw: &[u8]) -> Written {
        let text = cell::text(raw.trim_ascii());
        let id = self.source.readings.pool.intern_near(&cut_short(&text), *last_kept);
        *last_kept = id;
        Written::Text(id)
    }

    fn printed_error(
        &mut self,
        record: &Record<'_>,
        error: Option<ErrorPlan>,
        sight: Sight,
        cell: &Cell,
        says: RowSays,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        let planned = error?;
        let raw = record.cell(planned.at).trim_ascii();
        if raw.is_empty() {
            return None;
        }
        let place = record.place(planned.at);
        let unit = unit_of_error(planned, sight.unit);
        let number = match cell::read(raw, self.plan.mark) {
            CellText::Number(number, own) => Some((number, own)),
            CellText::NotMeasured | CellText::NotDetected => return None,
            _ => None,
        };
        let multiple = planned.kind.multiple.or(self.plan.block_multiple).or(rules.multiple);
        let Some((number, own)) = number.filter(|(number, _)| !number.negative) else {
            self.notice(place, NoticeCode::ErrorNotUnderstood, raw);
            return None;
        };
        let stated = if planned.kind.relative {
            if own.is_none_or(|own| own == Unit::Percent) { percent_of(cell.value, number) } else { None }
        } else {
            let Some(unit) = own.or(unit) else {
                self.count(place, NoticeCode::ErrorUnitUnclear, &cell::text(raw));
                return None;
            };
            number
                .to_mass_fraction(unit, Rounding::Up)
                .map(|printed| of_element(sight.oxide, printed, Rounding::Up))
        };
        let printed = stated
            .and_then(|printed| in_block_multiple(printed, says.multiple, self.plan.block_multiple))
            .filter(|printed| Sigma::is_possible(*printed, multiple.unwrap_or(SigmaMultiple::ONE)));
        if printed.is_none() {
            self.notice(place, NoticeCode::ErrorNotUnderstood, raw);
        } else if multiple.is_none() {
            self.count(place, NoticeCode::MultipleNotStated, "");
        }
        printed
    }

    fn limit_column(&self, record: &Record<'_>, sight: Sight) -> Option<MassFraction> {
        let (at, unit) = sight.limit?;
        let number = match cell::read(record.cell(at), self.plan.mark) {
            CellText::Number(number, own) | CellText::Below(number, own) => {
                number.to_mass_fraction(own.or(unit).or(sight.unit)?, Rounding::Up)
            }
            _ => None,
        };
        number
            .filter(|limit| *limit > MassFraction::ZERO)
            .map(|limit| of_element(sight.oxide, limit, Rounding::Up))
    }

    /// The detection limit of a "not detected" without a number: from its own column, else from the error column.
    fn limit_of_non_detect(
        &mut self,
        record: &Record<'_>,
        sight: Sight,
        rules: ReadingRules,
    ) -> Option<MassFraction> {
        if let Some(stated) = self.limit_column(record, sight) {
            return Some(stated);
        }
        let planned = sight.error.filter(|planned| !planned.kind.relative)?;
        let multiple = planned.kind.multiple.or(self.plan.block_multiple).or(rules.multiple);
        let raw = record.cell(planned.at);
        let unit = unit_of_error(planned, sight.unit);
        let printed = match cell::read(raw, self.plan.mark) {
            CellText::Number(number, own) => number.to_mass_fraction(own.or(unit)?, Rounding::Up)?,
            CellText::Below(number, own) => {
                let limit = number.to_mass_fraction(own.or(unit)?, Rounding::Up)?;
                return Some(of_element(sight.oxide, limit, Rounding::Up));
            }
            _ => return None,
        };
        if printed <= MassFraction::ZERO || printed.units() > LARGEST_SIGMA_UNITS {
            return None;
        }
        let printed = of_element(sight.oxide, printed, Rounding::Up);
        self.count(record.place(planned.at), NoticeCode::LimitInErrorColumn, &cell::text(raw));
        match rules.detection {
            DetectionInError::Limit => Some(printed),
            DetectionInError::OneError => {
                let hundredths = i64::from(multiple.unwrap_or(SigmaMultiple::ONE).hundredths());
                Some(MassFraction::from_units((printed.units() * 300 + hundredths - 1) / hundredths))
            }
        }
    }
}

/// What another column says of the same element, where it says anything.
///
/// In a long table a column of values beside the values may hold a verdict (`PASS`): only what measures is a rival.
fn rival(record: &Record<'_>, planned: &CellPlan, long: bool) -> Option<Vec<u8>> {
    let said = planned.rivals.iter().map(|rival| record.cell(*rival).trim_ascii());
    let claims = |cell: &&[u8]| !cell.is_empty() && (!long || header::is_measurement(cell));
    said.filter(claims).map(<[u8]>::to_vec).next()
}

/// The element's share of a mass fraction that is stated as an oxide.
fn of_element(oxide: Option<Oxide>, stated: MassFraction, rounding: Rounding) -> MassFraction {
    oxide.map_or(stated, |oxide| oxide.to_element(stated, rounding))
}

/// So many percent of a value, away from zero.
fn percent_of(value: MassFraction, percent: Number) -> Option<MassFraction> {
    // Millionths of a percent.
    let parts = i128::from(percent.scaled(6, Rounding::Up)?);
    let product = i128::from(value.units()).abs() * parts;
    i64::try_from((product + 99_999_999) / 100_000_000).ok().map(MassFraction::from_units)
}

/// An uncertainty whose row states its multiple, in the multiple of the block. A row that is silent among rows that
/// speak is taken for one sigma, the reading that clears least.
fn in_block_multiple(
    printed: MassFraction,
    row: Option<SigmaMultiple>,
    block: Option<SigmaMultiple>,
) -> Option<MassFraction> {
    let (Some(row), Some(block)) = (row, block) else { return Some(printed) };
    if row == block {
        return Some(printed);
    }
    let (row, block) = (i128::from(row.hundredths()), i128::from(block.hundredths()));
    let scaled = (i128::from(printed.units()) * block + row - 1) / row;
    i64::try_from(scaled).ok().map(MassFraction::from_units)
}

/// The unit of an uncertainty cell: its heading's, else the value's own; nothing where it can't be told.
fn unit_of_error(planned: ErrorPlan, value_unit: Option<Unit>) -> Option<Unit> {
    if planned.kind.clear { planned.kind.unit.or(value_unit) } else { None }
}

/// True where the text of a number can be made again from its value: it is plain, in a unit that holds for the whole
/// column, and no finer than a millionth of mg/kg.
fn remakes_exactly(number: &Number, unit: Option<Unit>) -> bool {
    unit.is_some_and(|unit| number.plain && i32::from(number.decimals) <= unit.exponent() + 6)
}
