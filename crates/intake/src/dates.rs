//! Dates and times of a result table, read by the column: in which order the numbers stand is decided by all cells
//! together, or asked, and each cell is then written as ISO 8601 writes it.
//!
//! What is certain by itself: four digits first (2026-11-25, 2026/11/25, 20261125), names of months, 2026年11月25日.
//! Points mean that the day stands first (25.11.2026; DIN 5008 as one of its two ways, from memory; elsewhere common
//! practice, no source) unless a person says otherwise. Slashes and hyphens are open until a number above 12 shows
//! which one is no month. Nothing is guessed: a date that may be two dates is none until somebody says which.
//!
//! Two digits of a year are 1969 to 2068 (POSIX `strptime`, `%y`).

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::fmt::Write;
use std::sync::OnceLock;

use plumbline_core::date_order::DateOrder;

/// What the cells of a column say about its dates.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// The order of the numbers. Where every date is certain by itself this is [`DateOrder::YearMonthDay`], and nothing
    /// hangs on it.
    Order(DateOrder),
    /// Dates whose day and month may be swapped (or, with two digits of a year between hyphens, day and year), or cells
    /// that contradict one another. Somebody has to say; [`DateEvidence::possible`] names the orders to choose from.
    OpenBetweenDayAndMonth,
    /// No cell holds a date.
    NoDates,
    /// Every cell is a number that a spreadsheet would show as a date: see [`serial_to_iso`].
    Serials,
}

/// Gathers what the cells of one column say. Only for columns whose heading says date or time: elsewhere 45989 is just a
/// number.
#[derive(Clone, Copy, Debug, Default)]
pub struct DateEvidence {
    dates: u64,
    serials: u64,
    /// Filled cells that are neither.
    others: u64,
    /// Of the dates that are open by themselves: the orders that all of them allow.
    allowed: Option<Orders>,
}

impl DateEvidence {
    /// Looks at the next cell.
    pub fn look(&mut self, cell: &[u8]) {
        let Ok(text) = std::str::from_utf8(cell) else {
            self.others += 1;
            return;
        };
        let text = text.trim();
        if text.is_empty() {
            return;
        }
        if is_iso(text) {
            self.dates += 1;
        } else if let Some(moment) = Moment::read(text) {
            match moment.day {
                Day::Known(_) => self.dates += 1,
                Day::Open(open) => {
                    let orders = open.orders();
                    if orders == Orders::NONE {
                        self.others += 1;
                        return;
                    }
                    self.dates += 1;
                    // Where every order gives the same date, the cell says nothing about the order.
                    if open.certain().is_none() || orders.only().is_some() {
                        self.allowed = Some(self.allowed.unwrap_or(Orders::ALL).and(orders));
                    }
                }
            }
        } else if Serial::read(text).is_some() {
            self.serials += 1;
        } else {
            self.others += 1;
        }
    }

    /// What the cells looked at so far add up to.
    pub fn verdict(&self) -> Verdict {
        match self.allowed {
            _ if self.dates == 0 && self.serials > 0 && self.others == 0 => Verdict::Serials,
            _ if self.dates == 0 => Verdict::NoDates,
            None => Verdict::Order(DateOrder::YearMonthDay),
            Some(allowed) => allowed.only().map_or(Verdict::OpenBetweenDayAndMonth, Verdict::Order),
        }
    }

    /// The orders a person may choose from: those that no cell rules out, or all where the cells contradict one another.
    pub fn possible(&self) -> impl Iterator<Item = DateOrder> {
        let allowed = self.allowed.filter(|allowed| *allowed != Orders::NONE).unwrap_or(Orders::ALL);
        DateOrder::ALL.into_iter().filter(move |order| allowed.has(*order))
    }
}

/// A date, with its time of day where it has one, as ISO 8601 writes it: `2026-11-25`, `2026-11-25T10:15`,
/// `2026-11-25T10:15:31.5+01:00`.
///
/// `order` is the column's; without one only texts that can be one date are read. `clock` is the cell of a column of
/// times; it takes the place of a midnight, and must agree with any other time the text holds. A zone is never
/// invented. `None`: no date, no date of the calendar, or one that may be two; the text is then best kept as written.
///
/// Text that stands so already is given back as it is, without allocating.
pub fn to_iso<'a>(text: &'a str, order: Option<DateOrder>, clock: Option<&str>) -> Option<Cow<'a, str>> {
    let text = text.trim();
    let clock = clock.map(str::trim).filter(|clock| !clock.is_empty());
    if clock.is_none() && is_iso(text) {
        return Some(Cow::Borrowed(text));
    }
    let moment = Moment::read(text)?;
    let date = match moment.day {
        Day::Known(date) => date,
        Day::Open(open) => match order {
            None => open.certain()?,
            // Points say day first; only month first, said by a person, overrules them.
            Some(DateOrder::YearMonthDay) if open.points => open.as_order(DateOrder::DayMonthYear)?,
            Some(order) => open.as_order(order)?,
        },
    };
    let clock = match clock {
        Some(text) => Some(Clock::whole(text)?),
        None => None,
    };
    date.joined(moment.clock, clock).map(Cow::Owned)
}

/// The date of a spreadsheet's serial number, in the system that counts from 1900 and holds a 29 February 1900 that
/// never was (ISO/IEC 29500-1, 18.17.4.1, from memory). Only 20000 to 80000 (the years 1954 to 2119) are taken for one.
///
/// A fraction with five decimals or more tells seconds (the fifth is 0.864 s); one with fewer is given to the minute.
pub fn serial_to_iso(text: &str, clock: Option<&str>) -> Option<String> {
    let serial = Serial::read(text.trim())?;
    let clock = clock.map(str::trim).filter(|clock| !clock.is_empty());
    let (date, own) = serial.moment()?;
    let clock = match clock {
        None => None,
        // A column of times may hold parts of a day.
        Some(text) => match text.strip_prefix("0.").or_else(|| text.strip_prefix("0,")) {
            Some(decimals) => clock_of_fraction(decimals)?.0,
            None => Some(Clock::whole(text)?),
        },
    };
    date.joined(own, clock)
}

