//! Tails, quantiles and tests of the ordinary distributions, with the same bits on every target.
//!
//! A probability beyond a bound is always computed as that tail itself. A complement (one minus) is taken only in the
//! body of a distribution, where it is more than 0.3 and no digit is lost.
//!
//! # Why not a crate
//! Measured against 40 digits: `statrs` 0.19 is good to 1e-13 in the tails of t, chi-square and F, but its normal
//! distribution only to 9e-11, and its floats come through `num-traits`, which turns from `libm` to the standard
//! functions as soon as any crate of the same build asks it for `std` (the tests here do): the same bits natively and
//! in the page could not be promised. `special` 0.14 uses `libm` alone, but has no upper tail of chi-square
//! (it gives 0 for 3.6e-27). `puruspe` 0.4 uses the standard functions. So the four distributions stand here, by published
//! formulas, good to 1e-12 or better (held against mpmath and scipy in `tests/tests/outside_checks.rs`).
//!
//! # Source
//! NIST Digital Library of Mathematical Functions, 8.8.6 and 8.17(iv) (recurrences of the incomplete gamma and beta
//! functions: sums of positive terms, so that no tail is a difference); C. Loader, Fast and accurate computation of binomial
//! probabilities, 2000 (their leading terms, without the cancellation of large logarithms).

use std::f64::consts::{PI, SQRT_2};

/// The level below which a test says "differs" everywhere in this program: 5 % (our choice, and the usual one).
pub const LEVEL: f64 = 0.05;

/// Fewest values an outlier test is offered for: with three it can hardly ever reject (our choice).
pub const FEWEST_FOR_OUTLIERS: usize = 5;

/// Chance that a standard normal quantity lies above `z`.
pub fn normal_upper(z: f64) -> f64 {
    0.5 * libm::erfc(z / SQRT_2)
}

/// Chance that a standard normal quantity lies below `z`, computed as its own tail.
pub fn normal_lower(z: f64) -> f64 {
    normal_upper(-z)
}

/// The z with the chance `p` above it.
///
/// # Errors
/// `None` outside 1e-100 <= p <= 0.5.
pub fn normal_upper_quantile(p: f64) -> Option<f64> {
    if !is_tail(p) {
        return None;
    }
    // ln Q(z) is concave and Q(z) <= exp(-z²/2) / 2, so from this start Newton's steps fall to the root and never
    // pass it.
    let start = (-2.0 * libm::log(2.0 * p)).max(0.0).sqrt();
    Some(fall_to_root(start, |z| {
        let tail = normal_upper(z);
        let density = libm::exp(-0.5 * z * z) / (2.0 * PI).sqrt();
        z + libm::log(tail / p) * tail / density
    }))
}

/// Chance that Student's t with `nu` degrees of freedom lies above `t`.
///
/// # Errors
/// NaN for no degree of freedom or where `t` is not a number.
pub fn t_upper(t: f64, nu: u32) -> f64 {
    if nu == 0 || t.is_nan() {
        return f64::NAN;
    }
    let nu = f64::from(nu);
    let square = t * t;
    let both = incomplete_beta(nu / (nu + square), square / (nu + square), 0.5 * nu, 0.5);
    if t.is_sign_negative() { 1.0 - 0.5 * both } else { 0.5 * both }
}

/// The t with the chance `p` above it, for `nu` degrees of freedom.
///
/// # Errors
/// `None` outside 1e-100 <= p <= 0.5, and for no degree of freedom.
pub fn t_upper_quantile(p: f64, nu: u32) -> Option<f64> {
    let normal = normal_upper_quantile(p)?;
    if nu == 0 {
        return None;
    }
    if normal <= 0.0 {
        return Some(0.0);
    }
    // ln Q is concave in ln t: the first step from the normal quantile, which is too small, passes the root, and
    // the next ones fall back to it.
    let step = |t: f64| {
        let tail = t_upper(t, nu);
        t * libm::exp(libm::log(tail / p) * tail / (t * t_density(t, nu)))
    };
    Some(fall_to_root(step(normal), step))
}

