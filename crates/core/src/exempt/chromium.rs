//! Hexavalent chromium in a coating on metal, by area: three results and never an amount in mg/kg.

use crate::data_file::{DataTable, Placed, ProblemCode, Reader};
use crate::fields;
use crate::quantity::{DecimalMark, Number, Rounding};
use crate::reading::codes;

/// A mass per area in millionths of ug/cm2.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct AreaMass(i64);

/// The units a mass per area is written in.
const AREA_UNITS: [&str; 4] = ["ug/cm2", "ug/cm²", "µg/cm2", "µg/cm²"];

impl AreaMass {
    /// Reads `0.08 ug/cm2`. No number finer than a millionth of ug/cm2 is kept.
    ///
    /// # Errors
    /// [`ProblemCode::UnknownUnit`], [`ProblemCode::NotAQuantity`], or [`ProblemCode::OutOfRange`] below zero.
    pub fn parse(text: &str) -> Result<AreaMass, ProblemCode> {
        let text = text.trim();
        let split = text.find(|c: char| !c.is_ascii_digit() && !".,-+".contains(c)).unwrap_or(text.len());
        let (number, unit) = text.split_at(split);
        // Two letters look alike: the micro sign and the Greek mu.
        let unit = unit.trim().replace('\u{3bc}', "\u{b5}");
        if !AREA_UNITS.contains(&unit.as_str()) {
            return Err(ProblemCode::UnknownUnit);
        }
        let mark = if number.contains(',') { DecimalMark::Comma } else { DecimalMark::Point };
        let number = Number::parse(number.as_bytes(), mark).map_err(|_| ProblemCode::NotAQuantity)?;
        match number.scaled(6, Rounding::Nearest) {
            Some(millionths @ 0..) => Ok(AreaMass(millionths)),
            _ => Err(ProblemCode::OutOfRange),
        }
    }

    /// In ug/cm2, for JSON numbers; never for a comparison.
    pub fn to_ug_per_cm2(self) -> f64 {
        self.0 as f64 / 1e6
    }
}

codes! {
    /// What a test by area says of the coating.
    AreaResult {
        /// No Cr(VI) found.
        Negative => "negative",
        /// Neither; more specimens are needed.
        Inconclusive => "inconclusive",
        /// Cr(VI) is present in the coating.
        Positive => "positive",
    }
}

/// Where "negative" ends and "positive" begins.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AreaRule {
    /// Negative below this.
    pub negative_below: AreaMass,
    /// Positive above this.
    pub positive_above: AreaMass,
    /// Document and edition.
    pub source: String,
    /// Clause.
    pub clause: String,
}

/// A laboratory's result by area, as a person wrote it down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct AreaSaid {
    /// The result, or the bound it lies below.
    pub area: AreaMass,
    /// The laboratory found nothing down to `area`.
    pub below: bool,
    /// The laboratory; empty where nobody said.
    pub laboratory: String,
    /// Its report; empty where nobody said.
    pub report: String,
}

impl AreaSaid {
    /// The fields of its act.
    pub const FIELDS: [&'static str; 3] = ["area", "laboratory", "report"];

    /// Reads `area=0.08 ug/cm2;laboratory=...;report=...`; the area may be `<0.10 ug/cm2`.
    ///
    /// # Errors
    /// What is wrong with it.
    pub fn parse(text: &str) -> Result<AreaSaid, ProblemCode> {
        let found = fields::read(text, &AreaSaid::FIELDS)?;
        let written = fields::field(&found, "area");
        if written.is_empty() {
            return Err(ProblemCode::Missing);
        }
        let (below, number) = written.strip_prefix('<').map_or((false, written), |number| (true, number));
        Ok(AreaSaid {
            area: AreaMass::parse(number)?,
            below,
            laboratory: fields::field(&found, "laboratory").to_owned(),
            report: fields::field(&found, "report").to_owned(),
        })
    }

    /// True where the laboratory and its report are named.
    pub fn is_referenced(&self) -> bool {
        !self.laboratory.is_empty() && !self.report.is_empty()
    }
}

/// Every key of the rule.
pub const AREA_KEYS: [&str; 4] = ["negative_below", "positive_above", "source", "clause"];

impl AreaRule {
    /// Reads the rule. What is wrong is refused with its place, and `None` given.
    pub fn read(reader: &mut Reader<'_>, table: DataTable<'_>) -> Option<AreaRule> {
        reader.only(table, &AREA_KEYS);
        let [negative, positive, source, clause] = AREA_KEYS.map(|key| reader.text(table, key));
        for cited in [&source, &clause].into_iter().flatten().filter(|cited| cited.get().trim().is_empty()) {
            reader.refuse(cited.at, ProblemCode::NoSource, cited.get());
        }
        let mut area = |written: &Option<Placed<'_>>| {
            let written = written.as_ref()?;
            let read = AreaMass::parse(written.get());
            read.map_err(|code| reader.refuse(written.at, code, written.get())).ok()
        };
        let (negative_below, positive_above) = (area(&negative)?, area(&positive)?);
        if negative_below > positive_above {
            reader.refuse(table.at, ProblemCode::BandUpsideDown, negative?.get());
        }
        Some(AreaRule {
            negative_below,
            positive_above,
            source: source?.text.into_owned(),
            clause: clause?.text.into_owned(),
        })
    }

