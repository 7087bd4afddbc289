//! Rule book files: tables to rules, refused with the place of whatever is wrong.

use std::collections::BTreeMap;

use super::limit::{self, Validity};
use super::{
    Band, Citation, Edges, Halogens, LowEdge, Problem, ProblemCode, Route, RuleBook, SCHEMA, Screening,
};
use crate::data_file::{self, DataTable, Placed, Reader};
use crate::exempt::{AreaRule, Exemption};
use crate::material::MaterialClass;
use crate::quantity::Coverage;
use crate::reading::sha256_hexadecimal;
use crate::substance::{Halogen, Substance};

/// What the low edge reads where it is the reading's own detection limit.
const DETECTION_LIMIT: &str = "detection limit";

pub(super) fn owned(text: Option<Placed<'_>>) -> String {
    text.map(|text| text.text.into_owned()).unwrap_or_default()
}

/// The factor of sigma; three where the book says none.
fn coverage(reader: &mut Reader<'_>, table: DataTable<'_>) -> Coverage {
    let Some(written) = reader.optional_text(table, "sigma_factor") else { return Coverage::THREE };
    Coverage::from_text(written.get()).unwrap_or_else(|| {
        reader.refuse(written.at, ProblemCode::OutOfRange, written.get());
        Coverage::THREE
    })
}

pub(super) fn operator(
    reader: &mut Reader<'_>,
    table: DataTable<'_>,
    key: &str,
    [yes, no]: [&str; 2],
) -> bool {
    reader.text(table, key).is_some_and(|written| reader.one_of(&written, yes, no))
}

/// Source, clause and confidence of a row; a route's method stands for its clause, and a row that says nothing of its
/// confidence has its book's.
pub(super) fn citation(
    reader: &mut Reader<'_>,
    table: DataTable<'_>,
    clause: &str,
    of_book: &str,
) -> Citation {
    let (source, clause) = (reader.text(table, "source"), reader.text(table, clause));
    if let (Some(source), Some(clause)) = (&source, &clause)
        && (source.get().trim().is_empty() || clause.get().trim().is_empty())
    {
        reader.refuse(source.at, ProblemCode::NoSource, source.get());
    }
    let confidence = reader.optional_text(table, "confidence");
    let confidence = confidence.map_or_else(|| of_book.to_owned(), |own| own.text.into_owned());
    Citation { source: owned(source), clause: owned(clause), confidence }
}

fn screening(reader: &mut Reader<'_>, table: DataTable<'_>, of_book: &str) -> Screening {
    reader.only(
        table,
        &["sigma_factor", "low_operator", "high_operator", "source", "clause", "confidence", "band"],
    );
    let mut bands = BTreeMap::new();
    let rows = reader.tables(table, "band");
    for row in &rows {
        reader.only(
            *row,
            &[
                "substance",
                "class",
                "low",
                "detection_limit_at_most",
                "high",
                "applies",
                "source",
                "clause",
                "confidence",
            ],
        );
        let name = reader.text(*row, "substance");
        let substance = name.as_ref().and_then(|name| {
            let substance = Substance::from_symbol(name.get());
            if substance.is_none() {
                reader.refuse(name.at, ProblemCode::UnknownName, name.get());
            }
            substance
        });
        let class = reader.text(*row, "class").and_then(|name| {
            let class = reader.class(&name)?;
            let banded = MaterialClass::BANDED.contains(&class);
            if !banded {
                reader.refuse(name.at, ProblemCode::UnknownName, name.get());
            }
            banded.then_some(class)
        });
        let at = name.as_ref().map_or(row.at, |name| name.at);
        let applies = reader.flag(*row, "applies").unwrap_or(true);
        // Bromine in metal is the one pair the standard leaves out; anything else left out would be a pass unseen.
        let left_out = (substance, class) == (Some(Substance::Br), Some(MaterialClass::Metal));
        if !applies && !left_out {
            reader.refuse(at, ProblemCode::OutOfRange, "applies = false");
        }
        let edges = if applies { edges(reader, *row, at) } else { None };
        let citation = citation(reader, *row, "clause", of_book);
        if let (Some(substance), Some(class)) = (substance, class)
            && bands.insert((substance, class), Band { edges, citation }).is_some()
        {
            reader.refuse(at, ProblemCode::Twice, substance.symbol());
        }
    }
    let at = rows.first().map_or(table.at, |row| row.at);
    for substance in Substance::ALL {
        for class in MaterialClass::BANDED {
            if !bands.contains_key(&(substance, class)) && reader.is_clean() {
                let row = format!("{} {}", substance.symbol(), class.code());
                reader.refuse(at, ProblemCode::Missing, &row);
            }
        }
    }
    Screening {
        sigma_factor: coverage(reader, table),
        equal_is_below: operator(reader, table, "low_operator", ["<=", "<"]),
        equal_is_over: operator(reader, table, "high_operator", [">=", ">"]),
        citation: citation(reader, table, "clause", of_book),
        bands,
    }
}

