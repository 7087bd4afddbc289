//! `history.txt`: what was known before, and what this inspection adds to it, for the next time.

use std::io::{self, Write};

use crate::history::History;
use crate::inspection::{Findings, Inspection};
use crate::streams;
use crate::suppliers;

/// The histories that were given and this inspection, merged.
pub fn after(inspection: &Inspection, findings: &Findings) -> History {
    let mut history = inspection.history.clone();
    history.checks.extend(streams::records_of(inspection, findings));
    history.lots.extend(suppliers::lot_records(inspection, findings));
    history
}

/// Writes the history as UTF-8 text.
///
/// # Errors
/// Those of the sink.
pub fn write(inspection: &Inspection, findings: &Findings, sink: &mut dyn Write) -> io::Result<()> {
    sink.write_all(after(inspection, findings).to_text().as_bytes())
}
