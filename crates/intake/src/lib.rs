//! Files to readings: lines and cells, headings, units, censored cells.
//!
//! Intake never just fails: it gives a [`plumbline_core::reading::Source`] with readings, and with a place and a
//! reason for every row that is not one. It decides nothing of the trade.

pub mod archive;
pub mod cell;
pub mod container;
mod header_search;
pub mod heading;
pub mod records;
pub mod source_reader;
#[cfg(test)]
mod test_package;
mod unpacking;
pub mod workbook;

pub use source_reader::{SourceReader, found_in_folder, refuse_source};
