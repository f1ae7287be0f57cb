"""The look of our forms: labels, editors and, under the editor, what is wrong with it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence

from closetbench.core.findings import Finding, Severity, by_severity
from closetbench.gui import palette
from closetbench.gui.fields import Field
from closetbench.gui.qt import QtCore, QtWidgets, translate
from closetbench.gui.qt import icon as icons
from closetbench.gui.said import finding_said


class Form(QtWidgets.QWidget):
    """One box of a task panel: rows of a label and one or more editors."""

    def __init__(self, title: str, icon: str) -> None:
        super().__init__()
        self.setWindowTitle(title)
        self.setWindowIcon(icons(icon))
        self.setObjectName(f"form {icon}")
        self.grid = QtWidgets.QGridLayout(self)
        self.grid.setContentsMargins(6, 6, 6, 6)
        self.grid.setHorizontalSpacing(8)
        self.grid.setVerticalSpacing(4)
        self.fields: list[Field] = []
        self.contents: list[Field | Form] = []
        self._errors: dict[str, ErrorLabel] = {}
        self._labels: dict[str, QtWidgets.QLabel] = {}
        self._columns = 1

    def row(self, text: str, *fields: Field, tip: str = "") -> None:
        """A label and the editors beside it; ``tip`` for both."""
        at = self.grid.rowCount()
        label = QtWidgets.QLabel(text)
        label.setToolTip(tip)
        self.grid.addWidget(label, at, 0)
        self._columns = max(self._columns, 1 + len(fields))
        for column, field in enumerate(fields, 1):
            last = column == len(fields)
            span = -1 if last else 1
            self.grid.addWidget(field.shown, at, column, 1, span)
            self.grid.setColumnStretch(column, 1)
            if tip:
                field.widget.setToolTip(tip)
            self._labels[field.name] = label
        if len(fields) == 1:
            label.setBuddy(fields[0].widget)
        self._keep(fields, at + 1)

    def check(self, field: Field, tip: str = "") -> None:
        """A box to tick, with its own text, across the whole form."""
        at = self.grid.rowCount()
        self.grid.addWidget(field.widget, at, 0, 1, -1)
        field.widget.setToolTip(tip)
        self._keep([field], at + 1)

    def heads(self, *texts: str) -> None:
        """Heads for the columns of editors."""
        at = self.grid.rowCount()
        for column, text in enumerate(texts, 1):
            self.grid.addWidget(Head(text), at, column)

    def whole(self, widget: QtWidgets.QWidget, *forms: Form) -> None:
        """A widget across the whole form; ``forms`` lie in it."""
        self.grid.addWidget(widget, self.grid.rowCount(), 0, 1, -1)
        self.contents += forms

    def note(self, name: str = "") -> QtWidgets.QLabel:
        """A line of plain text across the form, to be filled."""
        label = QtWidgets.QLabel()
        label.setObjectName(name)
        label.setWordWrap(True)
        label.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        label.setFocusPolicy(QtCore.Qt.NoFocus)
        self.whole(label)
        return label

    def adopt(self, fields: Iterable[Field], grid: QtWidgets.QGridLayout, at: int) -> None:
        """Fields that lie in a grid within the form; their errors share its row ``at``."""
        box = QtWidgets.QWidget()
        stack = QtWidgets.QVBoxLayout(box)
        stack.setContentsMargins(0, 0, 0, 0)
        stack.setSpacing(0)
        for field in fields:
            self.fields.append(field)
            self.contents.append(field)
            self._errors[field.name] = ErrorLabel(field.name)
            stack.addWidget(self._errors[field.name])
        grid.addWidget(box, at, 0, 1, -1)

    def release(self, field: Field) -> None:
        """Forget a field whose widget is going away."""
        self.fields.remove(field)
        self.contents.remove(field)
        self._errors.pop(field.name).deleteLater()

    def label(self, name: str) -> str:
        """The words beside an editor, "" where there are none."""
        return self._labels[name].text() if name in self._labels else ""

    def all_forms(self) -> list[Form]:
        """This form and those within it."""
        within = (one for one in self.contents if isinstance(one, Form))
        return [self, *(form for one in within for form in one.all_forms())]

    def all_fields(self) -> list[Field]:
        """All fields, those of forms within this one too, in the order that they are read."""
        return [
            field for one in self.contents
            for field in (one.all_fields() if isinstance(one, Form) else [one])
        ]

    def enable(self, field: Field, enabled: bool) -> None:
        """Let a field and its label be used, or grey them out."""
        field.widget.setEnabled(enabled and not field.locked)
        if field.name in self._labels:
            self._labels[field.name].setEnabled(enabled)

    def error(self, name: str, text: str) -> None:
        """Say under the editor what is wrong with it; nothing if ``text`` is empty."""
        self._errors[name].say(text)

    def error_of(self, name: str) -> str:
        """What is said under the editor."""
        return self._errors[name].text()

    def _keep(self, fields: Sequence[Field], at: int) -> None:
        self.adopt(fields, self.grid, at)


class Head(QtWidgets.QLabel):
    """The head of a column: small, so that the values stand out."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        font = self.font()
        font.setPointSizeF(font.pointSizeF() * 0.85)
        self.setFont(font)


