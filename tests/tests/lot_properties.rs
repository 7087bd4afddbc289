//! What people and laboratories can and cannot do to a lot, searched over small inspections and acts made at random.

use std::collections::BTreeSet;

use plumbline_core::acts::{Act, ActKind, Target};
use plumbline_core::inspection::{Findings, Inspection, LotFinding, review};
use plumbline_core::lot::{Disposition, LotReason, LotReasonCode};
use plumbline_core::outcome::Outcome;
use plumbline_core::substance::Substance;
use plumbline_tests::program::inspect;
use plumbline_tests::tables::tries;
use proptest::prelude::*;

const SUPPLIER: &str = "Alder Works";
const LOTS: [&str; 2] = ["A-1", "A-2"];
const MATERIALS: [&str; 2] = ["body", "lid"];
const CLASSES: [&str; 4] = ["metal", "polymer", "composite", ""];
/// Cells of lead (value, uncertainty): below, undecided, over, not measured, no uncertainty, not capable, below a limit.
const LEAD: [&str; 7] = ["5,1", "1000,20", "1500,20", ",", "5,", "5,400", "<5,"];
const CADMIUM: [&str; 5] = ["1,0.5", "80,10", "200,5", ",", "<5,"];
const HEAD: &str = "Sample,Spot,Piece,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,\
                    Hg u (1s),Cr mg/kg,Cr u (1s),Br mg/kg,Br u (1s)";

#[derive(Clone, Debug)]
struct Row {
    sample: u8,
    piece: u8,
    material: usize,
    lot: usize,
    class: usize,
    cadmium: usize,
    lead: usize,
    bromine: bool,
}

impl Row {
    fn text(&self) -> String {
        format!(
            "S{},1,{},P-1,{},{},{SUPPLIER},{},{},{},1,0.5,5,1,{}",
            self.sample,
            self.piece,
            MATERIALS[self.material],
            LOTS[self.lot],
            CLASSES[self.class],
            CADMIUM[self.cadmium],
            LEAD[self.lead],
            if self.bromine { "500,20" } else { "5,1" },
        )
    }
}

/// Mostly clean rows, so that many lots could be accepted.
fn row() -> impl Strategy<Value = Row> {
    let mostly = |others: usize| prop_oneof![20 => Just(0), 1 => 0..others];
    (
        0..3_u8,
        1..3_u8,
        mostly(2),
        mostly(2),
        mostly(4),
        mostly(5),
        prop_oneof![2 => Just(0), 1 => 0..7_usize],
        prop::bool::weighted(0.03),
    )
        .prop_map(|(sample, piece, material, lot, class, cadmium, lead, bromine)| Row {
            sample,
            piece,
            material,
            lot,
            class,
            cadmium,
            lead,
            bromine,
        })
}

/// What is given beside the files: trust, sampling, bill; each holds where it is not.
fn given() -> impl Strategy<Value = String> {
    (prop::bool::weighted(0.6), prop::bool::weighted(0.8), prop::bool::weighted(0.9)).prop_map(
        |(trust, sampling, bill)| {
            let mut text =
                "schema = \"plumbline.settings/1\"\nthickness_mm = 8\nrepeats = \"same_id\"\n".to_owned();
            if trust {
                text += "trust = \"advisory\"\n";
            }
            if sampling {
                text += "lot_size = 500\nunits_to_take = 1\n";
            }
            if bill {
                text += "[[part]]\npart = \"P-1\"\nmaterials = [\"body\"]\n";
            }
            text
        },
    )
}

fn act(kind: ActKind, target: Target, value: String) -> Act {
    Act { kind, target, value, by: String::new(), at: String::new(), note: String::new() }
}

fn laboratory() -> impl Strategy<Value = Act> {
    let value = prop_oneof![
        3 => Just(("<5 mg/kg", "")),
        3 => Just(("40 mg/kg", ";u=10 mg/kg;k=2")),
        1 => Just(("40 mg/kg", "")),
        1 => Just(("990 mg/kg", ";u=60 mg/kg;k=2")),
        1 => Just(("1800 mg/kg", ";u=60 mg/kg;k=2")),
    ];
    let analyte =
        prop::sample::select(vec!["Cd", "Pb", "Pb", "Pb", "Hg", "Cr", "Cr6", "Br", "PBB", "PBDE", "Cl"]);
    let mostly_first = || prop_oneof![4 => Just(0_usize), 1 => Just(1)];
    (mostly_first(), mostly_first(), analyte, value, prop::bool::weighted(0.8), 0..3_u8).prop_map(
        |(lot, material, analyte, (value, u), traceable, report)| {
            let names = [SUPPLIER, LOTS[lot], "P-1", MATERIALS[material]].map(str::to_owned);
            let trace = if traceable { "method=m;laboratory=l;date=2026-11-20;" } else { "" };
            let value = format!("analyte={analyte};value={value}{u};{trace}report=R-{report}");
            act(ActKind::Laboratory, Target::LotMaterial(names), value)
        },
    )
}

