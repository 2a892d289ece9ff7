"""The net of a day before anything is decided: when somebody is there for each job, what is due, and all waits."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.day.model import Day, DayJob, Shift
from manchet.day.posting.choices import Choice
from manchet.day.posting.net import Knots, Net, Origin, Tie
from manchet.records import NamedTuple

Spans = tuple[tuple[int, int], ...]


class Leave(NamedTuple):
    """What a plan is allowed beyond what is wanted, in minutes."""

    late: tuple[int, ...]
    """Of each end."""
    may: tuple[int, ...]
    """Of each wait, of its `may`."""


def no_leave(day: Day) -> Leave:
    return Leave((0,) * len(day.ends), (0,) * len(day.waits))


class Outset(NamedTuple):
    """What of a day stays the same whatever leave there is."""

    day: Day
    staffed: tuple[Spans, ...]
    """Of each job, when it could begin if nothing but shifts, mixers and its own two minutes bound it."""
    ties: tuple[Tie, ...]
    """All that are no wait's longest."""


def outset_of(day: Day) -> Outset:
    return Outset(day, tuple(_staffed(day, job) for job in day.jobs), tuple(_fixed_ties(day)))


def net_of(outset: Outset, leave: Leave, taken: Sequence[Choice] = ()) -> Net:
    """The windows of all jobs, and of the knot that stands at 0, after these choices."""
    day = outset.day
    spans, floors, ceilings = [], [], []
    ends: dict[int, list[int]] = {}
    for at, end in enumerate(day.ends):
        ends.setdefault(end.job, []).append(at)
    for at, (job, staffed) in enumerate(zip(day.jobs, outset.staffed, strict=True)):
        low, floor = max(job.earliest, day.begins), Origin("earliest", at)
        high, ceiling = min(job.latest, day.finishes - job.minutes), Origin("latest", at)
        for number in ends.get(at, ()):
            end = day.ends[number]
            due = end.due - end.after - job.minutes + leave.late[number]
            if due < high:
                high, ceiling = due, Origin("end", number)
            first = max(
                low if end.not_before is None else end.not_before - end.after - job.minutes,
                low if end.oldest is None else end.due - end.oldest - job.minutes,
            )
            if first > low:
                low, floor = first, Origin("end", number)
        spans.append(tuple(_clip(staffed, low, high)))
        floors.append(floor)
        ceilings.append(ceiling)
    zero = ((0, 0),)
    knots = Knots((*spans, zero), (*floors, Origin("zero")), (*ceilings, Origin("zero")))
    ties = [(-1, tie) for tie in (*outset.ties, *_longest(day, leave))]
    return Net(knots, [*ties, *((at, tie) for at, choice in enumerate(taken) for tie in choice.ties)])


def _fixed_ties(day: Day) -> Iterator[Tie]:
    for at, wait in enumerate(day.waits):
        yield Tie(wait.before, wait.after, wait.least, Origin("least", at))
    for at, load in enumerate(day.loads):
        yield Tie(load.put, load.take, load.stays, Origin("stays", at))
        yield Tie(load.take, load.put, -load.stays, Origin("stays", at))


def _longest(day: Day, leave: Leave) -> Iterator[Tie]:
    for at, wait in enumerate(day.waits):
        if wait.most is not None:
            yield Tie(wait.after, wait.before, -wait.most - leave.may[at], Origin("most", at))


def shifts_for(day: Day, job: DayJob) -> Iterator[tuple[int, Shift]]:
    """The shifts that have the hands for a job, with their numbers."""
    for number, shift in enumerate(day.shifts):
        if job.hands <= shift.hands and job.shift in ("", shift.key):
            yield number, shift


def _staffed(day: Day, job: DayJob) -> Spans:
    whole = (day.begins, day.finishes - job.minutes)
    spans = [whole] if not job.hands else [(s.begins, s.ends - job.minutes) for _, s in shifts_for(day, job)]
    for mixer in day.mixers:
        if mixer.name == job.mixer:
            for gone, back in mixer.away:
                spans = [
                    part
                    for first, last in spans
                    for part in ((first, min(last, gone - job.minutes)), (max(first, back), last))
                ]
    return tuple(_joined(sorted((first, last) for first, last in spans if first <= last)))


def _joined(spans: list[tuple[int, int]]) -> Iterator[tuple[int, int]]:
    """Spans that touch or overlap are one."""
    if not spans:
        return
    low, high = spans[0]
    for first, last in spans[1:]:
        if first > high + 1:
            yield low, high
            low, high = first, last
        high = max(high, last)
    yield low, high


def _clip(spans: Spans, low: int, high: int) -> Iterator[tuple[int, int]]:
    for first, last in spans:
        if max(first, low) <= min(last, high):
            yield max(first, low), min(last, high)
