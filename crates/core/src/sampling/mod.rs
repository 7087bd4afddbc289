//! How many units to take of a lot, which, and what that proves.
//!
//! For restricted substances the acceptance number is 0 whatever the plan: a plan sets how many units to take. It states a
//! risk; the law is per homogeneous material and knows no share of bad units.

mod exact;
mod list;
mod plan;
mod risk;
mod said;
pub mod switching;
mod tables;
mod units;
mod zero;

pub use list::{SplitMix64, list};
pub use plan::{BOUND_CONFIDENCE, Plan};
pub use risk::{RISK_POINTS, accepted, accepted_of_many, share_at, units_at};
pub use said::{Level, PlanRule, PlanSaid, Severity};
pub use tables::{TablePlan, aqls, code_letter, counts_units, plan_of_letter};
pub use units::{UnitState, Units, name_of_unit};
pub use zero::{at_most_nonconforming, smallest_n, smallest_n_of_many, units_of_share};
