//! What physics makes doubtful about one outcome: strong partners near its line, and depth that a thin piece lacks.
//!
//! A caution never changes an outcome. A "below" that the rest of a partner could lift holds its material; an "over"
//! that would not stand without the partner stays over, and a laboratory comes before the rejection.

use crate::halogen::Total;
use crate::lines::{self, Compared, Overlap, Overlaps, Shown};
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome};
use crate::quantity::MassFraction;
use crate::reading::CellState;
use crate::rules::{Halogens, LowEdge, Screening};
use crate::screen::Measured;
use crate::substance::{Element, Halogen, Substance};
use crate::thickness;

/// The cautions on one outcome.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cautions {
    /// Partners that are strong enough to be named.
    pub shown: Shown,
    /// Their rest, or taking them away, could change the outcome.
    pub strong: bool,
    /// How many percent of a thick piece's signal are missing, where it is worth saying.
    pub percent_missing: Option<u8>,
}

impl Cautions {
    /// True where there is nothing to say.
    pub const fn is_empty(&self) -> bool {
        self.shown.is_empty() && self.percent_missing.is_none()
    }

    /// Of an outcome judged under several classes: all that any of them says.
    #[must_use]
    pub fn or(self, other: Cautions) -> Cautions {
        Cautions {
            shown: self.shown.or(other.shown),
            strong: self.strong || other.strong,
            percent_missing: self.percent_missing.max(other.percent_missing),
        }
    }
}

/// What else a reading says: the partners by row of the table, and the tube where somebody named it.
#[derive(Debug)]
pub struct Surroundings<'a, P> {
    /// The table.
    pub overlaps: &'a Overlaps,
    /// How much of a row's partner there is.
    pub partner: P,
    /// The anode of the X-ray tube.
    pub tube: Option<Element>,
}

impl<P: Fn(usize, &Overlap) -> Option<MassFraction>> Surroundings<'_, P> {
    fn shown(&self, element: Element, low: MassFraction) -> Shown {
        self.overlaps.shown(element, low, &self.partner, self.tube)
    }

    /// The cautions on a substance judged in a class.
    ///
    /// A plated item has no band; the metal's says what is worth naming.
    pub fn of_substance(
        &self,
        rule: &Screening,
        substance: Substance,
        class: MaterialClass,
        measured: &Measured,
        judged: &Judgement,
    ) -> Cautions {
        let banded = if class == MaterialClass::Plated { MaterialClass::Metal } else { class };
        let edges = rule.band(substance, banded).and_then(|band| band.edges);
        let (Some(edges), true) = (edges, is_measured(judged.outcome)) else { return Cautions::default() };
        let (low, by_sigma) = match edges.low {
            LowEdge::Fixed(low) => (low, true),
            LowEdge::DetectionLimit { at_most } => (at_most, false),
        };
        let shown = self.shown(substance.element(), low);
        let strong = match (judged.outcome, edges.high) {
            (Outcome::Below, _) => {
                let compared = Compared {
                    x: bound(measured),
                    sigma: judged.used.sigma.filter(|_| by_sigma),
                    k: rule.sigma_factor,
                };
                let shown_as = measured.thickness_share.filter(|_| by_sigma);
                let low = shown_as.map_or(low, |share| thickness::as_shown(low, share));
                lines::below_in_doubt(&compared, shown, low, rule.equal_is_below)
            }
            (Outcome::Over, Some(high)) => {
                let compared =
                    Compared { x: measured.cell.value, sigma: judged.used.sigma, k: rule.sigma_factor };
                lines::over_in_doubt(&compared, shown, high, rule.equal_is_over)
            }
            _ => false,
        };
        let percent = measured.thickness_share.and_then(thickness::percent_missing);
        Cautions { shown, strong, percent_missing: percent.and_then(|percent| u8::try_from(percent).ok()) }
    }

    /// The cautions on chlorine or bromine against the halogen limits.
    pub fn of_halogen(
        &self,
        rule: &Halogens,
        of: Halogen,
        element: Element,
        measured: &Measured,
        judged: &Judgement,
    ) -> Cautions {
        if !is_measured(judged.outcome) {
            return Cautions::default();
        }
        let limit = rule.limit(of);
        let shown = self.shown(element, limit);
        let compared = Compared { x: bound(measured), sigma: judged.used.sigma, k: rule.sigma_factor };
        let strong = doubted(judged.outcome, &compared, &compared, shown, limit, rule.equal_is_within);
        Cautions { shown, strong, percent_missing: None }
    }

    /// The cautions on the total of chlorine and bromine: those of both parts together.
    pub fn of_total(&self, rule: &Halogens, total: &Total, parts: [Cautions; 2]) -> Cautions {
        let judged = &total.judgement;
        if !is_measured(judged.outcome) {
            return Cautions::default();
        }
        let limit = rule.limit(Halogen::Total);
        let shown = self.shown(Element::CL, limit).and(self.shown(Element::BR, limit));
        let compared = |x: Option<MassFraction>| {
            x.map(|x| Compared { x, sigma: total.sigma.or(judged.used.sigma), k: rule.sigma_factor })
        };
        let strong = match (compared(total.high.or(total.low)), compared(total.low.or(total.high))) {
            (Some(high), Some(low)) => {
                doubted(judged.outcome, &high, &low, shown, limit, rule.equal_is_within)
            }
            // One part alone is over: it is as doubtful as that part.
            _ => judged.outcome == Outcome::Over && parts.iter().any(|part| part.strong),
        };
        Cautions { shown, strong, percent_missing: None }
    }
}

fn doubted(
    outcome: Outcome,
    high: &Compared,
    low: &Compared,
    shown: Shown,
    limit: MassFraction,
    equal_is_within: bool,
) -> bool {
    match outcome {
        Outcome::Below => lines::below_in_doubt(high, shown, limit, equal_is_within),
        // "At most" is broken above the limit, "below" already at it.
        Outcome::Over => lines::over_in_doubt(low, shown, limit, !equal_is_within),
        _ => false,
    }
}

const fn is_measured(outcome: Outcome) -> bool {
    !matches!(outcome, Outcome::NotMeasured | Outcome::NotApplicable)
}

/// The number an outcome was judged by: the value, or the limit of what was not detected.
fn bound(measured: &Measured) -> MassFraction {
    match measured.cell.state {
        CellState::NotDetected => measured.cell.detection_limit.unwrap_or(measured.cell.value),
        _ => measured.cell.value,
    }
}
