"""Drawings against the published DXF reference."""

from __future__ import annotations

from pathlib import Path

import ezdxf
import pytest

from closetbench.shop import dxf
from tests.shop import reading, samples


@pytest.fixture(scope="module")
def drawing(tmp_path_factory: pytest.TempPathFactory) -> Path:
    parts = samples.closet()
    path = tmp_path_factory.mktemp("dxf") / "layout.dxf"
    return dxf.layout_dxf(samples.plan(parts), parts, path)


def test_header_says_release_and_millimetres(drawing: Path) -> None:
    header = reading.header(drawing)
    # Autodesk, DXF Reference, HEADER section: $ACADVER AC1024 = AutoCAD 2010;
    # $INSUNITS 4 = millimeters; $MEASUREMENT 1 = metric (the last two from memory).
    assert header["$ACADVER"] == "AC1024"
    assert header["$INSUNITS"] == "4"
    assert header["$MEASUREMENT"] == "1"


def test_layer_names_hold_no_forbidden_character(drawing: Path) -> None:
    # Autodesk help, "About Renaming Objects": up to 255 characters, and none of
    # < > / \ " : ; ? , * | = ' in the name of a layer.
    names = [layer.dxf.name for layer in ezdxf.readfile(drawing).layers]
    names += [dxf.band_layer('1/2" <oak>|*=;:?,\'`\\ é')]
    for name in names:
        assert len(name) <= 255
        assert not set(name) & set("<>/\\\":;?,*|='`")
        assert name == name.strip()


def test_polylines_close_by_their_flag(drawing: Path) -> None:
    # Autodesk, DXF Reference, LWPOLYLINE: group 70, bit 1 = closed; group 90 = number of
    # vertices (from memory).
    shapes = list(ezdxf.readfile(drawing).modelspace().query("LWPOLYLINE"))
    assert shapes
    pairs = reading.pairs(drawing)
    starts = [i for i, pair in enumerate(pairs) if pair == (0, "LWPOLYLINE")]
    assert len(starts) == len(shapes)
    for start in starts:
        end = next(i for i in range(start + 1, len(pairs)) if pairs[i][0] == 0)
        body = pairs[start + 1:end]
        assert int(dict(body)[70]) & 1
        assert int(dict(body)[90]) == sum(code == 10 for code, _ in body)
