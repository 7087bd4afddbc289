//! Repeats of one spot as one value, and spots beside each other.
//!
//! Repeats of one spot may become one value, whose uncertainty is the larger of what the readings state and what their
//! scatter shows. Different spots are never averaged: a hot spot *is* the finding. What a decision uses is whole
//! millionths of mg/kg, rounded so that rounding never clears; chances (p) and what is only shown are floats.
//!
//! # Source
//! The larger of the two: our choice, built on JCGM 100 (GUM) 4.2, from memory. The t factor for few: our reading of
//! "three sigma" where sigma is itself an estimate. Homogeneity between spots: ISO Guide 35 (see [`statistics::anova`]).

use crate::quantity::{Coverage, LARGEST_SIGMA_UNITS, LARGEST_UNITS, MassFraction, Sigma};
use crate::reading::codes;
use crate::statistics::{self, Anova, Grubbs};

/// Below this number of repeats a standard deviation that stands alone takes the t factor (the number is our choice; at
/// ten, three sigma are still 4.09).
pub const FEW: usize = 10;

/// Most repeats that are pooled: with more, the sums of squares could leave 128 bits, and nobody measures one spot a
/// hundred thousand times.
pub const MOST_REPEATS: usize = 100_000;

/// One reading of a spot.
#[derive(Clone, Copy, Debug)]
pub struct Repeat {
    /// The value in mg/kg.
    pub value: MassFraction,
    /// One sigma of this reading, without the constant part; none (or zero) where it has none.
    pub sigma: Option<Sigma>,
    /// The sigma for tests of agreement. It differs from `sigma` only where nobody said how many sigmas the printed error
    /// stands for: then one is taken there and three here, because here the small sigma is the strict one.
    pub sigma_for_tests: Option<Sigma>,
}

impl Repeat {
    /// A reading whose sigma is known.
    pub const fn new(value: MassFraction, sigma: Option<Sigma>) -> Repeat {
        Repeat { value, sigma, sigma_for_tests: sigma }
    }
}

codes! {
    /// Which uncertainty of a pooled value was the larger one.
    PooledFrom {
        /// What the readings state, divided by the root of their number.
        Stated => "stated",
        /// What their scatter shows.
        Scatter => "scatter",
        /// What the scatter of few readings shows, with the t factor.
        ScatterOfFew => "scatter_of_few",
    }
}

/// The factor that stands in for k where a standard deviation comes from few values.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct FactorForFew {
    /// The quantile of Student's t with the same one-sided tail as k sigmas of a normal distribution.
    pub t: f64,
    /// The rule's factor.
    pub k: f64,
}

impl FactorForFew {
    /// The factor of k for a standard deviation from `n` values.
    fn new(k: Coverage, n: usize) -> Option<FactorForFew> {
        let k = k.to_f64();
        statistics::factor_for_few(k, n).map(|t| FactorForFew { t, k })
    }

    /// `sigma` times t / k, in the same unit, rounded up: k times the result is t times `sigma`.
    fn enlarge(self, sigma: u128) -> u128 {
        let millionths = libm::ceil(self.t / self.k * 1e6) as u128;
        (sigma * millionths).div_ceil(1_000_000)
    }
}

/// Values about their weighted mean, against the sigmas they state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Agreement {
    /// Sum of squared distances in sigmas.
    pub chi_square: f64,
    /// Values less one.
    pub df: u32,
    /// Chance of so much scatter or more where the stated sigmas are right.
    pub p: f64,
}

impl Agreement {
    /// True where the scatter is no surprise: p of at least 5 %.
    pub fn agrees(self) -> bool {
        self.p >= statistics::LEVEL
    }
}

/// Repeats of one spot as one value.
#[derive(Clone, Copy, Debug)]
pub struct Pooled {
    /// How many repeats.
    pub n: usize,
    /// Their mean in mg/kg, rounded up to the next millionth of mg/kg: a tie at an upper limit is not rounded away.
    pub mean: MassFraction,
    /// Uncertainty of the mean from the stated sigmas, sqrt(sum u²) / n, rounded up; `None` where a reading has none.
    pub internal: Option<MassFraction>,
    /// Standard deviation of one reading, rounded up; `None` for one reading.
    pub scatter: Option<MassFraction>,
    /// Uncertainty of the mean from the scatter, s / sqrt(n), rounded up, before the t factor.
    pub external: Option<MassFraction>,
    /// The t factor, where it was applied to the scatter.
    pub few: Option<FactorForFew>,
    /// One sigma of the pooled value: the larger of the two (the scatter with its t factor), the constant part once in
    /// quadrature, rounded up. `None` where nothing shows an uncertainty, which is never a sigma of nothing.
    pub sigma: Option<Sigma>,
    /// Which of the two it is.
    pub from: PooledFrom,
    /// Whether the readings agree within what they state; `None` where that can't be asked.
    pub agreement: Option<Agreement>,
    /// The reading furthest from the others, from five readings on.
    pub outlier: Option<Grubbs>,
}

