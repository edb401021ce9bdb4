#!/bin/sh
# Everything that is checked on every change, from a bare Debian 12:
#   sh tests/run.sh [--asan] [--wasm | --no-wasm]
# --asan does the same with everything built under the address and undefined-behaviour sanitizers; so does CI=true. The offline
# page and the WebAssembly inside it are the same then as every day, so they are left out unless --wasm asks for them.
# --no-wasm leaves them out every day, too: compiled from nothing the WebAssembly is seven minutes of processor time.
# The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$project/examples/prepare.sh"

preset=dev
wasm=
[ "${CI:-}" != true ] || preset=asan
for argument in "$@"; do
  case $argument in
    --asan) preset=asan ;;
    --wasm) wasm=yes ;;
    --no-wasm) wasm=no ;;
    *) sed -n 's/^# \{0,1\}//; 2,7p' "$0"; exit 2 ;;
  esac
done
if [ -z "$wasm" ]; then
  if [ "$preset" = dev ]; then wasm=yes; else wasm=no; fi
fi

# shellcheck disable=SC2086 # a list of names
install_missing $build_packages libgtest-dev libgmock-dev librapidcheck-dev libbenchmark-dev llvm-14-tools python3 \
  units libxml2-utils python3-jsonschema w3c-sgml-lib librsvg2-bin zbar-tools qpdf poppler-utils python3-icalendar perl clang-format locales \
  chromium openssh-client valgrind git make zsh fish mandoc man-db bsdextrautils neovim emacs-nox elpa-eglot
# Java and Node may be there from elsewhere than Debian.
command -v java >/dev/null 2>&1 || install_missing default-jre-headless
command -v node >/dev/null 2>&1 || install_missing nodejs
command -v npm >/dev/null 2>&1 || install_missing npm
if ! locale -a 2>/dev/null | grep -qi '^de_DE\.utf-\{0,1\}8$'; then
  echo "Making the locale de_DE.UTF-8"
  as_root localedef -i de_DE -f UTF-8 de_DE.UTF-8
fi

# The same cases each time: a check of a change must not depend on the day. Set RC_PARAMS to look further.
export RC_PARAMS="${RC_PARAMS:-seed=1}"

cd "$project"
passed=0
failed=0

# add PASSED FAILED: adds to the sums.
add() {
  passed=$((passed + $1))
  failed=$((failed + $2))
}

# stage NAME: says what comes next, and the processor time of all that has ended, as user and system.
stage() {
  mkdir -p "$project/build" && times >"$project/build/times"
  echo "== $1 (processor time so far: $(sed -n 2p "$project/build/times"))"
}

# build PRESET: configures and compiles build/PRESET; a build that fails counts as a failure. From nothing all is compiled, so files
# are joined then, as in the other presets; a folder that is configured already stays as it is.
build() {
  stage "build/$1"
  joined=
  [ -e "build/$1/CMakeCache.txt" ] ||
    joined='-DCMAKE_UNITY_BUILD=ON -DCMAKE_UNITY_BUILD_BATCH_SIZE=16'
  # shellcheck disable=SC2086 # a list of settings
  if cmake --preset "$1" $joined >/dev/null && cmake --build --preset "$1" -j "$(processors)" -- --quiet -k 0; then
    return 0
  fi
  add 0 1
  return 1
}

# run_tests PRESET: the unit tests and the golden tests of build/PRESET.
run_tests() {
  reports=build/$1/reports
  rm -rf "$reports"
  mkdir -p "$reports"
  stage "unit tests ($1)"
  # They run one after the other, so half of them in each of two programs.
  for half in 0 1; do
    GTEST_TOTAL_SHARDS=2 GTEST_SHARD_INDEX=$half "build/$1/bin/unit_tests" --gtest_brief=1 \
      --gtest_output="json:$reports/unit-$half.json" >"$reports/unit-$half.log" 2>&1 &
  done
  wait
  for half in 0 1; do
    cat "$reports/unit-$half.log"
    # shellcheck disable=SC2046 # two numbers
    add $(python3 tests/tally.py gtest "$reports/unit-$half.json")
  done

  stage "golden tests ($1)"
  python3 /usr/lib/llvm-14/build/utils/lit/lit.py -v -j "$(processors)" --param "build=build/$1" \
    -o "$reports/golden.json" tests/golden || true
  # shellcheck disable=SC2046 # two numbers
  add $(python3 tests/tally.py lit "$reports/golden.json")
}

# npm_packages FOLDER: installs there what its package-lock.json names.
npm_packages() {
  [ "$1/node_modules/.package-lock.json" -nt "$1/package-lock.json" ] ||
    (cd "$1" && npm ci --ignore-scripts --no-audit --no-fund)
}

# run_page BUILD [ARGUMENT...]: the tests of the offline page with the sheerpole of BUILD.
run_page() {
  npm_packages tests/browser
  npm_packages compiler/page
  program=$1/bin/sheerpole
  shift
  node tests/browser/page/run.mjs "$program" "$@"
}

