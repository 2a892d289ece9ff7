"""A bake that does not fit into the oven at once: load after load, and between two the oven comes back.

With several mixes it is the oven that is filled, not the mix: their pieces go in together, one load after another, and a
load may hold the last of one mix and the first of the next.
"""

from __future__ import annotations

from collections import deque
from collections.abc import Iterable, Iterator, Sequence
from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.oven.bakes import Holds, holds_of, loads_of
from manchet.figures.oven.curve import oven_of
from manchet.formula.model import Range, Step, Who
from manchet.formula.nouns import same_noun
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import IN_OVEN
from manchet.timing.jobs.durations import length_of
from manchet.timing.jobs.handling import loading, seconds_of, taking_out

RECOVER = "recover"
"""The verb of the wait between two loads: no file says it, the kitchen's `recovers` does."""

NOTHING = Fraction(0)


class FromMix(NamedTuple):
    """So many pieces of one mix."""

    mix: int
    pieces: Fraction


class Doing(NamedTuple):
    """A step with the pieces it handles, and which load of how many it belongs to; 0 of 0 where all go in at once."""

    step: Step
    pieces: Fraction
    load: int = 0
    loads: int = 0
    begins: bool = False
    """The first thing that is done with a load: up to here its pieces stood ready."""
    goes_in: bool = False
    """The first phase of a bake."""
    comes_out: bool = False
    """The last."""
    room: Fraction = NOTHING
    """What share of its oven the load takes; 0 where nobody knows how many it holds."""
    of: tuple[FromMix, ...] = ()
    """Whose pieces it handles, where those of several mixes go in together."""


class Stagger(NamedTuple):
    """How mixes come to the oven. Seconds."""

    apart: Fraction
    """One after the other, as the mixer lets them go."""
    may_stand: Fraction | None
    """How long the pieces of one may stand ready for those of the next; None where nothing sets an end."""


TOGETHER = Stagger(NOTHING, None)


def in_loads(work: Work, doings: Iterable[Doing], noun: str = "", stagger: Stagger = TOGETHER) -> Iterator[Doing]:
    """The steps of a chain; each bake once for every load, with the scoring and brushing just before it. A step that says
    `6 at a time` counts its own loads. `stagger` is of the first bake; what has been baked once is all there."""
    waiting = list(doings)
    stood = any(doing.of for doing in waiting)
    while waiting:
        run = _load_at_the_beginning(waiting, stood)
        if run:
            yield from _load_by_load(work, waiting[:run], noun, stagger)
            stagger = TOGETHER
        else:
            stood = waiting[0].step.who is Who.WAITING
            yield waiting[0]
        del waiting[: run or 1]


def goes_in_together(work: Work, doings: Sequence[Doing], noun: str = "") -> int:
    """How many of the first steps every mix does by itself: up to the first bake in an oven that says how many it holds,
    and what is done by hand to each load before it."""
    stood = False
    for at, doing in enumerate(doings):
        run = _load_at_the_beginning(list(doings[at:]), stood)
        if run and _holds(work, list(doings[at : at + run]), noun):
            return at
        stood = doing.step.who is Who.WAITING
    return len(doings)


def _load_at_the_beginning(doings: Sequence[Doing], stood: bool) -> int:
    """How many of the first steps are done with one load: its bake, its phases with what is done by hand between them, and,
    where the pieces `stood` up to now, what is done by hand before it goes in."""
    by_hand = next((at for at, doing in enumerate(doings) if doing.step.who is not Who.HANDS), 0) if stood else 0
    run = 0
    for at, doing in enumerate(doings[by_hand:], by_hand + 1):
        if doing.step.verb in IN_OVEN:
            run = at
        elif not run or doing.step.who is not Who.HANDS:
            break
    return 0 if any(doing.step.verb == "divide" for doing in doings[:run]) else run


