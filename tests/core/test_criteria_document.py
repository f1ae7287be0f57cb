"""docs/criteria.md names every rule of the checks."""

from __future__ import annotations

import ast
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
DOCUMENT = (ROOT / "docs" / "criteria.md").read_text(encoding="utf-8")
CHECKS = (
    "anchoring", "base_strength", "bench_strength", "checks", "drawer_strength", "handling",
    "hung", "loaded", "movement", "people", "rods_strength", "shelves", "wall_borne", "walls",
)


def slugs(module: str) -> set[str]:
    """The rules of the findings that a module makes."""
    tree = ast.parse((ROOT / "closetbench" / "core" / f"{module}.py").read_text(encoding="utf-8"))
    return {
        node.args[2].value
        for node in ast.walk(tree)
        if isinstance(node, ast.Call) and getattr(node.func, "id", "") == "Finding"
        and isinstance(node.args[2], ast.Constant) and isinstance(node.args[2].value, str)
    }


@pytest.mark.parametrize("module", CHECKS)
def test_every_rule_is_documented(module: str) -> None:
    found = slugs(module)
    assert found
    assert not [rule for rule in sorted(found) if f"`{rule}`" not in DOCUMENT]
