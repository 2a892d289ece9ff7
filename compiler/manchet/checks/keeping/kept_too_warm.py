"""A preparation of egg, milk or vegetables whose keeping temperature lets germs grow."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import ingredients
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.acid_and_water import keeps_without_cold
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import COOKS, WRAPS

NAME = "kept-too-warm"
ABOUT = ("good for",)
COLD, UNDER_OIL = Fraction(5), Fraction(4)
"""Degrees Celsius that the sheet prints; reported is what is warmer than any law has it."""
PERISHABLE = frozenset({"egg", "dairy", "vegetable"})


def check(work: Work) -> Iterator[Diagnostic]:
    most, hot, kept = limit("kept-cold-most"), limit("kept-hot-least"), work.formula.good_for
    if most is None or hot is None or kept is None or kept.celsius is None or not most < kept.celsius.likely < hot:
        return
    steps = work.formula.steps
    heated = next((n for n, step in enumerate(steps) if step.verb in COOKS), len(steps))
    is_packed = any(step.verb in WRAPS for step in steps[heated:])
    perishable = next((i for i in ingredients(work.formula) if _perishes(i, is_packed)), None)
    if perishable is not None:
        message = f"{work.formula.name} holds {perishable.name} and is to be kept at {degrees(work.kitchen, kept.celsius.likely)}"
        cold = degrees(work.kitchen, COLD)
        help = f"keep it at {cold} or colder, what is under oil at {degrees(work.kitchen, UNDER_OIL)}; law in Britain is {degrees(work.kitchen, most)}"
        yield report(NAME, work.formula.place, message, help)


def _perishes(ingredient: Ingredient, heated_and_packed: bool) -> bool:
    """Neither so sour nor so dry, as the larder says, that it keeps without the cold."""
    return ingredient.class_ in PERISHABLE and not keeps_without_cold(
        ingredient.ph, ingredient.water_activity, heated_and_packed
    )
