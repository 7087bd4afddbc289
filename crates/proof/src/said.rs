//! A proof in words.

use plumbline_core::visible_text::on_one_line;
use plumbline_core::words::Words;

use crate::place::{Part, Place, PlaceKind};
use crate::verdict::{FileSeen, FileState, Proof, Verdict};

/// The verdict, in one line.
pub fn verdict(words: &Words, proof: &Proof) -> String {
    words.say(&format!("proof-verdict-{}", proof.verdict.code()))
}

/// What was shown and what was not, a sentence a line.
pub fn shows(words: &Words, proof: &Proof) -> Vec<String> {
    let mut said = Vec::new();
    if let (Some(why), Some((program, version))) = (proof.only_findings, &proof.program) {
        let arguments = [("program", program.as_str()), ("version", version.as_str())];
        said.push(words.with(&format!("proof-only-{}", why.code()), &arguments));
        said.extend(lots(words, proof));
    }
    if !proof.foreign_books.is_empty() {
        said.push(words.with("proof-foreign_books", &[("books", &proof.foreign_books.join(", "))]));
    }
    let agrees = matches!(proof.verdict, Verdict::Agrees | Verdict::LineEnds | Verdict::FindingsAgree);
    let has = |state| proof.files.iter().any(|file| file.state == state);
    if has(FileState::OtherBytes) {
        said.push(words.say("proof-shows-other_bytes"));
    }
    if agrees {
        said.push(words.say(match (proof.data_are_those_files(), has(FileState::Matched)) {
            (true, _) => "proof-shows-data",
            (false, true) => "proof-shows-some",
            (false, false) => "proof-shows-self",
        }));
    }
    match proof.given_digest {
        Some(true) if proof.text_was_proved() => said.push(words.say("proof-shows-digest_same")),
        Some(true) => said.push(words.say("proof-shows-digest_findings")),
        Some(false) => said.push(words.say("proof-shows-digest_other")),
        None => {}
    }
    if let Some(digest) = &proof.digest {
        said.push(words.with("proof-digest", &[("digest", digest)]));
    }
    said
}

/// Most lots that are told; the rest is counted. (Our choice: the worst come first.)
const MOST_LOTS: usize = 20;

/// What the data give of each lot: the wording of the report may say anything.
fn lots(words: &Words, proof: &Proof) -> Vec<String> {
    let told = proof.lots.iter().take(MOST_LOTS).map(|seen| {
        let or_not = |text: &Option<String>| text.clone().unwrap_or_else(|| words.say("not-stated"));
        let disposition = words.say(&format!("disposition-{}", seen.disposition.code()));
        let name = match &seen.lot {
            Some(lot) => lot.clone(),
            None => format!("{}{}", words.say("no-lot"), words.bracketed(&seen.source)),
        };
        let supplier = or_not(&seen.supplier);
        let arguments = [("lot", name.as_str()), ("supplier", &supplier), ("disposition", &disposition)];
        words.with("proof-lot", &arguments)
    });
    let mut told: Vec<String> = told.collect();
    if proof.lots.len() > MOST_LOTS {
        let more = (proof.lots.len() - MOST_LOTS).to_string();
        told.push(words.with("proof-more_lots", &[("count", &more)]));
    }
    told
}

/// The files the report names, then those given for nothing.
pub fn files(words: &Words, proof: &Proof) -> Vec<String> {
    let named = proof.files.iter().map(|seen| file(words, seen));
    named.chain(proof.strangers.iter().map(|name| stranger(words, name))).collect()
}

/// A file the report names, and what became of it.
pub fn file(words: &Words, FileSeen { name, sha256, state }: &FileSeen) -> String {
    // A text may hold no argument for some states; the file stands in all.
    let arguments = [("file", name.as_str()), ("sha256", sha256.as_str())];
    words.with(&format!("proof-file-{}", state.code()), &arguments)
}

/// A file that was given and that the report does not name.
pub fn stranger(words: &Words, name: &str) -> String {
    words.with("proof-stranger", &[("file", name)])
}

/// Where the report is another, a place a line, and how many more.
pub fn places(words: &Words, proof: &Proof) -> Vec<String> {
    let mut said: Vec<String> = proof.places.list.iter().map(|one| place(words, one)).collect();
    said.extend(more(words, proof));
    said
}

/// How many more places there are than those named; nothing where all are.
pub fn more(words: &Words, proof: &Proof) -> Option<String> {
    let more = proof.places.more;
    (more > 0).then(|| words.with("proof-more", &[("count", &more.to_string())]))
}

/// One place.
pub fn place(words: &Words, place: &Place) -> String {
    let seen = |text: &str| on_one_line(text).into_owned();
    let or_nothing = |text: &str| if text.is_empty() { words.say("proof-nothing") } else { seen(text) };
    let (says, gives) = match place.kind {
        PlaceKind::Text | PlaceKind::Markup | PlaceKind::Finding | PlaceKind::Picture => {
            (or_nothing(&place.says), or_nothing(&place.gives))
        }
        _ => (seen(&place.says), seen(&place.gives)),
    };
    let found_at = where_it_is(words, place);
    let arguments = [
        ("where", found_at.as_str()),
        ("says", says.as_str()),
        ("gives", gives.as_str()),
        ("row", &on_one_line(&place.row)),
    ];
    words.with(&format!("proof-place-{}", place.kind.code()), &arguments)
}

/// Where a place is: section, row and column, or the part of what the report carries.
pub fn where_it_is(words: &Words, place: &Place) -> String {
    if let Some(Part { kind, name }) = &place.part {
        return words.with(&format!("proof-where-{}", kind.code()), &[("name", name)]);
    }
    let id = match (place.section.is_empty(), place.row.is_empty(), place.column.is_empty()) {
        (true, true, _) => "proof-where-top",
        (true, false, _) => "proof-where-top_row",
        (false, true, _) => "proof-where-section",
        (false, false, true) => "proof-where-row",
        (false, false, false) => "proof-where-cell",
    };
    let arguments =
        [("section", place.section.as_str()), ("row", place.row.as_str()), ("column", place.column.as_str())];
    words.with(id, &arguments)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::place::PartKind;
    use crate::verdict::OnlyFindings;

    #[test]
    fn every_code_has_its_words() {
        let words = Words::english();
        let codes = Verdict::ALL.iter().map(|code| format!("verdict-{}", code.code()));
        let codes = codes.chain(OnlyFindings::ALL.iter().map(|code| format!("only-{}", code.code())));
        let codes = codes.chain(FileState::ALL.iter().map(|code| format!("file-{}", code.code())));
        let codes = codes.chain(PlaceKind::ALL.iter().map(|code| format!("place-{}", code.code())));
        for code in codes.chain(PartKind::ALL.iter().map(|code| format!("where-{}", code.code()))) {
            assert!(words.has(&format!("proof-{code}")), "{code}");
        }
    }
}
