//! Headings to meanings: which column is which element's value, uncertainty or limit, and which is identity.
//!
//! The words are data files; this only takes a heading apart. A heading is taken for an element's only if every word
//! in it is understood: `Pb counts` is not a mass fraction of lead.

use std::collections::{BTreeMap, BTreeSet};
use std::sync::OnceLock;

use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::{SigmaMultiple, Unit};
use plumbline_core::substance::Element;

pub use crate::awaited::{NamedElement, element_cell, long_roles};
/// Known words.
pub fn known_words(text: &str) -> usize {
    crate::text_encoding::words_of_result_tables(text)
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum HeadingWord {
    Error,
    ErrorOf(SigmaMultiple),
    Limit,
    Value,
}

fn heading_words() -> &'static BTreeMap<&'static str, HeadingWord> {
    static WORDS: OnceLock<BTreeMap<&'static str, HeadingWord>> = OnceLock::new();
    WORDS.get_or_init(|| {
        rows(include_str!("../data/heading_words.tsv"))
            .filter_map(|(meaning, word)| {
                let meaning = match meaning {
                    "error" => HeadingWord::Error,
                    "limit" => HeadingWord::Limit,
                    "value" => HeadingWord::Value,
                    _ => HeadingWord::ErrorOf(SigmaMultiple::from_text(meaning.strip_prefix("error_")?)?),
                };
                Some((word, meaning))
            })
            .collect()
    })
}

fn element_names() -> &'static BTreeMap<&'static str, Element> {
    static NAMES: OnceLock<BTreeMap<&'static str, Element>> = OnceLock::new();
    NAMES.get_or_init(|| {
        rows(include_str!("../data/element_names.tsv"))
            .filter_map(|(symbol, name)| Some((name, Element::from_symbol(symbol)?)))
            .collect()
    })
}

fn identity_words() -> &'static BTreeMap<&'static str, (Identity, u8)> {
    static WORDS: OnceLock<BTreeMap<&'static str, (Identity, u8)>> = OnceLock::new();
    WORDS.get_or_init(|| {
        rows(include_str!("../data/identity_words.tsv"))
            .filter_map(|(identity, rest)| {
                let (rank, word) = rest.split_once('\t')?;
                Some((word, (Identity::from_code(identity)?, rank.parse().ok()?)))
            })
            .collect()
    })
}

fn rows(text: &'static str) -> impl Iterator<Item = (&'static str, &'static str)> {
    text.lines().filter(|line| !line.starts_with('#')).filter_map(|line| line.split_once('\t'))
}

/// What one heading says by itself.
#[derive(Clone, Debug, PartialEq, Eq)]
enum Said {
    Value(Element, Option<Unit>),
    Error(Option<Element>, ErrorWords),
    Limit(Option<Element>, Option<Unit>),
    Identity(Identity, u8),
    UnitOfMeasure,
    /// An element with one word in brackets where a unit stands, and the word is none.
    ValueInUnknownUnit(Element),
    /// Starts like an element and goes on with words that are not understood.
    NotUnderstood,
    Unknown,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq)]
struct ErrorWords {
    multiple: Option<SigmaMultiple>,
    unit: Option<Unit>,
}

