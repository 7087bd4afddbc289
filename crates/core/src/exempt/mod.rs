//! Exemptions with their dates, claims that one covers a material, and the judgement of a claim.
//!
//! No screening band is published for exempt limits, and none is made up here: a claim is decided by the guard band
//! `g = k s`. What nobody answered is a question that holds, never a yes.

mod category;
mod chromium;
mod entry;
mod said;
mod verdict;

pub use category::{Categories, CategoryFit};
pub use chromium::{AREA_KEYS, AreaMass, AreaResult, AreaRule, AreaSaid};
pub use entry::{Bound, EXEMPTION_KEYS, Exemption, Group};
pub use said::{Claim, Mouthing, Renewal, RenewalState};
pub use verdict::{
    Answers, Number, Question, Refusal, Seen, Verdict, in_force, judge_claim, judge_number, questions_of,
};
