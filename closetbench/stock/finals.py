"""What the pieces of a sheet have to spare across each cut: where a rough saw may be off.

A saw that is off by more than a part allows cuts rough: a piece that has nothing to spare is
left larger where the other side of the cut has, and is brought to its size at home.
"""

from __future__ import annotations

from collections.abc import Collection
from dataclasses import dataclass, field

from closetbench.stock.plan import Cut, SheetPlan


@dataclass
class _Piece:
    """A piece between two cuts: extents along x and y, and what the cut of it gives, that at
    the fence first. Names come again, pieces don't."""

    name: str
    size: tuple[float, float]
    cut: Cut | None = None
    gives: list[_Piece] = field(default_factory=list)
    given: dict[bool, float] = field(default_factory=dict)

    def across(self, rip: bool) -> float:
        return self.size[1 if rip else 0]

    def names(self) -> set[str]:
        """The names of all that is cut from it in the end."""
        return set().union(*(each.names() for each in self.gives)) if self.gives else {self.name}


class Finals:
    """The cuts of one sheet, and what it has to spare, less what was given away."""

    def __init__(self, plan: SheetPlan) -> None:
        self._parts = [p.part for p in plan.placements]
        self._cut: dict[int, _Piece] = {}
        held = {plan.name: _Piece(plan.name, (plan.sheet.length, plan.sheet.width))}
        for cut in plan.cuts:
            piece = held.pop(cut.piece)
            piece.cut = cut
            self._cut[cut.number] = piece
            rest = piece.across(cut.rip) - cut.fence - plan.kerf
            for name, extent in zip(cut.yields, (cut.fence, rest), strict=False):
                size = (piece.size[0], extent) if cut.rip else (extent, piece.size[1])
                piece.gives.append(_Piece(name, size))
                held[name] = piece.gives[-1]

    def parts(self, cut: Cut, which: int) -> tuple[str, ...]:
        """The parts in what a cut gives, 0 at the fence, 1 what is left; keys in order."""
        found = self._cut[cut.number].gives[which].names()
        return tuple(name for name in self._parts if name in found)

    def spare(self, cut: Cut, which: int) -> float:
        """How much smaller what a cut gives may be across it, with all parts in it; mm."""
        last = self._left_over(self._cut[cut.number].gives[which], cut.rip)
        if last is None:
            return 0.0
        return min(each.across(cut.rip) - each.given.get(cut.rip, 0.0) for each in last)

    def size(self, cut: Cut, which: int) -> float:
        """The extent across a cut of what it gives; mm."""
        return self._cut[cut.number].gives[which].across(cut.rip)

    def take(self, cut: Cut, which: int, much: float) -> None:
        """Make what a cut gives so much smaller; no more than it has to spare."""
        for each in self._left_over(self._cut[cut.number].gives[which], cut.rip) or ():
            each.given[cut.rip] = each.given.get(cut.rip, 0.0) + much

    def carried(self, cut: Cut, which: int, made: Collection[int]) -> tuple[str, ...]:
        """What a cut gives as it is once the cuts of these numbers are made, by name: in pieces
        where it was cut the other way; nothing where it was cut across again."""
        return tuple(self._ends(self._cut[cut.number].gives[which], cut.rip, made))

    def _ends(self, piece: _Piece, rip: bool, made: Collection[int]) -> list[str]:
        if piece.cut is None or piece.cut.number not in made:
            return [piece.name] if piece.names().intersection(self._parts) else []
        if piece.cut.rip == rip:
            return []
        return [name for each in piece.gives for name in self._ends(each, rip, made)]

    def _left_over(self, piece: _Piece, rip: bool) -> list[_Piece] | None:
        """What of a piece is left over at last in a direction; None where a part needs all.

        Where what is left of a cut is needed whole, it is the side that is measured: the other
        gives what there is to spare then.
        """
        if piece.cut is None:
            return None if piece.name in self._parts else [piece]
        if piece.cut.rip == rip:
            for each in reversed(piece.gives):
                inner = self._left_over(each, rip)
                if inner is not None:
                    return inner
            return None
        found: list[_Piece] = []
        for each in piece.gives:
            inner = self._left_over(each, rip)
            if inner is None:
                return None
            found += inner
        return found
