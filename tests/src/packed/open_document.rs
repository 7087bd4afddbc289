//! The smallest open document of sheets (OASIS Open Document Format 1.3, parts 2 and 3).

use std::fmt::Write;

use super::zip::{Entry, archive};
use super::{Sheet, SheetCell, escaped};

/// The bytes of a spreadsheet.
pub fn spreadsheet(sheets: &[Sheet]) -> Vec<u8> {
    let mut tables = String::new();
    for sheet in sheets {
        let _ = write!(tables, r#"<table:table table:name="{}">"#, escaped(&sheet.name));
        for row in &sheet.rows {
            tables += "<table:table-row>";
            for cell in row {
                tables += &self::cell(cell);
            }
            tables += "</table:table-row>";
        }
        tables += "</table:table>";
    }
    of_tables(&tables)
}

/// A spreadsheet of `table:table` elements as they are.
pub fn of_tables(tables: &str) -> Vec<u8> {
    let spaces = r#"xmlns:office="urn:oasis:names:tc:opendocument:xmlns:office:1.0" xmlns:table="urn:oasis:names:tc:opendocument:xmlns:table:1.0" xmlns:text="urn:oasis:names:tc:opendocument:xmlns:text:1.0""#;
    let head = r#"<?xml version="1.0" encoding="UTF-8"?>"#;
    archive(&[
        Entry::stored("mimetype", b"application/vnd.oasis.opendocument.spreadsheet"),
        Entry::deflated(
            "META-INF/manifest.xml",
            format!(
                r#"{head}<manifest:manifest xmlns:manifest="urn:oasis:names:tc:opendocument:xmlns:manifest:1.0" manifest:version="1.3"><manifest:file-entry manifest:full-path="/" manifest:media-type="application/vnd.oasis.opendocument.spreadsheet"/><manifest:file-entry manifest:full-path="content.xml" manifest:media-type="text/xml"/></manifest:manifest>"#
            )
            .as_bytes(),
        ),
        Entry::deflated(
            "content.xml",
            format!(
                r#"{head}<office:document-content {spaces} office:version="1.3"><office:body><office:spreadsheet>{tables}</office:spreadsheet></office:body></office:document-content>"#
            )
            .as_bytes(),
        ),
    ])
}

fn cell(cell: &SheetCell) -> String {
    match cell {
        SheetCell::Text(text) if text.is_empty() => "<table:table-cell/>".to_owned(),
        SheetCell::Text(text) => format!(
            r#"<table:table-cell office:value-type="string"><text:p>{}</text:p></table:table-cell>"#,
            escaped(text)
        ),
        SheetCell::Number(digits) => format!(
            r#"<table:table-cell office:value-type="float" office:value="{digits}"><text:p>{digits}</text:p></table:table-cell>"#
        ),
        SheetCell::Moment(moment) => format!(
            r#"<table:table-cell office:value-type="date" office:date-value="{moment}"><text:p>{moment}</text:p></table:table-cell>"#
        ),
    }
}
