//! The roles of a long table, where each row names its element in a cell.

use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::Unit;
use plumbline_core::substance::Element;

use super::folding;
use super::header::{self, Spoken};
use super::named::{self, Of};
use super::said::{ErrorWords, Said, say, say_of_tokens};
use super::tokens::{LONGEST_HEADING, tokens};

/// What a cell of a column of elements names.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NamedElement {
    /// The element.
    pub element: Element,
    /// The oxide its numbers are mass fractions of.
    pub oxide: Option<Oxide>,
    /// The unit, where the cell states it.
    pub unit: Option<Unit>,
}

/// What a cell of a column of elements names: `Pb`, `PB`, `lead`, `Lead (Pb)`, `PbO`, `Pb [ppm]`, `鉛`.
///
/// In such a column a symbol may have any case; words that are not understood (`Cr(VI)`, `Pb area`) name nothing.
pub fn element_cell(text: &str) -> Option<NamedElement> {
    let text = text.trim();
    if let Some(element) = named::symbol(text) {
        return Some(NamedElement { element, oxide: None, unit: None });
    }
    let named = |said: Said| match said {
        Said::Value(Of { element, oxide }, unit) => Some(NamedElement { element, oxide, unit }),
        _ => None,
    };
    if let Some(found) = named(say_of_tokens(&tokens(text))) {
        return Some(found);
    }
    if text.len() > LONGEST_HEADING {
        return None;
    }
    let plain = folding::plain(text);
    let end = plain.find(|c: char| !c.is_ascii_alphanumeric()).unwrap_or(plain.len());
    let (run, rest) = plain.split_at(end);
    let (written, _) = named::in_chemistry_case(run)?;
    named(say_of_tokens(&tokens(&format!("{written}{}", rest.to_lowercase()))))
}

/// The meaning of every column of a long table whose column at `element_column` (0-based) was found to hold elements
/// by its cells.
pub fn long_roles(headings: &[String], element_column: usize) -> Vec<ColumnMeaning> {
    roles(headings, header::spoken(headings), element_column, Evidence::HoldsElements)
}

/// True for a heading that says, for whatever element, that its column holds values.
pub fn says_a_value(heading: &str) -> bool {
    matches!(say(heading), Said::AnyValue { .. })
}

/// The column whose heading says that it names elements, where a column of values goes with it.
pub(super) fn element_column(spoken: &[Spoken]) -> Option<usize> {
    let names = spoken.iter().enumerate().filter_map(|(at, one)| match one.said {
        Said::ElementName(rank) => Some((rank, at)),
        _ => None,
    });
    let (_, at) = names.min()?;
    value_column(spoken).map(|_| at)
}

/// The column of the values: one that a word calls so before one that only has a unit, then the one further left.
fn value_column(spoken: &[Spoken]) -> Option<usize> {
    let values = spoken.iter().enumerate().filter_map(|(at, one)| match one.said {
        Said::AnyValue { word, .. } => Some((!word, at)),
        _ => None,
    });
    values.min().map(|(_, at)| at)
}

pub(super) fn roles(
    headings: &[String],
    mut spoken: Vec<Spoken>,
    element_column: usize,
    evidence: Evidence,
) -> Vec<ColumnMeaning> {
    // Where no column is one element's, a U is the uncertainty and not uranium.
    for (heading, one) in headings.iter().zip(&mut spoken) {
        if heading.trim() == "U" {
            one.said = Said::Error(None, ErrorWords::default());
        }
    }
    let spoken = spoken.as_slice();
    let value_column = value_column(spoken);
    let value_unit = match value_column.and_then(|at| spoken.get(at)).map(|one| &one.said) {
        Some(Said::AnyValue { unit, .. }) => *unit,
        _ => None,
    };
    let first = |wanted: &dyn Fn(&Said) -> bool| spoken.iter().position(|one| wanted(&one.said));
    let error_column = first(&|said| matches!(said, Said::Error(None, _)));
    let limit_column = first(&|said| matches!(said, Said::Limit(None, _)));
    let mark_column = first(&|said| *said == Said::BelowMark);
    let multiple_column = first(&|said| *said == Said::ErrorMultiple);
    let errors = spoken.iter().filter(|one| matches!(one.said, Said::Error(None, _))).count();
    headings
        .iter()
        .zip(spoken)
        .enumerate()
        .map(|(at, (heading, one))| {
            let known = |role| (role, Evidence::KnownHeading);
            let once = |column: Option<usize>, role: ColumnRole| {
                if column == Some(at) { known(role) } else { (ColumnRole::Unused, Evidence::AlreadyTaken) }
            };
            let (role, evidence) = match &one.said {
                _ if at == element_column => (ColumnRole::ElementName, evidence),
                Said::AnyValue { unit, .. } => once(value_column, ColumnRole::AnyValue { unit: *unit }),
                Said::Error(None, words) => {
                    let error = header::error_kind(*words, value_unit);
                    let error = ErrorKind { clear: error.clear && errors == 1, ..error };
                    once(error_column, ColumnRole::AnyError { error })
                }
                Said::Limit(None, unit) => {
                    once(limit_column, ColumnRole::AnyLimit { unit: unit.or(value_unit) })
                }
                Said::BelowMark => once(mark_column, ColumnRole::BelowMark),
                Said::ErrorMultiple => once(multiple_column, ColumnRole::ErrorMultiple),
                Said::ElementName(_) => (ColumnRole::Unused, Evidence::AlreadyTaken),
                said => header::identity_role(spoken, at, said),
            };
            ColumnMeaning { column: at as u32 + 1, heading: heading.clone(), role, evidence }
        })
        .collect()
}
