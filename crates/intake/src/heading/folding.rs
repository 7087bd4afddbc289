//! One spelling for what people type in many: full-width and raised characters, accents, the several minus signs.

/// Letters with marks and what they are compared as; lower case, the upper case follows from it.
const PLAIN: [(&str, &str); 17] = [
    ("áàâäãåā", "a"),
    ("ç", "c"),
    ("éèêëē", "e"),
    ("íìîï", "i"),
    ("ñ", "n"),
    ("óòôöõøº", "o"),
    ("úùûüůµμ", "u"),
    ("ýÿ", "y"),
    ("ß", "ss"),
    ("æ", "ae"),
    ("œ", "oe"),
    ("ª", "a"),
    ("č", "c"),
    ("š", "s"),
    ("ž", "z"),
    ("ř", "r"),
    ("№", "no"),
];

/// A text in plain characters, its case kept: full-width forms, raised and lowered digits, accents, minus signs and
/// the brackets of East Asian print become what a plain keyboard types.
pub(crate) fn plain(text: &str) -> String {
    if text.is_ascii() {
        return text.to_owned();
    }
    let mut out = String::with_capacity(text.len());
    for c in text.chars() {
        match c {
            _ if c.is_ascii() => out.push(c),
            '\u{FF01}'..='\u{FF5E}' => out.extend(char::from_u32(c as u32 - 0xFEE0)),
            '⁰' => out.push('0'),
            '¹' => out.push('1'),
            '²' => out.push('2'),
            '³' => out.push('3'),
            '⁴'..='⁹' => out.extend(char::from_u32(c as u32 - '⁴' as u32 + '4' as u32)),
            '₀'..='₉' => out.extend(char::from_u32(c as u32 - '₀' as u32 + '0' as u32)),
            '⁺' => out.push('+'),
            '⁻' | '\u{2212}' | '\u{2010}'..='\u{2015}' => out.push('-'),
            '【' | '〔' | '「' | '『' | '《' | '〈' => out.push('('),
            '】' | '〕' | '」' | '』' | '》' | '〉' => out.push(')'),
            '、' => out.push(','),
            '﹪' | '٪' => out.push('%'),
            '’' | '‘' | '´' => out.push('\''),
            '⁄' | '∕' => out.push('/'),
            // Marks that stand on the letter before, and characters of no width.
            '\u{0300}'..='\u{036F}' | '\u{200B}'..='\u{200F}' | '\u{2060}' | '\u{FEFF}' => {}
            _ if c.is_whitespace() => out.push(' '),
            _ => {
                let lower = c.to_lowercase().next().unwrap_or(c);
                match PLAIN.iter().find(|(letters, _)| letters.contains(lower)) {
                    Some((_, plain)) if c.is_uppercase() => {
                        out.extend(plain.chars().flat_map(char::to_uppercase));
                    }
                    Some((_, plain)) => out.push_str(plain),
                    None => out.push(c),
                }
            }
        }
    }
    out
}

/// A whole heading as it is compared: plain, lower case, letters and digits; a `<` is kept, it changes the meaning.
pub(crate) fn letters_and_digits(text: &str) -> String {
    plain(text).chars().filter(|c| c.is_alphanumeric() || *c == '<').flat_map(char::to_lowercase).collect()
}

/// One word of a heading as it is compared: plain, lower case, without the points and hyphens that come and go
/// (`err.`, `2-sigma`); between digits they stay, and a word of signs stays as it is.
pub(crate) fn word(text: &str) -> String {
    let lower: Vec<char> = plain(text).chars().filter(|c| *c != ' ').flat_map(char::to_lowercase).collect();
    if !lower.iter().any(|c| c.is_alphanumeric()) {
        return lower.into_iter().collect();
    }
    let digit = |at: Option<usize>| at.and_then(|at| lower.get(at)).is_some_and(char::is_ascii_digit);
    let mut out = String::with_capacity(lower.len());
    for (at, c) in lower.iter().enumerate() {
        let comes_and_goes =
            matches!(c, '.' | '-') && !(digit(at.checked_sub(1)) && digit(at.checked_add(1)));
        if !comes_and_goes {
            out.push(*c);
        }
    }
    out
}

/// A cell as it is compared with the words of cells: plain, lower case, no spaces.
pub(crate) fn cell(text: &str) -> String {
    plain(text).chars().filter(|c| !c.is_whitespace()).flat_map(char::to_lowercase).collect()
}

/// True for characters of scripts that write words without spaces between them.
pub(crate) fn is_east_asian(c: char) -> bool {
    matches!(c, '\u{3040}'..='\u{30FF}' | '\u{3400}'..='\u{9FFF}' | '\u{AC00}'..='\u{D7AF}' | '\u{F900}'..='\u{FAFF}' | '々')
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn many_spellings_become_one() {
        for (written, folded) in [
            ("Pb（ｐｐｍ）", "Pb(ppm)"),
            ("Cr₂O₃", "Cr2O3"),
            ("mg·kg⁻¹", "mg·kg-1"),
            ("µg/g", "ug/g"),
            ("μg/g", "ug/g"),
            ("Élément", "Element"),
            ("E\u{301}le\u{301}ment", "Element"),
            ("Maß", "Mass"),
            ("nº", "no"),
            ("\u{2212}5", "-5"),
        ] {
            assert_eq!(plain(written), folded);
        }
        assert_eq!(letters_and_digits("Sample-ID #"), "sampleid");
        assert_eq!(letters_and_digits("n° de lot"), "ndelot");
        assert_eq!(word("Std.-Abw."), "stdabw");
        assert_eq!(word("99.7%"), "99.7%");
        assert_eq!(word("+/-"), "+/-");
        assert_eq!(cell("＜ LOD"), "<lod");
    }
}
