"""A core hotter than bread can be: its water boils away at 100 C first. Nearly always degrees Fahrenheit."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import celsius
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "core-above-boiling"
ABOUT = ("core",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("core-most")
    if most is None:
        return
    for step in work.formula.steps:
        for reach in step.reaches:
            if reach.what == "core" and reach.value.likely > most:
                core = reach.value.likely
                message = f"a core of {celsius(core)} cannot be: the water in it holds it near 100 C"
                help = f"write `{celsius(core)[:-2]} F` if you meant Fahrenheit ({celsius((core - 32) * 5 / 9)})"
                fixes = exchange_of(step.place, celsius(core), f"{celsius(core)[:-2]} F")
                yield report(NAME, step.place, message, help, fixes=fixes)
