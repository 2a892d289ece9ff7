"""A levain or poolish set for a room much warmer or colder than the kitchen says, and no prover to put it in."""

from collections.abc import Iterator

from manchet.checks.limits import limit
from manchet.checks.looking import PREFERMENTS, SOURS
from manchet.checks.reporting import celsius, note
from manchet.checks.subject import Subject
from manchet.diagnostics.diagnostic import Diagnostic

NAME = "room-far-from-written"


def check(subject: Subject) -> Iterator[Diagnostic]:
    air, most, coldest = subject.kitchen.air, limit("room-difference"), limit("room-from")
    if air is None or most is None or coldest is None:
        return
    if any(cold.word == "prover" for cold in subject.kitchen.colds):
        return
    for stage in subject.formula.stages:
        if stage.word not in PREFERMENTS | SOURS:
            continue
        for step in stage.steps:
            if step.verb != "ripen" or not step.heats or step.ramp is not None or step.where is not None:
                continue
            written = step.heats[0].celsius
            low = written.low if written.low is not None else written.likely
            high = written.high if written.high is not None else written.likely
            if low < coldest or low - most <= air <= high + most:
                continue
            yield note(
                NAME,
                step.place,
                f"{stage.name} ripens at {celsius(written.likely)}, and {subject.kitchen.name} is at {celsius(air)}",
                "say where it stands (`in …`), or write the time for the room as it is",
            )
