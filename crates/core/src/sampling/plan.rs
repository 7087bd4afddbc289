//! A plan for a lot of a known size.

use super::{
    PlanRule, TablePlan, at_most_nonconforming, code_letter, plan_of_letter, smallest_n, units_of_share,
};

/// The confidence with which it is said what a lot may still hold where the plan names none, in hundredths of a percent:
/// 95 %, common practice.
pub const BOUND_CONFIDENCE: u32 = 9_500;

/// How many units to take of a lot of a known size.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Plan {
    /// Units in the lot.
    pub lot_size: u64,
    /// Units to take: all of the lot where the plan asks for as many or more.
    pub n: u64,
    /// The code letter of the lot; `None` where the plan is not one of the tables, or the lot is a single unit.
    pub letter: Option<char>,
    /// The plan of the tables that the letter led to.
    pub table: Option<TablePlan>,
    /// In hundredths of a percent, for what may still be in the lot.
    pub confidence: u32,
}

impl PlanRule {
    /// The plan for a lot of this size.
    pub fn for_lot(&self, lot_size: u64) -> Plan {
        match self {
            PlanRule::Single { level, severity, aql } => {
                let letter = code_letter(lot_size, *level);
                let table = letter.and_then(|letter| plan_of_letter(letter, *severity, aql));
                // Without a plan every unit has to be taken: a lot of one, which no table speaks of.
                let n = table.map_or(lot_size, |table| table.n.min(lot_size));
                Plan { lot_size, n, letter, table, confidence: BOUND_CONFIDENCE }
            }
            PlanRule::ZeroAcceptance { confidence, share } => {
                let n = smallest_n(lot_size, units_of_share(lot_size, *share), *confidence);
                Plan { lot_size, n, letter: None, table: None, confidence: *confidence }
            }
        }
    }
}

impl Plan {
    /// True where the whole lot is taken.
    pub const fn is_whole_lot(&self) -> bool {
        self.n >= self.lot_size
    }

    /// The most nonconforming units the lot may still hold after some of the units measured did not conform.
    pub fn at_most(&self, measured: u64, not_conforming: u64) -> Option<u64> {
        at_most_nonconforming(self.lot_size, measured, not_conforming, self.confidence)
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::sampling::{Level, Severity};

    #[test]
    fn a_plan_never_asks_for_more_units_than_the_lot_has() {
        let single =
            |aql: &str| PlanRule::Single { level: Level::II, severity: Severity::Normal, aql: aql.into() };
        let plan = single("1.0").for_lot(10);
        assert_eq!((plan.n, plan.letter, plan.is_whole_lot()), (10, Some('B'), true));
        assert_eq!(plan.table.map(|table| (table.letter, table.n)), Some(('E', 13)));
        let plan = single("1.0").for_lot(1);
        assert_eq!((plan.n, plan.letter, plan.table), (1, None, None));
        let plan = single("1.0").for_lot(480);
        assert_eq!((plan.n, plan.table.map(|table| (table.ac, table.re))), (50, Some((1, 2))));
        let zero = PlanRule::ZeroAcceptance { confidence: 9_500, share: 500 };
        assert_eq!(zero.for_lot(280).n, 53);
        assert_eq!(zero.for_lot(3).n, 3);
    }
}
