"""The help pages in their window, from the menu, from a task panel and by its keys."""

from __future__ import annotations

import FreeCADGui

from tests.gui.hands import Hands


def steps(gui):
    from closetbench.gui import help as pages
    from closetbench.gui import workbench
    from closetbench.gui.help_pages import page_url

    hands = Hands(gui)

    def window():
        return gui.find(gui.QtWidgets.QDialog, pages.NAME)

    def head() -> str:
        return window().pages.toPlainText().splitlines()[0]

    gui.check(window() is None, "no window before it is asked for")
    hands.click("Closet help")
    gui.check(window().isVisible(), "the command shows the window")
    gui.equal(head(), "Closets, step by step", "without a task the list of pages")
    gui.shot("index", window())
    yield

    # links, back, the list
    window().pages.setSource(window().pages.source().resolved(gui.QtCore.QUrl("Carcass.md")))
    hands.wait()
    gui.equal(head(), "Carcass…", "a link leads to its page")
    gui.check("width" in window().pages.toPlainText(), "pages have words")
    gui.shot("carcass", window())
    window().back.click()
    gui.equal(head(), "Closets, step by step", "back")
    gui.check(not window().back.isEnabled(), "there is no more to go back to")
    for names in workbench.toolbars().values():
        for name in names:
            info = FreeCADGui.Command.get(name).getInfo()
            gui.equal(info["whatsThis"], page_url(name), f"What's This of {name}")
            gui.check(not page_url(name).endswith("index.md"), f"a page for {name}")
    window().close()
    yield 300
    gui.check(window() is None, "closed, it is gone")

    # from a task
    hands.run("Closetbench_Start")
    hands.choose("by_readings", "follows from readings in the room")
    help_button = hands.panel._buttons.button(gui.QtWidgets.QDialogButtonBox.Help)
    gui.check(help_button is not None, "a task has a button for help")
    help_button.click()
    yield 200
    gui.equal(head(), "Start a closet…", "the page of the task")
    gui.check(hands.panel is not None and hands.panel.is_open, "the task goes on")
    field = hands.widget("name")
    gui.equal(field.whatsThis(), page_url("Start"), "What's This of a field")
    window().close()
    yield 300
    field.setFocus()
    hands.key(field, hands.Qt.Key_F1)
    yield 200
    gui.equal(head(), "Start a closet…", "F1 in a field")
    gui.shot("beside a task")
    hands.ok()
    gui.check(window().isVisible(), "the window outlives the task")
    hands.run("Closetbench_Carcass")
    hands.run("Closetbench_Help")
    gui.equal(head(), "Carcass…", "the command opens the page of the open task")
    hands.ok()
    hands.run("Closetbench_Drawers")
    hands.panel.helpRequested()
    gui.equal(head(), "Drawers…", "each kind of content has its own page")
    hands.cancel()
    hands.run("Closetbench_Checks")
    hands.panel.helpRequested()
    gui.equal(head(), "Checks…", "a panel that only looks")
    box = gui.QtWidgets.QDialogButtonBox
    gui.check(hands.panel._buttons.button(box.Close) is not None, "which has Close")
    gui.check(hands.panel._buttons.button(box.Ok) is None, "and no OK")
    hands.close()
    window().close()
    yield
