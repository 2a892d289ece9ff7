"""What of a dough no day holds: more mixes or loads, one after another, than there are hours or than anybody can follow.

Counted, never listed: a slip of three zeros in `makes` is told at once, and neither timing card nor handout is made of it.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.batch.work import Work, once
from manchet.figures.mixing.turns import by_machine
from manchet.figures.oven.at_home import at_once_at_home
from manchet.figures.oven.bakes import DAY, MOST_LOADS, Bake, Holds, bakes_of
from manchet.formula.durations import duration
from manchet.formula.model import Step
from manchet.formula.nouns import noun_for, same_noun
from manchet.kitchen.model import Oven
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

    @property
    def said(self) -> str:
        """`33 loads of 20 loaves in stone take 24.1 h one after another; a day has 24 h`"""
        what = f"{self.number:,} {self.what}{self.of and f' of {self.of}'} in {self.where}"
        if self.seconds > DAY:
            return f"{what} take {duration(self.seconds)} one after another; a day has 24 h"
        return f"{what} are more than the {MOST_LOADS} that can be told one by one"


@once
def past_a_day(work: Work) -> tuple[PastDay, ...]:
    """Empty for what is mixed and baked in a day."""
    found = (*_mixes(work), *(_loads(bake) for bake in bakes_of(work) if not bake.of_a_day))
    return tuple(found)


def past_a_day_at_home(work: Work) -> tuple[PastDay, ...]:
    """The same of a domestic oven: of pieces of which the kitchen does not say how many it holds, a tray goes in at once."""
    kitchen = work.kitchen if work.kitchen.ovens else work.kitchen._replace(ovens=(Oven("an oven at home"),))
    bakes = bakes_of(Work(work.order, work.batch, kitchen, work.larder, preparations=work.preparations))
    at_home = (bake._replace(holds=bake.holds or _on_a_tray(work, bake)) for bake in bakes)
    return tuple(_loads(bake) for bake in at_home if not bake.of_a_day)


def _on_a_tray(work: Work, bake: Bake) -> Holds | None:
    sorts = [piece for piece in work.batch.pieces if not bake.noun or same_noun(bake.noun, piece.noun)]
    return Holds(min(map(at_once_at_home, sorts)), "floor") if bake.pieces and sorts else None


def _mixes(work: Work) -> Iterator[PastDay]:
    mixes, steps = work.mixes, by_machine(work.dough.stage.steps)
    seconds = sum((step.time.likely for step in steps if step.time is not None), Fraction(0)) * mixes.number
    if mixes.mixer is not None and steps and (mixes.number > MOST_LOADS or seconds > DAY):
        yield PastDay("mixes", mixes.number, "", mixes.mixer.name or "the mixer", seconds, steps[0])


def _loads(bake: Bake) -> PastDay:
    assert bake.holds is not None, "one load is of a day"
    number = bake.holds.number
    of = f"{number} {noun_for(Fraction(number), bake.each or bake.noun or 'pieces')}"
    return PastDay("loads", len(bake.loads), of, bake.oven.name or "the oven", bake.lasts, bake.phases[0])
