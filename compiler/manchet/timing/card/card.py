"""The timing card of one formula: every job with its clock, its latest and what lateness does."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import datetime, timedelta, tzinfo
from fractions import Fraction
from math import floor

from manchet.batch.scales import System
from manchet.batch.work import Work, once
from manchet.formula.model import Range, Who
from manchet.kitchen.model import Kitchen
from manchet.quantities.printing import round_to
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BOILS, BY_LEAVEN, IN_OVEN
from manchet.timing.card.before import before_you_go
from manchet.timing.card.clashes import clashes_of
from manchet.timing.card.falling import with_floors
from manchet.timing.card.far_from_written import with_far
from manchet.timing.card.growing_cold import with_cooling
from manchet.timing.card.in_the_room import with_rooms
from manchet.timing.card.lanes import lanes_of
from manchet.timing.card.values import Card, CardRow, Gives
from manchet.timing.card.warmth import came_out_at
from manchet.timing.jobs.durations import inside
from manchet.timing.jobs.firings import Firing, firings_of
from manchet.timing.jobs.handling import seconds_of
from manchet.timing.jobs.network import Job, network_of
from manchet.timing.jobs.ovens import in_turn
from manchet.timing.jobs.places import place_of
from manchet.timing.jobs.rounds import is_one_round_of_unknown, rounds_of
from manchet.timing.jobs.schedule import (
    Latest,
    critical_jobs,
    latest_of,
    stands_of,
    starts_of,
    waits,
)
from manchet.timing.when import When, moment_of
from manchet.timing.zones import changes, later, zone_of


class Course(NamedTuple):
    """The work with all that is known of its times, in seconds from the first line of the card."""

    jobs: tuple[Job, ...]
    starts: tuple[Fraction, ...]
    firings: tuple[Firing, ...]
    total: Fraction


@once
def course_of(work: Work) -> Course:
    """Jobs, their beginnings, and the firing of the ovens; the first of all at 0."""
    jobs = in_turn(network_of(work), work.kitchen)
    starts = starts_of(jobs)
    firings = firings_of(work, jobs, starts)
    earliest = min([Fraction(0), *(firing.begins for firing in firings)])
    starts = tuple(start - earliest for start in starts)
    firings = tuple(firing.later(-earliest) for firing in firings)
    total = max((start + job.length.planned for start, job in zip(starts, jobs, strict=True)), default=Fraction(0))
    return Course(jobs, starts, firings, total)


@once
def card_of(work: Work, when: When, system: System = System.METRIC) -> Card:
    """The card, counted forward from a start or back from the moment the bread is ready.

    Times are rounded to the minute as they are turned into clock times, always from the first line, so that the same
    work begun a quarter of an hour later reads a quarter of an hour later in every line.
    """
    batch, kitchen, course = work.batch, work.kitchen, course_of(work)
    zone = zone_of(kitchen.zone)
    total = timedelta(minutes=minute(course.total))
    start, days = _start(when, total, zone, 0), 0
    while when.not_before is not None and start.replace(tzinfo=None) < when.not_before:
        days += 1
        start = _start(when, total, zone, days)
    clock = Clock(start, zone)
    rows = _rows(course, kitchen, clock)
    for remarks in (with_floors, with_cooling, with_rooms, with_far):
        rows = remarks(work, rows)
    return Card(
        name=batch.formula.name,
        start=start,
        ready=later(start, total, zone),
        out_of_oven=max((row.start for row in rows if row.job == "take out of oven"), default=None),
        rows=rows,
        came_out_at=came_out_at(batch),
        before_you_go=before_you_go(work, rows, system),
        clashes=clashes_of(work, rows),
        lanes=lanes_of(batch.formula.name, rows, kitchen),
        mixes=work.mixes.number,
        swapped=batch.formula.swapped,
        moved=batch.formula.moved,
        clock_changes=tuple(changes(start, later(start, total, zone), zone)),
    )


def _start(when: When, total: timedelta, zone: tzinfo | None, days: int) -> datetime:
    """When the work begins, if it is all so many days later by the clock than was said."""
    said = moment_of(when, zone, days)
    return later(said, -total, zone) if when.is_ready else said


def minute(seconds: Fraction) -> int:
    """Whole minutes, the nearest."""
    return int(round_to(seconds / 60, 0))


class Clock(NamedTuple):
    """Turns seconds of the course into the bakehouse's clock."""

    start: datetime
    zone: tzinfo | None

    def at(self, seconds: Fraction) -> datetime:
        return later(self.start, timedelta(minutes=minute(seconds)), self.zone)

    def not_after(self, seconds: Fraction) -> datetime:
        """The last whole minute that is not later."""
        return later(self.start, timedelta(minutes=floor(seconds / 60)), self.zone)


