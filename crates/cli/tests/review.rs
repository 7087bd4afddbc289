//! The command line as a process: exit statuses, the files it writes, and the golden cases through its door.

use std::ffi::OsStr;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::{Command, Output};

use plumbline_core::duplicates::set_duplicates_aside;
use plumbline_core::history::History;
use plumbline_core::inspection::{Inspection, review};
use plumbline_core::report::{Length, csv, history, html, json};
use plumbline_core::rules::RuleBook;
use plumbline_core::settings_file::parse_settings;
use plumbline_core::words::Words;
use plumbline_intake::SourceReader;

// Cases are loaded by the same lines as in the native test.
#[allow(dead_code, unreachable_pub)]
#[path = "../../../tests/src/golden/load.rs"]
mod load;

const CLEAN: &str = "Sample,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\n\
    S1,metal,1,0.5,5,1,1,0.5,5,1\n";
const OVER: &str = "Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,1360,20\n";
const ADVISORY: &str = "schema = \"plumbline.settings/1\"\ntrust = \"advisory\"\nsampling = \"advisory\"\n\
    materials = \"advisory\"\n";

/// An empty folder of a test's own.
fn folder(test: &str) -> PathBuf {
    let path = PathBuf::from(env!("CARGO_TARGET_TMPDIR")).join(test);
    if path.exists() {
        fs::remove_dir_all(&path).expect("an old run can be removed");
    }
    fs::create_dir_all(&path).expect("a folder can be made");
    path
}

fn write(folder: &Path, name: &str, text: &str) -> PathBuf {
    let path = folder.join(name);
    fs::create_dir_all(path.parent().expect("a folder")).expect("a folder can be made");
    fs::write(&path, text).expect("a file can be written");
    path
}

fn plumbline<A: AsRef<OsStr>>(arguments: impl IntoIterator<Item = A>) -> Output {
    Command::new(env!("CARGO_BIN_EXE_plumbline")).args(arguments).output().expect("the program runs")
}

fn status(output: &Output) -> i32 {
    output.status.code().expect("no signal")
}

/// Reviews paths into `out`, with further arguments first.
fn reviewed(out: &Path, more: &[&OsStr], paths: &[&Path]) -> Output {
    let mut arguments = vec![OsStr::new("review"), OsStr::new("--out"), out.as_os_str()];
    arguments.extend(more);
    arguments.extend(paths.iter().map(|path| path.as_os_str()));
    plumbline(arguments)
}

fn text(bytes: &[u8]) -> String {
    String::from_utf8_lossy(bytes).into_owned()
}

fn four_files(out: &Path) -> [Vec<u8>; 4] {
    ["findings.json", "findings.csv", "report.html", "history.txt"]
        .map(|name| fs::read(out.join(name)).unwrap_or_else(|error| panic!("{name}: {error}")))
}

fn nothing_written(out: &Path) {
    assert!(!out.exists(), "{} was made", out.display());
}

#[test]
fn every_lot_accepted_is_exit_0() {
    let folder = folder("exit_0");
    let (table, settings) = (write(&folder, "clean.csv", CLEAN), write(&folder, "settings.toml", ADVISORY));
    let output = reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&table]);
    assert_eq!(status(&output), 0, "{}", text(&output.stdout));
    four_files(&folder.join("out"));
}

#[test]
fn the_lengths_of_the_report_that_are_asked_for_are_written_and_no_others() {
    let folder = folder("lengths");
    let table = write(&folder, "clean.csv", CLEAN);
    let files = ["report-one-page.html", "report.html", "report-annex.html"];
    let written = |name: &str, more: &[&str]| {
        let out = folder.join(name);
        let more: Vec<&OsStr> = more.iter().map(OsStr::new).collect();
        assert_eq!(status(&reviewed(&out, &more, &[&table])), 1);
        files.map(|file| out.join(file).exists())
    };
    assert_eq!(written("usual", &[]), [false, true, false]);
    assert_eq!(written("page", &["--length", "one_page"]), [true, false, false]);
    assert_eq!(written("two", &["--length", "annex", "--length", "full"]), [false, true, true]);
    assert_eq!(written("all", &["--length", "all"]), [true, true, true]);
    let number = |file: &str| {
        let report = text(&fs::read(folder.join("all").join(file)).expect("it was written"));
        report.split_once("<b>PL-").and_then(|(_, rest)| Some(rest.split_once("</b>")?.0.to_owned()))
    };
    assert!(number(files[0]).is_some_and(|number| number.len() == 10));
    assert_eq!((number(files[0]), number(files[1])), (number(files[1]), number(files[2])));
    let out = folder.join("odd");
    let odd = reviewed(&out, &[OsStr::new("--length"), OsStr::new("short")], &[&table]);
    assert_eq!(status(&odd), 64);
    assert!(text(&odd.stderr).contains("one_page, full, annex and all"));
    nothing_written(&out);
}

#[test]
fn a_lot_held_or_not_accepted_is_exit_1() {
    let folder = folder("exit_1");
    let (clean, over) = (write(&folder, "clean.csv", CLEAN), write(&folder, "over.csv", OVER));
    let held = reviewed(&folder.join("held"), &[], &[&clean]);
    assert_eq!(status(&held), 1, "no check readings, no plan: {}", text(&held.stdout));
    let over = reviewed(&folder.join("over"), &[], &[&over]);
    assert_eq!(status(&over), 1);
    four_files(&folder.join("over"));
}

#[test]
fn of_several_settings_files_the_later_count_above_the_earlier() {
    let folder = folder("two_settings");
    let table = write(&folder, "clean.csv", CLEAN);
    let first = write(&folder, "first.toml", ADVISORY);
    let second = write(&folder, "second.toml", "schema = \"plumbline.settings/1\"\ntrust = \"holding\"\n");
    let with = |one: &Path, two: &Path| {
        let given = [OsStr::new("--settings"), one.as_os_str(), OsStr::new("--settings"), two.as_os_str()];
        status(&reviewed(&folder.join("out"), &given, &[&table]))
    };
    assert_eq!((with(&first, &second), with(&second, &first)), (1, 0));
}

