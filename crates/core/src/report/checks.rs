//! Check readings in `findings.json`.

use serde::Serialize;

use super::json::MgPerKg;
use crate::certificate::Certificate;
use crate::inspection::Findings;
use crate::quantity::Sigma;
use crate::reading::CellState;
use crate::rules::JUDGED;
use crate::trust::{CheckElement, Trust, TrustFindings};

#[derive(Serialize)]
pub(super) struct CheckOut<'a> {
    reading: u32,
    kind: &'static str,
    sample: Option<&'a str>,
    elements: Vec<ElementOut<'a>>,
}

#[derive(Serialize)]
struct ElementOut<'a> {
    element: &'static str,
    class: &'static str,
    state: &'static str,
    value_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    certificate: Option<&'a str>,
    certified_mg_kg: Option<MgPerKg>,
    certified_sigma_mg_kg: Option<MgPerKg>,
    bias_mg_kg: Option<MgPerKg>,
    zeta: Option<f64>,
    en: Option<f64>,
    recovery_percent: Option<f64>,
    verdict: &'static str,
}

/// Every check reading, in the order of all readings.
pub(super) fn checks(findings: &Findings) -> Vec<CheckOut<'_>> {
    let trust = &findings.trust;
    let sigma = |sigma: Option<Sigma>| sigma.map(|sigma| MgPerKg(sigma.to_mass_fraction()));
    let element = |one: &CheckElement| {
        let certified = one.certificate.and_then(|at| trust.certificates.get(at));
        ElementOut {
            element: one.element.symbol(),
            class: one.class.code(),
            state: one.cell.state.code(),
            value_mg_kg: (one.cell.state == CellState::Number).then_some(MgPerKg(one.cell.value)),
            sigma_mg_kg: sigma(one.sigma),
            certificate: certified.map(|one| one.id.as_str()),
            certified_mg_kg: certified.map(|one| MgPerKg(one.value)),
            certified_sigma_mg_kg: sigma(certified.and_then(Certificate::sigma)),
            bias_mg_kg: one.scores.map(|scores| MgPerKg(scores.bias)),
            zeta: one.scores.map(|scores| scores.zeta),
            en: one.scores.map(|scores| scores.en),
            recovery_percent: one.scores.and_then(|scores| scores.recovery_percent),
            verdict: one.verdict.code(),
        }
    };
    let one = trust.checks.iter().map(|check| CheckOut {
        reading: check.reading,
        kind: check.kind.code(),
        sample: (!check.sample.is_empty()).then_some(check.sample.as_str()),
        elements: check.elements.iter().map(element).collect(),
    });
    one.collect()
}

/// The trust of each element of a reading, where they are not all alike.
pub(super) fn by_element(trust: &TrustFindings, reading: usize) -> Option<Vec<(&'static str, &'static str)>> {
    let of = trust.of(reading);
    let mut asked = of.iter().flatten();
    let first = asked.next()?;
    asked.any(|other| other != first).then(|| {
        let named = JUDGED.iter().zip(of);
        named.filter_map(|(element, trust)| Some((element.symbol(), Trust::code(trust?)))).collect()
    })
}
