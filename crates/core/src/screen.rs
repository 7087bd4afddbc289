//! One reading against the screening band of one class (IEC 62321-3-1).
//!
//! The order of the tests is the design's: not applicable, not measured, non-detects, no uncertainty, over, not
//! capable, below, undecided. A missing thing stops at its own honest outcome before any test could pass it.

use crate::material::MaterialClass;
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom, UsedSigma};
use crate::quantity::{self, Coverage, MassFraction, Sigma, SigmaMultiple};
use crate::reading::{Cell, CellState};
use crate::rules::{Band, Edges, LowEdge, Screening};

/// The multiple a detection limit stands for where the file doesn't say: three sigma of the blank (IUPAC 1978;
/// US EPA Method 6200, 9.6).
pub const DETECTION_MULTIPLE: SigmaMultiple = SigmaMultiple::THREE;

/// What is known of one cell before it is judged.
#[derive(Clone, Copy, Debug)]
pub struct Measured {
    /// The cell.
    pub cell: Cell,
    /// The sigma for a number in it.
    pub used: UsedSigma,
    /// The share of the signal of a thick piece that this one gives, in millionths; `None` where nobody stated a
    /// thickness or the class needs none.
    pub thickness_share: Option<u32>,
}

/// Judges one cell of one class.
///
/// # Units
/// Everything in mg/kg with one sigma.
///
/// # Decision
/// With k the book's factor: BL if `x + k s <= low`; OL if `x - k s >= high`; X between; equality as the book's
/// operators say. A value far below zero is X. Not detected at D: `s_D = D / 3`, BL if `D + k s_D <= low`.
///
/// # Source
/// IEC 62321-3-1, table of screening limits, through the rule book given.
pub fn screen(rule: &Screening, band: Option<&Band>, class: MaterialClass, measured: &Measured) -> Judgement {
    let none = |outcome, reason| Judgement::new(outcome, Some(reason), UsedSigma::NONE);
    let edges = band.and_then(|band| band.edges);
    if class != MaterialClass::Plated && band.is_some() && edges.is_none() {
        return none(Outcome::NotApplicable, Reason::NotApplicableInMetal);
    }
    if let Some(reason) = not_measured(measured.cell.state) {
        return none(Outcome::NotMeasured, reason);
    }
    // A layer thinner than the beam's depth is averaged with its substrate: no number here is the layer's own.
    let (Some(edges), false) = (edges, class == MaterialClass::Plated) else {
        return Judgement::new(Outcome::Undecided, Some(Reason::LayerNotResolved), measured.used);
    };
    let judged = match measured.cell.state {
        CellState::BelowDetection => below_detection(rule, edges, measured.cell.value),
        CellState::AboveRange => above_range(edges, measured.cell.value),
        CellState::NotDetected => match measured.cell.detection_limit {
            Some(limit) => below_detection(rule, edges, limit),
            None => none(Outcome::DetectionTooHigh, Reason::LimitNotStated),
        },
        _ => number(rule, edges, measured),
    };
    thin_piece(rule, edges, measured, judged)
}

/// The reason a state is no measurement at all.
pub fn not_measured(state: CellState) -> Option<Reason> {
    match state {
        CellState::NoColumn => Some(Reason::NoColumn),
        CellState::Blank => Some(Reason::CellBlank),
        CellState::Text => Some(Reason::CellNotUnderstood),
        CellState::UnitUnknown => Some(Reason::UnitNotStated),
        CellState::Number | CellState::BelowDetection | CellState::NotDetected | CellState::AboveRange => {
            None
        }
    }
}

/// The sigma of a detection limit.
pub fn sigma_of_detection(limit: MassFraction) -> UsedSigma {
    UsedSigma { sigma: Sigma::from_printed(limit, DETECTION_MULTIPLE), from: SigmaFrom::DetectionLimit }
}

fn below_detection(rule: &Screening, edges: Edges, limit: MassFraction) -> Judgement {
    let used = sigma_of_detection(limit);
    let clears = match (edges.low, used.sigma) {
        (LowEdge::Fixed(low), Some(sigma)) => {
            quantity::upper_end_within(limit, rule.sigma_factor, sigma, low, rule.equal_is_below)
        }
        (LowEdge::DetectionLimit { at_most }, _) => limit <= at_most,
        (LowEdge::Fixed(_), None) => false,
    };
    if clears {
        Judgement::new(Outcome::Below, None, used)
    } else {
        Judgement::new(Outcome::DetectionTooHigh, Some(Reason::DetectionLimitAboveBand), used)
    }
}

