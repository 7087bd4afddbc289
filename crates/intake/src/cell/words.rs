//! Cells that are words: not detected, not measured, below.

use std::collections::BTreeMap;
use std::sync::OnceLock;

use crate::heading::folding;
use crate::heading::vocabulary::cell_words;

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    /// Not detected; `limit` where the word names a limit, so that a number may follow it.
    NotDetected {
        limit: bool,
    },
    NotMeasured,
}

/// The word a cell is, however it is spaced.
pub(super) fn word(text: &str) -> Option<Word> {
    static WORDS: OnceLock<BTreeMap<String, Word>> = OnceLock::new();
    WORDS
        .get_or_init(|| {
            cell_words()
                .filter_map(|(meaning, word, note)| {
                    let meaning = match meaning {
                        "not_detected" => Word::NotDetected { limit: note == "limit" },
                        "not_measured" => Word::NotMeasured,
                        _ => return None,
                    };
                    Some((folding::cell(word), meaning))
                })
                .collect()
        })
        .get(&folding::cell(text))
        .copied()
}

/// What is left of a text when a word for "below" is taken off its front or its end (`unter 5`, `5 未満`).
pub(super) fn without_below(text: &str) -> Option<&str> {
    static WORDS: OnceLock<Vec<String>> = OnceLock::new();
    let words = WORDS.get_or_init(|| {
        let mut words: Vec<String> = cell_words()
            .filter(|(meaning, ..)| *meaning == "below")
            .map(|(_, word, _)| folding::plain(word).to_lowercase())
            .collect();
        // The longer first: `kleiner als` before `kleiner`.
        words.sort_by_key(|word| std::cmp::Reverse(word.len()));
        words
    });
    words.iter().find_map(|word| {
        let front = text.get(..word.len()).filter(|front| front.to_lowercase() == *word);
        let end_at = text.len().checked_sub(word.len());
        let end = end_at.and_then(|at| text.get(at..)).filter(|end| end.to_lowercase() == *word);
        match (front, end, end_at) {
            (Some(_), ..) => text.get(word.len()..),
            (None, Some(_), Some(at)) => text.get(..at),
            _ => None,
        }
    })
}
