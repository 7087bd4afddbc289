//! Bytes to records: physical lines counted by us, cells split by csv-core.
//!
//! A push parser: it takes the next piece of a file, cut anywhere, and hands out whole records. It departs from what
//! csv-core would do alone in three places, each because a row would otherwise be lost or misplaced:
//! - every physical line counts, blank ones too, and `\r` alone ends a line as well as `\n` and `\r\n`;
//! - a quote left open past [`LONGEST_QUOTED`] or the end of the file refuses the line it stands in, and reading
//!   resumes at the next line instead of swallowing the rest;
//! - a line beyond [`LONGEST_LINE`] is refused without being kept.

use csv_core::{ReadRecordResult, Reader, ReaderBuilder};

/// Bytes after which a record that is still inside a quote is given up.
pub const LONGEST_QUOTED: usize = 64 * 1024;
/// Bytes after which one physical line is given up.
pub const LONGEST_LINE: usize = 1024 * 1024;
/// Bytes that may be read twice because of quotes left open; past this every open quote ends with its line, so that
/// a file made of open quotes is still read in one pass.
const READ_TWICE: usize = 64 * 1024 * 1024;

/// One record: its first physical line (1-based) and its cells.
#[derive(Clone, Copy, Debug)]
pub struct Record<'a> {
    /// First physical line.
    pub line: u32,
    /// How many physical lines it runs over.
    pub lines: u32,
    bytes: &'a [u8],
    ends: &'a [usize],
    /// Where each cell stands, for a reading put together from a table on its side.
    places: Option<&'a [(u32, u32)]>,
}

impl<'a> Record<'a> {
    /// A record put together from cells that stand in other places of the source (line and column, 1-based).
    pub(crate) fn put_together(bytes: &'a [u8], ends: &'a [usize], places: &'a [(u32, u32)]) -> Record<'a> {
        let line = places.first().map_or(0, |(line, _)| *line);
        Record { line, lines: 1, bytes, ends, places: Some(places) }
    }

    /// Line and column of a cell in the source, 1-based.
    pub fn place(&self, at: usize) -> (u32, u32) {
        self.places.and_then(|places| places.get(at).copied()).unwrap_or((self.line, at as u32 + 1))
    }

    /// How many cells it has.
    pub const fn len(&self) -> usize {
        self.ends.len()
    }

    /// True where it has no cell at all.
    pub const fn is_empty(&self) -> bool {
        self.ends.is_empty()
    }

    /// The bytes of a cell; empty past the last.
    pub fn cell(&self, at: usize) -> &'a [u8] {
        let start = if at == 0 { 0 } else { self.ends.get(at - 1).copied().unwrap_or(usize::MAX) };
        let end = self.ends.get(at).copied().unwrap_or(0);
        self.bytes.get(start..end).unwrap_or(&[])
    }

    /// All cells.
    pub fn cells(&self) -> impl Iterator<Item = &'a [u8]> {
        let record = *self;
        (0..record.len()).map(move |at| record.cell(at))
    }

    /// True where no cell holds anything but spaces.
    pub fn is_blank(&self) -> bool {
        self.bytes.iter().all(u8::is_ascii_whitespace)
    }
}

/// What the splitter hands out.
#[derive(Clone, Copy, Debug)]
pub enum Piece<'a> {
    /// A record.
    Record(Record<'a>),
    /// An empty line.
    Blank(u32),
    /// A line whose quote was never closed.
    QuoteLeftOpen(u32),
    /// A line longer than any table row.
    LineTooLong(u32),
}

/// Splits a stream of bytes into records.
pub struct Splitter {
    reader: Reader,
    pending: Vec<u8>,
    cells: Vec<u8>,
    ends: Vec<usize>,
    line: u32,
    skipping: bool,
    read_twice: usize,
}

impl Splitter {
    /// A splitter for a delimiter.
    pub fn new(delimiter: u8) -> Splitter {
        Splitter {
            reader: ReaderBuilder::new().delimiter(delimiter).build(),
            pending: Vec::new(),
            cells: vec![0; 4096],
            ends: vec![0; 256],
            line: 1,
            skipping: false,
            read_twice: 0,
        }
    }

