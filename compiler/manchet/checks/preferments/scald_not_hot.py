"""A scald that is never hot enough to swell its starch: it is only a soaker."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import is_alive
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.figures.water.mix_temperature import mix_temperature
from manchet.syntax.vocabulary import BOILS

NAME = "scald-not-hot"
ABOUT = ("stage scald",)


def check(work: Work) -> Iterator[Diagnostic]:
    least = limit("scald-least")
    if least is None:
        return
    for stage in work.formula.stages:
        if stage.word != "scald" or is_alive(stage, work.formula):
            continue
        warmths = [mix_temperature(work, stage)]
        for step in stage.steps:
            warmths += [r.value.likely for r in step.reaches if r.what in ("temperature", "core")]
            warmths += [heat.celsius.likely for heat in step.heats]
            if step.verb in BOILS:
                warmths.append(least)
        if max(warmths) >= least:
            continue
        message = f"{stage.name} gets no warmer than about {degrees(work.kitchen, max(warmths))}; starch swells from {degrees(work.kitchen, least)} on"
        help = "give the water its temperature (`water … at 98 C`), or a step `heat … to 65 C`"
        yield report(NAME, stage.place, message, help)
