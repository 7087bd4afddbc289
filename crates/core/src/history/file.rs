//! The history as text: one record a line, so that two copies grown apart are merged by uniting their lines.
//!
//! The fields of each kind of line stand in `contract.md`. Lines may come in any order and more than once, and so may the line
//! that names the version: what `cat` and `sort` make of two histories is a history.

use super::{Amount, CheckRecord, History, LotRecord};
use crate::data_file::{Problem, ProblemCode};
use crate::day::Day;
use crate::lot::Disposition;
use crate::material::MaterialClass;
use crate::outcome::Outcome;
use crate::quantity::{self, MassFraction};
use crate::reading::sha256_hexadecimal;
use crate::substance::{Element, Substance};

/// The line that names kind and version.
pub const SCHEMA: &str = "plumbline.history/1";
/// What the names of all versions begin with.
const ANY_VERSION: &str = "plumbline.history/";
const CHECK: &str = "check";
const LOT: &str = "lot";
/// Fields of a line, its kind among them.
const CHECK_FIELDS: usize = 11;
const LOT_FIELDS: usize = 15;
/// How a laboratory's result lies to what the screen said.
const LABORATORY: [&str; 3] = ["within", "over", "open"];
/// Most problems that are told of one file (our choice).
const MOST_PROBLEMS: usize = 1000;

impl History {
    /// Reads a history. A byte order mark, Windows line ends and empty lines are no part of it.
    ///
    /// # Errors
    /// Every bad line with its number and, as the column, the number of the field (the kind is field 1). Nothing of a file
    /// with a problem is used; one of another version is refused whole.
    pub fn parse(text: &str) -> Result<History, Vec<Problem>> {
        let text = text.strip_prefix('\u{feff}').unwrap_or(text);
        let lines = || {
            let numbered = text.split('\n').map(|line| line.strip_suffix('\r').unwrap_or(line)).zip(1_u32..);
            numbered.filter(|(line, _)| !line.is_empty())
        };
        let version = |line: u32, found: &str| {
            let found = found.chars().take(60).collect();
            vec![Problem { line, column: 1, code: ProblemCode::HistoryVersion, found }]
        };
        let (mut history, mut problems, mut named) = (History::default(), Vec::new(), false);
        for (text, line) in lines().filter(|(line, _)| line.starts_with(ANY_VERSION)) {
            if text != SCHEMA {
                return Err(version(line, text));
            }
            named = true;
        }
        if !named {
            return Err(version(1, lines().next().map_or("", |(line, _)| line)));
        }
        for (text, line) in lines().filter(|(text, _)| *text != SCHEMA) {
            let mut fields =
                Fields { line, texts: text.split('\t').map(unescape).collect(), problems: Vec::new() };
            match text.split('\t').next() {
                Some(CHECK) => history.checks.extend(fields.check()),
                Some(LOT) => history.lots.extend(fields.lot()),
                kind => fields.refuse(0, ProblemCode::UnknownName, kind.unwrap_or("")),
            }
            problems.append(&mut fields.problems);
            if problems.len() >= MOST_PROBLEMS {
                break;
            }
        }
        if problems.is_empty() { Ok(history) } else { Err(problems) }
    }

    /// The history as text: the same records give the same bytes. The version first, then the lines in the order of their
    /// bytes, each once, each with a line end.
    pub fn to_text(&self) -> String {
        let mut lines: Vec<String> =
            self.checks.iter().map(check_line).chain(self.lots.iter().map(lot_line)).collect();
        lines.sort_unstable();
        lines.dedup();
        let mut text = String::from(SCHEMA);
        text.push('\n');
        for line in lines {
            text.push_str(&line);
            text.push('\n');
        }
        text
    }

    /// SHA-256 of its text, which names what was given.
    pub fn sha256(&self) -> String {
        sha256_hexadecimal(self.to_text().as_bytes())
    }
}

fn escape(text: &str) -> String {
    let mut escaped = String::with_capacity(text.len());
    for character in text.chars() {
        match character {
            '\\' => escaped.push_str("\\\\"),
            '\t' => escaped.push_str("\\t"),
            '\n' => escaped.push_str("\\n"),
            '\r' => escaped.push_str("\\r"),
            other => escaped.push(other),
        }
    }
    escaped
}

/// `None` where a `\` stands for nothing.
fn unescape(text: &str) -> Option<String> {
    let mut plain = String::with_capacity(text.len());
    let mut characters = text.chars();
    while let Some(character) = characters.next() {
        plain.push(match character {
            '\\' => match characters.next()? {
                '\\' => '\\',
                't' => '\t',
                'n' => '\n',
                'r' => '\r',
                _ => return None,
            },
            other => other,
        });
    }
    Some(plain)
}

