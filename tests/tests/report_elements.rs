//! The table of what standards ask of a report (`crates/core/report-elements.md`), held against the reports.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;

use plumbline_core::inspection::review;
use plumbline_core::report::{Length, evidence};
use plumbline_tests::delivery::all;
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::{in_project, in_tests};
use plumbline_tests::program::{inspect, report_in, with_words};

/// A row: what is asked, and where it is said to stand.
#[derive(Debug)]
struct Row {
    mark: String,
    lengths: Vec<Length>,
    always: bool,
    not_given: String,
}

fn table() -> Vec<Row> {
    let text = fs::read_to_string(in_project("crates/core/report-elements.md")).expect("the table");
    let rows: Vec<Row> = text
        .lines()
        .filter(|line| line.starts_with("| `"))
        .map(|line| {
            let cells: Vec<&str> = line.trim_matches('|').split(" | ").map(str::trim).collect();
            assert_eq!(cells.len(), 9, "{line}");
            assert!(cells.iter().all(|cell| !cell.is_empty()), "{line}");
            let sure = ["confirmed", "restated by a secondary source", "from memory", "ours"];
            assert!(sure.contains(&cells[8].trim()), "{line}");
            let length = |word| match word {
                "one" => Length::OnePage,
                "full" => Length::Full,
                "annex" => Length::Annex,
                _ => panic!("{line}"),
            };
            Row {
                mark: cells[0].trim_matches('`').to_owned(),
                lengths: cells[4].split_whitespace().map(length).collect(),
                always: match cells[5] {
                    "always" => true,
                    "given" => false,
                    _ => panic!("{line}"),
                },
                not_given: cells[7].trim_matches('`').to_owned(),
            }
        })
        .collect();
    assert!(rows.len() > 50, "{}", rows.len());
    let marks: BTreeSet<&str> = rows.iter().map(|row| row.mark.as_str()).collect();
    assert_eq!(marks.len(), rows.len(), "a mark stands once");
    rows
}

const ATTRIBUTE: &str = " data-element=\"";

/// Every mark of a report with the text of its element.
fn marks(report: &str) -> BTreeMap<String, String> {
    let mut found = BTreeMap::new();
    for (at, _) in report.match_indices(ATTRIBUTE) {
        let (marks, rest) = report[at + ATTRIBUTE.len()..].split_once('"').expect("the end of an attribute");
        let (_, inside) = rest.split_once('>').expect("the end of a tag");
        let tag = report[..at].rsplit_once('<').expect("a tag").1;
        let tag = tag.split(' ').next().expect("its name");
        // What a column is about stands below its head.
        let close = if tag == "th" { "</table>".to_owned() } else { format!("</{tag}>") };
        let end = inside.find(&close).expect("the end of the element");
        for mark in marks.split(' ') {
            found.entry(mark.to_owned()).or_insert_with(String::new).push_str(&inside[..end]);
        }
    }
    found
}

#[test]
fn every_element_stands_where_the_table_says_and_no_mark_is_left_out_of_it() {
    let rows = table();
    let known: BTreeSet<&str> = rows.iter().map(|row| row.mark.as_str()).collect();
    let mut seen: BTreeSet<(String, &str)> = BTreeSet::new();
    let golden = cases(&in_tests("golden"));
    let golden = golden
        .iter()
        .filter(|case| case.name.starts_with("settling/") || case.name.starts_with("report/"))
        .filter_map(|case| Some((case.name.clone(), run::inspection_of(case).ok()?)));
    for (name, inspection) in all().into_iter().map(|one| (one.name.clone(), one.inspection())).chain(golden)
    {
        let findings = review(&inspection);
        for length in Length::ALL {
            let found = marks(&report_in(&inspection, &findings, *length));
            for mark in found.keys() {
                assert!(known.contains(mark.as_str()), "{name}: {mark} is not in the table");
                let row = rows.iter().find(|row| row.mark == *mark).expect("its row");
                assert!(row.lengths.contains(length), "{name}: {mark} stands in {} too", length.file());
                seen.insert((mark.clone(), length.code()));
            }
            for row in rows.iter().filter(|row| row.always && row.lengths.contains(length)) {
                assert!(found.contains_key(&row.mark), "{name}: {} is not in {}", row.mark, length.file());
            }
        }
    }
    for row in rows {
        for length in row.lengths {
            assert!(seen.contains(&(row.mark.clone(), length.code())), "{} in {}", row.mark, length.file());
        }
    }
}

