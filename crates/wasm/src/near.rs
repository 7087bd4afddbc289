//! Readings that a little more or less would have judged otherwise.

use plumbline_core::inspection::Inspection;
use plumbline_core::judging::SourceReview;
use plumbline_core::material::MaterialClass;
use plumbline_core::quantity::{Coverage, Sigma};
use plumbline_core::reading::{CellState, Source};
use plumbline_core::report::rulers;
use plumbline_core::ruler::Picture;
use plumbline_core::substance::{Element, Halogen, Substance};

/// The question whether a reading lies near an edge.
pub(crate) struct Near<'a> {
    pub(crate) inspection: &'a Inspection,
    pub(crate) within: Coverage,
    /// A substance's symbol, `Cl` or `total`; empty for any of the eight.
    pub(crate) substance: &'a str,
}

impl Near<'_> {
    /// True where a value that was asked for lies within so many of its sigmas of an edge of its band, or of its limit.
    pub(crate) fn holds(&self, source: &Source, reviewer: &SourceReview<'_>, row: usize) -> bool {
        let any = self.substance.is_empty();
        let near = |picture: Option<Picture>, sigma: Option<Sigma>| {
            picture.is_some_and(|picture| picture.is_near_an_edge(self.within, sigma))
        };
        let is_number = |element| source.readings.cell(element, row).state == CellState::Number;
        let class = reviewer.class(row).0;
        let by_band = |substance: &Substance| {
            let cell = source.readings.cell(substance.element(), row);
            // Judging is what costs: only of what is a number and has a band of its own.
            if cell.state != CellState::Number
                || matches!(class, MaterialClass::Unknown | MaterialClass::Plated)
            {
                return false;
            }
            let Some((_, rule)) = self.inspection.books.screening() else { return false };
            let judged = reviewer.judge_as(*substance, class, row);
            near(rulers::pictured(rule, *substance, class, &cell, &judged), judged.used.sigma)
        };
        let asked = |substance: &&Substance| any || substance.symbol() == self.substance;
        if Substance::ALL.iter().filter(asked).any(by_band) {
            return true;
        }
        // "Br" asks for the screening of bromine, as the filter of outcomes does.
        let limits: &[Halogen] = match self.substance {
            "" => &Halogen::ALL,
            "Cl" => &[Halogen::Cl],
            "total" => &[Halogen::Total],
            _ => &[],
        };
        if limits.is_empty() || !(is_number(Element::CL) || is_number(Element::BR)) {
            return false;
        }
        let assessed = reviewer.assess(row);
        limits.iter().any(|of| {
            let sigma = match of {
                Halogen::Total => assessed.total.sigma,
                _ => assessed.halogen(*of).used.sigma,
            };
            near(rulers::of_halogen(self.inspection, source, &assessed, *of, row), sigma)
        })
    }
}
