//! Rule books: dated data files of bands, limits and routes, each row with its source and clause.
//!
//! A book that is malformed, has a unit nobody knows or a band upside down is refused with the place; nothing of it
//! is used.

use std::collections::BTreeMap;

use serde::Deserialize;
use toml::Spanned;

use crate::material::MaterialClass;
use crate::quantity::{self, Coverage, MassFraction, UnreadQuantity};
use crate::reading::{codes, sha256_hexadecimal};
use crate::substance::{Halogen, Substance};

/// The screening book every inspection starts with.
pub const SCREENING_2013: &str = include_str!("../rules/iec-62321-3-1-2013.toml");
/// The halogen book every inspection starts with.
pub const HALOGENS_2003: &str = include_str!("../rules/iec-61249-2-21-2003.toml");

/// The schema name a rule book must carry.
pub const SCHEMA: &str = "plumbline.rules/1";

codes! {
    /// Why a rule book or a settings file was refused.
    ProblemCode {
        /// Not TOML, or a key missing, misspelt or of the wrong kind.
        Malformed => "malformed",
        /// Another schema.
        WrongSchema => "wrong_schema",
        /// A unit that is not known.
        UnknownUnit => "unknown_unit",
        /// A quantity that is no number.
        NotAQuantity => "not_a_quantity",
        /// A substance, class or other name that is not known.
        UnknownName => "unknown_name",
        /// A band whose low edge is not below its high edge.
        BandUpsideDown => "band_upside_down",
        /// A limit or edge that is not above zero.
        NotAboveZero => "not_above_zero",
        /// The same row twice.
        Twice => "twice",
        /// A row or table that a book must have.
        Missing => "missing",
        /// A value outside what is possible.
        OutOfRange => "out_of_range",
        /// The book has neither bands nor halogen limits.
        NothingInBook => "nothing_in_book",
        /// A source or clause is empty.
        NoSource => "no_source",
    }
}

/// Why a data file was refused, with its place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Line in the file, 1-based.
    pub line: u32,
    /// Column (character) in the line, 1-based.
    pub column: u32,
    /// What it is.
    pub code: ProblemCode,
    /// The text it is about.
    pub found: String,
}

