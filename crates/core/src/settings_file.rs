//! Settings and mappings as files: the same acts, written down beforehand or for another day.
//!
//! A mapping file holds only what is said of tables by their headings, so that the next stick from the same analyser
//! needs no work; it names no lot, no part and no file.

use serde::Deserialize;
use toml::Spanned;

use crate::acts::{Act, ActKind, Settings, Target, check_value, escape, split_escaped};
use crate::reading::Source;
use crate::rules::{Problem, ProblemCode, check_schema, malformed, place_of};

/// The schema name a settings file must carry.
pub const SCHEMA: &str = "plumbline.settings/1";
/// The schema name a mapping file must carry.
pub const MAPPING_SCHEMA: &str = "plumbline.mapping/1";

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SettingsFile {
    #[serde(rename = "schema")]
    _schema: String,
    reviewed_at: Option<Spanned<toml::Value>>,
    inspector: Option<Spanned<toml::Value>>,
    place: Option<Spanned<toml::Value>>,
    title: Option<Spanned<toml::Value>>,
    class: Option<Spanned<toml::Value>>,
    sigma_multiple: Option<Spanned<toml::Value>>,
    unit_of_measure: Option<Spanned<toml::Value>>,
    decimal_mark: Option<Spanned<toml::Value>>,
    detection_in_error_column: Option<Spanned<toml::Value>>,
    text_encoding: Option<Spanned<toml::Value>>,
    sheet: Option<Spanned<toml::Value>>,
    date_order: Option<Spanned<toml::Value>>,
    id_pattern: Option<Spanned<toml::Value>>,
    halogen_book: Option<Spanned<toml::Value>>,
    trust: Option<Spanned<toml::Value>>,
    sampling: Option<Spanned<toml::Value>>,
    materials: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
    category: Option<Spanned<toml::Value>>,
    placing_date: Option<Spanned<toml::Value>>,
    lot_size: Option<Spanned<toml::Value>>,
    units_to_take: Option<Spanned<toml::Value>>,
    check_samples: Option<Spanned<Vec<String>>>,
    #[serde(default)]
    source: Vec<SourceSettings>,
    #[serde(default)]
    header: Vec<HeaderSettings>,
    #[serde(default)]
    lot: Vec<LotSettings>,
    #[serde(default)]
    part: Vec<PartSettings>,
    #[serde(default)]
    material: Vec<MaterialSettings>,
    #[serde(default)]
    site_sigma: Vec<SiteSigmaSettings>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SourceSettings {
    name: String,
    class: Option<Spanned<toml::Value>>,
    sigma_multiple: Option<Spanned<toml::Value>>,
    unit_of_measure: Option<Spanned<toml::Value>>,
    decimal_mark: Option<Spanned<toml::Value>>,
    detection_in_error_column: Option<Spanned<toml::Value>>,
    text_encoding: Option<Spanned<toml::Value>>,
    sheet: Option<Spanned<toml::Value>>,
    header_line: Option<Spanned<toml::Value>>,
    date_order: Option<Spanned<toml::Value>>,
    id_pattern: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MappingFile {
    #[serde(rename = "schema")]
    _schema: String,
    #[serde(default)]
    header: Vec<HeaderSettings>,
}

/// What is said of every table with the same headings.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct HeaderSettings {
    fingerprint: String,
    /// For the person who reads the file; the fingerprint decides.
    #[serde(default, rename = "headings")]
    _headings: Vec<String>,
    #[serde(default)]
    columns: std::collections::BTreeMap<String, Spanned<toml::Value>>,
    sigma_multiple: Option<Spanned<toml::Value>>,
    unit_of_measure: Option<Spanned<toml::Value>>,
    decimal_mark: Option<Spanned<toml::Value>>,
    detection_in_error_column: Option<Spanned<toml::Value>>,
    date_order: Option<Spanned<toml::Value>>,
    id_pattern: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct LotSettings {
    #[serde(default)]
    supplier: String,
    #[serde(default)]
    lot: String,
    lot_size: Option<Spanned<toml::Value>>,
    units_to_take: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct PartSettings {
    part: String,
    materials: Option<Spanned<Vec<String>>>,
    class: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct MaterialSettings {
    #[serde(default)]
    part: String,
    material: String,
    class: Option<Spanned<toml::Value>>,
    thickness_mm: Option<Spanned<toml::Value>>,
}

#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct SiteSigmaSettings {
    element: Spanned<String>,
    class: Spanned<String>,
    s: Spanned<String>,
    seconds: Option<Spanned<toml::Value>>,
    constant: Option<Spanned<String>>,
}

fn text_of(value: &toml::Value) -> Option<String> {
    match value {
        toml::Value::String(text) => Some(text.clone()),
        toml::Value::Integer(number) => Some(number.to_string()),
        toml::Value::Float(number) => Some(number.to_string()),
        toml::Value::Datetime(date) => Some(date.to_string()),
        _ => None,
    }
}

struct ActsReader<'a> {
    text: &'a str,
    note: &'a str,
    acts: Vec<Act>,
    problems: Vec<Problem>,
}

impl ActsReader<'_> {
    fn add(&mut self, kind: ActKind, target: &Target, value: String, byte: usize) {
        match check_value(kind, &value) {
            Ok(()) => self.acts.push(Act {
                kind,
                target: target.clone(),
                value,
                by: String::new(),
                at: String::new(),
                note: self.note.to_owned(),
            }),
            Err(code) => {
                let (line, column) = place_of(self.text, byte);
                self.problems.push(Problem { line, column, code, found: value });
            }
        }
    }

    fn value(&mut self, kind: ActKind, target: &Target, value: Option<&Spanned<toml::Value>>) {
        let Some(value) = value else { return };
        if let Some(text) = text_of(value.get_ref()) {
            self.add(kind, target, text, value.span().start);
        } else {
            let (line, column) = place_of(self.text, value.span().start);
            let found = value.get_ref().to_string();
            self.problems.push(Problem { line, column, code: ProblemCode::Malformed, found });
        }
    }

    fn header(&mut self, header: &HeaderSettings) {
        let target = Target::Header(header.fingerprint.clone());
        for (column, role) in &header.columns {
            let text = text_of(role.get_ref()).unwrap_or_default();
            self.add(ActKind::ColumnRole, &target, format!("{column}|{text}"), role.span().start);
        }
        for (kind, value) in [
            (ActKind::SigmaMultiple, &header.sigma_multiple),
            (ActKind::UnitOfMeasure, &header.unit_of_measure),
            (ActKind::DecimalMark, &header.decimal_mark),
            (ActKind::DetectionInErrorColumn, &header.detection_in_error_column),
            (ActKind::DateOrder, &header.date_order),
            (ActKind::IdPattern, &header.id_pattern),
        ] {
            self.value(kind, &target, value.as_ref());
        }
    }

    fn list(&mut self, kind: ActKind, target: &Target, list: Option<&Spanned<Vec<String>>>) {
        let Some(list) = list else { return };
        let joined = list.get_ref().iter().map(|name| escape(name)).collect::<Vec<_>>().join("|");
        self.add(kind, target, joined, list.span().start);
    }
}

/// Reads a settings file into acts.
///
/// # Errors
/// Every problem with its place; nothing of a file with a problem is used.
pub fn parse_settings(text: &str, name: &str) -> Result<Vec<Act>, Vec<Problem>> {
    check_schema(text, SCHEMA)?;
    let file: SettingsFile = toml::from_str(text).map_err(|error| vec![malformed(text, &error)])?;
    let mut reader = ActsReader { text, note: name, acts: Vec::new(), problems: Vec::new() };
    let all = Target::Inspection;
    for (kind, value) in [
        (ActKind::ReviewedAt, &file.reviewed_at),
        (ActKind::Inspector, &file.inspector),
        (ActKind::Place, &file.place),
        (ActKind::Title, &file.title),
        (ActKind::Class, &file.class),
        (ActKind::SigmaMultiple, &file.sigma_multiple),
        (ActKind::UnitOfMeasure, &file.unit_of_measure),
        (ActKind::DecimalMark, &file.decimal_mark),
        (ActKind::DetectionInErrorColumn, &file.detection_in_error_column),
        (ActKind::TextEncoding, &file.text_encoding),
        (ActKind::Sheet, &file.sheet),
        (ActKind::DateOrder, &file.date_order),
        (ActKind::IdPattern, &file.id_pattern),
        (ActKind::HalogenBook, &file.halogen_book),
        (ActKind::Trust, &file.trust),
        (ActKind::Sampling, &file.sampling),
        (ActKind::Materials, &file.materials),
        (ActKind::ThicknessMm, &file.thickness_mm),
        (ActKind::Category, &file.category),
        (ActKind::PlacingDate, &file.placing_date),
        (ActKind::LotSize, &file.lot_size),
        (ActKind::UnitsToTake, &file.units_to_take),
    ] {
        reader.value(kind, &all, value.as_ref());
    }
    reader.list(ActKind::CheckSamples, &all, file.check_samples.as_ref());
    for source in &file.source {
        let target = Target::Source(source.name.clone());
        for (kind, value) in [
            (ActKind::Class, &source.class),
            (ActKind::SigmaMultiple, &source.sigma_multiple),
            (ActKind::UnitOfMeasure, &source.unit_of_measure),
            (ActKind::DecimalMark, &source.decimal_mark),
            (ActKind::DetectionInErrorColumn, &source.detection_in_error_column),
            (ActKind::TextEncoding, &source.text_encoding),
            (ActKind::Sheet, &source.sheet),
            (ActKind::HeaderLine, &source.header_line),
            (ActKind::DateOrder, &source.date_order),
            (ActKind::IdPattern, &source.id_pattern),
        ] {
            reader.value(kind, &target, value.as_ref());
        }
    }
    for header in &file.header {
        reader.header(header);
    }
    for lot in &file.lot {
        let target = Target::Lot(lot.supplier.clone(), lot.lot.clone());
        reader.value(ActKind::LotSize, &target, lot.lot_size.as_ref());
        reader.value(ActKind::UnitsToTake, &target, lot.units_to_take.as_ref());
    }
    for part in &file.part {
        let target = Target::Part(part.part.clone());
        reader.list(ActKind::BillOfMaterials, &target, part.materials.as_ref());
        reader.value(ActKind::Class, &target, part.class.as_ref());
        reader.value(ActKind::ThicknessMm, &target, part.thickness_mm.as_ref());
    }
    for material in &file.material {
        let target = Target::Material(material.part.clone(), material.material.clone());
        reader.value(ActKind::Class, &target, material.class.as_ref());
        reader.value(ActKind::ThicknessMm, &target, material.thickness_mm.as_ref());
    }
    for row in &file.site_sigma {
        let mut value =
            format!("element={};class={};s={}", row.element.get_ref(), row.class.get_ref(), row.s.get_ref());
        if let Some(seconds) = row.seconds.as_ref().and_then(|seconds| text_of(seconds.get_ref())) {
            value.push_str(";seconds=");
            value.push_str(&seconds);
        }
        if let Some(constant) = &row.constant {
            value.push_str(";constant=");
            value.push_str(constant.get_ref());
        }
        reader.add(ActKind::SiteSigma, &all, value, row.element.span().start);
    }
    if reader.problems.is_empty() { Ok(reader.acts) } else { Err(reader.problems) }
}

/// Writes what the acts add up to as a settings file, so that the same review can be made again.
pub fn settings_text(acts: &[Act]) -> String {
    let settings = Settings::from_acts(acts);
    let mut file = toml::Table::new();
    let text = |value: &str| toml::Value::String(value.to_owned());
    let list = |values: &[String]| toml::Value::Array(values.iter().map(|value| text(value)).collect());
    file.insert("schema".into(), text(SCHEMA));
    if !settings.check_samples.is_empty() {
        file.insert("check_samples".into(), list(&settings.check_samples));
    }
    for (kind, target, value) in settings.all() {
        let (table, names): (&str, Vec<(&str, &str)>) = match target {
            Target::Inspection => {
                file.insert(kind.code().into(), text(value));
                continue;
            }
            Target::Source(name) => ("source", vec![("name", name)]),
            Target::Header(fingerprint) => ("header", vec![("fingerprint", fingerprint)]),
            Target::Lot(supplier, lot) => ("lot", vec![("supplier", supplier), ("lot", lot)]),
            Target::Part(part) => ("part", vec![("part", part)]),
            Target::Material(part, material) => ("material", vec![("part", part), ("material", material)]),
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
        let mut entry = toml::Table::new();
        entry.insert("element".into(), text(row.element.symbol()));
        entry.insert("class".into(), text(row.class.code()));
        entry.insert("s".into(), text(&format!("{} mg/kg", row.sigma)));
        if let Some(tenths) = row.deciseconds {
            entry.insert("seconds".into(), text(&format!("{}.{}", tenths / 10, tenths % 10)));
        }
        entry.insert("constant".into(), text(&format!("{} mg/kg", row.constant)));
        push_row(&mut file, "site_sigma", entry);
    }
    toml::to_string(&file).unwrap_or_default()
}

fn add_column(file: &mut toml::Table, target: &Target, value: &str) {
    let Target::Header(fingerprint) = target else { return };
    let Some((column, role)) = value.split_once('|') else { return };
    let names = [("fingerprint", fingerprint.as_str())];
    let mut columns = row_of(file, "header", &names)
        .and_then(|row| row.get("columns").and_then(toml::Value::as_table).cloned())
        .unwrap_or_default();
    columns.insert(column.to_owned(), toml::Value::String(role.to_owned()));
    add_row(file, "header", &names, "columns", toml::Value::Table(columns));
}

/// Reads a mapping file into acts.
///
/// # Errors
/// Every problem with its place; nothing of a file with a problem is used.
pub fn parse_mapping(text: &str, name: &str) -> Result<Vec<Act>, Vec<Problem>> {
    check_schema(text, MAPPING_SCHEMA)?;
    let file: MappingFile = toml::from_str(text).map_err(|error| vec![malformed(text, &error)])?;
    let mut reader = ActsReader { text, note: name, acts: Vec::new(), problems: Vec::new() };
    for header in &file.header {
        reader.header(header);
    }
    if reader.problems.is_empty() { Ok(reader.acts) } else { Err(reader.problems) }
}

/// Writes what the acts say of tables by their headings, as a mapping file; the headings come from the sources.
pub fn mapping_text(acts: &[Act], sources: &[Source]) -> String {
    let of_headers: Vec<Act> =
        crate::acts::in_force(acts).filter(|act| matches!(act.target, Target::Header(_))).cloned().collect();
    let mut file: toml::Table = settings_text(&of_headers).parse().unwrap_or_default();
    file.insert("schema".into(), toml::Value::String(MAPPING_SCHEMA.to_owned()));
    let blocks = || sources.iter().flat_map(|source| &source.blocks);
    if let Some(toml::Value::Array(rows)) = file.get_mut("header") {
        for row in rows.iter_mut().filter_map(toml::Value::as_table_mut) {
            let fingerprint = row.get("fingerprint").and_then(toml::Value::as_str).unwrap_or("").to_owned();
            if let Some(block) = blocks().find(|block| block.fingerprint == fingerprint) {
                let headings =
                    block.columns.iter().map(|column| toml::Value::String(column.heading.clone())).collect();
                row.insert("headings".into(), toml::Value::Array(headings));
            }
        }
    }
    toml::to_string(&file).unwrap_or_default()
}

fn row_of<'a>(file: &'a mut toml::Table, table: &str, names: &[(&str, &str)]) -> Option<&'a mut toml::Table> {
    let Some(toml::Value::Array(rows)) = file.get_mut(table) else { return None };
    rows.iter_mut().filter_map(toml::Value::as_table_mut).find(|row| {
        names.iter().all(|(name, expected)| row.get(*name).and_then(toml::Value::as_str) == Some(expected))
    })
}

fn add_row(file: &mut toml::Table, table: &str, names: &[(&str, &str)], key: &str, value: toml::Value) {
    if let Some(row) = row_of(file, table, names) {
        row.insert(key.into(), value);
        return;
    }
    let mut row = toml::Table::new();
    for (name, text) in names {
        row.insert((*name).into(), toml::Value::String((*text).to_owned()));
    }
    row.insert(key.into(), value);
    push_row(file, table, row);
}

fn push_row(file: &mut toml::Table, table: &str, row: toml::Table) {
    let rows = file.entry(table).or_insert_with(|| toml::Value::Array(Vec::new()));
    if let toml::Value::Array(rows) = rows {
        rows.push(toml::Value::Table(row));
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
        assert_eq!(problems[0].code, ProblemCode::Malformed);
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
