"""A levain or sour from little seed that is used before it can have risen."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import flour_in, of_verbs, shares_of
from manchet.checks.saying import percent, span
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import BY_CULTURE

NAME = "levain-unripe"
ABOUT = ("class culture",)


def check(work: Work) -> Iterator[Diagnostic]:
    little, short = limit("culture-seed-little"), limit("ripen-little-seed-shortest")
    slip = limit("ripen-shortest")
    if little is None or short is None or slip is None:
        return
    for stage in work.formula.stages:
        flour, seed = flour_in(stage), shares_of(stage, "culture")
        if stage.word not in BY_CULTURE or not flour or not seed or any(p.stage for p in stage.portions):
            continue
        ripens = [step for step in of_verbs(stage.steps, "ripen") if step.time is not None]
        total = sum((s.time.high if s.time.high is not None else s.time.likely for s in ripens if s.time), Fraction(0))
        if seed / flour <= little and ripens and slip <= total < short:
            first = ripens[0]
            assert first.time is not None
            message = (
                f"{stage.name} starts from {percent(seed / flour)} seed and ripens {span(first.time)}: "
                "it cannot be ripe by then"
            )
            yield report(NAME, first.place, message, "take more seed, or give it a night (12-16 h at 21 C for 10%)")
