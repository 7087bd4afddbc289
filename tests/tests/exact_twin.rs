//! The program and its slow exact twin say the same of every invented table.

use std::collections::{BTreeMap, BTreeSet};

use num_bigint::BigInt;
use num_rational::BigRational;
use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::judging::SourceReview;
use plumbline_core::lot::LotReason;
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::Judgement;
use plumbline_core::quantity::{MassFraction, Sigma};
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::program::inspect;
use plumbline_tests::tables::{Table, Units, table, table_all_known, tries};
use plumbline_tests::twin::verdict::{Class, Outcome, Verdict};
use plumbline_tests::twin::{self, Disposition, ReviewOut};
use proptest::prelude::*;

fn both(table: &Table) -> (String, Inspection, Findings, ReviewOut) {
    let text = table.to_text(Units::MgPerKg);
    let inspection = inspect(&table.given.to_settings(), &[(twin::FILE_NAME, text.as_bytes())]);
    let findings = review(&inspection);
    let twin = twin::review(&twin::read(&text, table.delimiter, &table.given), &table.given);
    (text, inspection, findings, twin)
}

fn said(judgement: Judgement) -> (&'static str, &'static str) {
    (judgement.outcome.code(), judgement.reason.map_or("", plumbline_core::outcome::Reason::code))
}

fn twin_said(verdict: Verdict) -> (&'static str, &'static str) {
    (verdict.outcome.code(), verdict.reason)
}

fn core_class(class: Class) -> MaterialClass {
    MaterialClass::from_code(class.code()).expect("both know the same classes")
}

fn micro(exact: &BigRational) -> BigRational {
    exact * BigRational::from_integer(BigInt::from(1_000_000))
}

fn same_amount(core: Option<MassFraction>, twin: Option<&BigRational>) -> bool {
    match (core, twin) {
        (None, None) => true,
        (Some(core), Some(twin)) => BigRational::from_integer(BigInt::from(core.units())) == micro(twin),
        _ => false,
    }
}

/// The program prints s to the nearest millionth; the twin has its square.
fn same_sigma(core: Option<Sigma>, variance: Option<&BigRational>) -> bool {
    let (Some(core), Some(variance)) = (core, variance) else { return core.is_none() && variance.is_none() };
    let million = BigRational::from_integer(BigInt::from(1_000_000));
    let exact = variance * &million * &million;
    let half = BigRational::new(BigInt::from(1), BigInt::from(2));
    let printed = BigRational::from_integer(BigInt::from(core.to_mass_fraction().units()));
    let (under, over) = (&printed - &half, &printed + &half);
    let under = if under < BigRational::from_integer(BigInt::from(0)) {
        BigRational::from_integer(BigInt::from(0))
    } else {
        under
    };
    &under * &under <= exact && exact <= &over * &over
}

/// Which sigmas have an unknown multiple is said in a test of its own.
fn reasons(list: &[LotReason]) -> BTreeSet<(String, String, &'static str)> {
    list.iter()
        .map(|reason| (reason.code.code().to_owned(), reason.about.clone(), reason.effect.code()))
        .filter(|(code, ..)| code != "multiple_not_stated")
        .collect()
}

fn twin_reasons(list: &BTreeSet<twin::Reason>) -> BTreeSet<(String, String, &'static str)> {
    list.iter().map(|(code, about, effect)| ((*code).to_owned(), about.clone(), effect.code())).collect()
}

fn texts<const N: usize>(texts: [Option<&str>; N]) -> [String; N] {
    texts.map(|text| text.unwrap_or("").to_owned())
}

fn readings_agree(table: &Table) -> Result<(), TestCaseError> {
    let (text, inspection, findings, twin) = both(table);
    let source = &inspection.sources[0];
    let settings = inspection.settings();
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    prop_assert_eq!(source.readings.len(), twin.readings.len(), "readings of\n{}", text);
    for (row, expected) in twin.readings.iter().enumerate() {
        let assessed = reviewer.assess(row);
        let place = format!("line {} of\n{text}\n{}", expected.line, table.given.to_settings());
        prop_assert_eq!(u64::from(source.readings.line(row)), expected.line, "{}", place);
        prop_assert_eq!(assessed.class.code(), expected.class.code(), "class, {}", place);
        prop_assert_eq!(assessed.class_from.code(), expected.class_from, "class from, {}", place);
        prop_assert_eq!(findings.verdicts[row].check, expected.check, "check, {}", place);
        for substance in Substance::ALL {
            let at = substance as usize;
            let symbol = substance.symbol();
            prop_assert_eq!(
                said(assessed.substances[at]),
                twin_said(expected.substances[at]),
                "{}, {}",
                symbol,
                place
            );
            prop_assert_eq!(findings.verdicts[row].substances[at], assessed.substances[at].outcome);
            if let Some(by_class) = &expected.by_class {
                for (class, verdict) in Class::BANDED.into_iter().zip(by_class[at]) {
                    let judged = reviewer.judge_as(substance, core_class(class), row);
                    prop_assert_eq!(said(judged), twin_said(verdict), "{} as {:?}, {}", symbol, class, place);
                }
            }
        }
        for (of, expected) in [(Halogen::Cl, expected.halogens[0]), (Halogen::Br, expected.halogens[1])] {
            prop_assert_eq!(said(assessed.halogen(of)), twin_said(expected), "halogen {:?}, {}", of, place);
        }
        let total = &assessed.total;
        prop_assert_eq!(said(total.judgement), twin_said(expected.total.verdict), "total, {}", place);
        prop_assert!(
            same_amount(total.low, expected.total.low.as_ref()),
            "low end {:?}, {}",
            total.low,
            place
        );
        prop_assert!(
            same_amount(total.high, expected.total.high.as_ref()),
            "high end {:?}, {}",
            total.high,
            place
        );
        prop_assert!(
            same_sigma(total.sigma, expected.total.variance.as_ref()),
            "sigma of the total {:?}, {}",
            total.sigma,
            place
        );
    }
    Ok(())
}

