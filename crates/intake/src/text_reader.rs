//! One text table from its first byte to its last: encoding, heading, rows.

use plumbline_core::acts::Settings;
use plumbline_core::reading::{EncodingKnownBy, NoticeCode, Source};

use crate::header::HeaderReader;
use crate::header_search::{self, FoundHeader, NotFound, find_header};
use crate::heading;
use crate::records::Splitter;
use crate::table::Table;
pub(crate) use crate::text_encoding::LOOKED_AT;
use crate::text_encoding::{self, Decoder, Found, TextEncoding};

/// Reads one text table, piece by piece.
pub(crate) struct TextReader {
    state: State,
    table: Table,
    headers: HeaderReader,
    told_encoding: Option<TextEncoding>,
    told_line: Option<u32>,
    /// The text comes from a workbook: it is UTF-8 and needs no finding out.
    from_workbook: bool,
}

enum State {
    Looking(Vec<u8>),
    Reading(Box<Reading>),
    Refused,
}

struct Reading {
    decoder: Decoder,
    splitter: Splitter,
}

/// What the first bytes of a text promise.
pub(crate) fn promise(looked: &[u8], whole: bool, headers: &HeaderReader) -> Option<FoundHeader> {
    find_header(looked, whole, headers, None).ok()
}

impl TextReader {
    /// Starts a text; `source` carries its name and what is known of where it came from.
    pub(crate) fn new(source: Source, settings: &Settings, from_workbook: bool) -> TextReader {
        let headers = HeaderReader::new(settings);
        TextReader {
            state: State::Looking(Vec::new()),
            told_encoding: settings.text_encoding(&source.name).and_then(TextEncoding::from_label),
            told_line: settings.header_line(&source.name),
            table: Table::new(source, settings, headers.clone()),
            headers,
            from_workbook,
        }
    }

    /// Takes the next bytes, cut anywhere.
    pub(crate) fn push(&mut self, bytes: &[u8]) {
        match &mut self.state {
            State::Looking(kept) => {
                kept.extend_from_slice(bytes);
                if kept.len() >= LOOKED_AT {
                    self.begin();
                }
            }
            State::Reading(reading) => reading.push(bytes, &mut self.table),
            State::Refused => {}
        }
    }

    /// Ends the text.
    pub(crate) fn finish(mut self) -> Source {
        if matches!(self.state, State::Looking(_)) {
            self.begin();
        }
        if let State::Reading(reading) = &mut self.state {
            reading.finish(&mut self.table);
        }
        self.table.close();
        self.table.source
    }

    fn begin(&mut self) {
        let State::Looking(kept) = std::mem::replace(&mut self.state, State::Refused) else { return };
        // The same bytes are looked at however the file was cut into pieces.
        let whole = kept.len() < LOOKED_AT;
        let looked = kept.get(..kept.len().min(LOOKED_AT)).unwrap_or(&kept);
        let found = self.encoding(looked, whole);
        let text = decoded(found.encoding, looked, whole);
        if text.iter().all(u8::is_ascii_whitespace) {
            self.table.refuse_all(NoticeCode::Empty, "");
            return;
        }
        if is_no_text(&text) {
            self.table.refuse_all(NoticeCode::NotText, "");
            return;
        }
        if !self.from_workbook {
            self.table.source.encoding = found.encoding.label();
            self.table.source.encoding_known_by = found.known_by;
            if matches!(found.known_by, EncodingKnownBy::WordsFound | EncodingKnownBy::Guess) {
                self.table.notice((1, 0), NoticeCode::EncodingInferred, found.encoding.label().as_bytes());
            }
        }
        let header = find_header(&text, whole, &self.headers, self.told_line);
        let mut splitter = Splitter::new(b',');
        match header {
            Ok(mut header) => {
                splitter = Splitter::new(header.delimiter);
                let sample = header_search::sample(&text, &mut header);
                self.table.await_header(header, sample);
            }
            Err(NotFound::TooManyColumns(columns)) => {
                self.table.refuse_all(NoticeCode::TooManyColumns, &columns.to_string());
                return;
            }
            // Still every row is counted and refused by one entry, so that the counts add up.
            Err(NotFound::NoElementColumn) => self.table.source.problem = Some(NoticeCode::NoElementColumn),
            Err(NotFound::NothingOnLine) => {
                self.table.source.problem = Some(NoticeCode::NoElementColumn);
                let line = self.told_line.unwrap_or(0);
                self.table.notice((line, 0), NoticeCode::MappingDiffers, line.to_string().as_bytes());
            }
        }
        let mut reading = Reading { decoder: Decoder::new(found.encoding), splitter };
        reading.push(&kept, &mut self.table);
        self.state = State::Reading(Box::new(reading));
    }

    fn encoding(&self, looked: &[u8], whole: bool) -> Found {
        if self.from_workbook {
            return Found {
                encoding: TextEncoding::Utf8,
                known_by: EncodingKnownBy::ValidUtf8,
                bom_length: 0,
            };
        }
        match self.told_encoding {
            Some(told) => Found::told(told, looked),
            None => text_encoding::find(looked, whole, &heading::known_words),
        }
    }
}

impl Reading {
    fn push(&mut self, bytes: &[u8], table: &mut Table) {
        let splitter = &mut self.splitter;
        self.decoder.push(bytes, &mut |text| splitter.push(text, &mut |piece| table.take(piece)));
    }

    fn finish(&mut self, table: &mut Table) {
        let splitter = &mut self.splitter;
        self.decoder.finish(&mut |text| splitter.push(text, &mut |piece| table.take(piece)));
        splitter.finish(&mut |piece| table.take(piece));
        if self.decoder.broken() > 0 {
            let line = self.decoder.first_broken_line().unwrap_or(0);
            table.broken_bytes(line, self.decoder.broken());
        }
    }
}

fn decoded(encoding: TextEncoding, looked: &[u8], whole: bool) -> Vec<u8> {
    let mut decoder = Decoder::new(encoding);
    let mut text = Vec::with_capacity(looked.len());
    decoder.push(looked, &mut |piece| text.extend_from_slice(piece));
    if whole {
        decoder.finish(&mut |piece| text.extend_from_slice(piece));
    }
    text
}

/// True where text has too many control characters to be any.
fn is_no_text(text: &[u8]) -> bool {
    let head = text.get(..text.len().min(64 * 1024)).unwrap_or(text);
    let nul = memchr::memchr_iter(0, head).count();
    let control =
        head.iter().filter(|byte| **byte < 0x20 && !matches!(byte, b'\t' | b'\n' | b'\r' | 0x0C)).count();
    // A stray control byte is a broken cell; a file with many of them is no text.
    nul > 1 && nul * 50 > head.len() || control * 20 > head.len()
}
