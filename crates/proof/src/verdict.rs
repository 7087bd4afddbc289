//! What was found of a report, and what it shows.

use plumbline_core::codes;
use plumbline_core::lot::Disposition;
use plumbline_core::opened::Kept;
use plumbline_core::reading::sha256_hexadecimal;
use plumbline_core::report::evidence::{self, OPENS};
use plumbline_core::report::html;
use plumbline_core::rules::comes_with_the_program;

use crate::compare;
use crate::evidence::Evidence;
use crate::locate::{self, Located};
use crate::pictures;
use crate::place::{Place, PlaceKind, Places};
use crate::remake::Remade;

codes! {
    /// What was found.
    Verdict {
        /// Byte for byte what its data give.
        Agrees => "agrees",
        /// The same but for line ends or a byte order mark, which mail and editors change and nobody sees.
        LineEnds => "line_ends",
        /// Its findings are what its data give; its wording and layout can't be made again here.
        FindingsAgree => "findings_agree",
        /// Something is another.
        Differs => "differs",
        /// The files it rests on are not in it and not beside it.
        FilesNeeded => "files_needed",
        /// A report that carries nothing.
        EvidenceMissing => "evidence_missing",
        /// No report of this program.
        NotAReport => "not_a_report",
    }
}

codes! {
    /// Why only findings were compared.
    OnlyFindings {
        /// Another version of the program made it.
        OtherVersion => "other_version",
        /// The words of its language are not here.
        LanguageNotHere => "language_not_here",
    }
}

codes! {
    /// A file that the findings rest on, among the files given beside the report.
    FileState {
        /// The same bytes were given.
        Matched => "matched",
        /// A file of that name was given, with other bytes.
        OtherBytes => "other_bytes",
        /// It was not given.
        NotGiven => "not_given",
        /// Nothing was read of it, so that nothing rests on it.
        NothingRead => "nothing_read",
    }
}

/// A file that the report names.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FileSeen {
    /// Its name.
    pub name: String,
    /// The digest it is pinned by.
    pub sha256: String,
    /// Whether it was given.
    pub state: FileState,
}

/// What the data in a report give of a lot.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LotSeen {
    /// Its name; `None` where it is not stated.
    pub lot: Option<String>,
    /// Its supplier; `None` where not stated.
    pub supplier: Option<String>,
    /// The source of a lot that is not stated, else empty.
    pub source: String,
    /// What is to be done with it.
    pub disposition: Disposition,
}

/// What was found of a report.
#[derive(Clone, Debug)]
pub struct Proof {
    /// What was found.
    pub verdict: Verdict,
    /// Why only findings were compared; `None` where the whole report was.
    pub only_findings: Option<OnlyFindings>,
    /// Name and version of the program that made it.
    pub program: Option<(String, String)>,
    /// Its language, a BCP 47 tag: who does not have its words may fetch them and prove it again.
    pub language: Option<String>,
    /// The digest of its findings, computed from its data.
    pub digest: Option<String>,
    /// Whether that is the digest that was given, from signed paper; `None` where none was given or none could be computed.
    pub given_digest: Option<bool>,
    /// What its data give of each lot, worst first: where its wording was not made again, this counts and not what it says.
    pub lots: Vec<LotSeen>,
    /// The ids of the rule books it was judged by whose text is none of this version of the program: somebody loaded them.
    pub foreign_books: Vec<String>,
    /// The files it names.
    pub files: Vec<FileSeen>,
    /// The names of files given beside it that are none of them.
    pub strangers: Vec<String>,
    /// Where it is another.
    pub places: Places,
}

/// A digest as people type it: spaces and capitals make no other.
pub(crate) fn normal_digest(text: &str) -> String {
    text.chars().filter(|character| !character.is_whitespace()).collect::<String>().to_lowercase()
}

impl Proof {
    pub(crate) fn without_evidence(verdict: Verdict) -> Proof {
        Proof {
            verdict,
            only_findings: None,
            program: None,
            language: None,
            digest: None,
            given_digest: None,
            lots: Vec::new(),
            foreign_books: Vec::new(),
            files: Vec::new(),
            strangers: Vec::new(),
            places: Places::default(),
        }
    }

    pub(crate) fn of_bad_evidence(places: Places) -> Proof {
        Proof { places, ..Proof::without_evidence(Verdict::Differs) }
    }

    pub(crate) fn of(evidence: &Evidence) -> Proof {
        let program = Some((evidence.program.clone(), evidence.version.clone()));
        let language = Some(evidence.language.clone());
        let foreign = evidence.books.iter().filter(|book| !comes_with_the_program(&book.id, &book.text));
        let foreign_books = foreign.map(|book| book.id.clone()).collect();
        Proof { program, language, foreign_books, ..Proof::without_evidence(Verdict::Differs) }
    }

    /// True where the report, with what a person reads in it, is what its data give, and nothing that was given beside it says
    /// otherwise.
    pub fn holds(&self) -> bool {
        self.nothing_differs() && self.text_was_proved()
    }

