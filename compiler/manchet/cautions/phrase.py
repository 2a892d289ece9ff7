"""Words with figures in them: each figure is kept with its unit, and only a sheet turns it into text.

In `hazards.toml` a figure stands in braces, its unit first: `{C:4} or colder`, `{percent:3 to 4} lye`. A word that
depends on the country stands in braces alone: `{emergency}`, the number to call. A figure with a name after it is the
step's own where that is the stricter: `{C:4=cold}`; `{C:=heat}` is the step's own alone.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from fractions import Fraction
from typing import Literal, get_args

from manchet.records import NamedTuple

Unit = Literal["C", "h", "min", "days", "cm", "kg", "percent"]
"""Degrees Celsius, hours, minutes, days, centimetres, kilograms, per cent."""

LOCAL_WORDS = ("emergency",)

_BRACES = re.compile(r"\{([^{}]*)\}")


class Measured(NamedTuple):
    """A figure with its unit; `high` where it is a range."""

    unit: Unit
    low: Fraction | None
    """None where only a step can say it."""
    high: Fraction | None = None
    own: str = ""
    """What a step calls the figure of its own that stands here instead."""


class LocalWord(NamedTuple):
    """A word that each language has its own for: the one called `caution.NAME` in the printed words."""

    name: str


Wording = tuple[str | Measured | LocalWord, ...]
"""What is printed, in its parts. () for nothing."""


def wording_of(template: str) -> Wording:
    """The parts of a template, in their order. Raises `ValueError` on braces that say no figure."""
    parts: list[str | Measured | LocalWord] = []
    for number, said in enumerate(_BRACES.split(template)):
        if number % 2:
            parts.append(_in_braces(said))
        elif "{" in said or "}" in said:
            raise ValueError(f"a brace without the other: {said!r}")
        elif said:
            parts.append(said)
    return tuple(parts)


def _in_braces(said: str) -> Measured | LocalWord:
    unit, colon, figures = said.partition(":")
    if not colon and unit in LOCAL_WORDS:
        return LocalWord(unit)
    if unit not in get_args(Unit):
        raise ValueError(f"{{{said}}}: {unit!r} is not a unit; it is one of {', '.join(get_args(Unit))}")
    figures, _, own = figures.partition("=")
    low, _, high = figures.partition(" to ")
    if not (low or own):
        raise ValueError(f"{{{said}}}: neither a figure nor the name of one")
    return Measured(unit, Fraction(low) if low else None, Fraction(high) if high else None, own)  # type: ignore[arg-type]


def with_own(wording: Wording, own: Mapping[str, Fraction]) -> Wording:
    """The wording with the figures that a step has of its own; () where it lacks one that only a step can say."""
    said = tuple(
        part._replace(low=own[part.own], high=None) if isinstance(part, Measured) and part.own in own else part
        for part in wording
    )
    return () if any(isinstance(part, Measured) and part.low is None for part in said) else said
