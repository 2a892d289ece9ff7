"""Fat too cool to seal the piece or so hot that it smokes: often degrees Fahrenheit."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import celsius, degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "frying-temperature-odd"
ABOUT = ("verb fry",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, most = limit("fry-least"), limit("fry-most")
    if least is None or most is None:
        return
    for step in work.formula.steps:
        if step.verb != "fry" or not step.heats or least <= step.heats[0].celsius.likely <= most:
            continue
        heat = step.heats[0].celsius.likely
        message = f"frying at {degrees(work.kitchen, heat)}; doughs are fried at {degrees(work.kitchen, least)} to {degrees(work.kitchen, most)}"
        help = f"{celsius(heat)[:-2]} F is {celsius((heat - 32) * 5 / 9)}" if heat > most else "check the figure"
        yield report(NAME, step.place, message, help)
