//! `report.html`: one self-contained file that prints on A4 and Letter and reads with scripts off.
//!
//! Everything shown is text run through one escaping writer; the only markup taken as it is comes from this crate
//! (its own style sheet and the rulers it draws).

use std::io::{self, Write};

use maud::{Markup, PreEscaped, html};

use super::{PROGRAM, json, phrases};
use crate::acts::{ActKind, Settings, Target};
use crate::inspection::{Findings, Inspection, LotFinding, MaterialFinding};
use crate::judging::{Assessed, SourceReview};
use crate::lot::{Disposition, LotReason};
use crate::material::MaterialClass;
use crate::next_step::NextStep;
use crate::outcome::{Outcome, Reason};
use crate::reading::{ColumnRole, Identity, Source, hexadecimal};
use crate::rules::LowEdge;
use crate::substance::{Halogen, Substance};
use crate::words::Words;

/// Most readings the printed annex holds; the rest stand in the CSV, and the annex says so.
pub const ANNEX_ROWS: usize = 1000;
/// Most open outcomes that are printed with their working.
pub const OPEN_CASES: usize = 200;
/// Most other readings of a case that are named.
const OTHERS_NAMED: usize = 30;
/// Most materials that are printed.
pub const MATERIAL_ROWS: usize = 1000;
/// Most refused rows of a source that are printed.
const REFUSED_ROWS: usize = 100;

const STYLE: &str = include_str!("report.css");

struct Report<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    words: &'a Words,
    settings: Settings,
    reviewers: Vec<SourceReview<'a>>,
    digest: String,
}

/// Writes the report.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let settings = inspection.settings();
    let digest = findings_digest(inspection, findings, words)?;
    let for_reviewers = settings.clone();
    let report = Report {
        inspection,
        findings,
        words,
        settings,
        reviewers: inspection
            .sources
            .iter()
            .map(|source| SourceReview::new(source, &inspection.books, &for_reviewers))
            .collect(),
        digest,
    };
    let number = report.number();
    let head = html! {
        (maud::DOCTYPE)
        (PreEscaped("<html lang=\"en\">"))
        head {
            meta charset="utf-8";
            meta name="viewport" content="width=device-width, initial-scale=1";
            meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'; img-src data:";
            title { (report.title()) " · " (number) }
            style { (PreEscaped(STYLE)) (PreEscaped(format!(":root{{--id:\"{number}\"}}"))) }
        }
    };
    write_markup(sink, &head)?;
    sink.write_all(b"<body><main>")?;
    for section in
        [report.heading(&number), report.summary(), report.cautions(), report.lots(), report.materials()]
    {
        write_markup(sink, &section)?;
    }
    report.open_outcomes(sink)?;
    for section in [report.trust(), report.not_assessed(), report.method(), report.sources(), report.acts()] {
        write_markup(sink, &section)?;
    }
    report.annex(sink)?;
    write_markup(sink, &report.signatures(&number))?;
    sink.write_all(b"</main></body></html>\n")
}

fn write_markup(sink: &mut dyn Write, markup: &Markup) -> io::Result<()> {
    sink.write_all(markup.0.as_bytes())
}

/// SHA-256 of the findings as JSON, which pins the report to its data.
fn findings_digest(inspection: &Inspection, findings: &Findings, words: &Words) -> io::Result<String> {
    struct Hashing(sha2::Sha256);
    impl Write for Hashing {
        fn write(&mut self, bytes: &[u8]) -> io::Result<usize> {
            sha2::Digest::update(&mut self.0, bytes);
            Ok(bytes.len())
        }
        fn flush(&mut self) -> io::Result<()> {
            Ok(())
        }
    }
    let mut hashing = Hashing(sha2::Digest::new());
    {
        let mut buffered = io::BufWriter::with_capacity(64 * 1024, &mut hashing);
        json::write(inspection, findings, words, &mut buffered)?;
        buffered.flush()?;
    }
    Ok(hexadecimal(&sha2::Digest::finalize(hashing.0)))
}

