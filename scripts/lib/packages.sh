# shellcheck shell=bash
# Sourced. Debian packages: only what is missing, and as root only with the person's word.

packages_listed=no

# install_or_advise WHAT ADVICE PACKAGE...: installs the packages where there is apt, else says what to install.
install_or_advise() {
  local what=$1 advice=$2
  shift 2
  command -v apt-get >/dev/null || stop "Missing here: $what." "$advice"
  say "Missing here: $what. Debian's packages bring it: $*"
  local install=(apt-get install -y --no-install-recommends "$@")
  may_be_root "${install[*]}" ||
    stop "Run these yourself, or set PLUMBLINE_SUDO=1 to let the script do it:" \
      "  sudo apt-get update" "  sudo ${install[*]}"
  if [ "$packages_listed" = no ]; then
    as_root apt-get -q update
    packages_listed=yes
  fi
  as_root env DEBIAN_FRONTEND=noninteractive "${install[@]}" -q -o Dpkg::Use-Pty=0 -o DPkg::Lock::Timeout=120 ||
    stop "apt-get could not install: $*" "$advice"
}

may_be_root() {
  [ "$(id -u)" != 0 ] || return 0
  command -v sudo >/dev/null || return 1
  [ "${PLUMBLINE_SUDO:-}" != 1 ] || return 0
  [ -t 0 ] || return 1
  local answer
  say "That needs root: sudo $*"
  read -r -p "Run it now? [y/N] " answer
  [ "$answer" = y ] || [ "$answer" = Y ]
}

as_root() {
  if [ "$(id -u)" = 0 ]; then say_and_run "$@"; else say_and_run sudo "$@"; fi </dev/null
}
