//! `findings.json`: the output contract, written in a fixed key order and streamed.
//!
//! The shape and every code are described in `contract.md`; these structs are its mirror and nothing else, so that
//! no type of the trade carries a wire format.

use std::io::{self, Write};

use serde::ser::{SerializeMap, SerializeSeq};
use serde::{Serialize, Serializer};
use serde_json::ser::Formatter;

use super::exemptions::{self, Cr6Out, ExemptionOut, ExpiryOut, MaterialExemptionsOut, Spoken};
use super::settled::{self, HoldEndsOut, LabOut};
use super::{PROGRAM, change, charts, checks, photos, phrases, sampling, suppliers, working};
use crate::acts::Settings;
use crate::caution::Cautions;
use crate::composition::{CalibrationDoubt, Contradiction};
use crate::inspection::{Findings, Inspection, RowCounts};
use crate::judging::SourceReview;
use crate::lines::CautionCode;
use crate::lot::LotReason;
use crate::material::MaterialClass;
use crate::outcome::{Judgement, Reason, SigmaFrom};
use crate::quantity::{MassFraction, Sigma, UNITS_PER_MG_KG};
use crate::reading::{CellState, ColumnMeaning, ElementColumn, Identity, Notice, Notices, Source};
use crate::substance::{Halogen, Substance};
use crate::words::{ENGLISH_TAG, Words};

/// The schema name of the findings.
pub const SCHEMA: &str = "plumbline.findings/1";

/// Writes the findings as UTF-8 JSON. Its sentences are English whatever language `words` are: data is the same bytes for
/// everyone, and English words are only made here where others came.
///
/// # Units
/// Mass fractions in mg/kg, uncertainties one sigma; a missing number is `null`.
///
/// # Errors
/// Those of the sink.
pub fn write(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    sink: &mut dyn Write,
) -> io::Result<()> {
    let english = (words.tag() != ENGLISH_TAG).then(Words::english);
    let words = english.as_ref().unwrap_or(words);
    let settings = inspection.settings();
    let spoken = Spoken::of(findings);
    let context = Context { inspection, findings, words, settings: &settings, spoken: &spoken };
    let reviewers = reviewers(&context);
    let file = File {
        schema: SCHEMA,
        program: Program { name: PROGRAM.name, version: PROGRAM.version },
        rule_books: inspection
            .books
            .used(&settings.books)
            .into_iter()
            .map(|book| Book { id: &book.id, edition: &book.edition, sha256: &book.sha256 })
            .collect(),
        reviewed_at: settings.inspection(crate::acts::ActKind::ReviewedAt),
        acts: acts(&context),
        totals: totals(inspection, findings).into(),
        sources: (0..inspection.sources.len()).filter_map(|at| source(&context, at)).collect(),
        rules: working::rules(inspection, &settings),
        readings: Readings(&context),
        checks: checks::checks(findings),
        repeats: working::repeats(inspection, findings),
        materials: materials(&context, &reviewers),
        parts: findings
            .parts
            .iter()
            .map(|part| PartOut {
                part: part.part.as_deref(),
                lot: findings.lots.get(part.lot).and_then(|lot| lot.lot.as_deref()),
                supplier: findings.lots.get(part.lot).and_then(|lot| lot.supplier.as_deref()),
                disposition: part.disposition.code(),
                reasons: reasons(words, &part.reasons),
            })
            .collect(),
        lots: findings
            .lots
            .iter()
            .enumerate()
            .map(|(at, lot)| LotOut {
                outlook: working::outlook(inspection, findings, &reviewers, at),
                lot: lot.lot.as_deref(),
                supplier: lot.supplier.as_deref(),
                source: lot.source,
                readings: lot.readings,
                disposition: lot.disposition.code(),
                hold_ends: settled::hold_ends(lot),
                reasons: reasons(words, &lot.reasons),
                sampling: sampling::out(words, lot),
                not_assessed: phrases::NOT_ASSESSED
                    .iter()
                    .map(|code| NotAssessed { code, text: words.say(&format!("not-assessed-{code}")) })
                    .collect(),
            })
            .collect(),
        suppliers: suppliers::out(inspection, findings, words),
        exemptions: spoken.out(inspection.books.exemptions()),
        expiries: exemptions::expiries(words, inspection, findings, &settings, &spoken),
        history: charts::history(inspection),
        charts: charts::charts(inspection, findings, words),
        photos: photos::out(inspection, findings),
    };
    let mut serializer = serde_json::Serializer::with_formatter(&mut *sink, LineForEach::default());
    file.serialize(&mut serializer).map_err(io::Error::from)?;
    sink.write_all(b"\n")
}

