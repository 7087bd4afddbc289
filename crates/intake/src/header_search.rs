//! Where a table begins: delimiter, heading row, how its readings lie, decimal mark, and what its columns show.

use std::collections::{BTreeMap, BTreeSet};

use plumbline_core::acts;
use plumbline_core::column::{ColumnMeaning, ColumnRole, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{DecimalMark, Unit};
use plumbline_core::reading::Layout;

use crate::cell;
use crate::header::{self, Header, HeaderReader, is_measurement};
use crate::heading::{self, vocabulary};
use crate::records::{Piece, Splitter};

/// Rows that are looked at for a header.
const HEADER_ROWS: usize = 100;
/// Columns beyond which a row is of no table (a sheet of a workbook has at most 16 384; from memory, ECMA-376).
pub(crate) const MOST_COLUMNS: usize = 16_384;
/// Columns among whose cells the names of elements are looked for.
const NAME_COLUMNS: usize = 40;
/// Delimiters that are tried, the likelier first where they find equally much.
const DELIMITERS: [u8; 4] = [b',', b';', b'\t', b'|'];

/// A header and how its table is written.
pub(crate) struct FoundHeader {
    pub(crate) delimiter: u8,
    pub(crate) line: u32,
    pub(crate) header: Header,
    /// The column of labels, for a table on its side.
    pub(crate) labels: Option<usize>,
    /// How many elements its columns, or its rows, name: what the choice among delimiters and sheets rests on.
    pub(crate) elements: usize,
}

/// Why no header was found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum NotFound {
    /// No row names an element's column.
    NoElementColumn,
    /// A row with more columns than any table has.
    TooManyColumns(usize),
    /// The line a person named holds nothing.
    NothingOnLine,
}

struct Look {
    line: u32,
    cells: Vec<String>,
    header: Option<Header>,
    measured: Vec<usize>,
    /// Columns whose cell names an element, with the element's number.
    named: Vec<(usize, u8)>,
}

/// The header of a table: under the delimiter that finds the most elements, the first header with a measurement
/// below it.
///
/// The first and not the fullest: rows above the header are preamble and count nowhere, so a fuller header further
/// down must never turn readings into preamble; it starts a new block instead.
pub(crate) fn find_header(
    text: &[u8],
    whole: bool,
    reader: &HeaderReader,
    told_line: Option<u32>,
) -> Result<FoundHeader, NotFound> {
    let mut best: Option<FoundHeader> = None;
    let mut widest = 0;
    for delimiter in DELIMITERS {
        let looks = look_at(text, delimiter, whole, reader, told_line);
        widest = widest.max(looks.iter().map(|look| look.cells.len()).max().unwrap_or(0));
        let found = match told_line {
            Some(line) => told(&looks, delimiter, line, reader),
            None => in_looks(&looks, delimiter, reader),
        };
        if let Some(found) = found
            && best.as_ref().is_none_or(|best| found.elements > best.elements)
        {
            best = Some(found);
        }
    }
    if widest > MOST_COLUMNS {
        return Err(NotFound::TooManyColumns(widest));
    }
    best.ok_or(if told_line.is_some() { NotFound::NothingOnLine } else { NotFound::NoElementColumn })
}

/// The row a person pointed at, under the delimiter that parts it best; for a table without headings, the numbers of its
/// columns.
fn told(looks: &[Look], delimiter: u8, line: u32, reader: &HeaderReader) -> Option<FoundHeader> {
    if line == 0 {
        let columns = looks.iter().map(|look| look.cells.len()).max()?;
        let header = reader.of_headings(&(1..=columns).map(|column| column.to_string()).collect::<Vec<_>>());
        return Some(FoundHeader { delimiter, line, header, labels: None, elements: columns });
    }
    let look = looks.iter().find(|look| look.line == line)?;
    let header = reader.of_headings(&look.cells);
    let elements = heading::element_columns(&header.columns) * 1000 + look.cells.len();
    Some(FoundHeader { delimiter, line, header, labels: None, elements })
}

