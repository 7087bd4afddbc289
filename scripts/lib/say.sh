# shellcheck shell=bash
# Sourced. How the scripts speak: every command that changes the machine is shown before it runs.

say() { printf '%s\n' "$*"; }

stop() {
  printf '%s\n' "$@" >&2
  exit 1
}

# Shows a command as it could be typed, then runs it.
say_and_run() {
  printf '+'
  printf ' %q' "$@"
  printf '\n'
  "$@"
}