impl Pooled {
    /// False where the readings disagree: then the worst of them governs, not their mean.
    pub fn agree(&self) -> Option<bool> {
        self.agreement.map(Agreement::agrees)
    }
}

/// Pools repeats of one spot.
///
/// # Units
/// mg/kg, one sigma; `constant` is the part of the uncertainty that repeats share and that no repeating removes.
///
/// # The t rule
/// With fewer than [`FEW`] readings, t replaces k where the scatter stands alone: where a reading carries no uncertainty,
/// or where the scatter contradicts the uncertainties they carry (chi-square, p < 5 %). Where readings agree with what
/// they state and the scatter is the larger by chance, it counts with k itself, since the stated errors bring their own
/// degrees of freedom; otherwise two agreeing readings would be worth less than one. Our reading of the rule.
///
/// # Readings without uncertainty
/// Where only some state one, the largest of those counts undivided beside the scatter; without scatter there is none.
///
/// # Errors
/// `None` without readings, with more than [`MOST_REPEATS`], or with a value that no reading can have.
pub fn pool(repeats: &[Repeat], constant: MassFraction, k: Coverage) -> Option<Pooled> {
    let spread = Spread::of(repeats)?;
    let n = repeats.len();
    let agreement = agreement(repeats);
    let (stated, complete) = sum_of_squares(repeats);
    let count = n as u128;
    let external = spread.root_over(count * count);
    let few = few(k, n, agreement);
    let shown = few.map_or(external, |few| few.enlarge(external));
    // A reading that states nothing is not one without error: it makes no mean of the others surer, and where no scatter
    // speaks for it nothing does.
    let internal = match (complete, shown) {
        (true, _) => root_rounded_up(stated, count * count),
        (false, 0) => 0,
        (false, _) => largest_stated(repeats),
    };
    let from = match few {
        _ if shown <= internal => PooledFrom::Stated,
        Some(_) => PooledFrom::ScatterOfFew,
        None => PooledFrom::Scatter,
    };
    let constant = u128::from(constant.units().clamp(0, LARGEST_SIGMA_UNITS).unsigned_abs());
    let random = internal.max(shown).min(LARGEST_SIGMA_UNITS.unsigned_abs().into());
    let whole = root_rounded_up(random * random + constant * constant, 1);
    Some(Pooled {
        n,
        mean: spread.mean,
        internal: complete.then(|| amount(internal)),
        scatter: (n > 1).then(|| amount(spread.root_over(count))),
        external: (n > 1).then(|| amount(external)),
        few,
        sigma: (random > 0).then(|| sigma(whole)).flatten(),
        from,
        agreement,
        outlier: statistics::grubbs(&spread.differences),
    })
}

/// What repeats show about the uncertainty of one reading.
#[derive(Clone, Copy, Debug)]
pub struct Shown {
    /// How many repeats.
    pub n: usize,
    /// Standard deviation of one reading in mg/kg, rounded up.
    pub scatter: MassFraction,
    /// The t factor, where it was applied.
    pub few: Option<FactorForFew>,
    /// The sigma that this shows: the standard deviation, with the t factor by the same rule as in [`pool`].
    pub sigma: Sigma,
}

/// What repeats of one spot show about one reading: a floor under its sigma.
///
/// # Errors
/// `None` below two readings and where all are equal: that shows a coarse display, not a small uncertainty. Else as
/// [`pool`].
pub fn repeatability(repeats: &[Repeat], k: Coverage) -> Option<Shown> {
    let spread = Spread::of(repeats)?;
    let n = repeats.len();
    let scatter = spread.root_over(n as u128);
    if scatter == 0 {
        return None;
    }
    let few = few(k, n, agreement(repeats));
    let shown = few.map_or(scatter, |few| few.enlarge(scatter));
    Some(Shown { n, scatter: amount(scatter), few, sigma: sigma(shown)? })
}

/// Whether readings of one spot agree within the sigmas they state (the strict ones).
///
/// # Errors
/// `None` below two readings and where one states no sigma.
pub fn agreement(repeats: &[Repeat]) -> Option<Agreement> {
    let first = repeats.first()?.value.units();
    let values: Vec<f64> = repeats.iter().map(|repeat| from_first(repeat, first)).collect();
    let sigmas = repeats.iter().map(sigma_for_tests).collect::<Option<Vec<f64>>>()?;
    about_weighted_mean(&values, &sigmas)
}

