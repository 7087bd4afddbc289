//! Which units to take: a list without repeats that anyone can make again from the seed printed with it.

use std::collections::BTreeSet;

/// The generator `SplitMix64`: small, public, and the same everywhere.
///
/// # Source
/// G. L. Steele, D. Lea, C. H. Flood, Fast splittable pseudorandom number generators, OOPSLA 2014; constants as in the public
/// domain `splitmix64.c` of S. Vigna (2015).
#[derive(Clone, Copy, Debug)]
pub struct SplitMix64(u64);

impl SplitMix64 {
    /// A generator that starts from a seed.
    pub const fn new(seed: u64) -> SplitMix64 {
        SplitMix64(seed)
    }

    /// The next number.
    pub const fn next(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9e37_79b9_7f4a_7c15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xbf58_476d_1ce4_e5b9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94d0_49bb_1331_11eb);
        mixed ^ (mixed >> 31)
    }

    /// A number from 1 to `most`, each with the same chance: numbers that would favour some are drawn again.
    pub const fn from_one_to(&mut self, most: u64) -> u64 {
        let over = (u64::MAX % most + 1) % most;
        loop {
            let drawn = self.next();
            if drawn <= u64::MAX - over {
                return drawn % most + 1;
            }
        }
    }
}

/// `n` of the numbers 1 to `lot_size`, in order, each set of them with the same chance. All of them where `n` is not smaller.
///
/// # Source
/// R. W. Floyd's algorithm (J. Bentley, Programming pearls: a sample of brilliance, Communications of the ACM 30(9), 1987):
/// one number drawn for each unit, and no room for those not taken.
pub fn list(seed: u64, lot_size: u64, n: u64) -> Vec<u64> {
    if n >= lot_size {
        return (1..=lot_size).collect();
    }
    let mut numbers = SplitMix64::new(seed);
    let mut taken = BTreeSet::new();
    for last in lot_size - n + 1..=lot_size {
        let drawn = numbers.from_one_to(last);
        if !taken.insert(drawn) {
            taken.insert(last);
        }
    }
    taken.into_iter().collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::statistics::chi_square_upper;

    /// Source: values of `splitmix64.c` for seed 1234567, as published at Rosetta Code, Pseudo-random numbers/Splitmix64; for
    /// seed 0 the first two that the implementations of others are held to.
    #[test]
    fn the_generator_is_the_published_one() {
        let mut numbers = SplitMix64::new(1_234_567);
        for wanted in [
            6_457_827_717_110_365_317,
            3_203_168_211_198_807_973,
            9_817_491_932_198_370_423,
            4_593_380_528_125_082_431,
            16_408_922_859_458_223_821,
        ] {
            assert_eq!(numbers.next(), wanted);
        }
        let mut numbers = SplitMix64::new(0);
        assert_eq!([numbers.next(), numbers.next()], [0xe220_a839_7b1d_cdaf, 0x6e78_9e6a_a1b9_65f4]);
    }

    #[test]
    fn a_list_has_n_different_units_in_order() {
        for (lot_size, n) in [(1, 1), (5, 0), (5, 4), (5, 5), (5, 9), (480, 56), (1_000_000_000, 59)] {
            let found = list(7, lot_size, n);
            assert_eq!(found.len() as u64, n.min(lot_size));
            assert!(
                found.is_sorted_by(|a, b| a < b) && found.iter().all(|unit| (1..=lot_size).contains(unit))
            );
            assert_eq!(found, list(7, lot_size, n));
        }
        assert_ne!(list(7, 480, 56), list(8, 480, 56));
        // The list a person may check by hand against another implementation.
        assert_eq!(list(7, 20, 5), LIST_OF_SEVEN);
    }
    const LIST_OF_SEVEN: [u64; 5] = [1, 8, 12, 15, 17];

    /// Seeds 1 to 20 000, five of twelve units: each unit, and each pair of units, as often as the others. The seeds are
    /// fixed, so that this holds on every run or on none.
    #[test]
    fn units_and_pairs_of_units_are_taken_equally_often() {
        let (mut single, mut pairs) = ([0_u32; 13], [[0_u32; 13]; 13]);
        for seed in 1..=20_000 {
            let found = list(seed, 12, 5);
            for (at, unit) in found.iter().enumerate() {
                single[*unit as usize] += 1;
                for other in &found[at + 1..] {
                    pairs[*unit as usize][*other as usize] += 1;
                }
            }
        }
        let chi_square = |counts: &[u32], variance_left: f64| {
            let mean = f64::from(counts.iter().sum::<u32>()) / counts.len() as f64;
            let off = |count: &u32| f64::from(*count) - mean;
            counts.iter().map(|count| off(count) * off(count) / mean).sum::<f64>() / variance_left
        };
        // Without replacement a unit's counts vary by 1 - n/N less, and are one short of free: (N-1) degrees after dividing by
        // (1 - n/N) N / (N - 1).
        let units = chi_square(&single[1..], (1.0 - 5.0 / 12.0) * 12.0 / 11.0);
        let p = chi_square_upper(units, 11);
        assert!((0.001..0.999).contains(&p), "{units} {p}");
        // Pairs are not independent; so each has to lie within four standard deviations of its mean.
        let (share, seeds) = (5.0 * 4.0 / (12.0 * 11.0), 20_000.0_f64);
        let above = |(one, row): (usize, &[u32; 13])| row.iter().skip(one + 1).copied().collect::<Vec<_>>();
        let counts: Vec<u32> = pairs.iter().enumerate().skip(1).flat_map(above).collect();
        assert_eq!(counts.len(), 66);
        for count in counts {
            let off = f64::from(count) - share * seeds;
            assert!(off.abs() < 4.0 * (share * (1.0 - share) * seeds).sqrt(), "{count}");
        }
    }
}
