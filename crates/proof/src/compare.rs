//! Two reports, or two lists of findings, side by side: what differs, by place.

use std::collections::BTreeMap;
use std::ops::Range;

use plumbline_core::report::evidence::OPENS;
use plumbline_core::visible_text::sign;
use similar::{Algorithm, DiffOp, capture_diff_slices};

use crate::html::{Cut, Kind, Piece, cells, cut, visible};
use crate::pictures;
use crate::place::{Part, PartKind, Place, PlaceKind, Places};

/// Most pieces between the first and the last difference that are matched with each other; more are paired one by one. Matching
/// costs at worst their square (our choice: under a second).
const MOST_MATCHED: usize = 6000;
/// Characters of a text that are shown around what differs in it.
const AROUND: usize = 40;
/// Most letters of another script that are shown with their numbers: a word that is exchanged needs none.
const LOOK_ALIKES: usize = 12;
/// Characters of a row's name.
const LABEL: usize = 60;

/// What differs between a report and the one its data give.
pub(crate) fn reports(given: &[u8], wanted: &[u8]) -> Places {
    let both =
        Both { given, wanted, given_cut: cut(given), wanted_cut: cut(wanted), places: Places::default() };
    both.compare()
}

/// What differs between the findings a report carries and those its data give.
pub(crate) fn findings(carried: &[&str], remade: &[String]) -> Places {
    let remade: Vec<&str> = remade.iter().map(String::as_str).collect();
    let mut places = Places::default();
    for (old, new) in changes(carried, &remade) {
        for at in 0..old.len().max(new.len()) {
            let says = old.clone().nth(at).and_then(|at| carried.get(at)).copied().unwrap_or("");
            let gives = new.clone().nth(at).and_then(|at| remade.get(at)).copied().unwrap_or("");
            let named = if gives.is_empty() { says } else { gives };
            let row = named.split('\t').take(4).collect::<Vec<_>>().join(" ");
            let (says, gives) = window(says, gives);
            places.add(Place { row, says, gives, ..Place::new(PlaceKind::Finding, 0..0) });
        }
    }
    places
}

/// Ranges of two lists that don't match each other.
fn changes(old: &[&str], new: &[&str]) -> Vec<(Range<usize>, Range<usize>)> {
    fn number<'a>(texts: &[&'a str], known: &mut BTreeMap<&'a str, usize>) -> Vec<usize> {
        let mut numbers = Vec::with_capacity(texts.len());
        for text in texts {
            let next = known.len();
            numbers.push(*known.entry(text).or_insert(next));
        }
        numbers
    }
    let mut known = BTreeMap::new();
    let old = number(old, &mut known);
    let new = number(new, &mut known);
    unmatched(&old, &new)
}

fn unmatched(old: &[usize], new: &[usize]) -> Vec<(Range<usize>, Range<usize>)> {
    let first = old.iter().zip(new).take_while(|(one, other)| one == other).count();
    let rest = old.len().min(new.len()) - first;
    let last =
        old.iter().rev().zip(new.iter().rev()).take(rest).take_while(|(one, other)| one == other).count();
    let (old_range, new_range) = (first..old.len() - last, first..new.len() - last);
    if old_range.len() + new_range.len() > MOST_MATCHED {
        return vec![(old_range, new_range)];
    }
    let inside = |list: &[usize], range: &Range<usize>| list.get(range.clone()).unwrap_or(&[]).to_vec();
    let operations =
        capture_diff_slices(Algorithm::Myers, &inside(old, &old_range), &inside(new, &new_range));
    let moved = |range: Range<usize>| first + range.start..first + range.end;
    let mut found: Vec<(Range<usize>, Range<usize>)> = Vec::new();
    for operation in operations.iter().filter(|one| !matches!(one, DiffOp::Equal { .. })) {
        let (old, new) = (moved(operation.old_range()), moved(operation.new_range()));
        match found.last_mut() {
            // A deletion and an insertion side by side are one change.
            Some((last_old, last_new)) if last_old.end == old.start && last_new.end == new.start => {
                (last_old.end, last_new.end) = (old.end, new.end);
            }
            _ => found.push((old, new)),
        }
    }
    found
}

struct Both<'a> {
    given: &'a [u8],
    wanted: &'a [u8],
    given_cut: Cut,
    wanted_cut: Cut,
    places: Places,
}

