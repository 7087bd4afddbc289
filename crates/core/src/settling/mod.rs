//! How a lot is settled beyond its readings: laboratory results, lifted holds, readings set aside, and how a hold ends.
//!
//! Nothing here changes an outcome. A result that is within takes the place of what the screen left open or found over; a
//! hold that two people lift stays printed; setting a reading aside leaves a hold where the reading was not below.

mod laboratory;
mod lifts;
mod verdict;

use std::collections::BTreeMap;

use crate::acts::{ActKind, Settings, Target, escape};
use crate::laboratory::LabResult;
use crate::lot::{Disposition, LimitTally, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::MaterialClass;
use crate::rules::{Halogens, InForce, RuleBooks};
use crate::undertaking::{HoldEnds, Lift};

pub use laboratory::{LabFinding, Material, value_text};
pub use lifts::Lifts;
pub use verdict::{Bound, LabVerdict, RowSays, judge, judge_row};

/// Everything people and laboratories said of lots, read once for all of them.
#[derive(Debug)]
pub struct Settling<'a> {
    /// Each result with its target, and how many materials of the inspection have those names.
    results: Vec<(&'a [String; 4], LabResult, usize)>,
    lifts: Vec<(&'a Target, Lift)>,
    /// How many lots of the inspection have these names, supplier and lot.
    lots: BTreeMap<(String, String), usize>,
    settings: &'a Settings,
    books: &'a RuleBooks,
    in_force: &'a InForce<'a>,
    /// The halogen limits, where they move dispositions.
    halogens: Option<&'a Halogens>,
}

/// The lines of a source whose readings a person set aside.
pub fn lines_set_aside(settings: &Settings, source: &str) -> BTreeMap<u32, String> {
    let of_source = settings.set_aside().filter(|(name, _, _)| *name == source);
    of_source.map(|(_, line, why)| (line, why.to_owned())).collect()
}

/// The material of a lot by its names: supplier, lot, part, material; empty where not stated.
pub type MaterialNames<'n> = [&'n str; 4];

impl<'a> Settling<'a> {
    /// Reads what was said. `halogens_count` is true where the inspection names a halogen book that is loaded.
    pub fn new(
        settings: &'a Settings,
        books: &'a RuleBooks,
        in_force: &'a InForce<'a>,
        halogens_count: bool,
    ) -> Settling<'a> {
        let reviewed = settings.reviewed();
        let results = settings.laboratory().into_iter().filter_map(|(target, mut result)| match target {
            Target::LotMaterial(names) => {
                result.dated_ahead =
                    result.date.zip(reviewed).is_some_and(|(date, reviewed)| date > reviewed);
                Some((names, result, 0))
            }
            _ => None,
        });
        Settling {
            results: results.collect(),
            lifts: settings.lifts(),
            lots: BTreeMap::new(),
            settings,
            books,
            in_force,
            halogens: books.halogens().map(|(_, rule)| rule).filter(|_| halogens_count),
        }
    }

    /// Notes a lot of the inspection and its materials: a result that fits several materials settles nothing in any of
    /// them.
    pub fn count(&mut self, lot: (&str, &str), materials: &[[String; 4]]) {
        for (target, _, alike) in &mut self.results {
            *alike += materials.iter().filter(|names| *names == *target).count();
        }
        *self.lots.entry((lot.0.to_owned(), lot.1.to_owned())).or_default() += 1;
    }

    /// The lifts of one lot; none of them counts where several lots have these names, as lots without one have.
    pub fn lifts(&self, supplier: &str, lot: &str) -> Lifts<'_> {
        let alike = self.lots.get(&(supplier.to_owned(), lot.to_owned())).copied().unwrap_or(1);
        Lifts::of(&self.lifts, supplier, lot, alike <= 1)
    }

    /// Who ends the hold of a lot, and what is odd about it: a day that is past, more units than the lot has.
    pub fn hold_ends(&self, supplier: &str, lot: &str, reasons: &mut Reasons) -> Option<HoldEnds> {
        let ends = self.settings.hold_ends(supplier, lot)?;
        let reviewed = self.settings.reviewed();
        let held = reasons.list().iter().any(|reason| reason.effect != Disposition::Accept);
        if !held {
            return Some(ends);
        }
        let mut printed = |code, about: String, count, of| {
            reasons.add(LotReason { code, effect: Disposition::Accept, about, count, of });
        };
        if let (Some(until), Some(reviewed)) = (ends.until, reviewed)
            && until < reviewed
        {
            printed(LotReasonCode::HoldOverdue, until.to_string(), 1, 1);
        }
        let size = self.settings.of_lot(ActKind::LotSize, supplier, lot);
        if let (Some(apart), Some(size)) = (ends.quarantined, size)
            && apart > size
        {
            printed(LotReasonCode::QuarantineExceedsLot, String::new(), apart, size);
        }
        Some(ends)
    }
}

/// What the readings add up to that a person set aside.
#[derive(Clone, Copy, Debug)]
pub struct SetAside<'a> {
    /// How many there are.
    pub readings: u64,
    /// How many readings of the material are left.
    pub left: u64,
    /// What they, and the repeats they were judged with, add up to.
    pub tally: &'a MaterialTally,
    /// The same, per limit of the books in force.
    pub limits: &'a [LimitTally],
    /// The classes they were judged in.
    pub classes: &'a [MaterialClass],
    /// The classes of the readings that are left.
    pub classes_left: &'a [MaterialClass],
}