// ---- the calendar ----

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Date {
    year: u32,
    month: u32,
    day: u32,
}

impl Date {
    /// A day of the calendar in a year that a measurement may have; two digits of a year are filled up.
    fn new(year: Number, month: Number, day: Number) -> Option<Date> {
        let year = match (year.digits, year.value) {
            (4, value @ 1900..=2199) => value,
            (2, value @ 0..=68) => 2000 + value,
            (2, value) => 1900 + value,
            _ => return None,
        };
        let (month, day) = (month.value, day.value);
        (day >= 1 && day <= days_of(year, month)).then_some(Date { year, month, day })
    }

    /// Writes the date with its own time or that of a time column.
    fn joined(self, own: Option<Clock<'_>>, column: Option<Clock<'_>>) -> Option<String> {
        let clock = match (own, column) {
            // A date exported as a moment has a midnight that nobody measured at.
            (Some(own), Some(stated)) if own != stated && !own.is_bare_midnight() => return None,
            (own, stated) => stated.or(own),
        };
        let mut iso = String::with_capacity(32);
        // Writing to a String cannot fail.
        let _ = write!(iso, "{:04}-{:02}-{:02}", self.year, self.month, self.day);
        if let Some(clock) = clock {
            clock.write(&mut iso);
        }
        Some(iso)
    }
}

/// Days of a month; 0 where there is no such month.
fn days_of(year: u32, month: u32) -> u32 {
    match month {
        4 | 6 | 9 | 11 => 30,
        2 if year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400)) => 29,
        2 => 28,
        1..=12 => 31,
        _ => 0,
    }
}

/// A set of orders.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Orders(u8);

impl Orders {
    const NONE: Orders = Orders(0);
    const ALL: Orders = Orders(0b111);

    const fn of(order: DateOrder) -> Orders {
        Orders(1 << order as u8)
    }

    const fn and(self, other: Orders) -> Orders {
        Orders(self.0 & other.0)
    }

    const fn has(self, order: DateOrder) -> bool {
        self.0 & Orders::of(order).0 != 0
    }

