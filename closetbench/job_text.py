"""A job written back as TOML, so that ``job.parse_job`` reads it to the same design."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import MISSING, fields, is_dataclass
from enum import Enum
from typing import Any

from closetbench.core.envelope import Objective
from closetbench.job import COMPONENTS, NOTHING, Job, key_of


def job_text(job: Job) -> str:
    """The job as TOML in millimetres; what equals its default is left out.

    ``parse_job`` reads it back to the same design.
    """
    design = job.design
    head: dict[str, Any] = {
        "name": design.name, "print": job.lengths.style, "step": str(job.lengths.resolution),
    }
    if job.catalogue_file is not None:
        head["catalogue"] = str(job.catalogue_file)
    if design.depth_limit is not None:
        head["depth_limit"] = design.depth_limit
    if design.objective is not Objective.WIDTH:
        head["objective"] = design.objective
    lines = _lines("job", head)
    if job.measured:
        lines += _lines("measured", dict(job.measured))
    if design.size is not None:
        lines += _lines("size", dict(zip(("width", "depth", "height"), design.size, strict=True)))
    if design.survey is not None:
        lines += _lines("survey", _changed(design.survey))
    cutting = _changed(job.cutting)
    cutting |= {k: v for k, v in (("trim", job.trim), ("bit", job.bit)) if v is not None}
    if job.offcuts_file is not None:
        cutting["offcuts"] = str(job.offcuts_file)
    for name, table in (
        ("clearances", _changed(design.clearances)),
        ("circumstances", _changed(design.circumstances)), ("cutting", cutting),
        ("shop", _changed(job.shop)), ("spare", _changed(job.spare)),
    ):
        if table:
            lines += _lines(name, table)
    for spec in design.components:
        name = next(name for name, cls in COMPONENTS.items() if isinstance(spec, cls))
        lines += _lines(name, _changed(spec), many=True)
    return "\n".join(lines).lstrip() + "\n"


def _changed(record: Any) -> dict[str, Any]:
    """The fields of a dataclass that differ from their defaults."""
    found: dict[str, Any] = {}
    for item in fields(record):
        value = getattr(record, item.name)
        factory = item.default_factory
        default = item.default if factory is MISSING else factory()
        if value != default:
            found[key_of(item)] = value
    return found


def _lines(name: str, table: Mapping[str, Any], many: bool = False) -> list[str]:
    """A table and the tables within it as lines of TOML."""
    lines = ["", f"[[{name}]]" if many else f"[{name}]"]
    inner: list[str] = []
    for key, value in table.items():
        if is_dataclass(value):
            inner += _lines(f"{name}.{key}", _changed(value))
        elif isinstance(value, tuple) and value and is_dataclass(value[0]):
            for item in value:
                inner += _lines(f"{name}.{key}", _changed(item), many=True)
        else:
            lines.append(f"{key} = {_literal(value)}")
    return lines + inner


def _literal(value: Any) -> str:
    if value is None:
        return f'"{NOTHING}"'
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, Enum):
        return _literal(value.value)
    if isinstance(value, tuple):
        return "[" + ", ".join(_literal(v) for v in value) + "]"
    if isinstance(value, str):
        # TOML's basic strings escape as JSON's do, but for DEL
        return json.dumps(value, ensure_ascii=False).replace("\x7f", "\\u007f")
    return repr(value)