impl SetAside<'_> {
    /// The reasons they leave behind, beside those of the readings that are left.
    ///
    /// # Decision
    /// What would have been *not accept* or *hold* holds under its name, whatever is left; what was below is printed. A
    /// reading of another class than the others is no better than one that is open.
    pub fn reasons(&self, halogens_count: bool, limits: &[String], reasons: &mut Reasons) {
        let mut own = self.tally.reasons(halogens_count);
        LimitTally::reasons(self.limits, limits, self.tally.readings, &mut own);
        let mut add = |code, effect, about: &str| {
            let (count, of) = (self.readings, self.readings + self.left);
            if !reasons.has(&[code], about) {
                reasons.add(LotReason { code, effect, about: about.to_owned(), count, of });
            }
        };
        add(LotReasonCode::SetAside, Disposition::Accept, "");
        for reason in own.list() {
            let code = match reason.effect {
                Disposition::Accept => continue,
                Disposition::Hold => LotReasonCode::SetAsideOpen,
                Disposition::NotAccept => LotReasonCode::SetAsideOver,
            };
            add(code, Disposition::Hold, &reason.about);
        }
        let other_class = self.classes.iter().any(|class| !self.classes_left.contains(class));
        if other_class && self.left > 0 {
            add(LotReasonCode::SetAsideOpen, Disposition::Hold, "");
        }
    }
}

/// What a reason is about where it carries several texts: joined by `|`, a `|` or `\` within one behind a `\`.
fn joined(texts: &[&str]) -> String {
    texts.iter().map(|text| escape(text)).collect::<Vec<_>>().join("|")
}

#[cfg(test)]
pub(crate) mod tests {
    use super::*;
    use crate::acts::Act;
    use crate::outcome::Outcome;
    use crate::substance::Substance;

    pub(crate) fn act(kind: ActKind, target: Target, value: &str) -> Act {
        Act { kind, target, value: value.into(), by: String::new(), at: String::new(), note: String::new() }
    }

    pub(crate) fn tally(outcomes: &[(Substance, Outcome)]) -> MaterialTally {
        let mut tally = MaterialTally { readings: 1, ..MaterialTally::default() };
        for substance in Substance::ALL {
            let found = outcomes.iter().find(|(one, _)| *one == substance);
            let outcome = found.map_or(Outcome::Below, |(_, outcome)| *outcome);
            tally.counts[substance as usize][outcome as usize] = 1;
            tally.firm_over[substance as usize] = u64::from(outcome == Outcome::Over);
        }
        tally
    }

    pub(crate) fn said(reasons: Reasons) -> Vec<String> {
        let (_, list) = reasons.close();
        list.iter()
            .map(|reason| format!("{} {} {}", reason.effect.code(), reason.code.code(), reason.about))
            .collect()
    }

    fn settle<T>(acts: &[Act], work: impl FnOnce(&Settling<'_>) -> T) -> T {
        let (settings, books) = (Settings::from_acts(acts), RuleBooks::built_in().unwrap());
        let in_force = books.in_force(&[]);
        work(&Settling::new(&settings, &books, &in_force, false))
    }

    #[test]
    fn a_reading_set_aside_leaves_what_it_was() {
        let aside = |tally: &MaterialTally, classes: &[MaterialClass]| {
            let mut reasons = Reasons::default();
            let set_aside = SetAside {
                readings: 1,
                left: 2,
                tally,
                limits: &[],
                classes,
                classes_left: &[MaterialClass::Metal],
            };
            set_aside.reasons(false, &[], &mut reasons);
            said(reasons)
        };
        let metal = [MaterialClass::Metal];
        assert_eq!(aside(&tally(&[]), &metal), ["accept set_aside "]);
        assert_eq!(
            aside(&tally(&[(Substance::Pb, Outcome::Over), (Substance::Cd, Outcome::NotMeasured)]), &metal),
            ["hold set_aside_over Pb", "hold set_aside_open Cd", "accept set_aside "]
        );
        assert_eq!(
            aside(&tally(&[]), &[MaterialClass::Polymer]),
            ["hold set_aside_open ", "accept set_aside "]
        );
        let both = MaterialTally { thickness_missing: 1, ..tally(&[]) };
        assert_eq!(aside(&both, &metal), ["hold set_aside_open ", "accept set_aside "]);
    }

    #[test]
    fn a_hold_that_is_overdue_or_holds_more_than_there_is_says_so() {
        let lot = || Target::Lot("Alder".into(), "A-1".into());
        let acts = |until: &str, apart: &str| {
            [
                act(ActKind::ReviewedAt, Target::Inspection, "2026-11-25 10:00"),
                act(ActKind::LotSize, lot(), "500"),
                act(ActKind::HoldEnds, lot(), &format!("who=AB;until={until};quarantined={apart}")),
            ]
        };
        let reasons = |acts: &[Act], effect| {
            settle(acts, |settling| {
                let mut reasons = Reasons::default();
                let code = LotReasonCode::TrustNone;
                reasons.add(LotReason { code, effect, about: String::new(), count: 1, of: 1 });
                assert_eq!(settling.hold_ends("Alder", "A-1", &mut reasons).unwrap().who, "AB");
                assert_eq!(settling.hold_ends("Alder", "A-2", &mut Reasons::default()), None);
                said(reasons)
            })
        };
        assert_eq!(reasons(&acts("2026-11-25", "500"), Disposition::Hold), ["hold trust_none "]);
        assert_eq!(
            reasons(&acts("2026-11-24", "501"), Disposition::Hold),
            ["hold trust_none ", "accept hold_overdue 2026-11-24", "accept quarantine_exceeds_lot "]
        );
        assert_eq!(reasons(&acts("2026-11-24", "501"), Disposition::Accept), ["accept trust_none "]);
    }
}
