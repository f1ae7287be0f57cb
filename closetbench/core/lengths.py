"""Reading and printing lengths as the shop writes them.

Millimetres inside, exact: 1 in = 25.4 mm (international yard and pound agreement, in
force 1 July 1959). A length is read to an exact fraction of a millimetre; it is rounded
only where a ``LengthFormat`` prints it, and then to nearest, ties to even.

How doubtful spellings are taken:

* A bare number is in the unit that the caller says; a bare number after feet is inches.
* Fractions belong to inches and feet. ``5/8`` in a millimetre field is refused, since
  neither 0.625 mm nor a silent change to inches is safe.
* Inches after feet stay under 12, and each smaller metric unit under one of the larger:
  ``1' 14"`` is more often a slip than a habit.
* A full stop is the decimal sign. A comma is one too where nothing else can be meant
  (``1832,5``, ``0,125``); ``1,832`` can be read in two ways and is refused. Thousands may
  be set off by thin spaces, and by plain ones before a metric unit (``1 832 mm``).
* A hyphen joins (``72-5/16``, ``6'-0 1/4"``); with a space on one side of it, other than
  after feet, it looks like a subtraction and is refused.
"""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from fractions import Fraction
from functools import lru_cache
from math import isfinite
from types import MappingProxyType
from typing import Literal

from closetbench.core.errors import LengthError

INCH = Fraction(254, 10)
"""Millimetres in an inch, exactly."""

UNITS: Mapping[str, Fraction] = MappingProxyType(
    {
        "mm": Fraction(1),
        "cm": Fraction(10),
        "m": Fraction(1000),
        "in": INCH,
        "ft": 12 * INCH,
    }
)
"""Millimetres in each unit that a bare number may be in."""

_SPELLINGS = {
    "mm": "mm millimetre millimetres millimeter millimeters",
    "cm": "cm centimetre centimetres centimeter centimeters",
    "m": "m metre metres meter meters",
    "in": '" in inch inches',
    "ft": "' ft foot feet",
}
_NAMES = {"mm": "millimetres", "cm": "centimetres", "m": "metres", "in": "inches", "ft": "feet"}
_UNIT_OF = {word: unit for unit, words in _SPELLINGS.items() for word in words.split()}

_EXAMPLES = 'type a length such as 1832.5 mm, 183.25 cm, 72 5/16" or 6\' 1/4"'
_LONGEST = 60

_MARKS = str.maketrans(
    {
        **dict.fromkeys("′’‘ʹʼ´`‛", "'"),
        **dict.fromkeys("″”“„ʺ‟〃", '"'),
        **dict.fromkeys("−–—‐‑‒﹣－", "-"),
        **dict.fromkeys("⁄∕／", "/"),
        **dict.fromkeys("\u200b\u2060\ufeff"),
    }
)
_SUPERSCRIPTS = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹", "0123456789")
_SUBSCRIPTS = str.maketrans("₀₁₂₃₄₅₆₇₈₉", "0123456789")

_NUMBER = r"(?:[0-9][0-9.,]*|[.,][0-9][0-9.,]*)(?![0-9.,]|\s*/)"
_FRACTION = r"([0-9]+)\s*/\s*([0-9]+)"
_TERM = re.compile(
    rf"(?:(?P<mixed>{_NUMBER})(?:\s+|-|\s*\+\s*){_FRACTION}|{_FRACTION}|(?P<plain>{_NUMBER}))"
    r"(?:\s*(?P<unit>['\"]|[^\W\d_]+)\.?)?"
)
_THIN_SPACES = "\u00a0\u2009\u202f"
_GROUPED = re.compile(
    r"(?<![0-9.,/])[1-9][0-9]{0,2}(?:(?:\u00a0[0-9]{3})+(?![0-9]|\s*/)"
    r"|(?: [0-9]{3})+(?=(?:[.,][0-9]*)?\s*[mc]))"
)


def read_length(
    text: str,
    unit: str = "mm",
    *,
    allow_negative: bool = False,
    subject: str = "length",
    prop: str = "text",
) -> float:
    """The length that ``text`` says, in mm: the float nearest to ``read_exact``."""
    exact = read_exact(text, unit, allow_negative=allow_negative, subject=subject, prop=prop)
    return float(exact)


