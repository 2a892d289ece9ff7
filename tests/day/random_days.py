"""Days of all sorts put together at random, each with a plan that holds: the same for the same seed.

Breads are put into the day one by one, from the oven back to the mixer, each job at a minute at which the rules still hold;
only then is it said how long a wait may be and by when a bread is due. So every day can be done, by the plan that comes with it.
"""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import cache
from random import Random

from day.days import Draft, Made, curve, heats

from manchet.day.checking import check
from manchet.day.model import Day, DayMixer, DayOven, DayPlace, End, Fire, HeatSpan, Shift, Stay, Timetable

FINISHES = 1440
FLOOR = ((0, 310), (60, 260), (180, 220), (420, 160))
HEATS = 120
TRIES = 60


class Sketch:
    """A day and its plan so far."""

    def __init__(self, seed: int) -> None:
        self.chance = Random(seed)
        self.draft = Draft(0, FINISHES)
        self.starts: list[int] = []
        self.doing: list[int] = []
        self.decks: list[int] = []

    @property
    def made(self) -> Made:
        return Made(self.draft.day(), Timetable(tuple(self.starts), tuple(self.doing), tuple(self.decks)))

    def between(self, low: int, high: int) -> int:
        return self.chance.randint(low, high)

    def often(self, percent: int) -> bool:
        return self.chance.random() * 100 < percent

    def attempt(self, change: Callable[[], None]) -> bool:
        """Carries a change out, and takes it back where the day with it does not hold."""
        lists = [
            held for held in (*vars(self.draft).values(), self.starts, self.doing, self.decks) if isinstance(held, list)
        ]
        before = [list(held) for held in lists]
        try:
            change()
            holds = not check(*self.made)
        except (LookupError, StopIteration):
            holds = False
        if not holds:
            for held, was in zip(lists, before, strict=True):
                held[:] = was
        return holds

    def job(self, key: str, minutes: int, start: int, hands: int = 1, mixer: str = "", is_break: bool = False) -> int:
        """A job at a minute, done by one of the shifts that are there then."""
        there = [
            number
            for number, shift in enumerate(self.draft.shifts)
            if shift.begins <= start <= shift.ends - minutes and hands <= shift.hands
        ]
        shift = self.chance.choice(there) if hands else -1
        bound = self.draft.shifts[shift].key if hands and (is_break or self.often(10)) else ""
        early = start - self.between(0, 90) if self.often(15) else 0
        late = start + self.between(0, 90) if self.often(15) else FINISHES
        self.starts.append(start)
        self.doing.append(shift)
        return self.draft.job(key, minutes, max(early, 0), late, hands, mixer, bound, is_break)

    def wait(self, before: int, after: int) -> None:
        """As it is in the plan, a little shorter or longer; sometimes longer than its range."""
        is_so = self.starts[after] - self.starts[before]
        least = max(is_so - self.between(0, 25), self.draft.jobs[before].minutes)
        beyond = self.between(1, 15) if self.often(10) and is_so > least + 15 else 0
        most = None if self.often(10) else is_so - beyond + (0 if beyond else self.between(0, 30))
        self.draft.wait(before, after, min(least, is_so), most, beyond + self.chance.choice((0, 0, 15, 40)))


@cache
def random_day(seed: int, breads: int = 0) -> Made:
    """A day of so many breads at the most, 1 to 8 where nothing is said; some find no room."""
    sketch = Sketch(seed)
    _people(sketch)
    ovens = (
        [_steady(sketch, "deck"), _falling]
        if sketch.often(15)
        else [sketch.chance.choice((_steady(sketch, "deck"), _falling))]
    )
    for oven in ovens:
        oven(sketch)
    _things(sketch)
    for number in range(breads or sketch.between(1, 8)):
        for _ in range(TRIES):
            if sketch.attempt(lambda number=number: _bread(sketch, f"bread {number + 1}")):  # type: ignore[misc]
                break
        for _ in range(TRIES if sketch.often(15) else 0):
            if sketch.attempt(lambda number=number: _second_load(sketch, f"bread {number + 1}")):  # type: ignore[misc]
                break
    for _ in range(sketch.between(0, 3)):
        sketch.attempt(lambda: _shared_levain(sketch))
    for number, shift in enumerate(sketch.draft.shifts):
        for _ in range(TRIES if sketch.often(50) else 0):
            if sketch.attempt(lambda number=number, shift=shift: _break(sketch, number, shift)):  # type: ignore[misc]
                break
    return sketch.made if sketch.draft.ends else random_day(seed + 1_000_003, breads)


