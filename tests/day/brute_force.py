"""Tiny days, and their best plan found by trying every minute of every job: what whoever plans is compared with.

Days are tiny in their figures too: a quarter of an hour in which five or six jobs lie.
"""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from functools import cache
from random import Random

from day.days import Draft, curve, heats

from manchet.day.checking import check
from manchet.day.model import Day, DayMixer, DayOven, DayPlace, End, Fire, Shift, Stay, Timetable
from manchet.records import NamedTuple


class Best(NamedTuple):
    late: int
    may_wait: int
    plan: Timetable


@cache
def best_plan(day: Day) -> Best | None:
    """The plan with the fewest minutes late, and of those the fewest of `may wait`; None where no plan holds."""
    order = _order(day)
    parts = [_part(day, order[:number]) for number in range(len(order) + 1)]
    found: list[Best] = []

    def go_on(part: int, starts: tuple[int, ...], shifts: tuple[int, ...], decks: tuple[int, ...]) -> None:
        plan = Timetable(starts, shifts, decks)
        if part and any(refusal.rule != "floor" or part == len(order) for refusal in check(parts[part], plan)):
            return
        late, may_wait = _cost(parts[part], plan)
        if found and (late, may_wait) >= (found[-1].late, found[-1].may_wait):
            return
        if part == len(order):
            found.append(Best(late, may_wait, _in_order(day, order, plan)))
            return
        job = day.jobs[order[part]]
        more = len(parts[part + 1].loads) - len(parts[part].loads)
        for start in _starts(parts[part + 1], starts):
            for shift in range(len(day.shifts)) if job.hands else (-1,):
                for deck in _decks(parts[part + 1], more):
                    go_on(part + 1, (*starts, start), (*shifts, shift), (*decks, *deck))

    go_on(0, (), (), ())
    return found[-1] if found else None


def _order(day: Day) -> list[int]:
    """Fires first, since loads ask for one; then jobs that hang together."""
    lights = [fire.light for fire in day.fires]
    return [*lights, *(at for at in range(len(day.jobs)) if at not in lights)]


def _starts(part: Day, starts: tuple[int, ...]) -> range:
    """Every minute at which the last job of a part may begin; what its waits and its load forbid isn't gone through."""
    this = len(starts)
    job = part.jobs[this]
    low, high = max(job.earliest, part.begins), min(job.latest, part.finishes - job.minutes)
    for wait in part.waits:
        if wait.after == this:
            low = max(low, starts[wait.before] + wait.least)
            high = high if wait.most is None else min(high, starts[wait.before] + wait.most + wait.may)
    for load in part.loads:
        if load.take == this:
            low, high = max(low, starts[load.put] + load.stays), min(high, starts[load.put] + load.stays)
    return range(low, high + 1)


def _decks(part: Day, more: int) -> Iterator[tuple[int, ...]]:
    if not more:
        yield ()
        return
    decks = next(oven.decks for oven in part.ovens if oven.name == part.loads[-1].oven)
    yield from ((deck,) for deck in range(decks))


def _part(day: Day, jobs: list[int]) -> Day:
    """The day with these jobs alone, and all that is said of them and of no other."""
    number = {job: at for at, job in enumerate(jobs)}
    loads = [load for load in day.loads if {load.put, load.take} <= {*jobs}]
    loads.sort(key=lambda load: max(number[load.put], number[load.take]))
    return day._replace(
        jobs=tuple(day.jobs[job] for job in jobs),
        waits=tuple(
            wait._replace(before=number[wait.before], after=number[wait.after])
            for wait in day.waits
            if {wait.before, wait.after} <= {*jobs}
        ),
        loads=tuple(load._replace(put=number[load.put], take=number[load.take]) for load in loads),
        fires=tuple(fire._replace(light=number[fire.light]) for fire in day.fires if fire.light in number),
        mixers=tuple(
            mixer._replace(gaps=tuple((number[a], number[b], gap) for a, b, gap in mixer.gaps if {a, b} <= {*jobs}))
            for mixer in day.mixers
        ),
        stays=tuple(
            stay._replace(begins=number[stay.begins], ends=number[stay.ends])
            for stay in day.stays
            if {stay.begins, stay.ends} <= {*jobs}
        ),
        ends=tuple(end._replace(job=number[end.job]) for end in day.ends if end.job in number),
    )


