//! Who may import whom, and what the pure rooms never touch.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use plumbline_tests::places::in_project;

fn files(folder: &Path, ending: &str) -> Vec<PathBuf> {
    let mut found = Vec::new();
    let mut folders = vec![folder.to_owned()];
    while let Some(folder) = folders.pop() {
        let entries = fs::read_dir(&folder).unwrap_or_else(|error| panic!("{}: {error}", folder.display()));
        for entry in entries {
            let path = entry.expect("an entry").path();
            if path.is_dir() {
                folders.push(path);
            } else if path.extension().is_some_and(|found| found == ending) {
                found.push(path);
            }
        }
    }
    found.sort();
    found
}

fn read(path: &Path) -> String {
    fs::read_to_string(path).unwrap_or_else(|error| panic!("{}: {error}", path.display()))
}

/// A Rust file without its comments.
fn code(path: &Path) -> String {
    read(path)
        .lines()
        .map(|line| match line.find("//") {
            Some(at) if !line[..at].contains('"') => &line[..at],
            _ => line,
        })
        .collect::<Vec<_>>()
        .join("\n")
}

/// The names that follow a path such as `crate::` or `std::`, one by one or in braces.
fn names_after(code: &str, path: &str) -> BTreeSet<String> {
    let mut names = BTreeSet::new();
    for (at, _) in code.match_indices(path) {
        let before = code[..at].chars().next_back();
        if before.is_some_and(|c| c.is_alphanumeric() || c == '_' || c == ':') {
            continue;
        }
        let rest = &code[at + path.len()..];
        match rest.strip_prefix('{') {
            None => {
                names.insert(first_name(rest));
            }
            Some(group) => {
                let (mut depth, mut start, mut parts) = (0, 0, Vec::new());
                for (here, character) in group.char_indices() {
                    match character {
                        '{' => depth += 1,
                        '}' if depth == 0 => {
                            parts.push(&group[start..here]);
                            break;
                        }
                        '}' => depth -= 1,
                        ',' if depth == 0 => {
                            parts.push(&group[start..here]);
                            start = here + 1;
                        }
                        _ => {}
                    }
                }
                names.extend(parts.into_iter().map(first_name).filter(|name| !name.is_empty()));
            }
        }
    }
    names
}

fn first_name(text: &str) -> String {
    text.trim_start().chars().take_while(|c| c.is_alphanumeric() || *c == '_').collect()
}

/// What a crate's manifest names: dependencies of the build, and those of its tests.
fn dependencies(room: &str) -> (BTreeSet<String>, BTreeSet<String>) {
    let manifest: toml::Table =
        toml::from_str(&read(&in_project(&format!("crates/{room}/Cargo.toml")))).expect("a manifest");
    let names = |table: &str| -> BTreeSet<String> {
        manifest
            .get(table)
            .and_then(toml::Value::as_table)
            .into_iter()
            .flatten()
            .map(|(name, _)| name.clone())
            .collect()
    };
    let mut build = names("dependencies");
    build.extend(names("build-dependencies"));
    assert!(
        !manifest.contains_key("target"),
        "{room}: dependencies for one target only are not looked at here"
    );
    (build, names("dev-dependencies"))
}

#[test]
fn each_crate_imports_only_the_rooms_it_may() {
    let may: BTreeMap<&str, &[&str]> = BTreeMap::from([
        ("words", &[][..]),
        ("core", &["plumbline-words"][..]),
        ("intake", &["plumbline-core"][..]),
        ("workbook", &["plumbline-core"][..]),
        ("proof", &["plumbline-core", "plumbline-intake"][..]),
        ("lessons", &["plumbline-core"][..]),
        (
            "wasm",
            &[
                "plumbline-core",
                "plumbline-intake",
                "plumbline-workbook",
                "plumbline-proof",
                "plumbline-lessons",
            ][..],
        ),
        (
            "cli",
            &[
                "plumbline-words",
                "plumbline-core",
                "plumbline-intake",
                "plumbline-workbook",
                "plumbline-proof",
            ][..],
        ),
        ("tool", &["plumbline-words", "plumbline-core", "plumbline-intake", "plumbline-lessons"][..]),
    ]);
    let rooms: BTreeSet<String> = fs::read_dir(in_project("crates"))
        .expect("the rooms")
        .map(|entry| entry.expect("a room").file_name().to_string_lossy().into_owned())
        .collect();
    assert_eq!(rooms, may.keys().map(|room| (*room).to_owned()).collect());
    for (room, may) in may {
        let (build, tests) = dependencies(room);
        for name in build.iter().chain(&tests).filter(|name| name.starts_with("plumbline")) {
            assert!(may.contains(&name.as_str()), "{room} imports {name}");
        }
    }
}

