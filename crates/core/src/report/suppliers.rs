//! What is known of suppliers and parts, as data and in words.

use serde::Serialize;

use super::change::decimal;
use super::json::MgPerKg;
use crate::inspection::{Findings, Inspection};
use crate::lot::Disposition;
use crate::suppliers::{MaterialTrend, NearMiss, Next, SupplierHistory, histories};
use crate::words::Words;

#[derive(Serialize)]
pub(super) struct SupplierOut {
    supplier: Option<String>,
    part: Option<String>,
    here: bool,
    accept: usize,
    hold: usize,
    not_accept: usize,
    without_day: usize,
    lots: Vec<LotOut>,
    near_misses: Vec<NearMissOut>,
    trends_looked_at: usize,
    trends: Vec<TrendOut>,
    laboratory: Vec<LabOut>,
    next: Option<NextOut>,
}

#[derive(Serialize)]
struct LotOut {
    lot: Option<String>,
    day: Option<String>,
    disposition: &'static str,
    here: bool,
}

#[derive(Serialize)]
struct NearMissOut {
    substance: &'static str,
    lots: usize,
    nearest_sigma: f64,
}

#[derive(Serialize)]
struct TrendOut {
    material: Option<String>,
    class: &'static str,
    element: &'static str,
    lots: usize,
    first_mg_kg: MgPerKg,
    last_mg_kg: MgPerKg,
    percent_a_lot: f64,
    p: f64,
}

#[derive(Serialize)]
struct LabOut {
    class: &'static str,
    agreed: u64,
    over_was_within: u64,
    below_was_over: u64,
    open_was_within: u64,
    open_was_over: u64,
    open: u64,
}

#[derive(Serialize)]
struct NextOut {
    severity: Option<&'static str>,
    may_reduce: bool,
    lots: usize,
    text: String,
}

pub(super) fn out(inspection: &Inspection, findings: &Findings, words: &Words) -> Vec<SupplierOut> {
    histories(inspection, findings).into_iter().map(|one| supplier(one, words)).collect()
}

fn stated(text: String) -> Option<String> {
    (!text.is_empty()).then_some(text)
}

fn supplier(one: SupplierHistory, words: &Words) -> SupplierOut {
    SupplierOut {
        here: one.is_here(),
        accept: one.count(Disposition::Accept),
        hold: one.count(Disposition::Hold),
        not_accept: one.count(Disposition::NotAccept),
        without_day: one.without_day(),
        next: one.next.map(|next| NextOut {
            severity: next.severity.map(crate::sampling::Severity::code),
            may_reduce: next.may_reduce,
            lots: next.lots,
            text: next_text(words, next),
        }),
        lots: one
            .lots
            .into_iter()
            .map(|lot| LotOut {
                lot: stated(lot.lot),
                day: lot.day.map(|day| day.to_string()),
                disposition: lot.disposition.code(),
                here: lot.here,
            })
            .collect(),
        near_misses: one
            .near_misses
            .into_iter()
            .map(|near| NearMissOut {
                substance: near.substance.symbol(),
                lots: near.lots,
                nearest_sigma: f64::from(near.nearest) / 100.0,
            })
            .collect(),
        trends_looked_at: one.trends_looked_at,
        trends: one
            .trends
            .into_iter()
            .map(|found| TrendOut {
                material: stated(found.material),
                class: found.class.code(),
                element: found.trend.element.symbol(),
                lots: found.trend.lots,
                first_mg_kg: MgPerKg(found.trend.first),
                last_mg_kg: MgPerKg(found.trend.last),
                percent_a_lot: found.trend.percent_a_lot,
                p: found.trend.p,
            })
            .collect(),
        laboratory: one
            .laboratory
            .into_iter()
            .map(|(class, tally)| LabOut {
                class: class.code(),
                agreed: tally.agreed,
                over_was_within: tally.over_was_within,
                below_was_over: tally.below_was_over,
                open_was_within: tally.open_was_within,
                open_was_over: tally.open_was_over,
                open: tally.open,
            })
            .collect(),
        supplier: stated(one.supplier),
        part: stated(one.part),
    }
}

/// How many lots are known, and how they ended.
pub fn count_text(words: &Words, one: &SupplierHistory) -> String {
    let counts = Disposition::ALL.map(|disposition| one.count(disposition).to_string());
    words.with("supplier-counts", &[("accept", &counts[0]), ("hold", &counts[1]), ("not_accept", &counts[2])])
}

/// How severely the next lot is to be inspected, in a sentence.
pub fn next_text(words: &Words, next: Next) -> String {
    let severity = next.severity.map_or("none", crate::sampling::Severity::code);
    let lots = next.lots.to_string();
    let mut text = words.with("supplier-next", &[("severity", severity), ("lots", &lots)]);
    if next.may_reduce {
        text.push_str(words.gap());
        text.push_str(&words.say("supplier-may_reduce"));
    }
    text
}

/// What else is to be said of a supplier's part, a sentence each: near misses, trends, laboratories, open holds, lots that
/// are in no series.
pub fn remarks(words: &Words, one: &SupplierHistory) -> Vec<String> {
    let near = |near: &NearMiss| {
        let (lots, nearest) = (near.lots.to_string(), decimal(f64::from(near.nearest) / 100.0, 2));
        let arguments = [("substance", near.substance.symbol()), ("lots", &lots), ("nearest", &nearest)];
        words.with("supplier-near_miss", &arguments)
    };
    let trend = |found: &MaterialTrend| {
        let trend = &found.trend;
        let class = words.say(&format!("class-{}", found.class.code()));
        words.with(
            "supplier-trend",
            &[
                ("element", trend.element.symbol()),
                ("material", if found.material.is_empty() { &class } else { &found.material }),
                ("lots", &trend.lots.to_string()),
                ("percent", &decimal(trend.percent_a_lot, 1)),
                ("first", &super::phrases::rounded(trend.first)),
                ("last", &super::phrases::rounded(trend.last)),
            ],
        )
    };
    let mut said: Vec<String> = one.near_misses.iter().map(near).collect();
    said.extend(one.trends.iter().map(trend));
    for (class, tally) in &one.laboratory {
        let class = words.say(&format!("class-{}", class.code()));
        let counts = [
            ("over_was_within", tally.over_was_within),
            ("below_was_over", tally.below_was_over),
            ("open_was_within", tally.open_was_within),
            ("open_was_over", tally.open_was_over),
            ("agreed", tally.agreed),
            ("open", tally.open),
        ];
        for (id, count) in counts.into_iter().filter(|(_, count)| *count > 0) {
            let count = count.to_string();
            said.push(
                words.with(&format!("supplier-laboratory-{id}"), &[("count", &count), ("class", &class)]),
            );
        }
    }
    let held: Vec<&str> = one
        .lots
        .iter()
        .filter(|lot| lot.disposition == Disposition::Hold)
        .map(|lot| lot.lot.as_str())
        .collect();
    if !held.is_empty() {
        let no_lot = words.say("no-lot");
        let names: Vec<&str> =
            held.into_iter().map(|lot| if lot.is_empty() { &no_lot } else { lot }).collect();
        said.push(words.with("supplier-open_holds", &[("list", &words.list(&names))]));
    }
    if one.without_day() > 0 {
        said.push(words.with("supplier-without_day", &[("count", &one.without_day().to_string())]));
    }
    said
}
