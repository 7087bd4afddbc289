//! The same reading twice in one delivery: a second export with more columns, exports that overlap, rows pasted twice.
//!
//! # Which readings stand for the same measurement
//! Both state the same id; everything both state of who, where and when is equal; every cell both fill is equal in
//! state, value and printed error (the error where both print one); and what they share can't be chance:
//! - a time to the second in both, or
//! - a time to the minute in both and a number, or
//! - two numbers with printed errors.
//!
//! So two pieces on which nothing was detected, with one id and one date, stay two readings. A time whose seconds read
//! `00` counts as one to the minute: many programs write it so.
//!
//! # Which one stays
//! The one that says more: everything the other says (remarks, class, detection limits and the multiple of its errors
//! too), and then some. Where both say the same, the one further up. Where each says something the other doesn't, both
//! stay, and both sources say so.
//!
//! # Cost
//! Rows whose id stands only once are counted and never looked at. Rows of one id are sorted by their *shape*, which is
//! the list of what they state; rows of two shapes are compared by the hash of what both state, so that a file with one
//! id in every row costs rows times shapes, never rows times rows.

use std::collections::{BTreeMap, BTreeSet};
use std::hash::{Hash, Hasher};
use std::ops::Range;

use hashbrown::HashTable;
use rustc_hash::FxHasher;

use crate::quantity::SigmaMultiple;
use crate::reading::{Cell, CellState, Identity, Notice, NoticeCode, Source, Written};
use crate::text_pool::{TextId, TextPool};

/// Readings of one id whose shapes are all compared with one another, however many they are.
const READINGS_COMPARED: usize = 128;

/// Shapes of an id with more readings that are compared with one another; those beyond only with themselves. A table
/// has one shape, or a few where cells are left blank: what has more than this is no id of a sample.
const SHAPES_COMPARED: usize = 32;

/// Below this many pairs comparing is quicker than hashing.
const PAIRS_COMPARED_ONE_BY_ONE: usize = 64;

/// Takes readings that stand elsewhere too out of their sources, with a notice for each pair of sources.
///
/// Called by a door when all files were read, before the review. Called again it does nothing, or, when a source was
/// added, starts from what the files hold, so that the order of their coming doesn't matter.
pub fn set_duplicates_aside(sources: &mut [Source]) {
    if sources.iter().all(|source| source.duplicates.looked_for) {
        return;
    }
    for source in sources.iter_mut() {
        source.put_duplicates_back();
    }
    let found = find(sources);
    let mut notices = pair_notices(sources, &found.duplicates, NoticeCode::DuplicateReading);
    notices.extend(pair_notices(sources, &found.in_parts, NoticeCode::SameReadingInParts));
    let mut lots: Vec<BTreeSet<_>> = vec![BTreeSet::new(); sources.len()];
    let mut last = None;
    for (taken, stays) in &found.duplicates {
        let Some(readings) = sources.get(stays.source).map(|source| &source.readings) else { continue };
        let id = |identity| readings.identity_id(identity, stays.row);
        let lot = (taken.source, stays.source, id(Identity::Supplier), id(Identity::Lot));
        // Lots run on for many rows.
        if last.replace(lot) == Some(lot) {
            continue;
        }
        let text = |identity| readings.identity(identity, stays.row).map(str::to_owned);
        if let Some(lots) = lots.get_mut(taken.source) {
            lots.insert((text(Identity::Supplier), text(Identity::Lot), stays.source));
        }
    }
    let mut taken = found.duplicates.keys().peekable();
    for (index, (source, lots)) in sources.iter_mut().zip(lots).enumerate() {
        if taken.peek().is_some_and(|at| at.source == index) {
            let mut keep = vec![true; source.readings.len()];
            while let Some(at) = taken.next_if(|at| at.source == index) {
                if let Some(keep) = keep.get_mut(at.row) {
                    *keep = false;
                }
            }
            source.take_duplicates_out(keep);
        }
        source.duplicates.lots = lots;
        source.duplicates.looked_for = true;
    }
    for (source, notice) in notices {
        if let Some(source) = sources.get_mut(source) {
            // Not counted among the first thousand: there are few, and a second look must find and replace them.
            source.notices.kept.push(notice);
        }
    }
}

/// A reading: source and row.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct At {
    source: usize,
    row: usize,
}

/// Readings and the ones they stand beside.
#[derive(Default)]
struct Found {
    /// A duplicate and the one that stays.
    duplicates: BTreeMap<At, At>,
    /// A reading and another that says something else of the same measurement.
    in_parts: BTreeMap<At, At>,
}