fn lift() -> impl Strategy<Value = Act> {
    let codes: Vec<&str> = LotReasonCode::ALL.iter().map(|code| code.code()).collect();
    let liftable: Vec<&str> =
        LotReasonCode::ALL.iter().filter(|code| code.may_be_lifted()).map(|code| code.code()).collect();
    let reason = prop_oneof![prop::sample::select(codes), prop::sample::select(liftable)];
    let about = prop::sample::select(vec!["", "Cd", "Pb"]);
    let lot = prop_oneof![4 => Just(0_usize), 1 => Just(1)];
    (lot, prop::option::weighted(0.3, 0..2_usize), reason, about, prop::bool::weighted(0.7)).prop_map(
        |(lot, material, reason, about, signed)| {
            let target = match material {
                None => Target::Lot(SUPPLIER.into(), LOTS[lot].into()),
                Some(material) => {
                    Target::LotMaterial([SUPPLIER, LOTS[lot], "P-1", MATERIALS[material]].map(str::to_owned))
                }
            };
            let second = if signed { "CD" } else { "A B" };
            act(ActKind::Lift, target, format!("reason={reason};about={about};why=x;by=AB;second={second}"))
        },
    )
}

fn set_aside() -> impl Strategy<Value = Act> {
    (2..9_u32)
        .prop_map(|line| act(ActKind::SetAside, Target::Reading("lot.csv".into(), line), "slipped".into()))
}

fn hold_ends() -> impl Strategy<Value = Act> {
    (0..2_usize).prop_map(|lot| {
        let target = Target::Lot(SUPPLIER.into(), LOTS[lot].into());
        act(ActKind::HoldEnds, target, "who=AB;until=2026-12-05;quarantined=480".into())
    })
}

fn any_act() -> impl Strategy<Value = Act> {
    prop_oneof![4 => laboratory(), 3 => lift(), 2 => set_aside(), 1 => hold_ends()]
}

fn table(rows: &[Row]) -> String {
    let lines: Vec<String> = rows.iter().map(Row::text).collect();
    format!("{HEAD}\n{}\n", lines.join("\n"))
}

fn inspection(given: &str, rows: &[Row], acts: &[Act]) -> Inspection {
    let mut inspection = inspect(given, &[("lot.csv", table(rows).as_bytes())]);
    inspection.acts.extend(acts.iter().cloned());
    inspection
}

fn reviewed(given: &str, rows: &[Row], acts: &[Act]) -> (Inspection, Findings) {
    let inspection = inspection(given, rows, acts);
    let findings = review(&inspection);
    (inspection, findings)
}

fn lot<'f>(findings: &'f Findings, of: &LotFinding) -> &'f LotFinding {
    findings.lots.iter().find(|one| one.lot == of.lot).expect("the lot is there under any acts")
}

fn said(reasons: &[LotReason]) -> Vec<String> {
    reasons.iter().map(|one| format!("{} {} {}", one.effect.code(), one.code.code(), one.about)).collect()
}

/// A plain second reading of what a result says of a limit, from the text of its act.
fn within(value: &str, limit: f64) -> bool {
    let field = |name: &str| {
        value
            .split(';')
            .find_map(|part| part.strip_prefix(name)?.strip_prefix('='))
            .unwrap_or("")
            .trim_end_matches(" mg/kg")
    };
    let traceable = value.contains("method=") && value.contains("laboratory=") && value.contains("date=");
    let number = |text: &str| text.parse::<f64>().ok();
    let most = match field("value").strip_prefix('<') {
        Some(limit) => number(limit),
        None => number(field("value")).zip(number(field("u"))).map(|(x, u)| x + u),
    };
    traceable && most.is_some_and(|most| most <= limit)
}

