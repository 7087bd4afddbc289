//! What must hold of every table, whatever stands in it.

use std::collections::BTreeMap;

use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::judging::SourceReview;
use plumbline_core::lot::Disposition;
use plumbline_core::material::MaterialClass;
use plumbline_core::outcome::Outcome;
use plumbline_core::reading::Identity;
use plumbline_core::substance::Substance;
use plumbline_tests::program::{findings_json, inspect, inspect_pieces};
use plumbline_tests::tables::{Table, Units, rough_text, table, table_all_known, tries};
use plumbline_tests::twin::FILE_NAME;
use proptest::prelude::*;

fn reviewed(table: &Table, units: Units) -> (Inspection, Findings) {
    let text = table.to_text(units);
    let inspection = inspect(&table.given.to_settings(), &[(FILE_NAME, text.as_bytes())]);
    let findings = review(&inspection);
    (inspection, findings)
}

/// Every judgement of a reading, by its sample id.
type Judged = BTreeMap<String, Vec<(String, String)>>;

fn judged(inspection: &Inspection) -> Judged {
    let settings = inspection.settings();
    let mut all = Judged::new();
    for source in &inspection.sources {
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let each = assessed
                .substances
                .iter()
                .chain(&assessed.halogens)
                .chain([&assessed.total.judgement])
                .map(|judgement| {
                    let reason = judgement.reason.map_or("", plumbline_core::outcome::Reason::code);
                    (judgement.outcome.code().to_owned(), reason.to_owned())
                })
                .collect();
            let id = source.readings.identity(Identity::Id, row).unwrap_or("").to_owned();
            all.insert(id, each);
        }
    }
    all
}

/// The outcomes of each reading, in file order: the five substances, then Cl, Br and the total.
fn outcomes(findings: &Findings) -> Vec<[Outcome; 8]> {
    findings
        .verdicts
        .iter()
        .map(|verdicts| {
            let (s, h) = (verdicts.substances, verdicts.halogens);
            [s[0], s[1], s[2], s[3], s[4], h[0], h[1], h[2]]
        })
        .collect()
}

