//! What lies ahead of a lot: what measuring longer would settle, and what other decision rules would say of the same
//! readings, so that a customer sees what a rule costs.

use crate::acts::ActKind;
use crate::conformity::{DecisionRule, Statement};
use crate::inspection::{Findings, Inspection};
use crate::judging::SourceReview;
use crate::longer::{self, Open, Plan};
use crate::outcome::{Judgement, Outcome};
use crate::substance::{Halogen, Substance};

/// The substances whose legal limit is on the element itself.
pub const ON_THE_ELEMENT: [Substance; 3] = [Substance::Cd, Substance::Pb, Substance::Hg];

/// How many readings of a lot each decision rule gives each statement, for one substance.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct RulesSaid {
    /// Readings that are below, undecided and over by the screening bands.
    pub bands: [u64; 3],
    /// Per decision rule, in the order of [`DecisionRule::ALL`]: readings with each statement, in the order of
    /// [`Statement::ALL`].
    pub said: [[u64; 4]; 3],
    /// Readings to which no rule on the limit applies: not a number, without uncertainty, or a class in which the limit is
    /// not on what the beam meets.
    pub not_applicable: u64,
}

/// What lies ahead of a lot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outlook {
    /// What measuring longer would settle.
    pub plan: Plan,
    /// What each rule says, for Cd, Pb and Hg.
    pub rules: [RulesSaid; 3],
}

/// Looks ahead for one lot.
///
/// Open outcomes that count are those of substances (and, where a halogen book is named, of chlorine and bromine) that are
/// undecided or not capable; what was never measured needs a measurement, not a longer one.
pub fn outlook(
    inspection: &Inspection,
    findings: &Findings,
    reviewers: &[SourceReview<'_>],
    lot: usize,
) -> Outlook {
    let halogens = inspection.settings().inspection(ActKind::HalogenBook).is_some();
    let mut open = Vec::new();
    let mut rules = [RulesSaid::default(); 3];
    // Materials stand in the order of their lots.
    let first = findings.materials.partition_point(|material| material.lot < lot);
    let own = findings.materials.iter().skip(first).take_while(|material| material.lot == lot);
    for material in own {
        for reading in &material.readings {
            let Some((at, row)) = findings.place(*reading as usize) else { continue };
            let Some(reviewer) = reviewers.get(at) else { continue };
            let assessed = reviewer.assess(row);
            let is_open = |outcome| matches!(outcome, Outcome::Undecided | Outcome::NotCapable);
            for (substance, judged) in Substance::ALL.into_iter().zip(&assessed.substances) {
                if is_open(judged.outcome) {
                    let longer = reviewer.longer(substance, judged, row);
                    open.push(Open { reading: *reading as usize, longer });
                }
            }
            if halogens {
                for of in Halogen::ALL {
                    let judged = assessed.halogen(of);
                    if is_open(judged.outcome) {
                        let longer = reviewer.longer_halogen(of, &judged, row);
                        open.push(Open { reading: *reading as usize, longer });
                    }
                }
            }
            for (said, substance) in rules.iter_mut().zip(ON_THE_ELEMENT) {
                count(said, reviewer, substance, &assessed.substances[substance as usize], row);
            }
        }
    }
    Outlook { plan: longer::plan(&open), rules }
}

fn count(
    said: &mut RulesSaid,
    reviewer: &SourceReview<'_>,
    substance: Substance,
    judged: &Judgement,
    row: usize,
) {
    let Some(conformity) = reviewer.conformity(substance, judged, row) else {
        said.not_applicable += 1;
        return;
    };
    let band = match judged.outcome {
        Outcome::Below => 0,
        Outcome::Over => 2,
        _ => 1,
    };
    said.bands[band] += 1;
    for (rule, one) in conformity.said.iter().enumerate() {
        let at = Statement::ALL.iter().position(|statement| *statement == one.statement);
        debug_assert_eq!(DecisionRule::ALL.get(rule), Some(&one.rule));
        if let Some(place) = at.and_then(|at| said.said[rule].get_mut(at)) {
            *place += 1;
        }
    }
}