/// The meaning of every column of a header.
pub fn meanings(headings: &[String]) -> Vec<ColumnMeaning> {
    let mut said: Vec<Said> = headings.iter().map(|heading| say(heading)).collect();
    // Beside an X, a bare Y is a coordinate and not yttrium.
    if headings.iter().any(|heading| heading.trim() == "X") {
        for (heading, one) in headings.iter().zip(&mut said) {
            if heading.trim() == "Y" {
                *one = Said::Unknown;
            }
        }
    }
    let mut units: BTreeMap<Element, Option<Unit>> = BTreeMap::new();
    for one in &said {
        if let Said::Value(element, unit) = one {
            units.entry(*element).or_insert(*unit);
        }
    }
    for (heading, at) in headings.iter().zip(1..).skip(1) {
        // Right after a value, a bare U is its uncertainty and not uranium.
        let after_value = matches!(said.get(at - 2), Some(Said::Value(..) | Said::ValueInUnknownUnit(_)));
        if heading.trim() == "U"
            && after_value
            && let Some(one) = said.get_mut(at - 1)
        {
            *one = Said::Error(None, ErrorWords { multiple: None, unit: None });
        }
    }
    // Bare error columns belong to the value right before them. Where one stands elsewhere, the order of all of them
    // is a guess, and a wrong pair would clear what it should not.
    let bare_in_order = (0..said.len()).all(|at| {
        !matches!(said.get(at), Some(Said::Error(None, _)))
            || at > 0 && matches!(said.get(at - 1), Some(Said::Value(..) | Said::ValueInUnknownUnit(_)))
    });
    let value_before = |at: usize| match at.checked_sub(1).and_then(|before| said.get(before)) {
        Some(Said::Value(element, _)) => Some(*element),
        _ => None,
    };
    let errors_of = |element: Element| {
        (0..said.len())
            .filter(|at| match said.get(*at) {
                Some(Said::Error(Some(of), _)) => *of == element,
                Some(Said::Error(None, _)) => value_before(*at) == Some(element),
                _ => false,
            })
            .count()
    };
    let mut columns: Vec<ColumnMeaning> = Vec::with_capacity(headings.len());
    let mut taken = Taken::default();
    for (at, (heading, one)) in headings.iter().zip(&said).enumerate() {
        let (role, evidence) = match one {
            Said::Value(element, unit) => taken.first(&mut |taken| taken.values.insert(*element), || {
                (ColumnRole::Value { element: *element, oxide: None, unit: *unit }, Evidence::ElementHeading)
            }),
            // Only where no other column is that element's in a known unit or none.
            Said::ValueInUnknownUnit(element) if !units.contains_key(element) => {
                taken.first(&mut |taken| taken.values.insert(*element), || {
                    (
                        ColumnRole::Value { element: *element, oxide: None, unit: None },
                        Evidence::UnitNotUnderstood,
                    )
                })
            }
            Said::Error(element, words) => {
                let evidence =
                    if element.is_some() { Evidence::ElementHeading } else { Evidence::FollowsElement };
                let bare = if bare_in_order { value_before(at) } else { None };
                match element.or(bare).filter(|element| units.contains_key(element)) {
                    Some(element) => taken.first(&mut |taken| taken.errors.insert(element), || {
                        let (unit, clear) = error_unit(words.unit, units.get(&element).copied().flatten());
                        // Two errors of one element: which one is meant can't be told.
                        let clear = clear && errors_of(element) == 1;
                        let error = ErrorKind { unit, clear, relative: false, multiple: words.multiple };
                        (ColumnRole::Error { element, oxide: None, error }, evidence)
                    }),
                    None => (ColumnRole::Unused, Evidence::WordsNotUnderstood),
                }
            }
            Said::Limit(element, unit) => {
                // Right after the value, or after the value's own error.
                let bare = value_before(at).or_else(|| {
                    match at.checked_sub(1).and_then(|before| said.get(before)) {
                        Some(Said::Error(Some(element), _)) => Some(*element),
                        Some(Said::Error(None, _)) if bare_in_order => value_before(at - 1),
                        _ => None,
                    }
                });
                match element.or(bare).filter(|element| units.contains_key(element)) {
                    Some(element) => taken.first(&mut |taken| taken.limits.insert(element), || {
                        let unit = unit.or(units.get(&element).copied().flatten());
                        (ColumnRole::DetectionLimit { element, oxide: None, unit }, Evidence::ElementHeading)
                    }),
                    None => (ColumnRole::Unused, Evidence::WordsNotUnderstood),
                }
            }
            Said::Identity(identity, rank) => {
                let best = said.iter().enumerate().find(|(other, said)| {
                    matches!(said, Said::Identity(same, other_rank)
                        if same == identity && (*other_rank, *other) < (*rank, at))
                });
                match best {
                    None => (ColumnRole::Identity(*identity), Evidence::KnownHeading),
                    Some(_) => (ColumnRole::Unused, Evidence::AlreadyTaken),
                }
            }
            Said::UnitOfMeasure => (ColumnRole::UnitOfMeasure, Evidence::KnownHeading),
            Said::NotUnderstood | Said::ValueInUnknownUnit(_) => {
                (ColumnRole::Unused, Evidence::WordsNotUnderstood)
            }
            Said::Unknown => (ColumnRole::Unused, Evidence::NotKnown),
        };
        columns.push(ColumnMeaning { column: at as u32 + 1, heading: heading.clone(), role, evidence });
    }
    columns
}

