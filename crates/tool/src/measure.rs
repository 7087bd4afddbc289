//! How long the core takes for a file, step by step, without a browser.

use crate::Failure;
use plumbline_core::inspection::{self, Findings, Inspection};
use plumbline_core::outcome::Outcome;
use plumbline_core::substance::{Halogen, Substance};
use plumbline_intake::SourceReader;
use serde_json::{Map, Value, json};
use sha2::{Digest, Sha256};
use std::fs::File;
use std::io::Read;
use std::path::Path;
use std::time::{Duration, Instant};

/// Bytes read at a time, as at both doors.
const PIECE: usize = 4 * 1024 * 1024;

/// One round. The digest is part of intake; afterwards it is taken once more alone, to show how large a part.
#[derive(Default)]
struct Round {
    read: Duration,
    intake: Duration,
    review: Duration,
    digest_alone: Duration,
    /// What reading, intake and review took of the processor, which other programs' work doesn't lengthen.
    processor: Option<Duration>,
}

type Step = fn(&Round) -> Option<Duration>;

const STEPS: [(&str, Step); 5] = [
    ("read_ms", |round| Some(round.read)),
    ("intake_ms", |round| Some(round.intake)),
    ("review_ms", |round| Some(round.review)),
    ("digest_alone_ms", |round| Some(round.digest_alone)),
    ("processor_ms", |round| round.processor),
];

/// Reads and reviews `file` so many `times`; the figures and the counts of outcomes as JSON.
pub(crate) fn measure(file: &Path, times: u32) -> Result<String, Failure> {
    let mut rounds = Vec::new();
    let mut last = None;
    for _ in 0..times {
        // The last round's memory is given back before the next asks for its own.
        drop(last.take());
        let (round, inspection) = one_round(file)?;
        rounds.push(round.0);
        last = Some((inspection, round.1));
    }
    let (inspection, findings) = last.ok_or("nothing to measure: no rounds were asked for")?;
    let source = inspection.sources.first().ok_or("no source was read")?;
    let report = json!({
        "file": source.name,
        "bytes": source.bytes,
        "sha256": source.sha256,
        "readings": findings.verdicts.len(),
        "rounds": rounds.iter().map(figures).collect::<Vec<_>>(),
        "median": Value::Object(
            STEPS.iter().map(|(name, step)| ((*name).to_owned(), json!(median(&rounds, *step)))).collect(),
        ),
        "peak_bytes": peak_bytes(),
        "substances": counts(
            &findings,
            Substance::ALL.iter().map(|substance| substance.symbol()),
            |at, verdicts| verdicts.substances.get(at).copied(),
        ),
        "halogens": counts(
            &findings,
            Halogen::ALL.iter().map(|halogen| halogen.name()),
            |at, verdicts| verdicts.halogens.get(at).copied(),
        ),
    });
    serde_json::to_string_pretty(&report).map_err(|error| error.to_string())
}

fn one_round(path: &Path) -> Result<((Round, Findings), Inspection), Failure> {
    let name = path.file_name().map_or_else(String::new, |name| name.to_string_lossy().into_owned());
    let mut inspection =
        Inspection::new().map_err(|problems| format!("built-in rule books: {problems:?}"))?;
    let mut round = Round::default();
    let before = processor_time();
    let mut reader = SourceReader::new(&name, &inspection.settings());
    each_piece(path, &mut round.read, |bytes| timed(&mut round.intake, || reader.push(bytes)))?;
    let sources = timed(&mut round.intake, || reader.finish());
    inspection.add_sources(sources);
    let findings = timed(&mut round.review, || inspection::review(&inspection));
    round.processor = before.and_then(|before| processor_time()?.checked_sub(before));
    let mut alone = Sha256::new();
    let mut unasked = Duration::ZERO;
    each_piece(path, &mut unasked, |bytes| timed(&mut round.digest_alone, || alone.update(bytes)))?;
    timed(&mut round.digest_alone, || alone.finalize());
    Ok(((round, findings), inspection))
}

/// Gives the file in pieces; `reading` gets the time that reading them took.
fn each_piece(path: &Path, reading: &mut Duration, mut take: impl FnMut(&[u8])) -> Result<(), Failure> {
    let cannot = |error: std::io::Error| format!("cannot read {}: {error}", path.display());
    let mut piece = vec![0; PIECE];
    let mut file = File::open(path).map_err(cannot)?;
    loop {
        let length = timed(reading, || fill(&mut file, &mut piece)).map_err(cannot)?;
        match piece.get(..length) {
            Some(bytes) if !bytes.is_empty() => take(bytes),
            _ => return Ok(()),
        }
    }
}

/// Fills the piece as far as the file goes: a short read would give smaller pieces than the page has.
fn fill(file: &mut File, piece: &mut [u8]) -> std::io::Result<usize> {
    let mut filled = 0;
    while let Some(rest) = piece.get_mut(filled..).filter(|rest| !rest.is_empty()) {
        match file.read(rest) {
            Ok(0) => break,
            Ok(length) => filled += length,
            Err(error) if error.kind() == std::io::ErrorKind::Interrupted => {}
            Err(error) => return Err(error),
        }
    }
    Ok(filled)
}