fn edges(reader: &mut Reader<'_>, row: DataTable<'_>, at: usize) -> Option<Edges> {
    let Some(low_text) = reader.optional_text(row, "low") else {
        if !row.has("low") {
            reader.refuse(at, ProblemCode::Missing, "low");
        }
        return None;
    };
    let low = if low_text.get() == DETECTION_LIMIT {
        let Some(at_most) = reader.optional_text(row, "detection_limit_at_most") else {
            if !row.has("detection_limit_at_most") {
                reader.refuse(low_text.at, ProblemCode::Missing, "detection_limit_at_most");
            }
            return None;
        };
        LowEdge::DetectionLimit { at_most: reader.quantity(&at_most)? }
    } else {
        LowEdge::Fixed(reader.quantity(&low_text)?)
    };
    let Some(high_text) = reader.optional_text(row, "high") else { return Some(Edges { low, high: None }) };
    let high = reader.quantity(&high_text)?;
    let (LowEdge::Fixed(lowest) | LowEdge::DetectionLimit { at_most: lowest }) = low;
    if lowest >= high {
        let found = format!("{} / {}", low_text.get(), high_text.get());
        reader.refuse(low_text.at, ProblemCode::BandUpsideDown, &found);
        return None;
    }
    Some(Edges { low, high: Some(high) })
}

fn halogens(reader: &mut Reader<'_>, table: DataTable<'_>, of_book: &str) -> Halogens {
    reader.only(table, &["sigma_factor", "operator", "source", "clause", "confidence", "limit"]);
    let mut limits = BTreeMap::new();
    let rows = reader.tables(table, "limit");
    for row in &rows {
        reader.only(*row, &["of", "limit", "source", "clause", "confidence"]);
        let name = reader.text(*row, "of");
        let limit = reader.text(*row, "limit").and_then(|limit| reader.quantity(&limit));
        let citation = citation(reader, *row, "clause", of_book);
        let Some(name) = name else { continue };
        match (Halogen::ALL.into_iter().find(|halogen| halogen.name() == name.get()), limit) {
            (None, _) => reader.refuse(name.at, ProblemCode::UnknownName, name.get()),
            (Some(of), Some(limit)) if limits.insert(of, (limit, citation)).is_some() => {
                reader.refuse(name.at, ProblemCode::Twice, name.get());
            }
            _ => {}
        }
    }
    let at = rows.first().map_or(table.at, |row| row.at);
    for of in Halogen::ALL {
        if !limits.contains_key(&of) && reader.is_clean() {
            reader.refuse(at, ProblemCode::Missing, of.name());
        }
    }
    Halogens {
        sigma_factor: coverage(reader, table),
        equal_is_within: operator(reader, table, "operator", ["at most", "below"]),
        citation: citation(reader, table, "clause", of_book),
        limits,
    }
}

