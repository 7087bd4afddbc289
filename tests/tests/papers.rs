//! The papers that go out beside a report: what each must hold, what it must never hold, and its code read by another's eyes.

use std::collections::BTreeSet;
use std::fs;

use plumbline_core::acts::{ActKind, Target};
use plumbline_core::inspection::{Findings, Inspection, review};
use plumbline_core::lot::Disposition;
use plumbline_core::papers::{self, NoticeOffer, payload};
use plumbline_core::reading::Identity;
use plumbline_core::report::phrases;
use plumbline_core::words::Words;
use plumbline_tests::places::in_project;
use plumbline_tests::program::{inspect, papers_html, papers_in, report_html, with_words};
use plumbline_words::LANGUAGES;

/// Every demo delivery at once, as one inspection without settings.
fn all_deliveries() -> Inspection {
    let mut files: Vec<(String, Vec<u8>)> = Vec::new();
    for delivery in
        fs::read_dir(in_project("demo-data")).expect("the demos").map(|entry| entry.expect("an entry").path())
    {
        if !delivery.is_dir() {
            continue;
        }
        for path in fs::read_dir(&delivery).expect("a delivery").map(|entry| entry.expect("an entry").path())
        {
            if path.extension().is_some_and(|ending| ending == "csv" || ending == "tsv") {
                let name = path.file_name().expect("a name").to_string_lossy().into_owned();
                files.push((name, fs::read(&path).expect("a file")));
            }
        }
    }
    files.sort();
    let files: Vec<(&str, &[u8])> =
        files.iter().map(|(name, bytes)| (name.as_str(), bytes.as_slice())).collect();
    inspect("", &files)
}

fn with(settings: &str, rows: &str) -> (Inspection, Findings) {
    let settings = format!("schema = \"plumbline.settings/1\"\n{settings}");
    let table = format!(
        "Sample,Unit,Spot,Supplier,Lot,Part,Material,Class,Pb mg/kg,Pb u (1s),Br mg/kg,Br u (1s)\n{rows}"
    );
    let inspection = inspect(&settings, &[("pins.csv", table.as_bytes())]);
    let findings = review(&inspection);
    (inspection, findings)
}

const TWO: &str = "S1,u1,top,Alder Works,A-1,P-1,pin,metal,1360,20,,\nS2,u2,side,Alder Works,A-1,P-1,pin,metal,1410,20,,\n\
    S3,u3,top,Birch Works,B-1,P-2,shell,polymer,2,1,300,40\n";

fn paper(papers: &[(String, String)], start: &str) -> String {
    let found = papers.iter().find(|(file, _)| file.starts_with(start));
    found
        .unwrap_or_else(|| {
            panic!("{start} is not among {:?}", papers.iter().map(|one| &one.0).collect::<Vec<_>>())
        })
        .1
        .clone()
}

#[test]
fn each_paper_carries_number_digest_end_and_what_it_is_not() {
    let (inspection, findings) = with("reviewed_at = \"2026-11-26\"\n", TWO);
    let report = report_html(&inspection, &findings);
    let number = report
        .split("PL-20261126-")
        .nth(1)
        .map(|rest| format!("PL-20261126-{}", &rest[..10]))
        .expect("a number");
    let papers = papers_html(&inspection, &findings);
    assert_eq!(papers.len(), 5, "sheet, request, two notices, labels");
    for (file, page) in &papers {
        assert!(page.contains(&number), "{file}");
        assert!(page.contains(&format!("End of {number}")), "{file}");
        assert!(
            page.contains("Screening is not a declaration of conformity and is not a laboratory result."),
            "{file}"
        );
        assert!(page.contains("\"Page \" counter(page) \" of \" counter(pages) \"\""), "{file}");
        let digest =
            page.split("SHA-256 of the findings: ").nth(1).expect("a digest").get(..64).expect("64 digits");
        assert!(report.contains(digest), "{file}");
        assert!(!page.contains("<script") && page.contains("default-src 'none'"), "{file}");
        // A word that is missing shows its own name in brackets.
        assert!(!page.contains("[paper-") && !page.contains("[report-") && !page.contains("{ $"), "{file}");
    }
}

