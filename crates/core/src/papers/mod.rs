//! The papers that go out beside a report: a supplier's self-check sheet, a request to a laboratory, a notice to each supplier
//! of a lot that is held or not accepted, and labels for those lots.
//!
//! They say what the findings say and add nothing to it. Each carries the report's number and the digest of the findings, and
//! what it is not.

mod asked;
mod cases;
mod frame;
mod labels;
mod laboratory;
mod notice;
mod self_check;

use std::io::{self, Write};

use maud::{Markup, html};

use crate::acts::{ActKind, Settings};
use crate::day::Day;
use crate::inspection::{Findings, Inspection, LotFinding};
use crate::judging::SourceReview;
use crate::lot::Disposition;
use crate::report::evidence::Pinned;
use crate::report::phrases;
use crate::visible_text;
use crate::words::Words;

pub use asked::Asked;
pub use cases::{Case, What};
pub use labels::payload;

/// The file of the self-check sheet.
pub const SELF_CHECK: &str = "self-check.html";
/// The file of the laboratory request.
pub const LABORATORY_REQUEST: &str = "laboratory-request.html";
/// The file of the labels.
pub const LABELS: &str = "labels.html";

/// Which papers there are for these findings.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Offer {
    /// How many lots a self-check sheet speaks of; 0: no sheet. It is there for lots that nothing keeps, too: whether these are
    /// a supplier's own readings, the findings do not say.
    pub self_check: usize,
    /// How many materials wait for a laboratory; 0: no request.
    pub samples: usize,
    /// One for each supplier with a lot that is held or not accepted.
    pub notices: Vec<NoticeOffer>,
    /// Lots that are held or not accepted and state no supplier: nobody can be told.
    pub without_supplier: usize,
    /// One for each lot that is held or not accepted; 0: no sheet.
    pub labels: usize,
}

/// One notice that can be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct NoticeOffer {
    /// The supplier.
    pub supplier: String,
    /// Its lots that are held or not accepted, as indices.
    pub lots: Vec<usize>,
    /// The file: `supplier-notice-1-alder-works.html`.
    pub file: String,
}

/// Says which papers there are. No paper is written for nothing.
pub fn offer(inspection: &Inspection, findings: &Findings) -> Offer {
    let held = || findings.lots.iter().enumerate().filter(|(_, lot)| lot.disposition != Disposition::Accept);
    let mut notices: Vec<NoticeOffer> = Vec::new();
    // Lots are sorted by supplier.
    for (at, lot) in held() {
        let Some(supplier) = &lot.supplier else { continue };
        if let Some(last) = notices.last_mut().filter(|last| last.supplier == *supplier) {
            last.lots.push(at);
        } else {
            let file = notice_file(notices.len() + 1, supplier);
            notices.push(NoticeOffer { supplier: supplier.clone(), lots: vec![at], file });
        }
    }
    let settings = inspection.settings();
    Offer {
        self_check: findings.lots.len(),
        samples: cases::Reader::new(inspection, findings, &settings).samples().len(),
        notices,
        without_supplier: held().filter(|(_, lot)| lot.supplier.is_none()).count(),
        labels: held().count(),
    }
}

/// Longest part of a file name that is taken from a name.
const NAME_IN_FILE: usize = 40;

/// A file name that every system takes, whatever the supplier is called: the number makes it the only one of its name, and
/// of the supplier's only letters and digits of ASCII are kept.
fn notice_file(number: usize, supplier: &str) -> String {
    let mut name = String::new();
    for character in supplier.chars() {
        if name.len() >= NAME_IN_FILE {
            break;
        }
        if character.is_ascii_alphanumeric() {
            name.push(character.to_ascii_lowercase());
        } else if !name.is_empty() && !name.ends_with('-') {
            name.push('-');
        }
    }
    let name = name.trim_end_matches('-');
    let dash = if name.is_empty() { "" } else { "-" };
    format!("supplier-notice-{number}{dash}{name}.html")
}

/// What every paper is made from.
pub struct Papers<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    words: &'a Words,
    settings: &'a Settings,
    reader: cases::Reader<'a>,
    number: String,
    digest: String,
}

impl std::fmt::Debug for Papers<'_> {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "Papers({})", self.number)
    }
}

