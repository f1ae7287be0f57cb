"""Documents as values that can be compared, quickly enough to do so at every step of undo."""

from __future__ import annotations

from typing import Any

LEFT_OUT = (
    "Proxy", "ExpressionEngine", "ShapeMaterial", "_Part_ShapeCache", "Visibility", "Label2")
"""Properties that FreeCAD keeps for itself."""


class Snapshots:
    """Documents as values that can be compared.

    A shape is measured once: undo and redo bring the same one back, not its like.
    """

    def __init__(self) -> None:
        self._measured: dict[int, list[tuple[Any, Any]]] = {}

    def take(self, doc: Any) -> dict[str, Any]:
        """All properties of all objects of ours by name; of a shape its measures."""
        from closetbench.model.base import class_of

        return {
            f"{obj.Name}.{name}": self._plain(getattr(obj, name))
            for obj in doc.Objects if class_of(obj)
            for name in obj.PropertiesList if name not in LEFT_OUT
        }

    def _plain(self, value: Any) -> Any:
        if isinstance(value, (str, int)):
            return value
        if hasattr(type(value), "isPartner"):  # a shape
            return "no shape" if value.isNull() else self._measure(value)
        if isinstance(value, (list, tuple)):
            return [self._plain(v) for v in value]
        return _plain(value)

    def _measure(self, shape: Any) -> Any:
        known = self._measured.setdefault(shape.hashCode(), [])
        for other, measures in known:
            if other.isSame(shape):
                return measures
        # corners cost a fiftieth of what a volume does, and tell of every cut and every hole
        ends = [vertex.Point for vertex in shape.Vertexes]
        total = [round(sum(end[i] for end in ends), 2) for i in range(3)]
        spread = round(sum(sum(c * c for c in end) for end in ends), 0)
        measures = len(shape.Faces), len(shape.Edges), len(ends), total, spread
        known.append((shape, measures))
        return measures


def plain(value: Any) -> str:
    """A property's value in words: a place to a billionth, since FreeCAD reads it back from
    the shape."""
    if hasattr(value, "toMatrix") and hasattr(value, "Base"):
        return str([round(part, 9) + 0.0 for part in value.toMatrix().A])
    return str(value)


def _plain(value: Any) -> Any:
    if hasattr(value, "TypeId"):
        return value.Name
    if isinstance(value, float):
        return round(value, 6)
    if hasattr(value, "Value"):
        return round(value.Value, 6)
    return plain(value)


def differences(wanted: dict[str, Any], got: dict[str, Any], most: int = 6) -> list[str]:
    """Where two snapshots differ, in words."""
    keys = sorted(wanted.keys() | got.keys())
    found = [k for k in keys if wanted.get(k, "none") != got.get(k, "none")]
    told = [f"{k}: {_other(wanted.get(k, 'none'), got.get(k, 'none'))}" for k in found]
    return told[:most] + ([f"and {len(found) - most} more"] if len(found) > most else [])


def _other(wanted: Any, got: Any) -> str:
    if isinstance(wanted, list) and isinstance(got, list):
        both = [v for v in wanted if v in got]
        gone, new = [v for v in wanted if v not in both], [v for v in got if v not in both]
        if gone or new:
            wanted, got = gone, new
    return f"{wanted!s:.200} -> {got!s:.200}"
