//! The books that come with the program, one file an edition.

use std::sync::LazyLock;

use super::{Limit, RuleBook};
use crate::material::MaterialClass;
use crate::substance::Substance;

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

/// True where a book of that id and text comes with the program. A book may bear the id and the title of another standard's
/// and hold limits of its own: the text decides.
pub fn comes_with_the_program(id: &str, text: &str) -> bool {
    library().iter().any(|book| book.id == id && *book.text == *text)
}

/// The book whose limits the screening bands were made for.
const LEGAL: &str = "eu-rohs-annex-ii";

static LEGAL_LIMITS: LazyLock<[Option<Limit>; 5]> = LazyLock::new(|| {
    let book = library().iter().find(|book| book.id == LEGAL);
    Substance::ALL.map(|substance| {
        let alone = [substance.element()];
        let own = |limit: &&Limit| limit.of == alone && limit.species.is_empty() && !limit.source_unknown;
        book.and_then(|book| book.limits.iter().find(own)).cloned()
    })
});

/// The limits of the law behind the screening bands, in the order of its book: what a laboratory's result is held against.
pub fn legal_limits() -> &'static [Limit] {
    library().iter().find(|book| book.id == LEGAL).map_or(&[], |book| &book.limits)
}

/// The legal limit on the element itself behind a screening band: Cd, Pb and Hg of a polymer or a metal. `None` for Cr and
/// Br, whose limits are on a species, and where the beam meets more than one material.
pub fn legal_limit(substance: Substance, class: MaterialClass) -> Option<&'static Limit> {
    if !matches!(class, MaterialClass::Polymer | MaterialClass::Metal) {
        return None;
    }
    LEGAL_LIMITS.get(substance as usize)?.as_ref()
}
