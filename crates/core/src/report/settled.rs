//! Laboratory results, lifts, readings set aside and how a hold ends: as the JSON of findings, and as sentences.

use serde::Serialize;

use super::json::MgPerKg;
use super::photos;
use crate::acts::{Act, ActKind, Target, split_escaped};
use crate::inspection::{Findings, Inspection, LotFinding, MaterialFinding};
use crate::laboratory::LabValue;
use crate::lot::{LotReason, LotReasonCode};
use crate::outcome::Outcome;
use crate::report::phrases;
use crate::settling::{LabFinding, LabVerdict};
use crate::undertaking::HoldEnds;
use crate::words::Words;

/// A laboratory's result with what it says.
#[derive(Serialize)]
pub struct LabOut<'a> {
    analyte: &'a str,
    value_mg_kg: Option<MgPerKg>,
    below_mg_kg: Option<MgPerKg>,
    expanded_mg_kg: Option<MgPerKg>,
    k: Option<String>,
    method: Option<&'a str>,
    laboratory: Option<&'a str>,
    report: Option<&'a str>,
    date: Option<String>,
    traceable: bool,
    placed: bool,
    limit_mg_kg: Option<MgPerKg>,
    verdict: Option<&'a str>,
    screen: &'a str,
}

/// Who ends a hold, by when, and how much waits.
#[derive(Serialize)]
pub struct HoldEndsOut<'a> {
    who: Option<&'a str>,
    until: Option<String>,
    quarantined: Option<u64>,
    place: Option<&'a str>,
}

fn given(text: &str) -> Option<&str> {
    (!text.is_empty()).then_some(text)
}

/// The results of a material, for the findings.
pub fn laboratory(material: &MaterialFinding) -> Vec<LabOut<'_>> {
    material.laboratory.iter().map(lab_out).collect()
}

fn lab_out(found: &LabFinding) -> LabOut<'_> {
    let LabFinding { result, verdict, limit, screen, placed } = found;
    let (value, below) = match result.value {
        LabValue::Number(value) => (Some(MgPerKg(value)), None),
        LabValue::Below(limit) => (None, Some(MgPerKg(limit))),
    };
    LabOut {
        analyte: result.analyte.code(),
        value_mg_kg: value,
        below_mg_kg: below,
        expanded_mg_kg: result.expanded.map(|(u, _)| MgPerKg(u)),
        k: result.expanded.map(|(_, k)| k.to_string()),
        method: given(&result.method),
        laboratory: given(&result.laboratory),
        report: given(&result.report),
        date: result.date.map(|day| day.to_string()),
        traceable: result.is_traceable(),
        placed: *placed,
        limit_mg_kg: limit.map(MgPerKg),
        verdict: verdict.map(LabVerdict::code),
        screen: screen.code(),
    }
}

/// How the hold of a lot ends, for the findings.
pub fn hold_ends(lot: &LotFinding) -> Option<HoldEndsOut<'_>> {
    lot.hold_ends.as_ref().map(|HoldEnds { who, until, quarantined, place }| HoldEndsOut {
        who: given(who),
        until: until.map(|day| day.to_string()),
        quarantined: *quarantined,
        place: given(place),
    })
}

/// Whether what an act speaks of is there; `None` for kinds that need not speak of anything yet.
pub fn matched(inspection: &Inspection, findings: &Findings, act: &Act) -> Option<bool> {
    let lot_of = |supplier: &str, lot: &str| {
        findings.lots.iter().position(|one| {
            one.supplier.as_deref().unwrap_or("") == supplier && one.lot.as_deref().unwrap_or("") == lot
        })
    };
    if act.kind == ActKind::Mark {
        return (act.value == "product").then(|| !is_check(inspection, findings, &act.target));
    }
    if act.kind == ActKind::Photo {
        return Some(photos::is_there(inspection, findings, &act.target));
    }
    let kinds = [ActKind::SetAside, ActKind::Laboratory, ActKind::Lift, ActKind::HoldEnds];
    if !kinds.contains(&act.kind) {
        return None;
    }
    Some(match &act.target {
        Target::Lot(supplier, lot) => lot_of(supplier, lot).is_some(),
        Target::LotMaterial([supplier, lot, part, name]) => {
            let is_it = |material: &MaterialFinding| {
                let of = findings.lots.get(material.lot);
                of.is_some_and(|of| {
                    of.supplier.as_deref().unwrap_or("") == supplier && of.lot.as_deref().unwrap_or("") == lot
                }) && material.part.as_deref().unwrap_or("") == part
                    && material.name.as_deref().unwrap_or("") == name
            };
            let on_bill = || {
                let bill = inspection.settings().bill_of_materials(part);
                bill.is_some_and(|bill| bill.contains(name)) && lot_of(supplier, lot).is_some()
            };
            findings.materials.iter().any(is_it) || on_bill()
        }
        Target::Reading(name, line) => findings.set_aside.keys().any(|reading| {
            let place = findings.place(*reading as usize);
            let found = place.and_then(|(at, row)| Some((inspection.sources.get(at)?, row)));
            found.is_some_and(|(source, row)| source.name == *name && source.readings.line(row) == *line)
        }),
        _ => false,
    })
}

