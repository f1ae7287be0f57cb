#!/usr/bin/env bash
# Install what is missing: tools/setup.sh [run] [test] [screen] [lint] [hosts]
#   run     FreeCAD and the libraries that closetbench uses
#   test    and pytest
#   screen  and a screen without hardware
#   lint    ruff, mypy and import-linter in .venv
#   hosts   what building the other FreeCADs takes (see tools/hosts.sh)
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/common.sh"

# Pinned, so that a new release of a checker does not fail a change that is innocent of it.
LINTERS=(ruff==0.17.6 mypy==2.4.1 import-linter==2.17)

lint() {
    need python3-venv
    local venv="$ROOT/.venv"
    [ "$(cat "$venv/linters" 2>/dev/null)" = "${LINTERS[*]}" ] && return 0
    say "making .venv with ${LINTERS[*]}"
    rm -rf "$venv"
    quietly "$PYTHON" -m venv "$venv"
    quietly "$venv/bin/python" -m pip install --disable-pip-version-check "${LINTERS[@]}"
    echo "${LINTERS[*]}" >"$venv/linters"
}

for group in "$@"; do
    case $group in
        run) need "${RUN_PACKAGES[@]}" ;;
        test) need "${RUN_PACKAGES[@]}" "${TEST_PACKAGES[@]}" ;;
        screen) need "${RUN_PACKAGES[@]}" "${TEST_PACKAGES[@]}" "${SCREEN_PACKAGES[@]}" ;;
        lint) lint ;;
        hosts) need debootstrap util-linux ;;
        *) die "tools/setup.sh: no such group: $group" ;;
    esac
done
