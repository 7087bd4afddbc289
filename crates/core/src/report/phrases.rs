//! Codes and numbers as the sentences a person reads; the one place where page, report and JSON get their words.

use crate::acts::{Act, ActKind, Target};
use crate::caution::Cautions;
use crate::column::ColumnRole;
use crate::composition::{AlloyGroup, RangeFit};
use crate::inspection::{Findings, Inspection, LotFinding};
use crate::judging::SourceReview;
use crate::lot::{Disposition, LotReason, LotReasonCode, ReasonKind, Reasons};
use crate::material::MaterialClass;
use crate::next_step::{self, NextStep};
use crate::outcome::{Judgement, Outcome, Reason, SigmaFrom};
use crate::quantity::{Coverage, MassFraction, Sigma, SigmaMultiple};
use crate::reading::{Cell, CellState, ElementColumn, Identity, Notice, NoticeCode, Source, Written};
use crate::rules::{LowEdge, Problem, Screening};
use crate::stoichiometry::{self, Family};
use crate::substance::{Element, Halogen, Substance};
use crate::words::Words;

/// What screening never answers, by code.
pub const NOT_ASSESSED: [&str; 5] = ["phthalates", "pbb_pbde", "cr6", "exemptions", "change"];

/// The cautions that go with every result, by code.
pub const CAUTIONS: [&str; 6] = ["declaration", "homogeneous", "items", "shipping", "radiation", "dust"];

/// The cautions in words.
pub fn cautions(words: &Words) -> Vec<String> {
    CAUTIONS.iter().map(|code| words.say(&format!("caution-{code}"))).collect()
}

/// A reason of a disposition in words, with a remark where it is only advisory.
pub fn lot_reason(words: &Words, reason: &LotReason) -> String {
    if let Some(text) = super::exemptions::claim_reason(words, reason) {
        return text;
    }
    if let Some(text) = super::settled::reason(words, reason) {
        return text;
    }
    let (count, of) = (reason.count.to_string(), reason.of.to_string());
    // What is only ever a halogen has its name from the catalogue; bromine is a substance too.
    let halogen = matches!(reason.code, LotReasonCode::HalogenOverLimit | LotReasonCode::HalogenOpen)
        || [Halogen::Cl, Halogen::Total].iter().any(|of| of.name() == reason.about);
    let about = if halogen {
        words.say(&format!("halogen-{}", reason.about))
    } else if matches!(
        reason.code,
        LotReasonCode::TrustFailed | LotReasonCode::TrustNotBracketed | LotReasonCode::ChecksFarApart
    ) {
        // It ends with the stretch of time.
        words.days_in(&reason.about)
    } else {
        reason.about.clone()
    };
    let what = TrustMissing::of(words, reason);
    let mut arguments = what.arguments().to_vec();
    let elements = what.elements.as_deref().unwrap_or(&about);
    arguments.extend([("about", elements), ("count", count.as_str()), ("of", of.as_str())]);
    let nothing = reason.code == LotReasonCode::TrustNone && about.is_empty() && reason.count > 0;
    let alone = reason.code == LotReasonCode::TrustNotJudged && !about.is_empty();
    let part = if nothing {
        ".nothing"
    } else if alone {
        ".alone"
    } else {
        what.part
    };
    let id = format!("lot-reason-{}{part}", reason.code.code());
    let text = words.with(&id, &arguments);
    if reason.effect == Disposition::Accept && !reason.code.is_told() {
        words.sentences(&[text, words.say("reason-advisory")])
    } else {
        text
    }
}

/// What physics makes doubtful about an outcome, a sentence each; after overlaps, what a strong one asks for.
pub fn doubts(
    words: &Words,
    reviewer: &SourceReview<'_>,
    cautions: &Cautions,
    outcome: Outcome,
    about: &str,
    row: usize,
) -> Vec<String> {
    let mut said: Vec<String> = reviewer
        .cautions(cautions, row)
        .iter()
        .map(|(overlap, caution)| {
            let basis = super::books::confidence_short(words, overlap.basis);
            let arguments = [
                ("about", about),
                ("line", overlap.line),
                ("partner", overlap.partner.symbol()),
                ("partner_line", overlap.partner_line),
                ("gap", &overlap.gap.abs().to_string()),
                ("apparent", &rounded(caution.apparent)),
                ("basis", &basis),
            ];
            words.with(&format!("doubt-{}", caution.code.code()), &arguments)
        })
        .collect();
    if cautions.strong {
        let over = outcome == Outcome::Over;
        said.push(words.say(if over { "doubt-strong_over" } else { "doubt-strong_below" }));
    }
    if let Some(percent) = cautions.percent_missing {
        said.push(words.with("doubt-thin_piece", &[("about", about), ("percent", &percent.to_string())]));
    }
    said
}

