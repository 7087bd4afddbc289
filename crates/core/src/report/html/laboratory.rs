//! Laboratory results beside the screen, and readings that a person set aside.

use maud::{Markup, html};

use super::Report;
use crate::inspection::LotFinding;
use crate::lot::Disposition;
use crate::report::explain::About;
use crate::report::settled;
use crate::settling::{LabFinding, value_text};
use crate::substance::Substance;

/// Most results, and readings set aside, that are printed.
const ROWS: usize = 300;

impl Report<'_> {
    /// Nothing at all where no laboratory and no person said anything.
    pub(super) fn laboratory(&self) -> Markup {
        let materials = &self.findings.materials;
        let found: Vec<_> = materials
            .iter()
            .flat_map(|material| material.laboratory.iter().map(move |one| (material, one)))
            .collect();
        let unmatched = settled::unmatched(self.words, self.inspection, self.findings);
        html! {
            @if !found.is_empty() {
                section data-element="7.8.2.1-p-results" {
                    h2 { (self.say("report-laboratory_results")) }
                    p { b { (self.say("report-external_text")) } }
                    p { (self.say("report-laboratory_text")) }
                    (self.capped("report-claims_capped", ROWS, found.len()))
                    table class="tight" {
                        thead { tr {
                            th { (self.say("report-material")) } th { (self.say("report-laboratory_value")) }
                            th { (self.say("report-limit")) } th { (self.say("report-laboratory_verdict")) }
                            th { (self.say("report-laboratory_screen")) }
                            th { (self.say("report-laboratory_method")) }
                            th { (self.say("report-laboratory_source")) }
                        } }
                        tbody {
                            @for (material, one) in found.iter().take(ROWS) {
                                tr {
                                    td class="id" { (self.material_name(material)) }
                                    td class="n" { (one.result.analyte.code()) " " (self.words.number(&value_text(&one.result))) }
                                    td class="n" { @if let Some(limit) = one.limit { (self.words.number(&limit)) } @else { "–" } }
                                    td { (self.lab_says(one)) }
                                    td { (self.outcome(one.screen)) }
                                    td { (self.stated(&one.result.method)) }
                                    td {
                                        (self.stated(&one.result.laboratory)) (self.words.comma()) (self.stated(&one.result.report)) (self.words.comma())
                                        (self.or_not_stated(one.result.date.map(|day| self.words.day(day)).as_deref()))
                                    }
                                }
                            }
                        }
                    }
                }
            }
            @if !self.findings.set_aside.is_empty() { (self.set_aside()) }
            @if !unmatched.is_empty() {
                section {
                    h2 { (self.say("report-unmatched")) }
                    ul { @for text in &unmatched { li { (text) } } }
                }
            }
        }
    }

    fn stated(&self, text: &str) -> String {
        self.or_not_stated((!text.is_empty()).then_some(text))
    }

    fn lab_says(&self, one: &LabFinding) -> String {
        let mut said: Vec<String> =
            one.verdict.iter().map(|verdict| self.say(&format!("lab-verdict-{}", verdict.code()))).collect();
        if !one.result.is_traceable() {
            said.push(self.say("report-laboratory_not_traceable"));
        }
        if !one.placed {
            said.push(self.say("report-laboratory_not_placed"));
        }
        if said.is_empty() { "–".to_owned() } else { self.words.series(&said) }
    }

    fn set_aside(&self) -> Markup {
        let all = &self.findings.set_aside;
        html! {
            section {
                h2 { (self.say("report-set_aside")) }
                p { (self.say("report-set_aside_text")) }
                (self.capped("report-claims_capped", ROWS, all.len()))
                table class="tight" {
                    thead { tr {
                        th { (self.say("report-reading")) }
                        @for substance in Substance::ALL { th { (substance.symbol()) } }
                        th { (self.say("report-set_aside_why")) }
                    } }
                    tbody {
                        @for (reading, why) in all.iter().take(ROWS) {
                            @if let (Some((source, _, row)), Some(verdicts)) =
                                (self.place(*reading as usize), self.findings.verdicts.get(*reading as usize)) {
                                tr {
                                    td class="id" { (source.name) ":" (source.readings.line(row)) " " (self.reading_name(source, row)) }
                                    @for (substance, outcome) in Substance::ALL.into_iter().zip(verdicts.substances) {
                                        td { (self.outcome(outcome)) (self.strip_of(About::Substance(substance), *reading)) }
                                    }
                                    td { (why) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    /// How the hold of a lot ends, with blanks to fill by hand for what nobody said.
    pub(super) fn hold_ends(&self, lot: &LotFinding) -> Markup {
        if lot.disposition == Disposition::Accept {
            return html! {};
        }
        let said = lot.hold_ends.clone().unwrap_or_default();
        let blank = || "______________".to_owned();
        let or_blank = |text: String| if text.is_empty() { blank() } else { text };
        let rows = [
            ("report-hold_what", blank()),
            ("report-hold_who", or_blank(said.who)),
            ("report-hold_until", said.until.map_or_else(blank, |day| self.words.day(day))),
            ("report-hold_quarantined", said.quarantined.map_or_else(blank, |units| units.to_string())),
            ("report-hold_place", or_blank(said.place)),
        ];
        html! {
            div class="case" {
                p { b { (self.say("report-hold_ends")) } }
                dl class="key" { @for (id, text) in rows { dt { (self.say(id)) } dd { (text) } } }
            }
        }
    }
}
