//! The twin's own reader of wide tables, by the `csv` crate: only headings as the invented tables write them.

use num_rational::BigRational;
use num_traits::{Signed, Zero};

use super::fraction::{parse, ten_to, whole};
use super::given::Given;
use super::judge::{Measured, Said};
use super::limits::SIGMAS_OF_A_DETECTION_LIMIT;

/// The elements the twin looks at: the five substances, then chlorine.
pub const ELEMENTS: [&str; 6] = ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"];

/// Nothing holds more than a million mg/kg of anything; the contract takes numbers up to 9.2 million, so that a wrong
/// unit shows as one, and refuses the cell beyond.
const LARGEST_MG_PER_KG: i64 = 9_200_000;

/// One sigma of more than the whole is no usable uncertainty.
const LARGEST_SIGMA_MG_PER_KG: i64 = 1_000_000;

/// One row of the table as the twin understands it.
#[derive(Clone, Debug)]
pub struct Row {
    /// Physical line, 1-based.
    pub line: u64,
    /// Sample id.
    pub id: String,
    /// Physical unit.
    pub unit: String,
    /// Part.
    pub part: String,
    /// Material.
    pub material: String,
    /// Lot.
    pub lot: String,
    /// Supplier.
    pub supplier: String,
    /// Class word.
    pub class_word: String,
    /// The six cells.
    pub cells: [Measured; 6],
}

/// A table.
#[derive(Clone, Debug)]
pub struct Table {
    /// Its rows.
    pub rows: Vec<Row>,
}

#[derive(Clone, Copy, Default)]
struct Columns {
    value: Option<(usize, Option<i32>)>,
    error: Option<(usize, Option<i32>, Option<i64>)>,
    limit: Option<(usize, Option<i32>)>,
}

/// How far the decimal point moves from a unit to mg/kg (SI prefixes; percent is 10 g/kg).
fn power_of_unit(word: &str) -> Option<i32> {
    match word {
        "mg/kg" | "ppm" | "ug/g" => Some(0),
        "%" => Some(4),
        "g/kg" => Some(3),
        "ug/kg" | "ppb" => Some(-3),
        _ => None,
    }
}

/// Reads a table whose header is its first line.
pub fn read(text: &str, delimiter: char, given: &Given) -> Table {
    let mut reader = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .delimiter(u8::try_from(delimiter).expect("an ASCII delimiter"))
        .from_reader(text.as_bytes());
    let mut records = reader.records().map(|record| record.expect("an invented table is well formed"));
    let header = records.next().expect("a header");
    let headings: Vec<&str> = header.iter().collect();
    let place = |name: &str| headings.iter().position(|heading| *heading == name);
    let columns = ELEMENTS.map(|element| columns_of(element, &headings));
    let rows = records.map(|record| {
        let cell = |at: Option<usize>| at.and_then(|at| record.get(at)).unwrap_or("").trim().to_owned();
        let row_unit = place("Units").map_or(RowUnit::Silent, |at| match cell(Some(at)).as_str() {
            "" => RowUnit::Silent,
            word => power_of_unit(word).map_or(RowUnit::NotKnown, RowUnit::Stated),
        });
        Row {
            line: record.position().expect("a record has a place").line(),
            id: cell(place("Sample")),
            unit: cell(place("Piece")),
            part: cell(place("Part")),
            material: cell(place("Material")),
            lot: cell(place("Lot")),
            supplier: cell(place("Supplier")),
            class_word: cell(place("Class")),
            cells: columns.map(|columns| measured(&record, columns, row_unit, given)),
        }
    });
    Table { rows: rows.collect() }
}

/// What a row's own unit column says.
#[derive(Clone, Copy)]
enum RowUnit {
    Silent,
    Stated(i32),
    NotKnown,
}

/// The unit of a column in one row: the heading's, else the row's, else the one a person set; open where heading and
/// row contradict each other and where the row's word is none.
fn unit_in_row(heading: Option<i32>, row: RowUnit, given: &Given) -> Option<i32> {
    match (heading, row) {
        (_, RowUnit::NotKnown) => None,
        (Some(heading), RowUnit::Stated(row)) => (heading == row).then_some(heading),
        (None, RowUnit::Stated(row)) => Some(row),
        (Some(heading), RowUnit::Silent) => Some(heading),
        (None, RowUnit::Silent) => given.unit.and_then(power_of_unit),
    }
}

fn columns_of(element: &str, headings: &[&str]) -> Columns {
    let mut columns = Columns::default();
    for (at, heading) in headings.iter().enumerate() {
        let words: Vec<&str> = heading.split_whitespace().collect();
        let Some((first, rest)) = words.split_first() else { continue };
        if *first != element {
            continue;
        }
        let unit = rest.iter().find_map(|word| power_of_unit(word));
        if rest.contains(&"LOD") {
            columns.limit = Some((at, unit));
        } else if rest.contains(&"u") {
            let multiple = rest.iter().find_map(|word| match *word {
                "(1s)" => Some(1),
                "(2s)" => Some(2),
                "(3s)" => Some(3),
                _ => None,
            });
            columns.error = Some((at, unit, multiple));
        } else {
            columns.value = Some((at, unit));
        }
    }
    columns
}

enum Word {
    Nothing,
    NotMeasured,
    NotDetected,
    Number(BigRational, Option<i32>),
    Below(BigRational, Option<i32>),
    Above(BigRational, Option<i32>),
    Other,
}

