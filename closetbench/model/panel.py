"""The single grooved panel in the document: parameters and piece in one object."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from closetbench.core.panel import Face, Grain, Rim
from closetbench.core.specs import PanelSpec
from closetbench.model.carcass import JOINERY
from closetbench.model.part import PANEL, Carded, show_panel
from closetbench.model.properties import (
    BAND,
    BOOL,
    EMPTY_IS_NONE,
    INTEGER,
    LENGTH,
    STRING,
    ZERO_IS_NONE,
    Prop,
    choice,
    put,
    read_fields,
    record_of,
    result,
    starting_as,
    write_fields,
)

FIELDS = starting_as(PanelSpec("", "", 800.0, 300.0), (
    Prop("Material", STRING, "Panel", "Key of the board in the catalogue", "material"),
    Prop("Length", LENGTH, "Panel", "Finished length", "length"),
    Prop("Width", LENGTH, "Panel", "Finished width", "width"),
    choice("Grain", "Panel", "Where the grain runs", "grain", Grain),
    Prop("Band", STRING, "Panel",
         "Edge band: auto for the material's own, empty for none, or a key of the catalogue",
         "band", BAND),
    Prop("Mating", STRING, "Grooves", "Key of the boards that go into the grooves; empty: the same",
         "mating", EMPTY_IS_NONE),
    choice("Face", "Grooves", "The face that the grooves are in", "face", Face),
    choice("MeasuredFrom", "Grooves", "The rim that the grooves are measured from",
           "measured_from", Rim),
    Prop("Grooves", INTEGER, "Grooves", "Number of grooves", "grooves"),
    Prop("First", LENGTH, "Grooves", "From that rim to the near wall of the first groove",
         "first"),
    Prop("Spacing", LENGTH, "Grooves", "From near wall to near wall", "spacing"),
    Prop("GrooveDepth", LENGTH, "Grooves", "Depth of the grooves; 0: by rule", "depth",
         ZERO_IS_NONE),
    Prop("StopFirst", LENGTH, "Grooves",
         "How far the grooves stay away from the front or the start", "stop_first"),
    Prop("StopLast", LENGTH, "Grooves",
         "How far the grooves stay away from the rear or the end", "stop_last"),
    *JOINERY,
))
_SWITCHES = tuple(
    (f"{word}{rim.value.capitalize()}", field, rim)
    for word, field in (("Rabbet", "rabbets"), ("Band", "bands"))
    for rim in Rim
)
SWITCHES = tuple(
    Prop(
        name, BOOL, "Grooves" if field == "rabbets" else "Panel",
        f"{'Rabbet' if field == 'rabbets' else 'Edge band'} at the {rim.value}", initial=False,
    )
    for name, field, rim in _SWITCHES
)

OWN_PANEL = (
    *(p for p in PANEL if p.name not in {f.name for f in FIELDS}),
    result("Fingerprint", STRING, "What the shape was made from", "Part", hidden=True),
)
"""What a part shows, less what is a parameter here."""


class GroovedPanel(Carded):
    """Proxy of a single panel; its placement is the user's."""

    properties = (*FIELDS, *SWITCHES, *OWN_PANEL)
    type_id = "Part::FeaturePython"

    def work_out(self, obj: Any) -> None:
        """Make the panel; raises ``ClosetError`` and keeps what was."""
        from closetbench.model.bridge import catalogue_of, closet_for, component_of, format_of

        closet = closet_for(obj)
        part = component_of(obj).parts[0]
        show_panel(obj, part, catalogue_of(closet), format_of(closet), obj.Placement)


def panel_spec(obj: Any) -> PanelSpec:
    """What a panel object says."""
    values = read_fields(obj, FIELDS)
    for name in ("rabbets", "bands"):
        values[name] = tuple(
            rim for prop, field, rim in _SWITCHES if field == name and getattr(obj, prop)
        )
    return record_of(PanelSpec, {**values, "name": obj.Label})


def write_panel(obj: Any, spec: PanelSpec) -> None:
    """Set the properties that differ from a spec."""
    if obj.Label != spec.name:
        obj.Label = spec.name
    # a depth in the rules means the same as one of the panel's own
    write_fields(obj, FIELDS, replace(spec, depth=spec.depth or spec.rules.depth))
    for prop, field, rim in _SWITCHES:
        put(obj, prop, rim in getattr(spec, field))