    fn only(self) -> Option<DateOrder> {
        DateOrder::ALL.into_iter().find(|order| self == Orders::of(*order))
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Number {
    value: u32,
    digits: usize,
}

/// Three numbers of which the first has no four digits.
#[derive(Clone, Copy, Debug)]
struct Open {
    numbers: [Number; 3],
    points: bool,
    hyphens: bool,
}

impl Open {
    fn as_order(self, order: DateOrder) -> Option<Date> {
        let [first, second, third] = self.numbers;
        match order {
            DateOrder::YearMonthDay => Date::new(first, second, third),
            DateOrder::DayMonthYear => Date::new(third, second, first),
            DateOrder::MonthDayYear => Date::new(third, first, second),
        }
    }

    /// The orders in which the numbers are a date that somebody would write so.
    fn orders(self) -> Orders {
        let day_first = self.as_order(DateOrder::DayMonthYear).is_some();
        if self.points && day_first {
            return Orders::of(DateOrder::DayMonthYear);
        }
        let all = DateOrder::ALL.into_iter().filter(|order| self.as_order(*order).is_some());
        let written = all.filter(|order| match order {
            // Two digits of a year stand first between hyphens, as ISO 8601 once allowed; elsewhere only where the
            // number can be nothing else.
            DateOrder::YearMonthDay => self.hyphens || self.numbers[0].value > 31,
            // 10.15.30 is rather a time.
            DateOrder::MonthDayYear => !self.points || self.numbers[2].digits == 4,
            DateOrder::DayMonthYear => true,
        });
        written.fold(Orders::NONE, |orders, order| Orders(orders.0 | Orders::of(order).0))
    }

    /// The date, where every order that is possible gives the same.
    fn certain(self) -> Option<Date> {
        let orders = self.orders();
        let mut dates =
            DateOrder::ALL.into_iter().filter(|order| orders.has(*order)).map(|order| self.as_order(order));
        let first = dates.next()??;
        dates.all(|date| date == Some(first)).then_some(first)
    }
}

#[derive(Clone, Copy, Debug)]
enum Day {
    Known(Date),
    Open(Open),
}

/// A date with the time behind it.
#[derive(Clone, Copy, Debug)]
struct Moment<'a> {
    day: Day,
    clock: Option<Clock<'a>>,
}

impl<'a> Moment<'a> {
    fn read(text: &'a str) -> Option<Moment<'a>> {
        let mut cursor = Cursor(text);
        let (day, ends_itself) = cursor.day()?;
        if cursor.0.is_empty() {
            return Some(Moment { day, clock: None });
        }
        let after_t = cursor.eat(&['T', 't']).is_some();
        let parted = after_t || cursor.eat(&[',']).is_some() | cursor.spaces();
        if !parted && !ends_itself {
            return None;
        }
        let clock = cursor.clock(after_t)?;
        cursor.0.is_empty().then_some(Moment { day, clock: Some(clock) })
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Zone {
    Utc,
    Offset { behind: bool, hours: u32, minutes: u32 },
}

/// A time of day.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct Clock<'a> {
    hour: u32,
    minute: u32,
    second: Option<u32>,
    /// Digits of a fraction of the second.
    fraction: &'a str,
    zone: Option<Zone>,
}

impl<'a> Clock<'a> {
    /// A text that is a time and nothing else.
    fn whole(text: &'a str) -> Option<Clock<'a>> {
        let mut cursor = Cursor(text);
        let clock = cursor.clock(false)?;
        cursor.0.is_empty().then_some(clock)
    }

    fn is_bare_midnight(&self) -> bool {
        let nothing = self.hour == 0 && self.minute == 0 && self.second.unwrap_or(0) == 0;
        nothing && self.zone.is_none() && self.fraction.bytes().all(|digit| digit == b'0')
    }

    fn write(&self, iso: &mut String) {
        // Writing to a String cannot fail.
        let _ = write!(iso, "T{:02}:{:02}", self.hour, self.minute);
        if let Some(second) = self.second {
            let _ = write!(iso, ":{second:02}");
            if !self.fraction.is_empty() {
                let _ = write!(iso, ".{}", self.fraction);
            }
        }
        match self.zone {
            None => {}
            Some(Zone::Utc) => iso.push('Z'),
            Some(Zone::Offset { behind, hours, minutes }) => {
                let _ = write!(iso, "{}{hours:02}:{minutes:02}", if behind { '-' } else { '+' });
            }
        }
    }
}

/// True for text that is written as [`to_iso`] writes it, with a date of the calendar and a time of the day.
fn is_iso(text: &str) -> bool {
    let bytes = text.as_bytes();
    let two = |at: usize| match (bytes.get(at), bytes.get(at + 1)) {
        (Some(tens @ b'0'..=b'9'), Some(ones @ b'0'..=b'9')) => {
            Some(u32::from(tens - b'0') * 10 + u32::from(ones - b'0'))
        }
        _ => None,
    };
    let is = |at: usize, wanted: u8| bytes.get(at) == Some(&wanted);
    let (Some(century), Some(year), Some(month), Some(day)) = (two(0), two(2), two(5), two(8)) else {
        return false;
    };
    let year = Number { value: century * 100 + year, digits: 4 };
    let number = |value| Number { value, digits: 2 };
    if !is(4, b'-') || !is(7, b'-') || Date::new(year, number(month), number(day)).is_none() {
        return false;
    }
    if bytes.len() == 10 {
        return true;
    }
    let below = |at: usize, bound: u32| two(at).is_some_and(|value| value < bound);
    if !is(10, b'T') || !below(11, 24) || !is(13, b':') || !below(14, 60) {
        return false;
    }
    let mut at = 16;
    if is(at, b':') {
        if !below(17, 60) {
            return false;
        }
        at = 19;
        if is(at, b'.') {
            let digits = bytes.iter().skip(20).take_while(|byte| byte.is_ascii_digit()).count();
            if digits == 0 {
                return false;
            }
            at = 20 + digits;
        }
    }
    match bytes.len() - at {
        0 => true,
        1 => is(at, b'Z'),
        6 => {
            (is(at, b'+') || is(at, b'-'))
                && below(at + 1, HOURS_OF_OFFSET)
                && is(at + 3, b':')
                && below(at + 4, 60)
        }
        _ => false,
    }
}

/// Offsets run from -12 to +14 hours (common practice, no source).
const HOURS_OF_OFFSET: u32 = 15;

// ---- reading ----

/// The months by their names, and 0 for a word to read over.
fn months() -> &'static BTreeMap<&'static str, u32> {
    static MONTHS: OnceLock<BTreeMap<&'static str, u32>> = OnceLock::new();
    MONTHS.get_or_init(|| {
        include_str!("../data/month_names.tsv")
            .lines()
            .filter(|line| !line.starts_with('#'))
            .filter_map(|line| line.split_once('\t'))
            .filter_map(|(month, name)| Some((name, month.parse().ok()?)))
            .collect()
    })
}

/// Before or after noon.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Half {
    Morning,
    Afternoon,
}

/// A text and how far it is read.
struct Cursor<'a>(&'a str);

impl<'a> Cursor<'a> {
    fn eat(&mut self, any: &[char]) -> Option<char> {
        let first = self.0.chars().next().filter(|first| any.contains(first))?;
        self.0 = self.0.get(first.len_utf8()..).unwrap_or("");
        Some(first)
    }

    /// Spaces of any kind (a narrow one stands before AM and PM in some programs).
    fn spaces(&mut self) -> bool {
        let rest = self.0.trim_start();
        let any = rest.len() < self.0.len();
        self.0 = rest;
        any
    }

    fn digit_text(&mut self) -> &'a str {
        let end = self.0.bytes().take_while(u8::is_ascii_digit).count();
        let (digits, rest) = self.0.split_at(end);
        self.0 = rest;
        digits
    }

    fn number(&mut self) -> Option<Number> {
        let digits = self.digit_text();
        Some(Number { value: digits.parse().ok()?, digits: digits.len() })
    }

    /// A number of one or two digits.
    fn short_number(&mut self) -> Option<Number> {
        self.number().filter(|number| number.digits <= 2)
    }

    fn word(&mut self) -> Option<&'a str> {
        let end = self.0.find(|c: char| !c.is_alphabetic()).unwrap_or(self.0.len());
        let (word, rest) = self.0.split_at(end);
        self.0 = rest;
        (!word.is_empty()).then_some(word)
    }

    /// The mark between two parts of a date with the spaces round it: a space where there is no other.
    fn mark(&mut self) -> char {
        self.spaces();
        let mark = self.eat(&['-', '/', '.', ',']).unwrap_or(' ');
        self.spaces();
        mark
    }

