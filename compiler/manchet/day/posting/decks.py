"""Which loads share a deck, which come one after the other, and when no oven is lit over what stands in it."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from manchet.day.model import Day, DayLoad
from manchet.day.posting.choices import Choice, Finder, Rule, SoFar, Starts, TurnTaken
from manchet.day.posting.net import Origin, Tie
from manchet.day.together import between, may_share


def minutes_in(day: Day, load: DayLoad) -> int:
    """From the beginning of putting in to the end of taking out."""
    return load.stays + day.jobs[load.take].minutes


LATEST = 1 << 30
MOST_TURNS = 8
"""So many loads are tried at most to come next."""


def decks_of(day: Day) -> tuple[Decks, ...]:
    return tuple(Decks(day, number) for number in range(len(day.ovens)))


def deck_rules(decks: Sequence[Decks]) -> Iterator[Rule]:
    """Loads that are on no deck together, and come one after the other on none."""
    for each in decks:
        if len(each.loads) > 1:
            yield Rule(each.jobs, each.ways_out)


def turn_rules(decks: Sequence[Decks], weight: int) -> Iterator[Rule]:
    """Of ovens that hold their heat, every load gets its deck and its turn, from the last one back. The one comes before that
    leaves its deck empty least, and that can go in early least; a minute of an empty deck counts as much as so many of these."""
    for each in decks:
        if len(each.loads) > 1 and not each.falls:

            def next_load(now: SoFar, decks: Decks = each) -> tuple[Choice, ...] | None:
                return decks.next_load(now, weight)

            yield Rule(each.jobs, next_load, hangs_on_choices=True, leaves_out=True)


class Decks:
    """The loads of one oven, and how long each pair of them must lie apart."""

    def __init__(self, day: Day, number: int) -> None:
        oven = day.ovens[number]
        self.loads = tuple(at for at, load in enumerate(day.loads) if load.oven == oven.name)
        self.jobs = tuple(day.loads[at].put for at in self.loads)
        self.falls = bool(oven.curve)
        self._number, self._decks, self._within = number, oven.decks, oven.within
        self._put = {at: day.loads[at].put for at in self.loads}
        self._share = {at: day.loads[at].share for at in self.loads}
        self._minutes = {at: minutes_in(day, day.loads[at]) for at in self.loads}
        pairs = [(one, other) for one in self.loads for other in self.loads if one != other]
        self._before = {
            (one, other): self._minutes[one] + between(oven, day.loads[one], day.loads[other]) for one, other in pairs
        }
        self._suit = {
            (one, other)
            for one, other in pairs
            if self._share[one] + self._share[other] <= 1 and may_share(oven, day.loads[one], day.loads[other])
        }

    def ways_out(self, now: SoFar) -> tuple[Choice, ...] | None:
        for load, deck, others in self.share_out(now.latest):
            if deck < 0:
                return tuple(self._ways_out([load, *others], now.latest))
        return None

    def share_out(self, starts: Starts) -> Iterator[tuple[int, int, list[int]]]:
        """From the last to come out to the first, each load goes on a deck: beside what it suits, else on the one that is
        wanted again soonest. -1 where none is free: with all that stand in its way."""
        decks: list[list[int]] = [[] for _ in range(self._decks)]
        begins = {load: starts[self._put[load]] for load in self.loads}
        for load in sorted(self.loads, key=lambda load: (-begins[load] - self._minutes[load], -begins[load], load)):
            in_the_way: list[int] = []
            free: list[tuple[bool, int, int]] = []
            for at, deck in enumerate(decks):
                beside = [other for other in deck if begins[load] + self._before[load, other] > begins[other]]
                clashing = [
                    other
                    for other in beside
                    if (load, other) not in self._suit or abs(begins[load] - begins[other]) > self._within
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
        why = Origin("oven", self._number)
        for one in loads:
            for other in loads:
                if one == other:
                    continue
                put, next_put = self._put[one], self._put[other]
                yield Choice((Tie(put, next_put, self._before[one, other], why),))
                if one < other and (one, other) in self._suit and abs(starts[put] - starts[next_put]) > self._within:
                    yield Choice((Tie(put, next_put, -self._within, why), Tie(next_put, put, -self._within, why)))

    def next_load(self, now: SoFar, weight: int) -> tuple[Choice, ...] | None:
        """On the deck that is free longest, the likeliest to come before what was placed last there, or beside it."""
        starts, made = now.latest, now.turns(self._number)
        left = [load for load in self.loads if all(turn.load != load for turn in made)]
        if not left:
            return None
        groups: list[list[int]] = [[] for _ in range(self._decks)]
        for turn in made:
            groups[turn.deck] = [*groups[turn.deck], turn.load] if turn.beside else [turn.load]
        frees = [min((starts[self._put[other]] for other in group), default=LATEST) for group in groups]
        deck = frees.index(max(frees))
        group = groups[deck]
        out = max(starts[self._put[load]] + self._minutes[load] for load in left)
        rows = [row for load in left for row in self._turns_at(load, group, min(frees[deck], out), now)]
        rows.sort(key=lambda row: (row[0] * weight + row[1], *row[1:]))
        return tuple(self._turn(load, deck, group, beside) for _, _, beside, load in rows[:MOST_TURNS])

    def _turns_at(self, load: int, group: list[int], free: int, now: SoFar) -> Iterator[tuple[int, int, bool, int]]:
        """(how long the deck is then empty, how early it can go in, whether it goes beside the group, itself)"""
        put, starts, lows = self._put[load], now.latest, now.earliest
        is_room = self._share[load] + sum(self._share[other] for other in group) <= 1
        if group and is_room and all((load, other) in self._suit for other in group):
            yield max(free - self._within - starts[put], 0), -lows[put], True, load
        begins = min([starts[put], *(starts[self._put[other]] - self._before[load, other] for other in group)])
        yield free - begins - self._minutes[load], -lows[put], False, load

    def _turn(self, load: int, deck: int, group: list[int], beside: bool) -> Choice:
        why = Origin("oven", self._number)
        put = self._put[load]
        ties: list[Tie] = []
        for other in group:
            if beside:
                ties.append(Tie(put, self._put[other], -self._within, why))
                ties.append(Tie(self._put[other], put, -self._within, why))
            else:
                ties.append(Tie(put, self._put[other], self._before[load, other], why))
        return Choice(tuple(ties), TurnTaken(self._number, load, beside, deck=deck))


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
