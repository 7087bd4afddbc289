//! Between which checks a reading lies, and what they make of it.
//!
//! Checks are told apart by instrument and mode, then by element and by the class of their matrix. Where times are known
//! the order is that of time, over all files; a file in which some reading has no time (or only a day) goes by its own
//! order, from top to bottom, and sees its own checks only. Where neither instrument nor mode is stated, that is one
//! instrument in one mode.
//!
//! # Decision
//! Where a check before is enough, none has to follow; one that follows and failed counts all the same. Each standard is
//! followed by itself: one that failed is cleared by being measured again, not by another one beside it.
//! A good side needs one good standard; any failed one spoils it, and one that could not be judged takes that from none. A blank that was contaminated is likewise cleared by a
//! clean blank only, and concerns every class; a clean one brackets nothing, since a blind analyser sees a clean blank
//! too. What failed on an instrument or in a mode that nobody names counts against every one it can be of, and
//! what failed anywhere counts against readings that name none. The rule is our own; US EPA Method 6200, 9.4 asks for a
//! check sample at the beginning of each working day, during active analyses and at the end of each day. Checks further
//! apart than a day still bracket a reading, and hold its lot as a missing check does: see [`Brackets::far`].

use std::collections::BTreeMap;

use super::{CheckFinding, CheckKind, CheckVerdict, ELEMENTS, OfElements, Trust};
use crate::acts::{Bracket, Settings, folded_name};
use crate::identity::Identity;
use crate::instant::Moment;
use crate::judging::SourceReview;
use crate::material::MaterialClass;
use crate::reading::{CellState, Source};
use crate::rules::JUDGED;
use crate::text_pool::TextId;

/// What the order of a source's readings is known by.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Order {
    /// Times without an offset from UTC.
    Time,
    /// Times with one: they can't be compared with those without.
    TimeWithOffset,
    /// The order of the rows of this source.
    Rows(usize),
}

/// An order, an instrument and a mode; empty where not stated.
type Key = (Order, String, String);

/// A place in an order; equal places of different sources are of unknown order.
type Place = (i64, usize, usize);

/// From best to worst.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum State {
    Good,
    /// A standard that something besides its reading keeps from being judged good: see [`is_lacking`].
    Lacking,
    /// A standard that could not be judged: it makes nothing good.
    Open,
    Bad,
}

#[derive(Clone, Debug)]
struct Event {
    place: Place,
    kind: CheckKind,
    sample: usize,
    /// Per judged element: the class it speaks for, and how.
    says: [Option<(MaterialClass, State)>; ELEMENTS],
    deciseconds: Option<u16>,
    /// When, where it is known; of a day alone its beginning.
    second: Option<i64>,
}

/// What one instrument in one mode saw, for one class: the trust of each element between two neighbouring checks.
#[derive(Clone, Debug, Default)]
struct Table {
    /// Before the first check, after it, and so on; per shift, the checked shifts, and at the end all others.
    gaps: Vec<[Trust; ELEMENTS]>,
    /// The same if what is lacking were there; empty where nothing is.
    mended: Vec<[Trust; ELEMENTS]>,
    /// Where the run of gaps with the same trust begins.
    runs: Vec<[u32; ELEMENTS]>,
    /// The last second at which a reading there is near its good checks; empty where every one is.
    near_until: Vec<[i64; ELEMENTS]>,
    /// The shortest and the longest time of a standard of this class.
    deciseconds: Option<(u16, u16)>,
}

#[derive(Clone, Debug)]
struct Station {
    events: Vec<Event>,
    /// The shifts that were checked, in order; empty where shifts don't count.
    shifts: Vec<i64>,
    tables: [Table; CLASSES.len()],
    /// Per class: the elements of which a standard was measured and no certificate states a value.
    uncertified: [[bool; ELEMENTS]; CLASSES.len()],
    /// Per class and element: the last check, by its place among all, of which something is lacking.
    lacking: [[Option<usize>; ELEMENTS]; CLASSES.len()],
}

impl Station {
    fn empty() -> Station {
        let tables = std::array::from_fn(|_| Table::default());
        let uncertified = [[false; ELEMENTS]; CLASSES.len()];
        let lacking = [[None; ELEMENTS]; CLASSES.len()];
        Station { events: Vec::new(), shifts: Vec::new(), tables, uncertified, lacking }
    }
}

