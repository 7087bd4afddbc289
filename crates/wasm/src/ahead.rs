//! What lies ahead of one lot, worked out only when a person asks for it: a delivery may have thousands.

use plumbline_core::claims::Candidate;
use plumbline_core::conformity::{self, DecisionRule, Statement};
use plumbline_core::exempt::Exemption;
use plumbline_core::inspection::{Findings, Inspection, MaterialFinding};
use plumbline_core::judging::SourceReview;
use plumbline_core::longer::{Effort, Plan};
use plumbline_core::material::MaterialClass;
use plumbline_core::outlook::{self, RulesSaid};
use plumbline_core::pool::Spots;
use plumbline_core::report::{self, books, exemptions, repeats};
use plumbline_core::rules;
use plumbline_core::substance::{Element, Substance};
use plumbline_core::words::Words;
use serde::Serialize;

use crate::detail::chance;

/// Materials with something to say that are listed; the report has them all.
const LISTED: usize = 100;

#[derive(Serialize)]
pub(crate) struct StatementCount {
    text: String,
    readings: f64,
}

/// What one rule says of the readings of a lot: so many within, beyond, and in between.
#[derive(Serialize)]
pub(crate) struct RuleRow {
    rule: String,
    within: f64,
    between: Vec<StatementCount>,
    beyond: f64,
}

#[derive(Serialize)]
pub(crate) struct RulesTable {
    substance: &'static str,
    name: String,
    limit: String,
    rows: Vec<RuleRow>,
    not_applicable: f64,
}

