//! Settings and mappings as files: the same acts, written down beforehand or for another day.
//!
//! A mapping file holds only what is said of tables by their headings, so that the next stick from the same analyser
//! needs no work; it names no lot, no part and no file.

use crate::acts::{Act, ActKind, Settings, Target, about_of, check_value, escape, split_escaped};
use crate::data_file::{self, DataTable, Problem, ProblemCode, Reader, Written, WrittenTable};
use crate::fields;
use crate::reading::Source;

/// The schema name a settings file must carry.
pub const SCHEMA: &str = "plumbline.settings/1";
/// The schema name a mapping file must carry.
pub const MAPPING_SCHEMA: &str = "plumbline.mapping/1";

/// A key of a settings file and the act that its value becomes.
type Key = (&'static str, ActKind);

/// A repeated table that speaks of one thing: the keys that name it (true: must be there) and those that say something.
struct Scope {
    table: &'static str,
    names: &'static [(&'static str, bool)],
    keys: &'static [Key],
}

/// Keys of the whole inspection. A new kind of act is one line here, or in a scope below.
const INSPECTION: &[Key] = &[
    ("reviewed_at", ActKind::ReviewedAt),
    ("inspector", ActKind::Inspector),
    ("place", ActKind::Place),
    ("title", ActKind::Title),
    ("received", ActKind::Received),
    ("issued_on", ActKind::IssuedOn),
    ("environment", ActKind::Environment),
    ("deviations", ActKind::Deviations),
    ("instrument", ActKind::Instrument),
    ("records_kept", ActKind::RecordsKept),
    ("invented", ActKind::Invented),
    ("class", ActKind::Class),
    ("sigma_multiple", ActKind::SigmaMultiple),
    ("unit_of_measure", ActKind::UnitOfMeasure),
    ("decimal_mark", ActKind::DecimalMark),
    ("detection_in_error_column", ActKind::DetectionInErrorColumn),
    ("text_encoding", ActKind::TextEncoding),
    ("sheet", ActKind::Sheet),
    ("date_order", ActKind::DateOrder),
    ("id_pattern", ActKind::IdPattern),
    ("halogen_book", ActKind::HalogenBook),
    ("trust", ActKind::Trust),
    ("sampling", ActKind::Sampling),
    ("materials", ActKind::Materials),
    ("thickness_mm", ActKind::ThicknessMm),
    ("category", ActKind::Category),
    ("placing_date", ActKind::PlacingDate),
    ("mouthing", ActKind::Mouthing),
    ("lot_size", ActKind::LotSize),
    ("units_to_take", ActKind::UnitsToTake),
    ("relative_sigma", ActKind::RelativeSigma),
    ("repeats", ActKind::Repeats),
    ("uncertainty_holds", ActKind::UncertaintyHolds),
    ("check_samples", ActKind::CheckSamples),
    ("tube_anode", ActKind::TubeAnode),
    ("blank_samples", ActKind::BlankSamples),
    ("bracket", ActKind::Bracket),
    ("shift_starts", ActKind::ShiftStarts),
    ("check_rule", ActKind::CheckRule),
    ("books", ActKind::Books),
    ("reply_by", ActKind::ReplyBy),
    ("requested_action", ActKind::RequestedAction),
    ("contact", ActKind::Contact),
];

const SOURCE: Scope = Scope {
    table: "source",
    names: &[("name", true)],
    keys: &[
        ("class", ActKind::Class),
        ("sigma_multiple", ActKind::SigmaMultiple),
        ("unit_of_measure", ActKind::UnitOfMeasure),
        ("decimal_mark", ActKind::DecimalMark),
        ("detection_in_error_column", ActKind::DetectionInErrorColumn),
        ("text_encoding", ActKind::TextEncoding),
        ("sheet", ActKind::Sheet),
        ("header_line", ActKind::HeaderLine),
        ("date_order", ActKind::DateOrder),
        ("id_pattern", ActKind::IdPattern),
        ("tube_anode", ActKind::TubeAnode),
    ],
};

/// What is said of every table with the same headings. `headings` is for the person who reads the file; the
/// fingerprint decides. `columns` is a table of its own.
const HEADER: Scope = Scope {
    table: "header",
    names: &[("fingerprint", true)],
    keys: &[
        ("sigma_multiple", ActKind::SigmaMultiple),
        ("unit_of_measure", ActKind::UnitOfMeasure),
        ("decimal_mark", ActKind::DecimalMark),
        ("detection_in_error_column", ActKind::DetectionInErrorColumn),
        ("date_order", ActKind::DateOrder),
        ("id_pattern", ActKind::IdPattern),
    ],
};

