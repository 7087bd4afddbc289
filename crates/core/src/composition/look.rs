//! What the composition of each reading of a source shows.

use std::collections::BTreeMap;

use super::data::{Rules, built_in};
use super::family::{FamilyFound, best_of, family_found};
use super::mode::{ModeKind, Shows};
use super::{AlloyGroup, CalibrationDoubt, Contradiction, SuggestionReason};
use crate::material::MaterialClass;
use crate::quantity::{self, Coverage, LARGEST_UNITS, MassFraction, Sigma};
use crate::reading::{Cell, CellState, ElementColumn, Identity, Readings};
use crate::substance::Element;
use crate::text_pool::TextId;

/// How many of the largest elements are kept to be shown.
pub const LEADING: usize = 4;

/// The alloy group a composition suggests.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GroupFound {
    /// The group.
    pub group: AlloyGroup,
    /// True where the main element is more than 3 s above every other, and above all that was not measured. Otherwise
    /// it only may be this group.
    pub surely: bool,
}

/// What a composition suggests. Never a decision.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Described {
    /// The class, and why.
    pub suggestion: Option<(MaterialClass, SuggestionReason)>,
    /// Sum of the numbers of all metals, in mg/kg.
    pub metals: MassFraction,
    /// Sum of all numbers, in mg/kg.
    pub measured: MassFraction,
    /// The largest elements, largest first.
    pub leading: [Option<(Element, MassFraction)>; LEADING],
    /// The alloy group of a metal.
    pub group: Option<GroupFound>,
    /// The family that fits best.
    pub family: Option<FamilyFound<'static>>,
}

/// Sums over the cells of one reading, in millionths of mg/kg. A sum does not know the order of its parts.
#[derive(Clone, Copy, Debug, Default)]
struct Sums {
    metals: i64,
    all: i64,
    conductors: i64,
    /// Metals that are no filler, not detected ones at the most they may be.
    structural: i64,
    silicon: i64,
    calcium: i64,
    bromine: i64,
    chlorine: i64,
    /// How many of the elements a plastic needs were measured.
    needed: u32,
}

/// What a cell has at least: its number where it is above zero, or the number it is above.
fn at_least(state: CellState, units: i64) -> i64 {
    match state {
        CellState::Number | CellState::AboveRange => units.max(0),
        _ => 0,
    }
}

/// What a cell has at most; `None` where it was not measured. Below detection at D means up to D + 3 (D/3); not detected
/// without a number means nothing that would be a main element.
fn at_most(state: CellState, units: i64) -> Option<i64> {
    match state {
        CellState::Number => Some(units.max(0)),
        CellState::BelowDetection => Some(units.max(0) * 2),
        CellState::NotDetected => Some(0),
        CellState::AboveRange => Some(LARGEST_UNITS),
        CellState::NoColumn | CellState::UnitUnknown | CellState::Blank | CellState::Text => None,
    }
}

/// A row that is mostly metal.
const METAL: u8 = 1;
/// A row with almost nothing of any metal, though every main metal was measured.
const NO_METAL: u8 = 2;
/// Rows whose sums are taken together, so that they stay near.
const ROWS_AT_ONCE: usize = 512;

/// What the metals of each row add up to; empty where no row shows anything. Column after column, because a row's cells
/// lie far apart: over a million rows that is the difference between a blink and a wait.
fn metals_of_rows(rules: &Rules, readings: &Readings) -> Vec<u8> {
    let (sets, shares) = (&rules.sets, &rules.shares);
    let metals: Vec<&ElementColumn> =
        readings.elements().iter().filter(|column| sets.metals.has(column.element)).collect();
    let main = metals.iter().filter(|column| sets.main_metals.has(column.element)).count();
    let sees_none = main == sets.main_metals.len() as usize;
    let mut flags = vec![0_u8; readings.len()];
    let mut any = 0;
    let mut sums = [(0_i64, 0_i64); ROWS_AT_ONCE];
    for (part, flags) in flags.chunks_mut(ROWS_AT_ONCE).enumerate() {
        let first = part * ROWS_AT_ONCE;
        sums.fill((0, 0));
        for column in &metals {
            // A main metal that was not measured may be all of it; another counts by what is seen of it.
            let unseen = if sets.main_metals.has(column.element) { LARGEST_UNITS } else { 0 };
            let cells = column.states_and_values(first..first + flags.len());
            for ((least, most), (state, units)) in sums.iter_mut().zip(cells) {
                *least += at_least(state, units);
                *most += at_most(state, units).unwrap_or(unseen);
            }
        }
        for (flag, (least, most)) in flags.iter_mut().zip(sums) {
            *flag = if least >= shares.metal_from.units() {
                METAL
            } else if sees_none && most <= shares.nothing_up_to.units() {
                NO_METAL
            } else {
                0
            };
            any |= *flag;
        }
    }
    if any == 0 { Vec::new() } else { flags }
}

/// Looks at the compositions of one source.
#[derive(Debug)]
pub struct CompositionReview<'a> {
    rules: &'static Rules,
    readings: &'a Readings,
    /// By row; empty where no row shows anything.
    metals: Vec<u8>,
    chlorine: Option<&'a ElementColumn>,
    bromine: Option<&'a ElementColumn>,
    modes: BTreeMap<TextId, ModeKind>,
}