    /// The next word that is not to be read over, as a month.
    fn month_word(&mut self) -> Option<Number> {
        loop {
            let word = self.word()?;
            let month = match months().get(word) {
                Some(month) => *month,
                None => *months().get(word.to_lowercase().as_str())?,
            };
            // A point may end a short name.
            self.mark();
            if month > 0 {
                // `25 de noviembre de 2026`
                let before = self.0;
                let over = self.word().is_some_and(|word| months().get(word) == Some(&0));
                if over {
                    self.spaces();
                } else {
                    self.0 = before;
                }
                return Some(Number { value: month, digits: 2 });
            }
        }
    }

    /// A date, and whether it ends by itself, so that a time may follow without a space.
    fn day(&mut self) -> Option<(Day, bool)> {
        let known = |date: Option<Date>| date.map(|date| (Day::Known(date), false));
        if !self.0.starts_with(|c: char| c.is_ascii_digit()) {
            // November 25th, 2026
            let month = self.month_word()?;
            let day = self.short_number()?;
            if let Some(ending) = self.word()
                && months().get(ending) != Some(&0)
            {
                return None;
            }
            self.mark();
            return known(Date::new(self.number()?, month, day));
        }
        let first = self.number()?;
        if first.digits == 8 {
            let year = Number { value: first.value / 10_000, digits: 4 };
            let short = |value| Number { value, digits: 2 };
            return known(Date::new(year, short(first.value / 100 % 100), short(first.value % 100)));
        }
        let before_mark = self.0;
        self.spaces();
        if self.eat(&['年', '년']).is_some() {
            self.spaces();
            let month = self.short_number()?;
            self.spaces();
            self.eat(&['月', '월'])?;
            self.spaces();
            let day = self.short_number()?;
            self.spaces();
            self.eat(&['日', '号', '號', '일'])?;
            return Date::new(first, month, day).map(|date| (Day::Known(date), true));
        }
        self.0 = before_mark;
        let mark = self.mark();
        if !self.0.starts_with(|c: char| c.is_ascii_digit()) {
            // 25-Nov-2026, or 2026-Nov-25
            let month = self.month_word()?;
            let last = self.number()?;
            return known(if first.digits == 4 {
                Date::new(first, month, last)
            } else {
                Date::new(last, month, first)
            });
        }
        let second = self.short_number()?;
        if !matches!(mark, '-' | '/' | '.') || self.mark() != mark {
            return None;
        }
        let third = self.number()?;
        if mark == '.' {
            // 2026. 11. 25.
            self.eat(&['.']);
        }
        if first.digits == 4 {
            return known(Date::new(first, second, third).filter(|_| third.digits <= 2));
        }
        let open = Open { numbers: [first, second, third], points: mark == '.', hyphens: mark == '-' };
        (first.digits <= 2).then_some((Day::Open(open), false))
    }

    /// A time of day. After a `T` its numbers may stand without colons.
    fn clock(&mut self, after_t: bool) -> Option<Clock<'a>> {
        let east_asian = if self.0.starts_with(|c: char| c.is_ascii_digit()) {
            None
        } else {
            let half = half_of_east_asia(self.word()?)?;
            self.spaces();
            Some(half)
        };
        let first = self.number()?;
        let (hour, minute, second) = match first.digits {
            1 | 2 => self.minute_and_second(first.value)?,
            4 if after_t => (first.value / 100, first.value % 100, None),
            6 if after_t => (first.value / 10_000, first.value / 100 % 100, Some(first.value % 100)),
            _ => return None,
        };
        let mut fraction = "";
        if second.is_some() && self.eat(&['.', ',']).is_some() {
            fraction = self.digit_text();
            if fraction.is_empty() {
                return None;
            }
        }
        let half = self.half();
        let hour = match (east_asian, half) {
            (None, None) => hour,
            // Noon and midnight are 12 or, in East Asia, 0.
            (Some(half), None) if hour <= 12 => half.hour(hour),
            (None, Some(half)) if (1..=12).contains(&hour) => half.hour(hour),
            _ => return None,
        };
        let zone = self.zone();
        let real = hour < 24 && minute < 60 && second.is_none_or(|second| second < 60);
        real.then_some(Clock { hour, minute, second, fraction, zone })
    }

    /// What follows the hour.
    fn minute_and_second(&mut self, hour: u32) -> Option<(u32, u32, Option<u32>)> {
        let mark = self.eat(&[':', '：', '.', 'h', 'H', '时', '時', '点', '시'])?;
        if matches!(mark, '时' | '時' | '点' | '시') {
            self.spaces();
            let minute = self.short_number()?.value;
            self.eat(&['分', '분'])?;
            let before = self.0;
            self.spaces();
            let Some(second) = self.short_number() else {
                self.0 = before;
                return Some((hour, minute, None));
            };
            self.eat(&['秒', '초'])?;
            return Some((hour, minute, Some(second.value)));
        }
        let two = |number: Number| (number.digits == 2).then_some(number.value);
        let minute = two(self.number()?)?;
        let second = if matches!(mark, ':' | '：' | '.') && self.eat(&[mark]).is_some() {
            Some(two(self.number()?)?)
        } else {
            None
        };
        Some((hour, minute, second))
    }

    /// AM or PM, with or without points.
    fn half(&mut self) -> Option<Half> {
        let before = self.0;
        self.spaces();
        let half = match self.eat(&['a', 'A', 'p', 'P']) {
            Some('a' | 'A') => Half::Morning,
            Some(_) => Half::Afternoon,
            None => {
                self.0 = before;
                return None;
            }
        };
        if self.eat(&['.']).is_some() {
            self.spaces();
        }
        let ended = self.eat(&['m', 'M']).is_some() && !self.0.starts_with(char::is_alphabetic);
        if !ended {
            self.0 = before;
            return None;
        }
        self.eat(&['.']);
        Some(half)
    }

    /// The zone, where one is stated. What is none stays unread, so that the text as a whole is no date.
    fn zone(&mut self) -> Option<Zone> {
        let before = self.0;
        self.spaces();
        let zone = if self.0.starts_with(char::is_alphabetic) {
            self.word().filter(|word| matches!(*word, "Z" | "z" | "UTC")).map(|_| Zone::Utc)
        } else {
            self.offset()
        };
        if zone.is_none() {
            self.0 = before;
        }
        zone
    }

    /// +01:00, +0100 or +01.
    fn offset(&mut self) -> Option<Zone> {
        let behind = self.eat(&['+', '-', '\u{2212}'])? != '+';
        let first = self.number()?;
        let (hours, minutes) = match first.digits {
            4 => (first.value / 100, first.value % 100),
            2 if self.eat(&[':']).is_some() => {
                (first.value, self.number().filter(|minutes| minutes.digits == 2)?.value)
            }
            2 => (first.value, 0),
            _ => return None,
        };
        (hours < HOURS_OF_OFFSET && minutes < 60).then_some(Zone::Offset { behind, hours, minutes })
    }
}

