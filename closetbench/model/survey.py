"""The survey in the document: readings in, the room and the envelope out.

Its placement is where the envelope's front left bottom corner stands in the document;
all parts follow it.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Any

import FreeCAD
import Part

from closetbench.core.closet import ClosetDesign, build_envelope
from closetbench.core.envelope import Clearances, Envelope, Objective, Wall
from closetbench.core.room import Room
from closetbench.core.survey import (
    OPENING_NAMES,
    READING_NAMES,
    TRIM_NAMES,
    Obstacle,
    OwnDoor,
    Reading,
    TapeClass,
)
from closetbench.core.survey import Survey as Readings
from closetbench.model.base import Scripted
from closetbench.model.properties import (
    BOOL,
    DISTANCE,
    ENUMERATION,
    FLOAT,
    LENGTH,
    TEXTS,
    ZERO_IS_NONE,
    Prop,
    camel,
    choice,
    put,
    read_fields,
    records_codec,
    result,
    starting_as,
    write_fields,
)

BY_READINGS = "readings"
BY_SIZES = "sizes"
MAYBE_READ = ("lean_right_front", "lean_right_back")
"""Readings of which 0 is a value, so that a switch says whether they were taken."""


def _sentence(words: str) -> str:
    return words[0].upper() + words[1:]


def _reading(name: str, words: str) -> Prop:
    signed = name.startswith(("lean", "rise"))
    text = _sentence(words)
    if name.startswith("diagonal"):
        return Prop(camel(name), LENGTH, "Readings", f"{text}; 0: not taken", name, ZERO_IS_NONE)
    if name.startswith("lean"):
        text += "; positive where it leans into the closet on its way up"
    return Prop(
        camel(name), DISTANCE if signed else LENGTH, "Readings", text,
        "" if name in MAYBE_READ else name,
    )


READINGS = (
    *(_reading(name, words) for name, words in READING_NAMES.items()),
    *(
        Prop(camel(name), LENGTH, "Opening", f"{_sentence(words)}; 0: not taken", name,
             ZERO_IS_NONE)
        for name, words in OPENING_NAMES.items()
    ),
    *(
        Prop(camel(name), LENGTH, "Opening", _sentence(words), name,
             initial=getattr(Readings, name))
        for name, words in TRIM_NAMES.items()
    ),
    choice("Door", "Opening", "What closes the opening", "door", OwnDoor, initial=Readings.door),
    Prop("DoorOpens", FLOAT, "Opening", "Degrees to which the closet's own door opens",
         "door_opens", initial=Readings.door_opens),
    Prop("ExtraReadings", TEXTS, "Readings",
         "Readings taken anywhere else, as written by the survey's form", "extras",
         records_codec(Reading, "extra readings")),
    Prop("Obstacles", TEXTS, "Readings",
         "What must stay clear, as written by the survey's form", "obstacles",
         records_codec(Obstacle, "obstacles")),
    choice("Tape", "Accuracy", "Accuracy class of the tape", "tape", TapeClass,
           initial=Readings.tape),
    Prop("Resolution", LENGTH, "Accuracy", "The step to which the tape was read", "resolution",
         initial=Readings.resolution),
    Prop("LevelError", LENGTH, "Accuracy", "Error of the level or plumb line in a metre",
         "level_error", initial=Readings.level_error),
)
TAKEN = tuple(
    Prop(
        f"{camel(name)}Taken", BOOL, "Readings",
        f"Whether the {READING_NAMES[name]} was read", initial=False,
    )
    for name in MAYBE_READ
)
LEVELS = tuple(
    Prop(
        f"Level{word}", LENGTH, "Readings",
        f"Height above the floor of the {word.lower()} readings", initial=height,
    )
    for word, height in zip(("Low", "Mid", "High"), (100.0, 1200.0, 2200.0), strict=True)
)
SITE = (
    Prop(
        "Source", ENUMERATION, "Envelope",
        "What the envelope follows from: the readings, or the given sizes",
        choices=(BY_READINGS, BY_SIZES), initial=BY_SIZES,
    ),
    Prop("GivenWidth", LENGTH, "Envelope", "Width of an envelope of given sizes", initial=1200.0),
    Prop("GivenDepth", LENGTH, "Envelope", "Depth of an envelope of given sizes", initial=600.0),
    Prop("GivenHeight", LENGTH, "Envelope", "Height of an envelope of given sizes",
         initial=2400.0),
    Prop(
        "DepthLimit", LENGTH, "Envelope",
        "How deep the envelope may go at most; 0: as deep as the room",
    ),
    choice("Objective", "Envelope", "What of the envelope is to be largest", "objective",
           Objective, initial=Objective.WIDTH),
)
CLEARANCES = starting_as(Clearances(), (
    Prop(f"Clearance{camel(name)}", LENGTH, "Envelope", f"Least gap to keep at the {name}", name)
    for name in ("left", "right", "back", "top", "floor")
)) + starting_as(Clearances(), (
    Prop("Confidence", FLOAT, "Envelope", "How likely the clearances are kept, given the readings",
         "confidence"),
))
RESULTS = (
    result("EnvelopeWidth", LENGTH, "Width of the largest plumb and level box that fits"),
    result("EnvelopeDepth", LENGTH, "Depth of the largest plumb and level box that fits"),
    result("EnvelopeHeight", LENGTH, "Height of the largest plumb and level box that fits"),
    result("OriginX", DISTANCE, "The envelope's left face from the room's front left corner"),
    result("OriginY", DISTANCE, "The envelope's front face from the room's front left corner"),
    result("OriginZ", DISTANCE, "The envelope's floor above the room's front left corner"),
    *(
        result(f"Gap{camel(w.value)}{how}", DISTANCE, f"{words} gap at the {w.value}", "Gaps")
        for w in Wall
        for how, words in (("Least", "Smallest"), ("Most", "Widest"))
    ),
    result("Findings", TEXTS, "Findings about the readings"),
)


class Survey(Scripted):
    """Proxy of a survey."""

    properties = (*SITE, *CLEARANCES, *READINGS, *TAKEN, *LEVELS, *RESULTS)
    type_id = "Part::FeaturePython"

    def work_out(self, obj: Any) -> None:
        """Fit the envelope; raises ``ClosetError`` where there is none."""
        room, envelope = fitted(site_of(obj))
        for name, value in (
            ("EnvelopeWidth", envelope.width), ("EnvelopeDepth", envelope.depth),
            ("EnvelopeHeight", envelope.height), ("OriginX", envelope.x0),
            ("OriginY", envelope.y0), ("OriginZ", envelope.z0),
        ):
            put(obj, name, value)
        for wall in Wall:
            gaps = [g.value for g in envelope.gaps_at(wall)] or [0.0]
            put(obj, f"Gap{camel(wall.value)}Least", min(gaps))
            put(obj, f"Gap{camel(wall.value)}Most", max(gaps))
        put(obj, "Findings", [str(f.message) for f in (room.findings if room else ())])
        shape = _outline(room, envelope)
        shape.Placement = obj.Placement
        obj.Shape = shape


@lru_cache(maxsize=8)
def fitted(site: ClosetDesign) -> tuple[Room | None, Envelope]:
    """``build_envelope``, remembered: the panel, the object and its view ask for the same."""
    return build_envelope(site)


def site_of(obj: Any) -> ClosetDesign:
    """The design that a survey says, without components."""
    clearances = Clearances(**read_fields(obj, CLEARANCES))
    limit = obj.DepthLimit.Value or None
    objective = Objective(obj.Objective)
    if obj.Source == BY_SIZES:
        sizes = (obj.GivenWidth.Value, obj.GivenDepth.Value, obj.GivenHeight.Value)
        return ClosetDesign(obj.Label, None, clearances, sizes, limit, objective=objective)
    readings = read_fields(obj, READINGS)
    for name in MAYBE_READ:
        taken = getattr(obj, f"{camel(name)}Taken")
        readings[name] = getattr(obj, camel(name)).Value if taken else None
    levels = tuple(getattr(obj, p.name).Value for p in LEVELS)
    survey = Readings(**readings, levels=levels)
    return ClosetDesign(obj.Label, survey, clearances, None, limit, objective=objective)


def write_site(obj: Any, design: ClosetDesign) -> None:
    """Set the properties that differ from what the design says about the room."""
    write_fields(obj, CLEARANCES, design.clearances)
    put(obj, "DepthLimit", design.depth_limit or 0.0)
    put(obj, "Objective", design.objective.value)
    put(obj, "Source", BY_SIZES if design.survey is None else BY_READINGS)
    if design.size is not None:
        for name, value in zip(("Width", "Depth", "Height"), design.size, strict=True):
            put(obj, f"Given{name}", value)
    if design.survey is None:
        return
    write_fields(obj, READINGS, design.survey)
    for name in MAYBE_READ:
        value = getattr(design.survey, name)
        put(obj, f"{camel(name)}Taken", value is not None)
        if value is not None:
            put(obj, camel(name), value)
    for prop, value in zip(LEVELS, design.survey.levels, strict=True):
        put(obj, prop.name, value)


def _outline(room: Room | None, envelope: Envelope) -> Part.Shape:
    """The edges of the room and of the envelope, in the envelope's frame."""
    edges = Part.makeBox(envelope.width, envelope.depth, envelope.height).Edges
    shift = FreeCAD.Vector(-envelope.x0, -envelope.y0, -envelope.z0)
    for start, end in room.corner_lines() if room else ():
        edges.append(Part.makeLine(FreeCAD.Vector(*start) + shift, FreeCAD.Vector(*end) + shift))
    return Part.Compound(edges)