proptest! {
    #![proptest_config(tries(300))]

    /// Of all that people and laboratories can say, only results that are within, and none that is not, clear an OL.
    #[test]
    fn nothing_turns_an_over_into_accept_but_a_result_within(
        given in given(),
        rows in prop::collection::vec(row(), 1..5),
        acts in prop::collection::vec(any_act(), 0..7),
    ) {
        let (inspection, findings) = reviewed(&given, &rows, &acts);
        for (at, lot) in findings.lots.iter().enumerate().filter(|(_, lot)| lot.disposition == Disposition::Accept) {
            for material in findings.materials.iter().filter(|material| material.lot == at) {
                for reading in material.readings.iter().chain(&material.set_aside) {
                    let verdicts = findings.verdicts[*reading as usize];
                    for (substance, analyte, limit) in [(Substance::Cd, "analyte=Cd;", 100.0), (Substance::Pb, "analyte=Pb;", 1000.0)] {
                        if verdicts.substances[substance as usize] != Outcome::Over {
                            continue;
                        }
                        let names = [SUPPLIER, lot.lot.as_deref().unwrap(), "P-1", material.name.as_deref().unwrap()];
                        let target = Target::LotMaterial(names.map(str::to_owned));
                        // A later act for the same report takes the place of an earlier one.
                        let settings = inspection.settings();
                        let results: Vec<&str> = settings
                            .all()
                            .filter(|(kind, of, value)| *kind == ActKind::Laboratory && **of == target && value.starts_with(analyte))
                            .map(|(_, _, value)| value)
                            .collect();
                        prop_assert!(!results.is_empty() && results.iter().all(|value| within(value, limit)), "{results:?}");
                    }
                }
            }
        }
    }

    /// A hold that is gone was lifted by two people or settled by a laboratory, and the lot says which.
    #[test]
    fn no_act_turns_a_hold_into_accept_without_being_printed(
        given in given(),
        rows in prop::collection::vec(row(), 1..5),
        acts in prop::collection::vec(any_act(), 0..9),
    ) {
        let (_, before) = reviewed(&given, &rows, &[]);
        let (_, after) = reviewed(&given, &rows, &acts);
        for lot_before in before.lots.iter().filter(|lot| lot.disposition != Disposition::Accept) {
            let lot_after = lot(&after, lot_before);
            if lot_after.disposition != Disposition::Accept {
                continue;
            }
            for reason in lot_before.reasons.iter().filter(|reason| reason.effect != Disposition::Accept) {
                let code = reason.code.code();
                let still_said = lot_after.reasons.iter().any(|one| one.code == reason.code && one.about == reason.about);
                let lifted = lot_after.reasons.iter().any(|one| {
                    one.code == LotReasonCode::Lifted && one.about.split('|').next() == Some(code) && one.about.ends_with("|x|AB|CD")
                });
                // A material that only a laboratory knows, and the thickness of what it found, have no name of their own there.
                let unnamed = matches!(reason.code, LotReasonCode::MaterialNotMeasured | LotReasonCode::ThicknessNotStated);
                let settled = lot_after.reasons.iter().any(|one| {
                    one.code == LotReasonCode::LabWithin && (unnamed || one.about.split('|').next() == Some(reason.about.as_str()))
                });
                prop_assert!(
                    (still_said && lifted && reason.code.may_be_lifted()) || settled,
                    "{code} {}: {:#?}", reason.about, said(&lot_after.reasons)
                );
            }
        }
    }

    /// Setting readings aside, whichever they are, never makes a lot look better than accept would have been without.
    #[test]
    fn setting_readings_aside_accepts_no_lot(
        given in given(),
        rows in prop::collection::vec(row(), 1..5),
        acts in prop::collection::vec(set_aside(), 0..4),
    ) {
        let (_, before) = reviewed(&given, &rows, &[]);
        let (_, after) = reviewed(&given, &rows, &acts);
        prop_assert_eq!(before.lots.len(), after.lots.len());
        for lot_before in &before.lots {
            let lot_after = lot(&after, lot_before);
            if lot_after.disposition == Disposition::Accept {
                prop_assert_eq!(lot_before.disposition, Disposition::Accept, "{:#?}", said(&lot_before.reasons));
            }
        }
        let aside: BTreeSet<u32> = after.materials.iter().flat_map(|one| one.set_aside.iter().copied()).collect();
        prop_assert_eq!(aside, after.set_aside.keys().copied().collect::<BTreeSet<u32>>());
    }

    /// Lifts never touch an over, nor anything that only a result ends.
    #[test]
    fn lifts_end_only_what_people_may_lift(
        given in given(),
        rows in prop::collection::vec(row(), 1..5),
        acts in prop::collection::vec(lift(), 0..7),
    ) {
        let (_, before) = reviewed(&given, &rows, &[]);
        let (_, after) = reviewed(&given, &rows, &acts);
        for lot_before in &before.lots {
            let kept = |lot: &LotFinding| -> Vec<String> {
                let held = lot.reasons.iter().filter(|one| one.effect != Disposition::Accept && !one.code.may_be_lifted());
                held.map(|one| format!("{} {}", one.code.code(), one.about)).collect()
            };
            prop_assert_eq!(kept(lot_before), kept(lot(&after, lot_before)));
        }
        // Each lift is answered, in its lot.
        let answers = |lot: &LotFinding| -> usize {
            let told = [LotReasonCode::Lifted, LotReasonCode::LiftNotAllowed, LotReasonCode::LiftNotCountersigned, LotReasonCode::LiftNotNeeded];
            lot.reasons.iter().filter(|one| told.contains(&one.code)).count()
        };
        for one in &after.lots {
            let name = one.lot.as_deref().unwrap();
            let of_lot = acts.iter().any(|act| match &act.target {
                Target::Lot(_, lot) | Target::LotMaterial([_, lot, ..]) => lot == name,
                _ => false,
            });
            prop_assert_eq!(of_lot, answers(one) > 0);
        }
    }

    /// Neither the order of acts about different things nor the order in which files are loaded changes a lot.
    #[test]
    fn the_order_of_acts_and_of_files_changes_no_lot(
        given in given(),
        rows in prop::collection::vec(row(), 2..5),
        acts in prop::collection::vec(any_act(), 0..7),
        cut in 1..6_usize,
    ) {
        // Of acts about the same thing the last one counts, so only one of them is taken.
        let key = |act: &Act| {
            let about: Vec<&str> = act.value.split(';').filter(|part| ["analyte=", "report=", "reason=", "about="].iter().any(|name| part.starts_with(name))).collect();
            format!("{} {} {}", act.kind.code(), act.target.to_text(), about.join(";"))
        };
        let mut seen = BTreeSet::new();
        let acts: Vec<Act> = acts.into_iter().filter(|act| seen.insert(key(act))).collect();
        let cut = cut.min(rows.len() - 1);
        let (first, second) = (table(&rows[..cut]), table(&rows[cut..]));
        let lots = |files: [(&str, &str); 2], acts: &[Act]| -> Vec<(Disposition, Vec<String>)> {
            let mut inspection = inspect(&given, &files.map(|(name, text)| (name, text.as_bytes())));
            inspection.acts.extend(acts.iter().cloned());
            let mut lots: Vec<_> = review(&inspection).lots.into_iter().map(|lot| {
                let mut reasons = said(&lot.reasons);
                reasons.sort_unstable();
                (lot.disposition, reasons)
            }).collect();
            lots.sort();
            lots
        };
        let files = [("lot.csv", first.as_str()), ("more.csv", second.as_str())];
        let [one, other] = files;
        let reversed: Vec<Act> = acts.iter().rev().cloned().collect();
        prop_assert_eq!(lots(files, &acts), lots([other, one], &reversed));
    }
}

