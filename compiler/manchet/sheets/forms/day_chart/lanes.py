"""The lanes of the day chart: which bar each job, wait and load is, in minutes from the chart's first."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from manchet.day.floors import floor_at, heat_of
from manchet.day.model import DayOven, Fire
from manchet.day.pages.day_plan import DayPlan, works_of
from manchet.quantities.printing import round_to
from manchet.sheets.drawings.day_chart import ChartBar, ChartEnd, ChartLane, ChartOven, ChartPoint, ChartRow
from manchet.sheets.page.measures import Measures
from manchet.sheets.parts.day_clock import WallTime
from manchet.sheets.parts.day_rows import waits_said
from manchet.sheets.parts.wording import single


class Lanes:
    """Of one plan; `zero` is the chart's first minute."""

    def __init__(self, plan: DayPlan, zero: int, m: Measures) -> None:
        self.plan, self.zero, self.m = plan, zero, m
        self.wall, self.works = WallTime(plan, m), works_of(plan)

    def breads(self) -> list[ChartLane]:
        """In the order their first load goes in; then what has none, and the preparations."""
        ends = {end.bread: end for end in self.plan.day.ends}
        names = list(dict.fromkeys(bread for job in self.plan.day.jobs for bread in job.breads))
        puts = {name: [self.plan.begins(x.put) for x in self.plan.day.loads if x.bread == name] for name in names}
        names.sort(key=lambda name: (name not in ends, min(puts[name], default=self.plan.day.finishes)))
        return [self._lane(name) for name in names]

    def _lane(self, name: str) -> ChartLane:
        jobs = [at for at, job in enumerate(self.plan.day.jobs) if name in job.breads]
        dough = {at for at in jobs if self._is_dough(at, name)}
        stages = [at for at in jobs if at not in dough]
        return ChartLane(
            name,
            (*self._bars(jobs, dough), *self._loads(name)),
            tuple(self._bars(jobs, set(stages))),
            tuple(self._ends(name)),
        )

    def _is_dough(self, job: int, name: str) -> bool:
        moment = self.plan.of.moments[job]
        return moment is None or moment.stage == self.works[name].dough.stage

    def _bars(self, jobs: list[int], mine: set[int]) -> Iterator[ChartBar]:
        """Of the dough, or of its stages, which carry their names."""
        plan = self.plan
        for wait in plan.day.waits:
            if wait.before in mine and wait.after in jobs and wait.what:
                start, end = plan.ends(wait.before), plan.begins(wait.after)
                text = waits_said(wait.what.split(", ")[-1], self.m)
                if end > start:
                    yield self._bar(start, end, "cold" if wait.is_cold else "alone", text)._replace(
                        of=self._stage(wait.before)
                    )
        for at in mine:
            yield self._bar(plan.begins(at), plan.ends(at), "work")._replace(of=self._stage(at))

    def _stage(self, job: int) -> str:
        moment = self.plan.of.moments[job]
        return "" if moment is None else moment.stage.name or moment.stage.word

    def _loads(self, name: str) -> Iterator[ChartBar]:
        for load in self.plan.day.loads:
            if load.bread == name:
                yield self._bar(self.plan.begins(load.put), self.plan.begins(load.take), "oven")

    def _ends(self, name: str) -> Iterator[ChartEnd]:
        dues: dict[int, int] = {}
        for end in self.plan.day.ends:
            if end.bread == name:
                dues[end.due] = min(self.plan.ends(end.job), dues.get(end.due, self.plan.ends(end.job)))
        for due, out in sorted(dues.items()):
            yield ChartEnd(out - self.zero, due - self.zero, self.wall.clock(due))

    def _bar(self, start: int, end: int, ink: str, text: str = "") -> ChartBar:
        return ChartBar(start - self.zero, end - self.zero, ink, text)

    # ---- ovens, machines, people

    def ovens(self) -> Iterator[ChartOven]:
        for oven in self.plan.day.ovens:
            numbers = [at for at in self.plan.loads_in_order() if self.plan.day.loads[at].oven == oven.name]
            if not numbers:
                continue
            loads = tuple(self._load(at, number) for number, at in enumerate(numbers, 1))
            fire = next((fire for fire in self.plan.day.fires if fire.oven == oven.name), None)
            if oven.curve and fire is not None:
                yield self._falling(oven, fire, numbers, loads)
            else:
                yield ChartOven(oven.name, (), (), (), loads)

    def _load(self, at: int, number: int) -> ChartBar:
        load = self.plan.day.loads[at]
        return self._bar(self.plan.begins(load.put), self.plan.begins(load.take), "oven", str(number))

    def _falling(self, oven: DayOven, fire: Fire, numbers: list[int], loads: tuple[ChartBar, ...]) -> ChartOven:
        plan, say = self.plan, self.m.words.say
        lit, out = plan.begins(fire.light), plan.begins(fire.light) + fire.heats
        last = max(plan.ends(plan.day.loads[at].take) for at in numbers)
        hottest, coldest = oven.curve[0].celsius, heat_of(oven.curve, Fraction(max(last - out, 1)))

        def spot(minute: int, celsius: Fraction, text: str = "") -> ChartPoint:
            share = (celsius - coldest) / (hottest - coldest) if hottest > coldest else Fraction(0)
            return ChartPoint(minute - self.zero, max(float(share), 0.0), text)

        marks = []
        for at in numbers:
            load = plan.day.loads[at]
            heat = floor_at(plan.day, plan.timetable, load)
            if heat is not None:
                said = self.m.oven(single(round_to(heat / 5, 0) * 5))
                marks.append(spot(plan.begins(load.put), heat, said))
        return ChartOven(
            oven.name,
            (
                spot(lit, coldest, say("chart.lit_at", self.wall.clock(lit))),
                spot(out, hottest, say("chart.out_at", self.wall.clock(out))),
            ),
            (
                *(spot(int(out + point.minute), point.celsius) for point in oven.curve if out + point.minute < last),
                spot(last, coldest),
            ),
            tuple(marks),
            loads,
        )

    def rows(self) -> Iterator[ChartRow]:
        for mixer in self.plan.day.mixers:
            jobs = [at for at, job in enumerate(self.plan.day.jobs) if job.mixer == mixer.name]
            if jobs:
                yield ChartRow(mixer.name, (), tuple(self._work(jobs)))
        for name in dict.fromkeys(shift.name for shift in self.plan.day.shifts):
            mine = [at for at, shift in enumerate(self.plan.day.shifts) if shift.name == name]
            there = (self._bar(self.plan.day.shifts[at].begins, self.plan.day.shifts[at].ends, "alone") for at in mine)
            jobs = [job for at in mine for job in self.plan.of_shift(at)]
            yield ChartRow(name, tuple(there), tuple(self._work(jobs)))

    def _work(self, jobs: list[int]) -> Iterator[ChartBar]:
        return (self._bar(self.plan.begins(at), self.plan.ends(at), "work") for at in jobs)
