//! XLSX: ECMA-376 part 1 (`SpreadsheetML`), part 2 (packages).

use std::collections::BTreeMap;
use std::io::{BufRead, BufReader};

use crate::unpacking::{Bound, Directory, Refusal, Unpacked};

use super::cell_text::{self, Clock};
use super::number_format::NumberFormat;
use super::sheet_text::SheetText;
use super::xml::{Piece, Xml};
use super::{
    LARGEST_PART, LARGEST_SMALL_PART, MOST_CELLS, MOST_COLUMNS, MOST_ROWS, Sheet, Sink, Stop,
    WorkbookProblem, Written,
};

type PartXml<'z> = Xml<BufReader<Unpacked<'z>>>;

/// A workbook with its sheets still packed.
pub(super) struct Xlsx<'a> {
    zip: Directory<'a>,
    /// Where in the directory each listed sheet stands.
    sheet_parts: Vec<Option<usize>>,
    strings: Strings,
    /// By the style number of a cell.
    formats: Vec<NumberFormat>,
    clock: Clock,
}

impl<'a> Xlsx<'a> {
    pub(super) fn open(zip: Directory<'a>) -> Result<(Vec<Sheet>, Xlsx<'a>), WorkbookProblem> {
        let root = Relations::read(&zip, "")?;
        let main = root.target_of("officeDocument").unwrap_or("xl/workbook.xml").to_owned();
        if is_binary(&main) || zip.find(&main).is_none() && zip.find("xl/workbook.bin").is_some() {
            return Err(WorkbookProblem::OldFormat);
        }
        let relations = Relations::read(&zip, &main)?;
        let listed = read_list(&zip, zip.find(&main).ok_or(WorkbookProblem::Broken)?)?;
        let mut sheets = Vec::new();
        let mut sheet_parts = Vec::new();
        for (sheet, relation) in listed.sheets {
            let Some((kind, target)) = relations.by_id.get(&relation) else {
                return Err(WorkbookProblem::Broken);
            };
            // A chart or a dialogue is a sheet of its own kind, without cells.
            if kind == "worksheet" {
                sheets.push(sheet);
                sheet_parts.push(zip.find(target));
            }
        }
        let strings = match relations.target_of("sharedStrings").and_then(|target| zip.find(target)) {
            Some(index) => read_strings(&zip, index)?,
            None => Strings::default(),
        };
        let formats = match relations.target_of("styles").and_then(|target| zip.find(target)) {
            Some(index) => read_formats(&zip, index)?,
            None => Vec::new(),
        };
        Ok((sheets, Xlsx { zip, sheet_parts, strings, formats, clock: listed.clock }))
    }

    pub(super) fn write_sheet(
        &mut self,
        index: usize,
        sink: &mut Sink<'_>,
    ) -> Result<Written, WorkbookProblem> {
        let part = self.sheet_parts.get(index).copied().flatten().ok_or(WorkbookProblem::Broken)?;
        let mut xml = open_part(&self.zip, part, LARGEST_PART)?;
        let cells = Cells { strings: &self.strings, formats: &self.formats, clock: self.clock };
        let mut text = SheetText::new(sink);
        let mut outcome = write_rows(&mut xml, &cells, &mut text);
        if outcome.is_ok() {
            outcome = xml.drain().map_err(Stop::from);
        }
        text.finish(outcome)
    }
}

fn is_binary(name: &str) -> bool {
    name.len() > 4 && name.as_bytes().iter().rev().zip(b"nib.").all(|(a, b)| a.eq_ignore_ascii_case(b))
}

fn open_part<'z>(zip: &'z Directory<'_>, index: usize, largest: u64) -> Result<PartXml<'z>, Refusal> {
    Ok(Xml::new(BufReader::new(zip.unpack(index, Bound::of(largest))?)))
}

