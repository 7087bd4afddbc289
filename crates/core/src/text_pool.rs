//! Text kept once, in order of first appearance, and handed round as a small number.

use std::hash::{BuildHasher, BuildHasherDefault};

use hashbrown::HashTable;
use rustc_hash::FxHasher;

/// The number of a text in a [`TextPool`]; zero is "no text".
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Default)]
pub struct TextId(u32);

impl TextId {
    /// No text: a blank cell, or no column.
    pub const NONE: TextId = TextId(0);

    /// The number itself; 0 is no text.
    pub const fn number(self) -> usize {
        self.0 as usize
    }

    /// True where there is a text.
    pub const fn is_some(self) -> bool {
        self.0 != 0
    }
}

/// Interned text. The table is only ever looked up, never walked, so its order cannot leak into findings.
#[derive(Clone, Default)]
pub struct TextPool {
    bytes: String,
    ends: Vec<usize>,
    table: HashTable<u32>,
}

impl std::fmt::Debug for TextPool {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "TextPool of {} texts", self.ends.len())
    }
}

impl TextPool {
    /// The number of `text`, which is kept if it is new. Empty text is [`TextId::NONE`].
    pub fn intern(&mut self, text: &str) -> TextId {
        if text.is_empty() {
            return TextId::NONE;
        }
        let hash = hash_of(text);
        let (bytes, ends) = (&self.bytes, &self.ends);
        if let Some(found) = self.table.find(hash, |&id| slice(bytes, ends, id) == text) {
            return TextId(*found);
        }
        self.bytes.push_str(text);
        self.ends.push(self.bytes.len());
        let id = self.ends.len() as u32;
        let (bytes, ends) = (&self.bytes, &self.ends);
        self.table.insert_unique(hash, id, |&id| hash_of(slice(bytes, ends, id)));
        TextId(id)
    }

    /// The same as [`TextPool::intern`], asking first whether the text is that of `guess`.
    pub fn intern_near(&mut self, text: &str, guess: TextId) -> TextId {
        if self.get(guess) == Some(text) { guess } else { self.intern(text) }
    }

    /// How many texts there are; their numbers run from 1 to this.
    pub fn len(&self) -> usize {
        self.ends.len()
    }

    /// True where there are none.
    pub fn is_empty(&self) -> bool {
        self.ends.is_empty()
    }

    /// Every text in order of its number, from 1.
    pub fn texts(&self) -> impl Iterator<Item = &str> {
        (1..=self.ends.len() as u32).map(|id| slice(&self.bytes, &self.ends, id))
    }

    /// The text of a number; `None` for [`TextId::NONE`].
    pub fn get(&self, id: TextId) -> Option<&str> {
        id.is_some().then(|| slice(&self.bytes, &self.ends, id.0))
    }
}

fn hash_of(text: &str) -> u64 {
    BuildHasherDefault::<FxHasher>::default().hash_one(text)
}

fn slice<'a>(bytes: &'a str, ends: &[usize], id: u32) -> &'a str {
    let at = id as usize - 1;
    let start = if at == 0 { 0 } else { ends.get(at - 1).copied().unwrap_or(0) };
    ends.get(at).and_then(|&end| bytes.get(start..end)).unwrap_or("")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_text_has_one_number_and_comes_back_whole() {
        let mut pool = TextPool::default();
        let first = pool.intern("cable sheath");
        let second = pool.intern("Ω 1");
        assert_eq!(pool.intern("cable sheath"), first);
        assert_ne!(first, second);
        assert_eq!(pool.get(second), Some("Ω 1"));
        assert_eq!(pool.intern_near("cable sheath", first), first);
        assert_eq!(pool.intern_near("cable sheath", second), first);
        assert_eq!(pool.intern_near("", first), TextId::NONE);
        assert_eq!(pool.intern(""), TextId::NONE);
        assert_eq!(pool.get(TextId::NONE), None);
    }
}
