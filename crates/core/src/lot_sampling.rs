//! Whether enough physical units of a lot were measured, and what that shows.
//!
//! Acceptance numbers of a table never count here: for restricted substances one unit over is not accepted, whatever the
//! plan (IEC 62321-2:2021, 4.6, by the outcomes themselves). What is decided here is only whether a lot was sampled enough.

use std::collections::BTreeMap;

use crate::acts::{ActKind, Settings, Weight};
use crate::judging::Assessed;
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::sampling::{Plan, PlanSaid, UnitState, Units};
use crate::substance::Halogen;

/// The units of a lot, gathered material by material.
#[derive(Clone, Debug, Default)]
pub struct Gathered {
    fewest: Option<u64>,
    without_unit: u64,
    parts: BTreeMap<Option<String>, Units>,
}

impl Gathered {
    /// Adds the units a material was measured on, and how many of its readings name none.
    pub fn add(&mut self, part: Option<&str>, units: Units, without_unit: u64) {
        let measured = units.measured();
        self.fewest = Some(self.fewest.map_or(measured, |fewest| fewest.min(measured)));
        self.without_unit += without_unit;
        self.parts.entry(part.map(str::to_owned)).or_default().merge(units);
    }
}

/// What the sampling of a lot comes down to.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LotSampling {
    /// Units in the lot, where somebody said.
    pub lot_size: Option<u64>,
    /// The units somebody said to take.
    pub units_to_take: Option<u64>,
    /// The plan somebody asked for.
    pub said: Option<PlanSaid>,
    /// That plan for this lot; needs the lot size.
    pub plan: Option<Plan>,
    /// Units that have to be measured of every material; needs the lot size.
    pub wanted: Option<u64>,
    /// Units the least sampled material was measured on.
    pub measured: u64,
    /// Different units over all materials. More than `measured` where not every unit was measured on every material.
    pub units: u64,
    /// Units on which everything screened is below limit or does not apply, before claims and laboratory results.
    pub conforming: u64,
    /// Units on which something is undecided or was not measured; they never count as conforming.
    pub undecided: u64,
    /// Units on which something is over limit.
    pub over: u64,
}

impl LotSampling {
    /// The most nonconforming units the lot may hold at the plan's confidence, with every unit that is not shown to
    /// conform counted as nonconforming.
    ///
    /// # Errors
    /// `None` without a plan and where some unit was not measured on every material: nothing is shown of such a unit.
    pub fn at_most(&self) -> Option<u64> {
        let whole = self.units == self.measured && self.measured > 0;
        self.plan.filter(|_| whole)?.at_most(self.measured, self.undecided + self.over)
    }
}

/// True where the settings ask for units of any lot, so that they are counted.
pub fn counts_units(settings: &Settings) -> bool {
    let asks = |kind| matches!(kind, ActKind::UnitsToTake | ActKind::SamplingPlan | ActKind::LotSize);
    settings.all().any(|(kind, _, _)| asks(kind))
}

/// What one reading says of its unit. Halogens speak where they count; what a strong overlap, an unknown class or an unstated
/// thickness leaves open does not conform.
pub fn seen(assessed: &Assessed, halogens_count: bool) -> UnitState {
    let known = assessed.class != MaterialClass::Unknown;
    let halogens = halogen_outcomes(assessed).filter(|_| halogens_count);
    let firm = assessed.firm_over.contains(&true)
        || (known && halogens.clone().any(|(outcome, _)| outcome == Outcome::Over));
    let substances = assessed.substances.iter().zip(&assessed.cautions);
    let mut all = substances.map(|(judged, cautions)| (judged.outcome, cautions.strong)).chain(halogens);
    let clear = known && !assessed.thickness_missing && assessed.calibration.is_none();
    if firm {
        UnitState::Over
    } else if clear
        && all.all(|(outcome, strong)| outcome.is_settled() && outcome != Outcome::Over && !strong)
    {
        UnitState::Conforming
    } else {
        UnitState::Undecided
    }
}

fn halogen_outcomes(assessed: &Assessed) -> impl Iterator<Item = (Outcome, bool)> + Clone + '_ {
    let of = |(of, cautions): (Halogen, &crate::caution::Cautions)| {
        (assessed.halogen(of).outcome, cautions.strong)
    };
    Halogen::ALL.into_iter().zip(&assessed.halogen_cautions).map(of)
}

