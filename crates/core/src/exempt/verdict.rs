//! The judgement of a claim: the number by a guard band, then everything a number can't answer.

use super::category::{Categories, CategoryFit};
use super::entry::{Bound, Exemption, Group};
use super::said::{Claim, Mouthing, Renewal, RenewalState};
use crate::day::Day;
use crate::fields;
use crate::material::MaterialClass;
use crate::quantity::{self, Coverage, MassFraction, Sigma};
use crate::reading::codes;

codes! {
    /// What the reading says of an entry's number.
    Number {
        /// Within the bound, guard band included; or the entry names no number.
        Within => "within",
        /// The bound lies inside the guard band.
        Open => "open",
        /// The reading is no number with an uncertainty.
        NotStated => "not_stated",
        /// Beyond the bound by more than the guard band.
        Exceeded => "exceeded",
    }
}

codes! {
    /// What has to be answered before an entry covers a material.
    Question {
        /// It was not found whether the entry still stands.
        StatusNotFound => "status_not_found",
        /// The product's category is not stated.
        CategoryNotStated => "category_not_stated",
        /// The entry covers one half of category 8 or 9, and nobody said which half the product is of.
        CategoryUnclear => "category_unclear",
        /// The entry's categories were not found.
        EntryCategoriesNotFound => "entry_categories_not_found",
        /// The day of placing on the market is not stated.
        PlacingDateNotStated => "placing_date_not_stated",
        /// Placed on the market before the entry's text came into force.
        EarlierText => "earlier_text",
        /// Placed on the market on the very day of expiry.
        DayOfExpiry => "day_of_expiry",
        /// Past its day, and nobody said where the renewal stands.
        RenewalUnknown => "renewal_unknown",
        /// Past its day with a renewal pending, and nobody said where that is written and when it was applied for.
        RenewalNotSourced => "renewal_not_sourced",
        /// Past its day with a renewal applied for after the day of the review, or that day is not stated.
        RenewalAfterReview => "renewal_after_review",
        /// Past its day with a renewal applied for later than eighteen months before the expiry.
        RenewalLate => "renewal_late",
        /// The question of starred entries is not answered.
        MouthingNotAnswered => "mouthing_not_answered",
        /// The class of the material is not known, or its readings differ on it.
        ClassNotKnown => "class_not_known",
        /// A layer and what lies under it are averaged, so no number is the material's own.
        LayerNotResolved => "layer_not_resolved",
        /// A composite: the number is not that of the homogeneous material.
        NotHomogeneous => "not_homogeneous",
        /// What the material is made of is neither shown by the readings nor stated.
        GroupNotKnown => "group_not_known",
        /// A reading is no number with an uncertainty.
        NumberNotStated => "number_not_stated",
        /// The bound lies within k sigma of a reading.
        BoundWithinSigma => "bound_within_sigma",
        /// No evidence is named.
        EvidenceMissing => "evidence_missing",
        /// A second person's initials are missing.
        SecondMissing => "second_missing",
    }
}

codes! {
    /// Why an entry does not cover a material at all.
    Refusal {
        /// No loaded book has the entry.
        EntryNotInBook => "entry_not_in_book",
        /// The entry is about another substance.
        OtherSubstance => "other_substance",
        /// The entry is about another class of material.
        OtherClass => "other_class",
        /// The entry is about another group of alloys, or readings and claim differ on it.
        OtherGroup => "other_group",
        /// The entry does not cover the product's category.
        OtherCategory => "other_category",
        /// A starred entry, and a child could mouth the part.
        ChildCouldMouth => "child_could_mouth",
    }
}

/// What became of a claim, best first.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It covers the material.
    Covered,
    /// It may, once these are answered; never empty.
    Open(Vec<Question>),
    /// A reading lies beyond the entry's number.
    Exceeded,
    /// The entry is past its day, and its renewal was refused or never asked for.
    Expired,
    /// The entry does not cover this.
    NotCovered(Refusal),
}

