//! What an inspection leaves for a history: one record for each material of each lot.

use std::collections::BTreeSet;

use crate::change::{self, compose};
use crate::history::LotRecord;
use crate::inspection::{Findings, Inspection, LotFinding, MaterialFinding};
use crate::judging::SourceReview;
use crate::laboratory::Analyte;
use crate::outcome::Outcome;
use crate::quantity::{MassFraction, Sigma};
use crate::reading::CellState;
use crate::rules::LowEdge;
use crate::settling::{LabFinding, LabVerdict};
use crate::substance::Substance;

/// The records of an inspection, as its findings stand. The day is that of the review, where the settings give one.
pub fn lot_records(inspection: &Inspection, findings: &Findings) -> BTreeSet<LotRecord> {
    let settings = inspection.settings();
    let name = change::inspection_name(&inspection.sources);
    let day = settings.reviewed();
    let reviewers: Vec<SourceReview<'_>> = inspection
        .sources
        .iter()
        .map(|source| SourceReview::new(source, &inspection.books, &settings))
        .collect();
    let record = |material: &MaterialFinding| {
        let lot = findings.lots.get(material.lot)?;
        // What nobody named can't be found again.
        if lot.supplier.is_none() && lot.lot.is_none() {
            return None;
        }
        let names = names_of(lot, material);
        let rows = || {
            material.readings.iter().filter_map(|reading| {
                let (at, row) = findings.place(*reading as usize)?;
                Some((inspection.sources.get(at)?, reviewers.get(at)?, row))
            })
        };
        let [supplier, lot_name, part, name_of_material] = names.map(str::to_owned);
        Some(LotRecord {
            supplier,
            part,
            material: name_of_material,
            lot: lot_name,
            class: material.class,
            day,
            disposition: lot.disposition,
            of_material: material.disposition,
            outcomes: Substance::ALL.map(|one| material.tally.worst(one).code().to_owned()),
            nearest: nearest(inspection, findings, &reviewers, material),
            laboratory: laboratory(&material.laboratory),
            composition: compose(rows()).into_iter().map(|composed| composed.amount).collect(),
            readings: material.tally.readings,
            inspection: name.clone(),
        })
    };
    findings.materials.iter().filter_map(record).collect()
}

/// Supplier, lot, part, material; empty where not stated.
fn names_of<'a>(lot: &'a LotFinding, material: &'a MaterialFinding) -> [&'a str; 4] {
    [&lot.supplier, &lot.lot, &material.part, &material.name].map(|name| name.as_deref().unwrap_or_default())
}

/// The BL number that lies nearest to its band, in its sigmas: (low edge - x) / s, in hundredths, rounded down.
///
/// A low edge that is the reading's own detection limit (cadmium in a composite) has no such distance.
fn nearest(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    material: &MaterialFinding,
) -> Option<(Substance, u32)> {
    let (_, rule) = inspection.books.screening()?;
    let mut found: Option<(u32, Substance)> = None;
    for substance in Substance::ALL {
        let below =
            material.tally.counts.get(substance as usize).and_then(|of| of.get(Outcome::Below as usize));
        if below.is_none_or(|count| *count == 0) {
            continue;
        }
        for reading in &material.readings {
            let Some((at, row)) = findings.place(*reading as usize) else { continue };
            let is_below = findings
                .verdicts
                .get(*reading as usize)
                .and_then(|verdicts| verdicts.substances.get(substance as usize))
                .is_some_and(|outcome| *outcome == Outcome::Below);
            let Some(reviewer) = reviewers.get(at).filter(|_| is_below) else { continue };
            let cell = reviewer.cell(substance as usize, row);
            if cell.state != CellState::Number {
                continue;
            }
            let edges = rule.band(substance, material.class).and_then(|band| band.edges);
            let Some(LowEdge::Fixed(low)) = edges.map(|edges| edges.low) else { continue };
            let judged = reviewer.judge_as(substance, material.class, row);
            let Some(margin) = judged.used.sigma.and_then(|sigma| hundredths(low, cell.value, sigma)) else {
                continue;
            };
            if found.is_none_or(|known| (margin, substance) < known) {
                found = Some((margin, substance));
            }
        }
    }
    found.map(|(margin, substance)| (substance, margin))
}

fn hundredths(low: MassFraction, value: MassFraction, sigma: Sigma) -> Option<u32> {
    let sigma = i128::from(sigma.to_mass_fraction().units());
    let room = i128::from(low.units()) - i128::from(value.units());
    (sigma > 0 && room >= 0).then(|| u32::try_from(room * 100 / sigma).unwrap_or(u32::MAX))
}

/// What laboratories found in a material beside what the screen said of the same substance: of several results the worst.
fn laboratory(findings: &[LabFinding]) -> Vec<(Substance, String, String)> {
    let worse = |one: &str| [WITHIN, OPEN, OVER].into_iter().position(|known| known == one);
    let mut found: Vec<(Substance, String, String)> = Vec::new();
    for one in findings.iter().filter(|one| one.placed) {
        let Some(substance) = bounds(one.result.analyte) else { continue };
        let verdict = match one.verdict {
            Some(LabVerdict::Within) => WITHIN,
            Some(LabVerdict::Over) => OVER,
            _ => OPEN,
        };
        match found.iter_mut().find(|(known, ..)| *known == substance) {
            Some((_, _, known)) if worse(verdict) > worse(known) => verdict.clone_into(known),
            Some(_) => {}
            None => found.push((substance, one.screen.code().to_owned(), verdict.to_owned())),
        }
    }
    // One of the two families says nothing of the other.
    let has = |analyte| findings.iter().any(|one| one.placed && one.result.analyte == analyte);
    if has(Analyte::Pbb) != has(Analyte::Pbde) && !has(Analyte::Br) {
        for (substance, _, verdict) in &mut found {
            if *substance == Substance::Br && verdict == WITHIN {
                OPEN.clone_into(verdict);
            }
        }
    }
    found.sort_unstable();
    found
}

/// A result that lies within.
pub(super) const WITHIN: &str = "within";
/// A result that lies over.
pub(super) const OVER: &str = "over";
/// A result of which neither is known.
const OPEN: &str = "open";

/// The substance the screen judged that an analyte answers.
const fn bounds(analyte: Analyte) -> Option<Substance> {
    match analyte {
        Analyte::Cd => Some(Substance::Cd),
        Analyte::Pb => Some(Substance::Pb),
        Analyte::Hg => Some(Substance::Hg),
        Analyte::Cr | Analyte::Cr6 => Some(Substance::Cr),
        Analyte::Br | Analyte::Pbb | Analyte::Pbde => Some(Substance::Br),
        Analyte::Cl => None,
    }
}
