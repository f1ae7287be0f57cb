"""The tests that come with the add-on, for FreeCAD's own test framework.

They stand in the list of FreeCAD's workbench Test, and run by
``freecadcmd -t closetbench.selftest``. They take seconds, need no window, and tell whether
this installation makes a closet as it should. The developers' tests are in ``tests``.
"""

from __future__ import annotations

import tempfile
import unittest
from pathlib import Path

import FreeCAD

from closetbench.core.specs import BaySpec, CarcassSpec
from closetbench.model.base import class_of
from closetbench.model.bridge import closet_of, survey_for
from closetbench.model.make import make_carcass, make_closet

WIDTH, DEPTH, HEIGHT = 1500.0, 600.0, 2300.0
BOARD = "melamine18"


class ClosetTest(unittest.TestCase):
    """A closet of given sizes with one carcass of two bays, in a document of its own."""

    def setUp(self) -> None:
        self.doc = FreeCAD.newDocument("ClosetbenchTest")
        self.doc.UndoMode = 1
        self.doc.openTransaction("Closet")
        self.closet = make_closet(self.doc)
        survey = survey_for(self.closet)
        survey.GivenWidth, survey.GivenDepth, survey.GivenHeight = WIDTH, DEPTH, HEIGHT
        self.carcass = make_carcass(self.doc, self.closet, CarcassSpec(
            "Box", BOARD, width=1000.0, bays=(BaySpec(fixed=2), BaySpec(fixed=1))))
        self.doc.recompute()
        self.doc.commitTransaction()

    def tearDown(self) -> None:
        FreeCAD.closeDocument(self.doc.Name)

    def boxes(self) -> dict[str, tuple[float, float, float]]:
        """Width, depth and height of the solids of all parts, by the parts' names."""
        found = {}
        for obj in self.doc.Objects:
            if class_of(obj) == "ClosetPart":
                self.assertTrue(obj.Shape.isValid(), obj.Label)
                box = obj.Shape.BoundBox
                found[obj.PartName] = tuple(
                    round(v, 6) for v in (box.XLength, box.YLength, box.ZLength))
        return found

    def divide(self) -> None:
        """One shelf more in the left bay, as a step that can be undone."""
        self.doc.openTransaction("Shelf")
        self.carcass.BayList[0].FixedShelves = 3
        self.doc.recompute()
        self.doc.commitTransaction()

    def test_sizes(self) -> None:
        """By hand: boards are 18 mm, the base is 80 mm, the top lies on the sides, two bays
        stand between three uprights, and cleats fit between those."""
        boxes = self.boxes()
        self.assertEqual(boxes["left side"], (18.0, DEPTH, HEIGHT - 80 - 18))
        self.assertEqual(boxes["right side"], boxes["left side"])
        self.assertEqual(boxes["top"], (1000.0, DEPTH, 18.0))
        self.assertEqual(boxes["bay 1 top cleat"][0], (1000.0 - 3 * 18.0) / 2)
        self.assertGreater(boxes["bay 2 shelf 1"][0], boxes["bay 2 top cleat"][0])
        self.assertEqual(sorted(boxes), sorted(p.name for p in closet_of(self.closet).parts))

    def test_recompute_leaves_nothing_broken(self) -> None:
        before = self.boxes()
        for obj in self.doc.Objects:
            obj.touch()
        self.doc.recompute()
        wrong = [o.Label for o in self.doc.Objects if {"Invalid", "Touched"} & set(o.State)]
        self.assertEqual(wrong, [])
        self.assertEqual(self.boxes(), before)

    def test_a_shelf_more_undone_and_redone(self) -> None:
        before = self.boxes()
        self.divide()
        after = self.boxes()
        self.assertEqual(sorted(set(after) - set(before)), ["bay 1 shelf 3"])
        self.doc.undo()
        self.assertEqual(self.boxes(), before)
        self.doc.redo()
        self.assertEqual(self.boxes(), after)

    def test_saved_and_opened(self) -> None:
        before = self.boxes()
        with tempfile.TemporaryDirectory() as folder:
            path = str(Path(folder) / "closet.FCStd")
            self.doc.saveAs(path)
            FreeCAD.closeDocument(self.doc.Name)
            self.doc = FreeCAD.openDocument(path)
        self.closet = next(o for o in self.doc.Objects if class_of(o) == "Closet")
        self.assertEqual(self.boxes(), before)
        self.assertEqual(sorted(before), sorted(p.name for p in closet_of(self.closet).parts))
