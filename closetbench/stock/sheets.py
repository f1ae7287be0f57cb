"""Plans which sheets to take and how to cut them: the way in for everybody else."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial

from closetbench.core.errors import LayoutError
from closetbench.stock.at_hand import fill_offcuts
from closetbench.stock.bounds import least_cost, least_sheets
from closetbench.stock.checks import check_parts, check_settings, check_stock
from closetbench.stock.clock import Clock
from closetbench.stock.grid import Grid, Kind, make_grid
from closetbench.stock.order import cutting_order
from closetbench.stock.place import Panel, lay_out, placements_of, rests_of
from closetbench.stock.plan import (
    CutPart,
    CutSettings,
    FirstCut,
    Plan,
    PlanProgress,
    SearchEnd,
    SheetPlan,
    StockSheet,
)
from closetbench.stock.scales import sharpen
from closetbench.stock.search import Limits, Search
from closetbench.stock.tidy import tidy
from closetbench.stock.trees import Tree
from closetbench.stock.turning import sharpen_turning
from closetbench.stock.verify import require_valid

_ENDLESS = 1_000_000
_SHEET_PENALTY = 1e-6
"""Of the dearest sheet: between sets of equal cost, that of fewer sheets to be bought is better."""
_FIRST_SHARE = 0.15
"""Of the search, before the bound is sharpened: most searches that meet it do so at once."""
_ALONE_SHARE = 0.3
"""Of the search, besides it, where there are several kinds of sheet: for each kind alone."""
_TIDY_PARTS = 30
"""Parts that take the whole of the seconds for tidying; fewer take their share of it."""
_PROGRAMS = 200
_TURNING_PROGRAMS = 250
"""Linear programs for the bound, for each second of search."""


def plan_sheets(
    parts: Sequence[CutPart],
    stock: Sequence[StockSheet],
    settings: CutSettings,
    progress: Callable[[PlanProgress], bool] | None = None,
) -> Plan:
    """Plan the cheapest sheets that give all parts, then their simplest cutting.

    Materials are planned one by one. A sheet costs its ``cost``; where a sheet to be
    bought has none, all sheets of that material cost their area. Offcuts without a cost
    cost nothing and so are taken first, those too that save no sheet (see ``at_hand``).
    ``progress`` is called now and then, and ends the search when it returns False: the best
    plan so far is given. Raise LayoutError where input contradicts itself, a part fits no
    sheet, or the sheets at hand do not suffice.
    """
    check_settings(settings)
    check_stock(stock)
    check_parts(parts, stock)
    materials = list(dict.fromkeys(part.material for part in parts))
    told = _Told(progress, len(materials), settings)
    sheets: list[SheetPlan] = []
    bound: dict[str, int] = {}
    ended: dict[str, SearchEnd] = {}
    for material in materials:
        group = _Group(
            [part for part in parts if part.material == material],
            [s for s in stock if s.material == material and s.quantity != 0],
            settings,
        )
        ended[material] = group.plan(partial(told.search, group))
        group.use_offcuts()
        ends = (ended[material], group.tidy(partial(told.tidy, group)))
        if group.search.proved:
            ended[material] = SearchEnd.PROVED
        told.repeatable &= SearchEnd.CLOCK not in ends and SearchEnd.CANCELLED not in ends
        told.finished += 1
        bound[material] = group.bound
        sheets += group.sheet_plans(len(sheets) + 1)
    plan = Plan(tuple(sheets), bound, ended, told.repeatable)
    require_valid(plan, parts, settings, stock)
    return plan


class _Told:
    """Tells the caller how far the search is, until it wants no more."""

    def __init__(
        self, progress: Callable[[PlanProgress], bool] | None, materials: int, settings: CutSettings
    ) -> None:
        self.progress = progress
        self.materials = materials
        self.finished = 0
        self.repeatable = True
        self.going = True
        whole = settings.seconds + settings.tidy
        self.search_share = settings.seconds / whole if whole else 1.0

    def search(self, group: _Group, done: float) -> bool:
        """Tell of the search for fewer sheets; whether to go on."""
        return self._tell(group, done * self.search_share)

    def tidy(self, group: _Group, done: float) -> bool:
        """Tell of the search for simpler cutting; whether to go on."""
        return self._tell(group, self.search_share + done * (1.0 - self.search_share))

    def _tell(self, group: _Group, done: float) -> bool:
        if self.progress is not None and self.going:
            share = (self.finished + done) / self.materials
            sheets = len(group.search.best or ())
            self.going = self.progress(PlanProgress(group.material, share, sheets, group.bound))
        return self.going


class _Group:
    """All parts and sheets of one material."""

    def __init__(
        self, parts: Sequence[CutPart], stock: Sequence[StockSheet], settings: CutSettings
    ) -> None:
        self.material = parts[0].material
        self.parts = parts
        self.settings = settings
        self.grid: Grid = make_grid(parts, stock, settings.kerf)
        costs = sheet_costs(stock)
        dearest = max(costs) or 1.0

        def kind(i: int, size: tuple[float, float]) -> Kind:
            cost = costs[i] + _SHEET_PENALTY * dearest if costs[i] else 0.0
            quantity = stock[i].quantity
            return Kind(*size, cost, _ENDLESS if quantity is None else int(quantity))

        sizes = self.grid.sizes
        takes = [any(map(kind(i, sizes[i]).takes, self.grid.items)) for i in range(len(stock))]
        rank = sorted(
            (i for i in range(len(stock)) if takes[i]), key=lambda i: (costs[i], stock[i].key)
        )
        self.stock = [stock[i] for i in rank]
        self.kinds = [kind(i, sizes[i]) for i in rank]
        self.tight = [kind(i, self.grid.tight[i]) for i in rank]
        self.bound = least_sheets(self.grid.items, self.tight)
        self.search = self._search(self.kinds, least_cost(self.grid.items, self.tight, self.bound))
        self.filled: tuple[Tree, ...] = ()

    def _search(self, kinds: Sequence[Kind], least: float) -> Search:
        limits = Limits(_FIRST[self.settings.first], self.settings.stages)
        return Search(self.grid.items, kinds, limits, self.settings.seed, least)

    def plan(self, watch: Callable[[float], bool]) -> SearchEnd:
        """Search; where it does not soon meet the quick bound, sharpen that and search on."""
        seconds = self.settings.seconds
        first = _FIRST_SHARE * seconds
        if len(self.kinds) > 1:
            self._each_alone(_ALONE_SHARE * seconds, watch)
        end = self.search.run(Clock(first, lambda done: watch(done * _FIRST_SHARE)))
        if end is SearchEnd.BUDGET and self.search.best is not None:
            self._sharpen(lambda: watch(_FIRST_SHARE))
        if end is SearchEnd.BUDGET:
            rest = 1.0 - _FIRST_SHARE
            end = self.search.run(
                Clock(seconds - first, lambda done: watch(_FIRST_SHARE + done * rest))
            )
        if self.search.best is None:
            raise self._too_few()
        return end

    def use_offcuts(self) -> None:
        """Cut what fits from offcuts that are free, though they save no sheet."""
        free = [i for i, sheet in enumerate(self.stock) if sheet.offcut and not sheet.cost]
        self.filled = fill_offcuts(self.search, free)

    def tidy(self, watch: Callable[[float], bool]) -> SearchEnd:
        """Make the cutting of the sheets found simpler; filled offcuts stay as they are."""
        settings = self.settings
        if settings.tidy == 0.0 or not self.search.best:
            return SearchEnd.BUDGET
        share = min(1.0, len(self.parts) / _TIDY_PARTS)
        clock = Clock(settings.tidy * share, watch)
        return tidy(self.search, self.grid, settings.weights, settings.seed, clock)

    def _each_alone(self, seconds: float, watch: Callable[[float], bool]) -> None:
        """Begin with the best that one kind of sheet can do, so that a mix is never worse."""
        alone = [
            index
            for index, kind in enumerate(self.kinds)
            if kind.quantity >= len(self.parts)
            and all(kind.takes(item) for item in self.grid.items)
        ]
        for index in alone:
            search = self._search([self.kinds[index]], 0.0)
            search.least = self.bound * self.kinds[index].cost
            search.run(Clock(seconds / len(alone), lambda done: watch(0.0)))
            self.search.adopt(search.best or (), index)

    def _sharpen(self, going: Callable[[], bool]) -> None:
        items, kinds = self.grid.items, self.tight
        width, height = max(k.width for k in kinds), max(k.height for k in kinds)
        enough = len(self.search.best or ())
        for better, programs in ((sharpen, _PROGRAMS), (sharpen_turning, _TURNING_PROGRAMS)):
            if self.bound < enough:
                budget = int(programs * self.settings.seconds)
                self.bound = better(items, width, height, self.bound, enough, budget, going)
        self.search.least = max(self.search.least, least_cost(items, kinds, self.bound))

    def sheet_plans(self, number: int) -> list[SheetPlan]:
        """The best sheets found, offcuts first, named from ``number`` on."""
        laid = [
            (self.stock[tree.kind], lay_out(tree, self.grid, self.parts, self.stock[tree.kind]))
            for tree in (*self.filled, *(self.search.best or ()))
        ]
        laid.sort(key=lambda pair: (not pair[0].offcut, pair[0].key, -_used(pair[1])))
        kerf = self.settings.kerf
        return [
            SheetPlan(
                name, sheet, kerf, placements_of(panel), rests_of(panel),
                cutting_order(name, panel, sheet, self.grid.kerf),
            )
            for name, (sheet, panel) in zip(
                (f"S{n}" for n in range(number, number + len(laid))), laid, strict=True
            )
        ]  # fmt: skip

    def _too_few(self) -> LayoutError:
        have = ", ".join(f"{sheet.quantity} of {sheet.key}" for sheet in self.stock)
        area = sum(part.length * part.width for part in self.parts) / 1e6
        need = f"at least {self.bound} are needed" if self.bound else "more are needed"
        return LayoutError(
            f"material {self.material}", "sheets in stock", have,
            f"no plan was found for {len(self.parts)} parts of {area:.2f} m² on them; {need}: "
            "add sheets, or let the search take longer",
        )  # fmt: skip


def _used(panel: Panel) -> float:
    return sum(p.dx * p.dy for p in placements_of(panel))


_FIRST = {FirstCut.RIP: True, FirstCut.CROSSCUT: False, FirstCut.ANY: None}


def sheet_costs(stock: Sequence[StockSheet]) -> list[float]:
    """What the planner counts each sheet of one material at.

    The price where every sheet to be bought has one, else the area in m²; an offcut
    without a price is free.
    """
    priced = all(sheet.cost is not None for sheet in stock if not sheet.offcut)
    costs = []
    for sheet in stock:
        if sheet.offcut:
            costs.append(sheet.cost or 0.0 if priced else 0.0)
        elif priced:
            costs.append(float(sheet.cost or 0.0))
        else:
            costs.append(sheet.length * sheet.width / 1e6)
    return costs
