//! `report.html`: one self-contained file that prints on A4 and Letter and reads with scripts off.
//!
//! Everything shown is text run through one escaping writer; the only markup taken as it is comes from this crate
//! (its own style sheet and the rulers it draws).

mod annex;
mod change;
mod charts;
mod claims;
mod doubts;
mod heading;
mod laboratory;
mod limits;
mod lots;
mod materials;
mod method;
mod open;
mod photos;
mod reached;
mod repeats;
mod sampling;
mod sources;
mod suppliers;
mod trust;

use std::io::{self, Write};

use maud::{Markup, PreEscaped, html};

use super::evidence::{self, Pinned};
use super::{Length, PROGRAM, phrases};
use crate::acts::{ActKind, Settings};
use crate::inspection::{Findings, Inspection, LotFinding, MaterialFinding};
use crate::judging::SourceReview;
use crate::lot::Disposition;
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::reading::Source;
use crate::substance::Halogen;
use crate::visible_text;
use crate::words::Words;

/// Most readings the printed annex holds; the rest stand in the CSV, and the annex says so.
pub const ANNEX_ROWS: usize = 1000;
/// Most open outcomes that are printed with their working.
pub const OPEN_CASES: usize = 200;
/// Most materials that are printed.
pub const MATERIAL_ROWS: usize = 1000;

/// How every report begins: by it a door knows a report among other files.
pub const BEGINS: &str = "<!DOCTYPE html><!--plumbline.report/1-->";

/// How every report ends, behind what it carries.
pub const CLOSES: &str = "</body></html>\n";

pub(crate) const STYLE: &str = include_str!("../report.css");

struct Report<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    words: &'a Words,
    length: Length,
    settings: Settings,
    reviewers: Vec<SourceReview<'a>>,
    digest: String,
}

/// Writes the report.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    length: Length,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let pinned = Pinned::of(inspection, findings);
    write_pinned(inspection, findings, words, length, &pinned, sink)
}

/// The same, for who has the canonical findings already: several lengths of one report share them.
///
/// # Errors
/// Those of the sink.
pub fn write_pinned(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    length: Length,
    pinned: &Pinned,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let mut hashing = evidence::Hashing::of(sink);
    let sink: &mut dyn Write = &mut hashing;
    let settings = inspection.settings();
    let for_reviewers = settings.clone();
    let report = Report {
        inspection,
        findings,
        words,
        length,
        settings,
        reviewers: inspection
            .sources
            .iter()
            .map(|source| SourceReview::new(source, &inspection.books, &for_reviewers))
            .collect(),
        digest: pinned.digest.clone(),
    };
    let number = report.number();
    let head = html! {
        (PreEscaped(BEGINS))
        (PreEscaped(format!("<html lang=\"{}\">", words.tag())))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:";
            title { (report.title()) " · " (number) }
            style {
                (PreEscaped(STYLE)) (PreEscaped(format!(":root{{--id:\"{number}\"}}")))
                (PreEscaped(format!("@page{{@bottom-right{{content:{}}}}}", report.page_number())))
            }
        }
    };
    write_markup(sink, &head)?;
    sink.write_all(b"<body><main>")?;
    for section in [
        report.heading(&number),
        report.summary(),
        report.cautions(),
        report.lots(),
        report.materials(),
        report.change(),
        report.limits(),
    ] {
        write_markup(sink, &section)?;
    }
    report.open_outcomes(sink)?;
    report.photos(sink)?;
    for section in [
        report.doubts(),
        report.repeats(),
        report.laboratory(),
        report.exemptions(),
        report.suppliers(),
        report.reached(),
        report.trust(),
        report.charts(),
        report.not_assessed(),
        report.method(),
        report.sources(),
        report.acts(),
    ] {
        write_markup(sink, &section)?;
    }
    report.annex(sink)?;
    write_markup(sink, &report.signatures(&number))?;
    sink.write_all(b"</main>\n")?;
    let (text, sink) = hashing.end();
    let about = evidence::About { program: PROGRAM, language: words.tag(), length, text: &text };
    evidence::write(inspection, &about, pinned, sink)?;
    sink.write_all(CLOSES.as_bytes())
}

fn write_markup(sink: &mut dyn Write, markup: &Markup) -> io::Result<()> {
    sink.write_all(visible_text::in_markup(&markup.0).as_bytes())
}

/// The number of the report of an inspection, and the SHA-256 of its findings, as every paper of it prints them.
pub fn number_and_digest(inspection: &Inspection, findings: &Findings) -> (String, String) {
    let settings = inspection.settings();
    let review = |source| SourceReview::new(source, &inspection.books, &settings);
    let reviewers: Vec<_> = inspection.sources.iter().map(review).collect();
    let digest = evidence::Pinned::of(inspection, findings, &reviewers).digest;
    (number(settings.inspection(ActKind::ReviewedAt), &digest), digest)
}

