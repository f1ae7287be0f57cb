"""Commands that put things into and beside carcasses: one for each kind, under one button."""

from __future__ import annotations

import FreeCADGui

from closetbench.gui.commands.base import Command, chosen, mark, there_are
from closetbench.gui.help_pages import page_url

# Class of the objects, menu text, tip, icon. FreeCAD's translation collects the texts.
_KINDS = (
    ("Drawers", mark("Closetbench_Drawers", "Drawers…"),
     mark("Closetbench_Drawers",
          "A bank of drawers in one compartment, with slides and fronts"),
     "drawers"),
    ("Doors", mark("Closetbench_Doors", "Doors…"),
     mark("Closetbench_Doors", "A door, or a pair, in front of one compartment"), "doors"),
    ("Rods", mark("Closetbench_Rods", "Hanging rod…"),
     mark("Closetbench_Rods", "A hanging rod, or two, in one compartment"), "rods"),
    ("ShoeShelves", mark("Closetbench_ShoeShelves", "Shoe shelves…"),
     mark("Closetbench_ShoeShelves", "Sloped shelves for shoes in one compartment"),
     "shoe_shelves"),
    ("Existing", mark("Closetbench_Existing", "Existing piece…"),
     mark("Closetbench_Existing", "A reused chest or cabinet, built in as it is"), "existing"),
    ("FaceFrame", mark("Closetbench_FaceFrame", "Face frame…"),
     mark("Closetbench_FaceFrame", "Stiles and rails in front of one carcass"), "face_frame"),
    ("Bench", mark("Closetbench_Bench", "Bench…"),
     mark("Closetbench_Bench", "A bench in a bay of a carcass, or free in the closet"), "bench"),
    ("CornerShelves", mark("Closetbench_CornerShelves", "Corner shelves…"),
     mark("Closetbench_CornerShelves", "Shelves of one piece in a rear corner"),
     "corner_shelves"),
    ("OverShelf", mark("Closetbench_OverShelf", "Shelf over the top…"),
     mark("Closetbench_OverShelf", "A shelf over the carcasses, from wall to wall"),
     "over_shelf"),
    ("Fillers", mark("Closetbench_Fillers", "Fillers…"),
     mark("Closetbench_Fillers",
          "Fillers, scribes and mouldings that close the gaps to walls, ceiling and floor"),
     "fillers"),
)


class Content(Command):
    """Adds one kind of content, in the selected carcass if one is selected."""

    def __init__(self, kind: str, text: str, tip: str, icon: str) -> None:
        self.kind, self.text, self.tip, self.icon = kind, text, tip, icon
        self.name = f"Closetbench_{kind}"

    def run(self) -> None:
        closet = chosen("Closet")
        if closet is None:
            self.ask_for(
                mark("Closetbench", "Select the closet that this is for.")
                if there_are("Closet") else
                mark("Closetbench", "There is no closet in this document: start one first."),
                "Closetbench",
            )
            return
        from closetbench.gui.content_panel import ContentPanel, new_spec
        from closetbench.model.make import make_content

        doc = closet.Document
        carcass = chosen("Carcass")
        selected = FreeCADGui.Selection.getSelection(doc.Name)
        preferred = carcass.Label if carcass is not None and selected else ""
        spec = new_spec(closet, self.kind, preferred)
        ContentPanel(doc, self.title, make=lambda: make_content(doc, closet, spec)).start()


class Contents:
    """All of them under one button."""

    name = "Closetbench_Contents"

    def GetCommands(self) -> tuple[str, ...]:  # noqa: N802
        """What is under the button."""
        return tuple(command.name for command in COMMANDS[:-1])

    def GetDefaultCommand(self) -> int:  # noqa: N802
        """What the button does until another is chosen."""
        return 0

    def GetResources(self) -> dict[str, str]:  # noqa: N802
        """What FreeCAD shows."""
        tip = mark("Closetbench_Contents", "Put drawers, doors, rods and the like into a closet")
        return {
            "MenuText": mark("Closetbench_Contents", "Contents"),
            "ToolTip": tip, "StatusTip": tip, "WhatsThis": page_url(self.name),
        }

    def CmdHelpURL(self) -> str:  # noqa: N802
        """The page of help."""
        return page_url(self.name)

    def IsActive(self) -> bool:  # noqa: N802
        """Usable while no task panel is open."""
        return not FreeCADGui.Control.activeDialog()


COMMANDS = (*(Content(*kind) for kind in _KINDS), Contents())