#[test]
fn a_file_that_is_not_there_is_listed_and_the_rest_is_written() {
    let folder = folder("unreadable");
    let settings = write(&folder, "settings.toml", ADVISORY);
    let (clean, missing) = (write(&folder, "clean.csv", CLEAN), folder.join("missing.csv"));
    let out = folder.join("out");
    let output = reviewed(&out, &[OsStr::new("--settings"), settings.as_os_str()], &[&missing, &clean]);
    assert_eq!(status(&output), 2, "{}", text(&output.stdout));
    let findings = text(&four_files(&out)[0]);
    assert!(findings.contains("\"problem\":\"unreadable\"") && findings.contains("missing.csv"));
    assert!(findings.contains("\"disposition\":\"accept\""), "the other file is reviewed");
    assert!(text(&output.stdout).contains("missing.csv"));
}

#[test]
fn a_file_that_is_no_table_is_exit_2_where_it_is_named_and_skipped_in_a_folder() {
    let folder = folder("no_table");
    let settings = write(&folder, "settings.toml", ADVISORY);
    let clean = write(&folder, "delivery/clean.csv", CLEAN);
    let letter = write(&folder, "delivery/letters/letter.md", "Dear sir or madam,\n");
    let given = [OsStr::new("--settings"), settings.as_os_str()];
    let named = reviewed(&folder.join("named"), &given, &[&clean, &letter]);
    assert_eq!(status(&named), 2);
    let walked = reviewed(&folder.join("walked"), &given, &[&folder.join("delivery")]);
    assert_eq!(status(&walked), 0, "{}", text(&walked.stdout));
    let findings = text(&four_files(&folder.join("walked"))[0]);
    assert!(
        findings.contains("\"name\":\"letters/letter.md\"") && findings.contains("\"problem\":\"skipped\"")
    );
}

/// A history travels on the same stick: chosen with the folder it is no table, and holds nothing.
#[test]
fn a_history_in_a_folder_is_skipped() {
    let folder = folder("history_in_folder");
    let stick = folder.join("stick");
    fs::create_dir_all(&stick).expect("a folder");
    write(&stick, "clean.csv", CLEAN);
    write(&stick, "history.txt", "plumbline.history/1\n");
    let settings = write(&folder, "settings.toml", ADVISORY);
    let given = [OsStr::new("--settings"), settings.as_os_str()];
    let output = reviewed(&folder.join("out"), &given, &[&stick]);
    assert_eq!(status(&output), 0, "{}", text(&output.stdout));
    assert!(text(&output.stdout).contains("history.txt: Not a table of results; skipped."));
}

#[test]
fn no_readings_at_all_is_exit_2() {
    let folder = folder("no_readings");
    fs::create_dir_all(folder.join("empty")).expect("a folder can be made");
    let output = reviewed(&folder.join("out"), &[], &[&folder.join("empty")]);
    assert_eq!(status(&output), 2);
    four_files(&folder.join("out"));
}

/// Check readings are no product: nothing was screened, so nothing can be accepted.
#[test]
fn check_readings_alone_are_no_accept() {
    let folder = folder("checks_only");
    let table = write(&folder, "clean.csv", CLEAN);
    let settings = write(&folder, "settings.toml", &format!("{ADVISORY}check_samples = [\"S1\"]\n"));
    let output = reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&table]);
    assert_eq!(status(&output), 2, "{}", text(&output.stdout));
}

#[test]
fn wrong_usage_is_exit_64_with_a_hint_and_writes_nothing() {
    let folder = folder("usage");
    let table = write(&folder, "clean.csv", CLEAN);
    let out = folder.join("out");
    let (table, out_text) = (table.to_string_lossy().into_owned(), out.to_string_lossy().into_owned());
    for arguments in [
        vec!["review", "--out", &out_text],
        vec!["review", &table],
        vec!["review", "--out"],
        vec!["review", "--out", &out_text, "--odd", &table],
        vec!["review", "--out", &out_text, &table, "--settings"],
        vec!["review", "--out", &out_text, &table, "--mapping"],
        vec!["polish", &table],
        vec!["--odd"],
    ] {
        let output = plumbline(&arguments);
        assert_eq!(status(&output), 64, "{arguments:?}");
        assert!(text(&output.stderr).contains("plumbline help"), "{arguments:?}: {}", text(&output.stderr));
        assert!(output.stdout.is_empty(), "{arguments:?}");
        nothing_written(&out);
    }
}

#[test]
fn a_bad_settings_mapping_rule_or_history_file_is_exit_64_with_its_place_and_writes_nothing() {
    let folder = folder("bad_files");
    let table = write(&folder, "clean.csv", CLEAN);
    let settings = write(&folder, "bad.toml", "schema = \"plumbline.settings/1\"\ntrust = \"maybe\"\n");
    let rules = write(&folder, "rules.toml", "schema = \"plumbline.rules/1\"\nid = 5\n");
    let head = "schema = \"plumbline.mapping/1\"\n[[header]]\nfingerprint = \"0\"\n";
    let mapping =
        write(&folder, "mapping.toml", &format!("{head}[header.columns]\n3 = \"value Pb furlongs\"\n"));
    let history = write(&folder, "history.txt", "plumbline.history/1\n\ncheck\n");
    let missing = folder.join("missing.toml");
    let out = folder.join("out");
    for (option, file, place) in [
        ("--settings", &settings, "line 2, column 9"),
        ("--rules", &rules, "line 2, column 6"),
        ("--mapping", &mapping, "line 5, column 5"),
        ("--mapping", &settings, "line 1"),
        ("--mapping", &missing, "missing.toml"),
        ("--settings", &missing, "missing.toml"),
        ("--rules", &missing, "missing.toml"),
        ("--settings", &table, "line 1"),
        ("--history", &table, "line 1, column 1"),
        ("--history", &history, "line 3, column 2"),
        ("--history", &missing, "missing.toml"),
    ] {
        let output = reviewed(&out, &[OsStr::new(option), file.as_os_str()], &[&table]);
        assert_eq!(status(&output), 64, "{option} {}", file.display());
        assert!(text(&output.stderr).contains(place), "{}", text(&output.stderr));
        nothing_written(&out);
    }
}

