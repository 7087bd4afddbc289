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
    /// Without what lies on a line that only some analysers measure, unless it could change the outcome there: iron
    /// would else be named beside the lead of every steel.
    fn without_idle(&self, shown: Shown, doubted_by: impl Fn(Shown) -> bool) -> Shown {
        let rows = self.overlaps.rows().iter().enumerate();
        let others = rows.filter(|(at, row)| shown.has(*at) && !row.may_decide());
        others.fold(shown, |shown, (at, row)| {
            let apparent = row.apparent((self.partner)(at, row).unwrap_or(MassFraction::ZERO));
            let alone = Shown::alone(at, apparent);
            if doubted_by(alone) { shown } else { shown.without(alone) }
        })
    }

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
        let doubted_by = |shown: Shown| match (judged.outcome, edges.high) {
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
        let strong = doubted_by(shown);
        let shown = self.without_idle(shown, doubted_by);
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

#[cfg(test)]
mod tests {
    use super::*;
    use crate::outcome::{SigmaFrom, UsedSigma};
    use crate::quantity::Sigma;
    use crate::reading::Cell;
    use crate::rules::RuleBooks;
    use crate::screen;

    fn mg(whole: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(whole)
    }

    fn cell(state: CellState, value: i64, s: i64, limit: Option<i64>) -> Measured {
        let sigma = (s > 0).then(|| Sigma::from_one_sigma(mg(s)).unwrap());
        let cell = Cell { state, value: mg(value), printed_error: None, detection_limit: limit.map(mg) };
        Measured { cell, used: UsedSigma { sigma, from: SigmaFrom::Printed }, thickness_share: None }
    }

    fn number(value: i64, s: i64) -> Measured {
        cell(CellState::Number, value, s, None)
    }

    /// Cautions on a substance of a reading with so much of one partner.
    fn of(
        substance: Substance,
        class: MaterialClass,
        measured: &Measured,
        partner: &str,
        present: i64,
    ) -> (Outcome, Cautions) {
        let overlaps = Overlaps::built_in();
        let books = RuleBooks::built_in().unwrap();
        let (_, rule) = books.screening().unwrap();
        let judged = screen::screen(rule, rule.band(substance, class), class, measured);
        let partner = |_: usize, row: &Overlap| (row.partner.symbol() == partner).then(|| mg(present));
        let surroundings = Surroundings { overlaps: &overlaps, partner, tube: None };
        (judged.outcome, surroundings.of_substance(rule, substance, class, measured, &judged))
    }

    fn halogens(chlorine: &Measured, bromine: &Measured, present: i64) -> ([Outcome; 3], [Cautions; 3]) {
        let overlaps = Overlaps::built_in();
        let books = RuleBooks::built_in().unwrap();
        let (_, rule) = books.halogens().unwrap();
        let partner = |_: usize, row: &Overlap| (row.partner.symbol() == "Hg").then(|| mg(present));
        let surroundings = Surroundings { overlaps: &overlaps, partner, tube: None };
        let class = MaterialClass::Polymer;
        let judge = |of, element, measured: &Measured| {
            let judged = crate::halogen::judge_element(rule, of, class, measured);
            (judged.outcome, surroundings.of_halogen(rule, of, element, measured, &judged))
        };
        let (first, second) =
            (judge(Halogen::Cl, Element::CL, chlorine), judge(Halogen::Br, Element::BR, bromine));
        let total = crate::halogen::judge_total(rule, class, chlorine, bromine);
        let cautions = surroundings.of_total(rule, &total, [first.1, second.1]);
        ([first.0, second.0, total.judgement.outcome], [first.1, second.1, cautions])
    }

    #[test]
    fn what_was_not_measured_has_no_cautions() {
        let blank = cell(CellState::Blank, 0, 0, None);
        let (outcome, cautions) = of(Substance::Pb, MaterialClass::Metal, &blank, "As", 10_000);
        assert_eq!((outcome, cautions), (Outcome::NotMeasured, Cautions::default()));
        let (outcome, cautions) = of(Substance::Br, MaterialClass::Metal, &number(10, 1), "Hg", 10_000);
        assert_eq!((outcome, cautions), (Outcome::NotApplicable, Cautions::default()));
        assert!(cautions.is_empty());
    }

    #[test]
    fn a_below_is_in_doubt_by_its_residual_and_an_x_never() {
        let lead = |x| of(Substance::Pb, MaterialClass::Metal, &number(x, 30), "As", 1000);
        let (outcome, cautions) = lead(430);
        assert_eq!((outcome, cautions.strong, cautions.is_empty()), (Outcome::Below, false, false));
        assert_eq!((lead(431).0, lead(431).1.strong), (Outcome::Below, true));
        assert_eq!((lead(900).0, lead(900).1.strong), (Outcome::Undecided, false));
        assert_eq!(lead(900).1.shown.together, mg(1800));
    }

    #[test]
    fn what_was_not_detected_is_doubted_by_its_limit() {
        let below = |limit| cell(CellState::BelowDetection, limit, 0, None);
        let (outcome, cautions) = of(Substance::Pb, MaterialClass::Metal, &below(260), "As", 1000);
        assert_eq!((outcome, cautions.strong), (Outcome::Below, false));
        assert!(of(Substance::Pb, MaterialClass::Metal, &below(261), "As", 1000).1.strong);
        // Not detected with a limit beside it: the limit counts, not the empty value.
        let beside = |limit| cell(CellState::NotDetected, 0, 0, Some(limit));
        assert!(!of(Substance::Pb, MaterialClass::Metal, &beside(260), "As", 1000).1.strong);
        assert!(of(Substance::Pb, MaterialClass::Metal, &beside(261), "As", 1000).1.strong);
    }

    #[test]
    fn an_over_is_in_doubt_where_it_would_not_stand_alone() {
        // 3190 - 1800 - 90 = 1300.
        let lead = |x| of(Substance::Pb, MaterialClass::Metal, &number(x, 30), "As", 1000);
        assert_eq!((lead(3190).0, lead(3190).1.strong), (Outcome::Over, false));
        assert_eq!((lead(3189).0, lead(3189).1.strong), (Outcome::Over, true));
        // Above a stated upper end there is no sigma: the end alone is compared.
        let above = |upper| cell(CellState::AboveRange, upper, 0, None);
        assert_eq!(of(Substance::Pb, MaterialClass::Metal, &above(3100), "As", 1000).0, Outcome::Over);
        assert!(!of(Substance::Pb, MaterialClass::Metal, &above(3100), "As", 1000).1.strong);
        assert!(of(Substance::Pb, MaterialClass::Metal, &above(3099), "As", 1000).1.strong);
    }

    #[test]
    fn cadmium_in_a_composite_is_compared_with_the_largest_limit_that_clears() {
        // 26 000 mg/kg of lead look like 5.2 mg/kg of cadmium, a tenth of which may be left: 0.52.
        let cadmium = |x| cell(CellState::Number, x, 5, Some(50));
        let (outcome, cautions) = of(Substance::Cd, MaterialClass::Composite, &cadmium(49), "Pb", 26_000);
        assert_eq!((outcome, cautions.strong, cautions.is_empty()), (Outcome::Below, false, false));
        let (outcome, cautions) = of(Substance::Cd, MaterialClass::Composite, &cadmium(50), "Pb", 26_000);
        assert_eq!((outcome, cautions.strong), (Outcome::Below, true));
        // A share of signal does not move a limit that is the reading's own.
        let thin = Measured { thickness_share: Some(500_000), ..cadmium(49) };
        assert!(!of(Substance::Cd, MaterialClass::Composite, &thin, "Pb", 26_000).1.strong);
    }

    #[test]
    fn a_thin_piece_leaves_less_room_and_says_what_is_missing() {
        // Half the signal: the edge of 700 shows as 350. 150 + 60 + 111 = 321; 180 + 60 + 111 = 351.
        let thin = |x, share| Measured { thickness_share: Some(share), ..number(x, 20) };
        let (outcome, cautions) =
            of(Substance::Cr, MaterialClass::Polymer, &thin(150, 500_000), "Ba", 150_000);
        assert_eq!((outcome, cautions.strong, cautions.percent_missing), (Outcome::Below, false, Some(50)));
        let (outcome, cautions) =
            of(Substance::Cr, MaterialClass::Polymer, &thin(180, 500_000), "Ba", 150_000);
        assert_eq!((outcome, cautions.strong), (Outcome::Below, true));
        let (_, cautions) = of(Substance::Cr, MaterialClass::Polymer, &thin(150, 950_000), "Ba", 0);
        assert_eq!(cautions, Cautions::default(), "nearly all of the signal is there");
        let (_, cautions) = of(Substance::Cr, MaterialClass::Polymer, &thin(150, 500_000), "Ba", 0);
        assert!(!cautions.is_empty(), "a thin piece alone is something to say");
    }

    /// 90 % of iron looks like 108 mg/kg of lead on its L-beta line, a tenth of which may be left.
    #[test]
    fn another_line_is_named_only_where_it_could_change_the_outcome_and_is_never_strong() {
        let lead = |x, s| of(Substance::Pb, MaterialClass::Metal, &number(x, s), "Fe", 900_000);
        assert_eq!(lead(629, 20), (Outcome::Below, Cautions::default()));
        let (outcome, cautions) = lead(630, 20);
        assert_eq!((outcome, cautions.is_empty(), cautions.strong), (Outcome::Below, false, false));
        assert!(lead(900, 20).1.is_empty(), "an X is settled elsewhere anyway");
        assert!(!lead(1400, 20).1.is_empty(), "1400 - 108 - 60 is under 1300");
        assert!(lead(1500, 20).1.is_empty());
    }

    #[test]
    fn a_plated_item_names_its_partners_and_decides_nothing() {
        let (outcome, cautions) = of(Substance::Hg, MaterialClass::Plated, &number(100, 10), "Au", 300_000);
        assert_eq!(outcome, Outcome::Undecided);
        assert_eq!((cautions.shown.together, cautions.strong), (mg(7200), false));
    }

    #[test]
    fn classes_together_say_all_that_any_of_them_says() {
        let lead = |x, partner| of(Substance::Pb, MaterialClass::Metal, &number(x, 30), partner, 10_000).1;
        let (one, other) = (lead(100, "As"), lead(100, "Bi"));
        assert!(one.strong && !other.strong);
        let both = one.or(other);
        assert!(both.strong && other.or(one).strong && !other.or(other).strong);
        assert_eq!(both.shown.together, one.shown.together, "the larger, not the sum");
        let thin = Cautions { percent_missing: Some(40), ..Cautions::default() };
        assert_eq!(both.or(thin).percent_missing, Some(40));
        assert_eq!(both.or(thin).shown, both.shown);
    }

    /// 3500 mg/kg of mercury look like 980 mg/kg of bromine, a tenth of which may be left: 98.
    #[test]
    fn halogens_are_doubted_against_their_limits() {
        let chlorine = number(10, 1);
        let (outcomes, cautions) = halogens(&chlorine, &number(772, 10), 3500);
        assert_eq!(outcomes, [Outcome::Below; 3]);
        assert_eq!(cautions.map(|one| one.strong), [false; 3]);
        assert!(cautions[0].is_empty() && !cautions[1].is_empty() && !cautions[2].is_empty());
        assert_eq!(halogens(&chlorine, &number(773, 10), 3500).1.map(|one| one.strong), [false, true, false]);
        // Over: 1911 - 980 - 30 = 901; "at most 900" is still broken. At 1910 it no longer is.
        let (outcomes, cautions) = halogens(&chlorine, &number(1911, 10), 3500);
        assert_eq!(outcomes[1], Outcome::Over);
        assert!(!cautions[1].strong);
        assert!(halogens(&chlorine, &number(1910, 10), 3500).1[1].strong);
        assert_eq!(
            halogens(&chlorine, &number(1911, 10), 300).1,
            [Cautions::default(); 3],
            "84 is too little"
        );
    }

    #[test]
    fn a_total_is_doubted_by_the_partners_of_both_its_parts() {
        // 700 + 671 + 3 x 10.05 = 1401.1; 98 more are 1499.1.
        let (outcomes, cautions) = halogens(&number(671, 1), &number(700, 10), 3500);
        assert_eq!((outcomes[2], cautions[2].strong), (Outcome::Below, false));
        let (outcomes, cautions) = halogens(&number(672, 1), &number(700, 10), 3500);
        assert_eq!((outcomes[2], cautions[2].strong), (Outcome::Below, true));
        // Over: 1811 + 700 - 980 - 30.2 = 1500.8; one less chlorine is 1499.8.
        let (outcomes, cautions) = halogens(&number(700, 1), &number(1811, 10), 3500);
        assert_eq!((outcomes[2], cautions[2].strong), (Outcome::Over, false));
        let (outcomes, cautions) = halogens(&number(699, 1), &number(1811, 10), 3500);
        assert_eq!((outcomes[2], cautions[2].strong), (Outcome::Over, true));
        // Chlorine was not measured, and bromine alone is over: as doubtful as bromine is.
        let missing = cell(CellState::Blank, 0, 0, None);
        let (outcomes, cautions) = halogens(&missing, &number(1700, 10), 3500);
        assert_eq!((outcomes[2], cautions[2].strong), (Outcome::Over, true));
        let (_, cautions) = halogens(&missing, &number(3000, 10), 3500);
        assert!(!cautions[2].strong);
        assert!(halogens(&missing, &number(100, 10), 3500).1[2].is_empty(), "no total, no caution");
    }
}
