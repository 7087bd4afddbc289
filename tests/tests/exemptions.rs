//! What must hold of every claim that an exemption covers a material, whatever else is said.

use plumbline_core::exempt::{Bound, Number, Refusal, Verdict};
use plumbline_core::inspection::{Findings, Inspection, MaterialFinding, review};
use plumbline_core::lot::{Disposition, LotReasonCode};
use plumbline_core::report::exemptions;
use plumbline_core::substance::Substance;
use plumbline_tests::program::{built_in_books, inspect, with_words};
use plumbline_tests::tables::tries;
use proptest::prelude::*;

/// One material with one claim, and everything that may be said about it.
#[derive(Clone, Debug)]
struct Scene {
    class: &'static str,
    /// Lead in mg/kg, and one sigma.
    lead: i64,
    sigma: i64,
    cadmium: i64,
    copper: Option<i64>,
    entry: &'static str,
    group: Option<&'static str>,
    evidence: Option<&'static str>,
    by: Option<&'static str>,
    second: Option<&'static str>,
    category: Option<&'static str>,
    placed: Option<&'static str>,
    mouthing: Option<&'static str>,
    renewal: Option<(&'static str, bool)>,
    claimed: bool,
}

impl Scene {
    fn settings(&self) -> String {
        let line = |key: &str, value: Option<&str>| {
            value.map_or(String::new(), |value| format!("{key} = \"{value}\"\n"))
        };
        let mut lines = vec![
            line("schema", Some("plumbline.settings/1")),
            line("trust", Some("advisory")),
            line("sampling", Some("advisory")),
            line("reviewed_at", Some("2026-11-26")),
            line("category", self.category),
            line("placing_date", self.placed),
            line("mouthing", self.mouthing),
            "[[part]]\npart = \"valve\"\nmaterials = [\"body\"]\nthickness_mm = 20\n".to_owned(),
        ];
        if self.claimed {
            lines.extend([
                "[[claim]]\npart = \"valve\"\nsubstance = \"Pb\"\n".to_owned(),
                line("entry", Some(self.entry)),
                line("group", self.group),
                line("evidence", self.evidence),
                line("by", self.by),
                line("second", self.second),
            ]);
        }
        if let Some((state, sourced)) = self.renewal {
            lines.extend([
                "[[renewal]]\n".to_owned(),
                line("entry", Some(self.entry)),
                line("state", Some(state)),
                line("source", sourced.then_some("a list")),
                line("date", sourced.then_some("2025-12-01")),
            ]);
        }
        lines.concat()
    }

    fn table(&self) -> String {
        let copper = self.copper.map_or(String::new(), |copper| copper.to_string());
        format!(
            "Sample,Unit,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),\
             Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s),Cu mg/kg,Cu u (1s)\n\
             S1,1,valve,body,D-7,Dogwood Works,{},{},2,{},{},3,2,20,10,5,2,{copper},900\n",
            self.class, self.cadmium, self.lead, self.sigma
        )
    }

    fn review(&self) -> (Inspection, Findings) {
        let inspection = inspect(&self.settings(), &[("valves.csv", self.table().as_bytes())]);
        let findings = review(&inspection);
        (inspection, findings)
    }

