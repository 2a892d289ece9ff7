"""Invented bakeries of any number of breads: one or two decks, one or two mixers, people through the night."""

from __future__ import annotations

from fractions import Fraction
from random import Random

from manchet.day.model import (
    Day,
    DayJob,
    DayLoad,
    DayMixer,
    DayOven,
    DayPlace,
    DayWait,
    End,
    HeatSpan,
    Shift,
    Stay,
)

NOON = 1440 + 720
"""Minute 0 is midnight before the day that is baked for."""


class Bakery:
    """A day being put together."""

    def __init__(self, random: Random, crowded: bool) -> None:
        self.random, self.crowded = random, crowded
        self.jobs: list[DayJob] = []
        self.waits: list[DayWait] = []
        self.loads: list[DayLoad] = []
        self.stays: list[Stay] = []
        self.ends: list[End] = []

    def job(self, bread: str, does: str, minutes: int, mixer: str = "") -> int:
        self.jobs.append(DayJob(f"{bread}/{does}", (bread,), does, minutes, 0, NOON, mixer=mixer))
        return len(self.jobs) - 1

    def wait(
        self, before: int, after: int, least: int, most: int, may: int = 0, what: str = "", cold: bool = False
    ) -> int:
        self.waits.append(
            DayWait(before, after, self.jobs[before].minutes + least, self.jobs[before].minutes + most, may, what, cold)
        )
        return after

    def bread(self, name: str, loads: int, due: int) -> None:
        random = self.random
        small, cold = random.random() < 0.3, random.random() < 0.35
        sour = not cold and random.random() < 0.6
        at = self.job(name, "weigh", 6)
        if sour:
            feed = self.job(name, "feed", 3)
            self.wait(feed, at, 480, 720, 60, "ripen")
        at = self.wait(at, self.job(name, "mix", random.choice((10, 12, 15)), "spiral"), 0, 10)
        for fold in range(random.choice((0, 1, 2))):
            at = self.wait(at, self.job(name, f"fold {fold + 1}", 2), 25, 40, 0, "ferment")
        divide = self.job(name, "divide", random.choice((8, 12, 16)))
        at = self.wait(at, divide, 50, 80, 20, "ferment")
        shape = self.job(name, "shape", random.choice((8, 12, 16)))
        at = self.wait(at, shape, 12, 25, 5, "rest")
        heat = random.choice((210, 230, 240) if not self.crowded else (210, 230, 240, 250))
        enters = HeatSpan(Fraction(heat - 10), Fraction(heat + 10))
        stays = random.choice((15, 18)) if small else random.choice((32, 36, 40, 45))
        for number in range(loads):
            put, take = self.job(name, f"load {number + 1}", 3), self.job(name, f"take out {number + 1}", 3)
            if cold:
                self.wait(at, put, 600, 840, 120, "prove cold", cold=True)
                self.stays.append(Stay("fridge", 12, shape, put))
            else:
                self.wait(at, put, 60, 100, 20, "prove")
                self.stays.append(Stay("prover", 12, shape, put))
            share = random.choice(
                (Fraction(1), Fraction(1, 2)) if not self.crowded else (Fraction(1), Fraction(1), Fraction(1, 2))
            )
            leaves = HeatSpan(Fraction(heat - 30), Fraction(heat))
            self.loads.append(
                DayLoad(f"{name}/{number + 1}", name, 12, "loaves", "deck", put, take, stays, share, enters, leaves)
            )
            self.ends.append(
                End(name, 12, "loaves", take, 40 if small else 90, due, oldest=240 if small else 540, word="packed")
            )


def grown_day(breads: int, seed: int = 0, crowded: bool = False) -> Day:
    """So many breads, due between half past five and eleven; about one in seven in two loads."""
    random = Random(1000 * breads + seed)
    bakery = Bakery(random, crowded)
    for number in range(breads):
        due = 1440 + random.choice((330, 360, 390, 420, 480, 540, 600, 660))
        bakery.bread(f"bread {number + 1}", 2 if number % 7 == 3 else 1, due)
    crew = 1 if breads <= 12 else 2 if breads <= 28 else 3
    decks = 1 if breads <= 6 else 2
    shifts = (
        Shift("day", "Ines", crew, 480, 960),
        Shift("evening", "Bo", crew, 930, 1320),
        Shift("night", "Tom", crew, 1290, 1440 + 360),
        Shift("morning", "Ada", crew, 1440 + 330, NOON),
    )
    return Day(
        tuple(bakery.jobs),
        tuple(bakery.waits),
        tuple(bakery.loads),
        (DayOven("deck", decks, 4, 4, Fraction(3), Fraction(2)),),
        (),
        (DayMixer("spiral", 1 if breads <= 12 else 2, _washing(bakery.jobs)),),
        (DayPlace("prover", 48 if breads <= 12 else 96), DayPlace("fridge", 24 * max(2, breads // 4))),
        tuple(bakery.stays),
        shifts,
        tuple(bakery.ends),
        0,
        NOON,
    )


def _washing(jobs: list[DayJob]) -> tuple[tuple[int, int, int], ...]:
    mixes = [at for at, job in enumerate(jobs) if job.mixer]
    return tuple((one, other, 6) for one in mixes for other in mixes if one != other)
