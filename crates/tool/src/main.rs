//! Builds what ships, the one page, and measures. Not part of the program a person uses.
//!
//! `plumbline-tool page --wasm FILE --out FILE` turns the compiled core, the page's sources in `web/` and the
//! demo deliveries in `demo-data/` into one HTML file. The same inputs give the same bytes: no date, no machine
//! name and no path goes in. `measure FILE` prints how long the core takes for a file, `invent-table` writes
//! the table that is measured with, and `invent-exercise` an invented delivery to practise on.
#![expect(
    clippy::disallowed_methods,
    reason = "files, programs and the clock are the tool's job; the bans are for core, intake and the page's door"
)]

mod invented_exercise;
mod invented_table;
mod measure;
mod page;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

const USAGE: &str = "usage: plumbline-tool page --wasm FILE --out FILE
       plumbline-tool measure FILE [--times N]
       plumbline-tool invent-table --rows N --out FILE
       plumbline-tool invent-exercise --seed N --out DIR";

/// What went wrong, in words for the person at the build.
type Failure = String;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let Some(request) = read_request(&arguments) else {
        eprintln!("{USAGE}");
        return ExitCode::from(64);
    };
    let done = match request {
        Request::Page { wasm, out } => page::build(&workspace(), &wasm, &out),
        Request::Measure { file, times } => measure::measure(&file, times).map(|report| println!("{report}")),
        Request::InventTable { rows, out } => invented_table::write(rows, &out),
        Request::InventExercise { seed, out } => invented_exercise::write(seed, &out),
    };
    match done {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("plumbline-tool: {failure}");
            ExitCode::FAILURE
        }
    }
}

#[derive(Debug, PartialEq)]
enum Request {
    Page { wasm: PathBuf, out: PathBuf },
    Measure { file: PathBuf, times: u32 },
    InventTable { rows: u32, out: PathBuf },
    InventExercise { seed: u64, out: PathBuf },
}

fn read_request(arguments: &[String]) -> Option<Request> {
    let (command, rest) = arguments.split_first()?;
    match command.as_str() {
        "page" => {
            let [wasm, out] = options(rest, ["--wasm", "--out"])?;
            Some(Request::Page { wasm: wasm?.into(), out: out?.into() })
        }
        "measure" => {
            let (file, rest) = rest.split_first().filter(|(file, _)| !file.starts_with("--"))?;
            let [times] = options(rest, ["--times"])?;
            let times = times.map_or(Some(1), |times| times.parse().ok()).filter(|times| *times > 0)?;
            Some(Request::Measure { file: file.into(), times })
        }
        "invent-table" => {
            let [rows, out] = options(rest, ["--rows", "--out"])?;
            Some(Request::InventTable { rows: rows?.parse().ok()?, out: out?.into() })
        }
        "invent-exercise" => {
            let [seed, out] = options(rest, ["--seed", "--out"])?;
            Some(Request::InventExercise { seed: seed?.parse().ok()?, out: out?.into() })
        }
        _ => None,
    }
}

/// The values of these options, each given at most once; nothing if anything else stands among them.
fn options<'a, const N: usize>(mut rest: &'a [String], names: [&str; N]) -> Option<[Option<&'a str>; N]> {
    let mut values = [None; N];
    while let [name, value, after @ ..] = rest {
        let at = names.iter().position(|known| known == name)?;
        let place = values.get_mut(at)?;
        if place.replace(value.as_str()).is_some() {
            return None;
        }
        rest = after;
    }
    rest.is_empty().then_some(values)
}

/// The top of the project, two folders above this crate.
fn workspace() -> PathBuf {
    let crate_folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    crate_folder.ancestors().nth(2).unwrap_or(crate_folder).to_path_buf()
}

#[cfg(test)]
mod tests {
    use super::{Request, read_request};

    fn request(line: &str) -> Option<Request> {
        let words: Vec<String> = line.split_whitespace().map(str::to_owned).collect();
        read_request(&words)
    }

    #[test]
    fn both_files_are_named_in_any_order() {
        let expected = Request::Page { wasm: "a.wasm".into(), out: "b.html".into() };
        assert_eq!(request("page --out b.html --wasm a.wasm"), Some(expected));
    }

    #[test]
    fn a_file_is_measured_once_unless_more_is_asked_for() {
        let expected = |times| Some(Request::Measure { file: "a.csv".into(), times });
        assert_eq!(request("measure a.csv"), expected(1));
        assert_eq!(request("measure a.csv --times 5"), expected(5));
    }

    #[test]
    fn a_table_is_invented_as_long_as_asked_for() {
        let expected = Request::InventTable { rows: 1_000_000, out: "t.csv".into() };
        assert_eq!(request("invent-table --rows 1000000 --out t.csv"), Some(expected));
    }

    #[test]
    fn an_exercise_is_invented_from_a_seed() {
        let expected = Request::InventExercise { seed: u64::MAX, out: "dir".into() };
        assert_eq!(request("invent-exercise --out dir --seed 18446744073709551615"), Some(expected));
    }

    #[test]
    fn a_missing_doubled_or_unknown_option_is_wrong_usage() {
        for line in [
            "",
            "page",
            "page --wasm a.wasm",
            "page --out b.html",
            "page --wasm a --wasm b --out c",
            "page --wasm a --out b --date today",
            "page --wasm a --out",
            "pages --wasm a --out b",
            "measure",
            "measure --times 3",
            "measure a.csv --times 0",
            "measure a.csv --times many",
            "measure a.csv b.csv",
            "invent-table --rows 10",
            "invent-table --out t.csv",
            "invent-table --rows -1 --out t.csv",
            "invent-exercise --out d",
            "invent-exercise --seed 18446744073709551616 --out d",
            "invent-exercise --seed N --out d",
        ] {
            assert!(request(line).is_none(), "taken: {line:?}");
        }
    }
}
