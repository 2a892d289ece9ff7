"""In what order loads go into an oven that falls from the minute its fire is out.

The floor that a load finds depends on what went in before it. So the order is built from the first load on: then all that was
taken from the floor is known, and the minutes of the curve in which the next may go in are ties to the lighting of the fire.
"""

from __future__ import annotations

from collections.abc import Iterator

from manchet.day.goals import closes_at, opens_at
from manchet.day.model import Day
from manchet.day.posting.choices import Choice, Rule, SoFar, TurnTaken
from manchet.day.posting.decks import at_the_mouth, minutes_in
from manchet.day.posting.net import Origin, Tie
from manchet.day.together import may_share

WHENEVER = 1 << 24
"""Minutes of the curve, for what goes in at any heat: more than any day has."""


def _since_lit(turns: list[TurnTaken]) -> list[TurnTaken]:
    """What went in on the floor of the last fire."""
    lit = max((at for at, turn in enumerate(turns) if turn.load < 0), default=-1)
    return [turn for turn in turns[lit + 1 :] if not turn.at_the_mouth]


def falling_rules(day: Day) -> Iterator[Rule]:
    for number, oven in enumerate(day.ovens):
        loads = tuple(at for at, load in enumerate(day.loads) if load.oven == oven.name)
        fires = tuple(at for at, fire in enumerate(day.fires) if fire.oven == oven.name)
        if oven.curve and loads:
            lights = tuple(day.fires[fire].light for fire in fires)
            order = FallingFloor(day, number, loads, fires)
            yield Rule((*lights, *(day.loads[at].put for at in loads)), order.ways_out, hangs_on_choices=True)


