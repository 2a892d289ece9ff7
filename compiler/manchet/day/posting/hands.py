"""Who does what: a job lies wholly in one shift, which has so many pairs of hands."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.day.model import BREAK_BEFORE_OUT, Day
from manchet.day.posting.choices import Choice, Finder, Rule, SoFar, Starts
from manchet.day.posting.net import Origin, Tie
from manchet.day.posting.outset import shifts_for
from manchet.records import NamedTuple


class Hand(NamedTuple):
    """A job that wants hands, with the shifts that can do it, the one that begins last first."""

    job: int
    minutes: int
    hands: int
    shifts: tuple[tuple[int, int, int], ...]
    """(number, begins, ends)"""


def hands_rules(day: Day) -> Iterator[Rule]:
    """One for each group of shifts that overlap: only there can a job go over to another shift at the same hour."""
    jobs = _hands_of(day)
    for group in _groups(day):
        mine = tuple(hand for hand in jobs if any(number in group for number, _, _ in hand.shifts))
        yield Rule(tuple(hand.job for hand in mine), _finder(day, mine, group))


def _hands_of(day: Day) -> tuple[Hand, ...]:
    return tuple(
        Hand(
            at,
            job.minutes,
            job.hands,
            tuple(
                sorted(
                    ((number, s.begins, s.ends) for number, s in shifts_for(day, job)),
                    key=lambda row: (-row[1], row[0]),
                )
            ),
        )
        for at, job in enumerate(day.jobs)
        if job.hands
    )


def _groups(day: Day) -> Iterator[frozenset[int]]:
    group: list[int] = []
    until = 0
    for number in sorted(range(len(day.shifts)), key=lambda number: (day.shifts[number].begins, number)):
        shift = day.shifts[number]
        if group and shift.begins >= until:
            yield frozenset(group)
            group = []
        until = max(until, shift.ends) if group else shift.ends
        group.append(number)
    if group:
        yield frozenset(group)


def shifts_of(day: Day, starts: Starts) -> tuple[int, ...]:
    """Which shift does each job; -1 where none has the hands free."""
    hands, capacity = _hands_of(day), [shift.hands for shift in day.shifts]
    shared = {hand.job: shift for hand, shift, _ in _share_out(hands, starts, capacity)}
    if -1 in shared.values():
        shared = _any_share(hands, starts, capacity) or shared
    return tuple(shared.get(job, -1) for job in range(len(day.jobs)))


def _wanted(jobs: Sequence[Hand], starts: Starts, minute: int) -> int:
    return sum(hand.hands for hand in jobs if starts[hand.job] <= minute < starts[hand.job] + hand.minutes)


def _there(day: Day, minute: int) -> int:
    return sum(shift.hands for shift in day.shifts if shift.begins <= minute < shift.ends)


def _any_share(jobs: Sequence[Hand], starts: Starts, capacity: Sequence[int]) -> dict[int, int] | None:
    """Some way to share all jobs out, where giving each to the first that is free leaves one without; None where there is none.

    All ways are gone through from the last job to the first; two are alike where the same is at work in the same shifts.
    """
    ways: dict[AtWork, dict[int, int]] = {(): {}}
    for hand in _last_first(jobs, starts):
        start, end = starts[hand.job], starts[hand.job] + hand.minutes
        more: dict[AtWork, dict[int, int]] = {}
        for at_work, shared in ways.items():
            still = tuple(row for row in at_work if row[0] < end)
            for number, begins, ends in hand.shifts:
                busy = sum(hands for _, shift, hands in still if shift == number)
                if begins <= start and end <= ends and busy + hand.hands <= capacity[number]:
                    now = tuple(sorted((*still, (start, number, hand.hands))))
                    more.setdefault(now, {**shared, hand.job: number})
        ways = more
    return next(iter(ways.values()), None)


AtWork = tuple[tuple[int, int, int], ...]
"""(when it begins, shift, hands) of each job."""


def _last_first(jobs: Sequence[Hand], starts: Starts) -> list[Hand]:
    """The last to end first."""
    return sorted(jobs, key=lambda hand: (-starts[hand.job] - hand.minutes, -starts[hand.job], hand.job))


def _share_out(
    jobs: Sequence[Hand], starts: Starts, capacity: Sequence[int]
) -> Iterator[tuple[Hand, int, list[tuple[int, Hand]]]]:
    """From the last to the first to end, each job goes to a shift with free hands: with what is at work there meanwhile.

    -1 where no shift has any: with all that is at work in those it could be in.
    """
    busy: list[list[tuple[int, Hand]]] = [[] for _ in capacity]
    for hand in _last_first(jobs, starts):
        start = starts[hand.job]
        end = start + hand.minutes
        in_the_way: list[tuple[int, Hand]] = []
        for number, begins, ends in hand.shifts:
            if begins <= start and end <= ends:
                at_work = [row for row in busy[number] if row[0] < end]
                if sum(other.hands for _, other in at_work) + hand.hands <= capacity[number]:
                    busy[number] = [*at_work, (start, hand)]
                    yield hand, number, at_work
                    break
                in_the_way += at_work
        else:
            yield hand, -1, in_the_way


def _finder(day: Day, jobs: tuple[Hand, ...], group: frozenset[int]) -> Finder:
    capacity = [shift.hands for shift in day.shifts]
    first = min(day.shifts[number].begins for number in group)
    last = max(day.shifts[number].ends for number in group)
    zero = len(day.jobs)

    def ways_out(now: SoFar) -> tuple[Choice, ...] | None:
        starts = now.latest
        here = [hand for hand in jobs if first <= starts[hand.job] < last]
        for hand, shift, others in _share_out(here, starts, capacity):
            if shift < 0:
                minute = starts[hand.job] + hand.minutes - 1
                if (
                    _wanted(here, starts, minute) <= _there(day, minute)
                    and _any_share(here, starts, capacity) is not None
                ):
                    return None
                return tuple(_ways_out([hand, *(other for _, other in others)], starts, zero, group))
        return None

    return ways_out


def _ways_out(hands: list[Hand], starts: Starts, zero: int, group: frozenset[int]) -> Iterator[Choice]:
    """Any of them before any other; or one that could be another shift's goes over to it."""
    for one in hands:
        for other in hands:
            if one is not other:
                yield Choice((Tie(one.job, other.job, one.minutes, Origin("hands", one.shifts[0][0])),))
    for one in hands:
        for number, _, ends in one.shifts:
            latest = ends - one.minutes
            if number in group and latest < starts[one.job]:
                yield Choice((Tie(one.job, zero, -latest, Origin("hands", number)),))


def breaks_rule(day: Day) -> Rule:
    """Nobody takes a break in the last minutes before a load comes out."""
    breaks = tuple(at for at, job in enumerate(day.jobs) if job.is_break)
    takes = tuple(load.take for load in day.loads)

    def ways_out(now: SoFar) -> tuple[Choice, ...] | None:
        starts = now.latest
        for rest in breaks:
            minutes = day.jobs[rest].minutes
            for take in takes:
                if starts[rest] < starts[take] < starts[rest] + minutes + BREAK_BEFORE_OUT:
                    why = Origin("break", rest)
                    return (
                        Choice((Tie(rest, take, minutes + BREAK_BEFORE_OUT, why),)),
                        Choice((Tie(take, rest, 0, why),)),
                    )
        return None

    return Rule((*breaks, *takes) if breaks else (), ways_out)
