//! Plans that accept on nothing found, and what nothing found shows: exact, because ties are common.
//!
//! With D of N units nonconforming, the chance to find none among n is (N-D)(N-D-1).../(N(N-1)...), n factors each
//! (hypergeometric distribution). The smallest n is asked for where that is at most 1 - C. A float settles all but the
//! cases that lie within [`SLACK`] of 1 - C; those are decided by whole numbers.

use super::exact;
use super::risk;

/// Hundredths of a percent in a whole.
const WHOLE: u64 = 10_000;

/// How near to 1 - C, relative to it, the float no longer decides. Each of at most 100 000 steps adds at most
/// 4e-16, so the float is off by less than 4e-11.
const SLACK: f64 = 1e-9;

/// How many nonconforming units a share of a lot is: rounded up, at least one.
///
/// # Units
/// The share in hundredths of a percent.
pub fn units_of_share(lot_size: u64, share: u32) -> u64 {
    let units = (u128::from(lot_size) * u128::from(share)).div_ceil(u128::from(WHOLE));
    u64::try_from(units).unwrap_or(lot_size).clamp(1, lot_size.max(1))
}

/// The smallest number of units of which none may be nonconforming, so that a lot with `nonconforming` units or more is
/// found out with at least this confidence. All units where nothing less does.
///
/// # Units
/// The confidence in hundredths of a percent.
///
/// # Cost
/// Grows with the answer, which is below 100 000 where at least a ten-thousandth is nonconforming.
pub fn smallest_n(lot_size: u64, nonconforming: u64, confidence: u32) -> u64 {
    let good = lot_size.saturating_sub(nonconforming.max(1));
    let step = |before: u64| good.saturating_sub(before) as f64 / (lot_size - before) as f64;
    let missed = |n| none_found_at_most(lot_size, nonconforming.max(1), n, confidence);
    search(lot_size, confidence, step, missed)
}

/// The same for a lot without end, of which this share is nonconforming (binomial distribution).
///
/// # Units
/// Confidence and share in hundredths of a percent.
pub fn smallest_n_of_many(confidence: u32, share: u32) -> u64 {
    let (good, bad) = (WHOLE.saturating_sub(u64::from(share)), WHOLE - u64::from(confidence).min(WHOLE));
    let missed = |n: u64| {
        let times = |of| std::iter::repeat_n(of, n as usize);
        exact::at_most(times(good).chain([WHOLE]), times(WHOLE).chain([bad]))
    };
    search(u64::MAX, confidence, |_| good as f64 / WHOLE as f64, missed)
}

fn search(most: u64, confidence: u32, step: impl Fn(u64) -> f64, missed: impl Fn(u64) -> bool) -> u64 {
    let wanted = 1.0 - f64::from(confidence) / WHOLE as f64;
    let (mut chance, mut n) = (1.0, 0);
    while n < most {
        chance *= step(n);
        n += 1;
        if chance <= wanted * (1.0 - SLACK) || (chance <= wanted * (1.0 + SLACK) && missed(n)) {
            break;
        }
    }
    n
}

/// Whether the chance to find none is at most 1 - C, in whole numbers.
fn none_found_at_most(lot_size: u64, nonconforming: u64, n: u64, confidence: u32) -> bool {
    if nonconforming.saturating_add(n) > lot_size {
        return true;
    }
    // n and D may change places; the fewer factors are multiplied.
    let (few, many) = (nonconforming.min(n), nonconforming.max(n));
    let missed = (0..few).map(|at| lot_size - many - at).chain([WHOLE]);
    let all = (0..few).map(|at| lot_size - at).chain([WHOLE - u64::from(confidence).min(WHOLE)]);
    exact::at_most(missed, all)
}

/// The most nonconforming units a lot may hold, those found among them, that `found` or fewer among `n` still leave
/// possible: with more, so few would be found with a chance of at most 1 - C.
///
/// # Units
/// The confidence in hundredths of a percent.
///
/// # Errors
/// `None` where more were taken than the lot has, or more found than taken.
///
/// # Decision
/// With none found a tie is decided exactly; else one within `SLACK` counts as possible, which is the safe side.
pub fn at_most_nonconforming(lot_size: u64, n: u64, found: u64, confidence: u32) -> Option<u64> {
    if n > lot_size || found > n {
        return None;
    }
    let wanted = 1.0 - f64::from(confidence) / WHOLE as f64;
    let possible = |nonconforming| {
        let chance = risk::accepted(lot_size, nonconforming, n, found);
        if chance > wanted * (1.0 + SLACK) {
            return true;
        }
        chance > wanted * (1.0 - SLACK)
            && (found > 0 || !none_found_at_most(lot_size, nonconforming, n, confidence))
    };
    Some(risk::last(found, lot_size - n + found, possible))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_tie_is_enough_and_less_is_not() {
        // Five units, one bad, four taken: exactly 1/5 to miss it.
        assert_eq!(smallest_n(5, 1, 8_000), 4);
        assert_eq!(smallest_n(5, 1, 8_001), 5);
        assert!(none_found_at_most(5, 1, 4, 8_000) && !none_found_at_most(5, 1, 3, 8_000));
        // 20 units, one bad: 1 - n/20.
        assert_eq!(smallest_n(20, 1, 9_500), 19);
        assert_eq!(smallest_n(20, 1, 9_501), 20);
        // Half nonconforming without end: 1/4 after two.
        assert_eq!((smallest_n_of_many(7_500, 5_000), smallest_n_of_many(7_501, 5_000)), (2, 3));
    }

    #[test]
    fn a_share_is_rounded_up_and_is_at_least_one_unit() {
        for (lot, share, units) in
            [(280, 500, 14), (281, 500, 15), (3, 1, 1), (1_000_000_000, 1, 100_000), (1, 9_999, 1)]
        {
            assert_eq!(units_of_share(lot, share), units, "{lot} {share}");
        }
    }

    #[test]
    fn lots_of_a_thousand_million_are_no_trouble() {
        assert_eq!(smallest_n(1_000_000_000, 50_000_000, 9_500), 59);
        let n = smallest_n(1_000_000_000, 100_000, 9_999);
        assert!((92_000..92_104).contains(&n), "{n}");
        assert_eq!(smallest_n(1, 1, 1), 1);
        assert_eq!(smallest_n(0, 1, 9_500), 0);
    }

    #[test]
    fn many_found_leave_many_possible() {
        // A third of 3000 found: a third of the lot and more is possible, and not much more.
        let most = at_most_nonconforming(10_000, 3_000, 1_000, 9_500).unwrap();
        assert!((3_400..3_500).contains(&most), "{most}");
        let most = at_most_nonconforming(1_000_000, 1_000, 999, 9_500).unwrap();
        assert!((999_900..1_000_000).contains(&most), "{most}");
    }

    #[test]
    fn what_may_be_left_is_never_less_than_what_was_found() {
        assert_eq!(at_most_nonconforming(10, 10, 3, 9_500), Some(3));
        assert_eq!(at_most_nonconforming(10, 11, 0, 9_500), None);
        assert_eq!(at_most_nonconforming(10, 3, 4, 9_500), None);
        assert_eq!(at_most_nonconforming(10, 0, 0, 9_500), Some(10));
        // Five units, four taken: one bad is missed with exactly 1/5, which is no longer possible at 80 %.
        assert_eq!(at_most_nonconforming(5, 4, 0, 8_000), Some(0));
        assert_eq!(at_most_nonconforming(5, 4, 0, 8_001), Some(1));
    }
}
