//! What laboratory results do to the reasons of their material.

use super::verdict::{Bound, LabVerdict, RowSays, judge, judge_row};
use super::{MaterialNames, Settling, joined};
use crate::acts::same_name;
use crate::claims::MaterialClaims;
use crate::exempt::Bound as ExemptBound;
use crate::laboratory::{Analyte, LabResult, LabValue};
use crate::lot::{Disposition, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::quantity::{Coverage, MassFraction, Sigma};
use crate::rules::{Basis, Limit, legal_limits};
use crate::substance::{Halogen, Substance};

/// A laboratory result with what it says, beside what the screen said.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabFinding {
    /// The result.
    pub result: LabResult,
    /// What it says of the law's limit on its analyte; `None` for chlorine, which no such law limits.
    pub verdict: Option<LabVerdict>,
    /// That limit.
    pub limit: Option<MassFraction>,
    /// The screen's worst outcome of what it answers.
    pub screen: Outcome,
    /// False where its names fit several materials, so that it settles nothing in any of them.
    pub placed: bool,
}

/// A material as its results see it.
#[derive(Clone, Copy, Debug)]
pub struct Material<'a> {
    /// Its class.
    pub class: MaterialClass,
    /// What its readings add up to.
    pub tally: &'a MaterialTally,
    /// What is claimed of it.
    pub claims: &'a MaterialClaims,
}

/// What a result within takes the place of, of its own substance.
const SETTLES: &[LotReasonCode] = &[
    LotReasonCode::OverLimit,
    LotReasonCode::OverInSomeClasses,
    LotReasonCode::NotMeasured,
    LotReasonCode::NoUncertainty,
    LotReasonCode::DetectionTooHigh,
    LotReasonCode::NotCapable,
    LotReasonCode::Undecided,
];
/// What two names share, the substance's and the halogen's: taken away where both are settled.
const SHARED: &[LotReasonCode] = &[
    LotReasonCode::OverlapUnresolved,
    LotReasonCode::OverMayBeOverlap,
    LotReasonCode::SetAsideOver,
    LotReasonCode::SetAsideOpen,
];
/// Claims of the substance that are no longer needed.
const CLAIMS: &[LotReasonCode] = &[
    LotReasonCode::ClaimOpen,
    LotReasonCode::ClaimExceeded,
    LotReasonCode::ClaimExpired,
    LotReasonCode::ClaimNotCovered,
];

/// The substance whose outcome a result answers; `None` for chlorine.
const fn substance_of(analyte: Analyte) -> Option<Substance> {
    Some(match analyte {
        Analyte::Cd => Substance::Cd,
        Analyte::Pb => Substance::Pb,
        Analyte::Hg => Substance::Hg,
        Analyte::Cr | Analyte::Cr6 => Substance::Cr,
        Analyte::Br | Analyte::Pbb | Analyte::Pbde => Substance::Br,
        Analyte::Cl => return None,
    })
}

/// The row of the law that answers for a substance.
fn row_of(substance: Substance) -> Option<&'static Limit> {
    let alone = [substance.element()];
    legal_limits().iter().find(|row| row.of == alone && !row.source_unknown)
}

/// The limit that a result is held against alone.
fn limit_of(analyte: Analyte) -> Option<MassFraction> {
    let row = substance_of(analyte).and_then(row_of)?;
    let species = matches!(analyte, Analyte::Cr6 | Analyte::Pbb | Analyte::Pbde);
    Some(row.species_limit.filter(|_| species).unwrap_or(row.limit))
}

/// A result in few signs: `412 ± 30 mg/kg (k = 2)`.
pub fn value_text(result: &LabResult) -> String {
    match (result.value, result.expanded) {
        (LabValue::Below(limit), _) => format!("< {limit} mg/kg"),
        (LabValue::Number(x), Some((u, k))) => format!("{x} ± {u} mg/kg (k = {k})"),
        (LabValue::Number(x), None) => format!("{x} mg/kg"),
    }
}

