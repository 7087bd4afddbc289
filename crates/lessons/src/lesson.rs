//! The lessons, in order, and which kinds of exercise each has.

use crate::lot::LotKind as L;
use crate::reading::ReadingKind as R;

/// A lesson.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Lesson {
    /// What a band is.
    Band,
    /// Why three sigma.
    Sigma,
    /// Why bromine and chromium are never "over".
    Element,
    /// Values below detection.
    Censored,
    /// Homogeneous material and layers.
    Material,
    /// Exemptions.
    Exemption,
    /// Trust in the instrument on the day.
    Trust,
    /// Sampling, and what an accept means.
    Sampling,
}

/// A kind of exercise.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    /// One reading.
    Reading(R),
    /// A lot of several.
    Lot(L),
}

impl Lesson {
    /// All lessons, in the order they are taken.
    pub const ALL: [Lesson; 8] = [
        Lesson::Band,
        Lesson::Sigma,
        Lesson::Element,
        Lesson::Censored,
        Lesson::Material,
        Lesson::Exemption,
        Lesson::Trust,
        Lesson::Sampling,
    ];

    /// The name it goes by between page and program.
    pub const fn code(self) -> &'static str {
        match self {
            Lesson::Band => "band",
            Lesson::Sigma => "sigma",
            Lesson::Element => "element",
            Lesson::Censored => "censored",
            Lesson::Material => "material",
            Lesson::Exemption => "exemption",
            Lesson::Trust => "trust",
            Lesson::Sampling => "sampling",
        }
    }

    /// The lesson of a name.
    pub fn from_code(code: &str) -> Option<Lesson> {
        Lesson::ALL.into_iter().find(|lesson| lesson.code() == code)
    }

    /// Its kinds of exercise in groups of like kinds: three exercises in a row are of three groups, and no kind comes again
    /// before its group is through.
    pub(crate) const fn kinds(self) -> [&'static [Kind]; 3] {
        use Kind::{Lot, Reading};
        match self {
            Lesson::Band => [
                &[Reading(R::FarBelow), Reading(R::AtLowEdge)],
                &[Reading(R::InBand), Reading(R::StepAboveLow), Reading(R::StepBelowHigh)],
                &[Reading(R::FarOver), Reading(R::AtHighEdge)],
            ],
            Lesson::Sigma => [
                &[Reading(R::FarBelow), Reading(R::AtLowEdge), Reading(R::AtHighEdge)],
                &[Reading(R::WideBelow), Reading(R::WideOver), Reading(R::StepAboveLow)],
                &[Reading(R::NotCapable), Reading(R::NoSigma)],
            ],
            Lesson::Element => [
                &[Reading(R::OpenBelow), Reading(R::OpenAtEdge)],
                &[Reading(R::OpenHigh), Reading(R::OpenStepAbove), Reading(R::OpenFarHigh)],
                &[Reading(R::BromineInMetal), Reading(R::OpenFarHigh), Reading(R::FarOver)],
            ],
            Lesson::Censored => [
                &[
                    Reading(R::LimitLow),
                    Reading(R::LimitAtEdge),
                    Reading(R::CompositeLimitLow),
                    Reading(R::CompositeBelowLimit),
                ],
                &[Reading(R::LimitStepAbove), Reading(R::LimitHigh), Reading(R::CompositeLimitHigh)],
                &[
                    Reading(R::BareNotDetected),
                    Reading(R::Dash),
                    Reading(R::CompositeNumber),
                    Reading(R::AboveRange),
                ],
            ],
            Lesson::Material => [
                &[Lot(L::TwoMaterials), Reading(R::ThickPiece)],
                &[Lot(L::OneMaterialOver), Reading(R::GlassOver)],
                &[Lot(L::MaterialMissing), Reading(R::Plated), Reading(R::ThinPiece)],
            ],
            Lesson::Exemption => [
                &[Lot(L::ClaimCovers)],
                &[Lot(L::NoClaim), Lot(L::ClaimExceeded), Lot(L::ClaimExpired)],
                &[Lot(L::ClaimAround), Lot(L::ClaimUndated), Lot(L::ClaimOneInitial)],
            ],
            Lesson::Trust => [
                &[Lot(L::ChecksGood)],
                &[Lot(L::CheckFailed), Lot(L::CheckFailedAndOver), Lot(L::NoChecks)],
                &[Lot(L::CheckNotAfter), Lot(L::TooShort), Lot(L::ChecksGoodAndOver)],
            ],
            Lesson::Sampling => [
                &[Lot(L::EnoughUnits)],
                &[Lot(L::TooFewUnits), Lot(L::LotSizeMissing), Lot(L::OneUnitManySpots)],
                &[Lot(L::OneOver), Lot(L::OneUndecided), Lot(L::OneNotMeasured)],
            ],
        }
    }
}
