//! Cells at their places to delimited text, bounded whatever places a file claims.

use super::{MOST_CELLS, MOST_COLUMNS, MOST_ROWS, Sink, Stop, WorkbookProblem, Written};

/// Bytes handed over at a time.
const PIECE: usize = 64 * 1024;

/// Writes a sheet from its first row down. Empty rows are written only once a row with something in it follows, and
/// empty cells only once a cell does, so that a sheet that claims a million empty rows is an empty text.
pub(super) struct SheetText<'s, 'k> {
    sink: &'s mut Sink<'k>,
    out: Vec<u8>,
    line: Vec<u8>,
    /// Cells in the line so far.
    columns: u32,
    /// Empty rows not yet written.
    blank: u32,
    /// Rows ended so far, with those not yet written.
    ended: u32,
    cells: u64,
    written: Written,
}

impl<'s, 'k> SheetText<'s, 'k> {
    pub(super) fn new(sink: &'s mut Sink<'k>) -> SheetText<'s, 'k> {
        SheetText {
            sink,
            out: Vec::with_capacity(PIECE * 2),
            line: Vec::new(),
            columns: 0,
            blank: 0,
            ended: 0,
            cells: 0,
            written: Written::default(),
        }
    }

    /// Puts a cell into the row being written. Cells come from left to right.
    pub(super) fn put(&mut self, column: u32, text: &str) -> Result<(), Stop> {
        if text.is_empty() {
            return Ok(());
        }
        if column >= MOST_COLUMNS {
            return Err(WorkbookProblem::TooManyCells.into());
        }
        if column < self.columns {
            return Err(WorkbookProblem::Broken.into());
        }
        self.count(u64::from(column + 1 - self.columns))?;
        let commas = if self.columns == 0 { column } else { column + 1 - self.columns };
        self.line.extend(std::iter::repeat_n(b',', commas as usize));
        self.columns = column + 1;
        write_cell(text, &mut self.line);
        Ok(())
    }

    /// Ends the row being written, which stands so many times.
    pub(super) fn end_row(&mut self, times: u32) -> Result<(), Stop> {
        self.ended = self.ended.saturating_add(times);
        if self.columns == 0 {
            self.blank = self.blank.saturating_add(times);
            return Ok(());
        }
        if self.ended > MOST_ROWS {
            return Err(WorkbookProblem::TooManyCells.into());
        }
        self.count(u64::from(self.columns) * u64::from(times.saturating_sub(1)))?;
        for _ in 0..std::mem::take(&mut self.blank) {
            self.out.push(b'\n');
            self.hand_over(PIECE)?;
        }
        self.written.columns = self.written.columns.max(self.columns);
        for _ in 0..times {
            self.out.extend_from_slice(&self.line);
            self.out.push(b'\n');
            self.hand_over(PIECE)?;
        }
        self.written.rows = self.ended;
        self.line.clear();
        self.columns = 0;
        Ok(())
    }

    /// Goes on to a row further down, counted from zero.
    pub(super) fn go_to_row(&mut self, row: u32) -> Result<(), Stop> {
        if row < self.ended {
            return Err(WorkbookProblem::Broken.into());
        }
        if row > self.ended {
            self.end_row(1)?;
            self.end_row(row - self.ended)?;
        }
        Ok(())
    }

    /// Hands over what is left and says what was written.
    pub(super) fn finish(mut self, outcome: Result<(), Stop>) -> Result<Written, WorkbookProblem> {
        let outcome = outcome.and_then(|()| self.end_row(1)).and_then(|()| self.hand_over(1));
        match outcome {
            Ok(()) => Ok(Written { whole: true, ..self.written }),
            Err(Stop::Enough) => Ok(self.written),
            Err(Stop::Problem(problem)) => Err(problem),
        }
    }

    fn count(&mut self, cells: u64) -> Result<(), Stop> {
        self.cells = self.cells.saturating_add(cells);
        if self.cells > MOST_CELLS { Err(WorkbookProblem::TooManyCells.into()) } else { Ok(()) }
    }

    fn hand_over(&mut self, from: usize) -> Result<(), Stop> {
        if self.out.len() < from {
            return Ok(());
        }
        let flow = (self.sink)(&self.out);
        self.out.clear();
        if flow.is_break() { Err(Stop::Enough) } else { Ok(()) }
    }
}

/// One cell, quoted only where it must be (RFC 4180, 2.6 and 2.7); a line break becomes a space, because a line is a
/// row.
fn write_cell(text: &str, line: &mut Vec<u8>) {
    let bytes = text.as_bytes();
    if memchr::memchr3(b'"', b',', b'\n', bytes).is_none() && memchr::memchr(b'\r', bytes).is_none() {
        line.extend_from_slice(bytes);
        return;
    }
    let quoted = memchr::memchr2(b'"', b',', bytes).is_some();
    if quoted {
        line.push(b'"');
    }
    let mut after_return = false;
    for &byte in bytes {
        match byte {
            b'\n' if after_return => {}
            b'\n' | b'\r' => line.push(b' '),
            b'"' => line.extend_from_slice(b"\"\""),
            _ => line.push(byte),
        }
        after_return = byte == b'\r';
    }
    if quoted {
        line.push(b'"');
    }
}