/// What the upper end of a reading allows at most of the substance its element stands for; empty where the element is
/// the substance, or there is no upper end.
pub fn bound(words: &Words, substance: Substance, cell: &Cell, judged: &Judgement, k: Coverage) -> String {
    let x = match cell.state {
        CellState::Number | CellState::BelowDetection => Some(cell.value),
        CellState::NotDetected => cell.detection_limit,
        _ => None,
    };
    let (Some(x), Some(sigma)) = (x, judged.used.sigma) else { return String::new() };
    let most = stoichiometry::upper_end(x, sigma, k);
    match substance {
        Substance::Cr => {
            let most = rounded(stoichiometry::most_hexavalent(most));
            words.with("bound-hexavalent", &[("most", &most)])
        }
        Substance::Br => {
            let [pbde, pbb] = [Family::Pbde, Family::Pbb]
                .map(|family| rounded(stoichiometry::most_brominated(family, most)));
            let deca = rounded(stoichiometry::as_deca(Family::Pbde, most));
            let mut text = words.with("bound-brominated", &[("pbde", &pbde), ("pbb", &pbb), ("deca", &deca)]);
            if !stoichiometry::clears_pops(most) {
                let limit = stoichiometry::POPS_PBDE.to_string();
                text.push_str(words.gap());
                text.push_str(&words.with("bound-pops", &[("limit", &limit)]));
            }
            text
        }
        Substance::Cd | Substance::Pb | Substance::Hg => String::new(),
    }
}

/// What ends a reason.
pub fn lot_remedy(words: &Words, reason: &LotReason) -> String {
    let what = TrustMissing::of(words, reason);
    let part = if what.part.is_empty() { "." } else { what.part };
    let joint = if what.part.is_empty() { "" } else { "_" };
    words.with(&format!("lot-reason-{}{part}{joint}remedy", reason.code.code()), &what.arguments())
}

/// What a reason of missing trust names beside its elements, out of what it is about: `Cd Pb, XRF-B, plastics, polymer` where
/// no check of them is there, `Cd Pb, CHK-1, C-7, 2025-01-31` (or, in place of the day, how the check came out) where
/// something of a check is lacking. What is not stated is a dash, `none` for the catalogue.
struct TrustMissing {
    part: &'static str,
    elements: Option<String>,
    /// Instrument, mode and class; or sample, certificate and cause.
    named: [String; 3],
    class: &'static str,
}

impl TrustMissing {
    fn of(words: &Words, reason: &LotReason) -> TrustMissing {
        let none = || "none".to_owned();
        let mut what =
            TrustMissing { part: "", elements: None, named: [none(), none(), none()], class: "none" };
        let covers = reason.code == LotReasonCode::TrustNone;
        if !covers && reason.code != LotReasonCode::TrustNotCertified {
            return what;
        }
        let (elements, rest) = reason.about.split_once(", ").unwrap_or((&reason.about, ""));
        what.elements = Some(elements.replace(' ', ", "));
        let Some((names, last)) = rest.rsplit_once(", ") else { return what };
        let names = if covers { names.rsplit_once(", ") } else { names.split_once(", ") };
        let (first, second) = names.unwrap_or(("–", "–"));
        let or_none = |name: &str| if name == "–" { none() } else { name.to_owned() };
        let last = if covers {
            what.class = MaterialClass::from_code(last).map_or("none", MaterialClass::code);
            words.say(&format!("class-{last}"))
        } else if last.starts_with(|first: char| first.is_ascii_digit()) {
            what.part = ".expired";
            words.days_in(last)
        } else {
            what.part = ".open";
            words.say(&format!("check-verdict-{last}"))
        };
        what.named = [or_none(first), or_none(second), last];
        what
    }