/// A mapping that the page saved speaks of headings, so it takes the fingerprint that findings give.
#[test]
fn a_mapping_file_gives_columns_their_meaning_wherever_their_headings_stand() {
    let folder = folder("mapping");
    let table = write(&folder, "odd.csv", "Kxyz,Qxyz,Pb mg/kg,Pb u (1s)\nS-1,700,12,1\n");
    let plain = reviewed(&folder.join("plain"), &[], &[&table]);
    assert_eq!(status(&plain), 1, "{}", text(&plain.stdout));
    let mut reader = SourceReader::new("odd.csv", &Inspection::new().expect("books").settings());
    reader.push(&fs::read(&table).expect("the table"));
    let fingerprint = reader.finish()[0].blocks[0].fingerprint.clone();
    let mapping = |name: &str, columns: &str| {
        let header = format!("fingerprint = \"{fingerprint}\"\n[header.columns]\n{columns}");
        write(&folder, name, &format!("schema = \"plumbline.mapping/1\"\n[[header]]\n{header}"))
    };
    let first = mapping("one.toml", "1 = \"id\"\n2 = \"value Br mg/kg\"\n");
    let second = mapping("two.toml", "2 = \"value Cd mg/kg\"\n");
    let option = OsStr::new("--mapping");
    let one = reviewed(&folder.join("one"), &[option, first.as_os_str()], &[&table]);
    assert_eq!(status(&one), 1, "{}", text(&one.stdout));
    let findings = text(&four_files(&folder.join("one"))[0]);
    assert!(findings.contains("\"id\":\"S-1\""), "{findings}");
    assert!(findings.contains("\"Br\":{\"state\":\"number\",\"value_mg_kg\":700"), "{findings}");
    // The later file's word counts where two speak of the same column.
    let both = [option, first.as_os_str(), option, second.as_os_str()];
    reviewed(&folder.join("both"), &both, &[&table]);
    let findings = text(&four_files(&folder.join("both"))[0]);
    assert!(findings.contains("\"id\":\"S-1\"") && findings.contains("\"Cd\":{\"state\":\"number\""));
}

#[test]
fn an_output_that_cannot_be_written_is_exit_74() {
    let folder = folder("output");
    let table = write(&folder, "clean.csv", CLEAN);
    let in_the_way = write(&folder, "in-the-way", "a file");
    for out in [in_the_way.clone(), in_the_way.join("below")] {
        let output = reviewed(&out, &[], &[&table]);
        assert_eq!(status(&output), 74, "{}", out.display());
        assert!(text(&output.stderr).contains("in-the-way"), "{}", text(&output.stderr));
    }
    fs::create_dir_all(folder.join("out/findings.csv")).expect("a folder can be made");
    assert_eq!(status(&reviewed(&folder.join("out"), &[], &[&table])), 74);
}

#[test]
fn help_and_version_are_exit_0_on_the_standard_output() {
    for arguments in [&["help"][..], &["--help"], &["-h"], &[], &["review", "--help"]] {
        let output = plumbline(arguments);
        assert_eq!(status(&output), 0, "{arguments:?}");
        for word in [
            "--out DIR",
            "--settings FILE",
            "--mapping FILE",
            "--rules FILE",
            "--history FILE",
            "64",
            "74",
            "not a declaration of conformity",
        ] {
            assert!(text(&output.stdout).contains(word), "{arguments:?}: {word}");
        }
    }
    let version = plumbline(["version"]);
    assert_eq!(status(&version), 0);
    assert_eq!(text(&version.stdout).trim(), concat!("plumbline ", env!("CARGO_PKG_VERSION")));
}

#[test]
fn what_is_said_ends_with_what_it_is_not() {
    let folder = folder("said");
    let table = write(&folder, "over.csv", OVER);
    let said = text(&reviewed(&folder.join("out"), &[], &[&table]).stdout);
    for words in ["rows in 1 = used 1", "not accept", "not a declaration of conformity", "report.html"] {
        assert!(said.contains(words), "{words} in\n{said}");
    }
}

#[test]
fn the_same_files_in_any_order_give_the_same_bytes_and_no_date() {
    let folder = folder("order");
    let (a, b) = (write(&folder, "a.csv", CLEAN), write(&folder, "b.csv", OVER));
    reviewed(&folder.join("one"), &[], &[&a, &b]);
    reviewed(&folder.join("two"), &[], &[&b, &a]);
    assert_eq!(four_files(&folder.join("one")), four_files(&folder.join("two")));
}

/// What the core says of a case without the command line around it.
fn in_process(case: &load::Case) -> Option<[Vec<u8>; 4]> {
    let mut inspection = Inspection::new().expect("the built-in books are whole");
    if let Some(text) = &case.rules {
        inspection.books.add(RuleBook::parse(text).ok()?);
    }
    if let Some(text) = &case.settings {
        inspection.acts = parse_settings(text, "settings.toml").ok()?;
    }
    if let Some(text) = &case.history {
        inspection.history = History::parse(text).ok()?;
    }
    let settings = inspection.settings();
    for (name, bytes) in &case.files {
        let mut reader = SourceReader::new(name, &settings).keeping(inspection.opened.room());
        reader.push(bytes);
        let (file, sources) = reader.finish_opened(true);
        inspection.add_file(file, sources);
    }
    set_duplicates_aside(&mut inspection.sources);
    let findings = review(&inspection);
    let words = Words::english();
    let mut files = [const { Vec::new() }; 4];
    json::write(&inspection, &findings, &words, &mut files[0]).expect("a Vec takes all bytes");
    csv::write(&inspection, &findings, &mut files[1]).expect("a Vec takes all bytes");
    html::write(&inspection, &findings, &words, Length::Full, &mut files[2]).expect("a Vec takes all bytes");
    history::write(&inspection, &findings, &mut files[3]).expect("a Vec takes all bytes");
    Some(files)
}