/// A report's number, from date and digest, so that the same findings of the same day have the same number and no other has
/// it.
fn number(reviewed_at: Option<&str>, digest: &str) -> String {
    let date: String = reviewed_at.unwrap_or("").chars().filter(char::is_ascii_digit).take(8).collect();
    let digest = digest.get(..10).unwrap_or("").to_uppercase();
    if date.is_empty() { format!("PL-{digest}") } else { format!("PL-{date}-{digest}") }
}

impl Report<'_> {
    fn say(&self, id: &str) -> String {
        self.words.say(id)
    }

    fn set(&self, kind: ActKind) -> Option<&str> {
        self.settings.inspection(kind)
    }

    fn title(&self) -> String {
        self.set(ActKind::Title).map_or_else(|| self.say("report-title"), str::to_owned)
    }

    fn number(&self) -> String {
        number(self.set(ActKind::ReviewedAt), &self.digest)
    }

    /// The number of a printed page as the value of CSS `content`: the catalogue's text with the two counters in it.
    fn page_number(&self) -> String {
        let [page, pages] = ["\u{1}", "\u{2}"];
        // Quotes and what could end the style sheet have no place in such a text.
        let said = self.with("report-page_number", &[("page", page), ("pages", pages)]);
        let said = said.replace(['"', '\\', '<', '\n'], "");
        let said = said.replace(page, "\" counter(page) \"").replace(pages, "\" counter(pages) \"");
        format!("\"{said}\"")
    }

    fn disposition(&self, disposition: Disposition) -> Markup {
        html! {
            span class={ "d d-" (disposition.code()) } {
                (self.say(&format!("disposition-{}", disposition.code())))
            }
        }
    }

    /// A material is never "accepted": its lot is.
    fn material_disposition(&self, disposition: Disposition) -> Markup {
        html! {
            span class={ "d d-" (disposition.code()) } {
                (self.say(&format!("material-disposition-{}", disposition.code())))
            }
        }
    }

    fn outcome(&self, outcome: Outcome) -> Markup {
        html! { span class={ "o o-" (outcome.code()) } { (phrases::outcome_short(self.words, outcome)) } }
    }

    /// Short and long form; once where they are the same words.
    fn outcome_twice(&self, outcome: Outcome) -> Markup {
        let (short, long) =
            (phrases::outcome_short(self.words, outcome), phrases::outcome(self.words, outcome));
        html! { (self.outcome(outcome)) @if short != long { " (" (long) ")" } }
    }

    fn with(&self, id: &str, arguments: &[(&str, &str)]) -> String {
        self.words.with(id, arguments)
    }

    fn class(&self, class: MaterialClass) -> String {
        self.say(&format!("class-{}", class.code()))
    }

    /// A material with its part and lot, in one line.
    fn material_name(&self, material: &MaterialFinding) -> String {
        let lot = self.findings.lots.get(material.lot).map(|lot| self.lot_name(lot)).unwrap_or_default();
        let name = material.name.clone().unwrap_or_else(|| self.class(material.class));
        let part = self.or_not_stated(material.part.as_deref());
        format!("{name} · {} {part} · {} {lot}", self.say("report-part"), self.say("report-lot"))
    }

    /// A line that says that only the first of many are printed; nothing where all are.
    fn capped(&self, id: &str, shown: usize, total: usize) -> Markup {
        html! {
            @if total > shown {
                p { (self.with(id, &[("shown", &shown.to_string()), ("total", &total.to_string())])) }
            }
        }
    }

    fn lot_name(&self, lot: &LotFinding) -> String {
        phrases::lot_name(self.words, self.inspection, lot)
    }

    fn or_not_stated(&self, text: Option<&str>) -> String {
        text.map_or_else(|| self.say("not-stated"), str::to_owned)
    }

    fn halogens_count(&self) -> bool {
        self.settings.halogen_book(&self.inspection.books).is_some()
    }

    fn place(&self, index: usize) -> Option<(&Source, &SourceReview<'_>, usize)> {
        let (at, row) = self.findings.place(index)?;
        Some((self.inspection.sources.get(at)?, self.reviewers.get(at)?, row))
    }

    fn reading_name(&self, source: &Source, row: usize) -> String {
        phrases::reading_name(self.words, source, row)
    }
}

fn halogen_head(halogen: Halogen) -> String {
    match halogen {
        Halogen::Total => "Cl+Br".to_owned(),
        _ => halogen.name().to_owned(),
    }
}
