"""Hotter than any oven of this kitchen goes."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import IN_OVEN

NAME = "oven-over-hottest"
ABOUT = ("kitchen oven",)


def check(work: Work) -> Iterator[Diagnostic]:
    ovens = work.kitchen.ovens
    known = [oven.hottest for oven in ovens if oven.hottest is not None]
    if not known or len(known) < len(ovens):
        return
    for step in work.formula.steps:
        if step.verb not in IN_OVEN or not step.heats:
            continue
        heat = min(h.celsius.low if h.celsius.low is not None else h.celsius.likely for h in step.heats)
        if heat > max(known):
            message = f"{degrees(work.kitchen, heat)} is asked for; {work.kitchen.name} has no oven over {degrees(work.kitchen, max(known))}"
            help = "bake longer at what the oven can do, or correct `hottest` in the kitchen"
            yield report(NAME, step.place, message, help)
