"""The room that the readings describe: five crooked surfaces around a closet, and how sure.

Frame: x = 0 on the left wall at the front and at the low level, z = 0 on the floor in the
front left corner, x to the front right corner, y into the depth from the front, z plumb up.
"""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity
from closetbench.core.readings import Observation, On, candidates, observations, places
from closetbench.core.surfaces import TERMS, Surface, basis
from closetbench.core.survey import READING_NAMES, Obstacle, OwnDoor, Survey

if TYPE_CHECKING:
    from closetbench.core.fit import Fit

BAARDA = "W. Baarda, A testing procedure for use in geodetic networks (1968): data snooping"

Point = tuple[float, float, float]
Line = tuple[Point, Point]


@dataclass(frozen=True)
class AdjustedReading:
    """A reading beside what the whole room makes of it.

    ``sd``: standard deviation of the reading, ``sd_adjusted`` of its adjusted value;
    ``redundancy``: share of it that the other readings control, 0 (not at all) to 1; ``w``:
    Baarda's statistic, beyond 3.29 either way a gross error. ``used`` False: left out, and
    ``adjusted`` is what it was expected to be.
    """

    key: str
    name: str
    value: float
    adjusted: float
    sd: float
    sd_adjusted: float
    redundancy: float
    w: float
    used: bool = True

    @property
    def residual(self) -> float:
        """Adjusted less read, mm."""
        return self.adjusted - self.value


@dataclass(frozen=True)
class Opening:
    """The opening in the front: jambs at ``x0`` and ``x1``, lintel at ``z1``, wall ``depth``
    thick in front of the closet; casing around it on the room's side; a ``door`` of its own,
    flush with that side."""

    x0: float
    x1: float
    z1: float
    depth: float
    casing_width: float = 0.0
    casing_thickness: float = 0.0
    door: OwnDoor = OwnDoor.NONE
    door_thickness: float = 0.0
    door_opens: float = 90.0

    @property
    def width(self) -> float:
        """Clear width between the jambs."""
        return self.x1 - self.x0


@dataclass(frozen=True)
class Room:
    """The closet's surfaces: ``left`` and ``right`` give x over (y, z), ``back`` y over
    (x, z), ``floor`` and ``ceiling`` z over (x, y).

    ``covariance``: of the coefficients of all five in that order; empty where they are taken
    as certain. ``baseboard``: height and thickness of one that stays in place.
    """

    left: Surface
    right: Surface
    back: Surface
    floor: Surface
    ceiling: Surface
    findings: tuple[Finding, ...] = ()
    covariance: tuple[tuple[float, ...], ...] = ()
    readings: tuple[AdjustedReading, ...] = ()
    opening: Opening | None = None
    obstacles: tuple[Obstacle, ...] = ()
    baseboard: tuple[float, float] = (0.0, 0.0)

    def surface(self, on: On) -> Surface:
        """One of the five surfaces."""
        return (self.left, self.right, self.back, self.floor, self.ceiling)[on]

    def variance(self, parts: Sequence[tuple[float, On, float, float]]) -> float:
        """Variance of a sum of coordinates, mm²: each part is a factor, a surface and the
        point on it."""
        if not self.covariance:
            return 0.0
        row: dict[int, float] = {}
        for factor, on, u, v in parts:
            for i, value in enumerate(basis(u, v), on * TERMS):
                row[i] = row.get(i, 0.0) + factor * value
        return max(0.0, sum(
            a * b * self.covariance[i][j] for i, a in row.items() for j, b in row.items()
        ))

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

    def _corner(self, wall: Surface, rear: bool, up: bool) -> Point:
        x, y, z = wall.at(0.0, 0.0), 0.0, 0.0
        level = self.ceiling if up else self.floor
        # the slopes are small, so a few passes settle it far below a nanometre
        for _ in range(8):
            y = self.back.at(x, z) if rear else 0.0
            z = level.at(x, y)
            x = wall.at(y, z)
        return x, y, z


def build_room(survey: Survey, figures: Figures | None = None) -> Room:
    """The room that all readings together make most likely; ``figures`` prints its findings.

    What could not be measured and was taken for granted, what bends the walls and which
    reading must be wrong come back as findings. Raises ``SurveyError`` where the readings
    describe no room at all.
    """
    # numpy takes longer to import than the rest of core; only this needs it
    from closetbench.core.fit import fit

    seen = observations(survey)
    result = fit(places(survey), seen)
    readings = tuple(
        AdjustedReading(
            o.key, o.name, o.value, float(result.adjusted[i]), o.sd, float(result.sd_adjusted[i]),
            float(result.redundancy[i]), float(result.w[i]), result.used[i],
        )
        for i, o in enumerate(seen)
    )
    surfaces = [
        Surface((row[0], row[1], row[2], row[3], row[4], row[5]))
        for row in result.coefficients.tolist()
    ]
    left, right, back, floor, ceiling = surfaces[:5]
    five = TERMS * 5
    return Room(
        left, right, back, floor, ceiling,
        findings=tuple(_findings(survey, result, readings, figures or Figures())),
        covariance=tuple(tuple(row) for row in result.covariance[:five, :five].tolist()),
        readings=readings,
        opening=_opening(survey, surfaces),
        obstacles=survey.obstacles,
        baseboard=(survey.baseboard_height, survey.baseboard_thickness),
    )


