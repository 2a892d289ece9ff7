"""The trade's rule for the water: the temperatures of water, flour, room (and preferment) together make the base.

    water = number of readings x dough - flour - room - preferment - friction

The number counts the water: 3, or 4 with a preferment (US Navy training manual 14163; Hamelman, Bread, 2004). Friction is
printed in two ways, and one word serves for both: in the sum, taken off once (King Arthur Flour, San Francisco Baking
Institute, most of America), or in the dough, as degrees the mixer warms it by, which the sum counts as often as it has
readings (F. Wihlfahrt, A Treatise on Baking: the mean of the readings is the dough's temperature, and so much is taken
off for the machine). A figure of one kind read as the other is wrong by two thirds.

The rule knows no weights; its friction hides the heat of wetting and what the room does. It serves to correct a figure
that once came out right.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

RULE = "readings x dough temperature - friction; water = base - flour - room - preferment"
SOURCE = "US Navy training manual 14163; Hamelman, Bread, 2004"


def in_the_sum(friction_of_dough: Fraction, readings: int) -> Fraction:
    """Friction as the sum of `readings` has it, from degrees of the dough."""
    return readings * friction_of_dough


def in_the_dough(friction_of_sum: Fraction, readings: int) -> Fraction:
    return friction_of_sum / readings


def base(dough: Fraction, readings: int, friction: Fraction) -> Fraction:
    """What the readings have to add up to; `friction` in the sum."""
    return readings * dough - friction


def water(dough: Fraction, others: Sequence[Fraction], friction: Fraction) -> Fraction:
    """The water by the rule, from the other readings; `friction` in the sum. Any one scale, C or F, throughout."""
    return base(dough, len(others) + 1, friction) - sum(others)


def friction(dough: Fraction, readings: Sequence[Fraction]) -> Fraction:
    """Friction in the sum, from a mix that was measured: all its readings, the water's too, and what came out."""
    return len(readings) * dough - sum(readings)