    fn arguments(&self) -> [(&'static str, &str); 7] {
        let [first, second, last] = &self.named;
        [
            ("instrument", first),
            ("mode", second),
            ("class", self.class),
            ("class_name", last),
            ("sample", first),
            ("certificate", second),
            ("cause", last),
        ]
    }
}

/// A notice or refusal in words.
pub fn notice(words: &Words, notice: &Notice, source: Option<&Source>) -> String {
    let rows = notice.rows.to_string();
    let reading = match source.and_then(|source| source.blocks.first()) {
        Some(block) if !block.limit_in_error_column => "one_error",
        _ => "limit",
    };
    words.with(
        &format!("notice-{}", notice.code.code()),
        &[("found", &notice.found), ("rows", &rows), ("reading", reading)],
    )
}

/// What to do about a notice or refusal.
pub fn notice_remedy(words: &Words, code: NoticeCode) -> String {
    words.say(&format!("notice-{}.remedy", code.code()))
}

/// A problem of a data file in words.
pub fn problem(words: &Words, problem: &Problem, expected: &str) -> String {
    words.with(
        &format!("problem-{}", problem.code.code()),
        &[("found", &problem.found), ("expected", expected)],
    )
}

/// What to do about a problem of a data file.
pub fn problem_remedy(words: &Words, problem: &Problem, expected: &str) -> String {
    words.with(&format!("problem-{}.remedy", problem.code.code()), &[("expected", expected)])
}

/// An act in words.
pub fn act(words: &Words, act: &Act) -> String {
    let fields = crate::settings_file::fields_of(act.kind);
    if act.kind == ActKind::SiteSigma {
        return site_sigma(words, &act.value);
    }
    if !fields.is_empty() {
        // What was left out reads as `none`.
        let said = crate::fields::split(&act.value);
        let value = |name: &str| {
            let found = said.iter().find(|(known, _)| known == name).map(|(_, value)| value.as_str());
            found.filter(|value| !value.is_empty()).unwrap_or("none")
        };
        let lifted = (act.kind == ActKind::Lift).then(|| super::settled::lifted(words, value("reason")));
        let arguments: Vec<(&str, &str)> = fields
            .iter()
            .map(|(name, _)| (*name, lifted.as_deref().filter(|_| *name == "reason").unwrap_or(value(name))))
            .collect();
        return words.with(&format!("act-{}", act.kind.code()), &arguments);
    }
    // A number in a text chooses no form of a sentence; a word does.
    let no_heading = act.kind == ActKind::HeaderLine && act.value == "0";
    let value = if no_heading { "none".to_owned() } else { act_value(words, act.kind, &act.value) };
    words.with(&format!("act-{}", act.kind.code()), &[("value", &value)])
}

/// The value of an act as a person reads it: what a code stands for, and names of a list with commas between.
pub fn act_value(words: &Words, kind: ActKind, value: &str) -> String {
    if kind == ActKind::Class {
        return words.say(&format!("class-{value}"));
    }
    let id = format!("said-{}-{value}", kind.code());
    if words.has(&id) {
        words.say(&id)
    } else if crate::settings_file::is_list(kind) {
        words.list(&crate::acts::split_escaped(value))
    } else {
        value.to_owned()
    }
}

/// A row of the site's table in words.
fn site_sigma(words: &Words, value: &str) -> String {
    let said = crate::fields::split(value);
    let field = |name: &str| {
        let found = said.iter().find(|(known, _)| known == name).map_or("", |(_, value)| value.as_str());
        if found.is_empty() || (name == "constant" && found.starts_with("0 ")) { "none" } else { found }
    };
    let class = words.say(&format!("class-{}", field("class")));
    let names = ["element", "s", "seconds", "constant"].map(|name| (name, field(name)));
    let arguments: Vec<(&str, &str)> = names.into_iter().chain([("class", class.as_str())]).collect();
    words.with("act-site_sigma", &[("value", &words.with("said-site_sigma", &arguments))])
}

/// The chance in percent that a normal value lies beyond so many sigmas on one side, with three digits.
pub fn tail_percent(words: &Words, k: Coverage) -> String {
    words.number(&format!("{:.3}", 100.0 * crate::statistics::normal_upper(k.to_f64())))
}

/// An act in words; a column by its heading and its meaning in words.
pub fn act_of(inspection: &Inspection, words: &Words, act: &Act) -> String {
    let told =
        (act.kind == ActKind::ColumnRole).then(|| crate::acts::parse_column_role(&act.value)).flatten();
    let Some((number, role)) = told else { return self::act(words, act) };
    let Target::Header(fingerprint) = &act.target else { return self::act(words, act) };
    let heading = inspection
        .sources
        .iter()
        .flat_map(|source| &source.blocks)
        .find(|block| block.fingerprint == *fingerprint)
        .and_then(|block| block.columns.iter().find(|column| column.column == number))
        .map(|column| column.heading.clone())
        .unwrap_or_default();
    words.with(
        "act-column_role_named",
        &[("column", &number.to_string()), ("heading", &heading), ("role", &role_phrase(words, &role))],
    )
}

/// A role in words with everything it states.
fn role_phrase(words: &Words, role: &ColumnRole) -> String {
    let mut parts = vec![words.say(&format!("role-{}", role.code()))];
    if let Some((element, oxide)) = role.of() {
        parts.push(oxide.map_or_else(|| element.symbol().to_owned(), |oxide| oxide.to_string()));
    }
    let error = role.error();
    if error.is_some_and(|error| error.relative) {
        parts.push(words.say("relative-to-value"));
    } else {
        parts.extend(role.unit().map(|unit| unit.sign().to_owned()));
    }
    if let Some(multiple) = error.and_then(|error| error.multiple) {
        parts.push(words.with("sigmas", &[("multiple", &multiple.to_string())]));
    }
    parts.join(" ")
}

/// What an act speaks about, in words.
pub fn target(words: &Words, target: &Target) -> String {
    let or_not = |text: &String| if text.is_empty() { words.say("not-stated") } else { text.clone() };
    match target {
        Target::Inspection => words.say("target-inspection"),
        Target::Source(name) => words.with("target-source", &[("name", name)]),
        Target::Header(fingerprint) => {
            words.with("target-header", &[("name", fingerprint.get(..8).unwrap_or(fingerprint))])
        }
        Target::Lot(supplier, lot) if supplier.is_empty() && lot.is_empty() => {
            words.say("target-lot_unnamed")
        }
        Target::Lot(supplier, lot) => {
            words.with("target-lot", &[("lot", &or_not(lot)), ("supplier", &or_not(supplier))])
        }
        Target::Part(part) => words.with("target-part", &[("part", part)]),
        Target::Material(part, material) => {
            words.with("target-material", &[("part", &or_not(part)), ("material", material)])
        }
        Target::LotMaterial([supplier, lot, part, material]) => {
            let of = |name: &String| or_not(name);
            words.with(
                "target-lot_material",
                &[
                    ("supplier", &of(supplier)),
                    ("lot", &of(lot)),
                    ("part", &of(part)),
                    ("material", &of(material)),
                ],
            )
        }
        Target::Reading(source, line) => {
            words.with("target-reading", &[("name", source), ("line", &line.to_string())])
        }
    }
}

/// An outcome in words.
pub fn outcome(words: &Words, outcome: Outcome) -> String {
    words.say(&format!("outcome-{}", outcome.code()))
}

/// An outcome's short form.
pub fn outcome_short(words: &Words, outcome: Outcome) -> String {
    words.say(&format!("outcome-{}.short", outcome.code()))
}

/// The reason of an outcome in words; empty where it needs none.
///
/// `band` is the low edge, the rule's factor and the value, where the class has a fixed low edge: with them a reading
/// that is not capable says which sigma would do.
pub fn reason(
    words: &Words,
    judged: &Judgement,
    about: &str,
    band: Option<(MassFraction, Coverage, MassFraction)>,
) -> String {
    let Some(code) = judged.reason else { return String::new() };
    let mut id = format!("reason-{}", code.code());
    let mut enough = String::new();
    if code == Reason::ThreeSigmaReachesBand {
        match band.map(|(low, k, x)| (low.units() - x.units(), k)) {
            Some((room, k)) if room > 0 => {
                let sigma = libm::floor(room as f64 / k.to_f64()) as i64;
                enough = rounded(MassFraction::from_units(sigma));
            }
            Some(_) => id.push_str("-inside"),
            None => id.push_str("-open"),
        }
    }
    words.with(&id, &[("about", about), ("enough", &enough)])
}

/// A number for people: at most six significant digits' worth of decimals, never an exponent.
pub fn rounded(value: MassFraction) -> String {
    let magnitude = value.units().unsigned_abs();
    // One more decimal for each power of ten below a thousand mg/kg.
    let step: i64 = match magnitude {
        0..10_000_000 => 1_000,
        10_000_000..1_000_000_000 => 10_000,
        1_000_000_000..100_000_000_000 => 100_000,
        _ => 1_000_000,
    };
    let units = value.units();
    let half = step / 2;
    let rounded = (units.abs() + half) / step * step * units.signum();
    MassFraction::from_units(rounded).to_string()
}

/// A cell's value in words, with one sigma.
pub fn value(words: &Words, cell: &Cell, sigma: Option<Sigma>, written: &str) -> String {
    match cell.state {
        CellState::Number => match sigma {
            Some(sigma) => words.with(
                "value-number",
                &[("value", &cell.value.to_string()), ("sigma", &rounded(sigma.to_mass_fraction()))],
            ),
            None => words.with("value-number_bare", &[("value", &cell.value.to_string())]),
        },
        CellState::BelowDetection => words.with("value-below", &[("value", &cell.value.to_string())]),
        CellState::AboveRange => words.with("value-above", &[("value", &cell.value.to_string())]),
        CellState::NotDetected => words.say("value-not_detected"),
        CellState::Text | CellState::UnitUnknown => words.with("value-text", &[("written", written)]),
        CellState::NoColumn | CellState::Blank => words.say("value-not_measured"),
    }
}

/// A cell's value for a table whose head states the unit: signs only, no words, no break inside a number. The letter
/// says where the sigma came from, with a printed error's multiple after it; the table's legend explains both.
pub fn value_short(
    words: &Words,
    cell: &Cell,
    judged: &Judgement,
    printed: Option<Sigma>,
    multiple: SigmaMultiple,
    written: &str,
) -> String {
    match cell.state {
        CellState::Number => match judged.used.sigma.or(printed) {
            Some(sigma) => {
                let mut from = if judged.used.sigma.is_some() {
                    sigma_letter(judged.used.from).to_owned()
                } else {
                    String::new()
                };
                if matches!(judged.used.from, SigmaFrom::Printed | SigmaFrom::PrintedMultipleSet) {
                    from.push_str(&multiple.to_string());
                }
                let value = format!("{}\u{a0}±\u{a0}{}{from}", cell.value, rounded(sigma.to_mass_fraction()));
                words.number(&value)
            }
            None => words.number(&cell.value),
        },
        _ => cell_short(words, cell, written),
    }
}

/// A cell's value alone, by the same signs.
pub fn cell_short(words: &Words, cell: &Cell, written: &str) -> String {
    match cell.state {
        CellState::Number => words.number(&cell.value),
        CellState::BelowDetection => format!("<\u{a0}{}", words.number(&cell.value)),
        CellState::AboveRange => format!(">\u{a0}{}", words.number(&cell.value)),
        CellState::NotDetected | CellState::Text | CellState::UnitUnknown => format!("\"{written}\""),
        CellState::NoColumn | CellState::Blank => "–".to_owned(),
    }
}

/// The total for the same table.
pub fn total_short(words: &Words, total: &crate::halogen::Total) -> String {
    let text = match (total.low, total.high, total.sigma) {
        (Some(low), Some(high), Some(sigma)) if low == high => {
            format!("{low}\u{a0}±\u{a0}{}", rounded(sigma.to_mass_fraction()))
        }
        (Some(low), Some(high), _) => format!("{low}\u{a0}…\u{a0}{high}"),
        (Some(low), None, _) => format!("≥\u{a0}{low}"),
        _ => "–".to_owned(),
    };
    words.number(&text)
}

const fn sigma_letter(from: SigmaFrom) -> &'static str {
    match from {
        SigmaFrom::Printed => "\u{a0}p",
        SigmaFrom::PrintedMultipleUnknown => "\u{a0}u",
        SigmaFrom::PrintedMultipleSet => "\u{a0}m",
        SigmaFrom::SiteTable => "\u{a0}t",
        SigmaFrom::Repeats => "\u{a0}r",
        SigmaFrom::DetectionLimit | SigmaFrom::None => "",
    }
}

