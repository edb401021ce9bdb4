# Sourced by examples/demo.sh and tests/run.sh: installs Debian packages that are missing.
# shellcheck shell=sh

# What compiling Sheerpole needs; for whoever sources this.
# shellcheck disable=SC2034
build_packages="g++ cmake ninja-build antlr4 libantlr4-runtime-dev nlohmann-json3-dev libvalijson-dev libcli11-dev libfmt-dev
libpugixml-dev coinor-libcbc-dev coinor-libcgl-dev coinor-libclp-dev coinor-libosi-dev coinor-libcoinutils-dev
libeigen3-dev zlib1g-dev libgfortran-12-dev pkg-config libcairo2-dev libpango1.0-dev libfontconfig-dev libmd-dev libutf8proc-dev libqrcodegencpp-dev
libfast-float-dev libevent-dev fonts-liberation fonts-dejavu-core fonts-droid-fallback"

# as_root COMMAND...: runs it as root, through sudo where that is needed; exits 2 where there is no way.
as_root() {
  if [ "$(id -u)" -eq 0 ]; then
    "$@"
  elif command -v sudo >/dev/null 2>&1; then
    sudo "$@"
  else
    echo "This needs root, and there is no sudo: $*" >&2
    exit 2
  fi
}

# install_missing PACKAGE...: installs those that are not there, and says so; exits 2 where it cannot.
install_missing() {
  missing=""
  for package in "$@"; do
    status=$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null || true)
    [ "$status" = installed ] || missing="$missing $package"
  done
  [ -n "$missing" ] || return 0
  if ! command -v apt-get >/dev/null 2>&1; then
    echo "These packages are missing, and there is no apt-get to install them with:$missing" >&2
    echo "The names are those of Debian 12; install what your system calls them and run the build by hand:" >&2
    echo "  cmake --preset release && cmake --build --preset release" >&2
    exit 2
  fi
  echo "Installing with apt-get:$missing"
  as_root apt-get update -qq || { echo "apt-get update failed" >&2; exit 2; }
  # shellcheck disable=SC2086 # a list of names
  as_root env DEBIAN_FRONTEND=noninteractive apt-get install -y -qq --no-install-recommends $missing >/dev/null || {
    echo "apt-get could not install:$missing" >&2
    exit 2
  }
}

# processors: how many jobs to run at once.
processors() {
  nproc 2>/dev/null || echo 2
}
