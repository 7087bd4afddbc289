//! The meaning of every column of a header: what each heading says, weighed against what stands around it.

use plumbline_core::column::{ColumnMeaning, ColumnRole, ErrorKind, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::Unit;
use plumbline_core::substance::{Element, Substance};

use super::long;
use super::named::{self, Casing, Of};
use super::said::{self, ErrorWords, InAnotherCase, Said, say};

/// Elements in another case that a header must have before bare ones are taken for elements.
const COMPANY: usize = 3;

/// Elements from which on a single bare U among them is one more.
const MANY: usize = 8;

/// One heading and how what it says was found.
pub(crate) struct Spoken {
    pub(crate) said: Said,
    /// Its symbol stands in another case than chemistry writes.
    pub(crate) another_case: bool,
}

/// What every heading of a header says, symbols in another case included where the header bears them out.
pub(crate) fn spoken(headings: &[String]) -> Vec<Spoken> {
    let mut spoken: Vec<Spoken> =
        headings.iter().map(|heading| Spoken { said: say(heading), another_case: false }).collect();
    let mut others: Vec<Option<InAnotherCase>> = headings
        .iter()
        .zip(&spoken)
        .map(|(heading, one)| match one.said {
            Said::Unknown | Said::NotUnderstood | Said::AnyValue { .. } => said::say_in_another_case(heading),
            _ => None,
        })
        .collect();
    // Beside an X, a bare Y is a coordinate and not yttrium.
    if headings.iter().any(|heading| heading.trim().eq_ignore_ascii_case("x")) {
        for ((heading, one), other) in headings.iter().zip(&mut spoken).zip(&mut others) {
            if heading.trim().eq_ignore_ascii_case("y") {
                (one.said, *other) = (Said::Unknown, None);
            }
        }
    }
    // `U (k=2)` is uranium's uncertainty only where uranium has a column.
    let uranium = |of: Option<Of>| of.is_some_and(|of| of.element.symbol() == "U");
    if !spoken.iter().any(|one| matches!(one.said, Said::Value(of, _) if uranium(Some(of)))) {
        for one in &mut spoken {
            if let Said::Error(of, _) = &mut one.said
                && uranium(*of)
            {
                *of = None;
            }
        }
    }
    let companies =
        [Casing::Upper, Casing::Lower].map(|casing| (casing, in_company(headings, &spoken, &others, casing)));
    let company = |casing: Casing| companies.iter().any(|(of, stands)| *of == casing && *stands);
    // An uncertainty in another case goes with its value in that case.
    let values: Vec<(Of, Casing)> = others
        .iter()
        .flatten()
        .filter(|other| {
            let with_unit = matches!(other.said, Said::Value(_, Some(_))) && !other.needs_company;
            matches!(other.said, Said::Value(..)) && (with_unit || company(other.casing))
        })
        .filter_map(|other| Some((other.said.of()?, other.casing)))
        .collect();
    for (one, other) in spoken.iter_mut().zip(others) {
        let Some(other) = other else { continue };
        let taken = match other.said {
            Said::Value(_, unit) => unit.is_some() && !other.needs_company || company(other.casing),
            _ => other.said.of().is_some_and(|of| values.contains(&(of, other.casing))),
        };
        if taken {
            *one = Spoken { said: other.said, another_case: true };
        }
    }
    spoken
}

/// True where bare symbols in one case may be taken for elements: enough headings are elements in that case, one of
/// them is screened for, and no symbol of two letters stands there as chemistry writes it.
fn in_company(
    headings: &[String],
    spoken: &[Spoken],
    others: &[Option<InAnotherCase>],
    casing: Casing,
) -> bool {
    let chemistry = headings.iter().zip(spoken).any(|(heading, one)| {
        matches!(one.said, Said::Value(of, _) if of.oxide.is_none()
            && of.element.symbol().len() == 2
            && heading.contains(of.element.symbol()))
    });
    let mut elements: Vec<Element> = others
        .iter()
        .flatten()
        .filter(|other| {
            other.casing == casing && !other.needs_company && matches!(other.said, Said::Value(..))
        })
        .filter_map(|other| other.said.of().map(|of| of.element))
        .collect();
    elements.sort_unstable();
    elements.dedup();
    let screened = |element: &Element| {
        *element == Element::CL || Substance::ALL.iter().any(|substance| substance.element() == *element)
    };
    !chemistry && elements.len() >= COMPANY && elements.iter().any(screened)
}

/// The meaning of every column of a header.
///
/// A header without a column for any one element that has a column naming elements and one for values is a long
/// table's.
pub fn meanings(headings: &[String]) -> Vec<ColumnMeaning> {
    let mut spoken = spoken(headings);
    let is_value = |one: &Spoken| matches!(one.said, Said::Value(..) | Said::ValueInUnknownUnit(_));
    let wide = headings.iter().zip(&spoken).any(|(heading, one)| is_value(one) && heading.trim() != "U");
    if !wide && let Some(element_column) = long::element_column(&spoken) {
        return long::roles(headings, spoken, element_column, Evidence::KnownHeading);
    }
    // Right after a value, a bare U is its uncertainty and not uranium; but one U in a list of many elements is uranium.
    let behind_value: Vec<usize> = (1..spoken.len())
        .filter(|at| {
            headings.get(*at).is_some_and(|heading| heading.trim() == "U")
                && spoken.get(at - 1).is_some_and(is_value)
        })
        .collect();
    let values =
        headings.iter().zip(&spoken).filter(|(heading, one)| is_value(one) && heading.trim() != "U").count();
    if behind_value.len() > 1 || values < MANY {
        for at in behind_value {
            if let Some(one) = spoken.get_mut(at) {
                one.said = Said::Error(None, ErrorWords::default());
            }
        }
    }
    let header = Header::new(&spoken);
    let mut taken = Taken::default();
    headings
        .iter()
        .zip(1..)
        .enumerate()
        .map(|(at, (heading, column))| {
            let (role, evidence) = header.role(at, &mut taken);
            ColumnMeaning { column, heading: heading.clone(), role, evidence }
        })
        .collect()
}

/// True for a header that names the reading, and an element together with its unit.
pub fn names_a_reading_and_a_unit(columns: &[ColumnMeaning]) -> bool {
    columns.iter().any(|column| column.role == ColumnRole::Identity(Identity::Id))
        && columns.iter().any(|column| matches!(column.role, ColumnRole::Value { unit: Some(_), .. }))
}

/// What stands around a heading.
struct Header<'a> {
    spoken: &'a [Spoken],
    /// What has a column of its own, with the unit its heading states and that column's place.
    values: Vec<(Of, Option<Unit>, usize)>,
    /// Bare error columns each stand right behind a value.
    bare_in_order: bool,
}

