//! A case as it lies on the disk. Only the standard library, so that the command line's own tests read cases too.

use std::fs;
use std::path::{Path, PathBuf};

/// One case.
#[derive(Clone, Debug)]
pub struct Case {
    /// `area/case`.
    pub name: String,
    /// Its folder.
    pub folder: PathBuf,
    /// What it shows, with the clause.
    pub about: String,
    /// The settings file, where there is one.
    pub settings: Option<String>,
    /// The rule book, where there is one.
    pub rules: Option<String>,
    /// The history, where there is one.
    pub history: Option<String>,
    /// The input: names inside the folder with their bytes, sorted by name.
    pub files: Vec<(String, Vec<u8>)>,
}

/// All cases below a folder, sorted by name.
pub fn cases(top: &Path) -> Vec<Case> {
    let mut cases = Vec::new();
    for area in folders(top) {
        for folder in folders(&area) {
            cases.push(load(top, &folder));
        }
    }
    cases
}

fn load(top: &Path, folder: &Path) -> Case {
    let text = |name: &str| {
        let path = folder.join(name);
        path.exists()
            .then(|| fs::read_to_string(&path).unwrap_or_else(|error| panic!("{}: {error}", path.display())))
    };
    let name = folder.strip_prefix(top).unwrap_or(folder).to_string_lossy().replace('\\', "/");
    let mut files = Vec::new();
    walk(&folder.join("input"), "", &mut files);
    Case {
        about: text("about.txt").unwrap_or_else(|| panic!("{name} has no about.txt")).trim().to_owned(),
        settings: text("settings.toml"),
        rules: text("rules.toml"),
        history: text("history.txt"),
        name,
        folder: folder.to_owned(),
        files,
    }
}

fn walk(folder: &Path, inside: &str, files: &mut Vec<(String, Vec<u8>)>) {
    for entry in entries(folder) {
        let name = entry.file_name().unwrap_or_default().to_string_lossy().into_owned();
        let name = if inside.is_empty() { name } else { format!("{inside}/{name}") };
        if entry.is_dir() {
            walk(&entry, &name, files);
        } else {
            let bytes = fs::read(&entry).unwrap_or_else(|error| panic!("{}: {error}", entry.display()));
            files.push((name, bytes));
        }
    }
}

fn folders(folder: &Path) -> Vec<PathBuf> {
    entries(folder).into_iter().filter(|entry| entry.is_dir()).collect()
}

fn entries(folder: &Path) -> Vec<PathBuf> {
    let read = fs::read_dir(folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
    let mut paths: Vec<PathBuf> =
        read.map(|entry| entry.expect("a folder that can be listed").path()).collect();
    paths.sort();
    paths
}
