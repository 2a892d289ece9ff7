"""What is done to the air of an oven while something bakes in it: steam, and the vent opened or shut."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple

STEAM, OPEN, SHUT = "steam", "vent open", "vent closed"


class BakeEvent(NamedTuple):
    """`steam 10 s`, `vent open after 8 min`. `what` is "steam", "vent open" or "vent closed"."""

    what: str
    after: Fraction = Fraction(0)
    """Seconds from the beginning of the step; 0: at once."""
    seconds: Fraction | None = None
    """Of steam: how long, where the file says so."""
    millilitres: Fraction | None = None
    """Of steam: the water for it, where the file says so."""


def by_the_clock(event: BakeEvent) -> tuple[Fraction, int]:
    """By this events are sorted. At one moment the vent is shut before steam goes in, and is opened after it."""
    return event.after, (SHUT, STEAM, OPEN).index(event.what)
