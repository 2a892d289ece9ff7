"""An amount too small to weigh, weighed after all: stir a weighable amount into water or flour, and use part of it."""

from __future__ import annotations

from fractions import Fraction
from typing import NamedTuple


class Dilution(NamedTuple):
    """Stir `dissolve` grams into `into` grams of `carrier`, and use `use` grams of that.

    `use` brings `brings` grams of the ingredient; the rest of it is carrier, and is taken off the carrier's own line.
    """

    dissolve: Fraction
    into: Fraction
    carrier: str
    use: Fraction
    brings: Fraction

    @property
    def carried(self) -> Fraction:
        """Grams of the carrier that come with it."""
        return self.use - self.brings
