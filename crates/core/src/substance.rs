//! The elements a reading carries and the substances that are screened through them.

use std::fmt;

/// Symbols of the chemical elements by atomic number, from hydrogen (IUPAC periodic table).
const SYMBOLS: [&str; 118] = [
    "H", "He", "Li", "Be", "B", "C", "N", "O", "F", "Ne", "Na", "Mg", "Al", "Si", "P", "S", "Cl", "Ar", "K",
    "Ca", "Sc", "Ti", "V", "Cr", "Mn", "Fe", "Co", "Ni", "Cu", "Zn", "Ga", "Ge", "As", "Se", "Br", "Kr",
    "Rb", "Sr", "Y", "Zr", "Nb", "Mo", "Tc", "Ru", "Rh", "Pd", "Ag", "Cd", "In", "Sn", "Sb", "Te", "I", "Xe",
    "Cs", "Ba", "La", "Ce", "Pr", "Nd", "Pm", "Sm", "Eu", "Gd", "Tb", "Dy", "Ho", "Er", "Tm", "Yb", "Lu",
    "Hf", "Ta", "W", "Re", "Os", "Ir", "Pt", "Au", "Hg", "Tl", "Pb", "Bi", "Po", "At", "Rn", "Fr", "Ra",
    "Ac", "Th", "Pa", "U", "Np", "Pu", "Am", "Cm", "Bk", "Cf", "Es", "Fm", "Md", "No", "Lr", "Rf", "Db",
    "Sg", "Bh", "Hs", "Mt", "Ds", "Rg", "Cn", "Nh", "Fl", "Mc", "Lv", "Ts", "Og",
];

/// A chemical element, ordered by atomic number.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Element(u8);

impl Element {
    /// Chlorine.
    pub const CL: Element = Element(17);
    /// Chromium.
    pub const CR: Element = Element(24);
    /// Bromine.
    pub const BR: Element = Element(35);
    /// Cadmium.
    pub const CD: Element = Element(48);
    /// Mercury.
    pub const HG: Element = Element(80);
    /// Lead.
    pub const PB: Element = Element(82);

    /// The element of this atomic number, 1 to 118.
    pub const fn from_atomic_number(number: u8) -> Option<Element> {
        if number >= 1 && number <= 118 { Some(Element(number)) } else { None }
    }

    /// The element of a symbol written as chemistry writes it (`Pb`, not `PB`).
    pub fn from_symbol(symbol: &str) -> Option<Element> {
        let at = SYMBOLS.iter().position(|known| *known == symbol)?;
        u8::try_from(at + 1).ok().map(Element)
    }

    /// The atomic number.
    pub const fn atomic_number(self) -> u8 {
        self.0
    }

    /// The symbol.
    pub fn symbol(self) -> &'static str {
        SYMBOLS.get(usize::from(self.0) - 1).copied().unwrap_or("?")
    }
}

impl fmt::Display for Element {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        out.write_str(self.symbol())
    }
}

/// A restricted substance as XRF screens it: by its element.
///
/// Chromium stands for Cr(VI) and bromine for PBB and PBDE; the element can rule them out and never prove them.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Substance {
    /// Cadmium.
    Cd,
    /// Lead.
    Pb,
    /// Mercury.
    Hg,
    /// Total chromium, for Cr(VI).
    Cr,
    /// Total bromine, for PBB and PBDE.
    Br,
}

impl Substance {
    /// All five, in the order findings list them.
    pub const ALL: [Substance; 5] =
        [Substance::Cd, Substance::Pb, Substance::Hg, Substance::Cr, Substance::Br];

    /// The element that is measured.
    pub const fn element(self) -> Element {
        match self {
            Substance::Cd => Element::CD,
            Substance::Pb => Element::PB,
            Substance::Hg => Element::HG,
            Substance::Cr => Element::CR,
            Substance::Br => Element::BR,
        }
    }

    /// The symbol used in files and findings.
    pub const fn symbol(self) -> &'static str {
        match self {
            Substance::Cd => "Cd",
            Substance::Pb => "Pb",
            Substance::Hg => "Hg",
            Substance::Cr => "Cr",
            Substance::Br => "Br",
        }
    }

    /// The substance of a symbol.
    pub fn from_symbol(symbol: &str) -> Option<Substance> {
        Substance::ALL.into_iter().find(|substance| substance.symbol() == symbol)
    }
}

/// What is judged for halogens: each element and their sum.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Halogen {
    /// Chlorine.
    Cl,
    /// Bromine.
    Br,
    /// Chlorine plus bromine.
    Total,
}

impl Halogen {
    /// All three, in the order findings list them.
    pub const ALL: [Halogen; 3] = [Halogen::Cl, Halogen::Br, Halogen::Total];

    /// The name used in findings.
    pub const fn name(self) -> &'static str {
        match self {
            Halogen::Cl => "Cl",
            Halogen::Br => "Br",
            Halogen::Total => "total",
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn symbols_and_numbers_agree() {
        for (symbol, number) in
            [("Cl", 17), ("Cr", 24), ("Br", 35), ("Cd", 48), ("Hg", 80), ("Pb", 82), ("U", 92)]
        {
            assert_eq!(Element::from_symbol(symbol).unwrap().atomic_number(), number);
            assert_eq!(Element::from_atomic_number(number).unwrap().symbol(), symbol);
        }
        assert_eq!(Element::from_symbol("PB"), None);
        assert_eq!(Element::from_atomic_number(0), None);
    }
}
