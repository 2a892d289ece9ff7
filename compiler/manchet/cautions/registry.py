"""The cautions of one formula: each hazard once, at its worst, the formula's own before those of the house."""

from __future__ import annotations

from manchet.batch.work import Work
from manchet.cautions.caution import Caution
from manchet.cautions.house import house_hazards_met
from manchet.cautions.met import hazards_met

_WORST_FIRST = {"warning": 0, "note": 1}


def cautions_of(work: Work) -> tuple[Caution, ...]:
    """Warnings before notes, else in the order of the work. A hazard met twice stands where it is worst, first."""
    worst: dict[str, Caution] = {}
    for found in (*hazards_met(work), *house_hazards_met(work)):
        there = worst.get(found.name)
        if there is None or _WORST_FIRST[found.level] < _WORST_FIRST[there.level]:
            worst[found.name] = found
    return tuple(sorted(worst.values(), key=lambda c: (c.of == "house", _WORST_FIRST[c.level])))
