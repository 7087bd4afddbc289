//! Changes to a file: bytes, lines, cells, words, encodings, parts of a package.

use super::input::Input;
use super::tokens::XML;
use crate::chance::Chance;
use crate::packed::{Sheet, SheetCell, open_document, xlsx};

/// Longest file that changes make; longer ones are cut.
const LONGEST: usize = 1 << 20;

/// A file made of others by some changes.
pub fn changed(seeds: &[Input], words: &[String], chance: &mut Chance) -> Input {
    let mut input = chance.pick(seeds).clone();
    if chance.once_in(40) {
        input = as_package(&mut input, chance);
    }
    for _ in 0..=chance.below(5) {
        let part = match &mut input {
            Input::Plain(bytes) => bytes,
            Input::Package(parts) if chance.once_in(3) => {
                let at = chance.below(parts.len());
                &mut parts[at].1
            }
            package @ Input::Package(_) => package.largest_part(),
        };
        let package = part.starts_with(b"<?xml");
        change(part, package, seeds, words, chance);
        part.truncate(LONGEST);
    }
    if chance.once_in(30) {
        // The packed bytes themselves.
        let mut bytes = input.bytes();
        change_bytes(&mut bytes, chance);
        input = Input::Plain(bytes);
    }
    input
}

fn change(bytes: &mut Vec<u8>, package: bool, seeds: &[Input], words: &[String], chance: &mut Chance) {
    match chance.below(12) {
        0 => change_bytes(bytes, chance),
        1 => {
            let at = chance.below(bytes.len() + 1);
            bytes.truncate(at);
        }
        2 => splice(bytes, chance.pick(seeds).clone().largest_part(), chance),
        3 | 4 => change_lines(bytes, chance),
        5 => re_encode(bytes, chance),
        6 if chance.once_in(20) => repeat(bytes, chance),
        _ if package => {
            let word = if chance.once_in(3) { chance.pick(words).as_str() } else { chance.pick(&XML) };
            insert_at_bracket(bytes, word.as_bytes(), chance);
        }
        _ => change_cells(bytes, words, chance),
    }
}

fn range(length: usize, most: usize, chance: &mut Chance) -> std::ops::Range<usize> {
    let from = chance.below(length + 1);
    let to = (from + chance.below(most)).min(length);
    from..to
}

fn change_bytes(bytes: &mut Vec<u8>, chance: &mut Chance) {
    match chance.below(5) {
        0 if !bytes.is_empty() => {
            let at = chance.below(bytes.len());
            bytes[at] ^= 1 << chance.below(8);
        }
        1 if !bytes.is_empty() => {
            let at = chance.below(bytes.len());
            bytes[at] =
                *chance.pick(&[0, b'"', b'\n', b'\r', b',', b';', b'\t', b'|', 0x81, 0xFF, 0xFE, 0xA0]);
        }
        2 => drop(bytes.drain(range(bytes.len(), 40, chance))),
        3 => {
            let piece = bytes[range(bytes.len(), 200, chance)].to_vec();
            let at = chance.below(bytes.len() + 1);
            bytes.splice(at..at, piece);
        }
        _ => {
            let at = chance.below(bytes.len() + 1);
            let piece: Vec<u8> = (0..chance.below(6)).map(|_| chance.bits() as u8).collect();
            bytes.splice(at..at, piece);
        }
    }
}

fn splice(bytes: &mut Vec<u8>, other: &[u8], chance: &mut Chance) {
    let piece = &other[range(other.len(), other.len() + 1, chance)];
    let at = range(bytes.len(), bytes.len() / 2 + 1, chance);
    bytes.splice(at, piece.iter().copied());
}

fn repeat(bytes: &mut Vec<u8>, chance: &mut Chance) {
    let piece = bytes[range(bytes.len(), 4_000, chance)].to_vec();
    if piece.is_empty() {
        return;
    }
    let at = chance.below(bytes.len() + 1);
    // Past what is looked at before a table is known.
    let times = (chance.below(400_000) / piece.len()).max(1);
    bytes.splice(at..at, piece.repeat(times));
}

fn lines(bytes: &[u8]) -> Vec<Vec<u8>> {
    bytes.split_inclusive(|byte| *byte == b'\n' || *byte == b'\r').map(<[u8]>::to_vec).collect()
}

fn change_lines(bytes: &mut Vec<u8>, chance: &mut Chance) {
    let mut lines = lines(bytes);
    if lines.is_empty() {
        return;
    }
    let at = chance.below(lines.len());
    match chance.below(6) {
        0 => drop(lines.remove(at)),
        1 => {
            let line = lines[at].clone();
            let to = chance.below(lines.len() + 1);
            lines.insert(to, line);
        }
        2 => {
            let other = chance.below(lines.len());
            lines.swap(at, other);
        }
        3 => lines.insert(at, b"\n".to_vec()),
        4 => {
            let head = lines[0].clone();
            lines.insert(at, head);
        }
        _ => {
            let end = *chance.pick(&["\n", "\r", "\r\n", "\n\n", ""]);
            if let Some(last) = lines[at].iter().rposition(|byte| !matches!(byte, b'\n' | b'\r')) {
                lines[at].truncate(last + 1);
                lines[at].extend_from_slice(end.as_bytes());
            }
        }
    }
    *bytes = lines.concat();
}

