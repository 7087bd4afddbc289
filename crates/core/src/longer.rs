//! How long a measurement would have to take to decide.
//!
//! Counting shrinks one part of the uncertainty with time, u(t)² = r² t0 / t + c²; the constant part c (calibration,
//! geometry) it does not. At the time where a value like this one would just be decided, the next reading, which scatters
//! by its own counting part, has an even chance to be conclusive; for nine chances in ten it takes two to three times
//! longer. Dead time and changes of the tube are outside the model: these are estimates, to be called so.
//!
//! # Source
//! Counting statistics: US EPA Method 6200, 9.5 (four times the time is twice the precision). The formulas for the two
//! times are our own derivation, held against scipy's root finder in `tests/tests/outside_checks.rs`.

use crate::quantity::{Coverage, MassFraction, Sigma};
use crate::reading::codes;
use crate::statistics;

/// The chance of the surer of the two times to leave the outcome open: one in ten (our choice).
const STAYS_OPEN: f64 = 0.1;

/// A value, with what is known of how its uncertainty came about.
#[derive(Clone, Copy, Debug)]
pub struct Timed {
    /// The value in mg/kg.
    pub value: MassFraction,
    /// One sigma of counting alone, at the time it took.
    pub counting: Sigma,
    /// One sigma of what no time removes; zero where it isn't known.
    pub constant: MassFraction,
    /// How long it took, in tenths of a second.
    pub deciseconds: u16,
}

codes! {
    /// Why no measuring time settles an outcome.
    Never {
        /// The value lies between the edges of the band, or on the limit: no small uncertainty takes it out.
        InsideEdges => "inside_edges",
        /// The part of the uncertainty that time does not remove is too large by itself.
        ConstantPart => "constant_part",
        /// It would take longer than anybody measures one spot.
        TooLong => "too_long",
        /// The time this reading took, or its uncertainty, is not known.
        NotKnown => "not_known",
    }
}

/// How long would be long enough.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Longer {
    /// In whole seconds, rounded up.
    Seconds {
        /// For an even chance.
        even: u32,
        /// For a chance of 90 %; `None` where that takes longer than the cap.
        surely: Option<u32>,
    },
    /// No measuring time can.
    Never(Never),
}

impl Longer {
    /// Seconds for an even chance.
    pub const fn even(self) -> Option<u32> {
        match self {
            Longer::Seconds { even, .. } => Some(even),
            Longer::Never(_) => None,
        }
    }

    /// Seconds for a chance of 90 %.
    pub const fn surely(self) -> Option<u32> {
        match self {
            Longer::Seconds { surely, .. } => surely,
            Longer::Never(_) => None,
        }
    }
}

/// How long until a value is decided against a band: below its low edge or over its high one, by `k` sigma.
///
/// # Units
/// mg/kg, seconds. `high` is `None` where nothing is ever over. `cap` is the longest time that is suggested.
///
/// # Decision
/// A value under the low edge: `k u(t) <= low - x`. Since `k u(t)` has to stay under the low edge itself for "below", a
/// negative value counts as zero here. A value over the high edge: `k u(t) <= x - high`.
pub fn for_band(
    timed: Timed,
    low: MassFraction,
    high: Option<MassFraction>,
    k: Coverage,
    cap: u32,
) -> Longer {
    let x = timed.value.units();
    let under = low.units() - x.max(0);
    let over = high.map_or(0, |high| x - high.units());
    time_for(timed, under.max(over), k, cap)
}

/// How long until a value is decided against a single limit, on whichever side of it the value lies: `k u(t) <= |x - L|`.
///
/// # Units
/// mg/kg, seconds. `cap` is the longest time that is suggested.
pub fn for_limit(timed: Timed, limit: MassFraction, k: Coverage, cap: u32) -> Longer {
    time_for(timed, (timed.value.units() - limit.units()).abs(), k, cap)
}

