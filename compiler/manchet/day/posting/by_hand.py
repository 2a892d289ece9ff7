"""The plan of a day without a solver: several manners of planning, and what gives way where none of them finds a plan."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from heapq import heappop, heappush

from manchet.day.goals import beyond, minutes_late
from manchet.day.model import Day, Timetable
from manchet.day.posting.choices import Choice
from manchet.day.posting.decks import Decks, decks_of, shared_out
from manchet.day.posting.giving_way import Give, gives, least_give, with_give
from manchet.day.posting.hands import shifts_of
from manchet.day.posting.outset import Leave, net_of, no_leave, outset_of
from manchet.day.posting.search import Quest, Search, Worth, room_left, rules_of, share_of_room
from manchet.day.posting.sorting import sorting_rules

MANNERS: tuple[tuple[int | None, Worth], ...] = (
    (0, share_of_room),
    (None, room_left),
    (1, share_of_room),
    (None, share_of_room),
    *((number, share_of_room) for number in range(2, 8)),
)
"""The manners of planning, in the order they are tried: how decks are sorted first (None: they are not, but seen to clash one by
one as all else), and how dear a way out is."""
FAILS = 60
"""So many choices that cannot hold before the next manner is tried."""
LONG_MANNERS, LONG = 3, 75_000
"""Before anything gives way, so many manners are tried for longer: so many fails divided by the jobs of the day."""
PROOFS = 400
"""So many leaves are weighed against each other."""
GIVES = 400
"""At most so many things give way after a dead end."""
AT_ONCE = 5
"""After a dead end what is late is so many minutes later at least; what is too much is taken back."""
AGAIN = 12
"""So often a plan is begun again with something a quarter of an hour later."""
BRANCHES = 3
"""From so many dead ends a plan is looked for that gives way."""
ANEW = 5
"""So many choices that cannot hold, and so many things that give way, where part of a plan is decided anew."""
BACK_STEPS = 3000
STEPS = 1500
"""So many choices, all together, before it is no longer tried what needn't have given way."""