/// What the sampling of a lot comes down to, and the reasons it gives; `None` in place of the first where nothing is said
/// of it.
///
/// # Decision
/// Where both units and a plan are asked for, the larger number counts. A lot that is smaller than the units measured of
/// one of its parts contradicts itself and holds. A reason that `sampling = "advisory"` makes harmless is only ever that
/// nothing was asked for.
pub fn judge(
    settings: &Settings,
    (supplier, lot): (&str, &str),
    gathered: &Gathered,
    readings: u64,
) -> (Option<LotSampling>, Vec<LotReason>) {
    let lot_size = settings.of_lot(ActKind::LotSize, supplier, lot);
    let units_to_take = settings.of_lot(ActKind::UnitsToTake, supplier, lot);
    let said = settings.sampling_plan(supplier, lot);
    let plan = lot_size.and_then(|size| Some(said.as_ref()?.rule.for_lot(size)));
    let asked = units_to_take.max(plan.map(|plan| plan.n));
    let wanted = lot_size.and_then(|size| Some(asked?.min(size)));
    let mut together = Units::default();
    for units in gathered.parts.values() {
        together.merge(units.clone());
    }
    let [conforming, undecided, over] =
        [UnitState::Conforming, UnitState::Undecided, UnitState::Over].map(|seen| together.count(seen));
    let measured = gathered.fewest.unwrap_or(0);

    let mut reasons = Vec::new();
    let mut hold = |code, effect, count, of| {
        reasons.push(LotReason { code, effect, about: String::new(), count, of });
    };
    // A lot has as many pieces of each of its parts as its size says.
    let most = gathered.parts.values().map(Units::measured).max().unwrap_or(0);
    if let Some(size) = lot_size.filter(|size| *size < most) {
        hold(LotReasonCode::LotSizeTooSmall, Disposition::Hold, most, size);
    }
    match wanted {
        Some(wanted) => {
            if gathered.without_unit > 0 {
                hold(LotReasonCode::UnitsNotStated, Disposition::Hold, gathered.without_unit, readings);
            }
            if measured < wanted {
                hold(LotReasonCode::SamplingTooFew, Disposition::Hold, measured, wanted);
            }
        }
        None if units_to_take.is_some() || said.is_some() => {
            hold(LotReasonCode::LotSizeMissing, Disposition::Hold, 1, 1);
        }
        None => {
            let effect = match settings.weight(ActKind::Sampling) {
                Weight::Holding => Disposition::Hold,
                Weight::Advisory => Disposition::Accept,
            };
            hold(LotReasonCode::SamplingNone, effect, 1, 1);
        }
    }
    let anything = lot_size.is_some() || units_to_take.is_some() || said.is_some();
    let sampling = LotSampling {
        lot_size,
        units_to_take,
        said,
        plan,
        wanted,
        measured,
        units: together.measured(),
        conforming,
        undecided,
        over,
    };
    (anything.then_some(sampling), reasons)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::{Act, Target};
    use crate::caution::Cautions;
    use crate::halogen::Total;
    use crate::material::ClassFrom;
    use crate::outcome::{Judgement, UsedSigma};
    use LotReasonCode::{LotSizeMissing, LotSizeTooSmall, SamplingNone, SamplingTooFew, UnitsNotStated};

    const ZERO: &str = "rule=zero_acceptance;confidence=95;share=50;seed=3";

    fn settings(said: &[(ActKind, &str)]) -> Settings {
        let act = |(kind, value): &(ActKind, &str)| Act {
            kind: *kind,
            target: Target::Inspection,
            value: (*value).to_owned(),
            by: String::new(),
            at: String::new(),
            note: String::new(),
        };
        Settings::from_acts(&said.iter().map(act).collect::<Vec<_>>())
    }

    /// A lot of materials, each of a part with its units; `!` before a unit: over, `?`: undecided.
    fn gathered(materials: &[(&str, &[&str])]) -> Gathered {
        let mut gathered = Gathered::default();
        for (part, names) in materials {
            let (mut units, mut without) = (Units::default(), 0);
            for name in *names {
                let (name, state) = match name.split_at(usize::from(name.starts_with(['!', '?']))) {
                    ("!", rest) => (rest, UnitState::Over),
                    ("?", rest) => (rest, UnitState::Undecided),
                    (_, rest) => (rest, UnitState::Conforming),
                };
                if name.is_empty() { without += 1 } else { units.add(name, state) }
            }
            gathered.add(Some(part), units, without);
        }
        gathered
    }

    fn judged(
        said: &[(ActKind, &str)],
        materials: &[(&str, &[&str])],
    ) -> (Option<LotSampling>, Vec<LotReason>) {
        judge(&settings(said), ("Elm", "E-1"), &gathered(materials), 20)
    }

    fn codes(
        said: &[(ActKind, &str)],
        materials: &[(&str, &[&str])],
    ) -> Vec<(LotReasonCode, Disposition, u64, u64)> {
        let reasons = judged(said, materials).1;
        reasons.into_iter().map(|one| (one.code, one.effect, one.count, one.of)).collect()
    }

    #[test]
    fn only_that_nothing_was_asked_for_can_be_made_advisory() {
        let (hold, advisory) = (Disposition::Hold, (ActKind::Sampling, "advisory"));
        let few: &[(&str, &[&str])] = &[("P", &["1"])];
        assert_eq!(codes(&[], few), [(SamplingNone, hold, 1, 1)]);
        assert_eq!(codes(&[advisory], few), [(SamplingNone, Disposition::Accept, 1, 1)]);
        assert_eq!(
            codes(&[advisory, (ActKind::LotSize, "9")], few),
            [(SamplingNone, Disposition::Accept, 1, 1)]
        );
        for asked in [(ActKind::UnitsToTake, "1"), (ActKind::SamplingPlan, ZERO)] {
            assert_eq!(codes(&[advisory, asked], few), [(LotSizeMissing, hold, 1, 1)]);
        }
        let plan = [advisory, (ActKind::LotSize, "9"), (ActKind::SamplingPlan, ZERO)];
        assert_eq!(codes(&plan, few), [(SamplingTooFew, hold, 1, 3)]);
        assert_eq!(codes(&plan, &[("P", &["1", "2", "3", ""])]), [(UnitsNotStated, hold, 1, 20)]);
        assert_eq!(codes(&plan, &[("P", &["1", "2", "3"])]), []);
        assert_eq!(codes(&plan, &[]), [(SamplingTooFew, hold, 0, 3)]);
        let too_small = [advisory, (ActKind::LotSize, "1"), (ActKind::UnitsToTake, "5")];
        assert_eq!(codes(&too_small, &[("P", &["1", "2"])]), [(LotSizeTooSmall, hold, 2, 1)]);
        assert_eq!(codes(&too_small, few), []);
    }

    #[test]
    fn the_larger_of_units_and_plan_is_wanted_and_never_more_than_the_lot() {
        let wanted = |take: &str, size: &str| {
            let said =
                [(ActKind::LotSize, size), (ActKind::UnitsToTake, take), (ActKind::SamplingPlan, ZERO)];
            judged(&said, &[]).0.and_then(|sampling| sampling.wanted)
        };
        assert_eq!((wanted("1", "9"), wanted("7", "9"), wanted("70", "9")), (Some(3), Some(7), Some(9)));
        let only_units = [(ActKind::LotSize, "9"), (ActKind::UnitsToTake, "2")];
        let sampling = judged(&only_units, &[]).0.unwrap();
        assert_eq!((sampling.wanted, sampling.plan, sampling.at_most()), (Some(2), None, None));
        assert!(judged(&[], &[]).0.is_none());
    }

    #[test]
    fn units_are_counted_once_over_all_materials_and_the_least_sampled_material_decides() {
        let said = [(ActKind::LotSize, "9"), (ActKind::SamplingPlan, ZERO)];
        let lot: &[(&str, &[&str])] =
            &[("P", &["1", "2", "?3", "4"]), ("P", &["1", "!2", "!3"]), ("Q", &["04"])];
        let sampling = judged(&said, lot).0.unwrap();
        assert_eq!((sampling.measured, sampling.units), (1, 4));
        assert_eq!((sampling.conforming, sampling.undecided, sampling.over), (2, 0, 2));
        // Unit 1 was measured on every material; 2, 3 and 4 were not, so that nothing is said of what is left.
        assert_eq!(sampling.at_most(), None);
        assert_eq!(codes(&said, lot), [(SamplingTooFew, Disposition::Hold, 1, 3)]);
        // Parts with pieces of their own: five and five are no contradiction to a lot of five.
        let five = [(ActKind::LotSize, "5"), (ActKind::UnitsToTake, "5")];
        let own: &[(&str, &[&str])] =
            &[("P", &["1", "2", "3", "4", "5"]), ("Q", &["6", "7", "8", "9", "10"])];
        assert_eq!(codes(&five, own), []);
    }

    #[test]
    fn an_undecided_unit_counts_as_nonconforming_in_what_may_be_left() {
        let said = [(ActKind::LotSize, "10"), (ActKind::SamplingPlan, ZERO)];
        let most = |units: &[&str]| judged(&said, &[("P", units)]).0.unwrap().at_most();
        // Source: scipy, hypergeom: of 10 units with 3 taken and none found, at most 5 at 95 %.
        assert_eq!(most(&["1", "2", "3"]), Some(5));
        assert!(most(&["1", "2", "?3"]) > most(&["1", "2", "3"]));
        assert_eq!(most(&["1", "2", "?3"]), most(&["1", "2", "!3"]));
        assert_eq!(most(&[]), None);
    }

    fn assessed(lead: Outcome, change: impl Fn(&mut Assessed)) -> Assessed {
        let judged = |outcome| Judgement::new(outcome, None, UsedSigma::NONE);
        let mut assessed = Assessed {
            class: MaterialClass::Polymer,
            class_from: ClassFrom::Declared,
            substances: [
                judged(Outcome::Below),
                judged(lead),
                judged(Outcome::NotApplicable),
                judged(Outcome::Below),
                judged(Outcome::Below),
            ],
            firm_over: [false, lead == Outcome::Over, false, false, false],
            halogens: [judged(Outcome::Below); 2],
            total: Total {
                judgement: judged(Outcome::Below),
                low: None,
                high: None,
                sigma: None,
                low_sigma: None,
            },
            thickness_missing: false,
            multiple_unknown: false,
            calibration: None,
            cautions: [Cautions::default(); 5],
            halogen_cautions: [Cautions::default(); 3],
        };
        change(&mut assessed);
        assessed
    }

    #[test]
    fn a_unit_conforms_only_where_every_outcome_is_settled_and_nothing_is_in_doubt() {
        for outcome in Outcome::ALL {
            let wanted = match outcome {
                Outcome::Below | Outcome::NotApplicable => UnitState::Conforming,
                Outcome::Over => UnitState::Over,
                _ => UnitState::Undecided,
            };
            assert_eq!(seen(&assessed(outcome, |_| {}), true), wanted, "{outcome:?}");
        }
        let below = |change: &dyn Fn(&mut Assessed)| seen(&assessed(Outcome::Below, change), true);
        assert_eq!(below(&|one| one.thickness_missing = true), UnitState::Undecided);
        assert_eq!(below(&|one| one.class = MaterialClass::Unknown), UnitState::Undecided);
        assert_eq!(below(&|one| one.cautions[4].strong = true), UnitState::Undecided);
        let some = |one: &mut Assessed| one.firm_over[1] = false;
        assert_eq!(seen(&assessed(Outcome::Over, some), true), UnitState::Undecided);
        // Halogens speak only where their book counts.
        let chlorine = |one: &mut Assessed| one.halogens[0].outcome = Outcome::Over;
        assert_eq!(below(&chlorine), UnitState::Over);
        assert_eq!(seen(&assessed(Outcome::Below, chlorine), false), UnitState::Conforming);
        let total = |one: &mut Assessed| one.total.judgement.outcome = Outcome::Undecided;
        assert_eq!(below(&total), UnitState::Undecided);
        let strong = |one: &mut Assessed| one.halogen_cautions[2].strong = true;
        assert_eq!(below(&strong), UnitState::Undecided);
    }
}