fn time_for(timed: Timed, distance: i64, k: Coverage, cap: u32) -> Longer {
    let Some(distance) = u128::try_from(distance).ok().filter(|distance| *distance > 0) else {
        return Longer::Never(Never::InsideEdges);
    };
    if timed.counting.is_zero() || timed.deciseconds == 0 {
        return Longer::Never(Never::NotKnown);
    }
    let Some(deciseconds) = even_chance(timed, distance, k) else {
        return Longer::Never(Never::ConstantPart);
    };
    // A reading as long as this one needs no more than it took.
    let even = deciseconds.div_ceil(10).max(u128::from(timed.deciseconds).div_ceil(10));
    match u32::try_from(even) {
        Ok(even) if even <= cap => {
            Longer::Seconds { even, surely: nine_in_ten(timed, distance, k, even, cap) }
        }
        _ => Longer::Never(Never::TooLong),
    }
}

/// Smallest number of tenths of a second t with k² (r² t0 / t + c²) <= distance², in whole numbers; `None` where the
/// constant part alone reaches the distance.
fn even_chance(timed: Timed, distance: u128, k: Coverage) -> Option<u128> {
    // k² in hundredths. distance < 2e13 and counting < 2e12 units, so the other products stay below 1e33.
    let k_squared = u128::from(k.tenths()) * u128::from(k.tenths());
    let constant = u128::try_from(timed.constant.units()).unwrap_or(0);
    // A constant part beyond all bounds is one that reaches the distance, too.
    let needed = k_squared.checked_mul(constant * constant)?;
    let room = (100 * distance * distance).checked_sub(needed).filter(|room| *room > 0)?;
    let counting = u128::from(timed.counting.to_mass_fraction().units().unsigned_abs());
    Some((k_squared * counting * counting * u128::from(timed.deciseconds)).div_ceil(room))
}

/// Smallest number of whole seconds t with k u(t) + z r sqrt(t0 / t) <= distance, z the quantile of 90 %, found by halving
/// between the even chance and the cap.
fn nine_in_ten(timed: Timed, distance: u128, k: Coverage, even: u32, cap: u32) -> Option<u32> {
    let z = statistics::normal_upper_quantile(STAYS_OPEN)?;
    let took = f64::from(timed.deciseconds) / 10.0;
    let counting = timed.counting.to_mg_per_kg();
    let constant = timed.constant.to_mg_per_kg().max(0.0);
    let distance = MassFraction::from_units(i64::try_from(distance).ok()?).to_mg_per_kg();
    let enough = |seconds: u32| {
        let random = counting * (took / f64::from(seconds)).sqrt();
        k.to_f64() * (random * random + constant * constant).sqrt() + z * random <= distance
    };
    if !enough(cap) {
        return None;
    }
    let (mut short, mut long) = (even.saturating_sub(1), cap);
    while long - short > 1 {
        let middle = u32::midpoint(short, long);
        if enough(middle) {
            long = middle;
        } else {
            short = middle;
        }
    }
    Some(long)
}

/// An open outcome that longer measuring may settle.
#[derive(Clone, Copy, Debug)]
pub struct Open {
    /// Which reading it is an outcome of.
    pub reading: usize,
    /// What its time would be.
    pub longer: Longer,
}

/// What measuring longer costs and what it settles.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Effort {
    /// How many readings are measured again.
    pub readings: usize,
    /// The longest of them, in seconds.
    pub longest: u32,
    /// All of them together, in seconds.
    pub total: u64,
    /// How many open outcomes that settles.
    pub settles: usize,
}

/// "n readings of at most m seconds settle k of your l open outcomes".
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Plan {
    /// How many outcomes are open.
    pub open: usize,
    /// With an even chance for each.
    pub even: Effort,
    /// With a chance of 90 % for each.
    pub surely: Effort,
}

/// Adds up what measuring longer would settle. One new measurement of a reading serves all its open outcomes that time
/// can settle, and takes as long as the slowest of them.
pub fn plan(outcomes: &[Open]) -> Plan {
    Plan {
        open: outcomes.len(),
        even: effort(outcomes, Longer::even),
        surely: effort(outcomes, Longer::surely),
    }
}

