//! What a column of a table was taken for, why, and how a person writes it down.

use std::fmt::Write;

use crate::identity::Identity;
use crate::oxide::Oxide;
use crate::quantity::{SigmaMultiple, Unit};
use crate::substance::Element;

/// What a column of the source was taken for, and why.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct ColumnMeaning {
    /// Its position, 1-based; in a table turned on its side, the position of the row among the rows that were turned.
    pub column: u32,
    /// Its heading as written.
    pub heading: String,
    /// What it was taken for.
    pub role: ColumnRole,
    /// Why: a code of the evidence, worded in the catalogue.
    pub evidence: Evidence,
}

/// What a column holds.
///
/// The roles `Any…` stand in a long table, where each row names its element in a cell.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ColumnRole {
    /// An element's value.
    Value {
        /// The element.
        element: Element,
        /// The oxide the numbers are mass fractions of; `None` for the element itself.
        oxide: Option<Oxide>,
        /// The unit, where the heading or the unit row states it.
        unit: Option<Unit>,
    },
    /// An element's printed uncertainty.
    Error {
        /// The element.
        element: Element,
        /// The oxide the numbers are mass fractions of.
        oxide: Option<Oxide>,
        /// Unit, multiple and kind.
        error: ErrorKind,
    },
    /// An element's detection limit.
    DetectionLimit {
        /// The element.
        element: Element,
        /// The oxide the numbers are mass fractions of.
        oxide: Option<Oxide>,
        /// The unit, the value's own where none is stated.
        unit: Option<Unit>,
    },
    /// The element the row speaks of.
    ElementName,
    /// The value of the row's element.
    AnyValue {
        /// The unit, where the heading states it.
        unit: Option<Unit>,
    },
    /// The printed uncertainty of the row's element.
    AnyError {
        /// Unit, multiple and kind.
        error: ErrorKind,
    },
    /// The detection limit of the row's element.
    AnyLimit {
        /// The unit, the value's own where none is stated.
        unit: Option<Unit>,
    },
    /// A mark that says the row's element was below detection: `1`, `yes`, `<`; its limit then stands in the limit
    /// or error column, else in the value column.
    BelowMark,
    /// How many sigmas the uncertainty of the row stands for.
    ErrorMultiple,
    /// Time of day beside a date.
    TimeOfDay,
    /// Identity of the reading.
    Identity(Identity),
    /// The unit of measure of the row's values.
    UnitOfMeasure,
    /// Not used.
    Unused,
}

/// How a printed uncertainty is stated.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct ErrorKind {
    /// The unit, the value's own where none is stated.
    pub unit: Option<Unit>,
    /// False where the unit can't be told: percent beside another unit may mean percent of the value.
    pub clear: bool,
    /// Percent of the value itself.
    pub relative: bool,
    /// How many sigmas; `None` where nobody stated it.
    pub multiple: Option<SigmaMultiple>,
}

impl ErrorKind {
    /// An uncertainty in the value's own unit with nothing stated.
    pub const PLAIN: ErrorKind = ErrorKind { unit: None, clear: true, relative: false, multiple: None };
}

