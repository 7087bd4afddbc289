//! What a report carries, computed again: sources, findings, and the report itself.

use plumbline_core::duplicates;
use plumbline_core::history::History;
use plumbline_core::inspection::{self, Findings, Inspection, LotFinding};
use plumbline_core::opened::{Kept, OpenedFile};
use plumbline_core::reading::{Source, sha256_hexadecimal};
use plumbline_core::report::evidence::Pinned;
use plumbline_core::report::{Program, canonical, html};
use plumbline_core::rules::{RuleBook, comes_with_the_program};
use plumbline_core::words::Words;
use plumbline_intake::{SourceReader, of_stubs};

use crate::evidence::{Book, Evidence};
use crate::place::{Part, PartKind};
use crate::verdict::{LotSeen, OnlyFindings};

/// What was computed again.
pub(crate) struct Remade {
    /// The digest of the findings.
    pub(crate) digest: String,
    /// The report, or why only its findings can be compared.
    pub(crate) report: Result<Vec<u8>, OnlyFindings>,
    /// The lines of the findings, where they are needed.
    pub(crate) findings: Vec<String>,
    /// The lots, worst first, where the report can't be made again.
    pub(crate) lots: Vec<LotSeen>,
}

/// Why it could not be computed.
pub(crate) enum Stopped {
    /// Files that are not carried are needed.
    FilesNeeded,
    /// A part that the program can't read.
    Broken(Part),
}

/// Computes everything again.
pub(crate) fn remake(
    evidence: &Evidence,
    beside: &[(String, Vec<u8>)],
    program: Program,
    languages: &dyn Fn(&str) -> Option<Words>,
) -> Result<Remade, Stopped> {
    let inspection = inspection_of(evidence, beside)?;
    let findings = inspection::review(&inspection);
    let pinned = Pinned::of(&inspection, &findings);
    let own = evidence.program == program.name && evidence.version == program.version;
    let report = match languages(&evidence.language) {
        _ if !own => Err(OnlyFindings::OtherVersion),
        None => Err(OnlyFindings::LanguageNotHere),
        Some(words) => {
            let mut report = Vec::new();
            // A Vec takes all bytes.
            let _ = html::write_pinned(&inspection, &findings, &words, evidence.length, &pinned, &mut report);
            Ok(report)
        }
    };
    let mut lines = Vec::new();
    if report.is_err() && evidence.canonical.is_some() && pinned.digest != evidence.digest {
        canonical::write(&inspection, &findings, &mut |line| lines.push(line.to_owned()));
    }
    let lots = if report.is_err() { lots(&inspection, &findings) } else { Vec::new() };
    Ok(Remade { digest: pinned.digest, report, findings: lines, lots })
}

fn lots(inspection: &Inspection, findings: &Findings) -> Vec<LotSeen> {
    let source = |at: Option<usize>| at.and_then(|at| inspection.sources.get(at));
    let seen = |lot: &LotFinding| LotSeen {
        lot: lot.lot.clone(),
        supplier: lot.supplier.clone(),
        source: source(lot.source).map(|source| source.name.clone()).unwrap_or_default(),
        disposition: lot.disposition,
    };
    let mut lots: Vec<LotSeen> = findings.lots.iter().map(seen).collect();
    lots.sort_by_key(|lot| std::cmp::Reverse(lot.disposition));
    lots
}

/// The inspection, built as the doors build it.
fn inspection_of(evidence: &Evidence, beside: &[(String, Vec<u8>)]) -> Result<Inspection, Stopped> {
    let broken = |kind, name: &str| Stopped::Broken(Part { kind, name: name.to_owned() });
    let mut inspection = Inspection::new().map_err(|_| broken(PartKind::Book, ""))?;
    for Book { id, loaded, text } in &evidence.books {
        let known = comes_with_the_program(id, text);
        // A book that acts only name is the program's own; where a later program has another of that id, this one counts.
        if *loaded || !known {
            let book = RuleBook::parse(text).map_err(|_| broken(PartKind::Book, id))?;
            inspection.books.add(book);
        }
    }
    inspection.acts.clone_from(&evidence.acts);
    if let Some(text) = &evidence.history {
        inspection.history = History::parse(text).map_err(|_| broken(PartKind::History, ""))?;
    }
    inspection.photos.clone_from(&evidence.photos);
    let settings = inspection.settings();
    for file in &evidence.files {
        let (name, in_folder, room) = (&file.name, file.in_folder, inspection.opened.room());
        let read = |bytes: &[u8]| {
            let mut reader = SourceReader::new(name, &settings).keeping(room);
            for piece in bytes.chunks(PIECE) {
                reader.push(piece);
            }
            reader.finish_opened(in_folder)
        };
        let (opened, sources): (OpenedFile, Vec<Source>) = match &file.kept {
            Kept::Bytes(bytes) => read(bytes),
            // Whoever hides a reading says of its file that nothing was read: where the file is given, it is read.
            Kept::Stubs(stubs) => match given(beside, file) {
                Some(bytes) => read(bytes),
                None => (file.clone(), of_stubs(file, stubs)),
            },
            Kept::TooLarge => match given(beside, file) {
                Some(bytes) => read(bytes),
                None => return Err(Stopped::FilesNeeded),
            },
        };
        inspection.add_file(opened, sources);
    }
    duplicates::set_duplicates_aside(&mut inspection.sources);
    Ok(inspection)
}

/// Bytes read at a time, as the doors do.
const PIECE: usize = 4 * 1024 * 1024;

/// The digest alone tells; a length that is not that of the bytes shows in what is made of them.
fn given<'a>(beside: &'a [(String, Vec<u8>)], file: &OpenedFile) -> Option<&'a [u8]> {
    beside.iter().map(|(_, bytes)| bytes.as_slice()).find(|bytes| sha256_hexadecimal(bytes) == file.sha256)
}
