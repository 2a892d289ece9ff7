"""Plans that hold by a hair, and the same a minute or a unit further, which break one rule: a row for each way to break it."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from day.days import MORNING, Draft, Made, curve, heats, timed

from manchet.day.model import DayMixer, DayOven, DayPlace, End, Fire, Shift, Stay
from manchet.records import NamedTuple


class Mutation(NamedTuple):
    what: str
    rule: str
    holds: Made
    breaks: Made


def _moved(made: Made, **starts: int) -> Made:
    """Some jobs at other times; `tin_mix` is the job “tin/mix”."""
    keys = [job.key.replace("/", "_").replace(" ", "_") for job in made.day.jobs]
    moved = {keys.index(key): start for key, start in starts.items()}
    assert len(moved) == len(starts)
    plan = made.plan
    return Made(made.day, plan._replace(starts=tuple(moved.get(at, start) for at, start in enumerate(plan.starts))))


def _one_job(minutes: int = 10, hands: int = 1, mixer: str = "", earliest: int = 100, latest: int = 200) -> Draft:
    day = Draft(50, 400)
    day.shifts.append(Shift("Ines", "Ines", 1, 90, 300))
    day.job("rye/mix", minutes, earliest, latest, hands, mixer)
    return day


def _of_times() -> Iterator[Mutation]:
    early, late = _one_job().day(), _one_job(latest=250).day()
    yield Mutation("before its earliest", "window", Made(early, timed(early, [100])), Made(early, timed(early, [99])))
    yield Mutation("after its latest", "window", Made(late, timed(late, [250])), Made(late, timed(late, [251])))
    loose = _one_job(hands=0, earliest=0, latest=1000).day()
    yield Mutation("before the day", "window", Made(loose, timed(loose, [50])), Made(loose, timed(loose, [49])))
    yield Mutation("beyond the day", "window", Made(loose, timed(loose, [390])), Made(loose, timed(loose, [391])))

    day = Draft()
    for name in ("mix", "divide"):
        day.job(f"rye/{name}", 5, hands=0)
    day.wait(0, 1, 60, 80, 10)
    two = day.day()
    yield Mutation("too short a wait", "wait", Made(two, timed(two, [0, 60])), Made(two, timed(two, [0, 59])))
    yield Mutation("beyond may wait", "wait", Made(two, timed(two, [0, 90])), Made(two, timed(two, [0, 91])))
    back = two._replace(waits=(two.waits[0]._replace(least=-10),))
    yield Mutation("too long before", "wait", Made(back, timed(back, [60, 50])), Made(back, timed(back, [61, 50])))

    done = _one_job()
    done.ends.append(End("rye", 8, "loaves", 0, 60, 300, not_before=200, oldest=180))
    ready = done.day()
    yield Mutation("before its window", "end", Made(ready, timed(ready, [130])), Made(ready, timed(ready, [129])))
    aged = ready._replace(ends=(ready.ends[0]._replace(not_before=None),))
    yield Mutation("too old", "end", Made(aged, timed(aged, [110])), Made(aged, timed(aged, [109])))


def _of_hands() -> Iterator[Mutation]:
    day = _one_job(earliest=0, latest=390).day()
    yield Mutation("before the shift", "shift", Made(day, timed(day, [90])), Made(day, timed(day, [89], (), [0])))
    yield Mutation("after the shift", "shift", Made(day, timed(day, [290])), Made(day, timed(day, [291], (), [0])))
    yield Mutation("nobody", "shift", Made(day, timed(day, [100])), Made(day, timed(day, [100], (), [-1])))
    alone = _one_job(hands=0).day()
    yield Mutation("by itself", "shift", Made(alone, timed(alone, [100])), Made(alone, timed(alone, [100], (), [0])))
    both = day._replace(shifts=(day.shifts[0], day.shifts[0]._replace(key="Tom", name="Tom")))
    bound = both._replace(jobs=(both.jobs[0]._replace(shift="Tom"),))
    yield Mutation("of another", "shift", Made(bound, timed(bound, [100])), Made(bound, timed(bound, [100], (), [0])))

    pair = _one_job(hands=2).day()
    strong = pair._replace(shifts=(pair.shifts[0]._replace(hands=2),))
    yield Mutation("too few hands", "hands", Made(strong, timed(strong, [100])), Made(pair, timed(pair, [100])))
    more = Draft()
    more.shifts.append(Shift("Ines", "Ines", 3, 0, 500))
    for name, hands in (("mix", 1), ("shape", 2), ("load", 1)):
        more.job(f"rye/{name}", 10, hands=hands)
    three = more.day()
    yield Mutation(
        "hands of a minute", "hands", Made(three, timed(three, [0, 5, 10])), Made(three, timed(three, [0, 5, 9]))
    )
    yield Mutation("one place at once", "hands", MORNING, _moved(MORNING, rye_mix=351))

    pause = Draft()
    pause.ovens.append(DayOven("deck"))
    pause.shifts.append(Shift("Ines", "Ines", 1, 0, 500))
    pause.job("Ines/break", 30, shift="Ines", is_break=True)
    pause.load("rye", "deck", 60)
    out = pause.day()
    yield Mutation(
        "break to the last", "break", Made(out, timed(out, [120, 100, 160])), Made(out, timed(out, [121, 100, 160]))
    )
    quick = out._replace(loads=(out.loads[0]._replace(stays=33),))
    short = quick._replace(jobs=(quick.jobs[0]._replace(minutes=5), *quick.jobs[1:]))
    yield Mutation(
        "break within", "break", Made(short, timed(short, [118, 100, 133])), Made(short, timed(short, [125, 100, 133]))
    )


def _of_room() -> Iterator[Mutation]:
    def mixed(number: int, starts: list[int], gaps: tuple[tuple[int, int, int], ...] = (), away: int = 0) -> Made:
        day = Draft()
        day.mixers.append(DayMixer("spiral", number, gaps, ((away, away + 20),) if away else ()))
        for at in range(len(starts)):
            day.job(f"rye/mix {at + 1}", 10, hands=0, mixer="spiral")
        made = day.day()
        return Made(made, timed(made, starts))

    yield Mutation("one mixer", "mixer", mixed(1, [0, 10]), mixed(1, [0, 9]))
    yield Mutation("two mixers", "mixer", mixed(2, [0, 5, 10]), mixed(2, [0, 5, 9]))
    wash = ((0, 1, 6), (1, 0, 20))
    yield Mutation("to be washed", "mixer", mixed(1, [0, 16], wash), mixed(1, [0, 15], wash))
    yield Mutation("washed the other way", "mixer", mixed(1, [30, 0], wash), mixed(1, [29, 0], wash))
    # The first that is free is not the one to take: what comes last only follows the second dough without a wash.
    late = ((0, 3, 60), (2, 3, 60), (1, 2, 60))
    yield Mutation("shared out", "mixer", mixed(2, [0, 0, 10, 10], late), mixed(2, [0, 0, 10, 9], late))
    yield Mutation("lent", "mixer", mixed(1, [90], (), 100), mixed(1, [91], (), 100))
    yield Mutation("back from lending", "mixer", mixed(1, [120], (), 100), mixed(1, [119], (), 100))

    day = Draft()
    day.places.append(DayPlace("prover", 20, ((100, 200),)))
    for name in ("shape", "load"):
        for bread in ("tin", "rye"):
            day.job(f"{bread}/{name}", 10, hands=0)
    day.stays.extend((Stay("prover", 12, 0, 2), Stay("prover", 9, 1, 3)))
    tins = day.day()
    yield Mutation(
        "a full prover", "place", Made(tins, timed(tins, [0, 40, 30, 70])), Made(tins, timed(tins, [0, 39, 30, 70]))
    )
    yield Mutation(
        "a prover away", "place", Made(tins, timed(tins, [0, 60, 30, 90])), Made(tins, timed(tins, [0, 60, 30, 91]))
    )
    again = Made(tins, timed(tins, [0, 200, 30, 230]))
    yield Mutation("a prover back", "place", again, Made(tins, timed(tins, [0, 199, 30, 230])))
    roomy = tins._replace(stays=(tins.stays[0], tins.stays[1]._replace(takes=8)))
    yield Mutation(
        "a unit too many", "place", Made(roomy, timed(roomy, [0, 0, 30, 70])), Made(tins, timed(tins, [0, 0, 30, 70]))
    )


def _of_ovens() -> Iterator[Mutation]:
    def baked(
        starts: list[int], *loads: tuple[int, Fraction, tuple[int, int], tuple[int, int]], decks: tuple[int, ...] = ()
    ) -> Made:
        day = Draft()
        day.ovens.append(DayOven("deck", 2, within=6, recovers=10, climbs=Fraction(2), sinks=Fraction(3)))
        for number, (stays, share, enters, leaves) in enumerate(loads):
            day.load(f"bread {number}", "deck", stays, None, share, heats(*enters), heats(*leaves))
        for job in range(len(day.jobs)):
            day.jobs[job] = day.jobs[job]._replace(hands=0)
        made = day.day()
        found = [minute for start, (stays, *_) in zip(starts, loads, strict=True) for minute in (start, start + stays)]
        return Made(made, timed(made, found, decks))

    half, whole, hot, warm = Fraction(1, 2), Fraction(1), (240, 250), (200, 215)
    one = (40, half, hot, hot)
    made = baked([0], one)
    yield Mutation("out too late", "load", made, Made(made.day, timed(made.day, [0, 41])))
    yield Mutation("out too soon", "load", made, Made(made.day, timed(made.day, [0, 39])))
    yield Mutation("two openings", "deck", baked([0, 6], one, one), baked([0, 7], one, one))
    yield Mutation("two decks", "deck", baked([0, 7], one, one, decks=(0, 1)), baked([0, 7], one, one, decks=(1, 1)))
    long = (65, half, hot, hot)
    yield Mutation("lengths apart", "deck", baked([0, 0], one, long), baked([0, 0], one, (66, *long[1:])))
    met = (40, half, (250, 260), hot)
    yield Mutation("one heat", "deck", baked([0, 0], one, met), baked([0, 0], one, (40, half, (251, 260), hot)))
    sunk = (40, half, hot, (230, 240))
    yield Mutation("one last heat", "deck", baked([0, 0], one, sunk), baked([0, 0], one, (40, half, hot, (230, 239))))
    full = (40, whole, hot, hot)
    yield Mutation("recovers", "deck", baked([0, 53], full, full), baked([0, 52], full, full))
    cool = (40, whole, warm, warm)
    # 25 C between 215 and 240: 13 min up at 2 C a minute, 9 down at 3 C, which is less than it takes to recover.
    yield Mutation("climbs", "deck", baked([0, 56], cool, full), baked([0, 55], cool, full))
    cold = (40, whole, (180, 201), warm)
    yield Mutation("sinks", "deck", baked([0, 56], full, cold), baked([0, 55], full, cold))
    third = Fraction(1, 3)
    thirds = (40, third, hot, hot)
    more = (40, Fraction(34, 100), hot, hot)
    yield Mutation("shares", "share", baked([0, 0, 3], *[thirds] * 3), baked([0, 0, 3], thirds, thirds, more))


def _of_fires() -> Iterator[Mutation]:
    def fired(
        starts: list[int],
        *loads: tuple[int, tuple[int, int] | None, int, bool],
        lit: tuple[int, ...] = (100,),
        falls: bool = True,
        decks: int = 1,
    ) -> Made:
        """Each fire heats for 60 minutes; the floor falls from 300 C by 1 C a minute, to 150 C."""
        day = Draft(0, 2000)
        floor = curve((0, 300), (150, 150)) if falls else ()
        day.ovens.append(DayOven("mother", decks, within=5, curve=floor, mouth_from=50, mouth_until=5))
        for number in range(len(lit)):
            day.fires.append(Fire("mother", day.job(f"fire {number}/light", 5, hands=0), 60))
        for number, (stays, enters, extra, mouth) in enumerate(loads):
            span = heats(*enters) if enters else None
            day.load(f"bread {number}", "mother", stays, None, Fraction(1, 2), span, None, extra, mouth)
        made = day.day()
        made = made._replace(jobs=tuple(job._replace(hands=0) for job in made.jobs))
        found = [minute for start, (stays, *_) in zip(starts, loads, strict=True) for minute in (start, start + stays)]
        return Made(made, timed(made, [*lit, *found], range(decks) if decks > 1 else ()))

    any_heat = (20, None, 0, False)
    yield Mutation("while it heats", "fire", fired([160], any_heat), fired([159], any_heat))
    yield Mutation("before any fire", "fire", fired([160], any_heat), fired([60], any_heat))
    yield Mutation("no fire ever", "fire", fired([160], any_heat), fired([160], any_heat, lit=()))
    steady = fired([160], any_heat, falls=False)
    yield Mutation("a steady oven's fire", "fire", steady, fired([60], any_heat, falls=False))
    yield Mutation(
        "before the next", "fire", fired([177], any_heat, lit=(100, 200)), fired([178], any_heat, lit=(100, 200))
    )
    yield Mutation("two fires at once", "fire", fired([], lit=(100, 160)), fired([], lit=(100, 159)))
    food = (20, (150, 200), 0, True)
    yield Mutation("early at the mouth", "fire", fired([110], food), fired([109], food))
    yield Mutation("late at the mouth", "fire", fired([132], food), fired([133], food))
    bread = (20, (150, 200), 0, False)
    yield Mutation("bread at the mouth", "fire", fired([110], food), fired([110], bread))
    early = fired([100], food)
    longer = early.day._replace(ovens=(early.day.ovens[0]._replace(mouth_from=70),))
    yield Mutation("at a cold mouth", "fire", Made(longer, early.plan), Made(longer, fired([99], food).plan))
    snack = (15, None, 0, True)
    yield Mutation("mouth food by turns", "deck", fired([110, 128], snack, snack), fired([110, 127], snack, snack))
    slow = fired([110, 163], food, bread)
    slow = Made(slow.day._replace(ovens=(slow.day.ovens[0]._replace(curve=(), recovers=40),)), slow.plan)
    both = Made(slow.day, slow.plan._replace(starts=(100, 160, 180, 222, 242)))
    yield Mutation("recovers after bread", "deck", slow, both)

    exact = (20, (200, 240), 7, False)
    yield Mutation("too hot a floor", "floor", fired([220], exact), fired([219], exact))
    yield Mutation("too cold a floor", "floor", fired([260], exact), fired([261], exact))
    yield Mutation(
        "the next fire's floor", "floor", fired([520], exact, lit=(100, 400)), fired([519], exact, lit=(100, 400))
    )
    ends = (20, (100, 240), 0, False)
    yield Mutation("the end of the curve", "floor", fired([310], ends), fired([311], ends))
    yield Mutation("what a load takes", "floor", fired([220, 253], exact, exact), fired([220, 254], exact, exact))
    yield Mutation(
        "what it took is hot",
        "floor",
        fired([160, 213], (20, None, 7, False), exact),
        fired([160, 212], (20, None, 7, False), exact),
    )
    yield Mutation("in one opening", "floor", fired([255, 260], exact, exact), fired([255, 261], exact, exact, decks=2))
    yield Mutation(
        "on another deck", "floor", fired([240, 253], exact, exact, decks=2), fired([240, 254], exact, exact, decks=2)
    )


def _of_the_whole() -> Iterator[Mutation]:
    day, plan = MORNING

    def bad(what: str, day: object = day, plan: object = plan) -> Mutation:
        return Mutation(what, "whole", MORNING, Made(day, plan))  # type: ignore[arg-type]

    yield bad("a job without a beginning", plan=plan._replace(starts=plan.starts[:-1]))
    yield bad("a job too many", plan=plan._replace(starts=(*plan.starts, 100)))
    yield bad("a job without a shift", plan=plan._replace(shifts=plan.shifts[:-1]))
    yield bad("a load without a deck", plan=plan._replace(decks=(0,)))
    yield bad("no such shift", plan=plan._replace(shifts=(1, *plan.shifts[1:])))
    yield bad("no shift of that kind", plan=plan._replace(shifts=(-2, *plan.shifts[1:])))
    yield bad("no such deck", plan=plan._replace(decks=(0, 1)))
    yield bad("a deck under the first", plan=plan._replace(decks=(0, -1)))
    yield bad("one name, two jobs", day._replace(jobs=(day.jobs[0]._replace(key=day.jobs[1].key), *day.jobs[1:])))
    yield bad("one name, two shifts", day._replace(shifts=day.shifts * 2))
    yield bad("no such oven", day._replace(loads=tuple(load._replace(oven="kiln") for load in day.loads)))
    yield bad("no such mixer", day._replace(mixers=()))
    yield bad("no such place", day._replace(places=()))
    yield bad("no such job", day._replace(ends=(day.ends[0]._replace(job=len(day.jobs)),)))


MUTATIONS = (
    *_of_the_whole(), *_of_times(), *_of_hands(), *_of_room(), *_of_ovens(), *_of_fires(),
)  # fmt: skip
