"""How early and how late each job can begin, kept tight while ties between jobs are added and taken back.

A *knot* is a job's beginning, and one more, the last, that stands at minute 0. A tie says that one knot lies at least so
many minutes after another. Since ties and the minutes at which somebody is there are all that binds a knot, all knots at
their latest are a timetable that keeps every tie, and so are all at their earliest.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from manchet.records import NamedTuple


class Origin(NamedTuple):
    """What a tie or a bound comes from: a sort of thing, and its number in the day."""

    sort: str
    number: int = -1


class Tie(NamedTuple):
    """`after` begins at least `least` minutes after `before` begins; less than 0: at most so many minutes before it."""

    before: int
    after: int
    least: int
    why: Origin


class Knots(NamedTuple):
    """What binds each knot by itself."""

    windows: tuple[tuple[tuple[int, int], ...], ...]
    """The spans of minutes in which it may lie, in their order."""
    floors: tuple[Origin, ...]
    ceilings: tuple[Origin, ...]
    """What its first and its last minute come from."""


class Conflict(NamedTuple):
    """Ties and bounds that cannot all hold: together they want `minutes` more than there are."""

    ties: tuple[Tie, ...]
    bounds: tuple[tuple[int, Origin], ...]
    """A knot, and what it is bound by: none where the ties alone go in a circle."""
    minutes: int
    choices: frozenset[int] = frozenset()
    """The numbers of the choices that the ties were added for."""


class Net:
    """Windows of all knots under the ties added so far."""

    def __init__(self, knots: Knots, ties: Sequence[tuple[int, Tie]]) -> None:
        self._windows = knots.windows
        self._knots = knots
        number = len(knots.windows)
        self.low = [windows[0][0] if windows else 1 for windows in knots.windows]
        self.high = [windows[-1][1] if windows else 0 for windows in knots.windows]
        self._after: list[list[tuple[int, int, int]]] = [[] for _ in range(number)]
        self._before: list[list[tuple[int, int, int]]] = [[] for _ in range(number)]
        self._ties: list[Tie] = []
        self._choices: list[int] = []
        self._low_at = [-1] * number
        self._high_at = [-1] * number
        """Where in the trail each knot's bound last changed."""
        self._trail: list[tuple[int, int, int, int]] = []
        """(knot, bound before, tie it came by, where its bound changed before); a high bound's knot is counted down from -1."""
        self.conflict: Conflict | None = None
        for choice, tie in ties:
            self._join(tie, choice)
        empty = next((at for at, windows in enumerate(knots.windows) if not windows), None)
        if empty is not None:
            self.conflict = Conflict((), ((empty, knots.floors[empty]), (empty, knots.ceilings[empty])), 1)
        elif self._raise_from(list(range(number)), -1):
            self._lower_from(list(range(number)), -1)

    def mark(self) -> tuple[int, int]:
        """Where to come back to with `back_to`."""
        return len(self._trail), len(self._ties)

    def back_to(self, mark: tuple[int, int]) -> None:
        """All ties since are gone, and the windows as they were."""
        changes, ties = mark
        trail, low, high = self._trail, self.low, self.high
        while len(trail) > changes:
            knot, bound, _, before = trail.pop()
            if knot >= 0:
                low[knot], self._low_at[knot] = bound, before
            else:
                high[~knot], self._high_at[~knot] = bound, before
        while len(self._ties) > ties:
            tie = self._ties.pop()
            self._choices.pop()
            self._after[tie.before].pop()
            self._before[tie.after].pop()
        self.conflict = None

    def add(self, ties: Sequence[Tie], choice: int) -> bool:
        """Whether they can hold beside all others; if not, `conflict` says what stands against it."""
        return all(self._add(tie, choice) for tie in ties)

    def _join(self, tie: Tie, choice: int) -> None:
        number = len(self._ties)
        self._ties.append(tie)
        self._choices.append(choice)
        self._after[tie.before].append((tie.after, tie.least, number))
        self._before[tie.after].append((tie.before, tie.least, number))

    def _add(self, tie: Tie, choice: int) -> bool:
        before, after, least, _ = tie
        number = len(self._ties)
        self._join(tie, choice)
        if self.low[before] + least > self.low[after]:
            if not self._raise(after, self.low[before] + least, number):
                return False
            if not self._raise_from([after], before):
                return False
        if self.high[after] - least < self.high[before]:
            if not self._lower(before, self.high[after] - least, number):
                return False
            return self._lower_from([before], after)
        return True

    def _raise(self, knot: int, to: int, by: int) -> bool:
        self._trail.append((knot, self.low[knot], by, self._low_at[knot]))
        windows = self._windows[knot]
        if len(windows) > 1:
            to = next((max(first, to) for first, last in windows if to <= last), to)
        self.low[knot], self._low_at[knot] = to, len(self._trail) - 1
        if to > self.high[knot]:
            self.conflict = self._clash_at(knot)
            return False
        return True

    def _lower(self, knot: int, to: int, by: int) -> bool:
        self._trail.append((~knot, self.high[knot], by, self._high_at[knot]))
        windows = self._windows[knot]
        if len(windows) > 1:
            to = next((min(last, to) for first, last in reversed(windows) if first <= to), to)
        self.high[knot], self._high_at[knot] = to, len(self._trail) - 1
        if to < self.low[knot]:
            self.conflict = self._clash_at(knot)
            return False
        return True

    def _raise_from(self, knots: list[int], source: int) -> bool:
        """Whatever follows from knots that now begin later. Where that comes round to the source, the ties go in a circle
        that wants more minutes than none."""
        low, after = self.low, self._after
        for knot in knots:
            base = low[knot]
            for other, least, number in after[knot]:
                if base + least > low[other]:
                    if not self._raise(other, base + least, number):
                        return False
                    if other == source:
                        circle = self._circle(other, 0)
                        if circle is not None:
                            self.conflict = circle
                            return False
                    knots.append(other)
        return True

    def _lower_from(self, knots: list[int], source: int) -> bool:
        high, before = self.high, self._before
        for knot in knots:
            top = high[knot]
            for other, least, number in before[knot]:
                if top - least < high[other]:
                    if not self._lower(other, top - least, number):
                        return False
                    if other == source:
                        circle = self._circle(other, 1)
                        if circle is not None:
                            self.conflict = circle
                            return False
                    knots.append(other)
        return True

    def _walk(self, knot: int, side: int) -> Iterator[int]:
        """The numbers of the ties by which a bound came, one after the other, back to where it came from: each time the bound
        as it was then. It may have come round to the same knot, over minutes at which nobody is there."""
        last_change, until = (self._high_at if side else self._low_at), len(self._trail)
        while True:
            at = last_change[knot]
            while at >= until:
                at = self._trail[at][3]
            if at < 0:
                return
            until, number = at, self._trail[at][2]
            yield number
            tie = self._ties[number]
            knot = tie.after if side else tie.before

    def _circle(self, knot: int, side: int) -> Conflict | None:
        """The ties that come round to this knot, where they want more than there is."""
        numbers = []
        for number in self._walk(knot, side):
            numbers.append(number)
            if self._ties[number][side] == knot:
                minutes = sum(self._ties[number].least for number in numbers)
                return self._conflict(numbers, (), minutes) if minutes > 0 else None
        return None

    def _clash_at(self, knot: int) -> Conflict:
        """Origin this knot has no minute left."""
        lows, highs = list(self._walk(knot, 0)), list(self._walk(knot, 1))
        first = self._ties[lows[-1]].before if lows else knot
        last = self._ties[highs[-1]].after if highs else knot
        bounds = ((first, self._knots.floors[first]), (last, self._knots.ceilings[last]))
        return self._conflict([*reversed(lows), *highs], bounds, max(self.low[knot] - self.high[knot], 1))

    def _conflict(self, numbers: list[int], bounds: tuple[tuple[int, Origin], ...], minutes: int) -> Conflict:
        choices = frozenset(self._choices[number] for number in numbers if self._choices[number] >= 0)
        return Conflict(tuple(self._ties[number] for number in numbers), bounds, minutes, choices)