fn above_range(edges: Edges, upper: MassFraction) -> Judgement {
    match edges.high {
        Some(high) if upper >= high => Judgement::new(Outcome::Over, None, UsedSigma::NONE),
        Some(_) => Judgement::new(Outcome::Undecided, Some(Reason::AboveRange), UsedSigma::NONE),
        None => Judgement::new(Outcome::Undecided, Some(Reason::ElementOnly), UsedSigma::NONE),
    }
}

fn number(rule: &Screening, edges: Edges, measured: &Measured) -> Judgement {
    let used = measured.used;
    let x = measured.cell.value;
    let Some(sigma) = used.sigma.filter(|sigma| !sigma.is_zero()) else {
        return Judgement::new(Outcome::NoUncertainty, Some(Reason::UncertaintyNotStated), UsedSigma::NONE);
    };
    if let Some(high) = edges.high
        && quantity::lower_end_beyond(x, rule.sigma_factor, sigma, high, rule.equal_is_over)
    {
        return Judgement::new(Outcome::Over, None, used);
    }
    let (clears, open, edge) = match edges.low {
        LowEdge::Fixed(low) => {
            if sigma.compare_times(rule.sigma_factor, low).is_ge() {
                return Judgement::new(Outcome::NotCapable, Some(Reason::ThreeSigmaReachesBand), used);
            }
            let clears = quantity::upper_end_within(x, rule.sigma_factor, sigma, low, rule.equal_is_below);
            let beyond = x > low;
            let open = if edges.high.is_none() && beyond { Reason::ElementOnly } else { Reason::InsideBand };
            (clears, open, low)
        }
        LowEdge::DetectionLimit { at_most } => {
            // A stated limit that the reading's own sigma belies clears nothing: k s is what such a limit stands for.
            let credible = sigma.compare_times(rule.sigma_factor, at_most).is_le();
            let stated = measured.cell.detection_limit;
            let clears = credible && stated.is_some_and(|limit| limit <= at_most && x <= limit);
            (clears, Reason::CompositeNeedsDetectionLimit, at_most)
        }
    };
    if clears && measured.is_shifted(rule.sigma_factor, edge) {
        Judgement::new(Outcome::Undecided, Some(Reason::NegativeBeyondError), used)
    } else if clears {
        Judgement::new(Outcome::Below, None, used)
    } else {
        Judgement::new(Outcome::Undecided, Some(open), used)
    }
}

impl Measured {
    /// True for a number that lies below zero by more than its error and the edge together: `x + k s <= -edge`. Whatever
    /// moves a reading so far (a background taken off twice, a wrong calibration, a unit) hides as much of the substance.
    /// The rule is our own.
    pub fn is_shifted(&self, k: Coverage, edge: MassFraction) -> bool {
        let below = MassFraction::from_units(-edge.units());
        let sigma = self.used.sigma.filter(|_| self.cell.state == CellState::Number);
        sigma.is_some_and(|sigma| quantity::upper_end_within(self.cell.value, k, sigma, below, true))
    }
}

