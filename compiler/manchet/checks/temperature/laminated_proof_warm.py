"""Laminated pieces proved so warm that the butter between the layers runs out before the oven sets them."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import breads, locks_in_butter
from manchet.checks.saying import degrees
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import RISES_WARM

NAME = "laminated-proof-warm"
ABOUT = ("verb lock in",)


def check(work: Work) -> Iterator[Diagnostic]:
    most = limit("laminated-proof-most")
    stops = limit("fermentation-most", work.kind)
    if most is None or stops is None:
        return
    for _, steps in breads(work.formula):
        locked = next((n for n, step in enumerate(steps) if locks_in_butter(work.formula, step)), None)
        for step in steps[locked + 1 :] if locked is not None else ():
            if step.verb not in RISES_WARM or not step.heats:
                continue
            ends = [step.heats[0].celsius, *((step.ramp[1],) if step.ramp is not None else ())]
            warmth = max(end.likely for end in ends)
            if most < warmth <= stops:
                message = (
                    f"`{step.verb}` at {degrees(work.kitchen, warmth)}: the butter between the layers softens and runs"
                )
                yield report(
                    NAME, step.place, message, f"prove it at {degrees(work.kitchen, most)} or cooler, and longer"
                )