#[derive(Serialize)]
pub(crate) struct SpotsView {
    element: &'static str,
    differ: bool,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct CandidateView {
    substance: &'static str,
    entry: String,
    scope: String,
    bound: String,
    number: String,
    confidence: String,
    questions: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct MaterialAhead {
    part: Option<String>,
    material: Option<String>,
    class_text: String,
    spots: Vec<SpotsView>,
    candidates: Vec<CandidateView>,
}

#[derive(Serialize)]
pub(crate) struct SamplingView {
    text: Vec<String>,
    list: String,
    svg: String,
}

#[derive(Serialize)]
pub(crate) struct AheadView {
    sampling: Option<SamplingView>,
    plan: Vec<String>,
    rules: Vec<RulesTable>,
    materials: Vec<MaterialAhead>,
    materials_left_out: f64,
}

/// Looks ahead for one lot.
pub(crate) fn ahead(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    lot: usize,
) -> Option<AheadView> {
    findings.lots.get(lot)?;
    let settings = inspection.settings();
    let reviewers: Vec<SourceReview<'_>> = inspection
        .sources
        .iter()
        .map(|source| SourceReview::new(source, &inspection.books, &settings))
        .collect();
    let found = outlook::outlook(inspection, findings, &reviewers, lot);
    let own = findings.materials.iter().filter(|material| material.lot == lot);
    let mut materials: Vec<MaterialAhead> = own
        .map(|material| MaterialAhead {
            part: material.part.clone(),
            material: material.name.clone(),
            class_text: words.say(&format!("class-{}", material.class.code())),
            spots: spots_of(inspection, findings, words, &reviewers, material),
            candidates: candidates(inspection, words, material),
        })
        .filter(|material| !(material.spots.is_empty() && material.candidates.is_empty()))
        .collect();
    let left_out = materials.len().saturating_sub(LISTED);
    materials.truncate(LISTED);
    let sampling = report::sampling::told(words, findings.lots.get(lot)?);
    Some(AheadView {
        sampling: sampling.map(|(text, list, svg)| SamplingView { text, list, svg }),
        plan: plan(words, &found.plan),
        rules: outlook::ON_THE_ELEMENT
            .into_iter()
            .zip(found.rules)
            .map(|(substance, said)| rules_table(words, substance, &said))
            .collect(),
        materials,
        materials_left_out: left_out as f64,
    })
}

/// What measuring longer would settle, the surer time first.
fn plan(words: &Words, plan: &Plan) -> Vec<String> {
    if plan.open == 0 {
        return vec![words.say("longer-plan-nothing_open")];
    }
    let of = plan.open.to_string();
    let sentence = |id: &str, effort: Effort| {
        words.with(
            id,
            &[
                ("readings", &effort.readings.to_string()),
                ("longest", &effort.longest.to_string()),
                ("total", &effort.total.to_string()),
                ("settles", &effort.settles.to_string()),
                ("of", &of),
            ],
        )
    };
    let efforts = [("longer-plan", plan.surely), ("longer-plan_even", plan.even)];
    let settling = efforts.into_iter().filter(|(_, effort)| effort.settles > 0);
    let said: Vec<String> = settling.map(|(id, effort)| sentence(id, effort)).collect();
    if said.is_empty() { vec![words.with("longer-plan-none", &[("of", &of)])] } else { said }
}

fn rules_table(words: &Words, substance: Substance, said: &RulesSaid) -> RulesTable {
    let [below, undecided, over] = said.bands;
    let between = |list: &[(String, u64)]| {
        let counted = list.iter().filter(|(_, readings)| *readings > 0);
        counted
            .map(|(text, readings)| StatementCount { text: text.clone(), readings: *readings as f64 })
            .collect()
    };
    let mut rows = vec![RuleRow {
        rule: words.say("rule-bands"),
        within: below as f64,
        between: between(&[(words.say("outcome-X"), undecided)]),
        beyond: over as f64,
    }];
    let k = conformity::GUARD.to_string();
    rows.extend(DecisionRule::ALL.iter().zip(said.said).map(|(rule, counts)| {
        let [pass, conditional_pass, conditional_fail, fail] = counts;
        let statement = |one: Statement| words.say(&format!("statement-{}", one.code()));
        RuleRow {
            rule: words.with(&format!("rule-{}", rule.code()), &[("k", &k)]),
            within: pass as f64,
            between: between(&[
                (statement(Statement::ConditionalPass), conditional_pass),
                (statement(Statement::ConditionalFail), conditional_fail),
            ]),
            beyond: fail as f64,
        }
    }));
    RulesTable {
        substance: substance.symbol(),
        name: words.say(&format!("substance-{}", substance.symbol())),
        // The limit on the element is the same in a polymer and in a metal.
        limit: rules::legal_limit(substance, MaterialClass::Polymer)
            .map(|limit| words.number(&limit.limit))
            .unwrap_or_default(),
        rows,
        not_applicable: said.not_applicable as f64,
    }
}

fn spots_of(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    reviewers: &[SourceReview<'_>],
    material: &MaterialFinding,
) -> Vec<SpotsView> {
    let one = |(element, found): (Element, Spots)| {
        let id = if found.differ() { "spots-differ" } else { "spots-no-difference" };
        let (n, p) = (found.spots.to_string(), chance(words, found.p()));
        SpotsView {
            element: element.symbol(),
            differ: found.differ(),
            text: words.with(id, &[("n", &n), ("p", &p)]),
        }
    };
    repeats::spots(inspection, findings, reviewers, material).into_iter().map(one).collect()
}

/// Entries nobody claimed that may cover the material, in words.
fn candidates(inspection: &Inspection, words: &Words, material: &MaterialFinding) -> Vec<CandidateView> {
    let rows = inspection.books.exemptions();
    let one = |candidate: &Candidate| {
        let row: &Exemption = rows.get(candidate.row)?;
        let limit = row.bound.limit().map(|limit| limit.to_string()).unwrap_or_default();
        Some(CandidateView {
            substance: row.substance.symbol(),
            entry: row.entry.clone(),
            scope: row.scope.clone(),
            bound: words.with(&format!("direction-{}", row.bound.code()), &[("limit", &limit)]),
            number: exemptions::number(words, rows, Some(candidate.row), candidate.number),
            confidence: books::confidence(words, &row.confidence),
            questions: candidate
                .questions
                .iter()
                .map(|question| words.say(&format!("question-{}", question.code())))
                .collect(),
        })
    };
    material.claims.candidates.iter().filter_map(one).collect()
}
