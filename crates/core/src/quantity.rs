//! Mass fractions and uncertainties in fixed point, so that a tie is a tie in every unit.
//!
//! Everything inside the program is a whole number of millionths of mg/kg (`units` below). A number as printed has
//! its decimal point moved in the text before it is read: 0.0052 % is exactly 52 mg/kg. Uncertainties are kept as
//! squares (`Sigma`), because a square of `U / k` is a ratio of whole numbers while `U / 3` is not; comparing
//! `x + 3 s <= low` then needs no rounding at all.
//!
//! What is absent here: floating point in any comparison.

use std::cmp::Ordering;
use std::fmt;
use std::num::NonZeroU64;

/// Units (millionths of mg/kg) in one mg/kg.
pub const UNITS_PER_MG_KG: i64 = 1_000_000;

/// Largest magnitude a mass fraction may have: 9.2 million mg/kg. A thing cannot hold more than a million mg/kg of
/// anything, so a number beyond this is a wrong unit, not a measurement.
pub const LARGEST_UNITS: i64 = 9_200_000_000_000;

/// Largest one-sigma uncertainty that is taken: a million mg/kg, the whole of the sample.
pub const LARGEST_SIGMA_UNITS: i64 = 1_000_000_000_000;

/// The square of the largest sigma of a total: that of two parts of [`LARGEST_SIGMA_UNITS`].
const LARGEST_TOTAL_SQUARE: u128 = 2 * (LARGEST_SIGMA_UNITS as u128) * (LARGEST_SIGMA_UNITS as u128);

/// The largest denominator of a total's square: that of two multiples of hundredths, neither of which shortens. With
/// it no product of a comparison overflows.
const LARGEST_DENOMINATOR: u64 = 160_000 * 160_000;

/// A difference beyond this is larger than five of the largest sigmas of a total, so it decides without squaring.
const DECIDES_ALONE: u128 = 8_000_000_000_000;

/// A mass fraction in whole millionths of mg/kg; negative numbers are values like any other.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct MassFraction(i64);

impl MassFraction {
    /// Zero mg/kg.
    pub const ZERO: MassFraction = MassFraction(0);

    /// From whole mg/kg.
    pub const fn from_mg_per_kg(mg_per_kg: i64) -> MassFraction {
        MassFraction(mg_per_kg * UNITS_PER_MG_KG)
    }

    /// From millionths of mg/kg.
    pub const fn from_units(units: i64) -> MassFraction {
        MassFraction(units)
    }

    /// In millionths of mg/kg.
    pub const fn units(self) -> i64 {
        self.0
    }

    /// In mg/kg, for drawing and for JSON numbers; never for a comparison.
    pub fn to_mg_per_kg(self) -> f64 {
        self.0 as f64 / UNITS_PER_MG_KG as f64
    }

    /// The sum; both parts are bounded by [`LARGEST_UNITS`], so it cannot overflow.
    #[must_use]
    pub const fn plus(self, other: MassFraction) -> MassFraction {
        MassFraction(self.0 + other.0)
    }
}

/// Plain decimal text in mg/kg with no trailing zeros: `52`, `0.5`, `-3.25`.
impl fmt::Display for MassFraction {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let magnitude = self.0.unsigned_abs();
        let (whole, part) = (magnitude / UNITS_PER_MG_KG as u64, magnitude % UNITS_PER_MG_KG as u64);
        if self.0 < 0 {
            out.write_str("-")?;
        }
        if part == 0 {
            return write!(out, "{whole}");
        }
        let digits = format!("{part:06}");
        write!(out, "{whole}.{}", digits.trim_end_matches('0'))
    }
}

/// How many sigmas a printed uncertainty stands for, in hundredths: 1s is 100, k = 1.96 is 196.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct SigmaMultiple(u16);

impl SigmaMultiple {
    /// One sigma.
    pub const ONE: SigmaMultiple = SigmaMultiple(100);
    /// Three sigma.
    pub const THREE: SigmaMultiple = SigmaMultiple(300);

    /// From hundredths; `None` outside 1.00 to 4.00, where no printed uncertainty lives.
    pub const fn from_hundredths(hundredths: u16) -> Option<SigmaMultiple> {
        if hundredths >= 100 && hundredths <= 400 { Some(SigmaMultiple(hundredths)) } else { None }
    }

    /// From text such as `2`, `1.96` or `2,0`.
    pub fn from_text(text: &str) -> Option<SigmaMultiple> {
        let mark = if text.contains(',') { DecimalMark::Comma } else { DecimalMark::Point };
        let number = Number::parse(text.trim().as_bytes(), mark).ok()?;
        let scaled = number.scaled(2, Rounding::Nearest)?;
        u16::try_from(scaled).ok().and_then(SigmaMultiple::from_hundredths)
    }

    /// In hundredths.
    pub const fn hundredths(self) -> u16 {
        self.0
    }
}

/// `1`, `1.96`, `2`.
impl fmt::Display for SigmaMultiple {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_hundredths(out, u64::from(self.0))
    }
}

fn write_hundredths(out: &mut fmt::Formatter<'_>, hundredths: u64) -> fmt::Result {
    match (hundredths / 100, hundredths % 100) {
        (whole, 0) => write!(out, "{whole}"),
        (whole, part) if part % 10 == 0 => write!(out, "{whole}.{}", part / 10),
        (whole, part) => write!(out, "{whole}.{part:02}"),
    }
}

/// The factor k of a decision rule (3 in `3s`), in tenths, from 0.1 to 5.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Coverage(u8);

