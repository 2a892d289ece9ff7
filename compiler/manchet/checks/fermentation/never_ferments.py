"""A dough with yeast or a culture that is given no time to rise, anywhere."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, is_alive, likely, of_verbs
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import COOKS, TIME_TO_RISE

NAME = "never-ferments"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    if not is_alive(work.dough.stage, work.formula):
        return
    for noun, steps in breads(work.formula):
        first_heat = next((i for i, step in enumerate(steps) if step.verb in COOKS), None)
        if first_heat is None:
            continue
        waits = list(of_verbs(steps[:first_heat], *TIME_TO_RISE))
        if likely(waits) >= 8 * 60 or any(step.time is None for step in waits):
            continue
        help = "add `ferment …` after the mix and `prove …` after the shaping"
        yield report(NAME, steps[first_heat].place, f"no step before this one gives {bread(noun)} time to rise", help)
        return
