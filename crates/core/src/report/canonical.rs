//! The findings as plain lines that no wording, layout, language or length of a report changes: what a report is held against
//! years later, by whatever version of the program. The SHA-256 of these lines is the digest that a report prints.
//!
//! The lines and their fields are described in `contract.md`.

use crate::inspection::{Findings, Inspection, LotFinding, MaterialFinding, PartFinding};
use crate::judging::SourceReview;
use crate::lot::LotReason;
use crate::opened::Kept;
use crate::outcome::Judgement;
use crate::reading::{CellState, Identity, Source};
use crate::substance::{Halogen, Substance};
use crate::tabbed::Line;

/// The first line: what it is.
pub const SCHEMA: &str = "plumbline.canonical/1";

/// Gives every line in order, each without its line end.
///
/// # Units
/// Mass fractions in millionths of mg/kg, uncertainties one sigma, thicknesses and times as the file words them.
pub fn write(inspection: &Inspection, findings: &Findings, line_to: &mut dyn FnMut(&str)) {
    let mut line = Line::default();
    let mut written: u64 = 1;
    line_to(line.begin(SCHEMA).as_str());
    let mut put = |line: &mut Line| {
        written += 1;
        line_to(line.as_str());
    };
    files(inspection, &mut line, &mut put);
    sources(inspection, findings, &mut line, &mut put);
    let settings = inspection.settings();
    for book in inspection.books.used(&settings.books) {
        put(line.begin("book").text(&book.id).text(&book.edition).plain(&book.sha256));
    }
    let undone = crate::acts::undone(&inspection.acts);
    for (at, (act, undone)) in inspection.acts.iter().zip(undone).enumerate() {
        line.begin("act").number(at as u64 + 1).plain(act.kind.code()).text(&act.target.to_text());
        line.text(&act.value).text(&act.by).text(&act.at).text(&act.note);
        put(line.plain(if undone { "undone" } else { "stands" }));
    }
    if !inspection.history.is_empty() {
        put(line.begin("history").plain(&inspection.history.sha256()));
    }
    for photo in inspection.named_photos() {
        line.begin("photo").text(&photo.name).text(&photo.sha256);
        match &photo.picture {
            Ok(picture) => put(line.plain(&picture.print.sha256)),
            Err(why) => put(line.plain(why.code())),
        }
    }
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.same_as.get(at).copied().flatten().is_some() {
            continue;
        }
        let reviewer = &SourceReview::new(source, &inspection.books, &settings);
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        for row in 0..source.readings.len() {
            reading(&mut line, findings, reviewer, source, (at, first, row));
            put(&mut line);
        }
    }
    for finding in &findings.trust.checks {
        line.begin("check").number(finding.reading).plain(finding.kind.code()).plain(finding.class.code());
        for element in &finding.elements {
            line.plain(element.element.symbol()).more(":").more(element.verdict.code());
        }
        put(&mut line);
    }
    for finding in &findings.materials {
        material(&mut line, finding);
        put(&mut line);
    }
    for PartFinding { lot, part, disposition, reasons } in &findings.parts {
        line.begin("part").number(*lot as u64).maybe(part.as_deref()).plain(disposition.code());
        put(with_reasons(&mut line, reasons));
    }
    for (at, finding) in findings.lots.iter().enumerate() {
        lot(&mut line, at, finding);
        put(&mut line);
    }
    let end = written + 1;
    line_to(line.begin("end").number(end).as_str());
}

fn files(inspection: &Inspection, line: &mut Line, put: &mut dyn FnMut(&mut Line)) {
    for file in inspection.opened.files() {
        line.begin("file").text(&file.name).plain(if file.in_folder { "in_folder" } else { "named" });
        line.number(file.bytes).plain(&file.sha256);
        put(line.plain(if matches!(file.kept, Kept::Stubs(_)) { "nothing_read" } else { "read" }));
    }
}

fn sources(inspection: &Inspection, findings: &Findings, line: &mut Line, put: &mut dyn FnMut(&mut Line)) {
    for (at, source) in inspection.sources.iter().enumerate() {
        let counts = findings.counts(inspection, at);
        line.begin("source").number(at as u64).text(&source.name).plain(&source.sha256);
        for count in [
            counts.rows_in,
            counts.used,
            counts.check,
            counts.duplicate,
            counts.set_aside,
            counts.refused,
            counts.readings,
            counts.readings_set_aside,
        ] {
            line.number(count);
        }
        put(line.plain(source.problem.map_or("-", crate::reading::NoticeCode::code)));
        for notice in &source.refusals.kept {
            line.begin("refused").number(at as u64).number(notice.line).number(notice.column);
            put(line.plain(notice.code.code()).number(notice.rows));
        }
    }
}

