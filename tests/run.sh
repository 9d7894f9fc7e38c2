#!/usr/bin/env bash
# Builds everything with warnings as errors and runs every test, browser tests included.
# Ends with one line "N passed, N failed" over all suites; exits with 0 only when all passed.
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
export DOTNET_CLI_TELEMETRY_OPTOUT=1 DOTNET_NOLOGO=1 DOTNET_CLI_UI_LANGUAGE=en

say() { printf '%s\n' "$*" >&2; }

find_chromium() {
  if [ -n "${CHROMIUM_PATH:-}" ] && [ -x "$CHROMIUM_PATH" ]; then printf '%s' "$CHROMIUM_PATH"; return 0; fi
  command -v chromium || command -v chromium-browser || command -v google-chrome
}

install_chromium() {
  local as_root=""
  if [ "$(id -u)" -ne 0 ]; then
    command -v sudo >/dev/null && sudo -n true 2>/dev/null || return 1
    as_root="sudo -n"
  fi
  command -v apt-get >/dev/null || return 1
  say "Chromium is missing: installing Debian's package 'chromium' for the browser tests."
  $as_root apt-get update -qq >&2 && DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq chromium >&2
}

if ! CHROMIUM_PATH=$(find_chromium); then
  if ! install_chromium || ! CHROMIUM_PATH=$(find_chromium); then
    say "The browser tests need Chromium, and it could not be installed from here."
    say "Install it (Debian or Ubuntu: sudo apt-get install chromium; elsewhere any Chromium or Chrome),"
    say "or point to one: CHROMIUM_PATH=/path/to/chromium bash tests/run.sh"
    exit 1
  fi
fi
export CHROMIUM_PATH

# The notebooks' own validator, for the test of --format ipynb.
if ! /usr/bin/python3 -c "import nbformat" 2>/dev/null; then
  say "python3-nbformat is missing: installing Debian's package for the tests of Jupyter notebooks."
  as_root=""; [ "$(id -u)" -eq 0 ] || as_root="sudo -n"
  $as_root apt-get update -qq >&2; DEBIAN_FRONTEND=noninteractive $as_root apt-get install -y -qq python3-nbformat >&2 || say "It could not be installed; two tests will fail. Install python3-nbformat."
fi

command -v dotnet >/dev/null || { say "The .NET 10 SDK is missing: https://dot.net"; exit 1; }

log=$(mktemp); trap 'rm -f "$log"' EXIT
dotnet build ClimateLens.sln -c Release -warnaserror -v quiet || { say "The build failed."; exit 1; }
dotnet test ClimateLens.sln -c Release --no-build -v quiet --logger "console;verbosity=minimal" 2>&1 | tee "$log"
status=${PIPESTATUS[0]}

# Each suite ends with "… Failed: 0, Passed: 12, Skipped: 0, …".
read -r passed failed skipped suites < <(grep -oE 'Failed: +[0-9]+, Passed: +[0-9]+, Skipped: +[0-9]+' "$log" | tr -d ',' \
  | awk '{f+=$2; p+=$4; s+=$6; n++} END {print p+0, f+0, s+0, n+0}')
expected=$(find tests -name '*.Tests.csproj' | wc -l)
if [ "$suites" -ne "$expected" ]; then
  say "Only $suites of $expected suites came to an end."
  status=1
fi
if [ "$skipped" -gt 0 ]; then
  say "$skipped tests were skipped; a skipped test hides a missing part."
  status=1
fi
[ "$passed" -gt 0 ] || status=1
[ "$failed" -eq 0 ] || status=1
printf '%d passed, %d failed\n' "$passed" "$failed"
exit "$status"
