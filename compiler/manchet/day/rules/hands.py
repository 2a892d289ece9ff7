"""Who does a job: one shift, which it lies wholly inside and which has the hands for it in each of its minutes."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator

from manchet.day.model import BREAK_BEFORE_OUT, Day, Timetable
from manchet.day.rules.refusal import Refusal, ends_of


def shift(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """A job that wants hands has one shift, its own where it is bound to one, and lies wholly inside it; no other has any."""
    ends = ends_of(day, timetable)
    for at, (job, number) in enumerate(zip(day.jobs, timetable.shifts, strict=True)):
        start = timetable.starts[at]
        if not job.hands:
            if number >= 0:
                yield Refusal(
                    "shift", f"{job.key} goes by itself, and {day.shifts[number].key} has it", (at,), (), start
                )
            continue
        if number < 0:
            yield Refusal("shift", f"nobody does {job.key}", (at,), (), start)
            continue
        its = day.shifts[number]
        if job.shift and job.shift != its.key:
            yield Refusal("shift", f"{its.key} does {job.key}, which {job.shift} is to do", (at,), (), start)
        if start < its.begins:
            yield Refusal(
                "shift", f"{job.key} begins at {start}, and {its.key} comes at {its.begins}", (at,), (), start
            )
        if ends[at] > its.ends:
            yield Refusal(
                "shift", f"{job.key} ends at {ends[at]}, and {its.key} goes at {its.ends}", (at,), (), its.ends
            )


def hands(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """In no minute do the jobs of a shift want more hands than it has."""
    wanted = [Counter[int]() for _ in day.shifts]
    for start, job, number in zip(timetable.starts, day.jobs, timetable.shifts, strict=True):
        if job.hands and number >= 0:
            for minute in range(start, start + job.minutes):
                wanted[number][minute] += job.hands
    ends = ends_of(day, timetable)
    for number, (its, minutes) in enumerate(zip(day.shifts, wanted, strict=True)):
        over = [minute for minute, most in minutes.items() if most > its.hands]
        if over:
            first = min(over)
            busy = tuple(
                at
                for at, other in enumerate(timetable.shifts)
                if other == number and timetable.starts[at] <= first < ends[at] and day.jobs[at].hands
            )
            words = f"{its.key} is to do {', '.join(day.jobs[at].key for at in busy)} at {first}: {minutes[first]} pairs of hands, and has {its.hands}"
            yield Refusal("hands", words, busy, (), first)


def breaks(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """Nobody takes a break in the last minutes before a load comes out."""
    for at, (job, start) in enumerate(zip(day.jobs, timetable.starts, strict=True)):
        if not job.is_break:
            continue
        for number, load in enumerate(day.loads):
            out = timetable.starts[load.take]
            minutes = range(max(start, out - BREAK_BEFORE_OUT), min(start + job.minutes, out))
            if minutes:
                words = f"{job.key} goes on at {minutes[0]}, and {load.key} comes out at {out}"
                yield Refusal("break", words, (at,), (number,), minutes[0])
