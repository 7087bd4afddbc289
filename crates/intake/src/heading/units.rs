//! Units in a row of their own below the header.

use plumbline_core::column::{ColumnMeaning, ColumnRole};
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::Unit;
use plumbline_core::substance::Element;

use super::header::error_unit;

/// The unit words of a row below the header, or nothing where the row is no unit row.
///
/// A unit row holds unit words (or nothing) in every element column, and at least one.
pub fn unit_row(columns: &[ColumnMeaning], cells: &[&str]) -> Option<Vec<Option<Unit>>> {
    let mut any = false;
    let mut units = vec![None; columns.len()];
    for (column, unit) in columns.iter().zip(&mut units) {
        let cell = cells.get(column.column as usize - 1).copied().unwrap_or("").trim();
        let measured = matches!(
            column.role,
            ColumnRole::Value { .. } | ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }
        );
        if measured && !cell.is_empty() {
            *unit = Some(Unit::from_word(cell.trim_matches(['(', ')', '[', ']']))?);
            any = true;
        }
    }
    any.then_some(units)
}

/// Puts the units of a unit row into columns that state none.
pub fn apply_unit_row(columns: &mut [ColumnMeaning], units: &[Option<Unit>]) {
    let mut values: Vec<(Element, Option<Oxide>, Option<Unit>)> = Vec::new();
    for (column, stated) in columns.iter_mut().zip(units) {
        if let ColumnRole::Value { element, oxide, unit } = &mut column.role {
            *unit = unit.or(*stated);
            values.push((*element, *oxide, *unit));
        }
    }
    let value_unit = |element: Element, oxide: Option<Oxide>| {
        values
            .iter()
            .find(|(of, as_oxide, _)| *of == element && *as_oxide == oxide)
            .and_then(|(.., unit)| *unit)
    };
    for (column, stated) in columns.iter_mut().zip(units) {
        match &mut column.role {
            ColumnRole::Error { element, oxide, error }
                if error.unit.is_none() && error.clear && !error.relative =>
            {
                (error.unit, error.clear) = error_unit(*stated, value_unit(*element, *oxide));
            }
            ColumnRole::DetectionLimit { element, oxide, unit } => {
                *unit = unit.or(*stated).or(value_unit(*element, *oxide));
            }
            _ => {}
        }
    }
}