impl Half {
    fn hour(self, hour: u32) -> u32 {
        hour % 12 + if self == Half::Afternoon { 12 } else { 0 }
    }
}

/// Before or after noon in Chinese, Japanese and Korean; it stands before the time.
fn half_of_east_asia(word: &str) -> Option<Half> {
    match word {
        "上午" | "午前" | "오전" => Some(Half::Morning),
        "下午" | "午後" | "오후" => Some(Half::Afternoon),
        _ => None,
    }
}

// ---- serial numbers ----

/// Days since the end of 1899 and a part of a day, as a spreadsheet keeps a date.
#[derive(Clone, Copy)]
struct Serial<'a> {
    days: u32,
    fraction: &'a str,
}

/// Serial 0 would be the 30 December 1899 for every day after the February that never was; this many days after the
/// 1 March of the year 0.
const SERIAL_ZERO: u32 = 693_899;

impl<'a> Serial<'a> {
    fn read(text: &'a str) -> Option<Serial<'a>> {
        let (days, fraction) = text.split_once(['.', ',']).unwrap_or((text, "0"));
        let digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
        if days.len() != 5 || !digits(days) || !digits(fraction) {
            return None;
        }
        let days = days.parse().ok().filter(|days| (20_000..=80_000).contains(days))?;
        Some(Serial { days, fraction })
    }

    fn moment(self) -> Option<(Date, Option<Clock<'static>>)> {
        let (clock, next_day) = clock_of_fraction(self.fraction)?;
        // Years that begin in March have their odd day last; 146097 days are 400 years of the calendar.
        let days = self.days + u32::from(next_day) + SERIAL_ZERO;
        let (era, of_era) = (days / 146_097, days % 146_097);
        let year = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
        let of_year = of_era - (365 * year + year / 4 - year / 100);
        let from_march = (5 * of_year + 2) / 153;
        let day = of_year - (153 * from_march + 2) / 5 + 1;
        let month = if from_march < 10 { from_march + 3 } else { from_march - 9 };
        let year = era * 400 + year + u32::from(month <= 2);
        Some((Date { year, month, day }, clock))
    }
}

/// The time of a part of a day, given by its decimals; true where it rounds up to the next midnight.
fn clock_of_fraction(decimals: &str) -> Option<(Option<Clock<'static>>, bool)> {
    let decimals = decimals.get(..decimals.len().min(15))?;
    let part: u128 = decimals.parse().ok()?;
    if part == 0 {
        return Some((None, false));
    }
    let whole = 10_u128.pow(decimals.len() as u32);
    let seconds_told = decimals.len() >= 5;
    let units = if seconds_told { 86_400 } else { 1_440 };
    let rounded = (part * units * 2 + whole) / (whole * 2);
    let seconds = u32::try_from(rounded % units).ok()? * if seconds_told { 1 } else { 60 };
    let clock = Clock {
        hour: seconds / 3600,
        minute: seconds / 60 % 60,
        second: seconds_told.then_some(seconds % 60),
        fraction: "",
        zone: None,
    };
    Some((Some(clock), rounded == units))
}

#[cfg(test)]
mod tests {
    use super::*;

    const YMD: Option<DateOrder> = Some(DateOrder::YearMonthDay);
    const DMY: Option<DateOrder> = Some(DateOrder::DayMonthYear);
    const MDY: Option<DateOrder> = Some(DateOrder::MonthDayYear);

    fn iso(text: &str, order: Option<DateOrder>) -> Option<String> {
        to_iso(text, order, None).map(Cow::into_owned)
    }

    fn is(text: &str, expected: &str) {
        assert_eq!(iso(text, None).as_deref(), Some(expected), "{text}");
    }

    fn evidence(cells: &[&str]) -> DateEvidence {
        let mut evidence = DateEvidence::default();
        for cell in cells {
            evidence.look(cell.as_bytes());
        }
        evidence
    }

    fn verdict(cells: &[&str]) -> Verdict {
        evidence(cells).verdict()
    }

    #[test]
    fn text_in_iso_form_comes_back_as_it_is_without_a_copy() {
        for text in [
            "2026-11-25",
            "2024-02-29",
            "2026-11-25T10:15",
            "2026-11-25T10:15:31",
            "2026-11-25T23:59:59.125",
            "2026-11-25T10:15Z",
            "2026-11-25T10:15:31.5+01:00",
            "2026-11-25T10:15:31-03:30",
        ] {
            let out = to_iso(text, DMY, None);
            assert!(matches!(out, Some(Cow::Borrowed(same)) if same == text), "{text}: {out:?}");
        }
        assert!(matches!(to_iso(" 2026-11-25 ", None, Some(" ")), Some(Cow::Borrowed("2026-11-25"))));
    }

