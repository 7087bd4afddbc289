//! Data files (TOML) read with the place of every value, so that each problem names its line and column.
//!
//! One small walker for every kind of file the program reads: rule books, settings, mappings. It is written by hand
//! over the parsed tree, because a deserializer derived for each table costs the page more bytes than all the books.

mod written;

use std::borrow::Cow;

use toml::Spanned;
use toml::de::{DeTable, DeValue};
pub use written::{Written, WrittenTable, parse, rows, write};

use crate::material::MaterialClass;
use crate::quantity::{self, MassFraction, UnreadQuantity};
use crate::reading::codes;

codes! {
    /// Why a rule book or a settings file was refused.
    ProblemCode {
        /// Not TOML.
        Malformed => "malformed",
        /// Another schema.
        WrongSchema => "wrong_schema",
        /// A key that the table doesn't have.
        UnknownKey => "unknown_key",
        /// A number where a text belongs, a text where a list belongs, and the like.
        WrongKind => "wrong_kind",
        /// A unit that is not known.
        UnknownUnit => "unknown_unit",
        /// A quantity that is no number.
        NotAQuantity => "not_a_quantity",
        /// A substance, class or other name that is not known.
        UnknownName => "unknown_name",
        /// A band whose low edge is not below its high edge.
        BandUpsideDown => "band_upside_down",
        /// A limit or edge that is not above zero.
        NotAboveZero => "not_above_zero",
        /// The same row twice.
        Twice => "twice",
        /// A row, key or table that must be there.
        Missing => "missing",
        /// A value outside what is possible.
        OutOfRange => "out_of_range",
        /// The book holds no rules.
        NothingInBook => "nothing_in_book",
        /// A source or clause is empty.
        NoSource => "no_source",
        /// No history, or one of another version.
        HistoryVersion => "history_version",
        /// A line of a history with fewer or more fields than its kind has, or with a `\\` that stands for nothing.
        HistoryLine => "history_line",
        /// An AQL that has no column in the sampling tables.
        AqlNotInTable => "aql_not_in_table",
        /// A table of readings where a bill of materials belongs.
        ReadingsNotBill => "readings_not_bill",
    }
}

/// Why a data file was refused, with its place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// Line in the file, 1-based.
    pub line: u32,
    /// Column (character) in the line, 1-based.
    pub column: u32,
    /// What it is.
    pub code: ProblemCode,
    /// The text it is about.
    pub found: String,
}

/// Line and column, 1-based, of a byte in a text.
pub fn place_of(text: &str, byte: usize) -> (u32, u32) {
    let before = text.get(..byte.min(text.len())).unwrap_or(text);
    let line = before.matches('\n').count() + 1;
    let column = before.rsplit('\n').next().unwrap_or("").chars().count() + 1;
    (line as u32, column as u32)
}

/// A text with the byte it stands at.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Placed<'a> {
    /// The byte in the file.
    pub at: usize,
    /// The text.
    pub text: Cow<'a, str>,
}

impl Placed<'_> {
    /// The text.
    pub fn get(&self) -> &str {
        &self.text
    }
}

/// A table with the byte it stands at.
#[derive(Clone, Copy, Debug)]
pub struct DataTable<'a> {
    /// The byte in the file.
    pub at: usize,
    keys: &'a DeTable<'a>,
}

impl<'a> DataTable<'a> {
    fn value(self, key: &str) -> Option<&'a Spanned<DeValue<'a>>> {
        self.keys.get(key)
    }

    /// True where the table has the key, whatever it holds.
    pub fn has(self, key: &str) -> bool {
        self.keys.contains_key(key)
    }

    /// The keys of a table whose keys are data (column numbers), in the order of their letters.
    pub fn keys(self) -> impl Iterator<Item = &'a str> {
        self.keys.keys().map(|key| key.get_ref().as_ref())
    }
}

/// Reads tables and gathers what is wrong with them.
#[derive(Debug)]
pub struct Reader<'t> {
    text: &'t str,
    problems: Vec<Problem>,
}

