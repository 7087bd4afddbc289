//! What was asked for on the command line.

use std::path::PathBuf;

use lexopt::prelude::*;
use plumbline_core::words::Words;

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
}

/// What to review and where to write.
pub(crate) struct Review {
    /// The output folder.
    pub(crate) out: PathBuf,
    /// The settings file.
    pub(crate) settings: Option<PathBuf>,
    /// Mapping files.
    pub(crate) mappings: Vec<PathBuf>,
    /// Rule books.
    pub(crate) rules: Vec<PathBuf>,
    /// Files and folders.
    pub(crate) paths: Vec<PathBuf>,
}

/// Reads the process's arguments.
///
/// # Errors
/// What is wrong with them, in words.
pub(crate) fn read(words: &Words) -> Result<Command, String> {
    let mut parser = lexopt::Parser::from_env();
    let unknown = |found: &str| words.with("cli-unknown", &[("found", found)]);
    let command = match parser.next().map_err(|error| error.to_string())? {
        None | Some(Long("help") | Short('h')) => return Ok(Command::Help),
        Some(Long("version") | Short('V')) => return Ok(Command::Version),
        Some(Value(word)) => word.to_string_lossy().into_owned(),
        Some(other) => return Err(unknown(&shown(&other))),
    };
    match command.as_str() {
        "help" => return Ok(Command::Help),
        "version" => return Ok(Command::Version),
        "rules" => return rules(&mut parser, &unknown),
        "review" => {}
        other => return Err(unknown(other)),
    }
    let (mut out, mut settings) = (None, None);
    let (mut mappings, mut rules, mut paths) = (Vec::new(), Vec::new(), Vec::new());
    while let Some(argument) = parser.next().map_err(|error| error.to_string())? {
        match argument {
            Long("out") => out = Some(value(&mut parser, words, "--out")?),
            Long("settings") => settings = Some(value(&mut parser, words, "--settings")?),
            Long("mapping") => mappings.push(value(&mut parser, words, "--mapping")?),
            Long("rules") => rules.push(value(&mut parser, words, "--rules")?),
            Long("help") | Short('h') => return Ok(Command::Help),
            Value(path) => paths.push(PathBuf::from(path)),
            other => return Err(unknown(&shown(&other))),
        }
    }
    let out = out.ok_or_else(|| words.say("cli-missing_out"))?;
    if paths.is_empty() {
        return Err(words.say("cli-missing_path"));
    }
    Ok(Command::Review(Review { out, settings, mappings, rules, paths }))
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

fn value(parser: &mut lexopt::Parser, words: &Words, option: &str) -> Result<PathBuf, String> {
    parser.value().map(PathBuf::from).map_err(|_| words.with("cli-missing_value", &[("found", option)]))
}

fn shown(argument: &lexopt::Arg<'_>) -> String {
    match argument {
        Short(letter) => format!("-{letter}"),
        Long(name) => format!("--{name}"),
        Value(text) => text.to_string_lossy().into_owned(),
    }
}