impl Report<'_> {
    fn say(&self, id: &str) -> String {
        self.words.say(id)
    }

    fn set(&self, kind: ActKind) -> Option<&str> {
        self.settings.inspection(kind)
    }

    fn title(&self) -> String {
        self.set(ActKind::Title).map_or_else(|| self.say("report-title"), str::to_owned)
    }

    /// From date and digest, so that the same findings of the same day have the same number and no other has it.
    fn number(&self) -> String {
        let date: String = self
            .set(ActKind::ReviewedAt)
            .unwrap_or("")
            .chars()
            .filter(char::is_ascii_digit)
            .take(8)
            .collect();
        let digest = self.digest.get(..10).unwrap_or("").to_uppercase();
        if date.is_empty() { format!("PL-{digest}") } else { format!("PL-{date}-{digest}") }
    }

    fn or_blank(&self, kind: ActKind) -> String {
        self.set(kind).map_or_else(|| self.say("report-blank"), str::to_owned)
    }

    fn heading(&self, number: &str) -> Markup {
        html! {
            header {
                h1 { (self.title()) }
                p class="sub" { (self.say("report-subtitle")) }
                dl class="key" {
                    dt { (self.say("report-number")) } dd { b { (number) } }
                    dt { (self.say("report-reviewed")) } dd { (self.or_blank(ActKind::ReviewedAt)) }
                    dt { (self.say("report-inspector")) } dd { (self.or_blank(ActKind::Inspector)) }
                    dt { (self.say("report-place")) } dd { (self.or_blank(ActKind::Place)) }
                    @if let Some(category) = self.set(ActKind::Category) {
                        dt { (self.say("report-category")) } dd { (category) }
                    }
                    @if let Some(date) = self.set(ActKind::PlacingDate) {
                        dt { (self.say("report-placing")) } dd { (date) }
                    }
                    dt { (self.say("report-program")) } dd { (PROGRAM.name) " " (PROGRAM.version) }
                    dt { (self.say("report-findings_digest")) } dd class="mono" { (self.digest) }
                }
            }
        }
    }

    fn summary(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-summary")) }
                p { b { (phrases::summary_counts(self.words, self.findings)) } }
                p { (phrases::summary_says(self.words, self.findings)) }
                p { (phrases::summary_evidence(self.words, self.findings)) }
                p class="sub" { (self.say("report-legend")) }
            }
        }
    }

    fn cautions(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-cautions")) }
                ul class="cautions" {
                    @for caution in phrases::cautions(self.words) { li { (caution) } }
                }
            }
        }
    }

    fn disposition(&self, disposition: Disposition) -> Markup {
        html! {
            span class={ "d d-" (disposition.code()) } {
                (self.say(&format!("disposition-{}", disposition.code())))
            }
        }
    }

    /// A material is never "accepted": its lot is.
    fn material_disposition(&self, disposition: Disposition) -> Markup {
        html! {
            span class={ "d d-" (disposition.code()) } {
                (self.say(&format!("material-disposition-{}", disposition.code())))
            }
        }
    }

    fn outcome(&self, outcome: Outcome) -> Markup {
        html! { span class={ "o o-" (outcome.code()) } { (phrases::outcome_short(self.words, outcome)) } }
    }

    /// Short and long form; once where they are the same words.
    fn outcome_twice(&self, outcome: Outcome) -> Markup {
        let (short, long) =
            (phrases::outcome_short(self.words, outcome), phrases::outcome(self.words, outcome));
        html! { (self.outcome(outcome)) @if short != long { " (" (long) ")" } }
    }

    fn reasons(&self, reasons: &[LotReason]) -> Markup {
        html! {
            ol {
                @for reason in reasons {
                    li class=[(reason.effect == Disposition::Accept).then_some("advisory")] {
                        (phrases::lot_reason(self.words, reason))
                        @if reason.effect != Disposition::Accept {
                            br; i { (phrases::lot_remedy(self.words, reason.code)) }
                        }
                    }
                }
            }
        }
    }

    fn lot_name(&self, lot: &LotFinding) -> String {
        phrases::lot_name(self.words, self.inspection, lot)
    }

    fn lots(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-lots")) }
                @for lot in self.lots_worst_first() {
                    div class="lot" {
                        h3 {
                            @if lot.lot.is_some() { (self.say("report-lot")) " " }
                            (self.lot_name(lot)) " "
                            (self.disposition(lot.disposition))
                        }
                        p class="sub" {
                            (self.say("report-supplier")) ": "
                            (lot.supplier.clone().unwrap_or_else(|| self.say("not-stated")))
                            " · " (self.say("report-readings")) ": " (lot.readings)
                            " · " (self.say("report-materials")) ": " (lot.materials)
                        }
                        @if !lot.reasons.is_empty() {
                            p class="keep" { b { (self.say("report-reasons")) } }
                            (self.reasons(&lot.reasons))
                        }
                        @if let Some(text) = self.rests_on(lot) { p { (text) } }
                        @if lot.disposition != Disposition::Accept { p class="sub" { (self.say("report-hold_ends")) } }
                    }
                }
            }
        }
    }

    fn lots_worst_first(&self) -> Vec<&LotFinding> {
        let mut lots: Vec<&LotFinding> = self.findings.lots.iter().collect();
        lots.sort_by_key(|lot| std::cmp::Reverse(lot.disposition));
        lots
    }

    /// The sampling a lot's disposition rests on, where it is given.
    fn rests_on(&self, lot: &LotFinding) -> Option<String> {
        let of_lot = |kind| {
            self.settings.of_lot(
                kind,
                lot.supplier.as_deref().unwrap_or(""),
                lot.lot.as_deref().unwrap_or(""),
            )
        };
        let (size, take) = (of_lot(ActKind::LotSize)?, of_lot(ActKind::UnitsToTake)?);
        let text = self.words.with(
            "report-rests_on",
            &[("size", &size.to_string()), ("take", &take.to_string()), ("units", &lot.units.to_string())],
        );
        Some(text)
    }

    fn or_not_stated(&self, text: Option<&str>) -> String {
        text.map_or_else(|| self.say("not-stated"), str::to_owned)
    }

    fn materials(&self) -> Markup {
        let all = &self.findings.materials;
        html! {
            section {
                h2 { (self.say("report-results")) }
                p class="keep" { (self.say("report-results_text")) }
                @if all.len() > MATERIAL_ROWS {
                    p { (self.words.with("report-materials_capped", &[
                        ("shown", &MATERIAL_ROWS.to_string()), ("total", &all.len().to_string()),
                    ])) }
                }
                table class="tight" {
                    thead { tr {
                        th { (self.say("report-material_head")) }
                        th { (self.say("report-class")) }
                        th class="n" { (self.say("report-readings")) }
                        @for substance in Substance::ALL { th { (substance.symbol()) } }
                        @for halogen in [Halogen::Cl, Halogen::Total] { th { (halogen_head(halogen)) } }
                        th { (self.say("report-disposition")) }
                    } }
                    tbody {
                        @for material in all.iter().take(MATERIAL_ROWS) { (self.material(material)) }
                    }
                }
            }
        }
    }

    fn material(&self, material: &MaterialFinding) -> Markup {
        let lot = self.findings.lots.get(material.lot).map(|lot| self.lot_name(lot)).unwrap_or_default();
        html! {
            tr {
                td class="id" {
                    b { (self.or_not_stated(material.name.as_deref())) } br;
                    (self.say("report-part")) " " (self.or_not_stated(material.part.as_deref())) br;
                    (self.say("report-lot")) " " (lot)
                }
                td { (self.say(&format!("class-{}", material.class.code()))) }
                td class="n" { (material.readings.len()) }
                @for substance in Substance::ALL { td { (self.outcome(material.tally.worst(substance))) } }
                @for halogen in [Halogen::Cl, Halogen::Total] { td { (self.outcome(material.tally.worst_halogen(halogen))) } }
                td { (self.material_disposition(material.disposition)) }
            }
        }
    }

    /// Every open or over outcome with value, reason, working, ruler and next step.
    fn open_outcomes(&self, sink: &mut dyn Write) -> io::Result<()> {
        write_markup(sink, &html! { (PreEscaped("<section>")) h2 { (self.say("report-open")) } })?;
        let open = |outcome: &Outcome| !outcome.is_settled();
        let total: usize = self
            .findings
            .verdicts
            .iter()
            .filter(|one| !one.check)
            .map(|one| {
                let halogens =
                    if self.halogens_count() { one.halogens.iter().filter(|o| open(o)).count() } else { 0 };
                one.substances.iter().filter(|o| open(o)).count() + halogens
            })
            .sum();
        if total == 0 {
            write_markup(sink, &html! { p { (self.say("report-open_none")) } })?;
        }
        if total > OPEN_CASES {
            let text = self.words.with(
                "report-open_capped",
                &[("shown", &OPEN_CASES.to_string()), ("total", &total.to_string())],
            );
            write_markup(sink, &html! { p { (text) } })?;
        }
        let mut shown = 0;
        // Worst first, so that what is cut off is never the worst; readings of one material that are open for the
        // same reason with the same next step stand together under the highest of them.
        for wanted in Outcome::ALL.into_iter().rev().filter(|outcome| !outcome.is_settled()) {
            for material in &self.findings.materials {
                for case in self.cases(material, wanted) {
                    if shown >= OPEN_CASES {
                        break;
                    }
                    shown += case.readings.len();
                    write_markup(sink, &self.case(&case))?;
                }
            }
        }
        sink.write_all(b"</section>")
    }

    fn halogens_count(&self) -> bool {
        self.settings.halogen_book(&self.inspection.books).is_some()
    }

    fn place(&self, index: usize) -> Option<(&Source, &SourceReview<'_>, usize)> {
        let (at, row) = self.findings.place(index)?;
        Some((self.inspection.sources.get(at)?, self.reviewers.get(at)?, row))
    }

    fn reading_name(&self, source: &Source, row: usize) -> String {
        let mut parts: Vec<String> =
            [Identity::Id, Identity::Unit, Identity::Spot, Identity::Part, Identity::Material]
                .iter()
                .filter_map(|identity| source.readings.identity(*identity, row).map(str::to_owned))
                .collect();
        parts.push(format!(
            "{} · {} {}",
            source.name,
            self.say("report-line").to_lowercase(),
            source.readings.line(row)
        ));
        parts.join(" · ")
    }

    /// The open cases of one material with this outcome, each with all its readings.
    fn cases(&self, material: &MaterialFinding, wanted: Outcome) -> Vec<Case> {
        let mut cases: Vec<Case> = Vec::new();
        for reading in &material.readings {
            let Some(verdicts) = self.findings.verdicts.get(*reading as usize) else { continue };
            let halogens = self.halogens_count() && verdicts.halogens.contains(&wanted);
            if !verdicts.substances.contains(&wanted) && !halogens {
                continue;
            }
            let Some((_, reviewer, row)) = self.place(*reading as usize) else { continue };
            let assessed = reviewer.assess(row);
            for (substance, judged) in Substance::ALL.iter().zip(&assessed.substances) {
                if judged.outcome == wanted {
                    let steps =
                        phrases::next_of_substance(self.inspection, reviewer, *substance, judged, row);
                    add_to_cases(&mut cases, About::Substance(*substance), judged.reason, steps, *reading);
                }
            }
            for halogen in Halogen::ALL {
                let judged = assessed.halogen(halogen);
                if halogens && judged.outcome == wanted {
                    let steps = phrases::next_of_halogen(self.inspection, reviewer, halogen, &judged, row);
                    add_to_cases(&mut cases, About::Halogen(halogen), judged.reason, steps, *reading);
                }
            }
        }
        cases
    }

    fn case(&self, case: &Case) -> Markup {
        let value_of = |reading: u32| {
            let place = self.place(reading as usize);
            place.map_or(crate::quantity::MassFraction::ZERO, |(source, reviewer, row)| match case.about {
                About::Substance(substance) => source.readings.cell(substance.element(), row).value,
                About::Halogen(halogen) => match phrases::element_of(halogen) {
                    Some(element) => source.readings.cell(element, row).value,
                    None => reviewer.assess(row).total.high.unwrap_or_default(),
                },
            })
        };
        // The first of the highest, so that the choice never depends on anything but the readings.
        let highest = case.readings.iter().rev().copied().max_by_key(|reading| value_of(*reading));
        let Some(highest) = highest else { return html! {} };
        let Some((source, reviewer, row)) = self.place(highest as usize) else { return html! {} };
        let assessed = reviewer.assess(row);
        let others: Vec<String> = case
            .readings
            .iter()
            .filter(|reading| **reading != highest)
            .take(OTHERS_NAMED)
            .filter_map(|reading| {
                let (source, _, row) = self.place(*reading as usize)?;
                let name = source.readings.identity(Identity::Id, row).map_or_else(
                    || format!("{} {}", self.say("report-line").to_lowercase(), source.readings.line(row)),
                    str::to_owned,
                );
                Some(format!("{name} ({})", value_of(*reading)))
            })
            .collect();
        let more = case.readings.len().saturating_sub(1 + OTHERS_NAMED);
        html! {
            div class="case" {
                @match case.about {
                    About::Substance(substance) => (self.open_case(source, reviewer, row, &assessed, substance)),
                    About::Halogen(halogen) => (self.open_halogen(source, row, &assessed, halogen)),
                }
                @if !others.is_empty() {
                    p {
                        (self.say("report-also")) ": " (others.join(", "))
                        @if more > 0 { " " (self.words.with("report-also_more", &[("count", &more.to_string())])) }
                    }
                }
                @match case.about {
                    About::Substance(substance) => (self.steps(&case.steps, substance.symbol())),
                    About::Halogen(halogen) => {
                        (self.steps(&case.steps, &self.say(&format!("substance-{}", halogen.name()))))
                    }
                }
            }
        }
    }

    fn open_case(
        &self,
        source: &Source,
        reviewer: &SourceReview<'_>,
        row: usize,
        assessed: &Assessed,
        substance: Substance,
    ) -> Markup {
        let Some(judged) = assessed.substances.get(substance as usize) else { return html! {} };
        let cell = source.readings.cell(substance.element(), row);
        let written = phrases::written_of(source, substance.element(), row);
        let rule = self.inspection.books.screening();
        let band = rule.and_then(|(_, rule)| {
            let edges = rule.band(substance, assessed.class)?.edges?;
            match edges.low {
                LowEdge::Fixed(low) => Some((low, rule.sigma_factor, cell.value)),
                LowEdge::DetectionLimit { .. } => None,
            }
        });
        let (working, ruler) = match rule {
            Some((_, rule)) => (
                phrases::working(
                    self.words,
                    rule,
                    substance,
                    assessed.class,
                    &cell,
                    judged,
                    reviewer.thickness_share(substance, row),
                ),
                phrases::ruler(self.words, rule, substance, assessed.class, &cell, judged),
            ),
            None => (String::new(), String::new()),
        };
        html! {
                p {
                    b { (substance.symbol()) ", " (self.say(&format!("substance-{}", substance.symbol()))) ": " }
                    (self.outcome_twice(judged.outcome)) ". "
                    (phrases::value(self.words, &cell, judged.used.sigma.or(reviewer.printed_sigma(substance.element(), &cell, row)), &written))
                }
                p class="sub" {
                    (self.reading_name(source, row)) " · "
                    (self.say(&format!("class-{}", assessed.class.code())))
                }
                @if judged.reason.is_some() { p { (phrases::reason(self.words, judged, substance.symbol(), band)) } }
                @if !working.is_empty() {
                    p { (working) " " (self.say("report-uncertainty_from")) " " (phrases::sigma_from(self.words, judged.used.from)) "." }
                }
                @if !ruler.is_empty() { figure style="margin:1mm 0" { (PreEscaped(ruler)) } }
                @if assessed.class == MaterialClass::Unknown {
                    p {
                        @for class in MaterialClass::BANDED {
                            (self.say(&format!("class-{}", class.code()))) ": "
                            (phrases::outcome(self.words, reviewer.judge_as(substance, class, row).outcome)) ". "
                        }
                    }
                }
        }
    }

    fn open_halogen(&self, source: &Source, row: usize, assessed: &Assessed, halogen: Halogen) -> Markup {
        let judged = assessed.halogen(halogen);
        let value = match phrases::element_of(halogen) {
            Some(element) => {
                let cell = source.readings.cell(element, row);
                phrases::value(
                    self.words,
                    &cell,
                    judged.used.sigma,
                    &phrases::written_of(source, element, row),
                )
            }
            None => phrases::total(self.words, &assessed.total),
        };
        let about = self.say(&format!("substance-{}", halogen.name()));
        html! {
                p { b { (about) ": " } (self.outcome_twice(judged.outcome)) ". " (value) }
                p class="sub" { (self.reading_name(source, row)) }
                @if judged.reason.is_some() { p { (phrases::reason(self.words, &judged, &about, None)) } }
        }
    }

    fn steps(&self, steps: &[crate::next_step::NextStep], about: &str) -> Markup {
        html! {
            @if !steps.is_empty() {
                p {
                    b { (self.say("report-next")) ": " }
                    @for (at, step) in steps.iter().enumerate() {
                        @if at > 0 { " " }
                        (phrases::next(self.words, step, about))
                    }
                }
            }
        }
    }

    fn trust(&self) -> Markup {
        html! {
            section { h2 { (self.say("report-trust")) } p { (self.say("report-trust_text")) } }
        }
    }

    fn not_assessed(&self) -> Markup {
        html! {
            section {
                h2 { (self.say("report-not_assessed")) }
                ul { @for code in phrases::NOT_ASSESSED { li { (self.say(&format!("not-assessed-{code}"))) } } }
            }
        }
    }

    fn method(&self) -> Markup {
        let books = &self.inspection.books;
        html! {
            section {
                h2 { (self.say("report-method")) }
                p { (self.say("report-method_text")) }
                @if let Some((_, rule)) = books.screening() {
                    p { (self.words.with("report-rule_text", &[
                        ("k", &rule.sigma_factor.to_string()),
                        ("low_sign", if rule.equal_is_below { "≤" } else { "<" }),
                        ("high_sign", if rule.equal_is_over { "≥" } else { ">" }),
                    ])) }
                }
                @if let Some((_, rule)) = books.halogens() {
                    p { (self.words.with("report-rule_halogens", &[
                        ("k", &rule.sigma_factor.to_string()),
                        ("within_sign", if rule.equal_is_within { "≤" } else { "<" }),
                        ("over_sign", if rule.equal_is_within { ">" } else { "≥" }),
                    ])) }
                }
                p {
                    @match self.settings.halogen_book(books) {
                        Some(book) => (self.words.with("report-halogens_moved", &[("book", book)])),
                        None => (self.say("report-halogens_shown")),
                    }
                }
                p { (self.say("report-uncertainty")) }
                p { (self.say("report-thickness")) }
                @for book in books.used(&self.settings.books) {
                    h3 { (book.title) }
                    dl class="key" {
                        dt { (self.say("report-book")) } dd { (book.id) }
                        dt { (self.say("report-edition")) } dd { (book.edition) }
                        dt { (self.say("report-confidence")) } dd { (book.confidence) }
                        dt { (self.say("report-digest")) } dd class="mono" { (book.sha256) }
                    }
                    @if !book.note.is_empty() { p { (book.note) } }
                    @if !book.limits.is_empty() {
                        ul { @for row in &book.limits { li { (super::books::limit(self.words, row)) } } }
                    }
                    @if let Some(rule) = &book.screening {
                        table {
                            caption { (self.say("report-bands")) }
                            thead { tr {
                                th { (self.say("report-substance")) } th { (self.say("report-class")) }
                                th class="n" { (self.say("report-low")) } th class="n" { (self.say("report-high")) }
                                th { (self.say("report-clause")) }
                            } }
                            tbody {
                                @for (substance, class, band) in rule.bands() {
                                    tr {
                                        td { (substance.symbol()) }
                                        td { (self.say(&format!("class-{}", class.code()))) }
                                        @match band.edges {
                                            None => { td { (self.say("outcome-not_applicable")) } td {} }
                                            Some(edges) => {
                                                td class="n" { @match edges.low {
                                                    LowEdge::Fixed(low) => (low),
                                                    LowEdge::DetectionLimit { at_most } => (self.words.with(
                                                        "report-detection_edge", &[("limit", &at_most.to_string())])),
                                                } }
                                                td class="n" { @match edges.high {
                                                    Some(high) => (high),
                                                    None => (self.say("report-none")),
                                                } }
                                            }
                                        }
                                        td { (band.citation.source) ", " (band.citation.clause) }
                                    }
                                }
                            }
                        }
                    }
                    @if let Some(rule) = &book.halogens {
                        table {
                            thead { tr {
                                th { (self.say("report-substance")) } th class="n" { (self.say("report-limit")) }
                                th { (self.say("report-clause")) }
                            } }
                            tbody {
                                @for halogen in Halogen::ALL {
                                    tr {
                                        td { (self.say(&format!("substance-{}", halogen.name()))) }
                                        td class="n" { (rule.limit(halogen)) " mg/kg" }
                                        td { (rule.citation_of(halogen).source) ", " (rule.citation_of(halogen).clause) }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    fn sources(&self) -> Markup {
        let total = json::totals(self.inspection, self.findings);
        let row = |name: &str, counts: &crate::inspection::RowCounts| {
            html! {
                td { (name) }
                td {
                    (counts.rows_in) " = " (counts.used) " + " (counts.check) " + " (counts.duplicate) " + "
                    (counts.set_aside) " + " (counts.refused)
                }
                td class="n" { (counts.readings) }
            }
        };
        html! {
            section {
                h2 { (self.say("report-sources")) }
                table {
                    thead { tr {
                        th { (self.say("report-file")) } th { (self.say("report-rows")) }
                        th class="n" { (self.say("report-readings")) } th { (self.say("report-digest")) }
                    } }
                    tbody {
                        @for (at, source) in self.inspection.sources.iter().enumerate() {
                            tr {
                                (row(&source.name, &self.findings.counts(self.inspection, at)))
                                td class="mono" {
                                    (source.sha256)
                                    @if let Some(packed) = &source.container {
                                        " "
                                        (self.words.with("report-packed_in", &[("name", &packed.name)]))
                                        " " (packed.sha256)
                                    }
                                }
                            }
                        }
                        tr { (row(&self.say("report-total_rows"), &total)) td {} }
                    }
                }
                h3 { (self.say("report-refused")) }
                @if self.inspection.sources.iter().all(|source| source.refusals.kept.is_empty()) {
                    p { (self.say("report-refused_none")) }
                } @else {
                    table {
                        thead { tr {
                            th { (self.say("report-file")) } th class="n" { (self.say("report-line")) }
                            th { (self.say("report-column")) } th { (self.say("report-why")) }
                            th { (self.say("report-remedy")) }
                        } }
                        tbody { @for source in &self.inspection.sources { (self.refused(source)) } }
                    }
                }
                h3 { (self.say("report-columns_used")) }
                @for source in &self.inspection.sources {
                    @if let Some(how) = self.how_it_was_read(source) {
                        p { b { (source.name) } ": " (how) }
                    }
                    @for block in &source.blocks {
                        p {
                            b { (source.name) } ", " (self.say("report-line").to_lowercase()) " " (block.header_line) ": "
                            (self.columns_used(block))
                        }
                    }
                }
                h3 { (self.say("report-notices")) }
                @if self.inspection.sources.iter().all(|source| source.notices.kept.is_empty()) {
                    p { (self.say("report-notices_none")) }
                } @else {
                    table {
                        thead { tr {
                            th { (self.say("report-file")) } th class="n" { (self.say("report-line")) }
                            th { (self.say("report-column")) } th { (self.say("report-why")) }
                        } }
                        tbody {
                            @for source in &self.inspection.sources {
                                @for notice in source.notices.kept.iter().take(REFUSED_ROWS) {
                                    tr {
                                        td { (source.name) }
                                        td class="n" { @if notice.line > 0 { (notice.line) } }
                                        td { @if notice.column > 0 { (notice.column) " " (notice.heading) } }
                                        td { (phrases::notice(self.words, notice, Some(source))) }
                                    }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    /// What stands between a source's bytes and its table, where that is more than a text in UTF-8.
    fn how_it_was_read(&self, source: &Source) -> Option<String> {
        let mut parts = Vec::new();
        if let Some(sheet) = source.sheets.iter().find(|sheet| sheet.read) {
            let others = (source.sheets.len() - 1).to_string();
            parts.push(self.words.with("report-sheet_read", &[("name", &sheet.name), ("others", &others)]));
        }
        if !matches!(source.encoding, "" | "UTF-8") {
            let known = self.say(&format!("encoding-by-{}", source.encoding_known_by.code()));
            parts.push(format!("{}: {known}", source.encoding));
        }
        parts.extend(source.stated.iter().filter(|stated| stated.used_as.is_some()).map(|stated| {
            self.words.with(
                "report-stated_above",
                &[("line", &stated.line.to_string()), ("text", &format!("{}: {}", stated.key, stated.value))],
            )
        }));
        (!parts.is_empty()).then(|| parts.join("; "))
    }

    /// What the columns of a block were taken for, in one line.
    fn columns_used(&self, block: &crate::reading::Block) -> String {
        let used = block.columns.iter().filter(|column| column.role != ColumnRole::Unused);
        let texts: Vec<String> = used
            .map(|column| {
                let role = self.say(&format!("role-{}", column.role.code()));
                let of = column.role.of().map_or_else(String::new, |(element, oxide)| match oxide {
                    Some(oxide) => format!(" {element} ({oxide})"),
                    None => format!(" {element}"),
                });
                let detail = match &column.role {
                    ColumnRole::Value { unit, .. } | ColumnRole::AnyValue { unit } => {
                        format!(" {}", unit.or(block.set_unit).map_or("?", crate::quantity::Unit::sign))
                    }
                    ColumnRole::Error { error, .. } | ColumnRole::AnyError { error } => {
                        let multiple = error.multiple.or(block.stated_above);
                        let multiple = multiple.map_or_else(|| "?".to_owned(), |one| one.to_string());
                        format!(" {multiple}s{}", if error.relative { " %" } else { "" })
                    }
                    _ => String::new(),
                };
                format!("{} = {role}{of}{detail}", column.heading)
            })
            .collect();
        texts.join("; ")
    }

    fn refused(&self, source: &Source) -> Markup {
        let list = &source.refusals;
        let left = list.left_out + list.kept.len().saturating_sub(REFUSED_ROWS) as u64;
        html! {
            @for notice in list.kept.iter().take(REFUSED_ROWS) {
                tr {
                    td { (source.name) }
                    td class="n" { @if notice.line > 0 { (notice.line) } }
                    td { @if notice.column > 0 { (notice.column) " " (notice.heading) } }
                    td { (phrases::notice(self.words, notice, Some(source))) }
                    td { (phrases::notice_remedy(self.words, notice.code)) }
                }
            }
            @if left > 0 {
                tr { td { (source.name) } td colspan="4" {
                    (self.words.with("report-refused_capped", &[("left", &left.to_string())]))
                } }
            }
        }
    }

    fn acts(&self) -> Markup {
        let undone = crate::acts::undone(&self.inspection.acts);
        html! {
            section {
                h2 { (self.say("report-acts")) }
                @if self.inspection.acts.is_empty() {
                    p { (self.say("report-acts_none")) }
                } @else {
                    table {
                        thead { tr {
                            th class="n" { "#" } th { (self.say("report-act")) } th { (self.say("report-target")) }
                            th { (self.say("report-by")) } th { (self.say("report-at")) } th { (self.say("report-note")) }
                        } }
                        tbody {
                            @for (at, (act, undone)) in self.inspection.acts.iter().zip(undone).enumerate() {
                                tr {
                                    td class="n" { (at + 1) }
                                    td {
                                        @if undone { s { (phrases::act_of(self.inspection, self.words, act)) } }
                                        @else { (phrases::act_of(self.inspection, self.words, act)) }
                                    }
                                    td { @if act.target != Target::Inspection { (phrases::target(self.words, &act.target)) } }
                                    td { (act.by) } td { (act.at) } td { (act.note) }
                                }
                            }
                        }
                    }
                }
            }
        }
    }

    fn annex(&self, sink: &mut dyn Write) -> io::Result<()> {
        let total = self.findings.verdicts.len();
        let head = html! {
            (PreEscaped("<section class=\"annex\">"))
            h2 { (self.say("report-annex")) }
            @if total > ANNEX_ROWS {
                p { (self.words.with("report-annex_capped", &[
                    ("shown", &ANNEX_ROWS.to_string()), ("total", &total.to_string()),
                ])) }
            }
            p class="sub keep" { (self.say("report-annex_values")) }
            (PreEscaped("<div class=\"scroll\"><table class=\"tight\">"))
            thead { tr {
                th { (self.say("report-class")) }
                @for substance in Substance::ALL { th { (substance.symbol()) } }
                th { "Cl" } th { "Cl+Br" }
            } }
        };
        write_markup(sink, &head)?;
        for index in 0..total.min(ANNEX_ROWS) {
            let Some((source, reviewer, row)) = self.place(index) else { continue };
            let assessed = reviewer.assess(row);
            let join = |identities: &[Identity]| {
                identities
                    .iter()
                    .filter_map(|identity| source.readings.identity(*identity, row))
                    .collect::<Vec<_>>()
                    .join(" · ")
            };
            let sample =
                join(&[Identity::Id, Identity::Unit, Identity::Spot, Identity::Part, Identity::Material]);
            let origin = join(&[Identity::Supplier, Identity::Lot]);
            let how = join(&[
                Identity::Time,
                Identity::Seconds,
                Identity::Instrument,
                Identity::Mode,
                Identity::Operator,
                Identity::Thickness,
            ]);
            let check = self.findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
            let line = html! {
                (PreEscaped("<tbody class=\"one\">"))
                tr class="who" { td colspan="8" {
                    b { (sample) }
                    @if check { " · " i { (self.say("report-check")) } }
                    @if !origin.is_empty() { " · " (origin) }
                    @if !how.is_empty() { " · " (how) }
                    " · " (source.name) ", " (self.say("report-line").to_lowercase()) " " (source.readings.line(row))
                } }
                tr {
                    td { (self.say(&format!("class-{}", assessed.class.code()))) }
                    @for (substance, judged) in Substance::ALL.iter().zip(&assessed.substances) {
                        @let cell = source.readings.cell(substance.element(), row);
                        @let written = phrases::written_of(source, substance.element(), row);
                        td { (self.outcome(judged.outcome)) br; (phrases::value_short(&cell, judged, reviewer.printed_sigma(substance.element(), &cell, row), &written)) }
                    }
                    @let chlorine = source.readings.cell(crate::substance::Element::CL, row);
                    @let written = phrases::written_of(source, crate::substance::Element::CL, row);
                    td {
                        (self.outcome(assessed.halogens[0].outcome)) br;
                        (phrases::value_short(&chlorine, &assessed.halogens[0], reviewer.printed_sigma(crate::substance::Element::CL, &chlorine, row), &written))
                    }
                    td { (self.outcome(assessed.total.judgement.outcome)) br; (phrases::total_short(&assessed.total)) }
                }
                (PreEscaped("</tbody>"))
            };
            write_markup(sink, &line)?;
        }
        sink.write_all(b"</table></div></section>")
    }

    fn signatures(&self, number: &str) -> Markup {
        html! {
            section class="last" {
                h2 { (self.say("report-signatures")) }
                p { (self.say("report-number")) ": " b { (number) } }
                p class="mono" { (self.say("report-findings_digest")) ": " (self.digest) }
                div class="signatures" {
                    div { (self.say("report-sign_inspector")) }
                    div { (self.say("report-sign_second")) }
                }
                p class="end" { "— " (self.say("report-end")) " " (number) " —" }
            }
        }
    }
}

/// What a case is about.
#[derive(Clone, Copy, PartialEq, Eq)]
enum About {
    Substance(Substance),
    Halogen(Halogen),
}

/// Readings of one material that are open for the same reason with the same next step.
struct Case {
    about: About,
    reason: Option<Reason>,
    steps: Vec<NextStep>,
    readings: Vec<u32>,
}

fn add_to_cases(
    cases: &mut Vec<Case>,
    about: About,
    reason: Option<Reason>,
    steps: Vec<NextStep>,
    reading: u32,
) {
    let same = |case: &&mut Case| case.about == about && case.reason == reason && case.steps == steps;
    match cases.iter_mut().find(same) {
        Some(case) => case.readings.push(reading),
        None => cases.push(Case { about, reason, steps, readings: vec![reading] }),
    }
}

fn halogen_head(halogen: Halogen) -> String {
    match halogen {
        Halogen::Total => "Cl+Br".to_owned(),
        _ => halogen.name().to_owned(),
    }
}