/// The search above meets what it is about: over a fixed set of inspections, lots are accepted by results, by lifts and
/// without either, and acts fail to.
#[test]
fn the_search_meets_accepted_lots_of_every_kind() {
    let clean =
        Row { sample: 1, piece: 1, material: 0, lot: 0, class: 0, cadmium: 0, lead: 0, bromine: false };
    let given = "schema = \"plumbline.settings/1\"\nlot_size = 5\nunits_to_take = 1\n[[part]]\npart = \"P-1\"\nmaterials = [\"body\"]\n";
    let lift = |reason: &str| {
        let value = format!("reason={reason};about=;why=x;by=AB;second=CD");
        act(ActKind::Lift, Target::Lot(SUPPLIER.into(), "A-1".into()), value)
    };
    let trust = lift("trust_none");
    let over = Row { lead: 2, ..clean.clone() };
    let names = [SUPPLIER, "A-1", "P-1", "body"].map(str::to_owned);
    let value = "analyte=Pb;value=<5 mg/kg;method=m;laboratory=l;date=2026-11-20;report=R-1";
    let result = act(ActKind::Laboratory, Target::LotMaterial(names), value.into());
    for (rows, acts, expected) in [
        (vec![clean.clone()], vec![trust.clone()], Disposition::Accept),
        (vec![clean], vec![], Disposition::Hold),
        (vec![over.clone()], vec![trust.clone(), result.clone()], Disposition::Accept),
        (vec![over.clone()], vec![result], Disposition::Hold),
        (vec![over.clone()], vec![trust.clone(), lift("over_limit")], Disposition::NotAccept),
        (
            vec![over.clone(), Row { lead: 0, piece: 2, sample: 2, ..over }],
            vec![trust, act(ActKind::SetAside, Target::Reading("lot.csv".into(), 2), "x".into())],
            Disposition::Hold,
        ),
    ] {
        let (_, findings) = reviewed(given, &rows, &acts);
        assert_eq!(findings.lots[0].disposition, expected, "{:#?}", said(&findings.lots[0].reasons));
    }
}
