"""`manchet plan --now …`: the rest of a day whose plan is written, with as little changed as it takes."""

from __future__ import annotations

import sys
from collections.abc import Iterator, Sequence
from datetime import datetime
from typing import TYPE_CHECKING

from manchet.cli.plan_text import hour
from manchet.cli.reporting import path_from_here
from manchet.day.again.fixing import Again, day_again
from manchet.day.again.moves import loads_colder, moves
from manchet.day.again.news import LateBy, News, done_by
from manchet.day.again.planning import plan_again
from manchet.day.again.told import Told, laid_over, told_of
from manchet.day.clock import hours_and_minutes
from manchet.day.finding import better_by_solver, find_plan
from manchet.day.found import FoundPlan
from manchet.day.goals import beyond, late
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.model import Planned, Timetable
from manchet.day.naming import Named, Unnamed, job_named, minutes_late, thing_named
from manchet.diagnostics.terminal import show
from manchet.records import NamedTuple
from manchet.workspace.plan_record import PlanRecord, changed_since, lacks, record_at, timetable_of_record
from manchet.workspace.trouble import Unknown

if TYPE_CHECKING:
    from collections.abc import Mapping


class SaidNews(NamedTuple):
    """What was typed."""

    now: str
    done: tuple[str, ...]
    late: tuple[str, ...]


class PlannedAgain(NamedTuple):
    of: PlannedDay
    """The day with what has begun at its real times."""
    found: FoundPlan
    again: Again
    told: Told
    """What still holds when it is planned once more."""


def planned_again(
    of: PlannedDay, said: SaidNews, written: str, digests: Mapping[str, str], solver: bool
) -> PlannedAgain | None:
    """`written` is where the plan last written lies. None where there is no plan to begin with. Raises `Unknown`."""
    record, of_files = record_at(written), of.day
    if record is not None:
        of = of._replace(day=laid_over(of.day, record.told))
    last = _last(of, record, written, digests, solver)
    if last is None:
        return None
    again = day_again(of.day, last, _news(of, said, last))
    better = better_by_solver() if solver else None
    found = plan_again(again, lambda day: _timetable(find_plan(day, solver).planned), better)
    return PlannedAgain(of._replace(day=again.own), found, again, told_of(again, of_files))


def _timetable(planned: Planned | None) -> Timetable | None:
    return None if planned is None else planned.timetable


def _last(
    of: PlannedDay, record: PlanRecord | None, written: str, digests: Mapping[str, str], solver: bool
) -> Timetable | None:
    if record is None:
        print(f"no plan is written in {show(written)} yet: it is worked out first", file=sys.stderr)
        return _timetable(find_plan(of.day, solver).planned)
    changed = changed_since(record, digests)
    if changed:
        names = ", ".join(show(path_from_here(path)) for path in changed[:6])
        print(f"changed since the plan was written: {names}", file=sys.stderr)
    anew = _timetable(find_plan(of.day, solver).planned) if lacks(record, of) else None
    return None if lacks(record, of) and anew is None else timetable_of_record(record, of, anew)


def _news(of: PlannedDay, said: SaidNews, last: Timetable) -> News:
    now = _minute(of, said.now)
    begun = []
    for words in said.done:
        job = _found(job_named(of.day, words)).job
        assert job is not None
        begun.append(done_by(of.day, last, job, now))
    late_by = []
    for text in said.late:
        read = minutes_late(text)
        if read is None:
            raise Unknown(
                f"`--late '{text}'` does not say by how much", f"write the minutes behind it: --late '{text} 25 min'"
            )
        words, number = read
        thing = _found(thing_named(of.day, words))
        late_by.append(LateBy(number, thing.job, thing.wait, thing.load))
    return News(now, tuple(begun), tuple(late_by))


def _found(named: Named | Unnamed) -> Named:
    if isinstance(named, Unnamed):
        raise Unknown(named.message, named.help)
    return named


def _minute(of: PlannedDay, text: str) -> int:
    """The minute of the day that `--now` says: of a weekday, the one that the plan is about."""
    from manchet.timing.when import moment

    zero = of.clock.zero.replace(tzinfo=None)
    found = moment(text, zero)
    if isinstance(found, str):
        raise Unknown(found)
    minute = of.clock.minute(found[0])
    if not of.day.begins <= minute <= of.day.finishes:
        first, last = of.clock.at(of.day.begins), of.clock.at(of.day.finishes)
        raise Unknown(
            f"{_dated(found[0])} lies outside this plan, which goes from {_dated(first)} to {_dated(last)}",
            "write the hour it is now, as in --now 'Fri 22:00'",
        )
    return minute


def _dated(moment: datetime) -> str:
    return f"{moment:%a %Y-%m-%d %H:%M}"


def in_the_way(of: PlannedDay, again: Again) -> tuple[str, ...]:
    """Why the rest of the day can't be planned, as far as it is seen without a search; and what can be changed."""
    from manchet.day.again.longer import longer_shifts
    from manchet.day.clashes.seen import clashes_seen

    def told(minute: int) -> str:
        return hour(of.clock.at(minute))

    seen = tuple(clash.words for clash in clashes_seen(again.day, told))
    longer = longer_shifts(again, lambda day: _timetable(find_plan(day, with_solver=False).planned))
    stays = [f"{again.day.shifts[one.shift].name} to {told(one.ends)}" for one in longer]
    if stays:
        return (*seen, f"it can be done if one stays longer; write it in the plan: {' or '.join(stays)}")
    return (
        *seen,
        "write in the plan what can be changed, a second pair of hands or a bread left out, and plan it again",
    )


def moved_lines(of: PlannedDay, again: Again, planned: Planned) -> Iterator[str]:
    """What moved, the old hour beside the new one; and what that costs."""
    moved = moves(again, planned.timetable)
    if not moved:
        yield "nothing moves"
    rows = []
    for move in moved:
        job = of.day.jobs[move.job]
        who = of.day.shifts[move.shift].name if move.shift >= 0 else ""
        was = of.day.shifts[move.shift_was].name if move.shift_was >= 0 and move.shift_was != move.shift else ""
        hand = f"{who} for {was}" if was and was != who else who
        rows.append(
            (
                hour(of.clock.at(move.was)),
                hour(of.clock.at(move.start)),
                hand,
                f"{', '.join(job.breads) or job.key.partition('/')[0]}: {job.does}",
            )
        )
    yield from _table(rows)
    for number, _ in loads_colder(again, planned.timetable):
        load = of.day.loads[number]
        yield f"{show(load.bread)} goes in at a colder floor than it wants: bake it longer, by its core or its look"
    for wait in again.own.waits:
        longer = 0 if wait.most is None else beyond(wait, planned.timetable) - wait.may
        if longer > 0 and wait.after not in again.begun:
            whose = ", ".join(of.day.jobs[wait.before].breads)
            yield f"{show(whose)}: {show(wait.what or 'it')} stands {hours_and_minutes(longer)} longer than it may"
    behind = late(of.day, planned.timetable)
    if behind:
        yield f"{hours_and_minutes(behind)} late in all"


def _table(rows: Sequence[tuple[str, str, str, str]]) -> Iterator[str]:
    wide = max((len(row[2]) for row in rows), default=0)
    for was, is_now, who, what in rows:
        yield f"  {was} -> {is_now}  {show(who):<{wide}}  {show(what)}"
