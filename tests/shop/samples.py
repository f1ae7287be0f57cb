"""A small closet, made part by part, with its catalogue and a plain cutting plan."""

from __future__ import annotations

from collections.abc import Sequence

from closetbench.core.component import Bay
from closetbench.core.materials import (
    Catalogue,
    EdgeBand,
    HardwareItem,
    Material,
    MaterialKind,
    SheetSize,
)
from closetbench.core.panel import (
    Band,
    Box,
    Face,
    Grain,
    Groove,
    HoleRow,
    Notch,
    Panel,
    Rim,
    Run,
)
from closetbench.core.parts import (
    FACING,
    LYING,
    STANDING_ACROSS,
    HardwareNeed,
    Part,
    Place,
    Role,
    Vector,
)
from closetbench.stock.by_hand import sawn_anew
from closetbench.stock.plan import CutSettings, Placement, Plan, SheetPlan, StockSheet

T, D, H, W = 18.0, 560.0, 2200.0, 1500.0
KERF = 3.2
SAW = CutSettings(kerf=KERF, stages=None)
FRONT = (Band(Rim.FRONT, "birch-05", 0.5),)


def catalogue() -> Catalogue:
    """Invented materials and prices; one without a price."""
    ply = Material(
        "ply18", "birch plywood 18 mm", MaterialKind.PLYWOOD, 18.0, 18.0, True, 680.0, 9000.0,
        5000.0, (SheetSize(2440.0, 1220.0, 70.0),), 10.0, "birch-05", True, "invented",
    )
    mdf = Material(
        "mdf12", "MDF 12 mm", MaterialKind.MDF, 12.0, None, False, 740.0, 2800.0, 2800.0,
        (SheetSize(2440.0, 1220.0),), 10.0, "", False, "invented",
    )
    return Catalogue(
        {"ply18": ply, "mdf12": mdf},
        {"birch-05": EdgeBand("birch-05", "birch edge band 0.5 mm", 0.5, 22.0, 0.8)},
        {
            "pin-5": HardwareItem("pin-5", "shelf pin 5 mm", 50, 6.5),
            "screw-50": HardwareItem("screw-50", "screw 4 x 50 mm", 200, None),
        },
        "cu",
    )


def hardware() -> tuple[HardwareNeed, ...]:
    return (
        HardwareNeed("pin-5", 12, "adjustable shelves"),
        HardwareNeed("pin-5", 40, "spare rows"),
        HardwareNeed("screw-50", 24, "cleat to studs"),
    )


def _side(name: str, right: float, face: Face) -> Part:
    stop = {"stop_first": 10.0}
    grooves = [
        Groove("bottom", face, Rim.START, 80.0, 18.2, 6.0, **stop),
        Groove("upper shelf", face, Rim.START, 1800.0, 18.2, 6.0, **stop),
        Groove("top", face, Rim.END, 0.0, 18.0, 6.0),
    ]
    holes: tuple[HoleRow, ...] = ()
    if name == "right side":
        grooves += [
            Groove(f"shelf {i}", face, Rim.START, z, 18.2, 6.0, **stop)
            for i, z in ((1, 520.0), (2, 960.0))
        ]
    else:
        holes = _pins(face, 400.0)
    panel = Panel(
        H, D, T, "ply18", grooves=tuple(grooves), holes=holes,
        notches=(Notch(Rim.START, Rim.FRONT, 80.0, 50.0),), bands=FRONT,
        visible=frozenset({Rim.FRONT}),
    )
    return Part(name, "tall case", Role.SIDE, panel, Place((right, 0.0, 0.0), *STANDING_ACROSS))


def _pins(face: Face, x: float) -> tuple[HoleRow, ...]:
    return tuple(
        HoleRow(f"{where} pins", face, x, y, 5.0, 10.0, 30, 32.0)
        for where, y in (("front", 37.0), ("rear", 517.0))
    )


def _shelf(name: str, role: Role, length: float, at: Vector, grooves: tuple[Groove, ...] = (),
           notch: float = 5.5) -> Part:
    notches = (
        Notch(Rim.START, Rim.FRONT, notch, 10.0), Notch(Rim.END, Rim.FRONT, notch, 10.0),
    ) if notch else ()
    panel = Panel(length, D, T, "ply18", grooves=grooves, notches=notches, bands=FRONT,
                  visible=frozenset({Rim.FRONT}))
    return Part(name, "tall case", role, panel, Place(at, *LYING))


