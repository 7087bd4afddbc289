//! Which readings a table shows, and in which order. Text is compared once for each different text, not for each row.

use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::judging::SourceReview;
use plumbline_core::outcome::Outcome;
use plumbline_core::quantity::MassFraction;
use plumbline_core::reading::{CellState, Identity};
use plumbline_core::substance::{Halogen, Substance};
use serde::Deserialize;

/// What is asked for.
#[derive(Clone, Debug, Deserialize)]
pub(crate) struct Query {
    /// Words, each part of a text in some identity column or the file's name; empty for any.
    pub(crate) text: String,
    /// A substance's symbol, `Cl` or `total`; empty for any.
    pub(crate) substance: String,
    /// An outcome's code, or `open` for all that are not settled; empty for any.
    pub(crate) outcome: String,
    /// A lot's index, or -1 for any.
    pub(crate) lot: i32,
    /// What to sort by.
    pub(crate) sort: String,
    /// The other way round.
    pub(crate) descending: bool,
}

const SEARCHED: [Identity; 8] = [
    Identity::Id,
    Identity::Unit,
    Identity::Spot,
    Identity::Part,
    Identity::Material,
    Identity::Lot,
    Identity::Supplier,
    Identity::Class,
];

/// The readings that answer the query, in its order.
pub(crate) fn order(inspection: &Inspection, findings: &Findings, lots: &[u32], query: &Query) -> Vec<u32> {
    let mut found: Vec<u32> = (0..findings.verdicts.len() as u32).collect();
    if query.lot >= 0 {
        found.retain(|reading| lots.get(*reading as usize) == Some(&(query.lot as u32)));
    }
    if !query.outcome.is_empty() || !query.substance.is_empty() {
        found.retain(|reading| outcome_answers(findings, *reading as usize, query));
    }
    // Each word may stand in a field of its own.
    for word in query.text.to_lowercase().split_whitespace() {
        let hits = text_hits(inspection, findings, word);
        found.retain(|reading| hits.get(*reading as usize) == Some(&true));
    }
    sort(inspection, findings, query, &mut found);
    found
}

fn outcome_answers(findings: &Findings, reading: usize, query: &Query) -> bool {
    let Some(verdicts) = findings.verdicts.get(reading) else { return false };
    let wanted = |outcome: Outcome| match query.outcome.as_str() {
        "" => true,
        "open" => !outcome.is_settled(),
        code => outcome.code() == code,
    };
    match query.substance.as_str() {
        "" => verdicts.substances.iter().chain(verdicts.halogens.iter()).any(|outcome| wanted(*outcome)),
        name => match (Substance::from_symbol(name), name) {
            (Some(substance), _) => verdicts.substances.get(substance as usize).is_some_and(|o| wanted(*o)),
            (None, "Cl") => verdicts.halogens.first().is_some_and(|o| wanted(*o)),
            (None, "total") => verdicts.halogens.get(Halogen::Total as usize).is_some_and(|o| wanted(*o)),
            _ => false,
        },
    }
}

fn text_hits(inspection: &Inspection, findings: &Findings, needle: &str) -> Vec<bool> {
    let mut hits = vec![false; findings.verdicts.len()];
    for (at, source) in inspection.sources.iter().enumerate() {
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        let rows = findings.first_reading.get(at + 1).copied().unwrap_or(first) - first;
        let in_name = source.name.to_lowercase().contains(needle);
        // Number 0 is "no text", which holds nothing.
        let mut texts = vec![false];
        texts.extend(source.readings.pool.texts().map(|text| text.to_lowercase().contains(needle)));
        for row in 0..rows {
            let hit = in_name
                || SEARCHED.iter().any(|identity| {
                    let id = source.readings.identity_id(*identity, row);
                    texts.get(id.number()) == Some(&true)
                });
            if let Some(slot) = hits.get_mut(first + row) {
                *slot = hit;
            }
        }
    }
    hits
}

fn sort(inspection: &Inspection, findings: &Findings, query: &Query, found: &mut [u32]) {
    let by_identity = match query.sort.as_str() {
        "id" => Some(Identity::Id),
        "part" => Some(Identity::Part),
        "lot" => Some(Identity::Lot),
        "supplier" => Some(Identity::Supplier),
        "material" => Some(Identity::Material),
        "class" => Some(Identity::Class),
        _ => None,
    };
    if let Some(identity) = by_identity {
        let ranks = text_ranks(inspection, findings, identity);
        found.sort_by_key(|reading| ranks.get(*reading as usize).copied().unwrap_or(u32::MAX));
    } else if query.sort == "worst" {
        found.sort_by_key(|reading| {
            std::cmp::Reverse(
                findings.verdicts.get(*reading as usize).map(plumbline_core::inspection::Verdicts::worst),
            )
        });
    } else if query.sort == "total" {
        let settings = inspection.settings();
        let reviewers: Vec<SourceReview<'_>> = inspection
            .sources
            .iter()
            .map(|source| SourceReview::new(source, &inspection.books, &settings))
            .collect();
        found.sort_by_cached_key(|reading| {
            let total = findings
                .place(*reading as usize)
                .and_then(|(at, row)| reviewers.get(at).map(|reviewer| reviewer.assess(row).total));
            total.and_then(|total| total.high.or(total.low)).map_or(i64::MIN, MassFraction::units)
        });
    } else if let Some(element) = element_of(&query.sort) {
        // Not measured first, then not detected, then by number: what is missing is what needs a person.
        found.sort_by_cached_key(|reading| {
            let Some((at, row)) = findings.place(*reading as usize) else { return (0, i64::MIN) };
            let cell = inspection.sources.get(at).map(|source| source.readings.cell(element, row));
            match cell.map(|cell| (cell.state, cell.value.units())) {
                Some((CellState::Number | CellState::AboveRange | CellState::BelowDetection, units)) => {
                    (2, units)
                }
                Some((CellState::NotDetected, _)) => (1, 0),
                _ => (0, 0),
            }
        });
    }
    if query.descending {
        found.reverse();
    }
}

fn element_of(name: &str) -> Option<plumbline_core::substance::Element> {
    plumbline_core::substance::Element::from_symbol(name)
}

/// The place of every reading's text among all different texts of an identity; no text comes last.
fn text_ranks(inspection: &Inspection, findings: &Findings, identity: Identity) -> Vec<u32> {
    let mut texts: Vec<&str> =
        inspection.sources.iter().flat_map(|source| source.readings.pool.texts()).collect();
    texts.sort_unstable();
    texts.dedup();
    let mut ranks = vec![u32::MAX; findings.verdicts.len()];
    for (at, source) in inspection.sources.iter().enumerate() {
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        let rows = findings.first_reading.get(at + 1).copied().unwrap_or(first) - first;
        let mut of_pool = vec![u32::MAX];
        of_pool
            .extend(source.readings.pool.texts().map(|text| texts.binary_search(&text).unwrap_or(0) as u32));
        for row in 0..rows {
            let id = source.readings.identity_id(identity, row);
            if let (Some(slot), Some(rank)) = (ranks.get_mut(first + row), of_pool.get(id.number())) {
                *slot = *rank;
            }
        }
    }
    ranks
}