/// How a cell was written in its source.
pub fn as_written(source: &Source, column: &ElementColumn, row: usize) -> String {
    match column.written(row) {
        Written::Nothing => String::new(),
        Written::Text(id) => source.readings.pool.get(id).unwrap_or("").to_owned(),
        Written::Plain(decimals) => {
            let block = source.block_of(row);
            let exponent =
                block.and_then(|block| block.unit_of(column.element)).map_or(0, |unit| unit.exponent() + 6);
            let mark = match block.and_then(|block| block.mark) {
                Some(mark) => char::from(mark.byte()),
                None => '.',
            };
            remake(column.cell(row).value.units(), exponent, u32::from(decimals), mark)
        }
    }
}

/// How the cell of an element was written; empty where the source has no column for it.
pub fn written_of(source: &Source, element: Element, row: usize) -> String {
    source.readings.column_of(element).map(|column| as_written(source, column, row)).unwrap_or_default()
}

/// The text of a plain number with this many decimals, made again from its value.
fn remake(units: i64, exponent: i32, decimals: u32, mark: char) -> String {
    // The value is exact in these decimals unless it was finer than a millionth of mg/kg; then what was kept is shown.
    let digits = i128::from(units) * 10_i128.pow(decimals);
    let scale = 10_i128.pow(u32::try_from(exponent).unwrap_or(0));
    let whole_digits = (digits.abs() + scale / 2) / scale;
    let power = 10_i128.pow(decimals);
    let sign = if units < 0 { "-" } else { "" };
    if decimals == 0 {
        return format!("{sign}{whole_digits}");
    }
    let (whole, part) = (whole_digits / power, whole_digits % power);
    format!("{sign}{whole}{mark}{part:0width$}", width = decimals as usize)
}

