"""The carcass and its bays in the document. They hold what the user decides; the parts
are objects of their own."""

from __future__ import annotations

from typing import Any

from closetbench.core.joinery import Joint
from closetbench.core.specs import BackKind, BaseKind, BaySpec, CarcassSpec, TopKind
from closetbench.model import component
from closetbench.model.base import Scripted
from closetbench.model.properties import (
    BAND,
    BOOL,
    DISTANCE,
    EMPTY_IS_NONE,
    FLOAT,
    FLOATS,
    INTEGER,
    LENGTH,
    LINKS,
    STRING,
    TUPLE,
    ZERO_IS_NONE,
    Prop,
    choice,
    read_fields,
    record_of,
    starting_as,
    write_fields,
)

BAYS = starting_as(BaySpec(), (
    Prop("Width", LENGTH, "Bay", "Clear width; 0 shares what is left with the other such bays",
         "width", ZERO_IS_NONE),
    Prop("FixedShelves", INTEGER, "Bay", "Number of fixed shelves", "fixed"),
    Prop("ShelfHeights", FLOATS, "Bay",
         "Underside of each fixed shelf above the bay's floor in mm; none: equal spaces",
         "heights", TUPLE),
    Prop("AdjustableShelves", INTEGER, "Bay", "Number of adjustable shelves, loose on pins",
         "adjustable"),
))
JOINERY = (
    Prop("Fit", LENGTH, "Joinery", "How much wider a groove is than the panel in it",
         "rules.fit"),
    Prop("EndClearance", LENGTH, "Joinery",
         "How far a panel stays short of the bottom of its groove", "rules.end_clearance"),
    Prop("DepthFraction", FLOAT, "Joinery",
         "Depth of a groove as a fraction of the panel's thickness", "rules.depth_fraction"),
    Prop("DepthStep", LENGTH, "Joinery",
         "A depth by the fraction is taken down to a multiple of this", "rules.depth_step"),
    Prop("MostFraction", FLOAT, "Joinery",
         "Deepest groove allowed as a fraction of the thickness", "rules.most_fraction"),
    Prop("LeastWeb", FLOAT, "Joinery",
         "What must stay between grooves back to back, as a fraction of the thickness",
         "rules.least_web"),
    Prop("LeastSkin", LENGTH, "Joinery", "What must stay under a blind hole",
         "rules.least_skin"),
)
RULE_DEPTH = Prop("GrooveDepth", LENGTH, "Joinery", "Depth of all grooves; 0: by the fraction",
                  "rules.depth", ZERO_IS_NONE)
