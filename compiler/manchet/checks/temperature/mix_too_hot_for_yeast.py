"""A hot scald, hot milk or melted butter on living yeast: the mix comes out hotter than yeast can live."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import is_alive
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.mix_temperature import hottest_place, mix_temperature
from manchet.syntax.vocabulary import IN_POT

NAME = "mix-too-hot-for-yeast"
ABOUT = ("warm",)


def check(work: Work) -> Iterator[Diagnostic]:
    death = limit("yeast-dies-at")
    if death is None:
        return
    for stage in work.formula.stages:
        if not is_alive(stage, work.formula) or any(s.verb in IN_POT for s in stage.steps):
            continue
        warmth = mix_temperature(work, stage)
        if warmth >= death:
            message = f"{stage.name} comes out of the mix at about {degrees(work.kitchen, warmth)}, and its yeast dies at {degrees(work.kitchen, death)}"
            help = "let the hot part cool first (`cool 1-2 h to 30 C`)"
            yield report(NAME, hottest_place(work, stage), message, help)
