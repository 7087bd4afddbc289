//! The words of every language, as Project Fluent files: `crates/words/LANGUAGE/ROOM.ftl`.
//!
//! The build fails where a language lacks a text that English has, has one more, or names other arguments.

/// One file of texts of one language.
#[derive(Clone, Copy, Debug)]
pub struct Room {
    /// Its name: `core`, `page`.
    pub name: &'static str,
    /// Its messages, in Project Fluent.
    pub text: &'static str,
}

/// One language with all its texts.
#[derive(Clone, Copy, Debug)]
pub struct Language {
    /// BCP 47 tag: `en`, `de`, `ja`, `zh-Hans`.
    pub tag: &'static str,
    /// Its own name for itself: `Deutsch`.
    pub name: &'static str,
    /// What the core says, a room each.
    pub rooms: &'static [Room],
    /// What the page says of itself.
    pub page: &'static str,
}

include!(concat!(env!("OUT_DIR"), "/languages.rs"));

/// The language of a tag.
pub fn language(tag: &str) -> Option<&'static Language> {
    LANGUAGES.iter().find(|language| language.tag == tag)
}

#[cfg(test)]
mod comparing;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::comparing::{Texts, add_texts, compare, plain};

    fn compared(other: &str) -> Vec<String> {
        let english = "a = Take { $n } of { $of }\n    .remedy = Go\nb = { $n ->\n    [one] One\n   *[other] { $n } rows\n }\n";
        let (mut first, mut second, mut problems) = (Texts::new(), Texts::new(), Vec::new());
        add_texts(&mut first, "en", "core", english, &mut problems);
        add_texts(&mut second, "xx", "core", other, &mut problems);
        compare("xx", &second, &first, &mut problems);
        problems
    }

    #[test]
    fn a_language_with_every_text_and_argument_passes_whatever_its_plurals_are() {
        let whole = "a = { $of } { $n }\n    .remedy = R\nb = { $n } x\n";
        assert_eq!(compared(whole), Vec::<String>::new());
    }

    #[test]
    fn a_missing_text_or_argument_or_one_too_many_or_a_broken_message_fails_the_build() {
        for (other, told) in [
            ("a = { $of } { $n }\n    .remedy = R\n", "xx has no text for core: b"),
            ("a = { $of } { $n }\nb = { $n } x\n", "xx has no text for core: a.remedy"),
            ("a = { $of }\n    .remedy = R\nb = { $n } x\n", "core: a names {\"of\"}"),
            ("a = { $of } { $n }\n    .remedy = { $n }\nb = { $n } x\n", "core: a.remedy names {\"n\"}"),
            (
                "a = { $of } { $n }\n    .remedy = R\nb = { $n } x\nc = C\n",
                "core: c is a text English does not have",
            ),
            ("a = { $of } { $n }\n    .remedy = R\nb = { $n } x\nb = { $n } y\n", "core: b stands twice"),
            ("a = { $of } { $n }\n    .remedy = R\nb = { $n\n", "xx/core.ftl line 4"),
        ] {
            let problems = compared(other);
            assert!(problems.iter().any(|problem| problem.contains(told)), "{told}: {problems:?}");
        }
    }

    #[test]
    fn a_form_for_one_that_a_language_never_chooses_fails_the_build() {
        for (tag, text, bad) in [
            ("ja", "a = { $n ->\n    [one] x\n   *[other] { $n }\n }\n", true),
            (
                "zh-Hans",
                "a = { $of ->\n    [x] y\n   *[other] { $n ->\n    [one] x\n   *[other] z\n }\n }\n",
                true,
            ),
            ("ja", "a = { $n ->\n    [1] x\n   *[other] { $n }\n }\n", false),
            ("de", "a = { $n ->\n    [one] x\n   *[other] { $n }\n }\n", false),
        ] {
            let mut problems = Vec::new();
            add_texts(&mut Texts::new(), tag, "core", text, &mut problems);
            assert_eq!(
                problems.iter().any(|problem| problem.contains("write [1]")),
                bad,
                "{tag}: {problems:?}"
            );
        }
    }

    #[test]
    fn each_language_says_its_own_name() {
        assert_eq!(language("en").map(|english| english.name), Some("English"));
        assert!(LANGUAGES.iter().all(|language| !language.name.is_empty()));
        assert_eq!(plain("a = { $n }\nb = Deutsch\n", "b"), Some("Deutsch".to_owned()));
        assert_eq!(plain("a = { $n }\n", "a"), None);
    }

    #[test]
    fn every_language_has_the_rooms_of_english() {
        let rooms = |language: &Language| language.rooms.iter().map(|room| room.name).collect::<Vec<_>>();
        let english = language("en").expect("English");
        assert!(rooms(english).contains(&"core"));
        for language in LANGUAGES {
            assert_eq!(rooms(language), rooms(english), "{}", language.tag);
            assert!(!language.page.is_empty(), "{}", language.tag);
        }
    }
}