#[test]
fn the_request_names_sample_substance_method_reason_and_what_is_asked_back() {
    let settings =
        "[[hold_ends]]\nsupplier = \"Birch Works\"\nlot = \"B-1\"\nuntil = 2026-12-05\nwho = \"lab\"\n";
    let (inspection, findings) = with(settings, TWO);
    let page = paper(&papers_html(&inspection, &findings), papers::LABORATORY_REQUEST);
    // The methods are those of the screening book.
    for text in [
        "IEC 62321-5:2013",
        "IEC 62321-6:2015",
        "sample <bdi>S2</bdi>, piece <bdi>u2</bdi>, spot <bdi>side</bdi>",
        "1410 mg/kg ± 20 (1s)",
        "band 700 to 1300 mg/kg",
        "Pb is over limit in 2 of 2 readings.",
        "The coverage factor k",
        "Seal number",
        "toxic dust",
        "<bdi>Birch Works</bdi>",
    ] {
        assert!(page.contains(text), "{text}");
    }
    let at = |text: &str| page.find(text).unwrap_or_else(|| panic!("{text}"));
    assert!(
        at("Sample 1 of 2") < at("<bdi>shell</bdi>") && at("<bdi>shell</bdi>") < at("<bdi>pin</bdi>"),
        "the hold that ends first comes first"
    );
    assert!(page.contains("2026-12-05"));
    assert_eq!(papers::offer(&inspection, &findings).samples, 2);
}

#[test]
fn what_a_laboratory_has_settled_is_not_sent_again() {
    let settings = "[[laboratory]]\nsupplier = \"Alder Works\"\nlot = \"A-1\"\npart = \"P-1\"\nmaterial = \"pin\"\nanalyte = \"Pb\"\nvalue = \"412 mg/kg\"\nu = \"30 mg/kg\"\nk = 2\nmethod = \"IEC 62321-5:2013\"\nlaboratory = \"Gorse Works\"\nreport = \"R-1\"\ndate = 2026-11-20\n";
    let (inspection, findings) = with(settings, TWO);
    let page = paper(&papers_html(&inspection, &findings), papers::LABORATORY_REQUEST);
    assert!(!page.contains("<bdi>pin</bdi>") && page.contains("<bdi>shell</bdi>"));
}

#[test]
fn a_notice_holds_facts_band_actions_and_the_day_and_calls_the_undecided_undecided() {
    let settings = "reply_by = \"2026-12-15\"\ncontact = \"incoming inspection\"\n[[lot]]\nsupplier = \"Birch Works\"\nlot = \"B-1\"\nreply_by = \"2026-12-04\"\nrequested_action = \"Send the recipe.\"\n";
    let (inspection, findings) = with(settings, TWO);
    let papers = papers_html(&inspection, &findings);
    let alder = paper(&papers, "supplier-notice-1-alder-works");
    for text in [
        "1410 mg/kg ± 20 (1s)",
        "band 700 to 1300 mg/kg",
        "over limit",
        "2026-12-15",
        "incoming inspection",
        "Keep back",
        "replace the lot",
        "It accuses nobody",
    ] {
        assert!(alder.contains(text), "{text}");
    }
    assert!(!alder.contains("What is on hold is undecided"), "nothing of this supplier is on hold");
    let birch = paper(&papers, "supplier-notice-2-birch-works");
    for text in ["300 mg/kg ± 40 (1s)", "What is on hold is undecided", "Send the recipe.", "2026-12-04"] {
        assert!(birch.contains(text), "{text}");
    }
    assert!(
        !birch.contains("Keep back") && !birch.contains("2026-12-15"),
        "a person's own words and day stand in place of the program's"
    );
}

