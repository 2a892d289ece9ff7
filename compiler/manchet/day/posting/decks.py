"""Which loads share a deck, which come one after the other, and when no oven is lit over what stands in it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from manchet.day.model import Day, DayLoad
from manchet.day.posting.choices import Choice, Finder, Rule, SoFar, Starts
from manchet.day.posting.net import Origin, Tie
from manchet.day.together import between, may_share


def minutes_in(day: Day, load: DayLoad) -> int:
    """From the beginning of putting in to the end of taking out."""
    return load.stays + day.jobs[load.take].minutes


def decks_of(day: Day) -> tuple[Decks, ...]:
    return tuple(Decks(day, number) for number in range(len(day.ovens)))


def deck_rules(decks: Sequence[Decks]) -> Iterator[Rule]:
    """Loads that are on no deck together, and come one after the other on none."""
    for each in decks:
        if len(each.loads) > 1:
            yield Rule(each.jobs, each.ways_out)


class Decks:
    """The loads of one oven, and how long each pair of them must lie apart."""

    def __init__(self, day: Day, number: int) -> None:
        oven = day.ovens[number]
        self.loads = tuple(at for at, load in enumerate(day.loads) if load.oven == oven.name)
        self.jobs = tuple(day.loads[at].put for at in self.loads)
        self.falls = bool(oven.curve)
        self.number, self.decks, self.within = number, oven.decks, oven.within
        self.put = {at: day.loads[at].put for at in self.loads}
        self.minutes = {at: minutes_in(day, day.loads[at]) for at in self.loads}
        self._share = {at: day.loads[at].share for at in self.loads}
        pairs = [(one, other) for one in self.loads for other in self.loads if one != other]
        self.before = {
            (one, other): self.minutes[one] + between(oven, day.loads[one], day.loads[other]) for one, other in pairs
        }
        self._suit = {
            (one, other)
            for one, other in pairs
            if self._share[one] + self._share[other] <= 1 and may_share(oven, day.loads[one], day.loads[other])
        }

    def goes_beside(self, load: int, group: Sequence[int]) -> bool:
        """There is room for it on the deck of these, and it suits each of them."""
        return self._share[load] + sum(self._share[other] for other in group) <= 1 and all(
            (load, other) in self._suit for other in group
        )

    def follows(self, one: int, other: int) -> Tie:
        """The other goes in once the one is out and the deck is ready for it."""
        return Tie(self.put[one], self.put[other], self.before[one, other], Origin("oven", self.number))

    def side_by_side(self, one: int, other: int) -> tuple[Tie, Tie]:
        """They go in through one opening of the door."""
        put, beside, why = self.put[one], self.put[other], Origin("oven", self.number)
        return Tie(put, beside, -self.within, why), Tie(beside, put, -self.within, why)

    def ways_out(self, now: SoFar) -> tuple[Choice, ...] | None:
        for load, deck, others in self.share_out(now.latest):
            if deck < 0:
                return tuple(self._ways_out([load, *others], now.latest))
        return None

    def share_out(self, starts: Starts) -> Iterator[tuple[int, int, list[int]]]:
        """From the last to come out to the first, each load goes on a deck: beside what it suits, else on the one that is
        wanted again soonest. -1 where none is free: with all that stand in its way."""
        decks: list[list[int]] = [[] for _ in range(self.decks)]
        begins = {load: starts[self.put[load]] for load in self.loads}
        for load in sorted(self.loads, key=lambda load: (-begins[load] - self.minutes[load], -begins[load], load)):
            in_the_way: list[int] = []
            free: list[tuple[bool, int, int]] = []
            for at, deck in enumerate(decks):
                beside = [other for other in deck if begins[load] + self.before[load, other] > begins[other]]
                clashing = [
                    other
                    for other in beside
                    if (load, other) not in self._suit or abs(begins[load] - begins[other]) > self.within
                ]
                if not clashing and self._share[load] + sum(self._share[other] for other in beside) <= 1:
                    free.append((not beside, min((begins[other] for other in deck), default=1 << 30), at))
                else:
                    in_the_way += clashing or beside
            if not free:
                yield load, -1, in_the_way
                return
            at = min(free)[2]
            decks[at].append(load)
            yield load, at, []

    def _ways_out(self, loads: list[int], starts: Starts) -> Iterator[Choice]:
        for one in loads:
            for other in loads:
                if one == other:
                    continue
                yield Choice((self.follows(one, other),))
                apart = abs(starts[self.put[one]] - starts[self.put[other]])
                if one < other and (one, other) in self._suit and apart > self.within:
                    yield Choice(self.side_by_side(one, other))


def shared_out(day: Day, starts: Starts) -> tuple[int, ...]:
    """Which deck each load has."""
    chosen = [0] * len(day.loads)
    for decks in decks_of(day):
        for load, deck, _ in decks.share_out(starts):
            chosen[load] = max(deck, 0)
    return tuple(chosen)


def heating_rules(day: Day) -> Iterator[Rule]:
    """Of each oven with fires: nothing but food at the mouth is in it while it heats, and nothing goes in before."""
    for number, oven in enumerate(day.ovens):
        fires = [at for at, fire in enumerate(day.fires) if fire.oven == oven.name]
        loads = [at for at, load in enumerate(day.loads) if load.oven == oven.name]
        if fires:
            lights = tuple(day.fires[at].light for at in fires)
            yield Rule((*lights, *(day.loads[at].put for at in loads)), _heating(day, number, fires, loads))


def _heating(day: Day, number: int, fires: list[int], loads: list[int]) -> Finder:
    oven = day.ovens[number]
    why = Origin("fire", number)

    def ways_out(now: SoFar) -> tuple[Choice, ...] | None:
        starts = now.latest
        heating = sorted((starts[day.fires[at].light], at) for at in fires)
        for (_, one), (lit, other) in pairwise(heating):
            if lit < starts[day.fires[one].light] + day.fires[one].heats:
                return tuple(
                    Choice((Tie(day.fires[a].light, day.fires[b].light, day.fires[a].heats, why),))
                    for a, b in ((one, other), (other, one))
                )
        for at in loads:
            load = day.loads[at]
            begins, ends = starts[load.put], starts[load.put] + minutes_in(day, load)
            outs = [(lit, lit + day.fires[fire].heats) for lit, fire in heating]
            if load.at_the_mouth and any(
                max(lit, out - oven.mouth_from) <= begins and ends <= out - oven.mouth_until for lit, out in outs
            ):
                continue
            if begins < outs[0][1] or any(begins < out and lit < ends for lit, out in outs):
                return tuple(way for _, fire in heating for way in _around(at, fire))
        return None

    def _around(at: int, number_of_fire: int) -> Iterator[Choice]:
        load, fire = day.loads[at], day.fires[number_of_fire]
        yield Choice((Tie(fire.light, load.put, fire.heats, why),))
        if len(fires) > 1:
            yield Choice((Tie(load.put, fire.light, minutes_in(day, load), why),))
        if load.at_the_mouth:
            yield Choice(at_the_mouth(day, number, load, number_of_fire))

    return ways_out


def at_the_mouth(day: Day, oven: int, load: DayLoad, fire: int) -> tuple[Tie, ...]:
    """The ties of food that stands at the mouth while this fire burns."""
    why = Origin("fire", oven)
    light, heats = day.fires[fire].light, day.fires[fire].heats
    from_, until = day.ovens[oven].mouth_from, day.ovens[oven].mouth_until
    return (
        Tie(light, load.put, max(heats - from_, 0), why),
        Tie(load.put, light, minutes_in(day, load) + until - heats, why),
    )
