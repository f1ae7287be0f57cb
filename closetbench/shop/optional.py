"""Packages that a FreeCAD may come without."""

from __future__ import annotations

import importlib

from closetbench.core.errors import DocumentError


def require(package: str, subject: str) -> None:
    """Raise ``DocumentError`` that says how to get ``package`` when it cannot be imported."""
    try:
        importlib.import_module(package)
    except ImportError as error:
        raise DocumentError(
            subject, "package", package,
            f"{package} is not installed; install it from Tools > Addon manager as a dependency "
            f"of this workbench, with “pip install {package}” in FreeCAD's own Python, or from "
            "the system's packages",
        ) from error
