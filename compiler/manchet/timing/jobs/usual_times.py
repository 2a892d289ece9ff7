"""How long work takes where neither file nor kitchen says so: Manchet's own estimates, marked as such wherever they count.

They are common practice of small bakehouses and have no source: a kitchen that times its own work (`shape 18 s each`) is
believed instead.
"""

from __future__ import annotations

from manchet.records import NamedTuple


class UsualTime(NamedTuple):
    """Seconds for a piece, and seconds for all of it together."""

    each: int = 0
    once: int = 0


WEIGH = 25
"""Seconds for a line of a bowl."""
LOAD = 10
TAKE_OUT = 5
"""Seconds for a piece through the door."""
WAITS = (30 * 60, 120 * 60)
"""Seconds, least and most, of a wait in the baker's own words that say nothing of how long (`do "leave it be" waiting`)."""

BY_VERB = {
    "mix": UsualTime(once=300),
    "stretch": UsualTime(once=180),
    "fold": UsualTime(once=120),
    "stir": UsualTime(once=60),
    "whisk": UsualTime(once=120),
    "rub": UsualTime(once=300),
    "blend": UsualTime(once=180),
    "divide": UsualTime(each=10),
    "shape": UsualTime(each=15),
    "roll out": UsualTime(each=20),
    "roll in": UsualTime(each=5),
    "roll": UsualTime(each=15),
    "press": UsualTime(each=8),
    "cut": UsualTime(each=5),
    "trim": UsualTime(each=5),
    "slice": UsualTime(each=5),
    "fill": UsualTime(each=10),
    "spread": UsualTime(each=10),
    "pipe": UsualTime(each=8),
    "brush": UsualTime(each=4),
    "sprinkle": UsualTime(each=3),
    "dust": UsualTime(each=2),
    "dip": UsualTime(each=4),
    "grease": UsualTime(each=3),
    "place": UsualTime(each=4),
    "wrap": UsualTime(each=5),
    "turn out": UsualTime(each=4),
    "score": UsualTime(each=5),
    "dock": UsualTime(each=3),
    "lock in": UsualTime(once=600),
    "heat": UsualTime(once=300),
    "chop": UsualTime(once=300),
    "grate": UsualTime(once=300),
    "grind": UsualTime(once=300),
    "peel": UsualTime(once=600),
    "rinse": UsualTime(once=120),
    "strain": UsualTime(once=120),
    "drain": UsualTime(once=60),
    "pack": UsualTime(once=300),
    "do": UsualTime(once=120),
}
SHORT = UsualTime(once=30)
"""For what only moves material: add, return, keep, top up."""


def usual_time(verb: str) -> UsualTime:
    return BY_VERB.get(verb, SHORT)
