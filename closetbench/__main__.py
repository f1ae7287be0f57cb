"""The command line: ``python3 -m closetbench``."""

from __future__ import annotations

import argparse
import json
import sys
from pathlib import Path

from closetbench.core.errors import ClosetError
from closetbench.core.lengths import UNITS
from closetbench.languages import FILES, language
from closetbench.resources import RESOURCES
from closetbench.shop.language import Words, plain

EXAMPLES = tuple(RESOURCES / "examples" / f"{n}.toml" for n in ("box-room", "porch-closet"))


def main(argv: list[str] | None = None) -> int:
    """Run one command; 0 when everything asked for was made, 1 with a message when not."""
    argv = sys.argv[1:] if argv is None else argv
    if argv[:1] == ["layout"]:
        from closetbench.stock.layout_io import layout_command

        return layout_command(argv[1:], tuple(FILES), lambda code, text: _words(code)(text))
    options = _parser().parse_args(argv)
    try:
        if options.command == "job":
            return _job(options.document, options.out)
        if options.command == "survey":
            return _survey(options)
        jobs = EXAMPLES if options.command == "demo" else (options.job,)
        return max(_build(path, options) for path in jobs)
    except ClosetError as error:
        print(f"closetbench: {error}", file=sys.stderr)
        return 1


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="python3 -m closetbench",
        description="From tape readings to cut parts, without FreeCAD's windows.",
    )
    commands = parser.add_subparsers(dest="command", required=True)
    build = commands.add_parser("build", help="a job file to model, cut layout, bill, pictures")
    build.add_argument("job", type=Path, help="the job, a TOML file")
    demo = commands.add_parser("demo", help="the same for the example closets")
    for command in (build, demo):
        _language_option(command)
        command.add_argument(
            "--out", type=Path, default=Path("build/jobs"), help="folder for the documents"
        )
        command.add_argument(
            "--sheets", action="store_true", help="a DXF for each sheet as well"
        )
        command.add_argument("--parts", action="store_true", help="a DXF for each part as well")
    job = commands.add_parser("job", help="a FreeCAD document's closet back to a job file")
    job.add_argument("document", type=Path)
    job.add_argument("--out", type=Path, required=True, help="the job file to write")
    survey = commands.add_parser("survey", help="the sheet to measure a closet with, to print")
    _language_option(survey)
    survey.add_argument(
        "job", type=Path, nargs="?", help="the job that it is for; left out: a rough closet")
    survey.add_argument(
        "--out", type=Path, required=True, help="the file to write: .pdf, .svg or .png")
    survey.add_argument(
        "--rough", nargs=3, metavar=("WIDTH", "DEPTH", "HEIGHT"),
        default=("1200 mm", "600 mm", "2400 mm"),
        help="about how large the closet is, where there is no job")
    survey.add_argument(
        "--unit", choices=tuple(UNITS), default="mm",
        help="of rough sizes, and of what is printed then")
    survey.add_argument(
        "--blank", action="store_true", help="leave out the readings that the job has")
    survey.add_argument(
        "--few", action="store_true", help="ask for no more than the usual readings")
    commands.add_parser("layout", help="plan the sheets of a plain list of parts")
    return parser


def _language_option(command: argparse.ArgumentParser) -> None:
    command.add_argument(
        "--language", choices=("en", *FILES), default="en", help="that papers are written in")


def _words(code: str) -> Words:
    return plain if code == "en" else language(code)


def _build(path: Path, options: argparse.Namespace) -> int:
    from closetbench.job import read_job
    from closetbench.produce import produce, summary

    result = produce(
        read_job(path), options.out / path.stem, lambda text: print(text, flush=True),
        per_sheet=options.sheets, per_part=options.parts, words=_words(options.language),
    )
    print(f"\n{summary(result, _words(options.language))}\n", flush=True)
    return 1 if result.missing else 0


def _survey(options: argparse.Namespace) -> int:
    from closetbench.core.survey_sheet import level_step, rough_survey, survey_sheet
    from closetbench.job import parse_job, read_job
    from closetbench.shop.survey_sheet import write_survey_sheet

    if options.job is not None:
        job = read_job(options.job)
    else:
        sizes = zip(("width", "depth", "height"), map(json.dumps, options.rough), strict=True)
        job = parse_job(
            f'[job]\nname = "a closet to measure"\nunit = "{options.unit}"\n[size]\n'
            + "\n".join(f"{name} = {text}" for name, text in sizes),
            "rough sizes", Path(),
        )
    survey, size = job.design.survey, job.design.size
    blank = options.blank or survey is None
    if survey is None and size is not None:
        survey = rough_survey(size, level_step(job.lengths))
    if survey is None:
        raise ClosetError(
            options.job.name, "[survey]", "missing", "must be there, or else a [size]")
    sheet = survey_sheet(job.design.name, survey, blank=blank, full=not options.few)
    print(*write_survey_sheet(sheet, options.out, job.lengths, _words(options.language)), sep="\n")
    return 0


def _job(document: Path, out: Path) -> int:
    from closetbench.host import import_freecad
    from closetbench.stock.atomic import write_text_atomically

    import_freecad()
    from closetbench.job import Job
    from closetbench.job_text import job_text
    from closetbench.model.files import read_model

    found = read_model(document)
    job = Job(
        found.design, found.form, found.cutting, found.trim, found.bit, found.measured,
        found.catalogue_file, found.offcuts_file, found.shop, found.spare,
    )
    print(write_text_atomically(out, job_text(job), "job"))
    return 0


if __name__ == "__main__":
    sys.exit(main())