impl<'a> CompositionReview<'a> {
    /// Prepares what is the same for all readings of a source.
    pub fn new(readings: &'a Readings) -> CompositionReview<'a> {
        let rules = built_in();
        let mut modes = BTreeMap::new();
        let mut known = TextId::NONE;
        for row in 0..readings.len() {
            let id = readings.identity_id(Identity::Mode, row);
            // One mode for most of a file: the row above is asked first.
            if id == known {
                continue;
            }
            known = id;
            modes.entry(id).or_insert_with(|| readings.pool.get(id).and_then(|text| rules.modes.kind(text)));
        }
        CompositionReview {
            rules,
            readings,
            metals: metals_of_rows(rules, readings),
            chlorine: readings.column_of(Element::CL),
            bromine: readings.column_of(Element::BR),
            modes: modes.into_iter().filter_map(|(id, kind)| Some((id, kind?))).collect(),
        }
    }

    /// How a composition flatly contradicts the class a reading was given.
    ///
    /// # Decision
    /// A plastic whose metals add up to the share of a metal; a metal whose main metals were all measured, and all metals
    /// add up to almost nothing, detection limits counted twice; or a metal with the bromine or chlorine of a plastic, which
    /// "not applicable in metal" must not hide. No uncertainty counts: a wider one must not make a class sure.
    pub fn contradiction(&self, class: MaterialClass, row: usize) -> Option<Contradiction> {
        match class {
            MaterialClass::Polymer => self.shows(METAL, row).then_some(Contradiction::MetalsInPolymer),
            MaterialClass::Metal if self.shows(NO_METAL, row) => Some(Contradiction::NoMetalInMetal),
            MaterialClass::Metal => self.holds_halogen(row).then_some(Contradiction::HalogenInMetal),
            MaterialClass::Composite | MaterialClass::Plated | MaterialClass::Unknown => None,
        }
    }

    /// True where some reading was made in a mode whose kind is known.
    pub fn knows_modes(&self) -> bool {
        !self.modes.is_empty()
    }

    /// Why the calibration a reading was made with is doubtful, by the class it was given and what it shows.
    pub fn doubt(&self, class: MaterialClass, row: usize) -> Option<CalibrationDoubt> {
        let mode = self.modes.get(&self.readings.identity_id(Identity::Mode, row))?;
        // A class alone may tell, and costs no look at the cells.
        if let Some(doubt) = mode.doubt(class, Shows::default()) {
            return Some(doubt);
        }
        let metal = self.shows(METAL, row);
        let chlorine = *mode == ModeKind::Polymer
            && self.chlorine.is_some_and(|column| {
                let cell = column.cell(row);
                at_least(cell.state, cell.value.units()) >= self.rules.shares.chlorine_from.units()
            });
        // Where a class was stated, what contradicts it is said of the class.
        let plastic = matches!(mode, ModeKind::Metal | ModeKind::Soil)
            && class == MaterialClass::Unknown
            && self
                .suggestion(&self.sums(row))
                .is_some_and(|(suggested, _)| suggested == MaterialClass::Polymer);
        mode.doubt(class, Shows { metal, plastic, chlorine })
    }

    /// What a composition suggests; `None` where it suggests nothing, unless it is shown `anyway`.
    ///
    /// `sigma` gives one sigma of a cell, where its uncertainty is known.
    pub fn describe(
        &self,
        row: usize,
        anyway: bool,
        sigma: impl Fn(Element, &Cell) -> Option<Sigma>,
    ) -> Option<Described> {
        let sums = self.sums(row);
        let suggestion = self.suggestion(&sums);
        if suggestion.is_none() && !anyway {
            return None;
        }
        let mut leading = [None; LEADING];
        for column in self.readings.elements() {
            let cell = column.cell(row);
            let value = at_least(cell.state, cell.value.units());
            if value > 0 {
                put(&mut leading, (column.element, MassFraction::from_units(value)));
            }
        }
        let (group, family) = match (suggestion, leading) {
            (Some((MaterialClass::Metal, _)), [Some((main, _)), second, ..]) => {
                let next = second.map(|(element, _)| element);
                let measured = |element| {
                    let cell = self.readings.cell(element, row);
                    let sigma = sigma(element, &cell);
                    (cell, sigma)
                };
                let group = self.rules.group_of(main);
                let family = best_of(self.rules.families().iter().filter_map(|family| {
                    if Some(family.group) != group {
                        return None;
                    }
                    family_found(family, self.rules.shares.near_miss_of_edge, measured, next)
                }));
                let surely = is_surely_main(measured(main), next.map(measured), sums.all);
                (group.map(|group| GroupFound { group, surely }), family)
            }
            _ => (None, None),
        };
        Some(Described {
            suggestion,
            metals: MassFraction::from_units(sums.metals),
            measured: MassFraction::from_units(sums.all),
            leading,
            group,
            family,
        })
    }

    /// The alloy group a composition suggests; `None` where it suggests no metal. `sigma` as in
    /// [`CompositionReview::describe`].
    pub fn group(&self, row: usize, sigma: impl Fn(Element, &Cell) -> Option<Sigma>) -> Option<GroupFound> {
        // What is a metal has the metals of one; most rows are none, and finding that out costs no look at their cells.
        self.shows(METAL, row).then(|| self.describe(row, false, sigma))??.group
    }

    /// True where a reading has the bromine of a flame-retarded plastic or the chlorine of a chlorinated one.
    fn holds_halogen(&self, row: usize) -> bool {
        let shares = &self.rules.shares;
        let from = [(self.bromine, shares.retardant_bromine_from), (self.chlorine, shares.chlorine_from)];
        from.into_iter().any(|(column, from)| {
            column.is_some_and(|column| {
                let cell = column.cell(row);
                at_least(cell.state, cell.value.units()) >= from.units()
            })
        })
    }

    fn shows(&self, what: u8, row: usize) -> bool {
        self.metals.get(row) == Some(&what)
    }

    fn sums(&self, row: usize) -> Sums {
        let sets = &self.rules.sets;
        let mut sums = Sums::default();
        for column in self.readings.elements() {
            let (element, cell) = (column.element, column.cell(row));
            let units = cell.value.units();
            let (least, most) = (at_least(cell.state, units), at_most(cell.state, units));
            sums.all += least;
            if sets.metals.has(element) {
                sums.metals += least;
                if !sets.fillers.has(element) {
                    sums.structural += most.unwrap_or(0);
                }
            }
            if sets.conductors.has(element) {
                sums.conductors += least;
            }
            sums.needed += u32::from(sets.plastic_needs.has(element) && most.is_some());
            match element.symbol() {
                "Si" => sums.silicon = least,
                "Ca" => sums.calcium = least,
                "Br" => sums.bromine = least,
                "Cl" => sums.chlorine = least,
                _ => {}
            }
        }
        sums
    }

    fn suggestion(&self, sums: &Sums) -> Option<(MaterialClass, SuggestionReason)> {
        let shares = &self.rules.shares;
        if sums.all > shares.whole_up_to.units() {
            return None;
        }
        let signs = [
            sums.bromine >= shares.retardant_bromine_from.units(),
            sums.silicon >= shares.glass_silicon_from.units(),
            sums.calcium >= shares.glass_calcium_from.units(),
        ];
        let of_laminate = signs.into_iter().filter(|sign| *sign).count();
        if of_laminate >= 2 && sums.conductors >= shares.conductors_from.units() {
            return Some((MaterialClass::Composite, SuggestionReason::ConductorInLaminate));
        }
        if sums.metals >= shares.metal_from.units() {
            // Bromine is in no metal: what shows it is a mixture of some kind. So is what shows the silicon of a glass
            // and less of all together than a metal: an ore or a slag, whose rest is oxygen.
            let [bromine, silicon, ..] = signs;
            let oxide = silicon && sums.all < shares.metal_whole_from.units();
            return (!bromine && !oxide).then_some((MaterialClass::Metal, SuggestionReason::MostlyMetal));
        }
        if sums.chlorine >= shares.chlorine_from.units() {
            return (sums.structural <= shares.chlorinated_metals_up_to.units())
                .then_some((MaterialClass::Polymer, SuggestionReason::MuchChlorine));
        }
        let little = sums.needed == self.rules.sets.plastic_needs.len()
            && sums.all <= shares.plastic_sum_up_to.units()
            && sums.structural <= shares.plastic_metals_up_to.units()
            && sums.silicon <= shares.plastic_silicon_up_to.units();
        little.then_some((MaterialClass::Polymer, SuggestionReason::LittleSeen))
    }
}

/// Puts an element in its place among the largest. Columns come by atomic number, so of equal ones the lighter stands
/// first.
fn put(leading: &mut [Option<(Element, MassFraction)>; LEADING], new: (Element, MassFraction)) {
    let mut moving = Some(new);
    for place in leading {
        let before = match (&*place, moving) {
            (_, None) => false,
            (None, Some(_)) => true,
            (Some((_, known)), Some((_, value))) => value > *known,
        };
        if before {
            std::mem::swap(place, &mut moving);
        }
    }
}

/// True where the main element is more than 3 s above the next one and above all that was not measured.
fn is_surely_main(
    (main, sigma): (Cell, Option<Sigma>),
    next: Option<(Cell, Option<Sigma>)>,
    measured: i64,
) -> bool {
    let Some(sigma) = sigma.filter(|_| main.state == CellState::Number) else { return false };
    let k = Coverage::THREE;
    let unseen = MassFraction::from_units(MassFraction::from_mg_per_kg(1_000_000).units() - measured);
    let above_unseen = quantity::lower_end_beyond(main.value, k, sigma, unseen, false);
    let above_next = match next {
        None => true,
        Some((cell, Some(of_next))) if cell.state == CellState::Number => {
            quantity::lower_end_beyond(main.value, k, sigma.in_quadrature(of_next), cell.value, false)
        }
        Some(_) => false,
    };
    above_unseen && above_next
}

#[cfg(test)]
mod tests {
    use super::super::{FamilyFit, RangeFit};
    use super::*;
    use crate::reading::Written;

