//! Claims applied to one material: which of them covers what the readings show, what stands in its way, which entries
//! nobody claimed yet, and what a laboratory found of hexavalent chromium by area.

use crate::acts::{Settings, Target};
use crate::day::Day;
use crate::exempt::{
    self, Answers, AreaResult, AreaSaid, Bound, CategoryFit, Claim, Exemption, Group, Number, Question,
    Renewal, Seen, Verdict,
};
use crate::lot::{Disposition, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::{MaterialClass, is_glass_or_ceramic};
use crate::outcome::Outcome;
use crate::quantity::{Coverage, MassFraction, Sigma};
use crate::rules::RuleBooks;
use crate::substance::Substance;

/// The substances an exemption can be about here: XRF shows them themselves.
pub const EXEMPTED: [Substance; 3] = [Substance::Cd, Substance::Pb, Substance::Hg];

/// A measurement that is over limit or undecided: what a claim has to cover.
#[derive(Clone, Copy, Debug)]
pub struct Look {
    /// The value; `None` where it is no number.
    pub value: Option<MassFraction>,
    /// One sigma; `None` where there is none.
    pub sigma: Option<Sigma>,
}

/// A material as a claim sees it.
#[derive(Clone, Copy, Debug)]
pub struct Material<'a> {
    /// Its part; empty where not stated.
    pub part: &'a str,
    /// Its name; empty where not stated.
    pub name: &'a str,
    /// Class and group.
    pub seen: Seen<'a>,
    /// What its readings add up to.
    pub tally: &'a MaterialTally,
}

/// A claim with what became of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct JudgedClaim {
    /// The claim.
    pub claim: Claim,
    /// The row it was judged by, as an index in [`RuleBooks::exemptions`]; `None` where no row has its entry.
    pub row: Option<usize>,
    /// What the readings say of the row's number.
    pub number: Number,
    /// What became of it; `None` where no reading needs it.
    pub verdict: Option<Verdict>,
    /// How many measurements it is about.
    pub looks: u64,
}

/// An entry that may cover the material, and that nobody claimed.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Candidate {
    /// Its row, as an index in [`RuleBooks::exemptions`].
    pub row: usize,
    /// What the readings say of the row's number.
    pub number: Number,
    /// What has to be answered, evidence and initials apart.
    pub questions: Vec<Question>,
}

/// What a laboratory found of hexavalent chromium by area.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cr6Finding {
    /// What it said.
    pub said: AreaSaid,
    /// What that means; `None` where no loaded book tells, or the material is no metal.
    pub result: Option<AreaResult>,
}

/// What claims and results by area say of one material.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct MaterialClaims {
    /// Claims, in the order they were made.
    pub claims: Vec<JudgedClaim>,
    /// Entries nobody claimed, in the order of the book.
    pub candidates: Vec<Candidate>,
    /// Results by area.
    pub cr6: Vec<Cr6Finding>,
    /// The books whose limits a claim is from, by id.
    pub exempts: Vec<String>,
}

/// An entry's day of expiry with the materials that rest on it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Expiry {
    /// The day.
    pub day: Day,
    /// True where the entry is claimed, false where it only may be.
    pub claimed: bool,
    /// The row, as an index in [`RuleBooks::exemptions`].
    pub row: usize,
    /// The materials, as indices in the findings.
    pub materials: Vec<usize>,
}

/// Everything people said of exemptions, read once for all materials.
#[derive(Debug)]
pub struct Claims<'a> {
    rows: &'a [Exemption],
    books: &'a RuleBooks,
    made: Vec<(&'a Target, Claim)>,
    renewals: Vec<Renewal>,
    areas: Vec<(&'a Target, AreaSaid)>,
    settings: &'a Settings,
}

/// Entries that may cover a substance in a material, with what still has to be answered (evidence and initials apart).
/// Entries that no answer could make cover it are left out, and so is what is over on the day of placing on the market.
///
/// # Decision
/// Past its day an entry is in force only while a renewal is pending. Unless somebody says that one is, it is not offered;
/// whoever knows of one claims the entry all the same and is asked for it. Where no day of placing is stated, every entry
/// stays: which are in force depends on that day.
///
/// # Source
/// Directive 2011/65/EU, Article 5(5): an entry stays valid until a renewal that was asked for is decided.
pub fn candidates<'r>(
    rows: &[Exemption],
    substance: Substance,
    seen: Seen<'_>,
    answers: &dyn Fn(&Exemption) -> Answers<'r>,
) -> Vec<(usize, Vec<Question>)> {
    let of_substance = rows.iter().enumerate().filter(|(_, row)| row.substance == substance);
    let open = of_substance.filter_map(|(at, row)| {
        exempt::questions_of(row, seen, None, answers(row)).ok().map(|questions| (at, questions))
    });
    open.filter(|(_, questions)| !questions.contains(&Question::RenewalUnknown)).collect()
}

/// Whether an entry is in force on the day of placing on the market that people gave; a question where that is open.
///
/// # Errors
/// [`Verdict::Expired`] where it is past its day.
pub fn in_force(settings: &Settings, row: &Exemption) -> Result<Option<exempt::Question>, Verdict> {
    let renewals = settings.renewals();
    let renewal = renewals.iter().find(|renewal| renewal.entry == row.entry);
    let (placed, reviewed) = (settings.placed(), settings.reviewed());
    exempt::in_force(row, Answers { placed, reviewed, renewal, ..Answers::default() })
}

