//! The compiled core made smaller and faster by binaryen's optimiser.

use crate::Failure;
use std::path::Path;
use std::process::Command;

/// Everything the compiler may use and the oldest supported browsers understand (Chrome 103, Firefox 113,
/// Safari 16.4); anything newer in the module is then an error here and not a blank page at a customer's.
const FEATURES: [&str; 7] = [
    "--mvp-features",
    "--enable-bulk-memory",
    "--enable-nontrapping-float-to-int",
    "--enable-sign-ext",
    "--enable-mutable-globals",
    "--enable-multivalue",
    "--enable-reference-types",
];

/// Runs the optimiser that the npm package ships; it reads and writes files, so it gets a folder of its own.
pub(crate) fn optimise(web: &Path, wasm: &[u8]) -> Result<Vec<u8>, Failure> {
    let folder = web.join("generated");
    let (before, after) = (folder.join("bound.wasm"), folder.join("optimised.wasm"));
    super::write(&before, wasm)?;
    let ran = Command::new("node")
        .arg(web.join("node_modules/binaryen/bin/wasm-opt"))
        .args(FEATURES)
        .args(["-O3", "--strip-debug", "--strip-producers", "--strip-target-features", "-o"])
        .args([&after, &before])
        .output()
        .map_err(|error| format!("cannot start wasm-opt through node: {error}"))?;
    if !ran.status.success() {
        return Err(format!("wasm-opt: {}\n{}", ran.status, String::from_utf8_lossy(&ran.stderr)));
    }
    std::fs::read(&after).map_err(|error| format!("cannot read {}: {error}", after.display()))
}
