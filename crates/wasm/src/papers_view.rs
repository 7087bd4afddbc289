//! Which papers there are for others.

use plumbline_core::papers::Offer;
use serde::Serialize;

#[derive(Serialize)]
pub(crate) struct PapersView {
    self_check: u32,
    samples: u32,
    notices: Vec<NoticeView>,
    without_supplier: u32,
    labels: u32,
}

#[derive(Serialize)]
struct NoticeView {
    supplier: String,
    lots: u32,
    file: String,
}

/// What can be written, by what these findings ask for.
pub(crate) fn papers(offer: Offer) -> PapersView {
    PapersView {
        self_check: offer.self_check as u32,
        samples: offer.samples as u32,
        notices: offer
            .notices
            .into_iter()
            .map(|one| NoticeView { supplier: one.supplier, lots: one.lots.len() as u32, file: one.file })
            .collect(),
        without_supplier: offer.without_supplier as u32,
        labels: offer.labels as u32,
    }
}