/// The rows of all sources together.
pub fn totals(inspection: &Inspection, findings: &Findings) -> RowCounts {
    (0..inspection.sources.len())
        .map(|at| findings.counts(inspection, at))
        .fold(RowCounts::default(), RowCounts::plus)
}

struct Context<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    words: &'a Words,
    settings: &'a Settings,
    spoken: &'a Spoken,
}

/// Compact JSON with a line for each key of the file and each item of its lists: small, and still readable by a
/// person and by a line-by-line comparison.
#[derive(Default)]
struct LineForEach {
    depth: usize,
}

impl Formatter for LineForEach {
    fn begin_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.depth += 1;
        writer.write_all(b"[")
    }
    fn end_array<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.depth -= 1;
        if self.depth == 1 {
            writer.write_all(b"\n")?;
        }
        writer.write_all(b"]")
    }
    fn begin_array_value<W: ?Sized + Write>(&mut self, writer: &mut W, first: bool) -> io::Result<()> {
        if !first {
            writer.write_all(b",")?;
        }
        if self.depth <= 2 { writer.write_all(b"\n") } else { Ok(()) }
    }
    fn begin_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.depth += 1;
        writer.write_all(b"{")
    }
    fn end_object<W: ?Sized + Write>(&mut self, writer: &mut W) -> io::Result<()> {
        self.depth -= 1;
        if self.depth == 0 {
            writer.write_all(b"\n")?;
        }
        writer.write_all(b"}")
    }
    fn begin_object_key<W: ?Sized + Write>(&mut self, writer: &mut W, first: bool) -> io::Result<()> {
        if !first {
            writer.write_all(b",")?;
        }
        if self.depth == 1 { writer.write_all(b"\n") } else { Ok(()) }
    }
}

#[derive(Serialize)]
struct File<'a> {
    schema: &'a str,
    program: Program<'a>,
    rule_books: Vec<Book<'a>>,
    reviewed_at: Option<&'a str>,
    acts: Vec<ActOut<'a>>,
    totals: Counts,
    sources: Vec<SourceOut<'a>>,
    rules: Vec<working::RuleOut<'a>>,
    readings: Readings<'a>,
    checks: Vec<checks::CheckOut<'a>>,
    repeats: Vec<working::RepeatsOut>,
    materials: Vec<MaterialOut<'a>>,
    parts: Vec<PartOut<'a>>,
    lots: Vec<LotOut<'a>>,
    suppliers: Vec<suppliers::SupplierOut>,
    exemptions: Vec<ExemptionOut<'a>>,
    expiries: Vec<ExpiryOut>,
    history: charts::HistoryOut,
    charts: Vec<charts::ChartOut>,
    photos: Vec<photos::PhotoOut>,
}

#[derive(Serialize)]
struct Program<'a> {
    name: &'a str,
    version: &'a str,
}

#[derive(Serialize)]
struct Book<'a> {
    id: &'a str,
    edition: &'a str,
    sha256: &'a str,
}

#[derive(Serialize)]
struct ActOut<'a> {
    number: usize,
    kind: &'a str,
    target: String,
    value: &'a str,
    by: Option<&'a str>,
    at: Option<&'a str>,
    note: Option<&'a str>,
    undone: bool,
    matched: Option<bool>,
}

#[derive(Serialize)]
struct Counts {
    rows_in: u64,
    rows_used: u64,
    rows_check: u64,
    rows_duplicate: u64,
    rows_set_aside: u64,
    rows_refused: u64,
    readings: u64,
    readings_set_aside: u64,
}

impl From<RowCounts> for Counts {
    fn from(counts: RowCounts) -> Counts {
        Counts {
            rows_in: counts.rows_in,
            rows_used: counts.used,
            rows_check: counts.check,
            rows_duplicate: counts.duplicate,
            rows_set_aside: counts.set_aside,
            rows_refused: counts.refused,
            readings: counts.readings,
            readings_set_aside: counts.readings_set_aside,
        }
    }
}

