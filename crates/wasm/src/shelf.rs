//! The rule books: those in force and those on the shelf, each in plain words when asked.

use plumbline_core::inspection::Inspection;
use plumbline_core::report::books;
use plumbline_core::rules::{self, RuleBook};
use plumbline_core::words::Words;
use serde::Serialize;

#[derive(Serialize)]
pub(crate) struct ShelfBook {
    id: String,
    title: String,
    edition: String,
    jurisdiction: String,
    days: String,
    confidence: String,
    sha256: String,
    in_force: bool,
}

/// Every book there is, those in force first, each in the order it is kept.
pub(crate) fn shelf(inspection: &Inspection, words: &Words) -> Vec<ShelfBook> {
    let settings = inspection.settings();
    let used = inspection.books.used(&settings.books);
    let view = |book: &RuleBook, in_force| ShelfBook {
        id: book.id.clone(),
        title: book.title.clone(),
        edition: book.edition.clone(),
        jurisdiction: book.jurisdiction.clone(),
        days: books::days(words, book.validity),
        confidence: books::confidence(words, &book.confidence),
        sha256: book.sha256.clone(),
        in_force,
    };
    let is_used = |book: &RuleBook| used.iter().any(|other| other.id == book.id);
    let idle = rules::library().iter().filter(|book| !is_used(book));
    used.iter().map(|book| view(book, true)).chain(idle.map(|book| view(book, false))).collect()
}

/// A book row by row, without what the list of books says of it already.
pub(crate) fn explained(inspection: &Inspection, words: &Words, id: &str) -> Vec<String> {
    let Some(book) = inspection.books.find(id) else { return Vec::new() };
    let listed = books::listed(words, book).len();
    books::explained(words, book).into_iter().skip(listed).collect()
}
