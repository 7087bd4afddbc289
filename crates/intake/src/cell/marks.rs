//! What a cell shows about the decimal mark of its column.

use plumbline_core::quantity::DecimalMark;

use super::{text, written};

/// What a cell shows about the decimal mark of its column: which mark it can only be, if it shows one.
///
/// `1,250` and `1.250` show nothing: either mark may stand for thousands.
pub fn mark_evidence(cell: &[u8]) -> Option<DecimalMark> {
    let cell = cell.trim_ascii();
    let number = cell
        .iter()
        .position(|byte| !matches!(byte, b'<' | b'>' | b'=' | b'-' | b'+' | b' '))
        .and_then(|at| cell.get(at..))?;
    let is_number = |byte: &u8| byte.is_ascii_digit() || matches!(byte, b'.' | b',');
    // Nearly every cell is a plain number.
    if number.iter().all(is_number) {
        return of_number(number);
    }
    let whole = written::in_plain_characters(&text(cell));
    let whole = whole.trim();
    let below = written::below(whole);
    let whole =
        below.as_deref().unwrap_or(whole).trim_start_matches(['<', '>', '≤', '≦', '≥', '≧', '=', ' ', '(']);
    let (value, error) = written::value_and_error(whole).unwrap_or((whole, ""));
    [value, error].into_iter().find_map(|part| {
        let (digits, _) = written::split_number(part.trim());
        let digits = digits.trim_start_matches(['+', '-']);
        match written::ungrouped(digits)? {
            // Its thousands are parted by something else: a mark in it is the decimal one.
            grouped if grouped.len() < digits.len() => grouped.chars().find_map(|c| match c {
                '.' => Some(DecimalMark::Point),
                ',' => Some(DecimalMark::Comma),
                _ => None,
            }),
            plain => of_number(plain.as_bytes()),
        }
    })
}

fn of_number(body: &[u8]) -> Option<DecimalMark> {
    let points = memchr::memchr_iter(b'.', body).count();
    let commas = memchr::memchr_iter(b',', body).count();
    let single = |mark: u8| -> bool {
        let at = memchr::memchr(mark, body).unwrap_or(0);
        let (whole, part) = body.split_at(at);
        // The mark itself is the first byte of the part.
        part.len() != 4 || whole.is_empty() || whole == b"0" || whole.len() > 3
    };
    match (points, commas) {
        (1, 0) if body.len() > 1 && single(b'.') => Some(DecimalMark::Point),
        (0, 1) if body.len() > 1 && single(b',') => Some(DecimalMark::Comma),
        (1.., 1..) => {
            let last_point = memchr::memrchr(b'.', body);
            let last_comma = memchr::memrchr(b',', body);
            Some(if last_point > last_comma { DecimalMark::Point } else { DecimalMark::Comma })
        }
        _ => None,
    }
}