impl Verdict {
    /// The codes of every verdict.
    pub const CODES: [&'static str; 5] = ["covered", "open", "exceeded", "expired", "not_covered"];

    /// How far it is from covering: 0 covers.
    pub const fn rank(&self) -> usize {
        match self {
            Verdict::Covered => 0,
            Verdict::Open(_) => 1,
            Verdict::Exceeded => 2,
            Verdict::Expired => 3,
            Verdict::NotCovered(refusal) => match refusal {
                // An entry has a row for each set of categories; what another row says tells more.
                Refusal::OtherCategory => 5,
                _ => 4,
            },
        }
    }

    /// The code used in findings.
    pub fn code(&self) -> &'static str {
        Verdict::CODES.get(self.rank()).copied().unwrap_or("not_covered")
    }
}

/// What people answered for the product.
#[derive(Clone, Copy, Debug, Default)]
pub struct Answers<'a> {
    /// The product's category.
    pub category: Option<Categories>,
    /// The day of placing on the market.
    pub placed: Option<Day>,
    /// The day of the review.
    pub reviewed: Option<Day>,
    /// The question of starred entries.
    pub mouthing: Option<Mouthing>,
    /// Where the renewal of the entry stands.
    pub renewal: Option<&'a Renewal>,
}

/// What readings and file say of the material.
#[derive(Clone, Copy, Debug)]
pub struct Seen<'a> {
    /// Its class; unknown where its readings differ.
    pub class: MaterialClass,
    /// What its composition or its file shows it to be; several where its readings differ on it.
    pub groups: &'a [Group],
    /// What it only may be by its composition.
    pub perhaps: &'a [Group],
}

/// Decides an entry's number by the guard band `g = k s`.
///
/// # Decision
/// At most: within if `x + g <= limit`, exceeded if `x - g > limit`, else open. At least: within if `x - g >= limit`,
/// exceeded (below it) if `x + g < limit`, else open. No number: within.
///
/// # Units
/// mg/kg, one sigma.
///
/// # Source
/// JCGM 106:2012, guarded acceptance; no screening band is published for exempt limits.
pub fn judge_number(bound: Bound, x: Option<MassFraction>, s: Option<Sigma>, k: Coverage) -> Number {
    let (within, beyond) = match (bound, x, s.filter(|sigma| !sigma.is_zero())) {
        (Bound::NoNumber, _, _) => return Number::Within,
        (Bound::AtMost(limit), Some(x), Some(s)) => (
            quantity::upper_end_within(x, k, s, limit, true),
            quantity::lower_end_beyond(x, k, s, limit, false),
        ),
        (Bound::AtLeast(limit), Some(x), Some(s)) => (
            quantity::lower_end_beyond(x, k, s, limit, true),
            quantity::upper_end_within(x, k, s, limit, false),
        ),
        _ => return Number::NotStated,
    };
    if within {
        Number::Within
    } else if beyond {
        Number::Exceeded
    } else {
        Number::Open
    }
}

/// Whether one row covers a material by everything but the claim's own evidence: what is open, or why it can't.
///
/// # Errors
/// [`Verdict::NotCovered`] or [`Verdict::Expired`] where no answer could make it cover.
pub fn questions_of(
    row: &Exemption,
    seen: Seen<'_>,
    stated: Option<Group>,
    answers: Answers<'_>,
) -> Result<Vec<Question>, Verdict> {
    let mut open = Vec::new();
    if !row.found {
        open.push(Question::StatusNotFound);
    }
    open.extend(category(row, answers.category).map_err(Verdict::NotCovered)?);
    open.extend(in_force(row, answers)?);
    open.extend(mouthing(row, answers.mouthing).map_err(Verdict::NotCovered)?);
    open.extend(material(row, seen, stated).map_err(Verdict::NotCovered)?);
    Ok(open)
}

/// Judges a claim by one row of its entry, against the worst of what the readings say of the row's number.
///
/// # Decision
/// Anything missing holds. Only a covered number, answered questions, an evidence reference and a second person's
/// initials together cover.
///
/// # Source
/// Directive 2011/65/EU, Annex III and Article 5(5); see the row for its own.
pub fn judge_claim(
    row: &Exemption,
    claim: &Claim,
    number: Number,
    seen: Seen<'_>,
    answers: Answers<'_>,
) -> Verdict {
    if row.substance != claim.substance {
        return Verdict::NotCovered(Refusal::OtherSubstance);
    }
    let mut open = match questions_of(row, seen, claim.group, answers) {
        Ok(open) => open,
        Err(verdict) => return verdict,
    };
    match number {
        Number::Within => {}
        Number::Open => open.push(Question::BoundWithinSigma),
        Number::NotStated => open.push(Question::NumberNotStated),
        // Where materials are mixed, "at least" may fail on the mixture and hold of the one that is claimed; what is
        // over "at most" even on average holds too much somewhere.
        Number::Exceeded if mixed(&open) && matches!(row.bound, Bound::AtLeast(_)) => {}
        Number::Exceeded => return Verdict::Exceeded,
    }
    if fields::says_nothing(&claim.evidence) {
        open.push(Question::EvidenceMissing);
    }
    if !claim.is_countersigned() {
        open.push(Question::SecondMissing);
    }
    if open.is_empty() { Verdict::Covered } else { Verdict::Open(open) }
}