/// The best header under one delimiter: a wide table where two columns or more name elements, else whatever names
/// most.
fn in_looks(looks: &[Look], delimiter: u8, reader: &HeaderReader) -> Option<FoundHeader> {
    let wide = wide_header(looks, delimiter);
    let is_measured = |found: &FoundHeader| {
        looks.iter().position(|look| look.line == found.line).is_some_and(|at| measured_below(looks, at))
    };
    let is_wide = |found: &FoundHeader| found.header.layout != Layout::Long && is_measured(found);
    if wide.as_ref().is_some_and(|found| found.elements >= 2 && is_wide(found)) {
        return wide;
    }
    let on_its_side = turned(looks, delimiter, reader);
    let sides = |long: &FoundHeader| on_its_side.is_some() && stands_behind_samples(looks, long);
    let wide = wide.filter(|found| found.header.layout != Layout::Long || !sides(found));
    let by_cells = long_by_cells(looks, delimiter, reader).filter(|found| !sides(found));
    // One element with its unit is a table too: another one further down must not take its rows for its own.
    let first = |found: &FoundHeader| {
        [&by_cells, &on_its_side].into_iter().flatten().all(|other| other.line >= found.line)
    };
    if wide.as_ref().is_some_and(|found| {
        heading::names_a_reading_and_a_unit(&found.header.columns) && is_wide(found) && first(found)
    }) {
        return wide;
    }
    let others = [by_cells, on_its_side];
    others.into_iter().flatten().fold(wide, |best, other| match best {
        Some(best) if best.elements >= other.elements => Some(best),
        _ => Some(other),
    })
}

/// True where columns of numbers stand before a long table's values and their headings are no word known here: they
/// may be samples. One is enough where the values are an average of them, which clears what one of them holds.
fn stands_behind_samples(looks: &[Look], long: &FoundHeader) -> bool {
    let columns = &long.header.columns;
    let is_value = |column: &&ColumnMeaning| matches!(column.role, ColumnRole::AnyValue { .. });
    let Some(value) = columns.iter().find(is_value).filter(|value| value.evidence != Evidence::Told) else {
        return false;
    };
    let samples = columns.iter().take(value.column as usize - 1).filter(|column| {
        let at = column.column as usize - 1;
        column.role == ColumnRole::Unused
            && !vocabulary::names_a_summary(&column.heading)
            && looks.iter().any(|look| look.line > long.line && look.measured.contains(&at))
    });
    samples.count() >= if vocabulary::names_a_summary(&value.heading) { 1 } else { 2 }
}

fn wide_header(looks: &[Look], delimiter: u8) -> Option<FoundHeader> {
    let promised = |look: &Look| look.header.as_ref().map_or(0, |header| elements_promised(header, looks));
    let most = looks.iter().map(promised).max().filter(|most| *most > 0);
    let by_hand = looks.iter().position(|look| look.header.as_ref().is_some_and(|header| header.told > 0));
    let with_measurements = || {
        (0..looks.len())
            .find(|at| looks.get(*at).is_some_and(|look| promised(look) > 0) && measured_below(looks, *at))
    };
    let fullest = || {
        looks.iter().position(|look| {
            look.header.as_ref().is_some_and(|header| {
                Some(heading::element_columns(&header.columns)) == most
                    && !heading::only_bare_names(&header.columns)
            })
        })
    };
    let at = by_hand.or_else(with_measurements).or_else(fullest)?;
    let look = looks.get(at)?;
    let header = look.header.clone()?;
    let elements = promised(look).max(usize::from(header.told > 0));
    Some(FoundHeader { delimiter, line: look.line, header, labels: None, elements })
}

