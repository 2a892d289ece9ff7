"""A seed of culture far outside what levains and sours are built on: often a slip by a factor of ten."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import flour_in
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.syntax.vocabulary import BY_CULTURE

NAME = "seed-implausible"
ABOUT = ("class culture",)


def check(work: Work) -> Iterator[Diagnostic]:
    least, most = limit("culture-seed-least"), limit("culture-seed-most")
    if least is None or most is None:
        return
    for stage in work.formula.stages:
        flour = flour_in(stage)
        if stage.word not in BY_CULTURE or not flour or any(p.stage for p in stage.portions):
            continue
        for portion in stage.portions:
            if portion.ingredient is None or portion.ingredient.class_ != "culture":
                continue
            seed = portion.share / flour
            if least <= seed <= most:
                continue
            message = (
                f"{percent(seed)} seed in {stage.name}; levains and sours are built on {percent(least)} "
                f"to {percent(most)} of their flour"
            )
            yield report(NAME, portion.place, message, "check the decimal point")