def read_exact(
    text: str,
    unit: str = "mm",
    *,
    allow_negative: bool = False,
    subject: str = "length",
    prop: str = "text",
) -> Fraction:
    """The length that ``text`` says, in mm, exactly.

    ``unit``: "mm", "cm", "m", "in" or "ft", the unit of a bare number. Raises LengthError
    about ``subject`` and ``prop`` where the text is no length or could mean two.
    """

    def refuse(reason: str) -> LengthError:
        shown = text.strip()
        if len(shown) > _LONGEST:
            shown = shown[:_LONGEST] + "…"
        return LengthError(subject, prop, shown or "empty", reason)

    if unit not in UNITS:
        raise LengthError(subject, "unit", unit, f"must be one of {', '.join(UNITS)}")
    plain = _plain(text)
    if len(plain) > _LONGEST:
        raise refuse(f"no length is that long; {_EXAMPLES}")
    negative = plain.startswith("-")
    body = plain[1:].lstrip() if plain.startswith(("-", "+")) else plain
    if not body:
        raise refuse(_EXAMPLES)
    try:
        total = _total(body, unit)
    except _Unreadable as reason:
        raise refuse(str(reason)) from None
    if negative and total and not allow_negative:
        raise refuse(f"must not be negative; {_EXAMPLES}")
    return -total if negative else total


class _Unreadable(Exception):
    """Why a text is no length; carries the message."""


def _plain(text: str) -> str:
    """The text in the few characters that the grammar knows."""
    out: list[str] = []
    for char in text.lower():
        if unicodedata.decomposition(char).startswith("<fraction>"):
            out.append(" " + unicodedata.normalize("NFKC", char))
        elif char.isspace():
            out.append("\u00a0" if char in _THIN_SPACES else " ")
        elif char.isdecimal():
            out.append(str(unicodedata.decimal(char)))
        else:
            out.append(char)
    plain = "".join(out).translate(_MARKS).replace("''", '"').strip()
    plain = re.sub(r"[⁰¹²³⁴-⁹]+(?=\s*/)", lambda m: " " + m.group().translate(_SUPERSCRIPTS), plain)
    plain = re.sub(r"(?<=/)[₀-₉]+", lambda m: m.group().translate(_SUBSCRIPTS), plain)
    plain = _GROUPED.sub(lambda m: re.sub(r"\s", "", m.group()), plain)
    return plain.replace("\u00a0", " ").strip()


def _total(body: str, bare: str) -> Fraction:
    """Sum of the terms of an unsigned length, in mm."""
    total = Fraction(0)
    larger = ""
    at = 0
    while at < len(body):
        match = _TERM.match(body, at)
        if match is None:
            raise _Unreadable(_why_unreadable(body, at))
        word = match["unit"]
        if word is not None and word not in _UNIT_OF:
            raise _Unreadable(f"{word!r} is no unit of length here; {_EXAMPLES}")
        if word is not None:
            unit = _UNIT_OF[word]
        elif larger:
            unit = "in" if larger == "ft" else ""
        else:
            unit = bare
        if not unit:
            raise _Unreadable(f"say the unit of {match.group().strip()!r}; {_EXAMPLES}")
        value = _value(match, unit)
        if larger:
            _check_order(larger, unit, value)
        total += value * UNITS[unit]
        at = match.end()
        if at < len(body):
            if word is None:
                raise _Unreadable(_why_unreadable(body, at))
            joint = re.compile(r"\s*[-+]?\s*" if unit == "ft" else r"\s*\+?\s*").match(body, at)
            at = joint.end() if joint else at
            if at == len(body):
                raise _Unreadable(f"ends in the middle; {_EXAMPLES}")
            if value.denominator != 1:
                raise _Unreadable(f"only the smallest unit may have a fraction; {_EXAMPLES}")
            larger = unit
    return total


def _check_order(larger: str, unit: str, value: Fraction) -> None:
    imperial = {"in", "ft"}
    if (larger in imperial) != (unit in imperial):
        raise _Unreadable(f"mixes metric and inch units; {_EXAMPLES}")
    if UNITS[unit] >= UNITS[larger]:
        raise _Unreadable(f"{_NAMES[unit]} cannot follow {_NAMES[larger]}; {_EXAMPLES}")
    if value * UNITS[unit] >= UNITS[larger]:
        raise _Unreadable(
            f"{_NAMES[unit]} after {_NAMES[larger]} must be under {UNITS[larger] / UNITS[unit]}; "
            f"carry the rest into {_NAMES[larger]}"
        )


