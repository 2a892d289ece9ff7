"""The work as jobs, each with what must be done before it.

Inside a stage one step follows the other. A stage must be done when it is used: before the first step of the stage
that uses it, or, where it is held back, before the step that adds it or locks it in. After `divide` every branch goes
its own way. With several mixes the dough is made as many times, and each waits for the mixer; into the oven they go
load by load, one load after the other (`loads`, `ovens`).
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from fractions import Fraction

from manchet.batch.mixes import Mixes
from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.formula.model import Stage, Step
from manchet.kitchen.model import Kitchen, Mixer
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN, IN_OVEN, MOVES_OUT
from manchet.timing.jobs.chains import Chain, chains_of, into_the_oven, is_machine_mix
from manchet.timing.jobs.durations import Length, is_attended, length_of
from manchet.timing.jobs.handling import Handling, loading, seconds_of, taking_out, weighing
from manchet.timing.jobs.loads import RECOVER, Doing, FromMix

NO_TIME = Length(Fraction(0), Fraction(0), Fraction(0), False)


class Link(NamedTuple):
    """Job number `job` must be done first.

    `how` is "step" (the same dough goes on), "stage" (it is used), "mixer" (the bowl is free) or "oven" (there is room).
    """

    job: int
    how: str

    @property
    def is_for_a_thing(self) -> bool:
        """A thing has to be free, and no dough stands meanwhile."""
        return self.how not in ("step", "stage")


class Job(NamedTuple):
    """One step, in one mix. Jobs stand in an order in which each comes after everything it needs."""

    step: Step
    stage: Stage
    branch: str
    mix: int
    """From 1, or 0 where it is done once for all mixes."""
    pieces: Fraction
    length: Length
    """With what comes `before` and `after`."""
    needs: tuple[Link, ...]
    is_dough: bool
    """The dough and its branches: they wait for nothing, the other stages are timed to be ready for them."""
    load: int = 0
    loads: int = 0
    """Which load of how many in the oven; 0 of 0 where all go in at once."""
    goes_in: bool = False
    """The first phase of a bake: the pieces go into the oven."""
    room: Fraction = Fraction(0)
    """What share of its oven the load takes; 0 where nobody knows."""
    of: tuple[FromMix, ...] = ()
    """Whose pieces, where those of several mixes go in together."""
    before: tuple[Handling, ...] = ()
    """What comes first: weighing, what is kept back of a stage that is used now, loading."""
    after: tuple[Handling, ...] = ()
    """Taking out."""
    carries: tuple[Handling, ...] = ()
    """It is done when the stage is used, by whoever uses it: the job itself takes no time."""

    @property
    def own(self) -> Length:
        """Of the step alone."""
        return self.length.longer(-seconds_of((*self.before, *self.after)))


class StageMaking(NamedTuple):
    """What the jobs of one making of a stage have in common."""

    kitchen: Kitchen
    mixer: Mixer | None
    mix: int
    is_dough: bool
    done: Mapping[str, Mapping[int, tuple[int, ...]]]
    """Key of a stage that is made already -> mix -> the jobs that must be done before it is used."""
    bowl_free: int | None
    """The job after which the mixer is free for this mix."""

    def ready(self, keys: Iterable[str]) -> list[int]:
        """The jobs before these stages can be used in this mix: of what is made once, and of what is made for this mix. In what
        is made once: of all."""
        made = (self.done.get(key, {}) for key in sorted(keys))
        return [
            job for one in made for mix, jobs in one.items() if not self.mix or mix in (0, self.mix) for job in jobs
        ]


def network_of(work: Work) -> tuple[Job, ...]:
    """All jobs of a batch. A stage without steps makes no job; what it uses must be done before it is used itself."""
    batch, kitchen, mixes = work.batch, work.kitchen, work.mixes
    jobs: list[Job] = []
    done: dict[str, dict[int, tuple[int, ...]]] = {}
    bowl_free: int | None = None
    for made in batch.stages:
        is_dough = made is work.dough
        stands: dict[str, dict[int, int]] = {}
        for mix in mixes_made(made, is_dough, mixes):
            setting = StageMaking(kitchen, mixes.mixer, mix, is_dough, done, bowl_free)
            trunk, *branches = chains_of(work, made, is_dough, mix)
            begins = len(jobs)
            end = _lay(jobs, trunk, {}, setting)
            for chain in branches:
                _note(stands, chain.branch, mix, _lay(jobs, chain, _only(mix, end), setting))
            if not branches:
                _note(stands, "", mix, end)
            at_once = tuple(setting.ready(used_at_once(made)))
            done.setdefault(made.stage.key, {})[mix] = at_once if end is None else (end,)
            if is_dough:
                bowl_free = max((j for j in range(begins, len(jobs)) if is_machine_mix(jobs[j].step)), default=None)
        if is_dough and mixes.number > 1:
            setting = StageMaking(kitchen, None, 0, True, done, None)
            last: int | None = None
            for chain in into_the_oven(work, made):
                last = _lay(jobs, chain, stands.get(chain.branch) or _only(0, last), setting)
    return tuple(jobs)


def _only(mix: int, end: int | None) -> dict[int, int]:
    return {} if end is None else {mix: end}


def _note(stands: dict[str, dict[int, int]], branch: str, mix: int, end: int | None) -> None:
    stands.setdefault(branch, {}).update(_only(mix, end))


def mixes_made(made: StageBatch, is_dough: bool, mixes: Mixes) -> tuple[int, ...]:
    """The mixes that a stage is made for one by one, from 1; 0 alone where it is made once for all."""
    several = mixes.number > 1 and (is_dough or made.stage.for_each_mix)
    return tuple(range(1, mixes.number + 1)) if several else (0,)


def _lay(jobs: list[Job], chain: Chain, stands: Mapping[int, int], setting: StageMaking) -> int | None:
    """Add a chain's jobs, after the jobs at which each mix `stands` ready for it; the number of the last job, or of the
    one before if there are none."""
    waits_for_bowl = setting.is_dough and not chain.branch and setting.bowl_free is not None
    way = _WayToTheOven(stands)
    for at, doing in enumerate(chain.steps):
        step = doing.step
        used = brought_by(step)
        if at == 0 and not chain.branch and not stands:
            used |= used_at_once(chain.stage)
        ready = setting.ready(used)
        needs = [Link(job, "stage") for job in ready]
        needs += way.needs(doing, len(jobs))
        if waits_for_bowl and setting.bowl_free is not None and is_machine_mix(step):
            needs.append(Link(setting.bowl_free, "mixer"))
            waits_for_bowl = False
        weighs = at == 0 and not chain.branch and not stands and bool(chain.stage.weighed)
        kept = tuple(one for job in ready for one in jobs[job].carries)
        job = _job(doing, chain, setting)
        if weighs:
            kept = (weighing(chain.stage, setting.kitchen), *kept)
        if at and not setting.is_dough and _is_carried(step, jobs[-1]):
            own = Handling(step.verb, job.length.planned, job.length.is_estimate)
            job = job._replace(length=NO_TIME, carries=(*jobs[-1].carries, own))
        jobs.append(_with(job, kept)._replace(needs=tuple(needs)))
    return max(stands.values(), default=None) if way.before is None else way.before


def _job(doing: Doing, chain: Chain, setting: StageMaking) -> Job:
    """A step of a chain, with its way through the oven's door."""
    kitchen, step = setting.kitchen, doing.step
    goes_in = doing.goes_in and not step.at_a_time
    return Job(
        step=step,
        stage=chain.stage.stage,
        branch=chain.branch,
        mix=setting.mix,
        pieces=doing.pieces,
        length=length_of(step, doing.pieces, kitchen, kitchen.hands or 1, setting.mixer),
        needs=(),
        is_dough=setting.is_dough,
        load=doing.load,
        loads=doing.loads,
        goes_in=doing.goes_in,
        room=doing.room,
        of=doing.of,
        before=(loading(doing.pieces, kitchen),) if goes_in else (),
        after=(taking_out(doing.pieces, kitchen),) if doing.comes_out else (),
    )


