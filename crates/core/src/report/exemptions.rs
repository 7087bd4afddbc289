//! Exemptions, claims and days of expiry: as the JSON of findings, and as the sentences a person reads.

use serde::Serialize;

use super::json::{MgPerKg, ReasonText};
use crate::acts::Settings;
use crate::claims::{Expiry, JudgedClaim, MaterialClaims};
use crate::exempt::{self, Bound, Exemption, Number, RenewalState, Verdict};
use crate::inspection::{Findings, Inspection};
use crate::lot::{LotReason, LotReasonCode};
use crate::report::phrases;
use crate::words::Words;

/// An exemption that a material or a day of expiry of the findings speaks of.
#[derive(Serialize)]
pub struct ExemptionOut<'a> {
    entry: &'a str,
    scope: &'a str,
    substance: &'a str,
    direction: &'a str,
    limit_mg_kg: Option<MgPerKg>,
    groups: Vec<&'a str>,
    from: Option<String>,
    expires: Option<String>,
    found: bool,
    not_filed: bool,
    starred: bool,
    act: &'a str,
    source: &'a str,
    clause: &'a str,
    confidence: &'a str,
    note: &'a str,
}

/// What is claimed of a material, and what may be.
#[derive(Serialize)]
pub struct MaterialExemptionsOut<'a> {
    claims: Vec<ClaimOut<'a>>,
    candidates: Vec<CandidateOut>,
}

#[derive(Serialize)]
struct ClaimOut<'a> {
    entry: &'a str,
    substance: &'a str,
    exemption: Option<usize>,
    evidence: Option<&'a str>,
    by: Option<&'a str>,
    second: Option<&'a str>,
    group: Option<&'a str>,
    number: &'a str,
    state: &'a str,
    why: Vec<ReasonText>,
}

#[derive(Serialize)]
struct CandidateOut {
    exemption: usize,
    number: &'static str,
    questions: Vec<&'static str>,
}

/// A result for hexavalent chromium by area.
#[derive(Serialize)]
pub struct Cr6Out<'a> {
    area_ug_cm2: f64,
    below: bool,
    result: Option<&'a str>,
    laboratory: Option<&'a str>,
    report: Option<&'a str>,
}

/// A day of expiry.
#[derive(Serialize)]
pub struct ExpiryOut {
    date: String,
    exemption: usize,
    kind: &'static str,
    renewal: &'static str,
    materials: Vec<usize>,
    lots: Vec<usize>,
    text: String,
}

/// The exemptions that the findings speak of, in the order of the book, and their places by row.
#[derive(Debug, Default)]
pub struct Spoken {
    rows: Vec<usize>,
}

impl Spoken {
    /// Gathers them.
    pub fn of(findings: &Findings) -> Spoken {
        let of_materials = findings.materials.iter().flat_map(|material| {
            let claims = material.claims.claims.iter().filter_map(|claim| claim.row);
            claims.chain(material.claims.candidates.iter().map(|candidate| candidate.row))
        });
        let mut rows: Vec<usize> =
            of_materials.chain(findings.expiries.iter().map(|expiry| expiry.row)).collect();
        rows.sort_unstable();
        rows.dedup();
        Spoken { rows }
    }

    fn place(&self, row: usize) -> usize {
        self.rows.partition_point(|one| *one < row)
    }

    /// Their rows for the findings.
    pub fn out<'a>(&self, rows: &'a [Exemption]) -> Vec<ExemptionOut<'a>> {
        self.rows.iter().filter_map(|at| rows.get(*at)).map(row_out).collect()
    }
}

fn row_out(row: &Exemption) -> ExemptionOut<'_> {
    ExemptionOut {
        entry: &row.entry,
        scope: &row.scope,
        substance: row.substance.symbol(),
        direction: row.bound.code(),
        limit_mg_kg: row.bound.limit().map(MgPerKg),
        groups: row.groups.iter().map(|group| group.code()).collect(),
        from: row.from.map(|day| day.to_string()),
        expires: row.expires.map(|day| day.to_string()),
        found: row.found,
        not_filed: row.not_filed,
        starred: row.starred,
        act: &row.act,
        source: &row.source,
        clause: &row.clause,
        confidence: &row.confidence,
        note: &row.note,
    }
}