impl<'a> Both<'a> {
    fn bytes(&self, range: &Range<usize>) -> (&'a [u8], &'a [u8]) {
        (self.given.get(range.clone()).unwrap_or(&[]), self.wanted.get(range.clone()).unwrap_or(&[]))
    }

    fn given_of(&self, piece: &Piece) -> &'a [u8] {
        self.bytes(&piece.bytes).0
    }

    fn wanted_of(&self, piece: &Piece) -> &'a [u8] {
        self.bytes(&piece.bytes).1
    }

    fn compare(mut self) -> Places {
        let mut known: BTreeMap<&[u8], usize> = BTreeMap::new();
        let mut number = |texts: Vec<&'a [u8]>| -> Vec<usize> {
            texts
                .into_iter()
                .map(|text| {
                    let next = known.len();
                    *known.entry(text).or_insert(next)
                })
                .collect()
        };
        let old = number(self.given_cut.pieces.iter().map(|piece| self.given_of(piece)).collect());
        let new = number(self.wanted_cut.pieces.iter().map(|piece| self.wanted_of(piece)).collect());
        for (old, new) in unmatched(&old, &new) {
            self.change(&old, &new);
        }
        if self.places.is_empty() {
            // Never silent.
            self.places.add(Place::new(PlaceKind::Markup, 0..self.given.len()));
        }
        self.places
    }

    /// One run of pieces against another.
    fn change(&mut self, old: &Range<usize>, new: &Range<usize>) {
        let given: Vec<Piece> = self.given_cut.pieces.get(old.clone()).unwrap_or(&[]).to_vec();
        let wanted: Vec<Piece> = self.wanted_cut.pieces.get(new.clone()).unwrap_or(&[]).to_vec();
        if given.len() == wanted.len() {
            for (one, other) in given.iter().zip(&wanted) {
                if self.given_of(one) != self.wanted_of(other) {
                    self.pair(&one.bytes, other);
                }
            }
            return;
        }
        // A damaged tag makes one piece of two, or two of one: what differs then lies inside one piece of the wanted report.
        if let (Some(first), Some(last), Some(wanted_first), Some(wanted_last)) =
            (given.first(), given.last(), wanted.first(), wanted.last())
        {
            let (given_span, wanted_span) =
                (first.bytes.start..last.bytes.end, wanted_first.bytes.start..wanted_last.bytes.end);
            let (one, other) = self.trimmed(&given_span, &wanted_span);
            let holds = |piece: &&Piece| {
                let whole = other.len() >= piece.bytes.len();
                piece.bytes.start <= other.start && other.end <= piece.bytes.end && !whole
            };
            if let Some(piece) = wanted.iter().find(holds).filter(|_| one.len() < longest(&given)) {
                self.damaged(one, piece);
                return;
            }
        }
        self.match_up(&given, &wanted, new);
    }

    /// Pieces that begin alike belong together; of the rest one side has more.
    fn match_up(&mut self, given: &[Piece], wanted: &[Piece], new: &Range<usize>) {
        let (mut old_at, mut new_at) = (0, 0);
        while let (Some(one), Some(other)) = (given.get(old_at), wanted.get(new_at)) {
            let same = self.given_of(one) == self.wanted_of(other);
            if same || one.kind == other.kind && self.name_of(one, true) == self.name_of(other, false) {
                if !same {
                    self.pair(&one.bytes, other);
                }
                (old_at, new_at) = (old_at + 1, new_at + 1);
            } else if given.len() - old_at >= wanted.len() - new_at {
                let near = self.near(new.start + new_at);
                self.extra(one, near.as_ref());
                old_at += 1;
            } else {
                self.missing(other, one.bytes.start);
                new_at += 1;
            }
        }
        for one in given.get(old_at..).unwrap_or(&[]) {
            let near = self.near(new.end);
            self.extra(one, near.as_ref());
        }
        let left = wanted.get(new_at..).unwrap_or(&[]);
        let at = given.last().map(|piece| piece.bytes.end);
        for other in left {
            let at = at.unwrap_or_else(|| self.position_of(new.start + new_at));
            self.missing(other, at);
        }
    }

    /// Where in the report a piece of the wanted one would stand: behind the piece before it.
    fn position_of(&self, wanted_at: usize) -> usize {
        let before = self.near(wanted_at);
        let found = before.and_then(|before| {
            let bytes = self.wanted_of(&before);
            let same = |piece: &&Piece| self.given_of(piece) == bytes;
            // Pieces that are alike stand many times; the nearest to where it should be is meant.
            let distance = |piece: &&Piece| piece.bytes.start.abs_diff(before.bytes.start);
            self.given_cut.pieces.iter().filter(same).min_by_key(distance).map(|piece| piece.bytes.end)
        });
        found.unwrap_or(0)
    }

    /// The piece of the wanted report before a place.
    fn near(&self, at: usize) -> Option<Piece> {
        self.wanted_cut.pieces.get(at.checked_sub(1)?).cloned()
    }

    /// What is left of two spans without what they begin and end with alike.
    fn trimmed(&self, given: &Range<usize>, wanted: &Range<usize>) -> (Range<usize>, Range<usize>) {
        let (one, other) = (self.bytes(given).0, self.bytes(wanted).1);
        let first = one.iter().zip(other).take_while(|(one, other)| one == other).count();
        let rest = one.len().min(other.len()) - first;
        let last =
            one.iter().rev().zip(other.iter().rev()).take(rest).take_while(|(one, other)| one == other);
        let last = last.count();
        (given.start + first..given.end - last, wanted.start + first..wanted.end - last)
    }

    fn name_of(&self, piece: &Piece, given: bool) -> String {
        let bytes = if given { self.given_of(piece) } else { self.wanted_of(piece) };
        let name = match piece.kind {
            Kind::Row => cells(bytes).into_iter().next().map_or_else(|| visible(bytes), |cell| cell.text),
            Kind::Tag => String::from_utf8_lossy(bytes).into_owned(),
            _ => String::new(),
        };
        short(&name, LABEL)
    }

    /// Section and row of a place, by a piece of the wanted report.
    fn placed(&self, mut place: Place, piece: &Piece) -> Place {
        place.section = self.wanted_cut.sections.get(piece.section).cloned().unwrap_or_default();
        let label =
            self.wanted_cut.labels.get(piece.label).map(|label| short(label, LABEL)).unwrap_or_default();
        place.row = match piece.kind {
            Kind::Row => {
                let own = self.name_of(piece, false);
                if label.is_empty() || label.starts_with(&own) {
                    if label.is_empty() { own } else { label }
                } else {
                    format!("{label} · {own}")
                }
            }
            Kind::Value => label,
            _ => String::new(),
        };
        place
    }

    /// A piece that became another.
    fn pair(&mut self, given: &Range<usize>, piece: &Piece) {
        let (one, _) = self.trimmed(given, &piece.bytes);
        let (old, new) = (self.bytes(given).0, self.wanted_of(piece));
        match piece.kind {
            Kind::Style => {
                let place = self.placed(Place::new(PlaceKind::Style, one), piece);
                self.places.add(place);
            }
            Kind::Script => self.script(given, piece),
            Kind::Row if self.by_cells(given, piece) => {}
            Kind::Text if self.pictures(given, piece) => {}
            _ => self.text_or_markup(one, old, new, piece, String::new()),
        }
    }

    /// The pictures of a figure, by the digests of their bytes. True where nothing else in it is another.
    fn pictures(&mut self, given: &Range<usize>, piece: &Piece) -> bool {
        let (old, new) = (self.bytes(given).0, self.wanted_of(piece));
        let (was, is) = (pictures::embedded(old), pictures::embedded(new));
        if was.len() != is.len() {
            return false;
        }
        let others: Vec<_> =
            was.iter().zip(&is).filter(|(one, other)| one.sha256 != other.sha256 || one.elsewhere).collect();
        for (one, other) in &others {
            let at = given.start + one.at.start..given.start + one.at.end;
            let wanted = piece.bytes.start + other.at.start..piece.bytes.start + other.at.end;
            let (at, _) = self.trimmed(&at, &wanted);
            let kind = if one.elsewhere { PlaceKind::Active } else { PlaceKind::Picture };
            let place = self.placed(Place::new(kind, at), piece);
            let (row, gives) = (pictures::name(new), other.sha256.clone());
            self.places.add(Place { row, says: one.says(old), gives, ..place });
        }
        !others.is_empty() && pictures::without(old, &was) == pictures::without(new, &is)
    }

    /// Cell by cell, where there are as many.
    fn by_cells(&mut self, given: &Range<usize>, piece: &Piece) -> bool {
        let (old, new) = (self.bytes(given).0, self.wanted_of(piece));
        let (old_cells, new_cells) = (cells(old), cells(new));
        let inside = |row: &'a [u8], range: &Range<usize>| row.get(range.clone()).unwrap_or(&[]);
        let before = |row: &'a [u8], first: Option<usize>| row.get(..first.unwrap_or(0)).unwrap_or(&[]);
        let starts =
            (old_cells.first().map(|cell| cell.bytes.start), new_cells.first().map(|cell| cell.bytes.start));
        if old_cells.len() != new_cells.len() || before(old, starts.0) != before(new, starts.1) {
            return false;
        }
        let heads = self.wanted_cut.heads.get(piece.head).cloned().unwrap_or_default();
        let mut column = 0;
        for (one, other) in old_cells.iter().zip(&new_cells) {
            let (was, is) = (inside(old, &one.bytes), inside(new, &other.bytes));
            if was != is {
                let at = given.start + one.bytes.start..given.start + one.bytes.end;
                let wanted = piece.bytes.start + other.bytes.start..piece.bytes.start + other.bytes.end;
                let (at, _) = self.trimmed(&at, &wanted);
                // A cell over several columns is under no heading of its own.
                let heading = if other.columns == 1 {
                    heads.get(column).cloned().unwrap_or_default()
                } else {
                    String::new()
                };
                self.text_or_markup(at, was, is, piece, heading);
            }
            column += other.columns;
        }
        true
    }

    fn text_or_markup(&mut self, at: Range<usize>, old: &[u8], new: &[u8], piece: &Piece, column: String) {
        let (was, is) = (visible(old), visible(new));
        let kind = if active(old) && !active(new) {
            PlaceKind::Active
        } else if was == is || piece.kind == Kind::Tag {
            PlaceKind::Markup
        } else {
            PlaceKind::Text
        };
        let (says, gives) = if kind == PlaceKind::Text {
            window(&was, &is)
        } else {
            window(&String::from_utf8_lossy(old), &String::from_utf8_lossy(new))
        };
        let place = self.placed(Place { column, says, gives, ..Place::new(kind, at) }, piece);
        self.places.add(place);
    }

    /// Bytes inside one piece of the wanted report that make other pieces of it.
    fn damaged(&mut self, given: Range<usize>, piece: &Piece) {
        if piece.kind == Kind::Script {
            let part = Part::of(PartKind::Frame);
            self.places.add(Place::of_part(PlaceKind::Changed, part, given));
            return;
        }
        let (start, end) = (given.start.saturating_sub(AROUND), (given.end + AROUND).min(self.given.len()));
        let old = self.bytes(&(start..end)).0;
        let kind = match piece.kind {
            Kind::Style => PlaceKind::Style,
            _ if active(old) => PlaceKind::Active,
            _ => PlaceKind::Markup,
        };
        let says = String::from_utf8_lossy(old).into_owned();
        let gives = short(&String::from_utf8_lossy(self.wanted_of(piece)), AROUND * 3);
        let place = self.placed(Place { says, gives, ..Place::new(kind, given) }, piece);
        self.places.add(place);
    }

    /// The element with the evidence: which record, or its tag.
    fn script(&mut self, given: &Range<usize>, piece: &Piece) {
        let (at, wanted) = self.trimmed(given, &piece.bytes);
        let inside = OPENS.len()..piece.bytes.len();
        let from = wanted.start - piece.bytes.start;
        let part = if inside.contains(&from) {
            record_at(self.wanted_of(piece), from)
        } else {
            Part::of(PartKind::Frame)
        };
        self.places.add(Place::of_part(PlaceKind::WrittenOtherwise, part, at));
    }

    fn extra(&mut self, one: &Piece, near: Option<&Piece>) {
        let bytes = self.given_of(one);
        let kind = match one.kind {
            Kind::Style => PlaceKind::Style,
            _ if active(bytes) => PlaceKind::Active,
            Kind::Tag => PlaceKind::Markup,
            _ => PlaceKind::Extra,
        };
        let says = match kind {
            PlaceKind::Extra => short(&visible(bytes), AROUND * 3),
            _ => short(&String::from_utf8_lossy(bytes), AROUND * 3),
        };
        let section = near.and_then(|piece| self.wanted_cut.sections.get(piece.section)).cloned();
        let row = if one.kind == Kind::Row { self.name_of(one, true) } else { String::new() };
        let section = section.unwrap_or_default();
        self.places.add(Place { section, row, says, ..Place::new(kind, one.bytes.clone()) });
    }

    fn missing(&mut self, other: &Piece, at: usize) {
        let bytes = self.wanted_of(other);
        let kind = match other.kind {
            Kind::Style => PlaceKind::Style,
            Kind::Tag => PlaceKind::Markup,
            _ => PlaceKind::Missing,
        };
        let gives = match kind {
            PlaceKind::Missing => short(&visible(bytes), AROUND * 3),
            _ => short(&String::from_utf8_lossy(bytes), AROUND * 3),
        };
        let mut place = Place { gives, ..Place::new(kind, at..at) };
        if other.kind == Kind::Script {
            place.part = Some(Part::of(PartKind::Frame));
        }
        let place = self.placed(place, other);
        self.places.add(place);
    }
}