class FallingFloor:
    """The loads and fires of one oven."""

    def __init__(self, day: Day, number: int, loads: tuple[int, ...], fires: tuple[int, ...]) -> None:
        self._day, self._number, self._loads = day, number, loads
        self._oven = day.ovens[number]
        self._fires = fires
        self._why = Origin("floor", number)
        self._spans = {at: self._span(at) for at in loads}

    def _span(self, at: int) -> tuple[int, int]:
        load = self._day.loads[at]
        if load.enters is None:
            return 0, WHENEVER
        return opens_at(self._oven, load), closes_at(self._oven, load)

    def ways_out(self, now: SoFar) -> tuple[Choice, ...] | None:
        """The loads that could be next, the one that must go in soonest first."""
        turns = now.turns(self._number)
        left = [at for at in self._loads if all(turn.load != at for turn in turns)]
        lit = [turn.fire for turn in turns if turn.load < 0] if len(self._fires) > 1 else list(self._fires)
        unlit = [fire for fire in self._fires if fire not in lit]
        if not left and not unlit:
            return None
        if not self._fires:
            zero = len(self._day.jobs)
            return tuple(Choice((Tie(zero, self._put(at), WHENEVER, self._why),)) for at in left)
        if not lit:
            return tuple(self._lights(fire, unlit, []) for fire in unlit)
        return tuple(self._ways(turns, left, lit[-1], unlit, now))

    def _ways(
        self, turns: list[TurnTaken], left: list[int], fire: int, unlit: list[int], now: SoFar
    ) -> Iterator[Choice]:
        """Loads that cannot wait for another fire, then another fire, then all other loads."""
        inside = _since_lit(turns)
        firsts = [at for at, turn in enumerate(inside) if not turn.beside]
        before = [turn.load for turn in (inside[: firsts[-1]] if firsts else [])]
        group = [turn.load for turn in (inside[firsts[-1] :] if firsts else [])]
        taken, by_group = self._taken(before), self._taken(group)
        out = now.latest[self._light(fire)] + self._heats(fire)
        next_out = min((now.earliest[self._light(each)] + self._heats(each) for each in unlit), default=WHENEVER)
        pressing = [at for at in left if now.latest[self._put(at)] < next_out]
        by_hour = sorted(
            left, key=lambda at: (min(now.latest[self._put(at)], out + self._spans[at][1] - taken - by_group), at)
        )
        for at in by_hour:
            if at in pressing:
                yield from self._goes_in(at, [] if unlit else left, fire, group, taken)
        for each in unlit:
            yield self._lights(each, unlit, group)
        for at in by_hour:
            if at not in pressing:
                yield from self._goes_in(at, [], fire, group, taken)

    def _goes_in(self, at: int, left: list[int], fire: int, group: list[int], taken: int) -> Iterator[Choice]:
        """One load beside the last ones, after them, or at the mouth; what is left then, where this is the last fire."""
        if self._goes_beside(at, group):
            ties = [*self._in_heat(at, fire, taken), *self._side_by_side(at, group)]
            yield Choice((*ties, *self._then(left, at, [], fire, taken)), TurnTaken(self._number, at, beside=True))
        taken += self._taken(group)
        ties = [*self._in_heat(at, fire, taken), *self._follows(at, group)]
        yield Choice((*ties, *self._then(left, at, group, fire, taken)), TurnTaken(self._number, at))
        if self._day.loads[at].at_the_mouth:
            mouth = at_the_mouth(self._day, self._number, self._day.loads[at], fire)
            yield Choice(mouth, TurnTaken(self._number, at, at_the_mouth=True))

    def _lights(self, fire: int, unlit: list[int], group: list[int]) -> Choice:
        """This fire is the next, once all is out."""
        light = self._light(fire)
        outs = [Tie(self._put(at), light, self._minutes(at), self._why) for at in group]
        others = [Tie(light, self._light(each), self._heats(fire), self._why) for each in unlit if each != fire]
        return Choice((*outs, *others), TurnTaken(self._number, fire=fire))

    def _light(self, fire: int) -> int:
        return self._day.fires[fire].light

    def _heats(self, fire: int) -> int:
        return self._day.fires[fire].heats

    def _taken(self, loads: list[int]) -> int:
        """Minutes of the curve that these loads take beyond their time."""
        return sum(self._day.loads[at].extra for at in loads)

    def _put(self, at: int) -> int:
        return self._day.loads[at].put

    def _minutes(self, at: int) -> int:
        return minutes_in(self._day, self._day.loads[at])

    def _in_heat(self, at: int, fire: int, taken: int) -> tuple[Tie, Tie]:
        light, heats = self._light(fire), self._heats(fire)
        opens, closes = self._spans[at]
        return (
            Tie(light, self._put(at), heats + max(opens - taken, 0), self._why),
            Tie(self._put(at), light, taken - closes - heats, self._why),
        )

    def _goes_beside(self, at: int, group: list[int]) -> bool:
        loads = self._day.loads
        return bool(group) and (
            (self._oven.decks > 1 or all(may_share(self._oven, loads[at], loads[other]) for other in group))
            and loads[at].share + sum(loads[other].share for other in group) <= self._oven.decks
        )

    def _side_by_side(self, at: int, group: list[int]) -> Iterator[Tie]:
        for other in group:
            yield Tie(self._put(at), self._put(other), -self._oven.within, self._why)
            yield Tie(self._put(other), self._put(at), -self._oven.within, self._why)

    def _follows(self, at: int, group: list[int]) -> Iterator[Tie]:
        for other in group:
            minutes = self._minutes(other) + self._oven.recovers if self._oven.decks == 1 else self._oven.within + 1
            yield Tie(self._put(other), self._put(at), max(minutes, self._oven.within + 1), self._why)

    def _then(self, left: list[int], at: int, group: list[int], fire: int, taken: int) -> Iterator[Tie]:
        """What is left goes in with this load or after it, on a floor that has lost as much at least."""
        light, heats = self._light(fire), self._heats(fire)
        for other in left:
            if other != at and not self._day.loads[other].at_the_mouth:
                yield Tie(self._put(at), self._put(other), -self._oven.within, self._why)
                yield Tie(self._put(other), light, taken - self._spans[other][1] - heats, self._why)
                for load in group:
                    yield Tie(self._put(load), self._put(other), 0, self._why)
