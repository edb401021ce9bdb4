#!/bin/sh
# debian_sources.sh FOLDER PACKAGE...: unpacks Debian's sources of these source packages in FOLDER, each as FOLDER/PACKAGE. Of
# PACKAGE/upstream it is the archive of its authors alone, without what Debian changes in how it is built.
# What is there already stays. The lists of sources are kept in FOLDER too: nothing of the system's is changed, and no root is needed.
set -eu
folder=$1
shift
missing=
for package in "$@"; do
  [ -d "$folder/${package%/upstream}" ] || missing="$missing $package"
done
[ -n "$missing" ] || exit 0

mkdir -p "$folder/lists/partial" "$folder/archives/partial"
cd "$folder"
here=$(pwd)
suite=$(. /etc/os-release && echo "$VERSION_CODENAME")
echo "deb-src [signed-by=/usr/share/keyrings/debian-archive-keyring.gpg] http://deb.debian.org/debian $suite main" >sources.list
# apt reads what is said of lists and caches from here; who may download as whom is left to the system.
apt() {
  apt-get -qq -o Dir::Etc::SourceList="$here/sources.list" -o Dir::Etc::SourceParts=/dev/null \
    -o Dir::State::Lists="$here/lists" -o Dir::Cache::Archives="$here/archives" -o Dir::Cache::pkgcache= \
    -o Dir::Cache::srcpkgcache= -o APT::Sandbox::User= "$@"
}
apt update
for package in $missing; do
  rm -rf unpack
  mkdir unpack
  name=${package%/upstream}
  if [ "$name" = "$package" ]; then
    (cd unpack && apt source "$name" >log 2>&1) || { cat unpack/log >&2; exit 1; }
  else
    (cd unpack && apt source --tar-only "$name" >log 2>&1 && tar -xf ./*.orig.tar.*) || { cat unpack/log >&2; exit 1; }
  fi
  # The one folder that was unpacked; the last step, so that a package that is half there is no package.
  mv unpack/*/ "$name"
  rm -rf unpack
done
