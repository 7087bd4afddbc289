//! The trade, pure: quantities, substances, material classes, rule books, decisions, dispositions and the report.
//!
//! Nothing here reads a clock, a file, a random number or a browser. The whole program is
//! [`inspection::review`]: the same inspection gives the same findings, byte for byte, natively and in the page.
//!
//! Modules import one way only; the order stands in `tests/tests/rooms.rs`, which holds it.

pub mod acts;
pub mod attenuation;
pub mod caution;
pub mod certificate;
pub mod change;
pub mod chart;
pub mod claims;
pub mod column;
pub mod composition;
pub mod conformity;
pub mod control;
pub mod data_file;
pub mod date_order;
pub mod day;
pub mod duplicates;
pub mod exempt;
pub mod fields;
pub mod halogen;
pub mod history;
pub mod id_template;
pub mod identity;
pub mod inspection;
pub mod instant;
pub mod interval;
pub mod judging;
pub mod laboratory;
pub mod learned;
pub mod limit;
pub mod lines;
pub mod locale;
pub mod longer;
pub mod lot;
pub mod lot_sampling;
pub mod material;
pub mod next_step;
pub mod oc_curve;
pub mod opened;
pub mod outcome;
pub mod outlook;
pub mod oxide;
pub mod papers;
pub mod photo;
pub mod pool;
pub mod quantity;
pub mod reading;
pub mod repeats;
pub mod report;
pub mod ruler;
pub mod rules;
pub mod sampling;
pub mod screen;
pub mod settings_file;
pub mod settling;
pub mod site_table;
pub mod stated;
pub mod statistics;
pub mod stoichiometry;
pub mod streams;
pub mod substance;
pub mod suppliers;
pub mod tabbed;
pub mod text_pool;
pub mod thickness;
pub mod trust;
pub mod undertaking;
pub mod visible_text;
pub mod words;