def _with(job: Job, kept: tuple[Handling, ...]) -> Job:
    """With what comes first of all, and as long as all of it is."""
    before = (*kept, *job.before)
    return job._replace(before=before, length=job.length.longer(seconds_of((*before, *job.after))))


def _is_carried(step: Step, before: Job) -> bool:
    """What is kept back or given back of a stage that has stood is taken out of it when it is used."""
    stood = not is_attended(before.step) and before.step.verb not in IN_OVEN
    return step.verb in MOVES_OUT and (stood or bool(before.carries))


class _WayToTheOven:
    """What each step of a chain waits for: the step before, the pieces of its load, the oven after the load before."""

    def __init__(self, stands: Mapping[int, int]) -> None:
        self.stands = dict(stands)
        """Mix -> the job at which its pieces stand ready; 0 for those of all mixes."""
        self.before: int | None = None
        self.out: int | None = None
        """The job at which the load before is out."""
        self.free: int | None = None
        """The job after which the oven takes the next load."""

    def needs(self, doing: Doing, number: int) -> list[Link]:
        """For a step that becomes job `number`."""
        found: list[Link] = []
        if doing.step.verb == RECOVER:
            self.out, self.free = self.before, number
            found += self._links(self.before, "oven")
        elif doing.begins and doing.load > 1:
            if self.free is None:
                self.out = self.free = self.before
            found += self._ready(doing)
            found += self._links(self.free if doing.goes_in else self.out, "oven")
        elif doing.begins or self.before is None:
            if self.before is not None:
                self.stands = dict.fromkeys(self.stands, self.before) or {0: self.before}
            found += self._ready(doing)
        else:
            found += self._links(self.before, "step")
            if doing.goes_in and doing.load > 1:
                found += self._links(self.free, "oven")
        if doing.goes_in:
            self.free = None
        self.before = number
        return found

    def _ready(self, doing: Doing) -> list[Link]:
        """Whose pieces a load holds; of several mixes those that are in it."""
        mixes = [mix for mix in (0, *(one.mix for one in doing.of)) if mix in self.stands] if doing.of else self.stands
        jobs = dict.fromkeys(self.stands[mix] for mix in mixes)
        return [Link(job, "step") for job in jobs]

    @staticmethod
    def _links(job: int | None, how: str) -> list[Link]:
        return [] if job is None else [Link(job, how)]


def brought_by(step: Step) -> set[str]:
    """Keys of what a step brings in: what it adds or locks in, and what it applies."""
    keys = {goes.key for goes in step.goes} if step.verb in BRINGS_IN else set()
    if step.applied is not None and step.applied.stage:
        keys.add(step.applied.stage)
    return keys


def used_at_once(made: StageBatch) -> set[str]:
    """Keys of the stages that are weighed in before the first step, and of those no step is seen to add."""
    added = {key for step in made.stage.steps for key in brought_by(step)}
    return {
        w.portion.stage for w in made.weighed if w.portion.stage and not (w.portion.held and w.portion.stage in added)
    }
