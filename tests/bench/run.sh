#!/bin/sh
# Measures speed and memory, side by side with tools that every Debian has:
#   sh tests/bench/run.sh [FOLDER]
# FOLDER receives the figures (default: build/bench/figures). Machines differ and are noisy: compare within one run.
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
. "$project/examples/prepare.sh"
# shellcheck disable=SC2086 # a list of names
install_missing $build_packages libbenchmark-dev hyperfine protobuf-compiler graphviz python3 time valgrind

cd "$project"
figures=${1:-build/bench/figures}
mkdir -p build/bench "$figures"
{ cmake --preset bench && cmake --build --preset bench -j "$(processors)"; } >build/bench.log 2>&1 || {
  tail -n 40 build/bench.log >&2
  exit 1
}
sheerpole=build/bench/bin/sheerpole
scratch=$(mktemp -d)
trap 'rm -rf "$scratch"' EXIT

cat >"$scratch/two.proto" <<'PROTO'
syntax = "proto3";
message Pin { string name = 1; double diameter = 2; }
message Stay { string name = 1; repeated Pin pins = 2; }
PROTO
{
  echo "digraph rig {"
  for i in 1 2 3 4 5 6 7 8 9 10 11 12 13; do echo "  n$i -> n$((i + 1));"; done
  echo "}"
} >"$scratch/fourteen.dot"
python3 tests/bench/write_generated_boat.py 1000 >"$scratch/thousand.rig"
python3 tests/bench/write_generated_boat.py 2000 >"$scratch/two-thousand.rig"

hyperfine -N --warmup 20 --min-runs 200 --export-markdown "$figures/cold-check.md" \
  -n "sheerpole check pellimoor" "$sheerpole check examples/pellimoor.rig" \
  -n "protoc, two messages" "protoc --proto_path=$scratch --cpp_out=$scratch $scratch/two.proto"
hyperfine -N --warmup 20 --min-runs 200 --export-markdown "$figures/cold-build.md" \
  -n "sheerpole build pellimoor" "$sheerpole build examples/pellimoor.rig --into $scratch/out" \
  -n "dot, 14 nodes to SVG" "dot -Tsvg -o $scratch/fourteen.svg $scratch/fourteen.dot"
hyperfine -N --warmup 2 --min-runs 10 --export-markdown "$figures/thousand.md" \
  -n "1000 stays" "$sheerpole check --form lines $scratch/thousand.rig" \
  -n "2000 stays" "$sheerpole check --form lines $scratch/two-thousand.rig"
build/bench/bin/benchmarks --benchmark_counters_tabular=true | tee "$figures/warm.txt"
for rig in examples/pellimoor.rig "$scratch/thousand.rig"; do
  command time -f "%M KiB at most, %e s: check $(basename "$rig")" "$sheerpole" check "$rig" 2>&1 >/dev/null | tail -n 1
done | tee "$figures/memory.txt"

# How masts stand, against CalculiX on the same boats with as many elements in each panel, in one run; the last lines say how many
# times as fast, and whether both say the same.
sh tests/statics/run.sh bench 20 | tee "$figures/statics.txt"

# From a key to its findings, in an editor.
python3 tests/bench/keystrokes.py "$sheerpole" | tee "$figures/keystrokes.txt"

# Counted instructions, which other work on the machine does not change; those that are over their limit are seen in the table.
python3 tests/bench/instructions.py beside "$sheerpole" --page | tee "$figures/instructions.md" || true
python3 tests/growth/run.py "$sheerpole" --page | tee "$figures/growth.md" || true

# A thousand boats of fourteen stays in one call.
mkdir "$scratch/fleet"
python3 tests/bench/write_generated_boat.py 14 >"$scratch/fleet/boat-1.rig"
for i in $(seq 2 1000); do cp "$scratch/fleet/boat-1.rig" "$scratch/fleet/boat-$i.rig"; done
# fleet WORDS...: how much memory and time that takes, by number of workers.
fleet() {
  for workers in 1 "$(processors)"; do
    command time -f "%M KiB at most, %e s, %U s of processors: $* of 1000 boats, $workers at a time" \
      "$sheerpole" "$@" "$scratch"/fleet/*.rig --workers "$workers" 2>&1 >/dev/null | tail -n 1
  done
}
{
  fleet fleet
  fleet fleet --only cut-list --into "$scratch/papers"
  fleet find "10 mm"
} | tee "$figures/fleet.txt"
