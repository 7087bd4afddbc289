//! The thin door to the shell: files in, the same files out as the page gives. It decides nothing.

mod arguments;
mod explain;
mod files;
mod prove;

use std::ffi::OsString;
use std::fs::{self, File};
use std::io::{self, BufWriter, Write};
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use arguments::{Command, Given, Review};
use plumbline_core::acts::{ActKind, Target};
use plumbline_core::duplicates;
use plumbline_core::history::{self, History};
use plumbline_core::inspection::{self, Findings, Inspection};
use plumbline_core::lot::Disposition;
use plumbline_core::papers::{self, Papers};
use plumbline_core::reading::{Notice, NoticeCode, Source};
use plumbline_core::report::evidence::Pinned;
use plumbline_core::report::{self, PROGRAM, books, csv, html, json, photos, phrases, sampling, settled};
use plumbline_core::rules::{self, Problem, RuleBook};
use plumbline_core::settings_file;
use plumbline_core::visible_text::visible;
use plumbline_core::words::Words;
use plumbline_intake::bill;

/// Exit status: wrong usage, or a bad settings, mapping or rule file (`EX_USAGE` of sysexits.h).
const USAGE: u8 = 64;
/// Exit status: the output could not be written (`EX_IOERR` of sysexits.h).
const CANNOT_WRITE: u8 = 74;
/// Refused rows, and notices, of a source that are printed; all of them stand in findings.json.
const REFUSED_PRINTED: usize = 20;

fn main() -> ExitCode {
    let mut given: Vec<OsString> = std::env::args_os().skip(1).collect();
    let spoken = arguments::spoken(&mut given);
    let words = spoken.as_ref().ok().copied().flatten().map_or_else(Words::english, Words::of);
    match spoken.and_then(|_| arguments::read(&words, given)) {
        Ok(Command::Help) => {
            say(&words.say("cli-help"));
            say(&words.say("proof-help"));
            say(&format!("\n{}", words.with("cli-help_language", &[("list", &arguments::tags())])))
        }
        Ok(Command::Version) => say(&format!("{} {}", PROGRAM.name, PROGRAM.version)),
        Ok(Command::Rules(None)) => {
            for book in rules::library() {
                list_book(&words, book);
            }
            ExitCode::SUCCESS
        }
        Ok(Command::Rules(Some(named))) => ExitCode::from(explain_book(&words, &named)),
        Ok(Command::Review(review)) => ExitCode::from(run(&words, &review)),
        Ok(Command::Explain(wanted)) => ExitCode::from(explain::run(&words, &wanted)),
        Ok(Command::Prove(asked)) => ExitCode::from(prove::run(&words, &asked)),
        Ok(Command::Plan(planned)) => {
            for line in sampling::plan_lines(&words, &planned.plan, planned.lot_size) {
                say(&line);
            }
            ExitCode::SUCCESS
        }
        Err(what) => {
            complain(&words.with("cli-usage", &[("what", &what)]));
            complain(&words.say("cli-usage.remedy"));
            ExitCode::from(USAGE)
        }
    }
}

fn list_book(words: &Words, book: &RuleBook) {
    say(&book.id);
    for line in books::listed(words, book) {
        say(&format!("    {line}"));
    }
}

/// Explains a book that comes with the program, else a file.
fn explain_book(words: &Words, named: &str) -> u8 {
    let path = Path::new(named);
    let own = rules::library().iter().find(|book| book.id == named).cloned();
    let book = match own {
        Some(book) => book,
        None if !path.exists() => {
            complain(
                &words.with("cli-usage", &[("what", &words.with("cli-rules_unknown", &[("found", named)]))]),
            );
            return USAGE;
        }
        None => match read_text(words, path).map(|text| RuleBook::parse(&text)) {
            Ok(Ok(book)) => book,
            Ok(Err(problems)) => return refuse_file(words, path, &problems, rules::SCHEMA),
            Err(status) => return status,
        },
    };
    say(&book.id);
    for line in books::explained(words, &book) {
        say(&format!("  {line}"));
    }
    0
}

/// Names of files and of lots may hold anything: a terminal is given no control characters and nothing unseen.
fn say(text: &str) -> ExitCode {
    // A closed pipe is the reader's choice, not a failure.
    let _ = writeln!(io::stdout(), "{}", visible(text));
    ExitCode::SUCCESS
}

fn complain(text: &str) {
    let _ = writeln!(io::stderr(), "{}", visible(text));
}

