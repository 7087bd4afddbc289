//! Numbers, dates and times as text: the shortest that says the same.

use std::fmt::Write;

/// Where a workbook counts its days from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Clock {
    /// Day 1 is 1 January 1900, and 29 February 1900 is a day.
    From1900,
    /// Day 0 is 1 January 1904.
    From1904,
}

const MS_IN_DAY: i64 = 86_400_000;

/// The last day that has a date, 31 December 9999, counted from 1900 (ECMA-376 part 1, 18.17.4.1).
const LAST_SERIAL: f64 = 2_958_465.0;

/// Powers of ten between which a number is written without an exponent.
const PLAINEST: std::ops::RangeInclusive<i32> = -7..=20;

/// Reads a number as a workbook stores it; `inf` and `nan` are words.
pub(super) fn parse_number(text: &str) -> Option<f64> {
    let text = text.trim_ascii();
    let digits = text.bytes().any(|byte| byte.is_ascii_digit());
    let only = text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'+' | b'-' | b'.' | b'e' | b'E'));
    if !digits || !only {
        return None;
    }
    text.parse().ok().filter(|value: &f64| value.is_finite())
}

/// Appends the shortest decimal that reads as the same number, its point moved to the right by so many places. The
/// point is moved in the text, so 0.0052 becomes exactly 0.52. (Shortest digits come from the standard library's own
/// integer algorithm, the same on every target.)
pub(super) fn write_number(value: f64, places: i32, into: &mut String) {
    let written = format!("{value:e}");
    let (mantissa, exponent) = written.split_once('e').unwrap_or((&written, "0"));
    let (sign, mantissa) = match mantissa.strip_prefix('-') {
        Some(rest) => ("-", rest),
        None => ("", mantissa),
    };
    let digits: String = mantissa.chars().filter(char::is_ascii_digit).collect();
    if digits == "0" {
        into.push('0');
        return;
    }
    let power = exponent.parse::<i32>().unwrap_or(0) + places;
    into.push_str(sign);
    let whole = usize::try_from(power).map_or(0, |power| power + 1);
    if !PLAINEST.contains(&power) {
        let (first, rest) = digits.split_at(1);
        into.push_str(first);
        if !rest.is_empty() {
            into.push('.');
            into.push_str(rest);
        }
        // A String takes any text.
        let _ = write!(into, "e{power}");
    } else if power < 0 {
        into.push_str("0.");
        into.extend(std::iter::repeat_n('0', power.unsigned_abs() as usize - 1));
        into.push_str(&digits);
    } else if digits.len() <= whole {
        into.push_str(&digits);
        into.extend(std::iter::repeat_n('0', whole - digits.len()));
    } else {
        let (left, right) = digits.split_at(whole);
        into.push_str(left);
        into.push('.');
        into.push_str(right);
    }
}

/// Appends a stored fraction as the percentage it shows.
pub(super) fn write_percent(value: f64, into: &mut String) {
    write_number(value, 2, into);
    into.push('%');
}

/// Appends a day number as `2026-11-25`, `2026-11-25T10:00:00` or, where it is less than a day, `10:00:00`. A number
/// that is no date stays a number.
pub(super) fn write_date(serial: f64, clock: Clock, time_only: bool, into: &mut String) {
    if !(0.0..LAST_SERIAL + 1.0).contains(&serial) {
        write_number(serial, 0, into);
        return;
    }
    // Milliseconds, since seven decimals of a day are no more than that; a product and a rounding are exact enough
    // and the same on every target.
    let ms = (serial * MS_IN_DAY as f64).round() as i64;
    let (day, of_day) = (ms / MS_IN_DAY, ms % MS_IN_DAY);
    if day == 0 && (time_only || clock == Clock::From1900) {
        write_time(of_day, into);
        return;
    }
    let (year, month, day) = match (clock, day) {
        // The day that never was, kept as the workbook shows it (ECMA-376 part 1, 18.17.4.1).
        (Clock::From1900, 60) => (1900, 2, 29),
        (Clock::From1900, 1..=59) => civil(day - 25_568),
        (Clock::From1900, _) => civil(day - 25_569),
        (Clock::From1904, _) => civil(day - 24_107),
    };
    // A String takes any text.
    let _ = write!(into, "{year:04}-{month:02}-{day:02}");
    if of_day != 0 {
        into.push('T');
        write_time(of_day, into);
    }
}

