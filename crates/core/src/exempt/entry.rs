//! Entries of an exemption list, one row for each set of product categories.

use super::category::Categories;
use crate::data_file::{DataTable, Placed, ProblemCode, Reader};
use crate::day::Day;
use crate::quantity::MassFraction;
use crate::reading::codes;
use crate::substance::Substance;

codes! {
    /// What an entry may cover at all: groups of alloys, glass and ceramic, or anything.
    Group {
        /// Iron and steel.
        Steel => "steel",
        /// Aluminium and its alloys.
        Aluminium => "aluminium",
        /// Copper and its alloys, brass and bronze among them.
        Copper => "copper",
        /// Zinc and its alloys.
        Zinc => "zinc",
        /// Tin and its alloys, most solders among them.
        Tin => "tin",
        /// Lead and its alloys, solder of high melting point among them.
        Lead => "lead",
        /// Nickel and its alloys.
        Nickel => "nickel",
        /// Titanium and its alloys.
        Titanium => "titanium",
        /// Magnesium and its alloys.
        Magnesium => "magnesium",
        /// Silver, gold, platinum metals.
        Precious => "precious",
        /// Glass and ceramic.
        GlassCeramic => "glass_ceramic",
        /// Anything.
        Any => "any",
    }
}

impl Group {
    /// The group of a code.
    pub fn from_code(code: &str) -> Option<Group> {
        Group::ALL.iter().copied().find(|group| group.code() == code)
    }
}

/// How an entry bounds the substance. The bound itself conforms ("up to 4 %", "85 % or more").
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Bound {
    /// No more than this.
    AtMost(MassFraction),
    /// No less than this.
    AtLeast(MassFraction),
    /// The entry names no number.
    NoNumber,
}

impl Bound {
    /// The code used in findings, and the word of the data file with a blank for `_`.
    pub const fn code(self) -> &'static str {
        match self {
            Bound::AtMost(_) => "at_most",
            Bound::AtLeast(_) => "at_least",
            Bound::NoNumber => "none",
        }
    }

    /// The number.
    pub const fn limit(self) -> Option<MassFraction> {
        match self {
            Bound::AtMost(limit) | Bound::AtLeast(limit) => Some(limit),
            Bound::NoNumber => None,
        }
    }
}

/// One entry for one set of product categories.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Exemption {
    /// The entry as the law writes it: `6(c)`.
    pub entry: String,
    /// What it covers, in short words of our own; the law's text decides.
    pub scope: String,
    /// The substance.
    pub substance: Substance,
    /// The number.
    pub bound: Bound,
    /// What it may cover at all.
    pub groups: Vec<Group>,
    /// The product categories; `None` where they were not found.
    pub categories: Option<Categories>,
    /// The day its text came into force; an earlier text counted before.
    pub from: Option<Day>,
    /// The day it expires.
    pub expires: Option<Day>,
    /// False where it was not found whether it still stands: a claim then holds whatever else is said.
    pub found: bool,
    /// Known never to have been asked to be renewed: after its day it is gone, whatever a person says.
    pub not_filed: bool,
    /// Carries the condition on parts that a child could mouth.
    pub starred: bool,
    /// The legal act that gave it its text.
    pub act: String,
    /// Document.
    pub source: String,
    /// Clause.
    pub clause: String,
    /// How sure the row is.
    pub confidence: String,
    /// What else to know.
    pub note: String,
}

/// Every key of a row.
pub const EXEMPTION_KEYS: [&str; 17] = [
    "entry",
    "scope",
    "substance",
    "direction",
    "limit",
    "groups",
    "categories",
    "from",
    "expires",
    "status",
    "renewal",
    "starred",
    "act",
    "source",
    "clause",
    "confidence",
    "note",
];

/// How sure a row may say it is.
const CONFIDENCE: [&str; 4] = ["confirmed", "restated by a secondary source", "from memory", "derived"];

