//! Words by which a decoded text shows itself to be a table of results, for the tests: in use are those of the headings.

use std::collections::BTreeSet;
use std::sync::OnceLock;

/// Signs that count wherever they stand: no other encoding of the same bytes has them by chance beside what follows.
const SIGNS: [&str; 12] = ["±", "µm", "μm", "µg/g", "μg/g", "µg/kg", "μg/kg", "°C", "℃", "mm²", "cm²", "cm³"];

fn words() -> &'static BTreeSet<&'static str> {
    static WORDS: OnceLock<BTreeSet<&'static str>> = OnceLock::new();
    WORDS.get_or_init(|| {
        include_str!("../../data/encoding_words.tsv")
            .lines()
            .filter(|line| !line.starts_with('#'))
            .flat_map(|line| line.split('\t').skip(1))
            .collect()
    })
}

/// How many words of result tables stand in a text: a small vocabulary of its own, enough to tell encodings apart.
pub(crate) fn words_of_result_tables(text: &str) -> usize {
    let signs: usize = SIGNS.iter().map(|sign| text.matches(sign).count()).sum();
    let words = text
        .split(|c: char| !c.is_alphabetic())
        .filter(|word| !word.is_ascii())
        .filter(|word| {
            // `样品A` and `Pb铅` are written as one word.
            let without_ascii = word.trim_matches(|c: char| c.is_ascii());
            words().contains(without_ascii) || words().contains(word.to_lowercase().as_str())
        })
        .count();
    signs + words
}