/// Appends days as hours, minutes and seconds gone by: `26:30:00`.
pub(super) fn write_elapsed(days: f64, into: &mut String) {
    if !(0.0..LAST_SERIAL + 1.0).contains(&days) {
        write_number(days, 0, into);
        return;
    }
    write_time((days * MS_IN_DAY as f64).round() as i64, into);
}

fn write_time(ms: i64, into: &mut String) {
    let (seconds, ms) = (ms / 1000, ms % 1000);
    // A String takes any text.
    let _ = write!(into, "{:02}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
    if ms != 0 {
        let _ = write!(into, ".{ms:03}");
    }
}

/// Year, month and day of a day counted from 1 January 1970, by eras of 400 years that start in March, so that the
/// leap day comes last (from memory; held against known dates below).
fn civil(day: i64) -> (i64, i64, i64) {
    let day = day + 719_468;
    let era = day.div_euclid(146_097);
    let of_era = day.rem_euclid(146_097);
    let year_of_era = (of_era - of_era / 1460 + of_era / 36_524 - of_era / 146_096) / 365;
    let of_year = of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
    let month = (5 * of_year + 2) / 153;
    let day = of_year - (153 * month + 2) / 5 + 1;
    let month = if month < 10 { month + 3 } else { month - 9 };
    (era * 400 + year_of_era + i64::from(month <= 2), month, day)
}

/// A time as `OpenDocument` writes it (XML Schema duration, `PT10H30M00S`) as `10:30:00`; nothing for another
/// text.
pub(super) fn time_from_duration(text: &str) -> Option<String> {
    let mut rest = text.strip_prefix('P')?;
    let mut seconds: u64 = 0;
    let mut part_of_second = "";
    let mut in_time = false;
    while !rest.is_empty() {
        if let Some(after) = rest.strip_prefix('T') {
            (in_time, rest) = (true, after);
            continue;
        }
        let end = rest.find(|letter: char| !letter.is_ascii_digit() && letter != '.')?;
        let (number, after) = rest.split_at(end);
        let mut unit = after.chars();
        let scale = match (unit.next()?, in_time) {
            ('D', false) => 86_400,
            ('H', true) => 3600,
            ('M', true) => 60,
            ('S', true) => 1,
            _ => return None,
        };
        let (whole, part) = number.split_once('.').unwrap_or((number, ""));
        seconds = whole.parse::<u64>().ok()?.checked_mul(scale)?.checked_add(seconds)?;
        part_of_second = part.trim_end_matches('0');
        rest = unit.as_str();
    }
    let mut time = format!("{:02}:{:02}:{:02}", seconds / 3600, seconds / 60 % 60, seconds % 60);
    if !part_of_second.is_empty() {
        time.push('.');
        time.push_str(part_of_second);
    }
    Some(time)
}

/// A date as the files write it, without a time of day that is midnight.
pub(super) fn without_midnight(text: &str) -> &str {
    match text.split_once('T') {
        Some((date, time)) if time.bytes().all(|byte| matches!(byte, b'0' | b':' | b'.' | b'Z')) => date,
        _ => text,
    }
}

#[cfg(test)]
mod tests {
    use plumbline_core::quantity::{DecimalMark, Number};

    use super::*;

    fn number(value: f64) -> String {
        let mut text = String::new();
        write_number(value, 0, &mut text);
        text
    }

    fn percent(value: f64) -> String {
        let mut text = String::new();
        write_percent(value, &mut text);
        text
    }

    fn date(serial: f64, clock: Clock) -> String {
        let mut text = String::new();
        write_date(serial, clock, false, &mut text);
        text
    }

    #[test]
    fn a_number_is_written_as_the_shortest_text_that_reads_the_same() {
        assert_eq!(parse_number("5.1999999999999998E-3").map(number).as_deref(), Some("0.0052"));
        let shown = [
            (0.0, "0"),
            (-0.0, "0"),
            (1.0, "1"),
            (-12.5, "-12.5"),
            (100.0, "100"),
            (812.0, "812"),
            (0.1, "0.1"),
            (1e-7, "0.0000001"),
            (1.5e-9, "1.5e-9"),
            (1e20, "100000000000000000000"),
            (1e21, "1e21"),
            (-1.25e300, "-1.25e300"),
            (5e-324, "5e-324"),
            (123_456.789, "123456.789"),
        ];
        for (value, text) in shown {
            assert_eq!(number(value), text);
            assert_eq!(text.parse::<f64>(), Ok(value));
            assert!(Number::parse(text.as_bytes(), DecimalMark::Point).is_ok(), "{text}");
        }
    }

    #[test]
    fn a_percentage_is_moved_in_its_text_and_never_multiplied() {
        assert_eq!(percent(0.0052), "0.52%");
        assert_eq!(percent(0.07), "7%");
        assert_eq!(percent(0.57), "57%");
        assert_eq!(percent(1.0), "100%");
        assert_eq!(percent(-0.001_25), "-0.125%");
        assert_eq!(percent(0.0), "0%");
        assert_eq!(percent(12.0), "1200%");
    }

    #[test]
    fn words_that_the_standard_library_reads_as_numbers_are_words_here() {
        for text in ["inf", "NaN", "infinity", "", "1e999", "0x10", "1,5", "e", "-"] {
            assert_eq!(parse_number(text), None, "{text}");
        }
        assert_eq!(parse_number(" 1.5e3 "), Some(1500.0));
    }

    #[test]
    fn days_count_from_1900_with_the_leap_day_that_never_was() {
        let shown = [
            (1.0, "1900-01-01"),
            (59.0, "1900-02-28"),
            (60.0, "1900-02-29"),
            (61.0, "1900-03-01"),
            (25_569.0, "1970-01-01"),
            (36_585.0, "2000-02-29"),
            (46_351.0, "2026-11-25"),
            (46_351.416_666_666_7, "2026-11-25T10:00:00"),
            (0.416_666_666_7, "10:00:00"),
            (2_958_465.0, "9999-12-31"),
            (2_958_466.0, "2958466"),
            (-1.0, "-1"),
        ];
        for (serial, text) in shown {
            assert_eq!(date(serial, Clock::From1900), text);
        }
    }

    #[test]
    fn days_count_from_1904_where_the_workbook_says_so() {
        assert_eq!(date(0.0, Clock::From1904), "1904-01-01");
        assert_eq!(date(44_889.416_666_666_7, Clock::From1904), "2026-11-25T10:00:00");
    }

    #[test]
    fn elapsed_times_and_durations_are_hours_minutes_and_seconds() {
        let mut text = String::new();
        write_elapsed(1.104_166_666_67, &mut text);
        assert_eq!(text, "26:30:00");
        assert_eq!(time_from_duration("PT10H30M00S").as_deref(), Some("10:30:00"));
        assert_eq!(time_from_duration("PT00H01M30.500000000S").as_deref(), Some("00:01:30.5"));
        assert_eq!(time_from_duration("P1DT2H").as_deref(), Some("26:00:00"));
        assert_eq!(time_from_duration("10:30"), None);
        assert_eq!(time_from_duration("PT5X"), None);
        assert_eq!(without_midnight("2026-11-25T00:00:00"), "2026-11-25");
        assert_eq!(without_midnight("2026-11-25T10:00:00"), "2026-11-25T10:00:00");
    }
}
