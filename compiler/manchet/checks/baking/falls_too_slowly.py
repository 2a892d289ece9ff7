"""Two heats of one bake, the second sooner than an oven that only falls can have fallen to it."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.saying import degrees, duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.fixes import exchange_of
from manchet.diagnostics.reports import report
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.phases import too_soon
from manchet.quantities.printing import round_to

NAME = "falls-too-slowly"
ABOUT = ("kitchen oven",)


def check(work: Work) -> Iterator[Diagnostic]:
    told = set()
    for bake in bakes_of(work):
        for late in too_soon(bake) if bake.oven.falls and not bake.rises else ():
            if late.phase.place in told:
                continue
            told.add(late.phase.place)
            step = 10 if work.kitchen.degrees == "F" else 5
            wants, has = degrees(work.kitchen, late.wants), degrees(work.kitchen, round_to(late.has / step, 0) * step)
            name = bake.oven.name or "the oven"
            message = f"{name} is asked for {wants} after {duration(late.after)}; by the fall the kitchen gives it then still has about {has}"
            help = f"write about what it has then: `{'falling to' if late.is_end else 'at'} {has}`, or a longer time before it"
            yield report(NAME, late.phase.place, message, help, fixes=exchange_of(late.phase.place, wants, has))