    /// Readings with one row: `Cu 58 0.1, Zn <0.02, Fe nd, Al >5, Ni ?, Sn -`, in percent.
    fn readings(text: &str, mode: &str) -> Readings {
        let mut readings = Readings::default();
        readings.begin(1);
        readings.set_identity(Identity::Mode, mode);
        for cell in text.split(", ").filter(|cell| !cell.is_empty()) {
            let words: Vec<&str> = cell.split(' ').collect();
            let percent = |text: &str| super::super::data::percent(text).expect(cell);
            let (state, value) = match words[1] {
                "nd" => (CellState::NotDetected, MassFraction::ZERO),
                "?" => (CellState::UnitUnknown, MassFraction::ZERO),
                "-" => (CellState::Blank, MassFraction::ZERO),
                below if below.starts_with('<') => (CellState::BelowDetection, percent(&below[1..])),
                above if above.starts_with('>') => (CellState::AboveRange, percent(&above[1..])),
                number => (CellState::Number, percent(number)),
            };
            let printed_error = words.get(2).map(|text| percent(text));
            readings
                .element_column(Element::from_symbol(words[0]).expect(cell))
                .push(Cell { state, value, printed_error, detection_limit: None }, Written::Nothing);
        }
        readings.close();
        readings
    }

    fn one_sigma(_: Element, cell: &Cell) -> Option<Sigma> {
        cell.printed_error.and_then(Sigma::from_one_sigma)
    }

