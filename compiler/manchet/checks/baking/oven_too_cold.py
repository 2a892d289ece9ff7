"""An oven too cold to bake bread in: often a Celsius figure turned twice, or a figure that lost a digit."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import in_fahrenheit_by_its_line, of_verbs
from manchet.checks.saying import celsius, fahrenheit
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "oven-too-cold"
ABOUT = ("verb bake",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, slow = limit("oven-least", work.kind), limit("oven-slow-from")
    if least is None or slow is None:
        return
    seen = set()
    for _, steps in work.formula.ways:
        for step in of_verbs(steps, "bake"):
            if not step.heats or step.time is None or step.time.likely >= slow or step.place in seen:
                continue
            ends = [h.celsius for h in step.heats] + ([step.ramp[1]] if step.ramp is not None else [])
            heat = max(end.likely for end in ends)
            if heat >= least:
                continue
            seen.add(step.place)
            said = celsius(heat)
            meant = heat * 10 if heat < 40 else heat + 100
            if in_fahrenheit_by_its_line(step):
                said = f"{fahrenheit(heat)}, {said},"
                meant = heat * 9 / 5 + 32 if heat * 9 / 5 + 32 >= least else meant
            yield report(
                NAME,
                step.place,
                f"{said} is too cool to bake bread",
                f"did you mean {celsius(meant)}, or another unit?",
            )
