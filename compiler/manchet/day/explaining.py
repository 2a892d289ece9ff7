"""What keeps each job of a plan from beginning later, read off the day and the plan, whoever made it.

All else stays as it is; only what is put into an oven and what is taken out of it are one, since a load stays as long as it
stays. A job may be held by several things: each says for how many minutes it does not hold yet.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Iterator, Sequence
from enum import Enum

from manchet.day.goals import minute_of_curve, minutes_late
from manchet.day.model import BREAK_BEFORE_OUT, Day, DayLoad, DayMixer, Timetable
from manchet.day.together import between, may_share
from manchet.day.windows import minutes_in_heat
from manchet.records import NamedTuple


class HeldBy(Enum):
    """The sorts of things that keep a job from beginning later; of two that do at the same minute, the first here is named."""

    WAIT = "wait"
    """The job after it, and the least that lies between."""
    LONGEST = "longest"
    """What waits for it has waited as long as it may."""
    OVEN = "oven"
    BESIDE = "beside"
    """The load that it goes in beside."""
    FLOOR = "floor"
    """The floor is then too cold; of a fire, too hot for what follows."""
    FIRE = "fire"
    MIXER = "mixer"
    PLACE = "place"
    HANDS = "hands"
    BREAK = "break"
    """A load that comes out soon."""
    END = "end"
    SHIFT = "shift"
    LATEST = "latest"
    """Its own latest, or the day's end."""


class Held(NamedTuple):
    """One thing that keeps a job from beginning later."""

    minutes: int
    """So much later it could begin all the same; 0: it is now or never."""
    by: HeldBy
    job: int
    other: int
    """The job before which it must be, or beside which; -1 where it is no job."""
    words: str
    """"before Ebb rye: the oven"."""


def first_holds(day: Day, timetable: Timetable) -> tuple[Held, ...]:
    """Of each job, the first thing that keeps it from beginning later. Index for index as the day's jobs."""
    explained = _Explained(day, timetable)
    return tuple(min(explained.holds(job), key=_first) for job in range(len(day.jobs)))


def holds(day: Day, timetable: Timetable, job: int) -> tuple[Held, ...]:
    """All that keeps a job from beginning later at some time, the first first."""
    return tuple(sorted(_Explained(day, timetable).holds(job), key=_first))


ORDER = {by: at for at, by in enumerate(HeldBy)}


def _first(held: Held) -> tuple[int, int, int]:
    return held.minutes, ORDER[held.by], held.other


def _whose(day: Day, job: int) -> str:
    return " and ".join(day.jobs[job].breads) or day.jobs[job].does