class Planner:
    """A day, and how it is gone about."""

    def __init__(self, day: Day) -> None:
        self._day, self._outset = day, outset_of(day)
        decks = decks_of(day)
        is_sorted = any(not each.falls and len(each.loads) > 1 for each in decks)
        manners = [manner for manner in MANNERS if is_sorted or manner[0] is None]
        self._searches = [self._search(decks, number, worth) for number, worth in manners]
        self._clash_by_clash = [
            search for search, (number, _) in zip(self._searches, manners, strict=True) if number is None
        ]

    def _search(self, decks: Sequence[Decks], number: int | None, worth: Worth) -> Search:
        turns = () if number is None else sorting_rules(self._outset, decks, number)
        return Search(self._outset, rules_of(self._day, decks, turns), worth)

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
                return self._best_branch(leave, ends[:BRANCHES])
            for give in gives(self._outset, leave, way.behind):
                more = with_give(leave, give)
                if more not in seen:
                    seen.add(more)
                    heappush(leaves, (sum(more.late), sum(more.may), more))
            if not leaves:
                return way
            if len(seen) > PROOFS:
                leaves = [min(leaves)]

    def _best_branch(self, leave: Leave, ends: Sequence[tuple[Search, Quest]]) -> Quest:
        """The cheapest plan found on from some dead ends; the first that is found, once much has been tried."""
        best: Quest | None = None
        for branch in (self._begin_again, self._give_way):
            for search, end in ends:
                if best is None or not best.found or self._steps < STEPS:
                    found = branch(search, leave, end)
                    best = found if best is None or self._price(found) < self._price(best) else best
        assert best is not None
        return best

    def _look(self, leave: Leave, *, longer: bool = True) -> tuple[Quest, list[tuple[Search, Quest]]]:
        """The first plan that a manner finds, or the first proof that there is none; else the dead ends, the cheapest first."""
        ends: list[tuple[Search, Quest]] = []
        rounds = [(FAILS, self._searches)]
        if longer and self._steps < STEPS:
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
                leave = with_give(
                    leave, way.give._replace(minutes=max(way.give.minutes, AT_ONCE if way.give.is_late else 0))
                )
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

    def _begin_again(self, search: Search, leave: Leave, way: Quest) -> Quest:
        """From the start, with what could go in at no hour a quarter of an hour later each time."""
        for _ in range(AGAIN):
            give = None if way.found else _later(way)
            if give is None:
                break
            leave = with_give(leave, give)
            way = self._go_on(search, leave, (), FAILS)
        return way

    def _go_on(self, search: Search, leave: Leave, taken: Sequence[Choice], fails: int) -> Quest:
        return search.run(net_of(self._outset, leave, taken), leave, taken, fails)

    def _taken_back(self, way: Quest) -> Quest:
        """The same with as little given as is found to be needed. Each thing that gave way, what is late before what waits and the
        longest first, is tried without, and then with as little as will do; what stands against that is decided anew."""
        until = self._steps + BACK_STEPS
        needed: set[tuple[bool, int]] = set()
        while (given := self._longest(way, needed)) is not None and self._steps < until:
            is_late, minutes, at = given
            for less in (minutes, *(minutes >> by for by in range(1, minutes.bit_length()))):
                tried = self._anew(way, with_give(self._used(way), Give(is_late, -less, at)))
                if tried is not None:
                    way = tried
                    break
            else:
                needed.add((is_late, at))
        return way

    def _anew(self, way: Quest, leave: Leave) -> Quest | None:
        """A cheaper plan, in which what cannot hold with this leave is undone; a few other things may give way instead."""
        price = self._price(way)
        taken = self._that_can_hold(way.taken, leave)
        if taken is None:
            return None
        for search in self._clash_by_clash:
            given = leave
            tried = self._go_on(search, given, taken, ANEW)
            for _ in range(ANEW):
                if tried.found or tried.give is None:
                    break
                given = with_give(given, tried.give)
                if (sum(given.late), sum(given.may)) >= price[1:]:
                    break
                tried = self._go_on(search, given, tried.taken, ANEW)
            if tried.found and self._price(tried) < price:
                return tried
        return None

    def _that_can_hold(self, taken: tuple[Choice, ...], leave: Leave) -> tuple[Choice, ...] | None:
        """These choices but for those that have a part in what cannot hold; None where that is none of theirs."""
        while (conflict := net_of(self._outset, leave, taken).conflict) is not None:
            if not conflict.choices:
                return None
            taken = tuple(self._left_of(taken, conflict.choices))
        return taken

    def _left_of(self, taken: Sequence[Choice], undone: frozenset[int]) -> Iterator[Choice]:
        """Without these, and in a falling oven without all that went in after one of them: on another floor."""
        ovens: set[int] = set()
        for at, choice in enumerate(taken):
            turn = choice.turn
            if at in undone and turn and self._day.ovens[turn.oven].curve:
                ovens.add(turn.oven)
            if at not in undone and not (turn and turn.oven in ovens):
                yield choice

    def _longest(self, way: Quest, needed: set[tuple[bool, int]]) -> tuple[bool, int, int] | None:
        """What gave way most, but for what was found to be needed: (is late, minutes, number)."""
        used = self._used(way)
        given = [(True, minutes, at) for at, minutes in enumerate(used.late)]
        given += [(False, minutes, at) for at, minutes in enumerate(used.may)]
        given = [each for each in given if each[1] and (each[0], each[2]) not in needed]
        return max(given, key=lambda each: (each[0], each[1], -each[2]), default=None)

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


def _later(way: Quest) -> Give | None:
    """A quarter of an hour for the first load that is too old before it can go in."""
    for conflict in way.conflicts:
        for _, origin in conflict.bounds[:1]:
            if origin.sort == "end":
                return Give(True, 15, origin.number)
    return None