const LOT: Scope = Scope {
    table: "lot",
    names: &[("supplier", false), ("lot", false)],
    keys: &[
        ("lot_size", ActKind::LotSize),
        ("units_to_take", ActKind::UnitsToTake),
        ("reply_by", ActKind::ReplyBy),
        ("requested_action", ActKind::RequestedAction),
        ("received", ActKind::Received),
    ],
};

const PART: Scope = Scope {
    table: "part",
    names: &[("part", true)],
    keys: &[
        ("materials", ActKind::BillOfMaterials),
        ("class", ActKind::Class),
        ("thickness_mm", ActKind::ThicknessMm),
        ("mouthing", ActKind::Mouthing),
    ],
};

const MATERIAL: Scope = Scope {
    table: "material",
    names: &[("part", false), ("material", true)],
    keys: &[("class", ActKind::Class), ("thickness_mm", ActKind::ThicknessMm)],
};

/// What a row that is one act speaks of.
#[derive(Clone, Copy, PartialEq, Eq)]
enum RowOf {
    /// The whole inspection.
    Inspection,
    /// A `material` of a `part`, or a whole part where no material is named.
    Material,
    /// A `part`, or the whole inspection where none is named.
    PartOrAll,
    /// A `lot` of a `supplier`, or the whole inspection where neither is named.
    LotOrAll,
    /// A `lot` of a `supplier`.
    Lot,
    /// A `material` of a `part` in a `lot` of a `supplier`.
    LotMaterial,
    /// A `lot` of a `supplier`, or one `material` of a `part` in it.
    LotOrMaterial,
    /// The reading on a `line` of a `source`.
    Reading,
    /// The reading on a `line` of a `source`, or a `material` of a `part` in a `lot` of a `supplier`.
    ReadingOrMaterial,
}

impl RowOf {
    const fn names(self) -> &'static [&'static str] {
        match self {
            RowOf::Inspection => &[],
            RowOf::PartOrAll => &["part"],
            RowOf::Material => &["part", "material"],
            RowOf::LotOrAll | RowOf::Lot => &["supplier", "lot"],
            RowOf::LotMaterial | RowOf::LotOrMaterial => &["supplier", "lot", "part", "material"],
            RowOf::Reading => &["source", "line"],
            RowOf::ReadingOrMaterial => &["source", "line", "supplier", "lot", "part", "material"],
        }
    }

    /// The names that a target fills, in the order of [`names_of`].
    fn names_for(self, target: &Target) -> &'static [&'static str] {
        match (self, target) {
            (RowOf::ReadingOrMaterial, Target::LotMaterial(_)) => RowOf::LotMaterial.names(),
            _ => self.names(),
        }
    }
}

/// A repeated table whose every row is one act, `field=value` joined by `;`: the fields (true: must be there). A row of
/// one field that has no name in the act is that field's text.
struct Row {
    table: &'static str,
    kind: ActKind,
    of: RowOf,
    fields: &'static [(&'static str, bool)],
}

