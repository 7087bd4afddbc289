//! Moments: date and time of a reading as numbers that can be put in order.
//!
//! A source's dates are understood where it is read: by the column, in the order its cells show or a person sets, from
//! spreadsheet numbers, with a column of times beside them; each is then kept as ISO 8601 writes it. A text that is still
//! something else could not be understood there, and is no moment here either: nothing is guessed a second time.

use std::fmt;

use crate::day::Day;

/// A day, mostly with a time of day, and an offset from UTC where one is stated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Moment {
    /// The day, as stated.
    pub day: Day,
    /// Seconds after midnight, as stated, without their fraction; `None` for a day alone.
    pub second: Option<u32>,
    /// Minutes by which the stated time is ahead of UTC; `None` where no offset is stated.
    pub offset: Option<i16>,
}

impl Moment {
    /// Reads `2026-11-25`, `2026-11-25T10:15` and the like: `T` or a space between day and time, seconds and their fraction
    /// where they are stated, `Z` or `+01:00` behind them. `None` for anything else.
    pub fn read(text: &str) -> Option<Moment> {
        let text = text.trim();
        let day = Day::parse(text.get(..10)?)?;
        let Some(rest) = text.get(10..).filter(|rest| !rest.is_empty()) else {
            return Some(Moment { day, second: None, offset: None });
        };
        let rest = rest.strip_prefix(['T', ' '])?;
        let (hour, rest) = (two_digits(rest, 24)?, rest.get(2..)?.strip_prefix(':')?);
        let (minute, mut rest) = (two_digits(rest, 60)?, rest.get(2..)?);
        let mut second = hour * 3600 + minute * 60;
        if let Some(seconds) = rest.strip_prefix(':') {
            second += two_digits(seconds, 60)?;
            rest = seconds.get(2..)?;
            if let Some(fraction) = rest.strip_prefix('.') {
                let digits = fraction.bytes().take_while(u8::is_ascii_digit).count();
                rest = fraction.get(digits..).filter(|_| digits > 0)?;
            }
        }
        let offset = match rest {
            "" => None,
            "Z" => Some(0),
            _ => {
                let (ahead, digits) = rest
                    .strip_prefix('+')
                    .map(|digits| (1, digits))
                    .or(rest.strip_prefix('-').map(|digits| (-1, digits)))?;
                let minutes =
                    two_digits(digits, 15)? * 60 + two_digits(digits.get(2..)?.strip_prefix(':')?, 60)?;
                (digits.len() == 5).then_some(())?;
                Some(ahead * i16::try_from(minutes).ok()?)
            }
        };
        Some(Moment { day, second: Some(second), offset })
    }

    /// Seconds since the beginning of 1970, in UTC where an offset is stated and else as the clock on the wall had it; the
    /// two are not to be compared. `None` for a day alone, which has no place among the moments of that day.
    pub fn seconds(self) -> Option<i64> {
        let second = i64::from(self.second?);
        Some(self.day.number() * 86_400 + second - i64::from(self.offset.unwrap_or(0)) * 60)
    }
}

fn two_digits(text: &str, below: u32) -> Option<u32> {
    let digits = text.get(..2).filter(|digits| digits.bytes().all(|byte| byte.is_ascii_digit()))?;
    digits.parse().ok().filter(|number| *number < below)
}

/// `2026-11-25 10:15`, without seconds; the day alone where that is all.
impl fmt::Display for Moment {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{}", self.day)?;
        match self.second {
            Some(second) => write!(out, " {}", Clock(second)),
            None => Ok(()),
        }
    }
}

/// Seconds after midnight as hours and minutes: `10:15`.
#[derive(Clone, Copy, Debug)]
pub struct Clock(pub u32);

impl fmt::Display for Clock {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{:02}:{:02}", self.0 / 3600, self.0 / 60 % 60)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn seconds(text: &str) -> Option<i64> {
        Moment::read(text)?.seconds()
    }

    #[test]
    fn moments_are_read_and_put_in_order() {
        assert_eq!(seconds("1970-01-01T00:00"), Some(0));
        // `date -u -d '2026-11-25 10:15:31' +%s`
        assert_eq!(seconds("2026-11-25T10:15:31"), Some(1_795_601_731));
        assert_eq!(seconds("2026-11-25 10:15:31.75"), Some(1_795_601_731));
        assert_eq!(seconds("2026-11-25T10:15:31Z"), Some(1_795_601_731));
        assert_eq!(seconds("2026-11-25T11:15:31+01:00"), Some(1_795_601_731));
        assert_eq!(seconds("2026-11-25T04:45:31-05:30"), Some(1_795_601_731));
        assert_eq!(seconds("1969-12-31T23:59:59"), Some(-1));
        let in_order = ["2026-11-24T23:59", "2026-11-25T00:00", "2026-11-25T00:00:01", "2026-12-01T00:00"];
        assert!(in_order.map(seconds).is_sorted());
    }

    #[test]
    fn a_day_alone_has_no_place_within_its_day() {
        let day = Moment::read("2026-11-25").unwrap();
        assert_eq!((day.seconds(), day.to_string()), (None, "2026-11-25".to_owned()));
        let moment = Moment::read("2026-11-25T08:05:59+02:00").unwrap();
        assert_eq!((moment.offset, moment.to_string()), (Some(120), "2026-11-25 08:05".to_owned()));
    }

    #[test]
    fn what_is_no_moment_is_not_read() {
        for text in [
            "",
            "08:10",
            "25.11.2026",
            "11/25/2026 08:10",
            "2026-11-25T",
            "2026-11-25T8:10",
            "2026-11-25T24:00",
            "2026-11-25T08:60",
            "2026-11-25T08:10:60",
            "2026-11-25T08:10:01.",
            "2026-11-25T08:10+1:00",
            "2026-11-25T08:10+15:00",
            "2026-11-25T08:10+01:00x",
            "2026-11-25T08:10 CET",
            "2026-02-29T08:10",
            "2026-11-25x08:10",
            "２026-11-25",
        ] {
            assert_eq!(Moment::read(text), None, "{text}");
        }
    }
}