impl ColumnRole {
    /// The code used in findings.
    pub const fn code(&self) -> &'static str {
        match self {
            ColumnRole::Value { .. } | ColumnRole::AnyValue { .. } => "value",
            ColumnRole::Error { .. } | ColumnRole::AnyError { .. } => "uncertainty",
            ColumnRole::DetectionLimit { .. } | ColumnRole::AnyLimit { .. } => "detection_limit",
            ColumnRole::ElementName => "element",
            ColumnRole::BelowMark => "below_mark",
            ColumnRole::ErrorMultiple => "error_multiple",
            ColumnRole::TimeOfDay => "time_of_day",
            ColumnRole::Identity(identity) => identity.code(),
            ColumnRole::UnitOfMeasure => "unit_of_measure",
            ColumnRole::Unused => "unused",
        }
    }

    /// The codes of roles that are no identity, for the contract's list.
    pub const CODES: [&'static str; 9] = [
        "value",
        "uncertainty",
        "detection_limit",
        "element",
        "below_mark",
        "error_multiple",
        "time_of_day",
        "unit_of_measure",
        "unused",
    ];

    /// True for numbers: values, uncertainties, limits.
    pub const fn is_measured(&self) -> bool {
        matches!(
            self,
            ColumnRole::Value { .. }
                | ColumnRole::Error { .. }
                | ColumnRole::DetectionLimit { .. }
                | ColumnRole::AnyValue { .. }
                | ColumnRole::AnyError { .. }
                | ColumnRole::AnyLimit { .. }
        )
    }

    /// The element and the oxide it is stated as.
    pub const fn of(&self) -> Option<(Element, Option<Oxide>)> {
        match self {
            ColumnRole::Value { element, oxide, .. }
            | ColumnRole::Error { element, oxide, .. }
            | ColumnRole::DetectionLimit { element, oxide, .. } => Some((*element, *oxide)),
            _ => None,
        }
    }

    /// The unit it states.
    pub const fn unit(&self) -> Option<Unit> {
        match self {
            ColumnRole::Value { unit, .. }
            | ColumnRole::DetectionLimit { unit, .. }
            | ColumnRole::AnyValue { unit }
            | ColumnRole::AnyLimit { unit } => *unit,
            ColumnRole::Error { error, .. } | ColumnRole::AnyError { error } => error.unit,
            _ => None,
        }
    }

    /// How its uncertainty is stated, for an uncertainty.
    pub const fn error(&self) -> Option<ErrorKind> {
        match self {
            ColumnRole::Error { error, .. } | ColumnRole::AnyError { error } => Some(*error),
            _ => None,
        }
    }

    /// The role as a person or a mapping file writes it: `value Pb mg/kg`, `value Cr2O3 %`, `uncertainty Pb k=2`,
    /// `uncertainty Pb relative`, `uncertainty Pb % k=1.96`, `detection_limit Pb`, `value` (long table), `lot`,
    /// `unused`.
    pub fn to_words(&self) -> String {
        let mut words = self.code().to_owned();
        if let Some((element, oxide)) = self.of() {
            // Writing to a String cannot fail.
            let _ = match oxide {
                Some(oxide) => write!(words, " {oxide}"),
                None => write!(words, " {element}"),
            };
        }
        let error = self.error();
        if error.is_some_and(|error| error.relative) {
            words.push_str(" relative");
        } else if error.is_none_or(|error| error.clear)
            && let Some(unit) = self.unit()
        {
            let _ = write!(words, " {}", unit.sign());
        }
        if let Some(multiple) = error.and_then(|error| error.multiple) {
            let _ = write!(words, " k={multiple}");
        }
        words
    }

    /// Reads what [`ColumnRole::to_words`] writes; `None` for anything else.
    pub fn from_words(text: &str) -> Option<ColumnRole> {
        let mut words = text.split_whitespace();
        let code = words.next()?;
        let measured = matches!(code, "value" | "uncertainty" | "detection_limit");
        if !measured {
            let role = match code {
                "element" => ColumnRole::ElementName,
                "below_mark" => ColumnRole::BelowMark,
                "error_multiple" => ColumnRole::ErrorMultiple,
                "time_of_day" => ColumnRole::TimeOfDay,
                "unit_of_measure" => ColumnRole::UnitOfMeasure,
                "unused" => ColumnRole::Unused,
                _ => ColumnRole::Identity(Identity::from_code(code)?),
            };
            return words.next().is_none().then_some(role);
        }
        let (mut of, mut unit, mut relative, mut multiple) = (None, None, false, None);
        for word in words {
            if of.is_none()
                && let Some(found) = Element::from_symbol(word)
                    .map(|element| (element, None))
                    .or_else(|| Oxide::from_formula(word).map(|oxide| (oxide.element(), Some(oxide))))
            {
                of = Some(found);
            } else if word == "relative" && code == "uncertainty" {
                relative = true;
            } else if let Some(stated) = word.strip_prefix("k=").filter(|_| code == "uncertainty") {
                multiple = Some(SigmaMultiple::from_text(stated)?);
            } else if unit.is_none() && !relative {
                unit = Some(Unit::from_word(word)?);
            } else {
                return None;
            }
        }
        let error = ErrorKind { unit, clear: true, relative, multiple };
        Some(match (code, of) {
            ("value", Some((element, oxide))) => ColumnRole::Value { element, oxide, unit },
            ("value", None) => ColumnRole::AnyValue { unit },
            ("uncertainty", Some((element, oxide))) => ColumnRole::Error { element, oxide, error },
            ("uncertainty", None) => ColumnRole::AnyError { error },
            (_, Some((element, oxide))) => ColumnRole::DetectionLimit { element, oxide, unit },
            (_, None) => ColumnRole::AnyLimit { unit },
        })
    }
}