#[test]
fn only_the_wasm_room_knows_the_browser() {
    for room in ["words", "core", "intake", "workbook", "proof", "lessons", "cli", "tool"] {
        let (build, tests) = dependencies(room);
        for name in [
            "wasm-bindgen",
            "js-sys",
            "web-sys",
            "serde-wasm-bindgen",
            "wasm-bindgen-test",
            "wasm-bindgen-futures",
        ] {
            assert!(!build.contains(name) && !tests.contains(name), "{room} imports {name}");
        }
    }
    assert!(dependencies("wasm").0.contains("wasm-bindgen"));
}

/// The modules of the core, each importing only those before it. (A formatter sorts the `mod` lines of `lib.rs`, so the
/// order stands here.)
const ORDER: [&str; 67] = [
    "quantity",
    "substance",
    "material",
    "oxide",
    "text_pool",
    "visible_text",
    "tabbed",
    "identity",
    "column",
    "date_order",
    "reading",
    "opened",
    "id_template",
    "duplicates",
    "statistics",
    "day",
    "instant",
    "data_file",
    "fields",
    "stated",
    "certificate",
    "sampling",
    "control",
    "exempt",
    "stoichiometry",
    "lines",
    "attenuation",
    "rules",
    "outcome",
    "laboratory",
    "screen",
    "interval",
    "halogen",
    "limit",
    "conformity",
    "pool",
    "composition",
    "thickness",
    "caution",
    "longer",
    "next_step",
    "lot",
    "undertaking",
    "photo",
    "history",
    "acts",
    "settings_file",
    "repeats",
    "judging",
    "trust",
    "claims",
    "settling",
    "change",
    "lot_sampling",
    "inspection",
    "streams",
    "learned",
    "site_table",
    "suppliers",
    "outlook",
    "locale",
    "words",
    "ruler",
    "chart",
    "oc_curve",
    "report",
    "papers",
];

fn declared_modules() -> BTreeSet<String> {
    code(&in_project("crates/core/src/lib.rs"))
        .lines()
        .filter_map(|line| line.trim().strip_prefix("pub mod ")?.strip_suffix(';').map(str::to_owned))
        .collect()
}

fn module_of(path: &Path) -> String {
    let inside = path.strip_prefix(in_project("crates/core/src")).expect("a file of the core");
    let first = inside.components().next().expect("a name").as_os_str().to_string_lossy().into_owned();
    first.trim_end_matches(".rs").to_owned()
}

#[test]
fn a_module_of_the_core_imports_only_modules_above_it() {
    assert_eq!(declared_modules(), ORDER.map(str::to_owned).into(), "a new module takes a place in ORDER");
    let place = |name: &str| ORDER.iter().position(|module| *module == name);
    let mut looked_at = BTreeSet::new();
    for path in files(&in_project("crates/core/src"), "rs") {
        let module = module_of(&path);
        if module == "lib" {
            continue;
        }
        let own = place(&module).unwrap_or_else(|| panic!("{module} has no place"));
        for used in names_after(&code(&path), "crate::") {
            let Some(used_at) = place(&used) else {
                panic!("{}: crate::{used} is no module", path.display())
            };
            assert!(used_at <= own, "{} imports {used}, which stands below {module}", path.display());
        }
        looked_at.insert(module);
    }
    assert_eq!(looked_at.len(), ORDER.len(), "every module was looked at");
}

#[test]
fn the_pure_rooms_touch_no_file_clock_thread_environment_or_screen() {
    for room in ["core", "intake", "workbook", "proof", "wasm"] {
        for path in files(&in_project(&format!("crates/{room}/src")), "rs") {
            let code = code(&path);
            let used = names_after(&code, "std::");
            for name in ["fs", "env", "time", "thread", "net", "process", "os", "path"] {
                assert!(!used.contains(name), "{} uses std::{name}", path.display());
            }
            for name in ["print!", "println!", "eprint!", "eprintln!", "dbg!", "include_bytes_from"] {
                let printed = code
                    .match_indices(name)
                    .any(|(at, _)| !code[..at].ends_with(|c: char| c.is_alphanumeric() || c == '_'));
                assert!(!printed, "{} uses {name}", path.display());
            }
            if room != "wasm" {
                for name in ["SystemTime", "Instant::now", "HashMap", "HashSet", "RandomState", "thread_rng"]
                {
                    let with_std = code.contains(name) && !code.contains(&format!("hashbrown::{name}"));
                    assert!(!with_std, "{} uses {name}", path.display());
                }
            }
        }
    }
}