    #[test]
    fn iso_in_its_other_clothes_is_made_one() {
        is("2026-11-25 10:15", "2026-11-25T10:15");
        is("2026-11-25  10:15:31,25", "2026-11-25T10:15:31.25");
        is("2026-11-25t10:15:31z", "2026-11-25T10:15:31Z");
        is("2026-11-25 10:15:31 +0100", "2026-11-25T10:15:31+01:00");
        is("2026-11-25 10:15 UTC", "2026-11-25T10:15Z");
        is("2026-11-25 10:15:31-05", "2026-11-25T10:15:31-05:00");
        is("20261125", "2026-11-25");
        is("20261125T1015", "2026-11-25T10:15");
        is("20261125T101531Z", "2026-11-25T10:15:31Z");
        is("2026-1-5", "2026-01-05");
        is("2026/11/25", "2026-11-25");
        is("2026.11.25 9:05", "2026-11-25T09:05");
        is("2026. 11. 25.", "2026-11-25");
    }

    #[test]
    fn what_is_no_date_of_the_calendar_or_no_time_of_the_day_is_none() {
        for text in [
            "2026-02-30",
            "2026-02-29",
            "2100-02-29",
            "2026-13-01",
            "2026-00-10",
            "2026-04-31",
            "2026-25-11",
            "2026-11-25T25:00",
            "2026-11-25T24:00",
            "2026-11-25T10:60",
            "2026-11-25T10:15:60",
            "2026-11-25T10:15:31.",
            "2026-11-25T10:15+15:00",
            "2026-11-25T10:15+01:60",
            "2026-11-25T",
            "2026-11-25 10",
            "2026-11-25 10:5",
            "2026-11-25Z",
            "2026-11-25 10:15 CET",
            "2026-11-25 10:15 13:00",
            "2026-11-25x",
            "25.11.2026 13:00 PM",
            "25.11.2026 0:30 AM",
            "31.04.2026",
            "31/04/2026",
            "25-11/2026",
            "25 11 2026",
            "25.11.",
            "25.11.126",
            "20261325",
            "1812-11-25",
            "10:15",
            "10:15:31",
            "10.15.31",
            "3:15 PM",
            "45989",
            "45989.4167",
            "n/a",
            "",
            "-",
            "S1-11-25",
            "Smarch 12, 2026",
            "de de de",
        ] {
            assert_eq!(iso(text, None), None, "{text}");
        }
    }

    #[test]
    fn points_mean_day_first_unless_a_person_says_otherwise() {
        is("25.11.2026", "2026-11-25");
        is("05.11.2026 10:15:31", "2026-11-05T10:15:31");
        is("5. 11. 2026, 10.15", "2026-11-05T10:15");
        is("05.11.26", "2026-11-05");
        assert_eq!(iso("05.11.2026", YMD).as_deref(), Some("2026-11-05"));
        assert_eq!(iso("05.11.2026", MDY).as_deref(), Some("2026-05-11"));
        assert_eq!(verdict(&["05.11.2026", ""]), Verdict::Order(DateOrder::DayMonthYear));
        assert_eq!(verdict(&["11.25.2026"]), Verdict::Order(DateOrder::MonthDayYear));
    }

    #[test]
    fn slashes_and_hyphens_wait_for_a_number_that_can_be_no_month() {
        let open = Verdict::OpenBetweenDayAndMonth;
        for mark in ["/", "-"] {
            let marked = |text: &str| text.replace('/', mark);
            let of = |cells: &[&str]| {
                let cells: Vec<String> = cells.iter().map(|cell| marked(cell)).collect();
                verdict(&cells.iter().map(String::as_str).collect::<Vec<_>>())
            };
            assert_eq!(of(&["05/11/2026", "06/11/2026"]), open);
            assert_eq!(of(&["05/11/2026", "25/11/2026"]), Verdict::Order(DateOrder::DayMonthYear));
            assert_eq!(of(&["11/05/2026", "11/25/2026 10:15"]), Verdict::Order(DateOrder::MonthDayYear));
            assert_eq!(of(&["25/11/2026", "11/25/2026"]), open, "cells that contradict one another");
            assert_eq!(of(&["2026/11/05", "05/11/2026"]), open, "one order says nothing of another");
            assert_eq!(of(&["32/11/2026"]), Verdict::NoDates);
            assert_eq!(iso(&marked("05/11/2026"), None), None);
            assert_eq!(iso(&marked("05/11/2026"), DMY).as_deref(), Some("2026-11-05"));
            assert_eq!(iso(&marked("05/11/2026"), MDY).as_deref(), Some("2026-05-11"));
            assert_eq!(iso(&marked("25/11/2026"), None).as_deref(), Some("2026-11-25"));
            assert_eq!(iso(&marked("25/11/2026"), MDY), None, "the column says month first");
            assert_eq!(iso(&marked("05/11/2026"), YMD), None);
            assert_eq!(iso(&marked("11/11/2026"), None).as_deref(), Some("2026-11-11"));
            assert_eq!(of(&["11/11/2026"]), Verdict::Order(DateOrder::YearMonthDay), "nothing hangs on it");
        }
        assert_eq!(
            evidence(&["05/11/2026"]).possible().collect::<Vec<_>>(),
            [DateOrder::DayMonthYear, DateOrder::MonthDayYear]
        );
        assert_eq!(evidence(&["25/11/2026", "11/25/2026"]).possible().count(), 3);
    }