def _people(sketch: Sketch) -> None:
    for number, (begins, ends) in enumerate(sketch.chance.choice((
        ((30, FINISHES - 30),),
        ((0, 700), (640, FINISHES)),
        ((0, 480), (480, 960), (900, FINISHES)),
        ((0, FINISHES), (300, 900)),
    ))):  # fmt: skip
        name = ("Ines", "Tom", "Ada")[number]
        sketch.draft.shifts.append(Shift(name, name, sketch.chance.choice((1, 1, 1, 2)), begins, ends))


def _steady(sketch: Sketch, name: str) -> Callable[[Sketch], None]:
    """An oven that holds its heat; sometimes it is heated first."""

    def add(sketch: Sketch) -> None:
        climbs, sinks = (Fraction(2), Fraction(1)) if sketch.often(60) else (None, None)
        decks, within, recovers = (
            sketch.chance.choice((1, 1, 2, 3)),
            sketch.chance.choice((0, 6)),
            sketch.chance.choice((0, 10)),
        )
        sketch.draft.ovens.append(DayOven(name, decks, within, recovers, climbs, sinks))
        if sketch.often(25):
            lit = sketch.between(100, 300)
            sketch.attempt(lambda: sketch.draft.fires.append(Fire(name, sketch.job(f"{name}/switch on", 2, lit), 45)))

    return add


def _falling(sketch: Sketch) -> None:
    within = sketch.chance.choice((0, 6))
    sketch.draft.ovens.append(
        DayOven("mother", sketch.chance.choice((1, 1, 1, 2)), within, 0, None, None, curve(*FLOOR), 60, 5)
    )
    for number in range(sketch.chance.choice((1, 1, 1, 2))):
        for _ in range(TRIES):
            lit = sketch.between(60, 360) + 640 * number
            if sketch.attempt(lambda lit=lit, number=number: _light(sketch, number, lit)):  # type: ignore[misc]
                break


def _light(sketch: Sketch, number: int, lit: int) -> None:
    sketch.draft.fires.append(Fire("mother", sketch.job(f"mother/light {number + 1}", 10, lit), HEATS))


def _things(sketch: Sketch) -> None:
    away = ((sketch.between(0, 300), 330),) if sketch.often(20) else ()
    sketch.draft.mixers.append(DayMixer("spiral", sketch.chance.choice((1, 1, 2)), (), away))
    away = ((sketch.between(0, 100), 130),) if sketch.often(20) else ()
    sketch.draft.places.append(DayPlace("prover", sketch.between(12, 40), away))


