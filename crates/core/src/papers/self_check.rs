//! The self-check sheet of a supplier: what the customer would accept, hold or not accept by the same readings, and what to do
//! about it before shipping. It decides nothing: dispositions and reasons are those of the findings.

use std::cmp::Reverse;

use maud::{Markup, html};

use super::Papers;
use super::cases::{self, Case, What};
use crate::acts::ActKind;
use crate::claims::{self, JudgedClaim};
use crate::inspection::{LotFinding, MaterialFinding};
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::report::{exemptions, phrases, sampling};
use crate::rules::comes_with_the_program;
use crate::stated;
use crate::trust::Trust;

/// Most lots of one group that are printed.
const LOTS: usize = 300;
/// Most rows of facts of one lot, and most claims and files.
const ROWS: usize = 300;

/// What a reason asks for, in the order in which it is of use: what only has to be said or looked up comes before what has to be
/// measured, checks of the instrument come before measuring with it, and a laboratory after both. (Our own choice.)
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Step {
    Say,
    Check,
    Measure,
    Laboratory,
    Replace,
}

const fn step(code: LotReasonCode) -> Step {
    use LotReasonCode as Code;
    match code {
        Code::NoUncertainty
        | Code::ClaimExpired
        | Code::ClaimNotCovered
        | Code::ClaimCovers
        | Code::ClaimOpen
        | Code::Cr6Negative
        | Code::Cr6NoReport
        | Code::Cr6OtherClass
        | Code::OverInSomeClasses
        | Code::LabWithin
        | Code::LabNoUncertainty
        | Code::LabNotTraceable
        | Code::LabNotPlaced
        | Code::SetAside
        | Code::FileNotRead
        | Code::RowsRefused
        | Code::ClassContested
        | Code::ClassUnknown
        | Code::LayerAmongClasses
        | Code::ThicknessNotStated
        | Code::BillOfMaterialsNone
        | Code::MaterialNotListed
        | Code::SamplingNone
        | Code::LotSizeTooSmall
        | Code::LotSizeMissing
        | Code::UnitsNotStated
        | Code::MultipleNotStated
        | Code::MarkNotTaken
        | Code::HalogenBookNotLoaded
        | Code::BookNotLoaded
        | Code::BookDiffers
        | Code::BookNotInUse
        | Code::Lifted
        | Code::LiftNotAllowed
        | Code::LiftNotCountersigned
        | Code::LiftNotNeeded
        | Code::HoldOverdue
        | Code::QuarantineExceedsLot => Step::Say,
        Code::CalibrationDoubtful
        | Code::TrustFailed
        | Code::TrustNotBracketed
        | Code::TrustNone
        | Code::TrustNotCertified
        | Code::TrustNotJudged
        | Code::CheckTimesDiffer
        | Code::ChecksFarApart => Step::Check,
        Code::NotMeasured
        | Code::DetectionTooHigh
        | Code::NotCapable
        | Code::Undecided
        | Code::HalogenOpen
        | Code::LimitOpen
        | Code::SetAsideOpen
        | Code::MaterialNotMeasured
        | Code::MaterialChanged
        | Code::ChangeNotCompared
        | Code::SamplingTooFew => Step::Measure,
        Code::OverLimit
        | Code::HalogenOverLimit
        | Code::LimitOver
        | Code::LabOpen
        | Code::LabGroupMissing
        | Code::Cr6Inconclusive
        | Code::SetAsideOver
        | Code::OverlapUnresolved
        | Code::OverMayBeOverlap => Step::Laboratory,
        Code::LabOver | Code::ClaimExceeded | Code::Cr6Present => Step::Replace,
    }
}

/// What a hold that the supplier's own people lifted does: its customer lifted nothing.
fn is_kept(reason: &LotReason) -> bool {
    reason.effect != Disposition::Accept || reason.code == LotReasonCode::Lifted
}

