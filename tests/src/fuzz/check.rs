//! What must hold of any bytes whatever, and what a file showed.

use std::collections::BTreeSet;

use plumbline_core::inspection::{Findings, Inspection, review};

use crate::program::{findings_csv, findings_json, inspect_pieces, report_html};

/// What a person may have set; a file is read under one of them.
const SETTINGS: [&str; 12] = [
    "",
    "",
    "",
    "",
    "unit_of_measure = \"ppm\"\nsigma_multiple = 2\n",
    "decimal_mark = \",\"\n",
    "decimal_mark = \".\"\ndetection_in_error_column = \"one_error\"\n",
    "text_encoding = \"Shift_JIS\"\n",
    "text_encoding = \"UTF-16LE\"\ndate_order = \"mdy\"\n",
    "id_pattern = \"{part}-{lot}\"\ndate_order = \"dmy\"\n",
    "[[source]]\nname = \"file\"\nheader_line = 3\n",
    "sheet = \"*\"\n",
];

/// Reads a file in every way that must come to the same, and says what it showed.
///
/// # Panics
/// Where something doesn't hold.
pub fn check(bytes: &[u8]) -> BTreeSet<u64> {
    let sum =
        bytes.iter().fold(bytes.len(), |sum, byte| sum.wrapping_mul(31).wrapping_add(usize::from(*byte)));
    check_under(SETTINGS[sum % SETTINGS.len()], bytes, sum / SETTINGS.len())
}

/// The same under a third of all settings; three files in a row are read under all of them.
pub fn check_under_settings(bytes: &[u8], turn: usize) {
    for (at, settings) in SETTINGS.iter().enumerate().skip(3).filter(|(at, _)| (at + turn).is_multiple_of(3))
    {
        check_under(settings, bytes, (at + turn) * 7);
    }
}

fn check_under(settings: &str, bytes: &[u8], sum: usize) -> BTreeSet<u64> {
    let settings = if settings.is_empty() {
        String::new()
    } else {
        format!("schema = \"plumbline.settings/1\"\n{settings}")
    };
    let (inspection, findings, json) = read(&settings, bytes, usize::MAX);
    holds(&inspection, &findings);
    serde_json::from_slice::<serde_json::Value>(&json).expect("findings are JSON");
    // Cut small or large; small pieces of a large file would take long.
    let size = if bytes.len() < 20_000 { 1 + sum % 700 } else { 5_000 + sum % 300_000 };
    if sum.is_multiple_of(4) {
        let (_, _, other) = read(&settings, bytes, size);
        assert!(json == other, "pieces of {size} bytes say something else");
    }
    if sum.is_multiple_of(16) {
        csv::Reader::from_reader(findings_csv(&inspection, &findings).as_slice())
            .records()
            .for_each(|record| drop(record.expect("findings are CSV")));
        let report = report_html(&inspection, &findings);
        assert!(report.ends_with("</html>\n") || report.ends_with("</html>"), "the report is whole");
    }
    shown(&inspection)
}

fn read(settings: &str, bytes: &[u8], size: usize) -> (Inspection, Findings, Vec<u8>) {
    let inspection = inspect_pieces(settings, &[("file", bytes)], size);
    let findings = review(&inspection);
    let json = findings_json(&inspection, &findings);
    (inspection, findings, json)
}

fn holds(inspection: &Inspection, findings: &Findings) {
    let mut readings = 0;
    for (at, source) in inspection.sources.iter().enumerate() {
        let counts = findings.counts(inspection, at);
        assert!(counts.adds_up(), "{}: {counts:?}", source.name);
        // The readings of a file that came in before stand for those of the same file here.
        let merged = findings.same_as.get(at).copied().flatten().is_some();
        let readings_here = if merged { 0 } else { source.readings.len() };
        assert_eq!(counts.readings, readings_here as u64, "{}", source.name);
        assert!(source.problem.is_none() || source.readings.is_empty(), "{}: refused, and read", source.name);
        assert!(
            source.problem.is_none() || !source.refusals.kept.is_empty(),
            "{}: refused unsaid",
            source.name
        );
        let named: u64 = source.refusals.kept.iter().map(|refusal| refusal.rows).sum();
        assert!(
            source.refusals.left_out > 0 || named == source.rows_refused,
            "{}: {named} of {} refused rows are named",
            source.name,
            source.rows_refused
        );
        for column in source.readings.elements() {
            assert_eq!(
                column.cell(source.readings.len()),
                plumbline_core::reading::Cell::NO_COLUMN,
                "no cell beyond"
            );
        }
        readings += readings_here;
    }
    assert!(!inspection.sources.is_empty(), "a file vanished");
    assert_eq!(findings.verdicts.len(), readings, "every reading is judged");
}

/// Codes of all that was said of a file, alone and in pairs: cheap to see, and near to which code was run.
fn shown(inspection: &Inspection) -> BTreeSet<u64> {
    let mut codes: BTreeSet<&'static str> = BTreeSet::new();
    for source in &inspection.sources {
        codes.insert(source.encoding);
        codes.insert(source.encoding_known_by.code());
        codes.extend(source.problem.map(plumbline_core::reading::NoticeCode::code));
        codes.extend(source.notices.kept.iter().take(200).map(|notice| notice.code.code()));
        codes.extend(source.refusals.kept.iter().take(200).map(|notice| notice.code.code()));
        codes.extend(source.delimiter.map(|delimiter| match delimiter {
            b',' => "comma",
            b';' => "semicolon",
            b'\t' => "tab",
            _ => "pipe",
        }));
        for block in source.blocks.iter().take(8) {
            codes.insert(block.layout.code());
            codes.extend(
                block.mark.map(|mark| if mark.byte() == b',' { "decimal comma" } else { "decimal point" }),
            );
            for column in block.columns.iter().take(60) {
                codes.insert(column.role.code());
                codes.insert(column.evidence.code());
            }
        }
        for column in source.readings.elements().iter().take(12) {
            for row in 0..source.readings.len().min(40) {
                codes.insert(column.cell(row).state.code());
            }
        }
        codes.extend((source.rows_duplicate > 0).then_some("duplicates"));
        codes.extend((source.blocks.len() > 1).then_some("several blocks"));
    }
    let hash = |text: &str| {
        text.bytes().fold(0xCBF2_9CE4_8422_2325_u64, |sum, byte| {
            (sum ^ u64::from(byte)).wrapping_mul(0x0000_0100_0000_01B3)
        })
    };
    let hashes: Vec<u64> = codes.iter().map(|code| hash(code)).collect();
    let pairs = hashes.iter().flat_map(|one| hashes.iter().map(move |other| one.wrapping_mul(3) ^ other));
    pairs.chain(hashes.iter().copied()).collect()
}