class _Explained:
    """A plan, with what lies where looked up once."""

    def __init__(self, day: Day, timetable: Timetable) -> None:
        self.day, self.timetable = day, timetable
        self.starts = timetable.starts
        self.ends = [start + job.minutes for start, job in zip(timetable.starts, day.jobs, strict=True)]
        self.loads: dict[int, list[int]] = defaultdict(list)
        for number, load in enumerate(day.loads):
            self.loads[load.put].append(number)
            self.loads[load.take].append(number)

    def holds(self, job: int) -> Iterator[Held]:
        """Also all that holds what must move with it."""
        for each in self._rigid(job):
            for held in self._alone(each):
                yield held._replace(job=job)

    def _rigid(self, job: int) -> list[int]:
        """The job, and what is put in or taken out with it."""
        found = [job]
        for each in found:
            for number in self.loads[each]:
                load = self.day.loads[number]
                found += [other for other in (load.put, load.take) if other not in found]
        return found

    def _alone(self, job: int) -> Iterator[Held]:
        yield from self._by_waits(job)
        yield from self._by_hours(job)
        yield from self._by_hands(job)
        yield from self._by_mixer(job)
        yield from self._by_places(job)
        yield from self._by_fires(job)
        for number in self.loads[job]:
            if self.day.loads[number].put == job:
                yield from self._by_oven(number)

    def _by_waits(self, job: int) -> Iterator[Held]:
        for wait in self.day.waits:
            lies = self.starts[wait.after] - self.starts[wait.before]
            if wait.before == job:
                does = self.day.jobs[wait.after].does
                whose = (
                    ""
                    if self.day.jobs[wait.after].breads == self.day.jobs[job].breads
                    else _whose(self.day, wait.after)
                )
                words = ": ".join(filter(None, (" ".join(filter(None, ("before", whose, does))), wait.what)))
                yield Held(lies - wait.least, HeldBy.WAIT, job, wait.after, words)
            elif wait.after == job and wait.most is not None:
                words = ": ".join(filter(None, ("before it has stood too long", wait.what)))
                yield Held(max(wait.most - lies, 0), HeldBy.LONGEST, job, wait.before, words)

    def _by_hours(self, job: int) -> Iterator[Held]:
        this, end = self.day.jobs[job], self.ends[job]
        latest = min(this.latest, self.day.finishes - this.minutes)
        yield Held(latest - self.starts[job], HeldBy.LATEST, job, -1, "before its hour is over")
        number = self.timetable.shifts[job]
        if number >= 0:
            shift = self.day.shifts[number]
            yield Held(shift.ends - end, HeldBy.SHIFT, job, -1, f"before the shift ends: {shift.name}")
        for each in self.day.ends:
            if each.job == job:
                left = 0 if minutes_late(self.day, each, self.timetable) else each.due - each.after - end
                yield Held(left, HeldBy.END, job, -1, f"in time to be {each.word}: {each.bread}")
        if this.is_break:
            for load in self.day.loads:
                if self.starts[load.take] >= end + BREAK_BEFORE_OUT:
                    left = self.starts[load.take] - BREAK_BEFORE_OUT - end
                    yield Held(left, HeldBy.BREAK, job, load.take, f"before it comes out: {load.bread}")
        else:
            yield from self._by_breaks(job)

    def _by_breaks(self, job: int) -> Iterator[Held]:
        """What comes out later comes out too soon after a break that now lies behind it."""
        if all(self.day.loads[number].take != job for number in self.loads[job]):
            return
        for rest, each in enumerate(self.day.jobs):
            if each.is_break and self.starts[rest] >= self.starts[job]:
                left = self.starts[rest] - self.starts[job]
                yield Held(left, HeldBy.BREAK, job, rest, f"before the break: {each.does}")

    def _by_hands(self, job: int) -> Iterator[Held]:
        number = self.timetable.shifts[job]
        if number < 0:
            return
        shift = self.day.shifts[number]
        moving = self._rigid(job)
        others = [
            (self.starts[at], self.ends[at], self.day.jobs[at].hands, at)
            for at, mine in enumerate(self.timetable.shifts)
            if mine == number and at not in moving
        ]
        first = _full(others, self.ends[job], shift.hands - self.day.jobs[job].hands)
        if first is not None:
            words = f"before {_whose(self.day, first)}: {shift.name}'s hands"
            yield Held(self.starts[first] - self.ends[job], HeldBy.HANDS, job, first, words)

    def _by_places(self, job: int) -> Iterator[Held]:
        for place in self.day.places:
            mine = [stay for stay in self.day.stays if stay.place == place.name and stay.ends == job]
            if not mine:
                continue
            others = [
                (self.starts[stay.begins], self.ends[stay.ends], stay.takes, stay.begins)
                for stay in self.day.stays
                if stay.place == place.name and stay.ends != job
            ]
            first = _full(others, self.ends[job], place.holds - sum(stay.takes for stay in mine))
            if first is not None:
                words = f"before {_whose(self.day, first)}: {place.name}"
                yield Held(self.starts[first] - self.ends[job], HeldBy.PLACE, job, first, words)
            for gone, _ in place.away:
                if gone >= self.ends[job]:
                    yield Held(gone - self.ends[job], HeldBy.PLACE, job, -1, f"before it is away: {place.name}")

    def _by_mixer(self, job: int) -> Iterator[Held]:
        for kind in self.day.mixers:
            if self.day.jobs[job].mixer != kind.name:
                continue
            for gone, _ in kind.away:
                if gone >= self.ends[job]:
                    yield Held(gone - self.ends[job], HeldBy.MIXER, job, -1, f"before it is away: {kind.name}")
            found = self._next_on(kind, job)
            if found is not None:
                left, other = found
                yield Held(left, HeldBy.MIXER, job, other, f"before {_whose(self.day, other)}: {kind.name}")

    def _next_on(self, kind: DayMixer, job: int) -> tuple[int, int] | None:
        """After how many minutes more no machine of a kind is free for the job, and who has it then."""
        jobs = [at for at, each in enumerate(self.day.jobs) if each.mixer == kind.name]
        gaps = {(before, after): minutes for before, after, minutes in kind.gaps}
        lefts = []
        for other in jobs:
            if other != job:
                left = self.starts[other] - gaps.get((job, other), 0) - self.ends[job]
                behind = self.ends[other] + gaps.get((other, job), 0) - self.starts[job]
                lefts += [(each, other) for each in (left, behind - 1) if each >= 0]
        for left, other in sorted(lefts):
            starts = {at: self.starts[at] + (left + 1 if at == job else 0) for at in jobs}
            if not _shared_out(kind, gaps, jobs, starts, self.day):
                return left, other
        return None

    def _by_oven(self, number: int) -> Iterator[Held]:
        load = self.day.loads[number]
        oven = next(oven for oven in self.day.ovens if oven.name == load.oven)
        for at, other in enumerate(self.day.loads):
            if at == number or other.oven != load.oven or self.timetable.decks[at] != self.timetable.decks[number]:
                continue
            follows = self.starts[other.put] - self.ends[load.take] - between(oven, load, other)
            apart = self.starts[other.put] + oven.within - self.starts[load.put]
            if follows >= 0:
                yield Held(follows, HeldBy.OVEN, load.put, other.put, f"before {other.bread}: the oven")
            elif 0 <= apart <= 2 * oven.within and may_share(oven, load, other):
                yield Held(apart, HeldBy.BESIDE, load.put, other.put, f"beside {other.bread}: the oven")
        minute = minute_of_curve(self.day, self.timetable, load) if oven.curve else None
        closes = minutes_in_heat(oven, load)[1]
        if minute is not None and minute >= 0 and closes is not None:
            yield Held(closes - minute, HeldBy.FLOOR, load.put, -1, "before the floor is too cold")
        for fire in self.day.fires:
            left = self.starts[fire.light] - self.ends[load.take]
            if fire.oven == load.oven and left >= 0:
                yield Held(left, HeldBy.FIRE, load.put, fire.light, f"before it is lit: {load.oven}")
            mouth = self.starts[fire.light] + fire.heats - oven.mouth_until - self.ends[load.take]
            if (
                fire.oven == load.oven
                and load.at_the_mouth
                and mouth >= 0
                and self.starts[load.put] >= self.starts[fire.light]
            ):
                yield Held(mouth, HeldBy.FIRE, load.put, fire.light, f"before the fire is out: {load.oven}")

    def _by_fires(self, job: int) -> Iterator[Held]:
        """The lighting of an oven: what follows is to find it hot, and no hotter than it may be."""
        for fire in self.day.fires:
            if fire.light != job:
                continue
            oven = next(oven for oven in self.day.ovens if oven.name == fire.oven)
            out = self.starts[job] + fire.heats
            later = [
                self.starts[each.light]
                for each in self.day.fires
                if each.oven == fire.oven and self.starts[each.light] > self.starts[job]
            ]
            until = min(later, default=None)
            if until is not None:
                yield Held(until - out, HeldBy.FIRE, job, -1, f"before it is lit again: {oven.name}")
            for load in self._loads_of(fire.oven, out, until):
                left = self.starts[load.put] - out
                minute = minute_of_curve(self.day, self.timetable, load) if oven.curve else None
                opens = minutes_in_heat(oven, load)[0]
                if minute is not None and minute - opens < left:
                    words = f"before the floor is too hot: {load.bread}"
                    yield Held(minute - opens, HeldBy.FLOOR, job, load.put, words)
                else:
                    yield Held(left, HeldBy.FIRE, job, load.put, f"before {load.bread}: the fire")
            for load in self.day.loads:
                if load.oven == fire.oven and load.at_the_mouth and self.starts[job] <= self.starts[load.put] < out:
                    left = self.starts[load.put] - max(self.starts[job], out - oven.mouth_from)
                    yield Held(left, HeldBy.FIRE, job, load.put, f"before {load.bread}: the mouth of the oven")

    def _loads_of(self, oven: str, out: int, until: int | None) -> Iterator[DayLoad]:
        for load in self.day.loads:
            if load.oven == oven and out <= self.starts[load.put] and (until is None or self.starts[load.put] < until):
                yield load


def _full(others: Sequence[tuple[int, int, int, int]], after: int, free: int) -> int | None:
    """The first from this minute on (begins, ends, takes, job) with which others take more than is free."""
    for begins, _, _, job in sorted(others):
        if begins >= after and sum(takes for first, last, takes, _ in others if first <= begins < last) > free:
            return job
    return None


def _shared_out(
    kind: DayMixer, gaps: dict[tuple[int, int], int], jobs: Sequence[int], starts: dict[int, int], day: Day
) -> bool:
    """There are machines enough, washed between two doughs, however the jobs are shared out among them."""
    ways: set[tuple[int, ...]] = {(-1,) * kind.number}
    for job in sorted(jobs, key=lambda job: (starts[job], job)):
        ways = {
            tuple(sorted((*way[:at], job, *way[at + 1 :])))
            for way in ways
            for at, last in enumerate(way)
            if last < 0 or starts[last] + day.jobs[last].minutes + gaps.get((last, job), 0) <= starts[job]
        }
    return bool(ways)
