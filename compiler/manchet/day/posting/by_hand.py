"""The plan of a day without a solver: several manners of planning, and what gives way where none of them finds a plan."""

from __future__ import annotations

from collections.abc import Sequence
from heapq import heappop, heappush

from manchet.day.goals import beyond, minutes_late
from manchet.day.model import Day, Timetable
from manchet.day.posting.choices import Choice
from manchet.day.posting.decks import decks_of, shared_out
from manchet.day.posting.giving_way import Give, gives, least_give, with_give
from manchet.day.posting.hands import shifts_of
from manchet.day.posting.outset import Leave, net_of, no_leave, outset_of
from manchet.day.posting.search import Quest, Search, Worth, room_left, rules_of, share_of_room

MANNERS: tuple[tuple[int | None, Worth], ...] = (
    (30, share_of_room),
    (20, share_of_room),
    (None, room_left),
    (100, share_of_room),
    (30, room_left),
    (8, share_of_room),
    (None, share_of_room),
)
"""The manners of planning, in the order they are tried: how much an empty deck weighs where every load gets its turn (None:
no turns, decks are seen to clash by clash as all else), and how dear a way out is."""
FAILS = 60
"""So many choices that cannot hold before the next manner is tried."""
LONG_MANNERS, LONG = 3, 75_000
"""Before anything gives way, so many manners are tried for longer: so many fails divided by the jobs of the day."""
PROOFS = 400
"""So many leaves are weighed against each other."""
GIVES = 400
"""At most so many things give way after a dead end."""
BRANCHES = 3
"""From so many dead ends a plan is looked for that gives way."""
STEPS = 1500
"""So many choices, all together, before it is no longer tried what needn't have given way."""


class Planner:
    """A day, and how it is gone about."""

    def __init__(self, day: Day) -> None:
        self._day, self._outset = day, outset_of(day)
        decks = decks_of(day)
        with_turns = any(not each.falls and len(each.loads) > 1 for each in decks)
        self._searches = [
            Search(self._outset, rules_of(day, decks, weight), worth)
            for weight, worth in MANNERS
            if with_turns or weight is None
        ]
        self._last = self._searches[-1]

    def plan(self) -> Quest:
        """A plan with as little lateness, and then as little `may wait`, as is found to be needed; or why there is none."""
        way = self._first_plan()
        return self._taken_back(way) if way.found else way

    def timetable(self, way: Quest) -> Timetable:
        """What a way that was found makes of the day."""
        starts = way.starts[:-1]
        return Timetable(starts, shifts_of(self._day, starts), shared_out(self._day, starts))

    def _first_plan(self) -> Quest:
        """Of all leaves that could do, the smallest first: from a proof that one will not do follow those that might."""
        none = no_leave(self._day)
        leaves = [(0, 0, none)]
        seen = {none}
        while True:
            _, _, leave = heappop(leaves)
            way, ends = self._look(leave)
            if way.found:
                return way
            if not way.is_proven:
                return min((self._give_way(search, leave, end) for search, end in ends[:BRANCHES]), key=self._price)
            for give in gives(self._outset, leave, way.behind):
                more = with_give(leave, give)
                if more not in seen:
                    seen.add(more)
                    heappush(leaves, (sum(more.late), sum(more.may), more))
            if not leaves:
                return way
            if len(seen) > PROOFS:
                leaves = [min(leaves)]

    def _look(self, leave: Leave) -> tuple[Quest, list[tuple[Search, Quest]]]:
        """The first plan that a manner finds, or the first proof that there is none; else the dead ends, the cheapest first."""
        ends: list[tuple[Search, Quest]] = []
        rounds = [(FAILS, self._searches)]
        if self._steps < STEPS:
            rounds.append((LONG // max(len(self._day.jobs), 1), self._searches[:LONG_MANNERS]))
        for fails, searches in rounds:
            for search in searches:
                way = search.run(net_of(self._outset, leave), leave, (), fails)
                if way.found or way.is_proven:
                    return way, []
                ends.append((search, way))
        ends.sort(key=lambda end: _worth(end[1]), reverse=True)
        return ends[0][1], ends

    @property
    def _steps(self) -> int:
        return sum(search.steps for search in self._searches)

    def _give_way(self, search: Search, leave: Leave, way: Quest) -> Quest:
        """On from a dead end: what costs least gives way, as often as needed; where nothing may, some choices are undone."""
        for turn in range(GIVES):
            if way.found:
                break
            if way.give:
                leave = with_give(leave, way.give)
                way = self._go_on(search, leave, way.taken, FAILS // 4)
            elif way.taken:
                fewer = way.taken[: len(way.taken) * 2 // 3]
                search = self._searches[turn % len(self._searches)]
                way = self._go_on(search, leave, fewer, FAILS)
                if not way.found and not way.give:
                    way = way._replace(taken=fewer)
            else:
                give = least_give(self._outset, leave, way.behind)
                if give is None:
                    break
                leave = with_give(leave, give)
                way = self._go_on(search, leave, (), FAILS)
        return way

    def _go_on(self, search: Search, leave: Leave, taken: Sequence[Choice], fails: int) -> Quest:
        return search.run(net_of(self._outset, leave, taken), leave, taken, fails)

    def _taken_back(self, way: Quest) -> Quest:
        """The same, where each thing that gave way is tried without; what is late first, and the longest of those."""
        needed: set[tuple[bool, int]] = set()
        while self._steps < STEPS:
            used = self._used(way)
            given = [(True, minutes, at) for at, minutes in enumerate(used.late)]
            given += [(False, minutes, at) for at, minutes in enumerate(used.may)]
            given = [each for each in given if each[1] and (each[0], each[2]) not in needed]
            if not given:
                break
            is_late, minutes, at = max(given, key=lambda each: (each[0], each[1], -each[2]))
            tried, _ = self._look(with_give(used, Give(is_late, -minutes, at)))
            if tried.found and self._price(tried) < self._price(way):
                way = tried
            else:
                needed.add((is_late, at))
        return way

    def _used(self, way: Quest) -> Leave:
        timetable = self.timetable(way)
        return Leave(
            tuple(minutes_late(self._day, end, timetable) for end in self._day.ends),
            tuple(beyond(wait, timetable) for wait in self._day.waits),
        )

    def _price(self, way: Quest) -> tuple[int, ...]:
        if not way.found:
            return 1, 0, 0
        used = self._used(way)
        return 0, sum(used.late), sum(used.may)


def _worth(way: Quest) -> tuple[int, ...]:
    """How good a dead end is to go on from."""
    if way.give is None:
        return 0, 0, len(way.taken)
    return 1, not way.give.is_late, len(way.taken)
