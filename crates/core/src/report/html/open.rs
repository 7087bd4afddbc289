//! Every open or over outcome with its working and what would settle it.

use std::io::{self, Write};

use maud::{Markup, PreEscaped, html};

use super::{OPEN_CASES, Report, add_markup};
use crate::inspection::MaterialFinding;
use crate::judging::{Assessed, SourceReview};
use crate::lot::{LotReason, LotReasonCode, ReasonKind};
use crate::next_step::NextStep;
use crate::outcome::{Outcome, Reason};
use crate::reading::{Identity, Source};
use crate::report::explain::{About, Explainer, StepKind};
use crate::report::{phrases, rulers, settled};
use crate::substance::{Halogen, Substance};

/// Most other readings of a case that are named.
const OTHERS_NAMED: usize = 30;

impl Report<'_> {
    /// Every open or over outcome with value, reason, working, ruler and next step.
    pub(super) fn open_outcomes(&self, sink: &mut dyn Write) -> io::Result<()> {
        add_markup(
            sink,
            &html! {
                (PreEscaped("<section>"))
                h2 { (self.say("report-open")) }
                p class="sub keep" { (self.say("report-opinions")) }
            },
        )?;
        let open = |outcome: &Outcome| !outcome.is_settled();
        let total: usize = self
            .findings
            .verdicts
            .iter()
            .filter(|one| !one.check)
            .map(|one| {
                let halogens =
                    if self.halogens_count() { one.halogens.iter().filter(|o| open(o)).count() } else { 0 };
                one.substances.iter().filter(|o| open(o)).count() + halogens
            })
            .sum();
        if total == 0 {
            add_markup(sink, &html! { p { (self.say("report-open_none")) } })?;
        }
        if total > OPEN_CASES {
            let text = self.words.with(
                "report-open_capped",
                &[("shown", &OPEN_CASES.to_string()), ("total", &total.to_string())],
            );
            add_markup(sink, &html! { p { (text) } })?;
        }
        let mut shown = 0;
        // Worst first, so that what is cut off is never the worst; readings of one material that are open for the
        // same reason with the same next step stand together under the highest of them.
        for wanted in Outcome::ALL.into_iter().rev().filter(|outcome| !outcome.is_settled()) {
            for material in &self.findings.materials {
                for case in self.cases(material, wanted) {
                    if shown >= OPEN_CASES {
                        break;
                    }
                    shown += case.readings.len();
                    add_markup(sink, &self.case(material, &case))?;
                }
            }
        }
        sink.write_all(b"</section>")
    }

    /// The open cases of one material with this outcome, each with all its readings.
    fn cases(&self, material: &MaterialFinding, wanted: Outcome) -> Vec<Case> {
        let mut cases: Vec<Case> = Vec::new();
        for reading in material.readings.iter().chain(&material.set_aside) {
            let Some(verdicts) = self.findings.verdicts.get(*reading as usize) else { continue };
            let halogens = self.halogens_count() && verdicts.halogens.contains(&wanted);
            if !verdicts.substances.contains(&wanted) && !halogens {
                continue;
            }
            let Some((_, reviewer, row)) = self.place(*reading as usize) else { continue };
            let assessed = reviewer.assess(row);
            for (substance, judged) in Substance::ALL.iter().zip(&assessed.substances) {
                if judged.outcome == wanted {
                    let steps =
                        phrases::next_of_substance(self.inspection, reviewer, *substance, judged, row);
                    add_to_cases(&mut cases, About::Substance(*substance), judged.reason, steps, *reading);
                }
            }
            for halogen in Halogen::ALL {
                let judged = assessed.halogen(halogen);
                if halogens && judged.outcome == wanted {
                    let steps = phrases::next_of_halogen(self.inspection, reviewer, halogen, &judged, row);
                    add_to_cases(&mut cases, About::Halogen(halogen), judged.reason, steps, *reading);
                }
            }
        }
        cases
    }

    /// What a laboratory said that leaves nothing to be done about a substance; `None` where something is left.
    fn settled(&self, material: &MaterialFinding, about: About) -> Option<String> {
        let About::Substance(substance) = about else { return None };
        let symbol = substance.symbol();
        let of = |code| {
            let is_it = |reason: &&LotReason| reason.code == code && settled::about_first(reason) == symbol;
            material.reasons.iter().find(is_it)
        };
        let left = |reason: &LotReason| {
            reason.about == symbol && reason.code.kind() == ReasonKind::Outcome
                || reason.code == LotReasonCode::LabGroupMissing
        };
        let found = match of(LotReasonCode::LabOver) {
            Some(over) => over,
            None => of(LotReasonCode::LabWithin).filter(|_| !material.reasons.iter().any(left))?,
        };
        Some(self.with("report-settled_by_laboratory", &[("text", &phrases::lot_reason(self.words, found))]))
    }

    fn case(&self, material: &MaterialFinding, case: &Case) -> Markup {
        let value_of = |reading: u32| {
            let place = self.place(reading as usize);
            place.map_or(crate::quantity::MassFraction::ZERO, |(source, reviewer, row)| match case.about {
                About::Substance(substance) => source.readings.cell(substance.element(), row).value,
                About::Halogen(halogen) => match phrases::element_of(halogen) {
                    Some(element) => source.readings.cell(element, row).value,
                    None => reviewer.assess(row).total.high.unwrap_or_default(),
                },
            })
        };
        // The first of the highest, so that the choice never depends on anything but the readings.
        let highest = case.readings.iter().rev().copied().max_by_key(|reading| value_of(*reading));
        let Some(highest) = highest else { return html! {} };
        let Some((source, reviewer, row)) = self.place(highest as usize) else { return html! {} };
        let assessed = reviewer.assess(row);
        let others: Vec<String> = case
            .readings
            .iter()
            .filter(|reading| **reading != highest)
            .take(OTHERS_NAMED)
            .filter_map(|reading| {
                let (source, reviewer, row) = self.place(*reading as usize)?;
                let element = match case.about {
                    About::Substance(substance) => Some(substance.element()),
                    About::Halogen(halogen) => phrases::element_of(halogen),
                };
                // As its state is: what was not measured is no zero, and a limit is no value.
                let value = match element {
                    Some(element) => phrases::cell_short(
                        self.words,
                        &source.readings.cell(element, row),
                        &phrases::written_of(source, element, row),
                    ),
                    None => phrases::total_short(self.words, &reviewer.assess(row).total),
                };
                let name = source
                    .readings
                    .identity(Identity::Id, row)
                    .map_or_else(|| phrases::line_name(self.words, source.readings.line(row)), str::to_owned);
                Some(format!("{name}{}", self.words.bracketed(&value)))
            })
            .collect();
        let more = case.readings.len().saturating_sub(1 + OTHERS_NAMED);
        html! {
            div class="case" {
                (self.open_case(source, reviewer, row, &assessed, case.about))
                @if !others.is_empty() {
                    p {
                        (self.say("report-also")) (self.words.colon()) (self.words.list(&others))
                        @if more > 0 { (self.words.gap()) (self.words.with("report-also_more", &[("count", &more.to_string())])) }
                    }
                }
                @if let Some(text) = self.settled(material, case.about) {
                    p { b { (self.say("report-next")) (self.words.colon()) } (text) }
                } @else { @match case.about {
                    About::Substance(substance) => (self.steps(&case.steps, substance.symbol())),
                    About::Halogen(halogen) => {
                        (self.steps(&case.steps, &self.say(&format!("substance-{}", halogen.name()))))
                    }
                } }
            }
        }
    }

    /// What was found, the paragraph that explains it, and beside it what makes it doubtful.
    fn open_case(
        &self,
        source: &Source,
        reviewer: &SourceReview<'_>,
        row: usize,
        assessed: &Assessed,
        about: About,
    ) -> Markup {
        let explainer = Explainer { inspection: self.inspection, source, reviewer, words: self.words };
        let told = explainer.explain(about, row);
        let (name, outcome, value, ruler) = match about {
            About::Substance(substance) => {
                let Some(judged) = assessed.substances.get(substance as usize) else { return html! {} };
                let cell = source.readings.cell(substance.element(), row);
                let written = phrases::written_of(source, substance.element(), row);
                let printed = reviewer.printed_sigma(substance.element(), &cell, row);
                let rule = self.inspection.books.screening();
                (
                    self.words
                        .list(&[substance.symbol(), &self.say(&format!("substance-{}", substance.symbol()))]),
                    judged.outcome,
                    phrases::value(self.words, &cell, judged.used.sigma.or(printed), &written),
                    rule.map_or_else(String::new, |(_, rule)| {
                        rulers::substance(self.words, rule, substance, assessed.class, &cell, judged)
                    }),
                )
            }
            About::Halogen(halogen) => {
                let judged = assessed.halogen(halogen);
                let value = match phrases::element_of(halogen) {
                    Some(element) => {
                        let cell = source.readings.cell(element, row);
                        let written = phrases::written_of(source, element, row);
                        phrases::value(self.words, &cell, judged.used.sigma, &written)
                    }
                    None => phrases::total(self.words, &assessed.total),
                };
                let ruler = self.inspection.books.halogens().map_or_else(String::new, |(_, rule)| {
                    rulers::halogen(self.words, rule, halogen, source, assessed, row)
                });
                (self.say(&format!("substance-{}", halogen.name())), judged.outcome, value, ruler)
            }
        };
        let composition = phrases::composition(self.words, reviewer, row);
        let beside = |kind| matches!(kind, StepKind::Caution | StepKind::Next);
        let paragraph: Vec<&str> =
            told.steps.iter().filter(|step| !beside(step.kind)).map(|step| step.text.as_str()).collect();
        html! {
            p { b { (name) (self.words.colon()) } (self.outcome_twice(outcome)) (self.words.stop()) (value) }
            p class="sub" { (self.reading_name(source, row)) " · " (self.class(assessed.class)) }
            @if !ruler.is_empty() { figure { (PreEscaped(ruler)) } }
            p class="why" { (self.words.sentences(&paragraph)) }
            @for step in told.steps.iter().filter(|step| step.kind == StepKind::Caution) {
                @if step.text == composition { p { b { (self.say("report-composition")) (self.words.colon()) } (step.text) } }
                @else { p class="doubt" { b { (self.say("report-caution")) (self.words.colon()) } (step.text) } }
            }
        }
    }

    fn steps(&self, steps: &[crate::next_step::NextStep], about: &str) -> Markup {
        html! {
            @if !steps.is_empty() {
                p {
                    b { (self.say("report-next")) (self.words.colon()) }
                    @for (at, step) in steps.iter().enumerate() {
                        @if at > 0 { (self.words.gap()) }
                        (phrases::next(self.words, step, about))
                    }
                }
            }
        }
    }
}

/// Readings of one material that are open for the same reason with the same next step.
struct Case {
    about: About,
    reason: Option<Reason>,
    steps: Vec<NextStep>,
    readings: Vec<u32>,
}

fn add_to_cases(
    cases: &mut Vec<Case>,
    about: About,
    reason: Option<Reason>,
    steps: Vec<NextStep>,
    reading: u32,
) {
    let same = |case: &&mut Case| case.about == about && case.reason == reason && case.steps == steps;
    match cases.iter_mut().find(same) {
        Some(case) => case.readings.push(reading),
        None => cases.push(Case { about, reason, steps, readings: vec![reading] }),
    }
}
