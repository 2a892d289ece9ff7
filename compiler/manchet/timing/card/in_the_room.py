"""What ripens, ferments or proves in the room, and the room is not as warm as the file has it: about how long it takes there.

A dough brings its own warmth and keeps it a while, so for bulk and proof that is how far it can come, and no more.
"""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.work import Work
from manchet.figures.fermentation.another_warmth import Elsewhere, Waiting, waits_of
from manchet.formula.model import Range
from manchet.kitchen.model import Kitchen
from manchet.timing.card.values import CardRow, InRoom

NOTABLE = Fraction(2)
"""Celsius by which room and file have to differ. Our rule: a degree is within what a thermometer and a draught do."""
NOTABLE_FOR_A_DOUGH = Fraction(4)
"""The same for bulk and proof. Our rule: a dough keeps some of its own warmth."""
KEPT_WITHIN = Fraction(1)
"""Celsius within which a prover or a fridge is taken to be the place that is meant. Our rule."""
PROVED_WITHIN = Fraction(3)
"""The same for bulk and proof in a prover, which has a knob. Our rule."""


def with_rooms(work: Work, rows: tuple[CardRow, ...]) -> tuple[CardRow, ...]:
    """The rows; a wait that names no place says what it takes at the kitchen's own air; nothing where the model of its
    warmth is silent even as written."""
    air = work.kitchen.air
    if air is None:
        return rows
    there = {}
    for wait in waits_of(work.formula):
        if _has_its_place(wait, air, work.kitchen) or wait.at(wait.celsius) is None:
            continue
        elsewhere = wait.at(air)
        there[wait.step.place] = InRoom(
            air, wait.celsius, None if elsewhere is None else _seconds(wait, elsewhere, air)
        )
    return tuple(
        row._replace(in_room=there.get(row.step.place)) if row.step is not None and row.job == "step" else row
        for row in rows
    )


def _has_its_place(wait: Waiting, air: Fraction, kitchen: Kitchen) -> bool:
    """It names its place, the room is near enough, or the kitchen keeps a place as warm as that."""
    step, ripens = wait.step, wait.step.verb == "ripen"
    notable = NOTABLE if ripens else NOTABLE_FOR_A_DOUGH
    if step.where is not None or step.ramp is not None or abs(wait.celsius - air) < notable:
        return True
    return any(
        abs(cold.keeps - wait.celsius) <= (KEPT_WITHIN if ripens or cold.word != "prover" else PROVED_WITHIN)
        if cold.keeps is not None
        else cold.word == "prover"
        for cold in kitchen.colds
    )


def _seconds(wait: Waiting, elsewhere: Elsewhere, air: Fraction) -> Range:
    low, high = elsewhere.seconds
    if wait.step.verb != "ripen":
        return Range(None, high) if air < wait.celsius else Range(low, None)
    single = wait.time.low == wait.time.high and low == high
    return Range(low, low) if single else elsewhere.seconds
