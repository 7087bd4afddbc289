//! The books that come with the program, one file an edition.

use std::sync::LazyLock;

use super::RuleBook;

/// The screening book every inspection starts with.
pub const SCREENING_2013: &str = include_str!("../../rules/iec-62321-3-1-2013.toml");
/// The halogen book every inspection starts with.
pub const HALOGENS_2003: &str = include_str!("../../rules/iec-61249-2-21-2003.toml");

/// The exemptions every inspection starts with.
pub const EXEMPTIONS_2025: &str = include_str!("../../rules/rohs-annex-iii-2025.toml");
/// Hexavalent chromium by area, as every inspection starts with it.
pub const CR6_AREA_2015: &str = include_str!("../../rules/iec-62321-7-1-2015.toml");

/// The files of all editions, in the order they are listed to a person.
pub const EDITIONS: &[&str] = &[
    SCREENING_2013,
    HALOGENS_2003,
    EXEMPTIONS_2025,
    CR6_AREA_2015,
    include_str!("../../rules/eu-rohs-annex-ii.toml"),
    include_str!("../../rules/uk-rohs-2012.toml"),
    include_str!("../../rules/gb-t-26572-2011.toml"),
    include_str!("../../rules/gb-26572-2025.toml"),
    include_str!("../../rules/eu-elv-2000-53.toml"),
    include_str!("../../rules/js709b-2015.toml"),
    include_str!("../../rules/eu-packaging-94-62.toml"),
    include_str!("../../rules/eu-packaging-2025-40.toml"),
    include_str!("../../rules/eu-reach-xvii-23.toml"),
    include_str!("../../rules/eu-reach-xvii-63.toml"),
    include_str!("../../rules/us-cpsia-101.toml"),
    include_str!("../../rules/us-16-cfr-1303.toml"),
];

static LIBRARY: LazyLock<Vec<RuleBook>> =
    LazyLock::new(|| EDITIONS.iter().filter_map(|text| RuleBook::parse(text).ok()).collect());

/// All editions, read once. One that could not be read would be missing, and whoever names it is told so; a test holds
/// that all can.
pub fn library() -> &'static [RuleBook] {
    &LIBRARY
}
