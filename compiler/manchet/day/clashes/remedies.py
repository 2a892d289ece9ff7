"""What would help: each sort of change by itself, and the least of it that is enough."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from itertools import combinations

from manchet.day.clashes.asking import Inquiry, TimeIsUp, least
from manchet.day.clashes.eased import Hours, with_hands, with_longer_shift
from manchet.day.clashes.less import on_time, without
from manchet.day.clashes.smallest import MOST_BREADS, ClashCore
from manchet.day.clashes.values import Hour, Remedy
from manchet.day.clashes.words import and_list
from manchet.day.clock import hours_and_minutes
from manchet.day.model import Day, DayWait, Fire, Shift, Timetable
from manchet.records import NamedTuple

LATER = 240
LONGER = 120
"""Minutes: more than these is another day, or another bread. Our own figures."""
STEP = 5
"""Minutes to which an hour is asked of somebody."""
LONG_SHIFT = 240
SHORT_PAUSE = 60
"""Minutes from which on hands are rather wanted twice, and up to which they rather stay. Our own figures."""


class Tried(NamedTuple):
    """What came of the changes."""

    remedies: tuple[Remedy, ...]
    useless: tuple[str, ...]
    is_finished: bool


ONE_LESS, TWO_LESS = "leaving out one bread", "leaving out two breads"
AN_HOUR_LATER = f"a later hour, up to {LATER // 60} h"
LONGER_SHIFT = f"a longer shift, up to {LATER // 60} h"
MORE_HANDS, ONE_MORE_FIRE, LONGER_WAITS = (
    "one more pair of hands",
    "a second fire",
    f"longer waits, up to {LONGER // 60} h",
)


def remedies_of(
    day: Day, clashing: Sequence[Sequence[str]], cores: Sequence[ClashCore], inquiry: Inquiry, hour: Hour
) -> Tried:
    """`clashing` are the breads of each clash: as long as they clash, no change of another bread helps, and of several clashes
    a change of one bread only if it is in all of them. Where it is proven that a rule has no part in a clash, nothing that
    eases this rule helps either, and it is not asked."""
    remedies: list[Remedy] = []
    useless: list[str] = []
    breads = tuple(bread for bread in day.breads if any(bread in each for each in clashing))
    in_all = tuple(bread for bread in breads if all(bread in each for each in clashing))
    kinds: tuple[tuple[str, tuple[str, ...], Callable[[], Iterator[Remedy]]], ...] = (
        (ONE_LESS, (), lambda: _without(day, in_all, inquiry)),
        (TWO_LESS, (), lambda: _without_two(day, in_all, inquiry)),
        (AN_HOUR_LATER, (), lambda: _later(day, in_all, inquiry, hour)),
        (LONGER_SHIFT, ("hands",), lambda: _longer_shifts(day, inquiry, hour)),
        (MORE_HANDS, ("hands",), lambda: _hands(day, inquiry, hour)),
        (ONE_MORE_FIRE, ("heats", "turns"), lambda: _fires(day, inquiry, hour)),
        (LONGER_WAITS, ("ranges",), lambda: _waits(day, breads, inquiry)),
        ("more room", ("places",), lambda: _places(day, inquiry)),
        ("one more deck or mixer", ("turns", "mixers"), lambda: _machines(day, inquiry)),
    )
    for words, eases, tries in kinds:
        if words == ONE_MORE_FIRE and not _fired(day):
            continue
        if words == TWO_LESS and (remedies or len(clashing) > 1 or not 2 < len(in_all) <= MOST_BREADS):
            continue
        is_asked = (
            not eases or not inquiry.is_certain or all(any(rule in core.rules for rule in eases) for core in cores)
        )
        before = len(remedies)
        try:
            for remedy in tries() if is_asked else ():
                remedies.append(remedy)
        except TimeIsUp:
            return Tried(tuple(remedies), tuple(useless), is_finished=False)
        if len(remedies) == before:
            useless.append(words)
    return Tried(tuple(remedies), tuple(useless), is_finished=True)


def an_hour_or_bread(day: Day, breads: Sequence[str], inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    """One of these breads later, or left out."""
    for bread in breads:
        yield from _one_later(day, bread, inquiry, hour)
    yield from _without(day, breads, inquiry)


def more_hands(day: Day, breads: Sequence[str], inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    """For whichever bread."""
    return _hands(day, inquiry, hour)


def _without(day: Day, breads: Sequence[str], inquiry: Inquiry) -> Iterator[Remedy]:
    for bread in breads if len(day.breads) > 1 else ():
        if inquiry.plan(on_time(without(day, frozenset({bread})))) is not None:
            yield Remedy("without", f"without {bread}", bread)


def _without_two(day: Day, breads: Sequence[str], inquiry: Inquiry) -> Iterator[Remedy]:
    for pair in combinations(breads, 2):
        if inquiry.plan(on_time(without(day, frozenset(pair)))) is not None:
            yield Remedy("without", f"without {and_list(pair)}")


def _later(day: Day, breads: Sequence[str], inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    """One bread, or all where one is not enough."""
    is_one_enough = False
    for bread in breads:
        for remedy in _one_later(day, bread, inquiry, hour):
            is_one_enough = True
            yield remedy
    if not is_one_enough and len(day.breads) > 1:
        later = _least_later(day, "", inquiry)
        if later:
            yield Remedy("later", f"with everything {hours_and_minutes(later)} later", "", later)


def _one_later(day: Day, bread: str, inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    later = _least_later(day, bread, inquiry)
    if later:
        due = min(end.due for end in day.ends if end.bread == bread)
        words = f"with {bread} {hours_and_minutes(later)} later, at {hour(due + later)}"
        yield Remedy("later", words, bread, later)


def _least_later(day: Day, bread: str, inquiry: Inquiry) -> int:
    """0 where no lateness helps."""
    if inquiry.plan(on_time(day, bread, LATER)) is None:
        return 0
    return least(1, LATER, lambda by: inquiry.plan(on_time(day, bread, by)) is not None)


def _longer_shifts(day: Day, inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    """One shift that begins so much earlier, or ends so much later, in steps of `STEP`; never into another of the same person."""
    for shift, its in enumerate(day.shifts):
        others = [other for at, other in enumerate(day.shifts) if at != shift and other.name == its.name]
        before = max((one.ends for one in others if one.ends <= its.begins), default=its.begins - LATER)
        after = min((one.begins for one in others if one.begins >= its.ends), default=its.ends + LATER)

        def earlier(steps: int, shift: int = shift, its: Shift = its) -> Day:
            return on_time(with_longer_shift(day, shift, its.begins - steps * STEP, its.ends))

        def later(steps: int, shift: int = shift, its: Shift = its) -> Day:
            return on_time(with_longer_shift(day, shift, its.begins, its.ends + steps * STEP))

        steps = _least_steps(min(its.begins - before, LATER) // STEP, earlier, inquiry)
        if steps:
            words = f"if {its.name} began at {hour(its.begins - steps * STEP)} instead of {hour(its.begins)}"
            yield Remedy("shift", words, "", steps * STEP, ((its.begins - steps * STEP, its.begins),))
        steps = _least_steps(min(after - its.ends, LATER) // STEP, later, inquiry)
        if steps:
            words = f"if {its.name} stayed until {hour(its.ends + steps * STEP)} instead of {hour(its.ends)}"
            yield Remedy("shift", words, "", steps * STEP, ((its.ends, its.ends + steps * STEP),))


def _least_steps(most: int, longer: Callable[[int], Day], inquiry: Inquiry) -> int:
    """0 where all of them do not help."""
    if most < 1 or inquiry.plan(longer(most)) is None:
        return 0
    return least(1, most, lambda steps: inquiry.plan(longer(steps)) is not None)


def _hands(day: Day, inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    """As late as they can come, and then for as short as it goes; several times where once would be half a day."""
    for gap in (*_gaps(day), (day.begins, day.finishes)):
        if _with_hands(day, (gap,), inquiry) is None:
            continue
        once = _shortest(day, (), gap, inquiry)
        hours = _several(day, once, inquiry) if once[1] - once[0] > LONG_SHIFT else (once,)
        wanted = sum(ends - begins for begins, ends in hours)
        when = and_list([f"from {hour(begins)} to {hour(ends)}" for begins, ends in hours])
        yield Remedy("hands", f"with one more pair of hands {when} ({hours_and_minutes(wanted)})", "", wanted, hours)
        return


def _with_hands(day: Day, hours: Hours, inquiry: Inquiry) -> Timetable | None:
    return inquiry.plan(on_time(with_hands(day, hours)))


def _shortest(day: Day, beside: Hours, hours: tuple[int, int], inquiry: Inquiry) -> tuple[int, int]:
    """Cut at the beginning first, then at the end; `beside` are other hours in which there are more hands."""
    begins, ends = hours

    def are_enough(first: int, last: int) -> bool:
        return _with_hands(day, (*beside, (first, last)), inquiry) is not None

    first = ends - least(1, ends - begins, lambda long: are_enough(ends - long, ends))
    return first, least(first + 1, ends, lambda last: are_enough(first, last))


def _several(day: Day, hours: tuple[int, int], inquiry: Inquiry) -> Hours:
    """The hours in which the hands are at work in some plan, those left out that need not be, the others cut."""
    found = _with_hands(day, (hours,), inquiry)
    assert found is not None
    works = sorted(
        (found.starts[at], found.starts[at] + day.jobs[at].minutes)
        for at, shift in enumerate(found.shifts)
        if shift == len(day.shifts)
    )
    pieces = [works[0]]
    for begins, ends in works[1:]:
        if begins - pieces[-1][1] <= SHORT_PAUSE:
            pieces[-1] = pieces[-1][0], max(ends, pieces[-1][1])
        else:
            pieces.append((begins, ends))
    for piece in tuple(pieces):
        fewer = tuple(each for each in pieces if each != piece)
        if fewer and _with_hands(day, fewer, inquiry) is not None:
            pieces.remove(piece)
    for piece in tuple(pieces):
        pieces.remove(piece)
        pieces.append(_shortest(day, tuple(pieces), piece, inquiry))
    return tuple(sorted(pieces))


def _gaps(day: Day) -> Iterator[tuple[int, int]]:
    """When nobody is there."""
    at = day.begins
    for shift in sorted(day.shifts, key=lambda shift: shift.begins):
        if shift.begins > at:
            yield at, shift.begins
        at = max(at, shift.ends)
    if at < day.finishes:
        yield at, day.finishes


def _fired(day: Day) -> tuple[Fire, ...]:
    """One fire of each oven that loses its heat; what holds it is only switched on."""
    falling = {oven.name for oven in day.ovens if oven.curve}
    return tuple({fire.oven: fire for fire in day.fires if fire.oven in falling}.values())


def _fires(day: Day, inquiry: Inquiry, hour: Hour) -> Iterator[Remedy]:
    for fire in _fired(day):
        light = day.jobs[fire.light]
        again = light._replace(
            key=f"{light.key} again", earliest=day.begins, latest=day.finishes - light.minutes, shift=""
        )
        more = day._replace(jobs=(*day.jobs, again), fires=(*day.fires, Fire(fire.oven, len(day.jobs), fire.heats)))
        found = inquiry.plan(on_time(more))
        if found is not None:
            lit = sorted(found.starts[each.light] for each in more.fires if each.oven == fire.oven)
            words = (
                f"with one more fire in {fire.oven}, lit for instance at {and_list([hour(minute) for minute in lit])}"
            )
            yield Remedy("fire", words)


def _waits(day: Day, breads: Sequence[str], inquiry: Inquiry) -> Iterator[Remedy]:
    """All waits of these breads may be longer; those that then are, are named."""

    def may_be(longer: int) -> Day:
        return on_time(day._replace(waits=tuple(_longer(day, wait, breads, longer) for wait in day.waits)))

    if inquiry.plan(may_be(LONGER)) is None:
        return
    longer = least(1, LONGER, lambda by: inquiry.plan(may_be(by)) is not None)
    found = inquiry.plan(may_be(longer))
    if found is None:
        return
    stretched = [
        f"{and_list(day.jobs[wait.after].breads)}: {wait.what}"
        for wait in day.waits
        if wait.most is not None and found.starts[wait.after] - found.starts[wait.before] > wait.most + wait.may
    ]
    words = f"if waits may be {hours_and_minutes(longer)} longer ({and_list(list(dict.fromkeys(stretched)))})"
    yield Remedy("longer waits", words, "", longer)


def _longer(day: Day, wait: DayWait, breads: Sequence[str], longer: int) -> DayWait:
    is_theirs = any(bread in breads for bread in day.jobs[wait.after].breads)
    return wait._replace(may=wait.may + longer) if is_theirs and wait.most is not None else wait


def _places(day: Day, inquiry: Inquiry) -> Iterator[Remedy]:
    for number, place in enumerate(day.places):

        def holds(most: int, number: int = number) -> Day:
            places = list(day.places)
            places[number] = places[number]._replace(holds=most)
            return on_time(day._replace(places=tuple(places)))

        wanted = sum(stay.takes for stay in day.stays if stay.place == place.name)
        if wanted <= place.holds or inquiry.plan(holds(wanted)) is None:
            continue
        enough = least(place.holds + 1, wanted, lambda most, holds=holds: inquiry.plan(holds(most)) is not None)  # type: ignore[misc]
        words = f"if {place.name} held {enough} instead of {place.holds}"
        yield Remedy("places", words, "", enough - place.holds)


def _machines(day: Day, inquiry: Inquiry) -> Iterator[Remedy]:
    for number, oven in enumerate(day.ovens):
        if not oven.curve:
            more = oven._replace(decks=oven.decks + 1)
            ovens = (*day.ovens[:number], more, *day.ovens[number + 1 :])
            if inquiry.plan(on_time(day._replace(ovens=ovens))) is not None:
                yield Remedy("deck", f"if {oven.name} had one deck more")
    for number, mixer in enumerate(day.mixers):
        one_more = mixer._replace(number=mixer.number + 1)
        mixers = (*day.mixers[:number], one_more, *day.mixers[number + 1 :])
        if inquiry.plan(on_time(day._replace(mixers=mixers))) is not None:
            yield Remedy("mixer", f"with one {mixer.name} more")