impl Event {
    /// As it were if nothing were lacking.
    fn mended(&self) -> Event {
        let says = self.says.map(|says| {
            says.map(|(class, state)| (class, if state == State::Lacking { State::Good } else { state }))
        });
        Event { says, ..self.clone() }
    }

    /// Only what failed; `None` where nothing did.
    fn only_bad(&self) -> Option<Event> {
        let says = self.says.map(|says| says.filter(|(_, state)| *state == State::Bad));
        // How long it took tells nothing of an instrument it may not be of.
        says.iter().any(Option::is_some).then(|| Event { says, deciseconds: None, ..self.clone() })
    }
}

const CLASSES: [MaterialClass; 5] = MaterialClass::ALL;

/// Where a reading lies among the checks that concern it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Between {
    pub(super) station: usize,
    pub(super) class: MaterialClass,
    first: usize,
    last: usize,
}

/// The checks of an inspection in order, ready to be asked.
#[derive(Clone, Debug)]
pub struct Brackets {
    rule: Bracket,
    shift_starts: Vec<u16>,
    /// Per source.
    orders: Vec<Order>,
    keys: BTreeMap<Key, usize>,
    stations: Vec<Station>,
}

impl Brackets {
    /// Puts check readings in order. `readings_of` gives how many of a source's readings are reviewed at all: none, for a
    /// file that came in twice.
    pub(super) fn new(
        settings: &Settings,
        sources: &[Source],
        reviewers: &[SourceReview<'_>],
        readings_of: &dyn Fn(usize) -> usize,
        checks: &[(CheckFinding, usize, usize)],
    ) -> Brackets {
        let mut brackets = Brackets {
            rule: settings.bracket(),
            shift_starts: settings.shift_starts(),
            orders: Vec::new(),
            keys: BTreeMap::new(),
            stations: Vec::new(),
        };
        brackets.orders = sources
            .iter()
            .enumerate()
            .map(|(at, source)| brackets.order_of(at, source, readings_of(at)))
            .collect();
        let mut samples: BTreeMap<String, usize> = BTreeMap::new();
        for (index, (check, at, row)) in checks.iter().enumerate() {
            let (Some(source), Some(reviewer)) = (sources.get(*at), reviewers.get(*at)) else { continue };
            let Some(place) = brackets.place(*at, source, *row) else { continue };
            let count = samples.len();
            let event = Event {
                place,
                kind: check.kind,
                sample: *samples.entry(folded_name(&check.sample)).or_insert(count),
                says: says(check),
                deciseconds: reviewer.deciseconds(*row),
                second: check.moment.map(second_of),
            };
            let station = brackets.station_of(*at, source, *row);
            for (element, said) in event.says.iter().enumerate() {
                if let Some((class, State::Lacking)) = said
                    && let Some(last) =
                        station.lacking.get_mut(*class as usize).and_then(|of| of.get_mut(element))
                {
                    *last = Some(index);
                }
            }
            station.events.push(event);
            for (class, element) in uncertified(check) {
                if let Some(found) =
                    station.uncertified.get_mut(class as usize).and_then(|of| of.get_mut(element))
                {
                    *found = true;
                }
            }
        }
        brackets.accuse_all(sources, readings_of);
        let per_shift = brackets.rule == Bracket::PerShift;
        let before_only = brackets.rule == Bracket::Before;
        for station in &mut brackets.stations {
            station.events.sort_by_key(|event| event.place);
            if per_shift {
                station.shifts = station.events.iter().map(|event| event.place.0).collect();
                station.shifts.dedup();
            }
            let gaps_of = |events: &[Event], class| {
                if per_shift { shifts(events, class) } else { gaps(events, class, before_only) }
            };
            let lacks = station.lacking.iter().flatten().any(Option::is_some);
            let mended: Vec<Event> = station.events.iter().filter(|_| lacks).map(Event::mended).collect();
            station.tables = CLASSES.map(|class| {
                let gaps = gaps_of(&station.events, class);
                let mended = if lacks { gaps_of(&mended, class) } else { Vec::new() };
                let near_until =
                    if per_shift { Vec::new() } else { near_until(&station.events, class, before_only) };
                let deciseconds = times(&station.events, class);
                Table { runs: runs(&gaps), gaps, mended, near_until, deciseconds }
            });
        }
        // A shift asks for times; where only the order of rows is known, nothing shows that a good check was of the shift.
        if per_shift {
            for ((order, ..), at) in &brackets.keys {
                if let (Order::Rows(_), Some(station)) = (order, brackets.stations.get_mut(*at)) {
                    let tables = station.tables.iter_mut();
                    for trust in
                        tables.flat_map(|table| table.gaps.iter_mut().chain(&mut table.mended)).flatten()
                    {
                        if *trust == Trust::Ok {
                            *trust = Trust::NotBracketed;
                        }
                    }
                }
            }
        }
        brackets
    }

    /// A failed check of which nobody says on what instrument (or in what mode) it was made counts against every one that
    /// it can be of, until the same sample is measured well there; and so does any failed one against readings that name
    /// none. What a check found good speaks for nobody else.
    fn accuse_all(&mut self, sources: &[Source], readings_of: &dyn Fn(usize) -> usize) {
        let mut failed: Vec<(Key, Event)> = Vec::new();
        for (key, at) in &self.keys {
            let events = self.stations.get(*at).map_or(&[][..], |station| &station.events);
            failed.extend(events.iter().filter_map(|event| Some((key.clone(), event.only_bad()?))));
        }
        if failed.is_empty() {
            return;
        }
        for (at, source) in sources.iter().enumerate() {
            let mut last = None;
            for row in 0..readings_of(at) {
                let ids =
                    [Identity::Instrument, Identity::Mode].map(|one| source.readings.identity_id(one, row));
                if last.replace(ids) != Some(ids) {
                    self.station_of(at, source, row);
                }
            }
        }
        let may_be = |one: &str, other: &str| one.is_empty() || other.is_empty() || one == other;
        for (from, event) in failed {
            for (key, at) in &self.keys {
                let same_order = *key != from && key.0 == from.0;
                if same_order && may_be(&from.1, &key.1) && may_be(&from.2, &key.2) {
                    self.stations[*at].events.push(event.clone());
                }
            }
        }
    }

    fn order_of(&self, at: usize, source: &Source, readings: usize) -> Order {
        let mut found = None;
        let mut last = (TextId::NONE, None);
        for row in 0..readings {
            let id = source.readings.identity_id(Identity::Time, row);
            if row > 0 && id == last.0 {
                continue;
            }
            let order =
                source.readings.pool.get(id).and_then(|text| self.position(text)).map(|(order, _)| order);
            if order.is_none() || (found.is_some() && found != order) {
                return Order::Rows(at);
            }
            found = order;
            last = (id, order);
        }
        found.unwrap_or(Order::Rows(at))
    }

    /// The place of a moment among others: its second or, where shifts count, the number of its shift.
    fn position(&self, text: &str) -> Option<(Order, i64)> {
        let moment = Moment::read(text)?;
        let order = if moment.offset.is_some() { Order::TimeWithOffset } else { Order::Time };
        if self.rule != Bracket::PerShift {
            return Some((order, moment.seconds()?));
        }
        let shifts = self.shift_starts.len() as i64;
        let day = moment.day.number() * shifts;
        let begun = match moment.second {
            Some(second) => {
                self.shift_starts.iter().filter(|start| u32::from(**start) * 60 <= second).count() as i64
            }
            // A day alone tells the shift where there is one a day, from midnight on.
            None if self.shift_starts[..] == [0] => 1,
            None => return None,
        };
        Some((order, day + begun))
    }

    fn place(&self, at: usize, source: &Source, row: usize) -> Option<Place> {
        match self.orders.get(at)? {
            Order::Rows(_) if self.rule == Bracket::PerShift => Some((0, at, row)),
            Order::Rows(_) => Some((row as i64, at, row)),
            Order::Time | Order::TimeWithOffset => {
                let (_, position) = self.position(source.readings.identity(Identity::Time, row)?)?;
                Some((position, at, row))
            }
        }
    }

    fn key(&self, at: usize, source: &Source, row: usize) -> Option<Key> {
        let text = |identity| folded_name(source.readings.identity(identity, row).unwrap_or(""));
        Some((*self.orders.get(at)?, text(Identity::Instrument), text(Identity::Mode)))
    }

    fn station_of(&mut self, at: usize, source: &Source, row: usize) -> &mut Station {
        let key = self.key(at, source, row).unwrap_or((Order::Rows(at), String::new(), String::new()));
        let index = *self.keys.entry(key).or_insert(self.stations.len());
        if index == self.stations.len() {
            self.stations.push(Station::empty());
        }
        &mut self.stations[index]
    }

    /// Asks about the readings of one source, row after row.
    pub(super) fn of_source<'b>(&'b self, at: usize, source: &'b Source) -> Asked<'b> {
        Asked { brackets: self, at, source, known: BTreeMap::new(), last: None }
    }

    /// The trust of each element between two checks, all classes together where the class is unknown.
    pub(super) fn trust(&self, between: Between) -> [Trust; ELEMENTS] {
        let mut worst = [Trust::Ok; ELEMENTS];
        let Some(station) = self.stations.get(between.station) else { return [Trust::None; ELEMENTS] };
        for (class, table) in CLASSES.iter().zip(&station.tables) {
            let own = *class == between.class;
            for gap in table.gaps.get(between.first..=between.last).unwrap_or_default() {
                for (worst, trust) in worst.iter_mut().zip(gap) {
                    if own {
                        *worst = (*worst).max(*trust);
                    } else if between.class == MaterialClass::Unknown && *trust == Trust::Failed {
                        *worst = Trust::Failed;
                    }
                }
            }
        }
        worst
    }

    /// True where a standard was measured somewhere, of which a certificate may state more.
    pub(super) fn has_uncertified(&self) -> bool {
        self.stations.iter().flat_map(|station| &station.uncertified).flatten().any(|one| *one)
    }

    /// The elements for which a certificate is all that is missing: a standard that fits the reading was measured, and no
    /// certified value is stated. Where either class is unknown, nothing says that the standard does not fit.
    pub(super) fn uncertified(&self, between: Between) -> [bool; ELEMENTS] {
        let mut found = [false; ELEMENTS];
        let Some(station) = self.stations.get(between.station) else { return found };
        for (class, elements) in CLASSES.iter().zip(&station.uncertified) {
            let unknown = [*class, between.class].contains(&MaterialClass::Unknown);
            if *class == between.class || unknown {
                for (found, one) in found.iter_mut().zip(elements) {
                    *found |= one;
                }
            }
        }
        found
    }

    /// The check, by its place among all, of which something besides its reading is lacking, where that is all that keeps an
    /// element from being trusted there: measuring again would not help.
    pub(super) fn lacking(&self, between: Between, element: usize) -> Option<usize> {
        let station = self.stations.get(between.station)?;
        let class = between.class as usize;
        let gaps = station.tables.get(class)?.mended.get(between.first..=between.last)?;
        let helps = gaps.iter().all(|gap| gap.get(element) == Some(&Trust::Ok));
        *station.lacking.get(class)?.get(element).filter(|_| helps)?
    }

    /// True where some reading may lie far from its checks.
    pub(super) fn has_far(&self) -> bool {
        self.stations.iter().flat_map(|station| &station.tables).any(|table| !table.near_until.is_empty())
    }

    /// The elements whose good checks stand more than a day apart, or more than a day before a reading of this second where a
    /// check before is enough. Where a time is not known, nothing is said.
    pub(super) fn far(&self, between: Between, second: Option<i64>) -> [bool; ELEMENTS] {
        let mut found = [false; ELEMENTS];
        let table = self.stations.get(between.station).and_then(|one| one.tables.get(between.class as usize));
        let gaps = table.and_then(|table| table.near_until.get(between.first..=between.last));
        for gap in gaps.into_iter().flatten() {
            for (found, until) in found.iter_mut().zip(gap) {
                *found |= *until == i64::MIN || second.is_some_and(|second| second > *until);
            }
        }
        found
    }

    /// The run of gaps with the same trust that a reading lies in.
    pub(super) fn run(&self, between: Between, element: usize, trust: Trust) -> Option<u32> {
        let tables = CLASSES.iter().zip(&self.stations.get(between.station)?.tables);
        for (class, table) in tables {
            if *class != between.class && between.class != MaterialClass::Unknown {
                continue;
            }
            for gap in between.first..=between.last {
                if table.gaps.get(gap).and_then(|gap| gap.get(element)) == Some(&trust) {
                    return table.runs.get(gap).and_then(|runs| runs.get(element)).copied();
                }
            }
        }
        None
    }

    /// True where a reading took longer than a check of its class, or less than half as long as one.
    pub(super) fn other_time(&self, between: Between, deciseconds: u16) -> bool {
        let station = self.stations.get(between.station);
        let table = station.and_then(|station| station.tables.get(between.class as usize));
        table.and_then(|table| table.deciseconds).is_some_and(|(shortest, longest)| {
            deciseconds > shortest || u32::from(deciseconds) * 2 < u32::from(longest)
        })
    }

    /// True where a source goes by the order of its rows.
    pub fn goes_by_rows(&self, source: usize) -> bool {
        matches!(self.orders.get(source), Some(Order::Rows(_)))
    }
}

/// The readings of one source, asked about one after the other.
pub(super) struct Asked<'b> {
    brackets: &'b Brackets,
    at: usize,
    source: &'b Source,
    /// The station of each instrument and mode of the source.
    known: BTreeMap<(TextId, TextId), Option<usize>>,
    last: Option<((TextId, TextId), Option<usize>)>,
}

