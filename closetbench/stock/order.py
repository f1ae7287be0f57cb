"""The order of cuts on a sheet: trim, then each panel's own cuts, panel by panel.

The sheet is trimmed first. Then all cuts of the first direction are made, and each strip
in its turn is cut on to the end. Pieces of one size follow each other, so that the fence
stays. A strip of sheet S1 is called S1-A, a piece of that strip S1-A1, of that S1-A1a.
"""

from __future__ import annotations

from closetbench.stock.grid import PER_MM, down, up
from closetbench.stock.place import Panel
from closetbench.stock.plan import Cut, StockSheet

_LETTERS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def cutting_order(name: str, panel: Panel, sheet: StockSheet, kerf: int) -> tuple[Cut, ...]:
    """The numbered cuts that take a raw sheet of this name apart into its panel's parts.

    The remainder of a piece keeps the piece's name until nothing more is cut from it;
    what is then left is "NAME rest". Empty where the sheet as it comes is the part.
    ``kerf`` in nanometres, as in the panel.
    """
    saw = _Saw(kerf)
    saw.trim(name, panel, sheet)
    saw.cut(name, panel, 0)
    return tuple(saw.cuts)


class _Saw:
    def __init__(self, kerf: int) -> None:
        self.kerf = kerf
        self.cuts: list[Cut] = []

    def add(
        self, piece: str, panel: Panel, rip: bool, fence: int, line: float,
        yields: tuple[str, ...],
    ) -> None:  # fmt: skip
        ends = (panel.x0, line, panel.x1, line) if rip else (line, panel.y0, line, panel.y1)
        x0, y0, x1, y1 = (end / PER_MM for end in ends)
        number = len(self.cuts) + 1
        self.cuts.append(Cut(number, piece, rip, fence / PER_MM, x0, y0, x1, y1, yields))

    def trim(self, name: str, panel: Panel, sheet: StockSheet) -> None:
        """Four cuts, the first direction first; each edge runs off the other's cut."""
        trim = up(sheet.trim)
        if trim == 0:
            return
        half = self.kerf / 2
        length, width = down(sheet.length), down(sheet.width)
        inner_x, inner_y = length - trim, width - trim
        rips = [
            (True, width - trim, trim - half, Panel(0, 0, length, width, False)),
            (True, width - 2 * trim, inner_y + half, Panel(0, trim, length, width, False)),
        ]
        low, high = (trim, inner_y) if not panel.along else (0, width)
        ends = [
            (False, length - trim, trim - half, Panel(0, low, length, high, True)),
            (False, length - 2 * trim, inner_x + half, Panel(trim, low, length, high, True)),
        ]
        if panel.along:
            rips = [
                (rip, fence, line, Panel(trim, p.y0, inner_x, p.y1, False))
                for rip, fence, line, p in rips
            ]
        waste = trim - self.kerf > 0
        for number, (rip, fence, line, whole) in enumerate(
            ends + rips if panel.along else rips + ends, 1
        ):
            kept = _called(panel, name) if number == 4 else name
            yields = (kept, f"{name} trim {number}") if waste else (kept,)
            self.add(name, whole, rip, fence, line, yields)

    def cut(self, name: str, panel: Panel, depth: int) -> None:
        """All cuts that a panel of this name needs, and then those of its kids."""
        names = _kid_names(name, panel, depth)
        for index, (kid, kid_name) in enumerate(zip(panel.kids, names, strict=True)):
            low, high = (panel.x0, panel.x1) if panel.along else (panel.y0, panel.y1)
            start, end = (kid.x0, kid.x1) if panel.along else (kid.y0, kid.y1)
            if high - end <= 0:
                continue
            last = index == len(names) - 1
            if not last:
                after: tuple[str, ...] = (name,)
                if index == len(names) - 2 and _fills(panel, low, high):
                    after = (names[-1],)
            else:
                after = (f"{name} rest",) if high - end - self.kerf > 0 else ()
            whole = (
                Panel(start, panel.y0, high, panel.y1, True)
                if panel.along
                else Panel(panel.x0, start, panel.x1, high, False)
            )
            line = end + self.kerf / 2
            self.add(name, whole, not panel.along, end - start, line, (kid_name, *after))
        for kid, kid_name in zip(panel.kids, names, strict=True):
            through = len(panel.kids) == 1 and _fills(panel, *_span(panel))
            self.cut(kid_name, kid, depth if through else depth + 1)


def _span(panel: Panel) -> tuple[int, int]:
    return (panel.x0, panel.x1) if panel.along else (panel.y0, panel.y1)


def _fills(panel: Panel, low: int, high: int) -> bool:
    """Whether the kids reach the far edge, so that the last needs no cut of its own."""
    last = panel.kids[-1]
    return high - (last.x1 if panel.along else last.y1) <= 0


def _called(panel: Panel, name: str) -> str:
    """What a piece is called: by its part, where it needs no more cuts."""
    while len(panel.kids) == 1 and _fills(panel, *_span(panel)):
        panel = panel.kids[0]
    return panel.placement.part if panel.placement is not None else name


def _kid_names(name: str, panel: Panel, depth: int) -> list[str]:
    if len(panel.kids) == 1 and _fills(panel, *_span(panel)):
        return [_called(panel, name)]
    names = []
    count = 0
    for kid in panel.kids:
        fallback = name + _suffix(depth, count)
        called = _called(kid, fallback)
        names.append(called)
        count += called == fallback
    return names


def _suffix(depth: int, index: int) -> str:
    if depth % 2:
        return str(index + 1)
    letters = ""
    index += 1
    while index:
        index, digit = divmod(index - 1, 26)
        letters = _LETTERS[digit] + letters
    return "-" + letters if depth == 0 else letters.lower()
