"""A scald that is never hot enough to swell its starch: it is only a soaker."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import is_alive
from manchet.checks.subject import Subject
from manchet.checks.warmth import mix_temperature
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import warning

NAME = "scald-not-hot"


def check(subject: Subject) -> Iterator[Diagnostic]:
    least = limit("scald-least")
    if least is None:
        return
    for stage in subject.formula.stages:
        if stage.word != "scald" or is_alive(stage, subject.formula):
            continue
        warmths = [mix_temperature(subject, stage)]
        for step in stage.steps:
            warmths += [r.value.likely for r in step.reaches if r.what in ("temperature", "core")]
            warmths += [heat.celsius.likely for heat in step.heats]
            if step.verb in ("boil", "simmer"):
                warmths.append(least)
        if max(warmths) >= least:
            continue
        yield warning(
            NAME,
            stage.place,
            f"{stage.name} gets no warmer than about {subject.degrees(max(warmths))}; starch swells from {subject.degrees(least)} on",
            "give the water its temperature (`water … at 98 C`), or a step `heat … to 65 C`",
        )
