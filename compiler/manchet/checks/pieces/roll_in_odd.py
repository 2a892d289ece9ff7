"""Far more or far less butter rolled in than a laminated dough carries."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import of_verbs
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold
from manchet.figures.limits.lookup import limit

NAME = "roll-in-odd"
ABOUT = ("verb lock in",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, most, dough = limit("roll-in-least"), limit("roll-in-most"), work.formula.dough
    if least is None or most is None or work.formula.preparation:
        return
    for step in of_verbs(dough.steps, "lock in"):
        blocks = (work.formula.stage(fold(goes.name)) for goes in step.goes)
        block = sum(stage.out_share for stage in blocks if stage is not None)
        base = sum(p.share for p in dough.portions if p.key not in {fold(g.name) for g in step.goes})
        if not block or not base or least <= block / base <= most:
            continue
        message = (
            f"the butter rolled in weighs {percent(block / base)} of the dough around it; "
            f"laminated doughs carry {percent(least)} to {percent(most)}"
        )
        yield report(NAME, step.place, message, "check the figure of the block: per cent there is of all flour")
