//! How many units to take of a lot, which, and what that proves.
//!
//! For restricted substances the acceptance number is 0 whatever the plan: a plan sets how many units to take.

mod said;

pub use said::{Level, PlanRule, PlanSaid, Severity};
