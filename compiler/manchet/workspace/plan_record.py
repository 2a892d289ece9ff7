"""The plan last written, read back from its JSON in the output folder: what was to begin when, and from which files."""

from __future__ import annotations

import json
import os
from collections.abc import Iterable, Mapping
from datetime import datetime, timedelta

from manchet.day.again.told import LongerLoad, LongerWait, Told
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Timetable
from manchet.records import NamedTuple
from manchet.workspace import cache
from manchet.workspace.raw_files import Raw
from manchet.workspace.trouble import Unknown


class JobRecord(NamedTuple):
    start: datetime
    shift: str
    """Its key; "" where the job wants no hands."""


class PlanRecord(NamedTuple):
    """What the file says, by the keys of jobs and loads."""

    path: str
    jobs: Mapping[str, JobRecord]
    decks: Mapping[str, int]
    """From 0."""
    made_from: Mapping[str, str]
    """The digest of each file by its path."""
    told: Told


def record_at(path: str) -> PlanRecord | None:
    """None where no plan was written yet. Raises `Unknown` where the file holds something else."""
    if not os.path.isfile(path):
        return None
    try:
        with open(path, encoding="utf-8") as file:
            said = json.load(file)
        jobs = {one["key"]: JobRecord(datetime.fromisoformat(one["start"]), one["shift"]) for one in said["jobs"]}
        decks = {one["key"]: int(one["deck"]) - 1 for one in said["loads"]}
        told = Told(
            tuple(LongerWait(**one) for one in said["told"]["waits"]),
            tuple(LongerLoad(**one) for one in said["told"]["loads"]),
        )
        return PlanRecord(path, jobs, decks, dict(said["made_from"]), told)
    except (OSError, ValueError, KeyError, TypeError):
        raise Unknown(
            f"{path} is no plan that can be read", "take it away, and the plan is worked out from the start"
        ) from None


def digests(files: Iterable[Raw]) -> dict[str, str]:
    """Of each file, by its path."""
    return {file.path: cache.digest(file.data)[:16] for file in files}


def changed_since(record: PlanRecord, now: Mapping[str, str]) -> tuple[str, ...]:
    """The files that are not as they were when the plan was written."""
    return tuple(
        sorted(path for path in record.made_from.keys() | now.keys() if record.made_from.get(path) != now.get(path))
    )


def lacks(record: PlanRecord, of: PlannedDay) -> bool:
    """There are jobs in the day that were in none when the plan was written."""
    return any(job.key not in record.jobs for job in of.day.jobs)


def timetable_of_record(record: PlanRecord, of: PlannedDay, anew: Timetable | None = None) -> Timetable:
    """The plan last written, as one of this day; of what was not in it what `anew` has, a plan of this day."""
    shifts = {shift.key: number for number, shift in enumerate(of.day.shifts)}
    starts, its = [], []
    for at, job in enumerate(of.day.jobs):
        known = record.jobs.get(job.key)
        if known is None and anew is not None:
            starts.append(anew.starts[at])
            its.append(anew.shifts[at])
            continue
        assert known is not None
        starts.append(int((known.start - of.clock.zero) // timedelta(minutes=1)))
        its.append(shifts.get(known.shift, 0 if job.hands else -1))
    decks = tuple(record.decks.get(load.key, 0) for load in of.day.loads)
    return Timetable(tuple(starts), tuple(its), decks)