#[test]
fn a_day_that_nobody_gave_is_a_line_to_write_on() {
    let (inspection, findings) = with("", TWO);
    let notice = paper(&papers_html(&inspection, &findings), "supplier-notice-1");
    assert!(notice.contains("<dt>Please reply by</dt><dd><b><span class=\"line\"></span></b></dd>"));
}

#[test]
fn a_notice_of_what_is_held_by_the_own_side_alone_asks_for_no_reply() {
    let clean = "S1,u1,top,Alder Works,A-1,P-1,pin,metal,6,2,,\n";
    let settings = "materials = \"advisory\"\nreply_by = \"2026-12-15\"\n";
    let (inspection, findings) = with(settings, clean);
    let notice = paper(&papers_html(&inspection, &findings), "supplier-notice-1");
    assert!(notice.contains("Nothing for now"));
    for text in ["reply by", "2026-12-15", "Please answer in writing"] {
        assert!(!notice.contains(text), "{text}");
    }
}

/// Names of one supplier's things that no other supplier has.
fn own_texts(inspection: &Inspection, findings: &Findings, supplier: &str) -> BTreeSet<String> {
    let mut own = BTreeSet::from([supplier.to_owned()]);
    for source in &inspection.sources {
        for row in 0..source.readings.len() {
            let text = |identity| source.readings.identity(identity, row);
            if text(Identity::Supplier) == Some(supplier) {
                own.insert(source.name.clone());
                own.extend(
                    [Identity::Id, Identity::Lot, Identity::Part]
                        .iter()
                        .filter_map(|one| text(*one))
                        .map(str::to_owned),
                );
            }
        }
    }
    own.extend(
        findings
            .lots
            .iter()
            .filter(|lot| lot.supplier.as_deref() == Some(supplier))
            .filter_map(|lot| lot.lot.clone()),
    );
    own.retain(|text| text.len() > 3);
    own
}

#[test]
fn a_notice_never_holds_anything_of_another_supplier() {
    let inspection = all_deliveries();
    let findings = review(&inspection);
    let offer = papers::offer(&inspection, &findings);
    assert!(offer.notices.len() >= 6, "{offer:?}");
    let papers = papers_html(&inspection, &findings);
    let texts: Vec<(String, BTreeSet<String>)> = offer
        .notices
        .iter()
        .map(|NoticeOffer { supplier, .. }| (supplier.clone(), own_texts(&inspection, &findings, supplier)))
        .collect();
    let mut looked_for = 0;
    for NoticeOffer { supplier, file, .. } in &offer.notices {
        let page = paper(&papers, file);
        let own = &texts.iter().find(|(name, _)| name == supplier).expect("its texts").1;
        for (_, others) in texts.iter().filter(|(name, _)| name != supplier) {
            for text in others.difference(own) {
                assert!(!page.contains(text.as_str()), "{file} holds {text}");
                looked_for += 1;
            }
        }
        assert!(page.contains(supplier.as_str()));
    }
    assert!(looked_for > 500, "{looked_for}");
}

#[test]
fn where_every_lot_is_accepted_there_is_no_paper_but_the_sheet() {
    let settings = "trust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";
    let table = b"Sample,Supplier,Lot,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\nS1,Alder Works,A-1,metal,1,0.5,5,1,1,0.5,5,1\n";
    let inspection = inspect(&format!("schema = \"plumbline.settings/1\"\n{settings}"), &[("a.csv", table)]);
    let findings = review(&inspection);
    assert_eq!(findings.lots[0].disposition, Disposition::Accept);
    let nothing = papers::Offer { self_check: 1, ..papers::Offer::default() };
    assert_eq!(papers::offer(&inspection, &findings), nothing);
}

