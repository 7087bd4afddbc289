//! The smallest workbook that a spreadsheet program opens (ECMA-376, part 1: workbook, sheets, shared strings, styles).

use std::fmt::Write;

use super::zip::{Entry, archive};
use super::{Sheet, SheetCell, escaped};

/// The bytes of a workbook.
pub fn workbook(sheets: &[Sheet]) -> Vec<u8> {
    archive(&parts(sheets, None))
}

/// The same, with a `dimension` in every sheet that says what it likes.
pub fn workbook_stating(sheets: &[Sheet], dimension: &str) -> Vec<u8> {
    archive(&parts(sheets, Some(dimension)))
}

/// The parts, before they are packed.
pub fn parts(sheets: &[Sheet], dimension: Option<&str>) -> Vec<Entry> {
    let mut strings = Vec::new();
    let bodies: Vec<String> = sheets.iter().map(|sheet| body(sheet, dimension, &mut strings)).collect();
    let (mut types, mut list, mut links) = (String::new(), String::new(), String::new());
    for (at, sheet) in (1..).zip(sheets) {
        let _ = write!(
            types,
            r#"<Override PartName="/xl/worksheets/sheet{at}.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml"/>"#
        );
        let _ = write!(list, r#"<sheet name="{}" sheetId="{at}" r:id="rId{at}"/>"#, escaped(&sheet.name));
        let _ = write!(
            links,
            r#"<Relationship Id="rId{at}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="worksheets/sheet{at}.xml"/>"#
        );
    }
    let head = r#"<?xml version="1.0" encoding="UTF-8" standalone="yes"?>"#;
    let main = r#"xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main""#;
    let next = sheets.len() + 1;
    let shared: String = strings.iter().fold(String::new(), |mut shared, text| {
        let _ = write!(shared, r#"<si><t xml:space="preserve">{}</t></si>"#, escaped(text));
        shared
    });
    let mut parts = vec![
        Entry::deflated(
            "[Content_Types].xml",
            format!(
                r#"{head}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Override PartName="/xl/workbook.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml"/><Override PartName="/xl/sharedStrings.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sharedStrings+xml"/>{types}</Types>"#
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "_rels/.rels",
            format!(
                r#"{head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/officeDocument" Target="xl/workbook.xml"/></Relationships>"#
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "xl/workbook.xml",
            format!(
                r#"{head}<workbook {main} xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"><sheets>{list}</sheets></workbook>"#
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "xl/_rels/workbook.xml.rels",
            format!(
                r#"{head}<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships">{links}<Relationship Id="rId{next}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/styles" Target="styles.xml"/><Relationship Id="rId{}" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/sharedStrings" Target="sharedStrings.xml"/></Relationships>"#,
                next + 1
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "xl/styles.xml",
            format!(
                r#"{head}<styleSheet {main}><numFmts count="1"><numFmt numFmtId="164" formatCode="yyyy\-mm\-dd\ hh:mm:ss"/></numFmts><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0"/><xf numFmtId="164" applyNumberFormat="1"/></cellXfs></styleSheet>"#
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "xl/sharedStrings.xml",
            format!(r#"{head}<sst {main} count="{0}" uniqueCount="{0}">{shared}</sst>"#, strings.len()).as_bytes(),
        ),
    ];
    for (at, body) in (1..).zip(bodies) {
        let name = format!("xl/worksheets/sheet{at}.xml");
        parts.push(Entry::deflated(&name, format!("{head}<worksheet {main}>{body}</worksheet>").as_bytes()));
    }
    parts
}

fn body(sheet: &Sheet, dimension: Option<&str>, strings: &mut Vec<String>) -> String {
    let mut body = String::new();
    if let Some(dimension) = dimension {
        let _ = write!(body, r#"<dimension ref="{dimension}"/>"#);
    }
    body += "<sheetData>";
    for (line, row) in (1..).zip(&sheet.rows) {
        let _ = write!(body, r#"<row r="{line}">"#);
        for (column, cell) in row.iter().enumerate() {
            let place = format!("{}{line}", column_name(column));
            let _ = match cell {
                SheetCell::Text(text) if text.is_empty() => continue,
                SheetCell::Text(text) => {
                    let at = strings.iter().position(|known| known == text).unwrap_or_else(|| {
                        strings.push(text.clone());
                        strings.len() - 1
                    });
                    write!(body, r#"<c r="{place}" t="s"><v>{at}</v></c>"#)
                }
                SheetCell::Number(digits) => write!(body, r#"<c r="{place}"><v>{digits}</v></c>"#),
                SheetCell::Moment(moment) => {
                    write!(body, r#"<c r="{place}" s="1"><v>{}</v></c>"#, serial(moment))
                }
            };
        }
        body += "</row>";
    }
    body + "</sheetData>"
}

/// `A`, `Z`, `AA` ...
fn column_name(column: usize) -> String {
    let (mut left, mut name) = (column + 1, String::new());
    while left > 0 {
        name.insert(0, char::from(b'A' + ((left - 1) % 26) as u8));
        left = (left - 1) / 26;
    }
    name
}

/// Days since the last day of 1899, with the time of day as a fraction (ECMA-376 18.17.4.1, for days after February 1900).
fn serial(moment: &str) -> String {
    let number = |from: usize, to: usize| -> i64 { moment[from..to].parse().expect("an ISO moment") };
    let (year, month, day) = (number(0, 4), number(5, 7), number(8, 10));
    // Days from civil: the years begin in March, so that the leap day is their last.
    let years = if month <= 2 { year - 1 } else { year };
    let of_year = (153 * ((month + 9) % 12) + 2) / 5 + day - 1;
    let days = years * 365 + years / 4 - years / 100 + years / 400 + of_year - 693_899;
    let seconds = number(11, 13) * 3600 + number(14, 16) * 60 + number(17, 19);
    // Fifteen significant digits, as spreadsheet programs store.
    let fraction = format!("{:010}", (seconds * 10_000_000_000 + 43_200) / 86_400);
    format!("{days}.{fraction}")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_moment_is_a_day_and_a_fraction() {
        // ECMA-376 18.17.4.1: 1 January 1900 is day 1, and 29 February 1900 is counted though it never was.
        assert_eq!(serial("1900-03-01T00:00:00"), "61.0000000000");
        assert_eq!(serial("2000-01-01T12:00:00"), "36526.5000000000");
        assert_eq!(
            [column_name(0), column_name(25), column_name(26), column_name(702)],
            ["A", "Z", "AA", "AAA"]
        );
    }
}