/// The float functions whose last bit differs between native and wasm (webassembly has no such instructions; each
/// target brings its own).
#[test]
fn floats_that_differ_between_targets_come_from_libm() {
    for room in ["core", "intake", "workbook", "proof"] {
        for path in files(&in_project(&format!("crates/{room}/src")), "rs") {
            let code = code(&path);
            for name in [
                ".exp()",
                ".ln()",
                ".log10()",
                ".log2()",
                ".powf(",
                ".powi(",
                ".exp_m1()",
                ".ln_1p()",
                ".sin()",
                ".cos()",
            ] {
                assert!(!code.contains(name), "{} uses {name}", path.display());
            }
        }
    }
}

/// Paths a TypeScript file imports.
fn imports(text: &str) -> Vec<String> {
    let mut found = Vec::new();
    for (at, word) in text.match_indices("from").chain(text.match_indices("import")) {
        // A word of a text (`page-offer-from`) imports nothing.
        let inside =
            text[..at].chars().next_back().is_some_and(|c| c.is_alphanumeric() || "-_.\"'".contains(c));
        if inside {
            continue;
        }
        let rest = text[at + word.len()..].trim_start().trim_start_matches('(').trim_start();
        let Some(quote) = rest.chars().next().filter(|c| matches!(c, '"' | '\'' | '`')) else { continue };
        if let Some(end) = rest[1..].find(quote) {
            found.push(rest[1..=end].to_owned());
        }
    }
    found
}

fn ends_in(path: &str, ending: &str) -> bool {
    Path::new(path).extension().is_some_and(|its| its == ending)
}

#[test]
fn the_page_and_the_worker_meet_only_in_what_they_share() {
    let top = in_project("web/src");
    if !top.is_dir() {
        println!("web/src is not there: nothing to look at");
        return;
    }
    for (room, may) in
        [("page", ["page", "shared"]), ("worker", ["worker", "shared"]), ("shared", ["shared", "shared"])]
    {
        let files = files(&top.join(room), "ts");
        assert!(!files.is_empty(), "{room} is empty");
        for path in files {
            for import in imports(&read(&path)) {
                if !import.starts_with('.') {
                    // Words, and the one large part that a browser can't unpack by itself.
                    let known = room == "page" && import == "@fluent/bundle";
                    assert!(known, "{} imports the package {import}", path.display());
                    continue;
                }
                let mut place: Vec<String> = path
                    .strip_prefix(&top)
                    .expect("below web/src")
                    .parent()
                    .into_iter()
                    .flat_map(Path::components)
                    .map(|part| part.as_os_str().to_string_lossy().into_owned())
                    .collect();
                let mut outside = 0;
                for part in import.split('/') {
                    match part {
                        "." => {}
                        ".." => outside += usize::from(place.pop().is_none()),
                        name => place.push(name.to_owned()),
                    }
                }
                if outside > 0 {
                    // The catalogue of words is the one thing the page reads from another room.
                    let words = place.join("/");
                    let catalogue =
                        room == "page" && words.starts_with("crates/words/") && ends_in(&words, "ftl");
                    assert!(catalogue, "{} imports {import}", path.display());
                    continue;
                }
                // A style that travels packed is a text to the script; only the page shows any.
                let packed_style = room == "page" && place[0] == "styles" && ends_in(&import, "css");
                assert!(
                    packed_style || may.contains(&place[0].as_str()),
                    "{} imports {import}",
                    path.display()
                );
            }
        }
    }
}

#[test]
fn every_message_to_the_worker_carries_its_generation() {
    let path = in_project("web/src/shared/messages.ts");
    if !path.exists() {
        println!("web/src is not there: nothing to look at");
        return;
    }
    let text = read(&path);
    for name in ["ToWorker", "FromWorker"] {
        let at = text
            .find(&format!("export type {name}"))
            .unwrap_or_else(|| panic!("{name} is not in messages.ts"));
        let declared: String = text[at..].chars().take_while(|c| *c != ';').collect();
        assert!(text[at..at + declared.len() + 40].contains("gen: number"), "{name}: {declared}");
    }
}

#[test]
fn the_scan_sees_what_it_looks_for() {
    let names = names_after(
        "use std::{fs, collections::{BTreeMap, HashMap}, io};\nstd::env::var(x); mystd::time",
        "std::",
    );
    assert_eq!(names, ["collections", "env", "fs", "io"].map(str::to_owned).into());
    assert_eq!(
        imports("import { a } from \"./b\";\nexport * from '../c/d';\nconst x = await import(\"./e\");"),
        ["./b", "../c/d", "./e"]
    );
}
