//! Were the readings trustworthy: the check readings one by one, and how the readings of each lot lie between them.

use maud::{Markup, html};

use super::Report;
use crate::acts::{Bracket, CheckRule};
use crate::reading::{Identity, Source};
use crate::report::phrases;
use crate::trust::{CheckElement, CheckFinding, Scores, Trust};

/// Most check readings that are printed.
const CHECKS: usize = 200;

impl Report<'_> {
    pub(super) fn trust(&self) -> Markup {
        let checks = &self.findings.trust.checks;
        let bracket = match self.settings.bracket() {
            Bracket::BeforeAndAfter => "before_and_after",
            Bracket::Before => "before",
            Bracket::PerShift => "per_shift",
        };
        let rule = if self.settings.check_rule() == CheckRule::En { "en" } else { "zeta" };
        let text = self.with("report-trust_text", &[("bracket", bracket), ("rule", rule)]);
        let heads = ["element", "measured", "certified", "bias", "recovery", "zeta", "en", "verdict"];
        html! {
            section data-element="trust" {
                h2 { (self.say("report-trust")) }
                p { (text) }
                @if checks.is_empty() { p { (self.say("report-trust_none")) } } @else {
                    (self.how_ordered())
                    (self.trust_of_lots())
                    (self.capped("report-trust_capped", CHECKS, checks.len()))
                    table class="tight" {
                        thead { tr { @for head in heads { th { (self.say(&format!("report-trust_{head}"))) } } } }
                        @for check in checks.iter().take(CHECKS) { (self.check(check)) }
                    }
                }
            }
        }
    }

    /// Which files go by their rows, and that nothing tells instruments apart.
    fn how_ordered(&self) -> Markup {
        let trust = &self.findings.trust;
        let by_rows: Vec<&str> = trust
            .by_rows
            .iter()
            .filter_map(|at| Some(self.inspection.sources.get(*at)?.name.as_str()))
            .collect();
        let one_stream = trust.checks.iter().any(|check| {
            self.place(check.reading as usize).is_some_and(|(source, _, row)| {
                [Identity::Instrument, Identity::Mode]
                    .iter()
                    .all(|identity| source.readings.identity(*identity, row).is_none())
            })
        });
        html! {
            @if !by_rows.is_empty() { p { (self.with("report-trust_by_rows", &[("names", &self.words.list(&by_rows))])) } }
            @if one_stream { p { (self.say("report-trust_one_stream")) } }
        }
    }

    /// How many readings of each lot have each trust.
    fn trust_of_lots(&self) -> Markup {
        let mut counts = vec![[0_u64; Trust::ALL.len()]; self.findings.lots.len()];
        for (reading, lot) in self.findings.lots_of_readings().into_iter().enumerate() {
            // What a person set aside counts for no lot.
            if self.findings.set_aside.contains_key(&(reading as u32)) {
                continue;
            }
            let of_lot = counts.get_mut(lot as usize);
            if let Some(count) =
                of_lot.and_then(|counts| counts.get_mut(self.findings.trust.worst(reading) as usize))
            {
                *count += 1;
            }
        }
        html! {
            table {
                thead { tr {
                    th { (self.say("report-lot")) }
                    @for trust in Trust::ALL { th class="n" { (self.say(&format!("trust-{}", trust.code()))) } }
                } }
                tbody { @for (lot, counts) in self.findings.lots.iter().zip(&counts) { tr {
                    td { (self.lot_name(lot)) }
                    @for count in counts { td class="n" { (count) } }
                } } }
            }
        }
    }

    fn check(&self, check: &CheckFinding) -> Markup {
        let Some((source, _, row)) = self.place(check.reading as usize) else { return html! {} };
        let said = |identity| source.readings.identity(identity, row);
        let time = said(Identity::Time).map(|time| self.words.moment(time));
        let facts =
            [time.as_deref(), said(Identity::Instrument), said(Identity::Mode), said(Identity::Seconds)];
        html! {
            tbody {
                tr class="who" { td colspan="8" {
                    b { (self.reading_name(source, row)) } " · " (self.say(&format!("check-kind-{}", check.kind.code())))
                    " · " (self.class(check.class))
                    @for (at, fact) in facts.iter().enumerate() { @if let Some(fact) = fact {
                        " · " (fact) @if at == 3 { " s" }
                    } }
                } }
                @for one in &check.elements { (self.check_element(source, row, one)) }
            }
        }
    }

    fn check_element(&self, source: &Source, row: usize, one: &CheckElement) -> Markup {
        let written = phrases::written_of(source, one.element, row);
        let certified = one.certificate.and_then(|at| self.findings.trust.certificates.get(at));
        let two = |of: fn(&Scores) -> Option<f64>| {
            one.scores
                .as_ref()
                .and_then(of)
                .map(|score| self.words.number(&format!("{score:.2}")))
                .unwrap_or_default()
        };
        let bias =
            one.scores.map(|scores| self.words.number(&phrases::rounded(scores.bias))).unwrap_or_default();
        html! {
            tr {
                td { (one.element.symbol()) }
                td { (phrases::value(self.words, &one.cell, one.sigma, &written)) }
                td { @if let Some(one) = certified {
                    (self.words.number(&format!("{} ± {} (k = {})", one.value, one.expanded, one.k))) (self.words.comma()) (one.id)
                } }
                td class="n" { (bias) }
                td class="n" { (two(|scores| scores.recovery_percent)) }
                td class="n" { (two(|scores| Some(scores.zeta))) }
                td class="n" { (two(|scores| Some(scores.en))) }
                td { (self.say(&format!("check-verdict-{}", one.verdict.code()))) }
            }
        }
    }
}
