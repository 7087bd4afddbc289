//! What was asked for on the command line.

use std::ffi::OsString;
use std::path::PathBuf;

use lexopt::prelude::*;
use plumbline_core::acts::{ActKind, check_value};
use plumbline_core::fields;
use plumbline_core::report::Length;
use plumbline_core::report::explain::About;
use plumbline_core::report::phrases;
use plumbline_core::rules::{Problem, ProblemCode};
use plumbline_core::sampling::PlanSaid;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_core::words::Words;
use plumbline_words::{LANGUAGES, Language, language};

/// What to do.
pub(crate) enum Command {
    /// Print the help.
    Help,
    /// Print name and version.
    Version,
    /// List the rule books, or explain one by its id or file.
    Rules(Option<String>),
    /// Review files.
    Review(Review),
    /// Explain the outcomes of readings.
    Explain(Explain),
    /// Say how many units of a lot to take, and which.
    Plan(Planned),
    /// Hold a report against what it carries.
    Prove(Prove),
}

/// A report to be proved.
pub(crate) struct Prove {
    /// The report.
    pub(crate) report: PathBuf,
    /// Files and folders beside it.
    pub(crate) sources: Vec<PathBuf>,
    /// The digest on the signed paper.
    pub(crate) digest: Option<String>,
}

/// A sampling plan for a lot.
pub(crate) struct Planned {
    /// Units in the lot.
    pub(crate) lot_size: u64,
    /// The plan.
    pub(crate) plan: PlanSaid,
}

/// What to review and where to write.
pub(crate) struct Review {
    /// The output folder.
    pub(crate) out: PathBuf,
    /// The language of the report; `None`: that of the messages.
    pub(crate) report_language: Option<&'static Language>,
    /// Whether the workbook and the papers for others are written too.
    pub(crate) papers: bool,
    /// Which lengths of the report.
    pub(crate) lengths: Vec<Length>,
    /// What is read.
    pub(crate) given: Given,
}

/// Which outcomes to explain.
pub(crate) struct Explain {
    /// Which readings.
    pub(crate) which: Which,
    /// Which outcomes of them; empty: all.
    pub(crate) of: Vec<About>,
    /// What is read.
    pub(crate) given: Given,
}

/// Which readings are meant.
pub(crate) enum Which {
    /// Those with this sample id.
    Reading(String),
    /// The one that begins at this line of this source.
    Line(String, u32),
}

/// The files that a review or an explanation rests on.
#[derive(Default)]
pub(crate) struct Given {
    /// Settings files, the later ones above the earlier.
    pub(crate) settings: Vec<PathBuf>,
    /// Mapping files.
    pub(crate) mappings: Vec<PathBuf>,
    /// Rule books.
    pub(crate) rules: Vec<PathBuf>,
    /// Histories, merged.
    pub(crate) histories: Vec<PathBuf>,
    /// Bills of materials.
    pub(crate) bills: Vec<PathBuf>,
    /// Files and folders.
    pub(crate) paths: Vec<PathBuf>,
}

const LANGUAGE: &str = "--language";
const REPORT_LANGUAGE: &str = "--report-language";

/// The tags of all languages, as a person types them.
pub(crate) fn tags() -> String {
    LANGUAGES.iter().map(|language| language.tag).collect::<Vec<_>>().join(", ")
}

fn known(words: &Words, tag: &str) -> Result<&'static Language, String> {
    language(tag).ok_or_else(|| words.with("cli-no_language", &[("found", tag), ("list", &tags())]))
}

/// Takes `--language` out of the arguments, wherever it stands: what is wrong with the others is already said in it. No
/// variable of the environment decides, so that a command writes the same bytes everywhere.
///
/// # Errors
/// What is wrong, in English.
pub(crate) fn spoken(arguments: &mut Vec<OsString>) -> Result<Option<&'static Language>, String> {
    let english = Words::english();
    let mut found = None;
    let mut at = 0;
    while let Some(argument) = arguments.get(at).map(|argument| argument.to_string_lossy().into_owned()) {
        if argument == "--" {
            break;
        }
        let tag = if argument == LANGUAGE {
            arguments.remove(at);
            if at == arguments.len() {
                return Err(english.with("cli-missing_value", &[("found", LANGUAGE)]));
            }
            arguments.remove(at).to_string_lossy().into_owned()
        } else if let Some(tag) = argument.strip_prefix(LANGUAGE).and_then(|rest| rest.strip_prefix('=')) {
            arguments.remove(at);
            tag.to_owned()
        } else {
            at += 1;
            continue;
        };
        found = Some(known(&english, &tag)?);
    }
    Ok(found)
}

