//! Readings a person picked out, as text between tabs to put into a spreadsheet: the columns of `findings.csv` that belong to
//! what the table showed, under the same heads.

use std::io::{self, Write};

use crate::inspection::{Findings, Inspection};
use crate::judging::SourceReview;
use crate::quantity::MassFraction;
use crate::report::csv::{self, Cells, guarded};
use crate::substance::{Element, Halogen, Substance};

/// An element shown beside those that are judged has this in front of its symbol.
const OTHER: &str = "element-";

/// Which columns of `findings.csv` belong to a column of the table.
fn belonging(column: &str) -> Vec<String> {
    let named = |names: &[&str]| names.iter().map(|name| (*name).to_owned()).collect();
    let judged = |element: Element, prefix: &str| {
        let mut names = csv::element_columns(element).to_vec();
        names.extend(["outcome", "reason"].map(|part| format!("{prefix}_{part}")));
        names
    };
    match column {
        "id" => named(&["id", "unit", "spot"]),
        "part" => named(&["part", "material", "material_disposition"]),
        "lot" => named(&["lot", "supplier", "lot_disposition"]),
        "class" => named(&["class", "class_from"]),
        "file" => named(&["source", "line"]),
        "trust" => named(&["check", "set_aside", "trust"]),
        "halogen-total" => named(&[
            "halogen_total_low_mg_kg",
            "halogen_total_high_mg_kg",
            "halogen_total_sigma_mg_kg",
            "halogen_total_outcome",
            "halogen_total_reason",
        ]),
        _ => {
            let halogen = column.strip_prefix("halogen-");
            if let Some(halogen) = Halogen::ALL.iter().find(|one| Some(one.name()) == halogen) {
                let element = if *halogen == Halogen::Cl { Element::CL } else { Element::BR };
                return judged(element, &format!("halogen_{}", halogen.name()));
            }
            match Substance::from_symbol(column) {
                Some(substance) => judged(substance.element(), substance.symbol()),
                None => {
                    other(column).map(|element| csv::element_columns(element).to_vec()).unwrap_or_default()
                }
            }
        }
    }
}

fn other(column: &str) -> Option<Element> {
    column.strip_prefix(OTHER).and_then(Element::from_symbol)
}

/// The cells of one row, of which only some are wanted.
#[derive(Default)]
struct Gathered {
    texts: String,
    ends: Vec<usize>,
}

impl Gathered {
    fn end(&mut self) {
        self.ends.push(self.texts.len());
    }

    fn get(&self, at: usize) -> &str {
        let from = at.checked_sub(1).and_then(|before| self.ends.get(before)).copied().unwrap_or(0);
        self.ends.get(at).and_then(|to| self.texts.get(from..*to)).unwrap_or("")
    }
}

impl Cells for Gathered {
    fn text(&mut self, text: &str) -> io::Result<()> {
        self.texts.push_str(&guarded(text));
        self.end();
        Ok(())
    }
    fn code(&mut self, code: &'static str) -> io::Result<()> {
        self.texts.push_str(code);
        self.end();
        Ok(())
    }
    fn moment(&mut self, text: &str) -> io::Result<()> {
        self.text(text)
    }
    fn count(&mut self, count: u64) -> io::Result<()> {
        self.texts.push_str(&count.to_string());
        self.end();
        Ok(())
    }
    fn amount(&mut self, amount: Option<MassFraction>) -> io::Result<()> {
        if let Some(amount) = amount {
            self.texts.push_str(&amount.to_string());
        }
        self.end();
        Ok(())
    }
    fn end_row(&mut self) -> io::Result<bool> {
        Ok(true)
    }
}