    /// True where nothing that was compared is another, and nothing that was given beside the report says otherwise. Where only
    /// findings were compared, what a person reads in it may still say anything: see [`Proof::text_was_proved`].
    pub fn nothing_differs(&self) -> bool {
        let agrees = matches!(self.verdict, Verdict::Agrees | Verdict::LineEnds | Verdict::FindingsAgree);
        let other = self.files.iter().any(|file| file.state == FileState::OtherBytes);
        agrees && !other && self.given_digest != Some(false)
    }

    /// True where what a person reads was held against the data too, not only the findings it carries.
    pub fn text_was_proved(&self) -> bool {
        self.only_findings.is_none()
    }

    /// True where it could be held against something at all.
    pub fn could_be_proved(&self) -> bool {
        !matches!(self.verdict, Verdict::FilesNeeded | Verdict::EvidenceMissing | Verdict::NotAReport)
    }

    /// True where every file that findings rest on was given, byte for byte.
    pub fn data_are_those_files(&self) -> bool {
        let mut rested_on = self.files.iter().filter(|file| file.state != FileState::NothingRead).peekable();
        rested_on.peek().is_some() && rested_on.all(|file| file.state == FileState::Matched)
    }

    pub(crate) fn look_at_files(&mut self, evidence: &Evidence, beside: &[(String, Vec<u8>)]) {
        let given: Vec<(&str, String)> =
            beside.iter().map(|(name, bytes)| (name.as_str(), sha256_hexadecimal(bytes))).collect();
        let known = |sha256: &String| {
            let named = evidence.files.iter().map(|file| &file.sha256);
            named.chain(evidence.photos.iter().map(|photo| &photo.sha256)).any(|one| one == sha256)
        };
        // A file may be given by itself or with the folders it lies in.
        let last = |name: &str| name.rsplit('/').next().unwrap_or(name).to_owned();
        for file in &evidence.files {
            let same = given.iter().any(|(_, sha256)| *sha256 == file.sha256);
            // A file that is another one of the report is no other version of this one.
            let named = given.iter().any(|(name, sha256)| last(name) == last(&file.name) && !known(sha256));
            let state = match (&file.kept, same, named) {
                (_, true, _) => FileState::Matched,
                // Also of a file of which nothing was read: the one given may hold readings.
                (_, _, true) => FileState::OtherBytes,
                (Kept::Stubs(_), _, _) => FileState::NothingRead,
                _ => FileState::NotGiven,
            };
            self.files.push(FileSeen { name: file.name.clone(), sha256: file.sha256.clone(), state });
        }
        let strangers = given.iter().filter(|(_, sha256)| !known(sha256));
        self.strangers = strangers.map(|(name, _)| (*name).to_owned()).collect();
    }

    /// The whole report, byte for byte.
    pub(crate) fn compare(&mut self, located: &Located<'_>, expected: &[u8]) {
        if located.given == expected {
            self.verdict = Verdict::Agrees;
            return;
        }
        let wanted = locate::plain(expected);
        if located.plain == wanted {
            self.verdict = Verdict::LineEnds;
            return;
        }
        self.verdict = Verdict::Differs;
        self.places = compare::reports(&located.plain, &wanted);
    }

    /// Only the findings: line by line, and whether the report prints their digest.
    pub(crate) fn compare_findings(
        &mut self,
        why: OnlyFindings,
        evidence: &Evidence,
        remade: &Remade,
        located: &Located<'_>,
    ) {
        self.only_findings = Some(why);
        self.lots.clone_from(&remade.lots);
        if remade.digest != evidence.digest {
            match &evidence.canonical {
                Some(carried) => {
                    let carried: Vec<&str> = carried.lines().collect();
                    self.places = compare::findings(&carried, &remade.findings);
                }
                None => self.places.add(Place {
                    says: evidence.digest.clone(),
                    gives: remade.digest.clone(),
                    ..Place::new(PlaceKind::Finding, 0..0)
                }),
            }
        }
        let [above, below] = located.outside();
        let above = above.strip_suffix(OPENS.as_bytes());
        let unchanged = above.is_some_and(|above| sha256_hexadecimal(above) == evidence.text);
        if !unchanged || below != [evidence::CLOSES.as_bytes(), html::CLOSES.as_bytes()].concat() {
            self.places.add(Place::new(PlaceKind::TextChanged, 0..located.evidence_at()));
        }
        for place in above.map(|above| pictures::strangers(above, &evidence.photos)).unwrap_or_default() {
            self.places.add(place);
        }
        let printed = |text: &[u8]| locate::find(text, evidence.digest.as_bytes()).is_some();
        if !located.outside().into_iter().any(printed) {
            let place = Place::new(PlaceKind::DigestNotPrinted, 0..0);
            self.places.add(Place { gives: evidence.digest.clone(), ..place });
        }
        self.verdict = if self.places.is_empty() { Verdict::FindingsAgree } else { Verdict::Differs };
    }
}