/// What the customer would do with a lot.
fn customers(lot: &LotFinding) -> Disposition {
    if lot.reasons.iter().any(is_kept) { lot.disposition.max(Disposition::Hold) } else { lot.disposition }
}

/// The reasons that keep a lot: those that refuse it before those that hold it, then in the order in which something is done about
/// them; within a step as the findings have them, which is worst first.
fn in_order_of_use(reasons: &[LotReason]) -> Vec<&LotReason> {
    let mut keeping: Vec<&LotReason> = reasons.iter().filter(|reason| is_kept(reason)).collect();
    keeping.sort_by_key(|reason| (Reverse(reason.effect), step(reason.code)));
    keeping
}

impl Papers<'_> {
    pub(super) fn self_check_page(&self) -> Markup {
        let customer = self.set(ActKind::Customer).map(|said| stated::field(said, "name"));
        let body = html! {
            (self.belongs_to(&html! {
                dt { (self.say("report-customer")) } dd { (Self::or_line(customer.as_deref())) }
                dt { (self.say("report-placing")) } dd { (self.day_or_line(self.set(ActKind::PlacingDate))) }
            }))
            p { b { (self.with("paper-self_check-full", &[("number", &self.number)])) } }
            (self.held_against())
            // The worst first, as everywhere.
            @for disposition in Disposition::ALL.into_iter().rev() { (self.would(disposition)) }
            (self.claimed())
            section {
                h2 { (self.say("report-trust")) }
                p { (self.trust_in_a_line()) }
            }
            section class="whole" {
                h2 { (self.say("report-not_assessed")) }
                ul {
                    @for code in phrases::NOT_ASSESSED { li { (self.say(&format!("not-assessed-{code}"))) } }
                    @if self.settings.halogen_book(&self.inspection.books).is_none() { li { (self.say("report-halogens_shown")) } }
                }
            }
            (self.files())
            section class="whole" {
                h2 { (self.say("report-signatures")) }
                p { (self.say("paper-self_check-signed")) }
                div class="signatures" {
                    div { (self.say("paper-self_check-checked")) @if let Some(name) = self.set(ActKind::Inspector) { br; b { (self.name(Some(name))) } } }
                    div { (self.say("paper-self_check-released")) }
                    div { (self.say("paper-answer_date")) }
                }
            }
        };
        self.page("self_check", &body)
    }

    fn held_against(&self) -> Markup {
        let books = &self.inspection.books;
        // Halogens that no book was named for were held against none.
        let counted = self.settings.halogen_book(books).is_some();
        let mut used = books.used(&self.settings.books);
        used.retain(|book| book.halogens.is_none() || book.screening.is_some() || counted);
        let given = |book: &crate::rules::RuleBook| !comes_with_the_program(&book.id, &book.text);
        let any = used.iter().any(|book| given(book));
        html! {
            section {
                h2 { (self.say("paper-self_check-books")) }
                p { b { (self.say(if any { "paper-self_check-books_given" } else { "paper-self_check-books_built_in" })) } }
                table {
                    thead { tr {
                        th { (self.say("report-book")) } th { (self.say("report-edition")) }
                        th { (self.say("paper-self_check-whose")) } th { (self.say("report-digest")) }
                    } }
                    tbody {
                        @for book in used {
                            tr {
                                td { (self.name(Some(&book.id))) br; (self.name(Some(&book.title))) }
                                td { (self.name(Some(&book.edition))) }
                                td {
                                    @if given(book) { b { (self.say("paper-self_check-given")) } }
                                    @else { (self.say("paper-self_check-built_in")) }
                                    @if !book.jurisdiction.is_empty() { br; (self.name(Some(&book.jurisdiction))) }
                                }
                                td class="mono" { (book.sha256) }
                            }
                        }
                    }
                }
            }
        }
    }

    fn capped(&self, shown: usize, total: usize) -> Markup {
        html! {
            @if total > shown {
                p { (self.with("paper-capped", &[("shown", &shown.to_string()), ("total", &total.to_string())])) }
            }
        }
    }

    /// The lots that the customer would treat alike.
    fn would(&self, disposition: Disposition) -> Markup {
        let lots: Vec<(usize, &LotFinding)> =
            self.findings.lots.iter().enumerate().filter(|(_, lot)| customers(lot) == disposition).collect();
        let code = disposition.code();
        html! {
            @if !lots.is_empty() {
                section data-group=(code) {
                    h2 { (self.with(&format!("paper-self_check-group-{code}"), &[("count", &lots.len().to_string())])) }
                    p class="sub keep" { (self.say(&format!("paper-self_check-group-{code}-is"))) }
                    (self.capped(LOTS, lots.len()))
                    @for (at, lot) in lots.iter().take(LOTS) { (self.checked(*at, lot)) }
                }
            }
        }
    }

    fn checked(&self, at: usize, lot: &LotFinding) -> Markup {
        let keeping = in_order_of_use(&lot.reasons);
        let noted: Vec<&LotReason> = lot.reasons.iter().filter(|reason| !is_kept(reason)).collect();
        let would = customers(lot).code();
        html! {
            div class="lot" {
                h3 {
                    (self.called_lot(lot)) " "
                    span class={ "d d-" (would) } { (self.say(&format!("paper-self_check-would-{would}"))) }
                }
                p class="sub" {
                    (self.say("report-supplier")) (self.words.colon()) (self.name(lot.supplier.as_deref())) (self.words.stop())
                    (self.with("paper-lot_counts", &[("readings", &lot.readings.to_string()), ("materials", &lot.materials.to_string())]))
                }
                @if !keeping.is_empty() {
                    ol {
                        @for reason in keeping {
                            li { (phrases::lot_reason(self.words, reason)) br; i { (phrases::lot_remedy(self.words, reason)) } }
                        }
                    }
                }
                (self.facts(at))
                @if !noted.is_empty() {
                    p class="keep" { (self.say("paper-self_check-noted")) }
                    ul { @for reason in noted { li { (phrases::lot_reason(self.words, reason)) } } }
                }
                p { (self.sampled(lot)) }
            }
        }
    }

    /// The plan of a lot and what it proves, or that nothing is said of either.
    fn sampled(&self, lot: &LotFinding) -> Markup {
        let lines = sampling::told(self.words, lot).map(|(lines, _, _)| lines).unwrap_or_default();
        let sizes = lot.sampling.as_ref().and_then(sampling::taken);
        html! {
            b { (self.say("paper-self_check-sampling")) } (self.words.gap())
            @if let Some((size, take)) = sizes {
                (self.with("paper-self_check-units", &[("size", &size.to_string()), ("take", &take.to_string())])) (self.words.gap())
            } @else { (self.say("paper-self_check-sampling_none")) (self.words.gap()) }
            (self.words.sentences(&lines))
        }
    }

    /// The worst of what was measured and is not settled, with what would settle it.
    fn facts(&self, lot: usize) -> Markup {
        let of_lot = self
            .findings
            .materials
            .iter()
            .filter(|one| one.lot == lot && one.disposition != Disposition::Accept);
        let mut facts: Vec<(&MaterialFinding, Case)> = of_lot
            .flat_map(|material| self.reader.cases(material).into_iter().map(move |case| (material, case)))
            .collect();
        facts.sort_by_key(|(_, case)| Reverse(case.outcome));
        html! {
            @if !facts.is_empty() {
                (self.capped(ROWS, facts.len()))
                table {
                    thead { tr {
                        th { (self.say("report-part")) } th { (self.say("report-material")) }
                        th { (self.say("paper-substance")) } th { (self.say("paper-worst")) }
                        th { (self.say("paper-self_check-settles")) }
                    } }
                    tbody {
                        @for (material, case) in facts.iter().take(ROWS) {
                            tr {
                                td { (self.name(material.part.as_deref())) }
                                td { (self.material_name(material)) }
                                td { (cases::named(self.words, &case.what)) }
                                td {
                                    (phrases::outcome(self.words, case.outcome)) (self.words.colon())
                                    (self.reader.value(self.words, &case.what, case.reading))
                                    br; (self.reader.against(self.words, &case.what, case.reading))
                                    br; (self.reading_named(case.reading))
                                }
                                td {
                                    @for (at, text) in self.settles(case).iter().enumerate() {
                                        @if at > 0 { br; }
                                        (text)
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    /// What would settle the worst reading of a case, the cheapest first.
    fn settles(&self, case: &Case) -> Vec<String> {
        let place = self.place(case.reading);
        let Some(((_, reviewer, row), judged)) = place.zip(self.reader.judged(&case.what, case.reading))
        else {
            return Vec::new();
        };
        let steps = match &case.what {
            What::Substance(of) => phrases::next_of_substance(self.inspection, reviewer, *of, &judged, row),
            What::Halogen(of) => phrases::next_of_halogen(self.inspection, reviewer, *of, &judged, row),
            What::Limit(_) => {
                let route = self.reader.route(&case.what, case.reading);
                return route
                    .map(|route| format!("{}, {}", route.method, route.technique))
                    .into_iter()
                    .collect();
            }
        };
        let about = cases::about(self.words, &case.what);
        steps.iter().map(|step| phrases::next(self.words, step, &about)).collect()
    }

    fn claimed(&self) -> Markup {
        let claims: Vec<(&MaterialFinding, &JudgedClaim)> = self
            .findings
            .materials
            .iter()
            .flat_map(|material| material.claims.claims.iter().map(move |claim| (material, claim)))
            .collect();
        html! {
            section {
                h2 { (self.say("report-claims")) }
                @if claims.is_empty() { p { (self.say("paper-self_check-claims_none")) } } @else {
                    (self.capped(ROWS, claims.len()))
                    table {
                        thead { tr {
                            th { (self.say("report-entry")) } th { (self.say("report-lot")) } th { (self.say("report-material")) }
                            th { (self.say("paper-self_check-claim")) } th { (self.say("report-expires")) }
                            th { (self.say("paper-self_check-in_force")) }
                        } }
                        tbody { @for (material, claim) in claims.iter().take(ROWS) { (self.claim(material, claim)) } }
                    }
                }
            }
        }
    }

    fn claim(&self, material: &MaterialFinding, one: &JudgedClaim) -> Markup {
        let row = one.row.and_then(|row| self.inspection.books.exemptions().get(row));
        let verdict = one.verdict.as_ref();
        let said = |text: &str| self.name(Some(text).filter(|text| !text.is_empty()));
        html! {
            tr {
                td { (self.name(Some(&one.claim.entry))) (self.words.comma()) (one.claim.substance.symbol()) }
                td { @if let Some(lot) = self.findings.lots.get(material.lot) { (self.lot_name(lot)) } }
                td { (self.material_name(material)) }
                td {
                    (self.say(&format!("claim-{}", exemptions::state(verdict))))
                    br; (self.say("report-evidence")) (self.words.colon()) (said(&one.claim.evidence))
                    br; (self.say("report-initials")) (self.words.colon()) (said(&one.claim.by)) " / " (said(&one.claim.second))
                    @for (_, text) in exemptions::why(self.words, self.inspection.books.exemptions(), one) { br; (text) }
                }
                td {
                    @match row.and_then(|row| row.expires) {
                        Some(day) => (self.words.day(day)),
                        None => (self.say("report-no_day")),
                    }
                }
                td { (row.map_or_else(|| self.say("refusal-entry_not_in_book"), |row| self.in_force(row))) }
            }
        }
    }

    /// Whether an entry is in force on the day of placing on the market, as claims are judged.
    fn in_force(&self, row: &crate::exempt::Exemption) -> String {
        match (claims::in_force(self.settings, row), self.settings.placed()) {
            (Err(_), _) => self.say("claim-expired"),
            (Ok(Some(question)), _) => self.say(&format!("question-{}", question.code())),
            (Ok(None), Some(day)) => {
                self.with("paper-self_check-in_force_on", &[("day", &self.words.day(day))])
            }
            (Ok(None), None) => self.say("question-placing_date_not_stated"),
        }
    }

    /// How many readings lie how beside checks.
    fn trust_in_a_line(&self) -> String {
        let mut counts = [0_u64; Trust::ALL.len()];
        for (reading, verdicts) in self.findings.verdicts.iter().enumerate() {
            if verdicts.check || self.findings.set_aside.contains_key(&(reading as u32)) {
                continue;
            }
            if let Some(count) = counts.get_mut(self.findings.trust.worst(reading) as usize) {
                *count += 1;
            }
        }
        let checks = self.findings.trust.checks.len().to_string();
        let said: Vec<(&str, String)> =
            Trust::ALL.iter().zip(counts).map(|(trust, count)| (trust.code(), count.to_string())).collect();
        let mut arguments: Vec<(&str, &str)> =
            said.iter().map(|(name, count)| (*name, count.as_str())).collect();
        arguments.push(("checks", &checks));
        self.with("paper-self_check-trust", &arguments)
    }

    fn files(&self) -> Markup {
        let sources = &self.inspection.sources;
        html! {
            section {
                h2 { (self.say("report-sources")) }
                (self.capped(ROWS, sources.len()))
                table {
                    thead { tr { th { (self.say("report-file")) } th { (self.say("report-digest")) } } }
                    tbody {
                        @for source in sources.iter().take(ROWS) {
                            tr {
                                td { (self.name(Some(&source.name))) }
                                td class="mono" {
                                    (source.sha256)
                                    @if let Some(packed) = &source.container {
                                        " " (self.with("report-packed_in", &[("name", &packed.name)])) " " (packed.sha256)
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::lot::LotReasonCode as Code;

    #[test]
    fn what_refuses_comes_first_then_what_only_has_to_be_said_then_checks_measuring_and_a_laboratory() {
        let reason = |code, effect| LotReason { code, effect, about: String::new(), count: 1, of: 1 };
        let reasons = [
            reason(LotReasonCode::OverLimit, Disposition::NotAccept),
            reason(LotReasonCode::LabOpen, Disposition::Hold),
            reason(LotReasonCode::Undecided, Disposition::Hold),
            reason(LotReasonCode::TrustNone, Disposition::Hold),
            reason(LotReasonCode::ClassUnknown, Disposition::Hold),
            reason(LotReasonCode::SamplingNone, Disposition::Accept),
        ];
        let order: Vec<LotReasonCode> = in_order_of_use(&reasons).iter().map(|reason| reason.code).collect();
        assert_eq!(
            order,
            [Code::OverLimit, Code::ClassUnknown, Code::TrustNone, Code::Undecided, Code::LabOpen]
        );
    }

    #[test]
    fn a_hold_that_the_supplier_lifted_is_still_the_customers() {
        let reason =
            |code| LotReason { code, effect: Disposition::Accept, about: String::new(), count: 1, of: 1 };
        let lifted = [reason(Code::CheckTimesDiffer), reason(Code::Lifted)];
        let kept: Vec<Code> = in_order_of_use(&lifted).iter().map(|reason| reason.code).collect();
        assert_eq!(kept, [Code::Lifted]);
    }

    #[test]
    fn every_reason_has_its_step() {
        let steps: Vec<Step> = LotReasonCode::ALL.iter().map(|code| step(*code)).collect();
        for wanted in [Step::Say, Step::Check, Step::Measure, Step::Laboratory, Step::Replace] {
            assert!(steps.contains(&wanted), "{wanted:?}");
        }
    }
}