# run_papers BUILD: the tests of the papers with the sheerpole of BUILD.
run_papers() {
  npm_packages tests/browser
  node tests/browser/run.mjs "$1/bin/sheerpole" "$1/papers"
}

# add_sum LOG: adds the "N passed, N failed" of a log, and shows the log where something failed or the sum is missing.
add_sum() {
  # shellcheck disable=SC2046 # two numbers
  set -- "$1" $(sed -n 's/^\([0-9]*\) passed, \([0-9]*\) failed$/\1 \2/p' "$1")
  if [ $# -eq 3 ]; then
    add "$2" "$3"
    [ "$3" -eq 0 ] || cat "$1"
  else
    add 0 1
    cat "$1"
  fi
}

# Under the sanitizers all takes four times as long, so fewer of what is many are looked at.
share=1
slips=8
if [ "$preset" != dev ]; then
  share=12
  slips=16
fi
built=no
papers=
mkdir -p "build/$preset"
if build "$preset"; then
  built=yes
  UBSAN_OPTIONS=print_stacktrace=1 run_tests "$preset"
  stage "each room links with what it may include alone"
  if cmake --build --preset "$preset" -j "$(processors)" --target rooms_alone -- --quiet; then
    add 1 0
  else
    add 0 1
  fi
  stage "faults: the disk fails, builds meet, builds are killed"
  python3 tests/faults/run.py "build/$preset/bin/sheerpole" "build/$preset/bin/fail_nth.so" >"build/$preset/faults.log" || true
  add_sum "build/$preset/faults.log"
  stage "fuzz: what is read from strangers, changed"
  "build/$preset/bin/sheerpole-fuzz" . --seconds 5 --keep "build/$preset/fuzz-found" >"build/$preset/fuzz.log" 2>&1 || true
  add_sum "build/$preset/fuzz.log"
  stage "counted instructions of some commands, against tests/bench/instructions.tsv"
  python3 tests/bench/instructions.py recorded "build/$preset" >"build/$preset/instructions.log" || true
  grep '^not measured' "build/$preset/instructions.log" || true
  add_sum "build/$preset/instructions.log"
  if [ "$preset" = dev ]; then # a library under the sanitizers would ask the same of who links it
    stage "a back end in C++ outside the tree, against what is installed"
    sh tests/installed/run.sh "build/$preset" >"build/$preset/installed.log" 2>&1 || true
    add_sum "build/$preset/installed.log"
    stage "masts: how they stand, against CalculiX on boats by chance"
    sh tests/statics/run.sh "$preset" 12 >"build/$preset/statics.log" 2>&1 || true
    add_sum "build/$preset/statics.log"
  fi
  # A browser waits a good deal, so the rest runs beside it.
  run_papers "build/$preset" >"build/$preset/papers.log" 2>&1 &
  papers=$!
  stage "editors: Neovim, Emacs and clients of npm's speak with the language server"
  { npm_packages tests/editor && python3 tests/editor/run.py "build/$preset/bin/sheerpole"; } >"build/$preset/editors.log" 2>&1 || true
  add_sum "build/$preset/editors.log"
  stage "slips: what is said first of variants of the boats"
  python3 tests/mutation/run.py "build/$preset/bin/sheerpole" --page docs/slips.md >"build/$preset/slips.log" || true
  add_sum "build/$preset/slips.log"
  stage "slips of numbers: one in $slips"
  python3 tests/mutation/number_slips.py "build/$preset/bin/sheerpole" --one-in "$slips" >"build/$preset/number_slips.log" || true
  add_sum "build/$preset/number_slips.log"
fi
stage "architecture"
# Where each source has been compiled by itself already, the check leaves them out; of joined ones it takes one in four.
if [ "$share" -eq 1 ] && grep -q '^CMAKE_UNITY_BUILD:[A-Z]*=ON$' "build/$preset/CMakeCache.txt"; then share=4; fi
python3 tests/architecture/run.py --build "build/$preset" --one-in "$share" >"build/$preset/architecture.log" || true
add_sum "build/$preset/architecture.log"
if [ "$built" = yes ]; then
  stage "papers: as browsers, checkers of markup, calendars and spreadsheets read them"
  wait "$papers" || true
  add_sum "build/$preset/papers.log"
fi

if [ "$built" = yes ] && [ "$wasm" = yes ]; then
  stage "wasm: the compiler as WebAssembly, against the native program"
  # The page with the native compiler beside it waits for a browser mostly, so it runs beside the compiling.
  run_page "build/$preset" >"build/$preset/page.log" 2>&1 &
  page=$!
  sh tests/wasm/run.sh "build/$preset/bin/sheerpole" >"build/$preset/wasm.log" 2>&1 || true
  add_sum "build/$preset/wasm.log"
  stage "page: the offline page in a browser, and with its compiler inside"
  wait "$page" || true
  add_sum "build/$preset/page.log"
  run_page "build/$preset" --core build/wasm/bin size begins given >"build/$preset/page-inside.log" 2>&1 || true
  add_sum "build/$preset/page-inside.log"
fi

stage "all"
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ] && [ "$passed" -gt 0 ]