/// The dark modules of every code of a sheet, drawn as grey pixels, eight to a module.
fn codes(page: &str) -> Vec<(usize, Vec<u8>)> {
    const MODULE: usize = 8;
    page.split("<svg class=\"code\"")
        .skip(1)
        .map(|rest| {
            let size: usize = rest
                .split("viewBox=\"0 0 ")
                .nth(1)
                .and_then(|rest| rest.split(' ').next())
                .expect("a size")
                .parse()
                .expect("a number");
            let path = rest
                .split("<path class=\"dark\"")
                .nth(1)
                .and_then(|rest| rest.split(" d=\"").nth(1))
                .expect("a path");
            let side = size * MODULE;
            let mut pixels = vec![255; side * side];
            for run in path.split('"').next().expect("a path").split('z').filter(|run| !run.is_empty()) {
                let numbers: Vec<usize> = run
                    .split(|one: char| !one.is_ascii_digit())
                    .filter(|digits| !digits.is_empty())
                    .map(|digits| digits.parse().expect("a number"))
                    .collect();
                let [x, y, length, 1, back] = numbers[..] else { panic!("{run}") };
                assert_eq!(length, back, "{run}");
                for pixel_y in y * MODULE..(y + 1) * MODULE {
                    pixels[pixel_y * side + x * MODULE..pixel_y * side + (x + length) * MODULE].fill(0);
                }
            }
            (side, pixels)
        })
        .collect()
}

fn decoded(side: usize, pixels: &[u8]) -> String {
    let mut image = rqrr::PreparedImage::prepare_from_greyscale(side, side, |x, y| pixels[y * side + x]);
    let grids = image.detect_grids();
    assert_eq!(grids.len(), 1, "one code");
    grids[0].decode().expect("a code that can be read").1
}

#[test]
fn the_code_of_every_label_is_read_by_another_reader_as_what_the_contract_says() {
    let mut inspection = all_deliveries();
    // Names that make long or odd codes.
    let long = "L".repeat(110);
    let table = format!(
        "Sample,Supplier,Lot,Class,Pb mg/kg,Pb u (1s)\nS1,Elm | Sons,a\\b c,metal,1360,20\nS2,Elm | Sons,{long},metal,1360,20\nS3,部品,零件-1,metal,1360,20\n"
    );
    let odd = inspect("", &[("odd.csv", table.as_bytes())]);
    inspection.add_sources(odd.sources);
    let findings = review(&inspection);
    let page = paper(&papers_html(&inspection, &findings), papers::LABELS);
    let number = page.split("<title>").nth(1).and_then(|rest| rest.split("PL-").nth(1)).expect("a number");
    let number = format!("PL-{}", &number[..10]);
    let held: Vec<_> = findings.lots.iter().filter(|lot| lot.disposition != Disposition::Accept).collect();
    let codes = codes(&page);
    assert_eq!(codes.len(), held.len());
    assert!(held.len() > 20, "{}", held.len());
    for ((side, pixels), lot) in codes.iter().zip(&held) {
        let text = decoded(*side, pixels);
        assert_eq!(text, payload(&inspection, &number, lot));
        let mut words = text.splitn(4, ' ');
        assert_eq!(words.next(), Some("PLUMBLINE/1"));
        assert_eq!(words.next(), Some(number.as_str()));
        assert_eq!(words.next(), Some(lot.disposition.code()));
        let key = words.next().expect("a lot");
        match Target::parse(&format!("lot:{key}")) {
            Some(target) => assert_eq!(target, lot.target(), "{text}"),
            None => assert!(lot.lot.is_none() || key.starts_with("sha256:"), "{text}"),
        }
        // Four light modules on every side.
        let margin = 4 * 8;
        for (at, pixel) in pixels.iter().enumerate() {
            let (x, y) = (at % side, at / side);
            let inside = (margin..side - margin).contains(&x) && (margin..side - margin).contains(&y);
            assert!(inside || *pixel == 255, "{text}");
        }
    }
    let texts: Vec<String> = held.iter().map(|lot| payload(&inspection, &number, lot)).collect();
    assert!(texts.iter().any(|text| text.ends_with("Elm \\| Sons|a\\\\b c")));
    assert!(texts.iter().any(|text| text.contains(" sha256:")));
}

