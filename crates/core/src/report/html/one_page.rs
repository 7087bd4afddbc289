//! The one page for who decides whether goods move.
//!
//! It has to be one printed page on A4 and on Letter whatever names and languages hold, so names are clipped and lots are
//! listed, worst first, while the lines they are sure to need are there; those left over are counted.

use maud::{Markup, html};

use super::Report;
use crate::acts::ActKind;
use crate::inspection::LotFinding;
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::report::phrases;

/// Lines of 8 pt that the table of lots and the texts around it may take together: what is left of Letter, the shorter paper,
/// beside heads, digest and lines to sign. (Our choice, tried in both browsers with the widest of the usual fonts.)
const LINES: usize = 38;
/// Letters of a line across the page.
const WIDE: usize = 104;
/// Letters of a line of the title, and of what stands in its two columns of facts.
const TITLE: usize = 52;
const KEY: usize = 30;
/// Letters of a line in the columns of lots, reasons and what comes next.
const COLUMNS: [usize; 3] = [22, 36, 36];
/// Most letters of a name and of a sentence; what is longer is clipped and stands whole in the full report.
const NAME: usize = 45;
const SENTENCE: usize = 200;
/// How much is said of each lot: most reasons, most letters of a sentence and of a name. The first where all lots fit with it, else the
/// next with which those that are listed do.
const SAID: [Said; 2] = [(3, SENTENCE, NAME), (2, 150, NAME)];
/// Reasons, letters of a sentence, letters of a name.
type Said = (usize, usize, usize);

/// How wide a text is, in letters: those of East Asian scripts take two.
fn width(text: &str) -> usize {
    text.chars().map(|letter| if u32::from(letter) < 0x1100 { 1 } else { 2 }).sum()
}

/// How many lines a text may need where a line has this many letters. Words that don't fit leave up to a fifth of a short
/// line empty.
fn lines(text: &str, letters: usize) -> usize {
    let room = letters - (letters / 5).min(8);
    if width(text) <= letters { 1 } else { width(text).div_ceil(room) }
}

/// At most so many letters, with `…` for the rest.
pub(super) fn clipped(text: &str, most: usize) -> String {
    if width(text) <= most {
        return text.to_owned();
    }
    let mut taken = 0;
    let kept: String = text
        .chars()
        .take_while(|letter| {
            taken += if u32::from(*letter) < 0x1100 { 1 } else { 2 };
            taken < most
        })
        .collect();
    format!("{kept}…")
}

/// What a lot's row says.
struct Row<'a> {
    lot: &'a LotFinding,
    name: String,
    supplier: String,
    item: String,
    reasons: Vec<String>,
    more: usize,
    next: Vec<String>,
    who: String,
    until: String,
}

impl Row<'_> {
    /// Lines the row is sure to have room in.
    fn lines(&self) -> usize {
        let [of_lot, of_reasons, of_next] = COLUMNS;
        let sum = |texts: &[String], letters| texts.iter().map(|text| lines(text, letters)).sum::<usize>();
        let lot = [&self.name, &self.supplier, &self.item];
        let lot: usize = lot.iter().filter(|text| !text.is_empty()).map(|text| lines(text, of_lot)).sum();
        let next = sum(&self.next, of_next)
            + if self.lot.disposition == Disposition::Accept {
                0
            } else {
                lines(&format!("{}{}{}", self.who, self.until, " ".repeat(22)), of_next)
            };
        lot.max(sum(&self.reasons, of_reasons) + usize::from(self.more > 0) + self.reasons.len() / 3)
            .max(next)
            .max(1)
    }
}

