//! The frame that every paper stands in: head, number, digest, what it is not, page n of m, and its end.

use maud::{Markup, PreEscaped, html};

use super::Papers;
use crate::acts::ActKind;
use crate::report::html::STYLE;

const OWN_STYLE: &str = include_str!("papers.css");

/// A text of ours as a string of a style sheet.
fn style_string(text: &str) -> String {
    let mut out = String::from("\"");
    for character in text.chars() {
        match character {
            '"' | '\\' => {
                out.push('\\');
                out.push(character);
            }
            // A `<` could end the style sheet.
            '<' => out.push_str("\\3c "),
            character if character.is_control() => out.push(' '),
            character => out.push(character),
        }
    }
    out.push('"');
    out
}

impl Papers<'_> {
    /// "Page n of m" of the language, as the content of a page's margin.
    fn page_of_pages(&self) -> String {
        const PAGE: &str = "\u{1}";
        const PAGES: &str = "\u{2}";
        let text = self.with("report-page_number", &[("page", PAGE), ("pages", PAGES)]);
        let mut content = Vec::new();
        let mut written = String::new();
        for character in text.chars() {
            let counter = match character {
                '\u{1}' => "counter(page)",
                '\u{2}' => "counter(pages)",
                other => {
                    written.push(other);
                    continue;
                }
            };
            content.push(style_string(&written));
            content.push(counter.to_owned());
            written.clear();
        }
        content.push(style_string(&written));
        content.join(" ")
    }

    /// A whole page. `kind` is the paper's name in the catalogue: `paper-KIND` is its title, `paper-KIND-is` what it is and
    /// what it is not.
    pub(super) fn page(&self, kind: &str, body: &Markup) -> Markup {
        let title = self.say(&format!("paper-{kind}"));
        let running = format!(
            "@page{{@bottom-left{{content:{}}}@bottom-right{{content:{}}}}}",
            style_string(&format!("{} · {title}", self.number)),
            self.page_of_pages()
        );
        let invented = if self.settings.is_invented() { self.say("paper-invented") } else { String::new() };
        let running = format!(":root{{--invented:{}}}{running}", style_string(&invented));
        html! {
            (maud::DOCTYPE)
            html lang=(self.words.tag()) {
                head {
                    meta charset="utf-8";
                    meta name="viewport" content="width=device-width, initial-scale=1";
                    meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:";
                    title { (title) " · " (self.number) }
                    style { (PreEscaped(STYLE)) (PreEscaped(OWN_STYLE)) (PreEscaped(running)) }
                }
                body class={ "paper paper-" (kind) } {
                    main {
                        header {
                            h1 { (title) }
                            @if self.settings.is_invented() { p class="invented" { b { (self.say("paper-invented")) } } }
                            p class="sub" { (self.say(&format!("paper-{kind}-is"))) (self.words.gap()) (self.say("caution-declaration")) }
                        }
                        (body)
                        p class="end" {
                            (self.with("paper-end", &[("number", &self.number)]))
                            br; span class="mono" { (self.say("report-findings_digest")) (self.words.colon()) (self.digest) }
                        }
                    }
                }
            }
        }
    }

    /// What the paper belongs to, and who sends it.
    pub(super) fn belongs_to(&self, more: &Markup) -> Markup {
        html! {
            dl class="key" {
                dt { (self.say("report-number")) } dd { b { (self.number) } }
                dt { (self.say("report-findings_digest")) } dd class="mono" { (self.digest) }
                dt { (self.say("report-reviewed")) } dd { (self.day_or_line(self.set(ActKind::ReviewedAt))) }
                dt { (self.say("report-inspector")) } dd { (Self::or_line(self.set(ActKind::Inspector))) }
                dt { (self.say("report-place")) } dd { (Self::or_line(self.set(ActKind::Place))) }
                dt { (self.say("paper-contact")) } dd { (Self::or_line(self.set(ActKind::Contact))) }
                (more)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::style_string;

    #[test]
    fn a_string_of_a_style_sheet_can_end_neither_itself_nor_the_sheet() {
        assert_eq!(style_string("a\"b\\c</style>\n"), "\"a\\\"b\\\\c\\3c /style> \"");
    }
}