#[test]
fn acts_about_papers_change_no_outcome() {
    let (plain, plain_findings) = with("", TWO);
    let (told, told_findings) =
        with("reply_by = \"2026-12-15\"\nrequested_action = \"x\"\ncontact = \"y\"\n", TWO);
    assert!(told.acts.iter().any(|act| act.kind == ActKind::ReplyBy) && plain.acts.is_empty());
    let lots = |findings: &Findings| {
        findings.lots.iter().map(|lot| (lot.disposition, lot.reasons.clone())).collect::<Vec<_>>()
    };
    assert_eq!(lots(&plain_findings), lots(&told_findings));
}

#[test]
fn a_paper_of_invented_data_says_so_wherever_it_goes() {
    let (inspection, findings) = with("invented = \"yes\"\n", TWO);
    let written = papers_html(&inspection, &findings);
    assert!(written.len() >= 4, "{written:?}");
    for (file, text) in &written {
        let (style, seen) = text.split_once("</style>").expect("a style");
        assert!(seen.contains("class=\"invented\"><b>Invented data"), "{file}: at its head");
        assert!(style.contains("--invented:\"Invented data"), "{file}: in the margin of every page");
    }
    let labels = paper(&written, "labels");
    assert_eq!(labels.matches("INVENTED DATA").count(), labels.matches("class=\"word\"").count());
    let (inspection, findings) = with("", TWO);
    for (file, text) in papers_html(&inspection, &findings) {
        assert!(!text.to_lowercase().contains("invented data"), "{file}");
    }
}

#[test]
fn a_laboratory_is_asked_for_the_restricted_substance_and_not_for_the_element_that_points_to_it() {
    let rows = "S1,u1,top,Alder Works,A-1,P-1,shell,polymer,2,1,832,14\n";
    let (inspection, findings) = with("", rows);
    let request = paper(&papers_html(&inspection, &findings), "laboratory-request");
    assert!(request.contains("<b>PBB and PBDE, each by itself"), "{request}");
    for row in ["<tr><td>PBB</td>", "<tr><td>PBDE</td>"] {
        assert_eq!(request.matches(row).count(), 1, "{row}");
    }
    assert!(!request.contains("<tr><td>Br</td>"), "no result for the element is asked back");
}

// ---- the self-check sheet ----

/// A lot of each group: over, undecided with nothing said of anything else, and one that nothing keeps.
const THREE: &str =
    "S1,u1,top,Alder Works,A-1,P-1,pin,metal,1360,20,,\nS2,u2,side,Birch Works,B-1,P-2,pin,metal,900,60,,\n";

fn sheet(settings: &str, rows: &str) -> String {
    let (inspection, findings) = with(settings, rows);
    paper(&papers_html(&inspection, &findings), papers::SELF_CHECK)
}

/// The text between the heading of one group and the next section.
fn group<'a>(page: &'a str, code: &str) -> &'a str {
    let start = page.find(&format!("data-group=\"{code}\"")).unwrap_or_else(|| panic!("no group {code}"));
    let rest = &page[start..];
    rest.split("</section>").next().expect("its end")
}

#[test]
fn what_the_suppliers_own_people_lifted_its_customer_would_hold() {
    let advisory = "trust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";
    let rows = "S2,u2,side,Birch Works,B-1,P-2,pin,metal,900,60,,\n";
    let lifted = ["Pb", "Cd", "Hg", "Cr", "Br"].map(|about| {
        format!(
            "[[lift]]\nsupplier = \"Birch Works\"\nlot = \"B-1\"\nreason = \"undecided\"\nabout = \"{about}\"\n\
             why = \"accepted by quality\"\nby = \"MK\"\nsecond = \"TS\"\n"
        )
    });
    let page = sheet(&format!("{advisory}{}", lifted.concat()), rows);
    let held = group(&page, "hold");
    assert!(held.contains("lifted by MK and TS: accepted by quality"), "{held}");
    assert!(!page.contains("data-group=\"accept\""), "the customer lifted nothing");
}

