"""When a job may begin, how long it waits for another, and when what it makes is there."""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.model import Day, Timetable
from manchet.day.rules.refusal import Refusal, ends_of


def window(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """A job begins between its earliest and its latest, and lies wholly in the day."""
    for at, (job, start, end) in enumerate(zip(day.jobs, timetable.starts, ends_of(day, timetable), strict=True)):
        if start < job.earliest:
            yield Refusal(
                "window", f"{job.key} begins at {start}, and at {job.earliest} at the earliest", (at,), (), start
            )
        if start > job.latest:
            yield Refusal("window", f"{job.key} begins at {start}, and at {job.latest} at the latest", (at,), (), start)
        if start < day.begins:
            yield Refusal("window", f"{job.key} begins at {start}, and the day at {day.begins}", (at,), (), start)
        if end > day.finishes:
            yield Refusal("window", f"{job.key} ends at {end}, and the day at {day.finishes}", (at,), (), end)


def wait(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """Each wait is at least its least, and at most its most and what it may wait beyond."""
    for each in day.waits:
        start = timetable.starts[each.after]
        waits = start - timetable.starts[each.before]
        between = f"{day.jobs[each.after].key} begins {waits} min after {day.jobs[each.before].key}"
        if waits < each.least:
            yield Refusal("wait", f"{between}, and {each.least} is the least", (each.before, each.after), (), start)
        if each.most is not None and waits > each.most + each.may:
            most = each.most + each.may
            yield Refusal("wait", f"{between}, and {most} is the most", (each.before, each.after), (), start)


def end(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """What has a window isn't there before it, and nothing is older at its hour than it may be. Being late is no fault."""
    ends = ends_of(day, timetable)
    for each in day.ends:
        there = ends[each.job] + each.after
        if each.not_before is not None and there < each.not_before:
            words = f"{each.bread} is {each.word} at {there}, and {each.not_before} is the earliest"
            yield Refusal("end", words, (each.job,), (), there)
        if each.oldest is not None and each.due - ends[each.job] > each.oldest:
            words = f"{each.bread} is {each.due - ends[each.job]} min old when it is due, and {each.oldest} is the most"
            yield Refusal("end", words, (each.job,), (), each.due)