/// The record of the evidence that holds a byte.
fn record_at(element: &[u8], at: usize) -> Part {
    let above = element.get(..at).unwrap_or(element);
    // Data stands in lines that begin with a space.
    let lines = memchr::memrchr_iter(b'\n', above).map(|end| end + 1);
    let start = lines.into_iter().find(|start| element.get(*start) != Some(&b' '));
    let line = start.and_then(|start| element.get(start..)).unwrap_or(&[]);
    let line = line.split(|byte| *byte == b'\n').next().unwrap_or(&[]);
    crate::records::part_of(&String::from_utf8_lossy(line))
}

/// What a browser would run, or fetch from elsewhere.
fn active(bytes: &[u8]) -> bool {
    let text = String::from_utf8_lossy(bytes).to_lowercase();
    let elements = [
        "<script", "<iframe", "<object", "<embed", "<link", "<base", "<form", "<meta", "<input", "<button",
        "<a ",
    ];
    let tags = text.split('<').skip(1).map(|tag| tag.split('>').next().unwrap_or(""));
    let handler = |tag: &str| {
        tag.split_ascii_whitespace().skip(1).any(|word| {
            word.starts_with("on") && word.contains('=')
                || word.starts_with("href=")
                || word.starts_with("src=")
        })
    };
    elements.iter().any(|element| text.contains(element)) || tags.into_iter().any(handler)
}

