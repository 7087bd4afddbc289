//! No row is lost: whatever a table looks like and whatever happened to it, every row has one fate, and the bytes may
//! come in any pieces.

use plumbline_core::inspection::{Inspection, RowCounts, review};
use plumbline_core::reading::Source;
use plumbline_tests::program::{findings_json, inspect_pieces};
use plumbline_tests::surface::axes::Layout;
use plumbline_tests::surface::damage::{Damage, bytes_after, damaged};
use plumbline_tests::surface::{Form, forms};
use plumbline_tests::tables::tries;
use proptest::prelude::*;

const SOUND: &[u8] = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\nS2,metal,1360,20\n";

/// The findings of a file beside a sound one.
fn read(bytes: &[u8], size: usize) -> (Inspection, Vec<RowCounts>, Vec<u8>) {
    let inspection = inspect_pieces("", &[("damaged.csv", bytes), ("sound.csv", SOUND)], size);
    let findings = review(&inspection);
    let counts = (0..inspection.sources.len()).map(|at| findings.counts(&inspection, at)).collect();
    let json = findings_json(&inspection, &findings);
    (inspection, counts, json)
}

/// Physical lines: each ended by LF, CR LF or a lone CR; what follows the last end is one more.
fn lines_of(text: &str) -> u64 {
    let text = text.replace("\r\n", "\n").replace('\r', "\n");
    let open = !text.is_empty() && !text.ends_with('\n');
    text.matches('\n').count() as u64 + u64::from(open)
}

fn every_row_has_one_fate(form: &Form, damages: &[Damage], sizes: [usize; 2]) -> Result<(), TestCaseError> {
    let bytes = bytes_after(form, damages);
    let (inspection, counts, json) = read(&bytes, bytes.len());
    for (source, counts) in inspection.sources.iter().zip(&counts) {
        prop_assert!(counts.adds_up(), "{}: {:?}", source.name, counts);
        prop_assert!(source.problem.is_none() || source.readings.is_empty(), "{}", source.name);
        // What was refused is named.
        let named: u64 = source.refusals.kept.iter().map(|refusal| refusal.rows).sum();
        prop_assert!(
            source.refusals.left_out > 0 || named == source.rows_refused,
            "{:?}",
            source.refusals.kept
        );
    }
    every_line_is_counted(form, damages, &inspection.sources[0], &bytes)?;
    let sums = |of: fn(&RowCounts) -> u64| counts.iter().map(of).sum::<u64>();
    let fates = sums(|counts| counts.used)
        + sums(|counts| counts.check)
        + sums(|counts| counts.duplicate)
        + sums(|counts| counts.set_aside)
        + sums(|counts| counts.refused);
    prop_assert_eq!(sums(|counts| counts.rows_in), fates);
    let sound = inspection.sources.iter().find(|source| source.name == "sound.csv").expect("it was read");
    prop_assert_eq!(sound.readings.len(), 2);
    for size in sizes {
        prop_assert!(json == read(&bytes, size).2, "pieces of {} bytes say something else", size);
    }
    Ok(())
}

/// Where a row is a line, the rows below the first header are the lines below it.
fn every_line_is_counted(
    form: &Form,
    damages: &[Damage],
    source: &Source,
    bytes: &[u8],
) -> Result<(), TestCaseError> {
    let in_bytes = damages.iter().any(|damage| {
        matches!(damage, Damage::Byte(..) | Damage::CutOff(_) | Damage::CellReplaced(..) | Damage::RowOf(..))
    });
    let text = String::from_utf8_lossy(bytes);
    let wide = form.encoding.name().starts_with("utf-16");
    if in_bytes || wide || text.contains('"') || form.layout == Layout::Turned {
        return Ok(());
    }
    if let Some(block) =
        source.blocks.first().filter(|block| block.layout != plumbline_core::reading::Layout::Turned)
    {
        prop_assert_eq!(source.rows_in, lines_of(&text) - u64::from(block.header_line));
    }
    Ok(())
}

proptest! {
    #![proptest_config(tries(30))]

    #[test]
    fn every_row_of_a_damaged_wide_table_has_one_fate(
        (form, damages) in damaged(Layout::Wide), sizes in prop::array::uniform2(1_usize..900)
    ) {
        every_row_has_one_fate(&form, &damages, sizes)?;
    }

    #[test]
    fn every_row_of_a_damaged_long_table_has_one_fate(
        (form, damages) in damaged(Layout::Long), sizes in prop::array::uniform2(1_usize..900)
    ) {
        every_row_has_one_fate(&form, &damages, sizes)?;
    }

    #[test]
    fn every_row_of_a_damaged_table_on_its_side_has_one_fate(
        (form, damages) in damaged(Layout::Turned), sizes in prop::array::uniform2(1_usize..900)
    ) {
        every_row_has_one_fate(&form, &damages, sizes)?;
    }

    #[test]
    fn every_row_of_a_damaged_table_of_spectra_has_one_fate(
        (form, damages) in damaged(Layout::Joined), sizes in prop::array::uniform2(1_usize..900)
    ) {
        every_row_has_one_fate(&form, &damages, sizes)?;
    }
}

/// Workbooks and archives come in pieces too, and may be cut off.
#[test]
fn a_packed_table_in_pieces_or_cut_off_loses_no_row_unsaid() {
    let packed =
        forms().iter().filter(|form| form.container != plumbline_tests::surface::axes::Container::Plain);
    for form in packed.step_by(9) {
        let (_, bytes) = form.file();
        let (_, _, json) = read(&bytes, bytes.len());
        assert!(json == read(&bytes, 700).2, "{}: in pieces", form.name());
        for kept in [bytes.len() - 1, bytes.len() * 2 / 3, bytes.len() / 3, 30, 5] {
            let (inspection, counts, json) = read(&bytes[..kept], kept);
            assert!(counts.iter().all(RowCounts::adds_up), "{}: cut to {kept}: {counts:?}", form.name());
            assert!(json == read(&bytes[..kept], 97).2, "{}: cut to {kept}, in pieces", form.name());
            let sound =
                inspection.sources.iter().find(|source| source.name == "sound.csv").expect("it was read");
            assert_eq!(sound.readings.len(), 2);
        }
    }
}
