//! Builds what ships: the one page. Not part of the program a person uses.
//!
//! `plumbline-tool page --wasm FILE --out FILE` turns the compiled core, the page's sources in `web/` and the
//! demo deliveries in `demo-data/` into one HTML file. The same inputs give the same bytes: no date, no machine
//! name and no path goes in.
#![expect(
    clippy::disallowed_methods,
    reason = "files and programs are the tool's job; the bans are for core, intake and the page's door"
)]

mod page;

use std::path::{Path, PathBuf};
use std::process::ExitCode;

const USAGE: &str = "usage: plumbline-tool page --wasm FILE --out FILE";

/// What went wrong, in words for the person at the build.
type Failure = String;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let Some(request) = read_request(&arguments) else {
        eprintln!("{USAGE}");
        return ExitCode::from(64);
    };
    match page::build(&workspace(), &request.wasm, &request.out) {
        Ok(()) => ExitCode::SUCCESS,
        Err(failure) => {
            eprintln!("plumbline-tool: {failure}");
            ExitCode::FAILURE
        }
    }
}

struct PageRequest {
    wasm: PathBuf,
    out: PathBuf,
}

fn read_request(arguments: &[String]) -> Option<PageRequest> {
    let (command, mut rest) = arguments.split_first()?;
    if command != "page" {
        return None;
    }
    let (mut wasm, mut out) = (None, None);
    while let [name, value, after @ ..] = rest {
        let place = match name.as_str() {
            "--wasm" => &mut wasm,
            "--out" => &mut out,
            _ => return None,
        };
        if place.replace(PathBuf::from(value)).is_some() {
            return None;
        }
        rest = after;
    }
    if !rest.is_empty() {
        return None;
    }
    Some(PageRequest { wasm: wasm?, out: out? })
}

/// The top of the project, two folders above this crate.
fn workspace() -> PathBuf {
    let crate_folder = Path::new(env!("CARGO_MANIFEST_DIR"));
    crate_folder.ancestors().nth(2).unwrap_or(crate_folder).to_path_buf()
}

#[cfg(test)]
mod tests {
    use super::read_request;

    fn words(line: &str) -> Vec<String> {
        line.split_whitespace().map(str::to_owned).collect()
    }

    #[test]
    fn both_files_are_named_in_any_order() {
        let request = read_request(&words("page --out b.html --wasm a.wasm")).expect("a complete request");
        assert_eq!(request.wasm.to_str(), Some("a.wasm"));
        assert_eq!(request.out.to_str(), Some("b.html"));
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
        ] {
            assert!(read_request(&words(line)).is_none(), "taken: {line:?}");
        }
    }
}
