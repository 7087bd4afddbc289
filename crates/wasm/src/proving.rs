//! A report that a person dropped, held against what it carries.

use plumbline_core::words::{ENGLISH_TAG, Words};
use plumbline_proof::{FileSeen, OnlyFindings, Place, PlaceKind, Proof, prove, said};
use serde::Serialize;

/// A report on its way in, and the files beside it.
pub(crate) struct Proving {
    report: Vec<u8>,
    beside: Vec<(String, Vec<u8>)>,
}

impl Proving {
    pub(crate) const fn new() -> Proving {
        Proving { report: Vec::new(), beside: Vec::new() }
    }

    /// What comes from now on belongs to this file.
    pub(crate) fn beside(&mut self, name: &str) {
        self.beside.push((name.to_owned(), Vec::new()));
    }

    pub(crate) fn push(&mut self, bytes: &[u8]) {
        match self.beside.last_mut() {
            Some((_, kept)) => kept.extend_from_slice(bytes),
            None => self.report.extend_from_slice(bytes),
        }
    }

    /// `taught`: the texts of every further language, by tag; a report in one that was not taught is held by its findings.
    pub(crate) fn end(&self, digest: Option<&str>, words: &Words, taught: &[(String, String)]) -> ProofView {
        let of_taught = |tag: &str| {
            let (tag, texts) = taught.iter().find(|(known, _)| known == tag)?;
            Some(Words::of_texts(tag, [texts.as_str()]))
        };
        let languages = |tag: &str| if tag == ENGLISH_TAG { Some(Words::english()) } else { of_taught(tag) };
        let proof = prove(&self.report, &self.beside, digest, &languages);
        view(words, &proof)
    }
}

fn view(words: &Words, proof: &Proof) -> ProofView {
    let place = |one: &Place| PlaceView {
        kind: one.kind.code(),
        // A line of the findings is named by its first fields; it is in no section.
        place: if one.kind == PlaceKind::Finding { one.row.clone() } else { said::where_it_is(words, one) },
        says: one.says.clone(),
        gives: one.gives.clone(),
        text: said::place(words, one),
    };
    let file = |seen: &FileSeen| FileView {
        state: seen.state.code(),
        name: seen.name.clone(),
        text: said::file(words, seen),
    };
    let stranger =
        |name: &String| FileView { state: "stranger", name: name.clone(), text: said::stranger(words, name) };
    ProofView {
        verdict: proof.verdict.code(),
        only_findings: proof.only_findings.map(OnlyFindings::code),
        program: proof
            .program
            .as_ref()
            .map(|(name, version)| format!("{name} {version}"))
            .unwrap_or_default(),
        nothing_differs: proof.nothing_differs(),
        could_be_proved: proof.could_be_proved(),
        text: said::verdict(words, proof),
        places: proof.places.list.iter().map(place).collect(),
        more: said::more(words, proof).unwrap_or_default(),
        shows: said::shows(words, proof),
        files: proof.files.iter().map(file).chain(proof.strangers.iter().map(stranger)).collect(),
        data_are_those_files: proof.data_are_those_files(),
        given_digest: proof.given_digest,
        language: proof.language.clone(),
        digest: proof.digest.clone(),
    }
}

/// What was found.
#[derive(Serialize)]
pub(crate) struct ProofView {
    verdict: &'static str,
    only_findings: Option<&'static str>,
    program: String,
    nothing_differs: bool,
    could_be_proved: bool,
    text: String,
    places: Vec<PlaceView>,
    more: String,
    shows: Vec<String>,
    files: Vec<FileView>,
    data_are_those_files: bool,
    given_digest: Option<bool>,
    language: Option<String>,
    digest: Option<String>,
}

#[derive(Serialize)]
struct PlaceView {
    kind: &'static str,
    place: String,
    says: String,
    gives: String,
    text: String,
}

#[derive(Serialize)]
struct FileView {
    state: &'static str,
    name: String,
    text: String,
}
