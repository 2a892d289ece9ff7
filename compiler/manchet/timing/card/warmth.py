"""The dough came out warmer or cooler than it should: about how long the bulk is then. An estimate."""

from __future__ import annotations

from fractions import Fraction

from manchet.batch.model import Batch
from manchet.figures.fermentation.another_warmth import Waiting, leavens_of
from manchet.formula.model import Heat, Range, Step
from manchet.syntax.vocabulary import SETS_WARMTH
from manchet.timing.card.values import CameOutAt

AROUND = (-4, -2, 0, 2)
"""Degrees from the written dough temperature for which the card has a line."""

SAME_WARMTH = 4
"""If the dough ferments more than so many degrees from its own temperature, the model has nothing to say."""


def came_out_at(batch: Batch) -> tuple[CameOutAt, ...]:
    """The bulk for a dough that came out at other temperatures, in seconds; () where the model does not hold.

    It needs a dough temperature (`mix fast 2 min to 28 C`), a ferment with a time after it, near that temperature, and
    yeast or a culture in the dough.
    """
    dough = batch.formula.dough
    leavens = leavens_of(dough, batch.formula)
    written, bulk = _dough_temperature_and_bulk(dough.steps)
    if not leavens or written is None or bulk is None or bulk.time is None or bulk.ramp is not None:
        return ()
    around = bulk.heats[0].celsius.likely if bulk.heats else written
    if abs(around - written) > SAME_WARMTH:
        return ()
    as_mixed = bulk._replace(heats=(Heat(Range(written, written)),))
    waiting = Waiting(dough.name, as_mixed, bulk.time, leavens)
    lines = (waiting.at(written + degrees) for degrees in AROUND)
    single = bulk.time.high is None
    return tuple(
        CameOutAt(line.celsius, line.seconds.low or Fraction(0), None if single else line.seconds.high)
        for line in lines
        if line is not None
    )


def _dough_temperature_and_bulk(steps: tuple[Step, ...]) -> tuple[Fraction | None, Step | None]:
    """The last temperature a mix is to reach before the dough ferments, and that ferment."""
    written: Fraction | None = None
    for step in steps:
        if step.verb == "ferment":
            return written, step
        for reach in step.reaches:
            if step.verb in SETS_WARMTH and reach.what == "temperature":
                written = reach.value.likely
    return None, None