    fn describe(text: &str) -> Option<Described> {
        CompositionReview::new(&readings(text, "")).describe(0, false, one_sigma)
    }

    fn suggested(text: &str) -> Option<(MaterialClass, &'static str)> {
        describe(text)?.suggestion.map(|(class, reason)| (class, reason.code()))
    }

    /// Code, fit, and the others that are as possible.
    fn family(text: &str) -> Option<String> {
        let found = describe(text)?.family?;
        let also = found.also.iter().map(|family| family.code.as_str());
        Some([&found.family.code, found.fit.code()].into_iter().chain(also).collect::<Vec<_>>().join(" "))
    }

    fn group(text: &str) -> Option<(&'static str, bool)> {
        describe(text)?.group.map(|found| (found.group.code(), found.surely))
    }

    const NO_METAL: &str =
        "Al <0.05, Si 1, Ti 0.5, Fe 0.01, Ni nd, Cu <0.01, Zn 0.1, Sn <0.01, Pb <0.0005, Br 3, Sb 2, Cl 0.1";

    #[test]
    fn half_of_metals_suggests_a_metal_and_less_does_not() {
        let metal = Some((MaterialClass::Metal, "mostly_metal"));
        assert_eq!(suggested("Fe 30, Cu 20"), metal);
        assert_eq!(suggested("Fe 30, Cu 19.999999"), None);
        assert_eq!(suggested("Fe 30, Cu >20"), metal);
        assert_eq!(suggested("Fe 30, Cu <40"), None);
        assert_eq!(suggested("Fe 30, Cu ?"), None);
        assert_eq!(suggested("Fe 51, Cu -1"), metal);
        // Calcium is no metal here, and silicon none anywhere.
        assert_eq!(suggested("Ca 40, Si 50"), None);
        assert_eq!(suggested("Fe 120"), metal);
        assert_eq!(suggested("Fe 120, Si 0.000001"), None);
        assert_eq!(suggested(""), None);
    }

    #[test]
    fn a_slag_is_no_metal() {
        let metal = Some((MaterialClass::Metal, "mostly_metal"));
        assert_eq!(suggested("Fe 60, Si 5"), None);
        assert_eq!(suggested("Fe 60, Si 4.999999"), metal);
        assert_eq!(suggested("Fe 74.999999, Si 5"), None);
        // A silicon cast iron is seen whole.
        assert_eq!(suggested("Fe 75, Si 5"), metal);
    }

    #[test]
    fn bromine_beside_much_metal_suggests_nothing() {
        assert_eq!(suggested("Cu 60, Br 1"), None);
        assert_eq!(suggested("Cu 60, Br 0.999999"), Some((MaterialClass::Metal, "mostly_metal")));
    }

    #[test]
    fn conductors_in_a_laminate_suggest_a_composite() {
        let composite = Some((MaterialClass::Composite, "conductor_in_laminate"));
        assert_eq!(suggested("Cu 5, Br 1, Si 5"), composite);
        assert_eq!(suggested("Cu 5, Br 1, Ca 2"), composite);
        assert_eq!(suggested("Cu 5, Si 5, Ca 2"), composite);
        assert_eq!(suggested("Sn 2, Cu 2, Ni 1, Br 1, Si 5, Ca 2"), composite);
        assert_eq!(suggested("Cu 60, Br 3, Si 8, Ca 4"), composite);
        for less in
            ["Cu 4.999999, Br 1, Si 5", "Cu 5, Br 1, Si 4.9", "Cu 5, Br 0.9, Ca 2", "Cu 5, Si 5, Ca 1.9"]
        {
            assert_eq!(suggested(less), None, "{less}");
        }
        assert_eq!(suggested("Zn 6, Br 1, Si 5"), None, "zinc is no conductor here");
    }