/// What names a reading in the lines.
const IDENTITIES: [Identity; 14] = [
    Identity::Id,
    Identity::Unit,
    Identity::Spot,
    Identity::Part,
    Identity::Material,
    Identity::Lot,
    Identity::Supplier,
    Identity::Time,
    Identity::Seconds,
    Identity::Instrument,
    Identity::Mode,
    Identity::Operator,
    Identity::Thickness,
    Identity::Note,
];

fn reading(
    line: &mut Line,
    findings: &Findings,
    reviewer: &SourceReview<'_>,
    source: &Source,
    (at, first, row): (usize, usize, usize),
) {
    let (index, readings) = (first + row, &source.readings);
    let assessed = reviewer.assess(row);
    line.begin("reading").number(index as u64).number(at as u64).number(readings.line(row));
    for identity in IDENTITIES {
        line.maybe(readings.identity(identity, row));
    }
    line.plain(assessed.class.code()).plain(assessed.class_from.code());
    let check = findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
    line.plain(if check { "check" } else { "product" });
    line.maybe(findings.set_aside.get(&(index as u32)).map(String::as_str));
    line.plain(findings.trust.worst(index).code());
    for (substance, judged) in Substance::ALL.iter().zip(&assessed.substances) {
        judgement(line.plain(substance.symbol()), judged);
    }
    for halogen in Halogen::ALL {
        judgement(line.plain(halogen.name()), &assessed.halogen(halogen));
    }
    if reviewer.has_limits() {
        for limit in reviewer.limits_as(assessed.class, row) {
            line.plain("").more_text(&limit.book.id).more("/").more_text(&limit.row.id);
            judgement(line, &limit.judged.judgement);
        }
    }
    for column in readings.elements() {
        let cell = column.cell(row);
        if cell.state == CellState::NoColumn || cell.state == CellState::Blank {
            continue;
        }
        line.plain(column.element.symbol()).more("=").more(cell.state.code());
        line.more(":").more_number(cell.value.units());
        for beside in [cell.printed_error, cell.detection_limit] {
            line.more(":");
            if let Some(beside) = beside {
                line.more_number(beside.units());
            }
        }
    }
}

/// Outcome, reason, sigma and where it is from, behind a name.
fn judgement(line: &mut Line, judged: &Judgement) {
    line.more(":").more(judged.outcome.code()).more(":");
    line.more(judged.reason.map_or("", crate::outcome::Reason::code)).more(":");
    if let Some(sigma) = judged.used.sigma {
        line.more_number(sigma.to_mass_fraction().units());
    }
    line.more(":").more(judged.used.from.code());
}

fn material(line: &mut Line, finding: &MaterialFinding) {
    line.begin("material").number(finding.lot as u64);
    line.maybe(finding.part.as_deref()).maybe(finding.name.as_deref()).plain(finding.class.code());
    line.number(finding.readings.len() as u64).number(finding.set_aside.len() as u64);
    line.plain(finding.disposition.code());
    for substance in Substance::ALL {
        line.plain(substance.symbol()).more(":").more(finding.tally.worst(substance).code());
    }
    for halogen in Halogen::ALL {
        line.plain(halogen.name()).more(":").more(finding.tally.worst_halogen(halogen).code());
    }
    with_reasons(line, &finding.reasons);
}

fn lot(line: &mut Line, at: usize, finding: &LotFinding) {
    line.begin("lot").number(at as u64).maybe(finding.supplier.as_deref()).maybe(finding.lot.as_deref());
    match finding.source {
        Some(source) => line.number(source as u64),
        None => line.maybe(None),
    };
    line.number(finding.readings).number(finding.units).number(finding.materials);
    line.plain(finding.disposition.code());
    with_reasons(line, &finding.reasons);
}

fn with_reasons<'a>(line: &'a mut Line, reasons: &[LotReason]) -> &'a mut Line {
    for LotReason { code, effect, about, count, of } in reasons {
        line.plain(code.code()).more(":").more(effect.code());
        line.more(":").more_number(*count).more("/").more_number(*of).more(":").more_text(about);
    }
    line
}