/// One notice for each pair of sources: at the first reading, for all of them.
fn pair_notices(sources: &[Source], pairs: &BTreeMap<At, At>, code: NoticeCode) -> Vec<(usize, Notice)> {
    let mut notices: BTreeMap<(usize, usize), Notice> = BTreeMap::new();
    for (at, other) in pairs {
        let line = |at: &At| sources.get(at.source).map_or(0, |source| source.readings.line(at.row));
        let notice = notices.entry((at.source, other.source)).or_insert_with(|| Notice {
            line: line(at),
            column: 0,
            heading: String::new(),
            code,
            found: format!("{}:{}", sources.get(other.source).map_or("", |one| &one.name), line(other)),
            rows: 0,
        });
        notice.rows += 1;
    }
    notices.into_iter().map(|((source, _), notice)| (source, notice)).collect()
}

fn find(sources: &[Source]) -> Found {
    let mut found = Found::default();
    let mut seen = BTreeSet::new();
    // A file with the same bytes as another is merged with it whole; its rows are not to be found one by one.
    let looked_at: Vec<usize> = sources
        .iter()
        .enumerate()
        .filter(|(_, source)| source.bytes == 0 || seen.insert((source.sha256.as_str(), source.sheet_read())))
        .filter(|(_, source)| !source.readings.is_empty())
        .map(|(index, _)| index)
        .collect();
    let mut texts = Texts::new(sources, looked_at.len() > 1);
    let mut groups = Groups::default();
    for &source in &looked_at {
        let Some(readings) = sources.get(source).map(|source| &source.readings) else { continue };
        for row in 0..readings.len() {
            groups.count(texts.number(source, readings.identity_id(Identity::Id, row)));
        }
    }
    if !groups.any_twice() {
        return found;
    }
    groups.make_room();
    for &source in &looked_at {
        let Some(readings) = sources.get(source).map(|source| &source.readings) else { continue };
        for row in 0..readings.len() {
            groups.add(texts.number(source, readings.identity_id(Identity::Id, row)), At { source, row });
        }
    }
    let mut multiples = Multiples { of_source: vec![Vec::new(); sources.len()] };
    let mut group = Group::default();
    for rows in groups.all() {
        group.clear();
        for at in rows {
            if let Some(source) = sources.get(at.source) {
                group.add(*at, source, &mut texts, &mut multiples);
            }
        }
        group.look(&mut found);
    }
    found
}

/// Texts of several pools by one number each; with one source the pool's own numbers serve.
struct Texts<'a> {
    sources: &'a [Source],
    pool: Option<TextPool>,
    /// By source and its own number; 0 where not asked yet.
    known: Vec<Vec<u32>>,
}

impl<'a> Texts<'a> {
    fn new(sources: &'a [Source], several: bool) -> Texts<'a> {
        Texts { sources, pool: several.then(TextPool::default), known: vec![Vec::new(); sources.len()] }
    }

    /// The number of a text; 0 is no text.
    fn number(&mut self, source: usize, text: TextId) -> u32 {
        let Some(pool) = &mut self.pool else { return text.number() as u32 };
        let (Some(known), Some(own)) =
            (self.known.get_mut(source), self.sources.get(source).map(|source| &source.readings.pool))
        else {
            return 0;
        };
        if known.is_empty() {
            known.resize(own.len() + 1, 0);
        }
        let Some(known) = known.get_mut(text.number()) else { return 0 };
        if *known == 0
            && let Some(text) = own.get(text)
        {
            *known = pool.intern(text).number() as u32;
        }
        *known
    }
}

/// Readings by the number of their id, those that stand alone left out.
#[derive(Default)]
struct Groups {
    /// How many readings an id has; then where its group ends so far.
    counts: Vec<u32>,
    ends: Vec<usize>,
    rows: Vec<At>,
    ranges: Vec<Range<usize>>,
}

impl Groups {
    fn count(&mut self, id: u32) {
        let id = id as usize;
        if id >= self.counts.len() {
            self.counts.resize((id + 1).max(self.counts.len() * 2), 0);
        }
        if let Some(count) = self.counts.get_mut(id) {
            *count = count.saturating_add(u32::from(id > 0));
        }
    }

    fn any_twice(&self) -> bool {
        self.counts.iter().any(|count| *count > 1)
    }

    fn make_room(&mut self) {
        let mut start = 0;
        for count in &self.counts {
            self.ends.push(start);
            if *count > 1 {
                self.ranges.push(start..start + *count as usize);
                start += *count as usize;
            }
        }
        self.rows.resize(start, At { source: 0, row: 0 });
    }

    fn add(&mut self, id: u32, at: At) {
        let id = id as usize;
        if self.counts.get(id).is_some_and(|count| *count > 1)
            && let Some(end) = self.ends.get_mut(id)
        {
            if let Some(row) = self.rows.get_mut(*end) {
                *row = at;
            }
            *end += 1;
        }
    }