    #[test]
    fn little_of_everything_that_was_measured_suggests_a_plastic() {
        let plastic = Some((MaterialClass::Polymer, "little_seen"));
        assert_eq!(suggested(NO_METAL), plastic);
        for element in
            ["Al <0.05", "Si 1", "Ti 0.5", "Fe 0.01", "Ni nd", "Cu <0.01", "Zn 0.1", "Sn <0.01", "Pb <0.0005"]
        {
            let symbol = element.split(' ').next().unwrap();
            assert!(NO_METAL.contains(element));
            for missing in ["-", "?"] {
                let text = NO_METAL.replace(element, &format!("{symbol} {missing}"));
                assert_eq!(suggested(&text), None, "{text}");
            }
        }
        // Structural metals: 0.01 + 2 x 0.01 + 2 x 0.01 + 2 x 0.0005 = 0.051 %.
        assert_eq!(suggested(&NO_METAL.replace("Fe 0.01", "Fe 0.959")), plastic);
        assert_eq!(suggested(&NO_METAL.replace("Fe 0.01", "Fe 0.959001")), None);
        assert_eq!(suggested(&NO_METAL.replace("Fe 0.01", "Fe <0.5")), None);
        assert_eq!(suggested(&NO_METAL.replace("Si 1", "Si 10")), plastic);
        assert_eq!(suggested(&NO_METAL.replace("Si 1", "Si 10.000001")), None);
        // All numbers: 1 + 0.5 + 0.01 + 0.1 + 3 + 2 + 0.1 = 6.71 %.
        assert_eq!(suggested(&NO_METAL.replace("Br 3", "Br 26.29")), plastic);
        assert_eq!(suggested(&NO_METAL.replace("Br 3", "Br 26.290001")), None);
    }

    #[test]
    fn much_chlorine_suggests_a_plastic_whatever_else_was_measured() {
        let pvc = Some((MaterialClass::Polymer, "much_chlorine"));
        assert_eq!(suggested("Cl 10"), pvc);
        assert_eq!(suggested("Cl 9.999999"), None);
        assert_eq!(suggested("Cl 40, Ti 4, Pb 5"), pvc);
        assert_eq!(suggested("Cl 40, Ti 4, Pb 5.000001"), None);
        assert_eq!(suggested("Cl 40, Cu <2.6"), None);
    }

    #[test]
    fn the_main_element_names_the_group() {
        for (text, found) in [
            ("Fe 98 0.2", "steel"),
            ("Al 97 0.2", "aluminium"),
            ("Cu 99 0.2", "copper"),
            ("Zn 95 0.2", "zinc"),
            ("Sn 97 0.2", "tin"),
            ("Pb 97 0.2", "lead"),
            ("Ni 80 0.2", "nickel"),
            ("Ti 90 0.2", "titanium"),
            ("Mg 90 0.2", "magnesium"),
            ("Au 75 0.2", "precious"),
        ] {
            assert_eq!(group(text), Some((found, true)), "{text}");
        }
        assert_eq!(group("Bi 58 0.2, Sn 42 0.2"), None);
    }

    #[test]
    fn a_group_is_sure_only_above_the_next_element_and_above_what_is_not_seen() {
        assert_eq!(group("Cu 52 0.3, Zn 48 0.4"), Some(("copper", true)));
        assert_eq!(group("Cu 51.5 0.3, Zn 49 0.4"), Some(("copper", true)));
        assert_eq!(group("Cu 51 0.3, Zn 49.5 0.4"), Some(("copper", false)), "1.5 is 3 x 0.5");
        assert_eq!(group("Cu 52, Zn 48 0.4"), Some(("copper", false)));
        assert_eq!(group("Cu 52 0.3, Zn 48"), Some(("copper", false)));
        assert_eq!(group("Cu >52 0.3, Zn 40 0.4"), Some(("copper", false)));
        assert_eq!(group("Cu 52 0.3, Zn >40 0.4"), Some(("copper", false)));
        // Up to 50 % is not seen.
        assert_eq!(group("Cu 50 0.3"), Some(("copper", false)));
        assert_eq!(group("Cu 50.9 0.3"), Some(("copper", true)));
        assert_eq!(group("Cu 50.4 0.3"), Some(("copper", false)));
    }

    #[test]
    fn the_largest_elements_are_kept_in_order_whatever_the_order_of_columns() {
        let leading =
            |text: &str| describe(text).unwrap().leading.map(|one| one.map(|(element, _)| element.symbol()));
        let expected = [Some("Cu"), Some("Ni"), Some("Zn"), Some("Sn")];
        assert_eq!(leading("Cu 60, Zn 10, Ni 20, Sn 5, Pb 4, Fe -3"), expected);
        assert_eq!(leading("Pb 4, Sn 5, Ni 20, Zn 10, Cu 60"), expected);
        assert_eq!(leading("Fe 60, Zn 20, Cu 20, Cr <1"), [Some("Fe"), Some("Cu"), Some("Zn"), None]);
        let all = describe("Cu 60, Si 10, Ni 20, Sn -5, Pb <1").unwrap();
        assert_eq!(all.metals, MassFraction::from_mg_per_kg(800_000));
        assert_eq!(all.measured, MassFraction::from_mg_per_kg(900_000));
    }

