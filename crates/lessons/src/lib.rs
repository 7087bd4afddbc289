//! The trainer's invented readings and deliveries, made from a seed.
//!
//! Nothing here knows an answer: an exercise is a delivery (a table and a settings file, both marked invented) with a question,
//! and what is right is what the program's own review of that delivery says ([`Exercise::right`]). Numbers are drawn by core's
//! published generator, so one seed gives the same exercises everywhere.

mod draw;
mod exercise;
mod files;
mod lesson;
mod lot;
mod reading;
mod whole;

pub use exercise::{Ask, Exercise, exercise};
pub use files::{Delivery, TextFile};
pub use lesson::Lesson;
pub use lot::{Facts, LotKind};
pub use reading::{ReadingKind, WhatIf, bands};
pub use whole::whole;
