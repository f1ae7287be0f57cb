"""The survey's panel: opening, accuracy, readings taken elsewhere, obstacles."""

from tests.gui.hands import Hands


def steps(gui):
    hands = Hands(gui)
    hands.small_closet()
    (survey,) = hands.ours("Survey")
    before = hands.state()
    hands.open(survey)
    width = survey.EnvelopeWidth.Value
    hands.push("fold How sure")
    hands.choose("survey.tape", "III")
    gui.check(survey.EnvelopeWidth.Value < width, "a worse tape leaves a smaller envelope")
    hands.type("clearances.confidence", "2")
    gui.check("0.5 to 0.999" in hands.error("clearances.confidence"), "confidence beyond 1")
    hands.type("clearances.confidence", "0.9")
    # the opening
    hands.panel.reveal(hands.widget("survey.opening_width"))
    hands.widget("survey.opening_width").setFocus()
    hands.type("survey.opening_width", "1900")
    gui.check(hands.error("survey.opening_width"), "an opening wider than the closet is refused")
    hands.type("survey.opening_width", "1020")
    hands.type("survey.opening_height", "2030")
    gui.close(survey.OpeningWidth.Value, 1020, "opening")
    gui.shot("opening")
    # a reading taken elsewhere
    hands.push("fold Readings taken elsewhere")
    hands.push("add extras")
    gui.check("Enter" in hands.error("survey.extras.0.value"), "a value is asked for")
    gui.equal(hands.text("survey.extras.0.value"), "", "none is made up")
    hands.ok()
    gui.check(hands.panel is not None, "OK insists on the value")
    hands.type("survey.extras.0.label", "over the socket")
    hands.type("survey.extras.0.z", "300")
    hands.type("survey.extras.0.value", "1199")
    gui.check("over the socket" in survey.ExtraReadings[0], f"kept: {survey.ExtraReadings}")
    hands.choose("survey.extras.0.kind", "depth")
    gui.check("x" in hands.error("survey.extras.0.kind"), "a depth needs a place across")
    hands.type("survey.extras.0.x", "600")
    hands.type("survey.extras.0.value", "601")
    gui.equal(hands.error("survey.extras.0.kind"), "", "now it has one")
    # one that is recommended
    menu = hands.button("add recommended").menu()
    menu.aboutToShow.emit()
    offered = [a.text() for a in menu.actions()]
    gui.check("depth near the left wall, high" in offered, f"offered: {offered}")
    menu.actions()[offered.index("depth near the left wall, high")].trigger()
    hands.wait(200)
    gui.equal(len(survey.ExtraReadings), 2, "readings taken elsewhere")
    hands.type("survey.extras.1.value", "600.5")
    gui.equal(hands.error("survey.extras.1.value"), "", "the value is taken")
    menu.aboutToShow.emit()
    gui.check(offered[0] not in [a.text() for a in menu.actions()], "it is offered once")
    hands.push("remove Readings taken elsewhere 2")
    # an obstacle takes its room
    hands.push("fold Obstacles")
    hands.push("add obstacles")
    hands.type("survey.obstacles.0.name", "pipe")
    hands.type("survey.obstacles.0.z1", "2300")
    hands.type("survey.obstacles.0.x1", "-5")
    gui.check(hands.error("survey.obstacles.0.x1"), "an obstacle that ends before it begins")
    hands.type("survey.obstacles.0.x1", "60")
    gui.check("pipe" in survey.Obstacles[0], f"kept: {survey.Obstacles}")
    scroll_to(hands.widget("survey.obstacles.0.x1"))
    gui.shot("obstacles")
    hands.push("remove Readings taken elsewhere 1")
    gui.equal(list(survey.ExtraReadings), [], "the reading is gone")
    hands.ok()
    gui.equal(hands.panel, None, "panel after OK")
    gui.check(survey.Tape == "III" and len(survey.Obstacles) == 1, "all of it is kept")
    hands.doc.undo()
    yield 200
    after = hands.state()
    gui.equal(after["labels"], before["labels"], "labels after undo")
    gui.equal(survey.Tape, "II", "tape after undo")


def scroll_to(widget):
    """Scroll the task view until the widget can be seen."""
    area = widget.parentWidget()
    while area is not None and not hasattr(area, "ensureWidgetVisible"):
        area = area.parentWidget()
    if area is not None:
        area.ensureWidgetVisible(widget)
