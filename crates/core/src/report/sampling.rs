//! A lot's sampling as data for `findings.json`, and a plan in words for report and command line.

use serde::Serialize;

use crate::inspection::LotFinding;
use crate::lot_sampling::LotSampling;
use crate::oc_curve::{self, OcCurve};
use crate::sampling::{
    Plan, PlanRule, PlanSaid, RISK_POINTS, Severity, counts_units, list, share_at, smallest_n_of_many,
    units_at, units_of_share,
};
use crate::words::Words;

/// What `findings.json` says of a lot's sampling.
#[derive(Serialize)]
pub(super) struct SamplingOut {
    lot_size: Option<u64>,
    units_to_take: Option<u64>,
    rule: Option<&'static str>,
    plan: Option<String>,
    table: Option<TableOut>,
    n: Option<u64>,
    units_wanted: Option<u64>,
    units_measured: u64,
    units_seen: u64,
    units_conforming: u64,
    units_undecided: u64,
    units_over: u64,
    confidence_percent: Option<f64>,
    at_most_nonconforming: Option<u64>,
    risk: Vec<RiskOut>,
    list_seed: Option<u64>,
    list: Vec<u64>,
}

/// What the tables of MIL-STD-105E say, for characteristics that no law restricts.
#[derive(Serialize)]
struct TableOut {
    name: &'static str,
    level: &'static str,
    severity: &'static str,
    aql: String,
    letter: Option<char>,
    plan_letter: Option<char>,
    n: Option<u64>,
    ac: Option<u32>,
    re: Option<u32>,
}

#[derive(Serialize)]
struct RiskOut {
    accepted_percent: u8,
    nonconforming_units: u64,
}

/// The sampling of a lot; `None` where nothing is said of it.
pub(super) fn out(words: &Words, lot: &LotFinding) -> Option<SamplingOut> {
    let sampling = lot.sampling.as_ref()?;
    let plan = sampling.plan;
    let taken = taken(sampling);
    Some(SamplingOut {
        lot_size: sampling.lot_size,
        units_to_take: sampling.units_to_take,
        rule: sampling.said.as_ref().map(|said| rule_code(&said.rule)),
        plan: sampling.said.as_ref().zip(plan).map(|(said, plan)| plan_words(words, &said.rule, &plan)),
        table: sampling.said.as_ref().and_then(|said| table(&said.rule, plan)),
        n: plan.map(|plan| plan.n),
        units_wanted: sampling.wanted,
        units_measured: sampling.measured,
        units_seen: sampling.units,
        units_conforming: sampling.conforming,
        units_undecided: sampling.undecided,
        units_over: sampling.over,
        confidence_percent: plan.map(|plan| f64::from(plan.confidence) / 100.0),
        at_most_nonconforming: sampling.at_most(),
        risk: taken.map(|(size, n)| risk(size, n)).unwrap_or_default(),
        list_seed: sampling.said.as_ref().and_then(|said| said.seed),
        list: units_list(sampling),
    })
}

fn rule_code(rule: &PlanRule) -> &'static str {
    match rule {
        PlanRule::Single { .. } => "single",
        PlanRule::ZeroAcceptance { .. } => "zero_acceptance",
    }
}

fn table(rule: &PlanRule, plan: Option<Plan>) -> Option<TableOut> {
    let PlanRule::Single { level, severity, aql } = rule else { return None };
    let row = plan.and_then(|plan| plan.table);
    Some(TableOut {
        name: table_name(*severity),
        level: level.code(),
        severity: severity.code(),
        aql: aql.clone(),
        letter: plan.and_then(|plan| plan.letter),
        plan_letter: row.map(|row| row.letter),
        n: row.map(|row| row.n),
        ac: row.map(|row| row.ac),
        re: row.map(|row| row.re),
    })
}

const fn table_name(severity: Severity) -> &'static str {
    match severity {
        Severity::Normal => "II-A",
        Severity::Tightened => "II-B",
        Severity::Reduced => "II-C",
    }
}

/// Lot size and units to take, where both are known.
pub(crate) fn taken(sampling: &LotSampling) -> Option<(u64, u64)> {
    sampling.lot_size.zip(sampling.wanted)
}

/// Most units that are listed; nobody takes more by a list.
const LONGEST_LIST: u64 = 100_000;

