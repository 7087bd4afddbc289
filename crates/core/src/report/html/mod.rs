//! The report in its three lengths: each a self-contained file that prints on A4 and Letter and reads with scripts off.
//!
//! Everything shown is text run through one escaping writer; the only markup taken as it is comes from this crate
//! (its own style sheet and the rulers it draws).

mod annex;
mod change;
mod charts;
mod claims;
mod doubts;
mod heading;
mod items;
mod laboratory;
mod limits;
mod lots;
mod materials;
mod measured;
mod method;
mod one_page;
mod open;
mod photos;
mod reached;
mod repeats;
mod sampling;
mod sources;
mod strips;
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
use crate::words::{ENGLISH_TAG, Words};

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
    let number = pinned.number.as_str();
    let sections = report.sections(number)?;
    let head = html! {
        (PreEscaped(BEGINS))
        (PreEscaped(format!("<html lang=\"{}\">", words.tag())))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:";
            title { (report.title()) " · " (number) }
            style {
                (PreEscaped(STYLE)) (PreEscaped(report.page_words(number)))
                (PreEscaped(format!("@page{{@bottom-right{{content:{}}}}}", report.page_number())))
            }
        }
    };
    write_markup(sink, &head)?;
    write_markup(sink, &report.opening(number, &headings(&sections)))?;
    for section in &sections {
        write_markup(sink, &PreEscaped(rows_kept_together(&section.0)))?;
    }
    sink.write_all(b"</main>\n")?;
    let (text, sink) = hashing.end();
    let about = evidence::About { program: PROGRAM, language: words.tag(), length, text: &text };
    evidence::write(inspection, &about, pinned, sink)?;
    sink.write_all(CLOSES.as_bytes())
}

/// The first two rows of a list and its last two as groups of their own, which the style sheet keeps whole: so no row
/// stands alone at a page's foot or head. (Not every browser can keep one row beside the next.)
fn rows_kept_together(section: &str) -> String {
    const OPEN: &str = "<tbody>";
    const CLOSE: &str = "</tbody>";
    const ROW: &str = "</tr>";
    let mut whole = String::with_capacity(section.len() + 256);
    let mut rest = section;
    while let Some((before, after)) = rest.split_once(OPEN) {
        let (rows, behind) = after.split_once(CLOSE).unwrap_or((after, ""));
        whole.push_str(before);
        let ends: Vec<usize> = rows.match_indices(ROW).map(|(at, _)| at + ROW.len()).collect();
        // What begins with a heading of its own is one group already.
        let cuts = match ends[..] {
            _ if rows.starts_with("<tr class=\"who\">") => None,
            [] => None,
            [_, second, .., last_but_two, _, _] => Some((second, last_but_two)),
            _ => Some((rows.len(), rows.len())),
        };
        match cuts
            .and_then(|(first, last)| Some((rows.get(..first)?, rows.get(first..last)?, rows.get(last..)?)))
        {
            None => {
                whole.push_str(OPEN);
                whole.push_str(rows);
                whole.push_str(CLOSE);
            }
            Some((first, middle, last)) => {
                for (open, rows) in
                    [("<tbody class=\"keep\">", first), (OPEN, middle), ("<tbody class=\"keep\">", last)]
                {
                    if !rows.is_empty() {
                        whole.push_str(open);
                        whole.push_str(rows);
                        whole.push_str(CLOSE);
                    }
                }
            }
        }
        rest = behind;
    }
    whole.push_str(rest);
    whole
}

/// The headings of the sections, as they stand in them, so that a contents list and what it lists are one.
fn headings(sections: &[Markup]) -> Vec<String> {
    let heading = |part: &str| part.split_once("</h2>").map(|(heading, _)| heading.to_owned());
    sections.iter().flat_map(|section| section.0.split("<h2>").skip(1).filter_map(heading)).collect()
}

/// A piece of a section, as it is: what is not seen gets its signs where the whole section is written, and only once.
fn add_markup(sink: &mut dyn Write, markup: &Markup) -> io::Result<()> {
    sink.write_all(markup.0.as_bytes())
}

fn write_markup(sink: &mut dyn Write, markup: &Markup) -> io::Result<()> {
    sink.write_all(visible_text::in_markup(&markup.0).as_bytes())
}

