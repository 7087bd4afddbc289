//! Rule books: dated data files of bands, limits and routes, each row with its source and clause.
//!
//! A book that is malformed, has a unit nobody knows or a band upside down is refused with the place; nothing of it
//! is used.

use std::collections::BTreeMap;

pub use crate::data_file::{Problem, ProblemCode, place_of};

use crate::data_file::{self, DataTable, Placed, Reader};
use crate::material::MaterialClass;
use crate::quantity::{Coverage, MassFraction};
use crate::reading::sha256_hexadecimal;
use crate::substance::{Halogen, Substance};

/// The screening book every inspection starts with.
pub const SCREENING_2013: &str = include_str!("../rules/iec-62321-3-1-2013.toml");
/// The halogen book every inspection starts with.
pub const HALOGENS_2003: &str = include_str!("../rules/iec-61249-2-21-2003.toml");

/// The schema name a rule book must carry.
pub const SCHEMA: &str = "plumbline.rules/1";

/// Where a row of a book comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Citation {
    /// Document and edition.
    pub source: String,
    /// Clause.
    pub clause: String,
}

/// The low edge of a band.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LowEdge {
    /// A number.
    Fixed(MassFraction),
    /// The reading's own detection limit, which clears only while it is at most this.
    DetectionLimit {
        /// The largest detection limit that clears.
        at_most: MassFraction,
    },
}

/// The band of one substance in one class.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Band {
    /// The edges; `None` where the book says the substance does not apply.
    pub edges: Option<Edges>,
    /// Where the row comes from.
    pub citation: Citation,
}

/// The edges of the undecided interval.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Edges {
    /// Low edge.
    pub low: LowEdge,
    /// High edge; `None` where the element cannot prove the substance.
    pub high: Option<MassFraction>,
}

/// Screening bands with their rule.
#[derive(Clone, Debug)]
pub struct Screening {
    /// The factor of sigma (3).
    pub sigma_factor: Coverage,
    /// `x + k s = low` counts as below.
    pub equal_is_below: bool,
    /// `x - k s = high` counts as over.
    pub equal_is_over: bool,
    /// Where the rule comes from.
    pub citation: Citation,
    bands: BTreeMap<(Substance, MaterialClass), Band>,
}

impl Screening {
    /// The band of a substance in a class; `None` where the book has no row.
    pub fn band(&self, substance: Substance, class: MaterialClass) -> Option<&Band> {
        self.bands.get(&(substance, class))
    }

    /// All bands in a fixed order.
    pub fn bands(&self) -> impl Iterator<Item = (Substance, MaterialClass, &Band)> {
        self.bands.iter().map(|((substance, class), band)| (*substance, *class, band))
    }
}

/// Halogen limits with their rule.
#[derive(Clone, Debug)]
pub struct Halogens {
    /// The factor of sigma (3 by default).
    pub sigma_factor: Coverage,
    /// `x + k s = limit` counts as within ("at most"); false for "below".
    pub equal_is_within: bool,
    /// Where the rule comes from.
    pub citation: Citation,
    limits: BTreeMap<Halogen, (MassFraction, Citation)>,
}

impl Halogens {
    /// The limit of one of the three.
    pub fn limit(&self, of: Halogen) -> MassFraction {
        self.limits.get(&of).map_or(MassFraction::ZERO, |(limit, _)| *limit)
    }

    /// Where the limit comes from.
    pub fn citation_of(&self, of: Halogen) -> &Citation {
        self.limits.get(&of).map_or(&self.citation, |(_, citation)| citation)
    }
}

/// A reference method for what XRF can't decide.
#[derive(Clone, Debug)]
pub struct Route {
    /// The substance; `None` for the halogens.
    pub substance: Option<Substance>,
    /// The classes it is for.
    pub classes: Vec<MaterialClass>,
    /// The standard.
    pub method: String,
    /// The technique.
    pub technique: String,
    /// Where the row comes from.
    pub source: String,
}

/// One rule book.
#[derive(Clone, Debug)]
pub struct RuleBook {
    /// Its id, named in settings and findings.
    pub id: String,
    /// Its title.
    pub title: String,
    /// Its edition.
    pub edition: String,
    /// The document.
    pub source: String,
    /// How sure its values are.
    pub confidence: String,
    /// What else to know.
    pub note: String,
    /// SHA-256 of the file.
    pub sha256: String,
    /// Its bands.
    pub screening: Option<Screening>,
    /// Its halogen limits.
    pub halogens: Option<Halogens>,
    /// Its routes to reference methods.
    pub routes: Vec<Route>,
}

/// What the low edge reads where it is the reading's own detection limit.
const DETECTION_LIMIT: &str = "detection limit";

fn owned(text: Option<Placed<'_>>) -> String {
    text.map(|text| text.text.into_owned()).unwrap_or_default()
}

