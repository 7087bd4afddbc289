//! The working behind one outcome: rule, inputs, arithmetic, clause and what follows, as steps that read as one
//! paragraph. Page, report and command line show the same steps.

use crate::conformity::{self, Statement};
use crate::inspection::Inspection;
use crate::judging::{JUDGED, SourceReview};
use crate::material::MaterialClass;
use crate::next_step;
use crate::outcome::{Judgement, Outcome, SigmaFrom};
use crate::quantity::MassFraction;
use crate::reading::{CellState, Source, codes};
use crate::report::{books, phrases, repeats};
use crate::rules::{self, LowEdge};
use crate::substance::{Halogen, Substance};
use crate::words::Words;

codes! {
    /// What a step of an explanation is about.
    StepKind {
        /// Which class the reading was judged in and who said so.
        Class => "class",
        /// The rule with its edges, source and clause.
        Rule => "rule",
        /// The value as the file states it and in mg/kg.
        Value => "value",
        /// The sigma that was used, where it came from and its multiple.
        Sigma => "sigma",
        /// The comparison in numbers.
        Arithmetic => "arithmetic",
        /// The outcome with its reason.
        Outcome => "outcome",
        /// What repeats of the spot say.
        Repeats => "repeats",
        /// What physics makes doubtful.
        Caution => "caution",
        /// The probability that the true value lies within the legal limit, and other decision rules.
        Probability => "probability",
        /// What the element allows at most of the substance.
        Bound => "bound",
        /// What would settle it.
        Next => "next",
    }
}

/// What an outcome is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About {
    /// A substance.
    Substance(Substance),
    /// A halogen or the total.
    Halogen(Halogen),
}

/// One step.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// What it is about.
    pub kind: StepKind,
    /// The sentence.
    pub text: String,
}

/// The working behind one outcome.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Explanation {
    /// The substance or halogen.
    pub about: String,
    /// The steps in the order they are read.
    pub steps: Vec<Step>,
}

impl Explanation {
    fn add(&mut self, kind: StepKind, text: String) {
        if !text.is_empty() {
            self.steps.push(Step { kind, text });
        }
    }

    /// The text of the steps of one kind.
    pub fn of(&self, words: &Words, kind: StepKind) -> String {
        let texts = self.steps.iter().filter(|step| step.kind == kind).map(|step| step.text.as_str());
        words.sentences(&texts.collect::<Vec<_>>())
    }
}

/// What one decision rule says of a value.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct RuleSays {
    /// The rule.
    pub rule: String,
    /// Its statement, as a code.
    pub code: Statement,
    /// Its statement, in words.
    pub statement: String,
    /// The chance that the statement is wrong for this value.
    pub risk: String,
}

/// The probability that the true value lies within the legal limit, and what other decision rules say.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Chances {
    /// The chance, with the limit.
    pub within: String,
    /// What the chance does not count; empty where it counts everything.
    pub counts: String,
    /// Each rule, in the order of [`conformity::DecisionRule::ALL`].
    pub rules: Vec<RuleSays>,
}

/// What explains the readings of one source.
#[derive(Clone, Copy)]
pub struct Explainer<'a> {
    /// The inspection.
    pub inspection: &'a Inspection,
    /// The source the readings stand in.
    pub source: &'a Source,
    /// Its reviewer.
    pub reviewer: &'a SourceReview<'a>,
    /// The catalogue.
    pub words: &'a Words,
}

impl std::fmt::Debug for Explainer<'_> {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "Explainer of {}", self.source.name)
    }
}