/// The numbers of the units to take; empty without a seed or a plan for this lot, and where the whole lot is taken.
pub(super) fn units_list(sampling: &LotSampling) -> Vec<u64> {
    let seed = sampling.said.as_ref().and_then(|said| said.seed);
    let some = taken(sampling).filter(|(size, n)| n < size && *n <= LONGEST_LIST);
    seed.zip(some).map(|(seed, (size, n))| list(seed, size, n)).unwrap_or_default()
}

fn risk(size: u64, n: u64) -> Vec<RiskOut> {
    let at =
        |percent| RiskOut { accepted_percent: percent, nonconforming_units: units_at(size, n, 0, percent) };
    RISK_POINTS.map(at).into()
}

/// Hundredths of a percent in percent, as short as they are.
fn percent(hundredths: u32) -> String {
    let text = format!("{}.{:02}", hundredths / 100, hundredths % 100);
    text.trim_end_matches('0').trim_end_matches('.').to_owned()
}

/// A plan for a lot in a sentence.
pub(super) fn plan_words(words: &Words, rule: &PlanRule, plan: &Plan) -> String {
    let (n, size) = (plan.n.to_string(), plan.lot_size.to_string());
    let whole = if plan.is_whole_lot() { "yes" } else { "no" };
    match rule {
        PlanRule::Single { level, severity, aql } => {
            let of = |letter: Option<char>| letter.map_or_else(|| "none".to_owned(), String::from);
            let (letter, led) = (of(plan.letter), of(plan.table.map(|table| table.letter)));
            let led = if led == letter { "same" } else { &led };
            let arguments = [
                ("level", level.code()),
                ("severity", severity.code()),
                ("aql", aql),
                ("table", table_name(*severity)),
                ("letter", &letter),
                ("led", led),
                ("n", &n),
                ("size", &size),
                ("whole", whole),
            ];
            words.with("sampling-plan_single", &arguments)
        }
        PlanRule::ZeroAcceptance { confidence, share } => {
            let bad = units_of_share(plan.lot_size, *share).to_string();
            let arguments = [
                ("confidence", percent(*confidence)),
                ("share", percent(*share)),
                ("bad", bad),
                ("n", n),
                ("size", size),
                ("whole", whole.to_owned()),
            ];
            let arguments = arguments.each_ref().map(|(name, value)| (*name, value.as_str()));
            words.with("sampling-plan_zero", &arguments)
        }
    }
}

/// What a table's own numbers are for; `None` for a plan that is none of the tables.
pub(super) fn table_words(words: &Words, plan: &Plan) -> Option<String> {
    let table = plan.table?;
    let (ac, re) = (table.ac.to_string(), table.re.to_string());
    Some(words.with("sampling-table", &[("ac", &ac), ("re", &re)]))
}

/// The risk points of taking `n` of a lot in a sentence.
pub(super) fn risk_words(words: &Words, size: u64, n: u64) -> String {
    if n >= size {
        return words.say("sampling-risk_none");
    }
    let [at_95, at_50, at_10] = RISK_POINTS.map(|point| units_at(size, n, 0, point).to_string());
    let (size, n) = (size.to_string(), n.to_string());
    let arguments = [("size", &*size), ("n", &n), ("at95", &at_95), ("at50", &at_50), ("at10", &at_10)];
    words.with("sampling-risk", &arguments)
}

/// What the units measured of a lot leave possible; `None` where nothing can be said.
pub(super) fn at_most_words(words: &Words, sampling: &LotSampling) -> Option<String> {
    let (most, plan) = (sampling.at_most()?, sampling.plan?);
    let (most, confidence, size) = (most.to_string(), percent(plan.confidence), plan.lot_size.to_string());
    let arguments = [("most", &*most), ("confidence", &confidence), ("size", &size)];
    Some(words.with("sampling-at_most", &arguments))
}

/// Where a list of units comes from.
pub(super) fn list_words(words: &Words, seed: u64, size: u64, n: usize) -> String {
    let (seed, size, n) = (seed.to_string(), size.to_string(), n.to_string());
    words.with("sampling-list", &[("seed", &seed), ("size", &size), ("n", &n)])
}

