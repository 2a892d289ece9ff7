"""A preferment that is left to ripen, with nothing alive in it."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import flour_in, is_alive, of_verbs
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.syntax.vocabulary import BY_CULTURE, PREFERMENTS

NAME = "preferment-without-leaven"
ABOUT = ("verb ripen",)


def check(work: Work) -> Iterator[Diagnostic]:
    for stage in work.formula.stages:
        if stage.word not in PREFERMENTS or not flour_in(stage):
            continue
        if stage.from_nothing or is_alive(stage, work.formula) or not any(of_verbs(stage.steps, "ripen")):
            continue
        needs = "a culture" if stage.word in BY_CULTURE else "yeast"
        message = f"{stage.name} is to ripen, but there is no {needs.removeprefix('a ')} in it"
        help = (
            f"add {needs}; write `start from nothing` if it is meant to catch its own, "
            "or make it a `stage` if it is only flour resting in water"
        )
        yield report(NAME, stage.place, message, help)
