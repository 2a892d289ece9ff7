"""When a formula is begun at home, counted back from when it is to be ready, and for which hours the night stays a night."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.diagnostics.suggest import fold
from manchet.figures.mixing.by_hand import times_by_hand
from manchet.formula.model import Range, Step, Who
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN, COLD
from manchet.timing.jobs.durations import Length, inside
from manchet.timing.jobs.handling import seconds_of
from manchet.timing.jobs.network import Job, network_of
from manchet.timing.jobs.schedule import starts_of

HOUR = 3600
DAY = 24 * HOUR
NIGHT = (23 * HOUR, 6 * HOUR)
"""Seconds of the day from when to when people sleep."""
FIRST, NOON, LAST = 8, 13, 20
"""Hours of the day between which a bread is wanted ready, and the one that is best, of equals. Our own rule."""
APART = 3
"""Hours between two ready times of one day, where the night allows it. Our own rule."""
LONG_COLD = Fraction(2 * HOUR)
"""Seconds from which a wait in the cold is a time of the day that one plans by. Our own rule."""


class Begins(NamedTuple):
    """Something begins so many seconds before the bread is ready.

    `what` is "ahead" (a preparation), "stage", "divide", "cold", "oven" (it is switched on) or "bake"; `name` that of the
    preparation, of the stage, or the noun of a sort of piece, "" for all.
    """

    what: str
    name: str
    before: Fraction


class HomeCourse(NamedTuple):
    """The work at home with all its waits: what begins when, and when hands are wanted."""

    total: Fraction
    """Seconds of all of it."""
    baked: Fraction
    """Seconds in the oven: of the longest of several sorts."""
    begins: tuple[Begins, ...]
    """In order of time, the earliest first."""
    hands: tuple[Fraction, ...]
    """Seconds before it is ready at which somebody must be there."""


class ReadyAt(NamedTuple):
    """An hour of a day of the week (Monday is 0)."""

    weekday: int
    hour: int


SATURDAY, SUNDAY = 5, 6


def course_at_home(work: Work, ahead: Sequence[Work], heats_in: Mapping[str, Fraction]) -> HomeCourse:
    """`ahead`: what is made before it, in the order it is made; `heats_in`: seconds that the oven is on before a bake, by the
    noun of the sort."""
    jobs, starts, total = _laid(work)
    hands = [*_hands(jobs, starts)]
    begins: list[Begins] = []
    seen: set[tuple[str, str]] = set()

    def first(what: str, name: str, start: Fraction) -> None:
        if (what, name) not in seen:
            seen.add((what, name))
            begins.append(Begins(what, name, start))

    for job, start in sorted(zip(jobs, starts, strict=True), key=lambda one: one[1]):
        first("stage", job.stage.name or job.stage.word, start)
        if job.step.verb == "divide":
            first("divide", "", start)
        if job.is_dough and job.step.verb in COLD and job.length.planned >= LONG_COLD:
            first("cold", job.branch, start)
        if job.step.verb == "bake" and ("bake", job.branch) not in seen:
            if job.branch in heats_in:
                on = start - heats_in[job.branch]
                begins.append(Begins("oven", job.branch, on))
                hands.append(on)
            first("bake", job.branch, start)
    used = _first_uses(jobs, starts, work)
    for each in reversed(ahead):
        own, own_starts, own_total = _laid(each)
        start = used.get(fold(each.formula.name), Fraction(0)) - own_total
        begins.insert(0, Begins("ahead", each.formula.name, start))
        hands += [start + at for at in _hands(own, own_starts)]
        for key, at in _first_uses(own, own_starts, each).items():
            used[key] = min(used.get(key, start + at), start + at)
    ordered = sorted(begins, key=lambda one: one.before)
    return HomeCourse(
        total, _baked(work), tuple(one._replace(before=total - one.before) for one in ordered),
        tuple(sorted({total - at for at in hands}, reverse=True)),
    )  # fmt: skip


def _laid(work: Work) -> tuple[tuple[Job, ...], tuple[Fraction, ...], Fraction]:
    """The jobs with hands for the mixer, when each begins, and how long it all is."""
    by_hand: dict[int, Range] = {}
    for stage in work.formula.stages:
        times = times_by_hand(stage.steps, is_stirred(work, stage is work.formula.dough))
        by_hand |= {id(stage.steps[at]): seconds for at, seconds in times.items()}
    jobs = []
    for job in network_of(work):
        seconds = by_hand.get(id(job.step))
        if seconds is not None:
            own = Length(seconds.low or Fraction(0), seconds.likely, seconds.high, False)
            job = job._replace(length=own.longer(seconds_of(job.before)))
        jobs.append(job)
    laid = tuple(jobs)
    starts = starts_of(laid)
    total = max((start + job.length.planned for start, job in zip(starts, laid, strict=True)), default=Fraction(0))
    return laid, starts, total


def is_stirred(work: Work, is_dough: bool) -> bool:
    """A preferment is only stirred together, like a batter."""
    return not is_dough or work.bread.stirred


def _hands(jobs: Sequence[Job], starts: Sequence[Fraction]) -> Iterable[Fraction]:
    """When somebody is there: for what is done, for what is done inside a wait, at both ends of a bake."""
    for job, start in zip(jobs, starts, strict=True):
        baked = job.step.verb == "bake"
        if baked or job.step.who is not Who.WAITING:
            yield start
        if baked:
            yield start + job.length.planned
        for one in inside(job.step):
            yield start + one.after


def _first_uses(jobs: Sequence[Job], starts: Sequence[Fraction], work: Work) -> dict[str, Fraction]:
    """When each thing that is not made here is first wanted, by key."""
    found: dict[str, Fraction] = {}
    weighed = {stage.stage.key: {w.portion.stage for w in stage.weighed} - {""} for stage in work.batch.stages}
    for job, start in zip(jobs, starts, strict=True):
        for key in _brought(job.step) | weighed.get(job.stage.key, set()):
            found[key] = min(found.get(key, start), start)
    return found


def _brought(step: Step) -> set[str]:
    keys = {goes.key for goes in step.goes} if step.verb in BRINGS_IN else set()
    keys |= {step.bath} - {""}
    return keys if step.applied is None or not step.applied.stage else keys | {step.applied.stage}


def _baked(work: Work) -> Fraction:
    ways = [steps for _, steps in work.formula.ways]
    return max(
        sum((s.time.likely for s in way if s.verb == "bake" and s.time is not None), Fraction(0)) for way in ways
    )


def ready_times(course: HomeCourse) -> tuple[ReadyAt, ...]:
    """Two times of Saturday and one of Sunday for which the fewest jobs fall in the night, in their order."""
    hours = range(FIRST, LAST + 1)
    best = min(hours, key=lambda hour: (_at_night(course, hour), abs(hour - NOON)))
    others = [hour for hour in hours if hour != best]
    second = min(others, key=lambda hour: (_at_night(course, hour), max(0, APART - abs(hour - best)), abs(hour - NOON)))
    return (*(ReadyAt(SATURDAY, hour) for hour in sorted((best, second))), ReadyAt(SUNDAY, best))


def _at_night(course: HomeCourse, hour: int) -> int:
    clocks = {(hour * HOUR - int(before)) % DAY // 60 for before in course.hands}
    return sum(1 for clock in clocks if clock * 60 >= NIGHT[0] or clock * 60 < NIGHT[1])
