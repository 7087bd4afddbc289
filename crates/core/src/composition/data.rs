//! The data file of compositions: sets of elements, shares, alloy groups, families and words for measuring modes.

use std::sync::OnceLock;

use super::AlloyGroup;
use super::family::{Family, Range, read_family};
use super::mode::{ModeKind, ModeWords};
use crate::quantity::{self, MassFraction};
use crate::substance::Element;

/// The built-in file.
const BUILT_IN: &str = include_str!("../../rules/compositions.tsv");

/// A set of elements.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct ElementSet(u128);

impl ElementSet {
    /// True where an element is in it.
    pub(super) const fn has(self, element: Element) -> bool {
        self.0 >> element.atomic_number() & 1 == 1
    }

    /// How many elements it has.
    pub(super) const fn len(self) -> u32 {
        self.0.count_ones()
    }

    pub(super) fn read(text: &str) -> Option<ElementSet> {
        text.split_whitespace()
            .try_fold(0, |set, symbol| Some(set | 1_u128 << Element::from_symbol(symbol)?.atomic_number()))
            .filter(|set| *set != 0)
            .map(ElementSet)
    }
}

/// The sets of elements that sums are taken over.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Sets {
    /// What counts as a metal.
    pub(super) metals: ElementSet,
    /// Metals that plastics hold as filler, pigment or flame retardant.
    pub(super) fillers: ElementSet,
    /// Metals that must have been measured before "no metal" is said.
    pub(super) main_metals: ElementSet,
    /// Elements that must have been measured before a small sum suggests a plastic.
    pub(super) plastic_needs: ElementSet,
    /// What conductors and contacts are made of.
    pub(super) conductors: ElementSet,
}

/// The shares sums are compared with, as mass fractions.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Shares {
    /// Metals at or above this: a metal.
    pub(super) metal_from: MassFraction,
    /// With the silicon of a glass, a sum below this is an ore or a slag and no metal.
    pub(super) metal_whole_from: MassFraction,
    /// A sum above this is no composition.
    pub(super) whole_up_to: MassFraction,
    /// Main metals at or below this, with their detection limits: no metal.
    pub(super) nothing_up_to: MassFraction,
    /// All that is seen of a plastic.
    pub(super) plastic_sum_up_to: MassFraction,
    /// Silicon of a plastic.
    pub(super) plastic_silicon_up_to: MassFraction,
    /// Metals of a plastic that are no filler.
    pub(super) plastic_metals_up_to: MassFraction,
    /// Chlorine at or above this is a main element.
    pub(super) chlorine_from: MassFraction,
    /// Metals of a chlorinated plastic that are no filler.
    pub(super) chlorinated_metals_up_to: MassFraction,
    /// Conductors of a composite.
    pub(super) conductors_from: MassFraction,
    /// Silicon of a laminate.
    pub(super) glass_silicon_from: MassFraction,
    /// Calcium of a laminate.
    pub(super) glass_calcium_from: MassFraction,
    /// Bromine of a laminate.
    pub(super) retardant_bromine_from: MassFraction,
    /// How far outside one range may lie in the nearest family, as a share of the edge (a whole is 1 000 000 mg/kg).
    pub(super) near_miss_of_edge: MassFraction,
}

/// What compositions are compared with.
#[derive(Clone, Debug, Default)]
pub struct Rules {
    pub(super) sets: Sets,
    pub(super) shares: Shares,
    groups: Vec<(AlloyGroup, ElementSet)>,
    families: Vec<Family>,
    pub(super) modes: ModeWords,
}

/// Why a file of compositions could not be read.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unread {
    /// Line, 1-based; 0 where a row is missing.
    pub line: u32,
    /// The cell it is about, or the missing row.
    pub found: String,
}

