//! Numbers that look like chance and are the same in every run.

/// A generator that starts from a seed: `SplitMix64` (public domain, Sebastiano Vigna).
#[derive(Clone, Debug)]
pub struct Chance(u64);

impl Chance {
    /// Starts from a seed.
    pub const fn new(seed: u64) -> Chance {
        Chance(seed)
    }

    /// The next 64 bits.
    pub fn bits(&mut self) -> u64 {
        self.0 = self.0.wrapping_add(0x9E37_79B9_7F4A_7C15);
        let mut mixed = self.0;
        mixed = (mixed ^ (mixed >> 30)).wrapping_mul(0xBF58_476D_1CE4_E5B9);
        mixed = (mixed ^ (mixed >> 27)).wrapping_mul(0x94D0_49BB_1331_11EB);
        mixed ^ (mixed >> 31)
    }

    /// A number below `end`; zero where there is none.
    pub fn below(&mut self, end: usize) -> usize {
        if end == 0 { 0 } else { (self.bits() % end as u64) as usize }
    }

    /// True once in `times`.
    pub fn once_in(&mut self, times: usize) -> bool {
        self.below(times) == 0
    }

    /// One of a list.
    pub fn pick<'a, T>(&mut self, list: &'a [T]) -> &'a T {
        &list[self.below(list.len())]
    }
}
