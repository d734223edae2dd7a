# Sourced by app/run, tests/run and .ci/run: the packages the project needs and how they get here.

build_packages=(
  cmake ninja-build g++ pkg-config
  qt6-base-dev qt6-svg-dev qt6-tools-dev qt6-tools-dev-tools qt6-l10n-tools libgl-dev
  libpolyclipping-dev nlohmann-json3-dev libcli11-dev libqpdf-dev
  coinor-libcbc-dev coinor-libclp-dev
  fonts-dejavu-core
)

test_packages=(
  libgtest-dev libbenchmark-dev clang-format clang-tidy
  poppler-utils librsvg2-bin qpdf python3 xvfb
)

say() { printf '%s\n' "$*" >&2; }

is_installed() {
  [[ $(dpkg-query --show --showformat='${db:Status-Status}' "$1" 2>/dev/null) == installed ]]
}

# Installs those of the named packages that are missing; touches no network when all are there.
install_missing() {
  if ! command -v dpkg-query >/dev/null; then
    say "This is no Debian system: install what .ci/setup.sh lists by hand. Going on without."
    return 0
  fi
  local package missing=() as_root=()
  for package in "$@"; do
    is_installed "$package" || missing+=("$package")
  done
  ((${#missing[@]})) || return 0

  if ((EUID != 0)); then
    if ! command -v sudo >/dev/null; then
      say "These packages are missing: ${missing[*]}. Run this as root or install sudo."
      return 1
    fi
    as_root=(sudo)
  fi
  say "Installing: ${missing[*]}"
  "${as_root[@]}" apt-get update -qq >&2
  "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -qq --no-install-recommends "${missing[@]}" >&2
}

# build_in DIRECTORY [CMAKE ARGUMENT]...: configures once, then builds what has changed. All words go
# to standard error, so that the output of the program that is started next stays clean.
build_in() {
  local directory=$1
  shift
  [[ -f $directory/build.ninja ]] || cmake -S "$root" -B "$directory" -G Ninja "$@" >&2
  [[ $(ninja -C "$directory" -n) == *"no work to do"* ]] || ninja -C "$directory" >&2
}
