"""A dough with yeast or a culture that is given no time to rise, anywhere."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import FERMENTING, HEATING, breads, dough_of, is_alive, likely, of_verbs
from manchet.checks.saying import bread
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report

NAME = "never-ferments"
ABOUT = ()


def check(work: Work) -> Iterator[Diagnostic]:
    dough = dough_of(work.formula)
    if dough is None or work.formula.preparation or not is_alive(dough, work.formula):
        return
    for noun, steps in breads(work.formula):
        first_heat = next((i for i, step in enumerate(steps) if step.verb in HEATING), None)
        if first_heat is None:
            continue
        waits = list(of_verbs(steps[:first_heat], *FERMENTING, "chill", "thaw"))
        if likely(waits) >= 8 * 60 or any(step.time is None for step in waits):
            continue
        help = "add `ferment …` after the mix and `prove …` after the shaping"
        yield report(NAME, steps[first_heat].place, f"no step before this one gives {bread(noun)} time to rise", help)
        return
