//! What was tested: every lot with what was stated of its items, their condition and how they were taken.

use maud::{Markup, html};

use super::{MATERIAL_ROWS, Report};
use crate::acts::ActKind;
use crate::inspection::LotFinding;
use crate::stated;

impl Report<'_> {
    /// What is stated of a lot in one field; `None` where nobody said.
    pub(super) fn stated_of(&self, lot: &LotFinding, kind: ActKind, field: &str) -> Option<String> {
        let (supplier, name) = (lot.supplier.as_deref().unwrap_or(""), lot.lot.as_deref().unwrap_or(""));
        let text = self.settings.stated_of(kind, supplier, name)?;
        let said = if field.is_empty() { text.to_owned() } else { stated::field(text, field) };
        (!said.is_empty()).then_some(said)
    }

    /// The same, with words for what nobody said.
    pub(super) fn stated_words(&self, lot: &LotFinding, kind: ActKind, field: &str) -> String {
        self.stated_of(lot, kind, field).unwrap_or_else(|| self.say("not-stated"))
    }

    pub(super) fn items(&self) -> Markup {
        let lots = self.lots_worst_first();
        html! {
            section {
                h2 { (self.say("report-items")) }
                p class="keep sub" { (self.say("report-items_text")) }
                (self.capped("report-items_capped", MATERIAL_ROWS, lots.len()))
                @if !lots.is_empty() {
                    table class="tight" data-element="7.8.2.1-g 62321-1-4.8-sample 63000-description" {
                        thead { tr {
                            th { (self.say("report-lot")) (self.words.comma()) (self.say("report-supplier")) }
                            th { (self.say("report-description")) }
                            th data-element="7.8.2.1-g-condition" { (self.say("report-condition")) }
                            th data-element="7.8.2.1-h 62321-1-4.8-received" { (self.say("report-received")) }
                            th data-element="7.8.5-date 7.8.5-place 7.8.5-by" { (self.say("report-sampled")) }
                            th data-element="7.8.2.1-k 7.8.5-method" { (self.say("report-sampled_method")) }
                        } }
                        tbody { @for (_, lot) in lots.iter().take(MATERIAL_ROWS) { (self.item(lot)) } }
                    }
                }
            }
        }
    }

    fn item(&self, lot: &LotFinding) -> Markup {
        let supplier = lot.supplier.clone().unwrap_or_else(|| self.say("not-stated"));
        let planned = lot.sampling.as_ref().is_some_and(|sampling| sampling.plan.is_some());
        let method = self.stated_of(lot, ActKind::Sampled, "method");
        let plan = if planned { "report-sampled_plan" } else { "report-none_stated_plan" };
        html! {
            tr {
                td class="id" { b { (self.lot_name(lot)) } br; (supplier) }
                td class="long" { (self.stated_words(lot, ActKind::Item, "description")) }
                td class="long" { (self.stated_words(lot, ActKind::Item, "condition")) }
                td { (self.words.moment(&self.stated_words(lot, ActKind::Received, ""))) }
                td class="long" {
                    (self.words.moment(&self.stated_words(lot, ActKind::Sampled, "date"))) (self.words.semicolon())
                    (self.stated_words(lot, ActKind::Sampled, "by")) (self.words.semicolon())
                    (self.stated_words(lot, ActKind::Sampled, "place"))
                }
                td class="long" { @if let Some(method) = method { (method) (self.words.semicolon()) } (self.say(plan)) }
            }
        }
    }
}