impl<'a> Papers<'a> {
    /// Papers of an inspection, under the number and digest of its report. `settings` are those of the inspection.
    pub fn new(
        inspection: &'a Inspection,
        findings: &'a Findings,
        words: &'a Words,
        settings: &'a Settings,
        pinned: &Pinned,
    ) -> Papers<'a> {
        let (number, digest) = (pinned.number.clone(), pinned.digest.clone());
        let reader = cases::Reader::new(inspection, findings, settings);
        Papers { inspection, findings, words, settings, reader, number, digest }
    }

    /// Writes `self-check.html`.
    ///
    /// # Errors
    /// Those of the sink.
    pub fn self_check(&self, sink: &mut dyn Write) -> io::Result<()> {
        write_markup(sink, &self.self_check_page())
    }

    /// Writes `laboratory-request.html`.
    ///
    /// # Errors
    /// Those of the sink.
    pub fn laboratory_request(&self, sink: &mut dyn Write) -> io::Result<()> {
        write_markup(sink, &self.laboratory_page())
    }

    /// Writes the notice to one supplier. Nothing of any other supplier stands in it.
    ///
    /// # Errors
    /// Those of the sink.
    pub fn notice(&self, offer: &NoticeOffer, sink: &mut dyn Write) -> io::Result<()> {
        write_markup(sink, &self.notice_page(offer))
    }

    /// Writes `labels.html`.
    ///
    /// # Errors
    /// Those of the sink.
    pub fn labels(&self, sink: &mut dyn Write) -> io::Result<()> {
        write_markup(sink, &self.labels_page())
    }

    fn say(&self, id: &str) -> String {
        self.words.say(id)
    }

    fn with(&self, id: &str, arguments: &[(&str, &str)]) -> String {
        self.words.with(id, arguments)
    }

    fn set(&self, kind: ActKind) -> Option<&str> {
        self.settings.inspection(kind)
    }

    /// A name of somebody else's, set apart from the text around it.
    fn name(&self, name: Option<&str>) -> Markup {
        if let Some(name) = name {
            html! { bdi { (visible_text::on_one_line(name)) } }
        } else {
            html! { (self.say("not-stated")) }
        }
    }

    /// A text, or a line to write on.
    fn or_line(text: Option<&str>) -> Markup {
        if let Some(text) = text.filter(|text| !text.is_empty()) {
            html! { bdi { (visible_text::visible(text)) } }
        } else {
            html! { span class="line" {} }
        }
    }

    /// A day as its reader writes it, or a line to write on.
    fn day_or_line(&self, day: Option<&str>) -> Markup {
        Self::or_line(day.map(|day| self.words.moment(day)).as_deref())
    }

    /// A lot by its name, or by its file where it has none.
    fn lot_name(&self, lot: &LotFinding) -> Markup {
        html! { bdi { (visible_text::on_one_line(&phrases::lot_name(self.words, self.inspection, lot))) } }
    }

    /// The same as a heading calls it: a lot that nobody named says so and needs no "Lot" in front.
    fn called_lot(&self, lot: &LotFinding) -> Markup {
        html! { @if lot.lot.is_some() { (self.say("report-lot")) " " } (self.lot_name(lot)) }
    }

    /// The day until which a hold is to end.
    fn until(lot: &LotFinding) -> Option<Day> {
        lot.hold_ends.as_ref().and_then(|ends| ends.until)
    }

    fn place(&self, reading: u32) -> Option<(&'a crate::reading::Source, &SourceReview<'a>, usize)> {
        self.reader.place(reading)
    }
}

fn write_markup(sink: &mut dyn Write, markup: &Markup) -> io::Result<()> {
    sink.write_all(visible_text::in_markup(&markup.0).as_bytes())
}

#[cfg(test)]
mod tests {
    use super::notice_file;

    #[test]
    fn a_file_is_named_so_that_every_system_takes_it() {
        for (supplier, file) in [
            ("Alder Works", "supplier-notice-1-alder-works.html"),
            ("../../etc/passwd", "supplier-notice-1-etc-passwd.html"),
            ("CON", "supplier-notice-1-con.html"),
            ("部品", "supplier-notice-1.html"),
            ("a\\b:c*?\"<>|", "supplier-notice-1-a-b-c.html"),
            ("", "supplier-notice-1.html"),
        ] {
            assert_eq!(notice_file(1, supplier), file);
        }
        assert!(notice_file(12, &"x".repeat(5000)).len() < 70);
    }
}