/// How spots of one material differ.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spots {
    /// How many spots.
    pub spots: usize,
    /// How many readings.
    pub readings: usize,
    /// What was asked.
    pub test: SpotsTest,
    /// Standard deviation between spots beyond what one spot shows, in mg/kg; 0 where there is none to be seen.
    pub between: f64,
}

/// How spots were held against each other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum SpotsTest {
    /// Against the scatter within the spots. Mean squares in (mg/kg)².
    Scatter(Anova),
    /// Against the sigmas they state, because no spot shows a scatter.
    Stated(Agreement),
}

impl Spots {
    /// Chance of such a difference or a larger one between spots that do not differ.
    pub fn p(&self) -> f64 {
        match self.test {
            SpotsTest::Scatter(anova) => anova.p,
            SpotsTest::Stated(agreement) => agreement.p,
        }
    }

    /// True where the spots differ beyond chance (p below 5 %). False is no proof that they are alike.
    pub fn differ(&self) -> bool {
        self.p() < statistics::LEVEL
    }
}

/// Holds spots of one material against each other; averages nothing, decides nothing. Spots without readings do not
/// count.
///
/// # Errors
/// `None` below two spots, and where neither a scatter within a spot nor a sigma of every reading is there.
pub fn spots<Spot: AsRef<[Repeat]>>(groups: &[Spot]) -> Option<Spots> {
    let groups: Vec<&[Repeat]> = groups.iter().map(AsRef::as_ref).filter(|group| !group.is_empty()).collect();
    let first = groups.first()?.first()?.value.units();
    if groups.len() < 2 {
        return None;
    }
    let values: Vec<Vec<f64>> =
        groups.iter().map(|group| group.iter().map(|repeat| from_first(repeat, first)).collect()).collect();
    let slices: Vec<&[f64]> = values.iter().map(Vec::as_slice).collect();
    let readings = values.iter().map(Vec::len).sum();
    if let Some(anova) = statistics::anova(&slices) {
        return Some(Spots {
            spots: groups.len(),
            readings,
            test: SpotsTest::Scatter(anova),
            between: anova.s_bb,
        });
    }
    let means = slices
        .iter()
        .map(|values| statistics::moments(values).map(|moments| moments.mean))
        .collect::<Option<Vec<f64>>>()?;
    let sigmas = groups.iter().map(|group| sigma_of_mean(group)).collect::<Option<Vec<f64>>>()?;
    let agreement = about_weighted_mean(&means, &sigmas)?;
    let stated: f64 = sigmas.iter().map(|sigma| sigma * sigma).sum::<f64>() / sigmas.len() as f64;
    let variance = statistics::moments(&means)?.variance;
    Some(Spots {
        spots: groups.len(),
        readings,
        test: SpotsTest::Stated(agreement),
        between: (variance - stated).max(0.0).sqrt(),
    })
}

/// Readings that all saw nothing: the largest detection limit is the one that holds for the spot.
///
/// # Errors
/// `None` without limits.
pub fn below(limits: &[MassFraction]) -> Option<MassFraction> {
    limits.iter().copied().max()
}

/// Sums of whole units about the first value.
struct Spread {
    mean: MassFraction,
    /// n sum d² - (sum d)², which is n (n - 1) s².
    numerator: u128,
    /// n - 1.
    freedom: u128,
    differences: Vec<f64>,
}

impl Spread {
    fn of(repeats: &[Repeat]) -> Option<Spread> {
        let first = repeats.first()?.value.units();
        let possible = -LARGEST_UNITS..=LARGEST_UNITS;
        if repeats.len() > MOST_REPEATS
            || !repeats.iter().all(|repeat| possible.contains(&repeat.value.units()))
        {
            return None;
        }
        // |d| <= 1.84e13 and n <= 1e5: n sum d² <= 3.4e36, within 128 bits.
        let count = repeats.len() as i128;
        let (mut sum, mut squares) = (0_i128, 0_i128);
        let mut differences = Vec::with_capacity(repeats.len());
        for repeat in repeats {
            let difference = i128::from(repeat.value.units() - first);
            sum += difference;
            squares += difference * difference;
            differences.push(difference as f64);
        }
        // Rounded towards plus infinity.
        let offset = -(-sum).div_euclid(count);
        Some(Spread {
            mean: MassFraction::from_units(first + i64::try_from(offset).ok()?),
            numerator: u128::try_from(count * squares - sum * sum).ok()?,
            freedom: (repeats.len() - 1) as u128,
            differences,
        })
    }

