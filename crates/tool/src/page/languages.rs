//! The languages that travel inside the page, packed until one is chosen.

use super::{packing, template};
use crate::Failure;
use plumbline_words::{ENGLISH, LANGUAGES, Language};

/// Every language but English, which is in the scripts: its tag and its element.
pub(crate) fn packed() -> Result<Vec<(&'static str, String)>, Failure> {
    let others = LANGUAGES.iter().filter(|language| !std::ptr::eq(language.rooms, ENGLISH));
    others.map(|language| Ok((language.tag, element(language)?))).collect()
}

fn element(language: &Language) -> Result<String, Failure> {
    let text = packing::deflated(&as_json(language)?);
    let id = format!("plumbline-words-{}", language.tag);
    Ok(template::inert_named(&id, language.name, &text))
}

/// The form the page reads: `{"core": TEXTS, "page": TEXTS}`, in Project Fluent.
fn as_json(language: &Language) -> Result<Vec<u8>, Failure> {
    let core: Vec<String> = language.rooms.iter().map(|room| without_comments(room.text)).collect();
    let texts = serde_json::json!({ "core": core.join("\n"), "page": without_comments(language.page) });
    serde_json::to_vec(&texts).map_err(|error| format!("texts of {} as JSON: {error}", language.tag))
}

/// Comments are for translators. A line of a text begins with a blank, so a `#` at the beginning of one is a comment.
fn without_comments(texts: &str) -> String {
    texts.lines().filter(|line| !line.starts_with('#')).flat_map(|line| [line, "\n"]).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_language_is_packed_without_comments_and_with_every_text() {
        let texts = "# Of it\n## A part\na = A # 1\n    # 2\nb = B\n";
        assert_eq!(without_comments(texts), "a = A # 1\n    # 2\nb = B\n");
        for language in LANGUAGES {
            let json: serde_json::Value =
                serde_json::from_slice(&as_json(language).expect("JSON")).expect("JSON");
            let of = |key: &str| {
                json[key].as_str().expect("texts").lines().filter(|line| line.contains(" =")).count()
            };
            let lines = |text: &str| {
                text.lines().filter(|line| line.contains(" =") && !line.starts_with('#')).count()
            };
            assert_eq!(of("core"), language.rooms.iter().map(|room| lines(room.text)).sum::<usize>());
            assert_eq!(of("page"), lines(language.page));
        }
    }
}