/// Chance that chi-square with `nu` degrees of freedom lies above `x`.
///
/// # Errors
/// NaN for no degree of freedom or where `x` is not a number.
pub fn chi_square_upper(x: f64, nu: u32) -> f64 {
    if nu == 0 || x.is_nan() {
        return f64::NAN;
    }
    if x <= 0.0 {
        return 1.0;
    }
    // Q(a + 1, y) = Q(a, y) + y^a e^-y / Gamma(a + 1), from Q(1/2, y) = erfc(sqrt y) or Q(0, y) = 0: positive terms
    // only. They are summed outwards from the largest, because the others may be too small for a float.
    let y = 0.5 * x;
    let odd = nu % 2 == 1;
    let (first, start) = if odd { (0.5, libm::erfc(y.sqrt())) } else { (0.0, 0.0) };
    let Some(last) = (nu / 2).checked_sub(1).map(f64::from) else { return start };
    let largest = libm::floor(y.min(last));
    let peak = poisson_term(first + largest, y);
    let mut sum = Sum::default();
    sum.add(start);
    let (mut term, mut at) = (peak, largest);
    while at > 0.0 {
        term *= (first + at) / y;
        at -= 1.0;
        sum.add(term);
    }
    sum.add(peak);
    (term, at) = (peak, largest);
    while at < last {
        at += 1.0;
        term *= y / (first + at);
        sum.add(term);
    }
    sum.total()
}

/// Chance that F with `over` and `under` degrees of freedom lies above `f`.
///
/// # Errors
/// NaN for no degree of freedom or where `f` is not a number.
pub fn f_upper(f: f64, over: u32, under: u32) -> f64 {
    if over == 0 || under == 0 || f.is_nan() {
        return f64::NAN;
    }
    if f <= 0.0 {
        return 1.0;
    }
    let (over, under) = (f64::from(over), f64::from(under));
    let whole = under + over * f;
    incomplete_beta(under / whole, over * f / whole, 0.5 * under, 0.5 * over)
}

/// Chance that at most `k` of `n` trials succeed, each with the chance `p`.
///
/// # Errors
/// NaN where `p` is no chance.
pub fn binomial_at_most(k: u32, n: u32, p: f64) -> f64 {
    if !(0.0..=1.0).contains(&p) {
        return f64::NAN;
    }
    if k >= n { 1.0 } else { incomplete_beta(1.0 - p, p, f64::from(n - k), f64::from(k) + 1.0) }
}

/// The t quantile with the same one-sided tail as `k` sigmas of a normal distribution, for a standard deviation from
/// `n` values: what `k` has to become where it rests on few repeats.
///
/// # Errors
/// `None` below two values and for a k outside 0 < k <= 20.
pub fn factor_for_few(k: f64, n: usize) -> Option<f64> {
    let nu = u32::try_from(n.checked_sub(1)?).ok()?;
    if !(k > 0.0 && k <= 20.0) {
        return None;
    }
    t_upper_quantile(normal_upper(k), nu)
}

/// Mean and variance of some values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Moments {
    /// How many values.
    pub n: usize,
    /// Their mean, in their unit.
    pub mean: f64,
    /// Their variance with n - 1 (0 for one value), in their unit squared.
    pub variance: f64,
}

impl Moments {
    /// Standard deviation, in the values' unit.
    pub fn sd(self) -> f64 {
        self.variance.sqrt()
    }
}

/// Mean and variance in two passes with compensated sums, about the first value, so that values that agree in their
/// leading digits lose none (NIST Statistical Reference Datasets, `NumAcc4`).
///
/// # Errors
/// `None` without values.
pub fn moments(values: &[f64]) -> Option<Moments> {
    let pivot = *values.first()?;
    let (offset, squares) = offset_and_squares(values.iter().map(|value| value - pivot));
    let variance = if values.len() > 1 { squares / (values.len() - 1) as f64 } else { 0.0 };
    Some(Moments { n: values.len(), mean: pivot + offset, variance })
}

