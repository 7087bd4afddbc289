//! The lots with their dispositions, reasons and what lies ahead.

use maud::{Markup, html};

use super::Report;
use super::sampling::Drawn;
use crate::conformity::{self, DecisionRule, Statement};
use crate::inspection::LotFinding;
use crate::longer::{Effort, Plan};
use crate::lot::{Disposition, LotReason};
use crate::outcome::Outcome;
use crate::outlook::{self, RulesSaid};
use crate::report::phrases;

impl Report<'_> {
    fn reasons(&self, reasons: &[LotReason]) -> Markup {
        html! {
            ol {
                @for reason in reasons {
                    li class=[(reason.effect == Disposition::Accept).then_some("advisory")] {
                        (phrases::lot_reason(self.words, reason))
                        @if reason.effect != Disposition::Accept {
                            br; i { (phrases::lot_remedy(self.words, reason)) }
                        }
                    }
                }
            }
        }
    }

    pub(super) fn lots(&self) -> Markup {
        let mut drawn = Drawn::new();
        html! {
            section data-element="7.8.6.2-b 7.8.3-opinions" {
                h2 { (self.say("report-lots")) }
                p class="sub keep" { (self.say("report-opinions")) }
                @for (at, lot) in self.lots_worst_first() {
                    div class="lot" {
                        h3 {
                            @if lot.lot.is_some() { (self.say("report-lot")) " " }
                            (self.lot_name(lot)) " "
                            (self.disposition(lot.disposition))
                        }
                        p class="sub" {
                            (self.say("report-supplier")) (self.words.colon())
                            (lot.supplier.clone().unwrap_or_else(|| self.say("not-stated")))
                            " · " (self.say("report-readings")) (self.words.colon()) (lot.readings)
                            " · " (self.say("report-materials")) (self.words.colon()) (lot.materials)
                        }
                        @if !lot.reasons.is_empty() {
                            p class="keep" { b { (self.say("report-reasons")) } }
                            (self.reasons(&lot.reasons))
                        }
                        (self.sampling(lot, &mut drawn))
                        (self.ahead(at))
                        (self.hold_ends(lot))
                    }
                }
            }
        }
    }

    pub(super) fn lots_worst_first(&self) -> Vec<(usize, &LotFinding)> {
        let mut lots: Vec<(usize, &LotFinding)> = self.findings.lots.iter().enumerate().collect();
        lots.sort_by_key(|(_, lot)| std::cmp::Reverse(lot.disposition));
        lots
    }

    /// What measuring longer would settle, and what other decision rules would say.
    fn ahead(&self, lot: usize) -> Markup {
        let found = outlook::outlook(self.inspection, self.findings, &self.reviewers, lot);
        html! {
            @if found.plan.open > 0 { p { (self.longer(&found.plan)) } }
            @if found.rules.iter().any(|said| said.bands.iter().sum::<u64>() > 0) { (self.rules_beside(&found.rules)) }
        }
    }

    fn longer(&self, plan: &Plan) -> String {
        let Effort { readings, longest, total, settles } = plan.surely;
        let id = if settles == 0 { "longer-plan-none" } else { "longer-plan" };
        self.with(
            id,
            &[
                ("readings", &readings.to_string()),
                ("longest", &longest.to_string()),
                ("total", &total.to_string()),
                ("settles", &settles.to_string()),
                ("of", &plan.open.to_string()),
            ],
        )
    }

    /// Decision rules side by side: a rule a row, a substance a column, and how many readings get each statement.
    fn rules_beside(&self, said: &[RulesSaid; 3]) -> Markup {
        let counted = |counts: &[u64], words: &[String]| {
            let some = counts.iter().zip(words).filter(|(count, _)| **count > 0);
            let list: Vec<String> = some.map(|(count, word)| format!("{count}\u{a0}{word}")).collect();
            if list.is_empty() { "–".to_owned() } else { list.join(" · ") }
        };
        let bands = [Outcome::Below, Outcome::Undecided, Outcome::Over];
        let bands = bands.map(|outcome| phrases::outcome_short(self.words, outcome));
        let statements: Vec<String> = Statement::ALL
            .iter()
            .map(|statement| self.say(&format!("statement-{}", statement.code())).replace(' ', "\u{a0}"))
            .collect();
        let k = conformity::GUARD.to_string();
        html! {
            table class="tight whole" {
                caption {
                    (self.say("report-rules_beside")) (self.words.gap())
                    @if !self.settings.uncertainty_is_full() { (self.say("report-rules_repeatability")) }
                }
                thead { tr {
                    th { (self.say("report-decision_rule")) }
                    @for substance in outlook::ON_THE_ELEMENT { th { (substance.symbol()) } }
                } }
                tbody {
                    tr {
                        td { (self.say("report-rule_bands")) }
                        @for one in said { td { (counted(&one.bands, &bands)) } }
                    }
                    @for (at, rule) in DecisionRule::ALL.iter().enumerate() {
                        tr {
                            td { (self.with(&format!("rule-{}", rule.code()), &[("k", &k)])) }
                            @for one in said {
                                td { (one.said.get(at).map(|counts| counted(counts, &statements)).unwrap_or_default()) }
                            }
                        }
                    }
                    @if said.iter().any(|one| one.not_applicable > 0) {
                        tr {
                            td { (self.say("report-rule_not_applicable")) }
                            @for one in said { td { (one.not_applicable) } }
                        }
                    }
                }
            }
        }
    }
}