def _has_opening(survey: Survey) -> bool:
    known = [survey.opening_width, survey.return_left, survey.return_right]
    return survey.opening_width is not None or sum(v is not None for v in known) > 1


def _opening(survey: Survey, surfaces: Sequence[Surface]) -> Opening | None:
    if not _has_opening(survey):
        return None
    x0, x1 = surfaces[On.JAMB_LEFT].c[0], surfaces[On.JAMB_RIGHT].c[0]
    if survey.opening_height is None and survey.lintel is None:
        z1 = min(surfaces[On.CEILING].at(x, 0.0) for x in (x0, x1))
    else:
        z1 = surfaces[On.LINTEL].c[0]
    return Opening(
        x0, x1, z1, survey.jamb_depth, survey.casing_width, survey.casing_thickness,
        survey.door, survey.door_thickness, survey.door_opens,
    )


def _findings(
    survey: Survey, result: Fit, readings: Sequence[AdjustedReading], figures: Figures
) -> list[Finding]:
    from closetbench.core.next_reading import UNCHECKED, checking, gain, settling

    found = []
    others = candidates(survey)
    for one in readings:
        if not one.used:
            found.append(Finding(
                Severity.WARNING, "survey", "reading-wrong",
                f"the {one.name} cannot be right: {figures.small(one.value)} was read, "
                f"{figures.small(one.adjusted)} follows from the others; measure it again. The "
                "room is worked out without it",
                BAARDA, figures.small(one.value),
                f"{figures.small(one.adjusted)} expected, give or take "
                f"{figures.small(2 * one.sd_adjusted)}",
            ))
    best = gain(result, others) if result.rivals or result.assumed else None
    for group in result.rivals:
        following = _as_well(settling(result, group, others) or best)
        rivals = [readings[i] for i in group]
        found.append(Finding(
            Severity.WARNING, "survey", "readings-rival",
            f"one of these must be wrong, and the readings do not say which: "
            f"{_list(f'the {r.name}' for r in rivals)}; measure them again{following}. Until "
            "then they count for little",
            BAARDA, _list(figures.small(r.value) for r in rivals),
        ))
    if not result.consistent:
        found.append(Finding(
            Severity.WARNING, "survey", "readings-disagree",
            "the readings agree less well with flat walls than their tape allows; all sizes are "
            "less certain by this factor, and more readings would help",
            "chi-squared test, 0.1 %", f"{result.s0:.1f}", "1",
        ))
    for shape in result.shapes:
        other = ""
        if shape.instead:
            doubts = [i for i, r in enumerate(readings) if r.name in shape.instead]
            other = (
                f", or a reading is wrong: {_list(f'the {n}' for n in shape.instead)}"
                + _as_well(settling(result, (shape.name, *doubts), others))
            )
        found.append(Finding(
            Severity.NOTE, "survey", "wall-bent",
            f"the readings show a {shape.name}{other}", BAARDA, figures.small(shape.size),
        ))
    if survey.door is not OwnDoor.NONE and not _has_opening(survey):
        found.append(Finding(
            Severity.NOT_CHECKED, "survey", "door-without-opening",
            "not checked: whether drawers and doors clear the closet's own door, since its "
            "opening is not measured; read the width of the opening",
        ))
    if not any(getattr(survey, n) for n in READING_NAMES if n.startswith(("lean", "rise"))):
        found.append(Finding(
            Severity.NOT_CHECKED, "survey", "not-plumbed",
            "every plumb and level reading is 0, and 0 counts as read: take them with a level, "
            "or a wall that leans will not show",
        ))
    named = {n for shape in result.shapes for n in shape.instead}
    alone = [
        i for i, r in enumerate(readings)
        if r.used and r.redundancy < UNCHECKED and r.name not in named
    ]
    if alone:
        # each by the reading that checks it, named once
        checks = dict.fromkeys(
            check.name for i in alone if (check := checking(result, i, others)) is not None
        )
        found.append(Finding(
            Severity.NOT_CHECKED, "survey", "reading-alone",
            "nothing checks a reading, so that a wrong one would not show: "
            f"{_list(f'the {readings[i].name}' for i in alone)}"
            + (f"; take the {_list(checks)} as well" if checks else ""), BAARDA,
        ))
    if result.unseen:
        found.append(Finding(
            Severity.NOT_CHECKED, "survey", "bows-not-read",
            "taken to be straight, since no reading would show it: no "
            f"{_list(result.unseen)}; hold a straightedge to them, or take the readings half way "
            "that the survey sheet asks for",
        ))
    for taken in result.assumed:
        found.append(Finding(
            Severity.NOT_CHECKED, "survey", "not-measured",
            f"not measured, so taken for granted: {taken.words}"
            + (f"; measure the {best.name} next" if best else ""),
        ))
    return found


def _as_well(reading: Observation | None) -> str:
    return f"; take the {reading.name} as well" if reading else ""


def _list(texts: Iterable[str]) -> str:
    items = list(texts)
    return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} and {items[-1]}"