impl<'a> Claims<'a> {
    /// Reads what people said.
    pub fn new(settings: &'a Settings, books: &'a RuleBooks) -> Claims<'a> {
        Claims {
            rows: books.exemptions(),
            books,
            made: settings.claims(),
            renewals: settings.renewals(),
            areas: settings.cr6_areas(),
            settings,
        }
    }

    /// False where nothing can come of judging a material: nobody said anything, and nothing could be exempted.
    pub fn concern(&self, tally: &MaterialTally) -> bool {
        !self.made.is_empty()
            || !self.areas.is_empty()
            || EXEMPTED.iter().any(|substance| has_open(tally, *substance))
    }

    fn answers(&self, entry: &str, part: &str) -> Answers<'_> {
        Answers {
            category: self.settings.category(),
            placed: self.settings.placed(),
            reviewed: self.settings.reviewed(),
            mouthing: self.settings.mouthing(part),
            renewal: self.renewals.iter().find(|renewal| renewal.entry == entry),
        }
    }

    fn factor(&self) -> Coverage {
        self.books.screening().map_or(Coverage::THREE, |(_, rule)| rule.sigma_factor)
    }

    /// The worst of what the measurements say of a row's number; not stated where there is none.
    fn number(&self, bound: Bound, looks: &[Look]) -> Number {
        let k = self.factor();
        let each = looks.iter().map(|look| exempt::judge_number(bound, look.value, look.sigma, k));
        each.max().unwrap_or(Number::NotStated)
    }

    /// Judges what is claimed of a material; `looks` gives the measurements of a substance that are over limit or
    /// undecided.
    pub fn judge(&self, material: Material<'_>, looks: &dyn Fn(Substance) -> Vec<Look>) -> MaterialClaims {
        let mut found = MaterialClaims { cr6: self.cr6(material), ..MaterialClaims::default() };
        let needs = |substance| has_open(material.tally, substance);
        for (_, claim) in self.made.iter().filter(|(target, _)| speaks_of(target, material)) {
            let seen = if needs(claim.substance) { looks(claim.substance) } else { Vec::new() };
            found.claims.push(self.judge_one(claim, material, &seen));
        }
        if !found.claims.is_empty() {
            found.exempts = self.books.exempts().to_vec();
        }
        // Of a material that nobody and nothing says anything of, every entry would be one: that is no help to anyone.
        let seen = material.seen;
        if seen.class == MaterialClass::Unknown && seen.groups.is_empty() && seen.perhaps.is_empty() {
            return found;
        }
        for substance in EXEMPTED.into_iter().filter(|substance| needs(*substance)) {
            let answers = |row: &Exemption| self.answers(&row.entry, material.part);
            let mut measured: Option<Vec<Look>> = None;
            for (at, questions) in candidates(self.rows, substance, material.seen, &answers) {
                let Some(row) = self.rows.get(at) else { continue };
                let claimed = found
                    .claims
                    .iter()
                    .any(|one| one.claim.substance == substance && one.claim.entry == row.entry);
                // Most entries name a number, and few materials need one looked at.
                let number = match row.bound {
                    Bound::NoNumber => Number::Within,
                    bound => self.number(bound, measured.get_or_insert_with(|| looks(substance))),
                };
                // Beyond the number of an entry for what the material is, that is worth knowing; beyond that of any
                // other entry there is no reason to think of it.
                let beside = number == Number::Exceeded
                    && (material.seen.groups.is_empty() || matches!(row.bound, Bound::AtLeast(_)));
                if !claimed && !beside {
                    found.candidates.push(Candidate { row: at, number, questions });
                }
            }
        }
        found
    }

    /// A claim by the row of its entry that comes nearest to covering: an entry has a row for each set of categories.
    fn judge_one(&self, claim: &Claim, material: Material<'_>, looks: &[Look]) -> JudgedClaim {
        let answers = self.answers(&claim.entry, material.part);
        let of_entry = self.rows.iter().enumerate().filter(|(_, row)| row.entry == claim.entry);
        let judged = of_entry.map(|(at, row)| {
            let number = self.number(row.bound, looks);
            (at, number, exempt::judge_claim(row, claim, number, material.seen, answers))
        });
        let best = judged.min_by_key(|(_, _, verdict)| verdict.rank());
        let (row, number, verdict) = match best {
            Some((at, number, verdict)) => (Some(at), number, verdict),
            None => (None, Number::NotStated, Verdict::NotCovered(exempt::Refusal::EntryNotInBook)),
        };
        JudgedClaim {
            claim: claim.clone(),
            row,
            number,
            verdict: (!looks.is_empty()).then_some(verdict),
            looks: looks.len() as u64,
        }
    }

    fn cr6(&self, material: Material<'_>) -> Vec<Cr6Finding> {
        let on_metal = matches!(material.seen.class, MaterialClass::Metal | MaterialClass::Plated);
        let of_material = self.areas.iter().filter(|(target, _)| {
            // A result for a whole part speaks of its metals; one for this very material should fit it.
            speaks_of(target, material) && (on_metal || matches!(target, Target::Material(..)))
        });
        let judged = of_material.map(|(_, said)| Cr6Finding {
            said: said.clone(),
            result: self.books.cr6_area().filter(|_| on_metal).map(|rule| rule.judge(said)),
        });
        judged.collect()
    }
}

/// True where some measurement of a substance is over limit or undecided.
fn has_open(tally: &MaterialTally, substance: Substance) -> bool {
    let counts = tally.counts.get(substance as usize);
    [Outcome::Over, Outcome::Undecided].iter().any(|outcome| {
        counts.and_then(|counts| counts.get(*outcome as usize)).is_some_and(|count| *count > 0)
    })
}

