# shellcheck shell=bash
# Sourced by scripts/test. Runs steps one after the other, stops at the first that fails, and counts the tests.

logs=target/test-logs
passed=0
failed=0
step_number=0

# step TITLE COMMAND...
step() {
  local title=$1 started=$SECONDS log status failed_before=$failed
  shift
  step_number=$((step_number + 1))
  log=$logs/$step_number
  say ""
  say "[$step_number/$step_count] $title"
  set +e
  (
    set -e
    "$@"
  ) 2>&1 | tee "$log"
  status=${PIPESTATUS[0]}
  set -e
  count_tests "$log"
  if [ "$status" != 0 ]; then
    # A step that fails without a failed test of its own (a lint, a build) still counts as one.
    [ "$failed" != "$failed_before" ] || failed=$((failed + 1))
    say ""
    say "Failed at step $step_number of $step_count: $title"
    close_tests
    exit 1
  fi
  say "    took $((SECONDS - started)) s"
}

# beside COMMAND...: begins a long piece of work while other steps run. One step later on must be what_ran_beside, which
# waits for it, shows what it said, and fails if it did.
beside() {
  rm -f "$logs/beside.ended"
  (
    set +e
    (
      set -e
      "$@"
    ) >"$logs/beside" 2>&1 </dev/null
    echo $? >"$logs/beside.ended"
  ) &
  # A run that stops at another step leaves nothing at work behind it.
  beside_id=$!
  disown "$beside_id"
  trap 'end_of_family "$beside_id"' EXIT
}

what_ran_beside() {
  until [ -e "$logs/beside.ended" ]; do sleep 1; done
  cat "$logs/beside"
  return "$(cat "$logs/beside.ended")"
}

end_of_family() {
  local child
  for child in $(pgrep -P "$1" 2>/dev/null); do end_of_family "$child"; done
  kill "$1" 2>/dev/null || true
}

# Adds the closing lines of cargo test (native and wasm) and of Node's test runner.
count_tests() {
  local counts
  counts=$(awk '
    /^test result: / { pass += $4; fail += $6 }
    /^(#|ℹ) pass [0-9]+$/ { pass += $3 }
    /^(#|ℹ) fail [0-9]+$/ { fail += $3 }
    END { print pass + 0, fail + 0 }' "$1")
  passed=$((passed + ${counts% *}))
  failed=$((failed + ${counts#* }))
}

close_tests() { say "" && say "$passed passed, $failed failed"; }