/// Reads the arguments behind the program's name, those of [`spoken`] taken out.
///
/// # Errors
/// What is wrong with them, in words.
pub(crate) fn read(words: &Words, arguments: Vec<OsString>) -> Result<Command, String> {
    let mut parser = lexopt::Parser::from_args(arguments);
    let unknown = |found: &str| words.with("cli-unknown", &[("found", found)]);
    let command = match parser.next().map_err(|error| error.to_string())? {
        None | Some(Long("help") | Short('h')) => return Ok(Command::Help),
        Some(Long("version") | Short('V')) => return Ok(Command::Version),
        Some(Value(word)) => word.to_string_lossy().into_owned(),
        Some(other) => return Err(unknown(&shown(&other))),
    };
    match command.as_str() {
        "help" => Ok(Command::Help),
        "version" => Ok(Command::Version),
        "rules" => rules(&mut parser, &unknown),
        "review" => on_files(&mut parser, words, false),
        "explain" => on_files(&mut parser, words, true),
        "plan" => plan(&mut parser, words),
        "prove" => prove(&mut parser, words),
        other => Err(unknown(other)),
    }
}

/// Reads the arguments of a command on files: a review writes them out, an explanation chooses readings of them.
fn on_files(parser: &mut lexopt::Parser, words: &Words, explains: bool) -> Result<Command, String> {
    let mut given = Given::default();
    let (mut out, mut papers, mut report_language) = (None, false, None);
    let (mut which, mut of, mut lengths) = (Vec::new(), Vec::new(), Vec::new());
    while let Some(argument) = parser.next().map_err(|error| error.to_string())? {
        match argument {
            Long("out") if !explains => out = Some(value(parser, words, "--out")?),
            Long("papers") if !explains => papers = true,
            Long("report-language") if !explains => {
                report_language = Some(known(words, &text(parser, words, REPORT_LANGUAGE)?)?);
            }
            Long("length") if !explains => lengths.extend(length(&text(parser, words, "--length")?, words)?),
            Long("reading") if explains => which.push(Which::Reading(text(parser, words, "--reading")?)),
            Long("line") if explains => which.push(line(&text(parser, words, "--line")?, words)?),
            Long("of") if explains => of.extend(about(&text(parser, words, "--of")?, words)?),
            Long("settings") => given.settings.push(value(parser, words, "--settings")?),
            Long("mapping") => given.mappings.push(value(parser, words, "--mapping")?),
            Long("bill") => given.bills.push(value(parser, words, "--bill")?),
            Long("rules") => given.rules.push(value(parser, words, "--rules")?),
            Long("history") if !explains => given.histories.push(value(parser, words, "--history")?),
            Long("help") | Short('h') => return Ok(Command::Help),
            Value(path) => given.paths.push(PathBuf::from(path)),
            other => return Err(words.with("cli-unknown", &[("found", &shown(&other))])),
        }
    }
    let no_path = given.paths.is_empty();
    let command = if explains {
        let only = which.pop().filter(|_| which.is_empty());
        let which = only.ok_or_else(|| words.say("cli-missing_reading"))?;
        Command::Explain(Explain { which, of, given })
    } else {
        let out = out.ok_or_else(|| words.say("cli-missing_out"))?;
        if lengths.is_empty() {
            lengths.push(Length::Full);
        }
        lengths.sort_unstable();
        lengths.dedup();
        Command::Review(Review { out, report_language, papers, lengths, given })
    };
    if no_path { Err(words.say("cli-missing_path")) } else { Ok(command) }
}

/// One length of the report, or all of them.
fn length(text: &str, words: &Words) -> Result<Vec<Length>, String> {
    if text == "all" {
        return Ok(Length::ALL.to_vec());
    }
    let found = Length::from_code(text).ok_or_else(|| words.with("cli-no_length", &[("found", text)]))?;
    Ok(vec![found])
}

/// `SOURCE:LINE`, the line after the last colon.
fn line(text: &str, words: &Words) -> Result<Which, String> {
    let parts = text.rsplit_once(':').filter(|(name, _)| !name.is_empty());
    parts
        .and_then(|(name, line)| Some(Which::Line(name.to_owned(), line.parse().ok()?)))
        .ok_or_else(|| words.with("cli-no_line", &[("found", text)]))
}

