//! The working behind the outcomes as data for `findings.json`: the rules once, and what each outcome did with them.

use std::collections::BTreeMap;

use serde::Serialize;

use super::json::MgPerKg;
use crate::acts::Settings;
use crate::inspection::{Findings, Inspection, MaterialFinding};
use crate::judging::{GroupAssessed, JUDGED, LimitAssessed, PooledElement, SourceReview};
use crate::longer::Effort;
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Reason, SigmaFrom};
use crate::outlook;
use crate::pool::{self, Repeat, Spots, SpotsTest};
use crate::quantity::{Coverage, MassFraction};
use crate::reading::{Cell, CellState, Identity};
use crate::rules::{self, LowEdge};
use crate::substance::{Element, Halogen, Substance};

/// One row of a rule book that outcomes refer to by its place in the list.
#[derive(Serialize)]
pub(super) struct RuleOut<'a> {
    book: &'a str,
    about: &'a str,
    class: Option<&'static str>,
    low_mg_kg: Option<MgPerKg>,
    high_mg_kg: Option<MgPerKg>,
    detection_limit_at_most_mg_kg: Option<MgPerKg>,
    limit_mg_kg: Option<MgPerKg>,
    operator: Option<&'static str>,
    k: String,
    source: &'a str,
    clause: &'a str,
    confidence: &'a str,
}

/// Every band, halogen limit and named limit in force, in a fixed order.
pub(super) fn rules<'a>(inspection: &'a Inspection, settings: &Settings) -> Vec<RuleOut<'a>> {
    let mut list = Vec::new();
    if let Some((book, rule)) = inspection.books.screening() {
        for (substance, class, band) in rule.bands() {
            let (low, at_most) = match band.edges.map(|edges| edges.low) {
                Some(LowEdge::Fixed(low)) => (Some(MgPerKg(low)), None),
                Some(LowEdge::DetectionLimit { at_most }) => (None, Some(MgPerKg(at_most))),
                None => (None, None),
            };
            list.push(RuleOut {
                book: &book.id,
                about: substance.symbol(),
                class: Some(class.code()),
                low_mg_kg: low,
                high_mg_kg: band.edges.and_then(|edges| edges.high).map(MgPerKg),
                detection_limit_at_most_mg_kg: at_most,
                limit_mg_kg: None,
                operator: None,
                k: rule.sigma_factor.to_string(),
                source: &band.citation.source,
                clause: &band.citation.clause,
                confidence: &band.citation.confidence,
            });
        }
    }
    if let Some((book, rule)) = inspection.books.halogens() {
        for of in Halogen::ALL {
            let citation = rule.citation_of(of);
            list.push(RuleOut {
                book: &book.id,
                about: of.name(),
                class: None,
                low_mg_kg: None,
                high_mg_kg: None,
                detection_limit_at_most_mg_kg: None,
                limit_mg_kg: Some(MgPerKg(rule.limit(of))),
                operator: Some(operator(rule.equal_is_within)),
                k: rule.sigma_factor.to_string(),
                source: &citation.source,
                clause: &citation.clause,
                confidence: &citation.confidence,
            });
        }
    }
    for book in &inspection.books.in_force(&settings.books).limits {
        list.extend(book.limits.iter().map(|row| RuleOut {
            book: &book.id,
            about: &row.id,
            class: None,
            low_mg_kg: None,
            high_mg_kg: None,
            detection_limit_at_most_mg_kg: None,
            limit_mg_kg: Some(MgPerKg(row.limit)),
            operator: Some(operator(row.equal_is_within)),
            k: row.sigma_factor.to_string(),
            source: &row.citation.source,
            clause: &row.citation.clause,
            confidence: &row.citation.confidence,
        }));
    }
    list
}

/// An operator as rule books write it.
const fn operator(equal_is_within: bool) -> &'static str {
    if equal_is_within { "at most" } else { "below" }
}

