"""From a job to its documents: the whole run, with or without FreeCAD's windows.

One stage after the other: the closet, the plan of its sheets (verified before anything
is written), then the documents. Each document is written whole or not at all; one that
cannot be made is named with the reason and does not stop the others.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

from closetbench.core.closet import Closet, build_closet
from closetbench.core.errors import ClosetError, DocumentError
from closetbench.core.figures import Figures
from closetbench.core.materials import Catalogue
from closetbench.job import Job
from closetbench.shop.cutting_order import write_cutting_order
from closetbench.shop.report import report_lines, write_report
from closetbench.stock.from_parts import cut_parts, stock_sheets
from closetbench.stock.offcuts import (
    Offcut,
    after_cutting,
    offcuts_as_stock,
    read_offcuts,
    write_offcuts,
)
from closetbench.stock.plan import Plan, StockSheet
from closetbench.stock.sheets import plan_sheets
from closetbench.stock.verify import require_valid

Say = Callable[[str], None]


@dataclass(frozen=True)
class Result:
    """What a run came to: ``files`` by kind, ``missing`` documents with the reason."""

    job: Job
    catalogue: Catalogue
    closet: Closet
    plan: Plan
    files: dict[str, tuple[Path, ...]] = field(default_factory=dict)
    missing: dict[str, str] = field(default_factory=dict)


def stock_for(job: Job, catalogue: Catalogue, closet: Closet) -> tuple[StockSheet, ...]:
    """The offcuts and sheets that the job may be cut from."""
    offcuts = offcuts_as_stock(_offcuts(job), job.design.name)
    materials = [p.panel.material for p in closet.parts]
    return stock_sheets(catalogue, materials, offcuts, trim=job.trim)


def _offcuts(job: Job) -> tuple[Offcut, ...]:
    return read_offcuts(job.offcuts_file) if job.offcuts_file else ()


def _write_offcuts(path: Path, offcuts: tuple[Offcut, ...]) -> tuple[Path, ...]:
    write_offcuts(path, offcuts)
    return (path,)


def plan_job(job: Job, catalogue: Catalogue, closet: Closet, say: Say) -> Plan:
    """The verified plan of a closet's sheets. Raises ``LayoutError`` where there is none."""
    parts = cut_parts(closet.parts, catalogue)
    stock = stock_for(job, catalogue, closet)
    spoken = [time.monotonic()]

    def progress(state: object) -> bool:
        if time.monotonic() - spoken[0] > 1.0:
            spoken[0] = time.monotonic()
            say(f"  {getattr(state, 'material', '')}: {getattr(state, 'done', 0):.0%}")
        return True

    plan = plan_sheets(parts, stock, job.cutting, progress)
    require_valid(plan, parts, job.cutting, stock)
    return plan


def produce(
    job: Job, folder: Path, say: Say, *, per_sheet: bool = False, per_part: bool = False,
) -> Result:
    """Build the job and write its documents into ``folder``.

    Raises ``ClosetError`` where the closet or its plan cannot be made, or ``folder`` cannot
    be written; nothing is written then.
    """
    from closetbench.shop import bill, dxf, picture

    say(f"{job.design.name}: room, envelope and parts")
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue, Figures(job.lengths))
    say(f"{len(closet.parts)} parts: planning the sheets")
    plan = plan_job(job, catalogue, closet, say)
    result = Result(job, catalogue, closet, plan)
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise DocumentError(
            "output", "folder", str(folder), f"cannot be made: {error.strerror or error}"
        ) from error
    parts, form = closet.parts, job.lengths
    makers: dict[str, Callable[[], tuple[Path, ...]]] = {
        "cut layout": lambda: (dxf.layout_dxf(plan, parts, folder / "layout.dxf", form),),
        "report": lambda: (write_report(
            folder / "report.txt", closet, plan, catalogue, form
        ),),
        "cutting": lambda: (write_cutting_order(
            folder / "cutting.txt", plan, cut_parts(parts, catalogue),
            stock_for(job, catalogue, closet), job.cutting, catalogue, form,
        ),),
        "bill": lambda: (bill.write_bill(
            folder / "bill.csv", closet, plan, catalogue, form, job.bit
        ),),
        "pictures": lambda: picture.write_pictures(folder, closet, plan, catalogue, form),
        "model": lambda: (_model(job, catalogue, folder / "closet.FCStd"),),
    }
    if job.offcuts_file:
        left = after_cutting(_offcuts(job), plan, job.design.name)
        # beside the other papers: the sheets are not cut yet, so the user's file stays
        makers["offcuts"] = lambda: _write_offcuts(folder / "offcuts-after.toml", left)
    if per_sheet:
        makers["sheets"] = lambda: dxf.sheet_files(plan, parts, folder / "sheets", form)
    if per_part:
        made = (*parts, *closet.reused)
        makers["parts"] = lambda: dxf.part_files(made, folder / "parts", form)
    for kind, make in makers.items():
        say(f"writing the {kind}")
        try:
            result.files[kind] = make()
        except ClosetError as error:
            result.missing[kind] = str(error)
    return result


def _model(job: Job, catalogue: Catalogue, path: Path) -> Path:
    from closetbench.host import import_freecad

    import_freecad()
    from closetbench.model.files import write_model

    return write_model(
        job.design, catalogue, path, catalogue_file=job.catalogue_file, form=job.lengths
    )


def summary(result: Result) -> str:
    """Where the documents are, what is missing, and the report."""
    lines = [result.closet.design.name, ""]
    for kind, paths in result.files.items():
        lines += [f"  {kind + ':':<12} {path}" for path in paths]
    lines += [f"  {kind + ':':<12} NOT WRITTEN: {why}" for kind, why in result.missing.items()]
    report = report_lines(result.closet, result.plan, result.catalogue, result.job.lengths)
    return "\n".join([*lines, "", *report])
