"""A part moved by hand: the sheet cut up anew, or the reason why it cannot be.

What lies on a sheet is cut up from edge to edge, every gap wide enough for two cuts becoming
a piece of waste; then the independent check has the last word.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from closetbench.core.errors import LayoutError
from closetbench.stock.grid import PER_MM, down, up
from closetbench.stock.order import cutting_order
from closetbench.stock.place import Panel, rests_of
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    Placement,
    Plan,
    Rest,
    SheetPlan,
    StockSheet,
)
from closetbench.stock.verify import require_valid

_FIRST = {FirstCut.RIP: (False,), FirstCut.CROSSCUT: (True,), FirstCut.ANY: (False, True)}


@dataclass(frozen=True)
class _Piece:
    """A part on the sheet, corners in nanometres."""

    x0: int
    y0: int
    x1: int
    y1: int
    placement: Placement

    def span(self, along: bool) -> tuple[int, int]:
        return (self.x0, self.x1) if along else (self.y0, self.y1)


def move_part(
    plan: Plan, part: str, x: float, y: float, turned: bool, parts: Sequence[CutPart],
    settings: CutSettings, stock: Sequence[StockSheet], to: str = "",
) -> Plan:
    """The plan with one part's low corner at x, y on the sheet named ``to``, mm, or on its own;
    ``turned``: its other way round. A sheet that has no part then is no more in the plan; the
    others keep their names. Raises LayoutError with the reason where the plan would not hold."""
    home, old = _where(plan, part)
    target = next((s for s in plan.sheets if s.name == to), None) if to else home
    if target is None:
        raise LayoutError("cut layout", "sheet", to, "is not in the plan")
    dx, dy, rotated = (old.dy, old.dx, not old.rotated) if turned else (
        old.dx, old.dy, old.rotated)
    new = replace(old, x=x, y=y, dx=dx, dy=dy, rotated=rotated)
    placed = {home.name: tuple(p for p in home.placements if p is not old)}
    if target is home:
        placed[home.name] = tuple(new if p is old else p for p in home.placements)
    else:
        placed[target.name] = (*target.placements, new)

    def bare(sheet: SheetPlan) -> SheetPlan:
        if sheet.name not in placed:
            return sheet
        return replace(sheet, placements=placed[sheet.name], rests=(), cuts=())

    sheets = [s for s in map(bare, plan.sheets) if s.placements]
    laid = replace(plan, sheets=tuple(sheets), repeatable=False)
    # the verdict on where things lie comes first: it says best what is wrong
    require_valid(laid, parts, settings, stock, cuts=False)
    moved = replace(laid, sheets=tuple(
        sawn_anew(sheet, settings) if sheet.name in placed else sheet for sheet in sheets
    ))
    require_valid(moved, parts, settings, stock)
    return moved


def _where(plan: Plan, part: str) -> tuple[SheetPlan, Placement]:
    for sheet in plan.sheets:
        for placed in sheet.placements:
            if placed.part == part:
                return sheet, placed
    raise LayoutError("cut layout", "part", part, "lies on no sheet; plan again")


def sawn_anew(sheet: SheetPlan, settings: CutSettings) -> SheetPlan:
    """The sheet with cuts and rests that follow from what lies on it. LayoutError where no
    cuts from edge to edge give all of it."""
    raw, kerf = sheet.sheet, up(sheet.kerf)
    trim = up(raw.trim)
    pieces = []
    for p in sheet.placements:
        x0, y0 = round(p.x * PER_MM), round(p.y * PER_MM)
        pieces.append(_Piece(x0, y0, x0 + up(p.dx), y0 + up(p.dy), p))
    whole = (trim, trim, down(raw.length) - trim, down(raw.width) - trim)
    stages = settings.stages or 2 * len(pieces) + 2
    wrong: LayoutError | None = None
    for along in _FIRST[settings.first]:
        try:
            panel = _cut(sheet.name, pieces, whole, along, kerf, stages)
        except LayoutError as error:
            wrong = error
            continue
        placements = tuple(p.placement for p in panel.below() if p.placement is not None)
        cuts = cutting_order(sheet.name, panel, raw, kerf)
        return replace(sheet, placements=placements, rests=rests_of(panel), cuts=cuts)
    raise wrong or LayoutError(f"sheet {sheet.name}", "first cut", settings.first.value, "unknown")


def _cut(
    name: str, pieces: Sequence[_Piece], region: tuple[int, int, int, int], along: bool,
    kerf: int, stages: int,
) -> Panel:
    x0, y0, x1, y1 = region
    if len(pieces) == 1:
        one = pieces[0]
        if (one.x0, one.y0, one.x1, one.y1) == region:
            return Panel(x0, y0, x1, y1, along, placement=one.placement)
    if stages == 0:
        raise LayoutError(
            f"sheet {name}", "cuts", "too many turns", "more stages than the settings allow")
    low, high = (x0, x1) if along else (y0, y1)
    groups = _groups(pieces, along, kerf)
    kids: list[Panel] = []
    at = low
    for group in groups:
        start = min(p.span(along)[0] for p in group)
        end = max(p.span(along)[1] for p in group)
        if start > at:
            gap = start - at - kerf
            if gap <= 0:
                raise _narrow(name, (start - at) / PER_MM, kerf)
            kids.append(_waste(region, along, at, at + gap))
        strip = _strip(region, along, start, end)
        kids.append(_cut(name, group, strip, not along, kerf, stages - 1))
        at = end + kerf
    if at < high:
        rest = _strip(region, along, at, high)
        return Panel(x0, y0, x1, y1, along, tuple(kids), _as_rest(rest))
    return Panel(x0, y0, x1, y1, along, tuple(kids))


def _groups(pieces: Sequence[_Piece], along: bool, kerf: int) -> list[list[_Piece]]:
    """Pieces that no cut across this direction parts, in order."""
    groups: list[list[_Piece]] = []
    end = 0
    for piece in sorted(pieces, key=lambda p: p.span(along)):
        start, stop = piece.span(along)
        if groups and start < end + kerf:
            groups[-1].append(piece)
        else:
            groups.append([piece])
        end = max(end, stop)
    return groups


def _narrow(name: str, gap: float, kerf: int) -> LayoutError:
    return LayoutError(
        f"sheet {name}", "gap", f"{gap:.2f} mm",
        f"is too narrow for two cuts: leave nothing, exactly a kerf of {kerf / PER_MM:g} mm to a "
        "neighbour, or more than two",
    )


def _strip(
    region: tuple[int, int, int, int], along: bool, low: int, high: int
) -> tuple[int, int, int, int]:
    x0, y0, x1, y1 = region
    return (low, y0, high, y1) if along else (x0, low, x1, high)


def _waste(region: tuple[int, int, int, int], along: bool, low: int, high: int) -> Panel:
    strip = _strip(region, along, low, high)
    return Panel(*strip, not along, rest=_as_rest(strip))


def _as_rest(strip: tuple[int, int, int, int]) -> Rest:
    x0, y0, x1, y1 = (v / PER_MM for v in strip)
    return Rest(x0, y0, x1 - x0, y1 - y0)


def snapped(
    sheet: SheetPlan, part: str, x: float, y: float, dx: float, dy: float, reach: float
) -> tuple[float, float]:
    """Where a part comes to lie that is let go near x, y: against the trimmed edge or a
    neighbour, a kerf between, if one is within ``reach`` mm; else there."""
    raw, others = sheet.sheet, [p for p in sheet.placements if p.part != part]
    across = [raw.trim, raw.length - raw.trim - dx]
    up_down = [raw.trim, raw.width - raw.trim - dy]
    for p in others:
        across += [p.x + p.dx + sheet.kerf, p.x - sheet.kerf - dx, p.x]
        up_down += [p.y + p.dy + sheet.kerf, p.y - sheet.kerf - dy, p.y]
    near_x, near_y = min(across, key=lambda v: abs(v - x)), min(up_down, key=lambda v: abs(v - y))
    return (
        near_x if abs(near_x - x) <= reach else x, near_y if abs(near_y - y) <= reach else y,
    )
