"""Kinds of yeast brought to one, and how fast yeast works at a temperature."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from manchet.formula.model import Step
from manchet.larder.ingredient import Ingredient

INSTANT = Fraction(100, 33)
ACTIVE_DRY = Fraction(5, 2)
"""Grams of fresh yeast that 1 g replaces: fresh : active dry : instant = 1 : 0.4 : 0.33 (Hamelman, Bread, 2004)."""

LEAST = Fraction("2.84")
BEST = Fraction("32.27")
MOST = Fraction("45.39")
"""Cardinal temperatures of baker's yeast in Celsius: Salvado et al., Appl. Environ. Microbiol. 77 (2011) 2292."""

COLDEST = Fraction(14)
HOTTEST = Fraction(40)
"""Outside these the reckoning is not used: in a fridge the dough's own slow cooling decides."""


def fresh_equivalent(ingredient: Ingredient, share: Fraction) -> Fraction:
    """The same raising power as fresh yeast, in the unit of `share`."""
    name = ingredient.name.casefold()
    if "fresh" in name or "compressed" in name:
        return share
    if "active" in name:
        return share * ACTIVE_DRY
    return share * INSTANT


def pace(celsius: Fraction) -> Fraction:
    """How fast yeast works at a temperature, 1 at 27 C.

    The cardinal model mu = mu_opt (T - Tmax)(T - Tmin)^2 / ((Topt - Tmin)((Topt - Tmin)(T - Topt)
    - (Topt - Tmax)(Topt + Tmin - 2T))), Rosso et al. 1993; an average of strains, so an estimate.
    """
    return _growth(celsius) / _growth(Fraction(27))


def _growth(t: Fraction) -> Fraction:
    if not LEAST < t < MOST:
        return Fraction(0)
    below = BEST - LEAST
    return (t - MOST) * (t - LEAST) ** 2 / (below * (below * (t - BEST) - (BEST - MOST) * (BEST + LEAST - 2 * t)))


def hours_at_27(steps: Iterable[Step]) -> Fraction | None:
    """The waiting of some steps as hours at 27 C; None where a temperature is unsaid or outside the reckoning."""
    total = Fraction(0)
    for step in steps:
        if step.time is None:
            continue
        if not step.heats or step.ramp is not None:
            return None
        warmth = step.heats[0].celsius.likely
        if not COLDEST <= warmth <= HOTTEST:
            return None
        total += step.time.likely / 3600 * pace(warmth)
    return total