impl Asked<'_> {
    /// Where a reading of this class lies; `None` where no check was made by its instrument in its mode.
    pub(super) fn between(&mut self, row: usize, class: MaterialClass) -> Option<Between> {
        let readings = &self.source.readings;
        let ids =
            (readings.identity_id(Identity::Instrument, row), readings.identity_id(Identity::Mode, row));
        let station = match self.last {
            Some((known, station)) if known == ids => station,
            _ => {
                let (brackets, at, source) = (self.brackets, self.at, self.source);
                let find = || brackets.keys.get(&brackets.key(at, source, row)?).copied();
                *self.known.entry(ids).or_insert_with(find)
            }
        };
        self.last = Some((ids, station));
        let station = station?;
        let Station { events, shifts, .. } = self.brackets.stations.get(station)?;
        let place = self.brackets.place(self.at, self.source, row)?;
        let (first, last) = if self.brackets.rule == Bracket::PerShift {
            // Behind the checked shifts stands what holds for every other.
            let at = shifts.binary_search(&place.0).unwrap_or(shifts.len());
            (at, at)
        } else {
            gaps_at(events, place)
        };
        Some(Between { station, class, first, last })
    }
}

/// Between which checks a place lies. Where checks of another source stand at the same second, nobody knows whether they
/// came before or after: then all gaps they make are possible.
fn gaps_at(events: &[Event], (position, source, row): Place) -> (usize, usize) {
    let first = events.partition_point(|event| event.place.0 < position);
    let last = events.partition_point(|event| event.place.0 <= position);
    let same = events.get(first..last).unwrap_or_default();
    if same.iter().all(|event| event.place.1 == source) {
        let at = first + same.partition_point(|event| event.place.2 < row);
        return (at, at);
    }
    (first, last)
}

