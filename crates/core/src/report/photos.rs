//! Photographs and what they show: who joined which to what, and which a person may be offered to join.

use std::collections::BTreeMap;

use serde::Serialize;

use crate::acts::Target;
use crate::inspection::{Findings, Inspection};
use crate::photo::{Photo, PhotoSaid, PhotoState};
use crate::reading::{Identity, Source};
use crate::report::phrases;
use crate::text_pool::TextId;
use crate::words::Words;

/// Most words of a file's name that are looked at. (Our own choice: a sample id stands in the first few.)
const NAME_WORDS: usize = 12;
/// Most readings that one photograph is offered for; the count beyond them is kept.
const OFFERED: usize = 20;

/// One photograph that somebody named for a reading or a material.
#[derive(Clone, Debug)]
pub struct Join {
    /// What it is said to show.
    pub target: Target,
    /// Which file, and where on it.
    pub said: PhotoSaid,
    /// The photograph among those given, where it can be shown.
    pub photo: Option<usize>,
    /// Whether it can be shown.
    pub state: PhotoState,
    /// The reading it shows, over all sources; `None` where it shows a material, or there is no such reading.
    pub reading: Option<usize>,
    /// The material it shows.
    pub material: Option<usize>,
}

impl Join {
    /// Whether what it is said to show is there.
    pub const fn is_placed(&self) -> bool {
        self.reading.is_some() || self.material.is_some()
    }
}

/// Every photograph that was named, in the order of the acts.
pub fn joins(inspection: &Inspection, findings: &Findings) -> Vec<Join> {
    let settings = inspection.settings();
    let mut joins: Vec<Join> = settings
        .photos()
        .into_iter()
        .map(|(target, said)| {
            let found = said.find(&inspection.photos);
            Join {
                target: target.clone(),
                photo: found.ok(),
                state: found.err().unwrap_or(PhotoState::AtHand),
                reading: None,
                material: material(findings, target),
                said,
            }
        })
        .collect();
    // The lines of a source are walked once, however many photographs its readings have.
    let mut wanted: BTreeMap<(&str, u32), Vec<usize>> = BTreeMap::new();
    for (at, join) in joins.iter().enumerate() {
        if let Target::Reading(source, line) = &join.target {
            wanted.entry((source, *line)).or_default().push(at);
        }
    }
    let mut placed = Vec::new();
    for (at, source) in inspection.sources.iter().enumerate() {
        let name = source.name.as_str();
        let counts = findings.same_as.get(at).copied().flatten().is_none();
        if !counts || wanted.range((name, 0)..=(name, u32::MAX)).next().is_none() {
            continue;
        }
        let Some(first) = findings.first_reading.get(at) else { continue };
        for row in 0..source.readings.len() {
            if let Some(of) = wanted.get(&(name, source.readings.line(row))) {
                placed.extend(of.iter().map(|join| (*join, first + row)));
            }
        }
    }
    for (join, reading) in placed {
        if let Some(join) = joins.get_mut(join) {
            join.reading.get_or_insert(reading);
        }
    }
    joins
}

/// Whether the reading or material that a photograph is said to show is in the results.
pub fn is_there(inspection: &Inspection, findings: &Findings, target: &Target) -> bool {
    let Target::Reading(name, line) = target else { return material(findings, target).is_some() };
    let of_name = inspection
        .sources
        .iter()
        .zip(&findings.same_as)
        .filter(|(source, same)| same.is_none() && source.name == *name);
    let mut readings = of_name.map(|(source, _)| &source.readings);
    readings.any(|readings| (0..readings.len()).any(|row| readings.line(row) == *line))
}

fn material(findings: &Findings, target: &Target) -> Option<usize> {
    let Target::LotMaterial([supplier, lot, part, name]) = target else { return None };
    let is = |text: Option<&str>, wanted: &str| text.unwrap_or("") == wanted;
    findings.materials.iter().position(|one| {
        let of_lot = findings.lots.get(one.lot);
        of_lot.is_some_and(|of| is(of.supplier.as_deref(), supplier) && is(of.lot.as_deref(), lot))
            && is(one.part.as_deref(), part)
            && is(one.name.as_deref(), name)
    })
}

/// What a photograph is said to show, in words: the reading or the material, or the act's own words where it isn't there.
pub fn shown(inspection: &Inspection, findings: &Findings, words: &Words, join: &Join) -> String {
    let reading = || {
        let (at, row) = findings.place(join.reading?)?;
        Some(phrases::reading_name(words, inspection.sources.get(at)?, row))
    };
    reading().unwrap_or_else(|| phrases::target(words, &join.target))
}

