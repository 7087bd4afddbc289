//! Strategies that make tables. Values are drawn near the edges of bands and limits, so that ties happen.

use proptest::collection::vec;
use proptest::option;
use proptest::prelude::*;
use proptest::sample::select;

use super::{Cell, Columns, Error, MG_PER_KG, Micro, Row, Table, Value};
use crate::twin::Given;
use crate::twin::verdict::Class;

/// Edges and limits an element is judged by in any class, and zero (IEC 62321-3-1:2013, table of screening limits;
/// IEC 61249-2-21:2003).
fn edges(element: &str) -> &'static [i64] {
    match element {
        "Cd" => &[70, 130, 150, 50, 0],
        "Pb" | "Hg" => &[700, 1300, 500, 1500, 0],
        "Cr" => &[700, 500, 0],
        "Br" => &[300, 250, 900, 1500, 0],
        _ => &[900, 1500, 0],
    }
}

/// One sigma, in millionths; the last ones make three sigma reach the low edge of some band.
const SIGMAS: [Micro; 11] = [
    500_000,
    1_400_000,
    2_000_001,
    5_000_000,
    10_000_000,
    30_000_000,
    40_000_000,
    23_333_333,
    83_333_334,
    166_666_667,
    233_333_333,
];

/// A nudge off a tie, in millionths.
fn nudge() -> impl Strategy<Value = Micro> {
    select(vec![0, 0, 0, 1, -1, 1000, -1000, 1_000_000, -1_000_000])
}

fn cell(element: &'static str) -> impl Strategy<Value = Cell> {
    let clean = (0..40 * MG_PER_KG, select(vec![500_000, 1_000_000, 1_400_000]))
        .prop_map(|(x, sigma)| (Value::Number(x), Error::Sigma(sigma, 0)));
    let at_edge = (select(edges(element)), -1_i64..=1, select(SIGMAS.to_vec()), nudge(), 0_i64..3).prop_map(
        |(edge, side, sigma, nudge, odd)| {
            (Value::Number(edge * MG_PER_KG + side * 3 * sigma + nudge), Error::Sigma(sigma, odd))
        },
    );
    let below = (select(edges(element)), nudge(), any::<bool>()).prop_map(|(edge, nudge, half)| {
        let edge = if half { edge * MG_PER_KG / 2 } else { edge * MG_PER_KG };
        (Value::Below((edge + nudge).max(1)), Error::Word(""))
    });
    let above = (select(edges(element)), nudge())
        .prop_map(|(edge, nudge)| (Value::Above((edge * MG_PER_KG + nudge).max(1)), Error::Word("")));
    let word = (
        select(vec![
            "ND", "n.d.", "< LOD", "<LOD", "-", "n/a", "", "see note", "NaN", "=1+1", "< 0", "1e999",
        ]),
        error_word(),
    )
        .prop_map(|(word, error)| (Value::Word(word), error));
    let bare = (0..2000 * MG_PER_KG, error_word()).prop_map(|(x, error)| (Value::Number(x), error));
    let exponent = select(vec!["5.2e1", "6.4E+2", "-1e-3", "+3", "12 ppm", "0.5 %"])
        .prop_map(|word| (Value::Word(word), Error::Sigma(2_000_000, 0)));
    let pair = prop_oneof![
        8 => clean,
        8 => at_edge,
        2 => below,
        1 => above,
        2 => word,
        1 => bare,
        1 => exponent,
    ];
    let limit = option::weighted(
        0.6,
        prop_oneof![
            Just(50 * MG_PER_KG),
            Just(50 * MG_PER_KG + 1),
            Just(20 * MG_PER_KG),
            (1..900 * MG_PER_KG),
        ],
    );
    (pair, limit).prop_map(|((value, error), limit)| Cell { value, error, limit })
}

fn error_word() -> impl Strategy<Value = Error> {
    prop_oneof![
        select(vec!["", "0", "-", "0.0", "about 5", "-3"]).prop_map(Error::Word),
        select(SIGMAS.to_vec()).prop_map(|sigma| Error::Sigma(sigma, 0)),
    ]
}