/// Line and column, 1-based, of a byte in a text.
pub fn place_of(text: &str, byte: usize) -> (u32, u32) {
    let before = text.get(..byte.min(text.len())).unwrap_or(text);
    let line = before.matches('\n').count() + 1;
    let column = before.rsplit('\n').next().unwrap_or("").chars().count() + 1;
    (line as u32, column as u32)
}

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

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct BookFile {
    #[serde(rename = "schema")]
    _schema: String,
    id: Spanned<String>,
    title: String,
    edition: String,
    #[serde(default, rename = "valid_from")]
    _valid_from: Option<String>,
    #[serde(default, rename = "valid_until")]
    _valid_until: Option<String>,
    source: Spanned<String>,
    confidence: Spanned<String>,
    #[serde(default)]
    note: String,
    screening: Option<ScreeningFile>,
    halogens: Option<HalogensFile>,
    #[serde(default)]
    route: Vec<RouteFile>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct ScreeningFile {
    sigma_factor: Spanned<String>,
    low_operator: Spanned<String>,
    high_operator: Spanned<String>,
    source: Spanned<String>,
    clause: String,
    band: Spanned<Vec<BandFile>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct BandFile {
    substance: Spanned<String>,
    class: Spanned<String>,
    low: Option<Spanned<String>>,
    detection_limit_at_most: Option<Spanned<String>>,
    high: Option<Spanned<String>>,
    #[serde(default = "yes")]
    applies: bool,
    source: Spanned<String>,
    clause: Spanned<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct HalogensFile {
    sigma_factor: Spanned<String>,
    operator: Spanned<String>,
    source: Spanned<String>,
    clause: String,
    limit: Spanned<Vec<LimitFile>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LimitFile {
    of: Spanned<String>,
    limit: Spanned<String>,
    source: Spanned<String>,
    clause: Spanned<String>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct RouteFile {
    substance: Spanned<String>,
    classes: Vec<Spanned<String>>,
    method: String,
    technique: String,
    source: Spanned<String>,
}

const fn yes() -> bool {
    true
}

/// What the low edge reads where it is the reading's own detection limit.
const DETECTION_LIMIT: &str = "detection limit";

struct Reader<'a> {
    text: &'a str,
    problems: Vec<Problem>,
}

impl Reader<'_> {
    fn refuse<T>(&mut self, at: &Spanned<T>, code: ProblemCode, found: &str) {
        self.refuse_at(at.span().start, code, found);
    }

    fn refuse_at(&mut self, byte: usize, code: ProblemCode, found: &str) {
        let (line, column) = place_of(self.text, byte);
        self.problems.push(Problem { line, column, code, found: found.to_owned() });
    }

    fn quantity(&mut self, text: &Spanned<String>) -> Option<MassFraction> {
        match quantity::parse_with_unit(text.get_ref()) {
            Ok(value) if value > MassFraction::ZERO => return Some(value),
            Ok(_) => self.refuse(text, ProblemCode::NotAboveZero, text.get_ref()),
            Err(UnreadQuantity::Unit(word)) => self.refuse(text, ProblemCode::UnknownUnit, &word),
            Err(UnreadQuantity::Number(_)) => self.refuse(text, ProblemCode::NotAQuantity, text.get_ref()),
        }
        None
    }

    fn coverage(&mut self, text: &Spanned<String>) -> Coverage {
        Coverage::from_text(text.get_ref()).unwrap_or_else(|| {
            self.refuse(text, ProblemCode::OutOfRange, text.get_ref());
            Coverage::THREE
        })
    }

    fn class(&mut self, text: &Spanned<String>) -> Option<MaterialClass> {
        let class = MaterialClass::from_code(text.get_ref());
        if class.is_none() {
            self.refuse(text, ProblemCode::UnknownName, text.get_ref());
        }
        class
    }

    fn one_of(&mut self, text: &Spanned<String>, yes: &str, no: &str) -> bool {
        let is_yes = text.get_ref() == yes;
        if !is_yes && text.get_ref() != no {
            self.refuse(text, ProblemCode::UnknownName, text.get_ref());
        }
        is_yes
    }

    fn citation(&mut self, source: &Spanned<String>, clause: &str) -> Citation {
        if source.get_ref().trim().is_empty() || clause.trim().is_empty() {
            self.refuse(source, ProblemCode::NoSource, source.get_ref());
        }
        Citation { source: source.get_ref().clone(), clause: clause.to_owned() }
    }

    fn screening(&mut self, file: &ScreeningFile) -> Screening {
        let mut bands = BTreeMap::new();
        for row in file.band.get_ref() {
            let substance = Substance::from_symbol(row.substance.get_ref());
            if substance.is_none() {
                self.refuse(&row.substance, ProblemCode::UnknownName, row.substance.get_ref());
            }
            let class = self.class(&row.class).filter(|class| {
                let banded = MaterialClass::BANDED.contains(class);
                if !banded {
                    self.refuse(&row.class, ProblemCode::UnknownName, row.class.get_ref());
                }
                banded
            });
            // Bromine in metal is the one pair the standard leaves out; anything else left out would be a pass unseen.
            let left_out = (substance, class) == (Some(Substance::Br), Some(MaterialClass::Metal));
            if !row.applies && !left_out {
                self.refuse(&row.substance, ProblemCode::OutOfRange, "applies = false");
            }
            let edges = if row.applies { self.edges(row) } else { None };
            let citation = self.citation(&row.source, row.clause.get_ref());
            if let (Some(substance), Some(class)) = (substance, class)
                && bands.insert((substance, class), Band { edges, citation }).is_some()
            {
                self.refuse(&row.substance, ProblemCode::Twice, row.substance.get_ref());
            }
        }
        for substance in Substance::ALL {
            for class in MaterialClass::BANDED {
                if !bands.contains_key(&(substance, class)) && self.problems.is_empty() {
                    let row = format!("{} {}", substance.symbol(), class.code());
                    self.refuse(&file.band, ProblemCode::Missing, &row);
                }
            }
        }
        Screening {
            sigma_factor: self.coverage(&file.sigma_factor),
            equal_is_below: self.one_of(&file.low_operator, "<=", "<"),
            equal_is_over: self.one_of(&file.high_operator, ">=", ">"),
            citation: self.citation(&file.source, &file.clause),
            bands,
        }
    }

    fn edges(&mut self, row: &BandFile) -> Option<Edges> {
        let Some(low_text) = &row.low else {
            self.refuse(&row.substance, ProblemCode::Missing, "low");
            return None;
        };
        let low = if low_text.get_ref() == DETECTION_LIMIT {
            let Some(at_most) = &row.detection_limit_at_most else {
                self.refuse(low_text, ProblemCode::Missing, "detection_limit_at_most");
                return None;
            };
            LowEdge::DetectionLimit { at_most: self.quantity(at_most)? }
        } else {
            LowEdge::Fixed(self.quantity(low_text)?)
        };
        let high = match &row.high {
            Some(text) => Some(self.quantity(text)?),
            None => None,
        };
        let lowest = match low {
            LowEdge::Fixed(value) | LowEdge::DetectionLimit { at_most: value } => value,
        };
        if let (Some(high_value), Some(high_text)) = (high, &row.high)
            && lowest >= high_value
        {
            let found = format!("{} / {}", low_text.get_ref(), high_text.get_ref());
            self.refuse(low_text, ProblemCode::BandUpsideDown, &found);
            return None;
        }
        Some(Edges { low, high })
    }

    fn halogens(&mut self, file: &HalogensFile) -> Halogens {
        let mut limits = BTreeMap::new();
        for row in file.limit.get_ref() {
            let of = Halogen::ALL.into_iter().find(|halogen| halogen.name() == row.of.get_ref());
            let limit = self.quantity(&row.limit);
            let citation = self.citation(&row.source, row.clause.get_ref());
            match (of, limit) {
                (None, _) => self.refuse(&row.of, ProblemCode::UnknownName, row.of.get_ref()),
                (Some(of), Some(limit)) if limits.insert(of, (limit, citation)).is_some() => {
                    self.refuse(&row.of, ProblemCode::Twice, row.of.get_ref());
                }
                _ => {}
            }
        }
        for of in Halogen::ALL {
            if !limits.contains_key(&of) && self.problems.is_empty() {
                self.refuse(&file.limit, ProblemCode::Missing, of.name());
            }
        }
        Halogens {
            sigma_factor: self.coverage(&file.sigma_factor),
            equal_is_within: self.one_of(&file.operator, "at most", "below"),
            citation: self.citation(&file.source, &file.clause),
            limits,
        }
    }

    fn route(&mut self, file: &RouteFile) -> Route {
        let name = file.substance.get_ref();
        let substance = Substance::from_symbol(name);
        if substance.is_none() && name != "halogens" {
            self.refuse(&file.substance, ProblemCode::UnknownName, name);
        }
        self.citation(&file.source, &file.method);
        Route {
            substance,
            classes: file.classes.iter().filter_map(|class| self.class(class)).collect(),
            method: file.method.clone(),
            technique: file.technique.clone(),
            source: file.source.get_ref().clone(),
        }
    }
}

impl RuleBook {
    /// Reads a rule book.
    ///
    /// # Errors
    /// Every problem found, each with its line and column; a book with a problem is not used at all.
    pub fn parse(text: &str) -> Result<RuleBook, Vec<Problem>> {
        check_schema(text, SCHEMA)?;
        let file: BookFile = toml::from_str(text).map_err(|error| vec![malformed(text, &error)])?;
        let mut reader = Reader { text, problems: Vec::new() };
        if file.screening.is_none() && file.halogens.is_none() {
            reader.refuse(&file.id, ProblemCode::NothingInBook, file.id.get_ref());
        }
        if file.id.get_ref().trim().is_empty() {
            reader.refuse(&file.id, ProblemCode::Missing, "id");
        }
        reader.citation(&file.source, file.confidence.get_ref());
        let screening = file.screening.as_ref().map(|screening| reader.screening(screening));
        let halogens = file.halogens.as_ref().map(|halogens| reader.halogens(halogens));
        let routes = file.route.iter().map(|route| reader.route(route)).collect();
        if !reader.problems.is_empty() {
            return Err(reader.problems);
        }
        Ok(RuleBook {
            id: file.id.into_inner(),
            title: file.title,
            edition: file.edition,
            source: file.source.into_inner(),
            confidence: file.confidence.into_inner(),
            note: file.note,
            sha256: sha256_hexadecimal(text.as_bytes()),
            screening,
            halogens,
            routes,
        })
    }
}

/// Checks what kind of file this is before anything else in it is read, so that the wrong file is called that.
///
/// # Errors
/// Another schema, with its place. A file without one passes here and fails where its keys are read.
pub fn check_schema(text: &str, expected: &str) -> Result<(), Vec<Problem>> {
    #[derive(Deserialize)]
    struct OnlySchema {
        schema: Spanned<String>,
    }
    match toml::from_str::<OnlySchema>(text) {
        Ok(file) if file.schema.get_ref() != expected => {
            let (line, column) = place_of(text, file.schema.span().start);
            let found = file.schema.into_inner();
            Err(vec![Problem { line, column, code: ProblemCode::WrongSchema, found }])
        }
        _ => Ok(()),
    }
}

/// A TOML error as a problem with its place.
pub fn malformed(text: &str, error: &toml::de::Error) -> Problem {
    let (line, column) = place_of(text, error.span().map_or(0, |span| span.start));
    Problem { line, column, code: ProblemCode::Malformed, found: error.message().to_owned() }
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
            ProblemCode::Malformed
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
        assert_eq!(RuleBook::parse("").unwrap_err()[0].code, ProblemCode::Malformed);
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
