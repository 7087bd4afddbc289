//! One reading in full: every outcome with its explanation step by step, the limits of the books that are named, what the
//! composition says, and the other readings of the same spot.

use plumbline_core::composition::{CalibrationDoubt, Contradiction};
use plumbline_core::conformity;
use plumbline_core::inspection::{Findings, Inspection};
use plumbline_core::judging::{JUDGED, LimitAssessed, PooledElement, PooledHow, SourceReview};
use plumbline_core::material::MaterialClass;
use plumbline_core::next_step::NextStep;
use plumbline_core::quantity::Sigma;
use plumbline_core::reading::{Cell, CellState, Identity, Source};
use plumbline_core::report::explain::{Chances, Explainer, Explanation, StepKind};
use plumbline_core::report::{books, phrases, rulers};
use plumbline_core::rules::LowEdge;
use plumbline_core::substance::{Element, Halogen, Substance};
use plumbline_core::words::Words;
use serde::Serialize;

use crate::views::{Place, RowView, row_view};

#[derive(Serialize)]
pub(crate) struct StepView {
    pub(crate) kind: &'static str,
    pub(crate) text: String,
}

#[derive(Serialize)]
pub(crate) struct RuleSaysView {
    rule: String,
    statement: &'static str,
    text: String,
    risk: String,
}

#[derive(Serialize)]
pub(crate) struct ChancesView {
    within: String,
    counts: String,
    rules: Vec<RuleSaysView>,
}

#[derive(Serialize)]
pub(crate) struct FindingView {
    substance: String,
    pub(crate) name: String,
    pub(crate) outcome: &'static str,
    short: String,
    pub(crate) text: String,
    pub(crate) reason_text: String,
    next_step: String,
    ruler: String,
    cautions: Vec<String>,
    pub(crate) steps: Vec<StepView>,
    chances: Option<ChancesView>,
}

#[derive(Serialize)]
pub(crate) struct OtherElement {
    symbol: &'static str,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct CompositionView {
    text: String,
    /// It contradicts the class that was stated, or the measuring mode: something to look at.
    doubtful: bool,
    /// A class code, where the class is open; empty where there is nothing to take over.
    suggests: &'static str,
    suggests_text: String,
}

#[derive(Serialize)]
pub(crate) struct RepeatReading {
    index: usize,
    id: Option<String>,
    line: u32,
}

#[derive(Serialize)]
pub(crate) struct RepeatedView {
    element: &'static str,
    how: &'static str,
    value: String,
    text: String,
}

#[derive(Serialize)]
pub(crate) struct RepeatsView {
    readings: Vec<RepeatReading>,
    elements: Vec<RepeatedView>,
}

#[derive(Serialize)]
pub(crate) struct DetailView {
    row: RowView,
    lot_index: i32,
    instrument: Option<String>,
    time: Option<String>,
    seconds: Option<String>,
    composition: Option<CompositionView>,
    findings: Vec<FindingView>,
    limits: Vec<FindingView>,
    repeats: Option<RepeatsView>,
    other_elements: Vec<OtherElement>,
}

/// Everything about one reading.
pub(crate) fn detail(
    inspection: &Inspection,
    findings: &Findings,
    words: &Words,
    index: usize,
    lot: u32,
) -> Option<DetailView> {
    let (at, row) = findings.place(index)?;
    let source = inspection.sources.get(at)?;
    let settings = inspection.settings();
    let reviewer = SourceReview::new(source, &inspection.books, &settings);
    let identity = |identity| source.readings.identity(identity, row).map(str::to_owned);
    let one = Detail { explainer: Explainer { inspection, source, reviewer: &reviewer, words }, words, row };
    let composition = one.composition();
    // Said once, above all outcomes, and not again at each of them.
    let said = composition.as_ref().map_or("", |composition| composition.text.as_str());
    let substances = Substance::ALL.into_iter().map(|substance| one.substance(substance, said));
    let findings_of_reading: Vec<FindingView> =
        substances.chain(Halogen::ALL.into_iter().map(|of| one.halogen(of, said))).collect();
    let limits = reviewer.limits_as(reviewer.class(row).0, row);
    Some(DetailView {
        row: row_view(&Place { inspection, findings, source, reviewer: &reviewer, index, row }, words),
        lot_index: i32::try_from(lot).unwrap_or(-1),
        instrument: identity(Identity::Instrument),
        time: identity(Identity::Time).map(|text| words.moment(&text)),
        seconds: identity(Identity::Seconds),
        findings: findings_of_reading,
        limits: limits.iter().map(|limit| one.limit(limit)).collect(),
        repeats: one.repeats(findings.first_reading.get(at).copied().unwrap_or(0)),
        other_elements: one.other_elements(),
        composition,
    })
}

