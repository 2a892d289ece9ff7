"""Dried vegetables, herbs or mushrooms kept under fat: whether they are dry to the middle only the baker knows."""

from collections.abc import Iterator

from manchet.batch.work import Work
from manchet.checks.looking import WETS, fat_share, portions
from manchet.checks.saying import percent
from manchet.diagnostics.diagnostic import Diagnostic
from manchet.diagnostics.reports import report
from manchet.figures.limits.lookup import limit
from manchet.larder.foods import dried_plant

NAME = "dried-under-fat"
ABOUT = ("good for",)


def check(work: Work) -> Iterator[Diagnostic]:
    formula, much = work.formula, limit("under-oil-fat-least")
    there, fat = tuple(portions(formula)), fat_share(formula)
    if much is None or fat < much or any(p.ingredient and p.ingredient.class_ in WETS for p in there):
        return  # soaked, they are wet: the sheet has the caution
    for plant in there:
        if plant.ingredient is not None and dried_plant(plant.ingredient, plant.name):
            message = (
                f"{plant.name} under fat ({percent(fat)} of it): dry to the middle, or soft, half dried or soaked?"
            )
            help = (
                "only what snaps is dry; soft, write its water into the file, and the sheet has the caution on botulism"
            )
            yield report(NAME, plant.place, message, help)
