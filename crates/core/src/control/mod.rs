//! Control charts of check readings: individuals and moving ranges, run rules, drift.
//!
//! A chart judges no reading: what a check reading is worth to the readings around it, [`crate::trust`] decides by its
//! score. A chart shows what single scores don't: a shift or a drift while each of them is still good. Too few points
//! give no limits, and a chart without limits says nothing of being in control.

mod drift;
mod rules;

use std::f64::consts::FRAC_2_SQRT_PI;

pub use drift::{Drift, FEWEST_POINTS, Line, TOLD_OVER_DAYS, drift, line};
pub use rules::{Pattern, RULES, RuleSet, RunRule, SignalCode};

use crate::data_file::ProblemCode;
use crate::fields;
use crate::reading::codes;
use crate::statistics::moments;

/// Mean moving range of two normal values in sigmas, d2 for n = 2: 2 / sqrt(pi) (ISO 7870-2).
pub const D2: f64 = FRAC_2_SQRT_PI;
/// Standard deviation of a range of two in sigmas, d3 for n = 2: sqrt(2 - 4 / pi) (ISO 7870-2).
const D3: f64 = 0.852_502_466_427_423_3;
/// Three sigma in mean moving ranges, E2 for n = 2 (ISO 7870-2).
pub const E2: f64 = 3.0 / D2;
/// Upper limit of a moving range in mean moving ranges, D4 for n = 2 (ISO 7870-2); the lower one is 0.
pub const D4: f64 = 1.0 + 3.0 * D3 / D2;

/// Points of a baseline where nobody says how many (our choice: limits from fewer are vague).
pub const USUAL_BASELINE: usize = 20;
/// Fewest points of a baseline (our choice).
pub const SMALLEST_BASELINE: usize = 8;
/// Most points of a baseline (our choice).
const LARGEST_BASELINE: usize = 1000;

codes! {
    /// What centre and limits rest on.
    LimitsFrom {
        /// The first points: their mean and mean moving range.
        Baseline => "baseline",
        /// The certified value, its uncertainty and the repeatability of a reading.
        Certificate => "certificate",
    }
}

codes! {
    /// Why a chart has no limits.
    NoLimits {
        /// Fewer points than the baseline needs.
        TooFewPoints => "too_few_points",
        /// All points of the baseline are alike.
        NoSpread => "no_spread",
        /// Limits from the certificate are asked for, and the sample has none for the element.
        NoCertificate => "no_certificate",
        /// Limits from the certificate, and neither the site's table nor the readings tell the repeatability.
        NoRepeatability => "no_repeatability",
    }
}

/// How charts are made.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ChartRule {
    /// What limits rest on; `None`: the baseline where there are points enough, else the certificate.
    pub limits: Option<LimitsFrom>,
    /// Points of the baseline.
    pub points: usize,
    /// The run rules.
    pub rules: RuleSet,
}

impl Default for ChartRule {
    fn default() -> ChartRule {
        ChartRule { limits: None, points: USUAL_BASELINE, rules: RuleSet::WesternElectric }
    }
}

impl ChartRule {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 3] = ["limits", "points", "rules"];

    /// Reads `limits=baseline;points=20;rules=western_electric`; each may be left out.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<ChartRule, ProblemCode> {
        let found = fields::read(text, &ChartRule::FIELDS)?;
        let mut rule = ChartRule::default();
        match fields::field(&found, "limits") {
            "" => {}
            code => {
                let known = LimitsFrom::ALL.iter().copied().find(|from| from.code() == code);
                rule.limits = Some(known.ok_or(ProblemCode::UnknownName)?);
            }
        }
        match fields::field(&found, "points") {
            "" => {}
            number => {
                let points = number.parse().ok();
                let possible =
                    points.filter(|points| (SMALLEST_BASELINE..=LARGEST_BASELINE).contains(points));
                rule.points = possible.ok_or(ProblemCode::OutOfRange)?;
            }
        }
        match fields::field(&found, "rules") {
            "" => {}
            code => rule.rules = RuleSet::from_code(code).ok_or(ProblemCode::UnknownName)?,
        }
        Ok(rule)
    }
}

/// What is certified of the element of a chart.
///
/// # Units
/// mg/kg, one sigma.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Certified {
    /// The certified value.
    pub value: f64,
    /// Its standard uncertainty.
    pub sigma: f64,
    /// The repeatability of one reading; `None` where nothing tells it.
    pub repeatability: Option<f64>,
}