impl Coverage {
    /// Three sigma.
    pub const THREE: Coverage = Coverage(30);

    /// From tenths; `None` outside 0.1 to 5.0.
    pub const fn from_tenths(tenths: u8) -> Option<Coverage> {
        if tenths >= 1 && tenths <= 50 { Some(Coverage(tenths)) } else { None }
    }

    /// From a decimal number as a rule book prints it.
    pub fn from_text(text: &str) -> Option<Coverage> {
        let number = Number::parse(text.trim().as_bytes(), DecimalMark::Point).ok()?;
        let tenths = number.scaled(1, Rounding::Nearest)?;
        u8::try_from(tenths).ok().and_then(Coverage::from_tenths)
    }

    /// k² as the smallest ratio of whole numbers.
    fn squared(self) -> (u64, u64) {
        if self.0.is_multiple_of(10) {
            let whole = u64::from(self.0 / 10);
            return (whole * whole, 1);
        }
        (u64::from(self.0) * u64::from(self.0), 100)
    }

    /// As a float, for drawing.
    pub fn to_f64(self) -> f64 {
        f64::from(self.0) / 10.0
    }

    /// In tenths, for exact arithmetic.
    pub const fn tenths(self) -> u8 {
        self.0
    }
}

/// `3`, `2.5`.
impl fmt::Display for Coverage {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write_hundredths(out, u64::from(self.0) * 10)
    }
}

/// One standard uncertainty, held as its exact square in units².
///
/// # Units
/// `numerator / denominator` is s² in (millionths of mg/kg)².
#[derive(Clone, Copy, Debug)]
pub struct Sigma {
    /// The numerator in two halves: a number of 128 bits would double what each judgement takes, and there are millions.
    upper_half: u64,
    lower_half: u64,
    denominator: NonZeroU64,
}

impl Sigma {
    /// No uncertainty at all; used only as the start of a sum.
    pub const ZERO: Sigma = Sigma::new(0, 1);

    /// The denominator is never zero.
    const fn new(numerator: u128, denominator: u64) -> Sigma {
        let denominator = match NonZeroU64::new(denominator) {
            Some(denominator) => denominator,
            None => NonZeroU64::MIN,
        };
        Sigma { upper_half: (numerator >> 64) as u64, lower_half: numerator as u64, denominator }
    }

    const fn numerator(self) -> u128 {
        (self.upper_half as u128) << 64 | self.lower_half as u128
    }

    const fn denominator(self) -> u64 {
        self.denominator.get()
    }

    /// From a printed uncertainty `printed = k s`.
    ///
    /// # Errors
    /// `None` for a negative number or a sigma above [`LARGEST_SIGMA_UNITS`].
    pub fn from_printed(printed: MassFraction, multiple: SigmaMultiple) -> Option<Sigma> {
        if !Sigma::is_possible(printed, multiple) {
            return None;
        }
        let printed = u64::try_from(printed.units()).ok()?;
        let (factor, denominator) = match multiple.0 {
            100 => (1, 1),
            200 => (1, 4),
            300 => (1, 9),
            hundredths => {
                let square = u64::from(hundredths) * u64::from(hundredths);
                let shared = greatest_common_divisor(10_000, square);
                (10_000 / shared, square / shared)
            }
        };
        // Ordinary numbers fit 64 bits, where a product is one instruction on every target.
        let square = if fits(printed, printed) {
            u128::from(printed * printed)
        } else {
            u128::from(printed) * u128::from(printed)
        };
        Some(Sigma::new(if factor == 1 { square } else { square * u128::from(factor) }, denominator))
    }

    /// True where a printed uncertainty is not negative and its sigma at most [`LARGEST_SIGMA_UNITS`].
    pub fn is_possible(printed: MassFraction, multiple: SigmaMultiple) -> bool {
        // A whole number is at most a quotient exactly where it is at most the quotient rounded down.
        (0..=LARGEST_SIGMA_UNITS * i64::from(multiple.0) / 100).contains(&printed.units())
    }

    /// One sigma known directly.
    pub fn from_one_sigma(sigma: MassFraction) -> Option<Sigma> {
        Sigma::from_printed(sigma, SigmaMultiple::ONE)
    }

    /// A sigma measured for `held_for` tenths of a second, as it would be at `measured_for`:
    /// s(t)² = (s0² - c²) t0 / t + c², with the constant part c that no time removes.
    ///
    /// # Source
    /// Counting statistics, facts kept with the rule data: s is proportional to 1/sqrt(t); US EPA Method 6200, 9.5.
    pub fn at_time(
        sigma: MassFraction,
        constant: MassFraction,
        held_for: u16,
        measured_for: u16,
    ) -> Option<Sigma> {
        let whole = u128::try_from(sigma.units()).ok()?;
        let constant = u128::try_from(constant.units()).ok()?.min(whole);
        if whole > LARGEST_SIGMA_UNITS as u128 || held_for == 0 || measured_for == 0 {
            return None;
        }
        let counting = whole * whole - constant * constant;
        Some(Sigma::new(
            counting * u128::from(held_for) + constant * constant * u128::from(measured_for),
            u64::from(measured_for),
        ))
    }

    /// True where the uncertainty is exactly zero, which no measurement has.
    pub const fn is_zero(self) -> bool {
        self.numerator() == 0
    }

    /// The larger of two.
    #[must_use]
    pub fn larger(self, other: Sigma) -> Sigma {
        if self.compare(other) == Ordering::Less { other } else { self }
    }