    /// Takes the next bytes and hands out every piece they complete.
    pub fn push(&mut self, bytes: &[u8], sink: &mut dyn FnMut(Piece<'_>)) {
        if self.pending.is_empty() {
            let used = self.drain(bytes, false, sink);
            self.pending.extend_from_slice(bytes.get(used..).unwrap_or(&[]));
        } else {
            let mut joined = std::mem::take(&mut self.pending);
            joined.extend_from_slice(bytes);
            let used = self.drain(&joined, false, sink);
            joined.drain(..used);
            self.pending = joined;
        }
    }

    /// Ends the stream: what is left is the last line.
    pub fn finish(&mut self, sink: &mut dyn FnMut(Piece<'_>)) {
        let mut rest = std::mem::take(&mut self.pending);
        if self.skipping && rest.is_empty() {
            sink(Piece::LineTooLong(self.line));
            self.skipping = false;
        }
        if !rest.is_empty() {
            if !matches!(rest.last(), Some(b'\n' | b'\r')) {
                rest.push(b'\n');
            }
            self.drain(&rest, true, sink);
        }
    }

    /// Works through whole lines of `bytes`; returns how many bytes are done with.
    fn drain(&mut self, bytes: &[u8], last: bool, sink: &mut dyn FnMut(Piece<'_>)) -> usize {
        let mut at = 0;
        while at < bytes.len() {
            if self.skipping {
                match line_end(bytes, at, last) {
                    Some(end) => {
                        sink(Piece::LineTooLong(self.line));
                        self.line += 1;
                        self.skipping = false;
                        at = end;
                    }
                    None => return bytes.len() - usize::from(bytes.last() == Some(&b'\r')),
                }
                continue;
            }
            let Some(end) = line_end(bytes, at, last) else {
                if bytes.len() - at > LONGEST_LINE {
                    self.skipping = true;
                    continue;
                }
                break;
            };
            if end - at > LONGEST_LINE {
                sink(Piece::LineTooLong(self.line));
                self.line += 1;
                at = end;
                continue;
            }
            if matches!(bytes.get(at), Some(b'\n' | b'\r')) {
                sink(Piece::Blank(self.line));
                self.line += 1;
                at = end;
                continue;
            }
            match self.record(bytes, at, end, last, sink) {
                Some(next) => at = next,
                None => break,
            }
        }
        at
    }

    /// Reads the record that starts at `start`, whose first line ends at `end`; gives where the next one starts, or
    /// nothing where more bytes are needed.
    fn record(
        &mut self,
        bytes: &[u8],
        start: usize,
        end: usize,
        last: bool,
        sink: &mut dyn FnMut(Piece<'_>),
    ) -> Option<usize> {
        self.reader.reset();
        let (mut from, mut to) = (start, end);
        let (mut written, mut cells, mut lines) = (0, 0, 1);
        loop {
            let input = bytes.get(from..to).unwrap_or(&[]);
            let (result, read, wrote, ended) = self.reader.read_record(
                input,
                self.cells.get_mut(written..).unwrap_or(&mut []),
                self.ends.get_mut(cells..).unwrap_or(&mut []),
            );
            from += read;
            written += wrote;
            cells += ended;
            match result {
                ReadRecordResult::OutputFull => self.cells.resize(self.cells.len() * 2, 0),
                ReadRecordResult::OutputEndsFull => self.ends.resize(self.ends.len() * 2, 0),
                ReadRecordResult::Record => {
                    sink(Piece::Record(Record {
                        line: self.line,
                        lines,
                        bytes: self.cells.get(..written).unwrap_or(&[]),
                        ends: self.ends.get(..cells).unwrap_or(&[]),
                        places: None,
                    }));
                    self.line += lines;
                    return Some(to);
                }
                ReadRecordResult::InputEmpty | ReadRecordResult::End => {
                    // The line is over and the record is not: a quote is open.
                    let next = line_end(bytes, to, last);
                    let too_long = next.unwrap_or(bytes.len()) - start > LONGEST_QUOTED;
                    let given_up = self.read_twice > READ_TWICE;
                    if too_long || given_up || (last && next.is_none()) {
                        sink(Piece::QuoteLeftOpen(self.line));
                        self.read_twice += to - end;
                        self.line += 1;
                        return Some(end);
                    }
                    to = next?;
                    lines += 1;
                }
            }
        }
    }
}

/// One past the terminator of the line that starts at `at`; nothing where it isn't complete. A `\r` at the very end
/// may be half of `\r\n`, so it waits for the next bytes.
fn line_end(bytes: &[u8], at: usize, last: bool) -> Option<usize> {
    let found = at + memchr::memchr2(b'\n', b'\r', bytes.get(at..)?)?;
    if bytes.get(found) == Some(&b'\n') {
        return Some(found + 1);
    }
    match bytes.get(found + 1) {
        Some(b'\n') => Some(found + 2),
        Some(_) => Some(found + 1),
        None if last => Some(found + 1),
        None => None,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn split(pieces: &[&[u8]]) -> Vec<String> {
        let mut splitter = Splitter::new(b',');
        let mut seen = Vec::new();
        let mut sink = |piece: Piece<'_>| {
            seen.push(match piece {
                Piece::Record(record) => {
                    let cells: Vec<_> =
                        record.cells().map(|cell| String::from_utf8_lossy(cell).into_owned()).collect();
                    format!("{}:{}", record.line, cells.join("|"))
                }
                Piece::Blank(line) => format!("{line} blank"),
                Piece::QuoteLeftOpen(line) => format!("{line} open"),
                Piece::LineTooLong(line) => format!("{line} long"),
            });
        };
        for piece in pieces {
            splitter.push(piece, &mut sink);
        }
        splitter.finish(&mut sink);
        seen
    }

    #[test]
    fn every_kind_of_line_end_counts_lines() {
        let expected = ["1:a|b", "2 blank", "3:1|2", "4 blank"];
        assert_eq!(split(&[b"a,b\n\n1,2\n\n"]), expected);
        assert_eq!(split(&[b"a,b\r\n\r\n1,2\r\n\r\n"]), expected);
        assert_eq!(split(&[b"a,b\r\r1,2\r\r"]), expected);
        assert_eq!(split(&[b"a,b\n1,2"]), ["1:a|b", "2:1|2"]);
        assert!(split(&[b""]).is_empty());
    }

    #[test]
    fn a_cut_anywhere_changes_nothing() {
        let text = "a,b\r\n\"x\r\ny\",2\r\n\r\n\"z\"\"q\",3\r4,5\n\"open,6\n7,8\n".as_bytes();
        let whole = split(&[text]);
        assert_eq!(whole, ["1:a|b", "2:x\r\ny|2", "4 blank", "5:z\"q|3", "6:4|5", "7 open", "8:7|8"]);
        for cut in 0..=text.len() {
            let (left, right) = text.split_at(cut);
            assert_eq!(split(&[left, right]), whole, "cut at {cut}");
        }
        let bytes: Vec<&[u8]> = text.chunks(1).collect();
        assert_eq!(split(&bytes), whole);
    }

    #[test]
    fn a_quote_in_the_middle_of_a_cell_is_a_letter() {
        assert_eq!(split(&[b"5\" pipe,1\n6,2\n"]), ["1:5\" pipe|1", "2:6|2"]);
    }

    #[test]
    fn an_open_quote_costs_one_line_and_not_the_file() {
        let mut text = b"a,b\n\"open,1\n".to_vec();
        for _ in 0..20_000 {
            text.extend_from_slice(b"1,2\n");
        }
        let seen = split(&[&text]);
        assert_eq!(seen[1], "2 open");
        assert_eq!(seen.len(), 20_002);
    }

    #[test]
    fn a_line_beyond_measure_costs_one_line() {
        let mut text = b"a,b\n".to_vec();
        text.extend(std::iter::repeat_n(b'x', LONGEST_LINE * 3));
        text.extend_from_slice(b"\n1,2\n");
        assert_eq!(split(&[&text]), ["1:a|b", "2 long", "3:1|2"]);
        let pieces: Vec<&[u8]> = text.chunks(70_001).collect();
        assert_eq!(split(&pieces), ["1:a|b", "2 long", "3:1|2"]);
    }
}