/// A thin piece shows only a share of the signal of a thick one: a BL that the missing share could lift into the
/// band is undecided. `x / share + k s / share <= low` is `x + k s <= share x low`.
fn thin_piece(rule: &Screening, edges: Edges, measured: &Measured, judged: Judgement) -> Judgement {
    let (Outcome::Below, Some(share), LowEdge::Fixed(low)) =
        (judged.outcome, measured.thickness_share, edges.low)
    else {
        return judged;
    };
    let scaled = MassFraction::from_units(
        i64::try_from(i128::from(low.units()) * i128::from(share) / 1_000_000).unwrap_or(low.units()),
    );
    let x = match measured.cell.state {
        CellState::NotDetected => measured.cell.detection_limit.unwrap_or(measured.cell.value),
        _ => measured.cell.value,
    };
    let survives = judged.used.sigma.is_some_and(|sigma| {
        quantity::upper_end_within(x, rule.sigma_factor, sigma, scaled, rule.equal_is_below)
    });
    if survives { judged } else { Judgement::new(Outcome::Undecided, Some(Reason::ThinSample), judged.used) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::quantity::{DecimalMark, Number, Rounding, Unit};
    use crate::rules::RuleBooks;
    use crate::substance::Substance;

    fn mg(text: &str) -> MassFraction {
        Number::parse(text.as_bytes(), DecimalMark::Point)
            .unwrap()
            .to_mass_fraction(Unit::MgPerKg, Rounding::Nearest)
            .unwrap()
    }

    fn measured(state: CellState, value: &str, sigma: Option<&str>) -> Measured {
        Measured {
            cell: Cell { state, value: mg(value), printed_error: sigma.map(mg), detection_limit: None },
            used: UsedSigma {
                sigma: sigma.and_then(|sigma| Sigma::from_one_sigma(mg(sigma))),
                from: SigmaFrom::Printed,
            },
            thickness_share: None,
        }
    }

    fn judge(substance: Substance, class: MaterialClass, measured: &Measured) -> Judgement {
        let books = RuleBooks::built_in().unwrap();
        let (_, rule) = books.screening().unwrap();
        screen(rule, rule.band(substance, class), class, measured)
    }

    fn outcome(substance: Substance, class: MaterialClass, value: &str, sigma: &str) -> &'static str {
        judge(substance, class, &measured(CellState::Number, value, Some(sigma))).outcome.code()
    }

    #[test]
    fn a_value_far_below_zero_is_not_below() {
        let lead = |value: &str, sigma: &str| {
            judge(Substance::Pb, MaterialClass::Polymer, &measured(CellState::Number, value, Some(sigma)))
        };
        let far = lead("-5000", "10");
        assert_eq!((far.outcome, far.reason), (Outcome::Undecided, Some(Reason::NegativeBeyondError)));
        // IEC 62321-3-1: 700 - 3 s for lead in polymers; the edge mirrored.
        assert_eq!(lead("-730", "10").outcome, Outcome::Undecided);
        assert_eq!(lead("-729.999999", "10").outcome, Outcome::Below);
        assert_eq!(lead("-15", "3").outcome, Outcome::Below);
    }

    /// Boundary cases derived from the table's strictness (IEC 62321-3-1:2013, table of screening limits).
    #[test]
    fn edges_have_the_standards_strictness() {
        use MaterialClass::{Composite, Metal, Polymer};
        use Substance::{Br, Cd, Cr, Hg, Pb};
        for (substance, class, value, sigma, expected) in [
            (Cd, Polymer, "52", "6", "BL"),
            (Cd, Polymer, "52.1", "6", "X"),
            (Cd, Metal, "147.9", "6", "X"),
            (Cd, Metal, "148", "6", "OL"),
            (Pb, Polymer, "640", "20", "BL"),
            (Pb, Polymer, "641", "20", "X"),
            (Pb, Metal, "1359", "20", "X"),
            (Pb, Metal, "1360", "20", "OL"),
            (Hg, Polymer, "640", "20", "BL"),
            (Hg, Polymer, "1360", "20", "OL"),
            (Pb, Composite, "440", "20", "BL"),
            (Pb, Composite, "440.000001", "20", "X"),
            (Pb, Composite, "1560", "20", "OL"),
            (Hg, Composite, "1559.999999", "20", "X"),
            (Cr, Polymer, "640", "20", "BL"),
            (Cr, Polymer, "640.1", "20", "X"),
            (Cr, Metal, "500000", "20", "X"),
            (Cr, Composite, "440", "20", "BL"),
            (Br, Polymer, "240", "20", "BL"),
            (Br, Polymer, "240.1", "20", "X"),
            (Br, Polymer, "90000", "20", "X"),
            (Br, Composite, "190", "20", "BL"),
            (Br, Metal, "90000", "20", "not_applicable"),
            (Cd, Composite, "209.9", "20", "X"),
            (Cd, Composite, "210", "20", "OL"),
            (Pb, Polymer, "-5", "20", "BL"),
        ] {
            assert_eq!(
                outcome(substance, class, value, sigma),
                expected,
                "{substance:?} {class:?} {value} {sigma}"
            );
        }
    }

    #[test]
    fn three_sigma_at_the_low_edge_is_not_capable_unless_over() {
        assert_eq!(outcome(Substance::Pb, MaterialClass::Polymer, "-900", "233.333334"), "not_capable");
        assert_eq!(outcome(Substance::Cd, MaterialClass::Polymer, "0", "23.333334"), "not_capable");
        assert_eq!(outcome(Substance::Cd, MaterialClass::Polymer, "0", "23.333333"), "BL");
        assert_eq!(outcome(Substance::Cd, MaterialClass::Polymer, "200", "23.333333"), "OL");
        assert_eq!(outcome(Substance::Br, MaterialClass::Composite, "0", "83.333334"), "not_capable");
    }

    #[test]
    fn what_is_missing_never_passes() {
        let pb =
            |state, sigma| judge(Substance::Pb, MaterialClass::Polymer, &measured(state, "1", sigma)).outcome;
        assert_eq!(pb(CellState::Number, None), Outcome::NoUncertainty);
        assert_eq!(pb(CellState::Number, Some("0")), Outcome::NoUncertainty);
        assert_eq!(pb(CellState::Blank, Some("1")), Outcome::NotMeasured);
        assert_eq!(pb(CellState::Text, Some("1")), Outcome::NotMeasured);
        assert_eq!(pb(CellState::UnitUnknown, Some("1")), Outcome::NotMeasured);
        assert_eq!(pb(CellState::NoColumn, None), Outcome::NotMeasured);
        assert_eq!(pb(CellState::NotDetected, None), Outcome::DetectionTooHigh);
    }

    #[test]
    fn a_detection_limit_counts_with_its_own_sigma() {
        let below = |substance, class, limit| {
            judge(substance, class, &measured(CellState::BelowDetection, limit, None)).outcome.code()
        };
        assert_eq!(below(Substance::Pb, MaterialClass::Polymer, "350"), "BL");
        assert_eq!(below(Substance::Pb, MaterialClass::Polymer, "350.000001"), "detection_too_high");
        assert_eq!(below(Substance::Cd, MaterialClass::Polymer, "35"), "BL");
        assert_eq!(below(Substance::Cd, MaterialClass::Polymer, "36"), "detection_too_high");
        assert_eq!(below(Substance::Cd, MaterialClass::Composite, "50"), "BL");
        assert_eq!(below(Substance::Cd, MaterialClass::Composite, "50.1"), "detection_too_high");
    }

    #[test]
    fn composite_cadmium_needs_a_stated_limit_to_be_below() {
        let with = |value, limit: Option<&str>| {
            let mut one = measured(CellState::Number, value, Some("3"));
            one.cell.detection_limit = limit.map(mg);
            judge(Substance::Cd, MaterialClass::Composite, &one).outcome.code()
        };
        assert_eq!(with("10", None), "X");
        assert_eq!(with("10", Some("20")), "BL");
        assert_eq!(with("20", Some("20")), "BL");
        assert_eq!(with("20.1", Some("20")), "X");
        assert_eq!(with("10", Some("51")), "X");
    }

    #[test]
    fn above_range_is_over_only_past_the_high_edge() {
        let above = |substance, limit| {
            judge(substance, MaterialClass::Polymer, &measured(CellState::AboveRange, limit, None))
                .outcome
                .code()
        };
        assert_eq!(above(Substance::Pb, "1300"), "OL");
        assert_eq!(above(Substance::Pb, "1299"), "X");
        assert_eq!(above(Substance::Br, "100000"), "X");
    }

    #[test]
    fn a_layer_is_never_below_or_over() {
        for substance in Substance::ALL {
            for (state, value) in [
                (CellState::Number, "0"),
                (CellState::Number, "900000"),
                (CellState::BelowDetection, "1"),
                (CellState::AboveRange, "5000"),
                (CellState::NotDetected, "0"),
            ] {
                let judged = judge(substance, MaterialClass::Plated, &measured(state, value, Some("1")));
                assert_eq!(judged.outcome, Outcome::Undecided);
                assert_eq!(judged.reason, Some(Reason::LayerNotResolved));
            }
            let blank = judge(substance, MaterialClass::Plated, &measured(CellState::Blank, "0", None));
            assert_eq!(blank.outcome, Outcome::NotMeasured);
        }
    }

    #[test]
    fn a_thin_piece_keeps_only_the_below_that_survives() {
        let mut one = measured(CellState::Number, "10", Some("3"));
        one.thickness_share = Some(300_000);
        assert_eq!(judge(Substance::Cd, MaterialClass::Polymer, &one).outcome, Outcome::Below);
        one.thickness_share = Some(250_000);
        let judged = judge(Substance::Cd, MaterialClass::Polymer, &one);
        assert_eq!((judged.outcome, judged.reason), (Outcome::Undecided, Some(Reason::ThinSample)));
    }
}