    #[test]
    fn leaded_brass_is_named() {
        let brass = "Cu 58 0.1, Zn 38.9 0.1, Pb 3.1 0.05";
        assert_eq!(family(brass), Some("CW614N fits".into()));
        let ranges = describe(brass).unwrap().family.unwrap().ranges;
        assert!(
            ranges
                .iter()
                .all(|range| range.fit == RangeFit::Inside && range.outside_by == MassFraction::ZERO)
        );
        assert_eq!(family("Cu 61 0.1, Zn 36 0.1, Pb 3 0.05"), Some("CW603N fits".into()));
        assert_eq!(family("Cu 60 0.1, Zn 38 0.1, Pb 2 0.05, As 0.001 0.0001"), Some("CW617N fits".into()));
        assert_eq!(family("Cu 60 0.1, Zn 38 0.1, Pb 2 0.05"), Some("CW617N fits CW602N".into()));
        assert_eq!(family("Cu 63 0.1, Zn 36 0.1, Pb 1.2 0.05"), Some("CW600N fits".into()));
        assert_eq!(
            family("Cu 61 0.1, Zn 36 0.1, Pb 2.1 0.05, As 0.08 0.01"),
            Some("CW617N fits CW602N".into())
        );
        // Without uncertainties nothing fits for sure.
        assert_eq!(family("Cu 58, Zn 38.9, Pb 3.1"), Some("CW614N may_be".into()));
        assert_eq!(family("Cu 99 0.1, Pb 0.001 0.0001"), None);
        assert_eq!(family("Cu 58 0.1, Sn 38.9 0.1, Pb 3.1 0.05"), None, "tin is no zinc");
        assert_eq!(family("Cu 58 0.1, Zn 38.9 0.1, Pb -"), None);
        assert_eq!(family("Cu 58 0.1, Zn 38.9 0.1"), None);
    }

    #[test]
    fn a_range_whose_edge_is_within_three_sigma_only_may_fit() {
        // 3.5 - 3.35 = 0.15 = 3 x 0.05.
        assert_eq!(family("Cu 58 0.1, Zn 38 0.1, Pb 3.35 0.05"), Some("CW614N may_be".into()));
        assert_eq!(family("Cu 58 0.1, Zn 38 0.1, Pb 3.34 0.05"), Some("CW614N fits".into()));
        assert_eq!(family("Cu 58 0.1, Zn 38 0.1, Pb 3.65 0.05"), Some("CW614N may_be".into()));
        let near = "Cu 58 0.1, Zn 38 0.1, Pb 3.66 0.05";
        assert_eq!(family(near), Some("CW614N near".into()));
        let found = describe(near).unwrap().family.unwrap();
        assert_eq!(found.ranges[1].fit, RangeFit::Outside);
        assert_eq!(found.ranges[1].outside_by, MassFraction::from_mg_per_kg(1600));
        // A tenth of 3.5 is 0.35.
        assert_eq!(family("Cu 58 0.1, Zn 38 0.1, Pb 3.85 0.05"), Some("CW614N near".into()));
        assert_eq!(family("Cu 58 0.1, Zn 38 0.1, Pb 3.851 0.05"), None);
        assert_eq!(family("Cu 56.5 0.1, Zn 40 0.1, Pb 3.2 0.05"), None, "another alloy");
    }

    #[test]
    fn free_machining_steel_is_named_and_its_permitted_deviation_may_be() {
        assert_eq!(
            family("Fe 98 0.2, Mn 1.1 0.02, S 0.30 0.005, Pb 0.27 0.01"),
            Some("11SMnPb30 fits 35SPb20 12L14".into())
        );
        assert_eq!(
            family("Fe 98 0.2, Mn 1.1 0.02, Pb 0.27 0.01"),
            Some("35SPb20 fits 11SMnPb30 11SMnPb37 10SPb20 12L14".into())
        );
        // 0.37 is beyond 0.35, and within its permitted deviation of 0.03; 12L14 states none.
        let over = describe("Fe 98 0.2, Pb 0.37 0.001").unwrap().family.unwrap();
        assert_eq!((over.family.code.as_str(), over.fit), ("35SPb20", FamilyFit::MayBe));
        assert_eq!(over.ranges[0].fit, RangeFit::NearEdge);
        assert_eq!(over.ranges[0].outside_by, MassFraction::from_mg_per_kg(200));
        assert_eq!(family("Fe 98 0.2, Pb 0.01 0.001"), None);
    }

