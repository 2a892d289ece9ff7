"""A hot scald, hot milk or melted butter on living yeast: the mix comes out hotter than yeast can live."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import is_alive
from manchet.checks.subject import Subject
from manchet.checks.warmth import hottest_place, mix_temperature
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import error

NAME = "mix-too-hot-for-yeast"


def check(subject: Subject) -> Iterator[Diagnostic]:
    death = limit("yeast-dies-at")
    if death is None:
        return
    for stage in subject.formula.stages:
        if not is_alive(stage, subject.formula) or any(s.verb in ("simmer", "boil", "heat") for s in stage.steps):
            continue
        warmth = mix_temperature(subject, stage)
        if warmth >= death:
            yield error(
                NAME,
                hottest_place(subject, stage),
                f"{stage.name} comes out of the mix at about {subject.degrees(warmth)}, and its yeast dies at {subject.degrees(death)}",
                "let the hot part cool first (`cool 1-2 h to 30 C`)",
            )
