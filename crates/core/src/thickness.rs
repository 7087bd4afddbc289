//! How much of the signal of a thick piece a thin one gives, and what a layer of known thickness shows.
//!
//! The analyser reads a piece as if it were thick. A thin one gives a share of that, so a "below" must also hold for
//! the value over the share; a share never lifts anything to "over" and never corrects a printed value.
//!
//! # Source
//! Shares: `attenuation`. At least 5 mm of plastic or light alloy (Al, Mg, Ti), 1 mm of other alloys: IEC 62321-3-1,
//! from memory. The thresholds below are ours.

use crate::attenuation::{Attenuation, Line, MassAttenuation, Matrix, Named};
use crate::quantity::{self, Coverage, MassFraction, Sigma};
use crate::substance::Element;

/// Chlorine is a major element of a plastic from a tenth of its mass (our own choice).
const MAJOR_CHLORINE: MassFraction = MassFraction::from_mg_per_kg(100_000);

/// More chlorine than polyvinyl chloride can hold is not believed (its share by atomic weights, 0.5672).
const MOST_CHLORINE: f64 = 0.567;

/// An element is the base of a metal from half of its mass (our own choice).
const BASE_OF_METAL: MassFraction = MassFraction::from_mg_per_kg(500_000);

/// A reading under-reads where less than nine tenths of the signal of a thick piece come out (our own choice).
const NEARLY_ALL: u32 = 900_000;

/// Elements that metals are based on, with their matrix.
const BASES: [(u8, &str); 12] = [
    (12, "magnesium"),
    (13, "aluminium"),
    (22, "titanium"),
    (24, "chromium"),
    (26, "iron"),
    (28, "nickel"),
    (29, "copper"),
    (30, "zinc"),
    (47, "silver"),
    (50, "tin"),
    (79, "gold"),
    (82, "lead"),
];

/// Bases that X-rays go deep into: magnesium, aluminium, titanium (from memory, with the 5 mm above).
const LIGHT_BASES: usize = 3;

/// What a metal is made of, as far as the depth of its signal goes.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Base {
    /// The element.
    pub element: Element,
    /// True for a light one, where a piece must be millimetres thick.
    pub is_light: bool,
    /// Its matrix. What is alloyed to a light base is mostly heavier, so the pure base gives the smaller share.
    pub matrix: Matrix,
}

/// The matrices that thickness is judged in.
#[derive(Clone, Debug)]
pub struct Matrices {
    polyethylene: Option<(MassAttenuation, f64)>,
    chlorine: Option<MassAttenuation>,
    pvc: Option<Matrix>,
    bases: Vec<Base>,
}

impl Matrices {
    /// From the tables the program carries.
    pub fn built_in() -> Matrices {
        let tables = Attenuation::built_in();
        let bases = BASES
            .iter()
            .enumerate()
            .filter_map(|(at, (number, code))| {
                Some(Base {
                    element: Element::from_atomic_number(*number)?,
                    is_light: at < LIGHT_BASES,
                    matrix: tables.named(code)?.matrix(),
                })
            })
            .collect();
        Matrices {
            polyethylene: tables.named("polyethylene").map(|named| (named.mass_attenuation, named.density)),
            chlorine: tables.element(Element::CL),
            pvc: tables.named("pvc").map(Named::matrix),
            bases,
        }
    }

    /// The matrix of a plastic: polyethylene, the most transparent of the common ones, so that the share is never too
    /// high, unless it is known to hold chlorine.
    ///
    /// Chlorine that was measured as a major element is taken as that much chlorine in polyethylene, at polyethylene's
    /// density; a declaration of polyvinyl chloride alone as the pure compound.
    pub fn plastic(&self, declared_pvc: bool, chlorine: Option<MassFraction>) -> Option<Matrix> {
        let (polyethylene, density) = self.polyethylene?;
        match chlorine.filter(|measured| *measured >= MAJOR_CHLORINE) {
            Some(measured) => {
                let share = (measured.to_mg_per_kg() / 1e6).min(MOST_CHLORINE);
                Some(polyethylene.with(self.chlorine?, share).at_density(density))
            }
            None if declared_pvc && chlorine.is_none() => self.pvc,
            None => Some(polyethylene.at_density(density)),
        }
    }

