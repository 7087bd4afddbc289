//! The operating characteristic: with which chance a plan accepts what share of nonconforming units.
//!
//! For a lot of known size by the hypergeometric distribution; for the process a lot came from, or a lot far larger than
//! the sample, by the binomial one.

use crate::statistics;

/// The chances of acceptance, in percent, at which a plan is described (common practice: the risks of the one who
/// delivers, of nobody, and of the one who receives).
pub const RISK_POINTS: [u8; 3] = [95, 50, 10];

/// Rounding of a chance: a tie may miss by this much and is still one.
const ROUNDING: f64 = 1e-12;

/// What a chance is lifted by, where it would be too small for a float.
const TINY: f64 = 1e-200;

/// The chance that at most `ac` of `n` units taken are nonconforming, of a lot of `lot_size` with `nonconforming` of them.
pub fn accepted(lot_size: u64, nonconforming: u64, n: u64, ac: u64) -> f64 {
    let (n, bad) = (n.min(lot_size), nonconforming.min(lot_size));
    let good = lot_size - bad;
    // The fewest that can be found, and the chance of just so many: a product of as few factors as possible.
    let first = n.saturating_sub(good);
    if ac < first {
        return 0.0;
    }
    if ac >= n.min(bad) {
        return 1.0;
    }
    // Just the fewest: nothing found, or all good ones taken. Each has two products; the shorter one is taken.
    let (times, of) = if first == 0 {
        (n.min(bad), lot_size - n.max(bad))
    } else if good < lot_size - n {
        (good, n)
    } else {
        (lot_size - n, bad)
    };
    let mut term = 1.0;
    // How many times the chance was made larger so that it does not vanish on the way: a lot of which a third was found bad has
    // next to no chance of none.
    let mut lifted = 0_u32;
    for at in 0..times {
        term *= (of - at) as f64 / (lot_size - at) as f64;
        if term < TINY {
            if ac == 0 {
                return 0.0;
            }
            term /= TINY;
            lifted += 1;
        }
    }
    let mut sum = term;
    for found in first..ac {
        term *= (bad - found) as f64 * (n - found) as f64;
        term /= (found + 1) as f64 * (good + found + 1 - n) as f64;
        sum += term;
        if lifted > 0 && sum > 1.0 / TINY {
            (term, sum) = (term * TINY, sum * TINY);
            lifted -= 1;
        }
    }
    // Lifted twice, less is left than any risk is asked for.
    match lifted {
        0 => sum.min(1.0),
        1 => (sum * TINY).min(1.0),
        _ => 0.0,
    }
}

/// The chance that at most `ac` of `n` units are nonconforming where this share of all is (binomial distribution).
pub fn accepted_of_many(n: u32, ac: u32, share: f64) -> f64 {
    statistics::binomial_at_most(ac, n, share)
}

/// The share nonconforming that is accepted with this chance (binomial distribution), by halving.
///
/// # Errors
/// `None` where the plan accepts anything.
pub fn share_at(n: u32, ac: u32, chance: f64) -> Option<f64> {
    if ac >= n {
        return None;
    }
    let (mut low, mut high) = (0.0, 1.0);
    for _ in 0..100 {
        let middle = f64::midpoint(low, high);
        if accepted_of_many(n, ac, middle) >= chance { low = middle } else { high = middle }
    }
    Some(low)
}

/// The most nonconforming units a lot may have and be accepted with at least this chance, in percent.
pub fn units_at(lot_size: u64, n: u64, ac: u64, percent: u8) -> u64 {
    let wanted = f64::from(percent) / 100.0 * (1.0 - ROUNDING);
    last(0, lot_size, |nonconforming| accepted(lot_size, nonconforming, n, ac) >= wanted)
}

/// The last of `from..=to` of which something holds that holds of the first and, once it does not, of none.
pub(super) fn last(from: u64, to: u64, holds: impl Fn(u64) -> bool) -> u64 {
    let (mut low, mut high) = (from, to);
    while low < high {
        let middle = high - (high - low) / 2;
        if holds(middle) { low = middle } else { high = middle - 1 }
    }
    low
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn certain_things_are_certain() {
        assert!((accepted(100, 0, 20, 0) - 1.0).abs() < f64::EPSILON);
        assert!(accepted(100, 100, 20, 0).abs() < f64::EPSILON);
        assert!((accepted(100, 3, 100, 3) - 1.0).abs() < f64::EPSILON);
        assert!(accepted(100, 4, 100, 3).abs() < f64::EPSILON);
        // 9 of 10 taken, 5 bad: at least 4 are found, and just 4 with
        // C(5,4) C(5,5) / C(10,9) = 5/10.
        assert!((accepted(10, 5, 9, 4) - 0.5).abs() < 1e-15);
        assert!((accepted(10, 5, 9, 5) - 1.0).abs() < f64::EPSILON);
    }

    #[test]
    fn chances_do_not_vanish_where_most_of_the_way_is_unlikely() {
        // Near half of a third: against the binomial distribution, which a lot that large is as good as.
        for (n, ac, share) in
            [(3_000, 1_000, 0.3333), (3_000, 900, 0.3), (2_000, 1_999, 0.9995), (20_000, 10_050, 0.5)]
        {
            let lot_size = 1_000_000_000;
            let found = accepted(lot_size, (share * lot_size as f64) as u64, n, ac);
            let wanted = accepted_of_many(n as u32, ac as u32, share);
            assert!((found - wanted).abs() < 1e-4 && found > 0.1, "{n} {ac}: {found} {wanted}");
        }
        // Both ends of the distribution, counted the other way round: at most k bad found is at least n - k good found.
        for (lot_size, bad, n) in [(60, 20, 45), (60, 45, 20), (60, 45, 50), (60, 58, 10)] {
            for ac in 0..n {
                let good_found =
                    1.0 - if n - ac > 0 { accepted(lot_size, lot_size - bad, n, n - ac - 1) } else { 0.0 };
                let found = accepted(lot_size, bad, n, ac);
                assert!(
                    (found - good_found).abs() < 1e-12,
                    "{lot_size} {bad} {n} {ac}: {found} {good_found}"
                );
            }
        }
        assert!(accepted(1_000_000_000, 500_000_000, 500_000_000, 0) < 1e-100);
    }

    #[test]
    fn risk_points_are_whole_units() {
        // One unit of twenty taken: 19/20 is just 95 %.
        assert_eq!(units_at(20, 1, 0, 95), 1);
        assert_eq!(units_at(20, 1, 0, 50), 10);
        assert_eq!(units_at(20, 1, 0, 10), 18);
        assert_eq!(units_at(20, 20, 0, 10), 0);
    }
}