/// `"exit": 1` of an expected file.
fn expected_exit(case: &load::Case) -> i32 {
    let text = fs::read_to_string(case.folder.join("expected.json")).expect("an expected.json");
    let (_, rest) = text.split_once("\"exit\":").expect("an exit status");
    let digits: String = rest.trim_start().chars().take_while(char::is_ascii_digit).collect();
    digits.parse().expect("a number")
}

#[test]
fn every_golden_case_has_its_exit_status_and_the_bytes_of_the_core() {
    let top = Path::new(env!("CARGO_MANIFEST_DIR")).join("../../tests/golden");
    let out = folder("golden");
    let mut wrong = Vec::new();
    for case in load::cases(&top) {
        let [settings, rules, history] =
            ["settings.toml", "rules.toml", "history.txt"].map(|name| case.folder.join(name));
        let mut given = Vec::new();
        for (option, path, there) in [
            ("--settings", &settings, case.settings.is_some()),
            ("--rules", &rules, case.rules.is_some()),
            ("--history", &history, case.history.is_some()),
        ] {
            if there {
                given.extend([OsStr::new(option), path.as_os_str()]);
            }
        }
        let here = out.join(&case.name);
        let output = reviewed(&here, &given, &[&case.folder.join("input")]);
        let (got, expected) = (status(&output), expected_exit(&case));
        if got != expected {
            wrong.push(format!("{}: exit {got}, expected {expected}", case.name));
        }
        match in_process(&case) {
            None => nothing_written(&here),
            Some(files) => {
                let same = four_files(&here) == files;
                if !same {
                    wrong.push(format!("{}: other bytes than the core's", case.name));
                }
            }
        }
    }
    assert!(wrong.is_empty(), "\n{}", wrong.join("\n"));
}

#[test]
fn the_rule_books_that_come_along_are_listed() {
    let output = plumbline(["rules"]);
    assert_eq!(status(&output), 0);
    let said = text(&output.stdout);
    for id in [
        "iec-62321-3-1-2013",
        "iec-61249-2-21-2003",
        "eu-rohs-annex-ii",
        "eu-packaging-2025-40",
        "gb-26572-2025",
    ] {
        assert!(said.lines().any(|line| line == id), "{id}\n{said}");
    }
    let digest = plumbline_core::rules::library()[0].sha256.as_str();
    assert!(said.contains(digest));
    assert!(said.contains("placed on the market until 2026-08-11"));
    assert!(!said.contains("placed on the market from 2013"));
    assert!(said.contains("From memory"));
}

#[test]
fn a_rule_book_is_explained_by_its_id_or_its_file() {
    let output = plumbline(["rules", "iec-62321-3-1-2013"]);
    assert_eq!(status(&output), 0);
    let said = text(&output.stdout);
    assert!(said.contains("lead, polymer: below limit when value + 3 s is at or under 700 mg/kg"), "{said}");
    let folder = folder("rules-explained");
    let house =
        plumbline_core::rules::SCREENING_2013.replace("700 mg/kg", "600 mg/kg").replace("iec-", "house-");
    let path = write(&folder, "house.toml", &house);
    let output = plumbline([OsStr::new("rules"), path.as_os_str()]);
    assert_eq!(status(&output), 0);
    assert!(text(&output.stdout).contains("value + 3 s is at or under 600 mg/kg"));
}

#[test]
fn a_rule_book_that_is_not_there_or_is_bad_is_wrong_usage() {
    let output = plumbline(["rules", "house-9"]);
    assert_eq!(status(&output), 64);
    assert!(text(&output.stderr).contains("house-9"));
    let folder = folder("rules-bad");
    let path = write(&folder, "bad.toml", "schema = \"plumbline.rules/1\"\nid = \"x\"\n");
    let output = plumbline([OsStr::new("rules"), path.as_os_str()]);
    assert_eq!(status(&output), 64);
    assert!(text(&output.stderr).contains("line 2"), "{}", text(&output.stderr));
    assert_eq!(status(&plumbline(["rules", "a", "b"])), 64);
    assert_eq!(status(&plumbline(["rules", "--odd"])), 64);
    assert_eq!(status(&plumbline(["rules", "--help"])), 0);
}

/// Explains with the given arguments, the files last.
fn explained(arguments: &[&str], paths: &[&Path]) -> Output {
    let all = ["explain"].into_iter().chain(arguments.iter().copied()).map(OsStr::new);
    plumbline(all.chain(paths.iter().map(|path| path.as_os_str())))
}

#[test]
fn a_reading_is_explained_with_what_was_found_the_steps_and_the_clause() {
    let folder = folder("explain");
    let over = write(&folder, "over.csv", OVER);
    let output = explained(&["--reading", "S1", "--of", "Pb"], &[&over]);
    assert_eq!(status(&output), 0, "{}", text(&output.stderr));
    let said = text(&output.stdout);
    let lines: Vec<&str> = said.lines().collect();
    assert_eq!(lines[0], "S1 · over.csv · line 2");
    assert_eq!(lines[1], "  lead: over limit");
    for wanted in [
        "Judged as metal (stated in the file).",
        "table of screening limits, Pb, metal (confirmed): Pb is below limit",
        "The file states \"1360\" for Pb, which is 1360 mg/kg.",
        "One sigma is 20 mg/kg",
        "1360 − 3 × 20 = 1300 mg/kg, at or over the high edge 1300 mg/kg.",
        "Next: ",
    ] {
        assert!(said.contains(wanted), "{wanted}\n{said}");
    }
    assert!(lines[2..].iter().all(|line| line.starts_with("    ")), "one block: {said}");
    let by_line = explained(&["--line", "over.csv:2", "--of", "Pb"], &[&over]);
    assert_eq!(text(&by_line.stdout), said, "the same reading by its line");
}

