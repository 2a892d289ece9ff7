"""What was told of a day and still holds when it is planned again once more: waits that are longer, loads that bake longer.

Kept by the keys of jobs, so that it can be written down and laid over the same day later.
"""

from __future__ import annotations

from manchet.day.again.fixing import Again
from manchet.day.model import Day
from manchet.records import NamedTuple


class LongerWait(NamedTuple):
    before: str
    after: str
    least: int
    most: int | None


class LongerLoad(NamedTuple):
    key: str
    stays: int


class Told(NamedTuple):
    waits: tuple[LongerWait, ...] = ()
    loads: tuple[LongerLoad, ...] = ()


NOTHING_TOLD = Told()


def told_of(again: Again, of_files: Day) -> Told:
    """What differs in the rest of the day from the day as its files have it."""
    jobs = of_files.jobs
    waits = tuple(
        LongerWait(jobs[now.before].key, jobs[now.after].key, now.least, now.most)
        for was, now in zip(of_files.waits, again.own.waits, strict=True)
        if now.after not in again.begun and (was.least, was.most) != (now.least, now.most)
    )
    loads = tuple(
        LongerLoad(now.key, now.stays)
        for was, now in zip(of_files.loads, again.own.loads, strict=True)
        if now.take not in again.begun and was.stays != now.stays
    )
    return Told(waits, loads)


def laid_over(day: Day, told: Told) -> Day:
    """The day with what was told of it."""
    waits = {(one.before, one.after): one for one in told.waits}
    loads = {one.key: one for one in told.loads}
    return day._replace(
        waits=tuple(
            wait
            if (one := waits.get((day.jobs[wait.before].key, day.jobs[wait.after].key))) is None
            else wait._replace(least=one.least, most=one.most)
            for wait in day.waits
        ),
        loads=tuple(
            load if (longer := loads.get(load.key)) is None else load._replace(stays=longer.stays) for load in day.loads
        ),
    )
