//! The printed report: one snapshot, byte for byte, and what every report must hold whatever it looks like.
//!
//! `UPDATE_GOLDEN=1` writes the snapshot anew; what changed in it is then to be read by a person.

use std::collections::BTreeSet;
use std::fs;

use plumbline_core::acts::ActKind;
use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::judging::SourceReview;
use plumbline_core::outcome::Outcome;
use plumbline_core::reading::Identity;
use plumbline_core::report::phrases;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::{in_project, in_tests};
use plumbline_tests::program::{inspect, report_html, with_words};

const DEMO: &str = "demo-data/01-clean-housing";
const SNAPSHOT: &str = "snapshots/clean-housing.report.html";

fn demo() -> Inspection {
    let folder = in_project(DEMO);
    let settings = fs::read_to_string(folder.join("settings.toml")).expect("the settings of the demo");
    let name = "alder-housing-hc210.csv";
    let table = fs::read(folder.join(name)).expect("the table of the demo");
    inspect(&settings, &[(name, &table)])
}

#[test]
fn the_report_of_the_clean_housing_is_the_snapshot_byte_for_byte() {
    let inspection = demo();
    let report = report_html(&inspection, &review(&inspection));
    let path = in_tests(SNAPSHOT);
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        fs::create_dir_all(path.parent().expect("a folder")).expect("the folder can be made");
        fs::write(&path, &report).expect("the snapshot can be written");
        return;
    }
    let kept = fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    if kept != report {
        let same = kept.bytes().zip(report.bytes()).take_while(|(one, other)| one == other).count();
        let around = |text: &str| {
            let bytes = &text.as_bytes()[same.saturating_sub(80).min(text.len())..];
            String::from_utf8_lossy(&bytes[..bytes.len().min(240)]).into_owned()
        };
        panic!(
            "from byte {same} on the report is another:\n kept …{}…\n now  …{}…",
            around(&kept),
            around(&report)
        );
    }
}

#[test]
fn the_same_inspection_gives_the_same_report_each_time() {
    let (one, other) = (demo(), demo());
    assert_eq!(report_html(&one, &review(&one)), report_html(&other, &review(&other)));
}

/// Every golden case that leads to findings, with its report.
fn reports() -> Vec<(String, Inspection, Findings, String)> {
    let mut reports: Vec<_> = cases(&in_tests("golden"))
        .iter()
        .filter_map(|case| Some((case.name.clone(), run::inspection_of(case).ok()?)))
        .chain([(DEMO.to_owned(), demo())])
        .map(|(name, inspection)| {
            let findings = review(&inspection);
            let report = report_html(&inspection, &findings);
            (name, inspection, findings, report)
        })
        .collect();
    reports.sort_by(|one, other| one.0.cmp(&other.0));
    assert!(reports.len() > 60, "{}", reports.len());
    reports
}

/// Text as it stands in markup.
fn escaped(text: &str) -> String {
    text.replace('&', "&amp;").replace('<', "&lt;").replace('>', "&gt;").replace('"', "&quot;")
}

fn say(id: &str) -> String {
    with_words(|words| escaped(&words.say(id)))
}

/// What stands between two marks.
fn between<'a>(text: &'a str, open: &str, close: &str) -> &'a str {
    let (_, rest) = text.split_once(open).unwrap_or_else(|| panic!("{open} is not in the report"));
    rest.split_once(close).map_or(rest, |(inside, _)| inside)
}

/// The section under a heading.
fn section<'a>(report: &'a str, heading: &str) -> &'a str {
    between(report, &format!("<h2>{}</h2>", say(heading)), "</section>")
}