impl Rules {
    /// Reads a file of compositions.
    ///
    /// # Errors
    /// The first row that is no row: a kind, element, number or group that is not known, a range upside down, a code
    /// twice, no source; or a set or share that is missing.
    pub fn read(text: &str) -> Result<Rules, Unread> {
        let mut rules = Rules::default();
        let mut missing = NAMES.to_vec();
        for (at, line) in text.lines().enumerate() {
            if line.is_empty() || line.starts_with('#') {
                continue;
            }
            let unread = |found: &str| Unread { line: at as u32 + 1, found: found.to_owned() };
            let cells: Vec<&str> = line.split('\t').collect();
            let [kind, code, what, name, source, clause, confidence] = cells[..] else {
                return Err(unread(line));
            };
            if source.is_empty() || !CONFIDENCES.contains(&confidence) {
                return Err(unread(code));
            }
            match kind {
                "set" | "share" => {
                    let place =
                        missing.iter().position(|wanted| *wanted == code).ok_or_else(|| unread(code))?;
                    missing.swap_remove(place);
                    rules.put(code, what).ok_or_else(|| unread(what))?;
                }
                "group" => {
                    let group = group_of_code(code).ok_or_else(|| unread(code))?;
                    let elements = ElementSet::read(what).ok_or_else(|| unread(what))?;
                    if rules.groups.iter().any(|(known, _)| *known == group) {
                        return Err(unread(code));
                    }
                    rules.groups.push((group, elements));
                }
                "family" => {
                    if rules.families.iter().any(|family| family.code == code) {
                        return Err(unread(code));
                    }
                    let (group, ranges, next) = read_family(what).ok_or_else(|| unread(what))?;
                    rules.families.push(Family {
                        code: code.to_owned(),
                        name: name.to_owned(),
                        group,
                        ranges,
                        next,
                        source: source.to_owned(),
                        clause: clause.to_owned(),
                        confidence: confidence.to_owned(),
                    });
                }
                "mode" => {
                    let mode = ModeKind::from_code(code).ok_or_else(|| unread(code))?;
                    rules.modes.add(mode, what).ok_or_else(|| unread(what))?;
                }
                _ => return Err(unread(kind)),
            }
        }
        match missing.first() {
            Some(name) => Err(Unread { line: 0, found: (*name).to_owned() }),
            None => Ok(rules),
        }
    }

    fn put(&mut self, code: &str, what: &str) -> Option<()> {
        let (sets, shares) = (&mut self.sets, &mut self.shares);
        let set = match code {
            "metals" => Some(&mut sets.metals),
            "fillers" => Some(&mut sets.fillers),
            "main_metals" => Some(&mut sets.main_metals),
            "plastic_needs" => Some(&mut sets.plastic_needs),
            "conductors" => Some(&mut sets.conductors),
            _ => None,
        };
        if let Some(set) = set {
            *set = ElementSet::read(what)?;
            return Some(());
        }
        let share = match code {
            "metal_from" => &mut shares.metal_from,
            "metal_whole_from" => &mut shares.metal_whole_from,
            "whole_up_to" => &mut shares.whole_up_to,
            "nothing_up_to" => &mut shares.nothing_up_to,
            "plastic_sum_up_to" => &mut shares.plastic_sum_up_to,
            "plastic_silicon_up_to" => &mut shares.plastic_silicon_up_to,
            "plastic_metals_up_to" => &mut shares.plastic_metals_up_to,
            "chlorine_from" => &mut shares.chlorine_from,
            "chlorinated_metals_up_to" => &mut shares.chlorinated_metals_up_to,
            "conductors_from" => &mut shares.conductors_from,
            "glass_silicon_from" => &mut shares.glass_silicon_from,
            "glass_calcium_from" => &mut shares.glass_calcium_from,
            "retardant_bromine_from" => &mut shares.retardant_bromine_from,
            "near_miss_of_edge" => &mut shares.near_miss_of_edge,
            _ => return None,
        };
        *share = quantity::parse_with_unit(what).ok().filter(|share| *share > MassFraction::ZERO)?;
        Some(())
    }

    /// The families, in the file's order.
    pub fn families(&self) -> &[Family] {
        &self.families
    }

