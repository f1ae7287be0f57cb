"""Every panel in another language: nothing that has a translation is shown in English."""

import sys

import FreeCADGui

from tests.gui.hands import Hands

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
    hands.run("Closetbench_Survey")
    texts = {t for form in hands.panel.form for t in shown(gui, form) if t}
    gui.check(texts & english, "English again")
    hands.panel.reject()
    yield 300
