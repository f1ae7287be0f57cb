"""Saws as data, and which cuts of a sheet to have made at the store and which at home."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import hypot

from closetbench.core.findings import Finding, Severity
from closetbench.stock.checks import millimetres
from closetbench.stock.plan import Cut, SheetPlan

_EASE = 1e-6


class Where(Enum):
    """Where a saw stands."""

    STORE = "store"
    HOME = "home"


@dataclass(frozen=True)
class Tool:
    """A saw. Lengths in mm; None where there is no limit.

    ``longest``: cut it can make; ``widest``: between fence and blade; ``rips_only``: it
    cuts along a piece's longer side only, against a fence; ``smallest``: side of a piece
    that it is allowed to hold.
    """

    key: str
    name: str
    where: Where
    kerf: float
    longest: float | None = None
    widest: float | None = None
    rips_only: bool = False
    smallest: float = 0.0


STORE_PANEL_SAW = Tool(
    "store panel saw", "vertical panel saw at the store", Where.STORE, 3.2,
    longest=3100.0, smallest=150.0,
)  # fmt: skip
TRACK_SAW = Tool(
    "straightedge saw", "circular saw along a straightedge", Where.HOME, 2.4,
    longest=2600.0, smallest=60.0,
)  # fmt: skip
TABLE_SAW = Tool(
    "table saw", "small table saw", Where.HOME, 3.2,
    longest=2600.0, widest=600.0, rips_only=True, smallest=40.0,
)  # fmt: skip
TOOLS = (STORE_PANEL_SAW, TRACK_SAW, TABLE_SAW)
"""Common practice, no published source: measure the kerf of the blade that will be used."""


@dataclass(frozen=True)
class ToolCut:
    """A cut and the saw that makes it."""

    cut: Cut
    tool: Tool


@dataclass(frozen=True)
class CutSplit:
    """The cuts of one sheet, shared out: store first, the rest at home in the same order.

    ``carried``: the pieces taken home, by name. ``impossible``: cuts that no tool at hand
    makes.
    """

    sheet: str
    store: tuple[ToolCut, ...]
    home: tuple[ToolCut, ...]
    carried: tuple[str, ...]
    impossible: tuple[Cut, ...]
    findings: tuple[Finding, ...]


def split_cuts(plan: SheetPlan, tools: Sequence[Tool], store_cuts: int | None = None) -> CutSplit:
    """Share the cuts of a sheet out among tools.

    The store makes the cuts on the whole sheet, which no one wants to lift at home, up to
    ``store_cuts`` of them (None: all); it makes a cut only on a piece that it has in its
    hands, so after the first cut that it cannot make, that piece goes home as it is. Each
    cut at home goes to the first tool in the list that can make it.
    """
    at_store = [tool for tool in tools if tool.where is Where.STORE]
    at_home = [tool for tool in tools if tool.where is Where.HOME]
    pieces = _pieces_cut(plan)
    store: list[ToolCut] = []
    home: list[ToolCut] = []
    impossible: list[Cut] = []
    left_store = False
    for cut, (length, width) in zip(plan.cuts, pieces, strict=True):
        if cut.piece == plan.name and not left_store:
            tool = _first_able(at_store, cut, length, width)
            if tool is not None and (store_cuts is None or len(store) < store_cuts):
                store.append(ToolCut(cut, tool))
                continue
            left_store = True
        tool = _first_able(at_home, cut, length, width)
        if tool is None:
            impossible.append(cut)
        else:
            home.append(ToolCut(cut, tool))
    return CutSplit(
        plan.name,
        tuple(store),
        tuple(home),
        _carried(plan, store),
        tuple(impossible),
        _findings(plan, [*store, *home], impossible),
    )


def _pieces_cut(plan: SheetPlan) -> list[tuple[float, float]]:
    """For each cut, the length of the cut and the extent of its piece across it."""
    sizes = {plan.name: (plan.sheet.length, plan.sheet.width)}
    found = []
    for cut in plan.cuts:
        along, up = sizes[cut.piece]
        length, across = (along, up) if cut.rip else (up, along)
        found.append((length, across))
        rest = across - cut.fence - plan.kerf
        for name, size in zip(cut.yields, (cut.fence, rest), strict=False):
            sizes[name] = (length, size) if cut.rip else (size, length)
    return found


def _first_able(tools: Sequence[Tool], cut: Cut, length: float, across: float) -> Tool | None:
    for tool in tools:
        if tool.longest is not None and hypot(cut.x1 - cut.x0, cut.y1 - cut.y0) > tool.longest:
            continue
        if tool.widest is not None and min(cut.fence, across - cut.fence) > tool.widest:
            continue
        if tool.rips_only and length + _EASE < across:
            continue
        if min(length, across) + _EASE < tool.smallest:
            continue
        return tool
    return None


def _carried(plan: SheetPlan, store: Sequence[ToolCut]) -> tuple[str, ...]:
    pieces = {plan.name: None}
    for done in store:
        del pieces[done.cut.piece]
        pieces.update(dict.fromkeys(done.cut.yields))
    return tuple(pieces)


def _findings(
    plan: SheetPlan, made: Sequence[ToolCut], impossible: Sequence[Cut]
) -> tuple[Finding, ...]:
    findings = []
    for tool in dict.fromkeys(each.tool for each in made):
        if tool.kerf > plan.kerf + _EASE:
            findings.append(
                Finding(
                    Severity.WARNING,
                    f"sheet {plan.name}",
                    "tool-kerf",
                    f"the layout reckons with a kerf of {millimetres(plan.kerf)}, the "
                    f"{tool.name} takes {millimetres(tool.kerf)}: the last parts of a row come "
                    "out small",
                    "arithmetic",
                    millimetres(tool.kerf),
                    millimetres(plan.kerf),
                    "plan again with the wider kerf",
                )
            )
    for cut in impossible:
        findings.append(
            Finding(
                Severity.WARNING,
                f"sheet {plan.name}",
                "no-tool-for-cut",
                f"no tool at hand makes cut {cut.number} on {cut.piece} "
                f"(fence {millimetres(cut.fence)})",
                "limits of the tools listed",
                fix="have it made at the store, or cut along a straightedge",
            )
        )
    return tuple(findings)
