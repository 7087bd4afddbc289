//! What a number format makes of a number: as far as it changes what the number says.

use super::cell_text::{self, Clock};

/// What one section of a format shows a number as.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shown {
    /// As a number.
    Plain,
    /// Times a hundred, with a percent sign.
    Percent,
    /// As it is, before a percent sign that is only a letter.
    PercentSign,
    /// As a date, or a date and time of day.
    Date,
    /// As a time of day.
    Time,
    /// As hours, minutes and seconds gone by.
    Elapsed,
}

/// The sections for positive and negative numbers and for zero.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct NumberFormat {
    positive: Shown,
    negative: Shown,
    zero: Shown,
}

impl NumberFormat {
    /// Every number as it is.
    pub(super) const GENERAL: NumberFormat = NumberFormat::same(Shown::Plain);

    const fn same(shown: Shown) -> NumberFormat {
        NumberFormat { positive: shown, negative: shown, zero: shown }
    }

    /// A format that files name by number only.
    ///
    /// # Source
    /// ECMA-376 part 1, 18.8.30; 27 to 36 and 50 to 58 are dates and times in its tables for East Asia.
    pub(super) const fn built_in(id: u32) -> NumberFormat {
        NumberFormat::same(match id {
            9 | 10 => Shown::Percent,
            14..=17 | 22 | 27..=31 | 34..=36 | 50..=54 | 57 | 58 => Shown::Date,
            18..=21 | 32 | 33 | 45 | 47 | 55 | 56 => Shown::Time,
            46 => Shown::Elapsed,
            _ => Shown::Plain,
        })
    }

    /// A format as its code says it. Sections are chosen by sign; a section with a condition of its own is taken as
    /// if it had none, since the sections of a format hardly ever differ in kind.
    pub(super) fn from_code(code: &str) -> NumberFormat {
        let mut sections = Sections::new(code);
        let positive = sections.next().unwrap_or(Shown::Plain);
        let negative = sections.next().unwrap_or(positive);
        let zero = sections.next().unwrap_or(positive);
        NumberFormat { positive, negative, zero }
    }

    /// Appends a number as the format shows it.
    pub(super) fn write(self, value: f64, clock: Clock, into: &mut String) {
        let shown = if value > 0.0 {
            self.positive
        } else if value < 0.0 {
            self.negative
        } else {
            self.zero
        };
        match shown {
            Shown::Plain => cell_text::write_number(value, 0, into),
            Shown::Percent => cell_text::write_percent(value, into),
            Shown::PercentSign => {
                cell_text::write_number(value, 0, into);
                into.push('%');
            }
            Shown::Date => cell_text::write_date(value, clock, false, into),
            Shown::Time => cell_text::write_date(value, clock, true, into),
            Shown::Elapsed => cell_text::write_elapsed(value, into),
        }
    }
}

/// Walks the sections of a format code, ECMA-376 part 1, 18.8.31.
struct Sections<'a> {
    code: std::str::Chars<'a>,
    over: bool,
}

impl<'a> Sections<'a> {
    fn new(code: &'a str) -> Sections<'a> {
        Sections { code: code.chars(), over: false }
    }
}

impl Iterator for Sections<'_> {
    type Item = Shown;

    fn next(&mut self) -> Option<Shown> {
        if self.over {
            return None;
        }
        let (mut percent, mut sign, mut day, mut month, mut time, mut elapsed) = (0, 0, 0, 0, 0, 0);
        loop {
            let Some(letter) = self.code.next() else {
                self.over = true;
                break;
            };
            match letter {
                ';' => break,
                // The next letter is shown, skipped over or repeated: never a code.
                '\\' => sign += usize::from(self.code.next() == Some('%')),
                '_' | '*' => {
                    self.code.next();
                }
                '"' => {
                    sign += self
                        .code
                        .by_ref()
                        .take_while(|inside| *inside != '"')
                        .filter(|inside| *inside == '%')
                        .count();
                }
                '[' => {
                    let inside: String = self.code.by_ref().take_while(|inside| *inside != ']').collect();
                    let letters = inside.to_ascii_lowercase();
                    let counts = !letters.is_empty()
                        && ["h", "m", "s"]
                            .iter()
                            .any(|unit| letters.trim_matches(|letter| unit.contains(letter)).is_empty());
                    elapsed += usize::from(counts);
                }
                '%' => percent += 1,
                'd' | 'D' | 'y' | 'Y' => day += 1,
                'm' | 'M' => month += 1,
                'h' | 'H' | 's' | 'S' => time += 1,
                // `General` has no letter of a date but is a word of its own; so are AM/PM and A/P, beside an hour.
                _ => {}
            }
        }
        Some(if percent > 0 {
            Shown::Percent
        } else if elapsed > 0 {
            Shown::Elapsed
        } else if day > 0 || (month > 0 && time == 0) {
            Shown::Date
        } else if time > 0 {
            Shown::Time
        } else if sign > 0 {
            Shown::PercentSign
        } else {
            Shown::Plain
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn first(code: &str) -> Shown {
        NumberFormat::from_code(code).positive
    }

    #[test]
    fn a_percent_sign_counts_unless_it_is_only_a_letter() {
        assert_eq!(first("0.00%"), Shown::Percent);
        assert_eq!(first("[Red]0.0 %;-0.0 %"), Shown::Percent);
        assert_eq!(first("0.00\"%\""), Shown::PercentSign);
        assert_eq!(first("0.00\\%"), Shown::PercentSign);
        assert_eq!(first("0.00_%"), Shown::Plain);
        assert_eq!(first("General"), Shown::Plain);
        assert_eq!(NumberFormat::built_in(9), NumberFormat::same(Shown::Percent));
        assert_eq!(NumberFormat::built_in(10), NumberFormat::same(Shown::Percent));
        assert_eq!(NumberFormat::built_in(2), NumberFormat::GENERAL);
    }

    #[test]
    fn the_section_of_the_sign_decides() {
        let format = NumberFormat::from_code("0.0%;0.0;\"none\"");
        assert_eq!(
            (format.positive, format.negative, format.zero),
            (Shown::Percent, Shown::Plain, Shown::Plain)
        );
        let format = NumberFormat::from_code("0.0%;[Red]-0.0%");
        assert_eq!((format.negative, format.zero), (Shown::Percent, Shown::Percent));
    }

    #[test]
    fn dates_times_and_elapsed_times_are_told_from_numbers() {
        assert_eq!(first("yyyy\\-mm\\-dd"), Shown::Date);
        assert_eq!(first("[$-409]d/mmm/yy;@"), Shown::Date);
        assert_eq!(first("mmm"), Shown::Date);
        assert_eq!(first("h:mm AM/PM"), Shown::Time);
        assert_eq!(first("mm:ss.0"), Shown::Time);
        assert_eq!(first("[h]:mm:ss"), Shown::Elapsed);
        assert_eq!(first("[mm]:ss"), Shown::Elapsed);
        assert_eq!(first("[Red]0.0"), Shown::Plain);
        assert_eq!(first("#,##0.00\" days\""), Shown::Plain);
        assert_eq!(first("0.00E+00"), Shown::Plain);
        assert_eq!(first("_-* #,##0.00\\ _d_-"), Shown::Plain);
        assert_eq!(first(""), Shown::Plain);
    }
}