/// Mean, and sum of squares about it. Of numbers taken from one of them: their mean is no further off than they scatter,
/// so its rounding is nothing to the squares.
fn offset_and_squares(values: impl Iterator<Item = f64> + Clone) -> (f64, f64) {
    let (mut sum, mut count) = (Sum::default(), 0.0);
    for value in values.clone() {
        sum.add(value);
        count += 1.0;
    }
    let mean = sum.total() / count;
    let mut squares = Sum::default();
    for value in values {
        let off = value - mean;
        squares.add(off * off);
    }
    (mean, squares.total())
}

/// One value held against the others (Grubbs, two-sided, 5 %). It flags and never removes: on a part, a hot spot *is*
/// the finding.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Grubbs {
    /// How many values.
    pub n: usize,
    /// Which value lies furthest from the mean (the first of equals).
    pub index: usize,
    /// Its distance in standard deviations of all values.
    pub g: f64,
    /// Chance of such a distance or a larger one among so many values of one normal distribution, at most (Bonferroni's
    /// bound, on which the critical distances rest too).
    pub p: f64,
}

impl Grubbs {
    /// True where the value lies beyond the critical distance: p below 5 %.
    pub fn is_flagged(self) -> bool {
        self.p < LEVEL
    }

    /// The distance that at most one set of values in twenty would pass by chance, for showing.
    pub fn critical(self) -> Option<f64> {
        let nu = u32::try_from(self.n).ok()?.checked_sub(2)?;
        let n = self.n as f64;
        let t = t_upper_quantile(LEVEL / (2.0 * n), nu)?;
        Some((n - 1.0) / n.sqrt() * (t * t / (f64::from(nu) + t * t)).sqrt())
    }
}

/// The value furthest from the mean.
///
/// # Errors
/// `None` below [`FEWEST_FOR_OUTLIERS`] values, and where all are equal.
///
/// # Source
/// G is beyond (n - 1) / sqrt(n) x sqrt(t² / (n - 2 + t²)), with t of level 0.05 / (2 n) and n - 2 degrees of freedom (as in
/// the R package `outliers`), just where the tail of t² = n (n - 2) G² / ((n - 1)² - n G²) is below that level: one tail
/// instead of a quantile for every spot.
pub fn grubbs(values: &[f64]) -> Option<Grubbs> {
    let n = values.len();
    if n < FEWEST_FOR_OUTLIERS {
        return None;
    }
    let Moments { mean, variance, .. } = moments(values)?;
    if variance <= 0.0 {
        return None;
    }
    let (mut index, mut furthest) = (0, 0.0);
    for (at, value) in values.iter().enumerate() {
        let distance = (value - mean).abs();
        if distance > furthest {
            (index, furthest) = (at, distance);
        }
    }
    let square = furthest * furthest / variance;
    let nu = u32::try_from(n - 2).ok()?;
    let count = n as f64;
    // Nothing is left where all the others are equal; rounding may make it less than nothing.
    let left = ((count - 1.0) * (count - 1.0) - count * square).max(0.0);
    let t = (count * f64::from(nu) * square / left).sqrt();
    Some(Grubbs { n, index, g: square.sqrt(), p: (2.0 * count * t_upper(t, nu)).min(1.0) })
}

/// One-way analysis of variance.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Anova {
    /// Mean square between groups over mean square within.
    pub f: f64,
    /// Groups less one.
    pub df_between: u32,
    /// Values less groups.
    pub df_within: u32,
    /// Chance of such an F or a larger one where the groups do not differ.
    pub p: f64,
    /// Mean square between, in the values' unit squared.
    pub ms_between: f64,
    /// Mean square within, in the values' unit squared.
    pub ms_within: f64,
    /// The size that equal groups would have: (N - sum of squared sizes / N) / (groups - 1).
    pub n0: f64,
    /// Standard deviation between groups, sqrt((MSB - MSW) / n0), 0 where MSB is the smaller; in the values' unit.
    pub s_bb: f64,
    /// The least that could have been seen, sqrt(MSW / n0) (2 / df)^(1/4) with the degrees of freedom within;
    /// in the values' unit.
    pub u_bb_min: f64,
}

