//! What was not assessed, how it was decided and by which rule books.

use maud::{Markup, html};

use super::Report;
use super::one_page::clipped;
use crate::day::Day;
use crate::quantity::MassFraction;
use crate::report::{books, phrases};
use crate::rules::{Citation, LowEdge, RuleBook, comes_with_the_program};
use crate::substance::Halogen;

/// Most letters of the names of books that stand in one sentence.
const FOREIGN: usize = 60;

impl Report<'_> {
    /// The rule books that don't come with the program, by their ids: one may bear the name of a standard and hold other
    /// limits. `None` where there is none.
    pub(super) fn foreign_books(&self) -> Option<String> {
        let used = self.inspection.books.used(&self.settings.books);
        let foreign = used.into_iter().filter(|book| !comes_with_the_program(&book.id, &book.text));
        let ids: Vec<&str> = foreign.map(|book| book.id.as_str()).collect();
        let all = ids.join(", ");
        (!ids.is_empty()).then(|| self.with("report-foreign_books", &[("books", &clipped(&all, FOREIGN))]))
    }

    pub(super) fn not_assessed(&self) -> Markup {
        html! {
            section data-element="2019/1020-not-assessed" {
                h2 { (self.say("report-not_assessed")) }
                ul { @for code in phrases::NOT_ASSESSED { li { (self.say(&format!("not-assessed-{code}"))) } } }
            }
        }
    }

    /// The days a book holds for. Laws are asked for the day of placing on the market, standards for their own day.
    fn validity(&self, book: &RuleBook) -> Markup {
        let law = !book.limits.is_empty() || !book.exemptions.is_empty();
        let day =
            |day: Option<Day>| day.map_or_else(|| self.say("report-open_day"), |day| self.words.day(day));
        html! {
            @if law {
                dt { (self.say("report-validity")) } dd { (books::days(self.words, book.validity)) }
            } @else {
                dt { (self.say("report-in_use")) } dd { (day(book.validity.from)) " – " (day(book.validity.until)) }
            }
        }
    }

    /// The extra relative uncertainty in percent.
    fn relative(&self) -> String {
        MassFraction::from_units(i64::from(self.settings.relative_sigma()) * 10_000).to_string()
    }

    pub(super) fn method(&self) -> Markup {
        let loaded = &self.inspection.books;
        html! {
            section data-element="7.8.2.1-f 62321-1-4.8-method" {
                h2 { (self.say("report-method")) }
                p data-element="63000-standards" { (self.say("report-standards")) }
                p { (self.say("report-method_text")) }
                @if let Some((_, rule)) = loaded.screening() {
                    p data-element="7.8.6.2-c" { (self.words.with("report-rule_text", &[
                        ("k", &rule.sigma_factor.to_string()),
                        ("low_sign", if rule.equal_is_below { "≤" } else { "<" }),
                        ("high_sign", if rule.equal_is_over { "≥" } else { ">" }),
                    ])) }
                }
                @if let Some((_, rule)) = loaded.screening() {
                    p { (self.with("report-inherent", &[("k", &rule.sigma_factor.to_string())])) }
                    p data-element="7.8.6.1" {
                        (self.with("report-risk", &[("chance", &phrases::tail_percent(self.words, rule.sigma_factor))]))
                    }
                }
                @if let Some((_, rule)) = loaded.halogens() {
                    p { (self.words.with("report-rule_halogens", &[
                        ("k", &rule.sigma_factor.to_string()),
                        ("within_sign", if rule.equal_is_within { "≤" } else { "<" }),
                        ("over_sign", if rule.equal_is_within { ">" } else { "≥" }),
                    ])) }
                }
                p {
                    @match self.settings.halogen_book(loaded) {
                        Some(book) => (self.words.with("report-halogens_moved", &[("book", book)])),
                        None => (self.say("report-halogens_shown")),
                    }
                }
                p data-element="7.8.3-uncertainty" { (self.say("report-uncertainty")) }
                @if self.settings.relative_sigma() > 0 {
                    p { (self.with("explain-relative", &[("percent", &self.relative())])) }
                }
                @if self.settings.uncertainty_is_full() { p { (self.say("report-uncertainty_full")) } }
                @else { p { (self.say("conformity-repeatability_only")) } }
                p { (self.say("report-probability")) }
                p { (self.say("report-thickness")) }
                @for book in loaded.used(&self.settings.books) {
                    h3 { (self.of_book(&book.title)) }
                    dl class="key" data-element="2019/1020-rules" {
                        dt { (self.say("report-book")) } dd { (book.id) }
                        dt { (self.say("report-edition")) } dd { (self.of_book(&book.edition)) }
                        (self.validity(book))
                        @if !book.jurisdiction.is_empty() { dt { (self.say("report-jurisdiction")) } dd { (self.of_book(&book.jurisdiction)) } }
                        dt { (self.say("report-confidence")) } dd { (books::confidence(self.words, &book.confidence)) }
                        dt { (self.say("report-digest")) } dd class="mono" { (book.sha256) }
                    }
                    @if !comes_with_the_program(&book.id, &book.text) {
                        p { b { (self.say("report-foreign_book")) } }
                    }
                    @if !book.note.is_empty() { p { (self.of_book(&book.note)) } }
                    @if !book.limits.is_empty() {
                        ul { @for row in &book.limits { li { (books::limit(self.words, row)) } } }
                    }
                    @if let Some(rule) = &book.screening {
                        table class="tight" data-element="7.8.6.2-b-limits" {
                            caption { (self.say("report-bands")) }
                            thead { tr {
                                th { (self.say("report-substance")) } th { (self.say("report-class")) }
                                th { (self.say("report-low")) } th class="n" { (self.say("report-high")) }
                                th { (self.say("report-clause")) }
                            } }
                            tbody {
                                @for (substance, class, band) in rule.bands() {
                                    tr {
                                        td { (substance.symbol()) }
                                        td { (self.say(&format!("class-{}", class.code()))) }
                                        @match band.edges {
                                            None => { td { (self.say("outcome-not_applicable")) } td {} }
                                            Some(edges) => {
                                                td { @match edges.low {
                                                    LowEdge::Fixed(low) => (self.words.number(&low)),
                                                    LowEdge::DetectionLimit { at_most } => (self.words.with(
                                                        "report-detection_edge", &[("limit", &at_most.to_string())])),
                                                } }
                                                td class="n" { @match edges.high {
                                                    Some(high) => (self.words.number(&high)),
                                                    None => (self.say("report-none")),
                                                } }
                                            }
                                        }
                                        td { (self.of_book(&cited(&band.citation))) }
                                    }
                                }
                            }
                        }
                    }
                    @if let Some(rule) = &book.halogens {
                        table {
                            thead { tr {
                                th { (self.say("report-substance")) } th class="n" { (self.say("report-limit")) }
                                th { (self.say("report-clause")) }
                            } }
                            tbody {
                                @for halogen in Halogen::ALL {
                                    tr {
                                        td { (self.say(&format!("substance-{}", halogen.name()))) }
                                        td class="n" { (self.words.number(&rule.limit(halogen))) " mg/kg" }
                                        td { (self.of_book(&cited(rule.citation_of(halogen)))) }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }
}

/// Source and clause as the book has them.
fn cited(of: &Citation) -> String {
    format!("{}, {}", of.source, of.clause)
}