#[test]
fn every_outcome_of_every_reading_that_matches_is_explained() {
    let folder = folder("explain_all");
    let table = write(
        &folder,
        "two.csv",
        "Sample,Class,Pb mg/kg,Pb u (1s)\nS1,metal,1360,20\nS2,metal,5,1\nS1,polymer,1000,20\n",
    );
    let output = explained(&["--reading", "S1"], &[&table]);
    assert_eq!(status(&output), 0);
    let said = text(&output.stdout);
    assert_eq!(said.split("\n\n").count(), 2, "a block for each reading: {said}");
    assert!(said.contains("line 2") && said.contains("line 4") && !said.contains("line 3"), "{said}");
    for name in ["lead", "cadmium", "mercury", "chromium (total)", "bromine (total)", "Cl + Br"] {
        assert_eq!(said.matches(&format!("\n  {name}: ")).count(), 2, "{name}\n{said}");
    }
    assert!(said.contains("The file states nothing for Cd."), "{said}");
}

#[test]
fn an_explanation_goes_by_settings_and_rule_books() {
    let folder = folder("explain_given");
    let table = write(&folder, "plain.csv", "Sample,Pb mg/kg,Pb u (1s)\nS1,900,20\n");
    let without = explained(&["--reading", "S1", "--of", "Pb"], &[&table]);
    assert!(text(&without.stdout).contains("judged under every class"), "{}", text(&without.stdout));
    let settings = write(&folder, "settings.toml", "schema = \"plumbline.settings/1\"\nclass = \"metal\"\n");
    let with = explained(
        &["--settings", settings.to_str().expect("a path"), "--reading", "S1", "--of", "Pb"],
        &[&table],
    );
    assert!(text(&with.stdout).contains("Judged as metal (set by a person)."), "{}", text(&with.stdout));
}

#[test]
fn nothing_to_explain_is_exit_2_and_a_wrong_question_is_exit_64() {
    let folder = folder("explain_nothing");
    let over = write(&folder, "over.csv", OVER);
    let paths: &[&Path] = &[&over];
    for arguments in [&["--reading", "S9"][..], &["--line", "over.csv:3"], &["--line", "other.csv:2"]] {
        let output = explained(arguments, paths);
        assert_eq!(status(&output), 2, "{arguments:?}");
        assert!(text(&output.stdout).is_empty() && text(&output.stderr).contains("No reading matches"));
    }
    let missing = folder.join("missing.csv");
    let output = explained(&["--reading", "S1"], &[&over, &missing]);
    assert_eq!(status(&output), 2, "what could be read is explained, what could not is said");
    assert!(text(&output.stdout).contains("over limit") && text(&output.stderr).contains("missing.csv"));
    for arguments in [
        &[][..],
        &["--reading", "S1", "--line", "over.csv:2"],
        &["--line", "over.csv"],
        &["--line", "over.csv:two"],
        &["--reading", "S1", "--of", "lead"],
        &["--reading", "S1", "--out", "x"],
        &["--reading"],
    ] {
        let output = explained(arguments, paths);
        assert_eq!(status(&output), 64, "{arguments:?}: {}", text(&output.stdout));
    }
    assert_eq!(status(&explained(&["--reading", "S1"], &[])), 64, "no file is named");
    let bad = write(&folder, "bad.toml", "schema = \"plumbline.settings/1\"\nclass = 7\n");
    let output = explained(&["--settings", bad.to_str().expect("a path"), "--reading", "S1"], paths);
    assert_eq!(status(&output), 64);
}

const CHECKED: &str = "schema = \"plumbline.settings/1\"\ncheck_samples = [\"CHK-1\"]\nclass = \"polymer\"\n";

/// Two laptops review sticks of their own from one history; the merged history has all of both, in whatever order it is given.
#[test]
fn what_one_review_writes_as_history_the_next_one_reads_and_merges() {
    let folder = folder("history");
    let settings = write(&folder, "settings.toml", CHECKED);
    let stick = |day: u32| {
        let head = "Sample,Time,Instrument,Pb mg/kg,Pb u (1s)\n";
        let line = |at: u32| format!("CHK-1,2026-11-{day:02}T0{at}:00:00,XRF-1,{},4\n", 100 + day + at);
        let lines = [1, 2, 3, 4].map(line).concat();
        write(&folder, &format!("stick-{day}.csv"), &format!("{head}{lines}P-1,,XRF-1,5,1\n"))
    };
    let review_with = |name: &str, histories: &[&Path], table: &Path| {
        let mut given = vec![OsStr::new("--settings"), settings.as_os_str()];
        for history in histories {
            given.extend([OsStr::new("--history"), history.as_os_str()]);
        }
        let out = folder.join(name);
        let output = reviewed(&out, &given, &[table]);
        assert_eq!(status(&output), 1, "{}", text(&output.stderr));
        assert!(text(&output.stdout).contains("history.txt"));
        out.join("history.txt")
    };
    let records = |path: &Path| {
        History::parse(&fs::read_to_string(path).expect("a history")).expect("a history").checks
    };
    let first = review_with("first", &[], &stick(1));
    assert_eq!(records(&first).len(), 4);
    let (left, right) =
        (review_with("left", &[&first], &stick(2)), review_with("right", &[&first], &stick(3)));
    assert_eq!((records(&left).len(), records(&right).len()), (8, 8));
    let both = review_with("both", &[&left, &right], &stick(4));
    let other_way = review_with("other_way", &[&right, &left, &first], &stick(4));
    assert_eq!(records(&both).len(), 16);
    assert!(records(&left).is_subset(&records(&both)) && records(&right).is_subset(&records(&both)));
    assert_eq!(four_files(&folder.join("both")), four_files(&folder.join("other_way")));
    assert_eq!(fs::read(&both).expect("a file"), fs::read(&other_way).expect("a file"));
    let again = review_with("again", &[&both], &stick(4));
    assert_eq!(records(&again), records(&both), "the same stick a second time adds nothing");
    let findings = text(&four_files(&folder.join("both"))[0]);
    assert!(findings.contains("\"history\":{\"checks\":12,\"lots\":0,"), "{findings}");
    assert_eq!(findings.matches("\"from\":\"history\"").count(), 12);
    assert_eq!(findings.matches("\"from\":\"now\"").count(), 4);
}