fn amount(value: MassFraction) -> String {
    format!("{value} mg/kg")
}

fn joined(fields: &[&str]) -> String {
    fields.iter().map(|field| escape(field)).collect::<Vec<_>>().join("\t")
}

fn check_line(record: &CheckRecord) -> String {
    joined(&[
        CHECK,
        &record.instrument,
        &record.mode,
        &record.sample,
        record.class.code(),
        record.element.symbol(),
        &record.time,
        &amount(record.value),
        &record.sigma.map(amount).unwrap_or_default(),
        &record.source,
        &record.line.to_string(),
    ])
}

fn lot_line(record: &LotRecord) -> String {
    let laboratory = record.laboratory.iter();
    let laboratory = laboratory.map(|(of, screen, found)| format!("{} {screen} {found}", of.symbol()));
    let composition = record.composition.iter().map(|one| {
        let below = if one.below { "<" } else { "" };
        format!("{} {below}{}", one.element.symbol(), amount(one.value))
    });
    joined(&[
        LOT,
        &record.supplier,
        &record.part,
        &record.material,
        &record.lot,
        record.class.code(),
        &record.day.map(|day| day.to_string()).unwrap_or_default(),
        record.disposition.code(),
        record.of_material.code(),
        &record.outcomes.join(","),
        &record.nearest.map(|(of, hundredths)| format!("{} {hundredths}", of.symbol())).unwrap_or_default(),
        &laboratory.collect::<Vec<_>>().join(","),
        &composition.collect::<Vec<_>>().join(","),
        &record.readings.to_string(),
        &record.inspection,
    ])
}

/// The fields of one line, and what is wrong with them.
struct Fields {
    line: u32,
    texts: Vec<Option<String>>,
    problems: Vec<Problem>,
}

impl Fields {
    fn refuse(&mut self, at: usize, code: ProblemCode, found: &str) {
        let found = found.chars().take(60).collect();
        self.problems.push(Problem { line: self.line, column: at as u32 + 1, code, found });
    }

    /// True where there are as many fields as the kind has.
    fn whole(&mut self, fields: usize) -> bool {
        let found = self.texts.len();
        if found != fields {
            self.refuse(found.min(fields), ProblemCode::HistoryLine, &format!("{found} / {fields}"));
        }
        found == fields
    }

    fn take<T>(&mut self, at: usize, read: impl FnOnce(&str) -> Result<T, ProblemCode>) -> Option<T> {
        let text = self.texts.get(at).cloned().flatten();
        let (code, found) = match &text {
            None => (ProblemCode::HistoryLine, "\\"),
            Some(text) => match read(text) {
                Ok(value) => return Some(value),
                Err(code) => (code, text.as_str()),
            },
        };
        self.refuse(at, code, found);
        None
    }

    fn text(&mut self, at: usize) -> Option<String> {
        self.take(at, |text| Ok(text.to_owned()))
    }

    fn check(&mut self) -> Option<CheckRecord> {
        if !self.whole(CHECK_FIELDS) {
            return None;
        }
        // Every field is looked at before the first that is wrong ends it, so that all of them are told.
        let (instrument, mode, sample) = (self.text(1), self.text(2), self.text(3));
        let (class, element, time) = (self.take(4, class), self.take(5, element), self.text(6));
        let (value, sigma) = (self.take(7, quantity), self.take(8, |text| empty_or(text, above_zero)));
        let (source, line) = (self.take(9, digest), self.take(10, whole_number));
        Some(CheckRecord {
            instrument: instrument?,
            mode: mode?,
            sample: sample?,
            class: class?,
            element: element?,
            time: time?,
            value: value?,
            sigma: sigma?,
            source: source?,
            line: line?,
        })
    }

    fn lot(&mut self) -> Option<LotRecord> {
        if !self.whole(LOT_FIELDS) {
            return None;
        }
        let [supplier, part, material, lot] = [1, 2, 3, 4].map(|at| self.text(at));
        let (class, day) = (self.take(5, class), self.take(6, |text| empty_or(text, day)));
        let (disposition, of_material) = (self.take(7, disposition), self.take(8, disposition));
        let outcomes = self.take(9, outcomes);
        let nearest = self.take(10, |text| empty_or(text, nearest));
        let (laboratory, composition) =
            (self.take(11, |text| list(text, laboratory)), self.take(12, |text| list(text, part_of)));
        let (readings, inspection) = (self.take(13, whole_number), self.take(14, digest));
        Some(LotRecord {
            supplier: supplier?,
            part: part?,
            material: material?,
            lot: lot?,
            class: class?,
            day: day?,
            disposition: disposition?,
            of_material: of_material?,
            outcomes: outcomes?,
            nearest: nearest?,
            laboratory: laboratory?,
            composition: composition?,
            readings: readings?,
            inspection: inspection?,
        })
    }
}

