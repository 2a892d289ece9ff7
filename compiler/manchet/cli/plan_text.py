"""A worked-out plan as text for the terminal: how good it is, who is there when, what is in the oven when."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime

from manchet.day.clashes.values import Clashes, DayClash
from manchet.day.clock import hours_and_minutes
from manchet.day.floors import floor_at
from manchet.day.goals import late, may_wait, room
from manchet.day.jobs.day_of import PlannedDay
from manchet.day.jobs.estimates import FOLD_EARLY, FOLD_LATE, STRETCH, STRETCH_PART
from manchet.day.model import Planned
from manchet.day.pages.assumed import ages_taken, has_folds, of_one_figure
from manchet.day.pages.day_plan import DayPlan
from manchet.day.pages.oven_settings import DeckTurn, settings_of
from manchet.diagnostics.terminal import show, width
from manchet.diagnostics.text import count_of
from manchet.formula.durations import duration
from manchet.formula.nouns import be, number_beside
from manchet.quantities.printing import mass_text


def plan_lines(name: str, plan: DayPlan) -> Iterator[str]:
    """The whole plan."""
    of, planned, day, timetable = plan.of, plan.planned, plan.day, plan.timetable
    behind = late(day, timetable)
    yield f"{show(name)}: {'on time' if not behind else f'{hours_and_minutes(behind)} late in all'}"
    yield ""
    yield from _table(_how_good(of, planned))
    for part in (_table(_people(of, planned)), _table(_oven(plan)), (f"  {line}" for line in remarks(of))):
        lines = list(part)
        if lines:
            yield ""
            yield from lines


def hour(moment: datetime) -> str:
    return f"{moment:%a %H:%M}"


def _how_good(of: PlannedDay, planned: Planned) -> Iterator[tuple[str, ...]]:
    proven = {goal.name for goal in planned.goals if goal.proven}
    waited, spare = may_wait(of.day, planned.timetable), room(of.day, planned.timetable)
    beyond = (
        f"{hours_and_minutes(waited)} beyond the range of a wait, within what it may wait"
        if waited
        else "every wait lies in its range"
    )
    yield "  waits", beyond + (", and no plan has less" if waited and "may wait" in proven else "")
    if of.day.loads:
        yield (
            "  room",
            f"{hours_and_minutes(spare)} to spare before the oven"
            + (", and no plan has more" if "room" in proven else ""),
        )
    how = "by the solver" if planned.engine != "by hand" else "without the solver; with it a better one may be found"
    yield "  found", how + ("" if planned.is_finished else "; it was stopped before all of it was gone through")


def _people(of: PlannedDay, planned: Planned) -> Iterator[tuple[str, ...]]:
    timetable = planned.timetable
    for number, shift in enumerate(of.day.shifts):
        mine = [at for at, its in enumerate(timetable.shifts) if its == number and not of.day.jobs[at].is_break]
        if not mine:
            yield (
                f"  {show(shift.name)}",
                f"{hour(of.clock.at(shift.begins))}-{of.clock.at(shift.ends):%H:%M}",
                "nothing to do",
            )
            continue
        first = of.clock.at(min(timetable.starts[at] for at in mine))
        last = of.clock.at(max(timetable.starts[at] + of.day.jobs[at].minutes for at in mine))
        work = sum(of.day.jobs[at].minutes for at in mine)
        yield (
            f"  {show(shift.name)}",
            f"{hour(first)} to {hour(last)}",
            f"{count_of(len(mine), 'job')}, {hours_and_minutes(work)} of work",
        )


def _oven(plan: DayPlan) -> Iterator[tuple[str, ...]]:
    of, day, timetable = plan.of, plan.day, plan.timetable
    rows: list[tuple[int, tuple[str, ...]]] = []
    for fire in day.fires:
        lit = timetable.starts[fire.light]
        hot = of.clock.at(lit + fire.heats)
        does = (
            "lit; fire out" if any(oven.name == fire.oven and oven.curve for oven in day.ovens) else "switched on; hot"
        )
        rows.append(
            (lit, (f"  {show(fire.oven)}", hour(of.clock.at(lit)), f"{hot:%H:%M}", "", f"{does} at {hot:%H:%M}"))
        )
    for one in settings_of(plan):
        at = plan.begins(one.job)
        named = f"  {show(one.oven)}{_deck(plan, one.oven, one.deck)}"
        if one.turn is DeckTurn.OFF:
            rows.append((at, (named, hour(of.clock.at(at)), "", "", "switched off")))
        elif one.by is not None:
            rows.append((at, (named, hour(of.clock.at(at)), "", "", "switched on again")))
    for at, load in enumerate(day.loads):
        start = timetable.starts[load.put]
        floor = floor_at(day, timetable, load)
        pieces = number_beside(load.bread, load.pieces, load.noun) if load.noun else ""
        rows.append(
            (
                start,
                (
                    f"  {show(load.oven)}{_deck(plan, load.oven, timetable.decks[at])}",
                    hour(of.clock.at(start)),
                    f"{of.clock.at(start + load.stays):%H:%M}",
                    "" if floor is None else f"{round(floor)} C",
                    ", ".join(part for part in (show(load.bread), pieces) if part),
                ),
            )
        )
    yield from (row for _, row in sorted(rows, key=lambda one: one[0]))


def _deck(plan: DayPlan, oven: str, deck: int) -> str:
    return f", deck {deck + 1}" if any(one.name == oven and one.decks > 1 for one in plan.day.ovens) else ""


def remarks(of: PlannedDay) -> Iterator[str]:
    """What was assumed, once each."""
    ages = [f"{duration(age.seconds)} for {', '.join(map(show, age.breads))}" for age in ages_taken(of)]
    if ages:
        yield f"oldest age when due, by kind, as no file says any: {'; '.join(ages)}"
    stretched = of_one_figure(of)
    if stretched:
        longer = f"{STRETCH // 60} min longer, or {STRETCH_PART * 100}%"
        yield f"waits of one figure may be {longer} where that is more: {', '.join(map(show, stretched))}"
    if has_folds(of):
        yield f"folds may come {FOLD_EARLY // 60} min early or {FOLD_LATE // 60} min late"
    if stretched or has_folds(of):
        yield "of pieces worked one after another the last has its whole wait before, the first a little less"
    for bread in of.mixed_by_load:
        yield f"{show(bread)} {be(bread)} mixed once for each load of the oven: the pieces cannot stand so long"
    for stage in of.built_twice:
        yield f"{show(stage)} {be(stage)} built more than once: the doughs that want it lie too far apart"
    for stage, there, wanted in of.short:
        yield f"of {show(stage)} {mass_text(there)} is there and {mass_text(wanted)} is wanted, so it is made anew"
    if of.unlimited:
        yield f"assumed enough, since the kitchen does not count it: {', '.join(map(show, of.unlimited))}"
    estimated = sum(1 for moment in of.moments if moment is not None and any(part.is_estimate for part in moment.parts))
    if estimated:
        yield f"{estimated} of {len(of.day.jobs)} jobs have work in them that nobody timed; its minutes are Manchet's estimate"


def _table(rows: Iterator[tuple[str, ...]]) -> Iterator[str]:
    """Columns under one another, the last as wide as it will."""
    kept = list(rows)
    columns = max((len(row) for row in kept), default=0) - 1
    widths = [max((width(row[at]) for row in kept if at < len(row) - 1), default=0) for at in range(columns)]
    for row in kept:
        cells = [cell + " " * (widths[at] - width(cell)) if at < len(row) - 1 else cell for at, cell in enumerate(row)]
        yield "  ".join(cells).rstrip()


def clash_lines(name: str, of: PlannedDay, planned: Planned | None, clashes: Clashes | None) -> Iterator[str]:
    """Why it can't be done, and what would help."""
    yield f"{show(name)} can't be done on time"
    if planned is not None:
        yield f"  the best plan that was found is {hours_and_minutes(late(of.day, planned.timetable))} late in all"
    if clashes is None:
        return
    yield ""
    told = tuple({clash.words: clash for clash in clashes.clashes}.values())
    if len(told) > 1:
        yield f"  {len(told)} things clash at once:"
        yield ""
    for number, clash in enumerate(told):
        yield from ("",) if number else ()
        yield from (f"  {line}" for line in _one_clash(clash))
    if clashes.remedies:
        yield ""
        yield "  any one of these would do:"
        yield from (f"    {show(remedy.words)}" for remedy in clashes.remedies)
    elif len(told) > 1 and clashes.is_finished:
        yield ""
        yield "  no change was found that mends all of it, nor one for each of these"
    if clashes.useless:
        yield ""
        yield "  these alone don't help:" if clashes.is_certain else "  with these alone no plan was found:"
        yield from (f"    {show(words)}" for words in clashes.useless)
    if not clashes.is_finished:
        yield ""
        yield "  the time was up before all was tried"


def _one_clash(clash: DayClash) -> Iterator[str]:
    """What can't be, and line by line what comes of it instead; where other things clash too, what would mend this one."""
    if len(clash.reasons) < 2:
        yield show(clash.words)
    else:
        yield f"{show(clash.head)}; whatever is done, one of these comes of it:"
        yield from (f"  - {show(reason)}" for reason in clash.reasons)
    if clash.remedies:
        yield "  if this were all, any one of these would do:"
        yield from (f"    {show(remedy.words)}" for remedy in clash.remedies)