/// Reads rule books, settings, mappings and files; true beside the inspection where something named could not be read.
///
/// # Errors
/// The exit status, after what is wrong was said.
fn gather(words: &Words, given: &Given) -> Result<(Inspection, bool), u8> {
    let mut inspection = Inspection::new()
        .map_err(|problems| refuse_file(words, Path::new("built-in"), &problems, rules::SCHEMA))?;
    for path in &given.rules {
        let book = RuleBook::parse(&read_text(words, path)?)
            .map_err(|problems| refuse_file(words, path, &problems, rules::SCHEMA))?;
        inspection.books.add(book);
    }
    for path in &given.settings {
        let acts = settings_file::parse_settings(&read_text(words, path)?, &files::base_name(path))
            .map_err(|problems| refuse_file(words, path, &problems, settings_file::SCHEMA))?;
        inspection.acts.extend(acts);
    }
    for path in &given.mappings {
        let acts = settings_file::parse_mapping(&read_text(words, path)?, &files::base_name(path))
            .map_err(|problems| refuse_file(words, path, &problems, settings_file::MAPPING_SCHEMA))?;
        inspection.acts.extend(acts);
    }
    for path in &given.histories {
        let history = History::parse(&read_text(words, path)?)
            .map_err(|problems| refuse_file(words, path, &problems, history::SCHEMA))?;
        inspection.history.merge(history);
    }
    for path in &given.bills {
        add_bill(words, path, &mut inspection)?;
    }
    let unreadable = files::read_all(&given.paths, &mut inspection);
    duplicates::set_duplicates_aside(&mut inspection.sources);
    Ok((inspection, unreadable))
}

/// Takes a bill of materials over. One for a part that has one already is refused: nobody could tell which counts.
fn add_bill(words: &Words, path: &Path, inspection: &mut Inspection) -> Result<(), u8> {
    let name = files::base_name(path);
    let bytes = fs::read(path).map_err(|error| {
        let file = path.display().to_string();
        complain(&words.with("cli-unreadable", &[("file", &file), ("text", &error.to_string())]));
        USAGE
    })?;
    let found = bill::read(&name, &bytes).map_err(|problems| refuse_file(words, path, &problems, ""))?;
    let settings = inspection.settings();
    for act in &found.acts {
        let is_it = |kind: ActKind, target: &Target| kind == act.kind && *target == act.target;
        if settings.all().any(|(kind, target, _)| is_it(kind, target)) {
            let target = phrases::target(words, &act.target);
            let twice = [("file", name.as_str()), ("target", target.as_str())];
            complain(&words.with("cli-bill_twice", &twice));
            return Err(USAGE);
        }
    }
    for note in &found.notes {
        let text = words.with(&format!("bill-{}", note.code.code()), &[("found", &note.found)]);
        let (line, column) = (note.line.to_string(), note.column.to_string());
        say(&words
            .with("cli-bill", &[("file", &name), ("line", &line), ("column", &column), ("text", &text)]));
    }
    inspection.acts.extend(found.acts);
    Ok(())
}

fn run(words: &Words, review: &Review) -> u8 {
    let (inspection, unreadable) = match gather(words, &review.given) {
        Ok(gathered) => gathered,
        Err(status) => return status,
    };
    let findings = inspection::review(&inspection);
    print_summary(words, &inspection, &findings);
    let others = review.report_language.filter(|language| language.tag != words.tag()).map(Words::of);
    let in_report = others.as_ref().unwrap_or(words);
    if let Err((path, error)) = write_all(words, in_report, review, &inspection, &findings) {
        let file = path.display().to_string();
        complain(&words.with("cli-cannot_write", &[("file", &file), ("text", &error.to_string())]));
        return CANNOT_WRITE;
    }
    let all_accepted = findings.lots.iter().all(|lot| lot.disposition == Disposition::Accept);
    match (unreadable || findings.lots.is_empty(), all_accepted) {
        (true, _) => 2,
        (false, false) => 1,
        (false, true) => 0,
    }
}

fn read_text(words: &Words, path: &Path) -> Result<String, u8> {
    fs::read_to_string(path).map_err(|error| {
        let file = path.display().to_string();
        complain(&words.with("cli-unreadable", &[("file", &file), ("text", &error.to_string())]));
        USAGE
    })
}

fn refuse_file(words: &Words, path: &Path, problems: &[Problem], expected: &str) -> u8 {
    for problem in problems {
        let text = format!(
            "{} {}",
            phrases::problem(words, problem, expected),
            phrases::problem_remedy(words, problem, expected)
        );
        complain(&words.with(
            "cli-bad_file",
            &[
                ("file", &path.display().to_string()),
                ("line", &problem.line.to_string()),
                ("column", &problem.column.to_string()),
                ("text", &text),
            ],
        ));
    }
    USAGE
}

