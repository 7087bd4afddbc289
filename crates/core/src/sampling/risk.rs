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
    // Nothing found: the good among all; or all but the last m bad ones found: the bad among all.
    let (times, of) = if first == 0 { (n.min(bad), lot_size - n.max(bad)) } else { (lot_size - n, bad) };
    let mut term = 1.0;
    for at in 0..times {
        term *= (of - at) as f64 / (lot_size - at) as f64;
    }
    let mut sum = term;
    for found in first..ac {
        term *= (bad - found) as f64 * (n - found) as f64;
        term /= (found + 1) as f64 * (good + found + 1 - n) as f64;
        sum += term;
    }
    sum.min(1.0)
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
    fn risk_points_are_whole_units() {
        // One unit of twenty taken: 19/20 is just 95 %.
        assert_eq!(units_at(20, 1, 0, 95), 1);
        assert_eq!(units_at(20, 1, 0, 50), 10);
        assert_eq!(units_at(20, 1, 0, 10), 18);
        assert_eq!(units_at(20, 20, 0, 10), 0);
    }
}
