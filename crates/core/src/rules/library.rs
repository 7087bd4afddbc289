//! The books that come with the program, one file an edition.

use std::sync::LazyLock;

use super::RuleBook;

/// The screening book every inspection starts with.
pub const SCREENING_2013: &str = include_str!("../../rules/iec-62321-3-1-2013.toml");
/// The halogen book every inspection starts with.
pub const HALOGENS_2003: &str = include_str!("../../rules/iec-61249-2-21-2003.toml");

/// The files of all editions, in the order they are listed to a person.
pub const EDITIONS: &[&str] = &[SCREENING_2013, HALOGENS_2003];

static LIBRARY: LazyLock<Vec<RuleBook>> =
    LazyLock::new(|| EDITIONS.iter().filter_map(|text| RuleBook::parse(text).ok()).collect());

/// All editions, read once. One that could not be read would be missing, and whoever names it is told so; a test holds
/// that all can.
pub fn library() -> &'static [RuleBook] {
    &LIBRARY
}
