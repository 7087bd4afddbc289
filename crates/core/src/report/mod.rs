//! Findings written out: JSON and CSV for others to read, HTML for people. All stream to a byte sink, so that a
//! million readings never stand in memory as one text.

pub mod books;
pub mod change;
pub mod charts;
mod checks;
pub mod csv;
pub mod exemptions;
pub mod explain;
pub mod history;
pub mod html;
pub mod json;
pub mod phrases;
pub mod repeats;
pub mod sampling;
pub mod settled;
pub mod suppliers;
mod working;

/// The program's name and version as findings and report print them.
#[derive(Clone, Copy, Debug)]
pub struct Program {
    /// Name.
    pub name: &'static str,
    /// Version.
    pub version: &'static str,
}

/// This program.
pub const PROGRAM: Program = Program { name: "plumbline", version: env!("CARGO_PKG_VERSION") };
