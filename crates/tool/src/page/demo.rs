//! The invented deliveries that travel inside the page.

use crate::Failure;
use std::collections::BTreeMap;
use std::path::Path;

/// File name (inside the delivery, with `/`) to text.
type Files = BTreeMap<String, String>;

/// Delivery (its folder's name) to files, both sorted by name so that the page's bytes do not depend on the
/// order in which a disk lists them.
pub(crate) fn deliveries(folder: &Path) -> Result<BTreeMap<String, Files>, Failure> {
    let mut deliveries = BTreeMap::new();
    for entry in list(folder)? {
        if entry.path.is_dir() {
            let mut files = Files::new();
            gather(&entry.path, "", &mut files)?;
            deliveries.insert(entry.name, files);
        }
    }
    Ok(deliveries)
}

/// The form the page reads: `{delivery: {file: text}}`.
pub(crate) fn as_json(deliveries: &BTreeMap<String, Files>) -> Result<Vec<u8>, Failure> {
    serde_json::to_vec(deliveries).map_err(|error| format!("demo deliveries as JSON: {error}"))
}

fn gather(folder: &Path, inside: &str, files: &mut Files) -> Result<(), Failure> {
    for entry in list(folder)? {
        let name = format!("{inside}{}", entry.name);
        if entry.path.is_dir() {
            gather(&entry.path, &format!("{name}/"), files)?;
        } else {
            files.insert(name, super::read_text(&entry.path)?);
        }
    }
    Ok(())
}

struct Entry {
    name: String,
    path: std::path::PathBuf,
}

fn list(folder: &Path) -> Result<Vec<Entry>, Failure> {
    let cannot = |error: std::io::Error| format!("cannot list {}: {error}", folder.display());
    let mut entries = Vec::new();
    for entry in std::fs::read_dir(folder).map_err(cannot)? {
        let path = entry.map_err(cannot)?.path();
        let name = path.file_name().and_then(|name| name.to_str());
        let name = name.ok_or_else(|| format!("{} has a name that is not text", path.display()))?.to_owned();
        entries.push(Entry { name, path });
    }
    Ok(entries)
}

#[cfg(test)]
mod tests {
    use super::{as_json, deliveries};
    use std::fs;

    #[test]
    fn deliveries_and_files_come_sorted_and_loose_files_stay_out() {
        let folder = std::env::temp_dir().join(format!("plumbline-demo-{}", std::process::id()));
        fs::create_dir_all(folder.join("beta/inner")).expect("folders");
        fs::create_dir_all(folder.join("alpha")).expect("folders");
        for (name, text) in [
            ("README.md", "loose"),
            ("beta/inner/z.csv", "1,2\r\n"),
            ("beta/settings.toml", "a = 1\n"),
            ("alpha/r.csv", "µg/g"),
        ] {
            fs::write(folder.join(name), text).expect("a file");
        }
        let json = deliveries(&folder).and_then(|found| as_json(&found));
        fs::remove_dir_all(&folder).expect("cleared");
        assert_eq!(
            String::from_utf8(json.expect("read")).expect("UTF-8"),
            "{\"alpha\":{\"r.csv\":\"µg/g\"},\"beta\":{\"inner/z.csv\":\"1,2\\r\\n\",\"settings.toml\":\"a = 1\\n\"}}"
        );
    }
}
