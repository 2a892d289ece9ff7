"""A wait at another warmth than the prover, fridge or freezer that it names keeps."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report

NAME = "not-as-warm-as-its-place"
ABOUT = ("kitchen cold",)

WITHIN = 2
"""Degrees Celsius between a step and its place that are nobody's mistake: about as much as a cupboard's own thermometer is off. Our
rule."""


def check(work: Work) -> Iterator[Diagnostic]:
    for step in work.formula.steps:
        place = work.kitchen.cold(step.where[1]) if step.where is not None else None
        if place is None or place.keeps is None or not step.heats or step.ramp is not None:
            continue
        written = step.heats[0].celsius
        low = written.low if written.low is not None else written.likely
        high = written.high if written.high is not None else written.likely
        if low - WITHIN <= place.keeps <= high + WITHIN:
            continue
        keeps = degrees(work.kitchen, place.keeps)
        said = degrees(work.kitchen, written.likely)
        message = f"`{step.verb}` at {said} in {place.called}, which keeps {keeps}"
        fixes = exchange_of(step.place, said, keeps)
        yield report(NAME, step.place, message, f"write `at {keeps}`, or correct `keeps` in the kitchen", fixes=fixes)