    /// sqrt(numerator / (`count` (n - 1))) rounded up: s for n, s / sqrt(n) for n².
    fn root_over(&self, count: u128) -> u128 {
        root_rounded_up(self.numerator, (count * self.freedom).max(1))
    }
}

/// The t factor, where the scatter stands alone and comes from few readings.
fn few(k: Coverage, n: usize, agreement: Option<Agreement>) -> Option<FactorForFew> {
    let alone = !agreement.is_some_and(Agreement::agrees);
    if alone && n < FEW { FactorForFew::new(k, n) } else { None }
}

/// The sum of the squared sigmas, each rounded up, and whether every reading has one.
fn sum_of_squares(repeats: &[Repeat]) -> (u128, bool) {
    let mut complete = true;
    let sum = repeats
        .iter()
        .map(|repeat| {
            let sigma = stated(repeat.sigma);
            complete &= sigma.is_some();
            sigma.map_or(0, |sigma| sigma * sigma)
        })
        .sum();
    (sum, complete)
}

/// The largest stated sigma, rounded up.
fn largest_stated(repeats: &[Repeat]) -> u128 {
    repeats.iter().filter_map(|repeat| stated(repeat.sigma)).max().unwrap_or(0)
}

/// A stated sigma in units, rounded up; a zero is none.
fn stated(sigma: Option<Sigma>) -> Option<u128> {
    let sigma = sigma.filter(|sigma| !sigma.is_zero())?;
    let near = sigma.to_mass_fraction();
    let short = Sigma::from_one_sigma(near).is_some_and(|near| near.compare(sigma).is_lt());
    Some(u128::from(near.units().unsigned_abs()) + u128::from(short))
}

/// The strict sigma of one reading in mg/kg; a zero is none.
fn sigma_for_tests(repeat: &Repeat) -> Option<f64> {
    repeat.sigma_for_tests.filter(|sigma| !sigma.is_zero()).map(Sigma::to_mg_per_kg)
}

/// Uncertainty of the mean of one spot from its strict sigmas, in mg/kg.
fn sigma_of_mean(group: &[Repeat]) -> Option<f64> {
    let squares =
        group.iter().map(|repeat| sigma_for_tests(repeat).map(|sigma| sigma * sigma)).sum::<Option<f64>>()?;
    Some(squares.sqrt() / group.len() as f64)
}

/// Distance of a value from the first one, in mg/kg.
fn from_first(repeat: &Repeat, first: i64) -> f64 {
    MassFraction::from_units(repeat.value.units() - first).to_mg_per_kg()
}

/// Chi-square of values about their weighted mean; `None` below two.
fn about_weighted_mean(values: &[f64], sigmas: &[f64]) -> Option<Agreement> {
    let df = u32::try_from(values.len().checked_sub(1)?).ok().filter(|df| *df > 0)?;
    let weighted = || values.iter().zip(sigmas).map(|(value, sigma)| (*value, 1.0 / (sigma * sigma)));
    let weights: f64 = weighted().map(|(_, weight)| weight).sum();
    let mean = weighted().map(|(value, weight)| value * weight).sum::<f64>() / weights;
    let chi_square = weighted()
        .map(|(value, weight)| {
            let off = value - mean;
            off * off * weight
        })
        .sum();
    Some(Agreement { chi_square, df, p: statistics::chi_square_upper(chi_square, df) })
}

/// The smallest whole number whose square is at least `numerator / denominator`.
fn root_rounded_up(numerator: u128, denominator: u128) -> u128 {
    let root = (numerator / denominator).isqrt();
    root + u128::from(root * root * denominator < numerator)
}

fn amount(units: u128) -> MassFraction {
    MassFraction::from_units(i64::try_from(units).unwrap_or(i64::MAX))
}

/// As a sigma, at most the largest there is.
fn sigma(units: u128) -> Option<Sigma> {
    Sigma::from_one_sigma(amount(units.min(LARGEST_SIGMA_UNITS.unsigned_abs().into())))
}

#[cfg(test)]
#[allow(clippy::float_cmp, reason = "what is exact is asked to be exact")]
mod tests {
    use super::*;
    use crate::quantity::SigmaMultiple;

    fn mg(text: &str) -> MassFraction {
        crate::quantity::parse_with_unit(&format!("{text} mg/kg")).unwrap()
    }

