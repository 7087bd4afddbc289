//! Run rules: patterns of points on a control chart that chance seldom makes. Data with their source.

use crate::reading::codes;

codes! {
    /// A set of run rules. The two differ in how many points on one side count (8 or 9), so a chart names its set.
    RuleSet {
        /// The four rules of the Western Electric handbook.
        WesternElectric => "western_electric",
        /// Nelson's eight tests.
        Nelson => "nelson",
    }
}

codes! {
    /// What is said of a point on a control chart.
    SignalCode {
        /// It lies beyond three sigma.
        BeyondThree => "beyond_3s",
        /// Two of three points beyond two sigma on one side.
        TwoOfThree => "two_of_three_beyond_2s",
        /// Four of five points beyond one sigma on one side.
        FourOfFive => "four_of_five_beyond_1s",
        /// Eight points on one side of the centre.
        EightOnOneSide => "eight_on_one_side",
        /// Nine points on one side of the centre.
        NineOnOneSide => "nine_on_one_side",
        /// Six points, each above the one before, or each below it.
        SixInARow => "six_rising_or_falling",
        /// Fourteen points up and down by turns.
        FourteenByTurns => "fourteen_alternating",
        /// Fifteen points within one sigma.
        FifteenWithin => "fifteen_within_1s",
        /// Eight points on both sides, none within one sigma.
        EightOutside => "eight_none_within_1s",
        /// The moving range up to it lies above its limit.
        MovingRange => "moving_range_beyond",
    }
}

/// What a run rule looks for in the points it looks at. "Beyond" is strict, "within" is not.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Pattern {
    /// Points beyond so many sigma, on the side of the newest one.
    Beyond(f64),
    /// Points on the side of the newest one; a point on the centre is on neither.
    OneSide,
    /// Each above the one before, or each below it.
    Trend,
    /// Up and down by turns.
    ByTurns,
    /// Within one sigma.
    Within,
    /// None within one sigma, and some on either side.
    Outside,
}

/// One run rule.
#[derive(Clone, Copy, Debug)]
pub struct RunRule {
    /// Its code.
    pub code: SignalCode,
    /// How many points must show the pattern, the newest among them.
    pub count: usize,
    /// Of how many.
    pub of: usize,
    /// The pattern.
    pub pattern: Pattern,
    /// True where it is of the Western Electric set.
    pub western_electric: bool,
    /// True where it is of Nelson's set.
    pub nelson: bool,
}

const fn rule(code: SignalCode, count: usize, of: usize, pattern: Pattern, sets: (bool, bool)) -> RunRule {
    RunRule { code, count, of, pattern, western_electric: sets.0, nelson: sets.1 }
}

const BOTH: (bool, bool) = (true, true);
const WESTERN_ELECTRIC: (bool, bool) = (true, false);
const NELSON: (bool, bool) = (false, true);

/// Every run rule.
///
/// # Source
/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3 (Western Electric rules), restated by a secondary source; L. S.
/// Nelson, Journal of Quality Technology 16 (1984), restated by a secondary source, the fourteen by turns from memory.
pub const RULES: [RunRule; 9] = [
    rule(SignalCode::BeyondThree, 1, 1, Pattern::Beyond(3.0), BOTH),
    rule(SignalCode::TwoOfThree, 2, 3, Pattern::Beyond(2.0), BOTH),
    rule(SignalCode::FourOfFive, 4, 5, Pattern::Beyond(1.0), BOTH),
    rule(SignalCode::EightOnOneSide, 8, 8, Pattern::OneSide, WESTERN_ELECTRIC),
    rule(SignalCode::NineOnOneSide, 9, 9, Pattern::OneSide, NELSON),
    rule(SignalCode::SixInARow, 6, 6, Pattern::Trend, NELSON),
    rule(SignalCode::FourteenByTurns, 14, 14, Pattern::ByTurns, NELSON),
    rule(SignalCode::FifteenWithin, 15, 15, Pattern::Within, NELSON),
    rule(SignalCode::EightOutside, 8, 8, Pattern::Outside, NELSON),
];

impl RuleSet {
    /// The set of a code.
    pub fn from_code(code: &str) -> Option<RuleSet> {
        RuleSet::ALL.iter().copied().find(|set| set.code() == code)
    }

