//! Several books side by side, and which of them an inspection goes by.

use super::library::{CR6_AREA_2015, EXEMPTIONS_2025, HALOGENS_2003, SCREENING_2013, library};
use super::{Halogens, Problem, Route, RuleBook, Screening};
use crate::exempt::{AreaRule, Exemption};
use crate::material::MaterialClass;
use crate::substance::Substance;

/// A book as an inspection names it: its id, or `id@` and the first digits of its file's SHA-256, so that another file
/// of the same id is noticed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Named<'a> {
    /// The id.
    pub id: &'a str,
    /// The digits; empty where none are given.
    pub digest: &'a str,
}

/// How many digits of a digest name a file: fewer might be another's by chance.
const DIGITS: std::ops::RangeInclusive<usize> = 8..=64;

impl<'a> Named<'a> {
    /// Reads a name; `None` where the id is empty or the digits are none (or fewer than eight).
    pub fn parse(text: &'a str) -> Option<Named<'a>> {
        let (id, digest) = text.split_once('@').unwrap_or((text, ""));
        let digits = |text: &str| {
            DIGITS.contains(&text.len())
                && text.bytes().all(|digit| matches!(digit, b'0'..=b'9' | b'a'..=b'f'))
        };
        let sound = !id.trim().is_empty() && (text == id || digits(digest));
        sound.then_some(Named { id, digest })
    }
}

/// The books an inspection goes by, beside the bands and the halogen limits that are always computed.
#[derive(Clone, Debug, Default)]
pub struct InForce<'a> {
    /// Books with limits: those that were loaded, then those that are named, each once.
    pub limits: Vec<&'a RuleBook>,
    /// The halogen book that is named, where it is the one in force.
    pub halogens: Option<&'a RuleBook>,
    /// Names of books that are not there, or hold bands or halogen limits that another book stands in for.
    pub not_loaded: Vec<String>,
    /// Names of books whose file has another digest.
    pub differing: Vec<String>,
}

impl InForce<'_> {
    /// The names of all limits, book after book, row after row: `book: row`.
    pub fn limit_names(&self) -> impl Iterator<Item = String> {
        self.limits.iter().flat_map(|book| book.limits.iter().map(|row| format!("{}: {}", book.id, row.id)))
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
        let books = [SCREENING_2013, HALOGENS_2003, EXEMPTIONS_2025, CR6_AREA_2015].map(RuleBook::parse);
        Ok(RuleBooks { books: books.into_iter().collect::<Result<_, _>>()? })
    }

    /// Adds a book. It stands in for the one of the same id, and for what it holds (bands, halogen limits, exemptions, chromium by
    /// area) of any other; a book that nothing is taken from any more is dropped.
    pub fn add(&mut self, book: RuleBook) {
        self.books.retain(|kept| kept.id != book.id);
        self.books.push(book);
        let last = |holds: fn(&RuleBook) -> bool| self.books.iter().rposition(holds);
        let used = [
            last(|book| book.screening.is_some()),
            last(|book| book.halogens.is_some()),
            last(|book| !book.exemptions.is_empty()),
            last(|book| book.cr6_area.is_some()),
        ];
        let mut at = 0;
        self.books.retain(|book| {
            at += 1;
            used.contains(&Some(at - 1)) || !book.limits.is_empty()
        });
        self.books.sort_by_key(|book| book.screening.is_none());
    }

    /// All books, the screening book first.
    pub fn all(&self) -> &[RuleBook] {
        &self.books
    }

    /// All books of an inspection: these, and those it names beside them.
    pub fn used(&self, names: &[String]) -> Vec<&RuleBook> {
        let mut used: Vec<&RuleBook> = self.books.iter().collect();
        for book in self.in_force(names).limits {
            if used.iter().all(|other| other.id != book.id) {
                used.push(book);
            }
        }
        used
    }

    /// The screening bands in force: those added last.
    pub fn screening(&self) -> Option<(&RuleBook, &Screening)> {
        self.books.iter().rev().find_map(|book| book.screening.as_ref().map(|screening| (book, screening)))
    }

    /// The halogen limits in force.
    pub fn halogens(&self) -> Option<(&RuleBook, &Halogens)> {
        self.books.iter().rev().find_map(|book| book.halogens.as_ref().map(|halogens| (book, halogens)))
    }

    fn exemption_book(&self) -> Option<&RuleBook> {
        self.books.iter().rev().find(|book| !book.exemptions.is_empty())
    }

    fn cr6_book(&self) -> Option<&RuleBook> {
        self.books.iter().rev().find(|book| book.cr6_area.is_some())
    }

    /// The exemptions in force: those of the book added last.
    pub fn exemptions(&self) -> &[Exemption] {
        self.exemption_book().map_or(&[], |book| &book.exemptions)
    }

    /// The books whose limits the exemptions in force are from, by id.
    pub fn exempts(&self) -> &[String] {
        self.exemption_book().map_or(&[], |book| &book.exempts)
    }

    /// The rule in force for hexavalent chromium by area.
    pub fn cr6_area(&self) -> Option<&AreaRule> {
        self.cr6_book().and_then(|book| book.cr6_area.as_ref())
    }

    /// A book by its id: one of these, else one that comes with the program.
    pub fn find(&self, id: &str) -> Option<&RuleBook> {
        self.books.iter().chain(library()).find(|book| book.id == id)
    }

    /// The books an inspection goes by, by the names it gives.
    pub fn in_force(&self, names: &[String]) -> InForce<'_> {
        let loaded = self.books.iter().filter(|book| !book.limits.is_empty());
        let mut found = InForce { limits: loaded.collect(), ..InForce::default() };
        for name in names {
            let named = Named::parse(name).and_then(|named| Some((named, self.find(named.id)?)));
            let Some((named, book)) = named else {
                found.not_loaded.push(name.clone());
                continue;
            };
            if !book.sha256.starts_with(named.digest) {
                found.differing.push(name.clone());
                continue;
            }
            let is = |other: Option<&RuleBook>| other.is_some_and(|other| other.id == book.id);
            let stood_in_for = (book.screening.is_some() && !is(self.screening().map(|(book, _)| book)))
                || (book.halogens.is_some() && !is(self.halogens().map(|(book, _)| book)))
                || (!book.exemptions.is_empty() && !is(self.exemption_book()))
                || (book.cr6_area.is_some() && !is(self.cr6_book()));
            if stood_in_for {
                found.not_loaded.push(name.clone());
                continue;
            }
            if book.halogens.is_some() {
                found.halogens = Some(book);
            }
            if !book.limits.is_empty() && found.limits.iter().all(|other| other.id != book.id) {
                found.limits.push(book);
            }
        }
        found
    }

    /// The reference method for a substance (`None`: the halogens) in a class.
    pub fn route(&self, substance: Option<Substance>, class: MaterialClass) -> Option<&Route> {
        self.books
            .iter()
            .flat_map(|book| &book.routes)
            .find(|route| route.substance == substance && route.classes.contains(&class))
    }
}
