//! The trainer: invented readings and deliveries, each read and reviewed the way any delivery is. No answer is kept anywhere.

use plumbline_core::duplicates;
use plumbline_core::inspection::{self, Findings, Inspection};
use plumbline_core::judging::SourceReview;
use plumbline_core::material::MaterialClass;
use plumbline_core::quantity::MassFraction;
use plumbline_core::report::explain::{Explainer, StepKind};
use plumbline_core::report::{phrases, rulers};
use plumbline_core::ruler::{Mark, Picture, Scale};
use plumbline_core::rules::LowEdge;
use plumbline_core::settings_file;
use plumbline_core::substance::Substance;
use plumbline_core::words::Words;
use plumbline_intake::SourceReader;
use plumbline_lessons::{Ask, Delivery, Exercise, Lesson, WhatIf, exercise, whole};
use serde::{Deserialize, Serialize};

use crate::detail::{self, FindingView};
use crate::views;

#[derive(Deserialize)]
pub(crate) struct WhatIfInput {
    class: String,
    substance: String,
    written: String,
    sigma: String,
    detection: String,
    thickness: String,
}

/// A log scale in decades, and where its ends stand as shares of a drawing's width.
#[derive(Serialize)]
pub(crate) struct ScaleView {
    from: f64,
    to: f64,
    left: f64,
    right: f64,
}

#[derive(Serialize)]
pub(crate) struct WhatIfView {
    finding: FindingView,
    /// The scale of the finding's ruler; none where it has none.
    scale: Option<ScaleView>,
    /// The scale round the band alone, for controls that must not move while they are moved.
    range: ScaleView,
    /// How many sigma the whiskers stand for.
    factor: f64,
    /// In which class and who said so: what is measured may contradict what the file states.
    judged_as: String,
    why: String,
    source: String,
}

#[derive(Serialize)]
struct ChoiceView {
    code: &'static str,
    text: String,
}

#[derive(Serialize)]
struct AskedReading {
    class: &'static str,
    class_text: String,
    substance: &'static str,
    name: String,
    written: String,
    sigma: String,
    detection: String,
    thickness: String,
    /// The rule it is judged by, with its source.
    rule: String,
}