fn timed<T>(total: &mut Duration, step: impl FnOnce() -> T) -> T {
    let start = Instant::now();
    let made = step();
    *total += start.elapsed();
    made
}

fn milliseconds(duration: Duration) -> f64 {
    duration.as_micros() as f64 / 1000.0
}

fn figures(round: &Round) -> Value {
    let each = STEPS.iter().map(|(name, step)| ((*name).to_owned(), json!(step(round).map(milliseconds))));
    Value::Object(each.collect())
}

fn median(rounds: &[Round], step: Step) -> Option<f64> {
    let mut durations: Vec<Duration> = rounds.iter().filter_map(step).collect();
    durations.sort();
    let middle = durations.len() / 2;
    let upper = durations.get(middle).copied()?;
    if durations.len() % 2 == 1 {
        return Some(milliseconds(upper));
    }
    let lower = durations.get(middle.checked_sub(1)?).copied()?;
    Some(milliseconds((lower + upper) / 2))
}

/// How often each outcome came up, by name and outcome.
fn counts<'a>(
    findings: &Findings,
    names: impl Iterator<Item = &'a str>,
    outcome_of: impl Fn(usize, &inspection::Verdicts) -> Option<Outcome>,
) -> Value {
    let each = names.enumerate().map(|(at, name)| {
        let mut by_outcome = Map::new();
        for outcome in Outcome::ALL {
            let count = findings.verdicts.iter().filter(|one| outcome_of(at, one) == Some(outcome)).count();
            if count > 0 {
                by_outcome.insert(outcome.code().to_owned(), json!(count));
            }
        }
        (name.to_owned(), Value::Object(by_outcome))
    });
    Value::Object(each.collect())
}

/// What this process's one thread has had of the processor; none where the system doesn't tell (Linux does, in the
/// first number of schedstat, in nanoseconds).
fn processor_time() -> Option<Duration> {
    let text = std::fs::read_to_string("/proc/self/schedstat").ok()?;
    text.split_whitespace().next()?.parse().ok().map(Duration::from_nanos)
}

/// The most memory this process has held at once; none where the system doesn't tell (it does on Linux, proc(5)).
fn peak_bytes() -> Option<u64> {
    let status = std::fs::read_to_string("/proc/self/status").ok()?;
    let line = status.lines().find_map(|line| line.strip_prefix("VmHWM:"))?;
    let kibibytes: u64 = line.trim().strip_suffix("kB")?.trim().parse().ok()?;
    Some(kibibytes * 1024)
}

#[cfg(test)]
mod tests {
    use super::{Round, measure, median};
    use crate::invented_table;
    use std::time::Duration;

    fn measured(rows: u32, times: u32) -> serde_json::Value {
        let folder = std::env::temp_dir().join(format!("plumbline-measure-{}-{rows}", std::process::id()));
        let file = folder.join("invented.csv");
        invented_table::write(rows, &file).expect("a table");
        let text = measure(&file, times).expect("measured");
        std::fs::remove_dir_all(&folder).expect("gone again");
        serde_json::from_str(&text).expect("JSON")
    }

    #[test]
    fn the_median_of_an_even_number_lies_between_the_middle_two() {
        let of = |seconds: &[u64]| {
            let rounds: Vec<Round> = seconds
                .iter()
                .map(|seconds| Round { intake: Duration::from_secs(*seconds), ..Round::default() })
                .collect();
            median(&rounds, |round| Some(round.intake))
        };
        assert_eq!(of(&[]), None);
        assert_eq!(of(&[9, 1, 4]), Some(4000.0));
        assert_eq!(of(&[9, 1, 4, 5]), Some(4500.0));
    }

    #[test]
    fn every_round_has_every_step() {
        let report = measured(300, 3);
        let rounds = report["rounds"].as_array().expect("rounds");
        assert_eq!(rounds.len(), 3);
        for round in rounds.iter().chain([&report["median"]]) {
            for step in ["read_ms", "intake_ms", "review_ms", "digest_alone_ms"] {
                assert!(round[step].is_number(), "{step} in {round}");
            }
        }
    }

    #[test]
    fn every_reading_is_counted_once_under_every_substance() {
        let report = measured(500, 1);
        assert_eq!(report["readings"], 500);
        for group in ["substances", "halogens"] {
            for (name, outcomes) in report[group].as_object().expect("names") {
                let sum: u64 = outcomes
                    .as_object()
                    .expect("outcomes")
                    .values()
                    .filter_map(serde_json::Value::as_u64)
                    .sum();
                assert_eq!(sum, 500, "{group} {name}");
            }
        }
        assert_eq!(report["substances"].as_object().map(serde_json::Map::len), Some(5));
        assert_eq!(report["halogens"].as_object().map(serde_json::Map::len), Some(3));
    }

    #[test]
    fn a_file_that_is_not_there_is_told_by_name() {
        let said = measure(std::path::Path::new("/nowhere/at-all.csv"), 1).expect_err("no file");
        assert!(said.contains("at-all.csv"), "{said}");
    }
}
