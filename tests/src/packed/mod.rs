//! Archives and workbooks written by hand, sound or not.

pub mod open_document;
pub mod xlsx;
pub mod zip;

/// A cell of a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SheetCell {
    /// Text; nothing where it is empty.
    Text(String),
    /// A number, as its decimal digits with a point.
    Number(String),
    /// A date with its time, `2026-03-14T08:05:00`.
    Moment(String),
}

/// A sheet with its name.
#[derive(Clone, Debug)]
pub struct Sheet {
    /// Its name.
    pub name: String,
    /// Its rows.
    pub rows: Vec<Vec<SheetCell>>,
}

fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}