impl LabFinding {
    /// What its reason is about: name, analyte, value, limit, method, laboratory, report, day, the screen's outcome.
    fn about(&self, name: &str, limit: MassFraction) -> String {
        let result = &self.result;
        joined(&[
            name,
            result.analyte.code(),
            &value_text(result),
            &limit.to_string(),
            &result.method,
            &result.laboratory,
            &result.report,
            &result.date.map(|day| day.to_string()).unwrap_or_default(),
            self.screen.code(),
        ])
    }
}

impl Settling<'_> {
    /// The results of one material; one that fits several materials settles nothing in any of them. `tallies` are what was screened: the readings that count, and, so that what
    /// they said stays beside the result, those set aside.
    pub fn results_of(&self, names: MaterialNames<'_>, tallies: &[&MaterialTally]) -> Vec<LabFinding> {
        let of_material =
            self.results.iter().filter(|(target, _, _)| target.each_ref().map(String::as_str) == names);
        let found = of_material.map(|(_, result, alike)| {
            let substance = substance_of(result.analyte);
            let screened = tallies.iter().filter(|tally| tally.readings > 0).map(|tally| match substance {
                Some(substance) => tally.worst(substance),
                None => tally.worst_halogen(Halogen::Cl),
            });
            let screen = screened.max().unwrap_or(Outcome::NotMeasured);
            let says = substance.and_then(row_of).and_then(|row| judge_row(row, &[result]));
            LabFinding {
                result: result.clone(),
                verdict: says.and_then(|says| says.each.first().map(|(_, verdict)| *verdict)),
                limit: limit_of(result.analyte),
                screen,
                placed: *alike <= 1,
            }
        });
        found.collect()
    }

    /// Lets the results of a material change its reasons.
    ///
    /// # Decision
    /// For each substance the worst of its results counts. Within, and nothing worse: what the screen left open or found over
    /// is taken away. Over: *not accept*, whatever the screen said, unless a covering claim covers the result too. Anything
    /// else holds. Trust, sampling, class and whatever is about another substance stay.
    pub fn apply_results(&self, material: Material<'_>, found: &[LabFinding], reasons: &mut Reasons) {
        let (placed, unplaced): (Vec<&LabFinding>, Vec<&LabFinding>) =
            found.iter().partition(|one| one.placed);
        let each = material.tally.readings;
        for one in unplaced {
            let (code, effect) = match one.verdict {
                Some(LabVerdict::Over) => (LotReasonCode::LabOver, Disposition::NotAccept),
                _ => (LotReasonCode::LabNotPlaced, Disposition::Accept),
            };
            let name = substance_of(one.result.analyte).map_or("Cl", Substance::symbol);
            let about = one.about(name, one.limit.unwrap_or(MassFraction::ZERO));
            reasons.add(LotReason { code, effect, about, count: each, of: each });
        }
        if placed.is_empty() {
            return;
        }
        let results: Vec<&LabResult> = placed.iter().map(|one| &one.result).collect();
        let mut within = [false; 5];
        for substance in Substance::ALL {
            let Some((row, says)) = row_of(substance).and_then(|row| Some((row, judge_row(row, &results)?)))
            else {
                continue;
            };
            self.print(material, &placed, substance, row, &says, reasons);
            if let Some(settled) = within.get_mut(substance as usize) {
                *settled = says.settled == LabVerdict::Within;
            }
        }
        let halogens = self.apply_halogens(material, &placed, &results, reasons);
        self.apply_books(material, &placed, &results, reasons);
        for substance in Substance::ALL {
            if !within.get(substance as usize).copied().unwrap_or(false) {
                continue;
            }
            let symbol = substance.symbol();
            reasons.remove(SETTLES, symbol);
            reasons.remove_starting(CLAIMS, &format!("{symbol} "));
            if substance != Substance::Br || self.halogens.is_none() || halogens[Halogen::Br as usize] {
                reasons.remove(SHARED, symbol);
            }
        }
        for of in [Halogen::Cl, Halogen::Total].into_iter().filter(|of| halogens[*of as usize]) {
            reasons.remove(SHARED, of.name());
        }
        // One reason speaks for both: it stays while a BL of either rests on the thickness.
        let rests = |substance: Substance| {
            let below = material.tally.counts.get(substance as usize);
            let below = below.and_then(|counts| counts.get(Outcome::Below as usize));
            below.is_some_and(|count| *count > 0) && !within.get(substance as usize).copied().unwrap_or(false)
        };
        if !rests(Substance::Cd) && !rests(Substance::Pb) {
            reasons.remove(&[LotReasonCode::ThicknessNotStated], "");
        }
    }

    /// Prints every result of a substance with what it does.
    fn print(
        &self,
        material: Material<'_>,
        placed: &[&LabFinding],
        substance: Substance,
        row: &Limit,
        says: &RowSays,
        reasons: &mut Reasons,
    ) {
        let readings = material.tally.readings;
        for (at, verdict) in &says.each {
            let Some(one) = placed.get(*at) else { continue };
            let settled = says.settled == LabVerdict::Within;
            let (code, effect) = match verdict {
                LabVerdict::Over => {
                    (LotReasonCode::LabOver, self.over_beside_a_claim(material, substance, &one.result))
                }
                _ if !one.result.is_traceable() => (LotReasonCode::LabNotTraceable, Disposition::Hold),
                LabVerdict::NoUncertainty => (LotReasonCode::LabNoUncertainty, Disposition::Hold),
                LabVerdict::NotTheSpecies if settled => (LotReasonCode::LabOpen, Disposition::Accept),
                LabVerdict::Open | LabVerdict::NotTheSpecies => (LotReasonCode::LabOpen, Disposition::Hold),
                LabVerdict::Within => (LotReasonCode::LabWithin, Disposition::Accept),
            };
            let about = one.about(substance.symbol(), one.limit.unwrap_or(row.limit));
            reasons.add(LotReason { code, effect, about, count: readings, of: readings });
        }
        if says.species_missing && reasons.list().iter().any(|one| one.about == substance.symbol()) {
            let (code, about) = (LotReasonCode::LabGroupMissing, substance.symbol().to_owned());
            reasons.add(LotReason { code, effect: Disposition::Hold, about, count: 1, of: 1 });
        }
    }

    /// A result over the general limit may lie within the number of an exemption that covers the readings.
    fn over_beside_a_claim(
        &self,
        material: Material<'_>,
        substance: Substance,
        result: &LabResult,
    ) -> Disposition {
        use crate::exempt::{Number, Verdict};
        let Some((judged, verdict)) = material.claims.best(substance) else { return Disposition::NotAccept };
        let stated = match verdict {
            Verdict::Covered => Disposition::Accept,
            Verdict::Open(_) => Disposition::Hold,
            _ => return Disposition::NotAccept,
        };
        let row = judged.row.and_then(|row| self.books.exemptions().get(row));
        let Some(bound) = row.map(|row| row.bound) else { return Disposition::NotAccept };
        match within_exemption(bound, result) {
            Number::Within => stated,
            Number::Exceeded => Disposition::NotAccept,
            _ => Disposition::Hold,
        }
    }

    /// Halogens, where their book moves dispositions; true for each that its results settle.
    fn apply_halogens(
        &self,
        material: Material<'_>,
        placed: &[&LabFinding],
        results: &[&LabResult],
        reasons: &mut Reasons,
    ) -> [bool; 3] {
        let mut settled = [false; 3];
        let Some(rule) = self.halogens.filter(|_| material.class != MaterialClass::Metal) else {
            return settled;
        };
        for of in Halogen::ALL {
            let wanted: &[Analyte] = match of {
                Halogen::Cl => &[Analyte::Cl],
                Halogen::Br => &[Analyte::Br],
                Halogen::Total => &[Analyte::Cl, Analyte::Br],
            };
            let bound = Bound { limit: rule.limit(of), equal_is_within: rule.equal_is_within };
            let Some(says) = judge_together(wanted, bound, results) else { continue };
            let codes = [LotReasonCode::HalogenOverLimit, LotReasonCode::HalogenOpen];
            // What lies under or between a resin may dilute it.
            let settles = !matches!(material.class, MaterialClass::Composite | MaterialClass::Plated);
            let over = if material.class == MaterialClass::Unknown {
                Disposition::Hold
            } else {
                Disposition::NotAccept
            };
            let limited = Limited { name: of.name(), limit: bound.limit, codes: &codes, settles, over };
            if let Some(place) = settled.get_mut(of as usize) {
                *place = limited.apply(material.tally, placed, &says, reasons);
            }
        }
        settled
    }

    /// Limits of the books that the inspection goes by.
    fn apply_books(
        &self,
        material: Material<'_>,
        placed: &[&LabFinding],
        results: &[&LabResult],
        reasons: &mut Reasons,
    ) {
        let day = self.settings.placed();
        for book in &self.in_force.limits {
            for row in &book.limits {
                let speaks =
                    row.classes.contains(&material.class) && day.is_none_or(|day| row.validity.holds_on(day));
                let Some(says) = judge_row(row, results).filter(|_| speaks) else { continue };
                let name = format!("{}: {}", book.id, row.id);
                let mixed = material.class == MaterialClass::Composite && row.basis.is_one_material();
                let asks = row.source_unknown
                    || !row.question.is_empty()
                    || (row.validity.is_dated() && day.is_none());
                let over = match row.of[..] {
                    _ if asks => Disposition::Hold,
                    [element] if self.books.exempts().contains(&book.id) => {
                        Substance::from_symbol(element.symbol())
                            .and_then(|substance| {
                                let over =
                                    says.each.iter().filter(|(_, verdict)| *verdict == LabVerdict::Over);
                                let effects = over
                                    .filter_map(|(at, _)| results.get(*at))
                                    .map(|result| self.over_beside_a_claim(material, substance, result));
                                effects.max()
                            })
                            .unwrap_or(Disposition::NotAccept)
                    }
                    _ => Disposition::NotAccept,
                };
                let limited = Limited {
                    name: &name,
                    limit: row.limit,
                    codes: &[LotReasonCode::LimitOver, LotReasonCode::LimitOpen],
                    settles: !mixed && row.basis != Basis::Coating,
                    over,
                };
                if limited.apply(material.tally, placed, &says, reasons) {
                    reasons.remove(SHARED, &name);
                }
            }
        }
    }

    /// What results say of a material of the bill that nobody measured: reasons, and whether they settle all of it.
    ///
    /// # Decision
    /// Only results for all five substances, all within, stand for the missing readings (bromine not, where the class is
    /// set to metal), and only where the inspection goes by no other limits. Over is over in any case.
    pub fn unmeasured(&self, names: MaterialNames<'_>, reasons: &mut Reasons) -> bool {
        let tally = MaterialTally::default();
        let found = self.results_of(names, &[]);
        let results: Vec<&LabResult> = found.iter().map(|one| &one.result).collect();
        let placed: Vec<&LabFinding> = found.iter().collect();
        let [_, _, part, name] = names;
        let class = self.settings.class_of_part(part, name).unwrap_or(MaterialClass::Unknown);
        let claims = MaterialClaims::default();
        let material = Material { class, tally: &tally, claims: &claims };
        let mut whole = self.halogens.is_none() && self.in_force.limits.is_empty();
        for substance in Substance::ALL {
            let says = row_of(substance).and_then(|row| Some((row, judge_row(row, &results)?)));
            let needed = !(substance == Substance::Br && class == MaterialClass::Metal);
            whole &= !needed || says.as_ref().is_some_and(|(_, says)| says.settled == LabVerdict::Within);
            if let Some((row, says)) = says {
                self.print(material, &placed, substance, row, &says, reasons);
            }
        }
        self.apply_halogens(material, &placed, &results, reasons);
        self.apply_books(material, &placed, &results, reasons);
        whole
    }

    /// Results for materials of a lot that are neither measured nor on a bill.
    ///
    /// # Decision
    /// A result over that fits no lot here holds the lot it must be meant for: the same name in another spelling, and the
    /// same supplier so spelled or not stated, or the same part and material.
    pub fn not_placed(
        &self,
        supplier: &str,
        lot: &str,
        known: &dyn Fn(&str, &str) -> bool,
        reasons: &mut Reasons,
    ) {
        for (target, result, _) in &self.results {
            let [of_supplier, of_lot, part, name] = *target;
            let of_this = of_supplier == supplier && of_lot == lot;
            let is_here = self.lots.contains_key(&(of_supplier.clone(), of_lot.clone()));
            let meant = !is_here
                && !lot.is_empty()
                && same_name(of_lot, lot)
                && (same_name(of_supplier, supplier)
                    || of_supplier.is_empty()
                    || supplier.is_empty()
                    || known(part, name));
            if if of_this { known(part, name) } else { !meant } {
                continue;
            }
            let found = self.results_of(target.each_ref().map(String::as_str), &[]);
            let Some(one) = found.into_iter().find(|one| one.result == *result) else { continue };
            let over = one.verdict == Some(LabVerdict::Over);
            if !of_this && !over {
                continue;
            }
            let effect = if over { Disposition::Hold } else { Disposition::Accept };
            let about = one.about(name, one.limit.unwrap_or(MassFraction::ZERO));
            reasons.add(LotReason { code: LotReasonCode::LabNotPlaced, effect, about, count: 1, of: 1 });
        }
    }
}