/// A next step in words.
pub fn next(words: &Words, step: &NextStep, about: &str) -> String {
    let id = format!("next-{}", step.code());
    match step {
        NextStep::MeasureLonger { seconds, surely: Some(surely) } => {
            words.with(&id, &[("seconds", &seconds.to_string()), ("surely", &surely.to_string())])
        }
        NextStep::MeasureLonger { seconds, surely: None } => words.with(
            &format!("{id}_even_only"),
            &[("seconds", &seconds.to_string()), ("cap", &next_step::LONGEST_SECONDS.to_string())],
        ),
        NextStep::NoTimeCan(why) => words.with(
            &format!("longer-never-{}", why.code()),
            &[("cap", &next_step::LONGEST_SECONDS.to_string())],
        ),
        NextStep::ReferenceMethod { method, technique } => {
            words.with(&id, &[("method", method), ("technique", technique)])
        }
        NextStep::StateClassSuggested { class, group } => {
            words.with(&id, &[("what", &suggested(words, *class, *group))])
        }
        _ => words.with(&id, &[("about", about)]),
    }
}

/// A suggested class or alloy group, with its article.
fn suggested(words: &Words, class: MaterialClass, group: Option<AlloyGroup>) -> String {
    match group {
        Some(group) => words.say(&format!("family-group-{}", group.code())),
        None => words.say(&format!("composition-class-{}", class.code())),
    }
}