fn given(text: &str) -> Option<&str> {
    (!text.is_empty()).then_some(text)
}

/// What became of a claim: a code of [`Verdict::CODES`], or `not_needed`.
pub fn state(verdict: Option<&Verdict>) -> &'static str {
    verdict.map_or("not_needed", Verdict::code)
}

/// What the readings say of a row's number, in words; a row without a number is told apart from one that is kept to.
pub fn number(words: &Words, rows: &[Exemption], row: Option<usize>, number: Number) -> String {
    let bound = row.and_then(|row| rows.get(row)).map(|row| row.bound);
    match (number, bound) {
        (Number::Within, Some(Bound::NoNumber)) => words.say("number-no_number"),
        (Number::Within, Some(Bound::AtLeast(_))) => words.say("number-within_minimum"),
        _ => words.say(&format!("number-{}", number.code())),
    }
}

/// Why a claim does not cover yet, or at all: codes with their words.
pub fn why(words: &Words, rows: &[Exemption], one: &JudgedClaim) -> Vec<(&'static str, String)> {
    match &one.verdict {
        Some(Verdict::Open(questions)) => questions
            .iter()
            .map(|question| (question.code(), words.say(&format!("question-{}", question.code()))))
            .collect(),
        Some(Verdict::NotCovered(refusal)) => {
            let text = match near(rows, &one.claim.entry).filter(|_| one.row.is_none()) {
                Some(entry) => words.with("refusal-entry_near", &[("entry", entry)]),
                None => words.say(&format!("refusal-{}", refusal.code())),
            };
            vec![(refusal.code(), text)]
        }
        _ => Vec::new(),
    }
}

/// The entry of a book that is written with the same letters and digits (`6c` for `6(c)`): worth naming, never taken for it.
fn near<'r>(rows: &'r [Exemption], entry: &str) -> Option<&'r str> {
    let plain = |text: &str| text.replace(|one: char| !one.is_ascii_alphanumeric(), "").to_ascii_lowercase();
    let wanted = plain(entry);
    rows.iter().map(|row| row.entry.as_str()).find(|known| plain(known) == wanted)
}

/// What is claimed of a material, for the findings.
pub fn material<'a>(
    words: &Words,
    rows: &[Exemption],
    spoken: &Spoken,
    claims: &'a MaterialClaims,
) -> MaterialExemptionsOut<'a> {
    MaterialExemptionsOut {
        claims: claims
            .claims
            .iter()
            .map(|one| ClaimOut {
                entry: &one.claim.entry,
                substance: one.claim.substance.symbol(),
                exemption: one.row.map(|row| spoken.place(row)),
                evidence: given(&one.claim.evidence),
                by: given(&one.claim.by),
                second: given(&one.claim.second),
                group: one.claim.group.map(exempt::Group::code),
                number: one.number.code(),
                state: state(one.verdict.as_ref()),
                why: why(words, rows, one)
                    .into_iter()
                    .map(|(code, text)| ReasonText { code, text })
                    .collect(),
            })
            .collect(),
        candidates: claims
            .candidates
            .iter()
            .map(|one| CandidateOut {
                exemption: spoken.place(one.row),
                number: one.number.code(),
                questions: one.questions.iter().map(|question| question.code()).collect(),
            })
            .collect(),
    }
}

/// Results by area of a material, for the findings.
pub fn cr6(claims: &MaterialClaims) -> Vec<Cr6Out<'_>> {
    claims
        .cr6
        .iter()
        .map(|one| Cr6Out {
            area_ug_cm2: one.said.area.to_ug_per_cm2(),
            below: one.said.below,
            result: one.result.map(exempt::AreaResult::code),
            laboratory: given(&one.said.laboratory),
            report: given(&one.said.report),
        })
        .collect()
}

/// Where the renewal of an entry stands, by code: what the book knows stands above what a person says.
pub fn renewal(settings: &Settings, row: &Exemption) -> &'static str {
    if row.not_filed {
        return RenewalState::NotFiled.code();
    }
    let said = settings.renewals().into_iter().find(|renewal| renewal.entry == row.entry);
    said.map_or("unknown", |renewal| renewal.state.code())
}