def closet() -> tuple[Part, ...]:
    """Two bays: loose shelves on the left, grooved ones on the right."""
    divider = Panel(
        1713.0, D, T, "ply18",
        grooves=tuple(
            Groove(f"shelf {i}", Face.LOWER, Rim.START, z - 92.5, 18.2, 6.0, stop_first=10.0)
            for i, z in ((1, 520.0), (2, 960.0))
        ),
        holes=_pins(Face.UPPER, 400.0 - 92.5), bands=FRONT,
        notches=(Notch(Rim.START, Rim.FRONT, 5.5, 10.0), Notch(Rim.END, Rim.FRONT, 5.5, 10.0)),
    )
    across = 899.9 - 12.5
    over = Groove("divider", Face.UPPER, Rim.START, across, 18.2, 6.0, stop_first=10.0)
    under = Groove("divider", Face.LOWER, Rim.START, across, 18.2, 6.0, stop_first=10.0)
    loose = Panel(879.0, 540.0, T, "ply18", bands=FRONT)
    kick = Panel(1464.0, 80.0, T, "ply18")
    cleat = Panel(1464.0, 90.0, 12.0, "mdf12", grain=Grain.NONE, holes=(
        HoleRow("studs", Face.LOWER, 132.0, 45.0, 5.0, 12.0, 4, 400.0, Run.LENGTH),
    ))
    return (
        _side("left side", 18.0, Face.LOWER),
        _side("right side", 1500.0, Face.UPPER),
        Part("divider", "tall case", Role.DIVIDER, divider,
             Place((918.0, 0.0, 92.5), *STANDING_ACROSS)),
        _shelf("bottom", Role.BOTTOM, 1475.0, (12.5, 0.0, 80.1), (over,)),
        _shelf("upper shelf", Role.FIXED_SHELF, 1475.0, (12.5, 0.0, 1800.1), (under,)),
        _shelf("top", Role.TOP, 1476.0, (12.0, 0.0, 2182.0), notch=0.0),
        *(
            Part(f"loose shelf {i}", "tall case", Role.ADJUSTABLE_SHELF, loose,
                 Place((19.5, 2.0, z), *LYING))
            for i, z in ((1, 480.0), (2, 800.0), (3, 1120.0))
        ),
        *(
            _shelf(f"shelf {i}", Role.FIXED_SHELF, 575.0, (912.5, 0.0, z + 0.1))
            for i, z in ((1, 520.0), (2, 960.0))
        ),
        Part("kick board", "tall case", Role.TOE_KICK, kick, Place((18.0, 68.0, 0.0), *FACING)),
        Part("cleat", "tall case", Role.CLEAT, cleat,
             Place((18.0, 560.0, 2092.0), *FACING)),
    )


def bays() -> tuple[Bay, ...]:
    return (
        Bay("bay 1", Box(18.0, 0.0, 98.0, 900.0, 560.0, 2182.0)),
        Bay("bay 2", Box(918.0, 0.0, 98.0, 1482.0, 560.0, 2182.0)),
    )


def plan(parts: Sequence[Part], length: float = 2440.0, width: float = 1220.0) -> Plan:
    """Rows of parts from the trimmed corner, one material after another; no skill in it.

    Every third part that fits so lies rotated.
    """
    sheets: list[SheetPlan] = []
    for material in dict.fromkeys(p.panel.material for p in parts):
        stock = StockSheet(material, material, length, width, 10.0, cost=None)
        todo = [p for p in parts if p.panel.material == material]
        while todo:
            placements: list[Placement] = []
            x = y = 10.0
            row = 0.0
            rest: list[Part] = []
            for i, part in enumerate(todo):
                dx, dy = part.panel.cut_length, part.panel.cut_width
                rotated = i % 3 == 2 and dx < width - 20.0 - y
                if rotated:
                    dx, dy = dy, dx
                if x + dx > length - 10.0:
                    x, y, row = 10.0, y + row + KERF, 0.0
                if y + dy > width - 10.0 or x + dx > length - 10.0:
                    rest.append(part)
                    continue
                placements.append(Placement(part.full_name, x, y, dx, dy, rotated))
                x, row = x + dx + KERF, max(row, dy)
            sheets.append(sawn_anew(
                SheetPlan(f"S{len(sheets) + 1}", stock, KERF, tuple(placements)), SAW
            ))
            assert len(rest) < len(todo)
            todo = rest
    return Plan(tuple(sheets))
