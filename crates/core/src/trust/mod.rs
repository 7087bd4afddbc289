//! Were the readings trustworthy: check standards and blanks, judged, and the readings between them.
//!
//! Trust stands beside an outcome and never in its place. It holds a lot or leaves it as it is; nothing here makes any
//! reading better.

mod brackets;
mod lots;
mod recognition;
mod scores;

pub use brackets::Brackets;
pub use lots::Lots;
pub use recognition::{Names, Taken};
pub use scores::{CheckElement, Scores};

use crate::acts::Settings;
use crate::certificate::Certificate;
use crate::identity::Identity;
use crate::instant::Moment;
use crate::judging::SourceReview;
use crate::material::MaterialClass;
use crate::reading::{Source, codes};

codes! {
    /// What the checks around a reading say of one of its elements, from best to worst.
    Trust {
        /// Between good checks, as the bracket rule asks.
        Ok => "ok",
        /// No check covers it.
        None => "none",
        /// A good check is missing on a side that the rule asks for.
        NotBracketed => "not_bracketed",
        /// A check beside it failed.
        Failed => "failed",
    }
}

codes! {
    /// What a check reading is.
    CheckKind {
        /// Of a standard, to be held against its certificate.
        Standard => "check",
        /// Of a blank, in which nothing should be found.
        Blank => "blank",
    }
}

codes! {
    /// How one element of a check reading came out.
    CheckVerdict {
        /// Good.
        Good => "good",
        /// Good, and |zeta| is above 2.
        Warning => "warning",
        /// Failed: off by more than the rule allows, or something was found in a blank.
        Failed => "failed",
        /// A number without an uncertainty.
        NoUncertainty => "no_uncertainty",
        /// No measurement: nothing in the cell, or text.
        NotMeasured => "not_measured",
        /// Not detected, and the certified value may lie that low; or so uncertain that zero would be as good.
        NotSeen => "not_seen",
        /// A number whose unit nobody stated.
        UnitUnknown => "unit_unknown",
        /// The certificate's last day is past.
        Expired => "expired",
        /// The certificate has a last day, and nobody says on which day this was measured.
        DayUnknown => "day_unknown",
        /// Measured, and no certificate states a value.
        NoCertificate => "no_certificate",
    }
}

impl CheckVerdict {
    /// True where a certificate or a blank was kept to.
    pub const fn is_good(self) -> bool {
        matches!(self, CheckVerdict::Good | CheckVerdict::Warning)
    }

    /// True where it was judged by a number.
    pub const fn is_judged(self) -> bool {
        matches!(self, CheckVerdict::Good | CheckVerdict::Warning | CheckVerdict::Failed)
    }
}

/// How many elements a trust is kept of: those of [`crate::rules::JUDGED`], in that order.
pub const ELEMENTS: usize = 6;

/// The trust of each judged element of a reading; `None` where none is asked for: the element was not measured or doesn't
/// apply.
pub type OfElements = [Option<Trust>; ELEMENTS];

/// One check reading.
#[derive(Clone, Debug)]
pub struct CheckFinding {
    /// Its index among all readings.
    pub reading: u32,
    /// What it is.
    pub kind: CheckKind,
    /// Its sample id; empty where it states none.
    pub sample: String,
    /// When it was measured; `None` where that can't be told.
    pub moment: Option<Moment>,
    /// The class its own reading states; a certificate may state another for an element.
    pub class: MaterialClass,
    /// Every element that is certified for it, and every judged one it measured, by atomic number.
    pub elements: Vec<CheckElement>,
}

/// What the checks of an inspection say.
#[derive(Clone, Debug, Default)]
pub struct TrustFindings {
    /// The certified values, in the order of the acts.
    pub certificates: Vec<Certificate>,
    /// Check readings in the order of all readings.
    pub checks: Vec<CheckFinding>,
    /// The trust of every reading; empty where there is no check reading at all, and then it is none everywhere.
    pub of_readings: Vec<OfElements>,
    /// The sources that go by the order of their rows; empty where there is no check reading at all.
    pub by_rows: Vec<usize>,
}

impl TrustFindings {
    /// The trust of each element of a reading.
    pub fn of(&self, reading: usize) -> OfElements {
        self.of_readings.get(reading).copied().unwrap_or([None; ELEMENTS])
    }

    /// The trust of a whole reading: that of its worst element.
    pub fn worst(&self, reading: usize) -> Trust {
        self.of(reading).into_iter().flatten().max().unwrap_or(Trust::None)
    }