/// A plan before anything is measured, line by line: how many units, which, with what risk, and what it does not prove.
pub fn plan_lines(words: &Words, said: &PlanSaid, lot_size: u64) -> Vec<String> {
    let plan = said.rule.for_lot(lot_size);
    let mut lines = vec![plan_words(words, &said.rule, &plan)];
    lines.extend(table_words(words, &plan));
    lines.push(risk_words(words, lot_size, plan.n));
    // The process behind the lot, as if it went on without end.
    let shares = u32::try_from(plan.n).ok().filter(|_| !plan.is_whole_lot()).and_then(|n| {
        let at = |point: u8| {
            let share = share_at(n, 0, f64::from(point) / 100.0)? * 100.0;
            Some(if share < 0.1 { format!("{share:.6}") } else { format!("{share:.2}") })
        };
        Some([at(95)?, at(50)?, at(10)?])
    });
    if let Some([at_95, at_50, at_10]) = &shares {
        lines.push(words.with("sampling-risk_process", &[("at95", at_95), ("at50", at_50), ("at10", at_10)]));
    }
    if let PlanRule::ZeroAcceptance { confidence, share } = said.rule {
        let n = smallest_n_of_many(confidence, share).to_string();
        lines.push(words.with("sampling-zero_process", &[("n", &n)]));
    }
    if let Some(seed) = said.seed.filter(|_| !plan.is_whole_lot()) {
        let units = list(seed, lot_size, plan.n);
        lines.push(list_words(words, seed, lot_size, units.len()));
        lines.extend(units.chunks(15).map(numbers));
    }
    if matches!(said.rule, PlanRule::Single { .. }) {
        lines.push(words.say("sampling-isolated"));
    }
    lines.push(words.say("sampling-proves"));
    lines
}

/// Numbers in a row.
pub(super) fn numbers(units: &[u64]) -> String {
    units.iter().map(u64::to_string).collect::<Vec<_>>().join(" ")
}

/// The acceptance number of the table whose curve stands beside that of none: where the table counts units. Above an AQL of
/// 10 it counts nonconformities, of which a unit may have several.
pub(super) fn other_ac(sampling: &LotSampling) -> Option<u32> {
    let of_units = match sampling.said.as_ref().map(|said| &said.rule) {
        Some(PlanRule::Single { aql, .. }) => counts_units(aql),
        _ => false,
    };
    let table = sampling.plan.and_then(|plan| plan.table).filter(|table| of_units && table.ac > 0);
    table.map(|table| table.ac)
}

/// The operating characteristic of a lot's sampling: its title and the drawing.
pub(super) fn curve(words: &Words, sampling: &LotSampling, size: u64, take: u64) -> (String, String) {
    let title = words.with("sampling-curve", &[("size", &size.to_string()), ("n", &take.to_string())]);
    let ac = other_ac(sampling);
    let other = ac.map(|ac| words.with("sampling-curve_table", &[("ac", &ac.to_string())]));
    let svg = oc_curve::draw(&OcCurve {
        title: &title,
        stop: words.stop(),
        description: &risk_words(words, size, take),
        across: &words.say("sampling-curve_across"),
        up: &words.say("sampling-curve_up"),
        zero: &words.say("sampling-curve_zero"),
        lot_size: size,
        n: take,
        other: ac.zip(other.as_deref()),
    });
    (title, svg)
}

/// What a lot's sampling asks for, what was measured of it and what that proves: sentences, and the curve where a plan is
/// given.
pub fn told(words: &Words, lot: &LotFinding) -> Option<(Vec<String>, String, String)> {
    let sampling = lot.sampling.as_ref()?;
    let (size, take) = taken(sampling)?;
    let mut lines = Vec::new();
    let said = sampling.said.as_ref();
    if let Some((said, plan)) = said.zip(sampling.plan) {
        lines.push(plan_words(words, &said.rule, &plan));
        lines.extend(table_words(words, &plan));
        lines.push(risk_words(words, size, take));
        lines.extend(at_most_words(words, sampling));
        lines.push(words.say("sampling-proves"));
    }
    let units = units_list(sampling);
    let list = match said.and_then(|said| said.seed) {
        Some(seed) if !units.is_empty() => {
            words.sentences(&[list_words(words, seed, size, units.len()), numbers(&units)])
        }
        _ => String::new(),
    };
    let svg = if sampling.plan.is_some() { curve(words, sampling, size, take).1 } else { String::new() };
    Some((lines, list, svg))
}