/// One limit of a named book, judged for a reading.
#[derive(Serialize)]
pub(super) struct LimitOut<'a> {
    book: &'a str,
    row: &'a str,
    outcome: &'static str,
    reason: Option<&'static str>,
    sigma_from: &'static str,
    low_mg_kg: Option<MgPerKg>,
    high_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    sigma_if_together_mg_kg: Option<MgPerKg>,
}

/// The limits of the named books for one reading.
pub(super) fn limits<'a>(reviewer: &SourceReview<'a>, class: MaterialClass, row: usize) -> Vec<LimitOut<'a>> {
    let one = |assessed: &LimitAssessed<'a>| {
        let judgement = assessed.judged.judgement;
        let sum = assessed.judged.sum;
        LimitOut {
            book: &assessed.book.id,
            row: &assessed.row.id,
            outcome: judgement.outcome.code(),
            reason: judgement.reason.map(Reason::code),
            sigma_from: judgement.used.from.code(),
            low_mg_kg: sum.map(|sum| MgPerKg(sum.low)),
            high_mg_kg: sum.and_then(|sum| sum.high).map(MgPerKg),
            sigma_mg_kg: sum.map(|sum| MgPerKg(sum.high_sigma.to_mass_fraction())),
            sigma_if_together_mg_kg: sum.map(|sum| MgPerKg(sum.high_sigma_if_together)),
        }
    };
    reviewer.limits_as(class, row).iter().map(one).collect()
}

/// The place in [`rules`] of the band a reading was judged by; `None` for an unknown class and a layer.
pub(super) fn rule_of(inspection: &Inspection, substance: Substance, class: MaterialClass) -> Option<usize> {
    let (_, rule) = inspection.books.screening()?;
    rule.bands().position(|(of, within, _)| (of, within) == (substance, class))
}

/// How far k sigma reach on either side of what was judged; `None` where there is no sigma.
pub(super) fn reach(cell: &Cell, judged: &Judgement, k: Coverage) -> Option<(MgPerKg, MgPerKg)> {
    let sigma = judged.used.sigma?.to_mass_fraction();
    let half = libm::round(sigma.units() as f64 * k.to_f64()) as i64;
    let x = match cell.state {
        CellState::NotDetected => cell.detection_limit?,
        _ => cell.value,
    };
    // Not detected at D: nothing is known below it.
    let censored = judged.used.from == SigmaFrom::DetectionLimit;
    let from = if censored { 0 } else { x.units().saturating_sub(half) };
    Some((
        MgPerKg(MassFraction::from_units(from)),
        MgPerKg(MassFraction::from_units(x.units().saturating_add(half))),
    ))
}

/// A number for statistics: six significant digits are more than any of them deserves.
pub(super) fn significant(value: f64) -> f64 {
    format!("{value:.5e}").parse().unwrap_or(value)
}

/// The repeats of one spot.
#[derive(Serialize)]
pub(super) struct RepeatsOut {
    readings: Vec<usize>,
    elements: Vec<RepeatedElement>,
    judged_together: Vec<&'static str>,
}

#[derive(Serialize)]
struct RepeatedElement {
    element: &'static str,
    how: &'static str,
    value_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    sigma_from: Option<&'static str>,
    scatter_mg_kg: Option<MgPerKg>,
    factor_for_few: Option<f64>,
    chi_square: Option<f64>,
    p: Option<f64>,
    outlier: Option<usize>,
}

/// Every group of repeats of every source.
pub(super) fn repeats(inspection: &Inspection, findings: &Findings) -> Vec<RepeatsOut> {
    let settings = inspection.settings();
    let mut list = Vec::new();
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.same_as.get(at).copied().flatten().is_some() {
            continue;
        }
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for (group, rows) in reviewer.repeats().groups().iter().enumerate() {
            let Some(row) = rows.first() else { continue };
            let (class, class_from) = reviewer.class(*row as usize);
            let assessed = reviewer.assess_group(group, class, class_from);
            let readings: Vec<usize> = rows.iter().map(|row| first + *row as usize).collect();
            let measured = |element| {
                rows.iter().any(|row| {
                    let state = source.readings.cell(element, *row as usize).state;
                    !matches!(state, CellState::NoColumn | CellState::Blank)
                })
            };
            list.push(RepeatsOut {
                elements: JUDGED
                    .into_iter()
                    .zip(&assessed.elements)
                    .filter(|(element, _)| measured(*element))
                    .map(|(element, one)| repeated(element, one, &readings))
                    .collect(),
                judged_together: together(&assessed),
                readings,
            });
        }
    }
    list
}