/// Chlorine and bromine whose sigmas are the short sides of a right-angled triangle, so that the total's is whole and
/// its end can meet the limit.
fn pair_at_total() -> impl Strategy<Value = (Cell, Cell)> {
    (1_i64..=14, -1_i64..=1, 0_i64..=1600, nudge(), any::<bool>()).prop_map(
        |(a, side, chlorine, nudge, negative)| {
            let (cl, br, both) = (3 * a * MG_PER_KG, 4 * a * MG_PER_KG, 5 * a * MG_PER_KG);
            let total = 1500 * MG_PER_KG + side * 3 * both + nudge;
            let chlorine = if negative { total + chlorine * 100_000 } else { chlorine * MG_PER_KG };
            let number =
                |x, sigma| Cell { value: Value::Number(x), error: Error::Sigma(sigma, 0), limit: None };
            (number(chlorine, cl), number(total - chlorine, br))
        },
    )
}

/// Something with this chance; with all of it, always.
fn perhaps<S>(chance: f64, strategy: S) -> BoxedStrategy<Option<S::Value>>
where
    S: Strategy + Clone + 'static,
    S::Value: Clone + 'static,
{
    if chance < 1.0 { option::weighted(chance, strategy).boxed() } else { strategy.prop_map(Some).boxed() }
}

fn columns(element: &'static str, all_known: bool) -> impl Strategy<Value = Columns> + Clone {
    let known = if all_known { 1.0 } else { 0.9 };
    (
        proptest::bool::weighted(known),
        proptest::bool::weighted(if all_known { 1.0 } else { 0.95 }),
        perhaps(known, 1_u8..=3),
        any::<bool>(),
    )
        .prop_map(move |(names_unit, has_error, multiple, has_limit)| Columns {
            element,
            names_unit,
            has_error,
            multiple,
            has_limit,
        })
}

fn given(all_known: bool) -> impl Strategy<Value = Given> {
    let advisory = proptest::bool::weighted(if all_known { 1.0 } else { 0.5 });
    (
        (
            option::weighted(
                0.3,
                select(vec![Class::Polymer, Class::Metal, Class::Composite, Class::Plated]),
            ),
            option::weighted(0.5, 1_u8..=3),
            option::weighted(0.3, select(vec!["mg/kg", "ppm", "ug/g"])),
            any::<bool>(),
            proptest::bool::weighted(0.3),
            proptest::bool::weighted(0.4),
        ),
        (
            advisory,
            advisory,
            advisory,
            any::<bool>(),
            option::of(1_u64..6),
            option::of(1_u64..4),
            option::weighted(
                0.3,
                vec(select(vec!["sheath polymer", "pin metal", "board composite", "label"]), 1..3),
            ),
            proptest::bool::weighted(0.2),
        ),
        (
            option::weighted(0.2, select(Class::BANDED.to_vec())),
            option::weighted(0.2, select(Class::BANDED.to_vec())),
        ),
    )
        .prop_map(
            |(
                (class, multiple, unit, comma, one_error, halogen_book),
                (trust, sampling, materials, thick, lot_size, units_to_take, bill, checks),
                (file_class, part_class),
            )| Given {
                class,
                file_class,
                part_class: part_class.map(|class| ("P-1".to_owned(), class)),
                multiple,
                unit,
                comma,
                one_error,
                halogen_book,
                trust_advisory: trust,
                sampling_advisory: sampling,
                materials_advisory: materials,
                thick,
                lot_size,
                units_to_take,
                bills: bill
                    .map(|bill| ("P-1".to_owned(), bill.into_iter().map(str::to_owned).collect()))
                    .into_iter()
                    .collect(),
                checks: if checks { vec!["S0".to_owned(), "S1".to_owned()] } else { Vec::new() },
            },
        )
}

const CLASS_WORDS: [&str; 12] = [
    "polymer",
    "Polymer",
    "plastic",
    "metal",
    "METAL",
    "composite",
    "electronics",
    "plated",
    "",
    "glass",
    "wood",
    "unknown",
];