/// What a check says of each judged element, where that concerns any reading.
fn says(check: &CheckFinding) -> [Option<(MaterialClass, State)>; ELEMENTS] {
    JUDGED.map(|element| {
        let one = check.elements.iter().find(|one| one.element == element)?;
        let state = match one.verdict {
            CheckVerdict::Good | CheckVerdict::Warning => State::Good,
            CheckVerdict::Failed => State::Bad,
            CheckVerdict::NoCertificate => return None,
            // A blank that could not be judged clears nothing and accuses nothing.
            _ if check.kind == CheckKind::Blank => return None,
            verdict if is_lacking(verdict) => State::Lacking,
            _ => State::Open,
        };
        let class = if check.kind == CheckKind::Blank { MaterialClass::Unknown } else { one.class };
        let concerns =
            check.kind == CheckKind::Blank || class != MaterialClass::Unknown || state == State::Bad;
        concerns.then_some((class, state))
    })
}

/// True where a standard was measured, and what keeps it from being judged good is not its reading: it would come out the same
/// however often it is measured.
pub(super) const fn is_lacking(verdict: CheckVerdict) -> bool {
    use CheckVerdict::{DayUnknown, Expired, NoUncertainty, UnitUnknown};
    matches!(verdict, Expired | DayUnknown | NoUncertainty | UnitUnknown)
}

