"""Days put together by hand, and plans of them: what whoever plans a day, and whoever looks a plan over, is tried with.

A minute is a minute from the day's zero. `Draft` puts a day together, `timed` a plan of it; `MORNING` and `FIRE_NIGHT` are
two whole days with a plan that holds.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from manchet.day.model import (
    CurvePoint,
    Day,
    DayJob,
    DayLoad,
    DayMixer,
    DayOven,
    DayPlace,
    DayWait,
    End,
    Fire,
    HeatSpan,
    Shift,
    Stay,
    Timetable,
)
from manchet.records import NamedTuple


class Made(NamedTuple):
    day: Day
    plan: Timetable


def heats(low: int, high: int) -> HeatSpan:
    return HeatSpan(Fraction(low), Fraction(high))


def curve(*points: tuple[int, int]) -> tuple[CurvePoint, ...]:
    return tuple(CurvePoint(Fraction(minute), Fraction(celsius)) for minute, celsius in points)


class Draft:
    """A day being put together: each call adds one thing; a job's gives its number."""

    def __init__(self, begins: int = 0, finishes: int = 1440) -> None:
        self.begins, self.finishes = begins, finishes
        self.jobs: list[DayJob] = []
        self.waits: list[DayWait] = []
        self.loads: list[DayLoad] = []
        self.ovens: list[DayOven] = []
        self.fires: list[Fire] = []
        self.mixers: list[DayMixer] = []
        self.places: list[DayPlace] = []
        self.stays: list[Stay] = []
        self.shifts: list[Shift] = []
        self.ends: list[End] = []

    def job(
        self,
        key: str,
        minutes: int,
        earliest: int | None = None,
        latest: int | None = None,
        hands: int = 1,
        mixer: str = "",
        shift: str = "",
        is_break: bool = False,
    ) -> int:
        bread, _, does = key.partition("/")
        first = self.begins if earliest is None else earliest
        last = self.finishes - minutes if latest is None else latest
        breads = () if is_break else (bread,)
        self.jobs.append(DayJob(key, breads, does, minutes, first, last, hands, mixer, shift, is_break))
        return len(self.jobs) - 1

    def wait(
        self, before: int, after: int, least: int, most: int | None = None, may: int = 0, what: str = "ferment"
    ) -> None:
        self.waits.append(DayWait(before, after, least, most, may, what))

    def load(
        self,
        bread: str,
        oven: str,
        stays: int,
        put: int | None = None,
        share: Fraction = Fraction(1),
        enters: HeatSpan | None = None,
        leaves: HeatSpan | None = None,
        extra: int = 0,
        at_the_mouth: bool = False,
        minutes: int = 3,
    ) -> tuple[int, int]:
        """With its two jobs, whose numbers it gives; `put` where there is one already."""
        number = sum(load.bread == bread for load in self.loads) + 1
        puts = self.job(f"{bread}/load {number}", minutes) if put is None else put
        takes = self.job(f"{bread}/take out {number}", minutes)
        self.loads.append(
            DayLoad(
                f"{bread}/{number}",
                bread,
                8,
                "loaves",
                oven,
                puts,
                takes,
                stays,
                share,
                enters,
                leaves,
                extra,
                at_the_mouth,
            )
        )
        return puts, takes

    def day(self) -> Day:
        return Day(
            tuple(self.jobs),
            tuple(self.waits),
            tuple(self.loads),
            tuple(self.ovens),
            tuple(self.fires),
            tuple(self.mixers),
            tuple(self.places),
            tuple(self.stays),
            tuple(self.shifts),
            tuple(self.ends),
            self.begins,
            self.finishes,
        )


def timed(day: Day, starts: Sequence[int], decks: Sequence[int] = (), shifts: Sequence[int] = ()) -> Timetable:
    """A plan with these beginnings; each job's shift, where none are given, is the first that it may lie in and does."""
    chosen = tuple(shifts) or tuple(_shift_of(day, at, start) for at, start in enumerate(starts))
    return Timetable(tuple(starts), chosen, tuple(decks) or (0,) * len(day.loads))