    fn one_sigma(text: &str) -> Option<Sigma> {
        Sigma::from_one_sigma(mg(text))
    }

    /// Values with sigmas; an empty sigma is none.
    fn repeats(pairs: &[(&str, &str)]) -> Vec<Repeat> {
        pairs
            .iter()
            .map(|(value, sigma)| {
                Repeat::new(mg(value), if sigma.is_empty() { None } else { one_sigma(sigma) })
            })
            .collect()
    }

    fn bare(values: &[&str]) -> Vec<Repeat> {
        values.iter().map(|value| Repeat::new(mg(value), None)).collect()
    }

    fn pooled(repeats: &[Repeat]) -> Pooled {
        pool(repeats, MassFraction::ZERO, Coverage::THREE).unwrap()
    }

    fn sigma_of(pooled: &Pooled) -> MassFraction {
        pooled.sigma.unwrap().to_mass_fraction()
    }

    fn near(found: f64, wanted: f64) {
        assert!((found - wanted).abs() <= wanted.abs() * 1e-12, "{found:e} for {wanted:e}");
    }

    /// 277 / 3; sqrt(48) / 3 = 2.3094010...; s = sqrt(19 / 3) = 2.5166114...; s / sqrt 3 = 1.4529663...
    #[test]
    fn readings_that_agree_keep_the_larger_of_stated_and_shown() {
        let found = pooled(&repeats(&[("92", "4"), ("95", "4"), ("90", "4")]));
        assert_eq!((found.n, found.mean), (3, mg("92.333334")));
        assert_eq!(found.internal, Some(mg("2.309402")));
        assert_eq!(found.scatter, Some(mg("2.516612")));
        assert_eq!(found.external, Some(mg("1.452967")));
        assert_eq!(sigma_of(&found), mg("2.309402"));
        assert_eq!((found.from, found.few, found.agree()), (PooledFrom::Stated, None, Some(true)));
        // scipy 1.17.1: chi-square 0.79166..., p 0.67311...
        let agreement = found.agreement.unwrap();
        near(agreement.chi_square, 0.791_666_666_666_666_7);
        near(agreement.p, 0.673_118_873_067_877_2);
        assert_eq!(agreement.df, 2);
    }

    /// sqrt(2.309402² + 1.5²) = 2.7537860...
    #[test]
    fn the_constant_part_comes_once_and_is_rounded_up() {
        let three = repeats(&[("92", "4"), ("95", "4"), ("90", "4")]);
        let found = pool(&three, mg("1.5"), Coverage::THREE).unwrap();
        assert_eq!(sigma_of(&found), mg("2.753787"));
        assert_eq!(found.internal, Some(mg("2.309402")));
        let negative = pool(&three, mg("-1.5"), Coverage::THREE).unwrap();
        assert_eq!(sigma_of(&negative), mg("2.309402"), "a negative constant part is none");
    }

    /// chi-square (10)² / (2 x 25) = 2, p 0.157: the scatter is larger by chance, and counts with k itself.
    #[test]
    fn two_readings_that_agree_are_not_worth_less_than_one() {
        let found = pooled(&repeats(&[("100", "5"), ("110", "5")]));
        assert_eq!((found.from, found.few, found.agree()), (PooledFrom::Scatter, None, Some(true)));
        assert_eq!(sigma_of(&found), mg("5"));
        assert_eq!(found.internal, Some(mg("3.535534")));
        assert_eq!(found.mean, mg("105"));
    }

    /// t for two values and three sigma is 235.80149796...; a third of it 78.60049932...; s / sqrt 2 = 1.
    #[test]
    fn a_scatter_that_stands_alone_takes_the_t_factor() {
        let found = pooled(&bare(&["10", "12"]));
        let few = found.few.unwrap();
        near(few.t, 235.801_497_960_468_3);
        assert_eq!((few.k, found.from, found.agree()), (3.0, PooledFrom::ScatterOfFew, None));
        assert_eq!((found.internal, found.external), (None, Some(mg("1"))));
        assert_eq!(found.scatter, Some(mg("1.414214")));
        assert_eq!(sigma_of(&found), mg("78.6005"));
    }

    /// 20.207260 x 6.402249 (19.20674421... / 3, rounded up) = 129.37191...
    #[test]
    fn readings_that_disagree_take_the_t_factor() {
        let found = pooled(&repeats(&[("60", "4"), ("95", "4"), ("130", "5")]));
        assert_eq!((found.from, found.agree()), (PooledFrom::ScatterOfFew, Some(false)));
        assert_eq!(found.external, Some(mg("20.20726")));
        assert_eq!(sigma_of(&found), MassFraction::from_units(129_371_911));
        // scipy 1.17.1, chi2.sf.
        near(found.agreement.unwrap().p, 3.553_058_829_059_638e-27);
    }

