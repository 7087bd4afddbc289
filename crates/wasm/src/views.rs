//! What crosses the door: mirror structs of `web/src/shared/door.ts`, filled by hand. No type of the trade carries a
//! wire format, and a test holds each struct's keys against the TypeScript.

use plumbline_core::acts;
use plumbline_core::inspection::{Findings, Inspection, RowCounts};
use plumbline_core::judging::{JUDGED, SourceReview};
use plumbline_core::lot::{Disposition, LotReason};
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::{Judgement, Outcome, Reason};
use plumbline_core::reading::{Identity, Notice, NoticeCode, Notices, SetAside, Source};
use plumbline_core::report::{PROGRAM, books, exemptions, json, phrases, rulers};
use plumbline_core::ruler::{self, Picture};
use plumbline_core::rules::{self, ProblemCode};
use plumbline_core::substance::{Element, Halogen, Substance};
use plumbline_core::trust::Trust;
use plumbline_core::words::Words;
use serde::{Deserialize, Serialize};

use crate::mapping::{self, BlockView, ContainerView, SheetView, StatedView};
use crate::order;

/// Parts and materials that the summary carries; the page says how many more there are.
const LISTED: usize = 2000;

#[derive(Serialize)]
pub(crate) struct NoticeView {
    line: Option<u32>,
    column: Option<u32>,
    heading: Option<String>,
    code: &'static str,
    text: String,
    remedy: String,
    rows: u32,
}

#[derive(Serialize)]
pub(crate) struct NeedView {
    code: &'static str,
    text: String,
    /// How many readings it is about; 0 where it isn't counted.
    count: usize,
}

#[derive(Serialize)]
pub(crate) struct SetAsideView {
    reason: String,
    rows: f64,
}

#[derive(Serialize)]
pub(crate) struct SourceView {
    index: usize,
    name: String,
    sha256: String,
    bytes: f64,
    read: bool,
    problem: Option<String>,
    problem_code: Option<&'static str>,
    rows_in: f64,
    rows_used: f64,
    rows_check: f64,
    rows_duplicate: f64,
    rows_set_aside: f64,
    rows_refused: f64,
    readings: f64,
    set_aside: Vec<SetAsideView>,
    refusals: Vec<NoticeView>,
    refusals_left_out: f64,
    notices: Vec<NoticeView>,
    notices_left_out: f64,
    container: Option<ContainerView>,
    encoding: &'static str,
    encoding_known_by: &'static str,
    encoding_text: String,
    sheets: Vec<SheetView>,
    stated: Vec<StatedView>,
    blocks: Vec<BlockView>,
    blocks_left_out: f64,
    needs: Vec<NeedView>,
}

#[derive(Serialize)]
pub(crate) struct ReasonView {
    code: &'static str,
    kind: &'static str,
    effect: &'static str,
    about: String,
    liftable: bool,
    text: String,
    remedy: String,
}

#[derive(Serialize)]
pub(crate) struct LotView {
    index: usize,
    lot: Option<String>,
    supplier: Option<String>,
    source: Option<String>,
    disposition: &'static str,
    disposition_text: String,
    readings: f64,
    materials: f64,
    reasons: Vec<ReasonView>,
    not_assessed: Vec<String>,
}

