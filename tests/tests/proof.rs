//! A report proves itself; what that shows, and what it doesn't.

use std::fs;

use plumbline_core::inspection::{Inspection, review};
use plumbline_core::lot::Disposition;
use plumbline_core::opened::{Kept, Stub};
use plumbline_core::reading::NoticeCode;
use plumbline_core::report::{Length, PROGRAM, Program, html};
use plumbline_core::rules::{RuleBook, SCREENING_2013};
use plumbline_core::words::Words;
use plumbline_intake::of_stubs;
use plumbline_proof::{FileState, OnlyFindings, PlaceKind, Proof, Prover, Verdict, prove, said};
use plumbline_tests::delivery::{Delivery, all, delivery, english, report_of};
use plumbline_tests::golden::{cases, run};
use plumbline_tests::places::in_tests;
use plumbline_tests::program::{read_opened, with_words};
use plumbline_words::LANGUAGES;

fn alone(report: &[u8]) -> Proof {
    prove(report, &[], None, &english)
}

/// The digest that a report prints.
fn printed(report: &[u8]) -> String {
    let text = String::from_utf8_lossy(report);
    let (_, rest) = text.rsplit_once("<p class=\"mono\">").expect("the digest beside the signatures");
    let line = rest.split('<').next().unwrap_or_default();
    line.rsplit(' ').next().unwrap_or_default().to_owned()
}

fn told(proof: &Proof) -> String {
    with_words(|words| said::places(words, proof).join("\n"))
}

#[test]
fn the_report_of_every_delivery_proves_itself_and_matches_its_files() {
    for one in all() {
        for length in Length::ALL {
            let report = one.report(*length);
            let proof = prove(&report, &one.files, Some(&printed(&report)), &english);
            assert_eq!(proof.verdict, Verdict::Agrees, "{} {}\n{}", one.name, length.code(), told(&proof));
            assert!(proof.holds() && proof.data_are_those_files(), "{}", one.name);
            assert_eq!((proof.given_digest, proof.strangers.len()), (Some(true), 0), "{}", one.name);
            assert!(proof.files.iter().all(|file| file.state == FileState::Matched), "{}", one.name);
            assert!(!alone(&report).data_are_those_files(), "{}", one.name);
        }
    }
}

#[test]
fn the_report_of_every_golden_case_proves_itself() {
    let mut proved = 0;
    for case in cases(&in_tests("golden")) {
        let Ok(inspection) = run::inspection_of(&case) else { continue };
        let report = report_of(&inspection, Length::Full);
        let proof = prove(&report, &case.files, None, &english);
        assert_eq!(proof.verdict, Verdict::Agrees, "{}\n{}", case.name, told(&proof));
        let state = |file: &plumbline_proof::FileSeen| {
            matches!(file.state, FileState::Matched | FileState::NothingRead)
        };
        assert!(proof.files.iter().all(state), "{}", case.name);
        proved += 1;
    }
    assert!(proved > 60, "{proved}");
}

#[test]
fn all_lengths_print_one_digest() {
    for one in all() {
        let inspection = one.inspection();
        let digests: Vec<String> =
            Length::ALL.iter().map(|length| printed(&report_of(&inspection, *length))).collect();
        assert_eq!(digests[0].len(), 64, "{}", one.name);
        assert!(digests.iter().all(|digest| *digest == digests[0]), "{}", one.name);
    }
}

#[test]
fn a_report_in_any_language_proves_in_that_language() {
    for name in ["02-red-cable", "15-changed-compound"] {
        let inspection = delivery(name).inspection();
        let findings = review(&inspection);
        for language in LANGUAGES {
            let mut report = Vec::new();
            html::write(&inspection, &findings, &Words::of(language), Length::Full, &mut report)
                .expect("a Vec takes all bytes");
            let known = |tag: &str| (tag == language.tag).then(|| Words::of(language));
            let proof = prove(&report, &[], None, &known);
            assert_eq!(proof.verdict, Verdict::Agrees, "{name} {}\n{}", language.tag, told(&proof));
            assert_eq!(proof.language.as_deref(), Some(language.tag));
            assert_eq!(
                proof.digest,
                alone(&delivery(name).report(Length::OnePage)).digest,
                "{}",
                language.tag
            );
        }
    }
}

#[test]
fn line_ends_and_a_byte_order_mark_are_said_to_be_just_that() {
    let report = delivery("03-brass-valve").report(Length::Full);
    let with_returns = String::from_utf8(report.clone()).expect("UTF-8").replace('\n', "\r\n").into_bytes();
    let marked = [b"\xef\xbb\xbf".as_slice(), &report].concat();
    for other in [with_returns.clone(), marked, [b"\xef\xbb\xbf".as_slice(), &with_returns].concat()] {
        let proof = alone(&other);
        assert_eq!(proof.verdict, Verdict::LineEnds, "{}", told(&proof));
        assert!(proof.holds());
    }
    let text = String::from_utf8(with_returns).expect("UTF-8").replacen("Cedar", "Cedar ", 1);
    assert_eq!(alone(text.as_bytes()).verdict, Verdict::Differs);
}