    #[test]
    fn ten_readings_are_no_longer_few() {
        let values = ["1", "2", "3", "1", "2", "3", "1", "2", "3", "2"];
        let ten = pooled(&bare(&values));
        assert_eq!((ten.few, ten.from, ten.n), (None, PooledFrom::Scatter, 10));
        let nine = pooled(&bare(&values[..9]));
        assert!(nine.few.is_some());
        // s² = 6 / 8 over nine readings, s / 3 = 0.2886751..., t / k = 4.27663254... / 3.
        assert_eq!(nine.external, Some(mg("0.288676")));
        near(nine.few.unwrap().t, 4.276_632_543_373_757);
        assert_eq!(sigma_of(&nine), MassFraction::from_units(411_521));
    }

    #[test]
    fn equal_readings_without_uncertainty_show_none() {
        let found = pooled(&bare(&["10", "10", "10"]));
        assert!(found.sigma.is_none());
        assert_eq!(found.scatter, Some(MassFraction::ZERO));
        let with_constant = pool(&bare(&["10", "10"]), mg("2"), Coverage::THREE).unwrap();
        assert!(with_constant.sigma.is_none(), "a constant part alone is no repeatability");
        let zero = pooled(&repeats(&[("10", "0"), ("10", "0")]));
        assert!(zero.sigma.is_none());
        assert_eq!((zero.internal, zero.agree()), (None, None), "a printed zero is no uncertainty");
    }

    #[test]
    fn one_reading_stays_what_it_is() {
        let found = pool(&repeats(&[("10", "3")]), mg("4"), Coverage::THREE).unwrap();
        assert_eq!((found.n, found.mean, sigma_of(&found)), (1, mg("10"), mg("5")));
        assert_eq!((found.scatter, found.external, found.few), (None, None, None));
        assert_eq!((found.agree(), found.outlier), (None, None));
        assert!(pooled(&bare(&["10"])).sigma.is_none());
        assert!(pool(&[], MassFraction::ZERO, Coverage::THREE).is_none());
    }

    /// 40 is more than 0.25 x 78.6005 and less than 1 x 78.6005.
    #[test]
    fn a_reading_without_uncertainty_leaves_the_largest_stated_one_whole() {
        let found = pooled(&repeats(&[("100", "40"), ("100.5", "")]));
        assert_eq!((found.internal, found.agree()), (None, None));
        assert_eq!((found.from, sigma_of(&found)), (PooledFrom::Stated, mg("40")));
        let scattered = pooled(&repeats(&[("100", "40"), ("102", "")]));
        assert_eq!((scattered.from, sigma_of(&scattered)), (PooledFrom::ScatterOfFew, mg("78.6005")));
        // Equal readings show no scatter: nothing stands for the one that states none.
        assert!(pooled(&repeats(&[("54", "8"), ("54", "")])).sigma.is_none());
    }

    /// 106 - 100 with sigma 3 each: chi-square 2; with sigma 1 each: 18.
    #[test]
    fn where_the_multiple_is_unknown_the_small_sigma_tests_and_the_large_one_counts() {
        let mut two = repeats(&[("100", "3"), ("106", "3")]);
        assert_eq!(pooled(&two).agree(), Some(true));
        for repeat in &mut two {
            repeat.sigma_for_tests = Sigma::from_printed(mg("3"), SigmaMultiple::THREE);
        }
        let found = pooled(&two);
        near(found.agreement.unwrap().chi_square, 18.0);
        assert_eq!((found.agree(), found.internal), (Some(false), Some(mg("2.121321"))));
        assert_eq!(found.from, PooledFrom::ScatterOfFew);
        two[1].sigma_for_tests = None;
        assert_eq!(pooled(&two).agree(), None);
    }

    #[test]
    fn a_mean_is_rounded_towards_plus_infinity() {
        let units = |values: &[i64]| {
            let repeats: Vec<Repeat> =
                values.iter().map(|value| Repeat::new(MassFraction::from_units(*value), None)).collect();
            pooled(&repeats).mean.units()
        };
        assert_eq!(units(&[1, 2]), 2);
        assert_eq!(units(&[2, 1]), 2);
        assert_eq!(units(&[-1, -2]), -1);
        assert_eq!(units(&[-2, -1]), -1);
        assert_eq!(units(&[-1, 1]), 0);
        assert_eq!(units(&[3, 3, 4]), 4);
        assert_eq!(units(&[3, 4, 5]), 4);
    }