/// Reads a data file of one schema.
///
/// # Errors
/// Not TOML; another schema (said before anything else, so that the wrong file is called that); or every problem that
/// `read` refused, in the order of the file. Nothing of a file with a problem is used.
pub fn read<T>(
    text: &str,
    schema: &str,
    read: impl FnOnce(&mut Reader<'_>, DataTable<'_>) -> T,
) -> Result<T, Vec<Problem>> {
    let mut reader = Reader { text, problems: Vec::new() };
    let root = match DeTable::parse(text) {
        Ok(root) => root,
        Err(error) => {
            let at = error.span().map_or(0, |span| span.start);
            reader.refuse(at, ProblemCode::Malformed, error.message());
            return Err(reader.problems);
        }
    };
    let table = DataTable { at: 0, keys: root.get_ref() };
    let named = reader.text(table, "schema");
    if let Some(named) = &named
        && named.get() != schema
    {
        reader.refuse(named.at, ProblemCode::WrongSchema, named.get());
    }
    if !reader.problems.is_empty() {
        return Err(reader.problems);
    }
    let value = read(&mut reader, table);
    if reader.problems.is_empty() {
        return Ok(value);
    }
    reader.problems.sort_by_key(|problem| (problem.line, problem.column));
    Err(reader.problems)
}