FIELDS = starting_as(CarcassSpec("", ""), (
    Prop("Material", STRING, "Carcass", "Key of the boards in the catalogue", "material"),
    Prop("Width", LENGTH, "Sizes", "Outer width; 0: what the envelope leaves", "width",
         ZERO_IS_NONE),
    Prop("Height", LENGTH, "Sizes", "Outer height, base included; 0: that of the envelope",
         "height", ZERO_IS_NONE),
    Prop("Depth", LENGTH, "Sizes", "Outer depth; 0: that of the envelope", "depth",
         ZERO_IS_NONE),
    Prop("X", DISTANCE, "Sizes", "Left side's distance from the envelope's left", "x",
         unless="BesidePrevious"),
    Prop("AgainstBack", BOOL, "Sizes",
         "Stands at the rear of a deeper envelope, else at its front", "against_back"),
    choice("Joint", "Carcass", "How top and bottom are joined to the sides", "joint", Joint),
    choice("ShelfJoint", "Carcass", "What carries the fixed shelves", "shelf_joint", Joint),
    choice("Top", "Carcass", "Where the top lies", "top", TopKind),
    Prop("Band", STRING, "Carcass",
         "Edge band of the visible front edges: auto for the material's own, empty for none, "
         "or a key of the catalogue", "band", BAND),
    choice("BaseKind", "Base", "What the carcass stands on", "base.kind", BaseKind),
    Prop("BaseHeight", LENGTH, "Base", "Height of the base", "base.height"),
    Prop("BaseSetback", LENGTH, "Base", "From the carcass front to the base's front",
         "base.setback"),
    Prop("BaseMaterial", STRING, "Base", "Key of the base's boards; empty: as the carcass",
         "base.material", EMPTY_IS_NONE),
    Prop("BaseSpacing", LENGTH, "Base", "Widest clear distance between cross members",
         "base.spacing"),
    choice("BackKind", "Back", "What closes or braces the carcass at the rear", "back.kind",
           BackKind),
    Prop("BackMaterial", STRING, "Back", "Key of the back's boards; empty: by rule",
         "back.material", EMPTY_IS_NONE),
    Prop("BackInset", LENGTH, "Back", "From the rear edges to the back's rear face",
         "back.inset"),
    Prop("CleatHeight", LENGTH, "Back", "Height of a cleat", "back.cleat_height"),
    Prop("ShelfLip", LENGTH, "Shelves", "Height of a strip before each shelf; 0: none",
         "shelf_lip.height"),
    Prop("ShelfLipMaterial", STRING, "Shelves", "Key of the strips' boards; empty: as the carcass",
         "shelf_lip.material", EMPTY_IS_NONE),
    Prop("ShelfBand", STRING, "Shelves",
         "Edge band of the shelves' front edges, or of their lips: auto as the carcass's, empty "
         "for none, or a key of the catalogue", "shelf_band", BAND),
    *JOINERY, RULE_DEPTH,
    Prop("GrooveStop", LENGTH, "Joinery",
         "How far grooves stay back from the front edge; 0 runs them through", "groove_stop",
         unless="GrooveStopByRule"),
    *(
        Prop(f"Pin{name}", LENGTH, "Shelf pins", text, f"drill.{name.lower()}")
        for name, text in (
            ("Diameter", "Diameter of the holes for shelf pins"),
            ("Pitch", "From one hole to the next"),
            ("Front", "From the front edge to the front row"),
            ("Rear", "Least distance from the rear edge to the rear row"),
            ("Margin", "From a fixed panel to the nearest hole"),
            ("Depth", "Depth of a blind hole"),
            ("Play", "How much shorter than its bay a loose shelf is"),
            ("Setback", "How far a loose shelf stays behind the front edges"),
        )
    ),
))
SWITCHES = (
    Prop("BesidePrevious", BOOL, "Sizes", "Stands beside the carcass before it, else at X",
         initial=True),
    Prop("GrooveStopByRule", BOOL, "Joinery",
         "Grooves stop short of a banded front edge and run through a bare one", initial=True),
    Prop("BayCount", INTEGER, "Bays", "Number of bays, each an object of its own", initial=1),
)
OWN_LINKS = (
    Prop("BayList", LINKS, "Links", "Its bays from left to right", locked=True),
    Prop("BaysMade", INTEGER, "Links", "Bays that there were objects for", result=True,
         hidden=True),
)


class Bay(Scripted):
    """Proxy of a bay, which only holds properties."""

    properties = BAYS


class Carcass(component.ComponentProxy):
    """Proxy of a carcass."""

    properties = (*component.LINKS, *OWN_LINKS, *FIELDS, *SWITCHES, *component.RESULTS)


def bay_count(obj: Any) -> int:
    """How many bays there are to be: one less for each bay object deleted by hand."""
    return obj.BayCount - max(0, obj.BaysMade - len(obj.BayList))


def bay_spec(obj: Any) -> BaySpec:
    """What a bay object says."""
    return BaySpec(**read_fields(obj, BAYS))


def carcass_spec(obj: Any) -> CarcassSpec:
    """What a carcass object and its bays say. A bay without an object is a plain one."""
    bays = [bay_spec(bay) for bay in obj.BayList][: max(0, bay_count(obj))]
    bays += [BaySpec()] * (bay_count(obj) - len(bays))
    values = read_fields(obj, FIELDS)
    return record_of(CarcassSpec, {**values, "name": obj.Label, "bays": tuple(bays)})


def write_carcass(obj: Any, spec: CarcassSpec) -> None:
    """Set the properties that differ from a spec, but for the bays."""
    if obj.Label != spec.name:
        obj.Label = spec.name
    write_fields(obj, FIELDS, spec)


def write_bay(obj: Any, spec: BaySpec) -> None:
    """Set the properties that differ from a spec."""
    write_fields(obj, BAYS, spec)