    /// True where metals are based on this element.
    pub fn is_base_of_metal(&self, element: Element) -> bool {
        self.bases.iter().any(|base| base.element == element)
    }

    /// What a metal is based on; `None` where no element of those known makes up half of it.
    pub fn metal(&self, of: impl Fn(Element) -> Option<MassFraction>) -> Option<Base> {
        self.bases
            .iter()
            .find(|base| of(base.element).is_some_and(|measured| measured >= BASE_OF_METAL))
            .copied()
    }
}

/// The share of a thick piece's signal, in millionths, that a piece of this thickness gives for an element; nothing
/// where the element has no line here, so that no "below" is cleared by an unknown depth.
///
/// # Units
/// Thickness in micrometres; the share is rounded down.
pub fn share(matrix: &Matrix, element: Element, micrometres: u32) -> u32 {
    Line::of(element).map_or(0, |line| matrix.share(line, micrometres))
}

/// How many percent of the signal of a thick piece are missing, rounded up; `None` where nearly all is there.
pub fn percent_missing(share: u32) -> Option<u32> {
    (share < NEARLY_ALL).then(|| (1_000_000 - share).div_ceil(10_000))
}

/// A limit as a thin piece of this share would show it, rounded down: `x / share <= low` is `x <= share x low`.
pub fn as_shown(limit: MassFraction, share: u32) -> MassFraction {
    let product = i128::from(limit.units()) * i128::from(share);
    MassFraction::from_units(i64::try_from(product.div_euclid(1_000_000)).unwrap_or(limit.units()))
}

/// A plated item of stated layer: how thick it is and of what. What lies under it must be stated too, because it shows
/// through; nothing is computed from it.
#[derive(Clone, Copy, Debug)]
pub struct Layer<'a> {
    /// Thickness in micrometres.
    pub micrometres: u32,
    /// Matrix of the layer, by its code in `data/matrices.tsv`.
    pub material: &'a str,
    /// Matrix of what lies under it, by its code.
    pub substrate: &'a str,
}

impl Layer<'_> {
    /// The share of a thick layer's signal that this one gives, in millionths; `None` where layer or substrate is no
    /// matrix of the table.
    pub fn share(&self, tables: &Attenuation, element: Element) -> Option<u32> {
        tables.named(self.substrate)?;
        Some(share(&tables.named(self.material)?.matrix(), element, self.micrometres))
    }
}

/// What a reading of a plated item says about the layer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LayerVerdict {
    /// Even if all of the signal came from the layer, the layer is below: `(x + k s) / share <= low`.
    Below,
    /// Neither.
    Undecided,
    /// `x - k s >= high`: so much is in the layer or under it, and the beam can't say which. Still undecided: what the
    /// substrate holds, and how the analyser added the two up, isn't known from one spot.
    InLayerOrSubstrate,
}

/// What was read on a plated item, and the rule it is held against.
#[derive(Clone, Copy, Debug)]
pub struct LayerReading {
    /// The value in mg/kg, as the analyser read the item as one material.
    pub x: MassFraction,
    /// One sigma.
    pub sigma: Sigma,
    /// The rule's factor of sigma.
    pub k: Coverage,
    /// The band's low edge.
    pub low: MassFraction,
    /// The band's high edge, where it has one.
    pub high: Option<MassFraction>,
    /// `x + k s = low` counts as below.
    pub equal_is_below: bool,
    /// `x - k s = high` counts as over.
    pub equal_is_over: bool,
}

