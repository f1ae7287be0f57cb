"""Reads drawings back without ezdxf, from the group codes, as another program would.

Features are given to a part by where they lie, since nothing else in the file ties them.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from pathlib import Path

XY = tuple[float, float]


@dataclass
class Entity:
    kind: str
    layer: str
    points: list[XY]
    radius: float = 0.0
    text: str = ""
    height: float = 0.0
    turn: float = 0.0
    closed: bool = False


@dataclass
class ReadPart:
    """One outline with everything that lies in it; points in the drawing's frame."""

    outline: list[XY]
    thickness: float
    name: str = ""
    size_text: str = ""
    grooves: list[tuple[str, float, list[XY]]] = field(default_factory=list)
    holes: list[tuple[str, float, XY, float]] = field(default_factory=list)
    bands: list[tuple[str, XY, XY]] = field(default_factory=list)

    @property
    def corner(self) -> XY:
        return min(x for x, _ in self.outline), min(y for _, y in self.outline)

    @property
    def size(self) -> XY:
        x, y = self.corner
        return max(p[0] for p in self.outline) - x, max(p[1] for p in self.outline) - y


def pairs(path: Path) -> list[tuple[int, str]]:
    lines = path.read_text("utf-8").splitlines()
    return [(int(code), value) for code, value in zip(lines[::2], lines[1::2], strict=True)]


def header(path: Path) -> dict[str, str]:
    """The first value of each header variable."""
    out = {}
    name = ""
    for code, value in pairs(path):
        if (code, value) == (0, "ENDSEC"):
            break
        if code == 9:
            name = value
        elif name:
            out.setdefault(name, value.strip())
    return out


def entities(path: Path) -> list[Entity]:
    """What stands in the ENTITIES section."""
    all_pairs = pairs(path)
    start = all_pairs.index((2, "ENTITIES"))
    out: list[Entity] = []
    xs: list[float] = []
    for code, value in all_pairs[start + 1:]:
        if code == 0:
            if value == "ENDSEC":
                break
            out.append(Entity(value, "", []))
            continue
        now = out[-1]
        if code == 8:
            now.layer = value
        elif code in (10, 11):
            xs.append(float(value))
        elif code in (20, 21):
            now.points.append((xs.pop(), float(value)))
        elif code == 40:
            now.radius = now.height = float(value)
        elif code == 50:
            now.turn = float(value)
        elif code == 1:
            now.text = value
        elif code == 70 and now.kind == "LWPOLYLINE":
            now.closed = bool(int(value) & 1)
    return out


def depth_of(layer: str) -> float:
    found = re.fullmatch(r".*_(UP|UNDER|THROUGH)_([0-9.]+)MM", layer)
    assert found, layer
    return float(found[2])


def inside(point: XY, ring: list[XY]) -> bool:
    """Whether a point lies in a closed ring, by the crossings of a ray."""
    x, y = point
    odd = False
    for (ax, ay), (bx, by) in zip(ring, [*ring[1:], ring[0]], strict=True):
        if (ay > y) != (by > y) and x < ax + (y - ay) / (by - ay) * (bx - ax):
            odd = not odd
    return odd


def read_layout(path: Path) -> list[ReadPart]:
    """The parts of a drawing, in the order drawn."""
    found = entities(path)
    parts = [
        ReadPart(e.points, depth_of(e.layer)) for e in found if e.layer.startswith("OUTLINE")
    ]
    for e in found:
        if e.layer.startswith("OUTLINE") or e.layer in ("SHEET", "OFFCUT", "SAW_CUT"):
            continue
        n = len(e.points)
        middle = (sum(p[0] for p in e.points) / n, sum(p[1] for p in e.points) / n)
        if e.kind == "TEXT":
            middle = e.points[-1]
        homes = [p for p in parts if inside(middle, p.outline)]
        if e.layer == "SHEET_NAME":
            assert not homes
            continue
        assert len(homes) == 1, (e.layer, middle)
        (home,) = homes
        if e.layer == "NAME":
            home.name = e.text
        elif e.layer == "SIZE":
            home.size_text = e.text
        elif e.kind == "LWPOLYLINE":
            assert e.closed
            home.grooves.append((e.layer.rsplit("_", 1)[0], depth_of(e.layer), e.points))
        elif e.kind == "CIRCLE":
            home.holes.append(
                (e.layer.rsplit("_", 1)[0], depth_of(e.layer), e.points[0], 2 * e.radius))
        elif e.layer.startswith("BAND_"):
            home.bands.append((e.layer, e.points[0], e.points[1]))
    return parts