fn effort(outcomes: &[Open], seconds: impl Fn(Longer) -> Option<u32>) -> Effort {
    let mut times: Vec<(usize, u32)> = outcomes
        .iter()
        .filter_map(|open| seconds(open.longer).map(|seconds| (open.reading, seconds)))
        .collect();
    let settles = times.len();
    // The longest time of each reading comes first and stays.
    times.sort_unstable_by(|one, other| one.0.cmp(&other.0).then(other.1.cmp(&one.1)));
    times.dedup_by_key(|(reading, _)| *reading);
    Effort {
        readings: times.len(),
        longest: times.iter().map(|(_, seconds)| *seconds).max().unwrap_or(0),
        total: times.iter().map(|(_, seconds)| u64::from(*seconds)).sum(),
        settles,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const HALF_AN_HOUR: u32 = 1_800;

    fn mg(text: &str) -> MassFraction {
        crate::quantity::parse_with_unit(&format!("{text} mg/kg")).unwrap()
    }

    fn timed(value: &str, counting: &str, constant: &str, deciseconds: u16) -> Timed {
        let counting = Sigma::from_one_sigma(mg(counting)).unwrap();
        Timed { value: mg(value), counting, constant: mg(constant), deciseconds }
    }

    fn two() -> Coverage {
        Coverage::from_tenths(20).unwrap()
    }

    fn lead(value: &str, counting: &str, constant: &str) -> Longer {
        let timed = timed(value, counting, constant, 300);
        for_band(timed, mg("700"), Some(mg("1300")), Coverage::THREE, HALF_AN_HOUR)
    }

    /// t = 30 (3 x 40 / 60)² = 120 s; 90 %: 120 ((3 + 1.28155) / 3)² = 244.4 s.
    #[test]
    fn four_times_the_time_halves_the_sigma_on_both_sides_of_the_band() {
        let expected = Longer::Seconds { even: 120, surely: Some(245) };
        assert_eq!(lead("640", "40", "0"), expected);
        assert_eq!(lead("1360", "40", "0"), expected);
        assert_eq!((expected.even(), expected.surely()), (Some(120), Some(245)));
    }

    #[test]
    fn a_moment_more_is_rounded_up_to_a_second() {
        // 30 x (3 x 40.001 / 60)² = 120.006 s.
        assert_eq!(lead("640", "40.001", "0").even(), Some(121));
        // 30 x (3 x 39.99 / 60)² = 119.94 s.
        assert_eq!(lead("640", "39.99", "0").even(), Some(120));
    }

    #[test]
    fn inside_the_edges_no_time_can_decide() {
        for value in ["700", "1000", "1300"] {
            assert_eq!(lead(value, "40", "0"), Longer::Never(Never::InsideEdges), "{value}");
        }
        let chromium = for_band(timed("800", "40", "0", 300), mg("700"), None, Coverage::THREE, HALF_AN_HOUR);
        assert_eq!(chromium, Longer::Never(Never::InsideEdges), "nothing is ever over");
        let below = for_band(timed("640", "40", "0", 300), mg("700"), None, Coverage::THREE, HALF_AN_HOUR);
        assert_eq!(below.even(), Some(120));
        assert_eq!((chromium.even(), chromium.surely()), (None, None));
    }

    /// 3 x 20 = 60 is the whole distance; with 19.9 it takes 30 x 9 x 1600 / (3600 - 9 x 396.01) = 12030 s.
    #[test]
    fn a_constant_part_that_reaches_the_edge_alone_is_said() {
        assert_eq!(lead("640", "40", "20"), Longer::Never(Never::ConstantPart));
        assert_eq!(lead("640", "40", "21"), Longer::Never(Never::ConstantPart));
        let mut absurd = timed("640", "40", "0", 300);
        absurd.constant = MassFraction::from_units(i64::MAX);
        let found = for_limit(absurd, mg("700"), Coverage::THREE, HALF_AN_HOUR);
        assert_eq!(found, Longer::Never(Never::ConstantPart));
        assert_eq!(lead("640", "40", "19.9"), Longer::Never(Never::TooLong));
        let patient = for_band(timed("640", "40", "19.9", 300), mg("700"), None, Coverage::THREE, 1_000_000);
        assert_eq!(patient.even(), Some(12_031));
    }

    #[test]
    fn more_than_the_cap_is_not_suggested() {
        assert_eq!(lead("699", "40", "0"), Longer::Never(Never::TooLong));
        // 30 x (3 x 40 / 15.5)² = 1798.13 s is within the cap, 90 % is not.
        assert_eq!(lead("684.5", "40", "0"), Longer::Seconds { even: 1_799, surely: None });
        // 30 x (120 / d)² = 1800 at d = 15.49193...
        let at_cap = for_band(timed("640", "40", "0", 300), mg("700"), None, Coverage::THREE, 120);
        assert_eq!(at_cap, Longer::Seconds { even: 120, surely: None });
        let under = for_band(timed("640", "40", "0", 300), mg("700"), None, Coverage::THREE, 119);
        assert_eq!(under, Longer::Never(Never::TooLong));
        let exactly = for_band(timed("640", "40", "0", 300), mg("700"), None, Coverage::THREE, 245);
        assert_eq!(exactly.surely(), Some(245));
        let short = for_band(timed("640", "40", "0", 300), mg("700"), None, Coverage::THREE, 244);
        assert_eq!(short.surely(), None);
    }

    #[test]
    fn without_a_time_or_an_uncertainty_nothing_is_said() {
        assert_eq!(lead("640", "0", "0"), Longer::Never(Never::NotKnown));
        let no_time = for_limit(timed("95", "4", "0", 0), mg("100"), two(), HALF_AN_HOUR);
        assert_eq!(no_time, Longer::Never(Never::NotKnown));
    }

    /// A negative value is as far from the edge as zero: three sigma themselves have to stay under it.
    #[test]
    fn a_negative_value_counts_as_zero() {
        // 30 x (3 x 300 / 700)² = 49.6 s.
        assert_eq!(lead("-100", "300", "0"), lead("0", "300", "0"));
        assert_eq!(lead("0", "300", "0").even(), Some(50));
    }

    /// The check values of scipy 1.17.1 (brentq): 76.8 and 206.757 s; with a constant part of 1: 91.43 and 276.02 s.
    #[test]
    fn a_single_limit_is_decided_from_either_side() {
        let far = 100_000;
        let at = |value, constant| for_limit(timed(value, "4", constant, 300), mg("100"), two(), far);
        assert_eq!(at("95", "0"), Longer::Seconds { even: 77, surely: Some(207) });
        assert_eq!(at("105", "0"), Longer::Seconds { even: 77, surely: Some(207) });
        assert_eq!(at("95", "1"), Longer::Seconds { even: 92, surely: Some(277) });
        assert_eq!(at("95", "2.5"), Longer::Never(Never::ConstantPart));
        assert_eq!(at("95", "-1"), at("95", "0"), "a negative constant part is none");
        assert_eq!(at("100", "0"), Longer::Never(Never::InsideEdges));
        assert_eq!(at("99.5", "0"), Longer::Seconds { even: 7_680, surely: Some(20_676) });
    }

    /// A reading that was long enough takes no more time than it took; for 90 % it may have to be longer or shorter.
    #[test]
    fn a_reading_that_was_long_enough_asks_for_no_more() {
        let done = for_limit(timed("50", "4", "0", 305), mg("100"), two(), HALF_AN_HOUR);
        assert_eq!(done, Longer::Seconds { even: 31, surely: Some(31) });
        let nearly = for_limit(timed("91", "4", "0", 300), mg("100"), two(), HALF_AN_HOUR);
        assert_eq!(nearly.even(), Some(30));
        // 30 x ((2 + 1.28155) x 4 / 9)² = 63.8 s.
        assert_eq!(nearly.surely(), Some(64));
        let shortest = for_limit(timed("0", "0.001", "0", 1), mg("100"), two(), 1);
        assert_eq!(shortest, Longer::Seconds { even: 1, surely: Some(1) });
    }

    #[test]
    fn one_new_measurement_serves_all_outcomes_of_a_reading() {
        let open = |reading, even, surely| Open { reading, longer: Longer::Seconds { even, surely } };
        let never = |reading| Open { reading, longer: Longer::Never(Never::InsideEdges) };
        let found = plan(&[
            open(4, 60, Some(150)),
            never(4),
            open(1, 30, Some(90)),
            open(4, 100, None),
            open(4, 70, Some(170)),
            never(9),
        ]);
        assert_eq!(found.open, 6);
        assert_eq!(found.even, Effort { readings: 2, longest: 100, total: 130, settles: 4 });
        assert_eq!(found.surely, Effort { readings: 2, longest: 170, total: 260, settles: 3 });
        assert_eq!(plan(&[]), Plan::default());
        assert_eq!(plan(&[never(1)]), Plan { open: 1, ..Plan::default() });
    }
}
