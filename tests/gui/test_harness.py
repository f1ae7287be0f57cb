"""The harness notices what goes wrong; a green GUI test would mean nothing otherwise."""

import pytest

from tests.gui.harness import GuiError, error_lines

REPORT = """\
Log: Init: Executing event loop...
Err: Traceback (most recent call last):
  File "panel.py", line 3, in accept
Err: ValueError: width
Wrn: a warning
Msg: a message
  of two lines
"""


def test_error_lines_keep_tracebacks_whole():
    assert error_lines(REPORT) == (
        "Traceback (most recent call last):",
        '  File "panel.py", line 3, in accept',
        "ValueError: width",
    )


@pytest.mark.gui
def test_failures_are_seen(gui):
    run = gui("faulty.py", judge=False)
    with pytest.raises(GuiError) as failure:
        run.judge()
    told = str(failure.value)
    for wrong in (
        "a sum: got 2, wanted 3",
        "told as an error",
        "raised in a command",
        "raised in a slot",
        "asked later",
        "nobody answered the dialog 'Question' asked of nobody",
        "raised in a step",
    ):
        assert wrong in told.split("-- output")[0]
    assert "told as a warning" in run.report
    assert "told as a warning" not in "".join(run.errors)


@pytest.mark.gui
def test_endless_script_is_killed(gui):
    run = gui("endless.py", judge=False, timeout=8)
    assert run.status is None
    with pytest.raises(GuiError, match="was killed before the script's end"):
        run.judge()
