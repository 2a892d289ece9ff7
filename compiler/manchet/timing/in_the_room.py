"""A preferment that ripens in the room, and the room is not as warm as the file has it: about how long it takes there."""

from __future__ import annotations

from fractions import Fraction

from manchet.figures.fermentation import Waiting, waits_of
from manchet.formula.model import Batch, Range
from manchet.larder.kitchen import Kitchen
from manchet.timing.card_values import InRoom, Row

NOTABLE = Fraction(2)
"""Celsius by which room and file have to differ. Our rule: a degree is within what a thermometer and a draught do."""
KEPT_WITHIN = Fraction(1)
"""Celsius within which a prover or a fridge is taken to be the place that is meant. Our rule."""


def with_rooms(rows: tuple[Row, ...], batch: Batch, kitchen: Kitchen) -> tuple[Row, ...]:
    """The rows; a ripening that names no place says what it takes at the kitchen's own air, where the model holds."""
    air = kitchen.air
    if air is None:
        return rows
    there = {}
    for wait in waits_of(batch.formula):
        elsewhere = None if _has_its_place(wait, air, kitchen) else wait.at(air)
        if elsewhere is not None:
            low, high = elsewhere.seconds
            single = wait.time.low == wait.time.high and low == high
            there[wait.step.place] = InRoom(air, elsewhere.seconds if not single else Range(low, low))
    return tuple(
        row._replace(in_room=there.get(row.step.place)) if row.step is not None and row.job == "step" else row
        for row in rows
    )


def _has_its_place(wait: Waiting, air: Fraction, kitchen: Kitchen) -> bool:
    """It is no ripening, it names its place, the room is near enough, or the kitchen keeps a place as warm as that."""
    step = wait.step
    if step.verb != "ripen" or step.where is not None or step.ramp is not None or abs(wait.celsius - air) < NOTABLE:
        return True
    keeps = (cold.keeps for cold in kitchen.colds if cold.keeps is not None)
    return any(abs(kept - wait.celsius) <= KEPT_WITHIN for kept in keeps)
