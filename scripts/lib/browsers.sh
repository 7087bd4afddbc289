# shellcheck shell=bash
# Sourced. The browsers that the tests drive, and what drives them. None is downloaded from its maker.

browser_advice="Install Chromium or Chrome with its chromedriver, and Firefox, then run this again."

chromium_path() {
  first_program chromium chromium-browser google-chrome "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome"
}
firefox_path() { first_program firefox-esr firefox /Applications/Firefox.app/Contents/MacOS/firefox; }
chromedriver_path() { first_program chromedriver chromium.chromedriver; }

first_program() {
  local name
  for name in "$@"; do
    if command -v "$name"; then return; fi
  done
  return 1
}

# A font, because a browser installed on a bare machine has none and lays text out as boxes.
need_chromium() {
  chromium_path >/dev/null || install_or_advise "Chromium" "$browser_advice" chromium fonts-liberation
}

need_test_browsers() {
  command -v pdftotext >/dev/null || install_or_advise "pdftotext" "Printed reports are read back with it." poppler-utils
  need_chromium
  chromedriver_path >/dev/null || install_or_advise "chromedriver" "$browser_advice" chromium-driver
  firefox_path >/dev/null || install_or_advise "Firefox" "$browser_advice" firefox-esr
}

# The third engine is driven where Debian's driver is to be had; elsewhere its specs say that they were not run, and why.
need_webkit() {
  if command -v WebKitWebDriver >/dev/null && command -v Xvfb >/dev/null; then return; fi
  if command -v apt-get >/dev/null; then
    # In a shell of its own: without it the other browsers are driven all the same.
    (install_or_advise "WebKit's driver, and a display without a screen" "The WebKit specs are left out." webkit2gtk-driver xvfb) && return
  fi
  say "WebKit will not be driven on this machine."
}

# The specs read these two.
tell_where_browsers_are() {
  PLUMBLINE_CHROMIUM=$(chromium_path)
  PLUMBLINE_FIREFOX=$(firefox_path || true)
  export PLUMBLINE_CHROMIUM PLUMBLINE_FIREFOX
}

wasm_tools=${XDG_CACHE_HOME:-$HOME/.cache}/plumbline/tools

# The runner of wasm tests must be of the very version of the crate, or it refuses the module. Not --locked: its own
# lock file names releases that a registry may no longer serve.
need_wasm_test_runner() {
  local version
  version=$(awk -F '"' '$1 == "name = " && $2 == "wasm-bindgen" { getline; print $2 }' Cargo.lock)
  if [ "$("$wasm_tools/bin/wasm-bindgen" --version 2>/dev/null)" != "wasm-bindgen $version" ]; then
    say_and_run cargo install wasm-bindgen-cli --version "$version" --root "$wasm_tools" --debug
  fi
}
