//! ZIP archives of result files: what is in them, and one entry after another as bytes.
//!
//! Nothing is unpacked to a place: names are labels only, and still they are cleaned, because people read them. An
//! entry that cannot be read stays in the list with its problem, and entries of one name are kept apart, so that no
//! file vanishes without a word.

use std::collections::{BTreeMap, BTreeSet};
use std::io::Read;
use std::ops::ControlFlow;

use crate::container::{self, Container};
use crate::unpacking::{Bound, Directory, Refusal, Unreadable};

mod code_page_437;

/// Entries an archive may have. A folder of results holds some thousands (common practice, no source).
pub const MOST_ENTRIES: usize = 20_000;
/// Unpacked bytes of one entry, millions of rows of results (common practice, no source).
pub const LARGEST_ENTRY: u64 = 512 * 1024 * 1024;
/// Unpacked bytes of a whole archive, half of what a 32-bit page could address (common practice, no source).
pub const LARGEST_ARCHIVE: u64 = 2 * 1024 * 1024 * 1024;

/// Bytes handed over at a time.
const PIECE: usize = 64 * 1024;

/// Files that systems leave in folders and no person put there (common practice, no source); never results.
const SYSTEM_FILES: [&str; 3] = [".DS_Store", "Thumbs.db", "desktop.ini"];
/// The folder a system keeps its own side files in, and the start of their names.
const SYSTEM_FOLDER: &str = "__MACOSX";
const SYSTEM_START: &str = "._";

/// Why an archive is not read at all.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ArchiveProblem {
    /// Its directory is cut off or damaged.
    Broken,
    /// More than [`MOST_ENTRIES`].
    TooManyEntries,
    /// More than [`LARGEST_ARCHIVE`] unpacked.
    TooLarge,
}

/// Why an entry is not read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum EntryProblem {
    /// Behind a password.
    Locked,
    /// More than [`LARGEST_ENTRY`] unpacked.
    TooLarge,
    /// Unpacks to far more than any table of results would.
    PackedTooTight,
    /// An archive inside the archive.
    Nested,
    /// Damaged: it does not unpack, or to other bytes than were packed.
    Broken,
    /// Packed by a method other than store and deflate.
    MethodUnknown,
}

impl From<Refusal> for EntryProblem {
    fn from(refusal: Refusal) -> EntryProblem {
        match refusal {
            Refusal::Locked => EntryProblem::Locked,
            Refusal::TooLarge => EntryProblem::TooLarge,
            Refusal::PackedTooTight => EntryProblem::PackedTooTight,
            Refusal::Broken => EntryProblem::Broken,
            Refusal::MethodUnknown => EntryProblem::MethodUnknown,
        }
    }
}

/// One file of an archive.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Entry {
    /// Path inside the archive, parts joined by `/`; never absolute, never upwards, unique in the archive.
    pub name: String,
    /// Unpacked bytes as the directory states them.
    pub size: u64,
    /// Why it cannot be read, as far as the directory tells.
    pub problem: Option<EntryProblem>,
}

/// An archive over bytes in memory.
pub struct Archive<'a> {
    zip: Directory<'a>,
    entries: Vec<Entry>,
    /// Where in the directory each entry stands.
    places: Vec<usize>,
}

