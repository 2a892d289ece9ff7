"""What is poured off is gone from the vessel at that step, by its own weight; where that cannot be, it is told."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.formula.model import Step
from manchet.larder.ingredient import Ingredient

NOTHING = Fraction(0)


def water_in(ingredient: Ingredient | None) -> Fraction:
    """The part of it that is water, 1 for water. What the larder does not know counts as none: then water in all stays as it was."""
    if ingredient is None:
        return NOTHING
    return Fraction(1) if ingredient.class_ == "water" else ingredient.composition.get("water", NOTHING) / 100


def poured_of_base(step: Step, base: Fraction) -> Step:
    """With its share of what 100 % means in its stage."""
    poured = step.poured
    if poured is None or not poured.in_percent:
        return step
    return step._replace(poured=poured._replace(share=poured.share * base))


def per_flour(step: Step, per: Fraction) -> Step:
    """With its share divided by the unit that the way of writing worked in."""
    return step if step.poured is None else step._replace(poured=step.poured._replace(share=step.poured.share / per))


def wrongly_poured(steps: Iterable[Step], in_percent: bool, left: Sequence[Fraction]) -> Iterator[Diagnostic]:
    """`left` is what the vessel has in it after each step that pours off; what comes after dividing has no vessel."""
    pouring = [(step, step.poured) for step in steps if step.poured is not None]
    for at, (step, poured) in enumerate(pouring):
        if at >= len(left):
            message = "what is poured off here is told after the dough is divided, where there is no vessel any more"
            help = "say what the pieces lose at their step, as in `drain, loses 2%`"
            yield report("pours-off-too-much", step.place, message, help)
        elif in_percent and not poured.in_percent:
            message = f"{poured.name} is poured off as a weight in a formula written in per cent"
            help = "write it in per cent, as in `pour off 20%`"
            yield report("percent-and-weight-mixed", step.place, message, help)
        elif left[at] <= 0:
            message = f"more {poured.name} is poured off than the vessel has in it"
            yield report("pours-off-too-much", step.place, message, "pour off less, or take out the line")