fn mixed(open: &[Question]) -> bool {
    open.iter().any(|question| matches!(question, Question::LayerNotResolved | Question::NotHomogeneous))
}

fn category(row: &Exemption, category: Option<Categories>) -> Result<Option<Question>, Refusal> {
    match (row.categories, category) {
        (None, _) => Ok(Some(Question::EntryCategoriesNotFound)),
        // Which category it is matters even where the entry covers all: the claim is made for a product.
        (Some(_), None) => Ok(Some(Question::CategoryNotStated)),
        (Some(entry), Some(product)) => match product.fit(entry) {
            CategoryFit::Covered => Ok(None),
            CategoryFit::Unclear => Ok(Some(Question::CategoryUnclear)),
            CategoryFit::NotCovered => Err(Refusal::OtherCategory),
        },
    }
}

/// Whether an entry is in force on the day of placing on the market; a question where that is open.
///
/// # Source
/// A pending renewal keeps an entry valid until the Commission decides (Directive 2011/65/EU, Article 5(5)), if it was
/// applied for in time.
///
/// # Errors
/// [`Verdict::Expired`] where it is past its day.
pub fn in_force(row: &Exemption, answers: Answers<'_>) -> Result<Option<Question>, Verdict> {
    let Some(placed) = answers.placed else { return Ok(Some(Question::PlacingDateNotStated)) };
    if row.from.is_some_and(|from| placed < from) {
        return Ok(Some(Question::EarlierText));
    }
    let Some(expires) = row.expires else { return Ok(None) };
    if placed < expires {
        return Ok(None);
    }
    if row.not_filed {
        return if placed == expires { Ok(Some(Question::DayOfExpiry)) } else { Err(Verdict::Expired) };
    }
    match answers.renewal {
        Some(renewal) if renewal.state == RenewalState::Pending => {
            Ok(pending(renewal, expires, answers.reviewed))
        }
        _ if placed == expires => Ok(Some(Question::DayOfExpiry)),
        None => Ok(Some(Question::RenewalUnknown)),
        Some(_) => Err(Verdict::Expired),
    }
}

/// What is open of a renewal that is said to be pending.
///
/// # Source
/// Directive 2011/65/EU, Article 5(5): applied for no later than eighteen months before the expiry (restated by a
/// secondary source). What a later application is worth it does not say there, so that is asked.
fn pending(renewal: &Renewal, expires: Day, reviewed: Option<Day>) -> Option<Question> {
    let Some(applied) = renewal.date.filter(|_| !renewal.source.is_empty()) else {
        return Some(Question::RenewalNotSourced);
    };
    // Nobody knows at a review of what will be applied for.
    if reviewed.is_some_and(|day| applied > day) {
        Some(Question::RenewalAfterReview)
    } else if expires.plus_months(-18).is_none_or(|last| applied > last) {
        Some(Question::RenewalLate)
    } else {
        reviewed.is_none().then_some(Question::RenewalAfterReview)
    }
}

fn mouthing(row: &Exemption, answer: Option<Mouthing>) -> Result<Option<Question>, Refusal> {
    match answer {
        _ if !row.starred => Ok(None),
        None => Ok(Some(Question::MouthingNotAnswered)),
        Some(Mouthing::Cannot | Mouthing::ReleaseShown) => Ok(None),
        Some(Mouthing::Can) => Err(Refusal::ChildCouldMouth),
    }
}

