//! Check readings with their scores, control charts, and what is known of suppliers: asked for when a person looks.

use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::reading::Identity;
use plumbline_core::report::{charts, phrases, suppliers};
use plumbline_core::streams::{self, Stream};
use plumbline_core::suppliers::{SupplierHistory, histories};
use plumbline_core::trust::CheckElement;
use plumbline_core::words::Words;
use serde::Serialize;

/// Check readings, charts and suppliers that are listed; the report has the rest.
const CHECKS: usize = 100;
const CHARTS: usize = 24;
const SUPPLIERS: usize = 100;

#[derive(Serialize)]
pub(crate) struct ChecksView {
    checks: Vec<CheckView>,
    checks_left_out: usize,
    charts: Vec<ChartView>,
    charts_left_out: usize,
    suppliers: Vec<SupplierView>,
    suppliers_left_out: usize,
    history: String,
}

#[derive(Serialize)]
struct CheckView {
    index: u32,
    sample: String,
    kind: String,
    when: String,
    instrument: Option<String>,
    elements: Vec<CheckedElement>,
}

#[derive(Serialize)]
struct CheckedElement {
    element: &'static str,
    found: String,
    certified: String,
    score: String,
    verdict: &'static str,
    verdict_text: String,
    good: bool,
}

#[derive(Serialize)]
struct ChartView {
    title: String,
    svg: String,
    text: Vec<String>,
}

#[derive(Serialize)]
struct SupplierView {
    supplier: Option<String>,
    part: Option<String>,
    text: Vec<String>,
}

/// What the checks, the charts and the suppliers' lots show.
pub(crate) fn checks(inspection: &Inspection, findings: &Findings, words: &Words) -> ChecksView {
    let settings = inspection.settings();
    let all = &findings.trust.checks;
    // A chart that says something is not the one to be left out.
    let mut streams: Vec<Stream> = streams::streams(inspection, findings);
    streams.sort_by_key(|stream| !(stream.signals_now() || stream.chart.drift.is_some_and(|one| one.drifts)));
    let known: Vec<SupplierHistory> =
        histories(inspection, findings).into_iter().filter(|one| !one.supplier.is_empty()).collect();
    let history = &inspection.history;
    ChecksView {
        checks: all.iter().take(CHECKS).map(|check| check_view(inspection, findings, words, check)).collect(),
        checks_left_out: all.len().saturating_sub(CHECKS),
        charts: streams
            .iter()
            .take(CHARTS)
            .map(|stream| ChartView {
                title: charts::name(words, stream),
                svg: charts::draw(words, &settings, stream),
                text: charts::told(words, &settings, stream)
                    .into_iter()
                    .chain(charts::runs(stream).iter().map(|run| charts::run_told(words, stream, run)))
                    .collect(),
            })
            .collect(),
        charts_left_out: streams.len().saturating_sub(CHARTS),
        suppliers: known.iter().take(SUPPLIERS).map(|one| supplier(words, one)).collect(),
        suppliers_left_out: known.len().saturating_sub(SUPPLIERS),
        history: if history.is_empty() {
            String::new()
        } else {
            let counts = [history.checks.len().to_string(), history.lots.len().to_string()];
            let told = words.with("report-history", &[("checks", &counts[0]), ("records", &counts[1])]);
            format!("{told} {}", history.sha256())
        },
    }
}

fn check_view(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    check: &plumbline_core::trust::CheckFinding,
) -> CheckView {
    let place = findings.place(check.reading as usize);
    let source = place.and_then(|(at, row)| Some((inspection.sources.get(at)?, row)));
    let said = |identity| {
        source.and_then(|(source, row)| source.readings.identity(identity, row)).map(str::to_owned)
    };
    let element = |one: &CheckElement| {
        let certified = one.certificate.and_then(|at| findings.trust.certificates.get(at));
        let written =
            source.map(|(source, row)| phrases::written_of(source, one.element, row)).unwrap_or_default();
        CheckedElement {
            element: one.element.symbol(),
            found: phrases::value(words, &one.cell, one.sigma, &written),
            certified: certified
                .map(|one| words.number(&format!("{} ± {} (k = {})", one.value, one.expanded, one.k)))
                .unwrap_or_default(),
            score: one
                .scores
                .map(|scores| {
                    let score = |one: f64| words.number(&format!("{one:.2}"));
                    words.with("check-scores", &[("zeta", &score(scores.zeta)), ("en", &score(scores.en))])
                })
                .unwrap_or_default(),
            verdict: one.verdict.code(),
            verdict_text: words.say(&format!("check-verdict-{}", one.verdict.code())),
            good: one.verdict.is_good(),
        }
    };
    CheckView {
        index: check.reading,
        sample: check.sample.clone(),
        kind: words.say(&format!("check-kind-{}", check.kind.code())),
        when: words.moment(&said(Identity::Time).unwrap_or_default()),
        instrument: said(Identity::Instrument),
        elements: check.elements.iter().map(element).collect(),
    }
}

fn supplier(words: &Words, one: &SupplierHistory) -> SupplierView {
    let stated = |text: &String| Some(text.clone()).filter(|text| !text.is_empty());
    let mut text = vec![suppliers::count_text(words, one)];
    text.push(match one.next {
        Some(next) => suppliers::next_text(words, next),
        None => words.say("supplier-no_series"),
    });
    text.extend(suppliers::remarks(words, one));
    SupplierView { supplier: stated(&one.supplier), part: stated(&one.part), text }
}
