"""An independent check of sheet plans: it shares no code with the planner.

It cuts every sheet up again from the placements alone, and replays the listed cuts.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.errors import LayoutError
from closetbench.stock.plan import (
    Cut,
    CutPart,
    CutSettings,
    FirstCut,
    GrainOnSheet,
    Plan,
    SheetPlan,
    StockSheet,
)

EPS = 1e-5
"""mm: far below what any saw holds, far above what adding up millimetres loses."""


@dataclass(frozen=True)
class Piece:
    """A rectangle on the raw sheet: corners in mm. ``name`` is empty for what is no part."""

    x0: float
    y0: float
    x1: float
    y1: float
    name: str = ""

    def is_at(self, other: Piece) -> bool:
        """Whether both have the same corners."""
        return (
            abs(self.x0 - other.x0) < EPS
            and abs(self.y0 - other.y0) < EPS
            and abs(self.x1 - other.x1) < EPS
            and abs(self.y1 - other.y1) < EPS
        )

    def clear_of(self, other: Piece, gap: float) -> bool:
        """Whether ``gap`` lies between the two along x or along y."""
        gap -= EPS
        return (
            self.x0 - other.x1 >= gap
            or other.x0 - self.x1 >= gap
            or self.y0 - other.y1 >= gap
            or other.y0 - self.y1 >= gap
        )

    def inside(self, other: Piece) -> bool:
        """Whether it lies within the other."""
        return (
            self.x0 > other.x0 - EPS
            and self.y0 > other.y0 - EPS
            and self.x1 < other.x1 + EPS
            and self.y1 < other.y1 + EPS
        )


def verify_plan(
    plan: Plan,
    parts: Sequence[CutPart],
    settings: CutSettings,
    stock: Sequence[StockSheet],
    cuts: bool = True,
) -> tuple[str, ...]:
    """Everything that is wrong with a plan, as sentences; empty for a plan that holds.

    Checked: every part exactly once, with its size, grain and material; inside the
    trimmed sheet; a kerf between neighbours; cut by straight cuts from edge to edge
    within the allowed stages and first direction; rests free and whole; no more sheets
    than there are; bounds not above the sheets used; and the listed cuts, replayed. ``cuts``
    False: the places alone are settled as yet, so that a sheet may be without cuts.
    """
    faults = _parts_faults(plan, parts) + _stock_faults(plan, stock)
    by_key = {part.key: part for part in parts}
    for sheet in plan.sheets:
        faults += _sheet_faults(sheet, by_key, settings)
        if cuts:
            faults += _uncut_faults(sheet)
    for material, bound in plan.bound.items():
        if bound > len(plan.sheets_of(material)):
            faults.append(f"{material}: the bound {bound} is above the sheets used")
    return tuple(faults)


def require_valid(
    plan: Plan,
    parts: Sequence[CutPart],
    settings: CutSettings,
    stock: Sequence[StockSheet],
    cuts: bool = True,
) -> None:
    """Raise LayoutError with the first fault of a plan, if it has one; ``cuts`` as there."""
    faults = verify_plan(plan, parts, settings, stock, cuts)
    if faults:
        raise LayoutError(
            "cut layout", "plan", faults[0], f"{len(faults)} fault(s); the plan must not be used"
        )


def require_sawable(sheets: Sequence[SheetPlan]) -> None:
    """Raise LayoutError where sheets are wrong in themselves, whoever planned or moved them.

    For what is written from a plan, where neither the parts wanted nor the shop's settings
    are at hand: sizes are taken as placed, and any number of stages is allowed. All else is
    checked as in ``verify_plan``, the cuts too: they must be there and give every part.
    """
    faults = []
    seen: set[str] = set()
    for sheet in sheets:
        for placed in sheet.placements:
            if placed.part in seen:
                faults.append(f"part {placed.part} is placed twice")
            seen.add(placed.part)
        as_placed = {
            p.part: CutPart(
                p.part, *((p.dy, p.dx) if p.rotated else (p.dx, p.dy)), sheet.sheet.material
            )
            for p in sheet.placements
        }
        settings = CutSettings(kerf=sheet.kerf, stages=None, first=FirstCut.ANY)
        faults += _sheet_faults(sheet, as_placed, settings) + _uncut_faults(sheet)
    if faults:
        raise LayoutError(
            "cut layout", "plan", faults[0], f"{len(faults)} fault(s); the plan must not be used"
        )


def _uncut_faults(sheet: SheetPlan) -> list[str]:
    """A sheet without cuts, unless it is the part as it comes."""
    whole = Piece(0.0, 0.0, sheet.sheet.length, sheet.sheet.width)
    alone = [Piece(p.x, p.y, p.x + p.dx, p.y + p.dy).is_at(whole) for p in sheet.placements]
    return [] if sheet.cuts or alone == [True] else [f"{sheet.name}: no cuts are listed"]


def _parts_faults(plan: Plan, parts: Sequence[CutPart]) -> list[str]:
    wanted = Counter(part.key for part in parts)
    placed = Counter(p.part for sheet in plan.sheets for p in sheet.placements)
    faults = [f"part {key} is not on any sheet" for key in wanted if not placed[key]]
    faults += [f"part {key} is placed {n} times" for key, n in placed.items() if n > 1]
    faults += [f"part {key} is not wanted" for key in placed if key not in wanted]
    return faults


def _stock_faults(plan: Plan, stock: Sequence[StockSheet]) -> list[str]:
    known = {sheet.key: sheet for sheet in stock}
    used = Counter(sheet.sheet.key for sheet in plan.sheets)
    faults = []
    for key, count in used.items():
        if key not in known:
            faults.append(f"sheet {key} is not in stock")
            continue
        limit = known[key].quantity
        if limit is not None and count > limit:
            faults.append(f"sheet {key} is used {count} times, there are {limit}")
    for sheet in plan.sheets:
        if sheet.sheet.key in known and sheet.sheet != known[sheet.sheet.key]:
            faults.append(f"{sheet.name}: not the sheet {sheet.sheet.key} of the stock")
    names = Counter(sheet.name for sheet in plan.sheets)
    faults += [f"{n} sheets are named {name}" for name, n in names.items() if n > 1]
    return faults


def _sheet_faults(sheet: SheetPlan, by_key: dict[str, CutPart], settings: CutSettings) -> list[str]:
    name, raw = sheet.name, sheet.sheet
    faults = []
    if abs(sheet.kerf - settings.kerf) > EPS:
        faults.append(f"{name}: planned for a kerf of {sheet.kerf}, not {settings.kerf}")
    trimmed = Piece(raw.trim, raw.trim, raw.length - raw.trim, raw.width - raw.trim)
    placed = [Piece(p.x, p.y, p.x + p.dx, p.y + p.dy, p.part) for p in sheet.placements]
    for placement, piece in zip(sheet.placements, placed, strict=True):
        part = by_key.get(placement.part)
        if part is None:
            continue
        here = f"{name}, part {part.key}"
        if part.material != raw.material:
            faults.append(f"{here}: of {part.material}, on a sheet of {raw.material}")
        size = (part.width, part.length) if placement.rotated else (part.length, part.width)
        if abs(placement.dx - size[0]) > EPS or abs(placement.dy - size[1]) > EPS:
            faults.append(f"{here}: {placement.dx} x {placement.dy} is not its size")
        if placement.rotated and part.grain is GrainOnSheet.ALONG:
            faults.append(f"{here}: turned, its grain must run along the sheet")
        if not placement.rotated and part.grain is GrainOnSheet.ACROSS:
            faults.append(f"{here}: not turned, its grain must run across the sheet")
        if not piece.inside(trimmed):
            faults.append(f"{here}: outside the trimmed sheet")
    rests = [
        Piece(r.x, r.y, r.x + r.dx, r.y + r.dy, f"rest {i}") for i, r in enumerate(sheet.rests, 1)
    ]
    for rest in rests:
        if not rest.inside(trimmed) or rest.x1 - rest.x0 < EPS or rest.y1 - rest.y0 < EPS:
            faults.append(f"{name}, {rest.name}: empty or outside the trimmed sheet")
    pieces = placed + rests
    pieces.sort(key=lambda piece: piece.x0)
    for i, one in enumerate(pieces):
        for other in pieces[i + 1 :]:
            if other.x0 - one.x1 >= sheet.kerf - EPS:
                break
            if not one.clear_of(other, sheet.kerf):
                faults.append(f"{name}: {one.name} and {other.name} are closer than the kerf")
    if not faults and not _can_be_sawn(pieces, trimmed, sheet.kerf, settings):
        faults.append(f"{name}: not to be sawn from edge to edge within the stages allowed")
    if not faults and sheet.cuts:
        faults += _replay_faults(sheet, placed, rests)
    return faults


def _can_be_sawn(pieces: list[Piece], trimmed: Piece, kerf: float, settings: CutSettings) -> bool:
    stages = settings.stages if settings.stages is not None else 2 * len(pieces) + 2
    starts = {FirstCut.RIP: (True,), FirstCut.CROSSCUT: (False,), FirstCut.ANY: (True, False)}
    return any(_sawn(pieces, trimmed, rip, stages, kerf) for rip in starts[settings.first])


def _sawn(pieces: list[Piece], region: Piece, rip: bool, stages: int, kerf: float) -> bool:
    """Whether a region falls into its pieces in so many stages, the first along ``rip``.

    All cuts that a stage allows are made: more cuts never make the rest harder.
    """
    if len(pieces) == 1 and pieces[0].is_at(region):
        return True
    if stages == 0:
        return False
    groups: list[list[Piece]] = []
    end = float("-inf")
    for piece in sorted(pieces, key=(lambda p: p.y0) if rip else (lambda p: p.x0)):
        low, high = (piece.y0, piece.y1) if rip else (piece.x0, piece.x1)
        if groups and low < end + kerf - EPS:
            groups[-1].append(piece)
        else:
            groups.append([piece])
        end = max(end, high)
    whole = len(groups) == 1 and len(pieces) > 1
    for group in groups:
        if rip:
            low, high = min(p.y0 for p in group), max(p.y1 for p in group)
            strip = Piece(region.x0, low, region.x1, high)
        else:
            low, high = min(p.x0 for p in group), max(p.x1 for p in group)
            strip = Piece(low, region.y0, high, region.y1)
        if whole and stages < 2:
            return False
        if not _sawn(group, strip, not rip, stages - 1, kerf):
            return False
    return True


def cut_up(sheet: SheetPlan) -> dict[str, Piece]:
    """Cut a sheet as its cuts say and give the pieces left, by name.

    Raise LayoutError at the first cut that cannot be made as written.
    """
    raw = sheet.sheet
    pieces = {sheet.name: Piece(0.0, 0.0, raw.length, raw.width, sheet.name)}
    for expected, cut in enumerate(sheet.cuts, 1):
        if cut.number != expected:
            raise _bad_cut(sheet, cut, f"the number must be {expected}")
        piece = pieces.pop(cut.piece, None)
        if piece is None:
            raise _bad_cut(sheet, cut, f"there is no piece {cut.piece} at this point")
        left = _saw(sheet, cut, piece)
        if len(left) != len(cut.yields):
            raise _bad_cut(sheet, cut, f"it gives {len(left)} piece(s), {cut.yields} are named")
        for name, found in zip(cut.yields, left, strict=True):
            if name in pieces:
                raise _bad_cut(sheet, cut, f"there already is a piece {name}")
            pieces[name] = Piece(found.x0, found.y0, found.x1, found.y1, name)
    return pieces


def _saw(sheet: SheetPlan, cut: Cut, piece: Piece) -> list[Piece]:
    """The pieces that one cut leaves, that at the fence first."""
    half = sheet.kerf / 2
    if cut.rip:
        line, low, high = cut.y0, piece.y0, piece.y1
        straight = abs(cut.y0 - cut.y1) < EPS
        through = min(cut.x0, cut.x1) < piece.x0 + EPS and max(cut.x0, cut.x1) > piece.x1 - EPS
    else:
        line, low, high = cut.x0, piece.x0, piece.x1
        straight = abs(cut.x0 - cut.x1) < EPS
        through = min(cut.y0, cut.y1) < piece.y0 + EPS and max(cut.y0, cut.y1) > piece.y1 - EPS
    if not straight or not through:
        raise _bad_cut(sheet, cut, f"it does not go straight through {cut.piece}")
    before, after = line - half, line + half
    if before > high + EPS or after < low - EPS:
        raise _bad_cut(sheet, cut, f"it misses {cut.piece}")
    below, above = before - low, high - after
    at_low = abs(below - cut.fence) < EPS
    if not at_low and not abs(above - cut.fence) < EPS:
        raise _bad_cut(sheet, cut, f"the fence at {cut.fence} mm is not where the kerf is")
    sides = []
    if below > EPS:
        sides.append(
            Piece(piece.x0, piece.y0, piece.x1, before)
            if cut.rip
            else Piece(piece.x0, piece.y0, before, piece.y1)
        )
    if above > EPS:
        rest = (
            Piece(piece.x0, after, piece.x1, piece.y1)
            if cut.rip
            else Piece(after, piece.y0, piece.x1, piece.y1)
        )
        sides.insert(len(sides) if at_low else 0, rest)
    return sides


def _bad_cut(sheet: SheetPlan, cut: Cut, limit: str) -> LayoutError:
    return LayoutError(f"sheet {sheet.name}", "cut", cut.number, limit)


def _replay_faults(sheet: SheetPlan, placed: list[Piece], rests: list[Piece]) -> list[str]:
    try:
        left = cut_up(sheet)
    except LayoutError as error:
        return [str(error)]
    faults = []
    for piece in placed:
        found = left.pop(piece.name, None)
        if found is None or not found.is_at(piece):
            faults.append(f"{sheet.name}: the cuts do not give part {piece.name}")
    for rest in rests:
        match = next((name for name, found in left.items() if found.is_at(rest)), None)
        if match is None:
            faults.append(f"{sheet.name}: the cuts do not give {rest.name}")
        else:
            del left[match]
    return faults
