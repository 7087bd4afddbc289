//! The head of a report: what it is, which part, the summary, what goes with every result, and where it is signed.

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::fields::two_people;
use crate::report::{Length, PROGRAM, phrases};
use crate::stated;

impl Report<'_> {
    pub(super) fn or_blank(&self, kind: ActKind) -> String {
        self.set(kind).map_or_else(|| self.say("report-blank"), str::to_owned)
    }

    /// The fields of a statement about the whole inspection in one line; a blank to fill in by pen where nobody said.
    pub(super) fn said_or_blank(&self, kind: ActKind, names: &[&str]) -> String {
        let Some(text) = self.set(kind) else { return self.say("report-blank") };
        let said: Vec<String> =
            names.iter().map(|name| stated::field(text, name)).filter(|said| !said.is_empty()).collect();
        self.words.list(&said)
    }

    /// Which part of the report this is, and which others there are.
    pub(super) fn parts(&self, number: &str) -> Markup {
        html! { p class="parts" data-element="7.8.2.1-d" { (self.parts_text(number)) } }
    }

    pub(super) fn parts_text(&self, number: &str) -> String {
        let name = |length: Length| self.say(&format!("length-{}", length.code()));
        let others: Vec<String> = Length::ALL
            .iter()
            .filter(|length| **length != self.length)
            .map(|length| {
                let part = (*length as usize + 1).to_string();
                let arguments = [("part", part.as_str()), ("name", &name(*length)), ("file", length.file())];
                self.with("report-part_named", &arguments)
            })
            .collect();
        let part = (self.length as usize + 1).to_string();
        let arguments = [
            ("part", part.as_str()),
            ("number", number),
            ("name", &name(self.length)),
            ("others", &self.words.series(&others)),
        ];
        self.with("report-parts", &arguments)
    }

    /// Data that are invented are said to be so before anything else, and on every page.
    pub(super) fn invented(&self) -> Markup {
        html! {
            @if self.settings.is_invented() { p class="invented" { b { (self.say("report-invented")) } } }
        }
    }

    pub(super) fn heading(&self, number: &str, sections: &[String]) -> Markup {
        html! {
            header {
                h1 data-element="7.8.2.1-a" { (self.title()) }
                p class="sub" { (self.say("report-subtitle")) }
                (self.invented())
                dl class="key" {
                    dt { (self.say("report-number")) } dd { b { (number) } }
                    dt { (self.say("report-issuer")) }
                    dd data-element="7.8.2.1-b 62321-1-4.8-laboratory" {
                        (self.said_or_blank(ActKind::Issuer, &["name", "address"]))
                    }
                    dt { (self.say("report-customer")) }
                    dd data-element="7.8.2.1-e" { (self.said_or_blank(ActKind::Customer, &["name", "contact"])) }
                    dt { (self.say("report-issued_on")) }
                    dd data-element="7.8.2.1-j" { (self.words.moment(&self.or_blank(ActKind::IssuedOn))) }
                    dt { (self.say("report-reviewed")) } dd { (self.words.moment(&self.or_blank(ActKind::ReviewedAt))) }
                    dt { (self.say("report-inspector")) } dd { (self.or_blank(ActKind::Inspector)) }
                    dt { (self.say("report-place")) } dd { (self.or_blank(ActKind::Place)) }
                    dt { (self.say("report-category")) } dd { (self.category_words()) }
                    dt { (self.say("report-placing")) }
                    dd data-element="2019/1020-placing" { (self.words.moment(&self.or_not_stated(self.set(ActKind::PlacingDate)))) }
                    dt { (self.say("report-program")) } dd { (PROGRAM.name) " " (PROGRAM.version) }
                    dt { (self.say("report-findings_digest")) } dd class="mono" { (self.digest) }
                }
                (self.parts(number))
                p class="sub" data-element="7.8.2.1-l 7.8.2.1-copy" { (self.say("report-relates")) }
                @if !sections.is_empty() {
                    nav class="contents" data-element="7.8.2.1-d-order" {
                        p class="keep sub" {
                            (self.with("report-contents", &[("end", &self.ending(number))]))
                        }
                        ol { @for section in sections { li { (maud::PreEscaped(section)) } } }
                    }
                }
            }
        }
    }

    pub(super) fn category_words(&self) -> String {
        match self.set(ActKind::Category) {
            Some(category) => phrases::act_value(self.words, ActKind::Category, category),
            None => self.say("not-stated"),
        }
    }

    pub(super) fn summary(&self) -> Markup {
        html! {
            section data-element="7.8.3-conformity 7.8.6.2-a" {
                h2 { (self.say("report-summary")) }
                p { b { (phrases::summary_counts(self.words, self.findings)) } }
                p { (phrases::summary_says(self.words, self.findings)) }
                p { (phrases::summary_evidence(self.words, self.findings)) }
                @if let Some(foreign) = self.foreign_books() { p { b { (foreign) } } }
                p class="sub" { (self.say("report-legend")) }
            }
        }
    }

    pub(super) fn cautions(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-cautions")) }
                ul class="cautions" {
                    @for caution in phrases::cautions(self.words) { li { (caution) } }
                }
            }
        }
    }

    /// Who authorises; a second person only where it is another one.
    pub(super) fn authorised(&self) -> (String, String) {
        let text = self.set(ActKind::Authorised).unwrap_or("");
        let (by, second) = (stated::field(text, "by"), stated::field(text, "second"));
        let second = if two_people(&by, &second) { second } else { String::new() };
        (by, second)
    }

    pub(super) fn signatures(&self, number: &str) -> Markup {
        let (by, second) = self.authorised();
        html! {
            section class="last" data-element="7.8.2.1-o 62321-1-4.8-signature" {
                h2 { (self.say("report-signatures")) }
                p { (self.say("report-number")) (self.words.colon()) b { (number) } }
                p class="mono" { (self.say("report-findings_digest")) (self.words.colon()) (self.digest) }
                div class="signatures" {
                    div { (self.say("report-sign_inspector")) @if let Some(name) = self.set(ActKind::Inspector) { br; b { (name) } } }
                    div { (self.say("report-sign_second")) @if !second.is_empty() { br; b { (second) } } }
                    div { (self.say("report-sign_authorised")) @if !by.is_empty() { br; b { (by) } } }
                }
                (self.end(number))
            }
        }
    }

    /// How a part ends, in words.
    fn ending(&self, number: &str) -> String {
        let part = (self.length as usize + 1).to_string();
        let end = format!("{} {number}", self.say("report-end"));
        self.words.list(&[end, self.with("report-part_short", &[("part", &part)])])
    }

    pub(super) fn end(&self, number: &str) -> Markup {
        html! { p class="end" data-element="7.8.2.1-d-end" { "— " (self.ending(number)) " —" } }
    }
}