/// The delivery with one digit of its first table changed, so that a reading says another number.
fn forged(one: &Delivery) -> Delivery {
    let mut forged = one.clone();
    let bytes = &mut forged.files[0].1;
    let last_line = bytes.iter().rposition(|byte| *byte == b'\n').filter(|at| *at + 1 < bytes.len());
    let end = last_line.unwrap_or(bytes.len() - 1);
    let at = bytes[..end].iter().rposition(|byte| (b'1'..=b'8').contains(byte)).expect("a digit");
    bytes[at] += 1;
    forged
}

#[test]
fn a_forgery_made_whole_agrees_with_itself_and_is_caught_by_the_files_and_by_the_digest() {
    for name in ["01-clean-housing", "02-red-cable", "13-steel-pins"] {
        let one = delivery(name);
        let (true_report, report) = (one.report(Length::Full), forged(&one).report(Length::Full));
        let proof = alone(&report);
        assert_eq!(proof.verdict, Verdict::Agrees, "{name}: by itself nobody can tell");
        assert!(!proof.data_are_those_files());
        let says = with_words(|words| said::shows(words, &proof));
        let expected = with_words(|words| words.say("proof-shows-self"));
        assert!(says.contains(&expected), "{says:?}");

        let beside = prove(&report, &one.files, None, &english);
        assert_eq!(beside.files[0].state, FileState::OtherBytes, "{name}: the true file has other bytes");
        assert!(!beside.nothing_differs() && !beside.data_are_those_files());
        assert_eq!(beside.strangers, [one.files[0].0.clone()]);

        let by_paper = prove(&report, &[], Some(&printed(&true_report)), &english);
        assert_eq!(by_paper.given_digest, Some(false), "{name}: the signed paper has another digest");
        assert!(!by_paper.nothing_differs());
    }
}

#[test]
fn a_digest_may_be_typed_with_spaces_and_capitals() {
    let report = delivery("06-short-readings").report(Length::OnePage);
    let typed = printed(&report).to_uppercase();
    let typed = format!(" {} {}\n", &typed[..20], &typed[20..]);
    assert_eq!(prove(&report, &[], Some(&typed), &english).given_digest, Some(true));
}

const LATER: Program = Program { name: PROGRAM.name, version: "999.0.0" };

#[test]
fn another_version_proves_by_the_findings() {
    for one in all() {
        let report = one.report(Length::Full);
        let proof =
            Prover::new(&english).as_program(LATER).prove(&report, &one.files, Some(&printed(&report)));
        assert_eq!(proof.verdict, Verdict::FindingsAgree, "{}\n{}", one.name, told(&proof));
        assert_eq!(proof.only_findings, Some(OnlyFindings::OtherVersion));
        assert!(proof.nothing_differs() && proof.data_are_those_files(), "{}", one.name);
        assert!(!proof.holds(), "{}: what is read in it was not compared", one.name);
    }
}

#[test]
fn a_report_in_a_language_that_is_not_here_proves_by_the_findings() {
    let report = delivery("03-brass-valve").report(Length::Full);
    let proof = prove(&report, &[], None, &|_: &str| None);
    assert_eq!(proof.verdict, Verdict::FindingsAgree);
    assert_eq!(proof.only_findings, Some(OnlyFindings::LanguageNotHere));
}

#[test]
fn another_version_misses_a_digest_that_is_not_printed() {
    let report = String::from_utf8(delivery("03-brass-valve").report(Length::Full)).expect("UTF-8");
    let digest = printed(report.as_bytes());
    let (text, evidence) = report.split_once("<script").expect("evidence");
    let altered = format!("{}<script{evidence}", text.replace(&digest, &"0".repeat(64)));
    let proof = Prover::new(&english).as_program(LATER).prove(altered.as_bytes(), &[], None);
    assert_eq!(proof.verdict, Verdict::Differs);
    let kinds: Vec<PlaceKind> = proof.places.list.iter().map(|place| place.kind).collect();
    assert_eq!(kinds, [PlaceKind::TextChanged, PlaceKind::DigestNotPrinted]);
}

