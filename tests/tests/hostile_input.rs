//! Files that no analyser should write: each gets a clear word about it, with its place, and harms no other file.

use plumbline_core::inspection::{Inspection, review};
use plumbline_core::reading::Source;
use plumbline_tests::program::{findings_csv, findings_json, inspect, report_html};
use serde_json::Value;

const GOOD: &[u8] = b"Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,5,1\nS2,metal,1360,20\n";

/// What became of a bad file beside a good one, after checking that the good one says what it says alone.
fn beside_a_good_one(bytes: &[u8]) -> Value {
    let alone = findings("", &[("good.csv", GOOD)]);
    let both = findings("", &[("bad.csv", bytes), ("good.csv", GOOD)]);
    assert_eq!(both["sources"][1]["sha256"], alone["sources"][0]["sha256"]);
    let of = |findings: &Value, source: u64| -> Vec<Value> {
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
    assert_eq!(of(&both, 1), of(&alone, 0), "the other file is unaffected");
    assert!(
        both["lots"].as_array().is_some_and(|lots| lots.iter().any(|lot| lot["disposition"] == "not_accept")),
        "and is still disposed of"
    );
    both["sources"][0].clone()
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
    let source = beside_a_good_one(bytes);
    assert_eq!(source["problem"], code);
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
fn a_workbook_and_an_archive_are_named() {
    refused_for(b"PK\x03\x04\x14\x00\x06\x00\x08\x00\x00\x00!\x00[Content_Types].xml", "workbook");
    refused_for(b"\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1\x00\x00\x00\x00\x00\x00\x00\x00", "workbook");
}

#[test]
fn utf_16_is_named_with_a_mark_and_is_no_text_without_one() {
    let text: Vec<u16> = "Sample,Pb mg/kg\nS1,5\n".encode_utf16().collect();
    let little: Vec<u8> = text.iter().flat_map(|unit| unit.to_le_bytes()).collect();
    let big: Vec<u8> = text.iter().flat_map(|unit| unit.to_be_bytes()).collect();
    refused_for(&[b"\xFF\xFE".as_slice(), &little].concat(), "utf16");
    refused_for(&[b"\xFE\xFF".as_slice(), &big].concat(), "utf16");
    refused_for(&little, "not_text");
    refused_for(&big, "not_text");
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
    let wide = (0..20_000).map(|at| format!("c{at}")).collect::<Vec<_>>().join(",");
    let text = format!("{wide},Pb mg/kg,Pb u (1s),Class\n{}5,1,metal\n", ",".repeat(20_000));
    let source = self::source(text.as_bytes());
    assert_eq!(source.problem, None);
    assert_eq!(source.readings.len(), 1);
    assert_eq!(source.blocks[0].columns.len(), 20_003);
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
    let source = beside_a_good_one(b"element,value,unit\nH,,\nLi,24,ppm\nCd,,\nPb,17,ppm\n");
    assert_eq!(source["problem"], "no_element_column", "{}", source["mapping"]);
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
