//! From the parts to the one HTML file.

mod assets;
mod demo;
mod glue;
mod languages;
mod optimise;
mod packing;
mod paths;
mod template;

use crate::Failure;
use sha2::{Digest, Sha256};
use std::path::Path;

/// What the program in English may weigh: it travels on sticks and in mail, where a quarter of a megabyte more or less is
/// nothing, but a page is read from its first byte to its last at every start. The core takes six parts in seven of it.
const BUDGET_BYTES: usize = 2_200_000;
/// What each further language may add, packed until it is chosen.
const LANGUAGE_BYTES: usize = 100_000;

/// Builds the page at `out` and says what it weighs.
pub(crate) fn build(workspace: &Path, wasm: &Path, out: &Path) -> Result<(), Failure> {
    let web = workspace.join("web");
    let bound = glue::bind(wasm)?;
    write(&web.join("generated/plumbline_wasm.d.ts"), bound.types.as_bytes())?;
    let optimised = optimise::optimise(&web, &bound.wasm)?;
    paths::none_of_this_machine(&optimised, &paths::of_this_machine(workspace))?;
    let wasm_text = packing::deflated(&optimised);

    let glue_text = assets::minified_script(&web, &bound.script)?;
    let worker_script = format!("{glue_text}\n{}", assets::script(&web, "src/worker/main.ts")?);
    let deliveries = demo::deliveries(&workspace.join("demo-data"))?;
    let words_text = languages::packed()?;
    let demo_text = packing::deflated(&demo::as_json(&deliveries)?);
    let worker_text = packing::deflated(worker_script.as_bytes());
    let page_script = assets::script(&web, "src/page/main.ts")?;
    let page_text = packing::deflated(page_script.as_bytes());
    let unpacker = assets::script(&web, "src/page/unpack.ts")?;
    let style = assets::style(&web, "src/styles.css")?;

    let html = template::fill(
        &read_text(&web.join("index.html"))?,
        &[
            ("style", template::style(&style)?),
            ("wasm", template::inert("plumbline-wasm", &wasm_text)),
            ("worker", template::inert("plumbline-worker", &worker_text)),
            ("demo", template::inert("plumbline-demo", &demo_text)),
            ("words", words_text.iter().map(|(_, element)| element.as_str()).collect()),
            ("page", template::inert("plumbline-page", &page_text)),
            ("unpack", template::script(&unpacker)),
        ],
    )?;
    write(out, html.as_bytes())?;

    let line = |what: &str, bytes: usize| println!("{bytes:>9} bytes  {what}");
    line("wasm from the glue maker", bound.wasm.len());
    line("wasm optimised", optimised.len());
    line("wasm in the page (packed, seven bits a character)", wasm_text.len());
    line("worker script", worker_script.len());
    line("page script", page_script.len());
    line("page script in the page", page_text.len());
    line("style", style.len());
    line(&format!("demo deliveries in the page ({})", deliveries.len()), demo_text.len());
    for (tag, element) in &words_text {
        line(&format!("{tag}, of {LANGUAGE_BYTES} allowed for a language"), element.len());
    }
    let english = html.len() - words_text.iter().map(|(_, element)| element.len()).sum::<usize>();
    line(&format!("the program in English, of {BUDGET_BYTES} allowed"), english);
    line(&out.display().to_string(), html.len());
    println!("SHA-256 {}", hex(&Sha256::digest(html.as_bytes())));
    if english > BUDGET_BYTES {
        return Err(format!("the program weighs {english} bytes, more than the {BUDGET_BYTES} allowed"));
    }
    if let Some((tag, element)) = words_text.iter().find(|(_, element)| element.len() > LANGUAGE_BYTES) {
        return Err(format!("{tag} weighs {} bytes, more than the {LANGUAGE_BYTES} allowed", element.len()));
    }
    Ok(())
}

fn hex(digest: &[u8]) -> String {
    use std::fmt::Write;
    digest.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

fn read_text(path: &Path) -> Result<String, Failure> {
    std::fs::read_to_string(path).map_err(|error| format!("cannot read {}: {error}", path.display()))
}

fn write(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let cannot = |error: std::io::Error| format!("cannot write {}: {error}", path.display());
    if let Some(folder) = path.parent() {
        std::fs::create_dir_all(folder).map_err(cannot)?;
    }
    std::fs::write(path, bytes).map_err(cannot)
}