impl Explainer<'_> {
    /// Explains an outcome.
    pub fn explain(&self, about: About, row: usize) -> Explanation {
        match about {
            About::Substance(of) => self.substance(of, row),
            About::Halogen(of) => self.halogen(of, row),
        }
    }

    /// Explains the outcome of a substance.
    pub fn substance(&self, substance: Substance, row: usize) -> Explanation {
        let words = self.words;
        let assessed = self.reviewer.assess(row);
        let class = assessed.class;
        let judged = assessed.substances[substance as usize];
        let about = substance.symbol();
        let cell = self.source.readings.cell(substance.element(), row);
        let mut told = Explanation { about: about.to_owned(), steps: Vec::new() };
        told.add(StepKind::Class, self.class(row));
        told.add(StepKind::Caution, phrases::composition(words, self.reviewer, row));
        let Some((book, rule)) = self.inspection.books.screening() else { return told };
        let band = rule.band(substance, class);
        let low = band.and_then(|band| match band.edges?.low {
            LowEdge::Fixed(low) => Some(low),
            LowEdge::DetectionLimit { .. } => None,
        });
        if let Some(band) = band {
            let edges = band.edges;
            let text = |value: Option<MassFraction>| value.map(|value| value.to_string()).unwrap_or_default();
            let arguments = [
                ("about", about.to_owned()),
                ("class", words.say(&format!("class-{}", class.code()))),
                ("book", book.title.clone()),
                ("clause", band.citation.clause.clone()),
                ("confidence", books::confidence_short(words, &book.confidence)),
                ("k", rule.sigma_factor.to_string()),
                ("low", text(low)),
                ("high", text(edges.and_then(|edges| edges.high))),
            ];
            let id = match edges {
                None => "explain-rule_none",
                Some(edges) if low.is_none() && edges.high.is_some() => "explain-rule_detection",
                Some(edges) if edges.high.is_some() => "explain-rule",
                Some(_) => "explain-rule_open",
            };
            told.add(StepKind::Rule, with(words, id, &arguments));
        } else {
            let layers = class == MaterialClass::Plated;
            let id = if layers { "explain-rule_layers" } else { "explain-rule_every_class" };
            told.add(StepKind::Rule, with(words, id, &[("book", book.title.clone())]));
        }
        told.add(
            StepKind::Value,
            self.value(about, &phrases::written_of(self.source, substance.element(), row), &cell),
        );
        told.add(StepKind::Sigma, self.sigma(substance as usize, &judged, row));
        if class == MaterialClass::Unknown {
            for class in MaterialClass::BANDED {
                let one = self.reviewer.judge_as(substance, class, row);
                let arguments = [
                    ("class", words.say(&format!("class-{}", class.code()))),
                    ("outcome", phrases::outcome(words, one.outcome)),
                    ("working", phrases::working(words, rule, substance, class, &cell, &one, None)),
                ];
                told.add(StepKind::Arithmetic, with(words, "explain-under_class", &arguments));
            }
        } else {
            let share = self.reviewer.thickness_share(substance, row);
            let working = phrases::working(words, rule, substance, class, &cell, &judged, share);
            told.add(StepKind::Arithmetic, working);
        }
        let edge = low.map(|low| (low, rule.sigma_factor, cell.value));
        let reason = phrases::reason(words, &judged, about, edge);
        told.add(StepKind::Outcome, self.outcome(about, judged.outcome, &reason));
        told.add(StepKind::Repeats, self.repeats(About::Substance(substance), row));
        for said in phrases::doubts(
            words,
            self.reviewer,
            &assessed.cautions[substance as usize],
            judged.outcome,
            about,
            row,
        ) {
            told.add(StepKind::Caution, said);
        }
        told.add(StepKind::Bound, phrases::bound(words, substance, &cell, &judged, rule.sigma_factor));
        told.add(StepKind::Probability, self.probability(substance, &judged, row));
        let steps = phrases::next_of_substance(self.inspection, self.reviewer, substance, &judged, row);
        told.add(StepKind::Next, self.next(&steps, about));
        told
    }

    /// Explains the outcome of a halogen or of their total.
    pub fn halogen(&self, of: Halogen, row: usize) -> Explanation {
        let words = self.words;
        let assessed = self.reviewer.assess(row);
        let judged = assessed.halogen(of);
        let about = words.say(&format!("halogen-{}", of.name()));
        let mut told = Explanation { about: of.name().to_owned(), steps: Vec::new() };
        told.add(StepKind::Class, self.class(row));
        told.add(StepKind::Caution, phrases::composition(words, self.reviewer, row));
        if let Some((book, rule)) = self.inspection.books.halogens() {
            let citation = rule.citation_of(of);
            let arguments = [
                ("about", about.clone()),
                ("book", book.title.clone()),
                ("clause", citation.clause.clone()),
                ("confidence", books::confidence_short(words, &book.confidence)),
                ("k", rule.sigma_factor.to_string()),
                ("limit", rule.limit(of).to_string()),
            ];
            let id = if rule.equal_is_within { "explain-halogen_at_most" } else { "explain-halogen_below" };
            told.add(StepKind::Rule, with(words, id, &arguments));
        }
        if let Some(element) = phrases::element_of(of) {
            let cell = self.source.readings.cell(element, row);
            let written = phrases::written_of(self.source, element, row);
            told.add(StepKind::Value, self.value(&about, &written, &cell));
        } else {
            let total = phrases::total(words, &assessed.total);
            told.add(StepKind::Value, with(words, "explain-total", &[("value", total)]));
        }
        if judged.used.sigma.is_some() {
            let from = phrases::sigma_from(words, judged.used.from);
            let sigma = judged.used.sigma.map(|sigma| phrases::rounded(sigma.to_mass_fraction()));
            let arguments = [("sigma", sigma.unwrap_or_default()), ("from", from)];
            told.add(StepKind::Sigma, with(words, "explain-sigma", &arguments));
        }
        let reason = phrases::reason(words, &judged, &about, None);
        told.add(StepKind::Outcome, self.outcome(&about, judged.outcome, &reason));
        told.add(StepKind::Repeats, self.repeats(About::Halogen(of), row));
        for said in phrases::doubts(
            words,
            self.reviewer,
            &assessed.halogen_cautions[of as usize],
            judged.outcome,
            &about,
            row,
        ) {
            told.add(StepKind::Caution, said);
        }
        let steps = phrases::next_of_halogen(self.inspection, self.reviewer, of, &judged, row);
        told.add(StepKind::Next, self.next(&steps, &about));
        told
    }

    /// What the repeats of the spot say; empty where the reading has none. An outcome made together with them is the one
    /// that counts for the material.
    fn repeats(&self, of: About, row: usize) -> String {
        let Some(group) = self.reviewer.repeats().group_of(row) else { return String::new() };
        let Some(rows) = self.reviewer.repeats().groups().get(group) else { return String::new() };
        let (class, class_from) = self.reviewer.class(row);
        let assessed = self.reviewer.assess_group(group, class, class_from);
        let (together, outcome, element) = match of {
            About::Substance(one) => {
                let judged = assessed.together.substances[one as usize];
                (assessed.substances[one as usize], judged.outcome, Some(one.element()))
            }
            About::Halogen(one) => {
                let judged = assessed.together.halogen(one);
                (assessed.halogens[one as usize], judged.outcome, phrases::element_of(one))
            }
        };
        let missing = |element| {
            rows.iter().all(|row| {
                let state = self.source.readings.cell(element, *row as usize).state;
                matches!(state, CellState::NoColumn | CellState::Blank)
            })
        };
        if element.is_some_and(missing) {
            return String::new();
        }
        let at = element.and_then(|element| JUDGED.iter().position(|judged| *judged == element));
        let name = |index: usize| {
            let line = rows.get(index).map_or(0, |row| self.source.readings.line(*row as usize));
            with(self.words, "repeats-line", &[("line", line.to_string())])
        };
        let said = at
            .and_then(|at| assessed.elements.get(at))
            .map(|one| repeats::told(self.words, &self.inspection.books, one, rows.len(), &name));
        // Mixed and disagreeing repeats have said so already.
        let says_alone = at.and_then(|at| assessed.elements.get(at)).is_some_and(|one| one.judged.is_none());
        let counts = if together {
            let outcome = phrases::outcome(self.words, outcome);
            with(self.words, "repeats-together", &[("outcome", outcome)])
        } else if says_alone {
            String::new()
        } else {
            self.words.say("repeats-alone")
        };
        let n = rows.len().to_string();
        with(
            self.words,
            "explain-repeats",
            &[("n", n), ("said", said.unwrap_or_default()), ("counts", counts)],
        )
        .trim_end()
        .to_owned()
    }

    /// The probability and what other decision rules say, in words; empty where none applies.
    fn probability(&self, substance: Substance, judged: &Judgement, row: usize) -> String {
        let Some(chances) = self.chances(substance, judged, row) else { return String::new() };
        let same = chances.rules.first().filter(|first| {
            chances.rules.iter().all(|one| one.statement == first.statement && one.risk == first.risk)
        });
        let rules = if let Some(RuleSays { statement, risk, .. }) = same {
            self.words.with("explain-other_rules_agree", &[("statement", statement), ("risk", risk)])
        } else {
            let said = chances.rules.iter().map(|said| {
                let arguments = [
                    ("rule", said.rule.clone()),
                    ("statement", said.statement.clone()),
                    ("risk", said.risk.clone()),
                ];
                with(self.words, "explain-rule_says", &arguments)
            });
            let list = self.words.series(&said.collect::<Vec<_>>());
            with(self.words, "explain-other_rules", &[("list", list)])
        };
        let texts = [chances.within, chances.counts, rules];
        self.words.sentences(&texts)
    }

    /// The probability and what other decision rules say, piece by piece; `None` where none applies.
    pub fn chances(&self, substance: Substance, judged: &Judgement, row: usize) -> Option<Chances> {
        let words = self.words;
        let found = self.reviewer.conformity(substance, judged, row)?;
        let limit = rules::legal_limit(substance, self.reviewer.class(row).0);
        let limit = limit.map(|limit| limit.limit.to_string()).unwrap_or_default();
        let chance = |of, rest| {
            let (id, percent) = conformity::phrase(of, rest);
            words.with(id, &[("percent", &percent)])
        };
        let within = chance(found.within, found.beyond);
        let mut counts = Vec::new();
        if !self.inspection.settings().uncertainty_is_full() {
            counts.push(words.say("conformity-repeatability_only"));
        }
        // A value that is read too low or too high is the wrong one to ask about.
        if !self.reviewer.assess(row).cautions[substance as usize].is_empty() {
            counts.push(words.say("explain-not_the_cautions"));
        }
        let k = conformity::GUARD.to_string();
        let rules = found.said.iter().map(|said| {
            let passes = matches!(said.statement, Statement::Pass | Statement::ConditionalPass);
            let (right, wrong) =
                if passes { (found.within, found.beyond) } else { (found.beyond, found.within) };
            RuleSays {
                rule: words.with(&format!("rule-{}", said.rule.code()), &[("k", &k)]),
                code: said.statement,
                statement: words.say(&format!("statement-{}", said.statement.code())),
                risk: chance(wrong, right),
            }
        });
        Some(Chances {
            within: with(words, "conformity-within", &[("limit", limit), ("chance", within)]),
            counts: words.sentences(&counts),
            rules: rules.collect(),
        })
    }

    fn class(&self, row: usize) -> String {
        let (class, from) = self.reviewer.class(row);
        let arguments = [
            ("class", self.words.say(&format!("class-{}", class.code()))),
            ("from", self.words.say(&format!("class-from-{}", from.code()))),
        ];
        with(self.words, "explain-class", &arguments)
    }

    fn value(&self, about: &str, written: &str, cell: &crate::reading::Cell) -> String {
        let id = match cell.state {
            CellState::NoColumn | CellState::Blank => "explain-value_none",
            CellState::Text | CellState::UnitUnknown => "explain-value_text",
            _ => "explain-value",
        };
        // The sigma is a step of its own; the value must not be said to have none.
        let value = match cell.state {
            CellState::Number => {
                with(self.words, "explain-value_plain", &[("value", cell.value.to_string())])
            }
            _ => phrases::value(self.words, cell, None, written),
        };
        let arguments = [("about", about.to_owned()), ("written", written.to_owned()), ("value", value)];
        with(self.words, id, &arguments)
    }

    fn sigma(&self, at: usize, judged: &Judgement, row: usize) -> String {
        let Some(sigma) = judged.used.sigma else { return String::new() };
        let from = phrases::sigma_from(self.words, judged.used.from);
        let multiple = match judged.used.from {
            SigmaFrom::Printed | SigmaFrom::PrintedMultipleSet | SigmaFrom::PrintedMultipleUnknown => {
                self.reviewer.multiple(at, row).0.to_string()
            }
            _ => String::new(),
        };
        let sigma = phrases::rounded(sigma.to_mass_fraction());
        let id = if multiple.is_empty() { "explain-sigma" } else { "explain-sigma_printed" };
        let mut text = with(self.words, id, &[("sigma", sigma), ("from", from), ("multiple", multiple)]);
        if self.reviewer.relative() > 0 {
            let percent = MassFraction::from_units(i64::from(self.reviewer.relative()) * 10_000).to_string();
            text.push_str(self.words.gap());
            text.push_str(&with(self.words, "explain-relative", &[("percent", percent)]));
        }
        text
    }

    fn outcome(&self, about: &str, outcome: Outcome, reason: &str) -> String {
        let arguments = [
            ("about", about.to_owned()),
            ("outcome", phrases::outcome(self.words, outcome)),
            ("reason", reason.to_owned()),
        ];
        let id = if reason.is_empty() { "explain-outcome" } else { "explain-outcome_because" };
        with(self.words, id, &arguments)
    }

    fn next(&self, steps: &[next_step::NextStep], about: &str) -> String {
        if steps.is_empty() {
            return String::new();
        }
        let list: Vec<String> = steps.iter().map(|step| phrases::next(self.words, step, about)).collect();
        with(self.words, "explain-next", &[("list", self.words.sentences(&list))])
    }
}

fn with(words: &Words, id: &str, arguments: &[(&str, String)]) -> String {
    let borrowed: Vec<(&str, &str)> = arguments.iter().map(|(name, value)| (*name, value.as_str())).collect();
    words.with(id, &borrowed)
}