fn together(assessed: &GroupAssessed) -> Vec<&'static str> {
    let substances = Substance::ALL.iter().zip(assessed.substances).filter(|(_, together)| *together);
    let halogens = Halogen::ALL.iter().zip(assessed.halogens).filter(|(_, together)| *together);
    substances
        .map(|(substance, _)| substance.symbol())
        .chain(halogens.filter(|(of, _)| **of != Halogen::Br).map(|(of, _)| of.name()))
        .collect()
}

fn repeated(element: Element, one: &PooledElement, readings: &[usize]) -> RepeatedElement {
    let pooled = one.pooled.as_ref();
    RepeatedElement {
        element: element.symbol(),
        how: one.how.code(),
        value_mg_kg: one.judged.map(|(cell, _)| MgPerKg(cell.value)),
        sigma_mg_kg: one
            .judged
            .and_then(|(_, used)| used.sigma)
            .map(|sigma| MgPerKg(sigma.to_mass_fraction())),
        sigma_from: one.judged.filter(|(_, used)| used.sigma.is_some()).map(|(_, used)| used.from.code()),
        scatter_mg_kg: pooled.and_then(|pooled| pooled.scatter).map(MgPerKg),
        factor_for_few: pooled.and_then(|pooled| pooled.few).map(|few| significant(few.t)),
        chi_square: pooled
            .and_then(|pooled| pooled.agreement)
            .map(|agreement| significant(agreement.chi_square)),
        p: pooled.and_then(|pooled| pooled.agreement).map(|agreement| significant(agreement.p)),
        outlier: pooled
            .and_then(|pooled| pooled.outlier)
            .filter(|grubbs| grubbs.is_flagged())
            .and_then(|grubbs| readings.get(grubbs.index).copied()),
    }
}

/// How the spots of a material differ in one element.
#[derive(Serialize)]
pub(super) struct SpotsOut {
    element: &'static str,
    spots: usize,
    readings: usize,
    test: &'static str,
    statistic: f64,
    p: f64,
    between_mg_kg: f64,
    differ: bool,
}

/// How the spots of a material differ, element by element; empty where it has fewer than two stated spots.
pub(super) fn spots(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    material: &MaterialFinding,
) -> Vec<SpotsOut> {
    let one = |(element, found): (Element, Spots)| {
        let (test, statistic) = match found.test {
            SpotsTest::Scatter(anova) => ("scatter", anova.f),
            SpotsTest::Stated(agreement) => ("stated", agreement.chi_square),
        };
        SpotsOut {
            element: element.symbol(),
            spots: found.spots,
            readings: found.readings,
            test,
            statistic: significant(statistic),
            p: significant(found.p()),
            between_mg_kg: significant(found.between),
            differ: found.differ(),
        }
    };
    spots_found(inspection, findings, reviewers, material).into_iter().map(one).collect()
}

