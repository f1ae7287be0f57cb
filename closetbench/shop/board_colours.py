"""The colours of boards as they look from outside: in the 3D view, and on cards of FreeCAD's."""

from __future__ import annotations

from closetbench.core.materials import Material, MaterialKind

Colour = tuple[float, float, float]
"""Red, green and blue from 0 to 1."""

_BOARDS: dict[MaterialKind, Colour] = {
    MaterialKind.PLYWOOD: (0.95, 0.84, 0.66),
    MaterialKind.MELAMINE: (0.96, 0.96, 0.94),
    MaterialKind.MDF: (0.83, 0.73, 0.62),
    MaterialKind.HARDBOARD: (0.66, 0.53, 0.41),
    MaterialKind.LUMBER: (0.93, 0.76, 0.52),
}
UNKNOWN: Colour = (0.75, 0.75, 0.75)


def board_colour(material: Material | None) -> Colour:
    """The colour of a board in the 3D view, which darkens it toward its edges of sight."""
    if material is None:
        return UNKNOWN
    if "birch" in material.key:
        return (0.99, 0.92, 0.77)
    if "black" in material.key:
        return (0.30, 0.30, 0.31)
    return _BOARDS[material.kind]
