//! One heading row: its columns, its fingerprint, how its readings lie, and what a person said of it.

use std::collections::BTreeMap;

use plumbline_core::acts::{ActKind, Settings, Target};
use plumbline_core::column::{ColumnMeaning, ColumnRole, Evidence};
use plumbline_core::identity::Identity;
use plumbline_core::quantity::DecimalMark;
use plumbline_core::reading::{Layout, sha256_hexadecimal};

use crate::cell::{self, CellText};
use crate::heading;
use crate::records::Record;

/// Characters of a digest that name a set of headings; enough to keep a person's few dozen apart.
const FINGERPRINT: usize = 16;

/// A heading row that was understood, or that a person pointed at.
#[derive(Clone, Debug)]
pub(crate) struct Header {
    pub(crate) columns: Vec<ColumnMeaning>,
    pub(crate) fingerprint: String,
    pub(crate) layout: Layout,
    /// Columns whose role a person gave.
    pub(crate) told: u32,
    /// Columns a mapping speaks of that are not here.
    pub(crate) missing: Vec<u32>,
}

/// Reads heading rows, with the roles a person gave to columns of known headings.
#[derive(Clone, Debug, Default)]
pub(crate) struct HeaderReader {
    told: BTreeMap<String, Vec<(u32, ColumnRole)>>,
}

impl HeaderReader {
    pub(crate) fn new(settings: &Settings) -> HeaderReader {
        let mut told = BTreeMap::new();
        for (kind, target, _) in settings.all() {
            if let (ActKind::ColumnRole, Target::Header(fingerprint)) = (kind, target) {
                told.entry(fingerprint.clone()).or_insert_with(|| settings.column_roles(fingerprint));
            }
        }
        HeaderReader { told }
    }

    /// The header a row is, if it can be one: no measurement in it, and more to go by than one symbol that may be a
    /// size or a code (`S`, `K`); or headings a person has given roles to.
    pub(crate) fn read(&self, record: &Record<'_>) -> Option<Header> {
        let known_by_hand = !self.told.is_empty() && self.told.contains_key(&fingerprint(&headings(record)));
        if !known_by_hand && holds_measurements(record) {
            return None;
        }
        let header = self.of_headings(&headings(record));
        let (mut values, mut others, mut with_unit) = (0, 0, false);
        for column in &header.columns {
            match column.role {
                ColumnRole::Value { unit, .. } => {
                    values += 1;
                    with_unit |= unit.is_some();
                }
                ColumnRole::Unused => {}
                _ => others += 1,
            }
        }
        let wide = values >= 2 || values == 1 && (with_unit || others > 0);
        (known_by_hand || wide || header.layout == Layout::Long).then_some(header)
    }

    /// The header of these headings, whatever they are.
    pub(crate) fn of_headings(&self, headings: &[String]) -> Header {
        let fingerprint = fingerprint(headings);
        let roles = self.told.get(&fingerprint).map_or(&[][..], Vec::as_slice);
        let element_told =
            roles.iter().find(|(_, role)| *role == ColumnRole::ElementName).map(|(column, _)| *column);
        let columns = match element_told {
            Some(column) => heading::long_roles(headings, column as usize - 1),
            None => heading::meanings(headings),
        };
        self.with_roles(columns, fingerprint)
    }

    /// A header with these meanings, after what a person said of its columns.
    pub(crate) fn with_roles(&self, mut columns: Vec<ColumnMeaning>, fingerprint: String) -> Header {
        let roles = self.told.get(&fingerprint).map_or(&[][..], Vec::as_slice);
        let (mut told, mut missing) = (0, Vec::new());
        let is_told = |column: u32| roles.iter().any(|(known, _)| *known == column);
        for (at, role) in roles {
            let Some(column) = columns.iter_mut().find(|column| column.column == *at) else {
                missing.push(*at);
                continue;
            };
            told += 1;
            column.role = role.clone();
            column.evidence = Evidence::Told;
            for other in columns.iter_mut().filter(|other| !is_told(other.column)) {
                if same_meaning(&other.role, role) {
                    other.role = ColumnRole::Unused;
                    other.evidence = Evidence::Told;
                }
            }
        }
        let layout = layout_of(&columns);
        Header { columns, fingerprint, layout, told, missing }
    }
}

/// True where two columns can't both have their meaning in one table.
fn same_meaning(one: &ColumnRole, other: &ColumnRole) -> bool {
    match (one, other) {
        (ColumnRole::Unused, _) | (_, ColumnRole::Unused) => false,
        _ => one.code() == other.code() && one.of() == other.of(),
    }
}

fn layout_of(columns: &[ColumnMeaning]) -> Layout {
    let any = |wanted: &dyn Fn(&ColumnRole) -> bool| columns.iter().any(|column| wanted(&column.role));
    if any(&|role| *role == ColumnRole::ElementName)
        && any(&|role| matches!(role, ColumnRole::AnyValue { .. }))
    {
        Layout::Long
    } else if any(&|role| *role == ColumnRole::Identity(Identity::Spectrum)) {
        Layout::Joined
    } else {
        Layout::Wide
    }
}

/// Bytes beyond which a cell heads no column: what stands behind them is not looked at.
const LONGEST_HEADING: usize = 240;

/// The headings of a row.
pub(crate) fn headings(record: &Record<'_>) -> Vec<String> {
    let head = |cell: &'_ [u8]| cell::text(cell.get(..LONGEST_HEADING).unwrap_or(cell)).trim().to_owned();
    record.cells().map(head).collect()
}

/// What names a set of headings in mappings: a digest of their text without case, spaces around, and empty headings
/// at the end.
pub(crate) fn fingerprint(headings: &[String]) -> String {
    let filled = headings.iter().rposition(|heading| !heading.trim().is_empty()).map_or(0, |last| last + 1);
    let folded: Vec<String> =
        headings.iter().take(filled).map(|heading| heading.trim().to_lowercase()).collect();
    let mut digest = sha256_hexadecimal(folded.join("\u{1F}").as_bytes());
    digest.truncate(FINGERPRINT);
    digest
}

/// True for a number, a bound or a word for "not detected".
pub(crate) fn is_measurement(cell: &[u8]) -> bool {
    !matches!(
        cell::read(cell, Some(DecimalMark::Point)),
        CellText::Blank | CellText::NotMeasured | CellText::Unreadable
    )
}

/// True where a row has a number or a censored cell, which no header has: a row `S1, Pb, 12` of a long table is not
/// a header for lead. A bare `LOD` may head a column.
pub(crate) fn holds_measurements(record: &Record<'_>) -> bool {
    record.cells().any(|cell| {
        let word = cell.trim_ascii().first().is_some_and(u8::is_ascii_alphabetic);
        !word && is_measurement(cell)
    })
}
