//! The limits of the books that the inspection names, for each material.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report};
use crate::inspection::MaterialFinding;
use crate::judging::LimitAssessed;
use crate::outcome::Outcome;
use crate::report::{phrases, rulers};

/// The worst reading of a material under one limit.
struct Worst<'a> {
    assessed: LimitAssessed<'a>,
    reading: u32,
    readings: u64,
}

impl Report<'_> {
    pub(super) fn limits(&self) -> Markup {
        if !self.reviewers.iter().any(super::SourceReview::has_limits) {
            return html! {};
        }
        let rows: Vec<_> = self
            .findings
            .materials
            .iter()
            .flat_map(|material| self.limits_of(material).into_iter().map(move |one| (material, one)))
            .collect();
        html! {
            section {
                h2 { (self.say("report-limits")) }
                p class="keep" { (self.say("report-limits_text")) }
                @if rows.is_empty() { p { (self.say("report-limits_none")) } } @else {
                    (self.capped("report-limits_capped", MATERIAL_ROWS, rows.len()))
                    table class="tight" {
                        thead { tr {
                            th { (self.say("report-material_head")) } th { (self.say("report-limit")) }
                            th { (self.say("report-outcome")) } th class="n" { (self.say("report-readings")) }
                            th { (self.say("report-worst_reading")) } th { (self.say("report-why")) }
                        } }
                        tbody { @for (material, one) in rows.iter().take(MATERIAL_ROWS) { (self.limit_row(material, one)) } }
                    }
                }
            }
        }
    }

    fn limit_row(&self, material: &MaterialFinding, one: &Worst<'_>) -> Markup {
        let judged = one.assessed.judged.judgement;
        let why = phrases::reason(self.words, &judged, &one.assessed.row.id, None);
        html! {
            tr {
                td class="id" { (self.material_name(material)) }
                td { b { (one.assessed.row.id) } br; (one.assessed.book.title) }
                td {
                    (self.outcome(judged.outcome))
                    @if let Some((picture, value)) = rulers::of_limit(self.words, one.assessed.row, &one.assessed.judged) {
                        (self.strip_valued(&picture, &value))
                    }
                }
                td class="n" { (one.readings) }
                td { @if let Some((source, _, row)) = self.place(one.reading as usize) { (self.reading_name(source, row)) } }
                td { (why) }
            }
        }
    }

    /// The worst outcome under each limit that applies to the material.
    fn limits_of(&self, material: &MaterialFinding) -> Vec<Worst<'_>> {
        let mut list: Vec<Worst<'_>> = Vec::new();
        for reading in &material.readings {
            let Some((_, reviewer, row)) = self.place(*reading as usize) else { continue };
            let (class, _) = reviewer.class(row);
            for (at, assessed) in reviewer.limits_as(class, row).into_iter().enumerate() {
                match list.get_mut(at) {
                    None => list.push(Worst { assessed, reading: *reading, readings: 1 }),
                    Some(worst) => {
                        worst.readings += 1;
                        if assessed.judged.judgement.outcome > worst.assessed.judged.judgement.outcome {
                            (worst.assessed, worst.reading) = (assessed, *reading);
                        }
                    }
                }
            }
        }
        list.retain(|one| one.assessed.judged.judgement.outcome != Outcome::NotApplicable);
        list
    }
}