    /// True where some check reading could be judged by a number.
    pub fn any_judged(&self) -> bool {
        self.checks.iter().flat_map(|check| &check.elements).any(|element| element.verdict.is_judged())
    }
}

/// What trust asks of a reading.
#[derive(Clone, Copy, Debug)]
pub struct Subject {
    /// Its class.
    pub class: MaterialClass,
    /// Per judged element: it was measured and applies, so that trust in it matters.
    pub needed: [bool; ELEMENTS],
}

/// Everything trust has to look at.
pub struct Reviewed<'a> {
    /// The settings.
    pub settings: &'a Settings,
    /// The certified values.
    pub certificates: Vec<Certificate>,
    /// The sources.
    pub sources: &'a [Source],
    /// Their judges.
    pub reviewers: &'a [SourceReview<'a>],
    /// Index of the first reading of each source, and one past the last.
    pub first_reading: &'a [usize],
    /// The check readings, in order.
    pub checks: &'a [(u32, CheckKind)],
    /// The product readings that were marked as checks, in order.
    pub marks_not_taken: Vec<u32>,
}

/// What the checks say, with what it takes to say it of a lot.
pub struct Judged {
    /// What goes into findings.
    pub findings: TrustFindings,
    brackets: Brackets,
    /// The class of every reading; empty where there is no check reading.
    classes: Vec<MaterialClass>,
    /// Readings that took longer than the check, or less than half as long.
    other_times: Vec<u32>,
    marks_not_taken: Vec<u32>,
}

/// Judges the check readings, and the readings between them.
///
/// `subject` is asked for every reading, once; not at all where there is no check reading.
pub fn judge(reviewed: Reviewed<'_>, subject: &dyn Fn(usize) -> Option<Subject>) -> Judged {
    let Reviewed { settings, certificates, sources, reviewers, first_reading, checks, marks_not_taken } =
        reviewed;
    let count = |at: usize| match (first_reading.get(at), first_reading.get(at + 1)) {
        (Some(first), Some(next)) => next.saturating_sub(*first),
        _ => 0,
    };
    let judge = scores::Judge {
        certificates: &certificates,
        rule: settings.check_rule(),
        reviewed: settings.reviewed(),
    };
    let found: Vec<(CheckFinding, usize, usize)> = checks
        .iter()
        .filter_map(|(reading, kind)| {
            let at = first_reading.partition_point(|first| *first <= *reading as usize).checked_sub(1)?;
            let row = *reading as usize - first_reading.get(at)?;
            let (source, reviewer) = (sources.get(at)?, reviewers.get(at)?);
            let sample = source.readings.identity(Identity::Id, row).unwrap_or("");
            let moment = source.readings.identity(Identity::Time, row).and_then(Moment::read);
            let class = reviewer.class(row).0;
            let day = moment.map(|moment| moment.day);
            let check = scores::CheckReading { kind: *kind, sample, source, reviewer, row, class, day };
            let elements = judge.elements(&check);
            let sample = sample.to_owned();
            Some((CheckFinding { reading: *reading, kind: *kind, sample, moment, class, elements }, at, row))
        })
        .collect();
    // Without a check nothing is asked of any reading.
    let count = |at: usize| if found.is_empty() { 0 } else { count(at) };
    let brackets = Brackets::new(settings, sources, reviewers, &count, &found);
    let mut of_readings = Vec::new();
    let (mut classes, mut other_times) = (Vec::new(), Vec::new());
    for (at, (source, reviewer)) in sources.iter().zip(reviewers).enumerate() {
        let mut asked = brackets.of_source(at, source);
        for row in 0..count(at) {
            let reading = of_readings.len();
            let Some(Subject { class, needed }) = subject(reading) else {
                of_readings.push([None; ELEMENTS]);
                classes.push(MaterialClass::Unknown);
                continue;
            };
            classes.push(class);
            let between = asked.between(row, class);
            let trust = between.map_or([Trust::None; ELEMENTS], |between| brackets.trust(between));
            of_readings.push(brackets::asked_for(trust, needed));
            if let (Some(between), Some(deciseconds)) = (between, reviewer.deciseconds(row))
                && brackets.other_time(between, deciseconds)
            {
                other_times.push(reading as u32);
            }
        }
    }
    let by_rows = (0..sources.len()).filter(|at| count(*at) > 0 && brackets.goes_by_rows(*at)).collect();
    let checks = found.into_iter().map(|(check, ..)| check).collect();
    let findings = TrustFindings { certificates, checks, of_readings, by_rows };
    Judged { findings, brackets, classes, other_times, marks_not_taken }
}
