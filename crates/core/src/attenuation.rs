//! Mass attenuation: how much of the signal of a thick piece a thinner one gives.
//!
//! share = 1 - exp(-4.605 t / t99), with t99 the thickness that gives 99 % of the signal of a thick piece:
//! t99 = 4.605 / (μ(in) / sin 45° + μ(out) / sin 45°), beam in and line out both at 45°.
//!
//! # Source
//! Coefficients (`data/attenuation.tsv`): Elam, Ravel and Sieber tables as carried by the xraydb library 4.5.8. Primary
//! energies 4 keV (Cl), 8 keV (Cr), 18 keV (Hg, Pb, Br) and 35 keV (Cd), and the angles: common practice, no source.
//! Geometry and spectrum shift every thickness by tens of percent, so a share guards a "below" and never corrects a
//! value.

use crate::lines::data_lines;
use crate::substance::Element;

const COEFFICIENTS: &str = include_str!("../data/attenuation.tsv");
const MATRICES: &str = include_str!("../data/matrices.tsv");

/// ln 100 as the share's formula rounds it: the depth, in e-foldings, at which 99 % of the signal is in.
const NINETY_NINE_PERCENT: f64 = 4.605;

/// A line that is screened, with the primary energy that makes it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Line {
    /// Chlorine K-alpha, made at 4 keV.
    Cl,
    /// Chromium K-alpha, made at 8 keV.
    Cr,
    /// Mercury L-alpha, made at 18 keV.
    Hg,
    /// Lead L-alpha, made at 18 keV.
    Pb,
    /// Bromine K-alpha, made at 18 keV.
    Br,
    /// Cadmium K-alpha, made at 35 keV.
    Cd,
}

impl Line {
    /// All, in the order of the table's columns.
    pub const ALL: [Line; 6] = [Line::Cl, Line::Cr, Line::Hg, Line::Pb, Line::Br, Line::Cd];

    /// The line an element is usually screened by.
    pub fn of(element: Element) -> Option<Line> {
        match element {
            Element::CL => Some(Line::Cl),
            Element::CR => Some(Line::Cr),
            Element::HG => Some(Line::Hg),
            Element::PB => Some(Line::Pb),
            Element::BR => Some(Line::Br),
            Element::CD => Some(Line::Cd),
            _ => None,
        }
    }

    /// The columns of the table: the line itself, and the primary energy.
    const fn columns(self) -> (usize, usize) {
        let primary = match self {
            Line::Cl => 6,
            Line::Cr => 7,
            Line::Hg | Line::Pb | Line::Br => 8,
            Line::Cd => 9,
        };
        (self as usize, primary)
    }
}

/// What lies around the measured element: e-foldings of signal in each micrometre, for every line.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Matrix {
    per_micrometre: [f64; 6],
}

impl Matrix {
    /// Thickness in micrometres that gives 99 % of the signal of a thick piece.
    pub fn t99_micrometres(&self, line: Line) -> f64 {
        NINETY_NINE_PERCENT / self.per_micrometre[line as usize]
    }

    /// Share of a thick piece's signal, in millionths, rounded down.
    ///
    /// # Units
    /// Thickness in micrometres.
    pub fn share(&self, line: Line, micrometres: u32) -> u32 {
        let depth = self.per_micrometre[line as usize] * f64::from(micrometres);
        let share = (1.0 - libm::exp(-depth)) * 1_000_000.0;
        (libm::floor(share) as u32).min(1_000_000)
    }
}

/// Mass attenuation of one element or mixture for each line, in and out together, in cm²/g over the sine of 45°.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MassAttenuation([f64; 6]);

impl MassAttenuation {
    /// A mixture of this and a share (0 to 1) of another.
    #[must_use]
    pub fn with(self, other: MassAttenuation, share: f64) -> MassAttenuation {
        let mut mixed = self.0;
        for (own, other) in mixed.iter_mut().zip(other.0) {
            *own = *own * (1.0 - share) + other * share;
        }
        MassAttenuation(mixed)
    }

    /// As a piece of this density in g/cm³.
    pub fn at_density(self, density: f64) -> Matrix {
        // cm²/g x g/cm³ is 1/cm, and a micrometre is a ten-thousandth of a centimetre.
        Matrix { per_micrometre: self.0.map(|coefficient| coefficient * density * 1e-4) }
    }
}