    fn material(&self) -> MaterialFinding {
        let mut materials = self.review().1.materials;
        assert_eq!(materials.len(), 1);
        materials.remove(0)
    }
}

fn verdict(material: &MaterialFinding) -> Option<Verdict> {
    material.claims.claims.first().and_then(|claim| claim.verdict.clone())
}

/// Reasons about one substance alone.
fn about(material: &MaterialFinding, substance: Substance) -> Vec<(LotReasonCode, Disposition, u64)> {
    let of = |about: &str| about.split(' ').next() == Some(substance.symbol());
    let reasons = material.reasons.iter().filter(|reason| of(&reason.about));
    reasons.map(|reason| (reason.code, reason.effect, reason.count)).collect()
}

fn scene() -> impl Strategy<Value = Scene> {
    let from = |list: &'static [&'static str]| prop::sample::select(list);
    let what = (
        prop_oneof![4 => Just("metal"), 1 => from(&["polymer", "composite", "plated", "glass", "unknown"])],
        prop_oneof![0_i64..45_000, 1_000_i64..4_500, 820_000_i64..880_000],
        1_i64..400,
        prop_oneof![3 => Just(5_i64), 1 => 50_i64..300],
        prop_oneof![1 => Just(None), 2 => Just(Some(580_000_i64)), 1 => Just(Some(400_i64))],
    );
    let claimed = (
        from(&[
            "6(c)", "6(a)-I", "6(b)-I", "6(b)-III", "7(a)", "7(b)", "7(c)-I", "7(c)-IV", "34", "37", "99",
        ]),
        prop::option::weighted(0.7, from(&["copper", "copper", "steel", "lead", "glass_ceramic", "any"])),
        prop::option::weighted(0.9, from(&["EV-1"])),
        prop::option::weighted(0.9, from(&["AB"])),
    );
    let answered = (
        prop::option::weighted(0.9, from(&["4", "9", "9i", "11", "8ivd"])),
        prop::option::weighted(
            0.9,
            from(&["2025-12-10", "2026-12-01", "2026-12-11", "2027-06-30", "2027-07-01", "2028-01-01"]),
        ),
        prop::option::weighted(0.9, from(&["cannot", "cannot", "can", "release_shown"])),
        prop::option::of((from(&["pending", "refused", "not_filed"]), any::<bool>())),
    );
    (what, claimed, answered).prop_map(
        |(
            (class, lead, sigma, cadmium, copper),
            (entry, group, evidence, second),
            (category, placed, mouthing, renewal),
        )| Scene {
            class,
            lead,
            sigma,
            cadmium,
            copper,
            entry,
            group,
            evidence,
            by: second.map(|_| "CD"),
            second,
            category,
            placed,
            mouthing,
            renewal,
            claimed: true,
        },
    )
}

/// A scene that covers, so that taking something away has something to break.
fn covered() -> Scene {
    Scene {
        class: "metal",
        lead: 30_000,
        sigma: 300,
        cadmium: 5,
        copper: Some(580_000),
        entry: "6(c)",
        group: None,
        evidence: Some("EV-1"),
        by: Some("CD"),
        second: Some("AB"),
        category: Some("4"),
        placed: Some("2026-12-01"),
        mouthing: Some("cannot"),
        renewal: None,
        claimed: true,
    }
}

/// The scene with one thing less.
fn less(scene: &Scene) -> Vec<(&'static str, Scene)> {
    let one = |name, change: fn(&mut Scene)| {
        let mut fewer = scene.clone();
        change(&mut fewer);
        (name, fewer)
    };
    vec![
        one("evidence", |scene| scene.evidence = None),
        one("initials", |scene| scene.second = None),
        one("the first initials", |scene| scene.by = None),
        one("category", |scene| scene.category = None),
        one("day of placing", |scene| scene.placed = None),
        one("mouthing", |scene| scene.mouthing = None),
        one("group", |scene| scene.group = None),
        one("source of the renewal", |scene| {
            scene.renewal = scene.renewal.map(|(state, _)| (state, false));
        }),
        one("renewal", |scene| scene.renewal = None),
        one("claim", |scene| scene.claimed = false),
    ]
}

