"""Published scheduling instances told as days: activities are jobs that go by themselves, resources are places, machines mixers.

Read are the formats of PSPLIB (`.sm`, Kolisch and Sprecher 1997), ProGen/max (`.SCH`, with least and most lags) and of the job
shops after Fisher and Thompson (`.jss`). The length of the whole is minutes late: a last job is due at minute 0.
"""

from __future__ import annotations

import csv
from collections.abc import Iterator
from pathlib import Path
from typing import NamedTuple

from manchet.day.model import Day, DayJob, DayMixer, DayPlace, DayWait, End, Stay


class Activity(NamedTuple):
    minutes: int
    takes: tuple[int, ...]
    """Of each resource."""
    machine: str = ""


class Published(NamedTuple):
    name: str
    day: Day
    optimum: int | None
    """None where it is published that there is no plan."""


def published_in(folder: Path) -> Iterator[Published]:
    """Those that its `optima.csv` names."""
    with (folder / "optima.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            path = folder / row["file"]
            optimum = None if row["published_optimum"] == "unsat" else int(row["published_optimum"])
            yield Published(path.name, READERS[path.suffix](path.read_text(encoding="utf-8")), optimum)


def progen_max(text: str) -> Day:
    rows = [[int(word) for word in line.replace("[", " ").replace("]", " ").split()] for line in text.splitlines()]
    count = rows[0][0] + 2
    lags: list[tuple[int, int, int]] = []
    for number, _, many, *rest in rows[1 : count + 1]:
        lags.extend((number, later, lag) for later, lag in zip(rest[:many], rest[many:], strict=True))
    activities = [Activity(row[2], tuple(row[3:])) for row in rows[count + 1 : 2 * count + 1]]
    return _day(activities, lags, tuple(rows[2 * count + 1]))


def psplib(text: str) -> Day:
    tables: dict[str, list[list[int]]] = {}
    name = ""
    for line in text.splitlines():
        if line.endswith(":"):
            name = line.removesuffix(":")
        elif line.replace(" ", "").isdigit():
            tables.setdefault(name, []).append([int(word) for word in line.split()])
    activities = [Activity(row[2], tuple(row[3:])) for row in tables["REQUESTS/DURATIONS"]]
    lags = [
        (number - 1, later - 1, activities[number - 1].minutes)
        for number, _, _, *rest in tables["PRECEDENCE RELATIONS"]
        for later in rest
    ]
    return _day(activities, lags, tuple(tables["RESOURCEAVAILABILITIES"][0]))


def job_shop(text: str) -> Day:
    rows = [[int(word) for word in line.split()] for line in text.splitlines() if not line.startswith("#")]
    activities: list[Activity] = []
    lags: list[tuple[int, int, int]] = []
    for row in rows[1:]:
        for step, (machine, minutes) in enumerate(zip(row[::2], row[1::2], strict=True)):
            if step:
                lags.append((len(activities) - 1, len(activities), activities[-1].minutes))
            activities.append(Activity(minutes, (), f"machine {machine}"))
    return _day(activities, lags, ())


READERS = {".SCH": progen_max, ".sm": psplib, ".jss": job_shop}


def _day(activities: list[Activity], lags: list[tuple[int, int, int]], holds: tuple[int, ...]) -> Day:
    """A lag is (earlier, later, minutes from beginning to beginning); one below 0 is a most, the other way round."""
    finishes = sum(activity.minutes for activity in activities) + sum(max(lag, 0) for _, _, lag in lags)
    last = len(activities)
    jobs = [
        DayJob(f"{number}", (), "", max(activity.minutes, 1), 0, finishes, hands=0, mixer=activity.machine)
        for number, activity in enumerate(activities)
    ]
    jobs.append(DayJob("last", (), "", 1, 0, finishes, hands=0))
    waits = [
        DayWait(earlier, later, lag, None) if lag >= 0 else DayWait(later, earlier, -finishes, -lag)
        for earlier, later, lag in lags
    ]
    waits.extend(DayWait(number, last, activity.minutes, None) for number, activity in enumerate(activities))
    return Day(
        tuple(jobs),
        tuple(waits),
        (),
        (),
        (),
        tuple(
            DayMixer(name) for name in dict.fromkeys(activity.machine for activity in activities if activity.machine)
        ),
        tuple(DayPlace(f"{number}", most) for number, most in enumerate(holds)),
        tuple(
            Stay(f"{number}", takes, job, job)
            for job, activity in enumerate(activities)
            for number, takes in enumerate(activity.takes)
            if activity.minutes
        ),
        (),
        (End("all", 1, "", last, -1, 0),),
        0,
        finishes + 1,
    )
