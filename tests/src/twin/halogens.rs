//! Chlorine, bromine and their total: design section 4, item 7. Roots are never taken: squares are compared.

use num_rational::BigRational;
use num_traits::Zero;

use super::fraction::whole;
use super::judge::{Measured, Said, fits, no_measurement, sigma_of_limit};
use super::limits::{SIGMAS, halogen_limit};
use super::verdict::{Class, Halogen, Outcome, Verdict};

/// The total with its interval, in mg/kg.
#[derive(Clone, Debug)]
pub struct Total {
    /// The verdict.
    pub verdict: Verdict,
    /// Lower end; nothing where there is no sum.
    pub low: Option<BigRational>,
    /// Upper end; nothing where there is none.
    pub high: Option<BigRational>,
    /// The square of the sigma of the upper end (of the lower end where there is no upper).
    pub variance: Option<BigRational>,
}

/// Judges chlorine or bromine alone.
pub fn judge_alone(of: Halogen, class: Class, measured: &Measured) -> Verdict {
    if class == Class::Metal {
        return Verdict::new(Outcome::NotApplicable, "not_applicable_in_metal");
    }
    if let Some(reason) = no_measurement(&measured.said) {
        return Verdict::new(Outcome::NotMeasured, reason);
    }
    if class == Class::Plated {
        return Verdict::new(Outcome::X, "layer_not_resolved");
    }
    let limit = whole(halogen_limit(of));
    let verdict = match &measured.said {
        Said::Below(detection) => {
            if detection + whole(SIGMAS) * sigma_of_limit(detection) <= limit {
                Verdict::new(Outcome::Bl, "")
            } else {
                Verdict::new(Outcome::DetectionTooHigh, "detection_limit_above_band")
            }
        }
        Said::NotDetected => Verdict::new(Outcome::DetectionTooHigh, "limit_not_stated"),
        Said::Above(upper) if *upper >= limit => Verdict::new(Outcome::Ol, ""),
        Said::Above(_) => Verdict::new(Outcome::X, "above_range"),
        Said::Number(x) => match &measured.sigma {
            None => Verdict::new(Outcome::NoUncertainty, "uncertainty_not_stated"),
            Some(sigma) => between(x, &(sigma * sigma), x, &(sigma * sigma), &limit, "around_limit"),
        },
        Said::NoColumn | Said::Blank | Said::Text | Said::UnitUnknown => unreachable!("answered above"),
    };
    in_class(class, unless_shifted(&[measured], &limit, verdict))
}

/// A number that many below zero hides that much.
fn unless_shifted(parts: &[&Measured], limit: &BigRational, verdict: Verdict) -> Verdict {
    let shifted = |part: &&Measured| match (&part.said, &part.sigma) {
        (Said::Number(x), Some(sigma)) => *x <= -limit - whole(SIGMAS) * sigma,
        _ => false,
    };
    if verdict.outcome == Outcome::Bl && parts.iter().any(shifted) {
        return Verdict::new(Outcome::X, "negative_beyond_error");
    }
    verdict
}

/// BL by the upper end, OL by the lower end, X else; "at most", so that equality is within.
fn between(
    low: &BigRational,
    low_variance: &BigRational,
    high: &BigRational,
    high_variance: &BigRational,
    limit: &BigRational,
    open: &'static str,
) -> Verdict {
    if fits(SIGMAS, high_variance, &(limit - high), true) {
        Verdict::new(Outcome::Bl, "")
    } else if fits(SIGMAS, low_variance, &(low - limit), false) {
        Verdict::new(Outcome::Ol, "")
    } else {
        Verdict::new(Outcome::X, open)
    }
}

/// In anything but a plain polymer a BL is X: copper or glass in the beam dilutes the resin. An unknown class may be
/// a composite.
fn in_class(class: Class, verdict: Verdict) -> Verdict {
    if verdict.outcome == Outcome::Bl && class != Class::Polymer {
        Verdict::new(Outcome::X, "copper_or_glass_in_beam")
    } else {
        verdict
    }
}

/// Judges the total.
pub fn judge_total(class: Class, chlorine: &Measured, bromine: &Measured) -> Total {
    let without = |outcome, reason| Total {
        verdict: Verdict::new(outcome, reason),
        low: None,
        high: None,
        variance: None,
    };
    if class == Class::Metal {
        return without(Outcome::NotApplicable, "not_applicable_in_metal");
    }
    let parts = [chlorine, bromine];
    let missing = parts.iter().any(|part| no_measurement(&part.said).is_some());
    if class == Class::Plated {
        return if missing {
            without(Outcome::NotMeasured, "part_not_measured")
        } else {
            without(Outcome::X, "layer_not_resolved")
        };
    }
    let bare = |part: &&Measured| part.said == Said::NotDetected;
    let without_sigma = |part: &&Measured| matches!(part.said, Said::Number(_)) && part.sigma.is_none();
    let mut total = if missing {
        without(Outcome::NotMeasured, "part_not_measured")
    } else if parts.iter().any(without_sigma) {
        without(Outcome::NoUncertainty, "part_without_uncertainty")
    } else if parts.iter().any(bare) {
        without(Outcome::DetectionTooHigh, "part_limit_not_stated")
    } else {
        sum(&parts)
    };
    // "... unless the other part alone is OL for the total": only where there is no whole sum to judge. The design
    // says it of a missing part and of a bare "n.d."; a part without uncertainty, or with an open upper end, is
    // read here the same way. Two numbers have a sum, and the sum decides: a negative part keeps its value in it.
    if total.high.is_none()
        && total.verdict.outcome != Outcome::Ol
        && parts.iter().any(|part| alone_over(part))
    {
        total.verdict = Verdict::new(Outcome::Ol, "one_part_alone");
    }
    let limit = whole(halogen_limit(Halogen::Total));
    total.verdict = in_class(class, unless_shifted(&parts, &limit, total.verdict));
    total
}

fn alone_over(part: &Measured) -> bool {
    let limit = whole(halogen_limit(Halogen::Total));
    match (&part.said, &part.sigma) {
        (Said::Number(x), Some(sigma)) => fits(SIGMAS, &(sigma * sigma), &(x - &limit), false),
        (Said::Above(upper), _) => *upper >= limit,
        _ => false,
    }
}

fn sum(parts: &[&Measured; 2]) -> Total {
    let zero = BigRational::zero;
    let (mut low, mut high, mut low_variance, mut high_variance) = (zero(), zero(), zero(), zero());
    let (mut censored, mut open_above) = (false, false);
    for part in parts {
        match (&part.said, &part.sigma) {
            (Said::Number(x), Some(sigma)) => {
                low += x;
                high += x;
                low_variance += sigma * sigma;
                high_variance += sigma * sigma;
            }
            (Said::Below(detection), _) => {
                censored = true;
                high += detection;
                let sigma = sigma_of_limit(detection);
                high_variance += &sigma * &sigma;
            }
            (Said::Above(upper), _) => {
                open_above = true;
                low += upper;
            }
            _ => unreachable!("answered above"),
        }
    }
    let limit = whole(halogen_limit(Halogen::Total));
    if open_above {
        let over = fits(SIGMAS, &low_variance, &(&low - &limit), false);
        let verdict =
            if over { Verdict::new(Outcome::Ol, "") } else { Verdict::new(Outcome::X, "above_range") };
        return Total { verdict, low: Some(low), high: None, variance: Some(low_variance) };
    }
    let open = if censored { "censored_part" } else { "around_limit" };
    let verdict = between(&low, &low_variance, &high, &high_variance, &limit, open);
    Total { verdict, low: Some(low), high: Some(high), variance: Some(high_variance) }
}