/// The lots of the materials that rest on a day of expiry, as indices in the findings.
pub fn lots_of(findings: &Findings, expiry: &Expiry) -> Vec<usize> {
    let of_materials = expiry.materials.iter().filter_map(|at| findings.materials.get(*at));
    let mut lots: Vec<usize> = of_materials.map(|material| material.lot).collect();
    lots.dedup();
    lots
}

/// How many lots one sentence names.
const LOTS_NAMED: usize = 8;

/// A day of expiry in words: what expires, for which lots, and where the renewal stands.
pub fn expiry(words: &Words, inspection: &Inspection, findings: &Findings, expiry: &Expiry) -> String {
    let Some(row) = inspection.books.exemptions().get(expiry.row) else { return String::new() };
    let lots = lots_of(findings, expiry);
    let named = lots.iter().take(LOTS_NAMED).filter_map(|at| findings.lots.get(*at));
    let mut names: Vec<String> = named.map(|lot| phrases::lot_name(words, inspection, lot)).collect();
    if lots.len() > LOTS_NAMED {
        let more = (lots.len() - LOTS_NAMED).to_string();
        names.push(words.with("report-also_more", &[("count", &more)]));
    }
    let settings = inspection.settings();
    let renewal = words.say(&format!("renewal-{}", renewal(&settings, row)));
    words.with(
        match (expiry.claimed, settings.placed()) {
            (true, _) => "expiry-claimed",
            (false, Some(_)) => "expiry-candidate",
            (false, None) => "expiry-undated",
        },
        &[
            ("day", &expiry.day.to_string()),
            ("entry", &row.entry),
            ("about", row.substance.symbol()),
            ("renewal", &renewal),
            ("count", &expiry.materials.len().to_string()),
            ("names", &words.list(&names)),
        ],
    )
}

/// Every day of expiry, for the findings.
pub fn expiries(
    words: &Words,
    inspection: &Inspection,
    findings: &Findings,
    settings: &Settings,
    spoken: &Spoken,
) -> Vec<ExpiryOut> {
    let rows = inspection.books.exemptions();
    findings
        .expiries
        .iter()
        .map(|one| ExpiryOut {
            date: one.day.to_string(),
            exemption: spoken.place(one.row),
            kind: if one.claimed { "claimed" } else { "candidate" },
            renewal: rows.get(one.row).map_or("unknown", |row| renewal(settings, row)),
            materials: one.materials.clone(),
            lots: lots_of(findings, one),
            text: expiry(words, inspection, findings, one),
        })
        .collect()
}

/// True for a reason about a claim: it is about substance, entry and what is asked or refused.
pub const fn is_of_claim(code: LotReasonCode) -> bool {
    use LotReasonCode as Code;
    matches!(
        code,
        Code::ClaimOpen
            | Code::ClaimNotCovered
            | Code::ClaimCovers
            | Code::ClaimExceeded
            | Code::ClaimExpired
    )
}

/// A reason that a claim gives, in words; `None` for any other.
pub fn claim_reason(words: &Words, reason: &LotReason) -> Option<String> {
    let kind = match reason.code {
        LotReasonCode::ClaimOpen => "question",
        LotReasonCode::ClaimNotCovered => "refusal",
        LotReasonCode::ClaimCovers | LotReasonCode::ClaimExceeded | LotReasonCode::ClaimExpired => "",
        _ => return None,
    };
    let mut parts = reason.about.splitn(3, ' ');
    let (about, entry) = (parts.next().unwrap_or(""), parts.next().unwrap_or(""));
    let why = parts.next().map(|code| words.say(&format!("{kind}-{code}"))).unwrap_or_default();
    Some(words.with(
        &format!("lot-reason-{}", reason.code.code()),
        &[
            ("about", about),
            ("entry", entry),
            ("why", &why),
            ("count", &reason.count.to_string()),
            ("of", &reason.of.to_string()),
        ],
    ))
}
