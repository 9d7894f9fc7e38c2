#!/usr/bin/env bash
# Holds programs to each other: each makes the pages of the sample logs, and all must be the same to the last byte.
# Usage: build/same-pages.sh PROGRAM PROGRAM...
set -euo pipefail
root=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
work=$(mktemp -d); trap 'rm -rf "$work"' EXIT
cp -r "$root/sample-logs" "$work/original"
n=0
for program in "$@"; do
  n=$((n + 1))
  cp -rp "$work/original" "$work/sample-logs" # in the same place and of the same age, which the site's state tells of
  code=0
  "$program" run "$work/sample-logs/nursery.toml" --format ipynb --single-file --quiet >"$work/log" 2>&1 || code=$?
  if [ "$code" -ne 0 ]; then
    cat "$work/log" >&2
    echo "$program ended with $code." >&2
    exit 1
  fi
  mv "$work/reports" "$work/$n"
  rm -rf "$work/sample-logs"
  diff -rq "$work/1" "$work/$n" >&2 || { echo "The pages of $program are not those of $1." >&2; exit 1; }
done
echo "The pages of $n programs are the same: $(find "$work/1" -type f | wc -l) files each."
