//! Decimal text to exact fractions.

use num_bigint::BigInt;
use num_rational::BigRational;

/// A whole number.
pub fn whole(number: i64) -> BigRational {
    BigRational::from_integer(BigInt::from(number))
}

/// Ten to a power.
pub fn ten_to(power: i32) -> BigRational {
    let magnitude = BigRational::from_integer(BigInt::from(10).pow(power.unsigned_abs()));
    if power < 0 { magnitude.recip() } else { magnitude }
}

/// Reads digits with at most one decimal mark, a sign and an exponent; nothing for anything else.
pub fn parse(text: &str, mark: char) -> Option<BigRational> {
    let (mantissa, power) = match text.split_once(['e', 'E']) {
        Some((mantissa, power)) => (mantissa, power.parse::<i32>().ok()?),
        None => (text, 0),
    };
    let negative = mantissa.starts_with('-');
    let unsigned = mantissa.strip_prefix(['-', '+']).unwrap_or(mantissa);
    let (before, after) = unsigned.split_once(mark).unwrap_or((unsigned, ""));
    let digits = format!("{before}{after}");
    if digits.is_empty() || !digits.bytes().all(|byte| byte.is_ascii_digit()) {
        return None;
    }
    let number = BigRational::from_integer(digits.parse::<BigInt>().ok()?);
    let scaled = number * ten_to(power - i32::try_from(after.len()).ok()?);
    Some(if negative { -scaled } else { scaled })
}