#[derive(Default)]
struct Taken {
    values: BTreeSet<Element>,
    errors: BTreeSet<Element>,
    limits: BTreeSet<Element>,
}

impl Taken {
    fn first(
        &mut self,
        claim: &mut dyn FnMut(&mut Taken) -> bool,
        role: impl FnOnce() -> (ColumnRole, Evidence),
    ) -> (ColumnRole, Evidence) {
        if claim(self) { role() } else { (ColumnRole::Unused, Evidence::AlreadyTaken) }
    }
}

/// The unit of an uncertainty: its own, else its value's. A percent sign beside a value in another unit may mean
/// relative percent, which would be a different number: it can't be told.
fn error_unit(own: Option<Unit>, value: Option<Unit>) -> (Option<Unit>, bool) {
    match (own, value) {
        (None, value) => (value, true),
        (Some(Unit::Percent), value) if value != Some(Unit::Percent) => (None, false),
        (own, _) => (own, true),
    }
}

/// The element whose value a heading names, whatever else the header holds.
pub fn value_element(heading: &str) -> Option<Element> {
    match say(heading) {
        Said::Value(element, _) => Some(element),
        _ => None,
    }
}

/// True where a cell names an element by its symbol, as a word of its own.
pub fn names_an_element(cell: &str) -> bool {
    tokens(cell).iter().any(|token| token.len() == 2 && Element::from_symbol(token).is_some())
}

/// How many element values a header would give; zero for a row that is no header.
pub fn element_columns(columns: &[ColumnMeaning]) -> usize {
    columns.iter().filter(|column| matches!(column.role, ColumnRole::Value { .. })).count()
}

/// True where every element of a header is named by a bare word that a sentence may hold too (`lead`, `tin`).
pub fn only_bare_names(columns: &[ColumnMeaning]) -> bool {
    let mut values = columns.iter().filter_map(|column| match column.role {
        ColumnRole::Value { element, unit, .. } => Some((element, unit, column.heading.trim())),
        _ => None,
    });
    element_columns(columns) > 0
        && values.all(|(element, unit, heading)| unit.is_none() && !heading.contains(element.symbol()))
}

/// The unit words of a row below the header, or nothing where the row is no unit row.
///
/// A unit row holds unit words (or nothing) in every element column, and at least one.
pub fn unit_row(columns: &[ColumnMeaning], cells: &[&str]) -> Option<Vec<Option<Unit>>> {
    let mut any = false;
    let mut units = vec![None; columns.len()];
    for (column, unit) in columns.iter().zip(&mut units) {
        let cell = cells.get(column.column as usize - 1).copied().unwrap_or("").trim();
        let measured = matches!(
            column.role,
            ColumnRole::Value { .. } | ColumnRole::Error { .. } | ColumnRole::DetectionLimit { .. }
        );
        if measured && !cell.is_empty() {
            *unit = Some(Unit::from_word(cell.trim_matches(['(', ')', '[', ']']))?);
            any = true;
        }
    }
    any.then_some(units)
}

/// Puts the units of a unit row into columns that state none.
pub fn apply_unit_row(columns: &mut [ColumnMeaning], units: &[Option<Unit>]) {
    let mut values = BTreeMap::new();
    for (column, stated) in columns.iter_mut().zip(units) {
        if let ColumnRole::Value { element, unit, .. } = &mut column.role {
            *unit = unit.or(*stated);
            values.insert(*element, *unit);
        }
    }
    for (column, stated) in columns.iter_mut().zip(units) {
        match &mut column.role {
            ColumnRole::Error { element, error, .. } if error.unit.is_none() && error.clear => {
                let value = values.get(element).copied().flatten();
                (error.unit, error.clear) = error_unit(*stated, value);
            }
            ColumnRole::DetectionLimit { element, unit, .. } => {
                *unit = unit.or(*stated).or(values.get(element).copied().flatten());
            }
            _ => {}
        }
    }
}