#[test]
fn a_report_pins_its_sources_and_its_rule_books() {
    for (name, inspection, _, report) in reports() {
        for source in &inspection.sources {
            let sources = section(&report, "report-sources");
            assert!(sources.contains(&escaped(&source.name)), "{name}: {}", source.name);
            // What could not be unpacked is pinned by its archive.
            let packed = source.container.as_ref().map(|packed| packed.sha256.as_str());
            let own = (!source.sha256.is_empty()).then_some(source.sha256.as_str());
            let pinned: Vec<&str> = own.into_iter().chain(packed).collect();
            assert!(!pinned.is_empty(), "{name}: {}", source.name);
            for digest in pinned {
                assert_eq!(digest.len(), 64, "{name}: {}", source.name);
                assert!(sources.contains(digest), "{name}: digest of {}", source.name);
            }
        }
        for book in inspection.books.all() {
            let method = section(&report, "report-method");
            for text in [&book.id, &book.edition, &book.sha256] {
                assert!(!text.is_empty() && method.contains(&escaped(text)), "{name}: {text} of {}", book.id);
            }
        }
    }
}

/// The sentence of IEC 62321-3-1:2013, table of screening limits, as the built-in book has it: BL <= (low - 3s),
/// (high + 3s) <= OL.
#[test]
fn a_report_says_how_it_was_decided() {
    for (name, inspection, _, report) in reports() {
        let method = section(&report, "report-method");
        let (_, rule) = inspection.books.screening().expect("a screening book");
        let k = rule.sigma_factor.to_string();
        let (low, high) =
            (if rule.equal_is_below { "≤" } else { "&lt;" }, if rule.equal_is_over { "≥" } else { "&gt;" });
        for sentence in [
            format!("Below limit (BL): x + {k} s {low} low edge."),
            format!("Over limit (OL): x − {k} s {high} high edge."),
            "Undecided (X): between.".to_owned(),
        ] {
            assert!(method.contains(&sentence), "{name}: {sentence}");
        }
    }
    let inspection = demo();
    let report = report_html(&inspection, &review(&inspection));
    assert!(report.contains("Below limit (BL): x + 3 s ≤ low edge. Over limit (OL): x − 3 s ≥ high edge."));
}

#[test]
fn a_report_holds_every_lot_with_its_disposition_and_every_reason() {
    for (name, inspection, findings, report) in reports() {
        let lots: Vec<&str> = section(&report, "report-lots").split("<div class=\"lot\">").skip(1).collect();
        assert_eq!(lots.len(), findings.lots.len(), "{name}");
        let mut free: Vec<bool> = vec![true; lots.len()];
        for lot in &findings.lots {
            let lot_name = with_words(|words| escaped(&phrases::lot_name(words, &inspection, lot)));
            let disposition = say(&format!("disposition-{}", lot.disposition.code()));
            let supplier = lot.supplier.as_deref().map_or_else(|| say("not-stated"), escaped);
            let at = (0..lots.len()).find(|at| {
                let head = between(lots[*at], "<h3>", "</h3>");
                free[*at]
                    && head.contains(&lot_name)
                    && head.contains(&format!(">{disposition}<"))
                    && lots[*at].contains(&supplier)
            });
            let at = at.unwrap_or_else(|| panic!("{name}: {lot_name} {disposition}"));
            free[at] = false;
            for reason in &lot.reasons {
                let text = with_words(|words| escaped(&phrases::lot_reason(words, reason)));
                assert!(lots[at].contains(&text), "{name}: {text}");
            }
        }
    }
}

#[test]
fn a_report_names_the_place_of_every_refused_row() {
    let mut named = 0;
    for (name, inspection, _, report) in reports() {
        let refused = section(&report, "report-sources");
        for source in &inspection.sources {
            for refusal in &source.refusals.kept {
                let line = if refusal.line > 0 { refusal.line.to_string() } else { String::new() };
                let column = if refusal.column > 0 {
                    format!("{} {}", refusal.column, escaped(&refusal.heading))
                } else {
                    String::new()
                };
                let text = with_words(|words| escaped(&phrases::notice(words, refusal, Some(source))));
                let row = format!(
                    "<td>{}</td><td class=\"n\">{line}</td><td>{column}</td><td>{text}</td>",
                    escaped(&source.name)
                );
                assert!(refused.contains(&row), "{name}: {row}\n{refused}");
                named += 1;
            }
        }
    }
    assert!(named > 15, "{named}");
}