/// Judges a layer whose share of signal is known.
///
/// # Decision
/// BL if `(x + k s) / share <= low`. Never OL: a high reading is undecided with its own reason, since the metal under a
/// layer shows through it (lead of a brass under tin).
pub fn judge_layer(reading: &LayerReading, share: u32) -> LayerVerdict {
    let LayerReading { x, sigma, k, low, high, equal_is_below, equal_is_over } = *reading;
    if share > 0 && quantity::upper_end_within(x, k, sigma, as_shown(low, share), equal_is_below) {
        return LayerVerdict::Below;
    }
    match high {
        Some(high) if quantity::lower_end_beyond(x, k, sigma, high, equal_is_over) => {
            LayerVerdict::InLayerOrSubstrate
        }
        _ => LayerVerdict::Undecided,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(whole: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(whole)
    }

    fn plastic(declared_pvc: bool, chlorine: Option<i64>) -> Matrix {
        Matrices::built_in().plastic(declared_pvc, chlorine.map(mg)).unwrap()
    }

    fn named(code: &str) -> Matrix {
        Attenuation::built_in().named(code).unwrap().matrix()
    }

    #[test]
    fn an_unknown_plastic_is_polyethylene() {
        for (declared, chlorine) in
            [(false, None), (false, Some(0)), (false, Some(99_999)), (true, Some(0)), (true, Some(99_999))]
        {
            assert_eq!(plastic(declared, chlorine), named("polyethylene"), "{declared} {chlorine:?}");
        }
        assert_eq!(plastic(true, None), named("pvc"));
    }

    /// Polyethylene gives the smallest share of all matrices, so not knowing is never the better case.
    #[test]
    fn polyethylene_is_the_most_transparent_matrix_of_the_table() {
        let polyethylene = named("polyethylene");
        for other in Attenuation::built_in().all() {
            for line in Line::ALL {
                assert!(polyethylene.share(line, 500) <= other.matrix().share(line, 500), "{}", other.code);
            }
        }
    }

    #[test]
    fn measured_chlorine_makes_a_plastic_less_transparent_and_no_more_than_pvc() {
        let at = |chlorine| share(&plastic(false, Some(chlorine)), Element::CD, 2_000);
        assert!(share(&plastic(false, None), Element::CD, 2_000) < at(100_000));
        assert!(at(100_000) < at(300_000) && at(300_000) < at(567_000));
        assert_eq!(at(567_000), at(900_000), "more than a plastic can hold");
        // Pure: the same as the compound, but for the density (0.94 against 1.40 g/cm3).
        let pvc = named("pvc").t99_micrometres(Line::Cd) * 1.40 / 0.94;
        let mixed = plastic(false, Some(567_236)).t99_micrometres(Line::Cd);
        assert!((mixed / pvc - 1.0).abs() < 0.01, "{mixed} {pvc}");
    }

    #[test]
    fn a_metal_has_the_base_that_makes_up_half_of_it() {
        let matrices = Matrices::built_in();
        let base = |symbol: &'static str, measured: i64| {
            matrices.metal(|asked| (asked.symbol() == symbol).then(|| mg(measured)))
        };
        for (symbol, code, light) in [
            ("Mg", "magnesium", true),
            ("Al", "aluminium", true),
            ("Ti", "titanium", true),
            ("Cr", "chromium", false),
            ("Fe", "iron", false),
            ("Ni", "nickel", false),
            ("Cu", "copper", false),
            ("Zn", "zinc", false),
            ("Ag", "silver", false),
            ("Sn", "tin", false),
            ("Au", "gold", false),
            ("Pb", "lead", false),
        ] {
            let found = base(symbol, 500_000).unwrap();
            assert_eq!((found.element.symbol(), found.is_light), (symbol, light));
            assert_eq!(found.matrix, named(code));
            assert_eq!(base(symbol, 499_999), None);
        }
        assert_eq!(matrices.metal(|_| None), None);
        assert!(matrices.is_base_of_metal(Element::PB) && !matrices.is_base_of_metal(Element::CD));
        // Half a millimetre of aluminium is thick for lead and thin for cadmium.
        let aluminium = base("Al", 950_000).unwrap().matrix;
        assert!(share(&aluminium, Element::PB, 500) > 990_000);
        assert!(share(&aluminium, Element::CD, 500) < 450_000);
    }

    #[test]
    fn five_millimetres_are_thin_for_cadmium() {
        let polyethylene = plastic(false, None);
        assert_eq!(share(&polyethylene, Element::CD, 5_000) / 10_000, 32);
        assert_eq!(share(&polyethylene, Element::PB, 5_000) / 10_000, 78);
        assert_eq!(share(&polyethylene, Element::CD, 0), 0);
        assert_eq!(share(&polyethylene, Element::from_symbol("Sb").unwrap(), 5_000), 0, "no line, no share");
    }

    #[test]
    fn what_is_missing_is_told_from_a_tenth_on() {
        assert_eq!(percent_missing(1_000_000), None);
        assert_eq!(percent_missing(900_000), None);
        assert_eq!(percent_missing(899_999), Some(11), "rounded up");
        assert_eq!(percent_missing(360_000), Some(64));
        assert_eq!(percent_missing(0), Some(100));
    }

    #[test]
    fn a_limit_is_shown_smaller_and_rounded_down() {
        assert_eq!(as_shown(mg(700), 500_000), mg(350));
        assert_eq!(as_shown(MassFraction::from_units(3), 500_000).units(), 1);
        assert_eq!(as_shown(mg(70), 1_000_000), mg(70));
        assert_eq!(as_shown(mg(70), 0), MassFraction::ZERO);
    }

    fn tin(micrometres: u32) -> u32 {
        let tables = Attenuation::built_in();
        let layer = Layer { micrometres, material: "tin", substrate: "copper" };
        assert_eq!(Layer { material: "paint", ..layer }.share(&tables, Element::PB), None);
        assert_eq!(Layer { substrate: "paint", ..layer }.share(&tables, Element::PB), None);
        layer.share(&tables, Element::PB).unwrap()
    }

    fn lead(x: i64, s: i64) -> LayerReading {
        LayerReading {
            x: mg(x),
            sigma: Sigma::from_one_sigma(mg(s)).unwrap(),
            k: Coverage::THREE,
            low: mg(700),
            high: Some(mg(1300)),
            equal_is_below: true,
            equal_is_over: true,
        }
    }

    /// Facts: 1500 mg/kg of lead in 5 um of tin reads about 800 if the analyser takes it for thick tin.
    #[test]
    fn lead_in_thin_tin_reads_half() {
        let read = as_shown(mg(1500), tin(5)).to_mg_per_kg();
        assert!((780.0..=820.0).contains(&read), "{read}");
        let reading = LayerReading { x: MassFraction::from_mg_per_kg(800), ..lead(0, 10) };
        assert_eq!(judge_layer(&reading, tin(5)), LayerVerdict::Undecided, "and is not cleared");
    }

    #[test]
    fn a_layer_is_below_only_where_the_value_over_its_share_is() {
        // Half the signal: 700 shows as 350.
        assert_eq!(judge_layer(&lead(320, 10), 500_000), LayerVerdict::Below);
        assert_eq!(judge_layer(&lead(321, 10), 500_000), LayerVerdict::Undecided);
        let strict = LayerReading { equal_is_below: false, ..lead(320, 10) };
        assert_eq!(judge_layer(&strict, 500_000), LayerVerdict::Undecided);
        assert_eq!(judge_layer(&lead(-100, 10), 0), LayerVerdict::Undecided, "no signal clears nothing");
        assert_eq!(judge_layer(&lead(-100, 10), 1), LayerVerdict::Below);
    }

    #[test]
    fn a_high_reading_of_a_plated_item_is_never_over() {
        assert_eq!(judge_layer(&lead(1330, 10), 900_000), LayerVerdict::InLayerOrSubstrate);
        assert_eq!(judge_layer(&lead(1329, 10), 900_000), LayerVerdict::Undecided);
        let strict = LayerReading { equal_is_over: false, ..lead(1330, 10) };
        assert_eq!(judge_layer(&strict, 900_000), LayerVerdict::Undecided);
        let open = LayerReading { high: None, ..lead(9000, 10) };
        assert_eq!(judge_layer(&open, 900_000), LayerVerdict::Undecided);
    }
}
