"""What clashes in sums: more minutes of an oven, a mixer, of hands or of a place are wanted within some hours than are there.

A job counts for the hours within which it must lie whole, by its own waits and ends. A sum that is too large proves that there
is no plan, and names the hours; where everything clashes with everything nothing else is as short.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from fractions import Fraction

from manchet.day.clashes.values import DayClash, Hour
from manchet.day.clashes.words import some
from manchet.day.clock import hours_and_minutes
from manchet.day.model import Day
from manchet.day.windows import JobSpan, windows_of
from manchet.records import NamedTuple


class Wanted(NamedTuple):
    """Somebody wants something for at least so long between two minutes."""

    low: int
    high: int
    work: Fraction
    """Minutes, of one unit."""
    breads: tuple[str, ...]


class Over(NamedTuple):
    """Hours in which more is wanted than is there."""

    begins: int
    ends: int
    work: Fraction
    there: Fraction
    breads: tuple[str, ...]
    number: int
    """Of jobs, loads or stays."""


What = tuple[str, str]
"""What takes up the minutes ("bakes", "mixes", "jobs", "stays"), and who has them."""

There = Callable[[int, int], Fraction]
"""Minutes of all units between two minutes."""


def clashes_counted(day: Day, hour: Hour) -> tuple[DayClash, ...]:
    """Of a day in which nothing may be late: for each thing the hours that are fullest."""
    spans = windows_of(day)
    if any(span.low > span.high for span in spans):
        return ()  # what follows from shifts and waits together is not told in sums
    return tuple(DayClash(_sum_words(what, over, hour), over.breads, "counted") for what, over in overs(day, spans))


def cannot_be(day: Day) -> bool:
    """Windows or sums prove that there is no plan of the day, before anybody looks for one."""
    spans = windows_of(day)
    return any(span.low > span.high for span in spans) or any(True for _ in overs(day, spans))


def overs(day: Day, spans: tuple[JobSpan, ...]) -> Iterator[tuple[What, Over]]:
    """Of each thing that is too full the hours in which it is."""
    for what, wanted, there in _things(day, spans):
        over = fullest(wanted, there)
        if over is not None:
            yield what, over


def fullest(wanted: Sequence[Wanted], there: There) -> Over | None:
    """Of all hours that are too full those with the fewest breads, then with the most too much."""
    best: tuple[tuple[int, Fraction], Over] | None = None
    by_end = sorted(wanted, key=lambda each: each.high)
    for begins in sorted({each.low for each in wanted}):
        work, breads, number = Fraction(0), dict[str, None](), 0
        for at, each in enumerate(by_end):
            if each.low < begins:
                continue
            work, number = work + each.work, number + 1
            breads.update(dict.fromkeys(each.breads))
            if at + 1 < len(by_end) and by_end[at + 1].high == each.high:
                continue
            room = there(begins, each.high)
            if work > room:
                rank = (len(breads), room - work)
                if best is None or rank < best[0]:
                    best = rank, Over(begins, each.high, work, room, tuple(breads), number)
    return best[1] if best else None


def _things(day: Day, spans: tuple[JobSpan, ...]) -> Iterator[tuple[What, list[Wanted], There]]:
    for oven in day.ovens:
        loads = [
            Wanted(
                spans[load.put].low,
                spans[load.take].high + day.jobs[load.take].minutes,
                load.share * (load.stays + day.jobs[load.take].minutes),
                (load.bread,),
            )
            for load in day.loads
            if load.oven == oven.name
        ]
        yield ("bakes", oven.name), loads, _always(oven.decks, ())
    for mixer in day.mixers:
        mixes = [_job(day, spans, at, 1) for at, job in enumerate(day.jobs) if job.mixer == mixer.name]
        yield ("mixes", mixer.name), mixes, _always(mixer.number, mixer.away)
    works = [_job(day, spans, at, job.hands) for at, job in enumerate(day.jobs) if job.hands]
    yield ("jobs", "whoever is there"), works, _shifts(day)
    for place in day.places:
        stays = [
            Wanted(
                spans[stay.begins].low, ends, Fraction(stay.takes * least, place.holds), day.jobs[stay.begins].breads
            )
            for stay in day.stays
            if stay.place == place.name and place.holds
            for ends in [spans[stay.ends].high + day.jobs[stay.ends].minutes]
            for least in [_least_stay(day, spans, stay.begins, stay.ends)]
        ]
        yield ("stays", place.name), stays, _always(1, place.away)


def _job(day: Day, spans: tuple[JobSpan, ...], at: int, units: int) -> Wanted:
    job = day.jobs[at]
    return Wanted(spans[at].low, spans[at].high + job.minutes, Fraction(job.minutes * units), job.breads)


def _least_stay(day: Day, spans: tuple[JobSpan, ...], begins: int, ends: int) -> int:
    direct = [wait.least for wait in day.waits if (wait.before, wait.after) == (begins, ends)]
    least = max([0, spans[ends].low - spans[begins].high, *direct])
    return least + day.jobs[ends].minutes


def _always(units: int, away: tuple[tuple[int, int], ...]) -> There:
    def there(begins: int, ends: int) -> Fraction:
        gone = sum(max(min(back, ends) - max(left, begins), 0) for left, back in away)
        return Fraction(units * max(ends - begins - gone, 0))

    return there


def _shifts(day: Day) -> There:
    def there(begins: int, ends: int) -> Fraction:
        return Fraction(
            sum(shift.hands * max(min(shift.ends, ends) - max(shift.begins, begins), 0) for shift in day.shifts)
        )

    return there


def _sum_words(what: What, over: Over, hour: Hour) -> str:
    kind, whose = what
    when = f"between {hour(over.begins)} and {hour(over.ends)}"
    wants, there = _whole(over.work), int(over.there)
    names = f" ({some(over.breads)})" if over.breads else ""
    number = over.number
    if kind == "bakes":
        return f"{_many(number, 'load')}{names} must be in {whose} {when}: that takes {hours_and_minutes(wants)} of a full deck, and there are {hours_and_minutes(there)}"
    if kind == "mixes":
        return f"{_many(number, 'dough')}{names} must be mixed {when}: that takes {hours_and_minutes(wants)} of {whose}, and there are {hours_and_minutes(there)}"
    if kind == "jobs":
        return f"{_many(number, 'job')}{names} must be done {when}: that is {hours_and_minutes(wants)} of work, and {whose} has {hours_and_minutes(there)}"
    return f"{some(over.breads)} must be in {whose} {when}: that fills it for {hours_and_minutes(wants)}, and there are {hours_and_minutes(there)}"


def _whole(work: Fraction) -> int:
    return -int(-work // 1)


def _many(number: int, noun: str) -> str:
    return f"{number} {noun}" if number == 1 else f"{number} {noun}s"