/// What a part says of the parts that belong to it.
#[derive(Default)]
struct Relations {
    /// Kind (the last word of its type, the same in strict and transitional files) and target, by id.
    by_id: BTreeMap<String, (String, String)>,
}

impl Relations {
    /// The relations of a part, or of the whole package; none where nothing is said.
    fn read(zip: &Directory<'_>, of: &str) -> Result<Relations, WorkbookProblem> {
        let (folder, name) = of.rsplit_once('/').map_or(("", of), |(folder, name)| (folder, name));
        let path = format!("{folder}{}_rels/{name}.rels", if folder.is_empty() { "" } else { "/" });
        let mut relations = Relations::default();
        let Some(index) = zip.find(&path) else { return Ok(relations) };
        let mut xml = open_part(zip, index, LARGEST_SMALL_PART)?;
        loop {
            match xml.next()? {
                Piece::Open if xml.name() == "Relationship" => {
                    let kind = xml.attribute("Type").unwrap_or_default();
                    let kind = kind.rsplit('/').next().unwrap_or_default().to_owned();
                    let id = xml.attribute_text("Id")?.unwrap_or_default();
                    let target = resolve(folder, &xml.attribute_text("Target")?.unwrap_or_default());
                    relations.by_id.insert(id, (kind, target));
                }
                Piece::End => return Ok(relations),
                _ => {}
            }
        }
    }

    fn target_of(&self, wanted: &str) -> Option<&str> {
        self.by_id.values().find(|(kind, _)| kind == wanted).map(|(_, target)| target.as_str())
    }
}

/// A target as a name in the package: from the root, or from the folder of the part that names it.
fn resolve(folder: &str, target: &str) -> String {
    let mut parts: Vec<&str> =
        if target.starts_with(['/', '\\']) { Vec::new() } else { folder.split('/').collect() };
    for part in target.split(['/', '\\']) {
        match part {
            "" | "." => {}
            ".." => {
                parts.pop();
            }
            _ => parts.push(part),
        }
    }
    parts.retain(|part| !part.is_empty());
    parts.join("/")
}

struct Listed {
    /// Sheets with the ids of their relations.
    sheets: Vec<(Sheet, String)>,
    clock: Clock,
}

fn read_list(zip: &Directory<'_>, index: usize) -> Result<Listed, WorkbookProblem> {
    let mut xml = open_part(zip, index, LARGEST_SMALL_PART)?;
    let mut listed = Listed { sheets: Vec::new(), clock: Clock::From1900 };
    let mut in_workbook = false;
    loop {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "workbook" => in_workbook = true,
                "workbookPr" => {
                    if matches!(xml.attribute("date1904"), Some("1" | "true" | "on")) {
                        listed.clock = Clock::From1904;
                    }
                }
                "sheet" => {
                    let name = xml.attribute_text("name")?.unwrap_or_default();
                    let hidden = matches!(xml.attribute("state"), Some("hidden" | "veryHidden"));
                    let relation = xml.attribute_of_any_prefix("id").unwrap_or_default().to_owned();
                    listed.sheets.push((Sheet { name, hidden }, relation));
                }
                // Extensions repeat names of the standard's own elements.
                "extLst" => xml.skip()?,
                _ => {}
            },
            Piece::Close if xml.name() == "workbook" => return Ok(listed),
            Piece::End if in_workbook => return Err(WorkbookProblem::Broken),
            Piece::End => return Err(WorkbookProblem::NoSheet),
            _ => {}
        }
    }
}

/// Shared strings end to end: a string each would cost more than most of them hold.
#[derive(Default)]
struct Strings {
    text: String,
    ends: Vec<u32>,
}

impl Strings {
    fn get(&self, index: usize) -> Option<&str> {
        let end = *self.ends.get(index)? as usize;
        let start = if index == 0 { 0 } else { *self.ends.get(index - 1)? as usize };
        self.text.get(start..end)
    }
}