/// Why a column was taken for what it was.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Evidence {
    /// The heading is an element's symbol or name, with known words beside it.
    ElementHeading,
    /// The heading is an element in another case than chemistry writes (`PB`, `pb`), with others like it beside it.
    ElementInAnotherCase,
    /// The heading is an oxide; its numbers are converted by atomic weights.
    OxideHeading,
    /// A bare error heading right after an element's column.
    FollowsElement,
    /// The heading is a known word for an identity.
    KnownHeading,
    /// Its cells name elements.
    HoldsElements,
    /// A material column that holds only class words.
    ClassWordsOnly,
    /// Its first cells are units of measure.
    HoldsUnits,
    /// A heading that says time, over small numbers that are no dates.
    HoldsSeconds,
    /// The heading names an element and a unit that is not known; its numbers stay text.
    UnitNotUnderstood,
    /// The heading starts like an element but has words that are not understood.
    WordsNotUnderstood,
    /// The same meaning already has a column further left.
    AlreadyTaken,
    /// An oxide of an element that has a column of its own: used only where that column's cell is empty.
    OxideBesideElement,
    /// A person said so.
    Told,
    /// The heading is not known.
    NotKnown,
}

impl Evidence {
    /// The code used in findings and in the catalogue.
    pub const fn code(self) -> &'static str {
        match self {
            Evidence::ElementHeading => "element_heading",
            Evidence::ElementInAnotherCase => "element_in_another_case",
            Evidence::OxideHeading => "oxide_heading",
            Evidence::FollowsElement => "follows_element",
            Evidence::KnownHeading => "known_heading",
            Evidence::HoldsElements => "holds_elements",
            Evidence::ClassWordsOnly => "class_words_only",
            Evidence::HoldsUnits => "holds_units",
            Evidence::HoldsSeconds => "holds_seconds",
            Evidence::UnitNotUnderstood => "unit_not_understood",
            Evidence::WordsNotUnderstood => "words_not_understood",
            Evidence::AlreadyTaken => "already_taken",
            Evidence::OxideBesideElement => "oxide_beside_element",
            Evidence::Told => "told",
            Evidence::NotKnown => "not_known",
        }
    }

    /// How far a person should trust it without looking.
    pub const fn confidence(self) -> Confidence {
        match self {
            Evidence::ElementHeading | Evidence::KnownHeading | Evidence::Told => Confidence::Sure,
            Evidence::ElementInAnotherCase
            | Evidence::OxideHeading
            | Evidence::FollowsElement
            | Evidence::HoldsElements
            | Evidence::ClassWordsOnly
            | Evidence::HoldsUnits
            | Evidence::HoldsSeconds
            | Evidence::OxideBesideElement => Confidence::Likely,
            Evidence::UnitNotUnderstood
            | Evidence::WordsNotUnderstood
            | Evidence::AlreadyTaken
            | Evidence::NotKnown => Confidence::Look,
        }
    }

    /// All of them, for the contract's list.
    pub const ALL: [Evidence; 15] = [
        Evidence::ElementHeading,
        Evidence::ElementInAnotherCase,
        Evidence::OxideHeading,
        Evidence::FollowsElement,
        Evidence::KnownHeading,
        Evidence::HoldsElements,
        Evidence::ClassWordsOnly,
        Evidence::HoldsUnits,
        Evidence::HoldsSeconds,
        Evidence::UnitNotUnderstood,
        Evidence::WordsNotUnderstood,
        Evidence::AlreadyTaken,
        Evidence::OxideBesideElement,
        Evidence::Told,
        Evidence::NotKnown,
    ];
}

/// How far a meaning can be trusted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Confidence {
    /// The heading or a person says so.
    Sure,
    /// It follows from what stands around it.
    Likely,
    /// Nothing was made of it: a person should look.
    Look,
}

impl Confidence {
    /// The code used in findings and in the catalogue.
    pub const fn code(self) -> &'static str {
        match self {
            Confidence::Sure => "sure",
            Confidence::Likely => "likely",
            Confidence::Look => "look",
        }
    }

    /// All of them, for the contract's list.
    pub const ALL: [Confidence; 3] = [Confidence::Sure, Confidence::Likely, Confidence::Look];
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_role_comes_back_from_its_words() {
        for words in [
            "value Pb mg/kg",
            "value Cr2O3 %",
            "value Cd",
            "uncertainty Pb k=2",
            "uncertainty Pb relative k=1.96",
            "uncertainty Br % k=3",
            "detection_limit Hg mg/kg",
            "value",
            "value mg/kg",
            "uncertainty relative",
            "detection_limit",
            "element",
            "below_mark",
            "error_multiple",
            "time_of_day",
            "lot",
            "unit_of_measure",
            "unused",
        ] {
            let role = ColumnRole::from_words(words).unwrap_or_else(|| panic!("{words}"));
            assert_eq!(role.to_words(), words);
        }
        for wrong in
            ["", "value Pb furlongs", "lot 3", "value relative", "unused Pb", "value Pb mg/kg %", "price"]
        {
            assert_eq!(ColumnRole::from_words(wrong), None, "{wrong}");
        }
    }
}
