//! Where things stand in the project.

use std::path::PathBuf;

/// A path below the project's top folder.
pub fn in_project(path: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("..").join(path)
}

/// A path below `tests/`.
pub fn in_tests(path: &str) -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(path)
}

/// Real tables that stand beside the project, or where `PLUMBLINE_OPEN_DATA` says; nothing where they are absent.
pub fn open_data() -> Option<PathBuf> {
    let told = std::env::var_os("PLUMBLINE_OPEN_DATA").map(PathBuf::from);
    ["../../shared/open-data", "../shared/open-data"]
        .iter()
        .map(|path| PathBuf::from(env!("CARGO_MANIFEST_DIR")).join(path))
        .chain(told)
        .find(|path| path.is_dir())
}
