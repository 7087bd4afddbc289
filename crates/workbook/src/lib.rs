//! `findings.xlsx`: findings as a spreadsheet workbook with typed cells, frozen heads, and text that no program takes for a
//! formula.
//!
//! Numbers are numbers, days and moments are dates where their source states them in full, and everything else is text by
//! type and by format. There is no formula, no link, no macro and no picture in it. The same findings give the same bytes.

mod package;
mod sheet;
mod sheets;

pub use sheets::{READINGS, columns, write, write_up_to};