/// All results of some analytes against one limit: of one the worst, of several their sum.
fn judge_together(wanted: &[Analyte], bound: Bound, results: &[&LabResult]) -> Option<RowSays> {
    let [one] = wanted else { return super::verdict::judge_parts(wanted, bound, results) };
    let judged = results.iter().enumerate().filter(|(_, result)| result.analyte == *one);
    let each: Vec<(usize, LabVerdict)> = judged.map(|(at, result)| (at, judge(result, bound))).collect();
    let settled = super::verdict::worst(results, &each, *one)?;
    Some(RowSays { settled, each, species_missing: false })
}

/// A limit beside those of the screen's own law.
struct Limited<'a> {
    name: &'a str,
    limit: MassFraction,
    codes: &'a [LotReasonCode],
    /// Whether a result within takes away what the readings left open.
    settles: bool,
    /// What a result over leads to.
    over: Disposition,
}

impl Limited<'_> {
    /// True where the results settle the limit.
    fn apply(
        &self,
        tally: &MaterialTally,
        placed: &[&LabFinding],
        says: &RowSays,
        reasons: &mut Reasons,
    ) -> bool {
        let open = reasons.has(self.codes, self.name);
        let settled = self.settles && says.settled == LabVerdict::Within;
        for (at, verdict) in &says.each {
            let Some(one) = placed.get(*at) else { continue };
            let (code, effect) = match verdict {
                LabVerdict::Over => (LotReasonCode::LabOver, self.over),
                // What nobody can look up holds by its own substance already.
                _ if !one.result.is_traceable() => continue,
                LabVerdict::NoUncertainty => (LotReasonCode::LabNoUncertainty, Disposition::Hold),
                LabVerdict::Open => (LotReasonCode::LabOpen, Disposition::Hold),
                LabVerdict::Within if settled && open => (LotReasonCode::LabWithin, Disposition::Accept),
                LabVerdict::Within | LabVerdict::NotTheSpecies => continue,
            };
            let about = one.about(self.name, self.limit);
            reasons.add(LotReason { code, effect, about, count: tally.readings, of: tally.readings });
        }
        if settled {
            reasons.remove(self.codes, self.name);
        }
        settled
    }
}

