//! What the program says of a form, held against the truth.

use plumbline_core::inspection::Inspection;
use plumbline_core::quantity::{MassFraction, SigmaMultiple};
use plumbline_core::reading::{CellState, Identity, Source};
use plumbline_core::substance::Element;

use super::axes::{ErrorKind, Form, Naming};
use super::table::{ELEMENTS, READINGS, Reading, Truth};

/// Where a form is not read as the table is: one line a difference.
pub fn differences(form: &Form, inspection: &Inspection) -> Vec<String> {
    let mut found = Vec::new();
    let said: Vec<(&Source, usize)> = inspection
        .sources
        .iter()
        .flat_map(|source| (0..source.readings.len()).map(move |row| (source, row)))
        .collect();
    for source in &inspection.sources {
        if let Some(problem) = source.problem {
            found.push(format!("{}: {}", source.name, problem.code()));
        }
        if source.rows_refused > 0 {
            let first = source
                .refusals
                .kept
                .first()
                .map(|refusal| (refusal.line, refusal.code.code(), &refusal.found));
            found.push(format!("{} rows refused, first {first:?}", source.rows_refused));
        }
    }
    if said.len() != READINGS.len() {
        found.push(format!("{} readings instead of {}", said.len(), READINGS.len()));
    }
    for ((at, truth), (source, row)) in READINGS.iter().enumerate().zip(said) {
        identities(form, truth, source, row, &mut |what| found.push(format!("reading {at}: {what}")));
        for (symbol, cell) in ELEMENTS.iter().zip(truth.cells) {
            if let Some(what) = cell_difference(form, symbol, cell, source, row) {
                found.push(format!("reading {at}: {symbol}: {what}"));
            }
        }
    }
    found
}

fn identities(form: &Form, truth: &Reading, source: &Source, row: usize, tell: &mut dyn FnMut(String)) {
    for (identity, expected) in [
        (Identity::Id, truth.id),
        (Identity::Part, truth.part),
        (Identity::Lot, truth.lot),
        (Identity::Supplier, form.script().supplier),
        (Identity::Spot, truth.spot),
        (Identity::Time, truth.moment),
        (Identity::Seconds, truth.seconds),
    ] {
        let said = source.readings.identity(identity, row).unwrap_or("");
        // ISO 8601 lets people part date and time by a space (RFC 3339, 5.6).
        let same =
            if identity == Identity::Time { said.replace(' ', "T") == expected } else { said == expected };
        if !same {
            tell(format!("{} {said:?} instead of {expected:?}", identity.code()));
        }
    }
}

fn cell_difference(form: &Form, symbol: &str, truth: Truth, source: &Source, row: usize) -> Option<String> {
    let element = Element::from_symbol(symbol).expect("an element");
    let cell = source.readings.cell(element, row);
    let (state, value, sigma) = match truth {
        Truth::Number(value, _) => (CellState::Number, value, truth.sigma()),
        Truth::Zero => (CellState::Number, 0, 0),
        Truth::Below(limit) => (CellState::BelowDetection, limit, 0),
        Truth::Above(bound) => (CellState::AboveRange, bound, 0),
        Truth::NotDetected => (CellState::NotDetected, 0, 0),
        Truth::Blank => (CellState::Blank, 0, 0),
    };
    if cell.state != state {
        return Some(format!("{} instead of {}", cell.state.code(), state.code()));
    }
    // An oxide's number has a last decimal, and its share of the element one more rounding.
    let rounding = i64::from(form.naming == Naming::Oxide);
    if (cell.value.units() - value).abs() > rounding {
        return Some(format!("{} instead of {value} millionths", cell.value.units()));
    }
    let multiple = source.block_of(row).and_then(|block| block.stated_multiple(element));
    let printed = cell.printed_error.map_or(0, MassFraction::units);
    if sigma == 0 {
        return (printed != 0).then(|| format!("an uncertainty of {printed} where there is none"));
    }
    if multiple.map(SigmaMultiple::hundredths).map(i64::from) != Some(form.factor.hundredths()) {
        return Some(format!("multiple {multiple:?} instead of {}", form.factor.hundredths()));
    }
    let expected = sigma * form.factor.hundredths() / 100;
    // Uncertainties are rounded up, so that a printed one never becomes none.
    let rounding = match (form.naming, form.error_kind) {
        (Naming::Oxide, _) => 2,
        (_, ErrorKind::Relative) => 1,
        _ => 0,
    };
    ((printed - expected).abs() > rounding)
        .then(|| format!("printed {printed} instead of {expected} millionths"))
}
