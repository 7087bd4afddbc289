//! Limits: what one element, or several together, may come to in what the limit speaks of.

use std::collections::BTreeSet;

use super::file::{citation, operator, owned};
use super::{Citation, ProblemCode};
use crate::data_file::{DataTable, Reader};
use crate::day::Day;
use crate::material::MaterialClass;
use crate::quantity::{Coverage, MassFraction};
use crate::reading::codes;
use crate::substance::Element;

/// The elements a limit may speak of: those that are judged.
pub const JUDGED: [Element; 6] =
    [Element::CD, Element::PB, Element::HG, Element::CR, Element::BR, Element::CL];

codes! {
    /// What a limit's share is a share of.
    Basis {
        /// One material of uniform composition: a reading of several together clears none of them.
        HomogeneousMaterial => "homogeneous material",
        /// A plastic, without what it is mixed or coated with.
        Plastic => "plastic",
        /// A coating alone, taken off what it lies on.
        Coating => "coating alone",
        /// The article, or a part of it that can be reached.
        Article => "article",
        /// A packaging, or a component of one.
        PackagingComponent => "packaging component",
    }
}

impl Basis {
    /// The basis of a code.
    pub fn from_code(code: &str) -> Option<Basis> {
        Basis::ALL.iter().copied().find(|basis| basis.code() == code)
    }

    /// True where a reading of several materials together says nothing about each: below the limit in the mixture,
    /// one of them may be above it.
    pub const fn is_one_material(self) -> bool {
        matches!(self, Basis::HomogeneousMaterial | Basis::Plastic | Basis::Coating)
    }
}

/// The days a book or row holds for, by placing on the market; both ends belong to it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Validity {
    /// The first day; `None` where none is said.
    pub from: Option<Day>,
    /// The last day; `None` where none is said.
    pub until: Option<Day>,
}

impl Validity {
    /// Reads `valid_from` and `valid_until`: a day, or a year (its first or last day).
    pub(super) fn read(reader: &mut Reader<'_>, table: DataTable<'_>) -> Validity {
        let mut day = |key, rest| {
            let written = reader.scalar(table, key)?;
            let text = written.get().trim();
            let day = if text.len() == 4 { Day::parse(&format!("{text}{rest}")) } else { Day::parse(text) };
            if day.is_none() {
                reader.refuse(written.at, ProblemCode::OutOfRange, written.get());
            }
            day.map(|day| (day, written.at))
        };
        let (from, until) = (day("valid_from", "-01-01"), day("valid_until", "-12-31"));
        if let (Some((from, _)), Some((until, at))) = (from, until)
            && until < from
        {
            reader.refuse(at, ProblemCode::OutOfRange, &format!("{from} / {until}"));
        }
        Validity { from: from.map(|(day, _)| day), until: until.map(|(day, _)| day) }
    }

    /// True where it makes a difference when something was placed on the market.
    pub const fn is_dated(self) -> bool {
        self.from.is_some() || self.until.is_some()
    }

    /// True where it holds on a day.
    pub fn holds_on(self, day: Day) -> bool {
        self.from.is_none_or(|from| from <= day) && self.until.is_none_or(|until| day <= until)
    }
}

/// One limit.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Limit {
    /// Its id within the book.
    pub id: String,
    /// The elements whose amounts are added up; one alone is not added to anything.
    pub of: Vec<Element>,
    /// The limit.
    pub limit: MassFraction,
    /// "At most": the limit itself is within; false for "below".
    pub equal_is_within: bool,
    /// The factor of sigma of the decision.
    pub sigma_factor: Coverage,
    /// The classes it speaks of.
    pub classes: Vec<MaterialClass>,
    /// What it is a share of.
    pub basis: Basis,
    /// What it speaks of in the law's or the book's words; a person decides whether a thing is that.
    pub scope: String,
    /// Elements that only stand for a species of theirs (Cr for Cr(VI)): of them there may be as little as nothing.
    pub species: Vec<(Element, String)>,
    /// The limit on each species by itself, where that is not the row's own: what a laboratory's result of it is held
    /// against.
    pub species_limit: Option<MassFraction>,
    /// The limit counts the element only from certain sources, which X-ray fluorescence cannot tell apart.
    pub source_unknown: bool,
    /// The days it holds for.
    pub validity: Validity,
    /// What a person has to answer, and a reading can't, before the limit is known to apply; empty where nothing.
    pub question: String,
    /// Where the row comes from.
    pub citation: Citation,
}