    #[test]
    fn two_digits_of_a_year_are_filled_up_and_may_stand_first() {
        assert_eq!(iso("25/11/26", DMY).as_deref(), Some("2026-11-25"));
        assert_eq!(iso("25/11/68", DMY).as_deref(), Some("2068-11-25"));
        assert_eq!(iso("25/11/69", DMY).as_deref(), Some("1969-11-25"));
        assert_eq!(iso("26-11-25", YMD).as_deref(), Some("2026-11-25"));
        assert_eq!(verdict(&["25/11/26"]), Verdict::Order(DateOrder::DayMonthYear));
        assert_eq!(verdict(&["26-11-25"]), Verdict::OpenBetweenDayAndMonth, "2026 or the 26th");
        assert_eq!(iso("26-11-25", None), None);
        assert_eq!(verdict(&["99/11/25"]), Verdict::Order(DateOrder::YearMonthDay));
        assert_eq!(verdict(&["11-25-26"]), Verdict::Order(DateOrder::MonthDayYear));
    }

    #[test]
    fn months_have_names_in_four_languages() {
        for text in [
            "25-Nov-2026",
            "25-NOV-26",
            "25 Nov 2026",
            "25Nov2026",
            "2026-Nov-25",
            "Nov 25 2026",
            "Nov. 25, 2026",
            "November 25th, 2026",
            "25. November 2026",
            "25. Nov. 2026",
            "25 novembre 2026",
            "25 nov. 2026",
            "25 de noviembre de 2026",
            "25/nov/2026",
        ] {
            is(text, "2026-11-25");
            assert_eq!(verdict(&[text]), Verdict::Order(DateOrder::YearMonthDay), "{text}");
        }
        is("1er août 2026", "2026-08-01");
        is("3. MÄRZ 2026 10:15", "2026-03-03T10:15");
        is("15 févr. 2026 9h05", "2026-02-15T09:05");
        is("7 ene 2026", "2026-01-07");
        is("25-Dez-2026 10:15:31", "2026-12-25T10:15:31");
        assert_eq!(iso("31 June 2026", None), None);
    }

    #[test]
    fn no_name_stands_for_two_months_and_every_month_has_names() {
        let table = include_str!("../data/month_names.tsv");
        let lines: Vec<&str> = table.lines().filter(|line| !line.starts_with('#')).collect();
        assert_eq!(lines.len(), months().len(), "a name stands twice, or a line can't be read");
        for month in 1..=12 {
            assert!(months().values().filter(|found| **found == month).count() >= 3, "month {month}");
        }
        for name in months().keys() {
            assert!(name.chars().all(|c| c.is_alphabetic() && c.is_lowercase()), "{name}");
        }
    }

    #[test]
    fn east_asian_dates_and_times_are_read() {
        is("2026年11月25日", "2026-11-25");
        is("2026年1月5日 10:15", "2026-01-05T10:15");
        is("2026年11月25日10时15分31秒", "2026-11-25T10:15:31");
        is("2026年11月25日 10時15分", "2026-11-25T10:15");
        is("2026年11月25日下午3:15", "2026-11-25T15:15");
        is("2026/11/25 上午12:15:31", "2026-11-25T00:15:31");
        is("2026-11-25 下午 12:15", "2026-11-25T12:15");
        is("2026年11月25日 午後0時15分", "2026-11-25T12:15");
        is("2026년 11월 25일 오후 3시 15분", "2026-11-25T15:15");
        assert_eq!(iso("2026年13月25日", None), None);
        assert_eq!(iso("2026-11-25 下午3:15 PM", None), None);
    }

    #[test]
    fn clocks_of_twelve_hours_are_read() {
        assert_eq!(iso("11/5/2026 3:15:31 PM", MDY).as_deref(), Some("2026-11-05T15:15:31"));
        for (text, expected) in [
            ("2026-11-25 12:00 AM", "2026-11-25T00:00"),
            ("2026-11-25 12:00 pm", "2026-11-25T12:00"),
            ("2026-11-25 1:05 a.m.", "2026-11-25T01:05"),
            ("2026-11-25 1:05 p. m.", "2026-11-25T13:05"),
            ("2026-11-25, 1:05:09\u{202f}PM", "2026-11-25T13:05:09"),
            ("2026-11-25 11:59:59.5PM +02:00", "2026-11-25T23:59:59.5+02:00"),
        ] {
            is(text, expected);
        }
    }

    #[test]
    fn a_column_of_times_is_joined_to_its_date() {
        let joined = |text, clock| to_iso(text, DMY, Some(clock)).map(Cow::into_owned);
        assert_eq!(joined("2026-11-25", "10:15").as_deref(), Some("2026-11-25T10:15"));
        assert_eq!(joined("25/11/2026", "3:15:31 PM").as_deref(), Some("2026-11-25T15:15:31"));
        assert_eq!(joined("2026-11-25", "10:15:31.5+01:00").as_deref(), Some("2026-11-25T10:15:31.5+01:00"));
        assert_eq!(joined("2026-11-25", " ").as_deref(), Some("2026-11-25"));
        assert_eq!(joined("2026-11-25 00:00:00", "10:15").as_deref(), Some("2026-11-25T10:15"));
        assert_eq!(joined("2026-11-25 10:15", "10:15").as_deref(), Some("2026-11-25T10:15"));
        assert_eq!(joined("2026-11-25 10:15", "10:16"), None, "two times");
        assert_eq!(joined("2026-11-25", "25:00"), None);
        assert_eq!(joined("2026-11-25", "morning"), None);
    }