def _rows(course: Course, kitchen: Kitchen, clock: Clock) -> tuple[CardRow, ...]:
    critical = critical_jobs(course.jobs, starts_of(course.jobs))
    latest = latest_of(course.jobs, course.starts)
    stands = stands_of(course.jobs, course.starts)
    last_phases = _last_phases(course.jobs)
    names = {job.stage.key: job.stage.name or job.stage.word for job in course.jobs}
    found: list[tuple[Fraction, int, CardRow]] = []
    for firing in course.firings:
        found += [(begin, -1, line) for begin, line in _firing_rows(firing, clock)]
    for at in range(len(course.jobs)):
        row = _job_row(course, at, kitchen, clock, latest[at], stands[at], names)._replace(critical=at in critical)
        found.append((course.starts[at], at, row))
        found += [(begin, at, line) for begin, line in _inside_rows(course, at, row, clock, at in last_phases)]
    return tuple(row for _, _, row in sorted(found, key=lambda one: one[:2]))


def _job_row(
    course: Course,
    at: int,
    kitchen: Kitchen,
    clock: Clock,
    latest: Latest,
    stands: Fraction | None,
    names: dict[str, str],
) -> CardRow:
    job, begin = course.jobs[at], course.starts[at]
    start, itself = clock.at(begin), begin + seconds_of(job.before)
    last = max(
        clock.not_after(latest.at if stands is None or not _is_bounded(course, at, stands) else min(latest.at, stands)),
        start,
    )
    return CardRow(
        start=start,
        begins=clock.at(itself),
        end=clock.at(itself + job.own.planned),
        elapsed=minute(begin),
        job="step",
        step=job.step,
        stage="" if job.is_dough else names[job.stage.key],
        branch=job.branch,
        mix=job.mix,
        pieces=job.pieces,
        who=job.step.who,
        is_estimate=job.length.is_estimate,
        seconds=job.own.range,
        by_piece=job.length.by_piece,
        handling=job.before,
        place=place_of(job.step, kitchen),
        number=0,
        of=0,
        load=job.load,
        loads=job.loads,
        of_mixes=job.of,
        rounds=rounds_of(job.step, job.pieces, kitchen),
        one_round=is_one_round_of_unknown(job.step, job.pieces, kitchen),
        baked_before=any(need.how == "step" and course.jobs[need.job].step.verb in IN_OVEN for need in job.needs),
        celsius=None,
        critical=False,
        latest=last,
        moves=names.get(latest.moves, latest.moves),
        slack=int((last - start).total_seconds()) // 60,
        stands_until=None if stands is None else max(clock.not_after(stands), start),
        gives=_gives(job),
        at=at,
    )


def _is_bounded(course: Course, at: int, stands: Fraction) -> bool:
    """Whether a job can be put off no longer than what waits for it may stand: where the file lets that stand at all, and of
    what has proved and goes into the heat even where it does not."""
    job = course.jobs[at]
    proved = any(course.jobs[need.job].step.verb in BY_LEAVEN for need in job.needs if not need.is_for_a_thing)
    return stands > course.starts[at] or (proved and job.step.verb in IN_OVEN | BOILS)