/// The judged elements of which a standard was measured without a certified value, with the class it speaks for.
fn uncertified(check: &CheckFinding) -> impl Iterator<Item = (MaterialClass, usize)> {
    let missing = check
        .elements
        .iter()
        .filter(|one| one.verdict == CheckVerdict::NoCertificate && one.cell.state != CellState::Text);
    missing.filter_map(|one| Some((one.class, JUDGED.iter().position(|of| *of == one.element)?)))
}

/// What an event says of an element of a class.
fn said(event: &Event, element: usize, class: MaterialClass) -> Option<State> {
    let (of, state) = (*event.says.get(element)?)?;
    let any = event.kind == CheckKind::Blank || of == MaterialClass::Unknown;
    (any || of == class).then_some(state)
}

/// What every event says of an element of a class. Of readings of one standard that stand at the same second in several
/// files nobody knows which was the last: the worst of them speaks for all.
fn said_of_all(events: &[Event], element: usize, class: MaterialClass) -> Vec<Option<State>> {
    let mut said: Vec<Option<State>> = events.iter().map(|event| said(event, element, class)).collect();
    let mut at = 0;
    for same in events.chunk_by(|one, next| one.place.0 == next.place.0) {
        let states = said.get_mut(at..at + same.len()).unwrap_or_default();
        at += same.len();
        if same.iter().zip(same.iter().skip(1)).all(|(one, next)| one.place.1 == next.place.1) {
            continue;
        }
        let mut worst: BTreeMap<(CheckKind, usize), (usize, bool, State)> = BTreeMap::new();
        for (event, state) in same.iter().zip(&*states).filter_map(|(event, state)| Some((event, (*state)?)))
        {
            let source = event.place.1;
            let known = worst.entry((event.kind, event.sample)).or_insert((source, false, state));
            *known = (source, known.1 || known.0 != source, known.2.max(state));
        }
        for (event, state) in same.iter().zip(states) {
            if let (Some(_), Some((_, true, worst))) = (&state, worst.get(&(event.kind, event.sample))) {
                *state = Some(*worst);
            }
        }
    }
    said
}