/// The spots of a material held against each other, element by element; empty where it has fewer than two stated spots.
pub fn spots_found(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    material: &MaterialFinding,
) -> Vec<(Element, Spots)> {
    let mut groups: BTreeMap<[String; 3], Vec<(usize, usize)>> = BTreeMap::new();
    for reading in &material.readings {
        let Some((at, row)) = findings.place(*reading as usize) else { continue };
        let Some(source) = inspection.sources.get(at) else { continue };
        if source.readings.identity_id(Identity::Spot, row).is_some() {
            let text = |identity| source.readings.identity(identity, row).unwrap_or("").to_owned();
            let spot = [Identity::Unit, Identity::Id, Identity::Spot].map(text);
            groups.entry(spot).or_default().push((at, row));
        }
    }
    if groups.len() < 2 {
        return Vec::new();
    }
    let spots_of = |element: Element| {
        let repeats: Vec<Vec<Repeat>> = groups
            .values()
            .map(|places| {
                places.iter().filter_map(|(at, row)| reviewers.get(*at)?.repeat(element, *row)).collect()
            })
            .collect();
        Some((element, pool::spots(&repeats)?))
    };
    JUDGED.into_iter().filter_map(spots_of).collect()
}

/// The probability of one outcome and what other decision rules say of it.
#[derive(Serialize)]
pub(super) struct ConformityOut {
    limit_mg_kg: MgPerKg,
    within: f64,
    beyond: f64,
    simple_acceptance: &'static str,
    guarded_acceptance: &'static str,
    non_binary: &'static str,
}

/// The conformity of one substance of one reading.
pub(super) fn conformity(
    reviewer: &SourceReview<'_>,
    substance: Substance,
    judged: &Judgement,
    row: usize,
) -> Option<ConformityOut> {
    let found = reviewer.conformity(substance, judged, row)?;
    let limit = rules::legal_limit(substance, reviewer.class(row).0)?;
    let [simple, guarded, non_binary] = found.said.map(|said| said.statement.code());
    Some(ConformityOut {
        limit_mg_kg: MgPerKg(limit.limit),
        within: significant(found.within),
        beyond: significant(found.beyond),
        simple_acceptance: simple,
        guarded_acceptance: guarded,
        non_binary,
    })
}

/// What lies ahead of a lot.
#[derive(Serialize)]
pub(super) struct OutlookOut {
    open_outcomes: usize,
    longer_even: EffortOut,
    longer_nine_in_ten: EffortOut,
    decision_rules: Vec<RulesSaidOut>,
}

#[derive(Serialize)]
struct EffortOut {
    readings: usize,
    longest_s: u32,
    total_s: u64,
    settles: usize,
}

#[derive(Serialize)]
struct RulesSaidOut {
    substance: &'static str,
    bands: BandsOut,
    simple_acceptance: StatementsOut,
    guarded_acceptance: StatementsOut,
    non_binary: StatementsOut,
    not_applicable: u64,
}

#[derive(Serialize)]
struct BandsOut {
    below: u64,
    undecided: u64,
    over: u64,
}

#[derive(Serialize)]
struct StatementsOut {
    pass: u64,
    conditional_pass: u64,
    conditional_fail: u64,
    fail: u64,
}

/// What lies ahead of a lot, as the file holds it.
pub(super) fn outlook(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    lot: usize,
) -> OutlookOut {
    let found = outlook::outlook(inspection, findings, reviewers, lot);
    let effort = |effort: Effort| EffortOut {
        readings: effort.readings,
        longest_s: effort.longest,
        total_s: effort.total,
        settles: effort.settles,
    };
    let statements = |[pass, conditional_pass, conditional_fail, fail]: [u64; 4]| StatementsOut {
        pass,
        conditional_pass,
        conditional_fail,
        fail,
    };
    OutlookOut {
        open_outcomes: found.plan.open,
        longer_even: effort(found.plan.even),
        longer_nine_in_ten: effort(found.plan.surely),
        decision_rules: outlook::ON_THE_ELEMENT
            .iter()
            .zip(found.rules)
            .map(|(substance, said)| {
                let [below, undecided, over] = said.bands;
                let [simple, guarded, non_binary] = said.said;
                RulesSaidOut {
                    substance: substance.symbol(),
                    bands: BandsOut { below, undecided, over },
                    simple_acceptance: statements(simple),
                    guarded_acceptance: statements(guarded),
                    non_binary: statements(non_binary),
                    not_applicable: said.not_applicable,
                }
            })
            .collect(),
    }
}