fn word(text: &str, given: &Given) -> Word {
    let mark = if given.comma { ',' } else { '.' };
    let quantity = |text: &str| {
        let (digits, unit) = match text.trim().split_once(' ') {
            Some((digits, unit)) => (digits, Some(power_of_unit(unit.trim())?)),
            None => (text.trim(), None),
        };
        Some((parse(digits, mark)?, unit))
    };
    match text.trim() {
        "" => Word::Nothing,
        "-" | "n/a" => Word::NotMeasured,
        "ND" | "n.d." | "< LOD" | "<LOD" => Word::NotDetected,
        other => match (other.strip_prefix('<'), other.strip_prefix('>')) {
            (Some(bound), _) => {
                quantity(bound).map_or(Word::Other, |(number, unit)| Word::Below(number, unit))
            }
            (_, Some(bound)) => {
                quantity(bound).map_or(Word::Other, |(number, unit)| Word::Above(number, unit))
            }
            _ => quantity(other).map_or(Word::Other, |(number, unit)| Word::Number(number, unit)),
        },
    }
}

fn measured(record: &csv::StringRecord, columns: Columns, row_unit: RowUnit, given: &Given) -> Measured {
    let nothing =
        Measured { said: Said::NoColumn, sigma: None, multiple_unknown: false, detection_limit: None };
    let Some((value, heading_unit)) = columns.value else { return nothing };
    let unit = unit_in_row(heading_unit, row_unit, given);
    // A unit behind a number does not make a row of something else a mass fraction.
    let believed = |own: Option<i32>| own.filter(|_| !matches!(row_unit, RowUnit::NotKnown));
    let cell = |at: usize| word(record.get(at).unwrap_or(""), given);
    let possible = |amount: &BigRational| amount.is_positive() && *amount <= whole(LARGEST_MG_PER_KG);
    let in_mg_per_kg = |number: BigRational, own: Option<i32>, column: Option<i32>| {
        own.or(column).map(|power| number * ten_to(power))
    };
    let stated = columns.limit.and_then(|(at, limit_unit)| match cell(at) {
        Word::Number(number, own) | Word::Below(number, own) => {
            let column = unit_in_row(limit_unit.or(heading_unit), row_unit, given);
            in_mg_per_kg(number, own, column).filter(possible)
        }
        _ => None,
    });
    // An error is in the unit its own cell or heading names, else in its value's column's. Beside a value that has a
    // unit of its own in its cell nobody can tell which of the two a bare error is in.
    let value_stands_apart = match cell(value) {
        Word::Number(_, own) => believed(own).is_some_and(|own| Some(own) != unit),
        _ => false,
    };
    let printed = columns.error.and_then(|(at, error_unit, _)| match cell(at) {
        Word::Number(number, own) => {
            let column = if value_stands_apart { None } else { error_unit.or(unit) };
            in_mg_per_kg(number, own, column).filter(possible)
        }
        _ => None,
    });
    let stated_multiple = columns.error.and_then(|(_, _, stated)| stated);
    let multiple = stated_multiple.or(given.multiple.map(i64::from));
    let sigma = |printed: &BigRational| printed / whole(multiple.unwrap_or(1));
    let bound = |number: BigRational, own, make: fn(BigRational) -> Said| {
        if !number.is_positive() {
            return Said::Text;
        }
        match in_mg_per_kg(number, own, unit) {
            None => Said::UnitUnknown,
            Some(bound) if bound > whole(LARGEST_MG_PER_KG) => Said::Text,
            Some(bound) => make(bound),
        }
    };
    let said = match cell(value) {
        Word::Nothing | Word::NotMeasured => Said::Blank,
        Word::Other => Said::Text,
        Word::Number(number, own) => match in_mg_per_kg(number, believed(own), unit) {
            None => Said::UnitUnknown,
            Some(x) if x.abs() > whole(LARGEST_MG_PER_KG) => Said::Text,
            Some(x) => Said::Number(x),
        },
        Word::Below(number, own) => bound(number, believed(own), Said::Below),
        Word::Above(number, own) => bound(number, believed(own), Said::Above),
        // A stated limit, else the number in the error column, which is the limit unless a person says that it is
        // one error of nothing: then three sigma of it.
        Word::NotDetected => match (&stated, &printed) {
            (Some(limit), _) => Said::Below(limit.clone()),
            (None, Some(printed)) if *printed > whole(LARGEST_SIGMA_MG_PER_KG) => Said::NotDetected,
            (None, Some(printed)) if given.one_error => {
                Said::Below(sigma(printed) * whole(SIGMAS_OF_A_DETECTION_LIMIT))
            }
            (None, Some(printed)) => Said::Below(printed.clone()),
            (None, None) => Said::NotDetected,
        },
    };
    // Two limits for one cell: the larger one holds.
    let said = match (said, &stated) {
        (Said::Below(limit), Some(stated)) => Said::Below(limit.max(stated.clone())),
        (said, _) => said,
    };
    let is_number = matches!(said, Said::Number(_));
    Measured {
        sigma: printed
            .as_ref()
            .filter(|_| is_number)
            .map(sigma)
            .filter(|sigma| !sigma.is_zero() && *sigma <= whole(LARGEST_SIGMA_MG_PER_KG)),
        multiple_unknown: is_number && printed.is_some() && multiple.is_none(),
        detection_limit: stated.filter(|_| is_number),
        said,
    }
}