fn coverage(reader: &mut Reader<'_>, table: DataTable<'_>) -> Coverage {
    let Some(written) = reader.text(table, "sigma_factor") else { return Coverage::THREE };
    Coverage::from_text(written.get()).unwrap_or_else(|| {
        reader.refuse(written.at, ProblemCode::OutOfRange, written.get());
        Coverage::THREE
    })
}

fn operator(reader: &mut Reader<'_>, table: DataTable<'_>, key: &str, [yes, no]: [&str; 2]) -> bool {
    reader.text(table, key).is_some_and(|written| reader.one_of(&written, yes, no))
}

/// Source and clause of a row; a route's method stands for its clause.
fn citation(reader: &mut Reader<'_>, table: DataTable<'_>, clause: &str) -> Citation {
    let (source, clause) = (reader.text(table, "source"), reader.text(table, clause));
    if let (Some(source), Some(clause)) = (&source, &clause)
        && (source.get().trim().is_empty() || clause.get().trim().is_empty())
    {
        reader.refuse(source.at, ProblemCode::NoSource, source.get());
    }
    Citation { source: owned(source), clause: owned(clause) }
}

fn screening(reader: &mut Reader<'_>, table: DataTable<'_>) -> Screening {
    reader.only(table, &["sigma_factor", "low_operator", "high_operator", "source", "clause", "band"]);
    let mut bands = BTreeMap::new();
    let rows = reader.tables(table, "band");
    for row in &rows {
        reader.only(
            *row,
            &["substance", "class", "low", "detection_limit_at_most", "high", "applies", "source", "clause"],
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
        let citation = citation(reader, *row, "clause");
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
        citation: citation(reader, table, "clause"),
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

fn halogens(reader: &mut Reader<'_>, table: DataTable<'_>) -> Halogens {
    reader.only(table, &["sigma_factor", "operator", "source", "clause", "limit"]);
    let mut limits = BTreeMap::new();
    let rows = reader.tables(table, "limit");
    for row in &rows {
        reader.only(*row, &["of", "limit", "source", "clause"]);
        let name = reader.text(*row, "of");
        let limit = reader.text(*row, "limit").and_then(|limit| reader.quantity(&limit));
        let citation = citation(reader, *row, "clause");
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
        citation: citation(reader, table, "clause"),
        limits,
    }
}

fn route(reader: &mut Reader<'_>, table: DataTable<'_>) -> Route {
    reader.only(table, &["substance", "classes", "method", "technique", "source"]);
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
    let Citation { source, clause: method } = citation(reader, table, "method");
    Route {
        substance,
        classes: classes.iter().filter_map(|class| reader.class(class)).collect(),
        method,
        technique: owned(reader.text(table, "technique")),
        source,
    }
}
/// The keys of a rule book.
const KEYS: &[&str] = &[
    "schema",
    "id",
    "title",
    "edition",
    "valid_from",
    "valid_until",
    "source",
    "confidence",
    "note",
    "screening",
    "halogens",
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
        Ok(book)
    }
}

fn read_book(reader: &mut Reader<'_>, table: DataTable<'_>) -> RuleBook {
    reader.only(table, KEYS);
    let id = reader.text(table, "id");
    if let Some(id) = &id {
        if !table.has("screening") && !table.has("halogens") {
            reader.refuse(id.at, ProblemCode::NothingInBook, id.get());
        }
        if id.get().trim().is_empty() {
            reader.refuse(id.at, ProblemCode::Missing, "id");
        }
    }
    let Citation { source, clause: confidence } = citation(reader, table, "confidence");
    let screening = reader.table(table, "screening").map(|table| screening(reader, table));
    let halogens = reader.table(table, "halogens").map(|table| halogens(reader, table));
    let routes = reader.tables(table, "route").into_iter().map(|table| route(reader, table)).collect();
    for date in ["valid_from", "valid_until"] {
        reader.optional_text(table, date);
    }
    RuleBook {
        id: owned(id),
        title: owned(reader.text(table, "title")),
        edition: owned(reader.text(table, "edition")),
        source,
        confidence,
        note: owned(reader.optional_text(table, "note")),
        sha256: String::new(),
        screening,
        halogens,
        routes,
    }
}
/// The rule books of an inspection: one set of bands, any number of halogen books.
#[derive(Clone, Debug)]
pub struct RuleBooks {
    books: Vec<RuleBook>,
}

impl RuleBooks {
    /// The books that come with the program.
    ///
    /// # Errors
    /// The problems of a built-in book; a test keeps this from happening.
    pub fn built_in() -> Result<RuleBooks, Vec<Problem>> {
        Ok(RuleBooks { books: vec![RuleBook::parse(SCREENING_2013)?, RuleBook::parse(HALOGENS_2003)?] })
    }

    /// Adds a book. It stands in for the one of the same id, and for what it holds (bands, halogen limits) of any
    /// other; a book that nothing is taken from any more is dropped.
    pub fn add(&mut self, book: RuleBook) {
        self.books.retain(|kept| kept.id != book.id);
        self.books.push(book);
        let last = |holds: fn(&RuleBook) -> bool| self.books.iter().rposition(holds);
        let used = [last(|book| book.screening.is_some()), last(|book| book.halogens.is_some())];
        let mut at = 0;
        self.books.retain(|_| {
            at += 1;
            used.contains(&Some(at - 1))
        });
        self.books.sort_by_key(|book| book.screening.is_none());
    }

    /// All books, the screening book first.
    pub fn all(&self) -> &[RuleBook] {
        &self.books
    }

    /// The screening bands in force: those added last.
    pub fn screening(&self) -> Option<(&RuleBook, &Screening)> {
        self.books.iter().rev().find_map(|book| book.screening.as_ref().map(|screening| (book, screening)))
    }

    /// The halogen limits in force.
    pub fn halogens(&self) -> Option<(&RuleBook, &Halogens)> {
        self.books.iter().rev().find_map(|book| book.halogens.as_ref().map(|halogens| (book, halogens)))
    }

    /// The reference method for a substance (`None`: the halogens) in a class.
    pub fn route(&self, substance: Option<Substance>, class: MaterialClass) -> Option<&Route> {
        self.books
            .iter()
            .flat_map(|book| &book.routes)
            .find(|route| route.substance == substance && route.classes.contains(&class))
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn problems(from: &str, to: &str) -> Vec<Problem> {
        assert!(SCREENING_2013.contains(from));
        RuleBook::parse(&SCREENING_2013.replacen(from, to, 1)).unwrap_err()
    }

    #[test]
    fn the_built_in_books_are_whole() {
        let books = RuleBooks::built_in().unwrap();
        let (_, screening) = books.screening().unwrap();
        assert_eq!(screening.bands().count(), 15);
        assert_eq!(books.halogens().unwrap().1.limit(Halogen::Total), MassFraction::from_mg_per_kg(1500));
        for substance in Substance::ALL {
            for class in MaterialClass::ALL {
                assert!(books.route(Some(substance), class).is_some(), "{substance:?} {class:?}");
            }
        }
        assert!(books.route(None, MaterialClass::Polymer).is_some());
    }

    #[test]
    fn a_band_upside_down_is_refused_with_its_place() {
        let found = problems("high = \"130 mg/kg\"", "high = \"60 mg/kg\"");
        assert_eq!(found.len(), 1);
        assert_eq!(found[0].code, ProblemCode::BandUpsideDown);
        let line = SCREENING_2013.lines().position(|line| line == "low = \"70 mg/kg\"").unwrap() + 1;
        assert_eq!((found[0].line as usize, found[0].column), (line, 7));
    }

    #[test]
    fn an_unknown_unit_is_refused_with_its_place() {
        let found = problems("low = \"70 mg/kg\"", "low = \"70 stone\"");
        assert_eq!(found[0].code, ProblemCode::UnknownUnit);
        assert_eq!(found[0].found, "stone");
        assert!(found[0].line > 1);
    }

    #[test]
    fn malformed_text_unknown_keys_and_gaps_are_refused() {
        assert_eq!(problems("edition = \"2013\"", "edition = ")[0].code, ProblemCode::Malformed);
        assert_eq!(
            problems("edition = \"2013\"", "edition = \"2013\"\nodd = 1")[0].code,
            ProblemCode::UnknownKey
        );
        assert_eq!(problems("plumbline.rules/1", "plumbline.rules/9")[0].code, ProblemCode::WrongSchema);
        assert_eq!(problems("class = \"metal\"", "class = \"polymer\"")[0].code, ProblemCode::Twice);
        assert_eq!(problems("substance = \"Cd\"", "substance = \"As\"")[0].code, ProblemCode::UnknownName);
        assert_eq!(
            problems("low_operator = \"<=\"", "low_operator = \"=<\"")[0].code,
            ProblemCode::UnknownName
        );
        assert_eq!(problems("low = \"70 mg/kg\"", "low = \"0 mg/kg\"")[0].code, ProblemCode::NotAboveZero);
        assert_eq!(
            problems("sigma_factor = \"3\"", "sigma_factor = \"30\"")[0].code,
            ProblemCode::OutOfRange
        );
        assert_eq!(RuleBook::parse("").unwrap_err()[0].code, ProblemCode::Missing);
    }

    #[test]
    fn every_row_names_its_source_and_clause() {
        for book in RuleBooks::built_in().unwrap().all() {
            if let Some(screening) = &book.screening {
                for (substance, class, band) in screening.bands() {
                    assert!(band.citation.source.contains(&book.source), "{substance:?} {class:?}");
                    assert!(!band.citation.clause.is_empty());
                }
            }
        }
    }
}