/// What keeps photographs that were named from being shown, a sentence each with its remedy.
pub fn troubles(inspection: &Inspection, findings: &Findings, words: &Words) -> Vec<String> {
    let not_shown = joins(inspection, findings).into_iter().filter(|join| join.state != PhotoState::AtHand);
    not_shown
        .map(|join| {
            let of = shown(inspection, findings, words, &join);
            words.with(
                "photo-trouble",
                &[
                    ("text", &state(words, &join.said.file, join.state)),
                    ("of", &of),
                    ("remedy", &remedy(words, join.state)),
                ],
            )
        })
        .collect()
}

/// Whether a photograph can be shown, in words.
pub fn state(words: &Words, file: &str, state: PhotoState) -> String {
    words.with(&format!("photo-{}", state.code()), &[("file", file)])
}

/// What to do where it can't.
pub fn remedy(words: &Words, state: PhotoState) -> String {
    words.say(&format!("photo-{}.remedy", state.code()))
}

// ---- offers ----

/// How a file's name led to a reading; the first that finds any decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum OfferFrom {
    /// The results name the file in a column of photographs.
    Column,
    /// The file is named as the sample.
    Name,
    /// The file's name holds the sample's id as whole words or numbers.
    Within,
}

/// Readings that one photograph may show. Nothing is recorded by an offer.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Offer {
    /// The photograph, by its place in the inspection.
    pub photo: usize,
    /// How they were found.
    pub from: OfferFrom,
    /// The readings, over all sources.
    pub readings: Vec<u32>,
    /// How many more there are.
    pub more: usize,
}

impl Offer {
    /// Several readings may be meant, and nothing says which; a column that names one file for several says that it shows all.
    pub fn is_ambiguous(&self) -> bool {
        self.from != OfferFrom::Column && self.readings.len() + self.more > 1
    }
}

/// A text as words and numbers: small letters, digits apart from letters, numbers without leading zeros.
fn pieces(text: &str) -> Vec<String> {
    let mut pieces: Vec<String> = Vec::new();
    let mut before = None;
    for character in text.chars() {
        let kind = (character.is_numeric(), character.is_alphabetic());
        if kind.0 || kind.1 {
            match pieces.last_mut() {
                Some(last) if before == Some(kind) => last.extend(character.to_lowercase()),
                _ => pieces.push(character.to_lowercase().collect()),
            }
        }
        before = Some(kind);
    }
    for piece in &mut pieces {
        let bare = piece.trim_start_matches('0');
        if bare.len() < piece.len() {
            *piece = if bare.is_empty() { "0".to_owned() } else { bare.to_owned() };
        }
    }
    pieces
}

/// The name of a file without folders and ending.
fn stem(name: &str) -> &str {
    let base = name.rsplit('/').next().unwrap_or(name);
    base.rsplit_once('.').map_or(base, |(stem, _)| stem)
}

/// A text in a column of photographs, and a file's name, as they are compared: without folders, in small letters.
fn folded(name: &str) -> String {
    name.rsplit(['/', '\\']).next().unwrap_or(name).trim().to_lowercase()
}

/// What a file's name may mean: the names a column may have for it, and every run of its words.
fn meanings(photo: &Photo) -> (Vec<String>, Vec<(String, OfferFrom)>) {
    let pieces = pieces(stem(&photo.name));
    let looked = pieces.get(..pieces.len().min(NAME_WORDS)).unwrap_or(&[]);
    let mut runs = vec![(pieces.join(" "), OfferFrom::Name)];
    for from in 0..looked.len() {
        for to in from + 1..=looked.len() {
            if to - from < pieces.len() {
                runs.push((looked.get(from..to).unwrap_or(&[]).join(" "), OfferFrom::Within));
            }
        }
    }
    runs.retain(|(run, _)| !run.is_empty());
    (vec![folded(&photo.name), folded(stem(&photo.name))], runs)
}

/// What every photograph that can be shown may be of: those that no act joins to anything.
pub fn offers(inspection: &Inspection, findings: &Findings) -> Vec<Offer> {
    let mut joined = vec![false; inspection.photos.len()];
    for at in joins(inspection, findings).iter().filter_map(|join| join.photo) {
        if let Some(one) = joined.get_mut(at) {
            *one = true;
        }
    }
    let mut by_column: BTreeMap<String, Vec<usize>> = BTreeMap::new();
    let mut by_id: BTreeMap<String, Vec<(usize, OfferFrom)>> = BTreeMap::new();
    for (at, photo) in inspection.photos.iter().enumerate() {
        if joined.get(at) != Some(&false) || photo.picture.is_err() {
            continue;
        }
        let (columns, runs) = meanings(photo);
        for name in columns {
            by_column.entry(name).or_default().push(at);
        }
        for (run, from) in runs {
            by_id.entry(run).or_default().push((at, from));
        }
    }
    let mut found: BTreeMap<usize, Offer> = BTreeMap::new();
    if by_id.is_empty() {
        return Vec::new();
    }
    let mut offer = |photo: usize, from: OfferFrom, reading: usize| {
        let blank = || Offer { photo, from, readings: Vec::new(), more: 0 };
        let offer = found.entry(photo).or_insert_with(blank);
        if from < offer.from {
            *offer = blank();
        }
        if from == offer.from && offer.readings.last() != Some(&(reading as u32)) {
            if offer.readings.len() < OFFERED {
                offer.readings.push(reading as u32);
            } else {
                offer.more += 1;
            }
        }
    };
    for (at, source) in inspection.sources.iter().enumerate() {
        let (Some(first), None) =
            (findings.first_reading.get(at), findings.same_as.get(at).copied().flatten())
        else {
            continue;
        };
        let mut known = Known::default();
        for row in 0..source.readings.len() {
            for photo in known.of(source, Identity::Photo, row, &|text| by_column.get(&folded(text)).cloned())
            {
                offer(photo, OfferFrom::Column, first + row);
            }
            for (photo, from) in known.of_id(source, row, &by_id) {
                offer(photo, from, first + row);
            }
        }
    }
    found.into_values().collect()
}

