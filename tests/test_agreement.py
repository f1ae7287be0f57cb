"""Model, DXF and bill say the same to 0.001 mm: solids, outlines read back, rows."""

from __future__ import annotations

import csv
from dataclasses import replace
from pathlib import Path

import pytest

from closetbench.core.closet import build_closet
from closetbench.core.fillers import FillersSpec, Levelling
from closetbench.core.panel import Section
from closetbench.core.parts import Part, Role
from closetbench.job import Job, read_job
from closetbench.produce import plan_job
from closetbench.resources import RESOURCES
from closetbench.shop.bill import closet_bill, save_bill
from closetbench.shop.dxf import layout_dxf
from closetbench.stock.from_parts import cut_parts
from tests.shop.reading import read_layout

pytestmark = pytest.mark.freecad
EXACT = 0.001


def example(name: str) -> Job:
    job = read_job(RESOURCES / "examples" / f"{name}.toml")
    return replace(job, cutting=replace(job.cutting, seconds=0.05, tidy=0.0))


def solids(doc) -> dict[str, object]:
    """Every solid of a part that is cut, by the part's full name."""
    from closetbench.model.base import class_of

    return {
        f"{o.Component.Label}: {o.PartName}": o for o in doc.Objects
        if class_of(o) == "ClosetPart"
    }


@pytest.fixture
def model():
    """A document made from a job, closed at the end."""
    import FreeCAD

    from closetbench.model.make import closet_from_design

    doc = FreeCAD.newDocument("agreement", hidden=True, temp=True)

    def make(job: Job):
        closet = closet_from_design(
            doc, job.design, job.catalogue(), catalogue_file=job.catalogue_file, form=job.lengths
        )
        doc.recompute()
        return closet

    yield doc, make
    FreeCAD.closeDocument(doc.Name)


def rows_of(path: Path) -> dict[str, dict[str, str]]:
    """The bill's rows of parts by component and name."""
    with open(path, encoding="utf-8-sig", newline="") as stream:
        rows = list(csv.reader(stream))
    head = next(i for i, row in enumerate(rows) if row[:2] == ["component", "parts"])
    found = {}
    for row in rows[head + 1:]:
        if row[0] in ("", "total"):
            break
        values = dict(zip(rows[head], row, strict=True))
        for name in values["parts"].split("; "):
            found[f"{values['component']}: {name}"] = values
    return found


def agree(part: Part, solid, outline: tuple[float, float], thickness: float, row) -> None:
    """One part in all its four forms."""
    panel = part.panel
    box = solid.Shape.copy()
    box.Placement = type(box.Placement)()
    bounds = box.BoundBox
    assert bounds.XLength == pytest.approx(panel.length, abs=EXACT)
    assert bounds.YLength == pytest.approx(panel.width, abs=EXACT)
    assert bounds.ZLength == pytest.approx(panel.thickness, abs=EXACT)
    assert solid.Shape.isValid()
    assert solid.Shape.Volume == pytest.approx(panel.volume, rel=1e-6)
    sawn = sorted((panel.cut_length, panel.cut_width))
    assert sorted(outline) == pytest.approx(sawn, abs=EXACT)
    assert thickness == pytest.approx(panel.thickness, abs=EXACT)
    for key, value in (
        ("length mm", panel.length), ("width mm", panel.width),
        ("thickness mm", panel.thickness), ("cut length mm", panel.cut_length),
        ("cut width mm", panel.cut_width),
    ):
        assert float(row[key]) == pytest.approx(value, abs=EXACT)


@pytest.mark.parametrize("name", ["box-room", "porch-closet"])
def test_solids_drawing_and_bill_agree_part_by_part(name, model, tmp_path):
    doc, make = model
    job = example(name)
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue)
    make(job)
    cutting = plan_job(job, catalogue, closet, lambda _: None)
    plan = cutting.sheets
    placed = [p.part for sheet in plan.sheets for p in sheet.placements]
    on_sheets = [p for p in closet.parts if p.full_name in placed]
    drawn = read_layout(layout_dxf(plan, on_sheets, tmp_path / "a.dxf"))
    paper = closet_bill(closet, plan, catalogue, lengths=cutting.lengths)
    rows = rows_of(save_bill(tmp_path / "a.csv", paper))
    found = solids(doc)
    parts = {p.full_name: p for p in (*closet.parts, *closet.reused)}
    assert set(found) == set(parts)
    assert len(drawn) == len(placed)
    crosscut = [c.part for bar in cutting.lengths.bars for c in bar.cuts]
    rods = {p.full_name for p in closet.lengths}
    assert sorted([*placed, *(c for c in crosscut if c not in rods)]) == sorted(
        p.full_name for p in closet.parts)
    assert rods <= set(crosscut)
    for key, outline in zip(placed, drawn, strict=True):
        assert key.endswith(outline.name)
        agree(parts[key], found[key], outline.size, outline.thickness, rows[key])
    assert len(placed) + len(crosscut) > 40


