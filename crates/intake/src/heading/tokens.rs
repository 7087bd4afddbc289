//! A heading taken apart into words: at spaces, brackets and underscores, and where things are glued together that
//! belong apart (`Pb%`, `Pb-ppm`, `PbLa1`, `铅含量`, `Bleigehalt`).

use plumbline_core::quantity::Unit;

use super::folding;
use super::named::{self, By};
use super::vocabulary::{self, WordKind};

/// No heading is longer, in bytes: a longer text is prose, and is not taken apart.
pub(crate) const LONGEST_HEADING: usize = 256;

/// The words of a heading, in plain characters; none for what is too long for one.
pub(crate) fn tokens(heading: &str) -> Vec<String> {
    if heading.len() > LONGEST_HEADING {
        return Vec::new();
    }
    let spaced = folding::plain(heading).replace("+/-", " +/- ").replace('±', " ± ");
    let chars: Vec<char> = spaced.chars().collect();
    let mut tokens = Vec::new();
    let mut word = String::new();
    for (at, c) in chars.iter().enumerate() {
        let digit = |at: Option<usize>| at.and_then(|at| chars.get(at)).is_some_and(char::is_ascii_digit);
        // A comma between digits is a decimal mark: `k=1,96`.
        let decimal = *c == ',' && digit(at.checked_sub(1)) && digit(at.checked_add(1));
        let parts = c.is_whitespace()
            || matches!(c, '(' | ')' | '[' | ']' | '{' | '}' | '_' | ';' | ':' | '|')
            || *c == ',' && !decimal;
        // Scripts meet without a space between them.
        let meet = word.chars().last().is_some_and(|last| {
            last.is_alphanumeric()
                && c.is_alphanumeric()
                && folding::is_east_asian(last) != folding::is_east_asian(*c)
        });
        if parts || meet {
            unglue(&word, &mut tokens);
            word.clear();
        }
        if !parts {
            word.push(*c);
        }
    }
    unglue(&word, &mut tokens);
    tokens
}

fn unglue(word: &str, tokens: &mut Vec<String>) {
    if word.is_empty() {
        return;
    }
    let known = named::named(word).is_some()
        || vocabulary::heading_word(&folding::word(word)).is_some()
        || Unit::from_word(word).is_some();
    let parts = if known { None } else { glued(word) };
    match parts {
        Some(parts) => tokens.extend(parts),
        None => tokens.push(word.to_owned()),
    }
}

fn glued(word: &str) -> Option<Vec<String>> {
    let names = |part: &str| named::named(part).is_some();
    if let Some((symbol, line)) = named::with_line(word) {
        return Some(vec![symbol.to_owned(), line.to_owned()]);
    }
    if let Some(symbol) = word.strip_suffix('%').filter(|before| names(before)) {
        return Some(vec![symbol.to_owned(), "%".to_owned()]);
    }
    // `/ppm` behind a bracket, `Pb/ppm`; a ratio of two elements stays one word that nothing knows.
    if let Some((before, after)) = word.split_once('/')
        && !after.is_empty()
        && (before.is_empty() || names(before))
    {
        let two = match (named::named(before), named::named(after)) {
            (Some((one, by)), Some((other, other_by))) => one != other || by == other_by,
            _ => false,
        };
        let mut parts: Vec<String> = if before.is_empty() { Vec::new() } else { vec![before.to_owned()] };
        parts.push("/".to_owned());
        parts.push(after.to_owned());
        return if two { None } else { Some(parts) };
    }
    for mark in ['-', '.'] {
        if word.contains(mark) && word.split(mark).next().is_some_and(names) {
            return Some(word.split(mark).filter(|part| !part.is_empty()).map(str::to_owned).collect());
        }
    }
    if word.chars().any(folding::is_east_asian) {
        return segments(word);
    }
    // `PbPPM`, `Bleigehalt`: a symbol with a unit of letters, a name with a word for a value.
    word.char_indices().map(|(at, _)| at).skip(1).find_map(|at| {
        let (name, rest) = word.split_at(at);
        let by = named::named(name)?.1;
        let fits = match by {
            By::Symbol => rest.len() > 2 && Unit::from_word(rest).is_some(),
            By::Name => {
                rest.len() > 4
                    && vocabulary::heading_word(&folding::word(rest))
                        .is_some_and(|word| word.kind == WordKind::Value)
            }
            By::Oxide | By::Isotope => false,
        };
        fits.then(|| vec![name.to_owned(), rest.to_owned()])
    })
}

/// Longest word of the vocabulary in a script without spaces, in characters.
const LONGEST_WORD: usize = 16;

/// Words of a script without spaces, the longest known first; nothing where a rest stays unknown.
pub(crate) fn segments(word: &str) -> Option<Vec<String>> {
    let starts: Vec<usize> = word.char_indices().map(|(at, _)| at).chain([word.len()]).collect();
    let last = starts.len().checked_sub(1)?;
    // From the end: the longest word at each place from which the rest is known too.
    let mut next: Vec<Option<usize>> = vec![None; starts.len()];
    for from in (0..last).rev() {
        let found = (from + 1..=last.min(from + LONGEST_WORD)).rev().find(|to| {
            let reaches_end = *to == last || next.get(*to).is_some_and(Option::is_some);
            reaches_end && between(word, &starts, from, *to).is_some_and(is_known)
        });
        if let Some(place) = next.get_mut(from) {
            *place = found;
        }
    }
    let mut parts = Vec::new();
    let mut at = 0;
    while at < last {
        let to = (*next.get(at)?)?;
        parts.push(between(word, &starts, at, to)?.to_owned());
        at = to;
    }
    Some(parts)
}

fn between<'a>(word: &'a str, starts: &[usize], from: usize, to: usize) -> Option<&'a str> {
    word.get(*starts.get(from)?..*starts.get(to)?)
}

fn is_known(part: &str) -> bool {
    let folded = folding::word(part);
    vocabulary::element_named(&folded).is_some() || vocabulary::heading_word(&folded).is_some()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn headings_fall_apart_into_words() {
        for (heading, words) in [
            ("Pb (ppm)", vec!["Pb", "ppm"]),
            ("Pb_mg_kg", vec!["Pb", "mg", "kg"]),
            ("Pb.mg.kg", vec!["Pb", "mg", "kg"]),
            ("Pb..ppm.", vec!["Pb", "ppm"]),
            ("Pb%", vec!["Pb", "%"]),
            ("Pb±", vec!["Pb", "±"]),
            ("Pb ±2σ", vec!["Pb", "±", "2σ"]),
            ("PbPPM", vec!["Pb", "PPM"]),
            ("Pb/ppm", vec!["Pb", "/", "ppm"]),
            ("Pb/Cd", vec!["Pb/Cd"]),
            ("208Pb/206Pb", vec!["208Pb/206Pb"]),
            ("w(Pb)/(mg/kg)", vec!["w", "Pb", "/", "mg/kg"]),
            ("Pb（ppm）", vec!["Pb", "ppm"]),
            ("铅含量(mg/kg)", vec!["铅", "含量", "mg/kg"]),
            ("Pb含量", vec!["Pb", "含量"]),
            ("六价铬", vec!["六价", "铬"]),
            ("溴化物", vec!["溴化物"]),
            ("Bleigehalt", vec!["Blei", "gehalt"]),
            ("Pb S.D.", vec!["Pb", "S.D."]),
            ("Pb k=1,96", vec!["Pb", "k=1,96"]),
        ] {
            assert_eq!(tokens(heading), words, "{heading}");
        }
    }
}
