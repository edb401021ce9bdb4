#!/bin/sh
# Tries what is read from strangers, guided by what each input reaches (clang, libFuzzer, sanitizers), by hand:
#   sh tests/fuzz/run.sh [--seconds N] [TARGET...]
# Targets are parse, text, rig, service, editor, table, reply and seal; all of them when none is named, N seconds (60) each. Inputs that reach something
# new are kept in build/fuzz/corpus, so that the next run goes on from there; what breaks a promise lies in
# build/fuzz/found. The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
. "$project/examples/prepare.sh"

seconds=60
targets=
while [ $# -gt 0 ]; do
  case $1 in
    --seconds) seconds=${2:?}; shift ;;
    parse | text | rig | service | editor | table | reply | seal) targets="$targets $1" ;;
    *) sed -n 's/^# \{0,1\}//; 2,6p' "$0"; exit 2 ;;
  esac
  shift
done
targets=${targets:-parse text rig service editor table reply seal}

# Clang brings libFuzzer and its sanitizers in libclang-rt-16-dev; clang 14, Debian's first choice, does not read what
# is C++20 in the library of g++ 12. The tests are configured with the targets, so
# their libraries are needed as well.
# shellcheck disable=SC2086 # a list of names
install_missing $build_packages clang-16 lld-16 libclang-rt-16-dev libgtest-dev libgmock-dev librapidcheck-dev python3

cd "$project"
mkdir -p build
cmake --preset fuzz >build/fuzz.log
for target in $targets; do
  cmake --build --preset fuzz -j "$(processors)" --target "fuzz-$target" >>build/fuzz.log 2>&1 || {
    tail -n 40 build/fuzz.log >&2
    exit 1
  }
done

passed=0
failed=0
for target in $targets; do
  mkdir -p "build/fuzz/corpus/$target" build/fuzz/found
  longest=32768
  seeds="tests/fuzz/corpus/$target"
  case $target in
    parse | text | rig | service) seeds="tests/fuzz/corpus/rig tests/golden/inputs" ;;
    reply | seal | table) longest=2048 ;; # what these read is short, and short inputs are tried more often
  esac
  # shellcheck disable=SC2086 # a list of folders
  if "build/fuzz/bin/fuzz-$target" -seed=1 -max_len=$longest -timeout=60 -rss_limit_mb=2048 -max_total_time="$seconds" \
    -print_final_stats=1 -artifact_prefix="build/fuzz/found/$target-" "build/fuzz/corpus/$target" $seeds \
    >"build/fuzz/$target.log" 2>&1; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1))
    tail -n 40 "build/fuzz/$target.log"
  fi
  echo "$target: $(sed -n 's/^stat::number_of_executed_units: *//p' "build/fuzz/$target.log") executions," \
    "$(find "build/fuzz/corpus/$target" -type f | wc -l) inputs kept"
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
