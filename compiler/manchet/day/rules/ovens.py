"""What is in an oven when: how long a load stays, what shares its deck, what lies between two, and the minutes of a fire."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator
from fractions import Fraction
from itertools import combinations, pairwise

from manchet.day.model import LENGTHS_APART, Day, DayLoad, DayOven, HeatSpan, Timetable
from manchet.day.rules.refusal import Refusal, ends_of


def load(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """A load comes out exactly when it has stayed its minutes."""
    for number, each in enumerate(day.loads):
        out = timetable.starts[each.take]
        stayed = out - timetable.starts[each.put]
        if stayed != each.stays:
            words = f"{each.key} is in the oven for {stayed} min, and is to stay {each.stays}"
            yield Refusal("load", words, (each.put, each.take), (number,), out)


def share(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """In no minute do the loads on a deck take more than all of it."""
    ends = ends_of(day, timetable)
    taken: dict[tuple[str, int, int], Fraction] = defaultdict(Fraction)
    for each, deck in zip(day.loads, timetable.decks, strict=True):
        for minute in range(timetable.starts[each.put], ends[each.take]):
            taken[each.oven, deck, minute] += each.share
    told = set()
    for oven, deck, minute in sorted(where for where, part in taken.items() if part > 1):
        if (oven, deck) not in told:
            told.add((oven, deck))
            there = tuple(
                number
                for number, (each, on) in enumerate(zip(day.loads, timetable.decks, strict=True))
                if (each.oven, on) == (oven, deck) and timetable.starts[each.put] <= minute < ends[each.take]
            )
            words = (
                f"{', '.join(day.loads[at].key for at in there)} take more than one deck of {oven} holds at {minute}"
            )
            yield Refusal("share", words, (), there, minute)


def deck(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """Two loads on a deck go in through one opening and suit one another, or one follows the other with its minutes between;
    what stands at the mouth takes no heat from the floor."""
    ends = ends_of(day, timetable)
    ovens = {oven.name: oven for oven in day.ovens}
    order = sorted(range(len(day.loads)), key=lambda number: (timetable.starts[day.loads[number].put], number))
    for one, other in combinations(order, 2):
        first, second = day.loads[one], day.loads[other]
        if first.oven != second.oven or timetable.decks[one] != timetable.decks[other]:
            continue
        oven = ovens[first.oven]
        start = timetable.starts[second.put]
        apart = start - timetable.starts[first.put]
        between = start - ends[first.take]
        mouth = any(_is_at_the_mouth(day, timetable, oven, each) for each in (first, second))
        wanted = 0 if mouth else _minutes_between(oven, first, second)
        if between >= wanted or (apart <= oven.within and _suit(oven, first, second)):
            continue
        if between >= 0:
            words = f"{second.key} goes in {between} min after {first.key} is out, and {oven.name} wants {wanted}"
        elif apart > oven.within:
            words = f"the door opens at {start} for {second.key} while {first.key} bakes"
        else:
            words = f"{first.key} and {second.key} don't suit one deck"
        yield Refusal("deck", words, (), (one, other), start)


def _suit(oven: DayOven, one: DayLoad, other: DayLoad) -> bool:
    """They can bake together: lengths not too far apart, and some heat that both want; a falling oven has that by its curve."""
    if one.is_in and other.is_in:
        return True
    if abs(one.stays - other.stays) > LENGTHS_APART:
        return False
    return bool(oven.curve) or (_meet(one.enters, other.enters) and _meet(one.leaves, other.leaves))


def _meet(one: HeatSpan | None, other: HeatSpan | None) -> bool:
    return one is None or other is None or (one.low <= other.high and other.low <= one.high)


def _minutes_between(oven: DayOven, first: DayLoad, second: DayLoad) -> int:
    """For the oven to recover, or to come to the other heat, whichever is longer; a falling oven is set to none."""
    if oven.curve or first.leaves is None or second.enters is None:
        return oven.recovers
    was, wanted = first.leaves, second.enters
    up = (wanted.low + wanted.near) - (was.high - was.near)
    down = (was.low + was.near) - (wanted.high - wanted.near)
    change = Fraction(0)
    if oven.climbs is not None and up > 0:
        change = up / oven.climbs
    if oven.sinks is not None and down > 0:
        change = down / oven.sinks
    return max(oven.recovers, -int(-change // 1))


def fire(day: Day, timetable: Timetable) -> Iterator[Refusal]:
    """While an oven heats nothing is in it but food at its mouth, in the minutes for that; nothing goes in before it was hot."""
    ends = ends_of(day, timetable)
    for oven in day.ovens:
        heatings = _heatings(day, timetable, oven)
        for (_, out), (lit, _) in pairwise(heatings):
            if lit < out:
                yield Refusal("fire", f"{oven.name} is lit at {lit} while it heats until {out}", (), (), lit)
        for number, each in enumerate(day.loads):
            if each.oven != oven.name or _is_at_the_mouth(day, timetable, oven, each):
                continue
            enters, empty = timetable.starts[each.put], ends[each.take]
            for lit, out in heatings:
                if enters < out and lit < empty:
                    words = f"{each.key} is in {oven.name} at {max(lit, enters)}, which heats until {out}"
                    yield Refusal("fire", words, (), (number,), max(lit, enters))
            if (heatings or oven.curve) and not any(out <= enters for _, out in heatings):
                words = f"{each.key} goes into {oven.name} at {enters}, which no fire has heated by then"
                yield Refusal("fire", words, (), (number,), enters)


def _heatings(day: Day, timetable: Timetable, oven: DayOven) -> list[tuple[int, int]]:
    """From when to when the oven heats, the first first."""
    lit = ((timetable.starts[fire.light], fire.heats) for fire in day.fires if fire.oven == oven.name)
    return sorted((start, start + heats) for start, heats in lit)


def _is_at_the_mouth(day: Day, timetable: Timetable, oven: DayOven, load: DayLoad) -> bool:
    """It stands there, in the minutes for that, while the oven heats."""
    enters, empty = timetable.starts[load.put], timetable.starts[load.take] + day.jobs[load.take].minutes
    return load.at_the_mouth and any(
        max(lit, out - oven.mouth_from) <= enters and empty <= out - oven.mouth_until
        for lit, out in _heatings(day, timetable, oven)
    )
