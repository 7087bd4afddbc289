//! The notice to one supplier: facts, what they rest on, what is asked, and by when. It accuses nobody, and what is undecided
//! is called undecided.

use maud::{Markup, html};

use super::asked::{all_asked, concerns_supplier};
use super::cases;
use super::{NoticeOffer, Papers};
use crate::acts::ActKind;
use crate::inspection::{LotFinding, MaterialFinding};
use crate::lot::Disposition;
use crate::report::phrases;

/// Most rows of facts of one lot.
const FACTS: usize = 300;

impl Papers<'_> {
    pub(super) fn notice_page(&self, offer: &NoticeOffer) -> Markup {
        let lots: Vec<(usize, &LotFinding)> =
            offer.lots.iter().filter_map(|at| Some((*at, self.findings.lots.get(*at)?))).collect();
        let reply = lots.iter().filter_map(|(_, lot)| self.of_lot(ActKind::ReplyBy, lot)).min();
        // Where nothing is asked, there is nothing to reply to.
        let asks = lots.iter().any(|(_, lot)| self.asks(lot));
        let undecided = lots.iter().any(|(_, lot)| lot.disposition == Disposition::Hold);
        let body = html! {
            (self.belongs_to(&html! {
                dt { (self.say("paper-to")) } dd { b { (self.name(Some(&offer.supplier))) } }
                @if asks { dt { (self.say("paper-reply_by")) } dd { b { (self.day_or_line(reply)) } } }
            }))
            section {
                p { (self.say("paper-notice_facts")) }
                @if undecided { p { b { (self.say("paper-notice_undecided")) } } }
                p { (self.say("caution-items")) (self.words.gap()) (self.say("caution-homogeneous")) }
            }
            @for (at, lot) in &lots { (self.notified(*at, lot)) }
            @if asks { section class="whole" {
                h2 { (self.say("paper-answer")) }
                p { (self.say("paper-answer_text")) }
                dl class="key" {
                    @for of in ["answer_by", "answer_date", "answer_signature"] {
                        dt { (self.say(&format!("paper-{of}"))) } dd { span class="line" {} }
                    }
                }
            } }
        };
        self.page("notice", &body)
    }

    fn of_lot(&self, kind: ActKind, lot: &LotFinding) -> Option<&str> {
        let of = |text: &Option<String>| text.clone().unwrap_or_default();
        self.settings.text_of_lot(kind, &of(&lot.supplier), &of(&lot.lot))
    }

    fn notified(&self, at: usize, lot: &LotFinding) -> Markup {
        let materials: Vec<&MaterialFinding> = self
            .findings
            .materials
            .iter()
            .filter(|one| one.lot == at && one.disposition != Disposition::Accept)
            .collect();
        let facts: Vec<_> = materials
            .iter()
            .flat_map(|material| self.reader.cases(material).into_iter().map(move |case| (*material, case)))
            .collect();
        let concerns: Vec<_> = lot.reasons.iter().filter(|reason| concerns_supplier(reason)).collect();
        let own = lot
            .reasons
            .iter()
            .any(|reason| reason.effect != Disposition::Accept && !concerns_supplier(reason));
        html! {
            section class="lot" {
                h2 {
                    (self.called_lot(lot)) " "
                    span class={ "d d-" (lot.disposition.code()) } { (self.say(&format!("disposition-{}", lot.disposition.code()))) }
                }
                p class="sub" { (self.with("paper-lot_counts", &[("readings", &lot.readings.to_string()), ("materials", &lot.materials.to_string())])) }
                @if !facts.is_empty() {
                    p class="keep" { b { (self.say("paper-found")) } }
                    @if facts.len() > FACTS {
                        p { (self.with("paper-capped", &[("shown", &FACTS.to_string()), ("total", &facts.len().to_string())])) }
                    }
                    table {
                        thead { tr {
                            th { (self.say("report-part")) } th { (self.say("report-material")) }
                            th { (self.say("paper-substance")) } th { (self.say("paper-worst")) } th { (self.say("report-outcome")) }
                        } }
                        tbody {
                            @for (material, case) in facts.iter().take(FACTS) {
                                tr {
                                    td { (self.name(material.part.as_deref())) }
                                    td { (self.material_name(material)) }
                                    td { (cases::named(self.words, &case.what)) }
                                    td {
                                        (self.reader.value(self.words, &case.what, case.reading))
                                        br; (self.reader.against(self.words, &case.what, case.reading))
                                    }
                                    td { (phrases::outcome(self.words, case.outcome)) }
                                }
                            }
                        }
                    }
                }
                @if !concerns.is_empty() {
                    p class="keep" { b { (self.say("paper-reasons")) } }
                    ul { @for reason in &concerns { li { (phrases::lot_reason(self.words, reason)) } } }
                }
                @if own { p { (self.say("paper-own_reasons")) } }
                p class="keep" { b { (self.say("paper-asked")) } }
                (self.asked_of(lot))
                @if let Some(day) = self.of_lot(ActKind::ReplyBy, lot).filter(|_| self.asks(lot)) { p { (self.say("paper-reply_by")) (self.words.colon()) b { (day) } } }
            }
        }
    }

    /// Whether the supplier is asked for anything about a lot.
    fn asks(&self, lot: &LotFinding) -> bool {
        self.of_lot(ActKind::RequestedAction, lot).is_some()
            || !all_asked(&lot.reasons, lot.disposition).is_empty()
    }

    /// What is asked: a person's own words where there are any, else what the reasons ask for.
    fn asked_of(&self, lot: &LotFinding) -> Markup {
        if let Some(text) = self.of_lot(ActKind::RequestedAction, lot) {
            return html! { p class="own" { (Self::or_line(Some(text))) } };
        }
        let asked = all_asked(&lot.reasons, lot.disposition);
        html! {
            @if asked.is_empty() { p { (self.say("paper-asked_nothing")) } }
            @else { ol { @for one in asked { li { (self.say(&format!("paper-ask-{}", one.code()))) } } } }
        }
    }
}
