"""A preparation of egg or milk that is to be kept longer than chilled food may be."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import ingredients
from manchet.checks.saying import duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.foods import is_pasteurised
from manchet.larder.ingredient import Ingredient
from manchet.syntax.vocabulary import COOKS

NAME = "kept-too-long"
ABOUT = ("good for",)
CHILLED = frozenset({"egg", "dairy"})


def check(work: Work) -> Iterator[Diagnostic]:
    formula = work.formula
    raw, cooked = limit("kept-raw-egg-longest"), limit("kept-perishable-longest")
    sweet, frozen = limit("kept-by-sugar"), limit("freeze-warmest")
    if formula.good_for is None or raw is None or cooked is None or sweet is None or frozen is None:
        return
    seconds, warmth = formula.good_for.seconds, formula.good_for.celsius
    chilled = sorted((i for i in ingredients(formula) if i.class_ in CHILLED), key=lambda i: not _is_raw_egg(i))
    perishable = chilled[0] if chilled else None
    if perishable is None or (warmth is not None and warmth.likely <= frozen):
        return
    water, sugar = work.totals.water_in_all, work.totals.sugar
    if not water or sugar / (sugar + water) > sweet:
        return  # a dry mix, or one that its sugar keeps
    heated = any(step.verb in COOKS for step in formula.steps)
    is_raw = _is_raw_egg(perishable) and not heated
    most = raw if is_raw else cooked
    if seconds > most:
        kept = "raw egg out of its shell" if is_raw else "chilled food"
        message = f"{formula.name} holds {perishable.name} and is good for {duration(seconds)}; {kept} is kept {duration(most)} at most"
        yield report(NAME, formula.place, message, "shorten it, or freeze it; your own food law may ask for less")


def _is_raw_egg(ingredient: Ingredient) -> bool:
    return ingredient.class_ == "egg" and not is_pasteurised(ingredient.name)