/// A named matrix of the table.
#[derive(Clone, Debug, PartialEq)]
pub struct Named {
    /// Its code: `polyethylene`, `tin`.
    pub code: &'static str,
    /// Density in g/cm³.
    pub density: f64,
    /// How composition and density are known.
    pub basis: &'static str,
    /// Its attenuation.
    pub mass_attenuation: MassAttenuation,
}

impl Named {
    /// As a piece of its own density.
    pub fn matrix(&self) -> Matrix {
        self.mass_attenuation.at_density(self.density)
    }
}

/// The tables of coefficients and matrices.
#[derive(Clone, Debug)]
pub struct Attenuation {
    elements: Vec<(Element, MassAttenuation)>,
    named: Vec<Named>,
}

impl Attenuation {
    /// The tables the program carries.
    pub fn built_in() -> Attenuation {
        let elements = data_lines(COEFFICIENTS).filter_map(coefficients).collect();
        let mut tables = Attenuation { elements, named: Vec::new() };
        tables.named = data_lines(MATRICES).filter_map(|line| tables.named_of(line)).collect();
        tables
    }

    /// The attenuation of an element; `None` for one the table doesn't have.
    pub fn element(&self, element: Element) -> Option<MassAttenuation> {
        self.elements.iter().find(|(known, _)| *known == element).map(|(_, attenuation)| *attenuation)
    }

    /// A matrix by its code.
    pub fn named(&self, code: &str) -> Option<&Named> {
        self.named.iter().find(|named| named.code == code)
    }

    /// All named matrices.
    pub fn all(&self) -> &[Named] {
        &self.named
    }

    fn named_of(&self, line: &'static str) -> Option<Named> {
        let mut cells = line.split('\t');
        let (code, density) = (cells.next()?, cells.next()?.parse::<u32>().ok()?);
        let mut sums = [0.0; 6];
        for part in cells.next()?.split(' ') {
            let (symbol, millionths) = part.split_once(':')?;
            let attenuation = self.element(Element::from_symbol(symbol)?)?;
            let share = f64::from(millionths.parse::<u32>().ok()?) / 1e6;
            for (sum, coefficient) in sums.iter_mut().zip(attenuation.0) {
                *sum += share * coefficient;
            }
        }
        let density = f64::from(density) / 1000.0;
        Some(Named { code, density, basis: cells.next()?, mass_attenuation: MassAttenuation(sums) })
    }
}