fn speaks_of(target: &Target, material: Material<'_>) -> bool {
    match target {
        Target::Part(part) => part == material.part,
        Target::Material(part, name) => part == material.part && name == material.name,
        _ => false,
    }
}

/// The outcomes of total chromium that a negative result by area settles; a substance that was not measured stays so.
const CHROMIUM_OPEN: [Outcome; 4] =
    [Outcome::Undecided, Outcome::NotCapable, Outcome::DetectionTooHigh, Outcome::NoUncertainty];

impl MaterialClaims {
    /// The claim that counts for a substance: the one nearest to covering.
    pub(crate) fn best(&self, substance: Substance) -> Option<(&JudgedClaim, &Verdict)> {
        let of_substance = self.claims.iter().filter(|one| one.claim.substance == substance);
        of_substance
            .filter_map(|one| one.verdict.as_ref().map(|verdict| (one, verdict)))
            .min_by_key(|(_, verdict)| verdict.rank())
    }

    /// Lets claims and results by area change the reasons of their material.
    ///
    /// # Decision
    /// A covering claim takes the place of what it covers and is printed. A claim with open questions turns
    /// *not accept* into *hold*. Any other leaves the reasons as they are and stands beside them. A negative result by
    /// area with its report takes the place of open chromium; any other holds.
    pub fn apply(&self, tally: &MaterialTally, mut reasons: Reasons) -> Reasons {
        use LotReasonCode::{
            ClaimCovers, ClaimExceeded, ClaimExpired, ClaimNotCovered, ClaimOpen, LimitOpen, LimitOver,
            OverInSomeClasses, OverLimit, OverMayBeOverlap, OverlapUnresolved, Undecided,
        };
        for substance in Substance::ALL {
            let Some((judged, verdict)) = self.best(substance) else { continue };
            let symbol = substance.symbol();
            let about = format!("{symbol} {}", judged.claim.entry);
            // The limits that the exemption is from, where the inspection goes by their book; no other book's.
            let limits: Vec<String> = self.exempts.iter().map(|book| format!("{book}: {symbol}")).collect();
            let over = tally.firm_over.get(substance as usize).is_some_and(|count| *count > 0);
            let beside = if over { Disposition::NotAccept } else { Disposition::Hold };
            let mut add = |code, effect, about: String| {
                reasons.add(LotReason { code, effect, about, count: judged.looks, of: tally.readings });
            };
            match verdict {
                Verdict::Covered => {
                    add(ClaimCovers, Disposition::Accept, about);
                    let doubts = [OverlapUnresolved, OverMayBeOverlap];
                    reasons.remove(&[OverLimit, OverInSomeClasses, Undecided], symbol);
                    for limit in &limits {
                        reasons.remove(&[LimitOver, LimitOpen], limit);
                    }
                    // What an overlap adds is no more than was read, and that is covered.
                    reasons.remove(&doubts, symbol);
                }
                Verdict::Open(questions) => {
                    for question in questions {
                        add(ClaimOpen, Disposition::Hold, format!("{about} {}", question.code()));
                    }
                    reasons.only_hold(OverLimit, symbol);
                    for limit in &limits {
                        reasons.only_hold(LimitOver, limit);
                    }
                }
                Verdict::Exceeded => add(ClaimExceeded, beside, about),
                Verdict::Expired => add(ClaimExpired, beside, about),
                Verdict::NotCovered(refusal) => {
                    add(ClaimNotCovered, beside, format!("{about} {}", refusal.code()));
                }
            }
        }
        self.apply_cr6(tally, &mut reasons);
        reasons
    }

    /// The worst result counts: a coating may differ from spot to spot.
    fn apply_cr6(&self, tally: &MaterialTally, reasons: &mut Reasons) {
        use LotReasonCode::{
            Cr6Inconclusive, Cr6Negative, Cr6NoReport, Cr6OtherClass, Cr6Present, DetectionTooHigh,
            NoUncertainty, NotCapable, OverlapUnresolved, Undecided,
        };
        let code_of = |found: &Cr6Finding| match found.result {
            None => Cr6OtherClass,
            Some(AreaResult::Positive) => Cr6Present,
            Some(AreaResult::Inconclusive) => Cr6Inconclusive,
            Some(AreaResult::Negative) if found.said.is_referenced() => Cr6Negative,
            Some(AreaResult::Negative) => Cr6NoReport,
        };
        let Some(code) = self.cr6.iter().map(code_of).max_by_key(|code| match code {
            Cr6Negative => 0,
            Cr6NoReport => 1,
            Cr6Inconclusive => 2,
            _ => 3,
        }) else {
            return;
        };
        let symbol = Substance::Cr.symbol();
        let counts = tally.counts.get(Substance::Cr as usize);
        let open: u64 = CHROMIUM_OPEN
            .iter()
            .filter_map(|outcome| counts.and_then(|counts| counts.get(*outcome as usize)))
            .sum();
        let open = open + tally.doubtful.get(Substance::Cr as usize).map_or(0, |doubtful| doubtful.below);
        let effect = match code {
            Cr6Negative | Cr6OtherClass => Disposition::Accept,
            _ => Disposition::Hold,
        };
        if code == Cr6Negative {
            reasons
                .remove(&[Undecided, NotCapable, DetectionTooHigh, NoUncertainty, OverlapUnresolved], symbol);
            // Limits of hexavalent chromium, whichever books the inspection goes by; sums of metals stay open.
            reasons.remove_ending(LotReasonCode::LimitOpen, ": Cr(VI)");
        }
        reasons.add(LotReason { code, effect, about: symbol.to_owned(), count: open, of: tally.readings });
    }
}

