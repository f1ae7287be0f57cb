"""Make-functions: they run headless, and leave transactions and recomputes to the caller.

Parts appear in the recompute that follows.
"""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import FreeCAD

from closetbench.core.closet import ClosetDesign, Spec, build_closet
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.specs import BaySpec, CarcassSpec, PanelSpec
from closetbench.model.base import create, ours
from closetbench.model.bill import Bill
from closetbench.model.bill_sheet import BillSheet
from closetbench.model.bridge import catalogue_of, chain_of, closet_for, survey_for
from closetbench.model.carcass import Carcass, write_bay, write_carcass
from closetbench.model.children import ensure_bays
from closetbench.model.closet import Closet
from closetbench.model.contents import content_class, turn, write_content
from closetbench.model.layout import IN_FRONT, CutLayout, write_settings, write_shop
from closetbench.model.offcuts import Offcuts, put_offcuts
from closetbench.model.panel import GroovedPanel, write_panel
from closetbench.model.plain import to_text
from closetbench.model.properties import put
from closetbench.model.shapes import placement
from closetbench.model.survey import Survey, write_site
from closetbench.resources import load_catalogue
from closetbench.stock.offcuts import Offcut
from closetbench.stock.plan import CutSettings
from closetbench.stock.tools import Shop

MATERIAL = "melamine18"
"""What a new carcass or panel is made of until the user says."""


def make_closet(doc: Any, name: str = "Closet") -> Any:
    """A closet with a survey of given sizes, which readings can take the place of."""
    closet = create(doc, Closet, "Closet", name)
    closet.addObject(create(doc, Survey, "Survey", "Survey"))
    return closet


def make_carcass(doc: Any, closet: Any, spec: CarcassSpec | None = None) -> Any:
    """A carcass at the right of those that the closet has."""
    carcass = create(doc, Carcass, "Carcass")
    carcass.Survey = survey_for(closet)
    closet.Group = [*closet.Group, carcass]
    write_spec(carcass, spec or CarcassSpec(carcass.Label, MATERIAL))
    return carcass


def make_content(doc: Any, closet: Any, spec: Spec) -> Any:
    """What a specification says, in the carcass of the closet that it names."""
    kind = content_class(spec)
    content = create(doc, kind, kind.__name__)
    content.Survey = survey_for(closet)
    closet.Group = [*closet.Group, content]
    write_spec(content, spec)
    return content


def make_panel(doc: Any, closet: Any | None = None, spec: PanelSpec | None = None) -> Any:
    """A single panel, in front of the closet if it belongs to one."""
    panel = create(doc, GroovedPanel, "Panel")
    write_spec(panel, spec or PanelSpec(panel.Label, MATERIAL, 800.0, 300.0))
    if closet is not None:
        closet.Group = [*closet.Group, panel]
    return panel


def make_offcuts(doc: Any, offcuts: Sequence[Offcut] = ()) -> Any:
    """A list of offcuts at hand."""
    made = create(doc, Offcuts, "Offcuts", "Offcuts at hand")
    put_offcuts(made, offcuts)
    return made


def make_layout(
    doc: Any, closet: Any, settings: CutSettings | None = None, shop: Shop | None = None
) -> Any:
    """A cut layout of a closet's parts, without a plan as yet. The offcuts that the document
    has are at hand for it."""
    layout = create(doc, CutLayout, "CutLayout", f"{closet.Label}: cut layout")
    layout.Closet = closet
    layout.Placement.Base = FreeCAD.Vector(0.0, -IN_FRONT, 0.0)
    layout.Offcuts = next(ours(doc, "Offcuts"), None)
    write_settings(layout, settings or CutSettings())
    write_shop(layout, shop or Shop())
    return layout


def make_bill(doc: Any, closet: Any, layout: Any | None = None) -> Any:
    """A bill of a closet, written in the next recompute."""
    bill = create(doc, Bill, "Bill", f"{closet.Label}: bill")
    bill.Closet = closet
    bill.Layout = layout
    return bill


def make_bill_sheet(doc: Any, bill: Any) -> Any:
    """A spreadsheet that holds a bill's lines, filled in the next recompute."""
    sheet = create(doc, BillSheet, "BillSheet", f"{bill.Label}, spreadsheet")
    sheet.Bill = bill
    return sheet


def write_spec(obj: Any, spec: ClosetDesign | Spec | BaySpec) -> None:
    """Set the properties of an object that differ from a spec, and only those.

    To a survey goes a design, of which the components do not count.
    """
    if isinstance(spec, ClosetDesign):
        write_site(obj, spec)
    elif isinstance(spec, BaySpec):
        write_bay(obj, spec)
    elif isinstance(spec, PanelSpec):
        write_panel(obj, spec)
    elif not isinstance(spec, CarcassSpec):
        write_content(obj, spec, chain_of(closet_for(obj)))
    else:
        write_carcass(obj, spec)
        ensure_bays(obj, len(spec.bays))
        for bay, own in zip(obj.BayList, spec.bays, strict=True):
            write_bay(bay, own)


def closet_from_design(
    doc: Any, design: ClosetDesign, catalogue: Catalogue | None = None, *,
    catalogue_file: Path | None = None, form: LengthFormat | None = None,
) -> Any:
    """A closet with everything that a design says, in a document that is recomputed then.

    ``catalogue`` gives the measured thicknesses that differ from those of ours with
    ``catalogue_file`` over it. Raises ``ClosetError`` before anything is made where the
    design cannot be built.
    """
    base = load_catalogue(catalogue_file)
    build_closet(design, catalogue or base)
    closet = make_closet(doc, design.name)
    if catalogue_file is not None:
        closet.Catalogue = str(catalogue_file)
    if catalogue is not None:
        closet.Measured = {
            key: repr(board.measured) for key, board in catalogue.materials.items()
            if board.measured is not None
            and (key not in base.materials or base.materials[key].measured != board.measured)
        }
    if form is not None:
        closet.LengthStyle = form.style
        closet.LengthStep = str(form.resolution)
    put(closet, "Circumstances", to_text(design.circumstances))
    write_spec(survey_for(closet), design)
    # what stands in another is written when that is there; the order is the design's
    made = {
        spec.name: make_carcass(doc, closet, spec) for spec in design.components
        if isinstance(spec, CarcassSpec)
    }
    contents = [s for s in design.components if not isinstance(s, CarcassSpec | PanelSpec)]
    for spec in sorted(contents, key=lambda s: turn(type(s))):
        made[spec.name] = make_content(doc, closet, spec)
    panels = [make_panel(doc, closet, s) for s in design.components if isinstance(s, PanelSpec)]
    made |= {p.Label: p for p in panels}
    own = [made[spec.name] for spec in design.components]
    closet.Group = [*(o for o in closet.Group if o not in own), *own]
    doc.recompute()
    built = {c.name: c for c in build_closet(design, catalogue_of(closet)).components}
    for panel in panels:
        panel.Placement = placement(built[panel.Label].parts[0].place)
        panel.purgeTouched()
    return closet
