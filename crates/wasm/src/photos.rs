//! Photographs as the page shows them: those given, what each shows, and what it may be offered for.

use plumbline_core::acts::Target;
use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::photo::{Photo, PhotoState};
use plumbline_core::report::photos::{self, Join, Offer, OfferFrom};
use plumbline_core::report::phrases;
use plumbline_core::words::Words;
use serde::Serialize;

#[derive(Serialize)]
pub(crate) struct PhotosView {
    photos: Vec<PhotoView>,
    missing: Vec<PhotoMissing>,
}

#[derive(Serialize)]
pub(crate) struct PhotoView {
    name: String,
    sha256: String,
    width: u32,
    height: u32,
    joined: Vec<PhotoJoin>,
    offered: Vec<PhotoOffer>,
    offered_more: usize,
    offered_from: &'static str,
    ambiguous: bool,
}

#[derive(Serialize)]
pub(crate) struct PhotoJoin {
    target: String,
    /// The file as the act names it.
    file: String,
    index: Option<usize>,
    about: String,
    x: Option<u16>,
    y: Option<u16>,
}

#[derive(Serialize)]
pub(crate) struct PhotoOffer {
    index: u32,
    target: String,
    about: String,
}

/// A photograph that an act names and that can't be shown.
#[derive(Serialize)]
pub(crate) struct PhotoMissing {
    target: String,
    file: String,
    about: String,
    text: String,
    remedy: String,
}

#[derive(Serialize)]
pub(crate) struct PhotoRefusal {
    code: &'static str,
    text: String,
    remedy: String,
}

/// Takes a photograph in, or says why it can't be shown; then nothing has changed.
pub(crate) fn take(inspection: &mut Inspection, photo: Photo) -> Option<PhotoState> {
    if let Err(why) = photo.picture {
        return Some(why);
    }
    let is_it = |one: &Photo, name: &str, sha256: &str| one.name == name && one.sha256 == sha256;
    let (name, sha256) = (photo.name.clone(), photo.sha256.clone());
    inspection.add_photo(photo);
    let refused =
        inspection.photos.iter().find(|one| is_it(one, &name, &sha256))?.picture.as_ref().err().copied()?;
    inspection.photos.retain(|one| !is_it(one, &name, &sha256));
    Some(refused)
}

pub(crate) fn refusal(words: &Words, name: &str, why: PhotoState) -> PhotoRefusal {
    PhotoRefusal {
        code: why.code(),
        text: photos::state(words, name, why),
        remedy: photos::remedy(words, why),
    }
}

pub(crate) fn photos(inspection: &Inspection, findings: &Findings, words: &Words) -> PhotosView {
    let joins = photos::joins(inspection, findings);
    let offers = photos::offers(inspection, findings);
    let about = |join: &Join| photos::shown(inspection, findings, words, join);
    let view = |(at, photo): (usize, &Photo)| {
        let size = photo.picture.as_ref().ok()?.print.size;
        let offer = offers.iter().find(|offer| offer.photo == at);
        let joined = joins.iter().filter(|join| join.photo == Some(at));
        Some(PhotoView {
            name: photo.name.clone(),
            sha256: photo.sha256.clone(),
            width: size.width,
            height: size.height,
            joined: joined
                .map(|join| PhotoJoin {
                    target: join.target.to_text(),
                    file: join.said.file.clone(),
                    index: join.reading,
                    about: about(join),
                    x: join.said.spot.map(|spot| spot.x),
                    y: join.said.spot.map(|spot| spot.y),
                })
                .collect(),
            offered: offer.iter().flat_map(|offer| offered(inspection, findings, words, offer)).collect(),
            offered_more: offer.map_or(0, |offer| offer.more),
            offered_from: match offer.map(|offer| offer.from) {
                None => "",
                Some(OfferFrom::Column) => "column",
                Some(OfferFrom::Name) => "name",
                Some(OfferFrom::Within) => "within",
            },
            ambiguous: offer.is_some_and(Offer::is_ambiguous),
        })
    };
    PhotosView {
        photos: inspection.photos.iter().enumerate().filter_map(view).collect(),
        missing: joins
            .iter()
            .filter(|join| join.photo.is_none())
            .map(|join| PhotoMissing {
                target: join.target.to_text(),
                file: join.said.file.clone(),
                about: about(join),
                text: photos::state(words, &join.said.file, join.state),
                remedy: photos::remedy(words, join.state),
            })
            .collect(),
    }
}

fn offered(inspection: &Inspection, findings: &Findings, words: &Words, offer: &Offer) -> Vec<PhotoOffer> {
    let one = |index: &u32| {
        let (at, row) = findings.place(*index as usize)?;
        let source = inspection.sources.get(at)?;
        Some(PhotoOffer {
            index: *index,
            target: Target::Reading(source.name.clone(), source.readings.line(row)).to_text(),
            about: phrases::reading_name(words, source, row),
        })
    };
    offer.readings.iter().filter_map(one).collect()
}