/// How the checks on one side of a gap stand.
#[derive(Default)]
struct Side {
    latest: BTreeMap<(CheckKind, usize), State>,
    good: u32,
    bad: u32,
}

impl Side {
    fn take(&mut self, kind: CheckKind, sample: usize, state: State) {
        let known = self.latest.get(&(kind, sample)).copied();
        // What could not be judged takes no failure away.
        if matches!(state, State::Open | State::Lacking) && known == Some(State::Bad) {
            return;
        }
        let before = self.latest.insert((kind, sample), state);
        for (state, by) in [(before, false), (Some(state), true)] {
            let count = match state {
                Some(State::Bad) => &mut self.bad,
                Some(State::Good) if kind == CheckKind::Standard => &mut self.good,
                _ => continue,
            };
            *count = if by { *count + 1 } else { *count - 1 };
        }
    }
}

fn gaps(events: &[Event], class: MaterialClass, before_only: bool) -> Vec<[Trust; ELEMENTS]> {
    let mut gaps = vec![[Trust::None; ELEMENTS]; events.len() + 1];
    for element in 0..ELEMENTS {
        let said = said_of_all(events, element, class);
        let covered =
            events.iter().zip(&said).any(|(event, said)| said.is_some() && event.kind == CheckKind::Standard);
        if said.iter().all(Option::is_none) {
            continue;
        }
        let sides = |forward: bool| {
            let mut side = Side::default();
            let mut found = vec![(false, false)];
            let take = |at: usize| {
                if let (Some(event), Some(Some(state))) = (events.get(at), said.get(at)) {
                    side.take(event.kind, event.sample, *state);
                }
                (side.good > 0, side.bad > 0)
            };
            if forward {
                found.extend((0..events.len()).map(take));
            } else {
                found.extend((0..events.len()).rev().map(take));
                found.reverse();
            }
            found
        };
        for ((gap, before), after) in gaps.iter_mut().zip(sides(true)).zip(sides(false)) {
            // A good check after may be missing by that rule; one that is there and failed is not overlooked.
            let (good, bad) = (before.0 && (before_only || after.0), before.1 || after.1);
            if let Some(trust) = gap.get_mut(element) {
                *trust = trust_of(good, bad, covered);
            }
        }
    }
    gaps
}

