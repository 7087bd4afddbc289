//! The script that stands between JavaScript and the compiled core, made by wasm-bindgen as a library.

use crate::Failure;
use std::path::Path;
use wasm_bindgen_cli_support::Bindgen;

/// The compiled core, ready to be called, with its script and its TypeScript declarations.
pub(crate) struct Bound {
    pub(crate) wasm: Vec<u8>,
    pub(crate) script: String,
    pub(crate) types: String,
}

/// Binds the module in the form without ES modules: one function expression that a classic worker can carry as
/// text, and evaluate again for a fresh instance. Module workers do not start at file:// in every browser.
pub(crate) fn bind(wasm: &Path) -> Result<Bound, Failure> {
    let failed = |error: &dyn std::fmt::Display| format!("wasm-bindgen on {}: {error:#}", wasm.display());
    let mut bindgen = Bindgen::new();
    bindgen.input_path(wasm).out_name("plumbline_wasm").typescript(true);
    // The page hands the module over itself; nothing is ever fetched from a path.
    bindgen.omit_default_module_path(true);
    let mut output =
        bindgen.no_modules(true).and_then(Bindgen::generate_output).map_err(|error| failed(&error))?;
    if output.snippets().values().any(|scripts| !scripts.is_empty()) || !output.local_modules().is_empty() {
        return Err(failed(&"a crate brings JavaScript files of its own, which one page cannot hold"));
    }
    let types = output.ts().ok_or_else(|| failed(&"no TypeScript declarations came out"))?.to_owned();
    Ok(Bound { script: output.js().to_owned(), types, wasm: output.wasm_mut().emit_wasm() })
}