/// What a result says of an exemption's number; U is taken with k at least 2, as for any limit.
fn within_exemption(bound: ExemptBound, result: &LabResult) -> crate::exempt::Number {
    let number = match result.value {
        LabValue::Number(x) => Some(x),
        LabValue::Below(_) => None,
    };
    let sigma = result.expanded.and_then(|(u, k)| Sigma::from_printed(u, k));
    let k = result.expanded.map_or(200, |(_, k)| k.hundredths()).clamp(200, 500);
    let k = u8::try_from(k.div_ceil(10)).ok().and_then(Coverage::from_tenths).unwrap_or(Coverage::THREE);
    crate::exempt::judge_number(bound, number, sigma, k)
}

#[cfg(test)]
mod tests {
    use super::super::tests::{act, said, tally};
    use super::*;
    use crate::acts::{Act, ActKind, Settings, Target};
    use crate::rules::RuleBooks;

    const NAMES: [&str; 4] = ["Alder", "A-1", "P-1", "body"];

    fn result(analyte: &str, value: &str) -> Act {
        let trace = "method=IEC 62321-5:2013;laboratory=Gorse Works;date=2026-11-20";
        let target = Target::LotMaterial(NAMES.map(str::to_owned));
        act(
            ActKind::Laboratory,
            target,
            &format!("analyte={analyte};value={value};report=R-{analyte};{trace}"),
        )
    }