/// Per checked shift, and at the end for every other one.
fn shifts(events: &[Event], class: MaterialClass) -> Vec<[Trust; ELEMENTS]> {
    let covered: [bool; ELEMENTS] = std::array::from_fn(|element| {
        events.iter().any(|event| event.kind == CheckKind::Standard && said(event, element, class).is_some())
    });
    let of_shift = |events: &[Event]| {
        std::array::from_fn(|element| {
            let has = |kind: Option<CheckKind>, state: State| {
                let mut of_kind = events.iter().filter(|event| kind.is_none_or(|kind| event.kind == kind));
                of_kind.any(|event| said(event, element, class) == Some(state))
            };
            let covered = covered.get(element).is_some_and(|covered| *covered);
            trust_of(has(Some(CheckKind::Standard), State::Good), has(None, State::Bad), covered)
        })
    };
    let checked = events.chunk_by(|one, next| one.place.0 == next.place.0);
    checked.map(of_shift).chain([of_shift(&[])]).collect()
}

const fn trust_of(good: bool, bad: bool, covered: bool) -> Trust {
    match (bad, good, covered) {
        (true, ..) => Trust::Failed,
        (false, true, _) => Trust::Ok,
        (false, false, true) => Trust::NotBracketed,
        (false, false, false) => Trust::None,
    }
}

fn runs(gaps: &[[Trust; ELEMENTS]]) -> Vec<[u32; ELEMENTS]> {
    let mut runs: Vec<[u32; ELEMENTS]> = Vec::with_capacity(gaps.len());
    for (at, gap) in gaps.iter().enumerate() {
        let before = at
            .checked_sub(1)
            .and_then(|before| gaps.get(before).zip(runs.get(before)))
            .map(|(gap, run)| (*gap, *run));
        runs.push(std::array::from_fn(|element| match before {
            Some((same, run)) if same[element] == gap[element] => run[element],
            _ => at as u32,
        }));
    }
    runs
}

/// How far apart checks may stand: US EPA Method 6200, 9.4 asks for them at the beginning and at the end of
/// each working day.
const DAY: i64 = 86_400;

/// The second of a moment; of a day alone its first.
pub(super) fn second_of(moment: Moment) -> i64 {
    moment.seconds().unwrap_or(moment.day.number() * DAY)
}

/// Per gap, and element, the last second at which a reading is near its good checks: any, where they stand at most a day
/// apart or one of them has no time, and none, where they stand further apart. Where a check before is enough, a day after it.
fn near_until(events: &[Event], class: MaterialClass, before_only: bool) -> Vec<[i64; ELEMENTS]> {
    let mut found = vec![[i64::MAX; ELEMENTS]; events.len() + 1];
    for element in 0..ELEMENTS {
        let good = |event: &Event| {
            let good = said(event, element, class) == Some(State::Good);
            (good && event.kind == CheckKind::Standard).then_some(event.second)
        };
        let mut last = None;
        for (gap, event) in found.iter_mut().skip(1).zip(events) {
            last = good(event).unwrap_or(last);
            gap[element] = last.map_or(i64::MAX, |last| last.saturating_add(DAY));
        }
        if before_only {
            continue;
        }
        let mut next = None;
        for at in (0..found.len()).rev() {
            next = events.get(at).and_then(good).unwrap_or(next);
            let Some(until) = found.get_mut(at).and_then(|gap| gap.get_mut(element)) else { continue };
            *until = if next.is_some_and(|next| next > *until) { i64::MIN } else { i64::MAX };
        }
    }
    if found.iter().flatten().all(|until| *until == i64::MAX) { Vec::new() } else { found }
}

fn times(events: &[Event], class: MaterialClass) -> Option<(u16, u16)> {
    let judged = |event: &&Event| {
        event.kind == CheckKind::Standard
            && (0..ELEMENTS).any(|element| said(event, element, class).is_some())
    };
    let times = events.iter().filter(judged).filter_map(|event| event.deciseconds);
    times.fold(None, |found, one| match found {
        None => Some((one, one)),
        Some((shortest, longest)) => Some((one.min(shortest), one.max(longest))),
    })
}

/// Leaves the elements that are asked for.
pub(super) fn asked_for(trust: [Trust; ELEMENTS], needed: [bool; ELEMENTS]) -> OfElements {
    std::array::from_fn(|at| needed[at].then_some(trust[at]))
}
