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
use plumbline_core::report::evidence::OPENS;
use plumbline_core::report::{Length, phrases, rulers};
use plumbline_core::ruler::Mark;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_tests::delivery::delivery;
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::{in_project, in_tests};
use plumbline_tests::program::{inspect, report_html, report_in, with_words};

const DEMO: &str = "demo-data/01-clean-housing";
const SNAPSHOTS: &str = "snapshots/clean-housing";

fn demo() -> Inspection {
    let folder = in_project(DEMO);
    let settings = fs::read_to_string(folder.join("settings.toml")).expect("the settings of the demo");
    let name = "alder-housing-hc210.csv";
    let table = fs::read(folder.join(name)).expect("the table of the demo");
    inspect(&settings, &[(name, &table)])
}

#[test]
fn the_report_of_the_clean_housing_is_the_snapshot_byte_for_byte_in_every_length() {
    let inspection = demo();
    for length in Length::ALL {
        // What it carries is packed and no person reads it: `proof.rs` holds that against the data.
        let whole = report_in(&inspection, &review(&inspection), *length);
        is_the_snapshot(whole.split_once(OPENS).expect("what it carries").0, length.file());
    }
}

#[test]
fn every_value_of_the_annex_that_can_be_read_off_a_ruler_has_one_that_names_its_edges() {
    let inspection = delivery("05-pvc-hose").inspection();
    let findings = review(&inspection);
    let settings = inspection.settings();
    let (mut wanted, mut between) = (0, 0);
    for source in &inspection.sources {
        let reviewer = SourceReview::new(source, &inspection.books, &settings);
        for row in 0..source.readings.len() {
            let assessed = reviewer.assess(row);
            let substances = Substance::ALL
                .into_iter()
                .filter_map(|of| rulers::of_substance(&inspection, source, &assessed, of, row));
            let halogens = [Halogen::Cl, Halogen::Total]
                .into_iter()
                .filter_map(|of| rulers::of_halogen(&inspection, source, &assessed, of, row));
            for picture in substances.chain(halogens) {
                wanted += 1;
                between += usize::from(matches!(picture.mark, Mark::Between { .. }));
            }
        }
    }
    assert!(wanted > 80 && between > 3, "{wanted} {between}");
    let report = report_in(&inspection, &findings, Length::Annex);
    let strips: Vec<&str> = report.split("<svg class=\"s\"").skip(1).collect();
    let said = |one: &&str| one.contains("><title>Undecided from ") || one.contains("><title>Limit ");
    assert_eq!(
        strips.iter().copied().filter(|one| one.contains("role=\"img\"")).filter(said).count(),
        wanted
    );
    // The legend stands once, and what its strips show stands beside them in words.
    assert_eq!(report.matches("<ul class=\"rulers\">").count(), 1);
    assert_eq!(strips.len(), wanted + 6);
    let full = report_in(&inspection, &findings, Length::Full);
    assert_eq!(full.matches("<ul class=\"rulers\">").count(), 1);
    assert!(full.contains("<title>EC-003: 832 to 1236 mg/kg. Limit 1500</title>"));
    assert!(!report_in(&inspection, &findings, Length::OnePage).contains("<svg class=\"s\""));
}

