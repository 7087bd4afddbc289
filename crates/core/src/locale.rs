//! Numbers and dates as a language writes them in text. The facts of a language are texts of its catalogue (`locale.ftl`);
//! what is quoted (a cell as written, an act's value, an identifier) and all data never come here.

use crate::day::Day;

/// The arguments of texts that are numbers or dates the program states. Each is written as the language writes it where
/// it is nothing but a number or a date; the same argument may be a phrase (`from`), which stays as it is. Names, ids and
/// what a file says have other names.
const STATED: [&str; 51] = [
    "above",
    "allowed",
    "apparent",
    "aql",
    "at10",
    "at50",
    "at95",
    "below",
    "centre",
    "confidence",
    "critical",
    "date",
    "day",
    "deca",
    "end",
    "enough",
    "expires",
    "factor",
    "first",
    "from",
    "g",
    "gap",
    "high",
    "k",
    "last",
    "limit",
    "low",
    "lower",
    "measured",
    "metals",
    "most",
    "multiple",
    "nearest",
    "outside",
    "p",
    "pbb",
    "pbde",
    "percent",
    "scaled",
    "share",
    "sigma",
    "slope",
    "span",
    "spreads",
    "sum",
    "t",
    "to",
    "u",
    "until",
    "upper",
    "value",
];

/// True for an argument that a language may write in its own way. `x` is the value in a line of arithmetic.
pub fn is_stated(argument: &str) -> bool {
    argument == "x" || STATED.binary_search(&argument).is_ok()
}

/// True for a text that is a number and nothing else but signs that stand with numbers.
pub fn is_number(text: &str) -> bool {
    let goes_with = |c: char| c.is_ascii_digit() || " \u{a0}.+-−<>≤≥±…%".contains(c);
    text.contains(|c: char| c.is_ascii_digit()) && text.chars().all(goes_with)
}

/// The text with `sign` for the point of every decimal number in it. Digits with more than one point (a date, a version)
/// are no decimal number.
pub fn with_sign(text: &str, sign: &str) -> String {
    let in_number = |c: char| c.is_ascii_digit() || c == '.';
    let mut written = String::with_capacity(text.len());
    let mut rest = text;
    while let Some(at) = rest.find(in_number) {
        let (before, from) = rest.split_at(at);
        let (run, after) = from.split_at(from.find(|c| !in_number(c)).unwrap_or(from.len()));
        written.push_str(before);
        // The full stop behind a number is none of its points.
        let number = run.trim_end_matches('.');
        match number.split_once('.') {
            Some((whole, part)) if !whole.is_empty() && !part.contains('.') => {
                written.extend([whole, sign, part]);
            }
            _ => written.push_str(number),
        }
        written.push_str(run.get(number.len()..).unwrap_or(""));
        rest = after;
    }
    written.push_str(rest);
    written
}

/// The day that a text of ISO 8601 begins with, and the time of day behind it as it stands; `None` for any other text.
pub fn moment(text: &str) -> Option<(Day, &str)> {
    let day = Day::parse(text.get(..10)?)?;
    let rest = text.get(10..)?;
    let time = rest.strip_prefix(['T', ' ']);
    let is_time = |time: &str| time.starts_with(|c: char| c.is_ascii_digit());
    match time {
        None => rest.is_empty().then_some((day, "")),
        Some(time) => is_time(time).then_some((day, time)),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_arguments_stand_in_their_order_so_that_each_is_found() {
        assert!(STATED.is_sorted());
        assert!(is_stated("value") && is_stated("above") && is_stated("x"));
        assert!(!is_stated("lot") && !is_stated("found") && !is_stated("written") && !is_stated("clause"));
    }

    #[test]
    fn a_number_is_told_from_a_phrase() {
        for text in ["12.5", "-0.003", "< 0.5", "640.5\u{a0}±\u{a0}20", "+1.2", "100\u{a0}…\u{a0}200.5"] {
            assert!(is_number(text), "{text}");
        }
        for text in ["", "none", "12.5 mg/kg", "1.2a", "…", "2011/65/EU"] {
            assert!(!is_number(text), "{text}");
        }
    }

    #[test]
    fn only_a_point_between_digits_is_a_decimal_sign() {
        assert_eq!(with_sign("1414.2 to 13.33.", ","), "1414,2 to 13,33.");
        assert_eq!(with_sign("a.5 5.b .5 …", ","), "a.5 5.b .5 …");
        assert_eq!(with_sign("26.11.2026, 0.5 to 1.2.3", ","), "26.11.2026, 0,5 to 1.2.3");
    }

    #[test]
    fn a_moment_is_a_day_with_what_stands_behind_it() {
        let day = Day::new(2026, 11, 25).unwrap();
        assert_eq!(moment("2026-11-25"), Some((day, "")));
        assert_eq!(moment("2026-11-25T10:15:31+01:00"), Some((day, "10:15:31+01:00")));
        assert_eq!(moment("2026-11-25 10:15"), Some((day, "10:15")));
        for text in ["", "2026-11-25x", "2026-11-25T", "2026-13-25", "10:15"] {
            assert_eq!(moment(text), None, "{text}");
        }
    }
}
