//! Files that no analyser should write: each gets a clear word about it, with its place, and harms no other file.

use std::fmt::Write as _;

use plumbline_core::inspection::{Inspection, review};
use plumbline_core::reading::{Identity, NoticeCode, Source};
use plumbline_tests::packed::zip::{Entry, archive};
use plumbline_tests::packed::{Sheet, SheetCell, open_document, xlsx};
use plumbline_tests::program::{findings_csv, findings_json, inspect, report_html};
use serde_json::Value;

const GOOD: &[u8] = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\nS2,metal,1360,20\n";

/// What became of a file beside a good one, after checking that the good one says what it says alone: one source, or
/// one for each file of an archive.
fn all_beside_a_good_one(name: &str, bytes: &[u8]) -> Vec<Value> {
    let alone = findings("", &[("good.csv", GOOD)]);
    let both = findings("", &[(name, bytes), ("good.csv", GOOD)]);
    let sources = both["sources"].as_array().expect("sources");
    let good = sources.iter().position(|source| source["name"] == "good.csv").expect("the good file");
    assert_eq!(sources[good]["sha256"], alone["sources"][0]["sha256"]);
    let of = |findings: &Value, source: usize| -> Vec<Value> {
        let readings = findings["readings"].as_array().cloned().unwrap_or_default();
        readings
            .into_iter()
            .filter(|reading| reading["source"] == source)
            .map(|mut reading| {
                reading["source"] = Value::Null;
                reading
            })
            .collect()
    };
    assert_eq!(of(&both, good), of(&alone, 0), "the other file is unaffected");
    assert!(
        both["lots"].as_array().is_some_and(|lots| lots.iter().any(|lot| lot["disposition"] == "not_accept")),
        "and is still disposed of"
    );
    let mut others = sources.clone();
    others.remove(good);
    others
}

fn beside_a_good_one(bytes: &[u8]) -> Value {
    let sources = all_beside_a_good_one("bad.csv", bytes);
    assert_eq!(sources.len(), 1);
    sources[0].clone()
}

fn findings(settings: &str, files: &[(&str, &[u8])]) -> Value {
    let inspection = inspect(settings, files);
    let findings = review(&inspection);
    for at in 0..inspection.sources.len() {
        let counts = findings.counts(&inspection, at);
        assert!(counts.adds_up(), "{counts:?}");
    }
    serde_json::from_slice(&findings_json(&inspection, &findings)).expect("findings are JSON")
}

fn source(bytes: &[u8]) -> Source {
    inspect("", &[("bad.csv", bytes)]).sources.remove(0)
}

fn refused_for(bytes: &[u8], code: &str) {
    is_refused(&beside_a_good_one(bytes), code);
}

/// A refusal that a person can act on, and nothing read.
fn is_refused(source: &Value, code: &str) {
    assert_eq!(source["problem"], code, "{source}");
    assert_eq!(source["refusals"][0]["code"], code);
    let text = source["refusals"][0]["text"].as_str().unwrap_or("");
    let remedy = source["refusals"][0]["remedy"].as_str().unwrap_or("");
    assert!(text.len() > 10 && remedy.len() > 10, "{source}");
    assert_eq!(source["readings"], 0);
}

#[test]
fn an_empty_file_says_so() {
    refused_for(b"", "empty_file");
}

#[test]
fn a_file_of_nothing_but_space_says_so() {
    refused_for(b" \t\r\n\n   \n", "empty_file");
    refused_for(b"\xEF\xBB\xBF", "empty_file");
}

#[test]
fn a_header_without_rows_says_so() {
    refused_for(b"Sample,Pb mg/kg,Pb u (1s)\n", "header_only");
}

#[test]
fn a_header_that_ends_without_a_line_end_says_so() {
    refused_for(b"Sample,Pb mg/kg,Pb u (1s)", "header_only");
}

#[test]
fn a_header_with_nothing_but_blank_lines_below_says_so() {
    refused_for(b"Sample,Pb mg/kg,Pb u (1s)\n\n\n", "header_only");
}

#[test]
fn a_picture_renamed_to_csv_is_no_text() {
    let mut picture = b"\x89PNG\r\n\x1a\n\x00\x00\x00\rIHDR\x00\x00\x00\x10\x00\x00\x00\x10\x08\x02".to_vec();
    picture.extend((0..4000_u32).map(|at| (at.wrapping_mul(2_654_435_761) >> 13) as u8));
    refused_for(&picture, "not_text");
}

