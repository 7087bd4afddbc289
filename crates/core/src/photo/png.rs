//! PNG by its chunks (ISO/IEC 15948, clause 11): a picture without anything that does not draw it.

use super::Size;

/// The first bytes of every PNG.
pub(super) const START: [u8; 8] = *b"\x89PNG\r\n\x1A\n";
/// What draws a picture, or says how its numbers are meant.
const DRAWING: [&[u8; 4]; 8] = [b"IHDR", b"PLTE", b"IDAT", b"IEND", b"tRNS", b"gAMA", b"cHRM", b"sRGB"];
/// Length, name and checksum around the contents of a chunk.
const AROUND: usize = 12;

/// The picture alone with its size; `None` where the file is cut short or damaged.
pub(super) fn bare(bytes: &[u8]) -> Option<(Vec<u8>, Size)> {
    let mut out = Vec::with_capacity(bytes.len());
    out.extend_from_slice(&START);
    let (mut at, mut size, mut drawn) = (START.len(), None, false);
    loop {
        let number = |from: usize| Some(u32::from_be_bytes(bytes.get(from..from + 4)?.try_into().ok()?));
        let length = number(at)? as usize;
        let chunk = bytes.get(at..at.checked_add(length)?.checked_add(AROUND)?)?;
        let name: &[u8; 4] = chunk.get(4..8)?.try_into().ok()?;
        match (name, size) {
            (b"IHDR", None) if length == 13 => {
                let (width, height) = (number(at + 8)?, number(at + 12)?);
                size = Some(Size { width, height }).filter(|one| one.width > 0 && one.height > 0);
                size?;
            }
            (b"IHDR", _) | (_, None) => return None,
            (b"IDAT", _) => drawn = true,
            _ => {}
        }
        if DRAWING.contains(&name) {
            out.extend_from_slice(chunk);
        }
        at += chunk.len();
        if name == b"IEND" {
            return size.filter(|_| drawn).map(|size| (out, size));
        }
    }
}
