//! Holds that two people lift, and lifts that lift nothing.

use super::joined;
use crate::acts::Target;
use crate::lot::{Disposition, LotReason, LotReasonCode, Reasons};
use crate::undertaking::Lift;

/// The lifts of one lot, and which of them found a hold.
#[derive(Debug)]
pub struct Lifts<'a> {
    lifts: Vec<OfLot<'a>>,
    placed: bool,
}

#[derive(Debug)]
struct OfLot<'a> {
    /// The part and material it is for; `None` for all of the lot.
    material: Option<(&'a str, &'a str)>,
    lift: &'a Lift,
    used: bool,
}

impl<'a> Lifts<'a> {
    /// `placed`: no other lot has these names.
    pub(super) fn of(lifts: &'a [(&'a Target, Lift)], supplier: &str, lot: &str, placed: bool) -> Lifts<'a> {
        let of_lot = lifts.iter().filter_map(|(target, lift)| {
            let (of, material) = match target {
                Target::Lot(of_supplier, of_lot) => ((of_supplier, of_lot), None),
                Target::LotMaterial([of_supplier, of_lot, part, material]) => {
                    ((of_supplier, of_lot), Some((part.as_str(), material.as_str())))
                }
                _ => return None,
            };
            (of.0 == supplier && of.1 == lot).then_some(OfLot { material, lift, used: false })
        });
        Lifts { lifts: of_lot.collect(), placed }
    }

    /// Lifts holds of one material (part and name, empty where not stated), or, with `None`, those of the lot itself.
    ///
    /// # Decision
    /// A hold that may be lifted stays among the reasons and holds no more, and beside it stands who lifted it and why.
    /// Without the initials of two different people it goes on holding. Nothing else is touched: OL, and all that only a
    /// result ends.
    pub fn apply(&mut self, material: Option<(&str, &str)>, reasons: &mut Reasons) {
        for one in self.lifts.iter_mut().filter(|_| self.placed) {
            if one.material.is_some() && one.material != material {
                continue;
            }
            let lift = one.lift;
            let fits = |reason: &LotReason| {
                reason.code.may_be_lifted()
                    && reason.code.code() == lift.reason
                    && (lift.about.is_empty() || reason.about == lift.about)
            };
            if lift.is_countersigned() {
                if reasons.lift(fits) {
                    one.used = true;
                    reasons.add(told(LotReasonCode::Lifted, lift));
                }
            } else if reasons.list().iter().any(|one| one.effect == Disposition::Hold && fits(one)) {
                one.used = true;
                reasons.add(told(LotReasonCode::LiftNotCountersigned, lift));
            }
        }
    }

    /// What became of the lifts that found no hold: printed with the lot.
    pub fn close(self, reasons: &mut Reasons) {
        for one in self.lifts.iter().filter(|one| !one.used) {
            let known = LotReasonCode::ALL.iter().find(|code| code.code() == one.lift.reason);
            let code = if known.is_some_and(|code| code.may_be_lifted()) {
                LotReasonCode::LiftNotNeeded
            } else {
                LotReasonCode::LiftNotAllowed
            };
            reasons.add(told(code, one.lift));
        }
    }
}

fn told(code: LotReasonCode, lift: &Lift) -> LotReason {
    let about = joined(&[&lift.reason, &lift.about, &lift.why, &lift.by, &lift.second]);
    LotReason { code, effect: Disposition::Accept, about, count: 1, of: 1 }
}

#[cfg(test)]
mod tests {
    use super::super::tests::said;
    use super::*;

    fn lift(target: Target, text: &str) -> (Target, Lift) {
        (target, Lift::parse(text).unwrap())
    }

    fn lot() -> Target {
        Target::Lot("Alder".into(), "A-1".into())
    }

    fn material(name: &str) -> Target {
        Target::LotMaterial(["Alder", "A-1", "P-1", name].map(str::to_owned))
    }

    fn holds() -> Reasons {
        let mut reasons = Reasons::default();
        for (code, effect, about) in [
            (LotReasonCode::OverLimit, Disposition::NotAccept, "Cd"),
            (LotReasonCode::Undecided, Disposition::Hold, "Pb"),
            (LotReasonCode::Undecided, Disposition::Hold, "Br"),
            (LotReasonCode::NotCapable, Disposition::Hold, "Hg"),
        ] {
            reasons.add(LotReason { code, effect, about: about.into(), count: 1, of: 1 });
        }
        reasons
    }