fn dispositions_agree(table: &Table) -> Result<(), TestCaseError> {
    let (text, _, findings, twin) = both(table);
    let place = format!("\n{text}\n{}", table.given.to_settings());
    let key_of = |lot: usize| {
        let lot = &findings.lots[lot];
        texts([lot.supplier.as_deref(), lot.lot.as_deref()])
    };
    let mut materials = BTreeMap::new();
    for material in &findings.materials {
        let [part, name] = texts([material.part.as_deref(), material.name.as_deref()]);
        let stand_in = name.is_empty().then(|| material.class.code());
        let worst = Substance::ALL.map(|substance| material.tally.worst(substance).code());
        let key = (key_of(material.lot), part, name, stand_in);
        let value = (material.disposition.code(), reasons(&material.reasons), worst);
        prop_assert!(materials.insert(key, value).is_none(), "a material twice in {}", place);
    }
    let expected: BTreeMap<_, _> = twin
        .materials
        .iter()
        .map(|(((supplier, lot), part, name, stand_in), out)| {
            let key =
                ([supplier.clone(), lot.clone()], part.clone(), name.clone(), stand_in.map(Class::code));
            (key, (out.disposition.code(), twin_reasons(&out.reasons), out.worst.map(Outcome::code)))
        })
        .collect();
    prop_assert_eq!(materials, expected, "materials of {}", place);

    let parts: BTreeMap<_, _> = findings
        .parts
        .iter()
        .map(|part| {
            let [name] = texts([part.part.as_deref()]);
            ((key_of(part.lot), name), (part.disposition.code(), reasons(&part.reasons)))
        })
        .collect();
    let expected: BTreeMap<_, _> = twin
        .parts
        .iter()
        .map(|(((supplier, lot), part), out)| {
            let key = ([supplier.clone(), lot.clone()], part.clone());
            (key, (out.disposition.code(), twin_reasons(&out.reasons)))
        })
        .collect();
    prop_assert_eq!(parts, expected, "parts of {}", place);

    let lots: BTreeMap<_, _> = (0..findings.lots.len())
        .map(|at| (key_of(at), (findings.lots[at].disposition.code(), reasons(&findings.lots[at].reasons))))
        .collect();
    let expected: BTreeMap<_, _> = twin
        .lots
        .iter()
        .map(|((supplier, lot), out)| {
            ([supplier.clone(), lot.clone()], (out.disposition.code(), twin_reasons(&out.reasons)))
        })
        .collect();
    prop_assert_eq!(lots, expected, "lots of {}", place);
    Ok(())
}

proptest! {
    #![proptest_config(tries(300))]

    #[test]
    fn every_reading_is_judged_as_the_twin_judges_it(table in table()) {
        readings_agree(&table)?;
    }

    #[test]
    fn every_material_part_and_lot_is_disposed_of_as_the_twin_does(table in table()) {
        dispositions_agree(&table)?;
    }

    #[test]
    fn where_everything_is_stated_the_twin_says_the_same(table in table_all_known()) {
        readings_agree(&table)?;
        dispositions_agree(&table)?;
    }
}

/// A property about "never accepts" proves nothing unless the tables do reach every disposition and outcome.
#[test]
fn the_invented_tables_reach_every_outcome_and_every_disposition() {
    use proptest::strategy::ValueTree;
    let mut runner = proptest::test_runner::TestRunner::new(tries(1));
    let (mut outcomes, mut dispositions, mut totals) = (BTreeSet::new(), BTreeSet::new(), BTreeSet::new());
    for at in 0..200 {
        let made = if at % 2 == 0 {
            table().new_tree(&mut runner).map(|tree| tree.current())
        } else {
            table_all_known().new_tree(&mut runner).map(|tree| tree.current())
        };
        let table = made.expect("a table");
        let text = table.to_text(Units::MgPerKg);
        let out = twin::review(&twin::read(&text, table.delimiter, &table.given), &table.given);
        for reading in &out.readings {
            outcomes.extend(reading.substances.iter().map(|verdict| verdict.outcome));
            totals.insert(reading.total.verdict.reason);
        }
        dispositions.extend(out.lots.values().map(|lot| lot.disposition));
    }
    assert_eq!(outcomes.len(), 8, "{outcomes:?}");
    assert_eq!(
        dispositions,
        BTreeSet::from([Disposition::Accept, Disposition::Hold, Disposition::NotAccept])
    );
    for reason in [
        "",
        "around_limit",
        "censored_part",
        "one_part_alone",
        "part_not_measured",
        "copper_or_glass_in_beam",
    ] {
        assert!(totals.contains(reason), "{reason} in {totals:?}");
    }
}