fn coefficients(line: &'static str) -> Option<(Element, MassAttenuation)> {
    let mut cells = line.split('\t');
    let element = Element::from_symbol(cells.next()?)?;
    let mut read = [0.0; 10];
    for place in &mut read {
        *place = cells.next()?.parse::<f64>().ok()?;
    }
    let attenuation = Line::ALL.map(|line| {
        let (out, primary) = line.columns();
        (read[out] + read[primary]) * std::f64::consts::SQRT_2
    });
    Some((element, MassAttenuation(attenuation)))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn t99_millimetres(code: &str, line: Line) -> f64 {
        Attenuation::built_in().named(code).unwrap().matrix().t99_micrometres(line) / 1000.0
    }

    #[test]
    fn every_line_of_the_tables_is_read() {
        let tables = Attenuation::built_in();
        assert_eq!(tables.elements.len(), data_lines(COEFFICIENTS).count());
        assert_eq!(tables.all().len(), data_lines(MATRICES).count());
        assert_eq!((tables.elements.len(), tables.all().len()), (30, 17));
        assert!(tables.all().iter().all(|named| !named.basis.is_empty()));
        assert_eq!(tables.named("wood"), None);
        assert_eq!(tables.element(Element::HG), None);
        for broken in [
            "foam\tlight\tC:1000000\tours",
            "foam\t100\tC1000000\tours",
            "foam\t100\tHg:1000000\tours",
            "foam\t100\tC:1000000",
        ] {
            assert_eq!(tables.named_of(broken), None, "{broken}");
        }
        assert_eq!(coefficients("C\t1\t2\t3"), None);
        assert_eq!(coefficients("C\t1\t2\t3\t4\t5\t6\t7\t8\t9\tten"), None);
    }

    /// The table that the facts give in millimetres (derived there with the same library, rounded to two digits).
    #[test]
    fn the_depths_of_the_facts_come_back() {
        for (code, expected) in [
            ("polyethylene", ["0.23", "2.1", "15", "19", "58"]),
            ("abs", ["0.19", "1.6", "12", "16", "52"]),
            ("pvc", ["0.040", "0.094", "0.67", "0.88", "5.8"]),
            ("glass", ["0.013", "0.10", "0.75", "1.0", "6.4"]),
            ("aluminium", ["0.008", "0.059", "0.45", "0.59", "4.0"]),
            ("iron", ["0.004", "0.010", "0.023", "0.029", "0.19"]),
            ("copper", ["0.003", "0.018", "0.016", "0.020", "0.12"]),
            ("tin", ["0.002", "0.005", "0.030", "0.039", "0.105"]),
        ] {
            for (line, printed) in
                [Line::Cl, Line::Cr, Line::Pb, Line::Br, Line::Cd].into_iter().zip(expected)
            {
                let found = t99_millimetres(code, line);
                let decimals = printed.split_once('.').map_or(0, |(_, decimals)| decimals.len());
                assert_eq!(format!("{found:.decimals$}"), printed, "{code} {line:?}");
            }
        }
    }

    #[test]
    fn ninety_nine_percent_of_the_signal_comes_from_t99() {
        for named in Attenuation::built_in().all() {
            let matrix = named.matrix();
            for line in Line::ALL {
                let t99 = matrix.t99_micrometres(line);
                if t99 > 100.0 {
                    let share = matrix.share(line, libm::round(t99) as u32);
                    assert!((989_700..=990_300).contains(&share), "{} {line:?} {share}", named.code);
                }
                assert_eq!(matrix.share(line, 0), 0);
                assert_eq!(matrix.share(line, 1_000_000), 1_000_000, "a metre is thick");
            }
        }
    }

    /// Shares the facts print for thin plastic and for lead in tin plating.
    #[test]
    fn the_shares_of_the_facts_come_back() {
        let tables = Attenuation::built_in();
        let percent = |code: &str, line, micrometres| {
            (tables.named(code).unwrap().matrix().share(line, micrometres) + 5_000) / 10_000
        };
        for (millimetres, lead, cadmium) in [(1, 31, 8), (2, 53, 16), (5, 85, 36), (10, 98, 59)] {
            assert_eq!(percent("abs", Line::Pb, millimetres * 1000), lead);
            assert_eq!(percent("abs", Line::Cd, millimetres * 1000), cadmium);
        }
        assert_eq!((percent("pvc", Line::Pb, 1000), percent("pvc", Line::Cd, 1000)), (100, 55));
        assert_eq!((percent("pvc", Line::Pb, 2000), percent("pvc", Line::Cd, 2000)), (100, 80));
        for (micrometres, share) in [(1, 14), (3, 37), (5, 53), (8, 71), (10, 78), (20, 95)] {
            assert_eq!(percent("tin", Line::Pb, micrometres), share, "{micrometres} um of tin");
        }
    }

    #[test]
    fn each_element_has_its_line() {
        let lines =
            [Element::CL, Element::CR, Element::HG, Element::PB, Element::BR, Element::CD].map(Line::of);
        assert_eq!(lines, Line::ALL.map(Some));
        assert_eq!(Line::of(Element::from_atomic_number(50).unwrap()), None);
    }

    #[test]
    fn mixing_goes_by_mass() {
        let tables = Attenuation::built_in();
        let polyethylene = tables.named("polyethylene").unwrap();
        let chlorine = tables.element(Element::CL).unwrap();
        let none = polyethylene.mass_attenuation.with(chlorine, 0.0);
        assert_eq!(none, polyethylene.mass_attenuation);
        assert_eq!(polyethylene.mass_attenuation.with(chlorine, 1.0), chlorine);
        let half = MassAttenuation([2.0; 6]).with(MassAttenuation([6.0; 6]), 0.25);
        assert_eq!(half, MassAttenuation([3.0; 6]));
        // 3 cm2/g at 2 g/cm3 is 6 per cm, 0.0006 per um.
        assert!((half.at_density(2.0).t99_micrometres(Line::Cd) - 4.605 / 0.0006).abs() < 1e-6);
    }
}
