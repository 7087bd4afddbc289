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