    /// The alloy group of a main element.
    pub fn group_of(&self, main: Element) -> Option<AlloyGroup> {
        self.groups.iter().find(|(_, elements)| elements.has(main)).map(|(group, _)| *group)
    }
}

/// Every set and share a file must have.
const NAMES: [&str; 19] = [
    "metals",
    "fillers",
    "main_metals",
    "plastic_needs",
    "conductors",
    "metal_from",
    "metal_whole_from",
    "whole_up_to",
    "nothing_up_to",
    "plastic_sum_up_to",
    "plastic_silicon_up_to",
    "plastic_metals_up_to",
    "chlorine_from",
    "chlorinated_metals_up_to",
    "conductors_from",
    "glass_silicon_from",
    "glass_calcium_from",
    "retardant_bromine_from",
    "near_miss_of_edge",
];

/// How sure a row may be.
const CONFIDENCES: [&str; 6] = [
    "confirmed",
    "restated by a secondary source",
    "from memory",
    "derived",
    "own choice",
    "common practice, no source",
];

/// The group of a code.
pub(super) fn group_of_code(code: &str) -> Option<AlloyGroup> {
    AlloyGroup::ALL.iter().copied().find(|group| group.code() == code)
}

/// The built-in rules, read once.
pub fn built_in() -> &'static Rules {
    static RULES: OnceLock<Rules> = OnceLock::new();
    // A test holds that the file can be read; nothing is suggested without it.
    RULES.get_or_init(|| Rules::read(BUILT_IN).unwrap_or_default())
}

/// A mass fraction from a number in percent.
pub(super) fn percent(text: &str) -> Option<MassFraction> {
    quantity::parse_with_unit(&format!("{text} %")).ok()
}

