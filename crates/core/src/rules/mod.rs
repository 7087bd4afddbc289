//! Rule books: dated data files of bands, limits and routes, each row with its source and clause.
//!
//! A book that is malformed, has a unit nobody knows or a band upside down is refused with the place; nothing of it
//! is used. One file is one edition: a new edition is a new book with its own id, and the old one stays.

mod books;
mod file;
mod library;
mod limit;

use std::collections::BTreeMap;
use std::sync::Arc;

pub use crate::data_file::{Problem, ProblemCode, place_of};
pub use books::{InForce, Named, RuleBooks};
pub use library::{
    CR6_AREA_2015, EDITIONS, EXEMPTIONS_2025, HALOGENS_2003, SCREENING_2013, comes_with_the_program,
    legal_limit, legal_limits, library,
};
pub use limit::{Basis, JUDGED, Limit, Validity};

use crate::exempt::{AreaRule, Exemption};
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
    /// The file's text, so that a report can carry it along.
    pub text: Arc<str>,
    /// Its bands.
    pub screening: Option<Screening>,
    /// Its halogen limits.
    pub halogens: Option<Halogens>,
    /// Its limits, in the order of the file.
    pub limits: Vec<Limit>,
    /// Its routes to reference methods.
    pub routes: Vec<Route>,
    /// Its exemptions, in the order of the file.
    pub exemptions: Vec<Exemption>,
    /// The books whose limits its exemptions are from, by id.
    pub exempts: Vec<String>,
    /// Its rule for hexavalent chromium by area.
    pub cr6_area: Option<AreaRule>,
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::day::Day;
    use crate::substance::Element;

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

    const MARKS: [&str; 4] = ["confirmed", "restated by a secondary source", "from memory", "derived"];

    #[test]
    fn every_edition_is_whole_and_every_row_says_where_it_comes_from_and_how_sure_that_is() {
        assert_eq!(library().len(), EDITIONS.len(), "an edition that can't be read");
        let mut ids = std::collections::BTreeSet::new();
        for book in library() {
            assert!(ids.insert(&book.id), "{} twice", book.id);
            assert!(MARKS.contains(&book.confidence.as_str()), "{}", book.id);
            let bands = book.screening.iter().flat_map(Screening::bands);
            let cited: Vec<&Citation> = bands
                .map(|(_, _, band)| &band.citation)
                .chain(book.screening.iter().map(|rule| &rule.citation))
                .chain(book.halogens.iter().map(|rule| &rule.citation))
                .chain(book.halogens.iter().flat_map(|rule| Halogen::ALL.map(|of| rule.citation_of(of))))
                .chain(book.limits.iter().map(|row| &row.citation))
                .collect();
            let rows = book.exemptions.iter().map(|row| (&row.source, &row.clause, &row.confidence));
            let rows: Vec<_> = rows
                .chain(book.cr6_area.iter().map(|rule| (&rule.source, &rule.clause, &book.confidence)))
                .chain(cited.into_iter().map(|row| (&row.source, &row.clause, &row.confidence)))
                .collect();
            assert!(!rows.is_empty(), "{}", book.id);
            for row @ (source, clause, confidence) in rows {
                assert!(!source.is_empty() && !clause.is_empty(), "{}: {row:?}", book.id);
                assert!(MARKS.contains(&confidence.as_str()), "{}: {row:?}", book.id);
            }
        }
    }

    fn row_of(book: &str, id: &str) -> &'static Limit {
        let book = library().iter().find(|one| one.id == book).unwrap_or_else(|| panic!("{book}"));
        book.limits.iter().find(|row| row.id == id).unwrap_or_else(|| panic!("{id}"))
    }

    /// Values and operators, beside the law's own words: "tolerated" and "no more than" let the limit itself conform,
    /// "equal to or greater than is prohibited" doesn't.
    #[test]
    fn limits_and_operators_are_the_laws() {
        for (book, id, limit, equal_is_within) in [
            ("eu-rohs-annex-ii", "Pb", 1000, true),
            ("eu-rohs-annex-ii", "Hg", 1000, true),
            ("eu-rohs-annex-ii", "Cd", 100, true),
            ("eu-rohs-annex-ii", "Cr(VI)", 1000, true),
            ("eu-rohs-annex-ii", "PBB, PBDE", 320, true),
            ("uk-rohs-2012", "Cd", 100, true),
            ("gb-26572-2025", "Cd", 100, true),
            ("gb-t-26572-2011", "Pb", 1000, true),
            ("eu-elv-2000-53", "Cd", 100, true),
            ("js709b-2015", "Br", 1000, false),
            ("js709b-2015", "Cl", 1000, false),
            ("eu-packaging-94-62", "four metals", 100, true),
            ("eu-packaging-2025-40", "four metals", 100, true),
            ("eu-reach-xvii-23", "plastics", 100, false),
            ("eu-reach-xvii-23", "jewellery", 100, false),
            ("eu-reach-xvii-63", "mouthing", 500, false),
            ("eu-reach-xvii-63", "PVC", 1000, false),
            ("us-cpsia-101", "Pb", 100, true),
            ("us-16-cfr-1303", "paint", 90, true),
        ] {
            let row = row_of(book, id);
            assert_eq!(row.limit, MassFraction::from_mg_per_kg(limit), "{book} {id}");
            assert_eq!(row.equal_is_within, equal_is_within, "{book} {id}");
        }
        assert_eq!(row_of("eu-elv-2000-53", "Pb").citation.confidence, "from memory");
        assert_eq!(row_of("eu-rohs-annex-ii", "PBB, PBDE").citation.confidence, "derived");
        assert_eq!(row_of("eu-rohs-annex-ii", "Cr(VI)").species_of(Element::CR), Some("Cr(VI)"));
        assert_eq!(row_of("eu-packaging-2025-40", "four metals").species_of(Element::PB), None);
        assert!(row_of("js709b-2015", "Br").source_unknown);
    }

    /// A day belongs to the old law or to the new one, never to both and never to neither.
    #[test]
    fn one_law_follows_the_other_without_a_gap() {
        for (old, new, id, first) in [
            ("eu-packaging-94-62", "eu-packaging-2025-40", "four metals", "2026-08-12"),
            ("gb-t-26572-2011", "gb-26572-2025", "Pb", "2027-08-01"),
        ] {
            let day = Day::parse(first).unwrap();
            assert_eq!(row_of(new, id).validity, Validity { from: Some(day), until: None });
            let last = row_of(old, id).validity.until.unwrap();
            assert!(last < day);
            let holds = |book, day| row_of(book, id).validity.holds_on(day);
            assert!(holds(old, last) && !holds(old, day) && holds(new, day) && !holds(new, last));
            let next = [("2026-08-11", "2026-08-12"), ("2027-07-31", "2027-08-01")];
            assert!(next.contains(&(last.to_string().as_str(), first)));
        }
    }

    const BOOK: &str = "schema = \"plumbline.rules/1\"\nid = \"house\"\ntitle = \"t\"\nedition = \"1\"\nsource = \"s\"\n\
                        confidence = \"invented\"\nvalid_from = \"2020\"\nsigma_factor = \"2\"\n\
                        [[limit]]\nid = \"a\"\nof = [\"Pb\", \"Cr\"]\nlimit = \"0.01 %\"\noperator = \"below\"\n\
                        classes = [\"polymer\"]\nbasis = \"article\"\nspecies = { Cr = \"Cr(VI)\" }\nsource = \"s\"\n\
                        clause = \"c\"\n";

    #[test]
    fn a_row_has_its_books_days_and_confidence_unless_it_has_its_own() {
        let book = RuleBook::parse(BOOK).unwrap();
        let row = &book.limits[0];
        assert_eq!(row.limit, MassFraction::from_mg_per_kg(100));
        assert_eq!(row.sigma_factor.to_string(), "2");
        assert_eq!(row.of, [Element::PB, Element::CR]);
        assert_eq!(row.citation.confidence, "invented");
        assert_eq!(row.validity.from, Day::parse("2020-01-01"));
        assert_eq!(book.validity, row.validity);
        let own =
            BOOK.to_owned() + "valid_until = \"2021\"\nconfidence = \"derived\"\nsource_unknown = true\n";
        let row = RuleBook::parse(&own).unwrap().limits.remove(0);
        assert_eq!(row.validity, Validity { from: None, until: Day::parse("2021-12-31") });
        assert!(row.source_unknown);
        assert_eq!(row.citation.confidence, "derived");
    }

    #[test]
    fn a_limit_that_says_too_little_or_nonsense_is_refused() {
        for (from, to, code, found) in [
            ("of = [\"Pb\", \"Cr\"]\n", "", ProblemCode::Missing, "of"),
            ("of = [\"Pb\"", "of = [\"As\"", ProblemCode::UnknownName, "As"),
            ("of = [\"Pb\"", "of = [\"Cr\"", ProblemCode::Twice, "Cr"),
            ("classes = [\"polymer\"]\n", "", ProblemCode::Missing, "classes"),
            ("[\"polymer\"]", "[\"unknown\"]", ProblemCode::OutOfRange, "unknown"),
            ("[\"polymer\"]", "[\"wood\"]", ProblemCode::UnknownName, "wood"),
            ("\"article\"", "\"whole\"", ProblemCode::UnknownName, "whole"),
            ("\"below\"", "\"under\"", ProblemCode::UnknownName, "under"),
            ("\"0.01 %\"", "\"0 %\"", ProblemCode::NotAboveZero, "0 %"),
            ("{ Cr =", "{ Xx =", ProblemCode::UnknownName, "Xx"),
            ("{ Cr =", "{ Hg =", ProblemCode::UnknownName, "Cr(VI)"),
            ("\"2020\"", "\"2020-13-01\"", ProblemCode::OutOfRange, "2020-13-01"),
            (
                "\"2020\"",
                "\"2020\"\nvalid_until = \"2019\"",
                ProblemCode::OutOfRange,
                "2020-01-01 / 2019-12-31",
            ),
            ("sigma_factor = \"2\"", "sigma_factor = \"9\"", ProblemCode::OutOfRange, "9"),
            ("id = \"house\"", "id = \"a@b\"", ProblemCode::OutOfRange, "a@b"),
            ("id = \"house\"", "id = \" \"", ProblemCode::OutOfRange, " "),
            ("clause = \"c\"", "clause = \" \"", ProblemCode::NoSource, "s"),
        ] {
            assert!(BOOK.contains(from), "{from}");
            let problems = RuleBook::parse(&BOOK.replacen(from, to, 1)).unwrap_err();
            assert_eq!((problems[0].code, problems[0].found.as_str()), (code, found), "{from} -> {to}");
        }
        let rows = BOOK.split_once("[[limit]]").unwrap().1;
        let twice = RuleBook::parse(&format!("{BOOK}[[limit]]{rows}")).unwrap_err();
        assert_eq!((twice[0].code, twice[0].found.as_str()), (ProblemCode::Twice, "a"));
        let same_day = BOOK.replace("\"2020\"", "2020-01-01\nvalid_until = 2020-01-01");
        assert!(RuleBook::parse(&same_day).is_ok());
    }

    #[test]
    fn books_stand_side_by_side_and_are_named_by_id_and_digest() {
        let mut books = RuleBooks::built_in().unwrap();
        let house = RuleBook::parse(BOOK).unwrap();
        books.add(house.clone());
        assert_eq!(books.all().len(), 5, "limits take nobody's place");
        let ids = |books: &InForce<'_>| books.limits.iter().map(|book| book.id.clone()).collect::<Vec<_>>();
        assert_eq!(ids(&books.in_force(&[])), ["house"], "a book that was loaded counts");
        let pinned = |digits: &str| format!("house@{digits}");
        let names = [
            "eu-rohs-annex-ii".to_owned(),
            "house".to_owned(),
            "eu-rohs-annex-ii".to_owned(),
            "nowhere".to_owned(),
            pinned(&house.sha256[..8]),
            pinned("00000000"),
            pinned("0000000"),
            "iec-61249-2-21-2003".to_owned(),
            "iec-62321-3-1-2013".to_owned(),
        ];
        let found = books.in_force(&names);
        assert_eq!(ids(&found), ["house", "eu-rohs-annex-ii"]);
        assert_eq!(found.not_loaded, ["nowhere", "house@0000000"]);
        assert_eq!(found.differing, ["house@00000000"]);
        assert_eq!(found.halogens.unwrap().id, "iec-61249-2-21-2003");
        assert!(books.in_force(&[]).halogens.is_none());
        let bands = SCREENING_2013.replace("iec-62321-3-1-2013", "house-bands");
        books.add(RuleBook::parse(&bands).unwrap());
        assert_eq!(books.in_force(&names).not_loaded, ["nowhere", "house@0000000", "iec-62321-3-1-2013"]);
    }

    /// Numbers, days and conditions beside the law's own entries (Directive 2011/65/EU, Annex III, as amended by
    /// Delegated Directives (EU) 2025/1802, 2025/2363 and 2025/2364, restated by secondary sources).
    #[test]
    fn exemptions_are_the_laws() {
        let books = RuleBooks::built_in().unwrap();
        let rows = books.exemptions();
        assert_eq!(rows.len(), 39);
        let say = |row: &Exemption| {
            let limit = row.bound.limit().map_or("-".to_owned(), |limit| limit.to_string());
            let day = row.expires.map_or("-".to_owned(), |day| day.to_string());
            let star = if row.starred { "*" } else { "" };
            let found = if row.found { "" } else { " not found" };
            let gone = if row.not_filed { " not filed" } else { "" };
            let group = row.groups[0].code();
            format!("{}{star} {} {limit} {group} {day}{found}{gone}", row.entry, row.substance.symbol())
        };
        let said: Vec<String> = rows.iter().map(say).collect();
        for expected in [
            "6(a) Pb 3500 steel 2026-12-11",
            "6(a)-I* Pb 3500 steel 2027-06-30",
            "6(a)-II* Pb 2000 steel 2027-06-30",
            "6(b) Pb 4000 aluminium 2027-06-11",
            "6(b)-I Pb 4000 aluminium 2026-12-11",
            "6(b)-I Pb 4000 aluminium 2027-06-30",
            "6(b)-II* Pb 4000 aluminium 2027-06-11",
            "6(b)-II* Pb 4000 aluminium 2027-06-30",
            "6(b)-III* Pb 3000 aluminium 2027-06-30",
            "6(c)* Pb 40000 copper 2027-06-30",
            "7(a) Pb 850000 lead 2027-06-30",
            "7(a)-VII Pb 850000 lead 2027-12-31",
            "7(b) Pb - tin 2016-07-21 not filed",
            "7(c)-I Pb - glass_ceramic 2027-06-30",
            "7(c)-II Pb - glass_ceramic 2027-12-31",
            "7(c)-IV Pb - glass_ceramic - not found",
            "7(c)-VI Pb - glass_ceramic 2027-12-31",
            "8(b)-I Cd - copper 2021-07-21",
            "15(a) Pb - tin 2021-07-21",
            "34 Pb - glass_ceramic 2024-07-21",
            "37 Pb - tin - not found",
        ] {
            assert!(said.iter().any(|one| one == expected), "{expected}: {said:#?}");
        }
        let in_force = Day::parse("2025-12-11");
        for row in rows {
            let amended = ["2025/1802", "2025/2363", "2025/2364"].iter().any(|act| row.act.ends_with(act));
            assert_eq!(row.from, if amended { in_force } else { None }, "{}", row.entry);
            // No entry of this law covers whatever it is claimed for.
            assert!(!row.groups.contains(&crate::exempt::Group::Any), "{}", row.entry);
            // Only alloys that a person touches carry the condition on what a child could mouth.
            assert!(!row.starred || row.entry.starts_with('6'), "{}", row.entry);
        }
        assert_eq!(books.exempts(), ["eu-rohs-annex-ii"]);
        let area = books.cr6_area().unwrap();
        assert!((area.negative_below.to_ug_per_cm2() - 0.1).abs() < 1e-9);
        assert!((area.positive_above.to_ug_per_cm2() - 0.13).abs() < 1e-9);
    }

    #[test]
    fn a_book_of_exemptions_takes_the_place_of_another() {
        let mut books = RuleBooks::built_in().unwrap();
        let house = EXEMPTIONS_2025.replace("rohs-annex-iii-2025", "house-exemptions");
        books.add(RuleBook::parse(&house).unwrap());
        let ids: Vec<&str> = books.all().iter().map(|book| book.id.as_str()).collect();
        assert!(ids.contains(&"house-exemptions") && !ids.contains(&"rohs-annex-iii-2025"), "{ids:?}");
        assert_eq!(books.exemptions().len(), 39);
        assert!(books.cr6_area().is_some());
        let names = ["rohs-annex-iii-2025", "iec-62321-7-1-2015", "house-exemptions"].map(str::to_owned);
        assert_eq!(books.in_force(&names).not_loaded, ["rohs-annex-iii-2025"]);
        let area = CR6_AREA_2015.replace("iec-62321-7-1-2015", "house-area");
        books.add(RuleBook::parse(&area).unwrap());
        assert_eq!(books.in_force(&names).not_loaded, ["rohs-annex-iii-2025", "iec-62321-7-1-2015"]);
        assert_eq!(books.all().len(), 4);
    }

    #[test]
    fn names_of_books_have_an_id_and_perhaps_digits() {
        let named = |text| Named::parse(text).map(|named| (named.id, named.digest));
        assert_eq!(named("a"), Some(("a", "")));
        assert_eq!(named("a@0123abcd"), Some(("a", "0123abcd")));
        for wrong in ["", " ", "@01234567", "a@", "a@0123456", "a@0123456g", "a@01234567ABCDEF"] {
            assert_eq!(named(wrong), None, "{wrong}");
        }
        assert!(Named::parse(&format!("a@{}", "0".repeat(64))).is_some());
        assert!(Named::parse(&format!("a@{}", "0".repeat(65))).is_none());
    }
}
