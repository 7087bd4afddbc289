//! What is open or over in a material and still keeps its lot: the cases of a laboratory's request and of a notice.

use std::cmp::Reverse;

use crate::acts::Settings;
use crate::inspection::{Findings, Inspection, MaterialFinding};
use crate::judging::{LimitAssessed, SourceReview};
use crate::lot::{Disposition, LotReason, LotReasonCode};
use crate::outcome::{Judgement, Outcome};
use crate::quantity::MassFraction;
use crate::reading::Source;
use crate::report::{phrases, settled};
use crate::rules::{LowEdge, Route};
use crate::substance::{Halogen, Substance};
use crate::words::Words;

/// What a case is about.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum What {
    /// A restricted substance, or the element that bounds it.
    Substance(Substance),
    /// A halogen, or both together.
    Halogen(Halogen),
    /// A limit of a book that the inspection goes by: `book: row`.
    Limit(String),
}

/// One open or over outcome of a material, with the reading that shows the worst of it.
#[derive(Clone, Debug)]
pub struct Case {
    /// What it is about.
    pub what: What,
    /// The worst outcome of a reading.
    pub outcome: Outcome,
    /// Index of the first of the worst and highest readings.
    pub reading: u32,
    /// The reasons of the material that speak of it, as indices.
    pub reasons: Vec<usize>,
}

/// A material with its cases, as it is sent to a laboratory.
#[derive(Clone, Debug)]
pub(super) struct Sample<'a> {
    pub(super) material: &'a MaterialFinding,
    pub(super) cases: Vec<Case>,
}

/// Reads cases out of findings.
pub(super) struct Reader<'a> {
    inspection: &'a Inspection,
    findings: &'a Findings,
    reviewers: Vec<SourceReview<'a>>,
}

/// The reasons that a laboratory's result could end, or that it left open.
const fn asks_for_result(code: LotReasonCode) -> bool {
    matches!(
        code,
        LotReasonCode::OverLimit
            | LotReasonCode::OverInSomeClasses
            | LotReasonCode::DetectionTooHigh
            | LotReasonCode::NotCapable
            | LotReasonCode::Undecided
            | LotReasonCode::OverlapUnresolved
            | LotReasonCode::OverMayBeOverlap
            | LotReasonCode::SetAsideOver
            | LotReasonCode::SetAsideOpen
            | LotReasonCode::LabOpen
            | LotReasonCode::HalogenOverLimit
            | LotReasonCode::HalogenOpen
            | LotReasonCode::LimitOver
            | LotReasonCode::LimitOpen
    )
}