    #[test]
    fn leaded_aluminium_and_solders_are_named() {
        assert_eq!(family("Al 93 0.2, Cu 5.5 0.1, Bi 0.4 0.01, Pb 0.4 0.01"), Some("AW-2011 fits".into()));
        assert_eq!(family("Al 93 0.2, Cu 4 0.1, Bi <0.05, Pb 1.2 0.05"), Some("AW-2007 fits".into()));
        assert_eq!(
            family("Al 97 0.2, Si 0.8 0.1, Bi 0.5 0.01, Pb 0.5 0.01"),
            Some("AW-6262 fits AW-6012".into())
        );
        assert_eq!(family("Sn 62 0.2, Pb 38 0.2"), Some("SnPb37 fits".into()));
        assert_eq!(family("Pb 92 0.2, Sn 5 0.1, Ag 2.5 0.1"), Some("high-lead fits".into()));
        assert_eq!(family("Pb 99.9 0.2"), Some("high-lead near".into()));
        assert_eq!(family("Pb 70 0.2, Sn 30 0.2"), None);
    }

    #[test]
    fn below_detection_and_above_the_range_lie_where_they_may() {
        let bismuth = |cell: &str| {
            let found = describe(&format!("Al 93 0.2, Cu 4 0.1, Bi {cell}, Pb 1.2 0.05")).unwrap().family;
            found.map(|found| (found.fit, found.ranges[2].fit, found.ranges[2].value.is_some()))
        };
        assert_eq!(bismuth("<0.09"), Some((FamilyFit::Fits, RangeFit::Inside, false)));
        assert_eq!(bismuth("<0.1"), Some((FamilyFit::MayBe, RangeFit::NearEdge, false)));
        assert_eq!(bismuth("<5"), Some((FamilyFit::MayBe, RangeFit::NearEdge, false)));
        assert_eq!(bismuth("nd"), Some((FamilyFit::MayBe, RangeFit::NotMeasured, false)));
        assert_eq!(bismuth(">0.2"), Some((FamilyFit::MayBe, RangeFit::NearEdge, false)));
        assert_eq!(bismuth(">0.21"), None);
        assert_eq!(bismuth("-0.1 0.01"), Some((FamilyFit::Fits, RangeFit::Inside, true)));
        assert_eq!(bismuth("0.1 0.01"), Some((FamilyFit::Fits, RangeFit::Inside, true)));
        assert_eq!(bismuth("0.21"), None);
        assert_eq!(bismuth("-0.1"), Some((FamilyFit::MayBe, RangeFit::NearEdge, true)));
        let negative = describe("Al 93 0.2, Cu 4 0.1, Bi -0.1, Pb 1.2 0.05").unwrap().family.unwrap();
        assert_eq!(negative.ranges[2].outside_by, MassFraction::ZERO);
        let lead = |cell: &str| {
            let found = describe(&format!("Fe 98 0.2, Pb {cell}")).unwrap().family;
            found.map(|found| found.fit)
        };
        assert_eq!(lead("<0.06"), None);
        assert_eq!(lead("<0.08"), Some(FamilyFit::MayBe));
        // 2 x 0.065 = 0.13, the low edge with its permitted deviation.
        assert_eq!(lead("<0.065"), Some(FamilyFit::MayBe));
        assert_eq!(lead("<0.0649"), None);
        assert_eq!(lead("0.1"), None);
        assert_eq!(lead("0.38"), Some(FamilyFit::MayBe));
        assert_eq!(lead("0.380001"), Some(FamilyFit::Near));
        assert_eq!(lead("0.13"), Some(FamilyFit::MayBe));
        // 0.02 of 0.2 would be a near miss.
        assert_eq!(lead("0.14 0.001"), Some(FamilyFit::MayBe));
        assert_eq!(lead("0.129"), None);
    }

    fn contradicted(class: MaterialClass, text: &str) -> Option<&'static str> {
        CompositionReview::new(&readings(text, "")).contradiction(class, 0).map(Contradiction::code)
    }

    #[test]
    fn half_of_metals_contradicts_a_plastic() {
        let found = Some("metals_in_polymer");
        assert_eq!(contradicted(MaterialClass::Polymer, "Fe 30, Cu 20"), found);
        assert_eq!(contradicted(MaterialClass::Polymer, "Fe 30, Cu 200"), found);
        assert_eq!(contradicted(MaterialClass::Polymer, "Fe 30, Cu 19.999999"), None);
        for class in
            [MaterialClass::Metal, MaterialClass::Composite, MaterialClass::Plated, MaterialClass::Unknown]
        {
            assert_eq!(contradicted(class, "Fe 30, Cu 20"), None, "{class:?}");
        }
    }

    #[test]
    fn nothing_of_any_metal_contradicts_a_metal_where_the_main_ones_were_measured() {
        let found = Some("no_metal_in_metal");
        let nothing = "Al <0.1, Ti nd, Fe 0.5, Ni <0.01, Cu <0.01, Zn -0.1, Sn 0.05, Pb 0.2";
        // 0.2 + 0.5 + 0.02 + 0.02 + 0.05 + 0.2 = 0.99 %.
        assert_eq!(contradicted(MaterialClass::Metal, nothing), found);
        assert_eq!(contradicted(MaterialClass::Metal, &format!("{nothing}, Ag 0.01, Ca 20, Mg -")), found);
        assert_eq!(contradicted(MaterialClass::Metal, &format!("{nothing}, Ag 0.010001")), None);
        assert_eq!(contradicted(MaterialClass::Metal, &nothing.replace("Ti nd", "Ti >0.001")), None);
        assert_eq!(contradicted(MaterialClass::Polymer, nothing), None);
        for cell in nothing.split(", ") {
            let symbol = &cell[..2];
            assert_eq!(
                contradicted(MaterialClass::Metal, &nothing.replace(cell, &format!("{symbol} -"))),
                None,
                "{cell}"
            );
        }
        assert_eq!(
            contradicted(MaterialClass::Metal, &nothing[..nothing.len() - 8]),
            None,
            "no column of lead"
        );
    }