    fn settled(acts: &[Act], class: MaterialClass, tally: &MaterialTally, halogens: bool) -> Vec<String> {
        let (settings, books) = (Settings::from_acts(acts), RuleBooks::built_in().unwrap());
        let in_force = books.in_force(&settings.books);
        let settling = Settling::new(&settings, &books, &in_force, halogens);
        let claims = MaterialClaims::default();
        let mut reasons = tally.reasons(halogens);
        let found = settling.results_of(NAMES, &[tally]);
        settling.apply_results(Material { class, tally, claims: &claims }, &found, &mut reasons);
        let short = |text: String| text.split('|').take(3).collect::<Vec<_>>().join("|");
        said(reasons).into_iter().map(short).collect()
    }

    #[test]
    fn a_result_within_takes_the_place_of_every_outcome_of_its_own_substance() {
        for outcome in Outcome::ALL {
            let one = tally(&[(Substance::Pb, outcome), (Substance::Hg, Outcome::Undecided)]);
            let after = settled(&[result("Pb", "<5 mg/kg")], MaterialClass::Metal, &one, false);
            assert_eq!(after, ["hold undecided Hg", "accept lab_within Pb|Pb|< 5 mg/kg"], "{outcome:?}");
        }
        let some = MaterialTally { firm_over: [0; 5], ..tally(&[(Substance::Pb, Outcome::Over)]) };
        let after = settled(&[result("Pb", "<5 mg/kg")], MaterialClass::Unknown, &some, false);
        assert_eq!(after, ["accept lab_within Pb|Pb|< 5 mg/kg"]);
    }

