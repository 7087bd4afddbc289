//! Tries changed files on the whole of intake, for as long as it is told.
//!
//! `cargo run -p plumbline-tests --bin fuzz_intake --profile fuzz -- --minutes 60 --corpus tests/corpus`
//!
//! Failures are written, made smaller, to `--failures` (`target/fuzz-failures`); `--once FILE` tries one file;
//! `--make-corpus FOLDER` writes surface forms as a corpus.

// The one place of the tests that needs a clock: it stops by it, and a file that takes too long is a find.
#![allow(clippy::disallowed_methods)]

use std::collections::BTreeSet;
use std::fs;
use std::panic::{self, AssertUnwindSafe};
use std::path::{Path, PathBuf};
use std::sync::{Arc, Mutex};
use std::thread;
use std::time::{Duration, Instant};

use plumbline_tests::chance::Chance;
use plumbline_tests::fuzz::input::Input;
use plumbline_tests::fuzz::{changed, check, smaller, tokens};
use plumbline_tests::surface::forms;

/// A file that takes longer is a find, for each mebibyte begun.
const TOO_LONG: Duration = Duration::from_mins(1);
/// Seeds that are kept beside the corpus.
const MOST_SEEDS: usize = 4000;

struct Options {
    minutes: u64,
    corpus: PathBuf,
    failures: PathBuf,
    seed: u64,
    once: Option<PathBuf>,
    make_corpus: Option<PathBuf>,
}

fn options() -> Options {
    let mut options = Options {
        minutes: 1,
        corpus: "tests/corpus".into(),
        failures: "target/fuzz-failures".into(),
        seed: 1,
        once: None,
        make_corpus: None,
    };
    let mut arguments = std::env::args().skip(1);
    while let Some(name) = arguments.next() {
        let value = arguments.next().unwrap_or_else(|| panic!("{name} needs a value"));
        match name.as_str() {
            "--minutes" => options.minutes = value.parse().expect("minutes"),
            "--corpus" => options.corpus = value.into(),
            "--failures" => options.failures = value.into(),
            "--seed" => options.seed = value.parse().expect("a seed"),
            "--once" => options.once = Some(value.into()),
            "--make-corpus" => options.make_corpus = Some(value.into()),
            _ => panic!("unknown option {name}"),
        }
    }
    options
}

/// What was said by the panic of a failed check, with its place.
static SAID: Mutex<String> = Mutex::new(String::new());

/// What a file showed, or how it failed.
fn attempt(bytes: &[u8]) -> Result<BTreeSet<u64>, String> {
    panic::catch_unwind(AssertUnwindSafe(|| check::check(bytes)))
        .map_err(|_| SAID.lock().map_or_else(|poisoned| poisoned.into_inner().clone(), |said| said.clone()))
}

/// The place of a failure, which tells one from another.
fn place(said: &str) -> String {
    said.lines().next().unwrap_or("").to_owned()
}

/// The file at hand and since when, for the thread that watches.
type AtHand = Arc<Mutex<Option<(Duration, Vec<u8>)>>>;

/// How long the first thread has been running: on a busy machine that is less than what a clock on the wall shows.
fn running(began: Instant) -> Duration {
    let on_linux = fs::read_to_string("/proc/self/schedstat").ok();
    let nanoseconds = on_linux.and_then(|text| text.split(' ').next()?.parse().ok());
    nanoseconds.map_or_else(|| began.elapsed(), Duration::from_nanos)
}

fn watch(at_hand: AtHand, failures: PathBuf, began: Instant) {
    thread::spawn(move || {
        loop {
            thread::sleep(Duration::from_millis(500));
            let Ok(at_hand) = at_hand.lock() else { return };
            if let Some((since, bytes)) = at_hand.as_ref() {
                let allowed = TOO_LONG * (1 + (bytes.len() >> 20) as u32);
                if running(began).saturating_sub(*since) > allowed {
                    let path = failures.join(format!("too-long-{}.bin", bytes.len()));
                    let _ = fs::write(&path, bytes);
                    println!("TOO LONG: {} bytes, over {allowed:?}: {}", bytes.len(), path.display());
                    std::process::exit(1);
                }
            }
        }
    });
}

