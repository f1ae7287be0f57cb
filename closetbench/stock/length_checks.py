"""What the planner of lengths refuses, and an independent check of what it made."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Mapping, Sequence
from itertools import pairwise
from math import isfinite

from closetbench.core.errors import LayoutError
from closetbench.stock.checks import check_keys, millimetres
from closetbench.stock.length_plan import (
    BarPlan,
    LengthNeed,
    LengthPlan,
    StockLength,
    clear_stretches,
)

EPS = 1e-5
"""mm: far below what any saw holds."""


def check_lengths(needs: Sequence[LengthNeed], stock: Sequence[StockLength], kerf: float) -> None:
    """Raise LayoutError for pieces or stock that contradict themselves, or that do not fit."""
    if not isfinite(kerf) or kerf < 0:
        raise LayoutError("cut settings", "kerf", kerf, "it must be 0 or more")
    check_keys("piece", (need.key for need in needs))
    check_keys("stock length", (each.key for each in stock))
    for each in stock:
        name = f"stock length {each.key}"
        if not isfinite(each.length) or each.length <= 0:
            raise LayoutError(name, "length", f"{each.length} mm", "it must be more than 0")
        if not isfinite(each.trim) or not 0 <= 2 * each.trim < each.length:
            raise LayoutError(
                name, "trim", f"{each.trim} mm at each end",
                f"it must be 0 or more and leave something of {millimetres(each.length)}",
            )  # fmt: skip
        if each.quantity is not None and each.quantity < 0:
            raise LayoutError(name, "quantity", each.quantity, "it must be 0 or more, or none")
        if each.cost is not None and not (isfinite(each.cost) and each.cost >= 0):
            raise LayoutError(name, "cost", each.cost, "a price must be 0 or more")
        for low, high in each.defects:
            if not 0 <= low < high <= each.length:
                raise LayoutError(
                    name, "defect", f"from {low} to {high} mm",
                    f"it must lie within 0 to {millimetres(each.length)}, its start first",
                )  # fmt: skip
    for need in needs:
        name = f"piece {need.key}"
        if not isfinite(need.length) or need.length <= 0:
            raise LayoutError(name, "length", f"{need.length} mm", "it must be more than 0")
        mine = [s for s in stock if s.material == need.material and s.quantity != 0]
        if not mine:
            raise LayoutError(name, "material", need.material, "no length of it is in stock")
        longest = max((b - a for s in mine for a, b in clear_stretches(s, kerf)), default=0.0)
        if need.length > longest + 1e-6:
            raise LayoutError(
                name, "length", millimetres(need.length),
                f"longer than every clear stretch in stock; the longest is "
                f"{millimetres(longest)}: join it from two, or add a longer one",
            )  # fmt: skip


def verify_lengths(
    plan: LengthPlan, needs: Sequence[LengthNeed], stock: Sequence[StockLength], kerf: float
) -> tuple[str, ...]:
    """Everything that is wrong with a plan, as sentences, worked out without the planner.

    Checked: every piece exactly once, of its length and material; within the trimmed stock and
    clear of its defects; a kerf between neighbours; no more stock than there is.
    """
    wanted = {need.key: need for need in needs}
    cut = Counter(each.part for bar in plan.bars for each in bar.cuts)
    faults = [f"piece {key} is on no stock length" for key in wanted if not cut[key]]
    faults += [f"piece {key} is cut {n} times" for key, n in cut.items() if n > 1]
    faults += [f"piece {key} is not wanted" for key in cut if key not in wanted]
    there = {each.key: each for each in stock}
    for key, count in Counter(bar.stock.key for bar in plan.bars).items():
        most = there[key].quantity if key in there else 0
        if most is not None and count > most:
            faults.append(f"stock length {key} is taken {count} times, there are {most}")
    for bar in plan.bars:
        if bar.stock.key in there and bar.stock != there[bar.stock.key]:
            faults.append(f"{bar.name}: not the stock length {bar.stock.key}")
        faults += [f"{bar.name}: {fault}" for fault in _bar_faults(bar, wanted, kerf)]
    return tuple(faults)


def require_valid_lengths(
    plan: LengthPlan, needs: Sequence[LengthNeed], stock: Sequence[StockLength], kerf: float
) -> None:
    """Raise LayoutError with the first fault of a plan of lengths, if it has one."""
    faults = verify_lengths(plan, needs, stock, kerf)
    if faults:
        raise LayoutError(
            "lengths", "plan", faults[0], f"{len(faults)} fault(s); the plan must not be used"
        )


def require_cuttable(plan: LengthPlan) -> None:
    """Raise LayoutError where a plan is wrong in itself: for what is written from it, where the
    pieces wanted are not at hand. Sizes are taken as cut, the saw's kerf as nothing."""
    needs = {
        cut.part: LengthNeed(cut.part, cut.end - cut.start, bar.stock.material)
        for bar in plan.bars for cut in bar.cuts
    }
    require_valid_lengths(plan, list(needs.values()), [bar.stock for bar in plan.bars], 0.0)


def _bar_faults(
    bar: BarPlan, wanted: Mapping[str, LengthNeed], kerf: float
) -> Iterable[str]:
    end = bar.stock.length - bar.stock.trim
    for cut in bar.cuts:
        need = wanted.get(cut.part)
        if need is not None and abs(cut.end - cut.start - need.length) > EPS:
            yield f"{cut.part} is cut {millimetres(cut.end - cut.start)} long"
        if need is not None and need.material != bar.stock.material:
            yield f"{cut.part} is not of {bar.stock.material}"
        if cut.start < bar.stock.trim - EPS or cut.end > end + EPS:
            yield f"{cut.part} is outside the trimmed length"
        if any(cut.start < high - EPS and low < cut.end - EPS for low, high in bar.stock.defects):
            yield f"{cut.part} holds a defect"
    ordered = sorted(bar.cuts, key=lambda each: each.start)
    for one, other in pairwise(ordered):
        if other.start - one.end < kerf - EPS:
            yield f"{one.part} and {other.part} are closer than the kerf"