impl Exemption {
    /// Reads a row. What is wrong is refused with its place, and `None` given.
    pub fn read(reader: &mut Reader<'_>, row: DataTable<'_>) -> Option<Exemption> {
        reader.only(row, &EXEMPTION_KEYS);
        let named = named(reader, row, "entry");
        let entry = refuse_unless(reader, named, ProblemCode::UnknownName, |entry| {
            !entry.contains(char::is_whitespace)
        });
        let (scope, act) = (named_text(reader, row, "scope"), named_text(reader, row, "act"));
        let substance = reader.text(row, "substance").and_then(|symbol| {
            known(reader, &symbol, Substance::from_symbol(symbol.get()), ProblemCode::UnknownName)
        });
        let bound = bound(reader, row);
        let groups = groups(reader, row);
        let categories = categories(reader, row);
        let (from, expires) = (day(reader, row, "from"), day(reader, row, "expires"));
        if let (Some(from), Some(expires)) = (from, expires)
            && from >= expires
        {
            reader.refuse(row.at, ProblemCode::BandUpsideDown, &format!("{from} / {expires}"));
        }
        let unknown = word(reader, row, "status", "not found");
        // An entry without a day of expiry would never end; whoever doesn't know the day says so.
        if !row.has("expires") && !unknown {
            reader.refuse(row.at, ProblemCode::Missing, "expires");
        }
        let not_filed = word(reader, row, "renewal", "not filed");
        let starred = reader.flag(row, "starred").unwrap_or(false);
        let source = source_text(reader, row, "source");
        let clause = source_text(reader, row, "clause");
        let confidence = reader.text(row, "confidence");
        let confidence =
            refuse_unless(reader, confidence, ProblemCode::UnknownName, |word| CONFIDENCE.contains(&word));
        let note = reader.optional_text(row, "note").map(|note| note.text.into_owned());
        Some(Exemption {
            entry: entry?,
            scope: scope?,
            substance: substance?,
            bound: bound?,
            groups,
            categories,
            from,
            expires,
            found: !unknown,
            not_filed,
            starred,
            act: act?,
            source: source?,
            clause: clause?,
            confidence: confidence?,
            note: note.unwrap_or_default(),
        })
    }

    /// True where the entry may cover a material of this group.
    pub fn may_cover(&self, group: Group) -> bool {
        self.groups.iter().any(|one| *one == group || *one == Group::Any)
    }
}

fn known<T>(reader: &mut Reader<'_>, written: &Placed<'_>, found: Option<T>, code: ProblemCode) -> Option<T> {
    if found.is_none() {
        reader.refuse(written.at, code, written.get());
    }
    found
}

fn refuse_unless(
    reader: &mut Reader<'_>,
    written: Option<Placed<'_>>,
    code: ProblemCode,
    fits: impl FnOnce(&str) -> bool,
) -> Option<String> {
    let written = written?;
    let found = fits(written.get()).then(|| written.get().to_owned());
    known(reader, &written, found, code)
}

/// A text that must be there and say something.
fn named<'a>(reader: &mut Reader<'_>, row: DataTable<'a>, key: &str) -> Option<Placed<'a>> {
    let written = reader.text(row, key)?;
    if written.get().trim().is_empty() {
        reader.refuse(written.at, ProblemCode::Missing, key);
        return None;
    }
    Some(written)
}

fn named_text(reader: &mut Reader<'_>, row: DataTable<'_>, key: &str) -> Option<String> {
    named(reader, row, key).map(|written| written.text.into_owned())
}

fn source_text(reader: &mut Reader<'_>, row: DataTable<'_>, key: &str) -> Option<String> {
    let written = reader.text(row, key);
    refuse_unless(reader, written, ProblemCode::NoSource, |text| !text.trim().is_empty())
}

/// True where a key that may be left out says its one word.
fn word(reader: &mut Reader<'_>, row: DataTable<'_>, key: &str, word: &str) -> bool {
    let Some(written) = reader.optional_text(row, key) else { return false };
    if written.get() != word {
        reader.refuse(written.at, ProblemCode::UnknownName, written.get());
    }
    true
}

