//! Which readings of a source are repeats of one spot.
//!
//! Repeats are readings of the same sample id on the same spot, by the same instrument in the same mode, of the same
//! unit, part, material, lot, supplier and class. Sharing a part, a lot and a class alone is no repeat: those are other
//! spots, which are never averaged.

use std::collections::BTreeSet;
use std::hash::{BuildHasher, BuildHasherDefault};

use hashbrown::HashTable;
use rustc_hash::FxHasher;

use crate::acts::RepeatsRule;
use crate::identity::Identity;
use crate::reading::Source;
use crate::text_pool::TextId;

/// Everything two readings must share to be repeats.
const SHARED: [Identity; 10] = [
    Identity::Id,
    Identity::Spot,
    Identity::Unit,
    Identity::Part,
    Identity::Material,
    Identity::Lot,
    Identity::Supplier,
    Identity::Class,
    Identity::Instrument,
    Identity::Mode,
];

const NO_GROUP: u32 = u32::MAX;

/// The repeats of one source: groups of two or more rows, in order of their first row.
#[derive(Clone, Debug, Default)]
pub struct Repeats {
    groups: Vec<Vec<u32>>,
    group_of: Vec<u32>,
}

impl Repeats {
    /// Finds the repeats of a source.
    ///
    /// A reading without a sample id is never a repeat. One without a spot is only where the rule says that the same id
    /// is the same spot. One that a person set aside, by its line, is none either: it is put together with nothing.
    pub fn find(source: &Source, rule: RepeatsRule, set_aside: &BTreeSet<u32>) -> Repeats {
        let readings = &source.readings;
        let spots = (0..readings.len()).any(|row| readings.identity_id(Identity::Spot, row).is_some());
        if rule == RepeatsRule::Never || (rule == RepeatsRule::SameSpot && !spots) {
            return Repeats::default();
        }
        let key = |row: u32| SHARED.map(|identity| readings.identity_id(identity, row as usize));
        let hasher = BuildHasherDefault::<FxHasher>::default();
        // Looked up only, never walked, so its order cannot leak into findings.
        let mut first_rows: HashTable<u32> = HashTable::new();
        let mut first_of = vec![NO_GROUP; readings.len()];
        let mut repeated = false;
        for row in 0..readings.len() as u32 {
            let wanted = key(row);
            let [id, spot, ..] = wanted;
            let aside = !set_aside.is_empty() && set_aside.contains(&readings.line(row as usize));
            if aside || id == TextId::NONE || (rule == RepeatsRule::SameSpot && spot == TextId::NONE) {
                continue;
            }
            let entry = first_rows.entry(
                hasher.hash_one(wanted),
                |known| key(*known) == wanted,
                |known| hasher.hash_one(key(*known)),
            );
            let first = *entry.or_insert(row).get();
            repeated |= first != row;
            if let Some(place) = first_of.get_mut(row as usize) {
                *place = first;
            }
        }
        if !repeated {
            return Repeats::default();
        }
        Repeats::from_first_rows(&first_of)
    }

    fn from_first_rows(first_of: &[u32]) -> Repeats {
        let mut members = vec![0_u32; first_of.len()];
        for first in first_of {
            if let Some(count) = members.get_mut(*first as usize) {
                *count += 1;
            }
        }
        let mut groups: Vec<Vec<u32>> = Vec::new();
        let mut group_of = vec![NO_GROUP; first_of.len()];
        for (row, first) in first_of.iter().enumerate() {
            if members.get(*first as usize).is_none_or(|count| *count < 2) {
                continue;
            }
            if *first as usize == row {
                group_of[row] = groups.len() as u32;
                groups.push(Vec::new());
            } else if let Some(group) = group_of.get(*first as usize).copied() {
                group_of[row] = group;
            }
            if let Some(group) = groups.get_mut(group_of[row] as usize) {
                group.push(row as u32);
            }
        }
        Repeats { groups, group_of }
    }

    /// The groups, in order of their first rows.
    pub fn groups(&self) -> &[Vec<u32>] {
        &self.groups
    }

    /// True for the last row of a group in file order.
    pub fn is_last(&self, group: usize, row: usize) -> bool {
        self.groups.get(group).and_then(|rows| rows.last()).is_some_and(|last| *last as usize == row)
    }

    /// The group a row belongs to.
    pub fn group_of(&self, row: usize) -> Option<usize> {
        self.group_of.get(row).filter(|group| **group != NO_GROUP).map(|group| *group as usize)
    }
}
