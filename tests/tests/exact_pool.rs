//! Repeats of a spot, pooled once more in whole numbers and fractions, with quantiles from the committed tables: the program
//! says the same to the last digit.

use num_bigint::BigInt;
use num_rational::BigRational;
use num_traits::Zero;
use plumbline_core::pool::{FEW, PooledFrom, Repeat, pool, repeatability};
use plumbline_core::quantity::{Coverage, MassFraction, Sigma};
use plumbline_tests::chance::Chance;
use plumbline_tests::places::in_tests;
use plumbline_tests::twin::fraction::{parse, whole};

fn rows(name: &str) -> Vec<Vec<String>> {
    let path = in_tests("vectors").join(name);
    let mut reader = csv::Reader::from_path(path).expect("a table");
    reader.records().map(|row| row.expect("a row").iter().map(str::to_owned).collect()).collect()
}

fn fraction(text: &str) -> BigRational {
    parse(text, '.').expect("a number")
}

/// Upper tails of chi-square: degrees of freedom, x, p.
struct Tails(Vec<(usize, BigRational, BigRational)>);

impl Tails {
    fn read() -> Tails {
        let row = |row: Vec<String>| Some((row[0].parse().ok()?, fraction(&row[1]), fraction(&row[2])));
        Tails(rows("chi_square.csv").into_iter().filter_map(row).collect())
    }

    /// Whether p is at least 5 %; `None` where the table's steps are too wide to tell.
    fn agrees(&self, chi_square: &BigRational, freedom: usize) -> Option<bool> {
        let level = BigRational::new(BigInt::from(1), BigInt::from(20));
        let mut of = self.0.iter().filter(|(nu, ..)| *nu == freedom);
        if of.clone().any(|(_, x, p)| x >= chi_square && *p >= level) {
            return Some(true);
        }
        of.any(|(_, x, p)| x <= chi_square && *p < level).then_some(false)
    }
}

/// t for three sigma of `n` values.
fn t_for_few(n: usize) -> BigRational {
    let row = rows("t_for_few.csv")
        .into_iter()
        .find(|row| fraction(&row[0]) == whole(3) && row[1] == n.to_string());
    fraction(&row.expect("a row of the table")[2])
}

/// The smallest whole number whose square is at least this.
fn root_up(square: &BigRational) -> BigInt {
    let root = square.floor().to_integer().sqrt();
    if BigRational::from_integer(&root * &root) < *square { root + 1 } else { root }
}

fn up(number: &BigRational) -> BigInt {
    number.ceil().to_integer()
}

fn units(amount: MassFraction) -> BigInt {
    BigInt::from(amount.units())
}

#[test]
fn pooled_repeats_are_what_fractions_say() {
    let tails = Tails::read();
    let factors: Vec<BigRational> = (2..FEW).map(t_for_few).collect();
    let mut chance = Chance::new(4);
    let (mut disagree, mut partly, mut scatter, mut few_ones, mut stated_ones) = (0, 0, 0, 0, 0);
    for _ in 0..4_000 {
        let n = 2 + chance.below(10);
        let (middle, width) = (chance.below(2_000_000_000) as i64, 1 + chance.below(60_000_000));
        let base = 1 + chance.below(30_000_000) as i64;
        let missing = *chance.pick(&[0, 0, 1, n]);
        let constant = *chance.pick(&[0, 0, 1_234_567]);
        let given: Vec<(i64, Option<i64>)> = (0..n)
            .map(|at| {
                let value = middle + chance.below(width) as i64 - 20_000_000;
                (value, (at >= missing).then_some(base + chance.below(3) as i64 * base / 3))
            })
            .collect();
        let repeats: Vec<Repeat> = given
            .iter()
            .map(|(value, sigma)| {
                let sigma = sigma.and_then(|one| Sigma::from_one_sigma(MassFraction::from_units(one)));
                Repeat::new(MassFraction::from_units(*value), sigma)
            })
            .collect();
        let count = whole(n as i64);
        let sum: BigRational = given.iter().map(|(value, _)| whole(*value)).sum();
        let mean = &sum / &count;
        let squares: BigRational = given.iter().map(|(value, _)| (whole(*value) - &mean).pow(2)).sum();
        let sigmas: Vec<BigRational> = given.iter().filter_map(|(_, sigma)| sigma.map(whole)).collect();
        let complete = sigmas.len() == n;
        let agree = if complete {
            let weights: BigRational = sigmas.iter().map(|sigma| sigma.pow(-2)).sum();
            let each = || given.iter().zip(&sigmas);
            let about: BigRational =
                each().map(|((x, _), s)| whole(*x) / s.pow(2)).sum::<BigRational>() / weights;
            let chi_square: BigRational = each().map(|((x, _), s)| ((whole(*x) - &about) / s).pow(2)).sum();
            let Some(agree) = tails.agrees(&chi_square, n - 1) else { continue };
            Some(agree)
        } else {
            None
        };
        let of_one = &squares / whole(n as i64 - 1);
        let external = root_up(&(&of_one / &count));
        let few = agree != Some(true) && n < FEW;
        let enlarge = |sigma: &BigInt| {
            let sigma = BigRational::from_integer(sigma.clone());
            let million = whole(1_000_000);
            if few {
                let steps = up(&(&factors[n - 2] / whole(3) * &million));
                up(&(sigma * BigRational::from_integer(steps) / million))
            } else {
                sigma.to_integer()
            }
        };
        let shown = enlarge(&external);
        let sum_of_squares: BigRational = sigmas.iter().map(|sigma| sigma.pow(2)).sum();
        let stated = if complete {
            root_up(&(&sum_of_squares / (&count * &count)))
        } else if shown.is_zero() {
            BigInt::zero()
        } else {
            sigmas.iter().max().map_or(BigInt::zero(), BigRational::to_integer)
        };
        let random = stated.clone().max(shown.clone());
        let whole_square = &random * &random + BigInt::from(constant) * BigInt::from(constant);
        let sigma = (!random.is_zero()).then(|| root_up(&BigRational::from_integer(whole_square)));

        let found = pool(&repeats, MassFraction::from_units(constant), Coverage::THREE).expect("repeats");
        assert_eq!(units(found.mean), up(&mean), "{given:?}");
        assert_eq!(found.agree(), agree, "{given:?}");
        assert_eq!(found.external.map(units), Some(external), "{given:?}");
        assert_eq!(found.sigma.map(|sigma| units(sigma.to_mass_fraction())), sigma, "{given:?}");
        let from = match few {
            _ if shown <= stated => PooledFrom::Stated,
            true => PooledFrom::ScatterOfFew,
            false => PooledFrom::Scatter,
        };
        assert_eq!(found.from, from, "{given:?}");
        let one = root_up(&of_one);
        let of_reading =
            repeatability(&repeats, Coverage::THREE).map(|shown| units(shown.sigma.to_mass_fraction()));
        assert_eq!(of_reading, (!one.is_zero()).then(|| enlarge(&one)), "{given:?}");
        disagree += u32::from(agree == Some(false));
        partly += u32::from(!complete);
        scatter += u32::from(from == PooledFrom::Scatter);
        few_ones += u32::from(from == PooledFrom::ScatterOfFew);
        stated_ones += u32::from(from == PooledFrom::Stated);
    }
    for seen in [disagree, partly, scatter, few_ones, stated_ones] {
        assert!(seen > 100, "{disagree} {partly} {scatter} {few_ones} {stated_ones}");
    }
}
