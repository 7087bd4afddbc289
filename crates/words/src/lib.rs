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
mod tests {
    use super::*;

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