    #[test]
    fn class_thickness_and_mode_are_not_the_laboratorys() {
        let doubts = MaterialTally {
            class_unknown: 1,
            calibration_doubtful: 1,
            thickness_missing: 1,
            ..tally(&[(Substance::Pb, Outcome::Over)])
        };
        let lead = [result("Pb", "<5 mg/kg")];
        let after = settled(&lead, MaterialClass::Unknown, &doubts, false);
        let stay = ["hold class_unknown ", "hold thickness_not_stated ", "hold calibration_doubtful "];
        assert_eq!(after[..3], stay);
        // With cadmium settled too, no BL rests on the thickness any more.
        let both = [result("Pb", "<5 mg/kg"), result("Cd", "<5 mg/kg")];
        let after = settled(&both, MaterialClass::Unknown, &doubts, false);
        assert_eq!(after[..2], ["hold class_unknown ", "hold calibration_doubtful "]);
    }

    #[test]
    fn an_overlap_of_bromine_stays_while_its_halogen_is_open() {
        let mut one = tally(&[]);
        one.doubtful[Substance::Br as usize].below = 1;
        one.halogen_counts[Halogen::Br as usize][Outcome::Undecided as usize] = 1;
        let groups = [result("PBB", "<5 mg/kg"), result("PBDE", "<5 mg/kg")];
        let after = settled(&groups, MaterialClass::Polymer, &one, true);
        assert_eq!(after[..2], ["hold halogen_open Br", "hold overlap_unresolved Br"]);
        let after = settled(&groups, MaterialClass::Polymer, &one, false);
        assert!(after.iter().all(|reason| reason.starts_with("accept lab_within")), "{after:?}");
    }

