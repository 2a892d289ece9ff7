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
from manchet.formula.model import Step
from manchet.kitchen.model import Fall
from manchet.records import NamedTuple

HOUR = 3600
NOTHING = Fraction(0)
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
    coldest: dict[str, Fraction] = {}
    spent = Fraction(0)
    for at, phase in enumerate(bake.phases):
        heats = {heat.where: heat.celsius for heat in phase.heats}
        for where, heat in heats.items():
            if where in coldest and coldest[where] > wanted_heats(heat)[1]:
                yield TooSoon(phase, heat.likely, _likely(bake, at, where), spent, False)
                return
        to = phase.ramp[1] if phase.ramp is not None and phase.ramp[0] == "falling" else None
        if to is None and phase is bake.phases[-1]:
            return
        spent += _lasts(phase)
        drop = _drop(bake) if at == 0 else NOTHING
        coldest = {
            where: _later(falls, coldest.get(where, wanted_heats(heat)[0]), _lasts(phase)) - drop
            for where, heat in heats.items()
        }
        where = next(iter(heats), "")
        if to is not None and where in coldest and coldest[where] > wanted_heats(to)[1]:
            yield TooSoon(phase, to.likely, _likely(bake, at + 1, where), spent, True)
            return


def _likely(bake: Bake, phases: int, where: str) -> Fraction:
    """The heat at that place after so many phases, the last of which says a heat there; it went in at the heat that is written."""
    likely: Fraction | None = None
    for at, phase in enumerate(bake.phases[:phases]):
        heat = next((heat.celsius for heat in reversed(phase.heats) if heat.where == where), None)
        if heat is None:
            likely = None
            continue
        fallen = _later(bake.oven.falls, heat.likely if likely is None else likely, _lasts(phase))
        likely = fallen - (_drop(bake) if at == 0 else NOTHING)
    assert likely is not None
    return likely


def _lasts(phase: Step) -> Fraction:
    return phase.time.likely if phase.time is not None else NOTHING


def _drop(bake: Bake) -> Fraction:
    """Celsius that the load takes."""
    if bake.oven.load_takes is None:
        return USUAL_DROP
    load = bake.grams * bake.loads[0] / bake.pieces if bake.pieces else bake.grams
    return drop_of(bake.oven, load, bake.grams)


def _later(falls: tuple[Fall, ...], celsius: Fraction, seconds: Fraction) -> Fraction:
    """So many seconds later; hotter than anybody has measured it falls as fast as at the hottest that is measured."""
    later = heat_after(falls, celsius, seconds / HOUR)
    return celsius - falls[0].an_hour * seconds / HOUR if later is None else later
