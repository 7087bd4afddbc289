//! `OpenDocument` spreadsheets: OASIS Open Document Format 1.3, part 3.
//!
//! All sheets stand in one part, packed as one stream, so the part is held unpacked (bounded) and each sheet is read
//! from where it begins; otherwise the tenth sheet would cost ten readings.

use crate::container::is_spreadsheet_type;
use crate::unpacking::{Bound, Directory};

use super::cell_text;
use super::sheet_text::SheetText;
use super::xml::{Piece, Xml};
use super::{LARGEST_PART, LARGEST_SMALL_PART, MOST_COLUMNS, Sheet, Sink, Stop, WorkbookProblem, Written};

/// Unpacked bytes of content for each packed one. Cells are wordy here: rows of a running number and twenty equal
/// results were measured at 157 where the writer does not fold equal cells into one, and wider tables pack tighter.
const TIGHTEST_CONTENT: u64 = 500;

/// Spaces that one `text:s` may stand for: as many letters as a cell can hold (common practice, no source).
const MOST_SPACES: usize = 32_767;

/// A workbook with its content unpacked.
pub(super) struct Ods {
    content: Vec<u8>,
    /// Where in the content each listed sheet begins.
    starts: Vec<usize>,
}

impl Ods {
    pub(super) fn open(zip: &Directory<'_>) -> Result<(Vec<Sheet>, Ods), WorkbookProblem> {
        if is_locked(zip)? {
            return Err(WorkbookProblem::Locked);
        }
        let mimetype = zip.find("mimetype").ok_or(WorkbookProblem::Broken)?;
        if !is_spreadsheet_type(&zip.read_whole(mimetype, Bound::of(LARGEST_SMALL_PART))?) {
            return Err(WorkbookProblem::NoSheet);
        }
        let content = zip.find("content.xml").ok_or(WorkbookProblem::Broken)?;
        let content = zip.read_whole(content, Bound { largest: LARGEST_PART, tightest: TIGHTEST_CONTENT })?;
        let (sheets, starts) = list_sheets(&content)?;
        Ok((sheets, Ods { content, starts }))
    }

    pub(super) fn write_sheet(
        &mut self,
        index: usize,
        sink: &mut Sink<'_>,
    ) -> Result<Written, WorkbookProblem> {
        let start = self.starts.get(index).copied().ok_or(WorkbookProblem::Broken)?;
        let mut xml = Xml::new(self.content.get(start..).unwrap_or(&[]));
        let mut text = SheetText::new(sink);
        let outcome = write_table(&mut xml, &mut text);
        text.finish(outcome)
    }
}

/// Part 2, 4.8.3: the manifest gives encryption data for every part that is behind a password.
fn is_locked(zip: &Directory<'_>) -> Result<bool, WorkbookProblem> {
    let Some(index) = zip.find("META-INF/manifest.xml") else { return Ok(false) };
    let manifest = zip.read_whole(index, Bound::of(LARGEST_SMALL_PART))?;
    Ok(memchr::memmem::find(&manifest, b":encryption-data").is_some())
}

/// The tables of the spreadsheet and not those inside of other things (9.1.2, 3.7), with where they begin.
fn list_sheets(content: &[u8]) -> Result<(Vec<Sheet>, Vec<usize>), WorkbookProblem> {
    let mut xml = Xml::new(content);
    let (mut sheets, mut starts) = (Vec::new(), Vec::new());
    let mut hidden_styles: Vec<String> = Vec::new();
    let mut style = String::new();
    let mut in_spreadsheet = false;
    loop {
        let start = xml.position();
        match xml.next()? {
            Piece::Open if in_spreadsheet => {
                if xml.name() == "table" {
                    let name = xml.attribute_text("table:name")?.unwrap_or_default();
                    let style = xml.attribute("table:style-name").unwrap_or_default();
                    let hidden = hidden_styles.iter().any(|known| known == style);
                    sheets.push(Sheet { name, hidden });
                    starts.push(usize::try_from(start).map_err(|_| WorkbookProblem::TooLarge)?);
                }
                xml.skip()?;
            }
            Piece::Open => match xml.name() {
                "spreadsheet" => in_spreadsheet = true,
                "style" => {
                    style.clear();
                    style.push_str(xml.attribute("style:name").unwrap_or_default());
                }
                "table-properties" if xml.attribute("table:display") == Some("false") => {
                    hidden_styles.push(style.clone());
                }
                _ => {}
            },
            Piece::Close if xml.name() == "spreadsheet" => return Ok((sheets, starts)),
            Piece::End => return Err(WorkbookProblem::Broken),
            _ => {}
        }
    }
}

fn write_table(xml: &mut Xml<&[u8]>, text: &mut SheetText<'_, '_>) -> Result<(), Stop> {
    // The table itself, which the list pointed at.
    if xml.next()? != Piece::Open {
        return Err(WorkbookProblem::Broken.into());
    }
    let mut shown = String::new();
    // Groups of rows may stand in each other; they change nothing.
    let mut groups = 0_u64;
    loop {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "table-row" => {
                    let times = repeats(xml.attribute("table:number-rows-repeated"));
                    write_row(xml, &mut shown, text)?;
                    text.end_row(times)?;
                }
                "table-rows" | "table-header-rows" | "table-row-group" => groups += 1,
                _ => xml.skip()?,
            },
            Piece::Close if groups == 0 => return Ok(()),
            Piece::Close => groups -= 1,
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken.into()),
        }
    }
}

