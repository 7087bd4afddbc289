//! Rule books: dated data files of bands, limits and routes, each row with its source and clause.
//!
//! A book that is malformed, has a unit nobody knows or a band upside down is refused with the place; nothing of it
//! is used. One file is one edition: a new edition is a new book with its own id, and the old one stays.

mod books;
mod file;
mod library;
mod limit;

use std::collections::BTreeMap;

pub use crate::data_file::{Problem, ProblemCode, place_of};
pub use books::{InForce, Named, RuleBooks};
pub use library::{EDITIONS, HALOGENS_2003, SCREENING_2013, library};
pub use limit::{Basis, JUDGED, Limit, Validity};

use crate::material::MaterialClass;
use crate::quantity::{Coverage, MassFraction};
use crate::substance::{Halogen, Substance};

/// The schema name a rule book must carry.
pub const SCHEMA: &str = "plumbline.rules/1";

/// Where a row of a book comes from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Citation {
    /// Document and edition.
    pub source: String,
    /// Clause.
    pub clause: String,
    /// How sure the row is, in the words of [`RuleBook::confidence`]; the book's own where the row says nothing.
    pub confidence: String,
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
    /// How sure the row is.
    pub confidence: String,
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
    /// Where it is law, or who publishes it; empty where not said.
    pub jurisdiction: String,
    /// The days it holds for.
    pub validity: Validity,
    /// The document.
    pub source: String,
    /// How sure its values are: "confirmed", "restated by a secondary source", "from memory", "derived", or the words
    /// of whoever wrote the book.
    pub confidence: String,
    /// What else to know.
    pub note: String,
    /// SHA-256 of the file.
    pub sha256: String,
    /// Its bands.
    pub screening: Option<Screening>,
    /// Its halogen limits.
    pub halogens: Option<Halogens>,
    /// Its limits, in the order of the file.
    pub limits: Vec<Limit>,
    /// Its routes to reference methods.
    pub routes: Vec<Route>,
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
