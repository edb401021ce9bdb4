#!/bin/sh
# A back end in C++ that is no part of the tree, built against what is installed:
#   sh tests/installed/run.sh BUILD
# BUILD is a folder that cmake has built. The component `development` goes into a folder of its own; the example is copied out
# of the tree and built there by find_package and by pkg-config, and `--outside` runs it. The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
build=$(CDPATH='' cd -- "${1:?which build}" && pwd)
folder=$(mktemp -d)
trap 'rm -rf "$folder"' EXIT
passed=0
failed=0

# try WORDS COMMAND...: counts whether the command does well, and shows what it said when it does not.
try() {
  words=$1
  shift
  if "$@" >"$folder/said" 2>&1; then
    passed=$((passed + 1))
  else
    failed=$((failed + 1))
    echo "not so: $words"
    cat "$folder/said"
  fi
}

ours() { grep -rn --include='*.hpp' --include='*.cmake' --include='*.pc' -F "$project" "$folder/installed"; }
no_path_of_ours() { ! ours; }
cmake_build() { cmake -G Ninja -S "$folder/source" -B "$folder/by_cmake" "-DCMAKE_PREFIX_PATH=$folder/$1" && cmake --build "$folder/by_cmake"; }
# Without CMake; pkg-config finds the file by where it lies.
# shellcheck disable=SC2046 # several words
plain_build() {
  PKG_CONFIG_PATH=$(dirname "$(find "$folder/moved" -name sheerpole.pc)")
  export PKG_CONFIG_PATH
  g++ -std=c++20 -o "$folder/by_hand" "$folder/source/between_points.cpp" $(pkg-config --cflags --libs sheerpole)
}
made_by() {
  "$build/bin/sheerpole" build "$project/examples/$2.rig" --into "$folder/out-$3-$2" --only between-points,cut-list --outside "$1"
}
# Body and cut are those of cut-list.json, digit by digit.
as_in_cut_list() {
  python3 - "$folder/out-cmake-$1" <<'PYTHON'
import csv, json, pathlib, sys
folder = pathlib.Path(sys.argv[1])
pieces = json.loads((folder / "cut-list.json").read_text(encoding="utf-8"))["pieces"]
rows = list(csv.DictReader((folder / "between-points.csv").open(encoding="utf-8", newline="")))
assert len(rows) == len(pieces) > 0, (len(rows), len(pieces))
for row in rows:
    piece = next(piece for piece in pieces if piece["name"] == row["piece"])
    for column, length in (("body mm", piece["body"]), ("cut mm", piece["cut"])):
        wanted = length["text_mm"] if length["complete"] else "not known"
        assert row[column].lstrip("'") == wanted, (row, wanted)
PYTHON
}
another_version() {
  sed 's/^find_package(Sheerpole/& 99.0/' -i "$folder/other/CMakeLists.txt"
  ! cmake -G Ninja -S "$folder/other" -B "$folder/by_other" "-DCMAKE_PREFIX_PATH=$folder/moved"
}

try "the library is made" cmake --build "$build" --target sheerpole_for_authors
try "it is installed" cmake --install "$build" --component development --prefix "$folder/installed"
try "no path of this source is in it" no_path_of_ours
cp -R "$project/examples/outside/between_points" "$folder/source"
cp -R "$project/examples/outside/between_points" "$folder/other"
# What is installed may be moved: nothing in it knows where it lies.
mv "$folder/installed" "$folder/moved"
try "find_package finds it" cmake_build moved
try "find_package takes no other version" another_version
try "pkg-config finds it" plain_build
for boat in smidgeon smallest sallow; do
  try "the program of cmake makes its papers of $boat" made_by "$folder/by_cmake/between_points" "$boat" cmake
  try "the one of pkg-config makes the same" made_by "$folder/by_hand" "$boat" hand
  try "as bytes" diff -r "$folder/out-cmake-$boat" "$folder/out-hand-$boat"
  try "with the lengths of the cut list" as_in_cut_list "$boat"
done
echo "$passed passed, $failed failed"
[ "$failed" -eq 0 ]
