//! Every text a person reads comes from one catalogue (Project Fluent files in `words/`), which the page reads too.

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use plumbline_words::{ENGLISH, Language};
use unic_langid::LanguageIdentifier;

/// The catalogue of one language.
pub struct Words {
    tag: String,
    bundle: FluentBundle<FluentResource>,
}

impl std::fmt::Debug for Words {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str("Words")
    }
}

impl Words {
    /// English.
    pub fn english() -> Words {
        Words::of_texts("en", ENGLISH.iter().map(|room| room.text))
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
        Words { tag: tag.to_owned(), bundle }
    }

    /// The BCP 47 tag of its language.
    pub fn tag(&self) -> &str {
        &self.tag
    }

    /// A text without arguments.
    pub fn say(&self, id: &str) -> String {
        self.with(id, &[])
    }

    /// A text with arguments. An argument that is a whole number chooses plurals.
    pub fn with(&self, id: &str, arguments: &[(&str, &str)]) -> String {
        let mut args = FluentArgs::new();
        for (name, value) in arguments {
            let counts =
                matches!(*name, "count" | "of" | "rows" | "readings" | "lots" | "take" | "units" | "n");
            let plural = counts.then(|| value.parse::<u32>().ok());
            match plural.flatten() {
                Some(number) => args.set(*name, FluentValue::from(number)),
                None => args.set(*name, FluentValue::from(*value)),
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
        self.joined("join-list", items)
    }

    /// Longer pieces in a row, each of which may hold a list.
    pub fn series(&self, items: &[impl AsRef<str>]) -> String {
        self.joined("join-series", items)
    }

    /// Sentences of one paragraph; empty ones leave no gap.
    pub fn sentences(&self, items: &[impl AsRef<str>]) -> String {
        let said: Vec<&str> = items.iter().map(AsRef::as_ref).filter(|text| !text.is_empty()).collect();
        self.joined("join-sentences", &said)
    }

    fn joined(&self, id: &str, items: &[impl AsRef<str>]) -> String {
        let items: Vec<&str> = items.iter().map(AsRef::as_ref).collect();
        items.join(&self.say(id))
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
            ("number", Number::ALL.iter().map(|code| code.code()).collect()),
            ("group", Group::ALL.iter().map(|code| code.code()).collect()),
            ("cr6", AreaResult::ALL.iter().map(|code| code.code()).collect()),
            ("renewal", RenewalState::ALL.iter().map(|code| code.code()).chain(["unknown"]).collect()),
            ("claim", Verdict::CODES.into_iter().chain(["not_needed"]).collect()),
            ("direction", vec!["at_most", "at_least", "none"]),
            ("expiry", vec!["claimed", "candidate"]),
        ];
        for (kind, codes) in exempt {
            wanted.extend(codes.iter().map(|code| format!("{kind}-{code}")));
        }
        let missing: Vec<_> = wanted.iter().filter(|id| !words.has(id)).collect();
        assert!(missing.is_empty(), "{missing:?}");
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