#[derive(Serialize)]
struct SourceOut<'a> {
    name: &'a str,
    sha256: &'a str,
    bytes: u64,
    container: Option<ContainerOut<'a>>,
    #[serde(flatten)]
    counts: Counts,
    set_aside: SetAsideOut,
    problem: Option<&'a str>,
    refusals: Vec<NoticeOut<'a>>,
    refusals_left_out: u64,
    notices: Vec<NoticeOut<'a>>,
    notices_left_out: u64,
    mapping: Mapping<'a>,
}

#[derive(Serialize)]
struct SetAsideOut {
    blank: u64,
    heading: u64,
    unit_row: u64,
    remark: u64,
}

#[derive(Serialize)]
struct NoticeOut<'a> {
    line: Option<u32>,
    column: Option<u32>,
    heading: Option<&'a str>,
    code: &'a str,
    rows: u64,
    text: String,
    remedy: String,
}

#[derive(Serialize)]
struct ContainerOut<'a> {
    name: &'a str,
    sha256: &'a str,
    bytes: u64,
}

#[derive(Serialize)]
struct SheetOut<'a> {
    name: &'a str,
    hidden: bool,
    rows: u32,
    columns: u32,
    read: bool,
}

#[derive(Serialize)]
struct StatedOut<'a> {
    line: u32,
    key: &'a str,
    value: &'a str,
    used_as: Option<&'a str>,
}

#[derive(Serialize)]
struct Mapping<'a> {
    encoding: Option<&'a str>,
    encoding_known_by: Option<&'a str>,
    sheets: Vec<SheetOut<'a>>,
    stated: Vec<StatedOut<'a>>,
    delimiter: Option<String>,
    preamble: &'a [String],
    blocks: Vec<BlockOut<'a>>,
}

#[derive(Serialize)]
struct BlockOut<'a> {
    header_line: u32,
    fingerprint: &'a str,
    layout: &'a str,
    decimal_mark: Option<&'a str>,
    unit_elsewhere: Option<&'a str>,
    sigma_multiple_elsewhere: Option<String>,
    number_in_error_column_of_non_detect: &'a str,
    columns: Vec<ColumnOut<'a>>,
}

#[derive(Serialize)]
struct ColumnOut<'a> {
    column: u32,
    heading: &'a str,
    role: &'a str,
    element: Option<&'a str>,
    oxide: Option<String>,
    unit: Option<&'a str>,
    relative: bool,
    sigma_multiple: Option<String>,
    evidence: &'a str,
    confidence: &'a str,
}

#[derive(Serialize)]
struct MaterialOut<'a> {
    part: Option<&'a str>,
    material: Option<&'a str>,
    lot: Option<&'a str>,
    supplier: Option<&'a str>,
    class: &'a str,
    outcomes: Pairs<&'a str, &'a str>,
    halogens: Pairs<&'a str, &'a str>,
    readings: &'a [u32],
    spots: Vec<working::SpotsOut>,
    exemptions: MaterialExemptionsOut<'a>,
    cr6_area: Vec<Cr6Out<'a>>,
    change: Option<change::ChangeOut>,
    laboratory: Vec<LabOut<'a>>,
    set_aside: &'a [u32],
    disposition: &'a str,
    reasons: Vec<ReasonOut<'a>>,
}

#[derive(Serialize)]
struct PartOut<'a> {
    part: Option<&'a str>,
    lot: Option<&'a str>,
    supplier: Option<&'a str>,
    disposition: &'a str,
    reasons: Vec<ReasonOut<'a>>,
}

#[derive(Serialize)]
struct LotOut<'a> {
    lot: Option<&'a str>,
    supplier: Option<&'a str>,
    source: Option<usize>,
    readings: u64,
    disposition: &'a str,
    hold_ends: Option<HoldEndsOut<'a>>,
    reasons: Vec<ReasonOut<'a>>,
    sampling: Option<sampling::SamplingOut>,
    outlook: working::OutlookOut,
    not_assessed: Vec<NotAssessed<'a>>,
}

/// A code with its words.
#[derive(Serialize)]
pub(super) struct ReasonText {
    pub(super) code: &'static str,
    pub(super) text: String,
}

#[derive(Serialize)]
struct NotAssessed<'a> {
    code: &'a str,
    text: String,
}

#[derive(Serialize)]
struct ReasonOut<'a> {
    code: &'a str,
    kind: &'a str,
    effect: &'a str,
    about: Option<&'a str>,
    text: String,
}

