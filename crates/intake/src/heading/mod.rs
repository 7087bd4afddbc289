//! Headings to meanings: which column is which element's value, uncertainty or limit, and which is identity.
//!
//! The words are data files (`crates/intake/data`): a synonym, or a word of another language, is one line there. The
//! modules here only take a heading apart (`tokens`), look its words up (`vocabulary`, `named`), say what the
//! heading says by itself (`said`) and weigh it against what stands around it (`header`, `long`).
//!
//! Isotopes (`Pb208`, `208Pb`) are taken for their element where a unit of mass fraction or none stands beside them,
//! as mass spectrometry reports one element through one of its isotopes; percent of an isotope is a share of isotopes
//! and is not understood, and two isotopes of one element contest each other.

pub(crate) mod folding;
mod header;
mod known_words;
mod long;
mod named;
pub(crate) mod said;
mod tokens;
mod units;
pub(crate) mod vocabulary;

pub use header::{
    element_columns, meanings, names_a_reading_and_a_unit, names_an_element, only_bare_names, value_element,
};
pub use known_words::known_words;
pub use long::{NamedElement, element_cell, long_roles, says_a_value};
pub use units::{apply_unit_row, unit_row};

#[cfg(test)]
mod tests;