    /// Compares two uncertainties exactly.
    pub fn compare(self, other: Sigma) -> Ordering {
        (self.numerator() * u128::from(other.denominator()))
            .cmp(&(other.numerator() * u128::from(self.denominator())))
    }

    /// The uncertainty of a sum of two uncorrelated parts: the squares add.
    #[must_use]
    pub fn in_quadrature(self, other: Sigma) -> Sigma {
        Sigma::new(
            self.numerator() * u128::from(other.denominator())
                + other.numerator() * u128::from(self.denominator()),
            self.denominator() * other.denominator(),
        )
    }

    /// What is left where a part of it is taken out in quadrature, sqrt(s² - part²), rounded up to a millionth of mg/kg;
    /// `None` where the part is not smaller.
    #[must_use]
    pub fn without(self, part: MassFraction) -> Option<Sigma> {
        let part = u128::from(part.units().unsigned_abs());
        let whole = self.numerator().div_ceil(u128::from(self.denominator()));
        let left = whole.checked_sub(part * part).filter(|left| *left > 0)?;
        let root = left.isqrt();
        let root = root + u128::from(root * root < left);
        Sigma::from_one_sigma(MassFraction(i64::try_from(root).ok()?))
    }

    /// The uncertainty of a sum of any number of uncorrelated parts; `None` above the largest that is compared with
    /// anything (the whole of the sample for each of two parts).
    ///
    /// Squares add exactly while their common denominator stays small; beyond that (four parts, each with an odd
    /// multiple of its own) the square is rounded up to the next whole (millionth of mg/kg)², which widens an interval
    /// by less than any number that is printed.
    pub fn total(parts: impl IntoIterator<Item = Sigma>) -> Option<Sigma> {
        let mut total = Sigma::ZERO;
        for part in parts {
            total = match total.added(part) {
                Some(sum) => sum,
                None => total.rounded_up().added(part.rounded_up())?,
            };
        }
        // The square rounded up is at most a whole number exactly where the square itself is.
        (total.numerator() <= LARGEST_TOTAL_SQUARE * u128::from(total.denominator())).then_some(total)
    }

    /// The squares added over a common denominator; `None` where that grows beyond what a comparison can take.
    fn added(self, other: Sigma) -> Option<Sigma> {
        if self.denominator() == other.denominator() && self.denominator() <= LARGEST_DENOMINATOR {
            let numerator = self.numerator().checked_add(other.numerator())?;
            return Some(Sigma::new(numerator, self.denominator()));
        }
        let shared = greatest_common_divisor(self.denominator(), other.denominator());
        let (own, others) = (other.denominator() / shared, self.denominator() / shared);
        let denominator = self.denominator().checked_mul(own)?;
        if denominator > LARGEST_DENOMINATOR {
            return None;
        }
        let left = self.numerator().checked_mul(u128::from(own))?;
        let right = other.numerator().checked_mul(u128::from(others))?;
        Some(Sigma::new(left.checked_add(right)?, denominator))
    }

    fn rounded_up(self) -> Sigma {
        Sigma::new(self.numerator().div_ceil(u128::from(self.denominator())), 1)
    }

    /// The uncertainty of a sum whose parts all err together (correlation one): the sigmas add, each rounded up to the
    /// next millionth of mg/kg. An upper bound, to be shown beside a decision.
    pub fn total_if_together(parts: impl IntoIterator<Item = Sigma>) -> MassFraction {
        let one = |part: Sigma| {
            let square = part.rounded_up().numerator();
            let root = square.isqrt();
            i64::try_from(if root * root == square { root } else { root + 1 }).unwrap_or(i64::MAX)
        };
        MassFraction(parts.into_iter().map(one).fold(0, i64::saturating_add))
    }

    /// Compares `k s` with a difference of two mass fractions that is not negative.
    pub fn compare_times(self, k: Coverage, difference: MassFraction) -> Ordering {
        let Ok(difference) = u128::try_from(difference.units()) else { return Ordering::Greater };
        if difference > DECIDES_ALONE {
            return Ordering::Less;
        }
        let (k_squared, scale) = k.squared();
        // Ordinary numbers fit 64 bits, where a product is one instruction on every target.
        let (variance, distance) = (self.lower_half, difference as u64);
        if self.upper_half == 0 && fits(variance, k_squared) && fits(distance, distance) {
            let (square, weight) = (distance * distance, self.denominator() * scale);
            if fits(square, weight) {
                return (variance * k_squared).cmp(&(square * weight));
            }
        }
        (self.numerator() * u128::from(k_squared))
            .cmp(&(difference * difference * u128::from(self.denominator()) * u128::from(scale)))
    }

    /// s in mg/kg with all the digits of a float, for probabilities; never for a comparison.
    pub fn to_mg_per_kg(self) -> f64 {
        (self.numerator() as f64 / self.denominator() as f64).sqrt() / UNITS_PER_MG_KG as f64
    }

    /// s rounded to the nearest millionth of mg/kg.
    pub fn to_mass_fraction(self) -> MassFraction {
        let doubled = (self.numerator() * 4 / u128::from(self.denominator())).isqrt();
        MassFraction(i64::try_from(doubled.div_ceil(2)).unwrap_or(i64::MAX))
    }
}

/// True where a product surely fits 64 bits: as many bits as both factors have together are enough for it.
const fn fits(one: u64, other: u64) -> bool {
    one.leading_zeros() + other.leading_zeros() >= 64
}

fn greatest_common_divisor(mut a: u64, mut b: u64) -> u64 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}