const ROWS: &[Row] = &[
    Row {
        table: "site_sigma",
        kind: ActKind::SiteSigma,
        of: RowOf::Inspection,
        fields: &[("element", true), ("class", true), ("s", true), ("seconds", false), ("constant", false)],
    },
    Row {
        table: "claim",
        kind: ActKind::Claim,
        of: RowOf::Material,
        fields: &[
            ("entry", true),
            ("substance", true),
            ("group", false),
            ("evidence", false),
            ("by", false),
            ("second", false),
        ],
    },
    Row {
        table: "renewal",
        kind: ActKind::Renewal,
        of: RowOf::Inspection,
        fields: &[("entry", true), ("state", true), ("source", false), ("date", false)],
    },
    Row {
        table: "cr6_area",
        kind: ActKind::Cr6Area,
        of: RowOf::Material,
        fields: &[("area", true), ("laboratory", false), ("report", false)],
    },
    Row {
        table: "limit_answer",
        kind: ActKind::LimitAnswer,
        of: RowOf::PartOrAll,
        fields: &[("book", true), ("row", true), ("answer", true)],
    },
    Row {
        table: "certificate",
        kind: ActKind::Certificate,
        of: RowOf::Inspection,
        fields: &[
            ("sample", true),
            ("element", true),
            ("value", true),
            ("u", true),
            ("k", true),
            ("id", true),
            ("expires", false),
            ("class", false),
        ],
    },
    Row {
        table: "control_chart",
        kind: ActKind::ControlChart,
        of: RowOf::Inspection,
        fields: &[("limits", false), ("points", false), ("rules", false)],
    },
    Row {
        table: "sampling_plan",
        kind: ActKind::SamplingPlan,
        of: RowOf::LotOrAll,
        fields: &[
            ("rule", true),
            ("level", false),
            ("severity", false),
            ("aql", false),
            ("confidence", false),
            ("share", false),
            ("seed", false),
        ],
    },
    Row { table: "mark", kind: ActKind::Mark, of: RowOf::Reading, fields: &[("as", true)] },
    Row { table: "set_aside", kind: ActKind::SetAside, of: RowOf::Reading, fields: &[("why", true)] },
    Row {
        table: "laboratory",
        kind: ActKind::Laboratory,
        of: RowOf::LotMaterial,
        fields: &[
            ("analyte", true),
            ("value", true),
            ("u", false),
            ("k", false),
            ("method", false),
            ("laboratory", false),
            ("report", false),
            ("date", false),
        ],
    },
    Row {
        table: "lift",
        kind: ActKind::Lift,
        of: RowOf::LotOrMaterial,
        fields: &[("reason", true), ("about", false), ("why", true), ("by", false), ("second", false)],
    },
    Row {
        table: "issuer",
        kind: ActKind::Issuer,
        of: RowOf::Inspection,
        fields: &[("name", true), ("address", false)],
    },
    Row {
        table: "customer",
        kind: ActKind::Customer,
        of: RowOf::Inspection,
        fields: &[("name", true), ("contact", false)],
    },
    Row {
        table: "sampled",
        kind: ActKind::Sampled,
        of: RowOf::LotOrAll,
        fields: &[("date", false), ("by", false), ("place", false), ("method", false)],
    },
    Row {
        table: "item",
        kind: ActKind::Item,
        of: RowOf::LotOrAll,
        fields: &[("description", false), ("condition", false)],
    },
    Row {
        table: "authorised",
        kind: ActKind::Authorised,
        of: RowOf::Inspection,
        fields: &[("by", true), ("second", false)],
    },
    Row {
        table: "hold_ends",
        kind: ActKind::HoldEnds,
        of: RowOf::Lot,
        fields: &[("who", false), ("until", false), ("quarantined", false), ("place", false)],
    },
    Row {
        table: "photo",
        kind: ActKind::Photo,
        of: RowOf::ReadingOrMaterial,
        fields: &[("file", true), ("sha256", false), ("x", false), ("y", false)],
    },
];

/// The fields of an act whose value holds several (true: must be there); none for any other.
pub fn fields_of(kind: ActKind) -> &'static [(&'static str, bool)] {
    let row = ROWS.iter().find(|row| row.kind == kind && plain_field(kind).is_none());
    // The site's table has been said as it is written from the start.
    row.filter(|row| row.kind != ActKind::SiteSigma).map_or(&[], |row| row.fields)
}

/// Acts whose value is one plain text stand in a row under this field.
const fn plain_field(kind: ActKind) -> Option<&'static str> {
    match kind {
        ActKind::Mark => Some("as"),
        ActKind::SetAside => Some("why"),
        _ => None,
    }
}

/// Kinds whose value is a list of texts in the file, and texts with `|` between in the act.
pub const fn is_list(kind: ActKind) -> bool {
    matches!(
        kind,
        ActKind::CheckSamples
            | ActKind::BlankSamples
            | ActKind::BillOfMaterials
            | ActKind::Books
            | ActKind::ShiftStarts
    )
}

struct ActsReader<'r, 't> {
    reader: &'r mut Reader<'t>,
    note: &'r str,
    acts: Vec<Act>,
    /// Where each act stands in the file.
    places: Vec<usize>,
}

impl<'r, 't> ActsReader<'r, 't> {
    fn new(reader: &'r mut Reader<'t>, note: &'r str) -> ActsReader<'r, 't> {
        ActsReader { reader, note, acts: Vec::new(), places: Vec::new() }
    }

    fn add(&mut self, kind: ActKind, target: &Target, value: String, at: usize) {
        match check_value(kind, &value) {
            Ok(()) => {
                self.refuse_twice(kind, target, &value, at);
                self.places.push(at);
                self.acts.push(Act {
                    kind,
                    target: target.clone(),
                    value,
                    by: String::new(),
                    at: String::new(),
                    note: self.note.to_owned(),
                });
            }
            Err(code) => self.reader.refuse(at, code, &value),
        }
    }