/// Uncertainties and limits that have their column.
#[derive(Default)]
struct Taken {
    errors: Vec<Of>,
    limits: Vec<Of>,
}

impl<'a> Header<'a> {
    fn new(spoken: &'a [Spoken]) -> Header<'a> {
        let mut values: Vec<(Of, Option<Unit>, usize)> = Vec::new();
        // A symbol as chemistry writes it wins over one in another case, then the column further left; a column in an
        // unknown unit comes last.
        for wanted in [Some(false), Some(true), None] {
            for (at, one) in spoken.iter().enumerate() {
                let found = match (&one.said, wanted) {
                    (Said::Value(of, unit), Some(another_case)) if one.another_case == another_case => {
                        (*of, *unit)
                    }
                    (Said::ValueInUnknownUnit(of), None) => (*of, None),
                    _ => continue,
                };
                if !values.iter().any(|(known, ..)| *known == found.0) {
                    values.push((found.0, found.1, at));
                }
            }
        }
        // Bare error columns belong to the value right before them. Where one stands elsewhere, the order of all of
        // them is a guess, and a wrong pair would clear what it should not.
        let is_value = |said: &Said| matches!(said, Said::Value(..) | Said::ValueInUnknownUnit(_));
        let bare_in_order = spoken.iter().enumerate().all(|(at, one)| {
            !matches!(one.said, Said::Error(None, _))
                || at
                    .checked_sub(1)
                    .and_then(|before| spoken.get(before))
                    .is_some_and(|before| is_value(&before.said))
        });
        Header { spoken, values, bare_in_order }
    }

    fn said(&self, at: Option<usize>) -> Option<&Said> {
        at.and_then(|at| self.spoken.get(at)).map(|one| &one.said)
    }

    fn value_before(&self, at: usize) -> Option<Of> {
        match self.said(at.checked_sub(1)) {
            Some(Said::Value(of, _)) => Some(*of),
            _ => None,
        }
    }

    /// What has a column in a known unit or none stated, with that unit; nothing where it has no such column.
    fn value(&self, wanted: Of) -> Option<(Of, Option<Unit>)> {
        self.values
            .iter()
            .find(|(of, _, at)| *of == wanted && matches!(self.said(Some(*at)), Some(Said::Value(..))))
            .map(|(of, unit, _)| (*of, *unit))
    }

    fn errors_of(&self, wanted: Of) -> usize {
        (0..self.spoken.len())
            .filter(|at| match self.said(Some(*at)) {
                Some(Said::Error(Some(of), _)) => *of == wanted,
                Some(Said::Error(None, _)) => self.value_before(*at) == Some(wanted),
                _ => false,
            })
            .count()
    }

    /// Other oxides of the same element.
    fn oxides(&self, element: Element) -> usize {
        self.values.iter().filter(|(of, ..)| of.element == element && of.oxide.is_some()).count()
    }

    fn has_own_column(&self, element: Element) -> bool {
        self.values.iter().any(|(of, ..)| *of == Of { element, oxide: None })
    }

    fn role(&self, at: usize, taken: &mut Taken) -> (ColumnRole, Evidence) {
        let Some(one) = self.spoken.get(at) else { return (ColumnRole::Unused, Evidence::NotKnown) };
        match &one.said {
            Said::Value(of, unit) => self.value_role(at, *of, *unit, Spoken::evidence(one, *of)),
            // Only where no other column is that element's in a known unit or none.
            Said::ValueInUnknownUnit(of) if self.value(*of).is_none() => {
                self.value_role(at, *of, None, Evidence::UnitNotUnderstood)
            }
            Said::Error(named, words) => {
                let bare = if self.bare_in_order { self.value_before(at) } else { None };
                let evidence = named.map_or(Evidence::FollowsElement, |of| one.evidence(of));
                self.error_role(named.or(bare), *words, evidence, taken)
            }
            Said::Limit(named, unit) => {
                // Right after the value, or after the value's own error.
                let bare = || {
                    self.value_before(at).or_else(|| match self.said(at.checked_sub(1)) {
                        Some(Said::Error(Some(of), _)) => Some(*of),
                        Some(Said::Error(None, _)) if self.bare_in_order => self.value_before(at - 1),
                        _ => None,
                    })
                };
                let evidence = named.map_or(Evidence::ElementHeading, |of| one.evidence(of));
                match named.or_else(bare).and_then(|of| self.value(of)) {
                    Some((of, _)) if taken.limits.contains(&of) => {
                        (ColumnRole::Unused, Evidence::AlreadyTaken)
                    }
                    Some((of, value)) => {
                        taken.limits.push(of);
                        let unit = unit.or(value);
                        (ColumnRole::DetectionLimit { element: of.element, oxide: of.oxide, unit }, evidence)
                    }
                    None => (ColumnRole::Unused, Evidence::WordsNotUnderstood),
                }
            }
            said => identity_role(self.spoken, at, said),
        }
    }

    fn value_role(
        &self,
        at: usize,
        of: Of,
        unit: Option<Unit>,
        evidence: Evidence,
    ) -> (ColumnRole, Evidence) {
        let role = ColumnRole::Value { element: of.element, oxide: of.oxide, unit };
        let first =
            self.values.iter().find(|(known, ..)| *known == of).is_some_and(|(.., first)| *first == at);
        if !first {
            return (ColumnRole::Unused, Evidence::AlreadyTaken);
        }
        if of.oxide.is_none() {
            return (role, evidence);
        }
        match (self.has_own_column(of.element), self.oxides(of.element)) {
            (true, 1) => (role, Evidence::OxideBesideElement),
            // Each of several oxides is a part of the element: none of them can stand in for it.
            (true, _) => (ColumnRole::Unused, Evidence::OxideBesideElement),
            (false, 1) => (role, evidence),
            (false, _) => {
                let leftmost = self
                    .values
                    .iter()
                    .filter(|(known, ..)| known.element == of.element)
                    .all(|(.., other)| *other >= at);
                if leftmost { (role, evidence) } else { (ColumnRole::Unused, Evidence::AlreadyTaken) }
            }
        }
    }

    fn error_role(
        &self,
        of: Option<Of>,
        words: ErrorWords,
        evidence: Evidence,
        taken: &mut Taken,
    ) -> (ColumnRole, Evidence) {
        let Some((of, value)) = of.and_then(|of| self.value(of)) else {
            return (ColumnRole::Unused, Evidence::WordsNotUnderstood);
        };
        if taken.errors.contains(&of) {
            return (ColumnRole::Unused, Evidence::AlreadyTaken);
        }
        taken.errors.push(of);
        let mut error = error_kind(words, value);
        // Two errors of one element: which one is meant can't be told.
        error.clear &= self.errors_of(of) == 1;
        (ColumnRole::Error { element: of.element, oxide: of.oxide, error }, evidence)
    }
}

impl Spoken {
    /// The evidence of a heading that names an element.
    fn evidence(&self, of: Of) -> Evidence {
        match (of.oxide.is_some(), self.another_case) {
            (true, _) => Evidence::OxideHeading,
            (false, true) => Evidence::ElementInAnotherCase,
            (false, false) => Evidence::ElementHeading,
        }
    }
}

/// The role of a heading that names no element.
pub(super) fn identity_role(spoken: &[Spoken], at: usize, said: &Said) -> (ColumnRole, Evidence) {
    let known = |role| (role, Evidence::KnownHeading);
    let taken = (ColumnRole::Unused, Evidence::AlreadyTaken);
    let best = |wanted: &dyn Fn(&Said) -> Option<u8>, rank: u8| {
        !spoken
            .iter()
            .enumerate()
            .any(|(other, one)| wanted(&one.said).is_some_and(|other_rank| (other_rank, other) < (rank, at)))
    };
    match said {
        Said::Identity(identity, rank) => {
            let same = |said: &Said| match said {
                Said::Identity(other, rank) if other == identity => Some(*rank),
                _ => None,
            };
            if best(&same, *rank) { known(ColumnRole::Identity(*identity)) } else { taken }
        }
        Said::TimeOfDay(rank) => {
            let clock = |said: &Said| match said {
                Said::TimeOfDay(rank) => Some(*rank),
                _ => None,
            };
            let times: Vec<u8> = spoken
                .iter()
                .filter_map(|one| match one.said {
                    Said::Identity(Identity::Time, rank) => Some(rank),
                    _ => None,
                })
                .collect();
            match times.iter().min() {
                _ if !best(&clock, *rank) => taken,
                // Alone it is the time of the reading, beside a date a part of it; a date and time says it all.
                None => known(ColumnRole::Identity(Identity::Time)),
                Some(&DATE_RANK) => known(ColumnRole::TimeOfDay),
                Some(_) => taken,
            }
        }
        Said::UnitOfMeasure => {
            let same = |said: &Said| matches!(said, Said::UnitOfMeasure).then_some(1);
            if best(&same, 1) { known(ColumnRole::UnitOfMeasure) } else { taken }
        }
        Said::NotUnderstood | Said::ValueInUnknownUnit(_) => {
            (ColumnRole::Unused, Evidence::WordsNotUnderstood)
        }
        _ => (ColumnRole::Unused, Evidence::NotKnown),
    }
}

/// The rank of words for a date without a time in the file of whole headings.
const DATE_RANK: u8 = 2;

/// How an uncertainty is stated beside a value in this unit.
pub(super) fn error_kind(words: ErrorWords, value: Option<Unit>) -> ErrorKind {
    if words.relative {
        return ErrorKind { unit: None, clear: true, relative: true, multiple: words.multiple };
    }
    let (unit, clear) = error_unit(words.unit, value);
    ErrorKind { unit, clear, relative: false, multiple: words.multiple }
}

/// The unit of an uncertainty: its own, else its value's. A percent sign beside a value in another unit may mean
/// relative percent, which would be a different number: it can't be told.
pub(super) fn error_unit(own: Option<Unit>, value: Option<Unit>) -> (Option<Unit>, bool) {
    match (own, value) {
        (None, value) => (value, true),
        (Some(Unit::Percent), value) if value != Some(Unit::Percent) => (None, false),
        (own, _) => (own, true),
    }
}

/// The element whose value a heading names, whatever else the header holds; an oxide counts for its element.
pub fn value_element(heading: &str) -> Option<Element> {
    match say(heading) {
        Said::Value(of, _) => Some(of.element),
        Said::Unknown | Said::NotUnderstood | Said::AnyValue { .. } => {
            match said::say_in_another_case(heading)? {
                InAnotherCase { said: Said::Value(of, _), needs_company: false, .. } => Some(of.element),
                _ => None,
            }
        }
        _ => None,
    }
}

/// True where a cell names an element by its symbol, as a word of its own.
pub fn names_an_element(cell: &str) -> bool {
    super::tokens::tokens(cell).iter().any(|token| token.len() == 2 && named::symbol(token).is_some())
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
