//! Values of acts that hold several named fields: `entry=6(c);substance=Pb`.

use crate::data_file::ProblemCode;

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

/// True where two persons put their initials, and not the first person twice (`AB`, `A.B.`). Where nobody says who the
/// first is, nobody knows that the second is another.
pub fn two_people(first: &str, second: &str) -> bool {
    let letters = |initials: &str| -> String {
        initials.chars().filter(|one| one.is_alphanumeric()).flat_map(char::to_lowercase).collect()
    };
    let (first, second) = (letters(first), letters(second));
    !first.is_empty() && !second.is_empty() && first != second
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
    fn what_is_no_field_is_refused() {
        assert_eq!(read("entry", &["entry"]), Err(ProblemCode::Malformed));
        assert_eq!(read("entry=1;odd=2", &["entry"]), Err(ProblemCode::UnknownName));
        assert_eq!(read("entry=1;entry=1", &["entry"]), Err(ProblemCode::Twice));
    }
}
