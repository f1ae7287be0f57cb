"""A package that is not there is named, with the way to get it."""

from __future__ import annotations

import pytest

from closetbench.core.errors import DocumentError
from closetbench.shop.optional import require


def test_a_missing_package_says_how_to_get_it(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setitem(__import__("sys").modules, "ezdxf", None)
    with pytest.raises(DocumentError) as caught:
        require("ezdxf", "cut layout")
    text = str(caught.value)
    for word in ("cut layout", "ezdxf is not installed", "Addon manager", "pip install ezdxf"):
        assert word in text
