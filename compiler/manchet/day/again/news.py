"""What has happened since a plan was written: the hour, what has begun and when, and what runs late."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.model import Day, Timetable
from manchet.records import NamedTuple


class Begun(NamedTuple):
    """A job that somebody has begun."""

    job: int
    at: int
    minutes: int | None = None
    """How long it took; None where it takes as long as it always does."""
    is_said: bool = True
    """False: nobody said so, and the plan has it."""


class LateBy(NamedTuple):
    """Minutes by which one thing runs behind the plan. Just one of the three is said."""

    minutes: int
    job: int | None = None
    """It begins so much later; where it is said to have begun, it takes so much longer."""
    wait: int | None = None
    """The dough wants so much longer, and may stand so much longer too."""
    load: int | None = None
    """It bakes so much longer."""


class News(NamedTuple):
    minute: int
    """Now."""
    begun: tuple[Begun, ...] = ()
    late: tuple[LateBy, ...] = ()


def done_by(day: Day, last: Timetable, job: int, minute: int) -> Begun:
    """A job of which it is said at a minute that it is done: begun as it was planned, or sooner, so that it has just ended."""
    return Begun(job, min(last.starts[job], minute - day.jobs[job].minutes))


class Follows(NamedTuple):
    """A job can't begin before another has, and so many minutes after it at the least."""

    before: int
    after: int
    least: int


def what_has_begun(day: Day, last: Timetable, news: News) -> dict[int, Begun]:
    """All that has begun before now, as it was said or else as it was planned.

    What runs late has begun only if its new hour is past, and what follows something only if that has begun. Before what is said
    to have begun everything was done in time.
    """
    follows = tuple(_follows(day))
    found = {said.job: said for said in news.begun}
    for pair in sorted(follows, key=lambda pair: -last.starts[pair.after]):
        if pair.after in found and pair.before not in found:
            found[pair.before] = Begun(
                pair.before, min(last.starts[pair.before], found[pair.after].at - pair.least), is_said=False
            )
    late = _late(day, news)
    outs = {load.take: load for load in day.loads}
    for job in sorted(range(len(day.jobs)), key=lambda job: (last.starts[job], job)):
        before = [pair for pair in follows if pair.after == job]
        if job in found or any(pair.before not in found for pair in before):
            continue
        at = max([last.starts[job], *(found[pair.before].at + pair.least for pair in before)])
        if job in outs:
            at = found[outs[job].put].at + outs[job].stays
        if at + late.get(job, 0) < news.minute:
            found[job] = Begun(job, at + late.get(job, 0), is_said=False)
    return found


def _follows(day: Day) -> Iterator[Follows]:
    yield from (Follows(wait.before, wait.after, wait.least) for wait in day.waits if wait.least > 0)
    yield from (Follows(load.put, load.take, load.stays) for load in day.loads)
    ovens = [fire.oven for fire in day.fires]
    for fire in day.fires:
        if ovens.count(fire.oven) == 1:
            for load in day.loads:
                if load.oven == fire.oven and not load.at_the_mouth:
                    yield Follows(fire.light, load.put, fire.heats)


def _late(day: Day, news: News) -> dict[int, int]:
    """By how many minutes each job begins late, for whatever reason."""
    late: dict[int, int] = {}
    for said in news.late:
        if said.job is not None:
            late[said.job] = late.get(said.job, 0) + said.minutes
        if said.wait is not None:
            after = day.waits[said.wait].after
            late[after] = max(late.get(after, 0), said.minutes)
        if said.load is not None:
            take = day.loads[said.load].take
            late[take] = late.get(take, 0) + said.minutes
    return late