def _bread(sketch: Sketch, bread: str) -> None:
    oven = sketch.chance.choice(sketch.draft.ovens)
    minutes = sketch.between(2, 5)
    at_the_mouth = oven.name == "mother" and sketch.often(20)
    put = _put_at(sketch, oven, at_the_mouth)
    load = sketch.job(f"{bread}/load", minutes, put, 2 if sketch.often(8) else 1)
    enters, leaves = (None, None) if at_the_mouth else _heats(sketch, oven, put)
    stays, extra = sketch.between(12, 60), sketch.between(0, 15) if oven.curve else 0
    share = Fraction(sketch.between(1, 6), 6)
    out = put + stays
    sketch.draft.load(bread, oven.name, stays, load, share, enters, leaves, extra, at_the_mouth, sketch.between(1, 4))
    sketch.draft.jobs.pop()
    take = sketch.job(f"{bread}/take out", sketch.between(1, 4), out)
    sketch.decks.append(sketch.between(0, oven.decks - 1))
    later = load
    for does in ("shape", "fold", "mix"):
        if does == "fold" and sketch.often(50):
            continue
        minutes = 2 if does == "fold" else sketch.between(5, 20)
        start = sketch.starts[later] - minutes - sketch.between(0 if does == "fold" else 10, 150)
        hands = 0 if does == "mix" and sketch.often(15) else 1
        job = sketch.job(f"{bread}/{does}", minutes, max(start, 0), hands, "spiral" if does == "mix" else "")
        sketch.wait(job, later)
        if does == "shape" and sketch.often(50):
            sketch.draft.stays.append(Stay("prover", sketch.between(2, 12), job, later))
        later = job
    _wash(sketch, later)
    done, after = out + sketch.draft.jobs[take].minutes, sketch.between(0, 120)
    due = done + after + sketch.chance.choice((-20, 0, 0, 10, 60, 120))
    oldest = max(due - done, 0) + sketch.between(0, 60) if sketch.often(60) else None
    not_before = done + after - sketch.between(0, 30) if sketch.often(15) else None
    sketch.draft.ends.append(End(bread, 8, "loaves", take, after, due, not_before, oldest))


def _second_load(sketch: Sketch, bread: str) -> None:
    """Half of a dough goes in later: shaped with the rest, and an end of its own."""
    keys = [job.key for job in sketch.draft.jobs]
    first = next(load for load in sketch.draft.loads if load.bread == bread)
    oven = next(oven for oven in sketch.draft.ovens if oven.name == first.oven)
    put = sketch.starts[first.take] + sketch.between(3, 60)
    load = sketch.job(f"{bread}/load 2", sketch.draft.jobs[first.put].minutes, put)
    sketch.draft.loads.append(first._replace(key=f"{bread}/2", put=load, take=load + 1))
    take = sketch.job(f"{bread}/take out 2", 2, put + first.stays)
    sketch.decks.append(sketch.between(0, oven.decks - 1))
    sketch.wait(keys.index(f"{bread}/shape"), load)
    end = next(end for end in sketch.draft.ends if end.job == first.take)
    sketch.draft.ends.append(end._replace(job=take, due=end.due + put + 60 - sketch.starts[first.put]))


def _put_at(sketch: Sketch, oven: DayOven, at_the_mouth: bool) -> int:
    """Sometimes while the oven heats, or through the opening that another load goes in by."""
    if at_the_mouth and sketch.often(70):
        return sketch.starts[sketch.draft.fires[-1].light] + HEATS - sketch.between(20, 60)
    there = [sketch.starts[load.put] for load in sketch.draft.loads if load.oven == oven.name]
    if there and sketch.often(30):
        return sketch.chance.choice(there) + sketch.between(2, 8)
    lit = [sketch.starts[fire.light] + fire.heats for fire in sketch.draft.fires if fire.oven == oven.name]
    after = sketch.chance.choice(lit) if lit else 250
    return after + (sketch.between(-60, 380) if oven.curve else sketch.between(0, 800))


def _heats(sketch: Sketch, oven: DayOven, put: int) -> tuple[HeatSpan | None, HeatSpan | None]:
    """Of a steady oven one of three kinds of bread, of a falling one about what the floor is then."""
    if oven.curve:
        out = max(
            (
                sketch.starts[fire.light] + HEATS
                for fire in sketch.draft.fires
                if sketch.starts[fire.light] + HEATS <= put
            ),
            default=put,
        )
        near = next((celsius for minute, celsius in reversed(FLOOR) if minute <= put - out), 310)
        low = near - sketch.between(10, 60)
        return heats(low, low + sketch.between(20, 60)), None
    low = sketch.chance.choice((180, 210, 240))
    return heats(low, low + 20), heats(low - sketch.chance.choice((0, 20)), low + 10)


