"""The phases of one bake in an oven that only falls: how far it can have fallen by then. Estimates.

In the bread's favour throughout: it goes in at the coldest heat it may, the oven loses as much as its ranges say at most, and the
load takes its part of it before the first phase is over.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.figures.oven.bakes import Bake
from manchet.figures.oven.curve import fastest, heat_after, wanted_heats
from manchet.figures.oven.loading_plan import drop_of
from manchet.formula.model import Range, Step
from manchet.kitchen.model import Fall
from manchet.records import NamedTuple

HOUR = 3600
USUAL_DROP = Fraction(20)
"""Celsius that a load takes of a floor where nobody has measured it: rather more than less. Our rule."""


class TooSoon(NamedTuple):
    """A phase that wants an oven colder than it has fallen to. Celsius, and seconds since the bread went in."""

    phase: Step
    wants: Fraction
    has: Fraction
    """The heat it has then if it went in at the heat that is written."""
    after: Fraction
    is_end: bool
    """It is what the phase falls to, at its end."""


def too_soon(bake: Bake) -> Iterator[TooSoon]:
    """The heats of a bake that its oven has not fallen to when they are asked for: the first of each place where they are measured."""
    falls = fastest(bake.oven.falls)
    load = bake.grams * bake.loads[0] / bake.pieces if bake.pieces else bake.grams
    drop = drop_of(bake.oven, load, bake.grams) if bake.oven.load_takes is not None else USUAL_DROP
    coldest: dict[str, Fraction] = {}
    likely: dict[str, Fraction] = {}
    spent = Fraction(0)
    for phase in bake.phases:
        lasts = phase.time.likely if phase.time is not None else Fraction(0)
        heats = {heat.where: heat.celsius for heat in phase.heats}
        for where, heat in heats.items():
            if where in coldest and coldest[where] > wanted_heats(heat)[1]:
                yield TooSoon(phase, heat.likely, likely[where], spent, False)
                return
        spent += lasts
        first = phase is bake.phases[0]
        now = {where: _later(falls, coldest.get(where, wanted_heats(heat)[0]), lasts) for where, heat in heats.items()}
        there = {where: _later(bake.oven.falls, likely.get(where, heat.likely), lasts) for where, heat in heats.items()}
        coldest = {where: celsius - drop * first for where, celsius in now.items()}
        likely = {where: celsius - drop * first for where, celsius in there.items()}
        to = phase.ramp[1] if phase.ramp is not None and phase.ramp[0] == "falling" else None
        where = next(iter(heats), "")
        if to is not None and where in coldest and coldest[where] > _most(to):
            yield TooSoon(phase, to.likely, likely[where], spent, True)
            return


def _later(falls: tuple[Fall, ...], celsius: Fraction, seconds: Fraction) -> Fraction:
    """So many seconds later; hotter than anybody has measured it falls as fast as at the hottest that is measured."""
    later = heat_after(falls, celsius, seconds / HOUR)
    return celsius - falls[0].an_hour * seconds / HOUR if later is None else later


def _most(heat: Range) -> Fraction:
    return wanted_heats(heat)[1]
