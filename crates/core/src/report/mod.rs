//! Findings written out: JSON and CSV for others to read, HTML for people. All stream to a byte sink, so that a
//! million readings never stand in memory as one text.

pub mod books;
pub mod canonical;
pub mod change;
pub mod charts;
mod checks;
pub mod copied;
pub mod csv;
pub mod evidence;
pub mod exemptions;
pub mod explain;
pub mod history;
pub mod html;
pub mod json;
pub mod photos;
pub mod phrases;
pub mod repeats;
pub mod rulers;
pub mod sampling;
pub mod settled;
pub mod suppliers;
mod working;

use crate::reading::codes;

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

codes! {
    /// How long a report is. All lengths say the same findings under the same number.
    Length {
        /// One page for who must decide whether goods move.
        OnePage => "one_page",
        /// Everything but the list of every reading.
        Full => "full",
        /// Every reading, with what the readings rest on.
        Annex => "annex",
    }
}

impl Length {
    /// The length of a code.
    pub fn from_code(code: &str) -> Option<Length> {
        Length::ALL.iter().copied().find(|length| length.code() == code)
    }

    /// The file it is written to.
    pub const fn file(self) -> &'static str {
        match self {
            Length::OnePage => "report-one-page.html",
            Length::Full => "report.html",
            Length::Annex => "report-annex.html",
        }
    }
}