    #[test]
    fn a_stated_sigma_is_rounded_up_too() {
        // 1 / 3 of a millionth is counted as one.
        let third = Sigma::from_printed(MassFraction::from_units(1), SigmaMultiple::THREE);
        assert_eq!(stated(third), Some(1));
        let of = |units| stated(Sigma::from_printed(MassFraction::from_units(units), SigmaMultiple::THREE));
        assert_eq!((of(10), of(11), of(12)), (Some(4), Some(4), Some(4)));
        assert_eq!(stated(Sigma::from_one_sigma(MassFraction::ZERO)), None);
        assert_eq!(stated(None), None);
    }

    #[test]
    fn roots_are_rounded_up_and_exact_ones_stay() {
        for (numerator, denominator, root) in [
            (0, 7, 0),
            (1, 1, 1),
            (2, 1, 2),
            (4, 1, 2),
            (5, 1, 3),
            (9, 4, 2),
            (16, 4, 2),
            (17, 4, 3),
            (1, 100, 1),
        ] {
            assert_eq!(root_rounded_up(numerator, denominator), root, "{numerator} / {denominator}");
        }
    }

    #[test]
    fn the_largest_values_do_not_overflow_and_larger_ones_are_refused() {
        let at = |units| Repeat::new(MassFraction::from_units(units), None);
        let wide: Vec<Repeat> =
            (0..MOST_REPEATS).map(|n| at(if n % 2 == 0 { LARGEST_UNITS } else { -LARGEST_UNITS })).collect();
        let found = pooled(&wide);
        assert_eq!((found.mean, found.n), (MassFraction::ZERO, MOST_REPEATS));
        // s = 9.2e12 sqrt(n / (n - 1)).
        assert_eq!(found.scatter.unwrap().units(), 9_200_046_000_346);
        let mut more = wide;
        more.push(at(0));
        assert!(pool(&more, MassFraction::ZERO, Coverage::THREE).is_none());
        assert!(pool(&[at(LARGEST_UNITS + 1)], MassFraction::ZERO, Coverage::THREE).is_none());
        assert!(pool(&[at(0), at(-LARGEST_UNITS - 1)], MassFraction::ZERO, Coverage::THREE).is_none());
        let five = Coverage::from_tenths(50).unwrap();
        let found = pool(&[at(LARGEST_UNITS), at(-LARGEST_UNITS)], mg("9000000"), five).unwrap();
        assert_eq!(sigma_of(&found).units(), LARGEST_SIGMA_UNITS);
    }

    #[test]
    fn the_reading_far_from_the_others_is_flagged_and_stays_in_the_mean() {
        let found = pooled(&bare(&["98", "101", "99.5", "100.4", "97.8", "122.2"]));
        let outlier = found.outlier.unwrap();
        assert!(outlier.is_flagged());
        assert_eq!(outlier.index, 5);
        // scipy 1.17.1.
        near(outlier.g, 2.022_582_487_412_237_6);
        assert_eq!(found.mean, mg("103.15"));
        assert_eq!(pooled(&bare(&["1", "1", "1", "9"])).outlier, None);
    }

    #[test]
    fn repeats_show_what_one_reading_is_worth() {
        let alone = repeatability(&bare(&["10", "12"]), Coverage::THREE).unwrap();
        assert_eq!((alone.n, alone.scatter), (2, mg("1.414214")));
        // 1.414214 x 78.600500, rounded up.
        assert_eq!(alone.sigma.to_mass_fraction(), MassFraction::from_units(111_157_928));
        near(alone.few.unwrap().t, 235.801_497_960_468_3);
        let agreeing = repeatability(&repeats(&[("100", "5"), ("110", "5")]), Coverage::THREE).unwrap();
        assert_eq!(agreeing.few, None);
        assert_eq!(agreeing.sigma.to_mass_fraction(), mg("7.071068"));
        assert!(repeatability(&bare(&["10"]), Coverage::THREE).is_none());
        assert!(repeatability(&bare(&["10", "10"]), Coverage::THREE).is_none());
        assert!(repeatability(&[], Coverage::THREE).is_none());
    }

