"""The panels on a dark theme. The first run chooses the theme, the second looks."""

from pathlib import Path

import FreeCAD

from tests.gui.hands import Hands


def steps(gui):
    settings = FreeCAD.ParamGet("User parameter:BaseApp/Preferences/MainWindow")
    if gui.arguments["choose"]:
        folder = Path(FreeCAD.getResourceDir()) / "Gui" / "Stylesheets"
        # one sheet per theme, or one sheet that takes its colours from a theme
        sheets = sorted(folder.glob("*[Dd]ark*.qss")) or sorted(folder.glob("FreeCAD.qss"))
        themes = sorted((folder / "parameters").glob("*Dark*.yaml")) or sheets
        gui.check(sheets, f"a dark style sheet in {folder}")
        settings.SetString("StyleSheet", sheets[0].name)
        settings.SetString("Theme", themes[0].stem)
        yield
        return
    hands = Hands(gui)
    hands.small_closet()
    hands.open(hands.ours("Survey")[0])
    hands.type("survey.width_front_mid", "wide")
    label = gui.find(gui.QtWidgets.QLabel, "error survey.width_front_mid", hands.panel.form[0])
    from closetbench.gui import palette

    gui.check(palette.is_dark(label), "the theme is dark")
    gui.check("#ff8f85" in label.styleSheet(), "errors are in a red for dark themes")
    hands.widget("survey.width_front_mid").setFocus()
    gui.shot("survey")
    hands.cancel()
    hands.open(hands.ours("Carcass")[0])
    gui.shot("carcass")
    hands.cancel()
    hands.run("Closetbench_Layout")
    hands.push("plan")
    gui.shot("layout")
    hands.cancel()
    hands.run("Closetbench_Offcuts")
    hands.push("add")
    hands.push("add defect")
    gui.shot("offcuts")
    hands.cancel()
    hands.run("Closetbench_Panel")
    hands.count("grooves", 3)
    hands.tick("bands front")
    gui.shot("panel")
    hands.cancel()
    yield
    from closetbench.gui import help as pages

    hands.run("Closetbench_Help")
    window = gui.find(gui.QtWidgets.QDialog, pages.NAME)
    cursor = window.pages.textCursor()
    cursor.setPosition(window.pages.toPlainText().index("Steps of the work") + 1)
    gui.equal(cursor.charFormat().foreground().color().name(), "#ffb454", "links on a dark theme")
    gui.shot("help", window)
    window.close()
    yield
