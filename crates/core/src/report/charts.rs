//! Control charts and the history in the words and numbers that findings, report and page share.

use serde::Serialize;

use super::json::MgPerKg;
use super::phrases;
use crate::acts::Settings;
use crate::chart::{self, ControlChart, Labels, MOST_POINTS};
use crate::control::{self, Drift, Limits, LimitsFrom, NoLimits, SignalCode};
use crate::inspection::{Findings, Inspection};
use crate::quantity::{MassFraction, UNITS_PER_MG_KG};
use crate::streams::{self, PointFrom, Stream};
use crate::words::Words;

/// The history that was given.
#[derive(Serialize)]
pub(super) struct HistoryOut {
    checks: usize,
    lots: usize,
    sha256: Option<String>,
}

pub(super) fn history(inspection: &Inspection) -> HistoryOut {
    let history = &inspection.history;
    HistoryOut {
        checks: history.checks.len(),
        lots: history.lots.len(),
        sha256: (!history.is_empty()).then(|| history.sha256()),
    }
}

#[derive(Serialize)]
pub(super) struct ChartOut {
    instrument: Option<String>,
    mode: Option<String>,
    sample: Option<String>,
    class: &'static str,
    element: &'static str,
    points: Vec<PointOut>,
    without_time: usize,
    limits_from: Option<&'static str>,
    no_limits: Option<&'static str>,
    baseline_points: Option<usize>,
    repeatability_from: Option<&'static str>,
    centre_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    lower_mg_kg: Option<MgPerKg>,
    upper_mg_kg: Option<MgPerKg>,
    range_centre_mg_kg: Option<MgPerKg>,
    range_upper_mg_kg: Option<MgPerKg>,
    rule_set: &'static str,
    signals: Vec<SignalOut>,
    drift: Option<DriftOut>,
    text: String,
}

#[derive(Serialize)]
struct PointOut {
    time: Option<String>,
    value_mg_kg: MgPerKg,
    from: &'static str,
}

#[derive(Serialize)]
struct SignalOut {
    point: usize,
    signal: &'static str,
}

#[derive(Serialize)]
struct DriftOut {
    points: usize,
    span_days: f64,
    slope_mg_kg_per_day: f64,
    sigma_mg_kg_per_day: f64,
    t: f64,
    drifts: bool,
    percent_in_30_days: Option<f64>,
}

/// Every chart of the findings.
pub(super) fn charts(inspection: &Inspection, findings: &Findings, words: &Words) -> Vec<ChartOut> {
    let settings = inspection.settings();
    let streams = streams::streams(inspection, findings);
    streams.into_iter().map(|stream| out(words, &settings, stream)).collect()
}

fn out(words: &Words, settings: &Settings, stream: Stream) -> ChartOut {
    let mut text = told(words, settings, &stream);
    text.extend(runs(&stream).iter().map(|run| run_told(words, &stream, run)));
    let text = words.sentences(&text);
    let Stream { key, points, without_time, repeatability_from, chart } = stream;
    let said = |text: String| (!text.is_empty()).then_some(text);
    let limits = chart.limits.ok();
    let amount = |pick: fn(&Limits) -> f64| limits.as_ref().map(|limits| MgPerKg(mass(pick(limits))));
    ChartOut {
        instrument: said(key.instrument),
        mode: said(key.mode),
        sample: said(key.sample),
        class: key.class.code(),
        element: key.element.symbol(),
        points: points
            .into_iter()
            .map(|point| PointOut {
                time: said(point.time),
                value_mg_kg: MgPerKg(point.value),
                from: point.from.code(),
            })
            .collect(),
        without_time,
        limits_from: limits.map(|limits| limits.from.code()),
        no_limits: chart.limits.err().map(NoLimits::code),
        baseline_points: limits.map(|limits| limits.points).filter(|points| *points > 0),
        repeatability_from: repeatability_from.map(streams::RepeatabilityFrom::code),
        centre_mg_kg: amount(|limits| limits.centre),
        sigma_mg_kg: amount(|limits| limits.sigma),
        lower_mg_kg: amount(|limits| limits.lower),
        upper_mg_kg: amount(|limits| limits.upper),
        range_centre_mg_kg: amount(|limits| limits.range_centre),
        range_upper_mg_kg: amount(|limits| limits.range_upper),
        rule_set: chart.rules.code(),
        signals: chart
            .signals
            .iter()
            .map(|signal| SignalOut { point: signal.at, signal: signal.code.code() })
            .collect(),
        drift: chart.drift.map(|drift| DriftOut {
            points: drift.points,
            span_days: drift.span,
            slope_mg_kg_per_day: drift.slope,
            sigma_mg_kg_per_day: drift.sigma,
            t: drift.t,
            drifts: drift.drifts,
            percent_in_30_days: drift.percent,
        }),
        text,
    }
}

