//! Which readings a table shows, in which order, and in which groups. Text is compared once for each different text, not
//! for each row.

use plumbline_core::inspection::{Findings, Inspection, Verdicts};
use plumbline_core::judging::SourceReview;
use plumbline_core::outcome::Outcome;
use plumbline_core::quantity::{Coverage, MassFraction};
use plumbline_core::reading::{CellState, Identity, Source};
use plumbline_core::substance::{Element, Halogen, Substance};
use serde::Deserialize;

use crate::near::Near;

/// What is asked for.
#[derive(Clone, Debug, Deserialize)]
pub(crate) struct Query {
    /// Words, each part of a text in some identity column or the file's name; empty for any.
    pub(crate) text: String,
    /// Words, each part of the text of the column; empty for any.
    pub(crate) part: String,
    pub(crate) lot_name: String,
    pub(crate) supplier: String,
    /// The same of sample, unit or spot.
    pub(crate) sample: String,
    /// A substance's symbol, `Cl` or `total`; empty for any.
    pub(crate) substance: String,
    /// An outcome's code, or `open` for all that are not settled; empty for any.
    pub(crate) outcome: String,
    /// The code of a reading's trust, which is that of its worst element; empty for any.
    pub(crate) trust: String,
    /// How many sigmas a value may lie from an edge of its band; empty for any.
    pub(crate) margin: String,
    /// A lot's index, or -1 for any.
    pub(crate) lot: i32,
    /// `part`, `lot` or `supplier`; empty for no groups.
    pub(crate) group: String,
    /// What to sort by.
    pub(crate) sort: String,
    /// The other way round.
    pub(crate) descending: bool,
}

/// The readings that answer a query.
#[derive(Debug, Default)]
pub(crate) struct Ordered {
    /// In the order shown, groups one after the other.
    pub(crate) indices: Vec<u32>,
    /// Where there are groups.
    pub(crate) groups: Option<Groups>,
}

/// Readings that stand together. A group stands where the first of its readings would stand without groups.
#[derive(Debug, Default, PartialEq, Eq)]
pub(crate) struct Groups {
    /// Where each begins among the indices.
    pub(crate) starts: Vec<u32>,
    /// The worst outcome of the five substances in each, by its place in [`Outcome::ALL`].
    pub(crate) worst: Vec<u8>,
    /// The lot of each, or the place of its text among all texts; `u32::MAX` for readings that are in none.
    pub(crate) keys: Vec<u32>,
}

const SEARCHED: &[Identity] = &[
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
pub(crate) fn order(inspection: &Inspection, findings: &Findings, lots: &[u32], query: &Query) -> Ordered {
    let mut found: Vec<u32> = (0..findings.verdicts.len() as u32).collect();
    if query.lot >= 0 {
        found.retain(|reading| lots.get(*reading as usize) == Some(&(query.lot as u32)));
    }
    if !query.outcome.is_empty() || !query.substance.is_empty() {
        found.retain(|reading| outcome_answers(findings, *reading as usize, query));
    }
    if !query.trust.is_empty() {
        found.retain(|reading| trust_of(findings, *reading) == query.trust);
    }
    let texts: [(&str, &[Identity], bool); 5] = [
        (&query.part, &[Identity::Part], false),
        (&query.lot_name, &[Identity::Lot], false),
        (&query.supplier, &[Identity::Supplier], false),
        (&query.sample, &[Identity::Id, Identity::Unit, Identity::Spot], false),
        (&query.text, SEARCHED, true),
    ];
    for (typed, identities, or_file) in texts {
        // Each word may stand in a field of its own.
        for word in typed.to_lowercase().split_whitespace() {
            keep_texts(inspection, findings, identities, or_file, word, &mut found);
        }
    }
    if !query.margin.is_empty() {
        keep_near(inspection, findings, query, &mut found);
    }
    sort(inspection, findings, query, &mut found);
    let groups = match query.group.as_str() {
        "part" => Some(gather(findings, &text_ranks(inspection, findings, Identity::Part), &mut found)),
        "supplier" => {
            Some(gather(findings, &text_ranks(inspection, findings, Identity::Supplier), &mut found))
        }
        "lot" => Some(gather(findings, lots, &mut found)),
        _ => None,
    };
    Ordered { indices: found, groups }
}

/// What stands under trust: that of a reading's worst element. A check reading is trusted by nothing beside it, and what a
/// person set aside is asked no more.
pub(crate) fn trust_of(findings: &Findings, reading: u32) -> &'static str {
    let at = reading as usize;
    if findings.verdicts.get(at).is_some_and(|verdicts| verdicts.check) {
        "check"
    } else if findings.set_aside.contains_key(&reading) {
        ASIDE
    } else {
        findings.trust.worst(at).code()
    }
}

