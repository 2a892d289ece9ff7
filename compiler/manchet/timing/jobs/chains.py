"""The steps of a stage in a row, as far as one follows the other: of the dough, and of each branch after `divide`.

With several mixes each goes by itself as far as the oven; from there on all of them are one chain.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from fractions import Fraction

from manchet.batch.model import StageBatch
from manchet.batch.work import Work, once
from manchet.formula.model import Step, Who
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.timing.jobs.durations import length_of, stands_longer
from manchet.timing.jobs.handling import weighing
from manchet.timing.jobs.loads import Doing, FromMix, Stagger, at_the_door, goes_in_together, in_loads
from manchet.timing.jobs.rounds import pieces_of_stage


class Chain(NamedTuple):
    """Steps that follow one another without a break, and how many pieces each handles."""

    stage: StageBatch
    branch: str
    steps: tuple[Doing, ...]


def chains_of(work: Work, made: StageBatch, is_dough: bool, mix: int) -> tuple[Chain, ...]:
    """The steps of a stage; for the dough also those of its branches, with the pieces of this mix: of several mixes as
    far as each goes by itself."""
    if not is_dough:
        doings = [Doing(step, pieces_of_stage(work, made)) for step in made.stage.steps]
        return (Chain(made, "", tuple(at_the_door(doings))),)
    ways = _ways(work, made, mix)
    if not mix:
        return tuple(Chain(made, noun, tuple(in_loads(work, doings, noun))) for noun, doings in ways)
    alone = {noun: goes_in_together(work, doings, noun) for noun, doings in ways}
    if alone[""] < len(ways[0][1]):
        ways = ways[:1]
    return tuple(Chain(made, noun, tuple(in_loads(work, doings[: alone[noun]], noun))) for noun, doings in ways)


def into_the_oven(work: Work, made: StageBatch) -> Iterator[Chain]:
    """Of several mixes: the steps that are done with all pieces, from the first oven on."""
    of = {
        noun: tuple(
            FromMix(mix, pieces)
            for mix in range(1, work.mixes.number + 1)
            if (pieces := pieces_of_mix(work, noun, mix))
        )
        for noun in ("", *(branch.noun for branch in work.formula.branches))
    }
    parted_before = True
    for noun, doings in _ways(work, made, 0):
        alone = goes_in_together(work, doings, noun) if parted_before else 0
        whole = [doing._replace(of=of[noun]) for doing in doings[alone:]]
        parted_before = parted_before and (bool(noun) or not whole)
        if whole:
            yield Chain(made, noun, tuple(in_loads(work, whole, noun, _stagger(work, made, doings[:alone]))))


def _stagger(work: Work, made: StageBatch, before: Sequence[Doing]) -> Stagger:
    """One mix comes so much after the other as it has the mixer; and stands ready as long as its last wait lets it."""
    steps = [step for step in made.stage.steps if step.verb != "divide"]
    machine = [at for at, step in enumerate(steps) if is_machine_mix(step)]
    at_the_mixer = steps[machine[0] : machine[-1] + 1] if machine else []
    kitchen, hands = work.kitchen, work.kitchen.hands or 1
    lengths = (length_of(step, Fraction(0), kitchen, hands, work.mixes.mixer).planned for step in at_the_mixer)
    weighs = weighing(made, kitchen).seconds if machine[:1] == [0] else Fraction(0)
    apart = sum(lengths, weighs)
    last = before[-1].step if before else None
    if last is None or last.time is None or last.who is not Who.WAITING:
        return Stagger(apart, Fraction(0))
    return Stagger(apart, stands_longer(last, length_of(last, Fraction(0), kitchen, hands)))


def _ways(work: Work, made: StageBatch, mix: int) -> list[tuple[str, list[Doing]]]:
    """The steps of the dough and of each branch, with the pieces that a mix (0: all of them) has from `divide` on."""
    steps = made.stage.steps
    divides = next((at for at, step in enumerate(steps) if step.verb == "divide"), None)
    everything = pieces_of_mix(work, "", mix)
    trunk = [
        Doing(step, everything if divides is None or at >= divides else Fraction(0)) for at, step in enumerate(steps)
    ]
    branches = work.formula.branches
    return [("", trunk), *((b.noun, [Doing(s, pieces_of_mix(work, b.noun, mix)) for s in b.steps]) for b in branches)]


@once
def pieces_of_mix(work: Work, noun: str, mix: int) -> Fraction:
    """How many of them a mix makes; all, of mix 0. Whole pieces, spread as evenly as they go."""
    of_all = (p.number for p in work.batch.pieces if not noun or same_noun(p.noun, noun))
    return sum((_of_this_mix(number, mix, work.mixes.number) for number in of_all), Fraction(0))


def _of_this_mix(pieces: Fraction, mix: int, number: int) -> Fraction:
    if not mix:
        return pieces
    return Fraction(pieces * mix // number - pieces * (mix - 1) // number)


def is_machine_mix(step: Step) -> bool:
    return step.verb == "mix" and step.who is Who.MACHINE