/// Puts what the composition suggests into the step that asks for the class.
pub fn with_suggestion(mut steps: Vec<NextStep>, reviewer: &SourceReview<'_>, row: usize) -> Vec<NextStep> {
    if let Some(step) = steps.iter_mut().find(|step| **step == NextStep::StateClass)
        && let Some(found) = reviewer.composition(row)
        && let Some((class, _)) = found.suggestion
    {
        *step = NextStep::StateClassSuggested { class, group: found.group.map(|found| found.group) };
    }
    steps
}

/// What the composition of a reading says, in sentences; empty where it says nothing.
pub fn composition(words: &Words, reviewer: &SourceReview<'_>, row: usize) -> String {
    let Some(found) = reviewer.composition(row) else { return String::new() };
    let numbers: Vec<String> = found
        .leading
        .iter()
        .flatten()
        .filter(|(_, value)| *value >= WORTH_NAMING)
        .map(|(element, value)| format!("{element} {}\u{a0}%", words.number(&percent(*value))))
        .collect();
    let numbers = words.list(&numbers);
    let mut sentences = Vec::new();
    if let Some(contradiction) = reviewer.contradiction(row) {
        sentences.push(words.with(
            &format!("composition-contests-{}", contradiction.code()),
            &[("sum", &percent(found.metals)), ("numbers", &numbers)],
        ));
    }
    if let Some((class, reason)) = found.suggestion {
        let what = suggested(words, class, found.group.map(|found| found.group));
        let id = match found.group {
            Some(group) if !group.surely => "composition-suggests_perhaps",
            _ => "composition-suggests",
        };
        let because = words.with(
            &format!("composition-reason-{}", reason.code()),
            &[("metals", &percent(found.metals)), ("sum", &percent(found.measured))],
        );
        sentences.push(words.with(id, &[("what", &what), ("numbers", &numbers), ("because", &because)]));
    }
    if let Some(one) = &found.family {
        let family = one.family;
        let source = match family.confidence.as_str() {
            same if same == family.source => family.source.clone(),
            confidence => {
                words.series(&[family.source.as_str(), &super::books::confidence_short(words, confidence)])
            }
        };
        let outside = one.ranges.iter().find(|range| range.fit == RangeFit::Outside);
        sentences.push(words.with(
            &format!("family-{}", one.fit.code()),
            &[
                ("name", &family.name),
                ("source", &source),
                ("element", outside.map_or("", |range| range.range.element.symbol())),
                ("by", &outside.map_or_else(String::new, |range| words.number(&percent(range.outside_by)))),
            ],
        ));
        if !one.also.is_empty() {
            let names: Vec<&str> = one.also.iter().map(|family| family.name.as_str()).collect();
            sentences.push(words.with("family-also", &[("names", &words.series(&names))]));
        }
    }
    if let Some(doubt) = reviewer.assess(row).calibration {
        sentences.push(words.say(&format!("composition-calibration-{}", doubt.code())));
    }
    words.sentences(&sentences)
}

/// Smaller shares say nothing of what a material is: a hundredth of a percent.
const WORTH_NAMING: MassFraction = MassFraction::from_mg_per_kg(100);

/// A mass fraction in percent with three digits after the point at most: for reading, never for a comparison.
fn percent(value: MassFraction) -> String {
    // A thousandth of a percent is 10 mg/kg.
    let thousandths = (value.units() + 5_000_000).div_euclid(10_000_000);
    MassFraction::from_units(thousandths * 1000).to_string()
}

/// The next steps of one substance of one reading.
pub fn next_of_substance(
    inspection: &Inspection,
    reviewer: &SourceReview<'_>,
    substance: Substance,
    judged: &Judgement,
    row: usize,
) -> Vec<NextStep> {
    let (class, _) = reviewer.class(row);
    let longer = reviewer.longer(substance, judged, row);
    let steps = next_step::next_steps(&inspection.books, Some(substance), class, judged, Some(longer));
    with_suggestion(steps, reviewer, row)
}

/// The next steps of a halogen or the total of one reading.
pub fn next_of_halogen(
    inspection: &Inspection,
    reviewer: &SourceReview<'_>,
    of: Halogen,
    judged: &Judgement,
    row: usize,
) -> Vec<NextStep> {
    let (class, _) = reviewer.class(row);
    let longer = reviewer.longer_halogen(of, judged, row);
    let steps = next_step::next_steps(&inspection.books, None, class, judged, Some(longer));
    with_suggestion(steps, reviewer, row)
}