    fn after(made: &[(Target, Lift)], name: &str) -> Vec<String> {
        let lifts: Vec<(&Target, Lift)> = made.iter().map(|(target, lift)| (target, lift.clone())).collect();
        let mut lifts = Lifts::of(&lifts, "Alder", "A-1", true);
        let mut reasons = holds();
        lifts.apply(Some(("P-1", name)), &mut reasons);
        lifts.close(&mut reasons);
        said(reasons)
    }

    const BEFORE: [&str; 4] =
        ["not_accept over_limit Cd", "hold not_capable Hg", "hold undecided Pb", "hold undecided Br"];

    #[test]
    fn two_people_lift_what_is_undecided_and_the_reason_stays() {
        let one = [lift(lot(), "reason=undecided;about=Pb;why=drawing 4;by=AB;second=CD")];
        let expected = [
            BEFORE[0],
            BEFORE[1],
            "hold undecided Br",
            "accept undecided Pb",
            "accept lifted undecided|Pb|drawing 4|AB|CD",
        ];
        assert_eq!(after(&one, "body"), expected);
        let all = after(&[lift(material("body"), "reason=undecided;why=x;by=AB;second=CD")], "body");
        assert_eq!(all[2..4], ["accept undecided Pb", "accept undecided Br"]);
    }

    #[test]
    fn a_lift_of_another_material_or_of_another_lot_lifts_nothing_here() {
        let other = after(&[lift(material("lid"), "reason=undecided;why=x;by=AB;second=CD")], "body");
        assert_eq!(other[..4], BEFORE);
        assert_eq!(other[4], "accept lift_not_needed undecided||x|AB|CD");
        let elsewhere =
            lift(Target::Lot("Alder".into(), "A-2".into()), "reason=undecided;why=x;by=AB;second=CD");
        assert_eq!(after(&[elsewhere], "body"), BEFORE);
    }

    #[test]
    fn one_person_alone_lifts_nothing() {
        for by in ["by=AB", "by=AB;second=a.b.", "second=CD"] {
            let alone = after(&[lift(lot(), &format!("reason=undecided;about=Pb;why=x;{by}"))], "body");
            assert_eq!(alone[..4], BEFORE);
            assert!(alone[4].starts_with("accept lift_not_countersigned undecided|Pb|x|"), "{alone:?}");
        }
    }

    #[test]
    fn over_limit_and_what_only_a_result_ends_is_never_lifted() {
        for code in LotReasonCode::ALL.iter().filter(|code| !code.may_be_lifted()) {
            let text = format!("reason={};why=x;by=AB;second=CD", code.code());
            let mut reasons = Reasons::default();
            for effect in [Disposition::Hold, Disposition::NotAccept] {
                reasons.add(LotReason { code: *code, effect, about: String::new(), count: 1, of: 1 });
            }
            let made = [lift(lot(), &text)];
            let lifts: Vec<(&Target, Lift)> =
                made.iter().map(|(target, lift)| (target, lift.clone())).collect();
            let mut lifts = Lifts::of(&lifts, "Alder", "A-1", true);
            lifts.apply(None, &mut reasons);
            lifts.close(&mut reasons);
            let said = said(reasons);
            assert_eq!(said.len(), 3, "{said:?}");
            assert!(said[2].contains("lift_not_allowed"), "{said:?}");
        }
        let unheard = after(&[lift(lot(), "reason=no_such_thing;why=x;by=AB;second=CD")], "body");
        assert_eq!(unheard[4], "accept lift_not_allowed no_such_thing||x|AB|CD");
    }

    #[test]
    fn only_x_trust_and_sampling_may_be_lifted() {
        let may: Vec<&str> =
            LotReasonCode::ALL.iter().filter(|code| code.may_be_lifted()).map(|code| code.code()).collect();
        assert_eq!(
            may,
            [
                "undecided",
                "trust_not_bracketed",
                "checks_far_apart",
                "material_changed",
                "trust_none",
                "trust_not_certified",
                "trust_not_judged",
                "sampling_none",
                "lot_size_missing",
                "sampling_too_few",
                "units_not_stated",
            ]
        );
    }
}
