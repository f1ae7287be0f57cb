"""Nothing is said in the report view or on the console that nobody asked for."""

from __future__ import annotations

import re

import pytest

pytestmark = pytest.mark.gui

BY_FREECAD = re.compile(
    r"QtWebEngine|QStandardPaths|libGL|MESA|Mesa|Addon Manager|dbus|DBus|XDG_RUNTIME|"
    r"propagateSizeHints|libEGL|Coin|locale|fontconfig|Fontconfig"
)
"""What FreeCAD, Qt and the virtual screen say without any add-on."""


def noise(text: str) -> list[str]:
    """Lines of warnings."""
    wanted = re.compile(
        r"^(Wrn|Err)|warning|Warning|QWidget|QObject|QLayout|QMainWindow|QFont|QPainter|QPixmap|"
        r"setTabOrder|resizeDocks|Traceback|Error|deprecat|libshiboken|RuntimeWarning")
    return [
        line for line in text.splitlines()
        if wanted.search(line) and not BY_FREECAD.search(line) and not line.startswith("Log: ")
    ]


def test_every_panel_opens_and_closes_without_a_word(gui):
    run = gui("quiet.py", timeout=280, without_panels=[
        "Closetbench_Guide", "Closetbench_Bay", "Closetbench_Duplicate", "Closetbench_Contents",
        "Closetbench_BillSheet", "Closetbench_Examples", "Closetbench_Help",
    ])
    assert len(run.records["opened"]) > 30, run.records["opened"]
    said = noise(run.output) + noise(run.report)
    assert said == []