    /// In one file nobody can tell which of two rows was meant; the last one would win without a word. (On the page a later
    /// act takes the place of an earlier one, and both are listed.)
    fn refuse_twice(&mut self, kind: ActKind, target: &Target, value: &str, at: usize) {
        let about = about_of(kind, value);
        let same =
            |act: &Act| act.kind == kind && act.target == *target && about_of(act.kind, &act.value) == about;
        if let Some(place) = self.acts.iter().position(same).and_then(|first| self.places.get(first)) {
            let (first, second) = (at.min(*place), at.max(*place));
            let line = self.reader.line(first);
            let names = [kind.code().to_owned(), target.to_text(), about.unwrap_or_default()];
            let names: Vec<String> = names.into_iter().filter(|name| !name.is_empty()).collect();
            let found = format!("{} (line {line})", names.join(" "));
            self.reader.refuse(second, ProblemCode::Twice, &found);
        }
    }

    fn keys(&mut self, keys: &[Key], target: &Target, table: DataTable<'_>) {
        for &(key, kind) in keys {
            if !is_list(kind) {
                if let Some(value) = self.reader.scalar(table, key) {
                    self.add(kind, target, value.text.into_owned(), value.at);
                }
            } else if let Some((at, list)) = self.reader.texts(table, key) {
                let joined = list.iter().map(|name| escape(name.get())).collect::<Vec<_>>().join("|");
                self.add(kind, target, joined, at);
            }
        }
    }

    /// The tables of a scope, with `more` keys that are read elsewhere.
    fn scope<'a>(
        &mut self,
        scope: &Scope,
        more: &[&'static str],
        root: DataTable<'a>,
    ) -> Vec<(Target, DataTable<'a>)> {
        let known: Vec<&str> = scope
            .names
            .iter()
            .map(|(name, _)| *name)
            .chain(more.iter().copied())
            .chain(keys_of(scope.keys))
            .collect();
        let mut found = Vec::new();
        for table in self.reader.tables(root, scope.table) {
            self.reader.only(table, &known);
            let mut names = scope.names.iter().map(|&(name, needed)| {
                let text = if needed {
                    self.reader.text(table, name)
                } else {
                    self.reader.optional_text(table, name)
                };
                text.map(|text| text.text.into_owned()).unwrap_or_default()
            });
            let (first, second) = (names.next().unwrap_or_default(), names.next());
            drop(names);
            let target = match (scope.table, second) {
                ("source", _) => Target::Source(first),
                ("header", _) => Target::Header(first),
                ("part", _) => Target::Part(first),
                ("lot", second) => Target::Lot(first, second.unwrap_or_default()),
                (_, second) => Target::Material(first, second.unwrap_or_default()),
            };
            found.push((target, table));
        }
        found
    }

    fn headers(&mut self, root: DataTable<'_>) {
        for (target, table) in self.scope(&HEADER, &["headings", "columns"], root) {
            self.reader.texts(table, "headings");
            if let Some(columns) = self.reader.table(table, "columns") {
                for column in columns.keys() {
                    if let Some(role) = self.reader.scalar(columns, column) {
                        self.add(ActKind::ColumnRole, &target, format!("{column}|{}", role.get()), role.at);
                    }
                }
            }
            self.keys(HEADER.keys, &target, table);
        }
    }

    fn row(&mut self, row: &Row, table: DataTable<'_>) {
        let known: Vec<&str> =
            row.of.names().iter().copied().chain(row.fields.iter().map(|(name, _)| *name)).collect();
        self.reader.only(table, &known);
        let (mut value, mut at) = (Vec::new(), table.at);
        for &(field, needed) in row.fields {
            if needed && !table.has(field) {
                self.reader.refuse(table.at, ProblemCode::Missing, field);
            }
            if let Some(text) = self.reader.scalar(table, field) {
                if value.is_empty() {
                    at = text.at;
                }
                value.push((field, text.text.into_owned()));
            }
        }
        let Some(target) = self.row_target(row.of, table) else { return };
        if row.fields.iter().all(|&(field, needed)| !needed || table.has(field)) {
            let value = if let (Some(_), [(_, text)]) = (plain_field(row.kind), &value[..]) {
                text.clone()
            } else {
                let value: Vec<_> = value.iter().map(|(field, text)| (*field, text.as_str())).collect();
                fields::join(&value)
            };
            self.add(row.kind, &target, value, at);
        }
    }