#[derive(Serialize)]
pub(crate) struct OutcomeMark {
    substance: &'static str,
    outcome: &'static str,
    short: String,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct MaterialView {
    index: usize,
    lot_index: usize,
    part: Option<String>,
    material: Option<String>,
    lot: Option<String>,
    supplier: Option<String>,
    class: &'static str,
    class_text: String,
    disposition: &'static str,
    disposition_text: String,
    readings: usize,
    outcomes: Vec<OutcomeMark>,
    reasons: Vec<ReasonView>,
}

#[derive(Serialize)]
pub(crate) struct PartView {
    part: Option<String>,
    lot: Option<String>,
    lot_index: usize,
    disposition: &'static str,
    disposition_text: String,
    reasons: Vec<ReasonView>,
}

#[derive(Serialize)]
pub(crate) struct RuleBookView {
    id: String,
    title: String,
    edition: String,
    sha256: String,
    source: String,
    confidence: String,
    has_halogens: bool,
}

#[derive(Serialize)]
#[allow(clippy::struct_field_names, reason = "the keys are the contract's")]
pub(crate) struct RowTotals {
    rows_in: f64,
    rows_used: f64,
    rows_check: f64,
    rows_duplicate: f64,
    rows_set_aside: f64,
    rows_refused: f64,
}

#[derive(Serialize)]
pub(crate) struct OutcomeCount {
    outcome: &'static str,
    short: String,
    text: String,
    count: usize,
}

#[derive(Serialize)]
pub(crate) struct SubstanceCounts {
    substance: &'static str,
    counts: Vec<OutcomeCount>,
}

#[derive(Serialize)]
pub(crate) struct ProgramView {
    name: &'static str,
    version: &'static str,
}

#[derive(Serialize)]
pub(crate) struct Summary {
    program: ProgramView,
    rule_books: Vec<RuleBookView>,
    readings: usize,
    totals: RowTotals,
    adds_up: bool,
    line_counts: String,
    line_says: String,
    line_evidence: String,
    outcome_counts: Vec<SubstanceCounts>,
    /// Code and words of what the checks may say of a reading, from worst to best.
    trusts: Vec<(&'static str, String)>,
    sources: Vec<SourceView>,
    lots: Vec<LotView>,
    parts: Vec<PartView>,
    parts_total: usize,
    materials: Vec<MaterialView>,
    materials_total: usize,
    acts: Vec<ActView>,
    cautions: Vec<String>,
    expiries: Vec<ExpiryView>,
    other_elements: Vec<&'static str>,
}

/// A day on which an exemption expires that something here rests on.
#[derive(Default, Serialize)]
pub(crate) struct ExpiryView {
    day: String,
    day_text: String,
    claimed: bool,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct CellView {
    substance: &'static str,
    outcome: &'static str,
    short: String,
    text: String,
    value: String,
    reason: &'static str,
    strip: Option<StripView>,
}

/// The ruler of an outcome as positions, per mille along the strip.
#[derive(Serialize)]
pub(crate) struct StripView {
    mark: &'static str,
    at: u16,
    until: u16,
    from: u16,
    to: u16,
    low: u16,
    high: u16,
    open: bool,
    cut_left: bool,
    cut_right: bool,
}

impl StripView {
    pub(crate) fn of(picture: &Picture) -> StripView {
        let strip = ruler::strip(picture);
        StripView {
            mark: strip.mark,
            at: strip.at,
            until: strip.until,
            from: strip.from,
            to: strip.to,
            low: strip.low,
            high: strip.high,
            open: strip.open,
            cut_left: strip.cut_left,
            cut_right: strip.cut_right,
        }
    }
}

#[derive(Serialize)]
pub(crate) struct RowView {
    index: usize,
    source: String,
    line: u32,
    id: Option<String>,
    unit: Option<String>,
    spot: Option<String>,
    part: Option<String>,
    material: Option<String>,
    lot: Option<String>,
    supplier: Option<String>,
    class: &'static str,
    class_text: String,
    class_from: &'static str,
    trust: &'static str,
    trust_text: String,
    cells: Vec<CellView>,
    halogens: Vec<CellView>,
    others: Vec<String>,
}

#[derive(Deserialize, Serialize)]
pub(crate) struct ActInput {
    pub(crate) kind: String,
    pub(crate) target: String,
    pub(crate) value: String,
    pub(crate) by: String,
    pub(crate) at: String,
    pub(crate) note: String,
}

#[derive(Serialize)]
pub(crate) struct ActView {
    number: usize,
    kind: &'static str,
    target: String,
    value: String,
    by: String,
    at: String,
    note: String,
    undone: bool,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct ProblemView {
    place: String,
    line: Option<u32>,
    column: Option<u32>,
    code: &'static str,
    text: String,
    remedy: String,
}

#[derive(Serialize)]
pub(crate) struct ActAnswer {
    pub(crate) reread: bool,
    pub(crate) problem: Option<ProblemView>,
}

/// Problems of a data file in words.
pub(crate) fn problems(
    words: &Words,
    name: &str,
    list: &[rules::Problem],
    expected: &str,
) -> Vec<ProblemView> {
    list.iter()
        .map(|problem| ProblemView {
            place: name.to_owned(),
            line: Some(problem.line),
            column: Some(problem.column),
            code: problem.code.code(),
            text: phrases::problem(words, problem, expected),
            remedy: phrases::problem_remedy(words, problem, expected),
        })
        .collect()
}

/// The problem of an act in words.
pub(crate) fn act_problem(words: &Words, code: ProblemCode, found: &str) -> ProblemView {
    let problem = rules::Problem { line: 0, column: 0, code, found: found.to_owned() };
    ProblemView {
        place: String::new(),
        line: None,
        column: None,
        code: code.code(),
        text: phrases::problem(words, &problem, ""),
        remedy: phrases::problem_remedy(words, &problem, ""),
    }
}

fn notice(words: &Words, source: &Source, one: &Notice) -> NoticeView {
    NoticeView {
        line: (one.line > 0).then_some(one.line),
        column: (one.column > 0).then_some(one.column),
        heading: (!one.heading.is_empty()).then(|| one.heading.clone()),
        code: one.code.code(),
        text: phrases::notice(words, one, Some(source)),
        remedy: phrases::notice_remedy(words, one.code),
        rows: u32::try_from(one.rows).unwrap_or(u32::MAX),
    }
}

/// One source; with `findings` where a review has been made.
pub(crate) fn source(
    inspection: &Inspection,
    findings: Option<&Findings>,
    words: &Words,
    index: usize,
) -> Option<SourceView> {
    let source = inspection.sources.get(index)?;
    let counts = match findings {
        Some(findings) => findings.counts(inspection, index),
        None => RowCounts {
            rows_in: source.rows_in,
            used: source.readings.len() as u64,
            duplicate: source.rows_duplicate,
            set_aside: source.rows_set_aside(),
            refused: source.rows_refused,
            readings: source.readings.len() as u64,
            ..RowCounts::default()
        },
    };
    let list =
        |notices: &Notices| notices.kept.iter().map(|one| notice(words, source, one)).collect::<Vec<_>>();
    let mut notices = list(&source.notices);
    if findings.and_then(|findings| findings.same_as.get(index).copied().flatten()).is_some() {
        let same = Notice {
            line: 0,
            column: 0,
            heading: String::new(),
            code: NoticeCode::SameAsAnother,
            found: String::new(),
            rows: counts.duplicate,
        };
        notices.push(notice(words, source, &same));
    }
    Some(SourceView {
        index,
        name: source.name.clone(),
        sha256: source.sha256.clone(),
        bytes: source.bytes as f64,
        read: source.problem.is_none(),
        problem: source.problem.map(|code| {
            source.refusals.kept.iter().find(|refusal| refusal.code == code).map_or_else(
                || code.code().to_owned(),
                |refusal| phrases::notice(words, refusal, Some(source)),
            )
        }),
        problem_code: source.problem.map(NoticeCode::code),
        rows_in: counts.rows_in as f64,
        rows_used: counts.used as f64,
        rows_check: counts.check as f64,
        rows_duplicate: counts.duplicate as f64,
        rows_set_aside: counts.set_aside as f64,
        rows_refused: counts.refused as f64,
        readings: counts.readings as f64,
        set_aside: SetAside::ALL
            .iter()
            .zip(source.set_aside)
            .filter(|(_, rows)| *rows > 0)
            .map(|(reason, rows)| SetAsideView {
                reason: words.say(&format!("set-aside-{}", reason.code())),
                rows: rows as f64,
            })
            .collect(),
        refusals: list(&source.refusals),
        refusals_left_out: source.refusals.left_out as f64,
        notices,
        notices_left_out: source.notices.left_out as f64,
        container: mapping::container(source),
        encoding: source.encoding,
        encoding_known_by: source.encoding_known_by.code(),
        encoding_text: words.say(&format!("encoding-by-{}", source.encoding_known_by.code())),
        sheets: mapping::sheets(source),
        stated: mapping::stated(words, source),
        blocks_left_out: mapping::blocks_left_out(source) as f64,
        blocks: mapping::blocks(words, source),
        needs: needs(inspection, findings, words, index),
    })
}

/// The questions a source leaves open, each answered by one act.
fn needs(inspection: &Inspection, findings: Option<&Findings>, words: &Words, index: usize) -> Vec<NeedView> {
    let Some(source) = inspection.sources.get(index) else { return Vec::new() };
    let settings = inspection.settings();
    let said = |code| source.notices.kept.iter().any(|notice| notice.code == code);
    let mut needs = Vec::new();
    let mut ask = |code: &'static str, count: usize| {
        let text = words.with(&format!("need-{code}"), &[("count", &count.to_string())]);
        needs.push(NeedView { code, text, count });
    };
    if said(NoticeCode::UnitNotStated) {
        ask("unit_not_stated", 0);
    }
    let unstated = source.blocks.iter().any(|block| {
        block.has_unstated_multiple() && settings.sigma_multiple(&source.name, &block.fingerprint).is_none()
    });
    // Uncertainties may also stand in the cells of the values.
    if (unstated || said(NoticeCode::MultipleNotStated)) && !source.readings.is_empty() {
        ask("sigma_multiple_not_stated", 0);
    }
    if said(NoticeCode::MarkUnclear) {
        ask("decimal_mark_unclear", 0);
    }
    if said(NoticeCode::DateOrderUnclear) {
        ask("date_order_unclear", 0);
    }
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    // A check is no product: its certificate may say the class of its matrix.
    let first = findings.and_then(|findings| findings.first_reading.get(index)).copied().unwrap_or_default();
    let checks = findings.map_or(&[][..], |findings| &findings.trust.checks);
    let is_check =
        |row: &usize| checks.binary_search_by_key(&(first + row), |check| check.reading as usize).is_ok();
    let unknown = (0..source.readings.len())
        .filter(|row| reviewer.class(*row).0 == MaterialClass::Unknown && !is_check(row))
        .count();
    if unknown > 0 {
        ask("class_not_stated", unknown);
    }
    needs
}

fn reasons(words: &Words, list: &[LotReason]) -> Vec<ReasonView> {
    list.iter()
        .map(|reason| ReasonView {
            code: reason.code.code(),
            kind: reason.code.kind().code(),
            effect: reason.effect.code(),
            about: reason.about.clone(),
            liftable: reason.code.may_be_lifted(),
            text: phrases::lot_reason(words, reason),
            remedy: phrases::lot_remedy(words, reason),
        })
        .collect()
}

pub(crate) fn disposition_text(words: &Words, disposition: Disposition) -> String {
    words.say(&format!("disposition-{}", disposition.code()))
}

/// A part or material is never "accepted": its lot is.
fn material_disposition_text(words: &Words, disposition: Disposition) -> String {
    words.say(&format!("material-disposition-{}", disposition.code()))
}

/// The whole summary of a review.
pub(crate) fn summary(inspection: &Inspection, findings: &Findings, words: &Words) -> Summary {
    let totals = json::totals(inspection, findings);
    let undone = acts::undone(&inspection.acts);
    let not_assessed: Vec<String> =
        phrases::NOT_ASSESSED.iter().map(|code| words.say(&format!("not-assessed-{code}"))).collect();
    Summary {
        program: ProgramView { name: PROGRAM.name, version: PROGRAM.version },
        rule_books: inspection
            .books
            .all()
            .iter()
            .map(|book| RuleBookView {
                id: book.id.clone(),
                title: book.title.clone(),
                edition: book.edition.clone(),
                sha256: book.sha256.clone(),
                source: book.source.clone(),
                confidence: books::confidence_short(words, &book.confidence),
                has_halogens: book.halogens.is_some(),
            })
            .collect(),
        readings: findings.verdicts.len(),
        totals: RowTotals {
            rows_in: totals.rows_in as f64,
            rows_used: totals.used as f64,
            rows_check: totals.check as f64,
            rows_duplicate: totals.duplicate as f64,
            rows_set_aside: totals.set_aside as f64,
            rows_refused: totals.refused as f64,
        },
        adds_up: (0..inspection.sources.len()).all(|at| findings.counts(inspection, at).adds_up()),
        line_counts: phrases::summary_counts(words, findings),
        line_says: phrases::summary_says(words, findings),
        line_evidence: phrases::summary_evidence(words, findings),
        outcome_counts: outcome_counts(findings, words),
        trusts: Trust::ALL
            .iter()
            .rev()
            .map(|trust| trust.code())
            .chain([order::ASIDE])
            .map(|code| (code, words.say(&format!("trust-{code}"))))
            .collect(),
        sources: (0..inspection.sources.len())
            .filter_map(|at| source(inspection, Some(findings), words, at))
            .collect(),
        lots: findings
            .lots
            .iter()
            .enumerate()
            .map(|(index, lot)| LotView {
                index,
                lot: lot.lot.clone(),
                supplier: lot.supplier.clone(),
                source: lot
                    .source
                    .and_then(|at| inspection.sources.get(at))
                    .map(|source| source.name.clone()),
                disposition: lot.disposition.code(),
                disposition_text: disposition_text(words, lot.disposition),
                readings: lot.readings as f64,
                materials: lot.materials as f64,
                reasons: reasons(words, &lot.reasons),
                not_assessed: not_assessed.clone(),
            })
            .collect(),
        parts: findings
            .parts
            .iter()
            .take(LISTED)
            .map(|part| PartView {
                part: part.part.clone(),
                lot: findings.lots.get(part.lot).and_then(|lot| lot.lot.clone()),
                lot_index: part.lot,
                disposition: part.disposition.code(),
                disposition_text: material_disposition_text(words, part.disposition),
                reasons: reasons(words, &part.reasons),
            })
            .collect(),
        parts_total: findings.parts.len(),
        materials: findings
            .materials
            .iter()
            .enumerate()
            .take(LISTED)
            .map(|(index, material)| MaterialView {
                index,
                lot_index: material.lot,
                part: material.part.clone(),
                material: material.name.clone(),
                lot: findings.lots.get(material.lot).and_then(|lot| lot.lot.clone()),
                supplier: findings.lots.get(material.lot).and_then(|lot| lot.supplier.clone()),
                class: material.class.code(),
                class_text: words.say(&format!("class-{}", material.class.code())),
                disposition: material.disposition.code(),
                disposition_text: material_disposition_text(words, material.disposition),
                readings: material.readings.len(),
                outcomes: Substance::ALL
                    .iter()
                    .map(|substance| {
                        let outcome = material.tally.worst(*substance);
                        OutcomeMark {
                            substance: substance.symbol(),
                            outcome: outcome.code(),
                            short: phrases::outcome_short(words, outcome),
                            text: phrases::outcome(words, outcome),
                        }
                    })
                    .collect(),
                reasons: reasons(words, &material.reasons),
            })
            .collect(),
        materials_total: findings.materials.len(),
        acts: inspection
            .acts
            .iter()
            .zip(undone)
            .enumerate()
            .map(|(at, (act, undone))| ActView {
                number: at + 1,
                kind: act.kind.code(),
                target: act.target.to_text(),
                value: act.value.clone(),
                by: act.by.clone(),
                at: act.at.clone(),
                note: act.note.clone(),
                undone,
                text: phrases::act_of(inspection, words, act),
            })
            .collect(),
        cautions: phrases::cautions(words),
        expiries: findings
            .expiries
            .iter()
            .map(|one| ExpiryView {
                day: one.day.to_string(),
                day_text: words.day(one.day),
                claimed: one.claimed,
                text: exemptions::expiry(words, inspection, findings, one),
            })
            .collect(),
        other_elements: other_elements(inspection),
    }
}

/// The elements that some file has a column for and that no outcome speaks of, by atomic number.
fn other_elements(inspection: &Inspection) -> Vec<&'static str> {
    let columns = inspection.sources.iter().flat_map(|source| source.readings.elements());
    let mut found: Vec<Element> =
        columns.map(|column| column.element).filter(|element| !JUDGED.contains(element)).collect();
    found.sort_unstable();
    found.dedup();
    found.into_iter().map(Element::symbol).collect()
}

/// Words for each outcome, by its place in [`Outcome::ALL`].
pub(crate) fn outcomes(words: &Words) -> Vec<OutcomeMark> {
    Outcome::ALL
        .iter()
        .map(|outcome| OutcomeMark {
            substance: "",
            outcome: outcome.code(),
            short: phrases::outcome_short(words, *outcome),
            text: phrases::outcome(words, *outcome),
        })
        .collect()
}

fn outcome_counts(findings: &Findings, words: &Words) -> Vec<SubstanceCounts> {
    let mut counts = [[0_usize; 8]; 8];
    for verdicts in findings.verdicts.iter().filter(|verdicts| !verdicts.check) {
        for (slot, outcome) in counts.iter_mut().zip(verdicts.substances.iter().chain(&verdicts.halogens)) {
            slot[*outcome as usize] += 1;
        }
    }
    let names = Substance::ALL
        .iter()
        .map(|substance| substance.symbol())
        // Bromine's screening stands under its symbol; as a halogen it has no column of its own here.
        .chain(["Cl", "", "total"]);
    names
        .zip(counts)
        .filter(|(name, _)| !name.is_empty())
        .map(|(substance, counts)| SubstanceCounts {
            substance,
            counts: Outcome::ALL
                .iter()
                .rev()
                .zip(counts.iter().rev())
                .filter(|(_, count)| **count > 0)
                .map(|(outcome, count)| OutcomeCount {
                    outcome: outcome.code(),
                    short: phrases::outcome_short(words, *outcome),
                    text: phrases::outcome(words, *outcome),
                    count: *count,
                })
                .collect(),
        })
        .collect()
}

/// The rows of these readings, with what stands under `others`, which are symbols of elements.
pub(crate) fn rows(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    indices: &[u32],
    others: &[String],
) -> Vec<RowView> {
    let others: Vec<Element> = others.iter().filter_map(|symbol| Element::from_symbol(symbol)).collect();
    let settings = inspection.settings();
    let mut reviewers: std::collections::BTreeMap<usize, SourceReview<'_>> =
        std::collections::BTreeMap::new();
    indices
        .iter()
        .filter_map(|index| {
            let (at, row) = findings.place(*index as usize)?;
            let source = inspection.sources.get(at)?;
            let reviewer = reviewers
                .entry(at)
                .or_insert_with(|| SourceReview::new(source, &inspection.books, &settings));
            let place = Place { inspection, findings, source, reviewer, index: *index as usize, row };
            let mut view = row_view(&place, words);
            view.others = others.iter().map(|element| place.written(words, *element)).collect();
            Some(view)
        })
        .collect()
}

/// One reading, and where it stands.
pub(crate) struct Place<'a> {
    pub(crate) inspection: &'a Inspection,
    pub(crate) findings: &'a Findings,
    pub(crate) source: &'a Source,
    pub(crate) reviewer: &'a SourceReview<'a>,
    /// Among all readings.
    pub(crate) index: usize,
    /// In its source.
    pub(crate) row: usize,
}

impl Place<'_> {
    /// An element that no outcome speaks of, as the file has it; empty where there is no column.
    fn written(&self, words: &Words, element: Element) -> String {
        let Some(column) = self.source.readings.column_of(element) else { return String::new() };
        let cell = column.cell(self.row);
        let sigma = self.reviewer.printed_sigma(element, &cell, self.row);
        phrases::value(words, &cell, sigma, &phrases::as_written(self.source, column, self.row))
    }
}

