//! What a person says besides the file.

use std::collections::BTreeMap;

use super::verdict::Class;

/// The name of the one file, for settings that speak about it.
pub const FILE_NAME: &str = "table.csv";

/// Settings the twin knows.
// Each is one setting a person ticks or not.
#[allow(clippy::struct_excessive_bools)]
#[derive(Clone, Debug, Default)]
pub struct Given {
    /// Class of readings that declare none.
    pub class: Option<Class>,
    /// Class of readings of the table's own file, which also fills words that are no class.
    pub file_class: Option<Class>,
    /// Class of a part, above the file's word.
    pub part_class: Option<(String, Class)>,
    /// Sigmas of printed errors that don't state it.
    pub multiple: Option<u8>,
    /// Unit word of values that don't state one.
    pub unit: Option<&'static str>,
    /// The decimal mark is a comma.
    pub comma: bool,
    /// A number in the error column of a non-detect is one error, not the limit.
    pub one_error: bool,
    /// The halogen book counts.
    pub halogen_book: bool,
    /// Missing check readings are advisory.
    pub trust_advisory: bool,
    /// A missing plan is advisory.
    pub sampling_advisory: bool,
    /// A missing bill of materials is advisory.
    pub materials_advisory: bool,
    /// Everything is stated to be a metre thick, so that no BL holds for want of a thickness.
    pub thick: bool,
    /// Units in each lot.
    pub lot_size: Option<u64>,
    /// Units the plan asks for.
    pub units_to_take: Option<u64>,
    /// Bills of materials by part.
    pub bills: Vec<(String, Vec<String>)>,
    /// Sample ids that are checks.
    pub checks: Vec<String>,
}

impl Given {
    /// The same as a settings file.
    pub fn to_settings(&self) -> String {
        let mut file = toml::Table::new();
        let text = |value: &str| toml::Value::String(value.to_owned());
        let list = |values: &[String]| toml::Value::Array(values.iter().map(|value| text(value)).collect());
        file.insert("schema".into(), text("plumbline.settings/1"));
        if let Some(class) = self.class {
            file.insert("class".into(), text(class.code()));
        }
        if let Some(multiple) = self.multiple {
            file.insert("sigma_multiple".into(), toml::Value::Integer(i64::from(multiple)));
        }
        if let Some(unit) = self.unit {
            file.insert("unit_of_measure".into(), text(unit));
        }
        file.insert("decimal_mark".into(), text(if self.comma { "," } else { "." }));
        if self.one_error {
            file.insert("detection_in_error_column".into(), text("one_error"));
        }
        if self.halogen_book {
            file.insert("halogen_book".into(), text("iec-61249-2-21-2003"));
        }
        for (key, set) in [
            ("trust", self.trust_advisory),
            ("sampling", self.sampling_advisory),
            ("materials", self.materials_advisory),
        ] {
            if set {
                file.insert(key.into(), text("advisory"));
            }
        }
        if self.thick {
            file.insert("thickness_mm".into(), toml::Value::Integer(1000));
        }
        for (key, set) in [("lot_size", self.lot_size), ("units_to_take", self.units_to_take)] {
            if let Some(number) = set {
                file.insert(key.into(), toml::Value::Integer(i64::try_from(number).unwrap_or(i64::MAX)));
            }
        }
        if !self.checks.is_empty() {
            file.insert("check_samples".into(), list(&self.checks));
        }
        if let Some(class) = self.file_class {
            let row = [("name".to_owned(), text(FILE_NAME)), ("class".to_owned(), text(class.code()))];
            file.insert(
                "source".into(),
                toml::Value::Array(vec![toml::Value::Table(row.into_iter().collect())]),
            );
        }
        let mut parts: BTreeMap<&str, toml::Table> = BTreeMap::new();
        for (part, materials) in &self.bills {
            parts.entry(part).or_default().insert("materials".into(), list(materials));
        }
        if let Some((part, class)) = &self.part_class {
            parts.entry(part).or_default().insert("class".into(), text(class.code()));
        }
        let parts = parts.into_iter().map(|(part, mut row)| {
            row.insert("part".into(), text(part));
            toml::Value::Table(row)
        });
        let parts: Vec<toml::Value> = parts.collect();
        if !parts.is_empty() {
            file.insert("part".into(), toml::Value::Array(parts));
        }
        toml::to_string(&file).expect("a table of texts is TOML")
    }
}
