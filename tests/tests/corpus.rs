//! The small files that a search for failures starts from, and what it once found: each holds, whatever was set.

use std::fs;

use plumbline_tests::fuzz::check::{check, check_under_settings};
use plumbline_tests::places::in_tests;

#[test]
fn every_file_of_the_corpus_holds_whatever_was_set() {
    let mut paths: Vec<_> = fs::read_dir(in_tests("corpus"))
        .expect("the corpus")
        .map(|entry| entry.expect("an entry").path())
        .collect();
    paths.sort();
    assert!(!paths.is_empty() && paths.len() <= 80, "{} files", paths.len());
    let mut size = 0;
    for (turn, path) in paths.into_iter().enumerate() {
        let bytes = fs::read(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display()));
        println!("{}", path.display());
        size += bytes.len();
        check_under_settings(&bytes, turn);
        assert!(!check(&bytes).is_empty());
    }
    assert!(size <= 200 * 1024, "{size} bytes");
}
