//! Data files written out: texts, lists of texts and tables of them, which is all that a settings or mapping file has.

use std::collections::BTreeMap;
use std::fmt::Write;

use toml::de::{DeTable, DeValue};

/// What stands under a key.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Written {
    /// A text.
    Text(String),
    /// A list of texts.
    List(Vec<String>),
    /// A table.
    Table(WrittenTable),
    /// A table that is repeated.
    Tables(Vec<WrittenTable>),
}

/// Keys in the order of their letters.
pub type WrittenTable = BTreeMap<String, Written>;

impl Written {
    /// The text; empty for anything else.
    pub fn text(&self) -> &str {
        match self {
            Written::Text(text) => text,
            _ => "",
        }
    }
}

impl From<&str> for Written {
    fn from(text: &str) -> Written {
        Written::Text(text.to_owned())
    }
}

/// The rows of a repeated table; none where it is not there.
pub fn rows(table: &WrittenTable, key: &str) -> Vec<WrittenTable> {
    match table.get(key) {
        Some(Written::Tables(rows)) => rows.clone(),
        _ => Vec::new(),
    }
}

/// Writes a file.
pub fn write(table: &WrittenTable) -> String {
    let mut out = String::new();
    write_table(&mut out, table, "");
    out
}

/// Texts and lists come first, since whatever follows the heading of a table belongs to it.
fn write_table(out: &mut String, table: &WrittenTable, path: &str) {
    for (key, value) in table {
        match value {
            Written::Text(text) => {
                let _ = writeln!(out, "{} = {}", key_of(key), quoted(text));
            }
            Written::List(list) => {
                let list: Vec<String> = list.iter().map(|text| quoted(text)).collect();
                let _ = writeln!(out, "{} = [{}]", key_of(key), list.join(", "));
            }
            Written::Table(_) | Written::Tables(_) => {}
        }
    }
    for (key, value) in table {
        let path = if path.is_empty() { key_of(key) } else { format!("{path}.{}", key_of(key)) };
        match value {
            Written::Table(inner) => {
                let _ = writeln!(out, "\n[{path}]");
                write_table(out, inner, &path);
            }
            Written::Tables(rows) => {
                for row in rows {
                    let _ = writeln!(out, "\n[[{path}]]");
                    write_table(out, row, &path);
                }
            }
            Written::Text(_) | Written::List(_) => {}
        }
    }
}

fn key_of(key: &str) -> String {
    let bare = key.bytes().all(|byte| byte.is_ascii_alphanumeric() || matches!(byte, b'_' | b'-'));
    if bare && !key.is_empty() { key.to_owned() } else { quoted(key) }
}

/// A basic string (TOML 1.0, "String"): quotation mark, backslash and control characters stand behind a backslash.
fn quoted(text: &str) -> String {
    let mut out = String::from("\"");
    for character in text.chars() {
        match character {
            '"' | '\\' => out.extend(['\\', character]),
            '\n' => out.push_str("\\n"),
            '\r' => out.push_str("\\r"),
            '\t' => out.push_str("\\t"),
            control if control.is_ascii_control() => {
                let _ = write!(out, "\\u{:04X}", u32::from(control));
            }
            other => out.push(other),
        }
    }
    out.push('"');
    out
}

/// Reads texts, lists of texts and tables of a file; what is anything else, or no TOML, is left out.
pub fn parse(text: &str) -> WrittenTable {
    DeTable::parse(text).map(|table| table_of(table.get_ref())).unwrap_or_default()
}

fn table_of(table: &DeTable<'_>) -> WrittenTable {
    let one = |value: &DeValue<'_>| match value {
        DeValue::String(text) => Some(Written::Text(text.as_ref().to_owned())),
        DeValue::Table(table) => Some(Written::Table(table_of(table))),
        DeValue::Array(list) => {
            let tables: Vec<WrittenTable> =
                list.iter().filter_map(|one| one.get_ref().as_table()).map(table_of).collect();
            if !tables.is_empty() {
                return Some(Written::Tables(tables));
            }
            let texts = list.iter().filter_map(|one| one.get_ref().as_str());
            Some(Written::List(texts.map(str::to_owned).collect()))
        }
        _ => None,
    };
    let entry = |(key, value): (&toml::Spanned<std::borrow::Cow<'_, str>>, &toml::Spanned<DeValue<'_>>)| {
        Some((key.get_ref().as_ref().to_owned(), one(value.get_ref())?))
    };
    table.iter().filter_map(entry).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    fn table(entries: &[(&str, Written)]) -> WrittenTable {
        entries.iter().map(|(key, value)| ((*key).to_owned(), value.clone())).collect()
    }

    #[test]
    fn what_is_written_is_read_back_whatever_it_holds() {
        let odd = "a \"quote\", a \\, a\ttab, two\r\nlines, \u{1}\u{7f}, č — 鉛";
        let columns = table(&[("3", "value Pb mg/kg".into()), ("a.b \"c\"", "x".into()), ("", "y".into())]);
        let row = table(&[
            ("fingerprint", odd.into()),
            ("columns", Written::Table(columns)),
            ("headings", Written::List(vec![odd.to_owned(), String::new()])),
        ]);
        let whole = table(&[
            ("schema", "a/1".into()),
            ("zeta", "after the tables in the order of letters".into()),
            ("empty", Written::List(Vec::new())),
            ("header", Written::Tables(vec![row.clone(), table(&[("x_-9", "1".into())]), row])),
        ]);
        let text = write(&whole);
        assert_eq!(parse(&text), whole, "{text}");
        assert_eq!(rows(&whole, "header").len(), 3);
        assert!(rows(&whole, "schema").is_empty() && rows(&whole, "none").is_empty());
        assert_eq!(whole["schema"].text(), "a/1");
        assert_eq!(whole["empty"].text(), "");
    }

    #[test]
    fn a_file_reads_as_a_person_would_write_it() {
        let row = table(&[
            ("columns", Written::Table(table(&[("3", "unused".into())]))),
            ("fingerprint", "0123".into()),
        ]);
        let whole = table(&[
            ("books", Written::List(vec!["a".into(), "b".into()])),
            ("header", Written::Tables(vec![row])),
            ("schema", "a/1".into()),
        ]);
        assert_eq!(
            write(&whole),
            "books = [\"a\", \"b\"]\nschema = \"a/1\"\n\n[[header]]\nfingerprint = \"0123\"\n\n[header.columns]\n3 = \"unused\"\n"
        );
    }

    #[test]
    fn what_is_no_text_list_or_table_is_left_out() {
        assert_eq!(parse("a = 1\nb = \"x\"\n"), table(&[("b", "x".into())]));
        assert_eq!(parse("a = "), WrittenTable::new());
    }
}
