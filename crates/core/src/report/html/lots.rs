//! The lots with their dispositions, reasons and what lies ahead.

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::inspection::LotFinding;
use crate::lot::{Disposition, LotReason};
use crate::report::phrases;

impl Report<'_> {
    fn reasons(&self, reasons: &[LotReason]) -> Markup {
        html! {
            ol {
                @for reason in reasons {
                    li class=[(reason.effect == Disposition::Accept).then_some("advisory")] {
                        (phrases::lot_reason(self.words, reason))
                        @if reason.effect != Disposition::Accept {
                            br; i { (phrases::lot_remedy(self.words, reason.code)) }
                        }
                    }
                }
            }
        }
    }

    pub(super) fn lots(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-lots")) }
                @for lot in self.lots_worst_first() {
                    div class="lot" {
                        h3 {
                            @if lot.lot.is_some() { (self.say("report-lot")) " " }
                            (self.lot_name(lot)) " "
                            (self.disposition(lot.disposition))
                        }
                        p class="sub" {
                            (self.say("report-supplier")) ": "
                            (lot.supplier.clone().unwrap_or_else(|| self.say("not-stated")))
                            " · " (self.say("report-readings")) ": " (lot.readings)
                            " · " (self.say("report-materials")) ": " (lot.materials)
                        }
                        @if !lot.reasons.is_empty() {
                            p class="keep" { b { (self.say("report-reasons")) } }
                            (self.reasons(&lot.reasons))
                        }
                        @if let Some(text) = self.rests_on(lot) { p { (text) } }
                        @if lot.disposition != Disposition::Accept { p class="sub" { (self.say("report-hold_ends")) } }
                    }
                }
            }
        }
    }

    fn lots_worst_first(&self) -> Vec<&LotFinding> {
        let mut lots: Vec<&LotFinding> = self.findings.lots.iter().collect();
        lots.sort_by_key(|lot| std::cmp::Reverse(lot.disposition));
        lots
    }

    /// The sampling a lot's disposition rests on, where it is given.
    fn rests_on(&self, lot: &LotFinding) -> Option<String> {
        let of_lot = |kind| {
            self.settings.of_lot(
                kind,
                lot.supplier.as_deref().unwrap_or(""),
                lot.lot.as_deref().unwrap_or(""),
            )
        };
        let (size, take) = (of_lot(ActKind::LotSize)?, of_lot(ActKind::UnitsToTake)?);
        let text = self.words.with(
            "report-rests_on",
            &[("size", &size.to_string()), ("take", &take.to_string()), ("units", &lot.units.to_string())],
        );
        Some(text)
    }
}
