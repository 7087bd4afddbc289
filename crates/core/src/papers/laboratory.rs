//! The request to a laboratory: what to determine, in what, by which method, and why.

use maud::{Markup, html};

use super::Papers;
use super::cases::{self, Case, Sample};
use crate::inspection::MaterialFinding;
use crate::reading::Identity;
use crate::report::phrases;

/// Most samples of one request.
pub(super) const SAMPLES: usize = 300;
/// Rows for handing over.
const HANDS: usize = 3;
/// What a laboratory is asked to state, by the word of each.
const ASKED_BACK: [&str; 8] = ["result", "unit", "u", "k", "lod", "loq", "method", "date"];

impl Papers<'_> {
    pub(super) fn laboratory_page(&self) -> Markup {
        let samples = self.reader.samples();
        let shown = samples.len().min(SAMPLES);
        let body = html! {
            (self.belongs_to(&html! {
                dt { (self.say("paper-to")) } dd { span class="line" {} }
            }))
            section {
                h2 { (self.say("paper-samples")) }
                @if samples.is_empty() { p { (self.say("paper-samples_none")) } }
                @else { p { (self.with("paper-samples_order", &[("count", &samples.len().to_string())])) } }
                @if samples.len() > shown {
                    p { (self.with("paper-capped", &[("shown", &shown.to_string()), ("total", &samples.len().to_string())])) }
                }
                @for (at, sample) in samples.iter().take(shown).enumerate() { (self.sample(at + 1, shown, sample)) }
            }
            section {
                h2 { (self.say("paper-asked_back")) }
                ul { @for of in ASKED_BACK { li { (self.say(&format!("paper-back-{of}"))) } } }
            }
            section class="whole" {
                h2 { (self.say("paper-safety")) }
                p { (self.say("paper-safety_text")) } p { (self.say("caution-dust")) }
            }
            section class="whole" {
                h2 { (self.say("paper-custody")) }
                p { (self.say("paper-custody_text")) }
                (self.custody())
            }
        };
        self.page("laboratory", &body)
    }

    fn custody(&self) -> Markup {
        let columns = ["number", "by", "to", "when", "seal", "condition"];
        html! {
            table class="fill" {
                thead { tr { @for column in columns { th { (self.say(&format!("paper-custody-{column}"))) } } } }
                tbody { @for row in 1..=HANDS { tr { td { (row) } @for _ in 1..columns.len() { td {} } } } }
            }
        }
    }

    fn sample(&self, number: usize, of: usize, sample: &Sample<'_>) -> Markup {
        let material = sample.material;
        let lot = self.findings.lots.get(material.lot);
        let heading =
            self.with("paper-sample", &[("number", &number.to_string()), ("total", &of.to_string())]);
        html! {
            div class="lot" {
                h3 { (heading) (self.words.colon()) (self.material_name(material)) }
                dl class="key" {
                    dt { (self.say("report-part")) } dd { (self.name(material.part.as_deref())) }
                    dt { (self.say("paper-class")) } dd { (self.say(&format!("class-{}", material.class.code()))) }
                    @if let Some(lot) = lot {
                        dt { (self.say("report-lot")) } dd { (self.lot_name(lot)) }
                        dt { (self.say("report-supplier")) } dd { (self.name(lot.supplier.as_deref())) }
                        @if let Some(until) = Self::until(lot) { dt { (self.say("paper-needed_by")) } dd { b { (until) } } }
                    }
                    dt { (self.say("paper-piece")) } dd { (self.piece(sample)) }
                    dt { (self.say("paper-amount")) } dd { span class="line" {} }
                }
                table {
                    thead { tr {
                        th { (self.say("paper-determine")) } th { (self.say("paper-by_method")) } th { (self.say("paper-why")) }
                    } }
                    tbody {
                        @for case in &sample.cases {
                            tr {
                                td { b { (cases::determined(self.words, &case.what)) } }
                                td {
                                    @if let Some(route) = self.reader.route(&case.what, case.reading) {
                                        (route.method) br; (route.technique)
                                    } @else { (self.say("paper-no_method")) }
                                }
                                td { (self.why(material, case)) }
                            }
                        }
                    }
                }
                table class="fill" {
                    thead { tr {
                        th { (self.say("paper-determine")) }
                        @for of in ASKED_BACK { th { (self.say(&format!("paper-fill-{of}"))) } }
                    } }
                    tbody {
                        @for case in &sample.cases {
                            @for what in cases::determinands(self.words, &case.what) {
                                tr { td { (what) } @for _ in ASKED_BACK { td {} } }
                            }
                        }
                    }
                }
            }
        }
    }

    /// A material by its name, or by its class where it has none.
    pub(super) fn material_name(&self, material: &MaterialFinding) -> Markup {
        if material.name.is_some() {
            self.name(material.name.as_deref())
        } else {
            html! { (self.say(&format!("class-{}", material.class.code()))) }
        }
    }

    /// The pieces that the worst readings were made on.
    fn piece(&self, sample: &Sample<'_>) -> Markup {
        let mut readings: Vec<u32> = sample.cases.iter().map(|case| case.reading).collect();
        readings.dedup();
        html! {
            @for (at, reading) in readings.iter().enumerate() {
                @if at > 0 { br; }
                (self.reading_named(*reading))
            }
        }
    }

    /// A reading by its sample id, piece and spot, and where it stands.
    pub(super) fn reading_named(&self, reading: u32) -> Markup {
        let Some((source, _, row)) = self.place(reading) else { return html! {} };
        let named = [
            ("paper-of_id", Identity::Id),
            ("paper-of_unit", Identity::Unit),
            ("paper-of_spot", Identity::Spot),
        ];
        html! {
            @for (word, identity) in named {
                @if let Some(text) = source.readings.identity(identity, row) {
                    (self.say(word)) " " (self.name(Some(text))) (self.words.comma())
                }
            }
            (self.name(Some(&source.name))) " " (self.with("paper-line", &[("line", &source.readings.line(row).to_string())]))
        }
    }

    /// What was found, as what it was judged, and why.
    pub(super) fn why(&self, material: &MaterialFinding, case: &Case) -> Markup {
        let judged = self.reader.judged(&case.what, case.reading);
        let about = cases::about(self.words, &case.what);
        let reason =
            judged.map(|judged| phrases::reason(self.words, &judged, &about, None)).unwrap_or_default();
        let against = self.reader.against(self.words, &case.what, case.reading);
        html! {
            b { (phrases::outcome(self.words, case.outcome)) } (self.words.colon())
            (self.reader.value(self.words, &case.what, case.reading))
            @if !against.is_empty() { (self.words.semicolon()) (against) }
            (self.words.stop().trim_end())
            @if !reason.is_empty() { (self.words.gap()) (reason) }
            @for reason in case.reasons.iter().filter_map(|at| material.reasons.get(*at)) {
                br; (phrases::lot_reason(self.words, reason))
            }
        }
    }
}