def _gives(job: Job) -> Gives:
    wait = job.step.may_wait
    length = job.length
    return Gives(
        shortens=length.planned - length.low if waits(job) else Fraction(0),
        stretches=(None if length.high is None else length.high - length.planned) if waits(job) else Fraction(0),
        waits=Fraction(0) if wait is None else wait.seconds.high or wait.seconds.low or Fraction(0),
        waits_at=None if wait is None else wait.celsius,
    )


NOTHING_GIVEN = Gives(Fraction(0), Fraction(0), Fraction(0), None)


def _inside_rows(
    course: Course, at: int, row: CardRow, clock: Clock, is_last_phase: bool
) -> list[tuple[Fraction, CardRow]]:
    """The folds inside a wait, the turn and the damper inside a bake, and the end of the last phase of a bake."""
    job = course.jobs[at]
    begin, lasts = course.starts[at] + seconds_of(job.before), job.own.planned
    bare = row._replace(
        latest=None, moves="", slack=0, stands_until=None, gives=NOTHING_GIVEN, at=None, critical=False,
        who=Who.HANDS, is_estimate=False, seconds=Range(Fraction(0), Fraction(0)), by_piece=False, handling=(),
    )  # fmt: skip
    found = []
    for work in inside(job.step):
        if work.after <= lasts:
            when = clock.at(begin + work.after)
            line = bare._replace(job=work.work, start=when, begins=when, end=when)
            line = line._replace(number=work.number, of=work.of, event=work.event)
            found.append((begin + work.after, line._replace(elapsed=minute(begin + work.after))))
    end = begin + lasts
    if is_last_phase:
        when, done = clock.at(end), clock.at(end + seconds_of(job.after))
        out = bare._replace(job="take out of oven", start=when, begins=when, end=done, elapsed=minute(end))
        out = out._replace(handling=job.after)
        found.append((end, out))
    return found


def _last_phases(jobs: tuple[Job, ...]) -> frozenset[int]:
    """The jobs with which a bake ends: what is done next with the same load is no bake."""
    follows: dict[int, Job] = {}
    for job in jobs:
        for need in job.needs:
            if need.how == "step":
                follows.setdefault(need.job, job)
    bakes = (at for at, job in enumerate(jobs) if job.step.verb == "bake")
    return frozenset(at for at in bakes if at not in follows or follows[at].step.verb != "bake")


def _firing_rows(firing: Firing, clock: Clock) -> Iterable[tuple[Fraction, CardRow]]:
    """That an oven is lit; and of one that falls, that its fire is out."""
    if firing.start is not None:
        row = _fire_row("preheat", firing, firing.start, firing.hot, firing.celsius, clock)
        if not firing.is_full:
            row = row._replace(seconds=Range(None, row.seconds.high))
        yield firing.start, row._replace(is_fire=bool(firing.oven.falls) or "wood" in firing.oven.heat)
    if firing.out is not None:
        floor = Range(firing.out.celsius, firing.out.celsius)
        yield firing.out.at, _fire_row("fire out", firing, firing.out.at, firing.out.at, floor, clock)


def _fire_row(job: str, firing: Firing, start: Fraction, end: Fraction, celsius: Range | None, clock: Clock) -> CardRow:
    return CardRow(
        start=clock.at(start),
        begins=clock.at(start),
        end=clock.at(end),
        elapsed=minute(start),
        job=job,
        step=firing.step,
        stage="",
        branch="",
        mix=0,
        pieces=Fraction(0),
        who=Who.MACHINE,
        is_estimate=False,
        seconds=Range(end - start, end - start),
        by_piece=False,
        handling=(),
        place=firing.oven.name,
        number=0,
        of=0,
        load=0,
        loads=0,
        of_mixes=(),
        baked_before=False,
        celsius=celsius,
        critical=False,
        latest=clock.at(start),
        moves="oven",
        slack=0,
        stands_until=None,
        gives=NOTHING_GIVEN,
        at=None,
    )