#[test]
fn a_bill_of_materials_is_a_table_of_its_own() {
    let folder = folder("bill");
    let lot = "Part,Material,Lot,Class,Cd mg/kg,Cd u (1s),Pb mg/kg,Pb u (1s),Hg mg/kg,Hg u (1s),Cr mg/kg,Cr u (1s)\n\
               P-1,Pin,A-1,metal,1,0.5,5,1,1,0.5,5,1\n";
    let lot = write(&folder, "lot.csv", lot);
    let advisory = ADVISORY.replace("materials = \"advisory\"\n", "");
    let settings = write(&folder, "settings.toml", &advisory);
    let review = |bill: &str, settings: &Path| {
        let bill = write(&folder, "bill.csv", bill);
        let more: Vec<&OsStr> =
            vec![OsStr::new("--settings"), settings.as_os_str(), OsStr::new("--bill"), bill.as_os_str()];
        reviewed(&folder.join("out"), &more, &[&lot])
    };
    let whole = review("Part;Material;Qty\nP-1;pin;2\nP-1;pin;2\n", &settings);
    assert_eq!(status(&whole), 0, "{}", text(&whole.stdout));
    let said = text(&whole.stdout);
    assert!(
        said.contains("bill.csv line 1, column 3") && said.contains("bill.csv line 3, column 2"),
        "{said}"
    );
    let missing = review("Part,Material\nP-1,pin\nP-1,seal\n", &settings);
    assert_eq!(status(&missing), 1);
    assert!(text(&missing.stdout).contains("\"seal\""), "{}", text(&missing.stdout));
    let gap = review("Part,Material\nP-1,\n", &settings);
    assert_eq!(status(&gap), 64);
    assert!(
        text(&gap.stderr).contains("2:2") || text(&gap.stderr).contains("line 2"),
        "{}",
        text(&gap.stderr)
    );
    let said_twice =
        write(&folder, "twice.toml", &format!("{advisory}[[part]]\npart = \"P-1\"\nmaterials = [\"pin\"]\n"));
    let twice = review("Part,Material\nP-1,pin\n", &said_twice);
    assert_eq!(status(&twice), 64, "{}", text(&twice.stdout));
}

#[test]
fn an_act_for_what_is_not_there_is_said() {
    let folder = folder("unmatched");
    let lot = write(&folder, "lot.csv", CLEAN);
    let settings = format!("{ADVISORY}[[set_aside]]\nsource = \"lot.csv\"\nline = 99\nwhy = \"slipped\"\n");
    let settings = write(&folder, "settings.toml", &settings);
    let done = reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&lot]);
    assert_eq!(status(&done), 0);
    assert!(
        text(&done.stdout)
            .contains("set aside: slipped: for reading on line 99 of lot.csv, which is not here"),
        "{}",
        text(&done.stdout)
    );
}

#[test]
fn a_check_reading_is_not_set_aside_and_that_is_said() {
    let folder = folder("check-aside");
    let table = format!("{CLEAN}CHK,metal,70,3,5,1,1,0.5,5,1\n");
    let lot = write(&folder, "lot.csv", &table);
    let certificate = "[[certificate]]\nsample = \"CHK\"\nelement = \"Cd\"\nvalue = \"100 mg/kg\"\nu = \"4 mg/kg\"\nk = \"2\"\nid = \"C-7\"\n";
    let settings = |aside: &str| {
        let text = format!("{ADVISORY}check_samples = [\"CHK\"]\n{certificate}{aside}");
        write(&folder, "settings.toml", &text)
    };
    let run = |aside: &str| {
        let settings = settings(aside);
        reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&lot])
    };
    let failed = run("");
    let aside = run("[[set_aside]]\nsource = \"lot.csv\"\nline = 3\nwhy = \"it failed\"\n");
    for done in [&failed, &aside] {
        assert_eq!(status(done), 1);
        assert!(text(&done.stdout).contains("A check beside one reading failed"), "{}", text(&done.stdout));
    }
    let said = text(&aside.stdout);
    assert!(said.contains("line 3 of lot.csv, which is a check reading: it counts in no lot"), "{said}");
}

#[test]
fn where_every_reading_is_set_aside_nothing_is_called_below_limit() {
    let folder = folder("all-aside");
    let lot = write(&folder, "lot.csv", CLEAN);
    let rows = CLEAN.trim_end().lines().count() - 1;
    let aside =
        |line: usize| format!("[[set_aside]]\nsource = \"lot.csv\"\nline = {line}\nwhy = \"check failed\"\n");
    let all: String = (2..rows + 2).map(aside).collect();
    let settings = write(&folder, "settings.toml", &format!("{ADVISORY}{all}"));
    let done = reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&lot]);
    assert_eq!(status(&done), 1);
    let said = text(&done.stdout);
    assert!(said.contains("Every reading is set aside: none says anything of a lot."), "{said}");
    assert!(
        said.contains(&format!("({rows} set aside by a person)")) && !said.contains("below limit"),
        "{said}"
    );
}

#[test]
fn a_plan_says_how_many_units_which_and_what_it_does_not_prove() {
    let plan = |arguments: &str| plumbline(format!("plan {arguments}").split_ascii_whitespace());
    let output = plan("--lot-size 480 --rule single --level S-2 --aql 1.5 --seed 7");
    assert_eq!(status(&output), 0);
    let said = text(&output.stdout);
    assert!(said.contains("code letter C, whose arrow leads to letter D: take 8 of 480 units."), "{said}");
    assert!(said.contains("acceptance number is 0") && said.contains("knows no AQL"), "{said}");
    let listed = said.lines().find(|line| line.starts_with(|first: char| first.is_ascii_digit()));
    assert_eq!(listed.map(|line| line.split(' ').count()), Some(8), "{said}");
    assert_eq!(text(&plan("--lot-size 480 --rule single --level S-2 --aql 1.5 --seed 7").stdout), said);
    let output = plan("--lot-size 280 --rule zero_acceptance --confidence 95 --share 5");
    assert!(text(&output.stdout).contains("take 53 of 280 units"));
    for (wrong, why) in [
        ("--rule single --aql 1.0", "--lot-size"),
        ("--lot-size 0 --rule single --aql 1.0", "outside what is possible"),
        ("--lot-size 480 --rule single --aql 1.1", "0.65 1.0 1.5"),
        ("--lot-size 480 --rule single --aql 1.0 --share 5", "no such key"),
        ("--lot-size 480 --aql 1.0", "missing"),
        ("--lot-size 480 --size 3", "--size"),
        ("--lot-size 480 --rule single --aql 1.0 --aql 2.5", "twice"),
    ] {
        let output = plan(wrong);
        assert_eq!(status(&output), 64, "{wrong}");
        let said = text(&output.stderr);
        assert!(said.contains(why), "{wrong}: {said}");
    }
}