/// One-way analysis of variance of groups of values; empty groups do not count.
///
/// # Errors
/// `None` with fewer than two groups, no group of two values, or no spread within any group: a ratio to nothing
/// proves nothing.
///
/// # Source
/// F test: as any textbook has it, held against NIST Statistical Reference Datasets. `s_bb` and `u_bb_min`: ISO Guide
/// 35, homogeneity, as restated by the R package `eCerto`.
pub fn anova(groups: &[&[f64]]) -> Option<Anova> {
    let groups: Vec<&[f64]> = groups.iter().copied().filter(|group| !group.is_empty()).collect();
    let pivot = *groups.first()?.first()?;
    let count: usize = groups.iter().map(|group| group.len()).sum();
    let df_between = u32::try_from(groups.len() - 1).ok().filter(|df| *df > 0)?;
    let df_within = u32::try_from(count - groups.len()).ok().filter(|df| *df > 0)?;
    let (grand, _) = offset_and_squares(groups.iter().flat_map(|group| group.iter().map(|x| x - pivot)));
    let (mut between, mut within, mut sizes) = (Sum::default(), Sum::default(), 0.0);
    for group in &groups {
        let size = group.len() as f64;
        let (mean, squares) = offset_and_squares(group.iter().map(|x| x - pivot));
        let off = mean - grand;
        between.add(size * off * off);
        within.add(squares);
        sizes += size * size;
    }
    let ms_between = between.total() / f64::from(df_between);
    let ms_within = within.total() / f64::from(df_within);
    if ms_within <= 0.0 {
        return None;
    }
    let n0 = (count as f64 - sizes / count as f64) / f64::from(df_between);
    let f = ms_between / ms_within;
    Some(Anova {
        f,
        df_between,
        df_within,
        p: f_upper(f, df_between, df_within),
        ms_between,
        ms_within,
        n0,
        s_bb: ((ms_between - ms_within) / n0).max(0.0).sqrt(),
        u_bb_min: (ms_within / n0).sqrt() * (2.0 / f64::from(df_within)).sqrt().sqrt(),
    })
}

/// A sum that keeps what each addition loses (Neumaier's variant of Kahan's).
#[derive(Clone, Copy, Default)]
struct Sum {
    sum: f64,
    lost: f64,
}

impl Sum {
    fn add(&mut self, value: f64) {
        let next = self.sum + value;
        self.lost +=
            if self.sum.abs() >= value.abs() { (self.sum - next) + value } else { (value - next) + self.sum };
        self.sum = next;
    }

    fn total(self) -> f64 {
        self.sum + self.lost
    }
}

fn is_tail(p: f64) -> bool {
    (1e-100..=0.5).contains(&p)
}

/// Newton's steps from a start above the root, for a function whose steps fall to it. Each doubles the digits; from the
/// farthest start five give ten digits, so that six give all that a float holds.
fn fall_to_root(start: f64, step: impl Fn(f64) -> f64) -> f64 {
    (0..6).fold(start, |at, _| step(at))
}

/// The density of Student's t.
fn t_density(t: f64, nu: u32) -> f64 {
    let nu = f64::from(nu);
    let square = t * t;
    // x^a (1 - x)^b / (a B(a, b)) = binomial term x b / (a + b), and the density is that over the share of t.
    let term = binomial_term(nu / (nu + square), square / (nu + square), 0.5 * nu, 0.5);
    term * (0.5 / (0.5 * nu + 0.5)) * (0.5 * nu) / t
}

/// The regularized incomplete beta function I(x; a, b), with y = 1 - x given so that neither end loses digits.
fn incomplete_beta(x: f64, y: f64, a: f64, b: f64) -> f64 {
    if x <= 0.0 {
        return 0.0;
    }
    if y <= 0.0 {
        return 1.0;
    }
    // On this side of the mean the terms fall from the first one on; on the other side it is the complement's that do, and
    // there the answer is never below 0.31.
    if x * (a + b) <= a { beta_series(x, y, a, b) } else { 1.0 - beta_series(y, x, b, a) }
}

