//! The head of a report: what it is, the summary, what goes with every result, and where it is signed.

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::report::{PROGRAM, phrases};

impl Report<'_> {
    fn or_blank(&self, kind: ActKind) -> String {
        self.set(kind).map_or_else(|| self.say("report-blank"), str::to_owned)
    }

    pub(super) fn heading(&self, number: &str) -> Markup {
        html! {
            header {
                h1 { (self.title()) }
                p class="sub" { (self.say("report-subtitle")) }
                dl class="key" {
                    dt { (self.say("report-number")) } dd { b { (number) } }
                    dt { (self.say("report-reviewed")) } dd { (self.words.moment(&self.or_blank(ActKind::ReviewedAt))) }
                    dt { (self.say("report-inspector")) } dd { (self.or_blank(ActKind::Inspector)) }
                    dt { (self.say("report-place")) } dd { (self.or_blank(ActKind::Place)) }
                    @if let Some(category) = self.set(ActKind::Category) {
                        dt { (self.say("report-category")) } dd { (category) }
                    }
                    @if let Some(date) = self.set(ActKind::PlacingDate) {
                        dt { (self.say("report-placing")) } dd { (self.words.moment(date)) }
                    }
                    dt { (self.say("report-program")) } dd { (PROGRAM.name) " " (PROGRAM.version) }
                    dt { (self.say("report-findings_digest")) } dd class="mono" { (self.digest) }
                }
            }
        }
    }

    pub(super) fn summary(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-summary")) }
                p { b { (phrases::summary_counts(self.words, self.findings)) } }
                p { (phrases::summary_says(self.words, self.findings)) }
                p { (phrases::summary_evidence(self.words, self.findings)) }
                p class="sub" { (self.say("report-legend")) }
            }
        }
    }

    pub(super) fn cautions(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-cautions")) }
                ul class="cautions" {
                    @for caution in phrases::cautions(self.words) { li { (caution) } }
                }
            }
        }
    }

    pub(super) fn signatures(&self, number: &str) -> Markup {
        html! {
            section class="last" {
                h2 { (self.say("report-signatures")) }
                p { (self.say("report-number")) ": " b { (number) } }
                p class="mono" { (self.say("report-findings_digest")) ": " (self.digest) }
                div class="signatures" {
                    div { (self.say("report-sign_inspector")) }
                    div { (self.say("report-sign_second")) }
                }
                p class="end" { "— " (self.say("report-end")) " " (number) " —" }
            }
        }
    }
}