impl<'a> Reader<'a> {
    pub(super) fn new(
        inspection: &'a Inspection,
        findings: &'a Findings,
        settings: &'a Settings,
    ) -> Reader<'a> {
        let review = |source| SourceReview::new(source, &inspection.books, settings);
        Reader { inspection, findings, reviewers: inspection.sources.iter().map(review).collect() }
    }

    pub(super) fn place(&self, reading: u32) -> Option<(&'a Source, &SourceReview<'a>, usize)> {
        let (at, row) = self.findings.place(reading as usize)?;
        Some((self.inspection.sources.get(at)?, self.reviewers.get(at)?, row))
    }

    /// What a reason is about, where it is something that can be measured.
    fn what(reason: &LotReason) -> Option<What> {
        let about = settled::about_first(reason);
        let halogen = || Halogen::ALL.into_iter().find(|of| of.name() == about).map(What::Halogen);
        let limit = || about.contains(": ").then(|| What::Limit(about.clone()));
        match reason.code {
            LotReasonCode::HalogenOverLimit | LotReasonCode::HalogenOpen => halogen(),
            LotReasonCode::LimitOver | LotReasonCode::LimitOpen => limit(),
            _ => Substance::from_symbol(&about).map(What::Substance).or_else(halogen).or_else(limit),
        }
    }

    /// The cases of a material, in the order of its reasons, which is worst first.
    pub(super) fn cases(&self, material: &MaterialFinding) -> Vec<Case> {
        let mut cases: Vec<Case> = Vec::new();
        for (at, reason) in material.reasons.iter().enumerate() {
            if reason.effect == Disposition::Accept || !asks_for_result(reason.code) {
                continue;
            }
            let Some(what) = Self::what(reason) else { continue };
            if let Some(known) = cases.iter_mut().find(|case| case.what == what) {
                known.reasons.push(at);
                continue;
            }
            let all = material.readings.iter().chain(&material.set_aside);
            let found = all.filter_map(|reading| {
                let (outcome, value) = self.outcome(&what, *reading)?;
                Some((outcome, value, Reverse(*reading)))
            });
            if let Some((outcome, _, Reverse(reading))) = found.max() {
                cases.push(Case { what, outcome, reading, reasons: vec![at] });
            }
        }
        cases
    }

    /// Materials that wait for a laboratory. First those whose hold is to end soonest, then those of lots that are not
    /// accepted, then in the order of the findings (our own choice).
    pub(super) fn samples(&self) -> Vec<Sample<'a>> {
        let held = self.findings.materials.iter().filter(|one| one.disposition != Disposition::Accept);
        let mut samples: Vec<Sample<'a>> = held
            .map(|material| Sample { material, cases: self.cases(material) })
            .filter(|sample| !sample.cases.is_empty())
            .collect();
        samples.sort_by_key(|sample| {
            let lot = self.findings.lots.get(sample.material.lot);
            let until = lot.and_then(super::Papers::until).map(crate::day::Day::number);
            (until.is_none(), until, Reverse(lot.map(|lot| lot.disposition)))
        });
        samples
    }

    fn limit_of(&self, name: &str, reading: u32) -> Option<LimitAssessed<'a>> {
        let (_, reviewer, row) = self.place(reading)?;
        let (class, _) = reviewer.class(row);
        let all = reviewer.limits_as(class, row);
        all.into_iter().find(|one| format!("{}: {}", one.book.id, one.row.id) == name)
    }

    /// The judgement of one reading.
    pub(super) fn judged(&self, what: &What, reading: u32) -> Option<Judgement> {
        let (_, reviewer, row) = self.place(reading)?;
        match what {
            What::Substance(substance) => reviewer.assess(row).substances.get(*substance as usize).copied(),
            What::Halogen(halogen) => Some(reviewer.assess(row).halogen(*halogen)),
            What::Limit(name) => Some(self.limit_of(name, reading)?.judged.judgement),
        }
    }

    /// The outcome and how high it lies, to find the worst by.
    fn outcome(&self, what: &What, reading: u32) -> Option<(Outcome, MassFraction)> {
        let (source, reviewer, row) = self.place(reading)?;
        let value = match what {
            What::Substance(substance) => source.readings.cell(substance.element(), row).value,
            What::Halogen(halogen) => match phrases::element_of(*halogen) {
                Some(element) => source.readings.cell(element, row).value,
                None => reviewer.assess(row).total.high.unwrap_or_default(),
            },
            What::Limit(name) => {
                let sum = self.limit_of(name, reading)?.judged.sum;
                sum.and_then(|sum| sum.high).unwrap_or_default()
            }
        };
        Some((self.judged(what, reading)?.outcome, value))
    }

    /// The reference method that the rule books name for it.
    pub(super) fn route(&self, what: &What, reading: u32) -> Option<&'a Route> {
        let (_, reviewer, row) = self.place(reading)?;
        let (class, _) = reviewer.class(row);
        let substance = match what {
            What::Substance(substance) => Some(*substance),
            What::Halogen(_) => None,
            What::Limit(name) => {
                let of = self.limit_of(name, reading)?.row.of.clone();
                Substance::ALL.into_iter().find(|substance| of.contains(&substance.element()))
            }
        };
        self.inspection.books.route(substance, class)
    }

    /// What was found, in words, with its uncertainty in mg/kg.
    pub(super) fn value(&self, words: &Words, what: &What, reading: u32) -> String {
        let Some((source, reviewer, row)) = self.place(reading) else { return String::new() };
        let of_element = |element| {
            let cell = source.readings.cell(element, row);
            let printed = reviewer.printed_sigma(element, &cell, row);
            let used = self.judged(what, reading).and_then(|judged| judged.used.sigma);
            phrases::value(words, &cell, used.or(printed), &phrases::written_of(source, element, row))
        };
        match what {
            What::Substance(substance) => of_element(substance.element()),
            What::Halogen(halogen) => match phrases::element_of(*halogen) {
                Some(element) => of_element(element),
                None => phrases::total(words, &reviewer.assess(row).total),
            },
            What::Limit(name) => {
                let of = self.limit_of(name, reading).map(|one| one.row.of.clone()).unwrap_or_default();
                let each: Vec<String> = of
                    .iter()
                    .map(|element| format!("{element}{}{}", words.colon(), of_element(*element)))
                    .collect();
                words.series(&each)
            }
        }
    }

    /// The band or limit it stands against, in words; empty where the class has none of its own.
    pub(super) fn against(&self, words: &Words, what: &What, reading: u32) -> String {
        let Some((_, reviewer, row)) = self.place(reading) else { return String::new() };
        let (class, _) = reviewer.class(row);
        let limit = |limit: MassFraction| words.with("paper-limit", &[("limit", &limit.to_string())]);
        match what {
            What::Substance(substance) => {
                let rule = self.inspection.books.screening();
                let band = rule.and_then(|(_, rule)| rule.band(*substance, class));
                let Some(edges) = band.and_then(|band| band.edges) else { return String::new() };
                let low = match edges.low {
                    LowEdge::Fixed(low) => low.to_string(),
                    LowEdge::DetectionLimit { .. } => String::new(),
                };
                match (low.as_str(), edges.high) {
                    ("", Some(high)) => words.with("paper-band_detection", &[("high", &high.to_string())]),
                    ("", None) => String::new(),
                    (low, Some(high)) => {
                        words.with("paper-band", &[("low", low), ("high", &high.to_string())])
                    }
                    (low, None) => words.with("paper-band_open", &[("low", low)]),
                }
            }
            What::Halogen(halogen) => self
                .inspection
                .books
                .halogens()
                .map(|(_, rule)| limit(rule.limit(*halogen)))
                .unwrap_or_default(),
            What::Limit(name) => {
                self.limit_of(name, reading).map(|one| limit(one.row.limit)).unwrap_or_default()
            }
        }
    }
}

