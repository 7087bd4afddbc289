//! Zip directories, and bounds on what a packed file may unpack to: shared by workbooks and archives.
//!
//! A packed size is what was handed over; an unpacked size is only a claim. Both are looked at before a byte is
//! unpacked, and unpacking ends with an error as soon as it runs past the claim, so that a claim that passed here is
//! a bound. Entries that share their packed bytes are bounded the same way, each by its own claim.
//!
//! The directory is read by rawzip and not by the zip crate, which keeps only the last of several entries of one name
//! and brings a source of random numbers.

use std::io::Read;

use flate2::bufread::DeflateDecoder;
use rawzip::{CompressionMethod, ZipArchive, ZipArchiveEntryWayfinder, ZipSliceArchive};

/// How far an entry may unpack.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Bound {
    /// Unpacked bytes.
    pub(crate) largest: u64,
    /// Unpacked bytes for each packed byte; deflate cannot pass 1032.
    pub(crate) tightest: u64,
}

impl Bound {
    /// So many bytes, and two hundred for each packed one: sheets of random numbers were measured at 5, of equal
    /// numbers at 17, delimited text of equal results with a running number at 38.
    pub(crate) const fn of(largest: u64) -> Bound {
        Bound { largest, tightest: 200 }
    }
}

/// Entries up to this size are taken however tightly packed: a mebibyte harms nobody, and short constant files pack
/// beyond any ratio (common practice, no source).
const TIGHT_BUT_SMALL: u64 = 1024 * 1024;

/// Parts that a workbook may have: sheets, pictures and what belongs to them (common practice, no source).
pub(crate) const MOST_PARTS: usize = 20_000;

/// Why an entry is not unpacked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Refusal {
    Locked,
    TooLarge,
    PackedTooTight,
    Broken,
    MethodUnknown,
}

/// Why a directory is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Unreadable {
    Broken,
    TooMany,
}

/// What the directory says of an entry.
pub(crate) struct Packed {
    pub(crate) name: Vec<u8>,
    pub(crate) name_is_utf8: bool,
    pub(crate) size: u64,
    stored: u64,
    method: CompressionMethod,
    encrypted: bool,
    place: ZipArchiveEntryWayfinder,
}

impl Packed {
    /// Whether the entry may be unpacked, as far as the directory tells.
    pub(crate) fn check(&self, bound: Bound) -> Result<(), Refusal> {
        if self.encrypted {
            Err(Refusal::Locked)
        } else if !matches!(self.method, CompressionMethod::STORE | CompressionMethod::DEFLATE) {
            Err(Refusal::MethodUnknown)
        } else if self.size > bound.largest {
            Err(Refusal::TooLarge)
        } else if self.size > TIGHT_BUT_SMALL && self.size / bound.tightest > self.stored {
            Err(Refusal::PackedTooTight)
        } else {
            Ok(())
        }
    }
}

/// A zip directory over bytes in memory.
pub(crate) struct Directory<'a> {
    archive: ZipSliceArchive<&'a [u8]>,
    entries: Vec<Packed>,
}

impl<'a> Directory<'a> {
    /// Reads the directory, up to so many entries; the number that it states is not looked at.
    pub(crate) fn read(bytes: &'a [u8], most: usize) -> Result<Directory<'a>, Unreadable> {
        let archive = ZipArchive::from_slice(bytes).map_err(|_| Unreadable::Broken)?;
        let mut entries = Vec::new();
        for entry in archive.entries() {
            let entry = entry.map_err(|_| Unreadable::Broken)?;
            if entries.len() == most {
                return Err(Unreadable::TooMany);
            }
            entries.push(Packed {
                name: entry.file_path().as_bytes().to_vec(),
                name_is_utf8: entry.flags().is_utf8(),
                size: entry.uncompressed_size_hint(),
                stored: entry.compressed_size_hint(),
                method: entry.compression_method(),
                encrypted: entry.flags().is_encrypted(),
                place: entry.wayfinder(),
            });
        }
        Ok(Directory { archive, entries })
    }

    pub(crate) fn len(&self) -> usize {
        self.entries.len()
    }

    pub(crate) fn entry(&self, index: usize) -> Option<&Packed> {
        self.entries.get(index)
    }

    /// The last entry of a name, which is the one that counts where a package has several. Names are compared without
    /// case (ECMA-376 part 2, 6.2.2.3), and some writers join them by `\`.
    pub(crate) fn find(&self, name: &str) -> Option<usize> {
        self.entries.iter().rposition(|entry| {
            entry.name.len() == name.len()
                && entry.name.iter().zip(name.bytes()).all(|(&stored, wanted)| {
                    let stored = if stored == b'\\' { b'/' } else { stored };
                    stored.eq_ignore_ascii_case(&wanted)
                })
        })
    }

    /// An entry that passes [`Packed::check`], ready to be read.
    pub(crate) fn unpack(&self, index: usize, bound: Bound) -> Result<Unpacked<'_>, Refusal> {
        let packed = self.entries.get(index).ok_or(Refusal::Broken)?;
        packed.check(bound)?;
        let entry = self.archive.get_entry(packed.place).map_err(|_| Refusal::Broken)?;
        // The verifying reader is what holds the entry to its claim.
        Ok(if packed.method == CompressionMethod::STORE {
            Box::new(entry.verifying_reader(entry.data()))
        } else {
            Box::new(entry.verifying_reader(DeflateDecoder::new(entry.data())))
        })
    }

    /// A whole entry in memory.
    pub(crate) fn read_whole(&self, index: usize, bound: Bound) -> Result<Vec<u8>, Refusal> {
        let mut bytes = Vec::new();
        self.unpack(index, bound)?.read_to_end(&mut bytes).map_err(|_| Refusal::Broken)?;
        Ok(bytes)
    }
}

/// An entry being unpacked: an error where it runs past its claim, and at its end where size or checksum differ.
pub(crate) type Unpacked<'a> = Box<dyn Read + 'a>;
