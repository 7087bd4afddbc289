//! The same table with one thing changed.

use super::{Cell, Error, Micro, Table, Value};

impl Table {
    fn each_cell(&self, change: impl Fn(&Cell) -> Cell) -> Table {
        let mut table = self.clone();
        for cell in table.rows.iter_mut().flat_map(|row| &mut row.cells) {
            *cell = change(cell);
        }
        table
    }

    /// Every printed error grown by these millionths of one sigma.
    #[must_use]
    pub fn with_wider_errors(&self, more: Micro) -> Table {
        self.each_cell(|cell| match cell.error {
            Error::Sigma(sigma, odd) => Cell { error: Error::Sigma(sigma + more, odd), ..*cell },
            Error::Word(_) => *cell,
        })
    }

    /// Every number raised by these millionths.
    #[must_use]
    pub fn with_higher_values(&self, more: Micro) -> Table {
        self.each_cell(|cell| match cell.value {
            Value::Number(x) => Cell { value: Value::Number(x + more), ..*cell },
            _ => *cell,
        })
    }

    /// Without the columns of an element.
    #[must_use]
    pub fn without_element(&self, element: &str) -> Table {
        let mut table = self.clone();
        if let Some(at) = table.columns.iter().position(|columns| columns.element == element) {
            table.columns.remove(at);
            for row in &mut table.rows {
                row.cells.remove(at);
            }
        }
        table
    }

    /// With one value cell emptied.
    #[must_use]
    pub fn with_blank(&self, row: usize, column: usize) -> Table {
        let mut table = self.clone();
        table.rows[row].cells[column].value = Value::Word("");
        table
    }

    /// With every class word replaced. Materials keep their names.
    #[must_use]
    pub fn with_class(&self, word: &'static str) -> Table {
        let mut table = self.clone();
        for row in &mut table.rows {
            row.class = word;
        }
        table
    }

    /// With the rows in another order: by a key that is as good as random.
    #[must_use]
    pub fn shuffled(&self, seed: u64) -> Table {
        let mut table = self.clone();
        table.rows.sort_by_key(|row| {
            row.id.bytes().fold(seed | 1, |key, byte| {
                (key ^ u64::from(byte)).wrapping_mul(0x9E37_79B9_7F4A_7C15).rotate_left(23)
            })
        });
        table
    }
}
