"""A figure with its unit, read from a line: `76 %`, `12-15 h`, `1 lb 4 oz`, `45 min-1 h`, `3½oz`."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

from manchet.quantities.numbers import NUMBER, VULGAR, is_too_long, value_of
from manchet.quantities.units import COMPOUNDS, LONG_FORMS, SMALLER_MEASURES, SPELLINGS, UNITS, is_less, steps_between
from manchet.records import NamedTuple


class WrittenFigure(NamedTuple):
    """A figure `length` characters long. `unit` is a key of `UNITS`, or "" for a bare number.

    `fault` names what is odd about it ("" for nothing); the values are then the best reading there is.
    """

    low: Fraction
    high: Fraction
    unit: str
    length: int
    fault: str = ""
    smaller: tuple[tuple[Fraction, str], ...] = ()
    """What follows in smaller measures, of `3/4 cup 2 tbsp` the spoons: a country says how many make a cup."""


TOO_LONG, BY_ZERO, SMALL_C = "number-too-long", "fraction-by-zero", "unit-small-c"
BACKWARDS, HYPHEN, TWO_KINDS = "range-backwards", "hyphen-fraction", "range-of-two-kinds"
LONG_FORM, BEFORE_FRACTION = "unit-long-form", "number-before-fraction"
THOUSANDS, SLASH = "thousands-point", "fraction-or-two"

_QUANTITY = re.compile(rf"({NUMBER})(?: ?(%|[°º] ?[CcFf]|[A-Za-z]+(?:/[a-z]+)?))?(?![^\s,;–-])")
_BARE = re.compile(rf"({NUMBER})(?![^\s,;–-])")
_DASH = re.compile(r"\s?[-–]\s?(?=[0-9.½⅓⅔¼¾⅛⅜⅝⅞])")

_REMEMBERED = 20_000
_LONGEST_REMEMBERED = 40


_COARSE = frozenset({"g", "ml"})
"""Of one of these nobody weighs a thousandth: `1.000 g` may be a kilo."""


_SLASHED = re.compile(r"([0-9]+)/([0-9]+)")

_PARTED_IN = 4
"""Of an hour nobody writes other parts than halves, thirds and quarters, or one part alone (`1/6 h`)."""


_FOLLOWED = COMPOUNDS.keys() | SMALLER_MEASURES.keys()


class _Part(NamedTuple):
    """`biggest` is the first of several units, of `1 h 15 min` the hour; "" where there is one unit or none."""

    value: Fraction
    unit: str
    end: int
    fault: str
    biggest: str = ""
    smaller: tuple[tuple[Fraction, str], ...] = ()


def figure_at(body: str, start: int) -> WrittenFigure | None:
    """The figure that begins at `start`, or None where a word stands there (`00`, `6-grain`, `2026-09-14`).

    Linear in the length of the figure. A bare number with leading zeros is still a number (`007`).
    """
    rest = body[start : start + _LONGEST_REMEMBERED + 1]
    return _read(body, start) if len(rest) > _LONGEST_REMEMBERED else _read_short(rest)


def forget_figures() -> None:
    """Forgets the figures read so far; see `syntax.line.forget_lines`."""
    _read_short.cache_clear()


@lru_cache(maxsize=_REMEMBERED)
def _read_short(text: str) -> WrittenFigure | None:
    """The same few figures stand on most lines of a bakery."""
    return _read(text, 0)


def _read(body: str, start: int) -> WrittenFigure | None:
    low = _quantity(body, start)
    if low is None:
        return None
    dash = _DASH.match(body, low.end)
    high = None if dash is None else _quantity(body, dash.end())
    end = low.end if high is None else high.end
    if end < len(body) and not (body[end].isspace() or body[end] in ",;"):
        return None
    if high is None:
        return WrittenFigure(low.value, low.value, low.unit, end - start, low.fault, low.smaller)
    if low.smaller or high.smaller:
        return WrittenFigure(low.value, low.value, low.unit, end - start, TWO_KINDS)
    return _range(low, high, end - start)


def _range(low: _Part, high: _Part, length: int) -> WrittenFigure:
    fault = low.fault or high.fault
    if not low.unit and high.biggest:
        low = low._replace(unit=high.biggest)  # `1-1 h 15 min` begins at an hour
        if low.value * UNITS[low.unit].factor > high.value * UNITS[high.unit].factor:
            return WrittenFigure(low.value, low.value, low.unit, length, fault or TWO_KINDS)
    if not low.unit or low.unit == high.unit:
        unit, bottom, top = high.unit, low.value, high.value
        if top < bottom and not fault:
            if top < 1:
                return WrittenFigure(bottom + top, bottom + top, unit, length, HYPHEN)
            fault, bottom, top = BACKWARDS, top, bottom
        return WrittenFigure(bottom, top, unit, length, fault)
    one, other = UNITS[low.unit], UNITS.get(high.unit)
    if other is None or one.dimension != other.dimension or not one.factor or not other.factor:
        return WrittenFigure(low.value, low.value, low.unit, length, fault or TWO_KINDS)
    if one.offset or other.offset:
        return WrittenFigure(low.value, low.value, low.unit, length, fault or TWO_KINDS)
    small = one if one.factor < other.factor else other
    bottom, top = low.value * one.factor / small.factor, high.value * other.factor / small.factor
    if top < bottom and not fault:
        fault, bottom, top = BACKWARDS, top, bottom
    return WrittenFigure(bottom, top, small.name, length, fault)


def _quantity(body: str, start: int) -> _Part | None:
    """One number with its unit, and the smaller units of the same kind that follow it."""
    part = _single(body, start)
    while part is not None and not part.fault:
        last = part.smaller[-1][1] if part.smaller else part.unit
        at = part.end + 1
        if (
            last not in _FOLLOWED
            or body[part.end : at] != " "
            or not (body[at : at + 1].isdigit() or body[at : at + 1] in VULGAR)
        ):
            break
        small = _single(body, at)
        if small is None or small.fault:
            break
        if small.unit in COMPOUNDS.get(last, ()) and not part.smaller:
            value = part.value * steps_between(last, small.unit) + small.value
            part = _Part(value, small.unit, small.end, "", part.biggest or part.unit)
        elif small.unit in SMALLER_MEASURES.get(last, ()) and is_less(small.value, small.unit, last):
            part = part._replace(end=small.end, smaller=(*part.smaller, (small.value, small.unit)))
        else:
            break
    return part


def _single(body: str, start: int) -> _Part | None:
    match = _QUANTITY.match(body, start)
    if match is None:
        return None
    written = match[2]
    fault = ""
    unit = ""
    if written is not None:
        unit = SPELLINGS.get(written.lstrip("°º ").lower(), "")
        if written == "c":
            fault = SMALL_C
        elif not unit:
            unit = LONG_FORMS.get(written.lower(), "")
            if unit:
                fault = LONG_FORM
            else:
                match = _BARE.match(body, start)
                if match is None:
                    return None
    number = match[1]
    if is_too_long(number):
        return _Part(Fraction(0), unit, match.end(), TOO_LONG)
    value = value_of(number)
    if value is None:
        return _Part(Fraction(0), unit, match.end(), BY_ZERO)
    if len(number) > 4 and number[-4] == "." and unit in _COARSE and number[0] != "0" and not fault:
        fault = THOUSANDS
    if fault in ("", LONG_FORM) and _is_two_figures(number, unit):
        fault = SLASH
    if " " in number and (number[0] == "0" or number.index(" ") > 2) and not fault:
        fault = BEFORE_FRACTION
    return _Part(value, unit, match.end(), fault)


def _is_two_figures(number: str, unit: str) -> bool:
    """Whether `240/220` may be two figures: as a fraction it is one or more, or a part of a degree, or of a time and odd."""
    match = _SLASHED.fullmatch(number)
    if match is None or not unit:
        return False
    above, below = int(match[1]), int(match[2])
    dimension = UNITS[unit].dimension
    return above >= below or dimension == "temperature" or (dimension == "time" and above > 1 and below > _PARTED_IN)
