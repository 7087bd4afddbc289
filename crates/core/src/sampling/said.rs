//! The plan a person asks for.

use crate::data_file::ProblemCode;
use crate::fields;
use crate::quantity::{DecimalMark, Number, Rounding};
use crate::reading::codes;

use super::aqls;

codes! {
    /// Inspection levels of the general tables.
    Level {
        /// Special level S-1.
        S1 => "S-1",
        /// Special level S-2.
        S2 => "S-2",
        /// Special level S-3.
        S3 => "S-3",
        /// Special level S-4.
        S4 => "S-4",
        /// General level I.
        I => "I",
        /// General level II, the usual one.
        II => "II",
        /// General level III.
        III => "III",
    }
}

codes! {
    /// How severe an inspection is.
    Severity {
        /// Normal inspection.
        Normal => "normal",
        /// Tightened inspection.
        Tightened => "tightened",
        /// Reduced inspection; the table is that of MIL-STD-105E.
        Reduced => "reduced",
    }
}

/// By which rule the number of units is found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum PlanRule {
    /// Single sampling of MIL-STD-105E by level, severity and AQL.
    Single {
        /// Inspection level.
        level: Level,
        /// Severity.
        severity: Severity,
        /// AQL as the tables head their columns: `1.0`.
        aql: String,
    },
    /// None found among n shows, with a stated confidence, that fewer than a stated share are nonconforming.
    ZeroAcceptance {
        /// Confidence in hundredths of a percent: 9500 is 95 %.
        confidence: u32,
        /// The share to detect, in hundredths of a percent: 500 is 5 %.
        share: u32,
    },
}

/// A plan as a person asks for it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlanSaid {
    /// By which rule.
    pub rule: PlanRule,
    /// The seed of the random list of units; `None` where no list is wanted.
    pub seed: Option<u64>,
}

impl PlanSaid {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 7] = ["rule", "level", "severity", "aql", "confidence", "share", "seed"];

    /// Reads `rule=single;level=II;severity=normal;aql=1.0;seed=7` or `rule=zero_acceptance;confidence=95;share=5`
    /// (percent). Level II and normal inspection are meant where neither is said; nothing else has a default.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<PlanSaid, ProblemCode> {
        let found = fields::read(text, &PlanSaid::FIELDS)?;
        let field = |name| fields::field(&found, name);
        let rule = match field("rule") {
            "" => return Err(ProblemCode::Missing),
            "single" => {
                none_of(&found, &["confidence", "share"])?;
                PlanRule::Single {
                    level: one_of(Level::ALL, Level::code, field("level"), Level::II)?,
                    severity: one_of(Severity::ALL, Severity::code, field("severity"), Severity::Normal)?,
                    aql: match field("aql") {
                        "" => return Err(ProblemCode::Missing),
                        aql => aql_column(aql).ok_or(ProblemCode::AqlNotInTable)?.to_owned(),
                    },
                }
            }
            "zero_acceptance" => {
                none_of(&found, &["level", "severity", "aql"])?;
                PlanRule::ZeroAcceptance {
                    confidence: percent(field("confidence"))?,
                    share: percent(field("share"))?,
                }
            }
            _ => return Err(ProblemCode::UnknownName),
        };
        let seed = match field("seed") {
            "" => None,
            seed => Some(seed.parse().map_err(|_| ProblemCode::OutOfRange)?),
        };
        Ok(PlanSaid { rule, seed })
    }
}

/// Fields of the other rule are a mistake, not something to pass over.
fn none_of(found: &[(String, String)], names: &[&str]) -> Result<(), ProblemCode> {
    let none = names.iter().all(|name| fields::field(found, name).is_empty());
    if none { Ok(()) } else { Err(ProblemCode::UnknownKey) }
}

fn one_of<T: Copy>(all: &[T], code: fn(T) -> &'static str, text: &str, unsaid: T) -> Result<T, ProblemCode> {
    if text.is_empty() {
        return Ok(unsaid);
    }
    all.iter().copied().find(|known| code(*known) == text).ok_or(ProblemCode::UnknownName)
}

/// The column of an AQL, however its zeros are written: `1` is `1.0`.
fn aql_column(text: &str) -> Option<&'static str> {
    let millionths = |text: &str| {
        let number =
            Number::parse(text.trim_end_matches('%').trim_end().as_bytes(), DecimalMark::Point).ok()?;
        number.scaled(6, Rounding::Up)
    };
    let wanted = millionths(text)?;
    aqls().find(|known| millionths(known) == Some(wanted))
}

/// Percent in hundredths, above 0 and below 100.
fn percent(text: &str) -> Result<u32, ProblemCode> {
    if text.is_empty() {
        return Err(ProblemCode::Missing);
    }
    let number = Number::parse(text.trim_end_matches('%').trim_end().as_bytes(), DecimalMark::Point);
    let hundredths = number.ok().and_then(|number| number.scaled(2, Rounding::Nearest));
    let hundredths = hundredths.and_then(|hundredths| u32::try_from(hundredths).ok());
    hundredths.filter(|hundredths| (1..10_000).contains(hundredths)).ok_or(ProblemCode::OutOfRange)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_plan_states_its_rule_and_nothing_of_the_other() {
        let plan = PlanSaid::parse("rule=single;aql=1.0").unwrap();
        let rule = PlanRule::Single { level: Level::II, severity: Severity::Normal, aql: "1.0".into() };
        assert_eq!(plan, PlanSaid { rule, seed: None });
        for (written, aql) in
            [("1", "1.0"), ("0.1", "0.10"), ("1000", "1000"), ("6.50 %", "6.5"), ("0.01", "0.010")]
        {
            let plan = PlanSaid::parse(&format!("rule=single;aql={written}")).unwrap();
            assert!(matches!(plan.rule, PlanRule::Single { aql: found, .. } if found == aql), "{written}");
        }
        let plan = PlanSaid::parse("rule=zero_acceptance;confidence=95 %;share=2.5;seed=7").unwrap();
        let rule = PlanRule::ZeroAcceptance { confidence: 9_500, share: 250 };
        assert_eq!(plan, PlanSaid { rule, seed: Some(7) });
        for (text, problem) in [
            ("aql=1.0", ProblemCode::Missing),
            ("rule=double;aql=1.0", ProblemCode::UnknownName),
            ("rule=single", ProblemCode::Missing),
            ("rule=single;aql=1.1", ProblemCode::AqlNotInTable),
            ("rule=single;aql=1.0001", ProblemCode::AqlNotInTable),
            ("rule=single;aql=low", ProblemCode::AqlNotInTable),
            ("rule=single;aql=1.0;share=5", ProblemCode::UnknownKey),
            ("rule=single;aql=1.0;level=IV", ProblemCode::UnknownName),
            ("rule=zero_acceptance;confidence=95", ProblemCode::Missing),
            ("rule=zero_acceptance;confidence=100;share=5", ProblemCode::OutOfRange),
            ("rule=zero_acceptance;confidence=95;share=5;seed=-1", ProblemCode::OutOfRange),
        ] {
            assert_eq!(PlanSaid::parse(text), Err(problem), "{text}");
        }
    }
}
