//! The trade, pure: quantities, substances, material classes, rule books, decisions, dispositions and the report.
//!
//! Nothing here reads a clock, a file, a random number or a browser. The whole program is
//! [`inspection::review`]: the same inspection gives the same findings, byte for byte, natively and in the page.
//!
//! Modules import one way only; the order stands in `tests/tests/rooms.rs`, which holds it.

pub mod acts;
pub mod column;
pub mod date_order;
pub mod duplicates;
pub mod halogen;
pub mod id_template;
pub mod identity;
pub mod inspection;
pub mod lot;
pub mod material;
pub mod next_step;
pub mod outcome;
pub mod oxide;
pub mod quantity;
pub mod reading;
pub mod report;
pub mod ruler;
pub mod rules;
pub mod screen;
pub mod settings_file;
pub mod substance;
pub mod text_pool;
pub mod thickness;
pub mod words;