#[derive(Serialize)]
struct FactView {
    code: &'static str,
    arguments: Vec<(&'static str, String)>,
}

#[derive(Serialize)]
struct AskedLot {
    headings: Vec<String>,
    rows: Vec<Vec<String>>,
    facts: Vec<FactView>,
}

#[derive(Serialize)]
pub(crate) struct ExerciseView {
    number: u32,
    choices: Vec<ChoiceView>,
    reading: Option<AskedReading>,
    lot: Option<AskedLot>,
}

#[derive(Serialize)]
pub(crate) struct SolvedView {
    correct: bool,
    /// The right answer's code.
    right: &'static str,
    right_text: String,
    why: String,
    /// Document and clause; empty for a lot, where each reason has its own.
    source: String,
    finding: Option<FindingView>,
    reasons: Vec<String>,
}

#[derive(Serialize)]
struct FileView {
    name: String,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct DeliveryView {
    results: FileView,
    settings: FileView,
}

/// Puts a delivery in place of whatever the trainer's inspection held, and reviews it.
fn reviewed(inspection: &mut Inspection, delivery: &Delivery) -> Findings {
    inspection.clear_files();
    inspection.acts =
        settings_file::parse_settings(&delivery.settings.text, &delivery.settings.name).unwrap_or_default();
    let mut reader = SourceReader::new(&delivery.results.name, &inspection.settings());
    reader.push(delivery.results.text.as_bytes());
    inspection.add_sources(reader.finish());
    duplicates::set_duplicates_aside(&mut inspection.sources);
    inspection::review(inspection)
}

/// One reading told: as in a detail, with where its rule comes from.
fn told(inspection: &mut Inspection, words: &Words, asked: &WhatIf) -> Option<(WhatIfView, String)> {
    reviewed(inspection, &asked.delivery());
    let source = inspection.sources.first()?;
    let settings = inspection.settings();
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    let explainer = Explainer { inspection, source, reviewer: &reviewer, words };
    let finding = detail::finding(explainer, asked.substance, 0);
    let (_, rule) = inspection.books.screening()?;
    let assessed = reviewer.assess(0);
    let cell = source.readings.cell(asked.substance.element(), 0);
    let judged = assessed.substances[asked.substance as usize];
    let drawn = rulers::pictured(rule, asked.substance, assessed.class, &cell, &judged);
    let scale = drawn.map(|picture| scale_view(Scale::around(&picture)));
    let band = rule.band(asked.substance, assessed.class);
    let edges = band.and_then(|band| band.edges);
    let range = match edges.map(|edges| (edges.low, edges.high)) {
        Some((LowEdge::Fixed(low), high)) => around_band(low, high),
        // A low edge that moves with the reading gives controls no hold: from a tenth to ten times of what may clear.
        Some((LowEdge::DetectionLimit { at_most }, high)) => around_band(at_most, high),
        None => Scale { from: 0.0, to: 4.0 },
    };
    let citation = band.map_or(&rule.citation, |band| &band.citation);
    let told = explainer.substance(asked.substance, 0);
    let rule_text = told.of(words, StepKind::Rule);
    let arithmetic = told.of(words, StepKind::Arithmetic);
    let why = if finding.reason_text.is_empty() { arithmetic } else { finding.reason_text.clone() };
    let view = WhatIfView {
        scale,
        range: scale_view(range),
        factor: rule.sigma_factor.to_f64(),
        judged_as: told.of(words, StepKind::Class),
        why,
        source: format!("{}, {}", citation.source, citation.clause),
        finding,
    };
    Some((view, rule_text))
}

/// The scale of a band with nothing on it but its own low edge, which widens no scale.
fn around_band(low: MassFraction, high: Option<MassFraction>) -> Scale {
    Scale::around(&Picture { low, high, mark: Mark::Below(low) })
}

fn scale_view(scale: Scale) -> ScaleView {
    let (left, right) = Scale::ENDS;
    ScaleView { from: scale.from, to: scale.to, left, right }
}

/// What one invented reading would say.
pub(crate) fn what_if(inspection: &mut Inspection, words: &Words, asked: &WhatIfInput) -> Option<WhatIfView> {
    let asked = WhatIf {
        class: MaterialClass::from_code(&asked.class)?,
        substance: Substance::from_symbol(&asked.substance)?,
        written: asked.written.clone(),
        sigma: asked.sigma.clone(),
        detection: asked.detection.clone(),
        thickness: asked.thickness.clone(),
    };
    told(inspection, words, &asked).map(|(view, _)| view)
}

/// What came of asking for exercises.
#[derive(Serialize)]
#[serde(untagged)]
pub(crate) enum Drawn {
    Exercises(Vec<ExerciseView>),
    /// What was typed is no seed.
    NoSeed(Option<()>),
}

/// Several exercises of a lesson.
pub(crate) fn exercises(
    inspection: &mut Inspection,
    words: &Words,
    lesson: &str,
    seed: &str,
    count: u32,
) -> Option<Drawn> {
    let lesson = Lesson::from_code(lesson)?;
    let Ok(seed) = seed.parse::<u64>() else { return Some(Drawn::NoSeed(None)) };
    let made = (1..=count).map(|number| {
        let made = exercise(&inspection.books, seed, lesson, number)?;
        Some(exercise_view(inspection, words, number, &made))
    });
    let made: Option<Vec<ExerciseView>> = made.collect();
    Some(made.map_or(Drawn::NoSeed(None), Drawn::Exercises))
}

fn exercise_view(inspection: &mut Inspection, words: &Words, number: u32, made: &Exercise) -> ExerciseView {
    let choices = made.choices().into_iter();
    let (prefix, reading, lot) = match &made.ask {
        Ask::Outcome(asked) => {
            let (name, rule) = told(inspection, words, asked)
                .map(|(view, rule)| (view.finding.name, rule))
                .unwrap_or_default();
            let reading = AskedReading {
                class: asked.class.code(),
                class_text: words.say(&format!("class-{}", asked.class.code())),
                substance: asked.substance.symbol(),
                name,
                written: asked.written.clone(),
                sigma: asked.sigma.clone(),
                detection: asked.detection.clone(),
                thickness: asked.thickness.clone(),
                rule,
            };
            ("outcome", Some(reading), None)
        }
        Ask::Disposition { headings, rows, facts } => {
            let facts = facts.iter().cloned().map(|(code, arguments)| FactView { code, arguments }).collect();
            ("disposition", None, Some(AskedLot { headings: headings.clone(), rows: rows.clone(), facts }))
        }
    };
    let choices =
        choices.map(|code| ChoiceView { code, text: words.say(&format!("{prefix}-{code}")) }).collect();
    ExerciseView { number, choices, reading, lot }
}

/// Whether an answer is right, with the working.
pub(crate) fn solved(
    inspection: &mut Inspection,
    words: &Words,
    lesson: &str,
    seed: &str,
    number: u32,
    answer: &str,
) -> Option<SolvedView> {
    let made = exercise(&inspection.books, seed.parse().ok()?, Lesson::from_code(lesson)?, number)?;
    let findings = reviewed(inspection, &made.delivery);
    let right = made.right(&findings)?;
    let correct = right == answer;
    Some(match &made.ask {
        Ask::Outcome(asked) => {
            let (view, _) = told(inspection, words, asked)?;
            SolvedView {
                correct,
                right,
                right_text: view.finding.text.clone(),
                why: view.why,
                source: view.source,
                finding: Some(view.finding),
                reasons: Vec::new(),
            }
        }
        Ask::Disposition { .. } => {
            let lot = findings.lots.first()?;
            let reasons: Vec<String> =
                lot.reasons.iter().map(|reason| phrases::lot_reason(words, reason)).collect();
            SolvedView {
                correct,
                right,
                right_text: views::disposition_text(words, lot.disposition),
                why: reasons.first().cloned().unwrap_or_default(),
                source: String::new(),
                finding: None,
                reasons,
            }
        }
    })
}

/// A whole invented delivery.
pub(crate) fn delivery(inspection: &Inspection, seed: &str) -> Option<DeliveryView> {
    let made = whole(&inspection.books, seed.parse().ok()?)?;
    let file = |file: plumbline_lessons::TextFile| FileView { name: file.name, text: file.text };
    Some(DeliveryView { results: file(made.results), settings: file(made.settings) })
}