def _value(match: re.Match[str], unit: str) -> Fraction:
    """The number of a term, in its own unit."""
    if match["plain"] is not None:
        return _decimal(match["plain"])
    top, bottom = (g for g in match.group(2, 3, 4, 5) if g is not None)
    if int(bottom) == 0:
        raise _Unreadable(f"the lower number of a fraction must not be 0; {_EXAMPLES}")
    if unit not in ("in", "ft"):
        raise _Unreadable(
            f"a fraction is read in inches or feet, not in {_NAMES[unit]}; "
            'mark it as inches (72 5/16") or type a decimal (1832.5 mm)'
        )
    part = Fraction(int(top), int(bottom))
    if match["mixed"] is None:
        return part
    whole = _decimal(match["mixed"])
    if not match["mixed"].isdecimal():
        raise _Unreadable(f"a fraction follows whole inches or feet only; {_EXAMPLES}")
    if part >= 1:
        raise _Unreadable(f"the fraction after a whole number must be under 1; {_EXAMPLES}")
    return whole + part


def _decimal(number: str) -> Fraction:
    """A number with its decimal and grouping signs sorted out."""
    if "," not in number and number.count(".") <= 1:
        return Fraction(Decimal(number))
    grouped = re.fullmatch(r"([1-9][0-9]{0,2})(?:([.,])([0-9]{3}))((?:\2[0-9]{3})*)", number)
    if grouped and grouped[4]:
        return Fraction(re.sub("[.,]", "", number))
    if grouped and grouped[2] == ",":
        raise _Unreadable(
            f"the comma can be read in two ways; type {number.replace(',', '')} "
            f"or {number.replace(',', '.')}"
        )
    both = re.fullmatch(r"[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+\.[0-9]*|(?:\.[0-9]{3})+,[0-9]*)", number)
    if both:
        whole, decimals = re.split(r"[.,](?=[0-9]*$)", number)
        return Fraction(Decimal(f"{re.sub('[.,]', '', whole)}.{decimals}"))
    if number.count(",") == 1 and "." not in number and not number.endswith(","):
        return Fraction(Decimal(number.replace(",", ".")))
    raise _Unreadable(f"{number!r} is no number; {_EXAMPLES}")


def _why_unreadable(body: str, at: int) -> str:
    rest = body[at:].strip()
    if re.match(r"-", rest) and at > 0:
        return f"{rest!r} looks like a subtraction; {_EXAMPLES}"
    if re.match(r"[0-9.,]+\s*/\s*(?![0-9\s])", rest) or re.match(r"/", rest):
        return f"a fraction has one number above and one below the slash; {_EXAMPLES}"
    if re.match(r"[0-9]", rest) and at > 0:
        return f"{rest!r} stands beside another number without a unit; {_EXAMPLES}"
    return f"cannot be read from {rest!r}; {_EXAMPLES}"


Style = Literal["mm", "cm", "m", "in", "in-frac", "ft-in"]
_STYLE_UNITS = {"mm": "mm", "cm": "cm", "m": "m", "in": "in", "in-frac": "in", "ft-in": "in"}
_FINEST_FRACTION = 128


