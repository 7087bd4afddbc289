//! What a person says besides the file.

use super::verdict::Class;

/// Settings the twin knows.
// Each is one setting a person ticks or not.
#[allow(clippy::struct_excessive_bools)]
#[derive(Clone, Debug, Default)]
pub struct Given {
    /// Class of readings that declare none.
    pub class: Option<Class>,
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
        let bills = self.bills.iter().map(|(part, materials)| {
            let mut row = toml::Table::new();
            row.insert("part".into(), text(part));
            row.insert("materials".into(), list(materials));
            toml::Value::Table(row)
        });
        let bills: Vec<toml::Value> = bills.collect();
        if !bills.is_empty() {
            file.insert("part".into(), toml::Value::Array(bills));
        }
        toml::to_string(&file).expect("a table of texts is TOML")
    }
}
