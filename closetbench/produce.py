"""From a job to its documents: the whole run, with or without FreeCAD's windows.

One stage after the other: the closet, the plan of its sheets (verified before anything
is written), then the documents. Each document is written whole or not at all; one that
cannot be made is named with the reason and does not stop the others.
"""

from __future__ import annotations

import time
from collections.abc import Callable
from dataclasses import dataclass, field, replace
from pathlib import Path

from closetbench.core.closet import Closet, build_closet
from closetbench.core.errors import ClosetError, DocumentError
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding
from closetbench.core.materials import Catalogue
from closetbench.job import Job
from closetbench.shop.cutting_order import write_cutting_order
from closetbench.shop.language import Words, plain
from closetbench.shop.report import report_lines, write_report
from closetbench.stock.advice import strip_gains
from closetbench.stock.cutting import Cutting, Needs, needs_of, offcuts_after, plan_cutting
from closetbench.stock.offcuts import Offcut, read_offcuts, reserve, taken, write_offcuts
from closetbench.stock.plan import PlanProgress

Say = Callable[[str], None]


@dataclass(frozen=True)
class Result:
    """What a run came to: ``advice`` on strip widths, ``files`` by kind, ``missing`` documents
    with the reason."""

    job: Job
    catalogue: Catalogue
    closet: Closet
    cutting: Cutting
    advice: tuple[Finding, ...] = ()
    files: dict[str, tuple[Path, ...]] = field(default_factory=dict)
    missing: dict[str, str] = field(default_factory=dict)


def needs_for(job: Job, catalogue: Catalogue, closet: Closet) -> Needs:
    """What the job's closet needs, and the offcuts, sheets and lengths it may be cut from."""
    return needs_of(
        closet.parts, closet.lengths, catalogue, job.cutting.kerf, job.trim, _offcuts(job),
        job.design.name,
    )


def _offcuts(job: Job) -> tuple[Offcut, ...]:
    return read_offcuts(job.offcuts_file) if job.offcuts_file else ()


def _write_offcuts(path: Path, offcuts: tuple[Offcut, ...]) -> tuple[Path, ...]:
    write_offcuts(path, offcuts)
    return (path,)


def plan_job(job: Job, catalogue: Catalogue, closet: Closet, say: Say) -> Cutting:
    """The verified plans of a closet. Raises ``LayoutError`` where there is none."""
    spoken = [time.monotonic()]

    def progress(state: PlanProgress) -> bool:
        if time.monotonic() - spoken[0] > 1.0:
            spoken[0] = time.monotonic()
            say(f"  {state.material}: {state.done:.0%}")
        return True

    return plan_cutting(needs_for(job, catalogue, closet), job.cutting, catalogue, progress)


def produce(
    job: Job, folder: Path, say: Say, *, per_sheet: bool = False, per_part: bool = False,
    words: Words = plain,
) -> Result:
    """Build the job and write its documents into ``folder``; ``words``: their reader's.

    Raises ``ClosetError`` where the closet or its plan cannot be made, or ``folder`` cannot
    be written; nothing is written then.
    """
    from closetbench.shop import bill, cutting_pages, dxf, picture

    say(f"{job.design.name}: room, envelope and parts")
    catalogue = job.catalogue()
    closet = build_closet(job.design, catalogue, Figures(job.lengths))
    say(f"{len(closet.parts)} parts: planning the sheets")
    cutting = plan_job(job, catalogue, closet, say)
    plan, lengths = cutting.sheets, cutting.lengths
    needs = needs_for(job, catalogue, closet)
    form = job.lengths
    result = Result(
        job, catalogue, closet, cutting,
        strip_gains(needs.parts, needs.sheets, job.cutting.kerf, form.text),
    )
    paper = replace(
        bill.closet_bill(closet, plan, catalogue, form, job.bit, lengths),
        spare=job.spare, ways=cutting.ways,
    )
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise DocumentError(
            "output", "folder", str(folder), f"cannot be made: {error.strerror or error}"
        ) from error
    parts = closet.parts
    keys = {part.key for part in needs.parts}
    on_sheets = [part for part in parts if part.full_name in keys]
    makers: dict[str, Callable[[], tuple[Path, ...]]] = {
        "cut layout": lambda: (dxf.layout_dxf(
            plan, on_sheets, folder / "layout.dxf", form, words),),
        "report": lambda: (write_report(
            folder / "report.txt", closet, plan, catalogue, form, lengths, result.advice,
            words,
        ),),
        "cutting": lambda: (write_cutting_order(
            folder / "cutting.txt", plan, needs.parts, needs.sheets, job.cutting, catalogue,
            form, job.shop, lengths, parts, closet.findings, words,
        ),),
        "cutting pages": lambda: cutting_pages.write_cutting_pages(
            folder / "cutting", plan, on_sheets, catalogue, form, job.shop, words=words
        ),
        "bill": lambda: (bill.save_bill(folder / "bill.csv", paper, words),),
        "pictures": lambda: picture.write_pictures(
            folder, closet, plan, catalogue, form, words=words),
        "model": lambda: (_model(job, catalogue, folder / "closet.FCStd"),),
    }
    if job.offcuts_file:
        at_hand = _offcuts(job)
        # beside the other papers: the sheets are not cut yet, so the user's file stays
        kept = reserve(at_hand, taken(plan, lengths), job.design.name)
        left = offcuts_after(at_hand, cutting, job.design.name)
        makers["offcuts"] = lambda: (
            *_write_offcuts(folder / "offcuts-kept.toml", kept),
            *_write_offcuts(folder / "offcuts-after.toml", left),
        )
    if per_sheet:
        makers["sheets"] = lambda: dxf.sheet_files(
            plan, on_sheets, folder / "sheets", form, words)
    if per_part:
        made = (*parts, *closet.reused)
        makers["parts"] = lambda: dxf.part_files(made, folder / "parts", form, words)
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


def summary(result: Result, words: Words = plain) -> str:
    """Where the documents are, what is missing, and the report."""
    lines = [result.closet.design.name, ""]
    for kind, paths in result.files.items():
        lines += [f"  {kind + ':':<12} {path}" for path in paths]
    lines += [f"  {kind + ':':<12} NOT WRITTEN: {why}" for kind, why in result.missing.items()]
    cutting = result.cutting
    report = report_lines(
        result.closet, cutting.sheets, result.catalogue, result.job.lengths, cutting.lengths,
        result.advice, words,
    )
    return "\n".join([*lines, "", *report])