def _cost(day: Day, plan: Timetable) -> tuple[int, int]:
    late = (plan.starts[end.job] + day.jobs[end.job].minutes + end.after - end.due for end in day.ends)
    waited = (
        plan.starts[wait.after] - plan.starts[wait.before] - wait.most for wait in day.waits if wait.most is not None
    )
    return sum(max(minutes, 0) for minutes in late), sum(max(minutes, 0) for minutes in waited)


def _in_order(day: Day, order: list[int], plan: Timetable) -> Timetable:
    """The plan as the day numbers its jobs and loads."""
    at = {job: number for number, job in enumerate(order)}
    by_key = {load.key: deck for load, deck in zip(_part(day, order).loads, plan.decks, strict=True)}
    return Timetable(
        tuple(plan.starts[at[job]] for job in range(len(order))),
        tuple(plan.shifts[at[job]] for job in range(len(order))),
        tuple(by_key[load.key] for load in day.loads),
    )


def tiny_day(seed: int) -> Day:
    """Two breads, seldom three, with a job or two before the oven, in a day of some fifteen minutes; some can't be done."""
    chance = Random(seed)
    day = Draft(0, chance.randint(11, 15))
    falls = chance.random() < 0.4
    if falls:
        day.ovens.append(DayOven("mother", 1, chance.choice((0, 1)), curve=curve((0, 300), (12, 180)), mouth_from=3))
        day.fires.append(Fire("mother", day.job("mother/light", 1, 0, 3, hands=0), 3))
    else:
        climbs, sinks = chance.choice(((None, None), (Fraction(20), Fraction(10))))
        day.ovens.append(
            DayOven("deck", chance.choice((1, 1, 2)), chance.choice((0, 1)), chance.choice((0, 1)), climbs, sinks)
        )
    day.mixers.append(DayMixer("spiral", 1))
    day.places.append(DayPlace("prover", chance.choice((1, 2))))
    day.shifts.append(Shift("Ines", "Ines", chance.choice((1, 1, 2)), chance.choice((0, 2)), day.finishes))
    if chance.random() < 0.3:
        half = chance.randint(6, 9)
        day.shifts[0] = day.shifts[0]._replace(ends=half)
        day.shifts.append(Shift("Tom", "Tom", 1, half - 1, day.finishes))
    mixed = []
    for number in range(chance.choice((2, 2, 2, 2, 3))):
        mix = day.job(f"bread {number}/mix", chance.randint(1, 2), mixer="spiral")
        low = chance.choice((200, 230, 260))
        enters, extra = (heats(low, low + 40), chance.randint(0, 2)) if falls else (heats(low, low + 20), 0)
        share = chance.choice((Fraction(1), Fraction(1, 2)))
        put, take = day.load(
            f"bread {number}",
            day.ovens[0].name,
            chance.randint(2, 4),
            None,
            share,
            enters,
            enters,
            extra,
            falls and chance.random() < 0.2,
            1,
        )
        least = chance.randint(1, 4)
        day.wait(mix, put, least, least + chance.randint(0, 2), chance.randint(0, 3))
        if chance.random() < 0.5:
            day.stays.append(Stay("prover", 1, mix, put))
        due = chance.randint(6, day.finishes)
        day.ends.append(End(f"bread {number}", 1, "loaf", take, 0, due, oldest=chance.choice((None, 4, 6))))
        mixed.append(mix)
    if chance.random() < 0.5:
        day.mixers[0] = DayMixer("spiral", 1, ((mixed[0], mixed[1], 2), (mixed[1], mixed[0], 1)))
    return day.day()
