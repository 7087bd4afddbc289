//! XML pulled a piece at a time, with nothing kept but the piece at hand.

use std::io::BufRead;

use quick_xml::Reader;
use quick_xml::escape::{resolve_xml_entity, unescape};
use quick_xml::events::Event;

use super::WorkbookProblem;

/// What was pulled.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Piece {
    /// An element begins; [`Xml::name`] and [`Xml::attribute`] are its own. An empty element begins and ends.
    Open,
    /// An element ends; [`Xml::name`] is its own.
    Close,
    /// Text, in [`Xml::text`]; one run of text may come as several.
    Text,
    /// Nothing more.
    End,
}

/// A document, or the rest of one.
pub(super) struct Xml<R> {
    reader: Reader<R>,
    buffer: Vec<u8>,
    name: String,
    attributes: String,
    text: String,
}

impl<R: BufRead> Xml<R> {
    pub(super) fn new(source: R) -> Xml<R> {
        let mut reader = Reader::from_reader(source);
        reader.config_mut().expand_empty_elements = true;
        Xml {
            reader,
            buffer: Vec::new(),
            name: String::new(),
            attributes: String::new(),
            text: String::new(),
        }
    }

    /// Pulls the next piece; comments, declarations and the like are passed over.
    pub(super) fn next(&mut self) -> Result<Piece, WorkbookProblem> {
        loop {
            self.buffer.clear();
            match self.reader.read_event_into(&mut self.buffer).map_err(|_| WorkbookProblem::Broken)? {
                Event::Start(start) => {
                    replace(&mut self.name, start.name().as_ref());
                    replace(&mut self.attributes, start.attributes_raw());
                    return Ok(Piece::Open);
                }
                Event::End(end) => {
                    replace(&mut self.name, end.name().as_ref());
                    return Ok(Piece::Close);
                }
                Event::Text(text) => {
                    replace(&mut self.text, &text.xml10_content());
                    return Ok(Piece::Text);
                }
                Event::CData(text) => {
                    replace(&mut self.text, &text.xml10_content());
                    return Ok(Piece::Text);
                }
                Event::GeneralRef(entity) => {
                    self.text.clear();
                    if let Some(known) = resolve_xml_entity(&entity) {
                        self.text.push_str(known);
                    } else if let Ok(Some(letter)) = entity.resolve_char_ref() {
                        self.text.push(letter);
                    } else {
                        return Err(WorkbookProblem::Broken);
                    }
                    return Ok(Piece::Text);
                }
                Event::Eof => return Ok(Piece::End),
                _ => {}
            }
        }
    }

    /// The element's name without its prefix.
    pub(super) fn name(&self) -> &str {
        self.name.rsplit_once(':').map_or(self.name.as_str(), |(_, local)| local)
    }

    /// The text at hand.
    pub(super) fn text(&self) -> &str {
        &self.text
    }

    /// An attribute of the element that began, by its whole name, as it stands in the file.
    pub(super) fn attribute(&self, wanted: &str) -> Option<&str> {
        attributes(&self.attributes).find(|(name, _)| *name == wanted).map(|(_, value)| value)
    }

    /// An attribute whatever its prefix.
    pub(super) fn attribute_of_any_prefix(&self, wanted: &str) -> Option<&str> {
        attributes(&self.attributes)
            .find(|(name, _)| {
                name.strip_suffix(wanted).is_some_and(|prefix| prefix.is_empty() || prefix.ends_with(':'))
            })
            .map(|(_, value)| value)
    }

    /// An attribute with its entities resolved.
    pub(super) fn attribute_text(&self, wanted: &str) -> Result<Option<String>, WorkbookProblem> {
        let Some(raw) = self.attribute(wanted) else { return Ok(None) };
        let text = unescape(raw).map_err(|_| WorkbookProblem::Broken)?;
        Ok(Some(text.into_owned()))
    }

    /// Passes over the rest of the element that just began.
    pub(super) fn skip(&mut self) -> Result<(), WorkbookProblem> {
        let mut depth = 1_u64;
        while depth > 0 {
            match self.next()? {
                Piece::Open => depth += 1,
                Piece::Close => depth -= 1,
                Piece::Text => {}
                Piece::End => return Err(WorkbookProblem::Broken),
            }
        }
        Ok(())
    }

    /// Appends the text of the element that just began, whatever elements it stands in.
    pub(super) fn append_text(&mut self, into: &mut String) -> Result<(), WorkbookProblem> {
        let mut depth = 1_u64;
        while depth > 0 {
            match self.next()? {
                Piece::Open => depth += 1,
                Piece::Close => depth -= 1,
                Piece::Text => into.push_str(&self.text),
                Piece::End => return Err(WorkbookProblem::Broken),
            }
        }
        Ok(())
    }

    /// Bytes read so far; between two pieces, where the next one begins.
    pub(super) const fn position(&self) -> u64 {
        self.reader.buffer_position()
    }

    /// Reads the source to its end without looking at it, so that its checksum is compared.
    pub(super) fn drain(&mut self) -> Result<(), WorkbookProblem> {
        let source = self.reader.get_mut();
        std::io::copy(source, &mut std::io::sink()).map_err(|_| WorkbookProblem::Broken)?;
        Ok(())
    }
}

fn replace(text: &mut String, with: &str) {
    text.clear();
    text.push_str(with);
}

/// Names and values as they stand. quick-xml has seen to it that quotes are closed; a part that is not `name="value"`
/// ends the list.
fn attributes(raw: &str) -> impl Iterator<Item = (&str, &str)> {
    let mut rest = raw;
    std::iter::from_fn(move || {
        let (name, after) = rest.split_once('=')?;
        let after = after.trim_ascii_start();
        let quote = after.chars().next().filter(|letter| matches!(letter, '"' | '\''))?;
        let (value, left) = after.get(1..)?.split_once(quote)?;
        rest = left;
        Some((name.trim_ascii(), value))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn attributes_are_found_in_either_quote_and_with_any_prefix() {
        let mut xml = Xml::new(&b"<x:a one = '1' r:id=\"R&amp;2\"\n two=\"a=b\"/>"[..]);
        assert_eq!(xml.next(), Ok(Piece::Open));
        assert_eq!(xml.name(), "a");
        assert_eq!(xml.attribute("one"), Some("1"));
        assert_eq!(xml.attribute("two"), Some("a=b"));
        assert_eq!(xml.attribute("id"), None);
        assert_eq!(xml.attribute_of_any_prefix("id"), Some("R&amp;2"));
        assert_eq!(xml.attribute_text("r:id"), Ok(Some("R&2".to_owned())));
        assert_eq!(xml.next(), Ok(Piece::Close));
        assert_eq!(xml.next(), Ok(Piece::End));
    }

    #[test]
    fn entities_and_sections_are_text_and_an_unknown_entity_is_damage() {
        let mut xml = Xml::new(&b"<a>1 &lt; <b>&#x32;</b><![CDATA[ & 3]]></a>"[..]);
        assert_eq!(xml.next(), Ok(Piece::Open));
        let mut text = String::new();
        assert_eq!(xml.append_text(&mut text), Ok(()));
        assert_eq!(text, "1 < 2 & 3");
        let mut xml = Xml::new(&b"<a>&lol;</a>"[..]);
        assert_eq!(xml.next(), Ok(Piece::Open));
        assert_eq!(xml.append_text(&mut text), Err(WorkbookProblem::Broken));
    }
}
