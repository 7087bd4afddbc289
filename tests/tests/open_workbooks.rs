//! Real workbooks, which stand beside the project and are skipped with a line where they are absent.

use std::fs;
use std::ops::ControlFlow;

use plumbline_intake::workbook::Workbook;
use plumbline_tests::places::open_data;

/// The lines of a workbook's first sheet.
fn first_sheet(name: &str) -> Option<Vec<String>> {
    let Some(folder) = open_data() else {
        println!("skipped: {name} stands in shared/open-data, which is not there");
        return None;
    };
    let bytes = fs::read(folder.join(name)).unwrap_or_else(|error| panic!("{name}: {error}"));
    let mut workbook = Workbook::open(&bytes).unwrap_or_else(|problem| panic!("{name}: {problem:?}"));
    let mut text = Vec::new();
    let written = workbook
        .write_sheet(0, &mut |piece| {
            text.extend_from_slice(piece);
            ControlFlow::Continue(())
        })
        .unwrap_or_else(|problem| panic!("{name}: {problem:?}"));
    let lines: Vec<String> = String::from_utf8(text).expect("UTF-8").lines().map(ToOwned::to_owned).collect();
    assert!(written.whole);
    assert_eq!(lines.len(), written.rows as usize);
    Some(lines)
}

#[test]
fn a_real_workbook_reads_as_the_csv_its_owner_published_beside_it() {
    let Some(lines) = first_sheet("core_counts_pair.xlsx") else { return };
    let csv = fs::read_to_string(open_data().expect("it was there").join("core_counts_pair.csv"))
        .expect("its pair");
    let csv: Vec<&str> = csv.trim_start_matches('\u{FEFF}').lines().collect();
    assert_eq!(lines, csv);
}

#[test]
fn units_in_headings_and_in_a_row_of_their_own_come_through() {
    let Some(lines) = first_sheet("mineral_unit_headers.xlsx") else { return };
    assert_eq!(lines.len(), 110);
    assert!(lines[0].contains(",SIO2(WT%),TIO2(WT%),") && lines[0].contains(",SC(PPM),TI(PPM),"));
    let Some(lines) = first_sheet("rocks_unit_row.xlsx") else { return };
    assert_eq!(lines.len(), 29);
    assert!(lines[0].starts_with("Sample code,Location,Reference,SiO2,"));
    assert!(lines[1].starts_with(",,,mass%,mass%,"));
    assert!(lines[2].starts_with("AR-5,Ardley Island,Machado et al. (2005),51.73,0.8,18.15,9.06,"));
}