    #[test]
    fn serial_numbers_are_dates_only_where_every_cell_is_one() {
        assert_eq!(verdict(&["45989.4167", "45990", ""]), Verdict::Serials);
        assert_eq!(verdict(&["45989,4167"]), Verdict::Serials);
        assert_eq!(verdict(&["45989.4167", "12"]), Verdict::NoDates);
        assert_eq!(verdict(&["45989", "n/a"]), Verdict::NoDates);
        assert_eq!(verdict(&["80001"]), Verdict::NoDates);
        assert_eq!(verdict(&["19999"]), Verdict::NoDates);
        assert_eq!(verdict(&["45989", "2026-11-25"]), Verdict::Order(DateOrder::YearMonthDay));
        assert_eq!(verdict(&[]), Verdict::NoDates);
        let serial = |text| serial_to_iso(text, None);
        // Serial 45292 is the 1 January 2024, 25569 the 1 January 1970 (from memory).
        assert_eq!(serial("45292").as_deref(), Some("2024-01-01"));
        assert_eq!(serial("25569").as_deref(), Some("1970-01-01"));
        assert_eq!(serial("45292.5").as_deref(), Some("2024-01-01T12:00"));
        assert_eq!(serial("45292.4167").as_deref(), Some("2024-01-01T10:00"), "four decimals: 8.6 s");
        assert_eq!(serial("45292.427442").as_deref(), Some("2024-01-01T10:15:31"));
        assert_eq!(serial("45292.416666666664").as_deref(), Some("2024-01-01T10:00:00"));
        assert_eq!(serial("45292.999999").as_deref(), Some("2024-01-02T00:00:00"));
        assert_eq!(serial("45292.0").as_deref(), Some("2024-01-01"));
        assert_eq!(serial("12"), None);
        assert_eq!(serial("45292."), None);
        assert_eq!(serial_to_iso("45292", Some("0.5")).as_deref(), Some("2024-01-01T12:00"));
        assert_eq!(serial_to_iso("45292", Some("10:15")).as_deref(), Some("2024-01-01T10:15"));
    }

    /// Every day of a span, by counting.
    fn days(from: u32, to: u32) -> impl Iterator<Item = Date> {
        (from..=to).flat_map(|year| {
            (1..=12)
                .flat_map(move |month| (1..=days_of(year, month)).map(move |day| Date { year, month, day }))
        })
    }

    fn written(date: Date) -> String {
        format!("{:04}-{:02}-{:02}", date.year, date.month, date.day)
    }

    #[test]
    fn every_serial_is_the_day_after_the_one_before() {
        let start = days(1954, 2119).skip_while(|date| written(*date).as_str() < "1954-10-03");
        let mut last = String::new();
        for (serial, date) in (20_000..=80_000).zip(start) {
            last = written(date);
            assert_eq!(serial_to_iso(&serial.to_string(), None), Some(last.clone()), "{serial}");
        }
        assert_eq!(last, "2119-01-11");
    }

    #[test]
    fn every_day_written_in_any_order_comes_back() {
        for date in days(1999, 2028) {
            let Date { year, month, day } = date;
            let expected = written(date);
            for mark in ['/', '-', '.'] {
                for (order, text) in [
                    (YMD, format!("{year}{mark}{month:02}{mark}{day:02}")),
                    (DMY, format!("{day:02}{mark}{month:02}{mark}{year}")),
                    (DMY, format!("{day}{mark}{month}{mark}{:02}", year % 100)),
                    (MDY, format!("{month:02}{mark}{day:02}{mark}{year}")),
                    (MDY, format!("{month}{mark}{day}{mark}{:02}", year % 100)),
                ] {
                    assert_eq!(iso(&text, order).as_deref(), Some(expected.as_str()), "{text}");
                    // Without an order it is the same date, or none.
                    let alone = iso(&text, None);
                    let points_swapped = mark == '.' && order == MDY;
                    assert!(points_swapped || alone.is_none_or(|alone| alone == expected), "{text}");
                }
            }
            assert!(is_iso(&expected));
        }
    }

    #[test]
    fn what_is_written_is_in_iso_form_whatever_comes_in() {
        // Pieces put together in every way: what comes out must be what is_iso takes as it is.
        let dates = ["2026-11-25", "5/11/26", "25. nov 2026", "2026年1月5日", "31.2.2026", "11/25/2026", "x"];
        let clocks = ["", "10:15", "1:05 PM", "23:59:60", "下午3時5分", "7h30", "10:15:31,5", "24:00"];
        let zones = ["", "Z", "+01:00", " -0330", " EST", "+99"];
        let mut read = 0;
        for (date, clock) in dates.iter().flat_map(|date| clocks.map(|clock| (date, clock))) {
            for (zone, order) in
                zones.iter().flat_map(|zone| [None, YMD, DMY, MDY].map(|order| (zone, order)))
            {
                let text = format!("{date} {clock}{zone}");
                if let Some(out) = iso(&text, order) {
                    assert!(is_iso(&out), "{text} gives {out}");
                    read += 1;
                }
            }
        }
        assert!(read > 200, "{read}");
    }

    #[test]
    fn bytes_that_are_no_text_and_texts_that_run_on_are_no_dates() {
        let mut evidence = DateEvidence::default();
        evidence.look(&[0xff, 0xfe]);
        evidence.look("9".repeat(100_000).as_bytes());
        evidence.look("2026-11-25T10:15:31.".as_bytes());
        evidence.look("年年年".as_bytes());
        assert_eq!(evidence.verdict(), Verdict::NoDates);
        assert_eq!(iso(&"de ".repeat(10_000), None), None);
        assert_eq!(
            serial_to_iso(&format!("45292.{}", "3".repeat(1000)), None).as_deref(),
            Some("2024-01-01T08:00:00")
        );
    }
}
