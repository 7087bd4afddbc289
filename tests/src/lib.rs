//! Whole-program checks, and what they share: the slow exact twin, invented tables, golden cases, the open data.
//!
//! Nothing here is shipped.

// These are the hands of tests: a panic is how they say that something is wrong.
#![allow(clippy::missing_panics_doc)]

pub mod chance;
pub mod delivery;
pub mod fuzz;
pub mod golden;
pub mod injection;
pub mod packed;
pub mod places;
pub mod program;
pub mod surface;
pub mod tables;
pub mod twin;
