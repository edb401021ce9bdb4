#!/bin/sh
# Builds the compiler as WebAssembly and holds it against the native program, byte for byte:
#   sh tests/wasm/run.sh SHEERPOLE
# Installs what is missing (Debian 12, apt); Debian's sources of the libraries are fetched once into build/wasm.
# The last line is "N passed, N failed".
set -eu
project=$(CDPATH='' cd -- "$(dirname -- "$0")/../.." && pwd)
. "$project/examples/prepare.sh"
[ $# -eq 1 ] || { sed -n 's/^# \{0,1\}//; 2,5p' "$0"; exit 2; }
native=$(CDPATH='' cd -- "$(dirname -- "$1")" && pwd)/$(basename -- "$1")

# shellcheck disable=SC2086 # a list of names
install_missing $build_packages emscripten node-acorn dpkg-dev debian-archive-keyring
command -v node >/dev/null 2>&1 || install_missing nodejs

cd "$project"
cmake --preset wasm >/dev/null
cmake --build --preset wasm -j "$(processors)" -- --quiet
node tests/wasm/run.mjs "$native" build/wasm/bin/sheerpole-core.js build/wasm/papers
