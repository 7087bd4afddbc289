//! The table as rows of cells, in one of its layouts.

use super::amounts::{self, Micro, as_oxide, oxide, write};
use super::axes::{
    Below, Blank, Brackets, Encoding, ErrorKind, ErrorPlace, FactorPlace, Form, Layout, Missing, Moment,
    Naming, Preamble, Thousands, UnitPlace,
};
use super::table::{ELEMENTS, READINGS, Reading, Truth};
use super::words::{self, Headings, Language, Script};
use crate::packed::SheetCell;

/// Elements measured in the first spectrum of a joined table.
const FIRST_SPECTRUM: [usize; 4] = [0, 1, 2, 4];
/// Lines of the elements, as spectroscopists name them (Siegbahn notation).
const LINES: [&str; 6] = ["Ka", "La", "La", "Ka", "Ka", "Ka"];

/// Columns of one element: value, error, limit; those that the form has.
struct ElementCells {
    value: SheetCell,
    error: Option<SheetCell>,
    limit: Option<SheetCell>,
}

impl ElementCells {
    fn list(self) -> impl Iterator<Item = SheetCell> {
        [Some(self.value), self.error, self.limit].into_iter().flatten()
    }
}

impl Form {
    fn headings(&self) -> Headings {
        words::headings(self.naming.language())
    }

    /// The supplier and remark the table carries.
    pub fn script(&self) -> Script {
        match (self.encoding, self.naming.language()) {
            // A legacy encoding has the letters of its own script only.
            (Encoding::Windows1252, _) => words::WESTERN,
            (Encoding::EucKr, _) => words::KOREAN,
            (Encoding::ShiftJis, _) | (_, Language::Japanese) => words::JAPANESE,
            (Encoding::Big5, _) | (_, Language::Taiwanese) => words::TAIWANESE,
            (Encoding::Gb18030, _) | (_, Language::Chinese) => words::CHINESE,
            (Encoding::Utf16Be, _) => words::KOREAN,
            _ => words::WESTERN,
        }
    }