/// Stands under trust of a reading that a person set aside.
pub(crate) const ASIDE: &str = "aside";

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

/// Walks readings that come in rising order through their sources.
struct Walk<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    at: usize,
}

impl<'a> Walk<'a> {
    fn new(inspection: &'a Inspection, findings: &'a Findings) -> Walk<'a> {
        Walk { inspection, findings, at: 0 }
    }

    /// The number of the source, the source, and the row in it.
    fn step(&mut self, reading: u32) -> Option<(usize, &'a Source, usize)> {
        let reading = reading as usize;
        while self.findings.first_reading.get(self.at + 1).is_some_and(|next| reading >= *next) {
            self.at += 1;
        }
        let source = self.inspection.sources.get(self.at)?;
        Some((self.at, source, reading - self.findings.first_reading.get(self.at)?))
    }
}

/// Keeps readings of which one of these texts holds `word`, which is in small letters.
fn keep_texts(
    inspection: &Inspection,
    findings: &Findings,
    identities: &[Identity],
    or_file: bool,
    word: &str,
    found: &mut Vec<u32>,
) {
    let mut walk = Walk::new(inspection, findings);
    // Of each text of a source: not looked at yet, no, yes.
    let (mut known, mut known_of, mut in_name): (Vec<Option<bool>>, usize, bool) =
        (Vec::new(), usize::MAX, false);
    found.retain(|reading| {
        let Some((at, source, row)) = walk.step(*reading) else { return false };
        if at != known_of {
            known_of = at;
            known.clear();
            known.resize(source.readings.pool.len() + 1, None);
            in_name = or_file && holds(&source.name, word);
        }
        in_name
            || identities.iter().any(|identity| {
                let id = source.readings.identity_id(*identity, row);
                let (Some(slot), Some(text)) = (known.get_mut(id.number()), source.readings.pool.get(id))
                else {
                    return false;
                };
                *slot.get_or_insert_with(|| holds(text, word))
            })
    });
}

/// Whether a text holds a word that is in small letters, whatever letters it has itself.
fn holds(text: &str, word: &str) -> bool {
    if text.is_ascii() && word.is_ascii() {
        return text.as_bytes().windows(word.len()).any(|piece| piece.eq_ignore_ascii_case(word.as_bytes()));
    }
    text.to_lowercase().contains(word)
}

