//! The files that were opened: what a report carries along, so that all of it can be computed again.

use crate::reading::NoticeCode;

/// Most bytes of files that a report carries, all files together.
///
/// Our choice: result files pack to a tenth or a fifth, so that the report stays a file that mail takes (common practice, no
/// source: 10 MB) and a page opens without a stall; 32 MiB are about two hundred thousand readings. Beyond it the files
/// themselves have to be kept beside the report, which names them by their SHA-256.
pub const MOST_CARRIED: u64 = 32 * 1024 * 1024;

/// A source of which nothing was read: all that is known of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Stub {
    /// Its name.
    pub name: String,
    /// SHA-256 of its bytes; empty where they could not be had.
    pub sha256: String,
    /// How many bytes.
    pub bytes: u64,
    /// It came out of the file that was opened, an archive.
    pub packed: bool,
    /// Why nothing was read.
    pub code: NoticeCode,
    /// The text it is about.
    pub found: String,
}

/// What is kept of a file.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Kept {
    /// Its bytes.
    Bytes(Vec<u8>),
    /// Not its bytes: the files of the inspection are larger than [`MOST_CARRIED`].
    TooLarge,
    /// Nothing was read of it, so what is known of its sources is enough.
    Stubs(Vec<Stub>),
}

/// A file as a door opened it: a workbook or an archive whole.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OpenedFile {
    /// Base name, or the path inside the chosen folder with `/`.
    pub name: String,
    /// Found by walking a folder.
    pub in_folder: bool,
    /// How many bytes.
    pub bytes: u64,
    /// SHA-256 of its bytes, in lower-case hexadecimal; empty where they could not be had.
    pub sha256: String,
    /// What is kept of it.
    pub kept: Kept,
}

/// All files that were opened.
#[derive(Clone, Debug, Default)]
pub struct Opened {
    files: Vec<OpenedFile>,
    with_rows: u64,
}

impl Opened {
    /// Adds a file in its place, in the order of the sources. Where the files that gave rows become more than
    /// [`MOST_CARRIED`], none of their bytes are kept: which ones are must not depend on which came first.
    pub fn add(&mut self, mut file: OpenedFile) {
        if !matches!(file.kept, Kept::Stubs(_)) {
            self.with_rows = self.with_rows.saturating_add(file.bytes);
        }
        if self.with_rows > MOST_CARRIED {
            let all = self.files.iter_mut().chain([&mut file]);
            for one in all.filter(|one| matches!(one.kept, Kept::Bytes(_))) {
                one.kept = Kept::TooLarge;
            }
        }
        let key = |one: &OpenedFile| (one.name.clone().into_bytes(), one.sha256.clone());
        let wanted = key(&file);
        let at = self.files.partition_point(|one| key(one) <= wanted);
        self.files.insert(at, file);
    }

    /// The files, in the order of the sources: by the bytes of their names, then by digest.
    pub fn files(&self) -> &[OpenedFile] {
        &self.files
    }

    /// How many bytes of the next file are worth keeping.
    pub fn room(&self) -> usize {
        usize::try_from(MOST_CARRIED.saturating_sub(self.with_rows)).unwrap_or(0)
    }

    /// True where the bytes of every file that gave rows are kept.
    pub fn is_whole(&self) -> bool {
        self.files.iter().all(|file| file.kept != Kept::TooLarge)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn file(name: &str, bytes: u64, kept: Kept) -> OpenedFile {
        OpenedFile { name: name.to_owned(), in_folder: false, bytes, sha256: "0".repeat(64), kept }
    }

    fn table(name: &str, bytes: u64) -> OpenedFile {
        file(name, bytes, Kept::Bytes(name.as_bytes().to_vec()))
    }

    fn opened(files: &[OpenedFile]) -> Opened {
        let mut opened = Opened::default();
        for file in files {
            opened.add(file.clone());
        }
        opened
    }

    #[test]
    fn what_is_kept_does_not_depend_on_which_file_came_first() {
        let photo = file("photo.jpg", MOST_CARRIED * 4, Kept::Stubs(Vec::new()));
        let halves = [table("a.csv", MOST_CARRIED / 2), table("b.csv", MOST_CARRIED / 2), photo.clone()];
        let more = [table("a.csv", MOST_CARRIED / 2), table("b.csv", MOST_CARRIED / 2 + 1), photo];
        for turn in 0..3 {
            let turned = |files: &[OpenedFile; 3]| {
                let mut files = files.clone();
                files.rotate_left(turn);
                opened(&files)
            };
            let (fits, over) = (turned(&halves), turned(&more));
            assert!(fits.is_whole() && fits.room() == 0);
            assert_eq!(fits.files(), halves);
            assert!(!over.is_whole() && over.room() == 0);
            let kept: Vec<_> = over.files().iter().map(|file| matches!(file.kept, Kept::TooLarge)).collect();
            assert_eq!(kept, [true, true, false]);
        }
    }

    #[test]
    fn one_file_too_large_takes_the_others_along() {
        let over = opened(&[
            table("a.csv", 10),
            file("b.csv", MOST_CARRIED + 1, Kept::TooLarge),
            table("c.csv", 10),
        ]);
        assert!(over.files().iter().all(|file| file.kept == Kept::TooLarge));
    }

    #[test]
    fn room_is_what_the_tables_leave() {
        assert_eq!(opened(&[]).room() as u64, MOST_CARRIED);
        assert_eq!(opened(&[table("a.csv", 1000)]).room() as u64, MOST_CARRIED - 1000);
    }
}
