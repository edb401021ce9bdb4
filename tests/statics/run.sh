#!/bin/sh
# How stayed masts stand, against CalculiX, on boats by chance:
#   sh tests/statics/run.sh [PRESET [RIGS [SEED]]]
# PRESET (default: dev) is built as far as this needs it. The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
. "$project/examples/prepare.sh"
preset=${1:-dev}
# shellcheck disable=SC2086 # a list of names
install_missing $build_packages libgtest-dev librapidcheck-dev python3 calculix-ccx
cd "$project"
cmake --preset "$preset" >/dev/null
cmake --build --preset "$preset" --target standing-states -- --quiet
exec python3 tests/statics/run.py "build/$preset/bin/standing-states" --rigs "${2:-100}" --seed "${3:-1}"