    /// The result of a test by area.
    ///
    /// # Source
    /// IEC 62321-7-1:2015: "below", "between" and "above"; both ends belong to "inconclusive" (derived). Of a result
    /// below a bound only a bound that is itself not above `negative_below` is negative (our own reading).
    pub fn judge(&self, said: &AreaSaid) -> AreaResult {
        let negative =
            if said.below { said.area <= self.negative_below } else { said.area < self.negative_below };
        if negative {
            AreaResult::Negative
        } else if said.area > self.positive_above && !said.below {
            AreaResult::Positive
        } else {
            AreaResult::Inconclusive
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_rule_by_area_is_read_whole_or_refused() {
        let text = "schema = \"a/1\"\nnegative_below = \"0.10 ug/cm2\"\npositive_above = \"0.13 ug/cm2\"\n\
                    source = \"s\"\nclause = \"c\"\n";
        let read = |text: &str| {
            crate::data_file::read(text, "a/1", |reader, root| {
                let known = ["schema"].into_iter().chain(AREA_KEYS).collect::<Vec<_>>();
                let found = AreaRule::read(reader, root);
                reader.only(root, &known);
                found
            })
        };
        // The schema key of this test's file is no key of the rule.
        let of = |text: &str| {
            let problems = read(text).unwrap_err();
            problems.iter().skip(1).map(|problem| (problem.code, problem.line)).collect::<Vec<_>>()
        };
        assert_eq!(of(text), []);
        assert_eq!(of(&text.replace("0.10 ug", "0.13 ug")), []);
        assert_eq!(of(&text.replace("0.10 ug", "0.14 ug")), [(ProblemCode::BandUpsideDown, 1)]);
        assert_eq!(of(&text.replace("0.10 ug", "0.10 mg")), [(ProblemCode::UnknownUnit, 2)]);
        assert_eq!(of(&text.replace("\"s\"", "\"\"")), [(ProblemCode::NoSource, 4)]);
        assert_eq!(of(&text.replace("\"c\"", "\" \"")), [(ProblemCode::NoSource, 5)]);
    }

    fn result(area: &str) -> AreaResult {
        let rule = AreaRule {
            negative_below: AreaMass::parse("0.10 ug/cm2").unwrap(),
            positive_above: AreaMass::parse("0.13 ug/cm2").unwrap(),
            source: String::new(),
            clause: String::new(),
        };
        rule.judge(&AreaSaid::parse(&format!("area={area} ug/cm2")).unwrap())
    }

    /// IEC 62321-7-1:2015: below 0.10 negative, 0.10 to 0.13 inconclusive, above 0.13 positive.
    #[test]
    fn both_ends_are_inconclusive() {
        for (area, expected) in [
            ("0", AreaResult::Negative),
            ("0.08", AreaResult::Negative),
            ("0.099999", AreaResult::Negative),
            ("0.10", AreaResult::Inconclusive),
            ("0,12", AreaResult::Inconclusive),
            ("0.13", AreaResult::Inconclusive),
            ("0.130001", AreaResult::Positive),
            ("2", AreaResult::Positive),
            ("<0.05", AreaResult::Negative),
            ("<0.10", AreaResult::Negative),
            ("< 0.100001", AreaResult::Inconclusive),
            ("<0.2", AreaResult::Inconclusive),
        ] {
            assert_eq!(result(area), expected, "{area}");
        }
    }

    #[test]
    fn a_result_by_area_needs_its_unit() {
        for unit in ["ug/cm2", " ug/cm²", " µg/cm2", " μg/cm²"] {
            assert_eq!(AreaMass::parse(&format!("0.08{unit}")), Ok(AreaMass(80_000)), "{unit}");
        }
        for (text, problem) in [
            ("0.08", ProblemCode::UnknownUnit),
            ("0.08 mg/kg", ProblemCode::UnknownUnit),
            ("ug/cm2", ProblemCode::NotAQuantity),
            ("0.0.8 ug/cm2", ProblemCode::NotAQuantity),
            ("-0.08 ug/cm2", ProblemCode::OutOfRange),
            ("99999999999999999999 ug/cm2", ProblemCode::OutOfRange),
        ] {
            assert_eq!(AreaMass::parse(text), Err(problem), "{text}");
        }
        assert!((AreaMass(80_000).to_ug_per_cm2() - 0.08).abs() < 1e-12);
    }

    #[test]
    fn a_result_is_referenced_by_laboratory_and_report() {
        let said = |text| AreaSaid::parse(text).unwrap();
        assert!(said("area=0.08 ug/cm2;laboratory=Fir Works;report=7").is_referenced());
        assert!(!said("area=0.08 ug/cm2;laboratory=Fir Works").is_referenced());
        assert!(!said("area=0.08 ug/cm2;report=7").is_referenced());
        assert_eq!(AreaSaid::parse("report=7"), Err(ProblemCode::Missing));
        assert_eq!(AreaSaid::parse("area=0.08 ug/cm2;odd=7"), Err(ProblemCode::UnknownName));
        assert_eq!(AreaSaid::parse("area=0.08 stone"), Err(ProblemCode::UnknownUnit));
    }
}