def _shift_of(day: Day, at: int, start: int) -> int:
    job = day.jobs[at]
    for number, shift in enumerate(day.shifts):
        if job.hands and job.shift in ("", shift.key) and shift.begins <= start <= shift.ends - job.minutes:
            return number
    return -1


def _morning() -> Made:
    """Two breads with a levain in common, one deck that holds its heat, one mixer, a prover, one pair of hands and a break."""
    day = Draft()
    day.ovens.append(DayOven("deck", within=6, recovers=10, climbs=Fraction(2), sinks=Fraction(1)))
    day.shifts.append(Shift("Ines", "Ines", 1, 120, 780))
    levain = day.job("levain/feed", 5, hands=1)
    tin = [
        day.job(f"tin/{does}", minutes, mixer=mixer)
        for does, minutes, mixer in (("mix", 12, "spiral"), ("divide", 20, ""))
    ]
    rye = [
        day.job(f"rye/{does}", minutes, mixer=mixer)
        for does, minutes, mixer in (("mix", 10, "spiral"), ("shape", 15, ""))
    ]
    day.job("Ines/break", 30, 360, 600, shift="Ines", is_break=True)
    day.mixers.append(DayMixer("spiral", 1, ((tin[0], rye[0], 6), (rye[0], tin[0], 15)), ((0, 60),)))
    for dough in (tin, rye):
        day.wait(levain, dough[0], 60, 180, 30, "ripen")
    day.wait(tin[0], tin[1], 72, 100, 20)
    day.wait(rye[0], rye[1], 40, 60)
    put, out = day.load("tin", "deck", 40, enters=heats(230, 240), leaves=heats(220, 220))
    day.wait(tin[1], put, 80, 110, 15, "prove")
    day.ends.append(End("tin", 8, "loaves", out, 120, 780, oldest=600))
    put, out = day.load("rye", "deck", 60, enters=heats(250, 260), leaves=heats(200, 210), minutes=4)
    day.wait(rye[1], put, 45, 75, 15, "prove")
    day.ends.append(End("rye", 8, "loaves", out, 60, 720, not_before=500))
    day.places.append(DayPlace("prover", 20))
    day.stays.extend((Stay("prover", 12, tin[1], day.loads[0].put), Stay("prover", 8, rye[1], day.loads[1].put)))
    made = day.day()
    #               levain tin   rye       break tin      rye
    return Made(made, timed(made, (145, 250, 332, 352, 400, 490, 420, 460, 478, 538)))


def _fire_night() -> Made:
    """Three breads and something for the mouth in one fire; two people, one after the other."""
    day = Draft(0, 1000)
    floor = curve((0, 320), (40, 280), (100, 240), (200, 200), (400, 150))
    day.ovens.append(DayOven("mother", within=6, curve=floor, mouth_from=60, mouth_until=5))
    day.shifts.extend((Shift("Tom", "Tom", 1, 0, 420), Shift("Ines", "Ines", 2, 400, 1000)))
    light = day.job("fire/light", 10, 60, 300)
    day.fires.append(Fire("mother", light, 120))
    for bread, stays, enters, extra in (
        ("hearth", 40, (250, 280), 20),
        ("tin", 35, (210, 240), 12),
        ("bun", 15, (180, 220), 5),
    ):
        shape = day.job(f"{bread}/shape", 15)
        put, out = day.load(bread, "mother", stays, share=Fraction(3, 4), enters=heats(*enters), extra=extra)
        day.wait(shape, put, 60, 100, 30, "prove")
        day.ends.append(End(bread, 8, "loaves", out, 60, 600, oldest=480))
    day.load("leeks", "mother", 30, enters=None, at_the_mouth=True, share=Fraction(1, 2))
    day.job("bun/wash up", 20, hands=0)
    made = day.day()
    #               light hearth        tin            bun            leeks     wash up
    return Made(made, timed(made, (100, 180, 265, 305, 205, 310, 345, 270, 370, 385, 170, 200, 700)))


MORNING = _morning()
FIRE_NIGHT = _fire_night()