/// I(x; a, b) = I(x; a + 1, b) + x^a y^b / (a B(a, b)) again and again (DLMF 8.17(iv)): positive terms only. For the x
/// given here each is smaller than the one before.
fn beta_series(x: f64, y: f64, a: f64, b: f64) -> f64 {
    let mut sum = Sum::default();
    let (mut term, mut at) = (1.0, 0.0);
    // The terms end up falling by the factor x, so that what is left out is at most the last term over y.
    while term > sum.total() * y * 1e-17 {
        sum.add(term);
        term *= (a + b + at) / (a + 1.0 + at) * x;
        at += 1.0;
    }
    sum.total() * binomial_term(x, y, a, b) * b / (a + b)
}

/// x^a y^b Gamma(a + b + 1) / (Gamma(a + 1) Gamma(b + 1)), with y = 1 - x.
#[allow(clippy::many_single_char_names, reason = "the names the formula has in the literature")]
fn binomial_term(x: f64, y: f64, a: f64, b: f64) -> f64 {
    let n = a + b;
    let exponent =
        stirling_rest(n) - stirling_rest(a) - stirling_rest(b) - deviance(a, n * x) - deviance(b, n * y);
    libm::exp(exponent) * (n / (2.0 * PI * a * b)).sqrt()
}

/// y^j e^-y / Gamma(j + 1).
fn poisson_term(j: f64, y: f64) -> f64 {
    if j <= 0.0 {
        return libm::exp(-y);
    }
    libm::exp(-stirling_rest(j) - deviance(j, y)) / (2.0 * PI * j).sqrt()
}

/// What Stirling's formula leaves over: ln Gamma(n + 1) - (n + 1/2) ln n + n - ln sqrt(2 pi).
fn stirling_rest(n: f64) -> f64 {
    if n <= 15.0 {
        return libm::lgamma(n + 1.0) - (n + 0.5) * libm::log(n) + n - 0.5 * libm::log(2.0 * PI);
    }
    let s = 1.0 / (n * n);
    (1.0 / 12.0 - s * (1.0 / 360.0 - s * (1.0 / 1260.0 - s * (1.0 / 1680.0 - s / 1188.0)))) / n
}

/// x ln(x / m) + m - x without cancellation where x is near m.
fn deviance(x: f64, m: f64) -> f64 {
    if (x - m).abs() >= 0.1 * (x + m) {
        return x * libm::log(x / m) + m - x;
    }
    // 2 x (v + v³ / 3 + v⁵ / 5 + ...) less the part that cancels; v < 0.1, so ten terms are all a float holds.
    let v = (x - m) / (x + m);
    let mut sum = (x - m) * v;
    let mut power = 2.0 * x * v;
    for odd in [3.0, 5.0, 7.0, 9.0, 11.0, 13.0, 15.0, 17.0, 19.0, 21.0] {
        power *= v * v;
        sum += power / odd;
    }
    sum
}

#[cfg(test)]
#[allow(clippy::float_cmp, clippy::excessive_precision, reason = "what is exact is asked to be exact")]
mod tests {
    use super::*;

    /// Relative agreement with a number that mpmath 1.4.1 gave with 50 digits.
    #[track_caller]
    fn agrees(found: f64, wanted: f64) {
        agrees_to(found, wanted, 1e-13);
    }

    #[track_caller]
    fn agrees_to(found: f64, wanted: f64, relative: f64) {
        let off = (found - wanted).abs();
        assert!(off <= wanted.abs() * relative, "{found:e} for {wanted:e}: off by {:e}", off / wanted.abs());
    }

    #[test]
    fn each_normal_tail_keeps_its_digits() {
        for (z, upper) in [
            (0.0, 0.5),
            (1.0, 0.158_655_253_931_457_05),
            (3.0, 0.001_349_898_031_630_094_5),
            (10.0, 7.619_853_024_160_526e-24),
            (-3.0, 0.998_650_101_968_369_9),
        ] {
            agrees(normal_upper(z), upper);
            assert_eq!(normal_lower(-z).to_bits(), normal_upper(z).to_bits());
        }
        // The rounding of z / sqrt 2 counts z² times.
        agrees_to(normal_upper(30.0), 4.906_713_927_148_187e-198, 3e-13);
    }

