//! Rows for the site's table of repeatability, worked out from the repeats of a check sample and offered to a person.
//!
//! The standard's s is the repeatability of a single reading of a typical sample near the limit. An offer says how many
//! readings it rests on and whether the sample lies near the limit; nothing is used until a person takes it over.

use std::collections::{BTreeMap, BTreeSet};

use crate::inspection::{Findings, Inspection};
use crate::judging::{JUDGED, SourceReview};
use crate::material::MaterialClass;
use crate::pool::{self, Repeat};
use crate::quantity::{Coverage, MassFraction};
use crate::reading::{CellState, Identity};
use crate::rules::LowEdge;
use crate::streams::{self, PointFrom, StreamKey};
use crate::substance::{Element, Substance};

/// One row that could be taken over.
#[derive(Clone, Debug)]
pub struct Offer {
    /// The check sample.
    pub sample: String,
    /// The instrument; `None` where the files don't say.
    pub instrument: Option<String>,
    /// The element.
    pub element: Element,
    /// The class.
    pub class: MaterialClass,
    /// How many readings.
    pub readings: usize,
    /// How many of them are records of the history.
    pub earlier: usize,
    /// Their mean in mg/kg.
    pub mean: MassFraction,
    /// One sigma in mg/kg, with the t factor of few readings folded in, rounded up.
    pub sigma: MassFraction,
    /// The measuring time all of them share, in tenths of a second; `None` where a reading doesn't say it, and a record of
    /// the history never does.
    pub deciseconds: Option<u16>,
    /// True where the mean lies between half the low edge and twice the high edge (our own measure of "near").
    pub near_the_limit: bool,
}

impl Offer {
    /// The value of the act that takes the row over.
    pub fn act_value(&self) -> String {
        let (element, class) = (self.element.symbol(), self.class.code());
        let row = format!("element={element};class={class};s={} mg/kg", self.sigma);
        match self.deciseconds {
            Some(tenths) => format!("{row};seconds={}.{}", tenths / 10, tenths % 10),
            None => row,
        }
    }
}

type Key = (String, Option<String>, Option<String>, MaterialClass);

#[derive(Default)]
struct Gathered {
    values: [Vec<MassFraction>; 6],
    seconds: Vec<Option<u16>>,
}

/// Every row that the check readings of an inspection allow, with those of the history beside them: per check sample,
/// instrument, mode, class and element with at least two numbers.
///
/// A class nobody knows gives no offer: the table is by class.
pub fn offers(inspection: &Inspection, findings: &Findings) -> Vec<Offer> {
    let settings = inspection.settings();
    let mut gathered: BTreeMap<Key, Gathered> = BTreeMap::new();
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.checks.get(at).is_none_or(|checks| *checks == 0) {
            continue;
        }
        let first = findings.first_reading.get(at).copied().unwrap_or(0);
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let check = findings.verdicts.get(first + row).is_some_and(|verdicts| verdicts.check);
            let (class, _) = reviewer.class(row);
            if !check || !MaterialClass::BANDED.contains(&class) {
                continue;
            }
            let text = |identity| source.readings.identity(identity, row).map(str::to_owned);
            let sample = text(Identity::Id).unwrap_or_default();
            let key = (sample, text(Identity::Instrument), text(Identity::Mode), class);
            let group = gathered.entry(key).or_default();
            group.seconds.push(reviewer.deciseconds(row));
            for (values, element) in group.values.iter_mut().zip(JUDGED) {
                let cell = source.readings.cell(element, row);
                if cell.state == CellState::Number {
                    values.push(cell.value);
                }
            }
        }
    }
    let earlier = earlier(inspection, findings);
    let mut offers = Vec::new();
    for ((sample, instrument, mode, class), group) in gathered {
        let shared = group.seconds.first().copied().flatten();
        let deciseconds = shared.filter(|tenths| group.seconds.iter().all(|one| *one == Some(*tenths)));
        for (values, element) in group.values.iter().zip(JUDGED) {
            let key = StreamKey {
                instrument: instrument.clone().unwrap_or_default(),
                mode: mode.clone().unwrap_or_default(),
                sample: sample.clone(),
                class,
                element,
            };
            let before = earlier.get(&key).map_or(&[][..], Vec::as_slice);
            // What was never measured here is not offered for it.
            let before = if values.is_empty() { &[][..] } else { before };
            let values = &[values.as_slice(), before].concat();
            let deciseconds = deciseconds.filter(|_| before.is_empty());
            let repeats: Vec<Repeat> = values.iter().map(|value| Repeat::new(*value, None)).collect();
            let shown = pool::repeatability(&repeats, factor(inspection));
            let Some(sigma) = shown.map(|shown| shown.sigma.to_mass_fraction()) else { continue };
            if sigma <= MassFraction::ZERO {
                continue;
            }
            let mean = mean(values);
            offers.push(Offer {
                sample: sample.clone(),
                instrument: instrument.clone(),
                element,
                class,
                readings: values.len(),
                earlier: before.len(),
                mean,
                sigma,
                deciseconds,
                near_the_limit: near(inspection, element, class, mean),
            });
        }
    }
    offers
}

