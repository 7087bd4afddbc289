//! `findings.csv`: one row a reading, fixed columns, for spreadsheets and scripts.
//!
//! Comma, CRLF, UTF-8 without a byte order mark. A text that a spreadsheet would run as a formula gets an apostrophe
//! in front; numbers never do, so that negative values stay numbers.

use std::io::{self, Write};

use crate::inspection::{Findings, Inspection};
use crate::judging::SourceReview;
use crate::lot::Disposition;
use crate::outcome::Reason;
use crate::quantity::{MassFraction, Sigma};
use crate::reading::{CellState, Identity, Source};
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
        columns.extend(element_columns(element));
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

/// Takes the cells of the table of readings, column after column, row after row.
pub trait Cells {
    /// A text of somebody else's.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn text(&mut self, text: &str) -> io::Result<()>;
    /// A code of ours; empty for none.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn code(&mut self, code: &'static str) -> io::Result<()>;
    /// A moment as its source has it, in ISO 8601 where it was understood.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn moment(&mut self, text: &str) -> io::Result<()>;
    /// A count.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn count(&mut self, count: u64) -> io::Result<()>;
    /// An amount in mg/kg.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn amount(&mut self, amount: Option<MassFraction>) -> io::Result<()>;
    /// The end of a row; false: no more rows are wanted.
    ///
    /// # Errors
    /// Those of the sink behind it.
    fn end_row(&mut self) -> io::Result<bool>;
}

/// Gives one row a reading, under [`columns`].
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma.
///
/// # Errors
/// Those of the sink.
pub fn rows(inspection: &Inspection, findings: &Findings, cells: &mut impl Cells) -> io::Result<()> {
    let settings = inspection.settings();
    let material_of = materials_of(findings);
    let mut index = 0;
    for (at, source) in inspection.sources.iter().enumerate() {
        if findings.same_as.get(at).copied().flatten().is_some() {
            continue;
        }
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let material = material_of.get(index).and_then(|at| findings.materials.get(*at as usize));
            let lot = material.and_then(|material| findings.lots.get(material.lot));
            let came = (material.map(|one| one.disposition), lot.map(|one| one.disposition));
            one_row(source, &reviewer, findings, (index, row), came, cells)?;
            if !cells.end_row()? {
                return Ok(());
            }
            index += 1;
        }
    }
    Ok(())
}

/// The material of every reading, by its index; `u32::MAX` for none.
pub(crate) fn materials_of(findings: &Findings) -> Vec<u32> {
    let mut material_of = vec![u32::MAX; findings.verdicts.len()];
    for (at, material) in findings.materials.iter().enumerate() {
        for reading in material.readings.iter().chain(&material.set_aside) {
            if let Some(slot) = material_of.get_mut(*reading as usize) {
                *slot = at as u32;
            }
        }
    }
    material_of
}

/// Gives the cells of one reading, under [`columns`]; `at` is its index over all sources and its row in its own, `came` the
/// dispositions of its material and its lot. The row is left open.
///
/// # Errors
/// Those of the sink.
pub fn one_row(
    source: &Source,
    reviewer: &SourceReview<'_>,
    findings: &Findings,
    at: (usize, usize),
    came: (Option<Disposition>, Option<Disposition>),
    cells: &mut impl Cells,
) -> io::Result<()> {
    let (index, row) = at;
    let assessed = reviewer.assess(row);
    cells.text(&source.name)?;
    cells.count(u64::from(source.readings.line(row)))?;
    for identity in IDENTITIES {
        let text = source.readings.identity(identity, row).unwrap_or("");
        if identity == Identity::Time { cells.moment(text)? } else { cells.text(text)? }
    }
    let check = findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
    cells.code(assessed.class.code())?;
    cells.code(assessed.class_from.code())?;
    cells.code(if check { "yes" } else { "no" })?;
    let aside = findings.set_aside.contains_key(&(index as u32));
    cells.code(if aside { "yes" } else { "no" })?;
    cells.code(findings.trust.worst(index).code())?;
    for element in ELEMENTS {
        element_cells(source, reviewer, element, row, cells)?;
    }
    for judged in assessed.substances {
        cells.code(judged.outcome.code())?;
        cells.code(judged.reason.map_or("", Reason::code))?;
    }
    for halogen in Halogen::ALL {
        let judged = assessed.halogen(halogen);
        cells.code(judged.outcome.code())?;
        cells.code(judged.reason.map_or("", Reason::code))?;
    }
    cells.amount(assessed.total.low)?;
    cells.amount(assessed.total.high)?;
    cells.amount(assessed.total.sigma.map(Sigma::to_mass_fraction))?;
    cells.code(came.0.map_or("", Disposition::code))?;
    cells.code(came.1.map_or("", Disposition::code))
}

