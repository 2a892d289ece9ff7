"""A bread that should rise has no yeast, no culture and no raising agent."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import has_leaven
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import RISES

NAME = "nothing-raises-it"
ABOUT = ("unraised",)

EGGS = Fraction(20, 100)
"""Egg, of all flour, that holds what steam has lifted: choux, popovers, puffs of starch and cheese. Our rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    if not formula.bread.risen or has_leaven(formula) or _by_steam(work):
        return
    message = f"nothing raises {formula.name}: it has no yeast, no culture and no raising agent"
    help = "add the yeast or the levain; an unraised bread may be of kind `flatbread` or `crisp`"
    yield report(NAME, formula.place, message, help)


def _by_steam(work: Work) -> bool:
    """Whether steam lifts it, between layers of fat or in a skin of egg: nothing then says that it is to ferment or prove."""
    if any(step.verb in RISES for step in work.formula.steps):
        return False
    layered = any(step.verb == "lock in" for step in work.formula.steps)
    return layered or work.totals.by_class.get("egg", Fraction(0)) >= EGGS