fn row(elements: Vec<&'static str>, class_words: &'static [&'static str]) -> impl Strategy<Value = Row> {
    let cells: Vec<_> = elements.iter().map(|element| cell(element).boxed()).collect();
    (
        select(class_words),
        select(vec!["sheath", "pin", "board", ""]),
        select(vec!["P-1", "P-2", ""]),
        select(vec!["L-1", "L-2", ""]),
        select(vec!["Alder Works", "Birch Works", ""]),
        select(vec!["1", "2", "3", "4", ""]),
        cells,
        option::weighted(0.3, pair_at_total()),
        (
            // Readings that disagree on the class of one material.
            proptest::bool::weighted(0.15),
            option::weighted(0.15, select(vec!["", "mg/kg", "ppm", "%", "furlongs"])),
        ),
    )
        .prop_map(
            move |(class, material, part, lot, supplier, piece, mut cells, pair, (shared, units))| {
                if let Some((chlorine, bromine)) = pair {
                    for (cell, element) in cells.iter_mut().zip(&elements) {
                        match *element {
                            "Cl" => *cell = chlorine,
                            "Br" => *cell = bromine,
                            _ => {}
                        }
                    }
                }
                // Mostly every class word has material names of its own.
                let material = match (material, class) {
                    ("", _) => String::new(),
                    (name, _) if shared => name.to_owned(),
                    (name, "") => format!("{name} bare"),
                    (name, word) => format!("{name} {word}"),
                };
                Row { id: String::new(), piece, part, material, lot, supplier, class, units, cells }
            },
        )
}

fn table_with(all_known: bool, class_words: &'static [&'static str]) -> impl Strategy<Value = Table> {
    let present = if all_known { 1.0 } else { 0.92 };
    let elements =
        ["Cd", "Pb", "Hg", "Cr", "Br", "Cl"].map(|element| perhaps(present, columns(element, all_known)));
    (elements, given(all_known), any::<bool>(), any::<bool>())
        .prop_map(|(columns, mut given, units_column, semicolon)| {
            let mut columns: Vec<Columns> = columns.into_iter().flatten().collect();
            if columns.is_empty() {
                columns.push(Columns {
                    element: "Pb",
                    names_unit: true,
                    has_error: true,
                    multiple: Some(1),
                    has_limit: false,
                });
            }
            given.comma &= semicolon;
            (columns, given, units_column, if semicolon { ';' } else { ',' })
        })
        .prop_flat_map(move |(columns, given, units_column, delimiter)| {
            let elements = columns.iter().map(|columns| columns.element).collect();
            (
                Just(columns),
                Just(given),
                Just(units_column),
                Just(delimiter),
                vec(row(elements, class_words), 1..8),
            )
        })
        .prop_map(|(columns, given, units_column, delimiter, mut rows)| {
            for (at, row) in rows.iter_mut().enumerate() {
                row.id = format!("S{at}");
            }
            Table { columns, rows, units_column, delimiter, given }
        })
}

/// Any table.
pub fn table() -> impl Strategy<Value = Table> {
    table_with(false, &CLASS_WORDS)
}

/// A table that can reach *accept*: all elements with unit, error and multiple, missing evidence advisory, and class
/// words with bands only.
pub fn table_all_known() -> impl Strategy<Value = Table> {
    table_with(true, &["polymer", "metal", "composite"]).prop_map(|mut table| {
        table.given.thick = true;
        (table.given.class, table.given.file_class, table.given.part_class) = (None, None, None);
        table.rows.iter_mut().for_each(|row| row.units = None);
        table.given.bills.clear();
        table.given.checks.clear();
        (table.given.lot_size, table.given.units_to_take) = (None, None);
        table
    })
}

/// Text that is a table only in part: ragged rows, headings again, blank lines, open quotes, stray bytes.
pub fn rough_text() -> impl Strategy<Value = Vec<u8>> {
    let line = prop_oneof![
        4 => "S[0-9],[0-9]{1,4},[0-9]{1,2},polymer",
        2 => "[A-Za-z0-9\"<>.,; %=@/+-]{0,30}",
        1 => Just("Sample,Pb mg/kg,Pb u (1s),Class".to_owned()),
        1 => Just("Sample,Cd %,Cd u (2s),Pb %".to_owned()),
        1 => Just(",mg/kg,mg/kg,".to_owned()),
        1 => Just(String::new()),
        1 => Just(",,,".to_owned()),
        1 => Just("S9,\"12,3,polymer".to_owned()),
        1 => Just("S9,\"1\n2\",3,polymer".to_owned()),
        1 => Just("S9,1,2,polymer,more".to_owned()),
        1 => Just("S9".to_owned()),
        1 => Just("S\u{FFFD},\u{0},n.d.,\u{B5}".to_owned()),
    ];
    let end = select(vec!["\n", "\n", "\r\n", "\r"]);
    (any::<bool>(), vec((line, end), 0..20), any::<bool>(), vec(any::<u8>(), 0..4)).prop_map(
        |(headed, lines, ended, stray)| {
            let mut text = Vec::new();
            if headed {
                text.extend_from_slice(b"Sample,Pb mg/kg,Pb u (1s),Class\n");
            }
            for (at, (line, end)) in lines.iter().enumerate() {
                text.extend_from_slice(line.as_bytes());
                if at == 3 {
                    text.extend_from_slice(&stray);
                }
                if ended || at + 1 < lines.len() {
                    text.extend_from_slice(end.as_bytes());
                }
            }
            text
        },
    )
}