/// A JSON object with keys in the order given.
struct Pairs<K, V>(Vec<(K, V)>);

impl<K: Serialize, V: Serialize> Serialize for Pairs<K, V> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(self.0.len()))?;
        for (key, value) in &self.0 {
            map.serialize_entry(key, value)?;
        }
        map.end()
    }
}

/// A mass fraction as a JSON number in mg/kg: whole numbers without a point.
pub(super) struct MgPerKg(pub(super) MassFraction);

impl Serialize for MgPerKg {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let units = self.0.units();
        if units % UNITS_PER_MG_KG == 0 {
            serializer.serialize_i64(units / UNITS_PER_MG_KG)
        } else {
            serializer.serialize_f64(self.0.to_mg_per_kg())
        }
    }
}

struct Readings<'a>(&'a Context<'a>);

impl Serialize for Readings<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let context = self.0;
        let mut list = serializer.serialize_seq(Some(context.findings.verdicts.len()))?;
        for (at, source) in context.inspection.sources.iter().enumerate() {
            if context.findings.same_as.get(at).copied().flatten().is_some() {
                continue;
            }
            let reviewer = SourceReview::new(source, &context.inspection.books, context.settings);
            for row in 0..source.readings.len() {
                list.serialize_element(&ReadingOut { context, reviewer: &reviewer, source, at, row })?;
            }
        }
        list.end()
    }
}

struct ReadingOut<'a> {
    context: &'a Context<'a>,
    reviewer: &'a SourceReview<'a>,
    source: &'a Source,
    at: usize,
    row: usize,
}

impl Serialize for ReadingOut<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let assessed = self.reviewer.assess(self.row);
        let readings = &self.source.readings;
        let findings = self.context.findings;
        let index = findings.first_reading.get(self.at).map_or(usize::MAX, |first| first + self.row);
        let check = findings.verdicts.get(index).is_some_and(|verdicts| verdicts.check);
        let set_aside = u32::try_from(index).ok().and_then(|at| findings.set_aside.get(&at));
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("source", &self.at)?;
        map.serialize_entry("line", &readings.line(self.row))?;
        for identity in [
            Identity::Id,
            Identity::Unit,
            Identity::Spot,
            Identity::Part,
            Identity::Material,
            Identity::Lot,
            Identity::Supplier,
        ] {
            map.serialize_entry(identity.code(), &readings.identity(identity, self.row))?;
        }
        map.serialize_entry("class", assessed.class.code())?;
        map.serialize_entry("class_from", assessed.class_from.code())?;
        map.serialize_entry("composition", &composition(self))?;
        map.serialize_entry("check", &check)?;
        map.serialize_entry("set_aside", &set_aside)?;
        for identity in
            [Identity::Time, Identity::Seconds, Identity::Instrument, Identity::Mode, Identity::Operator]
        {
            map.serialize_entry(identity.code(), &readings.identity(identity, self.row))?;
        }
        map.serialize_entry("elements", &Elements(self))?;
        map.serialize_entry(
            "outcomes",
            &Pairs(
                Substance::ALL
                    .iter()
                    .zip(&assessed.substances)
                    .zip(&assessed.cautions)
                    .map(|((substance, judged), cautions)| {
                        (
                            substance.symbol(),
                            OutcomeOut {
                                reading: self,
                                substance: *substance,
                                class: assessed.class,
                                judged,
                                cautions,
                            },
                        )
                    })
                    .collect(),
            ),
        )?;
        map.serialize_entry("halogens", &Halogens { reading: self, assessed: &assessed })?;
        map.serialize_entry("limits", &working::limits(self.reviewer, assessed.class, self.row))?;
        map.serialize_entry("trust", findings.trust.worst(index).code())?;
        map.serialize_entry("trust_by_element", &checks::by_element(&findings.trust, index).map(Pairs))?;
        map.end()
    }
}

#[derive(Serialize)]
struct CompositionOut {
    class: Option<&'static str>,
    reason: Option<&'static str>,
    group: Option<&'static str>,
    group_is_sure: bool,
    metals_mg_kg: MgPerKg,
    measured_mg_kg: MgPerKg,
    largest: Vec<Share>,
    family: Option<FamilyOut>,
    contradicts: Option<&'static str>,
    calibration: Option<&'static str>,
    text: String,
}