impl Reader<'_> {
    /// Refuses what stands at a byte.
    pub fn refuse(&mut self, at: usize, code: ProblemCode, found: &str) {
        let (line, column) = place_of(self.text, at);
        self.problems.push(Problem { line, column, code, found: found.to_owned() });
    }

    /// The line of a place, 1-based.
    pub fn line(&self, at: usize) -> u32 {
        place_of(self.text, at).0
    }

    /// True while nothing was refused.
    pub const fn is_clean(&self) -> bool {
        self.problems.is_empty()
    }

    /// Refuses every key of a table that is not among the known ones, which the problem names too.
    pub fn only(&mut self, table: DataTable<'_>, known: &[&str]) {
        for key in table.keys.keys().filter(|key| !known.contains(&key.get_ref().as_ref())) {
            let list = known.iter().map(|known| format!("`{known}`")).collect::<Vec<_>>().join(", ");
            let found = format!("`{}` ({list})", key.get_ref());
            self.refuse(key.span().start, ProblemCode::UnknownKey, &found);
        }
    }

    fn wrong_kind(&mut self, value: &Spanned<DeValue<'_>>) {
        let found: String = self.text.get(value.span()).unwrap_or("").chars().take(60).collect();
        self.refuse(value.span().start, ProblemCode::WrongKind, &found);
    }

    fn required<T>(&mut self, table: DataTable<'_>, key: &str, value: Option<T>) -> Option<T> {
        if !table.has(key) {
            self.refuse(table.at, ProblemCode::Missing, key);
        }
        value
    }

    /// A text that must be there.
    pub fn text<'a>(&mut self, table: DataTable<'a>, key: &str) -> Option<Placed<'a>> {
        let value = self.optional_text(table, key);
        self.required(table, key, value)
    }

    /// A text that may be left out.
    pub fn optional_text<'a>(&mut self, table: DataTable<'a>, key: &str) -> Option<Placed<'a>> {
        let value = table.value(key)?;
        self.text_of(value)
    }

    fn text_of<'a>(&mut self, value: &'a Spanned<DeValue<'a>>) -> Option<Placed<'a>> {
        if let DeValue::String(text) = value.get_ref() {
            return Some(Placed { at: value.span().start, text: Cow::Borrowed(text.as_ref()) });
        }
        self.wrong_kind(value);
        None
    }

    /// A text, a number or a date, as text; it may be left out.
    pub fn scalar<'a>(&mut self, table: DataTable<'a>, key: &str) -> Option<Placed<'a>> {
        let value = table.value(key)?;
        let text = match value.get_ref() {
            DeValue::Integer(number) => {
                i64::from_str_radix(number.as_str(), number.radix()).ok().map(|number| number.to_string())
            }
            DeValue::Float(number) => number.as_str().parse().ok().map(|number: f64| number.to_string()),
            DeValue::Datetime(date) => Some(date.to_string()),
            _ => return self.text_of(value),
        };
        if text.is_none() {
            self.wrong_kind(value);
        }
        text.map(|text| Placed { at: value.span().start, text: Cow::Owned(text) })
    }

    /// `true` or `false`; it may be left out.
    pub fn flag(&mut self, table: DataTable<'_>, key: &str) -> Option<bool> {
        let value = table.value(key)?;
        if let DeValue::Boolean(flag) = value.get_ref() {
            return Some(*flag);
        }
        self.wrong_kind(value);
        None
    }

    /// A list of texts that may be left out; one text alone is no list.
    pub fn texts<'a>(&mut self, table: DataTable<'a>, key: &str) -> Option<(usize, Vec<Placed<'a>>)> {
        let value = table.value(key)?;
        let DeValue::Array(list) = value.get_ref() else {
            self.wrong_kind(value);
            return None;
        };
        Some((value.span().start, list.iter().filter_map(|one| self.text_of(one)).collect()))
    }

    /// One text, or a list of them; empty where the key is left out.
    pub fn one_or_more<'a>(&mut self, table: DataTable<'a>, key: &str) -> Vec<Placed<'a>> {
        match table.value(key).map(Spanned::get_ref) {
            Some(DeValue::Array(_)) => self.texts(table, key).map_or_else(Vec::new, |(_, list)| list),
            _ => self.optional_text(table, key).into_iter().collect(),
        }
    }

    /// A table that may be left out.
    pub fn table<'a>(&mut self, table: DataTable<'a>, key: &str) -> Option<DataTable<'a>> {
        let value = table.value(key)?;
        self.table_of(value)
    }

    fn table_of<'a>(&mut self, value: &'a Spanned<DeValue<'a>>) -> Option<DataTable<'a>> {
        if let DeValue::Table(keys) = value.get_ref() {
            return Some(DataTable { at: value.span().start, keys });
        }
        self.wrong_kind(value);
        None
    }

    /// The rows of a table that may be repeated; empty where it is left out.
    pub fn tables<'a>(&mut self, table: DataTable<'a>, key: &str) -> Vec<DataTable<'a>> {
        let Some(value) = table.value(key) else { return Vec::new() };
        let DeValue::Array(list) = value.get_ref() else {
            self.wrong_kind(value);
            return Vec::new();
        };
        list.iter().filter_map(|one| self.table_of(one)).collect()
    }

    /// A quantity above zero with its unit.
    pub fn quantity(&mut self, written: &Placed<'_>) -> Option<MassFraction> {
        match quantity::parse_with_unit(written.get()) {
            Ok(value) if value > MassFraction::ZERO => return Some(value),
            Ok(_) => self.refuse(written.at, ProblemCode::NotAboveZero, written.get()),
            Err(UnreadQuantity::Unit(word)) => self.refuse(written.at, ProblemCode::UnknownUnit, &word),
            Err(UnreadQuantity::Number(_)) => {
                self.refuse(written.at, ProblemCode::NotAQuantity, written.get());
            }
        }
        None
    }

    /// A material class by its code.
    pub fn class(&mut self, written: &Placed<'_>) -> Option<MaterialClass> {
        let class = MaterialClass::from_code(written.get());
        if class.is_none() {
            self.refuse(written.at, ProblemCode::UnknownName, written.get());
        }
        class
    }

    /// Which of two words stands there: true for the first.
    pub fn one_of(&mut self, written: &Placed<'_>, yes: &str, no: &str) -> bool {
        let is_yes = written.get() == yes;
        if !is_yes && written.get() != no {
            self.refuse(written.at, ProblemCode::UnknownName, written.get());
        }
        is_yes
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn refused(text: &str, look: impl FnOnce(&mut Reader<'_>, DataTable<'_>)) -> Vec<String> {
        let text = format!("schema = \"a/1\"\n{text}");
        let problems = read(&text, "a/1", look).unwrap_err();
        let one = |problem: &Problem| {
            format!("{}:{} {} {}", problem.line, problem.column, problem.code.code(), problem.found)
        };
        problems.iter().map(one).collect()
    }

    #[test]
    fn each_kind_of_value_is_read_as_written() {
        let text = "schema = \"a/1\"\ntext = \"a\"\nnumber = 0x1F\nfloat = 2.50\nday = 2026-08-12\nyes = true\n\
                    list = [\"b\", \"c\"]\n[table]\nk = \"v\"\n[[rows]]\nn = 1\n[[rows]]\nn = 2\n";
        read(text, "a/1", |reader, table| {
            let scalar = |reader: &mut Reader<'_>, key| reader.scalar(table, key).unwrap().text.into_owned();
            assert_eq!(reader.text(table, "text").unwrap(), Placed { at: 22, text: "a".into() });
            assert_eq!(scalar(reader, "number"), "31");
            assert_eq!(scalar(reader, "float"), "2.5");
            assert_eq!(scalar(reader, "day"), "2026-08-12");
            assert_eq!(scalar(reader, "text"), "a");
            assert_eq!(reader.flag(table, "yes"), Some(true));
            assert_eq!(reader.flag(table, "no"), None);
            let texts = |list: Vec<Placed<'_>>| {
                list.iter().map(|one| one.get().to_owned()).collect::<Vec<_>>().join(" ")
            };
            assert_eq!(texts(reader.texts(table, "list").unwrap().1), "b c");
            assert_eq!(texts(reader.one_or_more(table, "list")), "b c");
            assert_eq!(texts(reader.one_or_more(table, "text")), "a");
            assert_eq!(texts(reader.one_or_more(table, "none")), "");
            let inner = reader.table(table, "table").unwrap();
            assert_eq!(reader.text(inner, "k").unwrap().get(), "v");
            assert_eq!(inner.keys().collect::<Vec<_>>(), ["k"]);
            assert!(inner.has("k") && !inner.has("v"));
            let rows = reader.tables(table, "rows");
            let numbers: Vec<_> = rows.iter().map(|row| reader.scalar(*row, "n").unwrap().text).collect();
            assert_eq!(numbers, ["1", "2"]);
            assert!(reader.tables(table, "none").is_empty() && reader.is_clean());
        })
        .unwrap();
    }

    #[test]
    fn a_key_nobody_knows_is_refused_by_name_and_place() {
        let found = refused("[row]\n  odd = 1\nknown = 2\n", |reader, table| {
            let row = reader.table(table, "row").unwrap();
            reader.only(row, &["known", "other"]);
        });
        assert_eq!(found, ["3:3 unknown_key `odd` (`known`, `other`)"]);
    }

    #[test]
    fn what_is_missing_is_refused_with_the_place_of_its_table() {
        let found = refused("\n[[row]]\nx = \"1\"\n", |reader, table| {
            let row = reader.tables(table, "row")[0];
            assert!(reader.text(row, "id").is_none());
        });
        assert_eq!(found, ["3:1 missing id"]);
    }

    #[test]
    fn a_value_of_the_wrong_kind_is_refused_as_it_is_written() {
        let found = refused(
            "a = 1\nb = \"x\"\nc = [1, \"y\"]\nd = \"z\"\ne = [{}]\nf = 99999999999999999999\ng = { h = [ 2 ] }\n",
            |reader, table| {
                reader.text(table, "a");
                reader.flag(table, "b");
                reader.texts(table, "c");
                reader.texts(table, "d");
                reader.one_or_more(table, "e");
                reader.scalar(table, "f");
                reader.scalar(table, "g");
                reader.table(table, "a");
                reader.tables(table, "b");
            },
        );
        assert_eq!(
            found,
            [
                "2:5 wrong_kind 1",
                "2:5 wrong_kind 1",
                "3:5 wrong_kind \"x\"",
                "3:5 wrong_kind \"x\"",
                "4:6 wrong_kind 1",
                "5:5 wrong_kind \"z\"",
                "6:6 wrong_kind {}",
                "7:5 wrong_kind 99999999999999999999",
                "8:5 wrong_kind { h = [ 2 ] }",
            ]
        );
    }

    #[test]
    fn another_file_is_called_that_before_anything_else() {
        let none = |_: &mut Reader<'_>, _: DataTable<'_>| panic!("not looked at");
        let code = |text| read(text, "a/1", none).unwrap_err()[0].code;
        assert_eq!(code("schema = \"b/1\"\n"), ProblemCode::WrongSchema);
        assert_eq!(code("schema = \n"), ProblemCode::Malformed);
        assert_eq!(code("schema = 1\n"), ProblemCode::WrongKind);
        assert_eq!(code(""), ProblemCode::Missing);
    }

    #[test]
    fn places_count_characters_and_lines_from_one() {
        assert_eq!(place_of("ab\nčd", 0), (1, 1));
        assert_eq!(place_of("ab\nčd", 5), (2, 2));
        assert_eq!(place_of("ab\nčd", 99), (2, 3));
    }

    #[test]
    fn quantities_classes_and_pairs_of_words_are_refused_where_they_stand() {
        let found = refused(
            "a = \"0 mg/kg\"\nb = \"7 stone\"\nc = \"7..0 mg/kg\"\nd = \"wood\"\ne = \"=<\"\n",
            |reader, table| {
                for key in ["a", "b", "c"] {
                    let written = reader.text(table, key).unwrap();
                    assert_eq!(reader.quantity(&written), None);
                }
                let class = reader.text(table, "d").unwrap();
                assert_eq!(reader.class(&class), None);
                let word = reader.text(table, "e").unwrap();
                assert!(!reader.one_of(&word, "<=", "<"));
            },
        );
        assert_eq!(
            found,
            [
                "2:5 not_above_zero 0 mg/kg",
                "3:5 unknown_unit stone",
                "4:5 not_a_quantity 7..0 mg/kg",
                "5:5 unknown_name wood",
                "6:5 unknown_name =<",
            ]
        );
    }
}
