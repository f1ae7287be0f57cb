"""A page to draw pictures on, in inches of paper, and the file it becomes.

It uses matplotlib without pyplot, so that no window system and no setting of the host is
touched.
"""

from __future__ import annotations

import io
import math
from collections.abc import Sequence
from pathlib import Path
from typing import Any

from closetbench.core.errors import DocumentError
from closetbench.core.panel import Point
from closetbench.shop.language import Words, plain
from closetbench.shop.optional import require
from closetbench.stock.atomic import write_bytes_atomically

_UNDATED: dict[str, dict[str, None]] = {
    ".png": {}, ".svg": {"Date": None}, ".pdf": {"CreationDate": None},
}
FORMATS = tuple(_UNDATED)
"""What a picture can be saved as, by the ending of its name."""
INK = "#2f2b26"
FAINT = "#8d867c"
PAPER = "#fffdf9"
DPI = 160
LINE = 1.35
"""From one line of text to the next, in sizes of the text."""
LEAST = 4.0
"""Points: nothing that has to be read is smaller."""
_FONT = "DejaVu Sans"
_POINT = 1 / 72


class Page:
    """An empty page of ``width`` x ``height`` inches, origin at its lower left corner.

    ``ground``: its colour; white prints without a tint; ``words``: those of its reader, which
    what is drawn on it was put into."""

    def __init__(
        self, width: float, height: float, subject: str, ground: str = PAPER,
        words: Words = plain,
    ) -> None:
        require("matplotlib", subject)
        from matplotlib.figure import Figure

        self.words = words
        self.width, self.height, self.subject = width, height, subject
        self.figure: Any = Figure(figsize=(width, height), dpi=DPI, facecolor=ground)
        self.axes: Any = self.figure.add_axes((0.0, 0.0, 1.0, 1.0))
        self.axes.set_xlim(0.0, width)
        self.axes.set_ylim(0.0, height)
        self.axes.set_axis_off()
        self.order = 1.0

    def shapes(
        self, rings: Sequence[Sequence[Point]], fills: Sequence[str], edges: Sequence[str],
        widths: Sequence[float],
    ) -> None:
        """Many closed shapes, painted one after another; widths of their edges in points."""
        from matplotlib.collections import PolyCollection

        self.axes.add_collection(PolyCollection(
            [list(ring) for ring in rings], facecolors=list(fills), edgecolors=list(edges),
            linewidths=list(widths), zorder=self._next(), joinstyle="round", capstyle="round",
        ))

    def shape(
        self, ring: Sequence[Point], fill: str = "none", edge: str = "none", width: float = 0.6,
        hatch: str = "",
    ) -> None:
        """One closed shape."""
        from matplotlib.patches import Polygon

        self.axes.add_patch(Polygon(
            list(ring), closed=True, facecolor=fill, edgecolor=edge, linewidth=width,
            hatch=hatch or None, zorder=self._next(), joinstyle="miter",
        ))

    def circle(self, centre: Point, radius: float, fill: str, edge: str = "none") -> None:
        """A round dot."""
        from matplotlib.patches import Circle

        self.axes.add_patch(Circle(
            centre, radius, facecolor=fill, edgecolor=edge, linewidth=0.4, zorder=self._next()))

    def line(
        self, points: Sequence[Point], colour: str = INK, width: float = 0.6,
        dashes: tuple[float, float] | None = None, alpha: float = 1.0,
    ) -> None:
        """A line through points; ``dashes``: stroke and gap in points."""
        xs, ys = zip(*points, strict=True)
        self.axes.plot(
            xs, ys, color=colour, linewidth=width, alpha=alpha,
            linestyle=(0, dashes) if dashes else "-",
            zorder=self._next(), solid_capstyle="butt",
        )

    def text(
        self, at: Point, words: str, size: float = 8.0, colour: str = INK,
        align: str = "center", rise: str = "center", turn: float = 0.0, bold: bool = False,
    ) -> None:
        """Words in ``size`` points, on one line."""
        text = self.axes.text(
            at[0], at[1], one_line(words), fontsize=size, color=colour, ha=align, va=rise,
            rotation=turn, family=_FONT, weight="bold" if bold else "normal",
            zorder=self._next(), rotation_mode="anchor",
        )
        text.set_parse_math(False)

    def paragraph(
        self, at: Point, words: str, width: float, height: float, most: float,
        colour: str = FAINT, bold: bool = False,
    ) -> None:
        """Words in as many lines as a room of ``width`` x ``height`` inches lets them have,
        as large as they fit, at most ``most`` points; ``at``: middle of the room's left side."""
        size, lines = most, wrapped(words, width, most, bold)
        while len(lines) * size * LINE * _POINT > height and size > LEAST:
            size -= 0.1
            lines = wrapped(words, width, size, bold)
        step = size * LINE * _POINT
        for i, line in enumerate(lines):
            y = at[1] + step * ((len(lines) - 1) / 2 - i)
            self.text((at[0], y), line, size, colour, align="left", bold=bold)

    def dimension(
        self, start: Point, end: Point, words: str, size: float = 7.5, colour: str = INK
    ) -> None:
        """A dimension line with a stroke at each end and its words in the middle; where they
        do not fit, they stand beside an upright line, or turned under a level one."""
        (ax, ay), (bx, by) = start, end
        x, y = (ax + bx) / 2, (ay + by) / 2
        upright = abs(by - ay) > abs(bx - ax)
        length = math.hypot(bx - ax, by - ay)
        gap = text_width(words, size) + 0.1
        pieces = [(start, end)]
        if length > gap + 0.1:
            near, far = (length - gap) / 2 / length, (length + gap) / 2 / length
            pieces = [(start, _between(start, end, near)), (_between(start, end, far), end)]
            self.text((x, y), words, size, colour, turn=90.0 if upright else 0.0)
        elif upright:
            self.text((x + 0.08, y), words, size, colour, align="left")
        else:
            self.text((x, y - 0.07), words, size, colour, align="right", turn=90.0)
        for piece in pieces:
            self.line(piece, colour, 0.6)
        for x, y in (start, end):
            self.line(((x - 0.035, y - 0.035), (x + 0.035, y + 0.035)), colour, 1.0)

    def scale_bar(self, at: Point, inches: float, words: str) -> None:
        """A bar of black and white halves with its length over it."""
        x, y = at
        half = inches / 2
        for i, fill in ((0, INK), (1, PAPER)):
            x0 = x + i * half
            ring = ((x0, y), (x0 + half, y), (x0 + half, y + 0.06), (x0, y + 0.06))
            self.shape(ring, fill, INK, 0.6)
        self.text((x + half, y + 0.16), words, 7.5)

    def _next(self) -> float:
        self.order += 0.001
        return self.order

    def write(self, path: str | Path) -> Path:
        """Save by the ending of the name; ``DocumentError`` for another or where that fails."""
        return write_pages([self], path)[0]

    def drawn(self, ending: str) -> bytes:
        """The file's content, by the ending of its name; ``DocumentError`` for another."""
        check_ending(f"picture{ending}", self.subject)
        return _saved([self], ending.lower())