/// Centre and limits of a chart.
///
/// # Units
/// mg/kg.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// What they rest on.
    pub from: LimitsFrom,
    /// Points of the baseline; 0 for limits from the certificate.
    pub points: usize,
    /// The centre.
    pub centre: f64,
    /// One sigma.
    pub sigma: f64,
    /// Three sigma below the centre.
    pub lower: f64,
    /// Three sigma above it.
    pub upper: f64,
    /// Centre of the moving ranges.
    pub range_centre: f64,
    /// Their upper limit.
    pub range_upper: f64,
}

impl Limits {
    fn new(from: LimitsFrom, points: usize, centre: f64, sigma: f64, mean_range: f64) -> Limits {
        Limits {
            from,
            points,
            centre,
            sigma,
            lower: centre - 3.0 * sigma,
            upper: centre + 3.0 * sigma,
            range_centre: mean_range,
            range_upper: D4 * mean_range,
        }
    }

    /// Limits from the first points: their mean, and their mean moving range over d2 as sigma.
    ///
    /// # Errors
    /// Too few points, or all of them alike.
    pub fn of_baseline(values: &[f64], points: usize) -> Result<Limits, NoLimits> {
        let first = values.get(..points.max(SMALLEST_BASELINE)).ok_or(NoLimits::TooFewPoints)?;
        let mean = |values: &[f64]| moments(values).map_or(0.0, |found| found.mean);
        let range = mean(&moving_ranges(first));
        if range > 0.0 {
            Ok(Limits::new(LimitsFrom::Baseline, first.len(), mean(first), range / D2, range))
        } else {
            Err(NoLimits::NoSpread)
        }
    }

    /// Limits from the certificate: its value, and its uncertainty and the repeatability as one sigma. Moving ranges know
    /// nothing of the certificate's uncertainty.
    ///
    /// # Errors
    /// No certificate, or no repeatability.
    pub fn of_certificate(certified: Option<Certified>) -> Result<Limits, NoLimits> {
        let certified = certified.ok_or(NoLimits::NoCertificate)?;
        let own = certified.repeatability.filter(|own| *own > 0.0).ok_or(NoLimits::NoRepeatability)?;
        let sigma = (certified.sigma * certified.sigma + own * own).sqrt();
        Ok(Limits::new(LimitsFrom::Certificate, 0, certified.value, sigma, D2 * own))
    }
}

/// The ranges between each point and the one before.
pub fn moving_ranges(values: &[f64]) -> Vec<f64> {
    values.windows(2).map(|pair| (pair[1] - pair[0]).abs()).collect()
}

/// A point at which something is said.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Signal {
    /// Index of the point that completes it.
    pub at: usize,
    /// What.
    pub code: SignalCode,
}

/// A chart of individuals and moving ranges.
#[derive(Clone, Debug, PartialEq)]
pub struct Chart {
    /// Centre and limits, or why there are none.
    pub limits: Result<Limits, NoLimits>,
    /// The run rules it is looked at by.
    pub rules: RuleSet,
    /// What they say, by point; nothing without limits.
    pub signals: Vec<Signal>,
    /// What the values do with time; `None` where too few of them have one.
    pub drift: Option<Drift>,
}

/// Makes the chart of values (mg/kg) in the order of their times, with the time in days where it is known.
pub fn chart(points: &[(Option<f64>, f64)], certified: Option<Certified>, rule: ChartRule) -> Chart {
    let values: Vec<f64> = points.iter().map(|(_, value)| *value).collect();
    let limits = match rule.limits {
        Some(LimitsFrom::Baseline) => Limits::of_baseline(&values, rule.points),
        Some(LimitsFrom::Certificate) => Limits::of_certificate(certified),
        None => Limits::of_baseline(&values, rule.points)
            .or_else(|why| Limits::of_certificate(certified).map_err(|_| why)),
    };
    let timed: Vec<(f64, f64)> = points.iter().filter_map(|(time, value)| Some(((*time)?, *value))).collect();
    Chart {
        signals: limits.map_or_else(|_| Vec::new(), |limits| signals(&values, limits, rule.rules)),
        limits,
        rules: rule.rules,
        drift: drift(&timed),
    }
}

/// Every signal of a rule set, and of moving ranges above their limit, in the order of the points.
pub fn signals(values: &[f64], limits: Limits, rules: RuleSet) -> Vec<Signal> {
    let z: Vec<f64> = values.iter().map(|value| (value - limits.centre) / limits.sigma).collect();
    let ranges = moving_ranges(values);
    let mut found = Vec::new();
    for at in 0..z.len() {
        let so_far = z.get(..=at).unwrap_or(&z);
        let of_rules = rules.rules().filter(|rule| rule.signals(so_far)).map(|rule| rule.code);
        let before = at.checked_sub(1).and_then(|before| ranges.get(before));
        let jump = before.is_some_and(|range| *range > limits.range_upper).then_some(SignalCode::MovingRange);
        found.extend(of_rules.chain(jump).map(|code| Signal { at, code }));
    }
    found
}