#[test]
fn a_report_says_what_it_is_not_and_leaves_room_to_sign() {
    let cautions = with_words(phrases::cautions);
    assert!(cautions.len() >= 3, "{cautions:?}");
    for (name, _, _, report) in reports() {
        for caution in &cautions {
            assert!(section(&report, "report-cautions").contains(&escaped(caution)), "{name}: {caution}");
        }
        assert!(report.contains("not a declaration of conformity"), "{name}");
        let not_assessed = section(&report, "report-not_assessed");
        for code in ["phthalates", "pbb_pbde", "cr6", "exemptions", "change"] {
            let text = say(&format!("not-assessed-{code}"));
            assert!(text.len() > 20 && not_assessed.contains(&text), "{name}: {code}");
        }
        let signatures = section(&report, "report-signatures");
        for line in ["report-sign_inspector", "report-sign_second"] {
            assert!(signatures.contains(&say(line)), "{name}: {line}");
        }
        let digest = between(&report, &format!("<dt>{}</dt>", say("report-findings_digest")), "</dd>");
        let digest = &digest[digest.len() - 64..];
        assert!(signatures.contains(digest), "{name}: the digest stands beside the signatures");
    }
}

/// Every open outcome that moves a disposition, as `(substance in words, outcome, the reading's id or line)`.
fn open_outcomes(inspection: &Inspection, findings: &Findings) -> Vec<(String, Outcome, String)> {
    let settings = inspection.settings();
    let halogens_count = settings.inspection(ActKind::HalogenBook).is_some();
    let mut open = Vec::new();
    for (index, verdicts) in findings.verdicts.iter().enumerate().filter(|(_, one)| !one.check) {
        let (source, row) = findings.place(index).expect("a reading has a place");
        let source = &inspection.sources[source];
        let assessed = SourceReview::new(source, &inspection.books, &settings).assess(row);
        assert_eq!(assessed.substances.map(|judged| judged.outcome), verdicts.substances);
        let named = source
            .readings
            .identity(Identity::Id, row)
            .map_or_else(|| format!("line {}", source.readings.line(row)), escaped);
        for substance in Substance::ALL {
            let about =
                format!("<b>{}, {}: ", substance.symbol(), say(&format!("substance-{}", substance.symbol())));
            open.push((about, verdicts.substances[substance as usize], named.clone()));
        }
        for halogen in Halogen::ALL.into_iter().filter(|_| halogens_count) {
            let about = format!("<b>{}: ", say(&format!("substance-{}", halogen.name())));
            open.push((about, verdicts.halogens[halogen as usize], named.clone()));
        }
    }
    open.retain(|(_, outcome, _)| !outcome.is_settled());
    open
}

#[test]
fn a_report_prints_every_open_outcome_with_what_would_settle_it() {
    let (mut with_steps, mut missing) = (0, Vec::new());
    for (name, inspection, findings, report) in reports() {
        let open = section(&report, "report-open");
        let blocks: Vec<&str> = open.split("<div class=\"case\">").skip(1).collect();
        for (about, outcome, named) in open_outcomes(&inspection, &findings) {
            let class = format!("class=\"o o-{}\"", outcome.code());
            let block = blocks.iter().find(|block| {
                block.starts_with(&format!("<p>{about}")) && block.contains(&class) && block.contains(&named)
            });
            let Some(block) = block else {
                missing.push(format!("{name}: no case {about}{} of {named}", outcome.code()));
                continue;
            };
            if matches!(outcome, Outcome::Undecided | Outcome::Over) {
                let step = block.split_once(&format!("<b>{}: </b>", say("report-next")));
                let text =
                    step.map_or("", |(_, rest)| rest.split_once("</p>").map_or(rest, |(text, _)| text));
                if text.len() <= 20 {
                    missing.push(format!("{name}: no next step {about}{} of {named}", outcome.code()));
                }
                with_steps += 1;
            }
        }
        if blocks.is_empty() {
            assert!(open.contains(&say("report-open_none")), "{name}");
        }
    }
    assert!(missing.is_empty(), "{missing:#?}");
    assert!(with_steps > 60, "{with_steps}");
}