/// `x + k s <= limit` (or `<` where the rule is strict), exactly.
pub fn upper_end_within(
    x: MassFraction,
    k: Coverage,
    s: Sigma,
    limit: MassFraction,
    equal_counts: bool,
) -> bool {
    let room = limit.units() - x.units();
    if room < 0 {
        return false;
    }
    match s.compare_times(k, MassFraction(room)) {
        Ordering::Less => true,
        Ordering::Equal => equal_counts,
        Ordering::Greater => false,
    }
}

/// `x - k s >= limit` (or `>` where the rule is strict), exactly.
pub fn lower_end_beyond(
    x: MassFraction,
    k: Coverage,
    s: Sigma,
    limit: MassFraction,
    equal_counts: bool,
) -> bool {
    let excess = x.units() - limit.units();
    if excess < 0 {
        return false;
    }
    match s.compare_times(k, MassFraction(excess)) {
        Ordering::Less => true,
        Ordering::Equal => equal_counts,
        Ordering::Greater => false,
    }
}

/// A unit of mass fraction as files print it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Unit {
    /// mg/kg, also written ppm or ug/g.
    MgPerKg,
    /// Mass percent.
    Percent,
    /// g/kg, the same number as per mille.
    GramPerKg,
    /// ug/kg, also written ppb.
    MicrogramPerKg,
}

/// Words that files use for the units, folded as [`folded_unit`] does: lower case, no spaces, brackets, points, hyphens
/// or dots for a product. `ppm` and `ppb` are taken by mass, as the trade does; `ppt` is no unit here, since it is a
/// thousandth to one and a millionth of a millionth to another. Synonyms: common practice, no source.
const UNIT_WORDS: [(&str, Unit); 126] = [
    ("mg/kg", Unit::MgPerKg),
    ("mgkg1", Unit::MgPerKg),
    ("mgkg", Unit::MgPerKg),
    ("mgperkg", Unit::MgPerKg),
    ("ppm", Unit::MgPerKg),
    ("ppmw", Unit::MgPerKg),
    ("ppmw/w", Unit::MgPerKg),
    ("ppmm/m", Unit::MgPerKg),
    ("ppmwt", Unit::MgPerKg),
    ("wtppm", Unit::MgPerKg),
    ("ppmmass", Unit::MgPerKg),
    ("massppm", Unit::MgPerKg),
    ("ppmmasse", Unit::MgPerKg),
    ("ppmgew", Unit::MgPerKg),
    ("gewppm", Unit::MgPerKg),
    ("ug/g", Unit::MgPerKg),
    ("ugg1", Unit::MgPerKg),
    ("ugg", Unit::MgPerKg),
    ("mcg/g", Unit::MgPerKg),
    ("g/t", Unit::MgPerKg),
    ("gt1", Unit::MgPerKg),
    ("mg/1000g", Unit::MgPerKg),
    ("百万分率", Unit::MgPerKg),
    ("质量ppm", Unit::MgPerKg),
    ("質量ppm", Unit::MgPerKg),
    ("重量ppm", Unit::MgPerKg),
    ("%", Unit::Percent),
    ("percent", Unit::Percent),
    ("per", Unit::Percent),
    ("cent", Unit::Percent),
    ("pct", Unit::Percent),
    ("prozent", Unit::Percent),
    ("pourcent", Unit::Percent),
    ("pourcentage", Unit::Percent),
    ("porcentaje", Unit::Percent),
    ("porciento", Unit::Percent),
    ("wt%", Unit::Percent),
    ("%wt", Unit::Percent),
    ("wtpct", Unit::Percent),
    ("pctwt", Unit::Percent),
    ("w%", Unit::Percent),
    ("%w", Unit::Percent),
    ("%w/w", Unit::Percent),
    ("w/w%", Unit::Percent),
    ("wt%w", Unit::Percent),
    ("weight%", Unit::Percent),
    ("%weight", Unit::Percent),
    ("weightpercent", Unit::Percent),
    ("percentbyweight", Unit::Percent),
    ("mass%", Unit::Percent),
    ("%mass", Unit::Percent),
    ("masspercent", Unit::Percent),
    ("percentbymass", Unit::Percent),
    ("m%", Unit::Percent),
    ("%m", Unit::Percent),
    ("%m/m", Unit::Percent),
    ("m/m%", Unit::Percent),
    ("masse%", Unit::Percent),
    ("%masse", Unit::Percent),
    ("massen%", Unit::Percent),
    ("ma%", Unit::Percent),
    ("gew%", Unit::Percent),
    ("%gew", Unit::Percent),
    ("gewichts%", Unit::Percent),
    ("gewichtsprozent", Unit::Percent),
    ("massenprozent", Unit::Percent),
    ("masseprozent", Unit::Percent),
    ("massepercent", Unit::Percent),
    ("gewprozent", Unit::Percent),
    ("%enmasse", Unit::Percent),
    ("%massique", Unit::Percent),
    ("%massiques", Unit::Percent),
    ("%enpoids", Unit::Percent),
    ("%poids", Unit::Percent),
    ("poids%", Unit::Percent),
    ("%pds", Unit::Percent),
    ("%peso", Unit::Percent),
    ("peso%", Unit::Percent),
    ("%enpeso", Unit::Percent),
    ("%p/p", Unit::Percent),
    ("p/p%", Unit::Percent),
    ("%masa", Unit::Percent),
    ("%enmasa", Unit::Percent),
    ("masa%", Unit::Percent),
    ("质量%", Unit::Percent),
    ("重量%", Unit::Percent),
    ("質量%", Unit::Percent),
    ("质量百分比", Unit::Percent),
    ("质量百分数", Unit::Percent),
    ("重量百分比", Unit::Percent),
    ("質量百分比", Unit::Percent),
    ("質量百分率", Unit::Percent),
    ("質量パーセント", Unit::Percent),
    ("重量パーセント", Unit::Percent),
    ("パーセント", Unit::Percent),
    ("百分比", Unit::Percent),
    ("百分率", Unit::Percent),
    ("질량%", Unit::Percent),
    ("중량%", Unit::Percent),
    ("퍼센트", Unit::Percent),
    ("g/100g", Unit::Percent),
    ("g/kg", Unit::GramPerKg),
    ("gkg1", Unit::GramPerKg),
    ("gkg", Unit::GramPerKg),
    ("mg/g", Unit::GramPerKg),
    ("mgg1", Unit::GramPerKg),
    ("mgg", Unit::GramPerKg),
    ("‰", Unit::GramPerKg),
    ("permille", Unit::GramPerKg),
    ("permil", Unit::GramPerKg),
    ("promille", Unit::GramPerKg),
    ("pourmille", Unit::GramPerKg),
    ("pormil", Unit::GramPerKg),
    ("o/oo", Unit::GramPerKg),
    ("千分比", Unit::GramPerKg),
    ("千分率", Unit::GramPerKg),
    ("ug/kg", Unit::MicrogramPerKg),
    ("ugkg1", Unit::MicrogramPerKg),
    ("ugkg", Unit::MicrogramPerKg),
    ("mcg/kg", Unit::MicrogramPerKg),
    ("ng/g", Unit::MicrogramPerKg),
    ("ngg1", Unit::MicrogramPerKg),
    ("ngg", Unit::MicrogramPerKg),
    ("ppb", Unit::MicrogramPerKg),
    ("ppbw", Unit::MicrogramPerKg),
    ("ppbw/w", Unit::MicrogramPerKg),
];