fn say(heading: &str) -> Said {
    let folded: String =
        heading.chars().filter(|c| c.is_alphanumeric()).flat_map(char::to_lowercase).collect();
    if ["units", "unitofmeasure", "uom", "measuringunit"].contains(&folded.as_str()) {
        return Said::UnitOfMeasure;
    }
    let tokens = tokens(heading);
    let mut by_element = say_of_tokens(&tokens);
    if by_element == Said::NotUnderstood
        && let [symbol, _] = &tokens[..]
        && let Some(element) = element_of(symbol)
        && heading.trim_end().ends_with([')', ']'])
    {
        by_element = Said::ValueInUnknownUnit(element);
    }
    if !matches!(by_element, Said::Unknown | Said::NotUnderstood) {
        return by_element;
    }
    match identity_words().get(folded.as_str()) {
        Some((identity, rank)) => Said::Identity(*identity, *rank),
        None => by_element,
    }
}

fn say_of_tokens(tokens: &[String]) -> Said {
    let elements: Vec<usize> = (0..tokens.len())
        .filter(|at| tokens.get(*at).is_some_and(|token| element_of(token).is_some()))
        .collect();
    // `Lead (Pb)` names one element twice.
    let same = elements.windows(2).all(|pair| {
        let of = |at: Option<&usize>| at.and_then(|at| tokens.get(*at)).and_then(|token| element_of(token));
        of(pair.first()) == of(pair.get(1))
    });
    if elements.len() > 1 && same {
        let once: Vec<String> = tokens
            .iter()
            .enumerate()
            .filter(|(at, _)| !elements.get(1..).is_some_and(|others| others.contains(at)))
            .map(|(_, token)| token.clone())
            .collect();
        return say_of_tokens(&once);
    }
    // `U Pb` is the uncertainty of lead, `U ppm` is uranium: with two symbols, a U beside another is the word.
    let at = match elements[..] {
        [] => None,
        [one] => Some(one),
        [first, second] if tokens.get(first).is_some_and(|token| token == "U") => Some(second),
        [first, second] if tokens.get(second).is_some_and(|token| token == "U") => Some(first),
        _ => return Said::NotUnderstood,
    };
    let (mut unit, mut error, mut multiple, mut limit) = (None, false, None, false);
    let rest: Vec<&str> = tokens
        .iter()
        .enumerate()
        .filter(|(other, _)| Some(*other) != at)
        .map(|(_, token)| token.as_str())
        .collect();
    let mut next = 0;
    while next < rest.len() {
        let joined = |length: usize| rest.get(next..next + length).map(<[&str]>::concat);
        let found = (1..=3).rev().find_map(|length| {
            let word = joined(length)?;
            let lower = word.to_lowercase();
            if let Some(found) = Unit::from_word(&lower) {
                return Some((length, Ok(found)));
            }
            heading_words().get(lower.as_str()).map(|word| (length, Err(*word)))
        });
        match found {
            Some((length, Ok(word))) if unit.is_none() => {
                unit = Some(word);
                next += length;
            }
            Some((length, Err(HeadingWord::Error))) => {
                error = true;
                next += length;
            }
            Some((length, Err(HeadingWord::ErrorOf(stated)))) => {
                (error, multiple) = (true, Some(stated));
                next += length;
            }
            Some((length, Err(HeadingWord::Limit))) => {
                limit = true;
                next += length;
            }
            Some((length, Err(HeadingWord::Value))) => next += length,
            _ => {
                let like_element = at == Some(0) || elements.first() == Some(&0);
                return if like_element { Said::NotUnderstood } else { Said::Unknown };
            }
        }
    }
    let element = at.and_then(|at| tokens.get(at)).and_then(|token| element_of(token));
    match (element, error, limit) {
        (_, true, true) => Said::NotUnderstood,
        (element, true, false) => Said::Error(element, ErrorWords { multiple, unit }),
        (element, false, true) => Said::Limit(element, unit),
        (Some(element), false, false) => Said::Value(element, unit),
        (None, false, false) => Said::Unknown,
    }
}

fn element_of(token: &str) -> Option<Element> {
    // Past uranium nothing is measured, and `No` is a number before it is nobelium.
    Element::from_symbol(token)
        .filter(|element| element.atomic_number() <= 92)
        .or_else(|| element_names().get(token.to_lowercase().as_str()).copied())
}

