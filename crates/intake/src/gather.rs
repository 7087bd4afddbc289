//! Rows that make one reading together: the rows of a long table, the spectra of one measurement.

use hashbrown::HashMap;
use rustc_hash::FxBuildHasher;

/// Which readings the rows of a block have begun, by what names them.
#[derive(Default)]
pub(crate) struct Gather {
    by_key: HashMap<Vec<u8>, Vec<u32>, FxBuildHasher>,
    last_key: Vec<u8>,
    /// The reading the row before went into.
    last: Option<u32>,
    /// Where that reading stands among those of its key, so that nobody searches for it in a key of many rows.
    last_at: usize,
    /// What the rows of that reading were told apart by: the spectrum, or the name of the element as written.
    parts: Vec<Vec<u8>>,
}

impl Gather {
    /// The reading a row with this key belongs to, if one has room for it; a new one where not.
    ///
    /// Right after a row with the same key, the reading that row went into is asked first, then later ones: a table
    /// sorted by reading repeats all its elements for the next. Coming back to a key, the first with room is asked:
    /// a table sorted by element names every reading again.
    pub(crate) fn reading(&self, key: &[u8], has_room: &dyn Fn(u32) -> bool) -> Option<u32> {
        let known = self.by_key.get(key)?;
        let from = if self.last_with(key).is_some() { self.last_at } else { 0 };
        known.get(from..)?.iter().copied().find(|reading| has_room(*reading))
    }

    /// The reading of the row before, if it had this key.
    pub(crate) fn last_with(&self, key: &[u8]) -> Option<u32> {
        self.last.filter(|_| self.last_key == key)
    }

    /// True where the reading of the row before already has a part of this name.
    pub(crate) fn has_part(&self, part: &[u8]) -> bool {
        self.parts.iter().any(|known| known == part)
    }

    /// The parts of the reading of the row before.
    pub(crate) fn parts(&self) -> &[Vec<u8>] {
        &self.parts
    }

    /// Remembers where a row went.
    pub(crate) fn went(&mut self, key: &[u8], reading: u32, is_new: bool, part: &[u8]) {
        let from = if self.last_with(key).is_some() { self.last_at } else { 0 };
        self.last_at = match self.by_key.get_mut(key) {
            Some(known) if is_new => {
                known.push(reading);
                known.len() - 1
            }
            Some(known) => {
                let later = known.get(from..).unwrap_or(&[]);
                later.iter().position(|one| *one == reading).map_or(from, |ahead| from + ahead)
            }
            None => {
                self.by_key.insert(key.to_vec(), vec![reading]);
                0
            }
        };
        if self.last != Some(reading) {
            self.parts.clear();
        }
        self.parts.push(part.to_vec());
        if self.last_key != key {
            self.last_key.clear();
            self.last_key.extend_from_slice(key);
        }
        self.last = Some(reading);
    }
}
