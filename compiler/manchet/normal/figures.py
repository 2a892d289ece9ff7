"""A figure with its unit as it is written in the normal form: short units, a plain hyphen, `1½`; digits as they were typed."""

from __future__ import annotations

import re

from manchet.quantities.numbers import NUMBER, VULGAR
from manchet.quantities.units import LONG_FORMS, SPELLINGS

_PART = re.compile(rf"([-–])|({NUMBER})(?: ?(%|[°º] ?[CcFf]|[A-Za-z]+(?:/[a-z]+)?))?")
_OPEN_END = re.compile(r"at\s+(least|most)\s+", re.IGNORECASE)
_FRACTION = re.compile(r"(?:([0-9]+) )?([0-9]+/[0-9]+)")

_ON_A_KEYBOARD = "½⅓⅔¼¾⅛⅜⅝⅞"
"""Signs that a figure may begin with."""
_SIGNS = {f"{VULGAR[sign].numerator}/{VULGAR[sign].denominator}": sign for sign in _ON_A_KEYBOARD}


def in_short(figure: str) -> str:
    """A text that was read as one figure, written shortly: `12-15 h`, `65%`, `1 lb 4 oz`, `at least 24 h`, `-18 C`."""
    opening = _OPEN_END.match(figure)
    said = f"at {opening[1].lower()} " if opening else ""
    follows = ""
    for dash, number, unit in _PART.findall(figure[opening.end() if opening else 0 :]):
        if dash:
            said, follows = f"{said}-", ""
            continue
        short = _short_unit(unit)
        said += follows + _short_number(number) + (" " if short not in ("", "%") else "") + short
        follows = " "
    return said


def _short_number(number: str) -> str:
    fraction = _FRACTION.fullmatch(number)
    if fraction is None:
        return number.replace(" ", "")  # `1 ½`
    sign = _SIGNS.get(fraction[2])
    return number if sign is None else f"{fraction[1] or ''}{sign}"


def _short_unit(written: str) -> str:
    unit = written.lstrip("°º ").lower()
    if unit in _PLURALS:
        return unit
    return SPELLINGS.get(unit) or LONG_FORMS.get(unit) or written


_PLURALS = frozenset({"cups", "inches"})
"""A unit that is a word keeps the number it is in."""
