//! Keeps the builder's folders out of the page: panic texts carry the source paths that the compiler saw, which
//! tell about a machine and make the same sources give another page elsewhere.

use crate::Failure;
use std::path::{Path, PathBuf};

/// Where sources are compiled from: the project, and cargo's copies of what it depends on.
pub(crate) fn of_this_machine(workspace: &Path) -> Vec<PathBuf> {
    let folder = |name: &str| std::env::var_os(name).map(PathBuf::from);
    let cargo = folder("CARGO_HOME").or_else(|| folder("HOME").map(|home| home.join(".cargo")));
    std::iter::once(workspace.to_path_buf()).chain(cargo).collect()
}

pub(crate) fn none_of_this_machine(module: &[u8], paths: &[PathBuf]) -> Result<(), Failure> {
    let found = paths.iter().find(|path| {
        let path = path.as_os_str().as_encoded_bytes();
        path.len() > 1 && module.windows(path.len()).any(|bytes| bytes == path)
    });
    match found {
        None => Ok(()),
        Some(path) => Err(format!(
            "the module holds the path {}; compile it with --remap-path-prefix, as scripts/build does",
            path.display()
        )),
    }
}

#[cfg(test)]
mod tests {
    use super::none_of_this_machine;
    use std::path::PathBuf;

    #[test]
    fn a_path_of_the_builder_in_the_module_stops_the_build() {
        let paths = [PathBuf::from("/builder/plumbline"), PathBuf::from("/builder/.cargo")];
        let clean = b"\0asm cargo-home/registry/src/csv.rs plumbline/crates";
        let leaking = b"\0asm /builder/.cargo/registry/src/csv.rs";
        assert!(none_of_this_machine(clean, &paths).is_ok());
        assert!(none_of_this_machine(leaking, &paths).is_err_and(|said| said.contains("/builder/.cargo")));
    }
}
