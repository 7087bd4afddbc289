//! Every text a person reads comes from one catalogue (Project Fluent files in `words/`), which the page reads too.

use std::borrow::Cow;

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use plumbline_words::{ENGLISH, Language};
use unic_langid::LanguageIdentifier;

use crate::day::Day;
use crate::locale;

/// The catalogue of one language.
pub struct Words {
    tag: String,
    bundle: FluentBundle<FluentResource>,
    /// The sign between a whole number and its decimals.
    decimal: String,
    /// What stands between texts, one for each of [`JOINS`].
    joins: [String; JOINS.len()],
}

/// Between things in a row, between longer pieces in a row, between sentences; after what a text is about, and after a
/// sentence where another follows.
const JOINS: [&str; 5] = ["join-list", "join-series", "join-sentences", "join-colon", "join-stop"];

/// The tag of the language that data speaks.
pub const ENGLISH_TAG: &str = "en";

/// The arguments that count, and so choose plurals.
const COUNTS: [&str; 10] =
    ["count", "checks", "aside", "of", "rows", "readings", "lots", "take", "units", "n"];
const POINT: &str = ".";
const DECIMAL: &str = "locale-decimal";
const TWO_DIGITS: &str = "locale-two_digits";
/// An act is quoted as it was given: its numbers and dates stand as a settings file writes them. A date that is being put
/// together is not written twice.
const QUOTED: [&str; 2] = ["act-", "locale-"];

impl std::fmt::Debug for Words {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str("Words")
    }
}

impl Words {
    /// English.
    pub fn english() -> Words {
        Words::of_texts(ENGLISH_TAG, ENGLISH.iter().map(|room| room.text))
    }

    /// A language that is built in with all its texts; a door that can't hold them all uses [`Words::of_texts`].
    pub fn of(language: &Language) -> Words {
        Words::of_texts(language.tag, language.rooms.iter().map(|room| room.text))
    }

