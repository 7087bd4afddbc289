//! The twin's own words. Codes are those of the output contract, typed in from the design.

/// Material classes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Class {
    /// Polymer.
    Polymer,
    /// Bare metal.
    Metal,
    /// Composite or electronics.
    Composite,
    /// Plated, coated or passivated.
    Plated,
    /// Not known.
    Unknown,
}

impl Class {
    /// Classes with bands of their own.
    pub const BANDED: [Class; 3] = [Class::Polymer, Class::Metal, Class::Composite];

    /// The code of the contract.
    pub fn code(self) -> &'static str {
        match self {
            Class::Polymer => "polymer",
            Class::Metal => "metal",
            Class::Composite => "composite",
            Class::Plated => "plated",
            Class::Unknown => "unknown",
        }
    }
}

/// Substances, in the order of the contract.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Substance {
    /// Cadmium.
    Cd,
    /// Lead.
    Pb,
    /// Mercury.
    Hg,
    /// Total chromium.
    Cr,
    /// Total bromine.
    Br,
}

impl Substance {
    /// All of them.
    pub const ALL: [Substance; 5] =
        [Substance::Cd, Substance::Pb, Substance::Hg, Substance::Cr, Substance::Br];

    /// The symbol.
    pub fn symbol(self) -> &'static str {
        match self {
            Substance::Cd => "Cd",
            Substance::Pb => "Pb",
            Substance::Hg => "Hg",
            Substance::Cr => "Cr",
            Substance::Br => "Br",
        }
    }
}

/// Halogens.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Halogen {
    /// Chlorine.
    Cl,
    /// Bromine.
    Br,
    /// Both together.
    Total,
}

impl Halogen {
    /// All of them.
    pub const ALL: [Halogen; 3] = [Halogen::Cl, Halogen::Br, Halogen::Total];

    /// The name in the contract.
    pub fn name(self) -> &'static str {
        match self {
            Halogen::Cl => "Cl",
            Halogen::Br => "Br",
            Halogen::Total => "total",
        }
    }
}

/// Outcomes from harmless to worst, which is their order (design, item 16).
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Outcome {
    /// Not applicable.
    NotApplicable,
    /// Below limit.
    Bl,
    /// Inconclusive.
    X,
    /// Not capable at this sigma.
    NotCapable,
    /// Detection limit too high.
    DetectionTooHigh,
    /// No uncertainty.
    NoUncertainty,
    /// Not measured.
    NotMeasured,
    /// Over limit.
    Ol,
}

impl Outcome {
    /// The code of the contract.
    pub fn code(self) -> &'static str {
        match self {
            Outcome::NotApplicable => "not_applicable",
            Outcome::Bl => "BL",
            Outcome::X => "X",
            Outcome::NotCapable => "not_capable",
            Outcome::DetectionTooHigh => "detection_too_high",
            Outcome::NoUncertainty => "no_uncertainty",
            Outcome::NotMeasured => "not_measured",
            Outcome::Ol => "OL",
        }
    }

    /// The badness of a code of the contract.
    pub fn from_code(code: &str) -> Outcome {
        [
            Outcome::NotApplicable,
            Outcome::Bl,
            Outcome::X,
            Outcome::NotCapable,
            Outcome::DetectionTooHigh,
            Outcome::NoUncertainty,
            Outcome::NotMeasured,
            Outcome::Ol,
        ]
        .into_iter()
        .find(|outcome| outcome.code() == code)
        .unwrap_or_else(|| panic!("{code} is no outcome of the contract"))
    }
}

/// An outcome with the code of its reason; BL and OL need none.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Verdict {
    /// The outcome.
    pub outcome: Outcome,
    /// Its reason; empty where none is needed.
    pub reason: &'static str,
}

impl Verdict {
    /// An outcome with its reason.
    pub fn new(outcome: Outcome, reason: &'static str) -> Verdict {
        Verdict { outcome, reason }
    }
}
