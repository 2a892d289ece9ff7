"""A worked-out day as data: what `manchet plan --format json` prints and what is written beside the pages.

Times are of the kitchen's clock, in ISO 8601, with their offset where its zone is known.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from datetime import datetime

from manchet.day.again.told import NOTHING_TOLD, Told
from manchet.day.clashes.values import Clashes, Remedy
from manchet.day.explaining import first_holds
from manchet.day.floors import floor_at
from manchet.day.goals import late, may_wait, room
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Goal, Planned, Timetable

Json = dict[str, object]

NOT_PLANNED = {"late_minutes": None, "may_wait_minutes": None, "room_minutes": None}


def report_of(
    name: str,
    date: str,
    of: PlannedDay | None,
    planned: Planned | None,
    latest: Sequence[int] = (),
    clashes: Sequence[Json] = (),
    digests: Mapping[str, str] | None = None,
    told: Told = NOTHING_TOLD,
) -> Json:
    """The plan; without one, why there is none. `latest` of each job, where known; `digests` of the files it was made from."""
    head: Json = {"plan": name, "date": date, "made_from": dict(digests or {})}
    if of is None or planned is None:
        return head | NOT_PLANNED | {"proven": {}, "goals": [], "jobs": [], "loads": [], "clashes": list(clashes)}
    day, timetable = of.day, planned.timetable
    held = first_holds(day, timetable)
    return head | {
        "late_minutes": late(day, timetable),
        "may_wait_minutes": may_wait(day, timetable),
        "room_minutes": room(day, timetable),
        "proven": {goal.name.replace(" ", "_"): goal.proven for goal in planned.goals},
        "goals": [_goal(goal) for goal in planned.goals],
        "made": planned.engine,
        "finished": planned.is_finished,
        "jobs": [_job(of, timetable, at, latest, held[at].words) for at in _in_order(timetable)],
        "loads": [_load(of, timetable, at) for at in _as_they_go_in(of, timetable)],
        "ends": [_end(of, timetable, at) for at in range(len(day.ends))],
        "clashes": list(clashes),
        "told": {"waits": [one._asdict() for one in told.waits], "loads": [one._asdict() for one in told.loads]},
    }


def clash_report(name: str, date: str, of: PlannedDay, planned: Planned | None, clashes: Clashes | None) -> Json:
    """Why there is no plan that is on time: what clashes, the smallest changes that help, and what doesn't."""
    late_minutes = None if planned is None else late(of.day, planned.timetable)
    report = report_of(name, date, None, None) | {"late_minutes": late_minutes}
    if clashes is None:
        return report
    changes = [_remedy(of, remedy) for remedy in clashes.remedies]
    return report | {
        "clashes": [
            {
                "words": clash.words,
                "head": clash.head,
                "reasons": list(clash.reasons),
                "breads": list(clash.breads),
                "proven": clash.is_certain,
                "changes": changes,
                "mend_this": [_remedy(of, remedy) for remedy in clash.remedies],
                "no_help": list(clashes.useless),
            }
            for clash in clashes.clashes
        ],
        "finished": clashes.is_finished,
    }


def _remedy(of: PlannedDay, remedy: Remedy) -> Json:
    return {
        "kind": remedy.kind,
        "words": remedy.words,
        "bread": remedy.bread,
        "minutes": remedy.minutes,
        "hours": [{"from": _iso(of.clock.at(first)), "to": _iso(of.clock.at(last))} for first, last in remedy.hours],
        "parts": [_remedy(of, part) for part in remedy.parts],
    }


def _goal(goal: Goal) -> Json:
    return {"name": goal.name.replace(" ", "_"), "value": goal.value, "bound": goal.bound, "proven": goal.proven}


def _in_order(timetable: Timetable) -> list[int]:
    return sorted(range(len(timetable.starts)), key=lambda at: (timetable.starts[at], at))


def _as_they_go_in(of: PlannedDay, timetable: Timetable) -> list[int]:
    loads = of.day.loads
    return sorted(range(len(loads)), key=lambda at: (timetable.starts[loads[at].put], at))


def _job(of: PlannedDay, timetable: Timetable, at: int, latest: Sequence[int], held: str) -> Json:
    job, start, shift = of.day.jobs[at], timetable.starts[at], timetable.shifts[at]
    moment = of.moments[at]
    load = next((one for one in of.day.loads if at in (one.put, one.take)), None)
    return {
        "key": job.key,
        "bread": ", ".join(job.breads),
        "what": job.does,
        "start": _iso(of.clock.at(start)),
        "end": _iso(of.clock.at(start + job.minutes)),
        "latest": _iso(of.clock.at(latest[at])) if latest else None,
        "held": held,
        "minutes": job.minutes,
        "estimate": moment is None or any(part.is_estimate for part in moment.parts),
        "who": of.day.shifts[shift].name if shift >= 0 else "",
        "shift": of.day.shifts[shift].key if shift >= 0 else "",
        "where": load.oven if load is not None else job.mixer,
    }


def _load(of: PlannedDay, timetable: Timetable, at: int) -> Json:
    load = of.day.loads[at]
    floor = floor_at(of.day, timetable, load)
    start = timetable.starts[load.put]
    return {
        "key": load.key,
        "oven": load.oven,
        "deck": timetable.decks[at] + 1,
        "bread": load.bread,
        "pieces": load.pieces,
        "noun": load.noun,
        "in": _iso(of.clock.at(start)),
        "out": _iso(of.clock.at(start + load.stays)),
        "floor": None if floor is None else round(floor),
    }


def _end(of: PlannedDay, timetable: Timetable, at: int) -> Json:
    end = of.day.ends[at]
    there = timetable.starts[end.job] + of.day.jobs[end.job].minutes + end.after
    return {
        "bread": end.bread,
        "pieces": end.pieces,
        "noun": end.noun,
        end.word: _iso(of.clock.at(there)),
        "due": _iso(of.clock.at(end.due)),
        "late_minutes": max(there - end.due, 0),
    }


def _iso(moment: datetime) -> str:
    return moment.isoformat(timespec="minutes")
