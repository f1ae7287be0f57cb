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
from closetbench.core.rods_strength import bar_weight
from closetbench.core.walls import DEFER
from closetbench.shop.buying import SO_MANY
from closetbench.shop.language import Words, mark, plain
from closetbench.stock.atomic import write_text_atomically
from closetbench.stock.length_checks import require_cuttable
from closetbench.stock.length_plan import LengthPlan
from closetbench.stock.plan import Plan, Proof
from closetbench.stock.verify import require_sawable

_LABEL = 14
"""Letters that a line's label has room for, at least."""
_GAPS = mark({
    Wall.LEFT: "gap left,", Wall.RIGHT: "gap right,", Wall.BACK: "gap back,",
    Wall.TOP: "gap top,", Wall.FLOOR: "gap floor,",
})
_SEVERITIES = mark({
    Severity.DANGER: "DANGER: {0}", Severity.WARNING: "WARNING: {0}", Severity.NOTE: "NOTE: {0}",
})


def report_lines(
    closet: Closet, plan: Plan, catalogue: Catalogue, form: LengthFormat,
    lengths: LengthPlan | None = None, advice: Sequence[Finding] = (), words: Words = plain,
) -> list[str]:
    """The report as lines of text, lengths and masses in the user's units. ``lengths``: the
    plan of boards and bars; ``advice``: findings of the cutting, after the closet's."""
    dangers = danger_lines(closet.findings, words)
    facts = _facts(closet, plan, catalogue, form, lengths, words)
    wide = max(_LABEL, *(len(label) + 1 for label, _ in facts))
    lines = [*dangers, *([""] if dangers else [])]
    lines += [f"{label:<{wide}}{text}" for label, text in facts]
    found = by_severity((*closet.findings, *advice))
    lines += ["", words("findings") if found else words("no findings")]
    for finding in found:
        lines += [f"  {text}" for text in finding_lines(finding, words)]
    return lines


def _facts(
    closet: Closet, plan: Plan, catalogue: Catalogue, form: LengthFormat,
    lengths: LengthPlan | None, words: Words,
) -> list[tuple[str, str]]:
    """What the closet is and takes: a label and a text each."""
    figures = Figures(form)
    envelope = closet.envelope
    sizes = " x ".join(form.text(v) for v in (envelope.width, envelope.depth, envelope.height))
    weights = {p.full_name: part_weight(p, catalogue) for p in closet.parts}
    facts = [
        (words("envelope"), words("{0} (width x depth x height)", sizes)),
        (words("parts"), f"{len(closet.parts)}, {figures.mass(sum(weights.values()))}"),
    ]
    if weights:
        heaviest = max(weights, key=lambda name: weights[name])
        facts.append((words("heaviest"), f"{heaviest}, {figures.mass(weights[heaviest])}"))
    for material in dict.fromkeys(s.sheet.material for s in plan.sheets):
        facts.append((words("sheets"), _sheets(plan, material, catalogue, words)))
    for key in lengths.proved if lengths else ():
        facts.append((words("lengths"), _lengths(lengths, key, catalogue, form, words)))
    load = _load(plan, lengths, catalogue)
    if load:
        facts.append((
            words("load"), words(
                "{0} of sheets, boards and bars to bring home; spares, hardware and edge band "
                "not counted", figures.mass(load))))
    for wall in Wall:
        gaps = [g.value for g in envelope.gaps_at(wall)]
        if gaps:
            facts.append((
                words(_GAPS[wall]), words("{0} to {1}", form.text(min(gaps)), form.text(max(gaps)))
            ))
    return facts


def danger_lines(findings: Iterable[Finding], words: Words = plain) -> list[str]:
    """The dangers as they stand on top of a paper; nothing where there is none."""
    dangers = [f for f in findings if f.severity is Severity.DANGER]
    lines = [danger_headline(len(dangers), words)] if dangers else []
    return lines + [text for f in dangers for text in finding_lines(f, words)]


def danger_headline(count: int, words: Words = plain) -> str:
    """What stands over the dangers on top of a paper."""
    defer = words(DEFER)
    if count == 1:
        return words(
            "1 DANGER: read this before anything is cut, carried or filled; {0}", defer)
    return words(
        "{0} DANGERS: read this before anything is cut, carried or filled; {1}", count, defer)