#[test]
fn a_claim_that_covers_accepts_and_without_any_one_thing_it_does_not() {
    assert_eq!(covered().material().disposition, Disposition::Accept);
    let renewed = Scene { placed: Some("2027-07-01"), renewal: Some(("pending", true)), ..covered() };
    assert_eq!(renewed.material().disposition, Disposition::Accept);
    let stated = Scene { copper: None, group: Some("copper"), ..covered() };
    assert_eq!(stated.material().disposition, Disposition::Accept);
    for (name, fewer) in less(&covered()) {
        let needed = !["group", "source of the renewal", "renewal"].contains(&name);
        assert_eq!(fewer.material().disposition > Disposition::Accept, needed, "{name}");
    }
    for (name, fewer) in less(&renewed) {
        assert!(fewer.material().disposition > Disposition::Accept || name == "group", "{name}");
    }
    for (name, fewer) in less(&stated) {
        let needed = !["source of the renewal", "renewal"].contains(&name);
        assert_eq!(fewer.material().disposition > Disposition::Accept, needed, "{name}");
    }
    assert!(Scene { copper: None, ..covered() }.material().disposition > Disposition::Accept);
}

/// Entries that may be claimed for leaded brass of a known alloy, with what has to be answered.
#[test]
fn candidates_are_the_entries_that_may_cover_the_alloy() {
    let books = built_in_books();
    let say = |scene: &Scene| {
        let one = |candidate: &plumbline_core::claims::Candidate| {
            let questions: Vec<_> = candidate.questions.iter().map(|question| question.code()).collect();
            let entry = &books.exemptions()[candidate.row].entry;
            format!("{entry} {} {}", candidate.number.code(), questions.join(" ")).trim_end().to_owned()
        };
        scene.material().claims.candidates.iter().map(one).collect::<Vec<_>>()
    };
    let brass = Scene { claimed: false, ..covered() };
    assert_eq!(say(&brass), ["6(c) within"]);
    let asked = Scene { category: None, placed: None, mouthing: None, ..brass.clone() };
    assert_eq!(
        say(&asked)[0],
        "6(c) within category_not_stated placing_date_not_stated mouthing_not_answered"
    );
    let much = Scene { lead: 60_000, ..brass.clone() };
    assert_eq!(say(&much)[0], "6(c) exceeded", "beyond its number, for what the material is: worth knowing");
    let unseen = Scene { copper: None, lead: 60_000, ..brass.clone() };
    assert!(say(&unseen).iter().all(|one| !one.starts_with("6(c)")), "{:?}", say(&unseen));
    assert!(say(&Scene { lead: 5, sigma: 1, ..brass.clone() }).is_empty());
    assert!(say(&covered()).is_empty(), "a claimed entry is no candidate");
}

/// A slip of the pen is named, and nothing is decided by what was meant.
#[test]
fn an_entry_written_otherwise_is_refused_and_the_nearest_is_named() {
    let books = built_in_books();
    for (entry, near) in
        [("6c", Some("6(c)")), ("6(C)", Some("6(c)")), ("6bii", Some("6(b)-II")), ("99", None)]
    {
        let material = Scene { entry, ..covered() }.material();
        assert_eq!(verdict(&material), Some(Verdict::NotCovered(Refusal::EntryNotInBook)), "{entry}");
        assert_eq!(material.disposition, Disposition::NotAccept, "{entry}");
        let claim = &material.claims.claims[0];
        let why = with_words(|words| exemptions::why(words, books.exemptions(), claim)).remove(0);
        assert_eq!(why.0, "entry_not_in_book");
        match near {
            Some(near) => assert!(why.1.ends_with(&format!("{near} comes nearest")), "{}", why.1),
            None => assert_eq!(why.1, with_words(|words| words.say("refusal-entry_not_in_book"))),
        }
    }
}

