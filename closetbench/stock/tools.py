"""Saws as data, and which cuts of a sheet to have made at the store and which at home."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum
from math import hypot, isfinite

from closetbench.core.errors import LayoutError
from closetbench.core.findings import Finding, Severity
from closetbench.stock.carry import Carry, too_much
from closetbench.stock.checks import check_keys, millimetres
from closetbench.stock.finals import Finals
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
    that it is allowed to hold; ``tolerance``: by how much its sizes are off, either way.
    """

    key: str
    name: str
    where: Where
    kerf: float
    longest: float | None = None
    widest: float | None = None
    rips_only: bool = False
    smallest: float = 0.0
    tolerance: float = 0.5

    @property
    def rough(self) -> bool:
        """Whether its sizes are no final ones."""
        return self.tolerance > ROUGH


ROUGH = 0.8
"""mm: what is off by more is cut again to its final size (1/32 in, common practice, no
published source)."""
KERF_SLIP = 0.1
"""mm by which a blade may be wider than was planned: ten cuts in a row lose a millimetre of
the rest by that, and no part its size, each being measured anew (arithmetic)."""
STORE_PANEL_SAW = Tool(
    "store panel saw", "vertical panel saw at the store", Where.STORE, 3.2,
    longest=3100.0, smallest=150.0, tolerance=1.5,
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


class StoreWork(Enum):
    """What the store saws."""

    NOTHING = "nothing"
    RIPS = "rips only"
    ALL = "rips and crosscuts"


@dataclass(frozen=True)
class Shop:
    """Who cuts what: the work and the number of cuts (None: any) that the store takes on, the
    saws at home, and saws of the user's ``own`` that stand in the place of all of these."""

    store: StoreWork = StoreWork.ALL
    most: int | None = None
    straightedge: bool = True
    table: bool = True
    own: tuple[Tool, ...] = ()

    @property
    def tools(self) -> tuple[Tool, ...]:
        """The saws, the one to be preferred first."""
        if self.own:
            return self.own
        store = replace(STORE_PANEL_SAW, rips_only=self.store is StoreWork.RIPS)
        return (
            *((store,) if self.store is not StoreWork.NOTHING else ()),
            *((TRACK_SAW,) if self.straightedge else ()),
            *((TABLE_SAW,) if self.table else ()),
        )


def check_shop(shop: Shop) -> None:
    """Raise LayoutError for a number of cuts or a saw that cannot be."""
    if shop.most is not None and shop.most < 0:
        raise LayoutError("shop", "store cuts", shop.most, "must be 0 or more, or none")
    check_keys("saw", (tool.key for tool in shop.own))
    for tool in shop.own:
        for prop in ("kerf", "longest", "widest", "smallest", "tolerance"):
            value = getattr(tool, prop)
            if value is not None and not (isfinite(value) and 0 <= value < 20_000):
                raise LayoutError(f"saw {tool.key}", prop, value, "must be 0 to 20000 mm")


@dataclass(frozen=True)
class ToolCut:
    """A cut and the saw that makes it.

    ``over``: mm that the fence is set wider, narrower if negative, so that the piece ``larger``
    has something left on, to be brought to its size ``to`` at home. ``settles``: the parts that
    have nothing to spare for a saw that is off.
    """

    cut: Cut
    tool: Tool
    settles: tuple[str, ...] = ()
    over: float = 0.0
    larger: str = ""
    to: float = 0.0

    @property
    def as_sawn(self) -> Cut:
        """The cut with the fence as it is set."""
        return replace(self.cut, fence=self.cut.fence + self.over) if self.over else self.cut


@dataclass(frozen=True)
class CutSplit:
    """The cuts of one sheet, shared out: store first, the rest at home in the same order.

    ``carried``: the pieces taken home, by name. ``impossible``: cuts that no tool at hand
    makes. ``to_size``: what was left larger at the store, to be brought to its size at home
    before anything else: its name, whether by a rip, and the size in mm.
    """

    sheet: str
    store: tuple[ToolCut, ...]
    home: tuple[ToolCut, ...]
    carried: tuple[str, ...]
    impossible: tuple[Cut, ...]
    findings: tuple[Finding, ...]
    to_size: tuple[tuple[str, bool, float], ...] = ()


def split_cuts(
    plan: SheetPlan, tools: Sequence[Tool], store_cuts: int | None = None,
    carry: Carry | None = None,
) -> CutSplit:
    """Share the cuts of a sheet out among tools.

    The store makes the cuts on the whole sheet, which no one wants to lift at home, up to
    ``store_cuts`` of them (None: all), and goes on with a piece that is too much to
    ``carry`` for one, or that needs a cut which no saw at home makes. It makes a cut only on a
    piece that it has in its hands: after the first cut that it cannot make, that piece goes
    home as it is. Each cut at home goes to the first tool in the list that can make it.

    A rough saw settles no part's size where that can be helped: what has nothing to spare for
    its being off is left larger, by more than it may be off, where the other side of the cut
    has that to spare and a saw at home can take it off. Else the cut is made at home if the
    piece is not too much for one. What then remains is a finding.
    """
    at_store = [tool for tool in tools if tool.where is Where.STORE]
    at_home = [tool for tool in tools if tool.where is Where.HOME]
    cuts = list(zip(plan.cuts, _pieces_cut(plan), strict=True))
    for_store = {
        name for cut, size in cuts
        if _first_able(at_home, cut, *size) is None and _first_able(at_store, cut, *size)
        for name in _ancestry(plan, cut.piece)
    }
    finals = Finals(plan)
    store: list[ToolCut] = []
    home: list[ToolCut] = []
    impossible: list[Cut] = []
    held = {plan.name}
    for cut, size in cuts:
        wanted = (
            cut.piece == plan.name or cut.piece in for_store
            or (carry is not None and carry.too_much(*size))
        )
        tool = _first_able(at_store, cut, *size) if cut.piece in held and wanted else None
        if tool is not None and (store_cuts is None or len(store) < store_cuts):
            made = _roughly(cut, size, tool, store, at_home, finals)
            alone = carry is not None and not carry.too_much(*size)
            if made.settles and not made.over and alone and _first_able(at_home, cut, *size):
                tool = None
            else:
                store.append(made)
        else:
            tool = None
        if tool is not None:
            held.update(cut.yields)
            continue
        held.discard(cut.piece)
        tool = _first_able(at_home, cut, *size)
        if tool is None:
            impossible.append(cut)
        else:
            home.append(_measured(cut, tool, store, finals))
    carried = _carried(plan, store)
    return CutSplit(
        plan.name,
        tuple(store),
        tuple(home),
        tuple(carried),
        tuple(impossible),
        (
            *_findings(plan, [*store, *home], impossible),
            *_settled_findings(plan, store),
            *(too_much(plan.name, carried, carry) if carry else ()),
        ),
        _to_size(store, finals),
    )


def _to_size(store: Sequence[ToolCut], finals: Finals) -> tuple[tuple[str, bool, float], ...]:
    numbers = [made.cut.number for made in store]
    return tuple(
        (name, made.cut.rip, made.to) for made in store if made.over
        for name in finals.carried(made.cut, 0 if made.over > 0 else 1, numbers)
    )


def _ancestry(plan: SheetPlan, piece: str) -> set[str]:
    """A piece and all that it is cut from."""
    origin = {
        name: cut.piece for cut in plan.cuts for name in cut.yields if name != cut.piece
    }
    found = {piece}
    while piece in origin:
        piece = origin[piece]
        found.add(piece)
    return found


def _measured(
    cut: Cut, tool: Tool, store: Sequence[ToolCut], finals: Finals
) -> ToolCut:
    """A cut at home: after rough ones in its direction the side that has nothing to spare lies
    at the fence."""
    off = sum(
        made.tool.tolerance for made in store if made.tool.rough and made.cut.rip == cut.rip)
    if not off or len(cut.yields) < 2 or not finals.parts(cut, 1):
        return ToolCut(cut, tool)
    if finals.spare(cut, 1) >= off or finals.spare(cut, 0) < off:
        return ToolCut(cut, tool)
    return ToolCut(replace(cut, fence=finals.size(cut, 1), yields=cut.yields[::-1]), tool)


def _roughly(
    cut: Cut, size: tuple[float, float], tool: Tool, before: Sequence[ToolCut],
    at_home: Sequence[Tool], finals: Finals,
) -> ToolCut:
    """A cut at the store, something left on where its saw is rough and that can be spared.

    What lies at the fence is off by the tolerance; what is left by that of every cut in this
    direction ``before`` as well.
    """
    if not tool.rough:
        return ToolCut(cut, tool)
    same = sum(made.cut.rip == cut.rip for made in before)
    off = (tool.tolerance, tool.tolerance * (same + 1))
    inside = [finals.parts(cut, which) for which in range(len(cut.yields))]
    tight = [
        which for which, parts in enumerate(inside)
        if parts and finals.spare(cut, which) < off[which]
    ]
    parts = tuple(name for which in tight for name in inside[which])
    if len(tight) == 1 and len(inside) == 2:
        (which,) = tight
        over = off[which] + tool.tolerance
        to, larger = finals.size(cut, which), cut.yields[which]
        able = _first_able(at_home, replace(cut, piece=larger, fence=to), size[0], to + over)
        if able and finals.spare(cut, 1 - which) >= over + off[1 - which]:
            finals.take(cut, 1 - which, over)
            return ToolCut(cut, tool, parts, -over if which else over, larger, to)
    return ToolCut(cut, tool, parts)


def _settled_findings(plan: SheetPlan, store: Sequence[ToolCut]) -> tuple[Finding, ...]:
    """Parts whose size hangs on a rough saw."""
    final = [made for made in store if made.settles and not made.over]
    if not final:
        return ()
    tool = max((made.tool for made in final), key=lambda one: one.tolerance)
    parts = tuple(dict.fromkeys(part for made in final for part in made.settles))
    return (
        Finding(
            Severity.WARNING,
            f"sheet {plan.name}",
            "store-final-size",
            f"the sizes of these hang on the {tool.name}, and the sheet has nothing to spare for "
            f"cutting them larger first: {', '.join(parts)}",
            "common practice, no published source",
            f"off by up to {millimetres(tool.tolerance)}",
            millimetres(ROUGH),
            "make these cuts at home, with help; or let the store show that its saw is better, "
            "and enter that",
            parts=parts,
        ),
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


def _carried(
    plan: SheetPlan, store: Sequence[ToolCut]
) -> dict[str, tuple[float, float]]:
    """What leaves the store: extents along x and y of each piece, by name."""
    sizes = {plan.name: (plan.sheet.length, plan.sheet.width)}
    for cut in (done.cut for done in store):
        along, up = sizes.pop(cut.piece)
        rest = (up if cut.rip else along) - cut.fence - plan.kerf
        for name, size in zip(cut.yields, (cut.fence, rest), strict=False):
            sizes[name] = (along, size) if cut.rip else (size, up)
    return sizes


def _findings(
    plan: SheetPlan, made: Sequence[ToolCut], impossible: Sequence[Cut]
) -> tuple[Finding, ...]:
    findings = []
    for tool in dict.fromkeys(each.tool for each in made):
        if tool.kerf > plan.kerf + KERF_SLIP:
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
                fix="make it with a hand saw or a mitre saw, the piece clamped",
            )
        )
    return tuple(findings)
