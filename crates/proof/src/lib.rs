//! A report held against what it carries: everything is computed again and compared, and what differs is named by place.
//!
//! What that shows has its bounds, and [`Proof`] states them. A report that agrees with what it carries shows that it agrees
//! with itself: whoever changes the data and makes the report again gets one that agrees too. That its data are those of the
//! source files is shown by the files beside it; that it is the report that was signed, by the digest on the signed paper.

mod compare;
mod evidence;
mod html;
mod locate;
mod pictures;
mod place;
mod records;
mod remake;
pub mod said;
mod verdict;

use plumbline_core::report::{PROGRAM, Program};
use plumbline_core::words::Words;

pub use evidence::{Evidence, MOST_INFLATED};
pub use place::{MOST_PLACES, Part, PartKind, Place, PlaceKind, Places};
pub use verdict::{FileSeen, FileState, LotSeen, OnlyFindings, Proof, Verdict};

use locate::Located;
use remake::Remade;
use verdict::normal_digest;

/// Holds reports against what they carry, and remembers what the last one carried came to: many copies of one report are
/// compared quickly.
pub struct Prover<'a> {
    languages: &'a dyn Fn(&str) -> Option<Words>,
    program: Program,
    last: Option<Last>,
}

/// What a report carried, and what it came to.
struct Last {
    text: Vec<u8>,
    evidence: Evidence,
    remade: Remade,
}

impl Last {
    fn holds_for(&self, text: &[u8]) -> bool {
        self.text == text && self.evidence.is_whole()
    }
}

/// Holds a report against what it carries.
///
/// `beside`: source files, by name. `given_digest`: the digest on the signed paper. `languages`: the catalogue of a language by
/// its tag.
///
/// # Errors
/// None: whatever the bytes are, the proof says so.
pub fn prove(
    report: &[u8],
    beside: &[(String, Vec<u8>)],
    given_digest: Option<&str>,
    languages: &dyn Fn(&str) -> Option<Words>,
) -> Proof {
    Prover::new(languages).prove(report, beside, given_digest)
}

impl<'a> Prover<'a> {
    /// A prover of this version of the program.
    pub fn new(languages: &'a dyn Fn(&str) -> Option<Words>) -> Prover<'a> {
        Prover { languages, program: PROGRAM, last: None }
    }

    /// The same as if another version held the reports against what they carry: a test of what remains of them then.
    #[must_use]
    pub fn as_program(mut self, program: Program) -> Prover<'a> {
        self.program = program;
        self
    }

    /// Holds a report against what it carries, see [`prove`].
    pub fn prove(
        &mut self,
        report: &[u8],
        beside: &[(String, Vec<u8>)],
        given_digest: Option<&str>,
    ) -> Proof {
        let located = Located::of(report);
        let Some(text) = located.evidence() else {
            let own = located.looks_like_a_report();
            return Proof::without_evidence(if own { Verdict::EvidenceMissing } else { Verdict::NotAReport });
        };
        let (evidence, known) = match self.last.take().filter(|last| last.holds_for(text)) {
            Some(Last { evidence, remade, .. }) => (evidence, Some(remade)),
            None => match evidence::read(text, located.evidence_at()) {
                Ok(evidence) => (evidence, None),
                Err(places) => return Proof::of_bad_evidence(places),
            },
        };
        let mut proof = Proof::of(&evidence);
        proof.look_at_files(&evidence, beside);
        let made = match known {
            Some(remade) => Ok(remade),
            None => remake::remake(&evidence, beside, self.program, self.languages),
        };
        let remade = match made {
            Ok(remade) => remade,
            Err(remake::Stopped::FilesNeeded) => {
                proof.verdict = Verdict::FilesNeeded;
                return proof;
            }
            Err(remake::Stopped::Broken(part)) => {
                let at = evidence.range_of(&part);
                proof.places = Places::one(Place::of_part(PlaceKind::NotUsable, part, at));
                return proof;
            }
        };
        proof.digest = Some(remade.digest.clone());
        proof.given_digest = given_digest.map(|given| normal_digest(given) == remade.digest);
        match &remade.report {
            Ok(expected) => proof.compare(&located, expected),
            Err(why) => proof.compare_findings(*why, &evidence, &remade, &located),
        }
        self.last = Some(Last { text: text.to_vec(), evidence, remade });
        proof
    }
}
