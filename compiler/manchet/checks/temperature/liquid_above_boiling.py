"""Water or milk weighed hotter than it can be: it boils away at 100 C. Nearly always degrees Fahrenheit."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import is_alive
from manchet.checks.saying import celsius
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "liquid-above-boiling"
ABOUT = ("warm",)
_BOILS = frozenset({"water", "liquid", "dairy"})


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("liquid-most")
    if most is None:
        return
    for stage in work.formula.stages:
        if is_alive(stage, work.formula):
            continue  # there it is too hot for what lives, long before it boils
        for portion in stage.portions:
            warmth = portion.celsius
            if portion.ingredient is None or portion.ingredient.class_ not in _BOILS:
                continue
            if warmth is not None and warmth > most:
                message = f"{portion.name} at {celsius(warmth)} cannot be: it boils near 100 C"
                help = f"write `{celsius(warmth)[:-2]} F` if you meant Fahrenheit ({celsius((warmth - 32) * 5 / 9)})"
                fixes = exchange_of(portion.place, celsius(warmth), f"{celsius(warmth)[:-2]} F")
                yield report(NAME, portion.place, message, help, fixes=fixes)
