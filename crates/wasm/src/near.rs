//! Readings that a little more or less would have judged otherwise, and what the ruler of an outcome draws.

use plumbline_core::inspection::Inspection;
use plumbline_core::judging::{Assessed, SourceReview};
use plumbline_core::quantity::{Coverage, Sigma};
use plumbline_core::reading::Source;
use plumbline_core::report::phrases;
use plumbline_core::ruler::Picture;
use plumbline_core::substance::{Halogen, Substance};

/// What the ruler of a substance draws.
pub(crate) fn of_substance(
    inspection: &Inspection,
    source: &Source,
    assessed: &Assessed,
    substance: Substance,
    row: usize,
) -> Option<Picture> {
    let (_, rule) = inspection.books.screening()?;
    let judged = assessed.substances.get(substance as usize)?;
    let cell = source.readings.cell(substance.element(), row);
    phrases::pictured(rule, substance, assessed.class, &cell, judged)
}

/// What the ruler of a halogen or the total draws.
pub(crate) fn of_halogen(
    inspection: &Inspection,
    source: &Source,
    assessed: &Assessed,
    of: Halogen,
    row: usize,
) -> Option<Picture> {
    let (_, rule) = inspection.books.halogens()?;
    match phrases::element_of(of) {
        Some(element) => {
            let cell = source.readings.cell(element, row);
            phrases::pictured_halogen(rule, of, &cell, &assessed.halogen(of))
        }
        None => phrases::pictured_total(rule, &assessed.total),
    }
}

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
        let assessed = reviewer.assess(row);
        let near = |picture: Option<Picture>, sigma: Option<Sigma>| {
            picture.is_some_and(|picture| picture.is_near_an_edge(self.within, sigma))
        };
        let any = self.substance.is_empty();
        Substance::ALL.iter().zip(&assessed.substances).any(|(substance, judged)| {
            (any || substance.symbol() == self.substance)
                && near(of_substance(self.inspection, source, &assessed, *substance, row), judged.used.sigma)
        }) || Halogen::ALL.iter().any(|of| {
            // "Br" asks for the screening of bromine, as the filter of outcomes does.
            (any || of.name() == self.substance && *of != Halogen::Br)
                && near(
                    of_halogen(self.inspection, source, &assessed, *of, row),
                    match of {
                        Halogen::Total => assessed.total.sigma,
                        _ => assessed.halogen(*of).used.sigma,
                    },
                )
        })
    }
}
