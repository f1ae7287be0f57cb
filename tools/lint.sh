#!/usr/bin/env bash
# Style, types and import layers; all three are run, whatever the first one finds.
set -euo pipefail
. "$(dirname "${BASH_SOURCE[0]}")/common.sh"
cd "$ROOT"
tools/setup.sh lint
status=0
.venv/bin/ruff check --no-cache . || status=1
.venv/bin/mypy --cache-dir "$BUILD/mypy" || status=1
.venv/bin/lint-imports --no-cache || status=1
exit "$status"