/// The counts that the file states are not looked at: room is made as strings come.
fn read_strings(zip: &Directory<'_>, index: usize) -> Result<Strings, WorkbookProblem> {
    let mut xml = open_part(zip, index, LARGEST_PART)?;
    let mut strings = Strings::default();
    loop {
        match xml.next()? {
            Piece::Open if xml.name() == "si" => {
                append_rich_text(&mut xml, &mut strings.text)?;
                let end = u32::try_from(strings.text.len()).map_err(|_| WorkbookProblem::TooLarge)?;
                strings.ends.push(end);
                if strings.ends.len() as u64 > MOST_CELLS {
                    return Err(WorkbookProblem::TooManyCells);
                }
            }
            Piece::Close if xml.name() == "sst" => {
                xml.drain()?;
                return Ok(strings);
            }
            Piece::End => return Err(WorkbookProblem::Broken),
            _ => {}
        }
    }
}

/// Number formats by style number: `cellXfs` points into `numFmts` or at a built-in format (18.8.10, 18.8.31).
fn read_formats(zip: &Directory<'_>, index: usize) -> Result<Vec<NumberFormat>, WorkbookProblem> {
    let mut xml = open_part(zip, index, LARGEST_SMALL_PART)?;
    let mut codes: BTreeMap<u32, NumberFormat> = BTreeMap::new();
    let mut styles = Vec::new();
    let mut in_cell_styles = false;
    loop {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "numFmt" => {
                    let id = xml.attribute("numFmtId").and_then(|id| id.parse().ok());
                    if let (Some(id), Some(code)) = (id, xml.attribute_text("formatCode")?) {
                        codes.insert(id, NumberFormat::from_code(&code));
                    }
                }
                "cellXfs" => in_cell_styles = true,
                "xf" if in_cell_styles => {
                    styles.push(xml.attribute("numFmtId").and_then(|id| id.parse().ok()).unwrap_or(0));
                }
                // Differential formats name codes of their own under the same numbers.
                "dxfs" | "extLst" => xml.skip()?,
                _ => {}
            },
            Piece::Close if xml.name() == "cellXfs" => in_cell_styles = false,
            Piece::Close if xml.name() == "styleSheet" => break,
            Piece::End => return Err(WorkbookProblem::Broken),
            _ => {}
        }
    }
    let format = |id: &u32| codes.get(id).copied().unwrap_or_else(|| NumberFormat::built_in(*id));
    Ok(styles.iter().map(format).collect())
}

/// What turns a stored cell into text.
struct Cells<'a> {
    strings: &'a Strings,
    formats: &'a [NumberFormat],
    clock: Clock,
}

/// The `t` of a cell (18.18.11).
#[derive(Clone, Copy, PartialEq, Eq)]
enum CellType {
    Number,
    Shared,
    Truth,
    Date,
    Text,
    /// Errors: their text, also those that this program has never heard of.
    Error,
}

fn write_rows<R: BufRead>(
    xml: &mut Xml<R>,
    cells: &Cells<'_>,
    text: &mut SheetText<'_, '_>,
) -> Result<(), Stop> {
    let mut scratch = Scratch::default();
    // Rows and cells may leave out where they stand; then each follows the one before (18.3.1.4, 18.3.1.73).
    let mut next_row = 0;
    let mut in_data = false;
    loop {
        match xml.next()? {
            Piece::Open if in_data && xml.name() == "row" => {
                let row = match xml.attribute("r") {
                    Some(stated) => stated
                        .parse::<u32>()
                        .ok()
                        .and_then(|row| row.checked_sub(1))
                        .ok_or(WorkbookProblem::Broken)?,
                    None => next_row,
                };
                write_row(xml, cells, row, &mut scratch, text)?;
                next_row = row.saturating_add(1);
            }
            // What the sheet states of its size is not looked at; it need not be true.
            Piece::Open if xml.name() == "sheetData" => in_data = true,
            Piece::Close if xml.name() == "sheetData" => return Ok(()),
            Piece::End => return Err(WorkbookProblem::Broken.into()),
            _ => {}
        }
    }
}

