"""What a plan costs, goal by goal, in the order they count: each is held at what was reached before the next is looked at."""

from __future__ import annotations

from fractions import Fraction

from manchet.day.model import Day, DayLoad, DayOven, DayWait, End, Timetable

GOALS = ("late", "may wait", "room", "presence", "age", "early")
MOST_ROOM = 30
"""Minutes: more room than this before the oven is worth nothing to anybody. Our own rule."""


def cost(day: Day, timetable: Timetable) -> tuple[int, ...]:
    """Of each of `GOALS` what the plan reaches, all so that less is better (room as what is wanting to `MOST_ROOM`)."""
    return (
        late(day, timetable),
        may_wait(day, timetable),
        MOST_ROOM - room(day, timetable),
        presence(day, timetable),
        age(day, timetable),
        early(day, timetable),
    )


def late(day: Day, timetable: Timetable) -> int:
    """Minutes that ends lie behind what is due, all together."""
    return sum(minutes_late(day, end, timetable) for end in day.ends)


def minutes_late(day: Day, end: End, timetable: Timetable) -> int:
    """Minutes that one end lies behind what is due."""
    return max(timetable.starts[end.job] + day.jobs[end.job].minutes + end.after - end.due, 0)


def may_wait(day: Day, timetable: Timetable) -> int:
    """Minutes that waits are longer than their range, all together."""
    return sum(beyond(wait, timetable) for wait in day.waits)


def beyond(wait: DayWait, timetable: Timetable) -> int:
    """Minutes that one wait is longer than its range."""
    if wait.most is None:
        return 0
    return max(timetable.starts[wait.after] - timetable.starts[wait.before] - wait.most, 0)


def room(day: Day, timetable: Timetable) -> int:
    """The least time by which some load could go in later, with all else as it is: what its waits (their `may wait` with
    them) and the floor still allow. At most `MOST_ROOM`."""
    return min([MOST_ROOM, *(_room_of(day, timetable, load) for load in day.loads)])


def _room_of(day: Day, timetable: Timetable, load: DayLoad) -> int:
    start = timetable.starts[load.put]
    found = [MOST_ROOM]
    for wait in day.waits:
        if wait.after == load.put and wait.most is not None:
            found.append(timetable.starts[wait.before] + wait.most + wait.may - start)
    oven = next(oven for oven in day.ovens if oven.name == load.oven)
    if oven.curve and load.enters is not None:
        minute = minute_of_curve(day, timetable, load)
        closes = closes_at(oven, load)
        if minute is not None and minute >= 0:
            found.append(closes - minute)
    return min(found)


def presence(day: Day, timetable: Timetable) -> int:
    """Minutes from the first job to the last of each shift, all together."""
    spans = (span_of(day, timetable, number) for number in range(len(day.shifts)))
    return sum(last - first for first, last in filter(None, spans))


def span_of(day: Day, timetable: Timetable, shift: int) -> tuple[int, int] | None:
    """When a shift's first job begins and its last one ends, breaks aside; None where it does nothing."""
    mine = [at for at, who in enumerate(timetable.shifts) if who == shift and not day.jobs[at].is_break]
    if not mine:
        return None
    return (
        min(timetable.starts[at] for at in mine),
        max(timetable.starts[at] + day.jobs[at].minutes for at in mine),
    )


def age(day: Day, timetable: Timetable) -> int:
    """Minutes from out of the oven to when it is due, all ends together; what is late has none."""
    return sum(max(end.due - timetable.starts[end.job] - day.jobs[end.job].minutes, 0) for end in day.ends)


def early(day: Day, timetable: Timetable) -> int:
    """The beginnings of all jobs but breaks, in minutes from the day's own: of two plans alike, the earlier. Of a fire the minutes
    from its lighting to the end of the day: an oven is not lit before it need be."""
    fires = {fire.light for fire in day.fires}
    return sum(
        day.finishes - start if at in fires else start - day.begins
        for at, start in enumerate(timetable.starts)
        if not day.jobs[at].is_break
    )


def minute_of_curve(day: Day, timetable: Timetable, load: DayLoad) -> int | None:
    """How far down its curve a falling oven is when a load goes in: minutes since its fire was out, and what the loads of
    this fire before it took beyond their time. Below 0 while it still heats; None where the oven has no fire."""
    outs = sorted(timetable.starts[fire.light] + fire.heats for fire in day.fires if fire.oven == load.oven)
    start = timetable.starts[load.put]
    if not outs:
        return None
    out = max((at for at in outs if at <= start), default=outs[0])
    before = (
        other.extra
        for other in day.loads
        if other.oven == load.oven
        and out <= timetable.starts[other.put] < start
        and not _together(day, timetable, load, other)
    )
    return start - out + sum(before)


def _together(day: Day, timetable: Timetable, one: DayLoad, other: DayLoad) -> bool:
    """Both go in through one opening of the door."""
    oven = next(oven for oven in day.ovens if oven.name == one.oven)
    return abs(timetable.starts[one.put] - timetable.starts[other.put]) <= oven.within


def opens_at(oven: DayOven, load: DayLoad) -> int:
    """The first whole minute of a falling oven's curve at which it is no hotter than a load may go in at."""
    assert load.enters is not None
    hottest = load.enters.high
    return -int(-_minute_at(oven, hottest) // 1) if oven.curve[0].celsius > hottest else 0


def closes_at(oven: DayOven, load: DayLoad) -> int:
    """The last whole minute of the curve at which it is no colder than a load may go in at; -1 where it never is so hot."""
    assert load.enters is not None
    coldest = load.enters.low
    return int(_minute_at(oven, coldest) // 1) if oven.curve[0].celsius >= coldest else -1


def _minute_at(oven: DayOven, celsius: Fraction) -> Fraction:
    """When the falling floor has this heat; the end of its curve where it never falls so far."""
    for hotter, colder in zip(oven.curve, oven.curve[1:], strict=False):
        if hotter.celsius >= celsius >= colder.celsius and hotter.celsius > colder.celsius:
            part = (hotter.celsius - celsius) / (hotter.celsius - colder.celsius)
            return hotter.minute + part * (colder.minute - hotter.minute)
    return oven.curve[-1].minute
