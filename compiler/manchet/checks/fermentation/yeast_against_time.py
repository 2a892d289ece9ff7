"""Yeast, hours and warmth that do not belong together, though each looks right alone.

A straight dough is risen when its fresh yeast (in per cent) times its hours at 27 C comes to a certain figure.
The reckoning is silent where a preferment, a culture or a fridge does part of the work.
"""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.fermentation.hours_for_minutes import too_long
from manchet.checks.looking import of_verbs, place_of_class
from manchet.checks.saying import degrees, duration, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.another_warmth import hours_at
from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import RISES_WARM, SLOWED_BY_COLD

NAME = "yeast-against-time"
ABOUT = ("class yeast", "class sweet-dough yeast")
WARM = Fraction(27)
"""Celsius at which the hours are counted."""
SLOWED = Fraction(5, 100)
"""Sugar, of flour, above which it slows ordinary yeast."""

ALL_IT_CAN = Fraction(8, 100)
"""Fresh yeast, of flour, above which more of it hardly shortens a dough's rise any more. Our rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    totals, formula = work.totals, work.formula
    sweet = totals.sugar > SLOWED
    usual, factor = limit("yeast-hours-sweet" if sweet else "yeast-hours", work.kind), limit("yeast-hours-factor")
    too_much = limit("yeast-most", work.kind)
    if usual is None or factor is None or too_much is None or totals.cultures or totals.prefermented > 0:
        return
    fresh = sum((fresh_equivalent(yeast, share) for yeast, share in totals.yeasts), Fraction(0))
    if not 0 < fresh <= too_much:
        return
    for noun, steps in formula.ways:
        if any(of_verbs(steps, *SLOWED_BY_COLD)):
            continue
        if any(step.time is None or too_long(work, step) for step in of_verbs(steps, *RISES_WARM)):
            continue
        hours = hours_at(WARM, of_verbs(steps, *RISES_WARM))
        if not hours:
            continue
        needed = usual / (min(fresh, ALL_IT_CAN) * 100)
        if needed / factor <= hours <= needed * factor:
            continue
        said = " and ".join(f"{percent(share)} {yeast.name}" for yeast, share in totals.yeasts)
        whose = f"the dough for the {noun}" if formula.is_parted else formula.name
        if hours > needed:
            help = "is it a fresh-yeast figure with dry yeast? then take a third of it; else shorten the times"
        else:
            help = "is it a dry-yeast figure with fresh yeast? then take three times as much; else give it longer"
        message = (
            f"{said} usually raises a dough in about {duration(needed * 3600)} at {degrees(work.kitchen, WARM)}; "
            f"{whose} has the equivalent of {duration(hours * 3600)}"
        )
        yield report(NAME, place_of_class(formula, "yeast", "sweet-dough yeast"), message, help)
        return
