//! What would settle an open outcome, cheapest first.

use crate::composition::AlloyGroup;
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom};
use crate::quantity::{MassFraction, Sigma};
use crate::rules::{Edges, LowEdge, RuleBooks, Screening};
use crate::substance::Substance;

/// Longest measuring time that is suggested, in tenths of a second: half an hour on one spot is the end of patience
/// and of tube life (common practice, no source).
const LONGEST_DECISECONDS: u128 = 18_000;

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
        /// Total seconds for a chance of 90 %.
        surely: u32,
    },
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
            NextStep::LowerDetectionLimit => "lower_detection_limit",
            NextStep::ThickerPiece => "thicker_piece",
            NextStep::SeparateLayers => "separate_layers",
            NextStep::Laboratory => "laboratory",
            NextStep::ReferenceMethod { .. } => "reference_method",
        }
    }
}

/// What is known of a measurement when it is asked how long would be enough.
#[derive(Clone, Copy, Debug)]
pub struct Duration {
    /// Value in mg/kg.
    pub value: MassFraction,
    /// One sigma.
    pub sigma: Sigma,
    /// How long it took, in tenths of a second.
    pub deciseconds: u16,
}

/// Steps that could settle the outcome of `substance` (`None`: a halogen), cheapest first; empty where it is settled.
pub fn next_steps(
    books: &RuleBooks,
    substance: Option<Substance>,
    class: MaterialClass,
    judged: &Judgement,
    measured: Option<Duration>,
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
        (Outcome::Undecided | Outcome::NotCapable, _) => {
            let printed = matches!(
                judged.used.from,
                SigmaFrom::Printed | SigmaFrom::PrintedMultipleSet | SigmaFrom::PrintedMultipleUnknown
            );
            if let (Some(substance), Some(measured), true, Some((_, rule))) =
                (substance, measured, printed, books.screening())
                && let Some(edges) = rule.band(substance, class).and_then(|band| band.edges)
                && let Some(seconds) = seconds_for_even_chance(rule, edges, measured)
            {
                steps.push(NextStep::MeasureLonger {
                    seconds,
                    surely: seconds_for_nine_in_ten(rule, seconds),
                });
            }
            laboratory(&mut steps);
        }
        (Outcome::Over, _) => laboratory(&mut steps),
    }
    steps
}

/// Total measuring time for a chance of 90 %: `t ((k + 1.2816) / k)²`, with the 90 % quantile of the normal
/// distribution on top of k, because the next reading scatters by its own sigma.
fn seconds_for_nine_in_ten(rule: &Screening, even_chance: u32) -> u32 {
    let k = rule.sigma_factor.to_f64();
    let ratio = (k + 1.2816) / k;
    libm::ceil(f64::from(even_chance) * ratio * ratio) as u32
}

/// Total measuring time at which the same value would just be decided: `t = t0 (k s0 / distance)²`, the distance to
/// the edge it lies outside of. Inside the edges no time can decide.
///
/// At exactly this time the next reading has an even chance to be conclusive; longer is surer.
fn seconds_for_even_chance(rule: &Screening, edges: Edges, measured: Duration) -> Option<u32> {
    let x = measured.value.units();
    let below = match edges.low {
        LowEdge::Fixed(low) => low.units() - x,
        LowEdge::DetectionLimit { .. } => return None,
    };
    let above = edges.high.map_or(-1, |high| x - high.units());
    let distance = below.max(above);
    if distance <= 0 {
        return None;
    }
    // Smallest number of tenths of a second t with k² s0² t0 / t <= distance², found by halving: exact, and a table
    // of squares stays inside the same bounds as every other comparison.
    let enough = |deciseconds: u128| {
        let scaled =
            Sigma::at_time(measured.sigma.to_mass_fraction(), MassFraction::ZERO, measured.deciseconds, {
                u16::try_from(deciseconds).unwrap_or(u16::MAX)
            });
        scaled.is_some_and(|sigma| {
            sigma.compare_times(rule.sigma_factor, MassFraction::from_units(distance)).is_le()
        })
    };
    let (mut short, mut long) = (u128::from(measured.deciseconds), LONGEST_DECISECONDS);
    if short >= long || !enough(long) {
        return None;
    }
    while long - short > 1 {
        let middle = u128::midpoint(short, long);
        if enough(middle) { long = middle } else { short = middle }
    }
    u32::try_from(long.div_ceil(10)).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seconds(value: i64, sigma: i64, deciseconds: u16) -> Option<u32> {
        let books = RuleBooks::built_in().unwrap();
        let (_, rule) = books.screening().unwrap();
        let edges = rule.band(Substance::Pb, MaterialClass::Polymer).unwrap().edges.unwrap();
        let measured = Duration {
            value: MassFraction::from_mg_per_kg(value),
            sigma: Sigma::from_one_sigma(MassFraction::from_mg_per_kg(sigma)).unwrap(),
            deciseconds,
        };
        seconds_for_even_chance(rule, edges, measured)
    }

    /// t = t0 (3 s0 / (700 - x))²: 30 s, s 40, x 640 gives 30 x (120 / 60)² = 120 s.
    #[test]
    fn four_times_the_time_halves_the_sigma() {
        assert_eq!(seconds(640, 40, 300), Some(120));
        assert_eq!(seconds(1360, 40, 300), Some(120));
    }

    #[test]
    fn inside_the_edges_no_time_can_decide() {
        assert_eq!(seconds(700, 40, 300), None);
        assert_eq!(seconds(1000, 40, 300), None);
        assert_eq!(seconds(1300, 40, 300), None);
    }

    #[test]
    fn an_hour_on_one_spot_is_not_suggested() {
        assert_eq!(seconds(699, 40, 300), None);
    }
}