/// Keeps readings with a value near an edge of its band; a margin that can't be read keeps none.
fn keep_near(inspection: &Inspection, findings: &Findings, query: &Query, found: &mut Vec<u32>) {
    let Some(within) = Coverage::from_text(&query.margin) else { return found.clear() };
    let settings = inspection.settings();
    let near = Near { inspection, within, substance: &query.substance };
    let mut walk = Walk::new(inspection, findings);
    let mut reviewer: Option<(usize, SourceReview<'_>)> = None;
    found.retain(|reading| {
        let Some((at, source, row)) = walk.step(*reading) else { return false };
        if reviewer.as_ref().is_none_or(|(of, _)| *of != at) {
            reviewer = Some((at, SourceReview::new(source, &inspection.books, &settings)));
        }
        reviewer.as_ref().is_some_and(|(_, reviewer)| near.holds(source, reviewer, row))
    });
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
        by_key(found, |reading| ranks.get(reading as usize).copied().unwrap_or(u32::MAX));
    } else if query.sort == "worst" {
        by_key(found, |reading| {
            std::cmp::Reverse(findings.verdicts.get(reading as usize).map(Verdicts::worst))
        });
    } else if query.sort == "total" {
        let settings = inspection.settings();
        let mut walk = Walk::new(inspection, findings);
        let mut reviewer: Option<(usize, SourceReview<'_>)> = None;
        by_key(found, |reading| {
            let Some((at, source, row)) = walk.step(reading) else { return i64::MIN };
            if reviewer.as_ref().is_none_or(|(of, _)| *of != at) {
                reviewer = Some((at, SourceReview::new(source, &inspection.books, &settings)));
            }
            let total = reviewer.as_ref().map(|(_, reviewer)| reviewer.assess(row).total);
            total.and_then(|total| total.high.or(total.low)).map_or(i64::MIN, MassFraction::units)
        });
    } else if let Some(element) = Element::from_symbol(&query.sort) {
        // Not measured first, then not detected, then by number: what is missing is what needs a person.
        let mut walk = Walk::new(inspection, findings);
        by_key(found, |reading| {
            let cell = walk.step(reading).map(|(_, source, row)| source.readings.cell(element, row));
            match cell.map(|cell| (cell.state, cell.value.units())) {
                Some((CellState::Number | CellState::AboveRange | CellState::BelowDetection, units)) => units,
                Some((CellState::NotDetected, _)) => i64::MIN + 1,
                _ => i64::MIN,
            }
        });
    }
    if query.descending {
        found.reverse();
    }
}

/// Sorts readings that stand in rising order; those with the same key stay in it.
fn by_key<K: Ord>(found: &mut [u32], mut key: impl FnMut(u32) -> K) {
    let mut keyed: Vec<(K, u32)> = found.iter().map(|reading| (key(*reading), *reading)).collect();
    keyed.sort_unstable();
    for (slot, (_, reading)) in found.iter_mut().zip(keyed) {
        *slot = reading;
    }
}

/// A text by its first letters and whole, so that most comparisons are one of two numbers.
type ByText<'a> = (u128, &'a str);

fn by_text(text: &str) -> ByText<'_> {
    let mut first = [0; 16];
    for (slot, byte) in first.iter_mut().zip(text.bytes()) {
        *slot = byte;
    }
    (u128::from_be_bytes(first), text)
}

