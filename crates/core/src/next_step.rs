//! What would settle an open outcome, cheapest first.

use crate::composition::AlloyGroup;
use crate::longer::{Longer, Never};
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason};
use crate::rules::RuleBooks;
use crate::substance::Substance;

/// Longest measuring time that is suggested, in seconds: half an hour on one spot is the end of patience and of tube
/// life (common practice, no source).
pub const LONGEST_SECONDS: u32 = 1_800;

/// One thing that could settle an outcome.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum NextStep {
    /// Measure this element.
    MeasureElement,
    /// State the unit of the column.
    StateUnit,
    /// Correct the cell in the source, or measure again.
    ReadCellAgain,
    /// Give the uncertainty.
    StateUncertainty,
    /// Give the detection limit.
    StateDetectionLimit,
    /// State the material class.
    StateClass,
    /// State the material class, and this is what the composition suggests.
    StateClassSuggested {
        /// The class.
        class: MaterialClass,
        /// The alloy group of a metal.
        group: Option<AlloyGroup>,
    },
    /// Measure about this long for a decision.
    MeasureLonger {
        /// Total seconds for an even chance, beam unknown.
        seconds: u32,
        /// Total seconds for a chance of 90 %; `None` beyond [`LONGEST_SECONDS`].
        surely: Option<u32>,
    },
    /// No measuring time decides it, and why.
    NoTimeCan(Never),
    /// Measure another spot: it may show more, and it never clears this one.
    AnotherSpot,
    /// Clean the spot and repeat: the repeats contradict each other.
    RepeatAgain,
    /// Find what moved the reading, and measure the spot again.
    FindShift,
    /// A longer measurement lowers the detection limit.
    LowerDetectionLimit,
    /// Stack pieces or measure a thicker one.
    ThickerPiece,
    /// Separate the layers, or state thickness and substrate.
    SeparateLayers,
    /// Send it to a laboratory; the rule book names no method.
    Laboratory,
    /// Send it to a laboratory.
    ReferenceMethod {
        /// The standard.
        method: String,
        /// The technique.
        technique: String,
    },
}

impl NextStep {
    /// The code used in the catalogue.
    pub const fn code(&self) -> &'static str {
        match self {
            NextStep::MeasureElement => "measure_element",
            NextStep::StateUnit => "state_unit",
            NextStep::ReadCellAgain => "read_cell_again",
            NextStep::StateUncertainty => "state_uncertainty",
            NextStep::StateDetectionLimit => "state_detection_limit",
            NextStep::StateClass => "state_class",
            NextStep::StateClassSuggested { .. } => "state_class_suggested",
            NextStep::MeasureLonger { .. } => "measure_longer",
            NextStep::NoTimeCan(_) => "no_time_can",
            NextStep::AnotherSpot => "another_spot",
            NextStep::RepeatAgain => "repeat_again",
            NextStep::FindShift => "find_shift",
            NextStep::LowerDetectionLimit => "lower_detection_limit",
            NextStep::ThickerPiece => "thicker_piece",
            NextStep::SeparateLayers => "separate_layers",
            NextStep::Laboratory => "laboratory",
            NextStep::ReferenceMethod { .. } => "reference_method",
        }
    }
}