/// The heads of the columns of one element.
pub fn element_columns(element: Element) -> [String; 4] {
    ["state", "value_mg_kg", "sigma_mg_kg", "below_detection_mg_kg"].map(|part| format!("{element}_{part}"))
}

/// Gives the cells of one element of one reading, under [`element_columns`].
///
/// # Errors
/// Those of the sink.
pub fn element_cells(
    source: &Source,
    reviewer: &SourceReview<'_>,
    element: Element,
    row: usize,
    cells: &mut impl Cells,
) -> io::Result<()> {
    let cell = source.readings.cell(element, row);
    let sigma = reviewer.printed_sigma(element, &cell, row).map(Sigma::to_mass_fraction);
    let is = |state| (cell.state == state).then_some(cell.value);
    cells.code(cell.state.code())?;
    cells.amount(is(CellState::Number))?;
    cells.amount(sigma)?;
    cells.amount(is(CellState::BelowDetection).or(cell.detection_limit))
}

struct Csv<W: Write>(csv::Writer<W>);

impl<W: Write> Cells for Csv<W> {
    fn text(&mut self, text: &str) -> io::Result<()> {
        Ok(self.0.write_field(guarded(text))?)
    }
    fn code(&mut self, code: &'static str) -> io::Result<()> {
        Ok(self.0.write_field(code)?)
    }
    fn moment(&mut self, text: &str) -> io::Result<()> {
        self.text(text)
    }
    fn count(&mut self, count: u64) -> io::Result<()> {
        Ok(self.0.write_field(count.to_string())?)
    }
    fn amount(&mut self, amount: Option<MassFraction>) -> io::Result<()> {
        Ok(self.0.write_field(amount.map(|amount| amount.to_string()).unwrap_or_default())?)
    }
    fn end_row(&mut self) -> io::Result<bool> {
        self.0.write_record(None::<&[u8]>)?;
        Ok(true)
    }
}

/// Writes one row a reading.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma; a missing number is an empty cell.
///
/// # Errors
/// Those of the sink.
pub fn write(inspection: &Inspection, findings: &Findings, sink: &mut dyn Write) -> io::Result<()> {
    let mut writer = Csv(csv::WriterBuilder::new().terminator(csv::Terminator::CRLF).from_writer(sink));
    writer.0.write_record(columns())?;
    rows(inspection, findings, &mut writer)?;
    writer.0.flush()
}

/// What a formula begins with; the wide forms are the same signs to a spreadsheet set up for Chinese or Japanese.
const FORMULA_SIGNS: [char; 8] = ['=', '+', '-', '@', '＝', '＋', '－', '＠'];

/// A text that a spreadsheet would take for a formula, made harmless.
pub fn guarded(text: &str) -> String {
    let risky = text.trim_start().starts_with(FORMULA_SIGNS) || text.starts_with(['\t', '\r', '\n']);
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
        assert_eq!(guarded("＝1+1"), "'＝1+1");
        assert_eq!(guarded("\t=1"), "'\t=1");
    }
}
