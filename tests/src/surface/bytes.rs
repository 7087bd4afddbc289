//! Rows of cells as the bytes of a file.

use std::collections::BTreeMap;
use std::sync::Mutex;

use super::axes::{Container, Delimiter, Encoding, Form, LineEnd};
use crate::packed::{Sheet, SheetCell, open_document, xlsx, zip};

impl Form {
    /// The file's name and bytes.
    pub fn file(&self) -> (String, Vec<u8>) {
        match self.container {
            Container::Plain => ("table.csv".to_owned(), self.text_file()),
            Container::Zip => {
                let entry = zip::Entry::deflated("stick/table.csv", &self.text_file());
                ("delivery.zip".to_owned(), zip::archive(&[entry]))
            }
            Container::XlsxNumbers | Container::XlsxTexts => {
                ("table.xlsx".to_owned(), xlsx::workbook(&self.sheets()))
            }
            Container::OdsNumbers | Container::OdsTexts => {
                ("table.ods".to_owned(), open_document::spreadsheet(&self.sheets()))
            }
        }
    }

    /// The table's sheet, behind one that only looks nice.
    fn sheets(&self) -> [Sheet; 2] {
        let cover = ["Fernbrook Controls", "Readings of incoming goods", "invented"];
        let cover = cover.map(|line| vec![SheetCell::Text(line.to_owned())]).into();
        [
            Sheet { name: "Cover".to_owned(), rows: cover },
            Sheet { name: "Results".to_owned(), rows: self.rows() },
        ]
    }

    /// The table as text.
    pub fn text(&self) -> String {
        self.text_of(self.texts())
    }

    /// The rows as texts.
    pub fn texts(&self) -> Vec<Vec<String>> {
        let text = |cell| {
            let (SheetCell::Text(cell) | SheetCell::Number(cell) | SheetCell::Moment(cell)) = cell;
            cell
        };
        self.rows().into_iter().map(|row| row.into_iter().map(text).collect()).collect()
    }

    /// Rows as the form writes them.
    pub fn text_of(&self, rows: Vec<Vec<String>>) -> String {
        let delimiter = match self.delimiter {
            Delimiter::Comma => ",",
            Delimiter::Semicolon => ";",
            Delimiter::Tab => "\t",
            Delimiter::Pipe => "|",
        };
        let end = match self.line_end {
            LineEnd::Lf => "\n",
            LineEnd::CrLf => "\r\n",
            LineEnd::Cr => "\r",
        };
        let mut text = String::new();
        for row in rows {
            let cells: Vec<String> = row
                .into_iter()
                .map(|cell| {
                    if cell.contains(delimiter) || cell.contains('"') {
                        format!("\"{}\"", cell.replace('"', "\"\""))
                    } else {
                        cell
                    }
                })
                .collect();
            text += &cells.join(delimiter);
            text += end;
        }
        text
    }

    fn text_file(&self) -> Vec<u8> {
        self.bytes_of(&self.text())
    }

    /// Text in the form's encoding; letters that it doesn't have become question marks.
    pub fn bytes_of(&self, text: &str) -> Vec<u8> {
        encoded(self.encoding, text)
            .unwrap_or_else(|| text.replace(|c: char| !c.is_ascii(), "?").into_bytes())
    }

    /// True where the encoding has every letter of the form.
    pub fn encodes(&self) -> bool {
        self.letters().chars().filter(|letter| !letter.is_ascii()).all(|letter| has(self.encoding, letter))
    }
}

/// True where an encoding has a letter. Asked a million times for the same few, so the answers are kept.
fn has(encoding: Encoding, letter: char) -> bool {
    static KNOWN: Mutex<BTreeMap<(usize, char), bool>> = Mutex::new(BTreeMap::new());
    let mut known = KNOWN.lock().expect("nobody panicked with it");
    *known
        .entry((encoding as usize, letter))
        .or_insert_with(|| encoded(encoding, letter.encode_utf8(&mut [0; 4])).is_some())
}

fn encoded(encoding: Encoding, text: &str) -> Option<Vec<u8>> {
    let utf16 = |mark: bool, bytes: fn(u16) -> [u8; 2]| {
        let mark = mark.then_some(0xFEFF);
        Some(mark.into_iter().chain(text.encode_utf16()).flat_map(bytes).collect())
    };
    let listed = |listed: &'static encoding_rs::Encoding| {
        let (bytes, _, unmappable) = listed.encode(text);
        (!unmappable).then(|| bytes.into_owned())
    };
    match encoding {
        Encoding::Utf8 => Some(text.as_bytes().to_vec()),
        Encoding::Utf8Marked => Some([b"\xEF\xBB\xBF", text.as_bytes()].concat()),
        Encoding::Utf16Le => utf16(false, u16::to_le_bytes),
        Encoding::Utf16LeMarked => utf16(true, u16::to_le_bytes),
        Encoding::Utf16Be => utf16(false, u16::to_be_bytes),
        Encoding::Utf16BeMarked => utf16(true, u16::to_be_bytes),
        Encoding::Windows1252 => listed(encoding_rs::WINDOWS_1252),
        Encoding::ShiftJis => listed(encoding_rs::SHIFT_JIS),
        Encoding::Gb18030 => listed(encoding_rs::GB18030),
        Encoding::Big5 => listed(encoding_rs::BIG5),
        Encoding::EucKr => listed(encoding_rs::EUC_KR),
    }
}
