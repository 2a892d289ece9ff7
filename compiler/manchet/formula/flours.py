"""The flours of overall are exactly 100 %, or there is a report that shows the sum."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Place
from manchet.diagnostics.reports import report
from manchet.formula.draft import Item
from manchet.formula.percents import percent
from manchet.formula.shares import is_flour
from manchet.records import NamedTuple


class Overall(NamedTuple):
    """What `overall` says, and how much of it could be read: what could not be is not said to be missing."""

    lines: tuple[Item, ...]
    whole: bool
    flours_whole: bool
    """Every line that may be a flour could be read."""
    place: Place
    slips: tuple[str, ...] = ()
    """The lines, folded, that could not be read, or whose names or amounts mean nothing here."""


def flour_reports(overall: Overall, overruled: dict[str, bool]) -> Iterator[Diagnostic]:
    """One report if the lines that count as flour do not come to 1; it names a line that may have been meant as one."""
    lines = overall.lines
    flours = [item for item in lines if is_flour(item, overruled)]
    total = sum((item.figure for item in flours), Fraction(0))
    if total == 1 or not overall.flours_whole:
        return
    listed = " + ".join(f"{i.meaning.name} {percent(i.figure)}" for i in flours) or "no line counts as flour"
    help = "change one of them so that they add up to 100%"
    doubtful = [i.meaning.name for i in lines if not is_flour(i, overruled) and _in_doubt(i)]
    if doubtful:
        help += f"; or say `{doubtful[0]} …, counted as flour`"
    yield report("flours-not-100", overall.place, f"the flours of overall come to {percent(total)}: {listed}", help)


def _in_doubt(item: Item) -> bool:
    """Whether a line that was not taken as flour might have been meant as one."""
    ingredient = item.meaning.ingredient
    return ingredient is not None and (ingredient.class_ == "grain" or item.flour is False)
