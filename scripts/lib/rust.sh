# shellcheck shell=bash
# Sourced. The Rust compiler, and the two ways to compile the core for the browser.

wasm=wasm32-unknown-unknown
wasm_folder=target/wasm
no_target_note=$wasm_folder/no-rustup-target
debian_packages="rustc-web cargo-web rust-web-src"

need_rust() {
  command -v cargo >/dev/null && command -v rustc >/dev/null && return
  install_or_advise "Rust 1.95 or newer" "Install it with rustup (the page rustup.rs says how), then run this again." \
    rustc-web cargo-web
}

# Leaves this machine able to compile for the browser, whichever way it takes.
need_wasm_target() {
  need_rust
  if [ "$(wasm_route)" = plain ]; then return; fi
  if [ "${PLUMBLINE_WASM_ROUTE:-}" != debian ] && fetch_rustup_target; then return; fi
  need_debian_rust
}

# plain: the compiler on the path has the target. debian: Debian's compiler builds the standard library with ours.
# PLUMBLINE_WASM_ROUTE=debian takes the second way even where the first is open.
wasm_route() {
  local libraries
  libraries=$(rustc --print target-libdir --target $wasm 2>/dev/null) || libraries=
  if [ "${PLUMBLINE_WASM_ROUTE:-}" != debian ] && compgen -G "$libraries/libstd-*.rlib" >/dev/null; then
    say plain
  else
    say debian
  fi
}

# A machine that cannot fetch the target should find that out once, not at every build.
fetch_rustup_target() {
  command -v rustup >/dev/null || return 1
  if [ -e $no_target_note ]; then
    say "rustup could not fetch $wasm before; to try again, delete $no_target_note"
    return 1
  fi
  local limit=
  if command -v timeout >/dev/null; then limit="timeout 60"; fi
  # shellcheck disable=SC2086 # two words on purpose
  if say_and_run $limit rustup target add $wasm && [ "$(wasm_route)" = plain ]; then return; fi
  mkdir -p $wasm_folder
  date >$no_target_note
  return 1
}

need_debian_rust() {
  local advice="Install the target with: rustup target add $wasm"
  if [ ! -x /usr/bin/cargo ] || [ ! -x /usr/bin/rustc ] || [ ! -e /usr/lib/rustlib/src/rust/library/std/Cargo.toml ]; then
    # shellcheck disable=SC2086 # a list of packages
    install_or_advise "a Rust compiler for $wasm" "$advice" $debian_packages
  fi
  [ -z "$(wasm_linker)" ] || return 0
  # Debian's rust-lld is a link into a package that its own package does not ask for.
  install_or_advise "a linker for $wasm" "$advice" rust-web-llvm
  install_or_advise "a linker for $wasm" "$advice" "$(basename "$(readlink /usr/bin/rust-lld)")"
}

wasm_linker() {
  local candidate
  for candidate in "$(rustc --print sysroot)"/lib/rustlib/*/bin/rust-lld /usr/bin/rust-lld; do
    if [ -x "$candidate" ]; then
      say "$candidate"
      return
    fi
  done
}

# Panic texts of dependencies carry source paths. None of this machine's may stay in the module, nor the name of the
# registry it happened to use: the page would tell about the machine and differ from one built elsewhere.
renamed_paths() {
  local home=${CARGO_HOME:-$HOME/.cargo} folder flags
  flags="'--remap-path-prefix=$home=cargo-home','--remap-path-prefix=$PWD=plumbline'"
  for folder in "$home"/registry/src/*; do
    flags="$flags,'--remap-path-prefix=$folder=crates'"
  done
  say "target.$wasm.rustflags=[$flags]"
}

# cargo for the browser's target: wasm_cargo build|test OPTION... The variables hold for this one command only.
wasm_cargo() {
  local command=$1
  shift
  # The sources have to lie in their folders before those can be renamed.
  cargo fetch --locked --quiet
  set -- "$command" --locked --target $wasm --config "$(renamed_paths)" "$@"
  if [ "$(wasm_route)" = plain ]; then
    say_and_run env -u RUSTFLAGS CARGO_TARGET_DIR=$wasm_folder cargo "$@"
  else
    say_and_run env -u RUSTFLAGS CARGO_TARGET_DIR=$wasm_folder RUSTC=/usr/bin/rustc RUSTC_BOOTSTRAP=1 \
      CARGO_UNSTABLE_BUILD_STD=std,panic_abort CARGO_TARGET_WASM32_UNKNOWN_UNKNOWN_LINKER="$(wasm_linker)" \
      /usr/bin/cargo "$@"
  fi
}
