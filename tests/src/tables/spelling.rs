//! A table as text.

use super::{Cell, Columns, Error, Micro, Table, Value};

/// How amounts are written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Units {
    /// mg/kg.
    MgPerKg,
    /// %.
    Percent,
    /// g/kg.
    GramPerKg,
    /// ppb.
    Ppb,
}

impl Units {
    /// All of them.
    pub const ALL: [Units; 4] = [Units::MgPerKg, Units::Percent, Units::GramPerKg, Units::Ppb];

    /// The word in headings.
    pub fn word(self) -> &'static str {
        match self {
            Units::MgPerKg => "mg/kg",
            Units::Percent => "%",
            Units::GramPerKg => "g/kg",
            Units::Ppb => "ppb",
        }
    }

    /// Decimals that a millionth of mg/kg needs.
    fn decimals(self) -> usize {
        match self {
            Units::MgPerKg => 6,
            Units::Percent => 10,
            Units::GramPerKg => 9,
            Units::Ppb => 3,
        }
    }

    /// An amount, without a digit lost and without zeros at its end.
    pub fn write(self, amount: Micro, mark: char) -> String {
        let digits = format!("{:0width$}", amount.unsigned_abs(), width = self.decimals() + 1);
        let (whole, part) = digits.split_at(digits.len() - self.decimals());
        let part = part.trim_end_matches('0');
        let sign = if amount < 0 { "-" } else { "" };
        if part.is_empty() { format!("{sign}{whole}") } else { format!("{sign}{whole}{mark}{part}") }
    }
}

impl Table {
    /// The table as text, all amounts in these units.
    pub fn to_text(&self, units: Units) -> String {
        let mut lines = vec![self.heading(units)];
        lines.extend((0..self.rows.len()).map(|row| self.line(row, units)));
        lines.join("\n") + "\n"
    }

    fn heading(&self, units: Units) -> String {
        let mut cells: Vec<String> =
            ["Sample", "Piece", "Part", "Material", "Lot", "Supplier", "Class"].map(str::to_owned).into();
        if self.units_column {
            cells.push("Units".to_owned());
        }
        for columns in &self.columns {
            let unit = if columns.names_unit { format!(" {}", units.word()) } else { String::new() };
            cells.push(format!("{}{unit}", columns.element));
            if columns.has_error {
                let multiple = columns.multiple.map_or(String::new(), |multiple| format!(" ({multiple}s)"));
                // A percent sign beside an error may mean percent of the value, so the unit stays with the value.
                cells.push(format!("{} u{multiple}", columns.element));
            }
            if columns.has_limit {
                cells.push(format!("{} LOD{unit}", columns.element));
            }
        }
        self.join(cells)
    }

    fn line(&self, row: usize, units: Units) -> String {
        let row = &self.rows[row];
        let mut cells: Vec<String> = vec![
            row.id.clone(),
            row.piece.to_owned(),
            row.part.to_owned(),
            row.material.clone(),
            row.lot.to_owned(),
            row.supplier.to_owned(),
            row.class.to_owned(),
        ];
        if self.units_column {
            cells.push(row.units.unwrap_or(units.word()).to_owned());
        }
        for (columns, cell) in self.columns.iter().zip(&row.cells) {
            self.cells(columns, cell, units, &mut cells);
        }
        self.join(cells)
    }

    fn cells(&self, columns: &Columns, cell: &Cell, units: Units, cells: &mut Vec<String>) {
        let mark = if self.given.comma { ',' } else { '.' };
        let amount = |amount| units.write(amount, mark);
        cells.push(match cell.value {
            Value::Number(number) => amount(number),
            Value::Below(bound) => format!("< {}", amount(bound)),
            Value::Above(bound) => format!("> {}", amount(bound)),
            Value::Word(word) => word.to_owned(),
        });
        if columns.has_error {
            let multiple = i64::from(columns.multiple.or(self.given.multiple).unwrap_or(1));
            cells.push(match cell.error {
                Error::Sigma(sigma, odd) => amount(sigma * multiple + odd),
                Error::Word(word) => word.to_owned(),
            });
        }
        if columns.has_limit {
            cells.push(cell.limit.map_or(String::new(), amount));
        }
    }

    fn join(&self, cells: Vec<String>) -> String {
        let quoted = cells.into_iter().map(|cell| {
            if cell.contains([self.delimiter, '"', '\n']) {
                format!("\"{}\"", cell.replace('"', "\"\""))
            } else {
                cell
            }
        });
        quoted.collect::<Vec<_>>().join(&self.delimiter.to_string())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_same_amount_is_spelt_exactly_in_every_unit() {
        let written = Units::ALL.map(|units| units.write(52_000_000, '.'));
        assert_eq!(written, ["52", "0.0052", "0.052", "52000"]);
        assert_eq!(Units::Percent.write(-1, '.'), "-0.0000000001");
        assert_eq!(Units::Ppb.write(1, ','), "0,001");
    }
}
