"""The cautions of one formula: each hazard in full at its worst step, the formula's own before those of the house."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.batch.work import Work, once
from manchet.cautions.at import CautionPlace
from manchet.cautions.caution import Caution
from manchet.cautions.hazard import WORST_FIRST
from manchet.cautions.house import house_hazards_met
from manchet.cautions.met import beside_the_sheet, hazards_met

AT_A_STEP = 3
"""Cautions at most; but neither a top nor a warning is ever the one left out."""


@once
def cautions_of(work: Work) -> tuple[Caution, ...]:
    """The formula's own, then those of the house and of whoever eats; the worst first, else in the order of the work."""
    others = _once_a_step((*beside_the_sheet(work), *house_hazards_met(work)))
    return (*cautions_of_formula(work), *sorted(others, key=_grade))


@once
def cautions_of_formula(work: Work) -> tuple[Caution, ...]:
    """The worst first, else in the order of the work.

    A hazard met at several steps stands in full where it is worst, first; at the others with its limit alone, and not at
    all where it has no limit to read. Lye, hot fat and plants under fat stand in full wherever hands meet them.
    """
    found = _once_a_step(hazards_met(work))
    fullest: dict[str, Caution] = {}
    for one in found:
        there = fullest.get(one.name)
        if there is None or _grade(one) < _grade(there):
            fullest[one.name] = one
    shown = [one if one is fullest[one.name] or one.hazard.in_full else one._replace(level="limit") for one in found]
    said = [one for one in shown if one.level != "limit" or one.hazard.british.boxes]
    return tuple(_few_at_a_step(said))


def _grade(one: Caution) -> int:
    return WORST_FIRST.index(one.level)


def _few_at_a_step(found: Iterable[Caution]) -> list[Caution]:
    there: dict[CautionPlace, int] = {}
    left = []
    for one in sorted(found, key=_grade):
        there[one.at] = there.get(one.at, 0) + 1
        if there[one.at] <= AT_A_STEP or one.level in ("top", "warning"):
            left.append(one)
    return left


def _once_a_step(found: Iterable[Caution]) -> list[Caution]:
    """A hazard once at each step, at its worst: a step before the dividing is on the way to every bread."""
    worst: dict[tuple[object, ...], Caution] = {}
    for one in found:
        key = (one.name, one.at)
        there = worst.get(key)
        if there is None or _grade(one) < _grade(there):
            worst[key] = one
    return list(worst.values())