/// One line a day, over all lots, what is claimed before what may be.
#[test]
fn days_of_expiry_name_their_lots() {
    let settings = "schema = \"plumbline.settings/1\"\ncategory = 4\nplacing_date = \"2026-12-01\"\nmouthing = \"cannot\"\n\
        [[claim]]\npart = \"valve\"\nmaterial = \"body\"\nentry = \"6(c)\"\nsubstance = \"Pb\"\n";
    let head =
        "Sample,Part,Material,Lot,Supplier,Class,Pb mg/kg,Pb u (1s),Cu mg/kg,Cu u (1s),Fe mg/kg,Fe u (1s)\n";
    let row = |lot: &str, material: &str, copper: &str, iron: &str| {
        format!("S,valve,{material},{lot},Elm Works,metal,3000,30,{copper},900,{iron},900\n")
    };
    let table = [
        head.to_owned(),
        row("E-1", "body", "580000", "100"),
        row("E-2", "body", "580000", "100"),
        row("E-2", "hook", "100", "980000"),
    ]
    .concat();
    let inspection = inspect(settings, &[("t.csv", table.as_bytes())]);
    let findings = review(&inspection);
    let say: Vec<String> = with_words(|words| {
        findings.expiries.iter().map(|one| exemptions::expiry(words, &inspection, &findings, one)).collect()
    });
    assert_eq!(
        say,
        [
            "2026-12-11: exemption 6(a) for Pb expires (renewal not known). Not claimed; it may be, for one material, in: E-2.",
            "2027-06-30: exemption 6(c) for Pb expires (renewal not known). Claimed for 2 materials, in: E-1, E-2.",
            "2027-06-30: exemption 6(a)-I for Pb expires (renewal not known). Not claimed; it may be, for one material, in: E-2.",
        ]
    );
}

/// Whether an entry may still be claimed depends on the day of placing; without that day no sentence says that it may.
#[test]
fn an_entry_that_is_over_is_not_offered_and_without_a_day_of_placing_nothing_is_promised() {
    let say = |scene: &Scene| -> Vec<String> {
        let (inspection, findings) = scene.review();
        with_words(|words| {
            let days = findings.expiries.iter();
            days.map(|one| exemptions::expiry(words, &inspection, &findings, one)).collect()
        })
    };
    let brass = Scene { claimed: false, ..covered() };
    let ends = "for one material, in: D-7.";
    let known = |renewal| format!("2027-06-30: exemption 6(c) for Pb expires ({renewal}). Not claimed; ");
    assert_eq!(say(&brass), [format!("{}it may be, {ends}", known("renewal not known"))]);
    let undated = Scene { placed: None, ..brass.clone() };
    let depends =
        "whether it may be depends on the day of placing on the market, which is not stated. It would be ";
    assert_eq!(say(&undated), [format!("{}{depends}{ends}", known("renewal not known"))]);
    let late = Scene { placed: Some("2027-07-01"), ..brass.clone() };
    assert!(say(&late).is_empty());
    for sourced in [false, true] {
        let pending = Scene { renewal: Some(("pending", sourced)), ..late.clone() };
        assert_eq!(say(&pending), [format!("{}it may be, {ends}", known("renewal pending"))]);
    }
    for state in ["refused", "not_filed"] {
        assert!(say(&Scene { renewal: Some((state, true)), ..late.clone() }).is_empty(), "{state}");
    }
    // Claimed, it stays listed as long as it may cover.
    let claimed = Scene { claimed: true, ..late.clone() };
    assert!(say(&claimed)[0].ends_with("Claimed for one material, in: D-7."), "{:?}", say(&claimed));
}

/// Within a maximum, at a minimum, and no number at all are three sentences.
#[test]
fn what_is_kept_to_is_told_apart_from_what_an_entry_does_not_state() {
    let books = built_in_books();
    let rows = books.exemptions();
    let say = |bound: fn(&Bound) -> bool, number| {
        let row = rows.iter().position(|row| bound(&row.bound)).expect("such a row");
        with_words(|words| exemptions::number(words, rows, Some(row), number))
    };
    let most = say(|bound| matches!(bound, Bound::AtMost(_)), Number::Within);
    let least = say(|bound| matches!(bound, Bound::AtLeast(_)), Number::Within);
    let none = say(|bound| *bound == Bound::NoNumber, Number::Within);
    assert!(most.contains("states a maximum") && most.contains("within it"), "{most}");
    assert!(least.contains("states a minimum") && least.contains("reach it"), "{least}");
    assert!(none.contains("states no maximum"), "{none}");
    let exceeded = say(|bound| matches!(bound, Bound::AtMost(_)), Number::Exceeded);
    assert_eq!(exceeded, with_words(|words| words.say("number-exceeded")));
}

