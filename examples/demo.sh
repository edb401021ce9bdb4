#!/bin/sh
# Builds Sheerpole and runs it on the example boats:
#   sh examples/demo.sh [FOLDER]
# FOLDER receives the cut lists, diagrams and findings, one folder a boat (default: build/demo).
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/.." && pwd)
. "$project/examples/prepare.sh"

case ${1:-} in
  -*) sed -n 's/^# \{0,1\}//; 2,4p' "$0"; exit 2 ;;
  "") into=$project/build/demo ;;
  /*) into=$1 ;;
  *) into=$(pwd)/$1 ;;
esac

# shellcheck disable=SC2086 # a list of names
install_missing $build_packages

cd "$project"
echo "Compiling Sheerpole (build/release)"
mkdir -p build
{ cmake --preset release && cmake --build --preset release -j "$(processors)"; } >build/release.log 2>&1 || {
  tail -n 40 build/release.log >&2
  echo "The build failed; all of it is in build/release.log" >&2
  exit 1
}
sheerpole=build/release/bin/sheerpole

for boat in examples/*.rig; do
  [ -f "$boat" ] || { echo "There is no boat in examples/" >&2; exit 1; }
  name=$(basename "$boat" .rig)
  echo
  echo "== $name =="
  echo "\$ sheerpole check $boat"
  code=0
  "$sheerpole" check "$boat" || code=$?
  # 1 is a boat with something to put right, which is what a check is for; more is a fault.
  [ "$code" -le 1 ] || exit "$code"

  echo "\$ sheerpole build $boat --into $into/$name"
  mkdir -p "$into/$name"
  code=0
  "$sheerpole" build "$boat" --into "$into/$name" || code=$?
  [ "$code" -le 1 ] || exit "$code"
  find "$into/$name" -type f | sort | while IFS= read -r file; do
    case $file in
      *cut*list*.txt)
        echo "-- $file, its first lines --"
        head -n 20 "$file"
        ;;
    esac
  done
done

echo
echo "Written:"
find "$into" -type f | sort
