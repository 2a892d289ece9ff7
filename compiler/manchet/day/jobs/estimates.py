"""How long work takes where neither file nor kitchen says so: Manchet's own estimates, marked as such wherever they count.

They are common practice of small bakehouses and have no source: a kitchen that times its own work (`shape 18 s each`) is
believed instead.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Estimate(NamedTuple):
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
    "mix": Estimate(once=300),
    "stretch": Estimate(once=180),
    "fold": Estimate(once=120),
    "stir": Estimate(once=60),
    "whisk": Estimate(once=120),
    "rub": Estimate(once=300),
    "blend": Estimate(once=180),
    "divide": Estimate(each=10),
    "shape": Estimate(each=15),
    "roll out": Estimate(each=20),
    "roll in": Estimate(each=5),
    "roll": Estimate(each=15),
    "press": Estimate(each=8),
    "cut": Estimate(each=5),
    "trim": Estimate(each=5),
    "slice": Estimate(each=5),
    "fill": Estimate(each=10),
    "spread": Estimate(each=10),
    "pipe": Estimate(each=8),
    "brush": Estimate(each=4),
    "sprinkle": Estimate(each=3),
    "dust": Estimate(each=2),
    "dip": Estimate(each=4),
    "grease": Estimate(each=3),
    "place": Estimate(each=4),
    "wrap": Estimate(each=5),
    "turn out": Estimate(each=4),
    "score": Estimate(each=5),
    "dock": Estimate(each=3),
    "lock in": Estimate(once=600),
    "heat": Estimate(once=300),
    "chop": Estimate(once=300),
    "grate": Estimate(once=300),
    "grind": Estimate(once=300),
    "peel": Estimate(once=600),
    "rinse": Estimate(once=120),
    "strain": Estimate(once=120),
    "drain": Estimate(once=60),
    "pack": Estimate(once=300),
    "do": Estimate(once=120),
}
SHORT = Estimate(once=30)
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