/// The arithmetic behind an outcome as one sentence; empty where there is none.
pub fn working(
    words: &Words,
    rule: &Screening,
    substance: Substance,
    class: crate::material::MaterialClass,
    cell: &Cell,
    judged: &Judgement,
    share: Option<u32>,
) -> String {
    let Some(edges) = rule.band(substance, class).and_then(|band| band.edges) else { return String::new() };
    let k = rule.sigma_factor;
    let low = match edges.low {
        LowEdge::Fixed(low) => low,
        LowEdge::DetectionLimit { at_most } => at_most,
    };
    let low_text = low.to_string();
    let high_text = edges.high.map_or_else(|| words.say("report-none"), |high| high.to_string());
    let Some(sigma) = judged.used.sigma else { return String::new() };
    let s = sigma.to_mass_fraction();
    let half = times(s, k.to_f64());
    let plus = |x: MassFraction, d: MassFraction| {
        rounded(MassFraction::from_units(x.units().saturating_add(d.units())))
    };
    let minus = |x: MassFraction, d: MassFraction| {
        rounded(MassFraction::from_units(x.units().saturating_sub(d.units())))
    };
    let (x_text, s_text, k_text) = (cell.value.to_string(), rounded(s), k.to_string());
    let x = cell.value;
    let mut arguments =
        vec![("x", x_text), ("sigma", s_text), ("k", k_text), ("low", low_text), ("high", high_text)];
    let thin = share.filter(|_| judged.reason == Some(Reason::ThinSample));
    let id = match (cell.state, judged.outcome) {
        (CellState::Number | CellState::BelowDetection, _) if thin.is_some() => {
            let share = i64::from(thin.unwrap_or(0));
            arguments.push(("end", plus(x, half)));
            arguments.push(("share", rounded(MassFraction::from_units(share * 100))));
            let scaled = i128::from(low.units()) * i128::from(share) / 1_000_000;
            arguments.push(("scaled", rounded(MassFraction::from_units(i64::try_from(scaled).unwrap_or(0)))));
            "working-thin"
        }
        (CellState::BelowDetection, _) if matches!(edges.low, LowEdge::DetectionLimit { .. }) => {
            "working-detection_composite"
        }
        (CellState::BelowDetection, _) => {
            arguments.push(("end", plus(x, half)));
            "working-detection"
        }
        (CellState::Number, Outcome::Below) if matches!(edges.low, LowEdge::Fixed(_)) => {
            arguments.push(("end", plus(x, half)));
            "working-below"
        }
        (CellState::Number, Outcome::Over) => {
            arguments.push(("end", minus(x, half)));
            "working-over"
        }
        (CellState::Number, Outcome::NotCapable) => {
            arguments.push(("end", rounded(half)));
            "working-not_capable"
        }
        (CellState::Number, _) if matches!(edges.low, LowEdge::DetectionLimit { .. }) => {
            arguments.push(("from", minus(x, half)));
            arguments.push(("to", plus(x, half)));
            "working-composite"
        }
        (CellState::Number, _) => {
            arguments.push(("from", minus(x, half)));
            arguments.push(("to", plus(x, half)));
            if edges.high.is_some() { "working-between" } else { "working-between_open" }
        }
        _ => return String::new(),
    };
    let borrowed: Vec<(&str, &str)> = arguments.iter().map(|(name, value)| (*name, value.as_str())).collect();
    words.with(id, &borrowed)
}

/// `k` times a sigma, for people and pictures.
pub(super) fn times(sigma: MassFraction, k: f64) -> MassFraction {
    MassFraction::from_units(libm::round(sigma.units() as f64 * k) as i64)
}

/// The total's value in words.
pub fn total(words: &Words, total: &crate::halogen::Total) -> String {
    match (total.low, total.high, total.sigma) {
        (Some(low), Some(high), Some(sigma)) if low == high => words.with(
            "value-number",
            &[("value", &low.to_string()), ("sigma", &rounded(sigma.to_mass_fraction()))],
        ),
        (Some(low), Some(high), _) => {
            words.with("value-interval", &[("low", &low.to_string()), ("high", &high.to_string())])
        }
        (Some(low), None, _) => words.with("value-at_least", &[("low", &low.to_string())]),
        _ => words.say("value-not_measured"),
    }
}

/// The element of a halogen; `None` for the total.
pub const fn element_of(halogen: Halogen) -> Option<Element> {
    match halogen {
        Halogen::Cl => Some(Element::CL),
        Halogen::Br => Some(Element::BR),
        Halogen::Total => None,
    }
}

/// A lot's name in words.
pub fn lot_name(words: &Words, inspection: &Inspection, lot: &LotFinding) -> String {
    lot.lot.clone().unwrap_or_else(|| {
        let source =
            lot.source.and_then(|at| inspection.sources.get(at)).map_or("", |source| source.name.as_str());
        format!("{}{}", words.say("no-lot"), words.bracketed(source))
    })
}

/// A reading by everything that names it, with the place it stands at.
pub fn reading_name(words: &Words, source: &Source, row: usize) -> String {
    let mut parts: Vec<String> =
        [Identity::Id, Identity::Unit, Identity::Spot, Identity::Part, Identity::Material]
            .iter()
            .filter_map(|identity| source.readings.identity(*identity, row).map(str::to_owned))
            .collect();
    parts.push(format!("{} · {}", source.name, line_name(words, source.readings.line(row))));
    parts.join(" · ")
}

/// A line of a source, where its name is part of a row of names.
pub fn line_name(words: &Words, line: u32) -> String {
    words.with("line-name", &[("line", &line.to_string())])
}

