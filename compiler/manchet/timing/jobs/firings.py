"""When an oven must be lit, and when the fire of a falling one is out.

An oven that holds its heat is lit to be hot for its first bake. One that falls is fired to the hottest heat of its curve;
then the fire is out (hour 0 of its own card), and the floor falls to the heat of what goes in.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.figures.oven.curve import floor_heat, heat_at, oven_of, wanted_heats, window
from manchet.formula.model import Range, Step
from manchet.kitchen.model import Kitchen, Oven
from manchet.records import NamedTuple
from manchet.timing.jobs.network import Job

HOUR = 3600
COLD_AFTER = Fraction(4 * HOUR)
"""Seconds without a bake after which nobody counts on the oven's heat, unless it is known how it falls. Our own rule."""


class Firing(NamedTuple):
    """An oven is lit at `start` to be hot at `hot`, for `step`, which begins at `end`. Seconds; `start` is None where
    nobody knows how long it takes to heat."""

    oven: Oven
    step: Step
    celsius: Range | None
    """To what."""
    start: Fraction | None
    hot: Fraction
    end: Fraction
    falls: bool
    """At `hot` the fire is out, and until `end` the floor falls."""
    into: Fraction | None = None
    """Of one that falls: Celsius that the floor has come down to by `end`."""

    @property
    def begins(self) -> Fraction:
        return self.hot if self.start is None else self.start

    def later(self, seconds: Fraction) -> Firing:
        start = None if self.start is None else self.start + seconds
        return self._replace(start=start, hot=self.hot + seconds, end=self.end + seconds)


class _Use(NamedTuple):
    """A job in the oven, from when to when."""

    start: Fraction
    end: Fraction
    step: Step
    is_first: bool
    """The first load of a bake, in its first phase."""


def firings_of(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], kitchen: Kitchen) -> tuple[Firing, ...]:
    """The firings of each oven that says how long it takes to heat, or how it falls, one after the other."""
    found: list[Firing] = []
    for oven in kitchen.ovens:
        uses = sorted(_uses(jobs, starts, kitchen, oven), key=lambda use: (use.start, use.end))
        if oven.heats_in is None and not oven.falls:
            continue
        found += [_firing(group, oven) for group in _fires(uses, oven)]
    return tuple(found)


def _uses(jobs: tuple[Job, ...], starts: tuple[Fraction, ...], kitchen: Kitchen, oven: Oven) -> Iterator[_Use]:
    inside = {at for at, job in enumerate(jobs) if oven_of(job.step, kitchen) == oven}
    begun: set[tuple[str, str, str]] = set()
    for at in sorted(inside, key=lambda at: starts[at]):
        job = jobs[at]
        whose = (job.stage.key, job.branch, str(job.step.place))
        goes_in = not any(need.how == "step" and need.job in inside for need in job.needs)
        yield _Use(starts[at], starts[at] + job.length.planned, job.step, goes_in and whose not in begun)
        begun.add(whose)


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
    out, heat = _out(group, oven), floor_heat(use.step)
    if out is None or heat is None:
        return False
    return heat_at(oven.falls, (use.start - out) / HOUR) >= wanted_heats(heat)[0]


def _out(group: list[_Use], oven: Oven) -> Fraction | None:
    """When the fire of a falling oven is out: so long before the first load goes in that it finds the hottest floor it may
    go in at; later if another bake of this fire would come too late for its heat, or needs the fire itself. None: the oven
    holds its heat, or nothing waits for its fall."""
    out: Fraction | None = None
    on_the_fire: list[Fraction] = []
    for use in group:
        heat = floor_heat(use.step)
        when = window(oven.falls, heat) if heat is not None and use.is_first and oven.falls else None
        if when is not None:
            out = use.start - when.opens * HOUR if out is None else max(out, use.start - when.closes * HOUR)
        elif heat is not None and use.is_first:
            on_the_fire.append(use.end)
    return None if out is None else max([out, *on_the_fire])


def _firing(group: list[_Use], oven: Oven) -> Firing:
    first, out = group[0], _out(group, oven)
    hot = first.start if out is None else min(out, first.start)
    start = None if oven.heats_in is None else hot - oven.heats_in
    if out is None:
        celsius = first.step.heats[0].celsius if first.step.heats else None
        return Firing(oven, first.step, celsius, start, hot, first.start, False)
    hottest = oven.falls[0].start
    into = heat_at(oven.falls, (first.start - hot) / HOUR)
    return Firing(oven, first.step, Range(hottest, hottest), start, hot, first.start, True, into)