/// What falls out of conformity and when: every day of expiry that a claim which covers or may cover rests on, and,
/// marked apart, that of entries which may be claimed on the day of placing on the market. Sorted by day, claimed first, then in the order of the book.
///
/// A claim whose product category is not stated rests on every row of its entry.
pub fn expiries<'a>(
    settings: &Settings,
    books: &RuleBooks,
    materials: impl Iterator<Item = &'a MaterialClaims>,
) -> Vec<Expiry> {
    let rows = books.exemptions();
    let category = settings.category();
    let may_rest_on = |row: &Exemption| match (row.categories, category) {
        (Some(entry), Some(product)) => product.fit(entry) != CategoryFit::NotCovered,
        _ => true,
    };
    let mut found: Vec<Expiry> = Vec::new();
    let mut add = |row: usize, claimed: bool, material: usize| {
        let Some(day) = rows.get(row).and_then(|row| row.expires) else { return };
        let at = found.iter().position(|one| one.row == row && one.claimed == claimed);
        let at = at.unwrap_or_else(|| {
            found.push(Expiry { day, claimed, row, materials: Vec::new() });
            found.len() - 1
        });
        if let Some(one) = found.get_mut(at)
            && one.materials.last() != Some(&material)
        {
            one.materials.push(material);
        }
    };
    for (material, claims) in materials.enumerate() {
        for judged in &claims.claims {
            if !matches!(judged.verdict, Some(Verdict::Covered | Verdict::Open(_))) {
                continue;
            }
            let claim = &judged.claim;
            let of_entry = rows.iter().enumerate().filter(|(_, row)| {
                row.entry == claim.entry && row.substance == claim.substance && may_rest_on(row)
            });
            for (at, _) in of_entry {
                add(at, true, material);
            }
        }
        for candidate in claims.candidates.iter().filter(|one| one.number != Number::Exceeded) {
            add(candidate.row, false, material);
        }
    }
    found.sort_by_key(|one| (one.day, !one.claimed, one.row));
    found
}