    /// What a row speaks of; `None` where it doesn't say, which is refused.
    fn row_target(&mut self, of: RowOf, table: DataTable<'_>) -> Option<Target> {
        let of = match of {
            RowOf::ReadingOrMaterial if table.has("source") || table.has("line") => {
                // A reading has its own names already; more of them would be dropped without a word.
                for name in RowOf::LotMaterial.names().iter().filter(|name| table.has(name)) {
                    self.reader.refuse(table.at, ProblemCode::UnknownKey, name);
                }
                RowOf::Reading
            }
            RowOf::ReadingOrMaterial => RowOf::LotMaterial,
            of => of,
        };
        let [first, second, third, fourth] = [0, 1, 2, 3].map(|at| {
            let name = of.names().get(at)?;
            // A line is a number.
            self.reader.scalar(table, name).map(|text| text.text.into_owned())
        });
        let lot_missing = first.is_none() && second.is_none();
        let names = [&first, &second, &third, &fourth].map(|name| name.clone().unwrap_or_default());
        let [one, two, ..] = names.clone();
        let refused = |reader: &mut Reader<'_>, code, name| {
            reader.refuse(table.at, code, name);
            None
        };
        match of {
            RowOf::Material if second.is_none() => Some(Target::Part(one)),
            RowOf::Material => Some(Target::Material(one, two)),
            RowOf::PartOrAll if first.is_some() => Some(Target::Part(one)),
            RowOf::Inspection | RowOf::PartOrAll => Some(Target::Inspection),
            RowOf::LotOrAll if lot_missing => Some(Target::Inspection),
            RowOf::Lot | RowOf::LotMaterial | RowOf::LotOrMaterial if lot_missing => {
                refused(self.reader, ProblemCode::Missing, "lot")
            }
            RowOf::LotMaterial if third.is_none() && fourth.is_none() => {
                refused(self.reader, ProblemCode::Missing, "material")
            }
            RowOf::LotOrMaterial if third.is_none() && fourth.is_none() => Some(Target::Lot(one, two)),
            RowOf::LotOrAll | RowOf::Lot => Some(Target::Lot(one, two)),
            RowOf::LotMaterial | RowOf::LotOrMaterial => Some(Target::LotMaterial(names)),
            RowOf::ReadingOrMaterial => None,
            RowOf::Reading if one.is_empty() => refused(self.reader, ProblemCode::Missing, "source"),
            RowOf::Reading => match two.parse() {
                Ok(line) => Some(Target::Reading(one, line)),
                Err(_) => refused(self.reader, ProblemCode::OutOfRange, "line"),
            },
        }
    }
}

/// The names in a target, in the order of [`RowOf::names`].
fn names_of(target: &Target) -> Vec<String> {
    match target {
        Target::Inspection => Vec::new(),
        Target::Source(one) | Target::Header(one) | Target::Part(one) => vec![one.clone()],
        Target::Lot(one, two) | Target::Material(one, two) => vec![one.clone(), two.clone()],
        Target::LotMaterial(names) => names.to_vec(),
        Target::Reading(source, line) => vec![source.clone(), line.to_string()],
    }
}

fn keys_of(keys: &[Key]) -> impl Iterator<Item = &'static str> {
    keys.iter().map(|(key, _)| *key)
}

/// Reads a settings file into acts.
///
/// # Errors
/// Every problem with its place; nothing of a file with a problem is used.
pub fn parse_settings(text: &str, name: &str) -> Result<Vec<Act>, Vec<Problem>> {
    data_file::read(text, SCHEMA, |reader, root| {
        let tables = [&SOURCE, &HEADER, &LOT, &PART, &MATERIAL].map(|scope| scope.table);
        let rows = ROWS.iter().map(|row| row.table);
        let known: Vec<&str> =
            ["schema"].into_iter().chain(keys_of(INSPECTION)).chain(tables).chain(rows).collect();
        reader.only(root, &known);
        let mut acts = ActsReader::new(reader, name);
        acts.keys(INSPECTION, &Target::Inspection, root);
        for (target, table) in acts.scope(&SOURCE, &[], root) {
            acts.keys(SOURCE.keys, &target, table);
        }
        acts.headers(root);
        for scope in [&LOT, &PART, &MATERIAL] {
            for (target, table) in acts.scope(scope, &[], root) {
                acts.keys(scope.keys, &target, table);
            }
        }
        for row in ROWS {
            for table in acts.reader.tables(root, row.table) {
                acts.row(row, table);
            }
        }
        acts.acts
    })
}

