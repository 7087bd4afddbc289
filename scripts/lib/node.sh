# shellcheck shell=bash
# Sourced. Node.js, and the npm packages that our lock files name.

need_node() {
  local advice="Install Node.js 18 or newer with npm (nodejs.org, or your system's packages), then run this again."
  if ! command -v node >/dev/null; then
    install_or_advise "Node.js" "$advice" nodejs npm
  elif ! command -v npm >/dev/null; then
    install_or_advise "npm" "$advice" npm
  fi
  [ "$(node -p 'parseInt(process.versions.node)')" -ge 18 ] || stop "Node.js $(node --version) is too old." "$advice"
}

# npm_packages FOLDER: installs exactly what its lock file says; no package may run a script of its own.
npm_packages() {
  local folder=$1
  if ! cmp -s "$folder/package-lock.json" "$folder/node_modules/.installed-lock"; then
    (cd "$folder" && say "+ cd $folder" && say_and_run npm ci --ignore-scripts --no-audit --no-fund) </dev/null
    cp "$folder/package-lock.json" "$folder/node_modules/.installed-lock"
  fi
}