/// A PNG of 40 by 30 pixels by its header, with a text that no report may carry.
fn picture() -> Vec<u8> {
    let chunk =
        |name: &[u8], body: &[u8]| [&(body.len() as u32).to_be_bytes()[..], name, body, b"sum."].concat();
    let head = chunk(b"IHDR", &[0, 0, 0, 40, 0, 0, 0, 30, 8, 0, 0, 0, 0]);
    let parts = [head, chunk(b"tEXt", b"Author\0secret"), chunk(b"IDAT", &[1]), chunk(b"IEND", b"")].concat();
    [b"\x89PNG\r\n\x1A\n", &parts[..]].concat()
}

#[test]
fn pictures_that_the_settings_name_are_evidence_and_others_are_skipped() {
    let folder = folder("photos");
    let stick = folder.join("stick");
    write(&stick, "clean.csv", CLEAN);
    for name in ["S1.png", "in/other.png"] {
        let path = stick.join(name);
        fs::create_dir_all(path.parent().expect("a folder")).expect("a folder can be made");
        fs::write(path, picture()).expect("a picture can be written");
    }
    let named = "[[photo]]\nsource = \"clean.csv\"\nline = 2\n";
    let settings = write(
        &folder,
        "settings.toml",
        &format!("{ADVISORY}{named}file = \"S1.png\"\nx = 100\ny = 200\n{named}file = \"gone.jpg\"\n"),
    );
    let out = folder.join("out");
    let output = reviewed(&out, &[OsStr::new("--settings"), settings.as_os_str()], &[&stick]);
    assert_eq!(status(&output), 0, "{}", text(&output.stdout));
    let [json, _, report, _] = four_files(&out);
    let (json, report) = (text(&json), text(&report));
    assert!(json.contains("\"name\":\"S1.png\"") && json.contains("\"x_permille\":100"), "{json}");
    assert!(report.contains("data:image/png;base64,") && !report.contains("secret"));
    assert!(!json.contains("\"name\":\"S1.png\",\"sha256\":null"), "its digest is known");
    let said = text(&output.stdout);
    assert!(said.contains("in/other.png") && !said.contains("S1.png:"), "{said}");
    assert!(said.contains("gone.jpg was named and is not at hand"), "{said}");
}

#[test]
fn a_table_that_is_named_as_a_photograph_is_still_read() {
    let folder = folder("photo_table");
    let table = write(&folder, "clean.csv", CLEAN);
    let named = "[[photo]]\nsource = \"clean.csv\"\nline = 2\nfile = \"clean.csv\"\n";
    let settings = write(&folder, "settings.toml", &format!("{ADVISORY}{named}"));
    let output = reviewed(&folder.join("out"), &[OsStr::new("--settings"), settings.as_os_str()], &[&table]);
    assert_eq!(status(&output), 0, "{}", text(&output.stdout));
    assert!(text(&output.stdout).contains("neither a JPEG nor a PNG"), "{}", text(&output.stdout));
}

/// A folder with the delivery of brass valves and its report.
fn proved(name: &str) -> (std::path::PathBuf, std::path::PathBuf) {
    let folder = std::env::temp_dir().join(format!("plumbline-prove-{name}-{}", std::process::id()));
    let sources = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../demo-data/03-brass-valve");
    let settings = sources.join("settings.toml");
    let made = std::process::Command::new(env!("CARGO_BIN_EXE_plumbline"))
        .args(["review", "--out"])
        .args([&folder, std::path::Path::new("--settings"), &settings, &sources])
        .output()
        .expect("it runs");
    assert!(made.status.code().is_some_and(|code| code < 2), "{made:?}");
    (folder, sources)
}

fn prove(arguments: &[&std::path::Path]) -> (i32, String) {
    let told = std::process::Command::new(env!("CARGO_BIN_EXE_plumbline"))
        .arg("prove")
        .args(arguments)
        .output()
        .expect("it runs");
    let text = String::from_utf8_lossy(&told.stdout).into_owned() + &String::from_utf8_lossy(&told.stderr);
    (told.status.code().unwrap_or(-1), text)
}

#[test]
fn a_report_is_proved_with_its_folder_beside_it_and_a_changed_one_is_told_by_place() {
    use std::path::Path;
    let (folder, sources) = proved("whole");
    let report = folder.join("report.html");
    let (status, text) = prove(&[&report, Path::new("--source"), &sources]);
    assert_eq!(status, 0, "{text}");
    assert!(text.contains("its readings are the readings of these files"), "{text}");
    let (status, text) = prove(&[&report]);
    assert!(status == 0 && text.contains("agrees with itself"), "{status} {text}");
    let (status, text) = prove(&[&report, Path::new("--digest"), Path::new(&"0".repeat(64))]);
    assert!(status == 1 && text.contains("is not the digest of these findings"), "{status} {text}");

    let altered = folder.join("altered.html");
    let whole = std::fs::read_to_string(&report).expect("the report");
    assert!(whole.contains("Cedar"));
    std::fs::write(&altered, whole.replacen("Cedar", "Cedarn", 1)).expect("written");
    let (status, text) = prove(&[&altered]);
    assert!(status == 1 && text.contains("Cedarn"), "{status} {text}");
    std::fs::remove_dir_all(folder).expect("cleared");
}