/// A number in mg/kg as a mass fraction, to the nearest millionth.
fn mass(mg_per_kg: f64) -> MassFraction {
    MassFraction::from_units(libm::round(mg_per_kg * UNITS_PER_MG_KG as f64) as i64)
}

/// A number in mg/kg as a person reads it.
fn number(mg_per_kg: f64) -> String {
    // A slope may be far below what rounding to a thousandth leaves.
    match mg_per_kg.abs() {
        0.1.. => phrases::rounded(mass(mg_per_kg)),
        0.001.. => mass(libm::round(mg_per_kg * 10_000.0) / 10_000.0).to_string(),
        _ => mass(mg_per_kg).to_string(),
    }
}

/// The name of a chart: element, sample, instrument and mode.
pub fn name(words: &Words, stream: &Stream) -> String {
    let key = &stream.key;
    let or_none = |text: &str| if text.is_empty() { words.say("not-stated") } else { text.to_owned() };
    let mode = if key.mode.is_empty() { String::new() } else { format!("{}{}", words.comma(), key.mode) };
    words.with(
        "chart-name",
        &[
            ("element", key.element.symbol()),
            ("sample", &or_none(&key.sample)),
            ("instrument", &format!("{}{mode}", or_none(&key.instrument))),
            ("class", &words.say(&format!("class-{}", key.class.code()))),
        ],
    )
}

/// What a chart says, in sentences: its limits, its drift, what is not in it, and at last whether there are signals, which
/// [`run_told`] tells one by one.
pub fn told(words: &Words, settings: &Settings, stream: &Stream) -> Vec<String> {
    let chart = &stream.chart;
    let points = stream.points.len().to_string();
    let rules = words.say(&format!("chart-rules-{}", chart.rules.code()));
    let mut texts = vec![match &chart.limits {
        Ok(limits) => limits_told(words, limits, stream),
        Err(why) => {
            let needed = settings.control_chart().points.to_string();
            words.with(&format!("chart-none-{}", why.code()), &[("points", &points), ("needed", &needed)])
        }
    }];
    texts.push(match &chart.drift {
        None => words.with("chart-drift_unknown", &[("n", &control::FEWEST_POINTS.to_string())]),
        Some(drift) => drift_told(words, drift),
    });
    if stream.without_time > 0 {
        texts.push(words.with("chart-without_time", &[("count", &stream.without_time.to_string())]));
    }
    if chart.limits.is_ok() {
        let runs = runs(stream).len().to_string();
        let id = if chart.signals.is_empty() { "chart-no_signal" } else { "chart-signals" };
        texts.push(words.with(id, &[("rules", &rules), ("points", &points), ("count", &runs)]));
    }
    texts
}

fn limits_told(words: &Words, limits: &Limits, stream: &Stream) -> String {
    let from = stream.repeatability_from.map_or("", streams::RepeatabilityFrom::code);
    words.with(
        &format!("chart-limits-{}", limits.from.code()),
        &[
            ("centre", &number(limits.centre)),
            ("lower", &number(limits.lower)),
            ("upper", &number(limits.upper)),
            ("sigma", &number(limits.sigma)),
            ("points", &limits.points.to_string()),
            ("from", from),
        ],
    )
}

fn drift_told(words: &Words, drift: &Drift) -> String {
    let id = match (drift.drifts, drift.percent) {
        (false, _) => "chart-no_drift",
        (true, None) => "chart-drift_short",
        (true, Some(_)) => "chart-drift",
    };
    let percent = drift.percent.map(|percent| format!("{percent:+.1}")).unwrap_or_default();
    words.with(
        id,
        &[
            ("slope", &number(drift.slope)),
            ("sigma", &number(drift.sigma)),
            ("t", &format!("{:.2}", drift.t)),
            ("span", &format!("{:.1}", drift.span)),
            ("n", &drift.points.to_string()),
            ("percent", &percent),
        ],
    )
}

/// Neighbouring points with signals, as one: the first and the last of them, and what is said there.
pub struct Run {
    /// Index of the first point.
    pub first: usize,
    /// Index of the last one.
    pub last: usize,
    /// What is said, each once.
    pub codes: Vec<SignalCode>,
}

/// The signals of a stream, neighbouring points as one.
pub fn runs(stream: &Stream) -> Vec<Run> {
    let mut runs: Vec<Run> = Vec::new();
    for signal in &stream.chart.signals {
        match runs.last_mut() {
            Some(run) if signal.at <= run.last + 1 => {
                run.last = signal.at;
                if !run.codes.contains(&signal.code) {
                    run.codes.push(signal.code);
                }
            }
            _ => runs.push(Run { first: signal.at, last: signal.at, codes: vec![signal.code] }),
        }
    }
    runs
}

