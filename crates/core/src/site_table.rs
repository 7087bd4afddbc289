//! Rows for the site's table of repeatability, worked out from the repeats of a check sample and offered to a person.
//!
//! The standard's s is the repeatability of a single reading of a typical sample near the limit. An offer says how many
//! readings it rests on and whether the sample lies near the limit; nothing is used until a person takes it over.

use std::collections::BTreeMap;

use crate::inspection::{Findings, Inspection};
use crate::judging::{JUDGED, SourceReview};
use crate::material::MaterialClass;
use crate::pool::{self, Repeat};
use crate::quantity::{Coverage, MassFraction};
use crate::reading::{CellState, Identity};
use crate::rules::LowEdge;
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
    /// Their mean in mg/kg.
    pub mean: MassFraction,
    /// One sigma in mg/kg, with the t factor of few readings folded in, rounded up.
    pub sigma: MassFraction,
    /// The measuring time all of them share, in tenths of a second.
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

/// Every row that the check readings of an inspection allow: per check sample, instrument, mode, class and element with
/// at least two numbers.
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
    let mut offers = Vec::new();
    for ((sample, instrument, _, class), group) in gathered {
        let shared = group.seconds.first().copied().flatten();
        let deciseconds = shared.filter(|tenths| group.seconds.iter().all(|one| *one == Some(*tenths)));
        for (values, element) in group.values.iter().zip(JUDGED) {
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
                mean,
                sigma,
                deciseconds,
                near_the_limit: near(inspection, element, class, mean),
            });
        }
    }
    offers
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
