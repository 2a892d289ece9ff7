"""What a tin holds to its rim, in millilitres, from its inside measurements in millimetres or from the water in it.

A label says little: what is sold as a 2 lb tin holds from 1.1 to 2.5 l. Rounded corners and a rolled rim make a tin hold
a little less than its measurements say; weighed water is right.
"""

from __future__ import annotations

from fractions import Fraction

PI = Fraction(355, 113)
"""Right to six decimals (Zu Chongzhi)."""

WATER = Fraction("0.998")
"""Grams a millilitre of water weighs at 20 C."""

MILLILITRE = 1000
"""Cubic millimetres."""


def box_volume(length: Fraction, width: Fraction, depth: Fraction) -> Fraction:
    """Straight sides."""
    return length * width * depth / MILLILITRE


def tapered_volume(top: tuple[Fraction, Fraction], bottom: tuple[Fraction, Fraction], depth: Fraction) -> Fraction:
    """Straight sloping sides: (top + 4 x middle + bottom) x depth / 6, exact for them."""
    middle = (top[0] + bottom[0]) * (top[1] + bottom[1])
    return (top[0] * top[1] + middle + bottom[0] * bottom[1]) * depth / 6 / MILLILITRE


def round_volume(top: Fraction, depth: Fraction, bottom: Fraction | None = None) -> Fraction:
    """Diameters; one, where the sides are straight."""
    return PI / 4 * tapered_volume((top, top), (top, top) if bottom is None else (bottom, bottom), depth)


def volume_by_water(grams: Fraction) -> Fraction:
    """The water that fills it, weighed."""
    return grams / WATER