/// A unit word as it is compared; nothing where it starts with a sign that would belong to a number before it.
fn folded_unit(word: &str) -> Option<String> {
    let word = word.trim();
    if word.starts_with(['-', '+', '.', ',', '\u{2212}', '\u{2013}']) {
        return None;
    }
    let mut folded = String::with_capacity(word.len());
    for c in word.chars() {
        match c {
            // Signs of a product, a power or an abbreviation, in any script; they come and go.
            '.'
            | '-'
            | '^'
            | '·'
            | '⋅'
            | '•'
            | '∙'
            | '*'
            | '×'
            | '_'
            | '('
            | ')'
            | '['
            | ']'
            | '{'
            | '}'
            | '\u{2010}'..='\u{2015}'
            | '\u{2212}'
            | '⁻'
            | '（'
            | '）'
            | '［'
            | '］'
            | '．'
            | '－'
            | '・' => {}
            _ if c.is_whitespace() => {}
            'µ' | 'μ' => folded.push('u'),
            '¹' => folded.push('1'),
            '∕' | '⁄' => folded.push('/'),
            '﹪' | '٪' => folded.push('%'),
            _ => folded.extend(narrow(c).to_lowercase()),
        }
    }
    Some(folded)
}

/// A letter, digit or sign typed in full width as the same in ordinary width; any other as it is.
pub(crate) fn narrow(c: char) -> char {
    match c {
        '\u{FF01}'..='\u{FF5E}' => char::from_u32(c as u32 - 0xFEE0).unwrap_or(c),
        _ => c,
    }
}

impl Unit {
    /// The unit a word stands for; `None` for a word that is no unit of mass fraction.
    pub fn from_word(word: &str) -> Option<Unit> {
        // The commonest ones as they are nearly always written, before anything is folded.
        match word.trim() {
            "ppm" | "mg/kg" => return Some(Unit::MgPerKg),
            "%" => return Some(Unit::Percent),
            _ => {}
        }
        let folded = folded_unit(word)?;
        UNIT_WORDS.iter().find(|(known, _)| *known == folded).map(|(_, unit)| *unit)
    }

    /// How far the decimal point moves from this unit to mg/kg.
    pub const fn exponent(self) -> i32 {
        match self {
            Unit::MgPerKg => 0,
            Unit::Percent => 4,
            Unit::GramPerKg => 3,
            Unit::MicrogramPerKg => -3,
        }
    }

    /// The unit's own sign, for mapping evidence.
    pub const fn sign(self) -> &'static str {
        match self {
            Unit::MgPerKg => "mg/kg",
            Unit::Percent => "%",
            Unit::GramPerKg => "g/kg",
            Unit::MicrogramPerKg => "ug/kg",
        }
    }
}

/// What separates the whole part of a number from its decimals.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DecimalMark {
    /// `0.5`
    Point,
    /// `0,5`
    Comma,
}

impl DecimalMark {
    /// The mark itself.
    pub const fn byte(self) -> u8 {
        match self {
            DecimalMark::Point => b'.',
            DecimalMark::Comma => b',',
        }
    }
}

/// Which way a number finer than a millionth of mg/kg is rounded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Rounding {
    /// Half to even: values and limits.
    Nearest,
    /// Away from zero: uncertainties, so that a printed one never becomes none.
    Up,
}

/// Why a text is not a number.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NumberError {
    /// Nothing there but spaces.
    Empty,
    /// Letters or signs where digits should be.
    NotANumber,
    /// A mark that could be a decimal mark or a thousands mark, or the other decimal mark.
    MarkUnclear,
}

