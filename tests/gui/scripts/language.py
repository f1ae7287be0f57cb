"""Every panel in another language: nothing that has a translation is shown in English."""

import sys

import FreeCADGui

from tests.gui.hands import Hands
from tests.test_help import ENGLISH_BUTTONS, FREECAD

COMMANDS = (
    "Survey", "Layout", "Dxf", "Bill", "Checks", "SurveySheet", "GoesIn", "Opens", "Look",
    "Pictures", "Step",
)


def shown(gui, widget):
    """All texts of a widget and of what it holds."""
    kinds = gui.QtWidgets
    for one in [widget, *widget.findChildren(kinds.QWidget)]:
        yield one.toolTip()
        if isinstance(one, kinds.QLabel | kinds.QAbstractButton):
            yield one.text()
        if isinstance(one, kinds.QComboBox):
            yield from (one.itemText(i) for i in range(one.count()))
        if isinstance(one, kinds.QLineEdit):
            yield one.placeholderText()
        yield one.windowTitle()


def helped(gui, hands, language, told):
    """F1 in a field, a link, the window's buttons and FreeCAD's names in the pages."""
    from closetbench.gui import help as pages

    def head() -> str:
        return window.pages.toPlainText().splitlines()[0]

    field = hands.panel.fields[0].widget
    field.setFocus()
    hands.key(field, hands.Qt.Key_F1)
    yield 200
    window = gui.find(gui.QtWidgets.QDialog, pages.NAME)
    gui.equal(head(), told["Closetbench_Carcass", "Carcass…"], "F1 speaks the language")
    gui.check("translated from" not in window.pages.toPlainText(), "the record is not shown")
    gui.equal(window.back.text(), told["Closetbench_Help", "Back"], "the button back")
    gui.equal(window.contents.text(), told["Closetbench", "All pages"], "the button of the list")
    gui.shot(f"{language}-help", window)
    window.pages.setSource(window.pages.source().resolved(gui.QtCore.QUrl("Layout.md")))
    yield 100
    gui.equal(head(), told["Closetbench_Layout", "Lay out the sheets…"], "a link keeps it")
    window.contents.click()
    yield 100
    names = FREECAD[language]
    undo, what, cancel = (names[key] for key in ("Undo", "What's This?", "Cancel"))
    gui.check(undo in window.pages.toPlainText(), "the list names what undoes")
    gui.check(cancel in window.pages.toPlainText(), "and what cancels")
    for command, name in (("Std_Undo", undo), ("Std_WhatsThis", what)):
        action = FreeCADGui.Command.get(command).getAction()[0]
        gui.equal(action.text().replace("&", ""), name, f"FreeCAD's name of {command}")
    box = gui.QtWidgets.QDialogButtonBox
    for key in ("Cancel", "Help"):
        text = hands.panel._buttons.button(getattr(box, key)).text().replace("&", "")
        gui.check(text in {names[key]} | ENGLISH_BUTTONS[language] & {key}, f"{key}: {text}")
    gui.shot(f"{language}-help-index", window)


def steps(gui):
    language, name = gui.arguments["language"], gui.arguments["name"]
    sys.path.insert(0, str(gui.root / "tools"))
    import translations

    told = translations.read(translations.ts_file(language))
    english = {source for (_, source), text in told.items() if text != source}
    # a word may be the same in English by chance where it stands for something else
    english -= set(told.values())
    hands = Hands(gui)
    FreeCADGui.setLocale(name)
    yield 500
    gui.equal(FreeCADGui.getLocale(), name, "language")
    hands.run("Closetbench_BoxRoom")
    yield 500
    dock = gui.window.findChild(gui.QtWidgets.QDockWidget, "ClosetbenchGuide")
    gui.equal(dock.windowTitle(), told["Closetbench", "Steps"], "title of the steps")
    seen = 0
    opened = [(c, lambda c=c: hands.run(f"Closetbench_{c}")) for c in COMMANDS]
    kinds = {}
    for obj in hands.doc.Objects:
        kind = type(getattr(obj, "Proxy", None)).__name__
        if getattr(obj, "BayCount", None) is not None or hasattr(obj, "OuterWidth"):
            kinds.setdefault(kind, obj)
    opened += [(k, lambda o=o: hands.open(o)) for k, o in kinds.items()]
    for what, act in opened:
        act()
        yield 300
        if not gui.check(hands.panel is not None, f"the panel of {what} is open"):
            continue
        texts = {t for form in hands.panel.form for t in shown(gui, form) if t}
        seen += len(texts)
        left = sorted(texts & english)
        gui.check(not left, f"{what}: in English: {left[:8]}")
        if what in ("Survey", "Checks", "Carcass"):
            gui.shot(f"{language}-{what.lower()}")
        if what == "Carcass":
            yield from helped(gui, hands, language, told)
        hands.panel.reject()
        yield 300
        gui.check(hands.panel is None, f"the panel of {what} is closed")
    gui.record("seen", seen)
    menu = [a.text() for a in gui.window.menuBar().actions()]
    gui.record("menu", menu)
    texts = [
        a.text().replace("&", "") for bar in gui.window.findChildren(gui.QtWidgets.QToolBar)
        for a in bar.actions()
    ]
    gui.check("Lay out the sheets…" not in texts, "the toolbar speaks the language")
    # back to English, while everything is open
    FreeCADGui.setLocale("English")
    yield 300
    gui.equal(FreeCADGui.getLocale(), "English", "language at the end")
    window = gui.find(gui.QtWidgets.QDialog, "ClosetbenchHelpWindow")
    gui.check(window.pages.toPlainText().startswith("Closets, step by step"), "the help, too")
    gui.equal(window.back.text(), "Back", "and its buttons")
    window.close()
    hands.run("Closetbench_Survey")
    texts = {t for form in hands.panel.form for t in shown(gui, form) if t}
    gui.check(texts & english, "English again")
    hands.panel.reject()
    yield 300