/// What a file's own word for a class shows the material to be, where no band knows it.
pub fn group_of_word(word: &str) -> Option<Group> {
    is_glass_or_ceramic(word).then_some(Group::GlassCeramic)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::{Act, ActKind};
    use crate::exempt::Refusal;

    const BRASS: Seen<'_> = Seen { class: MaterialClass::Metal, groups: &[Group::Copper], perhaps: &[] };

    fn act(kind: ActKind, target: Target, value: &str) -> Act {
        Act { kind, target, value: value.into(), by: String::new(), at: String::new(), note: String::new() }
    }

    fn body() -> Target {
        Target::Material("valve".into(), "body".into())
    }

    /// Category 4, placed on 2026-12-01, no child can mouth it; and more.
    fn settings(more: &[(ActKind, Target, &str)]) -> Settings {
        let answers = [
            (ActKind::Category, Target::Inspection, "4"),
            (ActKind::PlacingDate, Target::Inspection, "2026-12-01"),
            (ActKind::Mouthing, Target::Inspection, "cannot"),
        ];
        let all = answers.iter().chain(more).map(|(kind, target, value)| act(*kind, target.clone(), value));
        Settings::from_acts(&all.collect::<Vec<_>>())
    }

    fn tally(outcomes: &[(Substance, Outcome)]) -> MaterialTally {
        let mut tally = MaterialTally { readings: 1, ..MaterialTally::default() };
        for substance in Substance::ALL {
            let found = outcomes.iter().find(|(one, _)| *one == substance);
            let outcome = found.map_or(Outcome::Below, |(_, outcome)| *outcome);
            tally.counts[substance as usize][outcome as usize] = 1;
            tally.firm_over[substance as usize] = u64::from(outcome == Outcome::Over);
        }
        tally
    }

    fn look(lead: i64) -> Look {
        let mg = MassFraction::from_mg_per_kg;
        Look { value: Some(mg(lead)), sigma: Sigma::from_one_sigma(mg(300)) }
    }

    fn material<'a>(tally: &'a MaterialTally, seen: Seen<'a>) -> Material<'a> {
        Material { part: "valve", name: "body", seen, tally }
    }

    fn judged(settings: &Settings, tally: &MaterialTally, seen: Seen<'_>, looks: &[Look]) -> MaterialClaims {
        let books = RuleBooks::built_in().unwrap();
        Claims::new(settings, &books).judge(material(tally, seen), &|_| looks.to_vec())
    }

    /// What the claims leave of the reasons: `effect code about count`.
    fn reasons(claims: &MaterialClaims, tally: &MaterialTally) -> Vec<String> {
        let (_, list) = claims.apply(tally, tally.reasons(false)).close();
        list.iter()
            .map(|one| {
                format!("{} {} {} {}/{}", one.effect.code(), one.code.code(), one.about, one.count, one.of)
            })
            .collect()
    }

    fn states(claims: &MaterialClaims) -> Vec<&'static str> {
        claims.claims.iter().map(|one| one.verdict.as_ref().map_or("not_needed", Verdict::code)).collect()
    }

    const CLAIM: &str = "entry=6(c);substance=Pb;evidence=EV-1;by=CD;second=AB";

    #[test]
    fn a_covering_claim_takes_the_place_of_its_own_substance_alone() {
        let said = settings(&[(ActKind::Claim, body(), CLAIM)]);
        for outcome in [Outcome::Over, Outcome::Undecided] {
            let tally = tally(&[(Substance::Pb, outcome), (Substance::Cd, outcome)]);
            let claims = judged(&said, &tally, BRASS, &[look(30_000), look(31_000)]);
            assert_eq!(states(&claims), ["covered"]);
            assert_eq!((claims.claims[0].number, claims.claims[0].looks), (Number::Within, 2));
            let found = reasons(&claims, &tally);
            assert_eq!(found.len(), 2);
            assert!(found[0].ends_with("Cd 1/1"), "{found:?}");
            assert_eq!(found[1], "accept claim_covers Pb 6(c) 2/1");
        }
        let mut unsure = tally(&[(Substance::Pb, Outcome::Over)]);
        unsure.firm_over = [0; 5];
        assert_eq!(
            reasons(&judged(&said, &unsure, BRASS, &[look(30_000)]), &unsure),
            ["accept claim_covers Pb 6(c) 1/1"]
        );
    }

    #[test]
    fn an_open_claim_holds_and_lets_over_limit_hold() {
        let said = settings(&[(ActKind::Claim, body(), "entry=6(c);substance=Pb")]);
        let over = tally(&[(Substance::Pb, Outcome::Over), (Substance::Cd, Outcome::Over)]);
        let found = reasons(&judged(&said, &over, BRASS, &[look(30_000)]), &over);
        assert_eq!(
            found,
            [
                "not_accept over_limit Cd 1/1",
                "hold over_limit Pb 1/1",
                "hold claim_open Pb 6(c) evidence_missing 1/1",
                "hold claim_open Pb 6(c) second_missing 1/1",
            ]
        );
    }

    /// With the books whose limits the inspection goes by.
    fn with_limits(tally: &MaterialTally) -> Reasons {
        let mut reasons = tally.reasons(false);
        for (code, effect, about) in [
            (LotReasonCode::LimitOver, Disposition::NotAccept, "eu-rohs-annex-ii: Pb"),
            (LotReasonCode::LimitOpen, Disposition::Hold, "eu-rohs-annex-ii: Pb"),
            (LotReasonCode::LimitOver, Disposition::NotAccept, "eu-rohs-annex-ii: Cd"),
            (LotReasonCode::LimitOver, Disposition::NotAccept, "us-cpsia-101: Pb"),
            (LotReasonCode::LimitOpen, Disposition::Hold, "gb-26572-2025: Cr(VI)"),
            (LotReasonCode::LimitOpen, Disposition::Hold, "eu-packaging-2025-40: four metals"),
        ] {
            reasons.add(LotReason { code, effect, about: about.into(), count: 1, of: 1 });
        }
        reasons
    }

    #[test]
    fn an_exemption_is_from_the_limits_of_its_law_and_of_no_other() {
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let of = |kind, value: &str| {
            let said = settings(&[(kind, body(), value)]);
            let claims = judged(&said, &over, BRASS, &[look(30_000)]);
            let (_, list) = claims.apply(&over, with_limits(&over)).close();
            let limits = list.iter().filter(|one| one.about.contains(": "));
            let say = |one: &LotReason| format!("{} {} {}", one.effect.code(), one.code.code(), one.about);
            limits.map(say).collect::<Vec<_>>()
        };
        let others = [
            "not_accept limit_over eu-rohs-annex-ii: Cd",
            "not_accept limit_over us-cpsia-101: Pb",
            "hold limit_open eu-packaging-2025-40: four metals",
            "hold limit_open gb-26572-2025: Cr(VI)",
        ];
        assert_eq!(of(ActKind::Claim, CLAIM), others);
        let open = of(ActKind::Claim, "entry=6(c);substance=Pb");
        assert_eq!(open.len(), 6);
        assert!(open.contains(&"hold limit_over eu-rohs-annex-ii: Pb".to_owned()), "{open:?}");
        let refused = of(ActKind::Claim, "entry=99;substance=Pb");
        assert!(refused.contains(&"not_accept limit_over eu-rohs-annex-ii: Pb".to_owned()), "{refused:?}");
        let area = of(ActKind::Cr6Area, &format!("area=0.05 ug/cm2{REPORT}"));
        assert_eq!(area.len(), 5);
        assert!(area.iter().all(|one| !one.ends_with("Cr(VI)")), "{area:?}");
        let unclear = of(ActKind::Cr6Area, &format!("area=0.1 ug/cm2{REPORT}"));
        assert_eq!(unclear.len(), 6);
    }

    #[test]
    fn a_claim_that_fails_stands_beside_what_it_fails_at() {
        let said = settings(&[
            (ActKind::Claim, body(), CLAIM),
            (ActKind::Claim, body(), "entry=6(c);substance=Cd"),
            (ActKind::Renewal, Target::Inspection, "entry=6(c);state=refused"),
        ]);
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let open = tally(&[(Substance::Pb, Outcome::Undecided)]);
        let worst = |lead| [look(30_000), look(lead), look(20_000)];
        let exceeded = |tally| reasons(&judged(&said, tally, BRASS, &worst(60_000)), tally);
        assert_eq!(
            exceeded(&over),
            ["not_accept over_limit Pb 1/1", "not_accept claim_exceeded Pb 6(c) 3/1"]
        );
        assert_eq!(exceeded(&open), ["hold undecided Pb 1/1", "hold claim_exceeded Pb 6(c) 3/1"]);
        let steel = Seen { groups: &[Group::Steel], ..BRASS };
        assert_eq!(
            reasons(&judged(&said, &over, steel, &worst(30_000)), &over)[1],
            "not_accept claim_not_covered Pb 6(c) other_group 3/1"
        );
        let mut late = vec![act(ActKind::Category, Target::Inspection, "4")];
        late.push(act(ActKind::PlacingDate, Target::Inspection, "2027-07-01"));
        late.push(act(ActKind::Mouthing, Target::Part("valve".into()), "cannot"));
        late.push(act(ActKind::Claim, Target::Part("valve".into()), CLAIM));
        let unknown = Settings::from_acts(&late);
        late.push(act(ActKind::Renewal, Target::Inspection, "entry=6(b);state=refused"));
        let of_another = Settings::from_acts(&late);
        assert_eq!(states(&judged(&of_another, &over, BRASS, &worst(1))), ["open"]);
        late.push(act(ActKind::Renewal, Target::Inspection, "entry=6(c);state=refused"));
        let refused = Settings::from_acts(&late);
        assert_eq!(states(&judged(&unknown, &over, BRASS, &worst(1))), ["open"]);
        assert_eq!(
            reasons(&judged(&refused, &over, BRASS, &worst(1)), &over)[1],
            "not_accept claim_expired Pb 6(c) 3/1"
        );
    }

    #[test]
    fn a_claim_for_contacts_or_plating_leaves_plastic_refused() {
        let plastic = Seen { class: MaterialClass::Polymer, groups: &[], perhaps: &[] };
        for (substance, entry) in [
            (Substance::Cd, "8(b)"),
            (Substance::Cd, "8(b)-I"),
            (Substance::Pb, "37"),
            (Substance::Pb, "6(c)"),
        ] {
            let symbol = substance.symbol();
            let claim = format!("entry={entry};substance={symbol};evidence=EV-1;by=CD;second=AB");
            let category = if entry == "8(b)" { "11" } else { "4" };
            let said = settings(&[
                (ActKind::Claim, body(), &claim),
                (ActKind::Category, Target::Inspection, category),
            ]);
            let over = tally(&[(substance, Outcome::Over)]);
            let claims = judged(&said, &over, plastic, &[look(5_000)]);
            assert_eq!(claims.claims[0].verdict, Some(Verdict::NotCovered(Refusal::OtherClass)), "{entry}");
            assert!(reasons(&claims, &over).iter().all(|one| one.starts_with("not_accept")), "{entry}");
        }
    }

    #[test]
    fn a_claim_speaks_of_its_part_or_its_material() {
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let of = |target: Target| {
            states(&judged(&settings(&[(ActKind::Claim, target, CLAIM)]), &over, BRASS, &[look(30_000)]))
        };
        assert_eq!(of(body()), ["covered"]);
        assert_eq!(of(Target::Part("valve".into())), ["covered"]);
        for other in [
            Target::Part("body".into()),
            Target::Material("valve".into(), "cap".into()),
            Target::Material("pump".into(), "body".into()),
            Target::Inspection,
            Target::Source("valve".into()),
        ] {
            assert!(of(other.clone()).is_empty(), "{other:?}");
        }
    }

    #[test]
    fn what_nothing_needs_is_not_judged_and_the_nearest_claim_counts() {
        let said = settings(&[
            (ActKind::Claim, body(), "entry=6(b);substance=Pb;evidence=EV-1;by=CD;second=AB"),
            (ActKind::Claim, body(), "entry=99;substance=Pb;evidence=EV-1;by=CD;second=AB"),
            (ActKind::Claim, body(), CLAIM),
        ]);
        let below = tally(&[]);
        let idle = judged(&said, &below, BRASS, &[look(5)]);
        assert_eq!(states(&idle), ["not_needed"; 3]);
        assert_eq!(idle.claims[0].looks, 0);
        assert!(reasons(&idle, &below).is_empty());
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let busy = judged(&said, &over, BRASS, &[look(30_000)]);
        assert_eq!(states(&busy), ["not_covered", "not_covered", "covered"]);
        assert_eq!(busy.claims[1].row, None);
        assert_eq!(busy.claims[1].verdict, Some(Verdict::NotCovered(Refusal::EntryNotInBook)));
        assert_eq!(reasons(&busy, &over), ["accept claim_covers Pb 6(c) 1/1"]);
    }

    #[test]
    fn an_entry_is_judged_by_the_row_of_the_products_category() {
        let books = RuleBooks::built_in().unwrap();
        let aluminium = Seen { groups: &[Group::Aluminium], ..BRASS };
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let of = |category: &str| {
            let claim = "entry=6(b)-II;substance=Pb;evidence=EV-1;by=CD;second=AB";
            let mut said = vec![(ActKind::Claim, body(), claim)];
            said.push((ActKind::Category, Target::Inspection, category));
            let claims = judged(&settings(&said), &over, aluminium, &[look(3000)]);
            let row = &books.exemptions()[claims.claims[0].row.unwrap()];
            format!("{} {}", states(&claims)[0], row.expires.unwrap())
        };
        assert_eq!(of("4"), "covered 2027-06-11");
        assert_eq!(of("11"), "covered 2027-06-30");
        assert_eq!(of("9"), "open 2027-06-30");
        assert_eq!(of("8o"), "not_covered 2027-06-11");
        // Another row's category says less than what stands in the way under the row that fits.
        let claim = "entry=6(b)-II;substance=Pb;evidence=EV-1;second=AB";
        let said = [(ActKind::Claim, body(), claim), (ActKind::Category, Target::Inspection, "11")];
        let brass = judged(&settings(&said), &over, BRASS, &[look(3000)]);
        assert_eq!(brass.claims[0].verdict, Some(Verdict::NotCovered(Refusal::OtherGroup)));
    }

    #[test]
    fn nobody_is_asked_where_nothing_can_come_of_it() {
        let books = RuleBooks::built_in().unwrap();
        let concern = |more: &[(ActKind, Target, &str)], tally: &MaterialTally| {
            let said = settings(more);
            Claims::new(&said, &books).concern(tally)
        };
        let below = tally(&[]);
        assert!(!concern(&[], &below));
        assert!(!concern(&[], &tally(&[(Substance::Cr, Outcome::Undecided)])));
        assert!(!concern(&[], &tally(&[(Substance::Pb, Outcome::NotCapable)])));
        assert!(concern(&[], &tally(&[(Substance::Hg, Outcome::Undecided)])));
        assert!(concern(&[], &tally(&[(Substance::Cd, Outcome::Over)])));
        assert!(concern(&[(ActKind::Claim, body(), CLAIM)], &below));
        assert!(concern(&[(ActKind::Cr6Area, body(), "area=0.05 ug/cm2")], &below));
    }

    #[test]
    fn candidates_are_unclaimed_entries_that_may_cover() {
        let books = RuleBooks::built_in().unwrap();
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let of = |said: &Settings, seen, lead| -> Vec<String> {
            let claims = judged(said, &over, seen, &[look(lead)]);
            let one = |one: &Candidate| {
                format!("{} {} {}", books.exemptions()[one.row].entry, one.number.code(), one.questions.len())
            };
            claims.candidates.iter().map(one).collect()
        };
        let none = settings(&[]);
        assert_eq!(of(&none, BRASS, 30_000), ["6(c) within 0"]);
        assert_eq!(of(&none, BRASS, 60_000), ["6(c) exceeded 0"]);
        assert!(of(&settings(&[(ActKind::Claim, body(), CLAIM)]), BRASS, 30_000).is_empty());
        // A claim for another substance leaves the entry a candidate.
        let other = settings(&[(ActKind::Claim, body(), "entry=6(c);substance=Cd")]);
        assert_eq!(of(&other, BRASS, 30_000), ["6(c) within 0"]);
        let lead = Seen { groups: &[Group::Lead], ..BRASS };
        let solder = of(&none, lead, 600_000);
        assert!(solder.iter().all(|one| !one.starts_with("7(a)")), "below 85 %: {solder:?}");
        assert_eq!(of(&none, lead, 900_000).iter().filter(|one| one.starts_with("7(a)")).count(), 8);
        let unseen = Seen { groups: &[], ..BRASS };
        let entries = of(&none, unseen, 3_600);
        assert!(entries.contains(&"6(b)-I open 1".to_owned()), "{entries:?}");
        assert!(of(&none, unseen, 60_000).iter().all(|one| !one.starts_with('6')));
        let cadmium = tally(&[(Substance::Cd, Outcome::Over)]);
        let of_cadmium = |said: &Settings| -> Vec<String> {
            let claims = judged(said, &cadmium, BRASS, &[look(30_000)]);
            claims.candidates.iter().map(|one| books.exemptions()[one.row].entry.clone()).collect()
        };
        assert!(of_cadmium(&none).is_empty(), "8(b)-I expired in 2021");
        let pending = settings(&[(ActKind::Renewal, Target::Inspection, "entry=8(b)-I;state=pending")]);
        assert_eq!(of_cadmium(&pending), ["8(b)-I"]);
        // Contacts and plating are metal: no plastic and no glass is offered their entries.
        let (polymer, glass) = (MaterialClass::Polymer, [Group::GlassCeramic]);
        let plastic = Seen { class: polymer, groups: &[], perhaps: &[] };
        assert!(of(&none, plastic, 5_000).is_empty());
        let glass = Seen { class: MaterialClass::Composite, groups: &glass, perhaps: &[] };
        let entries = of(&none, glass, 5_000);
        assert!(!entries.is_empty() && entries.iter().all(|one| one.starts_with("7(c)")), "{entries:?}");
        // Total chromium is no substance that an entry here is about.
        let chromium = tally(&[(Substance::Cr, Outcome::Undecided)]);
        assert!(judged(&none, &chromium, BRASS, &[look(30_000)]).candidates.is_empty());
    }

    #[test]
    fn days_of_expiry_rest_on_claims_that_cover_or_may_and_on_candidates_within() {
        let books = RuleBooks::built_in().unwrap();
        let over = tally(&[(Substance::Pb, Outcome::Over)]);
        let say = |said: &Settings, materials: &[MaterialClaims]| -> Vec<String> {
            let found = expiries(said, &books, materials.iter());
            let one = |one: &Expiry| {
                let entry = &books.exemptions()[one.row].entry;
                format!("{} {entry} {} {:?}", one.day, one.claimed, one.materials)
            };
            found.iter().map(one).collect()
        };
        let said = settings(&[(ActKind::Claim, body(), CLAIM)]);
        let of = |said: &Settings, seen, lead| judged(said, &over, seen, &[look(lead)]);
        let (covers, near, beyond) =
            (of(&said, BRASS, 30_000), of(&said, BRASS, 40_000), of(&said, BRASS, 60_000));
        assert_eq!(states(&near), ["open"]);
        let free = settings(&[]);
        let (may, not) = (of(&free, BRASS, 30_000), of(&free, BRASS, 60_000));
        assert_eq!(
            say(&said, &[covers.clone(), beyond, near, may, not]),
            ["2027-06-30 6(c) true [0, 2]", "2027-06-30 6(c) false [3]"]
        );
        // Two claims of one entry on one material are one line; a category that is not stated leaves both rows open.
        let aluminium = Seen { groups: &[Group::Aluminium], ..BRASS };
        let claim = "entry=6(b)-I;substance=Pb;evidence=EV-1;by=CD;second=AB";
        let without = Settings::from_acts(&[act(ActKind::Claim, body(), claim)]);
        let two = of(&without, aluminium, 3000);
        let found = say(&without, std::slice::from_ref(&two));
        let claimed: Vec<&String> = found.iter().filter(|one| one.contains("true")).collect();
        assert_eq!(claimed, ["2026-12-11 6(b)-I true [0]", "2027-06-30 6(b)-I true [0]"]);
        let with =
            settings(&[(ActKind::Claim, body(), claim), (ActKind::Category, Target::Inspection, "11")]);
        let found = say(&with, &[of(&with, aluminium, 3000), covers]);
        let claimed: Vec<&String> = found.iter().filter(|one| one.contains("true")).collect();
        assert_eq!(claimed, ["2027-06-30 6(b)-I true [0]", "2027-06-30 6(c) true [1]"]);
        assert!(found.is_sorted_by_key(|one| one.split(' ').next().unwrap_or("").to_owned()));
    }

    const REPORT: &str = ";laboratory=Fir Works;report=7";

    #[test]
    fn a_negative_result_by_area_settles_open_chromium_and_nothing_else() {
        let of = |area: &str, target: Target, class, outcome| {
            let tally = tally(&[(Substance::Cr, outcome), (Substance::Pb, Outcome::Undecided)]);
            let said = settings(&[(ActKind::Cr6Area, target, area)]);
            let claims = judged(&said, &tally, Seen { class, ..BRASS }, &[]);
            let found = reasons(&claims, &tally);
            found.into_iter().filter(|one| !one.contains(" Pb ")).collect::<Vec<_>>()
        };
        let negative = format!("area=0.05 ug/cm2{REPORT}");
        let part = || Target::Part("valve".into());
        for class in [MaterialClass::Metal, MaterialClass::Plated] {
            for outcome in CHROMIUM_OPEN {
                assert_eq!(of(&negative, body(), class, outcome), ["accept cr6_negative Cr 1/1"]);
                assert_eq!(of(&negative, part(), class, outcome), ["accept cr6_negative Cr 1/1"]);
            }
            assert_eq!(
                of(&negative, body(), class, Outcome::NotMeasured),
                ["hold not_measured Cr 1/1", "accept cr6_negative Cr 0/1"]
            );
        }
        let metal = |area: &str| of(area, body(), MaterialClass::Metal, Outcome::Undecided);
        let open = "hold undecided Cr 1/1";
        assert_eq!(metal("area=0.05 ug/cm2"), [open, "hold cr6_no_report Cr 1/1"]);
        assert_eq!(metal("area=0.05 ug/cm2;report=7"), [open, "hold cr6_no_report Cr 1/1"]);
        assert_eq!(metal(&format!("area=0.1 ug/cm2{REPORT}")), [open, "hold cr6_inconclusive Cr 1/1"]);
        assert_eq!(metal(&format!("area=0.2 ug/cm2{REPORT}")), [open, "hold cr6_present Cr 1/1"]);
        let other = |target| of(&negative, target, MaterialClass::Polymer, Outcome::Undecided);
        assert_eq!(other(body()), [open, "accept cr6_other_class Cr 1/1"]);
        assert_eq!(other(part()), [open], "a result for a part speaks of its metals");
        assert_eq!(other(Target::Part("pump".into())), [open]);
    }

    #[test]
    fn the_worst_result_by_area_counts() {
        let tally = tally(&[(Substance::Cr, Outcome::Undecided)]);
        let of = |first: &str, second: &str| {
            let said = settings(&[
                (ActKind::Cr6Area, body(), first),
                (ActKind::Cr6Area, Target::Part("valve".into()), second),
            ]);
            let found = reasons(&judged(&said, &tally, BRASS, &[]), &tally);
            found.last().unwrap().split(' ').nth(1).unwrap().to_owned()
        };
        let areas = ["0.05", "0.05", "0.1", "0.2"];
        let codes = ["cr6_negative", "cr6_no_report", "cr6_inconclusive", "cr6_present"];
        let text = |at: usize| format!("area={} ug/cm2{}", areas[at], if at == 1 { "" } else { REPORT });
        for (worse, code) in codes.iter().enumerate() {
            for better in 0..=worse {
                assert_eq!(of(&text(worse), &text(better)), *code);
                assert_eq!(of(&text(better), &text(worse)), *code);
            }
        }
    }

    #[test]
    fn a_word_of_the_file_may_show_glass_or_ceramic() {
        for word in
            ["glass", "Ceramic", " ceramics ", "GLASS/CERAMIC", "Keramik", "vetro", "玻璃", "セラミックス"]
        {
            assert_eq!(group_of_word(word), Some(Group::GlassCeramic), "{word}");
        }
        for word in ["", "unknown", "unbekannt", "metal", "glassfibre"] {
            assert_eq!(group_of_word(word), None, "{word}");
        }
    }
}
