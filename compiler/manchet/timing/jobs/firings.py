"""When an oven must be lit, and when the fire of a falling one is out.

An oven that holds its heat is lit to be hot for its first bake. One that falls is fired to the heat of what goes in first
and no further, so that nothing waits for it to fall; then the fire is out (hour 0 of its own card). What wants more than its
curve begins with, or a heat that rises, is baked while the fire burns.
"""

from __future__ import annotations

from collections.abc import Collection, Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.diagnostics.diagnostic import Place
from manchet.figures.oven.bakes import bakes_of
from manchet.figures.oven.curve import floor_heat, heat_at, oven_of, wanted_heats, window
from manchet.formula.model import Range, Step, Who
from manchet.kitchen.model import Kitchen, Oven
from manchet.records import NamedTuple
from manchet.timing.jobs.network import Job

HOUR = 3600
LOADING = Fraction(10 * 60)
"""Seconds of work by hand before a bake that are done at the oven; longer than that is work of the bench. Our own rule."""
COLD_AFTER = Fraction(4 * HOUR)
"""Seconds without a bake after which nobody counts on the oven's heat, unless it is known how it falls. Our own rule."""


class FireOut(NamedTuple):
    """The fire is out, in seconds, and the floor at so many Celsius begins to fall."""

    at: Fraction
    celsius: Fraction


class Firing(NamedTuple):
    """An oven is lit at `start` to be hot at `hot`, for `step`. Seconds; `start` is None where nobody knows how long it
    takes to heat."""

    oven: Oven
    step: Step
    celsius: Range | None
    """To what."""
    start: Fraction | None
    hot: Fraction
    is_full: bool = True
    """It is heated as far as its `heats in` was measured; if not, that is the longest it takes."""
    out: FireOut | None = None
    """Of one that falls."""

    @property
    def begins(self) -> Fraction:
        return self.hot if self.start is None else self.start

    def later(self, seconds: Fraction) -> Firing:
        start = None if self.start is None else self.start + seconds
        out = None if self.out is None else self.out._replace(at=self.out.at + seconds)
        return self._replace(start=start, hot=self.hot + seconds, out=out)


class _Use(NamedTuple):
    """A job in the oven, from when to when."""

    start: Fraction
    end: Fraction
    step: Step
    is_first: bool
    """The first load of a bake, in its first phase."""
    on_the_fire: bool
    """It is baked while the fire burns."""
    door: Fraction
    """When hands begin to bring it in: what is scored or brushed just before the oven is done at its door, and by then the
    fire is out."""


def firings_of(work: Work, jobs: tuple[Job, ...], starts: tuple[Fraction, ...]) -> tuple[Firing, ...]:
    """The firings of each oven that says how long it takes to heat, or how it falls, one after the other."""
    found: list[Firing] = []
    rising = frozenset(bake.phases[0].place for bake in bakes_of(work) if bake.rises)
    for oven in work.kitchen.ovens:
        uses = sorted(_uses(jobs, starts, work.kitchen, oven, rising), key=lambda use: (use.start, use.end))
        if oven.heats_in is None and not oven.falls:
            continue
        found += [_firing(group, oven) for group in _fires(uses, oven)]
    return tuple(found)


def _uses(
    jobs: tuple[Job, ...], starts: tuple[Fraction, ...], kitchen: Kitchen, oven: Oven, rising: Collection[Place]
) -> Iterator[_Use]:
    inside = {at for at, job in enumerate(jobs) if oven_of(job.step, kitchen) == oven}
    begun: set[tuple[str, str, str]] = set()
    for at in sorted(inside, key=lambda at: starts[at]):
        job = jobs[at]
        whose = (job.stage.key, job.branch, str(job.step.place))
        goes_in = not any(need.how == "step" and need.job in inside for need in job.needs)
        is_first = goes_in and whose not in begun
        heat = floor_heat(job.step)
        on_the_fire = (
            bool(job.step.by_fire)
            or job.step.place in rising
            or (heat is not None and window(oven.falls, heat) is None)
        )
        yield _Use(
            starts[at],
            starts[at] + job.length.planned,
            job.step,
            is_first,
            bool(oven.falls) and is_first and on_the_fire,
            _at_the_door(jobs, starts, at),
        )
        begun.add(whose)


def _at_the_door(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], at: int) -> Fraction:
    """When the work by hand begins that ends in this job, without a wait between, up to `LOADING` before it."""
    first = at
    while by_hand := [
        need.job for need in jobs[first].needs if need.how == "step" and jobs[need.job].step.who is Who.HANDS
    ]:
        before = max(by_hand)
        if starts[before] + jobs[before].length.planned < starts[first] or starts[at] - starts[before] > LOADING:
            break
        first = before
    return starts[first]


def _fires(uses: list[_Use], oven: Oven) -> Iterator[list[_Use]]:
    """The uses of each fire. It is lit anew for one before which the oven stood idle for `COLD_AFTER` or longer than it
    takes to heat, if it is not known to have the heat for it still."""
    group: list[_Use] = []
    hot_until = Fraction(0)
    idle = max(COLD_AFTER, oven.heats_in or COLD_AFTER)
    for use in uses:
        if group and use.start - hot_until >= idle and not _still_hot(group, use, oven):
            yield group
            group = []
        hot_until = max(hot_until, use.end) if group else use.end
        group.append(use)
    if group:
        yield group


def _still_hot(group: list[_Use], use: _Use, oven: Oven) -> bool:
    begun, heat = _top_of_curve(group, oven), floor_heat(use.step)
    if begun is None or heat is None or use.on_the_fire:
        return False
    return heat_at(oven.falls, (use.start - begun) / HOUR) >= wanted_heats(heat)[0]


def _top_of_curve(group: list[_Use], oven: Oven) -> Fraction | None:
    """When the oven would have had the hottest heat of its curve, so that the first load which waits for its fall finds the
    hottest floor it may go in at, or a hotter one where another bake of this fire would come too late for its heat. None: the
    oven holds its heat, or nothing waits for its fall."""
    begun: Fraction | None = None
    for use in _in_the_fall(group):
        heat = floor_heat(use.step)
        when = window(oven.falls, heat) if heat is not None else None
        if when is not None:
            begun = use.start - when.opens * HOUR if begun is None else max(begun, use.start - when.closes * HOUR)
    return begun


def _in_the_fall(group: list[_Use]) -> list[_Use]:
    return [use for use in group if use.is_first and not use.on_the_fire]


def _firing(group: list[_Use], oven: Oven) -> Firing:
    first, begun = group[0], _top_of_curve(group, oven)
    hot = first.start if begun is None or first.on_the_fire else first.door
    start = None if oven.heats_in is None else hot - oven.heats_in
    celsius = first.step.heats[0].celsius if first.step.heats and not first.step.by_fire else None
    if first.step.by_fire and first.step.ramp is not None:
        start = hot  # it goes in as the fire is lit, and grows hot with the oven
    if begun is None:
        return Firing(oven, first.step, celsius, start, hot, not first.step.by_fire)
    top = oven.falls[0].start
    into, burns = _in_the_fall(group)[0], max([begun, *(use.end for use in group if use.on_the_fire)])
    out = FireOut(max(burns, into.door), heat_at(oven.falls, (max(burns, into.start) - begun) / HOUR))
    if first.on_the_fire:
        return Firing(oven, first.step, celsius, start, hot, not first.step.by_fire, out)
    return Firing(oven, first.step, Range(out.celsius, out.celsius), start, hot, out.celsius == top, out)