fn day(reader: &mut Reader<'_>, row: DataTable<'_>, key: &str) -> Option<Day> {
    let written = reader.scalar(row, key)?;
    known(reader, &written, Day::parse(written.get()), ProblemCode::OutOfRange)
}

fn bound(reader: &mut Reader<'_>, row: DataTable<'_>) -> Option<Bound> {
    let direction = reader.text(row, "direction")?;
    let limit = reader.optional_text(row, "limit");
    match (direction.get(), limit) {
        ("none", None) => Some(Bound::NoNumber),
        ("at most", Some(limit)) => reader.quantity(&limit).map(Bound::AtMost),
        ("at least", Some(limit)) => reader.quantity(&limit).map(Bound::AtLeast),
        ("at most" | "at least", None) => {
            reader.refuse(direction.at, ProblemCode::Missing, "limit");
            None
        }
        (other, _) => {
            reader.refuse(direction.at, ProblemCode::UnknownName, other);
            None
        }
    }
}

fn groups(reader: &mut Reader<'_>, row: DataTable<'_>) -> Vec<Group> {
    let list = reader.texts(row, "groups").map_or_else(Vec::new, |(_, list)| list);
    if list.is_empty() {
        reader.refuse(row.at, ProblemCode::Missing, "groups");
    }
    list.iter()
        .filter_map(|word| known(reader, word, Group::from_code(word.get()), ProblemCode::UnknownName))
        .collect()
}

