//! Labels for lots that are held or not accepted, eight to a sheet of A4 or Letter, each with a code that a reader takes in.

use std::fmt::Write as _;

use maud::{Markup, PreEscaped, html};
use qrcodegen::{QrCode, QrCodeEcc};
use sha2::{Digest, Sha256};

use super::Papers;
use crate::acts::{ActKind, escape};
use crate::inspection::{Inspection, LotFinding};
use crate::lot::Disposition;
use crate::reading::hexadecimal;
use crate::report::phrases;

/// Labels on one sheet.
const ON_A_SHEET: usize = 8;
/// Most labels that are printed.
const LABELS: usize = 2_000;
/// Longest name of a lot in a code, in bytes: a longer one would make the modules too small to read off a box.
const LONGEST_KEY: usize = 120;
/// The light margin that a code needs around it, in modules (ISO/IEC 18004).
const QUIET: i32 = 4;

/// The text in a label's code: `PLUMBLINE/1 NUMBER DISPOSITION LOT`. The lot is `SUPPLIER|LOT`, or `SUPPLIER||FILE` for a lot that is
/// not stated, with a `|` or `\` in a name behind a `\`; one that holds a control character or is longer than 120 bytes is `sha256:`
/// and the first 32 digits of its SHA-256.
pub fn payload(inspection: &Inspection, number: &str, lot: &LotFinding) -> String {
    let supplier = escape(lot.supplier.as_deref().unwrap_or(""));
    let key = match (&lot.lot, lot.source.and_then(|at| inspection.sources.get(at))) {
        (None, Some(source)) => format!("{supplier}||{}", escape(&source.name)),
        (name, _) => format!("{supplier}|{}", escape(name.as_deref().unwrap_or(""))),
    };
    let key = if key.len() > LONGEST_KEY || key.chars().any(char::is_control) {
        let digest = hexadecimal(&Sha256::digest(key.as_bytes()));
        format!("sha256:{}", digest.get(..32).unwrap_or(&digest))
    } else {
        key
    };
    format!("PLUMBLINE/1 {number} {} {key}", lot.disposition.code())
}

/// A code as one path, dark modules only, with its light margin; nothing where a text is too long for any.
fn code(text: &str) -> Option<String> {
    let code = QrCode::encode_text(text, QrCodeEcc::Medium).ok()?;
    let (size, mut path) = (code.size(), String::new());
    for y in 0..size {
        let mut x = 0;
        while x < size {
            let start = x;
            while x < size && code.get_module(x, y) {
                x += 1;
            }
            if x > start {
                let _ = write!(path, "M{},{}h{}v1h-{}z", start + QUIET, y + QUIET, x - start, x - start);
            }
            x += 1;
        }
    }
    let whole = size + 2 * QUIET;
    Some(format!(
        "<svg class=\"code\" xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {whole} {whole}\" shape-rendering=\"crispEdges\" \
         aria-hidden=\"true\"><path fill=\"#fff\" d=\"M0,0h{whole}v{whole}h-{whole}z\"/><path class=\"dark\" fill=\"#000\" d=\"{path}\"/></svg>"
    ))
}

impl Papers<'_> {
    pub(super) fn labels_page(&self) -> Markup {
        let lots: Vec<(usize, &LotFinding)> = self
            .findings
            .lots
            .iter()
            .enumerate()
            .filter(|(_, lot)| lot.disposition != Disposition::Accept)
            .collect();
        let shown = lots.get(..lots.len().min(LABELS)).unwrap_or(&[]);
        let body = html! {
            @if lots.is_empty() { p { (self.say("paper-labels_none")) } }
            @if lots.len() > shown.len() {
                p { (self.with("paper-capped", &[("shown", &shown.len().to_string()), ("total", &lots.len().to_string())])) }
            }
            @for sheet in shown.chunks(ON_A_SHEET) {
                div class="sheet" { @for (at, lot) in sheet { (self.label(*at, lot)) } }
            }
        };
        self.page("labels", &body)
    }

    fn label(&self, at: usize, lot: &LotFinding) -> Markup {
        let parts: Vec<Option<&str>> = {
            let mut parts: Vec<Option<&str>> = self
                .findings
                .parts
                .iter()
                .filter(|part| part.lot == at)
                .map(|part| part.part.as_deref())
                .collect();
            parts.dedup();
            parts
        };
        let more = parts.len().saturating_sub(1);
        // The first is one of those that decide; behind a refusal the holds are reasons, too.
        let first = lot.reasons.iter().find(|reason| reason.effect == lot.disposition);
        let keeping = lot.reasons.iter().filter(|reason| reason.effect != Disposition::Accept).count();
        let who = lot.hold_ends.as_ref().map_or("", |ends| ends.who.as_str());
        let liftable = lot.disposition == Disposition::Hold
            && lot
                .reasons
                .iter()
                .filter(|one| one.effect != Disposition::Accept)
                .all(|one| one.code.may_be_lifted());
        let lifts = if liftable { "paper-label_lift_two" } else { "paper-label_lift_result" };
        let text = payload(self.inspection, &self.number, lot);
        html! {
            div class={ "label label-" (lot.disposition.code()) } {
                p class="word" { (self.say(&format!("paper-word-{}", lot.disposition.code()))) }
                div class="beside" {
                    dl {
                        dt { (self.say("report-lot")) } dd class="big" { (self.lot_name(lot)) }
                        dt { (self.say("report-part")) } dd {
                            (self.name(parts.first().copied().flatten()))
                            @if more > 0 { " " (self.with("paper-label_more_parts", &[("count", &more.to_string())])) }
                        }
                        dt { (self.say("report-supplier")) } dd { (self.name(lot.supplier.as_deref())) }
                        dt { (self.say("report-number")) } dd {
                            (self.number)
                            // A label is cut out and stands alone.
                            @if self.settings.is_invented() { " " b { (self.say("report-invented_short")) } }
                        }
                        dt { (self.say("report-reviewed")) } dd { (self.day_or_line(self.set(ActKind::ReviewedAt))) }
                    }
                    @if let Some(code) = code(&text) { (PreEscaped(code)) }
                }
                p class="because" {
                    @if let Some(first) = first { (phrases::lot_reason(self.words, first)) }
                }
                // By itself, so that a long reason never cuts it off.
                @if keeping > 1 { p class="more" { (self.with("paper-label_more_reasons", &[("count", &(keeping - 1).to_string())])) } }
                p class="lifts" { (self.say(lifts)) @if !who.is_empty() { (PreEscaped(self.words.bracketed(&self.name(Some(who)).0))) } }
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_code_has_its_light_margin_and_one_path_of_dark_modules() {
        let code = code("PLUMBLINE/1 PL-1 hold A|1").unwrap();
        // Version 2: 25 modules and 4 on either side.
        assert!(code.contains("viewBox=\"0 0 33 33\""), "{code}");
        assert!(code.contains("d=\"M4,4h7v1h-7z"), "a finder pattern begins inside the margin: {code}");
    }
}
