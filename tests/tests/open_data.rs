//! Real tables, read by the program and by an independent reader. Whole tables stand beside the project and are
//! skipped with a line where they are absent; an extract of one stands in `tests/open-data`.

use std::fs;

use plumbline_core::inspection::{Inspection, review};
use plumbline_core::outcome::{Outcome, Reason};
use plumbline_core::quantity::MassFraction;
use plumbline_core::reading::{CellState, ColumnRole, NoticeCode};
use plumbline_core::substance::{Element, Substance};
use plumbline_tests::places::{in_tests, open_data};
use plumbline_tests::program::inspect;
use serde_json::Value;

fn whole(name: &str) -> Option<Inspection> {
    let Some(folder) = open_data() else {
        println!("skipped: {name} stands in shared/open-data, which is not there");
        return None;
    };
    let bytes = fs::read(folder.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"));
    Some(inspect("", &[(name, &bytes)]))
}

/// Numbers with their sum, and non-detects with the sum of their limits.
fn tally(inspection: &Inspection, symbol: &str) -> (u64, MassFraction, u64, MassFraction) {
    let readings = &inspection.sources[0].readings;
    let element = Element::from_symbol(symbol).expect("an element");
    let (mut numbers, mut sum) = (0, MassFraction::ZERO);
    let (mut below, mut limits) = (0, MassFraction::ZERO);
    for row in 0..readings.len() {
        let cell = readings.cell(element, row);
        match cell.state {
            CellState::Number => (numbers, sum) = (numbers + 1, sum.plus(cell.value)),
            CellState::BelowDetection => (below, limits) = (below + 1, limits.plus(cell.value)),
            other => panic!("{symbol} in reading {row}: {other:?}"),
        }
    }
    (numbers, sum, below, limits)
}

fn rows_add_up(inspection: &Inspection, rows: u64) {
    let findings = review(inspection);
    let counts = findings.counts(inspection, 0);
    assert!(counts.adds_up(), "{counts:?}");
    assert_eq!((counts.readings, counts.refused), (rows, 0));
}

const fn mg(amount: i64) -> MassFraction {
    MassFraction::from_mg_per_kg(amount)
}

#[test]
fn an_extract_of_a_real_table_is_read_as_an_independent_reader_reads_it() {
    let bytes = fs::read(in_tests("open-data/soil_extract.csv")).expect("the extract");
    let truth = fs::read(in_tests("open-data/soil_extract_truth.json")).expect("its truth");
    let truth: Value = serde_json::from_slice(&truth).expect("JSON");
    let inspection = inspect("", &[("soil_extract.csv", &bytes)]);
    rows_add_up(&inspection, truth["rows"].as_u64().expect("a count"));
    for (symbol, expected) in truth["elements"].as_object().expect("elements") {
        let (numbers, sum, below, limits) = tally(&inspection, symbol);
        assert_eq!(Some(numbers), expected["numbers"].as_u64(), "{symbol}");
        assert_eq!(Some(below), expected["below_detection"].as_u64(), "{symbol}");
        assert_eq!(sum, mg(expected["sum_mg_per_kg"].as_i64().expect("a sum")), "{symbol}");
        assert_eq!(limits, mg(expected["sum_of_limits_mg_per_kg"].as_i64().expect("a sum")), "{symbol}");
    }
    let source = &inspection.sources[0];
    let said = |code| source.notices.kept.iter().any(|notice| notice.code == code);
    assert!(said(NoticeCode::LimitInErrorColumn) && said(NoticeCode::MultipleNotStated));
    let oxide = source.blocks[0].columns.iter().find(|column| column.heading == "Cr2O3").expect("the oxide");
    assert_eq!(oxide.role, ColumnRole::Unused, "an oxide is not its element");
}

#[test]
fn soils_with_errors_beside_each_element() {
    let Some(inspection) = whole("soil_pxrf_wide_with_errors.csv") else { return };
    rows_add_up(&inspection, 558);
    let (numbers, sum, below, _) = tally(&inspection, "Cl");
    assert_eq!((numbers, sum, below), (558, mg(347_780), 0));
    let (numbers, sum, below, _) = tally(&inspection, "Cr");
    assert_eq!((numbers, sum, below), (556, mg(48_150), 2));
    let (numbers, _, below, _) = tally(&inspection, "Cd");
    assert_eq!((numbers, below), (0, 558));
    let (numbers, sum, below, _) = tally(&inspection, "Pb");
    assert_eq!((numbers, sum, below), (5, mg(190), 553));
}

#[test]
fn ashes_with_three_header_rows() {
    let Some(inspection) = whole("ashes_three_header_rows.csv") else { return };
    rows_add_up(&inspection, 22);
    let source = &inspection.sources[0];
    assert_eq!(source.preamble.len(), 1);
    assert_eq!(source.set_aside, [0, 0, 1, 0], "the row of units is set aside");
    for (symbol, hundredths) in [("Cr", 23_900), ("Cd", 1_079), ("Hg", 2_179), ("Pb", 14_000)] {
        let (numbers, sum, below, _) = tally(&inspection, symbol);
        assert_eq!((numbers, sum.units(), below), (22, hundredths * 10_000, 0), "{symbol}");
    }
}

/// A number whose unit nobody stated is kept as text and judged as not measured.
fn no_mass_fraction(inspection: &Inspection, symbols: &[&str], rows: usize) {
    let source = &inspection.sources[0];
    assert_eq!(source.readings.len(), rows);
    assert!(source.notices.kept.iter().any(|notice| notice.code == NoticeCode::UnitNotStated));
    for column in source.readings.elements() {
        for row in 0..rows {
            let state = column.cell(row).state;
            assert_ne!(state, CellState::Number, "{} in reading {row}", column.element);
            if symbols.contains(&column.element.symbol()) {
                assert_eq!(state, CellState::UnitUnknown, "{} in reading {row}", column.element);
            }
        }
    }
    let settings = inspection.settings();
    let reviewer = plumbline_core::inspection::SourceReview::new(source, &inspection.books, &settings);
    for row in 0..rows {
        let assessed = reviewer.assess(row);
        for substance in Substance::ALL {
            let judged = assessed.substances[substance as usize];
            assert_eq!(judged.outcome, Outcome::NotMeasured);
            if symbols.contains(&substance.symbol()) {
                assert_eq!(judged.reason, Some(Reason::UnitNotStated));
            }
        }
    }
}

#[test]
fn air_filters_without_a_unit_become_no_mass_fraction() {
    let Some(inspection) = whole("air_filters_tab.txt") else { return };
    rows_add_up(&inspection, 630);
    assert_eq!(inspection.sources[0].set_aside, [27, 0, 0, 0], "rows of tabs only are blank");
    no_mass_fraction(&inspection, &["Cl", "Cr", "Br", "Pb"], 630);
}

#[test]
fn counts_of_a_sediment_core_become_no_mass_fraction() {
    let Some(inspection) = whole("core_counts_pair.csv") else { return };
    rows_add_up(&inspection, 522);
    no_mass_fraction(&inspection, &["Cl", "Br", "Pb"], 522);
}

#[test]
fn workbooks_say_that_they_are_workbooks() {
    for name in ["core_counts_pair.xlsx", "rocks_unit_row.xlsx", "mineral_unit_headers.xlsx"] {
        let Some(inspection) = whole(name) else { return };
        assert_eq!(inspection.sources[0].problem, Some(NoticeCode::WorkbookBroken), "{name}");
    }
}

/// Long tables are not read yet; none of their numbers may come out under a wrong element.
#[test]
fn long_tables_give_no_mass_fraction_of_a_wrong_element() {
    for name in ["soil_repeats_long.csv", "crust_long.csv"] {
        let Some(inspection) = whole(name) else { return };
        let readings = &inspection.sources[0].readings;
        for column in readings.elements() {
            for row in 0..readings.len() {
                assert_ne!(column.cell(row).state, CellState::Number, "{name}: {} in {row}", column.element);
            }
        }
    }
}
