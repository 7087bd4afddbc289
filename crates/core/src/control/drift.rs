//! Drift: does a check sample's value change with time, and by how much?

use crate::statistics::{LEVEL, moments, t_upper_quantile};

/// Fewest points a drift is looked for in (our choice).
pub const FEWEST_POINTS: usize = 5;
/// The days over which a drift is told.
pub const TOLD_OVER_DAYS: f64 = 30.0;

/// A straight line by ordinary least squares.
///
/// # Units
/// Those of y and of y per x.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Line {
    /// How many points.
    pub points: usize,
    /// Mean of the x.
    pub mean_x: f64,
    /// Mean of the y.
    pub mean_y: f64,
    /// Slope.
    pub slope: f64,
    /// Standard uncertainty of the slope, with n - 2 degrees of freedom.
    pub slope_sigma: f64,
    /// Standard deviation of the residuals, with n - 2.
    pub residual: f64,
    /// Sum of the squares of x about their mean.
    pub spread_x: f64,
}

/// Fits a line in two passes about the means, so that values that agree in their leading digits lose none.
///
/// # Errors
/// `None` below three points, or where all x are the same.
pub fn line(points: &[(f64, f64)]) -> Option<Line> {
    let freedom = points.len().checked_sub(2).filter(|freedom| *freedom > 0)?;
    let mean =
        |pick: fn(&(f64, f64)) -> f64| Some(moments(&points.iter().map(pick).collect::<Vec<_>>())?.mean);
    let (mean_x, mean_y) = (mean(|point| point.0)?, mean(|point| point.1)?);
    let (mut spread_x, mut together) = (0.0, 0.0);
    for (x, y) in points {
        spread_x += (x - mean_x) * (x - mean_x);
        together += (x - mean_x) * (y - mean_y);
    }
    if spread_x <= 0.0 {
        return None;
    }
    let slope = together / spread_x;
    let mut squares = 0.0;
    for (x, y) in points {
        let off = (y - mean_y) - slope * (x - mean_x);
        squares += off * off;
    }
    let variance = squares / freedom as f64;
    Some(Line {
        points: points.len(),
        mean_x,
        mean_y,
        slope,
        slope_sigma: (variance / spread_x).sqrt(),
        residual: variance.sqrt(),
        spread_x,
    })
}

/// What a check sample's values do with time.
///
/// # Units
/// mg/kg and days.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drift {
    /// How many points have a time.
    pub points: usize,
    /// The days from the first to the last of them.
    pub span: f64,
    /// mg/kg a day.
    pub slope: f64,
    /// Its standard uncertainty.
    pub sigma: f64,
    /// The t quantile by which the slope must exceed its uncertainty: two-sided, 95 %, n - 2 degrees of freedom.
    pub t: f64,
    /// True where it does.
    pub drifts: bool,
    /// Change over 30 days in percent of the mean; `None` where the points span less than a day, from which thirty can't be
    /// told, or where the mean is not above zero.
    pub percent: Option<f64>,
}

/// The drift of values with their times in days.
///
/// # Errors
/// `None` below five points, or where all of them have the same time.
///
/// # Source
/// Ordinary least squares: NIST Statistical Reference Datasets, Norris, in the outside checks.
pub fn drift(points: &[(f64, f64)]) -> Option<Drift> {
    if points.len() < FEWEST_POINTS {
        return None;
    }
    let line = line(points)?;
    let freedom = u32::try_from(line.points - 2).ok()?;
    let t = t_upper_quantile(LEVEL / 2.0, freedom)?;
    let earliest = points.iter().map(|point| point.0).fold(f64::INFINITY, f64::min);
    let latest = points.iter().map(|point| point.0).fold(f64::NEG_INFINITY, f64::max);
    let span = latest - earliest;
    let told = span >= 1.0 && line.mean_y > 0.0;
    Some(Drift {
        points: line.points,
        span,
        slope: line.slope,
        sigma: line.slope_sigma,
        t,
        drifts: line.slope.abs() > t * line.slope_sigma,
        percent: told.then(|| 100.0 * TOLD_OVER_DAYS * line.slope / line.mean_y),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_steady_rise_drifts_and_noise_does_not() {
        let rise: Vec<_> = (0..10).map(|day| (f64::from(day), 100.0 + f64::from(day))).collect();
        let found = drift(&rise).unwrap();
        assert!(found.drifts && (found.slope - 1.0).abs() < 1e-12 && found.span > 8.9);
        assert!((found.percent.unwrap() - 3000.0 / 104.5).abs() < 1e-9);
        let noise: Vec<_> = (0..10).map(|day| (f64::from(day), 100.0 + f64::from(day % 2))).collect();
        assert!(!drift(&noise).unwrap().drifts);
        let flat: Vec<_> = (0..10).map(|day| (f64::from(day), 100.0)).collect();
        assert!(!drift(&flat).unwrap().drifts);
    }

    #[test]
    fn too_few_points_or_one_time_tell_nothing_and_ten_minutes_tell_no_month() {
        assert_eq!(drift(&[(0.0, 1.0), (1.0, 1.0), (2.0, 1.0), (3.0, 1.0)]), None);
        assert_eq!(drift(&[(7.0, 1.0), (7.0, 2.0), (7.0, 1.0), (7.0, 2.0), (7.0, 3.0)]), None);
        let minutes: Vec<_> = (0..6).map(|at| (f64::from(at) / 720.0, 100.0 + f64::from(at))).collect();
        let found = drift(&minutes).unwrap();
        assert!(found.drifts && found.percent.is_none());
    }
}
