//! A report that a person dropped, held against what it carries.

use plumbline_core::words::{ENGLISH_TAG, Words};
use plumbline_proof::{prove, said};
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
        ProofView {
            verdict: proof.verdict.code(),
            only_findings: proof.only_findings.map(plumbline_proof::OnlyFindings::code),
            holds: proof.holds(),
            could_be_proved: proof.could_be_proved(),
            text: said::verdict(words, &proof),
            places: said::places(words, &proof),
            shows: said::shows(words, &proof),
            files: said::files(words, &proof),
            data_are_those_files: proof.data_are_those_files(),
            given_digest: proof.given_digest,
            language: proof.language,
            digest: proof.digest,
        }
    }
}

/// What was found.
#[derive(Serialize)]
pub(crate) struct ProofView {
    verdict: &'static str,
    only_findings: Option<&'static str>,
    holds: bool,
    could_be_proved: bool,
    text: String,
    places: Vec<String>,
    shows: Vec<String>,
    files: Vec<String>,
    data_are_those_files: bool,
    given_digest: Option<bool>,
    language: Option<String>,
    digest: Option<String>,
}