@dataclass(frozen=True)
class LengthFormat:
    """How the user wants lengths printed.

    ``style``: "mm", "cm", "m", "in" (decimal inches), "in-frac" (fractional inches) or
    "ft-in" (feet and fractional inches). ``resolution``: the step that lengths are rounded
    to, in mm for the metric styles and in inches for the others; decimal styles take any
    step that a finite decimal writes, fractional ones 1, 1/2, 1/4 … 1/128.

    Every printed text reads back as exactly what it stands for:
    ``read_length(f.text(x), allow_negative=True) == f.rounded(x)``.
    """

    style: Style
    resolution: Fraction

    def __post_init__(self) -> None:
        if self.style not in _STYLE_UNITS:
            raise LengthError(
                "length format", "style", self.style, f"must be one of {', '.join(_STYLE_UNITS)}"
            )
        step = Fraction(str(self.resolution))
        object.__setattr__(self, "resolution", step)
        if step <= 0:
            raise LengthError("length format", "resolution", step, "must be more than 0")
        if self.style in ("in-frac", "ft-in"):
            bottom = step.denominator
            if step.numerator != 1 or bottom & (bottom - 1) or bottom > _FINEST_FRACTION:
                raise LengthError(
                    "length format", "resolution", step, "must be 1, 1/2, 1/4 … 1/128 of an inch"
                )
        elif _places(step) is None:
            raise LengthError(
                "length format", "resolution", step, "must be a finite decimal such as 0.5 or 0.01"
            )

    @property
    def unit(self) -> str:
        """The unit of a printed number that stands without one: "mm", "cm", "m" or "in"."""
        return _STYLE_UNITS[self.style]

    def exact(self, mm: float) -> Fraction:
        """What ``text(mm)`` stands for, in mm, exactly. Half steps go to the even step.

        The float counts as the decimal that Python prints for it, so that 0.15 is half
        way between 0.1 and 0.2 although the binary number is not.
        """
        scale = INCH if self.unit == "in" else Fraction(1)
        return round(_as_typed(mm) / (scale * self.resolution)) * self.resolution * scale

    def rounded(self, mm: float) -> float:
        """The length that ``text(mm)`` stands for, mm."""
        return float(self.exact(mm))

    def error(self, mm: float) -> float:
        """Printed minus true, mm."""
        return float(self.exact(mm) - _as_typed(mm))

    def text(self, mm: float, *, unit: bool = True) -> str:
        """The length as printed: ``1832.5 mm``, ``72 5/16"``, ``6' 0 5/16"``.

        ``unit`` False leaves the unit off where a column's head says it (``self.unit``);
        feet and inches always keep theirs.
        """
        return _text(self, mm, unit)

    def text_with_error(self, mm: float) -> str:
        """The printed length and what rounding did to it: ``72 5/16" (+0.2 mm)``.

        Nothing is added where the error is under 0.005 mm.
        """
        error = self.error(mm)
        if abs(error) < 0.005:
            return self.text(mm)
        return f"{self.text(mm)} ({error:+.{1 if abs(error) >= 0.05 else 2}f} mm)"


@lru_cache(maxsize=4096)
def _text(form: LengthFormat, mm: float, unit: bool) -> str:
    """Remembered: fractions take long, and tables show the same lengths again and again."""
    printed = form.exact(mm)
    sign = "-" if printed < 0 else ""
    number = abs(printed) / UNITS[form.unit]
    if form.style == "ft-in":
        feet, inches = divmod(number, 12)
        whole = f"{feet}' {'0 ' if 0 < inches < 1 else ''}" if feet else ""
        return f'{sign}{whole}{_mixed(inches)}"'
    if form.style == "in-frac":
        return sign + _mixed(number) + ('"' if unit else "")
    return f"{sign}{_finite_decimal(number)}" + (f" {form.unit}" if unit else "")


def _as_typed(mm: float) -> Fraction:
    if not isfinite(mm):
        raise LengthError("length", "value", mm, "must be a finite number of millimetres")
    return Fraction(Decimal(repr(float(mm))))


def _places(step: Fraction) -> int | None:
    """Decimals needed to write ``step``; None where no finite number is enough."""
    bottom, twos, fives = step.denominator, 0, 0
    while bottom % 2 == 0:
        bottom, twos = bottom // 2, twos + 1
    while bottom % 5 == 0:
        bottom, fives = bottom // 5, fives + 1
    return max(twos, fives) if bottom == 1 else None


def _finite_decimal(number: Fraction) -> str:
    places = _places(number) or 0
    digits = str(int(number * 10**places)).rjust(places + 1, "0")
    return f"{digits[:-places]}.{digits[-places:]}" if places else digits


def _mixed(inches: Fraction) -> str:
    whole, part = divmod(inches, 1)
    if not part:
        return str(whole)
    return f"{whole} {part}" if whole else str(part)


MILLIMETRES = LengthFormat("mm", Fraction(1, 10))
CENTIMETRES = LengthFormat("cm", Fraction(1, 10))
METRES = LengthFormat("m", Fraction(1))
DECIMAL_INCHES = LengthFormat("in", Fraction(1, 1000))
SIXTEENTHS = LengthFormat("in-frac", Fraction(1, 16))
THIRTY_SECONDS = LengthFormat("in-frac", Fraction(1, 32))
FEET_AND_INCHES = LengthFormat("ft-in", Fraction(1, 16))
