//! Calendar days: read, compared, moved by months.

use std::fmt;

/// A day of the Gregorian calendar, years 0001 to 9999; earlier days are less.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Day {
    year: u16,
    month: u8,
    of_month: u8,
}

impl Day {
    /// A day by its numbers; `None` for one that is not in the calendar.
    pub const fn new(year: u16, month: u8, day: u8) -> Option<Day> {
        if year >= 1 && year <= 9999 && day >= 1 && day <= days_in(year, month) {
            Some(Day { year, month, of_month: day })
        } else {
            None
        }
    }

    /// Reads `YYYY-MM-DD` (ISO 8601, extended format) and nothing else.
    pub fn parse(text: &str) -> Option<Day> {
        let number = |from: usize, to: usize| {
            let digits = text.get(from..to)?;
            // A sign is no digit, whatever a parser of numbers makes of it.
            digits.bytes().all(|byte| byte.is_ascii_digit()).then(|| digits.parse::<u16>().ok()).flatten()
        };
        let marked = text.len() == 10 && text.get(4..5) == Some("-") && text.get(7..8) == Some("-");
        let (month, day) = (u8::try_from(number(5, 7)?).ok()?, u8::try_from(number(8, 10)?).ok()?);
        if marked { Day::new(number(0, 4)?, month, day) } else { None }
    }

    /// Days since 1970-01-01; negative before.
    pub const fn number(self) -> i64 {
        // Counted in years from March, so that the odd day stands at the end; the first day of 1970 is the 719 469th then.
        let (year, month) = if self.month > 2 {
            (self.year as i64, self.month as i64 - 3)
        } else {
            (self.year as i64 - 1, self.month as i64 + 9)
        };
        let of_year = (153 * month + 2) / 5 + self.of_month as i64;
        year * 365 + year.div_euclid(4) - year.div_euclid(100) + year.div_euclid(400) + of_year - 719_469
    }

    /// The same day of the month so many months later (or earlier, where negative); the month's last day where it has
    /// no such day. `None` outside the years 0001 to 9999.
    pub fn plus_months(self, months: i32) -> Option<Day> {
        let at = (i32::from(self.year) * 12 + i32::from(self.month) - 1).checked_add(months)?;
        let year = u16::try_from(at.div_euclid(12)).ok()?;
        let month = u8::try_from(at.rem_euclid(12) + 1).ok()?;
        Day::new(year, month, self.of_month.min(days_in(year, month)))
    }
}

/// How many days a month has; 0 for a month that there is not.
const fn days_in(year: u16, month: u8) -> u8 {
    let leap = year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    match month {
        2 if leap => 29,
        2 => 28,
        4 | 6 | 9 | 11 => 30,
        1 | 3 | 5 | 7 | 8 | 10 | 12 => 31,
        _ => 0,
    }
}

/// `2026-12-11`.
impl fmt::Display for Day {
    fn fmt(&self, out: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(out, "{:04}-{:02}-{:02}", self.year, self.month, self.of_month)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn day(text: &str) -> Day {
        Day::parse(text).unwrap_or_else(|| panic!("{text}"))
    }

    #[test]
    fn a_day_of_the_calendar_is_read_and_written_alike() {
        for text in [
            "0001-01-01",
            "2000-02-29",
            "2026-04-30",
            "2026-06-30",
            "2026-09-30",
            "2026-11-30",
            "2028-02-29",
            "9999-12-31",
        ] {
            assert_eq!(day(text).to_string(), text);
        }
        for month in [1, 3, 5, 7, 8, 10, 12] {
            assert!(Day::new(2026, month, 31).is_some() && Day::new(2026, month, 32).is_none(), "{month}");
        }
        for month in [4, 6, 9, 11] {
            assert!(Day::new(2026, month, 30).is_some() && Day::new(2026, month, 31).is_none(), "{month}");
        }
    }

    #[test]
    fn what_is_no_day_is_not_read() {
        for text in [
            "",
            "tomorrow",
            "26-01-01",
            "2026-1-01",
            "2026-01-1",
            "2026-13-01",
            "2026-00-01",
            "2026-01-00",
            "2026-01-32",
            "2026-02-29",
            "2027-02-29",
            "1900-02-29",
            "2028-02-30",
            "0000-01-01",
            "+026-01-01",
            "2026-+1-01",
            "2026-01-+1",
            "2026/01/01",
            "2026-01/01",
            "2026/01-01",
            "2026-01-01 ",
            " 2026-01-01",
            "2026-01-011",
            "20２6-01-01",
            "2026-01-0é",
        ] {
            assert_eq!(Day::parse(text), None, "{text}");
        }
        assert_eq!(Day::new(10_000, 1, 1), None);
    }

    #[test]
    fn an_earlier_day_is_less() {
        let days = ["2025-12-31", "2026-01-01", "2026-01-02", "2026-02-01", "2027-01-01"].map(day);
        assert!(days.is_sorted());
        assert!(days.windows(2).all(|pair| pair[0] < pair[1]));
    }

    #[test]
    fn days_are_numbered_without_a_gap() {
        assert_eq!(day("1970-01-01").number(), 0);
        assert_eq!(day("2000-03-01").number(), 11_017);
        assert_eq!(day("0001-01-01").number(), -719_162);
        let mut before = day("0001-01-01").number() - 1;
        for year in 1..=2400 {
            for month in 1..=12 {
                for one in (1..=31).filter_map(|of_month| Day::new(year, month, of_month)) {
                    assert_eq!(one.number(), before + 1, "{one}");
                    before += 1;
                }
            }
        }
    }

    /// Eighteen months before 30 Jun 2027 and 31 Dec 2027, the days by which a renewal had to be asked for (Directive
    /// 2011/65/EU, Article 5(5)).
    #[test]
    fn months_end_where_a_month_is_shorter() {
        assert_eq!(day("2027-06-30").plus_months(-18), Some(day("2025-12-30")));
        assert_eq!(day("2027-12-31").plus_months(-18), Some(day("2026-06-30")));
        assert_eq!(day("2027-01-31").plus_months(1), Some(day("2027-02-28")));
        assert_eq!(day("2027-11-30").plus_months(3), Some(day("2028-02-29")));
        assert_eq!(day("2026-12-11").plus_months(0), Some(day("2026-12-11")));
        assert_eq!(day("2026-12-11").plus_months(1), Some(day("2027-01-11")));
        assert_eq!(day("2026-01-11").plus_months(-1), Some(day("2025-12-11")));
        assert_eq!(day("2026-03-11").plus_months(12), Some(day("2027-03-11")));
    }

    #[test]
    fn months_beyond_the_calendar_are_none() {
        assert_eq!(day("9999-12-31").plus_months(1), None);
        assert_eq!(day("0001-01-31").plus_months(-1), None);
        assert_eq!(day("2026-01-01").plus_months(i32::MAX), None);
        assert_eq!(day("2026-01-01").plus_months(i32::MIN), None);
    }
}