#[test]
fn the_self_check_sheet_says_what_it_is_not_and_where_the_full_report_is() {
    let page = sheet("reviewed_at = \"2026-11-26\"\nplacing_date = \"2026-12-01\"\n", TWO);
    for text in [
        "A supplier's self-check",
        "It is not a declaration of conformity, and no decision of the customer",
        "The full report to these readings has the number PL-20261126-",
        "2026-12-01",
        "Phthalates (DEHP, BBP, DBP, DIBP)",
        "Checked by",
        "Responsible person",
        "No exemption is claimed.",
        "Check readings: 0.",
        "pins.csv",
    ] {
        assert!(page.contains(text), "{text}");
    }
    for never in ["conforms", "Conforms", ">pass<", " passed", "compliant"] {
        assert!(!page.contains(never), "{never}");
    }
}

#[test]
fn the_sheet_sorts_lots_by_what_the_customer_would_do_and_adds_no_decision() {
    let (inspection, findings) =
        with("", &format!("{THREE}S3,u3,top,Cedar Works,C-1,P-3,shell,polymer,2,1,300,40\n"));
    let page = paper(&papers_html(&inspection, &findings), papers::SELF_CHECK);
    let over = group(&page, "not_accept");
    assert!(
        over.contains("do not ship it as it is")
            && over.contains("<bdi>A-1</bdi>")
            && !over.contains("<bdi>B-1</bdi>")
    );
    let held = group(&page, "hold");
    assert!(
        held.contains("do this before shipping")
            && held.contains("<bdi>B-1</bdi>")
            && held.contains("<bdi>C-1</bdi>")
    );
    assert!(page.find("data-group=\"not_accept\"") < page.find("data-group=\"hold\""), "the worst first");
    assert!(!page.contains("data-group=\"accept\""), "no lot is free of reasons");
    with_words(|words| {
        for lot in &findings.lots {
            for reason in &lot.reasons {
                let said = phrases::lot_reason(words, reason).replace('&', "&amp;").replace('<', "&lt;");
                assert!(page.contains(&said), "{said}");
            }
        }
    });
}

#[test]
fn what_has_to_be_done_before_shipping_stands_in_the_order_of_its_use() {
    let page = sheet("", "S2,u2,side,Birch Works,B-1,P-2,pin,,900,60,,\n");
    let held = group(&page, "hold");
    let at = |text: &str| held.find(text).unwrap_or_else(|| panic!("{text} in {held}"));
    // Said, checked, measured: the lot's class and plan before the checks, the checks before another measurement.
    assert!(at("lot size") < at("check"), "{held}");
    assert!(at("No check standard") < at("Cd was not measured"), "{held}");
    assert!(held.contains("What would settle it") && held.contains("900 mg/kg"), "{held}");
}

#[test]
fn a_lot_that_nothing_keeps_is_called_nothing_found_with_what_was_only_noted() {
    let settings = "trust = \"advisory\"\nsampling = \"advisory\"\nmaterials = \"advisory\"\n";
    let table = b"Sample,Supplier,Lot,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\nS1,Alder Works,A-1,metal,1,0.5,5,1,1,0.5,5,1\n";
    let inspection = inspect(&format!("schema = \"plumbline.settings/1\"\n{settings}"), &[("a.csv", table)]);
    let findings = review(&inspection);
    let offer = papers::offer(&inspection, &findings);
    assert_eq!((offer.self_check, offer.labels, offer.notices.len()), (1, 0, 0));
    let page = paper(&papers_html(&inspection, &findings), papers::SELF_CHECK);
    let free = group(&page, "accept");
    for text in [
        "Nothing found that would hold it",
        "That is no assurance",
        "Only noted",
        "No lot size with a number of units to take",
    ] {
        assert!(free.contains(text), "{text} in {free}");
    }
    assert!(!page.contains("data-group=\"hold\""));
}