/// How many readings and lots there are, and how the lots stand.
pub fn summary_counts(words: &Words, findings: &Findings) -> String {
    if findings.verdicts.is_empty() {
        return words.say("summary-no_readings");
    }
    let count =
        |disposition| findings.lots.iter().filter(|lot| lot.disposition == disposition).count().to_string();
    // Checks are no product: they stand apart from what the lots count.
    let checks = findings.trust.checks.len();
    let aside: usize = findings.materials.iter().map(|material| material.set_aside.len()).sum();
    words.with(
        "summary-counts",
        &[
            ("readings", &findings.verdicts.len().saturating_sub(checks).to_string()),
            ("checks", &checks.to_string()),
            ("aside", &aside.to_string()),
            ("lots", &findings.lots.len().to_string()),
            ("accept", &count(Disposition::Accept)),
            ("hold", &count(Disposition::Hold)),
            ("not_accept", &count(Disposition::NotAccept)),
        ],
    )
}

/// What the readings say, in one line: substances always, halogens where the inspection names their book.
pub fn summary_says(words: &Words, findings: &Findings) -> String {
    if findings.verdicts.is_empty() {
        return words.say("summary-no_readings");
    }
    if findings.lots.is_empty() {
        return words.say("summary-only_checks");
    }
    // Of nothing, everything would be below limit.
    if findings.materials.iter().all(|material| material.readings.is_empty()) {
        return words.say("summary-all_set_aside");
    }
    let mut reasons = Reasons::default();
    for material in &findings.materials {
        let outcomes = material.reasons.iter().filter(|reason| reason.code.kind() == ReasonKind::Outcome);
        for reason in outcomes {
            // One line for all that is over, whatever it does to its lot; of a claim it names the substance alone.
            let about = if super::exemptions::is_of_claim(reason.code) {
                reason.about.split(' ').next().unwrap_or("").to_owned()
            } else {
                reason.about.clone()
            };
            reasons.add(LotReason { effect: Disposition::Hold, about, ..reason.clone() });
        }
    }
    let (_, list) = reasons.close();
    if list.is_empty() {
        return words.say("summary-readings_below");
    }
    let parts: Vec<String> = list
        .iter()
        .map(|reason| {
            let halogen = matches!(reason.code, LotReasonCode::HalogenOverLimit | LotReasonCode::HalogenOpen);
            let about = if halogen {
                words.say(&format!("halogen-{}", reason.about))
            } else {
                super::settled::about_first(reason)
            };
            words.with(
                &format!("summary-{}", reason.code.code()),
                &[("about", &about), ("count", &reason.count.to_string())],
            )
        })
        .collect();
    words.with("summary-readings_say", &[("list", &words.series(&parts))])
}

/// What evidence is missing for an accept, in one line; what is missing and only advisory is said apart.
pub fn summary_evidence(words: &Words, findings: &Findings) -> String {
    let list_of = |holds: bool| {
        let mut codes: Vec<LotReasonCode> = findings
            .lots
            .iter()
            .flat_map(|lot| &lot.reasons)
            .filter(|reason| {
                let holding = reason.effect != Disposition::Accept;
                let told = reason.code.is_told() && !holding;
                reason.code.kind() == ReasonKind::Evidence && holding == holds && !told
            })
            .map(|reason| reason.code)
            .collect();
        codes.sort_unstable();
        codes.dedup();
        let texts: Vec<String> =
            codes.iter().map(|code| words.say(&format!("evidence-short-{}", code.code()))).collect();
        words.list(&texts)
    };
    let (holding, advisory) = (list_of(true), list_of(false));
    let mut line = if holding.is_empty() {
        words.say("summary-evidence_none")
    } else {
        words.with("summary-evidence_missing", &[("list", &holding)])
    };
    if !advisory.is_empty() {
        line.push_str(words.gap());
        line.push_str(&words.with("summary-evidence_advisory", &[("list", &advisory)]));
    }
    line
}

/// Where a judgement's sigma came from, in words.
pub fn sigma_from(words: &Words, from: SigmaFrom) -> String {
    words.say(&format!("sigma-{}", from.code()))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plain_number_is_made_again_as_it_stood() {
        assert_eq!(remake(52_000_000, 10, 4, '.'), "0.0052");
        assert_eq!(remake(52_000_000, 6, 0, '.'), "52");
        assert_eq!(remake(-3_250_000, 6, 2, ','), "-3,25");
        assert_eq!(remake(3_250_000, 6, 4, '.'), "3.2500");
        assert_eq!(remake(0, 6, 1, '.'), "0.0");
    }

    #[test]
    fn people_get_no_more_digits_than_they_can_use() {
        assert_eq!(rounded(MassFraction::from_units(13_333_333)), "13.33");
        assert_eq!(rounded(MassFraction::from_units(1_414_213_562)), "1414.2");
        assert_eq!(rounded(MassFraction::from_units(-1_234_567)), "-1.235");
    }
}
