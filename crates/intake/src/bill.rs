//! A bill of materials as a table: which homogeneous materials a part is made of.
//!
//! Columns are known by the same headings as those of readings: a part, a material, and perhaps a class. Text in any
//! encoding and with any delimiter that readings may have, or the first sheet of a workbook with such headings. Unlike
//! readings, a bill with a problem is not used at all: half a bill would hide a material.

use std::collections::BTreeMap;
use std::ops::ControlFlow;

use plumbline_core::acts::{Act, ActKind, Target, escape, same_name};
use plumbline_core::column::{ColumnMeaning, ColumnRole};
use plumbline_core::identity::Identity;
use plumbline_core::material::MaterialClass;
use plumbline_core::rules::{Problem, ProblemCode};

use crate::container::{self, Container};
use crate::heading;
use crate::records::{Piece, Splitter};
use crate::text_encoding::{self, Decoder, LOOKED_AT};
use crate::workbook::Workbook;

/// Rows that are looked at for the headings.
const HEADER_ROWS: usize = 100;
/// Delimiters that are tried, the likelier first.
const DELIMITERS: [u8; 4] = [b',', b';', b'\t', b'|'];

/// What a bill says beside its materials.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BillNoteCode {
    /// The same material of the same part stands twice; taken once.
    Merged,
    /// A part or material is spelled with other capitals or spaces than before; taken for the same.
    Respelled,
    /// A column that says nothing of parts and materials.
    ColumnIgnored,
}

impl BillNoteCode {
    /// All of them.
    pub const ALL: [BillNoteCode; 3] =
        [BillNoteCode::Merged, BillNoteCode::Respelled, BillNoteCode::ColumnIgnored];

    /// The code used in the catalogue.
    pub const fn code(self) -> &'static str {
        match self {
            BillNoteCode::Merged => "merged",
            BillNoteCode::Respelled => "respelled",
            BillNoteCode::ColumnIgnored => "column_ignored",
        }
    }
}

/// A note with its place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct BillNote {
    /// Line, 1-based.
    pub line: u32,
    /// Column, 1-based.
    pub column: u32,
    /// What it is.
    pub code: BillNoteCode,
    /// The text it is about.
    pub found: String,
}

/// A bill that was read.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Bill {
    /// A bill of materials for each part, in the order of the table, and a class for each material that states one.
    pub acts: Vec<Act>,
    /// What else to know.
    pub notes: Vec<BillNote>,
}

/// Reads a bill of materials.
///
/// # Errors
/// Every problem with its line and column: no headings for part and material, an empty cell under one of them, a class
/// that is none, two classes for one material, or a file that is no table.
pub fn read(name: &str, bytes: &[u8]) -> Result<Bill, Vec<Problem>> {
    let whole = |code, found: &str| vec![Problem { line: 1, column: 1, code, found: found.to_owned() }];
    let texts = match container::look(bytes) {
        Container::Plain => vec![decoded(bytes)],
        Container::Workbook => sheets(bytes).ok_or_else(|| whole(ProblemCode::Malformed, name))?,
        Container::Archive | Container::OtherPacked => return Err(whole(ProblemCode::Malformed, name)),
    };
    let found = texts.iter().find_map(|text| Table::find(text));
    let table = found.ok_or_else(|| whole(ProblemCode::Missing, "Part, Material"))?;
    let mut reading =
        Reading { name, table: &table, parts: Vec::new(), notes: Vec::new(), problems: Vec::new() };
    reading.headings();
    reading.rows();
    if reading.parts.is_empty() && reading.problems.is_empty() {
        reading.problem(table.line, table.part, ProblemCode::Missing, "Part");
    }
    if !reading.problems.is_empty() {
        return Err(reading.problems);
    }
    Ok(reading.close())
}

fn decoded(bytes: &[u8]) -> Vec<u8> {
    let looked = bytes.get(..bytes.len().min(LOOKED_AT)).unwrap_or(bytes);
    let found = text_encoding::find(looked, bytes.len() <= LOOKED_AT, &heading::known_words);
    let mut decoder = Decoder::new(found.encoding);
    let mut text = Vec::with_capacity(bytes.len());
    decoder.push(bytes, &mut |piece| text.extend_from_slice(piece));
    decoder.finish(&mut |piece| text.extend_from_slice(piece));
    text
}