def test_a_reading_changed_by_7_mm_in_the_file_and_in_the_properties_is_the_same(model):
    doc, make = model
    job = example("box-room")
    closet = make(job)
    before = {n: o.Shape.BoundBox.XLength for n, o in solids(doc).items()}
    survey = next(o for o in closet.Group if o.Name.startswith("Survey"))
    survey.WidthFrontLow = survey.WidthFrontLow.Value - 7.0
    doc.recompute()
    after = {n: o.Shape.BoundBox.XLength for n, o in solids(doc).items()}

    readings = replace(
        job.design.survey, width_front_low=job.design.survey.width_front_low - 7.0
    )
    again = build_closet(replace(job.design, survey=readings), job.catalogue())
    built = (*again.parts, *again.reused)
    expected = {p.full_name: p.box().x1 - p.box().x0 for p in built}
    assert set(after) == set(expected)
    for name, width in expected.items():
        assert after[name] == pytest.approx(width, abs=EXACT), name
    changed = {n for n in before if abs(after[n] - before[n]) > EXACT}
    assert "Coats and boots: top" in changed
    assert "Craft: top" not in changed


def scribed(job: Job) -> Job:
    """The job with base frames scribed to the floor, where it has such bases."""
    parts = tuple(
        replace(c, levelling=Levelling.SCRIBED)
        if isinstance(c, FillersSpec) and job.design.name.startswith("The box room") else c
        for c in job.design.components
    )
    return replace(job, design=replace(job.design, components=parts))


def top_face(solid) -> list[tuple[float, float]]:
    """The corners of the face that lies up, in the panel's frame."""
    shape = solid.Shape.copy()
    shape.Placement = type(shape.Placement)()
    high = shape.BoundBox.ZMax
    return [(v.X, v.Y) for v in shape.Vertexes if abs(v.Z - high) < EXACT]


@pytest.mark.parametrize("name", ["box-room", "porch-closet"])
def test_tapered_parts_agree_in_every_form(name, model, tmp_path):
    doc, make = model
    job = scribed(example(name))
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue)
    make(job)
    tapered = {p.full_name: p for p in closet.parts if p.panel.tapers}
    roles = {p.role for p in tapered.values()}
    assert {Role.FILLER, Role.BASE_FRAME} <= roles or {Role.STILE, Role.MOULDING} <= roles
    found = solids(doc)
    cutting = plan_job(job, catalogue, closet, lambda _: None)
    plan = cutting.sheets
    placed = [p for sheet in plan.sheets for p in sheet.placements]
    on_sheets = [p for p in closet.parts if p.full_name in {q.part for q in placed}]
    drawn = dict(zip(
        (p.part for p in placed), read_layout(layout_dxf(plan, on_sheets, tmp_path / "a.dxf")),
        strict=True,
    ))
    rows = rows_of(save_bill(
        tmp_path / "a.csv",
        closet_bill(closet, plan, catalogue, form=job.lengths, lengths=cutting.lengths)))
    to_cut = {c.key: c for c in cut_parts(tapered.values(), catalogue)}
    seen = 0
    for key, part in tapered.items():
        panel, solid, row = part.panel, found[key], rows[key]
        assert solid.Shape.isValid()
        assert solid.Shape.Volume == pytest.approx(panel.volume, rel=1e-6)
        if panel.section is Section.FLAT:
            assert matches(top_face(solid), panel.outline())
        # the plan reckons with the rectangle around what is sawn
        xs, ys = zip(*panel.cut_outline(), strict=True)
        around = max(xs) - min(xs), max(ys) - min(ys)
        assert (to_cut[key].length, to_cut[key].width) == pytest.approx(around, abs=EXACT)
        assert float(row["cut length mm"]) == pytest.approx(around[0], abs=EXACT)
        assert float(row["cut width mm"]) == pytest.approx(around[1], abs=EXACT)
        # the bill says the taper in words, with the width at both ends
        for taper in panel.tapers:
            assert f"{taper.rim.value} aslant: " in row["machining"]
            for _, inside in (taper.places[0], taper.places[-1]):
                other = next((t for t in panel.tapers if t.rim is taper.rim.opposite), None)
                if other is None:
                    whole = panel.length if taper.rim.is_end else panel.width
                    assert job.lengths.text(whole - inside) in row["machining"]
        if key in drawn:
            seen += 1
            corner = drawn[key].corner
            size = drawn[key].size
            outline = [(x - corner[0], y - corner[1]) for x, y in drawn[key].outline]
            sawn = [(x - min(xs), y - min(ys)) for x, y in panel.cut_outline()]
            turned = abs(size[0] - around[0]) > EXACT
            if turned:
                outline = [(y, size[0] - x) for x, y in outline]
            assert matches(outline, sawn)
    assert seen >= 1


def matches(found: list[tuple[float, float]], wanted) -> bool:
    """Whether the same corners are in both, to a thousandth."""
    return len(found) == len(wanted) and all(
        any(abs(x - u) < EXACT and abs(y - v) < EXACT for u, v in wanted) for x, y in found
    )
