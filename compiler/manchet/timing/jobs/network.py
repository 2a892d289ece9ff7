"""The work as jobs, each with what must be done before it.

Inside a stage one step follows the other. A stage must be done when it is used: before the first step of the stage
that uses it, or, where it is held back, before the step that adds it or locks it in. After `divide` every branch goes
its own way. With several mixes the dough is made as many times, and each waits for the mixer.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from manchet.batch.mixes import Mixes
from manchet.batch.model import StageBatch
from manchet.batch.work import Work
from manchet.formula.model import Stage, Step, Who
from manchet.formula.nouns import same_noun
from manchet.kitchen.model import Kitchen, Mixer
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import BRINGS_IN
from manchet.timing.jobs.durations import Length, length_of
from manchet.timing.jobs.loads import Doing, in_loads


class Link(NamedTuple):
    """Job number `job` must be done first. `how` is "step" (of the same stage), "stage" or "mixer"."""

    job: int
    how: str


class Job(NamedTuple):
    """One step, in one mix. Jobs stand in an order in which each comes after everything it needs."""

    step: Step
    stage: Stage
    branch: str
    mix: int
    """From 1, or 0 where it is done once for all mixes."""
    pieces: Fraction
    length: Length
    needs: tuple[Link, ...]
    is_dough: bool
    """The dough and its branches: they wait for nothing, the other stages are timed to be ready for them."""
    load: int = 0
    loads: int = 0
    """Which load of how many in the oven; 0 of 0 where all go in at once."""


class Chain(NamedTuple):
    """Steps that follow one another without a break, and how many pieces each handles."""

    stage: StageBatch
    branch: str
    steps: tuple[Doing, ...]


class StageMaking(NamedTuple):
    """What the jobs of one making of a stage have in common."""

    kitchen: Kitchen
    mixer: Mixer | None
    mix: int
    is_dough: bool
    ready: Mapping[str, tuple[int, ...]]
    """Key of a stage that is made already -> the jobs that must be done before it is used."""
    bowl_free: int | None
    """The job after which the mixer is free for this mix."""


def network_of(work: Work) -> tuple[Job, ...]:
    """All jobs of a batch. A stage without steps makes no job; what it uses must be done before it is used itself."""
    batch, kitchen, mixes = work.batch, work.kitchen, work.mixes
    jobs: list[Job] = []
    done: dict[tuple[str, int], tuple[int, ...]] = {}
    bowl_free: int | None = None
    for made in batch.stages:
        is_dough = made is work.dough
        for mix in _mixes_of(made, is_dough, mixes):
            setting = StageMaking(kitchen, mixes.mixer, mix, is_dough, _ready_for(mix, done), bowl_free)
            trunk, *branches = _chains(work, made, is_dough, mix)
            begins = len(jobs)
            end = _lay(jobs, trunk, None, setting)
            for branch in branches:
                _lay(jobs, branch, end, setting)
            at_once = tuple(j for key in sorted(_used_at_once(made)) for j in setting.ready.get(key, ()))
            done[made.stage.key, mix] = at_once if end is None else (end,)
            if is_dough:
                bowl_free = max((j for j in range(begins, len(jobs)) if _is_machine_mix(jobs[j].step)), default=None)
    return tuple(jobs)


def _ready_for(mix: int, done: Mapping[tuple[str, int], tuple[int, ...]]) -> dict[str, tuple[int, ...]]:
    """What can be used in this mix: what is made once, and what is made for this mix. In what is made once: all."""
    ready: dict[str, tuple[int, ...]] = {}
    for (key, of_mix), last in done.items():
        if mix == 0 or of_mix in (0, mix):
            ready[key] = ready.get(key, ()) + last
    return ready


def _mixes_of(made: StageBatch, is_dough: bool, mixes: Mixes) -> tuple[int, ...]:
    several = mixes.number > 1 and (is_dough or made.stage.for_each_mix)
    return tuple(range(1, mixes.number + 1)) if several else (0,)


def _chains(work: Work, made: StageBatch, is_dough: bool, mix: int) -> tuple[Chain, ...]:
    """The steps of a stage; for the dough also those of its branches, with the pieces of this mix."""
    steps = made.stage.steps
    if not is_dough:
        return (Chain(made, "", tuple(Doing(step, Fraction(0)) for step in steps)),)
    pieces = [(p.noun, _of_this_mix(p.number, mix, work.mixes.number)) for p in work.batch.pieces]
    everything = sum((n for _, n in pieces), Fraction(0))
    divides = next((at for at, step in enumerate(steps) if step.verb == "divide"), None)
    handled = tuple(
        (step, everything if divides is None or at >= divides else Fraction(0)) for at, step in enumerate(steps)
    )
    branches = []
    for branch in work.formula.branches:
        of_branch = sum((n for noun, n in pieces if same_noun(noun, branch.noun)), Fraction(0))
        parted = in_loads(work, ((step, of_branch) for step in branch.steps), branch.noun)
        branches.append(Chain(made, branch.noun, tuple(parted)))
    return (Chain(made, "", tuple(in_loads(work, handled))), *branches)


def _of_this_mix(pieces: Fraction, mix: int, number: int) -> Fraction:
    """Whole pieces, spread as evenly as they go."""
    if not mix:
        return pieces
    return Fraction(pieces * mix // number - pieces * (mix - 1) // number)


def _lay(jobs: list[Job], chain: Chain, before: int | None, setting: StageMaking) -> int | None:
    """Add a chain's jobs; the number of the last, or `before` if there are none."""
    waits_for_bowl = setting.is_dough and not chain.branch and setting.bowl_free is not None
    for at, (step, pieces, load, loads) in enumerate(chain.steps):
        used = _brought(step)
        if at == 0 and not chain.branch:
            used |= _used_at_once(chain.stage)
        needs = [Link(j, "stage") for key in sorted(used) for j in setting.ready.get(key, ())]
        if before is not None:
            needs.append(Link(before, "step"))
        if waits_for_bowl and setting.bowl_free is not None and _is_machine_mix(step):
            needs.append(Link(setting.bowl_free, "mixer"))
            waits_for_bowl = False
        length = length_of(step, pieces, setting.kitchen, setting.mixer)
        stage = chain.stage.stage
        jobs.append(
            Job(step, stage, chain.branch, setting.mix, pieces, length, tuple(needs), setting.is_dough, load, loads)
        )
        before = len(jobs) - 1
    return before


def _brought(step: Step) -> set[str]:
    """Keys of what a step brings in: what it adds or locks in, and what it applies."""
    keys = {goes.key for goes in step.goes} if step.verb in BRINGS_IN else set()
    if step.applied is not None and step.applied.stage:
        keys.add(step.applied.stage)
    return keys


def _used_at_once(made: StageBatch) -> set[str]:
    """Keys of the stages that are weighed in before the first step, and of those no step is seen to add."""
    added = {key for step in made.stage.steps for key in _brought(step)}
    return {
        w.portion.stage for w in made.weighed if w.portion.stage and not (w.portion.held and w.portion.stage in added)
    }


def _is_machine_mix(step: Step) -> bool:
    return step.verb == "mix" and step.who is Who.MACHINE
