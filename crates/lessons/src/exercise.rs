//! An exercise: a question, the answers offered, and the delivery whose review answers it.

use plumbline_core::inspection::Findings;
use plumbline_core::lot::Disposition;
use plumbline_core::outcome::Outcome;
use plumbline_core::rules::RuleBooks;

use crate::draw::Draw;
use crate::files::Delivery;
use crate::lesson::{Kind, Lesson};
use crate::lot::{Facts, lot};
use crate::reading::{WhatIf, reading};

/// What is asked.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Ask {
    /// What a reading says of its substance.
    Outcome(WhatIf),
    /// What becomes of a lot.
    Disposition {
        /// The readings as they are shown: `sample`, `unit`, `material`, then a symbol for each substance.
        headings: Vec<String>,
        /// A cell for each heading; a number with its uncertainty as `8.5 ± 1.7`, mg/kg and one sigma.
        rows: Vec<Vec<String>>,
        /// What else is known.
        facts: Facts,
    },
}

/// An exercise.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Exercise {
    /// What is asked.
    pub ask: Ask,
    /// The delivery that answers it.
    pub delivery: Delivery,
}

impl Exercise {
    /// The answers offered, as codes of outcomes or dispositions. All that may ever be right of such a question are offered, so
    /// that none is given away by being there.
    pub fn choices(&self) -> Vec<&'static str> {
        match &self.ask {
            Ask::Outcome(_) => [
                Outcome::Below,
                Outcome::Undecided,
                Outcome::Over,
                Outcome::NotCapable,
                Outcome::DetectionTooHigh,
                Outcome::NoUncertainty,
                Outcome::NotMeasured,
                Outcome::NotApplicable,
            ]
            .map(Outcome::code)
            .to_vec(),
            Ask::Disposition { .. } => [Disposition::Accept, Disposition::Hold, Disposition::NotAccept]
                .map(Disposition::code)
                .to_vec(),
        }
    }

    /// The right answer: what the review of the delivery says. `None` where the review has no such reading or lot.
    pub fn right(&self, findings: &Findings) -> Option<&'static str> {
        match &self.ask {
            Ask::Outcome(asked) => {
                let verdicts = findings.verdicts.first()?;
                verdicts.substances.get(asked.substance as usize).map(|outcome| outcome.code())
            }
            Ask::Disposition { .. } => findings.lots.first().map(|lot| lot.disposition.code()),
        }
    }
}

/// Units taken of an exercise's lot: few, so that its readings can be looked through.
const UNITS: (i64, i64) = (3, 4);

/// The exercise `number` (from 1) of a lesson, from a seed. `None` where the rule book in force lacks what it is about.
pub fn exercise(books: &RuleBooks, seed: u64, lesson: Lesson, number: u32) -> Option<Exercise> {
    let mut draw = Draw::new(seed, lesson as u32, number);
    match kind_of(seed, lesson, number)? {
        Kind::Reading(kind) => {
            let asked = reading(books, kind, &mut draw)?;
            Some(Exercise { delivery: asked.delivery(), ask: Ask::Outcome(asked) })
        }
        Kind::Lot(kind) => {
            let units = draw.between(UNITS.0, UNITS.1);
            let made = lot(books, kind, &mut draw, "invented-lot", units)?;
            let ask = Ask::Disposition { headings: made.headings, rows: made.rows, facts: made.facts };
            Some(Exercise { ask, delivery: made.delivery })
        }
    }
}

/// Three exercises in a row are of the three groups in an order of their own; each group's kinds come round in turn.
fn kind_of(seed: u64, lesson: Lesson, number: u32) -> Option<Kind> {
    let (round, place) = (number.checked_sub(1)? / 3, (number - 1) % 3);
    let order = Draw::new(seed, lesson as u32, u32::MAX - round).shuffled(&[0_usize, 1, 2]);
    let group = *order.get(place as usize)?;
    let kinds = lesson.kinds();
    let kinds = kinds.get(group)?;
    // The order within a group is drawn once a seed.
    let turns = Draw::new(seed, lesson as u32 + 8 * (1 + group as u32), 0).shuffled(kinds);
    turns.get(round as usize % turns.len().max(1)).copied()
}