#[test]
fn what_is_left_of_a_workbook_or_an_old_one_is_named() {
    refused_for(b"PK\x03\x04\x14\x00\x06\x00\x08\x00\x00\x00!\x00[Content_Types].xml", "archive_broken");
    refused_for(b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1\x00\x00\x00\x00\x00\x00\x00\x00", "workbook_not_read");
}

fn utf_16(text: &str, bytes: fn(u16) -> [u8; 2]) -> Vec<u8> {
    text.encode_utf16().flat_map(bytes).collect()
}

#[test]
fn a_text_in_utf_16_that_ends_in_half_a_character_loses_that_half_only() {
    let text = String::from_utf8_lossy(GOOD);
    for (mark, bytes) in [("\u{FEFF}", u16::to_le_bytes as fn(u16) -> [u8; 2]), ("", u16::to_be_bytes)] {
        let mut odd = utf_16(&format!("{mark}{text}"), bytes);
        odd.push(b'S');
        let inspection = inspect("", &[("odd.csv", &odd)]);
        let source = &inspection.sources[0];
        assert_eq!(source.problem, None);
        assert!(source.readings.len() >= 2);
        assert_eq!(source.readings.identity(Identity::Id, 1), Some("S2"));
        let said = source.notices.kept.iter().chain(&source.refusals.kept).any(|notice| notice.line >= 4);
        assert!(said, "the half character is told: {:?}", source.notices.kept);
    }
}

#[test]
fn a_table_without_an_element_is_refused_with_all_its_rows() {
    let source = beside_a_good_one(b"Name,Town\nAnna,Lisbon\n\nBela,Graz\n");
    assert_eq!(source["problem"], "no_element_column");
    assert_eq!(source["refusals"][0]["line"], 1);
    assert_eq!((&source["rows_in"], &source["rows_refused"]), (&Value::from(4), &Value::from(3)));
}

#[test]
fn a_byte_order_mark_hides_no_heading() {
    let bare = findings("", &[("bom.csv", GOOD)]);
    let marked = findings("", &[("bom.csv", &[b"\xEF\xBB\xBF".as_slice(), GOOD].concat())]);
    assert_eq!(marked["readings"], bare["readings"]);
    assert_ne!(marked["sources"][0]["sha256"], bare["sources"][0]["sha256"], "the digest is over the bytes");
}

#[test]
fn lone_carriage_returns_end_lines() {
    let text = String::from_utf8_lossy(GOOD).replace('\n', "\r");
    assert_eq!(
        findings("", &[("a.csv", text.as_bytes())])["readings"],
        findings("", &[("a.csv", GOOD)])["readings"]
    );
}

#[test]
fn a_cell_of_ten_megabytes_costs_its_line_and_nothing_else() {
    let header = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\n";
    for (open, close) in [("", ""), ("\"", "\"")] {
        let mut bytes = header.to_vec();
        bytes.extend_from_slice(open.as_bytes());
        bytes.extend(std::iter::repeat_n(b'x', 10 * 1024 * 1024));
        bytes.extend_from_slice(format!("{close},metal,5,1\nS3,metal,6,1\n").as_bytes());
        let source = source(&bytes);
        assert_eq!(source.readings.len(), 2);
        assert_eq!(source.readings.line(1), 4);
        let refusal = &source.refusals.kept[0];
        assert_eq!((refusal.line, refusal.code.code()), (3, "line_too_long"));
    }
}

#[test]
fn a_quoted_cell_of_ten_megabytes_over_many_lines_costs_lines_and_nothing_else() {
    let mut bytes = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\n\"".to_vec();
    for _ in 0..20_000 {
        bytes.extend(std::iter::repeat_n(b'x', 511));
        bytes.push(b'\n');
    }
    bytes.extend_from_slice(b"S3,metal,6,1\n");
    let inspection = inspect("", &[("bad.csv", &bytes)]);
    let findings = review(&inspection);
    let counts = findings.counts(&inspection, 0);
    assert!(counts.adds_up());
    assert_eq!(counts.rows_in, 20_002);
    let first = &inspection.sources[0].refusals.kept[0];
    assert_eq!((first.line, first.code.code()), (3, "quote_left_open"));
    assert_eq!(inspection.sources[0].readings.line(inspection.sources[0].readings.len() - 1), 20_003);
}

#[test]
fn a_quote_left_open_on_every_line_ends() {
    let mut bytes = b"Sample,Class,Pb mg/kg,Pb u (1s)\n".to_vec();
    for row in 0..20_000 {
        // Two opening quotes a line leave one open, whatever the line before left open.
        bytes.extend_from_slice(format!("S{row},\"metal,5,\"1\"x\n").as_bytes());
    }
    let inspection = inspect("", &[("bad.csv", &bytes)]);
    let findings = review(&inspection);
    let counts = findings.counts(&inspection, 0);
    assert!(counts.adds_up(), "{counts:?}");
    assert!(counts.rows_in > 1000, "{counts:?}");
}

#[test]
fn a_single_quote_that_opens_every_line_ends() {
    let mut bytes = b"Sample,Class,Pb mg/kg,Pb u (1s)\n".to_vec();
    for row in 0..9_999 {
        bytes.extend_from_slice(format!("\"S{row},metal,5,1\n").as_bytes());
    }
    let inspection = inspect("", &[("bad.csv", &bytes)]);
    let findings = review(&inspection);
    let counts = findings.counts(&inspection, 0);
    assert!(counts.adds_up(), "{counts:?}");
    assert!(counts.refused > 0, "{counts:?}");
}

/// A quote that was opened by mistake closes at the next one, lines later, and a letter follows it, which no quoted cell
/// has (RFC 4180, 2.5 to 2.7). The lines between were readings, one of them over limit: they must not vanish unsaid.
#[test]
fn a_stray_quote_swallows_no_reading_in_silence() {
    let source = source(
        b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\n\"S2,metal,1360,20\nS3,metal,5,1\n\"S4\",metal,5,1\n",
    );
    assert!(
        source.readings.len() == 4 || source.rows_refused > 0,
        "{} readings, none refused",
        source.readings.len()
    );
}

#[test]
fn a_unit_that_is_not_known_gives_no_mass_fraction() {
    let findings = findings("", &[("a.csv", b"Sample,Class,Units,Pb,Pb u (1s)\nS1,metal,furlongs,640,20\n")]);
    let pb = &findings["readings"][0]["elements"]["Pb"];
    assert_eq!((&pb["state"], &pb["value_mg_kg"]), (&Value::from("unit_unknown"), &Value::Null));
    assert_eq!(pb["as_written"], "640");
    let notice = &findings["sources"][0]["notices"][0];
    assert_eq!(
        (&notice["code"], &notice["line"], &notice["column"]),
        (&"unit_not_known".into(), &2.into(), &3.into())
    );
}

#[test]
fn what_is_no_number_costs_its_cell_and_never_its_row() {
    for (cell, code) in [
        ("NaN", "cell_not_understood"),
        ("inf", "cell_not_understood"),
        ("-Infinity", "cell_not_understood"),
        ("1e400", "number_out_of_range"),
        ("-1e400", "number_out_of_range"),
        ("0x10", "cell_not_understood"),
        ("1e", "cell_not_understood"),
        ("٥", "cell_not_understood"),
        ("9999999999999999999999", "number_out_of_range"),
        ("1,2,3", "row_too_long"),
    ] {
        let text = format!("Sample,Class,Pb mg/kg,Pb u (1s),Cd mg/kg,Cd u (1s)\nS1,metal,{cell},1,5,1\n");
        let findings = findings("", &[("a.csv", text.as_bytes())]);
        let source = &findings["sources"][0];
        if code == "row_too_long" {
            assert_eq!(source["refusals"][0]["code"], code);
            continue;
        }
        let notice = &source["notices"][0];
        assert_eq!(
            (&notice["code"], &notice["line"], &notice["column"]),
            (&code.into(), &2.into(), &3.into()),
            "{cell}"
        );
        let reading = &findings["readings"][0];
        assert_eq!(reading["elements"]["Pb"]["state"], "text", "{cell}");
        assert_eq!(reading["outcomes"]["Pb"]["outcome"], "not_measured", "{cell}");
        assert_eq!(reading["outcomes"]["Cd"]["outcome"], "BL", "{cell}");
    }
}

#[test]
fn an_error_that_is_no_number_leaves_the_value_without_one() {
    for cell in ["NaN", "-1", "1e400", "about 1"] {
        let text = format!("Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,{cell}\n");
        let findings = findings("", &[("a.csv", text.as_bytes())]);
        assert_eq!(findings["sources"][0]["notices"][0]["code"], "error_not_understood", "{cell}");
        assert_eq!(findings["readings"][0]["outcomes"]["Pb"]["outcome"], "no_uncertainty", "{cell}");
    }
}

#[test]
fn a_negative_value_is_a_value() {
    let findings = findings("", &[("a.csv", b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,-12.5,10\n")]);
    let reading = &findings["readings"][0];
    assert_eq!(reading["elements"]["Pb"]["value_mg_kg"], -12.5);
    assert_eq!(reading["outcomes"]["Pb"]["outcome"], "BL");
}

#[test]
fn a_stray_nul_stays_in_its_cell() {
    let mut bytes =
        b"Sample,Class,Pb mg/kg,Pb u (1s)\nS\x001,metal,7,1\nS2,metal,5\x00,1\nS3,metal,5,1\x00\n".to_vec();
    for row in 4..60 {
        bytes.extend_from_slice(format!("S{row},metal,5,1\n").as_bytes());
    }
    let findings = findings("", &[("a.csv", &bytes)]);
    let readings = &findings["readings"];
    assert_eq!(
        (&readings[0]["id"], &readings[0]["outcomes"]["Pb"]["outcome"]),
        (&"S\u{0}1".into(), &"BL".into())
    );
    assert_eq!(readings[1]["outcomes"]["Pb"]["reason"], "cell_not_understood");
    assert_eq!(readings[2]["outcomes"]["Pb"]["reason"], "uncertainty_not_stated");
    assert_eq!(readings[3]["outcomes"]["Pb"]["outcome"], "BL");
}

#[test]
fn a_file_of_nul_bytes_is_no_text() {
    refused_for(&vec![0; 70_000], "not_text");
}

#[test]
fn a_million_columns_are_refused_and_end() {
    let mut bytes = vec![b','; 1 << 20];
    bytes.extend_from_slice(b"Pb mg/kg\n1\n");
    let source = source(&bytes);
    assert!(source.problem.is_some());
    let of_columns = |count: usize| {
        let names = (0..count).map(|at| format!("c{at}")).collect::<Vec<_>>().join(",");
        let text = format!("{names},Pb mg/kg,Pb u (1s),Class\n{}5,1,metal\n", ",".repeat(count));
        self::source(text.as_bytes())
    };
    let source = of_columns(16_000);
    assert_eq!((source.problem, source.readings.len()), (None, 1));
    assert_eq!(source.blocks[0].columns.len(), 16_003);
    // More than a sheet can have.
    assert_eq!(of_columns(20_000).problem.map(NoticeCode::code), Some("too_many_columns"));
}

/// Total chromium stands for Cr(VI); a column of Cr(VI) is not total chromium, and a low number in it rules nothing out.
#[test]
fn a_column_of_hexavalent_chromium_is_not_total_chromium() {
    for heading in [
        "Cr(VI)",
        "Cr (VI)",
        "Cr(VI) mg/kg",
        "CrVI mg/kg",
        "Cr6+ mg/kg",
        "Cr VI [mg/kg]",
        "Cr (III)",
        "Cr (6+)",
    ] {
        let text =
            format!("Sample,Class,{heading},Cr u (1s),Pb mg/kg,Pb u (1s)\nS1,metal,5 mg/kg,1 mg/kg,5,1\n");
        let findings = findings("", &[("a.csv", text.as_bytes())]);
        let outcome = &findings["readings"][0]["outcomes"]["Cr"]["outcome"];
        assert_eq!(outcome, "not_measured", "{heading}: {}", findings["readings"][0]["elements"]);
    }
}

/// What an analyser prints beside an element that is no mass fraction of it, even where a cell carries a unit.
#[test]
fn what_is_no_mass_fraction_gives_none() {
    for heading in [
        "Pb counts",
        "Pb (cps)",
        "Pb cps",
        "Pb Ka",
        "Pb (La)",
        "Pb pass/fail",
        "Pb z-score",
        "Pb ug/cm2",
        "Pb RSD %",
    ] {
        let text = format!("Sample,Class,{heading},Cd mg/kg,Cd u (1s)\nS1,metal,5,5,1\n");
        let findings = findings("", &[("a.csv", text.as_bytes())]);
        assert_eq!(findings["readings"][0]["outcomes"]["Pb"]["outcome"], "not_measured", "{heading}");
        assert_eq!(findings["readings"][0]["outcomes"]["Cd"]["outcome"], "BL", "{heading}");
    }
}

/// A row of a long table for an element that was not found, `H,,`, is no heading row.
#[test]
fn a_long_table_is_not_taken_for_a_wide_one() {
    let text = b"element,value,unit\nH,,\nLi,24,ppm\nCd,,\nPb,17,ppm\n";
    let source = beside_a_good_one(text);
    assert_eq!(
        (&source["problem"], &source["readings"]),
        (&Value::Null, &Value::from(1)),
        "{}",
        source["mapping"]
    );
    let readings = &findings("", &[("long.csv", text)])["readings"];
    assert_eq!(readings[0]["elements"]["Pb"]["value_mg_kg"], 17);
    assert_eq!(readings[0]["elements"]["Cd"]["state"], "blank");
}

/// Words a person could type into a cell to have them run by a page or a spreadsheet.
const SCRIPTS: [&str; 6] = [
    "<script>alert(1)</script>",
    "\"><img src=x onerror=alert(1)>",
    "</style><script>1</script>",
    "javascript:alert(1)",
    "<!--<script>",
    "&lt;script&gt;",
];

fn scripted() -> Inspection {
    let mut text = String::from("Sample,Part,Material,Lot,Supplier,Class,Instrument,Pb mg/kg,Pb u (1s)\n");
    for script in SCRIPTS {
        let cell = format!("\"{}\"", script.replace('"', "\"\""));
        text += &(vec![cell; 8].join(",") + ",1\n");
    }
    let quoted = SCRIPTS.map(|script| format!("{script:?}")).join(", ");
    let settings = format!(
        "schema = \"plumbline.settings/1\"\ninspector = {:?}\nplace = {:?}\ntitle = {:?}\nreviewed_at = {:?}\n\
         check_samples = [{quoted}]\n[[part]]\npart = {:?}\nmaterials = [{quoted}]\n",
        SCRIPTS[0], SCRIPTS[1], SCRIPTS[2], SCRIPTS[0], SCRIPTS[0]
    );
    let mut inspection = inspect(&settings, &[("<script>alert(2)</script>.csv", text.as_bytes())]);
    // The same once more where the rows are products, so that lots, parts and materials carry the texts as well.
    let products = inspect("", &[("<img src=x onerror=1>.csv", text.as_bytes())]).sources.remove(0);
    inspection.add_source(Source { sha256: "0".repeat(64), ..products });
    inspection
}

#[test]
fn the_report_runs_nothing_that_stands_in_a_cell() {
    let inspection = scripted();
    let report = report_html(&inspection, &review(&inspection)).to_lowercase();
    for open in ["<script>alert", "<script>1", "<img src=x", "<!--<script"] {
        assert!(!report.contains(open), "{open} stands in the report as markup");
    }
    assert!(report.contains("&lt;script&gt;alert(1)"), "and is shown as text");
    assert_eq!(report.matches("</style>").count(), report.matches("<style").count());
    for attribute in ["href=\"javascript:", "src=\"javascript:"] {
        assert!(!report.contains(attribute));
    }
}

#[test]
fn the_csv_lets_no_cell_run_as_a_formula() {
    let formulas = [
        "=1+1",
        "+1+1",
        "-1+1",
        "@SUM(A1)",
        "=HYPERLINK(\"\"http://a\"\",\"\"b\"\")",
        " =1+1",
        "\t=1+1",
        "\n=1+1",
    ];
    let mut text = String::from("Sample,Part,Lot,Class,Pb mg/kg,Pb u (1s)\n");
    for formula in formulas {
        text += &["\"", formula, "\",\"", formula, "\",\"", formula, "\",metal,-5,1\n"].concat();
    }
    let inspection = inspect("", &[("=cmd.csv", text.as_bytes())]);
    let csv = findings_csv(&inspection, &review(&inspection));
    let mut reader = csv::Reader::from_reader(csv.as_slice());
    let headings = reader.headers().expect("a header").clone();
    let mut rows = 0;
    for record in reader.records() {
        let record = record.expect("well formed");
        rows += 1;
        for (heading, cell) in headings.iter().zip(&record) {
            let risky =
                cell.trim_start().starts_with(['=', '+', '-', '@']) || cell.starts_with(['\t', '\r', '\n']);
            let number = cell.parse::<f64>().is_ok();
            assert!(!risky || number, "{heading}: {cell:?} would run");
        }
        assert_eq!(
            &record[headings.iter().position(|heading| heading == "Pb_value_mg_kg").expect("Pb")],
            "-5"
        );
        assert!(record[0].starts_with('\''));
    }
    // A cell over two lines may have swallowed rows, so the last one never becomes a reading.
    assert_eq!(rows, formulas.len() - 1);
    assert_eq!(inspection.sources[0].refusals.kept[0].code.code(), "quote_left_open");
}

#[test]
fn the_csv_has_its_columns_its_line_ends_and_no_byte_order_mark() {
    let inspection = inspect("", &[("a.csv", GOOD)]);
    let csv = String::from_utf8(findings_csv(&inspection, &review(&inspection))).expect("UTF-8");
    assert!(csv.starts_with("source,line,id,"));
    assert!(csv.ends_with("\r\n") && csv.matches("\r\n").count() == 3 && csv.matches('\n').count() == 3);
}

#[test]
fn a_table_whose_rows_are_all_refused_holds_what_it_may_be_about() {
    let settings = "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";
    let clean = b"Sample,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\n\
        S1,metal,1,0.5,5,1,1,0.5,5,1\n";
    let alone = findings(settings, &[("clean.csv", clean)]);
    assert_eq!(alone["lots"][0]["disposition"], "accept");
    let refused = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,1360,20,too,long\n";
    let both = findings(settings, &[("clean.csv", clean), ("refused.csv", refused)]);
    assert_eq!(both["sources"][1]["rows_refused"], 1);
    assert_eq!(both["sources"][1]["readings"], 0);
    let all_accepted =
        both["lots"].as_array().is_some_and(|lots| lots.iter().all(|lot| lot["disposition"] == "accept"));
    let told = !both["sources"][1]["problem"].is_null();
    assert!(!all_accepted || told, "an OL that was refused must not leave a clean sheet behind it");
}

fn sheet_of(text: &str) -> Sheet {
    let cell = |cell: &str| match cell.parse::<f64>() {
        Ok(_) => SheetCell::Number(cell.to_owned()),
        Err(_) => SheetCell::Text(cell.to_owned()),
    };
    let rows = text.lines().map(|line| line.split(',').map(cell).collect()).collect();
    Sheet { name: "Results".to_owned(), rows }
}

/// The good table as a workbook; its name keeps it apart from the same readings in the good file.
const OTHER: &str = "Sample,Class,Pb mg/kg,Pb u (1s)\nW1,metal,7,1\nW2,metal,8,1\n";

#[test]
fn an_archive_that_would_unpack_to_gigabytes_is_refused_before_it_does() {
    let table = Entry::deflated("inner.csv", OTHER.as_bytes());
    let sources = all_beside_a_good_one(
        "bad.zip",
        &archive(&[Entry::zeros("three-gigabytes.csv", 3000), Entry::zeros("tight.csv", 300), table]),
    );
    // What the directory admits is enough to refuse the whole archive.
    assert_eq!(sources.len(), 1);
    is_refused(&sources[0], "archive_too_large");
}

#[test]
fn one_file_of_an_archive_that_would_unpack_to_far_too_much_harms_no_other() {
    let liar = Entry { size: 1000, ..Entry::zeros("liar.csv", 400) };
    let sources = all_beside_a_good_one(
        "bad.zip",
        &archive(&[
            Entry::zeros("tight.csv", 300),
            liar,
            Entry::deflated("sound.csv", OTHER.as_bytes()),
            Entry { flags: 1, ..Entry::deflated("locked.csv", OTHER.as_bytes()) },
            Entry { method: 14, ..Entry::deflated("method.csv", OTHER.as_bytes()) },
            Entry { checksum: 7, ..Entry::deflated("checksum.csv", OTHER.as_bytes()) },
        ]),
    );
    let of = |name: &str| {
        let wanted = format!("bad.zip/{name}");
        let found = sources.iter().find(|source| source["name"] == wanted.as_str());
        found.unwrap_or_else(|| panic!("{wanted}: {sources:?}"))
    };
    is_refused(of("tight.csv"), "archive_too_large");
    is_refused(of("liar.csv"), "entry_not_read");
    for name in ["locked.csv", "method.csv", "checksum.csv"] {
        is_refused(of(name), "entry_not_read");
    }
    assert_eq!((&of("sound.csv")["problem"], &of("sound.csv")["readings"]), (&Value::Null, &Value::from(2)));
}

#[test]
fn an_archive_in_an_archive_is_named_and_not_opened() {
    let mut nested = archive(&[Entry::zeros("zeros.csv", 100)]);
    for depth in 0..30 {
        nested = archive(&[Entry::stored(&format!("{depth}.zip"), &nested)]);
    }
    let sources = all_beside_a_good_one("bad.zip", &nested);
    assert_eq!(sources.len(), 1);
    is_refused(&sources[0], "archive_in_archive");
}

#[test]
fn an_archive_of_nothing_or_of_pictures_says_so() {
    let sources = all_beside_a_good_one("bad.zip", &archive(&[]));
    is_refused(&sources[0], "empty_file");
    let picture = [b"\x89PNG\r\n\x1a\n\0\0\0\rIHDR".as_slice(), &[0, 1, 2, 255].repeat(400)].concat();
    let sources = all_beside_a_good_one(
        "bad.zip",
        &archive(&[Entry::stored("a.png", &picture), Entry::stored("b.jpg", &picture)]),
    );
    assert_eq!(sources.len(), 2);
    for source in &sources {
        is_refused(source, "skipped");
    }
}

#[test]
fn no_name_in_an_archive_leads_out_of_it() {
    let names =
        ["../../evil.csv", "/etc/evil.csv", "C:\\evil.csv", "a/../../evil.csv", "..\\..\\evil.csv", "..", ""];
    let text = |at: usize| OTHER.replace('W', &format!("W{at}-"));
    let entries: Vec<Entry> =
        names.iter().enumerate().map(|(at, name)| Entry::deflated(name, text(at).as_bytes())).collect();
    let sources = all_beside_a_good_one("bad.zip", &archive(&entries));
    assert_eq!(sources.len(), names.len(), "none vanishes");
    let mut seen = std::collections::BTreeSet::new();
    for source in &sources {
        let name = source["name"].as_str().expect("a name");
        assert!(name.starts_with("bad.zip/"), "{name}");
        assert!(!name.split('/').any(|part| part == ".." || part.is_empty()), "{name}");
        assert!(!name.contains('\\') && seen.insert(name.to_owned()), "{name}");
    }
}

#[test]
fn a_workbook_or_an_archive_that_was_cut_off_is_refused() {
    let workbook = xlsx::workbook(&[sheet_of(OTHER)]);
    let document = open_document::spreadsheet(&[sheet_of(OTHER)]);
    let packed = archive(&[Entry::deflated("a.csv", OTHER.as_bytes())]);
    for (name, bytes) in [("bad.xlsx", workbook), ("bad.ods", document), ("bad.zip", packed)] {
        for kept in [bytes.len() - 1, bytes.len() - 30, bytes.len() / 2, 40, 8, 4] {
            let sources = all_beside_a_good_one(name, &bytes[..kept]);
            assert_eq!(sources.len(), 1, "{name} cut to {kept}");
            let code = sources[0]["problem"].as_str().unwrap_or("read");
            assert!(["workbook_broken", "archive_broken"].contains(&code), "{name} cut to {kept}: {code}");
            is_refused(&sources[0], code);
        }
    }
}

#[test]
fn a_workbook_whose_parts_are_cut_off_or_no_xml_is_refused() {
    let parts = xlsx::parts(&[sheet_of(OTHER)], None);
    for at in 0..parts.len() {
        for bytes in [
            b"".as_slice(),
            b"<a",
            b"<sst><si><t>\xFF",
            b"<worksheet><sheetData><row><c t=\"s\"><v>99999999999",
        ] {
            let mut damaged = parts.clone();
            let name = String::from_utf8_lossy(&damaged[at].name).into_owned();
            damaged[at] = Entry::deflated(&name, bytes);
            let sources = all_beside_a_good_one("bad.xlsx", &archive(&damaged));
            assert_eq!(sources.len(), 1, "{name}");
            let (problem, readings) = (&sources[0]["problem"], &sources[0]["readings"]);
            // Without its styles or its list of types the sheet can still be read.
            assert!(!problem.is_null() || *readings == 2, "{name}: {}", sources[0]);
        }
    }
}

#[test]
fn what_a_workbook_says_of_its_size_is_not_believed() {
    for dimension in ["A1:XFD1048576", "A1", "A1:B2", "nonsense", "B7:A1"] {
        let bytes = xlsx::workbook_stating(&[sheet_of(OTHER)], dimension);
        let sources = all_beside_a_good_one("bad.xlsx", &bytes);
        assert_eq!(
            (&sources[0]["problem"], &sources[0]["readings"]),
            (&Value::Null, &Value::from(2)),
            "{dimension}"
        );
    }
}

#[test]
fn a_cell_far_out_in_a_sheet_costs_no_more_than_it_is() {
    let far = |place: &str| {
        let mut parts = xlsx::parts(&[sheet_of(OTHER)], None);
        let sheet = parts.pop().expect("the sheet");
        let mut xml = String::new();
        std::io::Read::read_to_string(
            &mut flate2::read::DeflateDecoder::new(sheet.packed.as_slice()),
            &mut xml,
        )
        .expect("it was packed here");
        let xml = xml.replace(
            "</sheetData>",
            &format!("<row r=\"1048576\"><c r=\"{place}\"><v>5</v></c></row></sheetData>"),
        );
        parts.push(Entry::deflated("xl/worksheets/sheet1.xml", xml.as_bytes()));
        archive(&parts)
    };
    for place in ["A1048576", "XFD1048576", "ZZZZZZZZ99999999999", "A0", ""] {
        let sources = all_beside_a_good_one("bad.xlsx", &far(place));
        let source = &sources[0];
        assert!(!source["problem"].is_null() || source["readings"].as_u64() >= Some(2), "{place}: {source}");
    }
}

#[test]
fn a_sheet_that_repeats_its_cells_without_end_is_read_or_refused() {
    let cell = |text: &str| {
        format!("<table:table-cell office:value-type=\"string\"><text:p>{text}</text:p></table:table-cell>")
    };
    let rows: String = OTHER
        .lines()
        .flat_map(|line| {
            let cells: String = line.split(',').map(cell).collect();
            // As spreadsheet programs write: the rest of the row is empty, and so is the rest of the sheet.
            let rest = "<table:table-cell table:number-columns-repeated=\"16380\"/></table:table-row>";
            ["<table:table-row>".to_owned(), cells, rest.to_owned()]
        })
        .collect();
    let empty = "<table:table-row table:number-rows-repeated=\"1048573\"><table:table-cell table:number-columns-repeated=\"16384\"/></table:table-row>";
    let bytes =
        open_document::of_tables(&format!("<table:table table:name=\"R\">{rows}{empty}</table:table>"));
    let sources = all_beside_a_good_one("bad.ods", &bytes);
    assert_eq!((&sources[0]["problem"], &sources[0]["readings"]), (&Value::Null, &Value::from(2)));

    let full = empty
        .replace("<table:table-cell", "<table:table-cell office:value-type=\"float\" office:value=\"5\"");
    let bytes =
        open_document::of_tables(&format!("<table:table table:name=\"R\">{rows}{full}</table:table>"));
    let sources = all_beside_a_good_one("bad.ods", &bytes);
    is_refused(&sources[0], "workbook_too_large");
}

#[test]
fn a_formula_in_a_workbook_is_its_last_result_and_never_runs() {
    let mut sheet = xlsx::parts(
        &[sheet_of("Sample,Class,Pb mg/kg,Pb u (1s)\nW1,metal,7,1\n=HYPERLINK(1),metal,8,1")],
        None,
    );
    let xml = "<worksheet xmlns=\"http://schemas.openxmlformats.org/spreadsheetml/2006/main\"><sheetData>\
        <row r=\"1\"><c r=\"A1\" t=\"inlineStr\"><is><t>Sample</t></is></c><c r=\"B1\" t=\"inlineStr\"><is><t>Pb mg/kg</t></is></c></row>\
        <row r=\"2\"><c r=\"A2\" t=\"str\"><f>HYPERLINK(\"x\")</f><v>W1</v></c><c r=\"B2\"><f>3+4</f><v>7</v></c></row>\
        <row r=\"3\"><c r=\"A3\" t=\"inlineStr\"><is><t>W2</t></is></c><c r=\"B3\"><f>1/0</f></c></row>\
        <row r=\"4\"><c r=\"A4\" t=\"inlineStr\"><is><t>W3</t></is></c><c r=\"B4\" t=\"e\"><f>1/0</f><v>#DIV/0!</v></c></row>\
        </sheetData></worksheet>";
    sheet.pop();
    sheet.push(Entry::deflated("xl/worksheets/sheet1.xml", xml.as_bytes()));
    let findings = findings("", &[("a.xlsx", &archive(&sheet))]);
    let readings = &findings["readings"];
    assert_eq!(
        (&readings[0]["id"], &readings[0]["elements"]["Pb"]["value_mg_kg"]),
        (&"W1".into(), &7.into())
    );
    for (row, states) in [(1, ["blank"]), (2, ["text"])] {
        let state = readings[row]["elements"]["Pb"]["state"].as_str().unwrap_or("");
        assert!(states.contains(&state), "{row}: {state}");
    }
}

#[test]
fn a_program_or_a_photograph_under_the_name_of_a_table_is_no_text() {
    let noise = |seed: u32| {
        (0..4000_u32).map(move |at| (at.wrapping_add(seed).wrapping_mul(2_654_435_761) >> 13) as u8)
    };
    let program: Vec<u8> =
        b"\x7FELF\x02\x01\x01\0\0\0\0\0\0\0\0\0\x03\0\x3E\0".iter().copied().chain(noise(1)).collect();
    let photograph: Vec<u8> =
        b"\xFF\xD8\xFF\xE0\0\x10JFIF\0\x01\x01\0\0\x01\0\x01\0\0".iter().copied().chain(noise(2)).collect();
    refused_for(&program, "not_text");
    refused_for(&photograph, "not_text");
}

#[test]
fn a_byte_order_mark_in_the_middle_is_no_part_of_a_heading() {
    // Two exports put behind one another.
    let text = format!("{}\u{FEFF}{OTHER}", String::from_utf8_lossy(GOOD));
    let inspection = inspect("", &[("two.csv", text.as_bytes())]);
    let source = &inspection.sources[0];
    let ids: Vec<_> =
        (0..source.readings.len()).map(|row| source.readings.identity(Identity::Id, row)).collect();
    assert_eq!(ids, [Some("S1"), Some("S2"), Some("W1"), Some("W2")]);
    assert_eq!((source.set_aside[1], source.rows_refused), (1, 0), "the heading once more");
}

#[test]
fn names_in_any_script_come_through_as_they_are() {
    let names =
        ["שלום עולם", "مرحبا", "\u{202E}gnitrevni\u{202C}", "🧪👩‍🔬", "e\u{301}", "Z̷̢a", "\u{200B}", "ﷺ"];
    let mut text = String::from("Sample,Part,Lot,Supplier,Class,Pb mg/kg,Pb u (1s)\n");
    for (at, name) in names.iter().enumerate() {
        let _ = writeln!(text, "S{at},{name},{name},{name},metal,5,1");
    }
    let inspection = inspect("", &[("names.csv", text.as_bytes())]);
    let reviewed = review(&inspection);
    let json: Value = serde_json::from_slice(&findings_json(&inspection, &reviewed)).expect("JSON");
    let csv = String::from_utf8(findings_csv(&inspection, &reviewed)).expect("UTF-8");
    for (at, name) in names.iter().enumerate() {
        let reading = &json["readings"][at];
        for key in ["part", "lot", "supplier"] {
            assert_eq!(reading[key], *name);
        }
        assert!(csv.contains(name));
    }
    let report = report_html(&inspection, &reviewed);
    assert!(report.contains("🧪") && report.contains("שלום"));
}

#[test]
fn a_last_line_that_was_cut_off_is_not_taken_for_a_clean_one() {
    let whole = String::from_utf8_lossy(GOOD);
    // `S2,metal,13` of `S2,metal,1360,20`: the number may have had more digits.
    let cut = whole.trim_end().strip_suffix("60,20").expect("the last row");
    let findings = findings("", &[("cut.csv", cut.as_bytes())]);
    let source = &findings["sources"][0];
    let short =
        source["notices"].as_array().into_iter().flatten().find(|notice| notice["code"] == "row_short");
    let refused = source["rows_refused"] == 1;
    assert!(refused || short.is_some_and(|notice| notice["line"] == 3), "{source}");
    if !refused {
        assert_ne!(findings["readings"][1]["outcomes"]["Pb"]["outcome"], "BL");
    }
}

#[test]
fn a_file_of_a_million_rows_without_a_header_is_refused_with_all_of_them() {
    let bytes = b"7,8,9\n".repeat(1_000_000);
    let source = beside_a_good_one(&bytes);
    is_refused(&source, "no_element_column");
    assert_eq!((&source["rows_in"], &source["rows_refused"]), (&1_000_000.into(), &1_000_000.into()));
    assert!(source["refusals"].as_array().is_some_and(|list| list.len() == 1), "in one entry");
}

#[test]
fn a_million_commas_and_a_million_names_are_refused() {
    let names = (0..1 << 20).map(|at| format!("c{at}")).collect::<Vec<_>>().join(",");
    let text = format!("{names}\n{}\n", "1,".repeat(1 << 20));
    // Longer than any row, so it is no heading.
    refused_for(text.as_bytes(), "no_element_column");
}

#[test]
fn many_nul_bytes_among_cells_are_no_text_and_a_few_are_cells() {
    refused_for(&[GOOD, &[0; 3000]].concat(), "not_text");
    let text = [GOOD, b"S\x003,metal,5,1\n"].concat();
    assert_eq!(beside_a_good_one(&text)["problem"], Value::Null);
}

#[test]
fn a_table_below_a_hundred_thousand_lines_of_remarks_is_refused_with_its_rows() {
    let mut text = "a remark of somebody\n".repeat(100_000).into_bytes();
    text.extend_from_slice(GOOD);
    let source = beside_a_good_one(&text);
    is_refused(&source, "no_element_column");
    assert_eq!((&source["rows_in"], &source["rows_refused"]), (&100_003.into(), &100_003.into()));
}

#[test]
fn a_header_may_stand_on_line_100_and_further_down_where_a_person_says_so() {
    let below = |lines: usize| {
        let mut text = "a remark of somebody\n".repeat(lines).into_bytes();
        text.extend_from_slice(OTHER.as_bytes());
        text
    };
    let source = beside_a_good_one(&below(99));
    assert_eq!((&source["problem"], &source["readings"]), (&Value::Null, &2.into()));
    refused_for(&below(100), "no_element_column");
    let settings = "schema = \"plumbline.settings/1\"\n[[source]]\nname = \"far.csv\"\nheader_line = 101\n";
    let told = findings(settings, &[("far.csv", &below(100))]);
    assert_eq!((&told["sources"][0]["problem"], &told["sources"][0]["readings"]), (&Value::Null, &2.into()));
}

#[test]
fn a_cell_of_64_kibibytes_is_a_cell() {
    let long = "x".repeat(64 * 1024);
    for (open, close) in [("", ""), ("\"", "\"")] {
        let text = format!(
            "Sample,Note,Class,Pb mg/kg,Pb u (1s)\nW1,{open}{long}{close},metal,7,1\nW2,short,metal,8,1\n"
        );
        let source = beside_a_good_one(text.as_bytes());
        let (readings, refused) = (&source["readings"], &source["rows_refused"]);
        assert_eq!((readings, refused), (&2.into(), &0.into()), "{open}{close}");
    }
}

#[test]
fn a_million_different_names_are_kept_apart() {
    let mut text = String::from("Sample,Class,Pb mg/kg,Pb u (1s)\n");
    for row in 0..1_000_000 {
        let _ = writeln!(text, "{row},metal,5,1");
    }
    let source = source(text.as_bytes());
    assert_eq!((source.readings.len(), source.rows_refused), (1_000_000, 0));
    for row in [0, 1, 65_536, 999_999] {
        assert_eq!(source.readings.identity(Identity::Id, row), Some(row.to_string().as_str()));
    }
}

#[test]
fn five_thousand_files_are_five_thousand_sources() {
    let texts: Vec<String> = (0..5000).map(|at| OTHER.replace('W', &format!("W{at}-"))).collect();
    let names: Vec<String> = (0..5000).map(|at| format!("folder/{at:04}/result.csv")).collect();
    let files: Vec<(&str, &[u8])> =
        names.iter().zip(&texts).map(|(name, text)| (name.as_str(), text.as_bytes())).collect();
    let inspection = inspect("", &files);
    assert_eq!(inspection.sources.len(), 5000);
    let findings = review(&inspection);
    assert!((0..5000).all(|at| findings.counts(&inspection, at).adds_up()));
    assert_eq!(findings.verdicts.len(), 10_000);
}
