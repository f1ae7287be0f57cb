"""What random walks told is read again, errors put to the step in which they were said."""

from types import SimpleNamespace

from tests.gui.walk_report import TAKEN_BACK, told_of

REFUSED = """Err: Traceback (most recent call last):
  File "base.py", line 54, in execute
<class 'closetbench.core.errors.ClosetError'>: Bench: compartment is 2; must be 1
Err: Recompute failed! Please check report view.
"""


def told(*lines):
    return told_of(SimpleNamespace(report="Log: start\n" + "".join(lines)))


def test_a_walk_that_ended():
    walks = told(
        "Msg: walk 3 step 1 (edit)\n", "Msg: walk 3 step 1 (edit A depth)\n", "Log: recomputed\n",
        "Msg: walk 3 wrong as of step 1 (edit A depth), undone: A.Depth: 1 -> 2\n",
        "Msg: walk 3 ended 12 4.5\n", "Msg: walk 4 step 1 (undo)\n")
    assert walks[3].wrong == ["as of step 1 (edit A depth), undone: A.Depth: 1 -> 2"]
    assert walks[3].ended == (12, 4.5)
    assert walks[4].ended is None
    assert walks[4].step == "step 1 (undo)"
    assert not any(line for walk in walks.values() for line in walk.errors.values())


def test_an_error_is_put_to_its_step():
    walks = told(
        "Msg: walk 3 step 7 (add)\n", REFUSED, "Msg: walk 3 step 8 (bay)\n",
        "Err: Access violation\n", "Msg: walk 3 ended 12 4.5\n")
    assert len(walks[3].errors["step 7"]) == 4
    assert walks[3].errors["step 8"] == ["Access violation"]


def test_what_had_to_be_said_of_a_deletion_is_no_error():
    ending = f"Msg: walk 3 step 7 (delete A{TAKEN_BACK})\n"
    assert not any(
        told("Msg: walk 3 step 7 (delete A)\n", REFUSED, ending)[3].errors.values())
    other = REFUSED.replace("closetbench.core.errors.ClosetError", "TypeError")
    both = told("Msg: walk 3 step 7 (delete A)\n", REFUSED, other, ending)[3].errors
    assert len(both["step 7"]) == 8
    assert told("Msg: walk 3 step 7 (delete A)\n", "Err: Other\n", ending)[3].errors["step 7"]
