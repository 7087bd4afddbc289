//! Zip packages made for tests, part by part.

use std::io::Write;

use flate2::Compression;
use flate2::write::DeflateEncoder;
use rawzip::{CompressionMethod, ZipArchiveWriter};

/// Packs parts by deflate, in their order, names repeated where the caller repeats them.
pub(crate) fn pack(parts: &[(&str, &[u8])]) -> Vec<u8> {
    let mut bytes = Vec::new();
    let mut archive = ZipArchiveWriter::new(&mut bytes);
    for (name, content) in parts {
        let (mut entry, config) = archive
            .new_file(rawzip::path::EntryPath::verbatim(name.as_bytes().to_vec()))
            .compression_method(CompressionMethod::DEFLATE)
            .start()
            .expect("a part begins");
        let mut writer = config.wrap(DeflateEncoder::new(&mut entry, Compression::default()));
        writer.write_all(content).expect("a part is packed");
        let (encoder, descriptor) = writer.finish().expect("a part ends");
        encoder.finish().expect("a part is flushed");
        entry.finish(descriptor).expect("a part is described");
    }
    archive.finish().expect("a directory is written");
    bytes
}

/// Overwrites bytes of the directory record (PKWARE APPNOTE 4.3.12) of the entry at an index.
pub(crate) fn change_record(package: &mut [u8], index: usize, at: usize, with: &[u8]) {
    let starts: Vec<usize> = memchr::memmem::find_iter(package, b"PK\x01\x02").collect();
    let from = starts.get(index).expect("the record is there") + at;
    package.get_mut(from..from + with.len()).expect("the field is there").copy_from_slice(with);
}

/// Where a record keeps its flags, and the flag for a password.
pub(crate) const FLAGS: usize = 8;
pub(crate) const LOCKED: [u8; 2] = [9, 0];
/// Where a record keeps its method, its checksum and its unpacked size.
pub(crate) const METHOD: usize = 10;
pub(crate) const CHECKSUM: usize = 16;
pub(crate) const SIZE: usize = 24;
