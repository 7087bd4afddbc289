//! Upper bounds that an element sets on a compound that holds it. Never a result.
//!
//! XRF sees elements. What it says of a compound is only how much of it there can be *at most*, if all of the element
//! were in it; every text says "at most". All bounds are fixed point and rounded up.
//!
//! # Source
//! Atomic weights: IUPAC abridged standard atomic weights (the list of `oxide`, with carbon and hydrogen here); three
//! independent libraries of element data agree within 0.02. Formulas: chemistry.

use crate::oxide;
use crate::quantity::{Coverage, LARGEST_UNITS, MassFraction, Sigma};
use crate::substance::Element;

/// Standard atomic weights in ten-thousandths.
const CARBON: i64 = 120_110;
const HYDROGEN: i64 = 10_080;
const OXYGEN: u8 = 8;

/// The sum of tetra-, penta-, hexa-, hepta- and decabromodiphenyl ether that a mixture or article may hold by the POPs
/// regulation, from 17 November 2025.
///
/// # Source
/// Regulation (EU) 2019/1021, Annex I, as amended by Delegated Regulation (EU) 2025/1482: 10 mg/kg; for recovered
/// material 350 mg/kg, then 200 mg/kg from 30 December 2027 (restated by secondary sources).
pub const POPS_PBDE: MassFraction = MassFraction::from_mg_per_kg(10);

/// A family of brominated flame retardants that the directive (2011/65/EU) restricts, by how many bromines a molecule has.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Family {
    /// Polybrominated biphenyls.
    Pbb,
    /// Polybrominated diphenyl ethers.
    Pbde,
}

/// A compound of carbon, hydrogen and oxygen with one element that XRF sees.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Compound {
    carbons: u8,
    hydrogens: u8,
    oxygens: u8,
    element: Element,
    atoms: u8,
}

impl Compound {
    /// A congener of a family: 1 to 10 bromines on twelve carbons.
    pub const fn brominated(family: Family, bromines: u8) -> Option<Compound> {
        if bromines < 1 || bromines > 10 {
            return None;
        }
        let oxygens = match family {
            Family::Pbb => 0,
            Family::Pbde => 1,
        };
        Some(Compound {
            carbons: 12,
            hydrogens: 10 - bromines,
            oxygens,
            element: Element::BR,
            atoms: bromines,
        })
    }

    /// Tetrabromobisphenol A: not restricted by the directive, and common in printed boards.
    pub const TBBPA: Compound =
        Compound { carbons: 15, hydrogens: 12, oxygens: 2, element: Element::BR, atoms: 4 };
    /// Hexabromocyclododecane.
    pub const HBCDD: Compound =
        Compound { carbons: 12, hydrogens: 18, oxygens: 0, element: Element::BR, atoms: 6 };
    /// Decabromodiphenyl ethane: not restricted by the directive, and the usual heir of its ether.
    pub const DBDPE: Compound =
        Compound { carbons: 14, hydrogens: 4, oxygens: 0, element: Element::BR, atoms: 10 };
    /// Polyvinyl chloride, by its unit.
    pub const PVC: Compound =
        Compound { carbons: 2, hydrogens: 3, oxygens: 0, element: Element::CL, atoms: 1 };

    /// The element XRF sees.
    pub const fn element(self) -> Element {
        self.element
    }

    /// Mass of the element in a molecule and mass of the molecule, in ten-thousandths of the unit of atomic mass.
    ///
    /// An element without a weight in the list would weigh nothing, and then bounds nothing.
    pub fn masses(self) -> (i64, i64) {
        let weight = |element| oxide::atomic_weight(element).unwrap_or(0);
        let element = weight(self.element) * i64::from(self.atoms);
        let oxygen = Element::from_atomic_number(OXYGEN).map_or(0, weight);
        let rest = CARBON * i64::from(self.carbons)
            + HYDROGEN * i64::from(self.hydrogens)
            + oxygen * i64::from(self.oxygens);
        (element, element + rest)
    }

    /// The most of this compound that this much of the element allows, rounded up; never less than zero.
    pub fn at_most(self, element: MassFraction) -> MassFraction {
        let (part, whole) = self.masses();
        scaled_up(element, whole, part)
    }

