//! Each material beside the part's accepted lots, where a history was given.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report};
use crate::change::{Change, ChangeVerdict};
use crate::inspection::MaterialFinding;
use crate::report::change;

impl Report<'_> {
    /// Nothing without a history of lots.
    pub(super) fn change(&self) -> Markup {
        let mut compared: Vec<(&MaterialFinding, &Change)> = self
            .findings
            .materials
            .iter()
            .filter_map(|material| Some((material, material.change.as_ref()?)))
            .collect();
        compared.sort_by_key(|(_, change)| change.verdict != ChangeVerdict::Changed);
        html! {
            @if !compared.is_empty() {
                section {
                    h2 { (self.say("report-change")) }
                    p class="keep" { (self.say("report-change_text")) }
                    (self.capped("report-change_capped", MATERIAL_ROWS, compared.len()))
                    table {
                        thead { tr {
                            th { (self.say("report-material_head")) }
                            th { (self.say("report-change_says")) }
                        } }
                        tbody {
                            @for (material, change) in compared.iter().take(MATERIAL_ROWS) {
                                tr {
                                    td class="id" { (self.material_name(material)) }
                                    td { (change::text(self.words, change)) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
