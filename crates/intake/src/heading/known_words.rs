//! How much of a text is vocabulary that no ASCII text can spell: what tells one encoding from another.

use super::folding;
use super::tokens;
use super::vocabulary;

/// No word is longer, in bytes.
const LONGEST: usize = 120;

/// How many words of a decoded text belong to the vocabulary and hold a character beyond ASCII: such words are the
/// only ones that differ between encodings.
///
/// Digits and points around a word are no part of it (`12±3`, `0.5µg/g`).
pub fn known_words(text: &str) -> usize {
    let parts = |c: char| {
        c.is_whitespace()
            || matches!(c, ',' | ';' | '|' | '"' | '(' | ')' | '[' | ']' | '_' | ':' | '=' | '/' | '\'')
            || matches!(c, '（' | '）' | '：' | '，' | '【' | '】' | '、')
    };
    text.split(parts)
        .map(|word| {
            word.trim_matches(|c: char| c.is_ascii_digit() || matches!(c, '.' | '-' | '+' | '<' | '>' | '%'))
        })
        .filter(|word| !word.is_ascii() && word.len() <= LONGEST)
        .map(|word| {
            if vocabulary::is_accented_word(&word.to_lowercase()) {
                1
            } else if !word.chars().all(folding::is_east_asian) {
                0
            } else if vocabulary::whole_heading(word).is_some() {
                1
            } else {
                // A run of known words without spaces between them; a word of one character may be chance.
                tokens::segments(word).map_or(0, |words| words.len())
            }
        })
        .sum()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn words_of_result_tables_are_counted_where_they_are_decoded_rightly() {
        for (text, words) in [
            ("Probe;Gerät;Prüfer;Pb µg/g;±", 4),
            ("Probe;GerÃ¤t;PrÃ¼fer;Pb Âµg/g;Â±", 0),
            ("échantillon,étain,n° de lot", 2),
            ("样品编号,铅含量(mg/kg),镉,检出限", 5),
            ("試料名,鉛,カドミウム,測定日", 4),
            ("시료명,납,카드뮴,비고", 4),
            ("12.3±0.5", 1),
            ("Sample,Pb,Cd", 0),
            ("12,3,45,6", 0),
        ] {
            assert_eq!(known_words(text), words, "{text}");
        }
    }
}
