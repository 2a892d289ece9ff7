"""A level the dough is to rise to that lies below the dough as it goes in, or below the floor of its tin."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import breads
from manchet.checks.pieces.tin_fill_odd import too_full
from manchet.checks.saying import grams, millimetres
from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.figures.losses.level import Stands, dough_levels, level_of
from manchet.quantities.printing import decimal
from manchet.syntax.vocabulary import RISES

NAME = "level-too-low"
ABOUT = ("level",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula, batch = work.formula, work.batch
    for noun, steps in breads(formula):
        stands = dough_levels(steps, noun if formula.is_parted else "", batch.pieces, work.kitchen)
        for step, where in zip(steps, stands, strict=True):
            for reach in step.reaches if step.verb in RISES else ():
                if reach.what == "volume" and reach.value.likely < 1:
                    yield _shrinks(step.place, reach.value.likely)
                elif reach.what == "below rim":
                    yield from _in_the_tin(work, step.place, where, reach.value.likely)


def _shrinks(place: Place, times: Fraction) -> Diagnostic:
    message = f"{decimal(times)} times its volume is less than it was"
    return report(NAME, place, message, "say how far it rises: twice is `to 2 times its volume`")


def _in_the_tin(work: Work, place: Place, stands: Stands, below: Fraction) -> Iterator[Diagnostic]:
    level, vessel = level_of(stands, below), stands.vessel
    if not level.sinks or level.depth is None or vessel is None:
        return
    dough = ""
    if level.before is not None and stands.grams is not None:
        if too_full(work, stands.grams, vessel):
            return
        dough = f"{grams(stands.grams)} of dough stands about {millimetres(_nearest_five(level.before * level.depth))} high in {vessel.name} before it rises"
    deep = f"{vessel.name} is {millimetres(level.depth)} deep"
    if below >= level.depth:
        help = "count from the rim down to the dough that has risen" + ("; " + dough if dough else "")
        yield report(NAME, place, f"{deep}: {millimetres(below)} below its rim is under its floor", help)
        return
    assert level.before is not None
    least = level.depth * (1 - level.before)
    help = f"{deep}: count from the rim down, to less than {millimetres(_nearest_five(least))} below it"
    yield report(NAME, place, f"{dough}; {millimetres(below)} below the rim is lower than that", help)


def _nearest_five(height: Fraction) -> Fraction:
    """As an estimate is drawn."""
    return Fraction(round(height / 5) * 5)