    /// The catalogue of the language `tag` (BCP 47) with these Project Fluent texts.
    pub fn of_texts<'a>(tag: &str, texts: impl IntoIterator<Item = &'a str>) -> Words {
        let language = LanguageIdentifier::from_bytes(tag.as_bytes()).unwrap_or_default();
        let mut bundle = FluentBundle::new(vec![language]);
        // Isolation marks would travel into CSV, JSON and print.
        bundle.set_use_isolating(false);
        // A file with a broken message still gives the others; the build holds that none is broken.
        for text in texts {
            let resource = FluentResource::try_new(text.to_owned()).unwrap_or_else(|(resource, _)| resource);
            bundle.add_resource_overriding(resource);
        }
        let joins = std::array::from_fn(|_| String::new());
        let mut words = Words { tag: tag.to_owned(), bundle, decimal: POINT.to_owned(), joins };
        words.joins = JOINS.map(|id| words.say(id));
        if words.has(DECIMAL) {
            words.decimal = words.say(DECIMAL);
        }
        words
    }

    /// The BCP 47 tag of its language.
    pub fn tag(&self) -> &str {
        &self.tag
    }

    /// The sign between a whole number and its decimals.
    pub fn decimal(&self) -> &str {
        &self.decimal
    }

    /// A number that the program states, as the language writes it. English writes it as it stands.
    pub fn number(&self, number: &impl std::fmt::Display) -> String {
        let text = number.to_string();
        if self.decimal == POINT { text } else { locale::with_sign(&text, &self.decimal) }
    }

    /// A day, as the language writes it.
    pub fn day(&self, day: Day) -> String {
        self.day_and_time(day, "")
    }

    /// A day with or without a time of day, stated in ISO 8601, as the language writes it; any other text as it stands.
    pub fn moment(&self, text: &str) -> String {
        match locale::moment(text) {
            Some((day, time)) => self.day_and_time(day, time),
            None => text.to_owned(),
        }
    }

    /// A text with every day in it as the language writes it: a stretch of time with its bounds.
    pub fn days_in(&self, text: &str) -> String {
        let mut written = String::with_capacity(text.len());
        let mut rest = text;
        while let Some(at) = rest.find(|c: char| c.is_ascii_digit()) {
            let (before, from) = rest.split_at(at);
            written.push_str(before);
            let end = from.find(|c: char| !(c.is_ascii_digit() || c == '-')).unwrap_or(from.len());
            let (run, after) = from.split_at(end);
            match Day::parse(run) {
                Some(day) => written.push_str(&self.day(day)),
                None => written.push_str(run),
            }
            rest = after;
        }
        written.push_str(rest);
        written
    }

    fn day_and_time(&self, day: Day, time: &str) -> String {
        let stated = day.to_string();
        let padded = !self.has(TWO_DIGITS) || self.say(TWO_DIGITS) == "yes";
        let bare = |part: &'_ str| part.trim_start_matches('0').to_owned();
        let mut parts = stated.splitn(3, '-').map(|part| if padded { part.to_owned() } else { bare(part) });
        let mut part = || parts.next().unwrap_or_default();
        let (year, month, of_month) = (part(), part(), part());
        let day = self.with("locale-day", &[("year", &year), ("month", &month), ("day", &of_month)]);
        if time.is_empty() { day } else { self.with("locale-moment", &[("day", &day), ("time", time)]) }
    }

    /// An argument of a text as the language writes it.
    fn written<'a>(&self, name: &str, value: &'a str) -> Cow<'a, str> {
        if !locale::is_stated(name) {
            Cow::Borrowed(value)
        } else if locale::is_number(value) {
            // A date of digits and hyphens is no number.
            match locale::moment(value) {
                Some((day, _)) => Cow::Owned(self.day(day)),
                None if self.decimal == POINT => Cow::Borrowed(value),
                None => Cow::Owned(locale::with_sign(value, &self.decimal)),
            }
        } else if locale::moment(value).is_some() {
            Cow::Owned(self.moment(value))
        } else {
            Cow::Borrowed(value)
        }
    }

    /// A text without arguments.
    pub fn say(&self, id: &str) -> String {
        self.with(id, &[])
    }

    /// A text with arguments. An argument that counts and is a whole number chooses plurals; one that states a number or a
    /// date is written as the language writes it ([`locale`]).
    pub fn with(&self, id: &str, arguments: &[(&str, &str)]) -> String {
        let quoted = QUOTED.iter().any(|kind| id.starts_with(kind));
        let mut args = FluentArgs::new();
        for (name, value) in arguments {
            // A language without plurals has no forms to choose from, and writes the same digits.
            let plural = COUNTS.contains(name).then(|| value.parse::<u32>().ok());
            match plural.flatten() {
                Some(number) => args.set(*name, FluentValue::from(number)),
                None if quoted => args.set(*name, FluentValue::from(*value)),
                None => args.set(*name, FluentValue::from(self.written(name, value))),
            }
        }
        let (message, attribute) =
            id.split_once('.').map_or((id, None), |(message, name)| (message, Some(name)));
        let pattern = self.bundle.get_message(message).and_then(|message| match attribute {
            Some(name) => message.get_attribute(name).map(|attribute| attribute.value()),
            None => message.value(),
        });
        let mut errors = Vec::new();
        match pattern {
            Some(pattern) => self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned(),
            // Never silent: the missing word shows itself, and a test finds it first.
            None => format!("[{id}]"),
        }
    }

    /// Things of one kind in a row.
    pub fn list(&self, items: &[impl AsRef<str>]) -> String {
        joined(self.comma(), items)
    }

    /// Longer pieces in a row, each of which may hold a list.
    pub fn series(&self, items: &[impl AsRef<str>]) -> String {
        joined(self.semicolon(), items)
    }

    /// Sentences of one paragraph; empty ones leave no gap.
    pub fn sentences(&self, items: &[impl AsRef<str>]) -> String {
        let said: Vec<&str> = items.iter().map(AsRef::as_ref).filter(|text| !text.is_empty()).collect();
        said.join(self.gap())
    }

    /// Between two things in a row, where markup stands between them.
    pub fn comma(&self) -> &str {
        &self.joins[0]
    }

    /// Between two longer pieces in a row.
    pub fn semicolon(&self) -> &str {
        &self.joins[1]
    }

    /// Between two sentences.
    pub fn gap(&self) -> &str {
        &self.joins[2]
    }

    /// Between what a text is about and the text.
    pub fn colon(&self) -> &str {
        &self.joins[3]
    }

    /// Ends a few words and begins a sentence.
    pub fn stop(&self) -> &str {
        &self.joins[4]
    }

    /// What adds to the word before it, in brackets.
    pub fn bracketed(&self, text: &str) -> String {
        self.with("join-brackets", &[("text", text)])
    }

    /// True where the catalogue has a text.
    pub fn has(&self, id: &str) -> bool {
        let (message, attribute) =
            id.split_once('.').map_or((id, None), |(message, name)| (message, Some(name)));
        self.bundle.get_message(message).is_some_and(|message| match attribute {
            Some(name) => message.get_attribute(name).is_some(),
            None => message.value().is_some(),
        })
    }
}