#[cfg(test)]
mod tests {
    use super::*;

    const EVEN: [f64; 8] = [10.0, 12.0, 10.0, 12.0, 10.0, 12.0, 10.0, 12.0];

    #[test]
    fn a_baseline_gives_its_mean_and_three_mean_ranges_over_d2() {
        let limits = Limits::of_baseline(&EVEN, 8).unwrap();
        assert_eq!((limits.centre, limits.range_centre, limits.points), (11.0, 2.0, 8));
        assert!((limits.upper - (11.0 + 2.0 * E2)).abs() < 1e-12);
        assert!((limits.lower - (11.0 - 2.0 * E2)).abs() < 1e-12);
        assert!((limits.range_upper - 2.0 * D4).abs() < 1e-12);
    }

    #[test]
    fn too_few_points_or_none_that_differ_give_no_limits_and_no_signal() {
        assert_eq!(Limits::of_baseline(&EVEN[..7], 8), Err(NoLimits::TooFewPoints));
        assert_eq!(Limits::of_baseline(&EVEN, 20), Err(NoLimits::TooFewPoints));
        assert_eq!(Limits::of_baseline(&EVEN[..7], 1), Err(NoLimits::TooFewPoints));
        assert_eq!(Limits::of_baseline(&[5.0; 8], 8), Err(NoLimits::NoSpread));
        let points: Vec<_> = EVEN.iter().map(|value| (None, *value)).collect();
        let made = chart(&points, None, ChartRule::default());
        assert_eq!((made.limits, made.signals.len(), made.drift), (Err(NoLimits::TooFewPoints), 0, None));
    }

    #[test]
    fn a_certificate_stands_in_where_the_baseline_is_too_short_and_only_with_a_repeatability() {
        let points: Vec<_> = EVEN.iter().map(|value| (None, *value)).collect();
        let certified = |repeatability| Some(Certified { value: 11.0, sigma: 3.0, repeatability });
        let made = chart(&points, certified(Some(4.0)), ChartRule::default());
        let limits = made.limits.unwrap();
        assert_eq!((limits.from, limits.sigma, limits.centre), (LimitsFrom::Certificate, 5.0, 11.0));
        assert!((limits.range_centre - 4.0 * D2).abs() < 1e-12);
        let none = chart(&points, certified(None), ChartRule::default());
        assert_eq!(none.limits, Err(NoLimits::TooFewPoints));
        let wanted = ChartRule { limits: Some(LimitsFrom::Certificate), ..ChartRule::default() };
        assert_eq!(chart(&points, certified(None), wanted).limits, Err(NoLimits::NoRepeatability));
        assert_eq!(chart(&points, None, wanted).limits, Err(NoLimits::NoCertificate));
        let short = ChartRule { limits: Some(LimitsFrom::Baseline), points: 8, ..wanted };
        assert_eq!(chart(&points, certified(Some(4.0)), short).limits.unwrap().from, LimitsFrom::Baseline);
    }

    #[test]
    fn a_jump_is_a_signal_of_the_range_where_it_lands() {
        let mut values = EVEN.to_vec();
        values.extend([14.0, 7.0]);
        let limits = Limits::of_baseline(&values, 8).unwrap();
        let found = signals(&values, limits, RuleSet::WesternElectric);
        assert_eq!(found, [Signal { at: 9, code: SignalCode::MovingRange }]);
    }

    #[test]
    fn how_charts_are_made_is_read_by_name() {
        assert_eq!(ChartRule::parse(""), Ok(ChartRule::default()));
        let all = ChartRule::parse("limits=certificate;points=8;rules=nelson").unwrap();
        assert_eq!((all.limits, all.points), (Some(LimitsFrom::Certificate), 8));
        assert_eq!(all.rules, RuleSet::Nelson);
        for (text, problem) in [
            ("points=7", ProblemCode::OutOfRange),
            ("points=1001", ProblemCode::OutOfRange),
            ("points=many", ProblemCode::OutOfRange),
            ("limits=mine", ProblemCode::UnknownName),
            ("rules=mine", ProblemCode::UnknownName),
            ("odd=1", ProblemCode::UnknownName),
        ] {
            assert_eq!(ChartRule::parse(text), Err(problem), "{text}");
        }
    }
}
