"""Sentences of the layers below in another language.

They are English sentences with figures, names and other sentences set in. The patterns that
they were made from are known, but not which was used where: of all the ways to take a text
apart the one is chosen that leaves the fewest letters in English. No Qt, no FreeCAD.
"""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable, Iterator, Sequence
from typing import NamedTuple

_GAP = re.compile(r"\{(\d+)\}")
_JOINTS = re.compile(r"; |: |, | (?=\d)")
_OPENS = re.compile(r"(?<=\S)(?=[;:,.]? |\()")
"""Where one gap may end and the next begin when nothing stands between them."""
_UNITS = re.compile(r"(?<=\d) ?(?:[cm]?m[²³]?|kg(?:/m²?)?|N(?:·m|/mm²)?|in|ft|lbf?|psi)(?!\w)")
_LEAST = 2
"""Letters that a pattern needs beside its gaps: fewer would match anything."""
_JOINS = 3
"""Letters of a pattern that does no more than join."""
_PLACES = 8
"""So many places of a word between two gaps are tried, the last of them too."""


class Told(NamedTuple):
    """A text, and how many letters of it could not be translated."""

    text: str
    left: int


class _Pattern(NamedTuple):
    text: str
    told: str
    pieces: tuple[str, ...]
    """What stands before, between and after the runs of gaps."""
    runs: tuple[tuple[bool, ...], ...]
    """Gaps with nothing between them go together; whether each may be empty."""
    words: str
    """Its longest piece, to be found in a text before the rest is tried."""


def _letters(text: str) -> int:
    """Letters of a text, without those of its units."""
    return sum(c.isalpha() for c in _UNITS.sub("", text))


def _pattern(text: str, told: str) -> _Pattern:
    """A pattern taken apart. What ends in a space stands before something."""
    if text[-1].isspace():
        gap = f"{{{len(_GAP.findall(text))}}}"
        text, told = text + gap, told + gap
    pieces, *rest = _GAP.split(text)[::2]
    between, runs = [pieces], list[list[bool]]()
    for piece in rest:
        before = between[-1]
        if before or not runs:
            runs.append([bool(before) and not before[-1].isspace()])
            between.append(piece)
        else:
            runs[-1].append(True)
            between[-1] = piece
    return _Pattern(
        text, told, tuple(between), tuple(map(tuple, runs)), max(between, key=len))


class Sentences:
    """Translates texts made from ``patterns`` (with numbered gaps); ``tell`` gives the
    translation of a pattern or of a text without gaps, itself where there is none."""

    def __init__(self, patterns: Iterable[str], tell: Callable[[str], str]) -> None:
        self._tell = tell
        found = [
            _pattern(text, tell(text)) for text in patterns
            if (_GAP.search(text) or text[-1].isspace()) and tell(text) != text
        ]
        found.sort(key=lambda one: -sum(map(_letters, one.pieces)))
        self._patterns = [p for p in found if sum(map(_letters, p.pieces)) >= _LEAST]
        self._begins = {
            joint for joint in ("; ", ": ", ", ")
            if any(p.pieces[0].startswith(joint) for p in self._patterns)
        }
        self._known: dict[str, Told] = {}

    def said(self, text: str) -> str:
        """``text`` in the other language, as far as it is known there."""
        if not self._patterns:
            return self._tell(text)
        return self._told(text).text

    def _told(self, text: str) -> Told:
        if text not in self._known:
            best = Told(text, _letters(text))
            for way in self._ways(text):
                if way.left < best.left or (way.left == best.left and best.text == text):
                    best = way
                if not best.left:
                    break
            self._known[text] = best
        return self._known[text]

    def _ways(self, text: str) -> Iterator[Told]:
        """The text taken apart in every way that is known, the wordiest first."""
        told = self._tell(text) if text.strip() else text
        if told != text or not _letters(text):
            yield Told(told, 0)
            return
        joints = list(_JOINTS.finditer(text))
        # sentences side by side before one within another
        yield from self._split(text, [j for j in joints if j.group() == "; "])
        for pattern in self._patterns:
            if pattern.words in text and text.startswith(pattern.pieces[0]):
                gaps = self._fitted(pattern, text, len(pattern.pieces[0]), 0)
                if gaps is not None and not _is_name(pattern, gaps):
                    filled = pattern.told.format(*(gap.text for gap in gaps))
                    yield Told(filled, _left(gaps))
        yield from self._split(text, [j for j in joints if j.group() != "; "])

    def _split(self, text: str, joints: list[re.Match[str]]) -> Iterator[Told]:
        """The text as two; what joins them may belong to the second."""
        for joint in reversed(joints):
            before = self._told(text[:joint.start()])
            after = self._told(text[joint.end():])
            yield Told(before.text + joint.group() + after.text, before.left + after.left)
            if joint.start() and after.left and joint.group() in self._begins:
                after = self._told(text[joint.start():])
                yield Told(before.text + after.text, before.left + after.left)

    def _fitted(
        self, pattern: _Pattern, text: str, start: int, run: int
    ) -> list[Told] | None:
        """What stands in the gaps from a run of them on, whose text begins at ``start``."""
        empty, piece = pattern.runs[run], pattern.pieces[run + 1]
        if run == len(pattern.runs) - 1:
            end = len(text) - len(piece)
            if end < start + (not all(empty)) or not text.endswith(piece):
                return None
            return self._parted(text[start:end], empty)
        best: list[Told] | None = None
        places = [m.start() for m in re.finditer(re.escape(piece), text[start:])]
        for place in places[:_PLACES] + places[_PLACES:][-1:]:
            if place or all(empty):
                after = self._fitted(
                    pattern, text, start + place + len(piece), run + 1)
                if after is not None:
                    gaps = [*self._parted(text[start:start + place], empty), *after]
                    if best is None or _left(gaps) < _left(best):
                        best = gaps
        return best

    def _parted(self, run: str, empty: tuple[bool, ...]) -> list[Told]:
        """What stands in gaps with nothing between them, each gap's own."""
        if len(empty) == 1:
            return [self._told(run)]
        ends = [0] * empty[0] + [m.start() for m in _OPENS.finditer(run)] + [len(run)]
        return min(
            ([self._told(run[:end]), *self._parted(run[end:], empty[1:])]
             for end in dict.fromkeys(ends)),
            key=_left,
        )


def _is_name(pattern: _Pattern, gaps: Sequence[Told]) -> bool:
    """Whether a pattern that only joins has found nothing to join: a name with an "and"."""
    return all(gap.left for gap in gaps) and sum(map(_letters, pattern.pieces)) <= _JOINS


def _left(gaps: Iterable[Told]) -> int:
    return sum(gap.left for gap in gaps)