/// The outcomes of one name; bromine is a substance and a halogen.
fn about(text: &str, words: &Words) -> Result<Vec<About>, String> {
    let substances = Substance::ALL.into_iter().filter(|of| of.symbol() == text).map(About::Substance);
    let halogens = Halogen::ALL.into_iter().filter(|of| of.name() == text).map(About::Halogen);
    let found: Vec<About> = substances.chain(halogens).collect();
    if found.is_empty() { Err(words.with("cli-no_outcome", &[("found", text)])) } else { Ok(found) }
}

fn rules(parser: &mut lexopt::Parser, unknown: &dyn Fn(&str) -> String) -> Result<Command, String> {
    let mut named = None;
    while let Some(argument) = parser.next().map_err(|error| error.to_string())? {
        match argument {
            Value(word) if named.is_none() => named = Some(word.to_string_lossy().into_owned()),
            Long("help") | Short('h') => return Ok(Command::Help),
            other => return Err(unknown(&shown(&other))),
        }
    }
    Ok(Command::Rules(named))
}

/// One report; what stands beside it.
fn prove(parser: &mut lexopt::Parser, words: &Words) -> Result<Command, String> {
    let (mut report, mut sources, mut digest) = (None, Vec::new(), None);
    while let Some(argument) = parser.next().map_err(|error| error.to_string())? {
        match argument {
            Long("source") => sources.push(value(parser, words, "--source")?),
            Long("digest") => {
                let typed = text(parser, words, "--digest")?;
                let digits: String = typed.chars().filter(|one| !one.is_whitespace()).collect();
                if digits.len() != DIGEST_DIGITS || !digits.bytes().all(|digit| digit.is_ascii_hexdigit()) {
                    return Err(words.with("proof-no_digest", &[("found", &typed)]));
                }
                digest = Some(digits);
            }
            Long("help") | Short('h') => return Ok(Command::Help),
            Value(path) if report.is_none() => report = Some(PathBuf::from(path)),
            other => return Err(words.with("cli-unknown", &[("found", &shown(&other))])),
        }
    }
    let report = report.ok_or_else(|| words.say("proof-no_report"))?;
    Ok(Command::Prove(Prove { report, sources, digest }))
}

/// Digits of a SHA-256.
const DIGEST_DIGITS: usize = 64;

/// A plan's fields are those of a settings file.
fn plan(parser: &mut lexopt::Parser, words: &Words) -> Result<Command, String> {
    let (mut lot_size, mut fields) = (None, Vec::new());
    while let Some(argument) = parser.next().map_err(|error| error.to_string())? {
        match argument {
            Long("lot-size") => lot_size = Some(text(parser, words, "--lot-size")?),
            Long("help") | Short('h') => return Ok(Command::Help),
            Long(name) if PlanSaid::FIELDS.contains(&name) => {
                let name = name.to_owned();
                let value = text(parser, words, &format!("--{name}"))?;
                fields.push((name, value));
            }
            other => return Err(words.with("cli-unknown", &[("found", &shown(&other))])),
        }
    }
    let bad = |code: ProblemCode, found: &str| {
        let problem = Problem { line: 0, column: 0, code, found: found.to_owned() };
        format!("{} {}", phrases::problem(words, &problem, ""), phrases::problem_remedy(words, &problem, ""))
    };
    let wanted = lot_size.ok_or_else(|| bad(ProblemCode::Missing, "--lot-size"))?;
    check_value(ActKind::LotSize, &wanted).map_err(|code| bad(code, &wanted))?;
    let lot_size = wanted.parse().map_err(|_| bad(ProblemCode::OutOfRange, &wanted))?;
    let fields: Vec<(&str, &str)> =
        fields.iter().map(|(name, value)| (name.as_str(), value.as_str())).collect();
    let said = fields::join(&fields);
    let plan = PlanSaid::parse(&said).map_err(|code| bad(code, &said))?;
    Ok(Command::Plan(Planned { lot_size, plan }))
}

fn value(parser: &mut lexopt::Parser, words: &Words, option: &str) -> Result<PathBuf, String> {
    parser.value().map(PathBuf::from).map_err(|_| words.with("cli-missing_value", &[("found", option)]))
}

fn text(parser: &mut lexopt::Parser, words: &Words, option: &str) -> Result<String, String> {
    value(parser, words, option).map(|text| text.to_string_lossy().into_owned())
}

fn shown(argument: &lexopt::Arg<'_>) -> String {
    match argument {
        Short(letter) => format!("-{letter}"),
        Long(name) => format!("--{name}"),
        Value(text) => text.to_string_lossy().into_owned(),
    }
}