    fn all(&self) -> impl Iterator<Item = &[At]> {
        self.ranges.iter().filter_map(|range| self.rows.get(range.clone()))
    }
}

/// The stated multiples of a block's errors, by the place of the element in the store.
struct Multiples {
    of_source: Vec<Vec<Option<Vec<Option<SigmaMultiple>>>>>,
}

impl Multiples {
    fn of_row(&mut self, index: usize, source: &Source, row: usize) -> &[Option<SigmaMultiple>] {
        let Some(block) = source.blocks.partition_point(|block| block.first_reading <= row).checked_sub(1)
        else {
            return &[];
        };
        let Some(blocks) = self.of_source.get_mut(index) else { return &[] };
        if blocks.is_empty() {
            blocks.resize(source.blocks.len(), None);
        }
        let Some(kept) = blocks.get_mut(block) else { return &[] };
        kept.get_or_insert_with(|| {
            let stated = |element| source.blocks.get(block).and_then(|block| block.stated_multiple(element));
            source.readings.elements().iter().map(|column| stated(column.element)).collect()
        })
    }
}

/// What a reading states: sets of identities and of elements, as bits.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Shape {
    identities: u16,
    cells: u128,
    errors: u128,
    limits: u128,
    multiples: u128,
}

/// Identities that two readings of the same measurement may word differently.
const WORDED: u16 = 1 << Identity::Class as u16 | 1 << Identity::Note as u16;

impl Shape {
    const EMPTY: Shape = Shape { identities: 0, cells: 0, errors: 0, limits: 0, multiples: 0 };

    /// What both state.
    fn shared(self, other: Shape) -> Shape {
        Shape {
            identities: self.identities & other.identities,
            cells: self.cells & other.cells,
            errors: self.errors & other.errors,
            limits: self.limits & other.limits,
            multiples: self.multiples & other.multiples,
        }
    }

    fn holds(self, other: Shape) -> bool {
        self.shared(other) == other
    }

    /// The part that must be equal in readings of the same measurement.
    fn measured(self) -> Shape {
        Shape { identities: self.identities & !WORDED, limits: 0, multiples: 0, ..self }
    }
}

/// How finely a time is stated.
#[derive(Clone, Copy, PartialEq, Eq)]
enum TimeOfDay {
    None,
    Minute,
    Second,
}

/// The first clock in a text: digits around a colon, and seconds where they say more than `00`.
fn time_of_day(text: &str) -> TimeOfDay {
    if let Some((_, rest)) = text.split_once(['分', '분']) {
        let seconds = rest.bytes().take_while(u8::is_ascii_digit).any(|digit| digit != b'0');
        return if seconds { TimeOfDay::Second } else { TimeOfDay::Minute };
    }
    let Some((before, after)) = text.split_once(':') else { return TimeOfDay::None };
    let minutes = after.bytes().take_while(u8::is_ascii_digit).count();
    if minutes == 0 || !before.ends_with(|c: char| c.is_ascii_digit()) {
        return TimeOfDay::None;
    }
    let seconds = after.get(minutes..).and_then(|rest| rest.strip_prefix(':')).unwrap_or("");
    let fraction = |c: &char| c.is_ascii_digit() || *c == '.' || *c == ',';
    if seconds.chars().take_while(fraction).any(|c| matches!(c, '1'..='9')) {
        TimeOfDay::Second
    } else {
        TimeOfDay::Minute
    }
}

/// A cell that says something.
#[derive(Clone, Copy)]
struct Stated {
    bit: u128,
    cell: Cell,
    /// The number of the text of a cell that is known by its text alone.
    text: u32,
    multiple: Option<SigmaMultiple>,
}

struct Entry {
    at: At,
    shape: Shape,
    time: TimeOfDay,
    identities: [u32; 15],
    cells: Range<usize>,
}

/// The readings of one id.
#[derive(Default)]
struct Group {
    entries: Vec<Entry>,
    cells: Vec<Stated>,
}

impl Group {
    fn clear(&mut self) {
        self.entries.clear();
        self.cells.clear();
    }

