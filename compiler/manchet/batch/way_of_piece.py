"""What a piece meets between the scale and the shelf: what touches it, and what it loses. One account of its weight, which sheet,
slice, label and cost go by.

Finished weight = (dough + what touched it before the last heat) x (1 - bake loss) + what came on after; measured when cooled.
"""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction
from typing import Protocol

from manchet.formula.model import Formula, Step
from manchet.formula.nouns import same_noun
from manchet.formula.step import Applied
from manchet.records import NamedTuple
from manchet.syntax.vocabulary import COOKS

NOTHING = Fraction(0)
ONE = Fraction(1)


class Touched(NamedTuple):
    """Something comes onto one piece that is no dough."""

    step: Step
    applied: Applied
    grams: Fraction


class Lost(NamedTuple):
    """One piece loses a share of what it weighs then. `said`: by the file, in its head or at the step; else nobody has weighed
    it, and `share` is 0."""

    step: Step | None
    """None for the bake loss of the head."""
    share: Fraction
    said: bool = True


class Heated(NamedTuple):
    """It goes through a heat, whatever it loses there."""

    step: Step


Event = Touched | Lost | Heated


class PiecesMade(Protocol):
    """Pieces of one sort, as a file asks for them or as they are made."""

    @property
    def number(self) -> Fraction | None: ...
    @property
    def noun(self) -> str: ...


def way_of_piece(formula: Formula, noun: str, made: Iterable[PiecesMade]) -> tuple[Event, ...]:
    """What happens to one piece of a noun, in order: what touched its dough before it was divided comes first.

    What is said `in all` goes evenly over the pieces that it is for, of `made`. Where nothing is counted, the whole dough is the piece.
    """
    if formula.dish:
        return tuple(_way_of_plate(formula, made))
    numbers = [(one.noun, NOTHING if one.number is None else one.number) for one in made]
    everyone = sum((number for _, number in numbers), NOTHING) or ONE
    mine = sum((number for name, number in numbers if same_noun(name, noun)), NOTHING) or ONE
    steps = formula.way_of(noun)
    common = len(formula.dough.steps)
    divided = max((n for n, step in enumerate(steps) if step.verb == "divide"), default=len(steps))
    heated = [n for n, step in enumerate(steps) if step.verb in COOKS and n > divided]
    if not heated:  # a batter that nobody divides: its heat is the last of its vessel
        heated = [n for n, step in enumerate(steps) if step.verb in COOKS]
    last = heated[-1] if heated and not formula.preparation else None
    said = formula.piece_loss(noun) is not None
    found: list[Event] = []
    for stage in formula.stages[:-1]:
        found += (_touched(step, step.applied, everyone) for step in stage.steps if step.applied is not None)
    for n, step in enumerate(steps):
        if step.applied is not None:
            found.append(_touched(step, step.applied, everyone if n < common else mine))
        if n in heated and not formula.preparation:
            found.append(Heated(step))
        if n == last and formula.bake_loss is not None:
            found.append(Lost(None, formula.bake_loss))
        elif n == last and not said:
            found.append(Lost(None, NOTHING, said=False))
        if n > divided and step.loses is not None:
            found.append(Lost(step, step.loses))
    if last is None and formula.bake_loss is not None:
        found.append(Lost(None, formula.bake_loss))
    return tuple(found)


def _touched(step: Step, applied: Applied, pieces: Fraction) -> Touched:
    return Touched(step, applied, applied.grams if applied.each else applied.grams / pieces)


def _way_of_plate(formula: Formula, made: Iterable[PiecesMade]) -> Iterable[Event]:
    """What a plate meets once something is laid on it. What the slicing loses is off the slices already."""
    plates = sum((one.number or NOTHING for one in made), NOTHING) or ONE
    for step in formula.dough.steps:
        if step.applied is not None:
            yield _touched(step, step.applied, plates)
        if step.verb in COOKS:
            yield Heated(step)
        if step.loses is not None and not step.loss_is_weighed:
            yield Lost(step, step.loses)


class Touching(NamedTuple):
    """Grams that come onto one piece before its last heat, and on after it."""

    before: Fraction = NOTHING
    after: Fraction = NOTHING

    def finished(self, dough: Fraction, loss: Fraction) -> Fraction:
        return (dough + self.before) * (1 - loss) + self.after

    def dough_for(self, finished: Fraction, loss: Fraction) -> Fraction:
        """Grams of dough that come to so many finished; 0 where what touches it weighs that alone."""
        return max((finished - self.after) / (1 - loss) - self.before, NOTHING)


UNTOUCHED = Touching()


def touching_of(way: Iterable[Event]) -> Touching:
    """What comes on before and after the last heat, or the last loss."""
    before = since = NOTHING
    for event in way:
        if isinstance(event, Touched):
            since += event.grams
        else:
            before, since = before + since, NOTHING
    return Touching(before, since)


class Finishing(NamedTuple):
    """A piece of so many grams of dough weighs `left` x dough + `more` grams when it is finished."""

    left: Fraction
    more: Fraction

    def of(self, dough: Fraction) -> Fraction:
        return dough * self.left + self.more

    def dough_for(self, finished: Fraction) -> Fraction:
        """Grams of dough that come to so many finished; 0 where what touches it weighs that alone."""
        return max((finished - self.more) / self.left, NOTHING) if self.left else NOTHING


def finishing_of(way: Iterable[Event]) -> Finishing:
    """How dough becomes a finished piece on its way, by the losses that are said."""
    left, more = ONE, NOTHING
    for event in way:
        if isinstance(event, Touched):
            more += event.grams
        elif isinstance(event, Lost):
            left, more = left * (1 - event.share), more * (1 - event.share)
    return Finishing(left, more)