def _wash(sketch: Sketch, mixed: int) -> None:
    """Some doughs want the mixer washed before or after another's."""
    spiral = sketch.draft.mixers[0]
    gaps = list(spiral.gaps)
    for other, job in enumerate(sketch.draft.jobs):
        if job.mixer == spiral.name and other != mixed and sketch.often(25):
            minutes = sketch.between(3, 15)
            gaps.append((other, mixed, minutes) if sketch.often(50) else (mixed, other, minutes))
    sketch.draft.mixers[0] = spiral._replace(gaps=tuple(gaps))


def _shared_levain(sketch: Sketch) -> None:
    """One stage for several doughs."""
    doughs = [at for at, job in enumerate(sketch.draft.jobs) if job.mixer]
    users = sketch.chance.sample(doughs, min(len(doughs), sketch.between(1, 3)))
    first = min(sketch.starts[user] for user in users)
    stage = sketch.job(f"levain {len(sketch.starts)}/feed", 5, max(first - sketch.between(20, 240), 0))
    for user in users:
        sketch.wait(stage, user)


def _break(sketch: Sketch, number: int, shift: Shift) -> None:
    at = sketch.job(f"{shift.key}/break", 30, sketch.between(shift.begins + 60, shift.ends - 90), is_break=True)
    sketch.doing[at] = number
    sketch.draft.jobs[at] = sketch.draft.jobs[at]._replace(shift=shift.key)


def hurried_day(seed: int) -> Made:
    """A full day of which much is due sooner, and waits are shorter, than the plan that comes with it has them: that one still holds,
    late and with waits beyond their range."""
    chance = Random(seed)
    day, plan = random_day(seed, 8)
    ends = tuple(end._replace(due=end.due - chance.choice((0, 30, 60, 120)), not_before=None) for end in day.ends)
    waits = []
    for wait in day.waits:
        shortest = plan.starts[wait.after] - plan.starts[wait.before] - wait.may
        waits.append(wait if wait.most is None else wait._replace(most=max(wait.least, shortest, wait.most - 20)))
    return Made(day._replace(ends=ends, waits=tuple(waits)), plan)


def sorts_of(day: Day) -> dict[str, bool]:
    """Which sorts of thing a day has: that all of them come up is a test of its own."""
    return {
        "a falling oven": any(oven.curve for oven in day.ovens),
        "two ovens": len(day.ovens) > 1,
        "decks": any(oven.decks > 1 for oven in day.ovens),
        "two fires": len(day.fires) > 1,
        "a steady oven's fire": any(fire.oven == "deck" for fire in day.fires),
        "food at the mouth": any(load.at_the_mouth for load in day.loads),
        "washing": any(mixer.gaps for mixer in day.mixers),
        "two mixers": any(mixer.number > 1 for mixer in day.mixers),
        "a mixer away": any(mixer.away for mixer in day.mixers),
        "places": bool(day.stays),
        "three shifts": len(day.shifts) > 2,
        "a break": any(job.is_break for job in day.jobs),
        "two-hand jobs": any(job.hands > 1 for job in day.jobs),
        "by itself": any(job.hands == 0 for job in day.jobs),
        "a bound job": any(job.shift and not job.is_break for job in day.jobs),
        "a window": any(end.not_before is not None for end in day.ends),
        "an age": any(end.oldest is not None for end in day.ends),
        "a shared stage": any(sum(wait.before == at for wait in day.waits) > 1 for at in range(len(day.jobs))),
        "may wait": any(wait.may for wait in day.waits),
        "two loads of a dough": len({load.bread for load in day.loads}) < len(day.loads),
        "decks of a falling oven": any(oven.curve and oven.decks > 1 for oven in day.ovens),
        "eight breads": len(day.ends) > 7,
    }
