"""A mix so warm that yeast works poorly and the dough runs away, though nothing dies yet."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import is_alive
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.mix_temperature import hottest_place, mix_temperature
from manchet.syntax.vocabulary import IN_POT

NAME = "mix-warm-for-yeast"
ABOUT = ("warm",)


def check(work: Work) -> Iterator[Diagnostic]:
    warm, death = limit("yeast-suffers-at"), limit("yeast-dies-at")
    if warm is None or death is None:
        return
    for stage in work.formula.stages:
        if not is_alive(stage, work.formula) or any(s.verb in IN_POT for s in stage.steps):
            continue
        warmth = mix_temperature(work, stage)
        if warm <= warmth < death:
            message = f"{stage.name} comes out of the mix at about {degrees(work.kitchen, warmth)}; yeast suffers from {degrees(work.kitchen, warm)} on"
            yield report(NAME, hottest_place(work, stage), message, "use cooler water, or let the hot part cool first")