/// Whether a row may cover what the material is. Readings that show another group stand above the claim's own word.
fn material(row: &Exemption, seen: Seen<'_>, stated: Option<Group>) -> Result<Option<Question>, Refusal> {
    let mut told = seen.groups.iter().chain(&stated);
    if told.any(|group| !row.may_cover(*group)) {
        return Err(Refusal::OtherGroup);
    }
    let told = !seen.groups.is_empty() || stated.is_some();
    let perhaps_other = seen.perhaps.iter().any(|group| !row.may_cover(*group));
    let anything = row.may_cover(Group::Any);
    // Only a row that names glass or ceramic sees it in a composite; one for anything asks what it is.
    let (glass, alloy) = (
        row.groups.contains(&Group::GlassCeramic),
        row.groups.iter().any(|group| !matches!(group, Group::GlassCeramic)),
    );
    let question = match seen.class {
        MaterialClass::Plated => Some(Question::LayerNotResolved),
        MaterialClass::Metal if !alloy => return Err(Refusal::OtherClass),
        MaterialClass::Polymer if !anything => return Err(Refusal::OtherClass),
        // A number of a composite is nobody's; an entry without a number asks for none.
        MaterialClass::Composite if !glass || row.bound != Bound::NoNumber => Some(Question::NotHomogeneous),
        MaterialClass::Unknown if seen.groups.is_empty() || !glass => Some(Question::ClassNotKnown),
        _ if perhaps_other || (!told && !anything) => Some(Question::GroupNotKnown),
        _ => None,
    };
    Ok(question)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::substance::Substance;

    const THREE: Coverage = Coverage::THREE;

    fn mg(mg: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(mg)
    }

    fn number(bound: Bound, units: i64, sigma: i64) -> Number {
        judge_number(bound, Some(MassFraction::from_units(units)), Sigma::from_one_sigma(mg(sigma)), THREE)
    }

    /// 4 % with s = 100 mg/kg: within up to 39 700 mg/kg, exceeded above 40 300.
    #[test]
    fn the_guard_band_decides_at_most_to_the_last_digit() {
        let bound = Bound::AtMost(mg(40_000));
        assert_eq!(number(bound, 39_700_000_000, 100), Number::Within);
        assert_eq!(number(bound, 39_700_000_001, 100), Number::Open);
        assert_eq!(number(bound, 40_300_000_000, 100), Number::Open);
        assert_eq!(number(bound, 40_300_000_001, 100), Number::Exceeded);
    }

    /// 85 % with s = 1000 mg/kg: within from 853 000 mg/kg on, below it under 847 000.
    #[test]
    fn the_guard_band_is_mirrored_for_at_least() {
        let bound = Bound::AtLeast(mg(850_000));
        assert_eq!(number(bound, 853_000_000_000, 1000), Number::Within);
        assert_eq!(number(bound, 852_999_999_999, 1000), Number::Open);
        assert_eq!(number(bound, 847_000_000_000, 1000), Number::Open);
        assert_eq!(number(bound, 846_999_999_999, 1000), Number::Exceeded);
    }

    #[test]
    fn a_reading_that_is_no_number_with_a_sigma_is_within_nothing() {
        let sigma = Sigma::from_one_sigma(mg(1));
        for bound in [Bound::AtMost(mg(40_000)), Bound::AtLeast(mg(850_000))] {
            assert_eq!(judge_number(bound, None, sigma, THREE), Number::NotStated);
            assert_eq!(judge_number(bound, Some(mg(1)), None, THREE), Number::NotStated);
            assert_eq!(judge_number(bound, Some(mg(900_000)), Some(Sigma::ZERO), THREE), Number::NotStated);
        }
        assert_eq!(judge_number(Bound::NoNumber, None, None, THREE), Number::Within);
    }

    fn row() -> Exemption {
        Exemption {
            entry: "6(c)".into(),
            scope: "lead in copper alloys".into(),
            substance: Substance::Pb,
            bound: Bound::AtMost(mg(40_000)),
            groups: vec![Group::Copper],
            categories: Some(Categories::ALL),
            from: Day::new(2025, 12, 11),
            expires: Day::new(2027, 6, 30),
            found: true,
            not_filed: false,
            starred: true,
            act: "an act".into(),
            source: "a law".into(),
            clause: "an entry".into(),
            confidence: "derived".into(),
            note: String::new(),
        }
    }

    fn claim(more: &str) -> Claim {
        Claim::parse(&format!("entry=6(c);substance=Pb;{more}")).unwrap()
    }

    fn signed() -> Claim {
        claim("evidence=EV-1;by=CD;second=AB")
    }

    const BRASS: Seen<'_> = Seen { class: MaterialClass::Metal, groups: &[Group::Copper], perhaps: &[] };

    fn answers(placed: &str) -> Answers<'static> {
        Answers {
            category: Categories::from_code("4"),
            placed: Day::parse(placed),
            reviewed: Day::new(2026, 11, 26),
            mouthing: Some(Mouthing::Cannot),
            renewal: None,
        }
    }

    fn open(questions: &[Question]) -> Verdict {
        Verdict::Open(questions.to_vec())
    }

    fn judged(row: &Exemption, seen: Seen<'_>, answers: Answers<'_>) -> Verdict {
        judge_claim(row, &signed(), Number::Within, seen, answers)
    }

    #[test]
    fn everything_answered_evidenced_and_signed_is_covered() {
        let verdict = judged(&row(), BRASS, answers("2026-12-01"));
        assert_eq!((verdict.code(), verdict.rank()), ("covered", 0));
        let shown = Answers { mouthing: Some(Mouthing::ReleaseShown), ..answers("2026-12-01") };
        assert_eq!(judged(&row(), BRASS, shown), Verdict::Covered);
    }

    #[test]
    fn whatever_is_missing_is_a_question_of_its_own() {
        let all = answers("2026-12-01");
        let plain = |answers| judged(&row(), BRASS, answers);
        assert_eq!(plain(Answers { category: None, ..all }), open(&[Question::CategoryNotStated]));
        assert_eq!(plain(Answers { placed: None, ..all }), open(&[Question::PlacingDateNotStated]));
        assert_eq!(plain(Answers { mouthing: None, ..all }), open(&[Question::MouthingNotAnswered]));
        let told = |more| judge_claim(&row(), &claim(more), Number::Within, BRASS, all);
        assert_eq!(told("by=CD;second=AB"), open(&[Question::EvidenceMissing]));
        assert_eq!(told("evidence=EV-1"), open(&[Question::SecondMissing]));
        assert_eq!(told("evidence=EV-1;by=AB;second=AB"), open(&[Question::SecondMissing]));
        assert_eq!(told(""), open(&[Question::EvidenceMissing, Question::SecondMissing]));
        let by_number = |number| judge_claim(&row(), &signed(), number, BRASS, all);
        assert_eq!(by_number(Number::Open), open(&[Question::BoundWithinSigma]));
        assert_eq!(by_number(Number::NotStated), open(&[Question::NumberNotStated]));
        assert_eq!(by_number(Number::Exceeded), Verdict::Exceeded);
        let unfound = Exemption { found: false, expires: None, categories: None, ..row() };
        assert_eq!(
            judged(&unfound, BRASS, all),
            open(&[Question::StatusNotFound, Question::EntryCategoriesNotFound])
        );
        assert_eq!(open(&[Question::DayOfExpiry]).code(), "open");
    }

    #[test]
    fn a_category_is_covered_left_out_or_unclear() {
        let row = Exemption {
            categories: Categories::from_code("9i").map(|one| one.and(Categories::from_code("11").unwrap())),
            ..row()
        };
        let of = |code| {
            judged(&row, BRASS, Answers { category: Categories::from_code(code), ..answers("2026-12-01") })
        };
        assert_eq!(of("11"), Verdict::Covered);
        assert_eq!(of("9"), open(&[Question::CategoryUnclear]));
        assert_eq!(of("4"), Verdict::NotCovered(Refusal::OtherCategory));
        assert_eq!(of("4").code(), "not_covered");
    }

    #[test]
    fn an_entry_that_is_not_starred_asks_nothing_of_mouthing() {
        let plain = Exemption { starred: false, ..row() };
        for mouthing in [None, Some(Mouthing::Can)] {
            assert_eq!(
                judged(&plain, BRASS, Answers { mouthing, ..answers("2026-12-01") }),
                Verdict::Covered
            );
        }
        let can = Answers { mouthing: Some(Mouthing::Can), ..answers("2026-12-01") };
        assert_eq!(judged(&row(), BRASS, can), Verdict::NotCovered(Refusal::ChildCouldMouth));
    }

    #[test]
    fn the_day_of_placing_decides_between_valid_expired_and_unknown() {
        let renewal = |text: &str| Renewal::parse(&format!("entry=6(c);{text}")).unwrap();
        let (pending, bare) =
            (renewal("state=pending;source=a list;date=2025-12-30"), renewal("state=pending"));
        let (refused, missed) = (renewal("state=refused"), renewal("state=not_filed"));
        let of = |placed: &str, renewal| {
            let verdict = judged(&row(), BRASS, Answers { renewal, ..answers(placed) });
            match &verdict {
                Verdict::Open(questions) => questions[0].code(),
                other => other.code(),
            }
        };
        let cases = [
            ("2025-12-10", ["earlier_text"; 5]),
            ("2025-12-11", ["covered"; 5]),
            ("2027-06-29", ["covered"; 5]),
            (
                "2027-06-30",
                ["day_of_expiry", "covered", "renewal_not_sourced", "day_of_expiry", "day_of_expiry"],
            ),
            ("2027-07-01", ["renewal_unknown", "covered", "renewal_not_sourced", "expired", "expired"]),
        ];
        for (placed, expected) in cases {
            let found = [None, Some(&pending), Some(&bare), Some(&refused), Some(&missed)]
                .map(|renewal| of(placed, renewal));
            assert_eq!(found, expected, "{placed}");
        }
        let gone = Exemption { not_filed: true, from: None, ..row() };
        for renewal in [None, Some(&pending)] {
            let of = |placed| judged(&gone, BRASS, Answers { renewal, ..answers(placed) });
            assert_eq!(of("2027-07-01"), Verdict::Expired);
            assert_eq!(of("2027-06-30"), open(&[Question::DayOfExpiry]));
            assert_eq!(of("2027-06-29"), Verdict::Covered);
        }
        let endless = Exemption { expires: None, ..row() };
        assert_eq!(judged(&endless, BRASS, answers("2999-01-01")), Verdict::Covered);
    }

    /// Eighteen months before 30 Jun 2027 is 30 Dec 2025.
    #[test]
    fn a_renewal_that_was_applied_for_late_or_after_the_review_covers_nothing() {
        let of = |date: &str, reviewed: Option<&str>| {
            let said = format!("entry=6(c);state=pending;source=a list;date={date}");
            let renewal = Renewal::parse(&said).unwrap();
            let reviewed = reviewed.and_then(Day::parse);
            judged(&row(), BRASS, Answers { renewal: Some(&renewal), reviewed, ..answers("2027-07-01") })
        };
        let review = Some("2026-11-26");
        assert_eq!(of("2025-12-30", review), Verdict::Covered);
        assert_eq!(of("2025-12-31", review), open(&[Question::RenewalLate]));
        assert_eq!(of("2026-11-26", review), open(&[Question::RenewalLate]));
        assert_eq!(of("2026-11-27", review), open(&[Question::RenewalAfterReview]));
        assert_eq!(of("2099-01-01", review), open(&[Question::RenewalAfterReview]));
        assert_eq!(of("2025-12-30", Some("2025-12-30")), Verdict::Covered);
        assert_eq!(of("2025-12-30", Some("2025-12-29")), open(&[Question::RenewalAfterReview]));
        assert_eq!(of("2025-12-30", None), open(&[Question::RenewalAfterReview]));
        assert_eq!(of("2025-12-31", None), open(&[Question::RenewalLate]));
    }

    #[test]
    fn a_claim_is_for_its_substance_and_no_other() {
        let cadmium = Claim { substance: Substance::Cd, ..signed() };
        let verdict = judge_claim(&row(), &cadmium, Number::Within, BRASS, answers("2026-12-01"));
        assert_eq!(verdict, Verdict::NotCovered(Refusal::OtherSubstance));
    }

    #[test]
    fn a_claim_needs_a_material_that_the_entry_may_cover() {
        use MaterialClass::{Composite, Metal, Plated, Polymer, Unknown};
        let alloy = Exemption { starred: false, ..row() };
        let glass = Exemption { groups: vec![Group::GlassCeramic], bound: Bound::NoNumber, ..alloy.clone() };
        let any = Exemption { groups: vec![Group::Any], bound: Bound::NoNumber, ..alloy.clone() };
        let bounded = Exemption { bound: Bound::AtMost(mg(1)), ..any.clone() };
        let of = |row: &Exemption, class, group: Option<Group>| match judged(
            row,
            Seen { class, groups: group.as_slice(), perhaps: &[] },
            answers("2026-12-01"),
        ) {
            Verdict::Open(questions) => {
                assert_eq!(questions.len(), 1);
                questions[0].code()
            }
            Verdict::NotCovered(refusal) => refusal.code(),
            other => other.code(),
        };
        let copper = Some(Group::Copper);
        let ceramic = Some(Group::GlassCeramic);
        for (row, class, group, expected) in [
            (&alloy, Metal, copper, "covered"),
            (&alloy, Metal, None, "group_not_known"),
            (&alloy, Metal, Some(Group::Steel), "other_group"),
            (&alloy, Polymer, None, "other_class"),
            (&alloy, Polymer, copper, "other_class"),
            (&alloy, Composite, copper, "not_homogeneous"),
            (&alloy, Plated, copper, "layer_not_resolved"),
            (&alloy, Unknown, copper, "class_not_known"),
            (&alloy, Unknown, None, "class_not_known"),
            (&glass, Metal, None, "other_class"),
            (&glass, Polymer, None, "other_class"),
            (&glass, Composite, None, "group_not_known"),
            (&glass, Composite, ceramic, "covered"),
            (&glass, Unknown, ceramic, "covered"),
            (&glass, Unknown, None, "class_not_known"),
            (&glass, Plated, ceramic, "layer_not_resolved"),
            (&any, Metal, None, "covered"),
            (&any, Polymer, None, "covered"),
            (&any, Composite, None, "not_homogeneous"),
            (&any, Composite, ceramic, "not_homogeneous"),
            (&any, Unknown, None, "class_not_known"),
            (&any, Unknown, ceramic, "class_not_known"),
            (&any, Plated, None, "layer_not_resolved"),
            (&bounded, Composite, None, "not_homogeneous"),
        ] {
            assert_eq!(of(row, class, group), expected, "{:?} {class:?} {group:?}", row.groups);
        }
    }

    #[test]
    fn the_claims_own_word_never_overrules_the_readings() {
        let says = |group: &str, shown: Option<Group>| {
            let claim = claim(&format!("group={group};evidence=EV-1;by=CD;second=AB"));
            judge_claim(
                &row(),
                &claim,
                Number::Within,
                Seen { class: MaterialClass::Metal, groups: shown.as_slice(), perhaps: &[] },
                answers("2026-12-01"),
            )
        };
        assert_eq!(says("copper", None), Verdict::Covered);
        assert_eq!(says("copper", Some(Group::Steel)), Verdict::NotCovered(Refusal::OtherGroup));
        assert_eq!(says("steel", Some(Group::Copper)), Verdict::NotCovered(Refusal::OtherGroup));
        assert_eq!(says("steel", None), Verdict::NotCovered(Refusal::OtherGroup));
    }

    #[test]
    fn readings_that_differ_on_the_alloy_or_may_show_another_cover_nothing() {
        let of = |groups: &[Group], perhaps: &[Group]| {
            judged(&row(), Seen { class: MaterialClass::Metal, groups, perhaps }, answers("2026-12-01"))
        };
        let (copper, steel) = (Group::Copper, Group::Steel);
        assert_eq!(of(&[copper, steel], &[]), Verdict::NotCovered(Refusal::OtherGroup));
        assert_eq!(of(&[copper], &[steel]), open(&[Question::GroupNotKnown]));
        assert_eq!(of(&[copper], &[copper]), Verdict::Covered);
        assert_eq!(of(&[], &[copper]), open(&[Question::GroupNotKnown]));
    }

    #[test]
    fn a_mixture_may_miss_at_least_and_never_exceed_at_most() {
        let of = |bound, class| {
            let row = Exemption { bound, starred: false, ..row() };
            judge_claim(
                &row,
                &signed(),
                Number::Exceeded,
                Seen { class, groups: &[Group::Copper], perhaps: &[] },
                answers("2026-12-01"),
            )
        };
        let (least, most) = (Bound::AtLeast(mg(850_000)), Bound::AtMost(mg(40_000)));
        assert_eq!(of(least, MaterialClass::Composite), open(&[Question::NotHomogeneous]));
        assert_eq!(of(least, MaterialClass::Plated), open(&[Question::LayerNotResolved]));
        assert_eq!(of(least, MaterialClass::Metal), Verdict::Exceeded);
        assert_eq!(of(most, MaterialClass::Composite), Verdict::Exceeded);
        assert_eq!(of(most, MaterialClass::Plated), Verdict::Exceeded);
    }
}