/// How many times a row or a cell stands there. A number beyond any sheet is only a large one: empty rows and cells
/// are never made, and filled ones are counted against the bounds before they are.
fn repeats(stated: Option<&str>) -> u32 {
    stated.map_or(1, |number| number.trim_ascii().parse().unwrap_or(u32::MAX)).max(1)
}

fn write_row(xml: &mut Xml<&[u8]>, shown: &mut String, text: &mut SheetText<'_, '_>) -> Result<(), Stop> {
    let mut column = 0_u32;
    loop {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "table-cell" => {
                    let times = repeats(xml.attribute("table:number-columns-repeated"));
                    shown.clear();
                    read_cell(xml, shown)?;
                    if !shown.is_empty() {
                        let end = column.saturating_add(times);
                        if end > MOST_COLUMNS {
                            return Err(WorkbookProblem::TooManyCells.into());
                        }
                        for at in column..end {
                            text.put(at, shown)?;
                        }
                    }
                    column = column.saturating_add(times);
                }
                // Under a merged cell: what stands there is not shown.
                "covered-table-cell" => {
                    column = column.saturating_add(repeats(xml.attribute("table:number-columns-repeated")));
                    xml.skip()?;
                }
                _ => xml.skip()?,
            },
            Piece::Close => return Ok(()),
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken.into()),
        }
    }
}

/// Reads the cell that just began and appends what it shows (19.385 and the values beside it).
fn read_cell(xml: &mut Xml<&[u8]>, shown: &mut String) -> Result<(), WorkbookProblem> {
    // An error keeps a number or a text as its value; only its text says that it is one.
    let is_error = xml.attribute("calcext:value-type") == Some("error");
    let value = if is_error {
        None
    } else {
        let number = || xml.attribute("office:value").and_then(cell_text::parse_number);
        let mut value = String::new();
        match xml.attribute("office:value-type").unwrap_or_default() {
            "float" | "currency" => {
                if let Some(number) = number() {
                    cell_text::write_number(number, 0, &mut value);
                }
            }
            "percentage" => {
                if let Some(number) = number() {
                    cell_text::write_percent(number, &mut value);
                }
            }
            "date" => value.push_str(cell_text::without_midnight(
                xml.attribute("office:date-value").unwrap_or_default(),
            )),
            "time" => {
                let time = xml.attribute("office:time-value").and_then(cell_text::time_from_duration);
                value.push_str(&time.unwrap_or_default());
            }
            "boolean" => value.push_str(match xml.attribute("office:boolean-value") {
                Some("true") => "TRUE",
                Some("false") => "FALSE",
                _ => "",
            }),
            _ => {}
        }
        Some(value).filter(|value| !value.is_empty())
    };
    let string = if is_error { None } else { xml.attribute_text("office:string-value")? };
    let mut text = String::new();
    loop {
        match xml.next()? {
            Piece::Open if xml.name() == "p" || xml.name() == "h" => {
                if !text.is_empty() {
                    text.push('\n');
                }
                append_paragraph(xml, &mut text)?;
            }
            // Notes, drawings and tables that stand in the cell are not what it holds.
            Piece::Open => xml.skip()?,
            Piece::Close => break,
            Piece::Text => {}
            Piece::End => return Err(WorkbookProblem::Broken),
        }
    }
    match value {
        Some(value) => shown.push_str(&value),
        None if text.is_empty() => shown.push_str(&string.unwrap_or_default()),
        None => shown.push_str(&text),
    }
    Ok(())
}

/// Appends a paragraph: white space in the file counts as one space, and more is said by elements (6.1.2, 6.1.3).
fn append_paragraph(xml: &mut Xml<&[u8]>, into: &mut String) -> Result<(), WorkbookProblem> {
    let mut depth = 1_u64;
    while depth > 0 {
        match xml.next()? {
            Piece::Open => match xml.name() {
                "s" => {
                    let count = xml.attribute("text:c").map_or(1, |count| count.parse().unwrap_or(1));
                    into.extend(std::iter::repeat_n(' ', count.min(MOST_SPACES)));
                    xml.skip()?;
                }
                "tab" => {
                    into.push(' ');
                    xml.skip()?;
                }
                "line-break" => {
                    into.push('\n');
                    xml.skip()?;
                }
                // Notes, drawings, and how a word is spoken.
                "annotation" | "note" | "frame" | "ruby-text" => xml.skip()?,
                _ => depth += 1,
            },
            Piece::Close => depth -= 1,
            Piece::Text => {
                for letter in xml.text().chars() {
                    if !matches!(letter, ' ' | '\t' | '\r' | '\n') {
                        into.push(letter);
                    } else if !into.ends_with([' ', '\n']) && !into.is_empty() {
                        into.push(' ');
                    }
                }
            }
            Piece::End => return Err(WorkbookProblem::Broken),
        }
    }
    Ok(())
}
