"""The command line: ``python3 -m closetbench``."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from closetbench.core.errors import ClosetError
from closetbench.resources import RESOURCES

EXAMPLES = tuple(RESOURCES / "examples" / f"{n}.toml" for n in ("box-room", "porch-closet"))


def main(argv: list[str] | None = None) -> int:
    """Run one command; 0 when everything asked for was made, 1 with a message when not."""
    argv = sys.argv[1:] if argv is None else argv
    if argv[:1] == ["layout"]:
        from closetbench.stock.layout_io import layout_command

        return layout_command(argv[1:])
    options = _parser().parse_args(argv)
    try:
        if options.command == "job":
            return _job(options.document, options.out)
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
    commands.add_parser("layout", help="plan the sheets of a plain list of parts")
    return parser


def _build(path: Path, options: argparse.Namespace) -> int:
    from closetbench.job import read_job
    from closetbench.produce import produce, summary

    result = produce(
        read_job(path), options.out / path.stem, lambda text: print(text, flush=True),
        per_sheet=options.sheets, per_part=options.parts,
    )
    print(f"\n{summary(result)}\n", flush=True)
    return 1 if result.missing else 0


def _job(document: Path, out: Path) -> int:
    from closetbench.host import import_freecad
    from closetbench.shop.atomic import write_text_atomically

    import_freecad()
    from closetbench.job import Job
    from closetbench.job_text import job_text
    from closetbench.model.files import read_model

    found = read_model(document)
    job = Job(
        found.design, found.form, measured=found.measured, catalogue_file=found.catalogue_file
    )
    print(write_text_atomically(out, job_text(job), "job"))
    return 0


if __name__ == "__main__":
    sys.exit(main())