#[derive(Serialize)]
struct Share {
    element: &'static str,
    mg_kg: MgPerKg,
}

#[derive(Serialize)]
struct FamilyOut {
    code: &'static str,
    name: &'static str,
    fit: &'static str,
    ranges: Vec<RangeOut>,
    also: Vec<&'static str>,
    source: &'static str,
    clause: &'static str,
    confidence: &'static str,
}

#[derive(Serialize)]
struct RangeOut {
    element: &'static str,
    low_mg_kg: MgPerKg,
    high_mg_kg: MgPerKg,
    value_mg_kg: Option<MgPerKg>,
    fit: &'static str,
    outside_by_mg_kg: MgPerKg,
}

fn composition(reading: &ReadingOut<'_>) -> Option<CompositionOut> {
    let ReadingOut { reviewer, row, .. } = *reading;
    let found = reviewer.composition(row)?;
    Some(CompositionOut {
        class: found.suggestion.map(|(class, _)| class.code()),
        reason: found.suggestion.map(|(_, reason)| reason.code()),
        group: found.group.map(|found| found.group.code()),
        group_is_sure: found.group.is_some_and(|found| found.surely),
        metals_mg_kg: MgPerKg(found.metals),
        measured_mg_kg: MgPerKg(found.measured),
        largest: found
            .leading
            .iter()
            .flatten()
            .map(|(element, value)| Share { element: element.symbol(), mg_kg: MgPerKg(*value) })
            .collect(),
        family: found.family.map(|one| FamilyOut {
            code: &one.family.code,
            name: &one.family.name,
            fit: one.fit.code(),
            ranges: one
                .ranges
                .iter()
                .map(|found| RangeOut {
                    element: found.range.element.symbol(),
                    low_mg_kg: MgPerKg(found.range.low),
                    high_mg_kg: MgPerKg(found.range.high),
                    value_mg_kg: found.value.map(MgPerKg),
                    fit: found.fit.code(),
                    outside_by_mg_kg: MgPerKg(found.outside_by),
                })
                .collect(),
            also: one.also.iter().map(|family| family.code.as_str()).collect(),
            source: &one.family.source,
            clause: &one.family.clause,
            confidence: &one.family.confidence,
        }),
        contradicts: reviewer.contradiction(row).map(Contradiction::code),
        calibration: reviewer.assess(row).calibration.map(CalibrationDoubt::code),
        text: phrases::composition(reading.context.words, reviewer, row),
    })
}

struct Elements<'a>(&'a ReadingOut<'a>);

impl Serialize for Elements<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let ReadingOut { source, row, .. } = *self.0;
        let mapped =
            source.readings.elements().iter().filter(|column| column.cell(row).state != CellState::NoColumn);
        let mut map = serializer.serialize_map(None)?;
        for column in mapped {
            map.serialize_entry(column.element.symbol(), &element(self.0, column))?;
        }
        map.end()
    }
}

#[derive(Serialize)]
struct ElementOut {
    state: &'static str,
    value_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    below_detection_mg_kg: Option<MgPerKg>,
    above_range_mg_kg: Option<MgPerKg>,
    as_written: String,
}

fn element(reading: &ReadingOut<'_>, column: &ElementColumn) -> ElementOut {
    let cell = column.cell(reading.row);
    let is = |state| cell.state == state;
    ElementOut {
        state: cell.state.code(),
        value_mg_kg: is(CellState::Number).then_some(MgPerKg(cell.value)),
        sigma_mg_kg: reading
            .reviewer
            .printed_sigma(column.element, &cell, reading.row)
            .map(|sigma| MgPerKg(sigma.to_mass_fraction())),
        below_detection_mg_kg: if is(CellState::BelowDetection) {
            Some(MgPerKg(cell.value))
        } else {
            cell.detection_limit.map(MgPerKg)
        },
        above_range_mg_kg: is(CellState::AboveRange).then_some(MgPerKg(cell.value)),
        as_written: phrases::as_written(reading.source, column, reading.row),
    }
}

struct OutcomeOut<'a> {
    reading: &'a ReadingOut<'a>,
    substance: Substance,
    class: MaterialClass,
    judged: &'a Judgement,
    cautions: &'a Cautions,
}

