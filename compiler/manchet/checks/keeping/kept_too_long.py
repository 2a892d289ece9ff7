"""A preparation of egg or milk that is to be kept longer than chilled food may be."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import ingredients
from manchet.checks.saying import duration
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
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
    seconds, warmth = formula.good_for
    perishable = next((i for i in ingredients(formula) if i.class_ in CHILLED), None)
    if perishable is None or (warmth is not None and warmth.likely <= frozen):
        return
    water, sugar = work.totals.water_in_all, work.totals.sugar
    if not water or sugar / (sugar + water) > sweet:
        return  # a dry mix, or one that its sugar keeps
    heated = any(step.verb in COOKS for step in formula.steps)
    most = raw if perishable.class_ == "egg" and not heated else cooked
    if seconds > most:
        message = f"{formula.name} holds {perishable.name} and is good for {duration(seconds)}; chilled food is kept {duration(most)} at most"
        yield report(NAME, formula.place, message, "shorten it, or freeze it; your own food law may ask for less")