    /// The unit's word; in East Asian encodings the letter mu is the Greek one.
    fn unit_word(&self) -> &'static str {
        let greek = matches!(
            self.encoding,
            Encoding::ShiftJis | Encoding::Gb18030 | Encoding::Big5 | Encoding::EucKr
        );
        match self.unit {
            amounts::Unit::MicrogramPerGram if greek => "μg/g",
            unit => unit.name(),
        }
    }

    /// Every letter the form may need, to see whether its encoding has them.
    pub fn letters(&self) -> String {
        let words = self.headings();
        let Headings {
            id, part, lot, supplier, spot, date, time, seconds, note, element, value, unit, ..
        } = words;
        let names: String = (0..ELEMENTS.len()).map(|at| self.element(at)).collect();
        let thousands = write(1_000, 0, self.mark, self.thousands);
        [
            id,
            part,
            lot,
            supplier,
            spot,
            date,
            time,
            seconds,
            note,
            element,
            value,
            unit,
            words.error,
            words.limit,
            words.spectrum,
            words.relative,
            self.missing_word(),
            self.unit_word(),
            self.script().supplier,
            self.script().note,
            &names,
            &thousands,
            "±",
        ]
        .concat()
    }

    fn element(&self, at: usize) -> String {
        let symbol = ELEMENTS[at];
        match self.naming {
            Naming::Symbol => symbol.to_owned(),
            Naming::LowerCase => symbol.to_lowercase(),
            Naming::Line => format!("{symbol} {}", LINES[at]),
            Naming::Oxide => oxide(symbol).map_or(symbol, |(formula, ..)| formula).to_owned(),
            _ => words::elements(self.naming.language())[at].to_owned(),
        }
    }

    fn missing_word(&self) -> &'static str {
        match self.missing {
            Missing::Nd => "n.d.",
            Missing::Bdl => "BDL",
            Missing::LessLod => "<LOD",
            Missing::Own => self.headings().missing,
        }
    }

    /// A heading with the unit where headings carry it.
    fn with_unit(&self, heading: &str, unit: &str) -> String {
        if self.unit_place != UnitPlace::Heading {
            return heading.to_owned();
        }
        match self.brackets {
            Brackets::None => format!("{heading} {unit}"),
            Brackets::Round => format!("{heading} ({unit})"),
            Brackets::Square => format!("{heading} [{unit}]"),
        }
    }

    /// The word for an error, with what belongs to it.
    fn error_words(&self, word: &str) -> String {
        let mut words = word.to_owned();
        if self.error_kind == ErrorKind::Relative {
            words = format!("{words} {}", self.headings().relative);
            // Where each error cell or the error's own line states its unit, the heading needn't.
            let stated = match self.unit_place {
                UnitPlace::Heading => false,
                UnitPlace::Row | UnitPlace::Suffix => true,
                UnitPlace::Column => self.layout == Layout::Turned,
            };
            if !stated {
                words += " %";
            }
        }
        if self.factor_place == FactorPlace::Heading {
            words = format!("{words} ({})", self.factor.name());
        }
        words
    }

    fn element_headings(&self, at: usize) -> ElementCells {
        let (name, words) = (self.element(at), self.headings());
        let text = SheetCell::Text;
        ElementCells {
            value: text(self.with_unit(&name, self.unit_word())),
            error: match self.error_place {
                ErrorPlace::Named => Some(text(format!("{name} {}", self.error_words(words.error)))),
                ErrorPlace::Bare => Some(text(self.error_words("±"))),
                ErrorPlace::InCell => None,
            },
            limit: (self.below == Below::LimitColumn)
                .then(|| text(self.with_unit(&format!("{name} {}", words.limit), self.unit_word()))),
        }
    }

    /// The units of one element's columns, for a unit row or a turned table's unit column.
    fn element_units(&self) -> ElementCells {
        let unit = || SheetCell::Text(self.unit_word().to_owned());
        let error = match self.error_kind {
            ErrorKind::Absolute => unit(),
            ErrorKind::Relative => SheetCell::Text("%".to_owned()),
        };
        ElementCells {
            value: unit(),
            error: (self.error_place != ErrorPlace::InCell).then_some(error),
            limit: (self.below == Below::LimitColumn).then(unit),
        }
    }

    fn digits(&self, amount: Micro, at: usize) -> String {
        let amount = if self.naming == Naming::Oxide { as_oxide(amount, ELEMENTS[at]) } else { amount };
        self.unit.write(amount, self.mark, self.thousands)
    }

    fn with_suffix(&self, digits: String, unit: &str) -> String {
        if self.unit_place == UnitPlace::Suffix { format!("{digits} {unit}") } else { digits }
    }

    fn amount(&self, amount: Micro, at: usize) -> String {
        self.with_suffix(self.digits(amount, at), self.unit_word())
    }

    /// A cell that is a number where the container holds numbers.
    fn number(&self, text: String) -> SheetCell {
        if self.container.holds_numbers() { SheetCell::Number(text) } else { SheetCell::Text(text) }
    }

    fn printed_error(&self, truth: Truth, at: usize) -> String {
        let Truth::Number(_, share) = truth else { return String::new() };
        match self.error_kind {
            ErrorKind::Absolute => self.digits(truth.sigma() * self.factor.hundredths() / 100, at),
            // Hundredths of a percent times hundredths of a sigma.
            ErrorKind::Relative => write(share * self.factor.hundredths(), 4, self.mark, Thousands::None),
        }
    }

    fn element_cells(&self, truth: Truth, at: usize) -> ElementCells {
        let text = SheetCell::Text;
        let value = match truth {
            Truth::Number(amount, _) => match self.error_place {
                ErrorPlace::InCell => text(self.with_suffix(
                    format!("{} ± {}", self.digits(amount, at), self.printed_error(truth, at)),
                    self.unit_word(),
                )),
                _ => self.number(self.amount(amount, at)),
            },
            Truth::Zero => self.number(self.amount(0, at)),
            Truth::Below(limit) => text(match self.below {
                Below::Sign => format!("< {}", self.amount(limit, at)),
                Below::SignClose => format!("<{}", self.amount(limit, at)),
                Below::Word => format!("LOD: {}", self.amount(limit, at)),
                Below::LimitColumn | Below::InError => "<LOD".to_owned(),
            }),
            Truth::Above(bound) => text(format!("> {}", self.amount(bound, at))),
            Truth::NotDetected => text(self.missing_word().to_owned()),
            Truth::Blank => text(if self.blank == Blank::Dash { "-" } else { "" }.to_owned()),
        };
        let error = match truth {
            Truth::Number(..) => {
                let unit = if self.error_kind == ErrorKind::Relative { "%" } else { self.unit_word() };
                self.number(self.with_suffix(self.printed_error(truth, at), unit))
            }
            Truth::Below(limit) if self.below == Below::InError => self.number(self.amount(limit, at)),
            _ => text(String::new()),
        };
        let limit = match truth {
            Truth::Below(limit) => self.number(self.amount(limit, at)),
            _ => text(String::new()),
        };
        ElementCells {
            value,
            error: (self.error_place != ErrorPlace::InCell).then_some(error),
            limit: (self.below == Below::LimitColumn).then_some(limit),
        }
    }

    fn identity_headings(&self) -> Vec<SheetCell> {
        let words = self.headings();
        let mut list = vec![words.id, words.part, words.lot, words.supplier, words.spot, words.date];
        if self.moment == Moment::TwoColumns {
            list.push(words.time);
        }
        list.extend([words.seconds, words.note]);
        list.into_iter().map(|word| SheetCell::Text(word.to_owned())).collect()
    }

    fn identities(&self, reading: &Reading) -> Vec<SheetCell> {
        let text = |text: &str| SheetCell::Text(text.to_owned());
        let (date, time) = reading.moment.split_once('T').expect("a date and a time");
        let (year, rest) = date.split_once('-').expect("a date");
        let (month, day) = rest.split_once('-').expect("a date");
        let mut list = vec![
            text(reading.id),
            text(reading.part),
            text(reading.lot),
            text(self.script().supplier),
            self.number(reading.spot.to_owned()),
        ];
        match self.moment {
            Moment::Iso => list.push(text(reading.moment)),
            Moment::IsoSpace => list.push(text(&format!("{date} {time}"))),
            Moment::DayFirst => list.push(text(&format!("{day}.{month}.{year} {time}"))),
            Moment::MonthFirst => list.push(text(&format!("{month}/{day}/{year} {time}"))),
            Moment::TwoColumns => list.extend([text(date), text(time)]),
            Moment::DateCell => list.push(SheetCell::Moment(reading.moment.to_owned())),
        }
        list.extend([self.number(reading.seconds.to_owned()), text(self.script().note)]);
        list
    }

    /// The rows, with those above the table.
    pub fn rows(&self) -> Vec<Vec<SheetCell>> {
        let mut rows = self.preamble_rows();
        rows.extend(match self.layout {
            Layout::Wide => self.wide_rows(),
            Layout::Long => self.long_rows(),
            Layout::Turned => self.turned_rows(),
            Layout::Joined => self.joined_rows(),
        });
        rows
    }

    fn preamble_rows(&self) -> Vec<Vec<SheetCell>> {
        let language = self.naming.language();
        let uncertainty = match language {
            Language::English => "Uncertainty",
            _ => self.headings().error,
        };
        let mut stated = vec![("Instrument", "XR-9"), ("Operator", "K. Elm")];
        if self.factor_place == FactorPlace::LineAbove {
            stated.push((uncertainty, self.factor.name()));
        }
        let text = |text: &str| SheetCell::Text(text.to_owned());
        let mut rows: Vec<Vec<SheetCell>> = match self.preamble {
            Preamble::None => return Vec::new(),
            Preamble::Colon => {
                stated.iter().map(|(key, value)| vec![text(&format!("{key}: {value}"))]).collect()
            }
            Preamble::Cells => stated.iter().map(|(key, value)| vec![text(key), text(value)]).collect(),
        };
        rows.push(Vec::new());
        rows
    }

    fn head(&self, before_elements: Option<&str>) -> Vec<Vec<SheetCell>> {
        let mut head = self.identity_headings();
        head.extend(before_elements.map(|word| SheetCell::Text(word.to_owned())));
        let identities = head.len();
        if self.unit_place == UnitPlace::Column {
            head.push(SheetCell::Text(self.headings().unit.to_owned()));
        }
        head.extend((0..ELEMENTS.len()).flat_map(|at| self.element_headings(at).list()));
        let mut rows = vec![head];
        if self.unit_place == UnitPlace::Row {
            let mut units = vec![SheetCell::Text(String::new()); identities];
            units.extend((0..ELEMENTS.len()).flat_map(|_| self.element_units().list()));
            rows.push(units);
        }
        rows
    }

    fn wide_rows(&self) -> Vec<Vec<SheetCell>> {
        let mut rows = self.head(None);
        rows.extend(READINGS.iter().map(|reading| {
            let mut row = self.identities(reading);
            if self.unit_place == UnitPlace::Column {
                row.push(SheetCell::Text(self.unit_word().to_owned()));
            }
            row.extend((0..ELEMENTS.len()).flat_map(|at| self.element_cells(reading.cells[at], at).list()));
            row
        }));
        rows
    }

    fn joined_rows(&self) -> Vec<Vec<SheetCell>> {
        let mut rows = self.head(Some(self.headings().spectrum));
        for reading in &READINGS {
            for (spectrum, first) in [("1", true), ("2", false)] {
                let mut row = self.identities(reading);
                row.push(SheetCell::Text(spectrum.to_owned()));
                if self.unit_place == UnitPlace::Column {
                    row.push(SheetCell::Text(self.unit_word().to_owned()));
                }
                for at in 0..ELEMENTS.len() {
                    let cells = self.element_cells(reading.cells[at], at);
                    if FIRST_SPECTRUM.contains(&at) == first {
                        row.extend(cells.list());
                    } else {
                        row.extend(cells.list().map(|_| SheetCell::Text(String::new())));
                    }
                }
                rows.push(row);
            }
        }
        rows
    }

    fn long_rows(&self) -> Vec<Vec<SheetCell>> {
        let words = self.headings();
        let text = |text: &str| SheetCell::Text(text.to_owned());
        let error_word =
            if self.naming.language() == Language::English { "Uncertainty" } else { words.error };
        let mut head = self.identity_headings();
        head.push(text(words.element));
        head.push(SheetCell::Text(self.with_unit(words.value, self.unit_word())));
        if self.unit_place == UnitPlace::Column {
            head.push(text(words.unit));
        }
        if self.error_place != ErrorPlace::InCell {
            head.push(SheetCell::Text(self.error_words(error_word)));
        }
        if self.factor_place == FactorPlace::Column {
            head.push(text("Sigma of error"));
        }
        if self.below == Below::LimitColumn {
            head.push(SheetCell::Text(self.with_unit(words.limit, self.unit_word())));
        }
        let mut rows = vec![head];
        for reading in &READINGS {
            for at in 0..ELEMENTS.len() {
                let ElementCells { value, error, limit } = self.element_cells(reading.cells[at], at);
                let mut row = self.identities(reading);
                row.push(SheetCell::Text(self.element(at)));
                row.push(value);
                if self.unit_place == UnitPlace::Column {
                    row.push(text(self.unit_word()));
                }
                row.extend(error);
                if self.factor_place == FactorPlace::Column {
                    row.push(self.number((self.factor.hundredths() / 100).to_string()));
                }
                row.extend(limit);
                rows.push(row);
            }
        }
        rows
    }

    fn turned_rows(&self) -> Vec<Vec<SheetCell>> {
        let mut columns = Vec::new();
        let mut labels = self.identity_headings();
        labels.extend((0..ELEMENTS.len()).flat_map(|at| self.element_headings(at).list()));
        let identities = self.identity_headings().len();
        columns.push(labels);
        if self.unit_place == UnitPlace::Column {
            let mut units = vec![SheetCell::Text(String::new()); identities];
            units[0] = SheetCell::Text(self.headings().unit.to_owned());
            units.extend((0..ELEMENTS.len()).flat_map(|_| self.element_units().list()));
            columns.push(units);
        }
        columns.extend(READINGS.iter().map(|reading| {
            let mut column = self.identities(reading);
            column
                .extend((0..ELEMENTS.len()).flat_map(|at| self.element_cells(reading.cells[at], at).list()));
            column
        }));
        (0..columns[0].len()).map(|row| columns.iter().map(|column| column[row].clone()).collect()).collect()
    }
}
