//! The limits, typed in once more from their published source, not from the rule book files.

use super::verdict::{Class, Halogen, Substance};

/// The low edge of a band.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LowEdge {
    /// mg/kg.
    At(i64),
    /// The detection limit of the reading itself.
    DetectionLimit,
}

/// The undecided band of a substance in a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Band {
    /// Low edge.
    pub low: LowEdge,
    /// High edge in mg/kg; none where the element can't prove the substance.
    pub high: Option<i64>,
}

/// IEC 62321-3-1:2013, table of screening limits: BL <= (low - 3s) < X < (high + 3s) <= OL, in mg/kg.
/// Cd in a composite is printed as "LOD < X < (150 + 3s)". Br in metal is "not applicable": no row here.
const SCREENING: [(Substance, Class, LowEdge, Option<i64>); 14] = [
    (Substance::Cd, Class::Polymer, LowEdge::At(70), Some(130)),
    (Substance::Cd, Class::Metal, LowEdge::At(70), Some(130)),
    (Substance::Cd, Class::Composite, LowEdge::DetectionLimit, Some(150)),
    (Substance::Pb, Class::Polymer, LowEdge::At(700), Some(1300)),
    (Substance::Pb, Class::Metal, LowEdge::At(700), Some(1300)),
    (Substance::Pb, Class::Composite, LowEdge::At(500), Some(1500)),
    (Substance::Hg, Class::Polymer, LowEdge::At(700), Some(1300)),
    (Substance::Hg, Class::Metal, LowEdge::At(700), Some(1300)),
    (Substance::Hg, Class::Composite, LowEdge::At(500), Some(1500)),
    (Substance::Br, Class::Polymer, LowEdge::At(300), None),
    (Substance::Br, Class::Composite, LowEdge::At(250), None),
    (Substance::Cr, Class::Polymer, LowEdge::At(700), None),
    (Substance::Cr, Class::Metal, LowEdge::At(700), None),
    (Substance::Cr, Class::Composite, LowEdge::At(500), None),
];

/// The largest detection limit that clears cadmium in a composite: half of the 100 mg/kg of Directive 2011/65/EU,
/// Annex II (the project's own condition).
pub const COMPOSITE_CADMIUM_LIMIT_AT_MOST: i64 = 50;

/// The factor of s on both sides of a band (IEC 62321-3-1:2013), and the project's own for halogens.
pub const SIGMAS: i64 = 3;

/// What a detection limit stands for, in sigmas, where the file doesn't say (IUPAC 1978; US EPA Method 6200, 9.6).
pub const SIGMAS_OF_A_DETECTION_LIMIT: i64 = 3;

/// The band of a substance; none where it does not apply or no band is known.
pub fn band(substance: Substance, class: Class) -> Option<Band> {
    SCREENING
        .iter()
        .find(|(of, in_class, ..)| *of == substance && *in_class == class)
        .map(|(_, _, low, high)| Band { low: *low, high: *high })
}

/// IEC 61249-2-21:2003: at most 900 mg/kg Cl, 900 mg/kg Br, 1500 mg/kg together.
pub fn halogen_limit(of: Halogen) -> i64 {
    match of {
        Halogen::Cl | Halogen::Br => 900,
        Halogen::Total => 1500,
    }
}
