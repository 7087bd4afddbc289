//! Real tables, read by the program and by an independent reader. Whole tables stand beside the project and are
//! skipped with a line where they are absent; an extract of one stands in `tests/open-data`.

use std::collections::BTreeMap;
use std::fs;

use plumbline_core::inspection::{Inspection, review};
use plumbline_core::outcome::{Outcome, Reason};
use plumbline_core::quantity::{MassFraction, SigmaMultiple};
use plumbline_core::reading::{Cell, CellState, ColumnRole, Evidence, Layout, NoticeCode, Source};
use plumbline_core::substance::{Element, Substance};
use plumbline_tests::places::{in_tests, open_data};
use plumbline_tests::program::inspect;
use serde_json::Value;

fn whole(name: &str) -> Option<Inspection> {
    with_settings("", name)
}

fn with_settings(settings: &str, name: &str) -> Option<Inspection> {
    let Some(folder) = open_data() else {
        println!("skipped: {name} stands in shared/open-data, which is not there");
        return None;
    };
    let bytes = fs::read(folder.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"));
    Some(inspect(settings, &[(name, &bytes)]))
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

const fn units(millionths: i64) -> MassFraction {
    MassFraction::from_units(millionths)
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
    assert!(
        matches!(oxide.role, ColumnRole::Value { oxide: Some(_), .. })
            && oxide.evidence == Evidence::OxideBesideElement,
        "an oxide stands in for its element only where the element's own cell is empty"
    );
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
    let reviewer = plumbline_core::judging::SourceReview::new(source, &inspection.books, &settings);
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

/// How often each state stands in an element's cells, and the sum of the values.
fn states(inspection: &Inspection, symbol: &str) -> (BTreeMap<&'static str, u64>, i64) {
    let element = Element::from_symbol(symbol).expect("an element");
    let (mut states, mut sum) = (BTreeMap::new(), 0);
    for source in &inspection.sources {
        for row in 0..source.readings.len() {
            let cell = source.readings.cell(element, row);
            *states.entry(cell.state.code()).or_insert(0) += 1;
            sum += cell.value.units();
        }
    }
    (states, sum)
}

fn fates_add_up(inspection: &Inspection) {
    let findings = review(inspection);
    for at in 0..inspection.sources.len() {
        let counts = findings.counts(inspection, at);
        assert!(counts.adds_up(), "{counts:?}");
        assert_eq!(counts.refused, 0, "{counts:?}");
    }
}

fn refusals(source: &Source) -> Vec<(u32, &'static str)> {
    source.refusals.kept.iter().map(|refusal| (refusal.line, refusal.code.code())).collect()
}

/// 570 rows of 30 readings with 19 elements each. By hand: Python's `csv` and `decimal`, `value` summed where
/// `below_LOD` is 0 and `error_or_LOD` where it is 1.
#[test]
fn repeats_of_one_powder_in_a_long_table() {
    let Some(inspection) = whole("soil_repeats_long.csv") else { return };
    let source = &inspection.sources[0];
    assert_eq!((source.problem, refusals(source)), (None, Vec::new()));
    assert_eq!((source.rows_in, source.rows_in_readings(), source.readings.len()), (570, 570, 30));
    fates_add_up(&inspection);
    assert_eq!(source.blocks.len(), 1);
    assert_eq!(source.blocks[0].layout, Layout::Long);
    for (symbol, numbers, sum, below, limits) in [
        ("Cl", 3, 996_780_000, 27, 767_520_000),
        ("Cr", 22, 2_229_940_000, 8, 189_560_000),
        ("Cd", 1, 5_840_000, 29, 243_870_000),
        ("Hg", 0, 0, 30, 281_140_000),
        ("Pb", 20, 505_990_000, 10, 24_890_000),
        ("Fe", 28, 591_415_610_000, 2, 64_240_000),
        ("Sr", 30, 3_950_090_000, 0, 0),
    ] {
        let said = tally(&inspection, symbol);
        assert_eq!(said, (numbers, units(sum), below, units(limits)), "{symbol}");
    }
    let below: u64 = source
        .readings
        .elements()
        .iter()
        .map(|column| {
            let below = |row: &usize| column.cell(*row).state == CellState::BelowDetection;
            (0..source.readings.len()).filter(below).count() as u64
        })
        .sum();
    assert_eq!(below, 305);
    // Errors of numbers are two sigma, as a column says; 489.82 is the sum of those of chromium.
    let chromium = Element::from_symbol("Cr").expect("an element");
    let printed: i64 = (0..30)
        .filter_map(|row| source.readings.cell(chromium, row).printed_error)
        .map(MassFraction::units)
        .sum();
    assert_eq!(printed, 489_820_000);
    let multiple = source.blocks[0].stated_multiple(chromium).map(SigmaMultiple::hundredths);
    assert_eq!(multiple, Some(200));
}

/// One composition: 90 rows of oxides and elements below 7 rows of remarks. Read by eye.
#[test]
fn the_crust_in_a_long_table_with_units_by_row() {
    let Some(inspection) = whole("crust_long.csv") else { return };
    let source = &inspection.sources[0];
    assert_eq!((source.problem, refusals(source)), (None, Vec::new()));
    assert_eq!((source.rows_in, source.readings.len()), (97, 1));
    assert_eq!((source.rows_in_readings(), source.set_aside), (90, [0, 0, 0, 7]));
    fates_add_up(&inspection);
    for (symbol, micro, printed) in [
        ("Cl", 370_000_000, Some(764_000_000)),
        ("Cr", 92_000_000, Some(34_000_000)),
        ("Br", 1_600_000, None),
        ("Cd", 90_000, Some(20_000)),
        ("Hg", 50_000, Some(80_000)),
        ("Pb", 17_000_000, Some(1_000_000)),
        // In ppb, as its row says.
        ("Ag", 53_000, Some(6_000)),
    ] {
        let element = Element::from_symbol(symbol).expect("an element");
        let cell = source.readings.cell(element, 0);
        assert_eq!(cell.state, CellState::Number, "{symbol}");
        assert_eq!(cell.value.units(), micro, "{symbol}");
        assert_eq!(cell.printed_error.map(MassFraction::units), printed, "{symbol}");
        if printed.is_some() {
            let multiple = source.blocks[0].stated_multiple(element).map(SigmaMultiple::hundredths);
            assert_eq!(multiple, Some(200), "{symbol}: unc_2sigma");
        }
    }
}

/// Units in headings, capitals all over, and chromium twice: 85 rows in ppm, 98 as oxide in wt%, 74 of them both.
/// By hand: Python's `zipfile` and `xml.etree`, numbers as the shortest decimals of their doubles, oxides by
/// 2 x 51.9961 / (2 x 51.9961 + 3 x 15.999), each rounded to a millionth of mg/kg.
#[test]
fn minerals_in_a_workbook_with_units_in_headings() {
    let Some(inspection) = whole("mineral_unit_headers.xlsx") else { return };
    let source = &inspection.sources[0];
    assert_eq!((source.problem, refusals(source)), (None, Vec::new()));
    assert_eq!((source.rows_in, source.readings.len()), (109, 109));
    fates_add_up(&inspection);
    let (lead, sum) = states(&inspection, "Pb");
    assert_eq!((lead, sum), (BTreeMap::from([("blank", 7), ("number", 102)]), 209_757_191));
    // The element's own column where it is filled (85 rows, 706 746.979547 mg/kg), else its oxide (24 rows).
    let (chromium, sum) = states(&inspection, "Cr");
    assert_eq!((chromium, sum), (BTreeMap::from([("number", 109)]), 830_527_843_900));
}

/// A row of units below the headings, each element as oxide and once more by itself; none of ours.
#[test]
fn rocks_in_a_workbook_with_a_row_of_units() {
    let Some(inspection) = whole("rocks_unit_row.xlsx") else { return };
    let source = &inspection.sources[0];
    assert_eq!(source.problem, None);
    let findings = review(&inspection);
    assert!(findings.counts(&inspection, 0).adds_up(), "{:?}", findings.counts(&inspection, 0));
    for symbol in ["Cl", "Cr", "Br", "Cd", "Hg", "Pb"] {
        let (states, _) = states(&inspection, symbol);
        assert!(states.keys().all(|state| *state == "no_column"), "{symbol}: {states:?}");
    }
    // 19 + 6 rows of rocks, by the same reader; line 23 names three headings again.
    for (symbol, sum) in [("Al", 2_066_411_960_000), ("Ca", 2_162_482_460_000)] {
        let (states, said) = states(&inspection, symbol);
        assert_eq!((states.get("number"), said), (Some(&25), sum), "{symbol}");
    }
}

/// What one reading says of itself, without its line.
fn all_cells(inspection: &Inspection) -> Vec<Vec<(Element, Cell)>> {
    let readings = &inspection.sources[0].readings;
    (0..readings.len())
        .map(|row| readings.elements().iter().map(|column| (column.element, column.cell(row))).collect())
        .collect()
}

#[test]
fn a_table_and_its_workbook_say_the_same() {
    let (Some(text), Some(workbook)) = (whole("core_counts_pair.csv"), whole("core_counts_pair.xlsx")) else {
        return;
    };
    rows_add_up(&workbook, 522);
    no_mass_fraction(&workbook, &["Cl", "Br", "Pb"], 522);
    assert_eq!(all_cells(&text), all_cells(&workbook));
    // With the unit set by a person both give the same numbers; the sums are those of Python's `csv`.
    let settings = "schema = \"plumbline.settings/1\"\nunit_of_measure = \"ppb\"\n";
    let told = |name: &str| with_settings(settings, name).expect("it was there");
    let (text, workbook) = (told("core_counts_pair.csv"), told("core_counts_pair.xlsx"));
    assert_eq!(all_cells(&text), all_cells(&workbook));
    for (symbol, sum) in [("Cl", 2_706_145), ("Br", 1_881_733), ("Pb", 4_275_159)] {
        assert_eq!(tally(&workbook, symbol), (522, units(sum * 1000), 0, units(0)), "{symbol}");
    }
}
