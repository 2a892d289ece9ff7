"""The cautions of one formula: each hazard in full at its worst step, the formula's own before those of the house."""

from __future__ import annotations

from collections.abc import Iterable

from manchet.batch.work import Work, once
from manchet.cautions.caution import Caution
from manchet.cautions.house import house_hazards_met
from manchet.cautions.met import hazards_met

_WORST_FIRST = {"warning": 0, "note": 1}


@once
def cautions_of(work: Work) -> tuple[Caution, ...]:
    """Warnings before notes, else in the order of the work.

    A hazard met at several steps stands in full where it is worst, first; at the others with its limit alone, and not at
    all where it has no limit to read. Lye, hot fat and plants under fat stand in full wherever hands meet them.
    """
    found = _once_a_step((*hazards_met(work), *house_hazards_met(work)))
    fullest: dict[str, Caution] = {}
    for one in found:
        there = fullest.get(one.name)
        if there is None or _WORST_FIRST[one.level] < _WORST_FIRST[there.level]:
            fullest[one.name] = one
    shown = []
    for one in found:
        if one.hazard.in_full or one is fullest[one.name]:
            shown.append(one)
        elif one.hazard.british.boxes:
            shown.append(one._replace(again=True))
    return tuple(sorted(shown, key=lambda c: (c.of == "house", _WORST_FIRST[c.level])))


def _once_a_step(found: Iterable[Caution]) -> list[Caution]:
    """A hazard once at each step, at its worst: a step before the dividing is on the way to every bread."""
    worst: dict[tuple[object, ...], Caution] = {}
    for one in found:
        key = (one.name, one.at)
        there = worst.get(key)
        if there is None or _WORST_FIRST[one.level] < _WORST_FIRST[there.level]:
            worst[key] = one
    return list(worst.values())
