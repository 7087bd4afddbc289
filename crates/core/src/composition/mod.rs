//! What a composition says of a material: its class, its alloy family, and a calibration that does not fit.
//!
//! Light elements are invisible to X-ray fluorescence, so a plastic shows itself by a small sum of what is measured and
//! a metal by a sum near the whole. What is found here is a suggestion with its reason: it never decides a class, and
//! never makes an outcome better. Only a flat contradiction of a declared class counts, and it only makes stricter.
//!
//! Ranges, shares and words are data (`rules/compositions.tsv`), each with its source. Comparisons are of whole numbers;
//! the order of columns changes nothing.

mod data;
mod family;
mod look;
mod mode;

pub use data::{Rules, Unread, built_in};
pub use family::{Family, FamilyFit, FamilyFound, Range, RangeFit, RangeFound};
pub use look::{CompositionReview, Described, GroupFound, LEADING};

use crate::reading::codes;

codes! {
    /// An alloy group, by the element with the largest mass fraction.
    AlloyGroup {
        /// Iron.
        Steel => "steel",
        /// Aluminium.
        Aluminium => "aluminium",
        /// Copper.
        Copper => "copper",
        /// Zinc.
        Zinc => "zinc",
        /// Tin.
        Tin => "tin",
        /// Lead.
        Lead => "lead",
        /// Nickel.
        Nickel => "nickel",
        /// Titanium.
        Titanium => "titanium",
        /// Magnesium.
        Magnesium => "magnesium",
        /// Silver, gold, palladium, platinum, rhodium.
        Precious => "precious",
    }
}

codes! {
    /// Why a composition suggests a class.
    SuggestionReason {
        /// Metals make up most of it, and one of them is the largest part.
        MostlyMetal => "mostly_metal",
        /// Little of it is seen, although every element that could be its main part has a column.
        LittleSeen => "little_seen",
        /// Chlorine is a main element and metals are not.
        MuchChlorine => "much_chlorine",
        /// Conductors beside what laminates are made of: at least two of bromine, silicon and calcium.
        ConductorInLaminate => "conductor_in_laminate",
    }
}

codes! {
    /// How a composition flatly contradicts a class.
    Contradiction {
        /// Taken for a plastic, and metals make up half of it or more.
        MetalsInPolymer => "metals_in_polymer",
        /// Taken for a metal, and almost nothing of the main metals is there although each was measured.
        NoMetalInMetal => "no_metal_in_metal",
        /// Taken for a metal, and holds as much bromine as a flame-retarded plastic or as much chlorine as a chlorinated one.
        HalogenInMetal => "halogen_in_metal",
    }
}

codes! {
    /// Why the calibration of a reading is doubtful.
    CalibrationDoubt {
        /// Chlorine is a main element, and the mode is one for plastics without it.
        PvcInPolymerMode => "pvc_in_polymer_mode",
        /// A metal in a mode for plastics.
        MetalInPolymerMode => "metal_in_polymer_mode",
        /// A metal in a mode for soil or ore.
        MetalInSoilMode => "metal_in_soil_mode",
        /// A plastic in a mode for metals.
        PlasticInMetalMode => "plastic_in_metal_mode",
        /// A plastic in a mode for soil or ore.
        PlasticInSoilMode => "plastic_in_soil_mode",
    }
}
