//! Every reading.

use std::io::{self, Write};

use maud::{Markup, PreEscaped, html};

use super::{ANNEX_ROWS, Report, add_markup};
use crate::caution::Cautions;
use crate::judging::SourceReview;
use crate::outcome::Judgement;
use crate::reading::{Identity, Source};
use crate::report::{phrases, rulers};
use crate::ruler::Picture;
use crate::substance::{Element, Halogen, Substance};

impl Report<'_> {
    pub(super) fn annex(&self, sink: &mut dyn Write) -> io::Result<()> {
        let total = self.findings.verdicts.len();
        let head = html! {
            (PreEscaped("<section class=\"annex\" data-element=\"7.8.2.1-m-readings 62321-1-4.8-results-readings\">"))
            h2 { (self.say("report-annex")) }
            @if total > ANNEX_ROWS {
                p { (self.words.with("report-annex_capped", &[
                    ("shown", &ANNEX_ROWS.to_string()), ("total", &total.to_string()),
                ])) }
            }
            p class="sub keep" data-element="62321-1-4.8-limit" { (self.say("report-annex_values")) }
            (self.rulers_legend())
            (PreEscaped("<div class=\"scroll\"><table class=\"tight\">"))
            thead { tr {
                th { (self.say("report-class")) }
                @for substance in Substance::ALL { th { (substance.symbol()) } }
                th { "Cl" } th { "Cl+Br" }
            } }
        };
        add_markup(sink, &head)?;
        for index in 0..total.min(ANNEX_ROWS) {
            let Some((source, reviewer, row)) = self.place(index) else { continue };
            let assessed = reviewer.assess(row);
            let join = |identities: &[Identity]| {
                identities
                    .iter()
                    .filter_map(|identity| {
                        let said = source.readings.identity(*identity, row)?;
                        Some(if *identity == Identity::Time {
                            self.words.moment(said)
                        } else {
                            said.to_owned()
                        })
                    })
                    .collect::<Vec<_>>()
                    .join(" · ")
            };
            let sample =
                join(&[Identity::Id, Identity::Unit, Identity::Spot, Identity::Part, Identity::Material]);
            let origin = join(&[Identity::Supplier, Identity::Lot]);
            let how = join(&[
                Identity::Time,
                Identity::Seconds,
                Identity::Instrument,
                Identity::Mode,
                Identity::Operator,
                Identity::Thickness,
            ]);
            let check = self.findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
            let line = html! {
                (PreEscaped("<tbody class=\"one\">"))
                tr class="who" { td colspan="8" {
                    b { (sample) }
                    @if check { " · " i { (self.say("report-check")) } }
                    @if self.findings.set_aside.contains_key(&(index as u32)) { " · " i { (self.say("report-aside")) } }
                    @if !origin.is_empty() { " · " (origin) }
                    @if !how.is_empty() { " · " (how) }
                    " · " (source.name) (self.words.comma()) (phrases::line_name(self.words, source.readings.line(row)))
                } }
                tr {
                    td { (self.say(&format!("class-{}", assessed.class.code()))) }
                    @for (at, (substance, judged)) in Substance::ALL.iter().zip(&assessed.substances).enumerate() {
                        (self.value(
                            source, reviewer, row, at, substance.element(), judged, &assessed.cautions[at],
                            rulers::of_substance(self.inspection, source, &assessed, *substance, row),
                        ))
                    }
                    (self.value(
                        source, reviewer, row, CHLORINE, Element::CL, &assessed.halogens[0], &assessed.halogen_cautions[0],
                        rulers::of_halogen(self.inspection, source, &assessed, Halogen::Cl, row),
                    ))
                    td {
                        (self.outcome(assessed.total.judgement.outcome)) (doubted(&assessed.halogen_cautions[2])) br;
                        (phrases::total_short(self.words, &assessed.total).replace("\u{a0}±", " ±"))
                        @if let Some(picture) = rulers::of_halogen(
                            self.inspection, source, &assessed, Halogen::Total, row
                        ) { (self.strip(&picture)) }
                    }
                }
                (PreEscaped("</tbody>"))
            };
            add_markup(sink, &line)?;
        }
        sink.write_all(b"</table></div></section>")
    }

    /// Outcome, value and sigma of one element, with the sigma's letter and multiple, and the ruler they are read off.
    #[allow(clippy::too_many_arguments)]
    fn value(
        &self,
        source: &Source,
        reviewer: &SourceReview<'_>,
        row: usize,
        at: usize,
        element: Element,
        judged: &Judgement,
        cautions: &Cautions,
        picture: Option<Picture>,
    ) -> Markup {
        let cell = source.readings.cell(element, row);
        let written = phrases::written_of(source, element, row);
        let printed = reviewer.printed_sigma(element, &cell, row);
        let multiple = reviewer.multiple(at, row).0;
        html! {
            td {
                (self.outcome(judged.outcome)) (doubted(cautions)) br;
                (phrases::value_short(self.words, &cell, judged, printed, multiple, &written).replace("\u{a0}±", " ±"))
                @if let Some(picture) = picture { (self.strip(&picture)) }
            }
        }
    }
}

/// The place of chlorine among the judged elements.
const CHLORINE: usize = 5;

/// The sign of an outcome that something puts in doubt; the legend explains it.
fn doubted(cautions: &Cautions) -> &'static str {
    if cautions.is_empty() { "" } else { "\u{a0}!" }
}