/// Writes what the acts add up to as a settings file, so that the same review can be made again.
pub fn settings_text(acts: &[Act]) -> String {
    data_file::write(&settings_table(acts))
}

fn settings_table(acts: &[Act]) -> WrittenTable {
    let settings = Settings::from_acts(acts);
    let mut file = WrittenTable::new();
    let text = |value: &str| Written::from(value);
    let list = |values: &[String]| Written::List(values.to_vec());
    file.insert("schema".into(), text(SCHEMA));
    if !settings.check_samples.is_empty() {
        file.insert("check_samples".into(), list(&settings.check_samples));
    }
    if !settings.books.is_empty() {
        file.insert("books".into(), list(&settings.books));
    }
    if !settings.blank_samples.is_empty() {
        file.insert("blank_samples".into(), list(&settings.blank_samples));
    }
    for (kind, target, value) in settings.all() {
        if let Some(row) = ROWS.iter().find(|row| row.kind == kind) {
            let mut entry = WrittenTable::new();
            for (name, value) in row.of.names_for(target).iter().copied().zip(names_of(target)) {
                entry.insert(name.to_owned(), text(&value));
            }
            if let Some(field) = plain_field(kind) {
                entry.insert(field.to_owned(), text(value));
                push_row(&mut file, row.table, entry);
                continue;
            }
            for (field, said) in fields::split(value) {
                entry.insert(field, text(&said));
            }
            push_row(&mut file, row.table, entry);
            continue;
        }
        let (table, names): (&str, Vec<(&str, &str)>) = match target {
            Target::Inspection => {
                let value = if is_list(kind) { list(&split_escaped(value)) } else { text(value) };
                file.insert(kind.code().into(), value);
                continue;
            }
            Target::Source(name) => ("source", vec![("name", name)]),
            Target::Header(fingerprint) => ("header", vec![("fingerprint", fingerprint)]),
            Target::Lot(supplier, lot) => ("lot", vec![("supplier", supplier), ("lot", lot)]),
            Target::Part(part) => ("part", vec![("part", part)]),
            Target::Material(part, material) => ("material", vec![("part", part), ("material", material)]),
            // Only rows speak of these.
            Target::LotMaterial(_) | Target::Reading(..) => continue,
        };
        let (key, value) = match kind {
            ActKind::BillOfMaterials => ("materials", list(&split_escaped(value))),
            ActKind::ColumnRole => {
                add_column(&mut file, target, value);
                continue;
            }
            _ => (kind.code(), text(value)),
        };
        add_row(&mut file, table, &names, key, value);
    }
    for row in &settings.site_sigmas {
        let mut entry = WrittenTable::new();
        entry.insert("element".into(), text(row.element.symbol()));
        entry.insert("class".into(), text(row.class.code()));
        entry.insert("s".into(), text(&format!("{} mg/kg", row.sigma)));
        if let Some(tenths) = row.deciseconds {
            entry.insert("seconds".into(), text(&format!("{}.{}", tenths / 10, tenths % 10)));
        }
        entry.insert("constant".into(), text(&format!("{} mg/kg", row.constant)));
        push_row(&mut file, "site_sigma", entry);
    }
    file
}

fn add_column(file: &mut WrittenTable, target: &Target, value: &str) {
    let Target::Header(fingerprint) = target else { return };
    let Some((column, role)) = value.split_once('|') else { return };
    change_row(file, "header", &[("fingerprint", fingerprint)], |row| {
        let columns = row.entry("columns".to_owned()).or_insert_with(|| Written::Table(WrittenTable::new()));
        if let Written::Table(columns) = columns {
            columns.insert(column.to_owned(), role.into());
        }
    });
}

/// Reads a mapping file into acts.
///
/// # Errors
/// Every problem with its place; nothing of a file with a problem is used.
pub fn parse_mapping(text: &str, name: &str) -> Result<Vec<Act>, Vec<Problem>> {
    data_file::read(text, MAPPING_SCHEMA, |reader, root| {
        reader.only(root, &["schema", HEADER.table]);
        let mut acts = ActsReader::new(reader, name);
        acts.headers(root);
        acts.acts
    })
}

/// Writes what the acts say of tables by their headings, as a mapping file; the headings come from the sources.
pub fn mapping_text(acts: &[Act], sources: &[Source]) -> String {
    mapping_of_rows(mapping_rows(acts, sources))
}

