//! Files to readings: lines and cells, headings, units, censored cells.
//!
//! Intake never just fails: it gives [`plumbline_core::reading::Source`]s with readings, and with a place and a
//! reason for every row that is not one. It decides nothing of the trade.

pub mod archive;
pub mod bill;
pub mod cell;
mod class_words;
pub mod container;
pub mod dates;
mod element_cell;
mod gather;
mod header;
mod header_search;
pub mod heading;
mod plan;
mod preamble;
mod reading_rows;
pub mod records;
pub mod source_reader;
mod table;
#[cfg(test)]
mod test_package;
pub mod text_encoding;
mod text_reader;
mod turned;
mod unpacking;
pub mod workbook;

pub use source_reader::{SourceReader, found_in_folder, of_stubs, refuse_source, unreadable};
