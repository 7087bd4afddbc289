//! Where a table begins: delimiter, header row, decimal mark, and what a `Unit` column holds.

use plumbline_core::quantity::{DecimalMark, Unit};
use plumbline_core::reading::{ColumnMeaning, ColumnRole, Evidence, Identity};

use crate::cell::{self, CellText};
use crate::heading;
use crate::records::{Piece, Record, Splitter};

/// Rows that are looked at for a header.
const HEADER_ROWS: usize = 100;
/// Delimiters that are tried, the likelier first where they find equally much.
const DELIMITERS: [u8; 4] = [b',', b';', b'\t', b'|'];

/// A header and how its table is written.
pub(crate) struct FoundHeader {
    pub(crate) delimiter: u8,
    pub(crate) line: u32,
    pub(crate) columns: Vec<ColumnMeaning>,
}

struct Look {
    line: u32,
    header: Option<Vec<ColumnMeaning>>,
    measured: Vec<usize>,
}

/// The header of a table: under the delimiter that finds the most element columns, the first header with a
/// measurement below it.
///
/// The first and not the fullest: rows above the header are preamble and count nowhere, so a fuller header further
/// down must never turn readings into preamble; it starts a new block instead.
pub(crate) fn find_header(text: &[u8], whole: bool) -> Option<FoundHeader> {
    let mut best: Option<(usize, u8, Vec<Look>)> = None;
    for delimiter in DELIMITERS {
        let looks = look_at(text, delimiter, whole);
        let most = looks
            .iter()
            .filter_map(|look| look.header.as_deref())
            .map(heading::element_columns)
            .max()
            .unwrap_or(0);
        if most > best.as_ref().map_or(0, |(most, ..)| *most) {
            best = Some((most, delimiter, looks));
        }
    }
    let (most, delimiter, looks) = best?;
    let with_measurements = (0..looks.len()).find(|at| measured_below(&looks, *at));
    let chosen = with_measurements.or_else(|| {
        looks.iter().position(|look| {
            look.header.as_deref().is_some_and(|columns| {
                heading::element_columns(columns) == most && !heading::only_bare_names(columns)
            })
        })
    })?;
    let look = looks.into_iter().nth(chosen)?;
    Some(FoundHeader { delimiter, line: look.line, columns: look.header? })
}

fn look_at(text: &[u8], delimiter: u8, whole: bool) -> Vec<Look> {
    let mut looks: Vec<Look> = Vec::new();
    let mut splitter = Splitter::new(delimiter);
    let mut look = |piece: Piece<'_>| {
        let Piece::Record(record) = piece else { return };
        if looks.len() >= HEADER_ROWS || record.is_blank() {
            return;
        }
        let measured = (0..record.len()).filter(|at| is_measurement(record.cell(*at))).collect();
        looks.push(Look { line: record.line, header: read_header(&record), measured });
    };
    splitter.push(text, &mut look);
    // A torn last line is no header, unless the file ends there.
    if whole {
        splitter.finish(&mut look);
    }
    looks
}

/// True where the rows under a header, up to the next one, measure something in one of its element columns.
fn measured_below(looks: &[Look], at: usize) -> bool {
    let Some(columns) = looks.get(at).and_then(|look| look.header.as_deref()) else { return false };
    let values: Vec<usize> = columns
        .iter()
        .filter(|column| matches!(column.role, ColumnRole::Value { .. }))
        .map(|column| column.column as usize - 1)
        .collect();
    looks
        .iter()
        .skip(at + 1)
        .take_while(|look| look.header.is_none())
        .any(|look| look.measured.iter().any(|column| values.contains(column)))
}

