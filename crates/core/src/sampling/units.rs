//! Physical units of a lot, counted by what was found on them.

use std::collections::BTreeMap;

/// What was found on a unit, by the worst of its readings. Declared from best to worst, so that the larger one counts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum UnitState {
    /// Everything screened on it is below limit or does not apply.
    Conforming,
    /// Something is undecided or was not measured. Such a unit never counts as conforming.
    Undecided,
    /// Something is over limit.
    Over,
}

/// Units by name, each as its worst reading has it.
#[derive(Clone, Debug, Default)]
pub struct Units {
    seen: BTreeMap<String, UnitState>,
}

impl Units {
    /// Adds what one reading found on a unit.
    pub fn add(&mut self, unit: &str, seen: UnitState) {
        self.put(name_of_unit(unit), seen);
    }

    fn put(&mut self, name: String, seen: UnitState) {
        let known = self.seen.entry(name).or_insert(seen);
        *known = seen.max(*known);
    }

    /// Adds what was found elsewhere; the same name is the same unit.
    pub fn merge(&mut self, other: Units) {
        for (name, seen) in other.seen {
            self.put(name, seen);
        }
    }

    /// How many units were measured.
    pub fn measured(&self) -> u64 {
        self.seen.len() as u64
    }

    /// How many units are as the one given.
    pub fn count(&self, wanted: UnitState) -> u64 {
        self.seen.values().filter(|seen| **seen == wanted).count() as u64
    }
}

/// The name a unit is counted under. One piece written two ways is one piece, because counting it twice would fill a plan: `A-07`
/// is `a-7`.
pub fn name_of_unit(unit: &str) -> String {
    let mut name = String::with_capacity(unit.len());
    let mut characters = unit.trim().chars().flat_map(char::to_lowercase).peekable();
    let mut after_digit = false;
    while let Some(character) = characters.next() {
        let more = characters.peek().is_some_and(char::is_ascii_digit);
        if character == '0' && more && !after_digit {
            continue;
        }
        after_digit = character.is_ascii_digit();
        name.push(character);
    }
    name
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_piece_written_two_ways_is_one_piece() {
        for (one, other) in [("A-07", "a-7"), ("001", "1"), (" 7", "7"), ("0", "00"), ("x10", "X010")] {
            assert_eq!(name_of_unit(one), name_of_unit(other), "{one} {other}");
        }
        for (one, other) in [("10", "1"), ("100", "10"), ("A-7", "B-7"), ("0", ""), ("1-0", "1-")] {
            assert_ne!(name_of_unit(one), name_of_unit(other), "{one} {other}");
        }
    }

    #[test]
    fn a_unit_is_as_its_worst_reading() {
        let mut units = Units::default();
        for (unit, seen) in [
            ("1", UnitState::Conforming),
            ("01", UnitState::Undecided),
            ("2", UnitState::Over),
            ("2", UnitState::Undecided),
            ("3", UnitState::Conforming),
        ] {
            units.add(unit, seen);
        }
        let mut more = Units::default();
        more.add("3", UnitState::Over);
        more.add("4", UnitState::Conforming);
        units.merge(more);
        let counts =
            [UnitState::Conforming, UnitState::Undecided, UnitState::Over].map(|seen| units.count(seen));
        assert_eq!((units.measured(), counts), (4, [1, 1, 2]));
    }
}