/// What the acts say of tables by their headings: the rows of a mapping file.
pub fn mapping_rows(acts: &[Act], sources: &[Source]) -> Vec<WrittenTable> {
    let of_headers: Vec<Act> =
        crate::acts::in_force(acts).filter(|act| matches!(act.target, Target::Header(_))).cloned().collect();
    let mut rows = data_file::rows(&settings_table(&of_headers), HEADER.table);
    let blocks = || sources.iter().flat_map(|source| &source.blocks);
    for row in &mut rows {
        let fingerprint = row.get("fingerprint").map_or("", Written::text).to_owned();
        if let Some(block) = blocks().find(|block| block.fingerprint == fingerprint) {
            let headings = block.columns.iter().map(|column| column.heading.clone()).collect();
            row.insert("headings".into(), Written::List(headings));
        }
    }
    rows
}

/// A mapping file of these rows.
pub fn mapping_of_rows(rows: Vec<WrittenTable>) -> String {
    let mut file = WrittenTable::new();
    file.insert("schema".into(), MAPPING_SCHEMA.into());
    if !rows.is_empty() {
        file.insert(HEADER.table.into(), Written::Tables(rows));
    }
    data_file::write(&file)
}

/// Changes the row of a table that speaks of what these names name; it is added where it is not there yet.
fn change_row(
    file: &mut WrittenTable,
    table: &str,
    names: &[(&str, &str)],
    change: impl FnOnce(&mut WrittenTable),
) {
    change_rows(file, table, |rows| {
        let named = |row: &&mut WrittenTable| {
            names.iter().all(|(name, expected)| row.get(*name).map(Written::text) == Some(expected))
        };
        if let Some(row) = rows.iter_mut().find(named) {
            change(row);
            return;
        }
        let mut row = names.iter().map(|(name, text)| ((*name).to_owned(), (*text).into())).collect();
        change(&mut row);
        rows.push(row);
    });
}

fn add_row(file: &mut WrittenTable, table: &str, names: &[(&str, &str)], key: &str, value: Written) {
    change_row(file, table, names, |row| {
        row.insert(key.into(), value);
    });
}

fn push_row(file: &mut WrittenTable, table: &str, row: WrittenTable) {
    change_rows(file, table, |rows| rows.push(row));
}