/// Texts used again for every cell.
#[derive(Default)]
struct Scratch {
    stored: String,
    shown: String,
}

fn write_row<R: BufRead>(
    xml: &mut Xml<R>,
    cells: &Cells<'_>,
    row: u32,
    scratch: &mut Scratch,
    text: &mut SheetText<'_, '_>,
) -> Result<(), Stop> {
    if row >= MOST_ROWS {
        return Err(WorkbookProblem::TooManyCells.into());
    }
    let mut next_column = 0;
    loop {
        match xml.next()? {
            Piece::Open if xml.name() == "c" => {
                let column = match xml.attribute("r") {
                    Some(stated) => column_of(stated).ok_or(WorkbookProblem::Broken)?,
                    None => next_column,
                };
                next_column = column.saturating_add(1);
                read_cell(xml, cells, scratch)?;
                if !scratch.shown.is_empty() {
                    text.go_to_row(row)?;
                    text.put(column, &scratch.shown)?;
                }
            }
            Piece::Open => xml.skip()?,
            Piece::Close => return Ok(()),
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken.into()),
        }
    }
}

/// The column of `XFD12`, counted from zero. The row it names is that of the row it stands in.
fn column_of(stated: &str) -> Option<u32> {
    let mut column = 0_u32;
    for letter in stated.bytes().take_while(u8::is_ascii_alphabetic) {
        column = column * 26 + u32::from(letter.to_ascii_uppercase() - b'A') + 1;
        if column > MOST_COLUMNS {
            // Beyond the last column, however far.
            return Some(MOST_COLUMNS);
        }
    }
    column.checked_sub(1)
}

/// Reads the cell that just began and leaves what it shows in `scratch.shown`.
fn read_cell<R: BufRead>(
    xml: &mut Xml<R>,
    cells: &Cells<'_>,
    scratch: &mut Scratch,
) -> Result<(), WorkbookProblem> {
    let cell_type = match xml.attribute("t") {
        None | Some("n") => CellType::Number,
        Some("s") => CellType::Shared,
        Some("b") => CellType::Truth,
        Some("d") => CellType::Date,
        Some("e") => CellType::Error,
        Some(_) => CellType::Text,
    };
    let format = xml
        .attribute("s")
        .and_then(|style| style.parse::<usize>().ok())
        .and_then(|style| cells.formats.get(style))
        .copied()
        .unwrap_or(NumberFormat::GENERAL);
    scratch.stored.clear();
    scratch.shown.clear();
    loop {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "v" => xml.append_text(&mut scratch.stored)?,
                "is" => append_rich_text(xml, &mut scratch.shown)?,
                // A formula's own text, and extensions.
                _ => xml.skip()?,
            },
            Piece::Close => break,
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken),
        }
    }
    if scratch.stored.is_empty() || !scratch.shown.is_empty() {
        return Ok(());
    }
    let (stored, shown) = (scratch.stored.as_str(), &mut scratch.shown);
    match cell_type {
        CellType::Number => match cell_text::parse_number(stored) {
            Some(number) => format.write(number, cells.clock, shown),
            None => shown.push_str(stored),
        },
        CellType::Shared => {
            let string = stored.trim_ascii().parse().ok().and_then(|index| cells.strings.get(index));
            shown.push_str(string.ok_or(WorkbookProblem::Broken)?);
        }
        CellType::Truth => shown.push_str(match stored.trim_ascii() {
            "1" | "true" => "TRUE",
            "0" | "false" => "FALSE",
            other => other,
        }),
        CellType::Date => shown.push_str(cell_text::without_midnight(stored)),
        CellType::Text => append_unescaped(stored, shown),
        CellType::Error => shown.push_str(stored),
    }
    Ok(())
}