fn is_check(inspection: &Inspection, findings: &Findings, target: &Target) -> bool {
    let Target::Reading(name, line) = target else { return false };
    findings.trust.checks.iter().any(|check| {
        let place = findings.place(check.reading as usize);
        let found = place.and_then(|(at, row)| Some((inspection.sources.get(at)?, row)));
        found.is_some_and(|(source, row)| source.name == *name && source.readings.line(row) == *line)
    })
}

/// The acts that speak of nothing that is there, or that were not followed, a sentence each.
pub fn unmatched(words: &Words, inspection: &Inspection, findings: &Findings) -> Vec<String> {
    let mut found = Vec::new();
    for act in crate::acts::in_force(&inspection.acts) {
        if matched(inspection, findings, act) == Some(false) {
            let target = phrases::target(words, &act.target);
            let id = match act.kind {
                ActKind::Mark => "act-not_followed",
                ActKind::SetAside if is_check(inspection, findings, &act.target) => "act-not_aside",
                _ => "act-not_matched",
            };
            found.push(words.with(id, &[("act", &phrases::act(words, act)), ("target", &target)]));
        }
    }
    found
}

/// What was lifted, in few words; the code itself where nobody may lift it.
pub fn lifted(words: &Words, code: &str) -> String {
    let id = format!("lifted-{code}");
    if words.has(&id) { words.say(&id) } else { code.replace('_', " ") }
}

/// What a reason is about, without what else it carries; a reading without a name for what it is about has none.
pub fn about_first(reason: &LotReason) -> String {
    match reason.code {
        LotReasonCode::LabOver | LotReasonCode::LabOpen | LotReasonCode::LabWithin => {
            split_escaped(&reason.about).into_iter().next().unwrap_or_default()
        }
        LotReasonCode::SetAsideOver | LotReasonCode::SetAsideOpen if reason.about.is_empty() => {
            "none".to_owned()
        }
        _ => reason.about.clone(),
    }
}

/// A reason that carries several texts, in words; `None` for any other.
pub fn reason(words: &Words, reason: &LotReason) -> Option<String> {
    let names: &[&str] = match reason.code {
        LotReasonCode::LabOver
        | LotReasonCode::LabOpen
        | LotReasonCode::LabWithin
        | LotReasonCode::LabNoUncertainty
        | LotReasonCode::LabNotTraceable
        | LotReasonCode::LabNotPlaced => {
            &["about", "analyte", "value", "limit", "method", "laboratory", "report", "date", "screen"]
        }
        LotReasonCode::Lifted
        | LotReasonCode::LiftNotAllowed
        | LotReasonCode::LiftNotCountersigned
        | LotReasonCode::LiftNotNeeded => &["reason", "about", "why", "by", "second"],
        LotReasonCode::SetAsideOver | LotReasonCode::SetAsideOpen => &["about"],
        _ => return None,
    };
    let mut texts = match names {
        [_] => vec![reason.about.clone()],
        _ => split_escaped(&reason.about),
    };
    texts.resize(names.len(), String::new());
    let outcome = texts.last().and_then(|code| Outcome::from_code(code));
    if let (Some(outcome), Some(last)) = (outcome, texts.last_mut()) {
        *last = phrases::outcome_short(words, outcome);
    }
    if names.first() == Some(&"reason")
        && let Some(code) = texts.first_mut()
    {
        *code = lifted(words, code);
    }
    let shown: Vec<String> =
        texts.into_iter().map(|text| if text.is_empty() { "none".to_owned() } else { text }).collect();
    let (count, of) = (reason.count.to_string(), reason.of.to_string());
    let more = [("effect", reason.effect.code()), ("count", count.as_str()), ("of", of.as_str())];
    let arguments: Vec<(&str, &str)> =
        names.iter().copied().zip(shown.iter().map(String::as_str)).chain(more).collect();
    Some(words.with(&format!("lot-reason-{}", reason.code.code()), &arguments))
}