/// A tag's name and attributes, with quoted values skipped over.
fn tags(html: &str) -> Vec<(String, Vec<String>)> {
    let mut tags = Vec::new();
    let mut rest = html;
    while let Some((_, after)) = rest.split_once('<') {
        let (mut end, mut quoted) = (after.len(), false);
        for (at, letter) in after.char_indices() {
            match letter {
                '"' => quoted = !quoted,
                '>' if !quoted => {
                    end = at;
                    break;
                }
                _ => {}
            }
        }
        let inside = &after[..end];
        rest = &after[end..];
        let outside_quotes: String = inside.split('"').step_by(2).collect::<Vec<_>>().join(" ");
        let mut words = outside_quotes.split_whitespace().map(str::to_lowercase);
        let name = words.next().unwrap_or_default();
        let name = name.trim_start_matches('/').to_owned();
        tags.push((name, words.collect()));
    }
    tags
}

#[test]
fn the_tags_of_a_text_are_found() {
    let found = tags("<p class=\"a > b\" id=\"x\">1 &lt; 2</p><img src=x onerror=y>");
    let names: Vec<&str> = found.iter().map(|(name, _)| name.as_str()).collect();
    assert_eq!(names, ["p", "p", "img"]);
    assert_eq!(found[2].1, ["src=x", "onerror=y"]);
}

/// Whatever a file, a person or a rule book is called, the report is made of the same kinds of tags as without it.
#[test]
fn hostile_names_add_no_markup_to_a_report() {
    let hostile =
        "\"'><script>alert(1)</script><img src=x onerror=alert(2)></style><svg onload=alert(3)>&lt;b&gt;";
    let table = |name: &str| {
        let cell = format!("\"{}\"", name.replace('"', "\"\""));
        let row = format!("{cell},{cell},{cell},{cell},{cell},{cell},{cell},{cell},{cell}");
        format!(
            "{cell}\nSample,Spot,Part,Material,Lot,Supplier,Class,Instrument,Operator,Pb mg/kg,Pb u (1s),{cell},Cd {cell}\n\
             {row},1000,20,1,1\n{row},{cell},20,1,1\n{row},1360,20,1,1,too long\n"
        )
    };
    let settings = |name: &str| {
        let mut top = toml::Table::new();
        let text = || toml::Value::String(name.to_owned());
        top.insert("schema".into(), toml::Value::String("plumbline.settings/1".into()));
        for key in ["title", "inspector", "place", "reviewed_at", "halogen_book"] {
            top.insert(key.into(), text());
        }
        top.insert("check_samples".into(), toml::Value::Array(vec![text()]));
        let mut part = toml::Table::new();
        part.insert("part".into(), text());
        part.insert("materials".into(), toml::Value::Array(vec![text(), text()]));
        top.insert("part".into(), toml::Value::Array(vec![toml::Value::Table(part)]));
        toml::to_string(&top).expect("a table of texts is TOML")
    };
    let made = |name: &str| {
        let file = format!("{name}.csv");
        let inspection = inspect(&settings(name), &[(&file, table(name).as_bytes())]);
        let findings = review(&inspection);
        assert!(findings.lots.len() == 1 && inspection.sources[0].rows_refused == 1);
        report_html(&inspection, &findings)
    };
    let (plain, report) = (made("plain"), made(hostile));
    let kinds =
        |report: &str| -> BTreeSet<String> { tags(report).into_iter().map(|(name, _)| name).collect() };
    assert_eq!(kinds(&report), kinds(&plain));
    assert_eq!(tags(&report).len(), tags(&plain).len(), "no tag more and none less");
    for (name, attributes) in tags(&report) {
        assert!(
            !["script", "img", "iframe", "object", "embed", "a", "link"].contains(&name.as_str()),
            "{name}"
        );
        for attribute in attributes {
            assert!(!attribute.starts_with("on"), "{name} {attribute}");
        }
    }
    assert!(report.matches(&escaped(hostile)).count() > 10, "and every one is shown as it is");
}