    /// Its rules.
    pub fn rules(self) -> impl Iterator<Item = &'static RunRule> {
        RULES.iter().filter(move |rule| match self {
            RuleSet::WesternElectric => rule.western_electric,
            RuleSet::Nelson => rule.nelson,
        })
    }
}

impl RunRule {
    /// True where the last of these points (in sigmas from the centre) completes the pattern.
    pub fn signals(&self, z: &[f64]) -> bool {
        let looked_at = z.get(z.len().saturating_sub(self.of)..).unwrap_or(z);
        let (Some(newest), true) = (looked_at.last(), looked_at.len() >= self.count) else { return false };
        let side = |one: &f64| (*one > 0.0 && *newest > 0.0) || (*one < 0.0 && *newest < 0.0);
        let enough = |shows: &dyn Fn(&f64) -> bool| {
            // A point that is no part of the pattern completes none.
            shows(newest) && looked_at.iter().filter(|one| shows(one)).count() >= self.count
        };
        let steps = || looked_at.windows(2).map(|pair| pair[1] - pair[0]);
        match self.pattern {
            Pattern::Beyond(sigmas) => enough(&|one| one.abs() > sigmas && side(one)),
            Pattern::OneSide => enough(&side),
            Pattern::Within => enough(&|one| one.abs() <= 1.0),
            Pattern::Outside => enough(&|one| one.abs() > 1.0) && !looked_at.iter().all(side),
            Pattern::Trend => steps().all(|step| step > 0.0) || steps().all(|step| step < 0.0),
            Pattern::ByTurns => {
                let steps: Vec<f64> = steps().collect();
                steps.windows(2).all(|pair| pair[0] * pair[1] < 0.0)
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(code: SignalCode, z: &[f64]) -> Vec<usize> {
        let rule = RULES.iter().find(|rule| rule.code == code).unwrap();
        (0..z.len()).filter(|last| rule.signals(&z[..=*last])).collect()
    }

    #[test]
    fn the_two_sets_share_three_rules_and_differ_at_eight_and_nine() {
        let codes = |set: RuleSet| set.rules().map(|rule| rule.code.code()).collect::<Vec<_>>();
        assert_eq!(
            codes(RuleSet::WesternElectric),
            ["beyond_3s", "two_of_three_beyond_2s", "four_of_five_beyond_1s", "eight_on_one_side"]
        );
        assert_eq!(codes(RuleSet::Nelson).len(), 8);
        assert!(!codes(RuleSet::Nelson).contains(&"eight_on_one_side"));
        assert_eq!(RuleSet::from_code("nelson"), Some(RuleSet::Nelson));
    }

    #[test]
    fn a_point_that_is_no_part_of_a_pattern_does_not_complete_it() {
        assert_eq!(at(SignalCode::TwoOfThree, &[2.1, 2.2, 0.0, 0.0]), [1]);
        assert_eq!(at(SignalCode::TwoOfThree, &[2.1, 0.0, 0.0, 2.2]), [] as [usize; 0]);
        assert_eq!(at(SignalCode::FourOfFive, &[-1.1, -1.1, 0.0, -1.1, -1.2, 0.0]), [4]);
    }

    #[test]
    fn a_point_on_the_centre_is_on_neither_side_and_equal_points_are_no_trend() {
        let mut z = [0.5; 9];
        assert_eq!(at(SignalCode::EightOnOneSide, &z), [7, 8]);
        z[4] = 0.0;
        assert!(at(SignalCode::EightOnOneSide, &z).is_empty());
        assert!(at(SignalCode::SixInARow, &[0.0, 0.1, 0.2, 0.2, 0.3, 0.4, 0.5]).is_empty());
        assert_eq!(at(SignalCode::SixInARow, &[0.5, 0.4, 0.3, 0.2, 0.1, -0.5]), [5]);
    }

    #[test]
    fn one_sigma_exactly_is_within_and_not_beyond() {
        assert_eq!(at(SignalCode::FifteenWithin, &[1.0; 15]), [14]);
        assert!(at(SignalCode::FourOfFive, &[1.0; 15]).is_empty());
        assert!(at(SignalCode::EightOutside, &[1.5; 8]).is_empty(), "all on one side");
    }
}
