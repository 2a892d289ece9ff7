"""A poolish, biga or sponge whose yeast and hours do not belong together: often a slip by a factor of ten."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.fermentation.hours_for_minutes import too_long
from manchet.checks.looking import flour_in, of_verbs
from manchet.checks.saying import degrees, duration, percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.another_warmth import hours_at
from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import BY_LEAVEN, BY_YEAST, COLD, IN_FRIDGE

NAME = "preferment-yeast-against-time"
ABOUT = ("a yeast preferment",)
SHORTEST = Fraction(1)
"""Hours at 27 C: a shorter sponge carries all the yeast of its bread, or its time is the slip, another report."""
WARM = Fraction(27)
"""Celsius at which the hours are counted."""


def check(work: Work) -> Iterator[Diagnostic]:
    least, most = limit("preferment-yeast-hours-least"), limit("preferment-yeast-hours-most")
    if least is None or most is None:
        return
    for stage in work.formula.stages:
        flour = flour_in(stage)
        if stage.word not in BY_YEAST or not flour:
            continue
        yeasts = [p for p in stage.portions if p.ingredient is not None and p.ingredient.class_.endswith("yeast")]
        if any(p.stage for p in stage.portions) or not yeasts or any(of_verbs(stage.steps, *(COLD & IN_FRIDGE))):
            continue
        if any(too_long(work, step) for step in of_verbs(stage.steps, *BY_LEAVEN)):
            continue
        hours = hours_at(WARM, of_verbs(stage.steps, *BY_LEAVEN))
        if not hours or hours < SHORTEST:
            continue
        fresh = sum((fresh_equivalent(p.ingredient, p.share) for p in yeasts if p.ingredient), Fraction(0)) / flour
        if least <= fresh * 100 * hours <= most:
            continue
        high = fresh * 100 * hours > most
        says = f"{percent(sum((p.share for p in yeasts), Fraction(0)) / flour)} {yeasts[0].name}"
        message = (
            f"{says} is {'far too much' if high else 'far too little'} for {stage.name} to ripen the like of "
            f"{duration(hours * 3600)} at {degrees(work.kitchen, WARM)}"
        )
        help = f"check the decimal point: {percent(yeasts[0].share / flour * (Fraction(1, 10) if high else 10))}?"
        yield report(NAME, yeasts[0].place, message, help)
