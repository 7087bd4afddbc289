//! The sampling of a lot: the plan, which units to take, what was measured, and what that proves and does not.

use std::collections::BTreeSet;

use maud::{Markup, PreEscaped, html};

use super::Report;
use crate::inspection::LotFinding;
use crate::lot_sampling::LotSampling;
use crate::report::sampling;
use crate::sampling::PlanRule;

/// Most unit numbers that are printed for one lot.
const UNITS_PRINTED: usize = 1000;

/// Plans whose curve was drawn already: lot size, units, the table's acceptance number.
pub(super) type Drawn = BTreeSet<(u64, u64, Option<u32>)>;

impl Report<'_> {
    /// The sampling a lot's disposition rests on, where anything is said of it. A curve is drawn once for all lots that
    /// share it.
    pub(super) fn sampling(&self, lot: &LotFinding, drawn: &mut Drawn) -> Markup {
        let Some(sampling) = &lot.sampling else { return html! {} };
        let said = sampling.said.as_ref();
        let taken = sampling::taken(sampling);
        html! {
            @if let Some((said, plan)) = said.zip(sampling.plan) {
                p {
                    b { (self.say("sampling-title")) } (self.words.gap())
                    (sampling::plan_words(self.words, &said.rule, &plan)) (self.words.gap())
                    @if let Some(text) = sampling::table_words(self.words, &plan) { (text) }
                }
            }
            @if let Some((size, take)) = taken {
                p { (self.units_measured(sampling, size, take)) }
                (self.units_to_take(sampling, size))
                @if sampling.plan.is_some() {
                    p {
                        (sampling::risk_words(self.words, size, take)) (self.words.gap())
                        @if let Some(text) = sampling::at_most_words(self.words, sampling) { (text) }
                    }
                    (self.curve(sampling, size, take, drawn))
                    p class="sub" {
                        @if said.is_some_and(|said| matches!(said.rule, PlanRule::Single { .. })) {
                            (self.say("sampling-isolated")) (self.words.gap())
                        }
                        (self.say("sampling-proves"))
                    }
                }
            }
        }
    }

    fn units_measured(&self, sampling: &LotSampling, size: u64, take: u64) -> String {
        let numbers = [
            ("size", size),
            ("take", take),
            ("measured", sampling.measured),
            ("units", sampling.units),
            ("conforming", sampling.conforming),
            ("undecided", sampling.undecided),
            ("over", sampling.over),
        ];
        let numbers = numbers.map(|(name, number)| (name, number.to_string()));
        let arguments = numbers.each_ref().map(|(name, number)| (*name, number.as_str()));
        self.with("sampling-units", &arguments)
    }

    fn units_to_take(&self, sampling: &LotSampling, size: u64) -> Markup {
        let units = sampling::units_list(sampling);
        let seed = sampling.said.as_ref().and_then(|said| said.seed).filter(|_| !units.is_empty());
        let shown = units.len().min(UNITS_PRINTED);
        html! {
            @if let Some(seed) = seed {
                p {
                    (sampling::list_words(self.words, seed, size, units.len())) (self.words.gap())
                    (sampling::numbers(units.get(..shown).unwrap_or(&[])))
                }
                (self.capped("sampling-list_capped", shown, units.len()))
            }
        }
    }

    fn curve(&self, sampling: &LotSampling, size: u64, take: u64, drawn: &mut Drawn) -> Markup {
        if !drawn.insert((size, take, sampling::other_ac(sampling))) {
            return html! {};
        }
        let (title, svg) = sampling::curve(self.words, sampling, size, take);
        html! { figure { figcaption class="sub" { (title) } (PreEscaped(svg)) } }
    }
}
