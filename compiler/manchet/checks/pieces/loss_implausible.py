"""A step that loses more than such a step can: often a slipped decimal point, or what is left written for what is lost."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.formula.model import Step, Who
from manchet.syntax.vocabulary import BAKES, IN_POT, SETS_WARMTH

NAME = "loss-implausible"
ABOUT = ("loses",)
EXPLAINS = ("bake-loss-implausible", "hydration-high", "hydration-low", "stiff-dough-on-fast")


def check(work: Work) -> Iterator[Diagnostic]:
    said = set()
    for step in work.formula.steps:
        most = limit(f"{_where(step)}-loses-most")
        if step.loses is None or most is None or step.loses <= most or step.place in said:
            continue
        said.add(step.place)
        message = f"`{step.verb}` loses {percent(step.loses)}; over {percent(most)} is unheard of"
        kept = 1 - step.loses
        help = f"`loses {percent(kept)}` if {percent(step.loses)} is what is left" if kept <= most else "weigh it once"
        yield report(NAME, step.place, message, f"{help}; check the decimal point")


def _where(step: Step) -> str:
    """What takes it: the heat, the pot, the knife, or time alone."""
    if step.verb in BAKES:
        return "in-heat"
    if step.verb in IN_POT:
        return "in-pot"
    return "by-hand" if step.who is Who.HANDS and step.verb not in SETS_WARMTH else "standing"
