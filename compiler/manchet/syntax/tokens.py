"""What a line is made of before anything in it has a meaning: words, figures, quoted words, commas."""

from __future__ import annotations

import re
from fractions import Fraction

from manchet.quantities.reading import figure_at
from manchet.quantities.units import UNITS
from manchet.records import NamedTuple


class RawToken(NamedTuple):
    """A piece of a line. `kind` is WORD, QUOTED, COMMA, UNCLOSED (a quote that never ends), NUMBER, or the kind of a
    figure: MASS, VOLUME, TIME, TEMPERATURE, LENGTH, PERCENT, WHOLE, SLICES, TURNS, DENSITY.

    `text` is lower case for a word, what stands between the marks for a quote, and as written for all else.
    """

    kind: str
    start: int
    end: int
    text: str
    low: Fraction | None = None
    high: Fraction | None = None
    unit: str = ""
    fault: str = ""
    smaller: tuple[tuple[Fraction, str], ...] = ()


KINDS = {name: unit.dimension.upper() for name, unit in UNITS.items()} | {"": "NUMBER"}
WEIGHTS = frozenset({"MASS", "VOLUME", "WHOLE", "SLICES", "PERCENT"})

_OPEN_ENDS = ("least", "most")
_PIECE = re.compile(
    r'\s*(?:([^\W0-9_½⅓⅔¼¾⅛⅜⅝⅞][^\s,"“„]*)|([0-9.½⅓⅔¼¾⅛⅜⅝⅞])|("[^"]*"|“[^”]*”|„[^“”]*[“”])|(,)|(["“„])|([^\s,"“„]+))'
)
_WORD = re.compile(r'[^\s,"“„]+')


def pieces(body: str) -> list[RawToken]:
    """Every piece of a line, in order, in time linear in its length. Never fails."""
    found: list[RawToken] = []
    at, stop = 0, len(body)
    while at < stop:
        match = _PIECE.match(body, at)
        if match is None:
            break
        group = match.lastindex
        start, at = match.span(group or 0)
        if group == 6 and match[6][0] == "-":
            cold = figure_at(body, start + 1)
            if cold is not None and KINDS[cold.unit] == "TEMPERATURE":
                at = start + 1 + cold.length
                cold_low, cold_high = -cold.high, -cold.low
                found.append(
                    RawToken("TEMPERATURE", start, at, body[start:at], cold_low, cold_high, cold.unit, cold.fault)
                )
                continue
        if group == 1 or group == 6:
            found.append(RawToken("WORD", start, at, match[group].lower()))
        elif group == 2:
            figure = figure_at(body, start)
            if figure is None:
                word = _WORD.match(body, start)
                at = stop if word is None else word.end()
                found.append(RawToken("WORD", start, at, body[start:at].lower()))
            else:
                at = start + figure.length
                kind = KINDS[figure.unit]
                low: Fraction | None = figure.low
                high: Fraction | None = figure.high
                if len(found) > 1 and found[-1].text in _OPEN_ENDS and found[-2].text == "at":
                    if found[-1].text == "least":
                        high = None
                    else:
                        low = None
                    start = found[-2].start
                    del found[-2:]
                found.append(
                    RawToken(kind, start, at, body[start:at], low, high, figure.unit, figure.fault, figure.smaller)
                )
        elif group == 3:
            found.append(RawToken("QUOTED", start, at, body[start + 1 : at - 1]))
        elif group == 4:
            found.append(RawToken("COMMA", start, at, ","))
        else:
            found.append(RawToken("UNCLOSED", start, stop, body[start:]))
            at = stop
    return found


_SLICES = frozenset({"slice", "slices"})


def with_slices(raws: list[RawToken]) -> list[RawToken]:
    """The pieces of a line with each number of slices as one figure: `2 slices`, `22 slices`."""
    found: list[RawToken] = []
    for raw in raws:
        number = found[-1] if found else raw
        if raw.text in _SLICES and raw.kind == "WORD" and number.kind == "NUMBER":
            found[-1] = number._replace(kind="SLICES", end=raw.end, text=f"{number.text} {raw.text}", unit="slices")
        else:
            found.append(raw)
    return found
