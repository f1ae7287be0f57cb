"""The report of a job: sizes, parts, sheets, gaps, and every finding, dangers first."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterable, Sequence
from pathlib import Path

from closetbench.core.closet import Closet
from closetbench.core.envelope import Wall
from closetbench.core.figures import Figures
from closetbench.core.findings import Finding, Severity, by_severity
from closetbench.core.handling import part_weight
from closetbench.core.lengths import LengthFormat
from closetbench.core.materials import Catalogue
from closetbench.core.walls import DEFER
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.length_checks import require_cuttable
from closetbench.stock.length_plan import LengthPlan
from closetbench.stock.plan import Plan
from closetbench.stock.verify import require_sawable


def report_lines(
    closet: Closet, plan: Plan, catalogue: Catalogue, form: LengthFormat,
    lengths: LengthPlan | None = None, advice: Sequence[Finding] = (),
) -> list[str]:
    """The report as lines of text, lengths and masses in the user's units. ``lengths``: the
    plan of boards and bars; ``advice``: findings of the cutting, after the closet's."""
    figures = Figures(form)
    lines = danger_lines(closet.findings)
    envelope = closet.envelope
    sizes = " x ".join(form.text(v) for v in (envelope.width, envelope.depth, envelope.height))
    weights = {p.full_name: part_weight(p, catalogue) for p in closet.parts}
    lines += [
        *([""] if lines else []),
        f"envelope      {sizes} (width x depth x height)",
        f"parts         {len(closet.parts)}, {figures.mass(sum(weights.values()))}",
    ]
    if weights:
        heaviest = max(weights, key=lambda name: weights[name])
        lines.append(f"heaviest      {heaviest}, {figures.mass(weights[heaviest])}")
    for material in dict.fromkeys(s.sheet.material for s in plan.sheets):
        lines.append(f"sheets        {_sheets(plan, material, catalogue)}")
    for key in lengths.proved if lengths else ():
        lines.append(f"lengths       {_lengths(lengths, key, catalogue, form)}")
    load = _load(plan, lengths, catalogue)
    if load:
        lines.append(f"load          {figures.mass(load)} of sheets and boards to bring home")
    for wall in Wall:
        gaps = [g.value for g in envelope.gaps_at(wall)]
        if gaps:
            lines.append(
                f"gap {wall.value + ',':<9} {form.text(min(gaps))} to {form.text(max(gaps))}"
            )
    found = by_severity((*closet.findings, *advice))
    lines += ["", "findings" if found else "no findings"]
    for finding in found:
        lines += [f"  {text}" for text in finding_lines(finding)]
    return lines


def danger_lines(findings: Iterable[Finding]) -> list[str]:
    """The dangers as they stand on top of a paper; nothing where there is none."""
    dangers = [f for f in findings if f.severity is Severity.DANGER]
    lines = [danger_headline(len(dangers))] if dangers else []
    return lines + [text for f in dangers for text in finding_lines(f)]


def danger_headline(count: int) -> str:
    """What stands over the dangers on top of a paper."""
    what = "1 DANGER" if count == 1 else f"{count} DANGERS"
    return f"{what}: read this before anything is cut, carried or filled; {DEFER}"


def _sheets(plan: Plan, material: str, catalogue: Catalogue) -> str:
    sheets = plan.sheets_of(material)
    used = sum(s.used_area for s in sheets) / sum(s.sheet.length * s.sheet.width for s in sheets)
    least = plan.bound.get(material)
    proved = "the fewest possible" if len(sheets) == least else f"at least {least} needed"
    title = catalogue.material(material).title
    return f"{len(sheets)} of {title}, yield {used:.0%}, {proved}"


def _lengths(
    plan: LengthPlan | None, key: str, catalogue: Catalogue, form: LengthFormat
) -> str:
    bars = plan.bars_of(key) if plan else ()
    counts = Counter(bar.stock.length for bar in bars)
    pieces = " and ".join(f"{n} of {form.text(length)}" for length, n in counts.items())
    used = sum(b.used * b.stock.length for b in bars) / sum(b.stock.length for b in bars)
    proved = "a cheaper choice may exist"
    if plan and plan.proved[key]:
        short = key in plan.unpriced
        proved = f"no choice {'takes less length; prices are lacking' if short else 'costs less'}"
    table = catalogue.bars if key in catalogue.bars else catalogue.materials
    return f"{table[key].title}: {pieces}, yield {used:.0%}, {proved}"


def _load(plan: Plan, lengths: LengthPlan | None, catalogue: Catalogue) -> float:
    """kg of what is bought: sheets and boards, offcuts at hand left out."""
    sheets = ((s.sheet.material, s.sheet.length, s.sheet.width, s.sheet.offcut)
              for s in plan.sheets)
    boards = ((b.stock.material, b.stock.length, b.stock.width, b.stock.offcut)
              for b in (lengths.bars if lengths else ()))
    return sum(
        catalogue.material(key).weight(length, width)
        for key, length, width, at_hand in (*sheets, *boards)
        if not at_hand and key in catalogue.materials
    )


def finding_lines(finding: Finding) -> list[str]:
    """A finding as the user reads it: what and where, then the way out."""
    limit = f"limit {finding.limit}" if finding.limit else ""
    figures = "; ".join(text for text in (finding.value, limit) if text)
    figures = f" ({figures})" if figures else ""
    spread = f" [{finding.spread}]" if finding.spread else ""
    what = f"{finding.subject}: {finding.message}"
    if finding.severity is not Severity.NOT_CHECKED:  # whose message says so itself
        what = f"{finding.severity.value.upper()}: {what}"
    source = [f"    source: {finding.source}"] if finding.source else []
    return [f"{what}{figures}{spread}", *([f"    {finding.fix}"] if finding.fix else []), *source]


def write_report(
    path: Path, closet: Closet, plan: Plan, catalogue: Catalogue, form: LengthFormat,
    lengths: LengthPlan | None = None, advice: Sequence[Finding] = (),
) -> Path:
    """Write the report as text; ``DocumentError`` where that cannot be done, ``LayoutError``
    for a plan that cannot be sawn."""
    require_sawable(plan.sheets)
    require_cuttable(lengths or LengthPlan())
    report = report_lines(closet, plan, catalogue, form, lengths, advice)
    lines = [closet.design.name, "", *report, ""]
    return write_text_atomically(path, "\n".join(lines), "report")