/// The place of every reading's text among all different texts of an identity; no text comes last.
fn text_ranks(inspection: &Inspection, findings: &Findings, identity: Identity) -> Vec<u32> {
    const USED: u32 = 0;
    const UNUSED: u32 = u32::MAX;
    // Per source and text; first whether the identity uses it, then its place.
    let mut places: Vec<Vec<u32>> =
        inspection.sources.iter().map(|source| vec![UNUSED; source.readings.pool.len() + 1]).collect();
    let readings = findings.verdicts.len() as u32;
    let mut walk = Walk::new(inspection, findings);
    for reading in 0..readings {
        let Some((at, source, row)) = walk.step(reading) else { continue };
        let id = source.readings.identity_id(identity, row);
        if id.is_some()
            && let Some(slot) = places.get_mut(at).and_then(|of| of.get_mut(id.number()))
        {
            *slot = USED;
        }
    }
    let mut texts: Vec<(ByText<'_>, u32, u32)> = Vec::new();
    for (at, (source, used)) in inspection.sources.iter().zip(&places).enumerate() {
        for (number, text) in source.readings.pool.texts().enumerate() {
            if used.get(number + 1) == Some(&USED) {
                texts.push((by_text(text), at as u32, number as u32 + 1));
            }
        }
    }
    texts.sort_unstable();
    let (mut rank, mut before) = (0, None);
    for (text, at, number) in &texts {
        if before.is_some_and(|before| before != *text) {
            rank += 1;
        }
        before = Some(*text);
        if let Some(slot) = places.get_mut(*at as usize).and_then(|of| of.get_mut(*number as usize)) {
            *slot = rank;
        }
    }
    let mut walk = Walk::new(inspection, findings);
    (0..readings)
        .map(|reading| {
            let place = walk.step(reading).and_then(|(at, source, row)| {
                places.get(at)?.get(source.readings.identity_id(identity, row).number())
            });
            place.copied().unwrap_or(UNUSED)
        })
        .collect()
}

/// Puts readings of one key together, keeping their order, and the groups in the order of their first readings.
fn gather(findings: &Findings, keys: &[u32], found: &mut [u32]) -> Groups {
    const NEW: u32 = u32::MAX;
    let key = |reading: u32| keys.get(reading as usize).copied().unwrap_or(u32::MAX);
    // No key is the one past the largest.
    let most = found.iter().map(|reading| key(*reading)).filter(|key| *key != u32::MAX).max();
    let past = most.map_or(0, |most| most as usize + 1);
    let place = |reading: u32| (key(reading) as usize).min(past);
    let mut group_of = vec![NEW; past + 1];
    let (mut counts, mut groups): (Vec<u32>, Groups) = (Vec::new(), Groups::default());
    for reading in found.iter() {
        let Some(group) = group_of.get_mut(place(*reading)) else { continue };
        if *group == NEW {
            *group = counts.len() as u32;
            counts.push(0);
            groups.worst.push(0);
            groups.keys.push(key(*reading));
        }
        let at = *group as usize;
        let worst = findings.verdicts.get(*reading as usize).map_or(Outcome::NotMeasured, Verdicts::worst);
        if let (Some(count), Some(slot)) = (counts.get_mut(at), groups.worst.get_mut(at)) {
            *count += 1;
            *slot = (*slot).max(worst as u8);
        }
    }
    let mut start = 0;
    for count in &counts {
        groups.starts.push(start);
        start += count;
    }
    let mut next = groups.starts.clone();
    let mut together = vec![0; found.len()];
    for reading in found.iter() {
        let next = group_of.get(place(*reading)).and_then(|group| next.get_mut(*group as usize));
        if let Some(next) = next
            && let Some(slot) = together.get_mut(*next as usize)
        {
            *slot = *reading;
            *next += 1;
        }
    }
    found.copy_from_slice(&together);
    groups
}

#[cfg(test)]
mod tests {
    use super::*;
    use plumbline_core::inspection::review;
    use plumbline_core::outcome::Reason;
    use plumbline_core::report::rulers;
    use plumbline_intake::SourceReader;
    use std::fmt::Write;

    /// Invented tables in which names come twice, are missing, differ only in capitals, and stand in two files.
    fn inspection() -> (Inspection, Findings) {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = plumbline_core::settings_file::parse_settings(
            "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\ncheck_samples = [\"CHECK\"]\n",
            "s",
        )
        .unwrap();
        let mut seed = 7_u32;
        let mut next = |below: u32| {
            seed = seed.wrapping_mul(1_103_515_245).wrapping_add(12_345);
            (seed >> 8) % below
        };
        for file in ["one.csv", "Zwei Straße.csv"] {
            let mut text = "Sample,Spot,Part,Lot,Supplier,Class,Cd ppm,Cd u (1s),Pb ppm,Pb u (1s),Br ppm,Br u (1s),Cl ppm,Cl u (1s),As ppm\n"
                .to_owned();
            for row in 0..150 {
                let pick = |of: &[&str], at: u32| of[at as usize % of.len()].to_owned();
                let sample = pick(&["S1", "s1", "S2", "CHECK", "äß", ""], next(6));
                let part = pick(&["Clip", "CLIP", "Housing", "Gehäuse", ""], next(5));
                let lot = pick(&["L1", "L10", "L2", ""], next(4));
                let supplier = pick(&["Alder", "Birch", "alder works", ""], next(4));
                let class = pick(&["polymer", "metal", "composite", "", "polymer"], next(5));
                let _ = write!(text, "{sample},{row},{part},{lot},{supplier},{class}");
                for edge in [100, 1000, 900, 900] {
                    let value = match next(8) {
                        0 => "<LOD".to_owned(),
                        1 => String::new(),
                        2 => format!("<{}", next(50)),
                        3 => format!("-{}", next(9)),
                        _ => (next(2 * edge)).to_string(),
                    };
                    let _ = write!(text, ",{value},{}", next(edge / 10));
                }
                let _ = writeln!(text, ",{}", next(40));
            }
            let mut reader = SourceReader::new(file, &inspection.settings());
            reader.push(text.as_bytes());
            inspection.add_sources(reader.finish());
        }
        let findings = review(&inspection);
        assert_eq!(findings.verdicts.len(), 300);
        (inspection, findings)
    }

    fn any() -> Query {
        Query {
            text: String::new(),
            part: String::new(),
            lot_name: String::new(),
            supplier: String::new(),
            sample: String::new(),
            substance: String::new(),
            outcome: String::new(),
            trust: String::new(),
            margin: String::new(),
            lot: -1,
            group: String::new(),
            sort: "file".to_owned(),
            descending: false,
        }
    }

    /// The same question answered slowly and plainly, a row at a time, with numbers as fractions of whole ones.
    struct Oracle<'a> {
        inspection: &'a Inspection,
        findings: &'a Findings,
        lots: Vec<u32>,
    }

    impl Oracle<'_> {
        fn text(&self, reading: u32, identity: Identity) -> Option<String> {
            let (at, row) = self.findings.place(reading as usize).unwrap();
            self.inspection.sources[at].readings.identity(identity, row).map(str::to_owned)
        }

        fn says(&self, reading: u32, typed: &str, identities: &[Identity], file: bool) -> bool {
            let (at, _) = self.findings.place(reading as usize).unwrap();
            typed.to_lowercase().split_whitespace().all(|word| {
                let name = file.then(|| self.inspection.sources[at].name.clone());
                identities
                    .iter()
                    .filter_map(|identity| self.text(reading, *identity))
                    .chain(name)
                    .any(|text| text.to_lowercase().contains(word))
            })
        }

        fn near(&self, reading: u32, tenths: i128, substance: &str) -> bool {
            let (at, row) = self.findings.place(reading as usize).unwrap();
            let (source, settings) = (&self.inspection.sources[at], self.inspection.settings());
            let reviewer = SourceReview::new(source, &self.inspection.books, &settings);
            let assessed = reviewer.assess(row);
            let rule = self.inspection.books.screening().unwrap().1;
            let close = |x: MassFraction, edge: MassFraction, sigma: i128| {
                let away = i128::from(x.units()) - i128::from(edge.units());
                100 * away * away <= tenths * tenths * sigma * sigma
            };
            let by_band = Substance::ALL.iter().any(|one| {
                let judged = assessed.substances[*one as usize];
                let cell = source.readings.cell(one.element(), row);
                let edges = rule.band(*one, assessed.class).and_then(|band| band.edges);
                let (Some(edges), Some(error)) = (edges, cell.printed_error) else { return false };
                let low = match edges.low {
                    plumbline_core::rules::LowEdge::Fixed(low) => Some(low),
                    plumbline_core::rules::LowEdge::DetectionLimit { .. } => cell.detection_limit,
                };
                (substance.is_empty() || one.symbol() == substance)
                    && cell.state == CellState::Number
                    && judged.used.sigma.is_some()
                    && low.is_some_and(|low| {
                        [Some(low), edges.high]
                            .iter()
                            .flatten()
                            .any(|edge| close(cell.value, *edge, i128::from(error.units())))
                    })
            });
            let by_limit =
                [(Halogen::Cl, Element::CL), (Halogen::Br, Element::BR)].iter().any(|(of, element)| {
                    let judged = assessed.halogen(*of);
                    let cell = source.readings.cell(*element, row);
                    let limit = self.inspection.books.halogens().unwrap().1.limit(*of);
                    (substance.is_empty() || (substance == "Cl" && *of == Halogen::Cl))
                        && cell.state == CellState::Number
                        && judged.used.sigma.is_some()
                        && judged.reason != Some(Reason::LayerNotResolved)
                        && cell
                            .printed_error
                            .is_some_and(|error| close(cell.value, limit, i128::from(error.units())))
                });
            let total = substance.is_empty() || substance == "total";
            by_band || by_limit || (total && self.near_total(&assessed, tenths))
        }

        fn near_total(&self, assessed: &plumbline_core::judging::Assessed, tenths: i128) -> bool {
            let rule = self.inspection.books.halogens().unwrap().1;
            let within = Coverage::from_tenths(u8::try_from(tenths).unwrap()).unwrap();
            rulers::pictured_total(rule, &assessed.total)
                .is_some_and(|picture| picture.is_near_an_edge(within, assessed.total.sigma))
        }

        fn answer(&self, query: &Query) -> (Vec<u32>, Vec<(u32, u8)>) {
            let mut found: Vec<u32> = (0..self.findings.verdicts.len() as u32)
                .filter(|reading| {
                    let lot = query.lot < 0 || self.lots[*reading as usize] == query.lot as u32;
                    let outcome = (query.outcome.is_empty() && query.substance.is_empty())
                        || outcome_answers(self.findings, *reading as usize, query);
                    let tenths = |margin: &str| (margin.parse::<f64>().unwrap() * 10.0).round() as i128;
                    lot && outcome
                        && self.says(*reading, &query.text, SEARCHED, true)
                        && self.says(*reading, &query.part, &[Identity::Part], false)
                        && self.says(*reading, &query.lot_name, &[Identity::Lot], false)
                        && self.says(*reading, &query.supplier, &[Identity::Supplier], false)
                        && self.says(*reading, &query.sample, &SEARCHED[..3], false)
                        && (query.margin.is_empty()
                            || self.near(*reading, tenths(&query.margin), &query.substance))
                })
                .collect();
            let identity = |name: &str| match name {
                "part" => Some(Identity::Part),
                "supplier" => Some(Identity::Supplier),
                "lot" => Some(Identity::Lot),
                "id" => Some(Identity::Id),
                _ => None,
            };
            match query.sort.as_str() {
                "worst" => found.sort_by_key(|reading| {
                    std::cmp::Reverse(self.findings.verdicts[*reading as usize].worst())
                }),
                "Pb" => found.sort_by_key(|reading| {
                    let (at, row) = self.findings.place(*reading as usize).unwrap();
                    let cell = self.inspection.sources[at].readings.cell(Element::PB, row);
                    match cell.state {
                        CellState::Number | CellState::AboveRange | CellState::BelowDetection => {
                            (2, cell.value.units())
                        }
                        CellState::NotDetected => (1, 0),
                        _ => (0, 0),
                    }
                }),
                name => {
                    if let Some(identity) = identity(name) {
                        found.sort_by_key(|reading| {
                            let text = self.text(*reading, identity);
                            (text.is_none(), text)
                        });
                    }
                }
            }
            if query.descending {
                found.reverse();
            }
            if query.group.is_empty() {
                return (found, Vec::new());
            }
            let key = |reading: u32| match query.group.as_str() {
                "lot" => Some(self.lots[reading as usize].to_string()),
                name => self.text(reading, identity(name).unwrap()),
            };
            let mut groups: Vec<(Option<String>, Vec<u32>)> = Vec::new();
            for reading in found {
                match groups.iter_mut().find(|(of, _)| *of == key(reading)) {
                    Some((_, readings)) => readings.push(reading),
                    None => groups.push((key(reading), vec![reading])),
                }
            }
            let worst = |readings: &[u32]| {
                readings.iter().map(|one| self.findings.verdicts[*one as usize].worst() as u8).max().unwrap()
            };
            let heads = groups.iter().map(|(_, readings)| (readings.len() as u32, worst(readings))).collect();
            (groups.into_iter().flat_map(|(_, readings)| readings).collect(), heads)
        }
    }

    fn queries() -> Vec<Query> {
        let mut all = Vec::new();
        for sort in ["file", "worst", "part", "lot", "supplier", "id", "Pb"] {
            for group in ["", "part", "lot", "supplier"] {
                for descending in [false, true] {
                    let (sort, group) = (sort.to_owned(), group.to_owned());
                    all.push(Query { group, sort, descending, ..any() });
                }
            }
        }
        let filters: [&dyn Fn(&mut Query); 14] = [
            &|query| query.text = "clip alder".into(),
            &|query| query.text = "STRASSE".into(),
            &|query| query.text = "straße s1".into(),
            &|query| query.part = "gehÄuse".into(),
            &|query| query.lot_name = "l1".into(),
            &|query| query.supplier = "WORKS alder".into(),
            &|query| query.sample = "Ä".into(),
            &|query| query.sample = "14".into(),
            &|query| query.margin = "1.5".into(),
            &|query| (query.margin, query.substance) = ("3".into(), "Pb".into()),
            &|query| (query.margin, query.substance) = ("5".into(), "Cl".into()),
            &|query| (query.margin, query.substance) = ("2".into(), "total".into()),
            &|query| (query.outcome, query.substance) = ("open".into(), "Cd".into()),
            &|query| query.outcome = "OL".into(),
        ];
        for filter in filters {
            for group in ["", "lot"] {
                let mut query = Query { group: group.into(), sort: "worst".into(), ..any() };
                filter(&mut query);
                all.push(query);
            }
        }
        all
    }

    #[test]
    fn filters_orders_and_groups_are_those_that_looking_at_every_row_gives() {
        let (inspection, findings) = inspection();
        let lots = findings.lots_of_readings();
        let oracle = Oracle { inspection: &inspection, findings: &findings, lots: lots.clone() };
        let mut some = 0;
        for query in queries() {
            let found = order(&inspection, &findings, &lots, &query);
            let (readings, heads) = oracle.answer(&query);
            assert_eq!(found.indices, readings, "{query:?}");
            some += usize::from(!readings.is_empty() && readings.len() < 300);
            let groups = found.groups.unwrap_or_default();
            let ends = groups.starts.iter().skip(1).copied().chain([found.indices.len() as u32]);
            let counts = groups.starts.iter().zip(ends).map(|(start, end)| end - start);
            assert_eq!(counts.zip(groups.worst.iter().copied()).collect::<Vec<_>>(), heads, "{query:?}");
            assert_eq!(groups.keys.len(), heads.len());
        }
        assert!(some >= 24, "most filters leave some readings and take some away, {some} did");
    }

    #[test]
    fn a_margin_that_cannot_be_read_shows_nothing() {
        let (inspection, findings) = inspection();
        for margin in ["x", "0", "-1", "5.1", "1,5"] {
            let query = Query { margin: margin.into(), ..any() };
            assert!(order(&inspection, &findings, &[], &query).indices.is_empty(), "{margin}");
        }
    }

    #[test]
    fn readings_of_no_lot_stand_in_a_group_of_their_own() {
        let (inspection, findings) = inspection();
        let lots = findings.lots_of_readings();
        let found = order(&inspection, &findings, &lots, &Query { group: "lot".into(), ..any() });
        let groups = found.groups.unwrap();
        let checks = groups.keys.iter().position(|key| *key == u32::MAX).unwrap();
        let first = found.indices[groups.starts[checks] as usize];
        assert!(findings.verdicts[first as usize].check);
    }
}
