//! Claims applied to one material: which of them covers what the readings show, what stands in its way, which entries
//! nobody claimed yet, and what a laboratory found of hexavalent chromium by area.

use crate::acts::{Settings, Target};
use crate::day::Day;
use crate::exempt::{
    self, Answers, AreaResult, AreaSaid, Bound, CategoryFit, Claim, Exemption, Group, Number, Question,
    Renewal, Seen, Verdict,
};
use crate::lot::{Disposition, LotReason, LotReasonCode, MaterialTally, Reasons};
use crate::material::MaterialClass;
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
/// Entries that no answer could make cover it are left out.
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
    open.collect()
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
        for substance in EXEMPTED.into_iter().filter(|substance| needs(*substance)) {
            let looks = looks(substance);
            let answers = |row: &Exemption| self.answers(&row.entry, material.part);
            for (at, questions) in candidates(self.rows, substance, material.seen, &answers) {
                let Some(row) = self.rows.get(at) else { continue };
                let claimed = found
                    .claims
                    .iter()
                    .any(|one| one.claim.substance == substance && one.claim.entry == row.entry);
                let number = self.number(row.bound, &looks);
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
    fn best(&self, substance: Substance) -> Option<(&JudgedClaim, &Verdict)> {
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
            ClaimCovers, ClaimExceeded, ClaimExpired, ClaimNotCovered, ClaimOpen, OverInSomeClasses,
            OverLimit, Undecided,
        };
        for substance in Substance::ALL {
            let Some((judged, verdict)) = self.best(substance) else { continue };
            let symbol = substance.symbol();
            let about = format!("{symbol} {}", judged.claim.entry);
            let over = tally.firm_over.get(substance as usize).is_some_and(|count| *count > 0);
            let beside = if over { Disposition::NotAccept } else { Disposition::Hold };
            let mut add = |code, effect, about: String| {
                reasons.add(LotReason { code, effect, about, count: judged.looks, of: tally.readings });
            };
            match verdict {
                Verdict::Covered => {
                    add(ClaimCovers, Disposition::Accept, about);
                    reasons.remove(&[OverLimit, OverInSomeClasses, Undecided], symbol);
                }
                Verdict::Open(questions) => {
                    for question in questions {
                        add(ClaimOpen, Disposition::Hold, format!("{about} {}", question.code()));
                    }
                    reasons.only_hold(OverLimit, symbol);
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
            NoUncertainty, NotCapable, Undecided,
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
            Cr6Present => 3,
            _ => 4,
        }) else {
            return;
        };
        let symbol = Substance::Cr.symbol();
        let counts = tally.counts.get(Substance::Cr as usize);
        let open = CHROMIUM_OPEN
            .iter()
            .filter_map(|outcome| counts.and_then(|counts| counts.get(*outcome as usize)))
            .sum();
        let effect = match code {
            Cr6Negative | Cr6OtherClass => Disposition::Accept,
            _ => Disposition::Hold,
        };
        if code == Cr6Negative {
            reasons.remove(&[Undecided, NotCapable, DetectionTooHigh, NoUncertainty], symbol);
        }
        reasons.add(LotReason { code, effect, about: symbol.to_owned(), count: open, of: tally.readings });
    }
}

/// What falls out of conformity and when: every day of expiry that a claim which covers or may cover rests on, and,
/// marked apart, that of entries which may be claimed. Sorted by day, claimed first, then in the order of the book.
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
    let folded = word.trim().to_lowercase();
    let known = ["glass", "ceramic", "ceramics", "glass/ceramic"];
    known.contains(&folded.as_str()).then_some(Group::GlassCeramic)
}
