# Sourced by the other scripts here: where things are, and how packages get installed.
# shellcheck shell=bash

export LC_ALL=C.UTF-8 DEBIAN_FRONTEND=noninteractive PYTHONDONTWRITEBYTECODE=1
unset PYTHONHOME PYTHONSTARTUP

ROOT=$(cd "$(dirname "${BASH_SOURCE[0]}")/.." && pwd)
BUILD=${CLOSETBENCH_BUILD:-$ROOT/build}
HOSTS=${CLOSETBENCH_HOSTS:-/var/cache/closetbench-hosts}
# The interpreter that FreeCAD is built for, whatever `python3` stands first on PATH.
PYTHON=/usr/bin/python3

RUN_PACKAGES=(freecad python3-ezdxf python3-matplotlib python3-numpy python3-scipy)
TEST_PACKAGES=(python3-pytest python3-hypothesis)
SCREEN_PACKAGES=(xvfb xdotool)

say() { printf '== %s\n' "$*" >&2; }
die() { printf '%s\n' "$*" >&2; exit 1; }

# Run a command silently; show what it said only if it failed.
quietly() {
    local log status=0
    log=$(mktemp)
    "$@" >"$log" 2>&1 </dev/null || status=$?
    [ "$status" -eq 0 ] || { printf 'failed (%s): %s\n' "$status" "$*"; tail -n 60 "$log"; } >&2
    rm -f "$log"
    return "$status"
}

installed() { dpkg-query -W -f '${db:Status-Status}\n' "$1" 2>/dev/null | grep -qx installed; }

# Install those of the named packages that are missing. The package lists are fetched
# only if apt cannot install from the ones at hand.
need() {
    local package missing=()
    for package in "$@"; do
        installed "$package" || missing+=("$package")
    done
    [ ${#missing[@]} -gt 0 ] || return 0
    [ "$(id -u)" = 0 ] || die "Not installed: ${missing[*]}. Install them, or run this as root."
    say "installing ${missing[*]}"
    local apt=(apt-get install -y --no-install-recommends -o DPkg::Lock::Timeout=300)
    "${apt[@]}" "${missing[@]}" >/dev/null 2>&1 </dev/null && return 0
    quietly apt-get update -o DPkg::Lock::Timeout=300 && quietly "${apt[@]}" "${missing[@]}"
}