/// The meaning of a row's columns, if it can be a header: no measurement in it, and more to go by than one symbol
/// that may be a size or a code (`S`, `K`).
pub(crate) fn read_header(record: &Record<'_>) -> Option<Vec<ColumnMeaning>> {
    if holds_measurements(record) {
        return None;
    }
    let headings: Vec<String> = record.cells().map(|cell| cell::text(cell).trim().to_owned()).collect();
    let columns = heading::meanings(&headings);
    let (mut values, mut others, mut with_unit) = (0, 0, false);
    for column in &columns {
        match column.role {
            ColumnRole::Value { unit, .. } => {
                values += 1;
                with_unit |= unit.is_some();
            }
            ColumnRole::Unused => {}
            _ => others += 1,
        }
    }
    (values >= 2 || values == 1 && (with_unit || others > 0)).then_some(columns)
}

/// True for a number, a bound or a word for "not detected".
pub(crate) fn is_measurement(cell: &[u8]) -> bool {
    !matches!(
        cell::read(cell, Some(DecimalMark::Point)),
        CellText::Blank | CellText::NotMeasured | CellText::Unreadable
    )
}

/// True where a row has a number or a censored cell, which no header has: a row `S1, Pb, 12` of a long table is not
/// a header for lead. A bare `LOD` may head a column.
pub(crate) fn holds_measurements(record: &Record<'_>) -> bool {
    record.cells().any(|cell| {
        let word = cell.trim_ascii().first().is_some_and(u8::is_ascii_alphabetic);
        !word && is_measurement(cell)
    })
}

/// A column headed `Unit` is the unit of measure where its first cells are units, and the physical unit where not.
pub(crate) fn unit_column_by_content(text: &[u8], found: &mut FoundHeader) {
    let (delimiter, line) = (found.delimiter, found.line);
    let headed = |column: &&mut ColumnMeaning| {
        let heading = column.heading.trim().to_lowercase();
        heading == "unit" || column.role == ColumnRole::Identity(Identity::Unit)
    };
    let taken = found.columns.iter().any(|column| column.role == ColumnRole::UnitOfMeasure);
    for column in found.columns.iter_mut().filter(headed) {
        let at = column.column as usize - 1;
        let (mut units, mut others) = (0_u32, 0_u32);
        let mut splitter = Splitter::new(delimiter);
        let mut look = |piece: Piece<'_>| {
            if let Piece::Record(record) = piece
                && record.line > line
                && let cell = cell::text(record.cell(at))
                && !cell.trim().is_empty()
            {
                if Unit::from_word(&cell).is_some() { units += 1 } else { others += 1 }
            }
        };
        splitter.push(text, &mut look);
        splitter.finish(&mut look);
        if units > 0 && others == 0 && !taken {
            column.role = ColumnRole::UnitOfMeasure;
            column.evidence = Evidence::HoldsUnits;
        }
    }
}

/// The decimal mark the first rows show, where they show only one.
pub(crate) fn sample_marks(text: &[u8], found: &FoundHeader) -> Option<DecimalMark> {
    let measured: Vec<usize> = found
        .columns
        .iter()
        .filter(|column| {
            matches!(
                column.role,
                ColumnRole::Value { .. } | ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }
            )
        })
        .map(|column| column.column as usize - 1)
        .collect();
    let (mut points, mut commas) = (0_u32, 0_u32);
    let mut splitter = Splitter::new(found.delimiter);
    let mut look = |piece: Piece<'_>| {
        let Piece::Record(record) = piece else { return };
        if record.line > found.line {
            for at in &measured {
                match cell::mark_evidence(record.cell(*at)) {
                    Some(DecimalMark::Point) => points += 1,
                    Some(DecimalMark::Comma) => commas += 1,
                    None => {}
                }
            }
        }
    };
    splitter.push(text, &mut look);
    splitter.finish(&mut look);
    match (points, commas) {
        (1.., 0) => Some(DecimalMark::Point),
        (0, 1..) => Some(DecimalMark::Comma),
        // With commas between cells, a point inside one is a decimal point.
        (0, 0) if found.delimiter == b',' => Some(DecimalMark::Point),
        _ => None,
    }
}