def write_pages(pages: Sequence[Page], path: str | Path) -> tuple[Path, ...]:
    """Save pages by the ending of the name: a PDF holds them all, of pictures each page after
    the first is a file of its own, ``name-2.svg``. ``DocumentError`` for another ending or
    where that fails."""
    path, subject = Path(path), pages[0].subject
    check_ending(path, subject)
    suffix = path.suffix.lower()
    if suffix == ".pdf":
        return (write_bytes_atomically(path, _saved(pages, suffix), subject),)
    return tuple(
        write_bytes_atomically(
            path if n == 1 else path.with_stem(f"{path.stem}-{n}"), _saved([page], suffix), subject)
        for n, page in enumerate(pages, 1)
    )


def _saved(pages: Sequence[Page], suffix: str) -> bytes:
    import matplotlib
    from matplotlib.backends.backend_pdf import PdfPages

    stream = io.BytesIO()
    with matplotlib.rc_context({"svg.hashsalt": "closetbench", "svg.fonttype": "path"}):
        if suffix == ".pdf" and len(pages) > 1:
            with PdfPages(stream, metadata=_UNDATED[suffix]) as book:
                for page in pages:
                    book.savefig(page.figure, facecolor=page.figure.get_facecolor())
        else:
            figure = pages[0].figure
            figure.savefig(
                stream, format=suffix[1:], dpi=DPI, facecolor=figure.get_facecolor(),
                metadata=_UNDATED[suffix],
            )
    return stream.getvalue()


def check_ending(path: str | Path, subject: str) -> None:
    """``DocumentError`` unless the name ends in what a picture can be saved as."""
    suffix = Path(path).suffix.lower()
    if suffix not in FORMATS:
        raise DocumentError(
            subject, "file", path, f"the name must end in {', '.join(FORMATS)}")


def _between(start: Point, end: Point, part: float) -> Point:
    return start[0] + part * (end[0] - start[0]), start[1] + part * (end[1] - start[1])


def one_line(words: str) -> str:
    """The words on one line, without control characters."""
    return " ".join("".join(c if c.isprintable() else " " for c in words).split())


def text_width(words: str, size: float, bold: bool = False) -> float:
    """Width of words in inches at a size in points."""
    from matplotlib.font_manager import FontProperties
    from matplotlib.textpath import text_to_path

    prop = FontProperties(family=_FONT, weight="bold" if bold else "normal", size=size)
    width, _, _ = text_to_path.get_text_width_height_descent(one_line(words), prop, ismath=False)
    return float(width) * _POINT


def wrapped(words: str, width: float, size: float, bold: bool = False) -> list[str]:
    """Words in lines no wider than ``width`` inches, where no single word is."""
    lines: list[str] = []
    for word in one_line(words).split(" "):
        if lines and text_width(f"{lines[-1]} {word}", size, bold) <= width:
            lines[-1] += f" {word}"
        else:
            lines.append(word)
    return lines


def fitting_size(
    words: Sequence[str], width: float, height: float, most: float, bold: bool = False,
    lines: float | None = None,
) -> float:
    """The greatest size in points, at most ``most``, at which the lines fit into a room of
    ``width`` x ``height`` inches; ``lines``: how many the height must hold, if not theirs."""
    widest = max(text_width(line, 10.0, bold) for line in words)
    by_width = 10.0 * width / widest if widest > 0 else most
    return min(most, by_width, height / ((lines or len(words)) * LINE * _POINT))