/// One substance of one reading, told as in its detail.
pub(crate) fn finding(explainer: Explainer<'_>, substance: Substance, row: usize) -> FindingView {
    Detail { explainer, words: explainer.words, row }.substance(substance, "")
}

struct Detail<'a> {
    explainer: Explainer<'a>,
    words: &'a Words,
    row: usize,
}

impl Detail<'_> {
    fn source(&self) -> &Source {
        self.explainer.source
    }

    fn reviewer(&self) -> &SourceReview<'_> {
        self.explainer.reviewer
    }

    fn class_text(&self, class: MaterialClass) -> String {
        self.words.say(&format!("class-{}", class.code()))
    }

    fn composition(&self) -> Option<CompositionView> {
        let text = phrases::composition(self.words, self.reviewer(), self.row);
        if text.is_empty() {
            return None;
        }
        let suggestion = self.reviewer().composition(self.row).and_then(|found| found.suggestion);
        let open = self.reviewer().class(self.row).0 == MaterialClass::Unknown;
        let taken = suggestion.map(|(class, _)| class).filter(|_| open);
        let contradiction: Option<Contradiction> = self.reviewer().contradiction(self.row);
        let calibration: Option<CalibrationDoubt> = self.reviewer().assess(self.row).calibration;
        Some(CompositionView {
            text,
            doubtful: contradiction.is_some() || calibration.is_some(),
            suggests: taken.map_or("", MaterialClass::code),
            suggests_text: taken.map(|class| self.class_text(class)).unwrap_or_default(),
        })
    }

    fn steps_text(&self, steps: &[NextStep], about: &str) -> String {
        self.words
            .sentences(&steps.iter().map(|step| phrases::next(self.words, step, about)).collect::<Vec<_>>())
    }

    /// The steps that are read as the working; class, outcome, cautions, chances and what comes next stand by themselves.
    fn steps(told: &Explanation) -> Vec<StepView> {
        let apart =
            [StepKind::Class, StepKind::Outcome, StepKind::Caution, StepKind::Probability, StepKind::Next];
        let read = told.steps.iter().filter(|step| !apart.contains(&step.kind));
        read.map(|step| StepView { kind: step.kind.code(), text: step.text.clone() }).collect()
    }

    fn cautions(told: &Explanation, said: &str) -> Vec<String> {
        let of_kind = told.steps.iter().filter(|step| step.kind == StepKind::Caution && step.text != said);
        of_kind.map(|step| step.text.clone()).collect()
    }

    fn substance(&self, substance: Substance, said: &str) -> FindingView {
        let (words, row, reviewer) = (self.words, self.row, self.reviewer());
        let inspection = self.explainer.inspection;
        let assessed = reviewer.assess(row);
        let class = assessed.class;
        let judged = assessed.substances[substance as usize];
        let cell = self.source().readings.cell(substance.element(), row);
        let rule = inspection.books.screening().map(|(_, rule)| rule);
        let edge = rule.and_then(|rule| match rule.band(substance, class)?.edges?.low {
            LowEdge::Fixed(low) => Some((low, rule.sigma_factor, cell.value)),
            LowEdge::DetectionLimit { .. } => None,
        });
        let name = words.say(&format!("substance-{}", substance.symbol()));
        let stands_for = format!("stands-for-{}", substance.symbol());
        let name = if words.has(&stands_for) { words.list(&[name, words.say(&stands_for)]) } else { name };
        let told = self.explainer.substance(substance, row);
        let next = phrases::next_of_substance(inspection, reviewer, substance, &judged, row);
        FindingView {
            substance: substance.symbol().to_owned(),
            name,
            outcome: judged.outcome.code(),
            short: phrases::outcome_short(words, judged.outcome),
            text: phrases::outcome(words, judged.outcome),
            reason_text: phrases::reason(words, &judged, substance.symbol(), edge),
            next_step: self.steps_text(&next, substance.symbol()),
            ruler: rule
                .map(|rule| rulers::substance(words, rule, substance, class, &cell, &judged))
                .unwrap_or_default(),
            cautions: Detail::cautions(&told, said),
            steps: Detail::steps(&told),
            chances: self.explainer.chances(substance, &judged, row).map(chances),
        }
    }

    fn halogen(&self, of: Halogen, said: &str) -> FindingView {
        let (words, row, reviewer) = (self.words, self.row, self.reviewer());
        let assessed = reviewer.assess(row);
        let judged = assessed.halogen(of);
        let name = words.say(&format!("substance-{}", of.name()));
        let told = self.explainer.halogen(of, row);
        let next = phrases::next_of_halogen(self.explainer.inspection, reviewer, of, &judged, row);
        FindingView {
            substance: words.say(&format!("halogen-{}", of.name())),
            outcome: judged.outcome.code(),
            short: phrases::outcome_short(words, judged.outcome),
            text: phrases::outcome(words, judged.outcome),
            reason_text: phrases::reason(words, &judged, &name, None),
            next_step: self.steps_text(&next, &name),
            ruler: self
                .explainer
                .inspection
                .books
                .halogens()
                .map(|(_, rule)| rulers::halogen(words, rule, of, self.source(), &assessed, row))
                .unwrap_or_default(),
            cautions: Detail::cautions(&told, said),
            steps: Detail::steps(&told),
            chances: None,
            name,
        }
    }

    /// A limit of a book that is named or loaded.
    fn limit(&self, limit: &LimitAssessed<'_>) -> FindingView {
        let words = self.words;
        let judged = limit.judged.judgement;
        let mut steps = vec![StepView { kind: StepKind::Rule.code(), text: books::limit(words, limit.row) }];
        if let Some(sum) = limit.judged.sum {
            let high = sum.high.map(phrases::rounded);
            let id = match &high {
                None => "explain-limit_sum_from",
                Some(_) if sum.high == Some(sum.low) => "explain-limit_sum",
                Some(_) => "explain-limit_sum_between",
            };
            let arguments = [
                ("low", phrases::rounded(sum.low)),
                ("value", high.unwrap_or_default()),
                ("sigma", phrases::rounded(sum.high_sigma.to_mass_fraction())),
            ];
            let borrowed = arguments.each_ref().map(|(name, value)| (*name, value.as_str()));
            steps.push(StepView { kind: StepKind::Value.code(), text: words.with(id, &borrowed) });
        }
        let from = phrases::sigma_from(words, judged.used.from);
        if judged.used.sigma.is_some() && !from.is_empty() {
            steps.push(StepView { kind: StepKind::Sigma.code(), text: from });
        }
        FindingView {
            substance: limit.row.id.clone(),
            name: limit.book.title.clone(),
            outcome: judged.outcome.code(),
            short: phrases::outcome_short(words, judged.outcome),
            text: phrases::outcome(words, judged.outcome),
            reason_text: phrases::reason(words, &judged, &limit.row.id, None),
            next_step: limit.row.question.clone(),
            ruler: rulers::limit(words, limit.row, &limit.judged),
            cautions: Vec::new(),
            steps,
            chances: None,
        }
    }

    /// The readings of the same spot, `first` being the index of the source's first reading.
    fn repeats(&self, first: usize) -> Option<RepeatsView> {
        let (source, reviewer) = (self.source(), self.reviewer());
        let group = reviewer.repeats().group_of(self.row)?;
        let rows: Vec<usize> =
            reviewer.repeats().groups().get(group)?.iter().map(|row| *row as usize).collect();
        let (class, class_from) = reviewer.class(*rows.first()?);
        let assessed = reviewer.assess_group(group, class, class_from);
        let measured = |element: Element| {
            let state = |row: &usize| source.readings.cell(element, *row).state;
            rows.iter().any(|row| !matches!(state(row), CellState::NoColumn | CellState::Blank))
        };
        let elements: Vec<(Element, &PooledElement)> =
            JUDGED.into_iter().zip(&assessed.elements).filter(|(element, _)| measured(*element)).collect();
        Some(RepeatsView {
            readings: rows
                .iter()
                .map(|row| RepeatReading {
                    index: first + row,
                    id: source.readings.identity(Identity::Id, *row).map(str::to_owned),
                    line: source.readings.line(*row),
                })
                .collect(),
            elements: elements.iter().map(|(element, one)| self.repeated(*element, one, &rows)).collect(),
        })
    }

    fn repeated(&self, element: Element, one: &PooledElement, rows: &[usize]) -> RepeatedView {
        let words = self.words;
        let n = rows.len().to_string();
        let pooled = one.pooled.as_ref();
        let agreement = pooled.and_then(|pooled| pooled.agreement);
        let id = match one.how {
            PooledHow::Disagree => "pooled-disagree",
            PooledHow::LargestLimit => "pooled-largest_limit",
            PooledHow::Mixed => "pooled-mixed",
            PooledHow::Pooled if agreement.is_some() => "pooled-agree",
            PooledHow::Pooled => "pooled-not_asked",
        };
        let p = agreement.map(|agreement| chance(words, agreement.p)).unwrap_or_default();
        let mut text = words.with(id, &[("n", &n), ("p", &p)]);
        if let (PooledHow::Pooled, Some(pooled)) = (one.how, pooled) {
            let (t, k) =
                pooled.few.map(|few| (format!("{:.2}", few.t), few.k.to_string())).unwrap_or_default();
            let from = words
                .with(&format!("pooled-from-{}", pooled.from.code()), &[("n", &n), ("t", &t), ("k", &k)]);
            text.push_str(words.gap());
            text.push_str(&words.with("pooled-sigma", &[("from", &from)]));
        }
        let outlier = pooled.and_then(|pooled| pooled.outlier).filter(|found| found.is_flagged());
        if let Some((found, row)) = outlier.and_then(|found| Some((found, rows.get(found.index)?))) {
            let readings = &self.source().readings;
            let which = readings.identity(Identity::Id, *row).unwrap_or("").to_owned();
            let which =
                format!("{which}{}", words.bracketed(&phrases::line_name(words, readings.line(*row))));
            let (g, critical) =
                (format!("{:.2}", found.g), format!("{:.2}", found.critical().unwrap_or(0.0)));
            text.push_str(words.gap());
            text.push_str(
                &words.with("pooled-outlier", &[("which", which.trim()), ("g", &g), ("critical", &critical)]),
            );
        }
        RepeatedView {
            element: element.symbol(),
            how: one.how.code(),
            value: one.judged.map(|(cell, used)| self.judged_value(&cell, used.sigma)).unwrap_or_default(),
            text,
        }
    }

    /// A pooled value, rounded for reading.
    fn judged_value(&self, cell: &Cell, sigma: Option<Sigma>) -> String {
        let limit = cell.detection_limit.filter(|_| cell.state == CellState::NotDetected);
        let (id, value) = match (cell.state, limit) {
            (CellState::Number, _) if sigma.is_some() => ("value-number", cell.value),
            (CellState::Number, _) => ("value-number_bare", cell.value),
            (CellState::NotDetected, Some(limit)) => ("value-below", limit),
            _ => return phrases::value(self.words, cell, sigma, ""),
        };
        let sigma = sigma.map(|sigma| phrases::rounded(sigma.to_mass_fraction())).unwrap_or_default();
        self.words.with(id, &[("value", &phrases::rounded(value)), ("sigma", &sigma)])
    }

    fn other_elements(&self) -> Vec<OtherElement> {
        let (source, row) = (self.source(), self.row);
        let judged: Vec<Element> =
            Substance::ALL.iter().map(|substance| substance.element()).chain([Element::CL]).collect();
        let others = source.readings.elements().iter().filter(|column| !judged.contains(&column.element));
        others
            .map(|column| {
                let cell: Cell = column.cell(row);
                let sigma = self.reviewer().printed_sigma(column.element, &cell, row);
                let written = phrases::as_written(source, column, row);
                OtherElement {
                    symbol: column.element.symbol(),
                    text: phrases::value(self.words, &cell, sigma, &written),
                }
            })
            .collect()
    }
}

/// The chance that scatter alone would show as much, in words.
pub(crate) fn chance(words: &Words, p: f64) -> String {
    // A large p is never worth more digits than its own, so its opposite is not asked for.
    let (id, percent) = conformity::phrase(p, f64::INFINITY);
    words.with(id, &[("percent", &percent)])
}

fn chances(found: Chances) -> ChancesView {
    ChancesView {
        within: found.within,
        counts: found.counts,
        rules: found
            .rules
            .into_iter()
            .map(|said| RuleSaysView {
                rule: said.rule,
                statement: said.code.code(),
                text: said.statement,
                risk: said.risk,
            })
            .collect(),
    }
}