fn sheets(bytes: &[u8]) -> Option<Vec<Vec<u8>>> {
    let mut workbook = Workbook::open(bytes).ok()?;
    let mut texts = Vec::new();
    for at in 0..workbook.sheets().len() {
        let mut text = Vec::new();
        let written = workbook.write_sheet(at, &mut |piece| {
            text.extend_from_slice(piece);
            ControlFlow::Continue(())
        });
        written.ok()?;
        texts.push(text);
    }
    Some(texts)
}

type Row = (u32, Vec<String>);

/// Rows below headings that name a part and a material.
struct Table {
    line: u32,
    columns: Vec<ColumnMeaning>,
    rows: Vec<Row>,
    part: usize,
    material: usize,
    class: Option<usize>,
}

impl Table {
    fn find(text: &[u8]) -> Option<Table> {
        DELIMITERS.iter().find_map(|delimiter| {
            let mut rows = split(text, *delimiter);
            let looked = rows.iter().take(HEADER_ROWS).enumerate();
            let (at, columns, part, material) = looked.into_iter().find_map(|(at, (_, cells))| {
                let columns = heading::meanings(cells);
                let (part, material) =
                    (place_of(&columns, Identity::Part)?, place_of(&columns, Identity::Material)?);
                Some((at, columns, part, material))
            })?;
            let class = place_of(&columns, Identity::Class);
            let line = rows.get(at).map_or(1, |(line, _)| *line);
            let rows = rows.split_off((at + 1).min(rows.len()));
            Some(Table { line, columns, rows, part, material, class })
        })
    }
}

fn place_of(columns: &[ColumnMeaning], identity: Identity) -> Option<usize> {
    columns.iter().position(|column| column.role == ColumnRole::Identity(identity))
}

/// Every row that holds something. A line that cannot be read is an empty row, which is then refused.
fn split(text: &[u8], delimiter: u8) -> Vec<Row> {
    let mut rows: Vec<Row> = Vec::new();
    let mut take = |piece: Piece<'_>| match piece {
        Piece::Record(record) if record.is_blank() => {}
        Piece::Record(record) => {
            let cells = record.cells().map(|cell| String::from_utf8_lossy(cell).trim().to_owned());
            let cells: Vec<String> = cells.collect();
            if cells.iter().any(|cell| !cell.is_empty()) {
                rows.push((record.line, cells));
            }
        }
        Piece::Blank(_) => {}
        Piece::QuoteLeftOpen(line) | Piece::LineTooLong(line) => rows.push((line, Vec::new())),
    };
    let mut splitter = Splitter::new(delimiter);
    splitter.push(text, &mut take);
    splitter.finish(&mut take);
    rows
}

/// A material with its class, where one is stated.
type Listed = (String, Option<MaterialClass>);

struct Reading<'a> {
    name: &'a str,
    table: &'a Table,
    parts: Vec<(String, Vec<Listed>)>,
    notes: Vec<BillNote>,
    problems: Vec<Problem>,
}