/// A case's name for people: symbol and word, or the limit's own name.
pub(super) fn named(words: &Words, what: &What) -> String {
    match what {
        What::Substance(substance) => {
            let symbol = substance.symbol();
            format!("{symbol}{}", words.bracketed(&words.say(&format!("substance-{symbol}"))))
        }
        What::Halogen(halogen) => words.say(&format!("halogen-{}", halogen.name())),
        What::Limit(name) => name.clone(),
    }
}

/// What a laboratory is to determine: where the element can't show the restricted substance, the substance and not the
/// element.
pub(super) fn determinands(words: &Words, what: &What) -> Vec<String> {
    match what {
        What::Substance(Substance::Cr) => vec!["Cr(VI)".to_owned()],
        What::Substance(Substance::Br) => vec!["PBB".to_owned(), "PBDE".to_owned()],
        other => vec![about(words, other)],
    }
}

/// The same with the element's own name, which is what screening saw.
pub(super) fn determined(words: &Words, what: &What) -> String {
    match what {
        What::Substance(Substance::Cr) => words.say("paper-determine_cr6"),
        What::Substance(Substance::Br) => words.say("paper-determine_pbb_pbde"),
        other => named(words, other),
    }
}

/// The short name that reasons go by.
pub(super) fn about(words: &Words, what: &What) -> String {
    match what {
        What::Substance(substance) => substance.symbol().to_owned(),
        What::Halogen(halogen) => words.say(&format!("halogen-{}", halogen.name())),
        What::Limit(name) => name.clone(),
    }
}
