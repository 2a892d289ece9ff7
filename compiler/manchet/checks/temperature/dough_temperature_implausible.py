"""A dough temperature at which nothing living works, or warmer than any dough is mixed: often degrees Fahrenheit."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.looking import is_alive
from manchet.checks.saying import celsius
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "dough-temperature-implausible"
ABOUT = ("verb mix",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, most = limit("dough-temperature-least"), limit("dough-temperature-most")
    if least is None or most is None:
        return
    for stage in work.formula.stages:
        if not is_alive(stage, work.formula):
            continue
        for step in stage.steps:
            for reach in step.reaches:
                warmth = reach.value.likely
                if step.verb != "mix" or reach.what != "temperature":
                    continue
                if not least <= warmth <= most:
                    help = f"{celsius(warmth)[:-2]} F is {celsius((warmth - 32) * 5 / 9)}: write the unit you mean"
                    message = f"{stage.name} is to be mixed to {celsius(warmth)}, and nothing lives through that"
                    help = help if warmth > most else "check the figure and its unit"
                    yield report(NAME, step.place, message, help)
                elif _is_warm_for_a_dough(warmth) and stage.key == work.formula.dough.key:
                    message = f"{stage.name} is to be mixed to {celsius(warmth)}: doughs leave the mixer at 20 to 32 C"
                    yield report(NAME, step.place, message, "check the figure and its unit")


def _is_warm_for_a_dough(warmth: Fraction) -> bool:
    most = limit("dough-warm-most")
    return most is not None and warmth > most