/// A run of signals in words.
pub fn run_told(words: &Words, stream: &Stream, run: &Run) -> String {
    let codes: Vec<String> =
        run.codes.iter().map(|code| words.say(&format!("signal-{}", code.code()))).collect();
    let point = |at: usize| stream.points.get(at);
    let time = |at: usize| point(at).map(|point| when(words, &point.time)).unwrap_or_default();
    let value = point(run.first).map(|point| point.value.to_string()).unwrap_or_default();
    let id = if run.first == run.last { "chart-signal_at" } else { "chart-signal_run" };
    words.with(
        id,
        &[
            ("first", &time(run.first)),
            ("last", &time(run.last)),
            ("value", &value),
            ("count", &(run.last + 1 - run.first).to_string()),
            ("codes", &words.series(&codes)),
        ],
    )
}

fn when(words: &Words, time: &str) -> String {
    if time.is_empty() { words.say("chart-no_time") } else { words.moment(time) }
}

/// How many of the earliest points are not drawn.
pub fn not_drawn(stream: &Stream) -> usize {
    stream.points.len().saturating_sub(MOST_POINTS)
}

/// A stream drawn as SVG text.
pub fn draw(words: &Words, settings: &Settings, stream: &Stream) -> String {
    let skipped = not_drawn(stream);
    let points = stream.points.get(skipped..).unwrap_or(&[]);
    let values: Vec<f64> = points.iter().map(|point| point.value.to_mg_per_kg()).collect();
    let earlier: Vec<bool> = points.iter().map(|point| point.from == PointFrom::History).collect();
    let mut marks = vec![0; points.len()];
    for (number, run) in runs(stream).iter().enumerate() {
        for mark in marks
            .iter_mut()
            .take((run.last + 1).saturating_sub(skipped))
            .skip(run.first.saturating_sub(skipped))
        {
            *mark = number + 1;
        }
    }
    let limits = stream.chart.limits.ok();
    let name_of = |id: &str, value: f64| words.with(id, &[("value", &number(value))]);
    let ranges = control::moving_ranges(&values);
    let largest = |list: &[f64]| list.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let time = |at: Option<&streams::Point>| at.map(|point| when(words, &point.time)).unwrap_or_default();
    let mut labels = Labels {
        values: words.say("chart-values"),
        ranges: words.say("chart-ranges"),
        first: time(points.first()),
        last: time(points.last()),
        ..Labels::default()
    };
    match limits {
        Some(limits) => {
            labels.upper = name_of("chart-upper", limits.upper);
            labels.centre = name_of("chart-centre", limits.centre);
            labels.lower = name_of("chart-lower", limits.lower);
            labels.range_upper = name_of("chart-upper", limits.range_upper);
            labels.range_centre = name_of("chart-centre", limits.range_centre);
        }
        None if !values.is_empty() => {
            labels.upper = name_of("chart-largest", largest(&values));
            labels.lower = name_of("chart-smallest", values.iter().copied().fold(f64::INFINITY, f64::min));
            if !ranges.is_empty() {
                labels.range_upper = name_of("chart-largest", largest(&ranges));
            }
        }
        None => {}
    }
    let baseline =
        limits.filter(|limits| limits.from == LimitsFrom::Baseline).map_or(0, |limits| limits.points);
    let baseline = baseline.saturating_sub(skipped);
    labels.baseline = words.with("chart-baseline", &[("points", &baseline.to_string())]);
    let description = words.sentences(&told(words, settings, stream));
    chart::draw(&ControlChart {
        title: &name(words, stream),
        stop: words.stop(),
        description: &description,
        values: &values,
        earlier: &earlier,
        marks: &marks,
        limits,
        baseline,
        labels: &labels,
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::control::RuleSet;

    #[test]
    fn every_code_of_a_chart_has_its_words() {
        let words = Words::english();
        let mut wanted: Vec<String> = Vec::new();
        wanted.extend(SignalCode::ALL.iter().map(|code| format!("signal-{}", code.code())));
        wanted.extend(RuleSet::ALL.iter().map(|code| format!("chart-rules-{}", code.code())));
        wanted.extend(LimitsFrom::ALL.iter().map(|code| format!("chart-limits-{}", code.code())));
        wanted.extend(NoLimits::ALL.iter().map(|code| format!("chart-none-{}", code.code())));
        let missing: Vec<_> = wanted.iter().filter(|id| !words.has(id)).collect();
        assert!(missing.is_empty(), "{missing:?}");
    }

    #[test]
    fn a_small_slope_is_not_rounded_away() {
        assert_eq!(number(0.00042), "0.00042");
        assert_eq!(number(0.023_086), "0.0231");
        assert_eq!(number(-12.3456), "-12.35");
    }
}