/// Writes these readings, in this order. `columns` are columns of the table: `id`, `part` (with its material), `lot` (with its
/// supplier), `class`, `file` (with its line), `trust`, a substance, `halogen-Cl`, `halogen-Br`, `halogen-total`, or `element-` and the
/// symbol of any other element. Each brings the columns of `findings.csv` that belong to it, once. With `heads`, their names come first: a
/// long selection is written piece by piece. Cells are divided by tabs and rows by CRLF; a cell that holds one of them stands in
/// quotation marks.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma; a missing number is an empty cell.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    findings: &Findings,
    readings: &[u32],
    columns: &[String],
    heads: bool,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let settings = inspection.settings();
    let mut all = csv::columns();
    let others: Vec<Element> = columns.iter().filter_map(|column| other(column)).collect();
    for element in &others {
        all.extend(csv::element_columns(*element));
    }
    let mut wanted: Vec<usize> = Vec::new();
    for name in columns.iter().flat_map(|column| belonging(column)) {
        if let Some(at) = all.iter().position(|one| *one == name)
            && !wanted.contains(&at)
        {
            wanted.push(at);
        }
    }
    let material_of = csv::materials_of(findings);
    let mut out =
        ::csv::WriterBuilder::new().delimiter(b'\t').terminator(::csv::Terminator::CRLF).from_writer(sink);
    if heads {
        out.write_record(wanted.iter().filter_map(|at| all.get(*at)))?;
    }
    let mut reviewers: Vec<Option<SourceReview<'_>>> = inspection.sources.iter().map(|_| None).collect();
    let mut gathered = Gathered::default();
    for reading in readings {
        let index = *reading as usize;
        let Some((at, row)) = findings.place(index) else { continue };
        let (Some(source), Some(slot)) = (inspection.sources.get(at), reviewers.get_mut(at)) else {
            continue;
        };
        let reviewer = slot.get_or_insert_with(|| SourceReview::new(source, &inspection.books, &settings));
        let material = material_of.get(index).and_then(|at| findings.materials.get(*at as usize));
        let lot = material.and_then(|material| findings.lots.get(material.lot));
        let came = (material.map(|one| one.disposition), lot.map(|one| one.disposition));
        gathered.texts.clear();
        gathered.ends.clear();
        csv::one_row(source, reviewer, findings, (index, row), came, &mut gathered)?;
        for element in &others {
            csv::element_cells(source, reviewer, *element, row, &mut gathered)?;
        }
        out.write_record(wanted.iter().map(|at| gathered.get(*at)))?;
    }
    out.flush()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::inspection::review;
    use crate::reading::{Cell, CellState, Identity, Source, Written};

    fn inspection() -> Inspection {
        let mut inspection = Inspection::new().unwrap();
        let mut source = Source { name: "one.csv".into(), ..Source::default() };
        for (line, (id, lead)) in [("=S1", 20), ("a\tb", 640), ("\"q", 1500)].into_iter().enumerate() {
            let readings = &mut source.readings;
            readings.begin(line as u32 + 2);
            readings.set_identity(Identity::Id, id);
            readings.set_identity(Identity::Part, "P1");
            for element in [Element::PB, Element::from_symbol("As").unwrap()] {
                let at = readings.element_index(element);
                let value = MassFraction::from_mg_per_kg(lead);
                let cell = Cell { state: CellState::Number, value, ..Cell::NO_COLUMN };
                readings.push_cell(at, cell, Written::Nothing);
            }
            readings.close();
        }
        inspection.add_source(source);
        inspection
    }

    fn text(readings: &[u32], columns: &[&str], heads: bool) -> String {
        let inspection = inspection();
        let findings = review(&inspection);
        let columns: Vec<String> = columns.iter().map(|one| (*one).to_owned()).collect();
        let mut out = Vec::new();
        write(&inspection, &findings, readings, &columns, heads, &mut out).unwrap();
        String::from_utf8(out).unwrap()
    }

    #[test]
    fn the_columns_of_a_column_come_once_in_the_order_of_the_table_with_their_units() {
        let written = text(&[2, 0], &["part", "Br", "halogen-Br", "element-As", "nothing"], true);
        let heads: Vec<&str> = written.lines().next().unwrap().split('\t').collect();
        assert_eq!(&heads[..3], ["part", "material", "material_disposition"]);
        assert_eq!(heads.iter().filter(|head| **head == "Br_value_mg_kg").count(), 1);
        assert!(heads.contains(&"halogen_Br_outcome") && heads.contains(&"As_value_mg_kg"));
        let last: Vec<&str> = written.lines().nth(1).unwrap().split('\t').collect();
        assert_eq!(last.len(), heads.len());
        assert_eq!(last[heads.iter().position(|head| *head == "As_value_mg_kg").unwrap()], "1500");
    }

    #[test]
    fn a_cell_that_a_spreadsheet_would_run_or_split_is_made_harmless() {
        let written = text(&[0, 1, 2, 99], &["id"], false);
        assert_eq!(written, "'=S1\t\t\r\n\"a\tb\"\t\t\r\n\"\"\"q\"\t\t\r\n");
    }

    #[test]
    fn what_is_copied_is_what_the_file_of_findings_says() {
        let columns = ["file", "id", "part", "lot", "class", "trust", "Cd", "Pb", "Hg", "Cr", "Br"];
        let columns = [&columns[..], &["halogen-Cl", "halogen-Br", "halogen-total"]].concat();
        let copied = text(&[1], &columns, true);
        let inspection = inspection();
        let findings = review(&inspection);
        let mut file = Vec::new();
        csv::write(&inspection, &findings, &mut file).unwrap();
        let mut file = ::csv::Reader::from_reader(file.as_slice());
        let heads = file.headers().unwrap().clone();
        let row = file.records().nth(1).unwrap().unwrap();
        let mut own = ::csv::ReaderBuilder::new().delimiter(b'\t').from_reader(copied.as_bytes());
        let own_heads = own.headers().unwrap().clone();
        let own_row = own.records().next().unwrap().unwrap();
        assert!(own_heads.len() > 45);
        for (head, cell) in own_heads.iter().zip(&own_row) {
            let at = heads.iter().position(|one| one == head).expect(head);
            assert_eq!(cell, &row[at], "{head}");
        }
    }
}
