"""The room that the readings describe: five crooked surfaces around a closet.

Frame: origin on the floor level of the front left corner, x to the front right corner,
y into the depth, z plumb up. Every surface is known at a grid of stations and runs
straight between them.
"""

from __future__ import annotations

import math
from bisect import bisect_right
from collections.abc import Sequence
from dataclasses import dataclass

from closetbench.core.errors import SurveyError
from closetbench.core.findings import Finding, Severity
from closetbench.core.survey import READING_NAMES, Survey

DISAGREEMENT = 4.0
"""How far two ways to the same length may differ before it is said, in mm.

Four times a reading to the nearest millimetre; common practice, no published source.
"""

Line = tuple[tuple[float, float, float], tuple[float, float, float]]


@dataclass(frozen=True)
class Surface:
    """A coordinate of a surface over a grid of two others, bilinear between stations.

    ``us`` and ``vs`` rise strictly; ``values[i][j]`` belongs to ``us[i]``, ``vs[j]``.
    Beyond the outer stations the outer patch goes on.
    """

    us: tuple[float, ...]
    vs: tuple[float, ...]
    values: tuple[tuple[float, ...], ...]

    def at(self, u: float, v: float) -> float:
        """The coordinate at one point."""
        i, s = _locate(self.us, u)
        j, t = _locate(self.vs, v)
        a, b = self.values[i], self.values[i + 1]
        return (1 - s) * ((1 - t) * a[j] + t * a[j + 1]) + s * ((1 - t) * b[j] + t * b[j + 1])

    def over(self, u0: float, u1: float, v0: float, v1: float) -> tuple[float, float]:
        """Least and greatest coordinate over a rectangle.

        Exact: a bilinear patch has its extremes at the corners, so the corners of the
        rectangle and the stations inside it are enough.
        """
        us = [u0, *(u for u in self.us if u0 < u < u1), u1]
        vs = [v0, *(v for v in self.vs if v0 < v < v1), v1]
        found = [self.at(u, v) for u in us for v in vs]
        return min(found), max(found)


def _locate(stations: Sequence[float], at: float) -> tuple[int, float]:
    i = min(max(bisect_right(stations, at) - 1, 0), len(stations) - 2)
    return i, (at - stations[i]) / (stations[i + 1] - stations[i])


@dataclass(frozen=True)
class Room:
    """The closet's surfaces: ``left`` and ``right`` give x over (y, z), ``back`` y over
    (x, z), ``floor`` and ``ceiling`` z over (x, y)."""

    left: Surface
    right: Surface
    back: Surface
    floor: Surface
    ceiling: Surface
    findings: tuple[Finding, ...] = ()

    def corner_lines(self) -> tuple[Line, ...]:
        """The edges of the room as lines, for drawing."""
        corners = {}
        for side in ("left", "right"):
            wall = self.left if side == "left" else self.right
            for rear in (False, True):
                for up in (False, True):
                    corners[side, rear, up] = self._corner(wall, rear, up)
        keys = sorted(corners)
        return tuple(
            (corners[p], corners[q])
            for i, p in enumerate(keys)
            for q in keys[i + 1:]
            if sum(m != n for m, n in zip(p, q, strict=True)) == 1
        )

    def _corner(self, wall: Surface, rear: bool, up: bool) -> tuple[float, float, float]:
        x, y, z = wall.at(0.0, 0.0), 0.0, 0.0
        level = self.ceiling if up else self.floor
        # the slopes are small, so a few passes settle it far below a nanometre
        for _ in range(6):
            y = self.back.at(x, z) if rear else 0.0
            z = level.at(x, y)
            x = wall.at(y, z)
        return x, y, z


def build_room(survey: Survey) -> Room:
    """The room from its readings, taken at their word.

    The plan is drawn from the front corners: the rear corners lie where the depths
    along the walls and the diagonals meet (without diagonals the walls are taken square
    to the front). The left wall stands by its plumb readings, the right wall by the
    widths from it. Readings that contradict each other by more than ``DISAGREEMENT``
    come back as findings. Raises ``SurveyError`` where they describe no room at all.
    """
    findings: list[Finding] = []
    low, mid, high = survey.levels
    rear_left, rear_right = _plan(survey, findings)
    skew = rear_right[1] - rear_left[1]
    share = (0.0, (mid - low) / (high - low), 1.0)
    left_front = tuple(survey.lean_left_front * s for s in share)
    left_back = tuple(rear_left[0] + survey.lean_left_back * s for s in share)
    front_widths = (survey.width_front_low, survey.width_front_mid, survey.width_front_high)
    right_front = tuple(a + w for a, w in zip(left_front, front_widths, strict=True))
    right_back = tuple(
        a + _across(survey, name, skew)
        for a, name in zip(
            left_back, ("width_back_low", "width_back_mid", "width_back_high"), strict=True
        )
    )
    _check_right_wall(survey, findings)
    back = Surface(
        (rear_left[0], right_back[0]), (low, high),
        (
            (rear_left[1], rear_left[1] - survey.lean_back_left),
            (rear_right[1], rear_right[1] - survey.lean_back_right),
        ),
    )
    corners = ((front_widths[0], 0.0), rear_left, (right_back[0], rear_right[1]))
    rises = (0.0, survey.rise_front, survey.rise_left, survey.rise_left + survey.rise_back)
    heights = (
        survey.height_front_left, survey.height_front_right,
        survey.height_back_left, survey.height_back_right,
    )
    return Room(
        Surface((0.0, rear_left[1]), survey.levels, (left_front, left_back)),
        Surface((0.0, rear_right[1]), survey.levels, (right_front, right_back)),
        back,
        _over_plan(corners, rises),
        _over_plan(corners, [r + h for r, h in zip(rises, heights, strict=True)]),
        tuple(findings),
    )


