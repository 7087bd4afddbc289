//! The words of a verdict: outcomes, the reasons behind them, and which sigma was used.

use crate::quantity::Sigma;
use crate::reading::codes;

/// What a reading says of a substance.
///
/// BL, X and OL are IEC 62321-3-1's; the others are honest non-answers and never stand for a pass.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum Outcome {
    /// The substance does not apply to this class (bromine in metal).
    NotApplicable,
    /// Below limit.
    Below,
    /// Inconclusive.
    Undecided,
    /// Three sigma reach the band's low edge: this measurement can't show "below".
    NotCapable,
    /// Not detected, but the detection limit clears nothing.
    DetectionTooHigh,
    /// A number without an uncertainty.
    NoUncertainty,
    /// No measurement.
    NotMeasured,
    /// Over limit.
    Over,
}

impl Outcome {
    /// All outcomes, best first; the derived order is badness (OL > not measured > no uncertainty >
    /// detection limit too high > not capable > X > BL, not applicable neutral).
    pub const ALL: [Outcome; 8] = [
        Outcome::NotApplicable,
        Outcome::Below,
        Outcome::Undecided,
        Outcome::NotCapable,
        Outcome::DetectionTooHigh,
        Outcome::NoUncertainty,
        Outcome::NotMeasured,
        Outcome::Over,
    ];

    /// The code used in findings.
    pub const fn code(self) -> &'static str {
        match self {
            Outcome::NotApplicable => "not_applicable",
            Outcome::Below => "BL",
            Outcome::Undecided => "X",
            Outcome::NotCapable => "not_capable",
            Outcome::DetectionTooHigh => "detection_too_high",
            Outcome::NoUncertainty => "no_uncertainty",
            Outcome::NotMeasured => "not_measured",
            Outcome::Over => "OL",
        }
    }

    /// The outcome of a code.
    pub fn from_code(code: &str) -> Option<Outcome> {
        Outcome::ALL.into_iter().find(|outcome| outcome.code() == code)
    }

    /// True for the two outcomes that hold nothing.
    pub const fn is_settled(self) -> bool {
        matches!(self, Outcome::Below | Outcome::NotApplicable)
    }
}

codes! {
    /// Why an outcome is what it is.
    Reason {
        /// The file has no column for the element.
        NoColumn => "no_column",
        /// The cell is empty or a dash.
        CellBlank => "cell_blank",
        /// The cell holds text that is no measurement.
        CellNotUnderstood => "cell_not_understood",
        /// Nobody stated the unit.
        UnitNotStated => "unit_not_stated",
        /// Not detected, and the stated limit clears nothing.
        DetectionLimitAboveBand => "detection_limit_above_band",
        /// Not detected, and no limit is stated anywhere.
        LimitNotStated => "limit_not_stated",
        /// The uncertainty is blank or zero.
        UncertaintyNotStated => "uncertainty_not_stated",
        /// Three sigma reach the low edge.
        ThreeSigmaReachesBand => "three_sigma_reaches_band",
        /// The reading lies in the widened band.
        InsideBand => "inside_band",
        /// Above the low edge, and the element can't prove the substance.
        ElementOnly => "element_only",
        /// A layer and what lies under it are averaged.
        LayerNotResolved => "layer_not_resolved",
        /// Above a stated upper end that lies below the high edge.
        AboveRange => "above_range",
        /// So far below zero that no error of it explains it, by as much as the edge.
        NegativeBeyondError => "negative_beyond_error",
        /// Cadmium in a composite clears only against a stated detection limit.
        CompositeNeedsDetectionLimit => "composite_needs_detection_limit",
        /// Too thin: what the missing depth would add reaches the band.
        ThinSample => "thin_sample",
        /// Repeats of the spot scatter beyond what they state.
        RepeatsDisagree => "repeats_disagree",
        /// Bromine (or the halogens) in metal.
        NotApplicableInMetal => "not_applicable_in_metal",
        /// The interval of the reading spans the limit.
        AroundLimit => "around_limit",
        /// A part of the total is only known to lie below its detection limit.
        CensoredPart => "censored_part",
        /// A part of the total was not measured.
        PartNotMeasured => "part_not_measured",
        /// A part of the total has no uncertainty.
        PartWithoutUncertainty => "part_without_uncertainty",
        /// A part of the total was not detected and its limit is not stated.
        PartLimitNotStated => "part_limit_not_stated",
        /// One part alone is over the total's limit.
        OnePartAlone => "one_part_alone",
        /// Copper or glass in the beam dilutes the resin.
        CopperOrGlassInBeam => "copper_or_glass_in_beam",
        /// The limit doesn't speak of this class.
        ClassNotCovered => "class_not_covered",
        /// A person answered that the limit does not apply.
        AnsweredNo => "answered_no",
        /// The limit doesn't hold on the day of placing on the market.
        OutsideValidity => "outside_validity",
        /// The limit is dated, and nobody said when the thing is placed on the market.
        PlacingDateNotStated => "placing_date_not_stated",
        /// Over, if the limit applies; whether it does, a person has to say.
        QuestionOpen => "question_open",
        /// At or above a limit that counts an element only from certain sources, which X-rays don't tell apart.
        SourceNotSeen => "source_not_seen",
        /// Below the limit in a mixture: one of its materials may be above it.
        MixedMaterials => "mixed_materials",
    }
}

codes! {
    /// Where the sigma of an outcome came from.
    SigmaFrom {
        /// The uncertainty printed beside the reading, with its stated multiple.
        Printed => "printed",
        /// Printed, multiple unknown and taken as one, which widens the band.
        PrintedMultipleUnknown => "printed_multiple_unknown",
        /// Printed, with the multiple a person set for the source.
        PrintedMultipleSet => "printed_multiple_set",
        /// The site's table of repeatability at the action level.
        SiteTable => "site_table",
        /// What repeats of the same spot show, where that is more than what is printed.
        Repeats => "repeats",
        /// The detection limit divided by its multiple.
        DetectionLimit => "detection_limit",
        /// None was needed or none was there.
        None => "none",
    }
}

/// The sigma a judgement used.
#[derive(Clone, Copy, Debug)]
pub struct UsedSigma {
    /// One sigma; `None` where there is none.
    pub sigma: Option<Sigma>,
    /// Where it came from.
    pub from: SigmaFrom,
}

impl UsedSigma {
    /// No sigma.
    pub const NONE: UsedSigma = UsedSigma { sigma: None, from: SigmaFrom::None };
}

/// One judgement.
#[derive(Clone, Copy, Debug)]
pub struct Judgement {
    /// The outcome.
    pub outcome: Outcome,
    /// Why; `None` where the outcome needs no reason (BL, OL).
    pub reason: Option<Reason>,
    /// The sigma that was used.
    pub used: UsedSigma,
}

impl Judgement {
    /// A judgement with its reason.
    pub const fn new(outcome: Outcome, reason: Option<Reason>, used: UsedSigma) -> Judgement {
        Judgement { outcome, reason, used }
    }

    /// True for a number that something moved so far that it says nothing of the substance: no probability, no measuring
    /// time and no exemption rests on it.
    pub fn is_shifted(&self) -> bool {
        self.reason == Some(Reason::NegativeBeyondError)
    }

    /// False for a number whose sigma says nothing of how far it may lie from the truth: one that something moved, or whose
    /// repeats disagree. No probability, no other decision rule and no measuring time rests on it.
    pub fn is_measure(&self) -> bool {
        !self.is_shifted() && self.reason != Some(Reason::RepeatsDisagree)
    }
}
