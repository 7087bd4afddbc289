//! Byte order marks at the start of a line: where files were joined, the mark of the second would become part of its
//! first heading.

use memchr::memmem::Finder;

const MARK: [u8; 3] = *b"\xEF\xBB\xBF";

/// Passes UTF-8 on without the marks that stand at the start of a line.
///
/// A piece without such a mark is handed on as the slice it is. Otherwise it is copied once and still handed on in one
/// piece, because many small pieces cost whoever splits them far more than the copy.
pub(super) struct LineStartMarks {
    finder: Finder<'static>,
    /// Nothing stands on this line yet but `held` bytes of what may be a mark.
    line_start: bool,
    held: usize,
    /// Nothing came by yet: a mark here is the file's own.
    stream_start: bool,
    dropped: u64,
}

impl LineStartMarks {
    pub(super) fn new() -> LineStartMarks {
        LineStartMarks {
            finder: Finder::new(&MARK),
            line_start: true,
            held: 0,
            stream_start: true,
            dropped: 0,
        }
    }

    /// Marks taken away that were not the first thing in the file.
    pub(super) const fn dropped(&self) -> u64 {
        self.dropped
    }

    pub(super) fn pass(&mut self, bytes: &[u8], sink: &mut dyn FnMut(&[u8])) {
        let mut rest = bytes;
        let mut copied = Vec::new();
        loop {
            if self.line_start {
                rest = self.past_marks(rest, &mut copied);
                if self.line_start {
                    break;
                }
            }
            let next = self.finder.find_iter(rest).find(|at| ends_line(rest.get(..*at).unwrap_or(&[])));
            let Some((before, from_mark)) = next.and_then(|at| rest.split_at_checked(at)) else { break };
            copied.extend_from_slice(before);
            rest = from_mark;
            self.line_start = true;
        }
        if !self.line_start {
            // What may become a mark with the next bytes waits for them.
            let waiting = (1..MARK.len()).find(|held| {
                MARK.get(..*held).and_then(|begun| rest.strip_suffix(begun)).is_some_and(ends_line)
            });
            self.held = waiting.unwrap_or(0);
            rest = rest.get(..rest.len() - self.held).unwrap_or(rest);
            self.line_start = ends_line(rest);
        }
        if copied.is_empty() {
            hand_on(rest, sink);
        } else {
            copied.extend_from_slice(rest);
            hand_on(&copied, sink);
        }
    }

    pub(super) fn finish(&mut self, sink: &mut dyn FnMut(&[u8])) {
        hand_on(MARK.get(..self.held).unwrap_or(&[]), sink);
        (self.held, self.line_start, self.stream_start) = (0, true, true);
    }

    /// Takes marks away from the front of a line. Still at the start of the line afterwards: more bytes are needed.
    fn past_marks<'a>(&mut self, bytes: &'a [u8], kept: &mut Vec<u8>) -> &'a [u8] {
        let mut rest = bytes;
        while let Some((first, after)) = rest.split_first() {
            if MARK.get(self.held) != Some(first) {
                kept.extend_from_slice(MARK.get(..self.held).unwrap_or(&[]));
                (self.held, self.line_start, self.stream_start) = (0, false, false);
                break;
            }
            rest = after;
            self.held += 1;
            if self.held == MARK.len() {
                self.held = 0;
                self.dropped += u64::from(!self.stream_start);
                self.stream_start = false;
            }
        }
        rest
    }
}

fn ends_line(bytes: &[u8]) -> bool {
    matches!(bytes.last(), Some(b'\n' | b'\r'))
}

fn hand_on(bytes: &[u8], sink: &mut dyn FnMut(&[u8])) {
    if !bytes.is_empty() {
        sink(bytes);
    }
}
