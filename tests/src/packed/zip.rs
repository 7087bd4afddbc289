//! ZIP archives by the byte (PKWARE APPNOTE 4.3), so that a test can write what no packer would.

use std::io::Write;

use flate2::write::DeflateEncoder;
use flate2::{Compress, Compression, Crc, FlushCompress};

/// One file of an archive.
#[derive(Clone, Debug)]
pub struct Entry {
    /// Its name, as it stands in the archive.
    pub name: Vec<u8>,
    /// Its packed bytes.
    pub packed: Vec<u8>,
    /// 0 for stored, 8 for deflated.
    pub method: u16,
    /// Checksum of the unpacked bytes.
    pub checksum: u32,
    /// How many bytes it says it unpacks to.
    pub size: u32,
    /// Bit 0: behind a password; bit 11: the name is UTF-8.
    pub flags: u16,
}

const NAME_IS_UTF8: u16 = 1 << 11;

impl Entry {
    /// A file as it is.
    pub fn stored(name: &str, bytes: &[u8]) -> Entry {
        Entry {
            name: name.into(),
            packed: bytes.to_vec(),
            method: 0,
            checksum: checksum(bytes),
            size: bytes.len() as u32,
            flags: NAME_IS_UTF8,
        }
    }

    /// A file packed by deflate.
    pub fn deflated(name: &str, bytes: &[u8]) -> Entry {
        let mut packer = DeflateEncoder::new(Vec::new(), Compression::fast());
        packer.write_all(bytes).expect("a Vec takes all bytes");
        Entry {
            packed: packer.finish().expect("a Vec takes all bytes"),
            method: 8,
            ..Entry::stored(name, bytes)
        }
    }

    /// A file of so many mebibytes of zeros, packed without ever being in memory.
    pub fn zeros(name: &str, mebibytes: u32) -> Entry {
        let block = vec![0_u8; 1 << 20];
        let mut packer = Compress::new(Compression::best(), false);
        let mut packed_block = Vec::with_capacity(1 << 16);
        // A full flush ends the block at a byte and forgets what came before: blocks may be put behind one another.
        packer.compress_vec(&block, &mut packed_block, FlushCompress::Full).expect("zeros pack");
        let (mut packed, mut crc, mut of_block) = (Vec::new(), Crc::new(), Crc::new());
        of_block.update(&block);
        for _ in 0..mebibytes {
            packed.extend_from_slice(&packed_block);
            crc.combine(&of_block);
        }
        // A last block of nothing (RFC 1951, 3.2.6).
        packed.extend_from_slice(&[3, 0]);
        let size = mebibytes << 20;
        Entry { packed, method: 8, checksum: crc.sum(), size, ..Entry::stored(name, b"") }
    }
}

fn checksum(bytes: &[u8]) -> u32 {
    let mut crc = Crc::new();
    crc.update(bytes);
    crc.sum()
}

/// An archive of entries, in their order.
pub fn archive(entries: &[Entry]) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut directory = Vec::new();
    for entry in entries {
        let at = bytes.len() as u32;
        bytes.extend_from_slice(b"PK\x03\x04");
        bytes.extend_from_slice(&common(entry));
        bytes.extend_from_slice(&0_u16.to_le_bytes());
        bytes.extend_from_slice(&entry.name);
        bytes.extend_from_slice(&entry.packed);
        directory.extend_from_slice(b"PK\x01\x02\x14\0");
        directory.extend_from_slice(&common(entry));
        directory.extend_from_slice(&[0; 12]);
        directory.extend_from_slice(&at.to_le_bytes());
        directory.extend_from_slice(&entry.name);
    }
    let at = bytes.len() as u32;
    bytes.extend_from_slice(&directory);
    bytes.extend_from_slice(b"PK\x05\x06\0\0\0\0");
    let count = (entries.len() as u16).to_le_bytes();
    bytes.extend_from_slice(&count);
    bytes.extend_from_slice(&count);
    bytes.extend_from_slice(&(directory.len() as u32).to_le_bytes());
    bytes.extend_from_slice(&at.to_le_bytes());
    bytes.extend_from_slice(&[0, 0]);
    bytes
}

/// From the version an unpacker needs to the length of the name, as both headers have it.
fn common(entry: &Entry) -> Vec<u8> {
    let mut bytes = Vec::new();
    for number in [20, entry.flags, entry.method, 0, 0x5C_6E] {
        bytes.extend_from_slice(&u16::to_le_bytes(number));
    }
    for number in [entry.checksum, entry.packed.len() as u32, entry.size] {
        bytes.extend_from_slice(&number.to_le_bytes());
    }
    bytes.extend_from_slice(&(entry.name.len() as u16).to_le_bytes());
    bytes
}

#[cfg(test)]
mod tests {
    use std::io::Read;

    use super::*;

    #[test]
    fn zeros_are_zeros() {
        let entry = Entry::zeros("z", 3);
        let mut bytes = Vec::new();
        flate2::read::DeflateDecoder::new(entry.packed.as_slice()).read_to_end(&mut bytes).expect("sound");
        assert_eq!((bytes.len(), checksum(&bytes)), (3 << 20, entry.checksum));
        assert!(bytes.iter().all(|byte| *byte == 0));
    }
}