impl Reading<'_> {
    fn problem(&mut self, line: u32, column: usize, code: ProblemCode, found: &str) {
        self.problems.push(Problem { line, column: column as u32 + 1, code, found: found.to_owned() });
    }

    fn note(&mut self, line: u32, column: usize, code: BillNoteCode, found: &str) {
        self.notes.push(BillNote { line, column: column as u32 + 1, code, found: found.to_owned() });
    }

    /// A table of readings lists what was measured, and taken for a bill it would say that nothing else is in the part.
    fn headings(&mut self) {
        let table = self.table;
        let columns = || table.columns.iter().enumerate();
        let values = columns().filter(|(_, column)| matches!(column.role, ColumnRole::Value { .. })).count();
        let is_value = |role: &ColumnRole| match role {
            // One alone may be some other word that looks like an element.
            ColumnRole::Value { .. } => values > 1,
            role => matches!(role, ColumnRole::AnyValue { .. }),
        };
        if let Some((at, column)) = columns().find(|(_, column)| is_value(&column.role)) {
            return self.problem(table.line, at, ProblemCode::ReadingsNotBill, &column.heading);
        }
        for (at, column) in table.columns.iter().enumerate() {
            let used = [Some(table.part), Some(table.material), table.class].contains(&Some(at));
            if !used && !column.heading.is_empty() {
                self.note(table.line, at, BillNoteCode::ColumnIgnored, &column.heading);
            }
        }
    }

    fn rows(&mut self) {
        let table = self.table;
        for (line, cells) in &table.rows {
            let cell = |at: usize| cells.get(at).map_or("", String::as_str);
            let heading = |at: usize| table.columns.get(at).map_or("", |column| column.heading.as_str());
            let (part, material) = (cell(table.part), cell(table.material));
            if part == heading(table.part) && material == heading(table.material) {
                continue;
            }
            let mut whole = true;
            for (at, text) in [(table.part, part), (table.material, material)] {
                if text.is_empty() {
                    self.problem(*line, at, ProblemCode::Missing, heading(at));
                    whole = false;
                }
            }
            let said = table.class.map(|at| (at, cell(at))).filter(|(_, word)| !word.is_empty());
            let class = said.and_then(|(_, word)| MaterialClass::from_word(word));
            if let Some((at, word)) = said.filter(|_| class.is_none()) {
                self.problem(*line, at, ProblemCode::UnknownName, word);
            }
            if whole {
                self.material(*line, part, material, class);
            }
        }
    }

    fn material(&mut self, line: u32, part: &str, material: &str, class: Option<MaterialClass>) {
        let (of_part, of_material, of_class) = (self.table.part, self.table.material, self.table.class);
        let place = self.parts.iter().position(|(known, _)| same_name(known, part));
        let place = place.unwrap_or_else(|| {
            self.parts.push((part.to_owned(), Vec::new()));
            self.parts.len() - 1
        });
        let Some((known, materials)) = self.parts.get_mut(place) else { return };
        let respelled = (known != part).then(|| format!("{known} / {part}"));
        let (mut merged, mut contradiction) = (None, false);
        match materials.iter_mut().find(|(known, _)| same_name(known, material)) {
            None => materials.push((material.to_owned(), class)),
            Some((known, of)) => {
                merged = Some(if known == material {
                    (BillNoteCode::Merged, format!("{part}, {material}"))
                } else {
                    (BillNoteCode::Respelled, format!("{known} / {material}"))
                });
                contradiction = of.is_some() && class.is_some() && *of != class;
                *of = of.or(class);
            }
        }
        if let Some(found) = respelled {
            self.note(line, of_part, BillNoteCode::Respelled, &found);
        }
        if let Some((code, found)) = merged {
            self.note(line, of_material, code, &found);
        }
        if contradiction {
            self.problem(line, of_class.unwrap_or(of_material), ProblemCode::Twice, material);
        }
    }

    fn close(self) -> Bill {
        let mut acts = Vec::new();
        let act = |kind, target, value: String| Act {
            kind,
            target,
            value,
            by: String::new(),
            at: String::new(),
            note: self.name.to_owned(),
        };
        let mut classes: BTreeMap<(usize, usize), Act> = BTreeMap::new();
        for (at, (part, materials)) in self.parts.iter().enumerate() {
            let names: Vec<String> = materials.iter().map(|(name, _)| escape(name)).collect();
            acts.push(act(ActKind::BillOfMaterials, Target::Part(part.clone()), names.join("|")));
            for (place, (name, class)) in materials.iter().enumerate() {
                if let Some(class) = class {
                    let target = Target::Material(part.clone(), name.clone());
                    classes.insert((at, place), act(ActKind::Class, target, class.code().to_owned()));
                }
            }
        }
        acts.extend(classes.into_values());
        Bill { acts, notes: self.notes }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn said(bill: &Bill) -> Vec<String> {
        let acts =
            bill.acts.iter().map(|act| format!("{} {} {}", act.kind.code(), act.target.to_text(), act.value));
        let notes = bill
            .notes
            .iter()
            .map(|note| format!("{}:{} {} {}", note.line, note.column, note.code.code(), note.found));
        acts.chain(notes).collect()
    }

    fn refused(text: &str) -> Vec<String> {
        let problems = read("bill.csv", text.as_bytes()).unwrap_err();
        problems
            .iter()
            .map(|one| format!("{}:{} {} {}", one.line, one.column, one.code.code(), one.found))
            .collect()
    }

    #[test]
    fn a_part_is_a_line_for_each_material_and_classes_are_taken_over() {
        let text = "Fernbrook Controls\nPart,Material,Class,Qty,Remark\nP-1,housing,plastic,2,\nP-1,label | old,,1,x\nP-2,pin,metal,1,\n";
        assert_eq!(
            said(&read("bill.csv", text.as_bytes()).unwrap()),
            [
                "bill_of_materials part:P-1 housing|label \\| old",
                "bill_of_materials part:P-2 pin",
                "class material:P-1|housing polymer",
                "class material:P-2|pin metal",
                "2:4 column_ignored Qty",
                "2:5 column_ignored Remark",
            ]
        );
    }

    #[test]
    fn any_delimiter_and_encoding_of_readings_will_do() {
        let plain = read("bill.csv", b"Part,Material\nP-1,Geh\xc3\xa4use\n").unwrap();
        let western = read("bill.csv", b"Part;Material\r\nP-1;Geh\xe4use\r\n").unwrap();
        let wide: Vec<u8> =
            "\u{feff}Part\tMaterial\nP-1\tGehäuse\n".encode_utf16().flat_map(u16::to_le_bytes).collect();
        assert_eq!(plain, western);
        assert_eq!(plain, read("bill.csv", &wide).unwrap());
        assert_eq!(plain.acts[0].value, "Gehäuse");
    }

    #[test]
    fn what_stands_twice_is_taken_once_and_two_spellings_are_one() {
        let text = "Part,Material\nP-1,Pin\nP-1,Pin\np-1,lid\nP-1,pin\n\nPart,Material\nP-1,base  plate\nP-1,Base plate\n";
        assert_eq!(
            said(&read("bill.csv", text.as_bytes()).unwrap()),
            [
                "bill_of_materials part:P-1 Pin|lid|base  plate",
                "3:2 merged P-1, Pin",
                "4:1 respelled P-1 / p-1",
                "5:2 respelled Pin / pin",
                "9:2 respelled base  plate / Base plate",
            ]
        );
    }

    #[test]
    fn a_table_of_readings_is_no_bill() {
        let readings = "Sample,Part,Material,Cd mg/kg,Pb mg/kg\nS1,P-1,pin,5,12\n";
        assert_eq!(refused(readings), ["1:4 readings_not_bill Cd mg/kg"]);
        let long = "Part,Material,Element,Value mg/kg\nP-1,pin,Cd,5\nP-1,pin,Pb,5\n";
        assert_eq!(refused(long), ["1:4 readings_not_bill Value mg/kg"]);
        let a_word_like_an_element = read("bill.csv", b"Part,Material,As\nP-1,pin,moulded\n").unwrap();
        assert_eq!(a_word_like_an_element.acts.len(), 1);
    }

    #[test]
    fn a_bill_with_a_gap_or_a_contradiction_is_refused_with_its_places() {
        assert_eq!(refused("Part,Material\nP-1,\n,pin\n"), ["2:2 missing Material", "3:1 missing Part"]);
        assert_eq!(refused("Part,Material,Class\nP-1,pin,wood\n"), ["2:3 unknown_name wood"]);
        assert_eq!(refused("Part,Material,Class\nP-1,pin,metal\nP-1,pin,plastic\n"), ["3:3 twice pin"]);
        assert_eq!(refused("Part,Quantity\nP-1,4\n"), ["1:1 missing Part, Material"]);
        assert_eq!(refused("Part,Material\n"), ["1:1 missing Part"]);
        assert_eq!(refused(""), ["1:1 missing Part, Material"]);
        assert_eq!(refused("PK\u{3}\u{4}nonsense"), ["1:1 malformed bill.csv"]);
    }
}