/// Disposition and reasons (code, about, effect, count) of every lot by its key.
type Lots = BTreeMap<(String, String), (Disposition, Vec<(&'static str, String, Disposition, u64)>)>;

fn lots(findings: &Findings) -> Lots {
    findings
        .lots
        .iter()
        .map(|lot| {
            let key = (lot.supplier.clone().unwrap_or_default(), lot.lot.clone().unwrap_or_default());
            let reasons = lot
                .reasons
                .iter()
                .map(|reason| (reason.code.code(), reason.about.clone(), reason.effect, reason.count))
                .collect();
            (key, (lot.disposition, reasons))
        })
        .collect()
}

fn adds_up(inspection: &Inspection, findings: &Findings) {
    for at in 0..inspection.sources.len() {
        let counts = findings.counts(inspection, at);
        assert!(counts.adds_up(), "{counts:?}");
        assert_eq!(counts.used + counts.check, counts.readings, "{counts:?}");
        assert_eq!(counts.readings, inspection.sources[at].readings.len() as u64);
    }
}

proptest! {
    #![proptest_config(tries(120))]

    #[test]
    fn the_order_of_rows_changes_no_outcome_and_no_disposition(table in table(), seed in any::<u64>()) {
        let (before, findings) = reviewed(&table, Units::MgPerKg);
        let (after, findings_after) = reviewed(&table.shuffled(seed), Units::MgPerKg);
        prop_assert_eq!(judged(&before), judged(&after));
        prop_assert_eq!(lots(&findings), lots(&findings_after));
    }

    #[test]
    fn the_same_table_in_another_unit_says_the_same(table in table_all_known()) {
        let mut table = table;
        for row in &mut table.rows {
            for cell in &mut row.cells {
                // A unit inside a cell is a unit of its own; an exponent or a sign alone is a number of the column's.
                if let plumbline_tests::tables::Value::Word(word) = cell.value
                    && word.bytes().any(|byte| byte.is_ascii_digit())
                {
                    cell.value = plumbline_tests::tables::Value::Word("ND");
                }
                if cell.error == plumbline_tests::tables::Error::Word("-3") {
                    cell.error = plumbline_tests::tables::Error::Word("");
                }
            }
        }
        let (inspection, findings) = reviewed(&table, Units::MgPerKg);
        for units in Units::ALL {
            let (other, other_findings) = reviewed(&table, units);
            prop_assert_eq!(judged(&inspection), judged(&other), "{:?}", units);
            prop_assert_eq!(lots(&findings), lots(&other_findings), "{:?}", units);
        }
    }

    #[test]
    fn a_wider_sigma_never_turns_an_open_outcome_into_below(table in table(), more in 1_i64..300_000_000) {
        let (_, before) = reviewed(&table, Units::MgPerKg);
        let (_, after) = reviewed(&table.with_wider_errors(more), Units::MgPerKg);
        for (before, after) in outcomes(&before).iter().zip(outcomes(&after)) {
            for (before, after) in before.iter().zip(after) {
                prop_assert!(after != Outcome::Below || *before == Outcome::Below, "{:?} became BL", before);
            }
        }
    }

    #[test]
    fn a_higher_value_never_improves_an_outcome_or_a_disposition(table in table(), more in 1_i64..900_000_000) {
        let mut table = table;
        // In a row in % a higher number may lie beyond any mass fraction: then it is no measurement any more.
        table.rows.iter_mut().for_each(|row| row.units = None);
        let (_, before) = reviewed(&table, Units::MgPerKg);
        let (_, after) = reviewed(&table.with_higher_values(more), Units::MgPerKg);
        for (before, after) in outcomes(&before).iter().zip(outcomes(&after)) {
            for (before, after) in before.iter().zip(after) {
                prop_assert!(after >= *before, "{:?} became {:?}", before, after);
            }
        }
        for ((key, before), after) in lots(&before).iter().zip(lots(&after).values()) {
            prop_assert!(after.0 >= before.0, "{:?}: {:?} became {:?}", key, before.0, after.0);
        }
    }

    #[test]
    fn taking_an_element_away_never_accepts(table in table_all_known(), which in 0_usize..6) {
        let element = table.columns[which].element;
        let (_, before) = reviewed(&table, Units::MgPerKg);
        let (_, after) = reviewed(&table.without_element(element), Units::MgPerKg);
        never_accepts(&before, &after)?;
        if let Some(substance) = Substance::from_symbol(element) {
            for verdicts in &after.verdicts {
                let applies = !(substance == Substance::Br && verdicts.class == MaterialClass::Metal);
                let expected = if applies { Outcome::NotMeasured } else { Outcome::NotApplicable };
                prop_assert_eq!(verdicts.substances[substance as usize], expected);
            }
            let bound = after.verdicts.iter().any(|verdicts| {
                substance != Substance::Br || verdicts.class != MaterialClass::Metal
            });
            if bound {
                prop_assert!(after.lots.iter().any(|lot| lot.disposition != Disposition::Accept));
            }
        }
    }

    #[test]
    fn blanking_a_cell_never_accepts(table in table_all_known(), row in any::<prop::sample::Index>(), which in 0_usize..6) {
        let row = row.index(table.rows.len());
        let (_, before) = reviewed(&table, Units::MgPerKg);
        let (_, after) = reviewed(&table.with_blank(row, which), Units::MgPerKg);
        never_accepts(&before, &after)?;
        if let Some(substance) = Substance::from_symbol(table.columns[which].element) {
            let outcome = after.verdicts[row].substances[substance as usize];
            prop_assert!(matches!(outcome, Outcome::NotMeasured | Outcome::NotApplicable), "{:?}", outcome);
        }
    }

    #[test]
    fn an_unknown_class_is_never_laxer_than_any_class(table in table_all_known()) {
        let (_, unknown) = reviewed(&table.with_class("glass"), Units::MgPerKg);
        for class in ["polymer", "metal", "composite"] {
            let (_, known) = reviewed(&table.with_class(class), Units::MgPerKg);
            for (unknown, known) in outcomes(&unknown).iter().zip(outcomes(&known)) {
                for (unknown, known) in unknown.iter().zip(known) {
                    prop_assert!(*unknown >= known, "{:?} where {} says {:?}", unknown, class, known);
                }
            }
        }
        // Whatever it is in truth, plated items included, it waits for a person to say so.
        prop_assert!(unknown.lots.iter().all(|lot| lot.disposition != Disposition::Accept));
    }

    #[test]
    fn every_row_of_every_table_has_one_fate(table in table()) {
        let (inspection, findings) = reviewed(&table, Units::MgPerKg);
        adds_up(&inspection, &findings);
        prop_assert_eq!(inspection.sources[0].rows_in, table.rows.len() as u64);
    }
}

fn never_accepts(before: &Findings, after: &Findings) -> Result<(), TestCaseError> {
    let (before, after) = (lots(before), lots(after));
    prop_assert_eq!(before.len(), after.len());
    for ((key, before), after) in before.iter().zip(after.values()) {
        let accepted = after.0 == Disposition::Accept && before.0 != Disposition::Accept;
        prop_assert!(!accepted, "{:?}: {:?} became {:?}", key, before, after);
    }
    Ok(())
}

proptest! {
    #![proptest_config(tries(400))]

    #[test]
    fn every_row_of_every_rough_text_has_one_fate(bytes in rough_text()) {
        let inspection = inspect("", &[("rough.csv", &bytes)]);
        let findings = review(&inspection);
        adds_up(&inspection, &findings);
        let source = &inspection.sources[0];
        // Without quotes a row is a line: counted here once more, by hand.
        let text = String::from_utf8_lossy(&bytes);
        prop_assert!(source.problem.is_some() || !source.blocks.is_empty(), "neither a table nor a problem: {:?}", text);
        if !bytes.contains(&b'"') && source.problem.is_none() {
            let header = source.blocks[0].header_line;
            prop_assert_eq!(source.rows_in, u64::from(lines_of(&bytes) - header), "{:?}", text);
        }
    }

    #[test]
    fn rough_text_cut_anywhere_says_the_same(bytes in rough_text(), size in 1_usize..40) {
        prop_assert_eq!(json_of(&bytes, bytes.len().max(1)), json_of(&bytes, size));
    }
}

/// Physical lines: each ended by LF, CR LF or a lone CR; what follows the last end is one more.
fn lines_of(bytes: &[u8]) -> u32 {
    let text = String::from_utf8_lossy(bytes).replace("\r\n", "\n").replace('\r', "\n");
    let open = !text.is_empty() && !text.ends_with('\n');
    u32::try_from(text.matches('\n').count() + usize::from(open)).expect("a short text")
}

fn json_of(bytes: &[u8], size: usize) -> String {
    let inspection = inspect_pieces("", &[("cut.csv", bytes)], size);
    let findings = review(&inspection);
    String::from_utf8(findings_json(&inspection, &findings)).expect("UTF-8")
}

proptest! {
    // Each file is longer than what a reader looks at before it knows the table, so that the cuts fall into rows.
    #![proptest_config(tries(4))]

    #[test]
    fn a_long_file_cut_anywhere_says_the_same(table in table(), rough in rough_text(), sizes in prop::array::uniform3(1_usize..90_000)) {
        let mut bytes = table.to_text(Units::MgPerKg).into_bytes();
        let rows = bytes.clone();
        while bytes.len() < 300_000 {
            bytes.extend_from_slice(&rows);
            bytes.extend_from_slice(&rough);
            bytes.push(b'\n');
        }
        let whole = json_of(&bytes, bytes.len());
        for size in sizes {
            prop_assert!(whole == json_of(&bytes, size), "pieces of {} bytes say something else", size);
        }
    }
}

/// What tells one reading of a table from another may stand far down in it. Pieces of any size must come to the same
/// reading (design, section 10: any chunk cut, same findings), which they do not where as much is looked at as happens to
/// have come in.
fn shows_only_late(header: &str, row: &str, late: &str) {
    let mut text = header.to_owned();
    while text.len() < 300_000 {
        text.push_str(row);
    }
    text.push_str(late);
    let whole = json_of(text.as_bytes(), text.len());
    for size in [1_000, 70_000, 256 * 1024, 290_000] {
        assert!(whole == json_of(text.as_bytes(), size), "pieces of {size} bytes say something else");
    }
}

#[test]
fn a_decimal_mark_that_shows_only_late_is_read_the_same_in_pieces_of_any_size() {
    shows_only_late("Sample;Pb mg/kg;Pb u (1s) mg/kg;Class\n", "S1;12;1;polymer\n", "S2;12,5;1;polymer\n");
}

#[test]
fn a_unit_column_that_shows_only_late_what_it_is_is_read_the_same_in_pieces_of_any_size() {
    shows_only_late("Sample,Unit,Pb,Pb u (1s),Class\n", "S1,ppm,12,1,polymer\n", "S2,piece 7,12,1,polymer\n");
}

#[test]
fn a_number_that_shows_only_late_makes_a_head_in_pieces_of_any_size() {
    shows_only_late("Sample,Lead,Class\n", "S1,,polymer\n", "S2,12,polymer\n");
}
