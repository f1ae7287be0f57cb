"""What the sketches of components show: outlines, and the lengths that have names in the form.

On paper of 300 by 170, y down. Sizes are those of a sketch: what each length is can be seen,
how long it is cannot.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field

WIDE, HIGH = 300.0, 170.0
Point = tuple[float, float]


@dataclass(frozen=True)
class Dim:
    """A length: the field's name, its two ends, and where its word goes: the middle of the
    word's baseline."""

    name: str
    a: Point
    b: Point
    at: Point
    turned: bool = False


@dataclass
class Drawing:
    """Boxes (x, y, width, height), lines, dashed lines and circles; then the lengths."""

    boards: list[tuple[float, float, float, float]] = field(default_factory=list)
    faint: list[tuple[float, float, float, float]] = field(default_factory=list)
    lines: list[tuple[float, float, float, float]] = field(default_factory=list)
    hidden: list[tuple[float, float, float, float]] = field(default_factory=list)
    rounds: list[tuple[float, float, float]] = field(default_factory=list)
    dims: list[Dim] = field(default_factory=list)
    words: list[tuple[str, Point]] = field(default_factory=list)


MOST = 92.0
"""As wide as a word may be at the most."""
_BAND, _BETWEEN, _LEAST = 9.0, 4.0, 12.0


def rooms(words: Sequence[tuple[Point, float]]) -> list[float]:
    """How wide each of some level words may be, so that none lies on another.

    A word is its middle and its width. Two that would meet share the room between their
    middles by their widths.
    """
    wide = [min(width, MOST) for _, width in words]
    found = [MOST] * len(words)
    for i, ((x, y), _) in enumerate(words):
        for j, ((other, beside), _) in enumerate(words):
            if i == j or abs(y - beside) >= _BAND:
                continue
            room = 2.0 * (abs(x - other) - _BETWEEN)
            if wide[i] + wide[j] > room:
                found[i] = min(found[i], max(_LEAST, room * wide[i] / (wide[i] + wide[j])))
    return found


def _case(x: float, y: float, w: float, h: float, t: float = 5.0) -> list:
    return [(x, y, t, h), (x + w - t, y, t, h), (x + t, y, w - 2 * t, t),
            (x + t, y + h - t, w - 2 * t, t)]


