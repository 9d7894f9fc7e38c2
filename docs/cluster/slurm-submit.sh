#!/usr/bin/env bash
# Spreads the house-weeks of a nursery over a Slurm cluster whose nodes share the folders of store and site.
# Usage: slurm-submit.sh NURSERY [PER_TASK [AT_ONCE]]      (usual: 8 house-weeks a task, 32 tasks at once)
# Prints the numbers of the two jobs, the array and the finish after it; of the finish alone where no house-week is left. Started again it submits what is left.
set -euo pipefail
nursery=$(realpath "$1") per=${2:-8} at_once=${3:-32}
here=$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)
todo=$(dirname "$nursery")/climatelens-todo.txt
${CLIMATELENS:-climatelens} plan "$nursery" >"$todo.new" || { code=$?; [ "$code" -eq 1 ] || exit "$code"; }
mv "$todo.new" "$todo"
lines=$(wc -l <"$todo")
if [ "$lines" -eq 0 ]; then # a finish may have been lost: one more costs little, and leaves an index that stands as it is
  echo "No house-week is left: all pages stand. Only the finish is submitted." >&2
  sbatch --parsable "$here/slurm-finish.sbatch" "$nursery"
  exit 0
fi
tasks=$(((lines + per - 1) / per))
array=$(sbatch --parsable --array="1-$tasks%$at_once" "$here/slurm-array.sbatch" "$nursery" "$todo" "$per" "$here")
finish=$(sbatch --parsable --dependency="afterany:$array" "$here/slurm-finish.sbatch" "$nursery")
echo "$array $finish"