#[test]
fn the_sheet_names_whose_rule_books_it_was_held_against() {
    assert!(sheet("", TWO).contains("No rule book of a customer was used"));
    // A customer's book: another's limits under a name of its own.
    let text = fs::read_to_string(in_project("crates/core/rules/eu-elv-2000-53.toml")).expect("a book");
    let text = text.replacen("\"eu-elv-2000-53\"", "\"fernbrook-own\"", 1);
    let book = plumbline_core::rules::RuleBook::parse(&text);
    let book = book.unwrap_or_else(|problems| panic!("{problems:?}"));
    let digest = book.sha256.clone();
    let (mut inspection, _) = with("", TWO);
    inspection.books.add(book);
    let findings = review(&inspection);
    let page = paper(&papers_html(&inspection, &findings), papers::SELF_CHECK);
    assert!(
        page.contains("given as a file")
            && page.contains("<bdi>fernbrook-own</bdi>")
            && page.contains(&digest)
    );
    assert!(!page.contains("No rule book of a customer was used"));
    assert!(page.contains("comes with this program"), "the others are told apart");
}

#[test]
fn a_claim_stands_with_its_day_and_whether_it_is_in_force_on_the_day_of_placing_on_the_market() {
    let claim = "category = \"11\"\n[[claim]]\npart = \"P-1\"\nentry = \"6(c)\"\nsubstance = \"Pb\"\nevidence = \"E-1\"\nby = \"ab\"\nsecond = \"cd\"\n";
    let rows = "S1,u1,top,Alder Works,A-1,P-1,pin,metal,25000,200,,\n";
    let no_day = sheet(claim, rows);
    assert!(
        no_day.contains("<bdi>6(c)</bdi>, Pb")
            && no_day.contains("when is the product placed on the market?")
    );
    let on = |day: &str| sheet(&format!("placing_date = \"{day}\"\n{claim}"), rows);
    assert!(on("2026-12-01").contains("yes, on 2026-12-01") && on("2026-12-01").contains("2027-06-30"));
    let late = on("2099-01-01");
    assert!(!late.contains("yes, on"), "no entry is known to be in force in 2099");
}

#[test]
fn the_sheet_is_whole_in_every_language_and_hostile_names_stay_names() {
    let rows =
        "S1,u1,top,\"<b>Alder\u{202e}</b>\",\"A\"\"'><script>x</script>\",P-1,\"pin&amp;\",metal,1360,20,,\n";
    for language in LANGUAGES {
        let words = Words::of(language);
        for (settings, rows) in [("", TWO), ("trust = \"advisory\"\n", THREE), ("", rows)] {
            let (inspection, findings) = with(settings, rows);
            let page = paper(&papers_in(&inspection, &findings, &words), papers::SELF_CHECK);
            assert!(page.contains(&format!("<html lang=\"{}\">", language.tag)));
            for hole in ["[paper-", "[report-", "[lot-reason-", "{ $", "<script", "<b>Alder", "\u{202e}"] {
                assert!(!page.contains(hole), "{hole} in {}", language.tag);
            }
        }
    }
}

#[test]
fn the_sheet_of_a_demo_is_written_as_it_is_kept() {
    let settings = "reviewed_at = \"2026-11-26\"\ninvented = \"yes\"\n";
    let (inspection, findings) = with(settings, &format!("{TWO}{THREE}"));
    let page = paper(&papers_html(&inspection, &findings), papers::SELF_CHECK);
    // Style, digests and the number change with what else findings hold; what is told does not.
    let told = page.split_once("</style>").expect("a style").1.replace("</", "\n</");
    let told = told
        .split(|one: char| !one.is_ascii_hexdigit())
        .filter(|run| run.len() == 64)
        .fold(told.clone(), |told, digest| told.replace(digest, "DIGEST"));
    let number = format!("PL-20261126-{}", &told.split("PL-20261126-").nth(1).expect("a number")[..10]);
    let told = told.replace(&number, "NUMBER");
    let kept = in_project("tests/snapshots/self-check.html");
    if std::env::var_os("UPDATE_GOLDEN").is_some() {
        fs::write(&kept, &told).expect("the snapshot");
    }
    assert_eq!(told, fs::read_to_string(&kept).expect("the snapshot; UPDATE_GOLDEN=1 writes it"));
}
