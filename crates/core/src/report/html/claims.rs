//! Exemptions: what is claimed and what became of it, what might be claimed, days of expiry, and hexavalent chromium by
//! area.

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::claims::{Candidate, JudgedClaim};
use crate::exempt::{Bound, Exemption, Number};
use crate::inspection::MaterialFinding;
use crate::report::{books, exemptions};

/// Most claims, and candidates, that are printed.
const ROWS: usize = 300;
/// Most materials of one candidate that are named.
const NAMED: usize = 8;

impl Report<'_> {
    pub(super) fn exemptions(&self) -> Markup {
        let materials = &self.findings.materials;
        let claims: Vec<_> = materials
            .iter()
            .flat_map(|material| material.claims.claims.iter().map(move |claim| (material, claim)))
            .collect();
        let mut candidates: Vec<(&Candidate, Vec<&MaterialFinding>)> = Vec::new();
        for material in materials {
            for one in &material.claims.candidates {
                match candidates.iter_mut().find(|(other, _)| *other == one) {
                    Some((_, of)) => of.push(material),
                    None => candidates.push((one, vec![material])),
                }
            }
        }
        candidates.sort_by_key(|(one, _)| one.row);
        let nothing = claims.is_empty() && candidates.is_empty();
        html! {
            section data-element="2019/1020-exemptions" {
                h2 { (self.say("report-exemptions")) }
                @if nothing { p { (self.say("report-exemptions_none")) } } @else { p { (self.guard()) } }
                @if !claims.is_empty() {
                    h3 { (self.say("report-claims")) }
                    (self.capped("report-claims_capped", ROWS, claims.len()))
                    @for (material, claim) in claims.iter().take(ROWS) { (self.claim(material, claim)) }
                }
                @if !candidates.is_empty() {
                    h3 { (self.say("report-candidates")) }
                    p class="sub keep" { (self.say("report-candidates_text")) }
                    (self.capped("report-claims_capped", ROWS, candidates.len()))
                    table class="tight candidates" {
                        thead { tr {
                            th { (self.say("report-entry")) } th { (self.say("report-material")) }
                            th { (self.say("report-number_said")) } th { (self.say("report-expires")) }
                            th { (self.say("report-questions")) }
                        } }
                        tbody { @for (one, of) in candidates.iter().take(ROWS) { (self.candidate(one, of)) } }
                    }
                }
                h3 { (self.say("report-expiries")) }
                @if self.findings.expiries.is_empty() { p { (self.say("expiries-none")) } } @else {
                    ul {
                        @for one in &self.findings.expiries {
                            li { (exemptions::expiry(self.words, self.inspection, self.findings, one)) }
                        }
                    }
                }
                (self.by_area())
            }
        }
    }

    /// How exempt limits are decided.
    fn guard(&self) -> String {
        let k = self.inspection.books.screening().map(|(_, rule)| rule.sigma_factor.to_string());
        self.with("claims-guard", &[("k", &k.unwrap_or_default())])
    }

    fn number(&self, row: Option<usize>, number: Number) -> String {
        exemptions::number(self.words, self.inspection.books.exemptions(), row, number)
    }

    fn bound(&self, row: &Exemption) -> String {
        let limit = row.bound.limit().map(|limit| limit.to_string()).unwrap_or_default();
        let id = match row.bound {
            Bound::AtMost(_) => "direction-at_most",
            Bound::AtLeast(_) => "direction-at_least",
            Bound::NoNumber => "direction-none",
        };
        self.with(id, &[("limit", &limit)])
    }

    /// The day an entry expires; where the book holds none, that it does not.
    fn expires(&self, row: &Exemption) -> String {
        row.expires.map_or_else(|| self.say("report-no_day"), |day| self.words.day(day))
    }

    /// Where the renewal stands, and who said so.
    fn renewal(&self, row: &Exemption) -> String {
        let state = self.say(&format!("renewal-{}", exemptions::renewal(&self.settings, row)));
        let said = self.settings.renewals().into_iter().find(|one| one.entry == row.entry);
        match said.filter(|_| !row.not_filed) {
            Some(one) => {
                let date = one.date.map_or_else(|| self.say("not-stated"), |day| day.to_string());
                let source = if one.source.is_empty() { self.say("not-stated") } else { one.source };
                let said = self.with(
                    "report-renewal_said",
                    &[("source", &source), ("state", one.state.code()), ("date", &date)],
                );
                self.words.series(&[state, said])
            }
            None => state,
        }
    }

    fn given<'t>(&self, text: &'t str) -> std::borrow::Cow<'t, str> {
        if text.is_empty() { self.say("not-stated").into() } else { text.into() }
    }

    fn claim(&self, material: &MaterialFinding, one: &JudgedClaim) -> Markup {
        let row = one.row.and_then(|row| self.inspection.books.exemptions().get(row));
        let (claim, verdict) = (&one.claim, one.verdict.as_ref());
        let why = exemptions::why(self.words, self.inspection.books.exemptions(), one);
        html! {
            div class="case" {
                p {
                    b { (claim.entry) (self.words.comma()) (claim.substance.symbol()) (self.words.colon()) (self.say(&format!("claim-{}", exemptions::state(verdict)))) }
                    (self.words.stop()) (self.material_name(material))
                }
                dl class="key" {
                    @if let Some(row) = row {
                        dt { (self.say("report-scope")) } dd { (self.of_book(&row.scope)) }
                        dt { (self.say("report-text")) } dd {
                            (self.of_book(&text_of(row)))
                            (self.words.stop()) (books::confidence(self.words, &row.confidence))
                            @if let Some(from) = row.from { (self.words.gap()) (self.with("report-text_from", &[("day", &from.to_string())])) }
                        }
                        dt { (self.say("report-limit")) } dd { (self.bound(row)) }
                        dt { (self.say("report-expires")) } dd { (self.expires(row)) }
                        dt { (self.say("report-renewal")) } dd { (self.renewal(row)) }
                        @if !row.note.is_empty() { dt { (self.say("report-note")) } dd { (self.of_book(&row.note)) } }
                    }
                    dt { (self.say("report-number_said")) } dd { (self.number(one.row, one.number)) }
                    @if let Some(group) = claim.group {
                        dt { (self.say("report-group")) } dd { (self.say(&format!("group-{}", group.code()))) }
                    }
                    dt { (self.say("report-category")) } dd { (self.category_words()) }
                    dt { (self.say("report-placing")) } dd { (self.words.moment(&self.or_not_stated(self.set(ActKind::PlacingDate)))) }
                    dt { (self.say("report-evidence")) } dd { (self.given(&claim.evidence)) }
                    dt { (self.say("report-initials")) } dd { (self.given(&claim.by)) " / " (self.given(&claim.second)) }
                }
                @if !why.is_empty() {
                    ul { @for (_, text) in &why { li { (text) } } }
                }
            }
        }
    }

    fn candidate(&self, one: &Candidate, of: &[&MaterialFinding]) -> Markup {
        let Some(row) = self.inspection.books.exemptions().get(one.row) else { return html! {} };
        let more = of.len().saturating_sub(NAMED);
        html! {
            tr {
                td class="id" {
                    b { (row.entry) (self.words.comma()) (row.substance.symbol()) } br;
                    (self.of_book(&row.scope)) br; (self.bound(row)) (self.words.stop()) (books::confidence(self.words, &row.confidence))
                }
                td {
                    @for (at, material) in of.iter().take(NAMED).enumerate() {
                        @if at > 0 { br; }
                        (self.material_name(material))
                    }
                    @if more > 0 { br; (self.with("report-also_more", &[("count", &more.to_string())])) }
                }
                td { (self.number(Some(one.row), one.number)) }
                td { (self.expires(row)) (self.words.semicolon()) (self.renewal(row)) }
                td {
                    @for (at, question) in one.questions.iter().enumerate() {
                        @if at > 0 { br; }
                        (self.say(&format!("question-{}", question.code())))
                    }
                }
            }
        }
    }

    /// What laboratories found of hexavalent chromium by area.
    fn by_area(&self) -> Markup {
        let found: Vec<_> = self
            .findings
            .materials
            .iter()
            .flat_map(|material| material.claims.cr6.iter().map(move |one| (material, one)))
            .collect();
        html! {
            @if !found.is_empty() {
                h3 { (self.say("report-cr6")) }
                table {
                    thead { tr {
                        th { (self.say("report-material_head")) } th class="n" { (self.say("report-cr6_area")) }
                        th { (self.say("report-outcome")) } th { (self.say("report-laboratory")) }
                    } }
                    tbody {
                        @for (material, one) in found {
                            tr {
                                td class="id" { (self.material_name(material)) }
                                td class="n" { @if one.said.below { "< " } (one.said.area.to_ug_per_cm2()) }
                                td {
                                    @match one.result {
                                        Some(result) => (self.say(&format!("cr6-{}", result.code()))),
                                        None => (self.say("report-cr6_not_judged")),
                                    }
                                }
                                td { (self.given(&one.said.laboratory)) (self.words.comma()) (self.given(&one.said.report)) }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// Where the text of an entry stands, as the book has it.
fn text_of(row: &Exemption) -> String {
    let mut text = row.source.clone();
    if !row.clause.is_empty() {
        text.push_str(", ");
        text.push_str(&row.clause);
    }
    if !row.act.is_empty() && row.act != row.source {
        text.push_str("; ");
        text.push_str(&row.act);
    }
    text
}
