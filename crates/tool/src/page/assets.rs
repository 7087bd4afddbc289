//! The page's own scripts and style, bundled by esbuild.

use crate::Failure;
use std::io::Write;
use std::path::Path;
use std::process::{Command, Stdio};

/// The oldest browsers that can inflate the core by themselves (`DecompressionStream('deflate-raw')`).
const TARGET: &str = "--target=chrome103,firefox113,safari16.4";

/// A TypeScript entry and all it imports, as one plain script; words and styles it imports are texts in it.
pub(crate) fn script(web: &Path, entry: &str) -> Result<String, Failure> {
    esbuild(web, &["--bundle", "--format=iife", "--loader:.ftl=text", "--loader:.css=text", entry], "")
}

/// A CSS entry and all it imports, as one style sheet.
pub(crate) fn style(web: &Path, entry: &str) -> Result<String, Failure> {
    esbuild(web, &["--bundle", entry], "")
}

/// A script that is whole already: only made smaller, its top-level names kept.
pub(crate) fn minified_script(web: &Path, script: &str) -> Result<String, Failure> {
    esbuild(web, &["--loader=js"], script)
}

/// Any warning fails: esbuild warns, for one, where a script's meaning changes in the form we ask for.
fn esbuild(web: &Path, options: &[&str], input: &str) -> Result<String, Failure> {
    let cannot = |error: std::io::Error| format!("cannot run esbuild through node: {error}");
    let mut child = Command::new("node")
        .arg("node_modules/esbuild/bin/esbuild")
        .args([TARGET, "--charset=utf8", "--legal-comments=none", "--minify", "--log-level=warning"])
        .args(options)
        .current_dir(web)
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::piped())
        .spawn()
        .map_err(cannot)?;
    let mut stdin = child.stdin.take().ok_or("esbuild took no input")?;
    let sent = stdin.write_all(input.as_bytes());
    drop(stdin);
    let ran = child.wait_with_output().map_err(cannot)?;
    if !ran.status.success() || !ran.stderr.is_empty() {
        let said = String::from_utf8_lossy(&ran.stderr);
        // What follows is the trace of the package's own starter, not of our sources.
        let said = said.split("node:child_process").next().unwrap_or_default().trim_end();
        return Err(format!("esbuild {}\n{said}", options.join(" ")));
    }
    sent.map_err(cannot)?;
    String::from_utf8(ran.stdout).map_err(|error| format!("esbuild printed no UTF-8: {error}"))
}