/// Appends the text of a string that may be in runs, without what only says how it is spoken (18.4.6, 18.4.8).
fn append_rich_text<R: BufRead>(xml: &mut Xml<R>, into: &mut String) -> Result<(), WorkbookProblem> {
    let mut depth = 1_u64;
    let mut run = String::new();
    while depth > 0 {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "t" => {
                    let keeps_spaces = xml.attribute("xml:space") == Some("preserve");
                    run.clear();
                    xml.append_text(&mut run)?;
                    append_unescaped(if keeps_spaces { &run } else { run.trim_ascii() }, into);
                }
                "rPh" => xml.skip()?,
                _ => depth += 1,
            },
            Piece::Close => depth -= 1,
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken),
        }
    }
    Ok(())
}

/// Appends a text in which letters that XML cannot hold are written `_x000D_` (`ST_Xstring`, 22.9.2.19).
fn append_unescaped(text: &str, into: &mut String) {
    let mut rest = text;
    let mut units: Vec<u16> = Vec::new();
    while let Some(at) = rest.find("_x") {
        let (before, from) = rest.split_at(at);
        if !before.is_empty() {
            flush_units(&mut units, into);
            into.push_str(before);
        }
        if let Some(unit) = escaped_unit(from) {
            units.push(unit);
            rest = from.get(7..).unwrap_or_default();
        } else {
            flush_units(&mut units, into);
            into.push_str("_x");
            rest = from.get(2..).unwrap_or_default();
        }
    }
    flush_units(&mut units, into);
    into.push_str(rest);
}

fn flush_units(units: &mut Vec<u16>, into: &mut String) {
    into.extend(
        char::decode_utf16(units.drain(..)).map(|letter| letter.unwrap_or(char::REPLACEMENT_CHARACTER)),
    );
}

fn escaped_unit(text: &str) -> Option<u16> {
    let digits = text.get(2..6).filter(|digits| digits.bytes().all(|digit| digit.is_ascii_hexdigit()))?;
    (text.as_bytes().get(6) == Some(&b'_')).then(|| u16::from_str_radix(digits, 16).ok()).flatten()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn columns_are_read_from_letters_and_stay_in_bounds() {
        assert_eq!(column_of("A1"), Some(0));
        assert_eq!(column_of("z9"), Some(25));
        assert_eq!(column_of("AA10"), Some(26));
        assert_eq!(column_of("XFD1048576"), Some(16_383));
        assert_eq!(column_of("XFE1"), Some(MOST_COLUMNS));
        assert_eq!(column_of("AAAAAAAAAAAAAAAA1"), Some(MOST_COLUMNS));
        assert_eq!(column_of("12"), None);
    }

    #[test]
    fn escaped_letters_are_read_and_other_underlines_are_left() {
        let read = |text: &str| {
            let mut into = String::new();
            append_unescaped(text, &mut into);
            into
        };
        assert_eq!(read("a_x0041_b"), "aAb");
        assert_eq!(read("_x005F_x0041_"), "_x0041_");
        assert_eq!(read("_xD83D__xDE00_"), "\u{1F600}");
        assert_eq!(read("Pb_x_ppm _x12"), "Pb_x_ppm _x12");
        assert_eq!(read("_xD83D_"), "\u{FFFD}");
        assert_eq!(read("_xé00_é"), "_xé00_é");
    }

    #[test]
    fn targets_are_resolved_from_their_part_or_from_the_root() {
        assert_eq!(resolve("xl", "worksheets/sheet1.xml"), "xl/worksheets/sheet1.xml");
        assert_eq!(resolve("xl", "/xl/worksheets/sheet1.xml"), "xl/worksheets/sheet1.xml");
        assert_eq!(resolve("xl", "../data/a.xml"), "data/a.xml");
        assert_eq!(resolve("", "xl/workbook.xml"), "xl/workbook.xml");
        assert_eq!(resolve("", "../../a"), "a");
    }
}
