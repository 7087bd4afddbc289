//! `findings.csv`: one row a reading, fixed columns, for spreadsheets and scripts.
//!
//! Comma, CRLF, UTF-8 without a byte order mark. A text that a spreadsheet would run as a formula gets an apostrophe
//! in front; numbers never do, so that negative values stay numbers.

use std::io::{self, Write};

use crate::inspection::{Findings, Inspection};
use crate::judging::SourceReview;
use crate::quantity::MassFraction;
use crate::reading::{CellState, Identity};
use crate::substance::{Element, Halogen, Substance};

/// The elements with columns of their own.
const ELEMENTS: [Element; 6] = [Element::CD, Element::PB, Element::HG, Element::CR, Element::BR, Element::CL];

const IDENTITIES: [Identity; 12] = [
    Identity::Id,
    Identity::Unit,
    Identity::Spot,
    Identity::Part,
    Identity::Material,
    Identity::Lot,
    Identity::Supplier,
    Identity::Time,
    Identity::Seconds,
    Identity::Instrument,
    Identity::Mode,
    Identity::Operator,
];

/// The column heads, in order.
pub fn columns() -> Vec<String> {
    let mut columns = vec!["source".to_owned(), "line".to_owned()];
    columns.extend(IDENTITIES.iter().map(|identity| identity.code().to_owned()));
    columns.extend(["class", "class_from", "check", "set_aside", "trust"].map(str::to_owned));
    for element in ELEMENTS {
        for part in ["state", "value_mg_kg", "sigma_mg_kg", "below_detection_mg_kg"] {
            columns.push(format!("{element}_{part}"));
        }
    }
    for substance in Substance::ALL {
        columns.push(format!("{}_outcome", substance.symbol()));
        columns.push(format!("{}_reason", substance.symbol()));
    }
    for halogen in Halogen::ALL {
        columns.push(format!("halogen_{}_outcome", halogen.name()));
        columns.push(format!("halogen_{}_reason", halogen.name()));
    }
    columns.extend(
        ["halogen_total_low_mg_kg", "halogen_total_high_mg_kg", "halogen_total_sigma_mg_kg"]
            .map(str::to_owned),
    );
    columns.extend(["material_disposition", "lot_disposition"].map(str::to_owned));
    columns
}

/// Writes one row a reading.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma; a missing number is an empty cell.
///
/// # Errors
/// Those of the sink.
pub fn write(inspection: &Inspection, findings: &Findings, sink: &mut dyn Write) -> io::Result<()> {
    let settings = inspection.settings();
    let mut writer = csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(sink);
    writer.write_record(columns()).map_err(io::Error::from)?;
    let mut material_of = vec![u32::MAX; findings.verdicts.len()];
    for (at, material) in findings.materials.iter().enumerate() {
        for reading in material.readings.iter().chain(&material.set_aside) {
            if let Some(slot) = material_of.get_mut(*reading as usize) {
                *slot = at as u32;
            }
        }
    }
    let mut index = 0;
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.same_as.get(at).copied().flatten().is_some() {
            continue;
        }
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let number =
                |value: Option<MassFraction>| value.map(|value| value.to_string()).unwrap_or_default();
            writer.write_field(guarded(&source.name))?;
            writer.write_field(source.readings.line(row).to_string())?;
            for identity in IDENTITIES {
                writer.write_field(guarded(source.readings.identity(identity, row).unwrap_or("")))?;
            }
            let check = findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
            writer.write_field(assessed.class.code())?;
            writer.write_field(assessed.class_from.code())?;
            writer.write_field(if check { "yes" } else { "no" })?;
            let aside = findings.set_aside.contains_key(&(index as u32));
            writer.write_field(if aside { "yes" } else { "no" })?;
            writer.write_field(findings.trust.worst(index).code())?;
            for element in ELEMENTS {
                let cell = source.readings.cell(element, row);
                let sigma = reviewer
                    .printed_sigma(element, &cell, row)
                    .map(super::super::quantity::Sigma::to_mass_fraction);
                let is = |state| (cell.state == state).then_some(cell.value);
                writer.write_field(cell.state.code())?;
                writer.write_field(number(is(CellState::Number)))?;
                writer.write_field(number(sigma))?;
                writer.write_field(number(is(CellState::BelowDetection).or(cell.detection_limit)))?;
            }
            for judged in assessed.substances {
                writer.write_field(judged.outcome.code())?;
                writer.write_field(judged.reason.map_or("", crate::outcome::Reason::code))?;
            }
            for halogen in Halogen::ALL {
                let judged = assessed.halogen(halogen);
                writer.write_field(judged.outcome.code())?;
                writer.write_field(judged.reason.map_or("", crate::outcome::Reason::code))?;
            }
            writer.write_field(number(assessed.total.low))?;
            writer.write_field(number(assessed.total.high))?;
            writer.write_field(number(
                assessed.total.sigma.map(super::super::quantity::Sigma::to_mass_fraction),
            ))?;
            let material = material_of.get(index).and_then(|at| findings.materials.get(*at as usize));
            writer.write_field(material.map_or("", |material| material.disposition.code()))?;
            let lot = material.and_then(|material| findings.lots.get(material.lot));
            writer.write_field(lot.map_or("", |lot| lot.disposition.code()))?;
            writer.write_record(None::<&[u8]>)?;
            index += 1;
        }
    }
    writer.flush()
}

/// A text that a spreadsheet would take for a formula, made harmless.
fn guarded(text: &str) -> String {
    let risky = text.trim_start().starts_with(['=', '+', '-', '@']) || text.starts_with(['\t', '\r', '\n']);
    // A plain negative number in an identity column is a text too, but no spreadsheet runs it.
    let number = text.trim().parse::<f64>().is_ok_and(f64::is_finite);
    if risky && !number { format!("'{text}") } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn formulas_are_guarded_and_numbers_are_not() {
        assert_eq!(guarded("=1+1"), "'=1+1");
        assert_eq!(guarded("@SUM(A1)"), "'@SUM(A1)");
        assert_eq!(guarded("-5.2"), "-5.2");
        assert_eq!(guarded("- cable"), "'- cable");
        assert_eq!(guarded("A-1"), "A-1");
    }
}
