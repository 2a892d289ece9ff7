"""Sugar so dense in the dough's water that ordinary yeast works slowly, and not much yeast to answer it."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import place_of_class
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.fermentation.fresh_yeast import fresh_equivalent
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import RISES

NAME = "sugar-against-ordinary-yeast"
ABOUT = ("class sweetener",)


def check(work: Work) -> Iterator[Diagnostic]:
    totals = work.totals
    most, dose = limit("sugar-in-water-most"), limit("sugar-yeast-dose")
    ordinary = [(yeast, share) for yeast, share in totals.yeasts if yeast.class_ == "yeast"]
    if most is None or dose is None or not ordinary or len(ordinary) < len(totals.yeasts):
        return
    sugar = totals.sugar - _late_sugar(work) - _layered_sugar(work)
    if sugar + totals.water_in_all <= 0 or sugar / (sugar + totals.water_in_all) <= most:
        return
    fresh = sum((fresh_equivalent(yeast, share) for yeast, share in ordinary), Fraction(0))
    far = limit("sugar-in-water-far")
    if fresh >= dose and (far is None or sugar / (sugar + totals.water_in_all) <= far):
        return
    message = (
        f"{percent(sugar / (sugar + totals.water_in_all))} of the dough's water phase is sugar, "
        f"and {ordinary[0][0].name} is made for less"
    )
    help = f"use sweet-dough yeast, or raise the yeast to the equivalent of {percent(dose)} fresh"
    if fresh >= dose:
        help = "use sweet-dough yeast, or check the figure of the sugar: more yeast does not answer that much"
    yield report(NAME, place_of_class(work.formula, "yeast"), message, help)


def _late_sugar(work: Work) -> Fraction:
    """Sugar that is added after the dough has fermented: it never meets the yeast at work."""
    dough = work.formula.dough
    waited = False
    late: set[str] = set()
    for step in dough.steps:
        waited = waited or step.verb in RISES
        if waited and step.verb == "add":
            late |= {goes.key for goes in step.goes}
    return sum(
        (
            p.share * work.larder.poured(p.ingredient).sugar
            for p in dough.portions
            if p.ingredient is not None and p.held and p.key in late
        ),
        Fraction(0),
    )


def _layered_sugar(work: Work) -> Fraction:
    """Sugar of a stage that is locked into the sheet of dough, or spread on it: it lies between the layers."""
    dough = work.formula.dough
    locked = {goes.key for step in dough.steps if step.verb == "lock in" for goes in step.goes}
    return sum(
        (
            p.share * work.larder.poured(p.ingredient).sugar
            for stage in work.formula.stages
            if stage.key in locked
            for p in stage.portions
            if p.ingredient is not None
        ),
        Fraction(0),
    )
