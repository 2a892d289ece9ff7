"""More of a culture is taken than is kept for next time, so that it runs out."""

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.checks.saying import grams
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.diagnostics.suggest import fold

NAME = "culture-does-not-carry-on"
ABOUT = ("keep",)


def check(work: Work) -> Iterator[Diagnostic]:
    taken: dict[str, Fraction] = {}
    back: dict[str, Fraction] = {}
    for batch in work.batch.stages:
        for line in batch.weighed:
            ingredient = line.portion.ingredient
            if ingredient is not None and ingredient.class_ == "culture":
                taken[line.portion.key] = taken.get(line.portion.key, Fraction(0)) + line.grams
        for name, weight in (*batch.kept, *batch.returned):
            back[fold(name)] = back.get(fold(name), Fraction(0)) + weight
    for stage in work.formula.stages:
        for keep in stage.keeps:
            key = fold(keep.name)
            short = taken.get(key, Fraction(0)) - back.get(key, Fraction(0))
            if keep.how != "amount" or short <= 0:
                continue
            message = (
                f"this takes {grams(taken[key])} {keep.name} and keeps {grams(back.get(key, Fraction(0)))}: "
                f"{grams(short)} short for next time"
            )
            yield report(NAME, keep.place, message, f"write `keep enough as {keep.name}`, or keep {grams(taken[key])}")
