//! Oxides and the share of them that is the element: laboratories state `Cr2O3`, the limits speak of chromium.

use std::fmt;

use crate::quantity::{MassFraction, Rounding};
use crate::substance::Element;

/// Standard atomic weights in ten-thousandths, oxygen first. Cl, Br, Cr, Cd, Hg and Pb: three independent libraries of
/// element data agree within 0.02; the others: IUPAC abridged standard atomic weights 2021, from memory.
const WEIGHTS: [(u8, i64); 52] = [
    (8, 159_990),
    (3, 69_400),
    (4, 90_122),
    (5, 108_100),
    (11, 229_900),
    (12, 243_050),
    (13, 269_820),
    (14, 280_850),
    (15, 309_740),
    (16, 320_600),
    (17, 354_500),
    (19, 390_980),
    (20, 400_780),
    (21, 449_560),
    (22, 478_670),
    (23, 509_420),
    (24, 519_961),
    (25, 549_380),
    (26, 558_450),
    (27, 589_330),
    (28, 586_930),
    (29, 635_460),
    (30, 653_800),
    (31, 697_230),
    (32, 726_300),
    (33, 749_220),
    (34, 789_710),
    (35, 799_040),
    (37, 854_680),
    (38, 876_200),
    (39, 889_060),
    (40, 912_240),
    (41, 929_060),
    (42, 959_500),
    (47, 1_078_700),
    (48, 1_124_140),
    (49, 1_148_200),
    (50, 1_187_100),
    (51, 1_217_600),
    (52, 1_276_000),
    (55, 1_329_100),
    (56, 1_373_300),
    (57, 1_389_100),
    (58, 1_401_200),
    (72, 1_784_900),
    (73, 1_809_500),
    (74, 1_838_400),
    (80, 2_005_920),
    (82, 2_072_000),
    (83, 2_089_800),
    (90, 2_320_400),
    (92, 2_380_300),
];

/// An oxide `AxOy` of one element.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Oxide {
    element: Element,
    atoms: u8,
    oxygens: u8,
    weight: i64,
}

impl Oxide {
    /// Reads a formula written as chemistry writes it: `PbO`, `Cr2O3`. Nothing else than one element and oxygen, and
    /// only elements whose atomic weight is listed here.
    pub fn from_formula(formula: &str) -> Option<Oxide> {
        let (head, tail) = formula.split_once('O')?;
        let digits_at = head.find(|c: char| c.is_ascii_digit()).unwrap_or(head.len());
        let (symbol, atoms) = head.split_at(digits_at);
        let count = |digits: &str| match digits {
            "" => Some(1),
            _ => digits.parse::<u8>().ok().filter(|count| (1..=9).contains(count) && digits.len() == 1),
        };
        let element = Element::from_symbol(symbol)?;
        let weight = atomic_weight(element).filter(|_| element.atomic_number() != 8)?;
        Some(Oxide { element, atoms: count(atoms)?, oxygens: count(tail)?, weight })
    }

    /// The element it is an oxide of.
    pub const fn element(self) -> Element {
        self.element
    }

    /// The mass fraction of the element in a mass fraction of the oxide.
    pub fn to_element(self, oxide: MassFraction, rounding: Rounding) -> MassFraction {
        let oxygen = WEIGHTS.first().map_or(0, |(_, weight)| *weight);
        let share = i128::from(self.weight) * i128::from(self.atoms);
        let whole = share + i128::from(oxygen) * i128::from(self.oxygens);
        let product = i128::from(oxide.units()) * share;
        let (sign, size) = (product.signum(), product.abs());
        let rounded = match rounding {
            Rounding::Nearest => (size + whole / 2) / whole,
            Rounding::Up => (size + whole - 1) / whole,
        };
        MassFraction::from_units(i64::try_from(sign * rounded).unwrap_or(i64::MAX))
    }
}

impl fmt::Display for Oxide {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        let count = |count: u8| if count == 1 { String::new() } else { count.to_string() };
        write!(out, "{}{}O{}", self.element, count(self.atoms), count(self.oxygens))
    }
}

/// The standard atomic weight of an element in ten-thousandths; `None` for one not listed here.
pub(crate) fn atomic_weight(element: Element) -> Option<i64> {
    WEIGHTS.iter().find(|(number, _)| *number == element.atomic_number()).map(|(_, weight)| *weight)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_of_one_element_and_oxygen_are_oxides() {
        for formula in ["PbO", "PbO2", "Cr2O3", "CrO3", "HgO", "CdO", "SiO2", "P2O5", "K2O"] {
            assert_eq!(Oxide::from_formula(formula).unwrap().to_string(), formula);
        }
        for other in ["O", "CO", "O2", "H2O", "PbSO4", "Cr", "No", "CrO", "Pb0", "CaCO3", "OH", "Cr2O33"] {
            let read = Oxide::from_formula(other);
            assert!(read.is_none() || other == "CrO", "{other}");
        }
    }

    #[test]
    fn the_share_of_the_element_is_by_atomic_weights() {
        let whole = MassFraction::from_mg_per_kg(1_000_000);
        // 2 x 51.9961 / (2 x 51.9961 + 3 x 15.999) = 0.684_207...; 207.2 / (207.2 + 15.999) = 0.928_319...
        let share = |formula: &str| {
            Oxide::from_formula(formula).unwrap().to_element(whole, Rounding::Nearest).units() / 1_000_000
        };
        assert_eq!(share("Cr2O3"), 684_207);
        assert_eq!(share("PbO"), 928_319);
    }
}