fn change_rows(file: &mut WrittenTable, table: &str, change: impl FnOnce(&mut Vec<WrittenTable>)) {
    let rows = file.entry(table.to_owned()).or_insert_with(|| Written::Tables(Vec::new()));
    if let Written::Tables(rows) = rows {
        change(rows);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::acts::Weight;

    const FILE: &str = r#"
schema = "plumbline.settings/1"
reviewed_at = 2026-11-25
sigma_multiple = 2
trust = "advisory"
check_samples = ["CHK|1"]

[[lot]]
supplier = "Alder Works"
lot = "A-1"
lot_size = 500
units_to_take = 3

[[part]]
part = "P-1"
materials = ["housing", "label"]
thickness_mm = 2.5

[[site_sigma]]
element = "Pb"
class = "polymer"
s = "20 mg/kg"
seconds = 60
"#;

    #[test]
    fn a_settings_file_becomes_acts_and_comes_back_the_same() {
        let acts = parse_settings(FILE, "settings.toml").unwrap();
        let settings = Settings::from_acts(&acts);
        assert_eq!(settings.inspection(ActKind::ReviewedAt), Some("2026-11-25"));
        assert_eq!(settings.sigma_multiple("any.csv", "").unwrap().to_string(), "2");
        assert_eq!(settings.weight(ActKind::Trust), Weight::Advisory);
        assert_eq!(settings.weight(ActKind::Sampling), Weight::Holding);
        assert_eq!(settings.of_lot(ActKind::LotSize, "Alder Works", "A-1"), Some(500));
        assert_eq!(settings.of_lot(ActKind::LotSize, "Birch Works", "A-1"), None);
        assert_eq!(settings.bill_of_materials("P-1").unwrap(), ["housing", "label"]);
        assert_eq!(settings.thickness_micrometres("P-1", "housing"), Some(2_500));
        assert_eq!(settings.check_samples, ["CHK|1"]);
        assert_eq!(settings.site_sigmas[0].deciseconds, Some(600));
        let again = Settings::from_acts(&parse_settings(&settings_text(&acts), "again").unwrap());
        assert_eq!(again.site_sigmas, settings.site_sigmas);
        assert_eq!(again.check_samples, settings.check_samples);
        let sorted = |settings: &Settings| {
            let mut all: Vec<_> =
                settings.all().map(|(k, t, v)| (k.code(), t.to_text(), v.to_owned())).collect();
            all.sort();
            all
        };
        assert_eq!(sorted(&again), sorted(&settings));
    }

    #[test]
    fn a_bad_value_is_refused_with_its_place() {
        let problems = parse_settings(&FILE.replace("\"advisory\"", "\"maybe\""), "s").unwrap_err();
        assert_eq!((problems[0].line, problems[0].code), (5, ProblemCode::UnknownName));
        let problems = parse_settings(&FILE.replace("= 2\n", "= 7\n"), "s").unwrap_err();
        assert_eq!((problems[0].line, problems[0].code), (4, ProblemCode::OutOfRange));
        let problems = parse_settings(&FILE.replace("trust", "trusts"), "s").unwrap_err();
        assert_eq!((problems[0].line, problems[0].code), (5, ProblemCode::UnknownKey));
    }

    #[test]
    fn two_rows_for_one_thing_are_refused_and_both_lines_named() {
        let twice = |more: &str, places: (u32, &str)| {
            let file = format!("{FILE}\n{more}");
            let problems = parse_settings(&file, "s").unwrap_err();
            assert_eq!(problems.len(), 1, "{problems:?}");
            assert_eq!((problems[0].code, problems[0].line), (ProblemCode::Twice, places.0), "{problems:?}");
            assert!(problems[0].found.ends_with(places.1), "{problems:?}");
        };
        let sigma = "[[site_sigma]]\nelement = \"Pb\"\nclass = \"polymer\"\ns = \"9 mg/kg\"\n";
        twice(sigma, (26, "site_sigma Pb polymer (line 20)"));
        twice("[[part]]\npart = \"P-1\"\nthickness_mm = 4\n", (27, "thickness_mm part:P-1 (line 17)"));
        let lot = "[[lot]]\nsupplier = \"Alder Works\"\nlot = \"A-1\"\nlot_size = 4\n";
        twice(lot, (28, "lot_size lot:Alder Works|A-1 (line 11)"));
        let result = "[[laboratory]]\nlot = \"A-1\"\nmaterial = \"m\"\nanalyte = \"Pb\"\nreport = \"R\"\n";
        let results = format!("{result}value = \"4 mg/kg\"\n{result}value = \"5 mg/kg\"\n");
        twice(&results, (34, "laboratory lot_material:|A-1||m Pb  R (line 28)"));
        let two =
            format!("{FILE}\n[[part]]\npart = \"P-1\"\nclass = \"metal\"\n{}", sigma.replace("Pb", "Cd"));
        assert!(parse_settings(&two, "s").is_ok(), "another thing about the same part is no repetition");
        let more =
            format!("{result}value = \"4 mg/kg\"\n{}value = \"5 mg/kg\"\n", result.replace("\"R\"", "\"S\""));
        assert!(parse_settings(&format!("{FILE}\n{more}"), "s").is_ok(), "another report is another result");
    }

    #[test]
    fn a_mapping_file_holds_what_is_said_of_headings_and_nothing_else() {
        let act = |kind, target, value: &str| Act {
            kind,
            target,
            value: value.into(),
            by: String::new(),
            at: String::new(),
            note: String::new(),
        };
        let header = || Target::Header("0123".into());
        let acts = [
            act(ActKind::ColumnRole, header(), "3|value Pb mg/kg"),
            act(ActKind::ColumnRole, header(), "4|unused"),
            act(ActKind::ColumnRole, header(), "4|uncertainty Pb k=2"),
            act(ActKind::UnitOfMeasure, header(), "%"),
            act(ActKind::Class, Target::Inspection, "polymer"),
        ];
        let text = mapping_text(&acts, &[]);
        let again = Settings::from_acts(&parse_mapping(&text, "stick.toml").unwrap());
        let roles: Vec<_> =
            again.column_roles("0123").into_iter().map(|(at, role)| (at, role.to_words())).collect();
        assert_eq!(roles, [(3, "value Pb mg/kg".to_owned()), (4, "uncertainty Pb k=2".to_owned())]);
        assert_eq!(again.of_table(ActKind::UnitOfMeasure, "any.csv", "0123"), Some("%"));
        assert_eq!(again.inspection(ActKind::Class), None);
        assert_eq!(
            Settings::from_acts(&parse_settings(&settings_text(&acts), "s").unwrap())
                .column_roles("0123")
                .len(),
            2
        );
        let problems = parse_mapping(&text.replace("value Pb mg/kg", "value Pb furlongs"), "m").unwrap_err();
        assert_eq!(problems[0].code, ProblemCode::UnknownName);
    }
}
