"""The preparations that some breads want: how much of each in all, by whom, and how much is made of it."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from fractions import Fraction

from manchet.batch.preparations_needed import preparations_needed
from manchet.batch.work import Work
from manchet.figures.baths import amount_of, boiled_in, dipped_into
from manchet.formula.model import Formula
from manchet.sheets.form import Ahead

Sized = Callable[[Formula, Fraction | None], Work | None]
"""The work of so many grams of a preparation, None for what its file makes; None where it cannot be made."""


def made_ahead(
    users: Sequence[Work], known: Mapping[str, Formula], sized: Sized, at_home: bool, more: Iterable[str] = ()
) -> tuple[Ahead, ...]:
    """Each preparation that the users want, in the order it is made: what goes into another stands before it.

    At home, and of what is in per cent, so much is made as is wanted. In a bakery the written amount is made, or more where more is wanted; `more` are
    keys of what is made whoever wants it. A bath is never less than its vessel needs.
    """
    written = {key: work for key, formula in known.items() if (work := sized(formula, None)) is not None}
    wanted: dict[str, dict[str, Fraction]] = {key: {} for key in more if key in written}
    dipped: set[str] = set()
    boiled: set[str] = set()

    def add(user: Work) -> None:
        dipped.update(dipped_into(user.batch))
        boiled.update(boiled_in(user.batch))
        for key, grams in preparations_needed(user.batch).items():
            if key in written:
                by = wanted.setdefault(key, {})
                by[user.formula.name] = by.get(user.formula.name, Fraction(0)) + grams

    for user in users:
        add(user)
    found: list[Ahead] = []
    for key in _users_first(written):
        if key not in wanted:
            continue
        in_all = sum(wanted[key].values(), Fraction(0))
        kettle = written[key].batch.dough if key in boiled else Fraction(0)
        made = amount_of(known[key], in_all, key in dipped, kettle)
        enough = not (at_home or known[key].is_in_percent) and made.grams <= written[key].batch.dough
        work = written[key] if enough else sized(known[key], made.grams)
        if work is not None:
            found.insert(0, Ahead(work, tuple(wanted[key].items()), key in dipped, None if enough else made.because))
            add(work)
    return tuple(found)


def _users_first(works: Mapping[str, Work]) -> list[str]:
    """The keys, each after all that want it. What wants itself in a circle is reported where names are bound."""
    order: dict[str, None] = {}

    def visit(key: str, above: frozenset[str]) -> None:
        for used in preparations_needed(works[key].batch):
            if used in works and used not in above and used not in order:
                visit(used, above | {used})
        order.setdefault(key)

    for key in works:
        visit(key, frozenset({key}))
    return list(reversed(order))
