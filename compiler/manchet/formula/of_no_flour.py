"""Per cents of a dough's own flour, in a dough that weighs none: they are of something else, and all move when a flour comes."""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.diagnostics.diagnostic import Diagnostic, Fix
from manchet.diagnostics.fixes import at_the_end, instead, stretch
from manchet.diagnostics.reports import report
from manchet.formula.draft import Draft, Item
from manchet.formula.percents import percent

SHOWN = 3
"""So many lines of a stage are told; those that follow move alike. Our rule."""


def per_cents_that_move(
    stages: Sequence[Draft], base: Fraction, any_flour: bool, sources: Sequence[Item]
) -> Iterator[Diagnostic]:
    """One report for a dough of whose lines none is flour. `stages` are those in per cent of its flour, the dough last; `base` is what
    all flour comes to in these per cents, or all that is weighed where nothing is flour (then not `any_flour`); `sources`
    are the lines of the dough that bring flour with them."""
    dough = stages[-1]
    moved = "; ".join(filter(None, (_moved(draft, base, sources) for draft in reversed(stages))))
    if base == 1 or not moved:
        return
    if not any_flour:
        whole = [item for item in dough.items if item.how == "percent" and item.figure == 1]
        message = f"nothing in the dough counts as flour: its per cents become shares of all that is weighed, {moved}"
        fixes = (_as_flour(whole[0]),) if len(whole) == 1 else ()
        help = "weigh the dough's flour as 100%, or say of the line that stands for it `counted as flour`"
        yield report("per-cents-of-no-flour", dough.place, message, "" if fixes else help, fixes=fixes)
        return
    names = " and ".join(item.meaning.name for item in sources) or "another stage"
    message = f"the dough weighs no flour: its per cents become those of the flour that comes with {names}, {moved}"
    fix = _enough_of(sources[0], base) if len(sources) == 1 else None
    help = "weigh the dough's flour as 100%, or write the formula with `overall`"
    if fix is not None:
        help = f"{fix.title}, which brings 100% flour, and the others stay; or {help}"
    yield report("per-cents-of-no-flour", dough.place, message, help, fixes=(fix,) if fix else ())


def _moved(draft: Draft, base: Fraction, sources: Sequence[Item]) -> str:
    """`water from 10% to 20.19%, salt from 2% to 4.04%`"""
    lines = [item for item in draft.items if item.how == "percent" and item.basis == "" and item not in sources]
    told = ", ".join(
        f"{one.meaning.name} from {percent(one.figure)} to {percent(one.figure / base)}" for one in lines[:SHOWN]
    )
    more = ", the others alike" if len(lines) > SHOWN else ""
    where = "" if draft.word == "dough" else f"in {draft.name} "
    return f"{where}{told}{more}" if told else ""


def _as_flour(item: Item) -> Fix:
    text = ", counted as flour"
    return at_the_end(item.place, text, f"write `{item.meaning.name} 100%{text}`")


_FIGURE = re.compile(r"[0-9]+(?:\.[0-9]+)?(?=\s*%)")


def _enough_of(item: Item, base: Fraction) -> Fix | None:
    """As much of the line as brings 100 % flour; None where that cannot be written exactly, or it is not one figure."""
    place = item.place
    typed = list(_FIGURE.finditer(place.text[place.column - 1 : place.end_column - 1]))
    text = percent(item.figure / base)
    if len(typed) != 1 or item.more or Fraction(text[:-1].replace(",", "")) / 100 != item.figure / base:
        return None
    return instead(stretch(place, *typed[0].span()), text[:-1].replace(",", ""), f"write `{item.meaning.name} {text}`")