type Read<T> = Result<T, ProblemCode>;

fn empty_or<T>(text: &str, read: impl FnOnce(&str) -> Read<T>) -> Read<Option<T>> {
    if text.is_empty() { Ok(None) } else { read(text).map(Some) }
}

fn list<T>(text: &str, read: impl Fn(&str) -> Read<T>) -> Read<Vec<T>> {
    if text.is_empty() { Ok(Vec::new()) } else { text.split(',').map(read).collect() }
}

fn class(text: &str) -> Read<MaterialClass> {
    MaterialClass::from_code(text).ok_or(ProblemCode::UnknownName)
}

fn element(text: &str) -> Read<Element> {
    Element::from_symbol(text).ok_or(ProblemCode::UnknownName)
}

fn substance(text: &str) -> Read<Substance> {
    Substance::from_symbol(text).ok_or(ProblemCode::UnknownName)
}

fn disposition(text: &str) -> Read<Disposition> {
    Disposition::ALL.into_iter().find(|one| one.code() == text).ok_or(ProblemCode::UnknownName)
}

fn quantity(text: &str) -> Read<MassFraction> {
    quantity::parse_with_unit(text).map_err(|_| ProblemCode::NotAQuantity)
}

fn above_zero(text: &str) -> Read<MassFraction> {
    quantity(text)
        .and_then(|value| if value > MassFraction::ZERO { Ok(value) } else { Err(ProblemCode::NotAboveZero) })
}

fn day(text: &str) -> Read<Day> {
    Day::parse(text).ok_or(ProblemCode::OutOfRange)
}

fn whole_number<Number: std::str::FromStr>(text: &str) -> Read<Number> {
    let digits = text.bytes().all(|byte| byte.is_ascii_digit());
    text.parse().ok().filter(|_| digits).ok_or(ProblemCode::OutOfRange)
}

/// A SHA-256 in hexadecimal.
fn digest(text: &str) -> Read<String> {
    let whole = text.len() == 64 && text.bytes().all(|byte| matches!(byte, b'0'..=b'9' | b'a'..=b'f'));
    if whole { Ok(text.to_owned()) } else { Err(ProblemCode::OutOfRange) }
}

fn outcome(text: &str) -> Read<String> {
    Outcome::from_code(text).map(|known| known.code().to_owned()).ok_or(ProblemCode::UnknownName)
}

fn outcomes(text: &str) -> Read<[String; 5]> {
    let all = list(text, outcome)?;
    all.try_into().map_err(|_| ProblemCode::OutOfRange)
}

/// `Pb 150`: the substance, and hundredths of a sigma.
fn nearest(text: &str) -> Read<(Substance, u32)> {
    let (of, hundredths) = text.split_once(' ').ok_or(ProblemCode::Missing)?;
    Ok((substance(of)?, whole_number(hundredths)?))
}

/// `Pb X within`: the substance, the screen's outcome, and how the laboratory's result lies to it.
fn laboratory(text: &str) -> Read<(Substance, String, String)> {
    let mut words = text.split(' ');
    let mut next = || words.next().ok_or(ProblemCode::Missing);
    let (of, screen, found) = (substance(next()?)?, outcome(next()?)?, next()?);
    if words.next().is_some() || !LABORATORY.contains(&found) {
        return Err(ProblemCode::UnknownName);
    }
    Ok((of, screen, found.to_owned()))
}

/// `Fe 990000 mg/kg` or `Pb <5 mg/kg`.
fn part_of(text: &str) -> Read<Amount> {
    let (of, rest) = text.split_once(' ').ok_or(ProblemCode::Missing)?;
    let limit = rest.strip_prefix('<');
    Ok(Amount { element: element(of)?, value: quantity(limit.unwrap_or(rest))?, below: limit.is_some() })
}

#[cfg(test)]
mod tests {
    use super::*;

    const CHECKED: &str =
        "check\tXRF-1\tPlastics\tCHK-1\tpolymer\tPb\t2026-11-25T08:00\t965.5 mg/kg\t12 mg/kg\t";
    const LOTTED: &str = "lot\tAlder\tP-1\tbody\tL-7\tmetal\t2026-11-20\thold\taccept\tBL,BL,X,BL,not_measured\t\
                          Pb 150\tPb X within,Cd OL over\tFe 990000 mg/kg,Pb <5 mg/kg\t12\t";

    fn hash(with: char) -> String {
        with.to_string().repeat(64)
    }

    fn file(lines: &[&str]) -> String {
        format!("{SCHEMA}\n{}\n", lines.join("\n"))
    }

    fn refused(text: &str) -> Vec<String> {
        let one = |problem: Problem| {
            format!("{}:{} {} {}", problem.line, problem.column, problem.code.code(), problem.found)
        };
        History::parse(text).expect_err(text).into_iter().map(one).collect()
    }