impl OutcomeOut<'_> {
    /// How many sigmas the printed error stands for, where it was used.
    fn multiple(&self) -> Option<String> {
        let printed = matches!(
            self.judged.used.from,
            SigmaFrom::Printed | SigmaFrom::PrintedMultipleSet | SigmaFrom::PrintedMultipleUnknown
        );
        let reading = self.reading;
        printed.then(|| reading.reviewer.multiple(self.substance as usize, reading.row).0.to_string())
    }

    fn rule(&self) -> Option<usize> {
        working::rule_of(self.reading.context.inspection, self.substance, self.class)
    }

    fn reach(&self) -> (Option<MgPerKg>, Option<MgPerKg>) {
        let cell = self.reading.source.readings.cell(self.substance.element(), self.reading.row);
        let books = &self.reading.context.inspection.books;
        books
            .screening()
            .and_then(|(_, rule)| working::reach(&cell, self.judged, rule.sigma_factor))
            .map_or((None, None), |(from, to)| (Some(from), Some(to)))
    }
}

impl Serialize for OutcomeOut<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(None)?;
        map.serialize_entry("outcome", self.judged.outcome.code())?;
        map.serialize_entry("reason", &self.judged.reason.map(crate::outcome::Reason::code))?;
        map.serialize_entry("sigma_from", self.judged.used.from.code())?;
        let sigma = self.judged.used.sigma.map(|sigma: Sigma| MgPerKg(sigma.to_mass_fraction()));
        map.serialize_entry("sigma_used_mg_kg", &sigma)?;
        map.serialize_entry("sigma_multiple", &self.multiple())?;
        map.serialize_entry("rule", &self.rule())?;
        let (from, to) = self.reach();
        map.serialize_entry("reaches_from_mg_kg", &from)?;
        map.serialize_entry("reaches_to_mg_kg", &to)?;
        let ReadingOut { reviewer, row, .. } = *self.reading;
        let conformity = working::conformity(reviewer, self.substance, self.judged, row);
        map.serialize_entry("conformity", &conformity)?;
        let by_class = (self.class == MaterialClass::Unknown).then(|| {
            Pairs(
                MaterialClass::BANDED
                    .iter()
                    .map(|class| {
                        let judged = self.reading.reviewer.judge_as(self.substance, *class, self.reading.row);
                        (class.code(), judged.outcome.code())
                    })
                    .collect(),
            )
        });
        map.serialize_entry("by_class", &by_class)?;
        map.serialize_entry("cautions", &cautions(self.reading, self.cautions, self.judged))?;
        map.end()
    }
}

/// What physics makes doubtful about one outcome.
#[derive(Serialize)]
struct CautionOut {
    code: &'static str,
    partner: Option<&'static str>,
    apparent_mg_kg: Option<MgPerKg>,
    percent_missing: Option<u8>,
    strong: bool,
}

fn cautions(reading: &ReadingOut<'_>, cautions: &Cautions, judged: &Judgement) -> Vec<CautionOut> {
    if cautions.is_empty() {
        return Vec::new();
    }
    let overlaps = reading.reviewer.cautions(cautions, reading.row);
    let thin = cautions.percent_missing.map(|percent| CautionOut {
        code: CautionCode::ThinPiece.code(),
        partner: None,
        apparent_mg_kg: None,
        percent_missing: Some(percent),
        strong: judged.reason == Some(Reason::ThinSample),
    });
    overlaps
        .into_iter()
        .map(|(overlap, caution)| CautionOut {
            code: caution.code.code(),
            partner: Some(caution.partner.symbol()),
            apparent_mg_kg: Some(MgPerKg(caution.apparent)),
            percent_missing: None,
            strong: cautions.strong && overlap.may_decide(),
        })
        .chain(thin)
        .collect()
}

struct Halogens<'a> {
    reading: &'a ReadingOut<'a>,
    assessed: &'a crate::judging::Assessed,
}

#[derive(Serialize)]
struct HalogenOut {
    outcome: &'static str,
    reason: Option<&'static str>,
    sigma_from: &'static str,
    cautions: Vec<CautionOut>,
}

#[derive(Serialize)]
struct TotalOut {
    outcome: &'static str,
    reason: Option<&'static str>,
    sigma_from: &'static str,
    low_mg_kg: Option<MgPerKg>,
    high_mg_kg: Option<MgPerKg>,
    sigma_mg_kg: Option<MgPerKg>,
    cautions: Vec<CautionOut>,
}

