#!/usr/bin/env bash
# Runs 200 house-weeks as a Slurm job array on two nodes of this machine, kills a node and the controller in the middle (the node comes back once it was missed),
# and holds the site to the one that a single run makes, byte for byte. Debian; installs slurm-wlm where it is missing and it may.
# Usage: tests/scale/slurm.sh [HOUSES [WEEKS]]     (10 houses, 20 weeks; CLIMATELENS names a program that stands, else it is made)
set -uo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../.."
root=$PWD houses=${1:-10} weeks=${2:-20}
say() { printf '%s\n' "$*" >&2; }

if ! command -v slurmctld >/dev/null; then
  [ "$(id -u)" -eq 0 ] && command -v apt-get >/dev/null || { say "slurm-wlm is missing and cannot be installed from here."; exit 77; }
  say "Installing Debian's slurm-wlm."
  apt-get update -qq >&2 && DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends slurm-wlm >&2 || exit 77
fi
[ "$(id -u)" -eq 0 ] || { say "slurmd needs root."; exit 77; }

run=$(mktemp -d)
pids=()
# Kills the batch steps of this test, of one node or of all: each with its shepherd and all it started.
kill_steps() {
  local pid
  for pid in $(pgrep -f "house-weeks.sh $run/many"); do
    [ -z "${1:-}" ] || tr '\0' '\n' <"/proc/$pid/environ" 2>/dev/null | grep -qx "SLURMD_NODENAME=$1" || continue
    kill -9 "$(ps -o ppid= -p "$pid" | tr -d ' ')" $(pgrep -P "$pid") "$pid" 2>/dev/null
  done
}
stop() {
  for pid in "${pids[@]}"; do kill -9 "$pid" 2>/dev/null; done
  wait 2>/dev/null
  kill_steps
  rm -rf "$run"
}
trap stop EXIT

if [ -z "${CLIMATELENS:-}" ]; then
  dotnet publish src/ClimateLens.Cli -c Release --use-current-runtime --no-self-contained -o "$run/program" -v quiet >&2 || exit 1
  export CLIMATELENS="$run/program/climatelens"
fi
benchmarks=tests/ClimateLens.Benchmarks/bin/Release/net10.0/ClimateLens.Benchmarks.dll
[ -f "$benchmarks" ] || dotnet build tests/ClimateLens.Benchmarks -c Release -v quiet --nologo >&2 || exit 1
dotnet "$benchmarks" generate-houses "$run/one" "$houses" "$weeks" 30 >&2 || exit 1
cp -r "$run/one" "$run/many"

