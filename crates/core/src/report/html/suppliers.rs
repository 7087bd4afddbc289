//! What the history says of the suppliers and parts of this inspection.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report};
use crate::lot::Disposition;
use crate::report::suppliers;
use crate::suppliers::{SupplierHistory, histories};

impl Report<'_> {
    /// Nothing without a history of lots: one lot is none.
    pub(super) fn suppliers(&self) -> Markup {
        if self.inspection.history.lots.is_empty() {
            return html! {};
        }
        let mut all = histories(self.inspection, self.findings);
        all.retain(SupplierHistory::is_here);
        let stated = |text: &str| self.or_not_stated((!text.is_empty()).then_some(text));
        html! {
            section {
                h2 { (self.say("report-suppliers")) }
                p class="keep" { (self.say("report-suppliers_text")) }
                (self.capped("report-suppliers_capped", MATERIAL_ROWS, all.len()))
                table class="tight" {
                    thead { tr {
                        th { (self.say("report-supplier")) }
                        th { (self.say("report-part")) }
                        @for disposition in Disposition::ALL {
                            th class="n" { (self.say(&format!("disposition-{}", disposition.code()))) }
                        }
                        th class="known" { (self.say("report-suppliers_known")) }
                    } }
                    tbody {
                        @for one in all.iter().take(MATERIAL_ROWS) {
                            tr {
                                td class="id" { (stated(&one.supplier)) }
                                td class="id" { (stated(&one.part)) }
                                @for disposition in Disposition::ALL { td class="n" { (one.count(disposition)) } }
                                td {
                                    @match one.next {
                                        Some(next) => b { (suppliers::next_text(self.words, next)) },
                                        None => (self.say("supplier-no_series")),
                                    }
                                    @for text in suppliers::remarks(self.words, one) { br; (text) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}