def _holds(work: Work, run: list[Doing], noun: str) -> Holds | None:
    """How many pieces of a bake lie in its oven at once; None where nobody knows, or the bake counts its own."""
    first = _first_phase(run)
    oven = oven_of(first.step, work.kitchen)
    sorts = tuple(piece for piece in work.batch.pieces if not noun or same_noun(noun, piece.noun))
    holds = None if oven is None else holds_of(work, first.step, sorts, oven)
    return None if any(doing.step.at_a_time for doing in run) else holds


def _load_by_load(work: Work, run: list[Doing], noun: str, stagger: Stagger) -> Iterator[Doing]:
    first = _first_phase(run)
    oven, holds = oven_of(first.step, work.kitchen), _holds(work, run, noun)
    if oven is None or holds is None:
        yield from _through_the_door(run)
        return
    if first.of:
        turn = _seconds_at_the_oven(work, run, Fraction(holds.number)) + (oven.recovers or NOTHING)
        loads = tuple(_filled(first.of, holds.number, stagger, turn))
    else:
        loads = tuple((FromMix(0, pieces),) for pieces in loads_of(first.pieces, holds))
    for at, of in enumerate(loads, 1):
        pieces = sum((one.pieces for one in of), NOTHING)
        of = of if first.of else ()
        if at > 1 and oven.recovers:
            wait = Step(
                RECOVER, Who.WAITING, first.step.place, Range(oven.recovers, oven.recovers), where=("in", oven.name)
            )
            yield Doing(wait, pieces, of=of)
        which = (at, len(loads)) if len(loads) > 1 else (0, 0)
        for number, doing in enumerate(_through_the_door(run)):
            yield doing._replace(
                pieces=pieces,
                load=which[0],
                loads=which[1],
                begins=number == 0,
                room=pieces / holds.number,
                of=of,
            )


def at_the_door(doings: Sequence[Doing]) -> Iterator[Doing]:
    """The steps of a stage that is baked by itself, as nobody counts in loads."""
    waiting = list(doings)
    while waiting:
        run = _load_at_the_beginning(waiting, False)
        yield from _through_the_door(waiting[:run]) if run else waiting[:1]
        del waiting[: run or 1]


def _through_the_door(run: Sequence[Doing]) -> Iterator[Doing]:
    """A load, from its first phase to the last thing of it in the oven."""
    first, last = _first_phase(run), run[-1]
    yield from (doing._replace(goes_in=doing is first, comes_out=doing is last) for doing in run)


def _seconds_at_the_oven(work: Work, run: Sequence[Doing], pieces: Fraction) -> Fraction:
    """How long one load has its oven, with loading and taking out."""
    kitchen = work.kitchen
    lengths = (length_of(doing.step, pieces, kitchen, kitchen.hands or 1).planned for doing in run)
    return sum(lengths, seconds_of((loading(pieces, kitchen), taking_out(pieces, kitchen))))


def _first_phase(run: Sequence[Doing]) -> Doing:
    return next(doing for doing in run if doing.step.verb in IN_OVEN)


def _filled(of: Sequence[FromMix], holds: int, stagger: Stagger, turn: Fraction) -> Iterator[tuple[FromMix, ...]]:
    """Loads, each as full as it can be: what is left of one mix takes the first of the next with it, where it may stand so
    long. `turn` is how long a load has the oven, in seconds."""
    waiting = deque((one.mix, one.pieces, at * stagger.apart) for at, one in enumerate(of) if one.pieces)
    free = NOTHING
    while waiting:
        load: list[FromMix] = []
        goes_in, room = free, Fraction(holds)
        while waiting and room:
            mix, pieces, ready = waiting[0]
            if load and stagger.may_stand is not None and ready - goes_in > stagger.may_stand:
                break
            goes_in = max(goes_in, ready)
            load.append(FromMix(mix, min(pieces, room)))
            room -= load[-1].pieces
            waiting.popleft()
            if pieces > load[-1].pieces:
                waiting.appendleft((mix, pieces - load[-1].pieces, ready))
        free = goes_in + turn
        yield tuple(load)
