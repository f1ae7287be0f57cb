"""A design as a FreeCAD file, and back, without FreeCAD's windows."""

from __future__ import annotations

import contextlib
import os
import secrets
from dataclasses import dataclass
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.closet import ClosetDesign
from closetbench.core.errors import DocumentError
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.model.base import class_of
from closetbench.model.bridge import design_of, format_of
from closetbench.model.children import PLANS
from closetbench.model.layout import settings_of, shop_of
from closetbench.model.make import closet_from_design
from closetbench.stock.plan import CutSettings
from closetbench.stock.purchase import SpareRule
from closetbench.stock.tools import Shop


def write_model(
    design: ClosetDesign, catalogue: Catalogue, path: Path, *,
    catalogue_file: Path | None = None, form: LengthFormat | None = None,
) -> Path:
    """Write the design with all its solids to ``path``, whole or not at all.

    Raises ``ClosetError`` where it cannot be built, ``DocumentError`` where not written.
    """
    doc = FreeCAD.newDocument(path.stem, hidden=True, temp=True)
    try:
        closet_from_design(
            doc, design, catalogue, catalogue_file=catalogue_file, form=form
        )
        _save(doc, Path(path))
    finally:
        FreeCAD.closeDocument(doc.Name)
    return path


@dataclass(frozen=True)
class ReadModel:
    """A closet as a file holds it: its design and what else a job needs. What its cut layout
    and its bill say is that of new ones where it has none."""

    design: ClosetDesign
    form: LengthFormat
    measured: tuple[tuple[str, float], ...]
    catalogue_file: Path | None
    cutting: CutSettings
    trim: float | None
    shop: Shop
    bit: float | None
    spare: SpareRule
    offcuts_file: Path | None


def read_model(path: Path) -> ReadModel:
    """The closet in a FreeCAD file. ``DocumentError`` where it is not one, or not one closet."""
    if not path.is_file():
        raise DocumentError("model", "file", str(path), "is not there")
    try:
        doc = FreeCAD.openDocument(str(path), hidden=True)
    except Exception as error:  # as in _save
        raise DocumentError("model", "file", str(path), f"cannot be opened ({error})") from error
    try:
        closets = [o for o in doc.Objects if class_of(o) == "Closet"]
        if len(closets) != 1:
            raise DocumentError("model", "closets in the file", len(closets), "must be 1")
        closet = closets[0]
        plans = {class_of(o): o for o in closet.InList if class_of(o) in PLANS}
        layout, bill = plans.get("CutLayout"), plans.get("Bill")
        hand = layout.Offcuts if layout is not None else None
        return ReadModel(
            design_of(closet), format_of(closet),
            tuple((key, float(value)) for key, value in sorted(closet.Measured.items())),
            Path(closet.Catalogue) if closet.Catalogue else None,
            settings_of(layout) if layout else CutSettings(),
            layout.Trim.Value if layout and layout.TrimOverride else None,
            shop_of(layout) if layout else Shop(),
            bill.RouterBit.Value or None if bill else None,
            SpareRule(bill.SparePer, bill.SpareAbove) if bill else SpareRule(),
            Path(hand.File) if hand is not None and hand.File else None,
        )
    finally:
        FreeCAD.closeDocument(doc.Name)


def _save(doc: Any, path: Path) -> None:
    beside = path.with_name(f".{path.stem}-{secrets.token_hex(4)}.FCStd")
    try:
        doc.Label = path.stem
        doc.saveCopy(str(beside))
        os.replace(beside, path)
    except Exception as error:  # FreeCAD's own kinds, which differ between its versions
        raise DocumentError(
            "model", "file", str(path),
            f"cannot be written ({error}); see whether the folder may be written to and the disk "
            "has room",
        ) from error
    finally:
        with contextlib.suppress(OSError):
            beside.unlink()