    fn add(&mut self, at: At, source: &Source, texts: &mut Texts<'_>, multiples: &mut Multiples) {
        let readings = &source.readings;
        let mut shape = Shape::EMPTY;
        let mut identities = [0; 15];
        for (identity, number) in Identity::ALL.into_iter().zip(&mut identities) {
            let text = readings.identity_id(identity, at.row);
            if text.is_some() {
                *number = texts.number(at.source, text);
                shape.identities |= 1 << identity as u16;
            }
        }
        let start = self.cells.len();
        let multiples = multiples.of_row(at.source, source, at.row);
        for (place, column) in readings.elements().iter().enumerate() {
            let cell = column.cell(at.row);
            if matches!(cell.state, CellState::NoColumn | CellState::Blank) {
                continue;
            }
            let bit = 1 << column.element.atomic_number();
            shape.cells |= bit;
            let mut multiple = None;
            if cell.printed_error.is_some() {
                shape.errors |= bit;
                multiple = multiples.get(place).copied().flatten();
                shape.multiples |= if multiple.is_some() { bit } else { 0 };
            }
            shape.limits |= if cell.detection_limit.is_some() { bit } else { 0 };
            let text = match (cell.state, column.written(at.row)) {
                (CellState::Text | CellState::UnitUnknown, Written::Text(id)) => texts.number(at.source, id),
                _ => 0,
            };
            self.cells.push(Stated { bit, cell, text, multiple });
        }
        let time = readings.identity(Identity::Time, at.row).map_or(TimeOfDay::None, time_of_day);
        self.entries.push(Entry { at, shape, time, identities, cells: start..self.cells.len() });
    }

    fn entry(&self, index: usize) -> (&Entry, &[Stated]) {
        let entry = &self.entries[index];
        (entry, self.cells.get(entry.cells.clone()).unwrap_or(&[]))
    }

    /// What both of two readings state, where they state it alike, is too much for chance.
    fn is_no_chance(&self, index: usize, shared: Shape) -> bool {
        let (entry, cells) = self.entry(index);
        let numbers = |mask: u128| {
            cells.iter().filter(|one| one.bit & mask != 0 && one.cell.state == CellState::Number).count()
        };
        let timed = shared.identities & (1 << Identity::Time as u16) != 0;
        match (timed, entry.time) {
            (true, TimeOfDay::Second) => true,
            (true, TimeOfDay::Minute) if numbers(shared.cells) > 0 => true,
            _ => numbers(shared.cells & shared.errors) >= 2,
        }
    }

    fn hash(&self, index: usize, shared: Shape) -> u64 {
        let (entry, cells) = self.entry(index);
        let mut hasher = FxHasher::default();
        for (place, number) in entry.identities.iter().enumerate() {
            if shared.identities & 1 << place != 0 {
                number.hash(&mut hasher);
            }
        }
        for one in cells.iter().filter(|one| one.bit & shared.cells != 0) {
            (one.cell.state as u8).hash(&mut hasher);
            one.cell.value.units().hash(&mut hasher);
            one.text.hash(&mut hasher);
            if one.bit & shared.errors != 0 {
                one.cell.printed_error.map(crate::quantity::MassFraction::units).hash(&mut hasher);
            }
        }
        hasher.finish()
    }

    fn equal(&self, one: usize, other: usize, shared: Shape) -> bool {
        let ((one, one_cells), (other, other_cells)) = (self.entry(one), self.entry(other));
        let identities = one.identities.iter().zip(&other.identities).enumerate();
        let asked = |cell: &&Stated| cell.bit & shared.cells != 0;
        let cells = one_cells.iter().filter(asked).zip(other_cells.iter().filter(asked));
        identities.into_iter().all(|(place, (a, b))| shared.identities & 1 << place == 0 || a == b)
            && cells.into_iter().all(|(a, b)| {
                let asked = |mask: u128| a.bit & mask != 0;
                a.cell.state == b.cell.state
                    && a.cell.value == b.cell.value
                    && a.text == b.text
                    && (!asked(shared.errors) || a.cell.printed_error == b.cell.printed_error)
                    && (!asked(shared.limits) || a.cell.detection_limit == b.cell.detection_limit)
                    && (!asked(shared.multiples) || a.multiple == b.multiple)
            })
    }

    /// Runs of readings of one shape, in order of their first reading.
    fn runs(&mut self) -> Vec<(Shape, Range<usize>)> {
        // They come in the order of their places, and a stable sort leaves them so within a shape.
        self.entries.sort_by_key(|entry| entry.shape);
        let mut runs: Vec<(Shape, Range<usize>)> = Vec::new();
        for (index, entry) in self.entries.iter().enumerate() {
            match runs.last_mut() {
                Some((shape, range)) if *shape == entry.shape => range.end = index + 1,
                _ => runs.push((entry.shape, index..index + 1)),
            }
        }
        runs.sort_by_key(|(_, range)| self.entries.get(range.start).map(|entry| entry.at));
        runs
    }