/// How many elements a header's table speaks of: its columns, or the names in its column of names.
fn elements_promised(header: &Header, looks: &[Look]) -> usize {
    if header.layout != Layout::Long {
        return heading::element_columns(&header.columns);
    }
    let names = header.columns.iter().find(|column| column.role == ColumnRole::ElementName);
    names.map_or(0, |column| named_in(looks, column.column as usize - 1).len())
}

fn named_in(looks: &[Look], column: usize) -> BTreeSet<u8> {
    looks
        .iter()
        .flat_map(|look| look.named.iter().filter(|(at, _)| *at == column).map(|(_, element)| *element))
        .collect()
}

/// A long table whose column of names is known by its cells: the nearest row above the names that heads values.
fn long_by_cells(looks: &[Look], delimiter: u8, reader: &HeaderReader) -> Option<FoundHeader> {
    let mut best: Option<FoundHeader> = None;
    let columns: BTreeSet<usize> =
        looks.iter().flat_map(|look| look.named.iter().map(|(column, _)| *column)).collect();
    for column in columns {
        let elements = named_in(looks, column).len();
        let rows = looks.iter().filter(|look| look.named.iter().any(|(at, _)| *at == column)).count();
        if rows < 2 || best.as_ref().is_some_and(|best| best.elements >= elements) {
            continue;
        }
        let first = looks.iter().position(|look| look.named.iter().any(|(at, _)| *at == column))?;
        let header = looks.iter().take(first).rev().find_map(|look| {
            if look.cells.len() < 2 || !look.measured.is_empty() {
                return None;
            }
            let roles = heading::long_roles(&look.cells, column);
            let values = roles.iter().any(|one| matches!(one.role, ColumnRole::AnyValue { .. }));
            values.then(|| (look.line, reader.with_roles(roles, header::fingerprint(&look.cells))))
        });
        if let Some((line, header)) = header.filter(|(_, header)| header.layout == Layout::Long) {
            best = Some(FoundHeader { delimiter, line, header, labels: None, elements });
        }
    }
    best
}

/// A table on its side: a column of labels, each an element's, with measurements to the right.
fn turned(looks: &[Look], delimiter: u8, reader: &HeaderReader) -> Option<FoundHeader> {
    let mut best: Option<FoundHeader> = None;
    for column in 0..3 {
        let named = |look: &Look| look.named.iter().any(|(at, _)| *at == column);
        let right = |look: &Look| look.measured.iter().any(|at| *at > column);
        let elements: BTreeSet<u8> = looks
            .iter()
            .filter(|look| named(look) && right(look))
            .flat_map(|look| look.named.iter().filter(|(at, _)| *at == column).map(|(_, element)| *element))
            .collect();
        let rows = looks.iter().filter(|look| named(look) && right(look)).count();
        // Each element heads one row; two where its uncertainty has a row of its own.
        let once = rows <= elements.len() * 2;
        if elements.len() < 2 || !once || best.as_ref().is_some_and(|best| best.elements >= elements.len()) {
            continue;
        }
        let first = looks.iter().position(named)?;
        let start = first_row(looks, first, column);
        let labels: Vec<String> =
            looks.iter().skip(start).filter_map(|look| look.cells.get(column).cloned()).collect();
        let header = reader.with_roles(heading::meanings(&labels), header::fingerprint(&labels));
        let line = looks.get(start)?.line;
        best = Some(FoundHeader { delimiter, line, header, labels: Some(column), elements: elements.len() });
    }
    best
}

/// The first row of a table on its side: the rows above the elements that fill at least half as many columns name its
/// readings (sample, lot, date). Beside each reading may stand its uncertainty, so that what names readings fills fewer
/// (class, material): right above, two are enough.
fn first_row(looks: &[Look], first: usize, labels: usize) -> usize {
    let readings = |look: &Look| {
        look.cells.iter().enumerate().filter(|(at, cell)| *at > labels && !cell.trim().is_empty()).count()
    };
    let filled = looks.get(first).map_or(0, readings);
    let mut start = first;
    while let Some(above) = start.checked_sub(1)
        && let (Some(look), Some(below)) = (looks.get(above), looks.get(start))
        && readings(look) > 0
        && (readings(look) * 2 >= filled && below.line - look.line <= 2
            || readings(look) >= 2 && below.line - look.line == 1)
    {
        start = above;
    }
    start
}