class ErrorLabel(QtWidgets.QLabel):
    """What is wrong, in a red that can be read on any theme; hidden while nothing is."""

    def __init__(self, name: str) -> None:
        super().__init__()
        self.setObjectName(f"error {name}")
        self.setWordWrap(True)
        self.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        self.setFocusPolicy(QtCore.Qt.NoFocus)
        self.hide()

    def say(self, text: str) -> None:
        """Show the text, or hide."""
        self.setText(text)
        if text:
            self.setStyleSheet("")
            self.setStyleSheet(f"color: {palette.error_colour(self)};")
        self.setVisible(bool(text))


class Fold(QtWidgets.QWidget):
    """A part of a form that opens and closes by its heading; closed to begin with."""

    def __init__(self, title: str, inner: QtWidgets.QWidget) -> None:
        super().__init__()
        self.inner = inner
        self.head = QtWidgets.QToolButton()
        self.head.setText(title)
        self.head.setObjectName(f"fold {title}")
        self.head.setCheckable(True)
        self.head.setAutoRaise(True)
        self.head.setToolButtonStyle(QtCore.Qt.ToolButtonTextBesideIcon)
        self.head.setArrowType(QtCore.Qt.RightArrow)
        self.head.toggled.connect(self.open)
        box = QtWidgets.QVBoxLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.setSpacing(2)
        box.addWidget(self.head)
        box.addWidget(inner)
        inner.hide()

    def open(self, opened: bool = True) -> None:
        """Show or hide what is inside."""
        self.head.setArrowType(QtCore.Qt.DownArrow if opened else QtCore.Qt.RightArrow)
        self.head.setChecked(opened)
        self.inner.setVisible(opened)


class FindingsList(QtWidgets.QLabel):
    """Findings, the weightiest first, each with its figures and where the rule comes from."""

    def __init__(self) -> None:
        super().__init__()
        self.setObjectName("findings")
        self.setWordWrap(True)
        self.setTextFormat(QtCore.Qt.RichText)
        self.setTextInteractionFlags(QtCore.Qt.TextSelectableByMouse)
        self.setFocusPolicy(QtCore.Qt.NoFocus)

    def show_findings(self, findings: Iterable[Finding]) -> None:
        """Put these in the place of what was shown."""
        rows = by_severity(findings)
        self.setVisible(bool(rows))
        self.setText("".join(self._paragraph(f) for f in rows))

    def _paragraph(self, finding: Finding) -> str:
        colour = {
            Severity.DANGER: palette.error_colour(self),
            Severity.WARNING: palette.warning_colour(self),
        }.get(finding.severity, palette.ink(self).name())
        finding = finding_said(finding)
        severity = translate("Closetbench", finding.severity.value)
        figures = f" ({finding.value}; {finding.limit})" if finding.limit else (
            f" ({finding.value})" if finding.value else "")
        source = f"<br/><i>{_safe(finding.source)}</i>" if finding.source else ""
        return (
            f'<p style="margin-top:2px;margin-bottom:4px">'
            f'<b style="color:{colour}">{_safe(severity)}</b> '
            f"{_safe(finding.subject)}: {_safe(finding.message)}{_safe(figures)}{source}</p>"
        )


def enlarging_button(
    title: str, make: Callable[[], QtWidgets.QWidget]
) -> QtWidgets.QPushButton:
    """A button that shows a widget in a window of its own, beside the panel."""
    button = QtWidgets.QPushButton(translate("Closetbench", "Show larger"))
    button.setObjectName("larger")

    def show() -> None:
        window = QtWidgets.QDialog(button.window())
        window.setAttribute(QtCore.Qt.WA_DeleteOnClose)
        window.setObjectName("ClosetbenchLarger")
        window.setWindowTitle(title)
        QtWidgets.QVBoxLayout(window).addWidget(make())
        window.resize(1100, 700)
        # it goes when the panel goes
        button.destroyed.connect(window.close)
        window.show()

    button.clicked.connect(show)
    return button


def _safe(text: str) -> str:
    return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;")
