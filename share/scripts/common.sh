# SPDX-License-Identifier: GPL-3.0-or-later
# What the scripts beside this file share. Read by bash, not run on its own.
set -euo pipefail
export LC_ALL=C.UTF-8
top=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
jobs=$(nproc 2>/dev/null || echo 2)

fail() {
    echo "cutwater: $*" >&2
    exit 1
}

# The packages of the named groups, one a line.
packages_of() {
    local group
    for group in "$@"; do
        awk -v group="$group" '$1 == group { print $2 }' "$top/share/scripts/packages.txt"
    done
}

# Of the packages named, those that are not installed.
missing_of() {
    local name
    for name in "$@"; do
        case $(dpkg-query -W -f='${db:Status-Status}' "$name" 2>/dev/null || true) in
        installed) ;;
        *) echo "$name" ;;
        esac
    done
}

# Installs what is missing of the named groups; says what before it does it, and asks nothing.
install_groups() {
    local wanted missing apt words sizes
    if ! command -v apt-get >/dev/null || ! command -v dpkg-query >/dev/null; then
        fail "this script installs packages with apt-get, which this system does not have; use Debian 12, or" \
            "install what share/scripts/packages.txt lists in your system's way and build as DEVELOPERS.md says."
    fi
    mapfile -t wanted < <(packages_of "$@")
    mapfile -t missing < <(missing_of "${wanted[@]}")
    if ((${#missing[@]} == 0)); then
        echo "All packages that are needed are installed already."
        return
    fi
    echo "These Debian packages are needed and not installed yet: ${missing[*]}"

    apt=(env DEBIAN_FRONTEND=noninteractive LC_ALL=C.UTF-8 apt-get -q -o Acquire::Retries=2 -o Acquire::http::Timeout=30
        -o DPkg::Lock::Timeout=300)
    if [ "$(id -u)" != 0 ]; then
        command -v sudo >/dev/null ||
            fail "installing packages needs root, and there is no sudo here; run this script as root," \
                "or let root run: apt-get install ${missing[*]}"
        apt=(sudo "${apt[@]}")
        echo "They are installed with sudo, which may ask for your password."
    fi
    # A source that cannot be reached is no error yet: what is needed may be known or fetched already.
    echo "Reading the lists of packages (apt-get update) ..."
    "${apt[@]}" update >/dev/null || true
    words=("${apt[@]}" install --no-install-recommends "${missing[@]}")
    sizes=$("${words[@]}" --assume-no </dev/null 2>/dev/null | grep -E '^(Need to get|After this|[0-9]+ upgraded)' || true)
    [ -z "$sizes" ] || printf 'With all that these packages need themselves:\n%s\n' "$sizes"
    "${words[@]}" --yes --download-only </dev/null >/dev/null ||
        fail "apt-get could not fetch the packages (its own words are above); see that the network is up and that" \
            "the sources of apt name a mirror of Debian 12."
    "${words[@]}" --yes -o Dpkg::Use-Pty=0 </dev/null >/dev/null ||
        fail "apt-get could not install the packages; its own words are above."
    echo "Installed."
}

# Configures and builds: build_preset PRESET [more words for cmake].
build_preset() {
    local preset=$1
    shift
    echo "Building in build/$preset on $jobs processors ..."
    (cd "$top" && cmake --preset "$preset" "$@" >/dev/null && cmake --build "build/$preset" -j "$jobs") ||
        fail "the build failed; the first message of the compiler or of cmake above says where."
}
