"""A slider with a button that plays it from one end to the other."""

from __future__ import annotations

from collections.abc import Callable

from closetbench.gui.qt import QtCore, QtWidgets, translate

CONTEXT = "Closetbench"
STEPS = 1000
"""Positions of the slider; what it shows is a share from 0 to 1."""
_TICK = 40
"""ms from one picture to the next."""


class PlayBar(QtWidgets.QWidget):
    """``moved`` is called with the share from 0 to 1 at every move; ``seconds``: how long the
    play takes; ``ends``: words under both ends. Played from the end it runs back to the start
    where ``back`` is set, else it starts over. It stops when it is hidden."""

    def __init__(
        self, name: str, moved: Callable[[float], None], seconds: float = 6.0,
        ends: tuple[str, str] = ("", ""), back: bool = False,
    ) -> None:
        super().__init__()
        self._moved, self._seconds, self._back, self._way = moved, seconds, back, 1
        self.slider = QtWidgets.QSlider(QtCore.Qt.Horizontal)
        self.slider.setObjectName(name)
        self.slider.setRange(0, STEPS)
        self.slider.setSingleStep(STEPS // 100)
        self.slider.setPageStep(STEPS // 10)
        self.slider.valueChanged.connect(self._changed)
        self.button = QtWidgets.QToolButton()
        self.button.setObjectName(f"play {name}")
        self.button.clicked.connect(self.toggle)
        box = QtWidgets.QGridLayout(self)
        box.setContentsMargins(0, 0, 0, 0)
        box.addWidget(self.button, 0, 0)
        box.addWidget(self.slider, 0, 1, 1, 2)
        for column, text in enumerate(ends, 1):
            if text:
                label = QtWidgets.QLabel(text)
                label.setAlignment(
                    QtCore.Qt.AlignLeft if column == 1 else QtCore.Qt.AlignRight)
                box.addWidget(label, 1, column)
        self._timer = QtCore.QTimer(self)
        self._timer.setInterval(_TICK)
        self._timer.timeout.connect(self._tick)
        self._say()

    @property
    def share(self) -> float:
        """Where the slider stands, from 0 to 1."""
        return float(self.slider.value() / STEPS)

    def put(self, share: float) -> None:
        """Move the slider."""
        self.slider.setValue(round(share * STEPS))

    @property
    def playing(self) -> bool:
        """Whether it moves by itself."""
        return bool(self._timer.isActive())

    def toggle(self) -> None:
        """Play, or stop."""
        if self.playing:
            self.stop()
            return
        self._way = 1
        if self.slider.value() >= STEPS:
            if self._back:
                self._way = -1
            else:
                self.slider.setValue(0)
        self._timer.start()
        self._say()

    def stop(self) -> None:
        """Stand still."""
        self._timer.stop()
        self._say()

    def hideEvent(self, event: QtCore.QEvent) -> None:  # noqa: N802
        """Nothing plays that cannot be seen."""
        self.stop()
        super().hideEvent(event)

    def _tick(self) -> None:
        step = max(1, round(STEPS * _TICK / 1000 / self._seconds))
        self.slider.setValue(self.slider.value() + self._way * step)
        if self.slider.value() == (STEPS if self._way > 0 else 0):
            self.stop()

    def _changed(self) -> None:
        self._moved(self.share)

    def _say(self) -> None:
        style = QtWidgets.QStyle
        pixmap = style.SP_MediaPause if self.playing else style.SP_MediaPlay
        self.button.setIcon(self.style().standardIcon(pixmap))
        self.button.setToolTip(
            translate(CONTEXT, "Stop") if self.playing else translate(CONTEXT, "Play"))