def _sheets(plan: Plan, material: str, catalogue: Catalogue, words: Words) -> str:
    sheets = plan.sheets_of(material)
    used = sum(s.used_area for s in sheets) / sum(s.sheet.length * s.sheet.width for s in sheets)
    proved = {
        Proof.FEWEST: words("the fewest possible"),
        Proof.CHEAPEST: words("no plan buys less"),
        Proof.NONE: words("at least {0} needed", plan.bound.get(material)),
    }[plan.proof_of(material)]
    title = words(catalogue.material(material).title)
    at_hand = sum(s.sheet.offcut for s in sheets)
    if at_hand:
        title = words("{0}, {1} of them at hand", title, at_hand)
    return words("{0} of {1}, yield {2}, {3}", len(sheets), title, f"{used:.0%}", proved)


def _lengths(
    plan: LengthPlan | None, key: str, catalogue: Catalogue, form: LengthFormat, words: Words
) -> str:
    bars = plan.bars_of(key) if plan else ()
    counts = Counter(bar.stock.length for bar in bars)
    pieces = words(" and ").join(
        words(SO_MANY, form.text(length), n) for length, n in counts.items())
    used = sum(b.used * b.stock.length for b in bars) / sum(b.stock.length for b in bars)
    proved = words("a cheaper choice may exist")
    if plan and plan.proved[key]:
        proved = words("no choice takes less length; prices are lacking") if (
            key in plan.unpriced) else words("no choice costs less")
    table = catalogue.bars if key in catalogue.bars else catalogue.materials
    return words("{0}: {1}, yield {2}, {3}", words(table[key].title), pieces, f"{used:.0%}", proved)


def _load(plan: Plan, lengths: LengthPlan | None, catalogue: Catalogue) -> float:
    """kg of what is bought: sheets, boards, mouldings and bars, offcuts at hand left out."""
    sheets = sum(
        catalogue.material(s.sheet.material).weight(s.sheet.length, s.sheet.width)
        for s in plan.sheets if not s.sheet.offcut
    )
    bought = [b.stock for b in (lengths.bars if lengths else ()) if not b.stock.offcut]
    return sheets + sum(
        bar_weight(catalogue.bar(s.material), s.length) if s.material in catalogue.bars
        else catalogue.material(s.material).weight(s.length, s.width)
        for s in bought
    )


def finding_lines(finding: Finding, words: Words = plain) -> list[str]:
    """A finding as the user reads it: what and where, then the way out. The names of parts
    and what stands in books are left as they are called there."""
    limit = words("limit {0}", words(finding.limit)) if finding.limit else ""
    figures = "; ".join(text for text in (words(finding.value), limit) if text)
    figures = f" ({figures})" if figures else ""
    spread = f" [{words(finding.spread)}]" if finding.spread else ""
    what = words("{0}: {1}", subject_words(finding.subject, words), words(finding.message))
    if finding.severity in _SEVERITIES:  # what was not checked says so itself
        what = words(_SEVERITIES[finding.severity], what)
    fix = [f"    {words(finding.fix)}"] if finding.fix else []
    source = ["    " + words("source: {0}", words(finding.source))] if finding.source else []
    return [f"{what}{figures}{spread}", *fix, *source]


def subject_words(subject: str, words: Words) -> str:
    """What a finding is about: the room, the work or a board of the catalogue in words, whose
    names are common nouns; a component and its parts by the names that they have everywhere."""
    return words(subject) if subject[:1].islower() and ": " not in subject else subject


def write_report(
    path: Path, closet: Closet, plan: Plan, catalogue: Catalogue, form: LengthFormat,
    lengths: LengthPlan | None = None, advice: Sequence[Finding] = (), words: Words = plain,
) -> Path:
    """Write the report as text; ``DocumentError`` where that cannot be done, ``LayoutError``
    for a plan that cannot be sawn."""
    require_sawable(plan.sheets)
    require_cuttable(lengths or LengthPlan())
    report = report_lines(closet, plan, catalogue, form, lengths, advice, words)
    lines = [closet.design.name, "", *report, ""]
    return write_text_atomically(path, "\n".join(lines), "report")
