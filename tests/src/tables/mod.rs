//! Invented wide tables, thick with ties and with everything a cell may hold, and the ways to vary one.
//!
//! Amounts are whole millionths of mg/kg ("micro" below), so that the same table can be written in every unit
//! without loss: what a table says does not hang on how it is spelt.

mod config;
mod made;
mod spelling;
mod vary;

pub use config::tries;
pub use made::{rough_text, table, table_all_known};
pub use spelling::Units;

use crate::twin::Given;

/// Millionths of mg/kg.
pub type Micro = i64;

/// Millionths in one mg/kg.
pub const MG_PER_KG: Micro = 1_000_000;

/// What stands in a value cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Value {
    /// A number.
    Number(Micro),
    /// `< 5`.
    Below(Micro),
    /// `> 5`.
    Above(Micro),
    /// Anything else, as written.
    Word(&'static str),
}

/// What stands in an error cell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Error {
    /// One sigma of this, printed as the column's multiple of it, with some millionths on top so that it does not
    /// always divide evenly.
    Sigma(Micro, Micro),
    /// Anything else, as written.
    Word(&'static str),
}

/// The cells of one element in one row.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Cell {
    /// The value.
    pub value: Value,
    /// The error.
    pub error: Error,
    /// The detection limit, where the table has such a column.
    pub limit: Option<Micro>,
}

/// The columns of one element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Columns {
    /// The element's symbol.
    pub element: &'static str,
    /// The heading names the unit.
    pub names_unit: bool,
    /// There is an error column.
    pub has_error: bool,
    /// What it is headed as: (1s), (2s), (3s), or nothing.
    pub multiple: Option<u8>,
    /// There is a column of detection limits.
    pub has_limit: bool,
}

/// One row.
#[derive(Clone, Debug)]
pub struct Row {
    /// Sample id, different in every row.
    pub id: String,
    /// Physical unit.
    pub piece: &'static str,
    /// Part.
    pub part: &'static str,
    /// Material, mostly different for every class word.
    pub material: String,
    /// Lot.
    pub lot: &'static str,
    /// Supplier.
    pub supplier: &'static str,
    /// Class word.
    pub class: &'static str,
    /// What its own `Units` cell says instead of the table's unit.
    pub units: Option<&'static str>,
    /// One for each element of [`Table::columns`].
    pub cells: Vec<Cell>,
}

/// A table with what a person says besides it.
#[derive(Clone)]
pub struct Table {
    /// Columns of elements.
    pub columns: Vec<Columns>,
    /// Rows.
    pub rows: Vec<Row>,
    /// A `Units` column states the unit of columns whose heading doesn't.
    pub units_column: bool,
    /// What separates cells.
    pub delimiter: char,
    /// What a person says.
    pub given: Given,
}

/// The table as a person would read it: a failed property shows what to type in.
impl std::fmt::Debug for Table {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "\n{}\n{}", self.to_text(Units::MgPerKg), self.given.to_settings())
    }
}
