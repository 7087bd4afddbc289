//! Does an element's amount move from lot to lot?

use crate::quantity::MassFraction;
use crate::statistics::{self, LEVEL};
use crate::substance::Element;

/// Fewest lots a trend is looked for in (our own choice).
pub const FEWEST_FOR_TREND: usize = 5;

/// A straight line through the logarithms of an element's amounts, lot after lot.
#[derive(Clone, Debug, PartialEq)]
pub struct Trend {
    /// The element.
    pub element: Element,
    /// How many lots have a number for it.
    pub lots: usize,
    /// The first of them in mg/kg.
    pub first: MassFraction,
    /// The last of them in mg/kg.
    pub last: MassFraction,
    /// Change from one lot to the next in percent.
    pub percent_a_lot: f64,
    /// Chance of such a slope or a steeper one, either way, without any trend.
    pub p: f64,
}

impl Trend {
    /// True where it is no chance: p below 5 % over all trends that were looked at (Bonferroni's bound).
    pub fn is_real(&self, looked_at: usize) -> bool {
        self.p * (looked_at as f64) < LEVEL
    }
}

/// The trend of amounts in the order of their lots; `None` below [`FEWEST_FOR_TREND`] of them, or where one is not above
/// zero.
///
/// # Source
/// Ordinary least squares and the t test of its slope, as any textbook has them.
pub(super) fn trend(element: Element, amounts: &[MassFraction]) -> Option<Trend> {
    let count = amounts.len();
    if count < FEWEST_FOR_TREND || amounts.iter().any(|amount| *amount <= MassFraction::ZERO) {
        return None;
    }
    let logs: Vec<f64> = amounts.iter().map(|amount| libm::log(amount.to_mg_per_kg())).collect();
    let mean = statistics::moments(&logs)?.mean;
    let middle = (count - 1) as f64 / 2.0;
    let away = |at: usize| at as f64 - middle;
    let spread: f64 = (0..count).map(|at| away(at) * away(at)).sum();
    let slope = logs.iter().enumerate().map(|(at, log)| away(at) * (log - mean)).sum::<f64>() / spread;
    let squares: f64 = logs
        .iter()
        .enumerate()
        .map(|(at, log)| {
            let off = log - mean - slope * away(at);
            off * off
        })
        .sum();
    let sigma = (squares / (count - 2) as f64 / spread).sqrt();
    let p = if slope == 0.0 {
        1.0
    } else if sigma > 0.0 {
        2.0 * statistics::t_upper(slope.abs() / sigma, u32::try_from(count - 2).ok()?)
    } else {
        0.0
    };
    Some(Trend {
        element,
        lots: count,
        first: *amounts.first()?,
        last: *amounts.last()?,
        percent_a_lot: 100.0 * libm::expm1(slope),
        p,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn of(values: &[i64]) -> Option<Trend> {
        let amounts: Vec<_> = values.iter().map(|value| MassFraction::from_mg_per_kg(*value)).collect();
        trend(Element::PB, &amounts)
    }

    #[test]
    fn a_steady_rise_is_a_trend_and_noise_is_none() {
        let rise = of(&[100, 110, 121, 133, 146, 161]).unwrap();
        assert!((rise.percent_a_lot - 10.0).abs() < 0.1 && rise.is_real(10), "{rise:?}");
        assert_eq!(
            (rise.first, rise.last),
            (MassFraction::from_mg_per_kg(100), MassFraction::from_mg_per_kg(161))
        );
        assert!(!of(&[100, 110, 101, 109, 102, 108]).unwrap().is_real(1));
        assert!(!of(&[100; 6]).unwrap().is_real(1));
    }

    /// Worked by hand: logs 0, 1, 0, 1, 0 in units of ln 10; slope 0.
    #[test]
    fn few_lots_and_zeros_have_no_trend() {
        assert!(of(&[100, 110, 121, 133]).is_none());
        assert!(of(&[100, 110, 0, 133, 150]).is_none());
        assert!((of(&[1, 10, 1, 10, 1]).unwrap().p - 1.0).abs() < 1e-9);
    }

    /// Source: slope 1 per step, residuals 1 -1 ... worked by hand: y = 0, 2, 1, 3, 2 has slope 0.5, squares 2.7, so
    /// sigma = sqrt(2.7 / 3 / 10) = 0.3 and t = 1.6667 with 3 degrees of freedom, p = 0.1942.
    #[test]
    fn the_slope_and_its_chance_are_those_worked_by_hand() {
        let found = of(&[1, 100, 10, 1000, 100]).unwrap();
        assert!((found.percent_a_lot - 100.0 * (10.0_f64.sqrt() - 1.0)).abs() < 1e-9, "{found:?}");
        assert!((found.p - 0.1942).abs() < 5e-4, "{found:?}");
    }
}
