//! Numbers from a seed.

use plumbline_core::sampling::SplitMix64;

/// Numbers drawn in a row.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Draw(SplitMix64);

impl Draw {
    /// The row of a seed, a lesson and an exercise of it: each has a row of its own, so that exercise seven is the same
    /// whether or not anybody looked at the six before it.
    pub(crate) const fn new(seed: u64, lesson: u32, number: u32) -> Draw {
        let mixed = SplitMix64::new(seed).next();
        Draw(SplitMix64::new(mixed ^ ((lesson as u64) << 32 | number as u64)))
    }

    /// A whole number from `low` to `high`, both possible.
    pub(crate) fn between(&mut self, low: i64, high: i64) -> i64 {
        let span = u64::try_from(high - low).unwrap_or(0);
        low + i64::try_from(self.0.from_one_to(span + 1) - 1).unwrap_or(0)
    }

    /// A multiple of `step` from `low` to `high`, as near as multiples come.
    pub(crate) fn stepped(&mut self, low: i64, high: i64, step: i64) -> i64 {
        let (from, to) = (low.div_euclid(step) + i64::from(low.rem_euclid(step) != 0), high.div_euclid(step));
        self.between(from, to.max(from)) * step
    }

    /// One of several; nothing of none.
    pub(crate) fn pick<T: Copy>(&mut self, list: &[T]) -> Option<T> {
        let last = i64::try_from(list.len()).ok()?.checked_sub(1).filter(|last| *last >= 0)?;
        list.get(usize::try_from(self.between(0, last)).ok()?).copied()
    }

    /// All of several, in an order of their own (Fisher and Yates).
    pub(crate) fn shuffled<T: Copy>(&mut self, list: &[T]) -> Vec<T> {
        let mut all = list.to_vec();
        for last in (1..all.len()).rev() {
            let other = usize::try_from(self.between(0, last as i64)).unwrap_or(0);
            all.swap(last, other);
        }
        all
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn numbers_stay_within_their_bounds_and_reach_both_ends() {
        let mut draw = Draw::new(7, 1, 1);
        let drawn: Vec<i64> = (0..500).map(|_| draw.between(-2, 3)).collect();
        assert!(drawn.iter().all(|n| (-2..=3).contains(n)));
        assert!([-2, -1, 0, 1, 2, 3].iter().all(|n| drawn.contains(n)));
        let stepped: Vec<i64> = (0..200).map(|_| draw.stepped(11, 39, 10)).collect();
        assert!(
            stepped.iter().all(|n| [20, 30].contains(n)) && stepped.contains(&20) && stepped.contains(&30)
        );
        assert_eq!(draw.pick::<u8>(&[]), None);
    }

    #[test]
    fn an_order_holds_each_once_and_each_exercise_has_numbers_of_its_own() {
        let mut sorted = Draw::new(7, 1, 0).shuffled(&[1, 2, 3, 4, 5]);
        sorted.sort_unstable();
        assert_eq!(sorted, [1, 2, 3, 4, 5]);
        let first = |lesson, number| Draw::new(7, lesson, number).between(0, i64::MAX - 1);
        assert!(first(1, 1) != first(1, 2) && first(1, 1) != first(2, 1));
        assert_eq!(first(1, 1), first(1, 1));
    }
}
