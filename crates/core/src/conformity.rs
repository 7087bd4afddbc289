//! The probability that the true value lies within a limit, and decision rules side by side.
//!
//! Only for a limit on the element itself in that material: where the law limits chromium(VI) or a bromine compound,
//! the element's probability is not the substance's. The probability speaks of what the sigma covers; where that is
//! repeatability alone, it is to be labelled so. Statements are exact comparisons; only probabilities are floats.
//!
//! # Source
//! JCGM 106:2012, clause 7 (probability) and 9.5 (specific risk), formulas from memory; ILAC-G8:09/2019, 4.2.1 to 4.2.3
//! (decision rules). Global risk is left out on purpose: it needs a distribution of lots that an inspector does not have.

use crate::quantity::{self, Coverage, MassFraction, Sigma};
use crate::reading::codes;
use crate::statistics;

/// The factor of the guard band w = U = 2 u (ILAC-G8:09/2019, 4.2.3, figure 5).
pub const GUARD: Coverage = match Coverage::from_tenths(20) {
    Some(two) => two,
    None => Coverage::THREE,
};

codes! {
    /// A rule that makes a statement of a value, its uncertainty and an upper limit L.
    DecisionRule {
        /// Pass up to L, w = 0 (ILAC-G8:09/2019, 4.2.1). At L itself the law's own operator decides.
        SimpleAcceptance => "simple_acceptance",
        /// Pass up to L - w (4.2.2). At L - w itself: pass (our choice; the guide leaves it open).
        GuardedAcceptance => "guarded_acceptance",
        /// Pass below L - w, conditional pass to L, conditional fail to L + w, fail above (4.2.3). The guide gives L - w
        /// and L + w to the conditional statements and L to both of them; at L the law's own operator decides.
        NonBinary => "non_binary",
    }
}

codes! {
    /// What a decision rule says.
    Statement {
        /// Within, by the rule.
        Pass => "pass",
        /// Within, but not by the whole guard band.
        ConditionalPass => "conditional_pass",
        /// Beyond, but not by the whole guard band.
        ConditionalFail => "conditional_fail",
        /// Beyond, by the rule.
        Fail => "fail",
    }
}

/// What one rule says of one value.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Said {
    /// The rule.
    pub rule: DecisionRule,
    /// Its statement.
    pub statement: Statement,
    /// Specific risk: the chance that the statement is wrong for this one value.
    pub risk: f64,
}

/// A value against an upper limit.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Conformity {
    /// Chance that the true value lies within the limit.
    pub within: f64,
    /// Chance that it lies beyond, computed as its own tail.
    pub beyond: f64,
    /// What each rule says, in the order of [`DecisionRule::ALL`].
    pub said: [Said; 3],
}

impl Conformity {
    /// The chance that simple acceptance errs for this value.
    pub fn specific_risk(&self) -> f64 {
        self.said[0].risk
    }
}

/// Holds a value against an upper limit on the element itself.
///
/// # Units
/// mg/kg, `sigma` one sigma of a normal distribution about the value; `k` sigmas make the guard band ([`GUARD`]).
/// `equality_conforms` is the law's operator: true for "not more than".
///
/// # Errors
/// `None` where the sigma is zero: without an uncertainty there is no probability.
pub fn conformity(
    x: MassFraction,
    sigma: Sigma,
    limit: MassFraction,
    equality_conforms: bool,
    k: Coverage,
) -> Option<Conformity> {
    if sigma.is_zero() {
        return None;
    }
    let z = MassFraction::from_units(limit.units() - x.units()).to_mg_per_kg() / sigma.to_mg_per_kg();
    let (within, beyond) = (statistics::normal_lower(z), statistics::normal_upper(z));
    let conforms = if equality_conforms { x <= limit } else { x < limit };
    let clears = |equal| quantity::upper_end_within(x, k, sigma, limit, equal);
    let simple = if conforms { Statement::Pass } else { Statement::Fail };
    let guarded = if clears(true) { Statement::Pass } else { Statement::Fail };
    let non_binary = if clears(false) {
        Statement::Pass
    } else if quantity::lower_end_beyond(x, k, sigma, limit, false) {
        Statement::Fail
    } else if conforms {
        Statement::ConditionalPass
    } else {
        Statement::ConditionalFail
    };
    let said = |rule, statement| {
        let risk = match statement {
            Statement::Pass | Statement::ConditionalPass => beyond,
            Statement::ConditionalFail | Statement::Fail => within,
        };
        Said { rule, statement, risk }
    };
    Some(Conformity {
        within,
        beyond,
        said: [
            said(DecisionRule::SimpleAcceptance, simple),
            said(DecisionRule::GuardedAcceptance, guarded),
            said(DecisionRule::NonBinary, non_binary),
        ],
    })
}

