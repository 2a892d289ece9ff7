"""A soaker or scald with nothing wet in it: what is to be soaked stays dry."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import HOLDS_WATER

NAME = "soaker-without-water"
ABOUT = ("holds water",)


def check(work: Work) -> Iterator[Diagnostic]:
    for stage in work.formula.stages:
        if stage.word not in HOLDS_WATER or not stage.portions or any(p.stage for p in stage.portions):
            continue
        if stage.topped_up_share or any(p.ingredient is None for p in stage.portions):
            continue
        if not any(work.larder.poured(p.ingredient).water for p in stage.portions if p.ingredient is not None):
            first = stage.portions[0].name
            message = f"nothing in {stage.name} is wet: {first} cannot soak"
            yield report(NAME, stage.place, message, "add a line such as `water 120% of what is soaked`")