impl Limit {
    /// The species an element only stands for.
    pub fn species_of(&self, element: Element) -> Option<&str> {
        self.species.iter().find(|(of, _)| *of == element).map(|(_, species)| species.as_str())
    }
}

const KEYS: &[&str] = &[
    "id",
    "of",
    "limit",
    "operator",
    "classes",
    "basis",
    "scope",
    "species",
    "species_limit",
    "source_unknown",
    "valid_from",
    "valid_until",
    "question",
    "source",
    "clause",
    "confidence",
];

/// The limits of a book. A row without days of its own has the book's.
pub(super) fn rows(
    reader: &mut Reader<'_>,
    book: DataTable<'_>,
    sigma_factor: Coverage,
    of_book: Validity,
    confidence: &str,
) -> Vec<Limit> {
    let mut limits = Vec::new();
    let mut ids = BTreeSet::new();
    for table in reader.tables(book, "limit") {
        reader.only(table, KEYS);
        let id = reader.text(table, "id");
        if let Some(id) = &id
            && !ids.insert(id.get().to_owned())
        {
            reader.refuse(id.at, ProblemCode::Twice, id.get());
        }
        let own = Validity::read(reader, table);
        let limit = reader.text(table, "limit").and_then(|limit| reader.quantity(&limit));
        let row = Limit {
            id: owned(id),
            of: elements(reader, table),
            limit: limit.unwrap_or(MassFraction::ZERO),
            equal_is_within: operator(reader, table, "operator", ["at most", "below"]),
            sigma_factor,
            classes: classes(reader, table),
            basis: basis(reader, table),
            scope: owned(reader.optional_text(table, "scope")),
            species: species(reader, table),
            species_limit: reader
                .optional_text(table, "species_limit")
                .and_then(|limit| reader.quantity(&limit)),
            source_unknown: reader.flag(table, "source_unknown").unwrap_or(false),
            validity: if own.is_dated() { own } else { of_book },
            question: owned(reader.optional_text(table, "question")),
            citation: citation(reader, table, "clause", confidence),
        };
        for (element, species) in &row.species {
            if !row.of.contains(element) {
                reader.refuse(table.at, ProblemCode::UnknownName, species);
            }
        }
        limits.push(row);
    }
    limits
}

fn elements(reader: &mut Reader<'_>, table: DataTable<'_>) -> Vec<Element> {
    let names = reader.one_or_more(table, "of");
    if names.is_empty() {
        reader.refuse(table.at, ProblemCode::Missing, "of");
    }
    let mut elements = Vec::new();
    for name in &names {
        match Element::from_symbol(name.get()).filter(|element| JUDGED.contains(element)) {
            None => reader.refuse(name.at, ProblemCode::UnknownName, name.get()),
            Some(element) if elements.contains(&element) => {
                reader.refuse(name.at, ProblemCode::Twice, name.get());
            }
            Some(element) => elements.push(element),
        }
    }
    elements
}

fn classes(reader: &mut Reader<'_>, table: DataTable<'_>) -> Vec<MaterialClass> {
    let names = reader.texts(table, "classes").map_or_else(Vec::new, |(_, names)| names);
    if names.is_empty() {
        reader.refuse(table.at, ProblemCode::Missing, "classes");
    }
    let mut classes = Vec::new();
    for name in &names {
        // An unknown class is judged as every class it may be, so no row can speak of it.
        match reader.class(name) {
            Some(MaterialClass::Unknown) => reader.refuse(name.at, ProblemCode::OutOfRange, name.get()),
            Some(class) => classes.push(class),
            None => {}
        }
    }
    classes
}

fn basis(reader: &mut Reader<'_>, table: DataTable<'_>) -> Basis {
    let Some(written) = reader.text(table, "basis") else { return Basis::HomogeneousMaterial };
    Basis::from_code(written.get()).unwrap_or_else(|| {
        reader.refuse(written.at, ProblemCode::UnknownName, written.get());
        Basis::HomogeneousMaterial
    })
}

/// `species = { Cr = "Cr(VI)" }`.
fn species(reader: &mut Reader<'_>, table: DataTable<'_>) -> Vec<(Element, String)> {
    let Some(stands_for) = reader.table(table, "species") else { return Vec::new() };
    let mut species = Vec::new();
    for name in stands_for.keys() {
        let Some(text) = reader.text(stands_for, name) else { continue };
        match Element::from_symbol(name) {
            Some(element) => species.push((element, text.text.into_owned())),
            None => reader.refuse(stands_for.at, ProblemCode::UnknownName, name),
        }
    }
    species
}