/// A probability for people: the catalogue's message and its argument `percent`.
///
/// Three significant digits in plain decimal. What is not certain is never said to be: from 99.95 % on two decimals,
/// rounded down; beyond 99.99 % "more than 99.99", below 0.01 % "less than 0.01". `rest` is the chance of the opposite, as
/// its own tail, because `of` cannot tell 99.995 % from 100 % any more.
pub fn phrase(of: f64, rest: f64) -> (&'static str, String) {
    let percent = of * 100.0;
    if of < 0.0001 {
        return ("probability-less_than", "0.01".to_owned());
    }
    if rest < 0.0001 {
        return ("probability-more_than", "99.99".to_owned());
    }
    if rest <= 0.0005 {
        let hundredths = 10_000.0 - libm::ceil(rest * 10_000.0);
        return ("probability-about", format!("{:.2}", hundredths / 100.0));
    }
    // The bounds are where three digits round to the next power of ten.
    let decimals = match percent {
        percent if percent < 0.099_95 => 4,
        percent if percent < 0.999_5 => 3,
        percent if percent < 9.995 => 2,
        _ => 1,
    };
    ("probability-about", format!("{percent:.decimals$}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(text: &str) -> MassFraction {
        quantity::parse_with_unit(&format!("{text} mg/kg")).unwrap()
    }

    fn of(x: &str, sigma: &str, limit: &str, equality_conforms: bool) -> Conformity {
        let sigma = Sigma::from_one_sigma(mg(sigma)).unwrap();
        conformity(mg(x), sigma, mg(limit), equality_conforms, GUARD).unwrap()
    }

    fn statements(x: &str, equality_conforms: bool) -> [&'static str; 3] {
        of(x, "5", "100", equality_conforms).said.map(|said| said.statement.code())
    }

    #[track_caller]
    fn near(found: f64, wanted: f64) {
        assert!((found - wanted).abs() <= wanted.abs() * 1e-13, "{found:e} for {wanted:e}");
    }

    /// mpmath 1.4.1: the upper tail of the normal distribution at 1, and at 10.
    #[test]
    fn each_side_of_a_limit_is_its_own_tail() {
        let found = of("95", "5", "100", true);
        near(found.beyond, 0.158_655_253_931_457_05);
        near(found.within, 0.841_344_746_068_542_9);
        near(of("50", "5", "100", true).beyond, 7.619_853_024_160_526e-24);
        near(of("150", "5", "100", true).within, 7.619_853_024_160_526e-24);
        near(of("100", "5", "100", true).within, 0.5);
        assert_eq!(conformity(mg("95"), Sigma::ZERO, mg("100"), true, GUARD), None);
    }

    /// ILAC-G8:09/2019, 4.2.1 to 4.2.3, with U = 10 about a limit of 100; at the ends as stated at the rules.
    #[test]
    fn three_rules_stand_side_by_side() {
        for (x, expected) in [
            ("0", ["pass", "pass", "pass"]),
            ("89.999999", ["pass", "pass", "pass"]),
            ("90", ["pass", "pass", "conditional_pass"]),
            ("90.000001", ["pass", "fail", "conditional_pass"]),
            ("100", ["pass", "fail", "conditional_pass"]),
            ("100.000001", ["fail", "fail", "conditional_fail"]),
            ("110", ["fail", "fail", "conditional_fail"]),
            ("110.000001", ["fail", "fail", "fail"]),
        ] {
            assert_eq!(statements(x, true), expected, "{x}");
        }
        assert_eq!(statements("100", false), ["fail", "fail", "conditional_fail"]);
        assert_eq!(statements("99.999999", false), ["pass", "fail", "conditional_pass"]);
        assert_eq!(of("1", "5", "100", true).said.map(|said| said.rule), *DecisionRule::ALL);
    }

    #[test]
    fn the_risk_is_that_the_statement_is_wrong() {
        let below = of("95", "5", "100", true);
        assert_eq!(
            below.said.map(|said| said.risk.to_bits()),
            [below.beyond.to_bits(), below.within.to_bits(), below.beyond.to_bits()]
        );
        assert_eq!(below.specific_risk().to_bits(), below.beyond.to_bits());
        let above = of("105", "5", "100", true);
        assert!(above.said.iter().all(|said| said.risk.to_bits() == above.within.to_bits()));
        assert_eq!(above.specific_risk().to_bits(), above.within.to_bits());
        let clear = of("10", "5", "100", true);
        assert!(clear.said.iter().all(|said| said.risk.to_bits() == clear.beyond.to_bits()));
    }

    #[test]
    fn the_guard_band_is_two_sigma() {
        assert_eq!(GUARD.to_string(), "2");
    }

    fn said(of: f64, rest: f64) -> String {
        let (message, percent) = phrase(of, rest);
        format!("{} {percent}", message.trim_start_matches("probability-"))
    }

    #[test]
    fn a_probability_has_three_digits_and_is_never_certain() {
        for (of, rest, expected) in [
            (0.5, 0.5, "about 50.0"),
            (0.662_629_7, 0.337_370_3, "about 66.3"),
            (0.022_750_13, 0.977_249_87, "about 2.28"),
            (0.001_349_9, 0.998_650_1, "about 0.135"),
            (0.000_123_4, 0.999_876_6, "about 0.0123"),
            (0.099_96, 0.900_04, "about 10.0"),
            (0.099_94, 0.900_06, "about 9.99"),
            (0.009_996, 0.990_004, "about 1.00"),
            (0.009_994, 0.990_006, "about 0.999"),
            (0.000_999_6, 0.999_000_4, "about 0.100"),
            (0.000_999_4, 0.999_000_6, "about 0.0999"),
            (0.099_95, 0.900_05, "about 10.0"),
            (0.009_995, 0.990_005, "about 1.00"),
            (0.000_999_5, 0.999_000_5, "about 0.100"),
            (0.977_249_87, 0.022_750_13, "about 97.7"),
            (0.999_4, 0.000_6, "about 99.9"),
            (0.999_5, 0.000_5, "about 99.95"),
            (0.999_62, 0.000_38, "about 99.96"),
            (0.999_9, 0.000_1, "about 99.99"),
            (1.0, 0.000_099, "more_than 99.99"),
            (1.0, 1e-80, "more_than 99.99"),
            (0.0, 1.0, "less_than 0.01"),
            (0.000_099, 0.999_901, "less_than 0.01"),
            (0.000_1, 0.999_9, "about 0.0100"),
        ] {
            assert_eq!(said(of, rest), expected, "{of} {rest}");
        }
    }
}