    fn look(&mut self, found: &mut Found) {
        let runs = self.runs();
        let compared = if self.entries.len() <= READINGS_COMPARED { runs.len() } else { SHAPES_COMPARED };
        let all: Vec<usize> = (0..self.entries.len()).collect();
        let mut stays: Vec<Option<usize>> = vec![None; all.len()];
        for (lesser, fuller) in pairs_compared(runs.len(), compared) {
            if let (Some((lesser_shape, lesser)), Some((fuller_shape, fuller))) =
                (runs.get(lesser), runs.get(fuller))
                && fuller_shape.holds(*lesser_shape)
            {
                let (among, range) = (all.get(fuller.clone()), all.get(lesser.clone()));
                let matched = self.matches(among.unwrap_or(&[]), range.unwrap_or(&[]), *lesser_shape, &stays);
                for (index, fuller) in matched {
                    stays[index] = Some(fuller);
                }
            }
        }
        let staying: Vec<Vec<usize>> = runs
            .iter()
            .map(|(_, range)| range.clone().filter(|index| stays[*index].is_none()).collect())
            .collect();
        let mut beside: Vec<Option<usize>> = vec![None; all.len()];
        for (own, other) in pairs_compared(runs.len(), compared) {
            if let (Some((shape, _)), Some((other_shape, _)), Some(range), Some(among)) =
                (runs.get(own), runs.get(other), staying.get(own), staying.get(other))
            {
                let shared = shape.shared(*other_shape).measured();
                for (index, other) in self.matches(among, range, shared, &beside) {
                    beside[index] = Some(other);
                    // Within one run a match is always one further up, which then has this one beside it.
                    beside[other] = beside[other].or(Some(index));
                }
            }
        }
        for (index, entry) in self.entries.iter().enumerate() {
            let mut kept = stays[index];
            // Each step leads to one that says more, or stands further up, so this ends.
            while let Some(next) = kept.and_then(|kept| stays[kept]) {
                kept = Some(next);
            }
            if let Some(kept) = kept {
                found.duplicates.insert(entry.at, self.entries[kept].at);
            } else if let Some(other) = beside[index] {
                found.in_parts.insert(entry.at, self.entries[other].at);
            }
        }
    }

    /// Readings of `range` that have no match yet, each with the first of `among` that says the same of what `shared`
    /// names. The two are one list, or have no reading in common; of one list, only matches further up count.
    fn matches(
        &self,
        among: &[usize],
        range: &[usize],
        shared: Shape,
        matched: &[Option<usize>],
    ) -> Vec<(usize, usize)> {
        let one_list = among.first() == range.first();
        let wanted = range
            .iter()
            .copied()
            .filter(|index| matched[*index].is_none() && self.is_no_chance(*index, shared));
        if among.len() * range.len() <= PAIRS_COMPARED_ONE_BY_ONE {
            return wanted
                .filter_map(|index| {
                    let before = |other: &&usize| !one_list || **other < index;
                    let mut others = among.iter().take_while(before);
                    others.find(|other| self.equal(**other, index, shared)).map(|other| (index, *other))
                })
                .collect();
        }
        let mut table: HashTable<usize> = HashTable::with_capacity(among.len());
        let hash_again = |index: &usize| self.hash(*index, shared);
        if !one_list {
            for index in among {
                let hash = self.hash(*index, shared);
                if table.find(hash, |other| self.equal(*other, *index, shared)).is_none() {
                    table.insert_unique(hash, *index, hash_again);
                }
            }
        }
        let mut found = Vec::new();
        for index in wanted {
            let hash = self.hash(index, shared);
            if let Some(other) = table.find(hash, |other| self.equal(*other, index, shared)) {
                found.push((index, *other));
            } else if one_list {
                table.insert_unique(hash, index, hash_again);
            }
        }
        found
    }
}