#[test]
fn another_version_sees_that_a_text_was_changed() {
    let report = String::from_utf8(delivery("03-brass-valve").report(Length::Full)).expect("UTF-8");
    let mut prover = Prover::new(&english).as_program(LATER);
    for (was, is) in [
        ("Cedar", "Cedam"),
        ("</main>", "</main><p>x</p>"),
        ("</body>", "<p>x</p></body>"),
        ("class=\"d d-", "class=\"d e-"),
    ] {
        assert!(report.contains(was), "{was}");
        let proof = prover.prove(report.replacen(was, is, 1).as_bytes(), &[], None);
        assert_eq!(proof.verdict, Verdict::Differs, "{was}");
        assert_eq!(proof.places.list[0].kind, PlaceKind::TextChanged, "{was}");
    }
    let with_returns = report.replace('\n', "\r\n");
    assert_eq!(prover.prove(with_returns.as_bytes(), &[], None).verdict, Verdict::FindingsAgree);
}

#[test]
fn what_is_no_report_is_said_to_be_none() {
    for bytes in [b"".as_slice(), b"Sample,Pb\nS,5\n", b"<!DOCTYPE html><p>x", &[0xff; 100], b"PK\x03\x04"] {
        let proof = alone(bytes);
        assert_eq!(proof.verdict, Verdict::NotAReport);
        assert!(!proof.nothing_differs() && !proof.could_be_proved());
    }
    let report = String::from_utf8(delivery("03-brass-valve").report(Length::Full)).expect("UTF-8");
    let (text, _) = report.split_once("<script").expect("evidence");
    let proof = alone(text.as_bytes());
    assert_eq!(proof.verdict, Verdict::EvidenceMissing);
    assert!(!proof.nothing_differs() && !proof.could_be_proved());
}

/// The reports of versions past: `tests/frozen/README.md`.
#[test]
fn reports_of_earlier_versions_keep_proving() {
    let folder = in_tests("frozen");
    let mut looked_at = 0;
    for entry in fs::read_dir(&folder).expect("the frozen reports") {
        let path = entry.expect("an entry").path();
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        let Some(rest) = name.strip_prefix("report-").and_then(|rest| rest.strip_suffix(".html")) else {
            continue;
        };
        let (version, delivered) = rest.split_once('-').expect("report-VERSION-DELIVERY.html");
        let report = fs::read(&path).expect("a frozen report");
        let files = delivery(delivered).files;
        let digest = printed(&report);
        let proof = prove(&report, &files, Some(&digest), &english);
        let wanted = if version == PROGRAM.version { Verdict::Agrees } else { Verdict::FindingsAgree };
        assert_eq!(proof.verdict, wanted, "{name}\n{}", told(&proof));
        assert!(proof.nothing_differs() && proof.data_are_those_files(), "{name}");
        assert_eq!(proof.holds(), version == PROGRAM.version, "{name}");
        // And as a later version will see it.
        let later = Prover::new(&english).as_program(LATER).prove(&report, &files, Some(&digest));
        assert_eq!(later.verdict, Verdict::FindingsAgree, "{name}\n{}", told(&later));
        looked_at += 1;
    }
    assert!(looked_at > 0, "no report is frozen; see tests/frozen/README.md");
}

/// Writes the report of this version: run once a version, before it goes out (`tests/frozen/README.md`).
#[test]
fn the_report_of_this_version_is_frozen_when_asked_for() {
    if std::env::var_os("FREEZE_REPORT").is_none() {
        return;
    }
    let name = "15-changed-compound";
    let path = in_tests("frozen").join(format!("report-{}-{name}.html", PROGRAM.version));
    fs::write(&path, delivery(name).report(Length::Full)).expect("the frozen report can be written");
}

#[test]
fn another_version_tells_what_the_data_give_and_that_the_text_was_not_checked() {
    let one = delivery("02-red-cable");
    let report = one.report(Length::Full);
    let proof = Prover::new(&english).as_program(LATER).prove(&report, &one.files, Some(&printed(&report)));
    assert!(!proof.text_was_proved());
    let lots: Vec<(&str, Disposition)> =
        proof.lots.iter().map(|lot| (lot.lot.as_deref().unwrap_or("-"), lot.disposition)).collect();
    assert_eq!(lots, [("BI-2118", Disposition::NotAccept), ("BI-2119", Disposition::Accept)]);
    let says = with_words(|words| said::shows(words, &proof));
    let (findings, same) =
        with_words(|words| (words.say("proof-shows-digest_findings"), words.say("proof-shows-digest_same")));
    assert!(says.contains(&findings) && !says.contains(&same), "{says:?}");
    assert!(says.iter().any(|line| line.contains("BI-2118") && line.contains("not accept")), "{says:?}");
    assert!(alone(&report).text_was_proved() && alone(&report).lots.is_empty());
}

/// The delivery of cables in which the table of the red one is said to hold nothing.
fn with_a_table_hidden(one: &Delivery) -> Inspection {
    let mut inspection = one.inspection();
    inspection.clear_files();
    let settings = inspection.settings();
    for (name, bytes) in &one.files {
        let (mut file, mut sources) = read_opened(name, true, &settings, [bytes.as_slice()]);
        if name.contains("red") {
            let stub = Stub {
                name: name.clone(),
                sha256: file.sha256.clone(),
                bytes: file.bytes,
                packed: false,
                code: NoticeCode::Skipped,
                found: String::new(),
            };
            file.kept = Kept::Stubs(vec![stub.clone()]);
            sources = of_stubs(&file, &[stub]);
        }
        inspection.add_file(file, sources);
    }
    inspection
}

