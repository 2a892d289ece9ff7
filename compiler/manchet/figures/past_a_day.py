"""What of a dough no day holds: more mixes or loads, one after another, than there are hours or than anybody can follow.

Counted, never listed: a slip of three zeros in `makes` is told at once, and no timing card is made of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.mixing.turns import by_machine
from manchet.figures.oven.bakes import DAY, MOST_LOADS, Bake, bakes_of
from manchet.formula.model import Step
from manchet.records import NamedTuple


class PastDay(NamedTuple):
    """So many mixes or loads, `seconds` for all of them one after another; 0 where nobody knows."""

    what: str
    """"mixes" or "loads"."""
    number: int
    of: str
    """What a load is: `20 loaves`; "" of a mix."""
    where: str
    """The mixer or the oven."""
    seconds: Fraction
    step: Step


@once
def past_a_day(work: Work) -> tuple[PastDay, ...]:
    """Empty for what is mixed and baked in a day."""
    found = (*_mixes(work), *(_loads(bake) for bake in bakes_of(work) if not bake.of_a_day))
    return tuple(found)


def _mixes(work: Work) -> Iterator[PastDay]:
    mixes, steps = work.mixes, by_machine(work.dough.stage.steps)
    seconds = sum((step.time.likely for step in steps if step.time is not None), Fraction(0)) * mixes.number
    if mixes.mixer is not None and steps and (mixes.number > MOST_LOADS or seconds > DAY):
        yield PastDay("mixes", mixes.number, "", mixes.mixer.name or "the mixer", seconds, steps[0])


def _loads(bake: Bake) -> PastDay:
    assert bake.holds is not None, "one load is of a day"
    of = f"{bake.holds.number} {bake.each or bake.noun or 'pieces'}"
    return PastDay("loads", len(bake.loads), of, bake.oven.name or "the oven", bake.lasts, bake.phases[0])