    #[test]
    fn the_factor_folded_into_sigma_is_never_short_of_t_times_s() {
        for n in 2..FEW {
            for tenths in [1, 10, 20, 30, 50] {
                let k = Coverage::from_tenths(tenths).unwrap();
                let few = FactorForFew::new(k, n).unwrap();
                for s in [1_u128, 7, 1_000_003, 123_456_789] {
                    let short = k.to_f64() * few.enlarge(s) as f64 / (few.t * s as f64);
                    assert!(short >= 1.0 - 1e-12, "{n} {tenths} {s}: {short}");
                    assert!(few.enlarge(s) as f64 <= few.t / few.k * s as f64 + s as f64 * 1e-6 + 1.0);
                }
            }
        }
        assert_eq!(FactorForFew { t: 6.0, k: 3.0 }.enlarge(5), 10);
        assert_eq!(FactorForFew { t: 4.5, k: 3.0 }.enlarge(5), 8);
    }

    #[test]
    fn p_of_exactly_five_per_cent_still_agrees() {
        assert!(Agreement { chi_square: 1.0, df: 1, p: 0.05 }.agrees());
        assert!(!Agreement { chi_square: 1.0, df: 1, p: 0.0499 }.agrees());
        let spots = |p| Spots {
            spots: 2,
            readings: 2,
            test: SpotsTest::Stated(Agreement { chi_square: 1.0, df: 1, p }),
            between: 0.0,
        };
        assert!(!spots(0.05).differ());
        assert!(spots(0.0499).differ());
    }

    /// F of 1 2 3, 2 4 and 9 is 14.0625 (worked in `statistics`).
    #[test]
    fn spots_are_held_against_the_scatter_within_them() {
        let found = spots(&[bare(&["1", "2", "3"]), bare(&[]), bare(&["2", "4"]), bare(&["9"])]).unwrap();
        assert_eq!((found.spots, found.readings), (3, 6));
        let SpotsTest::Scatter(anova) = found.test else { panic!("{found:?}") };
        near(anova.f, 14.0625);
        near(anova.ms_within, 4.0 / 3.0);
        assert_eq!(found.p(), anova.p);
        assert_eq!(found.between, anova.s_bb);
        assert!(found.differ());
    }

    /// 10 and 16 with sigma 1 each: chi-square 18, variance 18 less 1.
    #[test]
    fn single_readings_of_spots_are_held_against_their_sigmas() {
        let found = spots(&[repeats(&[("10", "1")]), repeats(&[("16", "1")])]).unwrap();
        let SpotsTest::Stated(agreement) = found.test else { panic!("{found:?}") };
        near(agreement.chi_square, 18.0);
        near(found.between, 17.0_f64.sqrt());
        near(found.p(), 2.209_049_699_858_544e-5);
        assert!(found.differ());
        let alike =
            spots(&[repeats(&[("10", "4")]), repeats(&[("11", "4")]), repeats(&[("12", "4")])]).unwrap();
        assert_eq!((alike.between, alike.differ(), alike.spots, alike.readings), (0.0, false, 3, 3));
    }

    /// Two equal readings a spot show no scatter, so their stated sigmas are asked: 2 / sqrt 2 each, 4² / (2 x 2) = 4.
    #[test]
    fn spots_without_scatter_fall_back_to_what_they_state() {
        let pair = |value: &str| repeats(&[(value, "2"), (value, "2")]);
        let found = spots(&[pair("10"), pair("14")]).unwrap();
        let SpotsTest::Stated(agreement) = found.test else { panic!("{found:?}") };
        near(agreement.chi_square, 4.0);
        assert_eq!((found.spots, found.readings), (2, 4));
        near(found.between, 6.0_f64.sqrt());
    }

    /// 3 millionths apart with a sigma of one: 9 / 2.
    #[test]
    fn readings_that_agree_in_twelve_digits_lose_none() {
        let two = repeats(&[("9000000", "0.000001"), ("9000000.000003", "0.000001")]);
        near(agreement(&two).unwrap().chi_square, 4.5);
        let found = spots(&[&two[..1], &two[1..]]).unwrap();
        let SpotsTest::Stated(agreement) = found.test else { panic!("{found:?}") };
        near(agreement.chi_square, 4.5);
    }

    #[test]
    fn one_spot_or_no_uncertainty_gives_no_answer() {
        assert_eq!(spots(&[bare(&["1", "2"])]), None);
        assert_eq!(spots::<Vec<Repeat>>(&[]), None);
        assert_eq!(spots(&[bare(&[]), bare(&[])]), None);
        assert_eq!(spots(&[bare(&["1"]), bare(&["2"])]), None);
        assert_eq!(spots(&[repeats(&[("1", "1")]), bare(&["2"])]), None);
    }

    #[test]
    fn of_several_detection_limits_the_largest_holds() {
        assert_eq!(below(&[mg("5"), mg("9"), mg("7")]), Some(mg("9")));
        assert_eq!(below(&[]), None);
    }
}