fn delimiter_of(bytes: &[u8]) -> u8 {
    let count = |wanted: u8| bytes.split(|byte| *byte == wanted).count();
    [b',', b';', b'\t', b'|'].into_iter().max_by_key(|delimiter| count(*delimiter)).unwrap_or(b',')
}

fn change_cells(bytes: &mut Vec<u8>, words: &[String], chance: &mut Chance) {
    let delimiter = delimiter_of(bytes);
    let mut rows: Vec<Vec<Vec<u8>>> = lines(bytes)
        .iter()
        .map(|line| line.split(|byte| *byte == delimiter).map(<[u8]>::to_vec).collect())
        .collect();
    if rows.is_empty() {
        return;
    }
    let row = if chance.once_in(3) { 0 } else { chance.below(rows.len()) };
    let column = chance.below(rows[row].len());
    let word = chance.pick(words).clone().into_bytes();
    match chance.below(8) {
        0 => {
            for row in &mut rows {
                if column < row.len() {
                    row.remove(column);
                }
            }
        }
        1 => {
            for row in &mut rows {
                let cell = row.get(column).cloned().unwrap_or_default();
                row.insert(column.min(row.len()), cell);
            }
        }
        2 => {
            let other = chance.below(rows[row].len());
            for row in &mut rows {
                if column.max(other) < row.len() {
                    row.swap(column, other);
                }
            }
        }
        3 => {
            for row in rows.iter_mut().skip(1) {
                if let Some(cell) = row.get_mut(column) {
                    cell.clone_from(&word);
                }
            }
        }
        4 => rows[row][column].extend_from_slice(&[b" ".as_slice(), &word].concat()),
        5 => rows[row].insert(column, word),
        _ => {
            let end: Vec<u8> =
                rows[row][column].iter().copied().filter(|byte| matches!(byte, b'\n' | b'\r')).collect();
            rows[row][column] = [word, end].concat();
        }
    }
    *bytes = rows.iter().map(|row| row.join(&delimiter)).collect::<Vec<_>>().concat();
}

fn insert_at_bracket(bytes: &mut Vec<u8>, word: &[u8], chance: &mut Chance) {
    let start = chance.below(bytes.len() + 1);
    let after =
        bytes[start..].iter().position(|byte| *byte == b'>').map_or(bytes.len(), |found| start + found + 1);
    let at = if chance.once_in(4) { start } else { after };
    let to = if chance.once_in(3) { (at + chance.below(60)).min(bytes.len()) } else { at };
    bytes.splice(at..to, word.iter().copied());
}

fn re_encode(bytes: &mut Vec<u8>, chance: &mut Chance) {
    let text = String::from_utf8_lossy(bytes).into_owned();
    *bytes = match chance.below(8) {
        0 => text.encode_utf16().flat_map(u16::to_le_bytes).collect(),
        1 => "\u{FEFF}".encode_utf16().chain(text.encode_utf16()).flat_map(u16::to_be_bytes).collect(),
        2 => [b"\xEF\xBB\xBF", text.as_bytes()].concat(),
        at => {
            let encodings = [
                encoding_rs::WINDOWS_1252,
                encoding_rs::SHIFT_JIS,
                encoding_rs::GB18030,
                encoding_rs::BIG5,
                encoding_rs::EUC_KR,
            ];
            encodings[at - 3].encode(&text).0.into_owned()
        }
    };
}

/// The cells of a text as a workbook, an open document, or a text in an archive.
fn as_package(input: &mut Input, chance: &mut Chance) -> Input {
    let bytes = input.largest_part();
    if chance.once_in(3) {
        return Input::Package(vec![
            ("a.csv".to_owned(), bytes.clone()),
            ("b.csv".to_owned(), bytes.clone()),
        ]);
    }
    let delimiter = char::from(delimiter_of(bytes));
    let text = String::from_utf8_lossy(bytes).into_owned();
    let cell = |cell: &str| match cell.parse::<f64>() {
        Ok(number) if number.is_finite() => SheetCell::Number(cell.to_owned()),
        _ => SheetCell::Text(cell.chars().filter(|c| !c.is_control()).collect()),
    };
    let rows = text.lines().take(60).map(|line| line.split(delimiter).map(cell).collect()).collect();
    let sheet = [Sheet { name: "Results".to_owned(), rows }];
    Input::of(if chance.once_in(2) { xlsx::workbook(&sheet) } else { open_document::spreadsheet(&sheet) })
}