fn categories(reader: &mut Reader<'_>, row: DataTable<'_>) -> Option<Categories> {
    let (at, list) = reader.texts(row, "categories")?;
    if list.is_empty() {
        reader.refuse(at, ProblemCode::Missing, "categories");
    }
    let one = |word: &str| if word == "all" { Some(Categories::ALL) } else { Categories::from_code(word) };
    list.iter()
        .filter_map(|word| known(reader, word, one(word.get()), ProblemCode::UnknownName))
        .reduce(Categories::and)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::data_file::{self, Problem};

    const ROW: &str = "schema = \"a/1\"\n[[exemption]]\nentry = \"6(c)\"\nscope = \"lead in copper alloys\"\n\
        substance = \"Pb\"\ndirection = \"at most\"\nlimit = \"4 %\"\ngroups = [\"copper\", \"zinc\"]\n\
        categories = [\"1\", \"9i\"]\nfrom = 2025-12-11\nexpires = \"2027-06-30\"\nstarred = true\nact = \"an act\"\n\
        source = \"a law\"\nclause = \"an entry\"\nconfidence = \"derived\"\nnote = \"n\"\n";

    fn read(text: &str) -> Result<Vec<Exemption>, Vec<Problem>> {
        data_file::read(text, "a/1", |reader, root| {
            let rows = reader.tables(root, "exemption");
            rows.into_iter().filter_map(|row| Exemption::read(reader, row)).collect()
        })
    }

    fn problem(from: &str, to: &str) -> (ProblemCode, u32) {
        assert!(ROW.contains(from), "{from}");
        let problems = read(&ROW.replacen(from, to, 1)).expect_err(to);
        assert_eq!(problems.len(), 1, "{problems:?}");
        (problems[0].code, problems[0].line)
    }

    #[test]
    fn a_row_is_read_whole() {
        let row = read(ROW).unwrap().remove(0);
        let limit = MassFraction::from_mg_per_kg(40_000);
        assert_eq!((row.entry.as_str(), row.bound), ("6(c)", Bound::AtMost(limit)));
        assert_eq!((row.bound.code(), row.bound.limit()), ("at_most", Some(limit)));
        assert_eq!((row.from, row.expires), (Day::new(2025, 12, 11), Day::new(2027, 6, 30)));
        assert!(row.starred && row.found && !row.not_filed);
        let texts = [&row.scope, &row.act, &row.source, &row.clause, &row.confidence, &row.note];
        assert_eq!(texts, ["lead in copper alloys", "an act", "a law", "an entry", "derived", "n"]);
        assert!(row.may_cover(Group::Copper) && row.may_cover(Group::Zinc) && !row.may_cover(Group::Steel));
        let categories = Categories::from_code("1").unwrap().and(Categories::from_code("9i").unwrap());
        assert_eq!(row.categories, Some(categories));
    }

    #[test]
    fn what_a_row_may_leave_out_has_an_honest_default() {
        let text = ROW
            .replace("direction = \"at most\"\nlimit = \"4 %\"\n", "direction = \"none\"\n")
            .replace("groups = [\"copper\", \"zinc\"]", "groups = [\"any\"]")
            .replace(
                "categories = [\"1\", \"9i\"]\nfrom = 2025-12-11\nexpires = \"2027-06-30\"\nstarred = true\n",
                "",
            )
            .replace("note = \"n\"\n", "status = \"not found\"\nrenewal = \"not filed\"\n");
        let row = read(&text).unwrap().remove(0);
        assert_eq!((row.bound, row.bound.code(), row.bound.limit()), (Bound::NoNumber, "none", None));
        assert_eq!((row.categories, row.from, row.expires), (None, None, None));
        assert!(!row.starred && !row.found && row.not_filed && row.note.is_empty());
        assert!(Group::ALL.iter().all(|group| row.may_cover(*group)));
        let least =
            read(&ROW.replace("at most", "at least").replace("[\"1\", \"9i\"]", "[\"all\"]")).unwrap();
        assert_eq!(least[0].bound, Bound::AtLeast(MassFraction::from_mg_per_kg(40_000)));
        assert_eq!(least[0].bound.code(), "at_least");
        assert_eq!(least[0].categories, Some(Categories::ALL));
    }

    #[test]
    fn a_row_that_says_too_little_or_nonsense_is_refused_with_its_place() {
        use ProblemCode::{
            BandUpsideDown, Missing, NoSource, NotAboveZero, OutOfRange, UnknownKey, UnknownName,
        };
        for (from, to, code, line) in [
            ("note = ", "remark = ", UnknownKey, 17),
            ("\"6(c)\"", "\"\"", Missing, 3),
            ("\"6(c)\"", "\"6 (c)\"", UnknownName, 3),
            ("\"lead in copper alloys\"", "\" \"", Missing, 4),
            ("\"Pb\"", "\"lead\"", UnknownName, 5),
            ("\"at most\"", "\"below\"", UnknownName, 6),
            ("\"at most\"", "\"none\"", UnknownName, 6),
            ("limit = \"4 %\"\n", "", Missing, 6),
            ("\"4 %\"", "\"0 %\"", NotAboveZero, 7),
            ("\"zinc\"", "\"wood\"", UnknownName, 8),
            ("[\"copper\", \"zinc\"]", "[]", Missing, 2),
            ("groups = [\"copper\", \"zinc\"]\n", "", Missing, 2),
            ("\"9i\"", "\"12\"", UnknownName, 9),
            ("[\"1\", \"9i\"]", "[]", Missing, 9),
            ("2025-12-11", "\"2025-12-32\"", OutOfRange, 10),
            ("2025-12-11", "\"2027-06-30\"", BandUpsideDown, 2),
            ("\"2027-06-30\"", "\"soon\"", OutOfRange, 11),
            ("expires = \"2027-06-30\"\n", "", Missing, 2),
            ("note = \"n\"", "status = \"found\"", UnknownName, 17),
            ("note = \"n\"", "renewal = \"pending\"", UnknownName, 17),
            ("\"an act\"", "\"\"", Missing, 13),
            ("\"a law\"", "\"\"", NoSource, 14),
            ("\"an entry\"", "\" \"", NoSource, 15),
            ("\"derived\"", "\"certain\"", UnknownName, 16),
            ("confidence = \"derived\"\n", "", Missing, 2),
        ] {
            assert_eq!(problem(from, to), (code, line), "{to}");
        }
    }
}