/// The values of the history, by stream; a reading that stands in this inspection too is none of them.
fn earlier(inspection: &Inspection, findings: &Findings) -> BTreeMap<StreamKey, Vec<MassFraction>> {
    let mut earlier: BTreeMap<StreamKey, Vec<MassFraction>> = BTreeMap::new();
    if inspection.history.checks.is_empty() {
        return earlier;
    }
    let now: BTreeSet<_> = streams::records_of(inspection, findings);
    for (key, points) in streams::gather(inspection, &now) {
        let of_history = points.iter().filter(|point| point.from == PointFrom::History);
        let values: Vec<MassFraction> = of_history.map(|point| point.value).collect();
        if !values.is_empty() {
            earlier.insert(key, values);
        }
    }
    earlier
}

fn factor(inspection: &Inspection) -> Coverage {
    inspection.books.screening().map_or(Coverage::THREE, |(_, rule)| rule.sigma_factor)
}

fn mean(values: &[MassFraction]) -> MassFraction {
    let sum: i128 = values.iter().map(|value| i128::from(value.units())).sum();
    let count = i128::try_from(values.len()).unwrap_or(1).max(1);
    MassFraction::from_units(i64::try_from(sum / count).unwrap_or(i64::MAX))
}

fn near(inspection: &Inspection, element: Element, class: MaterialClass, mean: MassFraction) -> bool {
    let Some(substance) = Substance::ALL.into_iter().find(|substance| substance.element() == element) else {
        return false;
    };
    let edges = inspection.books.screening().and_then(|(_, rule)| rule.band(substance, class)?.edges);
    let Some(edges) = edges else { return false };
    let low = match edges.low {
        LowEdge::Fixed(low) => low,
        LowEdge::DetectionLimit { at_most } => at_most,
    };
    let high = edges.high.unwrap_or(low);
    mean.units() >= low.units() / 2 && mean.units() <= high.units().saturating_mul(2)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::history::CheckRecord;
    use crate::inspection::review;
    use crate::reading::{Cell, Source, Written};

    /// An inspection of one file with two readings of a check sample, 1010 and 990 mg/kg lead.
    fn two_checks() -> Inspection {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = crate::settings_file::parse_settings(
            "schema = \"plumbline.settings/1\"\ncheck_samples = [\"CHK-1\"]\nclass = \"polymer\"\n",
            "s",
        )
        .unwrap();
        let mut source = Source { name: "a.csv".into(), sha256: "a".repeat(64), ..Source::default() };
        let readings = &mut source.readings;
        for (line, value) in [(2, 1010), (3, 990)] {
            readings.begin(line);
            for (identity, text) in
                [(Identity::Id, "CHK-1"), (Identity::Instrument, "XRF-1"), (Identity::Seconds, "30")]
            {
                readings.set_identity(identity, text);
            }
            let at = readings.element_index(Element::PB);
            let cell = Cell {
                state: CellState::Number,
                value: MassFraction::from_mg_per_kg(value),
                ..Cell::NO_COLUMN
            };
            readings.push_cell(at, cell, Written::Plain(0));
            readings.close();
        }
        inspection.add_source(source);
        inspection
    }

    fn record(value: i64, instrument: &str) -> CheckRecord {
        CheckRecord {
            instrument: instrument.into(),
            mode: String::new(),
            sample: "CHK-1".into(),
            class: MaterialClass::Polymer,
            element: Element::PB,
            time: "2026-11-01T08:00".into(),
            value: MassFraction::from_mg_per_kg(value),
            sigma: None,
            source: "b".repeat(64),
            line: 2,
        }
    }

    #[test]
    fn readings_of_the_history_make_an_offer_rest_on_more() {
        let mut inspection = two_checks();
        let findings = review(&inspection);
        let alone = offers(&inspection, &findings);
        assert_eq!(alone.len(), 1);
        assert_eq!((alone[0].readings, alone[0].earlier, alone[0].deciseconds), (2, 0, Some(300)));
        inspection.history.checks.extend([record(1003, "XRF-1"), record(4000, "XRF-2")]);
        let more = offers(&inspection, &findings);
        assert_eq!((more.len(), more[0].readings, more[0].earlier), (1, 3, 1));
        assert_eq!((more[0].mean.to_string().as_str(), more[0].deciseconds), ("1001", None));
        assert!(more[0].sigma < alone[0].sigma, "more readings, a smaller factor for few");
        assert!(!more[0].act_value().contains("seconds"));
    }

    #[test]
    fn what_this_inspection_writes_as_history_counts_once_when_it_comes_back() {
        let mut inspection = two_checks();
        let findings = review(&inspection);
        inspection.history.checks = streams::records_of(&inspection, &findings);
        assert_eq!(inspection.history.checks.len(), 2);
        let again = offers(&inspection, &findings);
        assert_eq!((again[0].readings, again[0].earlier), (2, 0));
    }
}
