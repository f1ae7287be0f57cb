"""The carcass and its bays in the document. They hold what the user decides; the parts
are objects of their own."""

from __future__ import annotations

from typing import Any

from closetbench.core.closet import part_weight
from closetbench.core.joinery import Joint
from closetbench.core.specs import BackKind, BaseKind, BaySpec, CarcassSpec, TopKind
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
    LINK,
    LINKS,
    STRING,
    TEXTS,
    TUPLE,
    ZERO_IS_NONE,
    Prop,
    choice,
    put,
    read_fields,
    result,
    starting_as,
    with_fields,
    write_fields,
)

BAYS = starting_as(BaySpec(), (
    Prop("Width", LENGTH, "Bay", "Clear width; 0 shares what is left with the other such bays",
         "width", ZERO_IS_NONE),
    Prop("FixedShelves", INTEGER, "Bay", "Number of fixed shelves", "fixed"),
    Prop("ShelfHeights", FLOATS, "Bay",
         "Underside of each fixed shelf above the bay's floor in mm; none: equal spaces",
         "heights", TUPLE),
    Prop("AdjustableShelves", INTEGER, "Bay", "Number of loose shelves on pins", "adjustable"),
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
FIELDS = starting_as(CarcassSpec("", ""), (
    Prop("Material", STRING, "Carcass", "Key of the boards in the catalogue", "material"),
    Prop("Width", LENGTH, "Sizes", "Outer width; 0: what the envelope leaves", "width",
         ZERO_IS_NONE),
    Prop("Height", LENGTH, "Sizes", "Outer height, base included; 0: that of the envelope",
         "height", ZERO_IS_NONE),
    Prop("Depth", LENGTH, "Sizes", "Outer depth; 0: that of the envelope", "depth",
         ZERO_IS_NONE),
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
    *JOINERY,
    Prop("GrooveDepth", LENGTH, "Joinery", "Depth of all grooves; 0: by the fraction",
         "rules.depth", ZERO_IS_NONE),
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
SWITCHED = (
    Prop("BesidePrevious", BOOL, "Sizes", "Stands beside the carcass before it, else at X",
         initial=True),
    Prop("X", DISTANCE, "Sizes", "Left side's distance from the envelope's left"),
    Prop("GrooveStopByRule", BOOL, "Joinery",
         "Grooves stop short of a banded front edge and run through a bare one", initial=True),
    Prop("GrooveStop", LENGTH, "Joinery",
         "How far grooves stay back from the front edge; 0 runs them through"),
    Prop("BayCount", INTEGER, "Bays", "Number of bays, each an object of its own", initial=1),
)
LINKS_OUT = (
    Prop("Survey", LINK, "Links", "The survey whose envelope it stands in"),
    Prop("Beside", LINK, "Links", "The carcass to its left, by the closet's order", locked=True),
    Prop("BayList", LINKS, "Links", "Its bays from left to right", locked=True),
    Prop("BaysMade", INTEGER, "Links", "Bays that there were objects for", result=True,
         hidden=True),
)
RESULTS = (
    result("OuterWidth", LENGTH, "Outer width as built"),
    result("OuterHeight", LENGTH, "Outer height as built"),
    result("OuterDepth", LENGTH, "Outer depth as built"),
    result("LeftAt", DISTANCE, "Left side's distance from the envelope's left as built"),
    result("FrontAt", DISTANCE, "The front's distance from the envelope's front as built"),
    result("PartCount", INTEGER, "Number of parts"),
    result("Weight", FLOAT, "Weight of all parts in kg"),
    result("Findings", TEXTS, "Doubts about the carcass"),
)


class Bay(Scripted):
    """Proxy of a bay, which only holds properties."""

    properties = BAYS


class Carcass(Scripted):
    """Proxy of a carcass."""

    properties = (*LINKS_OUT, *FIELDS, *SWITCHED, *RESULTS)

    def work_out(self, obj: Any) -> None:
        """Work out the carcass; raises ``ClosetError`` and keeps what was."""
        from closetbench.model.bridge import built_of

        built = built_of(obj)
        box = built.component.box
        for name, value in (
            ("OuterWidth", box.x1 - box.x0), ("OuterHeight", box.z1 - box.z0),
            ("OuterDepth", box.y1 - box.y0), ("LeftAt", box.x0), ("FrontAt", box.y0),
            ("PartCount", len(built.parts)),
            ("Weight", sum(part_weight(p, built.catalogue) for p in built.component.parts)),
            ("Findings", [f"{f.subject}: {f.message}" for f in built.component.findings]),
        ):
            put(obj, name, value)

    def onChanged(self, obj: Any, name: str) -> None:  # noqa: N802 - FreeCAD's name
        """A new label is a new name for all parts."""
        if name == "Label" and not obj.Document.Restoring and hasattr(obj, "Findings"):
            obj.touch()


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
    values["x"] = None if obj.BesidePrevious else obj.X.Value
    values["groove_stop"] = None if obj.GrooveStopByRule else obj.GrooveStop.Value
    return with_fields(CarcassSpec(obj.Label, "", bays=tuple(bays)), values)


def write_carcass(obj: Any, spec: CarcassSpec) -> None:
    """Set the properties that differ from a spec, but for the bays."""
    if obj.Label != spec.name:
        obj.Label = spec.name
    write_fields(obj, FIELDS, spec)
    put(obj, "BesidePrevious", spec.x is None)
    put(obj, "GrooveStopByRule", spec.groove_stop is None)
    if spec.x is not None:
        put(obj, "X", spec.x)
    if spec.groove_stop is not None:
        put(obj, "GrooveStop", spec.groove_stop)


def write_bay(obj: Any, spec: BaySpec) -> None:
    """Set the properties that differ from a spec."""
    write_fields(obj, BAYS, spec)
