"""Pure geometry and rules of a fitted closet: no FreeCAD, Qt or ezdxf in here."""