fn joined(sign: &str, items: &[impl AsRef<str>]) -> String {
    let items: Vec<&str> = items.iter().map(AsRef::as_ref).collect();
    items.join(sign)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::ActKind;
    use crate::composition::{AlloyGroup, CalibrationDoubt, Contradiction, FamilyFit, SuggestionReason};
    use crate::exempt::{AreaResult, Group, Number, Question, Refusal, RenewalState, Verdict};
    use crate::lines::CautionCode;
    use crate::lot::{Disposition, LotReasonCode};
    use crate::material::{ClassFrom, MaterialClass};
    use crate::outcome::{Outcome, Reason, SigmaFrom};
    use crate::photo::PhotoState;
    use crate::reading::{Evidence, Identity, NoticeCode, SetAside};
    use crate::rules::ProblemCode;
    use crate::trust::{CheckKind, CheckVerdict, Trust};

    #[test]
    fn every_code_has_its_words_and_remedy() {
        let words = Words::english();
        let mut wanted: Vec<String> = Vec::new();
        for outcome in Outcome::ALL {
            wanted.push(format!("outcome-{}", outcome.code()));
            wanted.push(format!("outcome-{}.short", outcome.code()));
        }
        wanted.extend(Reason::ALL.iter().map(|code| format!("reason-{}", code.code())));
        wanted.extend(SigmaFrom::ALL.iter().map(|code| format!("sigma-{}", code.code())));
        wanted.extend(MaterialClass::ALL.iter().map(|code| format!("class-{}", code.code())));
        wanted.extend(ClassFrom::ALL.iter().map(|code| format!("class-from-{}", code.code())));
        wanted.extend(AlloyGroup::ALL.iter().map(|code| format!("family-group-{}", code.code())));
        wanted.extend(FamilyFit::ALL.iter().map(|code| format!("family-{}", code.code())));
        wanted.extend(SuggestionReason::ALL.iter().map(|code| format!("composition-reason-{}", code.code())));
        wanted.extend(Contradiction::ALL.iter().map(|code| format!("composition-contests-{}", code.code())));
        wanted.extend(
            CalibrationDoubt::ALL.iter().map(|code| format!("composition-calibration-{}", code.code())),
        );
        wanted.extend(Disposition::ALL.iter().map(|code| format!("disposition-{}", code.code())));
        wanted.extend(Identity::ALL.iter().map(|code| format!("role-{}", code.code())));
        wanted.extend(Evidence::ALL.iter().map(|code| format!("evidence-{}", code.code())));
        wanted.extend(SetAside::ALL.iter().map(|code| format!("set-aside-{}", code.code())));
        wanted.extend(CautionCode::ALL.iter().map(|code| format!("doubt-{}", code.code())));
        wanted.extend(ActKind::ALL.iter().map(|code| format!("act-{}", code.code())));
        wanted.extend(Trust::ALL.iter().map(|code| format!("trust-{}", code.code())));
        wanted.extend(CheckKind::ALL.iter().map(|code| format!("check-kind-{}", code.code())));
        wanted.extend(CheckVerdict::ALL.iter().map(|code| format!("check-verdict-{}", code.code())));
        for code in LotReasonCode::ALL {
            wanted.push(format!("lot-reason-{}", code.code()));
            wanted.push(format!("lot-reason-{}.remedy", code.code()));
            match code.kind() {
                crate::lot::ReasonKind::Evidence => {
                    wanted.push(format!("evidence-short-{}", code.code()));
                }
                crate::lot::ReasonKind::Outcome => wanted.push(format!("summary-{}", code.code())),
            }
        }
        for code in NoticeCode::ALL {
            wanted.push(format!("notice-{}", code.code()));
            wanted.push(format!("notice-{}.remedy", code.code()));
        }
        for code in PhotoState::ALL {
            wanted.push(format!("photo-{}", code.code()));
            wanted.push(format!("photo-{}.remedy", code.code()));
        }
        for code in ProblemCode::ALL {
            wanted.push(format!("problem-{}", code.code()));
            wanted.push(format!("problem-{}.remedy", code.code()));
        }
        let exempt = [
            ("question", Question::ALL.iter().map(|code| code.code()).collect::<Vec<_>>()),
            ("refusal", Refusal::ALL.iter().map(|code| code.code()).collect()),
            (
                "number",
                Number::ALL.iter().map(|code| code.code()).chain(["within_minimum", "no_number"]).collect(),
            ),
            ("group", Group::ALL.iter().map(|code| code.code()).collect()),
            ("cr6", AreaResult::ALL.iter().map(|code| code.code()).collect()),
            ("renewal", RenewalState::ALL.iter().map(|code| code.code()).chain(["unknown"]).collect()),
            ("claim", Verdict::CODES.into_iter().chain(["not_needed"]).collect()),
            ("direction", vec!["at_most", "at_least", "none"]),
            ("expiry", vec!["claimed", "candidate", "undated"]),
        ];
        for (kind, codes) in exempt {
            wanted.extend(codes.iter().map(|code| format!("{kind}-{code}")));
        }
        let missing: Vec<_> = wanted.iter().filter(|id| !words.has(id)).collect();
        assert!(missing.is_empty(), "{missing:?}");
    }

    fn with_commas() -> Words {
        let facts = "locale-decimal = ,\nlocale-two_digits = no\nlocale-day = { $day }.{ $month }.{ $year }\n\
                     locale-moment = { $day }, { $time }\n";
        Words::of_texts("de", ENGLISH.iter().map(|room| room.text).chain([facts]))
    }

    #[test]
    fn english_writes_numbers_and_days_as_data_does() {
        let words = Words::english();
        let day = Day::new(2026, 3, 5).unwrap();
        assert_eq!((words.number(&12.5), words.day(day)), ("12.5".to_owned(), "2026-03-05".to_owned()));
        assert_eq!(words.moment("2026-03-05T08:10:31+01:00"), "2026-03-05 08:10:31+01:00");
        assert_eq!(words.moment("yesterday"), "yesterday");
    }

    #[test]
    fn another_language_writes_stated_numbers_and_days_in_its_own_way_and_quotes_the_rest() {
        let words = with_commas();
        let day = Day::new(2026, 3, 5).unwrap();
        assert_eq!((words.number(&12.5), words.day(day)), ("12,5".to_owned(), "5.3.2026".to_owned()));
        assert_eq!(words.moment("2026-03-05T08:10"), "5.3.2026, 08:10");
        assert_eq!(words.days_in("Pb 2026-03-05 08:10–10:45, X-2"), "Pb 5.3.2026 08:10–10:45, X-2");
        let value = words.with("value-number", &[("value", "1234.5"), ("sigma", "0.25")]);
        assert_eq!(value, "1234,5 mg/kg ± 0,25 (1s)");
        assert_eq!(words.with("value-text", &[("written", "12.5")]), "\"12.5\"");
        assert_eq!(
            words.with("act-placing_date", &[("value", "2026-03-05")]),
            "placing on the market on 2026-03-05"
        );
        let in_force = words.with("report-text_from", &[("day", &words.day(day))]);
        assert_eq!(in_force, "In force from 5.3.2026.");
    }

    /// Only arguments that are turned into numbers can choose a plural form.
    #[test]
    fn in_every_language_plurals_are_chosen_by_arguments_that_count() {
        for language in plumbline_words::LANGUAGES {
            for room in language.rooms {
                let text = room.text;
                for (at, _) in text.match_indices("[one]") {
                    let chooser = text[..at].rsplit_once("->").expect("a chooser").0;
                    let name = chooser.trim_end().rsplit_once('$').expect("an argument").1;
                    assert!(COUNTS.contains(&name), "{}/{}.ftl: {name}", language.tag, room.name);
                }
            }
        }
    }

    #[test]
    fn plurals_and_arguments_are_filled_in() {
        let words = Words::english();
        let text = words.with("lot-reason-bill_of_materials_none", &[("count", "1")]);
        assert_eq!(text, "No bill of materials is given for a part, so materials may be unmeasured.");
        let text = words.with("lot-reason-over_limit", &[("about", "Pb"), ("count", "2"), ("of", "14")]);
        assert_eq!(text, "Pb is over limit in 2 of 14 readings.");
    }
}
