//! Deliveries as files: what a person could have been handed on a stick.

/// A file of text.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TextFile {
    /// Its name, without a folder.
    pub name: String,
    /// Its text.
    pub text: String,
}

/// An invented delivery: what is opened and reviewed like any other.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Delivery {
    /// The table of readings.
    pub results: TextFile,
    /// The settings file, which says that the data are invented.
    pub settings: TextFile,
}

impl Delivery {
    pub(crate) fn new(name: &str, table: &Table, settings: &str) -> Delivery {
        Delivery {
            results: TextFile { name: format!("{name}.csv"), text: table.csv() },
            settings: TextFile {
                name: "settings.toml".to_owned(),
                text: format!(
                    "# Invented data.\nschema = \"plumbline.settings/1\"\ninvented = \"yes\"\n{settings}"
                ),
            },
        }
    }
}

/// Rows under headings.
#[derive(Clone, Debug, Default)]
pub(crate) struct Table {
    pub(crate) headings: Vec<String>,
    pub(crate) rows: Vec<Vec<String>>,
}

impl Table {
    fn csv(&self) -> String {
        let mut text = String::new();
        for row in std::iter::once(&self.headings).chain(&self.rows) {
            for (at, cell) in row.iter().enumerate() {
                if at > 0 {
                    text.push(',');
                }
                text.push_str(&quoted(cell));
            }
            text.push_str("\r\n");
        }
        text
    }
}

/// A cell as RFC 4180 writes it; what no cell holds (line ends and other control characters) is left out.
fn quoted(cell: &str) -> String {
    let plain: String = cell.chars().filter(|character| !character.is_control()).collect();
    if plain.contains([',', '"']) { format!("\"{}\"", plain.replace('"', "\"\"")) } else { plain }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_cell_never_ends_its_row_or_its_quotes() {
        let row = ["1,5", "a\"b\r\nc", "plain"].map(str::to_owned).to_vec();
        let table = Table { headings: vec!["a".to_owned()], rows: vec![row] };
        assert_eq!(table.csv(), "a\r\n\"1,5\",\"a\"\"bc\",plain\r\n");
    }
}
