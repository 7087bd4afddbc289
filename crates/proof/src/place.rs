//! Where a report is not what its data give.

use std::ops::Range;

use plumbline_core::codes;

/// Most places that are named; the rest is counted. (Our choice: more than anybody reads.)
pub const MOST_PLACES: usize = 100;

codes! {
    /// In what way a place is another.
    PlaceKind {
        /// A text is another.
        Text => "text",
        /// Something the data give is not there.
        Missing => "missing",
        /// Something is there that the data do not give.
        Extra => "extra",
        /// A tag or the order of tags is another; the text is the same.
        Markup => "markup",
        /// The style is another, which may hide or change what is seen.
        Style => "style",
        /// Something a browser may run or fetch.
        Active => "active",
        /// A picture is another than the one that belongs there.
        Picture => "picture",
        /// An embedded part was changed: it is not what its own check says.
        Changed => "changed",
        /// An embedded part is missing.
        PartMissing => "part_missing",
        /// An embedded part can't be used.
        NotUsable => "not_usable",
        /// An embedded part is not as the program writes it from what it holds.
        WrittenOtherwise => "written_otherwise",
        /// A line of the findings is another.
        Finding => "finding",
        /// The text is not the one the report was written with; where, only the version that wrote it can tell.
        TextChanged => "text_changed",
        /// The report does not print the digest of its findings.
        DigestNotPrinted => "digest_not_printed",
    }
}

codes! {
    /// What a report carries.
    PartKind {
        /// The element, or what frames the records.
        Frame => "frame",
        /// The program's name and version.
        Program => "program",
        /// Language, length and digest.
        Report => "report",
        /// An act.
        Act => "act",
        /// A rule book.
        Book => "book",
        /// The history.
        History => "history",
        /// A file.
        File => "file",
        /// What is known of a file of which nothing was read.
        Source => "source",
        /// A file that belongs to the report.
        Photo => "photo",
        /// The findings without words.
        Canonical => "canonical",
        /// The line that closes the records.
        End => "end",
        /// A record of no known kind.
        Unknown => "unknown",
    }
}

/// One part of what a report carries.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Part {
    /// Which kind.
    pub kind: PartKind,
    /// Its name: a file's, a book's id, the number of an act. Empty where the kind says all.
    pub name: String,
}

impl Part {
    pub(crate) fn of(kind: PartKind) -> Part {
        Part { kind, name: String::new() }
    }
}

/// One place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Place {
    /// In what way it is another.
    pub kind: PlaceKind,
    /// The heading of the section, as the data give it; empty above the first.
    pub section: String,
    /// The row: what its first cells say, or the term before a value. Empty where it is in no row.
    pub row: String,
    /// The heading of the column; empty where there is none.
    pub column: String,
    /// What the report says there.
    pub says: String,
    /// What its data give.
    pub gives: String,
    /// The part of what is carried, where it is there.
    pub part: Option<Part>,
    /// The bytes of the report it speaks of, line ends counted as one byte and without a byte order mark.
    pub bytes: Range<usize>,
}

impl Place {
    pub(crate) fn new(kind: PlaceKind, bytes: Range<usize>) -> Place {
        Place {
            kind,
            section: String::new(),
            row: String::new(),
            column: String::new(),
            says: String::new(),
            gives: String::new(),
            part: None,
            bytes,
        }
    }

    pub(crate) fn of_part(kind: PlaceKind, part: Part, bytes: Range<usize>) -> Place {
        Place { part: Some(part), ..Place::new(kind, bytes) }
    }
}

/// Places in order, the first of them kept.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Places {
    /// Those kept.
    pub list: Vec<Place>,
    /// How many more.
    pub more: usize,
}

impl Places {
    pub(crate) fn one(place: Place) -> Places {
        Places { list: vec![place], more: 0 }
    }

    pub(crate) fn add(&mut self, place: Place) {
        if self.list.len() < MOST_PLACES {
            self.list.push(place);
        } else {
            self.more += 1;
        }
    }

    /// True where nothing is another.
    pub fn is_empty(&self) -> bool {
        self.list.is_empty()
    }
}
