"""A day planned again: what has begun stays as it was, the rest begins from now on, and ranges and heats are no longer hard.

With a lit oven some lateness has no plan that keeps every range, since the floor falls on. So what a range or a heat would
forbid is allowed and counted: first a floor some degrees too cold, where a bread bakes longer; then waits as long as they may
be; then waits beyond that; then being late.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

from manchet.day.again.news import Begun, News, what_has_begun
from manchet.day.model import Day, DayJob, DayLoad, DayMixer, DayPlace, DayWait, Stay, Timetable
from manchet.records import NamedTuple

COLDER = Fraction(15)
"""Degrees Celsius under its coldest heat at which a bread still goes in, and bakes longer. Our own rule."""


class Again(NamedTuple):
    """A day to be planned again."""

    day: Day
    """With soft ranges and heats: what a plan must hold to."""
    own: Day
    """The same with its own: what lies beyond these is counted."""
    before: Day
    """As the plan last written was made for."""
    last: Timetable
    """That plan."""
    was: tuple[int, ...]
    """When each job began or was to begin: less change from this is better."""
    begun: frozenset[int]
    """The jobs that have begun."""


def day_again(day: Day, last: Timetable, news: News) -> Again:
    """`last` is the plan of this day as last written, index for index."""
    begun = what_has_begun(day, last, news)
    began = {job: told.at for job, told in begun.items()}
    jobs = tuple(
        _begun_job(job, begun[at], _late_job(news, at)) if at in begun else _later_job(day, last, news, at)
        for at, job in enumerate(day.jobs)
    )
    own = day._replace(
        jobs=_with_hands_free(day, jobs, last, began),
        waits=tuple(_wait(day, last, news, began, at) for at in range(len(day.waits))),
        loads=tuple(_load(day, news, began, at) for at in range(len(day.loads))),
        mixers=tuple(_mixer(mixer, began) for mixer in day.mixers),
        places=tuple(_place(day, place, began) for place in day.places),
        stays=tuple(stay for stay in day.stays if not _is_over(stay, began)),
        begins=min([day.begins, *began.values()]),
    )
    was = tuple(began.get(at, start) for at, start in enumerate(last.starts))
    return Again(_softened(own, began), own, day, last, was, frozenset(began))


def _softened(own: Day, began: dict[int, int]) -> Day:
    longest = own.finishes - own.begins
    falling = {oven.name for oven in own.ovens if oven.curve}
    return own._replace(
        waits=tuple(wait if wait.after in began else wait._replace(may=max(wait.may, longest)) for wait in own.waits),
        loads=tuple(
            load._replace(enters=load.enters._replace(low=load.enters.low - COLDER))
            if load.enters is not None and load.oven in falling
            else load
            for load in own.loads
        ),
    )


def _late_job(news: News, job: int) -> int:
    return sum(said.minutes for said in news.late if said.job == job)


def _begun_job(job: DayJob, told: Begun, longer: int) -> DayJob:
    minutes = told.minutes or job.minutes + (longer if told.is_said else 0)
    return job._replace(earliest=told.at, latest=told.at, minutes=minutes, is_break=False)


def _later_job(day: Day, last: Timetable, news: News, at: int) -> DayJob:
    """A fixed hour that can no longer be kept isn't."""
    job, late = day.jobs[at], _late_job(news, at)
    is_taken_out = any(load.take == at for load in day.loads)
    earliest = max(job.earliest, news.minute, last.starts[at] + late if late and not is_taken_out else news.minute)
    return job._replace(earliest=earliest, latest=job.latest if job.latest >= earliest else day.finishes - job.minutes)


def _with_hands_free(day: Day, jobs: tuple[DayJob, ...], last: Timetable, began: dict[int, int]) -> tuple[DayJob, ...]:
    """What has begun is done by whom it was planned for, and on its mixer. Where it can't have been so by what is said, the past is
    no reason to refuse a plan: the job then has nobody's hands and no mixer."""
    made = list(jobs)
    busy: Counter[tuple[str, int]] = Counter()
    room = {mixer.name: mixer.number for mixer in day.mixers}
    for at in sorted(began, key=lambda job: (began[job], job)):
        job, shift = jobs[at], last.shifts[at]
        minutes = range(began[at], began[at] + job.minutes)
        if job.mixer and any(busy[job.mixer, minute] >= room[job.mixer] for minute in minutes):
            job = job._replace(mixer="")
        busy.update((job.mixer, minute) for minute in minutes if job.mixer)
        if job.hands:
            its = day.shifts[shift]
            is_inside = its.begins <= began[at] and minutes.stop <= its.ends
            if is_inside and all(busy["hands of " + its.key, minute] + job.hands <= its.hands for minute in minutes):
                busy.update({("hands of " + its.key, minute): job.hands for minute in minutes})
                job = job._replace(shift=its.key)
            else:
                job = job._replace(hands=0, shift="")
        made[at] = job
    return tuple(made)


def _wait(day: Day, last: Timetable, news: News, began: dict[int, int], at: int) -> DayWait:
    wait = day.waits[at]
    if wait.after in began:
        if wait.before not in began:
            return wait._replace(least=began[wait.after] - day.finishes, most=None)
        was = began[wait.after] - began[wait.before]
        may = wait.may if wait.most is None else max(wait.may, was - wait.most)
        return wait._replace(least=min(wait.least, was), may=may)
    longer = sum(said.minutes for said in news.late if said.wait == at)
    if not longer:
        return wait
    least = last.starts[wait.after] - last.starts[wait.before] + longer
    return wait._replace(least=least, most=None if wait.most is None else max(wait.most + longer, least))


def _load(day: Day, news: News, began: dict[int, int], at: int) -> DayLoad:
    load = day.loads[at]
    if load.take in began:
        return load._replace(stays=began[load.take] - began[load.put], enters=None, is_in=True)
    longer = sum(said.minutes for said in news.late if said.load == at or said.job == load.take)
    is_in = load.put in began
    return load._replace(stays=load.stays + longer, enters=None if is_in else load.enters, is_in=is_in)


def _mixer(mixer: DayMixer, began: dict[int, int]) -> DayMixer:
    return mixer._replace(gaps=tuple(gap for gap in mixer.gaps if gap[0] not in began or gap[1] not in began))


def _is_over(stay: Stay, began: dict[int, int]) -> bool:
    return stay.begins in began and stay.ends in began


def _place(day: Day, place: DayPlace, began: dict[int, int]) -> DayPlace:
    """What is in it now is in it, whatever it holds."""
    there = (
        stay.takes
        for stay in day.stays
        if stay.place == place.name and stay.begins in began and not _is_over(stay, began)
    )
    return place._replace(holds=max(place.holds, sum(there)))