#[test]
fn a_file_said_to_hold_nothing_is_read_where_it_is_given() {
    let one = delivery("02-red-cable");
    let report = report_of(&with_a_table_hidden(&one), Length::Full);
    assert_eq!(alone(&report).verdict, Verdict::Agrees, "by itself nobody can tell");
    let mut prover = Prover::new(&english);
    for _ in 0..2 {
        assert_eq!(prover.prove(&report, &[], None).verdict, Verdict::Agrees);
        let beside = prover.prove(&report, &one.files, None);
        assert_eq!(beside.verdict, Verdict::Differs, "{}", told(&beside));
        assert!(!beside.nothing_differs() && !beside.places.is_empty());
    }
    let later = Prover::new(&english).as_program(LATER).prove(&report, &one.files, None);
    assert_eq!(later.verdict, Verdict::Differs, "{}", told(&later));

    let mut other = one.files.clone();
    other[1].1.push(b' ');
    let other = prove(&report, &other, None, &english);
    assert_eq!(other.files[1].state, FileState::OtherBytes);
    assert!(!other.nothing_differs() && !other.data_are_those_files());
}

#[test]
fn a_space_at_the_end_of_a_file_makes_it_another_and_a_new_name_does_not() {
    let one = delivery("01-clean-housing");
    let report = one.report(Length::OnePage);
    let mut files = one.files.clone();
    files[0].1.push(b' ');
    let proof = prove(&report, &files, None, &english);
    assert_eq!((proof.verdict, proof.files[0].state), (Verdict::Agrees, FileState::OtherBytes));
    assert!(!proof.nothing_differs());
    let renamed = [("another.csv".to_owned(), one.files[0].1.clone())];
    assert!(prove(&report, &renamed, None, &english).data_are_those_files());
}

#[test]
fn of_two_files_of_one_name_in_two_folders_the_one_not_given_is_said_to_be_missing() {
    let mut one = delivery("02-red-cable");
    one.files[0].0 = "a/cable.csv".to_owned();
    one.files[1].0 = "b/cable.csv".to_owned();
    let report = one.report(Length::Full);
    let proof = prove(&report, &one.files[..1], None, &english);
    let states: Vec<FileState> = proof.files.iter().map(|file| file.state).collect();
    assert_eq!(states, [FileState::Matched, FileState::NotGiven]);
    assert!(proof.holds() && !proof.data_are_those_files());
}

#[test]
fn a_rule_book_with_the_name_of_a_standard_and_limits_of_its_own_is_named() {
    let one = delivery("02-red-cable");
    let own = SCREENING_2013;
    let lax = own
        .replace("low = \"70 mg/kg\"", "low = \"900 mg/kg\"")
        .replace("high = \"130 mg/kg\"", "high = \"1300 mg/kg\"");
    let mut inspection = one.inspection();
    inspection.books.add(RuleBook::parse(&lax).expect("a book"));
    let (book, books) = with_words(|words| {
        let named = [("books", "iec-62321-3-1-2013")];
        (words.say("report-foreign_book"), words.with("report-foreign_books", &named))
    });
    for length in Length::ALL {
        let report = report_of(&inspection, *length);
        let proof = prove(&report, &one.files, None, &english);
        assert_eq!(proof.foreign_books, ["iec-62321-3-1-2013"]);
        let says = with_words(|words| said::shows(words, &proof)).join("\n");
        assert!(says.contains("Not every rule book"), "{says}");
        let text = String::from_utf8(report).expect("UTF-8");
        let (at_the_book, above) = (text.contains(&book), text.contains(&books));
        assert_eq!(at_the_book, *length != Length::OnePage, "{}", length.code());
        assert_eq!(above, *length != Length::Annex, "{}", length.code());
    }
    assert_eq!(alone(&one.report(Length::Full)).foreign_books, [""; 0]);
}

#[test]
fn a_difference_that_no_eye_sees_is_shown_with_its_number() {
    let report = String::from_utf8(delivery("02-red-cable").report(Length::Full)).expect("UTF-8");
    for (from, to, number) in [
        ("Birch", "B\u{456}rch", "\u{456}⟨U+0456⟩"),
        ("not accept", "not\u{200b} accept", "not⟨U+200B⟩ accept"),
        ("not accept", "not \u{202e}accept", "not ⟨U+202E⟩accept"),
    ] {
        let told = told(&alone(report.replacen(from, to, 1).as_bytes()));
        assert!(told.contains(number), "{told}");
    }
}