fn is_the_snapshot(report: &str, file: &str) {
    let path = in_tests(&format!("{SNAPSHOTS}.{file}"));
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        fs::create_dir_all(path.parent().expect("a folder")).expect("the folder can be made");
        fs::write(&path, report).expect("the snapshot can be written");
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
            around(report)
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

/// The invented delivery that shows every section.
fn everything() -> (Inspection, Findings, String) {
    let case = cases(&in_tests("golden"))
        .into_iter()
        .find(|case| case.name == "report/a-delivery-with-everything")
        .expect("the delivery is a golden case");
    let inspection = run::inspection_of(&case).expect("its settings are right");
    let findings = review(&inspection);
    let report = report_html(&inspection, &findings);
    (inspection, findings, report)
}

/// The text of markup, with tags out of the way.
/// A part of a report without the strips in its cells, whose titles stand in no line of text.
fn without_strips(html: &str) -> String {
    let mut rest = html.split("<svg class=\"s\"");
    let first = rest.next().unwrap_or("").to_owned();
    rest.fold(first, |text, strip| text + strip.split_once("</svg>").map_or("", |(_, behind)| behind))
}

fn plain(html: &str) -> String {
    let mut text = String::new();
    for (at, part) in html.split('<').enumerate() {
        text.push_str(if at == 0 { part } else { part.split_once('>').map_or("", |(_, text)| text) });
        text.push(' ');
    }
    let text = text.replace("&lt;", "<").replace("&gt;", ">").replace("&quot;", "\"").replace("&amp;", "&");
    text.replace('\u{a0}', " ").split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn no_report_leaves_a_word_out_of_the_catalogue() {
    for (name, inspection, findings, report) in reports() {
        let others = [Length::OnePage, Length::Annex].map(|length| report_in(&inspection, &findings, length));
        let report = format!("{report}{}", others.concat());
        for key in [
            "report-",
            "explain-",
            "repeats-",
            "pooled-",
            "statement-",
            "number-",
            "question-",
            "renewal-",
            "length-",
            "act-",
            "said-",
        ] {
            assert!(!report.contains(&format!("[{key}")), "{name}: a text of {key} is missing");
        }
    }
}

#[test]
fn an_open_outcome_is_printed_with_the_whole_working() {
    let (inspection, _, report) = everything();
    let open = section(&report, "report-open");
    let case = open
        .split("<div class=\"case\">")
        .find(|case| plain(case).starts_with("Cd, cadmium: X") && case.contains("line 12"))
        .expect("the cadmium of the second spot");
    let case = plain(case);
    for said in [
        "Judged as polymer (stated in the file).",
        "Cd is below limit where the value plus 3 sigma is at or under 70 mg/kg",
        "The file states \"56\" for Cd, which is 56 mg/kg.",
        "One sigma is 6 mg/kg: printed error, multiple stated in the file (printed errors stand for 2 sigma).",
        "56 ± 3 × 6 mg/kg runs from 38 to 74; the undecided band is 70 to 130 mg/kg.",
        "Chance that the true value lies within the limit of 100 mg/kg",
        "Next step:",
    ] {
        assert!(case.contains(said), "{said}\n{case}");
    }
    let (book, rule) = inspection.books.screening().expect("a screening book");
    let (_, _, band) = rule
        .bands()
        .find(|(of, class, _)| (of.symbol(), class.code()) == ("Cd", "polymer"))
        .expect("the band of cadmium in plastic");
    assert!(case.contains(&format!("{}, {}", book.title, band.citation.clause)), "{case}");
}

#[test]
fn each_substance_and_class_has_its_rule_once_with_its_counts() {
    for (name, _, findings, report) in reports() {
        let reached = section(&report, "report-reached");
        let mut classes: Vec<&str> =
            findings.verdicts.iter().filter(|one| !one.check).map(|one| one.class.code()).collect();
        classes.sort_unstable();
        classes.dedup();
        for class in classes {
            let head = format!("<b>{}</b>", say(&format!("class-{class}")));
            assert_eq!(reached.matches(&head).count(), 1, "{name}: {class}");
        }
    }
    let (_, _, report) = everything();
    let metal = plain(between(section(&report, "report-reached"), "<b>metal</b>", "</tbody>"));
    let sentence = "Pb lead, metal: below limit when value + 3 s is at or under 700 mg/kg; over limit when value - 3 s \
                    is at or over 1300 mg/kg; undecided between. Source: IEC 62321-3-1:2013, table of screening limits, \
                    Pb, metal. Confirmed in the text of the law or standard. 1 3";
    assert!(metal.contains(sentence), "{metal}");
}

#[test]
fn a_lot_says_what_time_would_settle_and_what_other_rules_would_say() {
    let (inspection, findings, report) = everything();
    let lot =
        section(&report, "report-lots").split("<div class=\"lot\">").nth(1).expect("one lot").to_owned();
    let settings = inspection.settings();
    let reviewers: Vec<_> = inspection
        .sources
        .iter()
        .map(|source| SourceReview::new(source, &inspection.books, &settings))
        .collect();
    let ahead = plumbline_core::outlook::outlook(&inspection, &findings, &reviewers, 0);
    assert!(ahead.plan.surely.settles > 0, "{ahead:?}");
    let text = plain(&lot);
    let longer = format!("would settle {} of {} open outcomes", ahead.plan.surely.settles, ahead.plan.open);
    assert!(text.contains(&longer), "{longer}\n{text}");
    assert!(text.contains("For comparison: this decides nothing here. Repeatability only"), "{text}");
    let lead = ahead.rules[1];
    assert_eq!(lead.said[0], [8, 0, 0, 3], "simple acceptance of lead");
    for cells in [
        "screening bands (the rule of this report)",
        "simple acceptance (up to the limit)",
        "guarded acceptance (up to the limit less 2 sigma)",
        "with conditional statements (2 sigma on both sides of the limit)",
    ] {
        assert!(text.contains(cells), "{cells}\n{text}");
    }
    assert!(text.contains("8 pass · 3 fail"), "{text}");
}

#[test]
fn repeats_and_spots_stand_with_what_lies_far_out_and_nothing_is_left_out() {
    let (_, _, report) = everything();
    let text = plain(section(&report, "report-repeats"));
    assert!(text.contains("20; 20.5; 19.5; 20.2; 19.8; 38"), "every repeat is printed: {text}");
    assert!(
        text.contains("Reading of line 11 lies") && text.contains("(Grubbs). It stays in the record."),
        "{text}"
    );
    assert!(text.contains("Cd: The 2 spots differ beyond what chance would show"), "{text}");
    assert!(text.contains("No difference between spots was seen in Pb (2 spots, chance"), "{text}");
}

#[test]
fn doubts_are_printed_beside_the_outcome_they_are_about() {
    let (inspection, findings, report) = everything();
    let doubts = plain(section(&report, "report-doubts"));
    assert!(doubts.contains("Pb, lead: BL (below limit)"), "{doubts}");
    assert!(doubts.contains("Caution: As ( Ka") || doubts.contains("Caution: As (Ka"), "{doubts}");
    assert!(doubts.contains("The BL does not settle it"), "{doubts}");
    assert!(doubts.contains("The class stated is a plastic, and metals add up to 97"), "{doubts}");
    let annex = report_in(&inspection, &findings, Length::Annex);
    let annex = plain(section(&annex, "report-annex"));
    assert!(
        annex.contains("BL ! 431 ± 30 p2"),
        "the sigma's multiple and the doubt stand in the annex: {annex}"
    );
}

#[test]
fn exemptions_stand_with_claim_evidence_renewal_and_days() {
    let (inspection, findings, report) = everything();
    let text = plain(section(&report, "report-exemptions"));
    let row = inspection.books.exemptions().iter().find(|row| row.entry == "6(c)").expect("6(c)");
    let expires = row.expires.expect("6(c) expires").to_string();
    for said in [
        "6(c), Pb: covers . body · Part valve · Lot D-7",
        "at most 40000 mg/kg",
        "renewal pending; source: list of requests; applied for on 2025-12-20",
        "EV-12, certificate of the bar",
        "CD / AB",
        "Product category (Directive 2011/65/EU) 4",
        "Placing on the market 2027-07-01",
        "No screening band is published for exempt limits",
        row.scope.as_str(),
        row.source.as_str(),
        row.clause.as_str(),
        expires.as_str(),
    ] {
        assert!(text.contains(said), "{said}\n{text}");
    }
    let candidates =
        text.split_once(&with_words(|words| words.say("report-candidates"))).expect("candidates").1;
    assert!(candidates.contains("6(c), Pb") && candidates.contains("nut · Part valve"), "{candidates}");
    assert!(!findings.expiries.is_empty());
    let days = text.split_once("Days of expiry, over all lots").expect("days").1;
    for expiry in &findings.expiries {
        assert!(days.contains(&expiry.day.to_string()), "{days}");
    }
}

#[test]
fn limits_of_named_books_show_the_worst_of_each_material() {
    let (_, _, report) = everything();
    let text = plain(section(&report, "report-limits"));
    assert!(
        text.contains("OL 30005 to 30025 mg/kg. Limit 100 2 B1"),
        "the strip says the sum and its limit: {text}"
    );
    let text = plain(&without_strips(section(&report, "report-limits")));
    assert!(text.contains("body · Part valve · Lot D-7"), "{text}");
    assert!(text.contains("OL 2 B1") || text.contains("OL 2 B2"), "{text}");
    for (name, inspection, _, report) in reports() {
        let named = inspection.books.in_force(&inspection.settings().books).limits.is_empty();
        let heading = format!("<h2>{}</h2>", say("report-limits"));
        assert_eq!(report.contains(&heading), !named && !inspection.sources.is_empty(), "{name}");
    }
}

#[test]
fn the_method_says_edition_days_and_how_sure_each_book_is() {
    for (name, inspection, _, report) in reports() {
        let method = plain(section(&report, "report-method"));
        for book in inspection.books.used(&inspection.settings().books) {
            let sure = with_words(|words| plumbline_core::report::books::confidence(words, &book.confidence));
            for text in [book.edition.as_str(), sure.as_str(), book.sha256.as_str()] {
                assert!(method.contains(&plain(&escaped(text))), "{name}: {text} of {}", book.id);
            }
        }
    }
}

/// "Accept" is the word of a lot's disposition. What is only printed beside it (halogens, other decision rules, claims) is
/// never called so, and nothing is called conforming.
#[test]
fn nothing_that_is_only_printed_reads_as_accepted_or_conforming() {
    for (name, inspection, _, report) in reports() {
        // The method quotes the rule books.
        let no_suppliers = inspection.history.lots.is_empty();
        let own: Vec<String> = ["report-lots", "report-summary", "report-method"]
            .into_iter()
            .chain((!no_suppliers).then_some("report-suppliers"))
            .map(|heading| section(&report, heading).to_owned())
            .collect();
        let body = own
            .iter()
            .fold(between(&report, "<main>", "</body>").to_owned(), |body, own| body.replace(own, ""));
        let rest = plain(&body).to_lowercase();
        // A person may not ship what was not accepted, and a material may be the one that is not.
        let rest = rest.replace("not accept ", " ").replace("not accepted lot", " ");
        // Earlier lots of the history were accepted.
        let rest = rest.replace("accepted lots", " ");
        // A steel bar may conform to its standard, in the words of an exemption.
        let rest = rest.replace("a bar that conforms to its steel", " ");
        // What a file or a person wrote is theirs.
        if inspection.acts.iter().any(|act| act.value.to_lowercase().contains("accept")) {
            continue;
        }
        let words: Vec<&str> = rest.split(|letter: char| !letter.is_alphabetic()).collect();
        for (at, word) in words.iter().enumerate() {
            let banned =
                ["accept", "accepts", "accepted", "conforms", "conforming", "compliant"].contains(word);
            assert!(!banned, "{name}: {:?}", &words[at.saturating_sub(8)..(at + 4).min(words.len())]);
        }
    }
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
fn what_was_not_measured_is_no_zero_and_no_repeat() {
    let table = "Sample,Spot,Part,Material,Lot,Class,Pb mg/kg,Pb u (1s),Br mg/kg,Br u (1s),Hg mg/kg\n\
                 S-1,a,P,M,L,polymer,12,2,,,< 300\nS-1,a,P,M,L,polymer,13,2,,,< 400\nS-2,b,P,M,L,polymer,12,2,,,< 360\n";
    let inspection = inspect("schema = \"plumbline.settings/1\"\n", &[("a.csv", table.as_bytes())]);
    let report = plain(&report_html(&inspection, &review(&inspection)));
    assert!(report.contains("S-1 (\u{2013}), S-2 (\u{2013})"), "blank cells are shown as blank");
    assert!(!report.contains("(0)"), "and never as zero");
    let mut also = report.match_indices("S-2 (").map(|(at, _)| &report[at..]);
    let limit = also.find(|text| text.split(')').next().is_some_and(|inside| inside.contains("360")));
    let limit = limit.expect("mercury of the second spot");
    assert!(limit.starts_with("S-2 (<") || limit.starts_with("S-2 (&lt;"), "a limit is no value");
    let (_, bromine) = report.split_once("The file states nothing for Br.").expect("the working of bromine");
    let (bromine, _) = bromine.split_once("Next step").expect("what comes next");
    assert!(!bromine.contains("readings of this spot"), "empty cells are no repeats: {bromine}");
}

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
        Length::ALL.iter().map(|length| report_in(&inspection, &findings, *length)).collect::<String>()
    };
    let (plain, report) = (made("plain"), made(hostile));
    let kinds =
        |report: &str| -> BTreeSet<String> { tags(report).into_iter().map(|(name, _)| name).collect() };
    assert_eq!(kinds(&report), kinds(&plain));
    assert_eq!(tags(&report).len(), tags(&plain).len(), "no tag more and none less");
    // The one element of that name in each length holds what the report carries and is of a type that no browser runs.
    assert_eq!((report.matches("<script").count(), report.matches(OPENS).count()), (3, 3));
    for (name, attributes) in tags(&report).into_iter().filter(|(name, _)| name != "script") {
        assert!(!["img", "iframe", "object", "embed", "a", "link"].contains(&name.as_str()), "{name}");
        for attribute in attributes {
            assert!(!attribute.starts_with("on"), "{name} {attribute}");
        }
    }
    assert!(report.matches(&escaped(hostile)).count() > 10, "and every one is shown as it is");
}

/// A plan stands in the report with its list, its risk and what it does not prove; lots that share a curve share its picture.
#[test]
fn a_plan_is_printed_with_its_units_and_what_it_does_not_prove() {
    let heading = "Sample,Unit,Part,Material,Lot,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\n";
    let row = |lot: &str| format!("S{lot},1,P-1,pin,{lot},metal,1,0.5,5,1,1,0.5,5,1\n");
    let table = format!("{heading}{}{}{}", row("L-1"), row("L-2"), row("L-3"));
    let settings = "schema = \"plumbline.settings/1\"\nlot_size = 480\n\n[[lot]]\nsupplier = \"\"\nlot = \"L-3\"\nlot_size = 90\n\n\
                    [[sampling_plan]]\nrule = \"single\"\naql = 2.5\nseed = 7\n";
    let inspection = inspect(settings, &[("lots.csv", table.as_bytes())]);
    let report = report_html(&inspection, &review(&inspection));
    let times = |text: &str| report.matches(text).count();
    assert_eq!(times("take 50 of 480 units"), 2);
    assert_eq!(times("take 13 of 90 units"), 0, "level II of 90 units is letter E, whose arrow leads to F");
    assert_eq!(times("whose arrow leads to letter F: take 20 of 90 units"), 1);
    assert_eq!(times("5 9 17 26 39 49 51 58 60 66 72 82 92 112 118"), 2);
    assert_eq!(times("class=\"oc-curve\""), 2, "one for each size of lot");
    assert_eq!(times("table, accept on 3"), 1);
    assert_eq!(times("knows no AQL"), 3);
    assert_eq!(times("do not apply to a single lot"), 3);
    assert_eq!(times("An undecided unit never counts as conforming."), 3);
}

fn report_of(name: &str) -> String {
    in_length(name, Length::Full)
}

fn annex_of(name: &str) -> String {
    in_length(name, Length::Annex)
}

fn in_length(name: &str, length: Length) -> String {
    let case = cases(&in_tests("golden")).into_iter().find(|case| case.name == name).expect("the case");
    let inspection = run::inspection_of(&case).expect("its settings are right");
    report_in(&inspection, &review(&inspection), length)
}

#[test]
fn the_annex_pins_what_the_report_pins_under_the_same_number() {
    for (name, inspection, findings, report) in reports() {
        let annex = report_in(&inspection, &findings, Length::Annex);
        let page = report_in(&inspection, &findings, Length::OnePage);
        let number = between(&report, &format!("<dt>{}</dt><dd><b>", say("report-number")), "</b>");
        for other in [&annex, &page] {
            let own = between(other, &format!("<dt>{}</dt><dd><b>", say("report-number")), "</b>");
            assert_eq!(own, number, "{name}");
            assert!(plain(other).contains(&format!("{} {number}", say("report-end"))), "{name}");
        }
        for heading in ["report-sources", "report-acts", "report-method"] {
            assert_eq!(section(&annex, heading), section(&report, heading), "{name}: {heading}");
        }
        let lines = section(&annex, "report-annex").matches("<tbody class=\"one\">").count();
        assert_eq!(lines, findings.verdicts.len().min(1000), "{name}: every reading");
        assert!(!report.contains("<section class=\"annex\""), "{name}: and only there");
    }
}

#[test]
fn the_one_page_holds_every_lot_or_counts_it() {
    let mut counted = 0;
    for (name, inspection, findings, _) in reports() {
        let page = report_in(&inspection, &findings, Length::OnePage);
        let rows = section(&page, "report-page_lots").matches("class=\"d d-").count();
        assert!(rows >= usize::from(!findings.lots.is_empty()), "{name}");
        let left = findings.lots.len() - rows;
        let text = plain(&page);
        let says = with_words(|words| {
            let count = |code: &str| {
                let shown = section(&page, "report-page_lots").matches(&format!("d d-{code}\"")).count();
                let all = findings.lots.iter().filter(|lot| lot.disposition.code() == code).count();
                (all - shown).to_string()
            };
            let (accept, hold, not_accept) = (count("accept"), count("hold"), count("not_accept"));
            let arguments =
                [("count", left.to_string()), ("accept", accept), ("hold", hold), ("not_accept", not_accept)];
            let arguments = arguments.each_ref().map(|(name, text)| (*name, text.as_str()));
            words.with("report-page_more_lots", &arguments)
        });
        assert_eq!(text.contains(&says), left > 0, "{name}: {says}");
        counted += usize::from(left > 0);
        for caution in with_words(phrases::cautions) {
            assert!(text.contains(&caution), "{name}: {caution}");
        }
    }
    assert!(counted > 0, "some case has more lots than a page");
}

#[test]
fn what_a_laboratory_settled_has_no_laboratory_as_its_next_step() {
    let report = report_of("settling/a-result-within-lifts-what-the-screen-said");
    let open = section(&report, "report-open");
    let settled: Vec<String> = open
        .split("<div class=\"case\">")
        .skip(1)
        .map(plain)
        .filter(|case| case.contains("a laboratory settled it"))
        .collect();
    assert!(!settled.is_empty(), "{open}");
    for case in settled {
        let (_, next) = case.split_once("Next step:").expect("what comes next");
        assert!(
            next.contains("Laboratory: ") && next.contains(" is within ") && !next.contains("Send"),
            "{case}"
        );
    }
    let open_still = plain(&report_of("settling/results-that-settle-nothing"));
    assert!(!open_still.contains("a laboratory settled it"), "an untraced result settles nothing");
}

#[test]
fn readings_set_aside_count_for_no_lot_in_the_table_of_trust() {
    let name = "settling/readings-set-aside";
    let case = cases(&in_tests("golden")).into_iter().find(|case| case.name == name).expect("the case");
    let inspection = run::inspection_of(&case).expect("its settings are right");
    let findings = review(&inspection);
    assert!(!findings.set_aside.is_empty());
    let settings = inspection.settings();
    if findings.trust.checks.is_empty() {
        // Without a check reading there is no table; one is named so that there is.
        assert!(settings.check_samples.is_empty());
    }
    let counted: u64 = findings.lots.iter().map(|lot| lot.readings).sum();
    let report = report_html(&inspection, &findings);
    let trust = section(&report, "report-trust");
    if let Some((_, table)) = trust.split_once("<table>") {
        let body = between(table, "<tbody", "</table>");
        let cells: u64 = body
            .split("<td class=\"n\">")
            .skip(1)
            .filter_map(|cell| cell.split('<').next()?.parse::<u64>().ok())
            .sum();
        assert_eq!(cells, counted, "{trust}");
    }
}

#[test]
fn invented_data_are_said_to_be_invented_in_every_length() {
    let inspection = demo();
    let findings = review(&inspection);
    for length in Length::ALL {
        let report = report_in(&inspection, &findings, *length);
        assert_eq!(
            report.matches(&say("report-invented")).count(),
            2,
            "in the body, and in the margin of every page"
        );
        assert!(
            report.contains(&say("report-invented_short")),
            "and where a browser has no margins to write in"
        );
    }
    let real = report_of("settling/two-people-lift-holds");
    assert!(!real.contains(&say("report-invented")) && !real.contains(&say("report-invented_short")));
}

#[test]
fn acts_are_told_in_words_and_not_in_codes() {
    let settings = "schema = \"plumbline.settings/1\"\nclass = \"composite\"\ntrust = \"advisory\"\nsampling = \"holding\"\n\
                    repeats = \"same_id\"\nuncertainty_holds = \"everything\"\ncheck_samples = [\"A\", \"B\"]\ncategory = \"9i\"\n\
                    [[site_sigma]]\nelement = \"Pb\"\nclass = \"polymer\"\ns = \"20 mg/kg\"\nseconds = 60\n\
                    [[lift]]\nlot = \"L\"\nreason = \"trust_none\"\nwhy = \"w\"\nby = \"AB\"\nsecond = \"CD\"\n";
    let inspection = inspect(settings, &[("a.csv", b"Sample,Lot,Pb mg/kg,Pb u (1s)\nS,L,1,1\n".as_slice())]);
    let report = report_html(&inspection, &review(&inspection));
    let acts = plain(section(&report, "report-acts"));
    for code in ["same_id", "everything", "advisory", "holding", "element=", "trust_none", "A|B", "9i "] {
        assert!(!acts.contains(code), "{code}: {acts}");
    }
    for words in [
        "material class set to composite / electronics",
        "missing check readings: said, and hold nothing",
        "the same sample id, also where no spot is stated",
        "Pb in polymer: one sigma 20 mg/kg, for 60 s, of which nothing is constant",
        "hold lifted: no check readings; why: w",
        "check samples: A, B",
    ] {
        assert!(acts.contains(words), "{words}: {acts}");
    }
}

#[test]
fn a_report_prints_laboratory_results_beside_the_screen() {
    let report = plain(&report_of("settling/a-result-within-lifts-what-the-screen-said"));
    let results = &report[report.find(&say("report-laboratory_results")).expect("the section")..];
    assert!(results.contains("Pb 412 ± 30 mg/kg (k = 2)") && results.contains("IEC 62321-5:2013"));
    assert!(report.contains("is within 1000 mg/kg (method IEC 62321-5:2013;"), "the lot says it too");
    let untraced = plain(&report_of("settling/results-that-settle-nothing"));
    assert!(untraced.contains(&say("report-laboratory_not_traceable")));
}

#[test]
fn a_report_prints_readings_set_aside_and_acts_that_speak_of_nothing() {
    let (report, annex) = (report_of("settling/readings-set-aside"), annex_of("settling/readings-set-aside"));
    let (report, annex) = (plain(&report), plain(&annex));
    assert!(report.contains(&say("report-set_aside_text")) && report.contains("slipped off the window"));
    assert_eq!(annex.matches(&say("report-aside")).count(), 4, "each is marked in the annex");
    assert!(report.contains("for reading on line 99 of lot.csv, which is not here"));
}

#[test]
fn a_report_says_how_a_hold_ends_and_leaves_blanks_for_what_nobody_said() {
    let said = plain(&report_of("settling/a-hold-that-should-have-ended"));
    for text in ["incoming inspection", "2026-11-24", "501", "cage 2", "that day is past", "the lot has 500"]
    {
        assert!(said.contains(text), "{text}");
    }
    let open = report_of("settling/lifts-that-lift-nothing");
    for id in ["report-hold_what", "report-hold_who", "report-hold_until", "report-hold_quarantined"] {
        assert!(open.contains(&format!("<dt>{}</dt><dd>______________</dd>", say(id))), "{id}");
    }
    let accepted = report_of("settling/two-people-lift-holds");
    assert!(!accepted.contains(&say("report-hold_what")), "an accepted lot has no hold to end");
}

#[test]
fn days_that_cannot_both_be_right_are_named() {
    let table = b"Sample,Lot,Supplier,Date,Pb mg/kg,Pb u (1s)\nS-1,L-1,Alder Works,2026-11-20,12,3\n";
    let told = |settings: &str| {
        let settings = format!("schema = \"plumbline.settings/1\"\nreviewed_at = 2026-11-19\n{settings}");
        let inspection = inspect(&settings, &[("a.csv", table.as_slice())]);
        plain(&report_html(&inspection, &review(&inspection)))
    };
    let amiss = "Dates that do not fit each other";
    let all = told(
        "issued_on = 2026-11-01\nreceived = 2027-11-30\n[[sampled]]\nlot = \"L-1\"\nsupplier = \"Alder Works\"\ndate = 2026-12-01\n",
    );
    assert_eq!(all.matches(amiss).count(), 4, "{all}");
    for words in [
        "“Date of issue” is 2026-11-01, which is before “Reviewed on”, 2026-11-19",
        "“Reviewed on” is 2026-11-19, which is before “Readings made”, 2026-11-20",
        "before “Received”, 2027-11-30",
        "before “Samples taken”, 2026-12-01",
    ] {
        assert!(all.contains(words), "{words}\n{all}");
    }
    assert_eq!(
        told("issued_on = 2026-11-19\n").matches(amiss).count(),
        1,
        "only the readings lie behind the review"
    );
}

#[test]
fn a_laboratory_result_that_belongs_to_no_material_is_not_said_never_to_have_been_given() {
    let table = b"Sample,Lot,Supplier,Pb mg/kg,Pb u (1s)\nS-1,L-1,Alder Works,12,3\n";
    let settings = "schema = \"plumbline.settings/1\"\n[[laboratory]]\nsupplier = \"Alder Works\"\nlot = \"L-9\"\npart = \"p\"\nmaterial = \"m\"\n\
        analyte = \"Pb\"\nvalue = \"900 mg/kg\"\nu = \"20 mg/kg\"\nk = 2\nmethod = \"IEC 62321-5\"\nlaboratory = \"Lab\"\nreport = \"R-1\"\ndate = 2026-11-18\n";
    let inspection = inspect(settings, &[("a.csv", table.as_slice())]);
    let report = plain(&report_html(&inspection, &review(&inspection)));
    assert!(!report.contains("no laboratory result was given"), "{report}");
    assert!(report.contains("One laboratory result"), "{report}");
}

#[test]
fn what_is_over_a_halogen_limit_is_said_to_move_nothing_or_has_its_own_column() {
    let table = b"Sample,Lot,Part,Material,Class,Br mg/kg,Br u (1s),Cl mg/kg,Cl u (1s)\nS-1,L-1,p,m,composite,50,4,9000,90\n";
    let told = |settings: &str| {
        let settings = format!("schema = \"plumbline.settings/1\"\n{settings}");
        let inspection = inspect(&settings, &[("a.csv", table.as_slice())]);
        let report = report_html(&inspection, &review(&inspection));
        plain(&without_strips(section(&report, "report-results")))
    };
    let shown = say("report-halogens_shown");
    let free = told("");
    assert!(free.contains(&shown) && !free.contains("Br as a halogen"), "{free}");
    let bound = told("halogen_book = \"iec-61249-2-21-2003\"\n");
    assert!(!bound.contains(&shown), "{bound}");
    assert!(bound.contains("Cr Br Cl Br as a halogen Cl+Br"), "{bound}");
    assert!(bound.contains("BL OL X OL"), "below as a substance, undecided as a halogen: {bound}");
}
