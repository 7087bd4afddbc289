//! Files to readings: lines and cells, headings, units, censored cells.
//!
//! Intake never just fails: it gives a [`plumbline_core::reading::Source`] with readings, and with a place and a
//! reason for every row that is not one. It decides nothing of the trade.

pub mod cell;
mod header_search;
pub mod heading;
pub mod preamble;
pub mod records;
pub mod source_reader;

pub use source_reader::{SourceReader, found_in_folder, refuse_source};
