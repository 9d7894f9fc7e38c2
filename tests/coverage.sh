#!/usr/bin/env bash
# How much of each project its own tests run through: lines and branches, in per cent. Takes some minutes; docs/tests.md quotes it.
# Usage: bash tests/coverage.sh [Science Nursery Logs Analysis Reports]
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/.."
results=$(mktemp -d); trap 'rm -rf "$results"' EXIT
for project in "${@:-Science Nursery Logs Analysis Reports}"; do
  for name in $project; do
    dotnet test "tests/ClimateLens.$name.Tests" -c Release -v quiet --collect "XPlat Code Coverage" --results-directory "$results/$name" >"$results/$name.log" 2>&1 \
      || { cat "$results/$name.log" >&2; exit 1; }
    sed -n "s/.*<package name=\"ClimateLens.$name\" line-rate=\"\([0-9.]*\)\" branch-rate=\"\([0-9.]*\)\".*/\1 \2/p" "$results/$name"/*/coverage.cobertura.xml \
      | awk -v name="$name" '{printf "%-10s lines %5.1f %%  branches %5.1f %%\n", name, 100 * $1, 100 * $2}'
  done
done
