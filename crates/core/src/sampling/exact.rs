//! Products of many whole numbers, compared exactly: a plan's chance is often exactly the one that was asked for.

/// True where the product of the first is at most that of the second.
///
/// # Cost
/// Grows with the square of how many factors there are; a few thousand take a millisecond, a hundred thousand a second.
pub(super) fn at_most(first: impl Iterator<Item = u64>, second: impl Iterator<Item = u64>) -> bool {
    let (first, second) = (product(first), product(second));
    // The longer one is the larger; of equal length, the first digit from above that differs decides.
    first.len().cmp(&second.len()).then_with(|| first.iter().rev().cmp(second.iter().rev())).is_le()
}

/// The product in digits of 64 bits, lowest first, without leading zeros.
fn product(factors: impl Iterator<Item = u64>) -> Vec<u64> {
    let (mut digits, mut together) = (vec![1], 1_u64);
    for factor in factors {
        if let Some(more) = together.checked_mul(factor) {
            together = more;
        } else {
            multiply(&mut digits, together);
            together = factor;
        }
    }
    multiply(&mut digits, together);
    while digits.last() == Some(&0) {
        digits.pop();
    }
    digits
}

fn multiply(digits: &mut Vec<u64>, factor: u64) {
    let mut carried = 0;
    for digit in digits.iter_mut() {
        let whole = u128::from(*digit) * u128::from(factor) + u128::from(carried);
        (*digit, carried) = (whole as u64, (whole >> 64) as u64);
    }
    if carried > 0 {
        digits.push(carried);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn products_beyond_any_machine_word_are_compared_to_the_last_digit() {
        let powers = |of: u64, last: u64| std::iter::repeat_n(of, 50).chain([last]);
        assert!(at_most(powers(u64::MAX, 7), powers(u64::MAX, 7)));
        assert!(at_most(powers(u64::MAX, 7), powers(u64::MAX, 8)));
        assert!(!at_most(powers(u64::MAX, 8), powers(u64::MAX, 7)));
        // 2^60 is 4^30 is 8^20, and one more is one more.
        assert!(at_most(std::iter::repeat_n(2, 600), std::iter::repeat_n(8, 200)));
        assert!(at_most(std::iter::repeat_n(8, 200), std::iter::repeat_n(4, 300)));
        assert!(!at_most(std::iter::repeat_n(2, 601), std::iter::repeat_n(4, 300)));
        assert!(at_most([0, u64::MAX].into_iter(), [1].into_iter()));
        assert!(!at_most([1].into_iter(), [u64::MAX, u64::MAX, 0].into_iter()));
    }
}