/// Takes a heading apart at spaces, brackets and underscores; a sign glued to a symbol (`Pb%`, `Pb±`) is taken off.
fn tokens(heading: &str) -> Vec<String> {
    let mut tokens = Vec::new();
    for word in heading
        .split(|c: char| c.is_whitespace() || matches!(c, '(' | ')' | '[' | ']' | '_' | ',' | ';' | ':'))
    {
        let glued = ["%", "±", "+/-"].iter().find_map(|sign| {
            let before = word.strip_suffix(sign)?;
            element_of(before).map(|_| (before, *sign))
        });
        match glued {
            Some((before, sign)) => tokens.extend([before.to_owned(), sign.to_owned()]),
            None if word.contains('-')
                && word.split('-').next().is_some_and(|first| element_of(first).is_some()) =>
            {
                tokens.extend(word.split('-').filter(|part| !part.is_empty()).map(str::to_owned));
            }
            None if word.contains('.')
                && word.split('.').next().is_some_and(|first| element_of(first).is_some()) =>
            {
                tokens.extend(word.split('.').filter(|part| !part.is_empty()).map(str::to_owned));
            }
            None if word.is_empty() => {}
            None => tokens.push(word.to_owned()),
        }
    }
    tokens
}

#[cfg(test)]
mod tests {
    use super::*;

    fn role(heading: &str) -> Said {
        say(heading)
    }

    fn multiple(text: &str) -> Option<SigmaMultiple> {
        SigmaMultiple::from_text(text)
    }

    #[test]
    fn an_element_with_its_unit_is_a_value() {
        let pb = Element::PB;
        for (heading, unit) in [
            ("Pb", None),
            ("Pb (ppm)", Some(Unit::MgPerKg)),
            ("Pb mg/kg", Some(Unit::MgPerKg)),
            ("Pb [%]", Some(Unit::Percent)),
            ("Pb_ppm", Some(Unit::MgPerKg)),
            ("Pb wt %", Some(Unit::Percent)),
            ("Pb-ppm", Some(Unit::MgPerKg)),
            ("Pb%", Some(Unit::Percent)),
            ("Lead (mg/kg)", Some(Unit::MgPerKg)),
            ("Pb Concentration", None),
            (" Pb  µg/g ", Some(Unit::MgPerKg)),
        ] {
            assert_eq!(role(heading), Said::Value(pb, unit), "{heading}");
        }
        assert_eq!(role("U ppm"), Said::Value(Element::from_symbol("U").unwrap(), Some(Unit::MgPerKg)));
    }

    #[test]
    fn an_element_with_an_error_word_is_an_uncertainty() {
        let pb = Some(Element::PB);
        for (heading, stated, unit) in [
            ("Pb Error", None, None),
            ("Pb 2s (ppm)", multiple("2"), Some(Unit::MgPerKg)),
            ("Pb u (1s)", multiple("1"), None),
            ("Pb +/-", None, None),
            ("Pb ± 3σ", multiple("3"), None),
            ("Pb U k=2", multiple("2"), None),
            ("U Pb", None, None),
            ("u(Pb)", None, None),
            ("Pb SD", multiple("1"), None),
            ("Pb_err_2s", multiple("2"), None),
        ] {
            assert_eq!(role(heading), Said::Error(pb, ErrorWords { multiple: stated, unit }), "{heading}");
        }
        assert_eq!(role("+/-"), Said::Error(None, ErrorWords { multiple: None, unit: None }));
        assert_eq!(role("Pb LOD"), Said::Limit(pb, None));
    }

    #[test]
    fn a_heading_with_words_not_understood_is_no_mass_fraction() {
        for heading in ["Pb counts", "Pb (cps) net", "Pb Ka area", "Cr(VI) ppm", "Pb pass/fail", "Cd z-score"]
        {
            assert_eq!(role(heading), Said::NotUnderstood, "{heading}");
        }
        for heading in ["Cr2O3", "SiO2", "element", "PM2.5", "FeO Error", "Sulfate"] {
            assert_eq!(role(heading), Said::Unknown, "{heading}");
        }
    }