/// Two texts cut down to what differs in them and a little around it.
fn window(one: &str, other: &str) -> (String, String) {
    let (was, is): (Vec<char>, Vec<char>) = (one.chars().collect(), other.chars().collect());
    let first = was.iter().zip(&is).take_while(|(one, other)| one == other).count();
    let rest = was.len().min(is.len()) - first;
    let last =
        was.iter().rev().zip(is.iter().rev()).take(rest).take_while(|(one, other)| one == other).count();
    let alike = was.len() == is.len() && was.len() - first - last <= LOOK_ALIKES;
    let shown = |text: &[char]| {
        let (start, end) = (first.saturating_sub(AROUND), (text.len() - last + AROUND).min(text.len()));
        let end = end.min(start + AROUND * 5);
        let differs = first..text.len() - last;
        let mut middle = String::new();
        for at in start..end {
            let Some(letter) = text.get(at).copied() else { continue };
            middle.push(letter);
            // Two letters of two scripts may look the same: the number tells them apart.
            if alike && differs.contains(&at) && letter.is_alphanumeric() && !letter.is_ascii() {
                middle.push_str(&sign(letter));
            }
        }
        let (before, after) = (if start > 0 { "…" } else { "" }, if end < text.len() { "…" } else { "" });
        format!("{before}{middle}{after}")
    };
    (shown(&was), shown(&is))
}

fn short(text: &str, most: usize) -> String {
    match text.char_indices().nth(most) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or(text)),
        None => text.to_owned(),
    }
}

fn longest(pieces: &[Piece]) -> usize {
    pieces.iter().map(|piece| piece.bytes.len()).max().unwrap_or(0)
}