impl Report<'_> {
    /// What a length holds, in order.
    fn sections(&self, number: &str) -> io::Result<Vec<Markup>> {
        let streamed = |write: &dyn Fn(&mut dyn Write) -> io::Result<()>| -> io::Result<Markup> {
            let mut bytes = Vec::new();
            write(&mut bytes)?;
            Ok(PreEscaped(String::from_utf8_lossy(&bytes).into_owned()))
        };
        Ok(match self.length {
            Length::OnePage => vec![self.one_page(number)],
            Length::Full => vec![
                self.summary(),
                self.cautions(),
                self.items(),
                self.measured(),
                self.lots(),
                self.materials(),
                self.change(),
                self.limits(),
                streamed(&|sink| self.open_outcomes(sink))?,
                streamed(&|sink| self.photos(sink))?,
                self.doubts(),
                self.repeats(),
                self.laboratory(),
                self.exemptions(),
                self.suppliers(),
                self.reached(),
                self.trust(),
                self.charts(),
                self.not_assessed(),
                self.method(),
                self.sources(),
                self.acts(),
                self.signatures(number),
            ],
            Length::Annex => vec![
                self.cautions(),
                streamed(&|sink| self.annex(sink))?,
                self.method(),
                self.sources(),
                self.acts(),
                self.signatures(number),
            ],
        })
    }

    /// The body's beginning: head and contents; one page has its own.
    fn opening(&self, number: &str, headings: &[String]) -> Markup {
        let invented = self.settings.is_invented();
        html! {
            (PreEscaped(format!("<body class=\"{}\">", self.length.code())))
            // On each page where the browser prints no margin boxes.
            p class="running" aria-hidden="true" {
                (number) @if invented { " · " (self.say("report-invented_short")) }
            }
            (PreEscaped("<main>"))
            @if self.length != Length::OnePage { (self.heading(number, headings)) }
        }
    }

    /// What stands in the margins of every page, as the style sheet's own words.
    fn page_words(&self, number: &str) -> String {
        let part = (self.length as usize + 1).to_string();
        let invented = if self.settings.is_invented() { self.say("report-invented") } else { String::new() };
        let words = [
            ("id", number.to_owned()),
            ("part", self.with("report-part_short", &[("part", &part)])),
            ("invented", invented),
        ];
        let said = words.map(|(name, text)| format!("--{name}:\"{}\"", in_style(&text)));
        format!(":root{{{}}}", said.join(";"))
    }

    fn say(&self, id: &str) -> String {
        self.words.say(id)
    }

    fn set(&self, kind: ActKind) -> Option<&str> {
        self.settings.inspection(kind)
    }

    fn title(&self) -> String {
        self.set(ActKind::Title).map_or_else(|| self.say("report-title"), str::to_owned)
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
        html! { (self.outcome(outcome)) @if short != long { (self.words.bracketed(&long)) } }
    }

    fn with(&self, id: &str, arguments: &[(&str, &str)]) -> String {
        self.words.with(id, arguments)
    }

    /// Words of a rule book as they stand, with their language for those who hear them. The books that come with the program
    /// are English; what another one speaks nobody knows.
    fn of_book(&self, text: &str) -> Markup {
        if self.words.tag() == ENGLISH_TAG {
            return html! { (text) };
        }
        html! { span lang=(if self.foreign_books().is_none() { ENGLISH_TAG } else { "" }) { (text) } }
    }

    fn class(&self, class: MaterialClass) -> String {
        self.say(&format!("class-{}", class.code()))
    }

    /// A material with its part and lot, in one line.
    fn material_name(&self, material: &MaterialFinding) -> String {
        let lot = self.called_lot(material);
        let name = material.name.clone().unwrap_or_else(|| self.class(material.class));
        let part = self.or_not_stated(material.part.as_deref());
        format!("{name} · {} {part} · {lot}", self.say("report-part"))
    }

    /// The lot of a material; one that nobody named says so and needs no "Lot" in front.
    fn called_lot(&self, material: &MaterialFinding) -> String {
        let Some(lot) = self.findings.lots.get(material.lot) else { return String::new() };
        let name = self.lot_name(lot);
        if lot.lot.is_some() { format!("{} {name}", self.say("report-lot")) } else { name }
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

/// A text between the quotation marks of a style sheet that stands in a page.
fn in_style(text: &str) -> String {
    let escaped = |letter: char| match letter {
        '"' | '\\' | '<' | '>' | '&' | '\n' | '\r' => format!("\\{:x} ", u32::from(letter)),
        other => other.to_string(),
    };
    text.chars().map(escaped).collect::<Vec<_>>().concat()
}

fn halogen_head(halogen: Halogen) -> String {
    match halogen {
        Halogen::Total => "Cl+Br".to_owned(),
        _ => halogen.name().to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_row_of_a_list_stands_alone() {
        let table = |rows: usize| {
            let rows = (0..rows).map(|at| format!("<tr><td>{at}</td></tr>")).collect::<Vec<_>>().concat();
            format!("<table><tbody>{rows}</tbody></table>!")
        };
        let of = |rows| rows_kept_together(&table(rows));
        let row = |at: usize| format!("<tr><td>{at}</td></tr>");
        assert_eq!(of(0), table(0));
        assert_eq!(of(3), table(3).replace("<tbody>", "<tbody class=\"keep\">"));
        let groups = format!(
            "<table><tbody class=\"keep\">{}{}</tbody><tbody>{}</tbody><tbody class=\"keep\">{}{}</tbody></table>!",
            row(0),
            row(1),
            row(2),
            row(3),
            row(4)
        );
        assert_eq!(of(5), groups);
        assert!(!of(4).contains("<tbody></tbody>"));
        let headed = "<tbody><tr class=\"who\"><td>a</td></tr><tr><td>b</td></tr></tbody>";
        assert_eq!(rows_kept_together(headed), headed);
    }

    #[test]
    fn a_text_in_a_style_sheet_ends_neither_it_nor_the_page() {
        assert_eq!(in_style("a\"b</style>\\"), "a\\22 b\\3c /style\\3e \\5c ");
        assert_eq!(in_style("第 1 页"), "第 1 页");
    }
}