/// A decimal number exactly as written: `digits` times ten to the `exponent`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Number {
    /// A minus sign stood before it.
    pub negative: bool,
    /// Its first nineteen significant digits.
    pub digits: u64,
    /// Power of ten.
    pub exponent: i32,
    /// Digits beyond the nineteenth were not all zero.
    pub more: bool,
    /// How many decimals were written.
    pub decimals: u8,
    /// Written in the plainest form, so that the text can be made again from the number.
    pub plain: bool,
}

impl Number {
    /// Reads a decimal number: sign, digits, one decimal mark, an exponent. Surrounding spaces are not part of it.
    ///
    /// # Errors
    /// [`NumberError`]; `inf`, `nan` and hexadecimal are not numbers here.
    pub fn parse(text: &[u8], mark: DecimalMark) -> Result<Number, NumberError> {
        let text = text.trim_ascii();
        let (negative, body) = match text {
            [] => return Err(NumberError::Empty),
            [b'-', rest @ ..] => (true, rest),
            [b'+', rest @ ..] => (false, rest),
            _ => (false, text),
        };
        let other = if mark == DecimalMark::Point { b',' } else { b'.' };
        let mut number = Number {
            negative,
            digits: 0,
            exponent: 0,
            more: false,
            decimals: 0,
            plain: body.len() == text.len() || negative,
        };
        let (mut any, mut after_mark, mut at) = (false, false, 0);
        while let Some(&byte) = body.get(at) {
            match byte {
                b'0'..=b'9' => {
                    any = true;
                    let digit = u64::from(byte - b'0');
                    // 1.8e18 leaves room for one more digit below 2^64.
                    if number.digits < 1_800_000_000_000_000_000 {
                        number.digits = number.digits * 10 + digit;
                        if after_mark {
                            number.exponent -= 1;
                        }
                    } else {
                        number.more |= digit != 0;
                        number.plain = false;
                        if !after_mark {
                            number.exponent = number.exponent.saturating_add(1);
                        }
                    }
                    if after_mark {
                        number.decimals = number.decimals.saturating_add(1);
                    }
                }
                _ if byte == mark.byte() && !after_mark => {
                    after_mark = true;
                    number.plain &= any;
                }
                b'e' | b'E' if any => {
                    number.plain = false;
                    let moved = parse_exponent(&body[at + 1..])?;
                    number.exponent = number.exponent.saturating_add(moved);
                    at = body.len();
                    continue;
                }
                _ if byte == other || byte == mark.byte() => return Err(NumberError::MarkUnclear),
                _ => return Err(NumberError::NotANumber),
            }
            at += 1;
        }
        if !any {
            return Err(NumberError::NotANumber);
        }
        number.plain &= !(after_mark && number.decimals == 0)
            && number.decimals < 18
            && !(negative && number.digits == 0)
            && (body[0] != b'0' || body.len() == 1 || body.get(1) == Some(&mark.byte()));
        Ok(number)
    }

    /// The number times ten to the `shift`, as a whole number.
    ///
    /// # Errors
    /// `None` if it does not fit.
    pub fn scaled(self, shift: i32, rounding: Rounding) -> Option<i64> {
        let magnitude = self.scaled_magnitude(shift, rounding)?;
        let value = i64::try_from(magnitude).ok()?;
        Some(if self.negative { -value } else { value })
    }

    fn scaled_magnitude(self, shift: i32, rounding: Rounding) -> Option<u128> {
        if self.digits == 0 && !self.more {
            return Some(0);
        }
        let exponent = self.exponent.saturating_add(shift);
        if exponent >= 0 {
            let power = 10_u128.checked_pow(u32::try_from(exponent).ok()?)?;
            return u128::from(self.digits).checked_mul(power);
        }
        let digits = u128::from(self.digits);
        let Some(power) = 10_u128.checked_pow(exponent.unsigned_abs()) else {
            return Some(u128::from(rounding == Rounding::Up));
        };
        let (whole, rest) = (digits / power, digits % power);
        let up = match rounding {
            Rounding::Up => rest != 0 || self.more,
            Rounding::Nearest => match (rest * 2).cmp(&power) {
                Ordering::Greater => true,
                Ordering::Equal => self.more || whole % 2 == 1,
                Ordering::Less => false,
            },
        };
        Some(whole + u128::from(up))
    }

    /// The mass fraction this number is in `unit`.
    ///
    /// # Errors
    /// `None` beyond [`LARGEST_UNITS`].
    pub fn to_mass_fraction(self, unit: Unit, rounding: Rounding) -> Option<MassFraction> {
        let units = self.scaled(unit.exponent() + 6, rounding)?;
        (units.abs() <= LARGEST_UNITS).then_some(MassFraction(units))
    }
}

fn parse_exponent(text: &[u8]) -> Result<i32, NumberError> {
    let (negative, digits) = match text {
        [b'-', rest @ ..] => (true, rest),
        [b'+', rest @ ..] => (false, rest),
        _ => (false, text),
    };
    if digits.is_empty() || !digits.iter().all(u8::is_ascii_digit) {
        return Err(NumberError::NotANumber);
    }
    // An exponent beyond six digits is already far past anything that fits.
    let value = digits.iter().fold(0_i32, |sum, digit| {
        (sum.saturating_mul(10).saturating_add(i32::from(digit - b'0'))).min(1_000_000)
    });
    Ok(if negative { -value } else { value })
}

