#!/usr/bin/env bash
# Makes some house-weeks of a work list: lines FIRST to FIRST + COUNT - 1 of the file that `climatelens plan` wrote.
# Usage: house-weeks.sh NURSERY TODO FIRST COUNT
# Ends with 0 when every page stands; else with the last code that needs someone (docs/unattended.md lists them).
set -u
nursery=$1 todo=$2 first=$3 count=$4
climatelens=${CLIMATELENS:-climatelens}
ended=0
if [ ! -f "$todo" ] || [ ! -r "$todo" ]; then # a volume that is not there must not look like work that is done
  printf 'The work list %s cannot be read.\n' "$todo" >&2
  exit 66
fi
while IFS= read -r options; do
  [ -n "$options" ] || continue
  for try in 1 2 3 4 5 6; do
    # shellcheck disable=SC2086 # a line of the list is options
    $climatelens run "$nursery" --quiet $options </dev/null
    code=$?
    [ "$code" -eq 75 ] || break
    sleep $((try * 2)) # another run holds the page or the store
  done
  case $code in
    0 | 1) ;; # the page stands; 1: it says what is wrong
    *) printf '%s ended with %s\n' "$options" "$code" >&2; ended=$code ;;
  esac
done < <(sed -n "${first},$((first + count - 1))p" "$todo")
exit "$ended"
