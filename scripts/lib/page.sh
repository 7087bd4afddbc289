# shellcheck shell=bash
# Sourced. The page: the compiled core, then the one HTML file.

page=dist/plumbline.html

need_for_page() {
  need_wasm_target
  need_node
  npm_packages web
}

compile_core() { wasm_cargo build --release -p plumbline-wasm; }

# assemble_page FILE
assemble_page() {
  say_and_run cargo run --locked --quiet -p plumbline-tool -- page \
    --wasm "$wasm_folder/$wasm/release/plumbline_wasm.wasm" --out "$1"
}