    #[test]
    fn a_history_is_read_as_written_whatever_its_line_ends() {
        let text = file(&[&format!("{CHECKED}{}\t7", hash('a')), &format!("{LOTTED}{}", hash('b'))]);
        let history = History::parse(&text).unwrap();
        assert_eq!((history.checks.len(), history.lots.len()), (1, 1));
        assert_eq!(history.to_text(), text);
        let lot = history.lots.first().unwrap();
        assert_eq!((lot.nearest, lot.readings), (Some((Substance::Pb, 150)), 12));
        assert_eq!(lot.laboratory[1], (Substance::Cd, "OL".into(), "over".into()));
        assert!(lot.composition[1].below && !lot.composition[0].below);
        let windows = format!("\u{feff}{}", text.replace('\n', "\r\n"));
        assert_eq!(History::parse(&windows).unwrap(), history);
        assert_eq!(history.sha256().len(), 64);
    }

    #[test]
    fn lines_put_together_and_sorted_by_any_tool_are_a_history() {
        let (one, two) = (format!("{CHECKED}{}\t7", hash('a')), format!("{LOTTED}{}", hash('b')));
        let both = History::parse(&file(&[&one, &two])).unwrap();
        let mut lines: Vec<String> =
            [file(&[&one]), file(&[&two]), file(&[&one])].concat().lines().map(str::to_owned).collect();
        assert_eq!(History::parse(&lines.join("\n")).unwrap(), both);
        lines.sort();
        assert_eq!(History::parse(&lines.join("\n")).unwrap(), both);
    }

    #[test]
    fn another_version_or_another_file_is_refused_whole() {
        let line = format!("{CHECKED}{}\t7", hash('a'));
        assert_eq!(
            refused(&format!("plumbline.history/2\n{line}\n")),
            ["1:1 history_version plumbline.history/2"]
        );
        assert_eq!(
            refused(&format!("{}plumbline.history/2\n", file(&[&line]))),
            ["3:1 history_version plumbline.history/2"]
        );
        assert_eq!(refused("Sample,Pb\nA,5\n"), ["1:1 history_version Sample,Pb"]);
        assert_eq!(refused(""), ["1:1 history_version "]);
        assert!(History::parse(&format!("{SCHEMA}\n")).unwrap().is_empty());
    }

    #[test]
    fn every_bad_field_is_refused_by_line_and_field() {
        let good = format!("{CHECKED}{}\t7", hash('a'));
        for (from, to, problem) in [
            ("check\t", "chek\t", "2:1 unknown_name chek"),
            ("polymer", "jelly", "2:5 unknown_name jelly"),
            ("\tPb\t", "\tQq\t", "2:6 unknown_name Qq"),
            ("965.5 mg/kg", "965.5", "2:8 not_a_quantity 965.5"),
            ("12 mg/kg", "0 mg/kg", "2:9 not_above_zero 0 mg/kg"),
            ("aaaa", "AAAA", "2:10 out_of_range "),
            ("\t7", "\t-7", "2:11 out_of_range -7"),
            ("\t7", "\t+7", "2:11 out_of_range +7"),
            ("\t7", "", "2:11 history_line 10 / 11"),
            ("\t7", "\t7\t8", "2:12 history_line 12 / 11"),
            ("CHK-1", "CHK\\1", "2:4 history_line \\"),
        ] {
            let found = refused(&file(&[&good.replace(from, to)]));
            assert!(found.len() == 1 && found[0].starts_with(problem), "{found:?} for {problem}");
        }
        let good = format!("{LOTTED}{}", hash('b'));
        for (from, to, problem) in [
            ("2026-11-20", "2026-11-31", "2:7 out_of_range 2026-11-31"),
            ("hold\t", "wait\t", "2:8 unknown_name wait"),
            ("BL,BL,X", "BL,X", "2:10 out_of_range BL,X,BL,not_measured"),
            ("BL,BL,X", "BL,pass,X", "2:10 unknown_name BL,pass,X,BL,not_measured"),
            ("Pb 150", "Pb", "2:11 missing Pb"),
            ("within", "near", "2:12 unknown_name Pb X near,Cd OL over"),
            ("<5 mg/kg", "5", "2:13 not_a_quantity Fe 990000 mg/kg,Pb 5"),
            ("\t12\t", "\tmany\t", "2:14 out_of_range many"),
        ] {
            assert_eq!(refused(&file(&[&good.replace(from, to)])), [problem]);
        }
        let two = good.replace("hold", "wait").replace("metal", "jelly");
        assert_eq!(refused(&file(&[&two])), ["2:6 unknown_name jelly", "2:8 unknown_name wait"]);
    }
}
