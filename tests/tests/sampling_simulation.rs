//! Ten thousand invented lots through plan, random list, readings, file and review: accepted as often as the operating
//! characteristic says.

use std::collections::BTreeMap;
use std::fmt::Write;

use plumbline_core::inspection::review;
use plumbline_core::lot::Disposition;
use plumbline_core::sampling::{PlanSaid, accepted, list};
use plumbline_tests::chance::Chance;
use plumbline_tests::program::inspect;

const LOTS: u64 = 10_000;
const LOT_SIZE: u64 = 60;

/// What a unit of an invented lot is. Lead in a metal: below, over, or undecided by the built-in bands.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Unit {
    Good,
    Undecided,
    Over,
}

impl Unit {
    fn lead(self) -> &'static str {
        match self {
            Unit::Good => "5,1",
            Unit::Undecided => "1000,30",
            Unit::Over => "1900,30",
        }
    }
}

/// A lot with so many units that are not good, anywhere.
fn lot(chance: &mut Chance, not_good: usize) -> Vec<Unit> {
    let mut units = vec![Unit::Good; LOT_SIZE as usize];
    let mut placed = 0;
    while placed < not_good {
        let at = chance.below(units.len());
        if units[at] == Unit::Good {
            // One in four of them is not over, only undecided: it must count against the lot all the same.
            units[at] = if chance.once_in(4) { Unit::Undecided } else { Unit::Over };
            placed += 1;
        }
    }
    units
}

fn simulate(plan: &str, settings_of_plan: &str, seed: u64) {
    let n = PlanSaid::parse(plan).expect("a plan").rule.for_lot(LOT_SIZE).n;
    assert!((2..LOT_SIZE).contains(&n), "{n}");
    let mut chance = Chance::new(seed);
    let mut text = String::from(
        "Sample,Unit,Part,Material,Lot,Supplier,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\n",
    );
    // Lot numbers have one width, so that lots come out in their own order.
    let mut lots: Vec<(usize, Vec<Unit>)> = Vec::new();
    for number in 0..LOTS {
        let not_good = *chance.pick(&[0, 1, 1, 2, 3, 5, 8, 12]);
        let units = lot(&mut chance, not_good);
        let taken = list(chance.bits(), LOT_SIZE, n);
        assert_eq!(taken.len() as u64, n);
        for unit in &taken {
            let lead = units[*unit as usize - 1].lead();
            writeln!(
                text,
                "L{number:05}-{unit},{unit},P-1,pin,L{number:05},Elm,metal,1,0.5,{lead},1,0.5,5,1"
            )
            .expect("a String takes all");
        }
        lots.push((not_good, taken.into_iter().map(|unit| units[unit as usize - 1]).collect()));
    }
    let settings = format!(
        "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nlot_size = {LOT_SIZE}\n\n[[part]]\npart = \"P-1\"\n\
         materials = [\"pin\"]\n\n[[sampling_plan]]\n{settings_of_plan}\n"
    );
    let inspection = inspect(&settings, &[("lots.csv", text.as_bytes())]);
    let findings = review(&inspection);
    assert_eq!(findings.lots.len() as u64, LOTS);

    // By how many units of the lot are not good: how many lots there were, and how many were accepted.
    let mut counts: BTreeMap<usize, (f64, f64)> = BTreeMap::new();
    for ((not_good, taken), found) in lots.iter().zip(&findings.lots) {
        let wanted = match (taken.contains(&Unit::Over), taken.contains(&Unit::Undecided)) {
            (true, _) => Disposition::NotAccept,
            (false, true) => Disposition::Hold,
            (false, false) => Disposition::Accept,
        };
        assert_eq!(found.disposition, wanted, "{found:?}");
        let sampling = found.sampling.as_ref().expect("a plan");
        assert_eq!((sampling.wanted, sampling.measured), (Some(n), n));
        let good = taken.iter().filter(|unit| **unit == Unit::Good).count() as u64;
        assert_eq!(
            (sampling.conforming, sampling.conforming + sampling.undecided + sampling.over),
            (good, n)
        );
        let (of, accepted) = counts.entry(*not_good).or_default();
        *of += 1.0;
        *accepted += f64::from(u8::from(found.disposition == Disposition::Accept));
    }
    let (mut expected, mut variance, mut total) = (0.0, 0.0, 0.0);
    for (not_good, (of, counted)) in counts {
        let chance = accepted(LOT_SIZE, not_good as u64, n, 0);
        let error = (of * chance * (1.0 - chance)).sqrt();
        assert!((counted - of * chance).abs() <= 4.0 * error, "{not_good}: {counted} of {of} for {chance}");
        expected += of * chance;
        variance += error * error;
        total += counted;
    }
    assert!((total - expected).abs() <= 4.0 * variance.sqrt(), "{total} accepted for {expected}");
    assert!(total > 1_000.0 && total < 9_000.0, "{total}");
}

#[test]
fn lots_under_zero_acceptance_are_accepted_as_often_as_the_curve_says() {
    simulate(
        "rule=zero_acceptance;confidence=80;share=10",
        "rule = \"zero_acceptance\"\nconfidence = 80\nshare = 10",
        20_261_126,
    );
}

/// The table would accept on one; the acceptance number of a restricted substance is 0, and the curve is that of 0.
#[test]
fn lots_under_a_plan_of_the_tables_are_accepted_as_often_as_the_curve_of_zero_says() {
    simulate("rule=single;level=II;aql=4.0", "rule = \"single\"\nlevel = \"II\"\naql = 4.0", 4_015);
}