/// What the texts of one source came to: a text is taken apart once, however many rows have it.
#[derive(Default)]
struct Known {
    columns: BTreeMap<TextId, Vec<usize>>,
    ids: BTreeMap<TextId, Vec<(usize, OfferFrom)>>,
}

impl Known {
    fn of(
        &mut self,
        source: &Source,
        identity: Identity,
        row: usize,
        look: &dyn Fn(&str) -> Option<Vec<usize>>,
    ) -> Vec<usize> {
        let id = source.readings.identity_id(identity, row);
        let Some(text) = source.readings.pool.get(id) else { return Vec::new() };
        self.columns.entry(id).or_insert_with(|| look(text).unwrap_or_default()).clone()
    }

    fn of_id(
        &mut self,
        source: &Source,
        row: usize,
        by_id: &BTreeMap<String, Vec<(usize, OfferFrom)>>,
    ) -> Vec<(usize, OfferFrom)> {
        let id = source.readings.identity_id(Identity::Id, row);
        let Some(text) = source.readings.pool.get(id) else { return Vec::new() };
        self.ids
            .entry(id)
            .or_insert_with(|| by_id.get(&pieces(text).join(" ")).cloned().unwrap_or_default())
            .clone()
    }
}

// ---- the findings ----

/// A photograph that was named, for the findings.
#[derive(Serialize)]
pub struct PhotoOut {
    name: String,
    sha256: Option<String>,
    state: &'static str,
    media_type: Option<&'static str>,
    width: Option<u32>,
    height: Option<u32>,
    print_sha256: Option<String>,
    shows: Vec<ShownOut>,
}

/// What a photograph shows, and where on it.
#[derive(Serialize)]
struct ShownOut {
    target: String,
    reading: Option<usize>,
    material: Option<usize>,
    spot: Option<SpotOut>,
}

#[derive(Serialize)]
struct SpotOut {
    x_permille: u16,
    y_permille: u16,
}

/// The photographs that were named, for the findings: those given first, in their order, then those that can't be shown.
pub fn out(inspection: &Inspection, findings: &Findings) -> Vec<PhotoOut> {
    by_photo(&joins(inspection, findings))
        .into_iter()
        .map(|of| {
            let first = of.first().copied();
            let photo = first.and_then(|join| inspection.photos.get(join.photo?));
            let picture = photo.and_then(|photo| photo.picture.as_ref().ok());
            let said = |text: &str| (!text.is_empty()).then(|| text.to_owned());
            PhotoOut {
                name: photo
                    .map(|one| one.name.clone())
                    .or(first.map(|join| join.said.file.clone()))
                    .unwrap_or_default(),
                sha256: photo
                    .map_or_else(|| first.and_then(|join| said(&join.said.sha256)), |one| said(&one.sha256)),
                state: first.map_or(PhotoState::NotAtHand, |join| join.state).code(),
                media_type: picture.map(|picture| picture.media_type.code()),
                width: picture.map(|picture| picture.size.width),
                height: picture.map(|picture| picture.size.height),
                print_sha256: picture.map(|picture| picture.print.sha256.clone()),
                shows: of
                    .iter()
                    .map(|join| ShownOut {
                        target: join.target.to_text(),
                        reading: join.reading,
                        material: join.material,
                        spot: join.said.spot.map(|spot| SpotOut { x_permille: spot.x, y_permille: spot.y }),
                    })
                    .collect(),
            }
        })
        .collect()
}

/// Joins of one photograph together: those that can be shown in the order of the photographs, then the others by name.
pub fn by_photo(joins: &[Join]) -> Vec<Vec<&Join>> {
    let mut together: BTreeMap<(usize, &str, &str), Vec<&Join>> = BTreeMap::new();
    for join in joins {
        let key = match join.photo {
            Some(photo) => (photo, "", ""),
            None => (usize::MAX, join.said.file.as_str(), join.said.sha256.as_str()),
        };
        together.entry(key).or_default().push(join);
    }
    together.into_values().collect()
}
