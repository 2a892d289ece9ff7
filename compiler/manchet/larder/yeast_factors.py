"""How much dried yeast does the work of fresh: two figures that a kitchen may say, and who prints them."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Factors(NamedTuple):
    """Grams that do the work of 1 g of fresh yeast."""

    active_dry: Fraction
    instant: Fraction
    source: str


USUAL = Factors(Fraction("0.4"), Fraction("0.33"), "Hamelman, Bread, 2004")
"""Where no kitchen says any."""
PRINTED = (
    USUAL,
    Factors(Fraction("0.5"), Fraction("0.33"), "usual trade figures, 1 : 0.5 : 0.33; common practice"),
    Factors(
        Fraction("0.4"),
        Fraction(1, 3),
        "Grain Craft, formula sheet (1.5 oz instant for 4.5 oz fresh); active dry by Hamelman",
    ),
    Factors(
        Fraction(3, 8),
        Fraction(9, 32),
        "older US household rule (3/8 for active dry), instant 3/4 of active dry; common practice",
    ),
)
ONCE_WORDS = {"hamelman": "0.33 0.40", "usual trade": "0.33 0.50", "grain craft": "1/3 0.40", "household": "9/32 3/8"}
"""What a kitchen could write before it wrote figures, folded, and the figures that say the same."""


def factors_of(instant: Fraction, active_dry: Fraction) -> Factors:
    """The factors with these two figures, and whose they are: the kitchen's own where nobody we know prints them."""
    own = Factors(active_dry, instant, "the kitchen's own factors")
    return next((one for one in PRINTED if (one.instant, one.active_dry) == (instant, active_dry)), own)
