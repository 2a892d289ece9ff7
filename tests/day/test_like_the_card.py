"""One dough by the day and by its card: the same work takes as long, in the same order, with the same waits between.

A day counts each job with one pair of hands, so the card is taken with one; its clock, exact, is laid against the day's
moments. Where pieces are worked one after another the card tells the wait from the last that is done to the first that is
taken up, and the day keeps each piece in its range: there the piece in the middle is compared.
"""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from day.market import demo
from every import every
from works import work_in

from manchet.batch.work import Work
from manchet.day.jobs.making import work_of_day
from manchet.day.jobs.values import Gap, MomentPart, OvenTurn, WorkMoment, WorkOfDay
from manchet.formula.model import Formula
from manchet.timing.card.card import course_of
from manchet.timing.jobs.durations import inside
from manchet.timing.jobs.handling import seconds_of
from manchet.timing.jobs.network import Job

NOTHING, MINUTE = Fraction(0), 60
WHILE_IT_STANDS = ("fold", "turn", "stir")


class CardClock:
    """When the card has each moment of the day begin, in seconds; `wrong` is where it has it otherwise."""

    def __init__(self, work: Work, day: WorkOfDay) -> None:
        course = course_of(work)
        self.jobs = tuple(zip(course.jobs, course.starts, strict=True))
        self.moments = {moment.key: moment for moment in day.moments}
        self.begins: dict[str, Fraction] = {}
        self.wrong: list[str] = []
        for moment in day.moments:
            self._lay(moment)
        for load in day.loads:
            self._bake(load)
        for gap in sorted(day.gaps, key=lambda gap: gap.least):
            if self.moments[gap.after].parts[0].does in WHILE_IT_STANDS and gap.after not in self.begins:
                self._lay_inside(gap)

    def _lay(self, moment: WorkMoment) -> None:
        into = NOTHING
        for part in moment.parts:
            for job, start in self._of(part, moment):
                self._put(moment.key, start - into + (NOTHING if part.step is None else seconds_of(job.before)))
                if part.step is not None:
                    self._compare(part, job)
            into += part.seconds

    def _of(self, part: MomentPart, moment: WorkMoment) -> Iterator[tuple[Job, Fraction]]:
        """The job of a part, or of which it is the weighing; none of what is kept back, or done at the oven's door."""
        for job, start in self.jobs:
            if job.mix in (0, moment.mix) and job.load in (0, moment.load) and not job.carries:
                weighs = any(one.does == part.does for one in job.before) and job.stage.key == moment.stage.key
                if job.step is part.step or (part.does == "weigh" and weighs):
                    yield job, start

    def _compare(self, part: MomentPart, job: Job) -> None:
        said, here = (part.seconds, part.is_estimate), (job.own.planned, job.length.is_estimate)
        if said != here:
            self.wrong.append(f"{part.does}: {said}, and on the card {here}")

    def _put(self, key: str, at: Fraction) -> None:
        if abs(self.begins.setdefault(key, at) - at) >= MINUTE:
            self.wrong.append(f"{key} begins at {self.begins[key]} by one part of it, at {at} by another")

    def _bake(self, load: OvenTurn) -> None:
        """Loaded at the end of the one moment, taken out at the beginning of the other."""
        put, phases = self.moments[load.put], [id(step) for step in load.phases]
        baked = [(job, at) for job, at in self.jobs if id(job.step) in phases and job.load in (0, put.load)]
        if put.parts[-1].does == "load":
            first, start = baked[0]
            loads = start + seconds_of(first.before[:-1])
            self._put(load.put, loads - sum((part.seconds for part in put.parts[:-1]), NOTHING))
        last, start = baked[-1]
        self._put(load.take, start + last.length.planned - seconds_of(last.after))
        self._put(load.take, self.begins[load.put] + load.stays)

    def _lay_inside(self, gap: Gap) -> None:
        """The fold that is meant is the first in the stage that has not been laid yet."""
        moment = self.moments[gap.after]
        for job, start in self.jobs:
            for event in inside(job.step):
                at = start + seconds_of(job.before) + event.after
                mine = job.stage.key == moment.stage.key and job.mix in (0, moment.mix)
                if mine and event.work == moment.parts[0].does and at not in self.begins.values():
                    self._put(gap.after, at)
                    return

    def gap_is_kept(self, gap: Gap) -> bool:
        wait = self.begins[gap.after] - self.begins[gap.before]
        if gap.steps:
            before, then = self.moments[gap.before], self.moments[gap.after]
            wait = max(wait - (_spread(reversed(before.parts)) + _spread(then.parts)) / 2, before.seconds)
        return gap.least - MINUTE <= wait and (gap.most is None or wait <= gap.most + MINUTE)


def _spread(parts: Iterable[MomentPart]) -> Fraction:
    """Seconds between the first piece and the last, in what is done piece by piece right at this end of a moment."""
    found = NOTHING
    for part in parts:
        if not part.by_piece:
            break
        found += part.seconds * (part.pieces - 1) / part.pieces
    return found


def with_one_pair_of_hands(formula: Formula) -> Work:
    work = work_in(demo(), formula)
    return Work(work.order, work.batch, work.kitchen._replace(hands=1), work.larder)


@every(((formula,) for formula in demo().formulas), at_least=25)
def test_the_day_and_the_card_of_a_demo_bread_say_the_same(formula: Formula) -> None:
    work = with_one_pair_of_hands(formula)
    day = work_of_day(work)
    card = CardClock(work, day)
    assert card.wrong == []
    seen_to = {moment.key for moment in day.moments if _is_at_the_oven(moment)}
    assert {moment.key for moment in day.moments} - seen_to == set(card.begins)
    assert [
        f"{gap.before} to {gap.after}"
        for gap in day.gaps
        if not {gap.before, gap.after} & seen_to and not card.gap_is_kept(gap)
    ] == []


def _is_at_the_oven(moment: WorkMoment) -> bool:
    """A damper, a turned bread, a heat to set: inside the bake, of which all is compared."""
    part = moment.parts[0]
    return part.step is None and part.does not in ("weigh", "load", "take out", *WHILE_IT_STANDS)


def test_a_minute_more_at_one_place_is_seen() -> None:
    """The comparison fails where it should."""
    formula = next(formula for formula in demo().formulas if formula.name == "Tern loaf")
    work = with_one_pair_of_hands(formula)
    day = work_of_day(work)
    slower = Work(work.order, work.batch, work.kitchen._replace(minutes=(("shape", Fraction(30)),)), work.larder)
    assert CardClock(slower, day).wrong != []