mkdir -p "$run"/{munge,state,log,spool/n1,spool/n2}
chmod 700 "$run/munge"
dd if=/dev/urandom of="$run/munge/key" bs=128 count=1 status=none
chmod 600 "$run/munge/key"
host=$(hostname -s)
cat >"$run/slurm.conf" <<CONF
ClusterName=mini
SlurmctldHost=$host(127.0.0.1)
SlurmUser=root
SlurmdUser=root
AuthType=auth/munge
AuthInfo=socket=$run/munge/socket
CryptoType=crypto/munge
CommunicationParameters=NoCtldInAddrAny,NoInAddrAny
SlurmctldPort=16817
StateSaveLocation=$run/state
SlurmdSpoolDir=$run/spool/%n
SlurmctldPidFile=$run/slurmctld.pid
SlurmdPidFile=$run/slurmd.%n.pid
SlurmctldLogFile=$run/log/slurmctld.log
SlurmdLogFile=$run/log/slurmd.%n.log
ProctrackType=proctrack/linuxproc
TaskPlugin=task/none
JobAcctGatherType=jobacct_gather/none
AccountingStorageType=accounting_storage/none
JobCompType=jobcomp/filetxt
JobCompLoc=$run/log/jobcomp.txt
SelectType=select/cons_tres
SelectTypeParameters=CR_Core
SchedulerType=sched/backfill
MaxArraySize=10001
MaxJobCount=20000
MpiDefault=none
ReturnToService=2
SlurmdTimeout=30
KillWait=5
MailProg=/bin/true
SlurmdParameters=config_overrides
NodeName=n[1-2] NodeHostname=$host NodeAddr=127.0.0.1 Port=[17001-17002] CPUs=1 RealMemory=2000 State=UNKNOWN
PartitionName=batch Nodes=n[1-2] Default=YES MaxTime=600 State=UP
CONF
export SLURM_CONF="$run/slurm.conf"
munged --foreground --force --key-file "$run/munge/key" --socket "$run/munge/socket" --pid-file "$run/munge/pid" --log-file "$run/log/munged.log" --seed-file "$run/munge/seed" >/dev/null 2>&1 & pids+=($!)
sleep 1
slurmctld -D -f "$SLURM_CONF" >/dev/null 2>&1 & controller=$!; pids+=("$controller")
slurmd -D -N n1 -f "$SLURM_CONF" >/dev/null 2>&1 & pids+=($!)
slurmd -D -N n2 -f "$SLURM_CONF" >/dev/null 2>&1 & second=$!; pids+=("$second")
for _ in $(seq 60); do sinfo -h -o %T 2>/dev/null | grep -q idle && break; sleep 1; done
sinfo >&2 || { say "Slurm could not be started on this machine:"; for log in "$run"/log/*.log; do tail -n 5 "$log" >&2; done; exit 77; }

ids=$(cd "$run/many" && "$root/docs/cluster/slurm-submit.sh" nursery.toml 8 2) || exit 1
say "submitted: $ids ($(wc -l <"$run/many/climatelens-todo.txt") house-weeks)"
made() { find "$run/many/site" -name .entry.json 2>/dev/null | wc -l; }
half=$((houses * weeks / 3))
for _ in $(seq 600); do [ "$(made)" -ge "$half" ] && break; sleep 1; done
say "after $(made) pages: killing node n2 with its tasks, and the controller"
kill -9 "$second" "$controller" 2>/dev/null
kill_steps n2
sleep 2
slurmctld -D -f "$SLURM_CONF" >/dev/null 2>&1 & controller=$!; pids+=("$controller")
for _ in $(seq 120); do sinfo -h -n n2 -o %T 2>/dev/null | grep -q down && break; sleep 1; done
say "n2 is $(sinfo -h -n n2 -o %T 2>/dev/null) for the controller; started again after $(made) pages"
slurmd -D -N n2 -f "$SLURM_CONF" >/dev/null 2>&1 & pids+=($!)
for round in 1 2 3 4; do
  for _ in $(seq 1800); do [ -z "$(squeue -h 2>/dev/null)" ] && squeue -h >/dev/null 2>&1 && break; sleep 1; done
  left=$("$CLIMATELENS" plan "$run/many/nursery.toml" | wc -l)
  [ "$left" -eq 0 ] && break
  say "round $round: $left house-weeks left; submitted again"
  (cd "$run/many" && "$root/docs/cluster/slurm-submit.sh" nursery.toml 8 2 >&2)
done
"$CLIMATELENS" finish "$run/many/nursery.toml" --quiet; finished=$?
say "tasks that ended, by state: $(sed -n 's/.*JobState=\([A-Z_]*\).*/\1/p' "$run/log/jobcomp.txt" | sort | uniq -c | tr '\n' ' ')"
"$CLIMATELENS" run "$run/one/nursery.toml" --quiet; single=$?
if [ "$finished" -le 1 ] && [ "$single" -le 1 ] && diff -r "$run/one/site" "$run/many/site" >&2; then
  say "$(find "$run/many/site" -name review.json | wc -l) house-weeks; the same bytes as one run"
  exit 0
fi
say "finish ended with $finished, the single run with $single, or the sites differ"
exit 1