fn print_summary(words: &Words, inspection: &Inspection, findings: &Findings) {
    for (at, source) in inspection.sources.iter().enumerate() {
        let counts = findings.counts(inspection, at);
        if source.problem.is_none() || source.problem == Some(NoticeCode::NoElementColumn) {
            say(&words.with(
                "cli-source",
                &[
                    ("file", &source.name),
                    ("rows_in", &counts.rows_in.to_string()),
                    ("used", &counts.used.to_string()),
                    ("check", &counts.check.to_string()),
                    ("duplicate", &counts.duplicate.to_string()),
                    ("set_aside", &counts.set_aside.to_string()),
                    ("refused", &counts.refused.to_string()),
                    ("total", &counts.readings.to_string()),
                ],
            ));
        }
        if counts.readings_set_aside > 0 {
            let count = counts.readings_set_aside.to_string();
            say(&words.with("cli-set_aside", &[("file", &source.name), ("count", &count)]));
        }
        let refusals = source.refusals.kept.iter().take(REFUSED_PRINTED);
        for notice in refusals.chain(source.notices.kept.iter().take(REFUSED_PRINTED)) {
            print_notice(words, source, notice);
        }
        let left =
            source.refusals.left_out + source.refusals.kept.len().saturating_sub(REFUSED_PRINTED) as u64;
        if left > 0 {
            say(&words.with("cli-more_refused", &[("file", &source.name), ("left", &left.to_string())]));
        }
    }
    for lot in &findings.lots {
        say(&words.with(
            "cli-lot",
            &[
                ("lot", &phrases::lot_name(words, inspection, lot)),
                ("supplier", &lot.supplier.clone().unwrap_or_else(|| words.say("not-stated"))),
                ("disposition", &words.say(&format!("disposition-{}", lot.disposition.code()))),
            ],
        ));
        for reason in &lot.reasons {
            say(&format!("  {}", phrases::lot_reason(words, reason)));
        }
    }
    for text in settled::unmatched(words, inspection, findings) {
        say(&words.with("cli-not_matched", &[("text", &text)]));
    }
    for text in photos::troubles(inspection, findings, words) {
        say(&text);
    }
    say(&phrases::summary_counts(words, findings));
    say(&phrases::summary_says(words, findings));
    say(&phrases::summary_evidence(words, findings));
    say(&words.say("caution-declaration"));
}

fn print_notice(words: &Words, source: &Source, notice: &Notice) {
    let text = format!(
        "{} {}",
        phrases::notice(words, notice, Some(source)),
        phrases::notice_remedy(words, notice.code)
    );
    let id = match (notice.line, notice.column) {
        (0, _) => "cli-source_problem",
        (_, 0) => "cli-refused_row",
        _ => "cli-refused",
    };
    say(&words.with(
        id,
        &[
            ("file", &source.name),
            ("line", &notice.line.to_string()),
            ("column", &notice.column.to_string()),
            ("text", &text),
        ],
    ));
}

type Written = Result<(), (PathBuf, io::Error)>;

/// Findings and history are the same bytes in every language; the report is for who reads it.
fn write_all(
    words: &Words,
    in_report: &Words,
    review: &Review,
    inspection: &Inspection,
    findings: &Findings,
) -> Written {
    let out = review.out.as_path();
    fs::create_dir_all(out).map_err(|error| (out.to_owned(), error))?;
    write_one(words, &out.join("findings.json"), |sink| json::write(inspection, findings, words, sink))?;
    write_one(words, &out.join("findings.csv"), |sink| csv::write(inspection, findings, sink))?;
    let pinned = Pinned::of(inspection, findings);
    for length in &review.lengths {
        write_one(words, &out.join(length.file()), |sink| {
            html::write_pinned(inspection, findings, in_report, *length, &pinned, sink)
        })?;
    }
    write_one(words, &out.join("history.txt"), |sink| report::history::write(inspection, findings, sink))?;
    if review.papers { write_papers(words, in_report, out, inspection, findings, &pinned) } else { Ok(()) }
}

/// The workbook, and the papers that these findings ask for; none is written for nothing.
fn write_papers(
    words: &Words,
    in_report: &Words,
    out: &Path,
    inspection: &Inspection,
    findings: &Findings,
    pinned: &Pinned,
) -> Written {
    write_one(words, &out.join("findings.xlsx"), |sink| {
        plumbline_workbook::write(inspection, findings, in_report, pinned, sink)
    })?;
    let offer = papers::offer(inspection, findings);
    let settings = inspection.settings();
    let made = Papers::new(inspection, findings, in_report, &settings, pinned);
    if offer.self_check > 0 {
        write_one(words, &out.join(papers::SELF_CHECK), |sink| made.self_check(sink))?;
    }
    if offer.samples > 0 {
        write_one(words, &out.join(papers::LABORATORY_REQUEST), |sink| made.laboratory_request(sink))?;
    }
    for notice in &offer.notices {
        write_one(words, &out.join(&notice.file), |sink| made.notice(notice, sink))?;
    }
    if offer.labels > 0 {
        write_one(words, &out.join(papers::LABELS), |sink| made.labels(sink))?;
    }
    if offer.without_supplier > 0 {
        say(&words.with("cli-no_notice", &[("count", &offer.without_supplier.to_string())]));
    }
    Ok(())
}

fn write_one(words: &Words, path: &Path, write: impl Fn(&mut dyn Write) -> io::Result<()>) -> Written {
    let written = File::create(path).and_then(|file| {
        let mut sink = BufWriter::with_capacity(256 * 1024, file);
        write(&mut sink)?;
        sink.flush()
    });
    written.map_err(|error| (path.to_owned(), error))?;
    say(&words.with("cli-written", &[("file", &path.display().to_string())]));
    Ok(())
}