    fn doubted(class: MaterialClass, mode: &str, text: &str) -> Option<&'static str> {
        CompositionReview::new(&readings(text, mode)).doubt(class, 0).map(CalibrationDoubt::code)
    }

    #[test]
    fn a_mode_is_held_against_the_class_and_against_what_is_seen() {
        let unknown = MaterialClass::Unknown;
        assert_eq!(doubted(unknown, "plastic", "Cl 10"), Some("pvc_in_polymer_mode"));
        assert_eq!(doubted(unknown, "plastic", "Cl 9.999"), None);
        assert_eq!(doubted(unknown, "PVC", "Cl 40"), None);
        assert_eq!(doubted(unknown, "plastic", "Cl 40, Fe 50"), Some("metal_in_polymer_mode"));
        assert_eq!(doubted(unknown, "plastic", NO_METAL), None);
        assert_eq!(doubted(unknown, "soil", "Fe 50"), Some("metal_in_soil_mode"));
        assert_eq!(doubted(unknown, "soil", "Fe 49"), None);
        assert_eq!(doubted(unknown, "alloy", "Fe 50"), None);
        assert_eq!(doubted(unknown, "alloy", NO_METAL), Some("plastic_in_metal_mode"));
        assert_eq!(doubted(unknown, "alloy", "Cl 40"), Some("plastic_in_metal_mode"));
        assert_eq!(doubted(unknown, "alloy", "Cl 40, Cu 6"), None);
        assert_eq!(doubted(unknown, "soil", NO_METAL), Some("plastic_in_soil_mode"));
        assert_eq!(doubted(unknown, "mode 1", NO_METAL), None);
        assert_eq!(doubted(unknown, "", "Fe 50"), None);
        assert_eq!(doubted(MaterialClass::Metal, "plastic", ""), Some("metal_in_polymer_mode"));
        assert_eq!(doubted(MaterialClass::Polymer, "alloy", ""), Some("plastic_in_metal_mode"));
        assert_eq!(doubted(MaterialClass::Composite, "alloy", "Cu 20, Br 3, Si 5"), None);
    }

    #[test]
    fn each_row_has_its_own_sums_however_many_there_are() {
        let mut readings = Readings::default();
        let rows = 2 * ROWS_AT_ONCE + 3;
        let is_metal = |row: usize| row.is_multiple_of(7) || row == rows - 1;
        for row in 0..rows {
            readings.begin(row as u32 + 1);
            let value = MassFraction::from_mg_per_kg(if is_metal(row) { 300_000 } else { 1_000 });
            let cell = Cell { state: CellState::Number, value, printed_error: None, detection_limit: None };
            for element in [24, 26] {
                let element = Element::from_atomic_number(element).unwrap();
                readings.element_column(element).push(cell, Written::Nothing);
            }
        }
        readings.close();
        let review = CompositionReview::new(&readings);
        for row in 0..rows {
            let found = review.contradiction(MaterialClass::Polymer, row);
            assert_eq!(found.is_some(), is_metal(row), "{row}");
        }
        assert_eq!(review.contradiction(MaterialClass::Polymer, rows), None);
    }

    #[test]
    fn each_row_has_its_own_mode() {
        let mut readings = Readings::default();
        for (row, mode) in ["PVC", "plastic", "", "plastic", "nothing known"].into_iter().enumerate() {
            readings.begin(row as u32 + 1);
            readings.set_identity(Identity::Mode, mode);
            let value = MassFraction::from_mg_per_kg(400_000);
            let cell = Cell { state: CellState::Number, value, printed_error: None, detection_limit: None };
            readings.element_column(Element::CL).push(cell, Written::Nothing);
        }
        readings.close();
        let review = CompositionReview::new(&readings);
        assert!(review.knows_modes());
        let doubts: Vec<bool> =
            (0..5).map(|row| review.doubt(MaterialClass::Polymer, row).is_some()).collect();
        assert_eq!(doubts, [false, true, false, true, false]);
    }

    #[test]
    fn what_says_nothing_is_described_only_where_it_is_wanted() {
        let readings = readings("Fe 30", "");
        let review = CompositionReview::new(&readings);
        assert_eq!(review.describe(0, false, one_sigma), None);
        assert!(!review.knows_modes());
        let anyway = review.describe(0, true, one_sigma).unwrap();
        assert_eq!((anyway.suggestion, anyway.group, &anyway.family), (None, None, &None));
        assert_eq!(anyway.leading[0].map(|(element, _)| element.symbol()), Some("Fe"));
    }
}