/// A value and unit as a rule book prints them: `70 mg/kg`, `0.01 %`.
///
/// # Errors
/// The part that could not be read: the number, or the unit's word.
pub fn parse_with_unit(text: &str) -> Result<MassFraction, UnreadQuantity> {
    let text = text.trim();
    let split =
        text.find(|c: char| !(c.is_ascii_digit() || matches!(c, '.' | '-' | '+'))).unwrap_or(text.len());
    let (number, word) = text.split_at(split);
    let unit = Unit::from_word(word).ok_or_else(|| UnreadQuantity::Unit(word.trim().to_owned()))?;
    Number::parse(number.as_bytes(), DecimalMark::Point)
        .ok()
        .and_then(|number| number.to_mass_fraction(unit, Rounding::Nearest))
        .ok_or_else(|| UnreadQuantity::Number(number.trim().to_owned()))
}

/// Which half of a quantity could not be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum UnreadQuantity {
    /// The number.
    Number(String),
    /// The unit.
    Unit(String),
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(text: &str, unit: Unit) -> Option<MassFraction> {
        Number::parse(text.as_bytes(), DecimalMark::Point).ok()?.to_mass_fraction(unit, Rounding::Nearest)
    }

    #[test]
    fn the_same_amount_is_the_same_number_in_every_unit() {
        let expected = Some(MassFraction::from_mg_per_kg(52));
        assert_eq!(mg("52", Unit::MgPerKg), expected);
        assert_eq!(mg("0.0052", Unit::Percent), expected);
        assert_eq!(mg("5.2e-3", Unit::Percent), expected);
        assert_eq!(mg("0.052", Unit::GramPerKg), expected);
        assert_eq!(mg("52000", Unit::MicrogramPerKg), expected);
    }

    #[test]
    fn what_is_no_number_is_refused() {
        for text in ["nan", "inf", "-", "+", ".", "1.2.3", "0x10", "1e", "1e+", "12a", "--1"] {
            assert!(Number::parse(text.as_bytes(), DecimalMark::Point).is_err(), "{text}");
        }
        assert_eq!(Number::parse(b"1,5", DecimalMark::Point), Err(NumberError::MarkUnclear));
        assert_eq!(Number::parse(b"  ", DecimalMark::Point), Err(NumberError::Empty));
    }

    #[test]
    fn beyond_range_is_none_and_never_wraps() {
        assert_eq!(mg("1e400", Unit::MgPerKg), None);
        assert_eq!(mg("9200001", Unit::MgPerKg), None);
        assert_eq!(mg("1e-400", Unit::MgPerKg), Some(MassFraction::ZERO));
        assert_eq!(mg("-12.5", Unit::MgPerKg), Some(MassFraction::from_units(-12_500_000)));
    }

    #[test]
    fn rounding_is_half_to_even_for_values_and_up_for_uncertainties() {
        let tiny = Number::parse(b"0.0000005", DecimalMark::Point).unwrap();
        assert_eq!(tiny.to_mass_fraction(Unit::MgPerKg, Rounding::Nearest), Some(MassFraction::ZERO));
        assert_eq!(tiny.to_mass_fraction(Unit::MgPerKg, Rounding::Up), Some(MassFraction::from_units(1)));
        let next = Number::parse(b"0.0000015", DecimalMark::Point).unwrap();
        assert_eq!(
            next.to_mass_fraction(Unit::MgPerKg, Rounding::Nearest),
            Some(MassFraction::from_units(2))
        );
    }

    #[test]
    fn text_is_plain_and_without_trailing_zeros() {
        assert_eq!(MassFraction::from_mg_per_kg(52).to_string(), "52");
        assert_eq!(MassFraction::from_units(-3_250_000).to_string(), "-3.25");
        assert_eq!(MassFraction::from_units(1).to_string(), "0.000001");
        assert_eq!(SigmaMultiple::from_text("1.96").unwrap().to_string(), "1.96");
        assert_eq!(SigmaMultiple::from_text("2,0").unwrap().to_string(), "2");
    }

    #[test]
    fn a_printed_two_sigma_is_compared_exactly() {
        let six = Sigma::from_printed(
            MassFraction::from_mg_per_kg(12),
            SigmaMultiple::from_hundredths(200).unwrap(),
        );
        let low = MassFraction::from_mg_per_kg(70);
        let x = MassFraction::from_mg_per_kg(52);
        assert!(upper_end_within(x, Coverage::THREE, six.unwrap(), low, true));
        assert!(!upper_end_within(x, Coverage::THREE, six.unwrap(), low, false));
        let above = MassFraction::from_units(52_000_001);
        assert!(!upper_end_within(above, Coverage::THREE, six.unwrap(), low, true));
    }

    #[test]
    fn a_third_keeps_its_digits_as_a_float() {
        let third = Sigma::from_printed(MassFraction::from_mg_per_kg(1), SigmaMultiple::THREE).unwrap();
        assert!((third.to_mg_per_kg() - 1.0 / 3.0).abs() < 1e-15);
        assert_eq!(Coverage::THREE.tenths(), 30);
    }

    #[test]
    fn the_largest_numbers_compare_without_overflow() {
        let odd = SigmaMultiple::from_hundredths(399).unwrap();
        let other = SigmaMultiple::from_hundredths(397).unwrap();
        let printed = |multiple: SigmaMultiple| {
            MassFraction::from_units(LARGEST_SIGMA_UNITS / 100 * i64::from(multiple.hundredths()))
        };
        let sum = Sigma::from_printed(printed(odd), odd)
            .unwrap()
            .in_quadrature(Sigma::from_printed(printed(other), other).unwrap());
        let five = Coverage::from_tenths(50).unwrap();
        // sqrt(2) * 5 * 1e12 = 7.07e12 lies below the difference of 7.2e12 and above 7.0e12.
        assert_eq!(sum.compare_times(five, MassFraction::from_units(7_200_000_000_000)), Ordering::Less);
        assert_eq!(sum.compare_times(five, MassFraction::from_units(7_000_000_000_000)), Ordering::Greater);
        assert_eq!(sum.to_mass_fraction().units(), 1_414_213_562_373);
    }

    fn one(sigma: i64) -> Sigma {
        Sigma::from_one_sigma(MassFraction::from_units(sigma)).unwrap()
    }

    #[test]
    fn the_squares_of_any_number_of_parts_add_exactly() {
        // 1² + 2² + 4² + 10² = 11².
        let sum = Sigma::total([one(1), one(2), one(4), one(10)]).unwrap();
        assert_eq!(sum.compare(one(11)), Ordering::Equal);
        assert_eq!(Sigma::total([]).unwrap().compare(Sigma::ZERO), Ordering::Equal);
        // Two at two sigma and two at three: (3/2)² + (4/2)² + (3/3)² + (6/3)² = 6.25 + 5 = 11.25 = 45 / 4.
        let at = |printed: i64, hundredths: u16| {
            let multiple = SigmaMultiple::from_hundredths(hundredths).unwrap();
            Sigma::from_printed(MassFraction::from_units(printed), multiple).unwrap()
        };
        let sum = Sigma::total([at(3, 200), at(3, 300), at(4, 200), at(6, 300)]).unwrap();
        assert_eq!(sum.compare(Sigma::new(45, 4)), Ordering::Equal);
    }

    #[test]
    fn a_sum_of_odd_multiples_is_rounded_up_by_less_than_anything_printed() {
        let parts = [397, 389, 383, 379].map(|hundredths| {
            let multiple = SigmaMultiple::from_hundredths(hundredths).unwrap();
            Sigma::from_printed(MassFraction::from_units(100_000), multiple).unwrap()
        });
        let exact: f64 = parts.iter().map(|part| part.numerator() as f64 / part.denominator() as f64).sum();
        let sum = Sigma::total(parts).unwrap();
        let found = sum.numerator() as f64 / sum.denominator() as f64;
        assert!(found >= exact && found - exact < 4.0, "{found} {exact}");
    }

    #[test]
    fn a_sum_beyond_the_whole_of_two_samples_is_none() {
        assert!(Sigma::total([one(LARGEST_SIGMA_UNITS); 2]).is_some());
        assert!(Sigma::total([one(LARGEST_SIGMA_UNITS), one(LARGEST_SIGMA_UNITS), one(1)]).is_none());
    }

    #[test]
    fn parts_that_err_together_add_their_sigmas() {
        assert_eq!(Sigma::total_if_together([one(1), one(2), one(4)]).units(), 7);
        // sqrt(2) and 7/2 are rounded up.
        let parts = [Sigma::new(2, 1), Sigma::new(49, 4)];
        assert_eq!(Sigma::total_if_together(parts).units(), 2 + 4);
    }

    #[test]
    fn units_are_known_by_many_words() {
        for (unit, words) in [
            (
                Unit::MgPerKg,
                "ppm|PPM|mg/kg|mg / kg|mg kg-1|mg·kg⁻¹|mg kg^-1|mg.kg-1|ug/g|µg/g|μg/g|μg g-1|mcg/g|ppm (w/w)|ｐｐｍ|wt. ppm|mg kg⁻¹|mg*kg^-1|p.p.m.",
            ),
            (
                Unit::Percent,
                "%|％|wt%|wt.-%|wt. %|mass%|% (m/m)|Gew.-%|Gew%|Ma.-%|Massen-%|M.-%|% en masse|% massique|% peso|质量%|重量%|質量%|Gewichtsprozent|질량%|weight %|% w/w|pct",
            ),
            (Unit::GramPerKg, "g/kg|mg/g|‰|per mille|Promille|g kg-1"),
            (Unit::MicrogramPerKg, "ppb|ug/kg|µg/kg|ng/g|µg kg-1"),
        ] {
            for word in words.split('|') {
                assert_eq!(Unit::from_word(word), Some(unit), "{word}");
            }
        }
        for other in [
            "", " ", "ppt", "m/m", "cps", "-%", ".ppm", "at%", "at.%", "mol%", "% RSD", "rel%", "mg/l", "kg",
            "g",
        ] {
            assert_eq!(Unit::from_word(other), None, "{other}");
        }
    }

    #[test]
    fn no_unit_word_stands_twice_or_unfolded() {
        for (at, (word, _)) in UNIT_WORDS.iter().enumerate() {
            assert_eq!(folded_unit(word).as_deref(), Some(*word));
            assert!(UNIT_WORDS.iter().skip(at + 1).all(|(other, _)| other != word), "{word}");
        }
    }

    #[test]
    fn rule_book_quantities_need_a_known_unit() {
        assert_eq!(parse_with_unit("70 mg/kg"), Ok(MassFraction::from_mg_per_kg(70)));
        assert_eq!(parse_with_unit("0.01 %"), Ok(MassFraction::from_mg_per_kg(100)));
        assert_eq!(parse_with_unit("70 furlongs"), Err(UnreadQuantity::Unit("furlongs".into())));
        assert_eq!(parse_with_unit("many mg/kg"), Err(UnreadQuantity::Unit("many mg/kg".into())));
    }
}
