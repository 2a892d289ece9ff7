"""Ice for water that has to be colder than the tap.

The trade's rule: ice = water x (tap - wanted) / (tap + 80) in Celsius, / (tap + 112) in Fahrenheit (Gisslen, Professional
Baking; 80 C is the latent heat of ice in degrees of water, 112 F is 144 BTU less 32). The two are one rule, and the ice
takes the place of so much water: it is weighed in the same jug and not on top.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.water.heat import ICE, LATENT

RULE = "ice = water x (tap - wanted) / (tap + 80), and so much less from the tap"
SOURCE = "Gisslen, Professional Baking, the ice rule (from memory); the table of Koerner Co. fits it"

ALL_ICE = -LATENT
"""Celsius of water that is all ice, by the rule: colder it cannot be."""


def ice_in(water: Fraction, tap: Fraction, wanted: Fraction, below: Fraction = Fraction(0)) -> Fraction:
    """Grams of ice among `water` grams, so that ice and tap water together stand at `wanted` Celsius.

    0 where the tap is cold enough. `below` is how many degrees under freezing the ice comes; the rule has it at 0. A
    `wanted` below 0 is a debt: the ice does not all melt in the water but in the dough. More than `water` when even ice
    alone is too warm: see `ALL_ICE`.
    """
    return max(water * (tap - wanted) / (tap + LATENT + ICE * below), Fraction(0))
