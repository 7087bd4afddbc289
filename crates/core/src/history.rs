//! What earlier inspections found, in a file that travels: check readings and lots.
//!
//! A history is a set of lines, each a fact that never changes; two histories grown apart are merged by uniting their
//! lines. Nothing in it makes a reading better: it shows drift, repeatability and what a supplier's lots were before.

mod file;

use std::collections::BTreeSet;

pub use file::SCHEMA;

use crate::day::Day;
use crate::lot::Disposition;
use crate::material::MaterialClass;
use crate::quantity::MassFraction;
use crate::substance::{Element, Substance};

/// One element of one check reading.
///
/// # Units
/// mg/kg, one sigma.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct CheckRecord {
    /// Instrument; empty where the file didn't say.
    pub instrument: String,
    /// Measuring mode; empty where the file didn't say.
    pub mode: String,
    /// The check sample.
    pub sample: String,
    /// Class of its matrix.
    pub class: MaterialClass,
    /// The element.
    pub element: Element,
    /// When, as the source says it: `2026-11-25T10:15:31`, or as much of it as there is; empty where there is none.
    pub time: String,
    /// The value.
    pub value: MassFraction,
    /// One sigma; `None` where none was printed.
    pub sigma: Option<MassFraction>,
    /// SHA-256 of the file it stands in.
    pub source: String,
    /// The line it stands on.
    pub line: u32,
}

/// One element of the composition of a material of a lot.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Amount {
    /// The element.
    pub element: Element,
    /// The mean of the readings, or the largest limit below which it lies.
    pub value: MassFraction,
    /// True where it was not detected: `value` is then a limit.
    pub below: bool,
}

/// One material of one lot, as an inspection left it.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct LotRecord {
    /// Supplier; empty where not stated.
    pub supplier: String,
    /// Part; empty where not stated.
    pub part: String,
    /// Material; empty where not stated.
    pub material: String,
    /// Lot; empty where not stated.
    pub lot: String,
    /// Class.
    pub class: MaterialClass,
    /// The day of the review; `None` where the settings don't say.
    pub day: Option<Day>,
    /// The disposition of the whole lot.
    pub disposition: Disposition,
    /// The disposition of the material.
    pub of_material: Disposition,
    /// The worst outcome of each substance, as its code.
    pub outcomes: [String; 5],
    /// The nearest a BL came to its band, in hundredths of a sigma; `None` where nothing is BL by a number.
    pub nearest: Option<(Substance, u32)>,
    /// Laboratory results against the screen: substance, the screen's outcome code, `within`, `over` or `open`.
    pub laboratory: Vec<(Substance, String, String)>,
    /// Its composition: what most of the readings have.
    pub composition: Vec<Amount>,
    /// How many readings.
    pub readings: u64,
    /// SHA-256 of the sources' digests, which names the inspection.
    pub inspection: String,
}

/// A history: its records, each once, in order.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct History {
    /// Check readings.
    pub checks: BTreeSet<CheckRecord>,
    /// Lots.
    pub lots: BTreeSet<LotRecord>,
}

impl History {
    /// True where there is nothing in it.
    pub fn is_empty(&self) -> bool {
        self.checks.is_empty() && self.lots.is_empty()
    }

    /// Adds all records of another: a union, so order and repetition change nothing.
    pub fn merge(&mut self, other: History) {
        self.checks.extend(other.checks);
        self.lots.extend(other.lots);
    }
}
