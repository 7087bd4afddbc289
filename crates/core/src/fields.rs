//! Values of acts that hold several named fields: `entry=6(c);substance=Pb`.

use crate::data_file::ProblemCode;
use crate::quantity::narrow;

/// Takes `name=value;name=value` apart, whatever the names are; a piece without `=` has an empty name. A `;` or `\`
/// inside a value stands behind a `\`; spaces around names and values are no part of them.
pub fn split(text: &str) -> Vec<(String, String)> {
    let mut pieces = vec![String::new()];
    let mut characters = text.chars();
    while let Some(character) = characters.next() {
        let next = match character {
            ';' => {
                pieces.push(String::new());
                continue;
            }
            '\\' => characters.next().unwrap_or('\\'),
            other => other,
        };
        if let Some(last) = pieces.last_mut() {
            last.push(next);
        }
    }
    let field = |piece: &String| {
        let (name, value) = piece.split_once('=').unwrap_or(("", piece));
        (name.trim().to_owned(), value.trim().to_owned())
    };
    pieces.iter().filter(|piece| !piece.trim().is_empty()).map(field).collect()
}

/// Takes fields apart whose names are known.
///
/// # Errors
/// A piece without a name ([`ProblemCode::Malformed`]), a name that is not known or stands twice.
pub(crate) fn read(text: &str, known: &[&str]) -> Result<Vec<(String, String)>, ProblemCode> {
    let fields = split(text);
    for (at, (name, _)) in fields.iter().enumerate() {
        if name.is_empty() {
            return Err(ProblemCode::Malformed);
        }
        if !known.contains(&name.as_str()) {
            return Err(ProblemCode::UnknownName);
        }
        if fields.iter().take(at).any(|(before, _)| before == name) {
            return Err(ProblemCode::Twice);
        }
    }
    Ok(fields)
}

/// The value of a field; empty where it is left out.
pub(crate) fn field<'a>(fields: &'a [(String, String)], name: &str) -> &'a str {
    fields.iter().find(|(known, _)| known == name).map_or("", |(_, value)| value)
}

/// Puts fields together again; empty ones are left out.
pub fn join(fields: &[(&str, &str)]) -> String {
    let one =
        |(name, value): &(&str, &str)| format!("{name}={}", value.replace('\\', "\\\\").replace(';', "\\;"));
    fields.iter().filter(|(_, value)| !value.is_empty()).map(one).collect::<Vec<_>>().join(";")
}

/// Letters and digits alone, small, and the same however wide they were typed or in which of two alphabets that draw them
/// alike.
fn letters(text: &str) -> String {
    const ALIKE: [(char, char); 12] = [
        ('а', 'a'),
        ('в', 'b'),
        ('е', 'e'),
        ('к', 'k'),
        ('м', 'm'),
        ('н', 'h'),
        ('о', 'o'),
        ('р', 'p'),
        ('с', 'c'),
        ('т', 't'),
        ('у', 'y'),
        ('х', 'x'),
    ];
    let alike = |one: char| ALIKE.iter().find(|(other, _)| *other == one).map_or(one, |(_, latin)| *latin);
    let plain = text.chars().map(narrow).filter(|one| one.is_alphanumeric());
    plain.flat_map(char::to_lowercase).map(alike).collect()
}

/// True for a text that names nothing: it has no letter and no digit, or is a word by which people leave a field out.
/// (Our own list, of the languages that the program speaks.)
pub fn says_nothing(text: &str) -> bool {
    const LEFT_OUT: [&str; 22] = [
        "",
        "na",
        "none",
        "nil",
        "null",
        "tbd",
        "tba",
        "xx",
        "xxx",
        "unknown",
        "pending",
        "keine",
        "keiner",
        "unbekannt",
        "なし",
        "無し",
        "無",
        "不明",
        "未定",
        "无",
        "没有",
        "待定",
    ];
    LEFT_OUT.contains(&letters(text).as_str())
}

/// True where two persons put their initials, and not the first person twice (`AB`, `A.B.`, `ＡＢ`). Where nobody says who
/// the first is, nobody knows that the second is another.
pub fn two_people(first: &str, second: &str) -> bool {
    !says_nothing(first) && !says_nothing(second) && letters(first) != letters(second)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn fields_are_taken_apart_and_put_together() {
        let known = ["entry", "evidence"];
        let fields = read(" entry = 6(c) ; evidence=drawing 4\\; page 2 \\\\ =x;", &known).unwrap();
        assert_eq!(field(&fields, "entry"), "6(c)");
        assert_eq!(field(&fields, "evidence"), "drawing 4; page 2 \\ =x");
        assert_eq!(field(&fields, "second"), "");
        let text = join(&[("entry", "6(c)"), ("second", ""), ("evidence", "drawing 4; page 2 \\ =x")]);
        assert_eq!(text, "entry=6(c);evidence=drawing 4\\; page 2 \\\\ =x");
        assert_eq!(read(&text, &known), Ok(fields));
        assert_eq!(read("", &known), Ok(Vec::new()));
        assert_eq!(field(&read("entry=a\\", &known).unwrap(), "entry"), "a\\");
    }

    #[test]
    fn one_person_typed_in_two_ways_is_one_and_a_word_for_nobody_is_none() {
        assert!(two_people("MK", "TS"));
        assert!(two_people("MK", "MKA"));
        for second in ["ＭＫ", "ｍ．ｋ．", "m k", "МК", "", "-", "n/a", "なし", "无", "TBD"] {
            assert!(!two_people("MK", second), "{second}");
            assert!(!two_people(second, "MK"), "{second}");
        }
    }

    #[test]
    fn a_dash_or_a_word_for_nothing_names_nothing() {
        for text in ["", "-", "?", "…", "N/A", "n.a.", "none", "TBD", "なし", "無し", "无", "ＮＡ", "Keine"]
        {
            assert!(says_nothing(text), "{text}");
        }
        for text in ["EV-1", "drawing 4", "5", "letter of 2026-11-02", "証明書", "x"] {
            assert!(!says_nothing(text), "{text}");
        }
    }

    #[test]
    fn what_is_no_field_is_refused() {
        assert_eq!(read("entry", &["entry"]), Err(ProblemCode::Malformed));
        assert_eq!(read("entry=1;odd=2", &["entry"]), Err(ProblemCode::UnknownName));
        assert_eq!(read("entry=1;entry=1", &["entry"]), Err(ProblemCode::Twice));
    }
}
