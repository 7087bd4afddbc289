//! The trade, pure: quantities, substances, material classes, rule books, decisions, dispositions and the report.
//!
//! Nothing here reads a clock, a file, a random number or a browser. The whole program is
//! [`inspection::review`]: the same inspection gives the same findings, byte for byte, natively and in the page.
//!
//! Modules import only those above them in this list; a test in `tests/` holds that order.

pub mod quantity;
pub mod substance;
pub mod material;
pub mod text_pool;
pub mod reading;
pub mod rules;
pub mod outcome;
pub mod screen;
pub mod halogen;
pub mod thickness;
pub mod next_step;
pub mod acts;
pub mod lot;
pub mod inspection;
pub mod words;
pub mod ruler;
pub mod report;
