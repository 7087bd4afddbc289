//! Records of text: one a line, its fields behind tabs. What findings and evidence of a report are written in.
//!
//! No text can forge a field or a line: `\`, tab, line feed and carriage return are escaped. `<` is too, so that a record may
//! stand inside HTML and never ends what it stands in.

use std::fmt::Write;

/// A line being written.
#[derive(Clone, Debug, Default)]
pub struct Line {
    text: String,
}

/// How a field says that there is nothing, which is not an empty text.
const NOTHING: &str = "\\-";

impl Line {
    /// Starts a line of a kind; what was in it is gone.
    pub fn begin(&mut self, kind: &str) -> &mut Line {
        self.text.clear();
        self.text.push_str(kind);
        self
    }

    /// A field with a text.
    pub fn text(&mut self, text: &str) -> &mut Line {
        self.text.push('\t');
        escape(text, &mut self.text);
        self
    }

    /// A field with a text, or with nothing.
    pub fn maybe(&mut self, text: Option<&str>) -> &mut Line {
        match text {
            Some(text) => self.text(text),
            None => self.plain(NOTHING),
        }
    }

    /// A field of our own words: a code, digits. It needs no escaping.
    pub fn plain(&mut self, code: &str) -> &mut Line {
        self.text.push('\t');
        self.text.push_str(code);
        self
    }

    /// A field with a number.
    pub fn number(&mut self, number: impl Into<i128>) -> &mut Line {
        self.text.push('\t');
        self.more_number(number)
    }

    /// Adds a code to the field written last.
    pub fn more(&mut self, code: &str) -> &mut Line {
        self.text.push_str(code);
        self
    }

    /// Adds a name to the field written last.
    pub fn more_text(&mut self, text: &str) -> &mut Line {
        escape(text, &mut self.text);
        self
    }

    /// Adds a number to the field written last.
    pub fn more_number(&mut self, number: impl Into<i128>) -> &mut Line {
        let number: i128 = number.into();
        // Writing to a String can't fail; 64 bits are written quicker than 128.
        let _ = match i64::try_from(number) {
            Ok(number) => write!(self.text, "{number}"),
            Err(_) => write!(self.text, "{number}"),
        };
        self
    }

    /// What was written, without a line end.
    pub fn as_str(&self) -> &str {
        &self.text
    }
}

fn escape(text: &str, out: &mut String) {
    let mut rest = text;
    while let Some(at) = rest.find(['\\', '\t', '\n', '\r', '<']) {
        let (before, found) = rest.split_at(at);
        out.push_str(before);
        out.push_str(match found.as_bytes().first() {
            Some(b'\t') => "\\t",
            Some(b'\n') => "\\n",
            Some(b'\r') => "\\r",
            Some(b'<') => "\\l",
            _ => "\\\\",
        });
        rest = found.get(1..).unwrap_or("");
    }
    out.push_str(rest);
}

/// Reads a field; `Some(None)` is the field that says nothing.
///
/// # Errors
/// `None` where the field is not what [`Line`] writes.
pub fn field(text: &str) -> Option<Option<String>> {
    if text == NOTHING {
        return Some(None);
    }
    let mut plain = String::with_capacity(text.len());
    let mut characters = text.chars();
    while let Some(character) = characters.next() {
        plain.push(match character {
            '\\' => match characters.next()? {
                '\\' => '\\',
                't' => '\t',
                'n' => '\n',
                'r' => '\r',
                'l' => '<',
                _ => return None,
            },
            '\r' | '\n' | '<' => return None,
            other => other,
        });
    }
    Some(Some(plain))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_text_forges_a_field_or_a_line_and_every_text_comes_back() {
        for text in
            ["", "plain", "a\tb", "a\nlot\tx", "\\", "\\-", "</script>", "\r\n", "铅 <1", "\\t", "\u{2028}"]
        {
            let mut line = Line::default();
            line.begin("kind").text(text).maybe(Some(text)).maybe(None).number(-5_i64);
            let written = line.as_str();
            assert!(!written.contains(['\n', '\r', '<']), "{written:?}");
            let fields: Vec<_> = written.split('\t').map(field).collect();
            let some = |text: &str| Some(Some(text.to_owned()));
            assert_eq!(fields, [some("kind"), some(text), some(text), Some(None), some("-5")], "{text:?}");
        }
    }

    #[test]
    fn a_field_that_was_never_written_is_refused() {
        for text in ["\\", "\\x", "a<b", "a\rb", "\\-\\", "x\\-"] {
            assert_eq!(field(text), None, "{text:?}");
        }
    }

    #[test]
    fn a_field_may_be_written_in_parts() {
        let mut line = Line::default();
        line.begin("kind").plain("Pb").more(":").more_number(i64::MIN).more_text("a\tb").number(i128::MAX);
        assert_eq!(line.as_str(), format!("kind\tPb:{}a\\tb\t{}", i64::MIN, i128::MAX));
    }
}