    #[test]
    fn a_unit_that_is_not_known_keeps_the_column_and_loses_to_a_known_one() {
        let headings: Vec<String> =
            ["Pb (cps)", "Cr(VI)", "Cr (ppm)"].iter().map(|h| (*h).to_owned()).collect();
        let columns = meanings(&headings);
        assert_eq!(columns[0].role, ColumnRole::Value { element: Element::PB, oxide: None, unit: None });
        assert_eq!(columns[0].evidence, Evidence::UnitNotUnderstood);
        assert_eq!(columns[1].role, ColumnRole::Unused);
        assert_eq!(
            columns[2].role,
            ColumnRole::Value { element: Element::CR, oxide: None, unit: Some(Unit::MgPerKg) }
        );
    }

    #[test]
    fn identity_words_are_known_by_rank() {
        let headings: Vec<String> = ["Reading No", "SAMPLE", "Lot", "Units", "Pb"]
            .iter()
            .map(|heading| (*heading).to_owned())
            .collect();
        let columns = meanings(&headings);
        assert_eq!(columns[0].role, ColumnRole::Unused);
        assert_eq!(columns[0].evidence, Evidence::AlreadyTaken);
        assert_eq!(columns[1].role, ColumnRole::Identity(Identity::Id));
        assert_eq!(columns[2].role, ColumnRole::Identity(Identity::Lot));
        assert_eq!(columns[3].role, ColumnRole::UnitOfMeasure);
        assert_eq!(element_columns(&columns), 1);
    }

    #[test]
    fn a_bare_error_heading_belongs_to_the_element_before_it() {
        let headings: Vec<String> =
            ["Pb (ppm)", "+/-", "Cd %", "err"].iter().map(|h| (*h).to_owned()).collect();
        let columns = meanings(&headings);
        assert_eq!(
            columns[1].role,
            ColumnRole::Error {
                element: Element::PB,
                oxide: None,
                error: ErrorKind { unit: Some(Unit::MgPerKg), clear: true, relative: false, multiple: None }
            }
        );
        assert_eq!(
            columns[3].role,
            ColumnRole::Error {
                element: Element::CD,
                oxide: None,
                error: ErrorKind { unit: Some(Unit::Percent), clear: true, relative: false, multiple: None }
            }
        );
    }

    #[test]
    fn a_bare_error_heading_that_stands_elsewhere_is_paired_with_nothing() {
        for headings in [
            vec!["Pb mg/kg", "Cr2O3 %", "±"],
            vec!["Pb", "Cd", "±", "±"],
            vec!["±", "Cd mg/kg", "±", "Pb mg/kg"],
            vec!["Br mg/kg", "Operator", "Error"],
        ] {
            let headings: Vec<String> = headings.into_iter().map(str::to_owned).collect();
            let paired =
                meanings(&headings).iter().any(|column| matches!(column.role, ColumnRole::Error { .. }));
            assert!(!paired, "{headings:?}");
        }
    }

    #[test]
    fn a_legal_limit_is_no_detection_limit() {
        assert_eq!(role("Pb limit"), Said::NotUnderstood);
        assert_eq!(role("Limit"), Said::Unknown);
        assert_eq!(role("Pb detection limit"), Said::Limit(Some(Element::PB), None));
        assert_eq!(role("Lead (Pb) mg/kg"), Said::Value(Element::PB, Some(Unit::MgPerKg)));
    }

    #[test]
    fn a_percent_beside_mg_per_kg_may_be_relative_and_is_not_guessed() {
        let headings: Vec<String> = ["Pb ppm", "Pb error %"].iter().map(|h| (*h).to_owned()).collect();
        assert_eq!(
            meanings(&headings)[1].role,
            ColumnRole::Error {
                element: Element::PB,
                oxide: None,
                error: ErrorKind { unit: None, clear: false, relative: false, multiple: None }
            }
        );
    }

    #[test]
    fn a_unit_row_gives_units_to_columns_that_state_none() {
        let headings: Vec<String> =
            ["Sample", "Pb", "Pb err", "Cd"].iter().map(|h| (*h).to_owned()).collect();
        let mut columns = meanings(&headings);
        let units = unit_row(&columns, &["", "ppm", "", "%"]).unwrap();
        apply_unit_row(&mut columns, &units);
        assert_eq!(
            columns[1].role,
            ColumnRole::Value { element: Element::PB, oxide: None, unit: Some(Unit::MgPerKg) }
        );
        assert!(columns[2].role.unit() == Some(Unit::MgPerKg) && columns[2].role.error().is_some());
        assert!(unit_row(&columns, &["", "12", "", "%"]).is_none());
    }
}
