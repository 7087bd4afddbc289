//! How far a lot may lie from the part's accepted lots, so that few unchanged lots are called changed.

use std::sync::OnceLock;

const BUILT_IN: &str = include_str!("../../data/change_factors.tsv");

/// The factors for one number of lots.
#[derive(Clone, Debug)]
struct Row {
    lots: usize,
    right: f64,
    factors: Vec<f64>,
}

/// The table of `data/change_factors.tsv`.
///
/// # Source
/// Worked out by simulation of normal values (`tests/outside/change.py`); no published table has this spread.
#[derive(Clone, Debug)]
pub(super) struct Factors {
    elements: Vec<usize>,
    rows: Vec<Row>,
}

impl Factors {
    /// The built-in table, read once.
    pub(super) fn built_in() -> &'static Factors {
        static FACTORS: OnceLock<Factors> = OnceLock::new();
        FACTORS.get_or_init(|| Factors::read(BUILT_IN))
    }

    fn read(text: &str) -> Factors {
        let mut lines = text.lines().filter(|line| !line.starts_with('#')).map(|line| line.split('\t'));
        let heading = lines.next().into_iter().flatten().skip(2);
        let elements = heading.filter_map(|cell| cell.parse().ok()).collect();
        let rows = lines.filter_map(|mut cells| {
            let lots = cells.next()?.parse().ok()?;
            let right = cells.next()?.parse().ok()?;
            Some(Row { lots, right, factors: cells.filter_map(|cell| cell.parse().ok()).collect() })
        });
        Factors { elements, rows: rows.collect() }
    }

    /// What makes the spread of so many values right on average; `None` below the fewest.
    pub(super) fn right(&self, lots: usize) -> Option<f64> {
        self.row(lots).map(|row| row.right)
    }

    /// How many spreads a lot may lie from the centre of so many lots, with so many elements looked at; between the rows
    /// of the table the stricter one stands. `None` outside it.
    pub(super) fn factor(&self, lots: usize, elements: usize) -> Option<f64> {
        let column = self.elements.iter().position(|most| *most >= elements)?;
        self.row(lots)?.factors.get(column).copied()
    }

    /// The row of the most lots that are not more than these.
    fn row(&self, lots: usize) -> Option<&Row> {
        self.rows.iter().rev().find(|row| row.lots <= lots)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_table_is_whole_and_rises_with_elements() {
        let table = Factors::built_in();
        assert_eq!((table.elements.first(), table.elements.last()), (Some(&1), Some(&120)));
        assert_eq!((table.rows.len(), table.rows[0].lots), (29, 5));
        for row in &table.rows {
            assert_eq!(row.factors.len(), table.elements.len());
            assert!(row.factors.windows(2).all(|pair| pair[0] <= pair[1]), "{row:?}");
            assert!(row.right > 1.0 && row.factors[0] > 2.5);
        }
    }

    #[test]
    fn between_the_rows_the_stricter_one_stands() {
        let table = Factors::built_in();
        assert_eq!(table.factor(4, 1), None);
        assert_eq!(table.factor(5, 121), None);
        assert_eq!(table.factor(59, 9), table.factor(40, 10));
        assert_eq!(table.factor(10_000, 120), table.factor(100, 120));
    }
}