CARCASS = Drawing(
    boards=[*_case(40, 22, 100, 106), (45, 70, 90, 5), (225, 22, 5, 106), (172, 22, 53, 5),
            (172, 123, 53, 5), (172, 70, 50, 5), (216, 27, 4, 96), (182, 128, 5, 18),
            (50, 128, 80, 18), (172, 75, 4, 7)],
    faint=[(172, 22, 58, 106)],
    lines=[(12, 146, 288, 146), (12, 12, 12, 146)],
    dims=[
        Dim("width", (40, 14), (140, 14), (90, 7)), Dim("x", (12, 138), (40, 138), (26, 156)),
        Dim("height", (148, 22), (148, 146), (157, 84), True),
        Dim("depth", (172, 14), (230, 14), (201, 7)),
        Dim("base.height", (162, 128), (162, 146), (126, 160)),
        Dim("base.setback", (172, 138), (182, 138), (180, 160)),
        Dim("back.inset", (220, 96), (230, 96), (258, 96)),
        Dim("shelf_lip.height", (178, 75), (178, 82), (199, 90)),
    ],
    words=[("front", (72, 160)), ("side", (238, 160))],
)
DRAWERS = Drawing(
    boards=[*_case(40, 16, 90, 128), (45, 96, 80, 4), (177, 66, 4, 40), (181, 74, 74, 4),
            (181, 100, 74, 4), (255, 74, 4, 30)],
    faint=[(47, 22, 76, 22), (47, 46, 76, 22), (47, 70, 76, 22), (181, 78, 74, 22)],
    lines=[(181, 110, 250, 110)],
    dims=[
        Dim("spot.height", (32, 20), (32, 92), (22, 56), True),
        Dim("heights", (138, 46), (138, 68), (147, 57), True),
        Dim("spot.start", (32, 92), (32, 96), (22, 108), True),
        Dim("slide_length", (181, 116), (250, 116), (215, 126)),
        Dim("box_height", (266, 74), (266, 104), (275, 89), True),
        Dim("bottom_inset", (247, 100), (247, 104), (226, 92)),
    ],
    words=[("front", (85, 160)), ("side", (218, 160))],
)
DOORS = Drawing(
    boards=_case(70, 12, 130, 138),
    faint=[(74, 16, 60, 130), (136, 16, 60, 130)],
    lines=[(20, 150, 280, 150), (128, 74, 128, 92), (142, 74, 142, 92)],
    rounds=[(80, 34, 4), (80, 128, 4), (190, 34, 4), (190, 128, 4)],
    dims=[
        Dim("pull_height", (216, 83), (216, 150), (225, 116), True),
        Dim("pull_edge", (128, 100), (134, 100), (118, 110)),
        Dim("cup_edge", (74, 48), (77, 48), (96, 58)),
        Dim("spot.height", (60, 16), (60, 146), (50, 80), True),
        Dim("front.gap", (134, 22), (136, 22), (152, 30)),
    ],
    words=[("front", (135, 164))],
)
RODS = Drawing(
    boards=[(120, 12, 5, 138), (60, 12, 60, 5), (60, 145, 60, 5)],
    faint=[(60, 17, 60, 128)],
    lines=[(20, 150, 280, 150), (90, 44, 78, 52), (90, 44, 102, 52), (78, 52, 102, 52),
           (90, 98, 78, 106), (90, 98, 102, 106), (78, 106, 102, 106)],
    rounds=[(90, 40, 4), (90, 94, 4)],
    dims=[
        Dim("height", (48, 94), (48, 150), (39, 122), True),
        Dim("upper", (138, 40), (138, 150), (148, 96), True),
        Dim("setback", (90, 28), (120, 28), (105, 22)),
    ],
    words=[("side", (90, 164))],
)
EXISTING = Drawing(
    boards=[*_case(20, 10, 130, 140), (20, 36, 130, 5)],
    faint=[(34, 58, 102, 76), (212, 58, 60, 76)],
    lines=[(30, 52, 140, 52), (30, 58, 140, 58), (30, 52, 30, 58), (140, 52, 140, 58),
           (40, 134, 40, 145), (130, 134, 130, 145), (206, 52, 272, 52), (206, 58, 272, 58),
           (206, 52, 206, 58), (200, 20, 200, 145), (200, 145, 280, 145)],
    dims=[
        Dim("width_front_high", (34, 68), (136, 68), (85, 78)),
        Dim("width_front_low", (34, 124), (136, 124), (85, 116)),
        Dim("height_left", (28, 52), (28, 145), (12, 98), True),
        Dim("height_right", (144, 52), (144, 145), (160, 98), True),
        Dim("gap_above", (120, 41), (120, 52), (104, 30)),
        Dim("side_gap", (136, 96), (145, 96), (112, 98)),
        Dim("feet", (60, 134), (60, 145), (76, 142)),
        Dim("top", (186, 52), (186, 58), (186, 46)),
        Dim("moulding", (206, 66), (212, 66), (234, 70)),
        Dim("setback", (200, 88), (212, 88), (228, 92)),
        Dim("depth_left", (206, 152), (272, 152), (240, 162)),
    ],
    words=[("front", (85, 164))],
)
FACE_FRAME = Drawing(
    boards=[(70, 14, 14, 132), (196, 14, 14, 132), (84, 14, 112, 20), (84, 130, 112, 16),
            (133, 34, 12, 96), (84, 76, 49, 8)],
    faint=[(78, 22, 124, 124)],
    lines=[(20, 150, 280, 150), (44, 8, 44, 150)],
    dims=[
        Dim("stile", (196, 58), (210, 58), (232, 60)),
        Dim("top_rail", (164, 14), (164, 34), (182, 44)),
        Dim("bottom_rail", (164, 130), (164, 146), (176, 122)),
        Dim("mullion", (133, 104), (145, 104), (164, 106)),
        Dim("shelf_rail", (96, 76), (96, 84), (108, 96)),
        Dim("overhang", (202, 92), (210, 92), (234, 94)),
        Dim("overhang_top", (222, 14), (222, 22), (254, 20)),
        Dim("scribe", (44, 60), (70, 60), (56, 72)),
    ],
    words=[("front", (140, 164))],
)
BENCH = Drawing(
    boards=[(30, 60, 120, 8), (38, 68, 6, 66), (136, 68, 6, 66), (44, 68, 92, 10),
            (44, 124, 92, 10), (190, 60, 80, 8), (198, 68, 6, 66), (262, 68, 8, 66)],
    lines=[(12, 134, 288, 134), (12, 20, 12, 134), (270, 20, 270, 134), (252, 60, 252, 68)],
    dims=[
        Dim("width", (30, 50), (150, 50), (90, 44)),
        Dim("x", (12, 90), (30, 90), (20, 104)),
        Dim("overhang_ends", (142, 84), (150, 84), (128, 98)),
        Dim("height", (160, 60), (160, 134), (170, 98), True),
        Dim("depth", (190, 34), (270, 34), (230, 28)),
        Dim("overhang", (190, 84), (198, 84), (224, 92)),
        Dim("strip", (252, 50), (270, 50), (240, 50)),
    ],
    words=[("front", (90, 150)), ("side", (232, 150))],
)
SHOE_SHELVES = Drawing(
    boards=[(200, 12, 5, 138)],
    faint=[(80, 12, 120, 138)],
    lines=[(80, 62, 200, 40), (80, 67, 200, 45), (80, 122, 200, 100), (80, 127, 200, 105),
           (80, 67, 80, 46), (85, 66, 85, 46), (80, 46, 85, 46),
           (80, 127, 80, 106), (85, 126, 85, 106), (80, 106, 85, 106)],
    hidden=[(60, 40, 200, 40)],
    dims=[
        Dim("drop", (60, 40), (60, 62), (44, 53)),
        Dim("stop", (94, 106), (94, 119), (112, 98)),
    ],
    words=[("side", (140, 164))],
)
CORNER_SHELVES = Drawing(
    boards=[(70, 30, 150, 44), (70, 74, 46, 66)],
    lines=[(66, 14, 66, 156), (66, 26, 260, 26)],
    dims=[
        Dim("along_back", (70, 16), (220, 16), (145, 9)),
        Dim("along_side", (54, 30), (54, 140), (44, 85), True),
        Dim("depth_back", (230, 30), (230, 74), (240, 52), True),
        Dim("depth_side", (70, 148), (116, 148), (93, 160)),
    ],
    words=[("from above", (190, 130))],
)
OVER_SHELF = Drawing(
    boards=[(60, 44, 96, 6), (220, 44, 56, 6), (220, 50, 5, 10), (271, 50, 5, 16)],
    faint=[(70, 50, 76, 96), (226, 66, 44, 80)],
    lines=[(20, 146, 288, 146), (34, 14, 34, 146), (276, 14, 276, 146)],
    dims=[
        Dim("x0", (34, 30), (60, 30), (47, 22)),
        Dim("x1", (34, 66), (156, 66), (112, 76)),
        Dim("height", (166, 50), (166, 146), (176, 98), True),
        Dim("depth", (220, 34), (276, 34), (248, 26)),
        Dim("lip.height", (212, 50), (212, 60), (200, 72)),
        Dim("cleat", (262, 50), (262, 66), (246, 74)),
    ],
    words=[("front", (108, 162)), ("side", (248, 162))],
)
FILLERS = Drawing(
    boards=[(140, 40, 120, 16), (140, 56, 14, 84), (84, 46, 50, 10), (124, 32, 40, 8)],
    lines=[(70, 12, 78, 80), (78, 80, 72, 156)],
    dims=[
        Dim("scribe", (75, 66), (84, 66), (50, 66)),
        Dim("most", (84, 100), (134, 100), (108, 112)),
        Dim("overlap", (140, 24), (164, 24), (154, 16)),
    ],
    words=[("wall", (40, 150)), ("carcass", (210, 100)), ("from above", (210, 164))],
)
DRAWINGS: dict[str, Drawing] = {
    "Carcass": CARCASS, "Drawers": DRAWERS, "Doors": DOORS, "Rods": RODS, "Existing": EXISTING,
    "FaceFrame": FACE_FRAME, "Bench": BENCH, "ShoeShelves": SHOE_SHELVES,
    "CornerShelves": CORNER_SHELVES, "OverShelf": OVER_SHELF, "Fillers": FILLERS,
}
"""By the class of the objects."""