fn look_at(
    text: &[u8],
    delimiter: u8,
    whole: bool,
    reader: &HeaderReader,
    told_line: Option<u32>,
) -> Vec<Look> {
    let mut looks: Vec<Look> = Vec::new();
    let mut splitter = Splitter::new(delimiter);
    let mut look = |piece: Piece<'_>| {
        let Piece::Record(record) = piece else { return };
        let wanted = looks.len() < HEADER_ROWS || told_line.is_some_and(|line| line == record.line);
        if !wanted || record.is_blank() {
            return;
        }
        if record.len() > MOST_COLUMNS {
            let cells = vec![String::new(); record.len()];
            looks.push(Look {
                line: record.line,
                cells,
                header: None,
                measured: Vec::new(),
                named: Vec::new(),
            });
            return;
        }
        let measured: Vec<usize> = (0..record.len()).filter(|at| is_measurement(record.cell(*at))).collect();
        let cells = header::headings(&record);
        let named = cells
            .iter()
            .take(NAME_COLUMNS)
            .enumerate()
            .filter(|(at, cell)| !measured.contains(at) && (1..=40).contains(&cell.len()))
            .filter_map(|(at, cell)| {
                heading::element_cell(cell).map(|named| (at, named.element.atomic_number()))
            })
            .collect();
        looks.push(Look { line: record.line, header: reader.read(&record), cells, measured, named });
    };
    splitter.push(text, &mut look);
    // A torn last line is no header, unless the file ends there.
    if whole {
        splitter.finish(&mut look);
    }
    looks
}

/// True where the rows under a header, up to the next one, measure something in one of its value columns.
fn measured_below(looks: &[Look], at: usize) -> bool {
    let Some(header) = looks.get(at).and_then(|look| look.header.as_ref()) else { return false };
    let values: Vec<usize> = header
        .columns
        .iter()
        .filter(|column| matches!(column.role, ColumnRole::Value { .. } | ColumnRole::AnyValue { .. }))
        .map(|column| column.column as usize - 1)
        .collect();
    looks
        .iter()
        .skip(at + 1)
        .take_while(|look| look.header.is_none())
        .any(|look| look.measured.iter().any(|column| values.contains(column)))
}

/// What the first rows of a table show of its columns beyond their headings.
#[derive(Clone, Debug, Default)]
pub(crate) struct Sample {
    /// The decimal mark the numbers show, where they show only one.
    pub(crate) mark: Option<DecimalMark>,
    /// The first cell of the column that states the multiple of its row's uncertainty.
    pub(crate) multiple: Option<String>,
    /// What the dates show.
    pub(crate) dates: crate::dates::DateEvidence,
}

/// True where a heading says time, be it the moment or how long; beside a column of dates it may be either.
pub(crate) fn says_time(column: &ColumnMeaning) -> bool {
    let time = ColumnRole::Identity(Identity::Time);
    let alone =
        || heading::meanings(std::slice::from_ref(&column.heading)).first().map(|one| one.role.clone());
    match column.evidence {
        Evidence::Told => false,
        Evidence::AlreadyTaken => alone() == Some(time),
        _ => column.role == time,
    }
}

fn is_taken(found: &FoundHeader, role: &ColumnRole) -> bool {
    found.header.columns.iter().any(|column| column.role == *role)
}

