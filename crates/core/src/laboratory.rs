//! A laboratory's confirmatory result for one analyte in one material of one lot.

use crate::data_file::ProblemCode;
use crate::day::Day;
use crate::fields;
use crate::quantity::{self, MassFraction, Sigma, SigmaMultiple};
use crate::reading::codes;

codes! {
    /// What a laboratory determines: a restricted substance itself, or an element that bounds it.
    Analyte {
        /// Cadmium.
        Cd => "Cd",
        /// Lead.
        Pb => "Pb",
        /// Mercury.
        Hg => "Hg",
        /// Total chromium.
        Cr => "Cr",
        /// Hexavalent chromium.
        Cr6 => "Cr6",
        /// Total bromine.
        Br => "Br",
        /// Polybrominated biphenyls.
        Pbb => "PBB",
        /// Polybrominated diphenyl ethers.
        Pbde => "PBDE",
        /// Total chlorine.
        Cl => "Cl",
    }
}

/// The number of a laboratory's result.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LabValue {
    /// A value in mg/kg.
    Number(MassFraction),
    /// Not found; nothing above this limit in mg/kg.
    Below(MassFraction),
}

/// A result as a person enters it.
///
/// # Units
/// mg/kg; U = k u as the laboratory's report states them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LabResult {
    /// What was determined.
    pub analyte: Analyte,
    /// The number.
    pub value: LabValue,
    /// The expanded uncertainty and its k; `None` where the report states none.
    pub expanded: Option<(MassFraction, SigmaMultiple)>,
    /// The part of IEC 62321, or another method: `IEC 62321-5:2013`.
    pub method: String,
    /// The laboratory.
    pub laboratory: String,
    /// The number of its report.
    pub report: String,
    /// The day of the result.
    pub date: Option<Day>,
    /// The day lies after that of the review: a slip, or a report that is not written yet.
    pub dated_ahead: bool,
}

impl LabResult {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 8] =
        ["analyte", "value", "u", "k", "method", "laboratory", "report", "date"];

    /// Reads `analyte=Pb;value=412 mg/kg;u=30 mg/kg;k=2;method=IEC 62321-5:2013;laboratory=...;report=...;date=2026-11-20`.
    /// `value=<5 mg/kg` is a result below a limit. Analyte and value must be there, and k where u is.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<LabResult, ProblemCode> {
        let found = fields::read(text, &LabResult::FIELDS)?;
        let field = |name| fields::field(&found, name);
        let amount = |text| quantity::parse_with_unit(text).map_err(|_| ProblemCode::NotAQuantity);
        let analyte = match field("analyte") {
            "" => return Err(ProblemCode::Missing),
            code => {
                *Analyte::ALL.iter().find(|known| known.code() == code).ok_or(ProblemCode::UnknownName)?
            }
        };
        let value = match field("value") {
            "" => return Err(ProblemCode::Missing),
            text => match text.strip_prefix('<') {
                Some(limit) => LabValue::Below(amount(limit.trim())?),
                None => LabValue::Number(amount(text)?),
            },
        };
        let (LabValue::Number(amount_found) | LabValue::Below(amount_found)) = value;
        if amount_found < MassFraction::ZERO {
            return Err(ProblemCode::OutOfRange);
        }
        let expanded = match (field("u"), field("k")) {
            ("", _) => None,
            (_, "") => return Err(ProblemCode::Missing),
            (u, k) => {
                let (u, k) = (amount(u)?, SigmaMultiple::from_text(k).ok_or(ProblemCode::OutOfRange)?);
                if u <= MassFraction::ZERO || !Sigma::is_possible(u, k) {
                    return Err(ProblemCode::OutOfRange);
                }
                Some((u, k))
            }
        };
        Ok(LabResult {
            analyte,
            value,
            expanded,
            method: field("method").to_owned(),
            laboratory: field("laboratory").to_owned(),
            report: field("report").to_owned(),
            date: match field("date") {
                "" => None,
                day => Some(Day::parse(day).ok_or(ProblemCode::OutOfRange)?),
            },
            dated_ahead: false,
        })
    }

    /// True where method, laboratory, report and day are stated, and the day is not still to come, so that others can look it up.
    pub fn is_traceable(&self) -> bool {
        let texts = [&self.method, &self.laboratory, &self.report];
        texts.iter().all(|text| !text.is_empty()) && self.date.is_some() && !self.dated_ahead
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const LEAD: &str = "analyte=Pb;value=412 mg/kg;u=30 mg/kg;k=2;method=IEC 62321-5:2013;laboratory=Gorse Works;\
                        report=R-1;date=2026-11-20";

    #[test]
    fn a_result_states_value_uncertainty_and_where_it_is_written() {
        let lead = LabResult::parse(LEAD).unwrap();
        assert_eq!(lead.analyte, Analyte::Pb);
        assert!(matches!(lead.value, LabValue::Number(value) if value.to_string() == "412"));
        assert!(lead.is_traceable());
        let below = LabResult::parse("analyte=PBDE;value=< 5 mg/kg").unwrap();
        assert!(matches!(below.value, LabValue::Below(limit) if limit.to_string() == "5"));
        assert!(!below.is_traceable() && below.expanded.is_none());
    }

    #[test]
    fn what_is_no_result_is_refused() {
        for (from, to, problem) in [
            ("analyte=Pb;", "", ProblemCode::Missing),
            ("analyte=Pb", "analyte=Qq", ProblemCode::UnknownName),
            ("value=412 mg/kg", "value=412", ProblemCode::NotAQuantity),
            ("value=412 mg/kg", "value=-1 mg/kg", ProblemCode::OutOfRange),
            ("k=2;", "", ProblemCode::Missing),
            ("u=30 mg/kg", "u=0 mg/kg", ProblemCode::OutOfRange),
            ("date=2026-11-20", "date=20.11.2026", ProblemCode::OutOfRange),
        ] {
            assert_eq!(LabResult::parse(&LEAD.replace(from, to)), Err(problem), "{from} -> {to}");
        }
    }
}