pub(crate) fn row_view(place: &Place<'_>, words: &Words) -> RowView {
    let Place { inspection, findings, source, reviewer, index, row } = *place;
    let assessed = reviewer.assess(row);
    let identity = |identity| source.readings.identity(identity, row).map(str::to_owned);
    let cell_view =
        |name: &'static str, judged: &Judgement, value: String, picture: Option<Picture>| CellView {
            strip: picture.as_ref().map(StripView::of),
            substance: name,
            outcome: judged.outcome.code(),
            short: phrases::outcome_short(words, judged.outcome),
            text: phrases::outcome(words, judged.outcome),
            value,
            reason: judged.reason.map_or("", Reason::code),
        };
    let value_of = |element: Element, judged: &Judgement| {
        let cell = source.readings.cell(element, row);
        phrases::value(
            words,
            &cell,
            judged.used.sigma.or(reviewer.printed_sigma(element, &cell, row)),
            &phrases::written_of(source, element, row),
        )
    };
    let trust = order::trust_of(findings, index as u32);
    RowView {
        index,
        source: source.name.clone(),
        line: source.readings.line(row),
        id: identity(Identity::Id),
        unit: identity(Identity::Unit),
        spot: identity(Identity::Spot),
        part: identity(Identity::Part),
        material: identity(Identity::Material),
        lot: identity(Identity::Lot),
        supplier: identity(Identity::Supplier),
        class: assessed.class.code(),
        class_text: words.say(&format!("class-{}", assessed.class.code())),
        class_from: assessed.class_from.code(),
        trust,
        trust_text: if trust == "check" {
            words.say("report-check")
        } else {
            words.say(&format!("trust-{trust}"))
        },
        cells: Substance::ALL
            .iter()
            .zip(&assessed.substances)
            .map(|(substance, judged)| {
                let picture = rulers::of_substance(inspection, source, &assessed, *substance, row);
                cell_view(substance.symbol(), judged, value_of(substance.element(), judged), picture)
            })
            .collect(),
        halogens: Halogen::ALL
            .iter()
            .map(|halogen| {
                let judged = assessed.halogen(*halogen);
                let value = match phrases::element_of(*halogen) {
                    Some(element) => value_of(element, &judged),
                    None => phrases::total(words, &assessed.total),
                };
                let picture = rulers::of_halogen(inspection, source, &assessed, *halogen, row);
                cell_view(halogen.name(), &judged, value, picture)
            })
            .collect(),
        others: Vec::new(),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plumbline_core::inspection;
    use plumbline_intake::SourceReader;

    const DOOR: &str = include_str!("../../../web/src/shared/door.ts");

    /// The keys of an interface in the page's `door.ts`.
    fn keys_of(interface: &str) -> Vec<String> {
        let start = DOOR.find(&format!("export interface {interface} {{")).expect(interface);
        let body = DOOR[start..].split_once('{').unwrap().1.split("\n}").next().unwrap();
        let mut keys: Vec<String> = body
            .lines()
            .filter(|line| line.starts_with("  ") && !line.starts_with("   "))
            .filter_map(|line| line.trim().split_once(':'))
            .map(|(key, _)| key.trim_end_matches('?').to_owned())
            .filter(|key| key.chars().all(|c| c.is_ascii_alphanumeric() || c == '_'))
            .collect();
        keys.sort();
        keys
    }

    fn same_keys(interface: &str, value: &serde_json::Value) {
        let mut keys: Vec<String> = value.as_object().expect(interface).keys().cloned().collect();
        keys.sort();
        assert_eq!(keys, keys_of(interface), "{interface}");
    }

    fn reviewed() -> (Inspection, Findings) {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = plumbline_core::settings_file::parse_settings(
            "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\n",
            "s",
        )
        .unwrap();
        let mut reader = SourceReader::new("one.csv", &inspection.settings());
        reader.push(b"Sample,Part,Pb ppm,Pb err,Cd,Cu %\nS1,P1,20,2,3,40\nS2,P1,x,2,3,40\nS3,P1,1,1,1,1,1\n");
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        (inspection, findings)
    }

    /// A sheet out of an archive, with a line above its table.
    fn packed() -> Source {
        use plumbline_core::reading::{Container, Sheet, Stated, StatedUse};
        Source {
            container: Some(Container { name: "a.zip".into(), sha256: String::new(), bytes: 9 }),
            sheets: vec![Sheet {
                name: "Results".into(),
                hidden: true,
                rows: 3,
                columns: 4,
                element_columns: 2,
                read: true,
                passed_over: false,
            }],
            stated: vec![Stated {
                line: 1,
                key: "Lot".into(),
                value: "A-1".into(),
                used_as: Some(StatedUse::Identity(Identity::Lot)),
            }],
            ..Source::default()
        }
    }

    #[test]
    fn every_view_has_the_keys_the_page_expects() {
        let (inspection, findings) = reviewed();
        let words = Words::english();
        let summary = serde_json::to_value(summary(&inspection, &findings, &words)).unwrap();
        same_keys("Summary", &summary);
        same_keys("SourceView", &summary["sources"][0]);
        same_keys("NoticeView", &summary["sources"][0]["refusals"][0]);
        same_keys("BlockView", &summary["sources"][0]["blocks"][0]);
        same_keys("ColumnView", &summary["sources"][0]["blocks"][0]["columns"][0]);
        let preview = mapping::preview(&inspection.sources[0], 0, 5).unwrap();
        let preview = serde_json::to_value(preview).unwrap();
        same_keys("PreviewView", &preview);
        same_keys("PreviewRow", &preview["rows"][0]);
        same_keys("CellsView", &preview["columns"][0]);
        let choices = serde_json::to_value(mapping::choices(&words)).unwrap();
        same_keys("ChoicesView", &choices);
        same_keys("RoleChoice", &choices["roles"][0]);
        same_keys("MappingActs", &serde_json::to_value(mapping::acts_of(&words, "m", "")).unwrap());
        same_keys("NeedView", &summary["sources"][0]["needs"][0]);
        same_keys("LotView", &summary["lots"][0]);
        same_keys("ReasonView", &summary["lots"][0]["reasons"][0]);
        same_keys("MaterialView", &summary["materials"][0]);
        same_keys("OutcomeMark", &summary["materials"][0]["outcomes"][0]);
        same_keys("PartView", &summary["parts"][0]);
        same_keys("RuleBookView", &summary["rule_books"][0]);
        same_keys("RowTotals", &summary["totals"]);
        same_keys("OutcomeCount", &summary["outcome_counts"][0]["counts"][0]);
        same_keys("ActView", &summary["acts"][0]);
        let packed = serde_json::to_value(mapping::container(&packed()).unwrap()).unwrap();
        same_keys("ContainerView", &packed);
        let sheets = serde_json::to_value(mapping::sheets(&self::packed())).unwrap();
        same_keys("SheetView", &sheets[0]);
        let stated = serde_json::to_value(mapping::stated(&words, &self::packed())).unwrap();
        same_keys("StatedView", &stated[0]);
        assert_eq!(stated[0]["used_text"], "lot");
        let template = mapping::id_template(&words, "A-1", &["lot".to_owned()], &["A-2".to_owned()]);
        let template = serde_json::to_value(template).unwrap();
        same_keys("IdTemplateView", &template);
        same_keys("IdCut", &template["cuts"][0]);
        let row =
            serde_json::to_value(rows(&inspection, &findings, &words, &[0], &["Cu".to_owned()])).unwrap();
        same_keys("RowView", &row[0]);
        same_keys("CellView", &row[0]["cells"][0]);
        assert_eq!(summary["other_elements"], serde_json::json!(["Cu"]));
        assert_eq!(row[0]["others"].as_array().unwrap().len(), 1);
        assert!(row[0]["others"][0].as_str().unwrap().contains("40"), "{}", row[0]["others"][0]);
        same_keys("ExpiryView", &serde_json::to_value(ExpiryView::default()).unwrap());
        let problem = act_problem(&words, ProblemCode::UnknownName, "x");
        same_keys("ActAnswer", &serde_json::to_value(ActAnswer { reread: false, problem: None }).unwrap());
        same_keys("Problem", &serde_json::to_value(problem).unwrap());
    }

    /// Repeats of one spot, two spots of a material, an alloy, and limits of a named book.
    fn looked_at_closely() -> (Inspection, Findings) {
        let mut inspection = Inspection::new().unwrap();
        inspection.acts = plumbline_core::settings_file::parse_settings(
            "schema = \"plumbline.settings/1\"\nbooks = [\"eu-rohs-annex-ii\"]\n",
            "s",
        )
        .unwrap();
        let mut reader = SourceReader::new("two.csv", &inspection.settings());
        let rows = "Sample,Spot,Part,Material,Pb ppm,Pb err (1s),Cu %,Zn %,Fe %,Al %\n\
                    S1,a,P1,Brass,20000,200,60,38,0.1,0\n\
                    S1,a,P1,Brass,20100,200,60,38,0.1,0\n\
                    S1,b,P1,Brass,30000,200,60,37,0.1,0\n";
        reader.push(rows.as_bytes());
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        (inspection, findings)
    }

    #[test]
    fn the_views_of_one_reading_and_one_lot_have_the_keys_the_page_expects() {
        let (inspection, findings) = looked_at_closely();
        let words = Words::english();
        let view = crate::detail::detail(&inspection, &findings, &words, 0, 0).unwrap();
        let detail = serde_json::to_value(view).unwrap();
        same_keys("DetailView", &detail);
        let lead = &detail["findings"][1];
        same_keys("FindingView", lead);
        same_keys("StepView", &lead["steps"][0]);
        same_keys("CompositionView", &detail["composition"]);
        assert_eq!(detail["composition"]["suggests"], "metal");
        same_keys("RepeatsView", &detail["repeats"]);
        same_keys("RepeatReading", &detail["repeats"]["readings"][0]);
        same_keys("RepeatedView", &detail["repeats"]["elements"][0]);
        assert_eq!(detail["repeats"]["elements"][0]["how"], "pooled");
        let limit = detail["limits"].as_array().unwrap().iter().find(|one| one["substance"] == "Pb").unwrap();
        same_keys("FindingView", limit);
        assert_eq!(limit["outcome"], "OL");
        let drawn = |one: &serde_json::Value| one["ruler"].as_str().unwrap().starts_with("<svg");
        assert!(drawn(limit) && !drawn(lead), "the limit is the same for every class, a band is not");
        assert!(crate::worst::worst(&inspection, &findings, &words, 0).is_empty());
        let view = crate::ahead::ahead(&inspection, &findings, &words, 0).unwrap();
        let ahead = serde_json::to_value(view).unwrap();
        same_keys("AheadView", &ahead);
        same_keys("RulesTable", &ahead["rules"][0]);
        same_keys("RuleRow", &ahead["rules"][0]["rows"][0]);
        same_keys("MaterialAhead", &ahead["materials"][0]);
        same_keys("SpotsView", &ahead["materials"][0]["spots"][0]);
        assert_eq!(ahead["materials"][0]["spots"][0]["differ"], true);
        same_keys("CandidateView", &ahead["materials"][0]["candidates"][0]);
        assert!(crate::ahead::ahead(&inspection, &findings, &words, 9).is_none());
    }

    #[test]
    fn the_detail_draws_a_ruler_for_each_halogen_and_the_total_as_an_interval() {
        let mut inspection = Inspection::new().unwrap();
        let mut reader = SourceReader::new("four.csv", &inspection.settings());
        reader.push(b"Sample,Class,Br ppm,Br err (1s),Cl ppm,Cl err (1s)\nS1,polymer,803,14,<394,\nS2,metal,5,1,5,1\n");
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        let words = Words::english();
        let of = |index| {
            let view = crate::detail::detail(&inspection, &findings, &words, index, 0).unwrap();
            let found = serde_json::to_value(view).unwrap();
            found["findings"].as_array().unwrap()[5..]
                .iter()
                .map(|one| one["ruler"].as_str().unwrap().to_owned())
                .collect::<Vec<_>>()
        };
        let drawn = of(0);
        for (ruler, said) in
            drawn.iter().zip(["&lt; 394 mg/kg. Limit 900.", "803 mg/kg", "803 to 1197 mg/kg. Limit 1500."])
        {
            assert!(ruler.contains(said), "{said}: {ruler}");
        }
        assert!(!drawn[2].contains("ruler-bob"));
        assert_eq!(of(1), ["", "", ""], "no halogen limit applies to metal");
    }

    #[test]
    fn the_worst_of_each_material_is_the_highest_reading_that_shows_it() {
        let mut inspection = Inspection::new().unwrap();
        let mut reader = SourceReader::new("five.csv", &inspection.settings());
        reader.push(b"Sample,Lot,Part,Material,Class,Pb ppm,Pb err (1s)\nS1,L,P,shell,polymer,640,60\nS2,L,P,shell,polymer,900,60\n\
                      S3,L,P,shell,polymer,5,2\n");
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        let words = Words::english();
        let worst = serde_json::to_value(crate::worst::worst(&inspection, &findings, &words, 0)).unwrap();
        assert_eq!(worst.as_array().unwrap().len(), 1, "what was not measured has no ruler: {worst}");
        same_keys("WorstView", &worst[0]);
        same_keys("StripView", &worst[0]["strip"]);
        assert_eq!((&worst[0]["material"], &worst[0]["substance"]), (&0.into(), &"Pb".into()));
        assert!(worst[0]["value"].as_str().unwrap().starts_with("900 mg/kg"), "{worst}");
        assert!(crate::worst::worst(&inspection, &findings, &words, 9).is_empty());
    }

    #[test]
    fn chances_and_counts_of_statements_have_the_keys_the_page_expects() {
        let mut inspection = Inspection::new().unwrap();
        let mut reader = SourceReader::new("three.csv", &inspection.settings());
        reader.push(b"Sample,Class,Pb ppm,Pb err (1s)\nS1,polymer,900,80\n");
        inspection.add_sources(reader.finish());
        let findings = inspection::review(&inspection);
        let words = Words::english();
        let view = crate::detail::detail(&inspection, &findings, &words, 0, 0).unwrap();
        let chances = &serde_json::to_value(view).unwrap()["findings"][1]["chances"];
        same_keys("ChancesView", chances);
        same_keys("RuleSaysView", &chances["rules"][0]);
        assert_eq!(chances["rules"][0]["statement"], "pass");
        let ahead =
            serde_json::to_value(crate::ahead::ahead(&inspection, &findings, &words, 0).unwrap()).unwrap();
        same_keys("StatementCount", &ahead["rules"][1]["rows"][0]["between"][0]);
    }

    #[test]
    fn the_papers_are_those_that_the_findings_ask_for() {
        let mut inspection = Inspection::new().unwrap();
        let mut reader = SourceReader::new("one.csv", &inspection.settings());
        reader.push(b"Sample,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\nS1,L1,Alder Works,metal,1360,20\nS2,L2,,metal,1,1\n");
        inspection.add_sources(reader.finish());
        let offer = plumbline_core::papers::offer(&inspection, &inspection::review(&inspection));
        let view = serde_json::to_value(crate::papers_view::papers(offer)).unwrap();
        same_keys("PapersView", &view);
        same_keys("PaperNotice", &view["notices"][0]);
        assert_eq!(view["notices"][0]["file"], "supplier-notice-1-alder-works.html");
        assert_eq!(
            (&view["samples"], &view["labels"], &view["without_supplier"], &view["self_check"]),
            (&1.into(), &2.into(), &1.into(), &2.into())
        );
    }

    #[test]
    fn a_changed_report_is_named_by_place_and_its_files_by_what_became_of_them() {
        let table = b"Sample,Lot,Class,Pb mg/kg,Pb u (1s)\nS1,L1,metal,1360,20\n";
        let mut inspection = Inspection::new().unwrap();
        let mut reader =
            SourceReader::new("one.csv", &inspection.settings()).keeping(inspection.opened.room());
        reader.push(table);
        let (file, sources) = reader.finish_opened(false);
        inspection.add_file(file, sources);
        let words = Words::english();
        let findings = inspection::review(&inspection);
        let mut report = Vec::new();
        let full = plumbline_core::report::Length::Full;
        plumbline_core::report::html::write(&inspection, &findings, &words, full, &mut report).unwrap();
        let changed = String::from_utf8(report).unwrap().replacen("1360", "136", 1);
        let mut proving = crate::proving::Proving::new();
        proving.push(changed.as_bytes());
        for (name, bytes) in [("one.csv", &table[..]), ("two.csv", b"others")] {
            proving.beside(name);
            proving.push(bytes);
        }
        let view = serde_json::to_value(proving.end(None, &words, &[])).unwrap();
        same_keys("ProofView", &view);
        same_keys("ProofPlace", &view["places"][0]);
        same_keys("ProofFile", &view["files"][0]);
        assert_eq!((&view["verdict"], &view["nothing_differs"]), (&"differs".into(), &false.into()));
        assert!(view["places"][0]["says"].as_str().unwrap().contains("136"), "{view}");
        assert!(view["places"][0]["gives"].as_str().unwrap().contains("1360"), "{view}");
        assert_eq!(
            (&view["files"][0]["state"], &view["files"][1]["state"]),
            (&"matched".into(), &"stranger".into())
        );
    }

    #[test]
    fn the_shelf_holds_every_book_once_and_explains_each() {
        let inspection = looked_at_closely().0;
        let words = Words::english();
        let shelf = serde_json::to_value(crate::shelf::shelf(&inspection, &words)).unwrap();
        let books = shelf.as_array().unwrap();
        same_keys("ShelfBook", &books[0]);
        assert_eq!(books.len(), rules::library().len());
        for book in books {
            let id = book["id"].as_str().unwrap();
            assert!(!crate::shelf::explained(&inspection, &words, id).is_empty(), "{id}");
        }
        let named = books.iter().find(|book| book["id"] == "eu-rohs-annex-ii").unwrap();
        assert_eq!(named["in_force"], true);
        assert!(crate::shelf::explained(&inspection, &words, "no such book").is_empty());
    }

    #[test]
    fn the_view_of_a_source_adds_up_and_asks_what_is_open() {
        let (inspection, findings) = reviewed();
        let view = source(&inspection, Some(&findings), &Words::english(), 0).unwrap();
        assert_eq!((view.rows_in as u32, view.rows_used as u32, view.rows_refused as u32), (3, 2, 1));
        let asked: Vec<_> = view.needs.iter().map(|need| need.code).collect();
        assert_eq!(asked, ["unit_not_stated", "sigma_multiple_not_stated", "class_not_stated"]);
    }
}