    /// How much of the element this much of the compound holds, rounded up.
    pub fn element_in(self, compound: MassFraction) -> MassFraction {
        let (part, whole) = self.masses();
        scaled_up(compound, part, whole)
    }
}

/// `x times / over`, rounded up, from zero to the largest mass fraction; without a divisor nothing is bounded.
fn scaled_up(x: MassFraction, times: i64, over: i64) -> MassFraction {
    if over <= 0 {
        return MassFraction::from_units(LARGEST_UNITS);
    }
    let product = i128::from(x.units().max(0)) * i128::from(times);
    let over = i128::from(over);
    let rounded = (product + over - 1) / over;
    MassFraction::from_units(i64::try_from(rounded).map_or(LARGEST_UNITS, |units| units.min(LARGEST_UNITS)))
}

/// The most there can be of an element by a reading, x + k s, rounded up.
pub fn upper_end(x: MassFraction, sigma: Sigma, k: Coverage) -> MassFraction {
    // The sigma is rounded to the nearest millionth of mg/kg: one more is above it.
    let sigma = sigma.to_mass_fraction().units().saturating_add(1);
    let more = libm::ceil(k.to_f64() * 10.0) as i128 * i128::from(sigma);
    let more = i64::try_from((more + 9) / 10).unwrap_or(LARGEST_UNITS);
    MassFraction::from_units(x.units().saturating_add(more).min(LARGEST_UNITS))
}

/// The most PBDE or PBB of any kind that this much bromine allows: the congener with one bromine, 3.1176 times the
/// bromine for PBDE. A mixture of congeners holds less.
pub fn most_brominated(family: Family, bromine: MassFraction) -> MassFraction {
    Compound::brominated(family, 1)
        .map_or(MassFraction::from_units(LARGEST_UNITS), |mono| mono.at_most(bromine))
}

/// The usual example: if all of the bromine were the congener with ten, 1.2004 times the bromine for PBDE.
pub fn as_deca(family: Family, bromine: MassFraction) -> MassFraction {
    Compound::brominated(family, 10)
        .map_or(MassFraction::from_units(LARGEST_UNITS), |deca| deca.at_most(bromine))
}

/// The most Cr(VI) there can be: all of the chromium.
pub fn most_hexavalent(chromium: MassFraction) -> MassFraction {
    MassFraction::from_units(chromium.units().max(0))
}