/// Steps that could settle the outcome of `substance` (`None`: a halogen), cheapest first: a statement, measuring longer,
/// another spot, a thicker or separated sample, the reference method. Empty where it is settled.
///
/// `longer` is how long would be long enough, where that was asked.
pub fn next_steps(
    books: &RuleBooks,
    substance: Option<Substance>,
    class: MaterialClass,
    judged: &Judgement,
    longer: Option<Longer>,
) -> Vec<NextStep> {
    let mut steps = Vec::new();
    let laboratory = |steps: &mut Vec<NextStep>| {
        steps.push(match books.route(substance, class) {
            Some(route) => {
                NextStep::ReferenceMethod { method: route.method.clone(), technique: route.technique.clone() }
            }
            None => NextStep::Laboratory,
        });
    };
    // A stated class may settle it at once, and costs nothing.
    if class == MaterialClass::Unknown
        && !judged.outcome.is_settled()
        && judged.outcome != Outcome::NotMeasured
    {
        steps.push(NextStep::StateClass);
    }
    match (judged.outcome, judged.reason) {
        (Outcome::Below | Outcome::NotApplicable, _) => {}
        (Outcome::NotMeasured, Some(Reason::UnitNotStated)) => steps.push(NextStep::StateUnit),
        (Outcome::NotMeasured, Some(Reason::CellNotUnderstood)) => steps.push(NextStep::ReadCellAgain),
        (Outcome::NotMeasured, _) => steps.push(NextStep::MeasureElement),
        (Outcome::NoUncertainty, _) => steps.push(NextStep::StateUncertainty),
        (Outcome::DetectionTooHigh, Some(Reason::LimitNotStated | Reason::PartLimitNotStated)) => {
            steps.push(NextStep::StateDetectionLimit);
        }
        (Outcome::DetectionTooHigh, _) => {
            steps.push(NextStep::LowerDetectionLimit);
            laboratory(&mut steps);
        }
        (Outcome::Undecided, Some(Reason::LayerNotResolved)) => {
            steps.push(NextStep::SeparateLayers);
            laboratory(&mut steps);
        }
        (Outcome::Undecided, Some(Reason::ThinSample)) => {
            steps.push(NextStep::ThickerPiece);
            laboratory(&mut steps);
        }
        (Outcome::Undecided, Some(Reason::CompositeNeedsDetectionLimit)) => {
            steps.push(NextStep::StateDetectionLimit);
            laboratory(&mut steps);
        }
        // No time takes a shift away.
        (Outcome::Undecided, Some(Reason::NegativeBeyondError)) => {
            steps.push(NextStep::FindShift);
            laboratory(&mut steps);
        }
        (Outcome::Undecided, Some(Reason::RepeatsDisagree)) => {
            steps.push(NextStep::RepeatAgain);
            steps.push(NextStep::AnotherSpot);
            laboratory(&mut steps);
        }
        (Outcome::Undecided | Outcome::NotCapable, _) => {
            match longer {
                Some(Longer::Seconds { even, surely }) => {
                    steps.push(NextStep::MeasureLonger { seconds: even, surely });
                }
                Some(Longer::Never(why)) if why != Never::NotKnown => {
                    steps.push(NextStep::NoTimeCan(why));
                    if judged.reason == Some(Reason::InsideBand) {
                        steps.push(NextStep::AnotherSpot);
                    }
                }
                _ => {}
            }
            laboratory(&mut steps);
        }
        (Outcome::Over, _) => laboratory(&mut steps),
    }
    steps
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outcome::UsedSigma;

    fn steps(outcome: Outcome, reason: Option<Reason>, longer: Option<Longer>) -> Vec<&'static str> {
        let books = RuleBooks::built_in().unwrap();
        let judged = Judgement::new(outcome, reason, UsedSigma::NONE);
        next_steps(&books, Some(Substance::Pb), MaterialClass::Polymer, &judged, longer)
            .iter()
            .map(NextStep::code)
            .collect()
    }

    #[test]
    fn a_settled_outcome_needs_nothing() {
        assert!(steps(Outcome::Below, None, None).is_empty());
        assert!(steps(Outcome::NotApplicable, None, None).is_empty());
    }

    #[test]
    fn the_cheapest_comes_first_and_the_laboratory_last() {
        let longer = Longer::Seconds { even: 120, surely: Some(240) };
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::InsideBand), Some(longer)),
            ["measure_longer", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::InsideBand), Some(Longer::Never(Never::InsideEdges))),
            ["no_time_can", "another_spot", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::InsideBand), Some(Longer::Never(Never::NotKnown))),
            ["reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::ElementOnly), Some(Longer::Never(Never::InsideEdges))),
            ["no_time_can", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::RepeatsDisagree), None),
            ["repeat_again", "another_spot", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::ThinSample), None),
            ["thicker_piece", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::LayerNotResolved), None),
            ["separate_layers", "reference_method"]
        );
        assert_eq!(steps(Outcome::Over, None, None), ["reference_method"]);
    }

    #[test]
    fn what_is_missing_is_asked_for() {
        assert_eq!(steps(Outcome::NotMeasured, Some(Reason::UnitNotStated), None), ["state_unit"]);
        assert_eq!(steps(Outcome::NotMeasured, Some(Reason::CellNotUnderstood), None), ["read_cell_again"]);
        assert_eq!(steps(Outcome::NotMeasured, Some(Reason::NoColumn), None), ["measure_element"]);
        let missing = Some(Reason::UncertaintyNotStated);
        assert_eq!(steps(Outcome::NoUncertainty, missing, None), ["state_uncertainty"]);
        let no_limit = Some(Reason::LimitNotStated);
        assert_eq!(steps(Outcome::DetectionTooHigh, no_limit, None), ["state_detection_limit"]);
        assert_eq!(
            steps(Outcome::DetectionTooHigh, Some(Reason::DetectionLimitAboveBand), None),
            ["lower_detection_limit", "reference_method"]
        );
        assert_eq!(
            steps(Outcome::Undecided, Some(Reason::CompositeNeedsDetectionLimit), None),
            ["state_detection_limit", "reference_method"]
        );
    }

    #[test]
    fn an_unknown_class_is_asked_for_before_anything_else() {
        let books = RuleBooks::built_in().unwrap();
        let judged = Judgement::new(Outcome::Undecided, Some(Reason::InsideBand), UsedSigma::NONE);
        let steps = next_steps(&books, Some(Substance::Pb), MaterialClass::Unknown, &judged, None);
        assert_eq!(steps.first(), Some(&NextStep::StateClass));
        let judged = Judgement::new(Outcome::NotMeasured, Some(Reason::NoColumn), UsedSigma::NONE);
        let steps = next_steps(&books, Some(Substance::Pb), MaterialClass::Unknown, &judged, None);
        assert_eq!(steps, [NextStep::MeasureElement]);
    }
}
