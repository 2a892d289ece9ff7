"""The loads of an oven that holds its heat, sorted by themselves: what goes in when, and side by side, if the oven were all there is.

The oven is what a day has least of, and its order is found far sooner alone than between mixers and hands. A row of loads is
begun by their hours; then one load after the other goes to the place in the row where most is gained, and where no move gains
anything a few are moved blindly, from which the row is made better again.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import cached_property
from itertools import permutations

from manchet.day.model import Day
from manchet.day.posting.choices import Choice, Rule, SoFar, TurnTaken
from manchet.day.posting.decks import Decks
from manchet.day.posting.outset import Leave, Outset, net_of, no_leave
from manchet.records import NamedTuple

Row = tuple[tuple[int, ...], ...]
"""Loads in the order in which they go in, those side by side together. Each goes on the deck that is ready for it first."""

LATE = 10
"""A minute later than any wait allows is as dear as so many minutes of waits beyond their range."""
NEAR = 60
"""A load is tried only beside, before and after what goes in within so many minutes of its own hours."""
ROWS = 100
"""For each load so many rows are looked at."""
SHAKEN = 3
"""So many loads are moved blindly."""


def sorting_rules(outset: Outset, decks: Sequence[Decks], number: int) -> tuple[Rule, ...]:
    """Every load gets its turn as sorted, from the last one back; otherwise with each number."""
    sortings = [Sorting(outset, each, number) for each in decks if len(each.loads) > 1 and not each.falls]
    return tuple(Rule(each.jobs, each.next_load, hangs_on_choices=True, leaves_out=True) for each in sortings)


class Together(NamedTuple):
    """One load goes in at most so many minutes after another, whose dough it is of."""

    later: int
    earlier: int
    most: int
    may: int
    """With waits as long as they may be."""


class Timing(NamedTuple):
    """What a row makes of the oven, all as early as it can be."""

    price: int
    begins: dict[int, int]
    decks: list[int]
    """Of each group of the row."""


class Sorting:
    """The loads of one oven, and the hours in which each can go in, as far as the day has them from the start."""

    def __init__(self, outset: Outset, decks: Decks, number: int) -> None:
        self._outset, self._decks, self.jobs = outset, decks, decks.jobs
        self._together = tuple(_together(outset.day, decks))
        self._number, self._drawn = number, number

    def next_load(self, now: SoFar) -> tuple[Choice, ...] | None:
        placed = {turn.load for turn in now.turns(self._decks.number)}
        return next(((turn,) for turn in self._turns if turn.turn and turn.turn.load not in placed), None)

    @cached_property
    def _turns(self) -> tuple[Choice, ...]:
        """From the last group to go in to the first."""
        decks, row = self._decks, self._sorted()
        timing = self._timing(row)
        after: dict[int, tuple[int, ...]] = {}
        turns = []
        for group, deck in sorted(
            zip(row, timing.decks, strict=True), key=lambda each: (timing.begins[each[0][0]], each), reverse=True
        ):
            for at, load in enumerate(group):
                ties = [tie for other in group[:at] for tie in decks.side_by_side(load, other)]
                ties += [decks.follows(load, other) for other in after.get(deck, ())]
                turns.append(Choice(tuple(ties), TurnTaken(decks.number, load, beside=at > 0)))
            after[deck] = group
        return tuple(turns)

    @cached_property
    def _low(self) -> dict[int, int]:
        return self._hours(no_leave(self._outset.day))[0]

    @cached_property
    def _high(self) -> dict[int, int]:
        return self._hours(no_leave(self._outset.day))[1]

    @cached_property
    def _may(self) -> dict[int, int]:
        """The latest with waits as long as they may be."""
        day = self._outset.day
        return self._hours(Leave((0,) * len(day.ends), tuple(wait.may for wait in day.waits)))[1]

    def _hours(self, leave: Leave) -> tuple[dict[int, int], dict[int, int]]:
        net = net_of(self._outset, leave)
        return (
            {load: net.low[put] for load, put in self._decks.put.items()},
            {load: net.high[put] for load, put in self._decks.put.items()},
        )

    def _sorted(self) -> Row:
        """The best row that is found; one in which nothing is late and nothing waits too long ends it."""
        begun, left = self._begun(), ROWS * len(self._decks.loads)
        row, left = self._made_better(self._shaken(begun) if self._number else begun, left)
        while left > 0 and self._timing(row).price:
            better, left = self._made_better(self._shaken(row), left)
            row = min(better, row, key=lambda each: self._timing(each).price)
        return row

    def _begun(self) -> Row:
        """One load after the other, in the middle of their hours, put where it costs least."""
        row: Row = ()
        for load in sorted(self._decks.loads, key=lambda load: (self._low[load] + self._high[load], load)):
            row = min(self._moves(row, load), key=lambda each: self._timing(each).price, default=(*row, (load,)))
        return row

    def _made_better(self, row: Row, left: int) -> tuple[Row, int]:
        """Until no move of one load gains anything, the latest first; with how many rows may be looked at then."""
        price, is_better = self._timing(row).price, True
        while is_better and price:
            is_better = False
            begins = self._timing(row).begins
            for load in sorted(self._decks.loads, key=lambda load: (self._high[load] - begins[load], load)):
                for moved in tuple(self._moves(row, load)):
                    left -= 1
                    moved_price = self._timing(moved, price).price
                    if moved_price < price:
                        row, price, is_better = moved, moved_price, True
                if left <= 0 or not price:
                    return row, left
        return row, left

    def _shaken(self, row: Row) -> Row:
        for _ in range(SHAKEN):
            moved = tuple(self._moves(row, self._decks.loads[self._draw(len(self._decks.loads))]))
            row = moved[self._draw(len(moved))] if moved else row
        return row

    def _draw(self, below: int) -> int:
        """A number that has nothing to do with the one before, yet the same each time: the generator that the C standard (ISO 9899,
        rand) gives as its example."""
        self._drawn = (self._drawn * 1103515245 + 12345) % (1 << 31)
        return (self._drawn >> 16) % below

    def _moves(self, row: Row, load: int) -> Iterator[Row]:
        """The row with this load elsewhere, the latest places first: in the first sorting rather beside others, in the next ones rather by itself."""
        rest = tuple(left for left in (tuple(other for other in group if other != load) for group in row) if left)
        begins = self._timing(rest).begins
        hours = [begins[group[0]] for group in rest]
        first, then = (self._beside, self._between) if self._number == 0 else (self._between, self._beside)
        yield from first(rest, hours, load)
        yield from then(rest, hours, load)

    def _beside(self, rest: Row, hours: list[int], load: int) -> Iterator[Row]:
        first, last = self._low[load] - NEAR, self._may[load] + NEAR
        for at in range(len(rest) - 1, -1, -1):
            if first <= hours[at] <= last and self._decks.goes_beside(load, rest[at]):
                yield (*rest[:at], (*rest[at], load), *rest[at + 1 :])

    def _between(self, rest: Row, hours: list[int], load: int) -> Iterator[Row]:
        first, last = self._low[load] - self._decks.minutes[load], self._may[load] + NEAR
        for at in range(len(rest), -1, -1):
            if (at == len(rest) or first <= hours[at]) and (at == 0 or hours[at - 1] <= last):
                yield (*rest[:at], (load,), *rest[at:])

    def _timing(self, row: Row, enough: int = 1 << 60) -> Timing:
        """Each group on the deck that is ready for it first; no further than to this price."""
        low, high, may, before = self._low, self._high, self._may, self._decks.before
        last: list[tuple[int, ...]] = [()] * self._decks.decks
        begins: dict[int, int] = {}
        decks: list[int] = []
        price = 0
        for group in row:
            wanted, begin, deck = max([low[load] for load in group]), 1 << 60, 0
            for at, earlier in enumerate(last):
                ready = wanted
                for other in earlier:
                    for load in group:
                        after = begins[other] + before[other, load]
                        if after > ready:
                            ready = after
                if ready < begin:
                    begin, deck = ready, at
            last[deck] = group
            decks.append(deck)
            for load in group:
                begins[load] = begin
                if begin > high[load]:
                    price += begin - high[load] + LATE * max(begin - may[load], 0)
            if price >= enough:
                return Timing(price, begins, decks)
        for later, earlier_load, most, most_may in self._together:
            if later in begins and earlier_load in begins:
                apart = begins[later] - begins[earlier_load]
                if apart > most:
                    price += apart - most + LATE * max(apart - most_may, 0)
        return Timing(price, begins, decks)


def _together(day: Day, decks: Decks) -> Iterator[Together]:
    """Of all loads that wait from one job on: the one's longest wait is the other's least and what lies between."""
    loads = {put: load for load, put in decks.put.items()}
    waits = [wait for wait in day.waits if wait.after in loads]
    for one, other in permutations(waits, 2):
        if one.before == other.before and one.most is not None:
            apart = one.most - other.least
            yield Together(loads[one.after], loads[other.after], apart, apart + one.may)