/// What nobody stated is said to be not stated, or has a line to fill in by pen; it never vanishes.
#[test]
fn what_nobody_stated_is_said_or_left_blank() {
    let inspection = inspect("", &[("a.csv", b"Sample,Pb mg/kg,Pb u (1s)\nS-1,12,3\n".as_slice())]);
    let findings = review(&inspection);
    let mut looked = 0;
    for length in Length::ALL {
        let found = marks(&report_in(&inspection, &findings, *length));
        for row in table().iter().filter(|row| row.lengths.contains(length) && row.not_given != "-") {
            let text = found.get(&row.mark).unwrap_or_else(|| panic!("{}", row.mark));
            let wanted = match row.not_given.as_str() {
                "blank" => with_words(|words| words.say("report-blank")),
                words => words.to_owned(),
            };
            assert!(text.contains(&wanted), "{} in {}: {wanted}\n{text}", row.mark, length.file());
            looked += 1;
        }
    }
    assert!(looked > 20, "{looked}");
}

#[test]
fn what_a_person_stated_stands_in_the_report() {
    let settings = "schema = \"plumbline.settings/1\"\nplace = \"bench 4\"\nreceived = 2026-11-16\nissued_on = 2026-11-18\n\
                    environment = \"21 C, dry\"\ndeviations = \"one spot a piece\"\ninstrument = \"XRF-Q, number 7\"\n\
                    records_kept = \"10 years\"\n[[issuer]]\nname = \"Fernbrook Controls\"\naddress = \"Gate 2\"\n\
                    [[customer]]\nname = \"Alder Works\"\ncontact = \"quality office\"\n\
                    [[lot]]\nsupplier = \"\"\nlot = \"L-2\"\nreceived = 2026-11-17\n\
                    [[sampled]]\ndate = 2026-11-16\nby = \"MK\"\nplace = \"goods-in\"\nmethod = \"from every tenth box\"\n\
                    [[item]]\nlot = \"L-1\"\ndescription = \"white lids; 3 bags\"\ncondition = \"dry\"\n\
                    [[authorised]]\nby = \"MK\"\nsecond = \"TS\"\n";
    let table = b"Sample,Lot,Pb mg/kg,Pb u (1s)\nS-1,L-1,12,3\nS-2,L-2,12,3\n";
    let inspection = inspect(settings, &[("a.csv", table.as_slice())]);
    let report = report_in(&inspection, &review(&inspection), Length::Full);
    let found = marks(&report);
    for (mark, wanted) in [
        ("7.8.2.1-b", "Fernbrook Controls, Gate 2"),
        ("7.8.2.1-e", "Alder Works, quality office"),
        ("7.8.2.1-j", "2026-11-18"),
        ("7.8.2.1-c", "bench 4"),
        ("7.8.3-conditions", "21 C, dry"),
        ("7.8.2.1-n", "one spot a piece"),
        ("7.8.2.1-f-instrument", "XRF-Q, number 7"),
        ("63000-kept", "10 years"),
        ("7.8.2.1-g", "white lids; 3 bags"),
        ("7.8.2.1-g", "from every tenth box"),
        ("7.8.2.1-g", "<td>2026-11-16</td>"),
        ("7.8.2.1-g", "<td>2026-11-17</td>"),
        ("7.8.2.1-o", "<b>TS</b>"),
    ] {
        let text = found.get(mark).unwrap_or_else(|| panic!("{mark}"));
        assert!(text.contains(wanted), "{mark}: {wanted}\n{text}");
    }
    let (shown, _) = report.split_once(evidence::OPENS).expect("what the report carries");
    assert_eq!(shown.matches("white lids").count(), 2, "of its own lot only: in the table, and in the acts");
    let alone = inspect(&settings.replace("\"TS\"", "\"M.K.\""), &[("a.csv", table.as_slice())]);
    let report = report_in(&alone, &review(&alone), Length::Full);
    assert!(!marks(&report)["7.8.2.1-o"].contains("<b>M.K.</b>"), "one person is not two");
}