proptest! {
    #![proptest_config(tries(150))]

    #[test]
    fn taking_something_away_never_accepts(scene in scene()) {
        let before = scene.material();
        let other_group = verdict(&before) == Some(Verdict::NotCovered(Refusal::OtherGroup));
        for (name, fewer) in less(&scene) {
            // Taking back a word about the alloy that the readings contradict takes nothing away.
            if name == "group" && other_group {
                continue;
            }
            let after = fewer.material();
            prop_assert!(
                before.disposition == Disposition::Accept || after.disposition > Disposition::Accept,
                "without {}: {:?}", name, after.reasons
            );
            let needed = ["evidence", "initials", "category", "day of placing", "claim"].contains(&name);
            let lead = [LotReasonCode::ClaimCovers, LotReasonCode::OverLimit];
            if needed && before.reasons.iter().any(|reason| lead.contains(&reason.code)) {
                prop_assert!(after.disposition > Disposition::Accept, "without {}: {:?}", name, after.reasons);
            }
        }
    }

    #[test]
    fn more_lead_never_improves_a_claim_of_at_most(scene in scene(), more in 0_i64..40_000) {
        let worse = Scene { lead: scene.lead + more, ..scene.clone() };
        let (before, after) = (scene.material(), worse.material());
        let row_of = |material: &MaterialFinding| material.claims.claims.first().and_then(|claim| claim.row);
        let books = built_in_books();
        let bound = row_of(&before).and_then(|row| books.exemptions().get(row)).map(|row| row.bound);
        let (Some(one), Some(other)) = (verdict(&before), verdict(&after)) else { return Ok(()) };
        // More lead may be another alloy, which may be covered where the first was not.
        let other_alloy = matches!(one, Verdict::NotCovered(_)) || row_of(&before) != row_of(&after);
        if matches!(bound, Some(Bound::AtMost(_))) && !other_alloy {
            prop_assert!(other.rank() >= one.rank(), "{:?} {:?}", one, other);
            prop_assert!(after.claims.claims[0].number >= before.claims.claims[0].number);
        }
    }

    #[test]
    fn what_is_expired_exceeded_or_not_covered_never_accepts(scene in scene()) {
        let material = scene.material();
        let over = material.tally.firm_over[Substance::Pb as usize] > 0;
        match verdict(&material) {
            Some(Verdict::Expired | Verdict::Exceeded | Verdict::NotCovered(_)) => {
                let expected = if over { Disposition::NotAccept } else { Disposition::Hold };
                prop_assert!(material.disposition >= expected, "{:?}", material.reasons);
            }
            Some(Verdict::Open(questions)) => {
                prop_assert!(!questions.is_empty());
                prop_assert!(material.disposition >= Disposition::Hold);
            }
            Some(Verdict::Covered) => {
                prop_assert!(scene.evidence.is_some() && scene.by.is_some() && scene.second.is_some());
                prop_assert!(scene.category.is_some() && scene.placed.is_some());
                prop_assert_eq!(material.claims.claims[0].number, Number::Within);
                prop_assert!(material.reasons.iter().any(|one| one.code == LotReasonCode::ClaimCovers));
            }
            None => {}
        }
    }

    #[test]
    fn a_claim_touches_no_other_substance(scene in scene()) {
        let (with, without) = (scene.material(), Scene { claimed: false, ..scene.clone() }.material());
        for substance in Substance::ALL.into_iter().filter(|substance| *substance != Substance::Pb) {
            prop_assert_eq!(about(&with, substance), about(&without, substance));
        }
        prop_assert_eq!(with.tally.counts, without.tally.counts);
    }
}