/// The edges of a range in words: `0.20 to 0.35`, `to 0.2`, `0.20 to 0.35 -0.02 +0.03`.
pub(super) fn read_range(element: Element, words: &[&str]) -> Option<Range> {
    let (low, rest) = match words {
        ["to", rest @ ..] => (MassFraction::ZERO, rest),
        [low, "to", rest @ ..] => (percent(low)?, rest),
        _ => return None,
    };
    let (high, down, up) = match rest {
        [high] => (percent(high)?, MassFraction::ZERO, MassFraction::ZERO),
        [high, down, up] => {
            (percent(high)?, percent(down.strip_prefix('-')?)?, percent(up.strip_prefix('+')?)?)
        }
        _ => return None,
    };
    let outer_low = MassFraction::from_units(low.units() - down.units());
    (MassFraction::ZERO <= outer_low && low < high).then_some(Range {
        element,
        low,
        high,
        outer_low,
        outer_high: high.plus(up),
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_built_in_file_can_be_read() {
        let rules = Rules::read(BUILT_IN).unwrap();
        assert_eq!(rules.families().len(), 16);
        assert_eq!(rules.groups.len(), AlloyGroup::ALL.len());
        assert_eq!(rules.sets.main_metals.len(), 8);
        assert_eq!(rules.shares.metal_from, MassFraction::from_mg_per_kg(500_000));
        assert_eq!(rules.group_of(Element::PB), Some(AlloyGroup::Lead));
        assert_eq!(rules.group_of(Element::CD), None);
        assert_eq!(built_in().families(), rules.families());
    }

    fn unread(line: &str) -> Unread {
        let whole = format!("{BUILT_IN}{line}\n");
        Rules::read(&whole).expect_err(line)
    }

    #[test]
    fn a_row_that_is_no_row_is_refused_with_its_line() {
        let last = BUILT_IN.lines().count() as u32 + 1;
        for (line, found) in [
            ("set\tmetals\tFe\t\ts\t\tconfirmed", "metals"),
            ("share\tmetals_up_to\t5 %\t\ts\t\tconfirmed", "metals_up_to"),
            ("group\tsteel\tFe\t\ts\t\tconfirmed", "steel"),
            ("group\twood\tC\t\ts\t\tconfirmed", "wood"),
            ("family\t12L14\tsteel: Pb 1 to 2\tn\ts\t\tconfirmed", "12L14"),
            ("family\tnew\tsteel: Pb 2 to 1\tn\ts\t\tconfirmed", "steel: Pb 2 to 1"),
            ("family\tnew\tsteel: Pb 1 to 1\tn\ts\t\tconfirmed", "steel: Pb 1 to 1"),
            ("family\tnew\tsteel: Xx 1 to 2\tn\ts\t\tconfirmed", "steel: Xx 1 to 2"),
            ("family\tnew\tsteel: Pb 1 to\tn\ts\t\tconfirmed", "steel: Pb 1 to"),
            ("family\tnew\tsteel: Pb 1 to 2 -3 +1\tn\ts\t\tconfirmed", "steel: Pb 1 to 2 -3 +1"),
            ("family\tnew\twood: Pb 1 to 2\tn\ts\t\tconfirmed", "wood: Pb 1 to 2"),
            ("family\tnew\tsteel: Zn next\tn\ts\t\tconfirmed", "steel: Zn next"),
            ("family\tnew\tsteel: Pb 1 to 2\tn\t\t\tconfirmed", "new"),
            ("family\tnew\tsteel: Pb 1 to 2\tn\ts\t\tquite sure", "new"),
            ("mode\tliquid\toil\t\ts\t\tconfirmed", "liquid"),
            ("mode\tsoil\tplastic\t\ts\t\tconfirmed", "plastic"),
            ("mode\tsoil\t\t\ts\t\tconfirmed", ""),
            ("colour\tred\tred\t\ts\t\tconfirmed", "colour"),
        ] {
            assert_eq!(unread(line), Unread { line: last, found: found.to_owned() }, "{line}");
        }
        assert_eq!(unread("set\tmetals").found, "set\tmetals");
    }

    #[test]
    fn a_set_or_share_that_is_missing_or_nothing_is_refused() {
        for name in NAMES {
            let is_row = |line: &&str| line.split('\t').nth(1) != Some(name);
            let lines: Vec<&str> = BUILT_IN.lines().filter(is_row).collect();
            let found = Rules::read(&lines.join("\n")).expect_err(name);
            assert_eq!(found, Unread { line: 0, found: name.to_owned() });
        }
        for (from, to) in [
            ("metal_from\t50 %", "metal_from\t0 %"),
            ("metal_from\t50 %", "metal_from\thalf"),
            ("conductors\tAl Fe", "conductors\tAl Xx"),
            ("conductors\tAl Fe Ni Cu Ag Sn Au", "conductors\t"),
        ] {
            assert!(BUILT_IN.contains(from));
            let found = Rules::read(&BUILT_IN.replace(from, to)).expect_err(to).found;
            let (_, what) = to.split_once('\t').unwrap();
            assert!(found.starts_with(what), "{to}: {found}");
        }
    }

    #[test]
    fn an_element_named_twice_is_in_a_set_once() {
        assert_eq!(ElementSet::read("Fe Cu Fe"), ElementSet::read("Cu Fe"));
        assert_eq!(ElementSet::read("Fe Cu").map(ElementSet::len), Some(2));
    }

    #[test]
    fn edges_are_exact() {
        let range = read_range(Element::PB, &["0.20", "to", "0.35", "-0.02", "+0.03"]).unwrap();
        let mg = MassFraction::from_mg_per_kg;
        assert_eq!(
            (range.outer_low, range.low, range.high, range.outer_high),
            (mg(1800), mg(2000), mg(3500), mg(3800))
        );
        let open = read_range(Element::PB, &["to", "0.2"]).unwrap();
        assert_eq!(
            (open.outer_low, open.low, open.high, open.outer_high),
            (mg(0), mg(0), mg(2000), mg(2000))
        );
        let widest = read_range(Element::PB, &["0.2", "to", "0.35", "-0.2", "+0"]);
        assert!(widest.is_some());
    }
}
