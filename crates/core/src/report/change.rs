//! Materials beside the part's accepted lots, as data and in words.

use serde::Serialize;

use super::json::MgPerKg;
use super::phrases;
use crate::change::{Change, ChangeVerdict, FEWEST_LOTS, Moved};
use crate::quantity::MassFraction;
use crate::words::Words;

#[derive(Serialize)]
pub(super) struct ChangeOut {
    verdict: &'static str,
    lots: usize,
    elements: usize,
    other_class: Option<&'static str>,
    moved: Vec<MovedOut>,
    not_measured: Vec<&'static str>,
    text: String,
}

#[derive(Serialize)]
struct MovedOut {
    element: &'static str,
    from_mg_kg: MgPerKg,
    from_at_most: bool,
    to_mg_kg: MgPerKg,
    to_at_most: bool,
    factor: f64,
    spreads: f64,
    allowed: f64,
}

pub(super) fn out(words: &Words, change: &Change) -> ChangeOut {
    let moved = |one: &Moved| MovedOut {
        element: one.element.symbol(),
        from_mg_kg: MgPerKg(one.from),
        from_at_most: one.from_at_most,
        to_mg_kg: MgPerKg(one.to),
        to_at_most: one.to_at_most,
        factor: one.factor,
        spreads: one.spreads,
        allowed: one.allowed,
    };
    ChangeOut {
        verdict: change.verdict.code(),
        lots: change.lots,
        elements: change.elements,
        other_class: change.other_class.map(crate::material::MaterialClass::code),
        moved: change.moved.iter().map(moved).collect(),
        not_measured: change.not_measured.iter().map(|element| element.symbol()).collect(),
        text: text(words, change),
    }
}

/// What a comparison says, with the elements that moved.
pub fn text(words: &Words, change: &Change) -> String {
    let (lots, elements) = (change.lots.to_string(), change.elements.to_string());
    let class =
        change.other_class.map_or_else(String::new, |class| words.say(&format!("class-{}", class.code())));
    let id = match change.other_class {
        Some(_) => "change-other_class".to_owned(),
        None => format!("change-{}", change.verdict.code()),
    };
    let arguments = [
        ("lots", lots.as_str()),
        ("elements", elements.as_str()),
        ("class", class.as_str()),
        ("fewest", &FEWEST_LOTS.to_string()),
    ];
    let mut said = vec![words.with(&id, &arguments)];
    said.extend(change.moved.iter().map(|one| moved(words, one)));
    if !change.not_measured.is_empty() && change.verdict != ChangeVerdict::TooFew {
        let list: Vec<&str> = change.not_measured.iter().map(|element| element.symbol()).collect();
        said.push(words.with("change-not_measured", &[("list", &words.list(&list))]));
    }
    words.sentences(&said)
}

/// How one element moved.
fn moved(words: &Words, one: &Moved) -> String {
    let bound = |value: MassFraction, at_most: bool| {
        format!("{}{}", if at_most { "< " } else { "" }, phrases::rounded(value))
    };
    words.with(
        "change-moved",
        &[
            ("element", one.element.symbol()),
            ("from", &bound(one.from, one.from_at_most)),
            ("to", &bound(one.to, one.to_at_most)),
            ("factor", &decimal(one.factor, 2)),
            ("spreads", &decimal(one.spreads, 1)),
            ("allowed", &decimal(one.allowed, 1)),
        ],
    )
}

/// A number with one decimal, or with two.
pub(super) fn decimal(number: f64, decimals: u32) -> String {
    let places = 10_i64.pow(decimals.min(6));
    let whole = libm::round(number * places as f64) as i64;
    MassFraction::from_units(whole.saturating_mul(1_000_000 / places)).to_string()
}
