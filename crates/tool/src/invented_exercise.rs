//! An invented delivery to practise on, from a seed: the same that the page opens for it.

use crate::Failure;
use plumbline_core::rules::RuleBooks;
use plumbline_lessons::{TextFile, whole};
use std::path::Path;

/// Writes the delivery of a seed into a folder: its table, its settings, and a note.
pub(crate) fn write(seed: u64, out: &Path) -> Result<(), Failure> {
    let books = RuleBooks::built_in().map_err(|problems| format!("{problems:?}"))?;
    let delivery = whole(&books, seed).ok_or("the rule books lack what the exercise is about")?;
    let note = TextFile { name: "README.md".to_owned(), text: note(seed, &delivery.results.name) };
    std::fs::create_dir_all(out).map_err(|error| format!("cannot make {}: {error}", out.display()))?;
    for file in [&delivery.results, &delivery.settings, &note] {
        let path = out.join(&file.name);
        std::fs::write(&path, &file.text)
            .map_err(|error| format!("cannot write {}: {error}", path.display()))?;
    }
    Ok(())
}

fn note(seed: u64, results: &str) -> String {
    format!(
        "# Exercise from seed {seed}\n\nEverything here is invented: the supplier, the lot and every number. Decide for yourself first \
         what becomes of the lot, then review it:\n\n```\nplumbline review --out OUT --settings settings.toml {results}\n```\n\n\
         The answer is nowhere in these files: it is what the review says.\n"
    )
}

#[cfg(test)]
mod tests {
    use super::write;

    #[test]
    fn three_files_are_written_and_all_say_that_they_are_invented() {
        let folder = std::env::temp_dir().join(format!("plumbline-exercise-{}", std::process::id()));
        let done = write(4711, &folder);
        let text = |name: &str| std::fs::read_to_string(folder.join(name)).unwrap_or_default();
        let (results, settings, note) = (text("invented-4711.csv"), text("settings.toml"), text("README.md"));
        std::fs::remove_dir_all(&folder).expect("cleared");
        assert_eq!(done, Ok(()));
        assert!(results.starts_with("Sample,Unit,") && results.lines().count() > 4, "{results}");
        assert!(settings.starts_with("# Invented data.\n") && note.contains("Everything here is invented"));
    }
}
