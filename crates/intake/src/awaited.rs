//! Stand-ins until the branches are merged.
use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::oxide::Oxide;
use plumbline_core::quantity::Unit;
use plumbline_core::reading::StatedUse;
use plumbline_core::substance::Element;
#[derive(Clone, Copy, Debug)]
pub struct NamedElement {
    pub element: Element,
    pub oxide: Option<Oxide>,
    pub unit: Option<Unit>,
}
pub fn element_cell(text: &str) -> Option<NamedElement> {
    let text = text.trim();
    Element::from_symbol(text).map(|element| NamedElement { element, oxide: None, unit: None }).or_else(
        || {
            Oxide::from_formula(text).map(|oxide| NamedElement {
                element: oxide.element(),
                oxide: Some(oxide),
                unit: None,
            })
        },
    )
}
pub fn long_roles(headings: &[String], element_column: usize) -> Vec<ColumnMeaning> {
    headings
        .iter()
        .enumerate()
        .map(|(at, heading)| {
            let role = match heading.to_lowercase().as_str() {
                _ if at == element_column => ColumnRole::ElementName,
                "value" | "result" => ColumnRole::AnyValue { unit: None },
                "error" | "error_or_lod" => ColumnRole::AnyError { error: ErrorKind::PLAIN },
                "below_lod" => ColumnRole::BelowMark,
                "sigma_of_error" => ColumnRole::ErrorMultiple,
                "unit" | "units" => ColumnRole::UnitOfMeasure,
                "reading" => ColumnRole::Identity(plumbline_core::identity::Identity::Id),
                _ => ColumnRole::Unused,
            };
            ColumnMeaning {
                column: at as u32 + 1,
                heading: heading.clone(),
                role,
                evidence: Evidence::KnownHeading,
            }
        })
        .collect()
}
pub struct StatedLine {
    pub key: String,
    pub value: String,
    pub used_as: Option<StatedUse>,
}
pub fn stated(_cells: &[&str]) -> Option<StatedLine> {
    None
}
