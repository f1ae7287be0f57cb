"""What the planner of sheets refuses, said before any search begins."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from math import isfinite

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import CutPart, CutSettings, GrainOnSheet, StockSheet


def millimetres(value: float) -> str:
    """A length as a message shows it: no more digits than it has, 0.001 mm at most."""
    return f"{value:.3f}".rstrip("0").rstrip(".") + " mm"


def lies(part: CutPart) -> tuple[tuple[float, float, bool], ...]:
    """The ways in which a part may lie, as (dx, dy, rotated); the usual way first."""
    straight = (part.length, part.width, False)
    turned = (part.width, part.length, True)
    if part.grain is GrainOnSheet.ALONG:
        return (straight,)
    if part.grain is GrainOnSheet.ACROSS:
        return (turned,)
    return (straight,) if part.length == part.width else (straight, turned)


def check_settings(settings: CutSettings) -> None:
    """Raise LayoutError for settings that no saw can have."""
    weights = settings.weights
    for prop, value in (
        ("kerf", settings.kerf),
        ("seconds", settings.seconds),
        ("tidy", settings.tidy),
        ("weight of a cut", weights.cuts),
        ("weight of a metre sawn", weights.length),
        ("weight of the offcut", weights.offcut),
    ):
        if not isfinite(value) or value < 0:
            raise LayoutError("cut settings", prop, value, "it must be 0 or more")
    if settings.stages is not None and settings.stages < 2:
        raise LayoutError(
            "cut settings", "stages", settings.stages,
            "it must be 2 or more (rips, then crosscuts), or none for no limit",
        )  # fmt: skip


def check_keys(kind: str, keys: Iterable[str]) -> None:
    """Raise LayoutError where a key is empty or comes twice."""
    seen = set()
    for key in keys:
        if not key:
            raise LayoutError(kind, "key", "empty", "every one needs a key")
        if key in seen:
            raise LayoutError(f"{kind} {key}", "key", key, "another one has the same key")
        seen.add(key)


def check_stock(stock: Sequence[StockSheet]) -> None:
    """Raise LayoutError for a sheet of impossible size, trim, quantity or price."""
    check_keys("sheet", (sheet.key for sheet in stock))
    for sheet in stock:
        name = f"sheet {sheet.key}"
        for prop, value in (("length", sheet.length), ("width", sheet.width)):
            if not isfinite(value) or value <= 0:
                raise LayoutError(name, prop, f"{value} mm", "it must be more than 0")
        if not isfinite(sheet.trim) or sheet.trim < 0:
            raise LayoutError(name, "trim", f"{sheet.trim} mm", "it must be 0 or more")
        short = min(sheet.length, sheet.width)
        if 2 * sheet.trim >= short:
            raise LayoutError(
                name, "trim", f"{millimetres(sheet.trim)} at each edge",
                f"it leaves nothing of {millimetres(short)}; it must be less than "
                f"{millimetres(short / 2)}",
            )  # fmt: skip
        if sheet.quantity is not None and sheet.quantity < 0:
            raise LayoutError(name, "quantity", sheet.quantity, "it must be 0 or more, or none")
        if sheet.cost is not None and not (isfinite(sheet.cost) and sheet.cost >= 0):
            raise LayoutError(name, "cost", sheet.cost, "a price must be 0 or more")


def check_parts(parts: Sequence[CutPart], stock: Sequence[StockSheet]) -> None:
    """Raise LayoutError for a part of no size or that no sheet of its material can give."""
    check_keys("part", (part.key for part in parts))
    at_hand = [sheet for sheet in stock if sheet.quantity != 0]
    for part in parts:
        name = f"part {part.key}"
        for prop, value in (("length", part.length), ("width", part.width)):
            if not isfinite(value) or value <= 0:
                raise LayoutError(name, prop, f"{value} mm", "it must be more than 0")
        sheets = [sheet for sheet in at_hand if sheet.material == part.material]
        if not sheets:
            known = ", ".join(sorted({sheet.material for sheet in at_hand})) or "none"
            raise LayoutError(
                name, "material", part.material, f"no sheet of it is in stock (there is: {known})"
            )
        if not any(_excess(part, sheet) is None for sheet in sheets):
            raise _too_large(part, sheets)


def _excess(part: CutPart, sheet: StockSheet) -> tuple[float, float] | None:
    """By how much a part overshoots a trimmed sheet in x and y; None where it fits."""
    length, width = sheet.length - 2 * sheet.trim, sheet.width - 2 * sheet.trim
    over = [(max(0.0, dx - length), max(0.0, dy - width)) for dx, dy, _ in lies(part)]
    least = min(over, key=sum)
    return None if max(least) <= 1e-6 else least


def _too_large(part: CutPart, sheets: Sequence[StockSheet]) -> LayoutError:
    overshoot = [(sum(_excess(part, sheet) or ()), index) for index, sheet in enumerate(sheets)]
    sheet = sheets[min(overshoot)[1]]
    over_x, over_y = _excess(part, sheet) or (0.0, 0.0)
    free = CutPart(part.key, part.length, part.width, part.material)
    advice = []
    if any(_excess(free, other) is None for other in sheets):
        advice.append("let its grain run the other way")
    if max(over_x, over_y) <= 2 * sheet.trim:
        advice.append("trim the sheet less")
    over = " and ".join(
        f"{millimetres(value)} along the sheet's {side}"
        for value, side in ((over_x, "length"), (over_y, "width"))
        if value > 1e-6
    )
    advice += [f"make it smaller by {over}", "join it from two parts", "add a larger sheet"]
    grain = "" if part.grain is GrainOnSheet.FREE else f", grain {part.grain.value}"
    return LayoutError(
        f"part {part.key}",
        "size",
        f"{millimetres(part.length)} x {millimetres(part.width)}{grain}",
        f"larger than every sheet of {part.material}; the nearest, {sheet.key}, gives "
        f"{millimetres(sheet.length - 2 * sheet.trim)} x "
        f"{millimetres(sheet.width - 2 * sheet.trim)} inside its trim: " + ", or ".join(advice),
    )
