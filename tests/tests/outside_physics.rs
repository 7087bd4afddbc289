//! Depths, overlaps and upper bounds against values that others' libraries give (`vectors/physics_*.csv`, made by
//! `outside/physics.py`; how, stands in `vectors/README.md`).

use plumbline_core::attenuation::{Attenuation, Line};
use plumbline_core::lines::{self, CautionCode, Overlaps};
use plumbline_core::quantity::MassFraction;
use plumbline_core::stoichiometry::{Compound, Family, most_hexavalent};
use plumbline_core::substance::Element;
use plumbline_tests::places::in_tests;

fn rows(name: &str) -> Vec<Vec<String>> {
    let path = in_tests("vectors").join(name);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    text.lines().skip(1).map(|line| line.split(',').map(str::to_owned).collect()).collect()
}

fn number(cell: &str) -> f64 {
    cell.parse().unwrap_or_else(|error| panic!("{cell}: {error}"))
}

fn element(symbol: &str) -> Element {
    Element::from_symbol(symbol).unwrap_or_else(|| panic!("{symbol} is no element"))
}

#[test]
fn depths_and_shares_are_those_of_the_library() {
    let tables = Attenuation::built_in();
    let rows = rows("physics_depths.csv");
    assert_eq!(rows.len(), tables.all().len() * Line::ALL.len(), "every matrix, every line");
    for row in rows {
        let matrix = tables.named(&row[0]).unwrap_or_else(|| panic!("no {}", row[0])).matrix();
        let line = Line::of(element(&row[1])).unwrap_or_else(|| panic!("no line of {}", row[1]));
        let t99 = matrix.t99_micrometres(line);
        // Coefficients are kept to four digits.
        assert!((t99 / number(&row[2]) - 1.0).abs() < 5e-4, "{row:?}: {t99}");
        for (micrometres, expected) in [1, 5, 20, 1000, 5000].into_iter().zip(&row[3..]) {
            let share = f64::from(matrix.share(line, micrometres)) / 1e6;
            assert!((share - number(expected)).abs() < 2e-4, "{row:?} at {micrometres} um: {share}");
        }
    }
}

/// The program's table has the closed form, rounded up to two digits; the check value is the integral of two bells.
#[test]
fn what_a_partner_looks_like_is_the_overlap_of_two_bells() {
    let table = Overlaps::built_in();
    let rows = rows("physics_overlaps.csv");
    let proportional = table.rows().iter().filter(|row| row.code != CautionCode::TubeLine);
    assert_eq!(proportional.count(), rows.len());
    for row in rows {
        let overlap = table
            .rows()
            .iter()
            .find(|known| {
                known.analyte == element(&row[0])
                    && known.line == row[1]
                    && known.partner == element(&row[2])
                    && known.code != CautionCode::TubeLine
            })
            .unwrap_or_else(|| panic!("no row {row:?}"));
        assert_eq!(overlap.partner_line, row[3]);
        // The energies of the program's table are whole electronvolts.
        let width = lines::width_at(f64::from(overlap.energy));
        assert!((width - number(&row[4])).abs() < 0.01, "{row:?}: {width}");
        let whole = overlap.apparent(MassFraction::from_mg_per_kg(1_000_000)).to_mg_per_kg();
        let expected = number(&row[5]);
        assert!(whole >= expected * 0.999_999, "{row:?}: rounded down to {whole}");
        assert!(whole <= expected * 1.1, "{row:?}: {whole}");
    }
}

#[test]
fn compounds_hold_what_the_library_of_elements_says() {
    let rows = rows("physics_compounds.csv");
    assert_eq!(rows.len(), 25);
    for row in rows {
        let atoms: u8 = row[1].parse().expect("a number of atoms");
        let compound = match row[0].as_str() {
            "PBB" => Compound::brominated(Family::Pbb, atoms).expect("a congener"),
            "PBDE" => Compound::brominated(Family::Pbde, atoms).expect("a congener"),
            "TBBPA" => Compound::TBBPA,
            "HBCDD" => Compound::HBCDD,
            "DBDPE" => Compound::DBDPE,
            "PVC" => Compound::PVC,
            "CrO3" => {
                // No bound uses an oxide: all of the chromium may be hexavalent, whatever it is bound to.
                let chromium = MassFraction::from_mg_per_kg(520);
                assert_eq!(most_hexavalent(chromium), chromium);
                let oxide = plumbline_core::oxide::Oxide::from_formula("CrO3").expect("an oxide");
                let whole = MassFraction::from_mg_per_kg(1_000_000);
                let share =
                    oxide.to_element(whole, plumbline_core::quantity::Rounding::Nearest).to_mg_per_kg();
                assert!((share / 1e6 - number(&row[5])).abs() < 1e-5, "{share}");
                continue;
            }
            other => panic!("{other}"),
        };
        assert_eq!(compound.element(), element(&row[3]));
        let (part, whole) = compound.masses();
        assert!((whole as f64 / 1e4 - number(&row[4])).abs() < 1e-3, "{row:?}: {whole}");
        assert!((part as f64 / whole as f64 - number(&row[5])).abs() < 1e-7, "{row:?}: {part} of {whole}");
        let bound = compound.at_most(MassFraction::from_mg_per_kg(1000)).to_mg_per_kg() / 1000.0;
        assert!((bound / number(&row[6]) - 1.0).abs() < 1e-7, "{row:?}: {bound}");
    }
}