fn route(reader: &mut Reader<'_>, table: DataTable<'_>, of_book: &str) -> Route {
    reader.only(table, &["substance", "classes", "method", "technique", "source", "confidence"]);
    let name = reader.text(table, "substance");
    let substance = name.as_ref().and_then(|name| Substance::from_symbol(name.get()));
    if let Some(name) = &name
        && substance.is_none()
        && name.get() != "halogens"
    {
        reader.refuse(name.at, ProblemCode::UnknownName, name.get());
    }
    if !table.has("classes") {
        reader.refuse(table.at, ProblemCode::Missing, "classes");
    }
    let classes = reader.texts(table, "classes").map_or_else(Vec::new, |(_, list)| list);
    let Citation { source, clause: method, confidence } = citation(reader, table, "method", of_book);
    Route {
        substance,
        classes: classes.iter().filter_map(|class| reader.class(class)).collect(),
        method,
        technique: owned(reader.text(table, "technique")),
        source,
        confidence,
    }
}
/// What a book may be about: these tables hold its rules, and a book has at least one of them.
const RULES: &[&str] = &["screening", "halogens", "limit", "exemption", "cr6_area"];

/// The other keys of a book.
const ABOUT: &[&str] = &[
    "schema",
    "id",
    "title",
    "edition",
    "jurisdiction",
    "valid_from",
    "valid_until",
    "source",
    "confidence",
    "note",
    "sigma_factor",
    "exempts",
    "route",
];

impl RuleBook {
    /// Reads a rule book.
    ///
    /// # Errors
    /// Every problem found, each with its line and column; a book with a problem is not used at all.
    pub fn parse(text: &str) -> Result<RuleBook, Vec<Problem>> {
        let mut book = data_file::read(text, SCHEMA, read_book)?;
        book.sha256 = sha256_hexadecimal(text.as_bytes());
        book.text = text.into();
        Ok(book)
    }
}

fn read_book(reader: &mut Reader<'_>, table: DataTable<'_>) -> RuleBook {
    let known: Vec<&str> = ABOUT.iter().chain(RULES).copied().collect();
    reader.only(table, &known);
    let id = reader.text(table, "id");
    if let Some(id) = &id {
        if !RULES.iter().any(|rules| table.has(rules)) {
            reader.refuse(id.at, ProblemCode::NothingInBook, id.get());
        }
        // An id is named in settings with `@` and a digest behind it, and in lists with `|` between.
        if id.get().trim().is_empty() || id.get().contains(['@', '|']) {
            reader.refuse(id.at, ProblemCode::OutOfRange, id.get());
        }
    }
    let Citation { source, clause: confidence, .. } = citation(reader, table, "confidence", "");
    let validity = Validity::read(reader, table);
    let sigma_factor = coverage(reader, table);
    let screening = reader.table(table, "screening").map(|table| screening(reader, table, &confidence));
    let halogens = reader.table(table, "halogens").map(|table| halogens(reader, table, &confidence));
    let limits = limit::rows(reader, table, sigma_factor, validity, &confidence);
    let exemptions = reader.tables(table, "exemption").into_iter();
    let exemptions = exemptions.filter_map(|row| Exemption::read(reader, row)).collect();
    let exempts = reader.texts(table, "exempts").map_or_else(Vec::new, |(_, list)| list);
    let cr6_area = reader.table(table, "cr6_area").and_then(|table| AreaRule::read(reader, table));
    let routes = reader.tables(table, "route").into_iter();
    let routes = routes.map(|table| route(reader, table, &confidence)).collect();
    RuleBook {
        id: owned(id),
        title: owned(reader.text(table, "title")),
        edition: owned(reader.text(table, "edition")),
        jurisdiction: owned(reader.optional_text(table, "jurisdiction")),
        validity,
        source,
        confidence,
        note: owned(reader.optional_text(table, "note")),
        sha256: String::new(),
        text: "".into(),
        screening,
        halogens,
        limits,
        routes,
        exemptions,
        exempts: exempts.into_iter().map(|book| book.text.into_owned()).collect(),
        cr6_area,
    }
}