impl Report<'_> {
    fn row<'l>(&self, lot: &'l LotFinding, (most, letters, of_name): Said) -> Row<'l> {
        let holding: Vec<&LotReason> =
            lot.reasons.iter().filter(|reason| reason.effect != Disposition::Accept).collect();
        let mut next: Vec<String> = Vec::new();
        for reason in holding.iter().take(most) {
            let remedy = clipped(&phrases::lot_remedy(self.words, reason), letters);
            if !next.contains(&remedy) {
                next.push(remedy);
            }
        }
        // Where nothing holds the lot any longer: what would, had nobody lifted or claimed anything.
        let rests_on =
            |reason: &&LotReason| matches!(reason.code, LotReasonCode::Lifted | LotReasonCode::ClaimCovers);
        let stated = if holding.is_empty() { lot.reasons.iter().filter(rests_on).collect() } else { holding };
        let ends = lot.hold_ends.clone().unwrap_or_default();
        let blank = || "____________".to_owned();
        Row {
            lot,
            name: clipped(&self.lot_name(lot), of_name),
            supplier: clipped(&self.or_not_stated(lot.supplier.as_deref()), of_name),
            item: clipped(&self.stated_of(lot, ActKind::Item, "description").unwrap_or_default(), of_name),
            reasons: stated
                .iter()
                .take(most)
                .map(|reason| clipped(&phrases::lot_reason(self.words, reason), letters))
                .collect(),
            more: stated.len().saturating_sub(most),
            next,
            who: if ends.who.is_empty() { blank() } else { clipped(&ends.who, NAME) },
            until: ends.until.map_or_else(blank, |day| self.words.day(day)),
        }
    }

    /// The rows that fit, and what is left over of each disposition.
    fn rows(&self, taken: usize) -> (Vec<Row<'_>>, [usize; 3]) {
        let mut last = (Vec::new(), [0; 3]);
        for (at, said) in SAID.iter().enumerate() {
            let (rows, left, fit) = self.rows_of(taken, *said);
            let none_left = left.iter().sum::<usize>() == 0;
            last = (rows, left);
            if fit && (none_left || at > 0) {
                break;
            }
        }
        last
    }

    fn rows_of(&self, taken: usize, said: Said) -> (Vec<Row<'_>>, [usize; 3], bool) {
        let lots = self.lots_worst_first();
        let mut room = LINES.saturating_sub(taken);
        let (mut rows, mut fit): (Vec<Row<'_>>, bool) = (Vec::new(), true);
        for (_, lot) in &lots {
            let row = self.row(lot, said);
            // A rule and its padding between two rows.
            let needed = row.lines() + 1;
            if needed > room && !rows.is_empty() {
                break;
            }
            // The worst lot is always there.
            fit &= needed <= room;
            room = room.saturating_sub(needed);
            rows.push(row);
        }
        let mut left = [0; 3];
        for (_, lot) in lots.iter().skip(rows.len()) {
            left[lot.disposition as usize] += 1;
        }
        (rows, left, fit)
    }

    pub(super) fn one_page(&self, number: &str) -> Markup {
        let cautions = self.words.sentences(&phrases::cautions(self.words));
        let not_assessed: Vec<String> =
            phrases::NOT_ASSESSED.iter().map(|code| self.say(&format!("not-assessed-{code}"))).collect();
        let not_assessed = self.words.sentences(&not_assessed);
        let counts = phrases::summary_counts(self.words, self.findings);
        let says = clipped(&phrases::summary_says(self.words, self.findings), 2 * SENTENCE);
        let evidence = clipped(&phrases::summary_evidence(self.words, self.findings), 2 * SENTENCE);
        let inspected = self.inspected();
        // Of the texts that every page has, these are the ones whose length a language decides.
        let parts = self.parts_text(number);
        let around = [&cautions, &not_assessed, &counts, &says, &evidence, &inspected, &parts];
        let taken: usize = around.iter().map(|text| lines(text, WIDE)).sum();
        let clip = |text: String| clipped(&text, 60);
        let title = clip(self.title());
        let key = [
            [number.to_owned(), clip(self.words.moment(&self.or_blank(ActKind::ReviewedAt)))],
            [
                clip(self.said_or_blank(ActKind::Issuer, &["name"])),
                self.words.moment(&self.or_blank(ActKind::IssuedOn)),
            ],
            [clip(self.said_or_blank(ActKind::Customer, &["name"])), clip(self.or_blank(ActKind::Inspector))],
        ];
        // What is longer than usual at the head: a line of the title is as high as two.
        let longer = key.iter().map(|pair| pair.iter().map(|text| lines(text, KEY)).max().unwrap_or(1) - 1);
        let head = longer.sum::<usize>() + 2 * (lines(&title, TITLE) - 1);
        let taken = taken + head + 2 * usize::from(self.settings.is_invented());
        let (rows, left) = self.rows(taken);
        let [[number_said, reviewed], [issuer, issued], [customer, inspector]] = key;
        let (by, second) = self.authorised();
        html! {
            header {
                h1 { (title) }
                (self.invented())
                dl class="key two" {
                    dt { (self.say("report-number")) } dd { b { (number_said) } }
                    dt { (self.say("report-reviewed")) } dd { (reviewed) }
                    dt { (self.say("report-issuer")) } dd { (issuer) }
                    dt { (self.say("report-issued_on")) } dd { (issued) }
                    dt { (self.say("report-customer")) } dd { (customer) }
                    dt { (self.say("report-inspector")) } dd { (inspector) }
                }
                (self.parts(number))
            }
            section {
                h2 { (self.say("report-page_inspected")) }
                p { (inspected) }
                p { b { (counts) } }
                p { (says) }
                p { (evidence) }
            }
            section {
                h2 { (self.say("report-page_lots")) }
                table class="page" data-element="7.8.6.2-a-page" {
                    thead { tr {
                        th { (self.say("report-lot")) (self.words.comma()) (self.say("report-supplier")) }
                        th { (self.say("report-disposition")) }
                        th { (self.say("report-page_reasons")) }
                        th { (self.say("report-page_next")) }
                    } }
                    tbody { @for row in &rows { (self.lot_row(row)) } }
                }
                @let counts = left.map(|count| count.to_string());
                @let more: usize = left.iter().sum();
                @if more > 0 {
                    p { b { (self.with("report-page_more_lots", &[
                        ("count", &more.to_string()),
                        ("accept", &counts[Disposition::Accept as usize]),
                        ("hold", &counts[Disposition::Hold as usize]),
                        ("not_accept", &counts[Disposition::NotAccept as usize]),
                    ])) } }
                }
            }
            section class="last" {
                p class="small" { b { (self.say("report-cautions")) (self.words.colon()) } (cautions) }
                p class="small" { b { (self.say("report-not_assessed")) (self.words.colon()) } (not_assessed) }
                p class="mono" { (self.say("report-findings_digest")) (self.words.colon()) (self.digest) }
                div class="signatures" {
                    div { (self.say("report-page_decided")) @if !by.is_empty() { br; b { (clipped(&by, NAME)) } } }
                    div { (self.say("report-page_checked")) @if !second.is_empty() { br; b { (clipped(&second, NAME)) } } }
                }
                (self.end(number))
            }
        }
    }

    /// What was inspected: sources, readings, materials.
    fn inspected(&self) -> String {
        let (colon, stop) = (self.words.colon(), self.words.stop());
        let materials = self.findings.materials.len();
        let names: Vec<&str> = self.inspection.sources.iter().map(|source| source.name.as_str()).collect();
        let foreign = self.foreign_books().map(|text| format!("{stop}{text}")).unwrap_or_default();
        format!(
            "{}{colon}{}{stop}{}{colon}{} · {}{colon}{}{foreign}",
            self.say("report-sources"),
            clipped(&self.words.list(&names), 2 * NAME),
            self.say("report-readings"),
            self.findings.verdicts.len(),
            self.say("report-materials"),
            materials
        )
    }

    fn lot_row(&self, row: &Row<'_>) -> Markup {
        let held = row.lot.disposition != Disposition::Accept;
        html! {
            tr {
                td class="id" {
                    b { (row.name) } br; (row.supplier)
                    @if !row.item.is_empty() { br; (row.item) }
                }
                td { (self.disposition(row.lot.disposition)) }
                td {
                    @if row.reasons.is_empty() { (self.say("report-page_nothing")) }
                    @for reason in &row.reasons { p { (reason) } }
                    @if row.more > 0 {
                        p { (self.with("report-page_more_reasons", &[("count", &row.more.to_string())])) }
                    }
                }
                td {
                    @for text in &row.next { p { (text) } }
                    @if held {
                        p {
                            b { (self.say("report-page_by")) (self.words.colon()) } (row.who) (self.words.comma())
                            b { (self.say("report-page_until")) (self.words.colon()) } (row.until)
                        }
                    }
                }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_is_clipped_says_so_and_fits() {
        assert_eq!(clipped("lot", 5), "lot");
        assert_eq!(clipped("housing", 5), "hous…");
        assert_eq!(width(&clipped("外壳批次", 5)), 6, "two wide letters and the sign");
        assert!(lines(&"x".repeat(300), 30) >= 10);
        assert_eq!(lines("short", 30), 1);
    }
}
