"""Rows of the bill for what is cut from no sheet: rods, kept panels, existing pieces."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.core.bodies import LengthPart, Piece
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.parts import Part
from closetbench.shop.csv_text import Cell
from closetbench.shop.language import Words, mark, plain
from closetbench.shop.words import machining_words

Row = list[Cell]


def bar_rows(
    lengths: Sequence[LengthPart], catalogue: Catalogue, form: LengthFormat, words: Words = plain
) -> list[Row]:
    """What to cut from bars; equal lengths of one bar are one row. Empty for none."""
    if not lengths:
        return []
    groups: dict[tuple[str, float], list[LengthPart]] = {}
    for part in lengths:
        groups.setdefault((part.stock, round(part.length, 3)), []).append(part)
    rows: list[Row] = [
        [mark("Cut from bars")], [*mark(("parts", "count", "bar", "length mm", "length"))],
    ]
    rows += [
        ["; ".join(p.full_name for p in group), len(group), words(catalogue.bar(key).title),
         length,
         form.text(length)]
        for (key, length), group in groups.items()
    ]
    return rows


def reused_rows(
    reused: Sequence[Part], pieces: Sequence[Piece], form: LengthFormat, words: Words = plain
) -> list[Row]:
    """What is cut from kept panels, and the pieces that stand in the closet as they are.

    Empty for none.
    """
    if not (reused or pieces):
        return []
    rows: list[Row] = [
        [mark("Reused")],
        [*mark(("part", "from", "length mm", "width mm", "thickness mm", "machining",
                "weight kg"))],
    ]
    rows += [
        [p.full_name, p.panel.material, p.panel.length, p.panel.width, p.panel.thickness,
         machining_words(p.panel, form, words), None]
        for p in reused
    ]
    for piece in pieces:
        box = piece.box()
        rows.append([
            piece.full_name, words("as it is: greatest width, depth and height"),
            box.x1 - box.x0,
            box.y1 - box.y0, box.z1 - box.z0, "", piece.weight,
        ])
    return rows
