"""A poolish that is no batter, or a biga that is one."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import flour_in
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit

NAME = "preferment-wetness-odd"
ABOUT = ("a yeast preferment",)


def check(work: Work) -> Iterator[Diagnostic]:
    for stage in work.formula.stages:
        least, most = limit(f"{stage.word}-water-least"), limit(f"{stage.word}-water-most")
        flour = flour_in(stage)
        if least is None or most is None or not flour or any(p.stage for p in stage.portions):
            continue
        water = sum(p.share * work.larder.poured(p.ingredient).water for p in stage.portions if p.ingredient) / flour
        if least <= water <= most:
            continue
        message = (
            f"{stage.name} has {percent(water)} water on its flour; a {stage.word} has {percent(least)} "
            f"to {percent(most)}"
        )
        yield report(NAME, stage.place, message, "check the figure, or call it a `preferment`")
