"""A bake that does not fit into the oven at once: load after load, and between two the oven comes back."""

from __future__ import annotations

from collections.abc import Iterable, Iterator
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.oven.bakes import holds_of, loads_of
from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Range, Step, Who
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN

RECOVER = "recover"
"""The verb of the wait between two loads: no file says it, the kitchen's `recovers` does."""


class Doing(NamedTuple):
    """A step with the pieces it handles, and which load of how many it belongs to; 0 of 0 where all go in at once."""

    step: Step
    pieces: Fraction
    load: int = 0
    loads: int = 0


def in_loads(work: Work, steps: Iterable[tuple[Step, Fraction]], noun: str = "") -> Iterator[Doing]:
    """The steps of a chain; each bake once for every load. A step that says `6 at a time` counts its own loads."""
    waiting = [Doing(step, pieces) for step, pieces in steps]
    while waiting:
        run = _bake_at_the_beginning(waiting)
        if run:
            yield from _load_by_load(work, waiting[:run], noun)
        else:
            yield waiting[0]
        del waiting[: run or 1]


def _bake_at_the_beginning(doings: list[Doing]) -> int:
    """How many of the first steps are one bake: its phases, with what is done by hand between them."""
    run = 0
    for at, doing in enumerate(doings):
        if doing.step.verb in IN_OVEN:
            run = at + 1
        elif not run or doing.step.who is not Who.HANDS:
            break
    return run


def _load_by_load(work: Work, run: list[Doing], noun: str) -> Iterator[Doing]:
    first = run[0]
    oven = oven_of(first.step, work.kitchen)
    sorts = tuple(piece for piece in work.batch.pieces if not noun or same_noun(noun, piece.noun))
    holds = None if oven is None else holds_of(work, first.step, sorts, oven)
    loads = loads_of(first.pieces, holds)
    if len(loads) == 1 or oven is None or any(doing.step.at_a_time for doing in run):
        yield from run
        return
    for number, pieces in enumerate(loads, 1):
        if number > 1 and oven.recovers:
            wait = Step(
                RECOVER, Who.WAITING, first.step.place, Range(oven.recovers, oven.recovers), where=("in", oven.name)
            )
            yield Doing(wait, pieces)
        yield from (doing._replace(pieces=pieces, load=number, loads=len(loads)) for doing in run)