def _across(survey: Survey, name: str, skew: float) -> float:
    """How far in x a width along a rear wall reaches that runs back by ``skew``."""
    width: float = getattr(survey, name)
    if width <= abs(skew):
        raise SurveyError(
            "survey", READING_NAMES[name], f"{width:g} mm",
            f"must be more than the {abs(skew):g} mm by which the depths differ",
        )
    return math.sqrt(width**2 - skew**2)


def _over_plan(corners: Sequence[tuple[float, float]], zs: Sequence[float]) -> Surface:
    """The bilinear surface over the plan with these levels at its corners.

    ``corners``: front right, rear left, rear right; ``zs``: front left first, then theirs.
    """
    (width, _), *rear = corners
    along = (zs[1] - zs[0]) / width
    # z = zs[0] + along*x + y*(slope + twist*x): each rear corner gives slope + twist*x
    (x1, _), (x2, _) = rear
    one, two = ((z - zs[0] - along * x) / y for (x, y), z in zip(rear, zs[2:], strict=True))
    twist = (two - one) / (x2 - x1)
    slope = one - twist * x1
    depth = max(y for _, y in rear)
    return Surface(
        (0.0, width), (0.0, depth),
        (
            (zs[0], zs[0] + depth * slope),
            (zs[1], zs[1] + depth * (slope + twist * width)),
        ),
    )


def _plan(
    survey: Survey, findings: list[Finding]
) -> tuple[tuple[float, float], tuple[float, float]]:
    """Rear left and rear right corner at the low level."""
    front = survey.width_front_low
    if survey.diagonal_to_left is None or survey.diagonal_to_right is None:
        findings.append(Finding(
            Severity.NOT_CHECKED, "survey", "plan-square",
            "not checked: whether the closet is square in plan; measure both diagonals",
        ))
        across = _across(survey, "width_back_low", survey.depth_right - survey.depth_left)
        offset = (front - across) / 2
        return (offset, survey.depth_left), (offset + across, survey.depth_right)
    rear_left = _meet(
        (0.0, 0.0), survey.depth_left, (front, 0.0), survey.diagonal_to_left,
        ("depth_left", "diagonal_to_left"),
    )
    rear_right = _meet(
        (0.0, 0.0), survey.diagonal_to_right, (front, 0.0), survey.depth_right,
        ("diagonal_to_right", "depth_right"),
    )
    found = math.dist(rear_left, rear_right)
    _compare(
        findings, READING_NAMES["width_back_low"], survey.width_back_low, found,
        "depths and diagonals",
    )
    return rear_left, rear_right


def _meet(
    a: tuple[float, float], ra: float, b: tuple[float, float], rb: float, names: tuple[str, str]
) -> tuple[float, float]:
    """Where two tapes held at ``a`` and ``b`` on the front line meet behind it."""
    span = b[0] - a[0]
    x = (span**2 + ra**2 - rb**2) / (2 * span)
    square = ra**2 - x**2
    if square <= 0:
        raise SurveyError(
            "survey", f"{READING_NAMES[names[0]]} with the {READING_NAMES[names[1]]}",
            f"{ra:g} and {rb:g} mm",
            f"cannot meet over a front width of {span:g} mm; measure all three again",
        )
    return a[0] + x, math.sqrt(square)


def _check_right_wall(survey: Survey, findings: list[Finding]) -> None:
    for place, left, right, widths in (
        ("front", survey.lean_left_front, survey.lean_right_front,
         (survey.width_front_low, survey.width_front_high)),
        ("back", survey.lean_left_back, survey.lean_right_back,
         (survey.width_back_low, survey.width_back_high)),
    ):
        if right is not None:
            _compare(
                findings, READING_NAMES[f"lean_right_{place}"], right,
                widths[0] - widths[1] - left, "widths and the left wall's lean",
            )


def _compare(
    findings: list[Finding], name: str, read: float, expected: float, others: str
) -> None:
    if abs(read - expected) > DISAGREEMENT:
        findings.append(Finding(
            Severity.WARNING, "survey", "readings-disagree",
            f"the {name} does not agree with the {others}: measure them again",
            "common practice, no published source", f"{read:.1f} mm",
            f"{expected:.1f} mm expected, within {DISAGREEMENT:g} mm",
        ))