impl Serialize for Halogens<'_> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        let mut map = serializer.serialize_map(Some(3))?;
        let of_halogen = |of: Halogen, judged: &Judgement| {
            let one = self.assessed.halogen_cautions.get(of as usize).copied().unwrap_or_default();
            cautions(self.reading, &one, judged)
        };
        for of in [Halogen::Cl, Halogen::Br] {
            let judged = self.assessed.halogen(of);
            let out = HalogenOut {
                outcome: judged.outcome.code(),
                reason: judged.reason.map(crate::outcome::Reason::code),
                sigma_from: judged.used.from.code(),
                cautions: of_halogen(of, &judged),
            };
            map.serialize_entry(of.name(), &out)?;
        }
        let total = &self.assessed.total;
        map.serialize_entry(
            Halogen::Total.name(),
            &TotalOut {
                outcome: total.judgement.outcome.code(),
                reason: total.judgement.reason.map(crate::outcome::Reason::code),
                sigma_from: total.judgement.used.from.code(),
                low_mg_kg: total.low.map(MgPerKg),
                high_mg_kg: total.high.map(MgPerKg),
                sigma_mg_kg: total.sigma.map(|sigma| MgPerKg(sigma.to_mass_fraction())),
                cautions: of_halogen(Halogen::Total, &total.judgement),
            },
        )?;
        map.end()
    }
}

fn acts<'a>(context: &Context<'a>) -> Vec<ActOut<'a>> {
    let undone = crate::acts::undone(&context.inspection.acts);
    let given = |text: &'a str| (!text.is_empty()).then_some(text);
    context
        .inspection
        .acts
        .iter()
        .zip(undone)
        .enumerate()
        .map(|(at, (act, undone))| ActOut {
            number: at + 1,
            kind: act.kind.code(),
            target: act.target.to_text(),
            value: &act.value,
            by: given(&act.by),
            at: given(&act.at),
            note: given(&act.note),
            undone,
            matched: settled::matched(context.inspection, context.findings, act).filter(|_| !undone),
        })
        .collect()
}

fn source<'a>(context: &Context<'a>, at: usize) -> Option<SourceOut<'a>> {
    let source = context.inspection.sources.get(at)?;
    let [blank, heading, unit_row, remark] = source.set_aside;
    let same = context.findings.same_as.get(at).copied().flatten().map(|_| Notice {
        line: 0,
        column: 0,
        heading: String::new(),
        code: crate::reading::NoticeCode::SameAsAnother,
        found: String::new(),
        rows: source.readings.len() as u64,
    });
    let mut notices = self::notices(context, source, &source.notices);
    if let Some(same) = same {
        notices.push(NoticeOut {
            line: None,
            column: None,
            heading: None,
            code: same.code.code(),
            rows: same.rows,
            text: phrases::notice(context.words, &same, Some(source)),
            remedy: phrases::notice_remedy(context.words, same.code),
        });
    }
    Some(SourceOut {
        name: &source.name,
        sha256: &source.sha256,
        bytes: source.bytes,
        container: source.container.as_ref().map(|container| ContainerOut {
            name: &container.name,
            sha256: &container.sha256,
            bytes: container.bytes,
        }),
        counts: context.findings.counts(context.inspection, at).into(),
        set_aside: SetAsideOut { blank, heading, unit_row, remark },
        problem: source.problem.map(crate::reading::NoticeCode::code),
        refusals: self::notices(context, source, &source.refusals),
        refusals_left_out: source.refusals.left_out,
        notices,
        notices_left_out: source.notices.left_out,
        mapping: Mapping {
            encoding: (!source.encoding.is_empty()).then_some(source.encoding),
            encoding_known_by: (!source.encoding.is_empty()).then(|| source.encoding_known_by.code()),
            sheets: source
                .sheets
                .iter()
                .map(|sheet| SheetOut {
                    name: &sheet.name,
                    hidden: sheet.hidden,
                    rows: sheet.rows,
                    columns: sheet.columns,
                    read: sheet.read,
                })
                .collect(),
            stated: source
                .stated
                .iter()
                .map(|stated| StatedOut {
                    line: stated.line,
                    key: &stated.key,
                    value: &stated.value,
                    used_as: stated.used_as.map(crate::reading::StatedUse::code),
                })
                .collect(),
            delimiter: source.delimiter.map(|byte| char::from(byte).to_string()),
            preamble: &source.preamble,
            blocks: source
                .blocks
                .iter()
                .map(|block| BlockOut {
                    header_line: block.header_line,
                    fingerprint: &block.fingerprint,
                    layout: block.layout.code(),
                    unit_elsewhere: block.set_unit.map(crate::quantity::Unit::sign),
                    sigma_multiple_elsewhere: block.stated_above.map(|multiple| multiple.to_string()),
                    decimal_mark: block.mark.map(|mark| match mark {
                        crate::quantity::DecimalMark::Point => ".",
                        crate::quantity::DecimalMark::Comma => ",",
                    }),
                    number_in_error_column_of_non_detect: if block.limit_in_error_column {
                        "limit"
                    } else {
                        "one_error"
                    },
                    columns: block.columns.iter().map(column).collect(),
                })
                .collect(),
        },
    })
}

