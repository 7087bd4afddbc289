//! The readings that show the worst of each material of a lot, with their rulers: asked for when a person looks at its parts.

use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::judging::SourceReview;
use plumbline_core::report::explain::About;
use plumbline_core::report::{phrases, rulers};
use plumbline_core::substance::Substance;
use plumbline_core::words::Words;
use serde::Serialize;

use crate::views::StripView;

#[derive(Serialize)]
pub(crate) struct WorstView {
    /// The material, as the summary counts them.
    material: usize,
    substance: &'static str,
    /// Value and name of the reading.
    value: String,
    strip: StripView,
}

/// Every worst outcome of a lot's materials that has a ruler.
pub(crate) fn worst(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    lot: usize,
) -> Vec<WorstView> {
    let settings = inspection.settings();
    // A lot's readings stand in few of the files.
    let mut reviewers: Vec<Option<SourceReview<'_>>> = Vec::new();
    reviewers.resize_with(inspection.sources.len(), || None);
    let own = findings.materials.iter().enumerate().filter(|(_, material)| material.lot == lot);
    let each = own.flat_map(|material| Substance::ALL.map(|substance| (material, substance)));
    each.filter_map(|((index, material), substance)| {
        let about = About::Substance(substance);
        let reading = rulers::worst_reading(inspection, findings, material, about)?;
        let (at, row) = findings.place(reading as usize)?;
        let source = inspection.sources.get(at)?;
        let review = || SourceReview::new(source, &inspection.books, &settings);
        let assessed = reviewers.get_mut(at)?.get_or_insert_with(review).assess(row);
        let picture = rulers::of_substance(inspection, source, &assessed, substance, row)?;
        let sigma = assessed.substances.get(substance as usize).and_then(|judged| judged.used.sigma);
        let value = phrases::value(words, &source.readings.cell(substance.element(), row), sigma, "");
        let name = phrases::reading_name(words, source, row);
        let (substance, strip) = (substance.symbol(), StripView::of(&picture));
        Some(WorstView { material: index, substance, value: format!("{value} · {name}"), strip })
    })
    .collect()
}