/// Which runs are compared with which: the first so many with one another, each with itself.
fn pairs_compared(runs: usize, compared: usize) -> impl Iterator<Item = (usize, usize)> {
    (0..runs).flat_map(move |one| {
        let others = if one < compared { 0..runs.min(compared) } else { one..one + 1 };
        others.map(move |other| (one, other))
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::column::ErrorKind;
    use crate::quantity::MassFraction;
    use crate::reading::{Block, ColumnMeaning, ColumnRole, Evidence, Layout};
    use crate::substance::Element;

    fn milligrams(value: i64) -> MassFraction {
        MassFraction::from_units(value * 1_000_000)
    }

    fn number(value: i64, error: i64) -> Cell {
        Cell {
            state: CellState::Number,
            value: milligrams(value),
            printed_error: (error > 0).then(|| milligrams(error)),
            detection_limit: None,
        }
    }

    fn below(limit: i64) -> Cell {
        Cell { state: CellState::BelowDetection, value: milligrams(limit), ..Cell::NO_COLUMN }
    }

    const NOT_DETECTED: Cell = Cell { state: CellState::NotDetected, ..Cell::NO_COLUMN };
    const BLANK: Cell = Cell { state: CellState::Blank, ..Cell::NO_COLUMN };

    /// A row: `id=S1 time=...` and cells.
    type Row<'a> = (&'a str, Vec<(Element, Cell)>);

    fn source(name: &str, rows: &[Row<'_>]) -> Source {
        let mut source = Source {
            name: name.to_owned(),
            sha256: name.to_owned(),
            bytes: 1,
            rows_in: rows.len() as u64,
            ..Source::default()
        };
        for (at, (stated, cells)) in rows.iter().enumerate() {
            source.readings.begin(at as u32 + 2);
            for part in stated.split(' ') {
                let (code, text) = part.split_once('=').expect("code=text");
                source.readings.set_identity(Identity::from_code(code).expect("an identity"), text);
            }
            for (element, cell) in cells {
                // A dash, say: text in the cell, and nothing measured.
                let blank = cell.state == CellState::Blank;
                let text = source.readings.pool.intern(&format!("t{at}"));
                let written = if blank { Written::Text(text) } else { Written::Nothing };
                source.readings.element_column(*element).push(*cell, written);
            }
        }
        source.readings.close();
        source.blocks.push(block(0, &[]));
        source
    }

    fn block(first_reading: usize, multiples: &[(Element, u16)]) -> Block {
        let columns = multiples
            .iter()
            .map(|(element, hundredths)| ColumnMeaning {
                column: 1,
                heading: String::new(),
                role: ColumnRole::Error {
                    element: *element,
                    oxide: None,
                    error: ErrorKind {
                        multiple: SigmaMultiple::from_hundredths(*hundredths),
                        ..ErrorKind::PLAIN
                    },
                },
                evidence: Evidence::ElementHeading,
            })
            .collect();
        Block {
            header_line: 1,
            fingerprint: String::new(),
            layout: Layout::Wide,
            stated_above: None,
            first_reading,
            columns,
            mark: None,
            set_unit: None,
            limit_in_error_column: false,
        }
    }

    /// What is left of each source, `name: lines`, and its notices.
    fn left(sources: &[Source]) -> Vec<String> {
        let lines = |source: &Source| {
            let readings = &source.readings;
            (0..readings.len()).map(|row| readings.line(row).to_string()).collect::<Vec<_>>().join(" ")
        };
        let notice = |notice: &Notice| {
            format!("; {} {} x{} {}", notice.line, notice.code.code(), notice.rows, notice.found)
        };
        sources
            .iter()
            .map(|source| {
                assert_eq!(source.rows_in, source.rows_duplicate + source.readings.len() as u64);
                let notices: String = source.notices.kept.iter().map(notice).collect();
                format!("{}: {}{notices}", source.name, lines(source))
            })
            .collect()
    }

    fn aside(mut sources: Vec<Source>) -> Vec<String> {
        set_duplicates_aside(&mut sources);
        let once = left(&sources);
        set_duplicates_aside(&mut sources);
        assert_eq!(left(&sources), once, "looking twice changes nothing");
        once
    }

    const PB: Element = Element::PB;
    const CD: Element = Element::CD;
    const BR: Element = Element::BR;

    #[test]
    fn a_row_pasted_twice_counts_once() {
        let row = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        let rows = [("id=S1", row()), ("id=S2", row()), ("id=S1", row()), ("id=S1", row())];
        assert_eq!(aside(vec![source("a", &rows)]), ["a: 2 3; 4 duplicate_reading x2 a:2"]);
    }

    #[test]
    fn a_second_export_with_more_columns_stands_for_the_first() {
        let first = source("a", &[("id=S1 lot=L1", vec![(PB, number(812, 15)), (CD, number(40, 3))])]);
        let more = vec![(PB, number(812, 15)), (CD, number(40, 3)), (BR, below(9))];
        let second = source("b", &[("id=S1 lot=L1 time=2026-11-25T10:15:31 spot=2", more)]);
        assert_eq!(aside(vec![first, second]), ["a: ; 2 duplicate_reading x1 b:2", "b: 2"]);
    }

    #[test]
    fn errors_added_by_a_second_export_are_more_said_where_the_time_shows_the_same_measurement() {
        let timed = "id=S1 time=2026-11-25T10:15:31";
        let bare = || vec![(PB, number(812, 0)), (CD, number(40, 0))];
        let full = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        assert_eq!(
            aside(vec![source("a", &[(timed, bare())]), source("b", &[(timed, full())])]),
            ["a: ; 2 duplicate_reading x1 b:2", "b: 2"]
        );
        assert_eq!(
            aside(vec![source("a", &[("id=S1", bare())]), source("b", &[("id=S1", full())])]),
            ["a: 2", "b: 2"],
            "without a time, numbers alone are no proof"
        );
    }

    #[test]
    fn two_pieces_without_a_detection_are_never_merged_unless_the_second_is_the_same() {
        let nothing = || vec![(PB, NOT_DETECTED), (CD, below(5)), (BR, NOT_DETECTED)];
        for (time, merged) in [
            ("id=S1", false),
            ("id=S1 time=2026-11-25", false),
            ("id=S1 time=2026-11-25T10:15", false),
            ("id=S1 time=2026-11-25T10:15+01:00", false),
            ("id=S1 time=10:15:00", false),
            ("id=S1 time=2026-11-25T10:15:31", true),
            ("id=S1 time=10时15分31秒", true),
            ("id=S1 time=10:15:00.25", true),
        ] {
            let out = aside(vec![source("a", &[(time, nothing()), (time, nothing())])]);
            assert_eq!(out[0].contains("duplicate_reading"), merged, "{time}: {out:?}");
        }
    }

    #[test]
    fn a_time_to_the_minute_needs_a_number_beside_it() {
        let time = "id=S1 time=2026-11-25T10:15";
        let row = || vec![(PB, number(812, 0)), (CD, NOT_DETECTED)];
        assert_eq!(
            aside(vec![source("a", &[(time, row()), (time, row())])]),
            ["a: 2; 3 duplicate_reading x1 a:2"]
        );
    }

    #[test]
    fn anything_both_state_differently_makes_two_measurements() {
        let row = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        for other in ["spot=2", "unit=2", "lot=2", "part=2", "instrument=2", "time=2", "seconds=2", "mode=2"]
        {
            let stated = other.replace("=2", "=1");
            let (one, two) = (format!("id=S1 {stated}"), format!("id=S1 {other}"));
            assert_eq!(aside(vec![source("a", &[(&one, row()), (&two, row())])]), ["a: 2 3"], "{other}");
        }
        for cell in [number(41, 3), number(40, 4), below(40), NOT_DETECTED] {
            let other = vec![(PB, number(812, 15)), (BR, number(7, 1)), (CD, cell)];
            let one = vec![(PB, number(812, 15)), (BR, number(7, 1)), (CD, number(40, 3))];
            assert_eq!(aside(vec![source("a", &[("id=S1", one), ("id=S1", other)])]), ["a: 2 3"], "{cell:?}");
        }
        let rows = [("part=P", row()), ("part=P", row())];
        assert_eq!(aside(vec![source("a", &rows)]), ["a: 2 3"], "no id, no duplicate");
    }

    #[test]
    fn cells_known_by_their_text_alone_are_compared_by_it() {
        let with = |text: &str| {
            let mut one = source("a", &[("id=S1 time=10:15:31", vec![])]);
            let id = one.readings.pool.intern(text);
            let cell = Cell { state: CellState::UnitUnknown, ..Cell::NO_COLUMN };
            one.readings.element_column(PB).push(cell, Written::Text(id));
            one.readings.close();
            one
        };
        let named =
            |name: &str, one: Source| Source { name: name.to_owned(), sha256: name.to_owned(), ..one };
        assert_eq!(aside(vec![named("a", with("12")), named("b", with("13"))]), ["a: 2", "b: 2"]);
        assert_eq!(
            aside(vec![named("a", with("12")), named("b", with("12"))]),
            ["a: 2", "b: ; 2 duplicate_reading x1 a:2"]
        );
    }

    #[test]
    fn readings_that_each_say_something_the_other_does_not_both_stay() {
        let row = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        for (one, other) in [
            ("id=S1 spot=1", "id=S1 lot=L1"),
            ("id=S1 class=polymer", "id=S1 class=metal"),
            ("id=S1 note=dirty", "id=S1 note=cleaned"),
        ] {
            assert_eq!(
                aside(vec![source("a", &[(one, row())]), source("b", &[(other, row())])]),
                ["a: 2; 2 same_reading_in_parts x1 b:2", "b: 2; 2 same_reading_in_parts x1 a:2"],
                "{one} and {other}"
            );
        }
        let (left, right) =
            (vec![(PB, number(812, 15)), (CD, BLANK)], vec![(PB, BLANK), (CD, number(40, 3))]);
        let time = "id=S1 time=10:15:31";
        assert_eq!(
            aside(vec![source("a", &[(time, left), (time, right)])]),
            ["a: 2 3; 2 same_reading_in_parts x2 a:3"]
        );
    }

    #[test]
    fn multiples_and_detection_limits_are_said_too() {
        let row = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        let stating = |name: &str, multiples: &[(Element, u16)]| {
            let one = source(name, &[("id=S1", row())]);
            Source { blocks: vec![block(0, multiples)], ..one }
        };
        assert_eq!(
            aside(vec![stating("a", &[]), stating("b", &[(PB, 200)])]),
            ["a: ; 2 duplicate_reading x1 b:2", "b: 2"],
            "two sigma is more than nobody knows"
        );
        assert_eq!(
            aside(vec![stating("a", &[(PB, 100)]), stating("b", &[(PB, 200)])]),
            ["a: 2; 2 same_reading_in_parts x1 b:2", "b: 2; 2 same_reading_in_parts x1 a:2"]
        );
        let limited = |limit| Cell { detection_limit: Some(milligrams(limit)), ..number(40, 3) };
        let with = |cell| vec![(PB, number(812, 15)), (CD, cell)];
        assert_eq!(
            aside(vec![source("a", &[("id=S1", with(number(40, 3))), ("id=S1", with(limited(9)))])]),
            ["a: 3; 2 duplicate_reading x1 a:3"]
        );
    }

    #[test]
    fn a_chain_of_fuller_exports_leads_to_the_fullest() {
        let cells = |count: usize| {
            vec![(PB, number(812, 15)), (CD, number(40, 3)), (BR, number(7, 1))][..count].to_vec()
        };
        let sources = vec![
            source("a", &[("id=S1", cells(2))]),
            source("b", &[("id=S1 lot=L", cells(2))]),
            source("c", &[("id=S1 lot=L", cells(3))]),
        ];
        assert_eq!(
            aside(sources),
            ["a: ; 2 duplicate_reading x1 c:2", "b: ; 2 duplicate_reading x1 c:2", "c: 2"]
        );
    }

    #[test]
    fn files_with_the_same_bytes_are_left_to_the_rule_for_whole_files() {
        let row = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        let one = source("a", &[("id=S1", row())]);
        let other = Source { name: "b".to_owned(), ..one.clone() };
        assert_eq!(aside(vec![one, other]), ["a: 2", "b: 2"]);
    }

    #[test]
    fn the_order_in_which_files_come_does_not_matter() {
        let cells = || vec![(PB, number(812, 15)), (CD, number(40, 3))];
        let build = |name: &str| match name {
            "a" => source("a", &[("id=S1 lot=L", cells()), ("id=S2", cells()), ("id=S1 lot=L", cells())]),
            "b" => source("b", &[("id=S9", cells()), ("id=S1", cells()), ("id=S2 note=x", cells())]),
            _ => source("c", &[("id=S2 note=y", cells()), ("id=S1 lot=L spot=1", cells())]),
        };
        let mut at_once: Vec<Source> = ["a", "b", "c"].map(build).into();
        set_duplicates_aside(&mut at_once);
        let expected = left(&at_once);
        assert!(expected.concat().contains("in_parts") && expected.concat().contains("duplicate_reading"));
        for order in [["a", "b", "c"], ["c", "b", "a"], ["b", "c", "a"], ["c", "a", "b"]] {
            let mut sources: Vec<Source> = Vec::new();
            for name in order {
                let at = sources.partition_point(|one| one.name.as_str() < name);
                sources.insert(at, build(name));
                set_duplicates_aside(&mut sources);
            }
            assert_eq!(left(&sources), expected, "{order:?}");
        }
    }

    #[test]
    fn blocks_and_written_texts_follow_the_readings_that_stay_and_come_back() {
        let cells = |value, br| vec![(PB, number(value, 15)), (CD, number(40, 3)), (BR, br)];
        let mut one = source(
            "a",
            &[
                ("id=S1", cells(1, BLANK)),
                ("id=S1", cells(1, BLANK)),
                ("id=S2", cells(2, number(3, 1))),
                ("id=S1", cells(1, BLANK)),
                ("id=S3", cells(3, BLANK)),
            ],
        );
        one.blocks = [0, 1, 3, 4].map(|first| block(first, &[])).into();
        let original = one.clone();
        let before = (left(std::slice::from_ref(&original)), texts(&original), starts(&original));
        assert_eq!(before.1, ["t0", "t1", "-", "t3", "t4"]);
        let mut sources = vec![one];
        set_duplicates_aside(&mut sources);
        assert_eq!(left(&sources), ["a: 2 4 6; 3 duplicate_reading x2 a:2"]);
        assert_eq!(starts(&sources[0]), [0, 1, 2, 2]);
        assert_eq!(texts(&sources[0]), ["t0", "-", "t4"]);
        sources[0].put_duplicates_back();
        assert_eq!((left(&sources), texts(&sources[0]), starts(&sources[0])), before);
    }

    fn starts(source: &Source) -> Vec<usize> {
        source.blocks.iter().map(|block| block.first_reading).collect()
    }

    fn texts(source: &Source) -> Vec<&str> {
        let column = source.readings.column_of(BR).expect("a column");
        (0..source.readings.len())
            .map(|row| match column.written(row) {
                Written::Text(id) => source.readings.pool.get(id).unwrap_or(""),
                _ => "-",
            })
            .collect()
    }
}