fn column(meaning: &ColumnMeaning) -> ColumnOut<'_> {
    let (of, error) = (meaning.role.of(), meaning.role.error());
    ColumnOut {
        column: meaning.column,
        heading: &meaning.heading,
        role: meaning.role.code(),
        element: of.map(|(element, _)| element.symbol()),
        oxide: of.and_then(|(_, oxide)| oxide).map(|oxide| oxide.to_string()),
        unit: meaning.role.unit().map(crate::quantity::Unit::sign),
        relative: error.is_some_and(|error| error.relative),
        sigma_multiple: error.and_then(|error| error.multiple).map(|multiple| multiple.to_string()),
        evidence: meaning.evidence.code(),
        confidence: meaning.evidence.confidence().code(),
    }
}

fn notices<'a>(context: &Context<'a>, source: &'a Source, list: &'a Notices) -> Vec<NoticeOut<'a>> {
    list.kept
        .iter()
        .map(|one| NoticeOut {
            line: (one.line > 0).then_some(one.line),
            column: (one.column > 0).then_some(one.column),
            heading: (!one.heading.is_empty()).then_some(one.heading.as_str()),
            code: one.code.code(),
            rows: one.rows,
            text: phrases::notice(context.words, one, Some(source)),
            remedy: phrases::notice_remedy(context.words, one.code),
        })
        .collect()
}

fn reviewers<'a>(context: &Context<'a>) -> Vec<SourceReview<'a>> {
    let sources = context.inspection.sources.iter();
    sources.map(|source| SourceReview::new(source, &context.inspection.books, context.settings)).collect()
}

fn materials<'a>(context: &Context<'a>, reviewers: &[SourceReview<'_>]) -> Vec<MaterialOut<'a>> {
    let findings = context.findings;
    findings
        .materials
        .iter()
        .map(|material| {
            let lot = findings.lots.get(material.lot);
            MaterialOut {
                part: material.part.as_deref(),
                material: material.name.as_deref(),
                lot: lot.and_then(|lot| lot.lot.as_deref()),
                supplier: lot.and_then(|lot| lot.supplier.as_deref()),
                class: material.class.code(),
                outcomes: Pairs(
                    Substance::ALL
                        .iter()
                        .map(|substance| (substance.symbol(), material.tally.worst(*substance).code()))
                        .collect(),
                ),
                halogens: Pairs(
                    Halogen::ALL
                        .iter()
                        .map(|halogen| (halogen.name(), material.tally.worst_halogen(*halogen).code()))
                        .collect(),
                ),
                readings: &material.readings,
                spots: working::spots(context.inspection, findings, reviewers, material),
                exemptions: exemptions::material(
                    context.words,
                    context.inspection.books.exemptions(),
                    context.spoken,
                    &material.claims,
                ),
                cr6_area: exemptions::cr6(&material.claims),
                change: material.change.as_ref().map(|one| change::out(context.words, one)),
                laboratory: settled::laboratory(material),
                set_aside: &material.set_aside,
                disposition: material.disposition.code(),
                reasons: reasons(context.words, &material.reasons),
            }
        })
        .collect()
}

fn reasons<'a>(words: &Words, list: &'a [LotReason]) -> Vec<ReasonOut<'a>> {
    list.iter()
        .map(|reason| ReasonOut {
            code: reason.code.code(),
            kind: reason.code.kind().code(),
            effect: reason.effect.code(),
            about: (!reason.about.is_empty()).then_some(reason.about.as_str()),
            text: phrases::lot_reason(words, reason),
        })
        .collect()
}