    #[test]
    fn a_normal_quantile_is_found_from_its_tail() {
        agrees(normal_upper_quantile(0.1).unwrap(), 1.281_551_565_544_600_5);
        agrees(normal_upper_quantile(0.025).unwrap(), 1.959_963_984_540_054_2);
        agrees(normal_upper_quantile(1e-10).unwrap(), 6.361_340_902_404_056);
        agrees(normal_upper_quantile(1e-100).unwrap(), 21.273_453_560_965_324);
        assert_eq!(normal_upper_quantile(0.5), Some(0.0));
        for none in [0.0, -0.1, 0.9e-100, 0.500_000_1, 1.0, f64::NAN] {
            assert_eq!(normal_upper_quantile(none), None, "{none}");
        }
    }

    #[test]
    fn the_tail_of_t_keeps_its_digits() {
        for (t, nu, upper) in [
            (0.0, 3, 0.5),
            (0.1, 5, 0.462_115_070_577_330_19),
            (0.001, 100, 0.499_602_053_880_051_7),
            (1.0, 1, 0.25),
            (1.5, 4, 0.104),
            (2.0, 4, 0.058_058_261_758_407_797),
            (9.2, 3, 0.001_358_023_024_966_353_4),
            (30.0, 9, 1.241_852_352_079_131_2e-10),
            (20.0, 30, 3.374_541_832_885_643e-19),
            (15.0, 200, 7.082_249_639_357_022e-35),
            (3.0, 1000, 0.001_383_354_522_119_096_2),
            (5.0, 100_000, 2.871_350_839_320_836_4e-7),
            (-2.0, 4, 0.941_941_738_241_592_2),
        ] {
            agrees(t_upper(t, nu), upper);
        }
        assert!(t_upper(1.0, 0).is_nan() && t_upper(f64::NAN, 3).is_nan());
    }

    #[test]
    fn a_quantile_of_t_gives_its_tail_back() {
        for nu in [1, 2, 3, 5, 9, 30, 200, 10_000] {
            for p in [0.49, 0.25, 0.1, 0.025, 1e-3, 2.866_515_718_791_939e-7, 1e-20, 1e-99] {
                let t = t_upper_quantile(p, nu).unwrap();
                agrees_to(t_upper(t, nu), p, 2e-12);
            }
            assert_eq!(t_upper_quantile(0.5, nu), Some(0.0));
        }
        assert_eq!(t_upper_quantile(0.1, 0), None);
        assert_eq!(t_upper_quantile(0.6, 5), None);
        assert_eq!(t_upper_quantile(0.0, 5), None);
    }

    #[test]
    fn the_tail_of_chi_square_keeps_its_digits() {
        for (x, nu, upper) in [
            (0.1, 1, 0.751_829_634_045_849_28),
            (0.1, 2, 0.951_229_424_500_714_01),
            (0.1, 3, 0.991_837_423_731_876_48),
            (5.0, 3, 0.171_797_144_296_733_14),
            (5.0, 4, 0.287_297_495_183_645_78),
            (121.803_977_272_727_28, 2, 3.553_058_829_059_634_3e-27),
            (80.0, 5, 8.391_825_114_831_61e-16),
            (200.0, 9, 3.312_992_393_909_553e-38),
            (300.0, 100, 7.412_100_857_322_877e-22),
            (1.0, 50, 1.0),
            (60.0, 50, 0.157_242_027_238_391_6),
            (1000.0, 999, 0.485_131_489_274_901_47),
            (1500.0, 999, 8.513_135_655_491_612e-23),
            (1.0, 20_000, 1.0),
            (20_500.0, 20_000, 0.006_517_863_488_342_559),
        ] {
            agrees(chi_square_upper(x, nu), upper);
        }
        // The exponent itself has 700 as its size, so a float keeps three digits less of it.
        agrees_to(chi_square_upper(1400.0, 2), 9.859_676_543_759_771e-305, 1e-12);
        assert_eq!((chi_square_upper(0.0, 4), chi_square_upper(-1.0, 1)), (1.0, 1.0));
        assert!(chi_square_upper(1.0, 0).is_nan() && chi_square_upper(f64::NAN, 3).is_nan());
    }

