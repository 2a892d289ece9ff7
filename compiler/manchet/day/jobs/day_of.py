"""The day that a plan asks for: the moments of all its works as jobs, with everything they share."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import datetime
from fractions import Fraction

from manchet.batch.work import Work, in_mixes
from manchet.day.clock import DayClock, minutes_down, minutes_up
from manchet.day.jobs import estimates
from manchet.day.jobs.ages import Oldest, fit_after, oldest_of
from manchet.day.jobs.by_load import by_branch, too_far_apart
from manchet.day.jobs.making import work_of_day
from manchet.day.jobs.ovens import at_the_mouth, day_oven, enters, extra_minutes, heaviest, leaves
from manchet.day.jobs.people import breaks_of, clock_of, shifts_of
from manchet.day.jobs.places import bowl, places_of, takes
from manchet.day.jobs.shared import Builds, builds_of
from manchet.day.jobs.values import Gap, OvenTurn, WorkMoment, WorkOfDay
from manchet.day.jobs.washing import gaps_of
from manchet.day.model import (
    Day,
    DayJob,
    DayLoad,
    DayMixer,
    DayPlace,
    DayWait,
    End,
    Fire,
    Shift,
    Stay,
)
from manchet.day.said import Finish, Plan, Want
from manchet.diagnostics.suggest import fold
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import COLD, HOLDS_PIECE, IN_OVEN, PROVES

NOTHING = Fraction(0)
STAND_SOMEWHERE = (HOLDS_PIECE - IN_OVEN) | COLD | PROVES
A_DAY = 24 * 60


class Bread(NamedTuple):
    """What a plan wants of one bread, and the work of it."""

    want: Want
    work: Work


class PlannedDay(NamedTuple):
    """The day with what its numbers mean: index for index, what each job does, and what each load is."""

    day: Day
    clock: DayClock
    moments: tuple[WorkMoment | None, ...]
    """Of each job; None of a fire and of a break."""
    baked: tuple[OvenTurn, ...]
    """Of each load."""
    breads: tuple[Bread, ...]
    preparations: tuple[Work, ...]
    """Made for the day."""
    oldest: tuple[tuple[str, Oldest], ...]
    """By bread."""
    mixed_by_load: tuple[str, ...]
    """Breads whose dough is mixed once for each load."""
    built_twice: tuple[str, ...]
    """Stages of the house that are made more than once."""
    unlimited: tuple[str, ...]
    """What formulas name and the kitchen does not describe."""
    short: tuple[tuple[str, Fraction, Fraction], ...]
    """What is already made and does not reach: name, grams there, grams wanted. It is made anew."""


def day_of(plan: Plan, breads: Sequence[Bread], preparations: Sequence[Work]) -> PlannedDay:
    """All that the plan asks for, in its kitchen. `preparations` are sized for what the breads want of them."""
    return _Assembly(plan, tuple(breads), tuple(preparations)).all()


class _Assembly:
    """Numbers the moments of all works, and brings in what they share."""

    def __init__(self, plan: Plan, breads: tuple[Bread, ...], preparations: tuple[Work, ...]) -> None:
        self.plan, self.breads, self.kitchen = plan, breads, plan.kitchen
        self.clock = clock_of(plan)
        self.there = {one.key: one for one in plan.already}
        self.short: list[tuple[str, Fraction, Fraction]] = []
        self.preparations = tuple(
            work
            for work in preparations
            if not self._is_there(fold(work.formula.name), work.formula.name, work.batch.dough)
        )
        self.mixed_by_load: list[str] = []
        self.works = [self._taken_apart(work) for work in (*(one.work for one in breads), *self.preparations)]
        self.builds: Builds = builds_of(self.works, self._due_of)
        self.jobs: list[DayJob] = []
        self.moments: list[WorkMoment | None] = []
        self.at: dict[tuple[str, str], int] = {}
        """(work, key of a moment) -> number of its job."""

    def all(self) -> PlannedDay:
        shifts = tuple(shifts_of(self.plan, self.clock))
        begins, ends = self._limits(shifts)
        for work in self.works:
            for moment in work.moments:
                self._add(work, moment, begins, ends)
        fires = tuple(self._fires(begins, ends))
        self._breaks(shifts)
        loads, baked = self._loads()
        standings = tuple(self._stays())
        day = Day(
            jobs=tuple(self.jobs),
            waits=tuple(self._waits()),
            loads=loads,
            ovens=tuple(day_oven(oven) for oven in self.kitchen.ovens),
            fires=fires,
            mixers=tuple(self._mixers()),
            places=self._places(standings),
            stays=standings,
            shifts=shifts,
            ends=tuple(self._ends()),
            begins=begins,
            finishes=ends,
        )
        return PlannedDay(
            day=day,
            clock=self.clock,
            moments=tuple(self.moments),
            baked=baked,
            breads=self.breads,
            preparations=self.preparations,
            oldest=tuple((one.want.name, oldest_of(one.want, one.work)) for one in self.breads),
            mixed_by_load=tuple(self.mixed_by_load),
            built_twice=self.builds.twice,
            unlimited=tuple(dict.fromkeys(self._unlimited())),
            short=tuple(self.short),
        )

    # ---- works

    def _is_there(self, key: str, name: str, grams: Fraction) -> bool:
        said = self.there.get(key)
        if said is None:
            return False
        if said.grams is not None and said.grams < grams:
            self.short.append((name, said.grams, grams))
            return False
        return True

    def _taken_apart(self, work: Work) -> WorkOfDay:
        already = frozenset(
            made.stage.key
            for made in work.batch.stages
            if made is not work.dough and self._is_there(made.stage.key, made.stage.name, made.out)
        )
        apart = work_of_day(work, already)
        number = max(map(len, by_branch(apart)), default=1)
        if work.mixes.number == 1 and number > 1 and too_far_apart(apart, self.kitchen):
            self.mixed_by_load.append(work.formula.name)
            return work_of_day(in_mixes(work, number), already)
        return apart

    def _due_of(self, bread: str) -> int:
        """The minute of a bread's end; of a preparation the first of all."""
        dues = [self.clock.minute(one.want.end.by) for one in self.breads if bread in ("", one.want.name)]
        return min(dues or [self.clock.minute(one.want.end.by) for one in self.breads] or [A_DAY])

    # ---- jobs

    def _add(self, work: WorkOfDay, moment: WorkMoment, begins: int, ends: int) -> None:
        key = self.builds.key_of(work.bread, moment)
        there = next((at for at, job in enumerate(self.jobs) if job.key == key), None) if moment.making else None
        if there is not None:
            job = self.jobs[there]
            breads = tuple(dict.fromkeys((*job.breads, work.bread)))
            self.jobs[there] = job._replace(breads=breads, minutes=max(job.minutes, self._minutes(moment)))
            self.at[work.bread, moment.key] = there
            return
        self.at[work.bread, moment.key] = len(self.jobs)
        minutes = self._minutes(moment)
        earliest, latest = self._appointed(moment) or (begins, self._first_plate(work, moment) or ends - minutes)
        does = ", ".join(dict.fromkeys(part.does for part in moment.parts))
        self.jobs.append(DayJob(key, (work.bread,), does, minutes, earliest, latest, mixer=moment.mixer))
        self.moments.append(moment)

    def _minutes(self, moment: WorkMoment) -> int:
        """What keeps a pair of hands busy with other things makes all of it longer, but for the machine."""
        share = 1 - self.kitchen.busy
        seconds = sum((p.seconds if p.is_machine else p.seconds / share for p in moment.parts), NOTHING)
        return max(minutes_up(seconds), 1)

    def _first_plate(self, work: WorkOfDay, moment: WorkMoment) -> int | None:
        """The minute at which the building of a dish begins at the latest: what is on it is there when the first guests are."""
        want = self._dish_of(work.bread)
        if want is None or want.end.not_before is None:
            return None
        first = next(one for one in work.moments if one.stage is moment.stage)
        is_dish = moment.stage is next(one.work.formula.dough for one in self.breads if one.want is want)
        return self.clock.minute(want.end.not_before) if is_dish and moment is first else None

    def _dish_of(self, bread: str) -> Want | None:
        return next((one.want for one in self.breads if one.work.formula.dish and one.want.name == bread), None)

    def _appointed(self, moment: WorkMoment) -> tuple[int, int] | None:
        """A fixed appointment: the step that it names begins then."""
        for said in self.plan.appointments:
            if fold(said.name) != fold(moment.bread):
                continue
            before = NOTHING
            for part in moment.parts:
                if part.does == said.verb:
                    at = self.clock.minute(said.at) - minutes_down(before)
                    return at, at
                before += part.seconds
        return None

    def _waits(self) -> Iterator[DayWait]:
        for work in self.works:
            moments = {moment.key: moment for moment in work.moments}
            for gap in work.gaps:
                before, after = self.at[work.bread, gap.before], self.at[work.bread, gap.after]
                yield _wait(gap, before, after, self.jobs[before].minutes, moments[gap.before].seconds)
            for using in work.uses:
                yield from self._preparation_first(using.preparation, self.at[work.bread, using.moment], work.bread)

    def _preparation_first(self, key: str, user: int, bread: str) -> Iterator[DayWait]:
        """A preparation is made before it is used, and no sooner than it keeps: on a dish up to the last plate."""
        want = self._dish_of(bread)
        served = 0 if want is None else self.clock.between(want.end.not_before, want.end.by)
        for work in (*self.preparations, *(one.work for one in self.breads)):
            if fold(work.formula.name) != self._made_by(key):
                continue
            made = next(one for one in self.works if one.bread == work.formula.name)
            good = work.formula.good_for
            for end in made.finished:
                last = self.at[made.bread, end.moment]
                least = self.jobs[last].minutes + minutes_up(end.cools)
                most = least + self._keeps(work) if good is None else minutes_down(good.seconds)
                yield DayWait(last, user, least, max(most - served, least), what=work.formula.name)

    def _made_by(self, key: str) -> str:
        """The folded name of what makes a thing that a work uses: of a dish's rolls the formula that makes rolls and loaves."""
        parts = (one.work.formula.part(key) for one in self.breads)
        return next((part.formula for part in parts if part is not None), key)

    def _keeps(self, work: Work) -> int:
        """Minutes that what does not say it is kept: a bread as long as it may be sold, all else a day."""
        sold = work.formula.sold
        return A_DAY if sold is None or sold.high is None else minutes_down(sold.high)

    def _loads(self) -> tuple[tuple[DayLoad, ...], tuple[OvenTurn, ...]]:
        ovens = {oven.name: oven for oven in self.kitchen.ovens}
        baked = tuple((work, load) for work in self.works for load in work.loads if load.oven in ovens)
        full = heaviest([load for _, load in baked])
        found = []
        for work, load in baked:
            put, take = self.at[work.bread, load.put], self.at[work.bread, load.take]
            stays = minutes_up(load.stays) + self.jobs[put].minutes - minutes_up(_seconds(work, load.put))
            found.append(
                DayLoad(
                    key=load.key,
                    bread=work.bread,
                    pieces=int(load.pieces),
                    noun=load.noun,
                    oven=load.oven,
                    put=put,
                    take=take,
                    stays=max(stays, self.jobs[put].minutes),
                    share=min(load.share, Fraction(1)),
                    enters=enters(load),
                    leaves=leaves(load),
                    extra=extra_minutes(load, ovens[load.oven], full, stays),
                    at_the_mouth=at_the_mouth(load),
                )
            )
        return tuple(found), tuple(load for _, load in baked)

    # ---- what is shared

    def _fires(self, begins: int, ends: int) -> Iterator[Fire]:
        used = {load.oven for work in self.works for load in work.loads}
        for oven in self.kitchen.ovens:
            if oven.name not in used or oven.heats_in is None:
                continue
            said = next((one for one in self.plan.fires if one.oven.casefold() == oven.name.casefold()), None)
            lit = None if said is None else said.lit
            first, last = (begins, ends) if lit is None else (self.clock.minute(lit[0]), self.clock.minute(lit[1]))
            minutes = minutes_up(Fraction(estimates.LIGHT if oven.falls else estimates.SWITCH_ON))
            for number in range(1, (1 if said is None else said.number) + 1):
                key = f"{oven.name}/light" + (f"/{number}" if number > 1 else "")
                does = "light the fire" if oven.falls else f"switch {oven.name} on"
                self.jobs.append(DayJob(key, (), does, minutes, first, last))
                self.moments.append(None)
                yield Fire(oven.name, len(self.jobs) - 1, minutes_up(oven.heats_in))

    def _breaks(self, shifts: Sequence[Shift]) -> None:
        for job in breaks_of(self.plan, shifts):
            self.jobs.append(job)
            self.moments.append(None)

    def _limits(self, shifts: Sequence[Shift]) -> tuple[int, int]:
        begins = min(shift.begins for shift in shifts)
        ends = max([*(shift.ends for shift in shifts), *(self.clock.minute(one.want.end.by) for one in self.breads)])
        return begins, ends

    def _mixers(self) -> Iterator[DayMixer]:
        for mixer in self.kitchen.mixers:
            mixed = {
                at: (work.bread, moment)
                for work in self.works
                for moment in work.moments
                if moment.mixer == mixer.name
                for at in (self.at[work.bread, moment.key],)
            }
            works = {one.work.formula.name: one.work for one in self.breads}
            works |= {work.formula.name: work for work in self.preparations}
            gaps = tuple(gaps_of(mixer, mixed, works))
            yield DayMixer(mixer.name, mixer.number or 1, gaps, self._away("mixer", mixer.name))

    def _away(self, word: str, name: str) -> tuple[tuple[int, int], ...]:
        return tuple(
            (self.clock.minute(one.start), self.clock.minute(one.end))
            for one in self.plan.away
            if one.word == word and one.name.casefold() == name.casefold()
        )

    def _stays(self) -> Iterator[Stay]:
        for work in self.works:
            for standing in work.standings:
                number = takes(standing, self.kitchen)
                if number:
                    begins, ends = self.at[work.bread, standing.begins], self.at[work.bread, standing.ends]
                    yield Stay(standing.place, number, begins, ends)
            for held in work.bowls:
                yield Stay(bowl(held.mixer), 1, self.at[work.bread, held.begins], self.at[work.bread, held.ends])

    def _places(self, stays: Iterable[Stay]) -> tuple[DayPlace, ...]:
        used = {stay.place for stay in stays}
        words = {vessel.name: vessel.word for vessel in self.kitchen.vessels}
        words |= {cold.name: cold.word for cold in self.kitchen.colds}
        return tuple(
            place._replace(away=self._away(words.get(place.name, ""), place.name))
            for place in places_of(self.kitchen)
            if place.name in used
        )

    def _unlimited(self) -> Iterator[str]:
        """What steps stand in or on, of which the kitchen says neither a number nor what it holds; and an oven it has not."""
        if not self.kitchen.ovens and any(
            step.verb in IN_OVEN for one in self.breads for step in one.work.formula.steps
        ):
            yield "oven"
        for one in self.breads:
            for step in one.work.formula.steps:
                if step.where is None or step.verb not in STAND_SOMEWHERE:
                    continue
                name = step.where[1]
                vessel = self.kitchen.vessel(name)
                cold = any(cold.name.casefold() in name.casefold() and cold.holds for cold in self.kitchen.colds)
                if not cold and (vessel is None or not vessel.number):
                    yield name

    # ---- ends

    def _ends(self) -> Iterator[End]:
        for bread, work in zip(self.breads, self.works, strict=False):
            want = bread.want
            due = self.clock.minute(want.end.by)
            oldest = oldest_of(want, bread.work).seconds
            for end in work.finished:
                noun = end.noun or (bread.work.batch.pieces[0].noun if bread.work.batch.pieces else "")
                after = minutes_up(fit_after(want, bread.work, noun, end.cools, self.kitchen))
                at = self.at[work.bread, end.moment]
                yield End(
                    bread=want.name,
                    pieces=int(end.pieces),
                    noun=noun,
                    job=at,
                    after=after,
                    due=due,
                    not_before=_minute(self.clock, want.end.not_before),
                    oldest=None if bread.work.formula.preparation else max(minutes_down(oldest), after),
                    word=want.end.how.value if isinstance(want.end.how, Finish) else str(want.end.how),
                )


def _minute(clock: DayClock, said: datetime | None) -> int | None:
    return None if said is None else clock.minute(said)


def _wait(gap: Gap, before: int, after: int, minutes: int, seconds: Fraction) -> DayWait:
    """Whole minutes: the job before is as long as it is in whole minutes, and what comes after it moves with its end."""
    longer = minutes * 60 - seconds if gap.least >= seconds else NOTHING
    least = max(minutes_up(gap.least + longer), 0)
    most = None if gap.most is None else max(minutes_down(gap.most + longer), least)
    return DayWait(before, after, least, most, minutes_down(gap.may), gap.what, gap.is_cold)


def _seconds(work: WorkOfDay, key: str) -> Fraction:
    return next(moment.seconds for moment in work.moments if moment.key == key)