/// True where so little bromine was found that not even the lightest congener could reach the POPs limit.
///
/// A "below" of the screening band (300 mg/kg) is far from that: the limit needs bromine up to 3.2 mg/kg.
pub fn clears_pops(bromine_at_most: MassFraction) -> bool {
    most_brominated(Family::Pbde, bromine_at_most) <= POPS_PBDE
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mg(whole: i64) -> MassFraction {
        MassFraction::from_mg_per_kg(whole)
    }

    fn rounded(value: MassFraction) -> i64 {
        (value.units() + 500_000) / 1_000_000
    }

    /// Bromine in 1000 mg/kg of each congener, 1 to 10 (facts beside the rule data: derived from abridged weights).
    #[test]
    fn each_congener_holds_its_share_of_bromine() {
        for (family, expected) in [
            (Family::Pbde, [321, 487, 589, 658, 708, 745, 774, 798, 817, 833]),
            (Family::Pbb, [343, 512, 613, 680, 728, 764, 792, 814, 832, 847]),
        ] {
            for (bromines, expected) in (1u8..=10).zip(expected) {
                let congener = Compound::brominated(family, bromines).unwrap();
                assert_eq!(rounded(congener.element_in(mg(1000))), expected, "{family:?} {bromines}");
                assert_eq!(congener.element(), Element::BR);
            }
        }
        assert_eq!(Compound::brominated(Family::Pbb, 0), None);
        assert_eq!(Compound::brominated(Family::Pbde, 11), None);
    }

    #[test]
    fn the_worst_case_is_one_bromine_and_the_example_ten() {
        // 249.107 / 79.904 = 3.117_578... and 959.171 / 799.04 = 1.200_404...
        assert_eq!(most_brominated(Family::Pbde, mg(1000)).units(), 3_117_578_595);
        assert_eq!(as_deca(Family::Pbde, mg(1000)).units(), 1_200_404_236);
        assert_eq!(most_brominated(Family::Pbb, mg(1000)).units(), 2_917_350_821);
        assert_eq!(as_deca(Family::Pbb, mg(1000)).units(), 1_180_381_458);
        // 300 mg/kg of bromine: at most 935 mg/kg of any PBDE, 360 as decaBDE.
        assert_eq!(rounded(most_brominated(Family::Pbde, mg(300))), 935);
        assert_eq!(rounded(as_deca(Family::Pbde, mg(300))), 360);
        for bromines in 2..=10 {
            let other = Compound::brominated(Family::Pbde, bromines).unwrap();
            assert!(other.at_most(mg(300)) < most_brominated(Family::Pbde, mg(300)));
        }
    }

    #[test]
    fn bounds_are_rounded_up_and_not_below_zero() {
        let mono = Compound::brominated(Family::Pbde, 1).unwrap();
        assert_eq!(mono.at_most(MassFraction::from_units(1)).units(), 4);
        assert_eq!(mono.at_most(MassFraction::ZERO), MassFraction::ZERO);
        assert_eq!(mono.at_most(mg(-7)), MassFraction::ZERO);
        assert_eq!(mono.at_most(MassFraction::from_units(LARGEST_UNITS)).units(), LARGEST_UNITS);
        assert_eq!(scaled_up(mg(1), 1, 0).units(), LARGEST_UNITS, "an unknown weight bounds nothing");
        assert_eq!(scaled_up(MassFraction::from_units(6), 1, 3).units(), 2);
        assert_eq!(scaled_up(MassFraction::from_units(7), 1, 3).units(), 3);
        assert_eq!(scaled_up(MassFraction::from_units(i64::MAX), i64::MAX, 1).units(), LARGEST_UNITS);
    }

    #[test]
    fn other_carriers_have_their_shares() {
        // Shares 0.5877, 0.7471, 0.8227 of bromine and 0.5672 of chlorine.
        for (compound, element, expected) in [
            (Compound::TBBPA, Element::BR, 5877),
            (Compound::HBCDD, Element::BR, 7471),
            (Compound::DBDPE, Element::BR, 8227),
            (Compound::PVC, Element::CL, 5672),
        ] {
            assert_eq!(rounded(compound.element_in(mg(10_000))), expected);
            assert_eq!(compound.element(), element);
        }
        // 320 000 mg/kg of chlorine are at most 56.4 % of polyvinyl chloride.
        assert_eq!(rounded(Compound::PVC.at_most(mg(320_000))), 564_139);
    }

    #[test]
    fn the_upper_end_is_never_below_x_plus_k_s() {
        let sigma = Sigma::from_one_sigma(mg(10)).unwrap();
        assert_eq!(upper_end(mg(100), sigma, Coverage::THREE).units(), 130_000_003);
        let half = Coverage::from_tenths(25).unwrap();
        // 2.5 x 10.000001 = 25.0000025, rounded up.
        assert_eq!(upper_end(mg(100), sigma, half).units(), 125_000_003);
        assert_eq!(upper_end(mg(-100), sigma, Coverage::THREE).units(), -69_999_997);
        assert_eq!(
            upper_end(MassFraction::from_units(LARGEST_UNITS), sigma, half).units(),
            LARGEST_UNITS,
            "bounded"
        );
    }

    #[test]
    fn all_of_the_chromium_may_be_hexavalent() {
        assert_eq!(most_hexavalent(mg(640)), mg(640));
        assert_eq!(most_hexavalent(mg(-3)), MassFraction::ZERO);
    }

    /// Regulation (EU) 2019/1021 as amended by (EU) 2025/1482: 10 mg/kg. 10 / 3.117578 = 3.2076.
    #[test]
    fn a_below_of_the_screening_band_does_not_clear_the_pops_limit() {
        assert!(!clears_pops(mg(300)));
        assert!(!clears_pops(mg(4)));
        assert!(clears_pops(MassFraction::from_units(3_207_617)));
        assert!(!clears_pops(MassFraction::from_units(3_207_619)));
        assert!(clears_pops(MassFraction::ZERO));
    }
}