/// Looks at the rows below a header: decides what a column headed `Unit` holds, and takes the sample.
pub(crate) fn sample(text: &[u8], found: &mut FoundHeader) -> Sample {
    let headed = |column: &ColumnMeaning| {
        let heading = column.heading.trim().to_lowercase();
        column.evidence != Evidence::Told
            && (heading == "unit" || column.role == ColumnRole::Identity(Identity::Unit))
    };
    let places = |wanted: &dyn Fn(&ColumnMeaning) -> bool| -> Vec<usize> {
        let columns = found.header.columns.iter().filter(|column| wanted(column));
        columns.map(|column| column.column as usize - 1).collect()
    };
    let measured = places(&|column| column.role.is_measured());
    let maybe_units = places(&headed);
    let dates_at = places(&|column| column.role == ColumnRole::Identity(Identity::Time));
    let times_at = places(&says_time);
    let mut times: BTreeMap<usize, (u32, u32)> = BTreeMap::new();
    let multiple_at = places(&|column| column.role == ColumnRole::ErrorMultiple);
    let mut units: BTreeMap<usize, (u32, u32)> = BTreeMap::new();
    let (mut points, mut commas) = (0_u32, 0_u32);
    let mut sample = Sample::default();
    let mut splitter = Splitter::new(found.delimiter);
    let mut look = |piece: Piece<'_>| {
        let Piece::Record(record) = piece else { return };
        if record.line <= found.line {
            return;
        }
        for at in &measured {
            match cell::mark_evidence(record.cell(*at)) {
                Some(DecimalMark::Point) => points += 1,
                Some(DecimalMark::Comma) => commas += 1,
                None => {}
            }
        }
        for at in &maybe_units {
            let text = cell::text(record.cell(*at));
            if !text.trim().is_empty() {
                let (known, others) = units.entry(*at).or_default();
                if Unit::from_word(&text).is_some() { *known += 1 } else { *others += 1 }
            }
        }
        for at in &dates_at {
            sample.dates.look(record.cell(*at));
        }
        for at in &times_at {
            let cell = record.cell(*at).trim_ascii();
            if !cell.is_empty() {
                let (seconds, others) = times.entry(*at).or_default();
                if acts::parse_seconds(&cell::text(cell)).is_some() { *seconds += 1 } else { *others += 1 }
            }
        }
        if let Some(at) = multiple_at.first()
            && sample.multiple.is_none()
        {
            let text = cell::text(record.cell(*at));
            sample.multiple = (!text.trim().is_empty()).then(|| text.trim().to_owned());
        }
    };
    splitter.push(text, &mut look);
    splitter.finish(&mut look);
    let taken = is_taken(found, &ColumnRole::UnitOfMeasure);
    for column in found.header.columns.iter_mut().filter(|column| headed(column) && !taken) {
        // A row in µg/cm² may stand among rows in mg/kg; beside the name of an element one word of a unit settles it.
        let settled = match units.get(&(column.column as usize - 1)) {
            Some((known @ 1.., others)) => known >= others || found.header.layout == Layout::Long,
            _ => false,
        };
        if settled {
            column.role = ColumnRole::UnitOfMeasure;
            column.evidence = Evidence::HoldsUnits;
        }
    }
    let seconds_taken = is_taken(found, &ColumnRole::Identity(Identity::Seconds));
    let long = found.header.columns.iter_mut().find(|column| {
        let place = column.column as usize - 1;
        says_time(column) && matches!(times.get(&place), Some((1.., 0)))
    });
    if let Some(column) = long.filter(|_| !seconds_taken) {
        if column.role == ColumnRole::Identity(Identity::Time) {
            sample.dates = crate::dates::DateEvidence::default();
        }
        column.role = ColumnRole::Identity(Identity::Seconds);
        column.evidence = Evidence::HoldsSeconds;
    }
    sample.mark = match (points, commas) {
        (1.., 0) => Some(DecimalMark::Point),
        (0, 1..) => Some(DecimalMark::Comma),
        // With commas between cells, a point inside one is a decimal point.
        (0, 0) if found.delimiter == b',' => Some(DecimalMark::Point),
        _ => None,
    };
    sample
}
