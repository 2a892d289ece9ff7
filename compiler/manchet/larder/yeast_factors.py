"""Factors between fresh and dried yeast, by whoever prints them: a kitchen chooses."""

from __future__ import annotations

from fractions import Fraction

from manchet.records import NamedTuple


class Factors(NamedTuple):
    """Grams that do the work of 1 g of fresh yeast."""

    active_dry: Fraction
    instant: Fraction
    source: str


USUAL = "Hamelman"
FACTORS = {
    USUAL: Factors(Fraction("0.4"), Fraction("0.33"), "Hamelman, Bread, 2004"),
    "usual trade": Factors(Fraction("0.5"), Fraction("0.33"), "usual trade figures, 1 : 0.5 : 0.33; common practice"),
    "Grain Craft": Factors(
        Fraction("0.4"),
        Fraction(1, 3),
        "Grain Craft, formula sheet (1.5 oz instant for 4.5 oz fresh); active dry by Hamelman",
    ),
    "household": Factors(
        Fraction(3, 8),
        Fraction(9, 32),
        "older US household rule (3/8 for active dry), instant 3/4 of active dry; common practice",
    ),
}
"""By the name a kitchen chooses them with."""