#[test]
fn what_cannot_be_proved_has_its_own_status() {
    use std::path::Path;
    let (folder, sources) = proved("none");
    let (status, text) = prove(&[&sources.join("cedar-brass-valve.csv")]);
    assert!(status == 2 && text.contains("no report of this program"), "{status} {text}");
    for wrong in [
        vec![],
        vec![Path::new("--digest"), Path::new("abc")],
        vec![Path::new("no-such-report.html")],
        vec![Path::new("a.html"), Path::new("b.html")],
    ] {
        let (status, text) = prove(&wrong);
        assert_eq!(status, 64, "{wrong:?} {text}");
    }
    std::fs::remove_dir_all(folder).expect("cleared");
}

#[test]
fn a_report_in_the_folder_of_results_is_no_table() {
    let (folder, sources) = proved("again");
    let mixed = folder.join("mixed");
    std::fs::create_dir_all(&mixed).expect("made");
    std::fs::copy(folder.join("report.html"), mixed.join("report.html")).expect("copied");
    std::fs::copy(sources.join("cedar-brass-valve.csv"), mixed.join("cedar-brass-valve.csv"))
        .expect("copied");
    let out = folder.join("out");
    let made = std::process::Command::new(env!("CARGO_BIN_EXE_plumbline"))
        .args(["review", "--out"])
        .args([&out, &mixed])
        .output()
        .expect("it runs");
    assert!(made.status.code().is_some_and(|code| code < 2), "{made:?}");
    let (status, text) = prove(&[&out.join("report.html"), std::path::Path::new("--source"), &mixed]);
    assert!(
        status == 0 && (text.contains("nothing was read from it") || text.contains("report.html: given")),
        "{text}"
    );
    std::fs::remove_dir_all(folder).expect("cleared");
}

#[test]
fn messages_and_report_follow_their_language_and_data_does_not() {
    let folder = folder("languages");
    let table = write(&folder, "r.csv", OVER);
    let out = |name: &str, more: &[&str]| {
        let out = folder.join(name);
        let mut arguments: Vec<&OsStr> = more.iter().copied().map(OsStr::new).collect();
        arguments.extend([OsStr::new("review"), OsStr::new("--out"), out.as_os_str(), table.as_os_str()]);
        let output = plumbline(arguments);
        assert_eq!(status(&output), 1, "{output:?}");
        let file = |name: &str| fs::read(out.join(name)).expect("a file");
        (file("findings.json"), file("findings.csv"), String::from_utf8(file("report.html")).expect("UTF-8"))
    };
    let (json, csv, english) = out("english", &[]);
    assert!(english.contains("<html lang=\"en\">"));
    for language in plumbline_words::LANGUAGES {
        let (other_json, other_csv, report) = out(language.tag, &["--language", language.tag]);
        assert!(other_json == json && other_csv == csv, "{}", language.tag);
        assert!(report.contains(&format!("<html lang=\"{}\">", language.tag)));
    }
    let (_, _, report) = out("report", &["--language=en"]);
    assert_eq!(report, english);
}

#[test]
fn a_language_that_is_not_there_is_told_with_those_that_are() {
    for arguments in [
        &["--language", "xx", "rules"][..],
        &["review", "--out", "o", "--report-language", "xx", "p"],
        &["rules", "--language=xx"],
    ] {
        let output = plumbline(arguments);
        assert_eq!(status(&output), 64, "{output:?}");
        let told = String::from_utf8_lossy(&output.stderr).into_owned();
        assert!(told.contains("\"xx\" is no language") && told.contains("en"), "{told}");
    }
    let output = plumbline(["rules", "--language"]);
    assert_eq!(status(&output), 64, "{output:?}");
}

/// A report relabelled as another version's, with any text in front: what a forger with a text editor and a calculator makes.
fn relabelled(report: &str, text: &str) -> String {
    use plumbline_core::reading::sha256_hexadecimal;
    use plumbline_core::report::evidence::{OPENS, check_of};
    let (_, behind) = report.split_once(OPENS).expect("evidence");
    let (lines, after) = behind.split_once("</script>").expect("its end");
    let line = |fields: &str| format!("{fields}\t{}\n", check_of(fields, ""));
    let mut forged = String::new();
    for old in lines.split_inclusive('\n') {
        let fields: Vec<&str> = old.trim_end().split('\t').collect();
        forged += &match fields[0] {
            "program" => line("program\tplumbline\t0.0.9"),
            "report" => line(&format!("{}\t{}", fields[..4].join("\t"), sha256_hexadecimal(text.as_bytes()))),
            "end" => line(&format!("end\t{}\t{}", fields[1], sha256_hexadecimal(forged.as_bytes()))),
            _ => old.to_owned(),
        };
    }
    format!("{text}{OPENS}{forged}</script>{after}")
}

#[test]
fn a_report_relabelled_as_another_version_s_with_a_text_of_its_own_is_not_told_as_proved() {
    use std::path::Path;
    let (folder, sources) = proved("relabelled");
    let report = std::fs::read_to_string(folder.join("report.html")).expect("the report");
    let (_, digest) = report.rsplit_once("<p class=\"mono\">").expect("the digest");
    let digest = digest.split('<').next().and_then(|line| line.rsplit(' ').next()).expect("a digest");
    let forged = folder.join("forged.html");
    let text = format!("<!DOCTYPE html><body><h1>All lots accepted</h1><p>{digest}</p>");
    std::fs::write(&forged, relabelled(&report, &text)).expect("written");
    let asked = [&forged, Path::new("--source"), &sources, Path::new("--digest"), Path::new(digest)];
    let (status, told) = prove(&asked);
    assert_eq!(status, 3, "{told}");
    assert!(told.lines().next().is_some_and(|first| first.contains("was NOT checked")), "{told}");
    assert!(told.contains("Lot CE-0917, supplier Cedar Works: hold"), "{told}");
    assert!(told.contains("says nothing of the text of this report"), "{told}");
    assert!(!told.contains("this is the report with that digest"), "{told}");
    std::fs::remove_dir_all(folder).expect("cleared");
}