    #[test]
    fn what_stirlings_formula_leaves_over_keeps_its_digits() {
        agrees(stirling_rest(15.5), 0.005_375_599_032_926_834_5);
        agrees(stirling_rest(40.0), 0.002_083_289_938_302_421_7);
        // Here it is a difference of numbers of the size of ten.
        agrees_to(stirling_rest(3.5), 0.023_746_163_656_297_496, 1e-12);
    }

    #[test]
    fn the_tail_of_f_keeps_its_digits() {
        for (f, over, under, upper) in [
            (0.5, 3, 7, 0.694_036_387_568_813_72),
            (1.0, 1, 1, 0.5),
            (2.0, 5, 9, 0.172_709_876_414_435_99),
            (21.0, 8, 180, 2.583_264_337_268_971_4e-22),
            (40.0, 4, 20, 2.836_105_635_339_192e-9),
            (15.946_733_567_793, 1, 46, 0.000_232_684_448_338_925_46),
            (1.18, 4, 20, 0.349_636_291_209_431_67),
            (0.01, 2, 30, 0.990_053_132_454_768_43),
            (3.0, 500, 400, 7.058_643_333_722_155e-29),
            (1.0, 3, 100_000, 0.391_629_801_615_457_64),
        ] {
            agrees_to(f_upper(f, over, under), upper, 1e-12);
        }
        assert_eq!((f_upper(0.0, 2, 3), f_upper(-1.0, 2, 3)), (1.0, 1.0));
        for none in [f_upper(1.0, 0, 3), f_upper(1.0, 3, 0), f_upper(f64::NAN, 2, 3)] {
            assert!(none.is_nan());
        }
        assert_eq!(f_upper(f64::INFINITY, 2, 3), 0.0);
    }

    /// Three sigma from two, five and ten values: scipy 1.17.1, t.isf(norm.sf(3), n - 1).
    #[test]
    fn three_sigma_from_few_values_is_more_than_three() {
        agrees_to(factor_for_few(3.0, 2).unwrap(), 235.801_497_960_468_3, 1e-12);
        agrees_to(factor_for_few(3.0, 5).unwrap(), 6.620_205_966_815_868, 1e-12);
        agrees_to(factor_for_few(3.0, 10).unwrap(), 4.094_255_306_209_269, 1e-12);
        assert_eq!(factor_for_few(3.0, 1), None);
        assert_eq!(factor_for_few(3.0, 0), None);
        assert_eq!(factor_for_few(0.0, 5), None);
        assert_eq!(factor_for_few(-1.0, 5), None);
        assert_eq!(factor_for_few(20.5, 5), None);
        assert_eq!(factor_for_few(f64::NAN, 5), None);
        assert!(factor_for_few(20.0, 5).is_some());
    }

    #[test]
    fn mean_and_variance_of_small_sets_are_exact() {
        assert_eq!(moments(&[]), None);
        assert_eq!(moments(&[4.5]), Some(Moments { n: 1, mean: 4.5, variance: 0.0 }));
        let four = moments(&[1.0, 2.0, 3.0, 6.0]).unwrap();
        assert_eq!(four, Moments { n: 4, mean: 3.0, variance: 14.0 / 3.0 });
        assert_eq!(four.sd(), (14.0_f64 / 3.0).sqrt());
    }

    /// NIST Statistical Reference Datasets, `NumAcc4`: mean 10000000.2 and standard deviation 0.1 exactly. The numbers
    /// as floats are themselves off by up to 1e-9, which is what is left of the tolerance.
    #[test]
    fn values_that_agree_in_eight_digits_lose_none() {
        let mut values = vec![10_000_000.2];
        for _ in 0..500 {
            values.extend([10_000_000.1, 10_000_000.3]);
        }
        let found = moments(&values).unwrap();
        assert_eq!(found.mean, 10_000_000.2);
        agrees_to(found.sd(), 0.1, 1e-8);
        // The same numbers one by one after a large one that leaves again: a plain sum would lose them.
        let mut sum = Sum::default();
        for value in [1e16, 1.0, 1.0, -1e16] {
            sum.add(value);
        }
        assert_eq!(sum.total(), 2.0);
        let mut sum = Sum::default();
        for value in [1.0, 1e16, 1.0, -1e16] {
            sum.add(value);
        }
        assert_eq!(sum.total(), 2.0);
    }

