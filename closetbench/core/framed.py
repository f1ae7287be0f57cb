"""How fillers meet a face frame: they close what it leaves open, at its own edges and front."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from closetbench.core.component import Component
from closetbench.core.face_frame import FaceFrameSpec, StileEnd
from closetbench.core.fillers import Cover, FillersSpec
from closetbench.core.findings import Finding, Severity


def behind_frames(
    spec: FillersSpec, carcasses: Iterable[Component], frames: Iterable[FaceFrameSpec],
    built: Mapping[str, Component],
) -> tuple[FillersSpec, tuple[Component, ...], tuple[Finding, ...]]:
    """The fillers that are left to make, the carcasses with the edges that they have in front,
    and notes.

    A stile that reaches to the wall is that side's filler: nothing else covers the gap there.
    Elsewhere a filler lies flush with the frame, beside or above it.
    """
    by_carcass = {f.carcass: f for f in frames}
    fronted = {c.name: _fronted(c, by_carcass.get(c.name), built) for c in carcasses}
    found = []
    if fronted:
        for side, outer in (
            ("left", min(fronted.values(), key=lambda c: c.box.x0)),
            ("right", max(fronted.values(), key=lambda c: c.box.x1)),
        ):
            frame = by_carcass.get(outer.name)
            if frame is None or getattr(frame, side) is not StileEnd.WALL:
                continue
            if getattr(spec, side) not in (Cover.AUTO, Cover.NONE):
                found.append(Finding(
                    Severity.NOTE, spec.name, "frame-covers",
                    f"makes nothing at the {side}: the {side} stile of {frame.name} reaches to "
                    "the wall there", "", getattr(spec, side).value, Cover.NONE.value,
                    parts=(f"{frame.name}: {side} stile",),
                ))
            spec = (
                replace(spec, left=Cover.NONE) if side == "left"
                else replace(spec, right=Cover.NONE)
            )
    return spec, tuple(fronted.values()), tuple(found)


def _fronted(
    carcass: Component, frame: FaceFrameSpec | None, built: Mapping[str, Component]
) -> Component:
    if frame is None:
        return carcass
    box, front = carcass.box, built[frame.name].box
    return replace(carcass, box=replace(
        box, y0=front.y0, z1=max(box.z1, front.z1),
        x0=box.x0 if frame.left is StileEnd.WALL else min(box.x0, front.x0),
        x1=box.x1 if frame.right is StileEnd.WALL else max(box.x1, front.x1),
    ))
