"""How long work takes where neither file nor kitchen says so: Manchet's own estimates, marked as such wherever they count.

They are common practice of small bakehouses and have no source: a kitchen that times its own work (`shape 18 s each`) is
believed instead.
"""

from __future__ import annotations

from fractions import Fraction

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
LIGHT = 600
"""Seconds to lay and light a fire."""
SWITCH_ON = 60
FOLD = 60
AT_THE_OVEN = 60
"""Seconds to open a damper, to turn the bread, to set another heat."""

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


def seconds_of(verb: str, pieces: Fraction) -> Fraction:
    """For so many pieces; pieces that nobody counts are one."""
    estimate = BY_VERB.get(verb, SHORT)
    return estimate.each * max(pieces, Fraction(1)) + estimate.once


COOLS_FOR = (30 * 60, 120 * 60)
"""Seconds, least and most, of a wait whose file says what is reached and not how long it takes."""
STANDS = 30 * 60
"""Seconds that a dough may stand between two works of the hand with no wait between them."""
KEEPS = 4 * 3600
"""Seconds that a stage which ends in work of the hand may stand before it is used, where nothing says how long it is good."""
STRETCH, STRETCH_PART = 5 * 60, Fraction(1, 10)
"""A wait of one figure may be longer by so many seconds, or by so much of itself, whichever is more."""
FOLD_EARLY, FOLD_LATE = 5 * 60, 10 * 60
"""Seconds by which a fold inside a wait may be early, and late."""
AT_THE_OVEN_LATE = 3 * 60
"""Seconds by which a damper may be opened late, a bread turned late."""
IN_THE_BOWL = 90 * 60
"""Seconds that a dough may stay in the mixer's bowl between two mixes; for longer waits it is tipped out."""
