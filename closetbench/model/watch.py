"""The document observer: keeps children in step and gives lost proxies back.

It imports nothing heavy and does nothing in documents without objects of ours, so it can
be installed when FreeCAD starts.
"""

from __future__ import annotations

import importlib
from typing import Any

import FreeCAD

TAG = "ClosetbenchClass"

_documents: set[str] = set()
_fresh: dict[str, list[str]] = {}
"""Names of objects that came into being since a document's last transaction."""
_installed: list[_Observer] = []


def install() -> None:
    """Start observing, once, and look at the documents that are open already."""
    if _installed:
        return
    observer = _Observer()
    FreeCAD.addDocumentObserver(observer)
    _installed.append(observer)
    for doc in FreeCAD.listDocuments().values():
        _heal(doc)


def remember(doc: Any) -> None:
    """Note that a document holds objects of ours."""
    _documents.add(doc.Name)


class _Observer:
    """FreeCAD calls the slots by their names."""

    def slotCreatedObject(self, obj: Any) -> None:  # noqa: N802
        # by undo, by redo or by pasting: no proxy's __init__ runs then
        if obj.Document.Name not in _documents and hasattr(obj, TAG):
            remember(obj.Document)
        if obj.TypeId.endswith("Python"):
            _fresh.setdefault(obj.Document.Name, []).append(obj.Name)

    def slotOpenTransaction(self, doc: Any, name: str) -> None:  # noqa: N802
        _fresh.pop(doc.Name, None)

    def slotBeforeCloseTransaction(self, abort: bool) -> None:  # noqa: N802
        """What was pasted becomes part of its closet, within the step of pasting it."""
        made = {n: names for n, names in _fresh.items() if n in FreeCAD.listDocuments()}
        _fresh.clear()
        if abort:
            return
        for doc_name, names in made.items():
            doc = FreeCAD.getDocument(doc_name)
            if any(_is_pasted(doc.getObject(name)) for name in names):
                from closetbench.model import duplicate

                duplicate.adopt(doc, names)

    def slotDeletedDocument(self, doc: Any) -> None:  # noqa: N802
        _documents.discard(doc.Name)
        _fresh.pop(doc.Name, None)

    def slotActivateDocument(self, doc: Any) -> None:  # noqa: N802
        _heal(doc)

    def slotUndoDocument(self, doc: Any) -> None:  # noqa: N802
        """A spreadsheet gets back what was typed into its cells, but not what that comes to;
        a page its views, but not what they show."""
        if doc.Name in _documents:
            show_drawings(doc)
            for obj in doc.Objects:
                if str(getattr(obj, TAG, "")).endswith(".BillSheet"):
                    obj.recompute()

    slotRedoDocument = slotUndoDocument  # noqa: N815

    def slotBeforeRecomputeDocument(self, doc: Any) -> None:  # noqa: N802
        # 1.1 does not tell Python of this moment: what follows must not hang on it
        if doc.Name in _documents:
            from closetbench.model import bridge

            _heal(doc)
            bridge.end_pass(doc)

    def slotRecomputedDocument(self, doc: Any) -> None:  # noqa: N802
        """The moment for children: still inside the user's transaction, outside execute."""
        if doc.Name in _documents:
            from closetbench.model import bridge, children

            try:
                children.sync(doc)
                _see_drawings(doc)
            finally:
                bridge.end_pass(doc)


def _has_drawings(doc: Any) -> bool:
    return any(o.TypeId == "TechDraw::DrawPage" for o in doc.Objects)


def _see_drawings(doc: Any) -> None:
    if _has_drawings(doc):
        from closetbench.model import drawn

        drawn.see_whether_current(doc)


def _is_pasted(obj: Any) -> bool:
    """Whether it is a component that is in no closet's group."""
    return hasattr(obj, "Survey") and hasattr(obj, "After") and not any(
        str(getattr(o, TAG, "")).endswith(".Closet") for o in obj.InList)


def show_drawings(doc: Any) -> None:
    """Have pages drawn that come out of a file or out of redo, where there is a screen."""
    if FreeCAD.GuiUp and _has_drawings(doc):
        importlib.import_module("closetbench.gui.drawing").revive_soon(doc.Name)


def _heal(doc: Any) -> None:
    """Bind the proxies of objects that lost theirs.

    That happens to a file that was saved where this package was not there, and where
    FreeCAD would not import the module of a proxy by itself.
    """
    if doc.Restoring:
        return
    lost = [o for o in doc.Objects if hasattr(o, TAG) and getattr(o, "Proxy", None) is None]
    if not lost:
        return
    from closetbench.model import base

    healed = [o.Label for o in lost if base.rebind(o)]
    if healed:
        some = ", ".join(healed[:5]) + (" …" if len(healed) > 5 else "")
        FreeCAD.Console.PrintWarning(
            f"{doc.Label}: {len(healed)} objects of the closet workbench had lost their program, "
            f"as in a file saved without it; they can be edited again: {some}\n"
        )
