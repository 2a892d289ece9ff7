"""So hot for so long that the bread would be coal: degrees Fahrenheit written as Celsius."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import celsius, duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import IN_OVEN

NAME = "oven-fahrenheit-for-celsius"
ABOUT = ("in the oven",)


def check(work: Work) -> Iterator[Diagnostic]:
    hottest, longest, never = limit("oven-fierce"), limit("oven-fierce-longest"), limit("oven-most")
    if hottest is None or longest is None or never is None:
        return
    for step in work.formula.steps:
        if step.verb not in IN_OVEN or not step.heats or step.time is None:
            continue
        heat = max(h.celsius.likely for h in step.heats)
        minutes = step.time.likely
        fierce = heat >= hottest and minutes > longest and step.ramp is None
        if not fierce and heat <= never:
            continue
        message = (
            f"{celsius(heat)} for {duration(minutes)} burns any bread; "
            f"{celsius(heat)[:-2]} F would be {celsius((heat - 32) * 5 / 9)}"
        )
        yield report(NAME, step.place, message, f"write `{celsius(heat)[:-2]} F` if you meant Fahrenheit")