    /// The eight mass-spectrometer values of a textbook example (from memory); statistics by scipy 1.17.1.
    #[test]
    fn the_value_far_from_the_others_is_flagged_and_named() {
        let values = [199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57];
        let found = grubbs(&values).unwrap();
        assert_eq!(found.index, 7);
        agrees(found.g, 2.468_764_611_212_45);
        agrees_to(found.critical().unwrap(), 2.126_645_087_195_468_5, 1e-12);
        agrees_to(found.p, 3.002_638_682_071_362e-7, 1e-9);
        assert!(found.is_flagged());
        let quiet = grubbs(&[98.0, 101.0, 99.5, 100.4, 97.8, 102.2]).unwrap();
        assert_eq!(quiet.index, 5);
        agrees(quiet.g, 1.381_168_762_413_488_5);
        assert!(!quiet.is_flagged());
        agrees_to(quiet.p, 0.839_662_290_832_337_3, 1e-10);
        // One apart from equals is as far as can be.
        let apart = grubbs(&[1.0, 0.0, 0.0, 0.0, 0.0]).unwrap();
        assert!(apart.p < 1e-20 && apart.is_flagged(), "{apart:?}");
        assert_eq!(grubbs(&[1.0, 2.0, 1.0, 2.0, 1.5]).unwrap().p, 1.0);
        let low = grubbs(&[50.0, 10.0, 50.0, 50.0, 50.5]).unwrap();
        assert_eq!(low.index, 1);
        assert!(low.is_flagged());
        assert!(!Grubbs { n: 5, index: 0, g: 1.7, p: 0.05 }.is_flagged());
    }

    #[test]
    fn outliers_are_not_sought_below_five_values_or_among_equals() {
        assert_eq!(grubbs(&[1.0, 1.0, 1.0, 9.0]), None);
        assert_eq!(grubbs(&[7.5; 6]), None);
        assert_eq!(grubbs(&[]), None);
        assert_eq!(grubbs(&[1.0, 9.0, 5.0, 5.0, 5.0]).unwrap().index, 0, "the first of equals");
    }

    /// Worked by hand: groups 1 2 3, 2 4, 9 about the grand mean 3.5.
    #[test]
    fn unequal_groups_are_analysed_as_by_hand() {
        let found = anova(&[&[1.0, 2.0, 3.0], &[], &[2.0, 4.0], &[9.0]]).unwrap();
        assert_eq!((found.df_between, found.df_within), (2, 3));
        // Between: 3 (2 - 3.5)² + 2 (3 - 3.5)² + (9 - 3.5)² = 37.5; within: 2 + 2 = 4.
        agrees(found.ms_between, 18.75);
        agrees(found.ms_within, 4.0 / 3.0);
        agrees(found.f, 14.0625);
        agrees(found.n0, (6.0 - 14.0 / 6.0) / 2.0);
        agrees(found.s_bb, ((18.75 - 4.0 / 3.0) / (11.0 / 6.0_f64)).sqrt());
        agrees(found.u_bb_min, (4.0 / 3.0 / (11.0 / 6.0_f64)).sqrt() * (2.0 / 3.0_f64).sqrt().sqrt());
        agrees(found.p, f_upper(14.0625, 2, 3));
    }

    #[test]
    fn groups_alike_have_no_spread_between_them() {
        let found = anova(&[&[1.0, 5.0], &[2.0, 4.0]]).unwrap();
        assert_eq!((found.f, found.p, found.s_bb), (0.0, 1.0, 0.0));
        assert_eq!(found.n0, 2.0);
        assert!(found.u_bb_min > 0.0);
    }

    #[test]
    fn an_analysis_needs_two_groups_and_a_spread_within() {
        assert_eq!(anova(&[]), None);
        assert_eq!(anova(&[&[], &[]]), None);
        assert_eq!(anova(&[&[1.0, 2.0]]), None);
        assert_eq!(anova(&[&[1.0], &[2.0]]), None);
        assert_eq!(anova(&[&[1.0, 1.0], &[2.0, 2.0]]), None);
    }
}
