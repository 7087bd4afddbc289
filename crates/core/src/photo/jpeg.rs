//! JPEG by its segments (ISO/IEC 10918-1, annex B): a picture without anything that does not draw it.

use super::Size;

/// The first bytes of every JPEG.
pub(super) const START: [u8; 3] = [0xFF, 0xD8, 0xFF];
/// The plain heading that says how colours are meant (JFIF), without a thumbnail.
const JFIF: [u8; 18] = [0xFF, 0xE0, 0, 16, b'J', b'F', b'I', b'F', 0, 1, 1, 0, 0, 1, 0, 1, 0, 0];
/// A frame as large as nothing is no picture; annexes and second frames are beyond what cameras write.
const FRAMES: [u8; 13] = [0xC0, 0xC1, 0xC2, 0xC3, 0xC5, 0xC6, 0xC7, 0xC9, 0xCA, 0xCB, 0xCD, 0xCE, 0xCF];

/// What else draws: tables of numbers and codes, the scan, the count of lines, places to start anew.
const DRAWING: [u8; 6] = [0xC4, 0xCC, 0xDA, 0xDB, 0xDC, 0xDD];

/// The picture alone with its size as shown; `None` where the file is cut short or damaged.
///
/// Of what stands beside the picture, the colour transform (Adobe) and which way is up (one number of Exif) are kept.
pub(super) fn bare(bytes: &[u8]) -> Option<(Vec<u8>, Size)> {
    let (mut tables, mut at) = (Vec::with_capacity(bytes.len()), 2);
    let (mut jfif, mut turn, mut frame, mut scanned) = (false, 1, None, false);
    loop {
        if *bytes.get(at)? != 0xFF {
            return None;
        }
        let marker = *bytes.get(at + 1)?;
        match marker {
            // A filling byte.
            0xFF => {
                at += 1;
                continue;
            }
            // The end: what lies behind it (a film, another picture) is no part of this one.
            0xD9 => break,
            0x00 | 0x01 | 0xD0..=0xD8 => return None,
            _ => {}
        }
        let length = usize::from(u16::from_be_bytes([*bytes.get(at + 2)?, *bytes.get(at + 3)?]));
        let (body, end) = (bytes.get(at + 4..at + 2 + length)?, at + 2 + length);
        let mut keep = true;
        match marker {
            0xE0 => {
                jfif |= body.starts_with(b"JFIF\0");
                keep = false;
            }
            0xE1 => {
                if let Some(found) = body.strip_prefix(b"Exif\0\0").and_then(orientation) {
                    turn = found;
                }
                keep = false;
            }
            0xEE => keep = body.starts_with(b"Adobe") && body.len() == 12,
            one if FRAMES.contains(&one) => {
                if frame.is_some() {
                    return None;
                }
                let number = |at| Some(u32::from(u16::from_be_bytes([*body.get(at)?, *body.get(at + 1)?])));
                frame = Some(Size { width: number(3)?, height: number(1)? })
                    .filter(|one| one.width > 0 && one.height > 0);
                frame?;
            }
            _ => keep = DRAWING.contains(&marker),
        }
        let start = at;
        at = end;
        if marker == 0xDA {
            frame?;
            scanned = true;
            at = after_scan(bytes, at)?;
        }
        if keep {
            tables.extend_from_slice(bytes.get(start..at)?);
        }
    }
    let size = frame.filter(|_| scanned)?;
    let mut out = Vec::with_capacity(tables.len() + 64);
    out.extend_from_slice(&[0xFF, 0xD8]);
    if jfif {
        out.extend_from_slice(&JFIF);
    }
    if turn != 1 {
        out.extend_from_slice(&exif(turn));
    }
    out.extend_from_slice(&tables);
    out.extend_from_slice(&[0xFF, 0xD9]);
    let lies = (5..=8).contains(&turn);
    Some((out, if lies { Size { width: size.height, height: size.width } } else { size }))
}

/// Where the next marker stands behind the packed numbers of a scan.
fn after_scan(bytes: &[u8], from: usize) -> Option<usize> {
    let mut at = from;
    loop {
        at += bytes.get(at..)?.iter().position(|byte| *byte == 0xFF)?;
        match *bytes.get(at + 1)? {
            // A number that happens to be FF, and places to start anew.
            0x00 | 0xD0..=0xD7 => at += 2,
            _ => return Some(at),
        }
    }
}

/// Which way the picture lies (Exif 2.32, tag 0112): 1 as it is, 2 to 8 turned or mirrored.
fn orientation(tiff: &[u8]) -> Option<u8> {
    let little = match tiff.get(..4)? {
        [b'I', b'I', 42, 0] => true,
        [b'M', b'M', 0, 42] => false,
        _ => return None,
    };
    let short = |at: usize| {
        let pair = [*tiff.get(at)?, *tiff.get(at + 1)?];
        Some(if little { u16::from_le_bytes(pair) } else { u16::from_be_bytes(pair) })
    };
    let long = |at: usize| {
        let four = [*tiff.get(at)?, *tiff.get(at + 1)?, *tiff.get(at + 2)?, *tiff.get(at + 3)?];
        Some(if little { u32::from_le_bytes(four) } else { u32::from_be_bytes(four) } as usize)
    };
    let directory = long(4)?;
    for entry in 0..usize::from(short(directory)?) {
        let at = directory.checked_add(2 + entry * 12)?;
        if short(at)? == 0x0112 {
            return u8::try_from(short(at + 8)?).ok().filter(|turn| (1..=8).contains(turn));
        }
    }
    None
}

/// An Exif segment that says which way the picture lies, and nothing else.
fn exif(turn: u8) -> [u8; 36] {
    let mut segment =
        *b"\xFF\xE1\0\x22Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0\x01\0\0\0\0\0\0";
    segment[29] = turn;
    segment
}
