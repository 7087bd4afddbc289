//! A stream of bytes to UTF-8, cut anywhere.

use encoding_rs::DecoderResult;

use super::TextEncoding;
use super::line_start_marks::LineStartMarks;

/// Bytes of text that are handed on at a time.
const BUFFER: usize = 64 * 1024;
/// Room that is left free before the buffer is handed on: more than one character and one replacement take.
const ROOM: usize = 64;
const REPLACEMENT: &[u8] = "\u{FFFD}".as_bytes();

/// Decodes one stream.
///
/// UTF-8 is handed on in the slices it comes in, broken bytes included: the table reader knows what to do with a cell
/// that is no UTF-8, and says so with its place. In every other encoding a byte sequence that is no character becomes
/// U+FFFD and is counted.
pub struct Decoder {
    encoding: TextEncoding,
    /// Nothing for UTF-8.
    decoded: Option<Decoded>,
    marks: LineStartMarks,
}

struct Decoded {
    decoder: encoding_rs::Decoder,
    buffer: Vec<u8>,
    filled: usize,
    lines: LineCount,
    broken: u64,
    first_broken_line: Option<u32>,
}

impl Decoder {
    /// A decoder for an encoding.
    pub fn new(encoding: TextEncoding) -> Decoder {
        let decoded = (encoding != TextEncoding::Utf8).then(|| Decoded {
            decoder: encoding.standard().new_decoder_without_bom_handling(),
            buffer: vec![0; BUFFER],
            filled: 0,
            lines: LineCount::default(),
            broken: 0,
            first_broken_line: None,
        });
        Decoder { encoding, decoded, marks: LineStartMarks::new() }
    }

    /// The encoding it decodes.
    pub const fn encoding(&self) -> TextEncoding {
        self.encoding
    }

    /// Takes the next bytes, from the first byte of the file on, and hands on the text they complete. A byte order
    /// mark at the start of any line is left out.
    pub fn push(&mut self, bytes: &[u8], sink: &mut dyn FnMut(&[u8])) {
        match &mut self.decoded {
            None => self.marks.pass(bytes, sink),
            Some(decoded) => decoded.decode(bytes, false, &mut self.marks, sink),
        }
    }

    /// Ends the stream and hands on what is left. Bytes pushed after this are a new stream.
    pub fn finish(&mut self, sink: &mut dyn FnMut(&[u8])) {
        if let Some(decoded) = &mut self.decoded {
            decoded.decode(&[], true, &mut self.marks, sink);
            decoded.decoder = self.encoding.standard().new_decoder_without_bom_handling();
            decoded.lines = LineCount::default();
        }
        self.marks.finish(sink);
    }

    /// Byte sequences that were no character and became U+FFFD. Always 0 for UTF-8.
    pub fn broken(&self) -> u64 {
        self.decoded.as_ref().map_or(0, |decoded| decoded.broken)
    }

    /// The line (1-based, counted as the splitter counts) of the first of them.
    pub fn first_broken_line(&self) -> Option<u32> {
        self.decoded.as_ref().and_then(|decoded| decoded.first_broken_line)
    }

    /// Byte order marks left out that stood at the start of a later line: files were joined.
    pub fn marks_left_out(&self) -> u64 {
        self.marks.dropped()
    }
}

impl Decoded {
    fn decode(&mut self, bytes: &[u8], last: bool, marks: &mut LineStartMarks, sink: &mut dyn FnMut(&[u8])) {
        let mut rest = bytes;
        loop {
            let room = self.buffer.get_mut(self.filled..).unwrap_or(&mut []);
            let (result, read, written) = self.decoder.decode_to_utf8_without_replacement(rest, room, last);
            rest = rest.get(read..).unwrap_or(&[]);
            self.filled += written;
            match result {
                DecoderResult::InputEmpty => break,
                DecoderResult::OutputFull => self.hand_on(marks, sink),
                DecoderResult::Malformed(..) => {
                    self.note_broken();
                    for byte in REPLACEMENT {
                        if let Some(place) = self.buffer.get_mut(self.filled) {
                            *place = *byte;
                            self.filled += 1;
                        }
                    }
                }
            }
            if self.filled + ROOM > self.buffer.len() {
                self.hand_on(marks, sink);
            }
        }
        self.hand_on(marks, sink);
    }

    fn hand_on(&mut self, marks: &mut LineStartMarks, sink: &mut dyn FnMut(&[u8])) {
        let text = self.buffer.get(..self.filled).unwrap_or(&[]);
        if self.first_broken_line.is_none() {
            self.lines.add(text);
        }
        marks.pass(text, sink);
        self.filled = 0;
    }

    fn note_broken(&mut self) {
        self.broken += 1;
        if self.first_broken_line.is_none() {
            let mut lines = self.lines;
            lines.add(self.buffer.get(..self.filled).unwrap_or(&[]));
            self.first_broken_line = Some(lines.ended.saturating_add(1));
        }
    }
}

/// Line ends that came by: `\n`, `\r\n`, or `\r` alone.
#[derive(Clone, Copy, Default)]
struct LineCount {
    ended: u32,
    after_return: bool,
}

impl LineCount {
    fn add(&mut self, text: &[u8]) {
        for at in memchr::memchr2_iter(b'\n', b'\r', text) {
            let second_half = text.get(at) == Some(&b'\n')
                && match at.checked_sub(1) {
                    Some(before) => text.get(before) == Some(&b'\r'),
                    None => self.after_return,
                };
            self.ended = self.ended.saturating_add(u32::from(!second_half));
        }
        if let Some(last) = text.last() {
            self.after_return = *last == b'\r';
        }
    }
}
