//! `web/index.html` with its marked places filled.
//!
//! A mark is a comment alone on its line: `<!-- plumbline:NAME -->`.

use crate::Failure;

const MARK_START: &str = "<!-- plumbline:";
const MARK_END: &str = " -->";

/// Puts each part at its mark. Every mark must be there once, and no other may be.
pub(crate) fn fill(html: &str, parts: &[(&str, String)]) -> Result<String, Failure> {
    let mut filled =
        String::with_capacity(html.len() + parts.iter().map(|(_, part)| part.len()).sum::<usize>());
    let mut seen = vec![false; parts.len()];
    for line in html.lines() {
        if line.contains(MARK_START) {
            let name = mark_name(line)
                .ok_or_else(|| format!("index.html: a mark is not alone on its line: {line}"))?;
            let place = parts.iter().position(|(part, _)| *part == name);
            let place = place.ok_or_else(|| format!("index.html: no part is called \"{name}\""))?;
            if std::mem::replace(&mut seen[place], true) {
                return Err(format!("index.html: the mark \"{name}\" appears twice"));
            }
            filled.push_str(&parts[place].1);
        } else {
            filled.push_str(line);
        }
        filled.push('\n');
    }
    match parts.iter().zip(&seen).find(|(_, seen)| !**seen) {
        Some(((name, _), _)) => Err(format!("index.html: the mark \"{name}\" is missing")),
        None => Ok(filled),
    }
}

fn mark_name(line: &str) -> Option<&str> {
    line.trim().strip_prefix(MARK_START)?.strip_suffix(MARK_END)
}

/// Data that the page reads from an element and no browser runs. `text` is seven bits a character, so nothing needs escaping.
pub(crate) fn inert(id: &str, text: &str) -> String {
    format!("<script type=\"text/plain\" id=\"{id}\">{text}</script>")
}

/// The same with a name that a person reads.
pub(crate) fn inert_named(id: &str, name: &str, text: &str) -> String {
    let name = name.replace('&', "&amp;").replace('"', "&quot;");
    format!("<script type=\"text/plain\" id=\"{id}\" data-name=\"{name}\">{text}</script>")
}

pub(crate) fn script(text: &str) -> String {
    format!("<script>{}</script>", kept_inside_a_script(text))
}

/// CSS has no escape that fits everywhere, so a style that would end its own element is refused.
pub(crate) fn style(text: &str) -> Result<String, Failure> {
    if text.to_ascii_lowercase().contains("</style") {
        return Err("the style sheet holds \"</style\", which would end it early".to_owned());
    }
    Ok(format!("<style>{text}</style>"))
}

/// `</script` ends a script wherever it stands, and `<!--` can keep a later end from being seen. In bundled code
/// both occur only within strings, templates and regular expressions, where `\x3c` is the same character.
fn kept_inside_a_script(text: &str) -> String {
    let mut kept = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find('<') {
        let (before, from) = rest.split_at(at);
        kept.push_str(before);
        kept.push_str(if opens_trouble(from) { "\\x3c" } else { "<" });
        rest = &from[1..];
    }
    kept.push_str(rest);
    kept
}

fn opens_trouble(from: &str) -> bool {
    let starts_with =
        |word: &str| from.get(..word.len()).is_some_and(|start| start.eq_ignore_ascii_case(word));
    starts_with("</script") || starts_with("<!--")
}

#[cfg(test)]
mod tests {
    use super::{fill, inert, kept_inside_a_script, script, style};

    fn parts() -> [(&'static str, String); 2] {
        [("style", "<style>a</style>".to_owned()), ("page", "<script>b</script>".to_owned())]
    }

    #[test]
    fn every_mark_gives_way_to_its_part() {
        let html = "<html>\n  <!-- plumbline:style -->\n<p>&</p>\n<!-- plumbline:page -->\n</html>\n";
        assert_eq!(
            fill(html, &parts()).expect("filled"),
            "<html>\n<style>a</style>\n<p>&</p>\n<script>b</script>\n</html>\n"
        );
    }

    #[test]
    fn a_missing_doubled_unknown_or_crowded_mark_stops_the_build() {
        let style = "<!-- plumbline:style -->\n";
        let page = "<!-- plumbline:page -->\n";
        for (html, said) in [
            (style.to_owned(), "\"page\" is missing"),
            (format!("{style}{page}{style}"), "\"style\" appears twice"),
            (format!("{style}{page}<!-- plumbline:date -->"), "no part is called \"date\""),
            (format!("{style}<p><!-- plumbline:page --></p>"), "not alone on its line"),
        ] {
            let failure = fill(&html, &parts()).expect_err("a broken page was taken");
            assert!(failure.contains(said), "{failure}");
        }
    }

    #[test]
    fn a_script_cannot_end_itself() {
        assert_eq!(
            kept_inside_a_script("a='</SCRIPT >';b='<!-- ü';c=d<e;f='</style'"),
            "a='\\x3c/SCRIPT >';b='\\x3c!-- ü';c=d<e;f='</style'"
        );
        assert_eq!(script("x='</script>'").matches("</script").count(), 1);
    }

    #[test]
    fn a_style_that_would_end_itself_is_refused() {
        assert!(style("a{content:'</STYLE>'}").is_err());
        assert_eq!(style("a{}").expect("plain"), "<style>a{}</style>");
    }

    #[test]
    fn inert_data_says_what_it_is() {
        assert_eq!(inert("some-id", "QUJD"), "<script type=\"text/plain\" id=\"some-id\">QUJD</script>");
    }
}