fn main() {
    let options = options();
    if let Some(folder) = &options.make_corpus {
        make_corpus(folder);
        return;
    }
    panic::set_hook(Box::new(|info| {
        let place =
            info.location().map_or_else(String::new, |place| format!("{}:{}", place.file(), place.line()));
        let message = info.payload_as_str().unwrap_or("").to_owned();
        if let Ok(mut said) = SAID.lock() {
            *said = format!("{place}\n{message}");
        }
    }));
    if let Some(path) = &options.once {
        let bytes = fs::read(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        match attempt(&bytes) {
            Ok(shown) => println!("holds; {} signals", shown.len()),
            Err(said) => {
                println!("FAILS at {said}");
                std::process::exit(1);
            }
        }
        return;
    }
    fs::create_dir_all(&options.failures).expect("a folder for failures");
    let mut seeds = read_corpus(&options.corpus);
    let words = tokens::words();
    println!("{} files, {} words", seeds.len(), words.len());
    let began = Instant::now();
    let at_hand: AtHand = Arc::default();
    watch(Arc::clone(&at_hand), options.failures.clone(), began);
    let mut chance = Chance::new(options.seed);
    let mut shown = BTreeSet::new();
    let mut failed: BTreeSet<String> = BTreeSet::new();
    let corpus = seeds.len();
    let (mut tried, mut told) = (0_u64, 0);
    while began.elapsed() < Duration::from_secs(options.minutes * 60) {
        let input = if (tried as usize) < corpus {
            seeds[tried as usize].clone()
        } else {
            changed(&seeds, &words, &mut chance)
        };
        tried += 1;
        let bytes = input.bytes();
        // Kept before it is tried: where the stack runs out, no other trace is left.
        let _ = fs::write(options.failures.join("at-hand.bin"), &bytes);
        if let Ok(mut at_hand) = at_hand.lock() {
            *at_hand = Some((running(began), bytes.clone()));
        }
        match attempt(&bytes) {
            Ok(found) => {
                let before = shown.len();
                shown.extend(found);
                if shown.len() > before && bytes.len() < 40_000 {
                    if seeds.len() < corpus + MOST_SEEDS {
                        seeds.push(input);
                    } else {
                        let at = corpus + chance.below(MOST_SEEDS);
                        seeds[at] = input;
                    }
                }
            }
            Err(said) => {
                if failed.insert(place(&said)) {
                    if let Ok(mut at_hand) = at_hand.lock() {
                        *at_hand = None;
                    }
                    keep(&options.failures, &bytes, &said, failed.len());
                }
            }
        }
        if let Ok(mut at_hand) = at_hand.lock() {
            *at_hand = None;
        }
        let minutes = began.elapsed().as_secs() / 60;
        if minutes > told {
            told = minutes;
            println!(
                "{minutes} min: {tried} files tried, {} signals, {} seeds, {} kinds of failure",
                shown.len(),
                seeds.len(),
                failed.len()
            );
        }
    }
    println!("{tried} files in {} minutes; {} kinds of failure", options.minutes, failed.len());
    std::process::exit(i32::from(!failed.is_empty()));
}

fn keep(folder: &Path, bytes: &[u8], said: &str, number: usize) {
    let wanted = place(said);
    // Whether the pieces are cut depends on the bytes, so a smaller file must fail at the same place to count.
    let small = smaller(bytes, |candidate| attempt(candidate).is_err_and(|said| place(&said) == wanted));
    let path = folder.join(format!("failure-{number}.bin"));
    let _ = fs::write(&path, &small);
    let _ = fs::write(folder.join(format!("failure-{number}.txt")), said);
    println!("FAILURE {number}: {} bytes in {}\n{said}", small.len(), path.display());
}

fn read_corpus(folder: &Path) -> Vec<Input> {
    let mut paths: Vec<PathBuf> = fs::read_dir(folder)
        .unwrap_or_else(|error| panic!("{}: {error}", folder.display()))
        .map(|entry| entry.expect("an entry").path())
        .filter(|path| path.is_file())
        .collect();
    paths.sort();
    assert!(!paths.is_empty(), "{} is empty", folder.display());
    paths
        .iter()
        .map(|path| Input::of(fs::read(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))))
        .collect()
}

/// One small file of every kind of form: every third of them, the short ones.
fn make_corpus(folder: &Path) {
    fs::create_dir_all(folder).expect("a folder");
    let mut files: Vec<(String, Vec<u8>)> =
        forms().iter().map(plumbline_tests::surface::Form::file).collect();
    files.retain(|(_, bytes)| bytes.len() < 4_500);
    for (at, (name, bytes)) in files.iter().step_by(2).take(60).enumerate() {
        let ending = name.rsplit_once('.').map_or("bin", |(_, ending)| ending);
        let path = folder.join(format!("form-{at:02}.{ending}"));
        fs::write(&path, bytes).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
    }
}