    #[test]
    fn halogens_are_settled_one_by_one_and_in_no_mixture() {
        let mut one = tally(&[]);
        for of in Halogen::ALL {
            one.halogen_counts[of as usize][Outcome::Over as usize] = 1;
            one.halogen_firm_over[of as usize] = 1;
        }
        let chlorine = result("Cl", "<100 mg/kg");
        let after = settled(std::slice::from_ref(&chlorine), MaterialClass::Polymer, &one, true);
        assert_eq!(
            after,
            [
                "not_accept halogen_over_limit Br",
                "not_accept halogen_over_limit total",
                "accept lab_within Cl|Cl|< 100 mg/kg"
            ]
        );
        let both = [chlorine, result("Br", "200 mg/kg;u=10 mg/kg;k=2")];
        let after = settled(&both, MaterialClass::Polymer, &one, true);
        assert!(after.iter().all(|reason| reason.starts_with("accept lab_within")), "{after:?}");
        let after = settled(&both, MaterialClass::Composite, &one, true);
        assert_eq!(after.iter().filter(|reason| reason.starts_with("not_accept")).count(), 3, "{after:?}");
        let much = [result("Cl", "800 mg/kg;u=10 mg/kg;k=2"), result("Br", "800 mg/kg;u=10 mg/kg;k=2")];
        let after = settled(&much, MaterialClass::Polymer, &tally(&[]), true);
        let over: Vec<_> = after.iter().filter(|reason| reason.starts_with("not_accept")).collect();
        assert_eq!(
            over,
            [
                "not_accept lab_over total|Br|800 ± 10 mg/kg (k = 2)",
                "not_accept lab_over total|Cl|800 ± 10 mg/kg (k = 2)"
            ]
        );
    }

    #[test]
    fn what_stands_for_a_material_nobody_measured_is_all_five_substances() {
        let all = ["Cd", "Pb", "Hg", "Cr", "PBB", "PBDE"].map(|analyte| result(analyte, "<5 mg/kg"));
        let whole = |acts: &[Act], books: &[&str]| {
            let mut acts = acts.to_vec();
            acts.push(act(ActKind::Books, Target::Inspection, &books.join("|")));
            let (mut settings, books) = (Settings::from_acts(&acts), RuleBooks::built_in().unwrap());
            settings.books.retain(|name| !name.is_empty());
            let in_force = books.in_force(&settings.books);
            let mut reasons = Reasons::default();
            Settling::new(&settings, &books, &in_force, false).unmeasured(NAMES, &mut reasons)
        };
        assert!(whole(&all, &[]));
        for left_out in 0..all.len() {
            let mut fewer = all.to_vec();
            fewer.remove(left_out);
            assert!(!whole(&fewer, &[]), "{}", all[left_out].value);
        }
        assert!(!whole(&all, &["us-cpsia-101"]), "another law asks more");
        let metal = act(ActKind::Class, Target::Material("P-1".into(), "body".into()), "metal");
        let without_bromine = [all[..4].to_vec(), vec![metal]].concat();
        assert!(whole(&without_bromine, &[]));
    }
}
