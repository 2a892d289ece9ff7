"""What must be washed between two doughs in one mixer: by what the one leaves behind that the other is free of."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from itertools import permutations

from manchet.batch.work import Work, once
from manchet.day.clock import minutes_up
from manchet.day.jobs.values import WorkMoment
from manchet.diagnostics.suggest import fold
from manchet.kitchen.model import Mixer


def gaps_of(
    mixer: Mixer, mixed: Mapping[int, tuple[str, WorkMoment]], works: Mapping[str, Work]
) -> Iterator[tuple[int, int, int]]:
    """(job, later job, minutes) for every two doughs of a mixer between which it is washed; not between those of one bread,
    of which the one goes into the other."""
    if mixer.wash is None and not mixer.wash_after:
        return
    for one, other in permutations(mixed, 2):
        (bread, moment), (next_bread, following) = mixed[one], mixed[other]
        if bread == next_bread:
            continue
        leaves = holds(works[bread], moment.stage.key) - holds(works[next_bread], following.stage.key)
        seconds = max([mixer.wash or 0, *(time for name, time in mixer.wash_after if fold(name) in leaves)])
        if seconds:
            yield one, other, minutes_up(seconds)


@once
def holds(work: Work, stage: str) -> frozenset[str]:
    """The names, classes and allergens of all that a stage is weighed from, with the stages in it; folded."""
    found: set[str] = set()
    for made in work.batch.stages:
        if made.stage.key != stage:
            continue
        for portion in made.stage.portions:
            if portion.stage:
                found |= holds(work, portion.stage)
            elif portion.ingredient is not None:
                allergens = work.larder.allergens(portion.ingredient) or ()
                found |= {fold(portion.ingredient.name), portion.ingredient.class_, *map(fold, allergens)}
    return frozenset(found)