impl<'a> Archive<'a> {
    /// Reads the directory. Entries are sorted by the bytes of their names.
    ///
    /// # Errors
    /// [`ArchiveProblem`] where nothing of the archive can be read.
    pub fn open(bytes: &'a [u8]) -> Result<Archive<'a>, ArchiveProblem> {
        let zip = Directory::read(bytes, MOST_ENTRIES).map_err(|unreadable| match unreadable {
            Unreadable::Broken => ArchiveProblem::Broken,
            Unreadable::TooMany => ArchiveProblem::TooManyEntries,
        })?;
        let mut found: Vec<(Entry, usize)> =
            (0..zip.len()).filter_map(|index| Some((list(&zip, index)?, index))).collect();
        let unpacked = found.iter().fold(0_u64, |sum, (entry, _)| sum.saturating_add(entry.size));
        if unpacked > LARGEST_ARCHIVE {
            return Err(ArchiveProblem::TooLarge);
        }
        tell_apart(&mut found);
        found.sort_by(|(left, _), (right, _)| left.name.as_bytes().cmp(right.name.as_bytes()));
        let (entries, places) = found.into_iter().unzip();
        Ok(Archive { zip, entries, places })
    }

    /// Every file, without folders and without the files that systems leave.
    pub fn entries(&self) -> &[Entry] {
        &self.entries
    }

    /// Hands over an entry in pieces until it ends or the sink breaks off. A workbook comes like any other file; an
    /// archive inside the archive is not handed over.
    ///
    /// # Errors
    /// [`EntryProblem`]. Damage may show only after pieces were handed over: what was made of them is then void.
    pub fn stream(
        &self,
        index: usize,
        sink: &mut dyn FnMut(&[u8]) -> ControlFlow<()>,
    ) -> Result<(), EntryProblem> {
        let place = self.places.get(index).ok_or(EntryProblem::Broken)?;
        let mut file = self.zip.unpack(*place, Bound::of(LARGEST_ENTRY))?;
        let mut piece = vec![0; PIECE];
        let mut filled = fill(&mut file, &mut piece)?;
        let head = piece.get(..filled).unwrap_or(&[]);
        if container::needs_whole(head) {
            let mut whole = head.to_vec();
            file.read_to_end(&mut whole).map_err(|_| EntryProblem::Broken)?;
            if container::look(&whole) != Container::Workbook {
                return Err(EntryProblem::Nested);
            }
            for part in whole.chunks(PIECE) {
                if sink(part).is_break() {
                    break;
                }
            }
            return Ok(());
        }
        if container::look(head) == Container::OtherPacked {
            return Err(EntryProblem::Nested);
        }
        while filled > 0 {
            if sink(piece.get(..filled).unwrap_or(&[])).is_break() {
                return Ok(());
            }
            filled = fill(&mut file, &mut piece)?;
        }
        Ok(())
    }
}

/// Fills the piece as far as the entry goes; zero means that it ended and its checksum was right.
fn fill(file: &mut impl Read, piece: &mut [u8]) -> Result<usize, EntryProblem> {
    let mut filled = 0;
    while let Some(rest) = piece.get_mut(filled..)
        && !rest.is_empty()
    {
        match file.read(rest) {
            Ok(0) => break,
            Ok(read) => filled += read,
            Err(_) => return Err(EntryProblem::Broken),
        }
    }
    Ok(filled)
}

/// One entry as it is listed; nothing for folders and system files.
fn list(zip: &Directory<'_>, index: usize) -> Option<Entry> {
    let packed = zip.entry(index)?;
    // Many packers write UTF-8 without the flag that says so, and text in code page 437 is hardly ever valid UTF-8.
    // Without the flag the code page is what the format says (PKWARE APPNOTE, appendix D.1).
    let decoded = match std::str::from_utf8(&packed.name) {
        Ok(text) => text.to_owned(),
        Err(_) if packed.name_is_utf8 => String::from_utf8_lossy(&packed.name).into_owned(),
        Err(_) => code_page_437::decode(&packed.name),
    };
    if decoded.ends_with(['/', '\\']) || is_system_file(&decoded) {
        return None;
    }
    Some(Entry {
        name: clean(&decoded),
        size: packed.size,
        problem: packed.check(Bound::of(LARGEST_ENTRY)).err().map(EntryProblem::from),
    })
}

fn is_system_file(path: &str) -> bool {
    let mut parts = path.split(['/', '\\']).rev();
    let name = parts.next().unwrap_or_default();
    SYSTEM_FILES.iter().any(|known| name.eq_ignore_ascii_case(known))
        || name.starts_with(SYSTEM_START)
        || parts.any(|folder| folder == SYSTEM_FOLDER)
}

/// A path that stays inside, with nothing in it that a person cannot see.
fn clean(path: &str) -> String {
    let visible: String =
        path.chars().map(|letter| if letter.is_control() { '\u{FFFD}' } else { letter }).collect();
    let parts: Vec<&str> = visible
        .split(['/', '\\'])
        .map(without_drive)
        .filter(|part| !matches!(*part, "" | "." | ".."))
        .collect();
    if parts.is_empty() { "unnamed".to_owned() } else { parts.join("/") }
}

/// A part without a drive letter before it: `C:` or `C:results.csv`.
fn without_drive(part: &str) -> &str {
    match part.as_bytes() {
        [letter, b':', ..] if letter.is_ascii_alphabetic() => part.get(2..).unwrap_or_default(),
        _ => part,
    }
}

/// Numbers names that occur again: `a.csv`, `a (2).csv`, `a (3).csv`, in the order of the directory.
fn tell_apart(found: &mut [(Entry, usize)]) {
    let taken: BTreeSet<String> = found.iter().map(|(entry, _)| entry.name.clone()).collect();
    let mut times: BTreeMap<String, usize> = BTreeMap::new();
    for (entry, _) in found {
        let count = times.entry(entry.name.clone()).or_insert(0);
        *count += 1;
        if *count == 1 {
            continue;
        }
        let mut name = numbered(&entry.name, *count);
        while taken.contains(&name) {
            *count += 1;
            name = numbered(&entry.name, *count);
        }
        entry.name = name;
    }
}

fn numbered(path: &str, number: usize) -> String {
    let name_starts = path.rfind('/').map_or(0, |slash| slash + 1);
    match path.rfind('.') {
        Some(dot) if dot > name_starts => {
            let (stem, ending) = path.split_at(dot);
            format!("{stem} ({number}){ending}")
        }
        _ => format!("{path} ({number})"),
    }
}

#[cfg(test)]
mod tests;
