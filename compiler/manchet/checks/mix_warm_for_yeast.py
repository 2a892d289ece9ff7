"""A mix so warm that yeast works poorly and the dough runs away, though nothing dies yet."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import is_alive
from manchet.checks.subject import Subject
from manchet.checks.warmth import hottest_place, mix_temperature
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "mix-warm-for-yeast"


def check(subject: Subject) -> Iterator[Diagnostic]:
    warm, death = limit("yeast-suffers-at"), limit("yeast-dies-at")
    if warm is None or death is None:
        return
    for stage in subject.formula.stages:
        if not is_alive(stage, subject.formula) or any(s.verb in ("simmer", "boil", "heat") for s in stage.steps):
            continue
        warmth = mix_temperature(subject, stage)
        if warm <= warmth < death:
            yield warning(
                NAME,
                hottest_place(subject, stage),
                f"{stage.name} comes out of the mix at about {subject.degrees(warmth)}; yeast suffers from {subject.degrees(warm)} on",
                "use cooler water, or let the hot part cool first",
            )
